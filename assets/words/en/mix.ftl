## core/mix/carrier.rs

mix-the-carrier-is-and-no-compatibility = The carrier is { $kind }, and no compatibility agent is in the mix
mix-university-of-arizona-kopec-may-1999 = University of Arizona (Kopec), May 1999, jar test with and without a compatibility agent
mix-make-a-jar-test-with-this = Make a jar test with this fertilizer, once with the agent and once without; look after 5 minutes for flakes, sludge, gel or oil.
mix-comes-in-water-soluble-bags-which = { $name } comes in water-soluble bags, which do not dissolve in { $carrier }
mix-manitoba-guide-to-crop-protection-via = Manitoba Guide to Crop Protection, via Canola Council of Canada 2013 (bags before fertilizer)
mix-dissolve-the-bags-in-water-first = Dissolve the bags in water first, and pour that in.
mix-is-dry-it-disperses-in-water = { $name } is dry; it disperses in water, not in { $carrier }
mix-mix-it-with-water-to-a = Mix it with water to a slurry first.
mix-the-carrier-brings-ammonium-already-may = The carrier brings ammonium already; { $name } may be needless
mix-leave-it-out-unless-a-label = Leave it out, unless a label asks for it in this carrier.
mix-a-stage-that-is-not-typed = a stage that is not typed
mix-is-corn-at-labels-of-herbicides = { $name } is corn at { $stage }; labels of herbicides for emerged corn mostly forbid urea ammonium nitrate as the whole carrier
mix-look-at-every-label-a-few = Look at every label; a few quarts an acre as an additive are another matter.
mix-bring-of-nitrogen-as-28-solution = { $name }: { $carrier } bring { $weak } of nitrogen as 28 % solution, { $strong } as 32 %; over emerged corn at most { $from_pounds_per_acre } at V3 to V4, { $from_pounds_per_acre2 } at V7, and none later
mix-densities = { $limits }; densities: { $densities }
mix-look-at-the-grade-of-your = Look at the grade of your solution; lower the volume, or spray in water.

## core/mix/charge.rs

mix-and = { $name } and { $name2 }
mix-the-active-of-the-one-is = { $names }: the active of the one is cationic, the surfactant in the other anionic, so they may bind
mix-a-cationic-and-an-anionic-surfactant = { $names }: a cationic and an anionic surfactant in one tank may bind each other and fall out
mix-make-a-jar-test-first-or = Make a jar test first, or choose an adjuvant of another charge.
mix-the-charge-of-is-not-typed = The charge of { $name } is not typed, and { $name2 } may not meet an anionic adjuvant: { $says }
mix-type-its-charge-in-the-shed = Type its charge in the shed, from its label.

## core/mix/choice/beside.rs

mix-comes-to-at-less-than-the = { $name } comes to { $per_area } at { $carrier }, less than the { $least } that is advised
mix-whether-holds-a-surfactant-of-its = Whether { $name } holds a surfactant of its own is not typed; without one it needs one
mix-type-on-its-page-whether-the = Type on its page whether the label says that no other is needed.
mix-the-surfactant-built-into-serves-that = The surfactant built into { $name } serves that product alone; { $partner } wants { $classes }
mix-the-charged-surfactant-built-in = The { $charge } surfactant built into { $name } serves that product alone; { $partner } wants { $classes }
mix-what-one-product-brings-for-itself = What one product brings for itself is rarely what its partners need.
mix-on-with-sources-differ-it-it = On { $class } with { $name }, sources differ: { $one }, { $other }
mix-source-requires-it = { $source } requires it
mix-source-prefers-it = { $source } prefers it
mix-source-allows-it = { $source } allows it
mix-source-advises-against-it = { $source } advises against it
mix-source-forbids-it = { $source } forbids it
mix-the-label-as-typed-decides = The label, as typed, decides.
mix-the-plan-follows-the-weightier-and = The plan follows the weightier and stricter one; the label decides, once it is typed.
mix-the-label = the label ({ $at })

## core/mix/choice/collide.rs

mix-requires-both = { $name } requires { $first } and { $second }; { $one } and { $two } may not go into one tank
mix-two-require = { $name } requires { $first }, { $other } requires { $second }; { $one } and { $two } may not go into one tank
mix-product-in-crop = { $name } in { $crop }
mix-product-requires = { $name } requires { $classes }
mix-product-wants = { $name } wants { $classes }
mix-products-forbid = { $count ->
        [one] { $names } forbids { $classes }
       *[other] { $names } forbid { $classes }
    }
mix-buy-another-product-in-the-place = Buy another product in the place of { $one } or { $two }, whose label allows the rest of the mix.
mix-spray-the-two-crops-in-two = Spray the two crops in two passes, each with its own adjuvants.
mix-take-instead-of-if-its-label = Take { $name } instead of { $name2 }, if its label suits the crop and the weeds.
mix-its-partner = its partner
mix-spray-and-in-two-passes-as = Spray { $name } and { $partner } in two passes, as far apart as their labels ask.
mix-look-for-another-formulation-of-that = Look for another formulation of { $name } that does not need it.

## core/mix/choice/content.rs

mix-holds-a-is-asked-for-at = { $name } holds { $show } % { $what }; a { $class } is asked for at least { $asked }
mix-surface-active-content = surface-active content
mix-emulsifier = emulsifier
mix-read-on-each-label-what-it = Read on each label what it asks of the adjuvant.
mix-sources-differ-read-on-each-label = Sources differ; read on each label what it asks of the adjuvant.

## core/mix/choice/dose.rs

mix-how-much-ammonium-sulfate-holds-is = how much ammonium sulfate { $name } holds is not typed
mix-its-own-label = its own label
mix-its-own-label-at = its own label, { $at }
mix-other-sources-name = { $from }; other sources name { $others }
mix-usual = usual: { $source }
mix-usual-rate = usual
mix-not-known-how-much-ammonium-sulfate = not known: how much ammonium sulfate it holds is not typed
mix-asks-for-at-least-of-allows = { $from } asks for at least { $rate } of { $class }; { $from2 } allows { $rate2 } at most
mix-the-ions-of-the-water = the ions of the water

## core/mix/choice/judge.rs

mix-would-suit-this-mix-better-than = { $title } would suit this mix better than { $title2 }
mix-would-suit-better-because = { $title } would suit this mix better than { $title2 }: { $why }
mix-see-the-sets-below-the-mix = See the sets below the mix, each with its reasons; one click takes one into the mix.
mix-spray-in-water-or-read-on = Spray in water, or read on the label whether it speaks of the carrier or of an additive alone.
mix-forbids-and-it-is-the-carrier = { $name } forbids { $class }, and it is the carrier
mix-advises-against-and-it-is-the = { $name } advises against { $class }, and it is the carrier
mix-requires-and-the-mix-has-none = { $name } requires { $classes }, and the mix has none
mix-what-is-built-into-it-does = What is built into it does not take its place.
mix-take-one-of-the-sets-below = Take one of the sets below the mix.
mix-would-rather-have-and-the-mix = { $name } would rather have { $classes }, and the mix has none
mix-advises-against-and-is-in-the = { $name } advises against { $class }, and { $name2 } is in the mix
mix-forbids-and-is-in-the-mix = { $name } forbids { $class }, and { $name2 } is in the mix
mix-another-publication-allows-it = { $text }; another publication allows it
mix-read-the-label-and-type-what = Read the label, and type what it says: it decides.
mix-take-one-of-the-two-out = Take one of the two out, or split the pass.
mix-take-one-of-the-two-out-if-the-label = Take one of the two out. If the label says otherwise, type what it says in the shed: it decides.
mix-this-is-said-which-cannot-be = { $text }; this is said { $doubt }, which cannot be told here
mix-what-says-of-an-adjuvant-cannot = What { $name } says of an adjuvant cannot be compared: { $problem }
mix-allows-of-at-most-is-planned = { $name } allows { $also } of { $name2 } at most; { $planned } is planned
mix-lower-its-rate = Lower its rate.
mix-the-label-of-each-product-decides = The label of each product decides.
mix-names-of-at-least-is-planned = { $name } names { $also } of { $name2 } at least; { $planned } is planned

## core/mix/choice/mod.rs

mix-no-adjuvant = no adjuvant

## core/mix/choice/search.rs

mix-what-the-shed-has-of-it = what the shed has of it does not suit: { $reason }
mix-rate-though-the-shed-does-not-suit = { $from }; what the shed has of it does not suit: { $reason }
mix-its-label-says-not-to-mix = its label says not to mix it with { $name }
mix-the-label-of-says-not-to = the label of { $name } says not to mix it with { $name2 }

## core/mix/choice/voices.rs

mix-where-a-partner-forbids-ammonium-a = Where a partner forbids ammonium, a conditioner without it may tie up the hardness

## core/mix/choice/words.rs

mix-or = { $before } or { $last }
mix-clause-requires = requires { $what }
mix-clause-lacks = requires { $what }, which this set lacks
mix-clause-wants = wants { $what }
mix-clause-would-rather = would rather have { $what }
mix-clause-forbids = forbids { $what }
mix-clause-advises-against = advises against { $what }
mix-clause-allows = allows { $what }
mix-clause-brings = brings its own surfactant ({ $what }), which serves it alone
mix-clause-no-guidance = has no guidance on adjuvants: read its label
mix-clause-nothing-of-these = says nothing of these: read its label
mix-clause-asks-for-nothing = asks for nothing that is left out
mix-behind = Behind { $title }: { $why }
mix-something-in-the-mix-speaks-against = something in the mix speaks against part of it
mix-a-demand-is-not-met = a demand is not met
mix-it-would-have-to-be-bought = it would have to be bought
mix-two-of-a-kind-where-one-will-do = two of a kind, where one will do
mix-has-more-against-it = { $authority ->
        [label] a label has more against it
        [local] local advice has more against it
        [published] a publication has more against it
       *[practice] common practice has more against it
    }
mix-would-rather-have-the-other = { $authority ->
        [label] a label would rather have the other
        [local] local advice would rather have the other
        [published] a publication would rather have the other
       *[practice] common practice would rather have the other
    }
mix-weaker-on-weeds = weaker on weeds, which weighs more here
mix-harder-on-the-crop = harder on the crop, which weighs more here
mix-its-price-or-rate-is-not-known = its price or rate is not known
mix-dearer-by = dearer by { $per_ground }
mix-as-good-as = As good as { $title }

## core/mix/guidance.rs

mix-no-such-class = no such class
mix-what-is-it-about = what is it about?
mix-published-or-practice = published or practice?
mix-no-such-stance = no such stance

## core/mix/interval.rs

mix-and-stand-in-one-tank = { $name } and { $name2 } stand in one tank
mix-is-planned-for-for = { $name } is planned for { $date }, { $name2 } for { $date2 } ({ $name3 })
mix-name-is-planned-for-date-first-for-date2-name2 = { $name } is planned for { $date }, { $first } for { $date2 } ({ $name2 })

## core/mix/jar.rs

mix-1-us-pint-473-ml = 1 US pint (473 mL)
mix-1-us-quart-946-ml = 1 US quart (946 mL)
mix-is-in-the-mix-at-a = { $name } is in the mix at a rate of nothing, so the jar does not hold it
mix-takes-too-little-in-a-jar = { $name } takes too little in a jar of { $jar } to measure, even from a stock
mix-look-at-its-rate-on-the = Look at its rate on the plan.
mix-comes-in-bags-that-go-in = { $name } comes in bags that go in whole; a jar takes part of one
mix-weigh-it-out-of-an-opened = Weigh it out of an opened bag, outdoors and with the label's protective equipment, or leave the test to the registrant's advice.
mix-the-products-leave-no-room-for = The products leave no room for { $plain } in the jar
mix-raise-the-spray-volume-or-look = Raise the spray volume, or look at the rates.
mix-the-plan-has-a-stop-a = The plan has a Stop; a jar test does not lift it
mix-settle-it-on-the-plan-before = Settle it on the plan before the mix is sprayed.
mix-the-tank-mix-is-empty-so = The tank mix is empty, so there is nothing to test
mix-add-its-products-with-their-rates = Add its products with their rates.
mix-could-not-be-reckoned-so-it = { $name } could not be reckoned, so it is missing from the jar; without it the test says nothing of this mix
mix-settle-what-the-plan-says-of = Settle what the plan says of it first.
mix-water = water ({ $water })
mix-plain-water = water
mix-weigh = weigh
mix-weigh-it-out-of-an-opened-bag-with-a = weigh it out of an opened bag, with a small piece of the film; wait until the film is gone
mix-in-the-jar = { $name } in the jar
mix-rate-over-ground = rate over ground
mix-parts-of-stock = × { $parts } parts of stock
mix-to-the-mark = to the mark
mix-in-spoons-of-4-93-ml = in spoons of 4.93 mL
mix-the-second-jar-takes-a-compatibility = The second jar takes a compatibility agent at { $share } of the spray, 2 pt/100 gal
mix-the-rate-is-from-memory-the = The rate is from memory; the agent's own label wins.

## core/mix/jar/measure.rs

mix-stock-of-a-liquid = Stock 1 in { $parts }: dilute 1 mL to { $first } mL with { $carrier }
mix-stock-of-a-solid = Stock 1 in { $parts }: stir 1 g to { $first } mL with { $carrier }
mix-then-1-ml-of-that-to = { $text }, then 1 mL of that to { $step } mL
mix-shake-it-and-take-at-once = { $text }; shake it and take { $take } at once
mix-of-stock = { $take } of stock
mix-tbsp = { $show } { $us }tbsp
mix-tsp = { $rest } { $us }tsp
mix-about-1-8-tsp = about 1/8 { $us }tsp
mix-show-us-tsp = { $show } { $us }tsp
mix-about-spoons = about { $spoons }

## core/mix/jar/sheet.rs

mix-do-not-spray = do not spray
mix-do-not-spray-unless-gentle-turning = do not spray, unless gentle turning mends it
mix-try-a-defoamer-where-none-helps = try a defoamer; where none helps, do not spray
mix-two-clear-jars-a-and-b = two clear jars, A and B, each with a lid and a line at { $line }
mix-a-clear-jar-with-a-lid = a clear jar with a lid and a line at { $line }
mix-from-the-source-that-fills-the = from the source that fills the tank
mix-from-the-delivery-that-fills-the = from the delivery that fills the tank
mix-lid-on-shake-for-feel-whether = Lid on. Shake for { $shake }. Feel whether the jar gets warm.
mix-let-it-stand-and-look-at = Let it stand and look at the times below. Then turn it over gently, ten times, and look again.
mix-leave-it-overnight-if-the-spray = Leave it overnight if the spray may stand in the tank.
mix-jar-filled-to = Jar, filled to
mix-carrier = Carrier
mix-spray-volume = Spray volume
mix-carrier-in-the-jar = Carrier in the jar
mix-take-about-twice-as-large-so = Take { $jars }; about twice as large, so that it can be shaken.
mix-take-the-carrier-at-the-same = Take the carrier { $source }, at the same temperature.
mix-after-each-product-lid-on-turn = After each product: lid on, turn over gently until it is even, only then the next.
mix-a-jar-test-shows-only-whether = A jar test shows only whether the products bear each other in the jar. It shows nothing of weed control or of the crop. The label and local law govern; read the labels.
mix-jar-work-outdoors = Work outdoors, away from people, food and animals. Wear gloves, eye protection and all that the labels ask for.
mix-jar-write-on-it = Write on the jar what is in it. Never use a kitchen jar or spoon, and never one of these in a kitchen again.
mix-jar-never-two-concentrates = Put each product into the carrier, never two concentrates together.
mix-jar-open-slowly = Open the lid slowly and away from the face; leave it loose while the jar stands.
mix-jar-afterwards = Afterwards pour the jar into the spray tank if the mix is sprayed, or get rid of it as the labels say.
mix-to = to { $to }
mix-about = about { $joined }
mix-to-the-line-dry-products-take = to the line; dry products take up little room
mix-compatibility-agent-jar-b-only = Compatibility agent, jar B only
mix-jar-a-only = jar A only
mix-even-at-every-look-the-products = Even at every look: the products bear each other in this jar.
mix-parted-but-came-back-on-gentle = Parted, but came back on gentle turning: keep the agitator running until the tank is empty.
mix-got-warm-or-did-not-come = Got warm, or did not come back: do not spray this mix.
mix-jar-b-is-even-and-jar = Jar B is even and jar A is not: take the compatibility agent into the mix, or do not spray it.
mix-seconds = { $show } seconds
mix-overnight = overnight

## core/mix/line.rs

mix-is-dry-but-its-rate-is = { $name } is dry ({ $code }) but its rate is a volume; type a mass, such as "2 oz/ac" or "140 g/ha"
mix-is-a-liquid-and-oz-may = { $name } is a liquid, and "oz" may be fluid or weighed; type "fl oz", or "oz wt" if it is weighed
mix-is-a-solution-lb-may-be = { $name } is a solution: "lb" may be of the solution or of the salt in it; type "lb ai/100 gal" for the salt, or a volume for the solution
mix-is-a-liquid-but-its-rate = { $name } is a liquid but its rate is a mass; type "fl oz" if fluid ounces are meant, "lb ai/100 gal" to go through its content, or give its density
mix-has-no-active-typed-so-a = { $name } has no active typed, so a rate of active cannot be reckoned; type its content in the shed
mix-holds-several-actives-so-does-not = { $name } holds several actives, so "{ $short }" does not say which; rate it by product
mix-the-rate-counts-the-label-of = The rate counts { $short }, the label of { $name } counts { $short2 }; type the rate on the label's basis
mix-the-content-of-in-does-not = { $which ->
        [yes] The content of { $name } in { $name2 } does not reach its volume; give its density
       *[no] The content of { $name } in { $name2 } does not reach its mass; give its density
    }
mix-at-least-lies-above-at-most = { $name }: "at least" lies above "at most"
mix-over-ground = { $name } over ground
mix-rate-as-typed = rate as typed: { $rate }
mix-in-of-finished-spray = in { $carrier } of finished spray
mix-content-of = ÷ content of { $name } ({ $short }), { $content }
mix-raised-to-at-least = raised to at least
mix-lowered-to-at-most = lowered to at most

## core/mix/order.rs

mix-no-published-mixing-order-is-called = No published mixing order is called "{ $wanted }"; the plan follows { $order }
mix-choose-an-order-beside-the-mix = Choose an order beside the mix.
mix-the-labels-of-and-both-want = { $which ->
        [yes] The labels of { $name } and { $name2 } both want to go in first
       *[no] The labels of { $name } and { $name2 } both want to go in last
    }
mix-in-the-compatibility-agent-goes-in = in { $carrier } the compatibility agent goes in before all that it keeps apart
mix-its-label-puts-it = { $which ->
        [yes] its label puts it first
       *[no] its label puts it last
    }
mix-place-in = { $why } ({ $type_name }, place { $rank } in { $title })
mix-does-not-say-where-goes-it = { $title } does not say where { $name } goes; it is put last
mix-no-order-speaks-of-it-so = no order speaks of it, so it goes in last
mix-mixing-order = Mixing order
mix-published-orders-differ-puts-before-the = Published orders differ: { $chosen_title } puts { $name } before { $names }; { $against } the other way round
mix-a-jar-test-tells-which-suits = A jar test tells which suits; the label governs.

## core/mix/pairs.rs

mix-a-side-without-a-name = a side without a name
mix-no-charge-is-called = no charge is called "{ $which }"
mix-no-side-is = no side is "{ $kind } { $which }"
mix-no-class-is-called = no class is called "{ $key }"
mix-no-condition-is = no condition is "{ $token }"
mix-may-work-against-each-other = { $names } may work against each other
mix-may-bind-each-other = { $names } may bind each other
mix-may-fall-out-of-the-water = { $names } may fall out of the water
mix-may-hurt-the-crop-together = { $names } may hurt the crop together
mix-may-work-less-well = { $name } in { $carrier } may work less well
mix-may-fall-out = { $name } in { $carrier } may fall out
mix-may-hurt-the-crop = { $name } in { $carrier } may hurt the crop
mix-no-such-effect = no such effect
mix-note-check-or-stop = note, check or stop?
mix-with = { $name } with { $third }
mix-first-and-last = { $first } and { $last }
mix-pair-at-an-untold-rate = { $text }: { $says }; its rate over ground is not known, for want of a content or density
mix-pair-at-a-rate = { $text }: { $says }; here it is { $rate }

## core/mix/start.rs

mix-there-are-two-formulations-and-keep = There are two formulations, { $first } and { $code }; keep one.
mix-there-are-two-contents-and-keep = There are two contents, { $content } and { $second }; keep one.
mix-the-active-such-as-glyphosate = the active, such as glyphosate
mix-the-formulation-such-as-sl-or = the formulation, such as SL or WG
mix-the-content-such-as-540-g = the content, such as 540 g ae/L
mix-write-an-active-a-formulation-and = Write an active, a formulation and a content, such as "{ $example }".
mix-still-missing = Still missing: { $missing }.
mix-the-content-is-counted-both-as = The content is counted both as ae and as ai; keep the one that the label prints.
mix-labels-usually-count-as-it-was = Labels usually count { $active } as { $short }; it was typed as { $short2 }.
mix-the-content-cannot-be-read = The content cannot be read: { $problem }.
mix-of-what-write-lb-gal-g = { $text } of what? Write "{ $text } lb/gal", "{ $text } g/L" or "{ $text } % w/w".
mix-was-read-as = { $text } was read as { $text } { $unit }.
mix-the-content-is-nothing-write-how = The content is nothing; write how much of the active the label states.
mix-is-weighed-so-its-content-goes = { $code } is weighed, so its content goes by weight: write it like "75 % w/w" or "750 g/kg".
mix-a-content-by-weight-of-a = A content by weight of a liquid needs its density; type it on its page.
mix-begin-with-one-active-add-the = Begin with one active; add the others on its page, each with its own content.
mix-is-counted-as = "{ $typed }" is counted as { $name }.
mix-is-not-known-here-is-meant = "{ $typed }" is not known here: type its group and basis from the label. Until then it counts as ai. Is { $name } meant?
mix-is-not-known-here-type-its = "{ $typed }" is not known here: type its group and basis from the label. Until then it counts as ai.
