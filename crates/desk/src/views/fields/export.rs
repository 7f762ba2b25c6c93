//! Boundaries out of the farm: as GeoJSON for other programs, and a pass as task data for the terminal in the cab.

use std::path::Path;

use egui::Context;
use tankard_core::farm::Id;
use tankard_core::t;
use tankard_file::ground::{write_geojson, write_taskdata};
use tankard_file::store::{self, Report};

use crate::app::{Desk, Failed, Going, Task};
use crate::files::Purpose;

/// The fields that have a boundary, and what lies among them.
fn drawn(desk: &Desk) -> Vec<Id> {
    let farm = desk.document.farm();
    let fields = farm.fields.iter().filter(|(_, field)| field.boundary.is_some()).map(|(id, _)| id);
    fields.chain(farm.surroundings.keys()).cloned().collect()
}

/// Asks where the boundaries are to be saved, where there are any.
pub(crate) fn ask_boundaries(desk: &mut Desk, ctx: &Context) {
    if drawn(desk).is_empty() {
        desk.tell_problem(t!("fields-no-field-has-a-boundary-and"));
        return;
    }
    let path = desk.beside("geojson");
    desk.ask_file(Purpose::SaveBoundaries, path, ctx);
}

/// Saves the boundaries as GeoJSON.
pub fn save_boundaries(desk: &mut Desk, path: &Path) {
    let path = if path.extension().is_some() { path.to_owned() } else { path.with_extension("geojson") };
    let ids = drawn(desk);
    let (snapshot, asked) = (desk.document.snapshot(), desk.moment());
    let count = ids.len();
    let to = path.clone();
    desk.start(
        Task::writing(&path, t!("fields-the-boundaries-were-not-saved")),
        move |going| {
            let text = write_geojson(&snapshot.into_farm(), &ids);
            put(&to, text.as_bytes(), going)
        },
        move |desk, ()| {
            let since = desk.since(asked);
            desk.tell(t!("fields-saved-as", count = count, path = path.display(), since = since));
        },
    );
}

fn put(path: &Path, bytes: &[u8], going: &Going) -> Result<(), Failed> {
    store::put_report_told(path, bytes, Report::Json, &|_, _| going.goes_on()).map_err(Failed::of)
}

/// The pass that is chosen in Tank loads, else the first of the farm.
fn pass(desk: &Desk) -> Option<Id> {
    let passes = &desk.document.farm().passes;
    let chosen = desk.tank_loads.chosen.clone().filter(|id| passes.contains_key(id));
    chosen.or_else(|| passes.keys().next().cloned())
}

/// Asks where the chosen pass is to be saved, where there is one that may be.
pub(crate) fn ask_task_data(desk: &mut Desk, ctx: &Context) {
    let Some(id) = pass(desk) else {
        desk.tell_problem(t!("fields-the-farm-has-no-pass-yet"));
        return;
    };
    match write_taskdata(desk.document.farm(), &id) {
        Ok(_) => {
            let path = desk.beside_as(&id, "-taskdata.zip");
            desk.ask_file(Purpose::SaveTaskData, path, ctx);
        }
        Err(why) => desk.tell_problem(t!("fields-no-task-data-of", name = name(desk, &id), why = why)),
    }
}

fn name(desk: &Desk, id: &Id) -> String {
    desk.document.farm().passes.get(id).map_or_else(|| id.clone(), |pass| pass.name.clone())
}

/// Saves the chosen pass as task data: packed as terminals take it, or as `.xml` alone.
pub fn save_task_data(desk: &mut Desk, path: &Path) {
    let path = if path.extension().is_some() { path.to_owned() } else { path.with_extension("zip") };
    let Some(id) = pass(desk) else { return };
    let is_plain = path.extension().is_some_and(|ending| ending.eq_ignore_ascii_case("xml"));
    let (snapshot, asked) = (desk.document.snapshot(), desk.moment());
    let (name, to) = (name(desk, &id), path.clone());
    desk.start(
        Task::writing(&path, t!("fields-the-task-data-was-not-saved")),
        move |going| {
            let task = write_taskdata(&snapshot.into_farm(), &id).map_err(Failed::Because)?;
            let notes = task.notes.clone();
            let bytes = if is_plain { Ok(task.xml.into_bytes()) } else { task.packed() };
            put(&to, &bytes.map_err(Failed::of)?, going)?;
            Ok(notes)
        },
        move |desk, notes| {
            let words =
                t!("fields-name-saved-as-path-since", name = name, path = path.display(), since = desk.since(asked));
            if notes.is_empty() {
                desk.tell(words);
            } else {
                desk.tell_problem(format!("{words}; {}", notes.join("; ")));
            }
        },
    );
}
