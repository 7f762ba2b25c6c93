## desk/parts/boxes.rs

parts-does-not-lie-between-0-and = "{ $text }" does not lie between 0 and 100 %{ $means }
parts-is-not-a-whole-number-write = "{ $text }" is not a whole number; write it like 30
parts-e-g = e.g. { $example }
parts-understood-between = = { $least } to { $most }

## desk/parts/dates.rs

parts-moment = { $weekday } { $day } { $month }, { $time }
parts-weekday = { $weekday } { $day } { $month } { $year }
parts-short-day = { $day } { $month } { $year }
parts-short-moment = { $day } { $month } { $year }, { $time }

## desk/parts/day_picture.rs

parts-drag-it-to-hold-it-at = { $spoken }. Drag it to hold it at another place.

## desk/parts/differences.rs

parts-nothing-by-name-what-is-alike = nothing by name; what is alike stands in another order inside

## desk/parts/findings.rs

parts-stop = { $stops ->
        [one] { $stops } stop
       *[other] { $stops } stops
    }
parts-to-check = { $checks } to check
parts-nothing-to-settle = nothing to settle

## desk/parts/gauge.rs

parts-sight-gauge-of-a-tank-of = Sight gauge of a tank of { $full }, from the bottom up: { $layers }

## desk/parts/left_out.rs

parts-lines-are-left-out = { $all ->
        [one] { $all } line is left out
       *[other] { $all } lines are left out
    }
parts-to = { $from } to { $last }
parts-those-before = Those before
parts-lines-left-out-before-these = Lines left out before these
parts-those-after = Those after
parts-lines-left-out-after-these = Lines left out after these
parts-line = Line { $line }: { $why }

## desk/parts/lists.rs

parts-move-up = Move up
parts-move-down = Move down
parts-it-is-the-first-already = It is the first already
parts-it-is-the-last-already = It is the last already
parts-nothing-is-ticked-yet = Nothing is ticked yet
parts-copy = Copy
parts-remove = Remove

## desk/parts/offers.rs

parts-take = Take { $offer }
parts-probably-meant = Probably meant: { $why }

## desk/parts/setting_plot.rs

parts-speed = speed, { $speed_unit }
parts-pressure = pressure, { $pressure_unit }

## desk/parts/strip.rs

parts-not-in-the-forecast = { $time } not in the forecast
parts-no-forecast = no forecast
parts-sunrise = sunrise { $from }
parts-sunset = sunset { $to }
parts-doubtful-a-person-decides = doubtful, a person decides
parts-forbidden-by-a-label-or-a = forbidden by a label or a law
parts-the-hour-told-of-below = the hour told of below
parts-allowed = allowed

## desk/parts/workings.rs

parts-working = Working: { $title }

## desk/parts/offers.rs

parts-takes = { $keys } takes { $first }
parts-takes-and-leaving = { $keys }, or leaving the box, takes { $first }
parts-or-pick = or pick
