//! The shed: products, waters, rigs, stock, local advice and law, each a list with one page; how records are
//! kept, and the farm itself. A product's page follows its label from the
//! front panel to the directions, so that a person can type from the booklet without jumping.

mod advice;
mod aside;
mod conditions;
mod front;
mod guidance;
mod house;
mod laws;
mod paste;
mod products;
mod records;
mod rigs;
mod sheets;
mod start;
mod statements;
mod stock;
mod waters;

use egui::{
    Button, CentralPanel, Event, Frame, Key, Margin, Panel, RichText, ScrollArea, Stroke, TextStyle, Ui, UiBuilder,
    Vec2,
};
use tankard_core::farm::{Farm, Id, Nouns, Pass};
use tankard_core::finding::Finding;
use tankard_core::label::directions::Kind;
use tankard_core::plausible;
use tankard_core::t;

use crate::app::{Desk, Shown};
use crate::command::Spot;
use crate::command::View;
use crate::document::Document;
use crate::look;
use crate::parts::lists::{self, Act};
use crate::parts::{boxes, offers};
use stock::Stock;

/// Width of the list at the left, and where the window is small.
const LIST: (f32, f32) = (282.0, 236.0);
/// Width of a window that is small.
const SMALL: f32 = 1000.0;
/// Width below which the sheets stand under the page instead of beside it.
const WIDE: f32 = 860.0;

/// The lists, and the farm itself.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash)]
enum Page {
    #[default]
    Products,
    Waters,
    Rigs,
    Stock,
    Advice,
    Law,
    Records,
    Farm,
}

impl Page {
    const ALL: [Self; 8] =
        [Self::Products, Self::Waters, Self::Rigs, Self::Stock, Self::Advice, Self::Law, Self::Records, Self::Farm];

    fn name(self) -> &'static str {
        match self {
            Self::Products => t!("shed-products"),
            Self::Waters => t!("shed-waters"),
            Self::Rigs => t!("shed-rigs"),
            Self::Stock => t!("shed-stock"),
            Self::Advice => t!("shed-advice"),
            Self::Law => t!("shed-law"),
            Self::Records => t!("shed-records"),
            Self::Farm => t!("shed-farm"),
        }
    }
}

/// What is chosen in this view.
#[derive(Debug, Default)]
pub struct State {
    page: Page,
    product: Option<Id>,
    water: Option<Id>,
    rig: Option<Id>,
    advice: Option<Id>,
    law: Option<Id>,
    /// What is on hand and what the passes take, as last reckoned.
    stock: stock::Known,
    /// Where a product went, looked up once for a state of the farm.
    went: Option<((u64, Id), Vec<sheets::Year>)>,
    /// What of the rig is open.
    rigs: rigs::State,
    /// What is looked for among the products.
    find: String,
    /// A product that is begun from an active.
    starting: Option<start::Draft>,
    /// What waits for an answer before it is removed.
    removing: Option<(Page, Id)>,
    /// The product whose page shows the rows of a label that are still to fill in.
    filling: Option<Id>,
    /// Directions that are pasted.
    pasting: Option<paste::Draft>,
    /// A sentence of them that is being typed.
    aside: Option<aside::Aside>,
    /// The kind of statement whose first row is to take the keyboard.
    leads_to: Option<Kind>,
    /// Whether the kinds of statement stand open to choose from.
    adding: bool,
    /// Whether the list still has to come to what was chosen.
    reveal: bool,
    /// Whether the statement that was just added takes the keyboard.
    step_into: bool,
    /// Place of the statement that was just added, until it has been scrolled to.
    fresh: Option<usize>,
}

impl State {
    /// Chooses a product.
    pub fn choose_product(&mut self, id: &str) {
        self.page = Page::Products;
        self.choose(id.to_owned());
        self.find.clear();
    }

    /// Leads to the first statement of a kind on the page of a product; where it is missing, to its empty row, if most labels have one.
    pub fn lead_to_statement(&mut self, id: &str, kind: Kind, is_missing: bool) {
        if is_missing {
            self.filling = Some(id.to_owned());
        }
        self.leads_to = Some(kind);
    }

    /// Opens the account of a product.
    pub fn show_account(&mut self, id: &str) {
        self.page = Page::Stock;
        self.removing = None;
        self.stock.open_account(id);
    }

    /// Chooses a water.
    pub fn choose_water(&mut self, id: &str) {
        self.page = Page::Waters;
        self.choose(id.to_owned());
    }

    /// Chooses a rig.
    pub fn choose_rig(&mut self, id: &str) {
        self.page = Page::Rigs;
        self.rigs = rigs::State::default();
        self.choose(id.to_owned());
    }

    /// Opens the nozzle sets of a rig.
    pub fn choose_nozzles(&mut self, id: &str) {
        self.choose_rig(id);
        self.rigs.open_nozzles();
    }

    /// Opens a page.
    pub fn show_page(&mut self, spot: Spot) {
        self.page = match spot {
            Spot::Waters => Page::Waters,
            Spot::Rigs => Page::Rigs,
            Spot::Stock => Page::Stock,
            Spot::Advice => Page::Advice,
            Spot::Law => Page::Law,
            _ => Page::Products,
        };
        self.removing = None;
    }

    /// Chooses a product, with the rows of a label to fill in.
    pub fn fill_in(&mut self, id: &str) {
        self.choose_product(id);
        self.filling = Some(id.to_owned());
    }

    /// Opens the page of the farm itself.
    pub fn choose_farm(&mut self) {
        self.page = Page::Farm;
    }

    /// What is chosen in each list.
    fn chosen(&self) -> [Option<Id>; 5] {
        [&self.product, &self.water, &self.rig, &self.advice, &self.law].map(Clone::clone)
    }

    fn choose(&mut self, id: Id) {
        self.removing = None;
        self.adding = false;
        self.reveal = true;
        self.pasting = None;
        self.leads_to = None;
        self.aside = None;
        self.filling = None;
        match self.page {
            Page::Products | Page::Stock | Page::Records | Page::Farm => self.product = Some(id),
            Page::Waters => self.water = Some(id),
            Page::Rigs => self.rig = Some(id),
            Page::Advice => self.advice = Some(id),
            Page::Law => self.law = Some(id),
        }
    }

    /// What is chosen may be gone, by undo or by removing it: then the first is.
    fn settle(&mut self, farm: &Farm) {
        fn first<T>(chosen: &mut Option<Id>, map: &Nouns<T>) {
            if chosen.as_ref().is_none_or(|id| !map.contains_key(id)) {
                *chosen = map.keys().next().cloned();
            }
        }
        first(&mut self.product, &farm.products);
        first(&mut self.water, &farm.waters);
        first(&mut self.rig, &farm.rigs);
        first(&mut self.advice, &farm.advice);
        first(&mut self.law, &farm.laws);
        self.rigs.settle(self.rig.as_ref().and_then(|id| farm.rigs.get_key_value(id)));
    }
}

/// Adds a rig and opens its page.
pub fn begin_rig(desk: &mut Desk) {
    with_state(desk, |document, state| {
        state.page = Page::Rigs;
        rigs::add(document, state);
    });
}

/// Adds a water and opens its page.
pub fn begin_water(desk: &mut Desk) {
    with_state(desk, |document, state| {
        state.page = Page::Waters;
        waters::add(document, state);
    });
}

/// Adds a product and opens its page with the rows of a label to fill in.
pub fn begin_product(desk: &mut Desk) {
    with_state(desk, |document, state| {
        state.page = Page::Products;
        start::from_a_label(document, state);
    });
}

fn with_state(desk: &mut Desk, act: impl FnOnce(&mut Document, &mut State)) {
    desk.view = View::Shed;
    act(&mut desk.document, &mut desk.shed);
}

/// What every page of the view works with.
struct Bench<'a> {
    desk: &'a mut Desk,
    state: &'a mut State,
    stock: &'a Stock,
    /// What there is to doubt of what is chosen.
    doubts: &'a [Finding],
}

impl Bench<'_> {
    fn farm(&self) -> &Farm {
        self.desk.document.farm()
    }
}

/// Shows the view.
pub fn show(desk: &mut Desk, ui: &mut Ui) {
    let mut state = std::mem::take(&mut desk.shed);
    state.settle(desk.document.farm());
    let stock = state.stock.fresh(desk);
    let revision = desk.document.revision();
    let doubts = doubts(desk, &state);
    offers::set(ui.ctx(), &doubts);
    let mut bench = Bench { desk, state: &mut state, stock: &stock, doubts: &doubts };
    match bench.desk.list.shown(ui.ctx()) {
        Shown::Both => {
            let ground = Frame::new().fill(look::colours(ui).ground);
            let width = if ui.available_width() < SMALL { LIST.1 } else { LIST.0 };
            let panel = Panel::left("shed list").exact_size(width).resizable(false).frame(ground);
            panel.show(ui, |ui| list(&mut bench, ui, width < LIST.0));
            page(&mut bench, ui);
        }
        Shown::Page => page(&mut bench, ui),
        Shown::List => {
            let before = bench.state.chosen();
            list(&mut bench, ui, false);
            if lists::take_clicked(ui.ctx()) || bench.state.chosen() != before {
                bench.desk.list.page_in_front();
                ui.ctx().request_repaint();
            }
        }
    }
    if desk.document.revision() != revision {
        // What was drawn before the edit shows it in the next frame.
        ui.ctx().request_repaint();
    }
    desk.shed = state;
}

/// The page in use.
fn page(bench: &mut Bench, ui: &mut Ui) {
    match bench.state.page {
        Page::Products => products::page(bench, ui),
        Page::Waters => waters::page(bench, ui),
        Page::Rigs => rigs::page(bench, ui),
        Page::Stock => stock::page(bench, ui),
        Page::Advice => advice::page(bench, ui),
        Page::Law => laws::page(bench, ui),
        Page::Records => records::page(bench, ui),
        Page::Farm => house::page(bench, ui),
    }
}

/// What there is to doubt of what is chosen on the page in use.
fn doubts(desk: &Desk, state: &State) -> Vec<Finding> {
    let (farm, mut found) = (desk.document.farm(), Vec::new());
    match (state.page, &state.product, &state.water, &state.rig) {
        (Page::Products, Some(id), ..) => plausible::of_product(farm, id, &mut found),
        (Page::Waters, _, Some(id), _) => plausible::of_water(farm, id, &mut found),
        (Page::Rigs, .., Some(id)) => plausible::of_rig(farm, id, &mut found),
        (Page::Farm, ..) => plausible::of_place(farm, desk.now().date(), &mut found),
        _ => {}
    }
    found
}

/// The list, with what can be done at its foot.
fn list(bench: &mut Bench, ui: &mut Ui, is_tight: bool) {
    Panel::top("shed pages").show_separator_line(false).frame(inset(14, 8)).show(ui, |ui| pages(bench, ui));
    // Where nothing is to be added there is no foot.
    let acts = |bench: &mut Bench, ui: &mut Ui| {
        if is_tight {
            tight(ui);
        }
        match bench.state.page {
            Page::Products => products::foot(bench, ui),
            Page::Waters => waters::foot(bench, ui),
            Page::Rigs => rigs::foot(bench, ui),
            Page::Stock => stock::foot(bench, ui),
            Page::Advice => advice::foot(bench, ui),
            Page::Law => laws::foot(bench, ui),
            Page::Records | Page::Farm => {}
        }
    };
    if !matches!(bench.state.page, Page::Records | Page::Farm) {
        Panel::bottom("shed acts").frame(inset(14, 8)).show(ui, |ui| acts(bench, ui));
    }
    CentralPanel::default().frame(Frame::new()).show(ui, |ui| {
        // However little room the foot leaves, it is not more than that.
        let area = ScrollArea::vertical().id_salt(bench.state.page).auto_shrink(false).min_scrolled_height(0.0);
        area.show(ui, |ui| {
            Frame::new().inner_margin(Margin { left: 14, right: 6, top: 0, bottom: 8 }).show(ui, |ui| {
                ui.spacing_mut().item_spacing.y = 0.0;
                match bench.state.page {
                    Page::Products => products::list(bench, ui),
                    Page::Waters => waters::list(bench, ui),
                    Page::Rigs => rigs::list(bench, ui),
                    Page::Stock => stock::list(bench, ui),
                    Page::Advice => advice::list(bench, ui),
                    Page::Law => laws::list(bench, ui),
                    Page::Records => records::list(ui),
                    Page::Farm => house::list(ui),
                }
            });
        });
    });
}

fn inset(x: i8, y: i8) -> Frame {
    Frame::new().inner_margin(Margin::symmetric(x, y))
}

/// The links to the lists.
fn pages(bench: &mut Bench, ui: &mut Ui) {
    let mut page = bench.state.page;
    ui.spacing_mut().item_spacing.y = 2.0;
    // What is on hand in one line, and what binds in the next.
    let (held, binds) = Page::ALL.split_at(4);
    for names in [held, binds] {
        links(ui, &mut page, names, |page| page.name());
    }
    if page != bench.state.page {
        bench.state.page = page;
        bench.state.removing = None;
    }
    if bench.state.page == Page::Products {
        ui.add_space(4.0);
        let width = ui.available_width();
        boxes::text_or_empty(
            ui,
            t!("shed-find-a-product"),
            &mut bench.state.find,
            width,
            t!("shed-find-by-name-or-active"),
        );
    }
}

/// Links to pages.
fn links<T: Copy + PartialEq>(ui: &mut Ui, open: &mut T, all: &[T], name: impl Fn(&T) -> &'static str) {
    ui.horizontal_wrapped(|ui| {
        tight(ui);
        ui.spacing_mut().item_spacing.x = look::PAGES;
        ui.spacing_mut().button_padding.x = 0.0;
        for page in all {
            if look::page(ui, name(page), open == page).clicked() {
                *open = *page;
            }
        }
    });
}

/// A page with its sheets: beside it, of a width, where there is room, else under it.
fn with_sheets(
    bench: &mut Bench,
    ui: &mut Ui,
    width: f32,
    page: impl FnOnce(&mut Bench, &mut Ui),
    sheets: impl FnOnce(&mut Bench, &mut Ui),
) {
    let ground = Frame::new().fill(look::colours(ui).ground);
    let state = &bench.state;
    let salt = (state.page, state.product.clone(), state.water.clone(), state.rig.clone(), state.rigs.page());
    let wide = ui.available_width() >= WIDE;
    let mut left = ui.available_rect_before_wrap();
    let mut right = left;
    if wide {
        left.max.x -= width;
        right.min.x = left.max.x;
    }
    let mut sheets = Some(sheets);
    // The page comes before its sheets, so that the Tab key goes through it first.
    ui.scope_builder(UiBuilder::new().max_rect(left), |ui| {
        CentralPanel::default().frame(ground).show(ui, |ui| {
            ScrollArea::vertical().id_salt(("page", &salt)).auto_shrink(false).show(ui, |ui| {
                let margin = Margin { left: 16, right: if wide { 6 } else { 16 }, top: 10, bottom: 24 };
                Frame::new().inner_margin(margin).show(ui, |ui| {
                    ui.set_width(ui.available_width());
                    page(bench, ui);
                    if !wide && let Some(sheets) = sheets.take() {
                        ui.add_space(look::GRID);
                        sheets(bench, ui);
                    }
                });
            });
        });
    });
    if let Some(sheets) = sheets {
        ui.scope_builder(UiBuilder::new().max_rect(right), |ui| {
            CentralPanel::default().frame(ground).show(ui, |ui| {
                ScrollArea::vertical().id_salt(("sheets", &salt)).auto_shrink(false).show(ui, |ui| {
                    inset(14, 12).show(ui, |ui| sheets(bench, ui));
                });
            });
        });
    }
}

/// Boxes as pale patches without an outline until the pointer or the keyboard is there, so that a page full of them
/// still reads as a page.
fn quiet(ui: &mut Ui) {
    ui.visuals_mut().widgets.inactive.bg_stroke = Stroke::NONE;
    ui.spacing_mut().item_spacing.y = 0.0;
    ui.spacing_mut().button_padding = Vec2::new(5.0, 2.0);
}

/// The tight face, for rows that hold many boxes.
fn tight(ui: &mut Ui) {
    for style in [TextStyle::Body, TextStyle::Button] {
        if let Some(font) = ui.style_mut().text_styles.get_mut(&style) {
            font.family = look::condensed();
        }
    }
}

/// The tight face in the small size.
fn small(ui: &mut Ui) {
    let mut font = TextStyle::Small.resolve(ui.style());
    font.family = look::condensed();
    ui.style_mut().text_styles.insert(TextStyle::Body, font);
}

/// The name of the thing as the title of its page, to be edited where it stands.
fn title_box(ui: &mut Ui, name: &str, value: &mut String) {
    title_box_hinted(ui, name, value, t!("shed-its-name"));
}

/// The same with a hint of what belongs into it.
fn title_box_hinted(ui: &mut Ui, name: &str, value: &mut String, hint: &str) {
    ui.scope(|ui| {
        ui.style_mut().override_font_id = Some(TextStyle::Heading.resolve(ui.style()));
        ui.visuals_mut().text_edit_bg_color = Some(look::colours(ui).ground);
        // The letters line up with the page, not with the edge of a box.
        ui.spacing_mut().button_padding.x = 0.0;
        let width = ui.available_width();
        boxes::text_or_empty(ui, name, value, width, hint);
    });
}

/// The title of a page that has no name to edit, where that of others stands.
fn title(ui: &mut Ui, text: &str) {
    ui.add_space(2.0);
    ui.label(look::title(text));
    ui.add_space(2.0);
}

/// The heading of a section, with a line beneath.
fn section(ui: &mut Ui, text: &str) {
    ui.add_space(10.0);
    ui.label(look::heading(text).color(look::colours(ui).soft));
    boxes::hairline(ui);
}

/// A row of a section, with a hairline beneath.
fn line(ui: &mut Ui, label: &str, add: impl FnOnce(&mut Ui)) {
    boxes::row(ui, label, add);
    boxes::hairline(ui);
}

/// Words between two boxes.
fn word(ui: &mut Ui, text: &str) {
    boxes::word(ui, text);
}

/// Takes a row away.
fn cross(ui: &mut Ui, what: &str) -> bool {
    let name = t!("shed-remove", what = what);
    // Whoever types on after the last box of a row must not remove it by a blank; Enter does.
    let id = ui.next_auto_id();
    if ui.memory(|memory| memory.has_focus(id)) {
        ui.input_mut(|input| input.events.retain(|event| !matches!(event, Event::Key { key: Key::Space, .. })));
    }
    let response = ui.add(Button::new(look::act(ui, "×")).frame(false));
    response.on_hover_text(t!("shed-remove-what", what = what)).accessible_name(name).clicked()
}

/// The passes that take a thing.
fn users(farm: &Farm, takes: impl Fn(&Pass) -> bool) -> Vec<(Id, Pass)> {
    farm.passes.iter().filter(|(_, pass)| takes(pass)).map(|(id, pass)| (id.clone(), pass.clone())).collect()
}

/// The rows of a plain list: id, name, and a line of less weight.
fn rows(bench: &mut Bench, ui: &mut Ui, chosen: Option<&Id>, entries: Vec<(Id, String, String)>) {
    for (id, name, summary) in entries {
        let is_chosen = chosen == Some(&id);
        let response = lists::row(ui, is_chosen, &format!("{name}, {summary}"), |ui| {
            ui.add(egui::Label::new(if is_chosen { look::strong(&name) } else { RichText::new(&name) }).truncate());
            ui.label(look::soft(ui, summary));
        });
        if is_chosen && std::mem::take(&mut bench.state.reveal) {
            response.scroll_to_me(None);
        }
        if response.clicked() {
            bench.state.choose(id);
            bench.state.reveal = false;
        }
    }
}

/// The foot of a list: adding, and what can be done with the chosen thing. Where passes use it, removing asks first.
fn foot(
    bench: &mut Bench,
    ui: &mut Ui,
    add: &str,
    chosen: Option<(Id, String)>,
    uses: usize,
) -> (bool, Option<(Id, Act)>) {
    ui.spacing_mut().button_padding.x = 0.0;
    let added = boxes::act(ui, add).clicked();
    (added, foot_acts(bench, ui, chosen, uses))
}

/// The room between two acts at the foot of the list.
fn gap(ui: &Ui) -> f32 {
    if ui.available_width() < LIST.1 { look::GRID } else { 14.0 }
}

/// What can be done with the chosen thing.
fn foot_acts(bench: &mut Bench, ui: &mut Ui, chosen: Option<(Id, String)>, uses: usize) -> Option<(Id, Act)> {
    let page = bench.state.page;
    let mut done = None;
    ui.spacing_mut().button_padding.x = 0.0;
    ui.spacing_mut().item_spacing.x = gap(ui);
    let (id, name) = chosen?;
    if bench.state.removing.as_ref() == Some(&(page, id.clone())) {
        ui.label(t!("shed-passes-use", uses = uses, name = name));
        ui.horizontal(|ui| {
            if boxes::act(ui, t!("shed-remove-it-all-the-same")).clicked() {
                bench.state.removing = None;
                done = Some((id.clone(), Act::Remove));
            }
            if boxes::act(ui, t!("shed-keep-it")).clicked() {
                bench.state.removing = None;
            }
        });
    } else {
        match lists::acts(ui, &name) {
            Some(Act::Remove) if uses > 0 => bench.state.removing = Some((page, id)),
            Some(act) => done = Some((id, act)),
            None => {}
        }
    }
    done
}

/// Adds an entry to one of the farm's collections and chooses it.
fn add<T: Clone>(
    document: &mut Document,
    state: &mut State,
    map: impl Fn(&mut Farm) -> &mut Nouns<T>,
    stem: &str,
    entry: T,
) {
    let mut id = Id::new();
    document.edit(|farm| {
        let map = map(farm);
        id = tankard_core::farm::id::fresh(map, stem);
        map.insert(id.clone(), entry);
    });
    state.choose(id);
}

/// Gives a copy its name.
fn copied(name: &mut String) -> String {
    *name = t!("shed-name-copy", name = name);
    name.clone()
}

/// Does an act on one of the farm's collections and chooses what follows.
fn apply<T: Clone>(
    document: &mut Document,
    state: &mut State,
    (id, act): (Id, Act),
    map: impl Fn(&mut Farm) -> &mut Nouns<T>,
    rename: impl FnOnce(&mut T) -> String,
) {
    let mut next = None;
    document.edit(|farm| next = lists::apply(act, map(farm), &id, rename));
    if let Some(next) = next {
        state.choose(next);
    }
}

/// A name, or a word where there is none yet.
fn named(name: &str) -> String {
    if name.trim().is_empty() { t!("shed-no-name-yet").to_owned() } else { name.to_owned() }
}
