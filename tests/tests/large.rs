//! A large farm is read, planned and saved as any other: what is done in pieces, beside one another or by sharing gives what is done
//! plainly.

// A test stops where its ground is missing.
#![allow(clippy::unwrap_used, clippy::indexing_slicing, clippy::panic)]

use proptest::prelude::*;
use tankard_core::farm::{Farm, InTank, Left, Record, differs};
use tankard_core::language::{Language, speaking};
use tankard_core::plan::{plan, plan_of};
use tankard_core::quantity::AsTyped;
use tankard_core::season::Log;
use tankard_core::stock::Accounts;
use tankard_file::store::{self, Save};
use tankard_file::{read, read_plainly, write};
use tankard_tests::large::{self, OPEN, Size};
use tankard_tests::{cases, demo};

fn farm(fields: u32, records: u32) -> Farm {
    let size = Size { fields, records, products: 40, seasons: 4, passes: 30, cards: 5, ..Size::default() };
    large::farm(&demo().unwrap(), size).unwrap()
}

#[test]
fn a_large_farm_opens_and_is_saved_to_the_same_bytes() {
    let farm = farm(200, 2_000);
    assert_eq!((farm.fields.len(), farm.records.len(), farm.products.len()), (208, 2_000, 40));
    let text = write(&farm).unwrap();
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("large.ron");
    std::fs::write(&path, &text).unwrap();
    let (mut opened, stamp) = store::open(&path).unwrap();
    assert!(differs::between(&farm, &opened).is_empty() && opened == farm);
    assert!(opened.records.keys().eq(farm.records.keys()));
    Save { path: &path, farm: &opened, stamp: Some(stamp), backups: None }.run().unwrap();
    assert!(std::fs::read_to_string(&path).unwrap() == text, "nothing was changed, so no byte is");
    // One letter more in one record is one letter more in the file.
    let (_, record) = opened.records.get_index_mut(1_234).unwrap();
    record.operator = format!("{}!", record.operator).into();
    let Record { operator, .. } = record.clone();
    Save { path: &path, farm: &opened, stamp: Some(stamp), backups: None }.run().unwrap();
    let saved = std::fs::read_to_string(&path).unwrap();
    assert_eq!(saved.len(), text.len() + 1);
    let differing: Vec<(&str, &str)> = text.lines().zip(saved.lines()).filter(|(was, is)| was != is).collect();
    assert!(matches!(differing.as_slice(), [(_, is)] if is.contains(operator.as_str())), "{differing:?}");
}

#[test]
fn a_large_farm_is_planned_alike_however_it_was_read_and_looked_up() {
    let mut farm = farm(200, 2_000);
    let opened = read(write(&farm).unwrap().as_bytes()).unwrap();
    let fresh = plan(&farm, OPEN).unwrap();
    assert!(!fresh.loads.is_empty(), "{:?}", fresh.findings);
    assert!(plan(&opened, OPEN).unwrap() == fresh);
    let mut log = Log::of(&farm);
    let before = farm.clone();
    let edits: [fn(&mut Farm); 5] = [
        |farm| farm.passes[OPEN].mix[0].rate = AsTyped::parse("20.5 fl oz/ac").unwrap(),
        |farm| drop(farm.records.shift_remove_index(1_500)),
        |farm| {
            // What the open pass is to spray was sprayed before, on the same fields.
            let (fields, product) = (farm.passes[OPEN].fields.clone(), farm.passes[OPEN].mix[0].product.clone());
            for (number, record) in farm.records.values_mut().enumerate().filter(|(number, _)| number % 90 == 0) {
                let (_, ground) = record.fields.first().unwrap();
                let ground = ground.clone();
                record.fields.insert(fields[number % fields.len()].clone(), ground);
                record.lines[0].product = (&product).into();
            }
        },
        |farm| drop(farm.passes.shift_remove("pass-1980")),
        |farm| farm.records.clear(),
    ];
    for (number, edit) in edits.into_iter().enumerate() {
        edit(&mut farm);
        log.catch_up(&farm);
        assert!(plan_of(&farm, &log, OPEN) == plan(&farm, OPEN), "edit {number}");
        assert!(Accounts::of_all(&farm, &log) == Accounts::of(&farm), "edit {number}");
    }
    assert!(before == opened, "a copy from before the edits is as it was");
}

/// What is put into a file, or in the place of what stands there.
fn signs() -> impl Strategy<Value = String> {
    let signs = [
        "\"",
        "\\",
        "(",
        ")",
        "{",
        "}",
        ",",
        ":",
        "//",
        "/*",
        "*/",
        "\n",
        "0",
        "None",
        "é",
        "\n        ),\n        \"x\": Record(\n",
        "),\n        \"x\": Record(name: \"y\", ",
    ];
    prop::sample::select(signs.map(str::to_owned).to_vec())
}

/// A farm of which all products are counted and every third record left something over.
fn small() -> Farm {
    let size =
        Size { fields: 20, records: 60, products: 16, seasons: 2, passes: 12, cards: 0, points: 4, ..Size::default() };
    let mut farm = large::farm(&demo().unwrap(), size).unwrap();
    let begin = farm.records.values().map(|record| record.date).min();
    farm.products.values_mut().for_each(|product| product.counted = begin);
    for (number, record) in farm.records.values_mut().enumerate().filter(|(number, _)| number % 3 == 0) {
        record.left = left(number);
    }
    farm
}

fn left(number: usize) -> Option<Left> {
    let volume = AsTyped::parse(&format!("{} gal", 5 + number % 40)).unwrap();
    (!number.is_multiple_of(4)).then(|| Left { volume, went: "kept".into() })
}

/// An edit that may bear on an account, or may not.
fn edit(farm: &mut Farm, what: u8, number: usize) {
    let place = |len: usize| number % len.max(1);
    let other_pass = farm.passes.get_index(place(farm.passes.len())).map(|(id, _)| id.clone());
    let at = place(farm.records.len());
    if let Some((_, record)) = farm.records.get_index_mut(at) {
        let line = number / 7 % record.lines.len().max(1);
        match what {
            0 => record.note = format!("windy {number}").into(),
            1 => record.lines[line].amount = AsTyped::parse(&format!("{} gal", number % 30)).unwrap(),
            2 => record.lines[line].lot = format!("L{}", number % 5).into(),
            3 => record.date = record.date.tomorrow().unwrap(),
            4 => record.left = left(number),
            5 => record.pass = other_pass.as_deref().filter(|_| !number.is_multiple_of(3)).map(Into::into),
            6 => record.start = Some(jiff::civil::time(i8::try_from(number % 24).unwrap(), 0, 0, 0)),
            7 => {
                record.volume =
                    AsTyped::parse(&format!("{} gal", 100 + number % 900)).ok().filter(|_| !number.is_multiple_of(4));
            }
            8 => record.customer = number.is_multiple_of(2).then(Default::default),
            9 => record.lines.swap(0, line),
            _ => {}
        }
    }
    let product = place(farm.products.len());
    match what {
        10 => drop(farm.records.shift_remove_index(at)),
        11 => {
            let copy = farm.records.get_index(at).map(|(_, record)| record.clone());
            farm.records.extend(copy.map(|copy| (format!("new-{number}"), copy)));
        }
        12 => farm.records.swap_indices(at, number / 7 % farm.records.len().max(1)),
        13 => {
            let (_, product) = farm.products.get_index_mut(product).unwrap();
            product.counted = product.counted.filter(|_| !number.is_multiple_of(5)).and_then(|day| day.tomorrow().ok());
        }
        14 => drop((!farm.movements.is_empty()).then(|| farm.movements.remove(place(farm.movements.len())))),
        15 => {
            let again = farm.movements.get(place(farm.movements.len())).cloned();
            farm.movements.extend(again);
        }
        16 => {
            let from = farm.passes.get_index(number / 7 % farm.passes.len()).map(|(id, _)| id.clone()).unwrap();
            let volume = AsTyped::parse(&format!("{} gal", number % 30)).unwrap();
            let at = place(farm.passes.len());
            let (_, pass) = farm.passes.get_index_mut(at).unwrap();
            pass.in_tank = Some(InTank { volume, from });
        }
        17 => {
            let (_, product) = farm.products.get_index_mut(product).unwrap();
            product.density = AsTyped::parse("9.1 lb/gal").ok().filter(|_| number.is_multiple_of(2));
        }
        _ => {}
    }
}

proptest! {
    #![proptest_config(cases(24))]

    /// The accounts that a log keeps, and what plans and lists ask of it, are those of a log made anew, whatever is edited.
    #[test]
    fn what_a_log_keeps_is_what_is_reckoned_anew(
        edits in prop::collection::vec((0_u8..18, any::<u16>(), any::<bool>(), any::<bool>()), 1..40),
    ) {
        let mut farm = small();
        let mut log = Log::of(&farm);
        Accounts::of_all(&farm, &log);
        for (what, number, in_spanish, is_asked) in edits {
            edit(&mut farm, what, usize::from(number));
            if is_asked {
                log.catch_up(&farm);
                let language = if in_spanish { Language::Spanish } else { Language::English };
                let (kept, anew) = speaking(language, || (Accounts::of_all(&farm, &log), Accounts::of(&farm)));
                prop_assert!(kept == anew, "edit {what} of {number}");
            }
        }
        log.catch_up(&farm);
        prop_assert!(Accounts::of_all(&farm, &log) == Accounts::of(&farm));
        prop_assert!(plan_of(&farm, &log, OPEN) == plan(&farm, OPEN));
    }
}

proptest! {
    #![proptest_config(cases(6))]

    /// A file that was changed by hand or is broken gives the same farm, or the same message with the same line and column.
    #[test]
    fn a_changed_file_reads_as_it_reads_plainly(
        at in any::<prop::sample::Index>(), gone in 0_usize..12, sign in prop::option::of(signs()), whole_line in any::<bool>(),
    ) {
        static TEXT: std::sync::OnceLock<String> = std::sync::OnceLock::new();
        let text = TEXT.get_or_init(|| write(&farm(10, 1_000)).unwrap());
        let boundary = |from: usize| (from..=text.len()).find(|at| text.is_char_boundary(*at)).unwrap();
        let (mut from, mut to) = (boundary(at.index(text.len())), 0);
        to = boundary((from + gone).min(text.len())).max(to);
        if whole_line {
            from = text[..from].rfind('\n').map_or(0, |at| at + 1);
            to = text[from..].find('\n').map_or(text.len(), |at| from + at + 1);
        }
        let mut changed = text.clone();
        changed.replace_range(from..to, &sign.unwrap_or_default());
        let (quick, plain) = (read(changed.as_bytes()), read_plainly(changed.as_bytes()));
        if let (Ok(quick), Ok(plain)) = (&quick, &plain) {
            prop_assert!(quick == plain && write(quick).unwrap() == write(plain).unwrap());
        } else {
            prop_assert_eq!(quick.err(), plain.err());
        }
    }
}
