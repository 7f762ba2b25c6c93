//! Formulation types by their two-letter codes.
//!
//! # References
//! CropLife International, Technical Monograph No. 2, Catalogue of pesticide formulation types and international coding
//! system. The names and hints stand in `assets/formulations.csv`.

use crate::language::{self, Say, say};
use std::sync::LazyLock;

use serde::{Deserialize, Serialize};

/// Formulation types that go into a spray tank.
#[allow(clippy::upper_case_acronyms)] // The codes are the words of the trade, and stand in the file as they are.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
pub enum Formulation {
    /// Water-soluble bag with a powder or granule inside.
    WSP,
    /// Water-soluble granule.
    SG,
    /// Water-soluble powder.
    SP,
    /// Water-dispersible granule.
    WG,
    /// Wettable powder.
    WP,
    /// Suspension concentrate.
    SC,
    /// Suspo-emulsion.
    SE,
    /// Capsule suspension.
    CS,
    /// Mixed capsule suspension and suspension concentrate.
    ZC,
    /// Micro-emulsion.
    ME,
    /// Emulsion, oil in water.
    EW,
    /// Oil dispersion.
    OD,
    /// Dispersible concentrate.
    DC,
    /// Emulsifiable concentrate.
    EC,
    /// Soluble concentrate.
    SL,
    /// Oil miscible liquid.
    OL,
    /// Any other liquid for application undiluted or diluted.
    AL,
}

impl Formulation {
    /// All of them, dry ones first.
    pub const ALL: [Self; 17] = [
        Self::WSP,
        Self::SG,
        Self::SP,
        Self::WG,
        Self::WP,
        Self::SC,
        Self::SE,
        Self::CS,
        Self::ZC,
        Self::ME,
        Self::EW,
        Self::OD,
        Self::DC,
        Self::EC,
        Self::SL,
        Self::OL,
        Self::AL,
    ];

    /// The code.
    pub const fn code(self) -> &'static str {
        match self {
            Self::WSP => "WSP",
            Self::SG => "SG",
            Self::SP => "SP",
            Self::WG => "WG",
            Self::WP => "WP",
            Self::SC => "SC",
            Self::SE => "SE",
            Self::CS => "CS",
            Self::ZC => "ZC",
            Self::ME => "ME",
            Self::EW => "EW",
            Self::OD => "OD",
            Self::DC => "DC",
            Self::EC => "EC",
            Self::SL => "SL",
            Self::OL => "OL",
            Self::AL => "AL",
        }
    }

    /// Whether it is measured by volume.
    pub const fn is_liquid(self) -> bool {
        !matches!(self, Self::WSP | Self::SG | Self::SP | Self::WG | Self::WP)
    }

    /// The name of the type.
    pub fn name(self) -> &'static str {
        self.row().map_or(self.code(), |row| language::row(&row.name))
    }

    /// How it is put into the tank, in the words of common practice.
    pub fn handling(self) -> Say {
        self.row().map_or(Say::nothing(), |row| message(&row.handling))
    }

    /// What to wait for before the next product; may be empty.
    pub fn pause(self) -> Say {
        self.row().map_or(Say::nothing(), |row| message(&row.pause))
    }

    fn row(self) -> Option<&'static Row> {
        static TABLE: LazyLock<Vec<Row>> = LazyLock::new(|| {
            crate::table::read(include_str!("../../../../assets/formulations.csv")).unwrap_or_default()
        });
        TABLE.iter().find(|row| row.code == self.code())
    }
}

/// A message that a table names; nothing where it names none.
const fn message(id: &'static str) -> Say {
    if id.is_empty() { Say::nothing() } else { say(id) }
}

/// A row of `assets/formulations.csv`; handling and pause are names of messages.
#[derive(Deserialize)]
struct Row {
    code: String,
    name: String,
    handling: String,
    pause: String,
    #[allow(dead_code)] // Read by the test that every row has a source.
    source: String,
}

#[cfg(test)]
mod tests {
    use super::Formulation;

    #[test]
    fn every_code_has_its_row() {
        for formulation in Formulation::ALL {
            assert!(formulation.row().is_some_and(|row| !row.source.is_empty()), "{formulation:?}");
        }
    }
}
