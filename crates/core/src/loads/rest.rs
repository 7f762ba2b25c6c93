//! When the field is not what the map said: what is left of a pass becomes a pass of its own.
//!
//! The pass keeps the loads that were filled and the ground that they covered. The rest takes what remains, with what is still
//! in the tank, on the ground that is really there, at the rates that now hold; so every limit is judged anew, and it gets
//! cards of its own. Both are parts of one application: neither counts as a second one on the label of the other.
//!
//! Ground is here what the rig drives over, as a field's area is typed; in band spraying the bands are a share of it.

use crate::language::{Language, speaking, t};
use indexmap::IndexMap;

use super::carry::same_spray;
use super::split::fewest_fills;
use crate::farm::{AreaFrom, Farm, Id, InTank, Line, Pass};
use crate::plan::Plan;
use crate::quantity::{Area, AsTyped, CarrierRate, Quantity, Units, Volume};
use crate::season::Log;
use crate::season::record::{area_in_digits, volume_in_digits};

/// Digits in which ground and loads are written, so that both parts together are the whole to a part in 10⁹.
const DIGITS: i32 = 12;

/// What came differently.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Change {
    /// How many loads were filled.
    pub after: u32,
    /// What of the last of them is still in the tank.
    pub in_tank: Option<AsTyped<Volume>>,
    /// The ground still to spray, by field, where it is not what the plan has.
    pub ground: IndexMap<Id, AsTyped<Area>>,
    /// Ground that came on top of that, by field.
    pub more: IndexMap<Id, AsTyped<Area>>,
    /// Another spray volume over ground from here on.
    pub carrier: Option<AsTyped<CarrierRate>>,
    /// Other rates from here on; empty for the same.
    pub mix: Vec<Line>,
}

/// The farm after a change.
#[derive(Clone, Debug, PartialEq)]
pub struct Changed {
    /// The farm.
    pub farm: Farm,
    /// The pass that sprays the rest; `None` where no ground is left.
    pub rest: Option<Id>,
    /// What was done beside that, in sentences.
    pub said: Vec<String>,
}

/// The ground that is still to be sprayed after some loads, by field in the order sprayed: what the loads to come cover, and
/// what the spray still in the tank would have covered.
pub fn ground_left(plan: &Plan, after: u32, in_tank: Volume) -> Vec<(Id, Area)> {
    beside(plan, &done(plan, after, in_tank))
}

/// The ground beside what is done, by field in the order sprayed.
fn beside(plan: &Plan, done: &[(Id, Area)]) -> Vec<(Id, Area)> {
    let left = plan.fields.iter().map(|field| (field.field.clone(), less(field.covered, area_of(done, &field.field))));
    left.filter(|(_, left)| !left.is_zero()).collect()
}

/// The ground of a field among those of several.
fn area_of(all: &[(Id, Area)], field: &Id) -> Area {
    all.iter().find(|(id, _)| id == field).map_or(Area::ZERO, |(_, area)| *area)
}

/// The ground covered by the loads filled so far, by field in the order sprayed.
fn done(plan: &Plan, after: u32, in_tank: Volume) -> Vec<(Id, Area)> {
    let mut done: Vec<(Id, Area)> = Vec::new();
    for (id, area) in plan.loads.iter().filter(|load| load.number <= after).flat_map(|load| &load.fields) {
        match done.iter_mut().find(|(known, _)| known == id) {
            Some((_, sum)) => *sum = *sum + *area,
            None => done.push((id.clone(), *area)),
        }
    }
    // What is still in the tank has not been sprayed: the ground that was to come last. What was to be left over had none.
    let beyond = plan.loads.iter().find(|load| load.number == after).map_or(Volume::ZERO, |load| load.left);
    let unsprayed = if (in_tank - beyond).exceeds(in_tank * 1e-9) { in_tank - beyond } else { Volume::ZERO };
    let mut back = plan.carrier.and_then(|carrier| unsprayed.ground(carrier)).unwrap_or(Area::ZERO);
    while let Some((_, area)) = done.last_mut() {
        if area.exceeds(back) {
            *area = *area - back;
            break;
        }
        back = back - *area;
        done.pop();
    }
    for (id, area) in &mut done {
        if let Some(field) = plan.fields.iter().find(|field| field.field == *id) {
            *area = area.ratio(field.area).map_or(*area, |share| field.covered * share);
        }
    }
    done
}

/// One area less another; what arithmetic leaves of nothing is nothing.
fn less(whole: Area, part: Area) -> Area {
    if whole.exceeds(part) && (whole - part).exceeds(whole * 1e-9) { whole - part } else { Area::ZERO }
}

/// Makes the change.
///
/// # Errors
/// What cannot be so, and what to type in its place.
pub fn rest(farm: &Farm, plan: &Plan, change: &Change) -> Result<Changed, String> {
    let pass = farm.passes.get(&plan.pass).ok_or(t!("loads-the-pass-is-gone"))?;
    let Some(carrier) = plan.carrier.filter(|_| !plan.loads.is_empty()) else {
        return Err(t!("loads-the-pass-has-no-loads-yet").to_owned());
    };
    let count = u32::try_from(plan.loads.len()).unwrap_or(u32::MAX);
    if change.after > count {
        return Err(t!("loads-the-pass-has-loads-cannot-have", count = count, after = change.after));
    }
    let tank = in_tank(plan, change, farm.units)?;
    let done = done(plan, change.after, tank);
    let mut said = Vec::new();
    let mut farm = farm.clone();
    let second = left(&mut farm, plan, change, &done, &mut said)?;
    let first = first(pass, plan, &done, change.after, tank, farm.units);
    if second.is_empty() {
        if tank.exceeds(Volume::ZERO) {
            let units = farm.units;
            said.push(match tank.ground(carrier) {
                Some(ground) => t!(
                    "loads-are-left-over-for",
                    tank = tank.show(units),
                    carrier = carrier.show(units),
                    ground = ground.show(units)
                ),
                None => t!("loads-are-left-over", tank = tank.show(units)),
            });
        }
        farm.passes.insert(plan.pass.clone(), first);
        return Ok(Changed { farm, rest: None, said });
    }
    if change.after == 0 {
        // Nothing was sprayed, so there is nothing to keep apart.
        let mut whole = pass.clone();
        take(&mut whole, second, change, farm.units);
        farm.passes.insert(plan.pass.clone(), whole);
        return Ok(Changed { farm, rest: Some(plan.pass.clone()), said });
    }
    let mut rest = pass.clone();
    rest.name = t!("loads-rest-of-a-pass", name = without_rest(&pass.name));
    rest.rest_of.clone_from(&plan.pass);
    rest.start = None;
    rest.sizes = pass.sizes.iter().skip(change.after as usize).cloned().collect();
    rest.in_tank = tank
        .exceeds(Volume::ZERO)
        .then(|| InTank { volume: volume_in_digits(tank, farm.units, DIGITS), from: plan.pass.clone() });
    take(&mut rest, second, change, farm.units);
    let id = farm.fresh_pass_id(&format!("{}-rest", plan.pass.trim_end_matches("-rest")));
    let place = farm.passes.get_index_of(&plan.pass).map_or(farm.passes.len(), |at| at + 1);
    farm.passes.insert(plan.pass.clone(), first);
    // What goes on from the pass goes on from its last load, which is now the rest's.
    for in_tank in farm.passes.values_mut().filter_map(|other| other.in_tank.as_mut()) {
        if in_tank.from == plan.pass {
            in_tank.from.clone_from(&id);
        }
    }
    farm.passes.shift_insert(place, id.clone(), rest);
    Ok(Changed { farm, rest: Some(id), said })
}

/// The name of a pass without the word that it is the rest of one, in whichever language that was written.
fn without_rest(name: &str) -> &str {
    Language::ALL.into_iter().fold(name, |name, language| {
        let word = speaking(language, || t!("loads-rest-of-a-pass", name = ""));
        name.trim_end_matches(word.as_str())
    })
}

/// What is still in the tank, where that can be.
fn in_tank(plan: &Plan, change: &Change, units: Units) -> Result<Volume, String> {
    let Some(typed) = &change.in_tank else { return Ok(Volume::ZERO) };
    let last = plan.loads.iter().find(|load| load.number == change.after);
    match last {
        _ if typed.is_zero() => Ok(Volume::ZERO),
        None => Err(t!("loads-no-load-was-filled-yet-so").to_owned()),
        Some(load) if typed.exceeds(load.volume) => Err(t!(
            "loads-load-was-of-it-cannot-be",
            number = load.number,
            volume = load.volume.show(units),
            typed = typed.show(units)
        )),
        Some(_) => Ok(typed.value()),
    }
}

/// The ground still to spray. A field that turns out larger than it is typed grows on the farm too.
fn left(
    farm: &mut Farm,
    plan: &Plan,
    change: &Change,
    done: &[(Id, Area)],
    said: &mut Vec<String>,
) -> Result<Vec<(Id, Area)>, String> {
    let units = farm.units;
    let mut left = beside(plan, done);
    let ids = change.ground.keys().chain(change.more.keys().filter(|id| !change.ground.contains_key(*id)));
    for id in ids {
        if !plan.fields.iter().any(|field| field.field == *id) {
            return Err(t!("loads-field-is-not-in-the-pass", id = id));
        }
        let (sprayed, planned) = (area_of(done, id), area_of(&left, id));
        let more = change.more.get(id).map_or(Area::ZERO, AsTyped::value);
        let there = change.ground.get(id).map_or(planned, AsTyped::value) + more;
        match left.iter_mut().find(|(known, _)| known == id) {
            Some((_, area)) => *area = there,
            None => left.push((id.clone(), there)),
        }
        if let Some(field) = farm.fields.get_mut(id) {
            let unsprayed = field.unsprayed.as_ref().map_or(Area::ZERO, AsTyped::value);
            let needs = sprayed + there + unsprayed;
            if (needs - field.ground()).exceeds(field.ground() * 1e-9) {
                field.area = area_in_digits(needs, units, DIGITS);
                // The boundary holds less than was driven over.
                field.area_from = AreaFrom::Stated;
                said.push(t!("loads-is-now-in-fields", name = field.name, area = field.area.show(units)));
            }
        }
    }
    // In the order in which the pass goes.
    left.sort_by_key(|(id, _)| plan.fields.iter().position(|field| field.field == *id));
    left.retain(|(_, area)| !area.is_zero());
    Ok(left)
}

/// The pass with the loads that were filled and the ground that they covered.
fn first(pass: &Pass, plan: &Plan, done: &[(Id, Area)], after: u32, tank: Volume, units: Units) -> Pass {
    let mut first = pass.clone();
    first.fields.retain(|id| done.iter().any(|(known, _)| known == id));
    first.parts = parts(pass, plan, done, units);
    first.sizes = plan
        .loads
        .iter()
        .filter(|load| load.number <= after)
        .map(|load| volume_in_digits(load.volume, units, DIGITS))
        .collect();
    first.extra = tank.exceeds(Volume::ZERO).then(|| volume_in_digits(tank, units, DIGITS));
    first
}

/// Gives a pass its ground, its volume and its rates.
fn take(pass: &mut Pass, ground: Vec<(Id, Area)>, change: &Change, units: Units) {
    pass.fields = ground.iter().map(|(id, _)| id.clone()).collect();
    pass.parts = ground.into_iter().map(|(id, area)| (id, area_in_digits(area, units, DIGITS))).collect();
    if let Some(carrier) = &change.carrier {
        pass.carrier = Some(carrier.clone());
    }
    if !change.mix.is_empty() {
        pass.mix.clone_from(&change.mix);
    }
}

/// How much of each field was sprayed, where that is less than the pass had.
fn parts(pass: &Pass, plan: &Plan, done: &[(Id, Area)], units: Units) -> IndexMap<Id, AsTyped<Area>> {
    done.iter()
        .filter_map(|(id, area)| {
            let planned = plan.fields.iter().find(|field| field.field == *id)?.covered;
            if (planned - *area).exceeds(planned * 1e-9) {
                return Some((id.clone(), area_in_digits(*area, units, DIGITS)));
            }
            pass.parts.get(id).map(|part| (id.clone(), part.clone()))
        })
        .collect()
}

/// The farm where what is left in the tank goes on into another pass: that begins with it.
///
/// # Errors
/// As [`rest`]; where ground of the pass is left, which the spray is for; and where the other pass is gone.
pub fn carry_into(farm: &Farm, plan: &Plan, change: &Change, other: &str) -> Result<Farm, String> {
    let tank = in_tank(plan, change, farm.units)?;
    let Changed { mut farm, rest, .. } = rest(farm, plan, change)?;
    if rest.is_some() {
        return Err(t!("loads-ground-of-the-pass-is-left").to_owned());
    }
    let units = farm.units;
    let other = farm.passes.get_mut(other).ok_or(t!("loads-the-other-pass-is-gone"))?;
    other.in_tank = Some(InTank { volume: volume_in_digits(tank, units, DIGITS), from: plan.pass.clone() });
    Ok(farm)
}

/// The farm where the loads of a pass are filled through into the next one of its rig, which takes the same spray: the last
/// load of the first holds as much of the second as finds room in it.
///
/// # Errors
/// Where the passes do not take the same spray, the second begins with spray already, or the last load has no room.
pub fn carry_over(farm: &Farm, first: &Plan, second: &Plan) -> Result<Farm, String> {
    let (Some(one), Some(other)) = (farm.passes.get(&first.pass), farm.passes.get(&second.pass)) else {
        return Err(t!("loads-one-of-the-passes-is-gone").to_owned());
    };
    let rig = farm.rigs.get(&one.rig).filter(|_| one.rig == other.rig && same_spray(farm, one, other));
    let Some(rig) = rig else { return Err(t!("loads-the-passes-do-not-take-the").to_owned()) };
    if other.in_tank.is_some() {
        return Err(t!("loads-the-second-pass-begins-with-spray").to_owned());
    }
    if !other.sizes.is_empty() {
        return Err(t!("loads-loads-of-the-second-pass-are").to_owned());
    }
    let (full, other_full) = (one.filled_to(rig), other.filled_to(rig));
    if first.loads.is_empty() {
        return Err(t!("loads-the-first-pass-has-no-loads").to_owned());
    }
    // Loads that share ground with the last one and are not decided may be larger too, and are no less right for it.
    let last = first.loads.len() - 1;
    let stretch = first.sizing.as_ref().and_then(|sizing| sizing.stretches.last());
    let from = stretch
        .map(|stretch| (stretch.first as usize - 1, stretch.chosen.way.count as usize))
        .filter(|(from, count)| from + count == first.loads.len())
        .map_or(last, |(from, _)| from);
    let filled: Volume = first.loads.iter().skip(from).map(|load| load.volume).sum();
    // What the first leaves as it is typed is in the tank too when the second begins.
    let leaves = one.beyond();
    let ground = filled - leaves;
    let fills = |spray, full| fewest_fills(spray, full).unwrap_or_default();
    let room = full * f64::from(fills(ground, full)) - ground;
    let takes = second.spray_volume;
    let goes_on = room.min(takes).min(other_full);
    let more = goes_on - leaves;
    if !more.exceeds(full * 1e-9) {
        return Err(t!("loads-the-last-load-has-no-room").to_owned());
    }
    let mut farm = farm.clone();
    let units = farm.units;
    if let Some(pass) = farm.passes.get_mut(&first.pass) {
        pass.extra = Some(volume_in_digits(goes_on, units, DIGITS));
        // A last load that is decided would not grow.
        pass.sizes.truncate(last);
    }
    if let Some(pass) = farm.passes.get_mut(&second.pass) {
        let volume = volume_in_digits(goes_on, units, DIGITS);
        // Sprayed out first where topping it up would be a filling more.
        pass.sizes = if fills(takes - goes_on, other_full) < fills(takes, other_full) {
            vec![volume.clone()]
        } else {
            Vec::new()
        };
        pass.in_tank = Some(InTank { volume, from: first.pass.clone() });
    }
    Ok(farm)
}

/// Passes of the same rig that are not sprayed yet and could take what is left in the tank, since they go out with the same
/// spray: the same products in the same strength.
pub fn takers<'a>(farm: &'a Farm, log: &Log, pass_id: &str) -> Vec<(&'a Id, &'a Pass)> {
    let Some(pass) = farm.passes.get(pass_id) else { return Vec::new() };
    farm.passes
        .iter()
        .filter(|(id, other)| *id != pass_id && other.date >= pass.date && !log.is_recorded(farm, id))
        .filter(|(_, other)| other.rig == pass.rig && same_spray(farm, pass, other))
        .collect()
}
