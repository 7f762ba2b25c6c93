//! The front panel of a product, in the order in which labels print it.

use egui::{Checkbox, Label, Ui};
use tankard_core::farm::{Active, AdjuvantClass, Charge, Formulation, Grade, Id, Product, ProductKind, Surfactant};
use tankard_core::mix::actives;
use tankard_core::plausible::Slot;
use tankard_core::quantity::{ActiveBasis, AsTyped, Units};
use tankard_core::t;

use super::{line, section, word};
use crate::look;
use crate::parts::{boxes, offers};

/// Room below which the boxes of an active are narrower, so that they stay in a line.
const NARROW: f32 = 510.0;

/// The section.
pub(super) fn show(ui: &mut Ui, id: &Id, product: &mut Product, units: Units, is_filling: bool) {
    section(ui, t!("shed-front-panel"));
    line(ui, t!("shed-kind"), |ui| {
        boxes::choice(ui, t!("shed-kind"), &mut product.kind, &ProductKind::ALL, |kind| kind.name().to_owned(), 160.0);
    });
    line(ui, t!("shed-formulation"), |ui| {
        let say = |formulation: &Formulation| format!("{}, {}", formulation.code(), formulation.name());
        boxes::choice(ui, t!("shed-formulation"), &mut product.formulation, &Formulation::ALL, say, 280.0);
    });
    // What another kind left behind stays in sight, so that it can be taken away.
    let helps = matches!(product.kind, ProductKind::Adjuvant | ProductKind::Conditioner | ProductKind::FoliarFeed);
    if helps || product.class.is_some() {
        line(ui, t!("shed-adjuvant-class"), |ui| {
            let all: Vec<Option<AdjuvantClass>> =
                std::iter::once(None).chain(AdjuvantClass::ALL.into_iter().map(Some)).collect();
            let say =
                |class: &Option<AdjuvantClass>| class.map_or(t!("shed-not-stated"), AdjuvantClass::name).to_owned();
            boxes::choice(ui, t!("shed-adjuvant-class"), &mut product.class, &all, say, 280.0);
            if !helps {
                word(ui, &t!("shed-not-looked-at-for-a", kind = product.kind.name()));
            }
        });
    }
    actives(ui, id, product, units, is_filling);
    if !product.kind.is_pesticide() {
        surfactant(ui, product);
    }
    if product.class == Some(AdjuvantClass::AmmoniumSulfate) || product.grade.is_some() {
        line(ui, t!("shed-grade"), |ui| {
            let all: Vec<Option<Grade>> = std::iter::once(None).chain(Grade::ALL.into_iter().map(Some)).collect();
            let say = |grade: &Option<Grade>| grade.map_or(t!("shed-not-stated"), Grade::name).to_owned();
            boxes::choice(ui, t!("shed-grade"), &mut product.grade, &all, say, 160.0);
        });
    }
    line(ui, t!("shed-registration"), |ui| {
        boxes::text_or_empty(ui, t!("shed-registration"), &mut product.registration, 200.0, t!("shed-number"));
        word(ui, t!("shed-signal-word"));
        boxes::text_or_empty(ui, t!("shed-signal-word"), &mut product.signal_word, 110.0, t!("shed-none"));
    });
    line(ui, t!("shed-restricted-use"), |ui| {
        let say = |restricted: &bool| {
            if *restricted { t!("shed-yes-for-certified-applicators-only") } else { t!("shed-no") }.to_owned()
        };
        boxes::choice(ui, t!("shed-restricted-use"), &mut product.restricted, &[false, true], say, 280.0);
    });
}

/// What stands among the directions or in no set place, or on the safety data sheet alone.
pub(super) fn elsewhere(ui: &mut Ui, id: &Id, product: &mut Product, units: Units) {
    section(ui, t!("shed-elsewhere-on-the-label"));
    if product.kind.is_pesticide() {
        surfactant(ui, product);
    }
    line(ui, t!("shed-density"), |ui| {
        boxes::quantity_or_none(ui, t!("shed-density"), &mut product.density, 120.0);
        offers::at_box(ui, t!("shed-density"), &Slot::Density(id.clone()));
        boxes::understood(ui, product.density.as_ref(), units);
    });
}

/// What is known of a surfactant in a pesticide.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum BuiltIn {
    Unknown,
    No,
    Yes(Charge),
}

/// The surfactant in a pesticide, or what an adjuvant is itself.
fn surfactant(ui: &mut Ui, product: &mut Product) {
    let charges = |without: &[Charge]| -> Vec<Option<Charge>> {
        let stated = Charge::ALL.into_iter().filter(|charge| !without.contains(charge));
        std::iter::once(None).chain(stated.map(Some)).collect()
    };
    let mut charge = product.surfactant.map(|surfactant| surfactant.charge);
    let mut complete = product.is_loaded();
    if product.kind.is_pesticide() {
        line(ui, t!("shed-surfactant-built-in"), |ui| {
            let mut built_in = match charge {
                Some(charge) => BuiltIn::Yes(charge),
                None if product.no_surfactant => BuiltIn::No,
                None => BuiltIn::Unknown,
            };
            let all: Vec<BuiltIn> =
                [BuiltIn::Unknown, BuiltIn::No].into_iter().chain(Charge::ALL.map(BuiltIn::Yes)).collect();
            let say = |built_in: &BuiltIn| match built_in {
                BuiltIn::Unknown => t!("shed-not-typed").to_owned(),
                BuiltIn::No => t!("shed-no-none").to_owned(),
                BuiltIn::Yes(Charge::NotStated) => t!("shed-yes-charge-not-stated").to_owned(),
                BuiltIn::Yes(charge) => t!("shed-yes", charge = charge.name()),
            };
            boxes::choice(ui, t!("shed-surfactant-built-in"), &mut built_in, &all, say, 190.0);
            product.no_surfactant = built_in == BuiltIn::No;
            charge = match built_in {
                BuiltIn::Yes(charge) => Some(charge),
                _ => None,
            };
            if charge.is_some() {
                let tick = Checkbox::new(&mut complete, t!("shed-the-label-says-that-no-other"));
                ui.add(tick).accessible_name(t!("shed-the-label-says-that-no-other-surfactant-is-needed"));
            }
            if charge.is_some() {
                ui.end_row();
            }
            boxes::slot(ui, 290.0, |ui| word(ui, t!("shed-it-serves-this-product-a-partner")));
        });
    } else if product.kind == ProductKind::Adjuvant || product.surfactant.is_some() {
        line(ui, t!("shed-charge"), |ui| {
            let say = |charge: &Option<Charge>| charge.map_or(t!("shed-not-stated"), Charge::name).to_owned();
            let without = if charge == Some(Charge::NotStated) { &[][..] } else { &[Charge::NotStated][..] };
            boxes::choice(ui, t!("shed-charge"), &mut charge, &charges(without), say, 160.0);
            word(ui, t!("shed-of-the-surfactant-in-it"));
        });
    } else {
        return;
    }
    product.surfactant = charge.map(|charge| Surfactant { charge, complete });
}

fn actives(ui: &mut Ui, id: &Id, product: &mut Product, units: Units, is_filling: bool) {
    let mut gone = None;
    let mut more = false;
    // A pesticide that is being typed has its first active to fill in, which is none of it until it has a name.
    let mut first = None;
    if is_filling && product.actives.is_empty() && product.kind.is_pesticide() {
        first = blank(units);
        product.actives.extend(first.clone());
    }
    let count = product.actives.len();
    if count == 0 {
        line(ui, t!("shed-active-row"), |ui| {
            ui.spacing_mut().button_padding.x = 0.0;
            more = boxes::act(ui, t!("shed-add-an-active")).clicked();
        });
    }
    let counted = product.kind.is_pesticide();
    for (at, active) in product.actives.iter_mut().enumerate() {
        ui.push_id(("active", at), |ui| {
            line(ui, if at == 0 { t!("shed-active-row") } else { "" }, |ui| {
                let what =
                    if active.name.trim().is_empty() { t!("shed-active-n", n = at + 1) } else { active.name.clone() };
                let width = if ui.available_width() < NARROW { 122.0 } else { 150.0 };
                boxes::text_or_empty(
                    ui,
                    &t!("shed-active-n", n = at + 1),
                    &mut active.name,
                    width,
                    t!("shed-common-name"),
                );
                let content = t!("shed-content-of", what = what);
                let typed = active.content.clone();
                boxes::quantity(ui, &content, &mut active.content, 90.0);
                // Who types "540 g ae/L" has said how it is counted.
                if active.content != typed {
                    active.basis = active.content.basis().unwrap_or(active.basis);
                }
                offers::at_box(ui, &content, &Slot::Content { product: id.clone(), active: at });
                let basis = |basis: &ActiveBasis| basis.short().to_owned();
                let both = [ActiveBasis::AcidEquivalent, ActiveBasis::ActiveIngredient];
                boxes::choice(ui, &t!("shed-basis-of", what = what), &mut active.basis, &both, basis, 52.0);
                word(ui, t!("shed-group-row"));
                boxes::text_or_empty(ui, &t!("shed-group-of", what = what), &mut active.group, 44.0, t!("shed-none"));
                if super::cross(ui, &what) {
                    gone = Some(at);
                }
                boxes::understood(ui, Some(&active.content), units);
                if at + 1 == count {
                    more |= boxes::act(ui, t!("shed-another-active")).clicked();
                }
                if counted && let Some(text) = unusual(active) {
                    ui.end_row();
                    ui.add(Label::new(look::soft(ui, text).color(look::colours(ui).check)).wrap());
                }
            });
        });
    }
    if let Some(at) = gone {
        product.actives.remove(at);
    }
    if first.is_some() && product.actives.first() == first.as_ref() {
        product.actives.clear();
    }
    if more {
        product.actives.extend(blank(units));
    }
}

/// An active of which nothing is typed.
fn blank(units: Units) -> Option<Active> {
    let content = AsTyped::parse(if units == Units::UsCustomary { "0 lb/gal" } else { "0 g/L" }).ok()?;
    Some(Active { name: String::new(), group: String::new(), basis: ActiveBasis::ActiveIngredient, content })
}

/// What differs from the way in which labels usually give an active.
fn unusual(active: &Active) -> Option<String> {
    if let Some(basis) = active.content.basis()
        && basis != active.basis
    {
        return Some(t!("shed-the-content-says", short = basis.short()));
    }
    let facts = actives::facts(&active.name)?;
    let mut usual = Vec::new();
    if active.group.trim() != facts.group {
        usual.push(t!("shed-group", group = facts.group));
    }
    if active.basis != facts.basis() {
        usual.push(t!("shed-counted-as", short = facts.basis().short()));
    }
    (!usual.is_empty()).then(|| t!("shed-usually-the-label-decides", usual = usual.join(", ")))
}
