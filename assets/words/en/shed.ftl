## desk/views/shed/advice.rs

shed-an-adjuvant = an adjuvant
shed-what-not-to-mix-it-with = what not to mix it with
shed-in-free-words = in free words
shed-something-else = something else
shed-no-advice-yet-add-what-an = No advice yet. Add what an adviser, a dealer or a county office told you, with the day.
shed-someone-not-named = someone not named
shed-add-advice = + Add advice
shed-advice = Advice
shed-whose-advice-it-is = whose advice it is
shed-whose-it-is-a-person-or = whose it is: a person or an office
shed-who-said-it-and-of-what = Who said it, and of what
shed-given-on = given on
shed-every-pesticide = every pesticide
shed-with-water = with water
shed-which-is-gone = { $id }, which is gone
shed-what-it-says = What it says
shed-where-it-holds = Where it holds
shed-crop-of-the = { $of ->
        [advice] crop of the advice
       *[rule] crop of the rule
    }
shed-any-crop = any crop
shed-crop-from-the-fields = crop from the fields
shed-from-stage = from stage
shed-to-stage = to stage
shed-both-included = both included
shed-in-every-weather-and-carrier = in every weather and carrier
shed-add-a-condition = Add a condition
shed-add-a-condition-to-the = { $of ->
        [advice] Add a condition to the advice
       *[rule] Add a condition to the rule
    }
shed-group = group { $group }
shed-about-something-from-the-shed = about something from the shed
shed-it-speaks-of = it speaks of
shed-adjuvant-class = adjuvant class
shed-rate-at-least = rate at least
shed-at-least = at least
shed-rate-at-most = rate at most
shed-at-most = at most
shed-but-over-ground = but over ground
shed-over-ground-at-least = over ground at least
shed-over-ground-at-most = over ground at most
shed-not-together-with = not together with
shed-an-active-a-group-a-kind = an active, a group, a kind of product
shed-nor-within = nor within
shed-nor-within-days = nor within days
shed-days-before-and-after-on-the = days before and after on the same field; 0 for in the tank alone
shed-in-these-words = in these words
shed-what-was-said = what was said
shed-typed-in-the-file-choose-what = { $other }, typed in the file; choose what it speaks of
shed-which-products-it-speaks-of = Which products it speaks of
shed-none-in-the-shed-write-an = None in the shed. Write an active, a group such as "group 1", or a product as it is called here.
shed-nothing-typed-yet = nothing typed yet
shed-for = for { $advice }
shed-local-advice-stands-below = Local advice stands below every label and above general publications.
shed-about = about
shed-any = any
shed-crop = crop
shed-stages = stages
shed-conditions = conditions
shed-from-hint = from
shed-to-hint = to
shed-adjuvant = adjuvant
shed-stance-box = stance
shed-rate = rate
shed-owner = { $of ->
        [advice] advice
       *[rule] rule
    }
shed-for-where = for { $advice } { $applies }

## desk/views/shed/conditions.rs

shed-in-extreme-heat = in extreme heat
shed-in-cold = in cold
shed-in-drought = in drought
shed-on-large-weeds = on large weeds
shed-where-weeds-stand-thick = where weeds stand thick
shed-against-a-weed = against a weed
shed-with-a-partner = with a partner
shed-with-a-partner-that-has-a = with a partner that has a complete surfactant
shed-without-another-pesticide-in-the-tank = without another pesticide in the tank
shed-without-a-complete-surfactant-built-in = without a complete surfactant built in
shed-in-a-carrier = in a carrier
shed-below-a-spray-volume = below a spray volume
shed-above-a-spray-volume = above a spray volume
shed-with-droplets-finer-than-a-class = with droplets finer than a class
shed-with-droplets-of-a-class-or = with droplets of a class or coarser
shed-above-a-rate = above a rate
shed-up-to-a-rate = up to a rate
shed-in-air-warmer-than = in air warmer than
shed-in-air-colder-than = in air colder than
shed-but-at-least-or-at-most = but at least, or at most, over ground
shed-it-says-so-only = It says so only
shed-only-under-a-condition = Only under a condition
shed-but-at-least = but at least
shed-at-least-over-ground = { $name } at least over ground
shed-and-at-most = and at most
shed-at-most-over-ground = { $name } at most over ground
shed-over-ground = over ground
shed-condition = { $name } condition { $at }
shed-group-active-class = group, active, class
shed-with-droplets-finer-than = with droplets finer than
shed-with-droplets = with droplets
shed-or-coarser = or coarser
shed-up-to = up to
shed-warmer-than = warmer than
shed-colder-than = colder than
shed-only = only
shed-and-also = and
shed-against = against
shed-weed = weed
shed-with = with
shed-in = in
shed-below = below
shed-above = above

## desk/views/shed/front.rs

shed-front-panel = Front panel
shed-not-stated = not stated
shed-not-looked-at-for-a = not looked at for a { $kind }
shed-signal-word = signal word
shed-restricted-use = restricted use
shed-yes-for-certified-applicators-only = yes, for certified applicators only
shed-surfactant-built-in = surfactant built in
shed-not-typed = not typed
shed-no-none = no, none
shed-yes-charge-not-stated = yes, charge not stated
shed-yes = yes, { $charge }
shed-the-label-says-that-no-other = the label says that no other is needed
shed-the-label-says-that-no-other-surfactant-is-needed = the label says that no other surfactant is needed
shed-it-serves-this-product-a-partner = It serves this product; a partner may want another.
shed-of-the-surfactant-in-it = of the surfactant in it
shed-add-an-active = + Add an active
shed-the-content-says = the content says { $short }
shed-counted-as = counted as { $short }
shed-usually-the-label-decides = usually { $usual }; the label decides
shed-formulation = formulation
shed-grade = grade
shed-density = density
shed-registration = registration
shed-charge = charge
shed-active-row = active
shed-group-row = group
shed-no = no
shed-active-n = active { $n }
shed-content-of = content of { $what }
shed-basis-of = basis of { $what }
shed-group-of = group of { $what }
shed-another-active = + Another active

## desk/views/shed/guidance.rs

shed-local-advice = Local advice
shed-published = Published
shed-common-practice = Common practice
shed-what-others-print = What others print
shed-no-guidance-read-the-label = No guidance: read the label.
shed-guidance-to-be-checked-what-you = Guidance to be checked; what you type from the label decides.
shed-the-label-says-the-same = The label says the same, { $place }.
shed-on-the-label-as-well-type = On the label as well; type its page there.
shed-the-label-speaks-of-it-in = The label speaks of it in its own way.
shed-it-stands-on-the-label-too = It stands on the label too…
shed-adds-it-to-the-label-where = Adds it to the label, where you type the page on which you found it
shed-it-stands-on-the-label-too-says-applies-source = It stands on the label too: { $says } { $applies } { $source }
shed-with-a-water-that-is-gone = with a water that is gone, { $water }
shed-with-water-of = with water of { $name }
shed-but = { $text }, but { $bound }
shed-not-together-with-what = not together with { $what }
shed-not-together-with-nor-within-of = { $days ->
        [one] not together with { $what }, nor within { $days } day of it
       *[other] not together with { $what }, nor within { $days } days of it
    }
shed-to = { $number } to { $most }
shed-least-to-most = { $least } to { $most }
shed-at-least-least = at least { $least }
shed-at-most-most = at most { $most }
shed-from-on = from { $from } on
shed-up-to-to = up to { $to }
shed-from-to = from { $from } to { $to }
shed-one-or-other = { $one } or { $other }
shed-but-both = { $text }, but { $least } and { $most }
shed-in-crop = in { $crop }
shed-the-label-speaks-of-it-in-place = The label speaks of it in its own way, { $place }.

## desk/views/shed/house.rs

shed-what-holds-for-all-passes-the = What holds for all passes: the name on the cards, the units, the paper, the marks you measure with.
shed-units = Units
shed-these-are-the-units-that-numbers = These are the units that numbers are shown in. What you type may be in any, and stays as typed.
shed-a-bare-gal-is-the-us = A bare "gal" is the US gallon. Write "imp gal" for the imperial one.
shed-where-the-usual-limits-come-from = Where the usual limits come from
shed-name-of-the-farm = name of the farm
shed-reading = Reading
shed-us-gallons-pounds-acres = US: gallons, pounds, acres
shed-imperial-imperial-gallons-pounds-acres = imperial: imperial gallons, pounds, acres
shed-metric-litres-kilograms-hectares = metric: litres, kilograms, hectares
shed-sign-of-the-currency = sign of the currency
shed-load-cards = Load cards
shed-language-of-the-cards = language of the cards
shed-names-and-what-you-type-from = names, and what you type from a label, stand as you typed them
shed-in-an-emergency = in an emergency
shed-telephone-lines-for-an-emergency = telephone lines for an emergency
shed-measuring = Measuring
shed-finest-mark-liquids = finest mark, liquids
shed-finest-mark-for-liquids = finest mark for liquids
shed-amounts-are-rounded-to-it-a = amounts are rounded to it; a product may have its own
shed-finest-mark-dry = finest mark, dry
shed-finest-mark-for-dry-products = finest mark for dry products
shed-place = Place
shed-latitude-longitude = latitude, longitude
shed-time-zone = time zone
shed-is-not-a-time-zone-known = is not a time zone known here
shed-zones-that-may-be-meant = Which is meant?
shed-zones-of-the-nearest-cities = Of the nearest cities; check whether yours is the same:
shed-height-above-the-sea = height above the sea
shed-not-known = not known
shed-for-the-pressure-of-the-air = for the pressure of the air, which Delta T rests on
shed-sizes-of-loads = Sizes of loads
shed-what-comes-first-weighs-more-than = What comes first weighs more than all that follows it. It holds for passes whose loads are sized by these aims.
shed-move-up = Move up
shed-move-down = Move down
shed-fields-that-share-no-load = Fields that share no load
shed-two-fields-one-after-the-other = Two fields one after the other are sprayed from different loads where they differ in what is ticked.
shed-less-ground-than-planned = Less ground than planned
shed-rows-on-the-card-every = rows on the card every
shed-so-that-they-fit = so that they fit
shed-of-ground = of ground
shed-what-this-farm-keeps-to = What this farm keeps to
shed-where-no-label-and-no-law = Where no label and no law says more. A box left empty stands for the usual value that is shown in it.
shed-wind-at-least = wind at least
shed-wind-at-most = wind at most
shed-gusts-at-most = gusts at most
shed-delta-t-good-from = Delta T good from
shed-delta-t-good-up-to = Delta T good up to
shed-delta-t-at-most = Delta T at most
shed-air-at-least = air at least
shed-air-at-most = air at most
shed-wet-from-a-chance-of = wet from a chance of
shed-neighbours-nearer-than = neighbours nearer than
shed-calibration-is-old-after = calibration is old after
shed-days-after-which-a-calibration-is = days after which a calibration is old
shed-its-season = its season
shed-the-usual-value = The usual value: { $key }
shed-units-row = units
shed-paper = paper
shed-language = language
shed-latitude = latitude
shed-longitude = longitude
shed-days-row = days
shed-calibration-limit = calibration
shed-letter = Letter

## desk/views/shed/laws.rs

shed-no-rule-yet-add-what-the = No rule yet. Add what the law asks where you spray: wind, times of day, strips, droplets.
shed-add-a-rule = + Add a rule
shed-law = Law
shed-when-it-holds = When it holds
shed-it-ends-before-it-begins-so = It ends before it begins, so it never holds; mend the days.
shed-from-on-so-not-yet = From { $since } on, so not yet.
shed-it-ended-with-and-is-held = It ended with { $until } and is held against no pass after it.
shed-now-and-up-to-and-including = Now, and up to and including { $until }.
shed-now-and-until-you-type-its = Now, and until you type its end.
shed-name-of-the-rule = name of the rule
shed-its-name-and-paragraph = its name and paragraph
shed-when-and-for-what = When, and for what
shed-in-force-since = in force since
shed-up-to-and-including = up to and including
shed-it-stands-on-the-load-cards = It stands on the load cards; the program does not hold plans against a rule of this kind.
shed-it-is-kept-here-for-you = It is kept here for you to read; the program does not hold plans against a rule of this kind, and says so.
shed-gusts-at-most-gust = gusts at most { $gust }
shed-not-with-wind-toward = not with wind toward { $what }
shed-not-while-warm-air-lies-over = not while warm air lies over cold
shed-of = of { $width }
shed-for-h = for { $hours } h
shed-not-before = not before { $from }
shed-not-after = not after { $to }
shed-at-most-0e5 = { $most } at most { $per }
shed-the-program-knows-no-law = The program knows no law. It holds your passes against what you type here, below the labels and above practice.
shed-for-law = For { $law }: { $said }
shed-for-law-where = For { $law } { $applies }: { $said }
shed-of-to = of { $width } to { $to }

## desk/views/shed/mod.rs

shed-products = Products
shed-waters = Waters
shed-rigs = Rigs
shed-stock = Stock
shed-records = Records
shed-farm = Farm
shed-find-a-product = find a product
shed-find-by-name-or-active = find by name or active
shed-its-name = its name
shed-remove = Remove: { $what }
shed-remove-what = Remove { $what }
shed-passes-use = { $uses ->
        [one] { $uses } pass uses { $name }
       *[other] { $uses } passes use { $name }
    }
shed-remove-it-all-the-same = Remove it all the same
shed-keep-it = Keep it
shed-no-name-yet = no name yet

## desk/views/shed/products.rs

shed-herbicides = Herbicides
shed-fungicides = Fungicides
shed-insecticides = Insecticides
shed-growth-regulators = Growth regulators
shed-adjuvants-and-conditioners = Adjuvants and conditioners
shed-foliar-feeds = Foliar feeds
shed-others = Others
shed-groups = groups { $groups }
shed-none-on-hand = none on hand
shed-on-hand = { $round } on hand
shed-not-counted = not counted
shed-no-product-yet-take-a-label = No product yet. Take a label booklet and add the first one: its front panel first, then page by page. Without a booklet at hand, begin from an active.
shed-no-product-has-this-in-its = No product has this in its name or among its actives.
shed-short-by = { $name }, { $summary }, short by { $round }
shed-name-copy = { $name }, copy
shed-here-stands-what-a-label-says = Here stands what a label says, in the order of the label: front panel, each pass, crop and season, people. Add a product at the left and type it from its booklet, or begin from its active.
shed-no-planned-pass-uses-it = No planned pass uses it.
shed-name-of-the-product = name of the product
shed-typed-from = typed from
shed-which-label-and-when = which label, and when
shed-containers-and-price = Containers and price
shed-sold-in = sold in
shed-add-a-container = + Add a container
shed-measuring-step = measuring step
shed-as-everywhere-on-the-farm = as everywhere on the farm
shed-price = price, { $currency }
shed-container-n = container { $n }
shed-size-of-container = size of container { $n }
shed-full-of-container = full of container { $n }
shed-opened-of-container = opened of container { $n }
shed-full-and = full, and
shed-nothing = nothing
shed-another-container = + Another
shed-add-container = Add a container

## desk/views/shed/records.rs

shed-what-your-records-are-kept-for = What your records are kept for. Each record then says what it lacks, and by which day it is due.
shed-asks-for = asks for: { $names }
shed-codes-of-crops = Codes of crops
shed-a-record-takes-the-eppo-code = A record takes the EPPO code of a crop whose name is in the table. Contains EPPO Codes (www.eppo.int). Look a code up there before you rely on it.
shed-the-profiles-are-a-help-to = The profiles are a help to keep what some rules ask for, as far as they were found; each says how sure it is.
shed-who-keeps-them = Who keeps them
shed-name-of-the-business = name of the business
shed-who-keeps-the-records = who keeps the records
shed-address-of-the-business = address of the business
shed-and-how-it-is-reached = and how it is reached
shed-number-of-the-business = number of the business
shed-with-the-authority = with the authority
shed-kept-for = Kept for
shed-is-not-known-to-this-program = "{ $key }" is not known to this program, so no record is held against it
shed-by-when-is-not-known-here = by when is not known here
shed-due = due { $due }
shed-kept = kept { $keep_words }
shed-asked-for-on-top = Asked for on top
shed-elements-that-a-buyer-a-scheme = Elements that a buyer, a scheme or the law of your place asks for. Each record has a box for them.
shed-add-an-element = + Add an element
shed-address = address
shed-number = number
shed-profile = For { $scope }; { $due }; { $keep }.
shed-profile-until = For { $scope }, up to { $day }; { $due }; { $keep }.
shed-profile-from = From: { $source } ({ $evidence }).
shed-name-of-element = Name of element { $number }
shed-who-asks-for-element = Who asks for element { $number }
shed-days-until-element-is-due = Days until element { $number } is due
shed-element = element { $number }
shed-what-it-is = what it is
shed-who-asks = who asks
shed-restricted-only = restricted only

## desk/views/shed/rigs/calibrations.rs

shed-what-was-measured-the-latest-first = What was measured, the latest first
shed-nothing-yet-calibrate-before-the-season = Nothing yet. Calibrate before the season and after nozzles are changed: catch at the nozzles to find worn ones, and time a course to know the speed. Use clean water, not spray.
shed-for-the-plans = for the plans
shed-reckon-with-the-flow-measured-last = reckon with the flow measured last
shed-in-place-of-that-of-new = in place of that of new nozzles
shed-of-another-size = { $count } of another size
shed-inside-the-rules = { $nozzles ->
        [one] { $nozzles } nozzle inside the rules
       *[other] { $nozzles } nozzles inside the rules
    }
shed-nothing-measured-yet = nothing measured yet
shed-day-of-the-calibration = day of the calibration
shed-measured-by = measured by
shed-who-measured = who measured
shed-nozzle-set = nozzle set
shed-usually = usually { $usual }
shed-at-the-nozzles = at the nozzles
shed-pressure-meanwhile = pressure meanwhile
shed-mean-flow-of-a-nozzle = mean flow of a nozzle
shed-against-a-new-one = against a new one
shed-volume-over-ground = volume over ground
shed-against-what-was-set = against what was set
shed-the-cab-against-it = the cab against it
shed-type-what-was-measured-to-see = Type what was measured to see it.
shed-how-it-is-reckoned = How it is reckoned
shed-note-on-the-calibration = note on the calibration
shed-test-of-day = { $test } of { $day }
shed-count-worn = { $count } worn
shed-count-blocked = { $count } blocked
shed-day = day
shed-by = by

## desk/views/shed/rigs/form.rs

shed-tank = Tank
shed-full-to-its-mark = full to its mark
shed-finest-mark = finest mark
shed-on-the-tank-or-the-meter = on the tank or the meter; loads are sized to it
shed-least-that-is-stirred = least that is stirred
shed-boom = Boom
shed-working-width = working width
shed-usual-height = usual height
shed-of-the-nozzles-above-what-is = of the nozzles above what is sprayed
shed-nozzles = Nozzles
shed-usually-fitted = usually fitted
shed-nozzle-sets-of-this-rig = Nozzle sets of this rig
shed-usual-setting = Usual setting
shed-field-efficiency = field efficiency
shed-share-of-the-time-that-is = share of the time that is spent spraying
shed-filling-and-road = Filling and road
shed-stop-of-a-filling = stop of a filling
shed-hose-on-and-off-rinsing-jugs = hose on and off, rinsing jugs; without running water
shed-each-product-added = each product added
shed-nurse-tank-holds = nurse tank holds
shed-speed-on-the-road = speed on the road
shed-rinsing = Rinsing
shed-stays-when-run-dry = stays when run dry
shed-in-tank-lines-and-boom = in tank, lines and boom
shed-lines-and-boom-hold = lines and boom hold
shed-between-the-tank-and-the-nozzles = between the tank and the nozzles
shed-clean-water-tank = clean-water tank
shed-anything-else = Anything else
shed-anything-else-380 = anything else
shed-angle-size-how-far-apart = angle, size, how far apart
shed-from-the-nozzle-makers-table-at = from the nozzle maker's table, at the usual pressure
shed-type-a-nozzle-set = Type a nozzle set
shed-then-speed-pressure-and-droplets-can = then speed, pressure and droplets can be reckoned for a pass
shed-pulsed-valves = pulsed valves
shed-valves-pulse = valves pulse
shed-valves-that-open-and-close-the = valves that open and close the nozzles many times a second
shed-open-at-least = open at least
shed-least-share-open = least share open
shed-most-share-open = most share open
shed-of-the-time = of the time
shed-note = note
shed-pressure = pressure
shed-speed = speed
shed-nozzles-row = nozzles
shed-droplets-row = droplets

## desk/views/shed/rigs/mod.rs

shed-rig = Rig
shed-nozzle-sets = Nozzle sets
shed-calibration = Calibration
shed-no-rig-yet-walk-round-the = No rig yet. Walk round the sprayer and add it: the tank first, then the boom.
shed-tank-boom = tank { $tank } · boom { $boom }
shed-tank-tank = tank { $tank }
shed-tank-still-to-type = tank still to type
shed-add-a-rig = + Add a rig
shed-here-stands-what-a-load-must = Here stands what a load must fit into, and how fast it is sprayed.
shed-name-of-the-rig = name of the rig

## desk/views/shed/rigs/nozzles.rs

shed-sets = Sets
shed-no-nozzle-set-yet-with-one = No nozzle set yet. With one, speed, pressure and droplets are reckoned for each pass that goes with this rig, and a calibration is held against new nozzles.
shed-the-first = { $first }, the first
shed-at = { $flow } at { $at }
shed-apart = { $spacing } apart
shed-bands-of-over-rows-apart = bands of { $width } over rows { $rows } apart
shed-at-each-row-rows-apart = { $nozzles } at each row, rows { $rows } apart
shed-add-a-nozzle-set = + Add a nozzle set
shed-new-set = New set
shed-set = set { $name }
shed-the-set = The set
shed-name-of-the-set = name of the set
shed-angle-and-size-or-what-you = angle and size, or what you call it
shed-number-on-the-boom = number on the boom
shed-working-width-by-how-far-apart = working width by how far apart they stand
shed-else-working-width-by-how-far = else working width by how far apart they stand
shed-width-by-spacing-gives = width by spacing gives { $usual }
shed-pressures-of-the-nozzle-makers-table = Pressures of the nozzle maker's table
shed-least-pressure = least pressure
shed-most-pressure = most pressure
shed-note-on-the-set = note on the set
shed-rated-as-typed = { $name }, rated as typed
shed-by-us-gal-min-at = { $name }, by US gal/min at { $at }
shed-by-l-min-at = { $name }, by L/min at { $at }
shed-after-iso-10625-it-fills-in = after ISO 10625, { $colour }; it fills in the rating
shed-after-iso-10625-stamped-on-it = after ISO 10625, stamped on it; it fills in the rating
shed-a-new-one-gives = a new one gives
shed-at-the-pressure = at the pressure
shed-of-water = of water
shed-of-water-and-at-which-pressure = of water, and at which pressure
shed-over-the-whole-ground = over the whole ground
shed-band-over-each-row = band over each row
shed-directed-at-each-row = directed at each row
shed-they-spray = they spray
shed-nozzles-apart = nozzles apart
shed-from-nozzle-to-nozzle = from nozzle to nozzle
shed-width-of-the-band = width of the band
shed-wide-rows = wide, rows
shed-rows-apart = rows apart
shed-nozzles-to-a-row = nozzles to a row
shed-to-a-row = to a row
shed-volumes-and-rates-of-its-passes = Volumes and rates of its passes hold for the ground in the bands.
shed-droplets = Droplets
shed-the-classes-are-those-of-asabe = The classes are those of ASABE S572 and ISO 25358. Copy them by hand from the nozzle maker's table: the program does not know any maker's table.
shed-add-a-line = + Add a line
shed-droplets-get-coarser = { $high } has coarser droplets than { $low } here, but more pressure makes finer ones: look at both lines in the nozzle maker's table.
shed-pressure-line = pressure, line { $line }
shed-passes-speak-of = { $passes ->
        [one] { $passes } pass speaks of { $name }
       *[other] { $passes } passes speak of { $name }
    }
shed-calibrations-speak-of = { $calibrations ->
        [one] { $calibrations } calibration speaks of { $name }
       *[other] { $calibrations } calibrations speak of { $name }
    }
shed-passes-and-calibrations-speak-of = { $passes ->
        [one] { $passes } pass and { $calibrations ->
            [one] { $calibrations } calibration speak of { $name }
           *[other] { $calibrations } calibrations speak of { $name }
        }
       *[other] { $passes } passes and { $calibrations ->
            [one] { $calibrations } calibration speak of { $name }
           *[other] { $calibrations } calibrations speak of { $name }
        }
    }
shed-name = name
shed-size = size
shed-at-pressure = at
shed-apart-and = apart,
shed-rows = rows
shed-at-a-pressure-of = at a pressure of
shed-droplets-line = droplets, line { $line }
shed-line-of-the-droplets = line { $line } of the droplets

## desk/views/shed/rigs/sheets.rs

shed-no-planned-pass-goes-with-it = No planned pass goes with it.
shed-no-planned-pass-goes-with-this = No planned pass goes with this set.
shed-how-much-it-covers = How much it covers
shed-type-working-width-speed-and-field = Type working width, speed and field efficiency to see it.
shed-with-nothing-of-speed-width-or = With nothing of speed, width or efficiency it covers nothing.
shed-while-in-the-field = while in the field
shed-filling-and-the-road-are-not = Filling and the road are not in it.
shed-type-what-the-clean-water-tank = Type what the clean-water tank holds to see how to use it.
shed-plan-a-pass-with-it-to = Plan a pass with it to see how to use the clean water.
shed-type-what-stays-when-it-is = Type what stays when it is run dry, and what the clean-water tank holds.
shed-after = After { $name }.
shed-counted-of-each = { $rinses ->
        [one] { $rinses } rinse of { $each }
       *[other] { $rinses } rinses of { $each }
    }
shed-more-than-the-clean-water-tank = more than the clean-water tank holds
shed-left = { $left } left
shed-what-stays-would-spray = what stays would spray

## desk/views/shed/rigs/ways.rs

shed-catch-at-the-nozzles = + Catch at the nozzles
shed-1-128-acre = + 1/128 acre
shed-speed-over-a-course = + Speed over a course
shed-tank-level = + Tank level
shed-a-bare-number-is-taken-as = A bare number is taken as { $units }.
shed-stand-with-the-boom-out-at = Stand, with the boom out, at the pressure you spray with. Read it at the boom and type it below.
shed-hold-a-jug-under-each-nozzle = Hold a jug under each nozzle for { $time } and type what is in it, from the left end of the boom to the right as you drive. { $bare }
shed-a-sample-across-the-boom-will = A sample across the boom will do; leave the others empty.
shed-drive-it-in-the-field-with = Drive it in the field with the gear and engine speed you spray with, up to speed before its start, and time it.
shed-mark-a-course-in-the-field = Mark a course in the field, not on the road: the longer, the better the time tells.
shed-fill-the-tank-half-and-be = Fill the tank half, and be up to speed before its start.
shed-time-two-runs-or-more-one = Time two runs or more, one each way, and type what the cab showed. A bare number is taken as s.
shed-stand-level-and-fill-the-tank = Stand level and fill the tank with clean water to a mark you can find again.
shed-spray-it-on-a-measured-piece = Spray it on a measured piece of ground with the setting you spray with.
shed-stand-on-the-same-place-fill = Stand on the same place, fill up to the same mark, and measure what it takes.
shed-mark-a-course-of-in-the = Mark a course of { $course } in the field: over it, a width of { $width } is 1/128 acre.
shed-mark-the-course-on-which-what = Mark the course on which what is caught together sprays 1/128 acre. Type under Nozzle sets how they stand, and its length is told here.
shed-caught-for = caught for
shed-each-nozzle = each nozzle
shed-time-of-the-course = time of the course
shed-length-of-the-course = length of the course
shed-the-cab-showed = the cab showed
shed-not-noted = not noted
shed-ground-sprayed = ground sprayed
shed-took-to-fill-up = took to fill up
shed-it-was-set-to = it was set to
shed-left-to-right = left to right; the bar and "average" against the average of those caught
shed-type-under-nozzle-sets-how-many = Type under Nozzle sets how many there are, or how they stand, to see a box for each.
shed-nozzle = nozzle { $at }
shed-nozzle-place-flow-state = nozzle { $place }: { $flow }, { $state }
shed-rinse-the-sprayer-and-put-clean = Rinse the sprayer and put clean water into it. Catch water, never spray, and wear gloves all the same.
shed-stand-and-catch-what-the-nozzles-of-a-row = Stand, with the same engine speed and pressure, and catch for that time what the { $together } nozzles of a row give together. Type it once for each that you catch. { $bare }
shed-stand-and-catch-what-one-nozzle-gives = Stand, with the same engine speed and pressure, and catch for that time what one nozzle gives. Type it once for each that you catch. { $bare }
shed-caught = caught
shed-course = course
shed-runs = runs
shed-run = run
shed-average = average
shed-new = new
shed-left-to-right-with-new = left to right; the bar and "average" against the average of those caught, "new" against a new nozzle

## desk/views/shed/sheets.rs

shed-perhaps-typed-wrongly = Perhaps typed wrongly
shed-where-it-is-planned = Where it is planned
shed-on-hand-d01 = On hand
shed-no-container-is-typed-so-nothing = No container is typed, so nothing is counted.
shed-nothing-is-counted-yet-where-there = Nothing is counted yet. Where there is none, type the day of the count in Stock.
shed-its-containers-are-counted-by-volume = Its containers are counted by volume and by weight; give its density to add them up.
shed-in-all = in all
shed-planned-passes-take = passes not recorded yet take
shed-left-then = left after them
shed-short-by-round = short by { $round }
shed-where-it-went = Where it went
shed-no-record-holds-it-yet = No record holds it yet.
shed-count-passes = { $passes ->
        [one] { $passes } pass
       *[other] { $passes } passes
    }
shed-count-fields = { $fields ->
        [one] { $fields } field
       *[other] { $fields } fields
    }

## desk/views/shed/start.rs

shed-from-a-label = + From a label
shed-from-an-active = + From an active…
shed-active-formulation-content = Active, formulation, content
shed-start-from-an-active = start from an active
shed-add-it = Add it
shed-not-now = Not now
shed-known-actives = known actives
shed-known-active = known active
shed-formulation-to-start-with = formulation to start with
shed-group-not-known = group not known
shed-group-content-counted-as-short = { $group }, { $content }, counted as { $short }
shed-take = Take { $name }

## desk/views/shed/statements.rs

shed-each-pass = Each pass
shed-crop-and-season = Crop and season
shed-people = People
shed-stance = { $name } stance
shed-for-crop = { $name } for crop
shed-name-from-stage = { $name } from stage
shed-name-to-stage = { $name } to stage
shed-name-at = { $name } at
shed-only-if = { $name } only if
shed-counted = { $name } counted
shed-name-at-most = { $name } at most
shed-active = { $name } active
shed-common-name = common name
shed-hint-wind = wind
shed-hint-product = product
shed-days-apart = { $name } days apart
shed-days-apart-ddc = days apart
shed-may-be-used-in-these-stages = may be used in these stages
shed-days = { $name } days
shed-days-before-harvest-or-grazing = days before harvest or grazing
shed-hours = { $name } hours
shed-hours-without-protection = hours, without protection
shed-is = { $name } is
shed-months = { $name } months
shed-class-or-coarser = { $class } or coarser
shed-finest = { $name } finest
shed-any-coarser = any coarser
shed-class-at-most = { $class } at most
shed-coarsest = { $name } coarsest
shed-name-at-least = { $name } at least
shed-name-gusts-at-most = { $name } gusts at most
shed-not-toward = not toward
shed-what-lies-beside-it-apart-by = what lies beside it, apart by commas
shed-from = { $name } from
shed-name-to = { $name } to
shed-above-what-is-sprayed = above what is sprayed
shed-before = { $name } before
shed-how-in-the-labels-words = how, in the label's words
shed-width = { $name } width
shed-what-lies-beside-it = what lies beside it
shed-down-the-wind-only = down the wind only
shed-hours-without-rain = hours without rain
shed-class = { $name } class
shed-before-all-others = before all others
shed-after-all-others = after all others
shed-name-place = { $name } place
shed-tank-filled-to = tank filled to
shed-name-tank-filled-to = { $name } tank filled to
shed-active-group-class-or-product = active, group, class or product
shed-within-days = { $name } within days
shed-month-and-day = month and day
shed-weeds-apart-by-commas = weeds, apart by commas
shed-gloves-boots-in-the-labels-words = gloves, boots, …, in the label's words
shed-in-the-labels-words = in the label's words
shed-still-to-type = still to type
shed-another-statement-from-the-label = + Another statement from the label
shed-what-does-the-label-say-next = What does the label say next?
shed-nothing-more = Nothing more
shed-add = Add { $name }
shed-page = page
shed-if = if
shed-after-months = after
shed-months-box = months
shed-gusts = gusts
shed-from-box = from
shed-to-box = to
shed-before-box = before
shed-any-value = any

## desk/views/shed/stock/account.rs

shed-all-products = All products
shed-before-f5e = Before
shed-next = Next
shed-its-label = Its label
shed-how-much-that-is-in-all = How much that is in all is not known, for want of a density.
shed-nothing-is-counted-yet = Nothing is counted yet.
shed-empty = { $count } empty { $size } { $kind }
shed-to-give-back = { $all } to give back
shed-no-day-of-a-count-is = No day of a count is typed: this is what is typed to be there, records take nothing off and purchases add nothing.
shed-came-in = came in
shed-went-out = went out
shed-nothing-happened-since = Nothing happened since
shed-since-then = Since then { $since }
shed-counted-on-that-days-spraying-what = { $which ->
        [yes] Counted on { $day } after that day's spraying{ $counted }. { $since }. What is written down of that day counts as in the count.
       *[no] Counted on { $day } before that day's spraying{ $counted }. { $since }. What is written down of that day counts as after the count.
    }
shed-bought-last-at-on = Bought last at { $sign }{ $price } on { $day }.
shed-that-is-its-price-in-the = That is its price in the shed.
shed-its-price-in-the-shed = Its price in the shed: { $own }.
shed-take-the-price-of-the-bill = Take the price of the bill
shed-purchases-of-cost = Purchases of { $year } cost { $sum }.
shed-counted-and-since = Counted on { $day }{ $counted }. { $since }.
shed-amount-came-in = { $amount } came in
shed-amount-was-sprayed = { $amount } were sprayed
shed-amount-went-out = { $amount } went out
shed-none = none

## desk/views/shed/stock/count.rs

shed-another-lot-or-size = + Another lot or size
shed-empty-ones = empty ones
shed-empty-of = empty { $kind } of { $size }
shed-empty-of-to-give-back = empty { $kind } of { $size } to give back
shed-day-of-the-count = day of the count
shed-after-that-days-spraying = after that day's spraying
shed-before-that-days-spraying = before that day's spraying
shed-counted-what-the-account-had-come = Counted { $counted }. What the account had come to is not known.
shed-counted-as-the-account-has-it = Counted { $counted }, as the account has it ({ $round }).
shed-why-it-differs = why it differs
shed-counted-less = Counted { $counted }, the account had come to { $account }: { $less } less.
shed-counted-more = Counted { $counted }, the account had come to { $account }: { $more } more.
shed-there-are = there are
shed-full-row = full, row { $n }
shed-container-row = container, row { $n }
shed-size-row = size, row { $n }
shed-opened-row = opened, row { $n }
shed-lot-row = lot, row { $n }
shed-row = row { $n }
shed-full = full
shed-of-size = of
shed-opened = opened
shed-lot-box = lot
shed-on-day = on
shed-counted-box = counted

## desk/views/shed/stock/forms.rs

shed-written-down-by = written down by
shed-who-writes-it-down = who writes it down
shed-write-it-down = Write it down
shed-leave-it = Leave it
shed-day-it-happened = day it happened
shed-kind-of-size = { $kind } of { $size }
shed-it-was-counted-on-what-happened = { $which ->
        [yes] It was counted on { $counted } after that day's spraying: what happened before is in the count, and changes nothing of what is on hand.
       *[no] It was counted on { $counted }: what happened before is in the count, and changes nothing of what is on hand.
    }
shed-how-many = how many
shed-as-printed-on-it = as printed on it
shed-price-on-the-bill = price on the bill
shed-bought-from = bought from
shed-from-whom = from whom
shed-delivery-note-or-anything-else = delivery note, or anything else
shed-no-day-of-a-count-is-typed-so-purchases = No day of a count is typed, so purchases are kept but not added to what is on hand. Count it first.
shed-there-was-none-of-it-before = There was none of it before: reckon from this day on
shed-how-much = how much
shed-if-known = if known
shed-such-as = such as { $lot }
shed-spilt-lent-handed-in = spilt, lent, handed in
shed-found-given-back-borrowed = found, given back, borrowed
shed-no-day-of-a-count-is-typed-so-it = No day of a count is typed, so it is kept but changes nothing of what is on hand. Count it first.
shed-of-empty = of { $count } empty
shed-given-back-to = given back to
shed-to-whom = to whom
shed-type-what-one-container-holds-such = Type what one container holds, such as "{ $example }"
shed-type-how-much-such-as-1 = Type how much, such as "{ $example }"
shed-type-how-many-containers = Type how many containers
shed-say-why = Say why
shed-why = why
shed-bought = Bought…
shed-count = Count…
shed-went-out-act = Went out…
shed-came-in-act = Came in…
shed-gave-back-empties = Gave back empties…
shed-container = container
shed-kind = kind
shed-price-row = price
shed-bought-from-row = from
shed-to-whom-row = to
shed-another = another
shed-rinsed-box = rinsed

## desk/views/shed/stock/lines.rs

shed-which-does-not-hold-any-more = , which does not hold any more
shed-the-account-had-come-to = ; the account had come to { $reckoned }
shed-bought-of = bought { $count } { $kind } of { $size }
shed-sprayed = sprayed: { $name }
shed-gave-back-empty-of = gave back { $count } empty { $kind } of { $size }
shed-rinsed = , rinsed
shed-lot = , lot { $lot }
shed-day-what-change-balance = day	what	change	balance{ "\u000A" }
shed-account = Account
shed-the-latest-first = the latest first
shed-copy-as-a-table = Copy as a table
shed-nothing-is-written-down-yet = Nothing is written down yet.
shed-then-there = then there
shed-counted-after-that-days-spraying = counted after that day's spraying
shed-counted-before-that-days-spraying = counted before that day's spraying
shed-bought-of-from = bought { $count } { $kind } of { $size } from { $from }
shed-bought-of-at = bought { $count } { $kind } of { $size } at { $sign }{ $price }
shed-bought-of-at-from = bought { $count } { $kind } of { $size } at { $sign }{ $price } from { $from }
shed-gave-back-empty-of-to = gave back { $count } empty { $kind } of { $size } to { $to }
shed-what = what
shed-change = change
shed-open-the-record = Open the record

## desk/views/shed/stock/list.rs

shed-to-buy = To buy
shed-no-product-yet-so-there-is = No product yet, so there is nothing to count.
shed-nothing-is-short-of-what-is = Nothing is short of what is counted.
shed-name-short-by-round-buying = { $name }, short by { $round }, { $buying }
shed-in-all-sum = in all { $sum }
shed-it-is-not-known-what-is = { $count ->
        [one] { $count } product is taken of which it is not known what is on hand.
       *[other] { $count } products are taken of which it is not known what is on hand.
    }
shed-water-on = Water on { $day }
shed-not-reckoned = Not reckoned

## desk/views/shed/stock/mod.rs

shed-full-kind-of-size-lot = { $full } { $kind } of { $size }{ $lot }
shed-in-an-opened-of = in an opened { $kind } of { $size }{ $lot }
shed-without-a-container-typed = without a container typed{ $lot }
shed-from-the-day-of-a-count = From the day of a count on, records and what went out are taken off and purchases added. Passes without a record are held against what is left.
shed-open-a-product-to-count-it = Open a product to count it. No pass is planned that has no record yet.
shed-what-the-passes-take-on = what the passes take on

## desk/views/shed/stock/table.rs

shed-no-product-yet-add-the-first = No product yet. Add the first one under Products, with what it is sold in.
shed-on-hand-861 = on hand
shed-from-then = from then
shed-what-is-taken-on-costs = What is taken on { $day } costs { $of_day }.
shed-what-is-taken-from-then-on = What is taken from then on costs { $season }.
shed-something-in-its-account-is-in = Something in its account is in doubt
shed-open-its-account = Open its account
shed-account-name = Account: { $name }
shed-counted-day-used = counted { $day }, { $used } used since
shed-no-container-typed = no container typed
shed-passes-before-take-first = passes before take { $round } first
shed-cost = cost { $currency }{ $cost }
shed-product = product
shed-leaves = leaves
shed-density-asked = density?
shed-counted-day = counted { $day }

## desk/views/shed/waters.rs

shed-no-water-yet-take-a-laboratory = No water yet. Take a laboratory report and add the first one: calcium and magnesium matter most.
shed-no-analysis = no analysis
shed-hard = { $hardness } hard
shed-add-a-water = + Add a water
shed-here-stands-what-a-laboratory-found = Here stands what a laboratory found in the water that fills the tank.
shed-no-planned-pass-takes-it = No planned pass takes it.
shed-name-of-the-water = name of the water
shed-as-the-laboratory-states-it-what = As the laboratory states it. What the report does not state stays empty and is not taken for nothing.
shed-ions = Ions
shed-kept-but-the-equation-has-no = kept, but the equation has no term for it
shed-hardness-ph-and-salt = Hardness, pH and salt
shed-only-where-calcium-and-magnesium-are = only where calcium and magnesium are not given apart
shed-calcium-and-magnesium-are-used-instead = calcium and magnesium are used instead
shed-a-coin-on-the-bottom-of = a coin on the bottom of a bucket is not seen
shed-filling = Filling
shed-gives-when-filling = gives when filling
shed-the-pump-or-hydrant-by-a = the pump or hydrant, by a jug and a watch
shed-sample = Sample
shed-who-analysed-it-or-anything-else = who analysed it, or anything else
shed-choose-a-water = choose a water
shed-blend-with-another-water = Blend with another water
shed-add-another-water-such-as-rain = Add another water, such as rain water, to see what a blend of the two holds.
shed-blend-with = blend with
shed-hardness-wanted = hardness wanted
shed-e-g-150-ppm = e.g. 150 ppm
shed-and = { $one } and { $other }
shed-an-ion-that-either-report-does = An ion that either report does not state stays open. pH, conductivity and clarity of a blend are not reckoned.
shed-keep-the-blend-as-a-water = Keep the blend as a water of its own
shed-hardness-as-calcium-carbonate = Hardness, as calcium carbonate
shed-type-calcium-and-magnesium-or-the = Type calcium and magnesium, or the hardness, to see it.
shed-german-degrees = German degrees
shed-french-degrees = French degrees
shed-other-schemes-call-it-the-same = Other schemes call it the same.
shed-ammonium-sulfate-that-it-ties-up = Ammonium sulfate that it ties up
shed-without-iron-to-without-iron-most = { $without_iron } to { $without_iron_most }
shed-without-iron = without iron
shed-with-iron = with iron
shed-north-dakota-practice = North Dakota practice
shed-labels-as-published = labels, as published
shed-not-stated-so-not-counted = Not stated, so not counted: { $missing }.
shed-this-water = this water
shed-calcium = calcium
shed-magnesium = magnesium
shed-sodium = sodium
shed-potassium = potassium
shed-iron = iron
shed-manganese = manganese
shed-bicarbonate = bicarbonate
shed-hardness = hardness
shed-conductivity = conductivity
shed-clarity = clarity
shed-sampled = sampled
shed-blend-with-row = with
shed-takes = takes
shed-holds = holds

## desk/views/shed/front.rs

shed-elsewhere-on-the-label = Elsewhere on the label

## desk/views/shed/paste.rs

shed-paste-directions = Paste directions…
shed-paste-what-the-directions-say-or = Paste what the directions say, or a part of it. Nothing enters the form before you tick it against the label.
shed-it-stands-on = it stands on
shed-directions-stand-on = directions stand on
shed-becomes = { $name }: { $value }
shed-becomes-in-a-crop = { $name } in { $crop }: { $value }
shed-stands-there-already = stands there already
shed-enter = Enter { $becomes }
shed-enter-ticked = { $count ->
        [one] Enter { $count } ticked line
       *[other] Enter { $count } ticked lines
    }
shed-enter-what-is-ticked = Enter what is ticked
shed-tick-all-lines = { $count ->
        [one] Tick { $count } line
       *[other] Tick all { $count } lines
    }
shed-take-all-ticks-away = Take all ticks away
shed-type-it-under = Type it under "{ $kind }"
shed-type-sentence-under = Type under { $kind }: { $sentence }
shed-another-row-for-the-sentence = + Another row
shed-next-sentence-not-understood = Next sentence
shed-back-to-the-pasted-text = Back to the pasted text
shed-put-the-sentence-away = Put the sentence away
shed-put-the-text-away = Put the text away
shed-the-form-has = the form has { $typed }
shed-beside-it = beside it
shed-in-its-place = in its place
shed-how-is-entered = how { $becomes } is entered
shed-not-understood-type-yourself-what-is = { $count ->
        [one] { $count } sentence was not understood; type yourself what is to be typed of it
       *[other] { $count } sentences were not understood; type yourself what is to be typed of it
    }
shed-without-a-limit-by-their-words = { $count ->
        [one] { $count } more sentence has no figure and no word of a limit; read it all the same
       *[other] { $count } more sentences have no figure and no word of a limit; read them all the same
    }

## desk/views/shed/statements.rs

shed-hide-the-empty-rows = Hide the empty rows
shed-any-one-of-them-will-do = any one of them will do: { $classes }
shed-or-another-class = or another class…
shed-or-another-class-beside = Or another class in place of { $name }
shed-empty-rows-for-what-is-not = Empty rows for what is not typed yet
shed-directions-from-the-label = directions from the label
