//! The day as a whole, the evening before: its passes in order on their rigs, what the order costs, what goes on the truck, and
//! the sheet to print.

use std::sync::Arc;

use egui::{ScrollArea, Ui};
use jiff::civil::Date;
use tankard_core::day::sheet::{SheetContent, SheetLine, sheet};
use tankard_core::day::{DayPlan, RigDay, Slot};
use tankard_core::farm::{Day, Id};
use tankard_core::finding::Level;
use tankard_core::language::days::{clock, long_date};
use tankard_core::loads::rest::carry_over;
use tankard_core::plan::Plan;
use tankard_core::quantity::{Quantity, Units};
use tankard_core::t;

use super::cards::{self, Printing};
use super::{cell, sheet as on_sheet};
use crate::app::Desk;
use crate::files::Purpose;
use crate::look;
use crate::parts::day_picture::{self, Done, Named};
use crate::parts::{boxes, figures, findings, lists, mark};
use crate::report::words::clean_outs;

/// What is shown of a day, made once for a revision of the document.
#[derive(Default)]
pub(crate) struct Kept(Option<((u64, Date), Arc<Made>)>);

/// The plan of a day with all that is shown of it.
struct Made {
    day: Arc<DayPlan>,
    sheet: SheetContent,
    plans: Vec<Arc<Plan>>,
}

impl Made {
    fn plan(&self, id: &str) -> Option<&Plan> {
        self.plans.iter().map(Arc::as_ref).find(|plan| plan.pass == id)
    }

    /// How many Stops the plan of a pass has.
    fn stops(&self, id: &str) -> usize {
        self.plan(id).map_or(0, |plan| plan.count(Level::Stop))
    }
}

/// The day as it stands now; none while the order of its passes is looked for.
fn fresh(desk: &mut Desk, date: Date) -> Option<Arc<Made>> {
    let key = (desk.document.revision(), date);
    if let Kept(Some((known, made))) = &desk.tank_loads.day_kept
        && *known == key
    {
        return Some(Arc::clone(made));
    }
    let day = desk.day(date)?;
    let plans = desk.document.plans_of(date);
    let all: Vec<&Plan> = plans.iter().map(Arc::as_ref).collect();
    let sheet = sheet(desk.document.farm(), date, &all, &day.slots().collect::<Vec<_>>());
    let made = Arc::new(Made { day, sheet, plans });
    desk.tank_loads.day_kept = Kept(Some((key, Arc::clone(&made))));
    Some(made)
}

/// The same, and meanwhile the day as it stood before the last change.
fn shown(desk: &mut Desk, date: Date) -> Option<Arc<Made>> {
    let fresh = fresh(desk, date);
    fresh.or_else(|| match &desk.tank_loads.day_kept {
        Kept(Some(((_, known), made))) if *known == date => Some(Arc::clone(made)),
        Kept(_) => None,
    })
}

/// Says that what is shown is not the order of now.
fn looked_for(desk: &mut Desk, ui: &mut Ui, date: Date) {
    if fresh(desk, date).is_some() {
        return;
    }
    ui.horizontal_wrapped(|ui| {
        mark::show(ui, Level::Check);
        if desk.is_looking_for_order() {
            ui.label(t!("tank-loads-the-best-order-of-the-day"));
        } else {
            ui.label(t!("tank-loads-the-order-below-is-not-looked"));
            if boxes::act(ui, t!("tank-loads-look-for-the-best-order")).clicked() {
                desk.look_for_order_again();
            }
        }
    });
}

fn order_missing() -> &'static str {
    t!("tank-loads-the-order-of-the-day-is")
}

/// What there is to say of a day, at the right.
pub(super) fn settle(desk: &mut Desk, ui: &mut Ui, date: Date) {
    let Some(made) = shown(desk, date) else { return };
    ui.label(look::heading(t!("tank-loads-to-settle-on-this-day")));
    ui.add_space(4.0);
    if made.day.findings.is_empty() {
        lists::empty(ui, t!("tank-loads-nothing-stands-against-this-order"));
    }
    ScrollArea::vertical().auto_shrink(false).show(ui, |ui| {
        if let Some(led) = findings::show(ui, &made.day.findings) {
            desk.land(&led, ui.ctx());
        }
        stopped(desk, ui, &made);
    });
}

/// The passes that get no cards, whatever their order: an order that nothing stands against is not yet a day that can be sprayed.
fn stopped(desk: &mut Desk, ui: &mut Ui, made: &Made) {
    for slot in made.day.slots() {
        let stops = made.stops(&slot.pass);
        let Some(pass) = desk.document.farm().passes.get(&slot.pass).filter(|_| stops > 0) else { continue };
        let name = pass.name.clone();
        ui.horizontal_wrapped(|ui| {
            mark::show(ui, Level::Stop);
            let text = egui::RichText::new(&name).color(look::colours(ui).brass);
            let open = boxes::lead(ui, text);
            if open.accessible_name(t!("tank-loads-settle", name = name)).clicked() {
                desk.tank_loads.choose(&slot.pass);
                desk.tank_loads.reveal = true;
            }
            ui.add(egui::Label::new(look::soft(ui, t!("parts-stop", stops = stops))).extend());
        });
    }
}

/// Shows the page of a day.
pub(super) fn show(desk: &mut Desk, ui: &mut Ui, date: Date) {
    let key = date.to_string();
    let before = desk.document.farm().days.get(&key).cloned().unwrap_or_default();
    let mut day = before.clone();
    title(ui, date, &mut day);
    ui.add_space(4.0);
    looked_for(desk, ui, date);
    let mut next = None;
    if let Some(made) = shown(desk, date) {
        page(desk, ui, date, &made, &mut day, &mut next);
    }
    if day != before {
        desk.document.edit(|farm| {
            if day == Day::default() {
                farm.days.shift_remove(&key);
            } else {
                farm.days.insert(key, day);
            }
        });
    }
    if let Some(id) = next {
        desk.tank_loads.choose(&id);
        desk.tank_loads.reveal = true;
    }
}

/// The day in its order, what goes on the truck, and printing.
fn page(desk: &mut Desk, ui: &mut Ui, date: Date, made: &Made, day: &mut Day, next: &mut Option<Id>) {
    ScrollArea::vertical().id_salt("day").auto_shrink(false).show(ui, |ui| {
        ui.set_width(ui.available_width() - 12.0);
        on_sheet(ui, |ui| picture(desk, ui, made, day, next));
        for rig in &made.day.rigs {
            ui.add_space(look::GRID);
            on_sheet(ui, |ui| of_rig(desk, ui, made, rig, day, next));
        }
        if !made.day.loose.is_empty() {
            ui.add_space(look::GRID);
            on_sheet(ui, |ui| {
                ui.label(look::heading(t!("tank-loads-without-a-rig")));
                for slot in &made.day.loose {
                    row(desk, ui, made, slot, None, day, next);
                }
            });
        }
        ui.add_space(look::GRID);
        on_sheet(ui, |ui| truck(ui, &made.sheet));
        ui.add_space(look::GRID);
        on_sheet(ui, |ui| print(desk, ui, date, made));
    });
}

fn title(ui: &mut Ui, date: Date, day: &mut Day) {
    ui.horizontal_wrapped(|ui| {
        ui.label(look::title(long_date(date)));
        ui.add_space(16.0);
        // Not broken in the middle of a label on a small screen.
        ui.add(egui::Label::new(look::soft(ui, t!("tank-loads-the-rigs-leave-at"))).extend());
        boxes::time_or_none(ui, t!("tank-loads-the-rigs-leave-at-701"), &mut day.from, 80.0);
        ui.add(egui::Label::new(look::soft(ui, t!("tank-loads-and-are-home-by"))).extend());
        boxes::time_hinted(ui, t!("tank-loads-the-rigs-are-home-by"), &mut day.to, 80.0, t!("tank-loads-e-g-20-30"));
    });
    ui.horizontal(|ui| {
        ui.label(look::soft(ui, t!("tank-loads-words-for-the-crew")));
        let width = (ui.available_width() - 24.0).clamp(80.0, 420.0);
        boxes::text_or_empty(
            ui,
            t!("tank-loads-words-for-the-crew-of-the"),
            &mut day.note,
            width,
            t!("tank-loads-printed-on-the-evening-sheet"),
        );
    });
}

/// The day as a picture.
fn picture(desk: &Desk, ui: &mut Ui, made: &Made, day: &mut Day, next: &mut Option<Id>) {
    let Some(picture) = &made.sheet.timeline else {
        lists::empty(ui, t!("tank-loads-the-day-is-drawn-when-its"));
        return;
    };
    let farm = desk.document.farm();
    let by_number = |number: u32| made.sheet.pass_of(number);
    let named = |number: u32| {
        let id = by_number(number);
        let name = id.and_then(|id| farm.passes.get(id)).map_or("", |pass| pass.name.as_str());
        let slot = id.and_then(|id| made.day.slots().find(|slot| slot.pass == *id));
        let time = slot
            .and_then(|slot| slot.span)
            .map_or_else(String::new, |span| format!(", {}", span.to_whole_minute().words()));
        let stops = id.is_some_and(|id| made.stops(id) > 0);
        let spoken = format!("{name}{time}{}", if stops { t!("tank-loads-with-a-stop") } else { "" });
        Named { id: id.cloned().unwrap_or_default(), spoken, marked: stops }
    };
    match day_picture::show(ui, picture, named) {
        Some(Done::Chosen(number)) => *next = by_number(number).cloned(),
        Some(Done::Moved(number, place)) => {
            if let Some(id) = by_number(number) {
                hold(made, day, id, place);
            }
        }
        None => {}
    }
}

/// Holds a pass at a place; one that is held there already goes to where this one was.
fn hold(made: &Made, day: &mut Day, id: &Id, place: u32) {
    let Some(rig) = made.day.rigs.iter().find(|rig| rig.slots.iter().any(|slot| slot.pass == *id)) else { return };
    let was = rig.slots.iter().position(|slot| slot.pass == *id).map_or(place, in_order);
    let of_rig = |other: &Id| rig.slots.iter().any(|slot| slot.pass == *other);
    for (other, at) in &mut day.pinned {
        if *at == place && other != id && of_rig(other) {
            *at = was;
        }
    }
    day.pinned.insert(id.clone(), place);
}

/// A place in a list, counted from 1.
fn in_order(at: usize) -> u32 {
    u32::try_from(at + 1).unwrap_or(u32::MAX)
}

fn of_rig(desk: &mut Desk, ui: &mut Ui, made: &Made, rig: &RigDay, day: &mut Day, next: &mut Option<Id>) {
    let farm = desk.document.farm();
    let units = farm.units;
    let name = farm.rigs.get(&rig.rig).map_or(rig.rig.as_str(), |rig| rig.name.as_str()).to_owned();
    ui.horizontal_wrapped(|ui| {
        ui.label(look::heading(&name));
        let home = rig.cost.home.map(|home| t!("tank-loads-home-at", home = clock(home)));
        let leaves = rig.leaves.map(|leaves| t!("tank-loads-leaves-at", leaves = clock(leaves)));
        let cleans = clean_outs(rig.cost.clean_outs);
        let changes = t!("tank-loads-of-cleaning-and-road", not_spraying = rig.cost.not_spraying.show(units));
        let words: Vec<String> = leaves.into_iter().chain(home).chain([cleans, changes]).collect();
        ui.label(words.join(" · "));
    });
    ui.label(look::soft(ui, &rig.proof));
    if !rig.held.is_empty() {
        ui.horizontal_wrapped(|ui| {
            ui.label(&rig.held);
            if boxes::act(ui, t!("tank-loads-take-the-best-order"))
                .accessible_name(t!("tank-loads-take-the-best-order-for", name = name))
                .clicked()
            {
                day.pinned.retain(|id, _| !rig.slots.iter().any(|slot| slot.pass == *id));
            }
        });
    }
    for (at, slot) in rig.slots.iter().enumerate() {
        boxes::hairline(ui);
        row(desk, ui, made, slot, Some((rig, at)), day, next);
    }
    let done: Vec<String> = rig
        .done
        .iter()
        .filter_map(|id| desk.document.farm().passes.get(id))
        .map(|pass| t!("tank-loads-is-recorded-as-sprayed", name = pass.name))
        .collect();
    if !done.is_empty() {
        boxes::hairline(ui);
        ui.label(look::soft(ui, done.join(" ")));
    }
}

/// Width of a page on which a pass and what can be done with it do not stand in one line.
const SMALL: f32 = 600.0;

/// A pass of the day.
fn row(
    desk: &mut Desk,
    ui: &mut Ui,
    made: &Made,
    slot: &Slot,
    place: Option<(&RigDay, usize)>,
    day: &mut Day,
    next: &mut Option<Id>,
) {
    let farm = desk.document.farm();
    let units = farm.units;
    let (Some(pass), Some(plan)) = (farm.passes.get(&slot.pass), made.plan(&slot.pass)) else { return };
    let name = pass.name.clone();
    ui.push_id(("slot", &slot.pass), |ui| {
        // On a small screen what can be done with it stands under it.
        let is_small = ui.available_width() < SMALL;
        let wide = (ui.available_width() - if is_small { 300.0 } else { 470.0 }).clamp(90.0, 320.0);
        ui.horizontal_wrapped(|ui| {
            cell(ui, 20.0, true, |ui| {
                // As in the picture and on the sheet.
                let number = made.sheet.number_of(&slot.pass);
                ui.label(look::strong(number.map_or_else(|| "–".to_owned(), |number| number.to_string())));
            });
            cell(ui, 104.0, false, |ui| {
                ui.label(when(slot, place.map(|(rig, _)| rig), units));
            });
            cell(ui, wide, false, |ui| {
                let text = egui::RichText::new(&name).color(look::colours(ui).brass);
                let response = boxes::lead(ui, text).accessible_name(t!("tank-loads-open-name", name = name));
                if response.clicked() {
                    *next = Some(slot.pass.clone());
                }
            });
            cell(ui, 70.0, true, |ui| {
                ui.label(figures::area(plan.area, units));
            });
            cell(ui, 58.0, true, |ui| {
                ui.label(t!("tank-loads-count-loads", loads = plan.loads.len()));
            });
            if let Some((rig, at)) = place.filter(|_| !is_small) {
                acts(ui, made, rig, at, &name, day);
            }
        });
        if let Some((rig, at)) = place.filter(|_| is_small) {
            ui.horizontal_wrapped(|ui| {
                ui.add_space(28.0);
                acts(ui, made, rig, at, &name, day);
            });
        }
        let stops = plan.count(Level::Stop) > 0;
        if stops || !slot.why.is_empty() {
            ui.horizontal_top(|ui| {
                ui.add_space(28.0);
                if stops {
                    mark::show(ui, Level::Stop);
                }
                ui.vertical(|ui| {
                    ui.label(look::soft(ui, &slot.why));
                    if let Some((rig, at)) = place
                        && slot.goes_on
                        && let Some(before) = at.checked_sub(1).and_then(|at| rig.slots.get(at))
                    {
                        goes_on(desk, ui, made, before, slot);
                    }
                });
            });
        }
    });
}

/// From when to when a pass is sprayed, or how long it takes where no clock can be told.
fn when(slot: &Slot, rig: Option<&RigDay>, units: Units) -> String {
    match (slot.span, slot.takes) {
        (Some(span), _) => span.to_whole_minute().words(),
        (None, _) if rig.is_some_and(|rig| rig.leaves.is_some()) => t!("tank-loads-no-place").to_owned(),
        (None, Some(takes)) => takes.show(units),
        (None, None) => t!("tank-loads-time-not-known").to_owned(),
    }
}

fn acts(ui: &mut Ui, made: &Made, rig: &RigDay, at: usize, name: &str, day: &mut Day) {
    let Some(slot) = rig.slots.get(at) else { return };
    let place = in_order(at);
    ui.spacing_mut().item_spacing.x = 6.0;
    // Both stand in every row, so that the keyboard stays on the one that was pressed.
    let later = at + 1 < rig.slots.len();
    let sooner = t!("tank-loads-spray-earlier-in-the-day", name = name);
    let after = t!("tank-loads-spray-later-in-the-day", name = name);
    let (first, last) = (t!("parts-it-is-the-first-already"), t!("parts-it-is-the-last-already"));
    for (word, spoken, can, why_not, to) in [
        (t!("tank-loads-earlier"), sooner, at > 0, first, place.saturating_sub(1)),
        (t!("tank-loads-later"), after, later, last, place.saturating_add(1)),
    ] {
        let button = ui.add_enabled(can, egui::Button::new(look::act(ui, word)).frame(false));
        if button.on_disabled_hover_text(why_not).accessible_name(spoken).clicked() {
            hold(made, day, &slot.pass, to);
        }
    }
    if slot.held.is_some() {
        if boxes::act(ui, t!("tank-loads-let-go"))
            .accessible_name(t!("tank-loads-let-go-from-its-place", name = name))
            .clicked()
        {
            day.pinned.shift_remove(&slot.pass);
        }
    } else if boxes::act(ui, t!("tank-loads-hold"))
        .accessible_name(t!("tank-loads-hold-at-its-place", name = name))
        .clicked()
    {
        hold(made, day, &slot.pass, place);
    }
}

/// Joins the loads of two passes that take the same spray; what it saves stands before it.
fn goes_on(desk: &mut Desk, ui: &mut Ui, made: &Made, before: &Slot, slot: &Slot) {
    let farm = desk.document.farm();
    let carried = farm.passes.get(&slot.pass).is_some_and(|pass| pass.in_tank.is_some());
    if carried || slot.fills_saved == 0 {
        return;
    }
    if boxes::act(ui, t!("tank-loads-join-the-loads")).clicked() {
        let plans = made.plan(&before.pass).zip(made.plan(&slot.pass));
        let filled = plans.ok_or_else(|| t!("tank-loads-the-passes-are-gone").to_owned());
        match filled.and_then(|(first, second)| carry_over(desk.document.farm(), first, second)) {
            Ok(farm) => desk.document.edit(|now| *now = farm),
            Err(problem) => desk.tell_problem(problem),
        }
    }
}

/// What goes on the truck.
fn truck(ui: &mut Ui, sheet: &SheetContent) {
    ui.label(look::heading(t!("tank-loads-on-the-truck")));
    if sheet.products.is_empty() {
        lists::empty(ui, t!("tank-loads-nothing-yet-no-pass-of-the"));
    }
    let lines = |ui: &mut Ui, lines: &[SheetLine]| {
        // On a small screen they stand under one another.
        let beside = ui.available_width() > 440.0;
        for line in lines {
            if !beside {
                ui.label(&line.what);
                ui.label(look::strong(&line.amount));
                ui.label(look::soft(ui, &line.detail));
                continue;
            }
            ui.horizontal(|ui| {
                cell(ui, 230.0_f32.min(ui.available_width() * 0.34), false, |ui| {
                    ui.add(egui::Label::new(&line.what).truncate()).on_hover_text(&line.what);
                });
                cell(ui, 130.0, true, |ui| {
                    ui.label(look::strong(&line.amount));
                });
                ui.add(egui::Label::new(look::soft(ui, &line.detail)).wrap());
            });
        }
    };
    lines(ui, &sheet.products);
    if !sheet.water.is_empty() {
        boxes::hairline(ui);
        lines(ui, &sheet.water);
    }
    if !sheet.not_counted.is_empty() {
        ui.label(look::soft(ui, &sheet.not_counted));
    }
}

/// Printing: the sheet, with or without the cards of the day.
fn print(desk: &mut Desk, ui: &mut Ui, date: Date, made: &Made) {
    ui.label(look::heading(t!("tank-loads-evening-sheet")));
    let ready = made.plans.iter().filter(|plan| is_ready(plan)).count();
    ui.horizontal_wrapped(|ui| {
        if ui
            .button(t!("tank-loads-open-it-for-printing"))
            .accessible_name(t!("tank-loads-open-the-evening-sheet-for-printing"))
            .clicked()
        {
            desk.tank_loads.printing = Some(Printing::Sheet(date));
            cards::open(desk);
        }
        if ui
            .button(t!("tank-loads-save-it-as-pdf"))
            .accessible_name(t!("tank-loads-save-the-evening-sheet-as-pdf"))
            .clicked()
        {
            ask(desk, ui, Printing::Sheet(date), &format!("{date}-evening-sheet.pdf"));
        }
        if ready == 0 {
            return;
        }
        if ui.button(t!("tank-loads-issue-and-open-all", ready = ready)).clicked() {
            desk.tank_loads.printing = Some(Printing::Day(date));
            cards::open(desk);
        }
        if ui.button(t!("tank-loads-issue-and-save-all", ready = ready)).clicked() {
            ask(desk, ui, Printing::Day(date), &format!("{date}-evening-sheet-and-cards.pdf"));
        }
    });
}

fn ask(desk: &mut Desk, ui: &Ui, what: Printing, name: &str) {
    desk.tank_loads.printing = Some(what);
    let path = desk.beside("pdf").with_file_name(name);
    desk.ask_file(Purpose::SaveSheet, path, ui.ctx());
}

fn is_ready(plan: &Plan) -> bool {
    plan.count(Level::Stop) == 0 && !plan.loads.is_empty()
}

/// The passes of a day that have cards, in its order.
pub(super) fn with_cards(desk: &mut Desk, date: Date) -> Result<Vec<Id>, String> {
    let made = fresh(desk, date).ok_or_else(order_missing)?;
    let ready = |slot: &&Slot| made.plan(&slot.pass).is_some_and(is_ready);
    Ok(made.day.slots().filter(ready).map(|slot| slot.pass.clone()).collect())
}

/// What stands on the sheet of a day.
pub(super) fn content(desk: &mut Desk, date: Date) -> Result<SheetContent, String> {
    Ok(fresh(desk, date).ok_or_else(order_missing)?.sheet.clone())
}
