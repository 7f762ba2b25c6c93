//! The tank mix: what each line of it comes to over ground, and in which order the products go in.

pub mod actives;
pub mod guidance;
pub mod line;
pub mod order;
pub mod start;
