//! Load cards on paper: a Typst template turns issued cards into one PDF, or one card into a picture for the screen.
//!
//! What stands on a card is decided elsewhere and arrives as text in [`CardContent`]; here it is only laid out, by
//! `assets/typst/load-card.typ`. Nothing is read from disk, network or clock, so the same cards give the same bytes.
//!
//! - [`pdf`] makes the document, one page a [`Sheet`], and a second for one that is too full.
//! - [`picture`] draws one sheet for the preview.
//! - [`jar::pdf`] makes the sheet of a jar test, laid out by `assets/typst/jar-test.typ`.
//! - [`book::pdf`] makes the record book, laid out by `assets/typst/record-book.typ`.
//! - [`worker_protection::pdf`] makes the sheets on applications to be displayed for workers, laid out by
//!   `assets/typst/worker-protection.typ`.
//! - [`evening::pdf`] makes the sheet of a day with its cards behind it, laid out by `assets/typst/evening-sheet.typ`.
//! - [`review::pdf`] makes the season review, laid out by `assets/typst/season-review.typ`.
//!
//! The first call reads the fonts and the template and takes longer than the next ones. Both calls block; a program
//! with a window makes them on another thread.

pub mod book;
pub mod evening;
pub mod jar;
pub mod review;
mod words;
pub mod worker_protection;
mod world;

use std::collections::BTreeMap;

use serde::Serialize;
use tankard_core::farm::card::{CardContent, Gauge, Layer, Mark};
use tankard_core::progress::{Cancelled, Tell, untold};
use tankard_core::t;
use typst::diag::SourceDiagnostic;
use typst::foundations::Smart;
use typst::utils::Scalar;
use typst_layout::PagedDocument;
use typst_pdf::PdfOptions;
use typst_render::RenderOptions;

use world::{CARDS_DATA, Data, Desk, Template, Told};

/// A card as it goes to the printer.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Sheet<'a> {
    /// The card's number, such as "2031-0037", or [`DRAFT`] for a preview that must not reach the tank.
    pub number: &'a str,
    /// When it was issued, as printed; none for a draft.
    pub issued: Option<String>,
    /// What a reprint says of itself, such as "reprinted 12 June 2031, 05:02"; none for the first print.
    pub reprint: Option<String>,
    /// What stands on it.
    pub content: &'a CardContent,
}

/// The [`Sheet::number`] of a preview. Such a page says in a frame that it is not for use at the tank.
pub const DRAFT: &str = "draft";

/// The [`Sheet::number`] of a card that is printed without being issued, by the command line.
pub const NOT_ISSUED: &str = "not issued";

/// A page as pixels, for the screen.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Picture {
    /// Pixels across.
    pub width: u32,
    /// Pixels down.
    pub height: u32,
    /// Red, green, blue and alpha of each pixel, row by row from the top left. The page is white, so alpha is always 255.
    pub rgba: Vec<u8>,
}

/// Why a card could not be brought to paper.
#[derive(Clone, Debug, PartialEq, Eq, thiserror::Error)]
pub enum PaperError {
    /// There was no card to print.
    #[error("{}", t!("paper-there-is-no-load-card-to"))]
    NoSheets,
    /// Even in the smallest print what is needed at the tank does not fit on one page.
    #[error("{}", t!("paper-load-card-has-more-steps-and", number = .number))]
    TooLong {
        /// Number of the card.
        number: String,
    },
    /// Even in the smallest print the sheet of a jar test does not fit on its page.
    #[error("{}", t!("paper-the-jar-test-holds-more-text"))]
    JarTooLong,
    /// There was no record to print.
    #[error("{}", t!("paper-there-is-no-record-to-print"))]
    NoRecords,
    /// A record was asked for that the farm does not have.
    #[error("{}", t!("paper-the-farm-has-no-record", id = .id))]
    UnknownRecord {
        /// What was asked for.
        id: String,
    },
    /// The picture would be too small or too large to draw.
    #[error("{}", t!("paper-a-preview-takes", least = PIXELS_PER_POINT.0, most = PIXELS_PER_POINT.1, asked = .asked))]
    PictureScale {
        /// What was asked for, as text.
        asked: String,
    },
    /// The cards could not be handed to the template.
    #[error("{}", t!("paper-the-page-could-not-be-handed", it = .0))]
    Data(String),
    /// The template is at fault: a bug, or a font that is missing.
    #[error("{}", t!("paper-the-page-could-not-be-laid", it = .0))]
    Layout(String),
    /// Nobody waited for it any more.
    #[error(transparent)]
    Cancelled(#[from] Cancelled),
    /// The pages are fine, but writing them as PDF failed.
    #[error("{}", t!("paper-the-pages-could-not-be-written", it = .0))]
    Pdf(String),
}

/// The least and the most pixels a point that [`picture`] draws: from a thumbnail to four times a sharp screen.
const PIXELS_PER_POINT: (f32, f32) = (0.1, 8.0);

/// Prints the sheets as one PDF, in order, each on a page of its own paper size. No print is below 7 pt; a card that is too full for that
/// goes on to a second page, and the first says so.
///
/// The same sheets give the same bytes: the file carries no time and a fixed identifier.
///
/// # Errors
///
/// [`PaperError::NoSheets`] without a sheet, [`PaperError::TooLong`] for a card whose steps alone no page is large enough for, and
/// the others where the layout itself fails.
///
/// # Examples
///
/// ```no_run
/// # fn issued() -> Option<tankard_core::farm::card::CardContent> { None }
/// use tankard_paper::{Sheet, pdf};
///
/// let content = issued().ok_or("no card was issued")?;
/// let sheet = Sheet { number: "2031-0037", issued: Some("11 June 2031, 20:14".into()), reprint: None, content: &content };
/// std::fs::write("cards.pdf", pdf(&[sheet])?)?;
/// # Ok::<(), Box<dyn std::error::Error>>(())
/// ```
pub fn pdf(sheets: &[Sheet]) -> Result<Vec<u8>, PaperError> {
    pdf_told(sheets, &untold)
}

/// The same, told how many cards are laid out.
///
/// # Errors
/// As [`pdf`], and [`PaperError::Cancelled`].
pub fn pdf_told(sheets: &[Sheet], tell: &Tell<'_>) -> Result<Vec<u8>, PaperError> {
    written(&lay_out(sheets, tell)?, "tankard load cards")
}

/// The pages as a PDF of a fixed identifier and without a time.
fn written(document: &PagedDocument, ident: &str) -> Result<Vec<u8>, PaperError> {
    let options = PdfOptions {
        ident: Smart::Custom(ident.to_owned()),
        creator: Smart::Custom(Some("Tankard".to_owned())),
        timestamp: None,
        ..PdfOptions::default()
    };
    typst_pdf::pdf(document, &options).map_err(|errors| PaperError::Pdf(in_words(&errors)))
}

/// Draws one sheet for the screen.
///
/// # Units
///
/// `pixels_per_point` is pixels for a typographic point of 1/72 inch: 1.0 makes a Letter page 612 by 792 pixels.
///
/// # Valid range
///
/// 0.1 to 8 pixels a point.
///
/// # Errors
///
/// [`PaperError::PictureScale`] outside that range; otherwise as [`pdf`].
pub fn picture(sheet: &Sheet, pixels_per_point: f32) -> Result<Picture, PaperError> {
    if !(PIXELS_PER_POINT.0..=PIXELS_PER_POINT.1).contains(&pixels_per_point) {
        return Err(PaperError::PictureScale { asked: pixels_per_point.to_string() });
    }
    let document = lay_out(std::slice::from_ref(sheet), &untold)?;
    let page = document.pages().first().ok_or(PaperError::NoSheets)?;
    let options = RenderOptions { pixel_per_pt: Scalar::new(f64::from(pixels_per_point)), render_bleed: false };
    let pixels = typst_render::render(page, &options);
    // The page is opaque, so colours multiplied by alpha are the colours themselves.
    Ok(Picture { width: pixels.width(), height: pixels.height(), rgba: pixels.data().to_vec() })
}

/// Lays out the sheets, each on a page of its own; one that is too full goes on to a second.
fn lay_out(sheets: &[Sheet], tell: &Tell<'_>) -> Result<PagedDocument, PaperError> {
    if sheets.is_empty() {
        return Err(PaperError::NoSheets);
    }
    Ok(compile(sheets, tell)?.0)
}

/// Runs the template over the sheets: the pages, and what the layout warns of.
fn compile(sheets: &[Sheet], tell: &Tell<'_>) -> Result<(PagedDocument, Vec<SourceDiagnostic>), PaperError> {
    compile_as(Template::Cards, vec![card_data(sheets)?], Told { tell, of: sheets.len() })
}

/// What the template of the cards reads.
fn card_data(sheets: &[Sheet]) -> Result<Data, PaperError> {
    data(CARDS_DATA, &sheets.iter().map(Page::from).collect::<Vec<_>>())
}

/// A file for a template to read.
fn data(name: &'static str, what: &impl Serialize) -> Result<Data, PaperError> {
    serde_json::to_string(what).map(|text| (name, text)).map_err(|error| PaperError::Data(error.to_string()))
}

/// Of more pieces than that nothing is remembered for the next layout.
const MANY: usize = 20;

/// Runs a template over what it lays out.
fn compile_as(
    template: Template,
    mut sheets: Vec<Data>,
    told: Told<'_>,
) -> Result<(PagedDocument, Vec<SourceDiagnostic>), PaperError> {
    sheets.push(data(words::WORDS_DATA, &words::spoken(template))?);
    let compiled = typst::compile::<PagedDocument>(&Desk::new(template, sheets, told));
    // Without this the memory of past layouts grows with every different card; the layout of many at once is hardly asked for again, and
    // takes megabytes for each.
    comemo::evict(if told.of > MANY { 0 } else { 10 });
    told.all_behind()?;
    let document = compiled.output.map_err(|errors| fault(&in_words(&errors)))?;
    Ok((document, compiled.warnings.into_iter().collect()))
}

/// What a message of the layout means.
fn fault(words: &str) -> PaperError {
    // The template says it so where the steps of a card alone are more than a page.
    match words.split_once("no page is large enough for card ") {
        Some((_, number)) => {
            PaperError::TooLong { number: number.split(';').next().unwrap_or(number).trim().to_owned() }
        }
        None => PaperError::Layout(words.to_owned()),
    }
}

/// What the template reads of a sheet.
#[derive(Serialize)]
struct Page<'a> {
    #[serde(flatten)]
    sheet: &'a Sheet<'a>,
    /// The gauge of the content with every height within the tank.
    gauge: Gauge,
    /// What the template itself says, in the languages of the card.
    words: BTreeMap<&'static str, String>,
}

impl<'a> From<&'a Sheet<'a>> for Page<'a> {
    fn from(sheet: &'a Sheet<'a>) -> Self {
        let gauge = &sheet.content.gauge;
        let layer = |layer: &Layer| {
            let from = within_tank(layer.from);
            Layer { from, to: within_tank(layer.to).max(from), ..layer.clone() }
        };
        let mark = |mark: &Mark| Mark { at: within_tank(mark.at), ..mark.clone() };
        let gauge =
            Gauge { layers: gauge.layers.iter().map(layer).collect(), marks: gauge.marks.iter().map(mark).collect() };
        Self { sheet, gauge, words: words::of(sheet) }
    }
}

/// A height as a share of the tank; one that is no number lies at the bottom.
fn within_tank(share: f64) -> f64 {
    if share.is_nan() { 0.0 } else { share.clamp(0.0, 1.0) }
}

/// Diagnostics as one line.
fn in_words(diagnostics: &[SourceDiagnostic]) -> String {
    diagnostics.iter().map(|one| one.message.as_str()).collect::<Vec<_>>().join("; ")
}

#[cfg(test)]
mod tests;
