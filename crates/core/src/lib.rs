//! The planning core of Tankard.
//!
//! Pure functions over one plain document: no I/O, no clock, no GUI, no global state. A [`farm::Farm`] and the id of a
//! pass go into [`plan::plan`]; values, workings and findings come out.

pub mod begin;
pub mod day;
pub mod farm;
pub mod finding;
pub mod fold;
pub mod ground;
pub mod label;
pub mod language;
pub mod loads;
pub mod mix;
pub mod plan;
pub mod plausible;
pub mod progress;
pub mod quantity;
pub mod rig;
pub mod room;
pub mod season;
pub mod stock;
mod table;
pub mod typed;
mod typed_at;
pub mod water;
pub mod weather;
pub mod words;
pub mod working;
