## desk/report/check.rs

report-not-judged = not judged: { $not_judged }

## desk/report/day.rs

report-sprayed = { "      " }{ $id }, sprayed   [{ $id2 }]

## desk/report/jar.rs

report-no-jar-test-the-spray-volume = { "[" }{ $pass }]{ "\u000A" }  no jar test: the spray volume over ground is not typed{ "\u000A" }
report-jar-test = Jar test: { $pass } · { $date }   [{ $id }]
report-look-after = { "  " }look after { $looks }

## desk/report/needs.rs

report-over = ; { $round } over
report-buy = buy { $purchase }{ $cost }{ $over }
report-without-products-whose-is-not-typed = { $money }, without { $many } { $many ->
        [one] product
       *[other] products
    } whose { $lacks ->
        [price] price
       *[price-or-container] price or container
    } is not typed
report-without-that-have-no-price = { $money }, without { $many } that { $many ->
        [one] has
       *[other] have
    } no price
report-passes-before-that-day-have-no = { $many } { $many ->
        [one] pass before that day has no record; it takes its
       *[other] passes before that day have no record; they take their
    } part of the shed first
report-a-water-without-a-name = a water without a name
report-water-source-not-chosen = water, source not chosen
report-nurse-tanks-of = { $count ->
        [one] one nurse tank of { $holds } is enough
       *[other] { $count } nurse tanks of { $holds }
    }
report-short = short { $round }
report-left = { $round } left
report-density-not-typed = density not typed
report-not-typed = not typed
report-no-pass-of-is-to-be = No pass of { $day } is to be sprayed.
report-what-the-passes-of-take = What the passes of { $day } take: { $passes }
report-with = { "  " }{ $rig_name } with { $source }: { $tanks }
report-nor-is-any-after-it = Nor is any after it.
report-what-all-passes-from-then-on = What all passes from then on take: { $passes }
report-nothing-is-short-of-what-is = Nothing is short of what is counted.
report-to-buy = To buy
report-in-all = { "  " }in all { $sum_words }
report-on-hand = { $round } on hand
report-not-in-it = { "  " }not in it: { $pass }: { $what }
report-the-products-cost = { "  " }the products cost { $sum_words }

## desk/report/review/text.rs

report-records = records
report-ground = ground
report-records-of-month = { $month }: { $count } { $count ->
        [one] record
       *[other] records
    }
report-so-many-records = { $count } { $count ->
        [one] record
       *[other] records
    }
report-all-seasons = all seasons
report-review-of = { $name }: review of { $of }{ "\u000A" }
report-nothing-is-recorded = Nothing is recorded.
report-weather-at-application = Weather at application
report-records-held-against-limits = records held against limits
report-outside-what-a-label-or-a = outside what a label or a law asks, as typed
report-outside-what-is-usual-alone = outside what is usual alone
report-no-wind-no-temperature-no-humidity = no wind, no temperature, no humidity
report-the-label-and-local-law-govern = The label and local law govern; this is a reckoning from what was recorded.
report-passes-and-ground = Passes and ground
report-ground-treated-twice-sprayed-counted-twice = ground treated, twice sprayed counted twice
report-ground-sprayed-at-least-once = ground sprayed at least once
report-so-far = { $so_far } so far
report-records-with-ground-without-an-area = records with ground without an area
report-products = Products
report-on = { $count } { $count ->
        [one] record
       *[other] records
    } on { $treated }, { $spent }
report-actives = { "\u000A" }Actives
report-over-the-ground-of-the-farm = { $rate } over the ground of the farm
report-no-field = no field
report-not-in-it-without-its-active = { "  " }not in it: { $name }, { $count } { $count ->
        [one] time
       *[other] times
    }, without its active
report-adjuvants = { "\u000A" }Adjuvants
report-class-not-typed = class not typed
report-ground-treated-without-any = ground treated without any
report-some-records-do-not-say-what = { "  " }Some records do not say what kind a product is, or which class; they count as the shed has it today.
report-resistance-groups = Resistance groups
report-in-no-group = { "  " }in no group: { $name }, { $count } { $count ->
        [one] time
       *[other] times
    }
report-planned-against-applied = Planned against applied
report-amounts-over-ground = amounts over ground
report-spray-volume = spray volume
report-to-in-all = { $least } to { $most }, { $n } in all
report-median-error = { $name }, median error
report-of = { "  " }{ $name } of { $date }
report-left-over = left over
report-records-that-keep-no-plan = records that keep no plan
report-cost-of-the-products = Cost of the products
report-in-all-ac1 = in all
report-no-price-that-fits = { "  " }no price that fits: { $name }, { $count } { $count ->
        [one] time
       *[other] times
    }
report-a-hectare-treated = { $currency }{ $per } a hectare treated
report-an-acre-treated = { $currency }{ $per } an acre treated
report-water-and-hours = Water and hours
report-of-it-water = of it water { $water }
report-of-it-water-without-volume = of it water { $water }; without { $count } { $count ->
        [one] record
       *[other] records
    } that say no volume
report-an-hour-start-to-end = { $area } an hour, start to end
report-without-start-and-end = { $count } { $count ->
        [one] record
       *[other] records
    } without start and end
report-an-hour-and-without-start-and-end = { $area } an hour, start to end; { $count } { $count ->
        [one] record
       *[other] records
    } without start and end
report-ratings-in-per-cent = Ratings, in per cent
report-95-interval-to = , 95 % interval { $low } to { $high }
report-median = { $count } { $count ->
        [one] field
       *[other] fields
    }; median { $median }{ $ends }
report-text = { "  " }with { $classes }
report-trial = { "  " }Trial: { $name }

## desk/report/text.rs

report-fields = { "  " }fields   { $fields } = { $area }
report-spray = { "  " }spray    { $carrier } = { $spray_volume }
report-of-spraying = , { $time } of spraying
report-water-hard = { "  " }water    { $name }, { $hardness } hard
report-ties-up-of-ammonium-sulfate = , ties up { $most } of ammonium sulfate
report-load-of-on = { "  " }load { $number } of { $loads }: { $volume } on { $area }
report-of-this-mix-are-in-the = { "        " }{ $to } of this mix are in the tank already
report-to = { "        " }{ $carrier_kind } to { $to }
report-not-judged-302 = { "  " }not judged: { $not_judged }
report-perhaps-meant = { " " }Perhaps meant: { $offers }.
report-which-adjuvant-suits-every-partner = { "  " }which adjuvant suits every partner
report-rate-not-known = rate not known
report-to-buy-a40 = , to buy
report-no-adjuvant = no adjuvant
report-in-the-mix = { "  " }in the mix
report-setting-at = { "  " }setting  { $name } at { $figures }
report-which-nozzles-do-this-pass-best = { "  " }which nozzles do this pass best
report-in-this-pass = { "  " }in this pass
report-time = { "  " }time     { $figures }
report-not-in-it-3ae = { "           " }not in it: { $lacks }
report-rinse-stay-in-the-rig = { "  " }rinse    { $residual } stay in the rig; { $ways }
report-hours = { "  " }hours    { $answer }

## desk/report/words.rs

report-not-in-the-table = not in the table
report-droplets = { $classes } droplets
report-valves-open = valves open { $duty }
report-suits-as-planned = suits as planned
report-suits-at = suits at { $speed }
report-suits-at-another-speed = suits at another speed
report-cannot-be-told = cannot be told
report-does-not-suit = does not suit
report-what-a-new-nozzle-delivers-is = What a new nozzle delivers is not typed, so pressure and droplets cannot be told.
report-at-no-speed-do-pressure-and = At no speed do pressure and droplets stay inside what the set and the labels allow.
report-at = At { $slowest }
report-between = Between { $ends }
report-pressure-stays-at = pressure stays at { $least }
report-pressure-stays-between = pressure stays between { $ends }
report-droplets-classes = droplets { $classes }
report-filling-of-loads = { $time }, { $fills } loads
report-spraying-time = spraying
report-filling-time = filling
report-road-time = road
report-at-it-stays = { $at } { $stay }.
report-one-and-other = { $one } and { $other }
report-sprays-an-hour = sprays an hour
report-loads-an-hour = loads an hour
report-the-last-of-the-spray-would = The last of the spray would still cover { $ground }: leave that much of { $name } for it, and spray the rinsings there.
report-the-last-of-the-spray-would-anywhere = The last of the spray would still cover { $ground }: leave that much for it, and spray the rinsings there.
report-more-than-the-clean-water-tank = { $rinses }, more than the clean-water tank holds, leaves { $to_percent }{ $source }
report-leaves = { $rinses } leaves { $to_percent }{ $source }
report-times-with = { $times ->
        [one] once
       *[other] { $times } times
    } with { $each }
report-the-pass-takes = { $best }; the pass takes { $needs }.
report-how-long-the-pass-takes-is = { $best }; how long the pass takes is not known.
report-no-span-is-long-enough-the = No span is long enough: the pass takes { $needs }. The longest is { $span }, enough for { $to_percent } of it.{ $midnight }
report-the-longest-span-is = The longest span is { $span }.
report-no-hour-of-the-day-is = No hour of the day is allowed.
report-no-hour-of-the-day-is-allowed-many-are = No hour of the day is allowed; { $many ->
        [one] one is
       *[other] { $many } are
    } doubtful, and a person decides.
report-without-a-place = without a place
report-of-cleaning-before-it = { $time } of cleaning before it
report-of-road-before-it = { $time } of road before it
report-clean-outs = { $many ->
        [0] no clean-out
        [one] 1 clean-out
       *[other] { $many } clean-outs
    }
report-out-at-home-at = out at { $from }, home at { $to }
report-lasts-in-all = { $lasts } in all
report-for-cleaning-and-road = { $clean_outs }, { $not_spraying } for cleaning and road, { $ends }
