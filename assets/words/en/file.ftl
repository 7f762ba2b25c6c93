## file/alike.rs

file-of = "{ $name }" of { $date }

## file/backups.rs

file-a-hundred-backups-of-one-second = a hundred backups of one second are there already

## file/document.rs

file-the-file-is-empty-take-a = the file is empty; take a backup, or begin a new farm
file-the-file-is-not-utf-8 = the file is not UTF-8 text, so it is no farm file
file-the-file-has-format-this-tankard = the file has format { $found }; this Tankard knows formats up to { $format }. Open it with a newer Tankard
file-the-file-has-format-which-never = the file has format { $found }, which never was; look at its first lines
file-line-column = line { $line }, column { $column }: { $what }
file-a-newer-tankard-may-have-written = { $what }; a newer Tankard may have written it

## file/forecast_csv/cell.rs

file-no-wind-is-that-strong = no wind is that strong
file-no-hour-is-that-wet = no hour is that wet
file-it-is-no-point-of-the = it is no point of the compass
file-it-lies-between-0-and = it lies between 0 and { $of }
file-it-is-above-100 = it is above 100 %
file-it-is-no-plain-number-of = it is no plain number of { $unit }
file-the-files-other-figures-have-a = the file's other figures have a decimal comma, so the dot may mean anything

## file/forecast_csv/read.rs

file-the-times-are-given-against-utc = the times are given against UTC; type the farm's time zone in the shed, on the page of the farm, so that they can be put on its clock
file-the-file-holds-hours-a-forecast = the file holds { $found } hours; a forecast has at most { $most_hours }, so cut it to the days that matter
file-the-file-has-no-column-choose = the file has no column "{ $name }"; choose anew what its columns hold
file-and-both-hold-choose-one-of = "{ $other }" and "{ $name }" both hold { $holds }; choose one of them
file-choose-how-the-days-of-are = choose how the days of "{ $name }" are written
file-choose-the-unit-of-the-file = choose the unit of "{ $name }"; the file does not say it
file-is-no-unit-known-for-choose = "{ $unit }" is no unit known for { $holds }; choose another
file-day-and-time-stand-in-one = day and time stand in one column, so no other may hold a day or a time of day
file-choose-the-column-that-holds-the = choose the column that holds the time of day
file-choose-the-column-that-holds-the-day = choose the column that holds the day
file-choose-the-column-that-holds-day = choose the column that holds day and time
file-choose-at-least-one-column-of = choose at least one column of the weather
file-is-no-way-to-write-a = "{ $unit }" is no way to write a day that is known; choose another
file-it-has-and-the-header-has = { $count ->
        [one] it has { $count } column and the header has { $columns }
       *[other] it has { $count } columns and the header has { $columns }
    }
file-nothing-but-a-time-stands-in = nothing but a time stands in it
file-no-day-and-time-stand-in = no day and time stand in it
file-the-clock-is-put-forward-over = the clock is put forward over "{ $text }", so there is no such time
file-between-full-hours-by-the-farms = { $count ->
        [one] { $count } line between full hours by the farm's clock is left out
       *[other] { $count } lines between full hours by the farm's clock are left out
    }
file-the-hours-begin-minutes-past-the = the hours begin { $minute } minutes past the hour by the farm's clock
file-there-is-an-hour-only-every = there is an hour only every { $usual } hours; the hours between stay unknown, and rain may be the sum of all { $usual }
file-times-without-an-offset-are-taken = times without an offset are taken as the farm's clock
file-999-and-the-like-are-taken = { $count ->
        [one] -999 and the like are taken as not known, in { $count } cell
       *[other] -999 and the like are taken as not known, in { $count } cells
    }
file-the-clock-shows-twice-in-this = the clock shows { $time } twice in this night, and nothing says which of the two it is; write both in order, or with an offset
file-its-hour-stands-on-line-already = its hour stands on line { $before } already

## file/ground/archive.rs

file-it-seems-to-be-a-packed = it seems to be a packed file, but { $what }
file-files-packed-in-it = files packed in it
file-what-is-packed-in-the-file = what is packed in the file

## file/ground/crs.rs

file-there-is-no-prj-to-say = there is no .prj to say what the shapes are measured on; their numbers fit longitude and latitude on WGS 84 and are taken so: look at the map before you take them
file-the-prj-cannot-be-read = the .prj "{ $text }" cannot be read
file-the-shapes-are-measured-on = the shapes are measured on "{ $name }"
file-the-shapes-are-measured-on-not = the shapes are measured on "{ $name }", not in degrees
file-the-longitudes-of-do-not-start = the longitudes of "{ $name }" do not start at Greenwich
file-is-no-longitude-and-latitude-and = { $x }, { $y } is no longitude and latitude, and there is no .prj to say what it is; save the file anew on WGS 84 (EPSG:4326), or copy its .prj beside it
file-lies-off-its-zone = { $x }, { $y } lies off its zone
file-the-shapes-are-measured-on-which = the shapes are measured on "{ $name }" ({ $datum }), which lies up to 1 to 2 m from WGS 84; they are taken as they stand

## file/ground/dbf.rs

file-it-is-too-short = it is too short
file-the-lengths-of-its-columns-do = the lengths of its columns do not fit those of its rows
file-it-ends-after-of-rows = it ends after { $rows } of { $stated } rows

## file/ground/found.rs

file-task-data-iso-11783-10 = task data (ISO 11783-10)
file-shapefile = shapefile
file-the-file-has-more-than-cut = the file has more than { $most } { $of }; cut it down to the fields of the farm first
file-the-file-is-no-geojson-shapefile = the file is no GeoJSON, shapefile, KML or task data; { $it }
file-save-it-anew-on-wgs-84 = { $it }; save it anew on WGS 84 (longitude and latitude, EPSG:4326) in the program that it comes from
file-is-larger-than-mb = { $what } is larger than { $mb } MB; cut it down to the fields of the farm first
file-the-kind-cannot-be-read = the { $kind } cannot be read: { $why }

## file/ground/gather.rs

file-latitude-and-longitude-stand-in-each = latitude and longitude stand in each other's place and are swapped: { $why }
file-it-measures-ha-more-than-any = it measures { $hectares } ha, more than any field; its points may be in other units
file-it-measures-less-than-a-square = it measures less than a square metre
file-a-point-of-it-is-no = a point of it is no number
file-a-line-of-it-has-no = a line of it has no length

## file/ground/geojson.rs

file-it-is-not-saved-as-utf = it is not saved as UTF-8
file-one-that-is-not-named = one that is not named
file-the-file-is-measured-on = the file is measured on "{ $name }"
file-feature = feature { $number }
file-it-has-no-geometry = it has no geometry
file-its-geometry-is-empty = its geometry is empty
file-a-point-of-it-has-fewer = a point of it has fewer than two numbers
file-yes = yes
file-no = no

## file/ground/kml.rs

file-it-points-to-other-files-which = it points to { $links } other files, which are not looked into
file-placemark = placemark { $number }
file-it-has-no-point-line-or = it has no point, line or polygon
file-a-polygon-has-no-outer-ring = a polygon has no outer ring
file-is-no-longitude-and-latitude = "{ $tuple }" is no longitude and latitude

## file/ground/limits.rs

file-pieces-of-ground = pieces of ground
file-points = points

## file/ground/mod.rs

file-what-belongs-to-the-file = what belongs to the file
file-open-the-shp-that-it-belongs = open the .shp that it belongs to
file-save-the-boundaries-as-one-of = save the boundaries as one of these in the program that they come from
file-it-is-a-packed-file-with = it is a packed file with none of these in it

## file/ground/shapefile.rs

file-it-ends-in-the-middle-of = it ends in the middle of its first shape
file-it-has-no-shapes = it has no shapes
file-there-is-no-dbf-beside-so = there is no .dbf beside "{ $name }", so its shapes have no names
file-the-dbf-beside-is-left-so = the .dbf beside "{ $name }" is left, so its shapes have no names: { $why }
file-the-dbf-beside-has-rows-for = the .dbf beside "{ $name }" has { $count } rows for { $records } shapes, so its names are left: nobody can say which belongs to which
file-the-names-are-in-the-code = the names are in the code page "{ $named }", which is not read; letters may be wrong
file-record = record { $number }
file-the-file-ends-in-the-middle = the file ends in the middle of it
file-its-head-is-missing = its head is missing
file-record-records = record { $records }
file-its-record-is-shorter-than-it = its record is shorter than it says
file-it-has-no-shape = it has no shape
file-its-parts-do-not-fit-its = its parts do not fit its points
file-it-is-a-surface-in-space = it is a surface in space, which is not read
file-its-shape-is-of-a-kind = its shape is of a kind that does not exist: { $other }

## file/ground/take.rs

file-has-no-area-so-it-is = "{ $name }" has no area, so it is no field
file-the-farm-has-no-field = the farm has no field "{ $id }"
file-keeps-its-boundary = "{ $name }" keeps its boundary: { $why }
file-what-was-chosen-for-it-has = what was chosen for it has no area
file-is-no-point-so-it-is = "{ $name }" is no point, so it is no way in

## file/ground/taskdata.rs

file-it-names-a-file-xml-that = it names a file "{ $name }.XML" that is not beside it
file-partfield = partfield { $fields }
file-it-has-no-boundary = it has no boundary
file-a-ring-of-it-is-of = a ring of it is of type "{ $other }"
file-it-has-no-outer-ring = it has no outer ring
file-points-and-lines-that-guide-machines = { $count } points and lines that guide machines are left out
file-zones-headlands-and-main-fields = { $count } zones, headlands and main fields are left out
file-polygon = polygon
file-line-drawn = line
file-point = point
file-is-no-latitude-or-longitude = "{ $text }" is no latitude or longitude

## file/ground/write_taskdata.rs

file-the-farm-has-no-pass = the farm has no pass "{ $pass }"
file-the-spray-volume-of-the-pass = the spray volume of the pass is not typed, so there is no rate to write
file-a-stop-stands-in-the-plan = a Stop stands in the plan of the pass; what may not be sprayed is not sent to a terminal
file-the-pass-sprays-bands-and-the = the pass sprays bands, and the rate is that in the bands; a terminal that counts the whole width takes more
file-has-no-boundary-so-a-terminal = "{ $name }" has no boundary, so a terminal cannot know where it is
file-spray-of = Spray of { $pass }
file-spray = Spray
file-is-cut-to-names-have-letters = "{ $name }" is cut to "{ $fits }": names have { $letters } letters in task data

## file/ground/xml.rs

file-line = line { $line }: { $error }
file-has-more-in-it-than-is = "{ $start }" has more in it than is read
file-line-more-than-elements-within-one = line { $line }: more than { $depth } elements within one another
file-line-is-not-known = line { $line }: "&{ $reference };" is not known
file-it-brings-entities-of-its-own = it brings entities of its own, which are not read
file-it-ends-in-the-middle = it ends in the middle
file-has-more-than-attributes = "{ $name }" has more than { $facts } attributes
file-in-element = in "{ $name }": { $error }

## file/lock.rs

file-on-process-since = { $user } on { $host } (process { $process }) since { $since }
file-someone = someone
file-has-this-farm-open = { $who } has this farm open
file-had-this-farm-open-and-did = { $who } had this farm open and did not close it: { $why }
file-its-process-has-ended-as-after = its process has ended, as after a crash or a power cut
file-no-sign-of-it-for-minutes = no sign of it for { $minutes } minutes, as after a crash, a power cut or a lost connection

## file/names.rs

file-it-leads-off-this-machine-or = it leads off this machine or to a device; copy the picture beside the farm
file-it-is-no-picture-by-its = it is no picture by its ending
file-not-there = not there

## file/put.rs

file-it-is-no-ordinary-file = it is no ordinary file
file-what-was-written-does-not-read = what was written does not read the same
file-it-leads-round-in-a-circle = it leads round in a circle

## file/records_csv/enter.rs

file-line-looks-like-one-in-the = line { $line }: "{ $id }" looks like one in the log: { $own }

## file/records_csv/read.rs

file-the-file-has-more-than-rows = the file has more than { $rows } rows; export the records a season at a time
file-the-file-is-not-in-utf = the file is not in UTF-8; save it as "CSV UTF-8"
file-the-head-line-is-not-that = the head line is not that of exported records
file-it-names-no-record = it names no record
file-it-is-of-the-record-of = it is of the record "{ $id }", of which line { $first } does not read
file-no-column-of-a-record-so = no column of a record, so not read: { $foreign }
file-it-has-columns-and-the-head = it has { $cells } columns and the head line { $columns }
file-is-not-as-on-line-though = { $name } is not as on line { $line }, though both are of one record
file-is-typed-and-the-area-is = { $name } is typed and the area is not
file-is-not-as-on-the-row = { $name } is not as on the row before of the same field
file-some-rows-of-the-record-name = some rows of the record name a field and some none
file-its-field-has-other-products-than = its field has other products than the first field of the record; each has a row for all of them
file-name-is-not-as-on-line-line-though-both = { $name } is not as on line { $line }, though both are of one product
file-it-names-no-amount-though-its = it names no amount, though its record has several rows
file-is-where-the-share-by-area = { $name } is { $said } where the share by area is { $own }: a field of the record has no row here, or a text was changed and the figure was not; empty the cell to take the texts as they are
file-time-of-day-write-it-like = { $name }: "{ $text }" is no time of day; write it like 05:30
file-is-none-of-those-known = { $name }: "{ $text }" is none of those known
file-date-the-day-is-missing = date: the day is missing
file-left-went-is-typed-and-what = left_went is typed and what was left is not
file-number-of-loads = { $name }: "{ $text }" is no number of loads
file-moment-write-it-like-2031-06 = { $name }: "{ $text }" is no moment; write it like 2031-06-12T09:40:00
file-area-it-is-missing = area: it is missing
file-is-typed-and-the-amount-is = { $name } is typed and the amount is not
file-restricted-is-neither-yes-nor-empty = restricted: "{ $other }" is neither yes nor empty
file-number-of-hours = { $name }: "{ $text }" is no number of hours
file-number-of-days = { $name }: "{ $text }" is no number of days
file-export-a-season-at-a-time = the file is larger than { $mb } MB; export the records a season at a time

## file/records_csv/read_days.rs

file-is-no-day = "{ $cell }" is no day
file-a-spreadsheet-seems-to-have-rewritten = { $why }; a spreadsheet seems to have rewritten the dates; write it year-month-day, such as 2031-06-12, or export the records again and read that file
file-rewritten-dates = a spreadsheet seems to have rewritten the dates
file-rewritten-dates-month-first = a spreadsheet seems to have rewritten the dates; those with strokes are read as month/day/year, as one of them can only be
file-rewritten-dates-day-first = a spreadsheet seems to have rewritten the dates; those with strokes are read as day/month/year, as one of them can only be

## file/records_import/day.rs

file-may-be-one-of-two-days = "{ $cell }" may be one of two days
file-there-is-no-day = there is no day
file-may-be-a-day-as-the = "{ $cell }" may be a day as the spreadsheet counts it; show the column as a date and export again
file-short-years = years of two digits are read as 2000 and later
file-day-month-year = day/month/year
file-month-day-year = month/day/year

## file/records_import/figure.rs

file-may-mean-or = "{ $cell }" may mean { $one } or { $other }

## file/records_import/holds.rs

file-pass-or-mix = pass or mix
file-unit-of-the-area = unit of the area
file-unit-of-the-rate = unit of the rate
file-unit-of-the-amount = unit of the amount
file-spray-over-ground = spray over ground
file-spray-volume = spray volume
file-boom-height = boom height
file-wind-from = wind from
file-weeds-or-pests = weeds or pests
file-holds-day = day
file-holds-start = start
file-holds-end = end
file-holds-field = field
file-holds-area = area
file-holds-crop = crop
file-holds-variety = variety
file-holds-stage = stage
file-holds-parcel = parcel
file-holds-product = product
file-holds-registration = registration
file-holds-lot = lot
file-holds-rate = rate
file-holds-amount = amount
file-holds-water = water
file-holds-rig = rig
file-holds-nozzles = nozzles
file-holds-pressure = pressure
file-holds-speed = speed
file-holds-operator = operator
file-holds-certificate = certificate
file-holds-supervisor = supervisor
file-holds-customer = customer
file-holds-wind = wind
file-holds-gust = gust
file-holds-temperature = temperature
file-holds-humidity = humidity
file-holds-note = note

## file/records_import/preview.rs

file-it-is-one-record-with-line = it is one record with line { $first }, which is left out
file-speaks-of-a-rate-over-ground = "{ $heading }" speaks of a rate over ground and is taken as the amount on the whole field
file-choose-which-column-holds-the = choose which column holds the { $holds }
file-choose-what-holds-the-amount-on = choose what "{ $heading }" holds: the amount on the whole field, or the rate
file-choose-which-column-holds-the-amount = choose which column holds the amount, or the rate
file-choose-the-unit-of-heading-the-file-does-not = choose the unit of "{ $heading }"; the file does not say it
file-choose-how-days-are-written-on = choose how days are written: "{ $cell }" on line { $line } may be one of two
file-choose-how-figures-are-written-may = choose how figures are written: "{ $cell }" may mean { $one } or { $other }
file-there-is-no-field = there is no field
file-the-log-has-it-already-as = the log has it already, as "{ $own }"
file-looks-like-one-in-the-log = looks like one in the log: { $own }
file-there-is-no-product = there is no product
file-there-is-no-amount-and-no = there is no amount, and no rate to reckon it from
file-products-of-the-shed-with-the = products of the shed, with the actives they have now: { $names }
file-products-that-the-shed-does-not = products that the shed does not have, kept by name without actives: { $names }
file-fields-that-the-farm-does-not = fields that the farm does not have, kept by name: { $names }
file-the-amount-is-more-than-5 = the amount is more than 5 % off rate × area on { $lines }; the amount is taken
file-a-product-stands-again-in-the = a product stands again in the same record on { $lines }; both are taken
file-the-season-is-closed-and-of = the season { $year } is closed, and { $count } of the records are of it
file-and-more = { $first } and { $more } more
file-on-lines = { $count ->
        [one] line { $lines }
       *[other] lines { $lines }
    }
file-is-not-as-on-line-which = { $holds } is not as on line { $before }, which is of the same day and field; give them different starts or passes
file-amounts-are-reckoned = { $count ->
        [one] { $count } amount is reckoned from the rate
       *[other] { $count } amounts are reckoned from the rates
    }
file-spray-volumes-are-reckoned = { $count ->
        [one] { $count } spray volume is reckoned over the area
       *[other] { $count } spray volumes are reckoned over the areas
    }
file-records-have-no-area = { $count ->
        [one] { $count } record has no area; its area stays open
       *[other] { $count } records have no area; their areas stay open
    }

## file/records_import/row.rs

file-has-no-unit = { $holds } "{ $cell }" has no unit
file-amount-may-be-fluid-ounces-or = amount "{ $amount }" may be fluid ounces or weighed; choose fl oz or oz wt
file-the-rate-has-no-area-to = the rate { $rate } has no area to go with it
file-the-rate-has-no-spray-volume = the rate { $rate } has no spray volume to go with it
file-the-rate-may-be-fluid-ounces = the rate { $rate } may be fluid ounces or weighed; choose fl oz/ac or oz wt/ac
file-the-rate-is-of-an-active = the rate { $rate } is of an active; the amount of the product is needed

## file/records_import/scale.rs

file-to = { $least } to { $most }
file-the-figures-in-on-line-comes = the figures in "{ $heading }" { $like ->
        [amounts-per-ground] look like amounts per acre or hectare, not like those of whole fields
        [small-rates] look too small for rates
        [large-amounts] look too large for amounts
       *[amounts-of-fields] look like amounts of whole fields, not like rates
    }: { $name } on line { $line } comes to { $rate } where the label has { $more ->
        [0] { $label }
       *[other] { $label }, and { $more } more
    }

## file/store.rs

file-the-farm-could-not-be-written = the farm could not be written as text: { $it }
file-larger-than-a-farm = the file is larger than { $mb } MB, so it is no farm file: { $path }
file-changed-by-something-else = the file was changed by something else since it was opened; save under another name, or open it again: { $path }
file-marked-read-only = the file is marked read-only, so it is left as it is; take the mark off or save under another name: { $path }
file-could-not-be-replaced = the file could not be replaced, and writing it in place failed: { $source }; the whole farm is in { $copy }, so keep that file: { $path }
file-farm-has-grown = the farm has grown beyond { $mb } MB, which could not be opened again, so it is not saved; take old seasons out, or save them under another name first: { $path }
file-not-there-any-more = the file is not there any more: it was moved or removed, or the stick or share that it is on was taken away: { $path }
file-there-is-a-link = there is a file of this name already that is a link to another place, so it is left alone; choose another name: { $path }
file-there-is-a-farm = there is a file of this name already that is a farm, so it is left alone; choose another name: { $path }
file-there-is-a-pdf = there is a file of this name already that is a PDF, so it is left alone; choose another name: { $path }
file-there-is-no-pdf = there is a file of this name already that is no PDF, so it is left alone; choose another name: { $path }

## file/doing.rs

file-opening = opening
file-reading = reading
file-writing = writing
file-removing-a-link = removing a link
file-following-the-link = following the link
file-making-a-new-file = making a new file
file-putting-the-new-file-in-place = putting the new file in place
file-setting-the-rights = setting the rights
file-flushing-to-disk = flushing to disk
file-making-a-copy = making a copy
file-making-a-folder-for-backups = making a folder for backups
file-keeping-a-backup = keeping a backup
file-making-a-folder-for-unsaved-work = making a folder for unsaved work
file-writing-the-lock = writing the lock
file-refreshing-the-lock = refreshing the lock
file-looking-at-the-file-there = looking at the file there
file-failed = { $doing } failed: { $source }: { $path }
file-failed-no-room = { $doing } failed: { $source }; there is no room: make some, or save under another name on another disk: { $path }
file-failed-may-not = { $doing } failed: { $source }; nothing may be written there: save under another name in a folder of your own: { $path }
file-failed-no-folder = { $doing } failed: { $source }; the folder is not there: put the stick or the share back that it is on, or save under another name: { $path }
file-failed-try-again = { $doing } failed: { $source }; try again, or save under another name on another disk: { $path }

## file/table/mod.rs

file-it-is-a-folder = it is a folder
file-it-cannot-be-opened = it cannot be opened: { $why }
file-the-file-is-empty = the file is empty
file-the-table-is-too-large = { $of ->
        [forecast] the file is larger than { $mb } MB, so it is no forecast for a farm; cut it to the days that matter
       *[records] the file is larger than { $mb } MB, so it is more than a season log; cut it to a few seasons at a time
    }
file-more-lines-or-columns = the file has more than { $rows } lines or { $columns } columns; cut it to what matters
file-a-workbook-not-a-csv = the file is a workbook or an archive, not a CSV; save the sheet as CSV and read that
file-not-text-so-no-csv = the file is not text, so it is no CSV
file-no-table-was-found = no table was found: no lines with a day or a time and two or more columns, apart by commas, semicolons or tabs

## file/table/when.rs

file-is-no-day-written = { $order ->
        [year-first] "{ $cell }" is no day written year-month-day
        [dots] "{ $cell }" is no day written day.month.year
        [day-first] "{ $cell }" is no day written day/month/year
       *[month-first] "{ $cell }" is no day written month/day/year
    }
file-no-number-of-seconds = "{ $text }" is no number of seconds
file-too-large-for-seconds = "{ $text }" is too large for seconds since 1970
file-is-no-time = "{ $text }" is no time
file-no-day-in = there is no day in "{ $text }"
file-no-time-of-day-in = there is no time of day in "{ $text }"
file-no-distance-from-utc = "{ $text }" is no distance from UTC
file-the-end-of-the-day = "{ $text }" is the end of the day; write 00:00 or 23:59
file-no-time-of-day = "{ $text }" is no time of day
file-unit-fraction = fraction
file-unit-oktas = oktas
file-unit-compass-point = compass point
file-year-month-day = year-month-day
file-day-dot-month-dot-year = day.month.year
file-year-month-day-utc = year-month-day, UTC
file-day-dot-month-dot-year-utc = day.month.year, UTC
file-day-month-year-utc = day/month/year, UTC
file-month-day-year-utc = month/day/year, UTC
file-unix = unix
