//! The plan as JSON, in SI units. Keys are only added, never renamed.

use serde_json::{Map, Value, json};
use tankard_core::farm::Farm;
use tankard_core::finding::Finding;
use tankard_core::loads::{FillStep, Load};
use tankard_core::plan::{NOT_JUDGED, Plan};
use tankard_core::quantity::{Amount, AmountPerArea};

/// The plans of a farm as JSON.
pub fn plans(farm: &Farm, plans: &[Plan]) -> Value {
    json!({
        "format": 1,
        "farm": farm.name,
        "passes": plans.iter().map(|plan| pass(farm, plan)).collect::<Vec<_>>(),
        "not_judged": NOT_JUDGED,
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
        "water": {
            "id": water.id,
            "hardness_mg_per_l": water.hardness.map(tankard_core::quantity::Hardness::to_ppm),
            "conditioner_need_kg_per_m3": water.need.as_ref().map(|need| need.most().to_grams_per_litre()),
            "conditioner_need_without_iron_kg_per_m3": water.need.as_ref().map(|need| need.without_iron.to_grams_per_litre()),
            "conditioner_recommended_kg_per_m3": water.recommended.map(tankard_core::quantity::MassPerVolume::to_grams_per_litre),
        },
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

fn load(load: &Load) -> Value {
    json!({
        "number": load.number,
        "volume_l": load.volume.to_litres(),
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
            FillStep::Water { to } => json!({ "water_to_l": to.to_litres() }),
            FillStep::Product { item, .. } => json!({ "product": load.items.get(*item).map(|item| item.product.clone()) }),
        }).collect::<Vec<_>>(),
    })
}

fn amount(object: &mut Map<String, Value>, name: &str, amount: Amount) {
    match amount {
        Amount::Volume(volume) => object.insert(format!("{name}_l"), json!(volume.to_litres())),
        Amount::Mass(mass) => object.insert(format!("{name}_kg"), json!(mass.to_kilograms())),
    };
}

/// A finding as JSON.
pub fn finding(finding: &Finding) -> Value {
    json!({
        "level": finding.level.word().to_lowercase(),
        "about": finding.about.to_string(),
        "text": finding.text,
        "hint": finding.hint,
        "basis": { "kind": finding.basis.kind(), "source": finding.basis.source() },
    })
}
