## core/finding.rs

core-note = Note
core-check = Check
core-stop = Stop
core-label-of = label of { $source }
core-what-this-farm-keeps-to = what this farm keeps to
core-common-practice-no-source = common practice, no source
core-arithmetic = arithmetic
core-label-of-as-typed = label of { $source }, as typed
core-as-typed = { $source }, as typed

## core/plan.rs

core-not-judged-pairs = antagonism and compatibility beyond the published pairs
core-not-judged-drift = spray drift, and strips to what is not drawn on the map
core-spray-volume = Spray volume
core-is-in-the-mix-at-a = { $name } is in the mix at a rate of nothing
core-type-its-rate-or-take-it = Type its rate, or take it out of the mix.
core-the-pass-has-no-field-yet = The pass has no field yet
core-choose-its-fields-in-the-heading = Choose its fields in the heading line.
core-ground-to-spray = Ground to spray
core-the-pass-goes-to-field-which = The pass goes to field "{ $id }", which is not on the farm
core-choose-another-field-or-add-it = Choose another field, or add it in Fields.
core-stands-twice-in-the-pass = { $name } stands twice in the pass
core-take-one-of-them-out = Take one of them out.
core-of-are-planned-can-be-sprayed = { $area } of { $name } are planned; { $sprayable } can be sprayed
core-the-share-that-the-bands-cover = × { $share }, the share that the bands cover
core-the-fields-of-the-pass-have = The fields of the pass have no ground to spray
core-type-their-areas-in-fields = Type their areas in Fields.
core-in-all = in all
core-sprayed-in-bands-of-are-treated = Sprayed in bands: { $total } of { $covered } are treated, { $show_whole } of the ground; rates and spray volume hold for the bands
core-read-on-the-label-whether-its = Read on the label whether its rate is for the band or for the whole field.
core-this-pass-and-are-parts-of = { $name }: this pass and { $names } are parts of one application and cover { $whole } together; { $sprayable } can be sprayed
core-lower-the-ground-of-a-part = Lower the ground of a part, or mend the field's area; a second application is planned as a new pass.
core-stay-unsprayed-more-than-its = { $name }: { $unsprayed } stay unsprayed, more than its { $area }
core-mend-the-areas-in-fields = Mend the areas in Fields.
core-no-rig-is-chosen-so-the = No rig is chosen, so the loads cannot be reckoned
core-choose-the-rig-in-the-heading = Choose the rig in the heading line.
core-the-pass-takes-rig-which-is = The pass takes rig "{ $rig }", which is not in the shed
core-choose-another-rig-or-add-it = Choose another rig, or add it in the shed.
core-what-the-tank-holds-is-not-typed = What the tank of { $name } holds is not typed, so no load can be reckoned
core-type-what-the-tank-holds = Type what it holds when full to its mark, in the shed under Rigs.
core-the-spray-volume-over-ground-is = The spray volume over ground is not typed
core-open-the-rig-in-the-heading = Open the rig in the heading line and type it, such as "15 gal/ac" or "140 L/ha".
core-the-time-to-spray-is-not = The time to spray is not known: { $name } lacks speed, boom width or field efficiency
core-type-them-in-the-shed = Type them in the shed.
core-time-to-spray = Time to spray
core-filling-and-road-are-not-counted = filling and road are not counted
core-the-tank-mix-is-empty = The tank mix is empty
core-add-its-products-with-their-rates = Add its products with their rates.
core-the-mix-holds-which-is-not = The mix holds "{ $product }", which is not in the shed
core-take-it-out-or-add-the = Take it out, or add the product in the shed.
core-stands-twice-in-the-mix-only = { $name } stands twice in the mix; only the first counts
core-take-one-of-the-two-out = Take one of the two out.
core-the-price-of-is-per-so = { $which ->
        [yes] The price of { $name } is per mass, but it is a liquid, so its cost is not counted
       *[no] The price of { $name } is per volume, but it is dry, so its cost is not counted
    }
core-mend-the-price-in-the-shed = Mend the price in the shed.

## core/progress.rs

core-it-was-cancelled = it was cancelled

## core/words.rs

core-and = { $first } and { $last }
core-or = { $first } or { $last }
core-to = { $first } to { $last }

## core/begin.rs

core-new-farm = New farm
core-new-rig = New rig
core-new-water = New water
core-new-product = New product
