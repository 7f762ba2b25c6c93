//! Figures of the review in the farm's units, in words and as lengths of bars: for the screen and for paper.

use rust_decimal::prelude::ToPrimitive;

use super::{Amounts, Spent};
use crate::language::t;
use crate::mix::choice::per_ground;
use crate::quantity::number::show;
use crate::quantity::{ActiveBasis, Amount, Area, Mass, MassPerArea, Money, Quantity, Share, Units, Volume};

/// Figures as a farm reads them.
#[derive(Clone, Debug)]
pub struct Figures {
    /// The units of the farm.
    pub units: Units,
    /// The sign of its money.
    pub currency: String,
}

impl Figures {
    /// The unit of ground.
    pub const fn ground(&self) -> &'static str {
        if matches!(self.units, Units::Metric) { "ha" } else { "ac" }
    }

    /// Ground as a length, in [`Self::ground`].
    pub fn area(&self, area: Area) -> f64 {
        if self.units == Units::Metric { area.to_hectares() } else { area.to_acres() }
    }

    /// The unit of spray.
    pub const fn liquid(&self) -> &'static str {
        match self.units {
            Units::UsCustomary => "gal",
            Units::Imperial => "imp gal",
            Units::Metric => "L",
        }
    }

    /// A volume as a length, in [`Self::liquid`].
    pub fn volume(&self, volume: Volume) -> f64 {
        match self.units {
            Units::UsCustomary => volume.to_us_gallons(),
            Units::Imperial => volume.to_imperial_gallons(),
            Units::Metric => volume.to_litres(),
        }
    }

    /// The unit of actives over ground.
    pub const fn active(&self) -> &'static str {
        if matches!(self.units, Units::Metric) { "kg/ha" } else { "lb/ac" }
    }

    /// Active over ground as a length, in [`Self::active`].
    pub fn active_over(&self, rate: MassPerArea) -> f64 {
        if self.units == Units::Metric { rate.to_kilograms_per_hectare() } else { rate.to_pounds_per_acre() }
    }

    /// A length in an axis of ground, in words without decimals.
    pub fn whole_area(&self, value: f64) -> String {
        format!("{} {}", show(value, 0), self.ground())
    }

    /// A quantity in words.
    pub fn show<Q: Quantity + Copy>(&self, quantity: Q) -> String {
        quantity.show(self.units)
    }

    /// "12 gal + 3 lb".
    pub fn amounts(&self, amounts: &Amounts) -> String {
        let amount = |amount| match amount {
            Amount::Volume(volume) => self.show(volume),
            Amount::Mass(mass) => self.show(mass),
        };
        amounts.each().map(amount).collect::<Vec<_>>().join(" + ")
    }

    /// "$120.00", "at least $120.00" where some of it has no price, "no price" where none has.
    pub fn spent(&self, spent: Spent) -> String {
        let money = self.money(spent.money);
        match spent.without_price {
            0 => money,
            _ if spent.priced == 0 => t!("season-no-price").to_owned(),
            _ => t!("season-at-least", money = money),
        }
    }

    /// "$1,234.50".
    pub fn money(&self, money: Money) -> String {
        let text = money.show();
        // Thousands are told apart, cents stay.
        let (whole, cents) = text.split_once('.').unwrap_or((text.as_str(), "00"));
        let whole = whole.parse::<f64>().map_or_else(|_| whole.to_owned(), |whole| show(whole, 0));
        format!("{}{whole}.{cents}", self.currency)
    }

    /// Money over ground; empty where there is no ground or no price.
    pub fn per_ground(&self, spent: Spent, ground: Area) -> String {
        let over = spent.money.per(ground.to_hectares()).filter(|_| spent.priced > 0);
        over.map_or_else(String::new, |money| {
            let money = per_ground(money, self.units, &self.currency);
            if spent.without_price > 0 { t!("season-at-least", money = money) } else { money }
        })
    }
}

/// A count, thousands told apart.
pub fn whole(count: usize) -> String {
    show(count as f64, 0)
}

/// Money as a length.
pub fn length(money: Money) -> f64 {
    money.amount().to_f64().unwrap_or(0.0)
}

/// "+2.1 %", "-3 %", "0 %".
pub fn error(share: Share) -> String {
    let text = show(share.to_percent(), 1);
    if share.to_percent() > 0.0 && text != "0" { format!("+{text} %") } else { format!("{text} %") }
}

/// A mass as the farm reads it, with its basis.
pub fn mass(figures: &Figures, mass: Mass, basis: ActiveBasis) -> String {
    format!("{} {}", mass.show(figures.units), basis.short())
}

#[cfg(test)]
mod tests {
    use super::{Figures, error};
    use crate::quantity::{Area, Money, Share, Units};
    use crate::season::review::Spent;
    use rust_decimal::Decimal;

    #[test]
    fn money_and_errors_in_words() {
        let figures = Figures { units: Units::UsCustomary, currency: "$".to_owned() };
        let money = Money::new(Decimal::new(123_456_789, 2));
        assert_eq!(figures.money(money), "$1,234,567.89");
        assert_eq!(figures.spent(Spent { money, priced: 1, without_price: 2 }), "at least $1,234,567.89");
        assert_eq!(figures.spent(Spent { money: Money::default(), priced: 0, without_price: 2 }), "no price");
        let spent = Spent { money: Money::new(Decimal::new(1000, 0)), priced: 3, without_price: 0 };
        assert_eq!(figures.per_ground(spent, Area::from_acres(80.0)), "$12.50/ac");
        assert_eq!(figures.per_ground(spent, Area::ZERO), "");
        for (per_cent, words) in [(2.14, "+2.1 %"), (-3.0, "-3 %"), (0.0, "0 %"), (0.01, "0 %")] {
            assert_eq!(error(Share::from_percent(per_cent)), words);
        }
    }
}
