//! What is being drawn: its points so far, how large it is, and what the farm holds once it is finished.

use geo::orient::{Direction, Orient};
use geo::{Coord, Geodesic, Geometry, Length as _, LineString, MultiPolygon, Point, Polygon};
use tankard_core::farm::{Background, Farm, Gateway, Id, Shape, Surrounding, SurroundingKind};
use tankard_core::quantity::{Length, Quantity, Units};
use tankard_core::t;

use super::sound;

/// What is drawn.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Drawn {
    /// The boundary of a field, in place of one that is there.
    Boundary,
    /// A further part of a field.
    Part,
    /// Ground inside a field that is not of it.
    Hole,
    /// A way into a field.
    Gateway,
    /// A surrounding that is a point.
    Point,
    /// A surrounding that is a line.
    Line,
    /// A surrounding that is an area.
    Area,
    /// The upper left corner of the picture.
    NorthWest,
    /// The lower right corner of the picture.
    SouthEast,
}

impl Drawn {
    /// In words.
    pub(super) fn name(self) -> &'static str {
        match self {
            Self::Boundary => t!("fields-boundary"),
            Self::Part => t!("fields-further-part"),
            Self::Hole => t!("fields-hole"),
            Self::Gateway => t!("fields-a-way-in"),
            Self::Point => t!("fields-point-among-the-fields"),
            Self::Line => t!("fields-line-among-the-fields"),
            Self::Area => t!("fields-area-among-the-fields"),
            Self::NorthWest => t!("fields-north-west-corner-of-the-picture"),
            Self::SouthEast => t!("fields-south-east-corner-of-the-picture"),
        }
    }

    /// How few points it has.
    pub(super) const fn least(self) -> usize {
        match self {
            Self::Boundary | Self::Part | Self::Hole | Self::Area => 3,
            Self::Line => 2,
            Self::Gateway | Self::Point | Self::NorthWest | Self::SouthEast => 1,
        }
    }

    /// Whether its last point joins its first.
    pub(super) const fn is_ring(self) -> bool {
        self.least() == 3
    }

    /// Whether one point is all of it.
    pub(super) const fn is_point(self) -> bool {
        self.least() == 1
    }
}

/// What is being drawn.
#[derive(Clone, Debug)]
pub(super) struct Sketch {
    pub(super) what: Drawn,
    /// Its field; none for surroundings.
    pub(super) field: Option<Id>,
    /// Longitudes (x) and latitudes (y).
    pub(super) points: Vec<Coord<f64>>,
}

/// What a finished sketch changes.
#[derive(Clone, Debug, PartialEq)]
pub(super) enum Change {
    Boundary(Id, Shape),
    Gateway(Id, Gateway),
    Surrounding(Surrounding),
    Background(Background),
}

/// What came of it.
#[derive(Clone, Debug, PartialEq)]
pub(super) enum Made {
    Field,
    Gateway(Id, usize),
    Surrounding(Id),
    Corner,
}

impl Sketch {
    pub(super) fn new(what: Drawn, field: Option<Id>) -> Self {
        Self { what, field, points: Vec::new() }
    }

    /// Adds a point.
    ///
    /// # Errors
    /// Why it cannot lie there.
    pub(super) fn add(&mut self, at: Coord<f64>) -> Result<(), String> {
        if self.points.last() == Some(&at) {
            return Ok(());
        }
        if self.what.is_ring()
            && let Some(edge) = sound::crossed(&self.points, at)
        {
            return Err(t!("fields-the-point-was-not-taken-its", from = edge, to = edge + 1));
        }
        self.points.push(at);
        Ok(())
    }

    /// Whether it has enough points.
    pub(super) const fn is_enough(&self) -> bool {
        self.points.len() >= self.what.least()
    }

    fn polygon(&self) -> Polygon<f64> {
        // The edge runs against the clock, as standards of exchange ask for (RFC 7946, section 3.1.6).
        Polygon::new(LineString(self.points.clone()), Vec::new()).orient(Direction::Default)
    }

    /// How large it is so far: "3 points, 12.4 ac".
    pub(super) fn measured(&self, units: Units) -> String {
        let count = match self.points.len() {
            0 => t!("fields-no-point-yet").to_owned(),
            count => t!("fields-many-points", count = count),
        };
        let size = if self.what.is_ring() && self.points.len() > 2 {
            Shape::new(Geometry::Polygon(self.polygon())).ok().map(|shape| shape.area().show(units))
        } else if !self.what.is_point() && self.points.len() > 1 {
            let metres = Geodesic.length(&LineString(self.points.clone()));
            Some(Length::from_metres(metres).show(units))
        } else {
            None
        };
        size.map_or(count.clone(), |size| format!("{count}, {size}"))
    }

    /// What the farm is to hold.
    ///
    /// # Errors
    /// Why it cannot be.
    pub(super) fn finish(&self, farm: &Farm) -> Result<Change, String> {
        if !self.is_enough() {
            let least = self.what.least();
            return Err(t!("fields-it-needs-points-or-more", least = least));
        }
        let (first, last) = self.points.first().zip(self.points.last()).map(|(a, b)| (*a, *b)).unwrap_or_default();
        if self.what.is_ring()
            && first != last
            && let Some(edge) = sound::crossed(&self.points, first)
        {
            return Err(t!("fields-it-cannot-be-closed-here-the", from = edge, to = edge + 1));
        }
        let refuse = |why: String| t!("fields-it-was-not-taken", why = why);
        let shape = |geometry: Geometry<f64>| {
            sound::check(&geometry).map_err(refuse)?;
            Shape::new(geometry).map_err(|error| refuse(error.to_string()))
        };
        let field = || {
            let id = self.field.as_ref().and_then(|id| farm.fields.get_key_value(id));
            id.ok_or_else(|| t!("fields-the-field-is-gone").to_owned())
        };
        let surrounding = |geometry: Geometry<f64>| {
            let kind = SurroundingKind::default();
            Ok(Change::Surrounding(Surrounding {
                name: String::new(),
                kind,
                shape: shape(geometry)?,
                note: String::new(),
            }))
        };
        match self.what {
            Drawn::Boundary => Ok(Change::Boundary(field()?.0.clone(), shape(Geometry::Polygon(self.polygon()))?)),
            Drawn::Part | Drawn::Hole => {
                let (id, field) = field()?;
                let known = field.boundary.as_ref().and_then(Shape::polygons).unwrap_or(MultiPolygon(Vec::new()));
                let all = if self.what == Drawn::Part {
                    with_part(known, self.polygon())
                } else {
                    with_hole(known, self.polygon())?
                };
                Ok(Change::Boundary(id.clone(), shape(one_or_many(all))?))
            }
            Drawn::Gateway => {
                let at = shape(Geometry::Point(Point(last)))?;
                Ok(Change::Gateway(field()?.0.clone(), Gateway { name: String::new(), at }))
            }
            Drawn::Point => surrounding(Geometry::Point(Point(last))),
            Drawn::Line => surrounding(Geometry::LineString(LineString(self.points.clone()))),
            Drawn::Area => surrounding(Geometry::Polygon(self.polygon())),
            Drawn::NorthWest | Drawn::SouthEast => {
                let corner = shape(Geometry::Point(Point(last)))?;
                let mut background = farm.background.clone().ok_or(t!("fields-the-picture-is-gone"))?;
                set_corner(&mut background, self.what == Drawn::NorthWest, corner)?;
                Ok(Change::Background(background))
            }
        }
    }
}

impl Change {
    /// Puts it into the farm.
    pub(super) fn put(self, farm: &mut Farm) -> Made {
        match self {
            Self::Boundary(id, shape) => {
                if let Some(field) = farm.fields.get_mut(&id) {
                    field.boundary = Some(shape);
                }
                Made::Field
            }
            Self::Gateway(id, gateway) => {
                let Some(field) = farm.fields.get_mut(&id) else { return Made::Field };
                field.gateways.push(gateway);
                Made::Gateway(id, field.gateways.len() - 1)
            }
            Self::Surrounding(surrounding) => {
                let id = tankard_core::farm::id::fresh(&farm.surroundings, "surrounding");
                farm.surroundings.insert(id.clone(), surrounding);
                Made::Surrounding(id)
            }
            Self::Background(background) => {
                farm.background = Some(background);
                Made::Corner
            }
        }
    }
}

/// Moves a corner of the picture.
///
/// # Errors
/// Where the corners would not be north-west and south-east of one another.
pub(super) fn set_corner(background: &mut Background, is_north_west: bool, to: Shape) -> Result<(), String> {
    let (north_west, south_east) =
        if is_north_west { (&to, &background.south_east) } else { (&background.north_west, &to) };
    let (upper, lower) = (north_west.bounds().min(), south_east.bounds().min());
    if upper.x >= lower.x || upper.y <= lower.y {
        return Err(t!("fields-the-north-west-corner-must-lie").to_owned());
    }
    *(if is_north_west { &mut background.north_west } else { &mut background.south_east }) = to;
    Ok(())
}

fn one_or_many(all: MultiPolygon<f64>) -> Geometry<f64> {
    match <[Polygon<f64>; 1]>::try_from(all.0) {
        Ok([one]) => Geometry::Polygon(one),
        Err(many) => Geometry::MultiPolygon(MultiPolygon(many)),
    }
}

fn with_part(mut known: MultiPolygon<f64>, part: Polygon<f64>) -> MultiPolygon<f64> {
    known.0.push(part);
    known
}

/// With a hole in the polygon in which it begins.
fn with_hole(mut known: MultiPolygon<f64>, hole: Polygon<f64>) -> Result<MultiPolygon<f64>, String> {
    use geo::Contains;
    let begins = hole.exterior().0.first().copied().unwrap_or_default();
    let around = known.0.iter_mut().find(|polygon| polygon.contains(&begins));
    let Some(around) = around else {
        return Err(t!("fields-it-was-not-taken-a-hole").to_owned());
    };
    around.interiors_push(hole.into_inner().0);
    Ok(known.orient(Direction::Default))
}

/// Reads a place as people type it: latitude, then longitude, "41.2, -96.4" or "41.2 N 96.4 W".
///
/// # Errors
/// What is wrong, and how to write it.
pub(super) fn read_place(text: &str) -> Result<Coord<f64>, String> {
    let problem = || t!("fields-is-no-place-write-latitude-longitude", text = text.trim());
    let mut values = Vec::new();
    let plain: String = text.replace(['°', ';'], " ").replace(", ", " ");
    let plain = if plain.contains(' ') { plain } else { plain.replace(',', " ") };
    for word in plain.split_whitespace() {
        let side = word.chars().last().filter(char::is_ascii_alphabetic).map(|side| side.to_ascii_lowercase());
        let number = word.trim_end_matches(|c: char| c.is_ascii_alphabetic());
        let is_side = |of: &str| side.is_some_and(|side| of.contains(side));
        if side.is_some() && !is_side("nsew") {
            return Err(problem());
        }
        if !number.is_empty() {
            let value: f64 = number.trim_end_matches(',').replace(',', ".").parse().map_err(|_| problem())?;
            values.push((value, side));
        } else if let Some(last) = values.last_mut().filter(|last| last.1.is_none()) {
            last.1 = side;
        }
    }
    let &[(first, first_side), (second, second_side)] = values.as_slice() else { return Err(problem()) };
    let signed = |value: f64, side: Option<char>| if matches!(side, Some('s' | 'w')) { -value } else { value };
    let is_turned = matches!(first_side, Some('e' | 'w')) || matches!(second_side, Some('n' | 's'));
    let (first, second) = (signed(first, first_side), signed(second, second_side));
    let (y, x) = if is_turned { (second, first) } else { (first, second) };
    if !(-90.0..=90.0).contains(&y) || !(-180.0..=180.0).contains(&x) {
        return Err(t!("fields-latitude-longitude-is-off-the-globe", y = y, x = x));
    }
    Ok(Coord { x, y })
}

/// A place as people type it.
pub(super) fn show_place(at: Coord<f64>) -> String {
    format!("{}, {}", rounded(at.y), rounded(at.x))
}

/// To a ten-millionth of a degree, some 11 mm on the ground.
pub(super) fn rounded(degrees: f64) -> f64 {
    (degrees * 1e7).round() / 1e7
}

/// A place with no more digits than a file needs.
pub(super) fn rounded_place(at: Coord<f64>) -> Coord<f64> {
    Coord { x: rounded(at.x), y: rounded(at.y) }
}

#[cfg(test)]
mod tests {
    use geo::Coord;
    use tankard_core::farm::{Farm, Field};
    use tankard_core::quantity::{AsTyped, Units};

    use super::{Change, Drawn, Sketch, read_place};

    fn farm() -> Farm {
        let mut farm = Farm::new("Test");
        farm.fields.insert("mill".to_owned(), Field::new("Mill field", AsTyped::parse("74.6 ac").unwrap()));
        farm
    }

    fn drawn(farm: &mut Farm, what: Drawn, points: &[(f64, f64)]) -> Result<(), String> {
        let mut sketch = Sketch::new(what, Some("mill".to_owned()));
        for (x, y) in points {
            sketch.add(Coord { x: *x, y: *y })?;
        }
        sketch.finish(farm).map(|change| {
            change.put(farm);
        })
    }

    const SQUARE: [(f64, f64); 4] = [(-96.40, 41.20), (-96.39, 41.20), (-96.39, 41.21), (-96.40, 41.21)];

    #[test]
    fn parts_and_holes_join_a_boundary() {
        let mut farm = farm();
        drawn(&mut farm, Drawn::Boundary, &SQUARE).unwrap();
        let area = |farm: &Farm| farm.fields["mill"].boundary.as_ref().unwrap().area().to_acres();
        let whole = area(&farm);
        drawn(&mut farm, Drawn::Hole, &[(-96.396, 41.204), (-96.394, 41.204), (-96.394, 41.206)]).unwrap();
        // Half of a fifth of a fifth.
        assert!((area(&farm) / whole - 0.98).abs() < 1e-4);
        drawn(&mut farm, Drawn::Part, &SQUARE.map(|(x, y)| (x + 0.02, y))).unwrap();
        assert!((area(&farm) / whole - 1.98).abs() < 1e-4);
        // The stated area stays.
        assert_eq!(farm.fields["mill"].area.text(), "74.6 ac");
        for (what, points, why) in [
            (Drawn::Part, SQUARE.map(|(x, y)| (x + 0.005, y)), "cover"),
            (Drawn::Hole, SQUARE.map(|(x, y)| (x + 0.005, y + 0.005)), "hole"),
            (Drawn::Hole, SQUARE.map(|(x, y)| (x - 0.5, y)), "inside"),
        ] {
            let refused = drawn(&mut farm, what, &points).unwrap_err();
            assert!(refused.contains(why), "{refused}");
        }
    }

    #[test]
    fn a_bow_tie_is_refused_with_its_edge() {
        let mut farm = farm();
        let bow_tie = [SQUARE[0], SQUARE[2], SQUARE[1], SQUARE[3]];
        let refused = drawn(&mut farm, Drawn::Boundary, &bow_tie).unwrap_err();
        assert!(refused.contains("from point 1 to point 2"), "{refused}");
        assert_eq!(farm.fields["mill"].boundary, None);
        assert!(drawn(&mut farm, Drawn::Boundary, &SQUARE[..2]).unwrap_err().contains("3 points"));
    }

    /// Lengths: a hundredth of a degree of longitude at 41.2 N is 838.8 m = 2,752 ft on WGS 84.
    #[test]
    fn what_is_drawn_is_measured() {
        let mut sketch = Sketch::new(Drawn::Line, None);
        assert_eq!(sketch.measured(Units::Metric), "no point yet");
        for (x, y) in &SQUARE[..2] {
            sketch.add(Coord { x: *x, y: *y }).unwrap();
        }
        assert!(sketch.measured(Units::Metric).starts_with("2 points, 83"), "{}", sketch.measured(Units::Metric));
        assert!(matches!(sketch.finish(&farm()), Ok(Change::Surrounding(_))));
    }

    #[test]
    fn places_as_people_write_them() {
        let there = Ok(Coord { x: -96.4, y: 41.2 });
        for text in
            ["41.2, -96.4", "41.2 -96.4", "41.2,-96.4", "41.2 N, 96.4 W", "41.2N 96.4W", "96.4 W 41.2 N", "41.2; -96.4"]
        {
            assert_eq!(read_place(text), there, "{text}");
        }
        assert_eq!(read_place("50,25 8,5"), Ok(Coord { x: 8.5, y: 50.25 }));
        for text in ["", "41.2", "-96.4, 41.2", "a, b", "41.2, -96.4, 3", "41.2 x 3"] {
            assert!(read_place(text).is_err(), "{text}");
        }
    }
}
