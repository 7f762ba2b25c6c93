//! The list of findings: mark, word, sentence, what to do, basis, and what was probably meant, to take. A click leads to what a finding
//! speaks of.

use egui::{Sense, Stroke, Ui, Vec2};
use tankard_core::finding::{Finding, Level};
use tankard_core::t;

use super::{mark, offers};
use crate::app::landing::Led;
use crate::guide::{self, places};
use crate::look;

/// Shows findings; gives where the one leads that was clicked.
pub fn show(ui: &mut Ui, findings: &[Finding]) -> Option<Led> {
    let mut led = None;
    // A figure that was typed wrongly brings others with it, so of each level what was probably meant comes first.
    let mut sorted: Vec<&Finding> = findings.iter().collect();
    sorted.sort_by_key(|finding| (std::cmp::Reverse(finding.level), finding.offers.is_empty()));
    for finding in sorted {
        if one(ui, finding) {
            led = Some(Led::by(finding));
        }
        if !finding.offers.is_empty() {
            ui.horizontal_top(|ui| {
                ui.add_space(24.0);
                ui.vertical(|ui| offers::acts(ui, &finding.offers));
            });
        }
        ui.add_space(look::GRID);
    }
    led
}

fn one(ui: &mut Ui, finding: &Finding) -> bool {
    let colours = look::colours(ui);
    let colour = look::of_level(colours, finding.level);
    let response = ui
        .scope_builder(egui::UiBuilder::new().sense(Sense::click()), |ui| {
            ui.horizontal_top(|ui| {
                ui.spacing_mut().item_spacing.x = 4.0;
                ui.add_space(6.0);
                mark::show(ui, finding.level);
                ui.vertical(|ui| {
                    ui.spacing_mut().item_spacing.y = 1.0;
                    ui.spacing_mut().interact_size.y = 14.0;
                    ui.label(look::sentence(ui, finding.level, &finding.text));
                    if !finding.hint.is_empty() {
                        ui.label(look::soft(ui, &finding.hint).color(colours.ink));
                    }
                    ui.horizontal_wrapped(|ui| {
                        ui.label(look::soft(ui, finding.basis.to_string()));
                        guide::link(ui, places::of_finding(finding.room));
                    });
                });
            });
        })
        .response;
    let side = response.rect.left() + 1.0;
    ui.painter().line_segment(
        [response.rect.left_top() + Vec2::X, egui::pos2(side, response.rect.bottom())],
        Stroke::new(2.0, colour),
    );
    response.widget_info(|| {
        egui::WidgetInfo::labeled(egui::Role::Button, true, format!("{}: {}", finding.level.word(), finding.text))
    });
    response.on_hover_cursor(egui::CursorIcon::PointingHand).clicked()
}

/// "2 stops, 1 to check", in marks and words, or "ready".
pub fn summary(ui: &mut Ui, stops: usize, checks: usize) {
    ui.horizontal_wrapped(|ui| {
        ui.spacing_mut().item_spacing.x = 2.0;
        let colours = look::colours(ui);
        if stops > 0 {
            mark::show(ui, Level::Stop);
            ui.label(look::soft(ui, t!("parts-stop", stops = stops)).color(colours.stop));
        }
        if checks > 0 {
            mark::show(ui, Level::Check);
            ui.label(look::soft(ui, t!("parts-to-check", checks = checks)).color(colours.check));
        }
        if stops + checks == 0 {
            ui.label(look::soft(ui, t!("parts-nothing-to-settle")));
        }
    });
}
