//! What passes take: product by product against what is on hand, and water by source and by nurse tank.
//!
//! # Units
//! A pass mixes its ground × spray volume over ground, or what its decided loads hold, less what is in the tank already, and what
//! is mixed beyond; the products follow the spray. Of a pass that is recorded in part it is the share of its ground that is left. Amounts are exact, not rounded to a measuring step. Water is the spray less the liquid products.

use std::collections::HashSet;

use jiff::civil::Date;

use super::account::Accounts;
use super::on_hand::OnHand;
use crate::farm::{CarrierKind, Farm, Fills, Id, Pass, Product};
use crate::language::t;
use crate::mix::line::over_ground;
use crate::quantity::{Amount, Area, CarrierRate, Money, Volume};
use crate::rig;
use crate::season::Log;

/// What some passes take.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Needs {
    /// The passes, by date and then in the order of the farm.
    pub passes: Vec<Id>,
    /// The passes before the first of these that are not recorded either.
    pub earlier: Vec<Id>,
    /// Product by product, in the order of the farm.
    pub products: Vec<Need>,
    /// Water, or what carries the products in its place, by source.
    pub waters: Vec<WaterNeed>,
    /// Nurse tanks, by rig and by what is in them.
    pub nurses: Vec<Nurse>,
    /// What could not be reckoned: the pass, and what is missing.
    pub open: Vec<(Id, String)>,
}

/// What passes take of a product, against what is on hand.
#[derive(Clone, Debug, PartialEq)]
pub struct Need {
    /// The product.
    pub product: Id,
    /// Pass by pass.
    pub by_pass: Vec<Take>,
    /// In all.
    pub amount: Amount,
    /// What is on hand, by the account of the product, with what comes in up to the last of these passes.
    pub on_hand: OnHand,
    /// What passes before these take first.
    pub before: Amount,
    /// What remains when these and those before them are sprayed, below zero where it does not reach; `None` where what is on
    /// hand is not known.
    pub left: Option<Amount>,
    /// What these passes lack; `None` where nothing is short, or not known to be.
    pub short: Option<Amount>,
    /// What the amount costs; `None` where no price is typed.
    pub cost: Option<Money>,
}

/// What a pass takes of a product.
#[derive(Clone, Debug, PartialEq)]
pub struct Take {
    /// The pass.
    pub pass: Id,
    /// How much.
    pub amount: Amount,
}

/// What a day asks of a source of water.
#[derive(Clone, Debug, PartialEq)]
pub struct WaterNeed {
    /// What it is: water, or a fertilizer in its place.
    pub kind: CarrierKind,
    /// The source, of water; empty where none is chosen.
    pub water: Id,
    /// How much.
    pub volume: Volume,
}

/// What the nurse tank of a rig carries to the field.
#[derive(Clone, Debug, PartialEq)]
pub struct Nurse {
    /// The rig.
    pub rig: Id,
    /// What it carries.
    pub need: WaterNeed,
    /// How often the nurse tank is filled for it; `None` where it is not typed what it holds.
    pub tanks: Option<Tanks>,
}

/// Fillings of a nurse tank.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Tanks {
    /// What the tank holds.
    pub holds: Volume,
    /// How many fillings; one means that a single trip suffices.
    pub count: u32,
}

/// The passes that are not recorded, or not all of them, by date and then in the order of the farm.
pub fn not_recorded(farm: &Farm, log: &Log) -> Vec<Id> {
    open(farm, log).into_iter().map(|(id, ..)| id.clone()).collect()
}

/// The same passes, with how much of each is left: 1 for all of it.
fn open<'a>(farm: &'a Farm, log: &Log) -> Vec<(&'a Id, &'a Pass, f64)> {
    let left = farm.passes.iter().filter_map(|(id, pass)| Some((id, pass, log.unrecorded(farm, id)?.share())));
    let mut passes: Vec<(&Id, &Pass, f64)> = left.collect();
    // The sort keeps the order of the farm within a day.
    passes.sort_by_key(|(_, pass, _)| pass.date);
    passes
}

/// The next day, from a day on, that has passes to spray.
pub fn next_day(farm: &Farm, from: Date) -> Option<Date> {
    open(farm, &Log::of(farm)).into_iter().map(|(_, pass, _)| pass.date).find(|date| *date >= from)
}

/// What the passes of a day take that are not recorded; what those before it take stands beside.
pub fn of_day(farm: &Farm, day: Date) -> Needs {
    let log = Log::of(farm);
    needs(farm, &log, &Accounts::of_all(farm, &log), |date| date == day)
}

/// What all passes from a day on take that are not recorded; what those before it take stands beside.
pub fn from_day(farm: &Farm, from: Date) -> Needs {
    let log = Log::of(farm);
    needs(farm, &log, &Accounts::of_all(farm, &log), |date| date >= from)
}

/// What the passes take that are not recorded and whose day is wanted. Passes before the first of these come first to the
/// shed.
pub fn needs(farm: &Farm, log: &Log, accounts: &Accounts, wanted: impl Fn(Date) -> bool) -> Needs {
    let mut out = Needs::default();
    let mut first = true;
    let mut takes: Vec<(&Id, Vec<Take>, Amount)> =
        farm.products.iter().map(|(id, product)| (id, Vec::new(), product.nothing())).collect();
    for (id, pass, share) in open(farm, log) {
        let now = wanted(pass.date);
        if !now && !first {
            continue;
        }
        first &= !now;
        let (mixed, open) = Mixed::of(farm, pass);
        for (product, amount) in mixed.products {
            let amount = amount.times(share);
            let Some((_, by_pass, before)) = takes.iter_mut().find(|(known, ..)| **known == product) else { continue };
            if now {
                by_pass.push(Take { pass: id.clone(), amount });
            } else {
                *before = before.plus(amount).unwrap_or(*before);
            }
        }
        if now {
            add_water(farm, pass, mixed.carrier * share, &mut out);
            out.open.extend(open.into_iter().map(|what| (id.clone(), what)));
            out.passes.push(id.clone());
        } else {
            out.earlier.push(id.clone());
        }
    }
    if out.passes.is_empty() {
        out.earlier.clear();
    }
    for nurse in &mut out.nurses {
        nurse.tanks = farm.rigs.get(&nurse.rig).and_then(|rig| tanks(nurse.need.volume, rig.nurse.as_ref()?.value()));
    }
    for (id, by_pass, before) in takes {
        let Some(product) = farm.products.get(id).filter(|_| !by_pass.is_empty()) else { continue };
        out.products.extend(against(farm, (id, product), accounts, by_pass, before));
    }
    out
}

fn against(
    farm: &Farm,
    (id, product): (&Id, &Product),
    accounts: &Accounts,
    by_pass: Vec<Take>,
    before: Amount,
) -> Option<Need> {
    let account = accounts.get(id)?;
    let (mut amount, mut short, mut last) = (product.nothing(), None, None);
    for take in &by_pass {
        amount = amount.plus(take.amount).unwrap_or(amount);
        let Some(pass) = farm.passes.get(&take.pass) else { continue };
        last = account.for_day(pass.date);
        let lack = last.and_then(|held| lacks(amount, remains(held, before)));
        // What one pass lacks is there for a later one where more came in between.
        short = match (short, lack) {
            (Some(most), Some(lack)) if lacks(lack, most).is_none() => Some(most),
            (most, lack) => lack.or(most),
        };
    }
    let on_hand = OnHand { amount: last, ..account.on_hand.clone() };
    let left = last.and_then(|held| held.minus(before)?.minus(amount));
    let cost = product.price.as_ref().and_then(|price| price.of(amount));
    Some(Need { product: id.clone(), by_pass, amount, on_hand, before, left, short, cost })
}

/// What remains of an amount when another was taken; nothing where more was wanted than there is.
pub(super) fn remains(held: Amount, taken: Amount) -> Amount {
    held.minus(taken).map_or(held, |left| match left {
        Amount::Volume(volume) => Amount::Volume(volume.max(Volume::ZERO)),
        Amount::Mass(mass) => Amount::Mass(mass.max(crate::quantity::Mass::ZERO)),
    })
}

/// How much more is needed than there is, where that is more than the error of arithmetic.
pub(super) fn lacks(needed: Amount, there: Amount) -> Option<Amount> {
    let more = match (needed, there) {
        (Amount::Volume(needed), Amount::Volume(there)) => needed.exceeds(there),
        (Amount::Mass(needed), Amount::Mass(there)) => needed.exceeds(there),
        _ => false,
    };
    needed.minus(there).filter(|_| more)
}

fn tanks(volume: Volume, holds: Volume) -> Option<Tanks> {
    let count = (volume.ratio(holds)? * (1.0 - 1e-9)).ceil().clamp(0.0, f64::from(u32::MAX));
    #[allow(clippy::cast_possible_truncation, clippy::cast_sign_loss)] // A whole number within its bounds.
    Some(Tanks { holds, count: count as u32 })
}

fn add_water(farm: &Farm, pass: &Pass, volume: Volume, out: &mut Needs) {
    if volume.is_zero() {
        return;
    }
    let (kind, water) = match pass.carrier_kind {
        CarrierKind::Water => (CarrierKind::Water, pass.water.clone()),
        other => (other, Id::new()),
    };
    match out.waters.iter_mut().find(|known| known.kind == kind && known.water == water) {
        Some(known) => known.volume = known.volume + volume,
        None => out.waters.push(WaterNeed { kind, water: water.clone(), volume }),
    }
    if pass.fills != Fills::AtField || !farm.rigs.contains_key(&pass.rig) {
        return;
    }
    let known = out
        .nurses
        .iter_mut()
        .find(|nurse| nurse.rig == pass.rig && nurse.need.kind == kind && nurse.need.water == water);
    match known {
        Some(nurse) => nurse.need.volume = nurse.need.volume + volume,
        None => out.nurses.push(Nurse { rig: pass.rig.clone(), need: WaterNeed { kind, water, volume }, tanks: None }),
    }
}

/// What a pass mixes, reckoned without planning it.
struct Mixed {
    /// How much of each product.
    products: Vec<(Id, Amount)>,
    /// How much water, or what carries the products in its place.
    carrier: Volume,
}

impl Mixed {
    /// Of a pass; and what of it cannot be reckoned.
    fn of(farm: &Farm, pass: &Pass) -> (Self, Vec<String>) {
        let Some(carrier) = pass.carrier_rate() else {
            let nothing = Self { products: Vec::new(), carrier: Volume::ZERO };
            return (nothing, vec![t!("stock-its-spray-volume-over-ground-is").to_owned()]);
        };
        let ground = mixed_for(pass, treated(farm, pass), carrier);
        let mut out = Self { products: Vec::new(), carrier: carrier * ground };
        let mut open = Vec::new();
        if ground.is_zero() && pass.in_tank.is_none() {
            open.push(t!("stock-it-has-no-ground-to-spray").to_owned());
        }
        for (at, line) in pass.mix.iter().enumerate() {
            // Of a product that stands twice only the first counts, as in the plan.
            if pass.mix.iter().take(at).any(|other| other.product == line.product) {
                continue;
            }
            let Some(product) = farm.products.get(&line.product) else {
                open.push(t!("stock-is-not-in-the-shed", product = line.product));
                continue;
            };
            match over_ground(line, product, carrier) {
                Ok(per_area) => {
                    let amount = per_area.over(ground);
                    if let Amount::Volume(volume) = amount {
                        out.carrier = (out.carrier - volume).max(Volume::ZERO);
                    }
                    out.products.push((line.product.clone(), amount));
                }
                Err(problem) => open.push(problem),
            }
        }
        (out, open)
    }
}

/// What a pass takes of some products, the others left aside; nothing of one that it does not hold, or that cannot be reckoned.
pub(super) fn taken<'a>(farm: &Farm, pass: &Pass, products: &[(&'a str, &Product)]) -> Vec<(&'a str, Amount)> {
    // The ground is reckoned only for a pass that holds one of them.
    let mut ground = None;
    let mut out = Vec::new();
    for (id, product) in products {
        let Some(line) = pass.mix.iter().find(|line| line.product == *id) else { continue };
        let Some(carrier) = pass.carrier_rate() else { break };
        let Ok(per_area) = over_ground(line, product, carrier) else { continue };
        let ground = *ground.get_or_insert_with(|| mixed_for(pass, treated(farm, pass), carrier));
        out.push((*id, per_area.over(ground)));
    }
    out
}

/// The ground that a pass treats: of each field once what it covers, in bands their share of it.
fn treated(farm: &Farm, pass: &Pass) -> Area {
    let bands = rig::in_bands(farm, pass);
    let mut seen: HashSet<&str> = HashSet::new();
    pass.fields
        .iter()
        .filter(|id| seen.insert(id.as_str()))
        .filter_map(|id| farm.fields.get_key_value(id))
        .map(|(id, field)| crate::ground::covers(farm, pass, id, field))
        .map(|covered| bands.map_or(covered, |share| covered * share.to_fraction()))
        .sum()
}

/// The ground for which new spray is mixed: what is treated, less what the spray in the tank covers, and what is mixed beyond.
/// Loads that are decided hold what they hold, though it be more than the ground takes, or less is left over than asked.
pub(super) fn mixed_for(pass: &Pass, treated: Area, carrier: CarrierRate) -> Area {
    if pass.in_tank.is_none() && pass.extra.is_none() && pass.sizes.is_empty() {
        return treated;
    }
    let in_tank = pass.carried();
    let ground = carrier * treated;
    let takes = ground + pass.beyond();
    let mut decided = pass.sizes.iter().scan(Volume::ZERO, |sum, size| {
        *sum = *sum + size.value();
        Some(*sum)
    });
    // The loads up to the one that finishes the ground; sizes are typed rounded.
    let done = decided.find(|sum| !ground.exceeds(*sum));
    let other = done.filter(|sum| sum.exceeds(takes * (1.0 + 1e-6)) || takes.exceeds(*sum * (1.0 + 1e-6)));
    let mixed = other.filter(|_| takes.exceeds(in_tank)).unwrap_or(takes);
    (mixed - in_tank).max(Volume::ZERO).ground(carrier).unwrap_or(Area::ZERO)
}
