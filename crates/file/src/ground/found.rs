//! What a file of boundaries holds, before anything of it is taken.

use std::io;
use std::path::PathBuf;

use tankard_core::farm::{Id, Shape, SurroundingKind};
use tankard_core::progress::Cancelled;
use tankard_core::t;
use thiserror::Error;

use crate::doing::Doing;

/// The kinds of files that are read.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Kind {
    /// GeoJSON (RFC 7946).
    GeoJson,
    /// A shapefile (ESRI Shapefile Technical Description, 1998).
    Shapefile,
    /// KML 2.2 or 2.3 (OGC 12-007), or KMZ.
    Kml,
    /// Task data (ISO 11783-10).
    TaskData,
}

impl Kind {
    /// In words.
    pub fn name(self) -> &'static str {
        match self {
            Self::GeoJson => "GeoJSON",
            Self::Shapefile => t!("file-shapefile"),
            Self::Kml => "KML",
            Self::TaskData => t!("file-task-data-iso-11783-10"),
        }
    }
}

/// What a file of boundaries holds.
#[derive(Clone, Debug, PartialEq)]
pub struct Found {
    /// What kind of file it is.
    pub kind: Kind,
    /// What can be taken, in the order of the file.
    pub pieces: Vec<Piece>,
    /// What cannot be taken, in the order of the file.
    pub refused: Vec<Refused>,
    /// What a person should know of the file as a whole, before anything is taken.
    pub notes: Vec<String>,
}

/// Something that lies on the ground: a field, or something among the fields.
#[derive(Clone, Debug, PartialEq)]
pub struct Piece {
    /// What the file calls it; "Feature 3" where it has no name.
    pub name: String,
    /// Where it stands in the file: "feature 3", "record 7".
    pub place: String,
    /// Points, lines or polygons, mended.
    pub shape: Shape,
    /// What it is by the file, or by its shape.
    pub is: Is,
    /// What else the file says of it: names and values, in the order of the file.
    pub facts: Vec<(String, String)>,
    /// How its rings were mended, and what is odd of it, in words.
    pub mended: Vec<String>,
}

/// What a piece is.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Is {
    /// Polygons: a field.
    Field,
    /// Something that spray must not reach, by the file; or points or lines, of which it is not said what they are.
    Surrounding(SurroundingKind),
    /// A way into a field.
    Gateway,
}

/// Something in the file that cannot be taken.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Refused {
    /// What the file calls it.
    pub name: String,
    /// Where it stands in the file.
    pub place: String,
    /// Why, and where on the ground.
    pub why: String,
}

/// What is made of a piece.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Becomes {
    /// A field that the farm does not have yet.
    NewField,
    /// The boundary of a field of the farm, in place of the one it has; several pieces make one boundary together.
    Boundary(Id),
    /// Something among the fields.
    Surrounding(SurroundingKind),
    /// A way into a field of the farm.
    Gateway(Id),
    /// It is left out.
    Nothing,
}

/// Why a file of boundaries cannot be read.
#[derive(Debug, Error)]
pub enum GroundError {
    /// The disk said no.
    #[error("{}", Doing::Reading.failed(.source, .path))]
    Io {
        /// What the system said.
        source: io::Error,
        /// Where.
        path: PathBuf,
    },
    /// It is larger than what is read.
    #[error("{}", t!("file-is-larger-than-mb", what = .what, mb = super::LARGEST >> 20))]
    TooLarge {
        /// What is.
        what: String,
    },
    /// It has more of something than is read.
    #[error("{}", t!("file-the-file-has-more-than-cut", most = .most, of = .of))]
    TooMany {
        /// How many are read.
        most: usize,
        /// Of what.
        of: &'static str,
    },
    /// It is none of the kinds that are read.
    #[error("{}", t!("file-the-file-is-no-geojson-shapefile", it = .0))]
    Unknown(String),
    /// It breaks the rules of its kind.
    #[error("{}", t!("file-the-kind-cannot-be-read", kind = .kind.name(), why = .why))]
    Broken {
        /// What it seemed to be.
        kind: Kind,
        /// What is wrong, and where.
        why: String,
    },
    /// It is measured on something else than WGS 84.
    #[error("{}", t!("file-save-it-anew-on-wgs-84", it = .0))]
    Elsewhere(String),
    /// Nobody waited for it any more.
    #[error(transparent)]
    Cancelled(#[from] Cancelled),
}
