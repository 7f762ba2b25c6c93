//! A shape on the ground: a point, a line or polygons on WGS 84, written as well-known text after OGC 06-103r4 (ISO 19125-1), the
//! longitude before the latitude.

use std::fmt;
use std::sync::{Arc, OnceLock};

use geo::{BoundingRect, CoordsIter, GeodesicArea, Geometry, LineString, MultiPolygon, Polygon, Rect};
use serde::{Deserialize, Deserializer, Serialize, Serializer};
use wkt::{ToWkt, TryFromWkt};

use crate::ground::cut::OnPlane;
use crate::ground::plane::Ball;
use crate::language::t;
use crate::quantity::Area;

/// A point, a line or polygons on WGS 84. Copies share what they hold.
#[derive(Clone)]
pub struct Shape(Arc<Held>);

struct Held {
    /// As it was read, so that a file that is not changed is saved as it was.
    text: String,
    geometry: Geometry<f64>,
    bounds: Rect<f64>,
    area: OnceLock<Area>,
    ball: OnceLock<Ball>,
    /// `None` for points and lines.
    on_plane: OnceLock<Option<OnPlane>>,
}

/// Why something is no shape.
#[derive(Clone, Debug, PartialEq, Eq, thiserror::Error)]
pub enum ShapeError {
    /// It cannot be read.
    #[error("{}", t!("farm-is-no-well-known-text-of", it = .0))]
    NoText(String),
    /// It is of a kind that is not used.
    #[error("{}", t!("farm-a-shape-is-a-point-a", it = .0))]
    Kind(&'static str),
    /// It has no points.
    #[error("{}", t!("farm-the-shape-has-no-points"))]
    Empty,
    /// A point lies off the globe.
    #[error(
        "{}", t!("farm-longitude-latitude-is-off-the-globe", it = .0, other = .1)
    )]
    OffTheGlobe(String, String),
}

impl Shape {
    /// From longitudes (x) and latitudes (y) in degrees.
    ///
    /// # Errors
    /// No points, a point off the globe, or a collection of several kinds. Rings are not looked at.
    pub fn new(geometry: Geometry<f64>) -> Result<Self, ShapeError> {
        let text = geometry.wkt_string();
        Self::with_text(geometry, text)
    }

    /// From well-known text.
    ///
    /// # Errors
    /// As [`Shape::new`], and where the text cannot be read.
    ///
    /// # Examples
    /// ```
    /// use tankard_core::farm::Shape;
    /// let cell = Shape::parse("POLYGON ((-100 41, -99.99 41, -99.99 41.01, -100 41.01, -100 41))").unwrap();
    /// assert!((cell.area().to_acres() - 230.866_680).abs() < 1e-5);
    /// ```
    pub fn parse(text: &str) -> Result<Self, ShapeError> {
        let geometry = Geometry::try_from_wkt_str(text)
            .map_err(|_| ShapeError::NoText(text.chars().take(40).collect::<String>().trim().to_owned()))?;
        Self::with_text(geometry, text.to_owned())
    }

    fn with_text(geometry: Geometry<f64>, text: String) -> Result<Self, ShapeError> {
        match geometry {
            Geometry::Point(_)
            | Geometry::MultiPoint(_)
            | Geometry::LineString(_)
            | Geometry::MultiLineString(_)
            | Geometry::Polygon(_)
            | Geometry::MultiPolygon(_) => {}
            Geometry::GeometryCollection(_) => return Err(ShapeError::Kind(t!("farm-collection"))),
            Geometry::Line(_) | Geometry::Rect(_) | Geometry::Triangle(_) => {
                return Err(ShapeError::Kind(t!("farm-bare-figure")));
            }
        }
        let on_globe = |x: f64, y: f64| (-180.0..=180.0).contains(&x) && (-90.0..=90.0).contains(&y);
        if let Some(off) = geometry.coords_iter().find(|at| !on_globe(at.x, at.y)) {
            return Err(ShapeError::OffTheGlobe(off.x.to_string(), off.y.to_string()));
        }
        let bounds = geometry.bounding_rect().ok_or(ShapeError::Empty)?;
        let (area, ball, on_plane) = (OnceLock::new(), OnceLock::new(), OnceLock::new());
        Ok(Self(Arc::new(Held { text, geometry, bounds, area, ball, on_plane })))
    }

    /// What it is, with longitudes (x) and latitudes (y) in degrees.
    pub fn geometry(&self) -> &Geometry<f64> {
        &self.0.geometry
    }

    /// Its polygons; `None` for points and lines.
    pub fn polygons(&self) -> Option<MultiPolygon<f64>> {
        match &self.0.geometry {
            Geometry::Polygon(one) => Some(MultiPolygon(vec![one.clone()])),
            Geometry::MultiPolygon(all) => Some(all.clone()),
            _ => None,
        }
    }

    /// The least and the largest longitude and latitude.
    pub fn bounds(&self) -> Rect<f64> {
        self.0.bounds
    }

    /// Its area on the ellipsoid, the holes left out and whichever way its rings run; nothing for points and lines.
    ///
    /// # Source
    /// C. F. F. Karney, Algorithms for geodesics, Journal of Geodesy 87 (2013), 43.
    pub fn area(&self) -> Area {
        *self.0.area.get_or_init(|| {
            Area::from_square_metres(match &self.0.geometry {
                Geometry::Polygon(one) => area_of(one),
                Geometry::MultiPolygon(all) => all.iter().map(area_of).sum(),
                _ => 0.0,
            })
        })
    }

    /// The ball that holds it.
    pub(crate) fn ball(&self) -> &Ball {
        self.0.ball.get_or_init(|| Ball::of(&self.0.geometry))
    }

    /// It on its plane, with what was cut out of it; `None` for points and lines.
    pub(crate) fn on_plane(&self) -> Option<&OnPlane> {
        self.0.on_plane.get_or_init(|| OnPlane::of(self)).as_ref()
    }

    /// As well-known text.
    pub fn as_text(&self) -> &str {
        &self.0.text
    }
}

/// Square metres of a polygon. Each ring by itself, since one that runs the other way round would be all of the globe but it.
fn area_of(polygon: &Polygon<f64>) -> f64 {
    let of_ring = |ring: &LineString<f64>| Polygon::new(ring.clone(), Vec::new()).geodesic_area_signed().abs();
    let holes: f64 = polygon.interiors().iter().map(of_ring).sum();
    (of_ring(polygon.exterior()) - holes).max(0.0)
}

impl PartialEq for Shape {
    fn eq(&self, other: &Self) -> bool {
        Arc::ptr_eq(&self.0, &other.0) || self.0.text == other.0.text
    }
}

impl Eq for Shape {}

impl fmt::Debug for Shape {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(&self.0.text)
    }
}

impl Serialize for Shape {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        serializer.serialize_str(&self.0.text)
    }
}

impl<'de> Deserialize<'de> for Shape {
    fn deserialize<D: Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
        let text = String::deserialize(deserializer)?;
        Self::parse(&text).map_err(serde::de::Error::custom)
    }
}
