//! The foot of the window: the file box, questions before work is lost, notices, and boxes that are not understood. Nothing
//! of it is a dialog.

use egui::{Align, Layout, Panel, RichText, ScrollArea, Ui};
use tankard_core::t;

use super::Desk;
use crate::command::Command;
use crate::files::Purpose;
use crate::look;
use crate::parts::{boxes, mark};

impl Desk {
    /// What is said at the foot: a file box, the questions before something is lost, work of an earlier run, a notice.
    pub(super) fn foot(&mut self, ui: &mut Ui) {
        self.show_work(ui);
        if let Some(mut picker) = self.picker.take() {
            match picker.show(ui) {
                None => self.picker = Some(picker),
                Some(Some(path)) => self.chosen(picker.purpose(), path),
                Some(None) => self.leave_after_save = None,
            }
        }
        self.ask_over(ui);
        self.ask_leaving(ui);
        self.ask_conflict(ui);
        self.ask_other(ui);
        self.ask_unreadable(ui);
        self.offer_found(ui);
        self.show_notice(ui);
        self.show_unread(ui);
    }

    /// Says which boxes hold a text that is not understood, since the plan goes on without it.
    fn show_unread(&mut self, ui: &mut Ui) {
        let Some(unread) = self.unread.first().cloned() else { return };
        Panel::bottom("unread").frame(look::foot(ui)).show(ui, |ui| {
            ui.horizontal_wrapped(|ui| {
                mark::show(ui, tankard_core::finding::Level::Check);
                let instead =
                    if unread.instead.is_empty() { t!("app-nothing").to_owned() } else { unread.instead.clone() };
                ui.label(t!(
                    "app-until-then-the-farm-has-there",
                    name = unread.name,
                    problem = unread.problem,
                    instead = instead
                ));
                let more = self.unread.len().saturating_sub(1);
                if more > 0 {
                    ui.label(t!("app-more-boxes-unread", count = more));
                }
                if boxes::act(ui, t!("app-drop-what-was-typed")).clicked() {
                    boxes::drop_unread(ui.ctx(), &unread);
                }
            });
        });
    }

    /// Asks before another file is written over.
    fn ask_over(&mut self, ui: &mut Ui) {
        let Some(path) = self.saving_over.clone() else { return };
        let text = match &self.over_other {
            Some(other) => t!("app-exists-and", path = path.display(), other = other.words()),
            None => t!("app-exists", path = path.display()),
        };
        let answer = ask(
            ui,
            "saving over",
            &text,
            &[t!("app-write-over-it"), t!("app-choose-another-name"), t!("app-cancel")],
            "",
            |_| {},
        );
        match answer.or_else(|| escape(ui).then_some(2)) {
            Some(0) => {
                self.saving_over = None;
                self.save_as(&path);
            }
            Some(1) => {
                let leaving = self.leave_after_save.take();
                self.ask_path(Purpose::SaveFarm, path);
                self.leave_after_save = leaving;
            }
            Some(_) => self.forget_questions(),
            None => {}
        }
    }

    /// Asks before unsaved work goes.
    fn ask_leaving(&mut self, ui: &mut Ui) {
        let Some(leaving) = self.leaving.clone() else { return };
        let cards = self.document.unsaved_cards();
        let text = t!("app-holds-work-that-is-not-saved", name = self.document.farm().name, cards = cards);
        let answer =
            ask(ui, "leaving", &text, &[t!("app-save-it"), t!("app-let-it-go"), t!("app-stay-here")], "", |_| {});
        let Some(answer) = answer.or_else(|| escape(ui).then_some(2)) else { return };
        self.leaving = None;
        match answer {
            0 if self.document.path().is_none() => {
                self.run_now(Command::SaveAs, ui.ctx());
                self.leave_after_save = Some(leaving);
            }
            0 => {
                self.leave_when_saved(leaving);
                self.save();
            }
            1 => {
                self.drop_kept();
                self.leave(leaving);
            }
            _ => {}
        }
    }

    fn show_notice(&mut self, ui: &mut Ui) {
        let now = self.document.revision();
        self.notice.take_if(|notice| notice.of.is_some_and(|of| of != now));
        if let Some(notice) = &self.notice {
            let colours = look::colours(ui);
            let mut done = false;
            Panel::bottom("notice").frame(look::foot(ui)).show(ui, |ui| {
                ui.horizontal(|ui| {
                    let colour = if notice.is_problem { colours.stop } else { colours.ink };
                    let close = ui.with_layout(Layout::right_to_left(Align::Center), |ui| {
                        let close = boxes::act(ui, t!("app-close-this-line")).clicked();
                        ui.with_layout(Layout::left_to_right(Align::Center), |ui| {
                            ui.add(egui::Label::new(RichText::new(&notice.text).color(colour)).wrap());
                        });
                        close
                    });
                    done = close.inner;
                });
            });
            if done {
                self.notice = None;
            }
        }
    }
}

/// Asks something at the foot of the window, with what one must see for the answer; gives which answer was taken.
pub(super) fn ask(
    ui: &mut Ui,
    id: &'static str,
    text: &str,
    answers: &[&str],
    remark: &str,
    more: impl FnOnce(&mut Ui),
) -> Option<usize> {
    let mut answer = None;
    Panel::bottom(id).frame(look::foot(ui)).show(ui, |ui| {
        ui.add_space(look::GRID);
        ui.horizontal_wrapped(|ui| {
            ui.label(look::strong(text));
            for (at, words) in answers.iter().enumerate() {
                if ui.button(*words).clicked() {
                    answer = Some(at);
                }
            }
        });
        // However much there is to say, some of the page stays in sight.
        let most = (ui.ctx().content_rect().height() - LEFT_TO_PAGE).max(LEAST_SAID);
        ScrollArea::vertical().auto_shrink([false, true]).max_height(most).show(ui, |ui| {
            if !remark.is_empty() {
                boxes::say(ui, remark);
            }
            more(ui);
        });
        ui.add_space(look::GRID);
    });
    answer
}

/// What is said below a question leaves so much of the window to the question, its answers and the page.
const LEFT_TO_PAGE: f32 = 320.0;
/// And has at least so much itself; the rest is scrolled to.
const LEAST_SAID: f32 = 56.0;

/// Escape is the answer that changes nothing.
pub(super) fn escape(ui: &Ui) -> bool {
    ui.input(|input| input.key_pressed(egui::Key::Escape))
}
