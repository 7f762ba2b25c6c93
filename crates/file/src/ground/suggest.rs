//! What the pieces of a file may be: which of them are fields that the farm has already.

use std::collections::HashMap;

use geo::algorithm::line_measures::{Distance, Geodesic};
use geo::{Area as _, BooleanOps, Closest, ClosestPoint, Geometry, Intersects, LineString};
use tankard_core::farm::{Farm, Id, Shape};
use tankard_core::quantity::Length;

use super::{Becomes, Found, Is, Piece};

/// From this share on that two shapes have in common of the larger one they are the same field.
const SAME: f64 = 0.5;

/// A way into a field lies at its edge, as far as two surveys of one gate may differ.
const GATE: Length = Length::from_metres(30.0);

/// What becomes of each piece where a person does not say otherwise: polygons become the boundary of the field that has
/// their name, or else of the field that they mostly lie on; else a new field. A way in belongs to the field that it is said to
/// lead into, or lies at the edge of.
pub fn suggest(farm: &Farm, found: &Found) -> Vec<Becomes> {
    // Of two fields of one name neither is meant for sure.
    let mut names: HashMap<String, Option<&Id>> = HashMap::new();
    for (id, field) in &farm.fields {
        names.entry(plain(&field.name)).and_modify(|known| *known = None).or_insert(Some(id));
    }
    let of_piece = |piece: &Piece| match piece.is {
        Is::Field => field_of(farm, &names, piece).map_or(Becomes::NewField, Becomes::Boundary),
        Is::Surrounding(kind) => Becomes::Surrounding(kind),
        Is::Gateway => entered(farm, &names, piece).map_or(Becomes::Nothing, Becomes::Gateway),
    };
    found.pieces.iter().map(of_piece).collect()
}

/// The field of the farm that a piece is, by name or by ground. Of two fields of one name the ground tells.
fn field_of(farm: &Farm, names: &HashMap<String, Option<&Id>>, piece: &Piece) -> Option<Id> {
    if let Some(Some(id)) = names.get(&plain(&piece.name)) {
        return Some((*id).clone());
    }
    let shared = |shape: &Shape| in_common(shape, &piece.shape);
    let on_ground = farm.fields.iter().filter_map(|(id, field)| Some((id, shared(field.boundary.as_ref()?)?)));
    on_ground.filter(|(_, share)| *share > SAME).max_by(|a, b| a.1.total_cmp(&b.1)).map(|(id, _)| id.clone())
}

/// A name without its capitals and white space.
fn plain(name: &str) -> String {
    name.split_whitespace().collect::<Vec<_>>().join(" ").to_lowercase()
}

/// The field that a way leads into: the one that it is said to belong to, or else the nearest one.
fn entered(farm: &Farm, names: &HashMap<String, Option<&Id>>, piece: &Piece) -> Option<Id> {
    let said = piece.facts.iter().find(|(name, _)| name == "field").and_then(|(_, name)| names.get(&plain(name)));
    if let Some(Some(id)) = said {
        return Some((*id).clone());
    }
    let Geometry::Point(at) = piece.shape.geometry() else { return None };
    let from_ring = |ring: &LineString<f64>| match ring.closest_point(at) {
        Closest::Intersection(edge) | Closest::SinglePoint(edge) => {
            Some(Length::from_metres(Geodesic.distance(*at, edge)))
        }
        Closest::Indeterminate => None,
    };
    let from_edge =
        |shape: &Shape| shape.polygons()?.iter().filter_map(|part| from_ring(part.exterior())).reduce(Length::min);
    let distances = farm.fields.iter().filter_map(|(id, field)| Some((id, from_edge(field.boundary.as_ref()?)?)));
    let near = distances.filter(|(_, distance)| !distance.exceeds(GATE));
    near.min_by(|a, b| a.1.to_metres().total_cmp(&b.1.to_metres())).map(|(id, _)| id.clone())
}

/// How much of the larger of two shapes both cover, 0 to 1.
fn in_common(a: &Shape, b: &Shape) -> Option<f64> {
    if !a.bounds().intersects(&b.bounds()) {
        return None;
    }
    let (a, b) = (a.polygons()?, b.polygons()?);
    Some(a.intersection(&b).unsigned_area() / a.unsigned_area().max(b.unsigned_area()))
}
