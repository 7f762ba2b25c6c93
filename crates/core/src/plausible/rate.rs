//! The rate of a product: against the ranges of its label, for an adjuvant against what labels of the mix and publications name for its class.

use std::sync::LazyLock;

use super::confusions::{Kind, Meant, meant};
use super::text::Typed;
use super::{Offer, Slot, content, either, hint, ranges};
use crate::farm::{AdjuvantClass, Farm, Id, Line, Pass, Product, Says, Statement};
use crate::finding::{Basis, Finding, Subject};
use crate::label::rate::{Band, bands};
use crate::label::when::Situation;
use crate::label::{Here, place};
use crate::language::t;
use crate::mix::choice::rate_over_ground;
use crate::mix::line::over_ground;
use crate::plan::PlannedField;
use crate::quantity::number::show;
use crate::quantity::unit::normal;
use crate::quantity::{AmountPerArea, AsTyped, CarrierRate, Rate, Units};
use crate::season::Log;

/// Where a rate may lie.
struct Range<'a> {
    /// What is not doubted.
    band: Band,
    /// What may be offered.
    likely: Band,
    least: Option<&'a AsTyped<Rate>>,
    most: Option<&'a AsTyped<Rate>>,
    from: From<'a>,
    /// Whether it is stated as such rates mostly are.
    is_usual: bool,
}

/// Who names a range.
enum From<'a> {
    /// The product's own label.
    Own(&'a Product, &'a Statement),
    /// The label of a partner, of the class of an adjuvant.
    Partner(&'a Product, &'a Statement),
    /// The table, of its class.
    Class(&'static ranges::Row),
}

impl Range<'_> {
    fn words(&self, units: Units) -> String {
        let who = match &self.from {
            From::Own(..) => t!("plausible-that-its-label-names"),
            From::Partner(..) => t!("plausible-that-a-label-of-the-mix"),
            From::Class(_) => t!("plausible-at-which-such-an-adjuvant-is"),
        };
        let named = match (self.least, self.most) {
            (Some(least), Some(most)) => t!("plausible-to", least = least.show(units), most = most.show(units)),
            (Some(least), None) => t!("plausible-at-least", least = least.show(units)),
            (None, Some(most)) => t!("plausible-at-most", most = most.show(units)),
            (None, None) => String::new(),
        };
        format!("{who} ({named})")
    }

    fn basis(&self) -> Basis {
        match &self.from {
            From::Own(product, statement) | From::Partner(product, statement) => {
                Basis::Label(place(product, statement))
            }
            From::Class(row) => row.basis(),
        }
    }
}

/// The rates of a pass.
pub(super) fn judge(
    farm: &Farm,
    log: &Log,
    pass_id: &Id,
    pass: &Pass,
    fields: &[PlannedField],
    carrier: CarrierRate,
    findings: &mut Vec<Finding>,
) {
    for line in &pass.mix {
        let Some((id, product)) = farm.products.get_key_value(&line.product) else { continue };
        let amount = over_ground(line, product, carrier).ok();
        if amount.is_some_and(AmountPerArea::is_zero) {
            continue;
        }
        let situation = Situation::new(farm, pass, id, product);
        let mut asked: Vec<(&str, &str)> = Vec::new();
        let mut all: Vec<Vec<Range>> = Vec::new();
        for planned in fields {
            let Some((field_id, field)) = farm.fields.get_key_value(&planned.field) else { continue };
            if asked.contains(&(field.crop.as_str(), field.stage.as_str())) {
                continue;
            }
            asked.push((&field.crop, &field.stage));
            let area = planned.area;
            let here =
                Here { farm, log, pass_id, pass, carrier, id, product, field_id, field, area, situation: &situation };
            let of_field: Vec<Range> =
                bands(&here).into_iter().map(|(band, says)| of_label(product, band, says)).collect();
            if !of_field.is_empty() {
                all.push(of_field);
            }
        }
        if !product.kind.is_pesticide() {
            // What its own label does not name, another label of the mix may.
            if all.is_empty() {
                all.push(Vec::new());
            }
            for of_field in &mut all {
                of_class(farm, pass, product, carrier, of_field);
            }
            all.retain(|of_field| !of_field.is_empty());
        }
        let is_by_active =
            |rate: &AsTyped<Rate>| matches!(rate.value(), Rate::ActivePerArea(..) | Rate::ActivePerSpray(..));
        let mut named = all.iter().flatten().flat_map(|range| range.least.into_iter().chain(range.most));
        if is_by_active(&line.rate) || named.any(is_by_active) {
            // Reckoned through a content that is wrong, a right rate looks wrong.
            let mut of_content = Vec::new();
            content::judge(farm, id, product, &mut of_content);
            if !of_content.is_empty() {
                continue;
            }
        }
        findings.extend(held(line, (id, product), pass_id, amount, carrier, &all, farm.units));
    }
}

fn of_label<'a>(product: &'a Product, band: Band, statement: &'a Statement) -> Range<'a> {
    let (least, most) = match &statement.says {
        Says::Rate { least, most } => (least.as_ref(), most.as_ref()),
        _ => (None, None),
    };
    Range { band, likely: band, least, most, from: From::Own(product, statement), is_usual: true }
}

/// What labels of the mix and publications name for the class of an adjuvant.
fn of_class<'a>(farm: &'a Farm, pass: &Pass, product: &Product, carrier: CarrierRate, all: &mut Vec<Range<'a>>) {
    let Some(class) = product.adjuvant_class() else { return };
    let over = |rate: Option<&AsTyped<Rate>>| rate_over_ground(rate?, product, carrier).ok();
    for partner in pass.mix.iter().filter_map(|line| farm.products.get(&line.product)) {
        for statement in &partner.label {
            let Says::Adjuvant { class: of, least, most, .. } = &statement.says else { continue };
            let (least, most) = (least.as_ref(), most.as_ref());
            let band = Band { least: over(least), most: over(most) };
            if *of == class && band.names() {
                all.push(Range {
                    band,
                    likely: band,
                    least,
                    most,
                    from: From::Partner(partner, statement),
                    is_usual: true,
                });
            }
        }
    }
    // Over ground and in the spray: with little spray a rate over ground is much of it.
    for (at, row) in classes().iter().filter(|row| row.class == class).enumerate() {
        let [least, most, likely_least, likely_most] = [0, 1, 2, 3].map(|end| row.ends.get(end));
        let band = Band { least: over(least), most: over(most) };
        if band.least.is_some() && band.most.is_some() {
            let likely = Band { least: over(likely_least), most: over(likely_most) };
            all.push(Range { band, likely, least, most, from: From::Class(row.row), is_usual: at == 0 });
        }
    }
}

/// The rates of a class, as the table has them.
struct OfClass {
    class: AdjuvantClass,
    ends: [AsTyped<Rate>; 4],
    row: &'static ranges::Row,
}

fn classes() -> &'static [OfClass] {
    static CLASSES: LazyLock<Vec<OfClass>> = LazyLock::new(|| {
        let read = |text: &str| AsTyped::parse(text).ok();
        let one = |row: &'static ranges::Row| {
            let ends = [read(&row.least)?, read(&row.most)?, read(&row.likely_least)?, read(&row.likely_most)?];
            Some(OfClass { class: AdjuvantClass::of_key(&row.of)?, ends, row })
        };
        ranges::table().iter().filter(|row| row.what == "class").filter_map(one).collect()
    });
    &CLASSES
}

/// A rate against what is named on each kind of field.
fn held(
    line: &Line,
    (id, product): (&Id, &Product),
    pass_id: &Id,
    amount: Option<AmountPerArea>,
    carrier: CarrierRate,
    all: &[Vec<Range>],
    units: Units,
) -> Option<Finding> {
    let is_out =
        |of_field: &&Vec<Range>| amount.is_none_or(|amount| !of_field.iter().any(|range| range.band.holds(amount)));
    let out = all.iter().find(is_out)?;
    let is_likely = |meant: &Meant<Rate>| {
        let Ok(rate) = AsTyped::parse(&meant.text) else { return false };
        over_ground(&Line { rate, ..line.clone() }, product, carrier)
            .is_ok_and(|amount| all.iter().all(|of_field| of_field.iter().any(|range| range.likely.may_mean(amount))))
    };
    let mut found: Vec<Meant<Rate>> =
        meant(Kind::Rate, line.rate.text(), units).into_iter().filter(is_likely).collect();
    // Who takes a rate from a label takes its unit too.
    let usual = out.iter().filter(|range| range.is_usual);
    let stated: Vec<&AsTyped<Rate>> = usual.flat_map(|range| range.least.into_iter().chain(range.most)).collect();
    found.sort_by_key(|meant| unlike(meant, &stated));
    let slot = Slot::Rate { pass: pass_id.clone(), product: id.clone() };
    let offers: Vec<Offer> =
        found.into_iter().map(|meant| Offer::of(slot.clone(), meant.text.clone(), meant.why())).collect();
    let texts: Vec<String> = offers.iter().map(Offer::text).collect();
    if texts.is_empty() {
        return None;
    }
    let (typed, name) = (line.rate.text().trim(), &product.name);
    let (text, range) = if let Some(amount) = amount {
        let (far, range) = beside(amount, out)?;
        (t!("plausible-of-is", typed = typed, name = name, far = far, range = range.words(units)), range)
    } else {
        let range = out.first()?;
        (t!("plausible-of-cannot-be-reckoned-as-the", typed = typed, name = name, range = range.words(units)), range)
    };
    let hint = if matches!(range.from, From::Own(..)) { t!("plausible-if-the-rate-is-right-look") } else { hint() };
    let about = Subject::Product(id.clone());
    let text = t!("plausible-would-be-inside", text = text, texts = either(&texts));
    Some(Finding::check(about, text, range.basis()).hint(hint).offering(offers))
}

/// How unlike the notation of the label it is: 0 in its unit, 1 in its kind of rate, 2 otherwise.
fn unlike(meant: &Meant<Rate>, stated: &[&AsTyped<Rate>]) -> u8 {
    let unit = |text: &str| Typed::of(text).map(|typed| normal(&typed.unit));
    if stated.iter().any(|stated| unit(stated.text()) == unit(&meant.text)) {
        0
    } else if stated
        .iter()
        .any(|stated| std::mem::discriminant(&stated.value()) == std::mem::discriminant(&meant.value))
    {
        1
    } else {
        2
    }
}

/// A rate that is so little beside a range was rounded, and is no slip of a unit. Common practice, no source.
const ROUNDED: f64 = 1.001;

/// How far a rate lies beside the range next to it: "11 times the most".
fn beside<'a, 'b>(amount: AmountPerArea, ranges: &'a [Range<'b>]) -> Option<(String, &'a Range<'b>)> {
    let places = |ratio: f64| match ratio {
        10.0.. => 0,
        1.05.. => 1,
        _ => 3,
    };
    let times = |ratio: f64| show(ratio, places(ratio));
    let nearest = |of: &dyn Fn(&Range) -> Option<f64>| {
        let all = ranges.iter().filter_map(|range| Some((of(range).filter(|ratio| *ratio > ROUNDED)?, range)));
        all.min_by(|(a, _), (b, _)| a.total_cmp(b))
    };
    let over = nearest(&|range| range.band.most.and_then(|most| amount.ratio(most)));
    let under = nearest(&|range| range.band.least.and_then(|least| least.ratio(amount)));
    match (over, under) {
        (Some((over, range)), None) => Some((t!("plausible-times-the-most", over = times(over)), range)),
        (Some((over, range)), Some((under, _))) if over <= under => {
            Some((t!("plausible-times-the-most", over = times(over)), range))
        }
        (_, Some((under, range))) => Some((t!("plausible-times-less-than-the-least", under = times(under)), range)),
        (None, None) => None,
    }
}
