//! Files of boundaries: GeoJSON, shapefiles, KML and task data of ISO 11783-10, read, and written for terminals and other programs.
//!
//! [`open`] or [`read`] gives what a file holds; [`suggest`] says which pieces are fields that the farm has; [`take`] makes a farm
//! with the chosen pieces in it. [`write_geojson`] and [`write_taskdata`] go the other way.
//!
//! Files come from anywhere, so what they say of their own lengths is not believed, and what is read is bounded (`limits.rs`).

mod archive;
mod crs;
mod dbf;
mod found;
mod gather;
mod geojson;
mod kml;
mod limits;
mod mercator;
mod shapefile;
mod suggest;
mod take;
mod taskdata;
mod write_geojson;
mod write_taskdata;
mod xml;

use std::fs::{self, File};
use std::io::Read;
use std::path::Path;

use tankard_core::farm::Position;
use tankard_core::progress::{Tell, untold};
use tankard_core::t;

pub use found::{Becomes, Found, GroundError, Is, Kind, Piece, Refused};
use gather::Gathered;
pub use limits::LARGEST;
pub use suggest::suggest;
pub use take::{Taken, take};
pub use write_geojson::write_geojson;
pub use write_taskdata::{TaskData, write_taskdata};

/// A file that belongs to another: the `.dbf`, `.prj` and `.cpg` of a shapefile, or a further file of task data.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Companion {
    /// Its name with its ending: "fields.dbf".
    pub name: String,
    /// What it holds.
    pub bytes: Vec<u8>,
}

/// Why something cannot be read.
enum Why {
    /// One piece, or the part of a file that is looked at.
    Piece(String),
    /// The file as a whole.
    File(GroundError),
}

impl Why {
    /// As an error of the whole file.
    fn of(self, kind: Kind) -> GroundError {
        match self {
            Self::Piece(why) => GroundError::Broken { kind, why },
            Self::File(error) => error,
        }
    }
}

impl From<GroundError> for Why {
    fn from(error: GroundError) -> Self {
        Self::File(error)
    }
}

/// Reads a file from the disk, with the files that belong to it. `near` is where the farm lies; by it latitude and longitude
/// that stand in each other's place are known.
///
/// # Errors
/// As [`read`], where the disk says no, and where it is ended: it is told how many pieces are mended.
pub fn open(path: &Path, near: Option<Position>, tell: &Tell<'_>) -> Result<Found, GroundError> {
    let bytes = bytes(path)?;
    let name = name_of(path);
    let beside = match ending(&name).as_str() {
        "shp" => beside(path, |other| {
            stem(other).eq_ignore_ascii_case(stem(&name)) && matches!(ending(other).as_str(), "dbf" | "prj" | "cpg")
        })?,
        // The names that the standard gives to further files: three letters and five digits.
        "xml" => beside(path, |other| {
            let own = stem(other);
            ending(other) == "xml" && own.len() == 8 && own.ends_with(|letter: char| letter.is_ascii_digit())
        })?,
        _ => Vec::new(),
    };
    read_told(&name, &bytes, &beside, near, tell)
}

fn bytes(path: &Path) -> Result<Vec<u8>, GroundError> {
    let problem = |source| GroundError::Io { source, path: path.to_owned() };
    let mut bytes = Vec::new();
    File::open(path).map_err(problem)?.take(LARGEST + 1).read_to_end(&mut bytes).map_err(problem)?;
    if bytes.len() as u64 > LARGEST {
        return Err(GroundError::TooLarge { what: format!("\"{}\"", name_of(path)) });
    }
    Ok(bytes)
}

/// The files beside another that are wanted.
fn beside(path: &Path, is_wanted: impl Fn(&str) -> bool) -> Result<Vec<Companion>, GroundError> {
    let folder = path.parent().filter(|folder| !folder.as_os_str().is_empty()).unwrap_or(Path::new("."));
    let Ok(entries) = fs::read_dir(folder) else { return Ok(Vec::new()) };
    let mut files: Vec<Companion> = Vec::new();
    let mut size = 0;
    for entry in entries.flatten() {
        let name = name_of(&entry.path());
        // Whatever else may bear such a name could keep the reader waiting for ever.
        if is_wanted(&name) && entry.path() != path && entry.path().is_file() {
            let bytes = bytes(&entry.path())?;
            size += bytes.len() as u64;
            if size > LARGEST {
                return Err(GroundError::TooLarge { what: t!("file-what-belongs-to-the-file").to_owned() });
            }
            files.push(Companion { name, bytes });
        }
    }
    Ok(files)
}

fn name_of(path: &Path) -> String {
    path.file_name().map(|name| name.to_string_lossy().into_owned()).unwrap_or_default()
}

fn stem(name: &str) -> &str {
    name.rsplit_once('.').map_or(name, |(stem, _)| stem)
}

fn ending(name: &str) -> String {
    name.rsplit_once('.').map(|(_, ending)| ending.to_lowercase()).unwrap_or_default()
}

/// Reads a file of boundaries of any kind that is known, packed or not. It is known by what it holds, not by its name.
///
/// # Errors
/// It is too large, of no known kind, broken, or not measured on WGS 84. What is wrong with a piece alone stands in
/// [`Found::refused`].
pub fn read(name: &str, bytes: &[u8], companions: &[Companion], near: Option<Position>) -> Result<Found, GroundError> {
    read_told(name, bytes, companions, near, &untold)
}

fn read_told(
    name: &str,
    bytes: &[u8],
    companions: &[Companion],
    near: Option<Position>,
    tell: &Tell<'_>,
) -> Result<Found, GroundError> {
    if bytes.len() as u64 > LARGEST {
        return Err(GroundError::TooLarge { what: format!("\"{name}\"") });
    }
    if bytes.starts_with(b"PK") {
        return packed(bytes, near, tell);
    }
    if let Some(gathered) = gathered(name, bytes, companions)? {
        return gathered.found(near, tell);
    }
    Err(GroundError::Unknown(match ending(name).as_str() {
        "dbf" | "prj" | "shx" | "cpg" => t!("file-open-the-shp-that-it-belongs").to_owned(),
        _ => t!("file-save-the-boundaries-as-one-of").to_owned(),
    }))
}

/// What a file that is not packed comes to; nothing where its kind is not known.
fn gathered(name: &str, bytes: &[u8], beside: &[Companion]) -> Result<Option<Gathered>, GroundError> {
    if bytes.starts_with(&9994_i32.to_be_bytes()) || ending(name) == "shp" {
        return shapefile::read(name, bytes, beside).map(Some);
    }
    let start = bytes.iter().copied().find(|byte| !byte.is_ascii_whitespace() && !matches!(byte, 0xef | 0xbb | 0xbf));
    match start {
        Some(b'{' | b'[') => geojson::read(bytes).map(Some),
        Some(b'<' | 0xff | 0xfe) => {
            let text = xml::letters(bytes);
            match xml::root(&text).as_deref() {
                // Files without the outermost element of the standard are met with.
                Some("kml" | "Document" | "Folder" | "Placemark") => kml::read(&text).map(Some),
                Some("ISO11783_TaskData" | "XFC") => taskdata::read(&text, beside).map(Some),
                _ => Ok(None),
            }
        }
        _ => Ok(None),
    }
}

/// What several files packed in one come to: task data, or else every shapefile, KML and GeoJSON among them.
fn packed(bytes: &[u8], near: Option<Position>, tell: &Tell<'_>) -> Result<Found, GroundError> {
    let files = archive::unpack(bytes)?;
    let is_main = |file: &&Companion| name_in(&file.name).eq_ignore_ascii_case("TASKDATA.XML");
    if let Some(main) = files.iter().find(is_main) {
        return taskdata::read(&xml::letters(&main.bytes), &files)?.found(near, tell);
    }
    let mut found: Option<Found> = None;
    for file in files.iter().filter(|file| matches!(ending(&file.name).as_str(), "shp" | "kml" | "geojson" | "json")) {
        let Some(gathered) = gathered(&file.name, &file.bytes, &files)? else { continue };
        let one = gathered.found(near, tell)?;
        if let Some(all) = &mut found {
            all.pieces.extend(one.pieces);
            all.refused.extend(one.refused);
            all.notes.extend(one.notes);
        } else {
            found = Some(one);
        }
        if found.as_ref().is_some_and(|found| found.pieces.len() > limits::PIECES) {
            return Err(GroundError::TooMany { most: limits::PIECES, of: t!("file-pieces-of-ground") });
        }
    }
    found.ok_or_else(|| GroundError::Unknown(t!("file-it-is-a-packed-file-with").to_owned()))
}

/// The name of a packed file without its folders.
fn name_in(path: &str) -> &str {
    path.rsplit(['/', '\\']).next().unwrap_or(path)
}
