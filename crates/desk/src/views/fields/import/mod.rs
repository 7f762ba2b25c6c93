//! Boundaries from a file: what it holds is listed, and for each piece a person says what becomes of it. Nothing enters the farm before it
//! is taken, and one undo takes it back.

mod compared;
mod piece;
mod thumb;

use std::path::Path;

use egui::{Margin, ScrollArea, Ui};
use tankard_core::finding::Level;
use tankard_core::t;
use tankard_core::words::capital;
use tankard_file::ground::{self, Becomes, Found, GroundError, Taken};

use crate::app::{Desk, Failed, Task};
use crate::command::View;
use crate::look;
use crate::parts::{boxes, mark};

/// Width of the page.
const PAGE: f32 = 980.0;
/// So many refused pieces are shown at once.
const FEW: usize = 6;

/// A file that is looked at.
#[derive(Debug, Default)]
pub(super) struct State {
    coming: Option<Box<Coming>>,
}

impl State {
    /// Whether a file is looked at.
    pub(super) fn is_open(&self) -> bool {
        self.coming.is_some()
    }
}

#[derive(Debug)]
struct Coming {
    source: String,
    found: Found,
    /// What becomes of each piece.
    becomes: Vec<Becomes>,
    /// Each piece drawn small.
    thumbs: Vec<thumb::Thumb>,
    /// What is said beside each piece, for a state of the farm and of the choices.
    compared: Vec<compared::Compared>,
    revision: u64,
    /// The first shown of what is refused.
    refused: usize,
}

impl Coming {
    /// How many pieces are taken.
    fn taken(&self) -> usize {
        self.becomes.iter().filter(|becomes| **becomes != Becomes::Nothing).count()
    }
}

/// Looks at the file that was chosen.
pub fn read_file(desk: &mut Desk, path: &Path) {
    let near = desk.document.farm().place.as_ref().and_then(|place| place.position().ok());
    let (revision, snapshot) = (desk.document.revision(), desk.document.snapshot());
    let path = path.to_owned();
    desk.start(
        Task::reading(&path, t!("fields-the-boundaries-were-not-read"))
            .counting(t!("fields-piece"), t!("fields-pieces"))
            .in_place("boundaries"),
        move |going| {
            let found = ground::open(&path, near, &|done, of| going.tell(done, of)).map_err(|error| match error {
                // It names the file by itself.
                GroundError::Io { .. } => Failed::of(error),
                _ => Failed::Because(format!("{error}: {}", path.display())),
            })?;
            let farm = snapshot.into_farm();
            let source = path.file_name().map(|name| name.to_string_lossy().into_owned()).unwrap_or_default();
            let becomes = ground::suggest(&farm, &found);
            going.goes_on()?;
            let thumbs = found.pieces.iter().map(|piece| thumb::Thumb::of(&piece.shape)).collect();
            let compared = compared::all(&farm, &found, &becomes);
            Ok(Box::new(Coming { source, found, becomes, thumbs, compared, revision, refused: 0 }))
        },
        |desk, coming| {
            let source = coming.source.clone();
            desk.fields.import.coming = Some(coming);
            desk.tell_where(View::Fields, &t!("fields-is-read", source = source));
        },
    );
}

/// Shows the page.
pub(super) fn show(desk: &mut Desk, ui: &mut Ui) {
    let Some(mut coming) = desk.fields.import.coming.take() else { return };
    let before = coming.becomes.clone();
    let mut is_done = false;
    egui::Frame::new().inner_margin(Margin::symmetric(16, 10)).show(ui, |ui| {
        ui.add(egui::Label::new(look::title(t!("fields-boundaries-from", source = coming.source))).truncate());
        said(ui, &coming);
        ui.horizontal_wrapped(|ui| {
            is_done = end(desk, ui, &coming);
            if boxes::act(ui, t!("fields-leave-all-out")).clicked() {
                coming.becomes.fill(Becomes::Nothing);
            }
            if boxes::act(ui, t!("fields-as-suggested")).clicked() {
                coming.becomes = ground::suggest(desk.document.farm(), &coming.found);
            }
        });
        ui.add_space(4.0);
        refused(ui, &mut coming);
        look::sheet(ui).show(ui, |ui| {
            ui.set_width(PAGE.min(ui.available_width()));
            pieces(desk, ui, &mut coming);
        });
    });
    if is_done {
        return;
    }
    // The farm may have been changed meanwhile, and so may what is chosen.
    if coming.becomes != before || coming.revision != desk.document.revision() {
        coming.revision = desk.document.revision();
        coming.compared = compared::all(desk.document.farm(), &coming.found, &coming.becomes);
    }
    desk.fields.import.coming = Some(coming);
}

fn said(ui: &mut Ui, coming: &Coming) {
    let (count, kind) = (coming.found.pieces.len(), coming.found.kind.name());
    let words = match coming.found.refused.len() {
        0 => t!("fields-of-ground-in-this-file-nothing", count = count, kind = kind),
        refused => t!("fields-of-ground-in-this-file-refused", count = count, kind = kind, refused = refused),
    };
    boxes::say(ui, &words);
    for note in &coming.found.notes {
        mark::line(ui, Level::Check, &format!("{}.", capital(note)));
    }
}

fn pieces(desk: &Desk, ui: &mut Ui, coming: &mut Coming) {
    let all = coming.found.pieces.len();
    if all == 0 {
        boxes::say(ui, t!("fields-the-file-holds-nothing-that-can"));
        return;
    }
    let widths = piece::Widths::of(ui);
    piece::head(ui, &widths);
    ScrollArea::vertical().auto_shrink([false, true]).show_rows(ui, piece::HEIGHT, all, |ui, rows| {
        ui.spacing_mut().item_spacing.y = 0.0;
        for at in rows {
            let (Some(piece), Some(becomes), Some(thumb), Some(compared)) = (
                coming.found.pieces.get(at),
                coming.becomes.get_mut(at),
                coming.thumbs.get(at),
                coming.compared.get(at),
            ) else {
                continue;
            };
            ui.push_id(at, |ui| piece::show(ui, &widths, desk.document.farm(), (piece, thumb, compared), becomes));
        }
    });
}

fn refused(ui: &mut Ui, coming: &mut Coming) {
    let all = coming.found.refused.len();
    if all == 0 {
        return;
    }
    ui.horizontal_wrapped(|ui| {
        mark::show(ui, Level::Check);
        ui.label(look::strong(t!("fields-pieces-are-refused", count = all)));
        if all > FEW {
            let last = (coming.refused + FEW).min(all);
            ui.label(look::soft(ui, t!("fields-to", first = coming.refused + 1, last = last)));
            if boxes::act(ui, t!("fields-those-before"))
                .accessible_name(t!("fields-refused-pieces-before-these"))
                .clicked()
            {
                coming.refused = coming.refused.saturating_sub(FEW);
            }
            if boxes::act(ui, t!("fields-those-after"))
                .accessible_name(t!("fields-refused-pieces-after-these"))
                .clicked()
                && last < all
            {
                coming.refused += FEW;
            }
        }
    });
    for refused in coming.found.refused.iter().skip(coming.refused).take(FEW) {
        let name = if refused.name.is_empty() {
            refused.place.clone()
        } else {
            format!("{} ({})", refused.name, refused.place)
        };
        boxes::say(ui, &format!("{name}: {}", refused.why));
    }
    ui.add_space(4.0);
}

/// The two acts at the end; gives whether the file is done with.
fn end(desk: &mut Desk, ui: &mut Ui, coming: &Coming) -> bool {
    let taken = coming.taken();
    let take = ui.add_enabled(taken > 0, egui::Button::new(t!("fields-take", count = taken)));
    if take.on_disabled_hover_text(t!("fields-nothing-of-it-is-chosen")).clicked() {
        let (farm, taken) = ground::take(desk.document.farm(), &coming.found, &coming.becomes);
        desk.document.edit(|now| *now = farm);
        tell(desk, coming, &taken);
        desk.fields.chosen = taken.fields.first().or(taken.boundaries.first()).cloned().or(desk.fields.chosen.take());
        desk.fields.reveal = true;
        return true;
    }
    boxes::act(ui, t!("fields-leave-it")).accessible_name(t!("fields-leave-the-file")).clicked()
}

fn tell(desk: &mut Desk, coming: &Coming, taken: &Taken) {
    let all = [
        (taken.fields.len(), t!("fields-new-fields", count = taken.fields.len())),
        (taken.boundaries.len(), t!("fields-boundaries", count = taken.boundaries.len())),
        (taken.surroundings.len(), t!("fields-things-among-the-fields", count = taken.surroundings.len())),
        (taken.gateways, t!("fields-gateways", count = taken.gateways)),
    ];
    let words: Vec<String> = all.into_iter().filter(|(count, _)| *count > 0).map(|(_, words)| words).collect();
    let words = if words.is_empty() { t!("fields-nothing").to_owned() } else { words.join(", ") };
    let text = t!("fields-taken-from", words = words, source = coming.source);
    if taken.notes.is_empty() {
        desk.tell(text);
    } else {
        desk.tell_problem(format!("{text}; {}", taken.notes.join("; ")));
    }
}
