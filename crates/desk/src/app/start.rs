//! Where to begin, when the desk is opened without a file: three ways in, and the farms opened last.

use egui::{CentralPanel, Frame, Id, Margin, ScrollArea, Ui};
use tankard_core::t;

use super::Desk;
use crate::command::Command;
use crate::look;
use crate::parts::boxes;

/// Width of the page.
const WIDTH: f32 = 560.0;

impl Desk {
    /// Asks where to begin, before anything of the farm is shown.
    #[must_use]
    pub fn choosing(mut self) -> Self {
        self.is_choosing = true;
        self
    }

    /// The page.
    pub(super) fn show_start(&mut self, ui: &mut Ui) {
        let ground = look::colours(ui).ground;
        // The keyboard begins at the first way in, once.
        let begun = Id::unique("tankard where to begin");
        if !ui.data(|data| data.get_temp::<bool>(begun).unwrap_or_default()) {
            ui.data_mut(|data| data.insert_temp(begun, true));
            boxes::want(ui.ctx(), t!("app-look-around-in-the-demo-farm"));
        }
        let mut wanted = None;
        let frame = Frame::new().fill(ground).inner_margin(Margin::symmetric(16, 0));
        CentralPanel::default().frame(frame).show(ui, |ui| {
            ScrollArea::vertical().id_salt("where to begin").auto_shrink(false).show(ui, |ui| {
                ui.add_space((ui.available_height() * 0.12).min(72.0));
                let aside = ((ui.available_width() - WIDTH) / 2.0).max(0.0);
                ui.horizontal_top(|ui| {
                    ui.add_space(aside);
                    ui.vertical(|ui| {
                        ui.set_max_width(WIDTH.min(ui.available_width()));
                        self.ways_in(ui, &mut wanted);
                    });
                });
            });
        });
        if let Some(command) = wanted {
            self.run(command, ui.ctx());
        }
    }

    fn ways_in(&self, ui: &mut Ui, wanted: &mut Option<Command>) {
        ui.label(look::title(t!("app-where-would-you-like-to-begin")));
        ui.add_space(look::GRID);
        let ways = [
            (t!("app-look-around-in-the-demo-farm"), t!("app-an-invented-farm-with-everything-in"), Command::OpenDemo),
            (t!("app-begin-my-own-farm"), t!("app-an-empty-farm-and-a-line"), Command::New),
            (t!("app-open-a-file"), t!("app-a-farm-that-you-or-somebody"), Command::Open),
        ];
        for (text, says, command) in ways {
            boxes::hairline(ui);
            ui.add_space(6.0);
            if boxes::act(ui, text).clicked() {
                *wanted = Some(command);
            }
            boxes::say(ui, says);
            ui.add_space(6.0);
        }
        boxes::hairline(ui);
        let recent = self.remembered.as_ref().map(|remembered| remembered.farms.as_slice()).unwrap_or_default();
        if !recent.is_empty() {
            ui.add_space(look::GRID * 2.0);
            ui.label(look::heading(t!("app-opened-last")));
            for path in recent {
                let name = super::opening::name_of(path);
                if boxes::act(ui, &name).on_hover_text(path.display().to_string()).clicked() {
                    *wanted = Some(Command::OpenPath(path.clone()));
                }
            }
        }
        ui.add_space(look::GRID * 2.0);
        boxes::say(ui, t!("app-the-label-and-local-law-always"));
    }
}
