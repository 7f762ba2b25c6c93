//! Pieces of a file taken into the farm.

use tankard_core::farm::{Farm, Field, Gateway, Id, Shape, Surrounding, SurroundingKind, id};
use tankard_core::ground::rings::{Ring, Turn, mend};
use tankard_core::season::record::area_text;
use tankard_core::t;

use super::{Becomes, Found, Piece};

/// What was taken.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Taken {
    /// Fields that are new.
    pub fields: Vec<Id>,
    /// Fields that have their boundary from the file.
    pub boundaries: Vec<Id>,
    /// What lies among the fields.
    pub surroundings: Vec<Id>,
    /// How many ways in.
    pub gateways: usize,
    /// What could not be taken, and what a person should know.
    pub notes: Vec<String>,
}

/// Takes the pieces of a file into a copy of the farm, each as what stands at its place in `becomes`. A new field has the
/// area of its boundary as its stated one, in the farm's units; the stated area of a field that is there already stays.
pub fn take(farm: &Farm, found: &Found, becomes: &[Becomes]) -> (Farm, Taken) {
    let (mut farm, mut taken) = (farm.clone(), Taken::default());
    let mut boundaries: Vec<(Id, Vec<&Piece>)> = Vec::new();
    for (piece, becomes) in found.pieces.iter().zip(becomes) {
        match becomes {
            Becomes::NewField => new_field(&mut farm, piece, &mut taken),
            Becomes::Boundary(id) => match boundaries.iter_mut().find(|(known, _)| known == id) {
                Some((_, pieces)) => pieces.push(piece),
                None => boundaries.push((id.clone(), vec![piece])),
            },
            Becomes::Surrounding(kind) => surrounding(&mut farm, piece, *kind, &mut taken),
            Becomes::Gateway(id) => gateway(&mut farm, piece, id, &mut taken),
            Becomes::Nothing => {}
        }
    }
    for (id, pieces) in boundaries {
        boundary(&mut farm, &id, &pieces, &mut taken);
    }
    (farm, taken)
}

fn new_field(farm: &mut Farm, piece: &Piece, taken: &mut Taken) {
    if piece.shape.polygons().is_none() {
        taken.notes.push(t!("file-has-no-area-so-it-is", name = piece.name));
        return;
    }
    let mut field = Field::new(&piece.name, area_text(piece.shape.area(), farm.units));
    field.boundary = Some(piece.shape.clone());
    let fact = |names: &[&str]| {
        let is_one = |name: &str| names.iter().any(|known| known.eq_ignore_ascii_case(name));
        piece.facts.iter().find(|(name, _)| is_one(name)).map(|(_, value)| value.trim().to_owned())
    };
    field.crop = fact(&["crop", "crop type", "crop_type", "croptype"]).unwrap_or_default();
    let id = id::fresh(&farm.fields, &piece.name);
    farm.fields.insert(id.clone(), field);
    taken.fields.push(id);
}

fn boundary(farm: &mut Farm, id: &Id, pieces: &[&Piece], taken: &mut Taken) {
    let Some(field) = farm.fields.get_mut(id) else {
        taken.notes.push(t!("file-the-farm-has-no-field", id = id));
        return;
    };
    let shape = match pieces {
        [one] if one.shape.polygons().is_some() => Ok(one.shape.clone()),
        _ => together(pieces),
    };
    match shape {
        Ok(shape) => {
            field.boundary = Some(shape);
            taken.boundaries.push(id.clone());
        }
        Err(why) => taken.notes.push(t!("file-keeps-its-boundary", name = field.name, why = why)),
    }
}

/// The polygons of several pieces as one shape.
fn together(pieces: &[&Piece]) -> Result<Shape, String> {
    let polygons = pieces.iter().filter_map(|piece| piece.shape.polygons()).flatten();
    let drawn: Vec<Vec<Ring>> = polygons
        .map(|polygon| {
            let (outer, holes) = polygon.into_inner();
            std::iter::once(outer).chain(holes).map(|ring| ring.0).collect()
        })
        .collect();
    if drawn.is_empty() {
        return Err(t!("file-what-was-chosen-for-it-has").to_owned());
    }
    let done = mend(drawn, Turn::Either).map_err(|error| error.to_string())?;
    Shape::new(done.polygons.into()).map_err(|error| error.to_string())
}

fn surrounding(farm: &mut Farm, piece: &Piece, kind: SurroundingKind, taken: &mut Taken) {
    let id = id::fresh(&farm.surroundings, &piece.name);
    let surrounding = Surrounding { name: piece.name.clone(), kind, shape: piece.shape.clone(), note: String::new() };
    farm.surroundings.insert(id.clone(), surrounding);
    taken.surroundings.push(id);
}

fn gateway(farm: &mut Farm, piece: &Piece, id: &Id, taken: &mut Taken) {
    match (farm.fields.get_mut(id), piece.shape.geometry()) {
        (Some(field), geo::Geometry::Point(_)) => {
            field.gateways.push(Gateway { name: piece.name.clone(), at: piece.shape.clone() });
            taken.gateways += 1;
        }
        (None, _) => taken.notes.push(t!("file-the-farm-has-no-field", id = id)),
        _ => taken.notes.push(t!("file-is-no-point-so-it-is", name = piece.name)),
    }
}
