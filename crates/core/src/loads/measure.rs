//! From an exact amount to what a jug or a scale can measure.

use crate::farm::{Container, Formulation, Measuring, Product};
use crate::language::{Say, say};
use crate::quantity::{Amount, AsTyped, Quantity, Units};

/// An amount as it is measured out.
#[derive(Clone, Debug, PartialEq)]
pub struct Measured {
    /// What arithmetic asks for.
    pub exact: Amount,
    /// What is measured: the nearest mark that does not pass a label maximum.
    pub amount: Amount,
    /// The measured amount in practical units: "13 gal 3 qt".
    pub text: String,
    /// The measured amount in whole containers and a measured rest: "5 jugs of 2.5 gal + 1 gal 1 qt"; may be empty.
    pub containers: String,
    /// How far the measured amount is from the exact one, as a fraction of it: 0.01 for one per cent too much.
    pub rounding: f64,
    /// The nearest mark would have passed a label maximum, so the one below was taken.
    pub held_down: bool,
}

/// The mark that a product is measured to. A water-soluble bag goes in whole.
pub fn step(product: &Product, farm: &Measuring, units: Units) -> Amount {
    if product.formulation == Formulation::WSP
        && let Some(bag) = product.containers.first().map(|container| container.size.value())
        && matches!(bag, Amount::Mass(_))
    {
        return bag;
    }
    let own = product.measuring_step.as_ref().map(AsTyped::value);
    match (own, product.is_liquid()) {
        (Some(step @ Amount::Volume(_)), true) | (Some(step @ Amount::Mass(_)), false) => step,
        (_, true) => Amount::Volume(farm.liquid(units)),
        (_, false) => Amount::Mass(farm.dry(units)),
    }
}

/// Rounds an exact amount to the nearest mark; to the one above where that would fall short of a least, and in any case to
/// one that does not pass a most.
pub fn measure(
    exact: Amount,
    bounds: (Option<Amount>, Option<Amount>),
    product: &Product,
    farm: &Measuring,
    units: Units,
) -> Measured {
    let (amount, held_down) = to_mark(exact, bounds, step(product, farm, units));
    let rounding = amount.ratio(exact).map_or(0.0, |ratio| ratio - 1.0);
    Measured {
        exact,
        amount,
        text: amount.show(units),
        containers: containers(amount, &product.containers, units),
        rounding,
        held_down,
    }
}

/// The mark that an exact amount is measured to, and whether a most held it down; without words, so that many can be tried.
pub(crate) fn to_mark(exact: Amount, (least, most): (Option<Amount>, Option<Amount>), step: Amount) -> (Amount, bool) {
    // A step of nothing means "to the drop".
    let Some(marks) = exact.ratio(step) else { return (exact, false) };
    // A part in 10⁹ is arithmetic, not spray.
    let least = least.and_then(|least| least.ratio(step)).map_or(0.0, |marks| (marks * (1.0 - 1e-9)).ceil());
    let most = most.and_then(|most| most.ratio(step)).map_or(f64::INFINITY, |marks| (marks * (1.0 + 1e-9)).floor());
    let wanted = marks.round().max(least);
    (step.times(wanted.min(most)), wanted > most)
}

/// Whole containers of the first size that fits, and the rest.
pub(crate) fn containers(amount: Amount, containers: &[Container], units: Units) -> String {
    containers_said(amount, containers, units).aloud()
}

/// The same in any language.
pub(crate) fn containers_said(amount: Amount, containers: &[Container], units: Units) -> Say {
    for container in containers {
        let size = container.size.value();
        let Some(count) = amount.ratio(size).map(|ratio| (ratio + 1e-9).floor()) else { continue };
        if !(1.0..=9999.0).contains(&count) {
            continue;
        }
        // A float in this range is a whole number that fits.
        #[allow(clippy::cast_possible_truncation, clippy::cast_sign_loss)]
        let whole = count as u32;
        let said = |id| say(id).with("containers", container.kind.on_card(whole)).with("size", container.size.text());
        let rest = amount.minus(size.times(count));
        if let Some(rest) = rest
            && rest.ratio(size).is_some_and(|share| share > 1e-9)
        {
            return said("card-containers-and-rest").with("rest", rest.show(units));
        }
        return said("card-containers");
    }
    Say::nothing()
}

#[cfg(test)]
mod tests {
    use super::measure;
    use crate::farm::{Container, ContainerKind, Formulation, Measuring, Product, ProductKind};
    use crate::quantity::{Amount, AsTyped, Mass, Units, Volume};

    fn product(formulation: Formulation, size: &str, kind: ContainerKind) -> Product {
        let mut product = Product::new("Test", ProductKind::Herbicide, formulation);
        product.containers.push(Container {
            kind,
            size: AsTyped::parse(size).unwrap(),
            full: 1,
            opened: None,
            lot: String::new(),
        });
        product
    }

    #[test]
    fn whole_jugs_and_a_measured_rest() {
        let product = product(Formulation::SL, "2.5 gal", ContainerKind::Jug);
        let out = measure(
            Amount::Volume(Volume::from_us_gallons(13.75)),
            (None, None),
            &product,
            &Measuring::default(),
            Units::UsCustomary,
        );
        assert_eq!(out.text, "13 gal 3 qt");
        assert_eq!(out.containers, "5 jugs of 2.5 gal + 1 gal 1 qt");
        assert!(out.rounding.abs() < 1e-12);
    }

    #[test]
    fn whole_bags_leave_no_rest() {
        let product = product(Formulation::SG, "51 lb", ContainerKind::Bag);
        let out = measure(
            Amount::Mass(Mass::from_pounds(102.0)),
            (None, None),
            &product,
            &Measuring::default(),
            Units::UsCustomary,
        );
        assert_eq!((out.text.as_str(), out.containers.as_str()), ("102 lb", "2 bags of 51 lb"));
    }

    #[test]
    fn rounding_never_passes_a_label_maximum() {
        let product = product(Formulation::SL, "2.5 gal", ContainerKind::Jug);
        let exact = Amount::Volume(Volume::from_us_fluid_ounces(10.6));
        let most = Amount::Volume(Volume::from_us_fluid_ounces(10.8));
        let free = measure(exact, (None, None), &product, &Measuring::default(), Units::UsCustomary);
        let held = measure(exact, (None, Some(most)), &product, &Measuring::default(), Units::UsCustomary);
        assert_eq!((free.text.as_str(), free.held_down), ("11 fl oz", false));
        assert_eq!((held.text.as_str(), held.held_down), ("10 fl oz", true));
    }
}
