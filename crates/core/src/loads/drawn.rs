//! The fields of a card drawn small, with the strips that are left unsprayed in words.

use geo::MultiPolygon;

use crate::farm::card::CardOutline;
use crate::farm::{Farm, Field, Id};
use crate::ground::outline::{Outline, Spot, outline};
use crate::ground::side_on_card;
use crate::ground::{self, Applies, FieldGround, Strip, To};
use crate::language::{Language, Say, say};
use crate::plan::Plan;
use crate::quantity::{Length, Quantity};

/// The fields that have a boundary, each once. No wind is drawn where none is typed for the pass.
pub(crate) fn fields<'a>(
    farm: &Farm,
    plan: &Plan,
    fields: impl IntoIterator<Item = &'a Id>,
    languages: &[Language],
) -> Vec<CardOutline> {
    fields.into_iter().filter_map(|id| one(farm, plan, id, farm.fields.get(id)?, languages)).collect()
}

fn one(farm: &Farm, plan: &Plan, id: &Id, field: &Field, languages: &[Language]) -> Option<CardOutline> {
    let left = plan.ground.of_field(id);
    let unsprayed = left.and_then(|left| left.strip_shape.as_ref()?.polygons());
    let drawing = outline(field, &unsprayed.unwrap_or(MultiPolygon(Vec::new())), farm.surroundings.values())?;
    let longer = drawing.width.max(drawing.height);
    let to_mille = |length: Length| length.ratio(longer).map_or(0, whole_mille);
    let put = Put { longer, height: drawing.height };
    let polygons = |all: &[crate::ground::outline::OutlinePolygon]| -> Vec<String> {
        all.iter().flat_map(|one| std::iter::once(&one.edge).chain(&one.holes)).map(|ring| put.line(ring)).collect()
    };
    let Outline { field: edge, unsprayed, gateways, near, width, height } = &drawing;
    let wind = farm.passes.get(&plan.pass).and_then(|pass| pass.wind_from.as_ref());
    Some(CardOutline {
        field: field.name.clone(),
        width: to_mille(*width),
        height: to_mille(*height),
        edge: polygons(edge),
        unsprayed: polygons(unsprayed),
        lines: near.iter().flat_map(|near| &near.lines).map(|line| put.line(line)).collect(),
        areas: near.iter().flat_map(|near| polygons(&near.polygons)).collect(),
        points: near.iter().flat_map(|near| &near.points).map(|at| put.spot(at)).collect(),
        gateways: gateways.iter().map(|(_, at)| put.spot(at)).collect(),
        strips: left.map(|left| strips(farm, field, left, languages)).unwrap_or_default(),
        wind: wind.map(|from| from.value().point().to_owned()).unwrap_or_default(),
        wind_from: wind.map(|from| whole(from.value().to_degrees())),
    })
}

/// Places in a drawing as thousandths of its longer side, from its upper left corner.
struct Put {
    longer: Length,
    height: Length,
}

impl Put {
    fn spot(&self, at: &Spot) -> String {
        let share = |length: Length| length.ratio(self.longer).map_or(0, whole_mille);
        format!("{},{}", share(at.east), share(self.height - at.north))
    }

    fn line(&self, line: &[Spot]) -> String {
        line.iter().map(|at| self.spot(at)).collect::<Vec<_>>().join(" ")
    }
}

fn whole_mille(share: f64) -> i32 {
    whole(share * 1000.0)
}

#[allow(clippy::cast_possible_truncation)] // Of a drawing that holds some thousand steps, or of a compass.
fn whole(number: f64) -> i32 {
    number.round() as i32
}

/// The strips of a field in words, those that are left before those that may have to be.
fn strips(farm: &Farm, field: &Field, left: &FieldGround, languages: &[Language]) -> Vec<String> {
    let mut all: Vec<(bool, String)> = Vec::new();
    for strip in &left.strips {
        let when = match strip.applies {
            Applies::Yes | Applies::WindUnknown if strip.area.is_zero() => continue,
            Applies::Yes if strip.downwind_only => say("card-leave-planned"),
            Applies::Yes => Say::nothing(),
            Applies::WindUnknown => say("card-leave-any-wind"),
            Applies::NotDownwind => say("card-leave-as-soon"),
            Applies::NotMeasured => say("card-leave-not-drawn"),
        };
        let leave = say("card-leave").with("strip", of_strip(farm, field, strip)).with("when", when);
        let words = leave.with("who", strip.who.as_str()).in_languages(languages);
        if !all.iter().any(|(_, known)| *known == words) {
            all.push((matches!(strip.applies, Applies::NotDownwind | Applies::NotMeasured), words));
        }
    }
    all.sort_by_key(|(may, _)| *may);
    all.into_iter().map(|(_, words)| words).collect()
}

/// "110 ft along Mill creek, west side, 1,320 ft of the edge".
fn of_strip(farm: &Farm, field: &Field, strip: &Strip) -> Say {
    let units = farm.units;
    let side = match &strip.to {
        To::Surrounding(id) => {
            let drawn = farm.surroundings.get(id);
            drawn.map_or(Say::nothing(), |drawn| ground::side_said(field, &drawn.shape, strip.width))
        }
        To::Neighbour(at) => {
            let side = field.neighbours.get(*at).map_or("", |neighbour| neighbour.side.trim());
            if side.is_empty() { Say::nothing() } else { say("card-strip-side").with("side", side_on_card(side)) }
        }
    };
    let (id, edge) = if strip.edge.is_zero() {
        ("card-strip-to", Say::nothing())
    } else {
        ("card-strip-along", say("card-strip-edge").with("length", strip.edge.show(units)))
    };
    let strip = say(id).with("width", strip.width.show(units)).with("what", strip.what.as_str());
    Say::all([strip, side, edge], ", ")
}

#[cfg(test)]
mod tests {
    use super::fields;
    use crate::farm::label::Says;
    use crate::farm::{
        Farm, Field, Formulation, Gateway, Line, Pass, Product, ProductKind, Rig, Shape, Statement, Surrounding,
        SurroundingKind,
    };
    use crate::plan::plan;
    use crate::quantity::{AsTyped, Quantity};
    use jiff::civil::date;

    fn q<Q: Quantity>(text: &str) -> AsTyped<Q> {
        AsTyped::parse(text).unwrap()
    }

    fn shape(text: &str) -> Shape {
        Shape::parse(text).unwrap()
    }

    /// A field of a hundredth of a degree with a creek along its west edge, whose label asks for 110 ft.
    fn farm(downwind_only: bool) -> Farm {
        let mut farm = Farm::new("Test");
        let mut field = Field::new("Mill field", q("230 ac"));
        field.boundary = Some(shape("POLYGON ((-96.4 41.2, -96.39 41.2, -96.39 41.21, -96.4 41.21, -96.4 41.2))"));
        field.gateways.push(Gateway { name: String::new(), at: shape("POINT (-96.39 41.205)") });
        farm.fields.insert("f".to_owned(), field);
        farm.fields.insert("bare".to_owned(), Field::new("Bare", q("10 ac")));
        let creek = Surrounding {
            name: "Mill creek".to_owned(),
            kind: SurroundingKind::Water,
            shape: shape("LINESTRING (-96.4001 41.19, -96.4001 41.22)"),
            note: String::new(),
        };
        farm.surroundings.insert("creek".to_owned(), creek);
        let mut product = Product::new("Alpha 480 SL (demo)", ProductKind::Herbicide, Formulation::SL);
        product
            .label
            .push(Statement::new(Says::Buffer { to: "creek".to_owned(), width: q("110 ft"), downwind_only }, "page 3"));
        farm.products.insert("a".to_owned(), product);
        farm.rigs.insert("r".to_owned(), Rig::new("Boom", q("1200 gal")));
        let mut pass = Pass::new("Pass", date(2031, 6, 12));
        pass.fields = vec!["f".to_owned(), "bare".to_owned()];
        "r".clone_into(&mut pass.rig);
        pass.carrier = Some(q("15 gal/ac"));
        pass.mix.push(Line::new("a", q("32 fl oz/ac")));
        farm.passes.insert("p".to_owned(), pass);
        farm
    }

    fn drawn(farm: &Farm) -> crate::farm::card::CardOutline {
        let plan = plan(farm, "p").unwrap();
        let mut all = fields(farm, &plan, plan.fields.iter().map(|field| &field.field), &[]);
        // A field without a boundary has no drawing.
        assert_eq!(all.len(), 1);
        all.remove(0)
    }

    #[test]
    fn strips_are_drawn_and_told() {
        let farm = farm(false);
        let outline = drawn(&farm);
        assert_eq!((outline.edge.len(), outline.gateways.len(), outline.lines.len()), (1, 1, 1));
        assert!(!outline.unsprayed.is_empty() && outline.wind.is_empty());
        // The west edge is a hundredth of a degree of latitude, 1,110.6 m (WGS 84) or 3,644 ft; the strip also takes its two ends.
        let words = &outline.strips[0];
        assert!(words.starts_with("leave 110 ft along Mill creek, west side, 3,8"), "{words}");
        assert!(words.ends_with("ft of the edge (Alpha 480 SL (demo))"), "{words}");
        // The field is taller than wide, and what is drawn lies within its frame.
        assert_eq!((outline.height, outline.width < 1000), (1000, true));
        for spot in outline.edge.iter().chain(&outline.lines).flat_map(|line| line.split(' ')) {
            let (x, y) = spot.split_once(',').unwrap();
            assert!((0..=outline.width).contains(&x.parse().unwrap()), "{spot}");
            assert!((0..=outline.height).contains(&y.parse().unwrap()), "{spot}");
        }
    }

    #[test]
    fn a_strip_down_the_wind_says_when_it_holds() {
        let mut farm = farm(true);
        assert!(drawn(&farm).strips[0].contains("whichever way the wind blows"));
        farm.passes["p"].wind_from = Some(q("E"));
        let outline = drawn(&farm);
        assert!(outline.strips[0].contains("as the wind is planned"), "{:?}", outline.strips);
        assert_eq!((outline.wind.as_str(), outline.wind_from), ("E", Some(90)));
        farm.passes["p"].wind_from = Some(q("W"));
        assert!(drawn(&farm).strips[0].contains("as soon as the wind blows toward it"));
    }
}
