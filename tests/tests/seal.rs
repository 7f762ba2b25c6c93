//! Signed records: the seal as other libraries reckon it, amendments forward and backward, and what is noticed.

// A test stops where its ground is missing.
#![allow(clippy::unwrap_used, clippy::indexing_slicing, clippy::panic)]

use jiff::civil::{DateTime, date, datetime, time};
use proptest::prelude::*;
use serde_json::Value;
use tankard_core::farm::{
    Amendment, Change, Customer, Droplets, Expected, Farm, Left, Reading, Record, RecordActive, RecordField,
    RecordLine, Said, Signature,
};
use tankard_core::finding::{Level, Subject};
use tankard_core::quantity::{ActiveBasis, AsTyped, Quantity};
use tankard_core::season::amend::{amend, differences, history, original, replay, take_as_it_is, words};
use tankard_core::season::seal::{Link, Refusal, Verdict, findings, sign, verify};
use tankard_tests::cases;

fn typed<Q: Quantity>(text: &str) -> AsTyped<Q> {
    AsTyped::parse(text).unwrap()
}

fn evening() -> DateTime {
    datetime(2031, 6, 12, 20, 14, 0, 0)
}

/// A record with something in most places.
fn full() -> Record {
    let mut record = Record::new("Corn, second post", date(2031, 6, 12));
    record.start = Some(time(5, 40, 0, 0));
    record.fields.insert("mill-field".to_owned(), RecordField::new("Mill field", typed("74.6 ac")));
    record.fields.insert("east~/side".to_owned(), RecordField::new("East side", typed("0,5 ha")));
    for (id, name, amount) in [
        ("glyphosate", "Glyphosate 540 SL (demo)", "12.8 gal"),
        ("oil", "Crop oil (demo)", "9 gal"),
        ("ams", "AMS (demo)", "190 lb"),
    ] {
        record.lines.push(RecordLine::new(id, name, typed(amount)));
    }
    record.lines[0].actives.push(RecordActive {
        name: "glyphosate".into(),
        group: "9".into(),
        basis: ActiveBasis::AcidEquivalent,
        mass: typed("57.7 lb"),
    });
    record.weeds = vec!["waterhemp".into(), "giant foxtail".into()];
    record.wind = Some(typed("6 mph"));
    for (at, wind) in [(6, "7 mph"), (7, "8 mph"), (8, "9 mph")] {
        record.readings.push(Reading { at: Some(time(at, 0, 0, 0)), wind: Some(typed(wind)), ..Reading::default() });
    }
    record.operator = "A. Demo".into();
    record.note = "The east side was wet.".into();
    record
}

fn amended(record: &Record, change: impl FnOnce(&mut Record)) -> Record {
    let mut changed = record.clone();
    change(&mut changed);
    amend(record, &changed, "B. Demo", datetime(2031, 6, 13, 7, 2, 0, 0), "read wrongly").unwrap()
}

/// `tests/scripts/seal.py`: the seals by Python's hashlib over canonical JSON by rfc8785 0.1.4 and by jcs 0.2.1, the record after each
/// amendment by jsonpointer 3.0.0. What is signed and amended here must come to the same seals, byte for byte.
#[test]
fn seals_are_those_of_other_libraries() {
    let sample: Value = serde_json::from_str(include_str!("../reference/seal.json")).unwrap();
    let signed: Record = serde_json::from_value(sample["signed"].clone()).unwrap();
    let record: Record = serde_json::from_value(sample["record"].clone()).unwrap();
    assert_eq!((verify(&signed), verify(&record)), (Verdict::Intact, Verdict::Intact));
    let Signature { by, at, .. } = *signed.signed.clone().unwrap();
    let unsigned = Record { signed: None, ..signed.clone() };
    assert_eq!(sign(&unsigned, &by, at).unwrap(), signed);
    assert_eq!(Record { outcomes: Vec::new(), ..original(&record).unwrap() }, signed);
    let mut now = signed;
    for (at, expected) in record.amendments.iter().enumerate() {
        let Amendment { by, at: when, why, .. } = expected;
        let next = replay(&now, &record.amendments[at..=at]).unwrap();
        now = amend(&now, &next, by, *when, why).unwrap();
        assert_eq!(now.amendments[at], *expected);
    }
    assert_eq!(now.amendments.len(), 2);
    assert_eq!(Record { outcomes: record.outcomes.clone(), ..now }, record);
}

#[test]
fn an_amendment_says_who_when_why_and_what_stood_there() {
    let signed = sign(&full(), "A. Demo", evening()).unwrap();
    let record = amended(&signed, |record| record.fields["mill-field"].area = typed("70 ac"));
    let Amendment { by, why, changes, .. } = &record.amendments[0];
    assert_eq!((by.as_str(), why.as_str()), ("B. Demo", "read wrongly"));
    let change = Change {
        what: "/fields/mill-field/area".to_owned(),
        was: Some(Said::Text("74.6 ac".to_owned())),
        is: Some(Said::Text("70 ac".to_owned())),
    };
    assert_eq!(changes.as_slice(), std::slice::from_ref(&change));
    assert_eq!(words(&change, &record), "Area of Mill field: 74.6 ac, now 70 ac");
    assert_eq!(verify(&record), Verdict::Intact);
    assert_eq!(original(&record).unwrap(), signed);
}

#[test]
fn changes_read_as_people_say_them() {
    let signed = sign(&full(), "A. Demo", evening()).unwrap();
    let mut changed = full();
    changed.lines.remove(1);
    changed.lines[0].actives[0].mass = typed("55 lb");
    changed.readings.remove(1);
    changed.readings[1].wind = None;
    changed.weeds.push("kochia".into());
    changed.gust = Some(typed("12 mph"));
    changed.start = Some(time(6, 0, 0, 0));
    changed.end = Some(time(9, 10, 0, 0));
    changed.note = "".into();
    changed.fields.shift_remove("east~/side");
    changed.left = Some(Left { volume: typed("10 gal"), went: "on the first field".into() });
    let expected = [
        "Start: 05:40, now 06:00",
        "Field: East side, 0,5 ha taken out",
        "Glyphosate in Glyphosate 540 SL (demo): 57.7 lb, now 55 lb",
        "Product: Crop oil (demo), 9 gal taken out",
        "Weed or pest: kochia put in",
        "Note: The east side was wet., now nothing",
        "Gust: nothing, now 12 mph",
        "End: nothing, now 09:10",
        "Left over: nothing, now 10 gal, on the first field",
    ];
    let told = differences(&signed, &changed);
    for words in expected {
        assert!(told.iter().any(|told| told == words), "{words} in {told:#?}");
    }
    let record = amend(&signed, &changed, "B. Demo", evening(), "typed anew").unwrap();
    assert_eq!(history(&record), [told]);
    // Each in the words of the record as it then stood: the product that was taken out later has its name still.
    let later = amended(&record, |record| drop(record.lines.remove(0)));
    assert_eq!(history(&later)[0], history(&record)[0]);
    assert_eq!(history(&later)[1], ["Product: Glyphosate 540 SL (demo), 12.8 gal taken out"]);
}

#[test]
fn what_is_no_amendment_is_refused() {
    let record = full();
    let mut changed = record.clone();
    changed.note = "another".into();
    assert_eq!(amend(&record, &changed, "A", evening(), "why"), Err(Refusal::Unsigned));
    let signed = sign(&record, "A. Demo", evening()).unwrap();
    assert_eq!(amend(&signed, &changed, " ", evening(), "why"), Err(Refusal::NoName));
    assert_eq!(amend(&signed, &changed, "A", evening(), "\n "), Err(Refusal::NoReason));
    assert_eq!(amend(&signed, &record, "A", evening(), "why"), Err(Refusal::NoChange));
    assert_eq!(take_as_it_is(&signed, "A", evening(), "why"), Err(Refusal::NotBroken));
    assert_eq!(take_as_it_is(&record, "A", evening(), "why"), Err(Refusal::Unsigned));
    assert_eq!((original(&record), replay(&record, &[])), (Err(Refusal::Unsigned), Err(Refusal::Unsigned)));
    let altered = Record { note: "by hand".into(), ..signed };
    assert_eq!(amend(&altered, &changed, "A", evening(), "why"), Err(Refusal::Broken));
    assert_eq!(original(&altered), Err(Refusal::Broken));
}

#[test]
fn outcomes_are_not_sealed() {
    let signed = sign(&full(), "A. Demo", evening()).unwrap();
    let mut rated = signed.clone();
    rated.outcomes.push(tankard_core::farm::Outcome {
        field: "mill-field".into(),
        date: date(2031, 7, 1),
        effect: None,
        rating: Some(typed("95 %")),
        by: "".into(),
        photos: Vec::new(),
        note: "".into(),
    });
    assert_eq!(verify(&rated), Verdict::Intact);
    let later = amended(&rated, |record| {
        record.note = "".into();
        record.outcomes.clear();
    });
    assert_eq!(later.outcomes, rated.outcomes, "an amendment touches none");
}

/// A copy of a signed record is whole in itself, but its seal stands twice.
#[test]
fn a_signed_record_that_is_copied_is_told() {
    let mut farm = Farm::new("Test");
    let signed = sign(&full(), "A. Demo", evening()).unwrap();
    farm.records.insert("corn".to_owned(), signed.clone());
    farm.records.insert("unsigned".to_owned(), full());
    farm.records.insert("another".to_owned(), sign(&full(), "B. Demo", evening()).unwrap());
    assert_eq!(findings(&farm), []);
    // Amended or rated since, it is a copy still.
    let mut copy = amended(&signed, |record| record.note = "The east side was left out.".into());
    copy.outcomes.clear();
    farm.records.insert("copy".to_owned(), copy);
    let found = findings(&farm);
    assert_eq!((found.len(), found[0].level, &found[0].about), (1, Level::Check, &Subject::Record("copy".to_owned())));
    assert!(found[0].text.contains("has the same seal as \"Corn, second post\" of 12 June 2031"), "{}", found[0].text);
}

/// A file changed by hand: what was, what is said of it, and that nothing is lost.
#[test]
fn a_record_changed_in_the_file_is_noticed_and_said() {
    let signed = sign(&full(), "A. Demo", evening()).unwrap();
    let record = amended(&signed, |record| record.fields["mill-field"].area = typed("70 ac"));
    let record = amended(&record, |record| record.note = "The east side was left out.".into());
    let mut farm = Farm::new("Test");
    farm.records.insert("corn".to_owned(), record.clone());
    farm.records.insert("unsigned".to_owned(), full());
    let text = tankard_file::write(&farm).unwrap();
    assert_eq!(findings(&farm), []);
    let by_hand = |what: &str, other: &str, last: bool| {
        let at = if last { text.rfind(what) } else { text.find(what) };
        let mut changed = text.clone();
        changed.replace_range(at.unwrap()..at.unwrap() + what.len(), other);
        let farm = tankard_file::read(changed.as_bytes()).unwrap();
        let found = findings(&farm);
        assert_eq!(found.len(), 1, "{what} as {other}");
        assert_eq!((found[0].level, &found[0].about), (Level::Check, &Subject::Record("corn".to_owned())));
        assert!(found[0].hint.contains("take it as it is"));
        found[0].text.clone()
    };
    let hash = |hash: &str| hash.replace(|digit| digit == hash.chars().next().unwrap(), "0");
    for (what, other, last, said) in [
        ("\"70 ac\"", "\"71 ac\"", false, "amendment 1 says that Area of Mill field is 70 ac, and 71 ac stands there"),
        ("\"9 gal\"", "\"8 gal\"", false, "what stands there, or who signed and when, is not what was signed"),
        (
            "by: \"A. Demo\"",
            "by: \"C. Demo\"",
            false,
            "who signed or when is not what was sealed; the record itself stands",
        ),
        ("why: \"read wrongly\"", "why: \"x\"", false, "who, when, why or what of amendment 1 is not what was sealed"),
        ("why: \"read wrongly\"", "why: \"x\"", true, "what stands there, or amendment 2 itself, is not"),
        ("2031-06-12T20:14:00", "2031-06-12T20:15:00", false, "who signed or when is not what was sealed"),
        (
            record.signed.as_ref().unwrap().hash.as_str(),
            &hash(&record.signed.as_ref().unwrap().hash),
            false,
            "the seal of the signature was changed, and nothing else",
        ),
        (
            record.amendments[0].hash.as_str(),
            &hash(&record.amendments[0].hash),
            false,
            "the seal of amendment 1 was changed, and nothing else",
        ),
    ] {
        let text = by_hand(what, other, last);
        assert!(text.contains(said), "{what} as {other}: {text}");
    }
    let gone = Record { signed: None, ..record };
    assert!(matches!(verify(&gone), Verdict::Broken { link: Link::Signature, said } if said.contains("was taken out")));
}

#[test]
fn a_record_found_altered_is_taken_as_it_is_and_goes_on() {
    let signed = sign(&full(), "A. Demo", evening()).unwrap();
    let record = amended(&signed, |record| record.fields["mill-field"].area = typed("70 ac"));
    let altered = Record { wind: Some(typed("5 mph")), ..record.clone() };
    assert!(matches!(verify(&altered), Verdict::Broken { link: Link::Signature, .. }));
    let taken = take_as_it_is(&altered, "B. Demo", evening(), "the file was mended by hand").unwrap();
    assert_eq!(verify(&taken), Verdict::Taken { amendment: 1 });
    let why = &taken.amendments[1].why;
    assert!(
        why.starts_with("what stands here was changed outside of an amendment; taken as it is by B. Demo"),
        "{why}"
    );
    // What the broken chain holds is there still, and is sealed with it.
    assert_eq!((&taken.signed, &taken.amendments[..1]), (&altered.signed, &altered.amendments[..]));
    let mut farm = Farm::new("Test");
    farm.records.insert("corn".to_owned(), taken.clone());
    assert_eq!(findings(&farm).iter().map(|found| found.level).collect::<Vec<_>>(), [Level::Note]);
    // It goes on, and is watched as before.
    let later = amended(&taken, |record| record.note = "".into());
    assert_eq!(verify(&later), Verdict::Taken { amendment: 1 });
    assert!(matches!(original(&later), Err(Refusal::NotTold(_))));
    let changes: [fn(&mut Record); 6] = [
        |record| record.wind = Some(typed("6 mph")),
        |record| record.signed.as_mut().unwrap().by = "somebody else".into(),
        |record| record.amendments[0].why.push('x'),
        |record| record.amendments[1].why.push('x'),
        |record| drop(record.amendments.remove(0)),
        |record| record.amendments[2].why.push('x'),
    ];
    for (at, change) in changes.into_iter().enumerate() {
        let mut other = later.clone();
        change(&mut other);
        assert!(matches!(verify(&other), Verdict::Broken { .. }), "{at}");
        // What was known of the first break is not told again where a later seal alone breaks.
        let is_later = matches!(verify(&other), Verdict::Broken { link: Link::Amendment(2), .. });
        assert_eq!(is_later, at == 5, "{at}");
        // And could be taken once more.
        let again = take_as_it_is(&other, "C. Demo", evening(), "again").unwrap();
        assert!(matches!(verify(&again), Verdict::Taken { .. }), "{at}");
    }
}

/// What the last amendment changed stands there, so that its being gone is noticed; unless what stood before is put back, too,
/// which no seal can tell from the record as it once was.
#[test]
fn an_amendment_that_is_gone_is_noticed_where_its_content_stays() {
    let signed = sign(&full(), "A. Demo", evening()).unwrap();
    let once = amended(&signed, |record| record.note = "".into());
    let twice = amended(&once, |record| record.weeds.clear());
    for gone in [0, 1] {
        let mut record = twice.clone();
        record.amendments.remove(gone);
        assert!(matches!(verify(&record), Verdict::Broken { .. }), "{gone}");
    }
    let mut record = twice.clone();
    record.amendments.swap(0, 1);
    assert!(matches!(verify(&record), Verdict::Broken { .. }));
    assert_eq!(verify(&once), Verdict::Intact);
}

/// Each single character of what is sealed, of the seals, and of who, when and why.
#[test]
fn any_character_changed_is_noticed() {
    let signed = sign(&full(), "A. Demo", evening()).unwrap();
    let record = amended(&signed, |record| record.fields["mill-field"].area = typed("70 ac"));
    let record = amended(&record, |record| drop(record.lines.remove(1)));
    let text = serde_json::to_string(&record).unwrap();
    let letters: Vec<char> = text.chars().collect();
    let (mut read, mut noticed) = (0, 0);
    for at in 0..letters.len() {
        let mut changed = letters.clone();
        changed[at] = match changed[at] {
            '9' | ' ' => '8',
            'z' => 'y',
            '~' => '-',
            letter if letter.is_ascii_alphanumeric() => char::from(letter as u8 + 1),
            _ => '~',
        };
        // What is no record any more is refused when the file is read.
        let Ok(other) = serde_json::from_str::<Record>(&changed.into_iter().collect::<String>()) else { continue };
        read += 1;
        if matches!(verify(&other), Verdict::Broken { .. }) {
            noticed += 1;
        } else {
            assert_eq!(other, record, "character {at}, {:?}", letters[at]);
        }
    }
    assert!(read > 500 && noticed == read, "{noticed} of {read}");
}

/// One edit of a kind.
#[derive(Clone, Debug)]
struct Edit {
    kind: u8,
    at: usize,
    text: String,
}

fn edits() -> impl Strategy<Value = Vec<Edit>> {
    let text = prop_oneof![Just(String::new()), "[a-z~/\"\\\\ ]{0,6}", "\\PC{0,5}"];
    let edit = (0..28_u8, 0..50_usize, text).prop_map(|(kind, at, text)| Edit { kind, at, text });
    prop::collection::vec(edit, 1..4)
}

fn do_edit(record: &mut Record, Edit { kind, at, text }: Edit) {
    let number = at + 1;
    let within = |len: usize| if len == 0 { 0 } else { at % len };
    let line = |name: &str| RecordLine::new(&format!("product-{}", at % 5), name, typed(&format!("{number} gal")));
    let reading = |wind: usize| Reading { wind: Some(typed(&format!("{wind} mph"))), ..Reading::default() };
    let field_at = within(record.fields.len());
    let line_at = within(record.lines.len());
    let reading_at = within(record.readings.len());
    let weed_at = within(record.weeds.len());
    match kind {
        0 => drop(record.fields.insert(text, RecordField::new("New", typed(&format!("{number} ac"))))),
        1 => drop(record.fields.shift_remove_index(field_at)),
        2 => {
            if let Some((_, field)) = record.fields.get_index_mut(field_at) {
                field.area = typed(&format!("{number} ha"));
                field.crop = text.into();
            }
        }
        3 => record.lines.insert(within(record.lines.len() + 1), line(&text)),
        4 if !record.lines.is_empty() => drop(record.lines.remove(line_at)),
        5 if !record.lines.is_empty() => record.lines[line_at] = line(&text),
        6 if !record.lines.is_empty() => record.lines[line_at].amount = typed(&format!("{number} gal")),
        7 if !record.lines.is_empty() => record.lines.swap(0, line_at),
        8 if !record.lines.is_empty() => record.lines[line_at].actives.push(RecordActive {
            name: text.into(),
            group: "".into(),
            basis: ActiveBasis::ActiveIngredient,
            mass: typed(&format!("{number} lb")),
        }),
        9 if !record.lines.is_empty() => record.lines[line_at].actives.clear(),
        10 => record.lines.clear(),
        11 => record.readings.insert(within(record.readings.len() + 1), reading(number)),
        12 if !record.readings.is_empty() => drop(record.readings.remove(reading_at)),
        13 if !record.readings.is_empty() => record.readings[reading_at].wind_from = text.into(),
        14 => record.weeds.insert(within(record.weeds.len() + 1), text.into()),
        15 if !record.weeds.is_empty() => drop(record.weeds.remove(weed_at)),
        16 if !record.weeds.is_empty() => record.weeds[weed_at] = text.into(),
        17 => drop(record.more.insert(format!("key {}", at % 4), text)),
        18 => drop(record.more.shift_remove_index(within(record.more.len()))),
        19 => record.note = text.into(),
        20 => record.name = text.into(),
        21 => record.left = (at % 2 == 0).then(|| Left { volume: typed(&format!("{number} gal")), went: text.into() }),
        22 => record.customer = (at % 2 == 0).then(|| Box::new(Customer { name: text.into(), ..Customer::default() })),
        23 => record.date = date(2031, 6, i8::try_from(number % 28 + 1).unwrap()),
        24 => record.end = (at % 3 > 0).then(|| time(i8::try_from(at % 24).unwrap(), 5, 0, 0)),
        25 => record.loads = (at % 3 > 0).then_some(u32::try_from(number).unwrap()),
        26 => record.droplets = [None, Some(Droplets::Fine), Some(Droplets::Coarse)][at % 3],
        _ => {
            record.expected = (at % 2 == 0).then(|| {
                Box::new(Expected {
                    source: text.into(),
                    wind: Some((typed("4 mph"), typed(&format!("{number} mph")))),
                    ..Expected::default()
                })
            });
        }
    }
}

proptest! {
    #![proptest_config(cases(4))]

    /// A hundred amendments of all sorts lead from what was signed to what stands there, and back.
    #[test]
    fn a_hundred_amendments_go_forward_and_back(all in prop::collection::vec(edits(), 100), cut in 0..100_usize) {
        let signed = sign(&full(), "A. Demo", evening()).unwrap();
        let mut states = vec![signed.clone()];
        for (at, edits) in all.into_iter().enumerate() {
            let now = states.last().unwrap();
            let mut changed = now.clone();
            for edit in edits {
                do_edit(&mut changed, edit);
            }
            match amend(now, &changed, "B. Demo", evening(), &format!("reason {at}")) {
                Ok(next) => states.push(next),
                Err(refusal) => {
                    prop_assert_eq!(refusal, Refusal::NoChange);
                    prop_assert_eq!(&changed, now);
                }
            }
        }
        let record = states.last().unwrap();
        prop_assert!(record.amendments.len() > 60, "{}", record.amendments.len());
        prop_assert_eq!(verify(record), Verdict::Intact);
        prop_assert_eq!(original(record).unwrap(), signed.clone());
        for (at, state) in states.iter().enumerate() {
            prop_assert_eq!(&replay(&signed, &record.amendments[..at]).unwrap(), state);
        }
        prop_assert!(history(record).iter().all(|told| !told.is_empty() && told.iter().all(|words| words.contains(": "))));
        // Through the file.
        let mut farm = Farm::new("Test");
        farm.records.insert("corn".to_owned(), record.clone());
        let back = tankard_file::read(tankard_file::write(&farm).unwrap().as_bytes()).unwrap();
        prop_assert_eq!(&back, &farm);
        prop_assert!(findings(&back).is_empty());
        // One that is gone from anywhere is noticed.
        let mut less = record.clone();
        less.amendments.remove(cut % record.amendments.len());
        let noticed = matches!(verify(&less), Verdict::Broken { .. });
        prop_assert!(noticed);
    }
}
