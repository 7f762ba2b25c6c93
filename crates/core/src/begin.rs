//! What of a new farm is there, and what comes next until its first load card. It is seen from the farm itself, so that it can be taken up
//! on any day, on any machine and in any order: what a later thing rests on counts as done.

use crate::farm::{Farm, Pass, Says};
use crate::language::{Language, speaking, t};
use crate::water::hardness;
use crate::weather::sun;

/// The name that a farm has before it is given one.
pub fn new_farm() -> &'static str {
    t!("core-new-farm")
}

/// That of a rig.
pub fn new_rig() -> &'static str {
    t!("core-new-rig")
}

/// That of a water.
pub fn new_water() -> &'static str {
    t!("core-new-water")
}

/// That of a product.
pub fn new_product() -> &'static str {
    t!("core-new-product")
}

/// The steps, in the order in which they rest on each other.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Step {
    /// The units and where the farm lies.
    Place,
    /// The first field.
    Field,
    /// The first sprayer.
    Rig,
    /// The first water.
    Water,
    /// The first product.
    Product,
    /// The first pass.
    Pass,
    /// The first load card.
    Card,
}

impl Step {
    /// All of them.
    pub const ALL: [Self; 7] =
        [Self::Place, Self::Field, Self::Rig, Self::Water, Self::Product, Self::Pass, Self::Card];

    /// Its place among them, from 1.
    pub fn number(self) -> usize {
        Self::ALL.iter().take_while(|step| **step < self).count() + 1
    }
}

/// What comes next: what a step still lacks. An id is of the thing that is begun.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Next {
    /// No place is typed, so the units were hardly looked at either.
    Units,
    /// Latitude.
    Latitude,
    /// Longitude.
    Longitude,
    /// Time zone, or one that is known here.
    Zone,
    /// A field.
    Field,
    /// The name of a field.
    FieldName(String),
    /// The area of a field.
    FieldArea(String),
    /// A rig.
    Rig,
    /// The name of a rig.
    RigName(String),
    /// What the tank of a rig holds.
    RigTank(String),
    /// The boom of a rig.
    RigBoom(String),
    /// The first nozzle set of a rig.
    RigNozzles(String),
    /// A water.
    Water,
    /// The analysis of a water.
    WaterAnalysis(String),
    /// A product.
    Product,
    /// The name of a product.
    ProductName(String),
    /// The actives of a product, and what else stands on its front panel.
    ProductActive(String),
    /// The rate on the label of a product.
    ProductRate(String),
    /// A pass.
    Pass,
    /// The fields of a pass.
    PassFields(String),
    /// The water of a pass.
    PassWater(String),
    /// The rig of a pass.
    PassRig(String),
    /// The spray volume of a pass.
    PassCarrier(String),
    /// The products of a pass.
    PassMix(String),
    /// The rate of a product in a pass: of which pass, of which product.
    PassRate(String, String),
    /// The cards of a pass.
    Card(String),
}

impl Next {
    /// Of which step it is.
    pub const fn step(&self) -> Step {
        match self {
            Self::Units | Self::Latitude | Self::Longitude | Self::Zone => Step::Place,
            Self::Field | Self::FieldName(_) | Self::FieldArea(_) => Step::Field,
            Self::Rig | Self::RigName(_) | Self::RigTank(_) | Self::RigBoom(_) | Self::RigNozzles(_) => Step::Rig,
            Self::Water | Self::WaterAnalysis(_) => Step::Water,
            Self::Product | Self::ProductName(_) | Self::ProductActive(_) | Self::ProductRate(_) => Step::Product,
            Self::Pass
            | Self::PassFields(_)
            | Self::PassWater(_)
            | Self::PassRig(_)
            | Self::PassCarrier(_)
            | Self::PassMix(_)
            | Self::PassRate(..) => Step::Pass,
            Self::Card(_) => Step::Card,
        }
    }
}

/// What comes next on a farm; nothing once a card was issued or anything recorded.
///
/// # Examples
/// ```
/// use tankard_core::begin::{Next, next};
/// use tankard_core::farm::Farm;
/// assert_eq!(next(&Farm::new("New farm")), Some(Next::Units));
/// ```
pub fn next(farm: &Farm) -> Option<Next> {
    if !farm.cards.is_empty() || !farm.records.is_empty() {
        return None;
    }
    place(farm)
        .or_else(|| field(farm))
        .or_else(|| rig(farm))
        .or_else(|| water(farm))
        .or_else(|| product(farm))
        .or_else(|| Some(pass(farm)))
}

fn place(farm: &Farm) -> Option<Next> {
    let Some(place) = &farm.place else {
        return Some(if is_named(&farm.name, new_farm) { Next::Latitude } else { Next::Units });
    };
    if place.latitude.trim().is_empty() {
        Some(Next::Latitude)
    } else if place.longitude.trim().is_empty() || place.position().is_err() {
        Some(Next::Longitude)
    } else {
        (place.zone.trim().is_empty() || sun::zone(place).is_err()).then_some(Next::Zone)
    }
}

/// Nothing where one is as it should be, else what the first lacks, else that there is none.
fn first_lacking<'a, T: 'a>(
    all: impl Iterator<Item = (&'a String, &'a T)>,
    lacks: impl Fn(&'a String, &'a T) -> Option<Next>,
    none: Next,
) -> Option<Next> {
    let mut first = None;
    for (id, one) in all {
        let lacking = lacks(id, one)?;
        first.get_or_insert(lacking);
    }
    Some(first.unwrap_or(none))
}

fn is_named(name: &str, before: fn() -> &'static str) -> bool {
    // The desk may have spoken another language when it was begun.
    !name.trim().is_empty() && Language::ALL.into_iter().all(|language| name.trim() != speaking(language, before))
}

fn field(farm: &Farm) -> Option<Next> {
    let lacks = |id: &String, field: &crate::farm::Field| {
        if field.area.value().is_zero() {
            let is_unnamed = field.name.trim().is_empty();
            Some(if is_unnamed { Next::FieldName(id.clone()) } else { Next::FieldArea(id.clone()) })
        } else if field.name.trim().is_empty() {
            Some(Next::FieldName(id.clone()))
        } else {
            None
        }
    };
    first_lacking(farm.fields.iter(), lacks, Next::Field)
}

fn is_used(farm: &Farm, by: impl Fn(&Pass) -> bool) -> bool {
    farm.passes.values().any(by)
}

fn rig(farm: &Farm) -> Option<Next> {
    let lacks = |id: &String, rig: &crate::farm::Rig| {
        let is_used = is_used(farm, |pass| pass.rig == *id);
        // No load can be reckoned before the tank is typed, whatever takes the rig.
        if rig.tank.is_zero() {
            let is_named = is_named(&rig.name, new_rig) || is_used;
            Some(if is_named { Next::RigTank(id.clone()) } else { Next::RigName(id.clone()) })
        } else if is_used {
            None
        } else if rig.boom.is_none() {
            Some(Next::RigBoom(id.clone()))
        } else if rig.sets.is_empty() && rig.nozzles.trim().is_empty() {
            Some(Next::RigNozzles(id.clone()))
        } else {
            None
        }
    };
    first_lacking(farm.rigs.iter(), lacks, Next::Rig)
}

fn water(farm: &Farm) -> Option<Next> {
    let lacks = |id: &String, water: &crate::farm::Water| {
        let there = hardness(water).is_some() || is_used(farm, |pass| pass.water == *id);
        (!there).then(|| Next::WaterAnalysis(id.clone()))
    };
    first_lacking(farm.waters.iter(), lacks, Next::Water)
}

fn product(farm: &Farm) -> Option<Next> {
    let lacks = |id: &String, product: &crate::farm::Product| {
        let has_rate = product.label.iter().any(
            |statement| matches!(&statement.says, Says::Rate { least, most } if least.is_some() || most.is_some()),
        );
        if has_rate || is_used(farm, |pass| pass.mix.iter().any(|line| line.product == *id)) {
            None
        } else if !is_named(&product.name, new_product) {
            Some(Next::ProductName(id.clone()))
        } else if product.kind.is_pesticide() && product.actives.is_empty() {
            Some(Next::ProductActive(id.clone()))
        } else {
            Some(Next::ProductRate(id.clone()))
        }
    };
    first_lacking(farm.products.iter(), lacks, Next::Product)
}

fn pass(farm: &Farm) -> Next {
    let lacks = |id: &String, pass: &Pass| {
        let rate = pass.mix.iter().find(|line| line.rate.value().is_zero());
        let id = id.clone();
        if !pass.fields.iter().any(|field| farm.fields.contains_key(field)) {
            Next::PassFields(id)
        } else if !farm.waters.contains_key(&pass.water) {
            Next::PassWater(id)
        } else if !farm.rigs.contains_key(&pass.rig) {
            Next::PassRig(id)
        } else if pass.carrier.as_ref().is_none_or(|carrier| carrier.value().is_zero()) {
            Next::PassCarrier(id)
        } else if pass.mix.is_empty() {
            Next::PassMix(id)
        } else if let Some(line) = rate {
            Next::PassRate(id, line.product.clone())
        } else {
            Next::Card(id)
        }
    };
    // The pass that is furthest on is the one to go on with.
    let mut all: Vec<Next> = farm.passes.iter().map(|(id, pass)| lacks(id, pass)).collect();
    all.sort_by_key(|next| std::cmp::Reverse(rank(next)));
    all.into_iter().next().unwrap_or(Next::Pass)
}

const fn rank(next: &Next) -> u8 {
    match next {
        Next::PassFields(_) => 0,
        Next::PassWater(_) => 1,
        Next::PassRig(_) => 2,
        Next::PassCarrier(_) => 3,
        Next::PassMix(_) => 4,
        Next::PassRate(..) => 5,
        _ => 6,
    }
}

#[cfg(test)]
mod tests {
    use super::{Next, Step, new_farm, new_product, new_rig, new_water, next};
    use crate::farm::{
        Farm, Field, Formulation, Line, NozzleSet, Pass, Place, Product, ProductKind, Rig, Says, Statement, Water,
    };
    use crate::quantity::{AsTyped, Quantity};

    fn q<Q: Quantity>(text: &str) -> AsTyped<Q> {
        AsTyped::parse(text).unwrap()
    }

    fn place(latitude: &str, longitude: &str, zone: &str) -> Place {
        let (latitude, longitude, zone) = (latitude.to_owned(), longitude.to_owned(), zone.to_owned());
        Place { latitude, longitude, zone, ..Place::default() }
    }

    #[test]
    fn step_by_step_to_the_first_card() {
        let mut farm = Farm::new(new_farm());
        assert_eq!(next(&farm), Some(Next::Units));
        farm.place = Some(place("41.2", "", ""));
        assert_eq!(next(&farm), Some(Next::Longitude));
        farm.place = Some(place("41.2", "west", "America/Chicago"));
        assert_eq!(next(&farm), Some(Next::Longitude));
        farm.place = Some(place("41.2", "-96.4", "Middle/Earth"));
        assert_eq!(next(&farm), Some(Next::Zone));
        farm.place = Some(place("41.2", "-96.4", "America/Chicago"));
        assert_eq!(next(&farm), Some(Next::Field));
        farm.fields.insert("f".to_owned(), Field::new("", q("0 ac")));
        assert_eq!(next(&farm), Some(Next::FieldName("f".to_owned())));
        farm.fields["f"].name = "North".to_owned();
        assert_eq!(next(&farm), Some(Next::FieldArea("f".to_owned())));
        farm.fields["f"].area = q("40 ac");
        assert_eq!(next(&farm), Some(Next::Rig));
        farm.rigs.insert("r".to_owned(), Rig::new(new_rig(), q("0 gal")));
        assert_eq!(next(&farm), Some(Next::RigName("r".to_owned())));
        farm.rigs["r"].name = "Boom".to_owned();
        assert_eq!(next(&farm), Some(Next::RigTank("r".to_owned())));
        farm.rigs["r"].tank = q("800 gal");
        assert_eq!(next(&farm), Some(Next::RigBoom("r".to_owned())));
        farm.rigs["r"].boom = Some(q("90 ft"));
        assert_eq!(next(&farm), Some(Next::RigNozzles("r".to_owned())));
        farm.rigs["r"].sets.insert("n".to_owned(), NozzleSet { name: "05".to_owned(), ..NozzleSet::default() });
        assert_eq!(next(&farm), Some(Next::Water));
        farm.waters.insert("w".to_owned(), Water { name: new_water().to_owned(), ..Water::default() });
        assert_eq!(next(&farm), Some(Next::WaterAnalysis("w".to_owned())));
        farm.waters["w"].hardness = Some(q("300 ppm"));
        assert_eq!(next(&farm), Some(Next::Product));
        let product = Product::new(new_product(), ProductKind::Herbicide, Formulation::SL);
        farm.products.insert("p".to_owned(), product);
        assert_eq!(next(&farm), Some(Next::ProductName("p".to_owned())));
        farm.products["p"].name = "Invented".to_owned();
        assert_eq!(next(&farm), Some(Next::ProductActive("p".to_owned())));
        // An adjuvant has none.
        farm.products["p"].kind = ProductKind::Adjuvant;
        assert_eq!(next(&farm), Some(Next::ProductRate("p".to_owned())));
        let rate = Says::Rate { least: None, most: Some(q("22 fl oz/ac")) };
        farm.products["p"].label.push(Statement::new(rate, ""));
        assert_eq!(next(&farm), Some(Next::Pass));
        farm.passes.insert("a".to_owned(), Pass::new("First", jiff::civil::date(2031, 6, 12)));
        let id = || "a".to_owned();
        assert_eq!(next(&farm), Some(Next::PassFields(id())));
        farm.passes["a"].fields.push("f".to_owned());
        assert_eq!(next(&farm), Some(Next::PassWater(id())));
        farm.passes["a"].water = "w".to_owned();
        assert_eq!(next(&farm), Some(Next::PassRig(id())));
        farm.passes["a"].rig = "r".to_owned();
        assert_eq!(next(&farm), Some(Next::PassCarrier(id())));
        farm.passes["a"].carrier = Some(q("15 gal/ac"));
        assert_eq!(next(&farm), Some(Next::PassMix(id())));
        farm.passes["a"].mix.push(Line::new("p", q("0.00 fl oz/ac")));
        assert_eq!(next(&farm), Some(Next::PassRate(id(), "p".to_owned())));
        farm.passes["a"].mix[0].rate = q("22 fl oz/ac");
        assert_eq!(next(&farm), Some(Next::Card(id())));
        assert_eq!(next(&farm).map(|next| (next.step(), next.step().number())), Some((Step::Card, Step::ALL.len())));
        // A second pass that is just begun does not lead back.
        farm.passes.insert("b".to_owned(), Pass::new("Second", jiff::civil::date(2031, 6, 13)));
        assert_eq!(next(&farm), Some(Next::Card(id())));
    }

    #[test]
    fn steps_in_another_order_are_seen() {
        let mut farm = Farm::new(new_farm());
        farm.waters.insert("w".to_owned(), Water { name: "Tap".to_owned(), ..Water::default() });
        farm.place = Some(place("41.2", "-96.4", "America/Chicago"));
        farm.fields.insert("f".to_owned(), Field::new("North", q("40 ac")));
        farm.rigs.insert("r".to_owned(), Rig::new("Boom", q("1000 gal")));
        assert_eq!(next(&farm), Some(Next::RigBoom("r".to_owned())));
        farm.rigs["r"].boom = Some(q("90 ft"));
        farm.rigs["r"].nozzles = "110 degree, 05".to_owned();
        // Without an analysis the water is what comes next, until a pass takes it as it is.
        assert_eq!(next(&farm), Some(Next::WaterAnalysis("w".to_owned())));
        let mut pass = Pass::new("First", jiff::civil::date(2031, 6, 12));
        pass.water = "w".to_owned();
        farm.passes.insert("a".to_owned(), pass);
        assert_eq!(next(&farm), Some(Next::Product));
        // A farm with records is at home here.
        let with_records = crate::farm::Record::new("Invented", jiff::civil::date(2030, 6, 1));
        farm.records.insert("x".to_owned(), with_records);
        assert_eq!(next(&farm), None);
    }
}
