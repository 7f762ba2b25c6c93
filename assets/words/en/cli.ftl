# The command line. The help in English is what the code says beside each argument; a test holds that both are the same.

cli-about = Tankard: an offline desk for the person who decides what goes in the sprayer.
cli-about-plan = Prints the plan with its findings
cli-about-day = Prints the passes of each day in the order that costs least, rig by rig
cli-about-cards = Writes load cards as PDF
cli-about-evening = Writes the sheet of a day as PDF: what is sprayed when, what goes on the truck, who may enter which field again
cli-about-jar = Prints the jar test of the planned mix, or writes its sheet as PDF
cli-about-forecast = Reads an hourly forecast from a CSV into a copy of the farm; exit status 0 written, 2 something must be chosen on the desk first, 3 unreadable
cli-about-needs = Prints what the passes of a day and all from then on take from the shed, what is short, and what to buy
cli-about-review = Prints what the records of a season come to: ground, products, actives, groups, plan and practice, cost, hours, ratings
cli-about-records = Writes the records as CSV or JSON, or reads records from a CSV into a copy of the farm; exit status 0 done, 1 nothing recorded or some lines left out, 2 no record taken, 3 unreadable
cli-about-ground = Lists the boundaries that a file holds, with their areas and what was mended; exit status 0 all can be taken, 1 some are refused, 2 all are, 3 unreadable
cli-about-boundaries = Writes the boundaries of the fields as GeoJSON, or a pass with its fields as task data for a terminal; exit status 1 where there is something to know or nothing to write, 2 where a Stop stands
cli-about-book = Writes the record book as PDF: every record with all that it holds
cli-about-workers = Writes the sheets on applications to be displayed for workers (40 CFR 170.311) as PDF and prints what is missing on them; exit status 1 where something is
cli-about-check = Prints all findings, those of the plans and what is open in the records; exit status 0 for none above Note, 1 for Check, 2 for Stop, 3 for an unreadable file
cli-about-help = Print this message or the help of the given subcommand(s)

cli-help-open = The farm to open; without it the desk asks where to begin
cli-help-view = The view to show first
cli-help-theme = Light or dark
cli-help-language = The language: en or es
cli-help-scale = Scale in per cent, 80 to 200
cli-help-size = Size of the window, such as 1366x768
cli-help-renderer = Which renderer to try first
cli-help-help = Print help
cli-help-version = Print version
cli-help-farm = The farm
cli-help-pass = Only this pass
cli-help-json-si = As JSON, in SI units
cli-help-json = As JSON
cli-help-json-review = As JSON, in SI units and hectares
cli-help-one-day = Only this day, such as 2031-06-12
cli-help-out-them = Where to write them
cli-help-out-it = Where to write it
cli-help-evening-date = The day, such as 2031-06-12; the next one with a pass that is not recorded without it
cli-help-with-cards = With the load cards of the day behind it
cli-help-jar = How much finished spray the jar holds; the farm's usual one without it
cli-help-jar-out = Where to write the sheet; needs --pass where the farm has several
cli-help-forecast-from = The CSV, read by the layout that the farm remembers for its header, or by what its headings say
cli-help-forecast-out = Where to write the farm with the forecast in it; a file that is there already is left alone
cli-help-needs-date = The day, such as 2031-06-12; the next one with passes without it
cli-help-review-season = Only this season, a calendar year such as 2031; all of them without it
cli-help-review-out = Where to write it as PDF, with charts
cli-help-records-csv = Where to write them as CSV
cli-help-records-json = Where to write them as JSON
cli-help-records-season = Only those of this year
cli-help-records-import = A CSV with records: an export, or a spreadsheet whose headings say what its columns hold
cli-help-records-out = Where to write the farm with the records in it; a file that is there already is left alone
cli-help-ground-file = The boundaries: GeoJSON, a shapefile (.shp), KML or KMZ, task data (TASKDATA.XML), or these in a .zip
cli-help-ground-out = Where to write the farm with the boundaries in it; a file that is there already is left alone
cli-help-boundaries-out = Where to write them: .geojson or .json; with --pass .xml, or .zip as terminals take it
cli-help-boundaries-pass = As task data of this pass (ISO 11783-10), with its products and its spray volume
cli-help-book-by = In which order records stand
cli-help-book-season = Only the records of this year
cli-help-one-a-page = Each record on a page of its own
cli-help-workers-record = Only this record
cli-help-workers-season = The records of this year
cli-help-check-date = The day on which records are looked at, such as 2031-06-12; today without it

# Only other languages than English say these of the command line itself; in English its library does.
cli-usage-heading = Usage:
cli-commands = Commands
cli-command = COMMAND
cli-arguments = Arguments
cli-options = Options
cli-values = { $help } [possible values: { $values }]
cli-default = { $help } [default: { $value }]
cli-wrong = error: { $what }
cli-wrong-value = invalid value "{ $value }" for { $name }
cli-wrong-value-one-of = invalid value "{ $value }" for { $name }: it must be one of { $values }
cli-wrong-value-because = invalid value "{ $value }" for { $name }: { $why }
cli-wrong-unknown = unexpected argument "{ $name }"
cli-wrong-command = unrecognised subcommand "{ $name }"
cli-wrong-missing = these are missing: { $names }
cli-wrong-together = { $name } cannot be used with { $other }
cli-wrong-otherwise = the command line cannot be understood
cli-more-help = For more information, try --help.

cli-not-a-language = one of { $known }
cli-not-a-day = "{ $text }" is not a day; write it like 2031-06-12
cli-not-a-scale = { $text } is not between 80 and 200
cli-not-a-year = "{ $text }" is not a year; write it like 2031
cli-not-a-size = "{ $text }" is not a size; write it like 1366x768
cli-the-answer-could-not-be-written = the answer could not be written: { $error }
cli-no-such-pass = the farm has no pass "{ $id }"; it has { $known }
cli-no-such-pass-nor-another = the farm has no pass "{ $id }"; it has none
cli-no-pass-is-planned = No pass is planned.
cli-no-pass-is-planned-on = No pass is planned on { $date }.
cli-the-label-and-local-law-govern = The label and local law govern; this is a reckoning from what was typed.
cli-no-card-without-a-pass = no pass is planned, so there is no card to write
cli-no-card = there is no card to write
cli-cards-written = { $count ->
    [one] { $count } card written to { $path }
   *[other] { $count } cards written to { $path }
}
cli-no-cards-for = { $count ->
    [one] no cards for "{ $pass }": { $count } Stop to settle first
   *[other] no cards for "{ $pass }": { $count } Stops to settle first
}
cli-no-pass-from = no pass is planned from { $today } on; choose the day with --date
cli-no-sheet = no pass is planned on { $day } that is not recorded, so there is no sheet to write
cli-sheet-written = sheet of { $day } written to { $path }
cli-sheet-with-cards-written = { $count ->
    [one] sheet of { $day } with { $count } card written to { $path }
   *[other] sheet of { $day } with { $count } cards written to { $path }
}
cli-no-record-to-print = there is no record to print
cli-records-written = { $count ->
    [one] { $count } record written to { $path }
   *[other] { $count } records written to { $path }
}
cli-sheets-written = { $count ->
    [one] { $count } sheet written to { $path }
   *[other] { $count } sheets written to { $path }
}
cli-nothing-to-test = no pass is planned, so there is nothing to test
cli-a-sheet-is-of-one-pass = a sheet is of one pass; choose it with --pass: { $known }
cli-jar-test-written = jar test written to { $path }
cli-no-jar-test = no jar test for "{ $pass }": { $problem }
cli-file-is-there = there is a file already, so it is left alone; choose another name: { $path }
cli-problem-with-file = { $problem }: { $path }
cli-line-left-out = line { $line } is left out: { $why }
cli-no-hour-taken = no hour was taken; read the file on the desk once, where its columns are chosen and remembered
cli-hours-taken = hours taken: { $count }, farm written to { $path }
cli-no-review = nothing is recorded of { $year }, so there is no review to write
cli-no-review-at-all = nothing is recorded of all seasons, so there is no review to write
cli-review-written = review of { $year } written to { $path }
cli-review-of-all-written = review of all seasons written to { $path }
cli-window-could-not-be-opened = the window could not be opened: { $problem }
cli-no-display = there is no display here, so the desk cannot open; planning in the terminal instead

cli-nothing-recorded = nothing is recorded, so there is nothing to write
cli-nothing-recorded-in = nothing is recorded in { $season }, so there is nothing to write
cli-left-out-since-another = "{ $id }" is left out: the farm has another record of that id
cli-records-there-already = { $count ->
    [one] { $count } record is there already, word for word
   *[other] { $count } records are there already, word for word
}
cli-no-record-taken = no record was taken; on the desk it is shown what the columns hold, and can be mended
cli-records-taken = records taken: { $count }, farm written to { $path }

cli-ground-taken = new fields: { $fields }, boundaries of fields: { $boundaries }, among the fields: { $surroundings }, farm written to { $path }
cli-ground-found = { $kind }: { $found } found, { $refused } refused
cli-ground-note = note: { $note }
cli-ground-new-field = a new field
cli-ground-boundary-of = the boundary of "{ $name }"
cli-ground-among = among the fields: { $kind }
cli-ground-gateway = a way into "{ $name }"
cli-ground-left-out = left out
cli-ground-mended = mended: { $mended }
cli-ground-refused = refused
cli-no-task-data = no task data of "{ $pass }": { $problem }
cli-task-data-written = task data of the pass written to { $path }
cli-boundaries-are-geojson = boundaries are written as .geojson; task data is of one --pass: { $path }
cli-task-data-is-xml = task data of a pass is written as .xml or .zip: { $path }
cli-no-boundary = no field has a boundary and nothing is drawn among the fields, so there is nothing to write
cli-boundaries-written = { $count ->
    [one] { $count } boundary or surrounding written to { $path }
   *[other] { $count } boundaries and surroundings written to { $path }
}
