//! Typed quantities: what people type, what the planner computes with, what they read.
//!
//! Every quantity is a newtype over a `uom` quantity in SI base units, so an acre can never be added to a gallon.
//! `uom`'s own acre and gallon are rounded to seven digits, so the exact factors stand here, in [`factor`].
//!
//! The rooms: [`number`] reads a number, [`mod@unit`] holds the tables of unit names, [`kind`] the plain quantities, [`mod@bearing`] directions,
//! [`rate`] the rates and contents that come in several kinds, [`price`] money per unit, [`typed`] a quantity together
//! with the text it was typed as, [`practical`] prints amounts the way a jug is marked, and [`apart`] two that differ so that it shows.

use crate::language::t;
pub mod apart;
pub mod bearing;
pub mod factor;
pub mod kind;
pub mod number;
pub mod practical;
pub mod price;
pub mod rate;
pub mod typed;
pub mod unit;

pub use bearing::Bearing;
pub use kind::{
    Acidity, Area, CarrierRate, Conductivity, Density, Duration, Flow, Hardness, IonContent, Length, Mass, MassPerArea,
    MassPerVolume, Pressure, Share, Speed, Temperature, TemperatureSpan, Volume, VolumePerArea,
};
pub use price::{Money, Price};
pub use rate::{ActiveBasis, Amount, AmountPerArea, Concentration, Rate};
pub use typed::AsTyped;

use serde::{Deserialize, Serialize};
use thiserror::Error;

/// The system of units in which a farm reads its numbers. What is typed may be in any system.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash, Serialize, Deserialize)]
pub enum Units {
    /// US gallons, fluid ounces, pounds, acres.
    #[default]
    UsCustomary,
    /// Imperial gallons and fluid ounces, pounds, acres.
    Imperial,
    /// Litres, kilograms, hectares.
    Metric,
}

/// A quantity that can be read from text and printed in a farm's units.
pub trait Quantity: Sized + Clone {
    /// A text that reads well, used in messages.
    const EXAMPLE: &'static str;

    /// What it is called in a message, with its article: "an area".
    fn called() -> &'static str;

    /// Reads what a person typed.
    ///
    /// # Errors
    /// [`QuantityError`] names the part that was not understood and shows an example.
    fn parse(text: &str) -> Result<Self, QuantityError>;

    /// Prints in the usual units of the system, rounded for reading.
    fn show(&self, units: Units) -> String;
}

/// Why a text is not a quantity of the kind asked for.
#[derive(Clone, Debug, PartialEq, Eq, Error)]
#[error("{}", t!("quantity-is-not-write-it-like", text = .text, name = .name, problem = .problem, example = .example))]
pub struct QuantityError {
    /// The whole text as typed.
    pub text: String,
    /// What was expected, with its article.
    pub name: &'static str,
    /// What is wrong and with which part.
    pub problem: String,
    /// A text that would do.
    pub example: &'static str,
}

impl QuantityError {
    pub(crate) fn of<Q: Quantity>(text: &str, problem: impl Into<String>) -> Self {
        Self { text: text.trim().to_owned(), name: Q::called(), problem: problem.into(), example: Q::EXAMPLE }
    }
}
