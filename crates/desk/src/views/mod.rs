//! The four views, one folder each. A view asks the document each frame and keeps nothing of it.

pub mod fields;
pub mod season_log;
pub mod shed;
pub mod tank_loads;
