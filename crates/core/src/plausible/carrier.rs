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
    let mut offers = held.offers(|meant| {
        named.ends.iter().all(|(least, most, _)| within(*meant, *least, *most))
            && likely.is_none_or(|ends| ends.is_likely(meant))
    });
    // What nobody on this farm and none of its labels writes is not what was meant.
    offers.retain(|offer| {
        is_own(farm.units, &offer.text()) || named.units.iter().any(|unit| offer.text().ends_with(unit))
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
    if is_own(held.units, held.typed.text()) || ends.is_likely(&held.typed.value()) {
        return None;
    }
    let mut offers = held.offers(|meant| ends.is_likely(meant));
    offers.retain(|offer| is_own(held.units, &offer.text()));
    let why = t!(
        "plausible-mostly-to-are-sprayed",
        likely_least = ends.likely_least.show(held.units),
        likely_most = ends.likely_most.show(held.units)
    );
    held.doubted(&why, t!("plausible-be-among-these"), ends.basis.clone(), offers)
}

/// Whether a volume is written as the farm writes it.
fn is_own(units: Units, text: &str) -> bool {
    let own: &[&str] = if units == Units::Metric { &["l/ha"] } else { &["gal/ac", "gpa"] };
    own.iter().any(|unit| normal(text).ends_with(unit))
}

fn within(value: CarrierRate, least: Option<CarrierRate>, most: Option<CarrierRate>) -> bool {
    least.is_none_or(|least| !least.exceeds(value)) && most.is_none_or(|most| !value.exceeds(most))
}

/// What the labels of a mix name on its fields.
struct Named {
    ends: Vec<(Option<CarrierRate>, Option<CarrierRate>, Basis)>,
    /// The units in which they do.
    units: Vec<String>,
}

impl Named {
    fn of(farm: &Farm, pass: &Pass) -> Self {
        let (mut ends, mut units) = (Vec::new(), Vec::new());
        for (id, product) in pass.mix.iter().filter_map(|line| farm.products.get_key_value(&line.product)) {
            let mut situation = None;
            for statement in &product.label {
                let Says::Carrier { least, most } = &statement.says else { continue };
                let situation = situation.get_or_insert_with(|| Situation::new(farm, pass, id, product));
                let mut fields = pass.fields.iter().filter_map(|id| farm.fields.get(id));
                let spoken = fields.find_map(|field| Spoken::of(Speaker::Label(product), statement, field, situation));
                if let Some(spoken) = spoken {
                    let value = |end: &Option<AsTyped<CarrierRate>>| end.as_ref().map(AsTyped::value);
                    let texts = [least, most].into_iter().flatten().map(AsTyped::text);
                    units.extend(texts.filter_map(|text| Some(text.split_once(' ')?.1.to_owned())));
                    ends.push((value(least), value(most), spoken.basis()));
                }
            }
        }
        Self { ends, units }
    }
}
