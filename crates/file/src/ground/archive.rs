//! Files packed in one. Nothing is written to the disk; what is unpacked is bounded.

use std::io::{Cursor, Read};

use tankard_core::t;
use zip::ZipArchive;

use super::limits::LARGEST;
use super::{Companion, GroundError};

/// So many files may be packed in one.
const FILES: usize = 2_000;
/// Endings of what is unpacked.
const WANTED: [&str; 8] = ["shp", "dbf", "prj", "cpg", "kml", "xml", "geojson", "json"];

/// Unpacks what may be boundaries.
pub(super) fn unpack(bytes: &[u8]) -> Result<Vec<Companion>, GroundError> {
    let broken = |what: String| GroundError::Unknown(t!("file-it-seems-to-be-a-packed", what = what));
    let mut archive = ZipArchive::new(Cursor::new(bytes)).map_err(|error| broken(error.to_string()))?;
    if archive.len() > FILES {
        return Err(GroundError::TooMany { most: FILES, of: t!("file-files-packed-in-it") });
    }
    let (mut files, mut left) = (Vec::new(), LARGEST);
    for number in 0..archive.len() {
        let file = archive.by_index(number).map_err(|error| broken(error.to_string()))?;
        let name = file.name().map_err(|error| broken(error.to_string()))?.into_owned();
        let own = name.rsplit(['/', '\\']).next().unwrap_or_default();
        let ending = own.rsplit('.').next().unwrap_or_default().to_lowercase();
        // Some systems pack a shadow of each file, with a dot before its name.
        if file.is_dir() || own.starts_with('.') || !WANTED.contains(&ending.as_str()) {
            continue;
        }
        let mut unpacked = Vec::new();
        file.take(left + 1).read_to_end(&mut unpacked).map_err(|error| broken(format!("{name}: {error}")))?;
        left = left
            .checked_sub(unpacked.len() as u64)
            .ok_or_else(|| GroundError::TooLarge { what: t!("file-what-is-packed-in-the-file").to_owned() })?;
        files.push(Companion { name, bytes: unpacked });
    }
    Ok(files)
}
