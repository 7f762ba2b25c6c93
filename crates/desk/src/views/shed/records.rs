//! How records are kept: for which profiles, by whom, and what the farm asks for on top.

use egui::{Label, Ui};
use tankard_core::farm::id::fresh_where;
use tankard_core::farm::{Farm, Id, Keeping, OwnElement};
use tankard_core::season::profile::{self, Profile, not_the_law};
use tankard_core::t;

use super::{Bench, cross, line, quiet, section, sheets, word};
use crate::look;
use crate::parts::{boxes, lists};

/// How far the words under a profile stand in from its tick box.
const INDENT: f32 = 22.0;

/// What stands at the left.
pub(super) fn list(ui: &mut Ui) {
    lists::empty(ui, t!("shed-what-your-records-are-kept-for"));
}

/// The page.
pub(super) fn page(bench: &mut Bench, ui: &mut Ui) {
    super::with_sheets(bench, ui, 284.0, form, |bench, ui| {
        for profile in profile::chosen(bench.farm()) {
            sheets::sheet(ui, profile.name(), |ui| {
                let names: Vec<&str> =
                    profile.elements.iter().map(tankard_core::season::profile::Wanted::name).collect();
                boxes::say(ui, &t!("shed-asks-for", names = names.join("; ")));
            });
        }
        sheets::sheet(ui, t!("shed-codes-of-crops"), |ui| {
            boxes::say(ui, t!("shed-a-record-takes-the-eppo-code"));
        });
    });
}

fn form(bench: &mut Bench, ui: &mut Ui) {
    let before = bench.farm().keeping.clone();
    let mut keeping = before.clone();
    quiet(ui);
    super::title(ui, t!("shed-records"));
    ui.add(Label::new(not_the_law()).wrap());
    word(ui, t!("shed-the-profiles-are-a-help-to"));
    section(ui, t!("shed-who-keeps-them"));
    line(ui, t!("shed-name-of-the-business"), |ui| {
        boxes::text_or_empty(
            ui,
            t!("shed-name-of-the-business"),
            &mut keeping.holder,
            320.0,
            t!("shed-who-keeps-the-records"),
        );
    });
    line(ui, t!("shed-address"), |ui| {
        boxes::text_or_empty(
            ui,
            t!("shed-address-of-the-business"),
            &mut keeping.address,
            320.0,
            t!("shed-and-how-it-is-reached"),
        );
    });
    line(ui, t!("shed-number"), |ui| {
        boxes::text_or_empty(
            ui,
            t!("shed-number-of-the-business"),
            &mut keeping.number,
            220.0,
            t!("shed-with-the-authority"),
        );
    });
    section(ui, t!("shed-kept-for"));
    for profile in profile::all() {
        // A tick box that is empty must be seen on the ground of the page.
        ui.scope(|ui| one(ui, &mut keeping, profile));
        ui.add_space(2.0);
        boxes::hairline(ui);
    }
    let unknown: Vec<Id> = profile::unknown(bench.farm()).cloned().collect();
    for key in unknown {
        ui.horizontal(|ui| {
            ui.label(t!("shed-is-not-known-to-this-program", key = key));
            if cross(ui, &key) {
                keeping.profiles.retain(|known| *known != key);
            }
        });
    }
    own(bench.farm(), ui, &mut keeping);
    if keeping != before {
        bench.desk.document.edit(|farm| farm.keeping = keeping);
    }
}

/// A profile, with who it is for, by when it is due and how long it is kept.
fn one(ui: &mut Ui, keeping: &mut Keeping, profile: &Profile) {
    // The plain one holds where none is chosen, and then its box is ticked.
    let stands_in = profile.key == "plain" && keeping.profiles.iter().all(|key| profile::profile(key).is_none());
    let mut holds = stands_in || keeping.profiles.contains(&profile.key);
    let edge = egui::Stroke::new(1.0, look::colours(ui).soft);
    ui.visuals_mut().widgets.inactive.bg_stroke = edge;
    let response = ui.add_enabled(!stands_in, egui::Checkbox::new(&mut holds, look::strong(profile.name())));
    let name = format!("{}: {}", profile.name(), profile.who());
    if response.accessible_name(name).changed() {
        keeping.profiles.retain(|key| *key != profile.key);
        if holds {
            keeping.profiles.push(profile.key.clone());
        }
    }
    ui.horizontal(|ui| {
        ui.add_space(INDENT);
        ui.vertical(|ui| {
            let due = profile.due.map_or_else(
                || t!("shed-by-when-is-not-known-here").to_owned(),
                |due| t!("shed-due", due = due.words()),
            );
            let keep = match profile.keep_years {
                Some(_) => t!("shed-kept", keep_words = profile.keep_words()),
                None => profile.keep_words(),
            };
            let mut say = |text: String| {
                ui.add(Label::new(look::soft(ui, text)).wrap());
            };
            say(format!("{}.", profile.who()));
            let scope = profile.scope.words();
            say(match profile.until {
                Some(day) => t!("shed-profile-until", scope = scope, day = day, due = due, keep = keep),
                None => t!("shed-profile", scope = scope, due = due, keep = keep),
            });
            if holds && !profile.note().is_empty() {
                say(profile.note().to_owned());
            }
            say(t!("shed-profile-from", source = profile.source, evidence = profile.evidence()));
        });
    });
}

/// What the farm asks for on top.
fn own(farm: &Farm, ui: &mut Ui, keeping: &mut Keeping) {
    section(ui, t!("shed-asked-for-on-top"));
    word(ui, t!("shed-elements-that-a-buyer-a-scheme"));
    let mut taken = None;
    for (at, (key, element)) in keeping.own.iter_mut().enumerate() {
        ui.push_id(("own", key), |ui| {
            ui.horizontal(|ui| {
                ui.spacing_mut().item_spacing.x = 6.0;
                let number = at + 1;
                boxes::text_or_empty(
                    ui,
                    &t!("shed-name-of-element", number = number),
                    &mut element.name,
                    150.0,
                    t!("shed-what-it-is"),
                );
                boxes::text_or_empty(
                    ui,
                    &t!("shed-who-asks-for-element", number = number),
                    &mut element.asked_by,
                    120.0,
                    t!("shed-who-asks"),
                );
                boxes::count_or_none(
                    ui,
                    &t!("shed-days-until-element-is-due", number = number),
                    &mut element.due_days,
                    50.0,
                    t!("shed-any"),
                );
                word(ui, t!("shed-days-row"));
                boxes::tick(ui, &mut element.restricted_only, t!("shed-restricted-only"));
                if cross(ui, &t!("shed-element", number = number)) {
                    taken = Some(key.clone());
                }
            });
        });
        boxes::hairline(ui);
    }
    if let Some(key) = taken {
        keeping.own.shift_remove(&key);
    }
    if boxes::act(ui, t!("shed-add-an-element")).clicked() {
        // Records keep what was typed under a key that is gone; a new element must not inherit it.
        let key = fresh_where("own", |id| {
            !keeping.own.contains_key(id) && !farm.records.values().any(|record| record.more.contains_key(id))
        });
        keeping.own.insert(key, OwnElement::default());
    }
}
