//! The desk: what runs across all views (opening, saving, undo, closing), with its bar, its foot and its window.

mod about;
mod backups;
mod bar;
mod days;
mod finding;
mod first_steps;
mod foot;
mod job;
pub(crate) mod landing;
mod locking;
mod motion;
mod opening;
mod recovery;
mod saving;
mod start;
mod turns;
mod window;
mod work;

pub(crate) use finding::is_narrow;
pub use finding::{List, Shown};
pub use job::Going;
pub use window::open;
pub use work::{Failed, Task};

use std::path::{Path, PathBuf};
use std::sync::Arc;
use std::time::Duration;

use egui::{CentralPanel, Context, Ui, ViewportCommand};
use jiff::ZonedDateTime;
use jiff::civil::DateTime;
use jiff::tz::TimeZone;
use tankard_core::begin;
use tankard_core::farm::Farm;
use tankard_core::finding::Subject;
use tankard_core::language::{Language, speak, spoken, yes_or_no};
use tankard_core::t;
use tankard_file::lock::{self, Lock, Other};
use tankard_file::names;
use tankard_file::store::StoreError;

use crate::command::{Command, View};
use crate::document::Document;
use crate::files::{Picker, Purpose};
use crate::parts::{boxes, offers};
use crate::recent::Remembered;
use crate::{demo, find, guide, look, views};
use locking::Watching;
use opening::OPENING;
use recovery::{Found, Keeping, Unreadable};
use saving::{Conflict, Saving};
use work::Work;

/// How long work may stay only in memory.
const KEEP_EVERY: Duration = Duration::from_secs(15);

/// How long a frame waits for a disk where no window is to be drawn meanwhile.
const PATIENCE: Duration = Duration::from_mins(1);

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
    /// The state of the farm of which it speaks, where it is true of no other.
    of: Option<u64>,
}

/// The desk.
#[allow(clippy::struct_excessive_bools)] // Each answers a question of its own: closing, saving once more, another state shown, opening.
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
    /// What is open of the guide.
    pub guide: guide::State,
    /// What is looked for in everything.
    pub find: find::State,
    /// Whether a list stands beside its page, and in a small window in its place.
    pub list: finding::List,
    /// Boxes that hold a text that is not understood.
    pub unread: Vec<boxes::Unread>,
    clock: Clock,
    picker: Option<Picker>,
    leaving: Option<Leaving>,
    leave_after_save: Option<Leaving>,
    closing: bool,
    /// A file there is already, over which the farm is to be saved.
    saving_over: Option<PathBuf>,
    /// Who has that one open.
    over_other: Option<Other>,
    notice: Option<Notice>,
    /// Work of earlier runs, the latest first.
    found: Vec<Found>,
    /// A file that was not opened, of which a copy reads.
    unreadable: Option<Unreadable>,
    remembered: Option<Remembered>,
    kept: Keeping,
    /// What is being kept though it was saved or let go meanwhile.
    kept_in_vain: Vec<job::Job<Result<recovery::InSide, StoreError>>>,
    keep_every: Duration,
    saving: Option<Saving>,
    /// Whether it was asked to save while a save ran.
    save_again: bool,
    conflict: Option<Conflict>,
    lock: Option<Arc<Lock>>,
    /// Who else has the farm open, which is then for reading here.
    other: Option<Other>,
    /// Whether that is said at the foot.
    is_other_shown: bool,
    watching: Watching,
    watch_every: Duration,
    backups: Option<backups::State>,
    /// What is read of the program itself.
    about: Option<about::Part>,
    /// Which farm this is since the desk was opened.
    farm_number: u64,
    work: Work,
    day_asked: Option<days::Asked>,
    /// What comes next on a new farm.
    first_steps: first_steps::State,
    /// Whether it is still to be chosen where to begin.
    is_choosing: bool,
    /// Work that is over sooner is not shown.
    shown_after: Duration,
    /// Whether the farm that the desk began with is still being read; until then there is nothing to work on.
    is_opening_first: bool,
    /// How long a frame waits for a disk before it goes on without it.
    patience: Duration,
    /// The window, once it was drawn.
    ctx: Option<Context>,
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
            guide: guide::State::default(),
            find: find::State::default(),
            list: finding::List::default(),
            unread: Vec::new(),
            clock,
            picker: None,
            leaving: None,
            leave_after_save: None,
            closing: false,
            saving_over: None,
            over_other: None,
            notice: None,
            found: Vec::new(),
            unreadable: None,
            remembered: None,
            kept: Keeping::none(),
            kept_in_vain: Vec::new(),
            keep_every: KEEP_EVERY,
            saving: None,
            save_again: false,
            conflict: None,
            lock: None,
            other: None,
            is_other_shown: false,
            watching: Watching::default(),
            watch_every: lock::REFRESH,
            backups: None,
            about: None,
            farm_number: 0,
            work: Work::default(),
            day_asked: None,
            first_steps: first_steps::State::default(),
            is_choosing: false,
            shown_after: work::SHOWN_AFTER,
            is_opening_first: false,
            patience: PATIENCE,
            ctx: None,
            shown_title: String::new(),
            focused: None,
        };
        desk.tell_seals();
        desk
    }

    /// Says which signed records were changed outside of an amendment.
    fn tell_seals(&mut self) {
        if !views::season_log::has_seals(self.document.farm()) {
            return;
        }
        let snapshot = self.document.snapshot();
        let task = Task::looks(t!("app-verifying-the-seals-of-the-records"), t!("app-the-seals-were-not-verified"))
            .counting(t!("app-record"), t!("app-records"))
            .in_place("seals");
        self.start(
            task,
            move |going| Ok(views::season_log::on_opening(&snapshot.into_farm(), &|done, of| going.tell(done, of))?),
            |desk, broken| {
                if let Some(words) = broken {
                    desk.tell_problem(words);
                }
            },
        );
    }

    /// Remembers opened farms and the look in the user's configuration folder.
    #[must_use]
    pub fn remember(mut self, mut remembered: Remembered) -> Self {
        if let Some(path) = self.document.path() {
            remembered.opened(path);
            remembered.keep();
        }
        self.guide.take_up(&remembered.guide);
        self.first_steps.is_hidden = remembered.first_steps_hidden;
        self.remembered = Some(remembered);
        self.take_lock();
        self.look_for_unsaved();
        self.tell_of_others();
        self
    }

    /// Lets a frame wait for a disk for another time than the usual, which is long enough for a test.
    #[must_use]
    pub fn patience(mut self, time: Duration) -> Self {
        self.patience = time;
        self
    }

    /// Looks at the disk and at the lock after another time than the usual.
    #[must_use]
    pub fn watch_every(mut self, time: Duration) -> Self {
        self.watch_every = time;
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
        self.notice = Some(Notice { text: text.into(), is_problem: false, of: None });
    }

    /// The same of what is true until the farm changes.
    pub fn tell_for_now(&mut self, text: impl Into<String>) {
        self.notice = Some(Notice { text: text.into(), is_problem: false, of: Some(self.document.revision()) });
    }

    /// Says at the foot of the window what went wrong.
    pub fn tell_problem(&mut self, text: impl Into<String>) {
        self.notice = Some(Notice { text: text.into(), is_problem: true, of: None });
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
        if let Some(path) = self.document.path() {
            return path.with_extension(ending);
        }
        let id = tankard_core::farm::id::fresh_where(&self.document.farm().name, |_| true);
        PathBuf::from(names::safe(&id, &format!(".{ending}")))
    }

    /// Where a file would be put beside the farm that is called after something in it: its id, and what is put behind that.
    pub fn beside_as(&self, id: &str, rest: &str) -> PathBuf {
        self.beside("ron").with_file_name(names::safe(id, rest))
    }

    /// The same for a file on a pass: its day and its name.
    pub fn beside_pass(&self, id: &str, rest: &str) -> PathBuf {
        let words = self.document.farm().passes.get(id).map(|pass| {
            let name = pass.name.split_whitespace().collect::<Vec<_>>().join("-").to_lowercase();
            format!("{}-{name}", pass.date)
        });
        self.beside_as(words.as_deref().unwrap_or(id), rest)
    }

    /// Leads to what a finding speaks of.
    pub fn lead_to(&mut self, subject: &Subject) {
        self.list.page_in_front();
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
        self.tell_problem(t!("app-an-amendment-is-begun-here-keep"));
        true
    }

    /// Does a command.
    pub fn run(&mut self, command: Command, ctx: &Context) {
        if self.is_opening_first && command.needs_farm() {
            self.tell(t!("app-the-farm-is-still-being-read"));
            return;
        }
        let leaves =
            matches!(command, Command::New | Command::Open | Command::OpenPath(_) | Command::OpenDemo | Command::Quit);
        if leaves && (self.is_held_back() || self.wait_for_save(&command) || self.wait_for_work(&leaving(&command))) {
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

    /// What leads away from the farm waits for a save that runs.
    fn wait_for_save(&mut self, command: &Command) -> bool {
        if self.is_saving() {
            self.leave_when_saved(leaving(command));
        }
        self.is_saving()
    }

    fn run_now(&mut self, command: Command, ctx: &Context) {
        // What shows something else shows it in the place of the backups.
        if !command.stays() {
            self.backups = None;
            self.about = None;
        }
        // Whoever opens something or goes to a view has begun.
        self.is_choosing &= command.stays() || matches!(command, Command::Open);
        match command {
            Command::New => {
                self.replace(Document::copy(Farm::new(begin::new_farm())));
                self.begin_farm(ctx);
            }
            Command::Open => {
                let start = self.document.path().cloned().unwrap_or_default();
                self.ask_file(Purpose::OpenFarm, start, ctx);
            }
            Command::OpenPath(path) => self.open_path(&path),
            Command::OpenDemo => match demo::farm() {
                Ok(farm) => {
                    self.replace(Document::copy(farm));
                    self.view = View::default();
                }
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
            Command::Backups => self.open_backups(),
            Command::About => self.about = Some(about::Part::default()),
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
            Command::RecordPass => views::season_log::record_chosen(self),
            Command::Undo => self.document.undo(),
            Command::Redo => self.document.redo(),
            Command::Find => {
                let of = (self.farm_number, self.document.revision());
                self.find.toggle(self.document.farm(), of, ctx);
            }
            Command::Go(view) => self.view = view,
            Command::Show(spot) => self.show_spot(spot),
            Command::List => self.list.toggle(ctx),
            Command::Larger => scale(ctx, ctx.zoom_factor() + 0.1),
            Command::Smaller => scale(ctx, ctx.zoom_factor() - 0.1),
            Command::PlainSize => scale(ctx, 1.0),
            Command::CancelWork => self.cancel_latest(),
            Command::Light => ctx.set_theme(egui::Theme::Light),
            Command::Dark => ctx.set_theme(egui::Theme::Dark),
            Command::Speak(language) => speak(language),
            Command::NextStep => self.go_on(ctx),
            Command::FirstSteps => self.first_steps.is_hidden = !self.first_steps.is_hidden,
            Command::Guide => self.guide.toggle(ctx),
            Command::Keys => self.guide.go(&guide::Place::read("keyboard"), ctx),
            Command::Motion => look::set_motion(ctx, !look::has_motion(ctx)),
            Command::GuideTo(place) => self.guide.go(&place, ctx),
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
        if spoken() != now.language.unwrap_or_else(system_language) {
            now.language = Some(spoken());
        }
        let is_still = !look::has_motion(ctx);
        if now.still.is_some() || is_still != motion::is_unwanted() {
            now.still = Some(is_still);
        }
        // Between 80 and 200 by construction.
        #[allow(clippy::cast_possible_truncation, clippy::cast_sign_loss)]
        let scale = (ctx.zoom_factor() * 100.0).round() as u16;
        now.scale = scale;
        now.first_steps_hidden = self.first_steps.is_hidden;
        self.guide.page().unwrap_or_default().clone_into(&mut now.guide);
        if now != *remembered {
            now.keep();
            *remembered = now;
        }
    }

    fn replace(&mut self, document: Document) {
        self.put(document);
        self.take_lock();
        self.look_for_unsaved();
    }

    /// Puts another document on the desk, under the lock there is.
    fn put(&mut self, document: Document) {
        let old = std::mem::replace(&mut self.document, document);
        // To give back the memory of many seasons takes longer than a frame.
        std::thread::spawn(move || drop(old));
        self.farm_number += 1;
        self.is_opening_first = false;
        self.is_choosing = false;
        self.forget_looks();
        self.fields = views::fields::State::default();
        self.tank_loads = views::tank_loads::State::default();
        self.season_log = views::season_log::State::default();
        self.shed = views::shed::State::default();
        self.notice = None;
        // A file asked for before was asked for the farm that is gone.
        self.forget_questions();
        self.leaving = None;
        self.conflict = None;
        self.unreadable = None;
        self.backups = None;
        self.kept = Keeping::none();
        self.tell_seals();
    }

    /// Takes the file that was chosen.
    fn chosen(&mut self, purpose: Purpose, path: PathBuf) {
        match purpose {
            Purpose::OpenFarm => self.open_path(&path),
            Purpose::SaveFarm => {
                let path = if path.extension().is_some() { path } else { path.with_extension("ron") };
                if self.document.path().is_some_and(|own| is_same(own, &path)) {
                    self.save();
                } else if path.is_file() {
                    self.over_other = locking::who_has(&path);
                    self.saving_over = Some(path);
                } else {
                    self.save_as(&path);
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

    /// Shows the whole window.
    pub fn show(&mut self, ui: &mut Ui) {
        if self.ctx.is_none() {
            self.ctx = Some(ui.ctx().clone());
        }
        self.finish_saving(Duration::ZERO);
        self.finish_keeping(Duration::ZERO);
        self.finish_work();
        self.watch();
        bar::follow(ui.ctx());
        self.go_on_finding(ui.ctx());
        for command in Command::pressed(ui.ctx()) {
            self.run(command, ui.ctx());
        }
        if let Some(place) = guide::take_asked(ui.ctx()) {
            self.run(Command::GuideTo(place), ui.ctx());
        }
        boxes::set_units(ui.ctx(), self.document.farm().units);
        self.unread = boxes::unread(ui.ctx());
        boxes::tire(ui.ctx());
        self.bar(ui);
        self.foot(ui);
        if self.is_opening_first {
            self.show_opening(ui);
            self.over_all(ui.ctx());
            return;
        }
        if !self.is_choosing {
            self.show_first_steps(ui);
        }
        if self.guide.show(ui, self.view) {
            self.over_all(ui.ctx());
            self.after(ui.ctx());
            return;
        }
        if self.is_choosing {
            self.show_start(ui);
            bar::ring(ui.ctx());
            self.after(ui.ctx());
            return;
        }
        if self.about.is_some() {
            self.show_about(ui);
            self.over_all(ui.ctx());
            self.after(ui.ctx());
            return;
        }
        if self.backups.is_some() {
            self.show_backups(ui);
            self.over_all(ui.ctx());
            self.after(ui.ctx());
            return;
        }
        CentralPanel::default().frame(egui::Frame::new().fill(look::colours(ui).ground)).show(ui, |ui| {
            offers::set(ui.ctx(), []);
            // One scroll place and one set of boxes for each view.
            ui.push_id(self.view, |ui| match self.view {
                View::Fields => views::fields::show(self, ui),
                View::TankLoads => views::tank_loads::show(self, ui),
                View::SeasonLog => views::season_log::show(self, ui),
                View::Shed => views::shed::show(self, ui),
            });
        });
        self.take_offer(ui.ctx());
        self.over_all(ui.ctx());
        self.after(ui.ctx());
    }

    /// Types what was offered and taken in this frame: a step of its own for undo, whatever was typed before.
    fn take_offer(&mut self, ctx: &Context) {
        let Some(offer) = offers::taken(ctx) else { return };
        self.document.take_point();
        let mut is_done = false;
        self.document.edit(|farm| is_done = offer.take(farm));
        self.document.take_point();
        if !is_done {
            self.tell_problem(t!("app-could-not-be-taken-what-it", offer = offer.text()));
        }
    }

    fn leave(&mut self, leaving: Leaving) {
        if self.wait_for_work(&leaving) {
            return;
        }
        // Nothing is left before the first frame.
        let Some(ctx) = self.ctx.clone() else { return };
        match leaving {
            Leaving::Quit => {
                self.closing = true;
                ctx.send_viewport_cmd(ViewportCommand::Close);
            }
            Leaving::To(command) => self.run_now(command, &ctx),
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
            let is_kept = self.closing || self.is_saving() || self.kept.state == Some(self.state());
            if !is_kept && self.kept.job.is_none() && self.kept_in_vain.is_empty() && self.can_keep() {
                let waited = self.kept.at.elapsed();
                if waited >= self.keep_after() {
                    self.keep(Duration::ZERO);
                } else {
                    ctx.request_repaint_after(self.keep_after().saturating_sub(waited));
                }
            }
        } else if self.kept.side.is_some() {
            // Undone to what is saved: nothing is left to offer.
            self.drop_kept();
        }
        let title = t!("app-tankard", name = self.document.farm().name, which = yes_or_no(self.document.is_unsaved()));
        if title != self.shown_title {
            ctx.send_viewport_cmd(ViewportCommand::Title(title.clone()));
            self.shown_title = title;
        }
        let closes = ctx.input(|input| input.viewport().close_requested());
        if closes && !self.closing && self.is_held_back() {
            ctx.send_viewport_cmd(ViewportCommand::CancelClose);
        } else if closes && self.is_saving() {
            ctx.send_viewport_cmd(ViewportCommand::CancelClose);
            self.leave_when_saved(Leaving::Quit);
        } else if closes && !self.closing && self.wait_for_work(&Leaving::Quit) {
            ctx.send_viewport_cmd(ViewportCommand::CancelClose);
        } else if closes && self.document.is_unsaved() && !self.closing {
            ctx.send_viewport_cmd(ViewportCommand::CancelClose);
            self.leaving = Some(Leaving::Quit);
        } else if closes && !self.document.is_unsaved() {
            self.closing = true;
        }
    }
}

/// What a command that leads away from the farm asks for.
fn leaving(command: &Command) -> Leaving {
    if *command == Command::Quit { Leaving::Quit } else { Leaving::To(command.clone()) }
}

/// Whether two paths lead to the same file.
fn is_same(one: &Path, other: &Path) -> bool {
    one == other
        || std::fs::canonicalize(one).is_ok_and(|one| std::fs::canonicalize(other).is_ok_and(|other| one == other))
}

/// The language of the system, English where the program has no messages in it.
pub(crate) fn system_language() -> Language {
    sys_locale::get_locales().find_map(|locale| Language::of_locale(&locale)).unwrap_or_default()
}

fn scale(ctx: &Context, factor: f32) {
    ctx.set_zoom_factor(((factor * 10.0).round() / 10.0).clamp(0.8, 2.0));
}
