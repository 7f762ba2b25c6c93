## core/season/amend.rs

season-what-stands-here-was-changed-outside = what stands here was changed outside of an amendment; taken as it is by { $by }: { $why }
season-it-was-changed-outside-of-an = it was changed outside of an amendment before it was taken as it is

## core/season/amend/words.rs

season-put-in = { $what }: { $is } put in
season-taken-out = { $what }: { $was } taken out
season-now = { $what }: { $was }, now { $is }
season-that-is-and-stands-there = that { $what } is { $said }, and { $stands } stands there
season-field = Field
season-of = { $what } of { $field }
season-product = Product
season-product-at = product { $at }
season-what-of-line = { $what } of { $line }
season-of-in = { $what } of { $active } in { $line }
season-active-in = Active in { $line }
season-weed-or-pest = Weed or pest
season-reading = Reading
season-at = at { $time }
season-of-reading = { $what } of reading { $reading }
season-left-over = Left over
season-where-the-rest-went = Where the rest went
season-customer = Customer
season-of-the-customer = { $what } of the customer
season-in-the-forecast = { $what } in the forecast
season-record = Record
season-it-is-nothing = nothing
season-it-is-yes = yes
season-it-is-no = no
season-what-in-line = { $what } in { $line }
season-changed-planned-as = Planned as
season-changed-name = Name
season-changed-date = Date
season-changed-start = Start
season-changed-end = End
season-changed-fields = Fields
season-changed-spray-volume = Spray volume
season-changed-planned-spray-volume = Planned spray volume
season-changed-loads = Loads
season-changed-left-over = Left over
season-changed-products = Products
season-changed-weeds-or-pests = Weeds or pests
season-changed-water = Water
season-changed-rig = Rig
season-changed-method = Method
season-changed-nozzles = Nozzles
season-changed-pressure = Pressure
season-changed-speed = Speed
season-changed-height-of-the-nozzles = Height of the nozzles
season-changed-clean-out = Clean out
season-changed-wind = Wind
season-changed-wind-from = Wind from
season-changed-gust = Gust
season-changed-temperature = Temperature
season-changed-humidity = Humidity
season-changed-readings = Readings
season-changed-droplets = Droplets
season-changed-forecast = Forecast
season-changed-operator = Operator
season-changed-certificate = Certificate
season-changed-supervisor = Supervisor
season-changed-helpers = Helpers
season-changed-customer = Customer
season-changed-made = Made
season-changed-note = Note
season-changed-time = Time
season-changed-source = Source
season-changed-area = Area
season-changed-crop = Crop
season-changed-stage = Stage
season-changed-planned-area = Planned area
season-changed-part = Part
season-changed-variety = Variety
season-changed-day-of-planting = Day of planting
season-changed-location = Location
season-changed-parcel = Parcel
season-changed-eppo-code-of-the-crop = EPPO code of the crop
season-changed-product = Product
season-changed-registration-number = Registration number
season-changed-amount = Amount
season-changed-planned-amount = Planned amount
season-changed-lot = Lot
season-changed-price = Price
season-changed-kind = Kind
season-changed-adjuvant-class = Adjuvant class
season-changed-restricted-use = Restricted use
season-changed-hours-before-entry = Hours before entry
season-changed-days-before-harvest = Days before harvest
season-changed-group = Group
season-changed-basis = Basis
season-changed-mass = Mass
season-changed-address = Address
season-changed-phone = Phone
season-changed-copied = Copied

## core/season/binds.rs

season-for-where-the-crop-was-not = { $at }, for { $crop }, where the crop was not typed
season-any-other-crop = any other crop

## core/season/close.rs

season-pass-is-partly-recorded = "{ $name }" of { $date } is { $partly }
season-pass-has-no-record = "{ $name }" of { $date } has no record
season-record-what-is-left-if-it = Record what is left if it was sprayed; else lower the ground of the pass, so that the log is whole.
season-record-it-if-it-was-sprayed = Record it if it was sprayed; else remove it, so that the log is whole.
season-records-of-the-season-are-not = { $many ->
        [one] One record of the season is not signed
       *[other] { $many } records of the season are not signed
    }
season-a-signed-record-is-amended-not = A signed record is amended, not edited: an inspector sees what was changed, when and why.

## core/season/field/barred.rs

season-beyond-the-calendar = beyond the calendar
season-the-next-crop = the next crop
season-after-the-harvest = after the harvest
season-see-the-label = see the label
season-nobody-enters-without-protection-keeps-h = Nobody enters without protection: { $name } keeps { $hours } h after the last of the spray{ $end ->
        [known] { "" }
       *[day] , counted from the end of the day
    }
season-whether-people-may-enter-is-not = Whether people may enter is not known: no re-entry time of { $unknown } of { $date } is typed
season-no-harvest-or-grazing-of-keeps = No harvest or grazing: { $name } of { $date } keeps { $days } days
season-it-is-expected-on = { $text }; it is expected on { $harvest }
season-stands-too-early-of-keeps-months = { $crop } stands too early: { $name } of { $date } keeps { $months } months to it, and it was planted on { $day }
season-stands-too-early-planting-not-typed = { $crop } stands too early: { $name } of { $date } keeps { $months } months to it, and its day of planting is not typed
season-no-is-planted-of-keeps-months = No { $next } is planted: { $product } of { $sprayed } keeps { $months } months

## core/season/field/crops.rs

season-as-typed = as typed
season-closed-season = closed season
season-from-records = records

## core/season/field/planting.rs


## core/season/field/product.rs

season-of-applications = { $counted } of { $most } applications { $words }
season-sprayed-on-the-label-keeps-days = sprayed on { $date }; the label keeps { $days_apart } days between two
season-and-one-application-takes-at-least = , and one application takes at least { $least }
season-used-of-limit-words-too-little = { $used } of { $limit } { $words }{ $too_little }
season-active-used-of-limit-words-too-little = { $active } { $used } of { $limit } { $words }{ $too_little }
season-the-harvest-was-expected-on = the harvest was expected on { $harvest }
season-the-harvest-is-expected-today = the harvest is expected today
season-the-harvest-is-expected-tomorrow = the harvest is expected tomorrow
season-the-harvest-is-expected-in-days = the harvest is expected in { $left } days, on { $harvest }
season-its-label-keeps-days-to-harvest = { $name }: its label keeps { $days } days to harvest; { $expected }

## core/season/mod.rs

season-name-of-date = "{ $name }" of { $date }
season-has-it-as = { $record } has it as { $amount }
season-has-no-area = { $record } has no area
season-does-not-say-how-much-of = { $record } does not say how much of it was in { $name }
season-counts-it-as = { $record } counts it as { $short }

## core/season/outside.rs

season-air-not-measured = ; the air was not measured
season-forecast-source = forecast
season-of-it-was-sprayed = "{ $name }" of { $date }: it was sprayed { $found }; { $allowed }{ $unknown }
season-the-record-stays-as-it-is = The record stays as it is: it says what happened. Whether it has to be reported is for the law to say.
season-of-a-humidity-of-is-written = "{ $name }" of { $date }: a humidity of { $humidity } is written down{ $when }; air holds no more than 100 %, so neither it nor Delta T is held against a limit
season-mend-the-humidity-of-the-record = Mend the humidity of the record, or empty it where it was not measured.
season-of-it-was-sprayed-with-droplets = "{ $name }" of { $date }: it was sprayed with { $class } droplets; { $basis } { $asks ->
        [asks] asks
       *[may-ask] may ask
    } for { $words }{ $conditional ->
        [no] { "" }
       *[yes] { " " }{ $conditions }
    }{ $unknown }
season-usual-is = usual is { $limit }
season-the-as-it-is-typed-now = the { $whose ->
        [label] label of { $place }
       *[rule] rule { $place }
    } as it is typed now asks for { $limit }
season-the-basis-as-it-is-typed-now-may-ask = the { $whose ->
        [label] label of { $place }
       *[rule] rule { $place }
    } as it is typed now may ask for { $limit }
season-read-at = , read at { $strftime }
season-in-later-reading = , in later reading { $place }
season-an-unknown-value = an unknown value
season-at-wind = at { $wind }
season-with-gusts-of = with gusts of { $gust }
season-in-wind-of-which-no-gust = in wind of { $wind }, which no gust falls below
season-with-wind-from = with wind from { $wind_from }
season-at-temperature = at { $temperature }
season-at-a-humidity-of = at a humidity of { $humidity }
season-at-a-delta-t-of = at a Delta T of { $delta_t }
season-from-to = from { $start } to { $end }
season-text = { " " }of { $strftime }
season-to = { $source }{ $read }, { $strftime } to { $strftime2 }

## core/season/period.rs

season-in-year = in { $year }
season-on-this-crop = on this crop
season-in-12-months = in 12 months
season-the-label-of-counts-by-the = The label of { $name } counts by the crop on { $name2 }; its day of planting is not typed, so the calendar year is counted
season-the-label-counts-by-a-crop-planted-later = The label of { $name } counts by the crop on { $name2 }; it is planted after this pass, so the calendar year is counted
season-type-the-day-of-planting-on = Type the day of planting on the field's page.

## core/season/portion/recorded.rs

season-partly-recorded-of-left = partly recorded: { $left } of { $of } left

## core/season/profile/asked.rs

season-names-no-records = "{ $text }" names no records

## core/season/profile/dates.rs

season-the-record-is-due = the record is due
season-is-due = { $name } is due
season-displayed-until = displayed until
season-kept-until = kept until
season-not-known = not known: { $why }
season-40-cfr-170-112-a-3 = 40 CFR 170.112(a)(3), now 170.407: the longest time counts; the times of the labels as recorded, else as in the shed
season-re-entry-time-ends = re-entry time ends
season-the-end-of-the-display-is = the end of the display is not known
season-the-end-of-spraying-is-not = the end of spraying is not typed
season-no-re-entry-time-of-is = no re-entry time of { $names } is recorded, nor typed from the label in the shed

## core/season/profile/due.rs

season-is-no-time-by-which-something = "{ $text }" is no time by which something is due
season-without-delay = without delay
season-on-the-same-day = on the same day
season-within-days = within { $days } days
season-within-hours = within { $hours } hours
season-by-the-th-of-the-next = by the { $day }th of the next month

## core/season/profile/element.rs

season-element-displayed = put on display
season-element-sds = safety data sheet
season-element-machine-readable = machine-readable
season-element-training = training
season-element-receipts = receipts
season-element-label-copy = copy of the label
season-element-buffer = buffer
season-element-sensitive-survey = sensitive sites looked at
season-element-emergence = before or after emergence
season-element-runoff-points = runoff points
season-element-bulletin = bulletin
season-element-forecast-temperature = forecast temperature
season-element-maker = company on the label
season-element-recommended-by = recommended by
season-element-exchange = who was told
season-element-planted-area = area planted
season-element-site-id = site number
season-element-reported = reported
season-element-mix-site = mixing site
season-element-supplier = supplier
season-element-rain = rain
season-element-fields = fields
season-element-area = area
season-element-covered-area = area
season-element-location = location
season-element-parcel = parcel
season-element-crop = crop
season-element-crop-code = EPPO code
season-element-bbch = BBCH stage
season-element-planted = planted
season-element-product = products
season-element-registration = registration number
season-element-actives = actives
season-element-amount = amount
season-element-dose = dose
season-element-field-amounts = amount by field
season-element-entry = re-entry time
season-element-mix = tank mix
season-element-type-of-use = type of use
season-element-date = date
season-element-start = start
season-element-end = end
season-element-wind = wind
season-element-wind-from = wind from
season-element-wind-at-end = wind at the end
season-element-temperature = temperature
season-element-temperature-at-end = temperature at the end
season-element-humidity = humidity
season-element-wind-changes = later wind
season-element-weather = weather
season-element-pest = pest
season-element-method = method
season-element-nozzles = nozzles
season-element-pressure = pressure
season-element-clean-out = clean-out
season-element-operator = operator
season-element-applicator = applicator
season-element-certificate = certificate
season-element-uncertified = who was supervised
season-element-involved = who was involved
season-element-certificates = certificates
season-element-signature = signature
season-element-customer = customer
season-element-customer-address = customer's address
season-element-customer-phone = customer's telephone
season-element-customer-copy = customer's copy
season-element-holder = holder
season-element-holder-address = holder's address
season-element-holder-number = holder's number
season-surface = surface
season-is-no-element-of-a-record = "{ $key }" is no element of a record
season-in-the-tank = in the tank
season-from = { $wind } from { $wind_from }
season-wind = wind { $wind }
season-wind-from = wind { $wind } from { $from }
season-ground-boom = ground boom
season-a-later-reading = a later reading
season-at-wind-from-from = { $at } { $wind } from { $from }
season-of-which-in-bands = { $driven }, of which { $sprayed } in bands

## core/season/profile/mod.rs

season-not-the-law = Tankard does not decide what the law requires. The law of your place and the label do.
season-from-memory-check = from memory, check
season-years-from-the-end-of-the-display = { $years } { $years ->
        [one] year
       *[other] years
    } from the end of the display
season-years-from-1-january-of-the-next = { $years } { $years ->
        [one] year
       *[other] years
    } from 1 January of the next year
season-years-from-the-application = { $years } { $years ->
        [one] year
       *[other] years
    } from the application
season-for-how-long-is-not-known = for how long is not known here
season-the-farm-keeps-to-a-record = The farm keeps to a record profile "{ $key }" that is not known, so no record is held against it
season-choose-another-in-the-shed-records = Choose another in the shed, Records.

## core/season/profile/open.rs

season-lacks-fields = fields
season-lacks-products = products
season-name-of-names = { $name } of { $names }
season-this-farm = this farm
season-name-as-typed = { $name }, as typed
season-it-was-due-by = it was due by { $due }
season-due-by = due by { $due }
season-by-when-it-is-due-is = by when it is due is not known here
season-type-it-in-the-shed-records = Type it in the shed, Records.
season-type-it-in-the-record-what = Type it in the record; what is of the holder, in the shed, Records.
season-type-it-in-the-record = Type it in the record.
season-whether-the-law-asks-for-it = { $hint } Whether the law asks for it is not decided here.
season-of-lacks-for = "{ $name }" of { $date } lacks for { $name2 }: { $names }; { $when }
season-every-record = every record
season-records-of-pesticides = records of pesticides
season-records-of-restricted-use-products = records of restricted-use products
season-records-of = records of { $name }
season-records-of-on = records of { $name } on { $crops }

## core/season/review/compare.rs

season-no = no { $class }

## core/season/review/figures.rs

season-no-price = no price
season-at-least = at least { $money }

## core/season/review/products.rs

season-kind-not-known = kind not known

## core/season/review/remarks.rs

season-remark-several-classes = Ground that had several classes counts with each of them
season-remark-hatched-cost = Hatched: some of it has no price, so it cost more
season-remark-hatched-spray = Hatched: some records do not say how much, so it was more
season-remark-hatched-hours = Hatched: some records have no start or end, so it was more
season-remark-bases = ae is acid equivalent, ai active ingredient; the two are not added
season-remark-error = An error is what was done over what was planned: +2 % is two hundredths too much
season-remark-no-plan = No record keeps what was planned. Records made from a plan do; it can be typed on the page of a record too
season-remark-weather = What was not measured is not judged. Labels are read as they are typed now. Whether something has to be reported is for the law to say
season-remark-again = That a group came again is told, not that a weed will resist it. What the label says holds
season-remark-water = Water is the spray less the liquid products in it, as if volumes add up. What has no volume is in no sum
season-remark-no-group = No product of a known resistance group went out on a field.
season-remark-not-rated = Nothing is rated yet: rate a field on the page of its record.
season-remark-hours = From start to end: spraying, turning, filling, road and breaks
season-remark-products-alone = Products alone, at the prices of the records; neither water nor hours nor the rig. Ground sprayed twice counts twice
season-ground-sprayed-twice-counts-twice-was = Ground sprayed twice counts twice. { $sprayed } was sprayed at least once
season-the-lesser-figure-takes-passes-on = The lesser figure takes passes on a field as if they lay on the same ground, the greater as if they lay beside one another: which part of a field a record sprayed is not drawn
season-ground-without-an-area = { $count } { $count ->
        [one] record has
       *[other] records have
    } ground without an area
season-no-price-that-fits-and-is = { $uses } { $uses ->
        [one] use of a product has
       *[other] uses of products have
    } no price that fits, and { $uses ->
        [one] is
       *[other] are
    } in no sum; a product on two fields is two uses
season-where-a-record-does-not-say = Where a record does not say the kind or class of a product, what the shed says today stands
season-in-no-sum-since-the-records = In no sum, since the records do not say how much active went out: { $silent }
season-group-numbers-with-how-often-they = Group numbers with how often they came in a season; a { $sign }: it came again too soon, see below. Parts of one application count once
season-held-against-labels-laws-and-practice = { $count } { $count ->
        [one] record
       *[other] records
    } held against labels, laws and practice: { $of_label_or_law } outside a label or a law, { $of_practice } outside practice alone
season-counted-in-no-group-since-none = Counted in no group, since none is known: { $groupless }
season-where-a-record-does-not-say-the-class-of = Where a record does not say the class of a product, that of the shed today stands
season-in-all = In all { $spent }
season-no-adjuvant-and-no-conditioner-went = No adjuvant and no conditioner went out: { $figures } were treated without.
season-nothing-of-a-plan = { $count } { $count ->
        [one] record keeps
       *[other] records keep
    } nothing of a plan
season-not-keep-what-was-planned-or = { $uses } { $uses ->
        [one] use of a product does
       *[other] uses of products do
    } not keep what was planned, or on what ground
season-no-record-says-what-was-left = No record says what was left over.
season-in-all-of-say-what-was = { $figures } in all; { $told } of { $count } { $count ->
        [one] record
       *[other] records
    } say what was left over.
season-without-a-price = Without a price: { $without_price }
season-over = , { $over } over { $figures }
season-spent-in-all-over = { $spent } in all{ $over }
season-on-the-day-itself-or-more = { $ratings } { $ratings ->
        [one] rating lies
       *[other] ratings lie
    } on the day itself or more than ten weeks after it, and { $ratings ->
        [one] is
       *[other] are
    } in no row
season-of-a-field-that-their-record = { $ratings } { $ratings ->
        [one] rating is
       *[other] ratings are
    } of a field that their record did not spray, or of a day before it; look at the records

## core/season/review/words.rs

season-no-cause = It says what was rated on this farm and not why: fields, weather, size of the weeds and whoever looked may have differed along with what is compared. What the label says holds, whatever was rated.
season-no-longer-on-the-farm = no longer on the farm
season-month-1 = Jan
season-month-2 = Feb
season-month-3 = Mar
season-month-4 = Apr
season-month-5 = May
season-month-6 = Jun
season-month-7 = Jul
season-month-8 = Aug
season-month-9 = Sep
season-month-10 = Oct
season-month-11 = Nov
season-month-12 = Dec
season-below-gap = below{ $gap }{ $end }
season-name-times = { $name } { $n ->
        [one] once
       *[other] { $n } times
    }
season-few-pairs = { $of } ({ $n } { $n ->
        [one] pair
       *[other] pairs
    })
season-to-days-after = { $from } to { $to } days after
season-control-of = control of { $weed }
season-injury-of-the-crop = injury of the crop
season-injury = injury: { $how }
season-no-adjuvant = no adjuvant
season-and = { $most } and { $last }
season-too-few-to-tell = { $of }: too few to tell: { $n } { $n ->
        [one] pair
       *[other] pairs
    }. Fewer than six cannot be told from chance at 5 % by their signs and ranks, whatever they show
season-all-pairs-differ-alike-by-per = { $of }: all { $n } pairs differ alike, by { $show } per cent points ({ $one } less { $other }); the differences do not spread, so no interval can be told
season-by-ranks = ; by ranks { $ends }
season-95-interval = 95 % interval { $interval }{ $rank }
season-over-pairs = over { $n } pairs
season-on-and-pieces-of-ground = on { $ground } and { $ground2 } pieces of ground
season-too-few-to-tell-with-with = { $of }: too few to tell: { $count } { $count ->
        [one] record
       *[other] records
    } with { $one }, { $counts } with { $other }, { $pieces }; fewer than { $fewest } of either are not compared
season-the-records-of-each-side-were = { $of }: the records of each side were rated all alike and do not spread, so no interval can be told
season-and-records = { $counts } and { $counts2 } records, { $pieces }
season-95-interval-interval = 95 % interval { $interval }
season-too-few-to-tell-few-too-few-pairs = Too few to tell: { $few }. Fewer than six cannot be told from chance at 5 % by their signs and ranks, whatever they show
season-per-cent-points = { $show } per cent points
season-was-rated-higher-with-than-with = { $of } was rated { $by } higher with { $one } than with { $other } ({ $over }; { $ends })
season-of-was-rated-by-higher-with-other-than-with = { $of } was rated { $by } higher with { $other } than with { $one } ({ $over }; { $ends })
season-the-data-do-not-tell-and = { $of }: the data do not tell { $one } and { $other } apart ({ $over }; difference { $show }; { $ends })
season-show-to-show2 = { $show } to { $show2 }
season-comparisons-stand-here-of-comparisons-in = { $comparisons } comparisons stand here. Of comparisons in which nothing differs about one in 20 seems to, by chance alone; one that stands out among many is a reason to lay out a trial, not yet an answer
season-group = group { $group }
season-kind-group-group = { $kind } group { $group }
season-times-in = { $times ->
        [2] twice in { $year }
       *[other] { $times } times in { $year }
    }
season-in-each-season-from-to = in each season from { $from } to { $to }
season-applications-in-a-row-to = { $times } applications in a row, { $from } to { $to }
season-without-uses-that-have-no-price = { $money }, without { $many } { $many ->
        [one] use that has no price
       *[other] uses that have no price
    }
season-and-more = and { $of } more
season-crop-not-typed = crop not typed
season-water-not-typed = water not typed
season-rig-not-typed = rig not typed
season-no-field-in-the-record = no field in the record
season-class-not-known = class not known
season-at-gap-and-more = { $at }{ $gap }and more
season-at-gap-to-at2 = { $at }{ $gap }to { $at2 }

## core/season/seal.rs

season-who-does-it-is-not-typed = who does it is not typed; type a name
season-why-it-is-changed-is-not = why it is changed is not typed; type the reason in a few words
season-nothing-differs-from-what-stands-there = nothing differs from what stands there; change something first
season-the-record-is-not-signed-so = the record is not signed, so it is edited and not amended
season-the-record-is-signed-already-what = the record is signed already; what is to be changed is amended
season-the-day-of-the-record-is-still-to-come = the day of the record, { $date }, is still to come: sign it once it is sprayed
season-the-record-was-changed-outside-of = the record was changed outside of an amendment; take it as it is first, or put back what stood there
season-the-seals-of-the-record-hold = the seals of the record hold; what is to be changed is amended
season-what-was-signed-cannot-be-told = what was signed cannot be told: { $it }
season-the-signed-record-of-has-the = The signed record "{ $name }" of { $date } has the same seal as "{ $name2 }" of { $date2 }: one is a copy of the other, and both count
season-it-was-sprayed-once-take-out = It was sprayed once; take out the copy, or record on its own what was really sprayed again.
season-by-on = { " " }by { $by } on { $date }
season-the-signed-record-was-changed-outside = The signed record { $name } was changed outside of an amendment, and was taken as it is{ $by }
season-the-signed-record-name-was-changed-outside-of-an = The signed record { $name } was changed outside of an amendment: { $said }
season-compare-it-with-a-print-or = Compare it with a print or an older copy of the file. Put back what stood there, or take it as it is by an amendment that says so; nothing of it is removed.
season-the-record-cannot-be-written-as = the record cannot be written as JSON
season-the-signature = the signature
season-who-signed-or-when = who signed or when
season-amendment = amendment { $at }
season-who-when-why-or-what-of = who, when, why or what of amendment { $at }
season-the-signature-was-taken-out-while = the signature was taken out, while amendments stand there still
season-is-not-what-was-sealed-the = { $what } is not what was sealed; the record itself stands as it did
season-the-seal-of-was-changed-and = the seal of { $which } was changed, and nothing else
season-says = { $which } says { $misfit }
season-what-stands-there-or-who-signed = what stands there, or who signed and when, is not what was signed
season-what-stands-there-or-itself-is = what stands there, or { $which } itself, is not what was sealed with it

## core/season/too_much.rs

season-of-brings-to-of-the-as = "{ $name }" of { $date } brings { $name2 } to { $sum } of { $what } { $words }; the { $whose ->
        [law] law
       *[label] label
    } as it is typed now { $allows ->
        [allows] allows
       *[may-allow] may allow
    } { $most }

## core/season/trials.rs

season-pair-has-ground-that-stands-in = Pair { $number } has ground that stands in the trial already, so it is not counted
season-pair-speaks-of-a-record-that = Pair { $number } speaks of a record that is gone, or of a field that is not in it; choose its ground anew
season-of-pairs-are-rated-on-both = { $both } of { $pairs } pairs are rated on both sides: { $words }
season-name-and-name2-year = { $name } and { $name2 }, { $year }
season-name-parts-and-parts2-year = { $name }, { $parts } and { $parts2 }, { $year }

## core/season/worker_protection.rs

season-crop-or-site-treated-is-not = Crop or site treated is not written down
season-write-the-crop-into-the-record = Write the crop into the record
season-describe-the-area-where-it-lies = Describe the area: where it lies, or by a map beside the sheet
season-location-of-the-treated-area-is = Location of the treated area is not written down
season-no-pesticide-is-written-down = No pesticide is written down
season-write-down-the-products-that-went = Write down the products that went out
season-epa-registration-number-of-is-not = EPA registration number of { $name } is not written down
season-it-stands-on-the-label = It stands on the label
season-active-ingredients-of-are-not-written = Active ingredients of { $name } are not written down
season-they-stand-on-the-label = They stand on the label
season-the-time-at-which-it-began = The time at which the application began is not written down
season-the-time-at-which-it-ended = The time at which the application ended is not written down
season-write-it-into-the-record = Write it into the record
season-restricted-entry-interval-of-is-not = Restricted-entry interval of { $name } is not known, so its end is not told
season-write-the-hours-of-its-label = Write the hours of its label into the record, 0 where it has none
season-the-exclusion-zone-is-not-known = The exclusion zone is not known for this method ("{ $method }")
season-look-it-up-in-the-rule = Look it up in the rule and write it on the sheet: 100 ft by air, air blast, fumigant, smoke, mist or fog
season-the-exclusion-zone-cannot-be-told = The exclusion zone cannot be told: the droplet class is not written down
season-the-exclusion-zone-hangs-on-whether = The exclusion zone hangs on whether the nozzles were within 12 in of the soil; a record has their height above what was sprayed
season-keep-25-ft-unless-they-were = Keep 25 ft unless they were
