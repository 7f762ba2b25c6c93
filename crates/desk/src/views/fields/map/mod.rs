//! The map of the fields: what is seen, what is chosen on it, what is drawn.

mod camera;
mod canvas;
mod colouring;
mod edit;
mod furniture;
mod labels;
mod land;
mod paint;
mod panel;
mod pattern;
mod picture;
mod points;
mod sketch;
mod snap;
mod sound;
mod tools;
mod wind;

use std::path::Path;
use std::rc::Rc;

use egui::{Ui, Vec2};
use geo::Coord;
use jiff::civil::Date;
use tankard_core::farm::{Background, Farm, Id, Shape};
use tankard_core::language::days::short_date;
use tankard_core::t;

pub use colouring::Colouring;

use crate::app::Desk;
use crate::look;
use camera::Camera;
use land::{Land, Piece};
use points::Place;
use sketch::Sketch;

/// Height of what stands under the map, and on a small screen, where it scrolls.
const PANEL: f32 = 112.0;
const PANEL_SMALL: f32 = 66.0;
/// What the rows of the picture add.
const PICTURE: f32 = 56.0;
/// A room lower than this is small.
const SMALL: f32 = 400.0;

/// What is to be brought into view.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum Fit {
    All,
    Chosen,
}

/// What is chosen on the map beside a field.
#[derive(Clone, Debug, Default, PartialEq)]
enum Other {
    #[default]
    None,
    Surrounding(Id),
    Gateway(Id, usize),
}

/// A point that is dragged, and where it would go.
#[derive(Clone, Copy, Debug)]
struct Drag {
    place: Place,
    /// Whether a new point is put in there.
    is_new: bool,
    to: Coord<f64>,
}

/// The ground of the pass that is shown, and what of it stays unsprayed.
#[derive(Default)]
struct Ground {
    of: Option<(u64, Option<Id>)>,
    fields: tankard_core::ground::Ground,
    strips: Vec<Rc<Piece>>,
    /// In which wind the plan breaks, in a sentence.
    shift: Option<String>,
}

impl Ground {
    /// Works it out once for a revision and a pass.
    fn take_up(&mut self, farm: &Farm, revision: u64, pass: Option<&Id>, land: &Land) {
        let of = Some((revision, pass.cloned()));
        if self.of == of {
            return;
        }
        self.of = of;
        let pass = pass.and_then(|id| farm.passes.get(id));
        self.fields = pass.map(|pass| tankard_core::ground::of(farm, pass)).unwrap_or_default();
        self.shift = pass.and_then(|pass| tankard_core::ground::wind_shift(farm, pass).words());
        let shapes = self.fields.fields.iter().filter_map(|field| field.strip_shape.as_ref());
        self.strips = shapes.map(|shape| land.piece(shape)).collect();
    }
}

/// What is chosen on the map.
#[allow(clippy::struct_excessive_bools)] // Each is a switch of its own.
pub struct State {
    /// Whether the map is shown in place of the page.
    pub open: bool,
    /// What the fields are coloured by.
    pub colouring: Colouring,
    /// The day that the colouring asks for; none for that of the pass.
    pub day: Option<Date>,
    /// The pass whose wind and strips are shown; none for that of Tank loads, else the next one of the chosen field.
    pub pass: Option<Id>,
    camera: Option<Camera>,
    fit: Option<Fit>,
    /// Whether a person asked for that.
    fit_asked: bool,
    land: Land,
    coloured: colouring::Coloured,
    ground: Ground,
    /// The day as on which the records are read, where the last of them lies in days to come.
    read_on: Option<Date>,
    /// The pass of the chosen field that comes next, else of any; and the next day with a pass.
    next_pass: Option<Id>,
    next_day: Option<Date>,
    /// The field that was chosen in the last frame.
    seen: Option<Id>,
    other: Other,
    sketch: Option<Sketch>,
    /// Whether points are moved.
    editing: bool,
    point: Option<Place>,
    drag: Option<Drag>,
    /// Whether new points go to points and edges near by.
    snaps: bool,
    /// The place that is being typed.
    typed: String,
    /// Whether the box for it is to take the keyboard.
    to_type: bool,
    /// Why something was not done.
    problem: Option<String>,
    picture: picture::Picture,
    picture_open: bool,
    /// Something about to be removed.
    removing: bool,
}

impl Default for State {
    fn default() -> Self {
        Self {
            open: false,
            colouring: Colouring::default(),
            day: None,
            pass: None,
            camera: None,
            fit: Some(Fit::All),
            fit_asked: false,
            land: Land::default(),
            coloured: colouring::Coloured::default(),
            ground: Ground::default(),
            read_on: None,
            next_pass: None,
            next_day: None,
            seen: None,
            other: Other::default(),
            sketch: None,
            editing: false,
            point: None,
            drag: None,
            snaps: true,
            typed: String::new(),
            to_type: false,
            problem: None,
            picture: picture::Picture::default(),
            picture_open: false,
            removing: false,
        }
    }
}

/// The choice between the page of the field and the map; gives whether the map is shown.
pub(super) fn tabs(desk: &mut Desk, ui: &mut Ui) -> bool {
    ui.horizontal(|ui| {
        ui.spacing_mut().item_spacing.x = look::PAGES;
        for (name, open) in [(t!("fields-page-of-the-field"), false), (t!("fields-map"), true)] {
            if look::page(ui, name, desk.fields.map.open == open).clicked() {
                desk.fields.map.open = open;
            }
        }
    });
    ui.add_space(4.0);
    desk.fields.map.open
}

/// Shows the map.
pub(super) fn show(desk: &mut Desk, ui: &mut Ui) {
    // Out of the desk while it is drawn, so that it can change the farm.
    let mut map = std::mem::take(&mut desk.fields.map);
    map.take_up(desk);
    tools::show(&mut map, desk, ui);
    let panel = if ui.available_height() < SMALL { PANEL_SMALL } else { PANEL };
    let panel = if map.picture_open { panel + PICTURE } else { panel };
    let size = Vec2::new(ui.available_width(), (ui.available_height() - panel).max(120.0));
    canvas::show(&mut map, desk, ui, size);
    panel::show(&mut map, desk, ui);
    desk.fields.map = map;
}

/// What the last column of the list holds: what the map is coloured by, where that stands nowhere else in the list.
pub(super) fn column(map: &State) -> &'static str {
    let is_elsewhere = matches!(map.colouring, Colouring::Crop | Colouring::Stage);
    if map.open && !is_elsewhere { map.colouring.name() } else { t!("fields-last-and-next-pass") }
}

/// What is said of a field under the colouring of the map, for its row in the list.
pub(super) fn words(desk: &Desk, id: &str) -> Option<String> {
    let map = &desk.fields.map;
    let words = map.coloured.words(id);
    let is_elsewhere = matches!(map.colouring, Colouring::Crop | Colouring::Stage);
    (map.open && !is_elsewhere && !words.is_empty()).then(|| words.to_owned())
}

/// Takes a picture from a file for the background, first over what is seen.
pub(crate) fn take_picture(desk: &mut Desk, file: &Path) {
    let kept = picture::kept_as(file, desk.document.path());
    let map = &mut desk.fields.map;
    map.picture.forget();
    map.picture_open = true;
    let camera = map.camera.unwrap_or(Camera::PLAIN);
    let half = Coord { x: 250.0 * camera.metres, y: 200.0 * camera.metres };
    let corner = |at: Coord<f64>| {
        let at = sketch::rounded_place(map.land.flat.to_globe(at));
        Shape::new(geo::Geometry::Point(geo::Point(at)))
    };
    let north_west = corner(Coord { x: camera.middle.x - half.x, y: camera.middle.y + half.y });
    let south_east = corner(Coord { x: camera.middle.x + half.x, y: camera.middle.y - half.y });
    let (Ok(north_west), Ok(south_east)) = (north_west, south_east) else { return };
    desk.document.edit(|farm| {
        // Another file for a picture whose corners are known keeps them.
        match &mut farm.background {
            Some(background) => background.file = kept,
            none => *none = Some(Background { file: kept, north_west, south_east }),
        }
    });
    desk.document.take_point();
    desk.tell(t!("fields-the-picture-lies-over-what-is"));
}

impl State {
    /// Where a longitude and latitude lie on a map that takes this part of the screen, in degrees; none before it was shown.
    pub fn on_screen(&self, rect: egui::Rect, longitude: f64, latitude: f64) -> Option<egui::Pos2> {
        let at = self.land.flat.to_plane(Coord { x: longitude, y: latitude });
        Some(self.camera?.on(rect).place_of(at))
    }

    /// The longitude and latitude that lie at a place of the screen, in degrees.
    pub fn on_globe(&self, rect: egui::Rect, at: egui::Pos2) -> Option<(f64, f64)> {
        let at = self.land.flat.to_globe(self.camera?.on(rect).ground(at));
        Some((at.x, at.y))
    }

    /// Looks at what changed since the last frame.
    fn take_up(&mut self, desk: &mut Desk) {
        let revision = desk.document.revision();
        let log = desk.document.log();
        let (farm, now) = (desk.document.farm(), desk.now());
        self.land.take_up(farm, revision);
        if self.pass.as_ref().is_some_and(|id| !farm.passes.contains_key(id)) {
            self.pass = None;
        }
        let today = now.date();
        let to_come = || farm.passes.iter().filter(|(id, pass)| pass.date >= today && !log.is_recorded(farm, id));
        let next = to_come().min_by_key(|(_, pass)| pass.date);
        self.next_day = next.map(|(_, pass)| pass.date);
        let chosen = desk.fields.chosen.as_ref();
        let of_field = to_come().filter(|(_, pass)| chosen.is_some_and(|id| pass.fields.contains(id)));
        self.next_pass = of_field.min_by_key(|(_, pass)| pass.date).or(next).map(|(id, _)| id.clone());
        let day = self.day_of(desk);
        // A demo or an old farm is read as on the day of its last record, as on the page of a field.
        let last = log.last_day().filter(|last| *last > today);
        self.read_on = last;
        let now = last.map_or(now, |last| last.at(23, 59, 0, 0));
        self.coloured.take_up((farm, &log), revision, self.colouring, day, now);
        let pass = self.shown_pass(desk).cloned();
        self.ground.take_up(farm, revision, pass.as_ref(), &self.land);
        let is_gone = match &self.other {
            Other::None => false,
            Other::Surrounding(id) => !farm.surroundings.contains_key(id),
            Other::Gateway(id, at) => farm.fields.get(id).is_none_or(|field| field.gateways.len() <= *at),
        };
        if is_gone {
            self.choose_other(Other::None);
        }
        let sketched = self.sketch.as_ref().and_then(|sketch| sketch.field.as_ref());
        if sketched.is_some_and(|id| !farm.fields.contains_key(id)) {
            self.sketch = None;
        }
        if self.seen != desk.fields.chosen {
            self.seen.clone_from(&desk.fields.chosen);
            self.point = None;
            self.drag = None;
            // What is drawn belongs to the field for which it was begun.
            if self.sketch.as_ref().is_some_and(|sketch| sketch.field.is_some() && sketch.field != self.seen) {
                self.sketch = None;
                self.problem = None;
            }
            if self.fit.is_none() {
                self.fit = Some(Fit::Chosen);
            }
        }
    }

    /// What the fields are coloured by, and as on which day where that is not today.
    fn title(&self) -> String {
        let reads = matches!(self.colouring, Colouring::LastSpray | Colouring::ReEntry);
        match self.read_on.filter(|_| reads) {
            Some(day) => t!("fields-as-on", colouring = self.colouring.name(), day = short_date(day)),
            None => self.colouring.name().to_owned(),
        }
    }

    /// The day that the colouring asks for.
    fn day_of(&self, desk: &Desk) -> Date {
        let of_pass = self.asked_pass(desk).and_then(|id| desk.document.farm().passes.get(id)).map(|pass| pass.date);
        self.day.or(of_pass).or(self.next_day).unwrap_or_else(|| desk.now().date())
    }

    /// The pass that was chosen here or in Tank loads.
    fn asked_pass<'a>(&'a self, desk: &'a Desk) -> Option<&'a Id> {
        let is_there = |id: &&Id| desk.document.farm().passes.contains_key(id);
        self.pass.as_ref().or(desk.tank_loads.chosen.as_ref()).filter(is_there)
    }

    /// The pass whose wind and strips are shown.
    fn shown_pass<'a>(&'a self, desk: &'a Desk) -> Option<&'a Id> {
        self.asked_pass(desk).or(self.next_pass.as_ref())
    }

    /// Chooses something beside the field.
    fn choose_other(&mut self, other: Other) {
        if self.other != other {
            self.other = other;
            self.point = None;
            self.drag = None;
            self.removing = false;
            self.problem = None;
        }
    }

    /// Brings what is chosen into view, however well it is seen.
    fn ask_fit(&mut self) {
        self.fit = Some(Fit::Chosen);
        self.fit_asked = true;
    }

    /// Begins to draw.
    fn begin(&mut self, sketch: Sketch) {
        self.sketch = Some(sketch);
        self.editing = false;
        self.point = None;
        self.drag = None;
        self.removing = false;
        self.problem = None;
        self.typed.clear();
        self.to_type = true;
    }

    /// Adds a point to what is drawn; one that is all of it finishes it.
    fn add_point(&mut self, desk: &mut Desk, at: Coord<f64>) -> bool {
        let Some(sketch) = &mut self.sketch else { return false };
        if sketch.what.is_point() {
            sketch.points.clear();
        }
        match sketch.add(at) {
            Ok(()) => {
                self.problem = None;
                if sketch.what.is_point() {
                    self.finish(desk);
                }
                true
            }
            Err(why) => {
                self.problem = Some(why);
                false
            }
        }
    }

    /// Puts what is drawn into the farm: one step for undo.
    fn finish(&mut self, desk: &mut Desk) {
        let Some(sketch) = self.sketch.clone() else { return };
        match sketch.finish(desk.document.farm()) {
            Ok(change) => {
                let mut made = sketch::Made::Corner;
                self.edit(desk, |farm| made = change.put(farm));
                self.sketch = None;
                self.problem = None;
                match made {
                    sketch::Made::Surrounding(id) => self.choose_other(Other::Surrounding(id)),
                    sketch::Made::Gateway(id, at) => self.choose_other(Other::Gateway(id, at)),
                    sketch::Made::Field => self.choose_other(Other::None),
                    sketch::Made::Corner => {}
                }
            }
            Err(why) => self.problem = Some(why),
        }
    }

    /// Changes the farm: one step for undo.
    fn edit(&mut self, desk: &mut Desk, change: impl FnOnce(&mut Farm)) {
        desk.document.take_point();
        desk.document.edit(change);
        desk.document.take_point();
        self.problem = None;
    }

    /// Takes the last point back; without one, nothing is drawn any more.
    fn back(&mut self) {
        self.problem = None;
        if let Some(sketch) = &mut self.sketch
            && sketch.points.pop().is_none()
        {
            self.sketch = None;
        }
    }

    /// Drops what is drawn.
    fn drop_sketch(&mut self) {
        self.sketch = None;
        self.editing = false;
        self.point = None;
        self.drag = None;
        self.problem = None;
    }
}
