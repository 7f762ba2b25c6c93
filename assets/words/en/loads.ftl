## core/loads/apart.rs

loads-and-do-not-share-a-load = { $name } and { $name2 } do not share a load: { $text }
loads-what-keeps-fields-apart-can-be = What keeps fields apart can be chosen in the shed, on the page Farm.
loads-their-crops-differ = their crops differ ({ $both })
loads-their-owners-differ = their owners differ ({ $both })
loads-not-typed = not typed
loads-one-variety-names-it = the variety of { $name } names { $active }, that of { $other } does not
loads-one-variety-takes-it-back = the variety of { $name } names { $active }, that of { $other } takes it back
loads-keeps-from-the-of-which-waits = { $speaker } keeps { $width } from the { $what } of { $name }, which waits for its own wind

## core/loads/build.rs

loads-the-products-leave-no-room-for = The products leave no room for water in the spray
loads-raise-the-spray-volume-or-look = Raise the spray volume, or look at the rates.
loads-the-tank-of-holds-it-cannot = The tank of { $name } holds { $tank }; it cannot be filled to { $fill }
loads-lower-fill-to-or-clear-it = Lower "fill to", or clear it to fill the tank.
loads-the-tank-of-holds-nothing = The tank of { $name } holds nothing
loads-of-spray-in-fillings-of-would = { $spray } of spray in fillings of { $fill } would be { $show } loads
loads-look-at-the-tanks-volume-in = Look at the tank's volume in the shed.
loads-usual-practice = Usual practice: { $limits }
loads-of-spray-of-which-are-to = { $volume } of spray, of which { $extra } are to be left over and { $carried } are in the tank already, cannot be laid out in loads of { $fill }
loads-mix-less-beyond-the-ground-or = Mix less beyond the ground, or look at what is in the tank.
loads-number-of-loads = Number of loads
loads-for-the-ground-beyond-it = { $spray } for the ground + { $extra } beyond it
loads-of-it-in-the-tank-already = of it in the tank already
loads-counted = loads
loads-load-needs-of-less-than-the = Load { $load } needs { $exact } of { $name }, less than the finest mark of { $step }
loads-give-the-product-a-finer-measuring = Give the product a finer measuring step in the shed.
loads-choose-loads-that-take-whole-bags = A bag goes in whole: choose loads, or a rate within the label, that come to whole bags.
loads-load-of-is-measured-as = Load { $load }: { $exact } of { $name } is measured as { $text }, { $rounding }
loads-is-rounded-down-in-one = Load { $load }: { $name } is rounded down to { $amount }, because the next mark would pass a label's most
loads-is-rounded-down-in-several = Loads { $loads }: { $name } is rounded down, because the next mark would pass a label's most
loads-comes-in-water-soluble-bags-and = { $name } comes in water-soluble bags, and the weight of one is not typed, so its amounts may be no whole bags
loads-type-the-bag-as-the-first = Type the bag as the first of its containers in the shed; a bag is never opened.
loads-load-is-only-on = Load { $number } is only { $volume } on { $area }
loads-even-loads-settle-it-or-the = Even loads settle it, or the areas are a hair too large.
loads-load-is-below-the-agitation-of = Load { $number } is { $volume }; below { $least } the agitation of { $name } does not reach
loads-even-loads-may-settle-it = Even loads may settle it.
loads-in-load = { $name } in load { $number }
loads-in-the-tank-already = { $volume } − { $carried } in the tank already
loads-to-the-measuring-step = to the measuring step
loads-rounding = rounding

## core/loads/card.rs

loads-than-exact = { $which ->
        [yes] { $show } % more than exact
       *[no] { $show } % less than exact
    }
loads-exact = exact

## core/loads/carry.rs

loads-are-in-the-tank-already-but = { $volume } are in the tank already, but it is filled to { $fill }
loads-mend-what-is-in-the-tank = Mend what is in the tank, or "fill to".
loads-are-in-the-tank-already-which = { $volume } are in the tank already; which pass they were mixed for is not known, so they are taken to be this mix
loads-choose-the-pass-that-they-were = Choose the pass that they were mixed for, or make sure that products and strength are the same.
loads-the-in-the-tank-were-mixed = The { $volume } in the tank were mixed for { $name }, which is another mix: { $why }
loads-spray-it-out-where-it-belongs = Spray it out where it belongs and clean the tank, or choose the pass that it was mixed for.
loads-no-rig = no rig
loads-the-volume-in-the-tank-were-mixed-for-name = The { $volume } in the tank were mixed for { $name }, which goes out with { $rig }
loads-choose-the-rig-that-holds-them = Choose the rig that holds them, or make sure that they were pumped over.
loads-the-in-the-tank-were-mixed-468 = The { $volume } in the tank were mixed for { $name }, which is planned for { $date }
loads-mend-the-days-or-what-is = Mend the days, or what is in the tank.
loads-what-is-in-the-tank-already = What is in the tank already runs over from { $name } to { $name2 }, which are kept apart: { $text }
loads-make-sure-that-this-is-right = Make sure that this is right on both fields.
loads-what-leaves-of-its-spray-cannot = What { $name } leaves of its spray cannot be told, as it has no loads
loads-settle-its-plan-or-make-sure = Settle its plan, or make sure what is in the tank.
loads-leaves-in-the-tank-this-pass =
    { $any ->
        [yes] { $name } leaves { $leaves } in the tank; this pass goes on with { $volume } of it
       *[no] { $name } leaves nothing in the tank; this pass goes on with { $volume } of it
    }{ $others ->
        [yes] , and { $names } too
       *[no] { "" }
    }
loads-make-the-two-agree = Make the two agree.
loads-it-is-carried-by = it is carried by { $carrier_kind }
loads-another-water = another water
loads-its-water-is = its water is { $water }
loads-the-spray-volume-over-ground-is = the spray volume over ground is not typed, so that its strength is not known
loads-is-not-in-it = { $product } is not in it
loads-is-in-it = { $product } is in it
loads-the-strength-of-differs = the strength of { $product } differs
loads-are-in-the-tank-already-and = { $volume } are in the tank already and the pass takes { $takes }: no load is to be mixed
loads-more-is-in-the-tank-than-it-takes = { $volume } are in the tank already and the pass takes { $takes }: no load is to be mixed, and { $left } are left
loads-spray-it-out-and-decide-where = Spray it out, and decide where the rest goes.
loads-left-after-the-last-metre-on =
    { $any ->
        [yes] { $left } are left after the last metre;
       *[no] Nothing is left after the last metre;
    } { $passes ->
        [one] { $names } goes on with { $taken }
       *[other] { $names } go on with { $taken }
    }
loads-are-to-be-left-after-the = { $any ->
        [yes] { $beyond } are to be left after the last metre; the decided loads leave { $left }
       *[no] { $beyond } are to be left after the last metre; the decided loads leave nothing
    }
loads-raise-the-last-of-them-or = Raise the last of them, or take out what is mixed beyond the ground.
loads-mixed-beyond-the-ground = mixed beyond the ground
loads-as-typed-beyond-the-ground = as typed beyond the ground
loads-are-left-after-the-last-metre = { $left } are left after the last metre, { $why }; { $residual } stay in { $name } when it runs dry
loads-left-are-left-after-the-last-metre-why-only = { $left } are left after the last metre, { $why }; only { $residual } of it stay in { $name } when it runs dry
loads-mix-less-or-plan-a-pass = Mix less, or plan a pass that goes on with the rest.
loads-left-are-left-after-the-last-metre-why-what = { $left } are left after the last metre, { $why }; what stays in { $name } when it runs dry is not typed
loads-type-what-stays-in-the-rig = Type what stays in the rig in the shed, or plan a pass that goes on with the rest.

## core/loads/decided.rs

loads-load-is-decided-as-though-the = Load { $number } is decided as { $size }, though the tank is to be filled to { $fill }
loads-lower-the-load-or-raise-fill = Lower the load, or raise "fill to".
loads-the-decided-loads-hold-more-than = The decided loads hold { $beyond } more than the pass takes
loads-lower-the-last-of-them-or = Lower the last of them, or take out those that are not needed.
loads-mend-the-decided-loads-of-the = Mend the decided loads of the pass.
loads-load-is-decided-as-the-tank = Load { $number } is decided as { $size }; the tank of { $name } holds { $tank }
loads-load-is-decided-as-nothing = Load { $number } is decided as nothing
loads-load-is-decided-as-but-are = Load { $number } is decided as { $size }, but { $carried } are in the tank already
loads-tank-runs-over = What is in the tank already runs over from { $last } to { $first }, which are kept apart
loads-decided-load-runs-over = Load { $number }, as decided, runs over from { $last } to { $first }, which are kept apart

## core/loads/rest.rs

loads-the-pass-is-gone = The pass is gone
loads-the-pass-has-no-loads-yet = The pass has no loads yet; settle its plan first
loads-the-pass-has-loads-cannot-have = The pass has { $count } loads; { $after } cannot have been filled
loads-are-left-over-for = { $tank } are left over; at { $carrier } it would cover { $ground }
loads-are-left-over = { $tank } are left over
loads-rest-of-a-pass = { $name }, rest
loads-no-load-was-filled-yet-so = No load was filled yet, so nothing can be left of it; say after which load
loads-load-was-of-it-cannot-be = Load { $number } was { $volume }; { $typed } of it cannot be left
loads-field-is-not-in-the-pass = Field "{ $id }" is not in the pass
loads-is-now-in-fields = { $name } is now { $area } in Fields
loads-ground-of-the-pass-is-left = Ground of the pass is left; what is in the tank goes on there
loads-the-other-pass-is-gone = The other pass is gone
loads-one-of-the-passes-is-gone = One of the passes is gone
loads-the-passes-do-not-take-the = The passes do not take the same spray on one rig
loads-the-second-pass-begins-with-spray = The second pass begins with spray in the tank already
loads-loads-of-the-second-pass-are = Loads of the second pass are decided by hand
loads-the-first-pass-has-no-loads = The first pass has no loads yet
loads-the-last-load-has-no-room = The last load has no room for more

## core/loads/sizing/mod.rs

loads-by-your-aims = by your aims
loads-first = { $aim } first
loads-full-tanks-then-a-rest = full tanks, then a rest
loads-even-loads = even loads
loads-the-last-load-topped-up-for = the last load topped up for the agitation
loads-load-sizes = Load sizes
loads-aims-in-order = aims, in order: { $order }
loads-loads-that-are-alike-end-at = loads that are alike end at a mark of the rig
loads-loads-that-are-alike-end-at-a-mark-that = loads that are alike end at a mark that can be read
loads-the-agitation-needs = the agitation needs
loads-what-the-agitation-needs-is-not = what the agitation needs is not typed, so that no load counts as too small
loads-looked-at = { $count ->
        [one] { $names }: { $count } way looked at
       *[other] { $names }: { $count } ways looked at
    }

## core/loads/sizing/words.rs

loads-1-load-of = 1 load of { $last }
loads-loads-of = { $count } loads of { $last }
loads-one-load-of-and-one-of = one load of { $alike } and one of { $last }
loads-loads-of-and-one-of = { $count } loads of { $alike } and one of { $last }
loads-nothing-left-over = nothing left over
loads-left-over = { $left } left over
loads-no-load-too-small-to-agitate = no load too small to agitate
loads-fillings = { $count ->
        [one] { $count } filling
       *[other] { $count } fillings
    }
loads-too-small-to-agitate = { $count ->
        [one] { $count } load too small to agitate
       *[other] { $count } loads too small to agitate
    }
loads-opened = { $count ->
        [one] { $count } container opened
       *[other] { $count } containers opened
    }
loads-to-measure = { $count ->
        [one] { $count } amount to measure
       *[other] { $count } amounts to measure
    }
loads-from-exact = { $number } % from exact
loads-more-or-less-left-over = { $which ->
        [yes] { $volume } more left over
       *[no] { $volume } less left over
    }
loads-more-or-less-too-small-to-agitate = { $more ->
        [yes] { $count ->
            [one] one more load too small to agitate
           *[other] { $count } more loads too small to agitate
        }
       *[no] { $count ->
            [one] one load less too small to agitate
           *[other] { $count } fewer loads too small to agitate
        }
    }
loads-more-or-less-fillings = { $more ->
        [yes] { $count ->
            [one] one more filling
           *[other] { $count } more fillings
        }
       *[no] { $count ->
            [one] one filling less
           *[other] { $count } fewer fillings
        }
    }
loads-more-or-less-to-measure = { $more ->
        [yes] { $count ->
            [one] one more amount to measure
           *[other] { $count } more amounts to measure
        }
       *[no] { $count ->
            [one] one amount to measure less
           *[other] { $count } fewer amounts to measure
        }
    }
loads-amounts-exact = { $which ->
        [yes] amounts { $by } % farther from exact
       *[no] amounts { $by } % closer to exact
    }
loads-nothing-gained-and-nothing-lost = nothing gained and nothing lost
loads-and-nothing-lost = { $gains }, and nothing lost
loads-and-nothing-gained = { $costs }, and nothing gained
loads-but = { $gains }, but { $costs }
loads-more-or-less-to-open = { $more ->
        [yes] { $count ->
            [one] one more { $container } of { $name } to open
           *[other] { $count } more { $container } of { $name } to open
        }
       *[no] { $count ->
            [one] one { $container } less of { $name } to open
           *[other] { $count } fewer { $container } of { $name } to open
        }
    }
