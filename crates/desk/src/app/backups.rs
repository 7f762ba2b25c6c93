//! The backups of the open farm: what each held, and putting one in the place of what is open.

use std::path::PathBuf;

use egui::{CentralPanel, Frame, Label, Margin, Panel, ScrollArea, Ui};
use jiff::civil::DateTime;
use tankard_core::farm::{Farm, differs};
use tankard_core::language::days;
use tankard_core::t;
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
                ui.label(look::title(t!("app-backups")));
                if boxes::act(ui, t!("app-back-to-the-farm")).clicked() {
                    is_open = false;
                }
            });
            if self.document.path().is_none() {
                boxes::say(ui, t!("app-this-farm-was-never-saved-from"));
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
        let task = Task::looks(t!("app-reading-the-backup", path = name_of(&path)), t!("app-the-backup-was-not-read"))
            .counting(t!("app-entry"), t!("app-entries"))
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
            boxes::say(ui, t!("app-there-is-no-backup-yet-from"));
            return false;
        };
        ui.add_space(look::GRID);
        ui.label(look::heading(words(backup)));
        ui.add(Label::new(look::soft(ui, backup.path.display().to_string())).wrap());
        ui.add_space(look::GRID);
        let read = state.read.as_ref().filter(|((path, _), _)| *path == backup.path);
        let Some((_, read)) = read else {
            if self.is_at_work(BACKUP) {
                boxes::say(ui, t!("app-it-is-being-read"));
            } else if boxes::act(ui, t!("app-read-it")).clicked() {
                state.asked = None;
            }
            return false;
        };
        match read {
            Err(why) => {
                ui.add(Label::new(t!("app-it-cannot-be-read", why = why)).wrap());
                false
            }
            Ok((_, lines)) if lines.is_empty() => {
                ui.label(t!("app-it-holds-what-is-open-here"));
                false
            }
            Ok((farm, lines)) => {
                ui.label(look::strong(t!("app-what-it-has-otherwise-than-what")));
                differences::all(ui, lines);
                ui.add_space(look::GRID);
                let is_wanted = ui.button(t!("app-restore-this-backup")).clicked();
                boxes::say(ui, t!("app-it-takes-the-place-of-what"));
                if is_wanted {
                    let farm = Farm::clone(farm);
                    let words = words(backup);
                    self.document.take_point();
                    self.document.take_up(farm);
                    self.document.take_point();
                    self.tell(t!("app-is-open-now-undo-takes-that", words = words));
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
            ui.label(t!("app-keep-the-latest"));
            boxes::count(ui, t!("app-how-many-of-the-latest-backups"), &mut keep.latest, 40.0);
        });
        ui.horizontal_wrapped(|ui| {
            ui.label(t!("app-and-the-last-of-each-day"));
            boxes::count(ui, t!("app-for-how-many-days-the-last"), &mut keep.days, 40.0);
            ui.label(t!("app-days"));
        });
        if keep != before {
            remembered.backups = Some((keep.latest.max(1), keep.days)).filter(|_| keep != Keep::default());
            remembered.keep();
        }
        if !list.is_empty() {
            let (all, most) = (size(list.iter().map(|backup| backup.size).sum()), size(backups::TOGETHER));
            boxes::say(ui, &t!("app-together-they-take-beyond-the-oldest", all = all, most = most));
        }
        boxes::say(ui, t!("app-at-the-next-save-the-others"));
        let folder = self.document.path().map(|path| backups::folder(path)).filter(|folder| folder.is_dir());
        if let Some(folder) = folder
            && boxes::act(ui, t!("app-show-the-folder")).on_hover_text(folder.display().to_string()).clicked()
            && let Err(error) = open::that_detached(&folder)
        {
            self.tell_problem(t!("app-the-folder-was-not-shown", error = error, folder = folder.display()));
        }
    }
}

fn list(ui: &mut Ui, state: &mut State) {
    ui.spacing_mut().item_spacing.y = 0.0;
    if state.list.is_empty() {
        lists::empty(ui, t!("app-each-save-keeps-what-the-file"));
    }
    for backup in &state.list {
        let is_chosen = state.chosen.as_ref() == Some(&backup.path);
        let (moment, size) = (moment(backup.made), size(backup.size));
        let response = lists::row(ui, is_chosen, &t!("app-backup-of", moment = moment, size = size), |ui| {
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
        return t!("app-the-file-before-the-last-save").to_owned();
    }
    t!("app-the-farm-as-it-was-before", made = moment(backup.made))
}

fn moment(made: DateTime) -> String {
    if made == DateTime::MIN {
        t!("app-no-moment-known").to_owned()
    } else {
        format!("{}:{:02}", days::moment(made), made.second())
    }
}

/// The size of a file as people say it.
fn size(bytes: u64) -> String {
    match bytes {
        0..1_000 => t!("app-bytes", bytes = bytes),
        1_000..1_000_000 => t!("app-kb", bytes = (bytes + 500) / 1_000),
        1_000_000..1_000_000_000 => format!("{:.1} MB", bytes as f64 / 1e6),
        _ => format!("{:.1} GB", bytes as f64 / 1e9),
    }
}
