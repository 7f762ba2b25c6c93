//! What the pieces of a file may be: which of them are fields that the farm has already.

use geo::{Area as _, BooleanOps, Intersects};
use tankard_core::farm::{Farm, Id, Shape};

use super::{Becomes, Found, Is, Piece};

/// From this share on that two shapes have in common of the larger one they are the same field.
const SAME: f64 = 0.5;

/// What becomes of each piece where a person does not say otherwise: polygons become the boundary of the field that has
/// their name, or else of the field that they mostly lie on; else a new field. A way in belongs to the field next to it.
pub fn suggest(farm: &Farm, found: &Found) -> Vec<Becomes> {
    let of_piece = |piece: &Piece| match piece.is {
        Is::Field => field_of(farm, piece).map_or(Becomes::NewField, Becomes::Boundary),
        Is::Surrounding(kind) => Becomes::Surrounding(kind),
        Is::Gateway => Becomes::Nothing,
    };
    found.pieces.iter().map(of_piece).collect()
}

/// The field of the farm that a piece is, by name or by ground.
fn field_of(farm: &Farm, piece: &Piece) -> Option<Id> {
    let plain = |name: &str| name.split_whitespace().collect::<Vec<_>>().join(" ").to_lowercase();
    let wanted = plain(&piece.name);
    let mut named = farm.fields.iter().filter(|(id, field)| plain(&field.name) == wanted || **id == piece.name);
    match (named.next(), named.next()) {
        (Some((id, _)), None) => Some(id.clone()),
        // Two fields of one name: the ground decides.
        _ => {
            let shared = |shape: &Shape| in_common(shape, &piece.shape);
            let on_ground = farm.fields.iter().filter_map(|(id, field)| Some((id, shared(field.boundary.as_ref()?)?)));
            on_ground.filter(|(_, share)| *share > SAME).max_by(|a, b| a.1.total_cmp(&b.1)).map(|(id, _)| id.clone())
        }
    }
}

/// How much of the larger of two shapes both cover, 0 to 1.
fn in_common(a: &Shape, b: &Shape) -> Option<f64> {
    if !a.bounds().intersects(&b.bounds()) {
        return None;
    }
    let (a, b) = (a.polygons()?, b.polygons()?);
    Some(a.intersection(&b).unsigned_area() / a.unsigned_area().max(b.unsigned_area()))
}
