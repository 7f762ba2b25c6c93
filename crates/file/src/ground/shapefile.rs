//! Shapefiles after the ESRI Shapefile Technical Description (1998): the shapes, the names beside them, and what they are measured on.
//!
//! They are read here and not by a library, as those that there are make room for as many points as a head of eight bytes claims.

use geo::Coord;
use tankard_core::ground::rings::{Ring, Turn};
use tankard_core::t;

use super::crs::Measured;
use super::dbf::{self, Table};
use super::gather::{Drawn, Gathered, Raw};
use super::limits::Left;
use super::{Companion, GroundError, Kind, Refused, Why};

/// Columns in which a field's name may stand, the likeliest first.
const NAMES: [&str; 10] =
    ["name", "field_name", "fieldname", "field", "field_nam", "fld_name", "label", "plot", "field_id", "id"];

/// Reads the shapes of one file with what lies beside it; `name` is its own name, with its ending.
pub(super) fn read(name: &str, bytes: &[u8], beside: &[Companion]) -> Result<Gathered, GroundError> {
    let broken = |why: &str| GroundError::Broken { kind: Kind::Shapefile, why: why.to_owned() };
    let own = |ending: &str| {
        let stem = name.rsplit_once('.').map_or(name, |(stem, _)| stem);
        let wanted = format!("{stem}.{ending}");
        beside.iter().find(|file| file.name.eq_ignore_ascii_case(&wanted)).map(|file| file.bytes.as_slice())
    };
    let mut gathered = Gathered::new(Kind::Shapefile, Turn::Clockwise);
    let (records, cut) = records(bytes)?;
    if records.is_empty() {
        return Err(broken(if cut.is_some() {
            t!("file-it-ends-in-the-middle-of")
        } else {
            t!("file-it-has-no-shapes")
        }));
    }
    let measured = match own("prj") {
        Some(prj) => Measured::read(&crate::table::encoding::eight_bit(prj)).map_err(GroundError::Elsewhere)?,
        None => Measured::unsaid(),
    };
    gathered.notes.extend(measured.note());
    let mut table = None;
    match own("dbf").map(Table::read) {
        None => gathered.notes.push(t!("file-there-is-no-dbf-beside-so", name = name)),
        Some(Err(why)) => gathered.notes.push(t!("file-the-dbf-beside-is-left-so", name = name, why = why)),
        Some(Ok(read)) if read.count != records.len() => gathered.notes.push(t!(
            "file-the-dbf-beside-has-rows-for",
            name = name,
            count = read.count,
            records = records.len()
        )),
        Some(Ok(read)) => table = Some(read),
    }
    let letters = dbf::code_page(own("cpg")).unwrap_or_else(|named| {
        gathered.notes.push(t!("file-the-names-are-in-the-code", named = named));
        crate::table::encoding::eight_bit
    });
    let left = Left::new();
    for (number, record) in records.into_iter().enumerate() {
        left.piece()?;
        let facts = table.as_ref().map(|table| table.row(number, letters)).unwrap_or_default();
        let named = |wanted: &&str| facts.iter().find(|(column, _)| column.eq_ignore_ascii_case(wanted));
        let name = NAMES.iter().find_map(named).map(|(_, value)| value.clone()).unwrap_or_default();
        let place = t!("file-record", number = number + 1);
        match shape(record, &left, &measured) {
            Ok(drawn) => gathered.raws.push(Raw { name, place, drawn, is: None, facts }),
            Err(Why::Piece(why)) => gathered.refused.push(Refused { name, place, why }),
            Err(Why::File(error)) => return Err(error),
        }
    }
    if let Some(place) = cut {
        let why = t!("file-the-file-ends-in-the-middle").to_owned();
        gathered.refused.push(Refused { name: String::new(), place, why });
    }
    Ok(gathered)
}

fn big(bytes: &[u8], at: usize) -> Option<i32> {
    Some(i32::from_be_bytes(bytes.get(at..at + 4)?.try_into().ok()?))
}

fn little(bytes: &[u8], at: usize) -> Option<i32> {
    Some(i32::from_le_bytes(bytes.get(at..at + 4)?.try_into().ok()?))
}

fn double(bytes: &[u8], at: usize) -> Option<f64> {
    Some(f64::from_le_bytes(bytes.get(at..at + 8)?.try_into().ok()?))
}

/// The contents of each record, and where the file ends too early.
fn records(bytes: &[u8]) -> Result<(Vec<&[u8]>, Option<String>), GroundError> {
    let broken = |why: &str| GroundError::Broken { kind: Kind::Shapefile, why: why.to_owned() };
    if bytes.len() < 100 || big(bytes, 0) != Some(9994) {
        return Err(broken(t!("file-its-head-is-missing")));
    }
    let (mut records, mut at) = (Vec::new(), 100);
    while at < bytes.len() {
        let place = || Some(t!("file-record-records", records = records.len() + 1));
        // Lengths are in words of two bytes.
        let Some(length) = big(bytes, at + 4).and_then(|words| usize::try_from(words).ok()) else {
            return Ok((records.clone(), place()));
        };
        let Some(record) = bytes.get(at + 8..at + 8 + 2 * length) else { return Ok((records.clone(), place())) };
        if records.len() > super::limits::PIECES {
            return Err(GroundError::TooMany { most: super::limits::PIECES, of: t!("file-pieces-of-ground") });
        }
        records.push(record);
        at += 8 + 2 * length;
    }
    Ok((records, None))
}

fn shape(record: &[u8], left: &Left, measured: &Measured) -> Result<Drawn, Why> {
    let short = || Why::Piece(t!("file-its-record-is-shorter-than-it").to_owned());
    let kind = little(record, 0).ok_or_else(short)?;
    let point = |at: usize| {
        let (x, y) = (double(record, at).ok_or_else(short)?, double(record, at + 8).ok_or_else(short)?);
        measured.degrees(Coord { x, y }).map_err(Why::Piece)
    };
    let count = |at: usize| little(record, at).and_then(|many| usize::try_from(many).ok()).ok_or_else(short);
    // The numbers of a shape with heights or measures come after its points and are left.
    match kind {
        0 => Err(Why::Piece(t!("file-it-has-no-shape").to_owned())),
        1 | 11 | 21 => {
            left.points(1)?;
            Ok(Drawn::Points(vec![point(4)?]))
        }
        8 | 18 | 28 => {
            let many = count(36)?;
            left.points(many)?;
            Ok(Drawn::Points((0..many).map(|number| point(40 + 16 * number)).collect::<Result<_, _>>()?))
        }
        3 | 13 | 23 | 5 | 15 | 25 => {
            let (parts, many) = (count(36)?, count(40)?);
            left.points(many)?;
            left.points(parts)?;
            let points = 44 + 4 * parts;
            if record.len() < points + 16 * many {
                return Err(short());
            }
            let starts: Vec<usize> = (0..parts).map(|part| count(44 + 4 * part)).collect::<Result<_, _>>()?;
            let ends = starts.iter().copied().skip(1).chain([many]);
            let mut lines: Vec<Ring> = Vec::with_capacity(parts);
            for (start, end) in starts.iter().copied().zip(ends) {
                if start > end || end > many {
                    return Err(Why::Piece(t!("file-its-parts-do-not-fit-its").to_owned()));
                }
                lines.push((start..end).map(|number| point(points + 16 * number)).collect::<Result<_, _>>()?);
            }
            Ok(if matches!(kind, 3 | 13 | 23) { Drawn::Lines(lines) } else { Drawn::Rings(lines) })
        }
        31 => Err(Why::Piece(t!("file-it-is-a-surface-in-space").to_owned())),
        other => Err(Why::Piece(t!("file-its-shape-is-of-a-kind", other = other))),
    }
}
