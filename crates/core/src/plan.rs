//! The plan of a pass: one straight walk through the rooms, each giving values, workings and findings.

use std::collections::HashSet;

use crate::farm::{Farm, Field, Id, Pass, Product, Rig};
use crate::finding::{Basis, Finding, Level, Subject};
use crate::label::{self, Cap};
use crate::loads::card::rounding_words;
use crate::loads::{Load, LoadItem, fill, measure, split};
use crate::mix::line::{PlannedLine, reckon};
use crate::mix::order::{self, Placed};
use crate::quantity::number::show;
use crate::quantity::{Amount, AmountPerArea, Area, AsTyped, CarrierRate, Duration, Money, Quantity, Units, Volume};
use crate::water::{self, WaterPlan};
use crate::working::Working;

/// What is asked about the pass and not judged by this version, so that silence is not taken for consent.
pub const NOT_JUDGED: [&str; 7] = [
    "which adjuvant suits every partner",
    "antagonism and compatibility of the partners",
    "weather, wind and spray hours",
    "nozzle, droplet class and calibration",
    "buffers to neighbours",
    "plant-back to the next crop",
    "number and spacing of applications",
];

/// The plan of one pass. It depends on nothing but the farm.
#[derive(Clone, Debug, PartialEq)]
pub struct Plan {
    /// The pass.
    pub pass: Id,
    /// The ground, field by field, in the order sprayed.
    pub fields: Vec<PlannedField>,
    /// The ground in all.
    pub area: Area,
    /// Spray volume over ground; `None` until it is typed.
    pub carrier: Option<CarrierRate>,
    /// Spray volume in all.
    pub spray_volume: Volume,
    /// Time to spray, without filling and road.
    pub spray_time: Option<Duration>,
    /// The water.
    pub water: WaterPlan,
    /// The products that could be reckoned, in mixing order.
    pub lines: Vec<PlannedLine>,
    /// The mixing order with its reasons, beside `lines`.
    pub order: Vec<Placed>,
    /// The products' short names, beside `lines`.
    pub names: Vec<PlannedName>,
    /// The loads.
    pub loads: Vec<Load>,
    /// What the products cost in all; `None` where a price is missing.
    pub cost: Option<Money>,
    /// What there is to say, the weightiest first.
    pub findings: Vec<Finding>,
    /// The arithmetic.
    pub workings: Vec<Working>,
}

/// A field in a plan.
#[derive(Clone, Debug, PartialEq)]
pub struct PlannedField {
    /// The field.
    pub field: Id,
    /// How much of it is sprayed.
    pub area: Area,
}

/// A product's short name, for the gauge.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct PlannedName {
    /// The product.
    pub product: Id,
    /// Its first word or two.
    pub short: String,
}

impl Plan {
    /// The weightiest level among the findings.
    pub fn level(&self) -> Option<Level> {
        self.findings.iter().map(|finding| finding.level).max()
    }

    /// How many findings there are of a level.
    pub fn count(&self, level: Level) -> usize {
        self.findings.iter().filter(|finding| finding.level == level).count()
    }
}

/// Plans a pass; `None` where the farm has no pass of that id.
pub fn plan(farm: &Farm, pass_id: &str) -> Option<Plan> {
    let (pass_id, pass) = farm.passes.get_key_value(pass_id)?;
    let mut findings = Vec::new();
    let mut workings = Vec::new();

    let fields = ground(farm, pass_id, pass, &mut findings, &mut workings);
    let area: Area = fields.iter().map(|field| field.area).sum();
    let rig = rig(farm, pass_id, pass, &mut findings);
    let carrier = carrier(pass_id, pass, &mut findings);
    let spray_volume = carrier.map_or(Volume::ZERO, |carrier| carrier * area);
    if let Some(carrier) = carrier {
        workings.push(
            Working::new("Spray volume").step(
                format!("{} × {}", area.show(farm.units), carrier.show(farm.units)),
                spray_volume.show(farm.units),
            ),
        );
    }
    let spray_time = rig.and_then(|rig| time(farm.units, pass_id, pass, rig, area, &mut findings, &mut workings));

    let mut water = water::judge(farm, pass_id, pass, &mut findings, &mut workings);

    let mix = mix(farm, pass_id, pass, &mut findings);
    let mut order = order::place(&mix, &pass.mixing_order, &mut findings);
    order::first_fill(&mut order, pass.first_fill.as_ref().map(AsTyped::value));
    let mut lines = Vec::new();
    let mut kept = Vec::new();
    if let Some(carrier) = carrier {
        for placed in order {
            let (Some(line), Some(product)) =
                (pass.mix.iter().find(|line| line.product == placed.product), farm.products.get(&placed.product))
            else {
                continue;
            };
            match reckon(line, product, carrier, farm.units) {
                Ok((per_area, working)) => {
                    workings.push(working);
                    if per_area.is_zero() {
                        findings.push(
                            Finding::stop(
                                Subject::Product(placed.product.clone()),
                                format!("{} is in the mix at a rate of nothing", product.name),
                                Basis::Arithmetic,
                            )
                            .hint("Type its rate, or take it out of the mix."),
                        );
                    }
                    let demand = per_area.over(area);
                    lines.push(PlannedLine {
                        product: placed.product.clone(),
                        name: product.name.clone(),
                        number: u32::try_from(lines.len() + 1).unwrap_or(u32::MAX),
                        per_area,
                        demand,
                        cost: cost(product, demand, &mut findings, &placed.product),
                    });
                    kept.push(placed);
                }
                Err(problem) => {
                    findings.push(Finding::stop(Subject::Product(placed.product.clone()), problem, Basis::Arithmetic));
                }
            }
        }
        let ground: Vec<&Field> = fields.iter().filter_map(|field| farm.fields.get(&field.field)).collect();
        water::conditioner::judge(farm, &ground, &lines, carrier, &mut water, &mut findings);
    } else {
        kept = order;
    }

    let caps = carrier
        .map(|carrier| limits(farm, pass_id, pass, &fields, &lines, carrier, &mut findings, &mut workings))
        .unwrap_or_default();
    let loads = match (carrier, rig) {
        (Some(carrier), Some(rig)) if !area.is_zero() => loads(
            farm,
            pass_id,
            pass,
            rig,
            carrier,
            &fields,
            spray_volume,
            &lines,
            &kept,
            &caps,
            &mut findings,
            &mut workings,
        ),
        _ => Vec::new(),
    };

    let cost =
        lines.iter().map(|line| line.cost).try_fold(Money::default(), |sum, cost| cost.map(|cost| sum.plus(cost)));
    let names =
        lines.iter().map(|line| PlannedName { product: line.product.clone(), short: short_name(&line.name) }).collect();
    let mut seen = HashSet::new();
    findings.retain(|finding| seen.insert(finding.clone()));
    findings.sort_by_key(|finding| std::cmp::Reverse(finding.level));
    workings.dedup();
    Some(Plan {
        pass: pass_id.clone(),
        fields,
        area,
        carrier,
        spray_volume,
        spray_time,
        water,
        lines,
        order: kept,
        names,
        loads,
        cost,
        findings,
        workings,
    })
}

fn ground(
    farm: &Farm,
    pass_id: &Id,
    pass: &Pass,
    findings: &mut Vec<Finding>,
    workings: &mut Vec<Working>,
) -> Vec<PlannedField> {
    let mut planned: Vec<PlannedField> = Vec::new();
    let about = || Subject::Pass(pass_id.clone());
    if pass.fields.is_empty() {
        findings.push(
            Finding::stop(about(), "The pass has no field yet", Basis::Arithmetic)
                .hint("Choose its fields in the heading line."),
        );
    }
    let mut working = Working::new("Ground to spray");
    for id in &pass.fields {
        let Some(field) = farm.fields.get(id) else {
            findings.push(
                Finding::stop(
                    about(),
                    format!("The pass goes to field \"{id}\", which is not on the farm"),
                    Basis::Arithmetic,
                )
                .hint("Choose another field, or add it in Fields."),
            );
            continue;
        };
        if planned.iter().any(|other| other.field == *id) {
            findings.push(
                Finding::stop(about(), format!("{} stands twice in the pass", field.name), Basis::Arithmetic)
                    .hint("Take one of them out."),
            );
            continue;
        }
        let area = sprayable(field, findings, id);
        let area = match pass.parts.get(id) {
            Some(part) if part.exceeds(area) => {
                findings.push(Finding::stop(
                    Subject::Field(id.clone()),
                    format!(
                        "{} of {} are planned; {} can be sprayed",
                        part.show(farm.units),
                        field.name,
                        area.show(farm.units)
                    ),
                    Basis::Arithmetic,
                ));
                part.value()
            }
            Some(part) => part.value(),
            None => area,
        };
        working = working.step(field.name.clone(), area.show(farm.units));
        planned.push(PlannedField { field: id.clone(), area });
    }
    let total: Area = planned.iter().map(|field| field.area).sum();
    if total.is_zero() && !planned.is_empty() {
        findings.push(
            Finding::stop(about(), "The fields of the pass have no ground to spray", Basis::Arithmetic)
                .hint("Type their areas in Fields."),
        );
    }
    workings.push(working.step("in all", total.show(farm.units)));
    planned
}

/// What of a field can be sprayed: its area less what stays unsprayed.
fn sprayable(field: &Field, findings: &mut Vec<Finding>, id: &Id) -> Area {
    let Some(unsprayed) = &field.unsprayed else { return field.area.value() };
    if unsprayed.exceeds(field.area.value()) {
        findings.push(
            Finding::stop(
                Subject::Field(id.clone()),
                format!("{}: {} stay unsprayed, more than its {}", field.name, unsprayed.text(), field.area.text()),
                Basis::Arithmetic,
            )
            .hint("Mend the areas in Fields."),
        );
        return Area::ZERO;
    }
    field.area.value() - unsprayed.value()
}

fn rig<'a>(farm: &'a Farm, pass_id: &Id, pass: &Pass, findings: &mut Vec<Finding>) -> Option<&'a Rig> {
    let about = || Subject::Pass(pass_id.clone());
    if pass.rig.is_empty() {
        findings.push(
            Finding::stop(about(), "No rig is chosen, so the loads cannot be reckoned", Basis::Arithmetic)
                .hint("Choose the rig in the heading line."),
        );
        return None;
    }
    let rig = farm.rigs.get(&pass.rig);
    if rig.is_none() {
        findings.push(
            Finding::stop(
                about(),
                format!("The pass takes rig \"{}\", which is not in the shed", pass.rig),
                Basis::Arithmetic,
            )
            .hint("Choose another rig, or add it in the shed."),
        );
    }
    rig
}

fn carrier(pass_id: &Id, pass: &Pass, findings: &mut Vec<Finding>) -> Option<CarrierRate> {
    let carrier = pass.carrier.as_ref().map(AsTyped::value).filter(|carrier| !carrier.is_zero());
    if carrier.is_none() {
        findings.push(
            Finding::stop(
                Subject::Pass(pass_id.clone()),
                "The spray volume over ground is not typed",
                Basis::Arithmetic,
            )
            .hint("Open the rig in the heading line and type it, such as \"15 gal/ac\" or \"140 L/ha\"."),
        );
    }
    carrier
}

fn time(
    units: Units,
    pass_id: &Id,
    pass: &Pass,
    rig: &Rig,
    area: Area,
    findings: &mut Vec<Finding>,
    workings: &mut Vec<Working>,
) -> Option<Duration> {
    let speed = pass.speed.as_ref().or(rig.speed.as_ref());
    let (Some(speed), Some(boom), Some(efficiency)) = (speed, &rig.boom, &rig.efficiency) else {
        findings.push(
            Finding::note(
                Subject::Pass(pass_id.clone()),
                format!("The time to spray is not known: {} lacks speed, boom width or field efficiency", rig.name),
                Basis::Arithmetic,
            )
            .hint("Type them in the shed."),
        );
        return None;
    };
    let time = area.time(speed.value(), boom.value(), efficiency.value())?;
    workings.push(
        Working::new("Time to spray")
            .step(
                format!(
                    "{} ÷ ({} × {} × {})",
                    area.show(units),
                    speed.show(units),
                    boom.show(units),
                    efficiency.show(units)
                ),
                time.show(units),
            )
            .step("filling and road are not counted", "–"),
    );
    Some(time)
}

fn mix<'a>(farm: &'a Farm, pass_id: &Id, pass: &'a Pass, findings: &mut Vec<Finding>) -> Vec<(&'a Id, &'a Product)> {
    let mut mix: Vec<(&Id, &Product)> = Vec::new();
    if pass.mix.is_empty() {
        findings.push(
            Finding::stop(Subject::Pass(pass_id.clone()), "The tank mix is empty", Basis::Arithmetic)
                .hint("Add its products with their rates."),
        );
    }
    for line in &pass.mix {
        match farm.products.get_key_value(&line.product) {
            None => findings.push(
                Finding::stop(
                    Subject::Pass(pass_id.clone()),
                    format!("The mix holds \"{}\", which is not in the shed", line.product),
                    Basis::Arithmetic,
                )
                .hint("Take it out, or add the product in the shed."),
            ),
            Some((id, product)) if mix.iter().any(|(other, _)| *other == id) => findings.push(
                Finding::stop(
                    Subject::Product(id.clone()),
                    format!("{} stands twice in the mix; only the first counts", product.name),
                    Basis::Arithmetic,
                )
                .hint("Take one of the two out."),
            ),
            Some((id, product)) => mix.push((id, product)),
        }
    }
    mix
}

fn cost(product: &Product, demand: Amount, findings: &mut Vec<Finding>, id: &Id) -> Option<Money> {
    let price = product.price.as_ref()?;
    let cost = price.of(demand);
    if cost.is_none() {
        findings.push(
            Finding::note(
                Subject::Product(id.clone()),
                format!(
                    "The price of {} is per {}, so its cost is not counted",
                    product.name,
                    if product.is_liquid() { "mass, but it is a liquid" } else { "volume, but it is dry" }
                ),
                Basis::Arithmetic,
            )
            .hint("Mend the price in the shed."),
        );
    }
    cost
}

/// Label limits on every field; gives, for each line and field, how far the rounding may go.
#[allow(clippy::too_many_arguments)] // The walk's state, handed on.
fn limits(
    farm: &Farm,
    pass_id: &Id,
    pass: &Pass,
    fields: &[PlannedField],
    lines: &[PlannedLine],
    carrier: CarrierRate,
    findings: &mut Vec<Finding>,
    workings: &mut Vec<Working>,
) -> Vec<Cap> {
    let season = label::season::Season { farm, pass: pass_id, date: pass.date, carrier, lines };
    season.note_passes(findings);
    let mut caps = Vec::new();
    for line in lines {
        let Some(product) = farm.products.get(&line.product) else { continue };
        // "At most" as the user typed it binds the rounding like a label.
        let own = pass
            .mix
            .iter()
            .find(|typed| typed.product == line.product)
            .and_then(|typed| typed.at_most.as_ref())
            .and_then(|most| crate::mix::line::per_area(most.value(), product, carrier).ok());
        let partners = label::adjuvant::cap(line, product, farm, lines, carrier);
        for planned in fields {
            let Some(field) = farm.fields.get(&planned.field) else { continue };
            label::rate::judge(line, product, field, carrier, farm.units, findings);
            label::carrier::judge(&line.product, product, field, carrier, farm.units, findings);
            label::stage::judge(product, &planned.field, field, findings);
            label::harvest::judge(&line.product, product, &planned.field, field, pass.date, findings);
            label::adjuvant::judge(&line.product, product, field, farm, lines, carrier, findings);
            label::typed::judge(&line.product, product, field, findings);
            season.judge(line, product, (&planned.field, field), findings, workings, &mut caps);
            let rate = label::rate::cap(line, product, field, carrier);
            caps.extend([rate, own, partners].into_iter().flatten().map(|most| Cap {
                product: line.product.clone(),
                field: planned.field.clone(),
                most,
            }));
        }
    }
    caps
}

#[allow(clippy::too_many_arguments)] // The walk's state, handed on.
fn loads(
    farm: &Farm,
    pass_id: &Id,
    pass: &Pass,
    rig: &Rig,
    carrier: CarrierRate,
    fields: &[PlannedField],
    spray: Volume,
    lines: &[PlannedLine],
    order: &[Placed],
    caps: &[Cap],
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
            let most = caps
                .iter()
                .filter(|cap| cap.product == line.product && fields.iter().any(|(id, _)| *id == cap.field))
                .map(|cap| cap.most)
                .reduce(AmountPerArea::smaller)
                .map(|most| most.over(*area));
            let exact = line.per_area.over(*area);
            let least = floor(pass, line, product, fields.iter().filter_map(|(id, _)| farm.fields.get(id)), carrier)
                .map(|least| least.over(*area));
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

/// What over ground the rounding should not go below: the user's own "at least" and the label's least, where the plan itself
/// keeps them.
fn floor<'a>(
    pass: &Pass,
    line: &PlannedLine,
    product: &Product,
    fields: impl Iterator<Item = &'a Field>,
    carrier: CarrierRate,
) -> Option<AmountPerArea> {
    let own = pass
        .mix
        .iter()
        .find(|typed| typed.product == line.product)
        .and_then(|typed| typed.at_least.as_ref())
        .and_then(|least| crate::mix::line::per_area(least.value(), product, carrier).ok());
    fields
        .filter_map(|field| label::rate::floor(line, product, field, carrier))
        .chain(own)
        .filter(|least| least.exceeds(line.per_area) == Some(false))
        .reduce(AmountPerArea::larger)
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

/// The first words of a product's name, up to a figure: "Crop oil concentrate 83 %" is "Crop oil concentrate".
fn short_name(name: &str) -> String {
    let words: Vec<&str> = name
        .split_whitespace()
        .take_while(|word| !word.starts_with(|c: char| c.is_ascii_digit() || c == '('))
        .collect();
    let short = words.join(" ");
    if short.is_empty() { name.to_owned() } else { short.trim_end_matches(',').to_owned() }
}
