//! Records that may be of one application: the same day, a field and a product that both have.

use std::collections::HashMap;

use jiff::civil::Date;
use tankard_core::farm::{Farm, Record};

/// The records of a farm by day and field.
pub(crate) struct Log<'a> {
    /// A field is known by its id and by its name.
    by_field: HashMap<(Date, String), Vec<&'a Record>>,
}

impl<'a> Log<'a> {
    pub(crate) fn of(farm: &'a Farm) -> Self {
        let mut by_field: HashMap<(Date, String), Vec<&Record>> = HashMap::new();
        for record in farm.records.values() {
            for key in fields(record) {
                by_field.entry((record.date, key)).or_default().push(record);
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
            .find(|other| products(other).any(|product| own.contains(&product)))
            .copied()
    }
}

/// How a record that another looks like is named.
pub(crate) fn named(record: &Record) -> String {
    format!("\"{}\" of {}", record.name, record.date)
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
