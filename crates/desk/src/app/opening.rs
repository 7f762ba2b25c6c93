//! Opening a farm on a thread: the one that is open stays to be worked on until the other one is read; where there is none yet, the
//! window says what it reads.

use std::path::{Path, PathBuf};

use egui::{Align, CentralPanel, Context, Frame, Layout, Ui};
use tankard_core::farm::Farm;
use tankard_core::t;

use super::work::{Failed, Task};
use super::{Desk, recovery};
use crate::command::Command;
use crate::document::Document;
use crate::look;

/// The name under which a farm is read.
pub(super) const OPENING: &str = "opening";

/// The name of a file without its folders.
pub(super) fn name_of(path: &Path) -> String {
    path.file_name().map_or_else(|| path.display().to_string(), |name| name.to_string_lossy().into_owned())
}

impl Desk {
    /// A desk that begins with a file: it is read while the window is there already.
    pub fn opening(path: &Path, clock: super::Clock) -> Self {
        let mut desk = Self::new(Document::copy(Farm::new(&name_of(path))), clock);
        desk.is_opening_first = true;
        desk
    }

    /// Gives the desk its window before the first frame, so that work begun before it is noticed.
    #[must_use]
    pub fn within(mut self, ctx: &Context) -> Self {
        self.ctx = Some(ctx.clone());
        self
    }

    /// Reads a farm and puts it in the place of the one that is open.
    pub fn open_path(&mut self, path: &Path) {
        let spare = self.spare();
        let task = Task::reading(path, t!("app-the-farm-was-not-opened"))
            .counting(t!("app-entry"), t!("app-entries"))
            .in_place(OPENING);
        let (from, path) = (path.to_owned(), path.to_owned());
        self.start(
            task,
            move |going| match Document::open_told(from.clone(), &|done, of| going.tell(done, of)) {
                Ok(mut document) => {
                    document.plan_ahead(&|_, _| going.goes_on())?;
                    Ok(Ok(document))
                }
                Err(_) if going.is_cancelled() => Err(Failed::Cancelled),
                Err(error) => Ok(Err(recovery::not_read(&from, &error, spare.as_deref()))),
            },
            move |desk, read| match read {
                Ok(document) => desk.opened(document, &path),
                Err(not_read) => desk.not_opened(not_read),
            },
        );
    }

    fn opened(&mut self, document: Document, path: &Path) {
        // What was begun while it was being read is asked about or waited for, as when it was there before.
        let again = Command::OpenPath(path.to_owned());
        let holds = self.document.is_unsaved()
            || self.is_saving()
            || self.season_log.begun_amendment(self.document.farm()).is_some()
            || self.waited_for(&super::leaving(&again)).is_some();
        if let (true, Some(ctx)) = (holds, self.ctx.clone()) {
            self.run(again, &ctx);
            return;
        }
        self.replace(document);
        if let Some(remembered) = &mut self.remembered {
            remembered.opened(path);
            remembered.keep();
        }
    }

    /// Where the desk puts what has no place beside the farm.
    pub(super) fn spare(&self) -> Option<PathBuf> {
        self.remembered.as_ref().and_then(|remembered| remembered.folder.clone())
    }

    /// Where the first farm is not read, an empty one is there to begin with.
    pub(super) fn gave_up_first(&mut self) {
        if std::mem::take(&mut self.is_opening_first) {
            self.document = Document::copy(Farm::new(tankard_core::begin::new_farm()));
            self.look_for_unsaved();
            self.tell_of_others();
        }
    }

    /// What stands in the window while there is no farm yet.
    pub(super) fn show_opening(&self, ui: &mut Ui) {
        let colours = look::colours(ui);
        CentralPanel::default().frame(Frame::new().fill(colours.ground)).show(ui, |ui| {
            let Some((words, so_far)) = self.first_work() else { return };
            ui.with_layout(Layout::top_down(Align::Center), |ui| {
                ui.add_space(ui.available_height() * 0.4);
                ui.label(look::title(format!("{words}…")));
                ui.label(look::soft(ui, so_far));
            });
        });
    }
}
