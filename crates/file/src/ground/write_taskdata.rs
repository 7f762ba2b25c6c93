//! A planned pass as task data of ISO 11783-10 for the terminal in the cab: its fields with their boundaries, its products, and
//! the spray volume over ground.

use std::io::{Cursor, Write};

use geo::Polygon;
use quick_xml::Writer;
use quick_xml::events::{BytesDecl, BytesStart, Event};
use tankard_core::farm::{Farm, Field, Id};
use tankard_core::plan::{Plan, plan};
use tankard_core::quantity::{Amount, CarrierRate, Units};
use tankard_core::t;
use zip::ZipWriter;
use zip::write::SimpleFileOptions;

use super::limits::tidy;

/// So many letters has a name in task data (xs:string of at most 32).
const LETTERS: usize = 32;
/// The largest number that a value may be (xs:long as the standard bounds it).
const LARGEST: f64 = 2_147_483_647.0;

/// Setpoint volume per area, in hundredths of mm³/m² (ISO 11783-11, data dictionary entity 1).
const VOLUME_PER_AREA: &str = "0001";
/// So many of these are a litre on a hectare.
const PER_LITRE_ON_HECTARE: f64 = 10_000.0;
/// Actual volume content in millilitres (entity 72), in which a liquid product stands in the recipe.
const VOLUME_CONTENT: &str = "0048";
/// Actual mass content in grams (entity 75), in which a dry one does.
const MASS_CONTENT: &str = "004B";

/// A pass as task data.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct TaskData {
    /// What `TASKDATA.XML` holds.
    pub xml: String,
    /// What a person should know before a terminal follows it.
    pub notes: Vec<String>,
}

impl TaskData {
    /// As terminals take it from a stick: `TASKDATA/TASKDATA.XML`, packed.
    ///
    /// # Errors
    /// It does not fit the memory.
    pub fn packed(&self) -> std::io::Result<Vec<u8>> {
        let mut packed = ZipWriter::new(Cursor::new(Vec::new()));
        packed.start_file("TASKDATA/TASKDATA.XML", SimpleFileOptions::default())?;
        packed.write_all(self.xml.as_bytes())?;
        Ok(packed.finish()?.into_inner())
    }
}

/// Writes a planned pass as task data: a task for each field of it.
///
/// The one rate in it is that of the spray, as a terminal would put out what it reads as a rate. How much of each product goes
/// into the spray of the pass stands as the recipe of the mixture.
///
/// # Errors
/// There is no such pass, or nothing of it is planned yet that a terminal could follow.
pub fn write_taskdata(farm: &Farm, pass: &str) -> Result<TaskData, String> {
    let plan = plan(farm, pass).ok_or_else(|| t!("file-the-farm-has-no-pass", pass = pass))?;
    let carrier = plan.carrier.ok_or(t!("file-the-spray-volume-of-the-pass"))?;
    let mut notes = Vec::new();
    if plan.level() == Some(tankard_core::finding::Level::Stop) {
        return Err(t!("file-a-stop-stands-in-the-plan").to_owned());
    }
    let xml = Sheet { farm, plan: &plan, carrier, notes: &mut notes }.write().map_err(|error| error.to_string())?;
    Ok(TaskData { xml, notes })
}

struct Sheet<'a> {
    farm: &'a Farm,
    plan: &'a Plan,
    carrier: CarrierRate,
    notes: &'a mut Vec<String>,
}

type Out = Writer<Vec<u8>>;

impl Sheet<'_> {
    fn write(mut self) -> std::io::Result<String> {
        let mut out = Writer::new_with_indent(Vec::new(), b' ', 2);
        out.write_event(Event::Decl(BytesDecl::new("1.0", Some("UTF-8"), None)))?;
        let root = [
            ("VersionMajor", "4"),
            ("VersionMinor", "2"),
            ("ManagementSoftwareManufacturer", "Tankard"),
            ("ManagementSoftwareVersion", env!("CARGO_PKG_VERSION")),
            ("DataTransferOrigin", "1"),
        ];
        element(&mut out, "ISO11783_TaskData", &root, |out| self.all(out))?;
        let mut text = String::from_utf8(out.into_inner()).map_err(std::io::Error::other)?;
        text.push('\n');
        Ok(text)
    }

    fn all(&mut self, out: &mut Out) -> std::io::Result<()> {
        let fields: Vec<(&Id, &Field)> =
            self.plan.fields.iter().filter_map(|planned| self.farm.fields.get_key_value(&planned.field)).collect();
        let mut crops: Vec<&str> = Vec::new();
        for (_, field) in &fields {
            if !field.crop.is_empty() && !crops.contains(&field.crop.as_str()) {
                crops.push(&field.crop);
            }
        }
        for (number, crop) in crops.iter().enumerate() {
            empty(out, "CTP", &[("A", &format!("CTP{}", number + 1)), ("B", &self.named(crop))])?;
        }
        empty(out, "FRM", &[("A", "FRM1"), ("B", &named_within(&self.farm.name))])?;
        for (number, (_, field)) in fields.iter().enumerate() {
            let crop = crops.iter().position(|crop| *crop == field.crop).map(|at| format!("CTP{}", at + 1));
            self.field(out, number + 1, field, crop.as_deref())?;
        }
        self.products(out)?;
        let (unit, litres) = match self.farm.units {
            Units::Metric => ("L/ha", 1.0),
            Units::UsCustomary => ("gal/ac", CarrierRate::from_us_gallons_per_acre(1.0).to_litres_per_hectare()),
            Units::Imperial => ("imp gal/ac", CarrierRate::from_imperial_gallons_per_acre(1.0).to_litres_per_hectare()),
        };
        // The value times this is what the terminal shows; the standard has nine digits.
        let scale = format!("{:.9}", 1.0 / (litres * PER_LITRE_ON_HECTARE));
        empty(out, "VPN", &[("A", "VPN1"), ("B", "0"), ("C", &scale), ("D", "1"), ("E", unit)])?;
        let rate = whole(self.carrier.to_litres_per_hectare() * PER_LITRE_ON_HECTARE);
        let pass = self.farm.passes.get(&self.plan.pass).map_or("", |pass| pass.name.as_str());
        for (number, (_, field)) in fields.iter().enumerate() {
            let designator = self.named(&format!("{pass}, {}", field.name));
            let task = [
                ("A", &*format!("TSK{}", number + 1)),
                ("B", &designator),
                ("D", "FRM1"),
                ("E", &format!("PFD{}", number + 1)),
                ("G", "1"),
                ("H", "1"),
            ];
            element(out, "TSK", &task, |out| {
                element(out, "TZN", &[("A", "1"), ("B", t!("file-spray"))], |out| {
                    empty(out, "PDV", &[("A", VOLUME_PER_AREA), ("B", &rate), ("C", "PDT1"), ("E", "VPN1")])
                })
            })?;
        }
        if self.plan.fields.iter().any(|planned| planned.area != planned.covered) {
            let note = t!("file-the-pass-sprays-bands-and-the");
            self.notes.push(note.to_owned());
        }
        Ok(())
    }

    fn field(&mut self, out: &mut Out, number: usize, field: &Field, crop: Option<&str>) -> std::io::Result<()> {
        let id = format!("PFD{number}");
        let (area, name) = (whole(field.ground().to_square_metres()), self.named(&field.name));
        let mut facts = vec![("A", id.as_str()), ("C", &name), ("D", &area), ("F", "FRM1")];
        facts.extend(crop.map(|crop| ("G", crop)));
        let boundary = field.boundary.as_ref().and_then(tankard_core::farm::Shape::polygons);
        if boundary.is_none() {
            self.notes.push(t!("file-has-no-boundary-so-a-terminal", name = field.name));
        }
        element(out, "PFD", &facts, |out| {
            for part in boundary.iter().flatten() {
                polygon(out, part)?;
            }
            for gateway in &field.gateways {
                if let geo::Geometry::Point(at) = gateway.at.geometry() {
                    point(out, "3", &named_within(&gateway.name), at.0)?;
                }
            }
            Ok(())
        })
    }

    /// The mixture first, then what is in it.
    fn products(&mut self, out: &mut Out) -> std::io::Result<()> {
        let content = |amount: Amount| match amount {
            Amount::Volume(volume) => (VOLUME_CONTENT, whole(volume.to_litres() * 1000.0)),
            Amount::Mass(mass) => (MASS_CONTENT, whole(mass.to_grams())),
        };
        let spray = whole(self.plan.spray_volume.to_litres() * 1000.0);
        let pass = self.farm.passes.get(&self.plan.pass).map_or("", |pass| pass.name.as_str());
        let mix = [
            ("A", "PDT1"),
            ("B", &*self.named(&t!("file-spray-of", pass = pass))),
            ("E", VOLUME_CONTENT),
            ("F", "2"),
            ("G", &spray),
        ];
        element(out, "PDT", &mix, |out| {
            for (number, line) in self.plan.lines.iter().enumerate() {
                let (_, amount) = content(line.demand);
                empty(out, "PRN", &[("A", &format!("PDT{}", number + 2)), ("B", &amount)])?;
            }
            Ok(())
        })?;
        for (number, line) in self.plan.lines.iter().enumerate() {
            let (entity, _) = content(line.demand);
            let (id, name) = (format!("PDT{}", number + 2), self.named(&line.name));
            empty(out, "PDT", &[("A", &id), ("B", &name), ("E", entity), ("F", "1")])?;
        }
        Ok(())
    }

    /// A name that fits, and a note where it is cut.
    fn named(&mut self, name: &str) -> String {
        let fits = named_within(name);
        if fits.len() < tidy(name).len() {
            let note = t!("file-is-cut-to-names-have-letters", name = tidy(name), fits = fits, letters = LETTERS);
            if !self.notes.contains(&note) {
                self.notes.push(note);
            }
        }
        fits
    }
}

fn named_within(name: &str) -> String {
    tidy(name).chars().take(LETTERS).collect::<String>().trim_end().to_owned()
}

/// A whole number within the bounds of the standard.
fn whole(value: f64) -> String {
    format!("{:.0}", value.round().clamp(0.0, LARGEST))
}

fn polygon(out: &mut Out, part: &Polygon<f64>) -> std::io::Result<()> {
    let rings = std::iter::once((part.exterior(), "1")).chain(part.interiors().iter().map(|hole| (hole, "2")));
    element(out, "PLN", &[("A", "1")], |out| {
        for (ring, kind) in rings {
            element(out, "LSG", &[("A", kind)], |out| ring.0.iter().try_for_each(|at| point(out, "2", "", *at)))?;
        }
        Ok(())
    })
}

/// Nine digits after the point, as many as the standard has: a tenth of a millimetre.
fn point(out: &mut Out, kind: &str, name: &str, at: geo::Coord<f64>) -> std::io::Result<()> {
    let degrees = |value: f64| {
        let text = format!("{value:.9}");
        text.trim_end_matches('0').trim_end_matches('.').to_owned()
    };
    let (north, east) = (degrees(at.y), degrees(at.x));
    let mut facts = vec![("A", kind)];
    if !name.is_empty() {
        facts.push(("B", name));
    }
    facts.extend([("C", north.as_str()), ("D", east.as_str())]);
    empty(out, "PNT", &facts)
}

fn start<'a>(name: &'a str, facts: &[(&'a str, &'a str)]) -> BytesStart<'a> {
    BytesStart::new(name).with_attributes(facts.iter().copied())
}

fn empty(out: &mut Out, name: &str, facts: &[(&str, &str)]) -> std::io::Result<()> {
    out.write_event(Event::Empty(start(name, facts)))
}

fn element(
    out: &mut Out,
    name: &str,
    facts: &[(&str, &str)],
    within: impl FnOnce(&mut Out) -> std::io::Result<()>,
) -> std::io::Result<()> {
    let start = start(name, facts);
    let end = start.to_end().into_owned();
    out.write_event(Event::Start(start))?;
    within(out)?;
    out.write_event(Event::End(end))
}
