//! Boundaries as GeoJSON (RFC 7946) for other programs.

use geo::orient::{Direction, Orient};
use geo::{Geometry, MultiPolygon, Polygon};
use geojson::{Feature, FeatureCollection, GeometryValue, JsonObject, JsonValue, feature::Id as FeatureId};
use tankard_core::farm::{Farm, Field, Id, Shape, Surrounding};

/// Fields and what lies among them, by their ids; those without a shape are left out. Each has its name; a field its crop, its
/// stated area as typed, and the area of its boundary in hectares; what lies among fields what it is. Outer rings run against the
/// clock.
pub fn write_geojson(farm: &Farm, ids: &[Id]) -> String {
    let feature = |id: &Id| {
        let field = farm.fields.get(id).and_then(|known| field(id, known));
        field.or_else(|| farm.surroundings.get(id).map(|known| surrounding(id, known)))
    };
    let all =
        FeatureCollection { bbox: None, features: ids.iter().filter_map(feature).collect(), foreign_members: None };
    let mut text = all.to_string();
    text.push('\n');
    text
}

fn field(id: &Id, field: &Field) -> Option<Feature> {
    let boundary = field.boundary.as_ref()?;
    let mut facts = JsonObject::new();
    facts.insert("name".to_owned(), field.name.clone().into());
    if !field.crop.is_empty() {
        facts.insert("crop".to_owned(), field.crop.clone().into());
    }
    facts.insert("area".to_owned(), field.area.text().into());
    facts.insert("boundary_hectares".to_owned(), JsonValue::from(boundary.area().to_hectares()));
    Some(feature(id, boundary, facts))
}

fn surrounding(id: &Id, surrounding: &Surrounding) -> Feature {
    let mut facts = JsonObject::new();
    facts.insert("name".to_owned(), surrounding.name.clone().into());
    facts.insert("kind".to_owned(), surrounding.kind.word().into());
    if !surrounding.note.is_empty() {
        facts.insert("note".to_owned(), surrounding.note.clone().into());
    }
    feature(id, &surrounding.shape, facts)
}

fn feature(id: &Id, shape: &Shape, facts: JsonObject) -> Feature {
    let value = match shape.geometry() {
        Geometry::Polygon(one) => GeometryValue::from(&turned(one)),
        Geometry::MultiPolygon(all) => GeometryValue::from(&all.iter().map(turned).collect::<MultiPolygon<f64>>()),
        other => GeometryValue::from(other),
    };
    Feature {
        bbox: None,
        geometry: Some(geojson::Geometry::new(value)),
        id: Some(FeatureId::String(id.clone())),
        properties: Some(facts),
        foreign_members: None,
    }
}

/// Outer rings against the clock and holes with it (section 3.1.6).
fn turned(polygon: &Polygon<f64>) -> Polygon<f64> {
    polygon.orient(Direction::Default)
}
