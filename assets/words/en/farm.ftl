## core/farm/advice.rs

farm-someone-not-named = someone not named
farm-no-day-typed = { $whose }, no day typed

## core/farm/aim.rs

farm-little-spray-left-over = little spray left over
farm-no-load-too-small-to-agitate = no load too small to agitate
farm-few-fillings = few fillings
farm-few-containers-opened = few containers opened
farm-whole-containers-little-measuring = whole containers, little measuring
farm-amounts-close-to-exact = amounts close to exact
farm-another-crop = another crop
farm-a-variety-that-stands-other-products = a variety that stands other products
farm-a-strip-that-a-label-keeps = a strip that a label keeps to a neighbour
farm-another-owner = another owner

## core/farm/calibration.rs

farm-catch-at-the-nozzles = catch at the nozzles
farm-1-128-acre = 1/128 acre
farm-speed-over-a-course = speed over a course
farm-tank-level = tank level

## core/farm/differs.rs

farm-so-many = { $count } { $kind ->
        [field] { $count ->
            [one] field
           *[other] fields
        }
        [surrounding] { $count ->
            [one] surrounding
           *[other] surroundings
        }
        [water] { $count ->
            [one] water
           *[other] waters
        }
        [rig] { $count ->
            [one] rig
           *[other] rigs
        }
        [product] { $count ->
            [one] product
           *[other] products
        }
        [advice] { $count ->
            [one] advice
           *[other] pieces of advice
        }
        [law] { $count ->
            [one] law
           *[other] laws
        }
        [day] { $count ->
            [one] day
           *[other] days
        }
        [pass] { $count ->
            [one] pass
           *[other] passes
        }
        [record] { $count ->
            [one] record
           *[other] records
        }
        [movement] { $count ->
            [one] movement of stock
           *[other] movements of stock
        }
        [trial] { $count ->
            [one] trial
           *[other] trials
        }
        [closed] { $count ->
            [one] closed season
           *[other] closed seasons
        }
       *[card] { $count ->
            [one] issued card
           *[other] issued cards
        }
    }
farm-added = { $what } added: { $names }
farm-gone = { $what } gone: { $names }
farm-changed = { $what } changed: { $names }
farm-and-more = { $names } and { $more } more
farm-in-another-order = { $kind ->
        [field] fields
        [surrounding] surroundings
        [water] waters
        [rig] rigs
        [product] products
        [advice] pieces of advice
        [law] laws
        [day] days
        [pass] passes
        [record] records
        [movement] movements of stock
        [trial] trials
        [closed] closed seasons
       *[card] issued cards
    } in another order
farm-of-the-farm-itself = of the farm itself: { $farm }
farm-the-name = the name
farm-the-units = the units
farm-the-currency = the currency
farm-the-place = the place
farm-the-paper = the paper
farm-the-languages-of-its-cards = the languages of its cards
farm-the-finest-marks-measured-with = the finest marks measured with
farm-the-emergency-lines = the emergency lines
farm-the-picture-under-the-map = the picture under the map
farm-what-the-farm-keeps-to = what the farm keeps to
farm-the-forecast = the forecast
farm-the-aims-of-load-sizes = the aims of load sizes
farm-what-keeps-fields-from-sharing-a = what keeps fields from sharing a load
farm-the-ground-of-shorter-loads-on = the ground of shorter loads on a card
farm-the-roads = the roads
farm-how-records-are-kept = how records are kept
farm-before = { $new }, before { $old }

## core/farm/field.rs

farm-stated = stated
farm-from-the-boundary = from the boundary

## core/farm/forecast.rs

farm-typed-by-hand = typed by hand
farm-changed-by-hand = { $source }, changed by hand
farm-holds-day = day
farm-holds-air = air
farm-holds-humidity = humidity
farm-holds-wind = wind
farm-holds-gusts = gusts
farm-holds-rain = rain
farm-holds-cloud = cloud
farm-day-and-time = day and time
farm-time-of-day = time of day
farm-air-higher-up = air higher up
farm-dew-point = dew point
farm-wind-from = wind from
farm-chance-of-rain = chance of rain

## core/farm/label.rs

farm-requires = requires
farm-prefers = prefers
farm-allows = allows
farm-forbids = forbids
farm-required = required
farm-preferred = preferred
farm-allowed = allowed
farm-discouraged = discouraged
farm-forbidden = forbidden
farm-says-rate = rate
farm-says-applications = applications
farm-says-droplets = droplets
farm-says-wind = wind
farm-says-humidity = humidity
farm-says-daylight = daylight
farm-says-cleaning = cleaning
farm-says-temperature = temperature
farm-says-dates = dates
farm-says-controls = controls
farm-says-buffer = buffer
farm-says-rain-free = rain-free
farm-says-adjuvant = adjuvant
farm-says-wear = wear
farm-says-caution = caution
farm-a-year = a year
farm-a-crop = a crop
farm-in-12-months = in 12 months
farm-is-no-day-of-the-year = "{ $text }" is no day of the year; write month and day like "06-20"
farm-advises-against = advises against
farm-spray-volume = spray volume
farm-most-a-season = most a season
farm-most-active-a-season = most active a season
farm-crop-stage = crop stage
farm-harvest-graze = harvest, graze
farm-keep-out = keep out
farm-next-crop = next crop
farm-wind-toward = wind toward
farm-no-inversion = no inversion
farm-delta-t = Delta T
farm-boom-height = boom height
farm-ground-speed = ground speed
farm-mixing-order = mixing order
farm-not-together-with = not together with
farm-when-mixing = when mixing

## core/farm/law.rs

farm-a-rule-without-a-name = a rule without a name

## core/farm/mod.rs

farm-where-the-farm-lies-is-not = Where the farm lies is not typed; type its latitude and longitude in the shed
farm-is-no-latitude-and-may-be = "{ $latitude }" is no latitude, and "{ $longitude }" may be one: they may stand in each other's box in the shed
farm-is-no-latitude-write-degrees-from = "{ $latitude }" is no latitude; write degrees from -90 to 90, such as "41.2"
farm-is-no-longitude-write-degrees-from = "{ $longitude }" is no longitude; write degrees from -180 to 180, such as "-96.4"

## core/farm/pass.rs

farm-water = water
farm-fertilizer = fertilizer
farm-uan = UAN
farm-even = even
farm-at-the-field-from-a-nurse = at the field, from a nurse tank
farm-in-the-yard = in the yard
farm-urea-ammonium-nitrate = urea ammonium nitrate
farm-liquid-fertilizer = liquid fertilizer
farm-weed-control = weed control
farm-crop-safety = crop safety

## core/farm/product.rs

farm-herbicide = herbicide
farm-fungicide = fungicide
farm-insecticide = insecticide
farm-adjuvant = adjuvant
farm-other-kind = other
farm-non-ionic = non-ionic
farm-cationic = cationic
farm-anionic = anionic
farm-amphoteric = amphoteric
farm-organosilicone = organosilicone
farm-other-class = other
farm-jug = jug
farm-jugs = jugs
farm-bag = bag
farm-bags = bags
farm-box = box
farm-boxes = boxes
farm-drum = drum
farm-drums = drums
farm-tote = tote
farm-totes = totes
farm-growth-regulator = growth regulator
farm-water-conditioner = water conditioner
farm-foliar-feed = foliar feed
farm-charge-not-stated = charge not stated
farm-spray-grade = spray grade
farm-fertilizer-grade = fertilizer grade
farm-non-ionic-surfactant = non-ionic surfactant
farm-crop-oil-concentrate = crop oil concentrate
farm-methylated-seed-oil = methylated seed oil
farm-high-surfactant-oil-concentrate = high-surfactant oil concentrate
farm-ammonium-sulfate = ammonium sulfate
farm-conditioner-without-ammonium = conditioner without ammonium
farm-acidifier-or-buffer = acidifier or buffer
farm-volatility-reducer = volatility reducer
farm-drift-retardant = drift retardant
farm-compatibility-agent = compatibility agent
farm-antifoaming-agent = antifoaming agent

## core/farm/rig.rs

farm-fine = fine
farm-medium = medium
farm-coarse = coarse
farm-extremely-fine = extremely fine
farm-very-fine = very fine
farm-very-coarse = very coarse
farm-extremely-coarse = extremely coarse
farm-ultra-coarse = ultra coarse

## core/farm/shape.rs

farm-collection = collection
farm-is-no-well-known-text-of = "{ $it }" is no well-known text of a shape, such as "POINT (-96.4 41.2)"
farm-a-shape-is-a-point-a = a shape is a point, a line, a polygon or several of one of these, not a { $it }
farm-the-shape-has-no-points = the shape has no points
farm-longitude-latitude-is-off-the-globe = longitude { $it }, latitude { $other } is off the globe; a longitude is -180 to 180, a latitude -90 to 90, the longitude stands first
farm-bare-figure = bare figure

## core/farm/sun_time.rs

farm-is-no-time-by-the-sun = "{ $text }" is no time by the sun; write it like "sunrise" or "1 h after sunrise"

## core/farm/surrounding.rs

farm-open-water = water
farm-well = well
farm-home = home
farm-school = school
farm-hives = hives
farm-other-surrounding = other
farm-sensitive-crop = sensitive crop
farm-organic-land = organic land
farm-trees-and-wild-ground = trees and wild ground

## core/farm/unique.rs

farm-a-map-from-id-to-thing = a map from id to thing, each id once

## core/farm/water.rs

farm-clear = clear
farm-cloudy = cloudy
farm-dirty = dirty
