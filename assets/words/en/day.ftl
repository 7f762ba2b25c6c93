## core/day/fields.rs

day-its-fields-in-the-order-have = { $name }: its fields in the order { $names } have { $time } less of road than as typed
day-change-the-order-of-the-fields = Change the order of the fields in the heading line, unless other things speak for it.

## core/day/lay.rs

day-how-long-it-takes-is-not = How long it takes is not known; type speed, boom width and field efficiency of its rig
day-it-has-no-ground-yet = It has no ground to spray yet; choose its fields and type their areas
day-times-here-are-of-the-whole = { $name }: { $words }; times here are of the whole pass
day-record-what-is-left-once-it = Record what is left once it is sprayed, or lower the ground of the pass to what was.
day-is-held-at-place-which-is = { $name } is held at place { $wanted }, which is not free for it; it comes at place { $place }
day-hold-it-at-another-place-or = Hold it at another place, or let it go where it fits.

## core/day/mod.rs

day-no-rig-is-chosen-for-it = No rig is chosen for it
day-its-rig-is-not-in-the = Its rig is not in the shed
day-no-hour-is-typed-at-which = No hour is typed at which the rigs leave, so the day is counted from midnight on, and a pass begins at night
day-type-the-hour-at-which-the = Type the hour at which the rigs leave, where the first pass is not to begin so early.

## core/day/road.rs

day-the-road-from-to = the road from { $from } to { $to }
day-the-road-to = the road to { $field }
day-no-road = no road

## core/day/sheet.rs

day-is-recorded-as-sprayed = { $name } is recorded as sprayed.
day-the-label-and-the-law-win = The label and the law win over this sheet; read the label before mixing.
day-measure-before-each-start = Measure wind, direction and temperature at the boom before each start; do not spray in an inversion or toward people, water, bees or a sensitive crop.
day-not-counted-having-no-cards = Not counted, having no cards: { $stopped }.
day-no-rig-chosen = No rig chosen
day-stops = { $count ->
        [one] { $count } Stop
       *[other] { $count } Stops
    }
day-checks = { $count ->
        [one] { $count } Check
       *[other] { $count } Checks
    }
day-loads = { $count ->
        [one] { $count } load
       *[other] { $count } loads
    }
day-it-has-no-load = It has no load.
day-start-not-typed = start not typed
day-not-before = not before { $strftime }
day-not-all-of-this-time-is = Not all of this time is inside the limits
day-in-bands-treated = { $area } in bands, { $area2 } treated
day-loads-and-amounts-here-are-of = { $words }; loads and amounts here are of the whole pass.
day-too-short-for-it = { $longest }, too short for it
day-not-judged = not judged
day-no-hours = none
day-its-place-is-not-all-inside = { $best }; its place is not all inside
day-clean-out-the-rig = Clean out the rig
day-clean-out-the-rig-after = Clean out the rig after { $name } of { $day }, where that is not done
day-clean-out-from-to = from { $products } ({ $name }) to { $next }
day-road = Road
day-left-over = { $loads }, { $left } left over
day-begin-with-the-in-the-tank =
    { $of_a_pass ->
        [yes] Begin with the { $volume } in the tank, left by { $name }
       *[no] Begin with the { $volume } in the tank
    }{ $right_before ->
        [no] ; that does not come right before it
       *[yes] { "" }
    }
day-sun-up = Sun up { $sun }
day-no-rig-leaves-before = No rig leaves before { $strftime }
day-rigs-home-by = Rigs home by { $to }
day-rigs-home-by-on-the-next-day = Rigs home by { $to } of the next day
day-no-protective-equipment-is-typed = No protective equipment is typed for { $names }; see the label.
day-no-re-entry-time-is-typed = No re-entry time is typed for { $names }; see the label.
day-there-is-no-forecast-of-this = There is no forecast of this day, so no hour is judged.
day-source-not-named = source not named
day-forecast-a-forecast-is-no-measurement = Forecast: { $source }. A forecast is no measurement.
day-forecast-read = Forecast: { $source }, read { $date }, { $time }. A forecast is no measurement.

## core/day/sheet/after.rs

day-hours-of-today = { $hours } h, { $name }
day-h-of = { $hours } h, { $name } of { $date }
day-hours-h-name-of-day = { $hours } h, { $name } of { $day }
day-enter-from-if-on-time = { $moment } if on time ({ $from })
day-enter-from = { $moment } ({ $from })
day-h-after-the-last-of-the = { $hours } h after the last of the spray ({ $name })
day-see-the-labels-none-is-typed = see the labels; none is typed
day-enter-from-and-after = { $until }, and { $after }
day-days = { $days } days, { $short }
day-days-of = { $days } days, { $name } of { $date }
day-no-harvest-interval-is-typed-for = No harvest interval is typed for { $name } on { $fields }; see the label.

## core/day/sheet/truck.rs

day-lot = lot { $lot }
day-lots = lots { $lots }
day-water-source-not-chosen = Water, source not chosen
day-for-loads = { $count ->
        [one] for { $count } load
       *[other] for { $count } loads
    }
day-the-nurse-tank-is-filled-once = the nurse tank of { $name } is filled once with { $volume }
day-the-nurse-tank-is-filled-times = the nurse tank of { $name } is filled { $times } times with up to { $volume }
day-what-the-nurse-tank-of-holds = what the nurse tank of { $name } holds is not typed
day-clean-water-for-rinsing = Clean water for rinsing { $name }
day-to-begin-with-filling-it-again = to begin with; filling it again is not counted

## core/day/tell.rs

day-of = { $name } of { $day }
day-clean-the-rig-out-as-the = Clean the rig out as the labels say before it, where that was not done since.
day-clean-out-as-the-labels-say = Clean out as the labels say, hold it at a place before that, or spray it on another day.
day-no-order-without-that-is-as = No order without that is as good otherwise. Clean out as the labels say, or spray it on another day.
day-goes-to-after = { $name } goes to { $fields } after { $after }. { $says }
day-goes-to-after-whether-traces-of = { $name } goes to { $fields } after { $after }; whether traces of { $what } hurt what grows there cannot be told
day-type-the-crop-by-its-usual = Type the crop by its usual name; where it stays unknown, clean the rig out as the labels say.
day-with-what-is-held-no-order = With what is held, no order costs less; this is proven
day-no-order-costs-less-this-is = No order costs less; this is proven
day-being-home-sooner = being home sooner
day-more-than-passes-on-one-rig = More than { $exact } passes on one rig are ordered by trying, so a better order may be missed; the most it could have over this one is: { $gain }
day-held-at-place = Held at place { $at }
day-here-no-allowed-hours-are-long = Here no allowed hours are long enough for it; these are the earliest with doubtful ones among them
day-it-takes-the-same-spray-so = It takes the same spray, so it needs no clean-out, and what is left over can go on into it
day-same-spray-saves-fillings = { $count ->
        [one] It takes the same spray, so it needs no clean-out, and what is left over can go on into it; with the loads joined there is { $saved } filling fewer
       *[other] It takes the same spray, so it needs no clean-out, and what is left over can go on into it; with the loads joined there is { $saved } fillings fewer
    }
day-it-needs-no-clean-out = It needs no clean-out
day-it-has-a-stop-to-settle = It has a Stop to settle first
day-the-earliest-allowed-hours-that-are = The earliest allowed hours that are long enough
day-before = Before { $name }: { $gain }
day-held-at-their-places = Held at their places
day-it-costs-nothing = { $who }: it costs nothing
day-let-it-go-to-have-the = Let it go to have the best order again.
day-no-order-leaves-room-for-its = no order leaves room for its { $takes } beside the other passes
day-its-do-not-end-before-the = its { $takes } do not end before the rigs are to be home
day-no-span-of-the-day-is = no span of the day is long enough for its { $takes }
day-the-day-is-not-long-enough = the day is not long enough for its { $takes }
day-finds-no-place-on = { $name } finds no place on { $date }: { $no_place }
day-move-it-to-another-day-or = Move it to another day or another rig, or split it.
day-has-no-place-in-the-day = { $name } has no place in the day: how long it takes is not known
day-type-speed-boom-width-and-field = Type speed, boom width and field efficiency of its rig.
day-has-no-place-without-a-field = { $name } has no place in the day: it has no field yet
day-choose-its-fields = Choose its fields.
day-has-no-place-without-ground = { $name } has no place in the day: its fields have no area
day-type-the-areas-of-its-fields = Type their areas in Fields.
day-runs-past-midnight-until = { $name } runs past midnight, until { $strftime }
day-type-the-hour-at-which-the-rigs-are-to = Type the hour at which the rigs are to be home, where that is too late.
day-the-forecast-does-not-tell-of = The forecast does not tell of { $date }, so the hours of the passes of { $rig_name } are not judged
day-open-a-forecast-that-reaches-it = Open a forecast that reaches it.
day-the-forecast-does-not-tell-of-date-and-no = The forecast does not tell of { $date } and no hour is typed at which { $rig_name } leaves, so no hours are told, only how long things take
day-open-a-forecast-that-reaches-it-or-type-the = Open a forecast that reaches it, or type the hour at which the rigs leave.
day-hold-passes-at-places-where-you = Hold passes at places where you know a better order.
day-begins-with-spray-of-but-does = { $name } begins with spray of { $name2 }, but does not come right after it
day-begins-with-that-are-in-the = { $name } begins with { $volume } that are in the tank already, and another pass comes before it
day-hold-both-at-places-where-one = Hold both at places where one comes right after the other, or take what is in the tank out of the pass.
day-were-the-rigs-not-to-be = Were the rigs not to be home by { $strftime }, it would be home at { $strftime2 } with { $left_out } more sprayed.
day-how-fast-is-on-the-road = how fast { $rig_name } is on the road
day-not-known-and-counted-as-nothing = { $rig_name }: not known and counted as nothing: { $missing }
day-type-roads-with-the-fields-and = Type roads with the fields, and the speed on the road with the rig.

## core/day/words.rs

day-count = { $number ->
        [0] no
        [1] one
        [2] two
        [3] three
        [4] four
        [5] five
        [6] six
        [7] seven
        [8] eight
        [9] nine
        [10] ten
        [11] eleven
        [12] twelve
       *[other] { $number }
    }
day-pass = { $count ->
        [one] { $number } pass
       *[other] { $number } passes
    }
day-less-than-a-minute = less than a minute
day-more-find-a-place = { $count ->
        [one] { $passes } more finds a place
       *[other] { $passes } more find a place
    }
day-more-right-after-what-leaves-spray = { $count ->
        [one] { $passes } more right after what leaves its spray
       *[other] { $passes } more right after what leaves their spray
    }
day-fewer-in-doubtful-hours = { $more } fewer in doubtful hours
day-fewer-after-a-mix-that-hurts = { $more } fewer after a mix that hurts the crop
day-clean-out-fewer = { $count ->
        [one] { $number } clean-out fewer
       *[other] { $number } clean-outs fewer
    }
day-less-for-cleaning-and-road = { $time } less for cleaning and road
day-home-sooner = home { $time } sooner
day-more-without-a-place = { $more } more without a place
day-more-that-do-not-come-right = { $count ->
        [one] { $passes } more that does not come right after what leaves its spray
       *[other] { $passes } more that do not come right after what leaves their spray
    }
day-more-in-doubtful-hours = { $more } more in doubtful hours
day-more-after-a-mix-that-hurts = { $more } more after a mix that hurts the crop
day-clean-out-more = { $count ->
        [one] { $number } clean-out more
       *[other] { $number } clean-outs more
    }
day-more-for-cleaning-and-road = { $time } more for cleaning and road
day-home-later = home { $time } later
day-than-in-the-best-order = { $parts } than in the best order
