//! What was typed in records before: who sprayed, with which certificate, for whom.

use std::collections::HashSet;

use crate::farm::{Farm, Record, Text};

/// How many are offered.
const MOST: usize = 12;

/// The texts of one kind that stand in the records, the latest first, each once; at most a dozen.
pub fn before<'a, I: IntoIterator<Item = &'a str>>(farm: &'a Farm, of: impl Fn(&'a Record) -> I) -> Vec<String> {
    before_in(&latest(farm), of)
}

/// The records, the latest first, for several questions to [`before_in`].
pub fn latest(farm: &Farm) -> Vec<&Record> {
    let mut records: Vec<&Record> = farm.records.values().collect();
    records.sort_by_key(|record| std::cmp::Reverse((record.date, record.start)));
    records
}

/// As [`before`], of records that are in order already.
pub fn before_in<'a, I: IntoIterator<Item = &'a str>>(
    latest: &[&'a Record],
    of: impl Fn(&'a Record) -> I,
) -> Vec<String> {
    let mut seen = HashSet::new();
    let texts = latest.iter().flat_map(|record| of(record)).map(str::trim);
    texts.filter(|text| !text.is_empty() && seen.insert(*text)).take(MOST).map(str::to_owned).collect()
}

/// The certificate of an operator, as the latest record that names it has it; a record of its own id does not count.
pub fn certificate_of<'a>(farm: &'a Farm, own: &str, operator: &str) -> Option<&'a str> {
    let operator = operator.trim();
    let certified = farm.records.iter().filter(|(id, record)| {
        *id != own
            && !operator.is_empty()
            && record.operator.trim() == operator
            && !record.certificate.trim().is_empty()
    });
    certified.max_by_key(|(_, record)| (record.date, record.start)).map(|(_, record)| record.certificate.as_str())
}

/// The certificate of a record goes with its operator: it becomes that of the person named now, and another person's is not left
/// standing.
pub fn follow_operator(farm: &Farm, own: &str, record: &mut Record) {
    if let Some(certificate) = certificate_of(farm, own, &record.operator) {
        record.certificate = certificate.into();
    } else if farm.records.iter().any(|(id, other)| id != own && other.certificate == record.certificate) {
        record.certificate = Text::new();
    }
}

/// The weeds that were rated on a field before, and those that passes over it were meant for, the latest first.
pub fn weeds_on<'a>(farm: &'a Farm, field: &'a str) -> Vec<String> {
    before(farm, |record| {
        let here = record.fields.contains_key(field);
        let rated = record.outcomes.iter().filter(move |outcome| outcome.field == field).filter_map(|outcome| {
            match &outcome.effect {
                Some(crate::farm::Effect::Control(weed)) => Some(weed.as_str()),
                _ => None,
            }
        });
        rated.chain(record.weeds.iter().filter(move |_| here).map(Text::as_str))
    })
}

#[cfg(test)]
mod tests {
    use super::{before, certificate_of, follow_operator, weeds_on};
    use crate::farm::{Effect, Farm, Outcome, Record, RecordField};
    use crate::quantity::AsTyped;
    use jiff::civil::date;

    fn farm() -> Farm {
        let mut farm = Farm::new("Test");
        for (day, operator, certificate, weed) in [
            (1, "A. Demo", "A 1", "velvetleaf"),
            (3, "B. Demo", "", "giant foxtail"),
            (2, "A. Demo", "A 2", "waterhemp"),
            (4, "A. Demo", "", "velvetleaf"),
        ] {
            let mut record = Record::new("Pass", date(2031, 5, day));
            record.operator = operator.into();
            record.certificate = certificate.into();
            record.weeds = vec![weed.into()];
            let field = if day == 3 { "hill" } else { "mill" };
            record.fields.insert(field.to_owned(), RecordField::new(field, AsTyped::parse("80 ac").unwrap()));
            farm.records.insert(format!("record-{day}"), record);
        }
        farm
    }

    #[test]
    fn the_latest_comes_first_and_each_once() {
        let farm = farm();
        assert_eq!(before(&farm, |record| [record.operator.as_str()]), ["A. Demo", "B. Demo"]);
        assert_eq!(before(&farm, |record| [record.certificate.as_str()]), ["A 2", "A 1"]);
    }

    #[test]
    fn a_certificate_goes_with_its_operator() {
        let farm = farm();
        assert_eq!(certificate_of(&farm, "", " A. Demo "), Some("A 2"));
        assert_eq!(certificate_of(&farm, "record-2", "A. Demo"), Some("A 1"));
        assert_eq!(certificate_of(&farm, "", "B. Demo"), None);
        assert_eq!(certificate_of(&farm, "", ""), None);
        let mut record = Record::new("Pass", date(2031, 5, 9));
        record.operator = "A. Demo".into();
        follow_operator(&farm, "own", &mut record);
        assert_eq!(record.certificate, "A 2");
        record.operator = "B. Demo".into();
        follow_operator(&farm, "own", &mut record);
        assert_eq!(record.certificate, "");
        // One that no record has was typed for this person.
        record.certificate = "B 7".into();
        follow_operator(&farm, "own", &mut record);
        assert_eq!(record.certificate, "B 7");
    }

    #[test]
    fn weeds_of_a_field_are_those_of_its_own_records() {
        let mut farm = farm();
        farm.records["record-2"].outcomes.push(Outcome {
            field: "mill".into(),
            date: date(2031, 5, 16),
            effect: Some(Effect::Control("morning glory".into())),
            rating: None,
            by: "".into(),
            photos: Vec::new(),
            note: "".into(),
        });
        assert_eq!(weeds_on(&farm, "mill"), ["velvetleaf", "morning glory", "waterhemp"]);
        assert_eq!(weeds_on(&farm, "hill"), ["giant foxtail"]);
    }
}
