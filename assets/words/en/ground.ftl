## core/ground/directions.rs

ground-any-direction = any direction
ground-to-to = { $from } to { $to } ({ $to_degrees }° to { $to_degrees2 }°)

## core/ground/mod.rs

ground-mind-the-wind = Mind the wind while spraying: where it turns toward it, leave the strip.
ground-stated = stated
ground-ground-of = Ground of { $name }
ground-is-to-go-by-its-boundary = { $name } is to go by its boundary, and none is drawn; the stated area counts
ground-draw-or-import-its-boundary-in = Draw or import its boundary in Fields, or let it go by the stated area.
ground-its-boundary-holds-are-stated-the = { $name }: its boundary holds { $measured }, { $area } are stated{ $than ->
        [less] , which is { $differs } less
        [more] , which is { $differs } more
       *[none] { "" }
    }; { $from ->
        [boundary] the plan goes by the boundary
       *[stated] the plan goes by the stated area
    }
ground-mend-the-area-or-the-boundary = Mend the area or the boundary in Fields, or choose which one counts.
ground-where-the-wind-blows-toward-it = , where the wind blows toward it
ground-its-words-are = { " " }(its words are "{ $to }")
ground-keeps-from = { $who } keeps { $wide } from { $what }{ $by_kind }{ $down }
ground-along-of-its-edge = , along { $edge } of its edge
ground-of-stay-unsprayed = { $area } of { $name } stay unsprayed{ $along }
ground-the-wind-planned-for-does-not = { $head }; the wind planned for does not carry from { $name } to it
ground-no-wind-is-known-for-the = { $head }; no wind is known for the pass, so that { $left } whichever way it blows
ground-type-the-wind-expected-for-the = Type the wind expected for the pass, or take in a forecast.
ground-the-strips-take-more-than-the = { $name }: the strips take { $strip_area }, more than the { $unsprayed } that stay unsprayed as typed; the strips count
ground-mend-what-stays-unsprayed-in-fields = Mend what stays unsprayed in Fields, or let the strips be left out beside it.
ground-the-strips-leave-nothing-of-to = The strips leave nothing of { $name } to spray
ground-take-the-field-out-or-choose = Take the field out, or choose other products.
ground-of-are-planned-beside-the-strips = { $part } of { $name } are planned; beside the strips { $sprayable } can be sprayed
ground-lower-the-ground-typed-for-the = Lower the ground typed for the pass, or take it back.
ground-something-that-is-not-named = something that is not named
ground-keeps-from-whether-that-means-closer = { $speaker } keeps { $width } from { $to }; whether that means { $names }, closer to { $name } than that, cannot be told by its words
ground-choose-on-the-map-what-it = Choose on the map what it is, or name it in the label's words; else leave the strip yourself.
ground-within-the-boundary-on-wgs-84 = within the boundary, on WGS 84
ground-the-plan-goes-by-the-area = the plan goes by the area { $from ->
        [boundary] from the boundary
       *[stated] stated
    }
ground-stays-unsprayed = − stays unsprayed
ground-down-the-wind = , down the wind
ground-strip-of-to = − strip of { $width } to { $what } ({ $who }{ $wind })
ground-the-strips-together-ground-in-two = the strips together, ground in two of them once
ground-the-larger-of-what-stays-unsprayed = the larger of what stays unsprayed and the strips, which it holds
ground-can-be-sprayed = = can be sprayed

## core/ground/rings/antimeridian.rs

ground-a-point-of-it-is-no = a point of it is no number
ground-a-point-lies-off-the-globe = a point lies off the globe,
ground-a-ring-goes-half-round-the = a ring goes half round the globe, so it is no field
ground-a-hole-crosses-the-180th-meridian = a hole crosses the 180th meridian; cut it there first
ground-it-crosses-the-180th-meridian-and = it crosses the 180th meridian and is cut there in two
ground-it-crosses-the-180th-meridian-more = it crosses the 180th meridian more than twice; cut it there first

## core/ground/rings/mod.rs

ground-at = { $why } at { $at }
ground-its-rings-cross-or-touch-so = its rings cross or touch so often that it cannot be looked through; draw it anew
ground-latitude-longitude = latitude { $y }, longitude { $x }
ground-a-hole-has-a-hole-in = a hole has a hole in it; draw the inner one as a part of its own
ground-the-wrong-way-round-and-turned = { $turned } { $turned ->
        [one] outer ring runs the wrong way round and is turned
       *[other] outer rings run the wrong way round and are turned
    }
ground-it-has-no-rings = it has no rings
ground-parts-twice-and-taken-once = { $count } { $count ->
        [one] part stands twice and is taken once
       *[other] parts stand twice and are taken once
    }
ground-holes-twice-and-taken-once = { $count } { $count ->
        [one] hole stands twice and is taken once
       *[other] holes stand twice and are taken once
    }
ground-a-hole-crosses-the-edge-or = a hole crosses the edge or another hole
ground-a-hole-runs-along-the-edge = a hole runs along the edge or another hole
ground-cut-at-the-180th-meridian-its = cut at the 180th meridian its rings cross; cut it there first
ground-two-parts-that-overlap-by-a = two parts that overlap by a sliver are joined at { $at }
ground-two-parts-overlap = two parts overlap

## core/ground/rings/nest.rs

ground-a-hole-lies-within-another-hole = a hole lies within another hole
ground-a-hole-crosses-the-edge = a hole crosses the edge
ground-a-hole-does-not-lie-within = a hole does not lie within its polygon
ground-a-part-lies-within-another-part = a part lies within another part

## core/ground/rings/place.rs

ground-the-second-numbers-are-no-latitudes = the second numbers are no latitudes, so the first ones are
ground-it-lies-about-whether-latitude-and = it lies about { $middle }; whether latitude and longitude stand in each other's place cannot be told, as it is not typed where the farm lies
ground-as-they-stand-it-would-lie = as they stand it would lie far from the farm, the other way round it lies beside it
ground-it-lies-about-km-from-the = it lies about { $middle }, { $to_metres } km from the farm

## core/ground/rings/ring.rs

ground-an-open-ring-is-closed-over = an open ring is closed over the last { $show } m
ground-that-the-one-before-taken-out = { $count } { $count ->
        [one] point that repeats the one before is taken out
       *[other] points that repeat the one before are taken out
    }
ground-a-spike-without-area-is-cut = a spike without area is cut off at { $tip }
ground-spikes-without-area-are-cut-off = { $spikes } spikes without area are cut off, the first at { $tip }
ground-a-ring-has-no-area = a ring has no area
ground-a-ring-has-no-points = a ring has no points
ground-a-ring-crosses-itself = a ring crosses itself
ground-a-ring-touches-itself = a ring touches itself
ground-a-ring-runs-along-itself = a ring runs along itself
ground-a-ring-that-touches-itself-at = a ring that touches itself at { $touch } is split into { $parts } { $parts ->
        [one] part
       *[other] parts
    }{ $holes ->
        [0] { "" }
        [one] { " " }with 1 hole
       *[other] { " " }with { $holes } holes
    }

## core/ground/shift.rs

ground-anywhere = anywhere
ground-to = { $floor }° to { $ceil }°
ground-the-planned-wind-breaks-it-so = The planned wind breaks it; so does all from { $from }: { $asked }
ground-a-turn-of-to-breaks-it = A turn of { $floor }° to { $point } breaks it; so does all wind from { $from }: { $asked }
ground-wind-from-breaks-it = Wind from { $from } breaks it: { $asked }
