//! The backups of the open farm: what each held, and putting one in the place of what is open.

use std::path::PathBuf;

use egui::{CentralPanel, Frame, Label, Margin, Panel, ScrollArea, Ui};
use jiff::civil::DateTime;
use tankard_core::farm::{Farm, differs};
use tankard_file::backups::{self, Backup, Keep};
use tankard_file::store;

use super::Desk;
use super::opening::name_of;
use super::work::{Failed, Task};
use crate::look;
use crate::parts::{boxes, differences, lists};

/// The name under which a backup is read.
const BACKUP: &str = "backup";

/// Width of the list.
const LIST: f32 = 300.0;

/// The page while it is open.
pub(super) struct State {
    list: Vec<Backup>,
    chosen: Option<PathBuf>,
    /// What the chosen one holds, and what differs.
    read: Option<(Asked, Read)>,
    /// What was asked for last.
    asked: Option<Asked>,
}

/// A backup, and the revision of the farm that it is held against.
type Asked = (PathBuf, u64);

/// A backup that was read, with what it has otherwise than the open farm; or why it does not read.
type Read = Result<(Box<Farm>, Vec<String>), String>;

impl Desk {
    /// Opens the page.
    pub(super) fn open_backups(&mut self) {
        let spare = self.remembered.as_ref().and_then(|remembered| remembered.folder.clone());
        let list = self.document.path().map(|path| backups::list(path, spare.as_deref())).unwrap_or_default();
        let chosen = list.first().map(|backup| backup.path.clone());
        self.backups = Some(State { list, chosen, read: None, asked: None });
    }

    /// The page in the place of the view.
    pub(super) fn show_backups(&mut self, ui: &mut Ui) {
        let Some(mut state) = self.backups.take() else { return };
        self.read_chosen(&mut state);
        let mut is_open = !super::foot::escape(ui);
        let ground = Frame::new().fill(look::colours(ui).ground).inner_margin(Margin::symmetric(14, 8));
        Panel::left("backups list").exact_size(LIST).resizable(false).frame(ground).show(ui, |ui| {
            Panel::bottom("backups kept").frame(Frame::new().inner_margin(Margin::symmetric(0, 6))).show(ui, |ui| {
                self.how_many(ui, &state.list);
            });
            ScrollArea::vertical().id_salt("backups").auto_shrink(false).show(ui, |ui| list(ui, &mut state));
        });
        CentralPanel::default().frame(ground).show(ui, |ui| {
            ui.horizontal(|ui| {
                ui.label(look::title("Backups"));
                if boxes::act(ui, "Back to the farm").clicked() {
                    is_open = false;
                }
            });
            if self.document.path().is_none() {
                boxes::say(
                    ui,
                    "This farm was never saved. From the second save on, what the file held before is kept.",
                );
                return;
            }
            ScrollArea::vertical().id_salt("backup").auto_shrink(false).show(ui, |ui| {
                is_open &= !self.chosen_backup(ui, &mut state);
            });
        });
        if is_open && self.backups.is_none() {
            self.backups = Some(state);
        }
    }

    /// Reads what is chosen, once for a state of the farm.
    fn read_chosen(&mut self, state: &mut State) {
        let Some(path) = state.chosen.clone() else { return };
        let asked = (path.clone(), self.document.revision());
        let is_known = state.read.as_ref().is_some_and(|(of, _)| *of == asked);
        if is_known || state.asked.as_ref() == Some(&asked) {
            return;
        }
        state.asked = Some(asked.clone());
        let open = self.document.snapshot();
        let task = Task::looks(format!("Reading the backup {}", name_of(&path)), "The backup was not read")
            .counting("entry", "entries")
            .in_place(BACKUP);
        self.start(
            task,
            move |going| {
                let read = match store::open_told(&path, &|done, of| going.tell(done, of)) {
                    Ok((farm, _)) => {
                        let lines = differs::between(&open.into_farm(), &farm).lines();
                        Ok((Box::new(farm), lines))
                    }
                    Err(_) if going.is_cancelled() => return Err(Failed::Cancelled),
                    Err(error) => Err(error.to_string()),
                };
                Ok(read)
            },
            move |desk, read| {
                if let Some(state) = &mut desk.backups {
                    state.read = Some((asked, read));
                }
            },
        );
    }

    /// What the chosen backup holds; gives whether it was put in the place of what is open.
    fn chosen_backup(&mut self, ui: &mut Ui, state: &mut State) -> bool {
        let Some(backup) = state.list.iter().find(|backup| Some(&backup.path) == state.chosen.as_ref()) else {
            boxes::say(ui, "There is no backup yet. From the second save on, what the file held before is kept.");
            return false;
        };
        ui.add_space(look::GRID);
        ui.label(look::heading(words(backup)));
        ui.add(Label::new(look::soft(ui, backup.path.display().to_string())).wrap());
        ui.add_space(look::GRID);
        let read = state.read.as_ref().filter(|((path, _), _)| *path == backup.path);
        let Some((_, read)) = read else {
            if self.is_at_work(BACKUP) {
                boxes::say(ui, "It is being read…");
            } else if boxes::act(ui, "Read it").clicked() {
                state.asked = None;
            }
            return false;
        };
        match read {
            Err(why) => {
                ui.add(Label::new(format!("It cannot be read: {why}")).wrap());
                false
            }
            Ok((_, lines)) if lines.is_empty() => {
                ui.label("It holds what is open here");
                false
            }
            Ok((farm, lines)) => {
                ui.label(look::strong("What it has otherwise than what is open here"));
                differences::all(ui, lines);
                ui.add_space(look::GRID);
                let is_wanted = ui.button("Restore this backup").clicked();
                boxes::say(
                    ui,
                    "It takes the place of what is open; undo takes that back. The file stays as it is until you save. Cards that were \
                     issued since stay, since the paper is out.",
                );
                if is_wanted {
                    let farm = Farm::clone(farm);
                    let words = words(backup);
                    self.document.take_point();
                    self.document.take_up(farm);
                    self.document.take_point();
                    self.tell(format!("{words} is open now; undo takes that back, and the file changes when you save"));
                    self.tell_seals();
                }
                is_wanted
            }
        }
    }

    /// How many backups stay, and where they are.
    fn how_many(&mut self, ui: &mut Ui, list: &[Backup]) {
        let Some(remembered) = &mut self.remembered else { return };
        let before = remembered.keep_backups();
        let mut keep = before;
        ui.horizontal_wrapped(|ui| {
            ui.label("Keep the latest");
            boxes::count(ui, "how many of the latest backups stay", &mut keep.latest, 40.0);
        });
        ui.horizontal_wrapped(|ui| {
            ui.label("and the last of each day for");
            boxes::count(ui, "for how many days the last backup of a day stays", &mut keep.days, 40.0);
            ui.label("days");
        });
        if keep != before {
            remembered.backups = Some((keep.latest.max(1), keep.days)).filter(|_| keep != Keep::default());
            remembered.keep();
        }
        if !list.is_empty() {
            let (all, most) = (size(list.iter().map(|backup| backup.size).sum()), size(backups::TOGETHER));
            boxes::say(ui, &format!("Together they take {all}; beyond {most} the oldest go."));
        }
        boxes::say(ui, "At the next save the others go. A file that you put into the folder yourself stays.");
        let folder = self.document.path().map(|path| backups::folder(path)).filter(|folder| folder.is_dir());
        if let Some(folder) = folder
            && boxes::act(ui, "Show the folder").on_hover_text(folder.display().to_string()).clicked()
            && let Err(error) = open::that_detached(&folder)
        {
            self.tell_problem(format!("The folder was not shown: {error}: {}", folder.display()));
        }
    }
}

fn list(ui: &mut Ui, state: &mut State) {
    ui.spacing_mut().item_spacing.y = 0.0;
    if state.list.is_empty() {
        lists::empty(ui, "Each save keeps what the file held before it.");
    }
    for backup in &state.list {
        let is_chosen = state.chosen.as_ref() == Some(&backup.path);
        let (moment, size) = (moment(backup.made), size(backup.size));
        let response = lists::row(ui, is_chosen, &format!("backup of {moment}, {size}"), |ui| {
            ui.label(if is_chosen { look::strong(&moment) } else { moment.clone().into() });
            ui.label(look::soft(ui, &size));
        });
        if response.clicked() {
            state.chosen = Some(backup.path.clone());
        }
    }
}

/// What a backup is, in words that stand alone.
fn words(backup: &Backup) -> String {
    if backup.made == DateTime::MIN {
        return "The file before the last save, by an earlier Tankard".to_owned();
    }
    format!("The farm as it was before the save of {}", moment(backup.made))
}

fn moment(made: DateTime) -> String {
    if made == DateTime::MIN { "no moment known".to_owned() } else { made.strftime("%Y-%m-%d %H:%M:%S").to_string() }
}

/// The size of a file as people say it.
fn size(bytes: u64) -> String {
    match bytes {
        0..1_000 => format!("{bytes} bytes"),
        1_000..1_000_000 => format!("{} kB", (bytes + 500) / 1_000),
        1_000_000..1_000_000_000 => format!("{:.1} MB", bytes as f64 / 1e6),
        _ => format!("{:.1} GB", bytes as f64 / 1e9),
    }
}
