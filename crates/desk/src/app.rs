//! The desk: what runs across all views (opening, saving, undo, closing), with its bar, its foot and its window.

mod bar;
mod foot;
mod window;

pub use window::open;

use std::path::{Path, PathBuf};
use std::time::{Duration, Instant};

use egui::{CentralPanel, Context, Ui, ViewportCommand};
use jiff::ZonedDateTime;
use jiff::civil::DateTime;
use jiff::tz::TimeZone;
use tankard_core::farm::{Farm, Id};
use tankard_core::finding::Subject;
use tankard_file::side;

use crate::command::{Command, View};
use crate::document::Document;
use crate::files::{Picker, Purpose};
use crate::parts::boxes;
use crate::recent::Remembered;
use crate::{demo, look, views};

/// How long work may stay only in memory.
const KEEP_EVERY: Duration = Duration::from_secs(15);

/// The clock: the present moment in a time zone. A test gives its own.
pub type Clock = fn(zone: &str) -> DateTime;

/// The machine's clock, in the farm's time zone where that is known.
pub fn machine_clock(zone: &str) -> DateTime {
    let now = ZonedDateTime::now();
    TimeZone::get(zone).map_or_else(|_| now.datetime(), |zone| now.with_time_zone(zone).datetime())
}

/// What waits for an answer before unsaved work may go.
#[derive(Clone, Debug, PartialEq)]
enum Leaving {
    Quit,
    To(Command),
}

/// What the bar at the foot says.
struct Notice {
    text: String,
    is_problem: bool,
}

/// Work of an earlier run that waits to be taken up or dropped. Until then its side file is left alone.
struct Found {
    farm: Farm,
    /// Whether the file is no longer what the work began from.
    is_file_changed: bool,
}

/// How unsaved work was kept in the side file.
struct Keeping {
    /// Which state of the document is there; none where that is not known.
    state: Option<(u64, usize)>,
    /// When it was last tried.
    at: Instant,
    /// Whether this run wrote the side file.
    written: bool,
    /// Whether it was said that it fails.
    told: bool,
}

impl Keeping {
    fn none() -> Self {
        Self { state: None, at: Instant::now(), written: false, told: false }
    }
}

/// The desk.
pub struct Desk {
    /// The open farm.
    pub document: Document,
    /// The view in use.
    pub view: View,
    /// What is chosen in Fields.
    pub fields: views::fields::State,
    /// What is chosen in Tank loads.
    pub tank_loads: views::tank_loads::State,
    /// What is chosen in Season log.
    pub season_log: views::season_log::State,
    /// What is chosen in Shed.
    pub shed: views::shed::State,
    /// Boxes that hold a text that is not understood.
    pub unread: Vec<boxes::Unread>,
    clock: Clock,
    picker: Option<Picker>,
    leaving: Option<Leaving>,
    leave_after_save: Option<Leaving>,
    closing: bool,
    /// A file there is already, over which the farm is to be saved.
    saving_over: Option<PathBuf>,
    notice: Option<Notice>,
    found: Option<Found>,
    remembered: Option<Remembered>,
    kept: Keeping,
    keep_every: Duration,
    shown_title: String,
    /// What had the keyboard in the last frame.
    focused: Option<egui::Id>,
}

impl Desk {
    /// A desk on a document. Nothing is remembered between runs until [`Desk::remember`] is called.
    pub fn new(document: Document, clock: Clock) -> Self {
        let mut desk = Self {
            document,
            view: View::default(),
            fields: views::fields::State::default(),
            tank_loads: views::tank_loads::State::default(),
            season_log: views::season_log::State::default(),
            shed: views::shed::State::default(),
            unread: Vec::new(),
            clock,
            picker: None,
            leaving: None,
            leave_after_save: None,
            closing: false,
            saving_over: None,
            notice: None,
            found: None,
            remembered: None,
            kept: Keeping::none(),
            keep_every: KEEP_EVERY,
            shown_title: String::new(),
            focused: None,
        };
        desk.tell_seals();
        desk
    }

    /// Says which signed records were changed outside of an amendment.
    fn tell_seals(&mut self) {
        if let Some(words) = views::season_log::on_opening(self.document.farm()) {
            self.tell_problem(words);
        }
    }

    /// Remembers opened farms and the look in the user's configuration folder.
    #[must_use]
    pub fn remember(mut self, mut remembered: Remembered) -> Self {
        if let Some(path) = self.document.path() {
            remembered.opened(path);
            remembered.keep();
        }
        self.remembered = Some(remembered);
        self.look_for_unsaved();
        self
    }

    /// Keeps unsaved work after another time than the usual 15 seconds.
    #[must_use]
    pub fn keep_every(mut self, time: Duration) -> Self {
        self.keep_every = time;
        self
    }

    /// The present moment by the farm's clock.
    pub fn now(&self) -> DateTime {
        let zone = self.document.farm().place.as_ref().map_or("", |place| place.zone.as_str());
        (self.clock)(zone)
    }

    /// Says something at the foot of the window.
    pub fn tell(&mut self, text: impl Into<String>) {
        self.notice = Some(Notice { text: text.into(), is_problem: false });
    }

    /// Says at the foot of the window what went wrong.
    pub fn tell_problem(&mut self, text: impl Into<String>) {
        self.notice = Some(Notice { text: text.into(), is_problem: true });
    }

    /// Asks for a file; what follows depends on its purpose.
    pub fn ask_file(&mut self, purpose: Purpose, suggested: PathBuf, ctx: &Context) {
        self.forget_questions();
        self.picker = Some(Picker::ask(purpose, suggested, ctx));
    }

    /// Asks for a file with the path box inside the window.
    pub fn ask_path(&mut self, purpose: Purpose, suggested: PathBuf) {
        self.forget_questions();
        self.picker = Some(Picker::type_path(purpose, suggested));
    }

    /// A file asked for anew takes the place of the one asked for before, and of what was to follow that.
    fn forget_questions(&mut self) {
        self.picker = None;
        self.saving_over = None;
        self.leave_after_save = None;
    }

    /// Where a file with this ending would be put beside the farm.
    pub fn beside(&self, ending: &str) -> PathBuf {
        match self.document.path() {
            Some(path) => path.with_extension(ending),
            None => PathBuf::from(format!(
                "{}.{ending}",
                tankard_core::farm::id::fresh(&indexmap::IndexMap::<Id, ()>::new(), &self.document.farm().name)
            )),
        }
    }

    /// Leads to what a finding speaks of.
    pub fn lead_to(&mut self, subject: &Subject) {
        match subject {
            Subject::Farm => {
                self.view = View::Shed;
                self.shed.choose_farm();
            }
            Subject::Pass(id) => {
                self.view = View::TankLoads;
                self.tank_loads.choose(id);
            }
            Subject::Field(id) => {
                self.view = View::Fields;
                self.fields.map.open = false;
                self.fields.chosen = Some(id.clone());
                self.fields.page = views::fields::Page::Typed;
            }
            Subject::Product(id) => {
                self.view = View::Shed;
                self.shed.choose_product(id);
            }
            Subject::Water(id) => {
                self.view = View::Shed;
                self.shed.choose_water(id);
            }
            Subject::Rig(id) => {
                self.view = View::Shed;
                self.shed.choose_rig(id);
            }
            Subject::Load(number) => {
                self.view = View::TankLoads;
                self.tank_loads.load = *number;
            }
            Subject::Record(id) => {
                self.view = View::SeasonLog;
                self.season_log.chosen = Some(id.clone());
            }
        }
    }

    /// Leads to an amendment that is begun, since it is in no file before it is kept; gives whether there is one.
    fn is_held_back(&mut self) -> bool {
        let Some(id) = self.season_log.begun_amendment(self.document.farm()) else { return false };
        self.lead_to(&Subject::Record(id));
        self.tell_problem("An amendment is begun here; keep it or leave the record as it was first");
        true
    }

    /// Does a command.
    pub fn run(&mut self, command: Command, ctx: &Context) {
        let leaves =
            matches!(command, Command::New | Command::Open | Command::OpenPath(_) | Command::OpenDemo | Command::Quit);
        if leaves && self.is_held_back() {
            return;
        }
        match command {
            Command::New | Command::OpenPath(_) | Command::OpenDemo if self.document.is_unsaved() => {
                self.leaving = Some(Leaving::To(command));
            }
            Command::Open if self.document.is_unsaved() => self.leaving = Some(Leaving::To(Command::Open)),
            Command::Quit if self.document.is_unsaved() => self.leaving = Some(Leaving::Quit),
            other => self.run_now(other, ctx),
        }
    }

    fn run_now(&mut self, command: Command, ctx: &Context) {
        match command {
            Command::New => self.replace(Document::copy(Farm::new("New farm"))),
            Command::Open => {
                let start = self.document.path().cloned().unwrap_or_default();
                self.ask_file(Purpose::OpenFarm, start, ctx);
            }
            Command::OpenPath(path) => self.open_path(&path),
            Command::OpenDemo => match demo::farm() {
                Ok(farm) => self.replace(Document::copy(farm)),
                Err(error) => self.tell_problem(error.to_string()),
            },
            Command::Save => {
                if self.document.path().is_some() {
                    self.save();
                } else {
                    self.run_now(Command::SaveAs, ctx);
                }
            }
            Command::SaveAs => {
                let path = self.document.path().cloned().unwrap_or_else(|| self.beside("ron"));
                self.ask_file(Purpose::SaveFarm, path, ctx);
            }
            Command::FarmPage => {
                self.view = View::Shed;
                self.shed.choose_farm();
            }
            Command::ImportBoundaries => {
                self.view = View::Fields;
                let start = self.document.path().cloned().unwrap_or_default().with_file_name("");
                self.ask_file(Purpose::ReadBoundaries, start, ctx);
            }
            Command::ExportBoundaries => views::fields::export::ask_boundaries(self, ctx),
            Command::ExportTaskData => views::fields::export::ask_task_data(self, ctx),
            Command::Undo => self.document.undo(),
            Command::Redo => self.document.redo(),
            Command::Go(view) => self.view = view,
            Command::Larger => scale(ctx, ctx.zoom_factor() + 0.1),
            Command::Smaller => scale(ctx, ctx.zoom_factor() - 0.1),
            Command::PlainSize => scale(ctx, 1.0),
            Command::Light => ctx.set_theme(egui::Theme::Light),
            Command::Dark => ctx.set_theme(egui::Theme::Dark),
            Command::Quit => {
                self.closing = true;
                ctx.send_viewport_cmd(ViewportCommand::Close);
            }
        }
        self.note_look(ctx);
    }

    fn note_look(&mut self, ctx: &Context) {
        let Some(remembered) = &mut self.remembered else { return };
        let mut now = remembered.clone();
        now.dark = ctx.theme() == egui::Theme::Dark;
        // Between 80 and 200 by construction.
        #[allow(clippy::cast_possible_truncation, clippy::cast_sign_loss)]
        let scale = (ctx.zoom_factor() * 100.0).round() as u16;
        now.scale = scale;
        if now != *remembered {
            now.keep();
            *remembered = now;
        }
    }

    fn replace(&mut self, document: Document) {
        self.document = document;
        self.fields = views::fields::State::default();
        self.tank_loads = views::tank_loads::State::default();
        self.season_log = views::season_log::State::default();
        self.shed = views::shed::State::default();
        self.notice = None;
        // A file asked for before was asked for the farm that is gone.
        self.forget_questions();
        self.leaving = None;
        self.kept = Keeping::none();
        self.tell_seals();
        self.look_for_unsaved();
    }

    /// Where unsaved work is kept: beside the farm, or where the desk remembers things for a farm that has no file.
    fn side(&self) -> Option<PathBuf> {
        match self.document.path() {
            Some(path) => Some(side::beside(path)),
            None => self.remembered.as_ref()?.never_saved(),
        }
    }

    fn look_for_unsaved(&mut self) {
        self.found =
            self.side().and_then(|side| side::find(&side)).filter(|kept| kept.farm != *self.document.farm()).map(
                |kept| Found {
                    farm: kept.farm,
                    is_file_changed: kept.begun_from.is_some() && kept.begun_from != self.document.stamp(),
                },
            );
    }

    /// Drops what this run kept, once it is saved or let go. What an earlier run kept stays until it is answered.
    fn drop_kept(&mut self) {
        if self.found.is_none()
            && let Some(side) = self.side()
        {
            side::drop(&side);
        }
        self.kept = Keeping::none();
    }

    /// Keeps unsaved work in the side file. Where that fails it is said once, and tried again.
    pub(crate) fn keep(&mut self) {
        if self.found.is_some() {
            return;
        }
        let Some(side) = self.side() else { return };
        self.kept.at = Instant::now();
        match side::keep(&side, self.document.farm(), self.document.stamp()) {
            Ok(()) => {
                self.kept.state = Some(self.state());
                self.kept.written = true;
                self.kept.told = false;
            }
            Err(error) if !self.kept.told => {
                self.kept.told = true;
                self.tell_problem(format!(
                    "Unsaved work is only in memory: {error}. It will be tried again; save to be sure"
                ));
            }
            Err(error) => log::warn!("unsaved work could not be kept: {error}"),
        }
    }

    /// Which state of the document this is. Issuing cards is no revision, but must be kept too.
    fn state(&self) -> (u64, usize) {
        (self.document.revision(), self.document.farm().cards.len())
    }

    fn open_path(&mut self, path: &Path) {
        match Document::open(path.to_owned()) {
            Ok(document) => {
                self.replace(document);
                if let Some(remembered) = &mut self.remembered {
                    remembered.opened(path);
                    remembered.keep();
                }
            }
            Err(error) => self.tell_problem(format!("The farm was not opened: {error}")),
        }
    }

    fn save(&mut self) -> bool {
        match self.document.save() {
            Ok(()) => {
                self.drop_kept();
                self.tell("Saved");
                true
            }
            Err(error) => {
                self.tell_problem(format!("The farm was not saved: {error}"));
                false
            }
        }
    }

    /// Takes the file that was chosen.
    fn chosen(&mut self, purpose: Purpose, path: PathBuf, ctx: &Context) {
        match purpose {
            Purpose::OpenFarm => self.open_path(&path),
            Purpose::SaveFarm => {
                let path = if path.extension().is_some() { path } else { path.with_extension("ron") };
                if self.document.path().is_some_and(|own| is_same(own, &path)) {
                    let saved = self.save();
                    if let (true, Some(leaving)) = (saved, self.leave_after_save.take()) {
                        self.leave(leaving, ctx);
                    }
                } else if path.is_file() {
                    self.saving_over = Some(path);
                } else {
                    self.save_as(&path, ctx);
                }
            }
            Purpose::SaveCards | Purpose::SaveSheet => views::tank_loads::cards::save(self, &path),
            Purpose::SaveJar => views::tank_loads::jar::save(self, &path),
            Purpose::SaveReview => views::season_log::review::save(self, path),
            Purpose::SaveRecords | Purpose::SaveRecordsJson => views::season_log::export::save(self, purpose, &path),
            Purpose::SaveBookByField | Purpose::SaveBookByDate | Purpose::SaveRecordPages => {
                views::season_log::print::save_book(self, purpose, &path);
            }
            Purpose::SaveWorkersSheet => views::season_log::print::save_workers(self, &path),
            Purpose::ReadRecords => views::season_log::import::read_file(self, &path),
            Purpose::ReadForecast => views::tank_loads::forecast::read_file(self, &path),
            Purpose::ReadBoundaries => views::fields::import::read_file(self, &path),
            Purpose::SaveBoundaries => views::fields::export::save_boundaries(self, &path),
            Purpose::SaveTaskData => views::fields::export::save_task_data(self, &path),
            Purpose::ReadPicture => views::fields::map::take_picture(self, &path),
        }
    }

    /// Saves under another name, over what is there, and then does what waited for that.
    fn save_as(&mut self, path: &Path, ctx: &Context) {
        let leaving = self.leave_after_save.take();
        let side = self.side();
        if let Err(error) = self.document.save_as(path.to_owned()) {
            self.tell_problem(format!("The farm was not saved: {error}"));
            return;
        }
        // Work of an earlier run belongs to the old name, and is offered again there.
        if self.found.take().is_none()
            && let Some(side) = side
        {
            side::drop(&side);
        }
        self.drop_kept();
        self.tell(format!("Saved as {}", path.display()));
        if let Some(remembered) = &mut self.remembered {
            remembered.opened(path);
            remembered.keep();
        }
        if let Some(leaving) = leaving {
            self.leave(leaving, ctx);
        }
    }

    /// Shows the whole window.
    pub fn show(&mut self, ui: &mut Ui) {
        for command in Command::pressed(ui.ctx()) {
            self.run(command, ui.ctx());
        }
        boxes::set_units(ui.ctx(), self.document.farm().units);
        self.unread = boxes::unread(ui.ctx());
        self.bar(ui);
        self.foot(ui);
        CentralPanel::default().frame(egui::Frame::new().fill(look::colours(ui).ground)).show(ui, |ui| {
            // One scroll place and one set of boxes for each view.
            ui.push_id(self.view.name(), |ui| match self.view {
                View::Fields => views::fields::show(self, ui),
                View::TankLoads => views::tank_loads::show(self, ui),
                View::SeasonLog => views::season_log::show(self, ui),
                View::Shed => views::shed::show(self, ui),
            });
        });
        bar::ring(ui.ctx());
        self.after(ui.ctx());
    }

    fn leave(&mut self, leaving: Leaving, ctx: &Context) {
        match leaving {
            Leaving::Quit => {
                self.closing = true;
                ctx.send_viewport_cmd(ViewportCommand::Close);
            }
            Leaving::To(command) => self.run_now(command, ctx),
        }
    }

    /// What follows the drawing: points for undo, unsaved work to the side file, the title, closing.
    fn after(&mut self, ctx: &Context) {
        let in_the_middle = ctx.text_edit_focused() || ctx.input(|input| input.pointer.any_down());
        // From box to box the keyboard is always in the middle of something; each box is a step all the same.
        let focused = ctx.memory(egui::Memory::focused);
        if !in_the_middle || focused != self.focused {
            self.document.take_point();
        }
        self.focused = focused;
        if self.document.is_unsaved() {
            // What was let go as the window closes is not kept once more.
            let is_kept = self.closing || self.found.is_some() || self.kept.state == Some(self.state());
            if !is_kept && self.side().is_some() {
                let waited = self.kept.at.elapsed();
                if waited >= self.keep_every {
                    self.keep();
                } else {
                    ctx.request_repaint_after(self.keep_every.saturating_sub(waited));
                }
            }
        } else if self.kept.written {
            // Undone to what is saved: nothing is left to offer.
            self.drop_kept();
        }
        let title = format!(
            "{}{} – Tankard",
            self.document.farm().name,
            if self.document.is_unsaved() { " (not saved)" } else { "" }
        );
        if title != self.shown_title {
            ctx.send_viewport_cmd(ViewportCommand::Title(title.clone()));
            self.shown_title = title;
        }
        let closes = ctx.input(|input| input.viewport().close_requested());
        if closes && !self.closing && self.is_held_back() {
            ctx.send_viewport_cmd(ViewportCommand::CancelClose);
        } else if closes && self.document.is_unsaved() && !self.closing {
            ctx.send_viewport_cmd(ViewportCommand::CancelClose);
            self.leaving = Some(Leaving::Quit);
        } else if closes && !self.document.is_unsaved() {
            self.closing = true;
        }
    }
}

/// Whether two paths lead to the same file.
fn is_same(one: &Path, other: &Path) -> bool {
    one == other
        || std::fs::canonicalize(one).is_ok_and(|one| std::fs::canonicalize(other).is_ok_and(|other| one == other))
}

fn scale(ctx: &Context, factor: f32) {
    ctx.set_zoom_factor(((factor * 10.0).round() / 10.0).clamp(0.8, 2.0));
}
