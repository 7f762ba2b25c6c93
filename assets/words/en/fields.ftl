## desk/views/fields/barred.rs

fields-what-may-not-go-on-it = What may not go on it, or be done on it
fields-nothing-as-far-as-the-labels = Nothing, as far as the labels are typed: no total or number is used up, and no days are running.
fields-until = until { $until }
fields-as-long-as-this-crop-stands = as long as this crop stands
fields-until-after-the-harvest = until after the harvest
fields-see-the-label-for-how-long = see the label for how long
fields-open-the-record-of = Open the record { $name } of { $date }
fields-what-may-follow-by-the-plant = What may follow, by the plant-back times of what it got
fields-no-label-of-what-it-got = No label of what it got names a following crop, as typed, and no next crop is typed for the field.
fields-the-of-not-name-it-as = { $count ->
        [one] the label of { $names } does not name it, as typed
       *[other] the labels of { $names } do not name it, as typed
    }
fields-type-the-next-crop-under-as = Type the next crop under "As typed" to have it stand first.
fields-no-plant-back-time-is-typed = No plant-back time is typed of { $untyped }, which it had in the last 12 months
fields-may-be-planted-now = may be planted now
fields-no-limit-that-is-typed-keeps = no limit that is typed keeps it off
fields-not-before = not before { $day }
fields-open-the-record-of-for = Open the record of { $sprayed } for { $crop }
fields-months-label-of-as-typed-sprayed = { $months } months; label of { $at }, as typed; sprayed on

## desk/views/fields/export.rs

fields-no-field-has-a-boundary-and = No field has a boundary and nothing is drawn among the fields, so there is nothing to export
fields-the-boundaries-were-not-saved = The boundaries were not saved
fields-saved-as = { $count ->
        [one] { $count } boundary or surrounding saved as { $path }{ $since }
       *[other] { $count } boundaries and surroundings saved as { $path }{ $since }
    }
fields-the-farm-has-no-pass-yet = The farm has no pass yet; plan one in Tank loads first
fields-no-task-data-of = No task data of "{ $name }": { $why }
fields-the-task-data-was-not-saved = The task data was not saved
fields-name-saved-as-path-since = "{ $name }" saved as { $path }{ $since }

## desk/views/fields/got.rs

fields-crops-by-year = Crops by year
fields-no-crop-is-typed-and-no = No crop is typed, and no record or closed season names one.
fields-crop-not-typed = crop not typed
fields-then = , then{ " " }
fields-no-record = no record
fields-records = { $count ->
        [one] { $count } record
       *[other] { $count } records
    }
fields-resistance-groups-by-season = Resistance groups by season
fields-no-record-of-it-holds-a = No record of it holds a product with a resistance group.
fields-came = { $name } came { $all }
fields-by = By: { $source }
fields-what-it-got = What it got
fields-nothing-is-recorded-on-it-yet = Nothing is recorded on it yet.
fields-older-ones-stand-in-the-season = { $older ->
    [one] { $older } older one stands in the season log
   *[other] { $older } older ones stand in the season log
}
fields-again = { $words } again

## desk/views/fields/ground.rs

fields-ground = Ground
fields-stays-unsprayed = stays unsprayed
fields-area-that-stays-unsprayed = Area that stays unsprayed
fields-buffers-waterways-wet-spots = buffers, waterways, wet spots
fields-strips-to-what-is-drawn = strips to what is drawn
fields-are-part-of-what-stays-unsprayed = are part of what stays unsprayed
fields-are-left-out-beside-it = are left out beside it
fields-strips-to-what-is-drawn-351 = Strips to what is drawn
fields-silt-loam-2-4-organic-matter = silt loam, 2.4 % organic matter, pH 6.3
fields-soil = Soil
fields-stated-area-of = Stated area of { $name }
fields-stated-area = stated area
fields-tilled-insured-claimed = tilled, insured, claimed
fields-from-the-boundary = from the boundary
fields-no-boundary-yet-draw-it-on = no boundary yet: draw it on the map, or import one
fields-plans-go-by = plans go by
fields-which-area-plans-go-by = Which area plans go by
fields-the-stated-area = the stated area
fields-the-area-from-the-boundary = the area from the boundary
fields-or-than-stated = { $word ->
        [more] { $by } or { $ratio } % more than stated
       *[less] { $by } or { $ratio } % less than stated
    }
fields-as-much-as-stated = as much as stated
fields-none-yet-set-them-on-the = none yet: set them on the map, or import them
fields-name-of-gateway = Name of gateway { $number }
fields-its-name = its name
fields-take-out-gateway = Take out gateway { $number }

## desk/views/fields/import/compared.rs

fields-as-much = as much
fields-per-cent-more = { $by } % more
fields-per-cent-less = { $by } % less
fields-none-stated = none stated
fields-stated = stated { $area }: { $by }
fields-with-pieces-together = { $text }, with { $pieces } pieces together
fields-in-place-of-a-boundary-of = { $text }; in place of a boundary of { $area }

## desk/views/fields/import/mod.rs

fields-the-boundaries-were-not-read = The boundaries were not read
fields-is-read = { $source } is read
fields-boundaries-from = Boundaries from { $source }
fields-leave-all-out = Leave all out
fields-piece = piece
fields-pieces = pieces
fields-as-suggested = As suggested
fields-of-ground-in-this-file-nothing = { $count ->
        [one] { $count } piece of ground in this { $kind } file. Nothing is changed before you take them.
       *[other] { $count } pieces of ground in this { $kind } file. Nothing is changed before you take them.
    }
fields-of-ground-in-this-file-refused = { $count ->
        [one] { $count } piece of ground in this { $kind } file, { $refused } refused. Nothing is changed before you take them.
       *[other] { $count } pieces of ground in this { $kind } file, { $refused } refused. Nothing is changed before you take them.
    }
fields-the-file-holds-nothing-that-can = The file holds nothing that can be taken.
fields-pieces-are-refused = { $count ->
        [one] { $count } piece is refused
       *[other] { $count } pieces are refused
    }
fields-to = { $first } to { $last }
fields-those-before = Those before
fields-refused-pieces-before-these = Refused pieces before these
fields-those-after = Those after
fields-refused-pieces-after-these = Refused pieces after these
fields-take = { $count ->
        [one] Take { $count } piece
       *[other] Take { $count } pieces
    }
fields-leave-it = Leave it
fields-nothing-of-it-is-chosen = Nothing of this file is chosen
fields-leave-the-file = Leave the file
fields-new-fields = { $count ->
        [one] { $count } new field
       *[other] { $count } new fields
    }
fields-boundaries = { $count ->
        [one] { $count } boundary
       *[other] { $count } boundaries
    }
fields-things-among-the-fields = { $count ->
        [one] { $count } thing among the fields
       *[other] { $count } things among the fields
    }
fields-gateways = { $count ->
        [one] { $count } gateway
       *[other] { $count } gateways
    }
fields-nothing = Nothing
fields-taken-from = { $words } taken from { $source }

## desk/views/fields/import/piece.rs

fields-in-the-file = in the file
fields-what-becomes-of-it = what becomes of it
fields-mended = { $place }; mended: { $mended }
fields-a-new-field = a new field
fields-the-boundary-of = the boundary of
fields-among-the-fields = among the fields: { $kind }
fields-a-gateway-of = a gateway of
fields-left-out = left out
fields-what-becomes-of = What becomes of { $named }
fields-field-of = Field of { $named }
fields-a-field-without-a-name = a field without a name

## desk/views/fields/list.rs

fields-find-a-field-or-crop = Find a field or crop
fields-field = { $count ->
        [one] { $count } field, { $total }
       *[other] { $count } fields, { $total }
    }
fields-no-field-is-like-that = No field is like that.
fields-add-a-field = + Add a field
fields-name-of-the-field = Name of the field
fields-area-of = Area of { $name }
fields-crop-of = Crop of { $name }
fields-stage-of = Stage of { $name }
fields-open = Open { $name }
fields-next = { $last }; next { $next }
fields-next-next = next { $next }
fields-remove = { $passes ->
        [0] Remove { $name }?
        [one] Remove { $name }? One pass goes there.
       *[other] Remove { $name }? { $passes } passes go there.
    }
fields-remove-it = Remove it
fields-keep-it = Keep it
fields-copy = { $name } (copy)

## desk/views/fields/map/canvas.rs

fields-no-field-has-a-boundary-yet = No field has a boundary yet
fields-choose-a-field-at-the-left = Choose a field at the left and draw its boundary with Draw…, or bring boundaries in from a file.
fields-map-no-field-has-a-boundary = Map; no field has a boundary yet
fields-map-a-boundary-coloured-by = { $count ->
        [one] Map; { $count } field has a boundary; coloured by { $title }: { $classes }
       *[other] Map; { $count } fields have a boundary; coloured by { $title }: { $classes }
    }
fields-chosen = { $words }; chosen: { $name }, { $area }, { $said }

## desk/views/fields/map/colouring.rs

fields-growth-stage = growth stage
fields-re-entry = re-entry
fields-last-spray = last spray
fields-planned-on-a-day = planned on a day
fields-no-crop-typed = no crop typed
fields-no-stage-typed = no stage typed
fields-others = { $count ->
    [one] { $count } other
   *[other] { $count } others
}
fields-no-spray-recorded = no spray recorded
fields-sprayed-today = sprayed today
fields-ago = { $count ->
        [one] { $count } day ago
       *[other] { $count } days ago
    }
fields-within-a-week = within a week
fields-8-to-21-days-ago = 8 to 21 days ago
fields-22-to-60-days-ago = 22 to 60 days ago
fields-longer-ago = longer ago
fields-keep-out-until = keep out until { $moment } ({ $product })
fields-no-re-entry-time-typed = no re-entry time typed: { $product }, { $date }
fields-re-entry-time-is-over = re-entry time is over
fields-no-spray-in-30-days = no spray in 30 days
fields-keep-out = keep out
fields-not-known-see-the-label = not known; see the label
fields-time-is-over-as-typed = time is over, as typed
fields-recorded = recorded: { $names }
fields-not-planned = not planned
fields-planned-on = planned on { $day }
fields-planned-and-recorded = planned and recorded

## desk/views/fields/map/edit.rs

fields-left-as-it-was = Left as it was: { $why }

## desk/views/fields/map/furniture.rs

fields-and-more-fields = { $left_out ->
    [one] and { $left_out } more field
   *[other] and { $left_out } more fields
}

## desk/views/fields/map/labels.rs

fields-no-name = no name

## desk/views/fields/map/mod.rs

fields-page-of-the-field = Page of the field
fields-map = Map
fields-last-and-next-pass = last and next pass
fields-the-picture-lies-over-what-is = The picture lies over what is seen; type or click its two corners
fields-as-on = { $colouring }, as on { $day }

## desk/views/fields/map/panel.rs

fields-among-the-fields-083 = among the fields…
fields-gateway = gateway { $at }
fields-gateway-name = gateway { $name }
fields-drawing-the = Drawing the { $what }
fields-drawing-the-of = Drawing the { $what } of { $name }
fields-click-where-it-lies-or-type = Click where it lies, or type it. Escape drops it.
fields-click-point-after-point-or-type = Click point after point, or type them. Backspace takes the last one back, Enter or a double click finishes, Escape drops it.
fields-latitude-longitude = latitude, longitude
fields-latitude-and-longitude-of-the-point = Latitude and longitude of the point
fields-add-the-point = Add the point
fields-take-the-last-back = Take the last back
fields-finish = Finish
fields-not-enough-points-yet = There are not enough points yet
fields-drop-it = Drop it
fields-point-of = point { $at } of { $all }
fields-moving-points-of = Moving points of { $name }
fields-drag-a-point-click-an-edge = Drag a point; click an edge to put one in; Delete takes the chosen one out. Escape ends it.
fields-point-before = Point before
fields-next-point = Next point
fields-latitude-and-longitude-of-the-chosen = Latitude and longitude of the chosen point
fields-put-one-in-after-it = Put one in after it
fields-take-it-out = Take it out
fields-done = Done
fields-planned-for-wind-from = planned for wind from
fields-wind-that-the-pass-is-planned = Wind that the pass is planned for
fields-as-forecast = as forecast
fields-no-field-is-chosen = No field is chosen.
fields-a-field-without-a-name-736 = A field without a name
fields-plans-go-by-the-stated-area = plans go by the stated area
fields-plans-go-by-the-boundary = plans go by the boundary
fields-stated-from-the-boundary = stated { $stated }, from the boundary { $area }; { $from }
fields-stated-it-has-no-boundary-yet = stated { $stated }; it has no boundary yet, so it is not on the map
fields-draw-its-boundary = Draw its boundary
fields-open-its-page = Open its page
fields-remove-its-boundary = Remove its boundary
fields-remove-the-boundary-the-field-stays = Remove the boundary? The field stays, with its stated area.
fields-what-it-is = What it is
fields-name-of-the-surrounding = Name of the surrounding
fields-name-such-as-mill-creek = name, such as Mill creek
fields-note-on-the-surrounding = Note on the surrounding
fields-note-such-as-whom-to-call = note, such as whom to call
fields-move-its-points = Move its points
fields-remove-it-from-the-map = Remove it from the map
fields-back-to-the-field = Back to the field
fields-remove-it-strips-along-it-go = Remove it? Strips along it go too.
fields-gateway-of = Gateway { $at } of { $name }
fields-name-of-the-gateway = Name of the gateway
fields-name-such-as-road-gate = name, such as road gate
fields-latitude-and-longitude-of-the-gateway = Latitude and longitude of the gateway
fields-remove-the-gateway = Remove the gateway
fields-remove-the-gateway-a65 = Remove the gateway?
fields-picture-under-the-map = Picture under the map
fields-none-yet-a-png-or-jpeg = none yet; a PNG or JPEG with north at its top
fields-choose-a-picture = Choose a picture…
fields-strength = strength
fields-strength-of-the-picture = Strength of the picture
fields-take-the-picture-out = Take the picture out
fields-north-west-corner = north-west corner
fields-south-east-corner = south-east corner
fields-latitude-and-longitude-of-the = Latitude and longitude of the { $name }
fields-click-it = Click it
fields-click-the-on-the-map = Click the { $name } on the map
fields-from = { $width } from { $what }
fields-stay-unsprayed = { $date }: { $area } stay unsprayed: { $to }

## desk/views/fields/map/pattern.rs

fields-slanting-lines = slanting lines
fields-level-lines = level lines
fields-lines-slanting-back = lines slanting back
fields-upright-lines = upright lines
fields-crossing-lines = crossing lines
fields-a-grid = a grid
fields-plain = plain

## desk/views/fields/map/picture.rs

fields-the-picture-is-not-shown = The picture is not shown, { $why }: { $file }
fields-the-picture-could-not-be-read = The picture could not be read
fields-the-picture-is-not-there-put = The picture is not there; put it back or choose another: { $shown }
fields-the-picture-could-not-be-read-error-shown = The picture could not be read ({ $error }): { $shown }
fields-the-picture-is-too-large-save = The picture is too large; save it with fewer points: { $shown }
fields-the-picture-is-neither-png-nor = The picture is neither PNG nor JPEG: { $shown }

## desk/views/fields/map/points.rs

fields-it-has-only-points-here-and = it has only { $least } points here, and needs them

## desk/views/fields/map/sketch.rs

fields-further-part = further part
fields-boundary = boundary
fields-hole = hole
fields-a-way-in = gateway
fields-point-among-the-fields = point among the fields
fields-line-among-the-fields = line among the fields
fields-area-among-the-fields = area among the fields
fields-north-west-corner-of-the-picture = north-west corner of the picture
fields-south-east-corner-of-the-picture = south-east corner of the picture
fields-the-point-was-not-taken-its = The point was not taken: its edge would cross the edge from point { $from } to point { $to }; a boundary cannot cross itself
fields-no-point-yet = no point yet
fields-many-points = { $count ->
        [one] { $count } point
       *[other] { $count } points
    }
fields-it-needs-points-or-more = It needs { $least } points or more
fields-it-cannot-be-closed-here-the = It cannot be closed here: the last edge would cross the edge from point { $from } to point { $to }
fields-it-was-not-taken = It was not taken: { $why }
fields-the-field-is-gone = The field is gone
fields-the-picture-is-gone = The picture is gone
fields-the-north-west-corner-must-lie = The north-west corner must lie north and west of the south-east corner
fields-it-was-not-taken-a-hole = It was not taken: a hole must lie inside the field
fields-is-no-place-write-latitude-longitude = "{ $text }" is no place; write latitude, longitude: 41.2, -96.4
fields-latitude-longitude-is-off-the-globe = latitude { $y }, longitude { $x } is off the globe; the latitude stands first

## desk/views/fields/map/sound.rs

fields-it-needs-three-points-that-do = it needs three points that do not lie in one place
fields-its-edge-would-cross-itself-like = its edge would cross itself, like a bow tie
fields-the-edge-of-the-hole-would = the edge of the hole would cross itself, like a bow tie
fields-a-point-is-no-place-on = a point is no place on the globe
fields-a-hole-must-lie-inside-its = a hole must lie inside its field
fields-a-hole-would-cross-another-edge = a hole would cross another edge or run along it
fields-its-parts-would-cover-one-another = its parts would cover one another
fields-two-of-its-parts-would-share = two of its parts would share an edge; move the points of the one that is there instead

## desk/views/fields/map/tools.rs

fields-move-points = Move points
fields-snap = Snap
fields-new-points-go-to-points-and = New points go to points and edges near by
fields-picture = Picture
fields-fit-all = Fit all
fields-fit-chosen = Fit chosen
fields-choose-a-boundary-first = Choose a field with a boundary first
fields-zoom-in = Zoom in
fields-zoom-out = Zoom out
fields-coloured-by = coloured by
fields-coloured-by-ea9 = Coloured by
fields-day-of-the-map = Day of the map
fields-draw = Draw…
fields-the-field = the field
fields-a-new-boundary-in-its-place = A new boundary in its place
fields-a-further-part = A further part
fields-a-hole = A hole
fields-a-gateway = A gateway
fields-its-boundary = Its boundary
fields-among-the-fields-water-homes-hives = among the fields: water, homes, hives…
fields-a-point = A point
fields-a-line = A line
fields-an-area = An area
fields-for-the-pass = for the pass
fields-pass-of-the-map = Pass of the map
fields-among-the-fields-45d = Among the fields

## desk/views/fields/map/wind.rs

fields-wind-from = wind from { $point }
fields-as-planned-for = as planned for { $date }
fields-wind-from-point-speed = wind from { $point }, { $speed }
fields-forecast = forecast, { $date } { $time }

## desk/views/fields/mod.rs

fields-no-field-yet = No field yet
fields-add-the-first-one-at-the = Add the first one at the left with its name and area, such as "74.6 ac" or "30.2 ha"; then its crop and stage.

## desk/views/fields/neighbours.rs

fields-neighbours-that-matter = Neighbours that matter
fields-what-the-neighbour-is = What the neighbour is
fields-side-of-the-field = Side of the field
fields-label-from-the-edge = from the edge
fields-distance-from-the-edge = Distance from the edge
fields-none-is-typed-creeks-wells-homes = None is typed. Creeks, wells, homes, hives, sensitive crops belong here.
fields-none-is-typed-beside-what-is = None is typed beside what is drawn.
fields-at-its-edge = at its edge
fields-from-the-edge = { $distance } from the edge
fields-drawn = { $kind }, { $side }, { $distance }; drawn
fields-add-a-neighbour = + Add a neighbour

## desk/views/fields/page.rs

fields-as-typed = As typed
fields-what-it-may-not-get = { $count ->
        [0] What it may not get
       *[other] What it may not get ({ $count })
    }
fields-what-it-got-got = { $count ->
        [0] What it got
       *[other] What it got ({ $count })
    }
fields-as-on-the-evening-of-the = As on the evening of { $day }, the day of the last record of this farm.
fields-as-on-day-strftime = As on { $day }, { $time }.
fields-as-typed-from-the-labels-the = { $words } As typed from the labels; the label and local law govern.
fields-more-stays-unsprayed-than-there-is = more stays unsprayed than there is; mend the areas
fields-of-which-can-be-sprayed = { $ground }, of which { $sprayable } can be sprayed
fields-all-of-it-to-be-sprayed = { $ground }, all of it to be sprayed

## desk/views/fields/roads.rs

fields-roads-to-other-fields = Roads to other fields
fields-road-to = Road to { $name }
fields-by-the-yard = by the yard
fields-from-gate-to-gate = from gate to gate
fields-take-out-the-road = Take out the road to { $name }
fields-none-is-typed-from-field-to = None is typed: from field to field the rig goes by way of the yard.
fields-add-a-road-to = + Add a road to…
fields-add-a-road-to-another-field = Add a road to another field
fields-not-on-the-farm = { $id } (not on the farm)

## desk/views/fields/typed.rs

fields-variety-and-traits = variety and traits
fields-variety-and-traits-adf = Variety and traits
fields-owner = Owner
fields-day-of-planting = Day of planting
fields-harvest-or-grazing-from = harvest or grazing from
fields-expected-day-of-harvest = Expected day of harvest
fields-harvest-intervals-are-judged-against-it = harvest intervals are judged against it
fields-road-from-the-yard = road from the yard
fields-road-from-the-yard-to-the = Road from the yard to the gate
fields-not-known = not known
fields-to-its-gate-for-the-time = to its gate; for the time a pass takes
fields-section-township-range-or-latitude-longitude = section, township, range; or latitude, longitude
fields-location = Location
fields-parcel = Parcel
fields-reference-in-the-aid-claim = reference in the aid claim
fields-next-crop = next crop
fields-next-crop-8c6 = Next crop
fields-next-crop-from-the-list = Next crop from the list
fields-note-on-the-field = Note on the field
fields-weeds-that-stand-up-to-a = Weeds that stand up to a group
fields-resistant-weed = Resistant weed { $number }
fields-to-group = to group
fields-group-of-resistant-weed = Group of resistant weed { $number }
fields-take-out-resistant-weed = Take out resistant weed { $number }
fields-none-is-typed-a-group-that = None is typed. A group that a weed here stands up to does not count as effective on it.
fields-add-a-resistant-weed = + Add a resistant weed

## desk/views/fields: heads of columns, words before boxes

fields-head-field = field
fields-head-area = area
fields-head-crop = crop
fields-head-stage = stage
fields-head-name = name
fields-head-soil = soil
fields-head-owner = owner
fields-head-planted = planted
fields-head-location = location
fields-head-parcel = parcel
fields-head-note = note
fields-head-gateways = gateways
fields-head-group = group
fields-head-groups = groups
fields-head-side = side
fields-head-none = none
fields-take-out = Take out
fields-take-out-what = Take out { $what }

## desk/views/fields/map/pattern.rs

fields-close-slanting-lines = close slanting lines
fields-close-level-lines = close level lines
fields-close-lines-slanting-back = close lines slanting back
fields-close-upright-lines = close upright lines
fields-close-crossing-lines = close crossing lines
fields-a-close-grid = a close grid
