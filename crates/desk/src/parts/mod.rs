//! Small parts that several views share.

pub mod boxes;
pub mod findings;
pub mod gauge;
pub mod lists;
pub mod mark;
pub mod workings;
