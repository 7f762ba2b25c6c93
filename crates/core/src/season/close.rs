//! The change of the year: a season is closed, and fields, shed and settings go on into the next.
//!
//! Nothing is taken away. Records, passes and cards stay in the file; what grew on each field is kept with the closed season, since
//! the field itself goes on with the next crop.

use indexmap::IndexMap;
use jiff::civil::Date;

use crate::farm::{ClosedSeason, Farm, Id};
use crate::finding::{Basis, Finding, Subject};
use crate::language::t;
use crate::season::Log;

/// Whether the season of a year is closed.
pub fn is_closed(farm: &Farm, year: i16) -> bool {
    farm.closed.contains_key(&year.to_string())
}

/// What a person should know before a season is closed: passes without a record, and records that are not signed. Common practice,
/// no source.
pub fn before_closing(farm: &Farm, year: i16) -> Vec<Finding> {
    let mut findings = Vec::new();
    let log = Log::of(farm);
    for (id, pass) in farm.passes.iter().filter(|(_, pass)| pass.date.year() == year) {
        let Some(left) = log.unrecorded(farm, id) else { continue };
        let (name, date) = (&pass.name, pass.date);
        let (text, hint) = match left.words(farm) {
            Some(partly) => (
                t!("season-pass-is-partly-recorded", name = name, date = date, partly = partly),
                t!("season-record-what-is-left-if-it"),
            ),
            None => {
                (t!("season-pass-has-no-record", name = name, date = date), t!("season-record-it-if-it-was-sprayed"))
            }
        };
        findings.push(Finding::check(Subject::Pass(id.clone()), text, Basis::Practice).hint(hint));
    }
    let unsigned: Vec<&Id> = farm
        .records
        .iter()
        .filter(|(_, record)| record.date.year() == year && record.signed.is_none())
        .map(|(id, _)| id)
        .collect();
    if let Some(first) = unsigned.first() {
        let text = t!("season-records-of-the-season-are-not", many = unsigned.len());
        findings.push(
            Finding::note(Subject::Record((*first).clone()), text, Basis::Practice)
                .hint(t!("season-a-signed-record-is-amended-not")),
        );
    }
    findings
}

/// The crops that the fields go on with: what the field has as its next crop, or nothing where that is not typed.
pub fn next_crops(farm: &Farm) -> IndexMap<Id, String> {
    farm.fields.iter().map(|(id, field)| (id.clone(), field.next_crop.clone())).collect()
}

/// The farm with the season of a year closed on a day. What grew is kept with the season; each field goes on with the crop given
/// for it, or none, and with nothing typed yet of its stage, variety, planting and harvest. A season that is closed already stays as
/// it is.
pub fn close(farm: &Farm, year: i16, on: Date, crops: &IndexMap<Id, String>, note: &str) -> Farm {
    let mut farm = farm.clone();
    if is_closed(&farm, year) {
        return farm;
    }
    let grew = farm.fields.iter().filter(|(_, field)| !field.crop.trim().is_empty());
    let grew = grew.map(|(id, field)| (id.clone(), field.crop.clone())).collect();
    farm.closed.insert(year.to_string(), ClosedSeason { closed: on, crops: grew, note: note.trim().to_owned() });
    farm.closed.sort_unstable_keys();
    for (id, field) in &mut farm.fields {
        field.crop = crops.get(id).map(|crop| crop.trim().to_owned()).unwrap_or_default();
        field.next_crop.clear();
        field.stage.clear();
        field.variety.clear();
        field.planted = None;
        field.harvest = None;
    }
    farm
}

/// What grew on a field in a year, as far as it is known: from the closed season, else from the records of that year.
pub fn grew(farm: &Farm, field: &str, year: i16) -> Option<String> {
    let closed = farm.closed.get(&year.to_string()).and_then(|season| season.crops.get(field)).cloned();
    closed.or_else(|| {
        let of_year = farm.records.values().filter(|record| record.date.year() == year);
        let mut crops = of_year.filter_map(|record| record.fields.get(field)).map(|then| &then.crop);
        crops.rfind(|crop| !crop.trim().is_empty()).map(String::from)
    })
}

#[cfg(test)]
mod tests {
    use super::{before_closing, close, grew, is_closed, next_crops};
    use crate::farm::{Farm, Field, Pass, Record, RecordField, Signature};
    use crate::finding::Level;
    use crate::quantity::AsTyped;
    use jiff::civil::date;

    fn farm() -> Farm {
        let mut farm = Farm::new("Test");
        let mut mill = Field::new("Mill field", AsTyped::parse("74.6 ac").unwrap());
        mill.crop = "soybean".to_owned();
        mill.next_crop = "corn".to_owned();
        mill.stage = "V3".to_owned();
        mill.planted = Some(date(2031, 5, 2));
        mill.unsprayed = Some(AsTyped::parse("2 ac").unwrap());
        farm.fields.insert("mill".to_owned(), mill);
        farm.fields.insert("hill".to_owned(), Field::new("Hill", AsTyped::parse("60 ac").unwrap()));
        farm.passes.insert("post".to_owned(), Pass::new("Soybean, post", date(2031, 6, 12)));
        farm
    }

    fn recorded(farm: &mut Farm) {
        let mut record = Record::new("Soybean, post", date(2031, 6, 12));
        record.pass = Some("post".into());
        let then = RecordField { crop: "soybean".into(), ..RecordField::new("Hill", AsTyped::parse("60 ac").unwrap()) };
        record.fields.insert("hill".to_owned(), then);
        farm.records.insert("r".to_owned(), record);
    }

    #[test]
    fn fields_go_on_and_what_grew_is_kept() {
        let mut before = farm();
        recorded(&mut before);
        let after = close(&before, 2031, date(2031, 12, 1), &next_crops(&before), " dry year ");
        assert!(is_closed(&after, 2031) && !is_closed(&after, 2030));
        let mill = &after.fields["mill"];
        assert_eq!((mill.crop.as_str(), mill.stage.as_str(), mill.next_crop.as_str()), ("corn", "", ""));
        assert!(mill.planted.is_none() && mill.unsprayed == before.fields["mill"].unsprayed);
        assert_eq!(after.closed["2031"].note, "dry year");
        assert_eq!(grew(&after, "mill", 2031).as_deref(), Some("soybean"));
        // No crop was typed on the field, and the record knows it.
        assert_eq!(grew(&after, "hill", 2031).as_deref(), Some("soybean"));
        assert_eq!(grew(&after, "hill", 2030), None);
        assert_eq!(
            (&after.records, &after.passes, &after.products),
            (&before.records, &before.passes, &before.products)
        );
        // Twice changes nothing, above all not what grew.
        assert_eq!(close(&after, 2031, date(2032, 1, 1), &next_crops(&after), ""), after);
    }

    #[test]
    fn what_is_not_recorded_or_not_signed_is_told() {
        let mut farm = farm();
        let told = before_closing(&farm, 2031);
        assert!(told.len() == 1 && told[0].level == Level::Check && told[0].text.contains("has no record"), "{told:?}");
        recorded(&mut farm);
        let told = before_closing(&farm, 2031);
        assert!(told.len() == 1 && told[0].level == Level::Note && told[0].text.contains("not signed"), "{told:?}");
        let at = date(2031, 6, 13).at(7, 0, 0, 0);
        farm.records["r"].signed = Some(Box::new(Signature { by: "A. Demo".into(), at, hash: String::new() }));
        assert!(before_closing(&farm, 2031).is_empty());
        assert!(before_closing(&farm, 2030).is_empty());
    }

    #[test]
    fn seasons_stand_in_order() {
        let mut farm = farm();
        for year in [2032, 2030, 2031] {
            farm = close(&farm, year, date(2033, 1, 1), &next_crops(&farm), "");
        }
        assert_eq!(farm.closed.keys().collect::<Vec<_>>(), ["2030", "2031", "2032"]);
    }
}
