//! Which kind of statement a sentence belongs to that was not understood, told by its words alone: where in the form a person types
//! it. It reads nothing of what the sentence says.
//!
//! The table `assets/direction-words.csv` lists words and words in a row, `|` between them; of several rows that fit, the first one holds.

use std::sync::LazyLock;

use serde::Deserialize;

use crate::farm::Says;

/// A kind of statement.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, Deserialize)]
#[serde(rename_all = "snake_case")]
#[allow(missing_docs)] // Each is the kind of that name in `Says`.
pub enum Kind {
    Rate,
    Carrier,
    SeasonTotal,
    Applications,
    CropStage,
    HarvestInterval,
    ReEntry,
    PlantBack,
    Droplets,
    Wind,
    NotToward,
    NoInversion,
    Humidity,
    DeltaT,
    Daylight,
    BoomHeight,
    GroundSpeed,
    CleanOut,
    Temperature,
    Controls,
    Buffer,
    RainFree,
    Adjuvant,
    MixingOrder,
    NotWith,
    Wear,
    ActiveSeasonTotal,
    Dates,
    Handling,
    Caution,
}

impl Kind {
    /// Whether a statement is of this kind.
    pub const fn is_of(self, says: &Says) -> bool {
        matches!(
            (self, says),
            (Self::Rate, Says::Rate { .. })
                | (Self::Carrier, Says::Carrier { .. })
                | (Self::SeasonTotal, Says::SeasonTotal { .. })
                | (Self::Applications, Says::Applications { .. })
                | (Self::CropStage, Says::CropStage)
                | (Self::HarvestInterval, Says::HarvestInterval { .. })
                | (Self::ReEntry, Says::ReEntry { .. })
                | (Self::PlantBack, Says::PlantBack { .. })
                | (Self::Droplets, Says::Droplets { .. })
                | (Self::Wind, Says::Wind { .. })
                | (Self::NotToward, Says::NotToward { .. })
                | (Self::NoInversion, Says::NoInversion)
                | (Self::Humidity, Says::Humidity { .. })
                | (Self::DeltaT, Says::DeltaT { .. })
                | (Self::Daylight, Says::Daylight { .. })
                | (Self::BoomHeight, Says::BoomHeight { .. })
                | (Self::GroundSpeed, Says::GroundSpeed { .. })
                | (Self::CleanOut, Says::CleanOut { .. })
                | (Self::Temperature, Says::Temperature { .. })
                | (Self::Controls, Says::Controls { .. })
                | (Self::Buffer, Says::Buffer { .. })
                | (Self::RainFree, Says::RainFree { .. })
                | (Self::Adjuvant, Says::Adjuvant { .. })
                | (Self::MixingOrder, Says::MixingOrder { .. })
                | (Self::NotWith, Says::NotWith { .. })
                | (Self::Wear, Says::Wear { .. })
                | (Self::ActiveSeasonTotal, Says::ActiveSeasonTotal { .. })
                | (Self::Dates, Says::Dates { .. })
                | (Self::Handling, Says::Handling { .. })
                | (Self::Caution, Says::Caution { .. })
        )
    }
}

#[derive(Clone, Debug, Deserialize)]
struct Row {
    kind: Kind,
    words: String,
    /// On what it rests.
    #[cfg_attr(not(test), allow(dead_code))] // It is looked up in the table by who doubts a row.
    source: String,
}

fn rows() -> Result<Vec<Row>, csv::Error> {
    crate::table::read(include_str!("../../../../../assets/direction-words.csv"))
}

/// The kind of statement that a sentence belongs to; `None` where its words do not tell.
pub(super) fn of(sentence: &str) -> Option<Kind> {
    static TABLE: LazyLock<Vec<(Kind, Vec<String>)>> = LazyLock::new(|| {
        let spaced = |row: &Row| row.words.split('|').map(|words| format!(" {words} ")).collect();
        rows().unwrap_or_default().iter().map(|row| (row.kind, spaced(row))).collect()
    });
    let words = sentence.split(|sign: char| !sign.is_alphanumeric()).filter(|word| !word.is_empty());
    let sentence = words.fold(" ".to_owned(), |text, word| text + &word.to_lowercase() + " ");
    TABLE.iter().find(|(_, all)| all.iter().any(|words| sentence.contains(words.as_str()))).map(|(kind, _)| *kind)
}

#[cfg(test)]
mod tests {
    use super::{Kind, of, rows};

    #[test]
    fn every_row_is_read_and_has_a_source() {
        let rows = rows().unwrap();
        assert!(rows.len() > 20 && rows.iter().all(|row| !row.source.is_empty() && !row.words.is_empty()));
    }

    /// Invented sentences; where each belongs follows from its words, no source.
    #[test]
    fn a_sentence_is_told_by_its_words() {
        for (sentence, kind) in [
            ("The rate may be raised to 30 fl oz/A where weeds are dense.", Kind::Rate),
            ("No more than 64 fl oz may be used per season unless grown for seed.", Kind::SeasonTotal),
            ("Leave an interval of 14 days unless the crop is irrigated.", Kind::Applications),
            ("Unless cut green, harvest no sooner than 60 days.", Kind::HarvestInterval),
            ("Where droplets are finer than coarse, stay 300 ft away.", Kind::Droplets),
            ("If the wind changes or exceeds 12 mph, stop.", Kind::Wind),
            ("A setback of 110 ft holds where a ditch is near.", Kind::Buffer),
            ("Rotational crops other than corn may follow after 9 months.", Kind::PlantBack),
            ("Add a surfactant unless the partner holds one.", Kind::Adjuvant),
            ("Re-entry is barred for 48 hours unless irrigated.", Kind::ReEntry),
        ] {
            assert_eq!(of(sentence), Some(kind), "{sentence}");
        }
        assert_eq!(of("Keep it in its first container."), None);
        // A word within another is none.
        assert_eq!(of("The training may be asked for."), None);
    }
}
