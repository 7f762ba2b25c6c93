## core/rig/calibration/acre_fraction.rs

rig-the-course-was-driven-in-no = The course was driven in no time, so speed and flow are not known
rig-type-how-long-the-course-took = Type how long the course took, such as "23 s".
rig-nothing-was-caught-in-the-time = Nothing was caught in the time of the course
rig-type-what-one-nozzle-or-all = Type what one nozzle, or all nozzles of a row, gave in that time.
rig-1-128-acre = 1/128 acre
rig-how-far-the-nozzles-stand-apart = How far the nozzles stand apart is not typed, so the length of the course and the speed are not known
rig-type-how-the-nozzles-of-the = Type how the nozzles of the set stand along the boom.
rig-each-figure-is-taken-for-what = Each figure is taken for what the { $together } nozzles of a row gave together

## core/rig/calibration/age.rs

rig-days-before-this-pass-this-farm = { $age } days before this pass; this farm keeps to { $days }
rig-before-this-season-a-rig-is = before this season; a rig is calibrated each season
rig-with = { " " }with "{ $name }"
rig-no-calibration-of-up-to-the = No calibration of { $name }{ $with } up to the day of this pass is typed
rig-catch-the-nozzles-or-measure-the = Catch the nozzles or measure the volume over ground, and type it in the shed.
rig-the-last-calibration-of-is-of = The last calibration of { $name }{ $with } is of { $date }, { $why }
rig-calibrate-it-before-this-pass-and = Calibrate it before this pass, and type it in the shed.
rig-and-more = ; and { $more } more
rig-the-calibration-of-of-found = The calibration of { $name } of { $date } ({ $test }) found: { $text }{ $more }
rig-mend-it-and-calibrate-again-the = Mend it and calibrate again; the shed's page of the rig shows all of it.

## core/rig/calibration/catch.rs

rig-the-nozzles-were-caught-for-no = The nozzles were caught for no time, so their flow is not known
rig-type-how-long-each-nozzle-was = Type how long each nozzle was caught, such as "30 s".
rig-nothing-was-caught-at-any-nozzle = Nothing was caught at any nozzle
rig-type-what-each-nozzle-gave-such = Type what each nozzle gave, such as "32 fl oz" or "900 mL".
rig-nozzles-are-typed-as-caught-the = { $caught } nozzles are typed as caught; the set has { $count }
rig-mend-the-number-of-nozzles-of = Mend the number of nozzles of the set, or take out what was not caught.
rig-catch-at-the-nozzles = Catch at the nozzles
rig-from-each-in = { $total } from { $all }, each in { $time }
rig-flow-is-volume-time = flow is volume ÷ time

## core/rig/calibration/course.rs

rig-the-course-has-no-length-so = The course has no length, so the speed is not known
rig-type-its-length-such-as-300 = Type its length, such as "{ $example }".
rig-a-run-over-the-course-has = A run over the course has no time, so the speed is not known
rig-type-how-long-each-run-took = Type how long each run took, such as "41 s".
rig-speed-over-a-course = Speed over a course
rig-mean-of-run = mean of { $times } { $times ->
        [one] run
       *[other] runs
    }
rig-shown-in-the-cab-against-it = { $shown } shown in the cab, against it
rig-the-cab-showed-the-course-gives = The cab showed { $shown }; the course gives { $speed }, so what it shows is { $off } off
rig-set-the-speed-sensor-or-the = Set the speed sensor or the wheel size anew, and drive the course again.

## core/rig/calibration/mod.rs

rig-state-good = good
rig-state-worn = worn
rig-state-blocked = blocked
rig-another-size = another size
rig-rig-is-not-in-the-shed = Rig "{ $rig_id }" is not in the shed
rig-choose-another-rig-or-add-it = Choose another rig, or add it in the shed.
rig-the-calibration-of-is-for-nozzle = The calibration of { $date } is for nozzle set "{ $set }", which { $name } does not have
rig-choose-the-set-that-was-fitted = Choose the set that was fitted.

## core/rig/calibration/tank_level.rs

rig-nothing-was-sprayed = Nothing was sprayed
rig-type-what-it-took-to-fill = Type what it took to fill the tank up again.
rig-no-ground-was-sprayed-so-the = No ground was sprayed, so the volume over ground is not known
rig-type-the-ground-that-was-sprayed = Type the ground that was sprayed, such as "{ $example }".
rig-the-ground-is-taken-for-that = The ground is taken for that in the bands alone, as rates are in band spraying
rig-tank-level = Tank level
rig-against-as-it-was-set = against { $set_to }, as it was set
rig-the-rig-gave-where-it-was = The rig gave { $carrier } where it was set to { $set_to }, { $off }; the survey that this is held against counts a sprayer as accurate within { $show } %
rig-look-at-speed-pressure-and-nozzles = Look at speed, pressure and nozzles, mend what is off, and measure again.
rig-the-rig-was-set-to-no = The rig was set to no volume over ground
rig-type-what-it-was-set-to = Type what it was set to, such as "{ $example }", or clear it.

## core/rig/calibration/wear.rs

rig-mean-of = mean of { $near }{ $many ->
        [0] { "" }
        [one] , 1 that is far off left out
       *[other] , { $many } that are far off left out
    }
rig-a-new-one = a new one: { $of_a_nozzle } × √({ $pressure } ÷ { $at })
rig-the-mean-against-a-new-one = the mean against a new one
rig-one-alone-was-caught-so-there = { $one ->
        [row] One row
       *[nozzle] One nozzle
    } alone was caught, so there is no average to hold it against
rig-so-far-from-a-new-one = { $one ->
        [row] { $count ->
            [one] Row
           *[other] Rows
        }
       *[nozzle] { $count ->
            [one] Nozzle
           *[other] Nozzles
        }
    } { $list } { $count ->
        [one] lies
       *[other] lie
    } so far from a new one that the size is likely another
rig-so-far-from-the-others = { $one ->
        [row] { $count ->
            [one] Row
           *[other] Rows
        }
       *[nozzle] { $count ->
            [one] Nozzle
           *[other] Nozzles
        }
    } { $list } { $count ->
        [one] lies
       *[other] lie
    } so far from the others that the size is likely another
rig-read-the-number-on-the-nozzle = Read the number on the nozzle; where it is the right one, clean the nozzle and catch again, else replace it.
rig-more-than-the-average = { $one ->
        [row] { $count ->
            [one] Row
           *[other] Rows
        }
       *[nozzle] { $count ->
            [one] Nozzle
           *[other] Nozzles
        }
    } { $list } { $count ->
        [one] lies
       *[other] lie
    } more than { $loosest } % { $side ->
        [above] above
       *[below] below
    } the average
rig-more-than-the-average-allows-up = { $one ->
        [row] { $count ->
            [one] Row
           *[other] Rows
        }
       *[nozzle] { $count ->
            [one] Nozzle
           *[other] Nozzles
        }
    } { $list } { $count ->
        [one] lies
       *[other] lie
    } more than { $strictest } % { $side ->
        [above] above
       *[below] below
    } the average; { $lenient } allows up to { $loosest } %
rig-replace = { $count ->
        [one] Replace it.
       *[other] Replace them.
    }
rig-clean-and-the-strainer-and-catch = Clean { $count ->
        [one] it
       *[other] them
    } and the strainer, and catch again.
rig-look-at-the-pressure-gauge-where = Look at the pressure gauge; where it is right, replace the whole set.
rig-look-at-the-pressure-gauge-the = Look at the pressure gauge, the strainers, and the rating as it is typed.
rig-together-they-give-more-than-new = The { $one ->
        [row] rows
       *[nozzle] nozzles
    } together give { $off } % more than new ones, which give { $new }; the set is worn
rig-together-they-give-less-than-new = The { $one ->
        [row] rows
       *[nozzle] nozzles
    } together give { $off } % less than new ones, which give { $new }
rig-over-than-a-new-one-which = { $one ->
        [row] { $count ->
            [one] Row
           *[other] Rows
        }
       *[nozzle] { $count ->
            [one] Nozzle
           *[other] Nozzles
        }
    } { $list } { $count ->
        [one] gives
       *[other] give
    } over { $share } % { $side ->
        [above] more
       *[below] less
    } than a new one, which gives { $new }
rig-nothing-is-held-against-new-rating = Nothing is held against a new nozzle: what a new nozzle gives is not typed
rig-nothing-is-held-against-new-pressure = Nothing is held against a new nozzle: the pressure of the test is not typed
rig-nothing-is-held-against-new-zero = Nothing is held against a new nozzle: the rating of the nozzle set is nothing
rig-type-the-rating-of-the-nozzle = Type the rating of the nozzle set in the shed.
rig-type-the-pressure-at-the-nozzles = Type the pressure at the nozzles during the test.
rig-mend-the-rating-of-the-nozzle = Mend the rating of the nozzle set in the shed.

## core/rig/choose.rs

rig-it-is-the-set-usually-fitted = It is the set usually fitted: no nozzles need changing
rig-valves-open = , valves open { $show_whole }
rig-droplets-as-asked = ; { $classes }, as { $who ->
        [law] the law asks
        [labels-and-laws] labels and laws ask
        [label] the label asks
        [both-labels] both labels ask
       *[all-labels] all labels ask
    }
rig-gives-at-with = { $name } gives { $carrier } at { $speed } with { $pressure }{ $valves }{ $droplets }
rig-at-it-needs-beyond-the-table = At { $speed } it needs { $shown }, { $side ->
        [above] above
        [just-above] just above
        [below] below
       *[just-below] just below
    } the { $limit } of the nozzle maker's table as typed
rig-at-it-is-held-beyond-the-table = At { $speed } it is held at { $shown }, { $side ->
        [above] above
        [just-above] just above
        [below] below
       *[just-below] just below
    } the { $limit } of the nozzle maker's table as typed
rig-at-the-valves-would-stand-open = At { $speed } the valves would stand open { $open_words } of the time; they may from { $show_whole } to { $show_whole2 }
rig-at-its-droplets-are-for = At { $pressure } its droplets are { $classes }; { $who ->
        [law] the law asks
        [labels-and-laws] labels and laws ask
        [label] the label asks
        [both-labels] both labels ask
       *[all-labels] all labels ask
    } for { $droplet_words }
rig-its-droplet-table-does-not-reach = Its droplet table does not reach { $pressure }
rig-the-asks-for-at-most-over = { $who ->
        [law] The law asks
       *[label] The label asks
    } for at most { $most } over ground
rig-at = at { $least }
rig-from-to = from { $least } to { $most }
rig-not-known-it-lacks = Not known: it lacks { $lacks }
rig-it-can-be-driven = It can be driven { $speeds }
rig-at-no-pressure-of-its-table = At no pressure of its table are its droplets { $droplet_words }
rig-with-a-pressure-from-to-it = With a pressure from { $least } to { $most } it would do
rig-at-no-speed-do-pressure-droplets = At no speed do pressure, droplets and labels fit

## core/rig/clean_out.rs

rig-before = Before { $before }: { $how }

## core/rig/density.rs

rig-for = { $density } for { $name }

## core/rig/reckon.rs

rig-a-rating-above-nothing = a rating above nothing
rig-its-rating = its rating
rig-the-layout-of-its-nozzles = the layout of its nozzles
rig-a-least-pressure-below-its-most = a least pressure below its most
rig-its-range-of-pressure = its range of pressure
rig-the-pressure-it-is-held-at = the pressure it is held at
rig-its-droplet-classes = its droplet classes

## core/rig/rinse.rs

rig-of-it-nothing = nothing
rig-1-part-in = 1 part in { $show }
rig-on-about = , on about { $ground }
rig-lines-and-boom-of-hold-the = Lines and boom of { $name } hold { $volume }: the first of a new mix is not at full strength{ $ground }
rig-run-the-mix-to-the-nozzles = Run the mix to the nozzles before you start, where the label allows it.
rig-what-stays-in-when-it-runs = What stays in { $name } when it runs dry is typed as nothing; no rig runs dry to nothing, so rinsing is not reckoned
rig-what-stays-in-name-when-it-runs-dry-is = What stays in { $name } when it runs dry is not typed, so rinsing is not reckoned
rig-not-typed = not typed
rig-what-stays-in-is-nothing-so = { $goes_to }. { $says }; what stays in { $name } is typed as nothing, so it cannot be reckoned whether rinsing is enough
rig-what-stays-in-is-not-typed-so = { $goes_to }. { $says }; what stays in { $name } is not typed, so it cannot be reckoned whether rinsing is enough
rig-type-what-stays-in-tank-lines = Type what stays in tank, lines and boom in the shed; the handbook of the rig has it.
rig-until-then-clean-the-rig-out = Type what stays in tank, lines and boom in the shed; the handbook of the rig has it. Until then clean the rig out as the labels say.
rig-before-of-the-rig-is-cleaned = Before "{ $name }" of { $date } the rig is cleaned: { $what }
rig-whose-crop-is-not-typed = { $name }, whose crop is not typed
rig-whether-traces-of-hurt-what-grows = { $goes_to }; whether traces of { $what } hurt what grows there cannot be told
rig-type-the-crop-by-its-usual = Type the crop by its usual name; where it stays unknown, clean the rig out as the labels say.
rig-of-goes-to = "{ $name }" of { $date } goes to { $fields }
rig-enough-for-leave-about-that-much = , enough for { $ground }: leave about that much of the last field for it
rig-about-stay-when-it-runs-dry = About { $residual } stay when it runs dry{ $leave }.{ $rule }
rig-is-cleaned-before-its-next-pass = { $name } is cleaned before its next pass: { $next_words }. { $says }
rig-clean-it-out-as-the-labels = Clean it out as the labels say, with the steps beside the rinsing.
rig-rinse-of-each-10-of-the = { $rinses } { $rinses ->
        [one] rinse of { $tenth } each (10 % of the tank) reach that
       *[other] rinses of { $tenth } each (10 % of the tank) reach that
    }. Clean the rig out as the label says, or spray another field first.
rig-the-of-rinsing-water-on-board = the { $water } of rinsing water on board leave { $left }
rig-the-rinsing-water-on-board-is = the rinsing water on board is not typed
rig-the-rinsing-water-on-board-does = the rinsing water on board does not tell
rig-rinse-in-three-parts-through-the = Rinse in three parts, through the whole boom, and keep to what the label says of cleaning.
rig-clean-the-rig-out-as-the = Clean the rig out as the label says, or spray another field first.
rig-rinsing = Rinsing
rig-what-stays-in = what stays in { $name }
rig-ground-it-would-still-spray = ground it would still spray
rig-rinsing-water-on-board = rinsing water on board
rig-to-the-power = { $rinses } × { $each }: ({ $residual } ÷ ({ $residual } + { $each })) to the power { $rinses }{ $whose }

## core/rig/setting.rs

rig-the-pass-takes-nozzle-set-which = The pass takes nozzle set "{ $nozzles }", which { $name } does not have
rig-choose-another-set-or-add-it = Choose another set, or add it to the rig in the shed.
rig-the-speed-is-typed-as-nothing = The speed is typed as nothing, so no setting can be reckoned
rig-type-the-speed-for-the-rig = Type the speed for the rig or the pass.
rig-setting-of = Setting of { $name }
rig-band-nozzles = band { $width } ÷ { $nozzles } nozzles
rig-rows-apart-nozzles = rows { $rows } apart ÷ { $nozzles } nozzles
rig-for-each-nozzle = { $carrier } × { $speed } × { $width }, for each nozzle
rig-root-of-of-water = root of { $dense } ÷ { $water } of water
rig-as-water = × { $factor }, as water
rig-a-nozzle-gives-rated = a nozzle gives, rated, of water
rig-a-nozzle-gives-measured-on = a nozzle gives, measured on { $date }, of water
rig-of-a-nozzle-at-at = { $of_a_nozzle } at { $at }
rig-root-of = { $of_a_nozzle } × root of ({ $pressure } ÷ { $at })
rig-of-a-nozzle-of-a-nozzle2-valves-open = { $of_a_nozzle } ÷ { $of_a_nozzle2 }, valves open
rig-not-listed = not listed
rig-droplets-at-by-the-nozzle-makers = droplets at { $pressure } by the nozzle maker's table, which holds for water
rig-no-catch-with-a-pressure-is = No catch with a pressure is typed for { $name } up to the day of this pass, so its rating is used and not the flow measured
rig-type-the-calibration-of-this-set = Type the calibration of this set in the shed, or turn the measured flow off.
rig-type-it-in-the-shed = Type it in the shed.
rig-type-it-in-the-shed-size = Type it in the shed; size { $size } means { $flow } at { $at } or { $flow2 } at { $at2 }, whichever the nozzle maker's table has.
rig-lacks-so-not-all-of-its = { $name } lacks { $lacks }, so not all of its setting can be reckoned
rig-the-density-of-the-is-not = The density of the { $carrier_kind } is not typed; the setting is reckoned as for water, and the nozzles would give less
rig-type-the-density-of-the-pass = Type the density of the pass: { $offered }.
rig-is-typed-as-size-which-gives = { $name } is typed as size { $size }, which gives { $flow } at { $at }; its rating is { $flow2 } at { $at2 }
rig-look-at-the-nozzle-and-mend = Look at the nozzle and mend the size or the rating in the shed.
rig-bands-of-overlap-with-rows-apart = { $name }: bands of { $width } overlap, with rows { $rows } apart; the whole ground is sprayed
rig-mend-the-band-or-the-rows = Mend the band or the rows in the shed.
rig-or-drive-with = , or drive { $speed } with { $set }
rig-gives-with-at-is-planned = { $name } gives { $given } with { $set } at { $speed }; { $carrier } is planned
rig-set = Set { $needs }{ $slower }.
rig-it-does-or-take-another-set = It does { $carrier } { $speeds }; or take another set or volume.
rig-take-another-set-another-volume-or = Take another set, another volume or another pressure.
rig-the-droplets-of-the-pass-are = The droplets of the pass are typed as { $class }; the table of { $name } has { $classes } at { $pressure }
rig-the-class-typed-is-held-against = The class typed is held against the labels; take it out to go by the table.
rig-and-for = { $typed }, and { $who ->
        [law] the law asks
        [labels-and-laws] labels and laws ask
        [label] the label asks
        [both-labels] both labels ask
       *[all-labels] all labels ask
    } for { $droplet_words }
rig-the-class-typed-is-held-against-the-labels-see = The class typed is held against the labels. See which of the two is right: take the class out to go by the table, or mend the table in the shed.
rig-does-not-suit-this-pass-as = { $name } does not suit this pass as planned; another set does. { $gives }
rig-fit-and-choose-it-for-the = Fit { $name } and choose it for the pass.

## core/rig/before.rs

rig-before-recorded = { $rig } last sprayed "{ $name }" of { $date }, as recorded: in tank, lines and boom there may still be { $left }, which this mix does not hold
rig-before-planned = On { $rig } this pass follows "{ $name }" of { $date }, which is not recorded yet: in tank, lines and boom there may still be { $left }, which this mix does not hold
rig-before-undecided = { $count ->
        [one] { $rig } also sprays { $names } that day, and which of the two comes first is not decided: after it there may still be in tank, lines and boom { $left }, which this mix does not hold
       *[other] { $rig } also sprays { $names } that day, and which comes first is not decided: after them there may still be in tank, lines and boom { $left }, which this mix does not hold
    }
rig-before-label-says = The label of { $product } asks for cleaning: { $how }
rig-before-hurts = { $says }: { $fields }
rig-before-not-labelled = The label of { $product }, as typed, has rates for { $crops } and none for what grows on { $fields }
rig-before-unknown = Whether traces of { $what } hurt what grows there cannot be told: { $fields }
rig-before-usual = A sprayer is cleaned out between mixes that differ
rig-before-rinse-to = Clean the sprayer out: { $count ->
        [one] one rinse of { $each } clean water
       *[other] { $count } rinses of { $each } clean water each
    }, run through every valve, boom section and boom end, which leaves { $left } of the strength.
rig-before-rinse = Clean the sprayer out: { $count ->
        [one] one rinse of { $each } clean water
       *[other] { $count } rinses of { $each } clean water each
    }, run through every valve, boom section and boom end.
rig-before-clean-out = Clean the sprayer out before the first load.
rig-before-read-the-label = No label, as typed, says how: read what theirs say on cleaning.
rig-before-spared = Spray this pass before { $names } and no clean-out is due: hold it at its place in the day, or type when it starts. Otherwise:
rig-before-decide = Hold the passes at their places in the day, or type when they start.
rig-before-record-says = Its record says of cleaning: { $words }.

## core/rig/work.rs

rig-filling-and-road = filling and road
rig-filling = filling
rig-road = road
rig-the-time-for-the-pass-does = The time for the pass does not count { $lacks }
rig-type-what-is-missing-with-the = Type what is missing with the rig, the water and the fields.
rig-filling-the-flow-of-the-water = filling (the flow of the water is not typed)
rig-filling-the-flow-of-the-is = filling (the flow of the { $other } is not known)
rig-the-stop-for-each-filling = the stop for each filling
rig-adding-the-products = adding the products
rig-the-road-its-speed-is-not = the road (its speed is not typed)
rig-not-known = not known
rig-time-for-the-pass = Time for the pass
rig-spraying-turns-included = spraying, turns included
rig-filling-load = filling { $fills } { $fills ->
        [one] load
       *[other] loads
    }
rig-in-all = in all
rig-ground-in-an-hour-of-spraying = ground in an hour of spraying
rig-not-counted = not counted: { $lacks }
