//! Tankard's files.
//!
//! A farm is one RON file. [`read`] makes a document of its text, [`write()`] a text of the document, [`store`] puts it on
//! disk so that neither a crash nor a full disk loses the farm ([`put`] has the steps of that), [`backups`] keeps what was saved
//! before, [`side`] what is not saved yet, [`lock`] tells two desks of one another, [`records_csv`] lists what was sprayed and reads it back, [`records_json`] writes it for machines, [`records_import`] reads spreadsheets of
//! past seasons, [`forecast_csv`] reads the weather that is expected, [`cell`]
//! keeps texts from being reckoned by spreadsheets, and [`names`] keeps what a farm says of files within bounds.

mod alike;
pub mod backups;
mod beside;
pub mod cell;
mod document;
mod doing;
pub mod forecast_csv;
pub mod ground;
pub mod lock;
mod migrate;
pub mod names;
pub mod put;
mod quick;
pub mod records_csv;
pub mod records_import;
pub mod records_json;
pub mod side;
mod stamp;
pub mod store;
mod table;
mod told;

pub use document::{ReadError, read, read_plainly, write};
pub use doing::Doing;
