//! The jar test of a pass: what goes into the jar, what to look for, and its sheet on paper.

use std::path::Path;

use egui::{ScrollArea, Ui};
use tankard_core::farm::card::CardStep;
use tankard_core::farm::{Farm, Id};
use tankard_core::mix::jar::sheet::{JarSheet, sheet};
use tankard_core::mix::jar::{Jar, JarTest, jar};
use tankard_core::plan::Plan;
use tankard_core::t;
use tankard_core::working::Working;
use tankard_file::store::{self, Report};

use super::{Shown, cell, worked};
use crate::app::{Desk, Failed, Task};
use crate::files::Purpose;
use crate::look;
use crate::parts::{boxes, findings, lists};

/// What is chosen on the page.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Choice {
    /// The jar; none for the farm's usual one.
    pub jar: Option<Jar>,
    /// Pass and jar of the sheet whose file is being asked for.
    pub asked: Option<(Id, Jar)>,
}

impl Choice {
    fn jar(&self, farm: &Farm) -> Jar {
        self.jar.unwrap_or_else(|| Jar::usual(farm.units))
    }
}

/// How the amount of a product in the chosen jar came about.
pub(super) fn working(desk: &Desk, plan: &Plan, product: &str) -> Option<Working> {
    let farm = desk.document.farm();
    let test = jar(plan, farm, desk.tank_loads.jar.jar(farm))?;
    test.items.into_iter().find(|item| item.product == product).map(|item| item.working)
}

/// Shows the page.
pub(super) fn show(desk: &mut Desk, ui: &mut Ui, plan: &Plan) {
    let farm = desk.document.farm();
    let size = desk.tank_loads.jar.jar(farm);
    let test = jar(plan, farm, size);
    let page = test.as_ref().and_then(|test| sheet(farm, test));
    let (Some(test), Some(page)) = (test, page) else {
        lists::empty(ui, t!("tank-loads-there-is-no-jar-test-yet"));
        return;
    };
    let width = ui.available_width() - 12.0;
    ScrollArea::vertical().id_salt("jar test").auto_shrink(false).show(ui, |ui| {
        ui.set_width(width);
        look::sheet(ui).show(ui, |ui| {
            ui.set_width(ui.available_width());
            heading(desk, ui, &test);
            ui.add_space(4.0);
            steps(desk, ui, &test, &page);
        });
        ui.add_space(look::GRID);
        if let Some(led) = findings::show(ui, &test.findings) {
            desk.land(&led, ui.ctx());
        }
        ui.add_space(look::GRID);
        look::sheet(ui).show(ui, |ui| {
            ui.set_width(ui.available_width());
            signs(ui, &page);
        });
        ui.add_space(look::GRID);
        ui.label(look::soft(ui, &page.limits));
    });
}

/// The amounts alone, to stand beside the plan.
pub(super) fn shortly(desk: &mut Desk, ui: &mut Ui, plan: &Plan) {
    let farm = desk.document.farm();
    let size = desk.tank_loads.jar.jar(farm);
    let Some(test) = jar(plan, farm, size) else { return };
    ui.horizontal_wrapped(|ui| {
        ui.label(look::heading(t!("tank-loads-jar-test-jar", jar = test.jar.name())));
        if boxes::act(ui, t!("tank-loads-print")).accessible_name(t!("tank-loads-jar-test-to-print")).clicked() {
            desk.tank_loads.page = super::Page::Jar;
        }
    });
    ui.spacing_mut().item_spacing.y = 1.0;
    let amounts = test.items.iter().map(|item| look::width(ui, &item.measured.text));
    let amount = amounts.fold(0.0, f32::max).ceil();
    for item in &test.items {
        ui.horizontal(|ui| {
            ui.spacing_mut().interact_size.y = 0.0;
            let name = ui.available_width() - amount - 8.0;
            ui.allocate_ui_with_layout(
                egui::Vec2::new(name, 18.0),
                egui::Layout::left_to_right(egui::Align::Center),
                |ui| {
                    ui.set_min_width(name);
                    ui.label(look::soft(ui, item.number.to_string()));
                    let named = ui.add(egui::Label::new(&item.name).truncate());
                    let beside = item.beside();
                    if !beside.is_empty() {
                        named.on_hover_text(beside);
                    }
                },
            );
            ui.with_layout(egui::Layout::right_to_left(egui::Align::Center), |ui| {
                if worked(ui, &item.measured.text, &t!("tank-loads-in-the-jar", name = item.name)) {
                    desk.tank_loads.working = Some(Shown::InJar(item.product.clone()));
                }
            });
        });
    }
    if test.is_incomplete() {
        ui.label(look::soft(ui, t!("tank-loads-not-complete-see-the-jar-tests")));
    }
}

fn heading(desk: &mut Desk, ui: &mut Ui, test: &JarTest) {
    ui.horizontal_wrapped(|ui| {
        ui.label(look::heading(t!("tank-loads-jar-filled-to")));
        let mut size = test.jar;
        boxes::choice(ui, t!("tank-loads-jar"), &mut size, &Jar::ALL, |jar| jar.name().to_owned(), 170.0);
        if size != test.jar {
            desk.tank_loads.jar.jar = Some(size);
        }
        if test.is_incomplete() {
            ui.label(look::soft(ui, t!("tank-loads-not-complete-so-there-is-no")));
        } else if ui
            .button(t!("tank-loads-save-as-pdf"))
            .accessible_name(t!("tank-loads-save-the-jar-test-as-pdf"))
            .clicked()
        {
            desk.tank_loads.jar.asked = Some((test.pass.clone(), test.jar));
            let path = desk.beside_pass(&test.pass, "-jar-test.pdf");
            desk.ask_file(Purpose::SaveJar, path, ui.ctx());
        }
    });
}

/// What goes in, line by line.
fn steps(desk: &mut Desk, ui: &mut Ui, test: &JarTest, page: &JarSheet) {
    ui.spacing_mut().item_spacing.y = 2.0;
    for line in &page.before {
        ui.label(line);
    }
    ui.add_space(4.0);
    boxes::hairline(ui);
    for step in &page.steps {
        row(desk, ui, test, step);
        boxes::hairline(ui);
    }
    ui.add_space(4.0);
    for line in &page.after {
        ui.label(line);
    }
}

fn row(desk: &mut Desk, ui: &mut Ui, test: &JarTest, step: &CardStep) {
    let item = test.items.iter().find(|item| step.number == Some(item.number));
    let (number, amount, beside) = (20.0, 100.0, 140.0);
    let product = (ui.available_width() - number - amount - beside - 3.0 * ui.spacing().item_spacing.x).max(80.0);
    ui.horizontal(|ui| {
        cell(ui, number, false, |ui| {
            if let Some(number) = step.number {
                ui.label(look::heading(number.to_string()));
            }
        });
        cell(ui, product, false, |ui| {
            ui.add(egui::Label::new(&step.what).wrap());
        });
        cell(ui, amount, true, |ui| match item {
            Some(item) => {
                if worked(ui, &step.amount, &t!("tank-loads-in-the-jar", name = item.name)) {
                    desk.tank_loads.working = Some(Shown::InJar(item.product.clone()));
                }
            }
            None => {
                ui.label(&step.amount);
            }
        });
        cell(ui, beside, true, |ui| {
            ui.label(look::soft(ui, &step.detail));
        });
    });
    if !step.hint.is_empty() {
        ui.horizontal(|ui| {
            ui.add_space(number + ui.spacing().item_spacing.x);
            ui.add(egui::Label::new(look::soft(ui, &step.hint)).wrap());
        });
    }
}

/// What to look for, and what forbids spraying.
fn signs(ui: &mut Ui, page: &JarSheet) {
    let (last, looks) =
        page.looks.split_last().map_or(("", String::new()), |(last, rest)| (last.as_str(), rest.join(", ")));
    ui.label(look::heading(t!("tank-loads-look-after-and", looks = looks, last = last)));
    let half = (ui.available_width() * 0.4).max(150.0);
    for (sign, means) in &page.signs {
        ui.horizontal(|ui| {
            cell(ui, half, false, |ui| {
                ui.label(look::strong(sign));
            });
            ui.add(egui::Label::new(means).wrap());
        });
    }
    ui.add_space(4.0);
    for result in &page.results {
        ui.label(result);
    }
    ui.add_space(4.0);
    for caution in page.wear.iter().chain(&page.cautions) {
        ui.label(look::soft(ui, caution));
    }
}

/// Saves the sheet that was asked for where the user said.
pub fn save(desk: &mut Desk, path: &Path) {
    let page = match asked(desk) {
        Ok(page) => page,
        Err(problem) => {
            desk.tell_problem(t!("tank-loads-the-jar-test-was-not-written", problem = problem));
            return;
        }
    };
    let (since, path) = (desk.moment(), path.to_owned());
    let to = path.clone();
    desk.start(
        Task::writing(&path, t!("tank-loads-the-jar-test-was-not-written-72c")),
        move |going| {
            let bytes = tankard_paper::jar::pdf(&page).map_err(Failed::of)?;
            store::put_report_told(&to, &bytes, Report::Pdf, &|_, _| going.goes_on()).map_err(Failed::of)
        },
        move |desk, ()| {
            let since = desk.since(since);
            desk.tell(t!("tank-loads-the-jar-test-is-written-to", path = path.display(), since = since));
        },
    );
}

/// The sheet that was asked for.
fn asked(desk: &mut Desk) -> Result<JarSheet, String> {
    let (id, size) =
        desk.tank_loads.jar.asked.take().ok_or(t!("tank-loads-it-is-no-longer-known-which-one-was-meant"))?;
    if let Some(unread) = desk.unread.first() {
        return Err(t!("tank-loads-holds-a-text-that-is-not", name = unread.name));
    }
    let plan = desk.document.plan(&id).ok_or(t!("tank-loads-the-pass-is-gone"))?;
    page(desk.document.farm(), &plan, size)
}

/// The sheet of a plan's jar test as PDF.
///
/// # Errors
/// A sentence that says what is missing, or why it could not be laid out.
pub fn pdf(farm: &Farm, plan: &Plan, size: Jar) -> Result<Vec<u8>, String> {
    tankard_paper::jar::pdf(&page(farm, plan, size)?).map_err(|error| error.to_string())
}

fn page(farm: &Farm, plan: &Plan, size: Jar) -> Result<JarSheet, String> {
    let test = jar(plan, farm, size).ok_or(t!("tank-loads-the-spray-volume-over-ground-is"))?;
    if let Some(stop) = test.findings.iter().find(|_| test.is_incomplete()) {
        return Err(stop.text.clone());
    }
    Ok(sheet(farm, &test).ok_or(t!("tank-loads-the-pass-is-gone"))?)
}
