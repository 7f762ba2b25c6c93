//! From a plan to the record of it.

use crate::farm::record::RecordActive;
use crate::farm::{Active, Farm, Field, Id, Left, Product, Record, RecordField, RecordLine, Says, Text};
use crate::loads::card::re_entry_hours;
use crate::plan::Plan;
use crate::quantity::{Amount, Area, AsTyped, Mass, Quantity, Units, Volume};
use crate::rig::set_of;
use crate::stock::only_lot;

use super::Log;
use super::portion::Portion;

/// The record that a pass sprayed exactly as planned makes: the ground, the spray volume and the measured amounts of all
/// loads, how the rig was set, and the weather that was expected for its best hours. Measured weather and times stay empty.
///
/// `None` where there is nothing to record: no such pass, no ground, or no product that could be reckoned. Where the loads
/// could not be reckoned, the amounts are what arithmetic asks for.
pub fn from_plan(farm: &Farm, log: &Log, plan: &Plan) -> Option<Record> {
    of_portion(farm, log, plan, &Portion::whole(plan))
}

/// The record of some of a plan; `None` where there is nothing to record.
pub fn of_portion(farm: &Farm, log: &Log, plan: &Plan, portion: &Portion) -> Option<Record> {
    let (id, pass) = farm.passes.get_key_value(&plan.pass)?;
    if portion.area().is_zero() || plan.lines.is_empty() {
        return None;
    }
    let fields = portion.fields.iter().filter_map(|(id, area)| {
        let field = farm.fields.get(id)?;
        let typed = pass.parts.get(id).filter(|part| part.value() == *area).cloned();
        let area = typed.unwrap_or_else(|| field_area(field, *area, farm.units));
        Some((id.clone(), RecordField { planned: Some(area.clone()), ..record_field(field, area) }))
    });
    let lines = plan.lines.iter().zip(&portion.amounts).filter_map(|(line, amount)| {
        let product = farm.products.get(&line.product)?;
        let line = record_line(&line.product, product, *amount, farm.units);
        let lot = only_lot(farm, log, &line.product, pass.date);
        Some(RecordLine { planned: Some(line.amount.clone()), lot: lot.into(), ..line })
    });
    let volume = volume_text(portion.volume, farm.units);
    let rig = farm.rigs.get(&pass.rig);
    let in_words = || rig.map(|rig| rig.nozzles.clone()).unwrap_or_default();
    let pressure = plan.setting.as_ref().and_then(|setting| setting.pressure);
    let classes = plan.setting.as_ref().and_then(|setting| setting.classes);
    let one_class = classes.filter(|classes| classes.finest == classes.coarsest).map(|classes| classes.finest);
    let without_sets = rig.filter(|rig| rig.sets.is_empty()).and_then(|rig| rig.droplets);
    Some(Record {
        pass: Some(id.into()),
        fields: fields.collect(),
        planned: Some(volume.clone()),
        volume: Some(volume),
        loads: portion.loads,
        left: (!portion.left.is_zero())
            .then(|| Left { volume: volume_text(portion.left, farm.units), went: Text::new() }),
        lines: lines.collect(),
        weeds: pass.weeds.iter().map(Text::from).collect(),
        water: farm.waters.get(&pass.water).map(|water| Text::from(&water.name)).unwrap_or_default(),
        rig: rig.map(|rig| Text::from(&rig.name)).unwrap_or_default(),
        // Read back by its words, so it is not said in another language.
        method: "ground boom".into(),
        nozzles: set_of(farm, pass).map_or_else(in_words, |(_, set)| set.name.clone()).into(),
        // What is typed for the pass, else what its nozzles take, else the rig's usual one.
        pressure: pass
            .pressure
            .clone()
            .or_else(|| pressure.map(|pressure| shown(pressure, farm.units)))
            .or_else(|| pass.pressure_in(farm).cloned()),
        speed: pass.speed_in(farm).cloned(),
        height: pass.height_in(farm).cloned(),
        droplets: pass.droplets.or(one_class).or(without_sets),
        operator: (&pass.operator).into(),
        expected: super::outside::expected(farm, plan, None, None).map(Box::new),
        ..Record::new(&pass.name, pass.date)
    })
}

/// A quantity as the farm shows it, where that reads back.
fn shown<Q: Quantity>(value: Q, units: Units) -> AsTyped<Q> {
    read_back(&value.show(units).replace(',', ""), value)
}

/// A field as it is now, all of it that is sprayed.
pub fn whole_field(field: &Field, units: Units) -> RecordField {
    record_field(field, field_area(field, field.sprayable(), units))
}

fn record_field(field: &Field, area: AsTyped<Area>) -> RecordField {
    RecordField {
        crop: (&field.crop).into(),
        stage: (&field.stage).into(),
        variety: (&field.variety).into(),
        planted: field.planted,
        location: (&field.location).into(),
        parcel: (&field.parcel).into(),
        crop_code: super::profile::crop_code(&field.crop).map(|crop| Text::from(&crop.code)).unwrap_or_default(),
        ..RecordField::new(&field.name, area)
    }
}

/// The field's own text where all of it is meant, else the area in the farm's units.
fn field_area(field: &Field, area: Area, units: Units) -> AsTyped<Area> {
    if field.area.value() == area { field.area.clone() } else { area_text(area, units) }
}

/// An amount of a product as it is now, with its actives.
pub fn record_line(id: &Id, product: &Product, amount: Amount, units: Units) -> RecordLine {
    of_product(id, product, amount_text(amount, units), units)
}

/// An amount, as it is typed, of a product as it is now, with its actives.
pub fn of_product(id: &Id, product: &Product, amount: AsTyped<Amount>, units: Units) -> RecordLine {
    let harvest = product.label.iter().filter_map(|statement| match statement.says {
        Says::HarvestInterval { days } => Some(days),
        _ => None,
    });
    RecordLine {
        registration: (&product.registration).into(),
        price: product.price.clone(),
        kind: Some(product.kind),
        class: product.class,
        restricted: product.restricted,
        entry: re_entry_hours(product),
        harvest: harvest.max(),
        actives: actives(product, amount.value(), units),
        ..RecordLine::new(id, &product.name, amount)
    }
}

/// Nothing of a product, by volume or by mass as it is measured.
pub fn none_of(product: &Product, units: Units) -> AsTyped<Amount> {
    amount_text(product.nothing(), units)
}

/// The actives in an amount of a product; those whose content does not reach the amount (a density is missing) are left
/// out, and so are the salts of adjuvants and conditioners, which no record counts.
pub fn actives(product: &Product, amount: Amount, units: Units) -> Vec<RecordActive> {
    if !product.kind.holds_actives() {
        return Vec::new();
    }
    product
        .actives
        .iter()
        .filter_map(|active| {
            Some(RecordActive {
                name: (&active.name).into(),
                group: (&active.group).into(),
                basis: active.basis,
                mass: mass_text(mass_of(active, product, amount)?, units),
            })
        })
        .collect()
}

fn mass_of(active: &Active, product: &Product, amount: Amount) -> Option<Mass> {
    let density = product.density.as_ref().map(AsTyped::value);
    match amount {
        Amount::Volume(volume) => active.content.per_volume(density).map(|content| content * volume),
        Amount::Mass(mass) => active.content.per_mass(density).map(|share| mass * share.to_fraction()),
    }
}

/// The line with another amount, its actives in proportion.
///
/// Where there is no proportion (nothing before, or a mass in place of a volume) the actives are reckoned from the
/// product, and left out where that is not known any more.
pub fn with_amount(line: &RecordLine, amount: AsTyped<Amount>, product: Option<&Product>, units: Units) -> RecordLine {
    let actives = match amount.value().ratio(line.amount.value()) {
        Some(ratio) => line
            .actives
            .iter()
            .map(|active| RecordActive {
                mass: if amount == line.amount {
                    active.mass.clone()
                } else {
                    mass_text(active.mass.value() * ratio, units)
                },
                ..active.clone()
            })
            .collect(),
        None => product.map(|product| actives(product, amount.value(), units)).unwrap_or_default(),
    };
    RecordLine { amount, actives, ..line.clone() }
}

/// A number with this many significant digits, no trailing zeros and no marks between thousands, so that it reads back.
fn plain(value: f64, digits: i32) -> String {
    // The number of digits before the point; zero or less for a fraction.
    #[allow(clippy::cast_possible_truncation)] // No finite number has more than 309.
    let whole = if value == 0.0 { 1 } else { value.abs().log10().floor() as i32 + 1 };
    let decimals = usize::try_from(digits - whole).unwrap_or(0);
    let text = format!("{value:.decimals$}");
    if text.contains('.') { text.trim_end_matches('0').trim_end_matches('.').to_owned() } else { text }
}

/// A text and what it reads as, so that saving and opening changes nothing.
fn read_back<Q: Quantity>(text: &str, value: Q) -> AsTyped<Q> {
    AsTyped::parse(text).unwrap_or_else(|_| AsTyped::of(text, value))
}

/// An area as it could be typed, in the farm's units. Six digits: the amount over the area keeps the balance to some parts
/// in a million.
pub fn area_text(area: Area, units: Units) -> AsTyped<Area> {
    area_in_digits(area, units, 6)
}

/// An area as it could be typed, in so many digits.
pub(crate) fn area_in_digits(area: Area, units: Units, digits: i32) -> AsTyped<Area> {
    let text = match units {
        Units::Metric => format!("{} ha", plain(area.to_hectares(), digits)),
        Units::UsCustomary | Units::Imperial => format!("{} ac", plain(area.to_acres(), digits)),
    };
    read_back(&text, area)
}

/// A volume as it could be typed, in the farm's units.
pub fn volume_text(volume: Volume, units: Units) -> AsTyped<Volume> {
    volume_in_digits(volume, units, 6)
}

/// A volume as it could be typed, in so many digits.
pub(crate) fn volume_in_digits(volume: Volume, units: Units, digits: i32) -> AsTyped<Volume> {
    read_back(&plain_volume(volume, units, digits), volume)
}

fn plain_volume(volume: Volume, units: Units, digits: i32) -> String {
    match units {
        Units::UsCustomary => format!("{} gal", plain(volume.to_us_gallons(), digits)),
        Units::Imperial => format!("{} imp gal", plain(volume.to_imperial_gallons(), digits)),
        Units::Metric => format!("{} L", plain(volume.to_litres(), digits)),
    }
}

/// Five digits, as laboratories state contents with three or four.
fn mass_text(mass: Mass, units: Units) -> AsTyped<Mass> {
    read_back(&plain_mass(mass, units, 5), mass)
}

fn plain_mass(mass: Mass, units: Units, digits: i32) -> String {
    match units {
        Units::Metric => format!("{} kg", plain(mass.to_kilograms(), digits)),
        Units::UsCustomary | Units::Imperial => format!("{} lb", plain(mass.to_pounds(), digits)),
    }
}

/// As the jug is marked ("41 gal 1 qt"), where that is true to one part in ten thousand; else as a plain number. Thousands
/// stand without a comma, since "1,200 gal" is refused when read.
pub fn amount_text(amount: Amount, units: Units) -> AsTyped<Amount> {
    let practical = amount.show(units).replace(',', "");
    let true_enough = |read: &AsTyped<Amount>| {
        amount.is_zero() || read.value().ratio(amount).is_some_and(|ratio| (ratio - 1.0).abs() < 1e-4)
    };
    AsTyped::parse(&practical).ok().filter(true_enough).unwrap_or_else(|| {
        let text = match amount {
            Amount::Volume(volume) => plain_volume(volume, units, 6),
            Amount::Mass(mass) => plain_mass(mass, units, 6),
        };
        read_back(&text, amount)
    })
}

#[cfg(test)]
mod tests {
    use super::{from_plan, none_of, whole_field, with_amount};
    use crate::farm::{
        Active, Farm, Field, Formulation, Line, Pass, Product, ProductKind, Record, RecordLine, Rig, Water,
    };
    use crate::plan::plan;
    use crate::quantity::{ActiveBasis, Amount, Area, AsTyped, Quantity, Units};
    use crate::season::Log;
    use jiff::civil::date;

    fn typed<Q: Quantity>(text: &str) -> AsTyped<Q> {
        AsTyped::parse(text).unwrap()
    }

    /// Three fields, one with a strip left out; a liquid, a dry product and an adjuvant.
    fn farm(units: Units) -> Farm {
        let mut farm = Farm::new("Test");
        farm.units = units;
        farm.fields.insert("mill".to_owned(), Field::new("Mill field", typed("74.6 ac")));
        farm.fields.insert("long".to_owned(), Field::new("Long bottom", typed("96,0 ac")));
        let mut hill = Field::new("Hill sixty", typed("60.8 ac"));
        hill.unsprayed = Some(typed("5.6 ac"));
        hill.crop = "corn".to_owned();
        hill.stage = "V6".to_owned();
        farm.fields.insert("hill".to_owned(), hill);
        farm.waters.insert("well".to_owned(), Water { name: "Yard well".to_owned(), ..Water::default() });
        farm.rigs.insert("boom".to_owned(), Rig::new("Big boom", typed("1200 gal")));
        let mut liquid = Product::new("Glyphosate 540 SL (demo)", ProductKind::Herbicide, Formulation::SL);
        liquid.actives.push(Active {
            name: "glyphosate".to_owned(),
            group: "9".to_owned(),
            basis: ActiveBasis::AcidEquivalent,
            content: typed("540 g/L"),
        });
        let mut dry = Product::new("Dicamba 70 WG (demo)", ProductKind::Herbicide, Formulation::WG);
        dry.restricted = true;
        dry.actives.push(Active {
            name: "dicamba".to_owned(),
            group: "4".to_owned(),
            basis: ActiveBasis::AcidEquivalent,
            content: typed("50 % w/w"),
        });
        let oil = Product::new("Crop oil concentrate 83 % (demo)", ProductKind::Adjuvant, Formulation::EC);
        farm.products.extend([("gly".to_owned(), liquid), ("dic".to_owned(), dry), ("oil".to_owned(), oil)]);
        let mut pass = Pass::new("Corn, second post", date(2031, 6, 12));
        pass.fields = ["mill", "long", "hill"].map(str::to_owned).to_vec();
        pass.water = "well".to_owned();
        pass.rig = "boom".to_owned();
        pass.carrier = Some(typed("15 gal/ac"));
        pass.mix = vec![
            Line::new("gly", typed("22 fl oz/ac")),
            Line::new("dic", typed("4 oz/ac")),
            Line::new("oil", typed("1 % v/v")),
        ];
        farm.passes.insert("second".to_owned(), pass);
        farm
    }

    fn recorded(farm: &Farm) -> Record {
        from_plan(farm, &Log::of(farm), &plan(farm, "second").unwrap()).unwrap()
    }

    #[test]
    fn it_says_what_the_plan_says() {
        for units in [Units::UsCustomary, Units::Imperial, Units::Metric] {
            let farm = farm(units);
            let plan = plan(&farm, "second").unwrap();
            let record = recorded(&farm);
            assert!((record.area().ratio(plan.area).unwrap() - 1.0).abs() < 1e-6);
            let volume = record.volume.as_ref().unwrap();
            assert!((volume.ratio(plan.spray_volume).unwrap() - 1.0).abs() < 1e-5);
            for (line, planned) in record.lines.iter().zip(&plan.lines) {
                let measured = plan
                    .loads
                    .iter()
                    .flat_map(|load| &load.items)
                    .filter(|item| item.product == line.product)
                    .fold(line.amount.value().times(0.0), |sum, item| sum.plus(item.measured.amount).unwrap());
                assert!((line.amount.value().ratio(measured).unwrap() - 1.0).abs() <= 1e-4, "{}", line.amount);
                // The marks of the jug are the only thing between the plan and the record.
                assert!((line.amount.value().ratio(planned.demand).unwrap() - 1.0).abs() < 0.005, "{}", line.amount);
            }
            assert_eq!((record.water.as_str(), record.rig.as_str()), ("Yard well", "Big boom"));
            assert_eq!(record.pass.as_deref(), Some("second"));
        }
    }

    #[test]
    fn texts_are_the_ones_typed_where_they_can_be_and_read_back() {
        for units in [Units::UsCustomary, Units::Imperial, Units::Metric] {
            let record = recorded(&farm(units));
            let areas: Vec<&str> = record.fields.values().map(|field| field.area.text()).collect();
            let hill = if units == Units::Metric { "22.3386 ha" } else { "55.2 ac" };
            // 55.2 acres of 4046.8564224 m² are 22.33865 hectares.
            assert_eq!(areas, ["74.6 ac", "96,0 ac", hill]);
            for line in &record.lines {
                assert!(!line.amount.text().contains(','), "{}", line.amount);
                assert_eq!(Amount::parse(line.amount.text()).unwrap(), line.amount.value());
                for active in &line.actives {
                    assert_eq!(AsTyped::parse(active.mass.text()).unwrap(), active.mass);
                }
            }
        }
        let record = recorded(&farm(Units::UsCustomary));
        // 225.8 ac × 15 gal/ac; 225.8 ac × 22 fl oz ÷ 128.
        assert_eq!(record.volume.as_ref().unwrap().text(), "3387 gal");
        assert!(record.lines.iter().any(|line| line.amount.text().starts_with("38 gal")), "{:?}", record.lines);
    }

    #[test]
    fn thousands_are_written_without_a_comma() {
        let mut farm = farm(Units::UsCustomary);
        farm.passes["second"].mix = vec![Line::new("oil", typed("8 gal/ac"))];
        let record = recorded(&farm);
        assert!(record.lines[0].amount.text().starts_with("1806 gal"), "{}", record.lines[0].amount);
        assert_eq!(Amount::parse(record.lines[0].amount.text()).unwrap(), record.lines[0].amount.value());
    }

    #[test]
    fn actives_go_through_the_content() {
        let record = recorded(&farm(Units::UsCustomary));
        let of = |product: &str| record.lines.iter().find(|line| line.product == product).unwrap();
        // 540 g/L are 4.5065 lb/gal.
        let Amount::Volume(volume) = of("gly").amount.value() else { panic!("a liquid") };
        let pounds = of("gly").actives[0].mass.to_pounds();
        assert!((pounds / (volume.to_us_gallons() * 4.5065) - 1.0).abs() < 1e-4, "{pounds}");
        let Amount::Mass(mass) = of("dic").amount.value() else { panic!("a dry product") };
        assert!((of("dic").actives[0].mass.ratio(mass).unwrap() - 0.5).abs() < 1e-4);
        assert!(of("oil").actives.is_empty());
    }

    #[test]
    fn another_amount_takes_its_actives_along() {
        let farm = farm(Units::UsCustomary);
        let line = recorded(&farm).lines.into_iter().find(|line| line.product == "gly").unwrap();
        let product = farm.products.get("gly");
        let half = with_amount(&line, typed("19 gal"), product, farm.units);
        let ratio = half.actives[0].mass.ratio(line.actives[0].mass.value()).unwrap();
        assert!((ratio / half.amount.value().ratio(line.amount.value()).unwrap() - 1.0).abs() < 1e-4);
        let same = with_amount(&line, line.amount.clone(), product, farm.units);
        assert_eq!(same, line);
        // From nothing there is no proportion, so the product is asked.
        let none = RecordLine { amount: none_of(product.unwrap(), farm.units), actives: Vec::new(), ..line.clone() };
        assert!(
            (with_amount(&none, typed("10 gal"), product, farm.units).actives[0].mass.to_pounds() - 45.065).abs()
                < 0.01
        );
        assert!(with_amount(&none, typed("10 gal"), None, farm.units).actives.is_empty());
    }

    #[test]
    fn parts_of_fields_and_passes_without_a_rig() {
        let mut farm = farm(Units::UsCustomary);
        let pass = &mut farm.passes["second"];
        pass.parts.insert("long".to_owned(), typed("20,5 ac"));
        pass.rig = String::new();
        let record = recorded(&farm);
        assert_eq!(record.fields["long"].area.text(), "20,5 ac");
        assert_eq!(record.rig, "");
        // 150.3 ac × 22 fl oz/ac, unrounded, since no load says what is measured.
        let gly = record.lines.iter().find(|line| line.product == "gly").unwrap();
        let Amount::Volume(volume) = gly.amount.value() else { panic!("a liquid") };
        assert!((volume.to_us_fluid_ounces() - 150.3 * 22.0).abs() < 0.2, "{}", gly.amount);
        farm.passes["second"].mix.clear();
        assert!(from_plan(&farm, &Log::of(&farm), &plan(&farm, "second").unwrap()).is_none());
        assert_eq!(whole_field(&farm.fields["hill"], farm.units).area.value(), Area::parse("55.2 ac").unwrap());
    }
}
