//! Spray that is in the tank before a pass, and spray that is left in it afterwards.
//!
//! What is in the tank counts as this mix: it must hold the same products in the same strength, in the same carrier and water.

use crate::farm::{Farm, Id, InTank, Line, Pass, Rig};
use crate::finding::{Basis, Finding, Subject};
use crate::label;
use crate::language::{t, yes_or_no};
use crate::loads::{Load, apart};
use crate::mix::line::over_ground;
use crate::plan::{Plan, plan_as};
use crate::quantity::{CarrierRate, Quantity, Volume};
use crate::season::Log;
use crate::words::all_of;

/// Strengths that lie this close are the same: nobody measures a thousandth.
const SAME: f64 = 1e-3;

/// What is in the tank before the first load, judged. `false` where the pass cannot be loaded upon it.
pub(crate) fn judge_tank(
    (farm, log): (&Farm, &Log),
    pass_id: &Id,
    pass: &Pass,
    fill: Volume,
    findings: &mut Vec<Finding>,
) -> bool {
    let Some(in_tank) = pass.begins_with() else { return true };
    let about = || Subject::Pass(pass_id.clone());
    let volume = in_tank.volume.show(farm.units);
    if in_tank.volume.exceeds(fill) {
        let text = t!("loads-are-in-the-tank-already-but", volume = volume, fill = fill.show(farm.units));
        findings.push(Finding::stop(about(), text, Basis::Arithmetic).hint(t!("loads-mend-what-is-in-the-tank")));
        return false;
    }
    match farm.passes.get_key_value(&in_tank.from) {
        None => findings.push(
            Finding::check(about(), t!("loads-are-in-the-tank-already-which", volume = volume), Basis::Arithmetic)
                .hint(t!("loads-choose-the-pass-that-they-were")),
        ),
        Some((id, _)) if id == pass_id => {}
        Some((id, other)) => {
            judge_source((farm, log), (pass_id, pass), in_tank, (id, other), findings);
            if let Some(why) = another_mix(farm, pass, other) {
                let text = t!("loads-the-in-the-tank-were-mixed", volume = volume, name = other.name, why = why);
                findings.push(
                    Finding::stop(about(), text, Basis::Arithmetic).hint(t!("loads-spray-it-out-where-it-belongs")),
                );
            }
        }
    }
    true
}

/// Whether the pass that the spray in the tank was mixed for leaves it, in this rig, by this day, and beside this ground.
fn judge_source(
    (farm, log): (&Farm, &Log),
    (pass_id, pass): (&Id, &Pass),
    in_tank: &InTank,
    (id, other): (&Id, &Pass),
    findings: &mut Vec<Finding>,
) {
    let units = farm.units;
    let volume = in_tank.volume.show(units);
    let mut check = |text: String, hint: &str| {
        findings.push(Finding::check(Subject::Pass(pass_id.clone()), text, Basis::Arithmetic).hint(hint));
    };
    if other.rig != pass.rig {
        let rig = farm.rigs.get(&other.rig).map_or(t!("loads-no-rig"), |rig| rig.name.as_str());
        check(
            t!("loads-the-volume-in-the-tank-were-mixed-for-name", volume = volume, name = other.name, rig = rig),
            t!("loads-choose-the-rig-that-holds-them"),
        );
    }
    if other.date > pass.date {
        check(
            t!("loads-the-in-the-tank-were-mixed-468", volume = volume, name = other.name, date = other.date),
            t!("loads-mend-the-days-or-what-is"),
        );
    }
    // As it is laid out whatever was in its own tank.
    let mut alone = other.clone();
    if let Some(in_tank) = &mut alone.in_tank {
        in_tank.from.clear();
    }
    let plan = plan_as(farm, log, id, &alone);
    let last = plan.fields.iter().rfind(|field| !field.area.is_zero()).map(|field| &field.field);
    let first = pass
        .fields
        .iter()
        .find(|id| farm.fields.get(id).is_some_and(|field| !crate::ground::covers(farm, pass, id, field).is_zero()));
    if let (Some(before), Some(after)) = (last, first)
        && before != after
        && let (Some(one), Some(next)) = (farm.fields.get_key_value(before), farm.fields.get_key_value(after))
        && let Some(reason) = apart::between(farm, pass, one, next).first()
    {
        check(
            t!("loads-what-is-in-the-tank-already", name = one.1.name, name2 = next.1.name, text = reason.text),
            t!("loads-make-sure-that-this-is-right"),
        );
    }
    // Once it is sprayed, what is typed is what was seen in the tank.
    if log.is_recorded(farm, id) {
        return;
    }
    let Some(left) = left_of(&alone, &plan) else {
        check(t!("loads-what-leaves-of-its-spray-cannot", name = other.name), t!("loads-settle-its-plan-or-make-sure"));
        return;
    };
    let (taken, takers) = takers(farm, id);
    if !agree(left, taken) {
        let beside: Vec<&str> = takers.iter().filter(|(id, _)| *id != pass_id).map(|(_, name)| *name).collect();
        check(
            t!(
                "loads-leaves-in-the-tank-this-pass",
                any = yes_or_no(!left.is_zero()),
                name = other.name,
                leaves = left.show(units),
                volume = volume,
                others = yes_or_no(!beside.is_empty()),
                names = all_of(beside)
            ),
            t!("loads-make-the-two-agree"),
        );
    }
}

/// What a pass leaves in the tank by its plan; `None` where that has no loads for another reason than that all is mixed.
fn left_of(pass: &Pass, plan: &Plan) -> Option<Volume> {
    let carried = pass.carried();
    let all_mixed = || Some(carried - plan.spray_volume).filter(|left| *left >= Volume::ZERO && carried.exceeds(*left));
    plan.loads.last().map(|load| load.left).or_else(all_mixed)
}

/// What passes go on with of the spray that a pass leaves, and which they are.
fn takers<'a>(farm: &'a Farm, from: &str) -> (Volume, Vec<(&'a Id, &'a str)>) {
    let all = farm.passes.iter().filter(|(id, _)| *id != from).filter_map(|(id, pass)| {
        let in_tank = pass.begins_with().filter(|in_tank| in_tank.from == from)?;
        Some((in_tank.volume.value(), (id, pass.name.as_str())))
    });
    let (volumes, takers): (Vec<Volume>, _) = all.unzip();
    (volumes.into_iter().sum(), takers)
}

/// Nobody reads a gauge to a hundredth.
fn agree(left: Volume, taken: Volume) -> bool {
    !taken.exceeds(left * 1.01) && !left.exceeds(taken * 1.01)
}

/// Whether two passes take the same spray, so that what is left of one can go on into the other.
pub fn same_spray(farm: &Farm, pass: &Pass, other: &Pass) -> bool {
    !pass.mix.is_empty() && another_mix(farm, pass, other).is_none()
}

/// In what the spray of another pass differs from this one's; `None` where it is the same.
fn another_mix(farm: &Farm, pass: &Pass, other: &Pass) -> Option<String> {
    let name = |id: &Id| farm.products.get(id).map_or_else(|| format!("\"{id}\""), |product| product.name.clone());
    if other.carrier_kind != pass.carrier_kind {
        return Some(t!("loads-it-is-carried-by", carrier_kind = other.carrier_kind.name()));
    }
    if other.water != pass.water {
        let water = farm.waters.get(&other.water).map_or(t!("loads-another-water"), |water| water.name.as_str());
        return Some(t!("loads-its-water-is", water = water));
    }
    let Some((here, there)) = pass.carrier_rate().zip(other.carrier_rate()) else {
        return Some(t!("loads-the-spray-volume-over-ground-is").to_owned());
    };
    if let Some(missing) = pass.mix.iter().find(|line| other.mix.iter().all(|typed| typed.product != line.product)) {
        return Some(t!("loads-is-not-in-it", product = name(&missing.product)));
    }
    // What a line puts into the same spray.
    let strength = |line: &Line, carrier: CarrierRate| {
        let product = farm.products.get(&line.product)?;
        Some(over_ground(line, product, carrier).ok()?.over(Volume::from_litres(1.0).ground(carrier)?))
    };
    for typed in &other.mix {
        let Some(line) = pass.mix.iter().find(|line| line.product == typed.product) else {
            return Some(t!("loads-is-in-it", product = name(&typed.product)));
        };
        let ratio = strength(typed, there).zip(strength(line, here)).and_then(|(there, here)| there.ratio(here));
        if ratio.is_none_or(|ratio| (ratio - 1.0).abs() > SAME) {
            return Some(t!("loads-the-strength-of-differs", product = name(&line.product)));
        }
    }
    None
}

/// The tank holds all that the pass takes.
pub(crate) fn nothing_to_mix(farm: &Farm, pass_id: &Id, in_tank: &InTank, takes: Volume) -> Finding {
    let units = farm.units;
    let left = in_tank.volume.value() - takes;
    let (volume, takes) = (in_tank.volume.show(units), takes.show(units));
    let text = if left.exceeds(in_tank.volume.value() * 1e-9) {
        t!("loads-more-is-in-the-tank-than-it-takes", volume = volume, takes = takes, left = left.show(units))
    } else {
        t!("loads-are-in-the-tank-already-and", volume = volume, takes = takes)
    };
    Finding::check(Subject::Pass(pass_id.clone()), text, Basis::Arithmetic)
        .hint(t!("loads-spray-it-out-and-decide-where"))
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
    let left = load.left.show(units);
    let (taken, takers) = takers(farm, pass_id);
    let nothing = !load.left.exceeds(load.volume * 1e-9);
    let any = yes_or_no(!nothing);
    if !takers.is_empty() {
        let names: Vec<String> = takers.iter().map(|(_, name)| (*name).to_owned()).collect();
        let text = t!(
            "loads-left-after-the-last-metre-on",
            any = any,
            left = left,
            passes = names.len(),
            names = label::listed(&names),
            taken = taken.show(units)
        );
        findings.push(if agree(load.left, taken) {
            Finding::note(about(), text, Basis::Arithmetic)
        } else {
            Finding::check(about(), text, Basis::Arithmetic).hint(t!("loads-make-the-two-agree"))
        });
        return;
    }
    let beyond = pass.beyond();
    if beyond.exceeds(load.left * (1.0 + 1e-6)) {
        let text = t!("loads-are-to-be-left-after-the", any = any, beyond = beyond.show(units), left = left);
        findings.push(Finding::check(about(), text, Basis::Arithmetic).hint(t!("loads-raise-the-last-of-them-or")));
        return;
    }
    if nothing {
        return;
    }
    let why = if load.left.exceeds(beyond) && beyond.is_zero() {
        t!("loads-mixed-beyond-the-ground")
    } else {
        t!("loads-as-typed-beyond-the-ground")
    };
    let (finding, hint) = match &rig.residual {
        Some(residual) if !load.left.exceeds(residual.value()) => (
            Finding::note(
                about(),
                t!(
                    "loads-are-left-after-the-last-metre",
                    left = left,
                    why = why,
                    residual = residual.show(units),
                    name = rig.name
                ),
                Basis::Arithmetic,
            ),
            "",
        ),
        Some(residual) => (
            Finding::check(
                about(),
                t!(
                    "loads-left-are-left-after-the-last-metre-why-only",
                    left = left,
                    why = why,
                    residual = residual.show(units),
                    name = rig.name
                ),
                Basis::Arithmetic,
            ),
            t!("loads-mix-less-or-plan-a-pass"),
        ),
        None => (
            Finding::check(
                about(),
                t!("loads-left-are-left-after-the-last-metre-why-what", left = left, why = why, name = rig.name),
                Basis::Arithmetic,
            ),
            t!("loads-type-what-stays-in-the-rig"),
        ),
    };
    findings.push(finding.hint(hint));
}
