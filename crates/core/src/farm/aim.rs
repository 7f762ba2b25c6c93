//! What load sizes aim at, and what keeps fields apart: decisions of the user, in their order.

use crate::language::t;
use serde::{Deserialize, Serialize};

/// Something that load sizes are chosen for. The first of the user's order weighs more than all that follow it.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, Serialize, Deserialize)]
pub enum Aim {
    /// Little spray left after the last metre.
    Left,
    /// Few loads that are too small for the agitation.
    Agitation,
    /// Few fillings.
    Fills,
    /// Few containers opened.
    Opened,
    /// Few amounts that are measured out of a container, beside those poured whole.
    Measured,
    /// Amounts close to what arithmetic asks for.
    Rounding,
}

impl Aim {
    /// All of them, in the order that holds where the user sets none.
    pub const ALL: [Self; 6] = [Self::Left, Self::Agitation, Self::Fills, Self::Opened, Self::Measured, Self::Rounding];

    /// In words.
    pub fn name(self) -> &'static str {
        match self {
            Self::Left => t!("farm-little-spray-left-over"),
            Self::Agitation => t!("farm-no-load-too-small-to-agitate"),
            Self::Fills => t!("farm-few-fillings"),
            Self::Opened => t!("farm-few-containers-opened"),
            Self::Measured => t!("farm-whole-containers-little-measuring"),
            Self::Rounding => t!("farm-amounts-close-to-exact"),
        }
    }
}

/// Something that keeps two fields from sharing a load.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, Serialize, Deserialize)]
pub enum Apart {
    /// Their crops differ.
    Crop,
    /// Their varieties differ in what they stand of this mix.
    Trait,
    /// A label keeps a strip to a neighbour of one of them, so that it waits for its wind.
    Buffer,
    /// Their owners differ.
    Owner,
}

impl Apart {
    /// All of them; all hold where the user sets none.
    pub const ALL: [Self; 4] = [Self::Crop, Self::Trait, Self::Buffer, Self::Owner];

    /// In words.
    pub fn name(self) -> &'static str {
        match self {
            Self::Crop => t!("farm-another-crop"),
            Self::Trait => t!("farm-a-variety-that-stands-other-products"),
            Self::Buffer => t!("farm-a-strip-that-a-label-keeps"),
            Self::Owner => t!("farm-another-owner"),
        }
    }
}
