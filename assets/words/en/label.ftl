## core/label/applications.rs

label-applications-of-on = Applications of { $product } on { $field } { $words }
label-applications-so-far = applications so far
label-this-pass = + this pass
label-labels-most = label's most
label-after = { " " }after { $days }
label-this-pass-would-be-application-number = { $field }: this pass would be application number { $saturating_add } of { $product } { $words }{ $before }; its label allows { $most }
label-unless-they-lie-on-different-parts = { $text }, unless they lie on different parts
label-leave-the-field-out-or-choose = Leave the field out, or choose another product.
label-on-the-same-day-as = on the same day as
label-days-after = { $days } after
label-before = { $days } before
label-had-on-this-pass-is-that = { $field } had { $product } on { $date }; this pass is { $how_far } that, and its label keeps { $days_apart } days between two
label-choose-another-product = Choose another product.
label-not-before = Not before { $day }.
label-1-day = 1 day
label-days = { $days } days

## core/label/boom_height.rs

label-asks-for-nozzles-at-most-above = { $speaker } asks for nozzles at most { $most } above what is sprayed; those of this pass are { $height }
label-lower-the-boom-and-type-the = Lower the boom, and type the height of the pass.
label-at-most = at most{ " " }
label-the-height-of-the-boom-is = The height of the boom is not typed; { $asked }
label-type-the-height-of-the-nozzles = Type the height of the nozzles above the crop for the rig or the pass.

## core/label/buffer.rs

label-on-the-of = on the { $side } of
label-down-the-wind = { $width }, down the wind,
label-keeps-from-that-is-away = { $who } keeps { $asked } from { $what }; that { $side } { $field } is { $distance } away
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
label-keeps-from-how-far-that-lies = { $who } keeps { $asked } from { $what }; how far that { $side } { $field } lies off is not typed
label-type-how-far-it-lies-from = Type how far it lies from the edge on the field's page, or leave the strip.
label-speaks-of-wind-toward-what-lies = { $who } speaks of wind toward { $what }; what lies beside { $field } is not typed
label-type-its-neighbours-with-their-sides = Type its neighbours with their sides on the field's page, or look around it before the pass.
label-speaks-of-wind-toward-which-of = { $who } speaks of wind toward { $what }; which of the neighbours of { $field } that means cannot be told by its words: { $beside }
label-name-the-neighbour-that-is-meant = Name the neighbour that is meant in the label's words on the field's page, or look to the wind yourself.

## core/label/carrier.rs

label-asks-for-of-spray-the-pass = { $name } asks for { $word } { $limit } of spray; the pass has { $carrier }
label-at-least = at least
label-raise-the-carrier-volume = Raise the carrier volume.
label-at-most-2e7 = at most
label-lower-the-carrier-volume = Lower the carrier volume.

## core/label/dates.rs

label-from-on = from { $from } on
label-up-to = up to { $to }
label-from-to = from { $from } to { $to }
label-may-be-used-month-day-this = { $name } may be used { $words } (month-day); this pass is on { $date }
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
label-asks-for-droplets-those-of-this = { $who } asks for { $asked } droplets; those of this pass are { $classes }
label-which-is = { $theirs }, which is { $word }
label-between-two-lines-of-the-nozzle = { $theirs }, between two lines of the nozzle maker's table, which may be { $word }
label-set-a-pressure-of-the-table = Set a pressure of the table at which the class is sure.

## core/label/ground_speed.rs

label-asks-for-at-most-over-ground = { $speaker } asks for at most { $most } over ground; the pass is driven at { $speed }
label-drive-slower-with-a-set-that = Drive slower, with a set that suits that speed.
label-the-speed-of-this-pass-is = The speed of this pass is not typed; { $asked }
label-type-the-speed-for-the-rig = Type the speed for the rig or the pass.

## core/label/groups.rs

label-times = { $many } times
label-in-the-last-seasons = { " " }in the last { $seasons } seasons
label-on-and-this-is-the = on { $names } { $times }{ $seasons }, and this is the { $count }
label-group = Group
label-was-sprayed = { $of_kind }{ $word } { $group } was sprayed { $parts }
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
label-had-on-which-keeps-it-from = { $name } had { $name2 } on { $date }, which keeps it from harvest until { $until }; its harvest is expected on { $harvest }
label-harvest-not-before = Harvest not before { $until }.

## core/label/laws.rs

label-speaks-of-which-is-not-judged = { $source } speaks of { $says }, which is not judged for a law
label-hold-this-pass-against-it-yourself = Hold this pass against it yourself.

## core/label/mod.rs

label-since = , since { $day }
label-the-label-says-so = { $text }; the label says so { $doubt }
label-the-rule-says-so = { $text }; the rule says so { $doubt }
label-the-says-so-which-cannot-be = { $text }; the { $who } says so { $doubt }, which cannot be told here
label-and = { $first } and { $last }
label-ask-for = { $places } ask for { $most }{ $asked }
label-the-labels = the labels
label-the-laws = the laws
label-the-labels-and-laws = the labels and laws
label-for-the-crop-of-is-not = for { $crop } (the crop of { $name } is not typed)

## core/label/names.rs

label-crop-oil = crop oil
label-oil-adjuvant = oil adjuvant
label-oil-concentrate = oil concentrate
label-ammonium-salt = ammonium salt
label-ammonium-product = ammonium product
label-group-group = group { $group }
label-group-group-kind = group { $group } { $kind }
label-group-product = group { $group } product

## core/label/partners.rs

label-may-not-be-mixed-with-is = { $name } may not be mixed with { $what }; { $name2 } is in the mix
label-take-one-of-the-two-out = Take one of the two out, or spray them in two passes.
label-not-together-with-these-words-are = { $name }: not together with { $words }; these words are not judged in full
label-read-the-mix-against-them-or = Read the mix against them, or type each partner by its active, its group, its class or its name.
label-on-the-same-day = on the same day
label-before-this-pass = { $apart } before this pass
label-after-this-pass = { $apart } after this pass
label-may-not-come-within-of-had = { $name } may not come within { $days } of { $what }; { $name2 } had { $name3 } on { $date }, { $when }
label-may-not-come-within-of-of = { $name } may not come within { $days } of { $what }; "{ $name2 }" of { $date } puts { $name3 } on { $name4 }
label-move-one-of-the-two-passes = Move one of the two passes.

## core/label/plant_back.rs

label-may-not-be-planted-before = { $names }: { $crop } may not be planted before { $day }, { $words }
label-cold-and-drought-lengthen-what-the = Cold and drought lengthen what the label counts on; see whether it says so.
label-months-after = { $months } months after { $name }
label-the-label-of-names-when-other = The label of { $name } names when other crops may follow, but not { $next }, as it is typed
label-type-what-it-says-of-this = Type what it says of this crop, or plan another next crop.
label-months-after-of = { $months } months after { $name } of { $date }
label-its-day-of-planting-is-not = its day of planting is not typed
label-it-was-planted-on = it was planted on { $day }
label-had-on-its-label-keeps-months = { $name } had { $name2 } on { $date }; its label keeps { $months } months to { $crop }, until { $until }, and { $planted }
label-look-at-the-crop-before-more = Look at the crop before more is sprayed on it.

## core/label/rate.rs

label-to = { $least } to { $most }
label-at-least-least = at least { $least }
label-at-most-most = at most { $most }
label-a-rate-on-the-label-cannot = A rate on the label cannot be compared: { $problem }
label-the-rate-of-depends-on-a = The rate of { $name } depends on a stage that { $name2 } does not state in a way that compares
label-write-stages-like-v6-r1-or = Write stages like V6, R1 or BBCH 14.
label-a-field-without-a-crop = a field without a crop
label-at = { " " }at { $stage }
label-has-no-rate-for-as-its = { $name } has no rate for { $crop }{ $which } as its label is typed
label-if-the-label-has-one-type = If the label has one, type it in the shed; if not, the product may not be used here.
label-no-rate-is-typed-from-the = No rate is typed from the label of { $name }, so its rate is not judged
label-type-the-labels-rate-in-the = Type the label's rate in the shed.
label-is-planned-at-on-its-label = { $name } is planned at { $planned } on { $crop }; its label allows { $shown }
label-though-another-statement-of-the-label = { $text }, though another statement of the label allows more
label-see-which-of-the-two-statements = See which of the two statements fits the weeds and the soil.
label-lower-the-rate = Lower the rate.
label-is-planned-at-on-below-its = { $name } is planned at { $planned } on { $crop }, below its label's { $shown }{ $doubt }
label-less-than-the-labels-rate-may = Less than the label's rate may fail, and it breeds resistance.

## core/label/re_entry.rs

label-nobody-enters-without-protection-for-h = Nobody enters without protection for { $hours } h after the last of the spray{ $when }, by the label of { $speaker }

## core/label/restricted.rs

label-for-certified-applicators-only-or-for = { $names } { $are } for certified applicators only, or for people under their direct supervision where local law allows it
label-a-record-is-owed-write-who = A record is owed: write who sprayed and the certificate's number into it.

## core/label/season.rs

label-the-label-of-limits-a-season = The label of { $name } limits { $active } a season, but no active of that name is typed for it
label-write-the-active-in-the-same = Write the active in the same way in both places.
label-the-season-total-on-the-label = The season total on the label cannot be compared: { $problem }
label-the-season-total-of-is-typed = The season total of { $active } is typed as "{ $most }", which is no mass over ground
label-type-it-like-4-lb-ae = Type it like "4 lb ae/ac".
label-counts-as-the-season-total-as = { $name } counts { $active } as { $short }, the season total as { $basis }
label-type-both-on-one-basis = Type both on one basis.
label-the-in-cannot-be-reckoned-without = The { $active } in { $name } cannot be reckoned without its density, so the season total is not judged
label-type-the-density-in-the-shed = Type the density in the shed.
label-this-pass-was-recorded-on-and = This pass was recorded on { $date } and is planned for { $date2 }; that record counts as another application
label-if-it-is-a-second-application = If it is a second application, plan it as a pass of its own.
label-is = is { $partly }
label-is-not-recorded = is not recorded
label-of-also-puts-on-and-so = "{ $name }" of { $date } also puts { $shared } on { $fields } and { $is }, so season totals, number and spacing of applications do not count { $counted }
label-record-it-or-take-it-out = Record it, or take it out if it was not sprayed.
label-on = { $what } on { $name } { $words }
label-records-so-far = records so far
label-in-all = in all
label-this-pass-brings-to-the-labels = { $name }: this pass brings { $what } to { $after } { $words }; the label's most is { $limit }
label-lower-the-rate-leave-the-field = Lower the rate, leave the field out, or choose another product.
label-the-season-total-of-on-leaves = The season total of { $what } on { $name } leaves out records: { $left_out }
label-mend-these-records-in-the-season = Mend these records in the season log.

## core/label/stage.rs

label-from = from { $from }
label-is-at-stops-at = { $name } is at { $stage }; { $name2 } stops at { $to_stage }
label-look-at-the-crop-again-before = Look at the crop again before the tank is filled.
label-without-a-stage = without a stage
label-at-stage = at "{ $stage }"
label-may-be-used-is-which-cannot = { $name } may be used { $ranges }; { $name2 } is { $stage }, which cannot be compared
label-is-at-may-be-used = { $name } is at { $stage }; { $name2 } may be used { $ranges }

## core/label/typed.rs

label-from-the-label-of-is-not = From the label of { $name }, { $missing } is not typed
label-type-it-in-the-shed-or = Type it in the shed, or read it from the label before the field is entered or harvested.
label-what-the-label-of-says-on = What the label of { $name } says on { $words } is
label-said-for-crops-the-crop-of-name-is-not = { $said } for { $crops }; the crop of { $name } is not typed
label-type-the-crop-on-the-fields = Type the crop on the field's page.
label-typed-for-and-not-judged-on = { $said } typed for { $crops } and not judged on { $crop }
label-write-the-crop-in-the-same = Write the crop in the same way in both places, or type what the label says for it.

## core/label/weather.rs

label-asks-for-air-of-is-expected = { $speaker } asks for air of { $word } { $limit }; { $air } is expected at the warmest
label-spray-on-a-cooler-day-or = Spray on a cooler day, or choose another product.
label-spray-on-a-warmer-day-or = Spray on a warmer day, or choose another product.
label-a-law = a law
label-a-label = a label
label-one-label = one label
label-one-law = one law
label-no-wind-suits-this-mix-asks = No wind suits this mix: { $asks_least } asks for at least { $low }, { $asks_most } for at most { $high }
label-split-the-pass = Split the pass.
label-ask-on-the-day = { $who } ask on the day: { $words }
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

## core/label/directions/build.rs

label-it-is-too-long-to-be = It is too long to be one sentence.
label-no-phrase-known-here-fits-it = No phrase known here fits it.
label-it-stands-under-the-heading-which = It stands under the heading "{ $heading }", which says more than a crop.
label-it-stands-under-the-heading-whose = It stands under the heading "{ $heading }", whose crop is not told for sure.
label-no-phrase-known-here-accounts-for = No phrase known here accounts for "{ $figure }" in it.
label-the-word-may-turn-what-it = The word "{ $word }" may turn what it says.
label-a-figure-in-it-cannot-be = A figure in it cannot be read.
label-the-form-takes-whole-days-and = The form takes whole days and hours alone.
label-it-does-not-say-over-which = It does not say over which ground its water goes.
label-one-class-so-neither-finer-nor = One class, so neither finer nor coarser is entered.
label-it-counts-an-active-that-is = It counts an active; that is told where the product has one active and its name is typed.
label-a-season-is-entered-as-a = A season is entered as a calendar year; the form can count over a crop or 12 months, too.
label-it-does-not-say-over-what = It does not say over what; a calendar year is entered.

## core/label/directions/crops.rs

label-it-speaks-of-with-the-word = It speaks of { $name } with the word "{ $doubt }", which may make it another crop.
label-it-speaks-of-several-crops-in = It speaks of several crops in several places.

## core/label/directions/mod.rs

label-the-text-is-too-long-to = The text is too long to be read to its end.

## core/label/directions/settle.rs

label-the-text-says-several-things-on = The text says several things on { $kind }; for what each holds must be typed.
label-the-text-has-several-times-between = The text has several times between applications.
label-with-the-number-of-applications-that = With the number of applications that is typed already.
label-the-form-takes-the-days-between = The form takes the days between applications together with their number, which the text does not give.
