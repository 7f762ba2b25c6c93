//! A farm that is large in every way, grown from the demo farm by a fixed rule from a seed: fields with boundaries, products with
//! all that the demo's labels say, passes that were sprayed, cards that were handed out, and records of many seasons, as full as
//! records are that the program makes.

use jiff::Span;
use jiff::civil::{Date, Time, date};
use tankard_core::farm::{
    Card, CardContent, ContainerKind, Droplets, Farm, Field, Id, Moved, Movement, Product, Record, RecordField,
    ShapeError,
};
use tankard_core::loads::card;
use tankard_core::plan::plan;
use tankard_core::quantity::{Amount, AsTyped, Quantity, QuantityError};
use tankard_core::season::record::of_product;
use tankard_core::season::seal;

use crate::{ground, log};

/// The pass that is not sprayed yet: six fields, four products, over all that the farm has.
pub const OPEN: &str = "open-pass";

/// The last season, which is the demo farm's.
const SEASON: i16 = 2031;

/// How large a farm is.
#[derive(Clone, Copy, Debug)]
pub struct Size {
    /// Fields, each with a boundary.
    pub fields: u32,
    /// Points of a boundary.
    pub points: u32,
    /// Products, each with a label.
    pub products: u32,
    /// Seasons, up to the demo farm's.
    pub seasons: i16,
    /// Records in all.
    pub records: u32,
    /// Passes that are recorded.
    pub passes: u32,
    /// Cards that were handed out.
    pub cards: u32,
    /// From which the figures follow.
    pub seed: u64,
}

impl Default for Size {
    /// A new farm's size, but for a season's records.
    fn default() -> Self {
        Self { fields: 100, points: 20, products: 50, seasons: 5, records: 1_000, passes: 50, cards: 20, seed: 2031 }
    }
}

/// Why such a farm cannot be made: a fault in the rule.
#[derive(Debug)]
pub enum Wrong {
    /// A text of it does not read.
    Text(QuantityError),
    /// A boundary does not read.
    Boundary(ShapeError),
    /// The demo farm has no rig, no product or no pass to begin with.
    Demo,
}

impl From<QuantityError> for Wrong {
    fn from(error: QuantityError) -> Self {
        Self::Text(error)
    }
}

impl From<ShapeError> for Wrong {
    fn from(error: ShapeError) -> Self {
        Self::Boundary(error)
    }
}

fn typed<Q: Quantity>(text: &str) -> Result<AsTyped<Q>, QuantityError> {
    AsTyped::parse(text)
}

/// Makes the farm.
///
/// # Errors
/// [`Wrong`], where the rule or the demo farm changed so that it makes none.
pub fn farm(demo: &Farm, size: Size) -> Result<Farm, Wrong> {
    let records = size.records.div_ceil(u32::try_from(size.seasons).unwrap_or(1).max(1));
    let shape = log::Shape { seasons: size.seasons, records, fields: size.fields, untidy: false, seed: size.seed };
    let bare = log::farm(shape)?;
    let mut draw = log::Draw(size.seed ^ 0x5CA1_E000);
    let mut farm = demo.clone();
    "A large farm (demo)".clone_into(&mut farm.name);
    for (number, (id, field)) in (0_u32..).zip(bare.fields) {
        farm.fields.insert(id, of_field(field, number, size.points, &mut draw)?);
    }
    let first = SEASON - size.seasons + 1;
    products(&mut farm, demo, size.products, date(first, 1, 5))?;
    let shelf = Shelf::of(&farm);
    let last = bare.records.len().saturating_sub(usize::try_from(size.passes).unwrap_or(0));
    farm.records.clear();
    for (number, (_, mut record)) in
        bare.records.into_iter().enumerate().take(usize::try_from(size.records).unwrap_or(0))
    {
        record.date = record.date.saturating_sub(Span::new().years(log::FIRST - first));
        let made = fill(&farm, &shelf, record, number >= last, number, &mut draw)?;
        farm.records.insert(format!("{}-{number}", made.date.year()), made);
    }
    passes(&mut farm, demo, last)?;
    cards(&mut farm, demo, size.cards)?;
    Ok(farm)
}

fn of_field(field: Field, number: u32, points: u32, draw: &mut log::Draw) -> Result<Field, Wrong> {
    let stage = match field.crop.as_str() {
        "corn" => "V6",
        "soybean" => "V3",
        _ => "BBCH 37",
    };
    Ok(Field {
        boundary: Some(ground::boundary(number, points)?),
        stage: stage.to_owned(),
        variety: format!("demo {} {}", field.crop, draw.of(&["A", "B", "C"])),
        planted: Some(date(SEASON, 4, 20).saturating_add(Span::new().days(i64::from(number % 25)))),
        harvest: Some(date(SEASON, 9, 20)),
        road: Some(typed(&format!("{}.{} mi", draw.below(9), draw.below(10)))?),
        location: format!("Section {}, township {} (demo)", number % 36 + 1, number / 36 + 1),
        soil: draw.of(&["silt loam, 2.4 % organic matter", "clay loam", ""]).to_owned(),
        ..field
    })
}

/// The demo farm's products over and over, each with its label; every fifth was counted when the log begins and bought since.
fn products(farm: &mut Farm, demo: &Farm, count: u32, begin: Date) -> Result<(), Wrong> {
    let all: Vec<(&Id, &Product)> = demo.products.iter().collect();
    for number in demo.products.len()..usize::try_from(count).unwrap_or(0) {
        let (id, product) = all.get(number % all.len()).ok_or(Wrong::Demo)?;
        let name = product.name.replace(" (demo)", &format!(" no. {number} (demo)"));
        let mut copy = Product { name, registration: format!("demo-{number}"), ..(*product).clone() };
        let id = format!("{id}-{number}");
        if number % 5 == 0 {
            copy.counted = Some(begin);
            bought(farm, &id, &copy, begin)?;
        }
        farm.products.insert(id, copy);
    }
    Ok(())
}

/// A purchase each spring.
fn bought(farm: &mut Farm, id: &str, product: &Product, begin: Date) -> Result<(), Wrong> {
    for year in begin.year()..=SEASON {
        let (kind, size) =
            if product.is_liquid() { (ContainerKind::Jug, "2.5 gal") } else { (ContainerKind::Bag, "50 lb") };
        let what = Moved::Bought {
            kind,
            size: typed(size)?,
            count: 400,
            lot: format!("L{year}"),
            price: None,
            from: String::new(),
        };
        farm.movements.push(Movement {
            product: id.to_owned(),
            date: date(year, 3, 1),
            what,
            by: "A. Demo".to_owned(),
            note: String::new(),
        });
    }
    Ok(())
}

/// The products that go by volume and by weight, the demo's own apart, of which more is sprayed.
struct Shelf {
    liquid: (Vec<Id>, Vec<Id>),
    dry: (Vec<Id>, Vec<Id>),
}

impl Shelf {
    fn of(farm: &Farm) -> Self {
        let sort = |liquid: bool| {
            let all: Vec<Id> = farm
                .products
                .iter()
                .filter(|(_, product)| product.is_liquid() == liquid)
                .map(|(id, _)| id.clone())
                .collect();
            let often = all.iter().take(all.len().min(8)).cloned().collect();
            (often, all)
        };
        Self { liquid: sort(true), dry: sort(false) }
    }

    fn draw(&self, amount: Amount, draw: &mut log::Draw) -> Option<&Id> {
        let (often, all) = if matches!(amount, Amount::Volume(_)) { &self.liquid } else { &self.dry };
        let from = if draw.one_in(2) { often } else { all };
        draw.one(from)
    }
}

/// A record with what the program fills in.
fn fill(
    farm: &Farm,
    shelf: &Shelf,
    mut record: Record,
    of_pass: bool,
    number: usize,
    draw: &mut log::Draw,
) -> Result<Record, Wrong> {
    record.pass = Some(if of_pass { pass_id(number).into() } else { format!("{}-{}", record.date, number % 7).into() });
    record.fields = std::mem::take(&mut record.fields)
        .into_iter()
        .filter_map(|(id, ground)| {
            let field = farm.fields.get(&id)?;
            let known = RecordField {
                stage: (&field.stage).into(),
                variety: (&field.variety).into(),
                location: (&field.location).into(),
                planned: ground.planned,
                part: ground.part,
                crop: ground.crop,
                ..RecordField::new(&ground.name, ground.area)
            };
            Some((id, known))
        })
        .collect();
    record.lines = std::mem::take(&mut record.lines)
        .into_iter()
        .filter_map(|line| {
            let id = shelf.draw(line.amount.value(), draw)?;
            let mut own = of_product(id, farm.products.get(id)?, line.amount, farm.units);
            own.planned = line.planned;
            own.lot = format!("L{}-{}", record.date.year(), draw.below(40)).into();
            Some(own)
        })
        .collect();
    record.weeds = vec![draw.of(&["waterhemp", "giant foxtail", "velvetleaf"]).into()];
    record.method = "ground boom".into();
    record.nozzles = "110 degree, size 06".into();
    record.pressure = Some(typed(&format!("{} psi", 30 + draw.below(30)))?);
    record.speed = Some(typed(&format!("{} mph", 8 + draw.below(7)))?);
    record.height = Some(typed("24 in")?);
    record.droplets = Some(Droplets::Coarse);
    record.gust = Some(typed(&format!("{} mph", 8 + draw.below(14)))?);
    record.operator = draw.of(&["A. Demo", "B. Demo", "C. Demo", "D. Demo"]).into();
    record.certificate = format!("demo {}", draw.below(4)).into();
    record.made = Some(record.date.to_datetime(Time::constant(20, 30, 0, 0)));
    if draw.one_in(5) {
        record.note = format!("Wet spot in the north, went round it; gate {} left open.", draw.below(9)).into();
    }
    if draw.one_in(4) {
        let at = record.date.to_datetime(Time::constant(21, 0, 0, 0));
        record = seal::sign(&record, "A. Demo", at).unwrap_or(record);
    }
    Ok(record)
}

fn pass_id(number: usize) -> Id {
    format!("pass-{number}")
}

/// Passes of the last records, and one that is still to spray.
fn passes(farm: &mut Farm, demo: &Farm, last: usize) -> Result<(), Wrong> {
    let like: Vec<_> = demo.passes.values().collect();
    let recorded: Vec<(Date, Vec<Id>)> =
        farm.records.values().skip(last).map(|record| (record.date, record.fields.keys().cloned().collect())).collect();
    for (number, (date, fields)) in recorded.into_iter().enumerate() {
        let mut pass = (*like.get(number % like.len().max(1)).ok_or(Wrong::Demo)?).clone();
        (pass.name, pass.date, pass.fields) = (format!("Pass {number}"), date, fields);
        pass.parts.clear();
        farm.passes.insert(pass_id(last + number), pass);
    }
    let mut pass = (*like.iter().max_by_key(|pass| pass.mix.len()).ok_or(Wrong::Demo)?).clone();
    "Still to spray".clone_into(&mut pass.name);
    pass.fields = farm
        .fields
        .iter()
        .filter(|(id, field)| field.crop == "corn" && id.starts_with("field-"))
        .map(|(id, _)| id.clone())
        .take(6)
        .collect();
    pass.parts.clear();
    // Its first product was never counted since the log begins, so that all its records tell what is there.
    let begin = farm.records.values().map(|record| record.date).min().unwrap_or_default();
    let first = pass.mix.first().map(|line| line.product.clone()).unwrap_or_default();
    if let Some(product) = farm.products.get_mut(&first) {
        product.counted = Some(begin);
        let product = product.clone();
        bought(farm, &first, &product, begin)?;
    }
    farm.passes.insert(OPEN.to_owned(), pass);
    Ok(())
}

/// Cards as they were handed out, all like the first of the demo farm's passes that makes one.
fn cards(farm: &mut Farm, demo: &Farm, count: u32) -> Result<(), Wrong> {
    let like: Vec<(Id, CardContent)> = demo
        .passes
        .keys()
        .filter_map(|id| plan(demo, id))
        .flat_map(|plan| card::cards(demo, &plan).into_iter().map(move |content| (plan.pass.clone(), content)))
        .collect();
    for number in 0..usize::try_from(count).unwrap_or(0) {
        let (pass, content) = like.get(number % like.len().max(1)).ok_or(Wrong::Demo)?;
        let issued = date(SEASON, 6, 1).at(5, 0, 0, 0);
        let card = Card { pass: pass.clone(), issued, content: content.clone() };
        farm.cards.insert(format!("{:06}", number + 1), card);
    }
    Ok(())
}
