//! A pasted sentence that was not understood, kept in sight above the rows that it belongs to while a person types what it says.

use egui::{Frame, Label, Margin, Stroke, Ui};
use tankard_core::farm::{Product, Says, Statement};
use tankard_core::label::directions::{Kind, Left};
use tankard_core::quantity::Units;
use tankard_core::t;

use super::{Bench, paste, statements, tight};
use crate::look;
use crate::parts::boxes;

/// The sentence.
#[derive(Clone, Debug)]
pub(super) struct Aside {
    sentence: String,
    kind: Kind,
    /// Its place among those that were not understood.
    place: usize,
    /// Where the pasted text stands on the label.
    at: String,
    /// Whether its rows still have to be led to, from the frame after this one on: what is pressed in a frame keeps the keyboard in it.
    leads_after: Option<u64>,
}

/// What a person does from beside the sentence.
enum Act {
    AnotherRow,
    Next(Aside),
    Back,
    Done,
}

impl Aside {
    /// Of a sentence at its place among those that were not understood; `None` where it is not known where it belongs.
    pub(super) fn new(ui: &Ui, left: &Left, place: usize, at: &str) -> Option<Self> {
        let leads_after = Some(ui.ctx().cumulative_pass_nr());
        Some(Self { sentence: left.sentence.clone(), kind: left.kind?, place, at: at.to_owned(), leads_after })
    }

    /// Whether it belongs to what a statement says.
    pub(super) const fn is_of(&self, says: &Says) -> bool {
        self.kind.is_of(says)
    }

    /// Whether the row that comes now is to take the keyboard; true once.
    pub(super) fn leads_on(&mut self, ui: &Ui) -> bool {
        self.leads_after.take_if(|since| *since < ui.ctx().cumulative_pass_nr()).is_some()
    }

    /// What its kind is called in the form.
    pub(super) fn name_of(left: &Left, units: Units) -> Option<&'static str> {
        let kind = left.kind?;
        statements::blanks(true, String::new(), units).iter().find(|says| kind.is_of(says)).map(Says::name)
    }
}

/// Puts in a row for the sentence where the form has none yet.
pub(super) fn make_room(bench: &mut Bench, ui: &Ui, product: &mut Product, empty: &[Statement], units: Units) {
    let now = ui.ctx().cumulative_pass_nr();
    let leads = |aside: &&Aside| aside.leads_after.is_some_and(|since| since < now);
    let Some(aside) = bench.state.aside.as_ref().filter(leads) else { return };
    if !product.label.iter().chain(empty).any(|statement| aside.is_of(&statement.says)) {
        add_row(bench, product, units);
    }
}

/// Adds an empty row of the sentence's kind.
fn add_row(bench: &mut Bench, product: &mut Product, units: Units) {
    let Some(aside) = &mut bench.state.aside else { return };
    let active = product.actives.first().map(|active| active.name.clone()).unwrap_or_default();
    let blank = statements::blanks(product.is_liquid(), active, units).into_iter().find(|says| aside.kind.is_of(says));
    if let Some(says) = blank {
        product.label.push(Statement::new(says, &aside.at));
        // The row itself takes the keyboard, and not the first of its kind.
        aside.leads_after = None;
        bench.state.fresh = Some(product.label.len() - 1);
        bench.state.step_into = true;
    }
}

/// The sentence, and where to go from it.
pub(super) fn show(bench: &mut Bench, ui: &mut Ui, product: &mut Product, units: Units) {
    let Some(aside) = bench.state.aside.clone() else { return };
    let mut act = None;
    Frame::new().inner_margin(Margin { left: 10, top: 3, bottom: 2, ..Margin::ZERO }).show(ui, |ui| {
        let top = ui.cursor().top();
        tight(ui);
        ui.add(Label::new(&aside.sentence).wrap());
        ui.horizontal_wrapped(|ui| {
            ui.spacing_mut().button_padding.x = 0.0;
            ui.spacing_mut().item_spacing.x = 14.0;
            if boxes::act(ui, t!("shed-another-row-for-the-sentence")).clicked() {
                act = Some(Act::AnotherRow);
            }
            if let Some(next) = paste::next_left(ui, bench.state.pasting.as_ref(), aside.place)
                && boxes::act(ui, t!("shed-next-sentence-not-understood")).clicked()
            {
                act = Some(Act::Next(next));
            }
            if bench.state.pasting.is_some() && boxes::act(ui, t!("shed-back-to-the-pasted-text")).clicked() {
                act = Some(Act::Back);
            }
            if boxes::act(ui, t!("shed-put-the-sentence-away")).clicked() {
                act = Some(Act::Done);
            }
        });
        let line = Stroke::new(2.0, look::colours(ui).check);
        ui.painter().vline(ui.min_rect().left() - 9.0, top..=ui.min_rect().bottom(), line);
    });
    match act {
        None => {}
        Some(Act::AnotherRow) => add_row(bench, product, units),
        Some(Act::Next(next)) => {
            bench.state.aside = Some(next);
            ui.request_repaint();
        }
        Some(Act::Back) => {
            bench.state.aside = None;
            boxes::want(ui.ctx(), paste::name());
        }
        Some(Act::Done) => bench.state.aside = None,
    }
}
