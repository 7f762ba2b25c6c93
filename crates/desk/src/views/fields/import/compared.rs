//! What a boundary that comes in is held against: the stated area of its field, and the boundary that it takes the place of.

use jiff::civil::Date;
use tankard_core::farm::{Farm, Id, Pass, Shape};
use tankard_core::ground;
use tankard_core::quantity::{Area, Quantity};
use tankard_core::t;
use tankard_file::ground::{Becomes, Found};

/// What is said beside a piece.
#[derive(Debug, Default)]
pub(super) struct Compared {
    /// In words; empty where there is nothing to compare.
    pub(super) text: String,
    /// Whether a person should look at it.
    pub(super) differs: bool,
}

/// What is said beside each piece of a file.
pub(super) fn all(farm: &Farm, found: &Found, becomes: &[Becomes]) -> Vec<Compared> {
    becomes
        .iter()
        .map(|one| match one {
            Becomes::Boundary(id) => {
                let same: Vec<&Shape> = found
                    .pieces
                    .iter()
                    .zip(becomes)
                    .filter(|(_, other)| *other == one)
                    .map(|(piece, _)| &piece.shape)
                    .collect();
                with_field(farm, id, &same)
            }
            _ => Compared::default(),
        })
        .collect()
}

fn with_field(farm: &Farm, id: &Id, pieces: &[&Shape]) -> Compared {
    let Some(field) = farm.fields.get(id) else { return Compared::default() };
    let area: Area = pieces.iter().map(|shape| shape.area()).sum();
    let stated = field.area.value();
    let by = match area.ratio(stated) {
        Some(ratio) if (ratio - 1.0).abs() < 0.0005 => t!("fields-as-much").to_owned(),
        Some(ratio) => {
            let by = format!("{:.1}", (ratio - 1.0).abs() * 100.0);
            if ratio > 1.0 { t!("fields-per-cent-more", by = by) } else { t!("fields-per-cent-less", by = by) }
        }
        None => t!("fields-none-stated").to_owned(),
    };
    let mut text = t!("fields-stated", area = field.area.text(), by = by);
    if pieces.len() > 1 {
        text = t!("fields-with-pieces-together", text = text, pieces = pieces.len());
    }
    if let Some(now) = &field.boundary {
        text = t!("fields-in-place-of-a-boundary-of", text = text, area = now.area().show(farm.units));
    }
    Compared { text, differs: is_far(farm, id, pieces) }
}

/// Whether the ground of the field would have something to be said of its areas.
fn is_far(farm: &Farm, id: &Id, pieces: &[&Shape]) -> bool {
    let Some(field) = farm.fields.get(id) else { return false };
    let all: geo::MultiPolygon<f64> = pieces.iter().filter_map(|shape| shape.polygons()).flatten().collect();
    let mut alone = Farm::new("");
    alone.units = farm.units;
    alone.practice.clone_from(&farm.practice);
    let mut field = field.clone();
    field.boundary = match pieces {
        [one] => Some((*one).clone()),
        _ => Shape::new(all.into()).ok(),
    };
    alone.fields.insert(id.clone(), field);
    let mut pass = Pass::new("", Date::MIN);
    pass.fields.push(id.clone());
    ground::of(&alone, &pass).of_field(id).is_some_and(|ground| !ground.findings.is_empty())
}
