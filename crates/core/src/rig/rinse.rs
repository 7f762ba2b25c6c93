//! What stays in the rig after the last load, and how it is rinsed.
//!
//! # References
//! Successive dilution: of a residual r, each rinse with v leaves r ÷ (r + v) of the strength; n rinses leave that to the n-th.
//! How much water a rinse takes is told in two ways that differ threefold and are not merged: 10 % of the tank for each rinse
//! (Purdue), and three portions that together hold 10 % (common practice). Both stand in `assets/cleaning.csv`.

use super::clean_out;
use crate::farm::{Farm, Field, Id, Pass, Rig};
use crate::finding::{Basis, Finding, Subject, TypedAt};
use crate::label::listed;
use crate::language::t;
use crate::quantity::number::{show, show_significant};
use crate::quantity::{Area, AsTyped, CarrierRate, Quantity, Share, Units, Volume};
use crate::season::Log;
use crate::working::Working;

/// What to do where the residual is not known.
fn type_it() -> &'static str {
    t!("rig-type-what-stays-in-tank-lines")
}

/// The plan for rinsing after a pass.
#[derive(Clone, Debug, PartialEq)]
pub struct RinsePlan {
    /// What stays in tank, lines and boom.
    pub residual: Volume,
    /// Water for the rinses that is on board; nothing where it is not typed.
    pub water: Volume,
    /// Ways to use it, the best first: those with the water on board, then those that publications print.
    pub ways: Vec<RinseWay>,
    /// Ground that the residual would still spray at the pass's volume: what to leave for the last of the spray.
    pub last_ground: Option<Area>,
    /// Where the last of the spray goes, in words.
    pub last: String,
    /// What runs through lines and boom before a new mix arrives at the nozzles.
    pub priming: Option<Priming>,
    /// The arithmetic.
    pub working: Working,
    /// Steps of cleaning before the next pass of this rig, each with its source; none where the next mix holds the same
    /// pesticides.
    pub steps: Vec<CleanStep>,
}

/// One way to use the rinsing water.
#[derive(Clone, Debug, PartialEq)]
pub struct RinseWay {
    /// How many rinses.
    pub rinses: u32,
    /// Water in each.
    pub each: Volume,
    /// Share of the spray's strength that is left.
    pub left: Share,
    /// Whether the water on board is enough for it.
    pub on_board: bool,
    /// Who prints this way; arithmetic where the water on board is divided.
    pub basis: Basis,
}

/// What runs through lines and boom before a new mix arrives at the nozzles.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Priming {
    /// What lines and boom hold.
    pub volume: Volume,
    /// The ground that this sprays, not yet at full strength.
    pub ground: Option<Area>,
}

/// A step of cleaning.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct CleanStep {
    /// What to do.
    pub what: String,
    /// Why, and on what it rests.
    pub basis: Basis,
}

/// The share of the strength that is left after some rinses; `None` where there is neither residual nor water.
///
/// # Examples
/// A residual of 10 gal rinsed with 120 gal at once keeps 7.7 %, with three times 40 gal 0.8 %.
/// ```
/// use tankard_core::quantity::Volume;
/// use tankard_core::rig::rinse::left;
/// let (ten, forty) = (Volume::from_us_gallons(10.0), Volume::from_us_gallons(40.0));
/// assert!(left(ten, forty, 3).is_some_and(|left| (left.to_percent() - 0.8).abs() < 1e-9));
/// ```
pub fn left(residual: Volume, each: Volume, rinses: u32) -> Option<Share> {
    let of_one = residual.ratio(residual + each)?;
    Some(Share::from_fraction(of_one.powi(i32::try_from(rinses).unwrap_or(i32::MAX))))
}

/// How many rinses it takes until no more than a share is left; `None` where no number up to 100 does it.
///
/// # Examples
/// With a residual of 1 % of the tank and rinses of 10 % of it, 1/20,000 takes five.
/// ```
/// use tankard_core::quantity::{Share, Volume};
/// use tankard_core::rig::rinse::rinses_to;
/// let (one, ten) = (Volume::from_us_gallons(1.0), Volume::from_us_gallons(10.0));
/// assert_eq!(rinses_to(one, ten, Share::from_fraction(1.0 / 20_000.0)), Some(5));
/// ```
pub fn rinses_to(residual: Volume, each: Volume, most: Share) -> Option<u32> {
    (1..=100).find(|rinses| left(residual, each, *rinses).is_some_and(|left| !left.exceeds(most)))
}

/// A strength in words: "0.8 %", and below a thousandth "1 part in 20,000".
pub fn strength(share: Share) -> String {
    let fraction = share.to_fraction();
    if fraction <= 0.0 {
        t!("rig-of-it-nothing").to_owned()
    } else if fraction < 0.001 {
        t!("rig-1-part-in", show = show((1.0 / fraction).round(), 0))
    } else {
        format!("{} %", show_significant(share.to_percent()))
    }
}

/// What stays in the rig after a pass, and how it is rinsed.
pub(crate) fn judge(
    farm: &Farm,
    log: &Log,
    pass_id: &Id,
    pass: &Pass,
    carrier: Option<CarrierRate>,
    findings: &mut Vec<Finding>,
) -> Option<RinsePlan> {
    let rig = farm.rigs.get(&pass.rig)?;
    let next = clean_out::next_of_rig(farm, log, pass_id, pass);
    if let Some((_, next)) = next {
        unclear(farm, pass, next, findings);
    }
    // No rig runs dry to nothing, and of nothing any rinse would seem enough.
    let Some(residual) = rig.residual.as_ref().map(AsTyped::value).filter(|residual| !residual.is_zero()) else {
        not_typed(farm, pass_id, pass, rig, next, findings);
        return None;
    };
    let units = farm.units;
    let water = rig.clean_water.as_ref().map_or(Volume::ZERO, AsTyped::value);
    let ways = ways(residual, water, rig.tank.value());
    let last_ground = carrier.and_then(|carrier| residual.ground(carrier));
    let priming = rig
        .lines
        .as_ref()
        .map(|lines| Priming { volume: lines.value(), ground: carrier.and_then(|carrier| lines.ground(carrier)) });
    // Below a fiftieth of the tank nobody will see it.
    if let Some(priming) = priming
        && priming.volume.exceeds(rig.tank.value() * 0.02)
    {
        let ground = priming.ground.map_or_else(String::new, |ground| t!("rig-on-about", ground = ground.show(units)));
        findings.push(
            Finding::note(
                Subject::Rig(pass.rig.clone()),
                t!(
                    "rig-lines-and-boom-of-hold-the",
                    name = rig.name,
                    volume = priming.volume.show(units),
                    ground = ground
                ),
                Basis::Arithmetic,
            )
            .hint(t!("rig-run-the-mix-to-the-nozzles")),
        );
    }
    if let Some((_, next)) = next {
        sensitive(farm, pass, rig, next, (residual, water), &ways, findings);
    }
    let steps = match next {
        Some((next_id, _)) => clean_out::between(farm, pass_id, next_id),
        None => clean_out::after(farm, pass_id),
    };
    let working = working(residual, water, rig, &ways, last_ground, units);
    let last = of_the_last(residual, last_ground, units);
    Some(RinsePlan { residual, water, ways, last_ground, last, priming, working, steps })
}

/// Where the residual is not typed, or as nothing: said once, with whom traces hurt and what a label asks for before the next
/// pass, so that neither is lost.
fn not_typed(
    farm: &Farm,
    pass_id: &Id,
    pass: &Pass,
    rig: &Rig,
    next: Option<(&Id, &Pass)>,
    findings: &mut Vec<Finding>,
) {
    let about = || Subject::Rig(pass.rig.clone());
    if rig.residual.is_some() {
        findings.push(
            Finding::check(about(), t!("rig-what-stays-in-when-it-runs", name = rig.name), Basis::Practice)
                .hint(type_it())
                .at(TypedAt::Residual),
        );
    } else if !rig.sets.is_empty() {
        findings.push(
            Finding::note(
                about(),
                t!("rig-what-stays-in-name-when-it-runs-dry-is", name = rig.name),
                Basis::Arithmetic,
            )
            .hint(type_it())
            .at(TypedAt::Residual),
        );
    }
    let Some((next_id, next)) = next else { return };
    for (row, fields) in clean_out::hurts(farm, pass, next) {
        let goes_to = goes_to(next, &named(&fields));
        let text = if rig.residual.is_some() {
            t!("rig-what-stays-in-is-nothing-so", goes_to = goes_to, says = row.says(), name = rig.name)
        } else {
            t!("rig-what-stays-in-is-not-typed-so", goes_to = goes_to, says = row.says(), name = rig.name)
        };
        findings.push(
            Finding::check(about(), text, row.basis())
                .hint(t!("rig-until-then-clean-the-rig-out"))
                .at(TypedAt::Residual),
        );
    }
    for step in clean_out::between(farm, pass_id, next_id) {
        if matches!(step.basis, Basis::Label(_)) {
            let text = t!("rig-before-of-the-rig-is-cleaned", name = next.name, date = next.date, what = step.what);
            findings.push(Finding::note(about(), text, step.basis));
        }
    }
}

/// Fields of the next pass of which it cannot be told whether traces of this mix hurt what grows there.
fn unclear(farm: &Farm, pass: &Pass, next: &Pass, findings: &mut Vec<Finding>) {
    for (row, fields) in clean_out::unclear(farm, pass, next) {
        let crops: Vec<String> = fields
            .iter()
            .map(|field| match field.crop.trim() {
                "" => t!("rig-whose-crop-is-not-typed", name = field.name),
                crop => format!("{} ({crop})", field.name),
            })
            .collect();
        findings.push(
            Finding::check(
                Subject::Rig(pass.rig.clone()),
                t!("rig-whether-traces-of-hurt-what-grows", goes_to = goes_to(next, &crops), what = row.what_said()),
                row.basis(),
            )
            .hint(t!("rig-type-the-crop-by-its-usual")),
        );
    }
}

fn named(fields: &[&Field]) -> Vec<String> {
    fields.iter().map(|field| field.name.clone()).collect()
}

fn goes_to(next: &Pass, fields: &[String]) -> String {
    t!("rig-of-goes-to", name = next.name, date = next.date, fields = listed(fields))
}

pub(super) fn ways(residual: Volume, water: Volume, tank: Volume) -> Vec<RinseWay> {
    let mut ways: Vec<RinseWay> = Vec::new();
    if !water.is_zero() {
        ways.extend([3_u32, 2, 1].into_iter().filter_map(|rinses| {
            let each = water * (1.0 / f64::from(rinses));
            Some(RinseWay {
                rinses,
                each,
                left: left(residual, each, rinses)?,
                on_board: true,
                basis: Basis::Arithmetic,
            })
        }));
    }
    ways.extend(clean_out::table().iter().filter(|row| row.kind == "rinse").filter_map(|row| {
        let (rinses, each) = (row.rinses?, tank * (row.percent? / 100.0));
        let on_board = !(each * f64::from(rinses)).exceeds(water);
        Some(RinseWay { rinses, each, left: left(residual, each, rinses)?, on_board, basis: row.basis() })
    }));
    ways.sort_by(|a, b| b.on_board.cmp(&a.on_board).then(a.left.cmp(&b.left)));
    ways
}

/// Where the last of the spray goes, in words.
fn of_the_last(residual: Volume, ground: Option<Area>, units: Units) -> String {
    let leave = ground
        .map_or_else(String::new, |ground| t!("rig-enough-for-leave-about-that-much", ground = ground.show(units)));
    let rule = clean_out::table().iter().find(|row| row.kind == "last");
    let rule = rule.map_or_else(String::new, |row| format!(" {}.", row.says()));
    t!("rig-about-stay-when-it-runs-dry", residual = residual.show(units), leave = leave, rule = rule)
}

/// Whether the next crop is hurt by traces of this mix, and whether the rinses take it that far.
fn sensitive(
    farm: &Farm,
    pass: &Pass,
    rig: &Rig,
    next: &Pass,
    (residual, water): (Volume, Volume),
    ways: &[RinseWay],
    findings: &mut Vec<Finding>,
) {
    for (row, fields) in clean_out::hurts(farm, pass, next) {
        let next_words = goes_to(next, &named(&fields));
        let Some(most) = row.left.map(Share::from_fraction) else {
            findings.push(
                Finding::note(
                    Subject::Rig(pass.rig.clone()),
                    t!(
                        "rig-is-cleaned-before-its-next-pass",
                        name = rig.name,
                        next_words = next_words,
                        says = row.says()
                    ),
                    row.basis(),
                )
                .hint(t!("rig-clean-it-out-as-the-labels")),
            );
            continue;
        };
        let tenth = rig.tank.value() * 0.1;
        let clean = match rinses_to(residual, tenth, most) {
            Some(rinses) => t!("rig-rinse-of-each-10-of-the", rinses = rinses, tenth = tenth.show(farm.units)),
            None => t!("rig-clean-the-rig-out-as-the").to_owned(),
        };
        let best = ways.iter().find(|way| way.on_board);
        let reached = best.is_some_and(|way| !way.left.exceeds(most));
        let on_board = match best {
            Some(way) => {
                t!("rig-the-of-rinsing-water-on-board", water = water.show(farm.units), left = strength(way.left))
            }
            None if water.is_zero() => t!("rig-the-rinsing-water-on-board-is").to_owned(),
            None => t!("rig-the-rinsing-water-on-board-does").to_owned(),
        };
        let text = format!("{next_words}. {}; {on_board}", row.says());
        let about = Subject::Rig(pass.rig.clone());
        findings.push(if reached {
            Finding::note(about, text, row.basis()).hint(t!("rig-rinse-in-three-parts-through-the"))
        } else {
            Finding::check(about, text, row.basis()).hint(clean)
        });
    }
}

fn working(
    residual: Volume,
    water: Volume,
    rig: &Rig,
    ways: &[RinseWay],
    last_ground: Option<Area>,
    units: Units,
) -> Working {
    let mut working =
        Working::new(t!("rig-rinsing")).step(t!("rig-what-stays-in", name = rig.name), residual.show(units));
    if let Some(ground) = last_ground {
        working = working.step(t!("rig-ground-it-would-still-spray"), ground.show(units));
    }
    let board = if water.is_zero() { t!("rig-not-typed").to_owned() } else { water.show(units) };
    working = working.step(t!("rig-rinsing-water-on-board"), board);
    for way in ways {
        let whose = if way.basis == Basis::Arithmetic { String::new() } else { format!(" ({})", way.basis.source()) };
        working = working.step(
            t!(
                "rig-to-the-power",
                rinses = way.rinses,
                each = way.each.show(units),
                residual = residual.show(units),
                whose = whose
            ),
            strength(way.left),
        );
    }
    for row in clean_out::table().iter().filter(|row| row.kind == "strength") {
        let most = row.left.map_or_else(String::new, |most| strength(Share::from_fraction(most)));
        working = working.step(format!("{} ({})", row.says(), row.basis().source()), most);
    }
    working
}
