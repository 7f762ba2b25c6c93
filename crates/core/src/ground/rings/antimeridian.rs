//! The 180th meridian.

use crate::language::t;
use geo::algorithm::line_measures::{Geodesic, InterpolatePoint};
use geo::{Coord, LineString, MultiPolygon, Point, Polygon};

use super::{NoGround, Ring, closed};

/// Lets longitudes run on beyond 180 where a ring crosses the meridian: no edge of a field goes half round the globe.
pub(super) fn unwrap(mut ring: Ring) -> Result<Ring, NoGround> {
    let mut before: Option<f64> = None;
    for at in &mut ring {
        if !at.x.is_finite() || !at.y.is_finite() {
            return Err(NoGround(t!("ground-a-point-of-it-is-no").to_owned()));
        }
        if at.x.abs() > 360.0 || at.y.abs() > 90.0 {
            return Err(NoGround::at(t!("ground-a-point-lies-off-the-globe"), *at));
        }
        if let Some(before) = before {
            // A point may stand a turn of the globe off on either side.
            for _ in 0..2 {
                if at.x - before > 180.0 {
                    at.x -= 360.0;
                } else if before - at.x > 180.0 {
                    at.x += 360.0;
                }
            }
        }
        before = Some(at.x);
    }
    let (least, most) = span(&ring);
    if most - least >= 180.0 {
        return Err(NoGround(t!("ground-a-ring-goes-half-round-the").to_owned()));
    }
    let middle = least.midpoint(most);
    let shift = if middle > 180.0 {
        -360.0
    } else if middle < -180.0 {
        360.0
    } else {
        0.0
    };
    Ok(moved(ring, shift))
}

/// East by so many degrees.
fn moved(mut ring: Ring, east: f64) -> Ring {
    if east != 0.0 {
        for at in &mut ring {
            at.x += east;
        }
    }
    ring
}

fn span(ring: &[Coord<f64>]) -> (f64, f64) {
    ring.iter().fold((f64::INFINITY, f64::NEG_INFINITY), |(least, most), at| (least.min(at.x), most.max(at.x)))
}

/// A hole on the same turn of the globe as its outer ring.
pub(super) fn beside(mut ring: Ring, about: f64) -> Ring {
    if let Some(first) = ring.first().map(|at| at.x) {
        let shift = ((about - first) / 360.0).round() * 360.0;
        ring = moved(ring, shift);
    }
    ring
}

/// Cuts what crosses the meridian in two.
pub(super) fn cut(polygons: Vec<Polygon<f64>>, said: &mut Vec<String>) -> Result<MultiPolygon<f64>, NoGround> {
    let mut done = Vec::with_capacity(polygons.len());
    for polygon in polygons {
        let (least, most) = span(&polygon.exterior().0);
        let meridian = if most > 180.0 {
            180.0
        } else if least < -180.0 {
            -180.0
        } else {
            done.push(polygon);
            continue;
        };
        let (outer, holes) = polygon.into_inner();
        let (mut east, mut west) = halves(&outer, meridian)?;
        for hole in holes {
            let (least, most) = span(&hole.0);
            if least < meridian && most > meridian {
                return Err(NoGround(t!("ground-a-hole-crosses-the-180th-meridian").to_owned()));
            }
            let halves = if least >= meridian { &mut west } else { &mut east };
            halves.1.push(hole);
        }
        let shift = 360.0_f64.copysign(meridian);
        let home = |(outer, holes): Half, by: f64| {
            let home = |ring: LineString<f64>| LineString(moved(ring.0, -by));
            Polygon::new(home(outer), holes.into_iter().map(home).collect())
        };
        // Of the two halves the one beyond the meridian comes home.
        let (of_east, of_west) = if meridian > 0.0 { (0.0, shift) } else { (shift, 0.0) };
        done.push(home(east, of_east));
        done.push(home(west, of_west));
        said.push(t!("ground-it-crosses-the-180th-meridian-and").to_owned());
    }
    Ok(MultiPolygon(done))
}

type Half = (LineString<f64>, Vec<LineString<f64>>);

/// What lies below a meridian and what beyond.
fn halves(outer: &LineString<f64>, meridian: f64) -> Result<(Half, Half), NoGround> {
    let (mut below, mut beyond): (Ring, Ring) = (Vec::new(), Vec::new());
    let mut crossings = 0;
    for line in outer.lines() {
        let (from, to) = (line.start.x - meridian, line.end.x - meridian);
        if from <= 0.0 {
            below.push(line.start);
        }
        if from >= 0.0 {
            beyond.push(line.start);
        }
        if from * to < 0.0 {
            let at = Coord { x: meridian, y: latitude_at(line.start, line.end, meridian) };
            below.push(at);
            beyond.push(at);
            crossings += 1;
        } else if from == 0.0 {
            crossings += 1;
        }
    }
    if crossings > 2 {
        return Err(NoGround(t!("ground-it-crosses-the-180th-meridian-more").to_owned()));
    }
    Ok(((closed(below), Vec::new()), (closed(beyond), Vec::new())))
}

/// Where the shortest way between two points meets a meridian.
fn latitude_at(start: Coord<f64>, end: Coord<f64>, meridian: f64) -> f64 {
    let is_beyond = |x: f64| {
        let turns = ((start.x - x) / 360.0).round() * 360.0;
        (x + turns - meridian) * (start.x - meridian) < 0.0
    };
    let (mut from, mut to, mut y) = (0.0_f64, 1.0_f64, start.y);
    for _ in 0..60 {
        let middle = from.midpoint(to);
        let at = Geodesic.point_at_ratio_between(Point(start), Point(end), middle);
        y = at.y();
        if is_beyond(at.x()) {
            to = middle;
        } else {
            from = middle;
        }
    }
    y
}
