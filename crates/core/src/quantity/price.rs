//! Money, and money per unit of product. Money is decimal, so that cents add up.

use crate::language::t;
use rust_decimal::Decimal;
use rust_decimal::prelude::{FromPrimitive, ToPrimitive};

use super::number::take;
use super::unit::{self, find, normal};
use super::{Amount, Mass, Quantity, QuantityError, Units, Volume};

/// An amount of money in the farm's currency.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, PartialOrd, Ord)]
pub struct Money(Decimal);

impl Money {
    /// From a decimal.
    pub const fn new(amount: Decimal) -> Self {
        Self(amount)
    }

    /// The decimal.
    pub const fn amount(self) -> Decimal {
        self.0
    }

    /// The sum.
    #[must_use]
    pub fn plus(self, other: Self) -> Self {
        Self(self.0.checked_add(other.0).unwrap_or(Decimal::MAX))
    }

    /// Shared among a number of units of ground; `None` where there are none.
    pub fn per(self, units: f64) -> Option<Self> {
        let units = Decimal::from_f64(units).filter(|units| !units.is_zero())?;
        self.0.checked_div(units).map(Self)
    }

    /// The part of it between two fractions of the whole; `None` where a number does not fit. Beyond ten decimals it is rounded,
    /// so that parts end to end add up to the whole.
    pub fn between(self, from: f64, to: f64) -> Option<Self> {
        let up_to = |share: f64| Some(self.0.round_dp(10).checked_mul(Decimal::from_f64(share)?)?.round_dp(10));
        up_to(to)?.checked_sub(up_to(from)?).map(Self)
    }

    /// With two decimals, as on a bill.
    pub fn show(self) -> String {
        format!("{:.2}", self.0.round_dp_with_strategy(2, rust_decimal::RoundingStrategy::MidpointAwayFromZero))
    }
}

/// Money per unit of product: "24.50 / gal".
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Price {
    money: Decimal,
    per: Amount,
}

impl Price {
    /// What an amount costs; `None` where the price is per volume and the amount a mass, or the reverse.
    pub fn of(&self, amount: Amount) -> Option<Money> {
        let count = Decimal::from_f64(amount.ratio(self.per)?)?;
        self.money.checked_mul(count).map(Money)
    }

    /// The money.
    pub const fn money(&self) -> Decimal {
        self.money
    }
}

impl Quantity for Price {
    const EXAMPLE: &'static str = "24.50 / gal";

    fn called() -> &'static str {
        t!("quantity-called-a-price")
    }

    fn parse(text: &str) -> Result<Self, QuantityError> {
        let error = |problem: String| QuantityError::of::<Self>(text, problem);
        let bare = text.trim().trim_start_matches(['$', '€', '£']);
        let (value, rest) = take(bare).map_err(error)?;
        if value < 0.0 {
            return Err(error(t!("quantity-a-price-is-not-below-zero").to_owned()));
        }
        let name = normal(rest);
        let name = name.strip_prefix('/').unwrap_or(&name).trim();
        let per = if let Some(volume) = find(unit::VOLUME, name) {
            Amount::Volume(Volume::from_cubic_metres(volume.factor))
        } else if let Some(mass) = find(unit::MASS, name) {
            Amount::Mass(Mass::from_kilograms(mass.factor))
        } else if name.is_empty() {
            return Err(error(t!("quantity-per-what-a-unit-of-volume").to_owned()));
        } else {
            return Err(error(t!("quantity-is-not-a-unit-of-volume", name = name)));
        };
        // A price has few digits, so the nearest decimal is the one that was typed.
        let money = Decimal::from_f64(value).ok_or_else(|| error(t!("quantity-the-number-does-not-fit").to_owned()))?;
        Ok(Self { money, per })
    }

    fn show(&self, units: Units) -> String {
        let (unit, name) = match (self.per, units) {
            (Amount::Volume(_), Units::UsCustomary) => (Amount::Volume(Volume::from_us_gallons(1.0)), "gal"),
            (Amount::Volume(_), Units::Imperial) => (Amount::Volume(Volume::from_imperial_gallons(1.0)), "imp gal"),
            (Amount::Volume(_), Units::Metric) => (Amount::Volume(Volume::from_litres(1.0)), "L"),
            (Amount::Mass(_), Units::Metric) => (Amount::Mass(Mass::from_kilograms(1.0)), "kg"),
            (Amount::Mass(_), _) => (Amount::Mass(Mass::from_pounds(1.0)), "lb"),
        };
        let money = self.of(unit).and_then(|money| money.amount().to_f64()).unwrap_or_default();
        format!("{money:.2}/{name}")
    }
}
