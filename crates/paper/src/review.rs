//! The season review on paper: what the records of a season, or of several, come to, with charts that need no colour.
//!
//! [`content()`] puts the pages of the review into headings, sentences, tables and charts; `assets/typst/season-review.typ` lays
//! them out. Which sentences stand where, and how figures are written, is the core's, so that screen and paper say the same.

mod content;
mod ground;
mod money;
mod parts;
mod products;
mod ratings;

use jiff::civil::Date;
use tankard_core::farm::Farm;
use tankard_core::progress::{Tell, untold};
use tankard_core::season::review::Choice;
use typst::diag::SourceDiagnostic;
use typst_layout::PagedDocument;

use crate::world::{Template, Told};
use crate::{PaperError, compile_as, data, written};

pub use content::content;
use content::content_told;
pub use parts::{Bar, Cell, Column, Content, Dot, Line, Part, Post, Row, Section, Tick};

/// Prints the review of what a choice picks as one PDF, with the day of printing on every page. The same records, choice and day
/// give the same bytes.
///
/// All records picked are held against their labels, so that over many seasons it takes some seconds; a window asks for it on
/// another thread.
///
/// # Errors
/// Those of a layout that fails.
pub fn pdf(farm: &Farm, choice: &Choice, printed: Date) -> Result<Vec<u8>, PaperError> {
    pdf_told(farm, choice, printed, &untold)
}

/// The same, told how many records are held against their labels, which takes most of the time.
///
/// # Errors
/// As [`pdf`], and [`PaperError::Cancelled`].
pub fn pdf_told(farm: &Farm, choice: &Choice, printed: Date, tell: &Tell<'_>) -> Result<Vec<u8>, PaperError> {
    let content = content_told(farm, choice, printed, tell)?;
    tell(0, None)?;
    written(&compile(&content)?.0, "tankard season review")
}

fn compile(content: &Content) -> Result<(PagedDocument, Vec<SourceDiagnostic>), PaperError> {
    compile_as(Template::Review, vec![data("review.json", content)?], Told::NOBODY)
}

#[cfg(test)]
mod tests;
