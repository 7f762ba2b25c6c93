//! The shed against the passes: what is on hand of a product by its account, what the passes take of it, what to buy, and the water for a
//! day.

pub mod account;
mod bill;
mod counting;
mod doubts;
mod happened;
pub(crate) mod kept;
mod ledger;
mod left_over;
pub mod needs;
pub mod on_hand;
mod shelf;
pub mod shopping;
mod short;
mod walk;

pub use account::{Account, Accounts, Doubt, lots, only_lot};
pub use bill::{latest_price, spent};
pub use counting::{Count, Difference, count, enter, reckoned, strike};
pub use doubts::findings;
pub use ledger::{Entry, Kind, ledger};
pub use needs::{Need, Needs, Nurse, Take, Tanks, WaterNeed};
pub use on_hand::{Held, OnHand};
pub use shopping::{Purchase, buy};
pub(crate) use short::judge;
