//! The plan of a pass: one straight walk through the rooms, each giving values, workings and findings.

use std::collections::HashSet;

use crate::farm::{Farm, Field, Id, Pass, Product, Rig};
use crate::finding::{Basis, Finding, Level, Subject, TypedAt};
use crate::ground::{self, Ground};
use crate::label;
use crate::language::{Language, or_english, speaking, spoken, t, yes_or_no};
use crate::loads::{self, Load, Sizing};
use crate::mix::choice::{self, Adjuvants};
use crate::mix::line::{PlannedLine, reckon};
use crate::mix::order::{self, Placed};
use crate::mix::{carrier as fertilizer, charge, pairs};
use crate::plausible;
use crate::quantity::{Amount, Area, AsTyped, CarrierRate, Duration, Money, Quantity, Volume};
use crate::rig::before::{self, CleanFirst};
use crate::rig::rinse::{self, RinsePlan};
use crate::rig::setting::{self, RankedSet, Setting};
use crate::rig::work::{self, Work};
use crate::rig::{self, calibration};
use crate::season::{Log, driven_over};
use crate::stock;
use crate::water::{self, WaterPlan};
use crate::weather::{self, Hours};
use crate::working::Working;

/// What is asked about the pass and not judged by this version, so that silence is not taken for consent.
pub fn not_judged() -> [&'static str; 2] {
    [t!("core-not-judged-pairs"), t!("core-not-judged-drift")]
}

/// The plan of one pass. It depends on nothing but the farm.
#[derive(Clone, Debug, PartialEq)]
pub struct Plan {
    /// The pass.
    pub pass: Id,
    /// The areas of its fields and the strips on them.
    pub ground: Ground,
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
    /// How the rig is set, with the nozzle set of the pass.
    pub setting: Option<Setting>,
    /// The rig's nozzle sets, the one that does this pass best first.
    pub sets: Vec<RankedSet>,
    /// The time it takes, filling and road included.
    pub work: Option<Work>,
    /// The clean-out that is due before its first load; `None` where none is.
    pub clean_first: Option<CleanFirst>,
    /// What stays in the rig afterwards, and how it is rinsed.
    pub rinse: Option<RinsePlan>,
    /// The hours in which it may be sprayed.
    pub hours: Hours,
    /// The water.
    pub water: WaterPlan,
    /// Which adjuvants suit every product of the mix.
    pub adjuvants: Adjuvants,
    /// The products that could be reckoned, in mixing order.
    pub lines: Vec<PlannedLine>,
    /// The mixing order with its reasons, beside `lines`.
    pub order: Vec<Placed>,
    /// The products' short names, beside `lines`.
    pub names: Vec<PlannedName>,
    /// The loads.
    pub loads: Vec<Load>,
    /// How far the rounding of amounts may go.
    pub(crate) bounds: Vec<label::Bound>,
    /// How their sizes came about, and other ways; `None` where there are no loads.
    pub sizing: Option<Sizing>,
    /// What the products cost in all; `None` where a price is missing.
    pub cost: Option<Money>,
    /// What there is to say, the weightiest first.
    pub findings: Vec<Finding>,
    /// The arithmetic.
    pub workings: Vec<Working>,
    /// The language in which all of it is said.
    pub spoken: Language,
    /// The findings in those languages of the cards that are others.
    pub on_cards: Vec<(Language, Vec<Finding>)>,
}

/// A field in a plan.
#[derive(Clone, Debug, PartialEq)]
pub struct PlannedField {
    /// The field.
    pub field: Id,
    /// How much of it is sprayed: in band spraying the ground in the bands alone.
    pub area: Area,
    /// How much of it the rig drives over.
    pub covered: Area,
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
    /// What the planner says in a language: the one in which it was planned, or one of the cards.
    pub fn findings_in(&self, language: Language) -> &[Finding] {
        self.on_cards.iter().find(|(known, _)| *known == language).map_or(&self.findings, |(_, said)| said)
    }

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
    Some(plan_as(farm, &Log::of(farm), pass_id, pass))
}

/// The same with the records looked up before, where several passes of one state of a farm are planned.
pub fn plan_of(farm: &Farm, log: &Log, pass_id: &str) -> Option<Plan> {
    let (pass_id, pass) = farm.passes.get_key_value(pass_id)?;
    Some(plan_as(farm, log, pass_id, pass))
}

/// Plans a pass as it might be: with another mix or another setting than the farm has it.
pub fn plan_as(farm: &Farm, log: &Log, pass_id: &Id, pass: &Pass) -> Plan {
    let mut plan = walk(farm, log, pass_id, pass);
    for language in or_english(&farm.card_languages).iter().filter(|language| **language != plan.spoken) {
        plan.on_cards.push((*language, speaking(*language, || walk(farm, log, pass_id, pass).findings)));
    }
    plan
}

fn walk(farm: &Farm, log: &Log, pass_id: &Id, pass: &Pass) -> Plan {
    let mut findings = Vec::new();
    let mut workings = Vec::new();

    let of_pass = ground::of(farm, pass);
    let fields = ground(farm, log, pass_id, pass, &of_pass, &mut findings, &mut workings);
    let area: Area = fields.iter().map(|field| field.area).sum();
    let rig = rig_of(farm, pass_id, pass, &mut findings);
    let carrier = carrier(pass_id, pass, &mut findings);
    let spray_volume = carrier.map_or(Volume::ZERO, |carrier| carrier * area);
    if let Some(carrier) = carrier {
        workings.push(
            Working::new(t!("core-spray-volume")).step(
                format!("{} × {}", area.show(farm.units), carrier.show(farm.units)),
                spray_volume.show(farm.units),
            ),
        );
    }
    let covered: Area = fields.iter().map(|field| field.covered).sum();
    let spray_time = rig.and_then(|rig| time(farm, pass_id, pass, rig, covered, &mut findings, &mut workings));
    let (setting, sets) = carrier
        .map(|carrier| setting::judge(farm, pass_id, pass, carrier, &mut findings, &mut workings))
        .unwrap_or_default();
    calibration::judge_pass(farm, pass, &mut findings);

    let mut water = water::judge(farm, pass_id, pass, &mut findings, &mut workings);

    let mix = mix(farm, pass_id, pass, &mut findings);
    let mut order = order::place(&mix, &pass.mixing_order, pass.carrier_kind, &mut findings);
    order::first_fill(&mut order, pass.first_fill.as_ref().map(AsTyped::value));
    let mut lines = Vec::new();
    let mut kept = Vec::new();
    let mut adjuvants = Adjuvants::default();
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
                                t!("core-is-in-the-mix-at-a", name = product.name),
                                Basis::Arithmetic,
                            )
                            .hint(t!("core-type-its-rate-or-take-it"))
                            .at(TypedAt::RateInPass),
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
                    let about = Subject::Product(placed.product.clone());
                    findings.push(Finding::stop(about, problem, Basis::Arithmetic).at(TypedAt::RateInPass));
                }
            }
        }
        let ground: Vec<&Field> = fields.iter().filter_map(|field| farm.fields.get(&field.field)).collect();
        let in_water = pass.carrier_kind == crate::farm::CarrierKind::Water;
        let need = water.need.as_ref().filter(|_| in_water).map(water::ConditionerNeed::most);
        adjuvants = choice::choose(farm, (pass_id, pass), &ground, &lines, carrier, need, &mut findings);
        let ammonium = water::Ammonium::of(&adjuvants, farm, carrier);
        water::judge_mix(farm, pass, &ground, &lines, carrier, ammonium, &mut water, &mut findings, &mut workings);
        pairs::judge(farm, log, pass_id, pass, &fields, &lines, &mut findings);
        charge::judge(farm, &lines, &mut findings);
        fertilizer::judge(farm, pass_id, pass, &fields, &lines, carrier, &mut findings);
    } else {
        kept = order;
    }

    plausible::judge(farm, log, (pass_id, pass), &fields, carrier, setting.as_ref(), &mut findings);

    let bounds = carrier
        .map(|carrier| {
            label::limits::judge(farm, log, pass_id, pass, &fields, &lines, carrier, &mut findings, &mut workings)
        })
        .unwrap_or_default();
    let accounts = stock::Accounts::among(farm, log, mix.iter().map(|(id, _)| id.as_str()));
    let (loads, sizing) = match (carrier, rig) {
        (Some(carrier), Some(rig)) if !area.is_zero() => loads::build::build(
            &loads::build::Asked {
                farm,
                log,
                pass_id,
                pass,
                rig,
                accounts: &accounts,
                carrier,
                fields: &fields,
                spray: spray_volume,
                lines: &lines,
                order: &kept,
                bounds: &bounds,
            },
            &mut findings,
            &mut workings,
        ),
        _ => (Vec::new(), None),
    };

    if let Some(carrier) = carrier {
        stock::judge((farm, log), &accounts, (pass_id, pass), area, &lines, (carrier, &loads), &mut findings);
    }

    workings.extend(water::dose::per_load(&water, &loads, farm.units).1);

    workings.extend(order::working(&lines, &kept));
    let work = work::reckon(farm, pass_id, pass, &fields, &loads, spray_time, &mut findings, &mut workings);
    let clean_first = before::judge(farm, log, pass_id, pass, &mut findings);
    let rinse = rinse::judge(farm, log, pass_id, pass, carrier, &mut findings);
    let needs = work.as_ref().map(|work| work.total).or(spray_time);
    let counted = work.as_ref().map_or("", work::Work::counted);
    let hours = weather::judge(farm, pass_id, pass, needs, counted, &mut findings);
    let cost =
        lines.iter().map(|line| line.cost).try_fold(Money::default(), |sum, cost| cost.map(|cost| sum.plus(cost)));
    let names =
        lines.iter().map(|line| PlannedName { product: line.product.clone(), short: short_name(&line.name) }).collect();
    let mut seen = HashSet::new();
    findings.retain(|finding| seen.insert(finding.clone()));
    findings.sort_by_key(|finding| std::cmp::Reverse(finding.level));
    workings.dedup();
    Plan {
        pass: pass_id.clone(),
        ground: of_pass,
        fields,
        area,
        carrier,
        spray_volume,
        spray_time,
        setting,
        sets,
        work,
        clean_first,
        rinse,
        hours,
        water,
        adjuvants,
        lines,
        order: kept,
        names,
        loads,
        bounds,
        sizing,
        cost,
        findings,
        workings,
        spoken: spoken(),
        on_cards: Vec::new(),
    }
}

fn ground(
    farm: &Farm,
    log: &Log,
    pass_id: &Id,
    pass: &Pass,
    of_pass: &Ground,
    findings: &mut Vec<Finding>,
    workings: &mut Vec<Working>,
) -> Vec<PlannedField> {
    let mut planned: Vec<PlannedField> = Vec::new();
    let about = || Subject::Pass(pass_id.clone());
    if pass.fields.is_empty() {
        findings.push(
            Finding::stop(about(), t!("core-the-pass-has-no-field-yet"), Basis::Arithmetic)
                .hint(t!("core-choose-its-fields-in-the-heading"))
                .at(TypedAt::Fields),
        );
    }
    let mut working = Working::new(t!("core-ground-to-spray"));
    let bands = rig::in_bands(farm, pass);
    for id in &pass.fields {
        let Some(field) = farm.fields.get(id) else {
            findings.push(
                Finding::stop(about(), t!("core-the-pass-goes-to-field-which", id = id), Basis::Arithmetic)
                    .hint(t!("core-choose-another-field-or-add-it"))
                    .at(TypedAt::Fields),
            );
            continue;
        };
        if planned.iter().any(|other| other.field == *id) {
            findings.push(
                Finding::stop(about(), t!("core-stands-twice-in-the-pass", name = field.name), Basis::Arithmetic)
                    .hint(t!("core-take-one-of-them-out"))
                    .at(TypedAt::Fields),
            );
            continue;
        }
        let sprayable = sprayable(field, findings, id);
        let Some(of_field) = of_pass.of_field(id) else { continue };
        findings.extend(of_field.findings.iter().cloned());
        if field.boundary.is_some() {
            workings.push(of_field.working.clone());
        }
        let area = pass.parts.get(id).map_or(of_field.sprayable, AsTyped::value);
        if pass.parts.contains_key(id) && area.exceeds(sprayable) {
            findings.push(Finding::stop(
                Subject::Field(id.clone()),
                t!(
                    "core-of-are-planned-can-be-sprayed",
                    area = area.show(farm.units),
                    name = field.name,
                    sprayable = sprayable.show(farm.units)
                ),
                Basis::Arithmetic,
            ));
        }
        judge_parts((farm, log), pass_id, (id, field), (area, sprayable), findings);
        working = working.step(field.name.clone(), area.show(farm.units));
        let treated = bands.map_or(area, |share| area * share.to_fraction());
        if let Some(share) = bands {
            working = working.step(
                t!("core-the-share-that-the-bands-cover", share = share.show(farm.units)),
                treated.show(farm.units),
            );
        }
        planned.push(PlannedField { field: id.clone(), area: treated, covered: area });
    }
    let total: Area = planned.iter().map(|field| field.area).sum();
    if total.is_zero() && !planned.is_empty() {
        findings.push(
            Finding::stop(about(), t!("core-the-fields-of-the-pass-have"), Basis::Arithmetic)
                .hint(t!("core-type-their-areas-in-fields")),
        );
    }
    workings.push(working.step(t!("core-in-all"), total.show(farm.units)));
    if let Some(share) = bands
        && !total.is_zero()
    {
        let covered: Area = planned.iter().map(|field| field.covered).sum();
        findings.push(
            Finding::note(
                about(),
                t!(
                    "core-sprayed-in-bands-of-are-treated",
                    total = total.show(farm.units),
                    covered = covered.show(farm.units),
                    show_whole = share.show_whole()
                ),
                Basis::Arithmetic,
            )
            .hint(t!("core-read-on-the-label-whether-its")),
        );
    }
    planned
}

/// Parts of one application lie beside one another, since a label takes them for one: together they find room on the field.
/// What is recorded of a part counts as recorded, and what its records leave of it as planned.
fn judge_parts(
    (farm, log): (&Farm, &Log),
    pass_id: &Id,
    (id, field): (&Id, &Field),
    (area, sprayable): (Area, Area),
    findings: &mut Vec<Finding>,
) {
    // Most passes have no parts, which is quickly told.
    let has_parts = |of: &Pass| !of.rest_of.is_empty();
    if !farm.passes.get(pass_id).is_some_and(has_parts) && farm.passes.values().all(|other| other.rest_of != *pass_id) {
        return;
    }
    let is_part = |other: &str| other != pass_id && farm.is_one_application(other, pass_id);
    let recorded = log
        .on_field(farm, id)
        .map(|(_, record)| record)
        .filter(|record| record.pass.as_deref().is_some_and(is_part))
        .filter_map(|record| Some((record.name.as_str(), driven_over(farm, record, id)?)));
    let planned = farm
        .passes
        .iter()
        .filter(|(other, pass)| is_part(other) && pass.fields.contains(id))
        .filter_map(|(other, pass)| Some((pass.name.as_str(), log.unrecorded(farm, other)?.driven_over(id)?)));
    let (names, areas): (Vec<&str>, Vec<Area>) = recorded.chain(planned).unzip();
    let whole = area + areas.into_iter().sum();
    // Records hold six digits.
    if names.is_empty() || !whole.exceeds(sprayable * (1.0 + 1e-5)) {
        return;
    }
    let names = label::listed(&label::once(names).into_iter().map(|name| format!("\"{name}\"")).collect::<Vec<_>>());
    let text = t!(
        "core-this-pass-and-are-parts-of",
        name = field.name,
        names = names,
        whole = whole.show(farm.units),
        sprayable = sprayable.show(farm.units)
    );
    findings.push(
        Finding::stop(Subject::Field(id.clone()), text, Basis::Arithmetic).hint(t!("core-lower-the-ground-of-a-part")),
    );
}

/// What of a field can be sprayed, with a word where its areas contradict each other.
fn sprayable(field: &Field, findings: &mut Vec<Finding>, id: &Id) -> Area {
    if let Some(unsprayed) = &field.unsprayed
        && unsprayed.exceeds(field.ground())
    {
        findings.push(
            Finding::stop(
                Subject::Field(id.clone()),
                t!(
                    "core-stay-unsprayed-more-than-its",
                    name = field.name,
                    unsprayed = unsprayed.text(),
                    area = field.area.text()
                ),
                Basis::Arithmetic,
            )
            .hint(t!("core-mend-the-areas-in-fields"))
            .at(TypedAt::Area),
        );
    }
    field.sprayable()
}

fn rig_of<'a>(farm: &'a Farm, pass_id: &Id, pass: &Pass, findings: &mut Vec<Finding>) -> Option<&'a Rig> {
    let about = || Subject::Pass(pass_id.clone());
    if pass.rig.is_empty() {
        findings.push(
            Finding::stop(about(), t!("core-no-rig-is-chosen-so-the"), Basis::Arithmetic)
                .hint(t!("core-choose-the-rig-in-the-heading"))
                .at(TypedAt::Rig),
        );
        return None;
    }
    let rig = farm.rigs.get(&pass.rig);
    if rig.is_none() {
        findings.push(
            Finding::stop(about(), t!("core-the-pass-takes-rig-which-is", rig = pass.rig), Basis::Arithmetic)
                .hint(t!("core-choose-another-rig-or-add-it"))
                .at(TypedAt::Rig),
        );
    }
    if let Some(rig) = rig.filter(|rig| rig.tank.is_zero()) {
        findings.push(
            Finding::stop(
                Subject::Rig(pass.rig.clone()),
                t!("core-what-the-tank-holds-is-not-typed", name = rig.name),
                Basis::Arithmetic,
            )
            .hint(t!("core-type-what-the-tank-holds"))
            .at(TypedAt::Tank),
        );
    }
    rig
}

fn carrier(pass_id: &Id, pass: &Pass, findings: &mut Vec<Finding>) -> Option<CarrierRate> {
    let carrier = pass.carrier_rate();
    if carrier.is_none() {
        findings.push(
            Finding::stop(
                Subject::Pass(pass_id.clone()),
                t!("core-the-spray-volume-over-ground-is"),
                Basis::Arithmetic,
            )
            .hint(t!("core-open-the-rig-in-the-heading"))
            .at(TypedAt::Carrier),
        );
    }
    carrier
}

fn time(
    farm: &Farm,
    pass_id: &Id,
    pass: &Pass,
    rig: &Rig,
    area: Area,
    findings: &mut Vec<Finding>,
    workings: &mut Vec<Working>,
) -> Option<Duration> {
    let (units, speed) = (farm.units, pass.speed_in(farm));
    let (Some(speed), Some(boom), Some(efficiency)) = (speed, &rig.boom, &rig.efficiency) else {
        findings.push(
            Finding::note(
                Subject::Pass(pass_id.clone()),
                t!("core-the-time-to-spray-is-not", name = rig.name),
                Basis::Arithmetic,
            )
            .hint(t!("core-type-them-in-the-shed")),
        );
        return None;
    };
    let time = area.time(speed.value(), boom.value(), efficiency.value())?;
    workings.push(
        Working::new(t!("core-time-to-spray"))
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
            .step(t!("core-filling-and-road-are-not-counted"), "–"),
    );
    Some(time)
}

fn mix<'a>(farm: &'a Farm, pass_id: &Id, pass: &'a Pass, findings: &mut Vec<Finding>) -> Vec<(&'a Id, &'a Product)> {
    let mut mix: Vec<(&Id, &Product)> = Vec::new();
    if pass.mix.is_empty() {
        findings.push(
            Finding::stop(Subject::Pass(pass_id.clone()), t!("core-the-tank-mix-is-empty"), Basis::Arithmetic)
                .hint(t!("core-add-its-products-with-their-rates"))
                .at(TypedAt::Mix),
        );
    }
    for line in &pass.mix {
        match farm.products.get_key_value(&line.product) {
            None => findings.push(
                Finding::stop(
                    Subject::Pass(pass_id.clone()),
                    t!("core-the-mix-holds-which-is-not", product = line.product),
                    Basis::Arithmetic,
                )
                .hint(t!("core-take-it-out-or-add-the")),
            ),
            Some((id, product)) if mix.iter().any(|(other, _)| *other == id) => findings.push(
                Finding::stop(
                    Subject::Product(id.clone()),
                    t!("core-stands-twice-in-the-mix-only", name = product.name),
                    Basis::Arithmetic,
                )
                .hint(t!("core-take-one-of-the-two-out"))
                .at(TypedAt::RateInPass),
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
                t!("core-the-price-of-is-per-so", name = product.name, which = yes_or_no(product.is_liquid())),
                Basis::Arithmetic,
            )
            .hint(t!("core-mend-the-price-in-the-shed"))
            .at(TypedAt::Price),
        );
    }
    cost
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
