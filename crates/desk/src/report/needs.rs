//! What passes take from the shed, in words and as JSON.

use std::fmt::Write;

use jiff::civil::Date;
use rust_decimal::prelude::ToPrimitive;
use serde_json::{Map, Value, json};
use tankard_core::farm::{CarrierKind, Farm};
use tankard_core::language::days::long_date;
use tankard_core::quantity::{Amount, Money, Quantity, Units};
use tankard_core::stock::needs::{from_day, of_day};
use tankard_core::stock::{Need, Needs, Nurse, Purchase, WaterNeed, buy};
use tankard_core::t;
use tankard_core::words::capital;

use super::json::amount;

/// An amount rounded to about three figures, since nothing is measured out here; little is shown in small units.
pub fn round(amount: Amount, units: Units) -> String {
    let (size, shown) = match (amount, units) {
        (Amount::Volume(volume), Units::Metric) => (volume.to_litres(), volume.show(units)),
        (Amount::Volume(volume), _) => (volume.to_us_gallons(), volume.show(units)),
        (Amount::Mass(mass), Units::Metric) => (mass.to_kilograms(), mass.show(units)),
        (Amount::Mass(mass), _) => (mass.to_pounds(), mass.show(units)),
    };
    if size.abs() >= 1.0 || amount.is_zero() { shown } else { amount.show(units) }
}

/// What to buy for a need that is short; a sentence where that cannot be told.
pub fn purchase(farm: &Farm, need: &Need) -> Option<Result<Purchase, String>> {
    Some(buy(farm.products.get(&need.product)?, need.short?))
}

/// "buy 5 jugs of 2.5 gal, $600.00; 1 qt remains of them", or why that cannot be told.
pub fn buying(farm: &Farm, need: &Need) -> Option<String> {
    let product = farm.products.get(&need.product)?;
    Some(match purchase(farm, need)? {
        Ok(purchase) => {
            let cost = purchase.cost.map(|cost| format!(", {}{}", farm.currency, cost.show())).unwrap_or_default();
            let over = if purchase.over.is_zero() {
                String::new()
            } else {
                t!("report-over", round = round(purchase.over, farm.units))
            };
            t!("report-buy", purchase = purchase.words(product), cost = cost, over = over)
        }
        Err(why) => why,
    })
}

/// What is to be bought for all that is short: its cost, and how many products have no price or no size.
pub fn bill(farm: &Farm, needs: &Needs) -> (Money, usize) {
    let costs = needs.products.iter().filter_map(|need| purchase(farm, need));
    added(costs.map(|purchase| purchase.ok().and_then(|purchase| purchase.cost)))
}

/// What the products of the passes cost, and how many have no price.
pub fn cost(needs: &Needs) -> (Money, usize) {
    added(needs.products.iter().map(|need| need.cost))
}

fn added(costs: impl Iterator<Item = Option<Money>>) -> (Money, usize) {
    costs.fold((Money::default(), 0), |(sum, unknown), cost| match cost {
        Some(cost) => (sum.plus(cost), unknown),
        None => (sum, unknown + 1),
    })
}

/// "$120.00", and what is not in it for what it lacks.
pub fn sum_words(farm: &Farm, (sum, unknown): (Money, usize), lacks: &str) -> String {
    let money = format!("{}{}", farm.currency, sum.show());
    match unknown {
        0 => money,
        many => t!("report-without-products-whose-is-not-typed", money = money, many = many, lacks = lacks),
    }
}

/// What purchases cost, and how many have no price on them.
pub fn sum_bought(farm: &Farm, (sum, unknown): (Money, usize)) -> String {
    let money = format!("{}{}", farm.currency, sum.show());
    match unknown {
        0 => money,
        many => t!("report-without-that-have-no-price", money = money, many = many),
    }
}

/// What a product lacks whose cost is not known.
pub const PRICE: &str = "price";
/// What one lacks of which it is not known what buying it costs.
pub const PRICE_OR_SIZE: &str = "price-or-container";

/// That passes before a day have no record, where there are such.
pub fn earlier(needs: &Needs) -> Option<String> {
    match needs.earlier.len() {
        0 => None,
        many => Some(t!("report-passes-before-that-day-have-no", many = many)),
    }
}

/// The name of a source of water, or of what carries the products in its place.
pub fn source(farm: &Farm, need: &WaterNeed) -> String {
    match (need.kind, farm.waters.get(&need.water)) {
        (CarrierKind::Water, Some(water)) if !water.name.trim().is_empty() => water.name.clone(),
        (CarrierKind::Water, Some(_)) => t!("report-a-water-without-a-name").to_owned(),
        (CarrierKind::Water, None) => t!("report-water-source-not-chosen").to_owned(),
        (other, _) => capital(other.name()),
    }
}

/// "4 nurse tanks of 1,600 gal"; `None` where it is not typed what the nurse tank holds, or where it holds nothing.
pub fn tanks(nurse: &Nurse, units: Units) -> Option<String> {
    let tanks = nurse.tanks?;
    let holds = tanks.holds.show(units);
    Some(t!("report-nurse-tanks-of", count = tanks.count, holds = holds))
}

/// A name in words, or a word where there is none yet.
pub fn rig_name<'a>(farm: &'a Farm, nurse: &'a Nurse) -> &'a str {
    farm.rigs.get(&nurse.rig).map_or(nurse.rig.as_str(), |rig| rig.name.as_str())
}

/// What remains of a product, what it lacks, or that it is not known.
pub fn left(need: &Need, units: Units) -> String {
    match (need.short, need.left) {
        (Some(short), _) => t!("report-short", round = round(short, units)),
        (None, Some(left)) => t!("report-left", round = round(left, units)),
        (None, None) => unknown(need).to_owned(),
    }
}

/// Why it is not known what is on hand.
pub fn unknown(need: &Need) -> &'static str {
    if need.on_hand.typed { t!("report-density-not-typed") } else { t!("report-not-typed") }
}

/// What the passes of a day take, and what all from that day on take, as a person reads it in a terminal.
pub fn text(farm: &Farm, day: Date) -> String {
    let mut out = String::new();
    // Writing to a string does not fail.
    let _ = write(farm, day, &mut out);
    out
}

fn write(farm: &Farm, day: Date, out: &mut String) -> std::fmt::Result {
    let (of_day, season) = (of_day(farm, day), from_day(farm, day));
    writeln!(out, "{}\n", farm.name)?;
    if of_day.passes.is_empty() {
        writeln!(out, "{}", t!("report-no-pass-of-is-to-be", day = long_date(day)))?;
    } else {
        writeln!(
            out,
            "{}",
            t!("report-what-the-passes-of-take", day = long_date(day), passes = passes(farm, &of_day))
        )?;
        table(farm, &of_day, out)?;
        for water in &of_day.waters {
            writeln!(out, "  {:<44} {:>12}", source(farm, water), water.volume.show(farm.units))?;
        }
        for nurse in &of_day.nurses {
            if let Some(tanks) = tanks(nurse, farm.units) {
                writeln!(
                    out,
                    "{}",
                    t!(
                        "report-with",
                        rig_name = rig_name(farm, nurse),
                        source = source(farm, &nurse.need),
                        tanks = tanks
                    )
                )?;
            }
        }
    }
    if let Some(earlier) = earlier(&of_day) {
        writeln!(out, "  {earlier}")?;
    }
    writeln!(out)?;
    if season.passes.is_empty() {
        writeln!(out, "{}", t!("report-nor-is-any-after-it"))?;
        return Ok(());
    }
    if season.passes != of_day.passes {
        writeln!(out, "{}", t!("report-what-all-passes-from-then-on", passes = passes(farm, &season)))?;
        table(farm, &season, out)?;
        writeln!(out)?;
    }
    let short: Vec<&Need> = season.products.iter().filter(|need| need.short.is_some()).collect();
    if short.is_empty() {
        writeln!(out, "{}", t!("report-nothing-is-short-of-what-is"))?;
    } else {
        writeln!(out, "{}", t!("report-to-buy"))?;
        for need in &short {
            writeln!(out, "  {:<44} {}", name(farm, need), buying(farm, need).unwrap_or_default())?;
        }
        writeln!(out, "{}", t!("report-in-all", sum_words = sum_words(farm, bill(farm, &season), PRICE_OR_SIZE)))?;
    }
    Ok(())
}

fn table(farm: &Farm, needs: &Needs, out: &mut String) -> std::fmt::Result {
    let units = farm.units;
    for need in &needs.products {
        let on_hand = need
            .on_hand
            .amount
            .map_or_else(|| unknown(need).to_owned(), |amount| t!("report-on-hand", round = round(amount, units)));
        let left = if need.left.is_some() { left(need, units) } else { String::new() };
        let row = format!("  {:<44} {:>12} {on_hand:>20} {left:>16}", name(farm, need), round(need.amount, units));
        writeln!(out, "{}", row.trim_end())?;
    }
    for (pass, what) in &needs.open {
        let pass = farm.passes.get(pass).map_or(pass.as_str(), |pass| pass.name.as_str());
        writeln!(out, "{}", t!("report-not-in-it", pass = pass, what = what))?;
    }
    writeln!(out, "{}", t!("report-the-products-cost", sum_words = sum_words(farm, cost(needs), PRICE)))
}

fn name<'a>(farm: &'a Farm, need: &'a Need) -> &'a str {
    farm.products.get(&need.product).map_or(need.product.as_str(), |product| product.name.as_str())
}

/// The names of the passes.
pub fn passes(farm: &Farm, needs: &Needs) -> String {
    let names: Vec<&str> =
        needs.passes.iter().map(|id| farm.passes.get(id).map_or(id.as_str(), |pass| pass.name.as_str())).collect();
    names.join("; ")
}

/// The same as JSON, in SI units. Keys are only added, never renamed.
pub fn json(farm: &Farm, day: Date) -> Value {
    json!({
        "format": 1,
        "farm": farm.name,
        "date": day.to_string(),
        "day": of(farm, &of_day(farm, day)),
        "season": of(farm, &from_day(farm, day)),
    })
}

fn of(farm: &Farm, needs: &Needs) -> Value {
    json!({
        "passes": needs.passes,
        "earlier_passes": needs.earlier,
        "products": needs.products.iter().map(|need| product(farm, need)).collect::<Vec<_>>(),
        "waters": needs.waters.iter().map(water).collect::<Vec<_>>(),
        "nurse_tanks": needs.nurses.iter().map(|nurse| json!({
            "rig": nurse.rig,
            "carries": water(&nurse.need),
            "tank_l": nurse.tanks.map(|tanks| tanks.holds.to_litres()),
            "tanks": nurse.tanks.map(|tanks| tanks.count),
        })).collect::<Vec<_>>(),
        "not_reckoned": needs.open.iter().map(|(pass, what)| json!({ "pass": pass, "what": what })).collect::<Vec<_>>(),
    })
}

fn product(farm: &Farm, need: &Need) -> Value {
    let mut object = Map::new();
    object.insert("product".to_owned(), json!(need.product));
    amount(&mut object, "needed", need.amount);
    amount(&mut object, "taken_before", need.before);
    for (key, known) in [("on_hand", need.on_hand.amount), ("left", need.left), ("short", need.short)] {
        if let Some(known) = known {
            amount(&mut object, key, known);
        }
    }
    object.insert("on_hand_typed".to_owned(), json!(need.on_hand.typed));
    let lots = need.on_hand.held.iter().map(|held| {
        let mut object = Map::new();
        let size = held.container.as_ref().map(|(_, size)| size.text());
        object.insert("container".to_owned(), json!(size));
        object.insert("lot".to_owned(), json!(held.lot));
        if let Some(known) = held.amount {
            amount(&mut object, "on_hand", known);
        }
        Value::Object(object)
    });
    object.insert("by_lot".to_owned(), Value::Array(lots.collect()));
    object.insert("cost".to_owned(), json!(need.cost.and_then(|cost| cost.amount().to_f64())));
    let takes = need.by_pass.iter().map(|take| {
        let mut object = Map::new();
        object.insert("pass".to_owned(), json!(take.pass));
        amount(&mut object, "needed", take.amount);
        Value::Object(object)
    });
    object.insert("by_pass".to_owned(), Value::Array(takes.collect()));
    let buy = purchase(farm, need).map(|purchase| match purchase {
        Ok(purchase) => {
            let mut object = Map::new();
            let containers =
                farm.products.get(&need.product).map(|product| product.containers.as_slice()).unwrap_or_default();
            let items = purchase.items.iter().filter_map(|(at, count)| {
                Some(json!({ "container": containers.get(*at)?.size.text(), "count": count }))
            });
            object.insert("containers".to_owned(), Value::Array(items.collect()));
            amount(&mut object, "bought", purchase.amount);
            amount(&mut object, "over", purchase.over);
            object.insert("cost".to_owned(), json!(purchase.cost.and_then(|cost| cost.amount().to_f64())));
            Value::Object(object)
        }
        Err(why) => json!({ "not_told": why }),
    });
    object.insert("buy".to_owned(), json!(buy));
    Value::Object(object)
}

fn water(need: &WaterNeed) -> Value {
    json!({ "kind": need.kind.word(), "water": need.water, "volume_l": need.volume.to_litres() })
}
