//! Information on applications for display to workers: 40 CFR 170.311(b), one sheet a record.

use jiff::civil::{Date, DateTime};
use serde::Serialize;
use tankard_core::farm::{Farm, Id, Paper, Record};
use tankard_core::finding::Finding;
use tankard_core::language::days::{long_date, short_date};
use tankard_core::season::worker_protection::{Posting, Unzoned, Zone, entry_hours, is_pesticide, posting};
use tankard_core::t;
use typst::diag::SourceDiagnostic;
use typst_layout::PagedDocument;

use crate::book::{chosen, clock_of};
use crate::world::{Template, Told};
use crate::{PaperError, compile_as, data, written};

/// Prints a sheet for each record, in the order in which they were sprayed, as one PDF; with what is missing on them, which is a
/// blank to fill in. The same records and day give the same bytes.
///
/// # Errors
/// [`PaperError::NoRecords`] without a record, [`PaperError::UnknownRecord`] for one that the farm does not have, and the others
/// where the layout itself fails.
pub fn pdf(farm: &Farm, records: &[Id], printed: Date) -> Result<(Vec<u8>, Vec<Finding>), PaperError> {
    let (document, _, findings) = compile(farm, records, printed)?;
    Ok((written(&document, "tankard worker protection")?, findings))
}

type Compiled = (PagedDocument, Vec<SourceDiagnostic>, Vec<Finding>);

fn compile(farm: &Farm, records: &[Id], printed: Date) -> Result<Compiled, PaperError> {
    let mut findings = Vec::new();
    let mut applications = Vec::new();
    for (id, record) in chosen(farm, records)? {
        let posted = posting(farm, id, record);
        applications.push(sheet(farm, record, &posted));
        findings.extend(posted.findings);
    }
    let keeping = &farm.keeping;
    let holder = if keeping.holder.is_empty() { &farm.name } else { &keeping.holder };
    let sheets = Sheets {
        paper: farm.paper,
        holder: holder.clone(),
        address: keeping.address.clone(),
        printed: short_date(printed),
        emergency: farm.emergency.clone(),
        applications,
    };
    let (document, warnings) = compile_as(Template::Workers, vec![data("workers.json", &sheets)?], Told::NOBODY)?;
    Ok((document, warnings, findings))
}

#[derive(Serialize)]
struct Sheets {
    paper: Paper,
    holder: String,
    address: String,
    printed: String,
    emergency: Vec<String>,
    applications: Vec<Sheet>,
}

/// What the template reads of a record; what is empty is a blank to fill in.
#[derive(Serialize)]
struct Sheet {
    name: String,
    date: String,
    start: String,
    end: String,
    /// Name and area, crop, location.
    sites: Vec<[String; 3]>,
    /// Name, registration number, active ingredients, restricted-entry interval.
    products: Vec<[String; 4]>,
    interval: String,
    entry_ends: String,
    display_until: String,
    keep_until: String,
    zone: &'static str,
    /// Why the zone is a blank.
    zone_open: &'static str,
}

fn sheet(farm: &Farm, record: &Record, posted: &Posting) -> Sheet {
    let site = |field: &tankard_core::farm::RecordField| {
        let part = if field.part.is_empty() { String::new() } else { format!(", {}", field.part) };
        [format!("{}{part}, {}", field.name, field.area.text()), field.crop.to_string(), field.location.to_string()]
    };
    let pesticides = record.lines.iter().filter(|line| is_pesticide(farm, line));
    let product = |line: &tankard_core::farm::RecordLine| {
        let actives: Vec<&str> = line.actives.iter().map(|active| active.name.as_str()).collect();
        let hours = match entry_hours(farm, line) {
            None => String::new(),
            Some(0) => t!("paper-no-entry-time").to_owned(),
            Some(hours) => format!("{hours} h"),
        };
        [line.name.to_string(), line.registration.to_string(), actives.join(", "), hours]
    };
    let ends = |at: DateTime| format!("{}, {}", long_date(at.date()), clock_of(Some(at.time())));
    let entry = &posted.entry;
    let interval = match (entry.unknown.is_empty(), entry.hours.unwrap_or_default()) {
        (true, 0) => t!("paper-no-entry-time").to_owned(),
        (true, hours) => t!("paper-h-the-longest-of-the-products", hours = hours),
        (false, 0) => String::new(),
        (false, hours) => t!("paper-at-least-h-not-known-for", hours = hours, unknown = entry.unknown.join(", ")),
    };
    Sheet {
        name: record.name.to_string(),
        date: long_date(record.date),
        start: clock_of(record.start),
        end: match record.ended() {
            Some(end) if end.date() != record.date => ends(end),
            _ => clock_of(record.end),
        },
        sites: record.fields.values().map(site).collect(),
        products: pesticides.map(product).collect(),
        interval,
        entry_ends: entry.ends.map(ends).unwrap_or_default(),
        display_until: posted.display_until.map(short_date).unwrap_or_default(),
        // Nobody has looked the two years up again; the profile of this rule says the same.
        keep_until: posted
            .keep_until
            .map(|day| t!("paper-from-memory-check", day = short_date(day)))
            .unwrap_or_default(),
        zone: match posted.zone {
            Ok(Zone::Far) => t!("paper-100-ft-from-the-sprayer-on"),
            Ok(Zone::Near) => t!("paper-25-ft-from-the-sprayer-on"),
            Ok(Zone::NearUnlessLow) => {
                t!("paper-25-ft-from-the-sprayer-on-every-side-unless")
            }
            Err(_) => "",
        },
        zone_open: match posted.zone {
            Err(Unzoned::Method) => t!("paper-not-known-for-this-method"),
            Err(Unzoned::Droplets) => t!("paper-not-known-without-the-droplet-class"),
            Ok(_) => "",
        },
    }
}

#[cfg(test)]
mod tests;
