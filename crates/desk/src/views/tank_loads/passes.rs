//! The list of passes, by day.

use std::collections::HashSet;
use std::time::{Duration, Instant};

use egui::{ScrollArea, Ui};
use jiff::ToSpan;
use jiff::civil::Date;
use tankard_core::farm::{Farm, Id, LoadSplit, Pass};
use tankard_core::finding::Level;
use tankard_core::language::days::long_date;
use tankard_core::quantity::{Area, Quantity};
use tankard_core::t;

use crate::app::Desk;
use crate::look;
use crate::parts::{boxes, findings, lists};

/// After so long the order of another day is reckoned, or the plans of more rows.
const NEXT: Duration = Duration::from_millis(15);

/// So long passes are planned within a frame for their rows.
const PLANNING: Duration = Duration::from_millis(5);

/// No row is taller, with all that may stand in it.
const TALLEST: f32 = 120.0;

/// What the row of a pass says of its plan.
#[derive(Clone, Copy)]
pub(crate) struct Row {
    fields: usize,
    area: Area,
    loads: usize,
    stops: usize,
    checks: usize,
    superseded: bool,
}

/// The passes from the first day to the last; passes of one day stay as the user put them.
pub(super) fn by_day(farm: &Farm) -> Vec<Id> {
    let mut passes: Vec<(&Id, &Pass)> = farm.passes.iter().collect();
    passes.sort_by_key(|(_, pass)| pass.date);
    passes.into_iter().map(|(id, _)| id.clone()).collect()
}

/// The same with the passes of one day in the order that is reckoned or decided for them, rig by rig. An order that an edit made old
/// stands until it is reckoned anew, one day a frame, so that typing waits for none; where nobody sees the day, that waits, too.
fn in_order(desk: &mut Desk, ctx: &egui::Context) -> Vec<Id> {
    let mut passes = by_day(desk.document.farm());
    let of = |farm: &Farm, id: &Id| farm.passes.get(id).map(|pass| pass.date);
    let farm = desk.document.farm();
    let dates: Vec<Date> = passes.iter().filter_map(|id| of(farm, id)).collect();
    let mut several: Vec<Date> =
        dates.iter().zip(dates.iter().skip(1)).filter(|(one, next)| one == next).map(|(date, _)| *date).collect();
    several.dedup();
    let of_chosen = desk.tank_loads.chosen.as_ref().and_then(|id| of(farm, id));
    let in_view = |date: &Date| desk.tank_loads.in_view.as_ref().is_none_or(|seen| seen.contains(date));
    several.retain(|date| Some(*date) == of_chosen || in_view(date));
    let mut has_time = true;
    for date in several {
        let known = match desk.document.known_day(date) {
            Some(known) => Some(known),
            // Where there are many, the order is looked for when the day is looked at.
            None if !desk.is_quickly_ordered(date) => None,
            None if std::mem::take(&mut has_time) => desk.day(date),
            None => {
                ctx.request_repaint_after(NEXT);
                None
            }
        };
        if let Some(day) = known {
            let rigs = day.rigs.iter().flat_map(|rig| rig.done.iter().chain(rig.slots.iter().map(|slot| &slot.pass)));
            let order: Vec<Id> = rigs.chain(day.loose.iter().map(|slot| &slot.pass)).cloned().collect();
            desk.tank_loads.orders.insert(date, order);
        }
    }
    let (farm, orders) = (desk.document.farm(), &desk.tank_loads.orders);
    passes.sort_by_cached_key(|id| {
        let date = of(farm, id);
        let order = date.and_then(|date| orders.get(&date));
        (date, order.and_then(|order| order.iter().position(|other| other == id)).unwrap_or(usize::MAX))
    });
    passes
}

/// Shows the list, with what can be done at its foot.
pub(super) fn show(desk: &mut Desk, ui: &mut Ui) {
    egui::Panel::bottom("pass acts").frame(egui::Frame::new().inner_margin(egui::Margin::symmetric(0, 6))).show(
        ui,
        |ui| {
            if boxes::act(ui, t!("tank-loads-plan-a-pass")).clicked() {
                add(desk);
            }
            acts(desk, ui);
        },
    );
    ScrollArea::vertical().auto_shrink(false).show(ui, |ui| {
        let mut day = None;
        let mut seen = HashSet::new();
        let begun = Instant::now();
        let log = desk.document.log();
        for id in in_order(desk, ui.ctx()) {
            let top = ui.cursor().top();
            let in_view = top < ui.clip_rect().bottom() && top + TALLEST > ui.clip_rect().top();
            let Some(row) = told(desk, ui, &id, in_view, begun) else { continue };
            let farm = desk.document.farm();
            let Some(pass) = farm.passes.get(&id) else { continue };
            if in_view {
                seen.insert(pass.date);
            }
            if day != Some(pass.date) {
                if day.is_some() {
                    ui.add_space(6.0);
                }
                day = Some(pass.date);
                day_heading(ui, pass.date, &mut desk.tank_loads.day);
            }
            let recorded = log.is_recorded(farm, &id);
            let line = [
                t!("tank-loads-count-fields", fields = row.fields),
                row.area.show(farm.units),
                t!("tank-loads-count-loads", loads = row.loads),
            ]
            .join(" · ");
            let (stops, checks, superseded) = (row.stops, row.checks, row.superseded);
            let chosen = desk.tank_loads.day.is_none() && desk.tank_loads.chosen.as_ref() == Some(&id);
            let name = pass.name.clone();
            let response = lists::row(ui, chosen, &name, |ui| {
                let text = if chosen { look::strong(&name) } else { egui::RichText::new(&name) };
                ui.add(egui::Label::new(text).truncate());
                ui.label(look::soft(ui, line));
                if recorded {
                    ui.label(look::soft(ui, t!("tank-loads-recorded-as-sprayed")));
                } else {
                    findings::summary(ui, stops, checks);
                }
                if superseded {
                    ui.horizontal_wrapped(|ui| {
                        ui.spacing_mut().item_spacing.x = 2.0;
                        crate::parts::mark::show(ui, Level::Check);
                        ui.label(look::soft(ui, t!("tank-loads-cards-superseded")).color(look::colours(ui).check));
                    });
                }
            });
            if chosen && desk.tank_loads.reveal {
                desk.tank_loads.reveal = false;
                response.scroll_to_me(None);
            }
            if response.clicked() {
                desk.tank_loads.choose(&id);
            }
        }
        desk.tank_loads.in_view = Some(seen);
    });
}

/// What the row of a pass says. After an edit the rows in view are planned anew, as many in a frame as there is time for, and say what they
/// said before until then; typing waits for none of them.
fn told(desk: &mut Desk, ui: &Ui, id: &Id, in_view: bool, begun: Instant) -> Option<Row> {
    let before = desk.tank_loads.rows.get(id).filter(|_| desk.document.known_plan(id).is_none());
    if let Some(before) = before.filter(|_| !in_view || begun.elapsed() > PLANNING) {
        if in_view {
            ui.ctx().request_repaint_after(NEXT);
        }
        return Some(*before);
    }
    let superseded = super::cards::is_superseded(desk, id);
    let plan = desk.document.plan(id)?;
    let row = Row {
        fields: plan.fields.len(),
        area: plan.area,
        loads: plan.loads.len(),
        stops: plan.count(Level::Stop),
        checks: plan.count(Level::Check),
        superseded,
    };
    desk.tank_loads.rows.insert(id.clone(), row);
    Some(row)
}

/// The day, which opens as a whole.
fn day_heading(ui: &mut Ui, date: Date, open: &mut Option<Date>) {
    let chosen = *open == Some(date);
    let colour = if chosen { look::colours(ui).brass } else { look::colours(ui).soft };
    let text = look::heading(format!("{} ›", long_date(date))).color(colour);
    let response = boxes::lead(ui, text)
        .accessible_name(t!("tank-loads-the-day-as-a-whole", date = long_date(date)))
        .on_hover_text(t!("tank-loads-the-day-as-a-whole-its"));
    if chosen || response.hovered() || response.has_focus() {
        let colour = look::colours(ui).brass;
        ui.painter().hline(response.rect.x_range(), response.rect.bottom(), egui::Stroke::new(1.5, colour));
    }
    if response.clicked() {
        *open = if chosen { None } else { Some(date) };
    }
}

/// Adds a pass for the day after the last one planned, or for tomorrow, with the rig and water of the last one.
pub(super) fn add(desk: &mut Desk) {
    let farm = desk.document.farm();
    let tomorrow = desk.now().date().checked_add(1.day()).unwrap_or(desk.now().date());
    let last = farm.passes.values().max_by_key(|pass| pass.date);
    let mut pass = Pass::new(t!("tank-loads-new-pass"), last.map_or(tomorrow, |last| last.date.max(tomorrow)));
    pass.split = LoadSplit::ByAims;
    if let Some(last) = last {
        pass.rig.clone_from(&last.rig);
        pass.water.clone_from(&last.water);
        pass.carrier.clone_from(&last.carrier);
    } else {
        pass.rig = farm.rigs.keys().next().cloned().unwrap_or_default();
        pass.water = farm.waters.keys().next().cloned().unwrap_or_default();
    }
    let id = farm.fresh_pass_id(&t!("tank-loads-date-new-pass", date = pass.date));
    let new = id.clone();
    desk.document.edit(|farm| {
        farm.passes.insert(new, pass);
    });
    desk.tank_loads.choose(&id);
    desk.tank_loads.editor = Some(super::Editor::Fields);
    desk.tank_loads.reveal = true;
}

fn acts(desk: &mut Desk, ui: &mut Ui) {
    let Some(id) = desk.tank_loads.chosen.clone() else { return };
    let Some(name) = desk.document.farm().passes.get(&id).map(|pass| pass.name.clone()) else { return };
    if desk.tank_loads.removing {
        let issued = desk.document.farm().cards.values().filter(|card| card.pass == id).count();
        ui.label(if issued > 0 {
            t!("tank-loads-remove-its-issued-cards-stay", name = name, issued = issued)
        } else {
            t!("tank-loads-remove", name = name)
        });
        ui.horizontal_wrapped(|ui| {
            if ui.button(t!("tank-loads-remove-it")).clicked() {
                desk.tank_loads.removing = false;
                apply(desk, lists::Act::Remove, &id);
            }
            if ui.button(t!("tank-loads-keep-it")).clicked() {
                desk.tank_loads.removing = false;
            }
        });
        return;
    }
    match lists::acts(ui, &name) {
        Some(lists::Act::Remove) => desk.tank_loads.removing = true,
        Some(act) => apply(desk, act, &id),
        None => {}
    }
}

/// Holds a pass a place earlier or later among those of its rig and day, since that is how the list is ordered. Gives whether there is such
/// a place.
fn moved(desk: &mut Desk, act: lists::Act, id: &str) -> bool {
    let Some(date) = desk.document.farm().passes.get(id).map(|pass| pass.date) else { return false };
    let Some(day) = desk.document.known_day(date) else { return false };
    let Some(rig) = day.rigs.iter().find(|rig| rig.slots.iter().any(|slot| slot.pass == id)) else { return false };
    let Some(at) = rig.slots.iter().position(|slot| slot.pass == id) else { return false };
    let to = match act {
        lists::Act::Up => at.checked_sub(1),
        lists::Act::Down => Some(at + 1).filter(|to| *to < rig.slots.len()),
        lists::Act::Copy | lists::Act::Remove => None,
    };
    let Some(to) = to else { return false };
    // Those sprayed already have the first places.
    let place = |at: usize| u32::try_from(rig.done.len() + at + 1).unwrap_or(u32::MAX);
    let (was, place) = (place(at), place(to));
    desk.document.edit(|farm| {
        let mut decided = farm.days.get(&date.to_string()).cloned().unwrap_or_default();
        for (other, held) in &mut decided.pinned {
            if *held == place && rig.slots.iter().any(|slot| slot.pass == *other) {
                *held = was;
            }
        }
        decided.pinned.insert(id.to_owned(), place);
        farm.days.insert(date.to_string(), decided);
    });
    true
}

fn apply(desk: &mut Desk, act: lists::Act, id: &str) {
    if moved(desk, act, id) {
        desk.tank_loads.reveal = true;
        return;
    }
    // Not an id that records or cards of a pass long gone still carry.
    let farm = desk.document.farm();
    let copied = farm
        .passes
        .get(id)
        .map(|pass| farm.fresh_pass_id(&t!("tank-loads-copy", date = pass.date.to_string(), name = pass.name)));
    let mut next = None;
    desk.document.edit(|farm| {
        next = lists::apply(act, &mut farm.passes, id, |pass| {
            pass.name = t!("tank-loads-name-copy", name = pass.name);
            // A copy is an application of its own, and the same spray is not in the tank twice.
            pass.rest_of.clear();
            pass.in_tank = None;
            copied.unwrap_or_default()
        });
    });
    match next {
        Some(next) => desk.tank_loads.choose(&next),
        None => desk.tank_loads.chosen = None,
    }
}
