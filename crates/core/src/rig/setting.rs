//! How a nozzle set is to be set for a pass.

use super::asked::{Asked, speed_of};
use super::choose::{self, against, beyond};
use super::flow::{self, Known, of_a_nozzle};
pub use super::reckon::in_tenths;
use super::reckon::{Lack, Reckoned, Task, open_words, pressure_of, reckon, sprayed, within};
use super::{density, fitted, nozzle, set_of};
use crate::farm::{CarrierKind, Droplets, Farm, Id, Layout, NozzleSet, Pass, Rig};
use crate::finding::{Basis, Finding, Subject};
use crate::label::listed;
use crate::language::{Say, t};
use crate::quantity::{CarrierRate, Density, Flow, Pressure, Quantity, Share, Speed};
use crate::working::Working;

/// How far the volume that a typed pressure gives may be off the planned one before it is said. Common practice, no source.
const VOLUME_OFF: f64 = 0.05;
/// How far a rating may be off its size. Common practice, no source.
const SIZE_OFF: f64 = 0.05;

/// A lower and an upper end, both included.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Between<T> {
    /// The lower end.
    pub least: T,
    /// The upper end.
    pub most: T,
}

/// Droplet classes at a pressure. Between two lines of the nozzle maker's table it may be either.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Classes {
    /// The finest that it may be.
    pub finest: Droplets,
    /// The coarsest.
    pub coarsest: Droplets,
}

/// How a nozzle set is set for a pass, as far as it can be told.
#[derive(Clone, Debug, PartialEq)]
pub struct Setting {
    /// The set.
    pub set: Id,
    /// Its name.
    pub name: String,
    /// The speed this is for.
    pub speed: Speed,
    /// What each nozzle must give of the spray; `None` where its layout is not typed.
    pub flow: Option<Flow>,
    /// The pressure at which it gives that, or at which pulsed valves hold it; `None` where what it takes is not typed.
    pub pressure: Option<Pressure>,
    /// The share of the time that the valves stand open, with pulsed valves.
    pub duty: Option<Share>,
    /// Droplet classes at that pressure; `None` where the table does not reach.
    pub classes: Option<Classes>,
    /// Speeds at which pressure and droplets stay inside the set's range and the labels; `None` where there is none. Where the
    /// set has no droplet table, they hold for pressure and speed alone.
    pub speeds: Option<Between<Speed>>,
    /// The pressures that belong to those speeds.
    pub pressures: Option<Between<Pressure>>,
    /// Pressure and droplets over speed, for the plot.
    pub curve: Vec<CurvePoint>,
}

impl Setting {
    /// The share of the time that the valves stand open, in whole per cent; more than always is said to be that.
    pub fn duty_words(&self) -> Option<String> {
        self.duty_said().map(|duty| duty.aloud())
    }

    /// The same in any language.
    pub(crate) fn duty_said(&self) -> Option<Say> {
        let always = Between { least: Share::ZERO, most: Share::from_percent(100.0) };
        self.duty.map(|duty| open_words(duty, always))
    }
}

/// One point of pressure and droplets over speed.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct CurvePoint {
    /// The speed.
    pub speed: Speed,
    /// The pressure it takes.
    pub pressure: Pressure,
    /// The droplet classes there.
    pub classes: Option<Classes>,
    /// Whether range and labels allow it.
    pub allowed: bool,
    /// The share of the time that the valves stand open, with pulsed valves.
    pub duty: Option<Share>,
}

/// How well a set does a pass.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Fit {
    /// As planned.
    Suits,
    /// At another speed than planned.
    AtAnotherSpeed,
    /// Something is not typed, so it cannot be told.
    NotKnown,
    /// At no speed.
    No,
}

/// A nozzle set with its place among the rig's.
#[derive(Clone, Debug, PartialEq)]
pub struct RankedSet {
    /// How it is set.
    pub setting: Setting,
    /// How well it does the pass.
    pub fit: Fit,
    /// The speed to drive with it.
    pub speed: Option<Speed>,
    /// Whether it is the set of the pass.
    pub chosen: bool,
    /// Why it stands here, each with its basis.
    pub reasons: Vec<(String, Basis)>,
}

/// The setting of a pass with its set, and the rig's sets in order of how well they do it.
pub(crate) fn judge(
    farm: &Farm,
    pass_id: &Id,
    pass: &Pass,
    carrier: CarrierRate,
    findings: &mut Vec<Finding>,
    workings: &mut Vec<Working>,
) -> (Option<Setting>, Vec<RankedSet>) {
    let Some(rig) = farm.rigs.get(&pass.rig) else { return (None, Vec::new()) };
    let about = || Subject::Pass(pass_id.clone());
    let chosen = set_of(farm, pass);
    if chosen.is_none() && !pass.nozzles.is_empty() {
        findings.push(
            Finding::stop(
                about(),
                t!("rig-the-pass-takes-nozzle-set-which", nozzles = pass.nozzles, name = rig.name),
                Basis::Arithmetic,
            )
            .hint(t!("rig-choose-another-set-or-add-it")),
        );
    }
    if rig.sets.is_empty() {
        return (None, Vec::new());
    }
    // That the speed is not typed is said with the time to spray.
    let Some(speed) = speed_of(farm, pass) else {
        if pass.speed.is_some() || rig.speed.is_some() {
            findings.push(
                Finding::check(about(), t!("rig-the-speed-is-typed-as-nothing"), Basis::Arithmetic)
                    .hint(t!("rig-type-the-speed-for-the-rig")),
            );
        }
        return (None, Vec::new());
    };
    let (factor, dense) = density::of_pass(pass);
    let task = Task {
        farm,
        pass,
        units: farm.units,
        rig,
        carrier,
        speed,
        factor,
        pressure: pressure_of(farm, pass),
        asked: Asked::of(farm, pass),
    };
    let reckoned: Vec<Reckoned> = rig.sets.iter().map(|(id, set)| reckon(&task, id, set)).collect();
    let sets = choose::rank(&task, &reckoned, chosen.map(|set| set.0), fitted(rig).map(|set| set.0));
    let Some(one) = reckoned.iter().find(|one| Some(one.id) == chosen.map(|set| set.0)) else { return (None, sets) };
    workings.push(working(&task, one, dense));
    lacking(&task, one, about(), findings);
    typed(&task, pass, one, dense, &about, findings);
    outside(&task, one, about(), findings);
    contradicted(&task, pass, one, about(), findings);
    better(one, &sets, about(), findings);
    (Some(one.setting.clone()), sets)
}

/// The pressure of a pass with a set, without anything said about it: for whoever needs the droplets there.
pub(crate) fn pressure(
    farm: &Farm,
    pass: &Pass,
    rig: &Rig,
    id: &Id,
    set: &NozzleSet,
    carrier: CarrierRate,
) -> Option<Pressure> {
    if rig.pulse.is_some() {
        return pressure_of(farm, pass);
    }
    let (law, _) = flow::law_of(farm, pass, id, set)?;
    let flow = flow::needed(carrier, speed_of(farm, pass)?, flow::width_of_a_nozzle(set.layout.as_ref()?)?);
    Some(law.pressure(flow * density::of_pass(pass).0))
}

/// The arithmetic of the setting.
fn working(task: &Task, one: &Reckoned, dense: Option<Density>) -> Working {
    let units = task.units;
    let mut working = Working::new(t!("rig-setting-of", name = one.set.name));
    match &one.set.layout {
        Some(Layout::Band { width, nozzles, .. }) if *nozzles > 1 => {
            let each = one.width.map_or_else(String::new, |width| width.show(units));
            working = working.step(t!("rig-band-nozzles", width = width.show(units), nozzles = nozzles), each);
        }
        Some(Layout::Directed { rows, nozzles }) if *nozzles > 1 => {
            let each = one.width.map_or_else(String::new, |width| width.show(units));
            working = working.step(t!("rig-rows-apart-nozzles", rows = rows.show(units), nozzles = nozzles), each);
        }
        _ => {}
    }
    let (Some(width), Some(flow)) = (one.width, one.setting.flow) else { return working };
    working = working.step(
        t!(
            "rig-for-each-nozzle",
            carrier = task.carrier.show(units),
            speed = task.speed.show(units),
            width = width.show(units)
        ),
        of_a_nozzle(flow, units),
    );
    let water = flow * task.factor;
    if let Some(dense) = dense {
        let factor = crate::quantity::number::show(task.factor, 3);
        working = working
            .step(
                t!("rig-root-of-of-water", dense = dense.show(units), water = density::WATER.show(units)),
                factor.clone(),
            )
            .step(t!("rig-as-water", factor = factor), of_a_nozzle(water, units));
    }
    let (Some((law, known)), Some(pressure)) = (one.law, one.setting.pressure) else { return working };
    let known = match known {
        Known::Rated => t!("rig-a-nozzle-gives-rated").to_owned(),
        Known::Measured(date) => t!("rig-a-nozzle-gives-measured-on", date = date),
    };
    working = working
        .step(known, t!("rig-of-a-nozzle-at-at", of_a_nozzle = of_a_nozzle(law.flow, units), at = law.at.show(units)));
    working = if let Some(duty) = one.setting.duty_words() {
        let full = law.flow(pressure);
        working
            .step(
                t!(
                    "rig-root-of",
                    of_a_nozzle = of_a_nozzle(law.flow, units),
                    pressure = pressure.show(units),
                    at = law.at.show(units)
                ),
                of_a_nozzle(full, units),
            )
            .step(
                t!(
                    "rig-of-a-nozzle-of-a-nozzle2-valves-open",
                    of_a_nozzle = of_a_nozzle(water, units),
                    of_a_nozzle2 = of_a_nozzle(full, units)
                ),
                duty,
            )
    } else {
        working.step(
            format!("{} × ({} ÷ {})²", law.at.show(units), of_a_nozzle(water, units), of_a_nozzle(law.flow, units)),
            pressure.show(units),
        )
    };
    if !one.set.droplets.is_empty() {
        let class = one.setting.classes.map_or_else(|| t!("rig-not-listed").to_owned(), Classes::words);
        working = working.step(t!("rig-droplets-at-by-the-nozzle-makers", pressure = pressure.show(units)), class);
    }
    working
}

/// What the set lacks, in one Note. That its droplet classes are not typed is said where a label asks for them.
fn lacking(task: &Task, one: &Reckoned, about: Subject, findings: &mut Vec<Finding>) {
    let lacks: Vec<String> =
        one.lacks.iter().filter(|lack| **lack != Lack::Droplets).map(|lack| lack.words().to_owned()).collect();
    let unmeasured = task.rig.measured_flow && one.law.is_some_and(|(_, known)| known == Known::Rated);
    if lacks.is_empty() {
        if unmeasured {
            findings.push(
                Finding::note(about, t!("rig-no-catch-with-a-pressure-is", name = one.set.name), Basis::Arithmetic)
                    .hint(t!("rig-type-the-calibration-of-this-set")),
            );
        }
        return;
    }
    let size = nozzle::size(&one.set.size).filter(|_| one.set.rated.is_none());
    let hint = size.map_or_else(
        || t!("rig-type-it-in-the-shed").to_owned(),
        |size| {
            t!(
                "rig-type-it-in-the-shed-size",
                size = size.size,
                flow = size.us.flow,
                at = size.us.at,
                flow2 = size.metric.flow,
                at2 = size.metric.at
            )
        },
    );
    let text = t!("rig-lacks-so-not-all-of-its", name = one.set.name, lacks = listed(&lacks));
    findings.push(Finding::note(about, text, Basis::Arithmetic).hint(hint));
}

/// What was typed and does not hold: the carrier's density, the rating of a size, the band, the pressure of the pass.
fn typed(
    task: &Task,
    pass: &Pass,
    one: &Reckoned,
    dense: Option<Density>,
    about: &dyn Fn() -> Subject,
    findings: &mut Vec<Finding>,
) {
    let (units, name) = (task.units, &one.set.name);
    if pass.carrier_kind != CarrierKind::Water && dense.is_none() && one.law.is_some() {
        let (offered, source) = density::offered(pass.carrier_kind, units);
        findings.push(
            Finding::check(
                about(),
                t!("rig-the-density-of-the-is-not", carrier_kind = pass.carrier_kind.name()),
                Basis::Published(source),
            )
            .hint(t!("rig-type-the-density-of-the-pass", offered = offered)),
        );
    }
    if let Some((off, size)) = nozzle::off_its_size(one.set)
        && off > SIZE_OFF
        && let Some(rated) = &one.set.rated
    {
        findings.push(
            Finding::check(
                about(),
                t!(
                    "rig-is-typed-as-size-which-gives",
                    name = name,
                    size = size.size,
                    flow = size.us.flow,
                    at = size.us.at,
                    flow2 = rated.flow,
                    at2 = rated.at
                ),
                Basis::Practice,
            )
            .hint(t!("rig-look-at-the-nozzle-and-mend")),
        );
    }
    if let Some(Layout::Band { width, rows, .. }) = &one.set.layout
        && width.exceeds(rows.value())
    {
        findings.push(
            Finding::check(
                about(),
                t!("rig-bands-of-overlap-with-rows-apart", name = name, width = width, rows = rows),
                Basis::Arithmetic,
            )
            .hint(t!("rig-mend-the-band-or-the-rows")),
        );
    }
    // With pulsed valves the pressure is set, and the valves make the volume.
    let (Some(set), Some((law, _)), Some(width), Some(needs), true) =
        (&pass.pressure, one.law, one.width, one.setting.pressure, task.rig.pulse.is_none())
    else {
        return;
    };
    let flow = sprayed(law, set.value(), task);
    let Some(given) = flow::carrier(flow, task.speed, width) else { return };
    if given.ratio(task.carrier).is_some_and(|ratio| (ratio - 1.0).abs() > VOLUME_OFF) {
        let speed = flow::speed(flow, task.carrier, width).filter(|speed| !speed.is_zero());
        let slower = speed.map_or_else(String::new, |speed| {
            t!("rig-or-drive-with", speed = speed.show(units), set = set.show(units))
        });
        findings.push(
            Finding::check(
                about(),
                t!(
                    "rig-gives-with-at-is-planned",
                    name = name,
                    given = given.show(units),
                    set = set.show(units),
                    speed = task.speed.show(units),
                    carrier = task.carrier.show(units)
                ),
                Basis::Arithmetic,
            )
            .hint(t!("rig-set", needs = needs.show(units), slower = slower)),
        );
    }
}

/// Pressure or valves outside of what is typed for them.
fn outside(task: &Task, one: &Reckoned, about: Subject, findings: &mut Vec<Finding>) {
    let Some(point) = one.at(task, task.speed) else { return };
    // Ends that are not typed are those of the droplet table, which is another matter.
    let range = one.range.filter(|range| {
        beyond(*range, point.pressure)
            .is_some_and(|(above, _)| if above { one.set.most.is_some() } else { one.set.least.is_some() })
    });
    let shut = point.duty.zip(task.may_open()).is_some_and(|(duty, may)| !within(may, duty, Share::exceeds));
    if range.is_none() && !shut {
        return;
    }
    let texts: Vec<String> = against(task, one, &point)
        .into_iter()
        .filter(|(_, basis)| *basis == Basis::Arithmetic)
        .map(|why| why.0)
        .collect();
    let Some(text) = texts.first() else { return };
    let finding = Finding::check(about, format!("{}: {}", one.set.name, lower(text)), Basis::Arithmetic);
    findings.push(match choose::speeds(task, one.setting.speeds) {
        Some(speeds) => finding.hint(t!(
            "rig-it-does-or-take-another-set",
            carrier = task.carrier.show(task.units),
            speeds = speeds
        )),
        None => finding.hint(t!("rig-take-another-set-another-volume-or")),
    });
}

/// With a small letter in front.
fn lower(text: &str) -> String {
    let mut letters = text.chars();
    letters.next().map_or_else(String::new, |first| first.to_lowercase().chain(letters).collect())
}

/// A class typed for the pass that is not that of the table.
fn contradicted(task: &Task, pass: &Pass, one: &Reckoned, about: Subject, findings: &mut Vec<Finding>) {
    if let (Some(class), Some(classes), Some(pressure)) = (pass.droplets, one.setting.classes, one.setting.pressure)
        && (class < classes.finest || class > classes.coarsest)
    {
        let typed = t!(
            "rig-the-droplets-of-the-pass-are",
            class = class.name(),
            name = one.set.name,
            classes = classes.words(),
            pressure = pressure.show(task.units)
        );
        findings.push(if task.asked.suit(classes) {
            Finding::note(about, typed, Basis::Arithmetic).hint(t!("rig-the-class-typed-is-held-against"))
        } else {
            let asks =
                t!("rig-and-for", typed = typed, who = task.asked.who(), droplet_words = task.asked.droplet_words());
            Finding::check(about, asks, task.asked.places())
                .hint(t!("rig-the-class-typed-is-held-against-the-labels-see"))
        });
    }
}

/// A set that does the pass as planned, where the one of the pass does not.
fn better(one: &Reckoned, sets: &[RankedSet], about: Subject, findings: &mut Vec<Finding>) {
    let unsuited = sets.iter().any(|set| set.chosen && matches!(set.fit, Fit::AtAnotherSpeed | Fit::No));
    let Some(other) = sets.first().filter(|set| unsuited && set.fit == Fit::Suits) else { return };
    let Some((gives, basis)) = other.reasons.first() else { return };
    findings.push(
        Finding::check(about, t!("rig-does-not-suit-this-pass-as", name = one.set.name, gives = gives), basis.clone())
            .hint(t!("rig-fit-and-choose-it-for-the", name = other.setting.name)),
    );
}
