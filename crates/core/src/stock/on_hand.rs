//! What is in the shed of a product, by container and lot.

use crate::farm::{Container, Product};
use crate::quantity::{Amount, AsTyped};

/// What is in the shed of a product.
#[derive(Clone, Debug, PartialEq)]
pub struct OnHand {
    /// Its containers, as they are typed.
    pub held: Vec<Held>,
    /// All of them: a liquid by volume, a dry product by weight. `None` where it is not typed, or where volumes and weights do
    /// not add up.
    pub amount: Option<Amount>,
    /// Whether it is typed: it was counted, or a container holds something.
    pub typed: bool,
}

/// What there is of one kind of container and lot.
#[derive(Clone, Debug, PartialEq)]
pub struct Held {
    /// Which of the product's containers, from 0.
    pub container: usize,
    /// The lot; empty where it is not typed.
    pub lot: String,
    /// The full ones and the rest of the opened one; `None` where it is typed as weight of a liquid, or as volume of a dry
    /// product, without a density.
    pub amount: Option<Amount>,
}

impl OnHand {
    /// Of a product.
    pub fn of(product: &Product) -> Self {
        let typed = is_typed(product);
        let held: Vec<Held> = product
            .containers
            .iter()
            .enumerate()
            .filter(|(_, container)| holds(container))
            .map(|(at, container)| Held {
                container: at,
                lot: container.lot.clone(),
                amount: amount(container, product),
            })
            .collect();
        Self { amount: typed.then(|| total(product)).flatten(), held, typed }
    }
}

/// What is on hand in all; `None` where it is not known.
pub(super) fn known(product: &Product) -> Option<Amount> {
    is_typed(product).then(|| total(product)).flatten()
}

fn total(product: &Product) -> Option<Amount> {
    product
        .containers
        .iter()
        .filter(|container| holds(container))
        .try_fold(product.nothing(), |sum, container| sum.plus(amount(container, product)?))
}

fn holds(container: &Container) -> bool {
    container.full > 0 || container.opened.is_some()
}

fn is_typed(product: &Product) -> bool {
    product.counted.is_some() || product.containers.iter().any(holds)
}

fn amount(container: &Container, product: &Product) -> Option<Amount> {
    let full = in_kind(container.size.value().times(f64::from(container.full)), product)?;
    match &container.opened {
        Some(opened) => full.plus(in_kind(opened.value(), product)?),
        None => Some(full),
    }
}

/// An amount as a volume for a liquid and as a weight for a dry product, through the density where need be; `None` where that
/// is not typed.
pub(super) fn in_kind(amount: Amount, product: &Product) -> Option<Amount> {
    let density = product.density.as_ref().map(AsTyped::value);
    match amount {
        Amount::Mass(mass) if product.is_liquid() => mass.volume(density?).map(Amount::Volume),
        Amount::Volume(volume) if !product.is_liquid() => Some(Amount::Mass(volume.mass(density?))),
        other => Some(other),
    }
}

#[cfg(test)]
mod tests {
    use super::OnHand;
    use crate::farm::{Container, ContainerKind, Formulation, Product, ProductKind};
    use crate::quantity::{Amount, AsTyped};

    fn oil(containers: &[(&str, u32, &str, &str)]) -> Product {
        let mut product = Product::new("Oil", ProductKind::Adjuvant, Formulation::EC);
        product.containers = containers
            .iter()
            .map(|(size, full, opened, lot)| Container {
                kind: ContainerKind::Jug,
                size: AsTyped::parse(size).unwrap(),
                full: *full,
                opened: AsTyped::parse(opened).ok(),
                lot: (*lot).to_owned(),
            })
            .collect();
        product
    }

    fn gallons(amount: Option<Amount>) -> f64 {
        match amount {
            Some(Amount::Volume(volume)) => volume.to_us_gallons(),
            other => panic!("{other:?}"),
        }
    }

    #[test]
    fn full_and_opened_ones_add_up_lot_by_lot() {
        let product = oil(&[("2.5 gal", 3, "2 qt", "A1"), ("30 gal", 1, "", "B7"), ("275 gal", 0, "", "")]);
        let on_hand = OnHand::of(&product);
        let lots: Vec<(&str, f64)> =
            on_hand.held.iter().map(|held| (held.lot.as_str(), gallons(held.amount))).collect();
        assert_eq!(lots.len(), 2);
        assert!(lots[0].0 == "A1" && (lots[0].1 - 8.0).abs() < 1e-9, "{lots:?}");
        assert!(lots[1].0 == "B7" && (lots[1].1 - 30.0).abs() < 1e-9, "{lots:?}");
        assert!((gallons(on_hand.amount) - 38.0).abs() < 1e-9);
    }

    #[test]
    fn empty_shelves_count_as_none_only_once_counted() {
        let mut product = oil(&[("2.5 gal", 0, "", "")]);
        assert_eq!((OnHand::of(&product).amount, OnHand::of(&product).typed), (None, false));
        product.counted = Some("2031-06-10".parse().unwrap());
        assert!(gallons(OnHand::of(&product).amount).abs() < 1e-12);
        product.containers.clear();
        assert!(OnHand::of(&product).typed);
    }

    #[test]
    fn weight_of_a_liquid_needs_its_density() {
        let mut product = oil(&[("2.5 gal", 1, "", ""), ("20 lb", 1, "", "")]);
        let on_hand = OnHand::of(&product);
        assert_eq!((on_hand.typed, on_hand.amount), (true, None));
        product.density = Some(AsTyped::parse("8 lb/gal").unwrap());
        assert!((gallons(OnHand::of(&product).amount) - 5.0).abs() < 1e-6);
        // What is only sold by weight and not there does not stand in the way.
        let sold = oil(&[("2.5 gal", 1, "", ""), ("20 lb", 0, "", "")]);
        assert!((gallons(OnHand::of(&sold).amount) - 2.5).abs() < 1e-9);
    }
}
