//! The sheet of a day: one page where it fits, a second where it does not, and the load cards of the day behind it.

use std::num::NonZeroUsize;

use serde::Serialize;
use tankard_core::day::sheet::SheetContent;
use typst::diag::SourceDiagnostic;
use typst::foundations::Label;
use typst::introspection::Introspector;
use typst::utils::PicoStr;
use typst_layout::PagedDocument;

use crate::world::Template;
use crate::{PaperError, Sheet, card_data, compile_as, data, lay_out, written};

/// Prints the sheet of a day and the load cards of the day as one PDF, each card on exactly one page; without cards the sheet
/// alone. The same sheet and cards give the same bytes.
///
/// # Errors
/// [`PaperError::TooLong`] for a card that no print is small enough for, and the others where the layout itself fails.
pub fn pdf(sheet: &SheetContent, cards: &[Sheet]) -> Result<Vec<u8>, PaperError> {
    let (document, _) = compile(sheet, cards)?;
    if !cards.is_empty() && document.pages().len() != pages_of_sheet(&document) + cards.len() {
        // Some card has spilled over; laid out by themselves they tell which.
        lay_out(cards)?;
        return Err(PaperError::Layout(format!("{} pages for {} cards", document.pages().len(), cards.len())));
    }
    written(&document, "tankard evening sheet")
}

/// On which page the sheet ends, by the label that the template sets there; 0 without one.
fn pages_of_sheet(document: &PagedDocument) -> usize {
    let end = Label::new(PicoStr::intern("last-of-the-sheet"));
    let at = end.and_then(|end| document.introspector().query_label(end).ok()?.location());
    at.and_then(|at| document.introspector().page(at)).map_or(0, NonZeroUsize::get)
}

fn compile(sheet: &SheetContent, cards: &[Sheet]) -> Result<(PagedDocument, Vec<SourceDiagnostic>), PaperError> {
    #[derive(Serialize)]
    #[serde(rename_all = "kebab-case")]
    struct Day<'a> {
        sheet: &'a SheetContent,
        with_cards: bool,
    }
    let day = data("evening.json", &Day { sheet, with_cards: !cards.is_empty() })?;
    compile_as(Template::Evening, vec![day, card_data(cards)?])
}

#[cfg(test)]
mod tests;
