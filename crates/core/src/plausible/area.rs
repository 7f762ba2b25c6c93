//! Areas: the stated one against the boundary, else against the farm's other fields; what stays unsprayed and what a pass sprays against
//! the field.

use super::confusions::Kind;
use super::text::Typed;
use super::{Held, Slot};
use crate::farm::{Farm, Field, Id, Pass, Shape};
use crate::finding::{Basis, Finding, Subject};
use crate::language::t;
use crate::quantity::unit::{AREA, find, normal};
use crate::quantity::{Area, AsTyped, Quantity, Units};

/// Within so much of the boundary's area a figure is taken to speak of the same ground. Common practice, no source.
const SAME: f64 = 0.1;
/// So far off, one of the two is wrong and not merely rough. Common practice, no source.
const OFF: f64 = 1.5;
/// With fewer fields beside it there is nothing to compare a field with.
const OTHERS: usize = 3;

fn held<'a>(farm: &Farm, id: &Id, typed: &'a AsTyped<Area>, slot: Slot, what: String) -> Held<'a, Area> {
    Held { kind: Kind::Area, typed, slot, about: Subject::Field(id.clone()), what, units: farm.units }
}

/// The areas of a field.
pub(super) fn judge(farm: &Farm, id: &Id, field: &Field, findings: &mut Vec<Finding>) {
    let stated = held(farm, id, &field.area, Slot::Area(id.clone()), t!("plausible-the-area-of", name = field.name));
    findings.extend(match field.boundary.as_ref().map(Shape::area).filter(|area| !area.is_zero()) {
        Some(measured) => against_boundary(farm, &stated, measured),
        None => against_others(farm, id, &stated),
    });
    if let Some(unsprayed) = &field.unsprayed
        && unsprayed.exceeds(field.ground())
    {
        let what = t!("plausible-what-stays-unsprayed-of", name = field.name);
        findings.extend(beyond(farm, &held(farm, id, unsprayed, Slot::Unsprayed(id.clone()), what), field.ground()));
    }
}

/// What a pass sprays of its fields.
pub(super) fn of_pass(farm: &Farm, pass_id: &Id, pass: &Pass, findings: &mut Vec<Finding>) {
    for (id, part) in &pass.parts {
        let Some((id, field)) = farm.fields.get_key_value(id) else { continue };
        if part.exceeds(field.sprayable()) {
            let slot = Slot::Part { pass: pass_id.clone(), field: id.clone() };
            let what = t!("plausible-what-is-sprayed-of", name = field.name);
            findings.extend(beyond(farm, &held(farm, id, part, slot, what), field.sprayable()));
        }
    }
}

/// A part that is more than the whole.
fn beyond(farm: &Farm, part: &Held<Area>, whole: Area) -> Option<Finding> {
    if whole.is_zero() {
        return None;
    }
    let offers = part.offers(|meant| !meant.is_zero() && !meant.exceeds(whole));
    part.doubted(
        &t!("plausible-the-field-has", whole = whole.show(farm.units)),
        t!("plausible-fit-in"),
        Basis::Arithmetic,
        offers,
    )
}

fn against_boundary(farm: &Farm, stated: &Held<Area>, measured: Area) -> Option<Finding> {
    let ratio = measured.ratio(stated.typed.value())?;
    if (1.0 / OFF..=OFF).contains(&ratio) {
        return None;
    }
    let off = |meant: &Area| measured.ratio(*meant).map_or(f64::INFINITY, |ratio| (ratio - 1.0).abs());
    let mut offers: Vec<(f64, super::Offer)> =
        super::confusions::meant::<Area>(Kind::Area, stated.typed.text(), farm.units)
            .into_iter()
            .filter(|meant| off(&meant.value) <= SAME)
            .map(|meant| (off(&meant.value), super::Offer::of(stated.slot.clone(), meant.text.clone(), meant.why())))
            .collect();
    offers.sort_by(|(a, _), (b, _)| a.total_cmp(b));
    let offers = offers.into_iter().map(|(_, offer)| offer).collect();
    let why = t!("plausible-its-boundary-holds", measured = measured.show(farm.units));
    stated.doubted(&why, t!("plausible-be-that-ground"), Basis::Arithmetic, offers)
}

/// A field that alone is typed in another unit than all others, and lies outside of all of them, while its figure in their unit
/// would lie among them.
fn against_others(farm: &Farm, id: &Id, stated: &Held<Area>) -> Option<Finding> {
    let usual = if farm.units == Units::Metric { "ha" } else { "ac" };
    let in_usual = |typed: &AsTyped<Area>| {
        let unit = Typed::of(typed.text()).map(|typed| normal(&typed.unit));
        unit.and_then(|unit| find(AREA, &unit)).is_some_and(|unit| unit.names.contains(&usual))
    };
    if stated.typed.is_zero() || in_usual(stated.typed) {
        return None;
    }
    let others = || farm.fields.iter().filter(|(other, _)| *other != id).map(|(_, field)| &field.area);
    if others().count() < OTHERS || !others().all(in_usual) {
        return None;
    }
    let (least, most) = (others().map(AsTyped::value).min()?, others().map(AsTyped::value).max()?);
    let value = stated.typed.value();
    if !(value.exceeds(most) || least.exceeds(value)) {
        return None;
    }
    let offers = stated
        .offers(|meant| !meant.exceeds(most) && !least.exceeds(*meant))
        .into_iter()
        .filter(|offer| offer.sets.iter().all(|set| AsTyped::parse(&set.text).is_ok_and(|typed| in_usual(&typed))))
        .collect();
    let why = t!(
        "plausible-all-other-fields-are-typed-in",
        usual = usual,
        least = least.show(farm.units),
        most = most.show(farm.units)
    );
    stated.doubted(&why, t!("plausible-lie-among-them"), Basis::Practice, offers)
}
