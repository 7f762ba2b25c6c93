//! Files of boundaries.

use tankard_core::farm::{Farm, Id};
use tankard_core::quantity::Area;
use tankard_file::ground::{
    Becomes, Companion, Found, GroundError, Is, read, suggest, take, write_geojson, write_taskdata,
};

use super::{lasts, says, yard};

/// Between the parts of a shapefile in one run of bytes: shapes, table, what they are measured on, code page.
const BETWEEN: &[u8] = b"\0==\0";

/// Reads bytes as GeoJSON.
///
/// # Panics
/// As [`shapefile`].
pub fn geojson(bytes: &[u8]) -> bool {
    any("fields.geojson", bytes, &[])
}

/// Reads bytes as KML, or packed as KMZ.
///
/// # Panics
/// As [`shapefile`].
pub fn kml(bytes: &[u8]) -> bool {
    any("fields.kml", bytes, &[])
}

/// Reads bytes as task data: the main file, and after a mark the first further file.
///
/// # Panics
/// As [`shapefile`].
pub fn taskdata(bytes: &[u8]) -> bool {
    parts("TASKDATA.XML", &["PFD00000.XML", "CTP00000.XML"], bytes)
}

/// Reads bytes as a shapefile: packed, or its parts one after another with a mark between.
///
/// # Panics
/// A reader panics; the ground it gives is not sound, cannot be taken into a farm and planned, or does not last there or in
/// another file.
pub fn shapefile(bytes: &[u8]) -> bool {
    parts("fields.shp", &["fields.dbf", "fields.prj", "fields.cpg"], bytes)
}

fn parts(name: &str, beside: &[&str], bytes: &[u8]) -> bool {
    let mut parts = Vec::new();
    let mut rest = bytes;
    while let Some(at) = rest.windows(BETWEEN.len()).position(|window| window == BETWEEN) {
        let (part, after) = rest.split_at(at);
        parts.push(part);
        rest = after.get(BETWEEN.len()..).unwrap_or_default();
    }
    parts.push(rest);
    let mut parts = parts.into_iter();
    let main = parts.next().unwrap_or_default();
    let companions: Vec<Companion> = beside
        .iter()
        .zip(parts)
        .filter(|(_, bytes)| !bytes.is_empty())
        .map(|(name, bytes)| Companion { name: (*name).to_owned(), bytes: bytes.to_vec() })
        .collect();
    any(name, main, &companions)
}

/// Whether any piece of ground was read.
fn any(name: &str, bytes: &[u8], beside: &[Companion]) -> bool {
    let farm = yard();
    let near = farm.place.as_ref().and_then(|place| place.position().ok());
    assert!(near.is_some());
    let alone = read(name, bytes, beside, None);
    let found = match read(name, bytes, beside, near) {
        Ok(found) => found,
        Err(error) => {
            // Where the farm lies changes what numbers mean, not whether the file reads.
            assert!(alone.is_err());
            return says(&error);
        }
    };
    for found in alone.iter().chain([&found]) {
        sound(found);
    }
    let becomes = suggest(&farm, &found);
    assert_eq!(becomes.len(), found.pieces.len());
    planned(taken(&farm, &found, &becomes));
    // All polygons as the boundary of one field.
    let one = found.pieces.iter().map(|piece| match piece.is {
        Is::Field => Becomes::Boundary("hill".to_owned()),
        _ => Becomes::Nothing,
    });
    taken(&farm, &found, &one.collect::<Vec<_>>());
    !found.pieces.is_empty()
}

/// What a file gives can be shown.
fn sound(found: &Found) {
    for piece in &found.pieces {
        let bounds = piece.shape.bounds();
        assert!(bounds.min().x >= -180.0 && bounds.max().x <= 180.0, "{piece:?}");
        assert!(bounds.min().y >= -90.0 && bounds.max().y <= 90.0, "{piece:?}");
        assert!(piece.shape.area().to_hectares() <= 1_000_001.0, "{piece:?}");
        assert!(!piece.name.is_empty() && !piece.place.is_empty(), "{piece:?}");
        assert!(piece.is != Is::Field || piece.shape.polygons().is_some(), "{piece:?}");
    }
    for refused in &found.refused {
        assert!(!refused.why.is_empty() && !refused.place.is_empty(), "{refused:?}");
    }
}

/// It goes into a farm, which is written and read; the farm, and the fields that are new.
fn taken(farm: &Farm, found: &Found, becomes: &[Becomes]) -> (Farm, Vec<Id>) {
    let (after, told) = take(farm, found, becomes);
    lasts(&after);
    again(&after);
    (after, told.fields)
}

/// It is sprayed, and sent to a terminal.
fn planned((mut after, fields): (Farm, Vec<Id>)) {
    // A few of the fields are sprayed, with a strip to whatever is drawn near them.
    if let Some(pass) = after.passes.get_mut("post") {
        pass.fields.extend(fields.into_iter().take(3));
    }
    super::farm::planned(&after);
    match write_taskdata(&after, "post") {
        Ok(data) => {
            assert!(data.packed().is_ok());
            match read("TASKDATA.XML", data.xml.as_bytes(), &[], None) {
                Ok(back) => sound(&back),
                Err(error) => assert!(data.xml.is_empty(), "what was written is refused: {error}"),
            }
        }
        Err(why) => assert!(!why.is_empty()),
    }
}

/// What was taken is good enough to be read again, and is as large as it was.
fn again(after: &Farm) {
    let ids: Vec<Id> = after.fields.keys().chain(after.surroundings.keys()).cloned().collect();
    let written = write_geojson(after, &ids);
    let back = match read("again.geojson", written.as_bytes(), &[], None) {
        Ok(back) => back,
        Err(GroundError::TooMany { .. }) => return,
        Err(error) => {
            assert!(written.is_empty(), "what was written is refused: {error}");
            return;
        }
    };
    assert!(back.refused.is_empty(), "what was written is refused: {:?}", back.refused);
    let boundaries = after.fields.values().filter_map(|field| field.boundary.as_ref());
    let own = boundaries.chain(after.surroundings.values().map(|one| &one.shape));
    let (mut is, mut should) = (Area::ZERO, Area::ZERO);
    for (piece, shape) in back.pieces.iter().zip(own) {
        is = is + piece.shape.area();
        should = should + shape.area();
    }
    let apart = (is.to_square_metres() - should.to_square_metres()).abs();
    assert!(apart <= 1e-6 * should.to_square_metres() + 0.01, "{is:?} of {should:?}");
}
