//! The bar at the top: the farm's name, the views, undo and the menus; and the ring round what has the keyboard.

use egui::accesskit::{Action, ActionRequest, TreeId};
use egui::{Align, Button, Context, Event, Id, Layout, Panel, RichText, Sense, Stroke, Ui, Vec2};
use tankard_core::language::{Language, spoken};
use tankard_core::t;

use super::finding::is_narrow;
use super::{Desk, Shown};
use crate::command::{Command, View};
use crate::look;
use crate::parts::spoken;

impl Desk {
    pub(super) fn bar(&mut self, ui: &mut Ui) {
        let colours = look::colours(ui);
        let frame = egui::Frame::new().fill(colours.bar).inner_margin(egui::Margin::symmetric(16, 0));
        let mut wanted = None;
        Panel::top("bar").exact_size(look::BAR).frame(frame).show_separator_line(false).show(ui, |ui| {
            ui.horizontal(|ui| {
                ui.set_min_height(look::BAR);
                ui.spacing_mut().item_spacing.x = 4.0;
                look::on_bar(ui);
                self.list_switch(ui, &mut wanted);
                // Before a farm is chosen there is none to name.
                let name = if self.is_choosing { String::new() } else { self.document.farm().name.clone() };
                let left = (ui.available_width() * 0.18).max(if ui.available_width() < 900.0 { 96.0 } else { 150.0 });
                ui.allocate_ui_with_layout(Vec2::new(left, look::BAR), Layout::left_to_right(Align::Center), |ui| {
                    ui.set_min_width(left);
                    ui.set_max_width(left);
                    ui.add(egui::Label::new(look::strong(name).color(colours.bar_ink)).truncate());
                    let state = match () {
                        () if self.is_saving() => t!("app-saving"),
                        () if self.is_for_reading() => t!("app-for-reading"),
                        () if self.document.is_unsaved() => t!("app-not-saved"),
                        () => "",
                    };
                    if !state.is_empty() {
                        ui.label(RichText::new(state).color(colours.bar_ink.gamma_multiply(0.75)));
                    }
                });
                let is_covered = self.backups.is_some() || self.about.is_some() || self.is_choosing;
                for view in View::ALL {
                    if tab(ui, view.name(), self.view == view && !is_covered) {
                        wanted = Some(Command::Go(view));
                    }
                }
                self.menus(ui, &mut wanted);
            });
        });
        if let Some(command) = wanted {
            self.run(command, ui.ctx());
        }
    }

    /// In a small window: whether the list of the view or its page has the room.
    fn list_switch(&mut self, ui: &mut Ui, wanted: &mut Option<Command>) {
        if !is_narrow(ui.ctx()) || self.view == View::SeasonLog {
            return;
        }
        let is_on = self.list.shown(ui.ctx()) == Shown::List;
        let text = RichText::new(Command::List.text()).color(look::colours(ui).bar_ink);
        let edge = look::colours(ui).bar_ink.gamma_multiply(if is_on { 1.0 } else { 0.4 });
        let button = Button::new(text).stroke(Stroke::new(1.0, edge));
        let response = ui.add(button).accessible_name(t!("app-list-in-place-of-the-page"));
        spoken::expanded(&response, is_on);
        ui.add_space(4.0);
        if response.clicked() {
            *wanted = Some(Command::List);
        }
    }

    fn menus(&mut self, ui: &mut Ui, wanted: &mut Option<Command>) {
        let entry = |ui: &mut Ui, command: Command, enabled: bool, wanted: &mut Option<Command>| {
            let keys = command.key().map(|key| ui.ctx().format_shortcut(&key)).unwrap_or_default();
            let button = ui.add_enabled(enabled, Button::new(command.text()).shortcut_text(keys).frame(false));
            // The one entry that may be of no use.
            if button.on_disabled_hover_text(t!("app-nothing-is-being-done")).clicked() {
                *wanted = Some(command);
                ui.close();
            }
        };
        let steps = [
            (Command::Undo, self.document.can_undo(), t!("app-nothing-to-undo")),
            (Command::Redo, self.document.can_redo(), t!("app-nothing-to-redo")),
        ];
        // All have the same room about them, and the words of the last end where the margin begins. From left to right, as Tab goes.
        let (padding, gap) = (ui.spacing().button_padding.x, ui.spacing().item_spacing.x);
        let wide = |ui: &Ui, text: &str| look::width(ui, text) + 2.0 * padding + gap;
        let menus: f32 =
            [t!("app-farm"), t!("app-look"), &Command::Guide.text()].iter().map(|text| wide(ui, text)).sum();
        let room = ui.available_width() + padding + gap - menus;
        let all: f32 = steps.iter().map(|(command, ..)| wide(ui, &command.text())).sum();
        // Where room is short undo and redo are left to their keys.
        let has_steps = room >= all;
        ui.add_space((if has_steps { room - all } else { room }).max(0.0));
        for (command, enabled, why_not) in steps.into_iter().filter(|_| has_steps) {
            let text = RichText::new(command.text()).color(look::colours(ui).bar_ink.gamma_multiply(if enabled {
                1.0
            } else {
                0.5
            }));
            let keys = command.key().map(|key| ui.ctx().format_shortcut(&key)).unwrap_or_default();
            let button = ui.add_enabled(enabled, Button::new(text));
            if button.on_hover_text(keys).on_disabled_hover_text(why_not).clicked() {
                *wanted = Some(command);
            }
        }
        ui.menu_button(t!("app-farm"), |ui| {
            ui.set_min_width(260.0);
            entry(ui, Command::Find, true, wanted);
            ui.separator();
            for command in [
                Command::New,
                Command::Open,
                Command::OpenDemo,
                Command::Save,
                Command::SaveAs,
                Command::Backups,
                Command::FarmPage,
            ] {
                entry(ui, command, true, wanted);
            }
            self.first_steps_entry(ui, wanted);
            ui.separator();
            for command in [Command::ImportBoundaries, Command::ExportBoundaries, Command::ExportTaskData] {
                entry(ui, command, true, wanted);
            }
            let recent = self.remembered.as_ref().map(|remembered| remembered.farms.clone()).unwrap_or_default();
            if !recent.is_empty() {
                ui.separator();
                ui.label(look::soft(ui, t!("app-opened-last")));
                for path in recent {
                    entry(ui, Command::OpenPath(path), true, wanted);
                }
            }
            ui.separator();
            entry(ui, Command::CancelWork, self.can_cancel(), wanted);
            entry(ui, Command::About, true, wanted);
            entry(ui, Command::Quit, true, wanted);
        });
        ui.menu_button(t!("app-look"), |ui| {
            ui.set_min_width(220.0);
            let is_dark = ui.visuals().dark_mode;
            for (command, is_on) in [(Command::Light, !is_dark), (Command::Dark, is_dark)] {
                if ui.radio(is_on, command.text()).clicked() {
                    *wanted = Some(command);
                    ui.close();
                }
            }
            ui.separator();
            let switches = [
                (Command::List, self.list.shown(ui.ctx()) != Shown::Page),
                (Command::Motion, !look::has_motion(ui.ctx())),
            ];
            for (command, mut is_on) in switches {
                if ui.checkbox(&mut is_on, command.text()).clicked() {
                    *wanted = Some(command);
                    ui.close();
                }
            }
            ui.separator();
            for language in Language::ALL {
                let said = Command::Speak(language).text();
                if ui.radio(spoken() == language, said).clicked() {
                    *wanted = Some(Command::Speak(language));
                    ui.close();
                }
            }
            ui.separator();
            for command in [Command::Larger, Command::Smaller, Command::PlainSize] {
                entry(ui, command, true, wanted);
            }
            ui.label(look::soft(
                ui,
                t!("app-now-at", zoom_factor = format_args!("{:.0}", ui.ctx().zoom_factor() * 100.0)),
            ));
            ui.separator();
            entry(ui, Command::Keys, true, wanted);
        });
        let guide = ui.add(Button::new(Command::Guide.text())).on_hover_text("F1");
        if self.guide.is_open() {
            let line = Stroke::new(2.0, look::colours(ui).brass);
            ui.painter().hline(guide.rect.x_range(), guide.rect.bottom() + 1.0, line);
        }
        if guide.clicked() {
            *wanted = Some(Command::Guide);
        }
    }
}

fn followed() -> Id {
    Id::unique("tankard what had the keyboard when it was followed")
}

fn out_of_sight() -> Id {
    Id::unique("tankard what has the keyboard out of sight")
}

/// Brings into sight what has got the keyboard since the last frame, as a screen reader would ask for it: whatever the place scrolls in.
pub(super) fn follow(ctx: &Context) {
    let Some(id) = ctx.data_mut(|data| data.remove_temp::<Option<Id>>(out_of_sight())).flatten() else { return };
    ctx.input_mut(|input| {
        input.events.push(Event::AccessKitActionRequest(ActionRequest {
            action: Action::ScrollIntoView,
            target_tree: TreeId::ROOT,
            target_node: id.accesskit_id(),
            data: None,
        }));
    });
}

/// A ring round what has the keyboard, so that it can be followed with the eyes.
pub(super) fn ring(ctx: &Context) {
    let Some(response) = ctx.memory(egui::Memory::focused).and_then(|id| ctx.read_response(id)) else { return };
    let is_new = ctx.data_mut(|data| {
        let before: Option<Id> = data.get_temp(followed());
        data.insert_temp(followed(), response.id);
        before != Some(response.id)
    });
    // What is clicked is in sight, and must not move under the pointer.
    let by_pointer = ctx.input(|input| input.pointer.any_down() || input.pointer.any_released());
    if is_new && !by_pointer && !response.interact_rect.expand(1.0).contains_rect(response.rect) {
        ctx.data_mut(|data| data.insert_temp(out_of_sight(), Some(response.id)));
        ctx.request_repaint();
    }
    let colour = if ctx.theme() == egui::Theme::Dark { look::DARK.brass } else { look::LIGHT.brass };
    let painter = ctx.layer_painter(response.layer_id).with_clip_rect(response.interact_rect.expand(3.0));
    painter.rect_stroke(response.rect.expand(1.0), 3, Stroke::new(1.5, colour), egui::StrokeKind::Outside);
}

/// A view's name in the bar; the one in use is cut out of the ground.
fn tab(ui: &mut Ui, name: &str, chosen: bool) -> bool {
    let colours = look::colours(ui);
    let width = ui.fonts_mut(|fonts| fonts.layout_no_wrap(name.to_owned(), look::body(true), colours.ink).size().x);
    // Where room is short the names stand closer.
    let room = if ui.ctx().content_rect().width() < 900.0 { 18.0 } else { 40.0 };
    let (rect, response) = ui.allocate_exact_size(Vec2::new(width + room, look::BAR), Sense::click());
    let (face, ink) = if chosen { (colours.ground, colours.ink) } else { (colours.bar, colours.bar_ink) };
    ui.painter().rect_filled(rect, 0, face);
    ui.painter().text(rect.center(), egui::Align2::CENTER_CENTER, name, look::body(chosen), ink);
    if response.has_focus() || (response.hovered() && !chosen) {
        ui.painter().hline(rect.x_range().shrink(10.0), rect.bottom() - 8.0, Stroke::new(2.0, colours.brass));
    }
    response.widget_info(|| egui::WidgetInfo::selected(egui::Role::Tab, true, chosen, name));
    spoken::selected(&response, chosen);
    response.clicked()
}
