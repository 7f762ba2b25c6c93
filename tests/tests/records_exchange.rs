//! Records out and in: what is written as CSV reads back to the letter, sums are right, and a spreadsheet of past seasons
//! becomes records only where it says what it means.

// A test stops where its ground is missing.
#![allow(clippy::unwrap_used, clippy::indexing_slicing, clippy::panic)]

use proptest::collection::vec;
use proptest::option::of;
use proptest::prelude::*;
use rust_decimal::Decimal;
use tankard_core::farm::{
    AdjuvantClass, Amendment, Change, Customer, Droplets, Effect, Expected, Farm, Field, Formulation, Left, Outcome,
    Product, ProductKind, Reading, Record, RecordActive, RecordField, RecordLine, Said, Says, Signature, Statement,
    Text,
};
use tankard_core::quantity::{ActiveBasis, AsTyped, Money, Quantity};
use tankard_core::season::seal::{self, Verdict};
use tankard_file::{records_csv, records_import, records_json};
use tankard_tests::cases;

fn typed<Q: Quantity>(text: &str) -> AsTyped<Q> {
    AsTyped::parse(text).unwrap()
}

/// The same as a record holds them.
fn text() -> impl Strategy<Value = Text> {
    odd().prop_map(Text::from)
}

/// Texts that files are broken by.
fn odd() -> impl Strategy<Value = String> {
    prop_oneof![
        3 => Just(String::new()),
        3 => "[a-z ]{1,12}",
        3 => ".{0,12}",
        4 => prop::sample::select(vec![
            "=1+1", "+49 1", "-2 lb", "@sum", "'", "''=x", "'tis", "a,b;c\td", "\"quoted\"", "two\nlines", "cr\r\nlf", "\rcr",
            "\ttab", " spaces ", "\u{feff}mark", "ü €…", "[\"x\"]", "null", "yes", "，＝", "\u{0}", "; ", "--", "\\n",
        ]).prop_map(str::to_owned),
    ]
}

fn quantity<Q: Quantity + std::fmt::Debug + 'static>(
    texts: &'static [&'static str],
) -> impl Strategy<Value = AsTyped<Q>> {
    prop::sample::select(texts).prop_map(|text| typed(text))
}

fn date() -> impl Strategy<Value = jiff::civil::Date> {
    (1900_i16..2100, 1_i8..=12, 1_i8..=28).prop_map(|(y, m, d)| jiff::civil::date(y, m, d))
}

fn time() -> impl Strategy<Value = jiff::civil::Time> {
    (0_i8..24, 0_i8..60, prop_oneof![4 => Just(0_i8), 1 => 0_i8..60])
        .prop_map(|(h, m, s)| jiff::civil::time(h, m, s, 0))
}

fn area() -> impl Strategy<Value = AsTyped<tankard_core::quantity::Area>> {
    quantity(&["74.6 ac", "96,0 ac", "0 ac", "12.5 ha", " 7 ac", "2 1/2 ac"])
}

fn volume() -> impl Strategy<Value = AsTyped<tankard_core::quantity::Volume>> {
    quantity(&["3387 gal", "1,250.5 gal", "6000 L", "0 L", "½ gal"])
}

fn amount() -> impl Strategy<Value = AsTyped<tankard_core::quantity::Amount>> {
    quantity(&["41 gal 1 qt", "64 L", "8 kg", "12 oz wt", "0 L", "17,5 lb"])
}

fn speed() -> impl Strategy<Value = AsTyped<tankard_core::quantity::Speed>> {
    quantity(&["6 mph", "3,5 m/s", "0 km/h"])
}

fn temperature() -> impl Strategy<Value = AsTyped<tankard_core::quantity::Temperature>> {
    quantity(&["68 °F", "-2 °C", "21.5 °C"])
}

fn share() -> impl Strategy<Value = AsTyped<tankard_core::quantity::Share>> {
    quantity(&["55 %", "0 %", "100 %"])
}

fn field() -> impl Strategy<Value = RecordField> {
    ((odd(), area(), odd(), odd(), of(area())), (odd(), odd(), of(date()), odd(), odd(), odd())).prop_map(
        |((name, area, crop, stage, planned), (part, variety, planted, location, parcel, crop_code))| RecordField {
            crop: crop.into(),
            stage: stage.into(),
            planned,
            part: part.into(),
            variety: variety.into(),
            planted,
            location: location.into(),
            parcel: parcel.into(),
            crop_code: crop_code.into(),
            ..RecordField::new(&name, area)
        },
    )
}

fn active() -> impl Strategy<Value = RecordActive> {
    let basis = prop::sample::select(&[ActiveBasis::AcidEquivalent, ActiveBasis::ActiveIngredient][..]);
    (odd(), odd(), basis, quantity(&["12.34 lb", "1,5 kg", "0 kg"]))
        .prop_map(|(name, group, basis, mass)| RecordActive { name: name.into(), group: group.into(), basis, mass })
}

fn line() -> impl Strategy<Value = RecordLine> {
    (
        (odd(), odd(), odd(), amount(), of(amount()), odd()),
        (of(quantity(&["24.50 / gal", "$ 3 / lb", "9,95 / L"])), of(prop::sample::select(&ProductKind::ALL[..]))),
        (
            of(prop::sample::select(&AdjuvantClass::ALL[..])),
            any::<bool>(),
            of(0_u32..999),
            of(any::<u32>()),
            vec(active(), 0..3),
        ),
    )
        .prop_map(
            |(
                (product, name, registration, amount, planned, lot),
                (price, kind),
                (class, restricted, entry, harvest, actives),
            )| {
                RecordLine {
                    registration: registration.into(),
                    planned,
                    lot: lot.into(),
                    price,
                    kind,
                    class,
                    restricted,
                    entry,
                    harvest,
                    actives,
                    ..RecordLine::new(&product, &name, amount)
                }
            },
        )
}

fn reading() -> impl Strategy<Value = Reading> {
    (of(time()), of(speed()), odd(), of(speed()), of(temperature()), of(share())).prop_map(
        |(at, wind, wind_from, gust, temperature, humidity)| Reading {
            at,
            wind,
            wind_from: wind_from.into(),
            gust,
            temperature,
            humidity,
        },
    )
}

fn expected() -> impl Strategy<Value = Expected> {
    (odd(), of((speed(), speed())), of(speed()), odd(), of((temperature(), temperature())), of((share(), share())))
        .prop_map(|(source, wind, gust, wind_from, temperature, humidity)| Expected {
            source: source.into(),
            wind,
            gust,
            wind_from: wind_from.into(),
            temperature,
            humidity,
        })
}

fn moment() -> impl Strategy<Value = jiff::civil::DateTime> {
    (date(), time()).prop_map(|(date, time)| date.to_datetime(time))
}

fn said() -> impl Strategy<Value = Option<Said>> {
    of(prop_oneof![odd().prop_map(Said::Text), odd().prop_map(Said::Json)])
}

fn amendment() -> impl Strategy<Value = Amendment> {
    let change = (odd(), said(), said()).prop_map(|(what, was, is)| Change { what, was, is });
    (odd(), moment(), odd(), vec(change, 0..3), odd()).prop_map(|(by, at, why, changes, hash)| Amendment {
        by,
        at,
        why,
        changes,
        hash,
    })
}

fn outcome() -> impl Strategy<Value = Outcome> {
    let effect = prop_oneof![text().prop_map(Effect::Control), text().prop_map(Effect::Injury)];
    (text(), date(), of(effect), of(share()), text(), vec(odd(), 0..3), text()).prop_map(
        |(field, date, effect, rating, by, photos, note)| Outcome { field, date, effect, rating, by, photos, note },
    )
}

fn record() -> impl Strategy<Value = Record> {
    let first = (
        of("[a-z0-9-]{1,12}"),
        odd(),
        date(),
        of(time()),
        of(time()),
        vec((odd(), field()), 0..4),
        vec(line(), 0..4),
        (of(volume()), of(volume()), of(any::<u32>()), of((volume(), odd())), vec(text(), 0..4)),
    );
    let machine = (
        odd(),
        odd(),
        odd(),
        odd(),
        of(quantity(&["30 psi", "2,5 bar"])),
        of(speed()),
        of(quantity(&["20 in", "50 cm"])),
        of(prop::sample::select(&Droplets::ALL[..])),
        odd(),
    );
    let weather =
        (of(speed()), odd(), of(speed()), of(temperature()), of(share()), vec(reading(), 0..3), of(expected()));
    let customer = (odd(), odd(), odd(), of(date())).prop_map(|(name, address, phone, copied)| Customer {
        name: name.into(),
        address: address.into(),
        phone: phone.into(),
        copied,
    });
    let people = (odd(), odd(), odd(), odd(), of(customer), vec((odd(), odd()), 0..3), of(moment()), odd());
    let seal = (
        of((odd(), moment(), odd()).prop_map(|(by, at, hash)| Signature { by: by.into(), at, hash })),
        vec(amendment(), 0..3),
        vec(outcome(), 0..3),
    );
    (first, machine, weather, people, seal).prop_map(
        |(
            (pass, name, date, start, end, fields, lines, (volume, planned, loads, left, weeds)),
            (water, rig, method, nozzles, pressure, speed, height, droplets, clean_out),
            (wind, wind_from, gust, temperature, humidity, readings, expected),
            (operator, certificate, supervisor, helpers, customer, more, made, note),
            (signed, amendments, outcomes),
        )| Record {
            pass: pass.map(Into::into),
            start,
            end,
            fields: fields.into_iter().collect(),
            volume,
            planned,
            loads,
            left: left.map(|(volume, went)| Left { volume, went: went.into() }),
            lines,
            weeds,
            water: water.into(),
            rig: rig.into(),
            method: method.into(),
            nozzles: nozzles.into(),
            pressure,
            speed,
            height,
            clean_out: clean_out.into(),
            wind,
            wind_from: wind_from.into(),
            gust,
            temperature,
            humidity,
            readings,
            droplets,
            expected: expected.map(Box::new),
            operator: operator.into(),
            certificate: certificate.into(),
            supervisor: supervisor.into(),
            helpers: helpers.into(),
            customer: customer.map(Box::new),
            more: more.into_iter().collect(),
            made,
            note: note.into(),
            signed: signed.map(Box::new),
            amendments,
            outcomes,
            ..Record::new(&name, date)
        },
    )
}

fn farm_of(records: Vec<Record>) -> Farm {
    let mut farm = Farm::new("Test farm");
    farm.records.extend(records.into_iter().enumerate().map(|(at, record)| (format!("r{at}"), record)));
    farm
}

proptest! {
    #![proptest_config(cases(128))]

    #[test]
    fn what_is_written_reads_back_the_same(records in vec(record(), 0..4), mark in any::<bool>()) {
        let farm = farm_of(records);
        let text = records_csv::write(&farm, |_| true).unwrap();
        let text = if mark { format!("\u{feff}{text}") } else { text };
        prop_assert!(records_csv::is_own(text.as_bytes()));
        let reading = records_csv::read(text.as_bytes()).unwrap();
        prop_assert_eq!(&reading.refused, &[]);
        let mut other = Farm::new("Other farm");
        let entered = records_csv::enter(&mut other, &reading.records, false);
        prop_assert_eq!(entered.entered.len(), farm.records.len());
        // Line ends of what is not signed become line feeds; a seal is over one kind of them.
        let mut farm = farm;
        for record in farm.records.values_mut().filter(|record| !seal::is_signed(record)) {
            *record = seal::with_line_feeds(record).unwrap();
        }
        prop_assert_eq!(&other.records, &farm.records);
        // In order, too, of records, fields and products; a second time nothing is entered.
        prop_assert_eq!(records_csv::write(&other, |_| true).unwrap(), records_csv::write(&farm, |_| true).unwrap());
        let again = records_csv::enter(&mut other, &reading.records, true);
        prop_assert_eq!((again.entered.len(), again.same), (0, farm.records.len()));
        // No cell is a formula: OWASP, CSV Injection.
        let mut csv = csv::Reader::from_reader(text.as_bytes());
        for row in csv.records() {
            for cell in &row.unwrap() {
                prop_assert!(!cell.starts_with(['=', '+', '-', '@', '\t', '\r']), "{:?}", cell);
            }
        }
    }

    #[test]
    fn sums_over_rows_are_those_of_the_records(records in vec(record(), 1..4)) {
        use tankard_core::quantity::Amount;
        let farm = farm_of(records);
        let text = records_csv::write(&farm, |_| true).unwrap();
        let mut csv = csv::Reader::from_reader(text.as_bytes());
        let head = csv.headers().unwrap().clone();
        let rows: Vec<csv::StringRecord> = csv.records().map(Result::unwrap).collect();
        let sum = |name: &str| -> f64 {
            let at = head.iter().position(|own| own == name).unwrap();
            rows.iter().filter(|row| !row[at].is_empty()).map(|row| row[at].parse::<f64>().unwrap()).sum()
        };
        let lines = || farm.records.values().flat_map(|record| &record.lines);
        let litres: f64 = lines().filter_map(|line| match line.amount.value() { Amount::Volume(v) => Some(v.to_litres()), Amount::Mass(_) => None }).sum();
        let kilograms: f64 = lines().filter_map(|line| match line.amount.value() { Amount::Mass(m) => Some(m.to_kilograms()), Amount::Volume(_) => None }).sum();
        let spray: f64 = farm.records.values().filter_map(|record| record.volume.as_ref()).map(|volume| volume.to_litres()).sum();
        let hectares: f64 = farm.records.values().map(|record| record.area().to_hectares()).sum();
        for (name, whole) in [("amount_l", litres), ("amount_kg", kilograms), ("spray_volume_l", spray), ("area_ha", hectares)] {
            prop_assert!((sum(name) - whole).abs() <= 1e-9 * whole.max(1.0), "{}: {} and {}", name, sum(name), whole);
        }
        // Money in decimals.
        let cost: Decimal = lines().filter_map(|line| line.price.as_ref()?.of(line.amount.value())).map(Money::amount).sum();
        let at = head.iter().position(|own| own == "cost").unwrap();
        let shared: Decimal = rows.iter().filter(|row| !row[at].is_empty()).map(|row| row[at].parse::<Decimal>().unwrap()).sum();
        prop_assert!((shared - cost).abs() <= Decimal::new(1, 9), "{} and {}", shared, cost);
    }

    #[test]
    fn no_bytes_stop_the_reader(bytes in vec(any::<u8>(), 0..400), cut in 0_usize..9000, put in any::<u8>()) {
        let farm = Farm::new("Test farm");
        if let Ok(table) = records_import::table(&bytes) {
            let _ = records_import::preview(&table, &records_import::guess(&table), &farm);
        }
        // A good file with one byte another, or cut off.
        let own = records_csv::write(&own_farm(), |_| true).unwrap();
        for good in [own.as_bytes(), SPREADSHEET.as_bytes(), GERMAN.as_bytes()] {
            let mut broken = good.to_vec();
            let at = cut % broken.len();
            broken[at] = put;
            for bytes in [&broken[..], &good[..at]] {
                // What reads is a whole record.
                if let Ok(reading) = records_csv::read(bytes) {
                    prop_assert!(reading.records.iter().all(|coming| coming.record.lines.len() == 2));
                }
                if let Ok(table) = records_import::table(bytes) {
                    let mut mapping = records_import::guess(&table);
                    mapping.days = Some(records_import::DayOrder::DayFirst);
                    let preview = records_import::preview(&table, &mapping, &farm);
                    let rows: usize = preview.records.iter().map(|coming| coming.lines.len()).sum();
                    // Each row is taken or refused.
                    prop_assert!(!preview.to_choose.is_empty() || rows + preview.refused.len() == table.rows.len());
                }
            }
        }
    }
}

const SPREADSHEET: &str = "\
Date,Field,Acres,Crop,Product,Rate (fl oz/ac),Total product,Unit,Applicator,Wind (mph),Start time,Notes
5/30/2030,Mill field,74.6,corn,Glyphosate 540 SL (demo),22,,,A. Demo,6,5:30 AM,
5/30/2030,mill field,74.6,corn,Crop oil (demo),,\"1,250.5\",fl oz,A. Demo,6,5:30 AM,by hand
6/12/2030,Hill sixty,55.2,soybean,Dicamba 600 (demo),16,7,gal,,,,
6/12/2030,Hill sixty,54,soybean,Glyphosate 540 SL (demo),22,,,,,,
,Hill sixty,,,Total,,,,,,,
7/1/2030,Yard,2,grass,Something old,,abc,L,,,,
";

const GERMAN: &str = "\u{feff}Datum;Schlag;Fläche (ha);Kultur;Mittel;Aufwandmenge (L/ha);Bemerkung
12.06.2030;Mühlacker;12,5;Weizen;Beispiel 480 (demo);1,25;früh
13.06.2030;Bergfeld;8,0;Gerste;Beispiel 480 (demo);1,5;
";

fn shed() -> Farm {
    let mut farm = Farm::new("Test farm");
    farm.fields.insert("mill".to_owned(), Field::new("Mill field", typed("74.6 ac")));
    let mut product = Product::new("Glyphosate 540 SL (demo)", ProductKind::Herbicide, Formulation::SL);
    "demo-1".clone_into(&mut product.registration);
    product.price = Some(typed("20 / gal"));
    product.actives.push(tankard_core::farm::Active {
        name: "glyphosate".to_owned(),
        group: "9".to_owned(),
        basis: ActiveBasis::AcidEquivalent,
        content: typed("540 g/L"),
    });
    farm.products.insert("gly".to_owned(), product);
    farm
}

#[test]
fn a_spreadsheet_becomes_records_and_says_what_does_not() {
    let mut farm = shed();
    let table = records_import::table(SPREADSHEET.as_bytes()).unwrap();
    let mapping = records_import::guess(&table);
    let preview = records_import::preview(&table, &mapping, &farm);
    assert!(preview.to_choose.is_empty(), "{:?} {mapping:?}", preview.to_choose);
    // The first two rows are one record; the areas of the next two contradict one another.
    assert_eq!(preview.records.len(), 1, "{:?}", preview.refused);
    let record = &preview.records[0].record;
    assert_eq!(preview.records[0].lines, [2, 3]);
    assert_eq!(
        (record.date.to_string().as_str(), record.start.unwrap().hour(), record.start.unwrap().minute()),
        ("2030-05-30", 5, 30)
    );
    assert_eq!(
        (record.operator.as_str(), record.wind.as_ref().unwrap().text(), record.note.as_str()),
        ("A. Demo", "6 mph", "by hand")
    );
    assert_eq!(record.fields["mill"].area.text(), "74.6 ac");
    // 74.6 ac × 22 fl oz/ac = 1641.2 fl oz; 128 fl oz are a gallon.
    let gly = &record.lines[0];
    assert_eq!(gly.product, "gly");
    let tankard_core::quantity::Amount::Volume(volume) = gly.amount.value() else { panic!("a liquid") };
    assert!((volume.to_us_fluid_ounces() / 1641.2 - 1.0).abs() < 1e-4, "{}", gly.amount);
    assert_eq!((gly.registration.as_str(), gly.price.as_ref(), gly.actives.len()), ("demo-1", None, 1));
    let oil = &record.lines[1];
    assert_eq!(
        (oil.product.as_str(), oil.name.as_str(), oil.amount.text()),
        ("crop-oil-demo", "Crop oil (demo)", "1250.5 fl oz")
    );
    let why: Vec<(u64, &str)> = preview.refused.iter().map(|refused| (refused.line, refused.why.as_str())).collect();
    assert_eq!(why.iter().map(|(line, _)| *line).collect::<Vec<_>>(), [4, 5, 6, 7]);
    assert_eq!(why[0].1, "it is one record with line 5, which is left out");
    assert!(why[1].1.starts_with("area is not as on line 4"), "{}", why[1].1);
    assert_eq!(why[2].1, "there is no day");
    assert!(why[3].1.starts_with("amount: "), "{}", why[3].1);
    assert!(preview.notes.contains(&"1 amount is reckoned from the rate".to_owned()), "{:?}", preview.notes);
    assert!(preview.notes.iter().any(|note| note.contains("kept by name without actives: Crop oil (demo)")));
    let products = farm.products.clone();
    let ids = records_import::enter(&mut farm, &preview.records);
    assert_eq!(ids, ["2030-05-30-mill-field"]);
    assert_eq!(farm.products, products);
    // Once more it is all there already.
    let again = records_import::preview(&table, &mapping, &farm);
    assert_eq!(again.records, []);
    assert_eq!(again.refused[0].why, "the log has it already, as \"2030-05-30-mill-field\"");
}

#[test]
fn semicolons_decimal_commas_and_other_letters_are_read() {
    let farm = shed();
    // Windows-1252: ü, ä and ß are single bytes there.
    let old: Vec<u8> =
        GERMAN.trim_start_matches('\u{feff}').chars().map(|c| u8::try_from(u32::from(c)).unwrap()).collect();
    for bytes in [GERMAN.as_bytes(), &old, GERMAN.replace(';', "\t").as_bytes()] {
        let table = records_import::table(bytes).unwrap();
        let preview = records_import::preview(&table, &records_import::guess(&table), &farm);
        assert_eq!((preview.to_choose.len(), preview.refused.len(), preview.records.len()), (0, 0, 2), "{preview:?}");
        let record = &preview.records[0].record;
        let field = record.fields.values().next().unwrap();
        assert_eq!(
            (record.date.to_string().as_str(), field.name.as_str(), field.area.text()),
            ("2030-06-12", "Mühlacker", "12,5 ha")
        );
        // 12.5 ha × 1.25 L/ha.
        let tankard_core::quantity::Amount::Volume(volume) = record.lines[0].amount.value() else { panic!("a liquid") };
        assert!((volume.to_litres() - 15.625).abs() < 0.002, "{}", record.lines[0].amount);
    }
}

#[test]
fn what_may_be_meant_in_two_ways_is_asked() {
    let farm = shed();
    let ask = |text: &str| {
        let table = records_import::table(text.as_bytes()).unwrap();
        let mapping = records_import::guess(&table);
        (records_import::preview(&table, &mapping, &farm), table, mapping)
    };
    let (preview, table, mut mapping) = ask("date,field,acres,product,amount (L)\n12/06/2031,Mill field,40,X,3\n");
    assert_eq!(preview.to_choose, ["choose how days are written: \"12/06/2031\" on line 2 may be one of two"]);
    assert!(preview.records.is_empty());
    for (order, day) in
        [(records_import::DayOrder::DayFirst, "2031-06-12"), (records_import::DayOrder::MonthFirst, "2031-12-06")]
    {
        mapping.days = Some(order);
        assert_eq!(records_import::preview(&table, &mapping, &farm).records[0].record.date.to_string(), day);
    }
    let (preview, table, mut mapping) = ask("date;field;acres;product;amount (L)\n2031-06-12;Mill field;40;X;1,250\n");
    assert_eq!(preview.to_choose, ["choose how figures are written: \"1,250\" may mean 1250 or 1.250"]);
    for (comma, amount) in [(records_import::Comma::Decimal, "1.250 L"), (records_import::Comma::Thousands, "1250 L")] {
        mapping.comma = Some(comma);
        assert_eq!(records_import::preview(&table, &mapping, &farm).records[0].record.lines[0].amount.text(), amount);
    }
    let (preview, ..) = ask("date,field,area,product,amount\n2031-06-12,Mill field,40,X,3\n");
    assert_eq!(
        preview.to_choose,
        [
            "choose the unit of \"area\"; the file does not say it",
            "choose the unit of \"amount\"; the file does not say it"
        ]
    );
    let (preview, ..) = ask("date,what\n2031-06-12,X\n");
    assert_eq!(preview.to_choose.len(), 3, "{:?}", preview.to_choose);
    // A bare ounce of what may be a liquid.
    let (preview, ..) =
        ask("date,field,acres,product,rate,rate unit\n2031-06-12,Mill field,40,Glyphosate 540 SL (demo),22,oz/ac\n");
    assert!(preview.refused[0].why.contains("may be fluid ounces or weighed"), "{:?}", preview.refused);
}

#[test]
fn a_file_that_is_too_large_is_refused_before_it_is_read() {
    let error = records_import::table(&vec![b','; (20 << 20) + 1]).unwrap_err().to_string();
    assert_eq!(
        error,
        "the file is larger than 20 MB, so it is more than a season log; cut it to a few seasons at a time"
    );
    let error = records_import::table("2031-06-12,1\n".repeat(200_002).as_bytes()).unwrap_err().to_string();
    assert!(error.contains("more than 200000 lines"), "{error}");
    assert!(records_csv::read(b"date,field\n").unwrap_err().to_string().contains("head line"));
}

/// Each of these took the square of its length: a single record could hold the program for hours.
#[test]
fn one_record_of_very_many_rows_takes_no_square_of_time() {
    let mut farm = own_farm();
    let record = &mut farm.records["r"];
    record.lines.truncate(1);
    record.fields = (0..10_000).map(|n| (format!("f{n}"), RecordField::new("F", typed("1 ha")))).collect();
    let text = records_csv::write(&farm, |_| true).unwrap();
    let reading = records_csv::read(text.as_bytes()).unwrap();
    assert_eq!(reading.records.first().map(|coming| &coming.record), Some(&farm.records["r"]));
    // All of its rows wrong, each for itself.
    let broken = text.replace("\nr,", "\nr,x,");
    let reading = records_csv::read(broken.as_bytes()).unwrap();
    assert_eq!((reading.records.len(), reading.refused.len()), (0, 10_000));
    // A cell with ever other weeds, and rows with ever other notes.
    let weeds: Vec<String> = (0..100_000).map(|n| format!("w{n}")).collect();
    let rows: Vec<String> =
        (0..20_000).map(|n| format!("2031-06-12,Mill field,40 ac,Old {n} (demo),1 gal,,note {n}\n")).collect();
    let rows = rows.concat();
    let head = "Date,Field,Area,Product,Amount,Weeds,Notes\n";
    let text = format!("{head}{rows}2031-06-12,Mill field,40 ac,Old (demo),1 gal,\"{}\",\n", weeds.join(","));
    let table = records_import::table(text.as_bytes()).unwrap();
    let preview = records_import::preview(&table, &records_import::guess(&table), &Farm::new("Test farm"));
    assert_eq!((preview.to_choose, preview.refused), (Vec::new(), Vec::new()));
    let record = &preview.records.first().unwrap().record;
    assert_eq!((record.weeds.len(), record.lines.len()), (100_000, 20_001));
    assert!(record.note.starts_with("note 0; note 1; ") && record.note.ends_with("; note 19999"));
}

fn own_farm() -> Farm {
    let mut farm = Farm::new("Test farm");
    let record = Record {
        fields: [
            ("a".to_owned(), RecordField::new("A", typed("30 ha"))),
            (
                "b".to_owned(),
                RecordField {
                    stage: "BBCH 14".into(),
                    crop_code: "ZEAMX".into(),
                    ..RecordField::new("B", typed("10 ha"))
                },
            ),
        ]
        .into(),
        volume: Some(typed("6000 L")),
        lines: vec![
            RecordLine::new("x", "Liquid (demo)", typed("64 L")),
            RecordLine::new("y", "Dry (demo)", typed("8 kg")),
        ],
        ..Record::new("Two fields", "2031-06-12".parse().unwrap())
    };
    farm.records.insert("r".to_owned(), record);
    farm
}

#[test]
fn a_row_that_does_not_read_takes_its_record_with_it_and_no_other() {
    let mut farm = own_farm();
    farm.records.insert("s".to_owned(), Record::new("Second", "2031-06-13".parse().unwrap()));
    let text = records_csv::write(&farm, |_| true).unwrap();
    let refused = |text: &str| {
        let reading = records_csv::read(text.as_bytes()).unwrap();
        let ids: Vec<String> = reading.records.iter().map(|coming| coming.id.clone()).collect();
        (ids, reading.refused)
    };
    let (ids, whole) = refused(&text);
    assert_eq!((ids.len(), whole.len()), (2, 0));
    for (from, to, line, says) in [
        ("8 kg", "8 stone", 3, "amount: "),
        ("30 ha", "", 2, "is typed and the area is not"),
        (
            "2031-06-12",
            "12/06/2031",
            2,
            "may be one of two days; a spreadsheet seems to have rewritten the dates; write",
        ),
    ] {
        let (ids, refused) = refused(&text.replace(from, to));
        assert_eq!(ids, ["s"], "{to}");
        assert_eq!(refused.len(), 4, "{refused:?}");
        let own = refused.iter().find(|refused| refused.line == line).unwrap();
        assert!(own.why.contains(says), "{to}: {refused:?}");
    }
    // One row of four changed, or gone, or short.
    let rows: Vec<&str> = text.lines().collect();
    let changed: Vec<String> = rows
        .iter()
        .enumerate()
        .map(|(at, row)| if at == 4 { row.replace("8 kg", "9 kg") } else { (*row).to_owned() })
        .collect();
    let (ids, why) = refused(&changed.join("\n"));
    assert_eq!((ids.as_slice(), why.len()), (&["s".to_owned()][..], 4));
    assert!(why[3].why.starts_with("amount is not as on line 3"), "{why:?}");
    let gone: Vec<&str> = rows.iter().enumerate().filter(|(at, _)| *at != 3).map(|(_, row)| *row).collect();
    assert_eq!(refused(&gone.join("\n")).0, ["s"]);
    // Without the rows of the second field the first would have all of it.
    let (ids, why) = refused(&rows[..3].join("\n"));
    assert!(ids.is_empty() && why[0].why.starts_with("amount_l is 48 where the share by area is 64"), "{why:?}");
    let short: Vec<&str> = rows.iter().map(|row| row.strip_suffix(',').unwrap_or(row)).collect();
    assert!(refused(&[&rows[..1], &short[1..]].concat().join("\n")).0.is_empty());
    // Sorted by product, apart by semicolons, with one more column: all the same records.
    let mut sorted = rows[1..].to_vec();
    sorted.sort_by_key(|row| row.contains("Dry"));
    let other = std::iter::once(rows[0])
        .chain(sorted)
        .map(|row| format!("{row},mine").replace(',', ";"))
        .collect::<Vec<_>>()
        .join("\r\n");
    let reading = records_csv::read(other.as_bytes()).unwrap();
    assert_eq!((reading.records.len(), reading.refused.len()), (2, 0), "{:?}", reading.refused);
    assert_eq!(reading.records.iter().find(|coming| coming.id == "r").unwrap().record, farm.records["r"]);
    assert_eq!(reading.notes, ["no column of a record, so not read: mine"]);
}

#[test]
fn an_id_that_is_there_already_is_skipped_or_left_out_or_entered_anew() {
    let farm = own_farm();
    let reading = records_csv::read(records_csv::write(&farm, |_| true).unwrap().as_bytes()).unwrap();
    let mut same = farm.clone();
    assert_eq!(records_csv::enter(&mut same, &reading.records, false).same, 1);
    assert_eq!(same, farm);
    let mut other = farm.clone();
    other.records["r"].note = "mended".into();
    let before = other.clone();
    assert_eq!(records_csv::enter(&mut other, &reading.records, false).others, ["r"]);
    assert_eq!(other, before);
    assert_eq!(records_csv::enter(&mut other, &reading.records, true).entered, ["r-2"]);
    assert_eq!(other.records["r-2"], farm.records["r"]);
    // A second time it is known under its new id.
    assert_eq!(records_csv::enter(&mut other, &reading.records, true).same, 1);
}

#[test]
fn the_json_has_what_the_regulation_asks_for() {
    let mut farm = own_farm();
    farm.keeping.holder = "Demo holding".to_owned();
    let day = |text: &str| text.parse().unwrap();
    let text =
        records_json::write(&farm, |_| true, Some((day("2031-01-01"), day("2031-12-31"))), day("2031-11-02")).unwrap();
    let whole: serde_json::Value = serde_json::from_str(&text).unwrap();
    assert_eq!((&whole["format"], &whole["version"]), (&"tankard-records".into(), &1.into()));
    assert_eq!(
        (&whole["holder"]["name"], &whole["period"]["from"], &whole["exported"]),
        (&"Demo holding".into(), &"2031-01-01".into(), &"2031-11-02".into())
    );
    let applications = whole["records"][0]["applications"].as_array().unwrap();
    assert_eq!(applications.len(), 4);
    // Implementing Regulation (EU) 2023/564, Annex: type of use, product, authorisation number, date and start, dose, area, place, crop by
    // its EPPO code, BBCH stage.
    for application in applications {
        for key in
            ["product", "registration", "date", "start", "area_ha", "parcel", "location", "crop", "crop_eppo", "bbch"]
        {
            assert!(application.get(key).is_some(), "{key}");
        }
        assert!(application["dose_l_per_ha"].is_number() != application["dose_kg_per_ha"].is_number());
    }
    // 64 L over 40 ha are 1.6 L/ha; 10 of the 40 ha take 16 L.
    let of_b = applications.iter().find(|one| one["field"] == "b" && one["product"] == "Liquid (demo)").unwrap();
    assert!(
        (of_b["dose_l_per_ha"].as_f64().unwrap() - 1.6).abs() < 1e-12
            && (of_b["amount_l"].as_f64().unwrap() - 16.0).abs() < 1e-12
    );
    assert_eq!((&of_b["bbch"], &of_b["crop_eppo"]), (&14.0.into(), &"ZEAMX".into()));
    let record: Record = serde_json::from_value(whole["records"][0]["record"].clone()).unwrap();
    assert_eq!(record, farm.records["r"]);
}

/// Implementing Regulation (EU) 2023/564, Annex, by guidance: a surface, a closed space, seed or propagating material.
#[test]
fn the_json_has_the_type_of_use() {
    let of = |change: fn(&mut Record)| {
        let mut farm = own_farm();
        change(&mut farm.records["r"]);
        let text = records_json::write(&farm, |_| true, None, "2031-11-02".parse().unwrap()).unwrap();
        let whole: serde_json::Value = serde_json::from_str(&text).unwrap();
        whole["records"][0]["applications"][0]["type_of_use"].clone()
    };
    assert_eq!(of(|record| record.more.clear()), "surface");
    let typed = |record: &mut Record| drop(record.more.insert("type-of-use".to_owned(), "closed space".to_owned()));
    assert_eq!(of(typed), "closed space");
    let unknown = |record: &mut Record| {
        record.fields.clear();
        record.more.clear();
    };
    assert!(of(unknown).is_null());
}

#[test]
fn the_readme_has_the_table_of_the_columns() {
    let readme = std::fs::read_to_string(concat!(env!("CARGO_MANIFEST_DIR"), "/../assets/records.md")).unwrap();
    let rows: Vec<String> = readme.lines().filter(|line| line.starts_with("| `")).map(str::to_owned).collect();
    let own: Vec<String> = records_csv::COLUMNS
        .iter()
        .map(|column| format!("| `{}` | {} | {} |", column.name, column.of.words(), column.meaning.replace('|', "\\|")))
        .collect();
    assert_eq!(rows, own);
}

/// What spreadsheets show of 2031-05-31 and 05:30 in English and German surroundings. Common practice, no source.
#[test]
fn an_export_that_a_spreadsheet_saved_again_is_read() {
    let mut farm = own_farm();
    let record = &mut farm.records["r"];
    record.date = "2031-05-31".parse().unwrap();
    record.start = Some(jiff::civil::time(5, 30, 0, 0));
    let other = Record { date: "2031-06-05".parse().unwrap(), ..record.clone() };
    farm.records.insert("s".to_owned(), other);
    let text = records_csv::write(&farm, |_| true).unwrap();
    for (may, june, time) in [
        ("05/31/2031", "06/05/2031", "5:30"),
        ("5/31/2031", "6/5/2031", "5:30 AM"),
        ("31/05/2031", "05/06/2031", "5:30:00"),
        ("31.05.2031", "05.06.2031", "05:30"),
        ("2031-05-31", "2031-06-05", "05:30:00"),
    ] {
        let saved =
            text.replace("2031-05-31", may).replace("2031-06-05", june).replace(",05:30,", &format!(",{time},"));
        let reading = records_csv::read(saved.as_bytes()).unwrap();
        assert_eq!(reading.refused, [], "{may} {time}");
        let read: Vec<&Record> = reading.records.iter().map(|coming| &coming.record).collect();
        assert_eq!(read, farm.records.values().collect::<Vec<_>>(), "{may} {time}");
        assert_eq!(reading.notes.is_empty(), may.starts_with("2031"), "{:?}", reading.notes);
    }
    // Nothing settles which is the month.
    let saved = text.replace("2031-05-31", "05/01/2031").replace("2031-06-05", "06/05/2031");
    let reading = records_csv::read(saved.as_bytes()).unwrap();
    assert_eq!((reading.records.len(), reading.refused.len()), (0, 8));
    assert!(
        reading.refused[0].why.contains("a spreadsheet seems to have rewritten the dates"),
        "{:?}",
        reading.refused[0]
    );
}

#[test]
fn other_line_ends_break_no_honest_seal() {
    let at = "2031-06-12T20:14:00".parse().unwrap();
    let mut farm = own_farm();
    farm.records["r"].note = "first\r\nsecond\nthird".into();
    let signed = seal::sign(&farm.records["r"], "A. Demo", at).unwrap();
    assert_eq!(signed.note, "first\nsecond\nthird");
    assert_eq!(seal::verify(&signed), Verdict::Intact);
    farm.records["r"] = signed;
    let text = records_csv::write(&farm, |_| true).unwrap();
    let with = text.replace("\r\n", "\n").replace('\n', "\r\n");
    let reading = records_csv::read(with.as_bytes()).unwrap();
    assert_eq!(seal::verify(&reading.records[0].record), Verdict::Intact);
    assert_eq!(reading.records[0].record, farm.records["r"]);
    // A text that was changed is still found out.
    let reading = records_csv::read(with.replace("second", "other").as_bytes()).unwrap();
    assert!(matches!(seal::verify(&reading.records[0].record), Verdict::Broken { .. }));
}

fn looked_at(text: &str, farm: &Farm) -> (records_import::Preview, records_import::Table, records_import::Mapping) {
    let table = records_import::table(text.as_bytes()).unwrap();
    let mapping = records_import::guess(&table);
    (records_import::preview(&table, &mapping, farm), table, mapping)
}

fn litres(preview: &records_import::Preview) -> f64 {
    let tankard_core::quantity::Amount::Volume(volume) = preview.records[0].record.lines[0].amount.value() else {
        panic!("a liquid: {preview:?}")
    };
    volume.to_litres()
}

/// A US liquid pint is 0.473 176 473 L, a US gallon 3.785 411 784 L. Source: NIST Handbook 44, appendix C.
#[test]
fn an_amount_over_ground_is_never_the_total() {
    let farm = shed();
    for (head, row, per_acre) in [
        ("Amount per acre (pt)", "2", 2.0 * 0.473_176_473),
        ("Amount/ac,Unit", "2,pt", 2.0 * 0.473_176_473),
        ("Amount / acre", "2 pt", 2.0 * 0.473_176_473),
        ("Amount,Unit", "2,pt/ac", 2.0 * 0.473_176_473),
        ("Amount", "2 pt/ac", 2.0 * 0.473_176_473),
        ("Dose per acre (gal)", "1", 3.785_411_784),
        // An acre is 0.404 685 642 ha.
        ("Menge je ha (L)", "3", 3.0 * 0.404_685_642),
        ("Menge L/ha", "3", 3.0 * 0.404_685_642),
        ("Quantité par ha,Unit", "3,L", 3.0 * 0.404_685_642),
    ] {
        let text = format!("Date,Field,Acres,Product,{head}\n2031-06-12,Mill field,40,X,{row}\n");
        let (preview, ..) = looked_at(&text, &farm);
        assert_eq!((preview.to_choose.as_slice(), preview.records.len()), (&[][..], 1), "{head}: {preview:?}");
        assert!((litres(&preview) / (40.0 * per_acre) - 1.0).abs() < 1e-4, "{head}: {}", litres(&preview));
    }
    for (head, asks) in [
        ("Rate (gal)", "choose the unit of \"Rate (gal)\"; the file does not say it"),
        ("Dose", "choose the unit of \"Dose\"; the file does not say it"),
        ("Amount acre (pt)", "choose what \"Amount acre (pt)\" holds: the amount on the whole field, or the rate"),
        (
            "Amount per tank (pt)",
            "choose what \"Amount per tank (pt)\" holds: the amount on the whole field, or the rate",
        ),
        ("L/ha", "choose what \"L/ha\" holds: the amount on the whole field, or the rate"),
    ] {
        let text = format!("Date,Field,Acres,Product,{head}\n2031-06-12,Mill field,40,X,2\n");
        assert_eq!(looked_at(&text, &farm).0.to_choose, [asks], "{head}");
    }
    // Water over ground is not all of it: 10 gal/ac on 40 ac.
    let text = "Date,Field,Acres,Product,Amount (pt),Volume per acre (gal)\n2031-06-12,Mill field,40,X,80,10\n";
    let volume = looked_at(text, &farm).0.records[0].record.volume.clone().unwrap().value();
    assert!((volume.to_litres() / (400.0 * 3.785_411_784) - 1.0).abs() < 1e-3, "{volume:?}");
    // One that a person takes for the amount all the same is told.
    let (_, table, mut mapping) =
        looked_at("Date,Field,Acres,Product,Amount/ac\n2031-06-12,Mill field,40,X,2 pt\n", &farm);
    mapping.take(4, Some(records_import::Holds::Amount), "");
    let notes = records_import::preview(&table, &mapping, &farm).notes;
    assert_eq!(notes[0], "\"Amount/ac\" speaks of a rate over ground and is taken as the amount on the whole field");
}

#[test]
fn amounts_far_from_the_label_are_told() {
    let mut farm = shed();
    let says = Says::Rate { least: Some(typed("22 fl oz/ac")), most: Some(typed("44 fl oz/ac")) };
    farm.products["gly"].label.push(Statement::new(says, "page 1"));
    let notes = |amount: &str| {
        let row = format!("2031-06-12,Mill field,74.6,Glyphosate 540 SL (demo),{amount}");
        let (preview, ..) = looked_at(&format!("date,field,acres,product,amount (fl oz)\n{row}\n"), &farm);
        assert_eq!(preview.records.len(), 1, "{preview:?}");
        preview.notes.into_iter().filter(|note| note.starts_with("the figures in")).collect::<Vec<_>>()
    };
    // 74.6 ac × 22 and × 44 fl oz/ac are 1641 and 3282 fl oz; five times off are 328 and 16412.
    for amount in ["330", "1641", "3282", "16400"] {
        assert!(notes(amount).is_empty(), "{amount}");
    }
    for (amount, says) in
        [("32", "look like amounts per acre"), ("326", "look like amounts per acre"), ("16420", "too large")]
    {
        let notes = notes(amount);
        assert!(notes.len() == 1 && notes[0].contains(says), "{amount}: {notes:?}");
    }
}

#[test]
fn a_dot_before_three_digits_is_asked_unless_other_figures_settle_it() {
    let farm = shed();
    let german = |area: &str, amount: &str| {
        let text = format!("Datum;Schlag;Fläche (ha);Mittel;Menge (L)\n12.06.2031;Mühlacker;{area};X;{amount}\n");
        looked_at(&text, &farm)
    };
    let (preview, table, mut mapping) = german("40", "1.250");
    assert_eq!(preview.to_choose, ["choose how figures are written: \"1.250\" may mean 1250 or 1.250"]);
    for (comma, amount) in [(records_import::Comma::Decimal, 1250.0), (records_import::Comma::Thousands, 1.25)] {
        mapping.comma = Some(comma);
        assert!((litres(&records_import::preview(&table, &mapping, &farm)) - amount).abs() < 1e-9);
    }
    // Areas too, and each settles the other.
    assert_eq!(german("1.250", "40").0.to_choose.len(), 1);
    assert!((litres(&german("3,5", "1.250").0) - 1250.0).abs() < 1e-9);
    assert!((litres(&german("2.5", "1.250").0) - 1.25).abs() < 1e-9);
    assert!((litres(&german("3,5", "1.250,5").0) - 1250.5).abs() < 1e-9);
}

#[test]
fn a_record_that_looks_like_one_in_the_log_is_left_out_until_it_is_taken() {
    let mut farm = shed();
    let own = Record {
        fields: [("mill".to_owned(), RecordField::new("Mill field", typed("74.6 ac")))].into(),
        lines: vec![
            RecordLine::new("gly", "Glyphosate 540 SL (demo)", typed("13 gal")),
            RecordLine::new("oil", "Oil (demo)", typed("4 gal")),
        ],
        start: Some(jiff::civil::time(6, 0, 0, 0)),
        ..Record::new("Burndown", "2031-06-12".parse().unwrap())
    };
    farm.records.insert("own".to_owned(), own);
    let text = "date,field,acres,product,amount (gal)\n2031-06-12,mill FIELD,74.6,glyphosate 540 sl (demo),12.8\n\
        2031-06-12,South,10,Glyphosate 540 SL (demo),2\n2031-06-13,Mill field,74.6,Glyphosate 540 SL (demo),12.8\n";
    let (preview, table, mut mapping) = looked_at(text, &farm);
    assert_eq!((preview.records.len(), preview.alike), (2, 1), "{preview:?}");
    let refused: Vec<(u64, &str)> =
        preview.refused.iter().map(|refused| (refused.line, refused.why.as_str())).collect();
    assert_eq!(refused, [(2, "looks like one in the log: \"Burndown\" of 12 June 2031")]);
    mapping.alike = true;
    let preview = records_import::preview(&table, &mapping, &farm);
    assert_eq!((preview.records.len(), preview.refused.len(), preview.alike), (3, 0, 1));
    // A product that the shed does not have is known by its name.
    let text = "date,field,acres,product,amount (gal)\n2031-06-12,Mill field,74.6,OIL (demo),12.8\n";
    assert_eq!(looked_at(text, &farm).0.alike, 1);
    // An export with other ids.
    let text = records_csv::write(&farm, |_| true).unwrap().replace("\nown,", "\nother,");
    let reading = records_csv::read(text.as_bytes()).unwrap();
    let alike = records_csv::alike(&farm, &reading.records);
    assert_eq!(alike, ["line 2: \"other\" looks like one in the log: \"Burndown\" of 12 June 2031"]);
    let text = records_csv::write(&farm, |_| true).unwrap();
    assert!(records_csv::alike(&farm, &records_csv::read(text.as_bytes()).unwrap().records).is_empty());
}

#[test]
fn the_first_rows_alone_are_looked_at_while_columns_are_chosen() {
    let farm = shed();
    let rows: Vec<String> = (0..30).map(|at| format!("2031-06-12,Field {at},10,X,2\n")).collect();
    let rows = rows.concat();
    let text = format!("date,field,acres,product,amount (gal)\n{rows}2031-06-12,Last,10,X,much\n");
    let (preview, table, mapping) = looked_at(&text, &farm);
    assert_eq!((preview.records.len(), preview.refused.len()), (30, 1));
    let first = records_import::preview_first(&table, &mapping, &farm, 12);
    assert_eq!((first.records.as_slice(), first.refused.len()), (&preview.records[..12], 0));
}
