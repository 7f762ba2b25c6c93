//! KML after OGC 12-007.

use geo::Coord;
use tankard_core::ground::rings::{Ring, Turn};
use tankard_core::t;

use super::gather::{Gathered, Parts, Raw};
use super::limits::{Left, tidy};
use super::xml::{self, Node};
use super::{GroundError, Kind, Refused, Why};

pub(super) fn read(text: &str) -> Result<Gathered, GroundError> {
    let mut gathered = Gathered::new(Kind::Kml, Turn::Either);
    let (left, mut number) = (Left::new(), 0);
    let mut links = 0;
    xml::each(text, &["Placemark", "NetworkLink"], |node| {
        if node.name == "NetworkLink" {
            links += 1;
            return Ok(());
        }
        left.piece()?;
        number += 1;
        take(node, number, &left, &mut gathered)
    })
    .map_err(|why| why.of(Kind::Kml))?;
    if links > 0 {
        gathered.notes.push(t!("file-it-points-to-other-files-which", links = links));
    }
    Ok(gathered)
}

fn take(mark: &Node, number: usize, left: &Left, gathered: &mut Gathered) -> Result<(), Why> {
    let name = mark.one("name").map(|name| name.text.clone()).unwrap_or_default();
    let place = t!("file-placemark", number = number);
    let facts = facts(mark);
    let mut parts = Parts::default();
    let why = match add(&mut parts, mark, left) {
        Ok(()) if parts.is_empty() => t!("file-it-has-no-point-line-or").to_owned(),
        Ok(()) => {
            for drawn in parts.drawn() {
                let (name, place, facts) = (name.clone(), place.clone(), facts.clone());
                gathered.raws.push(Raw { name, place, drawn, is: None, facts });
            }
            return Ok(());
        }
        Err(Why::Piece(why)) => why,
        Err(why @ Why::File(_)) => return Err(why),
    };
    gathered.refused.push(Refused { name: tidy(&name), place, why });
    Ok(())
}

/// Names and values of `ExtendedData` (section 9.2): untyped ones and those of a schema.
fn facts(mark: &Node) -> Vec<(String, String)> {
    let mut facts = Vec::new();
    for data in mark.all("ExtendedData") {
        for one in data.all("Data") {
            let value = one.one("value").map(|value| value.text.clone()).unwrap_or_default();
            facts.push((one.attribute("name").to_owned(), value));
        }
        for one in data.all("SchemaData").flat_map(|schema| schema.all("SimpleData")) {
            facts.push((one.attribute("name").to_owned(), one.text.clone()));
        }
    }
    facts
}

/// The shapes right within an element; what is deep within is bounded by the reader.
fn add(parts: &mut Parts, node: &Node, left: &Left) -> Result<(), Why> {
    for child in &node.children {
        match child.name.as_str() {
            "MultiGeometry" => add(parts, child, left)?,
            "Point" => parts.points.extend(points(child, left)?),
            "LineString" => parts.lines.push(points(child, left)?),
            "LinearRing" => parts.polygons.push(vec![points(child, left)?]),
            "Polygon" => {
                let outer = child.one("outerBoundaryIs").and_then(|edge| edge.one("LinearRing"));
                let outer = outer.ok_or_else(|| Why::Piece(t!("file-a-polygon-has-no-outer-ring").to_owned()))?;
                let mut rings = vec![points(outer, left)?];
                // One element for each hole, or one for all of them: both are met with.
                for hole in child.all("innerBoundaryIs").flat_map(|edge| edge.all("LinearRing")) {
                    rings.push(points(hole, left)?);
                }
                parts.polygons.push(rings);
            }
            _ => {}
        }
    }
    Ok(())
}

/// Longitude, latitude and perhaps a height, with commas between and white space between points (section 16.9).
fn points(node: &Node, left: &Left) -> Result<Ring, Why> {
    let text = node.one("coordinates").map_or("", |coordinates| coordinates.text.as_str());
    let mut points = Vec::new();
    for tuple in text.split_whitespace() {
        left.points(1)?;
        let wrong = || Why::Piece(t!("file-is-no-longitude-and-latitude", tuple = tidy(tuple)));
        let mut numbers = tuple.split(',').map(|number| number.parse::<f64>().ok());
        match (numbers.next().flatten(), numbers.next().flatten()) {
            (Some(x), Some(y)) => points.push(Coord { x, y }),
            _ => return Err(wrong()),
        }
    }
    Ok(points)
}
