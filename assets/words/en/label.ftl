## core/label/applications.rs

label-applications-of-on = Applications of { $product } on { $field } { $words }
label-applications-so-far = applications so far
label-this-pass = + this pass
label-labels-most = label's most
label-one-application-too-many = { $field }: this pass would be application number { $number } of { $product } { $season }; its label allows { $most }
label-one-application-too-many-after = { $field }: this pass would be application number { $number } of { $product } { $season } after { $days }; its label allows { $most }
label-unless-they-lie-on-different-parts = { $text }, unless they lie on different parts
label-leave-the-field-out-or-choose = Leave the field out, or choose another product.
label-too-near-on-the-same-day = { $field } had { $product } on { $date }; this pass is on the same day as that, and its label keeps { $days_apart } days between two
label-too-near-after = { $field } had { $product } on { $date }; this pass is { $apart } after that, and its label keeps { $days_apart } days between two
label-too-near-before = { $field } had { $product } on { $date }; this pass is { $apart } before that, and its label keeps { $days_apart } days between two
label-choose-another-product = Choose another product.
label-not-before = Not before { $day }.
label-days = { $days ->
        [one] { $days } day
       *[other] { $days } days
    }

## core/label/boom_height.rs

label-asks-for-nozzles-at-most-above = { $speaker } asks for nozzles at most { $most } above what is sprayed; those of this pass are { $height }
label-lower-the-boom-and-type-the = Lower the boom, and type the height of the pass.
label-the-height-of-the-boom-is = The height of the boom is not typed; { $asked }
label-type-the-height-of-the-nozzles = Type the height of the nozzles above the crop for the rig or the pass.

## core/label/buffer.rs

label-keeps-from-that-is-away =
    { $downwind ->
        [yes] { $who } keeps { $width }, down the wind, from
       *[no] { $who } keeps { $width } from
    } { $what }; that { $side_is_typed ->
        [yes] on the { $side } of
       *[no] beside
    } { $field } is { $distance } away
label-leave-a-strip-of-unsprayed-along = { $which ->
        [yes] { $which2 ->
            [yes] Leave a strip of { $width } unsprayed along that edge while the wind blows toward it, unless what stays unsprayed takes it in.
           *[no] Leave a strip of { $width } unsprayed along that edge while the wind blows toward it.
        }
       *[no] { $which2 ->
            [yes] Leave a strip of { $width } unsprayed along that edge, unless what stays unsprayed takes it in.
           *[no] Leave a strip of { $width } unsprayed along that edge.
        }
    }
label-keeps-from-how-far-that-lies =
    { $downwind ->
        [yes] { $who } keeps { $width }, down the wind, from
       *[no] { $who } keeps { $width } from
    } { $what }; how far that { $side_is_typed ->
        [yes] on the { $side } of
       *[no] beside
    } { $field } lies off is not typed
label-type-how-far-it-lies-from = Type how far it lies from the edge on the field's page, or leave the strip.
label-speaks-of-wind-toward-what-lies = { $who } speaks of wind toward { $what }; what lies beside { $field } is not typed
label-type-its-neighbours-with-their-sides = Type its neighbours with their sides on the field's page, or look around it before the pass.
label-speaks-of-wind-toward-which-of = { $who } speaks of wind toward { $what }; which of the neighbours of { $field } that means cannot be told by its words: { $beside }
label-name-the-neighbour-that-is-meant = Name the neighbour that is meant in the label's words on the field's page, or look to the wind yourself.

## core/label/ends.rs

label-ends-the-wrong-way-round = The label of { $name } is typed with { $least } as the least and { $most } as the most ({ $kind }); nothing can keep both
label-hold-both-ends-against-the-label = Hold both against the label; they may stand the wrong way round.

## core/label/carrier.rs

label-asks-for-more-spray = { $name } asks for at least { $least } of spray; the pass has { $carrier }
label-asks-for-less-spray = { $name } asks for at most { $most } of spray; the pass has { $carrier }
label-raise-the-carrier-volume = Raise the spray volume.
label-lower-the-carrier-volume = Lower the spray volume.

## core/label/dates.rs

label-from-on = from { $from } on
label-up-to = up to { $to }
label-from-to = from { $from } to { $to }
label-may-be-used-month-day-this = { $name } may be used { $words }; this pass is on { $date }
label-move-the-pass-or-choose-another = Move the pass, or choose another product.

## core/label/droplets.rs

label-the-droplet-class-of-this-pass = The droplet class of this pass is not typed
label-copy-the-class-from-the-nozzle = Copy the class from the nozzle maker's table to the rig or the pass.
label-the-droplet-classes-of-are-not = The droplet classes of { $name } are not typed
label-copy-them-from-the-nozzle-makers = Copy them from the nozzle maker's table to the set in the shed.
label-the-pressure-of-is-not-known = The pressure of { $name } is not known, and so neither are its droplets
label-type-what-its-setting-lacks-or = Type what its setting lacks, or the class of the pass.
label-the-droplet-table-of-does-not = The droplet table of { $name } does not reach { $pressure }
label-change-speed-volume-or-set-or = Change speed, volume or set, or type more lines of the nozzle maker's table.
label-take-a-coarser-set-or-less = Take a coarser set or less pressure: drive slower, or spray less volume.
label-choose-a-coarser-nozzle-or-less = Choose a coarser nozzle or less pressure, and type the class of that setting.
label-take-a-finer-set-or-more = Take a finer set or more pressure: drive faster, or spray more volume.
label-choose-a-finer-nozzle-or-more = Choose a finer nozzle or more pressure, and type the class of that setting.
label-droplets-are-finer = { $who } asks for { $asked } droplets; those of this pass are { $classes }, which is finer
label-droplets-are-coarser = { $who } asks for { $asked } droplets; those of this pass are { $classes }, which is coarser
label-droplets-may-be-finer = { $who } asks for { $asked } droplets; those of this pass are { $classes }, between two lines of the nozzle maker's table, which may be finer
label-droplets-may-be-coarser = { $who } asks for { $asked } droplets; those of this pass are { $classes }, between two lines of the nozzle maker's table, which may be coarser
label-set-a-pressure-of-the-table = Set a pressure of the table at which the class is sure.
label-droplets-not-known = { $why }; { $asked }

## core/label/ground_speed.rs

label-asks-for-at-most-over-ground = { $speaker } asks for at most { $most } over ground; the pass is driven at { $speed }
label-drive-slower-with-a-set-that = Drive slower, with a set that suits that speed.
label-the-speed-of-this-pass-is = The speed of this pass is not typed; { $asked }
label-type-the-speed-for-the-rig = Type the speed for the rig or the pass.

## core/label/groups.rs

label-on-fields-times-in-seasons = { $times ->
        [1] on { $names } once in the last { $seasons } seasons, and this is the { $now }
        [2] on { $names } twice in the last { $seasons } seasons, and this is the { $now }
       *[other] on { $names } { $times } times in the last { $seasons } seasons, and this is the { $now }
    }
label-on-fields-times = { $times ->
        [1] on { $names } once, and this is the { $now }
        [2] on { $names } twice, and this is the { $now }
       *[other] on { $names } { $times } times, and this is the { $now }
    }
label-ordinal = { $ending ->
        [st] { $number }st
        [nd] { $number }nd
        [rd] { $number }rd
       *[th] { $number }th
    }
label-group-was-sprayed = Group { $group } was sprayed { $parts }
label-group-of-a-kind-was-sprayed = { $kind } group { $group } was sprayed { $parts }
label-another-effective-group-in-the-mix = Another effective group in the mix, or another one next time, keeps this one working.
label-no-label-in-the-mix-says = No label in the mix says, as typed, which weeds it controls, so effective groups are not counted
label-type-controls-in-the-shed-with = Type "controls" in the shed, with the weeds of the label.
label-add-a-product-of-another-group = Add a product of another group that controls it.
label-what-controls-is-not-typed-type = What { $silent } controls is not typed; type it, or add a product of another group.
label-nothing-in-the-mix-controls-on = Nothing in the mix controls { $weed } on { $on }, as the labels and resistant weeds are typed
label-only-one-effective-group-is-in = Only one effective group is in the mix against { $weed } on { $on }: group { $one }
label-norsworthy-et-al-2012-weed-science = Norsworthy et al. 2012, Weed Science 60 (sp1):31-62, from memory

## core/label/harvest.rs

label-may-not-be-harvested-before-keeps = { $name } may not be harvested before { $earliest }: { $product } keeps { $most } days
label-type-the-expected-day-of-harvest = Type the expected day of harvest on the field's page to have this judged.
label-keeps-days-to-harvest-is-expected = { $name } keeps { $days } days to harvest; { $name2 } is expected to be harvested { $left } days after this pass
label-harvest-not-before-or-choose-another = Harvest not before { $days }, or choose another product.
label-keeps-days-and-the-harvest-lies-before = { $name } keeps { $days } days to harvest; the harvest of { $name2 } is typed as { $harvest }, before this pass
label-type-the-harvest-to-come-or-the-crop = Type the harvest that is still to come on the field's page, or what stands there now; harvest not before { $days }.
label-had-on-which-keeps-it-from = { $name } had { $name2 } on { $date }, which keeps it from harvest until { $until }; its harvest is expected on { $harvest }
label-harvest-not-before = Harvest not before { $until }.

## core/label/laws.rs

label-speaks-of-which-is-not-judged = { $source } speaks of { $says }, which is not judged for a law
label-hold-this-pass-against-it-yourself = Hold this pass against it yourself.

## core/label/mod.rs

label-law-since = { $source }, since { $day }
label-the-label-says-so = { $text }; the label says so { $doubt }
label-the-rule-says-so = { $text }; the rule says so { $doubt }
label-the-says-so-which-cannot-be = { $who ->
        [rule] { $text }; the rule says so { $doubt }, which cannot be told here
       *[label] { $text }; the label says so { $doubt }, which cannot be told here
    }
label-and = { $first } and { $last }
label-ask-for = { $who ->
        [labels] the labels ask for { $asked }
        [laws] the laws ask for { $asked }
       *[both] the labels and laws ask for { $asked }
    }
label-ask-for-at-most = { $who ->
        [labels] the labels ask for at most { $asked }
        [laws] the laws ask for at most { $asked }
       *[both] the labels and laws ask for at most { $asked }
    }
label-for-the-crop-of-is-not = for { $crop } (the crop of { $name } is not typed)

## core/label/names.rs

label-oil = oil
label-crop-oil = crop oil
label-oil-adjuvant = oil adjuvant
label-oil-concentrate = oil concentrate
label-ammonium = ammonium
label-ammonium-salt = ammonium salt
label-ammonium-product = ammonium product
label-group-group = group { $group }
label-group-group-kind = group { $group } { $kind }
label-family-kind = { $family } { $kind }
label-group-product = group { $group } product

## core/label/partners.rs

label-may-not-be-mixed-with-is = { $name } may not be mixed with { $what }; { $name2 } is in the mix
label-take-one-of-the-two-out = Take one of the two out, or spray them in two passes.
label-not-together-with-these-words-are = { $name }: not together with { $words }; these words are not judged in full
label-read-the-mix-against-them-or = Read the mix against them, or type each partner by its active, its group, its class or its name.
label-may-not-come-within-same-day = { $name } may not come within { $days } of { $what }; { $field } had { $partner } on { $date }, on the same day
label-may-not-come-within-before = { $name } may not come within { $days } of { $what }; { $field } had { $partner } on { $date }, { $apart } before this pass
label-may-not-come-within-after = { $name } may not come within { $days } of { $what }; { $field } had { $partner } on { $date }, { $apart } after this pass
label-may-not-come-within-of-of = { $name } may not come within { $days } of { $what }; "{ $name2 }" of { $date } puts { $name3 } on { $name4 }
label-move-one-of-the-two-passes = Move one of the two passes.

## core/label/plant_back.rs

label-may-not-be-planted-before = { $names }: { $crop } may not be planted before { $day }, { $words }
label-cold-and-drought-lengthen-what-the = Cold and drought lengthen what the label counts on; see whether it says so.
label-months-after = { $months } months after { $name }
label-the-label-of-names-when-other = The label of { $name } names when other crops may follow, but not { $next }, as it is typed
label-type-what-it-says-of-this = Type what it says of this crop, or plan another next crop.
label-months-after-of = { $months } months after { $name } of { $date }
label-planted-too-early = { $name } had { $product } on { $date }; its label keeps { $months } months to { $crop }, until { $until }, and it was planted on { $planted }
label-perhaps-planted-too-early = { $name } had { $product } on { $date }; its label keeps { $months } months to { $crop }, until { $until }, and its day of planting is not typed
label-look-at-the-crop-before-more = Look at the crop before more is sprayed on it.

## core/label/rate.rs

label-to = { $least } to { $most }
label-at-least-least = at least { $least }
label-at-most-most = at most { $most }
label-a-rate-on-the-label-cannot = A rate on the label cannot be compared: { $problem }
label-the-rate-of-depends-on-a = The rate of { $name } depends on a stage that { $name2 } does not state in a way that compares
label-write-stages-like-v6-r1-or = Write stages like V6, R1 or BBCH 14.
label-a-field-without-a-crop = a field without a crop
label-has-no-rate-for-as-its = { $name } has no rate for { $crop } as its label is typed
label-has-no-rate-for-at-stage = { $name } has no rate for { $crop } at { $stage } as its label is typed
label-if-the-label-has-one-type = If the label has one, type it in the shed; if not, the product may not be used here.
label-no-rate-is-typed-from-the = No rate is typed from the label of { $name }, so its rate is not judged
label-type-the-labels-rate-in-the = Type the label's rate in the shed.
label-is-planned-at-on-its-label = { $name } is planned at { $planned } on { $crop }; its label allows { $shown }
label-though-another-statement-of-the-label = { $text }, though another statement of the label allows more
label-see-which-of-the-two-statements = See which of the two statements fits the weeds and the soil.
label-lower-the-rate = Lower the rate.
label-is-planned-at-on-below-its = { $name } is planned at { $planned } on { $crop }, below its label's { $shown }
label-is-planned-perhaps-below = { $name } is planned at { $planned } on { $crop }, below its label's { $shown } { $doubt }
label-less-than-the-labels-rate-may = Less than the label's rate may fail, and it breeds resistance.

## core/label/re_entry.rs

label-nobody-enters-without-protection-for-h = Nobody enters without protection for { $hours } h after the last of the spray, by the label of { $speaker }
label-nobody-enters-where = Nobody enters without protection for { $hours } h after the last of the spray { $doubt }, by the label of { $speaker }

## core/label/restricted.rs

label-for-certified-applicators-only-or-for = { $count ->
        [one] { $names } is for certified applicators only, or for people under their direct supervision where local law allows it
       *[other] { $names } are for certified applicators only, or for people under their direct supervision where local law allows it
    }
label-a-record-is-owed-write-who = A record is owed: write who sprayed and the certificate's number into it.

## core/label/season.rs

label-the-label-of-limits-a-season = The label of { $name } limits { $active } a season, but no active of that name is typed for it
label-write-the-active-in-the-same = Write the active in the same way in both places.
label-the-season-total-on-the-label = The season total on the label cannot be compared: { $problem }
label-the-season-total-of-is-typed = The season total of { $active } is typed as "{ $most }", which is no mass over ground
label-type-it-like-4-lb-ae = Type it like "4 lb ae/ac" or "4.5 kg ae/ha".
label-counts-as-the-season-total-as = { $name } counts { $active } as { $short }, the season total as { $basis }
label-type-both-on-one-basis = Type both on one basis.
label-the-in-cannot-be-reckoned-without = The { $active } in { $name } cannot be reckoned without its density, so the season total is not judged
label-type-the-density-in-the-shed = Type the density in the shed.
label-this-pass-was-recorded-on-and = This pass was recorded on { $date } and is planned for { $date2 }; that record counts as another application
label-if-it-is-a-second-application = If it is a second application, plan it as a pass of its own.
label-unrecorded-pass-is-not-counted = "{ $name }" of { $date } also puts { $shared } on { $fields } and is not recorded, so season totals, number and spacing of applications do not count it
label-rest-of-a-pass-is-not-counted = "{ $name }" of { $date } also puts { $shared } on { $fields } and is { $partly }, so season totals, number and spacing of applications do not count that
label-record-it-or-take-it-out = Record it, or take it out if it was not sprayed.
label-on = { $what } on { $name } { $words }
label-records-so-far = records so far
label-none = none
label-in-all = in all
label-this-pass-brings-to-the-labels = { $name }: this pass brings { $what } to { $after } { $words }; the label's most is { $limit }
label-this-pass-brings-beyond-what-was-sprayed = { $name }: this pass brings { $what } to { $after } { $words }; the label of { $product }, which was sprayed there, allows { $limit } from all products
label-with-what-is-planned-before = { $name }: with { $named }, planned and not recorded yet, { $what } comes to { $sum } { $words }; the label's most is { $limit }
label-pass-of-a-day = "{ $name }" of { $date }
label-lower-a-rate-or-take-out-what = Lower a rate, or take out what is not sprayed.
label-sprayed-before-planting-is-not-counted = { $name } had { $what } on { $days }, before its crop was planted on { $planted }; the label's most for a crop is counted from planting on, without it
label-hold-the-total-of-the-crop-against = Read whether the label counts what is sprayed before planting, and add it where it does.
label-lower-the-rate-leave-the-field = Lower the rate, leave the field out, or choose another product.
label-the-season-total-of-on-leaves = The season total of { $what } on { $name } leaves out records: { $left_out }
label-mend-these-records-in-the-season = Mend these records in the season log.

## core/label/stage.rs

label-stage-up-to = up to { $to }
label-stage-from = from { $from }
label-stage-from-to = from { $from } to { $to }
label-is-at-stops-at = { $name } is at { $stage }; { $name2 } stops at { $to_stage }
label-look-at-the-crop-again-before = Look at the crop again before the tank is filled.
label-may-be-used-is-which-cannot = { $name } may be used { $ranges }; { $field } is at "{ $stage }", which cannot be compared
label-may-be-used-at-stages-none-typed = { $name } may be used { $ranges }; { $field } is without a stage, which cannot be compared
label-is-at-may-be-used = { $name } is at { $stage }; { $name2 } may be used { $ranges }

## core/label/tolerance.rs

label-variety-is-not-said-to-stand = { $name } holds { $active }, which hurts this crop in leaf unless its variety stands it; the variety on { $fields } is not said to stand { $active }
label-leave-it-out-or-type-what-it-stands = Leave the field out, or type on its page what its variety stands, such as "glyphosate tolerant".
label-only-on-tolerant-varieties = { $name } holds { $active }, which hurts this crop in leaf unless its variety stands it; the variety on { $fields } is not typed
label-type-the-variety-with-what-it-stands = Type the variety on the field's page, with what it stands, such as "glyphosate tolerant".

## core/label/typed.rs

label-from-the-label-of-is-not = From the label of { $name }, { $missing } is not typed
label-type-it-in-the-shed-or = Type it in the shed, or read it from the label before the field is entered or harvested.
label-said-for-crops-the-crop-of-name-is-not = What the label of { $name } says on { $words } is for { $crops }; the crop of { $field } is not typed
label-type-the-crop-on-the-fields = Type the crop on the field's page.
label-typed-for-and-not-judged-on = What the label of { $name } says on { $words } is typed for { $crops } and not judged on { $crop }
label-write-the-crop-in-the-same = Write the crop in the same way in both places, or type what the label says for it.
label-typed-a-re-entry-time = a re-entry time
label-typed-protective-equipment = protective equipment
label-typed-a-harvest-interval = a harvest interval
label-typed-rate = rate
label-typed-spray-volume = spray volume
label-typed-crop-stage = crop stage
label-typed-most-a-season = most a season
label-typed-harvest-interval = harvest interval
label-typed-applications = applications
label-typed-dates = dates

## core/label/weather.rs

label-asks-for-cooler-air = { $speaker } asks for air of at most { $limit }; { $air } is expected at the warmest
label-asks-for-warmer-air = { $speaker } asks for air of at least { $limit }; { $air } is expected at the warmest
label-spray-on-a-cooler-day-or = Spray on a cooler day, or choose another product.
label-spray-on-a-warmer-day-or = Spray on a warmer day, or choose another product.
label-no-wind-suits-this-mix-asks = { $least ->
        [law] { $most ->
            [law] No wind suits this mix: one law asks for at least { $low }, another for at most { $high }
           *[label] No wind suits this mix: a law asks for at least { $low }, a label for at most { $high }
        }
       *[label] { $most ->
            [law] No wind suits this mix: a label asks for at least { $low }, a law for at most { $high }
           *[label] No wind suits this mix: one label asks for at least { $low }, another for at most { $high }
        }
    }
label-split-the-pass = Split the pass.
label-ask-on-the-day = { $who ->
        [labels] The labels ask on the day: { $words }
        [laws] The laws ask on the day: { $words }
       *[both] The labels and laws ask on the day: { $words }
    }
label-measure-at-the-boom-before-starting = Measure at the boom before starting.

## core/label/directions/against.rs

label-at-most-text-per = at most { $text } { $per }
label-active-at-most-text-per = { $active }, at most { $text } { $per }
label-at-most-most-per = at most { $most } { $per }
label-at-most-days-apart = at most { $most } { $per }, { $days_apart } days apart
label-1-day-before-harvest-or-grazing = 1 day before harvest or grazing
label-days-before-harvest-or-grazing = { $days } days before harvest or grazing
label-1-hour-without-protection = 1 hour, without protection
label-hours-without-protection = { $hours } hours, without protection
label-1-hour-without-rain = 1 hour without rain
label-hours-without-rain = { $hours } hours without rain
label-at-most-text = at most { $text }
label-alone = { $finest } alone
label-finest-to-coarsest = { $finest } to { $coarsest }
label-or-coarser = { $finest } or coarser
label-adjuvant-in-form = { $class }, { $stance }
label-adjuvant-in-form-at = { $class }, { $stance }, { $rate }
label-buffer-in-form = { $width } to { $to }
label-buffer-downwind-in-form = { $width } downwind to { $to }
label-next-crop-in-form-one = { $crop }, 1 month
label-next-crop-in-form = { $crop }, { $months } months

## core/label/directions/build.rs

label-it-is-too-long-to-be = It is too long to be one sentence.
label-no-phrase-known-here-fits-it = No phrase known here fits it.
label-it-stands-under-the-heading-which = It stands under the heading "{ $heading }", which may speak of another use or of something else.
label-it-stands-under-the-heading-whose = It stands under the heading "{ $heading }", whose crop is not told for sure.
label-no-phrase-known-here-accounts-for = No phrase known here accounts for "{ $figure }" in it.
label-the-word-may-turn-what-it = The word "{ $word }" may turn what it says.
label-the-word-may-narrow-what-it = The word "{ $word }" is not known here and may narrow what it says, to another use or place.
label-the-word-speaks-of-another-use = The word "{ $word }" speaks of another use, place or way of spraying; type a row if it is yours.
label-the-word-makes-a-condition = It holds under a condition, which begins with "{ $word }"; type the row and choose the condition with it.
label-the-part-before-it-is-not = The part of the sentence before it is not understood, and may narrow it, too.
label-in-brackets-stands-something-else = In brackets stands "{ $aside }", which is not the same as what stands before it.
label-minutes-are-entered-as-the-next = The form takes whole hours, so the minutes are entered as the next whole hour.
label-days-are-entered-as-the-next = The form takes months, so the days are entered as the months that surely hold them.
label-a-figure-in-it-cannot-be = A figure in it cannot be read.
label-the-form-takes-whole-days-and = The form takes whole days and hours alone.
label-it-does-not-say-over-which = It does not say over which ground its water goes.
label-one-class-so-neither-finer-nor = One class, so neither finer nor coarser is entered.
label-it-counts-an-active-that-is = It counts an active; that is told where the product has one active and its name is typed.
label-a-season-is-entered-as-a = A season is entered as a calendar year; the form can count over a crop or 12 months, too.
label-it-does-not-say-over-what = It does not say over what; a calendar year is entered.
label-it-has-none-of-the-words = It has no figure and none of the words that limits are written with; read it all the same.
label-it-speaks-of-the-grain-alone = It speaks of the grain; the form holds it for any harvest, and forage or grazing may have another interval.
label-up-to-a-stage-is-entered = "Up to" is entered with the stage itself; hold that against the label.
label-it-says-at-which-time = It says "{ $time }"; the form holds it at any time of the crop.

## core/label/directions/crops.rs

label-it-speaks-of-several-crops-in = It names { $crops } in several places, so what it says of each is not told for sure: type a row for each crop.

## core/label/directions/mod.rs

label-the-text-is-too-long-to = The text is too long to be read to its end.

## core/label/directions/settle.rs

label-the-text-says-several-things-on = The text says several things on { $kind }; for what each holds must be typed.
label-the-text-has-several-times-between = The text has several times between applications.
label-other-rates-are-not-understood = Another sentence with a rate was not understood, so see whether this one holds for all.
label-with-the-number-of-applications-that = With the number of applications that is typed already.
label-the-form-takes-the-days-between = The form takes the days between applications together with their number, which the text does not give.
label-one-figure-so-it-is-entered = One figure, so it is entered as the least and as the most.

## core/label/directions/adjuvants.rs

label-the-form-cannot-hold-either = It lets one choose between adjuvants of different use; the form holds a choice within one use alone: oils and surfactants, or conditioners and nitrogen.
label-the-form-takes-one-of-a-role = It asks for several adjuvants of one use together; the form takes those that are required for one use as a choice, any one of which will do.
label-and-may-mean-both-together = "And" may mean both together, or each of them.
label-it-speaks-against-a-rate-of = It speaks against a rate of an adjuvant, and not against the adjuvant.
label-the-rate-behind-the-last-is = One of them will do: tick them all, so that the form takes them as a choice. The rate behind the last is entered for each.
label-one-of-them-will-do = One of them will do: tick them all, so that the form takes them as a choice.
