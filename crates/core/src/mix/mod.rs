//! The tank mix: what each line of it comes to over ground, and in which order the products go in.

pub mod actives;
pub(crate) mod carrier;
pub mod charge;
pub mod choice;
pub mod guidance;
mod interval;
pub mod jar;
pub mod line;
pub mod order;
pub mod pairs;
pub mod start;
