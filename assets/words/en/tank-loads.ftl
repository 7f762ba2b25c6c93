## desk/views/tank_loads/adjuvants.rs

tank-loads-the-sets-appear-when-the-mix = The sets appear when the mix holds a pesticide, a field and a spray volume.
tank-loads-which-adjuvant-suits-every-partner = Which adjuvant suits every partner?
tank-loads-lean-to = lean to
tank-loads-the-lean-and-the-weeds-and = The lean, and the weeds and the day, decide only where labels, advice and publications leave a choice.
tank-loads-lean-to-each = Lean to { $each }
tank-loads-no-set-suits-all = No set suits all: { $text }.
tank-loads-in-the-mix = in the mix
tank-loads-no-adjuvant = no adjuvant
tank-loads-take = Take
tank-loads-take-names = Take { $names }
tank-loads-add-and-take = Add and take
tank-loads-add-and-take-names = Add to the shed and take { $names }
tank-loads-add-and-take-does = Puts what is missing into the shed, known by its class alone, and the set into the mix
tank-loads-is-in-the-shed-with-its-class = In the shed now, with nothing but the class: { $names }. Type the rest from the label that you buy.
tank-loads-compare = Compare
tank-loads-compare-names = Compare { $names }
tank-loads-to-buy = { $rate }, to buy
tank-loads-rate-not-known = rate not known
tank-loads-no-adjuvant-14d = No adjuvant
tank-loads-price-not-typed = price not typed
tank-loads-than-set = { $why } than set { $than }
tank-loads-in-the-mix-chosen-by-hand = in the mix, chosen by hand
tank-loads-one-and-other = { $one } and { $other }

## desk/views/tank_loads/cards.rs

tank-loads-there-is-no-load-yet-so = There is no load yet, so there is no card.
tank-loads-issue-and-open-for-printing = Issue and open for printing
tank-loads-issue-and-save-as-pdf = Issue and save as PDF…
tank-loads-open-a-reprint = Open a reprint
tank-loads-save-a-reprint-as-pdf = Save a reprint as PDF…
tank-loads-open-a-reprint-of-the-old = Open a reprint of the old cards
tank-loads-save-a-reprint-of-the-old = Save a reprint of the old cards…
tank-loads-it-came-out-differently-in-the = It came out differently in the field…
tank-loads-card-of-load = Card of load
tank-loads-card-of-load-at = Card of load { $at }
tank-loads-to = { $first } to { $last }
tank-loads-issued = Issued
tank-loads-cards-the-plan-still-says-the = Cards { $range }, { $when }. The plan still says the same.
tank-loads-superseded = Superseded
tank-loads-the-plan-has-changed-since-cards = The plan has changed since cards { $range } were issued ({ $when }). Take the old cards out of the truck and issue new ones.
tank-loads-not-issued-yet = Not issued yet
tank-loads-the-picture-is-a-draft-of = The picture is a draft of what the plan says now.
tank-loads-stop-to-settle-before-cards-can = { $stops ->
    [one] { $stops } Stop to settle before cards can be issued
   *[other] { $stops } Stops to settle before cards can be issued
}
tank-loads-issued-before = Issued before
tank-loads-load = { $number }, load { $load }, { $when }
tank-loads-reprint = Reprint
tank-loads-reprint-card = Reprint card { $number }
tank-loads-holds-a-text-that-is-not = "{ $name }" holds a text that is not understood; mend it first
tank-loads-the-pass-is-gone = the pass is gone
tank-loads-a-stop-stands-settle-it-first = a Stop stands; settle it first
tank-loads-other-new-cards-are-being-laid = other new cards are being laid out; wait until they are there, or cancel them
tank-loads-the-evening-sheet = The evening sheet
tank-loads-the-evening-sheet-with = { $cards ->
        [one] The evening sheet with { $cards } card
       *[other] The evening sheet with { $cards } cards
    }
tank-loads-laying-out-the-evening-sheet = Laying out the evening sheet
tank-loads-laying-out-cards = Laying out cards
tank-loads-the-evening-sheet-was-not-written = The evening sheet was not written
tank-loads-the-cards-were-not-written = The cards were not written
tank-loads-it-is-no-longer-known-which = it is no longer known which cards were meant; choose them again
tank-loads-written-to-but = { $what } written to { $place }, but their numbers were given to other cards meanwhile, so they are not for use; issue them again
tank-loads-written-to = { $what } written to { $place }{ $since }
tank-loads-handed-to-the-systems-viewer = { $what } handed to the system's viewer: { $place }{ $since }
tank-loads-written-but-no-program-to-show = { $what } written, but no program to show PDF answered: { $place }
tank-loads-the-folder-for-passing-files = the folder for passing files: { $error }
tank-loads-count-cards = { $cards ->
        [one] { $cards } card
       *[other] { $cards } cards
    }
tank-loads-card = card
tank-loads-cards = cards

## desk/views/tank_loads/compare.rs

tank-loads-back = Back
tank-loads-back-to-all-sets = Back to all sets
tank-loads-in-the-mix-now = In the mix now
tank-loads-take-this-set-into-the-mix = Take this set into the mix
tank-loads-their-cost = their cost
tank-loads-not-known = not known
tank-loads-for-the-pass = { $currency }{ $cost } for the pass
tank-loads-all-products = all products
tank-loads-only-here = only here
tank-loads-known-once-is-in-the-shed = known once { $class } is in the shed
tank-loads-in-load = { $name } { $rate }, { $text } in load { $load }
tank-loads-nothing-to-settle-that-the-other = nothing to settle that the other has not
tank-loads-and-more = and { $only } more
tank-loads-adjuvants = adjuvants
tank-loads-why = why
tank-loads-none = none
tank-loads-member-to-buy = { $name } { $rate }, to buy

## desk/views/tank_loads/day.rs

tank-loads-large-weeds = large weeds
tank-loads-thick-weeds = thick weeds
tank-loads-more = { $weeds } more
tank-loads-weeds-and-day = Weeds and day
tank-loads-weeds = Weeds
tank-loads-volunteer-corn-waterhemp = volunteer corn, waterhemp
tank-loads-the-weeds-are = the weeds are
tank-loads-large-for-the-products = large for the products
tank-loads-they-stand-in = they stand in
tank-loads-extreme-heat = extreme heat
tank-loads-air-at-its-warmest = air at its warmest
tank-loads-air-at-its-warmest-da5 = Air at its warmest
tank-loads-carrier = Carrier
tank-loads-drought = drought
tank-loads-heat = heat
tank-loads-cold = cold
tank-loads-thick = thick
tank-loads-weeds-row = weeds
tank-loads-carrier-row = carrier
tank-loads-in-carrier = in { $carrier }

## desk/views/tank_loads/evening.rs

tank-loads-the-best-order-of-the-day = The best order of the day is being looked for; below it stands as before the last change.
tank-loads-the-order-below-is-not-looked = The order below is not looked for to the end.
tank-loads-look-for-the-best-order = Look for the best order
tank-loads-to-settle-on-this-day = To settle on this day
tank-loads-nothing-stands-against-this-order = Nothing stands against this order.
tank-loads-settle = Settle { $name }
tank-loads-without-a-rig = Without a rig
tank-loads-the-rigs-leave-at = the rigs leave at
tank-loads-the-rigs-leave-at-701 = The rigs leave at
tank-loads-and-are-home-by = and are home by
tank-loads-the-rigs-are-home-by = The rigs are home by
tank-loads-words-for-the-crew = words for the crew
tank-loads-words-for-the-crew-of-the = Words for the crew of the day
tank-loads-printed-on-the-evening-sheet = printed on the evening sheet
tank-loads-the-day-is-drawn-when-its = The day is drawn when its clock can be told: type when the rigs leave, and speed, boom width and field efficiency of the rig.
tank-loads-with-a-stop = , with a Stop
tank-loads-home-at = home at { $home }
tank-loads-leaves-at = leaves at { $leaves }
tank-loads-of-cleaning-and-road = { $not_spraying } of cleaning and road
tank-loads-take-the-best-order = Take the best order
tank-loads-take-the-best-order-for = Take the best order for { $name }
tank-loads-is-recorded-as-sprayed = { $name } is recorded as sprayed.
tank-loads-no-place = no place
tank-loads-time-not-known = time not known
tank-loads-earlier = Earlier
tank-loads-later = Later
tank-loads-let-go = Let go
tank-loads-let-go-from-its-place = Let { $name } go from its place
tank-loads-hold = Hold
tank-loads-hold-at-its-place = Hold { $name } at its place
tank-loads-join-the-loads = Join the loads
tank-loads-the-passes-are-gone = the passes are gone
tank-loads-on-the-truck = On the truck
tank-loads-nothing-yet-no-pass-of-the = Nothing yet: no pass of the day has cards.
tank-loads-evening-sheet = Evening sheet
tank-loads-open-it-for-printing = Open it for printing
tank-loads-open-the-evening-sheet-for-printing = Open the evening sheet for printing
tank-loads-save-it-as-pdf = Save it as PDF…
tank-loads-save-the-evening-sheet-as-pdf = Save the evening sheet as PDF…
tank-loads-issue-and-open-all = { $ready ->
        [one] Issue the cards of { $ready } pass and open all
       *[other] Issue the cards of { $ready } passes and open all
    }
tank-loads-issue-and-save-all = { $ready ->
        [one] Issue the cards of { $ready } pass and save all…
       *[other] Issue the cards of { $ready } passes and save all…
    }
tank-loads-the-order-of-the-day-is = the order of the day is not there yet; wait until it is, or have it looked for again
tank-loads-spray-earlier-in-the-day = Spray { $name } earlier in the day
tank-loads-spray-later-in-the-day = Spray { $name } later in the day
tank-loads-e-g-20-30 = e.g. 20:30
tank-loads-open-name = Open { $name }

## desk/views/tank_loads/forecast.rs

tank-loads-the-forecast-was-not-read = The forecast was not read
tank-loads-is-read = { $source } is read
tank-loads-forecast = Forecast
tank-loads-read-a-file = Read a file…
tank-loads-read-a-forecast-from-a-file = Read a forecast from a file…
tank-loads-type-hours-by-hand = Type hours by hand
tank-loads-a-forecast-is-no-measurement-measure = A forecast is no measurement. Measure at the boom before starting.
tank-loads-hours = { $count ->
        [one] { $count } hour
       *[other] { $count } hours
    }
tank-loads-at-to-at2 = { $at } to { $at2 }
tank-loads-there-is-none-yet-read-one = There is none yet. Read one from a CSV file of any layout, or type the hours of the pass.
tank-loads-not-said-where-from = not said where from
tank-loads-from = from { $file }
tank-loads-what-the-columns-of-hold = What the columns of { $source } hold
tank-loads-the-first = The first: { $first }
tank-loads-no-line-of-the-file-can = No line of the file can be read.
tank-loads-they-replace-the-forecast-from-on = They replace the forecast from { $at } on; earlier hours stay.
tank-loads-take-this-hour = Take this hour
tank-loads-take-these = Take these { $count } hours
tank-loads-take-the-hours = Take the hours
tank-loads-no-hour-was-read = No hour was read from it
tank-loads-taken-from = { $count ->
        [one] { $count } hour taken from { $source }
       *[other] { $count } hours taken from { $source }
    }
tank-loads-leave-it = Leave it
tank-loads-leave-the-file = Leave the file
tank-loads-its-first-lines = its first lines
tank-loads-show-more-columns = { $hidden ->
        [one] Show { $hidden } more column
       *[other] Show { $hidden } more columns
    }
tank-loads-not-taken = not taken
tank-loads-what-holds = What "{ $heading }" holds
tank-loads-as-written = as written
tank-loads-unit-of = Unit of "{ $heading }"
tank-loads-hours-of = Hours of { $day }
tank-loads-hour-to-add = Hour to add
tank-loads-add = Add { $hour }
tank-loads-each-figure-with-its-unit-what = Each figure with its unit; what is not known stays empty and is not taken for calm, dry or cool.
tank-loads-air-at = Air at { $when }
tank-loads-humidity-at = Humidity at { $when }
tank-loads-wind-at = Wind at { $when }
tank-loads-gusts-at = Gusts at { $when }
tank-loads-wind-from-at = Wind from at { $when }
tank-loads-rain-at = Rain at { $when }
tank-loads-cloud-at = Cloud at { $when }
tank-loads-column = column
tank-loads-holds = holds
tank-loads-unit = unit
tank-loads-hour = hour
tank-loads-choose = choose
tank-loads-air = air
tank-loads-humidity = humidity
tank-loads-wind = wind
tank-loads-gusts = gusts
tank-loads-wind-from = wind from
tank-loads-rain = rain
tank-loads-cloud = cloud
tank-loads-from-where = from
tank-loads-again = { $time } again
tank-loads-remove-hour = Remove { $when }
tank-loads-read-at = { $day } at { $time }
tank-loads-typed-by-hand = typed by hand

## desk/views/tank_loads/heading.rs

tank-loads-name-of-the-pass = Name of the pass
tank-loads-day-of-the-pass = Day of the pass
tank-loads-choose-fields = Choose fields
tank-loads-first-and-rest-more = { $first } and { $rest } more
tank-loads-choose-a-water = Choose a water
tank-loads-choose-a-rig = Choose a rig
tank-loads-hard = { $hardness } hard
tank-loads-type-the-spray-volume = Type the spray volume
tank-loads-load-cards-superseded = Load cards, superseded
tank-loads-load-cards = Load cards
tank-loads-plan = Plan
tank-loads-sprayer = Sprayer
tank-loads-hours-1d4 = Hours
tank-loads-jar-test = Jar test
tank-loads-in-all = { $total } in all
tank-loads-of-spraying = { $time } of spraying
tank-loads-hours-hours = Hours: { $hours }
tank-loads-fields-in-the-order-they-are = Fields, in the order they are sprayed
tank-loads-add-a-field = Add a field
tank-loads-add-a-field-e12 = + Add a field
tank-loads-the-farm-has-no-field-yet = The farm has no field yet; add the first one in Fields.
tank-loads-water = Water
tank-loads-the-shed-has-no-water-yet = The shed has no water yet; add one there with its laboratory analysis.
tank-loads-rig-and-setting = Rig and setting
tank-loads-the-shed-has-no-rig-yet = The shed has no rig yet; add the sprayer there.
tank-loads-spray-volume-a80 = spray volume
tank-loads-spray-volume-over-ground = Spray volume over ground
tank-loads-nozzle-set = nozzle set
tank-loads-speed = Speed
tank-loads-pressure = Pressure
tank-loads-by-the-nozzle-set = { $pressure } by the nozzle set
tank-loads-as-the-set-gives = as the set gives
tank-loads-as-the-rig = as the rig: { $class }
tank-loads-droplet-class = Droplet class
tank-loads-boom-height = boom height
tank-loads-boom-height-095 = Boom height
tank-loads-e-g-20-in-or-50 = e.g. 20 in or 50 cm
tank-loads-carrier-density = carrier density
tank-loads-carrier-density-bab = Carrier density
tank-loads-of = of { $carrier_kind }
tank-loads-the-tank-is-filled = the tank is filled
tank-loads-the-tank-is-filled-a1c = The tank is filled
tank-loads-not-before = not before
tank-loads-not-to-begin-before = Not to begin before
tank-loads-operator-of-the-pass = Operator of the pass
tank-loads-who-sprays-it = who sprays it
tank-loads-words-for-the-crew-0ab = Words for the crew
tank-loads-usually-fitted = usually fitted: { $fitted }
tank-loads-not-on = { $id } (not on { $name })
tank-loads-nozzle-set-229 = Nozzle set
tank-loads-the-rig-has-no-usual-one = the rig has no usual one
tank-loads-the-rigs-usual = the rig's usual { $usual }
tank-loads-not-on-the-farm = { $id } (not on the farm)
tank-loads-only = only
tank-loads-part-of-to-spray = Part of { $name } to spray
tank-loads-spray-earlier = Spray { $name } earlier
tank-loads-leave-out = Leave out
tank-loads-leave-name-out = Leave { $name } out
tank-loads-speed-row = speed
tank-loads-pressure-row = pressure
tank-loads-droplets-row = droplets
tank-loads-operator-row = operator

## desk/views/tank_loads/hours.rs

tank-loads-when-may-it-be-sprayed-on = When may it be sprayed on { $date }?
tank-loads-the-farm-has-no-forecast-yet = The farm has no forecast yet, so no hour can be judged. Open a forecast file or type the hours in the sheet below.
tank-loads-the-forecast-does-not-reach-this = The forecast does not reach this day, so no hour can be judged. Open a newer one or type the hours in the sheet below.
tank-loads-hours-of-the-day = Hours of the day
tank-loads-is-not-in-the-forecast = { $key } is not in the forecast
tank-loads-the-second-time = , the second time
tank-loads-not-given = not given
tank-loads-chance-of-rain = chance of rain
tank-loads-delta-t = Delta T
tank-loads-wet-bulb = wet bulb
tank-loads-it-is-inside-every-limit-that = It is inside every limit that is known.
tank-loads-what-speaks-against-it = What speaks against it
tank-loads-what-the-hours-are-held-against = What the hours are held against
tank-loads-outside-it = outside it
tank-loads-it-rests-on = it rests on
tank-loads-the-passes-of-in-their-order = The passes of { $date } in their order
tank-loads-go-to = Go to { $name }
tank-loads-source-not-named = source not named
tank-loads-too-short = { $span }, too short
tank-loads-no-hour-allowed = no hour allowed
tank-loads-limit = limit
tank-loads-forecast-source = Forecast: { $source }.
tank-loads-forecast-read = Forecast: { $source }, read { $read }.
tank-loads-a-forecast-is-no-measurement-measure-wind = A forecast is no measurement: measure wind, direction and temperature at the boom before starting. Do not spray in an inversion, nor toward people, water, bees or a sensitive crop.

## desk/views/tank_loads/jar.rs

tank-loads-there-is-no-jar-test-yet = There is no jar test yet; it needs the spray volume over ground, in the heading line.
tank-loads-jar-test-jar = Jar test, { $jar }
tank-loads-print = Print…
tank-loads-jar-test-to-print = Jar test, to print
tank-loads-in-the-jar = { $name } in the jar
tank-loads-not-complete-see-the-jar-tests = not complete; see the jar test's own page
tank-loads-jar-filled-to = Jar filled to
tank-loads-jar = Jar
tank-loads-not-complete-so-there-is-no = not complete, so there is no sheet to print
tank-loads-save-as-pdf = Save as PDF…
tank-loads-save-the-jar-test-as-pdf = Save the jar test as PDF…
tank-loads-look-after-and = Look after { $looks } and { $last }
tank-loads-the-jar-test-was-not-written = The jar test was not written: { $problem }
tank-loads-the-jar-test-was-not-written-72c = The jar test was not written
tank-loads-the-jar-test-is-written-to = The jar test is written to { $path }{ $since }
tank-loads-it-is-no-longer-known-which-one-was-meant = it is no longer known which one was meant; choose it again
tank-loads-the-spray-volume-over-ground-is = the spray volume over ground is not typed

## desk/views/tank_loads/loads.rs

tank-loads-loads = Loads
tank-loads-fill-the-tank-to = Fill the tank to
tank-loads-its-mark = its mark
tank-loads-fill-to = fill to
tank-loads-the-loads-appear-when-the-pass = The loads appear when the pass has fields, a rig and a spray volume.
tank-loads-full-tanks-then-a-rest = full tanks, then a rest
tank-loads-even-loads = even loads
tank-loads-by-your-aims = by your aims
tank-loads-their-order-is-set-in-the = Their order is set in the shed, on the page Farm.
tank-loads-other-sizes-of-loads = Other sizes of loads ({ $count }), spray in the tank, loads decided by hand
tank-loads-spray-in-the-tank-loads-decided = Spray in the tank, loads decided by hand
tank-loads-in-the-tank-already = in the tank already
tank-loads-in-the-tank-already-24f = In the tank already
tank-loads-this-pass = this pass
tank-loads-mixed-elsewhere = mixed elsewhere
tank-loads-the-pass-that-it-was-mixed = The pass that it was mixed for
tank-loads-beyond-the-ground = beyond the ground
tank-loads-mixed-beyond-the-ground = Mixed beyond the ground
tank-loads-load-at = load { $at }
tank-loads-load-as-decided = Load { $at } as decided
tank-loads-decide-load = Decide load { $number }
tank-loads-take-words = Take { $words }
tank-loads-load-number-volume-ground-fields = Load { $number }: { $volume }, { $ground }, { $fields }
tank-loads-nothing = nothing

## desk/views/tank_loads/mix.rs

tank-loads-tank-mix = Tank mix
tank-loads-add-the-products-of-this-pass = Add the products of this pass with their rates: "{ $volume }", "0.25 % v/v", "{ $mass }", "{ $active }".
tank-loads-water-carrier-in-load-number = { $water } { $carrier } in load { $number }
tank-loads-product-by-its-place = product, by its place
tank-loads-over-ground = over ground
tank-loads-in-this-load = in this load
tank-loads-not-in-the-shed = { $product } (not in the shed)
tank-loads-rate-of = Rate of { $name }
tank-loads-name-in-load-load = { $name } in load { $load }
tank-loads-place-of-show-the-order = Place { $number } of { $name }, show the order
tank-loads-take-it-out-of-the-mix = Take it out of the mix
tank-loads-take-out-of-the-mix = Take { $name } out of the mix
tank-loads-but-at-least-at-most-over = But at least, at most over ground
tank-loads-bounds-over-ground-for = Bounds over ground for { $name }
tank-loads-not-reckoned = not reckoned
tank-loads-see-what-there-is-to-settle = See what there is to settle
tank-loads-name-over-ground = { $name } over ground
tank-loads-but-at-least = but at least
tank-loads-least-of-over-ground = Least of { $name } over ground
tank-loads-at-most = at most
tank-loads-most-of-over-ground = Most of { $name } over ground
tank-loads-the-shed-has-no-product-yet = The shed has no product yet; add the first one there.
tank-loads-add-a-product = + Add a product
tank-loads-add-a-product-to-the-mix = Add a product to the mix
tank-loads-published-mixing-order = Published mixing order
tank-loads-first-fill = first fill
tank-loads-how-full-before-the-first-product = How full before the first product
tank-loads-rate = rate
tank-loads-order = order
tank-loads-water-short = water

## desk/views/tank_loads/mod.rs

tank-loads-no-pass-is-planned-yet = No pass is planned yet
tank-loads-its-fields-in-fields = its fields in Fields
tank-loads-its-products-in-shed = its products in Shed
tank-loads-its-water-in-shed = its water in Shed
tank-loads-its-sprayer-in-shed = its sprayer in Shed
tank-loads-plan-the-first-one-at-the = Plan the first one at the left.
tank-loads-a-pass-needs-what-the-farm = A pass needs what the farm does not have yet: first add { $missing }.
tank-loads-the-demo-farm-shows-how-it = The demo farm shows how it looks when it is all there: menu Farm, "Open a copy of the demo farm".
tank-loads-load-as-it-goes-in = Load { $number }, as it goes in
tank-loads-the-tank = The tank
tank-loads-the-gauge-fills-when-the-pass = The gauge fills when the pass has fields, a rig and a spray volume.
tank-loads-show-working = { $name }: { $text }, show working

## desk/views/tank_loads/passes.rs

tank-loads-plan-a-pass = + Plan a pass
tank-loads-recorded-as-sprayed = recorded as sprayed
tank-loads-cards-superseded = cards superseded
tank-loads-the-day-as-a-whole = The day as a whole: { $date }
tank-loads-the-day-as-a-whole-its = The day as a whole: its order, the truck, the evening sheet
tank-loads-new-pass = New pass
tank-loads-date-new-pass = { $date } new pass
tank-loads-remove = Remove "{ $name }"?
tank-loads-remove-it = Remove it
tank-loads-keep-it = Keep it
tank-loads-copy = { $date } { $name } (copy)
tank-loads-name-copy = { $name } (copy)
tank-loads-count-fields = { $fields ->
        [one] { $fields } field
       *[other] { $fields } fields
    }
tank-loads-count-loads = { $loads ->
        [one] { $loads } load
       *[other] { $loads } loads
    }
tank-loads-remove-its-issued-cards-stay = { $issued ->
    [one] Remove "{ $name }"? Its { $issued } issued card stays in the file.
   *[other] Remove "{ $name }"? Its { $issued } issued cards stay in the file.
}

## desk/views/tank_loads/preview.rs

tank-loads-load-card = Load card { $number }
tank-loads-the-card-cannot-be-laid-out = The card cannot be laid out: { $problem }
tank-loads-laying-out-the-card = laying out the card
tank-loads-the-layout-stopped = the layout stopped
tank-loads-the-picture-has-the-wrong-size = the picture has the wrong size

## desk/views/tank_loads/rest.rs

tank-loads-it-came-out-differently-in-the-field = It came out differently in the field
tank-loads-loads-filled-so-far = loads filled so far
tank-loads-none-yet = none yet
tank-loads-still-in-the-tank = still in the tank
tank-loads-still-in-the-tank-095 = Still in the tank
tank-loads-volume-from-here-on = volume from here on
tank-loads-spray-volume-from-here-on = Spray volume from here on
tank-loads-rates-from-here-on = rates from here on
tank-loads-rate-of-from-here-on = Rate of { $name } from here on
tank-loads-are-left-of-spray-load = { $loads ->
        [one] { $ground } are left: { $spray } of spray, { $loads } load
       *[other] { $ground } are left: { $spray } of spray, { $loads } loads
    }
tank-loads-no-ground-is-left = No ground is left
tank-loads-plan-the-rest-and-see-its = Plan the rest and see its cards
tank-loads-keep-what-was-sprayed = Keep what was sprayed
tank-loads-carry-it-into = Carry it into "{ $name }"
tank-loads-left-of = left of { $name }
tank-loads-ground-left-of = Ground left of { $name }
tank-loads-and-on-top-of-that = and on top of that
tank-loads-more-ground-of = More ground of { $name }
tank-loads-nothing-more = none
tank-loads-are-left-some-in-the-tank = { $loads ->
        [one] { $ground } are left: { $spray } of spray, { $tank } of them in the tank, { $loads } load
       *[other] { $ground } are left: { $spray } of spray, { $tank } of them in the tank, { $loads } loads
    }

## desk/views/tank_loads/settle.rs

tank-loads-worth-knowing = Worth knowing
tank-loads-to-settle = To settle
tank-loads-nothing-speaks-against-this-pass-as = Nothing speaks against this pass, as far as it is judged.
tank-loads-not-judged-yet-decide-from-the = Not judged yet, decide from the labels: { $not_judged }.
tank-loads-water-and-jar-test = Water and jar test
tank-loads-working-shown = Working shown
tank-loads-a-click-on-a-number-shows = A click on a number shows how it came about.
tank-loads-water-conditioner = Water conditioner
tank-loads-the-ions-tie-up = the ions tie up { $most }
tank-loads-need-of = Need of { $name }
tank-loads-no-water-is-chosen = No water is chosen.
tank-loads-nothing-in-this-mix-asks-for = Nothing in this mix asks for one.
tank-loads-words-in-load-load = { $words } in load { $load }
tank-loads-not-in-the-mix = { $name }, not in the mix:
tank-loads-none-in-the-shed = { $name }, none in the shed
tank-loads-plan-row = plan

## desk/views/tank_loads/sprayer.rs

tank-loads-which-nozzles-do-this-pass-best = Which nozzles do this pass best?
tank-loads-no-rig-is-chosen-yet-choose = No rig is chosen yet; choose it in the heading line.
tank-loads-has-no-nozzle-set-yet-type = { $name } has no nozzle set yet. Type its nozzles from the nozzle maker's table, and this page tells speed, pressure and droplets.
tank-loads-the-spray-volume-over-ground-is-not-typed-yet = The spray volume over ground is not typed yet; type it in the heading line, at the rig.
tank-loads-nothing-can-be-told-of-the = Nothing can be told of the nozzle sets of { $name }.
tank-loads-go-to-in-shed = Go to { $name } in Shed
tank-loads-show-in-the-picture = Show { $name } in the picture
tank-loads-not-as-planned = not as planned: { $as_planned }
tank-loads-in-this-pass = in this pass
tank-loads-take-the-speed = Take the speed
tank-loads-take-for-this-pass = Take { $name } for this pass
tank-loads-is-the-nozzle-set-of-this = { $name } is the nozzle set of this pass; undo brings the one before back
tank-loads-at-is-the-setting-of-this = { $name } at { $speed } is the setting of this pass; undo brings the one before back
tank-loads-pressure-and-droplets-over-speed = Pressure and droplets over speed: { $name }
tank-loads-picture-of-pressure-over-speed-with = Picture of pressure over speed with { $name }. Planned: { $figures }. { $sentence }
tank-loads-setting-of-this-pass = Setting of this pass
tank-loads-with-this-set = With this set
tank-loads-each-nozzle-gives = each nozzle gives
tank-loads-valves-open = valves open
tank-loads-not-typed = not typed
tank-loads-last-calibration = Last calibration
tank-loads-gives-what-a-new-nozzle-gives = gives what a new nozzle gives
tank-loads-of-nozzles-caught-worn-blocked-or = { $odd } of { $nozzles } nozzles caught worn, blocked or of another size
tank-loads-none-is-kept-for-this-set = None is kept for this set.
tank-loads-calibrations-in-shed = Calibrations in Shed
tank-loads-how-long-it-takes = How long it takes
tank-loads-the-time-is-known-once-the = The time is known once the rig has speed, boom width and field efficiency; type them in Shed.
tank-loads-not-in-it = Not in it: { $lacks }.
tank-loads-what-stays-in-the-rig-and = What stays in the rig, and how it is rinsed
tank-loads-this-is-known-once-the-rig = This is known once the rig has what stays in it when it runs dry; type it in Shed.
tank-loads-after-the-last-load = After the last load
tank-loads-what-stays-in-the-rig = What stays in the rig
tank-loads-stay-in-tank-lines-and-boom = stay in tank, lines and boom; how much water there is to rinse is not typed.
tank-loads-stay-in-tank-lines-and-boom-water-of-water = stay in tank, lines and boom; { $water } of water are there to rinse.
tank-loads-before-the-mix-arrives-at-the = Before the mix arrives at the nozzles { $volume } run through lines and boom.
tank-loads-no-cleaning-beyond-that-is-known = No cleaning beyond that is known to be asked for before the next pass of this rig.
tank-loads-cleaning-before-the-next-pass-of = Cleaning before the next pass of this rig
tank-loads-leaves-of-the-strength = leaves { $strength } of the strength
tank-loads-the-best-with-the-water-on = the best with the water on board
tank-loads-with-the-water-on-board = with the water on board
tank-loads-more-water-than-is-on-board = more water than is on board
tank-loads-gives-more-than-a-new-nozzle = gives { $off } % more than a new nozzle
tank-loads-gives-less-than-a-new-nozzle = gives { $off } % less than a new nozzle
tank-loads-before-the-mix-arrives-on-ground = Before the mix arrives at the nozzles { $volume } run through lines and boom, on { $ground }.
