//! Builds the loads of a pass: split, laid over the fields, measured, filled, and judged for rounding and agitation.

use super::card::rounding_words;
use super::{Load, LoadItem, fill, measure, split};
use crate::farm::{Farm, Id, Pass, Rig};
use crate::finding::{Basis, Finding, Subject};
use crate::label::{Bound, End};
use crate::mix::line::PlannedLine;
use crate::mix::order::Placed;
use crate::plan::{Plan, PlannedField};
use crate::quantity::number::show;
use crate::quantity::{Amount, AmountPerArea, Area, CarrierRate, Quantity, Units, Volume};
use crate::working::Working;

/// The loads of a pass that has ground, a rig and a spray volume.
#[allow(clippy::too_many_arguments)] // The walk's state, handed on.
pub(crate) fn build(
    farm: &Farm,
    pass_id: &Id,
    pass: &Pass,
    rig: &Rig,
    carrier: CarrierRate,
    fields: &[PlannedField],
    spray: Volume,
    lines: &[PlannedLine],
    order: &[Placed],
    bounds: &[Bound],
    findings: &mut Vec<Finding>,
    workings: &mut Vec<Working>,
) -> Vec<Load> {
    let about_rig = || Subject::Rig(pass.rig.clone());
    let units = farm.units;
    let fill = match &pass.fill_to {
        Some(fill) if fill.exceeds(rig.tank.value()) => {
            findings.push(
                Finding::stop(
                    about_rig(),
                    format!(
                        "The tank of {} holds {}; it cannot be filled to {}",
                        rig.name,
                        rig.tank.show(units),
                        fill.show(units)
                    ),
                    Basis::Arithmetic,
                )
                .hint("Lower \"fill to\", or clear it to fill the tank."),
            );
            return Vec::new();
        }
        Some(fill) => fill.value(),
        None => rig.tank.value(),
    };
    let volumes = match split::split(spray, fill, pass.split) {
        Ok(volumes) => volumes,
        Err(count) => {
            let text = if count.is_finite() {
                format!(
                    "{} of spray in fillings of {} would be {} loads",
                    spray.show(units),
                    fill.show(units),
                    show(count, 0)
                )
            } else {
                format!("The tank of {} holds nothing", rig.name)
            };
            findings.push(
                Finding::stop(about_rig(), text, Basis::Arithmetic).hint("Look at the tank's volume in the shed."),
            );
            return Vec::new();
        }
    };
    workings.push(
        Working::new("Number of loads")
            .step(
                format!("{} ÷ {}", spray.show(units), fill.show(units)),
                show(spray.ratio(fill).unwrap_or_default(), 3),
            )
            .step("loads", volumes.len().to_string()),
    );
    let areas: Vec<Area> = volumes.iter().map(|volume| volume.ground(carrier).unwrap_or(Area::ZERO)).collect();
    let ground: Vec<(Id, Area)> = fields.iter().map(|field| (field.field.clone(), field.area)).collect();
    let covered = split::over_fields(&areas, &ground);
    let mut loads = Vec::with_capacity(volumes.len());
    let mut unroomy = false;
    for (at, ((volume, area), fields)) in volumes.iter().zip(&areas).zip(covered).enumerate() {
        let number = u32::try_from(at + 1).unwrap_or(u32::MAX);
        let mut items = Vec::with_capacity(lines.len());
        for line in lines {
            let Some(product) = farm.products.get(&line.product) else { continue };
            let here = |end| {
                bounds
                    .iter()
                    .filter(move |bound| bound.end == end && bound.product == line.product)
                    .filter(|bound| fields.iter().any(|(id, _)| *id == bound.field))
                    .map(|bound| bound.amount)
            };
            let least = here(End::Least).reduce(AmountPerArea::larger).map(|least| least.over(*area));
            let most = here(End::Most).reduce(AmountPerArea::smaller).map(|most| most.over(*area));
            let exact = line.per_area.over(*area);
            let measured = measure::measure(exact, (least, most), product, &farm.measuring, units);
            judge_rounding(&measured, line, number, units, measure::step(product, &farm.measuring, units), findings);
            items.push(LoadItem { product: line.product.clone(), number: line.number, measured });
        }
        let liquids: Volume = items
            .iter()
            .map(|item| match item.measured.exact {
                Amount::Volume(volume) => volume,
                Amount::Mass(_) => Volume::ZERO,
            })
            .sum();
        let (steps, fits) = fill::steps(*volume, &items, order, units);
        unroomy |= !fits;
        loads.push(Load { number, volume: *volume, area: *area, fields, water: *volume - liquids, items, steps });
    }
    if unroomy {
        findings.push(
            Finding::stop(
                Subject::Pass(pass_id.clone()),
                "The products leave no room for water in the spray",
                Basis::Arithmetic,
            )
            .hint("Raise the spray volume, or look at the rates."),
        );
    }
    note_held_down(&loads, lines, findings);
    judge_agitation(rig, &loads, units, &about_rig(), findings);
    work_of_first_load(&loads, lines, carrier, units, workings);
    loads
}

fn judge_rounding(
    measured: &measure::Measured,
    line: &PlannedLine,
    load: u32,
    units: Units,
    step: Amount,
    findings: &mut Vec<Finding>,
) {
    if measured.amount.is_zero() && !measured.exact.is_zero() {
        findings.push(
            Finding::stop(
                Subject::Load(load),
                format!(
                    "Load {load} needs {} of {}, less than the finest mark of {}",
                    measured.exact.show(units),
                    line.name,
                    step.show(units)
                ),
                Basis::Arithmetic,
            )
            .hint("Give the product a finer measuring step in the shed."),
        );
    } else if measured.rounding.abs() > 0.05 {
        findings.push(
            Finding::check(
                Subject::Load(load),
                format!(
                    "Load {load}: {} of {} is measured as {}, {}",
                    measured.exact.show(units),
                    line.name,
                    measured.text,
                    rounding_words(measured.rounding)
                ),
                Basis::Arithmetic,
            )
            .hint("Give the product a finer measuring step in the shed."),
        );
    }
}

/// Notes, product by product, the loads in which the nearest mark would have passed a label's most.
fn note_held_down(loads: &[Load], lines: &[PlannedLine], findings: &mut Vec<Finding>) {
    for line in lines {
        let held: Vec<(String, &str)> = loads
            .iter()
            .flat_map(|load| load.items.iter().map(move |item| (load, item)))
            .filter(|(_, item)| item.product == line.product && item.measured.held_down)
            .map(|(load, item)| (load.number.to_string(), item.measured.text.as_str()))
            .collect();
        let Some((first, text)) = held.first() else { continue };
        let numbers: Vec<&str> = held.iter().map(|(number, _)| number.as_str()).collect();
        let (loads, text) = match numbers.as_slice() {
            [_] => (format!("Load {first}"), format!(" to {text}")),
            many => (format!("Loads {}", many.join(", ")), String::new()),
        };
        findings.push(Finding::note(
            Subject::Product(line.product.clone()),
            format!("{loads}: {} is rounded down{text}, because the next mark would pass a label's most", line.name),
            Basis::Arithmetic,
        ));
    }
}

fn judge_agitation(rig: &Rig, loads: &[Load], units: Units, about: &Subject, findings: &mut Vec<Finding>) {
    // A sliver of a load is a slip of a decimal in an area, not a load.
    if let [_, .., last] = loads
        && (rig.tank.value() * 0.005).exceeds(last.volume)
    {
        findings.push(
            Finding::check(
                about.clone(),
                format!("Load {} is only {} on {}", last.number, last.volume.show(units), last.area.show(units)),
                Basis::Arithmetic,
            )
            .hint("Even loads settle it, or the areas are a hair too large."),
        );
    }
    let Some(least) = &rig.least else { return };
    if let Some(small) = loads.iter().find(|load| least.exceeds(load.volume)) {
        findings.push(
            Finding::check(
                about.clone(),
                format!(
                    "Load {} is {}; below {} the agitation of {} does not reach",
                    small.number,
                    small.volume.show(units),
                    least.show(units),
                    rig.name
                ),
                Basis::Arithmetic,
            )
            .hint("Even loads may settle it."),
        );
    }
}

/// How the amount of a product in a load came about; `None` where the plan has no such load or product.
pub fn working_of(plan: &Plan, load: u32, product: &str, units: Units) -> Option<Working> {
    let carrier = plan.carrier?;
    let load = plan.loads.iter().find(|candidate| candidate.number == load)?;
    let item = load.items.iter().find(|item| item.product == product)?;
    let line = plan.lines.iter().find(|line| line.product == product)?;
    Some(amount_working(load, item, line, carrier, units))
}

fn amount_working(load: &Load, item: &LoadItem, line: &PlannedLine, carrier: CarrierRate, units: Units) -> Working {
    Working::new(format!("{} in load {}", line.name, load.number))
        .step(format!("{} ÷ {}", load.volume.show(units), carrier.show(units)), load.area.show(units))
        .step(format!("× {}", line.per_area.show(units)), item.measured.exact.show(units))
        .step("to the measuring step", item.measured.text.clone())
        .step("rounding", rounding_words(item.measured.rounding))
}

/// The working of each product in the first load.
fn work_of_first_load(
    loads: &[Load],
    lines: &[PlannedLine],
    carrier: CarrierRate,
    units: Units,
    workings: &mut Vec<Working>,
) {
    let Some(load) = loads.first() else { return };
    for (item, line) in load.items.iter().zip(lines) {
        workings.push(amount_working(load, item, line, carrier, units));
    }
}
