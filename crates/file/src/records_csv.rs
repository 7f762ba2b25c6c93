//! Records as CSV: one row a product, a field and a record, so that a spreadsheet can sum them.
//!
//! The columns are stable. Text is as typed or as the farm shows it; numbers for sums stand in litres, kilograms and
//! hectares beside it. The spray volume stands in the first row of a field and record only.

use tankard_core::farm::Farm;
use tankard_core::quantity::{Amount, Quantity};

/// The head line.
pub const COLUMNS: [&str; 25] = [
    "record",
    "pass",
    "date",
    "start",
    "end",
    "field",
    "crop",
    "stage",
    "area_ha",
    "product",
    "registration",
    "amount",
    "amount_l",
    "amount_kg",
    "actives",
    "spray_volume_l",
    "water",
    "rig",
    "wind",
    "wind_from",
    "temperature",
    "humidity",
    "operator",
    "certificate",
    "note",
];

/// Writes the records chosen, in the farm's order. A record's amounts are shared among its fields by area.
///
/// # Errors
/// Only where the writer fails.
pub fn write<'a>(farm: &'a Farm, chosen: impl Fn(&str) -> bool + 'a) -> Result<String, csv::Error> {
    let mut csv = csv::Writer::from_writer(Vec::new());
    csv.write_record(COLUMNS)?;
    for (id, record) in farm.records.iter().filter(|(id, _)| chosen(id)) {
        let whole = record.area();
        for field in record.fields.values() {
            let share = field.area.value().ratio(whole).unwrap_or(0.0);
            for (at, line) in record.lines.iter().enumerate() {
                let amount = line.amount.value().times(share);
                let (litres, kilograms) = match amount {
                    Amount::Volume(volume) => (volume.to_litres().to_string(), String::new()),
                    Amount::Mass(mass) => (String::new(), mass.to_kilograms().to_string()),
                };
                let actives: Vec<String> = line
                    .actives
                    .iter()
                    .map(|active| {
                        format!(
                            "{} {} {}",
                            active.name,
                            (active.mass.value() * share).show(farm.units),
                            active.basis.short()
                        )
                    })
                    .collect();
                csv.write_record([
                    id.clone(),
                    record.name.clone(),
                    record.date.to_string(),
                    record.start.map(|time| time.strftime("%H:%M").to_string()).unwrap_or_default(),
                    record.end.map(|time| time.strftime("%H:%M").to_string()).unwrap_or_default(),
                    field.name.clone(),
                    field.crop.clone(),
                    field.stage.clone(),
                    field.area.to_hectares().to_string(),
                    line.name.clone(),
                    line.registration.clone(),
                    amount.show(farm.units),
                    litres,
                    kilograms,
                    actives.join("; "),
                    // Once a field, so that a spreadsheet's sum is right.
                    record
                        .volume
                        .as_ref()
                        .filter(|_| at == 0)
                        .map(|volume| (volume.value() * share).to_litres().to_string())
                        .unwrap_or_default(),
                    record.water.clone(),
                    record.rig.clone(),
                    record.wind.as_ref().map(|wind| wind.text().to_owned()).unwrap_or_default(),
                    record.wind_from.clone(),
                    record.temperature.as_ref().map(|temperature| temperature.text().to_owned()).unwrap_or_default(),
                    record.humidity.as_ref().map(|humidity| humidity.text().to_owned()).unwrap_or_default(),
                    record.operator.clone(),
                    record.certificate.clone(),
                    record.note.clone(),
                ])?;
            }
        }
    }
    let bytes = csv.into_inner().map_err(|error| csv::Error::from(error.into_error()))?;
    Ok(String::from_utf8_lossy(&bytes).into_owned())
}
