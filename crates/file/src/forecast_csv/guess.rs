//! What the columns of a file seem to hold, by their headings; a person looks at it before anything is taken.

use tankard_core::farm::{FileLayout, Holds, Take};

use super::Table;
use super::units::{self, unit_of};
use crate::table::when;

/// Words in a heading, whole or as its beginning (`temp*`), by what they speak of. The languages are English, German, French
/// and Spanish; the abbreviations are those that explain themselves.
const WORDS: [(Word, &[&str]); 12] = [
    (
        Word::Gust,
        &["gust*", "wgust", "windgust*", "wspdgust", "böe*", "boe*", "windböe*", "rafale*", "racha*", "ráfaga*"],
    ),
    (Word::Direction, &["dir*", "wdir*", "winddir*", "bearing", "windrichtung", "richtung", "from", "deg"]),
    (Word::Wind, &["wind*", "wspd", "wspeed", "wnd", "vent", "viento*"]),
    (Word::Dew, &["dew*", "dwpt", "td", "taupunkt*", "rosée", "rocío", "rocio"]),
    (Word::Humidity, &["humid*", "rh", "relhum", "rhum", "hum", "*feuchte", "humedad", "humidité"]),
    (Word::Chance, &["chance", "prob*", "pop", "wahrscheinlichkeit", "*wahrscheinlichkeit"]),
    (Word::Rain, &["rain*", "precip*", "prcp", "qpf", "niederschlag*", "regen*", "pluie", "lluvia", "précip*", "pop"]),
    (Word::Cloud, &["cloud*", "clouds", "tcc", "bewölkung*", "wolken*", "nuages", "nubes", "nubosidad"]),
    (Word::Air, &["temp*", "tmp", "air", "t2m", "tair", "airtemp*", "temperatur*", "lufttemperatur", "température"]),
    (Word::Date, &["date*", "day", "datum", "fecha", "jour"]),
    (
        Word::Time,
        &["time*", "hour*", "hr", "datetime", "valid*", "timestamp", "uhrzeit", "zeit*", "heure", "hora", "period"],
    ),
    // Headings with one of these hold something else, near though it may sound.
    (
        Word::Other,
        &[
            "apparent", "feels*", "chill", "index", "heat", "wet*", "soil", "ground", "surface", "leaf", "canopy",
            "grass", "water", "max*", "min*", "absolute", "specific", "type", "low", "mid", "high", "sunrise",
            "sunset", "created", "issued", "updated", "modified", "run", "snow*", "code", "id", "sum", "daily", "std",
            "u", "v", "press*", "pres", "quality", "density", "vapour", "vapor",
        ],
    ),
];

#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum Word {
    Gust,
    Direction,
    Wind,
    Dew,
    Humidity,
    Chance,
    Rain,
    Cloud,
    Air,
    Date,
    Time,
    Other,
}

/// Air is called "higher up" from this height down, in metres; above it, it is no longer the air over the crop.
const HIGHEST: f64 = 20.0;

/// The layout of a table: one remembered for this header, or else what its headings say. A file that does not name its
/// columns is known by nothing, so no layout is remembered for it.
pub fn guess(table: &Table, known: &[FileLayout]) -> FileLayout {
    if let Some(layout) = known.iter().rev().find(|layout| layout.header == table.header && table.has_header()) {
        return layout.clone();
    }
    let headings: Vec<Heading> = table.header.iter().map(|text| Heading::of(text)).collect();
    let mut takes: Vec<(usize, Take)> = Vec::new();
    times(table, &headings, &mut takes);
    for holds in Holds::ALL.into_iter().filter(|holds| !matches!(holds, Holds::DateAndTime | Holds::Date | Holds::Time))
    {
        let mut all: Vec<(usize, &Heading)> = headings
            .iter()
            .enumerate()
            .filter(|(at, heading)| {
                heading.holds() == Some(if holds == Holds::Higher { Holds::Temperature } else { holds })
                    && takes.iter().all(|(taken, _)| taken != at)
            })
            .collect();
        // Nearest to the ground first, where heights are given.
        all.sort_by(|(_, a), (_, b)| a.height.unwrap_or(0.0).total_cmp(&b.height.unwrap_or(0.0)));
        let found = if holds == Holds::Higher {
            all.into_iter().find(|(_, heading)| heading.height.is_some_and(|height| height <= HIGHEST))
        } else {
            all.into_iter().next()
        };
        if let Some((at, heading)) = found {
            takes.push((at, take(table, at, heading, holds)));
        }
    }
    takes.sort_by_key(|(at, _)| *at);
    FileLayout { header: table.header.clone(), takes: takes.into_iter().map(|(_, take)| take).collect() }
}

fn take(table: &Table, at: usize, heading: &Heading, holds: Holds) -> Take {
    // Points of the compass say what they are, and so do figures with units of their own.
    let unit = if table.is_bare(at) { heading.unit(holds) } else { None };
    Take { column: table.header.get(at).cloned().unwrap_or_default(), holds, unit: unit.unwrap_or_default().to_owned() }
}

/// Finds the column of day and time, or one of each.
fn times(table: &Table, headings: &[Heading], takes: &mut Vec<(usize, Take)>) {
    let utc_before = says_utc(&table.before);
    let mut columns: Vec<(usize, &Heading, Option<when::Shape>, bool)> = headings
        .iter()
        .enumerate()
        .filter(|(_, heading)| !heading.says(Word::Other))
        .map(|(at, heading)| {
            let shape = table.first(at, 20).find_map(when::shape);
            let seconds = table.first(at, 20).any(when::is_seconds);
            (at, heading, shape, seconds)
        })
        .collect();
    // A heading that speaks of a day or a time, and among these the farm's own clock, before one that does not.
    columns.sort_by_key(|(_, heading, ..)| {
        let named = heading.says(Word::Date) || heading.says(Word::Time);
        (!named, !heading.is_local())
    });
    let how = |shape: when::Shape, is_utc: bool| {
        let days = match shape.day {
            Some((_, true)) => "year-month-day",
            Some(('.', false)) => "day.month.year",
            // With strokes the day may come first or the month.
            _ => return String::new(),
        };
        // Lines before the header speak of UTC: that may or may not be of these times, so it is asked.
        match (shape.offset, is_utc) {
            (false, true) => format!("{days}, UTC"),
            (false, false) if utc_before => String::new(),
            _ => days.to_owned(),
        }
    };
    let heading_of = |at: usize| table.header.get(at).cloned().unwrap_or_default();
    let both = columns.iter().find(|(_, _, shape, _)| shape.is_some_and(|shape| shape.day.is_some() && shape.time));
    let seconds = columns.iter().find(|(_, heading, _, seconds)| {
        *seconds && (heading.says(Word::Date) || heading.says(Word::Time) || heading.is_unix())
    });
    let day = columns.iter().find(|(_, _, shape, _)| shape.is_some_and(|shape| shape.day.is_some() && !shape.time));
    let time = columns.iter().find(|(at, heading, shape, _)| {
        shape.is_some_and(|shape| shape.time && shape.day.is_none())
            || (heading.says(Word::Time) && day.is_some_and(|(of_day, ..)| of_day != at) && is_hours(table, *at))
    });
    match (both, day, time, seconds) {
        (Some((at, heading, Some(shape), _)), ..) => {
            let unit = how(*shape, heading.is_utc());
            takes.push((*at, Take { column: heading_of(*at), holds: Holds::DateAndTime, unit }));
        }
        (_, Some((at, heading, Some(shape), _)), Some((time, of_time, of_day, _)), _) => {
            let shape = when::Shape { offset: of_day.is_some_and(|time| time.offset), ..*shape };
            let unit = how(shape, heading.is_utc() || of_time.is_utc());
            takes.push((*at, Take { column: heading_of(*at), holds: Holds::Date, unit }));
            takes.push((*time, Take { column: heading_of(*time), holds: Holds::Time, unit: String::new() }));
        }
        (.., Some((at, heading, ..))) => {
            let unit = if heading.is_unix() { when::UNIX.to_owned() } else { String::new() };
            takes.push((*at, Take { column: heading_of(*at), holds: Holds::DateAndTime, unit }));
        }
        (_, Some((at, heading, Some(shape), _)), None, None) => {
            let unit = how(*shape, heading.is_utc());
            takes.push((*at, Take { column: heading_of(*at), holds: Holds::Date, unit }));
        }
        _ => {}
    }
}

/// Whether a column holds hours from 0 to 24.
fn is_hours(table: &Table, at: usize) -> bool {
    table.first(at, 24).all(|cell| cell.parse::<u8>().is_ok_and(|hour| hour <= 24))
}

fn says_utc(text: &str) -> bool {
    let upper = text.to_uppercase();
    upper.split(|letter: char| !letter.is_alphanumeric()).any(|word| matches!(word, "UTC" | "GMT"))
}

/// A heading taken apart.
struct Heading {
    words: Vec<String>,
    /// What stands in brackets, or after a comma.
    aside: Option<String>,
    /// Height above ground in metres.
    height: Option<f64>,
}

impl Heading {
    fn of(text: &str) -> Self {
        // "(unit)" at the end was put there from a line of units, or stands in the heading.
        let open = text.rfind(['(', '[', '{']);
        let comma = text.rfind(", ");
        let (name, aside) = match (open, comma) {
            (Some(at), _) => (
                text.get(..at).unwrap_or(text),
                text.get(at + 1..)
                    .map(|rest| rest.trim_end_matches(|c: char| matches!(c, ')' | ']' | '}') || c.is_whitespace())),
            ),
            (None, Some(at)) => (text.get(..at).unwrap_or(text), text.get(at + 2..)),
            (None, None) => (text, None),
        };
        let words = words(name);
        let height = words.iter().zip(words.iter().skip(1).map(String::as_str).chain([""])).find_map(|(word, next)| {
            let figure = |text: &str| text.parse::<f64>().ok().filter(|metres| (0.0..1000.0).contains(metres));
            match (word.strip_suffix('m').and_then(figure), word.strip_suffix("ft").and_then(figure)) {
                (Some(metres), _) => Some(metres),
                (_, Some(feet)) => Some(feet * 0.3048),
                _ if matches!(next, "m" | "meter" | "metre") => figure(word),
                _ => None,
            }
        });
        Self { words, aside: aside.map(str::to_owned), height }
    }

    fn says(&self, what: Word) -> bool {
        WORDS.iter().filter(|(word, _)| *word == what).flat_map(|(_, patterns)| patterns.iter()).any(|pattern| {
            self.words.iter().any(|word| match (pattern.strip_suffix('*'), pattern.strip_prefix('*')) {
                (Some(head), _) => word.starts_with(head),
                (_, Some(tail)) => word.ends_with(tail),
                _ => word == pattern,
            })
        })
    }

    fn holds(&self) -> Option<Holds> {
        // "wdir", "winddir" and the like speak of the wind by themselves.
        let direction = self.says(Word::Direction)
            && (self.says(Word::Wind) || self.words.iter().any(|word| word.starts_with("wdir")))
            || self.words.iter().any(|word| word == "windrichtung");
        let found = match () {
            () if self.says(Word::Other) => return None,
            () if self.says(Word::Gust) && !self.says(Word::Direction) => Holds::Gust,
            () if self.says(Word::Gust) => return None,
            () if direction => Holds::WindFrom,
            () if self.says(Word::Wind) => Holds::Wind,
            () if self.says(Word::Dew) => Holds::DewPoint,
            () if self.says(Word::Humidity) => Holds::Humidity,
            () if self.says(Word::Chance) && self.says(Word::Rain) => Holds::RainChance,
            () if self.says(Word::Chance) => return None,
            () if self.says(Word::Rain) => Holds::Rain,
            () if self.says(Word::Cloud) => Holds::Cloud,
            () if self.says(Word::Air) => Holds::Temperature,
            () => return None,
        };
        Some(found)
    }

    /// The unit that the heading gives: in brackets, after a comma, or as its last words.
    fn unit(&self, holds: Holds) -> Option<&'static str> {
        if let Some(unit) = self.aside.as_deref().and_then(|aside| unit_of(holds, aside)) {
            return Some(unit);
        }
        let count = self.words.len();
        // Not the only word: "in" is a unit behind "rain", not alone.
        (1..=2).rev().filter(|last| *last < count).find_map(|last| {
            let tail: Vec<&str> = self.words.iter().skip(count - last).map(String::as_str).collect();
            unit_of(holds, &tail.join("/")).filter(|_| units::needs_unit(holds))
        })
    }

    fn is_utc(&self) -> bool {
        self.words.iter().any(|word| word == "utc" || word == "gmt") || self.aside.as_deref().is_some_and(says_utc)
    }

    fn is_local(&self) -> bool {
        let local = |text: &str| text.to_lowercase().contains("local");
        self.words.iter().any(|word| local(word)) || self.aside.as_deref().is_some_and(local)
    }

    fn is_unix(&self) -> bool {
        let unix = |text: &str| ["unix", "epoch"].iter().any(|word| text.to_lowercase().contains(word));
        self.words.iter().any(|word| unix(word)) || self.aside.as_deref().is_some_and(unix)
    }
}

/// The words of a heading in lower case: "windSpeed_10m" gives "wind", "speed", "10m".
fn words(text: &str) -> Vec<String> {
    let mut words = vec![String::new()];
    let mut before = ' ';
    let letters: Vec<char> = text.chars().collect();
    for (at, letter) in letters.iter().enumerate() {
        let is_dot = *letter == '.' && before.is_ascii_digit() && letters.get(at + 1).is_some_and(char::is_ascii_digit);
        let is_part = letter.is_alphanumeric() || is_dot || matches!(letter, '%' | '°');
        if !is_part || (letter.is_uppercase() && before.is_lowercase()) {
            words.push(String::new());
        }
        if let Some(word) = words.last_mut().filter(|_| is_part) {
            word.extend(letter.to_lowercase());
        }
        before = *letter;
    }
    words.retain(|word| !word.is_empty());
    words
}
