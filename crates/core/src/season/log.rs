//! Which records lie on a field, and which are of a pass: looked up once for the many questions of a plan.

use rustc_hash::{FxHashMap, FxHashSet};

use jiff::civil::Date;

use super::portion::{Unrecorded, after};
use crate::farm::{Farm, Id, Record};

/// The places of a farm's records by field and by pass. It holds for the state of the farm that it was made of, and is made anew
/// when records change.
///
/// # Examples
/// ```
/// use tankard_core::farm::Farm;
/// use tankard_core::season::Log;
/// assert!(!Log::of(&Farm::new("Test")).is_recorded("burndown"));
/// ```
#[derive(Clone, Debug, Default)]
pub struct Log {
    by_field: FxHashMap<Id, Vec<usize>>,
    by_pass: FxHashMap<Id, Vec<usize>>,
    /// Passes of which the records cover the ground.
    covered: FxHashSet<Id>,
    last: Option<Date>,
    last_on: FxHashMap<Id, Date>,
}

impl Log {
    /// Looks at each record once.
    pub fn of(farm: &Farm) -> Self {
        let mut log = Self::default();
        for (place, record) in farm.records.values().enumerate() {
            log.last = log.last.max(Some(record.date));
            for field in record.fields.keys() {
                put(&mut log.by_field, field, place);
            }
            if let Some(pass) = &record.pass {
                put(&mut log.by_pass, pass, place);
            }
        }
        let last_on = |field: &Id| log.on_field(farm, field).map(|(_, record)| record.date).max();
        log.last_on = log.by_field.keys().filter_map(|field| Some((field.clone(), last_on(field)?))).collect();
        let covered = |pass: &&Id| after(farm, pass, log.of_pass(farm, pass)).is_none();
        log.covered = log.by_pass.keys().filter(covered).cloned().collect();
        log
    }

    /// The places of the records of a field, in the order of the farm.
    pub(crate) fn places(&self, field: &str) -> &[usize] {
        self.by_field.get(field).map_or(&[], Vec::as_slice)
    }

    /// The records of a field, in the order of the farm.
    pub fn on_field<'a>(&'a self, farm: &'a Farm, field: &str) -> impl Iterator<Item = (&'a Id, &'a Record)> + use<'a> {
        self.places(field).iter().filter_map(|place| farm.records.get_index(*place))
    }

    /// The records of a pass, in the order of the farm.
    pub fn of_pass<'a>(&'a self, farm: &'a Farm, pass: &str) -> impl Iterator<Item = &'a Record> + use<'a> {
        let places = self.by_pass.get(pass).map_or(&[][..], Vec::as_slice);
        places.iter().filter_map(|place| farm.records.get_index(*place)).map(|(_, record)| record)
    }

    /// The day of the last record.
    pub const fn last_day(&self) -> Option<Date> {
        self.last
    }

    /// The day of the last record of a field.
    pub fn last_on(&self, field: &str) -> Option<Date> {
        self.last_on.get(field).copied()
    }

    /// Whether a pass has been recorded as sprayed: its records cover its ground.
    pub fn is_recorded(&self, pass: &str) -> bool {
        self.covered.contains(pass)
    }

    /// Whether a pass has a record, of all its ground or of some.
    pub fn has_record(&self, pass: &str) -> bool {
        self.by_pass.contains_key(pass)
    }

    /// What the records of a pass leave of it; `None` where they cover it.
    pub fn unrecorded(&self, farm: &Farm, pass: &str) -> Option<Unrecorded> {
        if self.is_recorded(pass) { None } else { after(farm, pass, self.of_pass(farm, pass)) }
    }

    /// Whether any of a pass is still to be recorded on some fields.
    pub(crate) fn is_open(&self, farm: &Farm, pass: &str, fields: &[Id]) -> bool {
        // What a pass without a record covers need not be known.
        if self.of_pass(farm, pass).next().is_none() {
            return true;
        }
        let left = || self.unrecorded(farm, pass);
        left().is_some_and(|left| !left.partly || fields.iter().any(|field| left.is_on(field)))
    }
}

fn put(map: &mut FxHashMap<Id, Vec<usize>>, key: &Id, place: usize) {
    match map.get_mut(key) {
        Some(places) => places.push(place),
        None => {
            map.insert(key.clone(), vec![place]);
        }
    }
}

#[cfg(test)]
mod tests {
    use super::Log;
    use crate::farm::{Farm, Record, RecordField};
    use crate::quantity::AsTyped;
    use jiff::civil::date;

    #[test]
    fn it_finds_what_a_walk_over_all_records_finds() {
        let mut farm = Farm::new("Test");
        for (name, day, pass, fields) in [
            ("a", 2, Some("post"), vec!["hill", "mill"]),
            ("b", 4, None, vec!["mill"]),
            ("c", 1, Some("post"), vec!["hill"]),
        ] {
            let mut record = Record::new(name, date(2031, 6, day));
            record.pass = pass.map(str::to_owned);
            for field in fields {
                record.fields.insert(field.to_owned(), RecordField::new(field, AsTyped::parse("80 ac").unwrap()));
            }
            farm.records.insert(name.to_owned(), record);
        }
        let log = Log::of(&farm);
        let on = |field| log.on_field(&farm, field).map(|(id, _)| id.as_str()).collect::<Vec<_>>();
        assert_eq!((on("hill"), on("mill"), on("barn")), (vec!["a", "c"], vec!["a", "b"], Vec::new()));
        let of: Vec<&str> = log.of_pass(&farm, "post").map(|record| record.name.as_str()).collect();
        assert_eq!(of, ["a", "c"]);
        assert_eq!(log.last_day(), Some(date(2031, 6, 4)));
        let last_on = |field| log.last_on(field).map(jiff::civil::Date::day);
        assert_eq!((last_on("hill"), last_on("mill"), last_on("barn")), (Some(2), Some(4), None));
        assert!(log.is_recorded("post") && !log.is_recorded("burndown"));
    }
}
