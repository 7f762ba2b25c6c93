//! What counts as one application of a field.

use std::collections::HashMap;

use jiff::civil::Date;

use crate::farm::{Farm, Field, Id, Record};
use crate::quantity::{Area, Share};

/// Records hold six digits.
const DIGITS: f64 = 1e-5;

/// How much of a field a record drove over: in bands the ground between them with it; `None` where it was not on the field.
pub(crate) fn driven_over(farm: &Farm, record: &Record, field: &Id) -> Option<Area> {
    let pass = record.pass.as_ref().and_then(|pass| farm.passes.get(pass));
    let bands = pass.and_then(|pass| crate::rig::in_bands(farm, pass)).map_or(1.0, Share::to_fraction);
    Some(record.fields.get(field)?.area.value() * (1.0 / bands))
}

/// Whether a pass covers so much of a field.
fn fits_pass(farm: &Farm, pass: &str, field: &str, ground: Area) -> bool {
    let covers = || Some(crate::ground::covers(farm, farm.passes.get(pass)?, field, farm.fields.get(field)?));
    covers().is_some_and(|covers| !ground.exceeds(covers * (1.0 + DIGITS)))
}

/// How many days apart loads of one pass on a field still count as parts of one application, where the records do not say which part
/// each sprayed. Common practice, no source: weather stops a pass for a day or two, and what comes later is sprayed anew.
const DAYS_APART: i32 = 3;

/// An application of a field, while its records come in. Parts of one, which lie on different ground of the field, stand
/// together, and so do records of one pass as long as they cover no more than it does, unless they name the same part, or lie
/// more than [`DAYS_APART`] days from one another without naming parts that differ. What is recorded of one pass twice, or of
/// more ground than the field has, is an application each time; so is a record of no pass.
#[derive(Clone, Debug)]
struct Application<'a> {
    /// The first part of it; `None` for a record of no pass.
    first: Option<&'a str>,
    /// How much of the field was driven over by the records of each pass.
    passes: Vec<(&'a str, Area)>,
    /// Pass, day and part of each of its records.
    seen: Vec<(&'a str, Date, &'a str)>,
}

impl<'a> Application<'a> {
    /// Of its first record.
    fn of(farm: &'a Farm, field: &str, record: &'a Record, ground: Area) -> Self {
        let pass = record.pass.as_deref();
        Self {
            first: pass.map(|pass| farm.first_part(pass)),
            passes: pass.map(|pass| (pass, ground)).into_iter().collect(),
            seen: pass.map(|pass| (pass, record.date, part(record, field))).into_iter().collect(),
        }
    }

    /// Takes another record of the field in, and says whether it belongs here.
    fn takes(&mut self, farm: &'a Farm, field: &str, record: &'a Record, ground: Area) -> bool {
        let Some(pass) = record.pass.as_deref().filter(|pass| self.first == Some(farm.first_part(pass))) else {
            return false;
        };
        let (day, part) = (record.date, part(record, field));
        let beside = |(own, seen, other): &(&str, Date, &str)| {
            let differ = !part.is_empty() && !other.is_empty() && !part.eq_ignore_ascii_case(other);
            let same = !part.is_empty() && part.eq_ignore_ascii_case(other);
            differ || (!same && (*own != pass || (day - *seen).get_days().abs() <= DAYS_APART))
        };
        let all = self.passes.iter().map(|(_, ground)| *ground).sum::<Area>() + ground;
        let same = self.passes.iter_mut().find(|(own, _)| *own == pass);
        let with_same = same.as_ref().map(|(_, before)| *before + ground);
        if with_same.is_some_and(|ground| !fits_pass(farm, pass, field, ground))
            || all.exceeds(there(farm, field) * (1.0 + DIGITS))
            || !self.seen.iter().all(beside)
        {
            return false;
        }
        match (same, with_same) {
            (Some((_, sum)), Some(ground)) => *sum = ground,
            _ => self.passes.push((pass, ground)),
        }
        self.seen.push((pass, day, part));
        true
    }

    /// Whether no more ground of the field is left for it.
    fn is_full(&self, farm: &Farm, field: &str) -> bool {
        let all: Area = self.passes.iter().map(|(_, ground)| *ground).sum();
        !(there(farm, field) * (1.0 - DIGITS)).exceeds(all)
    }
}

fn there(farm: &Farm, field: &str) -> Area {
    farm.fields.get(field).map_or(Area::ZERO, Field::ground)
}

/// Which part of a field a record names.
fn part<'a>(record: &'a Record, field: &str) -> &'a str {
    record.fields.get(field).map_or("", |then| then.part.trim())
}

/// The applications of a field that may take more of its records, by their first part, while these come in. Full ones are left out,
/// so that thousands of records of one pass stay quick.
#[derive(Clone, Debug, Default)]
pub(super) struct Applications<'a> {
    open: HashMap<&'a str, Vec<(Application<'a>, usize)>>,
}

impl<'a> Applications<'a> {
    /// The number of the application to which the next record of the field belongs; `new` where it begins one.
    pub(super) fn number(
        &mut self,
        farm: &'a Farm,
        field: &str,
        record: &'a Record,
        ground: Area,
        new: usize,
    ) -> usize {
        let Some(pass) = record.pass.as_deref() else { return new };
        let open = self.open.entry(farm.first_part(pass)).or_default();
        let at = open.iter_mut().position(|(known, _)| known.takes(farm, field, record, ground)).unwrap_or_else(|| {
            open.push((Application::of(farm, field, record, ground), new));
            open.len() - 1
        });
        let Some((known, number)) = open.get(at) else { return new };
        let number = *number;
        if known.is_full(farm, field) {
            open.remove(at);
        }
        number
    }
}

/// The records of a field by [`Application`].
pub(crate) fn by_application<'a>(
    farm: &'a Farm,
    field: &Id,
    records: impl Iterator<Item = &'a Record>,
) -> Vec<Vec<&'a Record>> {
    let mut applications = Applications::default();
    let mut all: Vec<Vec<&'a Record>> = Vec::new();
    for record in records {
        let ground = driven_over(farm, record, field).unwrap_or(Area::ZERO);
        let at = applications.number(farm, field, record, ground, all.len());
        match all.get_mut(at) {
            Some(parts) => parts.push(record),
            None => all.push(vec![record]),
        }
    }
    all
}

#[cfg(test)]
mod tests {
    use super::by_application;
    use crate::farm::{Farm, Field, Pass, Record, RecordField};
    use crate::quantity::AsTyped;
    use jiff::civil::{Date, date};

    fn applications(records: &[(Date, &str, &str)]) -> usize {
        let mut farm = Farm::new("Test");
        farm.fields.insert("mill".to_owned(), Field::new("Mill field", AsTyped::parse("80 ac").unwrap()));
        let mut pass = Pass::new("Post", date(2031, 6, 1));
        pass.fields.push("mill".to_owned());
        farm.passes.insert("post".to_owned(), pass);
        for (day, area, part) in records {
            let mut record = Record::new("Post", *day);
            record.pass = Some("post".into());
            let then =
                RecordField { part: (*part).into(), ..RecordField::new("Mill field", AsTyped::parse(area).unwrap()) };
            record.fields.insert("mill".to_owned(), then);
            farm.records.insert(format!("{}", farm.records.len()), record);
        }
        by_application(&farm, &"mill".to_owned(), farm.records.values()).len()
    }

    #[test]
    fn only_different_ground_is_one_application() {
        let day = |day| date(2031, 6, day);
        assert_eq!(applications(&[(day(1), "40 ac", ""), (day(2), "40 ac", "")]), 1);
        assert_eq!(applications(&[(day(1), "80 ac", ""), (day(2), "80 ac", "")]), 2);
        // The same half twice is two, however little ground it is, and so is a patch sprayed again a month later.
        assert_eq!(applications(&[(day(1), "40 ac", "north half"), (day(1), "40 ac", "North half")]), 2);
        assert_eq!(applications(&[(day(1), "20 ac", ""), (day(30), "20 ac", "")]), 2);
        assert_eq!(applications(&[(day(1), "40 ac", "north half"), (day(9), "40 ac", "south half")]), 1);
        assert_eq!(
            applications(&[(day(1), "20 ac", "spot"), (day(9), "20 ac", "spot"), (day(20), "20 ac", "spot")]),
            3
        );
    }
}
