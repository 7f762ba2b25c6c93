//! Waters: what a laboratory report states, and what it means for the tank.

use egui::Ui;
use tankard_core::begin::new_water;
use tankard_core::farm::{Clarity, Farm, Id, Pass, Water};
use tankard_core::plan::plan;
use tankard_core::plausible::Slot;
use tankard_core::quantity::number::show;
use tankard_core::quantity::{AsTyped, Hardness, IonContent, Quantity, Share, Units};
use tankard_core::t;
use tankard_core::water::blend::{blend, share_for};
use tankard_core::water::hardness::{Scheme, class};
use tankard_core::water::{hardness, need, ranges};
use tankard_core::working::Working;

use super::{Bench, State, line, named, quiet, section, sheets, title_box, users, word};
use crate::document::Document;
use crate::look;
use crate::parts::{boxes, lists, offers, workings};

fn using(farm: &Farm, id: &str) -> Vec<(Id, Pass)> {
    users(farm, |pass| pass.water == id)
}

/// The list.
pub(super) fn list(bench: &mut Bench, ui: &mut Ui) {
    let farm = bench.farm();
    if farm.waters.is_empty() {
        lists::empty(ui, t!("shed-no-water-yet-take-a-laboratory"));
    }
    let entries = farm.waters.iter().map(|(id, water)| {
        let summary = hardness(water).map_or_else(
            || t!("shed-no-analysis").to_owned(),
            |hardness| t!("shed-hard", hardness = hardness.show(farm.units)),
        );
        (id.clone(), named(&water.name), summary)
    });
    let entries: Vec<_> = entries.collect();
    let chosen = bench.state.water.clone();
    super::rows(bench, ui, chosen.as_ref(), entries);
}

/// The foot of the list.
pub(super) fn foot(bench: &mut Bench, ui: &mut Ui) {
    let chosen = bench
        .state
        .water
        .clone()
        .and_then(|id| bench.farm().waters.get(&id).map(|water| (id.clone(), named(&water.name))));
    let uses = chosen.as_ref().map_or(0, |(id, _)| using(bench.farm(), id).len());
    let (added, done) = super::foot(bench, ui, t!("shed-add-a-water"), chosen, uses);
    if added {
        add(&mut bench.desk.document, bench.state);
        boxes::want(ui.ctx(), t!("shed-name-of-the-water"));
    }
    if let Some(done) = done {
        let rename = |water: &mut Water| super::copied(&mut water.name);
        super::apply(&mut bench.desk.document, bench.state, done, |farm| &mut farm.waters, rename);
    }
}

/// Adds a water.
pub(super) fn add(document: &mut Document, state: &mut State) {
    let water = Water { name: new_water().to_owned(), ..Water::default() };
    super::add(document, state, |farm| &mut farm.waters, "water", water);
}

/// The page of the chosen water.
pub(super) fn page(bench: &mut Bench, ui: &mut Ui) {
    super::with_sheets(
        bench,
        ui,
        340.0,
        |bench, ui| {
            let chosen = bench.state.water.clone();
            let Some((id, mut water)) =
                chosen.and_then(|id| bench.farm().waters.get(&id).cloned().map(|water| (id, water)))
            else {
                ui.label(look::title(t!("shed-waters")));
                lists::empty(ui, t!("shed-here-stands-what-a-laboratory-found"));
                return;
            };
            let before = water.clone();
            let units = bench.farm().units;
            ui.push_id(&id, |ui| {
                quiet(ui);
                form(ui, &id, &mut water, units);
            });
            if water != before {
                bench.desk.document.edit(|farm| {
                    if let Some(slot) = farm.waters.get_mut(&id) {
                        *slot = water;
                    }
                });
            }
            ui.push_id((&id, "blend"), |ui| {
                quiet(ui);
                blending(bench, ui, &id);
            });
        },
        |bench, ui| {
            sheets::doubts(bench, ui);
            let Some(id) = bench.state.water.clone() else { return };
            let Some(water) = bench.farm().waters.get(&id).cloned() else { return };
            let units = bench.farm().units;
            let (ties, hard) = reckoned(&water, units);
            hardness_sheet(ui, &water, &hard);
            need_sheet(ui, &water, units, &ties);
            let passes = using(bench.farm(), &id);
            sheets::planned(bench, ui, t!("shed-no-planned-pass-takes-it"), &passes, |_| None);
        },
    );
}

fn form(ui: &mut Ui, id: &Id, water: &mut Water, units: Units) {
    title_box(ui, t!("shed-name-of-the-water"), &mut water.name);
    ui.label(look::soft(ui, t!("shed-as-the-laboratory-states-it-what")));
    section(ui, t!("shed-ions"));
    ion(ui, t!("shed-calcium"), &mut water.calcium, units, Some(Slot::Calcium(id.clone())));
    ion(ui, t!("shed-magnesium"), &mut water.magnesium, units, Some(Slot::Magnesium(id.clone())));
    ion(ui, t!("shed-sodium"), &mut water.sodium, units, None);
    ion(ui, t!("shed-potassium"), &mut water.potassium, units, None);
    ion(ui, t!("shed-iron"), &mut water.iron, units, None);
    line(ui, t!("shed-manganese"), |ui| {
        boxes::quantity_or_none(ui, t!("shed-manganese"), &mut water.manganese, 120.0);
        boxes::understood(ui, water.manganese.as_ref(), units);
        if water.manganese.is_some() {
            word(ui, t!("shed-kept-but-the-equation-has-no"));
        }
    });
    ion(ui, t!("shed-bicarbonate"), &mut water.bicarbonate, units, Some(Slot::Bicarbonate(id.clone())));
    section(ui, t!("shed-hardness-ph-and-salt"));
    line(ui, t!("shed-hardness"), |ui| {
        boxes::quantity_or_none(ui, t!("shed-hardness"), &mut water.hardness, 120.0);
        offers::at_box(ui, t!("shed-hardness"), &Slot::Hardness(id.clone()));
        boxes::understood(ui, water.hardness.as_ref(), units);
        if water.hardness.is_none() {
            word(ui, t!("shed-only-where-calcium-and-magnesium-are"));
        } else if water.calcium.is_some() && water.magnesium.is_some() {
            word(ui, t!("shed-calcium-and-magnesium-are-used-instead"));
        }
    });
    line(ui, "pH", |ui| {
        boxes::quantity_or_none(ui, "pH", &mut water.acidity, 120.0);
    });
    line(ui, t!("shed-conductivity"), |ui| {
        boxes::quantity_or_none(ui, t!("shed-conductivity"), &mut water.conductivity, 120.0);
        offers::at_box(ui, t!("shed-conductivity"), &Slot::Conductivity(id.clone()));
        boxes::understood(ui, water.conductivity.as_ref(), units);
    });
    line(ui, t!("shed-clarity"), |ui| {
        let all = [None, Some(Clarity::Clear), Some(Clarity::Cloudy), Some(Clarity::Dirty)];
        let say = |clarity: &Option<Clarity>| clarity.map_or(t!("shed-not-stated"), Clarity::name).to_owned();
        boxes::choice(ui, t!("shed-clarity"), &mut water.clarity, &all, say, 120.0);
        if water.clarity == Some(Clarity::Dirty) {
            word(ui, t!("shed-a-coin-on-the-bottom-of"));
        }
    });
    section(ui, t!("shed-filling"));
    line(ui, t!("shed-gives-when-filling"), |ui| {
        boxes::quantity_or_none(ui, t!("shed-gives-when-filling"), &mut water.flow, 120.0);
        boxes::understood(ui, water.flow.as_ref(), units);
        word(ui, t!("shed-the-pump-or-hydrant-by-a"));
    });
    section(ui, t!("shed-sample"));
    line(ui, t!("shed-sampled"), |ui| {
        boxes::date_or_none(ui, t!("shed-sampled"), &mut water.sampled, 120.0);
    });
    line(ui, t!("shed-note"), |ui| {
        let width = ui.available_width();
        boxes::sentence(ui, t!("shed-note"), &mut water.note, width, t!("shed-who-analysed-it-or-anything-else"));
    });
}

fn ion(ui: &mut Ui, name: &str, value: &mut Option<AsTyped<IonContent>>, units: Units, slot: Option<Slot>) {
    line(ui, name, |ui| {
        boxes::quantity_or_none(ui, name, value, 120.0);
        if let Some(slot) = slot {
            offers::at_box(ui, name, &slot);
        }
        boxes::understood(ui, value.as_ref(), units);
    });
}

/// What is asked of a blend. It stays with the page and is not part of the farm until the blend is kept.
#[derive(Clone, Default)]
struct Blending {
    with: Id,
    wanted: Option<AsTyped<Hardness>>,
}

/// A blend with another water: how much of each brings the hardness wanted, and what it holds.
fn blending(bench: &mut Bench, ui: &mut Ui, id: &Id) {
    let units = bench.farm().units;
    let Some(water) = bench.farm().waters.get(id).cloned() else { return };
    let mut all: Vec<(Id, String)> = vec![(Id::new(), t!("shed-choose-a-water").to_owned())];
    let others = bench.farm().waters.iter().filter(|(other, _)| *other != id);
    all.extend(others.map(|(other, water)| (other.clone(), named(&water.name))));
    section(ui, t!("shed-blend-with-another-water"));
    if all.len() == 1 {
        word(ui, t!("shed-add-another-water-such-as-rain"));
        return;
    }
    let key = egui::Id::unique(("blend", id));
    let mut asked: Blending = ui.data(|data| data.get_temp(key)).unwrap_or_default();
    line(ui, t!("shed-blend-with-row"), |ui| {
        let mut chosen =
            all.iter().find(|(other, _)| *other == asked.with).cloned().unwrap_or((Id::new(), String::new()));
        boxes::choice(ui, t!("shed-blend-with"), &mut chosen, &all, |(_, name)| name.clone(), 220.0);
        asked.with = chosen.0;
    });
    line(ui, t!("shed-hardness-wanted"), |ui| {
        boxes::quantity_hinted(ui, t!("shed-hardness-wanted"), &mut asked.wanted, 120.0, t!("shed-e-g-150-ppm"));
        boxes::understood(ui, asked.wanted.as_ref(), units);
    });
    let other = bench.farm().waters.get(&asked.with).cloned();
    if let (Some(other), Some(wanted)) = (other, &asked.wanted) {
        match share_for(&water, &other, wanted.value()) {
            Err(problem) => boxes::say(ui, &format!("{problem}.")),
            Ok(share) => kept(bench, ui, (&water, &other), share),
        }
    }
    ui.data_mut(|data| data.insert_temp(key, asked));
}

/// What a blend holds, and the act that keeps it.
fn kept(bench: &mut Bench, ui: &mut Ui, (water, other): (&Water, &Water), share: Share) {
    let units = bench.farm().units;
    let mixed = blend(water, other, share);
    let rest = Share::from_fraction(1.0 - share.to_fraction());
    line(ui, t!("shed-takes"), |ui| {
        let part = |share: Share, of: &Water| format!("{} % {}", show(share.to_percent(), 1), named(&of.name));
        ui.label(look::strong(t!("shed-and", one = part(rest, water), other = part(share, other))));
    });
    let ions = [
        (t!("shed-calcium"), &mixed.calcium),
        (t!("shed-magnesium"), &mixed.magnesium),
        (t!("shed-sodium"), &mixed.sodium),
        (t!("shed-potassium"), &mixed.potassium),
        (t!("shed-iron"), &mixed.iron),
        (t!("shed-manganese"), &mixed.manganese),
        (t!("shed-bicarbonate"), &mixed.bicarbonate),
    ];
    let held: Vec<String> =
        ions.iter().filter_map(|(name, ion)| Some(format!("{name} {}", ion.as_ref()?.show(units)))).collect();
    line(ui, t!("shed-holds"), |ui| {
        let hardness = hardness(&mixed).map(|hardness| t!("shed-hard", hardness = hardness.show(units)));
        let all: Vec<String> = hardness.into_iter().chain(held).collect();
        ui.add(egui::Label::new(all.join(", ")).wrap());
    });
    boxes::say(ui, t!("shed-an-ion-that-either-report-does"));
    if boxes::act(ui, t!("shed-keep-the-blend-as-a-water")).clicked() {
        let stem = mixed.name.clone();
        super::add(&mut bench.desk.document, bench.state, |farm| &mut farm.waters, &stem, mixed);
    }
}

fn hardness_sheet(ui: &mut Ui, water: &Water, reckoned: &[Working]) {
    sheets::sheet(ui, t!("shed-hardness-as-calcium-carbonate"), |ui| {
        let Some(hardness) = hardness(water) else {
            boxes::say(ui, t!("shed-type-calcium-and-magnesium-or-the"));
            return;
        };
        for (unit, value) in [
            ("ppm", show(hardness.to_ppm(), 0)),
            ("grains/gal", show(hardness.to_grains_per_us_gallon(), 1)),
            (t!("shed-german-degrees"), show(hardness.to_german_degrees(), 1)),
            (t!("shed-french-degrees"), show(hardness.to_french_degrees(), 1)),
        ] {
            sheets::pair(ui, unit, value);
        }
        let [own, others @ ..] = Scheme::ALL;
        sheets::pair(ui, own.name(), look::strong(class(hardness, own)));
        if others.iter().all(|scheme| class(hardness, *scheme) == class(hardness, own)) {
            boxes::say(ui, t!("shed-other-schemes-call-it-the-same"));
        } else {
            let others = others.map(|scheme| format!("{}: {}", scheme.name(), class(hardness, scheme)));
            boxes::say(ui, &format!("{}.", others.join("; ")));
        }
        show_workings(ui, reckoned);
    });
}

fn need_sheet(ui: &mut Ui, water: &Water, units: Units, reckoned: &[Working]) {
    sheets::sheet(ui, t!("shed-ammonium-sulfate-that-it-ties-up"), |ui| {
        let Some(need) = need(water) else {
            boxes::say(ui, t!("shed-type-calcium-and-magnesium-or-the"));
            return;
        };
        let without = if need.without_iron == need.without_iron_most {
            need.without_iron.show(units)
        } else {
            t!(
                "shed-without-iron-to-without-iron-most",
                without_iron = need.without_iron.show(units),
                without_iron_most = need.without_iron_most.show(units)
            )
        };
        sheets::pair(ui, t!("shed-without-iron"), look::strong(without));
        match need.with_iron {
            Some(with) => sheets::pair(ui, t!("shed-with-iron"), look::strong(with.show(units))),
            None => sheets::pair(ui, t!("shed-with-iron"), look::soft(ui, t!("shed-not-known"))),
        }
        for (what, range) in
            [(t!("shed-north-dakota-practice"), ranges::practice()), (t!("shed-labels-as-published"), ranges::labels())]
        {
            if let Some(range) = range {
                sheets::pair(ui, what, range.show(units));
            }
        }
        if !need.missing.is_empty() {
            boxes::say(ui, &t!("shed-not-stated-so-not-counted", missing = need.missing.join(", ")));
        }
        show_workings(ui, reckoned);
        ui.add_space(4.0);
        boxes::say(ui, need::SOURCE);
    });
}

/// Workings in small letters, so that a step stays on its line.
fn show_workings(ui: &mut Ui, all: &[Working]) {
    ui.scope(|ui| {
        super::small(ui);
        for working in all {
            ui.add_space(4.0);
            workings::show(ui, working);
        }
    });
}

/// The workings of a water by itself: of what it ties up, and of its hardness. They come through the plan of a pass that
/// has nothing but this water, so that they are the same as those of the passes.
fn reckoned(water: &Water, units: Units) -> (Vec<Working>, Vec<Working>) {
    let name = t!("shed-this-water");
    let mut farm = Farm { units, ..Farm::new("") };
    farm.waters.insert(name.to_owned(), Water { name: name.to_owned(), ..water.clone() });
    let mut pass = Pass::new("", jiff::civil::Date::ZERO);
    name.clone_into(&mut pass.water);
    farm.passes.insert(Id::new(), pass);
    let all = plan(&farm, "").map(|plan| plan.workings).unwrap_or_default();
    let hardness = t!("water-hardness-of", name = name);
    let titles = [
        t!("water-ions-over-ground-from", name = name),
        t!("water-ammonium-sulfate-tied-up-by", name = name),
        hardness.clone(),
    ];
    all.into_iter().filter(|working| titles.contains(&working.title)).partition(|working| working.title != hardness)
}
