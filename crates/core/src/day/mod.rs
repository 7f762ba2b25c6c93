//! A day of spraying as a whole.

pub mod sheet;
mod timeline;

pub use timeline::{Block, BlockKind, Row, Tick, Timeline};
