## paper/book.rs

paper-to = { $first } to { $last }
paper-see = { $date }, { $name }: see { $first }
paper-no-field-written-down = No field written down
paper-began = Began
paper-ended = Ended
paper-applicator = Applicator
paper-certificate-number = Certificate number
paper-weeds-or-pests = Weeds or pests
paper-spray-volume = Spray volume
paper-nozzle-height = nozzle height
paper-machine = Machine
paper-droplets = Droplets
paper-supervised-by = Supervised by
paper-also-worked-on-it = Also worked on it
paper-copy-handed-over = copy handed over
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
paper-group = { " " }(group { $group })
paper-keep-out-h = keep out { $hours } h
paper-harvest-after-days = harvest after { $days } days
paper-amended-by = Amended by { $by }, { $at }

## paper/lib.rs

paper-there-is-no-load-card-to = there is no load card to print
paper-load-card-has-more-steps-and = load card { $number } has more steps and facts than one page can take; shorten names, or split the mix
paper-the-jar-test-holds-more-text = the jar test holds more text than one page can take; shorten names, cautions or what to wear
paper-there-is-no-record-to-print = there is no record to print
paper-the-farm-has-no-record = the farm has no record "{ $id }"
paper-the-page-could-not-be-handed = the page could not be handed to the layout: { $it }
paper-the-page-could-not-be-laid = the page could not be laid out: { $it }
paper-the-pages-could-not-be-written = the pages could not be written as PDF: { $it }

## paper/review/content.rs

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

paper-treated = { $count }, { $figures } treated
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
paper-bars = { $which ->
        [yes] Bars: cost. { $several_classes }
       *[no] Bars: ground. { $several_classes }
    }
paper-treated-without-any = Treated without any: { $figures }
paper-kind-of-product = kind of product
paper-adjuvant-class = adjuvant class
paper-uses-without-a-price = uses without a price
paper-cost-by = Cost by { $what }

## paper/review/products.rs

paper-bars-ground-treated = Bars: ground treated
paper-over-the-farms-ground = over the farm's ground
paper-bars-over-of-ground-that-can = Bars: over { $figures } of ground that can be sprayed, in all the time chosen; under each active what went out on each field, and over the field
paper-groups-by-field-and-season = { $kind } groups by field and season
paper-it-came-and-by-which-rule = it came, and by which rule that is too soon
paper-where-a-group-came-again = Where a { $kind } group came again
paper-in-a-season = { $count } in a season
paper-season-in-a-row = season in a row
paper-seasons-in-a-row = seasons in a row
paper-application-in-a-row = application in a row
paper-applications-in-a-row = applications in a row
paper-asked-for-at-most = asked for at most { $asked }: { $basis }

## paper/review/ratings.rs

paper-record-is = record is
paper-records-are = records are
paper-rated = { $count } rated
paper-mean-with-the-interval-in-which = Mean with the interval in which it lies at 95 %, and n, the number of fields rated. Control: 100 % is all dead; injury: 0 % is none. One rating alone has no interval
paper-per-cent = { $of }, per cent
paper-in-pairs-field-by-field-in = In pairs, field by field in one season: { $text }.
paper-and-ratings-no-pairs = { $of }: { $n } and { $n2 } ratings, no pairs
paper-all-ratings-without-pairs = All ratings, without pairs: { $text }.
paper-ratings-with-an-adjuvant-class-less = Ratings with an adjuvant class less those without it, per cent points: right of the line it was rated higher
paper-comparison-has = comparison has
paper-comparisons-have = comparisons have
paper-less-per-cent-points-right-of = { $one } less { $other }, per cent points: right of the line { $one } was rated higher
paper-and = { $name } { $show } and { $show2 }
paper-one-pair = one pair
paper-one-side = one side
paper-other-side = other side
paper-the-pairs-mean-ratings-in-per = The pairs, mean ratings in per cent: one side is { $one }, the other { $other }

## paper/worker_protection.rs

paper-h-the-longest-of-the-products = { $hours } h, the longest of the products
paper-at-least-h-not-known-for = at least { $hours } h; not known for { $unknown }
paper-from-memory-check = { $day }, from memory, check
paper-100-ft-from-the-sprayer-on = 100 ft from the sprayer, on every side
paper-25-ft-from-the-sprayer-on = 25 ft from the sprayer, on every side
paper-25-ft-from-the-sprayer-on-every-side-unless = 25 ft from the sprayer, on every side, unless the nozzles were within 12 in of the soil
paper-not-known-for-this-method = not known for this method
paper-not-known-without-the-droplet-class = not known without the droplet class
