//! One box that finds anything by its words: fields, passes, products, waters, rigs, records by their day, commands, pages of the guide.

pub mod index;
mod panel;

use egui::{Context, Id};
use tankard_core::farm::Farm;

use crate::keys::finding as keys;
use index::{Found, Index, LISTED, Thing};

/// What is looked for, while the box is there.
#[derive(Debug, Default)]
pub struct State {
    open: Option<Open>,
}

/// The box as it stands there.
#[derive(Debug)]
#[allow(clippy::struct_excessive_bools)] // Each is a wish of its own for the next frame.
struct Open {
    query: String,
    /// What had the keyboard before.
    before: Option<Id>,
    /// Of which farm and state the index is.
    of: (u64, u64),
    index: Index,
    /// What was found, for so many things looked through.
    found: Option<(String, usize, Found)>,
    /// The place of the chosen one in the list.
    chosen: usize,
    /// Whether the box still has to get the keyboard.
    is_fresh: bool,
    /// Whether the list has to come to what is chosen.
    reveal: bool,
    /// Whether Enter was pressed in this frame.
    goes: bool,
}

impl State {
    /// Whether the box is there.
    pub const fn is_open(&self) -> bool {
        self.open.is_some()
    }

    /// What was found for what is typed.
    pub fn found(&self) -> Option<&Found> {
        self.open.as_ref()?.found.as_ref().map(|(_, _, found)| found)
    }

    /// Opens the box, or leaves it.
    pub fn toggle(&mut self, farm: &Farm, of: (u64, u64), ctx: &Context) {
        if self.is_open() {
            self.leave(ctx);
            return;
        }
        self.open = Some(Open {
            query: String::new(),
            before: ctx.memory(egui::Memory::focused),
            of,
            index: Index::new(farm),
            found: None,
            chosen: 0,
            is_fresh: true,
            reveal: false,
            goes: false,
        });
    }

    /// Leaves the box and gives the keyboard back to what had it.
    fn leave(&mut self, ctx: &Context) {
        let Some(open) = self.open.take() else { return };
        if let Some(id) = open.before {
            ctx.memory_mut(|memory| memory.request_focus(id));
        }
    }

    /// Puts the box away.
    pub fn close(&mut self) {
        self.open = None;
    }

    /// Takes the keys that belong to it before anything else sees them.
    pub fn keys(&mut self, ctx: &Context) {
        let Some(open) = &mut self.open else { return };
        if open.keys(ctx) {
            self.leave(ctx);
        }
    }

    /// Goes to what is chosen, once what was typed before is looked for: letters and Enter may come in one frame.
    fn go(&mut self, ctx: &Context) -> Option<Thing> {
        let open = self.open.as_mut()?;
        if !std::mem::take(&mut open.goes) {
            return None;
        }
        let thing = open.found.as_ref().and_then(|(_, _, found)| found.things.get(open.chosen)).copied()?;
        // The box is gone in this frame, and must not be ringed any more.
        ctx.memory_mut(egui::Memory::stop_text_input);
        self.open = None;
        Some(thing)
    }
}

impl Open {
    /// Moves in the list; gives whether it is to be left.
    fn keys(&mut self, ctx: &Context) -> bool {
        let last = self.found.as_ref().map_or(0, |(_, _, found)| found.things.len()).saturating_sub(1);
        let before = self.chosen;
        // The longer key first: Tab is taken with Shift, too.
        if keys::BEFORE.taken(ctx) {
            self.chosen = self.chosen.checked_sub(1).unwrap_or(last);
        }
        if keys::NEXT.taken(ctx) {
            self.chosen = if self.chosen >= last { 0 } else { self.chosen + 1 };
        }
        if keys::FURTHER.taken(ctx) {
            self.chosen = (self.chosen + LISTED).min(last);
        }
        if keys::BACK.taken(ctx) {
            self.chosen = self.chosen.saturating_sub(LISTED);
        }
        self.reveal |= self.chosen != before;
        self.goes |= keys::GO.taken(ctx);
        keys::LEAVE.taken(ctx)
    }

    /// Looks once for what is typed, and again where more of the farm was taken up.
    fn look(&mut self, farm: &Farm, of: (u64, u64)) {
        if self.of != of {
            // The farm became another meanwhile; places in it may be others.
            self.of = of;
            self.index = Index::new(farm);
            self.found = None;
        }
        self.index.go_on(farm);
        let is_same = self.found.as_ref().is_some_and(|(query, of, _)| *query == self.query && *of == self.index.len());
        if is_same {
            return;
        }
        let is_other = self.found.as_ref().is_none_or(|(query, _, _)| *query != self.query);
        let found = self.index.find(&self.query);
        // More of the farm moves the list, and what is chosen stays chosen.
        let kept = self.found.as_ref().and_then(|(_, _, known)| known.things.get(self.chosen)).copied();
        self.chosen = match kept {
            Some(kept) if !is_other => found.things.iter().position(|thing| *thing == kept).unwrap_or(0),
            _ => 0,
        };
        self.reveal |= is_other;
        self.found = Some((self.query.clone(), self.index.len(), found));
    }
}
