//! What a shapefile is measured on: the well-known text of its `.prj` (OGC 01-009, and ISO 19162 as far as names go).

use geo::Coord;
use tankard_core::t;

use super::limits::{DEPTH, tidy};
use super::mercator::Transverse;

/// The radius of the sphere of web Mercator in metres (EPSG Guidance Note 7-2, section 3.2.1.2).
const WEB_RADIUS: f64 = 6_378_137.0;
/// Metres: a point is this far from the middle of a zone at most; no zone in use is a quarter as wide.
const FARTHEST: f64 = 3_000_000.0;

/// What numbers of a file mean.
pub(super) struct Measured {
    system: System,
    note: Option<String>,
}

enum System {
    Degrees,
    /// Nothing is said; taken for degrees where it can be.
    Unsaid,
    /// Metres in one unit of the file.
    Transverse(Transverse, f64),
    Web,
}

/// How well a datum is known.
enum Datum {
    Wgs84,
    /// Within a metre or two of it.
    Near(&'static str),
}

impl Measured {
    /// Where there is no `.prj`.
    pub(super) fn unsaid() -> Self {
        let note = t!("file-there-is-no-prj-to-say");
        Self { system: System::Unsaid, note: Some(note.to_owned()) }
    }

    /// Reads a `.prj`.
    ///
    /// # Errors
    /// What it is measured on, where that is not read.
    pub(super) fn read(text: &str) -> Result<Self, String> {
        let unread = || t!("file-the-prj-cannot-be-read", text = tidy(text).chars().take(60).collect::<String>());
        let node = Node::parse(text).ok_or_else(unread)?;
        let datum = |of: &Node| {
            let datum = of.one(&["DATUM", "ENSEMBLE", "TRF", "GEODETICDATUM"]).map(|datum| datum.name.clone());
            known_datum(datum.as_deref().unwrap_or_default(), &of.name)
                .ok_or_else(|| t!("file-the-shapes-are-measured-on", name = tidy(&of.name)))
        };
        match node.word.as_str() {
            "GEOGCS" | "GEOGCRS" | "GEODCRS" => {
                let datum = datum(&node)?;
                if node.angle().is_some_and(|unit| (unit / 1.0_f64.to_radians() - 1.0).abs() > 1e-9) {
                    return Err(t!("file-the-shapes-are-measured-on-not", name = tidy(&node.name)));
                }
                if node.one(&["PRIMEM"]).and_then(|meridian| meridian.number(0)).is_some_and(|from| from != 0.0) {
                    return Err(t!("file-the-longitudes-of-do-not-start", name = tidy(&node.name)));
                }
                Ok(Self { system: System::Degrees, note: near_note(&datum, &node.name) })
            }
            "PROJCS" | "PROJCRS" => {
                let base = node.one(&["GEOGCS", "GEOGCRS", "BASEGEOGCRS", "BASEGEODCRS"]).ok_or_else(unread)?;
                let datum = datum(base)?;
                let note = near_note(&datum, &node.name);
                let system = projected(&node, base)
                    .ok_or_else(|| t!("file-the-shapes-are-measured-on", name = tidy(&node.name)))?;
                Ok(Self { system, note })
            }
            _ => Err(unread()),
        }
    }

    /// What a person should know.
    pub(super) fn note(&self) -> Option<String> {
        self.note.clone()
    }

    /// Longitude and latitude of a point of the file.
    ///
    /// # Errors
    /// The numbers cannot be what the file says they are.
    pub(super) fn degrees(&self, at: Coord<f64>) -> Result<Coord<f64>, String> {
        match &self.system {
            System::Unsaid if at.x.abs() > 360.0 || at.y.abs() > 360.0 => Err(t!(
                "file-is-no-longitude-and-latitude-and",
                x = format_args!("{:.0}", at.x),
                y = format_args!("{:.0}", at.y)
            )),
            System::Degrees | System::Unsaid => Ok(at),
            System::Transverse(projection, unit) => {
                let metres = Coord { x: at.x * unit, y: at.y * unit };
                let place = projection.degrees(metres);
                let is_near = projection.is_within(metres, FARTHEST);
                place.filter(|_| is_near).ok_or_else(|| {
                    t!("file-lies-off-its-zone", x = format_args!("{:.0}", at.x), y = format_args!("{:.0}", at.y))
                })
            }
            System::Web => {
                let degrees =
                    Coord { x: (at.x / WEB_RADIUS).to_degrees(), y: (at.y / WEB_RADIUS).sinh().atan().to_degrees() };
                Ok(degrees)
            }
        }
    }
}

fn near_note(datum: &Datum, name: &str) -> Option<String> {
    let Datum::Near(datum) = datum else { return None };
    Some(t!("file-the-shapes-are-measured-on-which", name = tidy(name), datum = datum))
}

/// Datums by the names that programs give them.
fn known_datum(datum: &str, system: &str) -> Option<Datum> {
    let plain = |text: &str| text.to_lowercase().chars().filter(char::is_ascii_alphanumeric).collect::<String>();
    let named = plain(if datum.is_empty() { system } else { datum });
    let named = named.strip_prefix('d').filter(|_| datum.starts_with("D_")).unwrap_or(&named);
    let starts = |all: &[&str]| all.iter().any(|known| named.starts_with(known));
    if starts(&["wgs1984", "wgs84", "worldgeodeticsystem1984"]) {
        Some(Datum::Wgs84)
    } else if starts(&["northamerican1983", "northamericandatum1983", "nad1983", "nad83"]) {
        Some(Datum::Near("NAD83"))
    } else if starts(&["etrs1989", "etrs89", "europeanterrestrialreferencesystem1989"]) {
        Some(Datum::Near("ETRS89"))
    } else {
        None
    }
}

fn projected(node: &Node, base: &Node) -> Option<System> {
    let method = node.one(&["PROJECTION", "METHOD"]).or_else(|| node.one(&["CONVERSION"])?.one(&["METHOD"]))?;
    let plain: String = method.name.to_lowercase().chars().filter(char::is_ascii_alphanumeric).collect();
    // Parameters by their names of OGC 01-009; degrees and units of the file.
    let parameter = |wanted: &[&str]| {
        let is_it = |name: &str| wanted.iter().any(|wanted| name.eq_ignore_ascii_case(wanted));
        let conversion = node.one(&["CONVERSION"]).unwrap_or(node);
        conversion.all("PARAMETER").find(|one| is_it(&one.name)).and_then(|one| one.number(0))
    };
    let unit = node.length()?;
    if !(0.1..=2.0).contains(&unit) {
        return None;
    }
    match plain.as_str() {
        "transversemercator" | "gausskruger" => {
            let spheroid = base.one(&["DATUM", "ENSEMBLE"])?.one(&["SPHEROID", "ELLIPSOID"])?;
            let (axis, flattening) = (spheroid.number(0)?, spheroid.number(1)?);
            let projection = Transverse::new(
                (axis, 1.0 / flattening),
                parameter(&["latitude_of_origin", "Latitude of natural origin"])?,
                parameter(&["central_meridian", "Longitude of natural origin"])?,
                parameter(&["scale_factor", "Scale factor at natural origin"])?,
                Coord { x: parameter(&["false_easting"])? * unit, y: parameter(&["false_northing"])? * unit },
            )?;
            Some(System::Transverse(projection, unit))
        }
        "mercatorauxiliarysphere" | "popularvisualisationpseudomercator" | "mercator1sp" | "mercator"
            if is_web(&node.name) && (unit - 1.0).abs() < 1e-12 =>
        {
            let is_plain = |wanted: &[&str]| parameter(wanted).is_none_or(|value| value == 0.0);
            (is_plain(&["central_meridian"]) && is_plain(&["false_easting"]) && is_plain(&["false_northing"]))
                .then_some(System::Web)
        }
        _ => None,
    }
}

fn is_web(name: &str) -> bool {
    let plain: String = name.to_lowercase().chars().filter(char::is_ascii_alphanumeric).collect();
    plain.contains("pseudomercator") || plain.contains("webmercator")
}

/// A bracket of well-known text: `WORD["name", 1.0, OTHER[…]]`.
struct Node {
    word: String,
    name: String,
    numbers: Vec<f64>,
    children: Vec<Node>,
}

impl Node {
    fn parse(text: &str) -> Option<Self> {
        let text = text.trim().trim_start_matches('\u{feff}');
        // A .prj has a few hundred letters.
        if text.len() > 64 << 10 {
            return None;
        }
        let (node, rest) = Self::take(text, 0)?;
        rest.trim_matches(|letter: char| letter.is_whitespace() || letter == '\0').is_empty().then_some(node)
    }

    fn take(text: &str, depth: usize) -> Option<(Self, &str)> {
        if depth > DEPTH {
            return None;
        }
        let open = text.find(['[', '('])?;
        let (word, rest) = text.split_at(open);
        let mut node =
            Self { word: word.trim().to_uppercase(), name: String::new(), numbers: Vec::new(), children: Vec::new() };
        let mut rest = rest.get(1..)?.trim_start();
        loop {
            if let Some(quoted) = rest.strip_prefix('"') {
                let (name, after) = quoted.split_once('"')?;
                if node.name.is_empty() {
                    name.clone_into(&mut node.name);
                }
                rest = after;
            } else {
                let end = rest.find([',', '[', '(', ']', ')'])?;
                if rest.get(end..)?.starts_with(['[', '(']) {
                    let (child, after) = Self::take(rest, depth + 1)?;
                    node.children.push(child);
                    rest = after;
                } else {
                    let (value, after) = rest.split_at(end);
                    node.numbers.extend(value.trim().parse::<f64>().ok().filter(|number| number.is_finite()));
                    rest = after;
                }
            }
            rest = rest.trim_start();
            if let Some(after) = rest.strip_prefix(',') {
                rest = after.trim_start();
            } else {
                return Some((node, rest.strip_prefix([']', ')'])?));
            }
        }
    }

    fn all<'a>(&'a self, word: &'a str) -> impl Iterator<Item = &'a Node> {
        self.children.iter().filter(move |child| child.word == word)
    }

    fn one(&self, words: &[&str]) -> Option<&Node> {
        self.children.iter().find(|child| words.contains(&child.word.as_str()))
    }

    fn number(&self, at: usize) -> Option<f64> {
        self.numbers.get(at).copied()
    }

    /// Radians in the unit of angles, where it is said.
    fn angle(&self) -> Option<f64> {
        let own = self.one(&["ANGLEUNIT", "UNIT"]).and_then(|unit| unit.number(0));
        own.or_else(|| self.one(&["CS"])?.one(&["ANGLEUNIT"])?.number(0))
    }

    /// Metres in the unit of lengths.
    fn length(&self) -> Option<f64> {
        let unit = self.one(&["LENGTHUNIT", "UNIT"]).or_else(|| self.one(&["AXIS"])?.one(&["LENGTHUNIT", "UNIT"]));
        unit?.number(0)
    }
}
