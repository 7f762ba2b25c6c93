//! Label limits: what the labels as typed say about this pass on these fields.
//!
//! One file a limit. Each takes what it needs from the plan and gives findings; none changes a number, but some say how
//! far the rounding may go.

pub mod carrier;
pub mod harvest;
pub(crate) mod limits;
pub mod names;
pub mod rate;
pub mod season;
pub mod stage;
pub mod typed;
pub mod when;

use crate::farm::{Field, Id, Product, Statement};
use crate::quantity::AmountPerArea;

/// Which end of a range a bound is.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum End {
    Least,
    Most,
}

/// How far the rounding of a product may go on a field, over ground: a limit that the plan itself keeps.
#[derive(Clone, Debug, PartialEq)]
pub(crate) struct Bound {
    pub(crate) product: Id,
    pub(crate) field: Id,
    pub(crate) end: End,
    pub(crate) amount: AmountPerArea,
}

/// Where a statement stands: the product's name and the page.
pub fn place(product: &Product, statement: &Statement) -> String {
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
    if !for_crop(statement, field) {
        return Speaks::OtherCrop;
    }
    match stage::within(&field.stage, &statement.from_stage, &statement.to_stage) {
        Some(true) => Speaks::Yes,
        Some(false) => Speaks::OtherStage,
        None => Speaks::Unclear,
    }
}

/// Whether a statement is for every crop or for the field's. A statement may list several, apart by commas.
pub fn for_crop(statement: &Statement, field: &Field) -> bool {
    let crop = field.crop.trim().to_lowercase();
    statement.crop.trim().is_empty() || statement.crop.split(',').any(|name| name.trim().to_lowercase() == crop)
}
