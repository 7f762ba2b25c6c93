## core/water/blend.rs

water-the-hardness-of-is-not-known = The hardness of { $it } is not known; type its calcium and magnesium, or its hardness
water-both-waters-are-equally-hard-so = Both waters are equally hard, so any share has it
water-a-blend-has-between = A blend of the two has between { $least } and { $most } ppm
water-with = { $name } with { $name2 }, { $part } %
water-reckoned-not-analysed-of-and-of = Reckoned, not analysed: { $percent } % of { $name } and { $part } % of { $name2 }. pH, conductivity and clarity are not reckoned.

## core/water/carrier.rs

water-ions-over-ground-from = Ions over ground from { $name }
water-hardness = hardness, { $hardness } × { $carrier }
water-ammonium-sulfate-tied-up = ammonium sulfate tied up, { $need } × { $carrier }
water-at-the-least-that-the-labels = at { $least }, the least that the labels name
water-at-half-the-spray-volume-half = at half the spray volume, half of it
water-at-least-the-least-that-the-labels-name-instead = At { $least }, the least that the labels name, instead of { $carrier } the water brings { $show } % less of what ties up the spray.

## core/water/classes.rs

water-us-geological-survey = US Geological Survey
water-water-quality-association = Water Quality Association
water-vermont = Vermont
water-engineering-textbook = engineering textbook
water-united-kingdom = United Kingdom
water-class-soft = soft
water-class-moderately-hard = moderately hard
water-class-hard = hard
water-class-very-hard = very hard
water-class-slightly-hard = slightly hard
water-class-moderately-soft = moderately soft

## core/water/conditioner.rs

water-ties-up-of-ammonium-sulfate-the = { $name } ties up { $need } of ammonium sulfate; the mix holds { $held }
water-the-label-of-each-product-decides = The label of each product decides whether more may be added.
water-guidance = guidance ({ $source })
water-conditions-water-too-more-weakly-than = { $name } conditions water too, more weakly than ammonium sulfate; by how much is not reckoned
water-woznica-nalewaja-messersmith-and-milkowski = Woznica, Nalewaja, Messersmith and Milkowski, Weed Technology (quinclorac with sodium and calcium); a water laboratory of North Dakota and Minnesota, and Saskatchewan Agriculture, March 2021, name both
water-at-least-and-at-most-which = { $least } at least and { $most } at most, which do not meet
water-at-least = { $least } at least
water-at-most = { $most } at most
water-not-typed = not typed
water-label-range-as-typed = label range, as typed ({ $places })
water-label-range-as-published = label range, as published
water-ammonium-sulfate-for-three-figures = Ammonium sulfate for { $name }: three figures
water-tied-up-by-the-ions-by = tied up by the ions, by the equation
water-north-dakota-practice-for-most-hard = North Dakota practice for most hard water
water-in-the-set-that-suits-the = in the set that suits the mix best
water-to-plan-the-most-of-these = to plan: the most of these, within the labels' range
water-no-rate-serves-both-labels = no rate serves both labels
water-the-label-says-how-much-may = the label says how much may go in
water-plan-which-the-mix-holds = plan { $recommended }, which the mix holds
water-serves-and-the-mix-holds = { $recommended } serves, and the mix holds { $held }
water-plan = plan { $recommended }
water-the-label-governs = The label governs.
water-label-of-as-typed = { $source }; label of { $places }, as typed
water-it-may-pay-nine-trials-in = It may pay: nine trials in Ontario found little or no benefit with glyphosate, while velvetleaf and some other weeds respond to the ammonium itself (common practice).
water-with-glyphosate-trials = { $source }; Soltani et al. 2016
water-a-label-range-is-not-typed = a label range is not typed
water-the-labels-ask-for = the labels ask for { $labels }
water-the-label-asks-for = the label asks for { $labels }
water-the-label-allows = the label allows { $labels }
water-labels-ask-for = labels ask for { $labels }
water-hard-its-ions-tie-up-of = { $name }, { $hardness } hard: its ions tie up { $need } of ammonium sulfate, North Dakota practice is { $practice }, { $labels }; { $plan }
water-the-mix-holds-it-for-what = The mix holds it, for what { $name } ties up
water-it-is-in-the-shed-and = It is in the shed and serves for what { $name } ties up
water-the-shed-has-no-ammonium-sulfate = The shed has no ammonium sulfate; buy spray grade
water-ammonium-sulfate-spray-grade = Ammonium sulfate, spray grade

## core/water/demands.rs

water-how-much-ammonium-sulfate-holds-is = How much ammonium sulfate { $name } holds is not typed, so it is not judged
water-type-its-content-in-the-shed = Type its content in the shed, such as "3.4 lb/gal" or "0.41 kg/L", from its label or its maker. A fertilizer grade such as 8-0-0-9 does not tell it.
water-what-a-gallon-weighs-is-not-typed = What { $name } holds of ammonium sulfate is typed as a share of its weight and its density is not typed, so it is not judged
water-type-its-density-in-the-shed = Type its density in the shed, such as "10.2 lb/gal", from its label or its safety data sheet.
water-is-of-fertilizer-grade-its-impurities = { $name } is of fertilizer grade: its impurities may tie up the herbicide and block screens
water-take-spray-grade-which-washington-state = Take spray grade, which Washington State University and Western Farm Press name, or strain it.
water-the-grade-of-is-not-typed = The grade of { $name } is not typed
water-spray-grade-dissolves-without-residue-type = Spray grade dissolves without residue; type it in the shed.
water-what-says-of-ammonium-sulfate-is = What { $name } says of ammonium sulfate is no mass, so it is not compared
water-type-it-like-8-5-lb = Type it like "8.5 lb/100 gal" or "10 g/L".
water-asks-for-at-least-of-ammonium = { $name } asks for at least { $least } of ammonium sulfate; the mix holds { $held }
water-allows-of-ammonium-sulfate-at-most = { $name } allows { $most } of ammonium sulfate at most; the mix holds { $held }

## core/water/dose.rs

water-as-recommended-for-each-load = { $name }, as recommended for each load
water-ammonium-sulfate-in-the-spray = ammonium sulfate in the spray
water-in-the-solution = ÷ { $content } in the solution
water-in-the-spray-by-its-label = in the spray, by its label
water-of-the-product = of the product
water-of-load = × { $new_spray } of load { $number }

## core/water/hardness.rs

water-hardness-of = Hardness of { $name }
water-ppm-caco3 = { $show } ppm CaCO3
water-2-497-ppm-calcium = 2.497 × { $show } ppm calcium
water-4-118-ppm-magnesium = + 4.118 × { $show } ppm magnesium
water-hardness-standard-methods-2340-b = hardness (Standard Methods 2340 B)
water-as-stated = as stated: { $stated }
water-from-the-one-ion-stated = from the one ion stated

## core/water/mod.rs

water-no-water-is-chosen-so-its = No water is chosen, so its hardness is not judged
water-choose-the-water-in-the-heading = Choose the water in the heading line of the pass.
water-the-pass-takes-water-which-is = The pass takes water "{ $water }", which is not in the shed
water-choose-another-water-or-add-it = Choose another water, or add it in the shed.
water-has-no-analysis-so-its-need = { $name } has no analysis, so its need of conditioner is not known
water-type-calcium-and-magnesium-or-the = Type calcium and magnesium, or the hardness, from a laboratory report.
water-calcium-and-magnesium-make-the-report = { $name }: calcium and magnesium make { $reckoned }, the report states { $stated }; the plan uses the ions
water-the-analysis-of-does-not-state = The analysis of { $name } does not state { $missing }; the need counts none of it
water-the-analysis-of-name-does-not-state-bicarbonate-which = The analysis of { $name } does not state bicarbonate, which matters for { $concerned }
water-chemcert-australia-saskatchewan-agriculture = ChemCert Australia; Saskatchewan Agriculture, March 2021

## core/water/need.rs

water-ammonium-sulfate-tied-up-by = Ammonium sulfate tied up by { $name }
water-without-iron = without iron
water-ion-calcium = calcium
water-ion-magnesium = magnesium
water-ion-sodium = sodium
water-ion-potassium = potassium
water-ion-iron = iron
water-ppm-of-an-ion = { $factor } × { $ppm } ppm { $ion }
water-most = most
water-hardness-all-calcium-or-all-magnesium = hardness all calcium or all magnesium, least
water-0-042-ppm-iron = + 0.042 × { $show } ppm iron

## core/water/ranges.rs


## core/water/thresholds.rs

water-glyphosate-at-low-rates = { $limit } (glyphosate at low rates)
water-glyphosate-at-higher-rates = { $limit } (glyphosate at higher rates)

## core/water/verdict.rs

water-is-hard-which-may-tie-up = { $name } is { $found } hard, which may tie up { $concerns }; some publications treat water above { $first }, others only above { $last }
water-name-is-found-hard-which-may-tie-up-concerns = { $name } is { $found } hard, which may tie up { $concerns }; the limit is { $first }
water-holds-of-bicarbonate-which-may-weaken = { $name } holds { $found } of bicarbonate, which may weaken { $concerns }; some publications advise from { $first } on, others only from { $last }
water-name-holds-found-of-bicarbonate-which-may-weaken = { $name } holds { $found } of bicarbonate, which may weaken { $concerns }; the limit is { $first }
water-holds-of-iron-which-may-weaken = { $name } holds { $found } of iron, which may weaken { $concerns }; trouble is expected above { $first }
water-has-which-may-not-suit-the = { $name } has { $found }, which may not suit { $concerns }; the limit is { $first }
water-is-and-soil-in-the-water = { $name } is { $found }, and soil in the water ties up { $concerns }
water-has-a-conductivity-of-so-it = { $name } has a conductivity of { $found }, so it holds much salt of some kind; the limit is { $first }
water-whether-it-is-an-amine-or = Whether it is an amine or an ester is not typed; amines and other salts alone are meant.

## core/water/without_ammonium.rs

water-the-label-of = the label of { $name }
water-ties-up-what-of-ammonium-sulfate = { $name } ties up what { $need } of ammonium sulfate would free, and { $who } speaks against ammonium
water-in-the-mix-holds-none = { $tied }; { $name } in the mix holds none
water-of-the-shed-conditions-without-it = { $tied }; { $name } of the shed conditions without it
water-of-the-shed-conditions-at-a-rate = { $tied }; { $name } of the shed conditions without it, { $rate } by its label
water-type-its-labels-rate-in-the = Type its label's rate in the shed, and read whether the partners' labels accept it.
water-read-whether-the-partners-labels-accept = Read whether the partners' labels accept it, then add it to the mix.
water-the-shed-has-no-conditioner-without = { $tied }; the shed has no conditioner without ammonium that suits
water-buy-one-whose-label-is-accepted = Buy one whose label is accepted by { $partners }.
water-conditioner-without-ammonium = Conditioner without ammonium
