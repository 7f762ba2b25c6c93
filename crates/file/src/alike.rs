//! Records that may be of one application: the same day, a field and a product that both have.

use std::collections::HashMap;

use jiff::civil::{Date, Time};
use tankard_core::farm::{Farm, Id, Record};
use tankard_core::t;

/// The records of a farm by day and field.
pub(crate) struct Log<'a> {
    /// A field is known by its id and by its name.
    by_field: HashMap<(Date, String), Vec<(&'a Id, &'a Record)>>,
}

impl<'a> Log<'a> {
    pub(crate) fn of(farm: &'a Farm) -> Self {
        let mut by_field: HashMap<(Date, String), Vec<(&Id, &Record)>> = HashMap::new();
        for (id, record) in &farm.records {
            for key in fields(record) {
                by_field.entry((record.date, key)).or_default().push((id, record));
            }
        }
        Self { by_field }
    }

    /// The first that a record looks like.
    pub(crate) fn like(&self, record: &Record) -> Option<&'a Record> {
        let own: Vec<String> = products(record).collect();
        fields(record)
            .filter_map(|field| self.by_field.get(&(record.date, field)))
            .flatten()
            .map(|(_, other)| *other)
            .find(|other| products(other).any(|product| own.contains(&product)))
    }

    /// The last that is known again as a record: it has the day, start, fields, and products with amounts.
    pub(crate) fn same(&self, record: &Record) -> Option<&'a Id> {
        let own = known(record);
        // The name is the last key of a field.
        let there = self.by_field.get(&(record.date, fields(record).last()?))?;
        there.iter().rev().find(|(_, other)| known(other) == own).map(|(id, _)| *id)
    }
}

/// What a record is known again by, within a day: start, fields, and products with amounts.
type Known = (Option<Time>, Vec<String>, Vec<(String, String)>);

fn known(record: &Record) -> Known {
    let fields = record.fields.values().map(|field| field.name.to_lowercase()).collect();
    let mut lines: Vec<(String, String)> =
        record.lines.iter().map(|line| (line.name.to_lowercase(), line.amount.text().to_owned())).collect();
    lines.sort();
    (record.start, fields, lines)
}

/// How a record that another looks like is named.
pub(crate) fn named(record: &Record) -> String {
    t!("file-of", name = record.name, date = record.date)
}

fn fields(record: &Record) -> impl Iterator<Item = String> {
    record.fields.iter().flat_map(|(id, field)| keys(id, &field.name))
}

fn products(record: &Record) -> impl Iterator<Item = String> {
    record.lines.iter().flat_map(|line| keys(&line.product, &line.name))
}

/// By id and by name, which are not taken for one another; an empty one is none.
fn keys(id: &str, name: &str) -> impl Iterator<Item = String> + use<> {
    let name = name.trim().to_lowercase();
    let id = (!id.is_empty()).then(|| format!("#{id}"));
    id.into_iter().chain((!name.is_empty()).then(|| format!("={name}")))
}
