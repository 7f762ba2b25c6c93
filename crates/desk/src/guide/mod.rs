//! The guide beside the work: its pages, finding words in them, and which page explains a finding or a working.

use tankard_core::t;
mod draw;
pub mod keyboard;
pub mod markdown;
pub mod pages;
mod panel;
pub mod places;
pub mod search;

use egui::{Context, Id, Ui};

use crate::look;

/// A place in the guide.
#[derive(Clone, Debug, Default, PartialEq, Eq, Hash)]
pub struct Place {
    /// The name of the page.
    pub page: String,
    /// The anchor of a heading, on the page or on the English one; empty for the beginning of the page.
    pub anchor: String,
}

impl Place {
    /// Reads "levels" or "levels#stop".
    pub fn read(text: &str) -> Self {
        let (page, anchor) = text.split_once('#').unwrap_or((text, ""));
        Self { page: page.to_owned(), anchor: anchor.to_owned() }
    }

    /// The words of its heading, as the page has them; none where there is no such place.
    pub fn heading(&self) -> Option<String> {
        let page = pages::all().get(pages::at(&self.page)?)?;
        if self.anchor.is_empty() {
            return Some(page.title.clone());
        }
        page.heading(&self.anchor).map(|(_, words)| markdown::plain(words))
    }
}

/// What is shown of the guide.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
enum Showing {
    /// The list of pages.
    #[default]
    List,
    /// Where the words that are typed stand.
    Found,
    /// A page, by its place in the list.
    Page(usize),
}

/// What gets the keyboard when it is drawn.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
enum Wanted {
    #[default]
    Nothing,
    /// The box to find words by.
    Box,
    /// The heading that was led to.
    Heading,
}

/// What is open of the guide; it stays while the guide is put away.
#[derive(Debug, Default)]
pub struct State {
    is_open: bool,
    showing: Showing,
    /// What was shown before, with how far it was scrolled.
    trail: Vec<(Showing, f32)>,
    query: String,
    /// How far what is shown is scrolled.
    scrolled: f32,
    /// How far to scroll it once.
    scroll_to: Option<f32>,
    /// The heading to scroll to once.
    target: Option<String>,
    wanted: Wanted,
    /// What had the keyboard before the guide was opened.
    before: Option<Id>,
    /// Whether the keyboard was in the guide in the last frame.
    has_keys: bool,
}

impl State {
    /// Whether it stands beside the work, or in its place.
    pub const fn is_open(&self) -> bool {
        self.is_open
    }

    /// The name of the page in use; none where the list or what was found is shown.
    pub fn page(&self) -> Option<&'static str> {
        match self.showing {
            Showing::Page(at) => pages::all().get(at).map(|page| page.name),
            Showing::List | Showing::Found => None,
        }
    }

    /// Goes on where the guide was left in an earlier run.
    pub fn take_up(&mut self, page: &str) {
        if let Some(at) = pages::at(page) {
            self.showing = Showing::Page(at);
        }
    }

    /// Opens the guide where it was left, or puts it away and gives the keyboard back.
    pub fn toggle(&mut self, ctx: &Context) {
        if self.is_open {
            self.is_open = false;
            self.has_keys = false;
            if let Some(id) = self.before.take() {
                ctx.memory_mut(|memory| memory.request_focus(id));
            }
        } else {
            self.before = ctx.memory(egui::Memory::focused);
            self.is_open = true;
            self.wanted = Wanted::Box;
        }
    }

    /// Opens the guide at a place.
    pub fn go(&mut self, place: &Place, ctx: &Context) {
        let Some(at) = pages::at(&place.page) else { return };
        if !self.is_open {
            self.before = ctx.memory(egui::Memory::focused);
            self.is_open = true;
        }
        self.leave();
        self.showing = Showing::Page(at);
        let heading = pages::all().get(at).and_then(|page| page.heading(&place.anchor));
        self.target = heading.map(|(anchor, _)| anchor.to_owned());
        self.scroll_to = self.target.is_none().then_some(0.0);
        self.wanted = Wanted::Heading;
    }

    /// Puts the guide away where it stands in the place of the work, to which someone is led.
    pub fn make_room(&mut self, ctx: &Context) {
        if self.is_open && !Self::is_beside(ctx) {
            self.is_open = false;
            self.has_keys = false;
            self.before = None;
        }
    }

    /// Shows the list of pages.
    fn list(&mut self) {
        self.leave();
        self.showing = Showing::List;
        self.scroll_to = Some(0.0);
    }

    /// Shows where the words stand that are typed.
    fn find(&mut self) {
        if self.showing != Showing::Found {
            self.leave();
            self.showing = Showing::Found;
        }
        self.scroll_to = Some(0.0);
    }

    /// Goes back to what was shown before.
    fn back(&mut self) {
        if let Some((showing, scrolled)) = self.trail.pop() {
            self.showing = showing;
            self.scroll_to = Some(scrolled);
            self.target = None;
            self.wanted = Wanted::Heading;
        }
    }

    fn leave(&mut self) {
        self.trail.push((self.showing, self.scrolled));
    }
}

fn asked() -> Id {
    Id::unique("tankard place of the guide asked for")
}

/// The words that lead to what explains something, of which a screen reader says the heading.
pub fn link(ui: &mut Ui, place: Place) {
    let heading = place.heading().unwrap_or_default();
    // Without the room of a button, so that it stands in line with the words before it.
    let padding = std::mem::take(&mut ui.spacing_mut().button_padding);
    let text = look::soft(ui, t!("guide-guide")).color(look::colours(ui).brass);
    let link =
        ui.add(egui::Button::new(text).frame(false)).accessible_name(t!("guide-guide-heading", heading = heading));
    ui.spacing_mut().button_padding = padding;
    if link.on_hover_text(heading).clicked() {
        ui.ctx().data_mut(|data| data.insert_temp(asked(), place));
    }
}

/// The place that was asked for since the last call.
pub fn take_asked(ctx: &Context) -> Option<Place> {
    ctx.data_mut(|data| data.remove_temp(asked()))
}
