//! Loads: splitting the spray volume, measuring the products out, filling the tank in order, drawing the gauge, and what
//! stands on the card.

pub(crate) mod build;
pub mod card;
pub(crate) mod day_limits;
pub mod fill;
pub mod gauge;
pub mod measure;
pub mod rest;
pub mod split;

use crate::farm::Id;
use crate::quantity::{Area, Volume};

pub use build::working_of;
pub use fill::FillStep;
pub use measure::Measured;

/// One filling of the tank.
#[derive(Clone, Debug, PartialEq)]
pub struct Load {
    /// From 1.
    pub number: u32,
    /// Finished spray.
    pub volume: Volume,
    /// Ground it covers.
    pub area: Area,
    /// The ground by field, in the order sprayed.
    pub fields: Vec<(Id, Area)>,
    /// Water in it: the spray less the liquid products. The room that dry products take up is not counted; the tank is
    /// filled to its mark by the sight gauge.
    pub water: Volume,
    /// The products, in mixing order.
    pub items: Vec<LoadItem>,
    /// What to do, in order.
    pub steps: Vec<FillStep>,
}

/// A product in a load.
#[derive(Clone, Debug, PartialEq)]
pub struct LoadItem {
    /// The product.
    pub product: Id,
    /// Its number in the mixing order.
    pub number: u32,
    /// How much is measured out, and how far that is from the exact amount.
    pub measured: Measured,
}
