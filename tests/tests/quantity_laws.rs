//! Laws that every quantity keeps, whatever is typed. No published source: they follow from what the words mean.

use proptest::prelude::*;
use tankard_core::quantity::{
    Acidity, Amount, AmountPerArea, Area, AsTyped, CarrierRate, Concentration, Conductivity, Density, Duration, Flow,
    Hardness, IonContent, Length, Mass, Pressure, Price, Quantity, QuantityError, Rate, Share, Speed, Temperature,
    Units, Volume, unit,
};
use tankard_tests::cases;

const SYSTEMS: [Units; 3] = [Units::UsCustomary, Units::Imperial, Units::Metric];

fn systems() -> impl Strategy<Value = Units> {
    prop::sample::select(&SYSTEMS[..])
}

/// Sizes from a drop to a season, evenly over the powers of ten.
fn sizes() -> impl Strategy<Value = f64> {
    (-3.0_f64..6.0).prop_map(|power| 10.0_f64.powf(power))
}

/// "1,200" may mean 1200 or 1.2; the reader refuses it, and so must never read it as the wrong one.
fn may_mean_two_things(shown: &str) -> bool {
    shown.contains(',')
}

/// Reads back what was shown. A grouped number may be refused, never misread.
fn read_back<Q: Quantity>(shown: &str) -> Result<Q, TestCaseError> {
    match Q::parse(shown) {
        Ok(back) => Ok(back),
        Err(error) if may_mean_two_things(shown) => {
            prop_assert!(error.problem.contains("may mean"), "{}", error);
            Q::parse(&shown.replace(',', "")).map_err(failed)
        }
        Err(error) => Err(failed(error)),
    }
}

#[allow(clippy::needless_pass_by_value)] // In the form that `map_err` hands it on.
fn failed(error: QuantityError) -> TestCaseError {
    TestCaseError::fail(error.to_string())
}

/// Every unit in SI units, reckoned apart from the program by exact definitions: inch 25.4 mm, US gallon 231 cubic inches, imperial gallon
/// 4.54609 L, pound 0.45359237 kg, acre 43,560 square feet, grain 1/7000 lb, standard gravity 9.80665 m/s² (NIST Handbook 44, appendix C;
/// UK Units of Measurement Regulations 1995), nautical mile 1852 m; CaCO3 100.087 and CaO 56.0774 g/mol (IUPAC 2021).
#[test]
#[allow(clippy::unreadable_literal)] // As they were reckoned.
fn every_unit_has_its_size() {
    let tables: [(&[unit::Unit], &[(&str, f64)]); 14] = [
        (
            unit::VOLUME,
            &[
                ("gal", 0.003785411784),
                ("qt", 0.000946352946),
                ("pt", 0.000473176473),
                ("fl oz", 2.95735295625e-5),
                ("cup", 0.0002365882365),
                ("tbsp", 1.478676478125e-5),
                ("tsp", 4.92892159375e-6),
                ("imp gal", 0.00454609),
                ("imp qt", 0.0011365225),
                ("imp pt", 0.00056826125),
                ("imp fl oz", 2.84130625e-5),
                ("l", 0.001),
                ("ml", 1e-6),
                ("hl", 0.1),
                ("m3", 1.0),
            ],
        ),
        (
            unit::MASS,
            &[
                ("lb", 0.45359237),
                ("oz", 0.028349523125),
                ("dry oz", 0.028349523125),
                ("kg", 1.0),
                ("g", 0.001),
                ("mg", 1e-6),
                ("t", 1000.0),
            ],
        ),
        (
            unit::AREA,
            &[("ac", 4046.8564224), ("ha", 10000.0), ("m2", 1.0), ("ft2", 0.09290304), ("1000 ft2", 92.90304)],
        ),
        (
            unit::LENGTH,
            &[
                ("ft", 0.3048),
                ("in", 0.0254),
                ("yd", 0.9144),
                ("mi", 1609.344),
                ("m", 1.0),
                ("cm", 0.01),
                ("mm", 0.001),
                ("km", 1000.0),
            ],
        ),
        (
            unit::SPEED,
            &[
                ("mph", 0.44704),
                ("km/h", 0.2777777777777778),
                ("m/s", 1.0),
                ("ft/min", 0.00508),
                ("kn", 0.5144444444444445),
            ],
        ),
        (unit::PRESSURE, &[("psi", 6894.757293168362), ("bar", 1e5), ("kpa", 1000.0), ("mpa", 1e6), ("pa", 1.0)]),
        (
            unit::FLOW,
            &[
                ("gpm", 6.30901964e-5),
                ("fl oz/min", 4.92892159375e-7),
                ("imp gal/min", 7.576816666666667e-5),
                ("l/min", 1.6666666666666667e-5),
                ("ml/min", 1.6666666666666667e-8),
                ("m3/h", 0.0002777777777777778),
            ],
        ),
        (
            unit::DENSITY,
            &[("lb/gal", 119.82642731689663), ("lb/imp gal", 99.7763726631017), ("kg/l", 1000.0), ("g/l", 1.0)],
        ),
        (
            unit::CARRIER,
            &[
                ("gal/ac", 9.353956228956229e-7),
                ("imp gal/ac", 1.1233633036340657e-6),
                ("l/ha", 1e-7),
                ("l/ac", 2.471053814671653e-7),
            ],
        ),
        (
            unit::HARDNESS,
            &[
                ("ppm", 0.001),
                ("gpg", 0.017118061045270947),
                ("°dh", 0.017848010071793628),
                ("°fh", 0.01),
                ("°e", 0.014253767523300242),
                ("mmol/l", 0.100087),
                ("meq/l", 0.0500435),
            ],
        ),
        (unit::ION, &[("ppm", 0.001), ("g/l", 1.0)]),
        (unit::CONDUCTIVITY, &[("µs/cm", 1e-4), ("ms/cm", 0.1), ("ms/m", 1e-3), ("s/m", 1.0)]),
        (unit::TIME, &[("h", 3600.0), ("min", 60.0), ("s", 1.0)]),
        (unit::SHARE, &[("%", 0.01)]),
    ];
    for (table, sizes) in tables {
        assert_eq!(table.len(), sizes.len());
        for (name, size) in sizes {
            let found = unit::find(table, name).map(|unit| unit.factor / size - 1.0);
            assert!(found.is_some_and(|off| off.abs() < 1e-12), "{name}: {found:?}");
        }
    }
}

/// 1.23456 US gallons are 158.02368 fluid ounces (128 to the gallon, NIST Handbook 44, appendix C): a gallon and 30.02 of them, to
/// the hundredth; 5.43216 fluid ounces, fewer than ten, to the thousandth. So it is with 16 ounces to the pound.
#[test]
fn what_is_measured_out_is_printed_to_a_hundredth_and_little_to_a_thousandth() {
    let volume = |ounces| Amount::Volume(Volume::from_us_fluid_ounces(ounces)).show(Units::UsCustomary);
    assert_eq!(volume(158.023_68), "1 gal 30.02 fl oz");
    assert_eq!(volume(5.432_16), "5.432 fl oz");
    assert_eq!(volume(-158.023_68), "-1 gal 30.02 fl oz");
    let mass = |ounces: f64| Amount::Mass(Mass::from_pounds(ounces / 16.0)).show(Units::UsCustomary);
    assert_eq!(mass(20.123_45), "1 lb 4.12 oz");
    assert_eq!(mass(4.123_45), "4.123 oz");
    assert_eq!(Amount::Volume(Volume::ZERO).show(Units::UsCustomary), "0 gal");
    // Below an ounce a scale for grams and a syringe: half an ounce is 14.1747615625 g, half a fluid ounce 14.78676478125 mL.
    assert_eq!((volume(0.5), mass(0.5)), ("14.79 mL".to_owned(), "14.17 g".to_owned()));
}

/// 16 ounces are a pound of 453.59237 g, and 100 US gallons 378.5411784 L (NIST Handbook 44, appendix C); the two gallons differ.
#[test]
fn bare_ounces_in_the_spray_are_a_mass_over_a_volume() {
    for (text, grams, litres) in [
        ("16 oz/100 gal", 453.592_37, 378.541_178_4),
        ("8 oz/gal", 226.796_185, 3.785_411_784),
        ("16 oz/100 imp gal", 453.592_37, 454.609),
    ] {
        let Ok(Rate::OuncesPerSpray(content)) = Rate::parse(text) else { panic!("{text} is not read so") };
        assert!((content.to_grams_per_litre() * litres / grams - 1.0).abs() < 1e-12, "{text}");
    }
}

/// 50 of 100 grams, and half a pound of a pound, are half.
#[test]
fn a_content_by_weight_counts_in_the_units_below_its_stroke() {
    for text in ["50 g/100 g", "0.5 lb/lb", "500 g/kg", "50 % w/w"] {
        let share = Concentration::parse(text).ok().and_then(|content| content.per_mass(None));
        assert!(share.is_some_and(|share| (share.to_percent() - 50.0).abs() < 1e-9), "{text}: {share:?}");
    }
}

/// 1 % w/v is 1 g in 100 mL; gpa is short for gallons per acre; 500 g/L of what weighs 1.25 kg/L is 40 % of its weight.
#[test]
fn short_forms_of_rates_and_contents_are_what_they_stand_for() {
    assert_eq!(Rate::parse("10 gpa").ok(), Rate::parse("10 gal/ac").ok());
    let spray = Rate::parse("2 % w/v").ok();
    assert!(matches!(spray, Some(Rate::MassPerSpray(content)) if (content.to_grams_per_litre() - 20.0).abs() < 1e-9));
    let content = Concentration::parse("5 % w/v").ok().and_then(|content| content.per_volume(None));
    assert!(content.is_some_and(|content| (content.to_grams_per_litre() - 50.0).abs() < 1e-9));
    let share = Concentration::parse("500 g/L").ok().zip(Density::parse("1.25 kg/L").ok());
    let share = share.and_then(|(content, density)| content.per_mass(Some(density)));
    assert!(share.is_some_and(|share| (share.to_percent() - 40.0).abs() < 1e-9), "{share:?}");
    for (text, litres) in [("⅓ L", 1.0 / 3.0), ("2 ⅔ L", 8.0 / 3.0)] {
        assert!(Volume::parse(text).is_ok_and(|volume| (volume.to_litres() - litres).abs() < 1e-12), "{text}");
    }
}

#[test]
fn a_price_may_be_nothing_and_not_below() {
    assert!(Price::parse("-0.01 / gal").is_err());
    assert_eq!(Price::parse("0 / gal").map(|price| price.show(Units::UsCustomary)).ok().as_deref(), Some("0.00/gal"));
    // A US gallon is 3.785411784 L (NIST Handbook 44, appendix C), so 37.85 a gallon is 10.00 a litre.
    let price = Price::parse("37.85 / gal").map(|price| price.show(Units::Metric));
    assert_eq!(price.ok().as_deref(), Some("10.00/L"));
}

/// Half of the last place that `decimals` print.
fn half(decimals: i32) -> f64 {
    0.5 * 10.0_f64.powi(-decimals)
}

/// Half of the last place of a number printed with about three significant figures.
fn half_significant(value: f64) -> f64 {
    match value {
        value if value >= 100.0 => half(0),
        value if value >= 10.0 => half(1),
        value if value >= 0.1 => half(2),
        value if value >= 0.001 => half(4),
        _ => half(6),
    }
}

fn near(back: f64, value: f64, allowed: f64, shown: &str) -> Result<(), TestCaseError> {
    prop_assert!(
        (back - value).abs() <= allowed * (1.0 + 1e-6) + value.abs() * 1e-12,
        "{value} shows as {shown}, reads as {back}"
    );
    Ok(())
}

/// What is shown reads back as what it was, to half of the last place shown.
///
/// The accessor gives the quantity in the unit that is shown in the system; `decimals` how many are printed of it.
macro_rules! reads_back {
    ($name:ident, $type:ty, $from:expr, |$units:ident, $value:ident| $shown_in:expr, $allowed:expr) => {
        proptest! {
            #![proptest_config(cases(256))]
            #[test]
            fn $name(size in sizes(), $units in systems()) {
                let quantity: $type = $from(size);
                let shown = quantity.show($units);
                let back: $type = read_back(&shown)?;
                let shown_in: fn($type) -> f64 = $shown_in;
                let $value = shown_in(quantity);
                near(shown_in(back), $value, $allowed, &shown)?;
                // Shown again it is the same text: reading and printing in turns does not creep.
                prop_assert_eq!(back.show($units), shown);
            }
        }
    };
}

/// The accessor of the system.
macro_rules! by_system {
    ($name:ident, $type:ty, $from:ident, us $us:ident $us_half:expr, imperial $imperial:ident $imperial_half:expr,
     metric $metric:ident $metric_half:expr) => {
        proptest! {
            #![proptest_config(cases(256))]
            #[test]
            fn $name(size in sizes(), units in systems()) {
                let quantity = <$type>::$from(size);
                let shown = quantity.show(units);
                let back: $type = read_back(&shown)?;
                let (found, value, allowed): (f64, f64, fn(f64) -> f64) = match units {
                    Units::UsCustomary => (back.$us(), quantity.$us(), $us_half),
                    Units::Imperial => (back.$imperial(), quantity.$imperial(), $imperial_half),
                    Units::Metric => (back.$metric(), quantity.$metric(), $metric_half),
                };
                near(found, value, allowed(value), &shown)?;
                prop_assert_eq!(back.show(units), shown);
            }
        }
    };
}

fn half_acre(acres: f64) -> f64 {
    half(if acres < 1.0 { 2 } else { 1 })
}

by_system!(areas, Area, from_acres, us to_acres half_acre, imperial to_acres half_acre, metric to_hectares |_| half(2));
by_system!(volumes, Volume, from_us_gallons, us to_us_gallons half_significant,
    imperial to_imperial_gallons half_significant, metric to_litres half_significant);
by_system!(masses, Mass, from_pounds, us to_pounds half_significant, imperial to_pounds half_significant,
    metric to_kilograms half_significant);
by_system!(carrier_rates, CarrierRate, from_us_gallons_per_acre, us to_us_gallons_per_acre |_| half(1),
    imperial to_imperial_gallons_per_acre |_| half(1), metric to_litres_per_hectare |_| half(0));
by_system!(speeds, Speed, from_miles_per_hour, us to_miles_per_hour |_| half(1), imperial to_miles_per_hour |_| half(1),
    metric to_kilometres_per_hour |_| half(1));
by_system!(pressures, Pressure, from_psi, us to_psi |_| half(0), imperial to_psi |_| half(0),
    metric to_bar |_| half(2));
reads_back!(
    flows_in_litres,
    Flow,
    Flow::from_us_gallons_per_minute,
    |_units, _value| Flow::to_litres_per_minute,
    half(2) * 4.546_09
);
reads_back!(
    densities,
    Density,
    Density::from_pounds_per_us_gallon,
    |_units, _value| Density::to_kilograms_per_litre,
    half(2) * 0.12
);
reads_back!(hardnesses, Hardness, Hardness::from_ppm, |_units, _value| Hardness::to_ppm, half(0));
reads_back!(
    conductivities,
    Conductivity,
    Conductivity::from_microsiemens_per_centimetre,
    |_units, _value| Conductivity::to_microsiemens_per_centimetre,
    half(0)
);
reads_back!(ions, IonContent, IonContent::from_ppm, |_units, value| IonContent::to_ppm, half_significant(value));
reads_back!(lengths, Length, Length::from_feet, |_units, _value| Length::to_metres, half(1) * 0.3048);
reads_back!(times, Duration, |size| Duration::from_seconds(size * 60.0), |_units, _value| Duration::to_seconds, 30.0);

proptest! {
    #![proptest_config(cases(256))]

    #[test]
    fn shares_and_temperatures_and_acidity(
        percent in 0.0_f64..100.0,
        celsius in -40.0_f64..50.0,
        ph in 0.0_f64..14.0,
        units in systems(),
    ) {
        let shown = Share::from_percent(percent).show(units);
        near(read_back::<Share>(&shown)?.to_percent(), percent, half(3), &shown)?;
        let shown = Temperature::from_celsius(celsius).show(units);
        near(read_back::<Temperature>(&shown)?.to_celsius(), celsius, half(0) / 1.8, &shown)?;
        let acidity = Acidity::parse(&format!("{ph:.4}")).map_err(failed)?;
        near(read_back::<Acidity>(&acidity.show(units))?.ph(), ph, half(2) + half(4), "pH")?;
    }

    #[test]
    fn rates_keep_basis_and_size(size in 0.01_f64..900.0, units in systems(), unit in prop::sample::select(&[
        "fl oz/ac", "pt/ac", "gal/ac", "L/ha", "mL/ha", "imp fl oz/ac", "imp gal/ac", "oz/ac", "lb/ac", "g/ha", "kg/ha",
        "lb/100 gal", "g/L", "lb ae/ac", "g ai/ha", "lb ai/100 gal",
    ][..])) {
        let rate: Rate = read_back(&format!("{size} {unit}"))?;
        let shown = rate.show(units);
        let back: Rate = read_back(&shown)?;
        prop_assert_eq!(back.kind(), rate.kind());
        let sizes = match (rate, back) {
            (Rate::VolumePerArea(a), Rate::VolumePerArea(b)) => (a.to_base_units(), b.to_base_units()),
            // A small mass shows in ounces, whatever it was typed in.
            (Rate::MassPerArea(a) | Rate::OuncesPerArea(a), Rate::MassPerArea(b) | Rate::OuncesPerArea(b)) => {
                (a.to_base_units(), b.to_base_units())
            }
            (Rate::ActivePerArea(a, one), Rate::ActivePerArea(b, other)) if one == other => {
                (a.to_base_units(), b.to_base_units())
            }
            (Rate::MassPerSpray(a), Rate::MassPerSpray(b)) => (a.to_grams_per_litre(), b.to_grams_per_litre()),
            (Rate::ActivePerSpray(a, one), Rate::ActivePerSpray(b, other)) if one == other => {
                (a.to_grams_per_litre(), b.to_grams_per_litre())
            }
            _ => return Err(TestCaseError::fail(format!("{size} {unit} became {shown}"))),
        };
        // Rates print with three figures or with fixed places; 6 mL/ha is the coarsest step, 0.006 g/L for contents.
        let step = match rate {
            Rate::VolumePerArea(_) => 5e-11,
            Rate::MassPerArea(_) | Rate::OuncesPerArea(_) | Rate::ActivePerArea(..) => 6e-8,
            _ => 6.5e-3,
        };
        prop_assert!((sizes.0 - sizes.1).abs() <= sizes.0 * 0.006 + step, "{} {} shows as {}", size, unit, shown);
    }

    #[test]
    fn shares_of_the_spray_read_back(percent in 0.0_f64..100.0, units in systems()) {
        let Ok(Rate::VolumePerSpray(share)) = Rate::parse(&format!("{percent:.6} % v/v")) else {
            return Err(TestCaseError::fail("not a share"));
        };
        let shown = Rate::VolumePerSpray(share).show(units);
        match read_back(&shown)? {
            Rate::VolumePerSpray(back) => near(back.to_percent(), percent, half(4) + half(6), &shown)?,
            other => return Err(TestCaseError::fail(other.kind())),
        }
    }

    #[test]
    fn amounts_read_back_from_practical_units(size in sizes(), liquid in any::<bool>(), units in systems()) {
        let amount = if liquid {
            Amount::Volume(Volume::from_litres(size / 10.0))
        } else {
            Amount::Mass(Mass::from_kilograms(size / 10.0))
        };
        let shown = amount.show(units);
        let back: Amount = read_back(&shown)?;
        match (amount, back) {
            (Amount::Volume(a), Amount::Volume(b)) => {
                let step = match units {
                    Units::UsCustomary => 0.005 * 0.029_573_529_562_5,
                    Units::Imperial => 0.005 * 0.028_413_062_5,
                    Units::Metric => 0.000_5,
                };
                near(b.to_litres(), a.to_litres(), step, &shown)?;
            }
            (Amount::Mass(a), Amount::Mass(b)) => {
                let step = if units == Units::Metric { 0.000_5 } else { 0.005 * 0.028_349_523_125 };
                near(b.to_kilograms(), a.to_kilograms(), step, &shown)?;
            }
            _ => return Err(TestCaseError::fail(format!("{shown} changed its kind"))),
        }
    }

    #[test]
    fn a_sum_of_units_is_the_sum(gallons in 0_u32..900, quarts in 0_u32..900, ounces in 0.0_f64..900.0) {
        let sum = Volume::parse(&format!("{gallons} gal {quarts} qt {ounces} fl oz")).map_err(failed)?;
        let expected = f64::from(gallons) * 128.0 + f64::from(quarts) * 32.0 + ounces;
        prop_assert!((sum.to_us_fluid_ounces() - expected).abs() <= expected * 1e-12 + 1e-9);
    }

    #[test]
    fn amounts_add_in_any_order_and_never_across_kinds(a in 0.0_f64..1e6, b in 0.0_f64..1e6, c in 0.0_f64..1e6) {
        let volume = |litres| Amount::Volume(Volume::from_litres(litres));
        let mass = |kilograms| Amount::Mass(Mass::from_kilograms(kilograms));
        for of in [volume as fn(f64) -> Amount, mass] {
            let (a, b, c) = (of(a), of(b), of(c));
            prop_assert_eq!(a.plus(b), b.plus(a));
            let (left, right) = (a.plus(b).and_then(|ab| ab.plus(c)), b.plus(c).and_then(|bc| a.plus(bc)));
            let apart = left.zip(right).and_then(|(left, right)| left.minus(right));
            let total = left.map_or(0.0, size);
            prop_assert!(apart.is_some_and(|apart| size(apart).abs() <= total * 1e-12 + 1e-15));
            let back = a.plus(b).and_then(|ab| ab.minus(b)).and_then(|back| back.minus(a));
            prop_assert!(back.is_some_and(|back| size(back).abs() <= total * 1e-12 + 1e-15));
        }
        prop_assert_eq!(volume(a).plus(mass(b)), None);
        prop_assert_eq!(mass(a).minus(volume(b)), None);
        prop_assert_eq!(mass(a).ratio(volume(b + 1.0)), None);
    }

    #[test]
    fn what_is_spread_comes_together_again(litres in 0.001_f64..1e6, hectares in 0.001_f64..1e5) {
        let (amount, area) = (Amount::Volume(Volume::from_litres(litres)), Area::from_hectares(hectares));
        let back = amount.spread(area).map(|rate| rate.over(area)).and_then(|back| back.ratio(amount));
        prop_assert!(back.is_some_and(|ratio| (ratio - 1.0).abs() < 1e-12));
        prop_assert_eq!(amount.spread(Area::ZERO), None);
    }

    #[test]
    fn the_two_gallons_are_never_the_same(
        count in 0.001_f64..1e5,
        unit in prop::sample::select(&["gal", "qt", "pt", "fl oz"][..]),
    ) {
        let read = |text: String| Volume::parse(&text).map_err(failed);
        let (us, imperial) = (read(format!("{count} {unit}"))?, read(format!("{count} imp {unit}"))?);
        prop_assert_eq!(us, read(format!("{count} US {unit}"))?);
        // A fifth more for all but the fluid ounce, which is 4 % less.
        let expected = if unit == "fl oz" { 28.413_062_5 / 29.573_529_562_5 } else { 4.546_09 / 3.785_411_784 };
        prop_assert!(imperial.ratio(us).is_some_and(|ratio| (ratio - expected).abs() < 1e-9));
        for over in ["ac", "ha"] {
            let us = Rate::parse(&format!("{count} {unit}/{over}")).map_err(failed)?;
            prop_assert_ne!(us, Rate::parse(&format!("{count} imp {unit}/{over}")).map_err(failed)?);
        }
        let us = CarrierRate::parse(&format!("{count} gal/ac")).map_err(failed)?;
        prop_assert_ne!(us, CarrierRate::parse(&format!("{count} imp gal/ac")).map_err(failed)?);
    }

    #[test]
    fn what_was_typed_is_kept_to_the_letter(spaces in "[ ]{0,3}", count in 0.01_f64..999.0, tail in "[ ]{0,3}") {
        let text = format!("{spaces}{count} fl oz / ac{tail}");
        let typed: AsTyped<Rate> = AsTyped::parse(&text).map_err(failed)?;
        prop_assert_eq!(typed.text(), text.as_str());
    }
}

/// The size of an amount in its SI unit.
fn size(amount: Amount) -> f64 {
    match amount {
        Amount::Volume(volume) => volume.to_litres(),
        Amount::Mass(mass) => mass.to_kilograms(),
    }
}

/// Reads a text as one kind; if that works, prints it in every system.
fn survives<Q: Quantity>(text: &str) -> Result<(), TestCaseError> {
    match Q::parse(text) {
        Ok(quantity) => {
            for units in SYSTEMS {
                let shown = quantity.show(units);
                prop_assert!(
                    !shown.is_empty() && !shown.contains("NaN") && !shown.contains("inf"),
                    "{text:?} shows as {shown}"
                );
            }
        }
        Err(error) => prop_assert!(!error.to_string().is_empty()),
    }
    Ok(())
}

fn survives_as_anything(text: &str) -> Result<(), TestCaseError> {
    survives::<Area>(text)?;
    survives::<Volume>(text)?;
    survives::<Mass>(text)?;
    survives::<Amount>(text)?;
    survives::<CarrierRate>(text)?;
    survives::<Rate>(text)?;
    survives::<Concentration>(text)?;
    survives::<Density>(text)?;
    survives::<Hardness>(text)?;
    survives::<Conductivity>(text)?;
    survives::<IonContent>(text)?;
    survives::<Length>(text)?;
    survives::<Speed>(text)?;
    survives::<Pressure>(text)?;
    survives::<Flow>(text)?;
    survives::<Duration>(text)?;
    survives::<Share>(text)?;
    survives::<Temperature>(text)?;
    survives::<Acidity>(text)?;
    survives::<Price>(text)
}

/// Pieces of which slips of the finger are made.
const PIECES: [&str; 40] = [
    "1",
    "0",
    "22",
    "1,200",
    "1.200,5",
    "999999999",
    "1e9",
    "-",
    "\u{2212}",
    "½",
    "⅓",
    "1/2",
    "0/0",
    "/",
    "/0",
    ".",
    ",",
    " ",
    "\u{a0}",
    "per",
    "%",
    "% v/v",
    "gal",
    "imp gal",
    "fl oz",
    "oz",
    "lb",
    "ae",
    " ai",
    "ac",
    "ha",
    "L",
    "m2",
    "100",
    "°",
    "F",
    "NaN",
    "inf",
    "ﬂ",
    "\u{301}",
];

proptest! {
    #![proptest_config(cases(256))]

    #[test]
    fn no_text_stops_the_reader(text in any::<String>()) {
        survives_as_anything(&text)?;
    }

    #[test]
    fn no_slip_stops_the_reader(pieces in prop::collection::vec(prop::sample::select(&PIECES[..]), 0..9)) {
        survives_as_anything(&pieces.concat())?;
        survives_as_anything(&pieces.join(" "))?;
    }

    #[test]
    fn an_amount_over_ground_knows_its_share(share in 0.0_f64..100.0, gallons in 0.1_f64..100.0) {
        let carrier = CarrierRate::from_us_gallons_per_acre(gallons);
        let rate = AmountPerArea::Volume(carrier.share(Share::from_percent(share)));
        prop_assert!(rate.share_of(carrier).is_some_and(|back| (back.to_percent() - share).abs() < 1e-9));
        prop_assert_eq!(rate.share_of(CarrierRate::ZERO), None);
    }
}

/// A size typed in one unit, written in each other name of its table and read again in turn, is the size it was. It holds two
/// faults: a name that the reader takes for another unit or cannot reach, and a unit whose factor is not the one of its table.
macro_rules! chains {
    ($($name:ident: $type:ty, $table:ident, $base:ident;)+) => {
        proptest! {
            #![proptest_config(cases(64))]
            $(
                #[test]
                fn $name(size in 0.01_f64..100.0, at in any::<prop::sample::Index>()) {
                    let first = at.get(unit::$table);
                    let name = first.names.first().copied().unwrap_or_default();
                    let typed = <$type>::parse(&format!("{size} {name}")).map_err(failed)?;
                    // In SI units it is the size times the factor of the table.
                    let base = typed.$base();
                    near(base, size * first.factor, size * first.factor * 1e-12, name)?;
                    let mut chained = typed;
                    for other in unit::$table {
                        for name in other.names {
                            let text = format!("{} {name}", chained.$base() / other.factor);
                            match <$type>::parse(&text) {
                                Ok(next) => chained = next,
                                // "100 t" in milligrams: more than anybody types.
                                Err(error) => prop_assert!(error.problem.contains("too large"), "{error}"),
                            }
                            near(chained.$base(), base, base * 1e-11, &text)?;
                        }
                    }
                }
            )+
        }
    };
}

chains! {
    chains_of_volumes: Volume, VOLUME, to_cubic_metres;
    chains_of_masses: Mass, MASS, to_kilograms;
    chains_of_areas: Area, AREA, to_square_metres;
    chains_of_lengths: Length, LENGTH, to_metres;
    chains_of_times: Duration, TIME, to_seconds;
    chains_of_shares: Share, SHARE, to_fraction;
}

proptest! {
    #![proptest_config(cases(128))]

    /// A rate to an amount on ground, typed anew in other units, and back to the rate: what a card, a record and a review do
    /// one after another. It holds a factor that is applied twice or the wrong way round on the way.
    #[test]
    fn a_rate_comes_back_from_the_ground(
        size in 0.5_f64..500.0,
        acres in 0.5_f64..900.0,
        rate_unit in prop::sample::select(&[("fl oz/ac", 29.573_529_562_5e-6), ("pt/ac", 473.176_473e-6), ("imp pt/ac", 568.261_25e-6)][..]),
        amount_unit in prop::sample::select(&[("L", 1e-3), ("gal", 3.785_411_784e-3), ("imp gal", 4.546_09e-3), ("mL", 1e-6)][..]),
    ) {
        let area: Area = read_back(&format!("{acres} ac"))?;
        let rate: Rate = read_back(&format!("{size} {}", rate_unit.0))?;
        let Rate::VolumePerArea(over) = rate else { return Err(TestCaseError::fail(rate.kind())) };
        // By hand: the factors of NIST Handbook 44 and of the UK regulations of 1995, as in `quantity/factor.rs`.
        let cubic_metres = size * rate_unit.1 * acres;
        let amount: Amount = read_back(&format!("{} {}", cubic_metres / amount_unit.1, amount_unit.0))?;
        let on_ground = AmountPerArea::Volume(over).over(area);
        prop_assert!(on_ground.ratio(amount).is_some_and(|ratio| (ratio - 1.0).abs() < 1e-11));
        let hectares: Area = read_back(&format!("{} ha", acres * 0.404_685_642_24))?;
        let Some(AmountPerArea::Volume(back)) = amount.spread(hectares) else { return Err(TestCaseError::fail("no rate")) };
        prop_assert!(back.ratio(over).is_some_and(|ratio| (ratio - 1.0).abs() < 1e-11));
    }
}
