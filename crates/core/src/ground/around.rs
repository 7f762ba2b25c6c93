//! What is drawn and lies beside a field.

use super::{Directions, strips};
use crate::farm::{Farm, Field, Id, Shape, Surrounding};
use crate::language::{Say, say};
use crate::quantity::Length;
use crate::weather::practice;

/// Something drawn beside a field.
#[derive(Clone, Debug, PartialEq)]
pub struct Around<'a> {
    /// Its id in [`Farm::surroundings`].
    pub id: &'a Id,
    /// What it is.
    pub drawn: &'a Surrounding,
    /// How far it lies from the field's edge; nothing where it touches it.
    pub distance: Length,
    /// In which directions it lies, seen from the field.
    pub directions: Directions,
}

/// What is drawn and lies beside a field, the nearest first: as near as practice takes for beside. Nothing where the field has no
/// boundary.
pub fn around<'a>(farm: &'a Farm, field: &Field) -> Vec<Around<'a>> {
    let Some(on_plane) = field.boundary.as_ref().and_then(Shape::on_plane) else { return Vec::new() };
    let reach = practice::beside();
    let mut all: Vec<Around> = strips::drawn(farm, field, reach)
        .filter_map(|(id, drawn)| {
            let beside = on_plane.beside(&[], &drawn.shape, reach)?;
            Some(Around { id, drawn, distance: beside.distance, directions: beside.directions.clone() })
        })
        .collect();
    all.sort_by_key(|around| around.distance);
    all
}

/// On which side of a field something drawn lies, in words: "west side", "on all sides"; empty where it does not lie within reach of it.
pub fn side(field: &Field, what: &Shape, reach: Length) -> String {
    side_said(field, what, reach).aloud()
}

/// The same in any language.
pub(crate) fn side_said(field: &Field, what: &Shape, reach: Length) -> Say {
    let beside = field.boundary.as_ref().and_then(Shape::on_plane).and_then(|field| field.beside(&[], what, reach));
    beside.map_or(Say::nothing(), |beside| said_side_of(&beside.directions))
}

/// The side on which directions lie, by the middle of the widest of their arcs.
pub fn side_of(directions: &Directions) -> String {
    said_side_of(directions).aloud()
}

fn said_side_of(directions: &Directions) -> Say {
    let widest = directions.arcs().iter().max_by(|a, b| a.to_degrees().total_cmp(&b.to_degrees()));
    match widest {
        Some(arc) if arc.to_degrees() < MOST_OF_ONE_SIDE => {
            // An eighth of the compass lies about each side; a number of eighths is small.
            #[allow(clippy::cast_possible_truncation, clippy::cast_sign_loss)]
            let at = (arc.middle().to_degrees() / 45.0).round() as usize % SIDES.len();
            SIDES.get(at).map_or(Say::nothing(), |(_, id)| say("card-strip-side").with("side", say(id)))
        }
        Some(_) => say("card-strip-all-round"),
        None => Say::nothing(),
    }
}

/// The sides in words, from north on with the clock, and the messages that say them.
const SIDES: [(&str, &str); 8] = [
    ("north", "card-side-north"),
    ("northeast", "card-side-northeast"),
    ("east", "card-side-east"),
    ("southeast", "card-side-southeast"),
    ("south", "card-side-south"),
    ("southwest", "card-side-southwest"),
    ("west", "card-side-west"),
    ("northwest", "card-side-northwest"),
];

/// A side that a person typed: one of the compass in words is said in any language, else as typed.
pub(crate) fn side_on_card(side: &str) -> Say {
    let plain = |text: &str| text.to_lowercase().replace(['-', ' '], "");
    let known = SIDES.iter().find(|(name, _)| plain(name) == plain(side));
    known.map_or_else(|| side.into(), |(_, id)| say(id))
}

/// What looks at the field from more of the compass than this lies all round it.
const MOST_OF_ONE_SIDE: f64 = 270.0;

#[cfg(test)]
mod tests {
    use super::{around, side};
    use crate::farm::{Farm, Field, Shape, Surrounding, SurroundingKind};
    use crate::quantity::{AsTyped, Length};

    fn shape(text: &str) -> Shape {
        Shape::parse(text).unwrap()
    }

    /// A hundredth of a degree is 1.11 km of latitude and 0.84 km of longitude at 41.2 degrees north (WGS 84).
    #[test]
    fn what_is_near_with_its_side() {
        let mut farm = Farm::new("Test");
        let mut field = Field::new("Mill field", AsTyped::parse("230 ac").unwrap());
        field.boundary = Some(shape("POLYGON ((-96.4 41.2, -96.39 41.2, -96.39 41.21, -96.4 41.21, -96.4 41.2))"));
        for (id, text) in [
            ("creek", "LINESTRING (-96.4001 41.19, -96.4001 41.22)"),
            ("south", "POINT (-96.395 41.199)"),
            ("far", "POINT (-96.3 41.2)"),
            (
                "round",
                "POLYGON ((-96.41 41.19, -96.38 41.19, -96.38 41.22, -96.41 41.22, -96.41 41.19), (-96.4001 41.1999, -96.4001 41.2101, -96.3899 41.2101, -96.3899 41.1999, -96.4001 41.1999))",
            ),
        ] {
            let drawn = Surrounding {
                name: id.to_owned(),
                kind: SurroundingKind::Water,
                shape: shape(text),
                note: String::new(),
            };
            farm.surroundings.insert(id.to_owned(), drawn);
        }
        let found = around(&farm, &field);
        let mut names: Vec<&str> = found.iter().map(|around| around.id.as_str()).collect();
        names.sort_unstable();
        assert_eq!(names, ["creek", "round", "south"]);
        let of = |id: &str| side(&field, &farm.surroundings[id].shape, Length::from_metres(200.0));
        assert_eq!(
            (of("creek"), of("south"), of("round")),
            ("west side".to_owned(), "south side".to_owned(), "on all sides".to_owned())
        );
        assert_eq!(of("far"), "");
    }
}
