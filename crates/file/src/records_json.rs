//! Records as JSON, for machines: machine-readable in the sense of Article 2(13) of Directive (EU) 2019/1024, which
//! Implementing Regulation (EU) 2023/564 asks of records. It is an export; the farm's file stays the original.
//!
//! Each record has its applications, one a field and a product, in hectares, litres and kilograms; and beside them all that
//! the farm's file holds of it, by the same names.

use std::io;

use jiff::civil::Date;
use serde_json::{Value, json};
use tankard_core::farm::{Farm, Id, Record, RecordField, RecordLine};
use tankard_core::label::stage::Stage;
use tankard_core::progress::{Tell, untold};
use tankard_core::quantity::{Amount, Area};
use tankard_core::season::profile::Element;
use tankard_core::season::{FieldShare, shared_fields};

use crate::records_csv::cost;

/// What stands under "format".
pub const FORMAT: &str = "tankard-records";
/// What stands under "version". It is raised where a name changes its meaning or goes; names that are added do not count.
pub const VERSION: u32 = 1;

/// Writes the records chosen, in the farm's order. `period` is the first and the last day that was asked for, where a span
/// was; `exported` is the day of the export.
///
/// # Errors
/// Only where the writer fails.
pub fn write(
    farm: &Farm,
    chosen: impl Fn(&str) -> bool,
    period: Option<(Date, Date)>,
    exported: Date,
) -> Result<String, serde_json::Error> {
    write_told(farm, chosen, period, exported, &untold)
}

/// The same, told how many of the farm's records are behind.
///
/// # Errors
/// As [`write()`], and where it is ended.
pub fn write_told(
    farm: &Farm,
    chosen: impl Fn(&str) -> bool,
    period: Option<(Date, Date)>,
    exported: Date,
    tell: &Tell<'_>,
) -> Result<String, serde_json::Error> {
    let chosen = farm.records.iter().enumerate().filter(|(_, (id, _))| chosen(id));
    let told = chosen.map(|(at, (id, record))| {
        tell(at, Some(farm.records.len())).map_err(|ended| serde_json::Error::io(io::Error::other(ended)))?;
        one(farm, id, record)
    });
    let records: Vec<Value> = told.collect::<Result<_, _>>()?;
    let whole = json!({
        "format": FORMAT,
        "version": VERSION,
        "exported": exported.to_string(),
        "farm": farm.name,
        "holder": {
            "name": farm.keeping.holder,
            "address": farm.keeping.address,
            "number": farm.keeping.number,
        },
        "units": { "area": "ha", "volume": "L", "mass": "kg", "currency": farm.currency },
        "period": period.map(|(from, to)| json!({ "from": from.to_string(), "to": to.to_string() })),
        "records": records,
    });
    let mut text = serde_json::to_string_pretty(&whole)?;
    text.push('\n');
    Ok(text)
}

fn one(farm: &Farm, id: &Id, record: &Record) -> Result<Value, serde_json::Error> {
    // As the record profile of that regulation decides it.
    let type_of_use = Element::TypeOfUse.text(farm, record, &[]).ok();
    let type_of_use = type_of_use.as_deref();
    let applications = shared_fields(record).flat_map(|(field, share)| {
        record.lines.iter().map(move |line| application(record, field, share, line, type_of_use))
    });
    let applications: Vec<Value> = applications.collect();
    Ok(json!({ "id": id, "applications": applications, "record": serde_json::to_value(record)? }))
}

/// One product on one field.
fn application(
    record: &Record,
    field: Option<(&Id, &RecordField)>,
    share: FieldShare,
    line: &RecordLine,
    type_of_use: Option<&str>,
) -> Value {
    let whole = record.area();
    let of = field.map(|(_, field)| field);
    let fraction = share.fraction();
    let (litres, kilograms) = parts(line.amount.value().times(fraction));
    let (litres_per_ha, kilograms_per_ha) = dose(line.amount.value(), whole);
    let actives: Vec<Value> = line
        .actives
        .iter()
        .map(|active| {
            json!({
                "name": active.name,
                "group": active.group,
                "basis": active.basis.short(),
                "kg": active.mass.to_kilograms() * fraction,
            })
        })
        .collect();
    json!({
        "date": record.date.to_string(),
        "start": record.start.map(|time| time.to_string()),
        "end": record.ended().map(|end| end.to_string()),
        "type_of_use": type_of_use,
        "product": line.name,
        "registration": line.registration,
        "restricted": line.restricted,
        "field": field.map(|(id, _)| id),
        "field_name": of.map(|field| &field.name),
        "part": of.map(|field| &field.part),
        "parcel": of.map(|field| &field.parcel),
        "location": of.map(|field| &field.location),
        "area_ha": of.map(|field| field.area.to_hectares()),
        "crop": of.map(|field| &field.crop),
        "crop_eppo": of.map(|field| &field.crop_code),
        "stage": of.map(|field| &field.stage),
        "bbch": of.and_then(|field| match Stage::read(&field.stage) {
            Some(Stage::Bbch(code)) => Some(code),
            _ => None,
        }),
        "dose_l_per_ha": litres_per_ha,
        "dose_kg_per_ha": kilograms_per_ha,
        "amount_l": litres,
        "amount_kg": kilograms,
        "cost": cost(line, share),
        "actives": actives,
        "spray_l": record.volume.as_ref().map(|volume| volume.to_litres() * fraction),
        "method": record.method,
        "operator": record.operator,
        "certificate": record.certificate,
        "supervisor": record.supervisor,
        "customer": record.customer.as_ref().map(|customer| &customer.name),
        "weeds": record.weeds,
    })
}

/// Litres or kilograms.
fn parts(amount: Amount) -> (Option<f64>, Option<f64>) {
    match amount {
        Amount::Volume(volume) => (Some(volume.to_litres()), None),
        Amount::Mass(mass) => (None, Some(mass.to_kilograms())),
    }
}

/// Litres or kilograms over a hectare; neither where no area is typed.
fn dose(amount: Amount, area: Area) -> (Option<f64>, Option<f64>) {
    if area.is_zero() {
        return (None, None);
    }
    let (litres, kilograms) = parts(amount);
    let over = |value: Option<f64>| value.map(|value| value / area.to_hectares());
    (over(litres), over(kilograms))
}
