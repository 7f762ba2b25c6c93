//! What the sheets of a review are put together from. All that is drawn is a number from 0 to 1 with its words beside it.

use serde::Serialize;
use tankard_core::farm::Paper;

/// A review as it is laid out.
#[derive(Clone, Debug, Default, PartialEq, Serialize)]
pub struct Content {
    /// Paper size.
    pub paper: Paper,
    /// Name of the farm.
    pub farm: String,
    /// Who keeps the records, with address and number; empty where it is not typed.
    pub holder: String,
    /// "Season 2031", and what of it was chosen.
    pub of: String,
    /// The day of printing.
    pub printed: String,
    /// What the review is, and what it is not.
    pub about: Vec<String>,
    /// What it tells.
    pub sections: Vec<Section>,
}

/// A part under a heading.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Section {
    /// The heading.
    pub title: String,
    /// What stands under it.
    pub parts: Vec<Part>,
}

/// A piece of a section.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[serde(tag = "kind", rename_all = "lowercase")]
pub enum Part {
    /// A figure or a sentence that stands out.
    Strong {
        /// The words.
        words: String,
    },
    /// A sentence.
    Say {
        /// The words.
        words: String,
    },
    /// Sentences in small print, without a full stop.
    Notes {
        /// The sentences.
        lines: Vec<String>,
    },
    /// Bars that stand, such as those of the months.
    Columns {
        /// What it shows.
        title: String,
        /// The bars.
        bars: Vec<Post>,
    },
    /// Lines along the months.
    Lines {
        /// What it shows.
        title: String,
        /// Names of the steps from left to right.
        steps: Vec<String>,
        /// Figures at the left.
        ticks: Vec<Tick>,
        /// The lines.
        lines: Vec<Line>,
    },
    /// A table, with bars behind the names where its rows have one.
    Table {
        /// What it shows; empty for none.
        title: String,
        /// The columns.
        columns: Vec<Column>,
        /// The rows.
        rows: Vec<Row>,
    },
    /// Resistance groups: fields by seasons.
    Matrix {
        /// What it shows.
        title: String,
        /// The seasons.
        years: Vec<String>,
        /// Name of a field, and its cells, one a season.
        rows: Vec<(String, Vec<Vec<Cell>>)>,
    },
    /// Points with their intervals.
    Dots {
        /// What it shows.
        title: String,
        /// Figures of the axis.
        ticks: Vec<Tick>,
        /// The points.
        dots: Vec<Dot>,
    },
    /// Two charts beside one another.
    Beside {
        /// The left one.
        left: Box<Part>,
        /// The right one.
        right: Box<Part>,
    },
}

/// A bar that stands.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Post {
    /// What it is of, under it.
    pub name: String,
    /// Its height, 0 to 1.
    pub part: f64,
    /// Its figure over it.
    pub words: String,
}

/// A figure of an axis.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Tick {
    /// Where it stands, 0 to 1.
    pub at: f64,
    /// The figure.
    pub words: String,
}

/// A line.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Line {
    /// What it is of, at its end.
    pub name: String,
    /// Its heights step by step, 0 to 1; it may end before the others.
    pub values: Vec<f64>,
    /// Whether it is the one that is looked at.
    pub first: bool,
}

/// A column of a table.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Column {
    /// Its heading.
    pub heading: String,
    /// Its part of the room that figures leave; 0 for a column of figures, as wide as these.
    pub share: f64,
}

/// A row of a table.
#[derive(Clone, Debug, Default, PartialEq, Serialize)]
pub struct Row {
    /// What stands in it.
    pub cells: Vec<String>,
    /// Its bar.
    pub bar: Option<Bar>,
    /// Small print under it, across all columns; empty for none.
    pub under: String,
}

/// A bar that lies.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct Bar {
    /// Its length, 0 to 1.
    pub part: f64,
    /// It is drawn hatched: something of it is not known, or it is of another kind than the others.
    pub hatched: bool,
}

/// A group in a season.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
pub struct Cell {
    /// Its number, and how often it came.
    pub words: String,
    /// It came again too soon.
    pub again: bool,
}

/// A point.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Dot {
    /// What it is of.
    pub name: String,
    /// Where it lies, 0 to 1.
    pub at: f64,
    /// Between what ends, 0 to 1; none where too little is known.
    pub ends: Option<(f64, f64)>,
    /// Its figures.
    pub words: String,
}

/// A column of words with its part of the room.
pub(super) fn words(heading: &str, share: f64) -> Column {
    Column { heading: heading.to_owned(), share }
}

/// A column of figures.
pub(super) fn figure(heading: &str) -> Column {
    words(heading, 0.0)
}

/// Small print.
pub(super) fn notes(lines: impl IntoIterator<Item = String>) -> Part {
    Part::Notes { lines: lines.into_iter().collect() }
}

/// A sentence.
pub(super) fn say(words: impl Into<String>) -> Part {
    Part::Say { words: words.into() }
}

/// A table.
pub(super) fn table(title: &str, columns: Vec<Column>, rows: impl IntoIterator<Item = Row>) -> Part {
    Part::Table { title: title.to_owned(), columns, rows: rows.into_iter().collect() }
}

impl Row {
    /// A row without a bar.
    pub(super) fn of(cells: Vec<String>) -> Self {
        Self { cells, ..Self::default() }
    }

    /// With a bar of so much of the most.
    pub(super) fn bar(self, value: f64, most: f64, hatched: bool) -> Self {
        Self { bar: Some(Bar { part: part(value, most), hatched }), ..self }
    }
}

/// A value as a part of the most, 0 to 1.
pub(super) fn part(value: f64, most: f64) -> f64 {
    if most > 0.0 && value.is_finite() { (value / most).clamp(0.0, 1.0) } else { 0.0 }
}

/// A round step that goes into the most two to five times.
pub(super) fn step(most: f64) -> f64 {
    let ten = 10_f64.powf((most / 5.0).log10().floor());
    [1.0, 2.0, 5.0, 10.0].into_iter().map(|by| by * ten).find(|step| most / step <= 5.0).unwrap_or(most)
}

#[cfg(test)]
mod tests {
    use super::{part, step};

    #[test]
    fn steps_are_round_and_few() {
        for (most, wanted) in [(1.0, 0.2), (7.0, 2.0), (100.0, 20.0), (260.0, 100.0), (4999.0, 1000.0)] {
            assert!((step(most) - wanted).abs() < 1e-9, "{most}: {}", step(most));
        }
    }

    #[test]
    fn parts_lie_between_the_ends() {
        for (value, of, wanted) in
            [(1.0, 4.0, 0.25), (5.0, 4.0, 1.0), (-1.0, 4.0, 0.0), (1.0, 0.0, 0.0), (f64::NAN, 1.0, 0.0)]
        {
            assert!((part(value, of) - wanted).abs() < 1e-12, "{value} of {of}");
        }
    }
}
