//! Files of boundaries: GeoJSON, shapefiles, KML and task data of ISO 11783-10, read, and written for terminals and other programs.
//!
//! [`open`] or [`read`] gives what a file holds; [`suggest`] says which pieces are fields that the farm has; [`take`] makes a farm
//! with the chosen pieces in it.

mod found;
mod suggest;
mod take;

use std::fs::File;
use std::io::Read;
use std::path::Path;

use tankard_core::farm::Position;

pub use found::{Becomes, Found, GroundError, Is, Kind, Piece, Refused};
pub use suggest::suggest;
pub use take::{Taken, take};

/// No file is read that is larger, as it is or unpacked.
pub const LARGEST: u64 = 64 << 20;

/// A file that belongs to another: the `.dbf`, `.prj` and `.cpg` of a shapefile.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Companion {
    /// Its name with its ending: "fields.dbf".
    pub name: String,
    /// What it holds.
    pub bytes: Vec<u8>,
}

/// Reads a file from the disk, with the files that belong to it. `near` is where the farm lies; by it latitude and longitude
/// that stand in each other's place are known.
///
/// # Errors
/// As [`read`], and where the disk says no.
pub fn open(path: &Path, near: Option<Position>) -> Result<Found, GroundError> {
    let problem = |source| GroundError::Io { source, path: path.to_owned() };
    let mut bytes = Vec::new();
    File::open(path).map_err(problem)?.take(LARGEST + 1).read_to_end(&mut bytes).map_err(problem)?;
    let name = path.file_name().map(|name| name.to_string_lossy().into_owned()).unwrap_or_default();
    read(&name, &bytes, &[], near)
}

/// Reads a file of boundaries of any kind that is known.
///
/// # Errors
/// It is too large, of no known kind, broken, or not measured on WGS 84. What is wrong with a piece alone stands in
/// [`Found::refused`].
pub fn read(name: &str, bytes: &[u8], companions: &[Companion], near: Option<Position>) -> Result<Found, GroundError> {
    if bytes.len() as u64 > LARGEST {
        return Err(GroundError::TooLarge { what: format!("\"{name}\"") });
    }
    let _ = (companions, near);
    Err(GroundError::Unknown("nothing of it is known".to_owned()))
}
