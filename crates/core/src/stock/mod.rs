//! The shed against the passes: what is on hand of a product, what the passes take of it, what to buy, and the water for a
//! day.

pub mod needs;
pub mod on_hand;
pub mod shopping;
mod short;

pub use needs::{Need, Needs, Nurse, Take, Tanks, WaterNeed};
pub use on_hand::{Held, OnHand};
pub use shopping::{Purchase, buy};
pub(crate) use short::judge;
