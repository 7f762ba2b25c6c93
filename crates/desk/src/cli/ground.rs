//! Boundaries from a file, looked at; and those of the farm, to a file.

use std::fmt::Write as _;
use std::path::{Path, PathBuf};

use clap::Args;
use tankard_core::farm::{Farm, Id};
use tankard_core::progress::untold;
use tankard_core::quantity::Quantity;
use tankard_core::t;
use tankard_file::ground::{Becomes, Found, open, suggest, take, write_geojson, write_taskdata};
use tankard_file::store::{self, Report};

use super::{CHECK, NOTHING, STOP, farm_of, must_be_new, problem_with, say, say_written, tell};

/// What is asked of a file of boundaries.
#[derive(Debug, Args)]
pub(super) struct Look {
    /// The farm
    file: PathBuf,
    /// The boundaries: GeoJSON, a shapefile (.shp), KML or KMZ, task data (TASKDATA.XML), or these in a .zip
    boundaries: PathBuf,
    /// Where to write the farm with the boundaries in it; a file that is there already is left alone
    #[arg(long)]
    out: Option<PathBuf>,
}

/// What is asked of the farm's boundaries.
#[derive(Debug, Args)]
pub(super) struct Give {
    /// The farm
    file: PathBuf,
    /// Where to write them: .geojson or .json; with --pass .xml, or .zip as terminals take it
    #[arg(long)]
    out: PathBuf,
    /// As task data of this pass (ISO 11783-10), with its products and its spray volume
    #[arg(long)]
    pass: Option<String>,
}

/// Lists what a file holds, and takes it where it is asked to.
pub(super) fn look(ask: &Look) -> Result<u8, String> {
    let farm = farm_of(&ask.file)?;
    let near = farm.place.as_ref().and_then(|place| place.position().ok());
    let found = open(&ask.boundaries, near, &untold).map_err(|error| problem_with(&ask.boundaries, &error))?;
    let becomes = suggest(&farm, &found);
    say(&listed(&farm, &found, &becomes).map_err(|error| error.to_string())?)?;
    if let Some(out) = &ask.out {
        must_be_new(out)?;
        let (farm, taken) = take(&farm, &found, &becomes);
        for note in &taken.notes {
            tell(note);
        }
        store::save(out, &farm, None).map_err(|error| error.to_string())?;
        say_written(&t!(
            "cli-ground-taken",
            fields = taken.fields.len(),
            boundaries = taken.boundaries.len(),
            surroundings = taken.surroundings.len(),
            path = out.display()
        ))?;
    }
    Ok(match (found.pieces.is_empty(), found.refused.is_empty()) {
        (true, _) => STOP,
        (false, false) => CHECK,
        (false, true) => 0,
    })
}

fn listed(farm: &Farm, found: &Found, becomes: &[Becomes]) -> Result<String, std::fmt::Error> {
    let mut out = String::new();
    let (pieces, refused) = (found.pieces.len(), found.refused.len());
    writeln!(out, "{}", t!("cli-ground-found", kind = found.kind.name(), found = pieces, refused = refused))?;
    for note in &found.notes {
        writeln!(out, "  {}", t!("cli-ground-note", note = note))?;
    }
    let name = |id: &Id| farm.fields.get(id).map_or(id.as_str(), |field| field.name.as_str()).to_owned();
    for (piece, becomes) in found.pieces.iter().zip(becomes) {
        let area = if piece.shape.polygons().is_some() { piece.shape.area().show(farm.units) } else { String::new() };
        let becomes = match becomes {
            Becomes::NewField => t!("cli-ground-new-field").to_owned(),
            Becomes::Boundary(id) => t!("cli-ground-boundary-of", name = name(id)),
            Becomes::Surrounding(kind) => t!("cli-ground-among", kind = kind.name()),
            Becomes::Gateway(id) => t!("cli-ground-gateway", name = name(id)),
            Becomes::Nothing => t!("cli-ground-left-out").to_owned(),
        };
        writeln!(out, "  {:<32} {area:>14}  {becomes}", piece.name)?;
        for mended in &piece.mended {
            writeln!(out, "    {}", t!("cli-ground-mended", mended = mended))?;
        }
    }
    for refused in &found.refused {
        let name = if refused.name.is_empty() { &refused.place } else { &refused.name };
        writeln!(out, "  {name:<32} {:>14}  {} ({})", t!("cli-ground-refused"), refused.why, refused.place)?;
    }
    Ok(out)
}

/// Writes the farm's boundaries.
pub(super) fn give(ask: &Give) -> Result<u8, String> {
    let farm = farm_of(&ask.file)?;
    let ending = ask.out.extension().map(|ending| ending.to_string_lossy().to_lowercase()).unwrap_or_default();
    match (&ask.pass, ending.as_str()) {
        (None, "geojson" | "json") => geojson(&farm, &ask.out),
        (Some(pass), "xml" | "zip") => {
            let task = match write_taskdata(&farm, pass) {
                Ok(task) => task,
                Err(problem) => {
                    tell(t!("cli-no-task-data", pass = pass, problem = problem));
                    return Ok(STOP);
                }
            };
            for note in &task.notes {
                tell(note);
            }
            let bytes = if ending == "zip" { task.packed() } else { Ok(task.xml.into_bytes()) };
            let bytes = bytes.map_err(|error| error.to_string())?;
            store::put_report(&ask.out, &bytes, Report::Json).map_err(|error| error.to_string())?;
            say_written(&t!("cli-task-data-written", path = ask.out.display()))?;
            Ok(if task.notes.is_empty() { 0 } else { CHECK })
        }
        (None, _) => Err(t!("cli-boundaries-are-geojson", path = ask.out.display())),
        (Some(_), _) => Err(t!("cli-task-data-is-xml", path = ask.out.display())),
    }
}

fn geojson(farm: &Farm, out: &Path) -> Result<u8, String> {
    let drawn = farm.fields.iter().filter(|(_, field)| field.boundary.is_some()).map(|(id, _)| id);
    let ids: Vec<Id> = drawn.chain(farm.surroundings.keys()).cloned().collect();
    if ids.is_empty() {
        tell(t!("cli-no-boundary"));
        return Ok(NOTHING);
    }
    let text = write_geojson(farm, &ids);
    store::put_report(out, text.as_bytes(), Report::Json).map_err(|error| error.to_string())?;
    say_written(&t!("cli-boundaries-written", count = ids.len(), path = out.display()))?;
    Ok(0)
}
