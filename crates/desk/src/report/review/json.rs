//! The review as JSON.

use rust_decimal::prelude::ToPrimitive;
use serde_json::{Map, Value, json};
use tankard_core::farm::{AdjuvantClass, Farm, ProductKind};
use tankard_core::quantity::{Area, Mass, Volume};
use tankard_core::season::review::compare::Comparison;
use tankard_core::season::review::{BARS, Choice, CostRow, Errors, Index, Spent, words};
use tankard_core::season::stats::Summary;
use tankard_core::season::trials::Judged;

use super::All;
use crate::report::json::finding;

/// The review of a season, or of all of them, in SI units and hectares. Keys are only added, never renamed.
pub fn json(farm: &Farm, season: Option<i16>) -> Value {
    let index = Index::of(farm);
    let picked = index.pick(&season.map_or_else(Choice::all, Choice::season));
    let all = All::of(farm, &picked);
    let found = &all.review;
    let (passes, planned, gaps, outside) = (&found.passes, &found.planned, found.unmeasured, all.outside());
    json!({
        "format": 1,
        "farm": farm.name,
        "season": season,
        "passes": {
            "records": passes.passes,
            "treated_ha": passes.treated.to_hectares(),
            "distinct_least_ha": passes.distinct.least.to_hectares(),
            "distinct_most_ha": passes.distinct.most.to_hectares(),
            "without_area": passes.without_area,
            "months": passes.months.iter().filter(|month| month.passes > 0).map(|month| json!({
                "month": format!("{}-{:02}", month.year, month.month),
                "records": month.passes,
                "treated_ha": month.treated.to_hectares(),
                "so_far_ha": month.so_far.to_hectares(),
            })).collect::<Vec<_>>(),
            "seasons": passes.years.iter().map(|year| json!({
                "season": year.year,
                "records": year.passes,
                "treated_ha": year.treated.to_hectares(),
                "distinct_least_ha": year.distinct.least.to_hectares(),
                "distinct_most_ha": year.distinct.most.to_hectares(),
            })).collect::<Vec<_>>(),
        },
        "products": found.products.rows.iter().map(|product| with_spent(&product.spent, product.treated, json!({
            "product": product.product,
            "name": product.name,
            "kind": product.kind.map(ProductKind::word),
            "class": product.class.map(AdjuvantClass::word),
            "kind_of_today": product.from_shed,
            "times": product.times,
            "amount_l": product.amounts.liquid.map(Volume::to_litres),
            "amount_kg": product.amounts.dry.map(Mass::to_kilograms),
        }))).collect::<Vec<_>>(),
        "actives": found.actives.rows.iter().map(|active| json!({
            "active": active.name,
            "basis": active.basis.short(),
            "mass_kg": active.mass.to_kilograms(),
            "over_farm_kg_per_ha": active.on_farm.map(|rate| rate.to_base_units() * 10_000.0),
            "times": active.times,
            "fields": active.fields.iter().map(|field| json!({
                "field": field.field,
                "mass_kg": field.mass.to_kilograms(),
                "over_field_kg_per_ha": field.over_ground.map(|rate| rate.to_base_units() * 10_000.0),
                "times": field.times,
            })).collect::<Vec<_>>(),
        })).collect::<Vec<_>>(),
        "actives_not_told": counted(&found.actives.silent),
        "groups": found.resistance.fields.iter().map(|field| json!({
            "field": field.field,
            "groups": field.rows.iter().map(|group| json!({
                "kind": group.kind.word(),
                "group": group.group,
                "seasons": group.years.iter().map(|(year, times)| json!({ "season": year, "times": times })).collect::<Vec<_>>(),
                "again": group.repeats.iter().map(|repeat| json!({
                    "words": words::again(repeat),
                    "more_often_than": repeat.most,
                    "source": repeat.basis.source(),
                })).collect::<Vec<_>>(),
            })).collect::<Vec<_>>(),
        })).collect::<Vec<_>>(),
        "in_no_group": counted(&found.resistance.groupless),
        "adjuvants": found.adjuvants.rows.iter().map(|class| with_spent(&class.spent, class.treated, json!({
            "class": class.class.map(AdjuvantClass::word),
            "products": class.products,
            "times": class.times,
            "amount_l": class.amounts.liquid.map(Volume::to_litres),
            "amount_kg": class.amounts.dry.map(Mass::to_kilograms),
        }))).collect::<Vec<_>>(),
        "planned_against_applied": {
            "rate": planned.rate.as_ref().map(errors),
            "area": planned.area.as_ref().map(errors),
            "volume": planned.volume.as_ref().map(errors),
            "left_l": planned.left.to_litres(),
            "left_told": planned.left_told,
            "without_plan": planned.without_plan,
            "lines_without_plan": planned.lines_without,
            "worst": planned.worst.iter().map(|worst| json!({
                "record": worst.record,
                "product": worst.product,
                "error": worst.error.to_fraction(),
            })).collect::<Vec<_>>(),
        },
        "weather": {
            "judged": outside.judged,
            "outside_label_or_law": outside.of_label_or_law,
            "outside_practice_alone": outside.of_practice,
            "no_wind": gaps.wind,
            "no_temperature": gaps.temperature,
            "no_humidity": gaps.humidity,
            "records": all.weather.iter().filter(|(_, findings)| !findings.is_empty()).map(|(id, findings)| json!({
                "record": id,
                "findings": findings.iter().map(finding).collect::<Vec<_>>(),
            })).collect::<Vec<_>>(),
        },
        "cost": {
            "all": cost_row(&found.cost.all, Map::new()),
            "fields": found.cost.fields.iter().map(|row| cost_row(row, key("field", &row.of.0))).collect::<Vec<_>>(),
            "crops": found.cost.crops.iter().map(|row| cost_row(row, key("crop", &row.of))).collect::<Vec<_>>(),
            "kinds": found.cost.kinds.iter().map(|row| cost_row(row, key("kind", row.of.map_or("", ProductKind::word)))).collect::<Vec<_>>(),
            "classes": found.cost.classes.iter().map(|row| cost_row(row, key("class", row.of.word()))).collect::<Vec<_>>(),
            "without_price": counted(&found.cost.without_price),
        },
        "waters": found.work.waters.iter().map(|water| json!({
            "water": water.name,
            "spray_l": water.spray.to_litres(),
            "water_l": water.water.to_litres(),
            "records": water.times,
            "without_volume": water.without_volume,
        })).collect::<Vec<_>>(),
        "rigs": found.work.rigs.iter().map(|rig| json!({
            "rig": rig.name,
            "time_s": rig.time.to_seconds(),
            "timed_ha": rig.timed.to_hectares(),
            "treated_ha": rig.treated.to_hectares(),
            "records": rig.times,
            "without_times": rig.without_times,
        })).collect::<Vec<_>>(),
        "ratings": found.outcomes.rows.iter().map(|rated| json!({
            "of": words::effect(&rated.effect),
            "days_from": rated.days.from,
            "days_to": rated.days.to,
            "with": words::classes(&rated.classes),
            "per_cent": summary(&rated.ratings),
        })).collect::<Vec<_>>(),
        "ratings_outside_bands": found.outcomes.outside_bands,
        "trials": all.trials.iter().map(|(id, judged)| trial(farm, id, judged)).collect::<Vec<_>>(),
    })
}

fn key(name: &str, value: &str) -> Map<String, Value> {
    Map::from_iter([(name.to_owned(), json!(value))])
}

fn cost_row<K>(row: &CostRow<K>, object: Map<String, Value>) -> Value {
    with_spent(&row.spent, row.treated, Value::Object(object))
}

fn with_spent(spent: &Spent, treated: Area, mut value: Value) -> Value {
    if let Value::Object(object) = &mut value {
        object.insert("treated_ha".to_owned(), json!(treated.to_hectares()));
        object.insert("cost".to_owned(), json!(spent.money.amount().to_f64()));
        object.insert("without_price".to_owned(), json!(spent.without_price));
    }
    value
}

fn counted(all: &[(String, usize)]) -> Value {
    all.iter().map(|(name, times)| json!({ "product": name, "times": times })).collect()
}

fn errors(errors: &Errors) -> Value {
    json!({
        "n": errors.n,
        "mean": errors.mean.to_fraction(),
        "median": errors.median.to_fraction(),
        "least": errors.least.to_fraction(),
        "most": errors.most.to_fraction(),
        "bar_ends_per_cent": BARS,
        "bars": errors.bars,
    })
}

fn summary(summary: &Summary) -> Value {
    json!({
        "n": summary.n,
        "mean": summary.mean,
        "median": summary.median,
        "sd": summary.sd,
        "interval": summary.interval.map(|(low, high)| [low, high]),
    })
}

fn trial(farm: &Farm, id: &str, judged: &Judged) -> Value {
    let (one, other) = farm.trials.get(id).map_or(("", ""), |trial| (&trial.one, &trial.other));
    let of = |comparison: &Comparison| {
        json!({
            "of": words::effect(&comparison.effect),
            "days_from": comparison.days.from,
            "days_to": comparison.days.to,
            "pairs": comparison.pairs.iter().map(|pair| json!([pair.name, pair.one, pair.other])).collect::<Vec<_>>(),
            "difference": comparison.paired.map(|paired| paired.mean),
            "interval": comparison.paired.map(|paired| [paired.interval.0, paired.interval.1]),
            "p": comparison.paired.and_then(|paired| paired.p),
            "words": words::by_pairs(comparison, one, other).text,
        })
    };
    json!({ "trial": id, "comparisons": judged.comparisons.iter().map(of).collect::<Vec<_>>(), "open": judged.open })
}
