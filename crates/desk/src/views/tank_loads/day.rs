//! Which weeds a pass is meant for, and how crop and weeds stand on the day: what conditions on labels ask about.

use egui::Ui;
use tankard_core::farm::{CarrierKind, Pass};
use tankard_core::t;

use crate::look;
use crate::parts::boxes;

/// The heading line's words: "volunteer corn, drought", or what is still to type.
pub(super) fn summary(pass: &Pass) -> String {
    let growing = &pass.growing;
    let marks = [
        (growing.large_weeds, t!("tank-loads-large-weeds")),
        (growing.heavy_pressure, t!("tank-loads-thick-weeds")),
        (growing.drought, t!("tank-loads-drought")),
        (growing.heat, t!("tank-loads-heat")),
        (growing.cold, t!("tank-loads-cold")),
    ];
    let mut words: Vec<String> = pass.weeds.iter().filter(|weed| !weed.trim().is_empty()).take(2).cloned().collect();
    if pass.weeds.len() > 2 {
        words.push(t!("tank-loads-more", weeds = pass.weeds.len() - 2));
    }
    words.extend(marks.into_iter().filter(|(is, _)| *is).map(|(_, word)| word.to_owned()));
    if pass.carrier_kind != CarrierKind::Water {
        words.push(t!("tank-loads-in-carrier", carrier = pass.carrier_kind.name()));
    }
    if words.is_empty() { t!("tank-loads-weeds-and-day").to_owned() } else { words.join(", ") }
}

/// The editor.
pub(super) fn show(ui: &mut Ui, pass: &mut Pass) {
    ui.label(look::heading(t!("tank-loads-weeds-and-day")));
    boxes::row(ui, t!("tank-loads-weeds-row"), |ui| {
        // One box, apart by commas; an empty part that is still being typed is kept.
        let mut text = pass.weeds.join(", ");
        boxes::text_or_empty(ui, t!("tank-loads-weeds"), &mut text, 360.0, t!("tank-loads-volunteer-corn-waterhemp"));
        let weeds: Vec<String> = if text.trim().is_empty() {
            Vec::new()
        } else {
            text.split(',').map(|weed| weed.trim_start().to_owned()).collect()
        };
        if weeds != pass.weeds {
            pass.weeds = weeds;
        }
    });
    let growing = &mut pass.growing;
    boxes::row(ui, t!("tank-loads-the-weeds-are"), |ui| {
        boxes::tick(ui, &mut growing.large_weeds, t!("tank-loads-large-for-the-products"));
        boxes::tick(ui, &mut growing.heavy_pressure, t!("tank-loads-thick"));
    });
    boxes::row(ui, t!("tank-loads-they-stand-in"), |ui| {
        boxes::tick(ui, &mut growing.drought, t!("tank-loads-drought"));
        boxes::tick(ui, &mut growing.heat, t!("tank-loads-extreme-heat"));
        boxes::tick(ui, &mut growing.cold, t!("tank-loads-cold"));
        ui.label(look::soft(ui, t!("tank-loads-air-at-its-warmest")));
        boxes::quantity_hinted(
            ui,
            t!("tank-loads-air-at-its-warmest-da5"),
            &mut growing.air,
            92.0,
            t!("tank-loads-not-known"),
        );
    });
    boxes::row(ui, t!("tank-loads-carrier-row"), |ui| {
        let say = |kind: &CarrierKind| kind.name().to_owned();
        boxes::choice(ui, t!("tank-loads-carrier"), &mut pass.carrier_kind, &CarrierKind::ALL, say, 190.0);
    });
}
