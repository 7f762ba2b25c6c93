//! What hands take for what when they type: the rows of `assets/confusions.csv`, and what a typed text would be if one of them was made.

use std::sync::LazyLock;

use serde::Deserialize;

use super::text::{Typed, shifted};
use crate::language;
use crate::quantity::unit::{self, Unit, find, is_metric, normal};
use crate::quantity::{Quantity, Units};

/// A row of the table: what is read is `from`, what was meant is `to`.
#[derive(Clone, Debug, Deserialize)]
pub struct Confusion {
    /// Of which quantity it speaks: one of [`Kind`], a part of a rate ("amount", "per", "basis", "rate"), or "any".
    pub kind: String,
    /// The unit that was typed; empty for the decimal point.
    pub from: String,
    /// The unit that was meant.
    pub to: String,
    /// How many times too much is read; `None` where that hangs on something else, such as a density.
    pub factor: Option<f64>,
    /// "imperial" where it is made on farms with imperial units alone; empty for all.
    pub farms: String,
    /// What was typed for what, in words.
    pub says: String,
    /// On what it rests.
    pub source: String,
}

/// The table. Of several that would do, the row that stands first is offered first.
pub fn table() -> &'static [Confusion] {
    static TABLE: LazyLock<Vec<Confusion>> =
        LazyLock::new(|| crate::table::read(include_str!("../../../../assets/confusions.csv")).unwrap_or_default());
    &TABLE
}

/// A kind of quantity that is typed with a unit.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Kind {
    /// A rate of use.
    Rate,
    /// What was used of a product.
    Amount,
    /// Spray volume over ground.
    Carrier,
    /// What a tank holds.
    Volume,
    /// Ground.
    Area,
    /// A boom, a spacing, a height.
    Length,
    /// Over ground, or of the wind.
    Speed,
    /// In the boom.
    Pressure,
    /// Of a nozzle.
    Flow,
    /// Of the air.
    Temperature,
    /// Of a product.
    Density,
    /// Of an active in a product.
    Content,
    /// Of water.
    Hardness,
    /// Of water.
    Conductivity,
    /// In water.
    Calcium,
    /// In water.
    Magnesium,
    /// In water.
    Bicarbonate,
}

impl Kind {
    /// The word of the table.
    const fn key(self) -> &'static str {
        match self {
            Self::Rate => "rate",
            Self::Amount => "amount",
            Self::Carrier => "carrier",
            Self::Volume => "volume",
            Self::Area => "area",
            Self::Length => "length",
            Self::Speed => "speed",
            Self::Pressure => "pressure",
            Self::Flow => "flow",
            Self::Temperature => "temperature",
            Self::Density => "density",
            Self::Content => "content",
            Self::Hardness => "hardness",
            Self::Conductivity => "conductivity",
            Self::Calcium => "calcium",
            Self::Magnesium => "magnesium",
            Self::Bicarbonate => "bicarbonate",
        }
    }

    /// Where the names of its units stand; empty where they are put together of others.
    const fn units(self) -> &'static [Unit] {
        match self {
            Self::Carrier => unit::CARRIER,
            Self::Volume => unit::VOLUME,
            Self::Area => unit::AREA,
            Self::Length => unit::LENGTH,
            Self::Speed => unit::SPEED,
            Self::Pressure => unit::PRESSURE,
            Self::Flow => unit::FLOW,
            Self::Density => unit::DENSITY,
            Self::Hardness => unit::HARDNESS,
            Self::Conductivity => unit::CONDUCTIVITY,
            Self::Rate
            | Self::Amount
            | Self::Temperature
            | Self::Content
            | Self::Calcium
            | Self::Magnesium
            | Self::Bicarbonate => &[],
        }
    }

    /// Whether a confusion changes the number and leaves the unit, since the box has no unit for what was confused.
    const fn keeps_unit(self) -> bool {
        matches!(self, Self::Calcium | Self::Magnesium | Self::Bicarbonate)
    }
}

/// What a text would be, had a confusion not been made.
#[derive(Clone, Debug, PartialEq)]
pub(crate) struct Meant<Q> {
    /// In the notation of whoever typed it.
    pub(crate) text: String,
    /// The value it stands for.
    pub(crate) value: Q,
    /// What was taken for what, as the table has it.
    pub(crate) says: &'static str,
}

impl<Q> Meant<Q> {
    /// What was taken for what, in the language that is spoken.
    pub(crate) fn why(&self) -> &'static str {
        language::row(self.says)
    }
}

/// What a typed text may have been meant as, the likeliest first: each row of the table once. What cannot be read is left out.
pub(crate) fn meant<Q: Quantity>(kind: Kind, text: &str, units: Units) -> Vec<Meant<Q>> {
    let Some(typed) = Typed::of(text) else { return Vec::new() };
    let mut all: Vec<Meant<Q>> = Vec::new();
    for row in table() {
        if row.farms == "imperial" && units != Units::Imperial {
            continue;
        }
        let Some(text) = without(row, kind, &typed) else { continue };
        if all.iter().any(|other| other.text == text) {
            continue;
        }
        if let Ok(value) = Q::parse(&text) {
            all.push(Meant { text, value, says: &row.says });
        }
    }
    all
}

/// The text without a confusion; `None` where it does not show that one.
fn without(row: &'static Confusion, kind: Kind, typed: &Typed) -> Option<String> {
    if row.kind == "any" {
        return Some(format!("{} {}", shifted(typed, 1.0 / row.factor?, 9), typed.unit));
    }
    if row.kind == kind.key() {
        return whole(row, kind, typed);
    }
    (kind == Kind::Rate).then(|| part_of_rate(row, typed)).flatten()
}

/// Of the whole unit.
fn whole(row: &Confusion, kind: Kind, typed: &Typed) -> Option<String> {
    if kind.keeps_unit() {
        return Some(format!("{} {}", shifted(typed, 1.0 / row.factor?, 3), typed.unit));
    }
    // "lb ae/gal" and "% w/w ae": the word stands at the end of the whole or of what is above the stroke.
    let (name, basis) = match typed.unit.split_once('/').map(|(top, bottom)| (without_basis(top.trim_end()), bottom)) {
        Some(((top, basis), bottom)) if !basis.is_empty() => (normal(&format!("{top}/{bottom}")), basis),
        _ => {
            let (name, basis) = without_basis(&typed.unit);
            (normal(name), basis)
        }
    };
    let is = match kind {
        Kind::Temperature => name.trim_start_matches(['°', 'º']).trim_start_matches("deg").trim_start() == row.from,
        Kind::Content => compound(&name) == compound(&row.from),
        Kind::Rate => name == row.from,
        Kind::Amount => [unit::MASS, unit::VOLUME].into_iter().any(|table| is_same(table, &name, &row.from)),
        _ => is_same(kind.units(), &name, &row.from),
    };
    let to = match (basis, row.to.split_once('/')) {
        ("", _) => row.to.clone(),
        (basis, Some((top, bottom))) if !top.starts_with('%') => format!("{top} {basis}/{bottom}"),
        (basis, _) => format!("{} {basis}", row.to),
    };
    is.then(|| format!("{} {to}", typed.number))
}

/// Whether two names mean one unit of a table.
fn is_same(table: &'static [Unit], one: &str, other: &str) -> bool {
    let first = |name: &str| find(table, name).and_then(|unit| unit.names.first());
    first(one).is_some_and(|name| first(other) == Some(name))
}

/// A unit put together of two, by the first names of both; as it stands where a part is not known.
fn compound(name: &str) -> String {
    let first = |part: &str| {
        [unit::MASS, unit::VOLUME, unit::AREA]
            .iter()
            .find_map(|table| find(table, part.trim()).and_then(|unit| unit.names.first()))
            .map_or_else(|| part.trim().to_owned(), |name| (*name).to_owned())
    };
    match name.split_once('/') {
        Some((top, bottom)) => format!("{}/{}", first(top), first(bottom)),
        None => first(name),
    }
}

/// A unit without its "ae" or "ai", and that.
fn without_basis(unit: &str) -> (&str, &'static str) {
    for (ending, basis) in [(" ae", "ae"), (" ai", "ai")] {
        if let Some(bare) = unit.strip_suffix(ending) {
            return (bare, basis);
        }
    }
    (unit, "")
}

/// Of what stands above or below the stroke of a rate.
fn part_of_rate(row: &Confusion, typed: &Typed) -> Option<String> {
    let (top, bottom) = split(&typed.unit)?;
    let (bare, basis) = without_basis(&top);
    let (bare, was_top, was_bottom) = (normal(bare), normal(&top), normal(&bottom));
    let with = |name: &str, basis: &str| if basis.is_empty() { name.to_owned() } else { format!("{name} {basis}") };
    let (top, bottom) = match row.kind.as_str() {
        "amount" => {
            let is = [unit::MASS, unit::VOLUME].into_iter().any(|table| is_same(table, &bare, &row.from));
            (is && is_a_rate(&row.to, &was_bottom)).then(|| (with(&row.to, basis), bottom))?
        }
        "basis" => (row.from == basis).then(|| (with(&bare, &row.to), bottom))?,
        "per" => {
            let is = is_per(&was_bottom, &row.from) && is_a_rate(&bare, &normal(&row.to));
            is.then(|| (top, row.to.clone()))?
        }
        _ => return None,
    };
    let text = format!("{} {top}/{bottom}", typed.number);
    (normal(&top) != was_top || normal(&bottom) != was_bottom).then_some(text)
}

/// What stands above and below the stroke, as typed; "gpa" is gallons over acres.
fn split(unit: &str) -> Option<(String, String)> {
    if normal(unit) == "gpa" {
        return Some(("gal".to_owned(), "ac".to_owned()));
    }
    if unit.contains('%') {
        return None;
    }
    let own = |(top, bottom): (&str, &str)| (top.trim().to_owned(), bottom.trim().to_owned());
    unit.split_once('/').map(own).or_else(|| unit.split_once(" per ").map(own))
}

/// Whether what stands below a stroke is so much of a unit.
fn is_per(typed: &str, row: &str) -> bool {
    let parts = |text: &str| {
        let (count, rest) = crate::quantity::number::take(text).map_or((1.0, text), |(count, rest)| (count, rest));
        (count, compound(rest.trim()))
    };
    let ((count, name), (of_row, name_of_row)) = (parts(typed), parts(row));
    let name = if name == "a" { "ac".to_owned() } else { name };
    (count - of_row).abs() < 1e-9 && name == name_of_row
}

/// Whether anyone writes such a rate: nobody sprays pints to the hectare, or litres in a hundred gallons.
fn is_a_rate(top: &str, bottom: &str) -> bool {
    let (top, bottom) = (compound(&normal(top)), normal(bottom));
    let (_, per) = crate::quantity::number::take(&bottom).map_or((1.0, bottom.as_str()), |(count, rest)| (count, rest));
    match per.trim() {
        "ha" | "hectare" | "l" => is_metric(&top),
        "gal" | "imp gal" => !is_metric(&top),
        _ => true,
    }
}

#[cfg(test)]
mod tests {
    use super::{Kind, meant, table};
    use crate::quantity::{Area, Concentration, Hardness, IonContent, Rate, Temperature, Units};

    fn texts<Q: crate::quantity::Quantity>(kind: Kind, text: &str) -> Vec<String> {
        meant::<Q>(kind, text, Units::UsCustomary).into_iter().map(|meant| meant.text).collect()
    }

    #[test]
    fn the_table_reads() {
        assert!(table().len() > 100);
    }

    #[test]
    fn the_notation_of_the_typed_text_is_kept() {
        for (text, wanted) in [
            ("22 pt/ac", "22 fl oz/ac"),
            ("22 pts. per acre", "22 fl oz/acre"),
            ("2 1/2 qt/A", "2 1/2 pt/A"),
            ("0,75 lb ai/ac", "0,75 lb ae/ac"),
            ("17 lb/ac", "17 lb/100 gal"),
            ("25 % v/v", "0.25 % v/v"),
            ("2,5 L/ha", "0,25 L/ha"),
            ("1500 L/ha", "1500 mL/ha"),
            ("1/2 lb ae/ac", "1/2 oz ae/ac"),
        ] {
            let all = texts::<Rate>(Kind::Rate, text);
            assert!(all.iter().any(|one| one == wanted), "{text}: {all:?}");
        }
        assert!(texts::<Area>(Kind::Area, "30 ha").contains(&"30 ac".to_owned()));
        assert!(texts::<Concentration>(Kind::Content, "4.5 lbs ae/gallon").contains(&"4.5 g ae/L".to_owned()));
        assert!(texts::<Concentration>(Kind::Content, "54 % w/w").contains(&"54 % w/v".to_owned()));
        assert!(texts::<Hardness>(Kind::Hardness, "20 mg/L").contains(&"20 gpg".to_owned()));
        assert!(texts::<IonContent>(Kind::Calcium, "295 mg/L").contains(&"118 mg/L".to_owned()));
        assert!(texts::<Temperature>(Kind::Temperature, "68 °C").contains(&"68 °F".to_owned()));
    }

    #[test]
    fn what_nobody_writes_is_not_offered() {
        let all = texts::<Rate>(Kind::Rate, "22 fl oz/ac");
        assert!(!all.iter().any(|text| text.contains("fl oz/ha") || text.contains("imp")), "{all:?}");
    }
}
