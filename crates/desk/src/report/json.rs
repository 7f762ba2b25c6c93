//! The plan as JSON, in SI units. Keys are only added, never renamed.

use rust_decimal::prelude::ToPrimitive;
use serde_json::{Map, Value, json};
use tankard_core::farm::Farm;
use tankard_core::finding::{Basis, Finding, Level};
use tankard_core::loads::{FillStep, Load};
use tankard_core::mix::choice::{Choice, Collision};
use tankard_core::plan::{Plan, not_judged};
use tankard_core::plausible::Offer;
use tankard_core::quantity::{Amount, AmountPerArea, Area, Duration, Flow, Pressure, Share, Speed, Volume};
use tankard_core::rig::rinse::RinsePlan;
use tankard_core::rig::setting::{Between, Fit, RankedSet, Setting};
use tankard_core::rig::work::Work;
use tankard_core::water::ConditionerChoice;
use tankard_core::water::dose::{Dose, per_load};
use tankard_core::weather::{Hours, Span, Verdict};

/// The plans of a farm as JSON.
pub fn plans(farm: &Farm, plans: &[Plan]) -> Value {
    json!({
        "format": 1,
        "farm": farm.name,
        "passes": plans.iter().map(|plan| pass(farm, plan)).collect::<Vec<_>>(),
        "not_judged": not_judged(),
    })
}

fn pass(farm: &Farm, plan: &Plan) -> Value {
    let water = &plan.water;
    json!({
        "id": plan.pass,
        "name": farm.passes.get(&plan.pass).map(|pass| pass.name.clone()),
        "date": farm.passes.get(&plan.pass).map(|pass| pass.date.to_string()),
        "fields": plan.fields.iter().map(|field| json!({ "id": field.field, "area_m2": field.area.to_square_metres() })).collect::<Vec<_>>(),
        "area_m2": plan.area.to_square_metres(),
        "carrier_l_per_ha": plan.carrier.map(tankard_core::quantity::CarrierRate::to_litres_per_hectare),
        "spray_volume_l": plan.spray_volume.to_litres(),
        "spray_time_s": plan.spray_time.map(tankard_core::quantity::Duration::to_seconds),
        "setting": plan.setting.as_ref().map(setting),
        "sets": plan.sets.iter().map(ranked).collect::<Vec<_>>(),
        "work": plan.work.as_ref().map(work),
        "rinse": plan.rinse.as_ref().map(rinse),
        "hours": hours(&plan.hours),
        "water": {
            "id": water.id,
            "hardness_mg_per_l": water.hardness.map(tankard_core::quantity::Hardness::to_ppm),
            "conditioner_need_kg_per_m3": water.need.as_ref().map(|need| need.most().to_grams_per_litre()),
            "conditioner_need_without_iron_kg_per_m3": water.need.as_ref().map(|need| need.without_iron.to_grams_per_litre()),
            "conditioner_recommended_kg_per_m3": water.recommended.map(tankard_core::quantity::MassPerVolume::to_grams_per_litre),
        },
        "adjuvant_choices": plan.adjuvants.choices.iter().map(choice).collect::<Vec<_>>(),
        "adjuvants_in_mix": plan.adjuvants.current.as_ref().map(choice),
        "adjuvant_collisions": plan.adjuvants.collisions.iter().map(collision).collect::<Vec<_>>(),
        "conditioner": water.conditioner.as_ref().map(|conditioner| self::conditioner(plan, conditioner)),
        "order": plan.order.iter().map(|placed| placed.product.clone()).collect::<Vec<_>>(),
        "lines": plan.lines.iter().map(|line| {
            let mut object = Map::new();
            object.insert("product".to_owned(), json!(line.product));
            match line.per_area {
                AmountPerArea::Volume(rate) => object.insert("rate_l_per_ha".to_owned(), json!(rate.to_litres_per_hectare())),
                AmountPerArea::Mass(rate) => object.insert("rate_kg_per_ha".to_owned(), json!(rate.to_kilograms_per_hectare())),
            };
            amount(&mut object, "demand", line.demand);
            object.insert("cost".to_owned(), json!(line.cost.map(tankard_core::quantity::Money::show)));
            Value::Object(object)
        }).collect::<Vec<_>>(),
        "loads": plan.loads.iter().map(load).collect::<Vec<_>>(),
        "findings": plan.findings.iter().map(finding).collect::<Vec<_>>(),
    })
}

fn between<T: Copy>(range: Option<Between<T>>, read: impl Fn(T) -> f64) -> Value {
    range.map_or(Value::Null, |range| json!({ "least": read(range.least), "most": read(range.most) }))
}

fn kilopascals(pressure: Pressure) -> f64 {
    pressure.to_pascals() / 1000.0
}

/// How a nozzle set is set; droplet classes by name, from the finest to the coarsest that it may be.
fn setting(setting: &Setting) -> Value {
    json!({
        "set": setting.set,
        "name": setting.name,
        "speed_m_per_s": setting.speed.to_metres_per_second(),
        "flow_l_per_min": setting.flow.map(Flow::to_litres_per_minute),
        "pressure_kpa": setting.pressure.map(kilopascals),
        "duty": setting.duty.map(Share::to_fraction),
        "finest": setting.classes.map(|classes| classes.finest.word()),
        "coarsest": setting.classes.map(|classes| classes.coarsest.word()),
        "speeds_m_per_s": between(setting.speeds, Speed::to_metres_per_second),
        "pressures_kpa": between(setting.pressures, kilopascals),
    })
}

fn ranked(ranked: &RankedSet) -> Value {
    let fit = match ranked.fit {
        Fit::Suits => "suits",
        Fit::AtAnotherSpeed => "at_another_speed",
        Fit::NotKnown => "not_known",
        Fit::No => "no",
    };
    json!({
        "setting": setting(&ranked.setting),
        "fit": fit,
        "speed_m_per_s": ranked.speed.map(Speed::to_metres_per_second),
        "chosen": ranked.chosen,
        "reasons": ranked.reasons.iter().map(|(text, basis)| json!({ "text": text, "basis": self::basis(basis) })).collect::<Vec<_>>(),
    })
}

fn work(work: &Work) -> Value {
    json!({
        "spraying_s": work.spraying.to_seconds(),
        "fills_s": work.fills.iter().map(|fill| fill.to_seconds()).collect::<Vec<_>>(),
        "road_s": work.road.map(Duration::to_seconds),
        "total_s": work.total.to_seconds(),
        "lacks": work.lacks,
        "in_an_hour_m2": work.in_an_hour.to_square_metres(),
        "loads_an_hour": work.loads_an_hour,
    })
}

/// What stays in the rig and how it is rinsed; `left` is a share of the spray's strength.
fn rinse(rinse: &RinsePlan) -> Value {
    json!({
        "residual_l": rinse.residual.to_litres(),
        "water_l": rinse.water.to_litres(),
        "ways": rinse.ways.iter().map(|way| json!({
            "rinses": way.rinses,
            "each_l": way.each.to_litres(),
            "left": way.left.to_fraction(),
            "on_board": way.on_board,
            "source": way.basis.source(),
        })).collect::<Vec<_>>(),
        "last_ground_m2": rinse.last_ground.map(Area::to_square_metres),
        "priming_l": rinse.priming.map(|priming| Volume::to_litres(priming.volume)),
        "priming_ground_m2": rinse.priming.and_then(|priming| priming.ground).map(Area::to_square_metres),
        "steps": rinse.steps.iter().map(|step| json!({ "what": step.what, "basis": basis(&step.basis) })).collect::<Vec<_>>(),
    })
}

/// The hours, by the farm's clock; `limit` counts from 0 in `limits`.
fn hours(hours: &Hours) -> Value {
    let span = |span: Span| json!({ "from": span.from.to_string(), "to": span.to.to_string() });
    json!({
        "needs_s": hours.needs.map(Duration::to_seconds),
        "best": hours.best.map(span),
        "longest": hours.longest.map(|(longest, share)| json!({
            "from": longest.from.to_string(),
            "to": longest.to.to_string(),
            "share": share.to_fraction(),
        })),
        "sun": hours.sun.map(span),
        "limits": hours.limits.iter().map(|limit| json!({
            "text": limit.text(),
            "outside": verdict(limit.outside),
            "basis": basis(&limit.basis),
        })).collect::<Vec<_>>(),
        "hours": hours.hours.iter().map(|hour| json!({
            "at": hour.at.to_string(),
            "again": hour.again,
            "lasts_s": hour.lasts.to_seconds(),
            "verdict": verdict(hour.verdict),
            "part": hour.part.map(|(part, verdict)| json!({
                "from": part.from.to_string(),
                "to": part.to.to_string(),
                "verdict": self::verdict(verdict),
            })),
            "binds": hour.binds.iter().map(|(limit, verdict)| json!({
                "limit": limit,
                "verdict": self::verdict(*verdict),
            })).collect::<Vec<_>>(),
        })).collect::<Vec<_>>(),
    })
}

fn basis(basis: &Basis) -> Value {
    json!({ "kind": basis.kind(), "source": basis.source() })
}

/// A set of adjuvants: `products` are ids of the shed, `to_buy` classes that it does not hold.
fn choice(choice: &Choice) -> Value {
    let hectare = Area::from_hectares(1.0);
    json!({
        "rank": choice.rank,
        "products": choice.members.iter().filter_map(|member| member.product.clone()).collect::<Vec<_>>(),
        "to_buy": choice.members.iter().filter(|member| member.product.is_none()).map(|member| member.class.word()).collect::<Vec<_>>(),
        "members": choice.members.iter().map(|member| {
            let mut object = Map::new();
            object.insert("product".to_owned(), json!(member.product));
            object.insert("class".to_owned(), json!(member.class.key()));
            object.insert("rate".to_owned(), json!(member.rate.as_ref().map(tankard_core::quantity::AsTyped::text)));
            object.insert("rate_from".to_owned(), json!(member.rate_from));
            for (key, bound) in [("at_least", &member.at_least), ("at_most", &member.at_most)] {
                if let Some(bound) = bound {
                    object.insert(key.to_owned(), json!(bound.text()));
                }
            }
            if let Some(rate) = member.per_area {
                amount(&mut object, "per_ha", rate.over(hectare));
            }
            Value::Object(object)
        }).collect::<Vec<_>>(),
        "cost_per_ha": choice.cost_per_hectare.and_then(|cost| cost.amount().round_dp(4).to_f64()),
        "satisfies_all": choice.satisfies,
        "in_mix": choice.current,
        "reasons": choice.reasons(),
    })
}

fn collision(collision: &Collision) -> Value {
    json!({
        "wants": collision.wants,
        "forbids": collision.forbids,
        "text": collision.text,
        "bases": collision.bases.iter().map(basis).collect::<Vec<_>>(),
        "ways_out": collision.ways_out,
    })
}

/// The water conditioner: in the spray, and in each load.
fn conditioner(plan: &Plan, choice: &ConditionerChoice) -> Value {
    let mut object = Map::new();
    object.insert("product".to_owned(), json!(choice.product));
    object.insert("name".to_owned(), json!(choice.name));
    object.insert("class".to_owned(), json!(choice.class.key()));
    object.insert("in_mix".to_owned(), json!(choice.in_mix));
    match choice.per_spray {
        Some(Dose::Dry(content)) => object.insert("kg_per_m3".to_owned(), json!(content.to_grams_per_litre())),
        Some(Dose::Liquid(share)) => object.insert("l_per_m3".to_owned(), json!(share.to_fraction() * 1000.0)),
        None => None,
    };
    let salt = plan.water.recommended.map(tankard_core::quantity::MassPerVolume::to_grams_per_litre);
    object.insert("ammonium_sulfate_kg_per_m3".to_owned(), json!(salt));
    let (doses, _) = per_load(&plan.water, &plan.loads, tankard_core::quantity::Units::Metric);
    let loads: Vec<Value> = doses
        .iter()
        .map(|dose| {
            let mut object = Map::new();
            object.insert("load".to_owned(), json!(dose.load));
            if let Some(of_product) = dose.product {
                amount(&mut object, "amount", of_product);
            }
            object.insert(
                "ammonium_sulfate_kg".to_owned(),
                json!(dose.salt.map(tankard_core::quantity::Mass::to_kilograms)),
            );
            Value::Object(object)
        })
        .collect();
    object.insert("loads".to_owned(), json!(loads));
    object.insert("why".to_owned(), json!(choice.why));
    object.insert("basis".to_owned(), basis(&choice.basis));
    Value::Object(object)
}

fn load(load: &Load) -> Value {
    json!({
        "number": load.number,
        "volume_l": load.volume.to_litres(),
        "carried_l": load.carried.to_litres(),
        "left_l": load.left.to_litres(),
        "area_m2": load.area.to_square_metres(),
        "water_l": load.water.to_litres(),
        "fields": load.fields.iter().map(|(id, area)| json!({ "id": id, "area_m2": area.to_square_metres() })).collect::<Vec<_>>(),
        "items": load.items.iter().map(|item| {
            let mut object = Map::new();
            object.insert("product".to_owned(), json!(item.product));
            amount(&mut object, "amount", item.measured.exact);
            amount(&mut object, "measured", item.measured.amount);
            object.insert("measure".to_owned(), json!(item.measured.text));
            object.insert("containers".to_owned(), json!(item.measured.containers));
            Value::Object(object)
        }).collect::<Vec<_>>(),
        "steps": load.steps.iter().map(|step| match step {
            FillStep::InTank { to } => json!({ "in_tank_l": to.to_litres() }),
            FillStep::Water { to } => json!({ "water_to_l": to.to_litres() }),
            FillStep::Product { item, .. } => json!({ "product": load.items.get(*item).map(|item| item.product.clone()) }),
        }).collect::<Vec<_>>(),
    })
}

pub(super) fn amount(object: &mut Map<String, Value>, name: &str, amount: Amount) {
    match amount {
        Amount::Volume(volume) => object.insert(format!("{name}_l"), json!(volume.to_litres())),
        Amount::Mass(mass) => object.insert(format!("{name}_kg"), json!(mass.to_kilograms())),
    };
}

/// The same whatever language is spoken.
const fn level(level: Level) -> &'static str {
    match level {
        Level::Note => "note",
        Level::Check => "check",
        Level::Stop => "stop",
    }
}

/// The same whatever language is spoken.
pub(super) const fn verdict(verdict: Verdict) -> &'static str {
    match verdict {
        Verdict::Allowed => "allowed",
        Verdict::Doubtful => "doubtful",
        Verdict::Forbidden => "forbidden",
    }
}

/// A finding as JSON.
pub fn finding(finding: &Finding) -> Value {
    let mut value = json!({
        "level": level(finding.level),
        "about": finding.about.to_string(),
        "text": finding.text,
        "hint": finding.hint,
        "basis": basis(&finding.basis),
    });
    if let (Some(object), false) = (value.as_object_mut(), finding.offers.is_empty()) {
        object.insert("offers".to_owned(), finding.offers.iter().map(offer).collect());
    }
    value
}

/// What was probably meant: for each box, by the key of [`tankard_core::plausible::Slot::key`], the text to type.
fn offer(offer: &Offer) -> Value {
    json!({
        "text": offer.text(),
        "why": offer.why,
        "sets": offer.sets.iter().map(|set| json!({ "box": set.slot.key(), "text": set.text })).collect::<Vec<_>>(),
    })
}
