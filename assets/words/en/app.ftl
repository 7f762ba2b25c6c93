## desk/app.rs

app-verifying-the-seals-of-the-records = Verifying the seals of the records
app-the-seals-were-not-verified = The seals were not verified
app-an-amendment-is-begun-here-keep = An amendment is begun here; keep it or leave the record as it was first
app-the-farm-is-still-being-read = The farm is still being read; do that when it is there
app-could-not-be-taken-what-it = { $offer } could not be taken: what it was for is gone or signed
app-tankard = { $which ->
        [yes] { $name } (not saved) – Tankard
       *[no] { $name } – Tankard
    }
app-record = record
app-records = records

## desk/app/backups.rs

app-backups = Backups
app-back-to-the-farm = Back to the farm
app-this-farm-was-never-saved-from = This farm was never saved. From the second save on, what the file held before is kept.
app-reading-the-backup = Reading the backup { $path }
app-the-backup-was-not-read = The backup was not read
app-there-is-no-backup-yet-from = There is no backup yet. From the second save on, what the file held before is kept.
app-it-is-being-read = It is being read…
app-read-it = Read it
app-it-cannot-be-read = It cannot be read: { $why }
app-it-holds-what-is-open-here = It holds what is open here
app-what-it-has-otherwise-than-what = What it has otherwise than what is open here
app-restore-this-backup = Restore this backup
app-it-takes-the-place-of-what = It takes the place of what is open; undo takes that back. The file stays as it is until you save. Cards that were issued since stay, since the paper is out.
app-is-open-now-undo-takes-that = { $words } is open now; undo takes that back, and the file changes when you save
app-keep-the-latest = Keep the latest
app-how-many-of-the-latest-backups = how many of the latest backups stay
app-and-the-last-of-each-day = and the last of each day for
app-for-how-many-days-the-last = for how many days the last backup of a day stays
app-together-they-take-beyond-the-oldest = Together they take { $all }; beyond { $most } the oldest go.
app-at-the-next-save-the-others = At the next save the others go. A file that you put into the folder yourself stays.
app-show-the-folder = Show the folder
app-the-folder-was-not-shown = The folder was not shown: { $error }: { $folder }
app-each-save-keeps-what-the-file = Each save keeps what the file held before it.
app-backup-of = backup of { $moment }, { $size }
app-the-file-before-the-last-save = The file before the last save, by an earlier Tankard
app-the-farm-as-it-was-before = The farm as it was before the save of { $made }
app-no-moment-known = no moment known
app-bytes = { $bytes } bytes
app-kb = { $bytes } kB
app-days = days

## desk/app/bar.rs

app-for-reading = for reading
app-not-saved = not saved
app-look = Look
app-now-at = now at { $zoom_factor } %
app-farm = Farm
app-opened-last = Opened last
app-saving = saving…

## desk/app/days.rs

app-looking-for-the-best-order-of = Looking for the best order of the day
app-the-order-of-the-day-was = The order of the day was not looked for to the end
app-order-tried = order tried
app-orders-tried = orders tried

## desk/app/foot.rs

app-until-then-the-farm-has-there = { $name }: { $problem }. Until then the farm has { $instead } there.
app-more-boxes-unread = { $count ->
    [one] One box more cannot be read.
   *[other] { $count } boxes more cannot be read.
}
app-drop-what-was-typed = Drop what was typed
app-exists = { $path } exists
app-write-over-it = Write over it
app-choose-another-name = Choose another name
app-cancel = Cancel
app-holds-work-that-is-not-saved = { $cards ->
        [0] { $name } holds work that is not saved
        [one] { $name } holds work that is not saved and { $cards } issued card
       *[other] { $name } holds work that is not saved and { $cards } issued cards
    }
app-save-it = Save it
app-let-it-go = Let it go
app-stay-here = Stay here
app-close-this-line = Close this line
app-nothing = nothing
app-exists-and = { $path } exists, and { $other }

## desk/app/job.rs

app-the-work-on-it-ended-without = the work on it ended without an answer{ $said }; try again

## desk/app/locking.rs

app-this-machine = this machine
app-the-farm-was-not-taken-over = The farm was not taken over: { $error }
app-reading-again = Reading { $path } again
app-the-farm-was-not-opened-again = The farm was not opened again
app-the-farm-is-yours-to-save = The farm is yours to save now
app-the-farm-is-yours-to-save-now-the-file = The farm is yours to save now; the file was changed meanwhile, so saving asks which holds
app-the-file-was-changed-by-something = The file was changed by something else since it was opened; saving will ask which holds
app-the-farm-was-taken-over = The farm was taken over: { $other }
app-take-it-over-if-you-are = Take it over if you are sure that nobody works on it there
app-two-who-save-the-same-farm = Two who save the same farm lose each other's work: take it over only if nobody works on it there
app-here-it-is-open-for-reading = { $other }; here it is open for reading
app-keep-reading = Keep reading
app-take-it-over = Take it over

## desk/app/opening.rs

app-the-farm-was-not-opened = The farm was not opened
app-new-farm = New farm
app-entry = entry
app-entries = entries

## desk/app/recovery.rs

app-what-was-being-saved = what was being saved
app-the-work-that-was-not-saved = the work that was not saved
app-the-backup-of = the backup of { $moment }
app-reading-what-was-not-saved-before = Reading what was not saved before
app-work-that-was-not-saved-before = Work that was not saved before was not read
app-work-on-was-not-saved-when = Work on { $path } was not saved when it was last open; open it from the Farm menu
app-unsaved-work-is-only-in-memory = Unsaved work is only in memory: { $error }. It will be tried again; save to be sure
app-a-save-was-ended-before-it = A save was ended before it was done; what it was saving is whole
app-work-from-an-earlier-run-was = Work from an earlier run was found that was never saved
app-the-file-has-been-saved-since = ; the file has been saved since, from elsewhere
app-more-to-look-at-after-this = { $count } more to look at after this
app-take-it-up = Take it up
app-drop-it = Drop it
app-what-it-has-otherwise-than-what-is-open = What it has otherwise than what is open
app-it-is-open-now-undo-brings = It is open now; undo brings back what was open, and the file changes when you save
app-the-farm-was-not-opened-why = The farm was not opened: { $why }
app-open = Open { $copy }
app-the-file-stays-as-it-is = The file stays as it is until you save; then it goes to the backups
app-leave-it = Leave it
app-reading = Reading { $what }
app-the-copy-was-not-opened = The copy was not opened
app-this-is-save-it-to-put = This is { $what }; save it to put it in the place of the file
app-the-work-of-that-was-not-saved = the work of { $moment } that was not saved
app-work-from-an-earlier-run-was-kept = Work from an earlier run was found that was never saved, kept { $moment }

## desk/app/saving.rs

app-the-farm-was-not-saved-take = The farm was not saved: { $words }. Take it over, or save under another name
app-the-farm-is-still-being-saved = The farm is still being saved; save under another name when that is done
app-or-save-under-another-name = { $why }, or save under another name
app-the-farm-was-not-saved-nothing = The farm was not saved: { $why }. Nothing is lost: your work is open here
app-saved-but-what-the-file-held = Saved, but what the file held before could not be kept: { $remark }
app-saved-as = Saved as { $path }
app-saved = Saved
app-was-changed-by-something-else-it = { $file } was changed by something else; it is being read
app-is-not-there-any-more-moved = { $file } is not there any more: moved, removed, or on a stick or share that was taken away
app-nothing-is-lost-your-work-is = Nothing is lost: your work is open here
app-save-it-there-again = Save it there again
app-was-changed-by-something-else-and = { $file } was changed by something else and does not read: { $why }
app-what-stands-there-goes-to-the = What stands there goes to the backups before mine takes its place
app-was-changed-by-something-else-since = { $file } was changed by something else since it was opened
app-theirs-goes-to-the-backups-if = Theirs goes to the backups if you keep mine; undo brings mine back if you take theirs
app-take-theirs = Take theirs
app-what-mine-has-otherwise-than-theirs = What mine has otherwise than theirs
app-theirs-is-open-now-undo-brings = Theirs is open now; undo brings yours back
app-the-farm-was-not-saved-kept-in = The farm was not saved: { $why }. Nothing is lost: your work is open here and kept in { $side }
app-keep-mine = Keep mine
app-save-mine-as-another-file = Save mine as another file…

## desk/app/work.rs

app-reading-path = Reading { $path }
app-writing = Writing { $path }
app-it-was-cancelled = { $failed }: it was cancelled
app-look-at-it-in = { $what }; look at it in { $view }
app-as-the-farm-was-when-you = , as the farm was when you asked for it
app-cancel-words = Cancel: { $words }
app-done-of-count = { $done } of { $count }
app-min-s = { $minutes } min { $seconds } s
app-ending = ending…
app-it-was-cancelled-and-no-file = { $failed }: it was cancelled, and no file is left of it
app-goes-on-the-window-closes = { $words } goes on; the window closes when it is done. Cancel it to wait no longer
app-goes-on-the-farm-stays-open = { $words } goes on; the farm stays open until then, and what you asked for follows when it is done. Cancel it to wait no longer

## desk/command.rs

app-fields = Fields
app-tank-loads = Tank loads
app-season-log = Season log
app-shed = Shed
app-open-7bf = Open…
app-open-a-copy-of-the-demo = Open a copy of the demo farm
app-save = Save
app-save-as = Save as…
app-name-units-paper = Name, units, paper…
app-backups-770 = Backups…
app-import-boundaries = Import boundaries…
app-export-boundaries-as-geojson = Export boundaries as GeoJSON…
app-record-the-chosen-pass-as-sprayed = Record the chosen pass as sprayed
app-export-the-chosen-pass-as-task = Export the chosen pass as task data…
app-undo = Undo
app-redo = Redo
app-nothing-to-undo = There is nothing to undo
app-nothing-to-redo = There is nothing to redo
app-cancel-what-is-being-done = Cancel what is being done
app-nothing-is-being-done = Nothing is being done
app-larger = Larger
app-smaller = Smaller
app-at-100 = At 100 %
app-light = Light
app-dark = Dark
app-guide = Guide
app-close = Close

## desk/files.rs

app-open-a-farm = Open a farm
app-open-0e9 = Open
app-save-the-farm-as = Save the farm as
app-save-the-load-cards-as = Save the load cards as
app-save-the-evening-sheet-as = Save the evening sheet as
app-save-the-jar-test-as = Save the jar test as
app-save-the-season-review-as = Save the season review as
app-save-the-records-as = Save the records as
app-save-the-record-book-as = Save the record book as
app-save-the-sheet-for-workers-as = Save the sheet for workers as
app-read-records-from = Read records from
app-read = Read
app-read-a-forecast-from = Read a forecast from
app-read-boundaries-from = Read boundaries from
app-save-the-boundaries-as = Save the boundaries as
app-save-the-task-data-as = Save the task data as
app-take-a-picture-for-the-map = Take a picture for the map from
app-take = Take
app-tankard-farm = Tankard farm
app-boundaries = Boundaries
app-task-data-iso-11783-10 = Task data (ISO 11783-10)
app-png-and-jpeg = PNG and JPEG
app-csv-and-other-tables-of-text = CSV and other tables of text
app-waiting-for-the-systems-file-dialog = Waiting for the system's file dialog
app-type-the-path-instead = Type the path instead
app-path-of-the-file = Path of the file

## desk/app/bar.rs

app-list-in-place-of-the-page = List in place of the page

## desk/command.rs

app-find-anything = Find anything…
app-keys = Keys
app-list = List
app-less-motion = Less motion

## desk/keys.rs

app-ctrl = Ctrl+
app-alt = Alt+
app-shift = Shift+
app-left = Left
app-right = Right
app-up = Up
app-down = Down
app-page-up = Page Up
app-page-down = Page Down
app-key-backspace = Backspace
app-key-delete = Delete
app-key-end = End
app-key-equals = Equals
app-key-home = Home
app-key-minus = Minus
app-key-period = Period
app-key-plus = Plus
app-key-space = Space
app-or = { $all } or { $last }

## desk/app/first_steps.rs

app-name-units-and-place-come-first = Name, units and place come first: amounts, sun and weather rest on them.
app-type-the-name = Type the name
app-where-the-farm-lies-its-latitude = Where the farm lies: its latitude, such as 41.2.
app-type-the-latitude = Type the latitude
app-where-the-farm-lies-its-longitude = Where the farm lies: its longitude, such as -96.4; west of Greenwich is below zero.
app-type-the-longitude = Type the longitude
app-the-time-zone-of-the-farm = The time zone of the farm, such as America/Chicago or Europe/Berlin.
app-type-the-time-zone = Type the time zone
app-your-first-field-typed-or-from = Your first field, typed or from a file of boundaries.
app-type-a-field = Type a field
app-your-first-field-its-name = Your first field: its name.
app-type-its-name = Type its name
app-your-first-field-its-area-then = Your first field: its area, then crop and stage.
app-type-its-area = Type its area
app-your-sprayer-its-tank-its-boom = Your sprayer: its tank, its boom and how fast it goes.
app-add-the-sprayer = Add the sprayer
app-your-sprayer-its-name-the-tank = Your sprayer: its name; then the tank to its mark, the boom and the nozzles.
app-your-sprayer-what-its-tank-holds = Your sprayer: what its tank holds when full to its mark.
app-type-the-tank = Type the tank
app-your-sprayer-how-wide-its-boom-is = Your sprayer: the working width of its boom.
app-type-the-boom = Type the boom
app-your-sprayer-its-nozzle-set = Your sprayer: its nozzle set, from the nozzle maker's table.
app-add-a-nozzle-set = Add a nozzle set
app-the-water-that-you-spray-with = The water that you spray with, as the laboratory states it.
app-add-the-water = Add the water
app-your-water-calcium-and-magnesium-or = Your water: calcium and magnesium, or its hardness. Without an analysis go on to the pass.
app-type-its-calcium = Type its calcium
app-your-first-product-typed-in-the = Your first product, typed in the order of its label.
app-add-a-product = Add a product
app-your-first-product-its-name-as = Your first product: its name as on the front panel.
app-your-first-product-its-actives = Your first product: kind, formulation and active ingredient, as on the front panel.
app-type-its-active = Type its active
app-your-first-product-its-rate-and = Your first product: its rate, and what else its directions say.
app-type-its-rate = Type its rate
app-your-first-pass-which-fields-get = Your first pass: which fields get which products.
app-plan-a-pass = Plan a pass
app-your-first-pass-which-fields-it = Your first pass: which fields it goes over.
app-choose-the-fields = Choose the fields
app-your-first-pass-which-water-it = Your first pass: which water it takes.
app-choose-the-water = Choose the water
app-your-first-pass-which-sprayer-it = Your first pass: which sprayer it takes.
app-choose-the-sprayer = Choose the sprayer
app-your-first-pass-how-much-spray = Your first pass: how much spray over ground.
app-type-the-spray-volume = Type the spray volume
app-your-first-pass-what-goes-into = Your first pass: what goes into the tank.
app-add-a-product-to-it = Add a product to it
app-your-first-pass-the-rate-of = Your first pass: the rate of each product.
app-type-the-rate = Type the rate
app-your-first-load-card-look-at = Your first load card: look at it, then issue it.
app-go-to-the-card = Go to the card
app-type-it-anew = Type it anew
app-your-first-load-card-waits-for = Your first load card waits for one Stop; a click on it leads to what it speaks of.
app-your-first-load-card-waits-for-stops-stops-a = Your first load card waits for { $stops } Stops; a click on one leads to what it speaks of.
app-go-to-the-pass = Go to the pass
app-step-of = Step { $number } of { $all }
app-hide = Hide
app-menu-farm-shows-it-again = Menu Farm shows it again
app-hide-the-first-steps = Hide the first steps
app-from-a-file = From a file…
app-your-first-load-card-is-issued = Your first load card is issued. Once it is sprayed, record it with "Record as sprayed" beside the pages of the pass; the next pass goes the same way. The guide (F1) tells what else there is.
app-good = Good
app-good-put-the-first-steps-away = Good, put the first steps away
app-show = Show

## desk/app/start.rs

app-where-would-you-like-to-begin = Where would you like to begin?
app-an-invented-farm-with-everything-in = An invented farm with everything in it: change what you like, nothing is kept unless you save it.
app-begin-my-own-farm = Begin my own farm
app-an-empty-farm-and-a-line = An empty farm, and a line that says what comes next until your first load card is printed.
app-open-a-file = Open a file…
app-a-farm-that-you-or-somebody = A farm that you or somebody else has saved.
app-the-label-and-local-law-always = The label and local law always govern. Tankard reckons with what you type and needs no network.

## desk/command.rs

app-what-comes-next = What comes next
app-first-steps-of-a-new-farm = First steps of a new farm
app-look-around-in-the-demo-farm = Look around in the demo farm

## desk/app/about.rs

app-about-tankard = About Tankard
app-tankard-version = Tankard { $version }
app-licence-of-tankard = Licence of Tankard
app-what-it-is-built-from = What it is built from
app-licences-of-these = Licences of these
