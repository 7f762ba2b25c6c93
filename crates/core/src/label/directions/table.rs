//! The table of phrases.
//!
//! A phrase is words in a row. `a|b` is either word, `a?` may be missing, `^` is the beginning of the sentence, `*` is whatever stands
//! between and is read otherwise, and a word in braces is what is caught: a figure, a number of applications, a period, droplet classes,
//! adjuvants, growth stages, neighbours, words as they stand, or names of crops, which may be missing but where they are written `{crops!}`. `@name` is any of the rows
//! `piece` that begin with that name, `@name?` may be missing, and `*name` is any number of the words of its row, in any order. Commas,
//! brackets and colons between words do not count.

use std::cmp::Reverse;
use std::collections::BTreeMap;
use std::sync::LazyLock;

use serde::Deserialize;

use super::lists::is_stage;

#[derive(Clone, Debug, Deserialize)]
struct Row {
    says: Says,
    phrase: String,
    /// On what it rests.
    #[cfg_attr(not(test), allow(dead_code))] // It is looked up in the table by who doubts a phrase.
    source: String,
}

/// What a sentence with a phrase says.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Deserialize)]
#[serde(rename_all = "snake_case")]
pub(super) enum Says {
    Rate,
    RateLeast,
    RateMost,
    RateAndWater,
    Carrier,
    CarrierLeast,
    CarrierMost,
    SeasonTotal,
    Applications,
    Apart,
    Harvest,
    ReEntry,
    RainFree,
    Wind,
    WindBetween,
    /// "Below 3 or above 20 km/h": the first has no unit of its own.
    WindOutside,
    Droplets,
    /// "Not finer than": the class or a coarser one.
    DropletsFinest,
    /// A harvest interval of the grain alone.
    HarvestGrain,
    /// A temperature above which, or below which, it is not applied.
    TemperatureMost,
    TemperatureLeast,
    TemperatureBetween,
    HumidityMost,
    HumidityLeast,
    NoInversion,
    /// Up to a stage, from one on, between two.
    StageTo,
    StageUpTo,
    StageFrom,
    StageBetween,
    Buffer,
    BufferDownwind,
    BoomHeight,
    GroundSpeed,
    /// Months before another crop.
    PlantBack,
    /// A row of a table of such crops, which says so by its heading alone.
    PlantBackRow,
    CleanOut,
    Handling,
    AdjuvantRequired,
    AdjuvantPreferred,
    AdjuvantAllowed,
    AdjuvantDiscouraged,
    AdjuvantForbidden,
    NotWith,
    Wear,
    /// Words that say nothing which the form holds, and turn nothing.
    Aside,
    /// A time of the crop at which a sentence holds.
    Timing,
    /// Words of headings under which sentences mean what they say.
    Heading,
    /// The same, but for rates: those below are not of the product.
    HeadingOfOthers,
    /// Words of headings of tables of crops that may follow.
    Rotation,
    /// Names of a period.
    Year,
    Crop,
    Season,
    /// Not a phrase: a part of some, by its name.
    Piece,
    /// Not a phrase: words that no phrase may leave over.
    Guard,
    /// Such words that make a condition.
    Condition,
    /// Such words that speak of another use, place or way of spraying.
    Elsewhere,
    /// Not a phrase: words by which a sentence is told to hold a limit.
    Limit,
}

impl Says {
    /// Whether what it says often holds at one time of the crop alone ("in postemergence applications"), so that no time may be passed over.
    pub(super) const fn is_strict(self) -> bool {
        matches!(
            self,
            Self::Buffer
                | Self::BufferDownwind
                | Self::AdjuvantRequired
                | Self::AdjuvantPreferred
                | Self::AdjuvantAllowed
                | Self::AdjuvantDiscouraged
                | Self::AdjuvantForbidden
                | Self::NotWith
        )
    }

    const fn is_phrase(self) -> bool {
        !matches!(self, Self::Piece | Self::Guard | Self::Condition | Self::Elsewhere | Self::Limit)
    }

    /// Whether it says how much of the product is used.
    pub(super) const fn is_rate(self) -> bool {
        matches!(self, Self::Rate | Self::RateLeast | Self::RateMost | Self::RateAndWater | Self::SeasonTotal)
    }

    /// Whether it says what becomes a statement.
    pub(super) const fn states(self) -> bool {
        self.is_phrase()
            && !matches!(
                self,
                Self::Aside
                    | Self::Timing
                    | Self::Heading
                    | Self::HeadingOfOthers
                    | Self::Rotation
                    | Self::Year
                    | Self::Crop
                    | Self::Season
            )
    }
}

/// What is caught.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Slot {
    Rate,
    Rates,
    /// Of an adjuvant, whatever it is measured in.
    DoseRates,
    Water,
    Waters,
    Volume,
    Volumes,
    Days,
    Hours,
    /// Hours, or minutes.
    Dry,
    /// Hours, or days.
    Away,
    /// Months, or days or weeks.
    Next,
    Speed,
    Speeds,
    Bare,
    Share,
    Count,
    Times,
    Period,
    Classes,
    Length,
    Degrees,
    DegreesBetween,
    Doses,
    Stage,
    /// Two codes of one scale: "BBCH 12-16".
    Codes,
    /// Names of crops that may not be missing.
    Crop,
    Near,
    Partners,
    Rest,
}

#[derive(Clone, Debug)]
pub(super) enum Part {
    Start,
    /// Words that are left to be read otherwise.
    Gap,
    Words {
        any: Vec<String>,
        may_miss: bool,
    },
    /// Any number of the words.
    Run(Vec<String>),
    Slot(Slot),
    /// The name of a crop, or of several, or none where it may miss; from these it is told afterwards for which crop the sentence is.
    Crops {
        may_miss: bool,
    },
}

/// A phrase of the table.
#[derive(Clone, Debug)]
pub(super) struct Phrase {
    pub(super) says: Says,
    pub(super) parts: Vec<Part>,
}

fn slot(name: &str) -> Option<Slot> {
    Some(match name {
        "rate" => Slot::Rate,
        "rates" => Slot::Rates,
        "dose_rates" => Slot::DoseRates,
        "water" => Slot::Water,
        "waters" => Slot::Waters,
        "volume" => Slot::Volume,
        "volumes" => Slot::Volumes,
        "days" => Slot::Days,
        "hours" => Slot::Hours,
        "dry" => Slot::Dry,
        "away" => Slot::Away,
        "next" => Slot::Next,
        "bare" => Slot::Bare,
        "share" => Slot::Share,
        "speed" => Slot::Speed,
        "speeds" => Slot::Speeds,
        "count" => Slot::Count,
        "times" => Slot::Times,
        "period" => Slot::Period,
        "classes" => Slot::Classes,
        "length" => Slot::Length,
        "degrees" => Slot::Degrees,
        "degrees_between" => Slot::DegreesBetween,
        "doses" => Slot::Doses,
        "stage" => Slot::Stage,
        "codes" => Slot::Codes,
        "crop" => Slot::Crop,
        "near" => Slot::Near,
        "partners" => Slot::Partners,
        "rest" => Slot::Rest,
        _ => return None,
    })
}

/// The pieces by their names, each with its rows.
type Pieces = BTreeMap<String, Vec<String>>;

fn pieces(rows: &[Row]) -> Pieces {
    let mut all = Pieces::new();
    for row in rows.iter().filter(|row| row.says == Says::Piece) {
        let (name, words) = row.phrase.split_once(' ').unwrap_or((&row.phrase, ""));
        all.entry(name.to_owned()).or_default().push(words.to_owned());
    }
    all
}

/// A phrase with each of its pieces written out, in all the ways there are; none where a piece is not known.
fn written_out(phrase: &str, pieces: &Pieces) -> Option<Vec<String>> {
    let Some(word) = phrase.split_whitespace().find(|word| word.starts_with('@')) else {
        return Some(vec![phrase.to_owned()]);
    };
    let name = word.trim_start_matches('@');
    let (name, may_miss) = name.strip_suffix('?').map_or((name, false), |name| (name, true));
    let mut ways = pieces.get(name)?.clone();
    if may_miss {
        ways.push(String::new());
    }
    let mut all = Vec::new();
    for way in ways {
        all.extend(written_out(&phrase.replacen(word, &way, 1), pieces)?);
    }
    Some(all)
}

fn parts(phrase: &str, pieces: &Pieces) -> Option<Vec<Part>> {
    let plain = |word: &String| !word.is_empty() && word.chars().all(char::is_alphanumeric);
    phrase
        .split_whitespace()
        .map(|word| {
            if word == "^" {
                return Some(Part::Start);
            }
            if word == "*" {
                return Some(Part::Gap);
            }
            if let Some(name) = word.strip_prefix('*') {
                let words = pieces.get(name)?.iter().flat_map(|row| row.split('|')).map(str::to_owned);
                return Some(Part::Run(words.collect()));
            }
            if let Some(name) = word.strip_prefix('{').and_then(|name| name.strip_suffix('}')) {
                return match name {
                    "crops" => Some(Part::Crops { may_miss: true }),
                    "crops!" => Some(Part::Crops { may_miss: false }),
                    _ => slot(name).map(Part::Slot),
                };
            }
            let (words, may_miss) = word.strip_suffix('?').map_or((word, false), |words| (words, true));
            let any: Vec<String> = words.split('|').map(str::to_owned).collect();
            any.iter().all(plain).then_some(Part::Words { any, may_miss })
        })
        .collect()
}

fn rows() -> Result<Vec<Row>, csv::Error> {
    crate::table::read(include_str!("../../../../../assets/direction-phrases.csv"))
}

/// The phrases of a row, one for each way in which its pieces can be written.
fn of_row(row: &Row, pieces: &Pieces) -> Option<Vec<Phrase>> {
    let all = written_out(&row.phrase, pieces)?;
    all.iter().map(|phrase| Some(Phrase { says: row.says, parts: parts(phrase, pieces)? })).collect()
}

/// The phrases by what they are for, since those that say nothing are asked for by their kind, again and again.
struct Table {
    statements: Vec<Phrase>,
    others: Vec<(Says, Vec<Phrase>)>,
}

fn every() -> &'static Table {
    static TABLE: LazyLock<Table> = LazyLock::new(|| {
        let rows = rows().unwrap_or_default();
        let pieces = pieces(&rows);
        let all = rows.iter().filter(|row| row.says.is_phrase()).filter_map(|row| of_row(row, &pieces)).flatten();
        let mut table = Table { statements: Vec::new(), others: Vec::new() };
        for phrase in all {
            if phrase.says.states() {
                table.statements.push(phrase);
            } else if let Some((_, of_kind)) = table.others.iter_mut().find(|(says, _)| *says == phrase.says) {
                of_kind.push(phrase);
            } else {
                table.others.push((phrase.says, vec![phrase]));
            }
        }
        // Of what says nothing the longer goes first, so that none takes a word out of another.
        for (_, of_kind) in &mut table.others {
            of_kind.sort_by_key(|phrase| Reverse(phrase.parts.len()));
        }
        table
    });
    &TABLE
}

/// The phrases that become statements, the longer of two that begin alike first.
pub(super) fn statements() -> impl Iterator<Item = &'static Phrase> {
    every().statements.iter()
}

/// The phrases of a kind that becomes none.
pub(super) fn of_kind(says: Says) -> impl Iterator<Item = &'static Phrase> {
    every().others.iter().filter(move |(kind, _)| *kind == says).flat_map(|(_, of_kind)| of_kind)
}

fn listed(says: Says) -> Vec<String> {
    let rows = rows().unwrap_or_default();
    let of_kind = rows.iter().filter(|row| row.says == says);
    of_kind.flat_map(|row| row.phrase.split('|').map(str::to_owned)).collect()
}

/// As what a word that no phrase accounts for may turn what its sentence says: a guard, a condition or another use.
pub(super) fn how_it_turns(word: &str) -> Option<Says> {
    static WORDS: LazyLock<Vec<(Says, Vec<String>)>> = LazyLock::new(|| {
        [Says::Elsewhere, Says::Condition, Says::Guard].into_iter().map(|says| (says, listed(says))).collect()
    });
    let known = WORDS.iter().find(|(_, words)| words.iter().any(|known| known == word));
    known.map(|(says, _)| *says).or_else(|| is_stage(word).then_some(Says::Guard))
}

/// Whether it does.
pub(super) fn turns(word: &str) -> bool {
    how_it_turns(word).is_some()
}

/// Whether a word is one of those that limits are written with.
pub(super) fn limits(word: &str) -> bool {
    static WORDS: LazyLock<Vec<String>> = LazyLock::new(|| listed(Says::Limit));
    WORDS.iter().any(|known| known == word)
}

#[cfg(test)]
mod tests {
    use super::{Says, of_row, pieces, rows};

    #[test]
    fn each_phrase_reads_and_has_its_source() {
        let rows = rows().unwrap();
        let pieces = pieces(&rows);
        assert!(rows.len() > 90);
        for row in &rows {
            assert!(!row.source.trim().is_empty(), "{}", row.phrase);
            assert!(!row.says.is_phrase() || of_row(row, &pieces).is_some(), "{}", row.phrase);
        }
        // Each piece is a part of something.
        for name in pieces.keys() {
            let is_used = |row: &super::Row| {
                row.phrase.split_whitespace().skip(usize::from(row.says == Says::Piece)).any(|word| {
                    word.trim_start_matches(['@', '*']).trim_end_matches('?') == name && word.starts_with(['@', '*'])
                })
            };
            assert!(rows.iter().any(is_used), "{name}");
        }
    }
}
