## paper/book.rs

paper-planned = planned { $value }
paper-expected-wind = wind { $wind }
paper-expected-gusts = gusts { $gusts }
paper-expected-from = from { $from }
paper-expected-air = air { $air }
paper-expected-humidity = humidity { $humidity }
paper-photos = photos { $photos }
paper-by-whom = by { $by }
paper-crop-code = code { $code }
paper-parcel = parcel { $parcel }
paper-lot = lot { $lot }
paper-price = price { $price }
paper-it-is-nothing = nothing
paper-to = { $first } to { $last }
paper-see = { $date }, { $name }: see { $first }
paper-no-field-written-down = No field written down
paper-began = Began
paper-ended = Ended
paper-applicator = Applicator
paper-certificate-number = Certificate number
paper-weeds-or-pests = Weeds or pests
paper-spray-volume = Spray volume
paper-nozzle-height = nozzle height { $height }
paper-machine = Machine
paper-droplets = Droplets
paper-supervised-by = Supervised by
paper-also-worked-on-it = Also worked on it
paper-copy-handed-over = copy handed over { $day }
paper-for = For
paper-water = Water
paper-loads = Loads
paper-left-over = Left over
paper-cleaned-out = Cleaned out
paper-forecast-kept = Forecast kept
paper-record-made = Record made
paper-note = Note
paper-outcome = Outcome
paper-least-to-most = { $least } to { $most }
paper-control-of = control of { $weed }
paper-injury = injury, { $kind }
paper-active-of-group = { $name } (group { $group }) { $mass }
paper-keep-out-h = keep out { $hours } h
paper-harvest-after-days = harvest after { $days } days
paper-amended-by = Amended by { $by }, { $at }

## paper/lib.rs

paper-a-preview-takes = a preview takes from { $least } to { $most } pixels a point, not { $asked }
paper-there-is-no-load-card-to = there is no load card to print
paper-load-card-has-more-steps-and = load card { $number } has more steps and facts than one page can take; shorten names, or split the mix
paper-the-jar-test-holds-more-text = the jar test holds more text than one page can take; shorten names, cautions or what to wear
paper-there-is-no-record-to-print = there is no record to print
paper-the-farm-has-no-record = the farm has no record "{ $id }"
paper-the-page-could-not-be-handed = the page could not be handed to the layout: { $it }
paper-the-page-could-not-be-laid = the page could not be laid out: { $it }
paper-the-pages-could-not-be-written = the pages could not be written as PDF: { $it }

## paper/review/content.rs

paper-no-record-fits = No record fits what is chosen.
paper-overview = Overview
paper-products = Products
paper-actives = Actives
paper-resistance-groups = Resistance groups
paper-adjuvants = Adjuvants
paper-planned-and-applied = Planned and applied
paper-weather = Weather
paper-cost = Cost
paper-water-and-hours = Water and hours
paper-outcomes = Outcomes
paper-trials = Trials
paper-printed = printed { $printed }
paper-what-the-records-of-the-farm = What the records of the farm come to, reckoned from what was typed in them. What a record does not say is in no sum, and how often that is so stands beside the sums.
paper-the-label-and-local-law-govern = The label and local law govern. The review says what was recorded and rated on this farm; it never says why, and it is no record that a law asks for.
paper-all-seasons = All seasons
paper-seasons = Seasons { $one }
paper-season = Season { $one }

## paper/review/ground.rs

paper-what-is-left-over = Left over: { $left }
paper-no-errors = none
paper-mean = mean
paper-median = median
paper-not-measured = Not measured: wind in { $wind } of { $records } { $records ->
        [one] record
       *[other] records
    }, air temperature in { $temperature }, humidity in { $humidity }.
paper-treated = { $count } { $count ->
        [one] pass
       *[other] passes
    }, { $figures } treated
paper-ground-treated-season-by-season = Ground treated, season by season, { $ground }
paper-ground-treated-by-month = Ground treated by month, { $newest }, { $ground }
paper-the-charts-have-the-newest-seasons = The charts have the { $lines } newest seasons; the tables have all
paper-by-season = By season
paper-at-least-once = at least once
paper-ground-treated-since-january = Ground treated since January, { $ground }
paper-since-january = since January
paper-by-month = By month
paper-ground-treated-by-month-ground = Ground treated by month, { $ground }
paper-amounts-over-ground = Amounts over ground
paper-ground = Ground
paper-amounts-over-ground-how-many-uses = Amounts over ground: how many uses so far off, per cent
paper-how-many = how many
paper-most-too-little = most too little
paper-most-too-much = most too much
paper-errors-in-figures = Errors in figures
paper-the-largest-errors-of-amounts-over = The largest errors of amounts over ground
paper-which-ones-and-why-stands-on = Which ones, and why, stands on the desk and at each record
paper-spray-by-water = Spray by water
paper-water-in-it = water in it
paper-without-a-volume = without a volume
paper-not-known = not known
paper-ground-in-it = ground in it
paper-in-an-hour = in an hour
paper-ground-in-all = ground in all
paper-without-times = without times
paper-hours-by-rig = Hours by rig

## paper/review/money.rs

paper-over-ground = over ground
paper-went-out = went out
paper-bars-cost = Bars: cost. { $several_classes }
paper-bars-ground = Bars: ground. { $several_classes }
paper-treated-without-any = Treated without any: { $figures }
paper-kind-of-product = kind of product
paper-adjuvant-class = adjuvant class
paper-uses-without-a-price = uses without a price
paper-cost-by-field = Cost by field
paper-cost-by-crop = Cost by crop
paper-cost-by-kind = Cost by kind of product
paper-cost-by-class = Cost by adjuvant class

## paper/review/products.rs

paper-no-product-in-the-records = No product stands in the records.
paper-no-active-in-the-records = The records do not say how much of an active went out.
paper-triangle = triangle
paper-no-group-came-again = No { $kind } group came again too soon in { $seasons }.
paper-bars-ground-treated = Bars: ground treated
paper-over-the-farms-ground = over the farm's ground
paper-bars-over-of-ground-that-can = Bars: over { $figures } of ground that can be sprayed, in all the time chosen; under each active what went out on each field, and over the field
paper-groups-by-field-and-season = { $kind } groups by field and season
paper-it-came-and-by-which-rule = it came, and by which rule that is too soon
paper-where-a-group-came-again = Where a { $kind } group came again
paper-at-most-times-in-a-season = asked for at most { $most } { $most ->
        [one] time
       *[other] times
    } in a season: { $basis }
paper-at-most-seasons-in-a-row = asked for at most { $most } { $most ->
        [one] season
       *[other] seasons
    } in a row: { $basis }
paper-at-most-applications-in-a-row = asked for at most { $most } { $most ->
        [one] application
       *[other] applications
    } in a row: { $basis }

## paper/review/ratings.rs

paper-no-class-is-compared = No adjuvant class is compared: nothing was rated both with and without one in the same days after an application.
paper-no-trial-in-what-is-chosen = No trial has ground in what is chosen.
paper-one-against-other = { $one } against { $other }
paper-no-pair-is-rated = No pair is rated on both sides yet: rate its fields on the pages of their records.
paper-rated = { $count } { $count ->
        [one] record is
       *[other] records are
    } rated
paper-mean-with-the-interval-in-which = Mean with the interval in which it lies at 95 %, and n, the number of fields rated. Control: 100 % is all dead; injury: 0 % is none. One rating alone has no interval
paper-per-cent = { $of }, per cent
paper-in-pairs-field-by-field-in = In pairs, field by field in one season: { $text }.
paper-and-ratings-no-pairs = { $of }: { $n } and { $n2 } ratings, no pairs
paper-all-ratings-without-pairs = All ratings, without pairs: { $text }.
paper-ratings-with-an-adjuvant-class-less = Ratings with an adjuvant class less those without it, per cent points: right of the line it was rated higher
paper-of-pairs = { $of }: { $n } { $n ->
        [one] pair
       *[other] pairs
    }
paper-comparisons-have-too-few = { $n } { $n ->
        [one] comparison has
       *[other] comparisons have
    } too few to tell: fewer than six ratings with or without the class, and fewer than six pairs.
paper-less-per-cent-points-right-of = { $one } less { $other }, per cent points: right of the line { $one } was rated higher
paper-and = { $name } { $show } and { $show2 }
paper-one-pair = one pair
paper-one-side = one side
paper-other-side = other side
paper-the-pairs-mean-ratings-in-per = The pairs, mean ratings in per cent: one side is { $one }, the other { $other }

## paper/worker_protection.rs

paper-no-entry-time = none
paper-h-the-longest-of-the-products = { $hours } h, the longest of the products
paper-at-least-h-not-known-for = at least { $hours } h; not known for { $unknown }
paper-from-memory-check = { $day }, from memory, check
paper-100-ft-from-the-sprayer-on = 100 ft from the sprayer, on every side
paper-25-ft-from-the-sprayer-on = 25 ft from the sprayer, on every side
paper-25-ft-from-the-sprayer-on-every-side-unless = 25 ft from the sprayer, on every side, unless the nozzles were within 12 in of the soil
paper-not-known-for-this-method = not known for this method
paper-not-known-without-the-droplet-class = not known without the droplet class

## paper/review/parts.rs

paper-column-season = season
paper-column-passes = passes
paper-column-treated = treated
paper-column-month = month
paper-column-error = error
paper-column-amounts = amounts
paper-column-ground = ground
paper-column-volume = volume
paper-column-record = record
paper-column-product = product
paper-column-water = water
paper-column-spray = spray
paper-column-records = records
paper-column-rig = rig
paper-column-time = time
paper-column-class = class
paper-column-products = products
paper-column-cost = cost
paper-column-kind = kind
paper-column-active = active
paper-column-field = field
paper-column-crop = crop
paper-column-group = group
paper-column-rated = rated
paper-column-days = days
paper-column-pairs = pairs
paper-column-difference = difference

## typst/record-book.typ

paper-record-book = Record book
paper-it-was = was
paper-it-is = is
paper-head-field = Field
paper-head-ground = Ground
paper-head-crop = Crop
paper-head-stage = Stage
paper-head-planted = Planted
paper-head-location = Location
paper-head-product = Product
paper-head-registration = Registration number
paper-head-amount = Amount
paper-head-rate = Rate
paper-restricted-use = restricted use
paper-head-weather-at = Weather at
paper-head-wind = Wind
paper-head-from = From
paper-head-gust = Gust
paper-head-air = Air
paper-head-humidity = Humidity
paper-signed = Signed
paper-book-governs = The label and local law govern; this book holds what was written down and does not decide what the law requires.
paper-number = Number

## typst/worker-protection.typ

paper-application-information = Application information
paper-date-of-the-application = Date of the application
paper-area-treated = Area treated
paper-crop-or-site = Crop or site
paper-location-and-description = Location and description
paper-epa-registration-number = EPA registration number
paper-active-ingredients = Active ingredients
paper-restricted-entry = Restricted entry
paper-restricted-entry-interval = Restricted-entry interval
paper-nobody-enters-before = Nobody enters before
paper-exclusion-zone = Exclusion zone while it was sprayed:
paper-exclusion-zone-rule = 40 CFR 170.405(a)(1): 100 ft for droplets finer than medium, by air or air blast, and for fumigant, smoke, mist or fog; 25 ft for medium or coarser droplets from higher than 12 in above the soil.
paper-display-until = Display until
paper-keep-until = Keep until
paper-safety-data-sheets = The safety data sheets of these products hang beside this sheet.
paper-display-both = Display both within 24 hours of the end of the application and before workers enter; 30 days after the restricted-entry interval they may come down, and are kept for two years more (the two years are from memory, check 40 CFR 170.311(b)(6)).
paper-in-an-emergency = In an emergency
paper-nearest-medical-facility = Nearest emergency medical facility, its address and telephone:
paper-workers-governs = The label and local law govern. After 40 CFR 170.311(b); reckoned from what was written down.

## typst/season-review.typ

paper-season-review = Season review
paper-governs = The label and local law govern.

## typst/jar-test.typ

paper-jar-test = Jar test
paper-tick-what-you-see = Tick what you see
paper-tested-on = Tested on
paper-carrier-temperature = Carrier temperature
paper-tested-by = Tested by
paper-signature = Signature
paper-remarks = Remarks
paper-before = Before
paper-then = Then
paper-open-when-printed = Open when this was printed
paper-wear = Wear
paper-cautions = Cautions
paper-put-in-in-this-order = Put in, in this order
paper-result = Result

## typst/evening-sheet.typ

paper-evening-sheet = Evening sheet
paper-spraying-of-the-day = Spraying of the day
paper-the-next-load-begins = the next load begins
paper-cleaning-out = cleaning out
paper-road = road
paper-hours = Hours
paper-by = By
paper-before-it = Before it:
paper-limits = Limits:
paper-note-says = Note:
paper-see-the-plan = See the plan.
paper-has-no-cards = Has no cards:
paper-harvest-not-before = Harvest not before
paper-beside-it = Beside it
paper-for-the-crew = For the crew
paper-products-on-the-truck = Products on the truck
paper-also-on-the-truck = Also on the truck
paper-mind = Mind
paper-no-strip-is-left = no strip is left
paper-leave-unsprayed = Leave unsprayed
paper-evening-governs = The label and local law govern. This sheet is a reckoning from what was typed; the plans say what is not judged.

## typst

paper-page-of = Page { $page } of { $pages }
paper-printed-page-of = Printed { $printed } · Page { $page } of { $pages }
paper-printed-page = { $printed }, page { $page } of { $pages }
