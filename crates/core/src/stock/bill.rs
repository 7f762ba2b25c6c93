//! What purchases cost.

use jiff::civil::Date;

use super::on_hand::in_kind;
use crate::farm::{Farm, Moved, Movement, Product};
use crate::quantity::{AsTyped, Money, Price};

/// The price of the latest purchase of a product on which one is typed, and its day.
pub fn latest_price<'a>(farm: &'a Farm, product: &str) -> Option<(Date, &'a AsTyped<Price>)> {
    let priced = farm.movements.iter().filter(|movement| movement.product == product).filter_map(|movement| {
        let Moved::Bought { price: Some(price), .. } = &movement.what else { return None };
        Some((movement.date, price))
    });
    // Of several on a day the last that was written down.
    priced.max_by_key(|(date, _)| *date)
}

/// What the purchases of a calendar year cost, of one product or of all, and of how many of them that is not known because no price, or no
/// density, is typed.
pub fn spent(farm: &Farm, product: Option<&str>, year: i16) -> (Money, usize) {
    let wanted = |movement: &&Movement| {
        movement.date.year() == year && product.is_none_or(|product| movement.product == product)
    };
    let bought = farm.movements.iter().filter(wanted).filter(|movement| matches!(movement.what, Moved::Bought { .. }));
    bought.fold((Money::default(), 0), |(sum, unknown), movement| {
        match farm.products.get(&movement.product).and_then(|product| cost(movement, product)) {
            Some(cost) => (sum.plus(cost), unknown),
            None => (sum, unknown + 1),
        }
    })
}

/// What a purchase cost; `None` for any other movement, and where it cannot be told.
fn cost(movement: &Movement, product: &Product) -> Option<Money> {
    let Moved::Bought { size, count, price, .. } = &movement.what else { return None };
    let (price, all) = (price.as_ref()?, size.value().times(f64::from(*count)));
    // A price may be per gallon where the bag is sold by weight.
    price.of(all).or_else(|| price.of(in_kind(all, product)?))
}
