//! Under which conditions a statement speaks, and the bounds over ground of an adjuvant in the spray: what stands below the
//! row of a statement.

use egui::containers::menu::MenuButton;
use egui::{Button, Ui};
use tankard_core::farm::{CarrierKind, Droplets, Says, Statement, When};
use tankard_core::label::when::words;
use tankard_core::quantity::{AsTyped, Quantity, Units};
use tankard_core::t;

use super::statements::{GAP, understood};
use super::{cross, word};
use crate::look;
use crate::parts::boxes;

/// A condition of every kind, to be filled in, with the words under which it is chosen.
fn conditions(units: Units) -> Vec<(&'static str, When)> {
    let metric = units == Units::Metric;
    let mut all = vec![
        (t!("shed-in-extreme-heat"), When::Heat),
        (t!("shed-in-cold"), When::Cold),
        (t!("shed-in-drought"), When::Drought),
        (t!("shed-on-large-weeds"), When::LargeWeeds),
        (t!("shed-where-weeds-stand-thick"), When::HeavyPressure),
        (t!("shed-against-a-weed"), When::Weed(String::new())),
        (t!("shed-with-a-partner"), When::With(String::new())),
        (t!("shed-with-a-partner-that-has-a"), When::LoadedPartner),
        (t!("shed-without-another-pesticide-in-the-tank"), When::Alone),
        (t!("shed-without-a-complete-surfactant-built-in"), When::NoSurfactantBuiltIn),
        (t!("shed-in-a-carrier"), When::Carrier(CarrierKind::UreaAmmoniumNitrate)),
    ];
    let spray = if metric { "0 L/ha" } else { "0 gal/ac" };
    if let (Ok(below), Ok(above)) = (AsTyped::parse(spray), AsTyped::parse(spray)) {
        all.extend([
            (t!("shed-below-a-spray-volume"), When::CarrierBelow(below)),
            (t!("shed-above-a-spray-volume"), When::CarrierAbove(above)),
        ]);
    }
    all.extend([
        (t!("shed-with-droplets-finer-than-a-class"), When::DropletsFinerThan(Droplets::Coarse)),
        (t!("shed-with-droplets-of-a-class-or"), When::DropletsAtLeast(Droplets::Coarse)),
    ]);
    let own = if metric { "0 L/ha" } else { "0 fl oz/ac" };
    if let (Ok(above), Ok(up_to)) = (AsTyped::parse(own), AsTyped::parse(own)) {
        all.extend([
            (t!("shed-above-a-rate"), When::RateAbove(above)),
            (t!("shed-up-to-a-rate"), When::RateUpTo(up_to)),
        ]);
    }
    let air = if metric { "0 °C" } else { "0 °F" };
    if let (Ok(warm), Ok(cold)) = (AsTyped::parse(air), AsTyped::parse(air)) {
        all.extend([
            (t!("shed-in-air-warmer-than"), When::WarmerThan(warm)),
            (t!("shed-in-air-colder-than"), When::ColderThan(cold)),
        ]);
    }
    all
}

/// The act that adds a condition to a statement.
pub(super) fn only_if(ui: &mut Ui, act: &str, name: String, statement: &mut Statement, units: Units) {
    let button = Button::new(look::act(ui, act)).frame(false);
    let (response, _) = MenuButton::from_button(button).ui(ui, |ui| {
        if let Says::Adjuvant { at_least, at_most, .. } = &mut statement.says
            && at_least.is_none()
            && at_most.is_none()
            && ui.button(t!("shed-but-at-least-or-at-most")).clicked()
        {
            *at_least = AsTyped::parse(if units == Units::Metric { "0 L/ha" } else { "0 pt/ac" }).ok();
            ui.close();
        }
        ui.label(look::soft(ui, t!("shed-it-says-so-only")));
        for (words, when) in conditions(units) {
            if ui.button(words).clicked() {
                statement.when.push(when);
                ui.close();
            }
        }
    });
    response.on_hover_text(t!("shed-only-under-a-condition")).accessible_name(name);
}

/// What a statement has beside its row: bounds over ground for an adjuvant in the spray, and its conditions.
pub(super) fn below(ui: &mut Ui, name: &str, statement: &mut Statement, units: Units) {
    if let Says::Adjuvant { at_least, at_most, .. } = &mut statement.says
        && (at_least.is_some() || at_most.is_some())
    {
        indented(ui, |ui| {
            word(ui, t!("shed-but-at-least"));
            boxes::quantity_hinted(ui, &t!("shed-at-least-over-ground", name = name), at_least, 82.0, t!("shed-any"));
            word(ui, t!("shed-and-at-most"));
            boxes::quantity_hinted(ui, &t!("shed-at-most-over-ground", name = name), at_most, 82.0, t!("shed-any"));
            word(ui, t!("shed-over-ground"));
            boxes::understood_between(ui, at_least.as_ref(), at_most.as_ref(), units);
        });
    }
    if statement.when.is_empty() {
        return;
    }
    indented(ui, |ui| list(ui, name, &mut statement.when, units));
}

/// Conditions one after the other, each with what it names and an act that takes it away.
pub(super) fn list(ui: &mut Ui, name: &str, conditions: &mut Vec<When>, units: Units) {
    let mut gone = None;
    let last = conditions.len().saturating_sub(1);
    for (at, when) in conditions.iter_mut().enumerate() {
        let name = t!("shed-condition", name = name, at = at + 1);
        word(ui, if at == 0 { t!("shed-only") } else { t!("shed-and-also") });
        condition(ui, &name, when, units);
        if cross(ui, &name) {
            gone = Some(at);
        }
        if at < last {
            ui.add_space(GAP);
        }
    }
    if let Some(at) = gone {
        conditions.remove(at);
    }
}

/// A line under a statement's row.
fn indented(ui: &mut Ui, add: impl FnOnce(&mut Ui)) {
    boxes::beside(ui, look::LABEL, "", |ui| {
        ui.spacing_mut().item_spacing.x = 5.0;
        add(ui);
    });
}

/// A condition in words, with a box for what it names.
fn condition(ui: &mut Ui, name: &str, when: &mut When, units: Units) {
    match when {
        When::Weed(weed) => {
            word(ui, t!("shed-against"));
            boxes::text_or_empty(ui, name, weed, 112.0, t!("shed-weed"));
        }
        When::With(what) => {
            word(ui, t!("shed-with"));
            boxes::text_or_empty(ui, name, what, 130.0, t!("shed-group-active-class"));
        }
        When::Carrier(kind) => {
            word(ui, t!("shed-in"));
            let say = |kind: &CarrierKind| kind.name().to_owned();
            boxes::choice(ui, name, kind, &CarrierKind::ALL, say, 150.0);
        }
        When::CarrierBelow(rate) => asked(ui, name, t!("shed-below"), rate, units),
        When::CarrierAbove(rate) => asked(ui, name, t!("shed-above"), rate, units),
        When::DropletsFinerThan(class) => class_of(ui, name, t!("shed-with-droplets-finer-than"), class),
        When::DropletsAtLeast(class) => {
            class_of(ui, name, t!("shed-with-droplets"), class);
            word(ui, t!("shed-or-coarser"));
        }
        When::RateAbove(rate) => asked(ui, name, t!("shed-above"), rate, units),
        When::RateUpTo(rate) => asked(ui, name, t!("shed-up-to"), rate, units),
        When::WarmerThan(air) => asked(ui, name, t!("shed-warmer-than"), air, units),
        When::ColderThan(air) => asked(ui, name, t!("shed-colder-than"), air, units),
        When::Heat
        | When::Cold
        | When::Drought
        | When::LargeWeeds
        | When::HeavyPressure
        | When::Alone
        | When::NoSurfactantBuiltIn
        | When::LoadedPartner => {
            ui.label(words(when));
        }
    }
}

fn class_of(ui: &mut Ui, name: &str, before: &str, class: &mut Droplets) {
    word(ui, before);
    boxes::choice(ui, name, class, &Droplets::ALL, |class: &Droplets| class.name().to_owned(), 130.0);
}

fn asked<Q: Quantity>(ui: &mut Ui, name: &str, before: &str, value: &mut AsTyped<Q>, units: Units) {
    word(ui, before);
    boxes::quantity(ui, name, value, 82.0);
    understood(ui, value, units);
}
