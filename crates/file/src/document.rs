//! The RON text of a farm.

use std::fs::File;
use std::io::{self, Read};
use std::path::Path;

use ron::error::SpannedError;
use ron::extensions::Extensions;
use ron::ser::PrettyConfig;
use serde::{Deserialize, Serialize};
use tankard_core::farm::{FORMAT, Farm};
use tankard_core::progress::{Cancelled, Tell, untold};
use tankard_core::t;
use thiserror::Error;

use crate::put::Content;
use crate::store::BY_HAND;
use crate::{beside, migrate, quick};

/// Why a text is not a farm.
#[derive(Clone, Debug, PartialEq, Eq, Error)]
pub enum ReadError {
    /// There is nothing in it.
    #[error("{}", t!("file-the-file-is-empty-take-a"))]
    Empty,
    /// It is not text.
    #[error("{}", t!("file-the-file-is-not-utf-8"))]
    NotText,
    /// A newer program wrote it.
    #[error("{}", t!("file-the-file-has-format-this-tankard", found = .found, format = FORMAT))]
    Newer {
        /// Its format.
        found: u32,
    },
    /// No program wrote such a format.
    #[error("{}", t!("file-the-file-has-format-which-never", found = .found))]
    NoSuchFormat {
        /// Its format.
        found: u32,
    },
    /// Nobody waited for it any more.
    #[error(transparent)]
    Cancelled(#[from] Cancelled),
    /// Something in it does not fit.
    #[error("{}", t!("file-line-column", line = .line, column = .column, what = .what))]
    Does {
        /// Line, from 1.
        line: usize,
        /// Column, from 1.
        column: usize,
        /// What does not fit, and what would.
        what: String,
    },
}

impl From<SpannedError> for ReadError {
    fn from(error: SpannedError) -> Self {
        // New facts come into a format without a new number.
        let what = match error.code {
            ron::Error::NoSuchStructField { .. } | ron::Error::NoSuchEnumVariant { .. } => {
                t!("file-a-newer-tankard-may-have-written", what = error.code)
            }
            code => code.to_string(),
        };
        Self::Does { line: error.span.start.line, column: error.span.start.col, what }
    }
}

/// The head of every format, read before the rest.
#[derive(Deserialize)]
#[serde(rename = "Farm")]
struct Head {
    format: u32,
}

pub(crate) fn options() -> ron::Options {
    ron::Options::default().with_default_extension(Extensions::IMPLICIT_SOME)
}

/// Reads a farm.
///
/// # Errors
/// [`ReadError`] says where and what to do. The text is not touched.
pub fn read(bytes: &[u8]) -> Result<Farm, ReadError> {
    read_told(bytes, &untold)
}

/// The same, told how many of the farm's entries are read.
pub(crate) fn read_told(bytes: &[u8], tell: &Tell<'_>) -> Result<Farm, ReadError> {
    let quick = quick::read(text_of(bytes)?, tell).filter(|farm| farm.format == FORMAT);
    tell(0, None)?;
    quick.map_or_else(|| plainly(bytes, tell), Ok)
}

/// The same by RON's own reader alone, which the quick one is held against.
///
/// # Errors
/// As [`read`].
pub fn read_plainly(bytes: &[u8]) -> Result<Farm, ReadError> {
    plainly(bytes, &untold)
}

fn plainly(bytes: &[u8], tell: &Tell<'_>) -> Result<Farm, ReadError> {
    let text = text_of(bytes)?;
    if text.trim().is_empty() {
        return Err(ReadError::Empty);
    }
    // Nearly every file is of this format, and to look for its head is to walk through all of it once more.
    let present = migrate::read(FORMAT, text, tell);
    tell(0, None)?;
    let format = match &present {
        Ok(farm) => farm.format,
        // A file so broken that its head cannot be read gives the better message when read as a whole.
        Err(_) => options().from_str::<Head>(text).map_or(FORMAT, |head| head.format),
    };
    if format == FORMAT { present } else { migrate::read(format, text, tell) }
}

/// The text of a file, without the mark some editors put before it.
fn text_of(bytes: &[u8]) -> Result<&str, ReadError> {
    let text = std::str::from_utf8(bytes).map_err(|_| ReadError::NotText)?;
    Ok(text.strip_prefix('\u{feff}').unwrap_or(text))
}

/// Writes a farm.
///
/// # Errors
/// Only where the serializer fails, which no farm makes it do.
pub fn write(farm: &Farm) -> Result<String, ron::Error> {
    if farm.records.len() >= 2 * beside::TOGETHER {
        return beside::write(farm);
    }
    let mut text = one_after_another(farm)?;
    text.push('\n');
    Ok(text)
}

/// The text of something, with lines broken however deep.
pub(crate) fn one_after_another(what: &impl Serialize) -> Result<String, ron::Error> {
    in_lines(what, usize::MAX)
}

/// The same with lines broken so deep: what RON's own writer makes of it.
pub(crate) fn in_lines(what: &impl Serialize, depth: usize) -> Result<String, ron::Error> {
    let plainly = || options().to_string_pretty(what, layout().depth_limit(depth));
    quick::write(what, depth).map_or_else(plainly, Ok)
}

/// How the text of a farm is laid out.
pub(crate) fn layout() -> PrettyConfig {
    PrettyConfig::new().struct_names(true).new_line("\n")
}

/// Whether a file still says just what a text says, its order too, so that saving may leave every byte of it, comments and all.
///
/// # Errors
/// Where it cannot be read.
pub(crate) fn says_the_same(path: &Path, text: &str) -> io::Result<bool> {
    let file = File::open(path)?;
    // To read a large one once more would take as long as all of saving.
    if file.metadata()?.len() > BY_HAND {
        return Content::Bytes(text.as_bytes()).is_same(Content::File(path));
    }
    let mut bytes = Vec::new();
    file.take(BY_HAND).read_to_end(&mut bytes)?;
    let again = || read(&bytes).ok().and_then(|before| write(&before).ok());
    Ok(bytes == text.as_bytes() || again().is_some_and(|before| before == text))
}
