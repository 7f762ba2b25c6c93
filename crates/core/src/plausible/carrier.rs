//! Spray volume over ground: against what the labels of the mix name, else against what booms spray.

use super::confusions::Kind;
use super::{Held, Slot, ranges};
use crate::farm::label::Says;
use crate::farm::{Farm, Id, Pass};
use crate::finding::{Basis, Finding, Subject};
use crate::label::when::Situation;
use crate::label::{Speaker, Spoken};
use crate::language::t;
use crate::quantity::unit::normal;
use crate::quantity::{AsTyped, CarrierRate, Quantity, Units};

/// The spray volume of a pass.
pub(super) fn judge(farm: &Farm, pass_id: &Id, pass: &Pass) -> Option<Finding> {
    let typed = pass.carrier.as_ref().filter(|carrier| !carrier.is_zero())?;
    let held = Held {
        kind: Kind::Carrier,
        typed,
        slot: Slot::Carrier(pass_id.clone()),
        about: Subject::Pass(pass_id.clone()),
        what: t!("plausible-the-spray-volume").to_owned(),
        units: farm.units,
    };
    let named = Named::of(farm, pass);
    if named.ends.is_empty() {
        return held.against(ranges::carrier()).or_else(|| foreign(&held));
    }
    let broken = named.ends.iter().find(|(least, most, _)| !within(typed.value(), *least, *most))?;
    let likely = ranges::carrier();
    let offers = held.offers(|meant| {
        named.ends.iter().all(|(least, most, _)| within(*meant, *least, *most))
            && likely.is_none_or(|ends| ends.is_likely(meant))
    });
    let why = match (broken.0, broken.1) {
        (Some(least), _) if least.exceeds(typed.value()) => {
            t!("plausible-a-label-asks-for-at-least", least = least.show(farm.units))
        }
        (_, Some(most)) => t!("plausible-a-label-asks-for-at-most", most = most.show(farm.units)),
        _ => return None,
    };
    held.doubted(&why, t!("plausible-be-inside-what-the-labels-name"), broken.2.clone(), offers)
}

/// A volume in the unit that is not the farm's own, which is unusual in that one and usual in the farm's.
fn foreign(held: &Held<CarrierRate>) -> Option<Finding> {
    let ends = ranges::carrier()?;
    let own = if held.units == Units::Metric { ["l/ha", "l/ha"] } else { ["gal/ac", "gpa"] };
    let is_own = |text: &str| own.iter().any(|unit| normal(text).ends_with(unit));
    if is_own(held.typed.text()) || ends.is_likely(&held.typed.value()) {
        return None;
    }
    let mut offers = held.offers(|meant| ends.is_likely(meant));
    offers.retain(|offer| is_own(&offer.text()));
    let why = t!(
        "plausible-mostly-to-are-sprayed",
        likely_least = ends.likely_least.show(held.units),
        likely_most = ends.likely_most.show(held.units)
    );
    held.doubted(&why, t!("plausible-be-among-these"), ends.basis.clone(), offers)
}

fn within(value: CarrierRate, least: Option<CarrierRate>, most: Option<CarrierRate>) -> bool {
    least.is_none_or(|least| !least.exceeds(value)) && most.is_none_or(|most| !value.exceeds(most))
}

/// What the labels of a mix name on its fields.
struct Named {
    ends: Vec<(Option<CarrierRate>, Option<CarrierRate>, Basis)>,
}

impl Named {
    fn of(farm: &Farm, pass: &Pass) -> Self {
        let mut ends = Vec::new();
        for (id, product) in pass.mix.iter().filter_map(|line| farm.products.get_key_value(&line.product)) {
            let mut situation = None;
            for statement in &product.label {
                let Says::Carrier { least, most } = &statement.says else { continue };
                let situation = situation.get_or_insert_with(|| Situation::new(farm, pass, id, product));
                let mut fields = pass.fields.iter().filter_map(|id| farm.fields.get(id));
                let spoken = fields.find_map(|field| Spoken::of(Speaker::Label(product), statement, field, situation));
                if let Some(spoken) = spoken {
                    let value = |end: &Option<AsTyped<CarrierRate>>| end.as_ref().map(AsTyped::value);
                    ends.push((value(least), value(most), spoken.basis()));
                }
            }
        }
        Self { ends }
    }
}
