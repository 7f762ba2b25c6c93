//! How a nozzle set is to be set for a pass.

use super::asked::{Asked, speed_of};
use super::choose::{self, against, beyond};
use super::flow::{self, Known, of_a_nozzle};
pub use super::reckon::in_tenths;
use super::reckon::{Reckoned, Task, open_words, pressure_of, reckon, sprayed, within};
use super::{density, fitted, nozzle, set_of};
use crate::farm::{CarrierKind, Droplets, Farm, Id, Layout, NozzleSet, Pass, Rig};
use crate::finding::{Basis, Finding, Subject};
use crate::label::listed;
use crate::language::{Language, Say};
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
        self.duty_said().map(|duty| duty.in_language(Language::English))
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
                format!("The pass takes nozzle set \"{}\", which {} does not have", pass.nozzles, rig.name),
                Basis::Arithmetic,
            )
            .hint("Choose another set, or add it to the rig in the shed."),
        );
    }
    if rig.sets.is_empty() {
        return (None, Vec::new());
    }
    // That the speed is not typed is said with the time to spray.
    let Some(speed) = speed_of(farm, pass) else {
        if pass.speed.is_some() || rig.speed.is_some() {
            findings.push(
                Finding::check(
                    about(),
                    "The speed is typed as nothing, so no setting can be reckoned",
                    Basis::Arithmetic,
                )
                .hint("Type the speed for the rig or the pass."),
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
    let mut working = Working::new(format!("Setting of {}", one.set.name));
    match &one.set.layout {
        Some(Layout::Band { width, nozzles, .. }) if *nozzles > 1 => {
            let each = one.width.map_or_else(String::new, |width| width.show(units));
            working = working.step(format!("band {} ÷ {nozzles} nozzles", width.show(units)), each);
        }
        Some(Layout::Directed { rows, nozzles }) if *nozzles > 1 => {
            let each = one.width.map_or_else(String::new, |width| width.show(units));
            working = working.step(format!("rows {} apart ÷ {nozzles} nozzles", rows.show(units)), each);
        }
        _ => {}
    }
    let (Some(width), Some(flow)) = (one.width, one.setting.flow) else { return working };
    working = working.step(
        format!("{} × {} × {}, for each nozzle", task.carrier.show(units), task.speed.show(units), width.show(units)),
        of_a_nozzle(flow, units),
    );
    let water = flow * task.factor;
    if let Some(dense) = dense {
        let factor = crate::quantity::number::show(task.factor, 3);
        working = working
            .step(format!("root of {} ÷ {} of water", dense.show(units), density::WATER.show(units)), factor.clone())
            .step(format!("× {factor}, as water"), of_a_nozzle(water, units));
    }
    let (Some((law, known)), Some(pressure)) = (one.law, one.setting.pressure) else { return working };
    let known = match known {
        Known::Rated => "rated".to_owned(),
        Known::Measured(date) => format!("measured on {date}"),
    };
    working = working.step(
        format!("a nozzle gives, {known}, of water"),
        format!("{} at {}", of_a_nozzle(law.flow, units), law.at.show(units)),
    );
    working = if let Some(duty) = one.setting.duty_words() {
        let full = law.flow(pressure);
        working
            .step(
                format!(
                    "{} × root of ({} ÷ {})",
                    of_a_nozzle(law.flow, units),
                    pressure.show(units),
                    law.at.show(units)
                ),
                of_a_nozzle(full, units),
            )
            .step(format!("{} ÷ {}, valves open", of_a_nozzle(water, units), of_a_nozzle(full, units)), duty)
    } else {
        working.step(
            format!("{} × ({} ÷ {})²", law.at.show(units), of_a_nozzle(water, units), of_a_nozzle(law.flow, units)),
            pressure.show(units),
        )
    };
    if !one.set.droplets.is_empty() {
        let class = one.setting.classes.map_or_else(|| "not listed".to_owned(), Classes::words);
        working = working.step(
            format!("droplets at {} by the nozzle maker's table, which holds for water", pressure.show(units)),
            class,
        );
    }
    working
}

/// What the set lacks, in one Note. That its droplet classes are not typed is said where a label asks for them.
fn lacking(task: &Task, one: &Reckoned, about: Subject, findings: &mut Vec<Finding>) {
    let lacks: Vec<String> =
        one.lacks.iter().filter(|lack| **lack != "its droplet classes").map(|lack| (*lack).to_owned()).collect();
    let unmeasured = task.rig.measured_flow && one.law.is_some_and(|(_, known)| known == Known::Rated);
    if lacks.is_empty() {
        if unmeasured {
            findings.push(
                Finding::note(
                    about,
                    format!(
                        "No catch with a pressure is typed for {} up to the day of this pass, so its rating is used and not \
                         the flow measured",
                        one.set.name
                    ),
                    Basis::Arithmetic,
                )
                .hint("Type the calibration of this set in the shed, or turn the measured flow off."),
            );
        }
        return;
    }
    let size = nozzle::size(&one.set.size).filter(|_| one.set.rated.is_none());
    let hint = size.map_or_else(
        || "Type it in the shed.".to_owned(),
        |size| {
            format!(
                "Type it in the shed; size {} means {} at {} or {} at {}, whichever the nozzle maker's table has.",
                size.size, size.us.flow, size.us.at, size.metric.flow, size.metric.at
            )
        },
    );
    let text = format!("{} lacks {}, so not all of its setting can be reckoned", one.set.name, listed(&lacks));
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
                format!(
                    "The density of the {} is not typed; the setting is reckoned as for water, and the nozzles would give less",
                    pass.carrier_kind.name()
                ),
                Basis::Published(source),
            )
            .hint(format!("Type the density of the pass: {offered}.")),
        );
    }
    if let Some((off, size)) = nozzle::off_its_size(one.set)
        && off > SIZE_OFF
        && let Some(rated) = &one.set.rated
    {
        findings.push(
            Finding::check(
                about(),
                format!(
                    "{name} is typed as size {}, which gives {} at {}; its rating is {} at {}",
                    size.size, size.us.flow, size.us.at, rated.flow, rated.at
                ),
                Basis::Practice,
            )
            .hint("Look at the nozzle and mend the size or the rating in the shed."),
        );
    }
    if let Some(Layout::Band { width, rows, .. }) = &one.set.layout
        && width.exceeds(rows.value())
    {
        findings.push(
            Finding::check(
                about(),
                format!("{name}: bands of {width} overlap, with rows {rows} apart; the whole ground is sprayed"),
                Basis::Arithmetic,
            )
            .hint("Mend the band or the rows in the shed."),
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
        let slower = speed
            .map_or_else(String::new, |speed| format!(", or drive {} with {}", speed.show(units), set.show(units)));
        findings.push(
            Finding::check(
                about(),
                format!(
                    "{name} gives {} with {} at {}; {} is planned",
                    given.show(units),
                    set.show(units),
                    task.speed.show(units),
                    task.carrier.show(units)
                ),
                Basis::Arithmetic,
            )
            .hint(format!("Set {}{slower}.", needs.show(units))),
        );
    }
}

/// Pressure or valves outside of what is typed for them.
fn outside(task: &Task, one: &Reckoned, about: Subject, findings: &mut Vec<Finding>) {
    let Some(point) = one.at(task, task.speed) else { return };
    // Ends that are not typed are those of the droplet table, which is another matter.
    let range = one.range.filter(|range| {
        beyond(*range, point.pressure)
            .is_some_and(|(word, _)| if word == "above" { one.set.most.is_some() } else { one.set.least.is_some() })
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
        Some(speeds) => {
            finding.hint(format!("It does {} {speeds}; or take another set or volume.", task.carrier.show(task.units)))
        }
        None => finding.hint("Take another set, another volume or another pressure."),
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
        let typed = format!(
            "The droplets of the pass are typed as {}; the table of {} has {} at {}",
            class.name(),
            one.set.name,
            classes.words(),
            pressure.show(task.units)
        );
        findings.push(if task.asked.suit(classes) {
            Finding::note(about, typed, Basis::Arithmetic)
                .hint("The class typed is held against the labels; take it out to go by the table.")
        } else {
            let asks = format!("{typed}, and {} for {}", task.asked.who(), task.asked.droplet_words());
            Finding::check(about, asks, task.asked.places()).hint(
                "The class typed is held against the labels. See which of the two is right: take the class out to go by the \
                 table, or mend the table in the shed.",
            )
        });
    }
}

/// A set that does the pass as planned, where the one of the pass does not.
fn better(one: &Reckoned, sets: &[RankedSet], about: Subject, findings: &mut Vec<Finding>) {
    let unsuited = sets.iter().any(|set| set.chosen && matches!(set.fit, Fit::AtAnotherSpeed | Fit::No));
    let Some(other) = sets.first().filter(|set| unsuited && set.fit == Fit::Suits) else { return };
    let Some((gives, basis)) = other.reasons.first() else { return };
    findings.push(
        Finding::check(
            about,
            format!("{} does not suit this pass as planned; another set does. {gives}", one.set.name),
            basis.clone(),
        )
        .hint(format!("Fit {} and choose it for the pass.", other.setting.name)),
    );
}
