//! Spray that is in the tank before a pass, and spray that is left in it afterwards.
//!
//! What is in the tank counts as this mix: it must hold the same products in the same strength, in the same carrier and water.

use crate::farm::{Farm, Id, InTank, Line, Pass, Rig};
use crate::finding::{Basis, Finding, Subject};
use crate::label::listed;
use crate::loads::Load;
use crate::mix::line::over_ground;
use crate::quantity::{AsTyped, CarrierRate, Quantity, Volume};

/// Strengths that lie this close are the same: nobody measures a thousandth.
const SAME: f64 = 1e-3;

/// What is in the tank before the first load, judged. `false` where the pass cannot be loaded upon it.
pub(crate) fn judge_tank(farm: &Farm, pass_id: &Id, pass: &Pass, fill: Volume, findings: &mut Vec<Finding>) -> bool {
    let Some(in_tank) = pass.in_tank.as_ref().filter(|in_tank| !in_tank.volume.is_zero()) else { return true };
    let about = || Subject::Pass(pass_id.clone());
    let volume = in_tank.volume.show(farm.units);
    if in_tank.volume.exceeds(fill) {
        let text = format!("{volume} are in the tank already, but it is filled to {}", fill.show(farm.units));
        findings
            .push(Finding::stop(about(), text, Basis::Arithmetic).hint("Mend what is in the tank, or \"fill to\"."));
        return false;
    }
    match farm.passes.get_key_value(&in_tank.from) {
        None => findings.push(
            Finding::check(
                about(),
                format!("{volume} are in the tank already; which pass they were mixed for is not known, so they are taken to be this mix"),
                Basis::Arithmetic,
            )
            .hint("Choose the pass that they were mixed for, or make sure that products and strength are the same."),
        ),
        Some((id, _)) if id == pass_id => {}
        Some((_, other)) => {
            if let Some(why) = another_mix(farm, pass, other) {
                let text = format!("The {volume} in the tank were mixed for {}, which is another mix: {why}", other.name);
                findings.push(
                    Finding::stop(about(), text, Basis::Arithmetic)
                        .hint("Spray it out where it belongs and clean the tank, or choose the pass that it was mixed for."),
                );
            } else if let Some(why) = elsewhere(farm, pass, other) {
                let text = format!("The {volume} in the tank were mixed for {}, {why}", other.name);
                findings.push(
                    Finding::check(about(), text, Basis::Arithmetic)
                        .hint("Choose the pass that it was mixed for, or take what is in the tank out of this one."),
                );
            }
        }
    }
    true
}

/// Why the spray of another pass cannot be in the tank of this one, where that is so.
fn elsewhere(farm: &Farm, pass: &Pass, other: &Pass) -> Option<String> {
    if other.rig != pass.rig {
        let rig = farm.rigs.get(&other.rig).map_or("another rig", |rig| rig.name.as_str());
        Some(format!("which is sprayed with {rig}"))
    } else if other.date > pass.date {
        Some(format!("which is sprayed later, on {}", other.date))
    } else {
        None
    }
}

/// Whether two passes take the same spray, so that what is left of one can go on into the other.
pub fn same_spray(farm: &Farm, pass: &Pass, other: &Pass) -> bool {
    !pass.mix.is_empty() && another_mix(farm, pass, other).is_none()
}

/// In what the spray of another pass differs from this one's; `None` where it is the same.
fn another_mix(farm: &Farm, pass: &Pass, other: &Pass) -> Option<String> {
    let name = |id: &Id| farm.products.get(id).map_or_else(|| format!("\"{id}\""), |product| product.name.clone());
    if other.carrier_kind != pass.carrier_kind {
        return Some(format!("it is carried by {}", other.carrier_kind.name()));
    }
    if other.water != pass.water {
        let water = farm.waters.get(&other.water).map_or("another water", |water| water.name.as_str());
        return Some(format!("its water is {water}"));
    }
    let volume = |pass: &Pass| pass.carrier.as_ref().map(AsTyped::value).filter(|rate| !rate.is_zero());
    let Some((here, there)) = volume(pass).zip(volume(other)) else {
        return Some("the spray volume over ground is not typed, so that its strength is not known".to_owned());
    };
    if let Some(missing) = pass.mix.iter().find(|line| other.mix.iter().all(|typed| typed.product != line.product)) {
        return Some(format!("{} is not in it", name(&missing.product)));
    }
    // What a line puts into the same spray.
    let strength = |line: &Line, carrier: CarrierRate| {
        let product = farm.products.get(&line.product)?;
        Some(over_ground(line, product, carrier).ok()?.over(Volume::from_litres(1.0).ground(carrier)?))
    };
    for typed in &other.mix {
        let Some(line) = pass.mix.iter().find(|line| line.product == typed.product) else {
            return Some(format!("{} is in it", name(&typed.product)));
        };
        let ratio = strength(typed, there).zip(strength(line, here)).and_then(|(there, here)| there.ratio(here));
        if ratio.is_none_or(|ratio| (ratio - 1.0).abs() > SAME) {
            return Some(format!("the strength of {} differs", name(&line.product)));
        }
    }
    None
}

/// The tank holds all that the pass takes.
pub(crate) fn nothing_to_mix(farm: &Farm, pass_id: &Id, in_tank: &InTank, takes: Volume) -> Finding {
    let units = farm.units;
    let left = in_tank.volume.value() - takes;
    let left = if left.exceeds(in_tank.volume.value() * 1e-9) {
        format!(", and {} are left", left.show(units))
    } else {
        String::new()
    };
    let text = format!(
        "{} are in the tank already and the pass takes {}: no load is to be mixed{left}",
        in_tank.volume.show(units),
        takes.show(units)
    );
    Finding::check(Subject::Pass(pass_id.clone()), text, Basis::Arithmetic)
        .hint("Spray it out, and decide where the rest goes.")
}

/// What is left after the last metre, and what it is for.
pub(crate) fn judge_left(
    farm: &Farm,
    (pass_id, pass): (&Id, &Pass),
    rig: &Rig,
    loads: &[Load],
    findings: &mut Vec<Finding>,
) {
    let Some(load) = loads.last() else { return };
    let units = farm.units;
    let about = || Subject::Load(load.number);
    let is_left = load.left.exceeds(load.volume * 1e-9);
    let left = if is_left { load.left.show(units) } else { "Nothing".to_owned() };
    let takes = |other: &Pass| {
        let in_tank = other.in_tank.as_ref().filter(|in_tank| in_tank.from == *pass_id)?;
        Some(in_tank.volume.value()).filter(|volume| !volume.is_zero())
    };
    let others = farm.passes.iter().filter(|(id, _)| *id != pass_id);
    let next: Vec<(&str, Volume)> =
        others.filter_map(|(_, other)| Some((other.name.as_str(), takes(other)?))).collect();
    if !next.is_empty() {
        let taken: Volume = next.iter().map(|(_, taken)| *taken).sum();
        let names: Vec<String> = next.iter().map(|(name, _)| (*name).to_owned()).collect();
        let text = format!(
            "{left} {} left after the last metre; {} go{} on with {}",
            if is_left { "are" } else { "is" },
            listed(&names),
            if names.len() == 1 { "es" } else { "" },
            taken.show(units)
        );
        let same = !taken.exceeds(load.left * 1.01) && !load.left.exceeds(taken * 1.01);
        findings.push(if same {
            Finding::note(about(), text, Basis::Arithmetic)
        } else {
            Finding::check(about(), text, Basis::Arithmetic).hint("Make the two agree.")
        });
        return;
    }
    if !is_left {
        return;
    }
    let beyond = pass.extra.as_ref().map_or(Volume::ZERO, AsTyped::value);
    let why = if load.left.exceeds(beyond) && beyond.is_zero() {
        "mixed beyond the ground"
    } else {
        "as typed beyond the ground"
    };
    let (finding, hint) = match &rig.residual {
        Some(residual) if !load.left.exceeds(residual.value()) => (
            Finding::note(
                about(),
                format!(
                    "{left} are left after the last metre, {why}; {} stay in {} when it runs dry",
                    residual.show(units),
                    rig.name
                ),
                Basis::Arithmetic,
            ),
            "",
        ),
        Some(residual) => (
            Finding::check(
                about(),
                format!(
                    "{left} are left after the last metre, {why}; only {} of it stay in {} when it runs dry",
                    residual.show(units),
                    rig.name
                ),
                Basis::Arithmetic,
            ),
            "Mix less, or plan a pass that goes on with the rest.",
        ),
        None => (
            Finding::check(
                about(),
                format!(
                    "{left} are left after the last metre, {why}; what stays in {} when it runs dry is not typed",
                    rig.name
                ),
                Basis::Arithmetic,
            ),
            "Type what stays in the rig in the shed, or plan a pass that goes on with the rest.",
        ),
    };
    findings.push(finding.hint(hint));
}
