//! Builds the loads of a pass: sized, laid over the fields, measured, filled, and judged for rounding and agitation.

use super::card::rounding_words;
use super::sizing::{self, Portion, Problem, Sizing};
use super::{Load, LoadItem, apart, carry, decided, fill, measure, split};
use crate::farm::{Farm, Formulation, Id, Pass, Rig};
use crate::finding::{Basis, Finding, Subject, TypedAt};
use crate::label::Bound;
use crate::language::t;
use crate::mix::line::PlannedLine;
use crate::mix::order::Placed;
use crate::plan::{Plan, PlannedField};
use crate::quantity::number::show;
use crate::quantity::{Amount, Area, AsTyped, CarrierRate, Quantity, Units, Volume};
use crate::season::Log;
use crate::stock::Accounts;
use crate::working::Working;

/// A measured amount that is farther than this from exact, as a share of it, is said. Common practice, no source.
pub(super) const FAR: f64 = 0.05;

/// A pass to be loaded: the walk's state, handed on.
pub(crate) struct Asked<'a> {
    pub(crate) farm: &'a Farm,
    pub(crate) log: &'a Log,
    pub(crate) pass_id: &'a Id,
    pub(crate) pass: &'a Pass,
    pub(crate) rig: &'a Rig,
    /// What is on hand of the products.
    pub(crate) accounts: &'a Accounts,
    pub(crate) carrier: CarrierRate,
    pub(crate) fields: &'a [PlannedField],
    /// What the ground takes.
    pub(crate) spray: Volume,
    pub(crate) lines: &'a [PlannedLine],
    pub(crate) order: &'a [Placed],
    pub(crate) bounds: &'a [Bound],
}

/// The loads of a pass that has ground, a rig and a spray volume, and how their sizes came about.
pub(crate) fn build(
    asked: &Asked,
    findings: &mut Vec<Finding>,
    workings: &mut Vec<Working>,
) -> (Vec<Load>, Option<Sizing>) {
    let Asked { farm, log, pass_id, pass, rig, carrier, lines, .. } = *asked;
    let units = farm.units;
    let nothing = (Vec::new(), None);
    let Some(fill) = fill(asked, findings) else { return nothing };
    if !carry::judge_tank((farm, log), pass_id, pass, fill, findings) {
        return nothing;
    }
    let (carried, extra) = (pass.carried(), pass.beyond());
    let takes = asked.spray + extra;
    if let Some(in_tank) = &pass.in_tank
        && !takes.exceeds(carried)
    {
        findings.push(carry::nothing_to_mix(farm, pass_id, in_tank, takes));
        return nothing;
    }
    let stretches = apart::stretches(farm, pass, asked.fields, findings);
    let laid = match decided::lay(asked, stretches, (carried, extra)) {
        Ok((laid, said)) => {
            findings.extend(said);
            laid
        }
        Err(stop) => {
            findings.push(*stop);
            return nothing;
        }
    };
    let mark = sizing::mark_of(rig, fill, units);
    let least = rig.least.as_ref().map(AsTyped::value);
    let mut sizing = Sizing { aims: sizing::aims_in(&farm.aims), stretches: Vec::new() };
    let mut loads: Vec<Load> = Vec::new();
    let mut rests: Option<Vec<Portion>> = None;
    let mut unroomy = false;
    let count = laid.len();
    for (at, stretch) in laid.into_iter().enumerate() {
        let ids: Vec<Id> = stretch.fields.iter().map(|(id, _)| id.clone()).collect();
        let mut portions: Vec<Portion> =
            lines.iter().filter_map(|line| Portion::of(farm, asked.accounts, line, asked.bounds, &ids)).collect();
        // Each stretch finds the containers as the one before leaves them.
        for (portion, before) in portions.iter_mut().zip(rests.iter().flatten()) {
            portion.stand_as(before);
        }
        let last = at + 1 == count;
        let tank = |load: usize| if loads.is_empty() && load == 0 { carried } else { Volume::ZERO };
        let mut fillings: Vec<(Volume, Volume)> = stretch.decided.clone();
        let mut poured = portions.clone();
        for (load, (volume, _)) in fillings.iter().enumerate() {
            for portion in &mut poured {
                portion.pour_for(*volume - tank(load), carrier);
            }
        }
        if stretch.open.exceeds(Volume::ZERO) {
            let problem = Problem {
                volume: stretch.open,
                carried: tank(fillings.len()),
                extra: if last { extra } else { Volume::ZERO },
                fill,
                mark: mark.0,
                least,
                tops_up: last,
                carrier,
                portions: poured.clone(),
            };
            let before: Vec<Volume> =
                loads.iter().map(|load| load.volume).chain(fillings.iter().map(|(volume, _)| *volume)).collect();
            let within =
                sizing::Asked { farm, pass, aims: &sizing.aims, before: &before, fields: ids, alone: count == 1, last };
            let Some(sized) = sizing::choose(&problem, within) else {
                findings.push(no_way(asked, &problem));
                return nothing;
            };
            let way = sized.chosen.way;
            let volumes = way.volumes();
            let end = volumes.len();
            fillings.extend(
                volumes
                    .into_iter()
                    .enumerate()
                    .map(|(load, volume)| (volume, if load + 1 == end { way.left } else { Volume::ZERO })),
            );
            sizing.stretches.push(sized);
        }
        let areas: Vec<Area> =
            fillings.iter().map(|(volume, left)| (*volume - *left).ground(carrier).unwrap_or(Area::ZERO)).collect();
        let covered = split::over_fields(&areas, &stretch.fields);
        for (((volume, left), area), fields) in fillings.into_iter().zip(areas).zip(covered) {
            let carried = if loads.is_empty() { carried } else { Volume::ZERO };
            let number = u32::try_from(loads.len() + 1).unwrap_or(u32::MAX);
            let load = Load {
                number,
                volume,
                carried,
                left,
                area,
                fields,
                water: Volume::ZERO,
                items: Vec::new(),
                steps: Vec::new(),
            };
            let (load, fits) = filled(asked, load, &mut portions, findings);
            unroomy |= !fits;
            loads.push(load);
        }
        rests = Some(portions);
    }
    if unroomy {
        findings.push(
            Finding::stop(
                Subject::Pass(pass_id.clone()),
                t!("loads-the-products-leave-no-room-for"),
                Basis::Arithmetic,
            )
            .hint(t!("loads-raise-the-spray-volume-or-look")),
        );
    }
    workings.push(number_working(asked, fill, (carried, extra), loads.len()));
    workings.push(sizing::working(&sizing, farm, mark, least));
    note_held_down(&loads, lines, findings);
    judge_bags(farm, lines, findings);
    judge_agitation(rig, &loads, units, &Subject::Rig(pass.rig.clone()), findings);
    carry::judge_left(farm, (pass_id, pass), rig, &loads, findings);
    work_of_first_load(&loads, lines, carrier, units, workings);
    (loads, Some(sizing))
}

/// How far the tank is filled; a Stop where it does not hold that, or where the pass would take more loads than anyone fills.
fn fill(asked: &Asked, findings: &mut Vec<Finding>) -> Option<Volume> {
    let Asked { pass, rig, spray, .. } = *asked;
    let units = asked.farm.units;
    let about_rig = || Subject::Rig(pass.rig.clone());
    // The plan says that it is still to type.
    if rig.tank.is_zero() {
        return None;
    }
    let fill = match &pass.fill_to {
        Some(fill) if fill.exceeds(rig.tank.value()) => {
            findings.push(
                Finding::stop(
                    about_rig(),
                    t!(
                        "loads-the-tank-of-holds-it-cannot",
                        name = rig.name,
                        tank = rig.tank.show(units),
                        fill = fill.show(units)
                    ),
                    Basis::Arithmetic,
                )
                .hint(t!("loads-lower-fill-to-or-clear-it")),
            );
            return None;
        }
        Some(fill) => fill.value(),
        None => rig.tank.value(),
    };
    let text = match spray.ratio(fill) {
        None => t!("loads-the-tank-of-holds-nothing", name = rig.name),
        Some(ratio) if ratio > split::MOST_LOADS => t!(
            "loads-of-spray-in-fillings-of-would",
            spray = spray.show(units),
            fill = fill.show(units),
            show = show(ratio.ceil(), 0)
        ),
        Some(_) => return Some(fill),
    };
    findings.push(
        Finding::stop(about_rig(), text, Basis::Arithmetic)
            .hint(t!("loads-look-at-the-tanks-volume-in"))
            .at(TypedAt::Tank),
    );
    None
}

/// Where what is in the tank and what is to be left over fit no loads.
fn no_way(asked: &Asked, problem: &Problem) -> Finding {
    let units = asked.farm.units;
    let text = t!(
        "loads-of-spray-of-which-are-to",
        volume = problem.volume.show(units),
        extra = problem.extra.show(units),
        carried = problem.carried.show(units),
        fill = problem.fill.show(units)
    );
    Finding::stop(Subject::Pass(asked.pass_id.clone()), text, Basis::Arithmetic)
        .hint(t!("loads-mix-less-beyond-the-ground-or"))
}

/// A load with its products and steps, and whether they find room in it.
fn filled(asked: &Asked, mut load: Load, portions: &mut [Portion], findings: &mut Vec<Finding>) -> (Load, bool) {
    let Asked { farm, carrier, lines, .. } = *asked;
    let units = farm.units;
    let new = load.volume - load.carried;
    let ground = new.ground(carrier).filter(|_| new.exceeds(load.volume * 1e-9));
    for line in lines {
        let (Some(product), Some(ground)) = (farm.products.get(&line.product), ground) else { continue };
        let Some(portion) = portions.iter_mut().find(|portion| portion.product == line.product) else { continue };
        let exact = line.per_area.over(ground);
        let measured = measure::measure(exact, portion.bounds(new, carrier), product, &farm.measuring, units);
        let step = measure::step(product, &farm.measuring, units);
        judge_rounding(&measured, line, load.number, farm, step, findings);
        portion.pour(measured.amount);
        load.items.push(LoadItem { product: line.product.clone(), number: line.number, measured });
    }
    let liquids: Volume = load
        .items
        .iter()
        .map(|item| match item.measured.exact {
            Amount::Volume(volume) => volume,
            Amount::Mass(_) => Volume::ZERO,
        })
        .sum();
    load.water = new - liquids;
    let own = asked.rig.mark.as_ref().map(AsTyped::value);
    let (steps, fits) = fill::steps(load.volume, load.carried, &load.items, asked.order, own, units);
    load.steps = steps;
    (load, fits)
}

fn number_working(asked: &Asked, fill: Volume, (carried, extra): (Volume, Volume), count: usize) -> Working {
    let units = asked.farm.units;
    let mut working = Working::new(t!("loads-number-of-loads"));
    let mut volume = asked.spray;
    if !extra.is_zero() {
        volume = volume + extra;
        working = working.step(
            t!("loads-for-the-ground-beyond-it", spray = asked.spray.show(units), extra = extra.show(units)),
            volume.show(units),
        );
    }
    if !carried.is_zero() {
        working = working.step(t!("loads-of-it-in-the-tank-already"), carried.show(units));
    }
    working
        .step(format!("{} ÷ {}", volume.show(units), fill.show(units)), show(volume.ratio(fill).unwrap_or_default(), 3))
        .step(t!("loads-counted"), count.to_string())
}

fn judge_rounding(
    measured: &measure::Measured,
    line: &PlannedLine,
    load: u32,
    farm: &Farm,
    step: Amount,
    findings: &mut Vec<Finding>,
) {
    let units = farm.units;
    if measured.amount.is_zero() && !measured.exact.is_zero() {
        findings.push(
            Finding::stop(
                Subject::Load(load),
                t!(
                    "loads-load-needs-of-less-than-the",
                    load = load,
                    exact = measured.exact.show(units),
                    name = line.name,
                    step = step.show(units)
                ),
                Basis::Arithmetic,
            )
            .hint(finer_hint(line, farm)),
        );
    } else if measured.rounding.abs() > FAR {
        findings.push(
            Finding::check(
                Subject::Load(load),
                t!(
                    "loads-load-of-is-measured-as",
                    load = load,
                    exact = measured.exact.show(units),
                    name = line.name,
                    text = measured.text,
                    rounding = rounding_words(measured.rounding)
                ),
                Basis::Arithmetic,
            )
            .hint(finer_hint(line, farm)),
        );
    }
}

/// What to do where the marks are too coarse. A water-soluble bag has no finer ones.
fn finer_hint(line: &PlannedLine, farm: &Farm) -> &'static str {
    let is_bag = farm.products.get(&line.product).is_some_and(|product| product.formulation == Formulation::WSP);
    if is_bag { t!("loads-choose-loads-that-take-whole-bags") } else { t!("loads-give-the-product-a-finer-measuring") }
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
        let said = match numbers.as_slice() {
            [_] => t!("loads-is-rounded-down-in-one", load = first, name = line.name, amount = text),
            many => t!("loads-is-rounded-down-in-several", loads = many.join(", "), name = line.name),
        };
        findings.push(Finding::note(Subject::Product(line.product.clone()), said, Basis::Arithmetic));
    }
}

/// A water-soluble bag goes in whole, so what one holds must be known.
fn judge_bags(farm: &Farm, lines: &[PlannedLine], findings: &mut Vec<Finding>) {
    for line in lines {
        let Some(product) = farm.products.get(&line.product) else { continue };
        let step = measure::step(product, &farm.measuring, farm.units);
        let bag = product.containers.first().map(|container| container.size.value());
        if product.formulation == Formulation::WSP && bag.is_none_or(|bag| bag != step || bag.is_zero()) {
            let text = t!("loads-comes-in-water-soluble-bags-and", name = line.name);
            let about = Subject::Product(line.product.clone());
            findings.push(
                Finding::check(about, text, Basis::Arithmetic)
                    .hint(t!("loads-type-the-bag-as-the-first"))
                    .at(TypedAt::Container),
            );
        }
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
                t!(
                    "loads-load-is-only-on",
                    number = last.number,
                    volume = last.volume.show(units),
                    area = last.area.show(units)
                ),
                Basis::Arithmetic,
            )
            .hint(t!("loads-even-loads-settle-it-or-the")),
        );
    }
    let Some(least) = &rig.least else { return };
    if let Some(small) = loads.iter().find(|load| least.exceeds(load.volume)) {
        findings.push(
            Finding::check(
                about.clone(),
                t!(
                    "loads-load-is-below-the-agitation-of",
                    number = small.number,
                    volume = small.volume.show(units),
                    least = least.show(units),
                    name = rig.name
                ),
                Basis::Arithmetic,
            )
            .hint(t!("loads-even-loads-may-settle-it")),
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
    let new = load.new_spray();
    let ground = new.ground(carrier).unwrap_or(Area::ZERO);
    let mut working = Working::new(t!("loads-in-load", name = line.name, number = load.number));
    if !load.carried.is_zero() {
        let what =
            t!("loads-in-the-tank-already", volume = load.volume.show(units), carried = load.carried.show(units));
        working = working.step(what, new.show(units));
    }
    working
        .step(format!("{} ÷ {}", new.show(units), carrier.show(units)), ground.show(units))
        .step(format!("× {}", line.per_area.show(units)), item.measured.exact.show(units))
        .step(t!("loads-to-the-measuring-step"), item.measured.text.clone())
        .step(t!("loads-rounding"), rounding_words(item.measured.rounding))
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
