//! What of a plan a record is of: all of it, what is not recorded yet, or some of its loads; and whether what went out agrees
//! with the ground, the loads and what was left over.

use crate::farm::{Farm, Id, Record, RecordLine};
use crate::loads::Load;
use crate::loads::measure::{step, to_mark};
use crate::plan::Plan;
use crate::quantity::{Amount, Area, AsTyped, Volume};

use super::Log;
use super::record::{amount_text, volume_text, with_amount};

mod recorded;

pub(crate) use recorded::after;
use recorded::left_on;
pub use recorded::{Unrecorded, unrecorded};

/// Records hold six digits.
const DIGITS: f64 = 1e-5;
/// Amounts that lie this close are the same: it is less than a jug shows.
const SAME: f64 = 5e-4;

/// Some of a plan.
#[derive(Clone, Debug, PartialEq)]
pub struct Portion {
    /// The ground by field, in the order sprayed.
    pub fields: Vec<(Id, Area)>,
    /// The spray that goes out.
    pub volume: Volume,
    /// What goes out of each product, beside [`Plan::lines`].
    pub amounts: Vec<Amount>,
    /// How many loads; `None` where that is not known.
    pub loads: Option<u32>,
    /// What the plan leaves in the tank after it.
    pub left: Volume,
}

impl Portion {
    /// All of a plan. Where the loads could not be reckoned, the amounts are what arithmetic asks for.
    pub fn whole(plan: &Plan) -> Self {
        let loads: Vec<&Load> = plan.loads.iter().collect();
        let amounts = measured(plan, &loads).filter(|_| !loads.is_empty());
        Self {
            fields: plan.fields.iter().map(|field| (field.field.clone(), field.area)).collect(),
            volume: plan.spray_volume,
            amounts: amounts.unwrap_or_else(|| plan.lines.iter().map(|line| line.demand).collect()),
            loads: (!loads.is_empty()).then(|| count(&loads)),
            left: left(&loads),
        }
    }

    /// Some loads of a plan, by number; `None` where the plan has none of them.
    pub fn of_loads(plan: &Plan, numbers: &[u32]) -> Option<Self> {
        let loads: Vec<&Load> = plan.loads.iter().filter(|load| numbers.contains(&load.number)).collect();
        if loads.is_empty() {
            return None;
        }
        let mut fields: Vec<(Id, Area)> = Vec::new();
        for (id, area) in loads.iter().flat_map(|load| &load.fields) {
            match fields.iter_mut().find(|(known, _)| known == id) {
                Some((_, sum)) => *sum = *sum + *area,
                None => fields.push((id.clone(), *area)),
            }
        }
        Some(Self {
            fields,
            volume: loads.iter().map(|load| load.volume - load.left).sum(),
            amounts: measured(plan, &loads)?,
            loads: Some(count(&loads)),
            left: left(&loads),
        })
    }

    /// What of a plan its records do not cover yet, the amounts in proportion to the ground; `None` where they cover all of it
    /// or none.
    pub fn rest(farm: &Farm, log: &Log, plan: &Plan) -> Option<Self> {
        let records: Vec<&Record> = log.of_pass(farm, &plan.pass).collect();
        if records.is_empty() {
            return None;
        }
        let fields = left_on(plan.fields.iter().map(|field| (&field.field, field.area)), &records);
        let share = fields.iter().map(|(_, area)| *area).sum::<Area>().ratio(plan.area).filter(|share| *share > 0.0)?;
        let whole = Self::whole(plan);
        let used = records.iter().try_fold(0_u32, |sum, record| sum.checked_add(record.loads?));
        Some(Self {
            fields,
            volume: whole.volume * share,
            amounts: whole.amounts.iter().map(|amount| amount.times(share)).collect(),
            loads: whole.loads.zip(used).and_then(|(all, used)| all.checked_sub(used)).filter(|loads| *loads > 0),
            left: whole.left,
        })
    }

    /// Its ground.
    pub fn area(&self) -> Area {
        self.fields.iter().map(|(_, area)| *area).sum()
    }
}

fn count(loads: &[&Load]) -> u32 {
    u32::try_from(loads.len()).unwrap_or(u32::MAX)
}

fn left(loads: &[&Load]) -> Volume {
    loads.last().map_or(Volume::ZERO, |load| load.left)
}

/// What of each product some loads put on the ground, as measured: with what was in the tank before, without what is left over,
/// which is as strong as its load.
fn measured(plan: &Plan, loads: &[&Load]) -> Option<Vec<Amount>> {
    let of = |line: &crate::mix::line::PlannedLine| {
        let on_ground = |load: &&Load| {
            let before = load.carried.ground(plan.carrier?).map(|ground| line.per_area.over(ground))?;
            let item = load.items.iter().find(|item| item.product == line.product);
            let held = item.map_or(Some(before), |item| before.plus(item.measured.amount))?;
            Some(held.times((load.volume - load.left).ratio(load.volume)?))
        };
        loads.iter().map(on_ground).try_fold(line.demand.times(0.0), |sum, amount| sum.plus(amount?))
    };
    plan.lines.iter().map(of).collect()
}

/// How much ground a record covers for each unit that was planned; `None` where nothing was planned, and where it is as planned.
pub fn other_ground(record: &Record) -> Option<f64> {
    let planned: Area = record.fields.values().filter_map(|field| field.planned.as_ref()).map(AsTyped::value).sum();
    record.area().ratio(planned).filter(|ratio| !same(*ratio) && *ratio > 0.0)
}

/// Whether spray and products of a record stand in another proportion to what was planned, but for what a jug rounds.
pub fn is_out_of_proportion(farm: &Farm, record: &Record, wanted: f64) -> bool {
    let volume =
        record.volume.as_ref().zip(record.planned.as_ref()).and_then(|(out, planned)| out.ratio(planned.value()));
    let is_out = |line: &RecordLine| {
        let planned = line.planned.as_ref().filter(|_| is_reckoned(farm, record, line))?.value();
        let rounded = in_jug(farm, &line.product, planned.times(wanted));
        let is_so = |amount: Amount| line.amount.value().ratio(amount).is_some_and(same);
        Some(!planned.is_zero() && !is_so(planned.times(wanted)) && !is_so(rounded))
    };
    volume.is_some_and(|ratio| !same(ratio / wanted)) || record.lines.iter().filter_map(is_out).any(|is_out| is_out)
}

/// An amount as the farm's jug or scale measures it; one that is less than half a mark stays.
fn in_jug(farm: &Farm, product: &str, amount: Amount) -> Amount {
    let Some(product) = farm.products.get(product) else { return amount };
    let (measured, _) = to_mark(amount, (None, None), step(product, &farm.measuring, farm.units));
    if measured.is_zero() { amount } else { measured }
}

/// Amounts that lie this close to a proportion came of it: loads are measured one by one.
const CAME_OF: f64 = 5e-3;

/// Whether the amount of a line is the one planned, or stands to it as the spray of its record does. Any other was typed by a person as
/// what was really used.
fn is_reckoned(farm: &Farm, record: &Record, line: &RecordLine) -> bool {
    let Some(planned) = line.planned.as_ref().map(AsTyped::value) else { return false };
    let volume = record.volume.as_ref().zip(record.planned.as_ref());
    let sprayed = volume.and_then(|(out, planned)| out.ratio(planned.value()));
    std::iter::once(1.0).chain(sprayed).any(|share| {
        let exact = planned.times(share);
        [exact, in_jug(farm, &line.product, exact)].into_iter().any(|amount| {
            let ratio = line.amount.value().ratio(amount);
            ratio.map_or(line.amount.is_zero(), |ratio| (ratio - 1.0).abs() < CAME_OF)
        })
    })
}

/// The products of a record whose amounts a person typed other than reckoned, by name.
pub fn typed_otherwise(farm: &Farm, record: &Record) -> Vec<String> {
    let typed = record.lines.iter().filter(|line| line.planned.is_some() && !is_reckoned(farm, record, line));
    typed.map(|line| line.name.to_string()).collect()
}

/// Spray and products of a record in a proportion to what was planned, products to the mark that the farm measures to; what was not
/// planned stays, and so does an amount that was typed other than reckoned.
pub fn in_proportion(farm: &Farm, record: &mut Record, wanted: f64) {
    let reckoned: Vec<bool> = record.lines.iter().map(|line| is_reckoned(farm, record, line)).collect();
    if let Some(planned) = &record.planned {
        record.volume = Some(volume_text(planned.value() * wanted, farm.units));
    }
    for (line, reckoned) in record.lines.iter_mut().zip(reckoned) {
        if let Some(planned) = line.planned.as_ref().filter(|_| reckoned) {
            let exact = planned.value().times(wanted);
            // What was planned is what the jugs of its loads held together.
            let amount = if same(wanted) { exact } else { in_jug(farm, &line.product, exact) };
            let amount = amount_text(amount, farm.units);
            *line = with_amount(line, amount, farm.products.get(&line.product), farm.units);
        }
    }
}

/// Loads, what was left over of them, and what so went out.
#[derive(Clone, Debug, PartialEq)]
pub struct Balance {
    /// How many loads were used.
    pub loads: u32,
    /// How many the plan has.
    pub of: u32,
    /// Spray and products were scaled to the ground that was sprayed, and so are the loads here.
    pub scaled: bool,
    /// What they held in all, with what was in the tank before the first.
    pub mixed: Volume,
    /// What was left over.
    pub left: Volume,
    /// What went out.
    pub out: Volume,
    /// What went out of each product of the record's plan, by product, but for those of which a person typed another amount.
    pub amounts: Vec<(Id, Amount)>,
}

/// What must have gone out by the loads used and what was left over, where a record of a whole plan says that either differed.
pub fn balance(farm: &Farm, plan: &Plan, record: &Record) -> Option<Balance> {
    let whole = Portion::whole(plan);
    let (of, planned) = (whole.loads?, record.planned.as_ref()?);
    // A record of a part was planned as that part.
    if record.pass.as_deref() != Some(plan.pass.as_str()) || !planned.ratio(whole.volume).is_some_and(same) {
        return None;
    }
    let loads = record.loads.unwrap_or(of);
    let used = Portion::of_loads(plan, &(1..=loads.min(of)).collect::<Vec<_>>())?;
    let scale = scaled_to(record).unwrap_or(1.0);
    let planned_out = used.volume * scale;
    let mixed = planned_out + used.left;
    let left = record.left.as_ref().map_or(used.left, |left| left.volume.value());
    let as_planned = loads == of && !left.exceeds(used.left + mixed * SAME) && !used.left.exceeds(left + mixed * SAME);
    if loads > of || as_planned || left.exceeds(mixed) {
        return None;
    }
    let out = mixed - left;
    let share = out.ratio(used.volume)?;
    let typed =
        |product: &Id| record.lines.iter().any(|line| line.product == *product && !is_reckoned(farm, record, line));
    let amounts = plan.lines.iter().zip(&used.amounts).filter(|(line, _)| !typed(&line.product));
    let amounts = amounts.map(|(line, amount)| (line.product.clone(), amount.times(share))).collect();
    Some(Balance { loads, of, scaled: !same(scale), mixed, left, out, amounts })
}

/// The ground that was sprayed for each unit planned, where the spray of a record was scaled to it: where its volume lies nearer
/// to that than to the plan.
fn scaled_to(record: &Record) -> Option<f64> {
    let ground = other_ground(record)?;
    let volume = record.volume.as_ref()?.ratio(record.planned.as_ref()?.value())?;
    ((volume - ground).abs() < (volume - 1.0).abs()).then_some(ground)
}

impl Balance {
    /// Whether a record has it so already.
    pub fn is_in(&self, record: &Record) -> bool {
        let volume = record.volume.as_ref().is_some_and(|volume| is_close(volume.ratio(self.out), volume.is_zero()));
        volume
            && self.amounts.iter().all(|(product, amount)| {
                let mut lines = record.lines.iter().filter(|line| line.product == *product);
                lines.all(|line| is_close(line.amount.value().ratio(*amount), line.amount.is_zero()))
            })
    }

    /// Puts it into a record.
    pub fn put(&self, farm: &Farm, record: &mut Record) {
        record.volume = Some(volume_text(self.out, farm.units));
        for (product, amount) in &self.amounts {
            for line in record.lines.iter_mut().filter(|line| line.product == *product) {
                let amount = amount_text(*amount, farm.units);
                *line = with_amount(line, amount, farm.products.get(product), farm.units);
            }
        }
    }
}

/// Close to one, or nothing of nothing.
fn is_close(ratio: Option<f64>, nothing: bool) -> bool {
    ratio.map_or(nothing, same)
}

fn same(ratio: f64) -> bool {
    (ratio - 1.0).abs() < SAME
}

#[cfg(test)]
mod tests;
