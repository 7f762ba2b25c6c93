//! A day of spraying: the passes of each rig in the order that costs least.

pub mod order;
