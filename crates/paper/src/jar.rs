//! The sheet of a jar test: one page, in the order of the work.

use tankard_core::mix::jar::sheet::JarSheet;
use typst::diag::SourceDiagnostic;
use typst_layout::PagedDocument;

use crate::world::{Template, Told};
use crate::{PaperError, compile_as, data, written};

/// Prints the sheet of a jar test as a PDF of exactly one page. The same sheet gives the same bytes.
///
/// # Errors
/// [`PaperError::JarTooLong`] where no print is small enough, and the others where the layout itself fails.
pub fn pdf(sheet: &JarSheet) -> Result<Vec<u8>, PaperError> {
    let (document, _) = compile(sheet)?;
    if document.pages().len() != 1 {
        return Err(PaperError::JarTooLong);
    }
    written(&document, "tankard jar test")
}

fn compile(sheet: &JarSheet) -> Result<(PagedDocument, Vec<SourceDiagnostic>), PaperError> {
    compile_as(Template::Jar, vec![data("jar.json", sheet)?], Told::NOBODY)
}

#[cfg(test)]
mod tests;
