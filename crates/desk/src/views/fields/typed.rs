//! What is typed of a field beside its ground: crop, days, place, weeds that stand up to a group.

use egui::Ui;
use tankard_core::farm::{Farm, Field, Id, Resistant, crop};
use tankard_core::plausible::Slot;
use tankard_core::t;

use crate::look;
use crate::parts::{boxes, offers};

/// Shows crop, days and place.
pub(super) fn form(ui: &mut Ui, id: &Id, field: &mut Field, farm: &Farm) {
    ui.spacing_mut().item_spacing.y = 2.0;
    boxes::row(ui, t!("fields-variety-and-traits"), |ui| {
        boxes::text(ui, t!("fields-variety-and-traits-adf"), &mut field.variety, 320.0);
    });
    boxes::row(ui, t!("fields-head-owner"), |ui| {
        boxes::text(ui, t!("fields-owner"), &mut field.owner, 320.0);
    });
    boxes::row(ui, t!("fields-head-planted"), |ui| {
        boxes::date_or_none(ui, t!("fields-day-of-planting"), &mut field.planted, look::BOX);
        offers::at_box(ui, t!("fields-day-of-planting"), &Slot::Planted(id.clone()));
    });
    boxes::row(ui, t!("fields-harvest-or-grazing-from"), |ui| {
        boxes::date_or_none(ui, t!("fields-expected-day-of-harvest"), &mut field.harvest, look::BOX);
        offers::at_box(ui, t!("fields-expected-day-of-harvest"), &Slot::Harvest(id.clone()));
        boxes::say(ui, t!("fields-harvest-intervals-are-judged-against-it"));
    });
    boxes::row(ui, t!("fields-road-from-the-yard"), |ui| {
        boxes::quantity_hinted(
            ui,
            t!("fields-road-from-the-yard-to-the"),
            &mut field.road,
            look::BOX,
            t!("fields-not-known"),
        );
        boxes::understood(ui, field.road.as_ref(), farm.units);
        boxes::say(ui, t!("fields-to-its-gate-for-the-time"));
    });
    boxes::row(ui, t!("fields-head-location"), |ui| {
        let hint = t!("fields-section-township-range-or-latitude-longitude");
        boxes::text_or_empty(ui, t!("fields-location"), &mut field.location, 320.0, hint);
    });
    boxes::row(ui, t!("fields-head-parcel"), |ui| {
        boxes::text_or_empty(
            ui,
            t!("fields-parcel"),
            &mut field.parcel,
            320.0,
            t!("fields-reference-in-the-aid-claim"),
        );
    });
    boxes::row(ui, t!("fields-next-crop"), |ui| {
        boxes::text(ui, t!("fields-next-crop-8c6"), &mut field.next_crop, look::BOX);
        let offered = crop::offered().into_iter().map(str::to_owned).collect();
        let width = look::BOX.min(ui.available_width());
        boxes::pick(ui, t!("fields-next-crop-from-the-list"), &mut field.next_crop, offered, width);
    });
    boxes::row(ui, t!("fields-head-note"), |ui| {
        boxes::text(ui, t!("fields-note-on-the-field"), &mut field.note, 320.0);
    });
}

/// Weeds that a resistance group no longer controls here.
pub(super) fn resistant(ui: &mut Ui, field: &mut Field) {
    ui.label(look::heading(t!("fields-weeds-that-stand-up-to-a")));
    let mut remove = None;
    for (at, resistant) in field.resistant.iter_mut().enumerate() {
        ui.push_id(("resistant", at), |ui| {
            ui.horizontal(|ui| {
                boxes::text(ui, &t!("fields-resistant-weed", number = at + 1), &mut resistant.weed, 190.0);
                ui.label(look::soft(ui, t!("fields-to-group")));
                boxes::text(ui, &t!("fields-group-of-resistant-weed", number = at + 1), &mut resistant.group, 80.0);
                if boxes::act(ui, t!("fields-take-out"))
                    .accessible_name(t!("fields-take-out-resistant-weed", number = at + 1))
                    .clicked()
                {
                    remove = Some(at);
                }
            });
        });
    }
    if let Some(at) = remove {
        field.resistant.remove(at);
    }
    if field.resistant.is_empty() {
        ui.label(look::soft(ui, t!("fields-none-is-typed-a-group-that")));
    }
    if boxes::act(ui, t!("fields-add-a-resistant-weed")).clicked() {
        field.resistant.push(Resistant::default());
    }
}
