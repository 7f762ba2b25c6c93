//! Which records lie on a field, and which are of a pass: looked up once for the many questions of a plan.

use std::sync::OnceLock;

use rustc_hash::FxHashMap;

use jiff::civil::Date;

use super::portion::{Unrecorded, after};
use crate::farm::{Farm, Id, Nouns, Record};
use crate::stock::kept::{Kept, takes_alike};

/// The places of a farm's records by field, by pass and by product. It holds for the state of the farm that it was made of; a later
/// state is caught up with at the cost of what changed.
///
/// # Examples
/// ```
/// use tankard_core::farm::Farm;
/// use tankard_core::season::Log;
/// let farm = Farm::new("Test");
/// assert!(!Log::of(&farm).is_recorded(&farm, "burndown"));
/// ```
#[derive(Clone, Debug, Default)]
pub struct Log {
    /// The records that it was made of, which tell what changed since.
    records: Nouns<Record>,
    by_field: FxHashMap<Id, Vec<u32>>,
    by_product: FxHashMap<Id, Vec<u32>>,
    by_pass: FxHashMap<Id, OfPass>,
    /// By the name of the rig, in small letters.
    by_rig: FxHashMap<String, Vec<u32>>,
    /// The day of each record, beside one another, so that most questions need not look at the record.
    dates: Vec<Date>,
    last: Option<Date>,
    /// Accounts of products that follow from these records.
    kept: Kept,
}

#[derive(Clone, Debug, Default)]
struct OfPass {
    places: Vec<u32>,
    /// Whether the records cover the pass, once that was asked.
    covered: OnceLock<bool>,
}

impl Log {
    /// Looks at each record once.
    pub fn of(farm: &Farm) -> Self {
        let mut log = Self::default();
        log.add(farm, 0);
        log
    }

    /// Makes it hold for a later state of the farm, or for any other: what did not change is not looked at.
    pub fn catch_up(&mut self, farm: &Farm) {
        // Whether a pass is covered hangs on its ground, too.
        for of_pass in self.by_pass.values_mut().filter(|of_pass| of_pass.covered.get().is_some()) {
            of_pass.covered = OnceLock::new();
        }
        if self.records.is_same(&farm.records) {
            return;
        }
        let before = std::mem::take(&mut self.records);
        let Some(changed) = before.changed_in(&farm.records) else {
            *self = Self::of(farm);
            return;
        };
        for place in changed {
            let (Some((_, was)), Some((_, is))) = (before.get_index(place), farm.records.get_index(place)) else {
                continue;
            };
            if !takes_alike(was, is) {
                self.forget(&before, was);
                self.forget(&before, is);
            }
            if !is_found_alike(was, is) {
                self.take_out(was, place);
                self.put(is, place);
            }
        }
        for record in farm.records.values().skip(before.len()) {
            self.forget(&before, record);
        }
        self.add(farm, before.len());
    }

    /// Lets go the accounts that a record bears on: of its own products, and of those of its pass's other records, since what was left over
    /// of them may have gone out with it.
    fn forget(&mut self, records: &Nouns<Record>, record: &Record) {
        self.kept.forget(record);
        let of_pass = record.pass.as_ref().and_then(|pass| self.by_pass.get(pass.as_str()));
        for place in as_places(of_pass.map(|of_pass| of_pass.places.as_slice())) {
            if let Some((_, other)) = records.get_index(place) {
                self.kept.forget(other);
            }
        }
    }

    /// The accounts kept for the records of a farm; `None` where it has others than those that this was made of.
    pub(crate) fn kept(&self, farm: &Farm) -> Option<&Kept> {
        self.records.is_same(&farm.records).then_some(&self.kept)
    }

    /// Takes up the records from a place on.
    fn add(&mut self, farm: &Farm, from: usize) {
        for (place, record) in farm.records.values().enumerate().skip(from) {
            self.put(record, place);
        }
        self.last = self.dates.iter().max().copied();
        self.records = farm.records.clone();
    }

    fn put(&mut self, record: &Record, place: usize) {
        match self.dates.get_mut(place) {
            Some(date) => *date = record.date,
            None => self.dates.push(record.date),
        }
        // A farm with more records than that fits into no memory.
        let place = u32::try_from(place).unwrap_or(u32::MAX);
        for field in record.fields.keys() {
            put(&mut self.by_field, field, |places| places, place);
        }
        for line in &record.lines {
            put(&mut self.by_product, &line.product, |places| places, place);
        }
        if let Some(pass) = &record.pass {
            put(&mut self.by_pass, pass, |of_pass| &mut of_pass.places, place);
        }
        if let Some(rig) = plain(&record.rig) {
            put(&mut self.by_rig, &rig, |places| places, place);
        }
    }

    fn take_out(&mut self, record: &Record, place: usize) {
        let place = u32::try_from(place).unwrap_or(u32::MAX);
        let keep = |places: &mut Vec<u32>| places.retain(|other| *other != place);
        for field in record.fields.keys() {
            self.by_field.get_mut(field).into_iter().for_each(keep);
        }
        for line in &record.lines {
            self.by_product.get_mut(line.product.as_str()).into_iter().for_each(keep);
        }
        if let Some(rig) = plain(&record.rig) {
            self.by_rig.get_mut(&rig).into_iter().for_each(keep);
        }
        if let Some(pass) = &record.pass {
            if let Some(of_pass) = self.by_pass.get_mut(pass.as_str()) {
                keep(&mut of_pass.places);
            }
            self.by_pass.retain(|_, of_pass| !of_pass.places.is_empty());
        }
    }

    /// The places of the records of a field, in the order of the farm.
    pub(crate) fn places(
        &self,
        field: &str,
    ) -> impl ExactSizeIterator<Item = usize> + DoubleEndedIterator + Clone + '_ {
        as_places(self.by_field.get(field).map(Vec::as_slice))
    }

    /// The places of the records from a day on that hold a product, in the order of the farm.
    pub(crate) fn of_product(&self, product: &str, from: Option<Date>) -> impl Iterator<Item = usize> + '_ {
        as_places(self.by_product.get(product).map(Vec::as_slice)).filter(move |place| self.is_from(*place, from))
    }

    /// The places of the records of a pass from a day on, in the order of the farm.
    pub(crate) fn places_of_pass(&self, pass: &str, from: Option<Date>) -> impl Iterator<Item = usize> + '_ {
        let places = self.by_pass.get(pass).map(|of_pass| of_pass.places.as_slice());
        as_places(places).filter(move |place| self.is_from(*place, from))
    }

    fn is_from(&self, place: usize, from: Option<Date>) -> bool {
        from.is_none_or(|from| self.dates.get(place).is_some_and(|date| *date >= from))
    }

    /// The records of a field, in the order of the farm.
    pub fn on_field<'a>(&'a self, farm: &'a Farm, field: &str) -> impl Iterator<Item = (&'a Id, &'a Record)> + use<'a> {
        as_places(self.by_field.get(field).map(Vec::as_slice)).filter_map(|place| farm.records.get_index(place))
    }

    /// The records of a pass, in the order of the farm.
    pub fn of_pass<'a>(&'a self, farm: &'a Farm, pass: &str) -> impl Iterator<Item = &'a Record> + use<'a> {
        let places = as_places(self.by_pass.get(pass).map(|of_pass| of_pass.places.as_slice()));
        places.filter_map(|place| farm.records.get_index(place)).map(|(_, record)| record)
    }

    /// The day of the last record of a rig, by its name, up to a day.
    pub(crate) fn last_of_rig(&self, name: &str, to: Date) -> Option<Date> {
        self.places_of_rig(name).filter_map(|place| self.dates.get(place)).filter(|date| **date <= to).max().copied()
    }

    /// The records of a rig, by its name, on a day, in the order of the farm.
    pub(crate) fn of_rig_on<'a>(
        &'a self,
        farm: &'a Farm,
        name: &str,
        day: Date,
    ) -> impl Iterator<Item = &'a Record> + use<'a> {
        self.places_of_rig(name)
            .filter(move |place| self.dates.get(*place) == Some(&day))
            .filter_map(|place| farm.records.get_index(place))
            .map(|(_, record)| record)
    }

    fn places_of_rig(&self, name: &str) -> impl Iterator<Item = usize> + use<'_> {
        as_places(plain(name).and_then(|name| self.by_rig.get(&name)).map(Vec::as_slice))
    }

    /// The day of the last record.
    pub const fn last_day(&self) -> Option<Date> {
        self.last
    }

    /// The day of the last record of a field.
    pub fn last_on(&self, field: &str) -> Option<Date> {
        self.places(field).filter_map(|place| self.dates.get(place)).max().copied()
    }

    /// Whether a pass has been recorded as sprayed: its records cover its ground.
    pub fn is_recorded(&self, farm: &Farm, pass: &str) -> bool {
        let covers = || after(farm, pass, self.of_pass(farm, pass)).is_none();
        self.by_pass.get(pass).is_some_and(|of_pass| *of_pass.covered.get_or_init(covers))
    }

    /// Whether a pass has a record, of all its ground or of some.
    pub fn has_record(&self, pass: &str) -> bool {
        self.by_pass.contains_key(pass)
    }

    /// What the records of a pass leave of it; `None` where they cover it.
    pub fn unrecorded(&self, farm: &Farm, pass: &str) -> Option<Unrecorded> {
        if self.is_recorded(farm, pass) { None } else { after(farm, pass, self.of_pass(farm, pass)) }
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

/// Whether two states of a record are found by the same questions.
fn is_found_alike(was: &Record, is: &Record) -> bool {
    was.date == is.date
        && was.pass == is.pass
        && was.rig == is.rig
        && was.fields.keys().eq(is.fields.keys())
        && was.lines.iter().map(|line| &line.product).eq(is.lines.iter().map(|line| &line.product))
}

/// The name of a rig as it is looked up; `None` where none is typed.
fn plain(rig: &str) -> Option<String> {
    Some(rig.trim().to_lowercase()).filter(|name| !name.is_empty())
}

fn as_places(places: Option<&[u32]>) -> impl ExactSizeIterator<Item = usize> + DoubleEndedIterator + Clone {
    places.unwrap_or_default().iter().map(|place| usize::try_from(*place).unwrap_or(usize::MAX))
}

/// Puts a place under a key.
fn put<V: Default>(map: &mut FxHashMap<Id, V>, key: &str, places: impl Fn(&mut V) -> &mut Vec<u32>, place: u32) {
    // An entry would need an id of its own, mostly to be dropped.
    match map.get_mut(key) {
        Some(known) => among(places(known), place),
        None => among(places(map.entry(key.to_owned()).or_default()), place),
    }
}

/// Puts a place among others, in their order and once.
fn among(places: &mut Vec<u32>, place: u32) {
    if places.last().is_none_or(|last| *last < place) {
        places.push(place);
    } else if let Err(at) = places.binary_search(&place) {
        places.insert(at, place);
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
            record.pass = pass.map(Into::into);
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
        assert!(log.is_recorded(&farm, "post") && !log.is_recorded(&farm, "burndown"));
    }

    /// What a log says of a farm.
    fn told(log: &Log, farm: &Farm) -> String {
        let places = |key: &str| {
            let of_product: Vec<usize> = log.of_product(key, Some(date(2031, 6, 3))).collect();
            let of_pass: Vec<usize> = log.places_of_pass(key, None).collect();
            let covered = (log.has_record(key), log.is_recorded(farm, key));
            (log.places(key).collect::<Vec<_>>(), of_product, of_pass, covered, log.last_on(key))
        };
        format!("{:?} {:?}", log.last_day(), ["hill", "mill", "post", "burndown", "g", "m"].map(places))
    }

    /// Each edit is caught up with to what a log made anew says.
    #[test]
    fn it_catches_up_with_each_edit() {
        let record = |day: i8, pass: &str, field: &str, products: &[&str]| {
            let mut record = Record::new("r", date(2031, 6, day));
            record.pass = (!pass.is_empty()).then(|| pass.into());
            record.fields.insert(field.to_owned(), RecordField::new(field, AsTyped::parse("80 ac").unwrap()));
            let line =
                |product: &&str| crate::farm::RecordLine::new(product, product, AsTyped::parse("1 gal").unwrap());
            record.lines = products.iter().map(line).collect();
            record
        };
        let mut farm = Farm::new("Test");
        farm.fields.insert("hill".to_owned(), crate::farm::Field::new("Hill", AsTyped::parse("90 ac").unwrap()));
        for (name, day, pass, field, products) in [
            ("a", 2, "post", "hill", &["g", "m", "g"][..]),
            ("b", 4, "", "mill", &["g"]),
            ("c", 1, "post", "hill", &["m"]),
        ] {
            farm.records.insert(name.to_owned(), record(day, pass, field, products));
        }
        let mut log = Log::of(&farm);
        let edits: [fn(&mut Farm); 9] = [
            |farm| farm.records["b"].note = "windy".into(),
            |farm| farm.records["a"].date = date(2031, 6, 9),
            |farm| farm.records["c"].pass = Some("burndown".into()),
            |farm| farm.records["b"].lines.clear(),
            |farm| {
                let mut pass = crate::farm::Pass::new("Post", date(2031, 6, 2));
                pass.fields = vec!["hill".to_owned()];
                farm.passes.insert("post".to_owned(), pass);
            },
            |farm| farm.fields["hill"].area = AsTyped::parse("70 ac").unwrap(),
            |farm| {
                let copy = farm.records["a"].clone();
                farm.records.insert("d".to_owned(), copy);
            },
            |farm| farm.records.swap_indices(0, 2),
            |farm| drop(farm.records.shift_remove("a")),
        ];
        for (number, edit) in edits.into_iter().enumerate() {
            edit(&mut farm);
            log.catch_up(&farm);
            assert_eq!(told(&log, &farm), told(&Log::of(&farm), &farm), "edit {number}");
        }
    }
}
