//! The ground of a field: its two areas and which one counts, what stays unsprayed, its soil, and the ways into it.

use egui::Ui;
use tankard_core::farm::{AreaFrom, Farm, Field, Gateway, Id, Pass, Shape};
use tankard_core::ground;
use tankard_core::plausible::{self, Slot};
use tankard_core::quantity::Quantity;
use tankard_core::t;

use crate::look;
use crate::parts::{boxes, findings, offers};

/// Shows what is typed of the ground.
pub(super) fn show(ui: &mut Ui, id: &Id, field: &mut Field, farm: &Farm) {
    ui.label(look::heading(t!("fields-ground")));
    ui.spacing_mut().item_spacing.y = 2.0;
    areas(ui, id, field, farm);
    boxes::row(ui, t!("fields-stays-unsprayed"), |ui| {
        boxes::quantity_or_none(ui, t!("fields-area-that-stays-unsprayed"), &mut field.unsprayed, look::BOX);
        offers::at_box(ui, t!("fields-area-that-stays-unsprayed"), &Slot::Unsprayed(id.clone()));
        boxes::understood(ui, field.unsprayed.as_ref(), farm.units);
        boxes::say(ui, t!("fields-buffers-waterways-wet-spots"));
    });
    boxes::row(ui, t!("fields-strips-to-what-is-drawn"), |ui| {
        let all = [false, true];
        let say = |within: &bool| {
            if *within { t!("fields-are-part-of-what-stays-unsprayed") } else { t!("fields-are-left-out-beside-it") }
                .to_owned()
        };
        boxes::choice(ui, t!("fields-strips-to-what-is-drawn-351"), &mut field.strips_in_unsprayed, &all, say, 240.0);
    });
    boxes::row(ui, t!("fields-head-soil"), |ui| {
        let hint = t!("fields-silt-loam-2-4-organic-matter");
        boxes::text_or_empty(ui, t!("fields-soil"), &mut field.soil, 320.0, hint);
    });
    gateways(ui, field);
    differs(ui, id, field, farm);
}

fn areas(ui: &mut Ui, id: &Id, field: &mut Field, farm: &Farm) {
    let name = t!("fields-stated-area-of", name = field.name);
    boxes::row(ui, t!("fields-stated-area"), |ui| {
        boxes::quantity(ui, &name, &mut field.area, look::BOX);
        offers::at_box(ui, &name, &Slot::Area(id.clone()));
        boxes::understood(ui, Some(&field.area), farm.units);
        boxes::say(ui, t!("fields-tilled-insured-claimed"));
    });
    let measured = field.boundary.as_ref().map(Shape::area);
    boxes::row(ui, t!("fields-from-the-boundary"), |ui| match measured {
        Some(area) => {
            ui.label(area.show(farm.units));
            boxes::say(ui, &difference(field, farm));
        }
        None => {
            boxes::say(ui, t!("fields-no-boundary-yet-draw-it-on"));
        }
    });
    boxes::row(ui, t!("fields-plans-go-by"), |ui| {
        if measured.is_some() || field.area_from == AreaFrom::Boundary {
            let say = |from: &AreaFrom| match from {
                AreaFrom::Stated => t!("fields-the-stated-area").to_owned(),
                AreaFrom::Boundary => t!("fields-the-area-from-the-boundary").to_owned(),
            };
            boxes::choice(ui, t!("fields-which-area-plans-go-by"), &mut field.area_from, &AreaFrom::ALL, say, 200.0);
        } else {
            ui.label(t!("fields-the-stated-area"));
        }
    });
}

/// "0.8 ac or 1.1 % more than stated".
fn difference(field: &Field, farm: &Farm) -> String {
    let Some(measured) = field.boundary.as_ref().map(Shape::area) else { return String::new() };
    let (stated, word) = (field.area.value(), if measured.exceeds(field.area.value()) { "more" } else { "less" });
    let by = if measured.exceeds(stated) { measured - stated } else { stated - measured };
    match measured.ratio(stated) {
        Some(ratio) if (ratio - 1.0).abs() >= 0.0005 => {
            t!(
                "fields-or-than-stated",
                by = by.show(farm.units),
                ratio = format_args!("{:.1}", (ratio - 1.0).abs() * 100.0),
                word = word
            )
        }
        Some(_) => t!("fields-as-much-as-stated").to_owned(),
        None => String::new(),
    }
}

/// What there is to say of the two areas, as it is said of a pass, and what may have been meant.
fn differs(ui: &mut Ui, id: &Id, field: &Field, farm: &Farm) {
    let mut found = Vec::new();
    if field.boundary.is_some() || field.area_from != AreaFrom::Stated {
        let mut pass = Pass::new("", jiff::civil::Date::MIN);
        pass.fields.push(id.clone());
        // As the farm has it, so that it agrees with the plans of this frame.
        found.extend(ground::of(farm, &pass).of_field(id).map(|ground| ground.findings.clone()).unwrap_or_default());
    }
    plausible::of_field(farm, id, &mut found);
    if !found.is_empty() {
        ui.add_space(4.0);
        findings::show(ui, &found);
    }
}

fn gateways(ui: &mut Ui, field: &mut Field) {
    let mut out = None;
    for (at, gateway) in field.gateways.iter_mut().enumerate() {
        let number = at + 1;
        let label = if at == 0 { t!("fields-head-gateways") } else { "" };
        ui.push_id(("gateway", at), |ui| {
            boxes::row(ui, label, |ui| {
                // Where room is short the place gives way, which the pointer brings.
                let act = look::width(ui, t!("fields-take-out")) + ui.spacing().item_spacing.x;
                let room = ui.available_width() - act;
                boxes::text_or_empty(
                    ui,
                    &t!("fields-name-of-gateway", number = number),
                    &mut gateway.name,
                    look::BOX.min(room * 0.6),
                    t!("fields-its-name"),
                );
                let place = look::soft(ui, place(gateway));
                let room = (ui.available_width() - act).min(look::width(ui, place.clone()));
                boxes::slot(ui, room, |ui| ui.add(egui::Label::new(place).truncate()));
                if boxes::act(ui, t!("fields-take-out"))
                    .accessible_name(t!("fields-take-out-gateway", number = number))
                    .clicked()
                {
                    out = Some(at);
                }
            });
        });
    }
    if field.gateways.is_empty() {
        boxes::row(ui, t!("fields-head-gateways"), |ui| {
            boxes::say(ui, t!("fields-none-yet-set-them-on-the"));
        });
    }
    if let Some(at) = out {
        field.gateways.remove(at);
    }
}

/// Latitude and longitude, as a receiver shows them.
fn place(gateway: &Gateway) -> String {
    let at = gateway.at.bounds().center();
    format!("{:.5}, {:.5}", at.y, at.x)
}
