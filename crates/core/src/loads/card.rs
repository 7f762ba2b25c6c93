//! What stands on the card of a load, drawn from the plan and the labels as typed.

use jiff::civil::{Date, Weekday};

use super::gauge::gauge;
use super::{FillStep, Load, day_limits, drawn, short};
use crate::farm::card::{CardContent, CardField, CardStep};
use crate::farm::label::Says;
use crate::farm::{CarrierKind, Farm, Field, Id, Pass, Product, Rig};
use crate::finding::Level;
use crate::label::droplets::{self, OfPass};
use crate::label::when::{Situation, holds, words};
use crate::label::{harvest, laws};
use crate::plan::Plan;
use crate::quantity::Quantity;
use crate::quantity::number::show;
use crate::rig;
use crate::words::ends;

/// The usual cautions at the tank; the labels' own come before them.
const USUAL: [&str; 4] = [
    "Measure wind, direction and temperature at the boom before starting; do not spray in an inversion or toward people, water, bees or a sensitive crop.",
    "Never pour concentrates together; let each go into water, agitated, and rinse the inductor before the next.",
    "Keep an air gap or a backflow valve between the water source and the tank.",
    "Rinse each emptied container three times into the tank.",
];

/// What is written down at the boom.
const BLANKS: [&str; 8] =
    ["Wind at the boom, and from where", "Gust", "Temperature", "Humidity", "Start", "Finish", "Mixed by", "Signature"];

/// The content of the cards of a plan, one for each load.
pub fn cards(farm: &Farm, plan: &Plan) -> Vec<CardContent> {
    plan.loads.iter().filter_map(|load| card(farm, plan, load)).collect()
}

/// The content of one load's card; `None` where the pass or its rig is gone.
pub fn card(farm: &Farm, plan: &Plan, load: &Load) -> Option<CardContent> {
    let pass = farm.passes.get(&plan.pass)?;
    let rig = farm.rigs.get(&pass.rig)?;
    let units = farm.units;
    let products: Vec<(&Id, &Product)> =
        plan.lines.iter().filter_map(|line| farm.products.get_key_value(&line.product)).collect();

    let settings = settings(farm, plan, pass, rig);
    let steps = load
        .steps
        .iter()
        .enumerate()
        .filter_map(|(at, step)| match step {
            FillStep::InTank { to } => Some(CardStep {
                number: None,
                what: "In the tank already".to_owned(),
                hint: "agitator on".to_owned(),
                amount: to.show(units),
                detail: "of this mix".to_owned(),
            }),
            FillStep::Water { to } => Some(CardStep {
                number: None,
                what: pass.carrier_kind.on_card().to_owned(),
                hint: match at {
                    0 => "agitator on".to_owned(),
                    at if at + 1 == load.steps.len() && load.left.exceeds(load.volume * 1e-9) => {
                        format!("agitate; {} are left after the last metre", load.left.show(units))
                    }
                    at if at + 1 == load.steps.len() => "agitate until empty".to_owned(),
                    _ => String::new(),
                },
                amount: format!("to {}", to.show(units)),
                detail: String::new(),
            }),
            FillStep::Product { item, .. } => {
                let item = load.items.get(*item)?;
                let product = farm.products.get(&item.product)?;
                Some(CardStep {
                    number: Some(item.number),
                    what: product.name.clone(),
                    hint: plan
                        .order
                        .iter()
                        .find(|placed| placed.product == item.product)
                        .map_or(String::new(), |placed| placed.how.clone()),
                    amount: item.measured.text.clone(),
                    detail: item.measured.containers.clone(),
                })
            }
        })
        .collect();

    Some(CardContent {
        paper: farm.paper,
        farm: farm.name.clone(),
        pass: pass.name.clone(),
        date: long_date(pass.date),
        load: load.number,
        of: u32::try_from(plan.loads.len()).unwrap_or(u32::MAX),
        fields: load
            .fields
            .iter()
            .filter_map(|(id, area)| {
                let field = farm.fields.get(id)?;
                let planned = plan.fields.iter().find(|planned| planned.field == *id)?;
                let mut words = area.show(units);
                if planned.area.exceeds(*area) {
                    words = format!("{words} of {}", planned.area.show(units));
                }
                // The crew knows the field by its whole ground.
                if planned.covered.exceeds(planned.area) {
                    words = format!("{words} in bands, on {} of ground", planned.covered.show(units));
                }
                Some(CardField { name: field.name.clone(), area: words })
            })
            .collect(),
        fill_to: load.volume.show(units),
        water: match pass.carrier_kind {
            CarrierKind::Water => plan.water.name.clone(),
            fertilizer => fertilizer.name().to_owned(),
        },
        rig: rig.name.clone(),
        settings,
        calibrated: last_calibration(farm, pass, rig).map(short_date).unwrap_or_default(),
        spray_between: plan.hours.best.map(|best| best.ends().join(" and ")).unwrap_or_default(),
        limits: day_limits::of_load(farm, plan, pass, load),
        blanks: BLANKS.map(str::to_owned).to_vec(),
        steps,
        short: short::rows(farm, plan, load),
        outlines: drawn::fields(farm, plan, load.fields.iter().map(|(id, _)| id)),
        gauge: gauge(load, &plan.names, pass.carrier_kind, rig.tank.value(), units),
        wear: said(farm, pass, &products, |says| match says {
            Says::Wear { what } => Some(what.clone()),
            _ => None,
        }),
        keep_out: keep_out(&products),
        harvest: harvest_from(farm, pass, &products, load),
        cautions: limits_and_cautions(farm, pass, &products).into_iter().chain(USUAL.map(str::to_owned)).collect(),
        open_findings: plan
            .findings
            .iter()
            .filter(|finding| finding.level >= Level::Check)
            .map(|finding| format!("{}: {}", finding.level.word(), finding.text))
            .collect(),
        emergency: farm.emergency.clone(),
        note: pass.note.clone(),
    })
}

/// What labels and the laws of the day say of one thing, each distinct saying once, with the products and the rules it comes from. A condition that holds is
/// not printed; one that cannot be told is.
pub(crate) fn said(
    farm: &Farm,
    pass: &Pass,
    products: &[(&Id, &Product)],
    pick: impl Fn(&Says) -> Option<String>,
) -> Vec<String> {
    said_in(farm, &[(pass, products)], pick)
}

/// The same over several passes.
pub(crate) fn said_in(
    farm: &Farm,
    passes: &[(&Pass, &[(&Id, &Product)])],
    pick: impl Fn(&Says) -> Option<String>,
) -> Vec<String> {
    let mut sayings: Vec<(String, Vec<String>)> = Vec::new();
    let all = passes.iter().flat_map(|(pass, products)| products.iter().map(move |product| (*pass, *product)));
    for (pass, (id, product)) in all {
        let situation = Situation::new(farm, pass, id, product);
        for (speaker, statement) in laws::binding(farm, product, pass.date, |says| pick(says).is_some()) {
            let Some(mut saying) = pick(&statement.says) else { continue };
            match holds(&statement.when, &situation) {
                Some(true) => {}
                Some(false) => continue,
                None => {
                    let when: Vec<String> = statement.when.iter().map(words).collect();
                    saying = format!("{saying} {}", when.join(" and "));
                }
            }
            match sayings.iter_mut().find(|(known, _)| known.eq_ignore_ascii_case(&saying)) {
                Some((_, names)) if names.contains(&speaker.name()) => {}
                Some((_, names)) => names.push(speaker.name()),
                None => sayings.push((saying, vec![speaker.name()])),
            }
        }
    }
    sayings.into_iter().map(|(saying, names)| format!("{saying} ({})", names.join(", "))).collect()
}

/// How the rig is set, one thing a line.
fn settings(farm: &Farm, plan: &Plan, pass: &Pass, rig: &Rig) -> Vec<String> {
    let units = farm.units;
    let mut lines: Vec<String> = plan.carrier.map(|carrier| carrier.show(units)).into_iter().collect();
    let height = pass.height_in(farm).map(|height| format!("boom at {}", height.show(units)));
    let set = rig::set_of(farm, pass).map(|(_, set)| set);
    let droplets = match plan.carrier.map(|carrier| droplets::of_the_pass(farm, pass, carrier)) {
        Some(OfPass::Known(classes)) => Some(format!("{} droplets", classes.words())),
        // Only where there is a table to look into is it news that it does not tell.
        Some(OfPass::NotKnown(..)) if set.is_some_and(|set| !set.droplets.is_empty()) => {
            Some("droplets: the nozzle table does not tell".to_owned())
        }
        _ => None,
    };
    let set = set.map_or(rig.nozzles.clone(), |set| set.name.clone());
    let speed = pass.speed_in(farm).map(|speed| speed.show(units));
    let setting = plan.setting.as_ref().and_then(|setting| Some((setting, setting.pressure?)));
    if let Some((setting, pressure)) = setting {
        let within = |value: String, range: Option<(String, String)>| match range {
            Some((least, most)) if least != most => format!("{value} ({})", ends(&least, "to", &most)),
            _ => value,
        };
        let speeds = setting.speeds.and_then(|speeds| rig::setting::in_tenths(speeds, units));
        let speeds = speeds.map(|speeds| (speeds.least.show(units), speeds.most.show(units)));
        let pressures = setting.pressures.map(|range| (range.least.show(units), range.most.show(units)));
        lines.push(within(setting.speed.show(units), speeds));
        lines.push(within(pressure.show(units), pressures));
        lines.extend(setting.duty_words().map(|duty| format!("valves open {duty}")));
    } else {
        let pressure = pass.pressure_in(farm).map(|pressure| pressure.show(units));
        lines.extend([speed, pressure].into_iter().flatten().reduce(|a, b| format!("{a}, {b}")));
    }
    lines.extend(Some(set).filter(|set| !set.is_empty()));
    lines.extend([droplets, height].into_iter().flatten().reduce(|a, b| format!("{a}, {b}")));
    lines
}

/// The day of the last calibration with the nozzle set of the pass.
fn last_calibration(farm: &Farm, pass: &Pass, rig: &Rig) -> Option<Date> {
    let set = rig::set_of(farm, pass).map_or("", |(id, _)| id.as_str());
    rig::calibration::latest(rig, set, pass.date).map(|calibration| calibration.date)
}

fn limits_and_cautions(farm: &Farm, pass: &Pass, products: &[(&Id, &Product)]) -> Vec<String> {
    // Wind, air and rain stand among the limits of the day.
    said(farm, pass, products, |says| match says {
        Says::Caution { what } => Some(what.clone()),
        Says::NotWith { what, days: 0 } => Some(format!("Not together with {what}")),
        Says::NotWith { what, days } => {
            Some(format!("Not together with {what}, nor within {days} days on the same field"))
        }
        Says::Droplets { finest, coarsest } => Some(format!("Droplets {}", droplets::words(*finest, *coarsest))),
        Says::NotToward { what } => Some(format!("Not while the wind blows toward {what}")),
        Says::BoomHeight { most } => Some(format!("Boom at most {}", most.show(farm.units))),
        Says::GroundSpeed { most } => Some(format!("Drive at most {}", most.show(farm.units))),
        Says::Buffer { to, width, downwind_only } => {
            let wind = if *downwind_only { " where the wind blows toward it" } else { "" };
            Some(format!("Keep {} from {to}{wind}", width.show(farm.units)))
        }
        _ => None,
    })
}

/// The pesticides of a mix whose label, as typed, does not say a thing; "; none typed for …" to follow what others say.
fn silent(products: &[(&Id, &Product)], says: impl Fn(&Id, &Product) -> bool) -> String {
    let silent: Vec<&str> = products
        .iter()
        .filter(|(id, product)| product.kind.is_pesticide() && !says(id, product))
        .map(|(_, product)| product.name.as_str())
        .collect();
    if silent.is_empty() { String::new() } else { format!("; none typed for {}", silent.join(", ")) }
}

/// The hours before people may enter that a label asks for, the most of its statements.
pub(crate) fn re_entry_hours(product: &Product) -> Option<u32> {
    let hours = product.label.iter().filter_map(|statement| match statement.says {
        Says::ReEntry { hours } => Some(hours),
        _ => None,
    });
    hours.max()
}

/// The longest of a mix, and the product that asks for it.
pub(crate) fn longest_re_entry<'a>(products: &[(&'a Id, &'a Product)]) -> Option<(u32, &'a Id, &'a Product)> {
    products
        .iter()
        .filter_map(|(id, product)| Some((re_entry_hours(product)?, *id, *product)))
        .max_by_key(|(hours, ..)| *hours)
}

fn keep_out(products: &[(&Id, &Product)]) -> String {
    longest_re_entry(products).map_or_else(
        || "see the labels; no re-entry time is typed".to_owned(),
        |(longest, _, product)| {
            format!(
                "{longest} h after the last of the spray ({}){}",
                product.name,
                silent(products, |_, product| re_entry_hours(product).is_some())
            )
        },
    )
}

fn harvest_from(farm: &Farm, pass: &Pass, products: &[(&Id, &Product)], load: &Load) -> String {
    let earliest = |id: &Id, product: &Product, field: &Field| {
        harvest::earliest(product, field, &Situation::new(farm, pass, id, product), pass.date)
    };
    let fields: Vec<&Field> = load.fields.iter().filter_map(|(id, _)| farm.fields.get(id)).collect();
    let latest = fields
        .iter()
        .flat_map(|field| products.iter().map(move |(id, product)| (field, *id, *product)))
        .filter_map(|(field, id, product)| {
            earliest(id, product, field).map(|(day, days, _)| (day, days, product.name.as_str()))
        })
        .max_by_key(|(day, ..)| *day);
    latest.map_or_else(
        || "see the labels; no harvest interval is typed".to_owned(),
        |(day, days, name)| {
            let speaks = |id: &Id, product: &Product| fields.iter().all(|field| earliest(id, product, field).is_some());
            format!("{}, {days} days after this pass ({name}){}", short_date(day), silent(products, speaks))
        },
    )
}

/// "Thursday 12 June 2031".
pub fn long_date(date: Date) -> String {
    let day = match date.weekday() {
        Weekday::Monday => "Monday",
        Weekday::Tuesday => "Tuesday",
        Weekday::Wednesday => "Wednesday",
        Weekday::Thursday => "Thursday",
        Weekday::Friday => "Friday",
        Weekday::Saturday => "Saturday",
        Weekday::Sunday => "Sunday",
    };
    format!("{day} {}", short_date(date))
}

/// "12 June 2031".
pub fn short_date(date: Date) -> String {
    const MONTHS: [&str; 12] = [
        "January",
        "February",
        "March",
        "April",
        "May",
        "June",
        "July",
        "August",
        "September",
        "October",
        "November",
        "December",
    ];
    let month =
        usize::try_from(date.month()).ok().and_then(|month| MONTHS.get(month.saturating_sub(1))).copied().unwrap_or("");
    format!("{} {month} {}", date.day(), date.year())
}

/// The rounding of an item, in words: "1 fl oz, 0.3 % more than exact".
pub fn rounding_words(rounding: f64) -> String {
    if rounding.abs() < 5e-5 {
        "exact".to_owned()
    } else {
        format!("{} % {} than exact", show(rounding.abs() * 100.0, 2), if rounding > 0.0 { "more" } else { "less" })
    }
}
