//! Loads: which fields share them, how large they are, measuring the products out, filling the tank in order, drawing the gauge,
//! and what stands on the card.

pub(crate) mod apart;
pub(crate) mod build;
pub mod card;
pub mod carry;
pub(crate) mod day_limits;
mod decided;
pub(crate) mod drawn;
pub mod fill;
pub mod gauge;
pub mod measure;
pub mod rest;
pub(crate) mod short;
pub mod sizing;
pub mod split;

use crate::farm::Id;
use crate::quantity::{Area, Volume};

pub use build::working_of;
pub use fill::FillStep;
pub use measure::Measured;
pub use sizing::Sizing;

/// One filling of the tank.
#[derive(Clone, Debug, PartialEq)]
pub struct Load {
    /// From 1.
    pub number: u32,
    /// Finished spray in the tank when it is full to its mark.
    pub volume: Volume,
    /// What of it is in the tank before it is filled.
    pub carried: Volume,
    /// What of it is left over after its ground.
    pub left: Volume,
    /// Ground it covers.
    pub area: Area,
    /// The ground by field, in the order sprayed.
    pub fields: Vec<(Id, Area)>,
    /// Water to run in: the new spray less the liquid products. The room that dry products take up is not counted; the tank is
    /// filled to its mark by the sight gauge.
    pub water: Volume,
    /// The products, in mixing order, for the new spray; none where nothing is to be filled.
    pub items: Vec<LoadItem>,
    /// What to do, in order.
    pub steps: Vec<FillStep>,
}

impl Load {
    /// The spray that is mixed for it: what the tank holds less what is in it already.
    pub fn new_spray(&self) -> Volume {
        self.volume - self.carried
    }
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
