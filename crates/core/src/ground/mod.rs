//! The ground of a pass: boundaries and their rings, the two areas of a field, what lies beside it, and the strips that labels keep
//! to that.

pub mod outline;
pub mod projection;
