//! Invented ground of any size: fields in rows near 41.2 N, 96.4 W, each a ring that winds a little.

use std::f64::consts::TAU;
use std::fmt::Write as _;

use tankard_core::farm::{Farm, Field, Shape, ShapeError, id};
use tankard_core::season::record::area_text;

/// Longitudes and latitudes of the ring of a field, closed; the same for the same numbers.
#[must_use]
pub fn ring(number: u32, points: u32) -> Vec<(f64, f64)> {
    let (column, row) = (f64::from(number % 50), f64::from(number / 50));
    let (x, y) = (-96.4 + 0.012 * column, 41.2 + 0.009 * row);
    let at = |step: u32| {
        let turn = TAU * f64::from(step % points) / f64::from(points);
        let wound = 1.0 + 0.08 * (5.0 * turn + f64::from(number)).sin() + 0.01 * (41.0 * turn).cos();
        (x + 0.005 * wound * turn.cos(), y + 0.0038 * wound * turn.sin())
    };
    (0..=points).map(at).collect()
}

/// The boundary of a field.
///
/// # Errors
/// None for any numbers; the type of [`Shape::parse`].
pub fn boundary(number: u32, points: u32) -> Result<Shape, ShapeError> {
    // Six digits are a hand's breadth, and what surveys write.
    let corners: Vec<String> = ring(number, points).iter().map(|(x, y)| format!("{x:.6} {y:.6}")).collect();
    Shape::parse(&format!("POLYGON (({}))", corners.join(", ")))
}

/// So many fields with so many points each, as GeoJSON.
#[must_use]
pub fn geojson(fields: u32, points: u32) -> String {
    let mut text = String::from("{\"type\":\"FeatureCollection\",\"features\":[\n");
    for number in 0..fields {
        let points: Vec<String> = ring(number, points).iter().map(|(x, y)| format!("[{x:.6},{y:.6}]")).collect();
        let end = if number + 1 == fields { "" } else { "," };
        // Writing to a text cannot fail.
        let _ = writeln!(
            text,
            "{{\"type\":\"Feature\",\"properties\":{{\"name\":\"Field {number}\",\"crop\":\"corn\"}},\
             \"geometry\":{{\"type\":\"Polygon\",\"coordinates\":[[{}]]}}}}{end}",
            points.join(",")
        );
    }
    text.push_str("]}\n");
    text
}

/// A farm with so many fields, each with a boundary of so many points.
///
/// # Errors
/// None for any numbers; the type of [`Shape::parse`].
pub fn farm(fields: u32, points: u32) -> Result<Farm, ShapeError> {
    let mut farm = Farm::new("Wide ground (demo)");
    for number in 0..fields {
        let boundary = boundary(number, points)?;
        let name = format!("Field {number}");
        let mut field = Field::new(&name, area_text(boundary.area(), farm.units));
        field.boundary = Some(boundary);
        farm.fields.insert(id::fresh(&farm.fields, &name), field);
    }
    Ok(farm)
}
