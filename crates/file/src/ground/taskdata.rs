//! Task data of ISO 11783-10: partfields with their polygons, lines and points.

use std::collections::HashMap;

use geo::Coord;
use tankard_core::farm::SurroundingKind;
use tankard_core::ground::rings::{Ring, Turn};
use tankard_core::t;

use super::gather::{Drawn, Gathered, Raw};
use super::limits::{Left, tidy};
use super::xml::{self, Node};
use super::{Companion, GroundError, Is, Kind, Refused, Why};

/// Reads the main file, and of its other files those that it names.
pub(super) fn read(text: &str, companions: &[Companion]) -> Result<Gathered, GroundError> {
    let mut reader = Reader {
        gathered: Gathered::new(Kind::TaskData, Turn::Either),
        left: Left::new(),
        fields: 0,
        guidance: 0,
        zones: 0,
        crops: HashMap::new(),
        named: Vec::new(),
    };
    reader.file(text)?;
    for name in std::mem::take(&mut reader.named) {
        let is_it = |file: &&Companion| {
            let own = file.name.rsplit(['/', '\\']).next().unwrap_or_default();
            own.strip_suffix(".XML").or_else(|| own.strip_suffix(".xml")).unwrap_or(own).eq_ignore_ascii_case(&name)
        };
        if let Some(file) = companions.iter().find(is_it) {
            reader.file(&xml::letters(&file.bytes))?;
        } else {
            let why = t!("file-it-names-a-file-xml-that", name = tidy(&name));
            reader.gathered.notes.push(why);
        }
    }
    Ok(reader.done())
}

struct Reader {
    gathered: Gathered,
    left: Left,
    fields: usize,
    guidance: usize,
    zones: usize,
    /// Names of crops by their ids.
    crops: HashMap<String, String>,
    /// Files that the main one names.
    named: Vec<String>,
}

impl Reader {
    fn file(&mut self, text: &str) -> Result<(), GroundError> {
        let step = |node: &Node| match node.name.as_str() {
            "PFD" => self.field(node),
            "CTP" => {
                self.crops.insert(node.attribute("A").to_owned(), node.attribute("B").to_owned());
                Ok(())
            }
            _ => {
                let name = node.attribute("A");
                // A file that is named twice is read once.
                let is_new = !self.named.iter().any(|known| known == name);
                if is_new && (name.starts_with("PFD") || name.starts_with("CTP")) {
                    self.left.piece()?;
                    self.named.push(name.to_owned());
                }
                Ok(())
            }
        };
        xml::each(text, &["PFD", "CTP", "XFR"], step).map_err(|why| why.of(Kind::TaskData))
    }

    fn field(&mut self, node: &Node) -> Result<(), Why> {
        self.fields += 1;
        self.left.piece()?;
        let name = match node.attribute("C") {
            "" => node.attribute("B"),
            name => name,
        };
        let place = t!("file-partfield", fields = self.fields);
        let mut facts = vec![("crop".to_owned(), node.attribute("G").to_owned())];
        facts.push(("code".to_owned(), node.attribute("B").to_owned()));
        if node.attribute("D").parse::<u64>().is_ok_and(|area| area > 0) {
            facts.push(("stated area".to_owned(), format!("{} m²", node.attribute("D"))));
        }
        let mut rings = Vec::new();
        let mut why = None;
        for polygon in node.all("PLN").filter(|polygon| polygon.attribute("A") == "1") {
            match self.polygon(polygon) {
                Ok(more) => rings.extend(more),
                Err(Why::Piece(wrong)) => why = Some(wrong),
                Err(file) => return Err(file),
            }
        }
        if why.is_none() && rings.is_empty() {
            why = Some(t!("file-it-has-no-boundary").to_owned());
        }
        match why {
            Some(why) => self.gathered.refused.push(Refused { name: tidy(name), place: place.clone(), why }),
            None => self.add(name, &place, Drawn::Polygons(rings), Is::Field, facts),
        }
        for child in &node.children {
            self.within(child, name, &place)?;
        }
        Ok(())
    }

    /// What lies in a field beside its boundary.
    fn within(&mut self, node: &Node, field: &str, place: &str) -> Result<(), Why> {
        use SurroundingKind::{Habitat, Other, Water};
        let is = match (node.name.as_str(), node.attribute("A")) {
            ("PLN", "3") => Is::Surrounding(Water),
            ("PLN", "12") => Is::Surrounding(Habitat),
            ("PLN", "4" | "5" | "6" | "7" | "8" | "11")
            | ("LSG", "6" | "7" | "8" | "9")
            | ("PNT", "1" | "2" | "4" | "5") => Is::Surrounding(Other),
            ("PNT", "3") => Is::Gateway,
            ("PLN", "1") => return Ok(()),
            ("PLN", _) => {
                self.zones += 1;
                return Ok(());
            }
            ("LSG" | "PNT" | "GGP", _) => {
                self.guidance += 1;
                return Ok(());
            }
            _ => return Ok(()),
        };
        self.left.piece()?;
        let drawn = match node.name.as_str() {
            "PLN" => self.polygon(node).map(Drawn::Polygons),
            "LSG" => self.line(node).map(|line| Drawn::Lines(vec![line])),
            _ => point(node).map(|at| Drawn::Points(vec![at])),
        };
        let name = node.attribute("B");
        let place = format!("{place}, {}", what(node));
        match drawn {
            Ok(drawn) => self.add(name, &place, drawn, is, vec![("field".to_owned(), field.to_owned())]),
            Err(Why::Piece(why)) => self.gathered.refused.push(Refused { name: tidy(name), place, why }),
            Err(why @ Why::File(_)) => return Err(why),
        }
        Ok(())
    }

    fn add(&mut self, name: &str, place: &str, drawn: Drawn, is: Is, facts: Vec<(String, String)>) {
        let (name, place) = (name.to_owned(), place.to_owned());
        self.gathered.raws.push(Raw { name, place, drawn, is: Some(is), facts });
    }

    /// Each outer ring (type 1) with the inner ones (type 2) that follow it.
    fn polygon(&self, polygon: &Node) -> Result<Vec<Vec<Ring>>, Why> {
        let mut parts: Vec<Vec<Ring>> = Vec::new();
        let mut holes: Vec<Ring> = Vec::new();
        for line in polygon.all("LSG") {
            let ring = self.line(line)?;
            match line.attribute("A") {
                "1" => parts.push(vec![ring]),
                "2" => holes.push(ring),
                other => return Err(Why::Piece(t!("file-a-ring-of-it-is-of", other = tidy(other)))),
            }
        }
        // Holes go to the part that they lie in when it is mended, whichever it stands with.
        match parts.first_mut() {
            Some(first) => first.extend(holes),
            None => return Err(Why::Piece(t!("file-it-has-no-outer-ring").to_owned())),
        }
        Ok(parts)
    }

    /// The points of a line; the standard does not ask for the first one again at the end of a ring.
    fn line(&self, line: &Node) -> Result<Ring, Why> {
        let mut ring: Ring = Vec::new();
        for at in line.all("PNT") {
            self.left.points(1)?;
            ring.push(point(at)?);
        }
        if matches!(line.attribute("A"), "1" | "2") && ring.first() != ring.last() {
            ring.extend(ring.first().copied());
        }
        Ok(ring)
    }

    fn done(mut self) -> Gathered {
        for raw in &mut self.gathered.raws {
            for (_, value) in raw.facts.iter_mut().filter(|(name, _)| name == "crop") {
                *value = self.crops.get(value).cloned().unwrap_or_default();
            }
        }
        if self.guidance > 0 {
            self.gathered.notes.push(t!("file-points-and-lines-that-guide-machines", count = self.guidance));
        }
        if self.zones > 0 {
            self.gathered.notes.push(t!("file-zones-headlands-and-main-fields", count = self.zones));
        }
        self.gathered
    }
}

fn what(node: &Node) -> &'static str {
    match node.name.as_str() {
        "PLN" => t!("file-polygon"),
        "LSG" => t!("file-line-drawn"),
        _ => t!("file-point"),
    }
}

fn point(at: &Node) -> Result<Coord<f64>, Why> {
    let number = |name: &str| {
        let text = at.attribute(name);
        text.trim().parse::<f64>().map_err(|_| Why::Piece(t!("file-is-no-latitude-or-longitude", text = tidy(text))))
    };
    Ok(Coord { x: number("D")?, y: number("C")? })
}
