# What stands on a load card besides names and amounts.

## Days

card-weekday-1 = Monday
card-weekday-2 = Tuesday
card-weekday-3 = Wednesday
card-weekday-4 = Thursday
card-weekday-5 = Friday
card-weekday-6 = Saturday
card-weekday-7 = Sunday
card-month-1 = January
card-month-2 = February
card-month-3 = March
card-month-4 = April
card-month-5 = May
card-month-6 = June
card-month-7 = July
card-month-8 = August
card-month-9 = September
card-month-10 = October
card-month-11 = November
card-month-12 = December
card-day = { $day } { $month } { $year }
card-day-month = { $day } { $month }
card-long-day = { $weekday } { $date }

## Head

card-load = Load { $load } of { $of }
card-load-second = Load { $load } of { $of }, second page
card-number = Card { $number }
card-not-issued = Card not issued
card-issued = Issued { $when }
card-moment = { $day }, { $time }
card-reprinted = reprinted { $when }
card-reprinted-old = reprinted { $when }; superseded, not for use
card-draft = Draft, not for use at the tank
card-reprint = Reprint:
card-read-second = Read the second page before you begin:
card-read-wear = wear
card-read-keep-out = keep out
card-read-harvest = harvest
card-read-open = what was open
card-read-cautions = cautions
card-read-emergency = emergency
card-read-unsprayed = what is left unsprayed
card-read-note = note to the crew
card-read-short = less ground

## Facts

card-field = Field
card-fields = Fields
card-area-of = { $area } of { $all }
card-area-in-bands = { $area } in bands, on { $ground } of ground
card-between-marks = { $spray }, between { $below } and { $above }
card-area-of-ground = { $area } of ground
card-fill-to = Fill to
card-with = with { $water }
card-rig = Rig
card-calibrated = calibrated { $day }
card-droplets = { $classes } droplets
card-droplets-not-told = droplets: the nozzle table does not tell
card-boom-at = boom at { $height }
card-valves-open = valves open { $share }
card-just-over = just over { $share }
card-just-under = just under { $share }
card-from-to = { $least } to { $most }
card-spray-between = Spray between
card-spray-only-with = Spray only with
card-usual-practice = Usual practice
card-this-farm = this farm
card-between = { $from } and { $to }

## Steps

card-water = Water
card-uan = Urea ammonium nitrate
card-fertilizer = Liquid fertilizer
card-named-water = water
card-named-uan = urea ammonium nitrate
card-named-fertilizer = liquid fertilizer
card-short-water = water
card-short-uan = UAN
card-short-fertilizer = fertilizer
card-in-tank = In the tank already
card-in-tank-gauge = in the tank already { $amount }
card-of-this-mix = of this mix
card-agitator-on = agitator on
card-agitate-left = agitate; { $left } are left after the last metre
card-agitate-until-empty = agitate until empty
card-clean-of = Sprayer clean of { $products }
card-clean-after = after { $names }
card-clean-if = if { $names } came before
card-clean-how = clean water through every valve, boom section and boom end
card-rinses = { $count ->
        [one] 1 rinse of { $each }
       *[other] { $count } rinses of { $each }
    }
card-clean-out = clean out
card-to = to { $mark }
card-water-to = { $water } to { $mark }
card-containers = { $containers } of { $size }
card-containers-and-rest = { $containers } of { $size } + { $rest }
card-container-jug = { $count ->
    [one] { $count } jug
   *[other] { $count } jugs
}
card-container-bag = { $count ->
    [one] { $count } bag
   *[other] { $count } bags
}
card-container-box = { $count ->
    [one] { $count } box
   *[other] { $count } boxes
}
card-container-drum = { $count ->
    [one] { $count } drum
   *[other] { $count } drums
}
card-container-tote = { $count ->
    [one] { $count } tote
   *[other] { $count } totes
}
card-handle-unopened = drop in unopened with dry gloves
card-handle-pour = pour slowly
card-handle-pour-or-slurry = pour slowly, or as a slurry (2 parts water to 1)
card-handle-slurry = make a slurry first (2 parts water to 1)
card-handle-shake = shake the container first
card-handle-dissolve-first = dissolve in water first, then pour in
card-pause-film = wait until the film is gone and the content dissolved
card-pause-dissolved = wait until dissolved
card-pause-dispersed = agitate a few minutes until dispersed

## Weather of the day

card-wind = wind
card-gusts = gusts
card-air = air
card-humidity = humidity
card-delta-t = Delta T
card-at-least = { $what } at least { $least }
card-at-most = { $what } at most { $most }
card-what-between = { $what } { $range }
card-no-wind-toward = no wind toward { $what }
card-no-wind-toward-untyped = no wind toward { $what }, whose side is not typed
card-nor = { $a }, nor { $b }
card-no-inversion = no inversion
card-time-from-to = from { $from } to { $to }
card-sunrise = sunrise
card-sunset = sunset
card-before-sunrise = { $span } before sunrise
card-after-sunrise = { $span } after sunrise
card-before-sunset = { $span } before sunset
card-after-sunset = { $span } after sunset
card-no-rain = no rain
card-no-rain-after = no rain for { $hours } h after it
card-as-its-wind = { $limit }, as for the wind
card-delta-t-good = Delta T good up to { $good }
card-neighbour-on = { $what } on the { $side } of { $field }
card-neighbour-beside = { $what } beside { $field }
card-where-no-strip = { $what } where no strip is left, beside { $field }

card-side-north = north
card-side-northeast = northeast
card-side-east = east
card-side-southeast = southeast
card-side-south = south
card-side-southwest = southwest
card-side-west = west
card-side-northwest = northwest

## Strips left unsprayed

card-unsprayed = Leave unsprayed
card-leave = leave { $strip }{ $when } ({ $who })
card-leave-planned = , as the wind is planned
card-leave-any-wind = , whichever way the wind blows
card-leave-as-soon = , as soon as the wind blows toward it
card-leave-not-drawn = , which is not drawn
card-strip-along = { $width } along { $what }
card-strip-to = { $width } to { $what }
card-strip-side = { $side } side
card-strip-all-round = on all sides
card-strip-edge = { $length } of the edge
card-no-strip = no strip is left
card-no-room-to-draw = There is no room to draw the fields; the map has them.
card-left-unsprayed = left unsprayed
card-gateway = gateway
card-north = N
card-wind-from = wind from { $from }

## Boxes

card-wear = Wear
card-after-spraying = After spraying
card-keep-out = Keep out
card-keep-out-hours = { $hours } h after the last of the spray ({ $product }){ $silent }
card-keep-out-untyped = see the labels; no re-entry time is typed
card-harvest = Harvest from
card-harvest-day = { $day }, { $days } days after this pass ({ $product }){ $silent }
card-harvest-untyped = see the labels; no harvest interval is typed
card-silent = ; none typed for { $products }
card-open = Open when this card was issued
card-stop = Stop
card-check = Check
card-note-level = Note
card-cautions = Cautions
card-emergency = In an emergency
card-note = Note to the crew
card-less-ground = Less ground
card-remarks = Remarks
card-no-room-tank = There is no room for the drawing of the tank.
card-no-room-short = there is no room for it on this card; Tank loads reckons what it takes.
card-foot = The label and local law govern. This card is a reckoning from what was typed; read the label.

## Cautions

card-said-by = { $what } ({ $who })
card-caution-not-with = Not together with { $what }
card-caution-not-with-days = Not together with { $what }, nor within { $days } days on the same field
card-caution-droplets = Droplets { $classes }
card-caution-not-toward = Not while the wind blows toward { $what }
card-caution-boom = Boom at most { $height }
card-caution-speed = Drive at most { $speed }
card-caution-keep = Keep { $width } from { $what }
card-caution-keep-downwind = Keep { $width } from { $what } where the wind blows toward it
card-usual-measure = Measure wind, direction and temperature at the boom before starting; do not spray in an inversion or toward people, water, bees or a sensitive crop.
card-usual-pour = Never pour concentrates together; let each go into water, agitated, and rinse the inductor before the next.
card-usual-air-gap = Keep an air gap or a backflow valve between the water source and the tank.
card-usual-rinse = Rinse each emptied container three times into the tank.

## Droplets

card-class-extremely-fine = extremely fine
card-class-very-fine = very fine
card-class-fine = fine
card-class-medium = medium
card-class-coarse = coarse
card-class-very-coarse = very coarse
card-class-extremely-coarse = extremely coarse
card-class-ultra-coarse = ultra coarse
card-class-or-coarser = { $class } or coarser
card-class-to = { $finest } to { $coarsest }

## Conditions

card-and = { $a } and { $b }
card-when = { $what } { $when }
card-when-heat = in extreme heat
card-when-cold = in cold
card-when-drought = in drought
card-when-large-weeds = on large weeds
card-when-thick = where weeds stand thick
card-when-weed = against { $weed }
card-when-a-weed = against a weed
card-when-with = with { $what }
card-when-with-partner = with a partner
card-when-alone = without another pesticide in the tank
card-when-no-surfactant = without a complete surfactant built in
card-when-loaded-partner = with a partner that has a complete surfactant
card-when-carrier = in { $carrier }
card-when-below = below { $rate } of spray
card-when-above = above { $rate } of spray
card-when-finer = with droplets finer than { $class }
card-when-coarser = with droplets { $class } or coarser
card-when-rate-above = at more than { $rate }
card-when-rate-up-to = at up to { $rate }
card-when-warmer = warmer than { $air }
card-when-colder = colder than { $air }

## Blanks

card-blank-wind = Wind at the boom, and from where
card-blank-gust = Gust
card-blank-temperature = Temperature
card-blank-humidity = Humidity
card-blank-start = Start
card-blank-finish = Finish
card-blank-mixed-by = Mixed by
card-blank-signature = Signature
