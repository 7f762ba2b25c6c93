//! What is in the shed of a product, by container and lot.

use crate::farm::{Container, ContainerKind, Product};
use crate::quantity::{Amount, AsTyped};

/// What is in the shed of a product.
#[derive(Clone, Debug, PartialEq)]
pub struct OnHand {
    /// Its containers.
    pub held: Vec<Held>,
    /// All of them: a liquid by volume, a dry product by weight. `None` where it is not typed, or where volumes and weights do
    /// not add up.
    pub amount: Option<Amount>,
    /// Whether it is typed: it was counted, or a container holds something.
    pub typed: bool,
}

/// What there is of one kind of container, size and lot.
#[derive(Clone, Debug, PartialEq)]
pub struct Held {
    /// What they are, and what one holds when full; `None` for what came in without a container.
    pub container: Option<(ContainerKind, AsTyped<Amount>)>,
    /// The lot; empty where it is not typed.
    pub lot: String,
    /// How many full ones.
    pub full: u32,
    /// What is left in each opened one.
    pub opened: Vec<Amount>,
    /// The full ones and the rests of the opened ones; `None` where it is typed as weight of a liquid, or as volume of a dry
    /// product, without a density.
    pub amount: Option<Amount>,
}

impl OnHand {
    /// Of a product, as its containers are typed.
    pub(super) fn of(product: &Product) -> Self {
        let containers = || product.containers.iter().filter(|container| holds(container));
        let typed = product.counted.is_some() || containers().next().is_some();
        let held: Vec<Held> = containers().map(|container| as_typed(container, product)).collect();
        let total = || held.iter().try_fold(product.nothing(), |sum, held| sum.plus(held.amount?));
        Self { amount: typed.then(total).flatten(), held, typed }
    }
}

/// A container as it is typed.
pub(super) fn as_typed(container: &Container, product: &Product) -> Held {
    let opened = container.opened.as_ref().map(AsTyped::value);
    Held {
        container: Some((container.kind, container.size.clone())),
        lot: container.lot.trim().to_owned(),
        full: container.full,
        // Without a density it stands as it is typed.
        opened: opened.map(|opened| in_kind(opened, product).unwrap_or(opened)).into_iter().collect(),
        amount: amount(container, product),
    }
}

/// Whether something is in it.
pub(super) fn holds(container: &Container) -> bool {
    container.full > 0 || container.opened.is_some()
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
