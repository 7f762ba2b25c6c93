## desk/views/season_log/close.rs

season-log-close-season = Close season { $year }
season-log-leave-it-open = Leave it open
season-log-records-passes-and-cards-stay-in = Records, passes and cards stay in this file and can be looked up. What grew is kept with the season; each field goes on with its next crop, and its stage, variety, planting and harvest are to be typed anew. The shed and all settings stay as they are.
season-log-what-the-season-taught-in-words = What the season taught, in words
season-log-what-the-season-taught = What the season taught
season-log-season-is-closed-undo-opens-it = Season { $year } is closed; undo opens it again
season-log-goes-on-with = goes on with
season-log-next-crop-on = Next crop on { $name }
season-log-not-decided = not decided

## desk/views/season_log/export.rs

season-log-import = Import…
season-log-import-records = Import records…
season-log-export = Export…
season-log-csv-for-a-spreadsheet = CSV, for a spreadsheet…
season-log-json-for-a-machine = JSON, for a machine…
season-log-pdf-record-book-by-field = PDF, record book by field…
season-log-pdf-record-book-by-date = PDF, record book by date…
season-log-pdf-each-record-on-a-page = PDF, each record on a page…
season-log-export-what-the-list-shows = Export what the list shows…
season-log-the-records-were-not-saved = The records were not saved
season-log-saved-as = { $count ->
        [one] { $count } record saved as { $path }{ $since }
       *[other] { $count } records saved as { $path }{ $since }
    }

## desk/views/season_log/import.rs

season-log-the-records-were-not-read = The records were not read
season-log-is-read = { $source } is read
season-log-looking-at = Looking at { $source }
season-log-the-records-were-not-looked-at = The records were not looked at
season-log-records-from = Records from { $source }
season-log-the-rows-are-being-looked-at = The rows are being looked at…
season-log-look-at-the-rows-again = Look at the rows again
season-log-look-at-all-rows = Look at all { $rows } rows
season-log-choose-first-what-is-asked = Choose first what is asked for
season-log-no-row-becomes-a-record = No row becomes a record
season-log-import-number = { $count ->
        [one] Import { $count } record
       *[other] Import { $count } records
    }
season-log-imported-from = { $count ->
        [one] { $count } record imported from { $source }
       *[other] { $count } records imported from { $source }
    }
season-log-leave-it = Leave it
season-log-leave-the-file = Leave the file
season-log-in-a-file-of-exported-records = { $count ->
        [one] { $count } record in a file of exported records, { $new } of them new.
       *[other] { $count } records in a file of exported records, { $new } of them new.
    }
season-log-here-already-word-for-word-and = { $count ->
        [one] { $count } record is here already, word for word, and is passed over.
       *[other] { $count } records are here already, word for word, and are passed over.
    }
season-log-the-id-of-a-record-here = { $count ->
        [one] { $count } has the id of a record here that says something else
       *[other] { $count } have the id of a record here that says something else
    }
season-log-take-these-as-new-records-beside = Take these as new records beside those that are here
season-log-line-left-out-is-another-record = Line { $line }: left out, "{ $id }" is another record here
season-log-and-more = and { $another } more
season-log-and-more-look-like-one-in = and { $alike } more look like one in the log
season-log-the-first-of-rows-are-looked = The first { $first } of { $rows } rows are looked at while you choose.
season-log-no-line-of-the-file-gives = No line of the file gives a record.
season-log-of-nothing-enters-the-log-before = { $records ->
        [one] { $records } record
       *[other] { $records } records
    } of { $lines ->
        [one] { $lines } line
       *[other] { $lines } lines
    }. Nothing enters the log before you import.
season-log-like-one-in-the-log-the = { $count ->
        [one] { $count } record looks like one in the log: the same day, field and product
       *[other] { $count } records look like one in the log: the same day, field and product
    }
season-log-take-records-that-look-like-one = Take records that look like one in the log all the same
season-log-to-of = { $from } to { $last } of { $records }
season-log-those-before = Those before
season-log-records-before-these = Records before these
season-log-those-after = Those after
season-log-records-after-these = Records after these
season-log-what-the-columns-hold = What the columns hold
season-log-its-first-lines = its first lines
season-log-show-more-columns = { $count ->
        [one] Show { $count } more column
       *[other] Show { $count } more columns
    }
season-log-days-with-strokes = days with strokes
season-log-not-said = not said
season-log-how-days-with-strokes-are-written = How days with strokes are written
season-log-figures-are-written = figures are written
season-log-how-figures-are-written = How figures are written
season-log-not-taken = not taken
season-log-what-holds = What "{ $heading }" holds
season-log-from-its-column = from its column
season-log-choose = choose
season-log-as-written = as written
season-log-unit-of = Unit of "{ $heading }"

## desk/views/season_log/law.rs

season-log-still-open = still open: { $names }
season-log-the-plain-record-other-profiles-are = the plain record; other profiles are chosen in the shed, Records
season-log-the-profiles-are-chosen-in-the = the profiles are chosen in the shed, Records
season-log-no-chosen-profile-speaks-of-this = No chosen profile speaks of this record: it holds no product that one of them asks for.
season-log-days-that-follow = Days that follow
season-log-all-that-is-asked-for-is = All that is asked for is there.
season-log-in-the-shed-records = in the shed, Records; { $due }
season-log-of-are-there = { $there } of { $all } are there
season-log-from = From: { $basis }
season-log-was-due-by = was due by { $due }
season-log-due-by = due by { $due }
season-log-by-when-is-not-known-here = by when is not known here

## desk/views/season_log/list.rs

season-log-still-open-9ef = still open
season-log-still-open-open = { $date }, { $name }, still open: { $open }

## desk/views/season_log/listed.rs

season-log-newest-season = newest season
season-log-all-seasons = all seasons

## desk/views/season_log/mod.rs

season-log-trials = Trials
season-log-review = Review
season-log-season-so-far = Season { $year }, so far
season-log-season = Season { $year }
season-log-all-seasons-156 = All seasons
season-log-record-without-a-plan = Record without a plan
season-log-the-records-found-below-are-offered = the records found below are offered for pairs
season-log-not-counting-without-a-volume = { $count ->
        [one] { $count } pass · { $area } sprayed · { $volume } of spray, not counting { $without } without a volume
       *[other] { $count } passes · { $area } sprayed · { $volume } of spray, not counting { $without } without a volume
    }
season-log-sprayed-of-spray = { $count ->
        [one] { $count } pass · { $area } sprayed · { $volume } of spray
       *[other] { $count } passes · { $area } sprayed · { $volume } of spray
    }
season-log-find-a-field-crop-product-or = find a field, crop, product or person…
season-log-find-records = Find records
season-log-season-c78 = Season
season-log-of-records = { $rows } of { $of } records
season-log-records = { $count ->
        [one] { $count } record
       *[other] { $count } records
    }
season-log-clear = Clear
season-log-show-all-records = Show all records
season-log-closed-on = closed on { $day }
season-log-close-the-season = Close the season…
season-log-nothing-is-recorded-yet-plan-a = Nothing is recorded yet. Plan a pass in Tank loads and record it there when it is sprayed, or record one without a plan.
season-log-nothing-is-recorded-in = Nothing is recorded in { $year }.
season-log-no-record-holds = No record holds "{ $filter }".
season-log-page-records = Records

## desk/views/season_log/page/day.rs

season-log-date = Date
season-log-start = Start
season-log-end = End
season-log-start-now = Start now
season-log-end-now = End now
season-log-operator = Operator
season-log-certificate = Certificate
season-log-rig = Rig
season-log-supervisor-and-helpers = Supervisor and helpers
season-log-supervisor = Supervisor
season-log-helpers = Helpers
season-log-mixed-and-loaded = mixed and loaded
season-log-now = Now

## desk/views/season_log/page/fields.rs

season-log-fields = Fields
season-log-in-all = { $area } in all
season-log-stage-on = Stage on { $name }
season-log-crop-on = Crop on { $name }
season-log-area-of = Area of { $name }
season-log-add-a-field = Add a field…
season-log-ground-of-somebody-else = Ground of somebody else
season-log-new-ground = New ground
season-log-not-in-the-plan = not in the plan
season-log-of = { $what } of { $name }
season-log-name = Name
season-log-part = Part
season-log-spot-north-strip = spot, north strip
season-log-planted = Planted
season-log-crop-code = Crop code
season-log-variety = Variety
season-log-location = Location
season-log-county-section-or-latitude-and-longitude = county, section, or latitude and longitude
season-log-parcel = Parcel
season-log-its-reference-in-the-aid-claim = its reference in the aid claim
season-log-another-area-than-planned-the-amounts = Another area than planned: the amounts as they stand are spread over { $area }.
season-log-another-area-and-rate = Another area than planned: the amounts as they stand are spread over { $area }, { $rate } of spray.
season-log-scale-the-amounts-to-the-area = Scale the amounts to the area

## desk/views/season_log/page/lines.rs

season-log-products = Products
season-log-lot-words = lot { $lot }
season-log-amount-of = Amount of { $name }
season-log-product = Product
season-log-more-about = More about { $name }
season-log-amount-in-all = amount in all
season-log-over-ground = over ground
season-log-planned-and-not-recorded-of = planned and not recorded: { $amount } of { $name }
season-log-add-a-product = Add a product…
season-log-lot = Lot
season-log-as-on-the-container = as on the container
season-log-price = Price
season-log-registration = Registration
season-log-restricted = Restricted
season-log-certified-use-only = certified use only
season-log-restricted-use = Restricted use
season-log-yes-certified-use-only = yes, certified use only
season-log-no = no
season-log-re-entry-h = Re-entry, h
season-log-hours-before-re-entry = Hours before re-entry
season-log-harvest-d = Harvest, d
season-log-days-before-harvest = Days before harvest

## desk/views/season_log/page/machine.rs

season-log-spray = Spray
season-log-loads-used = Loads used
season-log-spray-volume = Spray volume
season-log-left-over = Left over
season-log-water = Water
season-log-it-went = It went
season-log-as-the-label-and-the-law = as the label and the law allow
season-log-where-it-went = Where it went
season-log-usual-answers = usual answers
season-log-on-the-ground = = { $rate } on the ground
season-log-loads-in-the-plan = { $planned } loads in the plan
season-log-mixed-in-from-that-of-spray = { $mixed } mixed in { $all ->
        [yes] the loads
       *[no] { $loads } of { $of } loads
    }{ $scaled ->
        [yes] , scaled to the area
       *[no] { "" }
    }{ $less ->
        [yes] , less { $left } left over is { $out }
       *[no] { "" }
    }{ $over ->
        [yes] , { $rate } on the ground
       *[no] { "" }
    }. From that: { $out } of spray{ $product ->
        [yes] { " " }and { $products }
       *[no] { "" }
    }.{ $stays ->
        [yes] { " " }What was typed of { $kept } stays.
       *[no] { "" }
    }
season-log-so-much-of = { $amount } of { $name }
season-log-take-the-amounts-from-that = Take the amounts from that
season-log-droplets = { $class } droplets
season-log-not-typed = not typed
season-log-machine = Machine
season-log-method = Method
season-log-ground-boom = ground boom
season-log-nozzles = Nozzles
season-log-pressure = Pressure
season-log-speed = Speed
season-log-boom-height = Boom height
season-log-droplets-446 = Droplets
season-log-droplets-by-the-plan = droplets by the plan: { $classes }
season-log-cleaned-out = Cleaned out
season-log-before-and-after-such-as-triple = before and after, such as triple rinse
season-log-how-it-was-cleaned-out = How it was cleaned out
season-log-kept-in-the-tank = kept in the tank for the next pass
season-log-thinned-and-sprayed-out = thinned and sprayed out on the field
season-log-kept-in-a-marked-container = kept in a marked container
season-log-taken-back-to-the-collecting-tank = taken back to the collecting tank
season-log-e-g-3 = e.g. 3

## desk/views/season_log/page/mod.rs

season-log-note = Note
season-log-kept-for = Kept for
season-log-signature = Signature
season-log-the-record-of-is-removed-undo = The record of { $name } is removed; undo brings it back
season-log-close = Close
season-log-close-the-record = Close the record
season-log-remove = Remove…
season-log-remove-the-record = Remove the record…
season-log-show-its-plan = Show its plan
season-log-for-workers = For workers…
season-log-sheet-for-workers = Sheet for workers…
season-log-what-is-displayed-for-workers-after = What is displayed for workers after an application, as PDF
season-log-name-of-the-pass = Name of the pass
season-log-remove-it = Remove it
season-log-keep-it = Keep it
season-log-as-it-was-sprayed = As it was sprayed: { $count }
season-log-as-it-was-sprayed-c2b = As it was sprayed
season-log-findings = { $count } findings:

## desk/views/season_log/page/outcomes.rs

season-log-control-of-a-weed = control of a weed
season-log-injury-of-the-crop = injury of the crop
season-log-photo-or-note-alone = photo or note alone
season-log-outcomes = Outcomes
season-log-how-the-weeds-died-and-how = how the weeds died and how the crop stood it
season-log-add-a-rating = Add a rating
season-log-add-a-photo-or-note = Add a photo or note
season-log-injury = injury: { $words }
season-log-photo = photo
season-log-look-number = look { $number }
season-log-ends-of-a-rating = : 0 % is no effect, 100 % all dead
season-log-rating-number = Rating { $number }
season-log-look-words = Look { $number }: { $words }
season-log-photos = { $count ->
        [one] { $what } · { $count } photo
       *[other] { $what } · { $count } photos
    }
season-log-choose-a-field = choose a field
season-log-field-d07 = Field
season-log-field-looked-at = Field looked at
season-log-day = Day
season-log-day-of-the-look = Day of the look
season-log-weed = Weed
season-log-injury-d86 = Injury
season-log-rated = Rated
season-log-what-is-rated = What is rated
season-log-burn-stunting = burn, stunting
season-log-looked = Looked
season-log-who-looked = Who looked
season-log-note-on-the-look = Note on the look
season-log-leaf-burn = leaf burn
season-log-leaf-cupping = leaf cupping
season-log-stand-loss = stand loss
season-log-photo-of-a-look = photo { $number }
season-log-no-program-shows-pictures = No program to show pictures answered: { $path }
season-log-open-photo = Open photo { $number }
season-log-open = Open
season-log-path-of-a-photo = path, such as photos/mill-14-days.jpg
season-log-photo-number = Photo { $number }
season-log-photos-label = Photos
season-log-bleaching = bleaching
season-log-stunting = stunting
season-log-waterhemp = waterhemp
season-log-add-a-photo = Add a photo

## desk/views/season_log/page/rest.rs

season-log-weeds = Weeds
season-log-weeds-apart-by-commas = Weeds, apart by commas
season-log-waterhemp-velvetleaf = waterhemp, velvetleaf
season-log-copy-handed-over-on = { $name } · copy handed over on { $day }
season-log-customer = Customer
season-log-a-neighbour = a neighbour
season-log-telephone = Telephone
season-log-telephone-of-the-customer = Telephone of the customer
season-log-address = Address
season-log-address-of-the-customer = Address of the customer
season-log-copy-given = Copy given
season-log-copy-handed-over-on-6b3 = Copy handed over on
season-log-not-yet = not yet

## desk/views/season_log/page/rows.rs

season-log-as-planned = as planned
season-log-planned = planned { $planned }, { $sign }{ $ratio } %
season-log-planned-planned = planned { $planned }
season-log-remove-01d = Remove
season-log-remove-what = Remove { $what }
season-log-typed-before = typed before

## desk/views/season_log/page/weather.rs

season-log-weather = Weather
season-log-measured-at-the-boom-and-beside = measured at the boom, and beside it what was expected
season-log-up-to = up to { $gust }
season-log-limit = limit: { $texts }
season-log-wind = Wind
season-log-gust = Gust
season-log-wind-from = Wind from
season-log-such-as-nw = such as NW
season-log-from-where-it-blows-such-as = From where it blows, such as NW
season-log-temperature = Temperature
season-log-humidity = Humidity
season-log-forecast = Forecast: { $source }
season-log-show-the-forecast-for-these-hours = Show the forecast for these hours
season-log-add-a-reading = Add a reading
season-log-reading-number = reading { $number }
season-log-of-reading = { $what }, reading { $number }
season-log-time-of-reading = Time of reading { $number }

## desk/views/season_log/print.rs

season-log-the-record-book-was-not-saved = The record book was not saved
season-log-record-laid-out = record laid out
season-log-records-laid-out = records laid out
season-log-the-record-book-of-is-saved = { $count ->
        [one] The record book of { $count } record is saved as { $path }{ $since }
       *[other] The record book of { $count } records is saved as { $path }{ $since }
    }
season-log-the-sheet-for-workers-was-not = The sheet for workers was not saved
season-log-the-sheet-for-workers-is-saved = The sheet for workers is saved as { $path }{ $since }
season-log-with-blanks-to-fill-in = The sheet for workers is saved as { $path }{ $since }, with blanks to fill in: { $missing }

## desk/views/season_log/recording.rs

season-log-record-what-is-left-of-it = Record what is left of it
season-log-record-it-again = Record it again
season-log-choose-the-pass-first = Choose the pass in Tank loads, then record it.
season-log-record-as-sprayed = Record as sprayed
season-log-some-of-it = Some of it…
season-log-what-is-left-of-it = What is left of it: { $area }
season-log-all-of-it-again-as-a = All of it again, as a second application
season-log-load = Load { $load }
season-log-record-these-loads = Record these loads
season-log-the-pass-has-no-ground-or = The pass has no ground or no product that could be reckoned, so there is nothing to record yet
season-log-numbers-of-all = { $numbers } of { $all }
season-log-what-was-left-of-is-recorded = What was left of { $name } is recorded; type what differed
season-log-of-recorded-type-what-differed = { $numbers } of { $name }: recorded; type what differed
season-log-is-recorded-a-second-time-type = { $name } is recorded a second time; type what differed, or undo
season-log-is-recorded-type-what-differed = { $name } is recorded; type what differed
season-log-not-reckoned-so-not-in-the = { $words }. Not reckoned, so not in the record: { $left_out }
season-log-the-day-is-as-planned-and = { $words }. The day is as planned, { $date }, and still to come; mend it if it was another
season-log-pass-without-a-plan = Pass without a plan
season-log-a-record-is-begun-type-what = A record is begun; type what was sprayed
season-log-load-one = Load { $one }
season-log-loads-to = Loads { $first } to { $last }
season-log-loads = Loads { $numbers }

## desk/views/season_log/review/adjuvants.rs

season-log-classes-by-ground-treated = Classes by ground treated
season-log-without-any = Without any
season-log-ground-treated-by-adjuvant-class = Ground treated by adjuvant class
season-log-hatched-with-none = { $several_classes }; hatched: with none
season-log-use-and-cost = Use and cost
season-log-went-out = went out

## desk/views/season_log/review/cost.rs

season-log-kind-of-product = kind of product
season-log-adjuvant-class = adjuvant class
season-log-cost-by = Cost by
season-log-nothing-is-known-by = Nothing is known by { $by }.
season-log-cost-by-by = Cost by { $by }
season-log-the-highest-cost = the highest cost
season-log-cost-by-in-figures = Cost by { $by }, in figures
season-log-uses-without-a-price = uses without a price
season-log-cost = Cost

## desk/views/season_log/review/groups.rs

season-log-kind-of-product-73b = Kind of product
season-log-groups-by-field-and-season = { $kind } groups by field and season
season-log-triangle = triangle
season-log-where-a-group-came-again = Where a group came again
season-log-came-again = { $words } came again
season-log-to = { $from } to { $to }
season-log-no-group-came-again-too-soon = No group came again too soon in { $when }.
season-log-it-came = it came
season-log-asked-for-at-most = asked for at most
season-log-who-says-so = who says so

## desk/views/season_log/review/laid.rs

season-log-laying-out-the-records = Laying out the records for the review
season-log-the-records-were-not-laid-out = The records were not laid out for the review
season-log-the-records-are-being-laid-out = The records are being laid out…
season-log-lay-out-the-records = Lay out the records

## desk/views/season_log/review/mod.rs

season-log-overview = Overview
season-log-products-and-actives = Products and actives
season-log-resistance-groups = Resistance groups
season-log-adjuvants = Adjuvants
season-log-planned-and-applied = Planned and applied
season-log-water-and-hours = Water and hours
season-log-no-record-fits-what-is-chosen = No record fits what is chosen. Choose other seasons, another field or another crop.
season-log-from-season = From season
season-log-to-season = To season
season-log-all-fields = all fields
season-log-crop = Crop
season-log-all-crops = all crops
season-log-the-chart-has-the-with-of = The chart has the { $shown } with { $by } of { $all }; the table has all
season-log-no-record-has-a-product = No record of these has a product.

## desk/views/season_log/review/outcomes.rs

season-log-no-adjuvant = no adjuvant
season-log-days = Days
season-log-count-rated = { $count ->
        [one] { $count } record is rated
       *[other] { $count } records are rated
    }
season-log-by-adjuvants-in-the-tank = { $chosen }, { $days }, by adjuvants in the tank
season-log-in-figures = { $chosen } in figures
season-log-by-adjuvants = { $of }, { $days }, by adjuvants
season-log-100-is-all-dead = 100 % is all dead
season-log-0-is-no-injury = 0 % is no injury
season-log-mean-with-the-interval-in-which = Mean with the interval in which it lies at 95 %, and n, the number of fields rated; { $means }. One rating alone has no interval
season-log-95-interval = 95 % interval
season-log-ratings = Ratings
season-log-one-rating = one rating
season-log-two-choices-compared = Two choices compared
season-log-compare = Compare
season-log-compare-with = Compare with
season-log-both-and-on-neither-side = { $count ->
        [one] { $count } record has both and is on neither side
       *[other] { $count } records have both and are on neither side
    }
season-log-nothing-was-rated-with-both-in = Nothing was rated with both in the same days after an application.
season-log-in-pairs-field-by-field-in = In pairs, field by field in one season
season-log-all-ratings-without-pairs = All ratings, without pairs
season-log-and-records-no-pairs = { $one } and { $other } records, no pairs
season-log-less = { $one } less { $other }
season-log-in-per-cent-points-right-of = { $name }, in per cent points: right of the line { $one } was rated higher
season-log-per-cent-points = per cent points
season-log-difference-in-pairs = difference in pairs
season-log-difference-of-all = difference of all
season-log-not-told = not told
season-log-differences = Differences
season-log-and = { $one } and { $other }
season-log-the-pairs-mean-ratings-in-per = The pairs, mean ratings in per cent
season-log-field-and-season = field and season
season-log-pairs = Pairs
season-log-count-pairs = { $count ->
        [one] { $count } pair
       *[other] { $count } pairs
    }

## desk/views/season_log/review/overview.rs

season-log-treated = { $count ->
        [one] { $count } pass, { $figures } treated
       *[other] { $count } passes, { $figures } treated
    }
season-log-ground-treated-season-by-season = Ground treated, season by season
season-log-ground-treated-by-season = Ground treated by season
season-log-ground-treated-by-month = Ground treated by month, { $newest }
season-log-ground-treated-since-january = Ground treated since January
season-log-by-season = By season
season-log-at-least-once = at least once
season-log-by-month = By month
season-log-since-january = since January
season-log-ground-treated-by-month-in = Ground treated by month in { $year }
season-log-ground-treated-since-january-season-by = Ground treated since January, season by season
season-log-the-chart-has-the-newest-seasons = The chart has the { $lines } newest seasons; the tables have all

## desk/views/season_log/review/paper.rs

season-log-review-as-pdf = Review as PDF…
season-log-the-review-was-not-written-it = The review was not written: it is no longer known which seasons were meant; choose it again
season-log-the-review-was-not-written = The review was not written
season-log-the-review-is-written-to = The review is written to { $path }{ $since }

## desk/views/season_log/review/planned.rs

season-log-amounts-over-ground = Amounts over ground
season-log-ground = Ground
season-log-the-largest-errors-of-amounts-over = The largest errors of amounts over ground
season-log-the-largest-errors = The largest errors
season-log-a-click-leads-to-the-record = A click leads to the record
season-log-how-often-so-far-off-per = { $name }: how often so far off, per cent
season-log-errors-in-per-cent = Errors in per cent: { $name }
season-log-errors-in-figures = Errors in figures
season-log-how-many = how many
season-log-most-too-little = most too little
season-log-most-too-much = most too much

## desk/views/season_log/review/products.rs

season-log-products-by-ground-treated = Products by ground treated
season-log-actives-over-the-ground-of-the = Actives over the ground of the farm
season-log-actives = Actives
season-log-an-active-field-by-field = An active, field by field
season-log-ground-treated-by-product = Ground treated by product
season-log-most-ground = most ground
season-log-most = most
season-log-over-of-ground-that-can-be = Over { $ground } of ground that can be sprayed, in all the time chosen
season-log-over-the-farms-ground = over the farm's ground
season-log-not-known = not known
season-log-active = Active
season-log-over-the-field = over the field
season-log-by-field = { $name } by field

## desk/views/season_log/review/table.rs

season-log-name-count-of-headings = { $count ->
        [one] { $name }: { $count } row of { $headings }
       *[other] { $name }: { $count } rows of { $headings }
    }

## desk/views/season_log/review/trials.rs

season-log-no-trial-is-laid-out-yet = No trial is laid out yet. A trial holds two treatments against one another, pair by pair.
season-log-all-trials-of-the-farm-whatever = All trials of the farm, whatever is chosen above
season-log-against = { $one } against { $other }
season-log-no-pair-is-rated-on-both = No pair is rated on both sides yet: rate its fields on the pages of their records.

## desk/views/season_log/review/weather.rs

season-log-of-held-against-labels-laws-and = { $count ->
        [one] { $judged } of { $count } record held against labels, laws and practice so far: { $of_label_or_law } outside a label or a law, { $of_practice } outside practice alone
       *[other] { $judged } of { $count } records held against labels, laws and practice so far: { $of_label_or_law } outside a label or a law, { $of_practice } outside practice alone
    }
season-log-not-measured = Not measured
season-log-records-without-it = records without it
season-log-air-temperature = air temperature
season-log-n-of-of = { $n } of { $of }
season-log-outside-a-label-or-a-law = Outside a label or a law
season-log-outside-what-the-farm-keeps-to = Outside what the farm keeps to, or what is usual
season-log-nothing-so-far = nothing so far
season-log-nothing = nothing
season-log-the-newest-of = the newest { $shown } of { $all }
season-log-show-more = Show more
season-log-show-more-heading = Show more: { $heading }

## desk/views/season_log/review/work.rs

season-log-at-least = at least { $sum }
season-log-spray-by-water = Spray by water
season-log-most-spray = most spray
season-log-hours-by-rig-from-start-to = Hours by rig, from start to end
season-log-hours-by-rig = Hours by rig
season-log-water-in-it = water in it
season-log-without-a-volume = without a volume
season-log-hours = Hours
season-log-ground-in-it = ground in it
season-log-in-an-hour = in an hour
season-log-ground-in-all = ground in all
season-log-without-times = without times

## desk/views/season_log/seal.rs

season-log-broken-seal = broken seal
season-log-name-of-date = "{ $name }" of { $date }
season-log-the-signed-record-was-changed-outside = The signed record { $first } was changed outside of an amendment; its page in the season log says more
season-log-signed-records-were-changed-outside-of = { $count } signed records were changed outside of an amendment, the first { $first }; the season log marks them
season-log-amendment = Amendment
season-log-why-it-is-changed = why it is changed
season-log-keep-the-amendment = Keep the amendment
season-log-leave-it-as-it-was = Leave it as it was
season-log-take-the-record-as-it-is = Take the record as it is
season-log-an-amendment-will-say-that-the = An amendment will say that the record was changed outside of one. What was signed and amended stays.
season-log-what-is-known-of-it = what is known of it
season-log-take-it-as-it-is = Take it as it is
season-log-take-it-as-it-is-a9a = Take it as it is…
season-log-amend = Amend…
season-log-amend-the-record = Amend the record…
season-log-signed-by = { $amended ->
        [0] Signed by { $by }, { $at }
        [one] Signed by { $by }, { $at } · { $amended } amendment
       *[other] Signed by { $by }, { $at } · { $amended } amendments
    }
season-log-signed-but-by-whom-is-gone = { $amended ->
        [0] Signed, but by whom is gone
        [one] Signed, but by whom is gone · { $amended } amendment
       *[other] Signed, but by whom is gone · { $amended } amendments
    }
season-log-who = Who
season-log-who-amends = Who amends
season-log-why = Why
season-log-why-it-is-amended = Why it is amended
season-log-type-over-what-is-wrong-on = Type over what is wrong on the page below; here stands what it changes
season-log-and-more-more = and { $more } more
season-log-from-then-on-the-record-is = From then on the record is amended, not edited: what stood there stays, with who changed it, when and why. Ratings and notes of what came of it may be added at any time.
season-log-still-open-what-comes-later-is = Still open: { $open }. What comes later is an amendment.
season-log-who-signs = Who signs
season-log-sign-it = Sign it
season-log-not-yet-27c = Not yet
season-log-sign = Sign…
season-log-sign-the-record = Sign the record…
season-log-not-signed-it-may-be-edited = not signed; it may be edited
season-log-its-day-is-still-to-come = The day of this record, { $date }, is still to come: it can be signed once it is sprayed.
season-log-signed-by-by-at = Signed by { $by }, { $at }
season-log-the-signature-is-gone = The signature is gone
season-log-this-seal-does-not-hold = this seal does not hold
season-log-seal = seal { $first }
season-log-remove-this-signed-record-the-law = Remove this signed record? The law may ask to keep it for years.
season-log-remove-this-record = Remove this record?
season-log-is-signed-from-now-on-it = { $name } is signed; from now on it is amended
season-log-the-amendment-of-is-kept-what = The amendment of { $name } is kept; what stood there is shown below its signature
season-log-is-taken-as-it-is-what = { $name } is taken as it is; what stood in the broken chain stays

## desk/views/season_log/trials.rs

season-log-no-trial-yet-a-trial-holds = No trial yet. A trial holds two treatments against one another, on strips of a field or on paired fields: record both, rate them in the outcomes of their records, and pair them here.
season-log-add-a-trial = Add a trial
season-log-new-trial = New trial
season-log-name-of-the-trial = Name of the trial
season-log-remove-this-trial = Remove this trial?
season-log-remove-trial = Remove trial { $name }…
season-log-the-one-side = the one side
season-log-the-one-side-df3 = The one side
season-log-crop-oil-concentrate = crop oil concentrate
season-log-the-other-side = the other side
season-log-the-other-side-371 = The other side
season-log-non-ionic-surfactant = non-ionic surfactant
season-log-note-on-the-trial = Note on the trial
season-log-what-was-seen-beside-the-figures = what was seen beside the figures
season-log-no-pair-yet-choose-a-record = No pair yet: choose a record for each side.
season-log-pair-side = { $side ->
        [one] Pair { $number }, one side: { $words }
       *[other] Pair { $number }, other side: { $words }
    }
season-log-remove-pair = Remove pair { $number }
season-log-add-the-pair = Add the pair
season-log-add-pairs = Add { $count } pairs
season-log-choose-a-record = choose a record
season-log-pair-a-record = pair a record
season-log-record-of-the-one-side = Record of the one side
season-log-record-of-the-other-side = Record of the other side
season-log-nothing-is-rated-on-both-sides = Nothing is rated on both sides of a pair yet: rate the same weed, as many days after, in both records.
season-log-the-one = the one
season-log-the-other = the other
season-log-the-difference-is-less-in-points = The difference is { $one } less { $other }, in points of per cent.
season-log-a-record-that-is-gone = a record that is gone
season-log-field-name-of-date = { $field }, { $name } of { $date }

## desk/views/season_log: heads of columns, words before boxes

season-log-head-field = field
season-log-head-fields = fields
season-log-head-area = area
season-log-head-crop = crop
season-log-head-stage = stage
season-log-head-product = product
season-log-head-products = products
season-log-head-date = date
season-log-head-pass = pass
season-log-head-operator = operator
season-log-head-open = open
season-log-head-line = line
season-log-head-day = day
season-log-head-start = start
season-log-head-column = column
season-log-head-holds = holds
season-log-head-unit = unit
season-log-head-grew = grew
season-log-head-what = what
season-log-head-after = after
season-log-head-rating = rating
season-log-head-pair = pair
season-log-head-one = one
season-log-head-other = other
season-log-head-difference = difference
season-log-head-mean = mean
season-log-head-median = median
season-log-head-at = at
season-log-head-wind = wind
season-log-head-gust = gust
season-log-head-from = from
season-log-head-air = air
season-log-head-humidity = humidity
season-log-head-adjuvants = adjuvants
season-log-head-days = days
season-log-head-pairs = pairs
season-log-head-ratings = ratings
season-log-head-water = water
season-log-head-spray = spray
season-log-head-records = records
season-log-head-rig = rig
season-log-head-time = time
season-log-head-class = class
season-log-head-ground = ground
season-log-head-cost = cost
season-log-head-kind = kind
season-log-head-active = active
season-log-head-record = record
season-log-head-error = error
season-log-head-amounts = amounts
season-log-head-volume = volume
season-log-head-uses = uses
season-log-head-group = group
season-log-head-season = season
season-log-head-passes = passes
season-log-head-treated = treated
season-log-head-month = month
season-log-head-none = none
season-log-head-with = with
season-log-head-by = by
season-log-head-seasons = seasons
season-log-head-to = to
season-log-head-beside = beside
season-log-head-hours = hours
