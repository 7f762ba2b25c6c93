//! Label limits: what the labels as typed say about this pass on these fields.
//!
//! One file a limit. Each takes what it needs from the plan and gives findings; none changes a number, except that
//! `cap` in some of them tells the rounding how far it may go.

pub mod adjuvant;
pub mod carrier;
pub mod harvest;
pub mod rate;
pub mod season;
pub mod stage;

use crate::farm::{Field, Product, Statement};

/// Where a statement stands: the product's name and the page.
pub(crate) fn place(product: &Product, statement: &Statement) -> String {
    if statement.at.is_empty() { product.name.clone() } else { format!("{}, {}", product.name, statement.at) }
}

/// Whether a statement speaks of a field.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum Speaks {
    /// Crop and stage fit.
    Yes,
    /// The crop is another one.
    OtherCrop,
    /// The crop fits, the stage lies outside.
    OtherStage,
    /// The crop fits; the stage cannot be compared.
    Unclear,
}

/// Whether a statement speaks of the crop on a field at its stage.
pub(crate) fn speaks(statement: &Statement, field: &Field) -> Speaks {
    if !statement.crop.trim().is_empty() && !same_crop(&statement.crop, &field.crop) {
        return Speaks::OtherCrop;
    }
    match stage::within(&field.stage, &statement.from_stage, &statement.to_stage) {
        Some(true) => Speaks::Yes,
        Some(false) => Speaks::OtherStage,
        None => Speaks::Unclear,
    }
}

/// Whether two crop names mean the same crop. A statement may list several, apart by commas.
pub(crate) fn same_crop(listed: &str, crop: &str) -> bool {
    let crop = crop.trim().to_lowercase();
    listed.split(',').any(|name| name.trim().to_lowercase() == crop)
}
