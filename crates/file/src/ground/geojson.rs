//! GeoJSON after RFC 7946; files of the draft before it, with a coordinate reference system, where that is WGS 84.

use geo::Coord;
use geojson::{Feature, GeoJson, Geometry, GeometryValue, JsonObject, JsonValue, Position};
use tankard_core::farm::SurroundingKind;
use tankard_core::ground::rings::{Ring, Turn};
use tankard_core::t;

use super::gather::{Gathered, Parts, Raw};
use super::limits::{Left, POINTS};
use super::{GroundError, Is, Kind, Refused, Why};

/// Members in which a feature's name may stand, the likeliest first.
const NAMES: [&str; 9] = ["name", "field", "field_name", "fieldname", "field name", "title", "label", "plot", "id"];

pub(super) fn read(bytes: &[u8]) -> Result<Gathered, GroundError> {
    let broken = |why: String| GroundError::Broken { kind: Kind::GeoJson, why };
    let text = std::str::from_utf8(bytes).map_err(|_| broken(t!("file-it-is-not-saved-as-utf").to_owned()))?;
    let text = text.trim_start_matches('\u{feff}');
    // No value stands without one of these marks before it, so what is parsed is bounded before it is.
    let marks = text.bytes().filter(|byte| matches!(byte, b'[' | b'{' | b',')).count();
    if marks > 6 * POINTS {
        return Err(GroundError::TooMany { most: POINTS, of: t!("file-points") });
    }
    let json: GeoJson = text.parse().map_err(|error: geojson::Error| broken(error.to_string()))?;
    let mut gathered = Gathered::new(Kind::GeoJson, Turn::Counterclockwise);
    let left = Left::new();
    match json {
        GeoJson::FeatureCollection(all) => {
            reference(all.foreign_members.as_ref())?;
            for (number, feature) in all.features.into_iter().enumerate() {
                take(feature, number + 1, &left, &mut gathered)?;
            }
        }
        GeoJson::Feature(feature) => take(feature, 1, &left, &mut gathered)?,
        GeoJson::Geometry(geometry) => {
            let feature = Feature { geometry: Some(geometry), ..Feature::default() };
            take(feature, 1, &left, &mut gathered)?;
        }
    }
    Ok(gathered)
}

/// # Errors
/// The draft of 2008 let a file name another reference system (section 3); only WGS 84 is taken.
fn reference(members: Option<&JsonObject>) -> Result<(), GroundError> {
    let Some(crs) = members.and_then(|members| members.get("crs")).filter(|crs| !crs.is_null()) else { return Ok(()) };
    let name = crs.pointer("/properties/name").or_else(|| crs.pointer("/properties/code"));
    let name = match name {
        Some(JsonValue::String(name)) => name.clone(),
        Some(other) => other.to_string(),
        None => t!("file-one-that-is-not-named").to_owned(),
    };
    let plain = name.to_lowercase();
    let is_known =
        ["ogc:1.3:crs84", "ogc::crs84", "ogc/1.3/crs84", "crs84", "epsg:4326", "epsg::4326", "4326", "wgs84", "wgs 84"]
            .iter()
            .any(|known| {
                plain == *known || plain.ends_with(&format!(":{known}")) || plain.ends_with(&format!("/{known}"))
            });
    if is_known {
        return Ok(());
    }
    Err(GroundError::Elsewhere(t!("file-the-file-is-measured-on", name = super::limits::tidy(&name))))
}

fn take(feature: Feature, number: usize, left: &Left, gathered: &mut Gathered) -> Result<(), GroundError> {
    left.piece()?;
    reference(feature.foreign_members.as_ref())?;
    let place = t!("file-feature", number = number);
    let facts: Vec<(String, String)> =
        feature.properties.iter().flatten().filter_map(|(name, value)| Some((name.clone(), plain(value)?))).collect();
    let named = |wanted: &str| facts.iter().find(|(name, _)| name.eq_ignore_ascii_case(wanted));
    let name = NAMES.iter().find_map(|name| named(name)).map(|(_, value)| value.clone()).unwrap_or_default();
    let kind = named("kind").and_then(|(_, kind)| SurroundingKind::ALL.into_iter().find(|known| known.word() == kind));
    let is = kind.map(Is::Surrounding);
    let Some(geometry) = feature.geometry else {
        let why = t!("file-it-has-no-geometry").to_owned();
        gathered.refused.push(Refused { name: super::limits::tidy(&name), place, why });
        return Ok(());
    };
    let mut parts = Parts::default();
    match add(&mut parts, geometry, left) {
        Ok(()) => {}
        Err(Why::Piece(why)) => {
            gathered.refused.push(Refused { name: super::limits::tidy(&name), place, why });
            return Ok(());
        }
        Err(Why::File(error)) => return Err(error),
    }
    if parts.is_empty() {
        let why = t!("file-its-geometry-is-empty").to_owned();
        gathered.refused.push(Refused { name: super::limits::tidy(&name), place, why });
        return Ok(());
    }
    for drawn in parts.drawn() {
        gathered.raws.push(Raw { name: name.clone(), place: place.clone(), drawn, is, facts: facts.clone() });
    }
    Ok(())
}

/// A value in words; nothing for what holds others.
fn plain(value: &JsonValue) -> Option<String> {
    match value {
        JsonValue::String(text) => Some(text.clone()),
        JsonValue::Number(number) => Some(number.to_string()),
        JsonValue::Bool(true) => Some(t!("file-yes").to_owned()),
        JsonValue::Bool(false) => Some(t!("file-no").to_owned()),
        JsonValue::Null | JsonValue::Array(_) | JsonValue::Object(_) => None,
    }
}

/// Takes a geometry apart.
fn add(parts: &mut Parts, geometry: Geometry, left: &Left) -> Result<(), Why> {
    match geometry.value {
        GeometryValue::Point { coordinates } => parts.points.push(point(&coordinates, left)?),
        GeometryValue::MultiPoint { coordinates } => parts.points.extend(ring(&coordinates, left)?),
        GeometryValue::LineString { coordinates } => parts.lines.push(ring(&coordinates, left)?),
        GeometryValue::MultiLineString { coordinates } => parts.lines.extend(rings(&coordinates, left)?),
        GeometryValue::Polygon { coordinates } => parts.polygons.push(rings(&coordinates, left)?),
        GeometryValue::MultiPolygon { coordinates } => {
            for polygon in &coordinates {
                parts.polygons.push(rings(polygon, left)?);
            }
        }
        // The parser refuses what stands deeper than 128 within each other.
        GeometryValue::GeometryCollection { geometries } => {
            for geometry in geometries {
                add(parts, geometry, left)?;
            }
        }
    }
    Ok(())
}

fn rings(rings: &[Vec<Position>], left: &Left) -> Result<Vec<Ring>, Why> {
    rings.iter().map(|one| ring(one, left)).collect()
}

fn ring(points: &[Position], left: &Left) -> Result<Ring, Why> {
    points.iter().map(|at| point(at, left)).collect()
}

/// Longitude and latitude; a height is left.
fn point(at: &Position, left: &Left) -> Result<Coord<f64>, Why> {
    left.points(1)?;
    match at.as_slice() {
        [x, y, ..] => Ok(Coord { x: *x, y: *y }),
        _ => Err(Why::Piece(t!("file-a-point-of-it-has-fewer").to_owned())),
    }
}
