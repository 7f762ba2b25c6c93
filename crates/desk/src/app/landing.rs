//! Leads to the box in which the cause of a finding is typed: to its page, and there to the box, which takes the keyboard.

use egui::Context;
use tankard_core::farm::{Id, Product};
use tankard_core::finding::{Finding, Subject, TypedAt};
use tankard_core::plausible::Slot;
use tankard_core::t;

use super::Desk;
use crate::command::View;
use crate::parts::{boxes, offers};
use crate::views::tank_loads::{Editor, Page};

/// Where a finding leads.
#[derive(Clone, Debug, PartialEq)]
pub struct Led {
    /// What it speaks of.
    pub about: Subject,
    /// Where its cause is typed, where that is known.
    at: Option<TypedAt>,
    /// The box of what was probably typed wrongly.
    slot: Option<Slot>,
}

impl Led {
    /// Where a finding leads.
    pub fn by(finding: &Finding) -> Self {
        let of_room = || {
            let room = finding.room.name();
            let is_product = matches!(finding.about, Subject::Product(_));
            if room.starts_with("stock/") { Some(TypedAt::Stock) } else { TypedAt::on_label(&room) }
                .filter(|_| is_product)
        };
        let slot = finding.offers.first().and_then(|offer| offer.sets.first()).map(|set| set.slot.clone());
        Self { about: finding.about.clone(), at: finding.at.or_else(of_room), slot }
    }

    /// Gives the keyboard to the box of what was probably typed wrongly, on the page that is in front.
    pub fn want(&self, ctx: &Context) {
        if let Some(slot) = &self.slot {
            offers::want(ctx, slot);
        }
    }
}

impl Desk {
    /// Leads to what a finding speaks of, and to the box of its cause.
    pub fn land(&mut self, led: &Led, ctx: &Context) {
        if let Some(slot) = &led.slot {
            self.land_at_slot(slot, &led.about);
            offers::want(ctx, slot);
            return;
        }
        match (led.at, &led.about) {
            (Some(TypedAt::Fields), Subject::Pass(id)) => self.go_to_pass(id, Some(Editor::Fields)),
            (Some(TypedAt::Water), Subject::Pass(id)) => self.go_to_pass(id, Some(Editor::Water)),
            (Some(TypedAt::Rig | TypedAt::Carrier), Subject::Pass(id)) => self.go_to_pass(id, Some(Editor::Rig)),
            (Some(TypedAt::Mix), Subject::Pass(id)) => self.go_to_pass(id, None),
            (Some(TypedAt::RateInPass), _) => {
                // The pass that is planned stays in front.
                self.view = View::TankLoads;
                self.tank_loads.page = Page::Plan;
            }
            (Some(TypedAt::Stock), Subject::Product(id)) => {
                self.view = View::Shed;
                self.shed.show_account(id);
            }
            (Some(TypedAt::Statement(kind)), Subject::Product(id)) => {
                self.lead_to(&led.about);
                let farm = self.document.farm();
                let is_typed = |product: &Product| product.label.iter().any(|one| kind.is_of(&one.says));
                let is_missing = farm.products.get(id).is_some_and(|product| !is_typed(product));
                self.shed.lead_to_statement(id, kind, is_missing);
            }
            _ => self.lead_to(&led.about),
        }
        if let Some(name) = led.at.and_then(|place| self.box_at(place, &led.about)) {
            boxes::want(ctx, &name);
        }
    }

    /// To the page that a slot is on: mostly what the finding speaks of, but for what is typed in a pass.
    fn land_at_slot(&mut self, slot: &Slot, about: &Subject) {
        match slot {
            Slot::Rate { pass, .. } | Slot::PassDate(pass) => self.go_to_pass(pass, None),
            Slot::Part { pass, .. } => self.go_to_pass(pass, Some(Editor::Fields)),
            Slot::Carrier(pass) | Slot::PassSpeed(pass) | Slot::PassPressure(pass) | Slot::PassHeight(pass) => {
                self.go_to_pass(pass, Some(Editor::Rig));
            }
            _ => self.lead_to(about),
        }
    }

    /// The name of the box at a spot.
    fn box_at(&self, place: TypedAt, about: &Subject) -> Option<String> {
        let farm = self.document.farm();
        let product = |id: &Id| farm.products.get(id);
        Some(match (place, about) {
            (TypedAt::Fields, _) => t!("tank-loads-add-a-field").to_owned(),
            (TypedAt::Carrier, _) => t!("tank-loads-spray-volume-over-ground").to_owned(),
            (TypedAt::Mix, _) => t!("tank-loads-add-a-product-to-the-mix").to_owned(),
            (TypedAt::RateInPass, Subject::Product(id)) => t!("tank-loads-rate-of", name = product(id)?.name),
            (TypedAt::Surfactant, Subject::Product(id)) if product(id)?.kind.is_pesticide() => {
                t!("shed-surfactant-built-in").to_owned()
            }
            (TypedAt::Surfactant, _) => t!("shed-charge").to_owned(),
            (TypedAt::Active, Subject::Product(id)) => match product(id)?.actives.first() {
                Some(active) if !active.name.trim().is_empty() => t!("shed-content-of", what = active.name),
                Some(_) => t!("shed-active-n", n = 1),
                None => t!("shed-add-an-active").to_owned(),
            },
            (TypedAt::Density, _) => t!("shed-density").to_owned(),
            (TypedAt::Grade, _) => t!("shed-grade").to_owned(),
            (TypedAt::Price, _) => t!("shed-price-row").to_owned(),
            (TypedAt::Container, Subject::Product(id)) if !product(id)?.containers.is_empty() => {
                t!("shed-size-of-container", n = 1)
            }
            (TypedAt::Container, _) => t!("shed-add-a-container").to_owned(),
            (TypedAt::Tank, _) => t!("shed-full-to-its-mark").to_owned(),
            (TypedAt::Residual, _) => t!("shed-stays-when-run-dry").to_owned(),
            (TypedAt::Area, Subject::Field(id)) => t!("fields-area-of", name = farm.fields.get(id)?.name),
            (TypedAt::Analysis, _) => t!("shed-calcium").to_owned(),
            _ => return None,
        })
    }
}
