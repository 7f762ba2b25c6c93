//! Rigs: tank, boom, usual setting and nozzles against what there is anywhere, against one another, and against the nozzle's own size.

use super::confusions::Kind;
use super::{Held, Offer, Slot, ranges};
use crate::farm::{Farm, Id, Layout, NozzleSet, Pass, Rated, Rig};
use crate::finding::{Basis, Finding, Subject};
use crate::language::t;
use crate::quantity::{AsTyped, Flow, Length, Pressure, Quantity, Speed, Units};
use crate::rig::flow::Law;
use crate::rig::nozzle;
use crate::rig::setting::{Between, Setting};

/// Boom and nozzles agree within so much: the last nozzles stand half a spacing inside.
const SAME: f64 = 0.05;
/// So far off, one of the figures is wrong and not merely rough. Common practice, no source.
const OFF: f64 = 1.25;
/// A rating is of its size within so much, and outside of so much of another. Common practice, no source.
const SIZE_OFF: f64 = 0.05;

/// A rig.
pub(super) fn judge(farm: &Farm, id: &Id, rig: &Rig, findings: &mut Vec<Finding>) {
    let units = farm.units;
    let name = &rig.name;
    let about = || Subject::Rig(id.clone());
    let tank = Held {
        kind: Kind::Volume,
        typed: &rig.tank,
        slot: Slot::Tank(id.clone()),
        about: about(),
        what: t!("plausible-the-tank-of", name = name),
        units,
    };
    if !rig.tank.is_zero() {
        findings.extend(tank.against(ranges::tank()));
    }
    let boom = rig.boom.as_ref().filter(|boom| !boom.is_zero()).map(|typed| Held {
        kind: Kind::Length,
        typed,
        slot: Slot::Boom(id.clone()),
        about: about(),
        what: t!("plausible-the-boom-of", name = name),
        units,
    });
    findings.extend(boom.as_ref().and_then(|boom| boom.against(ranges::boom())));
    if let Some(typed) = rig.speed.as_ref() {
        findings.extend(speed(
            typed,
            Slot::RigSpeed(id.clone()),
            about(),
            t!("plausible-the-speed-of", name = name),
            units,
        ));
    }
    if let Some(typed) = rig.height.as_ref() {
        findings.extend(height(
            typed,
            Slot::RigHeight(id.clone()),
            about(),
            t!("plausible-the-boom-height-of", name = name),
            units,
        ));
    }
    let fitted = crate::rig::fitted(rig).map(|(_, set)| set);
    if let Some(typed) = rig.pressure.as_ref() {
        findings.extend(pressure(
            typed,
            fitted,
            Slot::RigPressure(id.clone()),
            about(),
            t!("plausible-the-pressure-of", name = name),
            units,
        ));
    }
    for (set_id, set) in &rig.sets {
        let here = OfSet { rig: id, id: set_id, set, name: format!("{}, {}", rig.name, set.name), units };
        findings.extend(here.spacing(boom.as_ref()));
        here.rating(findings);
        findings.extend(here.droplets());
    }
}

/// What a pass has of its own.
pub(super) fn of_pass(farm: &Farm, id: &Id, pass: &Pass, findings: &mut Vec<Finding>) {
    let units = farm.units;
    let about = || Subject::Pass(id.clone());
    if let Some(typed) = pass.speed.as_ref() {
        let slot = Slot::PassSpeed(id.clone());
        findings.extend(speed(typed, slot, about(), t!("plausible-the-speed-of-the-pass").to_owned(), units));
    }
    if let Some(typed) = pass.height.as_ref() {
        let slot = Slot::PassHeight(id.clone());
        findings.extend(height(typed, slot, about(), t!("plausible-the-height-of-the-nozzles").to_owned(), units));
    }
    if let Some(typed) = pass.pressure.as_ref() {
        let set = crate::rig::set_of(farm, pass).map(|(_, set)| set);
        let slot = Slot::PassPressure(id.clone());
        findings.extend(pressure(
            typed,
            set,
            slot,
            about(),
            t!("plausible-the-pressure-of-the-pass").to_owned(),
            units,
        ));
    }
}

/// A speed at which the nozzles cannot do the pass, typed in a unit that is not the farm's own.
pub(super) fn of_setting(farm: &Farm, id: &Id, pass: &Pass, setting: &Setting) -> Option<Finding> {
    let Between { least, most } = setting.speeds?;
    let typed = pass.speed_in(farm)?;
    if ranges::speed().is_some_and(|ends| typed.value() > ends.most || typed.value() < ends.least) {
        // That is said of it by itself.
        return None;
    }
    if !(typed.exceeds(most) || least.exceeds(typed.value())) {
        return None;
    }
    let (slot, about) = match &pass.speed {
        Some(_) => (Slot::PassSpeed(id.clone()), Subject::Pass(id.clone())),
        None => (Slot::RigSpeed(pass.rig.clone()), Subject::Rig(pass.rig.clone())),
    };
    let held =
        Held { kind: Kind::Speed, typed, slot, about, what: t!("plausible-the-speed").to_owned(), units: farm.units };
    let own = if farm.units == Units::Metric { "km/h" } else { "mph" };
    let is_foreign = |text: &str| !text.trim_end().to_lowercase().ends_with(own);
    if !is_foreign(typed.text()) {
        return None;
    }
    let mut offers = held.offers(|meant| !meant.exceeds(most) && !least.exceeds(*meant));
    offers.retain(|offer| !is_foreign(&offer.text()));
    let why = t!(
        "plausible-does-this-volume-at-to",
        name = setting.name,
        least = least.show(farm.units),
        most = most.show(farm.units)
    );
    held.doubted(&why, t!("plausible-be-among-these"), Basis::Arithmetic, offers)
}

fn speed(typed: &AsTyped<Speed>, slot: Slot, about: Subject, what: String, units: Units) -> Option<Finding> {
    if typed.is_zero() {
        return None;
    }
    Held { kind: Kind::Speed, typed, slot, about, what, units }.against(ranges::speed())
}

fn height(typed: &AsTyped<Length>, slot: Slot, about: Subject, what: String, units: Units) -> Option<Finding> {
    if typed.is_zero() {
        return None;
    }
    Held { kind: Kind::Length, typed, slot, about, what, units }.against(ranges::height())
}

/// Against the nozzle maker's range, else against what booms have.
fn pressure(
    typed: &AsTyped<Pressure>,
    set: Option<&NozzleSet>,
    slot: Slot,
    about: Subject,
    what: String,
    units: Units,
) -> Option<Finding> {
    if typed.is_zero() {
        return None;
    }
    let held = Held { kind: Kind::Pressure, typed, slot, about, what, units };
    let Some((set, Between { least, most })) = set.and_then(|set| Some((set, nozzle::range(set)?))) else {
        return held.against(ranges::pressure());
    };
    // A little beside the range is a setting, and not a slip.
    if !(typed.exceeds(most * 2.0) || (least * 0.5).exceeds(typed.value())) {
        return None;
    }
    let offers = held.offers(|meant| !meant.exceeds(most) && !least.exceeds(*meant));
    let why = t!("plausible-is-for-to", name = set.name, least = least.show(units), most = most.show(units));
    held.doubted(&why, t!("plausible-be-among-these"), Basis::Arithmetic, offers)
}

/// A nozzle set of a rig.
struct OfSet<'a> {
    rig: &'a Id,
    id: &'a Id,
    set: &'a NozzleSet,
    name: String,
    units: Units,
}

impl OfSet<'_> {
    fn about(&self) -> Subject {
        Subject::Rig(self.rig.clone())
    }

    /// A droplet table that gets coarser with pressure.
    fn droplets(&self) -> Option<Finding> {
        let (low, high) = nozzle::coarser_with_pressure(self.set)?;
        let text = t!(
            "plausible-droplets-get-coarser-with-pressure",
            name = self.name,
            low = low.at.text(),
            finer = low.class.name(),
            high = high.at.text(),
            coarser = high.class.name()
        );
        let hint = t!("plausible-look-at-both-lines");
        Some(Finding::check(self.about(), text, Basis::Practice).hint(hint))
    }

    /// Spacing by number against the boom, else against how far nozzles stand apart anywhere.
    fn spacing(&self, boom: Option<&Held<Length>>) -> Option<Finding> {
        let Some(Layout::Broadcast { spacing }) = &self.set.layout else { return None };
        let held = Held {
            kind: Kind::Length,
            typed: spacing,
            slot: Slot::Spacing { rig: self.rig.clone(), set: self.id.clone() },
            about: self.about(),
            what: t!("plausible-the-spacing-of", name = self.name),
            units: self.units,
        };
        let (Some(boom), Some(count)) = (boom, self.set.count.filter(|count| *count > 1)) else {
            return held.against(ranges::spacing());
        };
        let reach = |spacing: Length| spacing * f64::from(count);
        let apart = |spacing: Length, boom: Length| reach(spacing).ratio(boom).unwrap_or(f64::INFINITY);
        if (1.0 / OFF..=OFF).contains(&apart(spacing.value(), boom.typed.value())) {
            return None;
        }
        let fits = |spacing: Length, boom: Length| (apart(spacing, boom) - 1.0).abs() <= SAME;
        let likely =
            |ends: Option<&ranges::Ends<Length>>, meant: &Length| ends.is_none_or(|ends| ends.is_likely(meant));
        let mut offers: Vec<Offer> =
            held.offers(|meant| fits(*meant, boom.typed.value()) && likely(ranges::spacing(), meant));
        offers.extend(boom.offers(|meant| fits(spacing.value(), *meant) && likely(ranges::boom(), meant)));
        let why = t!(
            "plausible-nozzles-so-far-apart-reach-over",
            count = count,
            reach = reach(spacing.value()).show(self.units),
            typed = boom.typed.text()
        );
        held.doubted(&why, t!("plausible-would-agree"), Basis::Arithmetic, offers)
    }

    /// The rating against the size typed, else against what nozzles give.
    fn rating(&self, findings: &mut Vec<Finding>) {
        let Some(rated) = &self.set.rated else { return };
        let flow = Held {
            kind: Kind::Flow,
            typed: &rated.flow,
            slot: Slot::RatedFlow { rig: self.rig.clone(), set: self.id.clone() },
            about: self.about(),
            what: t!("plausible-the-flow-of", name = self.name),
            units: self.units,
        };
        let at = Held {
            kind: Kind::Pressure,
            typed: &rated.at,
            slot: Slot::RatedAt { rig: self.rig.clone(), set: self.id.clone() },
            about: self.about(),
            what: t!("plausible-the-pressure-of-the-rating-of", name = self.name),
            units: self.units,
        };
        if rated.flow.is_zero() || rated.at.is_zero() {
            return;
        }
        let Some(size) = nozzle::size(&self.set.size) else {
            findings.extend(flow.against(ranges::nozzle_flow()));
            findings.extend(at.against(ranges::pressure()));
            return;
        };
        let off = |flow: Flow, at: Pressure| {
            let of = |defined: &Rated| Some((flow.ratio(Law::of(defined)?.flow(at))? - 1.0).abs());
            Some(of(&size.us)?.min(of(&size.metric)?))
        };
        if off(rated.flow.value(), rated.at.value()).is_none_or(|off| off <= OFF - 1.0) {
            return;
        }
        let is = |off: Option<f64>| off.is_some_and(|off| off <= SIZE_OFF);
        let mut offers = flow.offers(|meant| is(off(*meant, rated.at.value())));
        offers.extend(at.offers(|meant| is(off(rated.flow.value(), *meant))));
        let why = t!(
            "plausible-size-gives-at-and-it-is",
            size = size.size,
            flow = size.us.flow,
            at = size.us.at,
            at2 = rated.at.text()
        );
        findings.extend(flow.doubted(&why, t!("plausible-would-agree"), Basis::of_source(&size.source), offers));
    }
}
