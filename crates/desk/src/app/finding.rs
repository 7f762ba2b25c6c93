//! Where finding leads, what stands over everything, and which of a list and its page has the room where there is room for one.

use egui::Context;
use tankard_core::finding::Subject;

use super::{Desk, bar};
use crate::command::{Command, Spot, View};
use crate::find::index::{Kind, Thing, headings};
use crate::look;
use crate::parts::lists;
use crate::views::{season_log, tank_loads};

/// Whether a list stands beside its page, and in a small window in its place.
#[derive(Clone, Copy, Debug, Default)]
pub struct List {
    is_away: bool,
    is_in_front: bool,
}

/// What of a view is shown.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Shown {
    /// The list and beside it the page.
    Both,
    /// The list alone.
    List,
    /// The page alone.
    Page,
}

impl List {
    /// What there is room for, and is wanted.
    pub fn shown(self, ctx: &Context) -> Shown {
        match (is_narrow(ctx), self) {
            (true, Self { is_in_front: true, .. }) => Shown::List,
            (false, Self { is_away: false, .. }) => Shown::Both,
            _ => Shown::Page,
        }
    }

    /// Shows it or puts it away.
    pub fn toggle(&mut self, ctx: &Context) {
        let switch = if is_narrow(ctx) { &mut self.is_in_front } else { &mut self.is_away };
        *switch = !*switch;
    }

    /// Where there is room for one, the page has it from now on.
    pub fn page_in_front(&mut self) {
        self.is_in_front = false;
    }
}

/// Whether there is room for a list or its page, not for both.
pub(crate) fn is_narrow(ctx: &Context) -> bool {
    ctx.content_rect().width() < look::NARROW
}

impl Desk {
    /// Gives its keys to the box that finds anything, before anything else sees them.
    pub(super) fn go_on_finding(&mut self, ctx: &Context) {
        self.find.keys(ctx);
    }

    /// What stands over all views: the box that finds anything, and the ring round what has the keyboard.
    pub(super) fn over_all(&mut self, ctx: &Context) {
        let of = (self.farm_number, self.document.revision());
        if let Some(thing) = self.find.show(ctx, self.document.farm(), of) {
            self.go_to(thing, ctx);
        }
        bar::ring(ctx);
    }

    /// Goes to what was found.
    fn go_to(&mut self, thing: Thing, ctx: &Context) {
        let farm = self.document.farm();
        let subject = match thing.kind {
            Kind::Command => {
                if let Some(command) = Command::LISTED.get(thing.at) {
                    self.run(command.clone(), ctx);
                }
                return;
            }
            Kind::Guide => {
                if let Some(heading) = headings().nth(thing.at) {
                    self.run(Command::GuideTo(heading.place), ctx);
                }
                return;
            }
            Kind::Field => farm.fields.get_index(thing.at).map(|(id, _)| Subject::Field(id.clone())),
            Kind::Pass => farm.passes.get_index(thing.at).map(|(id, _)| Subject::Pass(id.clone())),
            Kind::Product => farm.products.get_index(thing.at).map(|(id, _)| Subject::Product(id.clone())),
            Kind::Water => farm.waters.get_index(thing.at).map(|(id, _)| Subject::Water(id.clone())),
            Kind::Rig => farm.rigs.get_index(thing.at).map(|(id, _)| Subject::Rig(id.clone())),
            Kind::Record => farm.records.get_index(thing.at).map(|(id, _)| Subject::Record(id.clone())),
        };
        let Some(subject) = subject else { return };
        self.backups = None;
        self.guide.make_room(ctx);
        self.lead_to(&subject);
        match &subject {
            Subject::Field(id) => {
                self.fields.find.clear();
                self.fields.reveal = true;
                self.fields.fresh = (self.list.shown(ctx) != Shown::Page).then(|| id.clone());
            }
            Subject::Pass(_) => {
                self.tank_loads.reveal = true;
                lists::give_keys(ctx);
            }
            Subject::Record(_) => self.season_log.bring_chosen(),
            _ => lists::give_keys(ctx),
        }
    }

    /// Shows a page of a view.
    pub(super) fn show_spot(&mut self, spot: Spot) {
        self.view = spot.view();
        self.list.page_in_front();
        let page = |desk: &mut Self, page| {
            desk.tank_loads.day = None;
            desk.tank_loads.page = page;
        };
        match spot {
            Spot::Map => self.fields.map.open = true,
            Spot::Sprayer => page(self, tank_loads::Page::Sprayer),
            Spot::Hours => page(self, tank_loads::Page::Hours),
            Spot::Cards => page(self, tank_loads::Page::Cards),
            Spot::Jar => page(self, tank_loads::Page::Jar),
            Spot::Trials => self.season_log.in_front = season_log::Page::Trials,
            Spot::Review => self.season_log.in_front = season_log::Page::Review,
            Spot::Products | Spot::Waters | Spot::Rigs | Spot::Stock | Spot::Advice | Spot::Law => {
                self.shed.show_page(spot);
            }
        }
        debug_assert!(View::ALL.contains(&self.view));
    }
}
