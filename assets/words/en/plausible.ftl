## core/plausible/area.rs

plausible-the-area-of = The area of { $name }
plausible-what-stays-unsprayed-of = What stays unsprayed of { $name }
plausible-what-is-sprayed-of = What is sprayed of { $name }
plausible-the-field-has = the field has { $whole }
plausible-fit-in = would fit in
plausible-its-boundary-holds = its boundary holds { $measured }
plausible-be-that-ground = would be that ground
plausible-all-other-fields-are-typed-in = all other fields are typed in { $usual } and have { $least } to { $most }
plausible-lie-among-them = would lie among them

## core/plausible/carrier.rs

plausible-the-spray-volume = The spray volume
plausible-a-label-asks-for-at-least = a label asks for at least { $least }
plausible-a-label-asks-for-at-most = a label asks for at most { $most }
plausible-be-inside-what-the-labels-name = would be inside what the labels name
plausible-droplets-get-coarser-with-pressure = In the droplet table of { $name } { $low } gives { $finer } and { $high }, which is more, { $coarser }: of one nozzle more pressure makes finer droplets
plausible-look-at-both-lines = Look at both lines in the nozzle maker's table, and mend the one that is wrong.
plausible-mostly-to-are-sprayed = mostly { $likely_least } to { $likely_most } are sprayed
plausible-be-among-these = would be among these

## core/plausible/content.rs

plausible-the-density-of = The density of { $name }
plausible-the-content-of-in = The content of { $name } in { $name2 }
plausible-is-typed-as = { $what } is typed as { $content }; { $why }
plausible-it-is-counted-as = it is counted as { $short }
plausible-the-one-way-to-count-for = the one way to count for the other
plausible-be-what-is-written = would be what is written
plausible-the-product-is-dry-and-has = the product is dry and has no volume
plausible-be-by-mass = would be by mass
plausible-all-of-the-product-weighs = all of the product weighs { $density }
plausible-hardly-any-holds-more-than = hardly any holds more than { $most }
plausible-be-possible = would be possible
plausible-hardly-any-holds-less-than = hardly any holds less than { $least }
plausible-be-usual = would be usual
plausible-that-is-not-the-figure-in = that is not the figure in its name
plausible-agree-with-that = would agree with that
plausible-the-salt-or-ester-for-its = the { $salt } salt or ester for its acid
plausible-the-acid-for-its-salt-or = the acid for its { $salt } salt or ester
plausible-by-its-label-which-states-the = by its label, which states the same by product and by active, it is { $shown }

## core/plausible/dates.rs

plausible-another-year = another year
plausible-is-harvested-on-before-it-is = { $name } is harvested on { $harvest }, before it is planted on { $planted }
plausible-come-in-order = would come in order
plausible-the-pass-is-typed-for-is = The pass is typed for { $date }; { $name } is planted on { $planted }
plausible-fall-in-its-season = would fall in its season
plausible-the-day-of-its-pass = the day of its pass
plausible-is-recorded-for-which-has-not = "{ $name }" is recorded for { $date }, which has not come yet
plausible-be-past = would be past
plausible-what-it-took-was-counted-on = ; what it took was counted on { $counted }
plausible-is-recorded-for-and-its-pass = "{ $name }" is recorded for { $date }, and its pass is planned for { $planned }{ $counted }
plausible-be-beside-that = would be beside that

## core/plausible/mod.rs

plausible-if-the-figure-is-right = If the figure is right, leave it: nothing is changed by itself.
plausible-would-agree = would agree
plausible-would-balance = would balance
plausible-what-is-typed-as-typed-why = { $what } is typed as { $typed }; { $why }
plausible-hardly-any-is-more-than = hardly any is more than { $most }
plausible-hardly-any-is-less-than = hardly any is less than { $least }
plausible-would = { $text }; { $all } { $would }
plausible-or = { $first } or { $last }

## core/plausible/offer.rs

plausible-the-basis = the basis { $text }
plausible-calcium = calcium { $text }
plausible-magnesium = magnesium { $text }
plausible-latitude = latitude { $text }
plausible-longitude = longitude { $text }

## core/plausible/place.rs

plausible-is-no-latitude-and-may-be = "{ $latitude }" is no latitude, and "{ $longitude }" may be one; { $texts } would be a place
plausible-the-farm-is-typed-to-lie = The farm is typed to lie at { $latitude }, { $longitude }; { $name } is drawn { $show } degrees off; { $texts } would lie beside it
plausible-east-for-west = east for west
plausible-north-for-south = north for south
plausible-both-signs = both signs
plausible-each-in-the-others-box = each in the other's box
plausible-each-in-the-others-box-and = each in the other's box, and east for west
plausible-each-in-the-others-box-and-north-for-south = each in the other's box, and north for south

## core/plausible/rate.rs

plausible-that-its-label-names = that its label names
plausible-that-a-label-of-the-mix = that a label of the mix names
plausible-at-which-such-an-adjuvant-is = at which such an adjuvant is used
plausible-to = { $least } to { $most }
plausible-at-least = at least { $least }
plausible-at-most = at most { $most }
plausible-of-is = { $typed } of { $name } is { $far } { $range }
plausible-of-cannot-be-reckoned-as-the = { $typed } of { $name } cannot be reckoned as the rate { $range }
plausible-if-the-rate-is-right-look = If the rate is right, look whether the label's is typed rightly; nothing is changed by itself.
plausible-would-be-inside = { $text }; { $texts } would be inside
plausible-times-the-most = { $over } times the most
plausible-times-less-than-the-least = { $under } times less than the least

## core/plausible/rig.rs

plausible-the-tank-of = The tank of { $name }
plausible-the-boom-of = The boom of { $name }
plausible-the-speed-of = The speed of { $name }
plausible-the-boom-height-of = The boom's height of { $name }
plausible-the-pressure-of = The pressure of { $name }
plausible-the-hardness-of = The hardness of { $name }
plausible-the-bicarbonate-of = The bicarbonate of { $name }
plausible-the-conductivity-of = The conductivity of { $name }
plausible-the-speed-of-the-pass = The speed of the pass
plausible-the-height-of-the-nozzles = The height of the nozzles
plausible-the-pressure-of-the-pass = The pressure of the pass
plausible-the-speed = The speed
plausible-does-this-volume-at-to = { $name } does this volume at { $least } to { $most }
plausible-is-for-to = { $name } is for { $least } to { $most }
plausible-the-spacing-of = The spacing of { $name }
plausible-nozzles-so-far-apart-reach-over = { $count } nozzles so far apart reach over { $reach }, the boom is typed as { $typed }
plausible-the-flow-of = The flow of { $name }
plausible-the-pressure-of-the-rating-of = The pressure of the rating of { $name }
plausible-size-gives-at-and-it-is = size { $size } gives { $flow } at { $at }, and it is rated at { $at2 }

## core/plausible/water.rs

plausible-calcium-and-magnesium-make-the-report = { $name }: calcium and magnesium make { $reckoned }, the report states { $stated }
plausible-holds-of-bicarbonate-times-as-much = { $name } holds { $bicarbonate } of bicarbonate, { $show } times as much charge as calcium, magnesium and sodium have against it
plausible-its-ions-make-about = its ions make about { $expected }

## core/plausible/weather.rs

plausible-the-warmest-air-of-the-pass = The warmest air of the pass
plausible-the-air-of = The air of "{ $name }"
plausible-the-wind-of-record = The wind of "{ $name }"
plausible-the-gust-of = The gust of "{ $name }"
plausible-it-is-signed-amend-it-in = It is signed: amend it in the season log.
plausible-to-were-expected = { $cold } to { $warm } were expected

## core/plausible/zone.rs

plausible-zone-named = "{ $typed }" may mean { $zone }
plausible-zone-near = By the clock of { $city }, some { $far } km away; a border of zones may lie between

## core/plausible/recorded.rs

plausible-recorded-over-the-label = { $name }: { $amount } of { $product } is { $rate }, { $times } times the most that is named for it ({ $most })
plausible-recorded-off-the-plan = { $name }: { $amount } of { $product } is { $times } times { $more ->
        [yes] what was planned
       *[no] less than was planned
    } ({ $planned })
plausible-what-was-sprayed-stays = What was really sprayed stays as it is; look once more at the figure and its unit.

## core/plausible/dates.rs

plausible-sprayed-on-another-day = { $name } is recorded for { $date }, and its pass is still planned for { $planned }: its plan counts the record as another application
plausible-the-day-of-the-record = the day of the record for its pass
plausible-move-the-pass-or-plan-another = If it was this pass, take the day of the record for the pass; if the pass is to be sprayed once more, leave it.

## core/plausible/named.rs

plausible-name-says-another-formulation = The name of { $name } says { $code }, and its formulation is typed as { $typed }; the mixing order goes by that
plausible-type-the-formulation-of-the-label = Type the formulation that its label states.
plausible-no-active-is-typed = No active ingredient is typed for { $name }: limits by active, groups of resistance, laws and published guidance on it are not judged
plausible-type-the-actives-of-the-label = Type the actives and their contents from its label.
