//! A farm with many records, made by a fixed rule from a seed: invented fields, products and figures.

use indexmap::IndexMap;
use jiff::Span;
use jiff::civil::{Date, Time, date};
use tankard_core::farm::{
    Active, AdjuvantClass, Effect, Farm, Field, Formulation, Layout, Left, NozzleSet, Outcome, Pass, Product,
    ProductKind, Record, RecordField, RecordLine, Rig,
};
use tankard_core::quantity::{ActiveBasis, AsTyped, Quantity, QuantityError};
use tankard_core::season::record::of_product;

/// The first season.
pub const FIRST: i16 = 2031;

/// How large a log is, and how untidy.
#[derive(Clone, Copy, Debug)]
pub struct Shape {
    /// How many seasons.
    pub seasons: i16,
    /// How many records in each.
    pub records: u32,
    /// How many fields.
    pub fields: u32,
    /// Whether there are gaps: no price, no volume, no kind, no area, no field, nothing put out, and mixed units.
    pub untidy: bool,
    /// From which the figures follow.
    pub seed: u64,
}

/// Numbers that look like chance (`splitmix64`, Steele, Lea and Flood 2014).
pub(crate) struct Draw(pub(crate) u64);

impl Draw {
    fn next(&mut self) -> u64 {
        self.0 = self.0.wrapping_add(0x9E37_79B9_7F4A_7C15);
        let mut z = self.0;
        z = (z ^ (z >> 30)).wrapping_mul(0xBF58_476D_1CE4_E5B9);
        z = (z ^ (z >> 27)).wrapping_mul(0x94D0_49BB_1331_11EB);
        z ^ (z >> 31)
    }

    /// From 0 to below a number.
    pub(crate) fn below(&mut self, end: u64) -> u64 {
        self.next() % end
    }

    pub(crate) fn one_in(&mut self, many: u64) -> bool {
        self.below(many) == 0
    }

    /// One of some; none of none.
    pub(crate) fn one<'a, T>(&mut self, all: &'a [T]) -> Option<&'a T> {
        if all.is_empty() {
            return None;
        }
        all.get(usize::try_from(self.below(all.len() as u64)).unwrap_or(0))
    }

    pub(crate) fn of<'a>(&mut self, all: &[&'a str]) -> &'a str {
        self.one(all).copied().unwrap_or_default()
    }
}

fn typed<Q: Quantity>(text: &str) -> Result<AsTyped<Q>, QuantityError> {
    AsTyped::parse(text)
}

/// Name, kind, formulation, class, actives (name, group, basis, content), price.
type Made = (
    &'static str,
    ProductKind,
    Formulation,
    Option<AdjuvantClass>,
    &'static [(&'static str, &'static str, bool, &'static str)],
    &'static str,
);

/// Two products hold two groups, one an old number, one none; two hold forms of one active that are not to be added.
const PRODUCTS: [Made; 14] = [
    (
        "Glyphosate 540 SL (demo)",
        ProductKind::Herbicide,
        Formulation::SL,
        None,
        &[("glyphosate", "9", true, "540 g/L")],
        "21.4 / gal",
    ),
    (
        "Metolachlor 915 EC (demo)",
        ProductKind::Herbicide,
        Formulation::EC,
        None,
        &[("metolachlor", "15", false, "915 g/L")],
        "88.1 / gal",
    ),
    (
        "S-metolachlor 915 EC (demo)",
        ProductKind::Herbicide,
        Formulation::EC,
        None,
        &[("S-metolachlor", "15", false, "915 g/L")],
        "120 / gal",
    ),
    (
        "Atrazine and mesotrione SC (demo)",
        ProductKind::Herbicide,
        Formulation::SC,
        None,
        &[("atrazine", "5", false, "400 g/L"), ("mesotrione", "27", false, "50 g/L")],
        "41 / gal",
    ),
    (
        "Linuron 50 WG (demo)",
        ProductKind::Herbicide,
        Formulation::WG,
        None,
        &[("linuron", "7", false, "50 % w/w")],
        "14.2 / lb",
    ),
    (
        "2,4-D amine SL (demo)",
        ProductKind::Herbicide,
        Formulation::SL,
        None,
        &[("2,4-D", "4", true, "456 g/L")],
        "18 / gal",
    ),
    (
        "2,4-D, counted as ai (demo)",
        ProductKind::Herbicide,
        Formulation::SL,
        None,
        &[("2,4-D", "4", false, "600 g/L")],
        "19 / gal",
    ),
    (
        "Azoxystrobin and propiconazole EC (demo)",
        ProductKind::Fungicide,
        Formulation::EC,
        None,
        &[("azoxystrobin", "11", false, "141.4 g/L"), ("propiconazole", "3", false, "122.4 g/L")],
        "180 / gal",
    ),
    (
        "Boscalid 70 WG (demo)",
        ProductKind::Fungicide,
        Formulation::WG,
        None,
        &[("boscalid", "7", false, "70 % w/w")],
        "60 / lb",
    ),
    (
        "Unknown mode SC (demo)",
        ProductKind::Insecticide,
        Formulation::SC,
        None,
        &[("an active of tomorrow", "", false, "100 g/L")],
        "77 / gal",
    ),
    (
        "Crop oil concentrate 83 % (demo)",
        ProductKind::Adjuvant,
        Formulation::EC,
        Some(AdjuvantClass::CropOilConcentrate),
        &[],
        "16.3 / gal",
    ),
    (
        "Methylated seed oil (demo)",
        ProductKind::Adjuvant,
        Formulation::EC,
        Some(AdjuvantClass::MethylatedSeedOil),
        &[],
        "24.9 / gal",
    ),
    (
        "Ammonium sulfate (demo)",
        ProductKind::Adjuvant,
        Formulation::SG,
        Some(AdjuvantClass::AmmoniumSulfate),
        &[],
        "0.42 / lb",
    ),
    (
        "Foliar manganese SL (demo)",
        ProductKind::FoliarFeed,
        Formulation::SL,
        None,
        &[("manganese", "", false, "60 g/L")],
        "9 / gal",
    ),
];

/// Makes the farm.
///
/// # Errors
/// Where a text of it does not read.
pub fn farm(shape: Shape) -> Result<Farm, QuantityError> {
    let mut draw = Draw(shape.seed);
    let mut farm = Farm::new("A long log");
    for n in 0..shape.fields {
        let unit = if shape.untidy && n % 3 == 2 { "ha" } else { "ac" };
        let mut field =
            Field::new(&format!("Field {n}"), typed(&format!("{}.{} {unit}", 40 + draw.below(120), draw.below(10)))?);
        draw.of(&["corn", "soybean", "wheat"]).clone_into(&mut field.crop);
        farm.fields.insert(format!("field-{n}"), field);
    }
    for (n, (name, kind, formulation, class, actives, price)) in PRODUCTS.into_iter().enumerate() {
        let mut product = Product::new(name, kind, formulation);
        (product.class, product.price) = (class, Some(typed(price)?));
        for (name, group, acid, content) in actives {
            product.actives.push(Active {
                name: (*name).to_owned(),
                group: (*group).to_owned(),
                basis: if *acid { ActiveBasis::AcidEquivalent } else { ActiveBasis::ActiveIngredient },
                content: typed(content)?,
            });
        }
        farm.products.insert(format!("product-{n}"), product);
    }
    bands(&mut farm)?;
    for season in 0..shape.seasons {
        for n in 0..shape.records {
            let day = date(FIRST + season, 3, 10).saturating_add(Span::new().days(i64::from(n * 200 / shape.records)));
            let record = record(&farm, shape, &mut draw, day)?;
            farm.records.insert(format!("{}-{n}", FIRST + season), record);
        }
    }
    if shape.untidy {
        // What is gone from the shed and from the farm lives on in the records.
        farm.products.shift_remove("product-13");
        farm.fields.shift_remove("field-1");
    }
    Ok(farm)
}

/// A rig that sprays bands of 10 in on rows of 30 in, and a pass with it.
fn bands(farm: &mut Farm) -> Result<(), QuantityError> {
    let mut rig = Rig::new("Band rig", typed("300 gal")?);
    let layout = Layout::Band { width: typed("10 in")?, rows: typed("30 in")?, nozzles: 1 };
    rig.sets.insert(
        "band".to_owned(),
        NozzleSet { name: "Even fan".to_owned(), layout: Some(layout), ..NozzleSet::default() },
    );
    "band".clone_into(&mut rig.fitted);
    farm.rigs.insert("band-rig".to_owned(), rig);
    let mut pass = Pass::new("In bands", date(FIRST, 5, 1));
    "band-rig".clone_into(&mut pass.rig);
    farm.passes.insert("in-bands".to_owned(), pass);
    Ok(())
}

fn record(farm: &Farm, shape: Shape, draw: &mut Draw, day: Date) -> Result<Record, QuantityError> {
    let untidy = shape.untidy;
    let mut record = Record::new(draw.of(&["First post", "Second post", "Burndown", "At heading"]), day);
    let more = if draw.one_in(4) { draw.below(4) } else { 0 };
    for _ in 0..=more {
        let id = format!("field-{}", draw.below(u64::from(shape.fields)));
        let Some(field) = farm.fields.get(&id) else { continue };
        record.fields.insert(id, ground(field, untidy, draw)?);
    }
    if untidy && draw.one_in(60) {
        record.fields.clear();
    }
    if draw.one_in(15) {
        record.pass = Some("in-bands".into());
    }
    let acres = record.area().to_acres().max(1.0);
    let mut numbers: IndexMap<u64, ()> = IndexMap::new();
    for _ in 0..=draw.below(4) {
        numbers.insert(draw.below(10), ());
    }
    if !draw.one_in(4) {
        numbers.insert(10 + draw.below(2), ());
    }
    if !draw.one_in(3) {
        numbers.insert(12 + draw.below(2), ());
    }
    for number in numbers.keys() {
        let id = format!("product-{number}");
        if let Some(product) = farm.products.get(&id) {
            record.lines.push(line(&id, product, acres, farm, untidy, draw)?);
        }
    }
    let gallons = acres * (10.0 + draw.below(100) as f64 / 10.0);
    if !(untidy && draw.one_in(9)) {
        record.volume = Some(typed(&if untidy && draw.one_in(4) {
            format!("{:.0} L", gallons * 3.785)
        } else {
            format!("{gallons:.1} gal")
        })?);
    }
    if !draw.one_in(3) {
        record.planned = Some(typed(&format!("{:.1} gal", gallons * (0.9 + draw.below(200) as f64 / 1000.0)))?);
        record.left =
            Some(Left { volume: typed(&format!("{} gal", draw.below(40)))?, went: "on the last field".into() });
    }
    record.water = draw.of(&["Yard well", "Creek", "Nurse tank", ""]).into();
    record.rig = draw.of(&["Big boom", "Small boom", "Band rig"]).into();
    let minutes = draw.below(24 * 60);
    let clock = |minutes: u64| {
        Time::new(i8::try_from(minutes / 60 % 24).unwrap_or(0), i8::try_from(minutes % 60).unwrap_or(0), 0, 0).ok()
    };
    if !(untidy && draw.one_in(7)) {
        record.start = clock(minutes);
        // From late in the evening on it ends past midnight; now and then no time passes.
        let lasts = if untidy && draw.one_in(25) { 0 } else { 20 + draw.below(500) };
        record.end = clock(minutes + lasts);
    }
    if !(untidy && draw.one_in(5)) {
        record.wind = Some(typed(&format!("{} mph", draw.below(16)))?);
        record.wind_from = draw.of(&["N", "NE", "E", "S", "SW", "W"]).into();
        record.temperature = Some(typed(&format!("{} °F", 45 + draw.below(50)))?);
        record.humidity = Some(typed(&format!("{} %", 25 + draw.below(70)))?);
    }
    if draw.one_in(6) {
        let fields: Vec<String> = record.fields.keys().cloned().collect();
        for field in fields {
            outcomes(&mut record, &field, draw)?;
        }
    }
    Ok(record)
}

fn ground(field: &Field, untidy: bool, draw: &mut Draw) -> Result<RecordField, QuantityError> {
    let part = draw.below(5);
    let text = match part {
        _ if untidy && draw.one_in(40) => "0 ac".to_owned(),
        0 if untidy => format!("{}.{} ha", 3 + draw.below(9), draw.below(10)),
        0 => format!("{} ac", 10 + draw.below(20)),
        _ => field.area.text().to_owned(),
    };
    let mut ground = RecordField::new(&field.name, typed(&text)?);
    if part == 0 {
        ground.part = draw.of(&["north strip", "spot"]).into();
    }
    if !draw.one_in(3) {
        ground.planned = Some(field.area.clone());
    }
    if !(untidy && draw.one_in(8)) {
        ground.crop = (&field.crop).into();
        if untidy && draw.one_in(3) {
            ground.crop = ground.crop.to_uppercase().into();
        }
    }
    Ok(ground)
}

fn line(
    id: &str,
    product: &Product,
    acres: f64,
    farm: &Farm,
    untidy: bool,
    draw: &mut Draw,
) -> Result<RecordLine, QuantityError> {
    let amount = acres * (0.1 + draw.below(300) as f64 / 1000.0);
    let text = match (product.is_liquid(), draw.below(5)) {
        _ if untidy && draw.one_in(30) => if product.is_liquid() { "0 gal" } else { "0 lb" }.to_owned(),
        // Now and then a liquid was weighed.
        _ if untidy && draw.one_in(40) => format!("{amount:.2} kg"),
        (true, 0) if untidy => format!("{:.1} L", amount * 3.785),
        (true, 1) if untidy => format!("{:.0} fl oz", amount * 128.0),
        (true, _) => format!("{amount:.3} gal"),
        (false, 0) if untidy => format!("{:.2} kg", amount * 0.4536),
        (false, _) => format!("{amount:.2} lb"),
    };
    let mut line = of_product(&id.to_owned(), product, typed(&text)?, farm.units);
    if !draw.one_in(4) {
        let planned = line.amount.value().times(0.94 + draw.below(120) as f64 / 1000.0);
        line.planned = match planned {
            tankard_core::quantity::Amount::Volume(volume) => {
                Some(typed(&format!("{:.3} gal", volume.to_us_gallons()))?)
            }
            tankard_core::quantity::Amount::Mass(mass) => Some(typed(&format!("{:.3} lb", mass.to_pounds()))?),
        };
    }
    if untidy {
        match draw.below(12) {
            0 | 1 => line.price = None,
            2 => line.price = Some(typed("3.1 / kg")?),
            // As an older version of the program wrote it.
            3 => (line.kind, line.class, line.price) = (None, None, None),
            _ => {}
        }
        if draw.one_in(20) {
            line.actives.clear();
        }
    }
    Ok(line)
}

fn outcomes(record: &mut Record, field: &str, draw: &mut Draw) -> Result<(), QuantityError> {
    for days in [7, 14, 28] {
        let day = record.date.saturating_add(Span::new().days(days + i64::from(draw.one_in(2))));
        for effect in [
            Effect::Control("waterhemp".into()),
            Effect::Control("giant foxtail".into()),
            Effect::Injury("leaf burn".into()),
        ] {
            let rating = if matches!(effect, Effect::Injury(_)) { draw.below(5) * 5 } else { 55 + draw.below(10) * 5 };
            record.outcomes.push(Outcome {
                field: field.into(),
                date: day,
                effect: Some(effect),
                rating: Some(typed(&format!("{rating} %"))?),
                by: "".into(),
                photos: Vec::new(),
                note: "".into(),
            });
        }
    }
    Ok(())
}
