//! What a calibration says: flow, speed, volume over ground, and which nozzles are worn or blocked.
//!
//! One file for each way to measure: [`catch`], [`acre_fraction`], [`course`], [`tank_level`]. What nozzles are held against
//! stands in [`limits`], the judging of nozzles in [`wear`], and what a pass must know of all this in [`age`].

pub mod acre_fraction;
pub mod age;
pub mod catch;
pub mod course;
pub mod limits;
pub mod tank_level;
pub mod wear;

pub use acre_fraction::acre_course;
pub(crate) use age::judge_pass;
pub use age::{latest, measured_flow};

use crate::farm::{Calibration, Farm, Id, NozzleSet, Rig, Test};
use crate::finding::{Basis, Finding, Subject};
use crate::language::t;
use crate::quantity::number::show;
use crate::quantity::{AsTyped, CarrierRate, Duration, Flow, Length, Pressure, Share, Speed, Units, Volume};
use crate::rig::flow::Law;
use crate::working::Working;

/// What a calibration comes to.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Calibrated {
    /// Mean flow of a nozzle, of water at the pressure of the test.
    pub flow: Option<Flow>,
    /// Mean flow against a new nozzle: +5 % is 5 % more.
    pub against_new: Option<Share>,
    /// Speed over the course.
    pub speed: Option<Speed>,
    /// Volume over ground: of the ground in the bands, where the set sprays bands.
    pub carrier: Option<CarrierRate>,
    /// Against what it was meant to be, where that is typed: the speed shown in the cab against the course, or the volume over
    /// ground against what the rig was set to.
    pub against_typed: Option<Share>,
    /// Each nozzle that was caught, from left to right.
    pub nozzles: Vec<Caught>,
    /// What there is to say.
    pub findings: Vec<Finding>,
    /// The arithmetic.
    pub workings: Vec<Working>,
}

/// One nozzle of a catch, or one row where all the nozzles of a row were caught together.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Caught {
    /// Its place on the boom, from 1 at the left end.
    pub place: usize,
    /// Its flow; of a row, the mean flow of its nozzles.
    pub flow: Flow,
    /// Against the average of those caught.
    pub against_average: Share,
    /// Against a new one, where the rating and the pressure of the test are typed.
    pub against_new: Option<Share>,
    /// What it looks like.
    pub state: State,
}

/// What a nozzle looks like, by the strictest of the published rules; the findings say which rule is whose.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum State {
    /// Inside the rules.
    Good,
    /// It gives too much against a new one or the average: worn.
    Worn,
    /// It gives too little: blocked, or its strainer is.
    Blocked,
    /// So far off that it is likely of another size.
    OtherSize,
}

impl State {
    /// In words.
    pub fn name(self) -> &'static str {
        match self {
            Self::Good => t!("rig-state-good"),
            Self::Worn => t!("rig-state-worn"),
            Self::Blocked => t!("rig-state-blocked"),
            Self::OtherSize => t!("rig-another-size"),
        }
    }
}

/// What a calibration of a rig comes to.
///
/// # Examples
/// 32 fl oz caught in 30 s are 0.5 gal/min.
/// ```
/// use tankard_core::farm::{Calibration, Farm, Rig, Test};
/// use tankard_core::quantity::AsTyped;
/// use tankard_core::rig::calibration::judge;
/// let mut farm = Farm::new("Example");
/// farm.rigs.insert("boom".to_owned(), Rig::new("Boom", AsTyped::parse("500 gal")?));
/// let calibration = Calibration {
///     date: jiff::civil::date(2031, 4, 2),
///     set: String::new(),
///     by: String::new(),
///     pressure: None,
///     test: Test::Catch { time: AsTyped::parse("30 s")?, caught: vec![Some(AsTyped::parse("32 fl oz")?)] },
///     note: String::new(),
/// };
/// let flow = judge(&farm, "boom", &calibration).flow.map(|flow| flow.to_us_gallons_per_minute());
/// assert!(flow.is_some_and(|flow| (flow - 0.5).abs() < 1e-9));
/// # Ok::<(), tankard_core::quantity::QuantityError>(())
/// ```
pub fn judge(farm: &Farm, rig_id: &str, calibration: &Calibration) -> Calibrated {
    let mut out = Calibrated::default();
    let about = Subject::Rig(rig_id.to_owned());
    let Some(rig) = farm.rigs.get(rig_id) else {
        out.findings.push(
            Finding::check(about, t!("rig-rig-is-not-in-the-shed", rig_id = rig_id), Basis::Arithmetic)
                .hint(t!("rig-choose-another-rig-or-add-it")),
        );
        return out;
    };
    if !calibration.set.is_empty() && !rig.sets.contains_key(&calibration.set) {
        out.findings.push(
            Finding::check(
                about.clone(),
                t!(
                    "rig-the-calibration-of-is-for-nozzle",
                    date = calibration.date,
                    set = calibration.set,
                    name = rig.name
                ),
                Basis::Arithmetic,
            )
            .hint(t!("rig-choose-the-set-that-was-fitted")),
        );
    }
    let measured = Measured {
        units: farm.units,
        about,
        set: set_of(rig, calibration).map(|(_, set)| set),
        pressure: calibration.pressure.as_ref().map(AsTyped::value),
    };
    match &calibration.test {
        Test::Catch { time, caught } => catch::judge(&measured, time.value(), caught, &mut out),
        Test::AcreFraction { time, caught } => acre_fraction::judge(&measured, time.value(), caught, &mut out),
        Test::Course { length, times, shown } => {
            course::judge(&measured, length.value(), times, shown.as_ref().map(AsTyped::value), &mut out);
        }
        Test::TankLevel { area, used, set_to } => {
            tank_level::judge(&measured, area.value(), used.value(), set_to.as_ref().map(AsTyped::value), &mut out);
        }
    }
    out
}

/// The nozzle set of a calibration: the one it names, else the one usually fitted.
pub(crate) fn set_of<'a>(rig: &'a Rig, calibration: &Calibration) -> Option<(&'a Id, &'a NozzleSet)> {
    if calibration.set.is_empty() { super::fitted(rig) } else { rig.sets.get_key_value(&calibration.set) }
}

/// What every way to measure needs to know.
pub(crate) struct Measured<'a> {
    units: Units,
    about: Subject,
    set: Option<&'a NozzleSet>,
    pressure: Option<Pressure>,
}

impl Measured<'_> {
    /// What cannot be reckoned with, as a Check.
    fn lacks(&self, text: impl Into<String>, hint: &str) -> Finding {
        Finding::check(self.about.clone(), text, Basis::Arithmetic).hint(hint)
    }

    /// What a new nozzle of the set gives of water at the pressure of the test; flow goes with the square root of pressure.
    fn new_flow(&self) -> Option<Flow> {
        let law = Law::of(self.set?.rated.as_ref()?)?;
        Some(law.flow(self.pressure?)).filter(|flow| !flow.is_zero())
    }
}

/// A volume in a time; `None` in no time.
fn flow_of(volume: Volume, time: Duration) -> Option<Flow> {
    (!time.is_zero()).then(|| Flow::from_cubic_metres_per_second(volume.to_cubic_metres() / time.to_seconds()))
}

/// A length in a time; `None` in no time.
fn speed_of(length: Length, time: Duration) -> Option<Speed> {
    (!time.is_zero()).then(|| Speed::from_metres_per_second(length.to_metres() / time.to_seconds()))
}

/// Seconds, to a tenth: a course is timed finer than a minute.
fn seconds(time: Duration) -> String {
    format!("{} s", show(time.to_seconds(), 1))
}

/// How far apart from something: "+12.1 %".
fn apart(share: Share) -> String {
    let percent = show(share.to_percent(), 1);
    if share.to_percent() > 0.0 { format!("+{percent} %") } else { format!("{percent} %") }
}

/// How far one quantity lies from another, as a share of that other.
fn against(ratio: Option<f64>) -> Option<Share> {
    ratio.map(|ratio| Share::from_fraction(ratio - 1.0))
}

/// Whether a share lies beyond a limit on either side, by more than the error of arithmetic.
fn beyond(share: Share, limit: Share) -> bool {
    Share::from_fraction(share.to_fraction().abs()).exceeds(limit)
}
