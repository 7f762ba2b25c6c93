//! What the columns of a spreadsheet hold: guessed by their headings and their first lines, for a person to look at.

use std::collections::BTreeMap;

use tankard_core::quantity::{Amount, Quantity, Rate};

use super::Table;
use super::day::{DayOrder, Written};
use super::figure::{Comma, Seen};
use super::ground::{self, Ground};
use super::holds::{Holds, of_words};

/// So many texts of a column are looked at to see what it holds.
const SAMPLE: usize = 50;

/// What is taken of a column.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Take {
    /// The place of the column, from 0.
    pub column: usize,
    /// What it holds.
    pub holds: Holds,
    /// The unit of figures without one; empty where none is known.
    pub unit: String,
}

/// How a spreadsheet is read.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Mapping {
    /// The columns that are taken; each thing is held by one column at most.
    pub takes: Vec<Take>,
    /// How days with strokes are written; none where it is not known.
    pub days: Option<DayOrder>,
    /// What a comma in a figure means; none where it is not known.
    pub comma: Option<Comma>,
    /// Whether records are taken too that look like one in the log.
    pub alike: bool,
    /// Columns of which the heading says that they are over ground, with what goes behind the unit of an amount.
    over: BTreeMap<usize, &'static str>,
    /// Columns of which the heading may mean the amount or the rate.
    pub(super) doubtful: Vec<usize>,
}

impl Mapping {
    /// The column that holds something.
    pub fn of(&self, holds: Holds) -> Option<&Take> {
        self.takes.iter().find(|take| take.holds == holds)
    }

    /// What goes behind the unit of an amount in a column over ground: "/ac"; none where its heading does not say so.
    pub(super) fn over(&self, column: usize) -> Option<&'static str> {
        self.over.get(&column).copied()
    }

    /// Takes a column for something, and from whatever held it before; for nothing where `holds` is none.
    pub fn take(&mut self, column: usize, holds: Option<Holds>, unit: &str) {
        self.takes.retain(|take| take.column != column && Some(take.holds) != holds);
        if let Some(holds) = holds {
            self.takes.push(Take { column, holds, unit: unit.to_owned() });
            self.takes.sort_by_key(|take| take.column);
        }
    }
}

/// What the columns of a table seem to hold.
pub fn guess(table: &Table) -> Mapping {
    let mut mapping = Mapping::default();
    for (column, heading) in table.header.iter().enumerate() {
        let ground = ground::of(heading);
        if let Ground::Over(over) = ground {
            mapping.over.insert(column, over);
        }
        let Some((holds, unit)) = of_heading(heading, table.first(column, 20).any(is_day)) else {
            // "L/ha" alone: of product, or of water.
            if Holds::Rate.is_unit(heading) {
                mapping.doubtful.push(column);
            }
            continue;
        };
        // "Amount acre", "Amount per tank": no total, or it may be one.
        if holds == Holds::Amount && ground == Ground::Doubtful {
            mapping.doubtful.push(column);
            continue;
        }
        if mapping.of(holds).is_none() {
            mapping.take(column, Some(holds), &unit);
        }
    }
    // "Unit" alone is that of the figure before it.
    if let Some(unit) = mapping.of(Holds::AmountUnit).map(|take| take.column) {
        let before = mapping.takes.iter().rev().find(|take| take.column < unit && take.holds.unit_column().is_some());
        let own = before.and_then(|take| take.holds.unit_column());
        if let Some(own) = own.filter(|own| mapping.of(*own).is_none()) {
            mapping.take(unit, Some(own), "");
        }
    }
    amount_or_rate(table, &mut mapping);
    guess_marks(table, &mut mapping);
    mapping
}

/// An amount is a rate where its cells, or those of its units, say so.
fn amount_or_rate(table: &Table, mapping: &mut Mapping) {
    let Some(amount) = mapping.of(Holds::Amount).filter(|take| take.unit.is_empty()).map(|take| take.column) else {
        return;
    };
    let unit = mapping.of(Holds::AmountUnit).map(|take| take.column);
    let (mut over, mut whole) = (false, false);
    let units = unit.into_iter().flat_map(|unit| table.first(unit, SAMPLE)).map(|unit| format!("1 {unit}"));
    for text in table.first(amount, SAMPLE).map(str::to_owned).chain(units) {
        if Amount::parse(&text).is_ok() {
            whole = true;
        } else if Rate::parse(&text).is_ok() {
            over = true;
        }
    }
    if !over {
        return;
    }
    if whole || mapping.of(Holds::Rate).is_some() {
        mapping.take(amount, None, "");
        mapping.doubtful.push(amount);
    } else {
        mapping.take(amount, Some(Holds::Rate), "");
        if let Some(unit) = unit {
            mapping.take(unit, Some(Holds::RateUnit), "");
        }
    }
}

/// How days and figures of the columns taken are written.
pub fn guess_marks(table: &Table, mapping: &mut Mapping) {
    // Where days tell neither order, or both, a person has to say.
    mapping.days = mapping
        .of(Holds::Date)
        .and_then(|take| DayOrder::told_by(table.rows.iter().filter_map(|row| Written::of(row.cell(take.column)))));
    mapping.comma = Seen::of(&table.rows, mapping).comma();
}

fn is_day(cell: &str) -> bool {
    Written::of(cell).is_some()
}

/// What a heading says, and the unit in it.
fn of_heading(heading: &str, has_days: bool) -> Option<(Holds, String)> {
    let plain = heading.replace('_', " ");
    let (words, in_brackets) = split_unit(&plain);
    let holds = of_words(words).or_else(|| {
        // A heading that is nothing but a unit, such as "psi".
        let bare = [Holds::Area, Holds::Carrier, Holds::Pressure].into_iter().find(|holds| holds.is_unit(words));
        bare.or_else(|| (has_days && words.starts_with("column ")).then_some(Holds::Date))
    })?;
    let unit = |holds: Holds| {
        if let Some(unit) = in_brackets.filter(|unit| holds.is_unit(unit)) {
            return Some(unit.to_owned());
        }
        let parts: Vec<&str> = words.split([' ', ',']).filter(|part| !part.is_empty()).collect();
        (0..parts.len())
            .find_map(|from| parts.get(from..).map(|rest| rest.join(" ")).filter(|rest| holds.is_unit(rest)))
    };
    // Over ground, the unit of an amount is half of that of a rate.
    if let Ground::Over(over) = ground::of(heading)
        && let Some((kept, whole)) = over_ground(holds, words)
    {
        let own =
            unit(kept).or_else(|| unit(whole).map(|unit| format!("{unit}{over}")).filter(|unit| kept.is_unit(unit)));
        return Some((kept, own.map(|unit| kept.offered(&unit)).unwrap_or_default()));
    }
    let holds = match holds {
        // A heading that speaks of ground and is not that of an area: of product or of water, nobody knows.
        Holds::Area if matches!(ground::of(heading), Ground::Over(_)) && !is_area(words) => return None,
        Holds::AreaUnit if matches!(ground::of(heading), Ground::Over(_)) => Holds::RateUnit,
        // Water over ground, or as a whole, is told by the unit alone.
        Holds::Volume | Holds::Water | Holds::Carrier => {
            if unit(Holds::Carrier).is_some() {
                Holds::Carrier
            } else if unit(Holds::Volume).is_some() && holds != Holds::Carrier {
                Holds::Volume
            } else {
                holds
            }
        }
        // "Total (fl oz/ac)" is a rate; a rate without its ground waits for a unit and is never an amount.
        Holds::Amount if unit(Holds::Amount).is_none() && unit(Holds::Rate).is_some() => Holds::Rate,
        holds => holds,
    };
    Some((holds, unit(holds).map(|unit| holds.offered(&unit)).unwrap_or_default()))
}

/// What something over ground is, and what it would be as a whole.
fn over_ground(holds: Holds, words: &str) -> Option<(Holds, Holds)> {
    match holds {
        Holds::Rate | Holds::Amount => Some((Holds::Rate, Holds::Amount)),
        Holds::Volume | Holds::Water | Holds::Carrier => Some((Holds::Carrier, Holds::Volume)),
        // "Total per acre", "Water/ac": the ground is not what it is.
        Holds::Area => {
            of_words(before_ground(words)).filter(|own| *own != Holds::Area).and_then(|own| over_ground(own, ""))
        }
        _ => None,
    }
}

/// Whether a heading is that of an area without the ground in it: "Area/ha".
fn is_area(words: &str) -> bool {
    of_words(before_ground(words)) == Some(Holds::Area)
}

/// The words before what a heading is over.
fn before_ground(words: &str) -> &str {
    let lower = words.to_lowercase();
    let at = ["/", " per ", " je ", " pro ", " par ", " por ", " ac-1", " acre-1", " ha-1", " ha⁻¹", " ac⁻¹", " ha^-1"]
        .into_iter()
        .filter_map(|per| lower.find(per))
        .min();
    // Small letters may be of another length.
    at.and_then(|at| words.get(..at)).unwrap_or(words)
}

/// What stands before brackets, and in them.
fn split_unit(heading: &str) -> (&str, Option<&str>) {
    for (open, close) in [('(', ')'), ('[', ']')] {
        if let Some((before, rest)) = heading.split_once(open)
            && let Some((inside, _)) = rest.rsplit_once(close)
        {
            return (before.trim(), Some(inside.trim()));
        }
    }
    (heading.trim(), None)
}

#[cfg(test)]
mod tests {
    use super::{Holds, of_heading};

    #[test]
    fn headings_as_people_write_them() {
        for (heading, holds, unit) in [
            ("Date", Holds::Date, ""),
            ("Application date", Holds::Date, ""),
            ("Rate (fl oz/ac)", Holds::Rate, "fl oz/ac"),
            ("Rate, L/ha", Holds::Rate, "L/ha"),
            ("Total product (gal)", Holds::Amount, "gal"),
            ("Product name", Holds::Product, ""),
            ("Acres", Holds::Area, "ac"),
            ("Treated area [ha]", Holds::Area, "ha"),
            ("area_ha", Holds::Area, "ha"),
            ("Total acres", Holds::Area, "ac"),
            ("Wind speed (mph)", Holds::Wind, "mph"),
            ("Wind direction", Holds::WindFrom, ""),
            ("Applicator license", Holds::Certificate, ""),
            ("Applicator", Holds::Operator, ""),
            ("GPA", Holds::Carrier, "gal/ac"),
            ("Rate (oz/ac)", Holds::Rate, "oz/ac"),
            ("Water (gal/ac)", Holds::Carrier, "gal/ac"),
            ("Water", Holds::Water, ""),
            ("Spray volume (L)", Holds::Volume, "L"),
            ("Growth stage", Holds::Stage, ""),
            ("EPA Reg. No.", Holds::Registration, ""),
            ("Start time", Holds::Start, ""),
            ("End time", Holds::End, ""),
            ("Temp °C", Holds::Temperature, "°C"),
            ("Fläche (ha)", Holds::Area, "ha"),
            ("Aufwandmenge (L/ha)", Holds::Rate, "L/ha"),
            ("Datum", Holds::Date, ""),
            ("Field name", Holds::Field, ""),
            ("Unit", Holds::AmountUnit, ""),
            ("Rate unit", Holds::RateUnit, ""),
            ("Remarks", Holds::Note, ""),
            ("psi", Holds::Pressure, "psi"),
            // Over ground: never a total.
            ("Amount per acre (pt)", Holds::Rate, "pt/ac"),
            ("Amount/ac", Holds::Rate, ""),
            ("Amount/acre (fl oz)", Holds::Rate, "fl oz/ac"),
            ("Menge je ha (L)", Holds::Rate, "L/ha"),
            ("Menge l/ha", Holds::Rate, "L/ha"),
            ("Total per acre (pt)", Holds::Rate, "pt/ac"),
            ("Dose (L)", Holds::Rate, ""),
            ("Rate (gal)", Holds::Rate, ""),
            ("Amount rate", Holds::Rate, ""),
            ("Volume per ha (L)", Holds::Carrier, "L/ha"),
            ("Water per acre (gal)", Holds::Carrier, "gal/ac"),
            ("Fläche/ha", Holds::Area, ""),
            ("Water ha-1 (L)", Holds::Carrier, "L/ha"),
            ("Amount (pt)", Holds::Amount, "pt"),
        ] {
            assert_eq!(of_heading(heading, false), Some((holds, unit.to_owned())), "{heading}");
        }
        for heading in [
            "Harvest date",
            "Price",
            "REI (h)",
            "Cost/ac",
            "pt/ac",
            "L ha-1",
            "Product per acre",
            "xyz",
            "column 3",
            "",
        ] {
            assert_eq!(of_heading(heading, false), None, "{heading}");
        }
    }
}
