//! Records to rows.

use std::io;

use serde::Serialize;
use serde_json::Value;
use tankard_core::farm::{Farm, Id, Record, RecordField, RecordLine, Text};
use tankard_core::progress::{Tell, untold};
use tankard_core::quantity::{Amount, AsTyped};
use tankard_core::season::{FieldShare, shared_fields};

use super::columns::{COLUMNS, Column, Of};
use crate::cell::guarded;

/// What a row speaks of.
struct Row<'a> {
    id: &'a Id,
    record: &'a Record,
    field: Option<(&'a Id, &'a RecordField)>,
    line: Option<&'a RecordLine>,
    /// The field's share of the record.
    share: FieldShare,
    /// Whether it is the first of its field and record.
    is_first: bool,
}

/// Writes the records chosen, in the farm's order.
///
/// # Errors
/// Only where the writer fails.
pub fn write<'a>(farm: &'a Farm, chosen: impl Fn(&str) -> bool + 'a) -> Result<String, csv::Error> {
    write_told(farm, chosen, &untold)
}

/// The same, told how many of the farm's records are behind.
///
/// # Errors
/// As [`write()`], and where it is ended.
pub fn write_told<'a>(
    farm: &'a Farm,
    chosen: impl Fn(&str) -> bool + 'a,
    tell: &Tell<'_>,
) -> Result<String, csv::Error> {
    let mut csv = csv::Writer::from_writer(Vec::new());
    csv.write_record(COLUMNS.map(|column| column.name))?;
    for (at, (id, record)) in farm.records.iter().enumerate().filter(|(_, (id, _))| chosen(id)) {
        tell(at, Some(farm.records.len())).map_err(io::Error::other)?;
        let blank = Row { id, record, field: None, line: None, share: FieldShare::WHOLE, is_first: true };
        // What all rows of the record say is put into words once.
        let of_record: Vec<String> = COLUMNS
            .iter()
            .map(|column| if column.of == Of::Record { cell(&blank, column) } else { String::new() })
            .collect();
        let lines: Vec<Option<&RecordLine>> =
            if record.lines.is_empty() { vec![None] } else { record.lines.iter().map(Some).collect() };
        for (field, share) in shared_fields(record) {
            for (at, line) in lines.iter().copied().enumerate() {
                let row = Row { id, record, field, line, share, is_first: at == 0 };
                for (column, known) in COLUMNS.iter().zip(&of_record) {
                    match column.of {
                        Of::Record => csv.write_field(known)?,
                        _ => csv.write_field(cell(&row, column))?,
                    }
                }
                csv.write_record(None::<&[u8]>)?;
            }
        }
    }
    let bytes = csv.into_inner().map_err(|error| csv::Error::from(error.into_error()))?;
    Ok(String::from_utf8_lossy(&bytes).into_owned())
}

/// The actives of a line in a share of it, in kilograms.
fn actives_kg(line: &RecordLine, share: FieldShare) -> String {
    let plain = |text: &str| text.replace(['|', ';', '='], "/");
    let parts = line.actives.iter().map(|active| {
        let kilograms = active.mass.to_kilograms() * share.fraction();
        format!("{}|{}|{}={kilograms}", plain(&active.name), active.basis.short(), plain(&active.group))
    });
    parts.collect::<Vec<_>>().join("; ")
}

fn cell(row: &Row<'_>, column: &Column) -> String {
    let record = row.record;
    let of_field = |text: fn(&RecordField) -> String| row.field.map(|(_, field)| text(field)).unwrap_or_default();
    let of_line = |text: fn(&RecordLine) -> String| row.line.map(text).unwrap_or_default();
    let text = match column.name {
        "record" => row.id.clone(),
        "pass" => record.pass.as_ref().map(Text::to_string).unwrap_or_default(),
        "name" => record.name.to_string(),
        "date" => record.date.to_string(),
        "start" => record.start.map(super::time_text).unwrap_or_default(),
        "end" => record.end.map(super::time_text).unwrap_or_default(),
        "field" => row.field.map(|(id, _)| id.clone()).unwrap_or_default(),
        "field_name" => of_field(|field| field.name.to_string()),
        "part" => of_field(|field| field.part.to_string()),
        "crop" => of_field(|field| field.crop.to_string()),
        "crop_code" => of_field(|field| field.crop_code.to_string()),
        "stage" => of_field(|field| field.stage.to_string()),
        "variety" => of_field(|field| field.variety.to_string()),
        "planted" => of_field(|field| text_of(field.planted.as_ref())),
        "location" => of_field(|field| field.location.to_string()),
        "parcel" => of_field(|field| field.parcel.to_string()),
        "area" => of_field(|field| field.area.text().to_owned()),
        "area_ha" if row.is_first => of_field(|field| field.area.to_hectares().to_string()),
        "planned_area" => of_field(|field| typed(field.planned.as_ref())),
        "product" => of_line(|line| line.product.to_string()),
        "product_name" => of_line(|line| line.name.to_string()),
        "registration" => of_line(|line| line.registration.to_string()),
        "kind" => of_line(|line| word(line.kind.as_ref())),
        "class" => of_line(|line| word(line.class.as_ref())),
        "restricted" => of_line(|line| if line.restricted { "yes".to_owned() } else { String::new() }),
        "lot" => of_line(|line| line.lot.to_string()),
        "amount" => of_line(|line| line.amount.text().to_owned()),
        "amount_l" | "amount_kg" => {
            match (column.name, row.line.map(|line| line.amount.value().times(row.share.fraction()))) {
                ("amount_l", Some(Amount::Volume(volume))) => volume.to_litres().to_string(),
                ("amount_kg", Some(Amount::Mass(mass))) => mass.to_kilograms().to_string(),
                _ => String::new(),
            }
        }
        "planned_amount" => of_line(|line| typed(line.planned.as_ref())),
        "price" => of_line(|line| typed(line.price.as_ref())),
        "cost" => row.line.and_then(|line| cost(line, row.share)).unwrap_or_default(),
        "entry_hours" => of_line(|line| text_of(line.entry.as_ref())),
        "harvest_days" => of_line(|line| text_of(line.harvest.as_ref())),
        "actives" => of_line(|line| json(&line.actives, line.actives.is_empty())),
        "actives_kg" => row.line.map(|line| actives_kg(line, row.share)).unwrap_or_default(),
        "spray_volume" => typed(record.volume.as_ref()),
        "spray_volume_l" if row.is_first => record
            .volume
            .as_ref()
            .map(|volume| (volume.to_litres() * row.share.fraction()).to_string())
            .unwrap_or_default(),
        "planned_volume" => typed(record.planned.as_ref()),
        "loads" => text_of(record.loads.as_ref()),
        "left" => typed(record.left.as_ref().map(|left| &left.volume)),
        "left_went" => record.left.as_ref().map(|left| left.went.to_string()).unwrap_or_default(),
        "water" => record.water.to_string(),
        "rig" => record.rig.to_string(),
        "method" => record.method.to_string(),
        "nozzles" => record.nozzles.to_string(),
        "pressure" => typed(record.pressure.as_ref()),
        "speed" => typed(record.speed.as_ref()),
        "height" => typed(record.height.as_ref()),
        "droplets" => word(record.droplets.as_ref()),
        "clean_out" => record.clean_out.to_string(),
        "wind" => typed(record.wind.as_ref()),
        "wind_from" => record.wind_from.to_string(),
        "gust" => typed(record.gust.as_ref()),
        "temperature" => typed(record.temperature.as_ref()),
        "humidity" => typed(record.humidity.as_ref()),
        "readings" => json(&record.readings, record.readings.is_empty()),
        "expected" => json(&record.expected, record.expected.is_none()),
        "operator" => record.operator.to_string(),
        "certificate" => record.certificate.to_string(),
        "supervisor" => record.supervisor.to_string(),
        "helpers" => record.helpers.to_string(),
        "customer" => json(&record.customer, record.customer.is_none()),
        "weeds" => weeds(&record.weeds),
        "more" => json(&record.more, record.more.is_empty()),
        "made" => text_of(record.made.as_ref()),
        "note" => record.note.to_string(),
        "signed" => json(&record.signed, record.signed.is_none()),
        "amendments" => json(&record.amendments, record.amendments.is_empty()),
        "outcomes" => json(&record.outcomes, record.outcomes.is_empty()),
        _ => String::new(),
    };
    // A number that is below nothing begins like a formula and is none; with a mark it would not add up.
    if column.of == Of::Sum && text.parse::<f64>().is_ok() { text } else { guarded(&text) }
}

/// What a share of a line cost, as the review shares it; nothing where its price does not go by what its amount is.
pub(crate) fn cost(line: &RecordLine, share: FieldShare) -> Option<String> {
    let cost = line.price.as_ref()?.of(line.amount.value())?;
    share.of_money(cost).map(|money| money.amount().to_string())
}

fn typed<Q>(quantity: Option<&AsTyped<Q>>) -> String {
    quantity.map(ToString::to_string).unwrap_or_default()
}

fn text_of<T: ToString>(value: Option<&T>) -> String {
    value.map(ToString::to_string).unwrap_or_default()
}

/// A variant by the name it has in the farm's file.
fn word<T: Serialize>(value: Option<&T>) -> String {
    match value.map(serde_json::to_value) {
        Some(Ok(Value::String(word))) => word,
        _ => String::new(),
    }
}

fn json<T: Serialize>(value: &T, is_empty: bool) -> String {
    if is_empty { String::new() } else { serde_json::to_string(value).unwrap_or_default() }
}

/// Apart by "; ", as people read it, where that reads back.
fn weeds(weeds: &[Text]) -> String {
    let is_plain =
        |weed: &Text| !weed.is_empty() && !weed.contains(';') && !weed.starts_with('[') && weed.trim() == weed;
    if weeds.iter().all(is_plain) {
        weeds.iter().map(Text::as_str).collect::<Vec<_>>().join("; ")
    } else {
        json(&weeds, false)
    }
}
