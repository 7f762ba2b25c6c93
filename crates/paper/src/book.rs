//! The record book: what was sprayed, record by record, with all that each holds.

use std::collections::BTreeMap;

use jiff::civil::{Date, Time};
use serde::Serialize;
use tankard_core::farm::{Effect, Farm, Id, Outcome, Paper, Reading, Record, RecordField, RecordLine, Said};
use tankard_core::language::days::{clock, long_date, moment, short_date};
use tankard_core::progress::{Tell, untold};
use tankard_core::quantity::{AsTyped, Quantity};
use tankard_core::t;
use tankard_core::words::capital;
use typst::diag::SourceDiagnostic;
use typst_layout::PagedDocument;

use crate::world::{Template, Told};
use crate::{PaperError, compile_as, data, written};

/// In which order records stand.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum By {
    /// Under the name of the field; a record of several fields stands whole under the first and is named under the others.
    Field,
    /// As they were sprayed.
    #[default]
    Date,
}

/// How the book is made.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct Options {
    /// In which order.
    pub by: By,
    /// Each record on a page of its own, where a place wants all of it on a single page.
    pub one_a_page: bool,
}

/// Prints records as one PDF, with the day of printing on every page. The same records, options and day give the same bytes.
///
/// # Errors
/// [`PaperError::NoRecords`] without a record, [`PaperError::UnknownRecord`] for one that the farm does not have, and the others
/// where the layout itself fails.
pub fn pdf(farm: &Farm, records: &[Id], options: Options, printed: Date) -> Result<Vec<u8>, PaperError> {
    pdf_told(farm, records, options, printed, &untold)
}

/// The same, told how many records are laid out.
///
/// # Errors
/// As [`pdf`], and [`PaperError::Cancelled`].
pub fn pdf_told(
    farm: &Farm,
    records: &[Id],
    options: Options,
    printed: Date,
    tell: &Tell<'_>,
) -> Result<Vec<u8>, PaperError> {
    written(&compile(farm, records, options, printed, tell)?.0, "tankard record book")
}

fn compile(
    farm: &Farm,
    records: &[Id],
    options: Options,
    printed: Date,
    tell: &Tell<'_>,
) -> Result<(PagedDocument, Vec<SourceDiagnostic>), PaperError> {
    let book = book(farm, &chosen(farm, records)?, options, printed);
    compile_as(Template::Book, vec![data("book.json", &book)?], Told { tell, of: records.len() })
}

/// The records of these names, in the order in which they were sprayed.
pub(crate) fn chosen<'a>(farm: &'a Farm, records: &'a [Id]) -> Result<Vec<(&'a Id, &'a Record)>, PaperError> {
    let find = |id: &'a Id| {
        let record = farm.records.get(id);
        record.map(|record| (id, record)).ok_or_else(|| PaperError::UnknownRecord { id: id.clone() })
    };
    let mut found = records.iter().map(find).collect::<Result<Vec<_>, _>>()?;
    if found.is_empty() {
        return Err(PaperError::NoRecords);
    }
    found.sort_by_key(|(_, record)| (record.date, record.start));
    Ok(found)
}

/// What the template reads.
#[derive(Serialize)]
struct Book {
    paper: Paper,
    one_a_page: bool,
    holder: String,
    address: String,
    number: String,
    period: String,
    printed: String,
    groups: Vec<Group>,
}

#[derive(Serialize)]
struct Group {
    /// Name of the field; empty where the book goes by date.
    title: String,
    records: Vec<Entry>,
    /// Records that stand whole under another field.
    elsewhere: Vec<String>,
}

#[derive(Clone, Serialize)]
struct Entry {
    title: String,
    date: String,
    /// Empty values are blanks to fill in.
    pairs: Vec<(String, String)>,
    fields: Vec<[String; 6]>,
    lines: Vec<Product>,
    weather: Vec<[String; 6]>,
    notes: Vec<(String, String)>,
    signed: String,
    amendments: Vec<Amended>,
}

#[derive(Clone, Serialize)]
struct Product {
    name: String,
    restricted: bool,
    under: String,
    registration: String,
    amount: String,
    rate: String,
}

#[derive(Clone, Serialize)]
struct Amended {
    head: String,
    why: String,
    changes: Vec<[String; 3]>,
}

fn book(farm: &Farm, records: &[(&Id, &Record)], options: Options, printed: Date) -> Book {
    let keeping = &farm.keeping;
    let holder = if keeping.holder.is_empty() { &farm.name } else { &keeping.holder };
    let days = || records.iter().map(|(_, record)| record.date);
    let period = match (days().min(), days().max()) {
        (Some(first), Some(last)) if first != last => {
            t!("paper-to", first = short_date(first), last = short_date(last))
        }
        (Some(day), _) => short_date(day),
        _ => String::new(),
    };
    let groups = match options.by {
        By::Date => {
            let records = records.iter().map(|(_, record)| entry(farm, record)).collect();
            vec![Group { title: String::new(), records, elsewhere: Vec::new() }]
        }
        By::Field => by_field(farm, records),
    };
    Book {
        paper: farm.paper,
        one_a_page: options.one_a_page,
        holder: holder.clone(),
        address: keeping.address.clone(),
        number: keeping.number.clone(),
        period,
        printed: short_date(printed),
        groups,
    }
}

fn by_field(farm: &Farm, records: &[(&Id, &Record)]) -> Vec<Group> {
    // One field may have had several names; those of the newest record head it.
    let mut names: BTreeMap<&Id, &str> = BTreeMap::new();
    for (_, record) in records {
        names.extend(record.fields.iter().map(|(id, field)| (id, field.name.as_str())));
    }
    let mut groups: BTreeMap<(&str, &Id), Group> = BTreeMap::new();
    let none = Id::new();
    let group = |title: &str| Group { title: title.to_owned(), records: Vec::new(), elsewhere: Vec::new() };
    for (_, record) in records {
        let mut first: Option<&str> = None;
        for id in record.fields.keys() {
            let name = names.get(id).copied().unwrap_or_default();
            let here = groups.entry((name, id)).or_insert_with(|| group(name));
            if let Some(first) = first {
                here.elsewhere.push(t!("paper-see", date = short_date(record.date), name = record.name, first = first));
            } else {
                here.records.push(entry(farm, record));
                first = Some(name);
            }
        }
        if record.fields.is_empty() {
            let here = groups.entry(("", &none)).or_insert_with(|| group(t!("paper-no-field-written-down")));
            here.records.push(entry(farm, record));
        }
    }
    groups.into_values().collect()
}

pub(crate) fn clock_of(time: Option<Time>) -> String {
    time.map(clock).unwrap_or_default()
}

fn typed<Q: Quantity>(value: Option<&AsTyped<Q>>) -> String {
    value.map(|value| value.text().to_owned()).unwrap_or_default()
}

/// The parts that are not empty, with commas between.
fn listed(parts: &[String]) -> String {
    parts.iter().filter(|part| !part.is_empty()).map(String::as_str).collect::<Vec<_>>().join(", ")
}

/// A value with its words, where there is one.
fn said(value: &str, words: impl FnOnce(&str) -> String) -> String {
    if value.is_empty() { String::new() } else { words(value) }
}

fn planned(value: &str) -> String {
    t!("paper-planned", value = value)
}

fn entry(farm: &Farm, record: &Record) -> Entry {
    // What records usually hold stands with a blank where it is not written down; the rest only where it is.
    let mut pairs: Vec<(String, String)> = Vec::new();
    let mut usual = |name: &str, value: String| pairs.push((name.to_owned(), value));
    usual(t!("paper-began"), clock_of(record.start));
    usual(t!("paper-ended"), clock_of(record.end));
    usual(t!("paper-applicator"), record.operator.to_string());
    usual(t!("paper-certificate-number"), record.certificate.to_string());
    usual(t!("paper-weeds-or-pests"), record.weeds.iter().map(AsRef::as_ref).collect::<Vec<&str>>().join(", "));
    usual(
        t!("paper-spray-volume"),
        listed(&[typed(record.volume.as_ref()), said(&typed(record.planned.as_ref()), planned)]),
    );
    let machine = [
        record.rig.to_string(),
        record.method.to_string(),
        record.nozzles.to_string(),
        typed(record.pressure.as_ref()),
        typed(record.speed.as_ref()),
        said(&typed(record.height.as_ref()), |height| t!("paper-nozzle-height", height = height)),
    ];
    usual(t!("paper-machine"), listed(&machine));
    usual(t!("paper-droplets"), record.droplets.map(|class| class.name().to_owned()).unwrap_or_default());
    let mut also = |name: &str, value: String| {
        if !value.trim().is_empty() {
            pairs.push((name.to_owned(), value));
        }
    };
    also(t!("paper-supervised-by"), record.supervisor.to_string());
    also(t!("paper-also-worked-on-it"), record.helpers.to_string());
    if let Some(customer) = &record.customer {
        let copied = customer.copied.map(|day| t!("paper-copy-handed-over", day = short_date(day))).unwrap_or_default();
        let parts = [customer.name.to_string(), customer.address.to_string(), customer.phone.to_string(), copied];
        also(t!("paper-for"), listed(&parts));
    }
    also(t!("paper-water"), record.water.to_string());
    also(t!("paper-loads"), record.loads.map(|loads| loads.to_string()).unwrap_or_default());
    also(
        t!("paper-left-over"),
        record
            .left
            .as_ref()
            .map(|left| listed(&[left.volume.text().to_owned(), left.went.to_string()]))
            .unwrap_or_default(),
    );
    also(t!("paper-cleaned-out"), record.clean_out.to_string());
    also(t!("paper-forecast-kept"), record.expected.as_deref().map(expected).unwrap_or_default());
    also(t!("paper-record-made"), record.made.map(moment).unwrap_or_default());
    for (key, value) in &record.more {
        let own = farm.keeping.own.get(key).map(|element| element.name.clone());
        also(&own.unwrap_or_else(|| capital(&key.replace(['-', '_'], " "))), value.clone());
    }
    let mut notes = Vec::new();
    if !record.note.is_empty() {
        notes.push((t!("paper-note").to_owned(), record.note.to_string()));
    }
    for outcome in &record.outcomes {
        notes.push((t!("paper-outcome").to_owned(), outcome_words(record, outcome)));
    }
    Entry {
        title: record.name.to_string(),
        date: long_date(record.date),
        pairs,
        fields: record.fields.values().map(field).collect(),
        lines: record.lines.iter().map(|line| product(farm, record, line)).collect(),
        weather: record.all_readings().map(|one| reading(&one)).collect(),
        notes,
        signed: record.signed.as_ref().map(|by| format!("{}, {}", by.by, moment(by.at))).unwrap_or_default(),
        amendments: record.amendments.iter().map(amended).collect(),
    }
}

fn expected(expected: &tankard_core::farm::Expected) -> String {
    fn ends<Q: Quantity>(both: Option<&(AsTyped<Q>, AsTyped<Q>)>) -> String {
        both.map(|(least, most)| t!("paper-least-to-most", least = least.text(), most = most.text()))
            .unwrap_or_default()
    }
    let parts = [
        expected.source.to_string(),
        said(&ends(expected.wind.as_ref()), |wind| t!("paper-expected-wind", wind = wind)),
        said(&typed(expected.gust.as_ref()), |gusts| t!("paper-expected-gusts", gusts = gusts)),
        said(&expected.wind_from, |from| t!("paper-expected-from", from = from)),
        said(&ends(expected.temperature.as_ref()), |air| t!("paper-expected-air", air = air)),
        said(&ends(expected.humidity.as_ref()), |humidity| t!("paper-expected-humidity", humidity = humidity)),
    ];
    listed(&parts)
}

fn outcome_words(record: &Record, outcome: &Outcome) -> String {
    let effect = match &outcome.effect {
        Some(Effect::Control(weed)) => t!("paper-control-of", weed = weed),
        Some(Effect::Injury(kind)) => t!("paper-injury", kind = kind),
        None => String::new(),
    };
    let field = record.fields.get(outcome.field.as_str()).map_or(&outcome.field, |field| &field.name);
    let rated = listed(&[effect, typed(outcome.rating.as_ref())]);
    let photos = said(&outcome.photos.join(", "), |photos| t!("paper-photos", photos = photos));
    listed(&[
        short_date(outcome.date),
        field.to_string(),
        rated,
        said(&outcome.by, |by| t!("paper-by-whom", by = by)),
        outcome.note.to_string(),
        photos,
    ])
}

fn reading(reading: &Reading) -> [String; 6] {
    [
        clock_of(reading.at),
        typed(reading.wind.as_ref()),
        reading.wind_from.to_string(),
        typed(reading.gust.as_ref()),
        typed(reading.temperature.as_ref()),
        typed(reading.humidity.as_ref()),
    ]
}

fn field(field: &RecordField) -> [String; 6] {
    let part = if field.part.is_empty() { String::new() } else { format!(" ({})", field.part) };
    let planned = said(&typed(field.planned.as_ref()), planned);
    let crop = [
        field.crop.to_string(),
        said(&field.crop_code, |code| t!("paper-crop-code", code = code)),
        field.variety.to_string(),
    ];
    [
        format!("{}{part}", field.name),
        listed(&[field.area.text().to_owned(), planned]),
        listed(&crop),
        field.stage.to_string(),
        field.planted.map(short_date).unwrap_or_default(),
        listed(&[field.location.to_string(), said(&field.parcel, |parcel| t!("paper-parcel", parcel = parcel))]),
    ]
}

fn product(farm: &Farm, record: &Record, line: &RecordLine) -> Product {
    let rate = line.amount.value().spread(record.area()).map(|rate| rate.show(farm.units)).unwrap_or_default();
    let active = |active: &tankard_core::farm::RecordActive| {
        let mass = format!("{} {}", active.mass.text(), active.basis.short());
        if active.group.is_empty() {
            format!("{} {mass}", active.name)
        } else {
            t!("paper-active-of-group", name = active.name, group = active.group, mass = mass)
        }
    };
    let hours = |hours: u32| t!("paper-keep-out-h", hours = hours);
    let days = |days: u32| t!("paper-harvest-after-days", days = days);
    let mut under: Vec<String> = line.actives.iter().map(active).collect();
    under.push(said(&line.lot, |lot| t!("paper-lot", lot = lot)));
    under.push(line.entry.map(hours).unwrap_or_default());
    under.push(line.harvest.map(days).unwrap_or_default());
    under.push(said(&typed(line.planned.as_ref()), planned));
    under.push(said(&typed(line.price.as_ref()), |price| t!("paper-price", price = price)));
    Product {
        name: line.name.to_string(),
        restricted: line.restricted,
        under: listed(&under),
        registration: line.registration.to_string(),
        amount: line.amount.text().to_owned(),
        rate,
    }
}

fn amended(one: &tankard_core::farm::Amendment) -> Amended {
    let said = |said: Option<&Said>| match said {
        None => t!("paper-it-is-nothing").to_owned(),
        Some(Said::Text(text) | Said::Json(text)) => text.clone(),
    };
    let name = |what: &str| what.trim_start_matches('/').replace('/', ", ").replace("~1", "/").replace("~0", "~");
    Amended {
        head: t!("paper-amended-by", by = one.by, at = moment(one.at)),
        why: one.why.clone(),
        changes: one
            .changes
            .iter()
            .map(|change| [name(&change.what), said(change.was.as_ref()), said(change.is.as_ref())])
            .collect(),
    }
}

#[cfg(test)]
mod tests;
#[cfg(test)]
pub(crate) use tests::full as full_record;
