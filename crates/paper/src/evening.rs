//! The sheet of a day: one page where it fits, a second where it does not, and the load cards of the day behind it.

use serde::Serialize;
use tankard_core::day::sheet::SheetContent;
use tankard_core::progress::{Tell, untold};
use typst::diag::SourceDiagnostic;
use typst_layout::PagedDocument;

use crate::world::{Template, Told};
use crate::{PaperError, Sheet, card_data, compile_as, data, written};

/// Prints the sheet of a day and the load cards of the day as one PDF, each card on a page of its own; without cards the sheet
/// alone. The same sheet and cards give the same bytes.
///
/// # Errors
/// [`PaperError::TooLong`] for a card whose steps alone no page is large enough for, and the others where the layout itself fails.
pub fn pdf(sheet: &SheetContent, cards: &[Sheet]) -> Result<Vec<u8>, PaperError> {
    pdf_told(sheet, cards, &untold)
}

/// The same, told how many cards are laid out.
///
/// # Errors
/// As [`pdf`], and [`PaperError::Cancelled`].
pub fn pdf_told(sheet: &SheetContent, cards: &[Sheet], tell: &Tell<'_>) -> Result<Vec<u8>, PaperError> {
    let (document, _) = compile(sheet, cards, tell)?;
    written(&document, "tankard evening sheet")
}

fn compile(
    sheet: &SheetContent,
    cards: &[Sheet],
    tell: &Tell<'_>,
) -> Result<(PagedDocument, Vec<SourceDiagnostic>), PaperError> {
    #[derive(Serialize)]
    #[serde(rename_all = "kebab-case")]
    struct Day<'a> {
        sheet: &'a SheetContent,
        with_cards: bool,
    }
    let day = data("evening.json", &Day { sheet, with_cards: !cards.is_empty() })?;
    compile_as(Template::Evening, vec![day, card_data(cards)?], Told { tell, of: cards.len() })
}

#[cfg(test)]
mod tests;
