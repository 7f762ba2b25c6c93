//! Which adjuvant suits every partner: the sets on offer with their reasons, taken with one click, compared with another.

use egui::{Label, RichText, Sense, Stroke, Ui, Vec2};
use tankard_core::farm::{AdjuvantClass, Formulation, Lean, Product, ProductKind};
use tankard_core::mix::choice::{Choice, Content, Member, Verdict, per_ground};
use tankard_core::plan::Plan;
use tankard_core::quantity::Units;
use tankard_core::t;
use tankard_core::words::capital;

use super::{cell, column, compare};
use crate::app::Desk;
use crate::look;
use crate::parts::{boxes, lists};

/// Width of the column with what is in a set.
const SET: f32 = 216.0;
/// Width of the rank of a set.
const NUMBER: f32 = 16.0;
/// The least width of the reasons beside a set.
const REASONS: f32 = 120.0;

/// Shows the sets, or two of them side by side.
pub(super) fn show(desk: &mut Desk, ui: &mut Ui, id: &str, plan: &Plan) {
    look::sheet(ui).show(ui, |ui| {
        ui.set_width(ui.available_width());
        ui.spacing_mut().item_spacing = egui::vec2(6.0, 2.0);
        heading(desk, ui, id);
        let chosen = desk.tank_loads.compared.clone();
        let compared = chosen.and_then(|title| plan.adjuvants.choices.iter().find(|choice| key(choice) == title));
        if let Some(choice) = compared {
            compare::show(desk, ui, id, plan, choice);
            return;
        }
        desk.tank_loads.compared = None;
        if plan.adjuvants.choices.is_empty() && plan.adjuvants.collisions.is_empty() {
            lists::empty(ui, t!("tank-loads-the-sets-appear-when-the-mix"));
        }
        for collision in &plan.adjuvants.collisions {
            collided(ui, &collision.text, &collision.ways_out);
        }
        let (mut taken, mut lacking) = (None, None);
        for choice in &plan.adjuvants.choices {
            match row(desk, ui, choice) {
                Some(Act::Take) => taken = Some(choice),
                Some(Act::Compare) => desk.tank_loads.compared = Some(key(choice)),
                Some(Act::Add) => lacking = Some(choice),
                None => {}
            }
        }
        by_hand(ui, plan);
        if let Some(choice) = lacking {
            add_and_take(desk, id, choice);
        }
        if let Some(choice) = taken {
            take(desk, id, choice);
        }
    });
}

/// What tells one set from another, over a replanning.
pub(super) fn key(choice: &Choice) -> String {
    choice.members.iter().map(|member| member.name.as_str()).collect::<Vec<_>>().join("+")
}

/// Puts a set into the pass.
pub(super) fn take(desk: &mut Desk, id: &str, choice: &Choice) {
    let farm = desk.document.farm();
    let Some(mut pass) = farm.passes.get(id).cloned() else { return };
    choice.take(&mut pass, farm);
    desk.document.edit(|farm| {
        farm.passes.insert(id.to_owned(), pass);
    });
    desk.tank_loads.compared = None;
}

/// Puts into the shed what a set lacks, known by nothing but its class, and the set into the pass.
fn add_and_take(desk: &mut Desk, id: &str, choice: &Choice) {
    let classes: Vec<AdjuvantClass> = choice.members.iter().map(|member| member.class).collect();
    let lacking: Vec<AdjuvantClass> =
        choice.members.iter().filter(|member| member.product.is_none()).map(|member| member.class).collect();
    desk.document.edit(|farm| {
        for class in &lacking {
            let name = capital(class.name());
            let (kind, formulation) = usual(*class);
            let product = Product { class: Some(*class), ..Product::new(&name, kind, formulation) };
            farm.products.insert(farm.fresh_product_id(&name), product);
        }
    });
    let names: Vec<&str> = lacking.iter().map(|class| class.name()).collect();
    desk.tell(t!("tank-loads-is-in-the-shed-with-its-class", names = names.join(", ")));
    let plan = desk.document.plan(id);
    let known = plan.iter().flat_map(|plan| &plan.adjuvants.choices).find(|choice| {
        choice.members.iter().all(|member| member.product.is_some())
            && choice.members.iter().map(|member| member.class).eq(classes.iter().copied())
    });
    if let Some(choice) = known {
        take(desk, id, choice);
    }
}

/// What a product of a class mostly is: oils are sold with their emulsifier, sulfate as a soluble powder (common practice, no source).
const fn usual(class: AdjuvantClass) -> (ProductKind, Formulation) {
    match class {
        AdjuvantClass::CropOilConcentrate | AdjuvantClass::MethylatedSeedOil | AdjuvantClass::HighSurfactantOil => {
            (ProductKind::Adjuvant, Formulation::EC)
        }
        AdjuvantClass::AmmoniumSulfate => (ProductKind::Conditioner, Formulation::SG),
        AdjuvantClass::UreaAmmoniumNitrate | AdjuvantClass::ConditionerWithoutAmmonium | AdjuvantClass::Buffer => {
            (ProductKind::Conditioner, Formulation::SL)
        }
        _ => (ProductKind::Adjuvant, Formulation::SL),
    }
}

fn heading(desk: &mut Desk, ui: &mut Ui, id: &str) {
    let Some(mut pass) = desk.document.farm().passes.get(id).cloned() else { return };
    let before = pass.lean;
    let question = look::heading(t!("tank-loads-which-adjuvant-suits-every-partner"));
    let leans = |ui: &mut Ui, lean: &mut Lean| {
        ui.label(look::soft(ui, t!("tank-loads-lean-to"))).on_hover_text(t!("tank-loads-the-lean-and-the-weeds-and"));
        for each in Lean::ALL {
            ui.selectable_value(lean, each, each.name())
                .accessible_name(t!("tank-loads-lean-to-each", each = each.name()));
        }
    };
    // How long the words are depends on the language.
    let style = ui.spacing();
    let beside = 2.0 * style.button_padding.x + style.item_spacing.x;
    let wide: f32 = Lean::ALL.into_iter().map(|each| look::width(ui, each.name()) + beside).sum();
    let wide = wide + look::width(ui, look::soft(ui, t!("tank-loads-lean-to")));
    if ui.available_width() < look::width(ui, question.clone()) + wide + 2.0 * beside {
        ui.label(question);
        ui.horizontal_wrapped(|ui| leans(ui, &mut pass.lean));
    } else {
        ui.horizontal(|ui| {
            ui.label(question);
            let room = (ui.available_width() - wide - beside).max(0.0);
            ui.add_space(room);
            leans(ui, &mut pass.lean);
        });
    }
    if pass.lean != before {
        desk.document.edit(|farm| {
            farm.passes.insert(id.to_owned(), pass);
        });
    }
}

fn collided(ui: &mut Ui, text: &str, ways_out: &[String]) {
    let colours = look::colours(ui);
    ui.label(RichText::new(t!("tank-loads-no-set-suits-all", text = text)).color(colours.stop));
    for way in ways_out {
        ui.label(look::soft(ui, way).color(colours.ink));
    }
    boxes::hairline(ui);
}

/// What a row may ask for.
enum Act {
    Take,
    /// To put into the shed what the set lacks, and to take it.
    Add,
    Compare,
}

fn row(desk: &Desk, ui: &mut Ui, choice: &Choice) -> Option<Act> {
    let farm = desk.document.farm();
    let colours = look::colours(ui);
    let mut act = None;
    let top = ui.cursor().top();
    let acts = look::width(ui, t!("tank-loads-compare")).max(54.0) + 4.0;
    let gap = ui.spacing().item_spacing.x;
    // Where room is short the reasons stand under the set.
    let is_narrow = ui.available_width() < NUMBER + SET + acts + REASONS + 3.0 * gap + 8.0;
    let why = |ui: &mut Ui| {
        let full = choice.reasons().join("\n");
        ui.add(Label::new(look::narrow(shortly(choice))).wrap()).on_hover_text(full);
    };
    ui.horizontal_top(|ui| {
        cell_top(ui, NUMBER, |ui| {
            let number = look::strong(choice.rank.to_string());
            ui.label(if choice.satisfies { number.color(colours.brass) } else { number.color(colours.soft) });
        });
        let set = if is_narrow { ui.available_width() - acts - gap } else { SET };
        cell_top(ui, set, |ui| members(ui, choice, farm.units, &farm.currency));
        if !is_narrow {
            let room = ui.available_width() - acts - 8.0;
            cell_top(ui, room, why);
        }
        cell_top(ui, acts, |ui| {
            ui.spacing_mut().interact_size.y = 0.0;
            ui.spacing_mut().button_padding = Vec2::ZERO;
            if choice.current {
                ui.label(look::soft(ui, t!("tank-loads-in-the-mix")));
                return;
            }
            let names: Vec<&str> = choice.members.iter().map(|member| member.name.as_str()).collect();
            let and = |one: String, other: &str| t!("tank-loads-one-and-other", one = one, other = other);
            let names = names.split_first().map(|(first, rest)| rest.iter().copied().fold((*first).to_owned(), and));
            let names = names.unwrap_or_else(|| t!("tank-loads-no-adjuvant").to_owned());
            if choice.members.iter().all(|member| member.product.is_some())
                && boxes::act(ui, t!("tank-loads-take"))
                    .accessible_name(t!("tank-loads-take-names", names = names))
                    .clicked()
            {
                act = Some(Act::Take);
            }
            if choice.members.iter().any(|member| member.product.is_none())
                && boxes::act(ui, t!("tank-loads-add-and-take"))
                    .accessible_name(t!("tank-loads-add-and-take-names", names = names))
                    .on_hover_text(t!("tank-loads-add-and-take-does"))
                    .clicked()
            {
                act = Some(Act::Add);
            }
            if boxes::act(ui, t!("tank-loads-compare"))
                .accessible_name(t!("tank-loads-compare-names", names = names))
                .clicked()
            {
                act = Some(Act::Compare);
            }
        });
    });
    if is_narrow {
        ui.horizontal_top(|ui| {
            ui.add_space(NUMBER + gap);
            let room = ui.available_width();
            cell_top(ui, room, why);
        });
    }
    if choice.current {
        let line = Stroke::new(2.0, colours.water);
        ui.painter().vline(ui.min_rect().left() - 5.0, top..=ui.cursor().top() - 2.0, line);
    }
    boxes::hairline(ui);
    act
}

/// A column whose lines stand close.
fn cell_top(ui: &mut Ui, width: f32, add: impl FnOnce(&mut Ui)) {
    column(ui, width, |ui| {
        ui.spacing_mut().item_spacing.y = 0.0;
        add(ui);
    });
}

/// What is in a set: its first adjuvant with its rate, then what goes with it and what that costs.
fn members(ui: &mut Ui, choice: &Choice, units: Units, currency: &str) {
    let rate = |member: &Member| match (&member.rate, &member.product) {
        (Some(rate), Some(_)) => rate.text().to_owned(),
        (Some(rate), None) => t!("tank-loads-to-buy", rate = rate.text()),
        (None, _) => t!("tank-loads-rate-not-known").to_owned(),
    };
    let Some((first, rest)) = choice.members.split_first() else {
        ui.add(Label::new(if choice.current {
            look::strong(t!("tank-loads-no-adjuvant-14d"))
        } else {
            RichText::new(t!("tank-loads-no-adjuvant-14d"))
        }));
        return;
    };
    let title = capital(first.class.name());
    ui.add(Label::new(if choice.current { look::strong(title) } else { RichText::new(title) }).truncate())
        .on_hover_text(&first.name);
    let cost = choice
        .cost_per_hectare
        .map_or(t!("tank-loads-price-not-typed").to_owned(), |cost| per_ground(cost, units, currency));
    let mut parts = vec![rate(first)];
    parts.extend(rest.iter().map(|member| format!("{} {}", member.class.key(), rate(member))));
    let amounts = format!("{} · {cost}", parts.join(", "));
    ui.add(Label::new(look::soft(ui, &amounts).family(look::condensed())).wrap()).on_hover_text(choice.title());
}

/// The reasons in a line or two: what sets it behind the one before, or, for the first, what each product says.
fn shortly(choice: &Choice) -> String {
    let mut verdicts: Vec<&Verdict> = choice.verdicts.iter().collect();
    verdicts.sort_by_key(|verdict| std::cmp::Reverse(weight(verdict.content)));
    let full = match choice.behind.split_once(": ") {
        Some((_, why)) => {
            // A word on cost says against which set.
            let than = if choice.rank > 1 { choice.rank - 1 } else { 1 };
            let dearer = t!("mix-dearer-by", per_ground = "");
            capital(&if why.starts_with(dearer.trim_end()) {
                t!("tank-loads-than-set", why = why, than = than)
            } else {
                why.to_owned()
            })
        }
        None if !choice.behind.is_empty() => choice.behind.clone(),
        None => {
            let said = verdicts.iter().take(3).map(|verdict| format!("{} {}", verdict.name, verdict.plain()));
            said.collect::<Vec<_>>().join(". ")
        }
    };
    verdicts.iter().fold(full, |text, verdict| text.replace(&verdict.name, short(&verdict.name)))
}

const fn weight(content: Content) -> u8 {
    match content {
        Content::Forbids | Content::Lacks => 6,
        Content::Objects => 5,
        Content::WouldRather => 4,
        Content::Served => 3,
        Content::Accepts => 2,
        Content::Silent => 1,
    }
}

/// A product's name without its content: "Mesotrione 480 SC (demo)" is "Mesotrione".
fn short(name: &str) -> &str {
    name.split(|c: char| c.is_ascii_digit() || c == '(').next().map_or(name, str::trim_end)
}

/// A set chosen by hand that is not on offer: what the products say of it.
fn by_hand(ui: &mut Ui, plan: &Plan) {
    let Some(current) = plan.adjuvants.current.as_ref().filter(|current| current.rank == 0) else { return };
    ui.horizontal_top(|ui| {
        cell(ui, NUMBER, false, |ui| {
            ui.label(look::soft(ui, "–"));
        });
        cell_top(ui, SET, |ui| {
            let names: Vec<&str> = current.members.iter().map(|member| short(&member.name)).collect();
            let title = if names.is_empty() { t!("tank-loads-no-adjuvant-14d").to_owned() } else { names.join(", ") };
            ui.add(Label::new(look::strong(title)).wrap());
            ui.label(look::soft(ui, t!("tank-loads-in-the-mix-chosen-by-hand")));
        });
        let room = ui.available_width() - 8.0;
        cell_top(ui, room, |ui| {
            ui.add(Label::new(look::narrow(shortly(current))).wrap().sense(Sense::hover()))
                .on_hover_text(current.reasons().join("\n"));
        });
    });
}
