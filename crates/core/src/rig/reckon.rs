//! One nozzle set for one pass: flow, pressure, droplets, and the speeds at which these stay where they belong.

use super::asked::Asked;
use super::flow::{self, Known, Law};
use super::nozzle;
use super::setting::{Between, CurvePoint, Setting};
use crate::farm::{Farm, Id, NozzleSet, Pass, Rig};
use crate::language::{Say, say, t};
use crate::quantity::{AsTyped, CarrierRate, Flow, Length, Pressure, Share, Speed, Units};

/// Points of a curve.
const POINTS: u32 = 40;

/// What a pass asks of any set.
#[derive(Clone, Debug)]
pub(super) struct Task<'a> {
    pub(super) farm: &'a Farm,
    pub(super) pass: &'a Pass,
    pub(super) units: Units,
    pub(super) rig: &'a Rig,
    pub(super) carrier: CarrierRate,
    pub(super) speed: Speed,
    /// Water that a nozzle must be able to give, over spray.
    pub(super) factor: f64,
    /// The pressure typed for the pass, else the rig's usual one.
    pub(super) pressure: Option<Pressure>,
    pub(super) asked: Asked,
}

impl Task<'_> {
    /// The shares of the time that pulsed valves may stand open.
    pub(super) fn may_open(&self) -> Option<Between<Share>> {
        let pulse = self.rig.pulse.as_ref()?;
        // More than always is not possible, whatever is typed.
        Some(Between { least: pulse.least.value(), most: pulse.most.value().min(Share::from_percent(100.0)) })
    }
}

/// A set as far as it can be reckoned.
#[derive(Clone, Debug)]
pub(super) struct Reckoned<'a> {
    pub(super) id: &'a Id,
    pub(super) set: &'a NozzleSet,
    pub(super) setting: Setting,
    pub(super) law: Option<(Law, Known)>,
    pub(super) width: Option<Length>,
    /// Pressures of the nozzle maker's table.
    pub(super) range: Option<Between<Pressure>>,
    /// Pressures in that range at which the droplets suit the labels, in runs.
    pub(super) runs: Vec<Between<Pressure>>,
    /// What is not typed.
    pub(super) lacks: Vec<Lack>,
}

/// What of a set is not typed.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Lack {
    RatingAboveNothing,
    Rating,
    Layout,
    PressuresInOrder,
    Pressures,
    HeldPressure,
    Droplets,
}

impl Lack {
    pub(super) fn words(self) -> &'static str {
        match self {
            Self::RatingAboveNothing => t!("rig-a-rating-above-nothing"),
            Self::Rating => t!("rig-its-rating"),
            Self::Layout => t!("rig-the-layout-of-its-nozzles"),
            Self::PressuresInOrder => t!("rig-a-least-pressure-below-its-most"),
            Self::Pressures => t!("rig-its-range-of-pressure"),
            Self::HeldPressure => t!("rig-the-pressure-it-is-held-at"),
            Self::Droplets => t!("rig-its-droplet-classes"),
        }
    }
}

/// What a nozzle gives of the spray at a pressure.
pub(super) fn sprayed(law: Law, pressure: Pressure, task: &Task) -> Flow {
    law.flow(pressure) * (1.0 / task.factor)
}

/// The share of the time that pulsed valves must stand open for a flow.
fn duty(flow: Flow, law: Law, pressure: Pressure, task: &Task) -> Option<Share> {
    flow.ratio(sprayed(law, pressure, task)).map(Share::from_fraction)
}

/// How long valves stand open, in whole per cent; beyond an end that reads alike, on which side of it.
pub(super) fn open_words(duty: Share, may: Between<Share>) -> Say {
    let shown = duty.show_whole();
    if duty.exceeds(may.most) && may.most.show_whole() == shown {
        say("card-just-over").with("share", shown)
    } else if may.least.exceeds(duty) && may.least.show_whole() == shown {
        say("card-just-under").with("share", shown)
    } else {
        shown.into()
    }
}

/// Whether a value lies between two ends.
pub(super) fn within<T: Copy>(between: Between<T>, value: T, exceeds: impl Fn(T, T) -> bool) -> bool {
    !exceeds(between.least, value) && !exceeds(value, between.most)
}

/// Reckons a set for a pass.
pub(super) fn reckon<'a>(task: &Task<'a>, id: &'a Id, set: &'a NozzleSet) -> Reckoned<'a> {
    let width = set.layout.as_ref().and_then(flow::width_of_a_nozzle);
    let law = flow::law_of(task.farm, task.pass, id, set);
    let range = nozzle::range(set);
    let mut reckoned = Reckoned {
        id,
        set,
        setting: Setting {
            set: id.clone(),
            name: set.name.clone(),
            speed: task.speed,
            flow: width.map(|width| flow::needed(task.carrier, task.speed, width)),
            pressure: None,
            duty: None,
            classes: None,
            speeds: None,
            pressures: None,
            curve: Vec::new(),
        },
        law,
        width,
        range,
        runs: runs(set, &task.asked, range),
        lacks: Vec::new(),
    };
    reckoned.lacks = lacks(task, &reckoned);
    let point = reckoned.at(task, task.speed);
    let setting = &mut reckoned.setting;
    // Pulsed valves hold the pressure, whatever the flow.
    setting.pressure = point.map(|point| point.pressure).or_else(|| task.rig.pulse.as_ref().and(task.pressure));
    setting.duty = point.and_then(|point| point.duty);
    setting.classes = setting.pressure.and_then(|pressure| nozzle::classes(set, pressure));
    let speeds = reckoned.speeds(task);
    reckoned.setting.pressures = speeds.and_then(|speeds| {
        let pressure = |speed| reckoned.at(task, speed).map(|point| point.pressure);
        Some(Between { least: pressure(speeds.least)?, most: pressure(speeds.most)? })
    });
    reckoned.setting.speeds = speeds;
    reckoned.setting.curve = reckoned.curve(task);
    reckoned
}

fn lacks(task: &Task, reckoned: &Reckoned) -> Vec<Lack> {
    let (set, pulsed) = (reckoned.set, task.rig.pulse.is_some());
    let ends_typed = set.least.is_some() && set.most.is_some();
    [
        (reckoned.law.is_none(), if set.rated.is_some() { Lack::RatingAboveNothing } else { Lack::Rating }),
        (reckoned.width.is_none(), Lack::Layout),
        (reckoned.range.is_none(), if ends_typed { Lack::PressuresInOrder } else { Lack::Pressures }),
        (pulsed && task.pressure.is_none(), Lack::HeldPressure),
        (task.asked.droplets.is_some() && set.droplets.is_empty(), Lack::Droplets),
    ]
    .into_iter()
    .filter_map(|(lacks, what)| lacks.then_some(what))
    .collect()
}

/// The runs of pressure, inside the range, at which the droplets surely suit the labels. Between two lines of the table they
/// do where both lines do. Without a table, or where no label asks, that is the whole range.
fn runs(set: &NozzleSet, asked: &Asked, range: Option<Between<Pressure>>) -> Vec<Between<Pressure>> {
    let Some(range) = range else { return Vec::new() };
    if asked.droplets.is_none() || set.droplets.is_empty() {
        return vec![range];
    }
    let mut lines: Vec<Pressure> = set.droplets.iter().map(|line| line.at.value()).collect();
    lines.sort_unstable();
    lines.dedup();
    let mut runs = Vec::new();
    let mut open: Option<Between<Pressure>> = None;
    for at in lines {
        if nozzle::classes(set, at).is_some_and(|classes| asked.suit(classes)) {
            open = Some(Between { least: open.map_or(at, |run| run.least), most: at });
        } else {
            runs.extend(open.take());
        }
    }
    runs.extend(open);
    runs.into_iter()
        .map(|run| Between { least: run.least.max(range.least), most: run.most.min(range.most) })
        .filter(|run| run.least <= run.most)
        .collect()
}

impl Reckoned<'_> {
    /// What driving at a speed takes; `None` where the rating, the layout or the pressure of pulsed valves is not typed.
    pub(super) fn at(&self, task: &Task, speed: Speed) -> Option<CurvePoint> {
        let (law, _) = self.law?;
        let flow = flow::needed(task.carrier, speed, self.width?);
        let (pressure, duty) = match &task.rig.pulse {
            Some(_) => {
                let pressure = task.pressure?;
                (pressure, Some(duty(flow, law, pressure, task)?))
            }
            None => (law.pressure(flow * task.factor), None),
        };
        let open = duty.is_none_or(|duty| task.may_open().is_some_and(|may| within(may, duty, Share::exceeds)));
        let allowed = open
            && self.runs.iter().any(|run| within(*run, pressure, Pressure::exceeds))
            && task.asked.speed.is_none_or(|most| !speed.exceeds(most));
        Some(CurvePoint { speed, pressure, classes: nozzle::classes(self.set, pressure), allowed, duty })
    }

    /// The run of pressures that holds a pressure, else the one nearest to it.
    pub(super) fn nearest_run(&self, pressure: Pressure) -> Option<Between<Pressure>> {
        let apart = |run: &Between<Pressure>| (run.least - pressure).max(pressure - run.most).max(Pressure::ZERO);
        self.runs.iter().copied().min_by_key(apart)
    }

    /// The speeds at which pressure, valves, droplets and the labels' speed all fit: those about the speed planned.
    fn speeds(&self, task: &Task) -> Option<Between<Speed>> {
        let ((law, _), width, pressure) = (self.law?, self.width?, self.setting.pressure?);
        let run = self.nearest_run(pressure)?;
        let speed = |flow| flow::speed(flow, task.carrier, width);
        let (least, most) = if let Some(may) = task.may_open() {
            if !within(run, pressure, Pressure::exceeds) {
                return None;
            }
            let full = sprayed(law, pressure, task);
            (speed(full * may.least.to_fraction())?, speed(full * may.most.to_fraction())?)
        } else {
            (speed(sprayed(law, run.least, task))?, speed(sprayed(law, run.most, task))?)
        };
        let most = task.asked.speed.map_or(most, |limit| limit.min(most));
        (!least.exceeds(most)).then_some(Between { least, most })
    }

    /// Points from a little below the speeds that fit to a little above, the planned one among them.
    fn curve(&self, task: &Task) -> Vec<CurvePoint> {
        let planned = task.speed;
        let (low, high) = match self.setting.speeds {
            Some(fit) => ((fit.least * 0.8).min(planned * 0.9), (fit.most * 1.2).max(planned * 1.1)),
            None => (planned * 0.5, planned * 1.5),
        };
        let step = (high - low) * (1.0 / f64::from(POINTS));
        (0..=POINTS).filter_map(|at| self.at(task, low + step * f64::from(at))).collect()
    }

    /// The speed to drive, nearest to the planned one among those that fit: the planned one itself, else in whole tenths.
    pub(super) fn drive(&self, task: &Task) -> Option<Speed> {
        let fit = self.setting.speeds?;
        if within(fit, task.speed, Speed::exceeds) {
            return Some(task.speed);
        }
        let tenths = in_tenths(fit, task.units)?;
        Some(if task.speed > tenths.most { tenths.most } else { tenths.least })
    }
}

/// The whole tenths of a mile or kilometre an hour that lie in a range; `None` where none does.
pub fn in_tenths(speeds: Between<Speed>, units: Units) -> Option<Between<Speed>> {
    let tenth = match units {
        Units::Metric => Speed::from_kilometres_per_hour(0.1),
        Units::UsCustomary | Units::Imperial => Speed::from_miles_per_hour(0.1),
    };
    // A range that ends on a tenth holds it, whatever the last bit says.
    let count = |speed: Speed| speed.ratio(tenth).unwrap_or_default();
    let (least, most) = ((count(speeds.least) - 1e-6).ceil(), (count(speeds.most) + 1e-6).floor());
    (least <= most && most > 0.0).then(|| Between { least: tenth * least, most: tenth * most })
}

/// The pressure of a pass; `None` where none is typed or it is nothing.
pub(super) fn pressure_of(farm: &Farm, pass: &Pass) -> Option<Pressure> {
    pass.pressure_in(farm).map(AsTyped::value).filter(|pressure| !pressure.is_zero())
}
