//! The guide on the screen: beside the work where there is room, else in its place until it is put away.

use egui::{CentralPanel, Context, Frame, Margin, Panel, Rect, ScrollArea, Ui, Vec2};
use tankard_core::t;

use super::draw::{self, Asked};
use super::markdown::Face;
use super::{Place, Showing, State, Wanted, pages, search};
use crate::command::View;
use crate::keys::guide as keys;
use crate::look;
use crate::parts::{boxes, lists};

/// How wide the guide is beside the work.
const WIDTH: f32 = 400.0;
/// Lines longer than this are hard to read.
const LINE: f32 = 640.0;
/// Room at the right of a line, for the bar that scrolls.
const EDGE: f32 = 24.0;

/// Pages on what a view shows, for the head of the list.
const fn on_screen(view: View) -> &'static [&'static str] {
    match view {
        View::Fields => &["fields"],
        View::TankLoads => &["plan-a-pass", "levels", "load-card"],
        View::SeasonLog => &["record", "review", "regulator"],
        View::Shed => &["product", "water", "calibration", "stock"],
    }
}

impl State {
    /// Whether there is room for it beside the work.
    pub(super) fn is_beside(ctx: &Context) -> bool {
        ctx.content_rect().width() >= look::BESIDE
    }

    /// Shows the guide, where it is open; gives whether it takes the place of the work.
    pub fn show(&mut self, ui: &mut Ui, view: View) -> bool {
        if !self.is_open {
            return false;
        }
        let frame = Frame::new().fill(look::colours(ui).ground);
        let frame = frame.inner_margin(Margin { left: 16, right: 8, top: 10, bottom: 8 });
        let is_beside = Self::is_beside(ui.ctx());
        let shown = if is_beside {
            let panel = Panel::right("guide").exact_size(WIDTH).resizable(false).frame(frame);
            panel.show(ui, |ui| self.inside(ui, view)).response
        } else {
            CentralPanel::default().frame(frame).show(ui, |ui| self.inside(ui, view)).response
        };
        self.has_keys = is_within(ui.ctx(), shown.rect);
        !is_beside
    }

    fn inside(&mut self, ui: &mut Ui, view: View) {
        let scroll = self.keys(ui);
        let mut is_away = false;
        ui.horizontal(|ui| {
            ui.label(look::heading(t!("guide-guide")).color(look::colours(ui).soft));
            if !self.trail.is_empty()
                && boxes::act(ui, t!("guide-back")).accessible_name(t!("guide-back-in-the-guide")).clicked()
            {
                self.back();
            }
            if self.showing != Showing::List && boxes::act(ui, t!("guide-all-pages")).clicked() {
                self.list();
            }
            ui.with_layout(egui::Layout::right_to_left(egui::Align::Center), |ui| {
                // It ends where the lines below end.
                ui.add_space(EDGE);
                is_away =
                    boxes::act(ui, t!("guide-put-it-away")).accessible_name(t!("guide-put-the-guide-away")).clicked();
            });
        });
        let width = (ui.available_width() - EDGE).min(LINE);
        let find = boxes::find(ui, t!("guide-find-in-the-guide"), &mut self.query, width);
        if self.wanted == Wanted::Box {
            find.request_focus();
            self.wanted = Wanted::Nothing;
        }
        if find.changed() && !search::terms(&self.query).is_empty() {
            self.find();
        } else if find.changed() && self.showing == Showing::Found {
            self.list();
        }
        ui.add_space(look::GRID);
        let (showing, ctx) = (self.showing, ui.ctx().clone());
        let mut area = ScrollArea::vertical().id_salt(("guide", showing_salt(showing))).auto_shrink(false);
        if let Some(offset) = self.scroll_to.take() {
            area = area.vertical_scroll_offset(offset);
        }
        let out = area.show(ui, |ui| {
            ui.set_max_width(width);
            if scroll != 0.0 {
                ui.scroll_with_delta(Vec2::Y * scroll);
            }
            let asked = match showing {
                Showing::List => list(ui, view),
                Showing::Found => self.found_ui(ui),
                Showing::Page(at) => self.page_ui(ui, at),
            };
            ui.add_space(look::GRID * 3.0);
            asked
        });
        self.scrolled = out.state.unclamped_offset().y;
        if let Some(place) = out.inner {
            self.go(&place, &ctx);
        }
        if is_away {
            self.toggle(&ctx);
        }
    }

    fn page_ui(&mut self, ui: &mut Ui, at: usize) -> Option<Place> {
        let page = pages::all().get(at)?;
        let terms = search::terms(&self.query);
        let target = self.target.take();
        let takes_keys = std::mem::take(&mut self.wanted) == Wanted::Heading;
        let how = draw::How { terms: &terms, target: target.as_deref(), takes_keys };
        draw::page(ui, page, &how).map(|Asked::Go(place)| place)
    }

    fn found_ui(&mut self, ui: &mut Ui) -> Option<Place> {
        self.wanted = Wanted::Nothing;
        let hits = search::search(pages::all(), &self.query);
        let terms = search::terms(&self.query);
        let said = match hits.len() {
            0 => t!("guide-nothing-in-the-guide-has-all").to_owned(),
            many => t!("guide-places-have-all-these-words", many = many),
        };
        ui.label(look::soft(ui, said));
        let mut asked = None;
        for hit in &hits {
            let Some(page) = pages::all().get(hit.page) else { continue };
            let name =
                if hit.heading == page.title { page.title.clone() } else { format!("{}, {}", page.title, hit.heading) };
            let row = lists::row(ui, false, &format!("{name}: {}", hit.line), |ui| {
                ui.add(egui::Label::new(draw::job(ui, [(name.as_str(), &Face::Bold)], &terms)).wrap());
                if !hit.line.is_empty() {
                    ui.add(egui::Label::new(draw::job(ui, [(hit.line.as_str(), &Face::Plain)], &terms)).wrap());
                }
            });
            if row.gained_focus() {
                row.scroll_to_me(None);
            }
            if row.clicked() {
                let anchor = if hit.heading == page.title { String::new() } else { hit.anchor.clone() };
                asked = Some(Place { page: page.name.to_owned(), anchor });
            }
        }
        asked
    }

    /// Takes the keys that move through the guide while the keyboard is in it; gives how far to scroll.
    fn keys(&mut self, ui: &Ui) -> f32 {
        if !self.has_keys || egui::Popup::is_any_open(ui.ctx()) {
            return 0.0;
        }
        let typing = ui.ctx().text_edit_focused();
        if keys::BACK.taken(ui.ctx()) {
            self.back();
        }
        let sight = ui.available_height() * 0.8;
        let whole = 1e6;
        let mut moves = vec![(keys::DOWN, -sight), (keys::UP, sight)];
        if !typing {
            moves.extend([(keys::END, -whole), (keys::HOME, whole)]);
        }
        moves.into_iter().filter(|(key, _)| key.taken(ui.ctx())).map(|(_, by)| by).sum()
    }
}

/// Each page keeps its own scroll place.
fn showing_salt(showing: Showing) -> &'static str {
    match showing {
        Showing::List => "list of pages",
        Showing::Found => "words found",
        Showing::Page(at) => pages::all().get(at).map_or("", |page| page.name),
    }
}

fn list(ui: &mut Ui, view: View) -> Option<Place> {
    let mut asked = None;
    let mut entry = |ui: &mut Ui, page: &pages::Read, name: &str| {
        let row = lists::row(ui, false, name, |ui| {
            ui.label(&page.title);
        });
        if row.gained_focus() {
            row.scroll_to_me(None);
        }
        if row.clicked() {
            asked = Some(Place::read(page.name));
        }
    };
    ui.label(look::heading(t!("guide-on", view = view.name())));
    for page in on_screen(view).iter().filter_map(|name| pages::all().get(pages::at(name)?)) {
        entry(ui, page, &t!("guide-on-what-is-shown", title = page.title));
    }
    let mut group = "";
    for page in pages::all() {
        let words = (page.group)();
        if words != group {
            group = words;
            ui.add_space(look::GRID);
            ui.label(look::heading(group));
        }
        entry(ui, page, &page.title);
    }
    asked
}

/// Whether what has the keyboard lies within a part of the window.
fn is_within(ctx: &Context, rect: Rect) -> bool {
    let focused = ctx.memory(egui::Memory::focused).and_then(|id| ctx.read_response(id));
    focused.is_some_and(|response| rect.contains(response.rect.center()))
}
