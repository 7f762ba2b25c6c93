//! Small parts that several views share.

pub mod boxes;
pub mod chart;
pub mod chart_rows;
pub mod dates;
pub mod day_picture;
pub mod differences;
pub mod figures;
pub mod findings;
pub mod gauge;
pub mod hatch;
pub mod left_out;
pub mod lists;
pub mod mark;
pub mod offers;
pub mod pick;
pub mod setting_plot;
pub mod spoken;
pub mod strip;
pub mod workings;
