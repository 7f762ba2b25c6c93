//! Local advice: who said what, when, for which product, crop and water.

use egui::{Label, Ui};
use tankard_core::farm::label::{Says, Stance, Statement};
use tankard_core::farm::{AdjuvantClass, Advice, Farm, Id, Product};
use tankard_core::label::names::advises;
use tankard_core::quantity::Units;
use tankard_core::t;

use super::conditions;
use super::guidance::{self, applies, sentence, source};
use super::{Bench, line, lines, named, quiet, section, sheets, title_box_hinted, word};
use crate::look;
use crate::parts::{boxes, lists};

/// What advice may say.
#[derive(Clone, Copy, PartialEq, Eq)]
enum Kind {
    Adjuvant,
    NotWith,
    Words,
    /// A kind that is not typed here, from a file written by hand.
    Another,
}

impl Kind {
    const ALL: [Self; 3] = [Self::Adjuvant, Self::NotWith, Self::Words];

    const fn of(says: &Says) -> Self {
        match says {
            Says::Adjuvant { .. } => Self::Adjuvant,
            Says::NotWith { .. } => Self::NotWith,
            Says::Caution { .. } => Self::Words,
            _ => Self::Another,
        }
    }

    fn name(self) -> &'static str {
        match self {
            Self::Adjuvant => t!("shed-an-adjuvant"),
            Self::NotWith => t!("shed-what-not-to-mix-it-with"),
            Self::Words => t!("shed-in-free-words"),
            Self::Another => t!("shed-something-else"),
        }
    }

    fn blank(self) -> Option<Says> {
        match self {
            Self::Adjuvant => Some(Says::Adjuvant {
                class: AdjuvantClass::NonIonicSurfactant,
                stance: Stance::Allowed,
                least: None,
                most: None,
                at_least: None,
                at_most: None,
            }),
            Self::NotWith => Some(Says::NotWith { what: String::new(), days: 0 }),
            Self::Words => Some(Says::Caution { what: String::new() }),
            Self::Another => None,
        }
    }
}

/// The list.
pub(super) fn list(bench: &mut Bench, ui: &mut Ui) {
    let farm = bench.farm();
    if farm.advice.is_empty() {
        lists::empty(ui, t!("shed-no-advice-yet-add-what-an"));
    }
    let entry = |advice: &Advice| {
        let whose = if advice.whose.trim().is_empty() { t!("shed-someone-not-named") } else { advice.whose.trim() };
        (whose.to_owned(), format!("{}: {}", about(advice), said(advice, farm.units)))
    };
    let entries: Vec<_> = farm
        .advice
        .iter()
        .map(|(id, advice)| {
            let (whose, summary) = entry(advice);
            (id.clone(), whose, summary)
        })
        .collect();
    let chosen = bench.state.advice.clone();
    super::rows(bench, ui, chosen.as_ref(), entries);
}

/// The foot of the list.
pub(super) fn foot(bench: &mut Bench, ui: &mut Ui) {
    let chosen = bench
        .state
        .advice
        .clone()
        .and_then(|id| bench.farm().advice.get(&id).map(|advice| (id.clone(), source(advice))));
    let (added, done) = super::foot(bench, ui, t!("shed-add-advice"), chosen, 0);
    if added {
        // In free words, which change no plan until they are typed.
        let says = Statement::new(Says::Caution { what: String::new() }, "");
        let advice = Advice { whose: String::new(), given: None, about: String::new(), water: Id::new(), says };
        super::add(&mut bench.desk.document, bench.state, |farm| &mut farm.advice, "advice", advice);
    }
    if let Some(done) = done {
        super::apply(&mut bench.desk.document, bench.state, done, |farm| &mut farm.advice, |_| "advice".to_owned());
    }
}

/// The page of the chosen advice.
pub(super) fn page(bench: &mut Bench, ui: &mut Ui) {
    super::with_sheets(
        bench,
        ui,
        284.0,
        |bench, ui| {
            let chosen = bench.state.advice.clone();
            let Some((id, mut advice)) =
                chosen.and_then(|id| bench.farm().advice.get(&id).cloned().map(|advice| (id, advice)))
            else {
                ui.label(look::title(t!("shed-advice")));
                lists::empty(ui, rank());
                return;
            };
            let before = advice.clone();
            ui.push_id(&id, |ui| {
                quiet(ui);
                form(bench.farm(), ui, &mut advice);
            });
            if advice != before {
                bench.desk.document.edit(|farm| {
                    if let Some(slot) = farm.advice.get_mut(&id) {
                        *slot = advice;
                    }
                });
            }
        },
        speaks_of,
    );
}

fn rank() -> &'static str {
    t!("shed-local-advice-stands-below")
}

fn form(farm: &Farm, ui: &mut Ui, advice: &mut Advice) {
    let whole = whole(farm, advice);
    title_box_hinted(ui, t!("shed-whose-advice-it-is"), &mut advice.whose, t!("shed-whose-it-is-a-person-or"));
    ui.label(look::soft(ui, rank()));
    ui.add_space(look::GRID);
    ui.add(Label::new(whole).wrap());
    section(ui, t!("shed-who-said-it-and-of-what"));
    line(ui, t!("shed-given-on"), |ui| {
        boxes::date_or_none(ui, t!("shed-given-on"), &mut advice.given, 120.0);
    });
    line(ui, t!("shed-about"), |ui| {
        boxes::text_or_empty(ui, t!("shed-about"), &mut advice.about, 220.0, t!("shed-every-pesticide"));
        suggestions(farm, ui, &mut advice.about);
    });
    line(ui, t!("shed-with-water"), |ui| {
        let mut all = vec![Id::new()];
        all.extend(farm.waters.keys().cloned());
        if !all.contains(&advice.water) {
            all.push(advice.water.clone());
        }
        let say = |id: &Id| match farm.waters.get(id) {
            Some(water) => named(&water.name),
            None if id.is_empty() => t!("shed-any").to_owned(),
            None => t!("shed-which-is-gone", id = id),
        };
        boxes::choice(ui, t!("shed-with-water"), &mut advice.water, &all, say, 220.0);
    });
    section(ui, t!("shed-what-it-says"));
    what(ui, &mut advice.says.says, farm.units);
    section(ui, t!("shed-where-it-holds"));
    holds(farm, ui, "advice", &mut advice.says);
}

/// For which crop, stages and conditions a statement holds that stands on no label; `of` names what it belongs to.
pub(super) fn holds(farm: &Farm, ui: &mut Ui, of: &str, statement: &mut Statement) {
    line(ui, t!("shed-crop"), |ui| {
        boxes::text_or_empty(ui, &t!("shed-crop-of-the", of = of), &mut statement.crop, 150.0, t!("shed-any-crop"));
        let mut crops: Vec<String> =
            farm.fields.values().map(|field| field.crop.trim().to_owned()).filter(|crop| !crop.is_empty()).collect();
        crops.sort();
        crops.dedup();
        boxes::pick(ui, t!("shed-crop-from-the-fields"), &mut statement.crop, crops, 150.0);
    });
    line(ui, t!("shed-stages"), |ui| {
        boxes::text_or_empty(ui, t!("shed-from-stage"), &mut statement.from_stage, 70.0, t!("shed-from-hint"));
        word(ui, "–");
        boxes::text_or_empty(ui, t!("shed-to-stage"), &mut statement.to_stage, 70.0, t!("shed-to-hint"));
        word(ui, t!("shed-both-included"));
    });
    lines(ui, t!("shed-conditions"), |ui| {
        if statement.when.is_empty() {
            word(ui, t!("shed-in-every-weather-and-carrier"));
        }
        conditions::list(ui, &t!("shed-owner", of = of), &mut statement.when, farm.units);
        conditions::only_if(
            ui,
            t!("shed-add-a-condition"),
            t!("shed-add-a-condition-to-the", of = of),
            statement,
            farm.units,
        );
    });
}

/// What the products of the shed offer to speak of.
pub(super) fn suggestions(farm: &Farm, ui: &mut Ui, value: &mut String) {
    let mut groups = Vec::new();
    let mut actives = Vec::new();
    let mut products = Vec::new();
    for product in farm.products.values().filter(|product| product.kind.is_pesticide()) {
        products.push(product.name.trim().to_owned());
        for active in &product.actives {
            actives.push(active.name.trim().to_owned());
            let group = active.group.trim();
            if !group.is_empty() {
                groups.push((group.parse::<u32>().unwrap_or(u32::MAX), format!("group {group}")));
            }
        }
    }
    groups.sort();
    actives.sort();
    let mut all: Vec<String> = groups.into_iter().map(|(_, group)| group).chain(actives).collect();
    all.dedup();
    all.extend(products);
    all.retain(|text| !text.is_empty());
    boxes::pick(ui, t!("shed-about-something-from-the-shed"), value, all, 190.0);
}

fn what(ui: &mut Ui, says: &mut Says, units: Units) {
    let mut kind = Kind::of(says);
    let before = kind;
    line(ui, t!("shed-it-speaks-of"), |ui| {
        boxes::choice(ui, t!("shed-it-speaks-of"), &mut kind, &Kind::ALL, |kind| kind.name().to_owned(), 220.0);
    });
    if kind != before
        && let Some(blank) = kind.blank()
    {
        *says = blank;
    }
    match says {
        Says::Adjuvant { class, stance, least, most, at_least, at_most } => {
            line(ui, t!("shed-adjuvant"), |ui| {
                let say = |class: &AdjuvantClass| class.name().to_owned();
                boxes::choice(ui, t!("shed-adjuvant-class"), class, &AdjuvantClass::ALL, say, 220.0);
                boxes::choice(
                    ui,
                    t!("shed-stance-box"),
                    stance,
                    &Stance::ALL,
                    |stance| stance.name().to_owned(),
                    110.0,
                );
            });
            line(ui, t!("shed-rate"), |ui| {
                boxes::quantity_hinted(ui, t!("shed-rate-at-least"), least, 110.0, t!("shed-at-least"));
                word(ui, "–");
                boxes::quantity_hinted(ui, t!("shed-rate-at-most"), most, 110.0, t!("shed-at-most"));
                boxes::understood_between(ui, least.as_ref(), most.as_ref(), units);
            });
            line(ui, t!("shed-but-over-ground"), |ui| {
                boxes::quantity_hinted(ui, t!("shed-over-ground-at-least"), at_least, 110.0, t!("shed-at-least"));
                word(ui, "–");
                boxes::quantity_hinted(ui, t!("shed-over-ground-at-most"), at_most, 110.0, t!("shed-at-most"));
                boxes::understood_between(ui, at_least.as_ref(), at_most.as_ref(), units);
            });
        }
        Says::NotWith { what, days } => {
            line(ui, t!("shed-not-together-with"), |ui| {
                boxes::text_or_empty(
                    ui,
                    t!("shed-not-together-with"),
                    what,
                    320.0,
                    t!("shed-an-active-a-group-a-kind"),
                );
            });
            line(ui, t!("shed-nor-within"), |ui| {
                boxes::count(ui, t!("shed-nor-within-days"), days, 44.0);
                word(ui, t!("shed-days-before-and-after-on-the"));
            });
        }
        Says::Caution { what } => {
            lines(ui, t!("shed-in-these-words"), |ui| {
                let width = ui.available_width();
                boxes::sentence(ui, t!("shed-in-these-words"), what, width, t!("shed-what-was-said"));
            });
        }
        other => line(ui, "", |ui| word(ui, &t!("shed-typed-in-the-file-choose-what", other = other.name()))),
    }
}

/// The products of the shed that it speaks of.
fn speaks_of(bench: &mut Bench, ui: &mut Ui) {
    let Some(advice) = bench.state.advice.as_ref().and_then(|id| bench.farm().advice.get(id)).cloned() else { return };
    products(bench, ui, |product| advises(&advice, product));
}

/// The products of the shed that something speaks of; a click leads to one.
pub(super) fn products(bench: &mut Bench, ui: &mut Ui, speaks_of: impl Fn(&Product) -> bool) {
    let about: Vec<(Id, String)> = bench
        .farm()
        .products
        .iter()
        .filter(|(_, product)| speaks_of(product))
        .map(|(id, product)| (id.clone(), named(&product.name)))
        .collect();
    let mut chosen = None;
    sheets::sheet(ui, t!("shed-which-products-it-speaks-of"), |ui| {
        if about.is_empty() {
            let text = t!("shed-none-in-the-shed-write-an");
            ui.add(Label::new(look::soft(ui, text).color(look::colours(ui).check)).wrap());
        }
        ui.spacing_mut().interact_size.y = 18.0;
        ui.spacing_mut().button_padding = egui::Vec2::ZERO;
        for (id, name) in &about {
            if ui.add(egui::Button::new(look::act(ui, name)).frame(false).truncate()).clicked() {
                chosen = Some(id.clone());
            }
        }
    });
    if let Some(id) = chosen {
        bench.state.choose_product(&id);
    }
}

fn about(advice: &Advice) -> &str {
    if advice.about.trim().is_empty() { t!("shed-every-pesticide") } else { advice.about.trim() }
}

fn said(advice: &Advice, units: Units) -> String {
    let said = sentence(&[&advice.says], units);
    if said.is_empty() { t!("shed-nothing-typed-yet").to_owned() } else { said }
}

/// "County adviser, 3 May 2031: for group 27 in corn, methylated seed oil preferred, 1 % v/v".
fn whole(farm: &Farm, advice: &Advice) -> String {
    let applies = applies(&advice.says);
    let water = guidance::water(farm, advice);
    let about = match applies {
        applies if applies.is_empty() => t!("shed-for", advice = about(advice)),
        applies => t!("shed-for-where", advice = about(advice), applies = applies),
    };
    let all = [about, water, said(advice, farm.units)];
    let all: Vec<String> = all.into_iter().filter(|part| !part.is_empty()).collect();
    format!("{}: {}", source(advice), all.join(", "))
}
