//! Every view, page and question in English, in Spanish and in words two fifths longer than English, in a small window and in the same at
//! 150 and 200 %: nothing is cut off where nobody can follow it, nothing lies over anything, what is shortened can be read whole, and a day is
//! said with its month in a word.
//!
//! Each page is drawn as it is seen, and in Spanish and longer words once more in a window as high as the page is long, where nothing of it is
//! scrolled away.

// A test stops where its ground is missing.
#![allow(clippy::unwrap_used, clippy::indexing_slicing, clippy::panic)]

mod common;

use std::collections::BTreeSet;

use common::evening;
use common::seen::Seen;
use egui::accesskit::Role;
use egui::{Event, Pos2, Vec2};
use egui_kittest::Harness;
use egui_kittest::kittest::{NodeT, Queryable};
use tankard::app::Desk;
use tankard::command::{Command, Spot, View};
use tankard::document::Document;
use tankard::files::Purpose;
use tankard::views::fields::{self, map::Colouring};
use tankard::views::season_log::{self, review};
use tankard::views::tank_loads::{Editor, Page, forecast};
use tankard::{demo, look};
use tankard_core::farm::Farm;
use tankard_core::language::{Language, lengthen, speak, spoken};
use tankard_core::t;

/// A window of 1366×768 at 100 and at 150 %, and what 200 % leaves of it.
const SIZES: [(f32, [f32; 2]); 3] = [(1.0, [1366.0, 768.0]), (1.5, [911.0, 512.0]), (2.0, [683.0, 384.0])];
/// The name of the first view in plain English.
const FIELDS: &str = "Fields";
/// So high that every page ends in it.
const HIGH: f32 = 4000.0;

/// What may be as it is, by a piece of its words, and why.
const LET_BE: [(&str, &str); 0] = [];

type Window = Harness<'static, Desk>;

/// A window that is looked at page by page.
struct Round {
    harness: Window,
    scale: f32,
    size: [f32; 2],
    /// Whether English is said longer than it is.
    is_long: bool,
    /// What was found, each thing once.
    found: BTreeSet<String>,
    /// Words whose whole text is known to be shown where a pointer rests on them.
    told: BTreeSet<String>,
    known: BTreeSet<String>,
    places: usize,
    words: usize,
}

impl Round {
    fn demo(scale: f32, size: [f32; 2]) -> Self {
        let desk = Desk::new(Document::copy(demo::farm().unwrap()), evening);
        Self {
            harness: drawn(desk, scale, size),
            scale,
            size,
            is_long: t!("app-fields") != FIELDS && spoken() == Language::English,
            found: BTreeSet::new(),
            told: BTreeSet::new(),
            known: BTreeSet::new(),
            places: 0,
            words: 0,
        }
    }

    /// Goes on with another desk.
    fn begin(&mut self, desk: Desk) {
        self.harness = drawn(desk, self.scale, self.size);
    }

    /// Looks at the window as it is, and as high as its page.
    fn look(&mut self, place: &str) {
        self.glance(place);
        // The longer words find in English what English itself would.
        if spoken() == Language::English && !self.is_long {
            return;
        }
        self.harness.set_size(Vec2::new(self.size[0], HIGH));
        self.harness.run_steps(2);
        let seen = Seen::new(&self.harness);
        self.note(place, seen.cut_off());
        self.note(place, seen.overlapping());
        for (text, at, acts) in seen.shortened() {
            self.read_whole(place, &text, at, acts);
        }
        self.harness.set_size(Vec2::from(self.size));
    }

    /// Looks at the window as it is alone: what stands above the views, and what has no page to follow.
    fn glance(&mut self, place: &str) {
        self.harness.run();
        self.places += 1;
        let seen = Seen::new(&self.harness);
        self.words += seen.much().0;
        self.note(place, seen.days_by_figures());
        self.note(place, seen.cut_off());
        self.note(place, seen.overlapping());
    }

    fn note(&mut self, place: &str, found: Vec<String>) {
        for what in found {
            // The same thing on many pages is told once.
            let (kind, _) = what.rsplit_once(" at ").unwrap();
            if LET_BE.iter().any(|(piece, _)| what.contains(piece)) || !self.known.insert(kind.to_owned()) {
                continue;
            }
            self.found.insert(format!("{place}: {what}"));
        }
    }

    /// What is shortened is shown whole where a pointer rests on it.
    fn read_whole(&mut self, place: &str, text: &str, at: Pos2, acts: bool) {
        // A label does so by itself; that it does is looked at once a page.
        if !self.told.insert(if acts { text.to_owned() } else { place.to_owned() }) {
            return;
        }
        self.harness.hover_at(at);
        self.harness.run_steps(3);
        if !Seen::new(&self.harness).says(text) {
            self.note(place, vec![format!("shortened and nowhere whole: \"{text}\" at {at:?}")]);
        }
        self.harness.event(Event::PointerGone);
        self.harness.run_steps(2);
    }

    fn run(&mut self, command: Command) {
        let ctx = self.harness.ctx.clone();
        self.harness.state_mut().run(command, &ctx);
    }

    /// Clicks the first thing whose name is one of these.
    fn press_first(&mut self, is: impl Fn(&str) -> bool) {
        self.harness.run();
        let all = self.harness.root().query_all_by(|node| node.role() == Role::Button);
        let name = all.filter_map(|node| node.accesskit_node().label()).find(|name| is(name)).unwrap();
        self.press(&name);
    }

    /// Clicks what a screen reader calls this; where several are called so, the first.
    fn press(&mut self, name: &str) {
        self.harness.run();
        let clickable = |role| !matches!(role, Role::Label | Role::TextRun | Role::TextInput);
        let all: Vec<_> = self
            .harness
            .root()
            .query_all_by(|node| clickable(node.role()) && node.label().as_deref() == Some(name))
            .collect();
        let node = all.first().unwrap_or_else(|| panic!("nothing is called \"{name}\""));
        node.click_accesskit();
        drop(all);
        self.harness.run();
    }
}

impl Round {
    /// The lists that are drawn in the window, by what a screen reader calls them.
    fn lists(&mut self) -> Vec<String> {
        self.harness.run();
        let names = self.harness.root().query_all_by(|node| node.role() == Role::ComboBox).filter_map(|node| {
            let is_seen = node.rect().min.y < self.size[1] - 20.0 && node.rect().max.y > 60.0;
            node.accesskit_node().label().filter(|_| is_seen)
        });
        names.collect()
    }

    /// Opens each list of the page, one after the other, and closes it again without a choice.
    fn open_lists(&mut self, place: &str) {
        let lists = self.lists();
        assert!(!lists.is_empty(), "{place} has no list in the window");
        for name in lists {
            self.press(&name);
            self.glance(&format!("{place}, the list \"{name}\""));
            self.harness.key_press(egui::Key::Escape);
            self.harness.run();
        }
    }

    /// Types into what has the keyboard.
    fn type_text(&mut self, text: &str) {
        self.harness.run();
        self.harness.event(Event::Text(text.to_owned()));
        self.harness.run();
    }
}

fn drawn(desk: Desk, scale: f32, size: [f32; 2]) -> Window {
    Harness::builder()
        .with_size(size)
        .with_pixels_per_point(scale)
        .with_context_setup(|ctx| {
            look::install(ctx);
            look::set_motion(ctx, false);
            ctx.all_styles_mut(|style| style.interaction.tooltip_delay = 0.0);
        })
        .build_ui_state(|ui, desk: &mut Desk| desk.show(ui), desk)
}

fn record(harness: &Window) -> Option<String> {
    harness.state().document.farm().records.keys().next_back().cloned()
}

fn all_fields(round: &mut Round) {
    round.run(Command::Go(View::Fields));
    round.look("fields");
    for page in [fields::Page::MayNot, fields::Page::Got, fields::Page::Typed] {
        round.harness.state_mut().fields.page = page;
        round.look(&format!("a field, {page:?}"));
    }
    round.harness.run();
    if round.size[0] >= look::NARROW {
        round.open_lists("a field");
    }
    round.harness.state_mut().fields.removing = true;
    round.look("fields, removing");
    round.harness.state_mut().fields.removing = false;
    round.run(Command::Show(Spot::Map));
    for colouring in Colouring::ALL {
        round.harness.state_mut().fields.map.colouring = colouring;
        round.glance(&format!("map by {colouring:?}"));
    }
    round.harness.state_mut().fields.map.open = false;
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("north.geojson");
    std::fs::write(&path, include_str!("../../../demo-farm/boundaries.geojson")).unwrap();
    fields::import::read_file(round.harness.state_mut(), &path);
    round.look("fields, import");
    round.press(t!("fields-leave-the-file"));
}

fn all_loads(round: &mut Round) {
    round.run(Command::Go(View::TankLoads));
    let passes: Vec<String> = round.harness.state().document.farm().passes.keys().cloned().collect();
    for pass in [&passes[0], &passes[3], &passes[4], &passes[5]] {
        round.harness.state_mut().tank_loads.choose(pass);
        round.look(&format!("pass {pass}"));
    }
    for pass in [&passes[0], &passes[5]] {
        round.harness.state_mut().tank_loads.choose(pass);
        for page in [Page::Sprayer, Page::Hours, Page::Cards, Page::Jar] {
            round.harness.state_mut().tank_loads.page = page;
            round.look(&format!("{page:?} of {pass}"));
        }
        round.harness.state_mut().tank_loads.page = Page::Plan;
        for editor in Editor::ALL {
            round.harness.state_mut().tank_loads.editor = Some(editor);
            round.look(&format!("{editor:?} of {pass}"));
            if matches!(editor, Editor::Fields | Editor::Rig) {
                round.open_lists(&format!("{editor:?} of {pass}"));
            }
        }
        round.harness.state_mut().tank_loads.editor = None;
    }
    round.harness.state_mut().tank_loads.choose(&passes[0]);
    round.press_first(|name| name.starts_with(t!("tank-loads-compare")) && name != t!("tank-loads-compare"));
    round.look("two sets compared");
    round.harness.state_mut().tank_loads.choose(&passes[5]);
    round.harness.state_mut().tank_loads.choose(&passes[0]);
    round.press(t!("season-log-some-of-it"));
    round.glance("some of it, to record");
    round.run(Command::Go(View::TankLoads));
    round.harness.state_mut().tank_loads.choose(&passes[0]);
    round.press(t!("season-log-record-as-sprayed"));
    round.look("recorded as sprayed");
    round.run(Command::Undo);
    round.look("recorded as sprayed, taken back");
    round.run(Command::Go(View::TankLoads));
    round.harness.state_mut().tank_loads.removing = true;
    round.look("tank loads, removing");
    round.harness.state_mut().tank_loads.removing = false;
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("invented.csv");
    std::fs::write(&path, include_str!("../../../demo-farm/forecast-june-19.csv")).unwrap();
    forecast::read_file(round.harness.state_mut(), &path);
    round.harness.state_mut().tank_loads.page = Page::Hours;
    round.look("hours, a forecast that is read");
    round.harness.state_mut().tank_loads.page = Page::Plan;
    round.harness.state_mut().tank_loads.day = Some(jiff::civil::date(2031, 6, 12));
    round.look("the day");
    round.harness.state_mut().tank_loads.day = None;
}

fn whole_log(round: &mut Round) {
    round.run(Command::Go(View::SeasonLog));
    round.look("season log");
    round.press(t!("season-log-export-what-the-list-shows"));
    round.glance("season log, export");
    round.harness.key_press(egui::Key::Escape);
    round.harness.state_mut().season_log.chosen = record(&round.harness);
    round.look("a record");
    round.harness.run();
    if round.size[0] >= look::NARROW {
        round.open_lists("a record");
    }
    round.press(t!("season-log-sign-the-record"));
    round.look("a record, signing");
    round.harness.state_mut().season_log.chosen = None;
    "nothing has this".clone_into(&mut round.harness.state_mut().season_log.filter);
    round.look("season log, nothing found");
    round.harness.state_mut().season_log.filter.clear();
    round.press(t!("season-log-close-the-season"));
    round.look("season log, closing");
    round.press(t!("season-log-leave-it-open"));
    round.run(Command::Show(Spot::Trials));
    round.look("trials");
    round.run(Command::Show(Spot::Review));
    for page in review::Page::ALL {
        round.harness.state_mut().season_log.review.page = page;
        round.look(&format!("review, {page:?}"));
    }
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("past.csv");
    let sheet = "Date,Field,Acres,Product,Rate,Total (gal),Who\n\
        5/6/2030,North,40,Oil (demo),1.5 pt/ac,,A. Demo\n5/6/2030,South,30,Oil (demo),,5,A. Demo\n,,,Total,,12.5,\n";
    std::fs::write(&path, sheet).unwrap();
    season_log::import::read_file(round.harness.state_mut(), &path);
    round.look("season log, import");
    round.press(t!("season-log-leave-the-file"));
}

fn whole_shed(round: &mut Round) {
    round.run(Command::Go(View::Shed));
    for product in ["glyphosate-540", "dicamba-diflufenzopyr-70", "methylated-seed-oil", "uan-28"] {
        round.harness.state_mut().shed.choose_product(product);
        round.look(product);
    }
    round.harness.state_mut().shed.choose_product("glyphosate-540");
    round.open_lists("a product");
    round.press(t!("shed-paste-directions"));
    round.look("directions, pasted");
    round.type_text(
        "Apply 16 to 22 fl oz per acre. Do not enter treated areas for 24 hours. If the wind changes or exceeds 12 mph, stop. \
         Weeds must be less than 4 inches tall. Keep it dry.",
    );
    round.look("directions, read");
    let wind = "If the wind changes or exceeds 12 mph, stop.";
    let kind = t!("farm-says-wind");
    round.press(&t!("shed-type-sentence-under", kind = kind, sentence = wind));
    round.look("a sentence above its row");
    round.press(t!("shed-another-statement-from-the-label"));
    round.look("a product, another statement");
    round.harness.state_mut().shed.fill_in("nicosulfuron-75");
    round.look("a product, to fill in");
    round.harness.state_mut().shed.choose_rig("small-boom");
    round.run(Command::Show(Spot::Products));
    to_list(round);
    round.press(t!("shed-from-an-active"));
    round.look("a product from an active");
    round.press(t!("shed-not-now"));
    to_list(round);
    round.press(t!("shed-from-a-label"));
    round.look("a new product");
    round.run(Command::Undo);
    round.run(Command::Go(View::Shed));
    round.look("a new product, taken back");
    for spot in [Spot::Waters, Spot::Rigs, Spot::Stock, Spot::Advice, Spot::Law] {
        round.run(Command::Show(spot));
        round.look(&format!("{spot:?}"));
    }
    round.harness.state_mut().shed.choose_rig("small-boom");
    round.look("the small boom");
    round.run(Command::FarmPage);
    round.look("farm");
    // In a small window the pages stand over the list, which has the room or leaves it to the page.
    let small = round.size[0] < look::NARROW;
    if small {
        round.run(Command::List);
    }
    round.press(t!("shed-records"));
    if small {
        round.look("shed, a list");
        round.run(Command::List);
    }
    round.look("shed, records");
}

/// In a small window: the list in the place of the page.
fn to_list(round: &mut Round) {
    round.harness.run();
    if round.size[0] < look::NARROW && round.harness.state().list.shown(&round.harness.ctx) != tankard::app::Shown::List
    {
        round.run(Command::List);
    }
}

/// What stands over all views, at the foot, or in the place of a view.
fn around(round: &mut Round) {
    round.run(Command::Go(View::TankLoads));
    round.run(Command::Guide);
    round.look("the guide");
    round.run(Command::Guide);
    round.run(Command::Keys);
    round.look("the guide, its keys");
    round.run(Command::Guide);
    round.run(Command::Find);
    round.harness.run();
    round.harness.event(Event::Text("so".to_owned()));
    round.glance("finding");
    round.run(Command::Find);
    for menu in [t!("app-look"), t!("app-farm")] {
        round.press(menu);
        round.glance(menu);
        round.harness.key_press(egui::Key::Escape);
    }
    round.run(Command::Backups);
    round.look("backups");
    round.run(Command::Go(View::TankLoads));
    round.run(Command::About);
    round.glance("about");
    round.run(Command::Go(View::TankLoads));
    round.harness.state_mut().ask_path(Purpose::SaveFarm, "invented/larkspur-bend.ron".into());
    round.glance("a path box");
    round.harness.key_press(egui::Key::Escape);
    round.harness.run();
    round.harness.state_mut().document.edit(|farm| farm.name.push('!'));
    round.run(Command::New);
    round.glance("work that is not saved");
    round.press(t!("app-stay-here"));
    round.harness.state_mut().tell_problem(t!("app-the-farm-is-still-being-saved"));
    round.glance("a notice");
    // Somebody else has saved the file meanwhile: mine, theirs, or under another name.
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("farm.ron");
    let farm = demo::farm().unwrap();
    tankard_file::store::save(&path, &farm, None).unwrap();
    round.begin(Desk::new(Document::open(path.clone()).unwrap(), evening));
    round.harness.state_mut().document.edit(|farm| farm.name.push('!'));
    if round.is_long {
        // At 200 % the head of a pass and the question, both two fifths longer, leave the page behind no line of its own.
        round.run(Command::Go(View::Shed));
    }
    tankard_file::store::save(&path, &Farm { name: "Theirs".to_owned(), ..farm }, None).unwrap();
    round.run(Command::Save);
    // The file is looked at beside the window, and the question has its place from the next frame on.
    let began = std::time::Instant::now();
    while round.harness.root().query_all_by(|node| node.label().as_deref() == Some(t!("app-keep-mine"))).count() == 0 {
        assert!(began.elapsed() < std::time::Duration::from_mins(1), "nothing is asked");
        std::thread::sleep(std::time::Duration::from_millis(20));
        round.harness.step();
    }
    round.harness.run_steps(4);
    round.glance("a file that was changed meanwhile");
    round.press(t!("app-keep-mine"));
}

/// What somebody sees who has just begun.
fn beginning(round: &mut Round) {
    let demo = Document::copy(demo::farm().unwrap());
    round.begin(Desk::new(demo, evening).choosing());
    round.look("where to begin");
    let new = Document::copy(Farm::new(tankard_core::begin::new_farm()));
    round.begin(Desk::new(new, evening));
    for view in View::ALL {
        round.run(Command::Go(view));
        round.look(&format!("a new farm, {}", view.name()));
    }
    for _ in 0..3 {
        round.run(Command::NextStep);
        round.look("a new farm, the next step");
    }
}

/// Goes through a part of the desk in each size.
fn through(part: impl Fn(&mut Round)) {
    let mut bad = Vec::new();
    for (scale, size) in SIZES {
        let mut round = Round::demo(scale, size);
        part(&mut round);
        assert!(round.places > 5 && round.words > 200, "{} places, {} words", round.places, round.words);
        bad.extend(round.found.into_iter().map(|what| format!("{:.0}: {what}", size[0])));
    }
    assert!(bad.is_empty(), "{} found:\n{}", bad.len(), bad.join("\n"));
}

macro_rules! in_language {
    ($name:ident, $speak:expr) => {
        mod $name {
            use super::*;

            #[test]
            fn fields() {
                $speak;
                through(all_fields);
            }

            #[test]
            fn tank_loads() {
                $speak;
                through(all_loads);
            }

            #[test]
            fn season_log() {
                $speak;
                through(whole_log);
            }

            #[test]
            fn shed() {
                $speak;
                through(whole_shed);
            }

            #[test]
            fn around_the_views() {
                $speak;
                through(around);
                through(beginning);
            }
        }
    };
}

in_language!(english, speak(Language::English));
in_language!(spanish, speak(Language::Spanish));
in_language!(two_fifths_longer, lengthen(true));
