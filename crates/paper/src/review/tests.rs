#![allow(clippy::unwrap_used, clippy::indexing_slicing)]
