//! What stands on the card of a load, drawn from the plan and the labels as typed.

use jiff::civil::Date;

use super::gauge::gauge;
use super::{FillStep, Load, day_limits, drawn, measure, short};
use crate::farm::card::{CardContent, CardField, CardStep};
use crate::farm::label::Says;
use crate::farm::{CarrierKind, Droplets, Farm, Field, Id, Pass, Product, Rig};
use crate::finding::Level;
use crate::label::droplets::{self, OfPass};
use crate::label::when::{self, Situation, holds};
use crate::label::{for_crop, harvest, laws, once};
use crate::language::days::{day, long_day};
use crate::language::{Language, Say, or_english, say, t, yes_or_no};
use crate::mix::order::how;
use crate::plan::Plan;
use crate::quantity::number::show;
use crate::quantity::{Quantity, Rate, Units};
use crate::rig;
use crate::rig::before::CleanFirst;
use crate::weather::Span;
use crate::words::{one_unit, without_groups};

/// The usual cautions at the tank; the labels' own come before them.
const USUAL: [&str; 4] = ["card-usual-measure", "card-usual-pour", "card-usual-air-gap", "card-usual-rinse"];

/// What is written down at the boom.
const BLANKS: [&str; 8] = [
    "card-blank-wind",
    "card-blank-gust",
    "card-blank-temperature",
    "card-blank-humidity",
    "card-blank-start",
    "card-blank-finish",
    "card-blank-mixed-by",
    "card-blank-signature",
];

/// The content of the cards of a plan, one for each load.
pub fn cards(farm: &Farm, plan: &Plan) -> Vec<CardContent> {
    plan.loads.iter().filter_map(|load| card(farm, plan, load)).collect()
}

/// The content of one load's card; `None` where the pass or its rig is gone.
pub fn card(farm: &Farm, plan: &Plan, load: &Load) -> Option<CardContent> {
    let pass = farm.passes.get(&plan.pass)?;
    let rig = farm.rigs.get(&pass.rig)?;
    let units = farm.units;
    let on_card = |said: &Say| said.in_languages(&farm.card_languages);
    let products: Vec<(&Id, &Product)> =
        plan.lines.iter().filter_map(|line| farm.products.get_key_value(&line.product)).collect();

    let settings = settings(farm, plan, pass, rig);
    let limits = day_limits::of_load(farm, plan, pass, load);
    let clean = plan.clean_first.as_ref().filter(|_| load.number == 1).map(|first| clean_step(farm, first));
    let filling = load.steps.iter().enumerate().filter_map(|(at, step)| match step {
        FillStep::InTank { to } => Some(CardStep {
            number: None,
            what: on_card(&say("card-in-tank")),
            hint: on_card(&say("card-agitator-on")),
            amount: to.show(units),
            rate: String::new(),
            detail: on_card(&say("card-of-this-mix")),
        }),
        FillStep::Water { to } => Some(CardStep {
            number: None,
            what: on_card(&pass.carrier_kind.on_card()),
            hint: match at {
                0 => on_card(&say("card-agitator-on")),
                at if at + 1 == load.steps.len() && load.left.exceeds(load.volume * 1e-9) => {
                    on_card(&say("card-agitate-left").with("left", load.left.show(units)))
                }
                at if at + 1 == load.steps.len() => on_card(&say("card-agitate-until-empty")),
                _ => String::new(),
            },
            amount: on_card(&say("card-to").with("mark", to.show(units))),
            rate: String::new(),
            detail: String::new(),
        }),
        FillStep::Product { item, .. } => {
            let item = load.items.get(*item)?;
            let product = farm.products.get(&item.product)?;
            Some(CardStep {
                number: Some(item.number),
                what: product.name.clone(),
                hint: on_card(&how(product, pass.carrier_kind)),
                amount: item.measured.text.clone(),
                rate: rate(plan, pass, &item.product, units),
                detail: on_card(&measure::containers_said(item.measured.amount, &product.containers, units)),
            })
        }
    });
    let steps = clean.into_iter().chain(filling).collect();

    let mut content = CardContent {
        paper: farm.paper,
        languages: farm.card_languages.clone(),
        farm: farm.name.clone(),
        pass: pass.name.clone(),
        date: on_card(&long_day(pass.date)),
        load: load.number,
        of: u32::try_from(plan.loads.len()).unwrap_or(u32::MAX),
        fields: load
            .fields
            .iter()
            .filter_map(|(id, area)| {
                let field = farm.fields.get(id)?;
                let planned = plan.fields.iter().find(|planned| planned.field == *id)?;
                let mut words = Say::from(area.show(units));
                if planned.area.exceeds(*area) {
                    words = say("card-area-of").with("area", words).with("all", planned.area.show(units));
                }
                // The crew knows the field by its whole ground.
                if planned.covered.exceeds(planned.area) {
                    let ground = planned.covered.show(units);
                    words = say("card-area-in-bands").with("area", words).with("ground", ground);
                }
                Some(CardField { name: field.name.clone(), area: on_card(&words) })
            })
            .collect(),
        fill_to: load.volume.show(units),
        water: match pass.carrier_kind {
            CarrierKind::Water => plan.water.name.clone(),
            fertilizer => on_card(&fertilizer.named_on_card()),
        },
        rig: rig.name.clone(),
        settings,
        calibrated: last_calibration(farm, pass, rig).map(|date| on_card(&day(date))).unwrap_or_default(),
        spray_between: plan.hours.best.map(|best| on_card(&between(best))).unwrap_or_default(),
        limits: limits.asked,
        usual: limits.usual,
        blanks: BLANKS.map(|id| say(id).lines(&farm.card_languages).join("\n")).to_vec(),
        steps,
        short: short::rows(farm, plan, load),
        outlines: drawn::fields(farm, plan, load.fields.iter().map(|(id, _)| id), &farm.card_languages),
        gauge: gauge(load, &plan.names, pass.carrier_kind, rig.tank.value(), units, &farm.card_languages),
        wear: in_lines(
            farm,
            &said(farm, pass, &products, |says| match says {
                Says::Wear { what } => Some(what.as_str().into()),
                _ => None,
            }),
        ),
        keep_out: on_card(&keep_out(&products)),
        harvest: on_card(&harvest_from(farm, pass, &products, load)),
        cautions: {
            let mut cautions = droplets_asked(farm, pass, &products);
            cautions.extend(limits_and_cautions(farm, pass, &products));
            cautions.extend(USUAL.map(say));
            in_lines(farm, &cautions)
        },
        open_findings: or_english(&farm.card_languages)
            .iter()
            .flat_map(|language| plan.findings_in(*language).iter().map(|finding| (*language, finding)))
            .filter(|(_, finding)| finding.level >= Level::Check)
            .map(|(language, finding)| format!("{}: {}", level(finding.level).in_language(language), finding.text))
            .collect(),
        emergency: if farm.emergency.is_empty() { vec![String::new()] } else { farm.emergency.clone() },
        note: pass.note.clone(),
    };
    if farm.card_languages.iter().any(|language| *language != Language::English) {
        ungroup(&mut content);
    }
    Some(content)
}

/// Takes the comma out of the thousands of amounts: "1,200 gal" is one and a fifth to many who read Spanish.
fn ungroup(content: &mut CardContent) {
    let steps =
        content.steps.iter_mut().flat_map(|step| [&mut step.amount, &mut step.rate, &mut step.detail, &mut step.hint]);
    let fields = content.fields.iter_mut().map(|field| &mut field.area);
    let short =
        content.short.iter_mut().flat_map(|row| [&mut row.ground, &mut row.spray].into_iter().chain(&mut row.amounts));
    let strips = content.outlines.iter_mut().flat_map(|outline| &mut outline.strips);
    let layers = content.gauge.layers.iter_mut().flat_map(|layer| [&mut layer.label, &mut layer.amount]);
    let marks = content.gauge.marks.iter_mut().map(|mark| &mut mark.label);
    let all = steps.chain(fields).chain(short).chain(strips).chain(layers).chain(marks);
    for text in all.chain(&mut content.settings).chain(&mut content.cautions).chain([&mut content.fill_to]) {
        *text = without_groups(text);
    }
}

/// Each saying in all languages of the cards: all of one language, then all of the next.
fn in_lines(farm: &Farm, all: &[Say]) -> Vec<String> {
    once(
        or_english(&farm.card_languages).iter().flat_map(|language| all.iter().map(|said| said.in_language(*language))),
    )
}

fn between(span: Span) -> Say {
    let [from, to] = span.ends();
    say("card-between").with("from", from).with("to", to)
}

/// The level of a finding; its words are those of the plan.
const fn level(level: Level) -> Say {
    say(match level {
        Level::Stop => "card-stop",
        Level::Check => "card-check",
        Level::Note => "card-note-level",
    })
}

/// What labels and the laws of the day say of one thing, each distinct saying once, with the products and the rules it comes from. A condition that holds is
/// not printed; one that cannot be told is.
pub(crate) fn said(
    farm: &Farm,
    pass: &Pass,
    products: &[(&Id, &Product)],
    pick: impl Fn(&Says) -> Option<Say>,
) -> Vec<Say> {
    said_in(farm, &[(pass, products)], pick)
}

/// The same over several passes.
pub(crate) fn said_in(
    farm: &Farm,
    passes: &[(&Pass, &[(&Id, &Product)])],
    pick: impl Fn(&Says) -> Option<Say>,
) -> Vec<Say> {
    let mut sayings: Vec<(Say, String, Vec<String>)> = Vec::new();
    let all = passes.iter().flat_map(|(pass, products)| products.iter().map(move |product| (*pass, *product)));
    for (pass, (id, product)) in all {
        let situation = Situation::new(farm, pass, id, product);
        for (speaker, statement) in laws::binding(farm, product, pass.date, |says| pick(says).is_some()) {
            let Some(mut saying) = pick(&statement.says) else { continue };
            match holds(&statement.when, &situation) {
                Some(true) => {}
                Some(false) => continue,
                None => {
                    let when = statement.when.iter().map(when::said);
                    let when = when.reduce(|a, b| say("card-and").with("a", a).with("b", b));
                    saying = say("card-when").with("what", saying).with("when", when.unwrap_or(Say::nothing()));
                }
            }
            let plain = saying.in_language(Language::English).to_ascii_lowercase();
            match sayings.iter_mut().find(|(_, known, _)| *known == plain) {
                Some((.., names)) if names.contains(&speaker.name()) => {}
                Some((.., names)) => names.push(speaker.name()),
                None => sayings.push((saying, plain, vec![speaker.name()])),
            }
        }
    }
    let said = |(saying, _, names): (Say, String, Vec<String>)| {
        say("card-said-by").with("what", saying).with("who", names.join(", "))
    };
    sayings.into_iter().map(said).collect()
}

/// The rate of a product over ground: as typed where it is typed so.
fn rate(plan: &Plan, pass: &Pass, product: &str, units: Units) -> String {
    let typed = pass.mix.iter().find(|line| line.product == product).map(|line| &line.rate);
    if let Some((Rate::VolumePerArea(_) | Rate::MassPerArea(_) | Rate::OuncesPerArea(_), text)) =
        typed.map(|rate| (rate.value(), rate.text()))
    {
        return text.to_owned();
    }
    let line = plan.lines.iter().find(|line| line.product == product);
    line.map(|line| line.per_area.show(units)).unwrap_or_default()
}

/// The line to tick before the first load, where the rig may still hold another mix.
fn clean_step(farm: &Farm, first: &CleanFirst) -> CardStep {
    let on_card = |said: &Say| said.in_languages(&farm.card_languages);
    let after = first.after.iter().map(|(name, _)| Say::from(name.as_str()));
    let after = after.reduce(|a, b| say("card-and").with("a", a).with("b", b)).unwrap_or(Say::nothing());
    let after = say(if first.undecided { "card-clean-if" } else { "card-clean-after" }).with("names", after);
    let how = first.how.iter().map(|how| Say::from(how.as_str()));
    let hint = Say::all([after, say("card-clean-how")].into_iter().chain(how), "; ");
    CardStep {
        number: None,
        what: on_card(&say("card-clean-of").with("products", first.products.join(", "))),
        hint: on_card(&hint),
        amount: first
            .rinsing
            .map_or_else(|| on_card(&say("card-clean-out")), |rinsing| on_card(&rinsing.said(farm.units))),
        rate: String::new(),
        detail: String::new(),
    }
}

/// What labels and laws ask of the droplets: the strictest of what surely speaks, with those that ask for it, and what may speak and is
/// stricter still.
fn droplets_asked(farm: &Farm, pass: &Pass, products: &[(&Id, &Product)]) -> Vec<Say> {
    let fields: Vec<&Field> = pass.fields.iter().filter_map(|field| farm.fields.get(field)).collect();
    let mut sure: Vec<(Droplets, Option<Droplets>, String)> = Vec::new();
    for (id, product) in products {
        let situation = Situation::new(farm, pass, id, product);
        for (speaker, statement) in
            laws::binding(farm, product, pass.date, |says| matches!(says, Says::Droplets { .. }))
        {
            let Says::Droplets { finest, coarsest } = statement.says else { continue };
            let of_crop = fields.iter().any(|field| for_crop(statement, field));
            if of_crop
                && statement.from_stage.is_empty()
                && statement.to_stage.is_empty()
                && holds(&statement.when, &situation) == Some(true)
            {
                sure.push((finest, coarsest, speaker.name()));
            }
        }
    }
    let finest = sure.iter().map(|(finest, ..)| *finest).max();
    let coarsest = sure.iter().filter_map(|(_, coarsest, _)| *coarsest).min();
    let words = |finest: Droplets, coarsest: Option<Droplets>| {
        say("card-caution-droplets").with("classes", droplets::on_card(finest, coarsest))
    };
    // Classes that exclude one another are a Stop, and both are told.
    let Some(strictest) = finest.filter(|finest| coarsest.is_none_or(|coarsest| coarsest >= *finest)) else {
        return said(farm, pass, products, |says| match says {
            Says::Droplets { finest, coarsest } => Some(words(*finest, *coarsest)),
            _ => None,
        });
    };
    let who = sure.iter().filter(|(one, other, _)| *one == strictest || other.is_some() && *other == coarsest);
    let who = once(who.map(|(.., name)| name.clone())).join(", ");
    let mut all = vec![say("card-said-by").with("what", words(strictest, coarsest)).with("who", who)];
    all.extend(said(farm, pass, products, |says| match says {
        Says::Droplets { finest, coarsest: other }
            if *finest > strictest || other.is_some_and(|other| coarsest.is_none_or(|most| other < most)) =>
        {
            Some(words(*finest, *other))
        }
        _ => None,
    }));
    all
}

/// How the rig is set, one thing a line.
fn settings(farm: &Farm, plan: &Plan, pass: &Pass, rig: &Rig) -> Vec<String> {
    let units = farm.units;
    let on_card = |said: &Say| said.in_languages(&farm.card_languages);
    let mut lines: Vec<String> = plan.carrier.map(|carrier| carrier.show(units)).into_iter().collect();
    let height = pass.height_in(farm).map(|height| on_card(&say("card-boom-at").with("height", height.show(units))));
    let set = rig::set_of(farm, pass).map(|(_, set)| set);
    let droplets = match plan.carrier.map(|carrier| droplets::of_the_pass(farm, pass, carrier)) {
        Some(OfPass::Known(classes)) => {
            let classes = droplets::on_card(classes.finest, Some(classes.coarsest));
            Some(on_card(&say("card-droplets").with("classes", classes)))
        }
        // Only where there is a table to look into is it news that it does not tell.
        Some(OfPass::NotKnown(..)) if set.is_some_and(|set| !set.droplets.is_empty()) => {
            Some(on_card(&say("card-droplets-not-told")))
        }
        _ => None,
    };
    let set = set.map_or(rig.nozzles.clone(), |set| set.name.clone());
    let speed = pass.speed_in(farm).map(|speed| speed.show(units));
    let setting = plan.setting.as_ref().and_then(|setting| Some((setting, setting.pressure?)));
    if let Some((setting, pressure)) = setting {
        let within = |value: String, range: Option<(String, String)>| match range {
            Some((least, most)) if least != most => format!("{value} ({})", on_card(&from_to(&least, &most))),
            _ => value,
        };
        let speeds = setting.speeds.and_then(|speeds| rig::setting::in_tenths(speeds, units));
        let speeds = speeds.map(|speeds| (speeds.least.show(units), speeds.most.show(units)));
        let pressures = setting.pressures.map(|range| (range.least.show(units), range.most.show(units)));
        lines.push(within(setting.speed.show(units), speeds));
        lines.push(within(pressure.show(units), pressures));
        lines.extend(setting.duty_said().map(|duty| on_card(&say("card-valves-open").with("share", duty))));
    } else {
        let pressure = pass.pressure_in(farm).map(|pressure| pressure.show(units));
        lines.extend([speed, pressure].into_iter().flatten().reduce(|a, b| format!("{a}, {b}")));
    }
    lines.extend(Some(set).filter(|set| !set.is_empty()));
    lines.extend([droplets, height].into_iter().flatten().reduce(|a, b| format!("{a}, {b}")));
    lines
}

/// "3 to 10 mph", the unit once where both have the same.
pub(super) fn from_to(least: &str, most: &str) -> Say {
    say("card-from-to").with("least", one_unit(least, most)).with("most", most)
}

/// The day of the last calibration with the nozzle set of the pass.
fn last_calibration(farm: &Farm, pass: &Pass, rig: &Rig) -> Option<Date> {
    let set = rig::set_of(farm, pass).map_or("", |(id, _)| id.as_str());
    rig::calibration::latest(rig, set, pass.date).map(|calibration| calibration.date)
}

fn limits_and_cautions(farm: &Farm, pass: &Pass, products: &[(&Id, &Product)]) -> Vec<Say> {
    // Wind, air and rain stand among the limits of the day.
    said(farm, pass, products, |says| match says {
        Says::Caution { what } => Some(what.as_str().into()),
        Says::NotWith { what, days: 0 } => Some(say("card-caution-not-with").with("what", what.as_str())),
        Says::NotWith { what, days } => {
            Some(say("card-caution-not-with-days").with("what", what.as_str()).with("days", *days))
        }
        Says::NotToward { what } => Some(say("card-caution-not-toward").with("what", what.as_str())),
        Says::BoomHeight { most } => Some(say("card-caution-boom").with("height", most.show(farm.units))),
        Says::GroundSpeed { most } => Some(say("card-caution-speed").with("speed", most.show(farm.units))),
        Says::Buffer { to, width, downwind_only } => {
            let id = if *downwind_only { "card-caution-keep-downwind" } else { "card-caution-keep" };
            Some(say(id).with("width", width.show(farm.units)).with("what", to.as_str()))
        }
        _ => None,
    })
}

/// The pesticides of a mix whose label, as typed, does not say a thing; "; none typed for …" to follow what others say.
fn silent(products: &[(&Id, &Product)], says: impl Fn(&Id, &Product) -> bool) -> Say {
    let silent: Vec<&str> = products
        .iter()
        .filter(|(id, product)| product.kind.is_pesticide() && !says(id, product))
        .map(|(_, product)| product.name.as_str())
        .collect();
    if silent.is_empty() { Say::nothing() } else { say("card-silent").with("products", silent.join(", ")) }
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

fn keep_out(products: &[(&Id, &Product)]) -> Say {
    longest_re_entry(products).map_or_else(
        || say("card-keep-out-untyped"),
        |(longest, _, product)| {
            say("card-keep-out-hours")
                .with("hours", longest)
                .with("product", product.name.as_str())
                .with("silent", silent(products, |_, product| re_entry_hours(product).is_some()))
        },
    )
}

fn harvest_from(farm: &Farm, pass: &Pass, products: &[(&Id, &Product)], load: &Load) -> Say {
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
        || say("card-harvest-untyped"),
        |(from, days, name)| {
            let speaks = |id: &Id, product: &Product| fields.iter().all(|field| earliest(id, product, field).is_some());
            say("card-harvest-day")
                .with("day", day(from))
                .with("days", days)
                .with("product", name)
                .with("silent", silent(products, speaks))
        },
    )
}

/// The rounding of an item, in words: "1 fl oz, 0.3 % more than exact".
pub fn rounding_words(rounding: f64) -> String {
    if rounding.abs() < 5e-5 {
        t!("loads-exact").to_owned()
    } else {
        t!("loads-than-exact", show = show(rounding.abs() * 100.0, 2), which = yes_or_no(rounding > 0.0))
    }
}
