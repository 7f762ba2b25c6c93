//! From an exact amount for a jar to what a syringe, a spoon or a small scale can measure.

use crate::language::t;
use crate::quantity::number::show;
use crate::quantity::{Amount, Mass, Units, Volume};

/// The least that a syringe with marks of 0.1 mL measures to a tenth of it.
const LEAST_MILLILITRES: f64 = 0.5;
/// The least that a scale with marks of 0.01 g measures to a tenth of it.
const LEAST_GRAMS: f64 = 0.1;
/// How far a spoon may be from the amount and still be named, as a share of it.
const SPOON: f64 = 0.05;

/// An amount as it is measured for a jar.
#[derive(Clone, Debug, PartialEq)]
pub struct Measured {
    /// The nearest mark; the exact amount where it is taken from a stock.
    pub amount: Amount,
    /// In words: "4.7 mL", "2.84 g"; what to take of the stock where there is one.
    pub text: String,
    /// In US spoons: "about 1 tsp"; empty for dry products, for metric farms, and where no spoon is small enough.
    pub spoons: String,
    /// The stock to make first, where the amount is too small to measure.
    pub stock: Option<Stock>,
}

/// A dilution made first, because the amount itself is smaller than what can be measured.
#[derive(Clone, Debug, PartialEq)]
pub struct Stock {
    /// Millilitres of it that hold 1 mL or 1 g of the product: 10, 100, …
    pub parts: u32,
    /// How much of it goes into the jar.
    pub take: Volume,
    /// How to make it, in words.
    pub text: String,
}

/// Brings an amount to what can be measured; `None` where it is nothing, or so little that no stock helps.
///
/// # Valid range
/// Liquids to 0.1 mL below 10 mL, to 0.5 mL below 100 mL and to 1 mL above; dry products to 0.01 g below 10 g and to
/// 0.1 g above. Below 0.5 mL and 0.1 g a stock is made, down to one part in 100,000.
pub fn measure(exact: Amount, carrier: &str, units: Units) -> Option<Measured> {
    match exact {
        Amount::Volume(volume) => {
            let millilitres = volume.to_litres() * 1000.0;
            if millilitres < LEAST_MILLILITRES {
                return from_stock(exact, millilitres, &[10, 100, 1_000, 10_000, 100_000], carrier);
            }
            let amount = Volume::from_litres(nearest(millilitres, mark_of_millilitres(millilitres)) / 1000.0);
            let spoons = if units == Units::Metric { String::new() } else { spoons(volume, units) };
            let text = show_millilitres(amount);
            Some(Measured { amount: Amount::Volume(amount), text, spoons, stock: None })
        }
        Amount::Mass(mass) => {
            let grams = mass.to_grams();
            if grams < LEAST_GRAMS {
                return from_stock(exact, grams, &[100, 1_000, 10_000, 100_000], carrier);
            }
            let amount = Mass::from_grams(nearest(grams, if grams < 10.0 { 0.01 } else { 0.1 }));
            let text = format!("{} g", show(amount.to_grams(), 2));
            Some(Measured { amount: Amount::Mass(amount), text, spoons: String::new(), stock: None })
        }
    }
}

/// The first dilution of which enough can be measured. One part in more than 100 is made in steps, since nobody measures
/// a hundredth of a millilitre.
fn from_stock(exact: Amount, small: f64, dilutions: &[u32], carrier: &str) -> Option<Measured> {
    let parts = *dilutions.iter().find(|parts| small * f64::from(**parts) >= LEAST_MILLILITRES)?;
    let taken = small * f64::from(parts);
    let take = Volume::from_litres(nearest(taken, mark_of_millilitres(taken)) / 1000.0);
    let (first, shown) = (parts.min(100), show(f64::from(parts), 0));
    let mut text = match exact {
        Amount::Volume(_) => t!("mix-stock-of-a-liquid", parts = shown, first = first, carrier = carrier),
        Amount::Mass(_) => t!("mix-stock-of-a-solid", parts = shown, first = first, carrier = carrier),
    };
    let mut left = parts / first;
    while left > 1 {
        let step = left.min(100);
        text = t!("mix-then-1-ml-of-that-to", text = text, step = step);
        left /= step;
    }
    text = t!("mix-shake-it-and-take-at-once", text = text, take = show_millilitres(take));
    let stock = Stock { parts, take, text };
    let text = t!("mix-of-stock", take = show_millilitres(take));
    Some(Measured { amount: exact, text, spoons: String::new(), stock: Some(stock) })
}

fn nearest(value: f64, mark: f64) -> f64 {
    (value / mark).round() * mark
}

fn mark_of_millilitres(millilitres: f64) -> f64 {
    match millilitres {
        small if small < 10.0 => 0.1,
        middle if middle < 100.0 => 0.5,
        _ => 1.0,
    }
}

/// A volume in millilitres, to a tenth.
pub fn show_millilitres(volume: Volume) -> String {
    format!("{} mL", show(volume.to_litres() * 1000.0, 1))
}

/// A volume in US spoons: a teaspoon is a sixth of a US fluid ounce (4.92892159375 mL), a tablespoon three of them.
///
/// Where quarters of a teaspoon, or an eighth, come within 5 % of the amount they are named as "about"; else the number
/// stands to two places. Empty below a quarter of a teaspoon, except near an eighth.
///
/// ```
/// use tankard_core::mix::jar::measure::spoons;
/// use tankard_core::quantity::{Units, Volume};
/// assert_eq!(spoons(Volume::from_litres(0.002366), Units::UsCustomary), "about 1/2 tsp");
/// assert_eq!(spoons(Volume::from_litres(0.02366), Units::UsCustomary), "about 1 tbsp 1 3/4 tsp");
/// ```
pub fn spoons(volume: Volume, units: Units) -> String {
    let teaspoons = volume.to_us_fluid_ounces() * 6.0;
    let us = if units == Units::Imperial { "US " } else { "" };
    let near = |spoon: f64| (spoon - teaspoons).abs() <= SPOON * teaspoons;
    let quarters = (teaspoons * 4.0).round();
    if quarters >= 1.0 && near(quarters / 4.0) {
        let is_exact = (quarters / 4.0 - teaspoons).abs() < 0.001 * teaspoons;
        let (tablespoons, rest) = ((quarters / 12.0).floor(), quarters % 12.0);
        let mut parts = Vec::new();
        if tablespoons > 0.0 {
            parts.push(t!("mix-tbsp", show = show(tablespoons, 0), us = us));
        }
        if rest > 0.0 {
            parts.push(t!("mix-tsp", rest = in_quarters(rest), us = us));
        }
        let spoons = parts.join(" ");
        return if is_exact { spoons } else { t!("mix-about-spoons", spoons = spoons) };
    }
    if near(0.125) {
        return t!("mix-about-1-8-tsp", us = us);
    }
    if teaspoons < 0.25 {
        return String::new();
    }
    t!("mix-show-us-tsp", show = show(teaspoons, 2), us = us)
}

/// A count of quarters as people write it: "1 3/4".
fn in_quarters(quarters: f64) -> String {
    let whole = (quarters / 4.0).floor();
    let part = match quarters % 4.0 {
        part if part >= 3.0 => "3/4",
        part if part >= 2.0 => "1/2",
        part if part >= 1.0 => "1/4",
        _ => "",
    };
    if whole > 0.0 { format!("{} {part}", show(whole, 0)).trim_end().to_owned() } else { part.to_owned() }
}
