//! What the readers of all kinds of files come to: shapes as they are drawn, made into pieces.

use geo::{Coord, Geometry, LineString, MultiLineString, MultiPoint, Point, Rect};
use tankard_core::farm::{Position, Shape, SurroundingKind};
use tankard_core::ground::rings::{self, Order, Ring, Turn, mend, nest};
use tankard_core::progress::Tell;
use tankard_core::quantity::Area;
use tankard_core::quantity::number::show;
use tankard_core::t;

use super::limits::{FACTS, tidy};
use super::{Found, GroundError, Is, Kind, Piece, Refused};

/// No field is larger; one that is has its points in feet, or a wrong sign.
const LARGEST: Area = Area::from_hectares(1_000_000.0);
/// Nothing that is sprayed or kept from spray is smaller.
const SMALLEST: Area = Area::from_square_metres(1.0);

/// What one piece of a file holds, by kind, as a shape is of one kind.
#[derive(Default)]
pub(super) struct Parts {
    pub(super) points: Vec<Coord<f64>>,
    pub(super) lines: Vec<Ring>,
    pub(super) polygons: Vec<Vec<Ring>>,
}

impl Parts {
    pub(super) fn is_empty(&self) -> bool {
        self.points.is_empty() && self.lines.is_empty() && self.polygons.is_empty()
    }

    pub(super) fn drawn(self) -> impl Iterator<Item = Drawn> {
        let polygons = (!self.polygons.is_empty()).then_some(Drawn::Polygons(self.polygons));
        let lines = (!self.lines.is_empty()).then_some(Drawn::Lines(self.lines));
        let points = (!self.points.is_empty()).then_some(Drawn::Points(self.points));
        [polygons, lines, points].into_iter().flatten()
    }
}

/// A shape as it is drawn.
#[derive(Clone, Debug)]
pub(super) enum Drawn {
    Points(Vec<Coord<f64>>),
    Lines(Vec<Ring>),
    /// In each the outer ring stands first.
    Polygons(Vec<Vec<Ring>>),
    /// Rings of which it is not said which are outer ones.
    Rings(Vec<Ring>),
}

impl Drawn {
    fn each(&mut self, mut to_do: impl FnMut(&mut Coord<f64>)) {
        match self {
            Self::Points(points) => points.iter_mut().for_each(&mut to_do),
            Self::Lines(lines) | Self::Rings(lines) => lines.iter_mut().flatten().for_each(&mut to_do),
            Self::Polygons(polygons) => polygons.iter_mut().flatten().flatten().for_each(&mut to_do),
        }
    }
}

/// A piece before its shape is looked at.
#[derive(Clone, Debug)]
pub(super) struct Raw {
    /// What the file calls it; may be empty.
    pub(super) name: String,
    /// Where it stands in the file: "feature 3".
    pub(super) place: String,
    pub(super) drawn: Drawn,
    /// What the file says it is.
    pub(super) is: Option<Is>,
    pub(super) facts: Vec<(String, String)>,
}

/// What a reader gives.
pub(super) struct Gathered {
    pub(super) kind: Kind,
    pub(super) raws: Vec<Raw>,
    pub(super) refused: Vec<Refused>,
    pub(super) notes: Vec<String>,
    /// Which way round outer rings run in this kind of file.
    pub(super) turn: Turn,
    /// Whether the kind of file says which number comes first, beyond doubt: attributes of their own.
    pub(super) is_ordered: bool,
}

impl Gathered {
    pub(super) fn new(kind: Kind, turn: Turn) -> Self {
        let is_ordered = kind == Kind::TaskData;
        Self { kind, raws: Vec::new(), refused: Vec::new(), notes: Vec::new(), turn, is_ordered }
    }

    /// Mends what was gathered, told how many pieces are mended.
    ///
    /// # Errors
    /// [`Cancelled`] where it is ended.
    pub(super) fn found(mut self, near: Option<Position>, tell: &Tell<'_>) -> Result<Found, GroundError> {
        self.put_in_order(near);
        let mut found = Found { kind: self.kind, pieces: Vec::new(), refused: self.refused, notes: self.notes };
        let all = self.raws.len();
        for (at, mut raw) in self.raws.into_iter().enumerate() {
            tell(at, Some(all))?;
            raw.name = tidy(&raw.name);
            if raw.name.is_empty() {
                raw.name = sentence(&raw.place);
            }
            let facts = raw.facts.into_iter().map(|(name, value)| (tidy(&name), tidy(&value)));
            raw.facts = facts.filter(|(name, value)| !name.is_empty() && !value.is_empty()).take(FACTS).collect();
            let (name, place) = (raw.name.clone(), raw.place.clone());
            match piece(raw, self.turn) {
                Ok(piece) => found.pieces.push(piece),
                Err(why) => found.refused.push(Refused { name, place, why }),
            }
        }
        Ok(found)
    }

    /// Turns latitude and longitude round where they stand in each other's place.
    fn put_in_order(&mut self, near: Option<Position>) {
        let Some(around) = self.around() else { return };
        if self.is_ordered && near.is_none() {
            return;
        }
        match rings::order(around, near) {
            Order::AsTheyStand => {}
            Order::Swapped(_) if self.is_ordered => {}
            Order::Swapped(why) => {
                for raw in &mut self.raws {
                    raw.drawn.each(|at| std::mem::swap(&mut at.x, &mut at.y));
                }
                self.notes.push(t!("file-latitude-and-longitude-stand-in-each", why = why));
            }
            Order::Doubtful(why) => self.notes.push(why),
        }
    }

    /// The box around all points.
    fn around(&mut self) -> Option<Rect<f64>> {
        let mut around: Option<(Coord<f64>, Coord<f64>)> = None;
        for raw in &mut self.raws {
            raw.drawn.each(|at| {
                if at.x.is_finite() && at.y.is_finite() {
                    let (least, most) = around.get_or_insert((*at, *at));
                    *least = Coord { x: least.x.min(at.x), y: least.y.min(at.y) };
                    *most = Coord { x: most.x.max(at.x), y: most.y.max(at.y) };
                }
            });
        }
        around.map(|(least, most)| Rect::new(least, most))
    }
}

/// "feature 3" as a name: "Feature 3".
fn sentence(text: &str) -> String {
    let mut letters = text.chars();
    letters.next().map_or_else(String::new, |first| first.to_uppercase().chain(letters).collect())
}

fn piece(raw: Raw, turn: Turn) -> Result<Piece, String> {
    let mut mended = Vec::new();
    let mut ground = |polygons: Vec<Vec<Ring>>, turn: Turn| {
        let mut done = mend(polygons, turn).map_err(|error| error.to_string())?;
        mended.append(&mut done.said);
        Ok::<_, String>(match <[_; 1]>::try_from(done.polygons.0) {
            Ok([one]) => Geometry::Polygon(one),
            Err(all) => Geometry::MultiPolygon(all.into_iter().collect()),
        })
    };
    let geometry = match raw.drawn {
        Drawn::Polygons(polygons) => ground(polygons, turn)?,
        Drawn::Rings(rings) => {
            // One ring alone may run either way; of several the outer ones are found by what lies in what.
            let polygons = nest(rings).map_err(|error| error.to_string())?;
            ground(polygons, turn)?
        }
        Drawn::Lines(lines) => {
            let lines: Vec<LineString<f64>> = lines.into_iter().map(line).collect::<Result<_, _>>()?;
            match <[_; 1]>::try_from(lines) {
                Ok([one]) => Geometry::LineString(one),
                Err(all) => Geometry::MultiLineString(MultiLineString(all)),
            }
        }
        Drawn::Points(points) => {
            let points: Vec<Point<f64>> = points.into_iter().map(number).collect::<Result<_, _>>()?;
            match <[_; 1]>::try_from(points) {
                Ok([one]) => Geometry::Point(one),
                Err(all) => Geometry::MultiPoint(MultiPoint(all)),
            }
        }
    };
    let is = raw.is.unwrap_or(match geometry {
        Geometry::Polygon(_) | Geometry::MultiPolygon(_) => Is::Field,
        _ => Is::Surrounding(SurroundingKind::Other),
    });
    let shape = Shape::new(geometry).map_err(|error| error.to_string())?;
    if shape.polygons().is_some() {
        let area = shape.area();
        if area.exceeds(LARGEST) {
            let hectares = show(area.to_hectares(), 0);
            return Err(t!("file-it-measures-ha-more-than-any", hectares = hectares));
        }
        if SMALLEST.exceeds(area) {
            return Err(t!("file-it-measures-less-than-a-square").to_owned());
        }
    }
    Ok(Piece { name: raw.name, place: raw.place, shape, is, facts: raw.facts, mended })
}

fn number(at: Coord<f64>) -> Result<Point<f64>, String> {
    if at.x.is_finite() && at.y.is_finite() { Ok(Point(at)) } else { Err(t!("file-a-point-of-it-is-no").to_owned()) }
}

fn line(mut points: Ring) -> Result<LineString<f64>, String> {
    points.dedup();
    for at in &points {
        number(*at)?;
    }
    if points.len() < 2 {
        return Err(t!("file-a-line-of-it-has-no").to_owned());
    }
    Ok(LineString(points))
}
