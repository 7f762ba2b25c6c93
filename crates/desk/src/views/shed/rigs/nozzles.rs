//! The nozzle sets of a rig: what their nozzles deliver, how they stand, and how fine they spray.

use egui::{Label, RichText, Ui};
use tankard_core::farm::{ClassAt, Droplets, Farm, Id, Layout, NozzleSet, Rated, Rig};
use tankard_core::plausible::Slot;
use tankard_core::quantity::{AsTyped, Length, Pressure, Quantity, Units};
use tankard_core::rig::nozzle;
use tankard_core::t;

use super::super::statements::understood;
use super::super::{Bench, cross, line, lines, named, section, word};
use super::optional;
use crate::look;
use crate::parts::lists::{self, Act};
use crate::parts::{boxes, offers};

/// Width of a box of a row with several.
const SMALL: f32 = 92.0;

/// The page.
pub(super) fn show(bench: &mut Bench, ui: &mut Ui, rig_id: &Id, rig: &mut Rig) {
    let units = bench.farm().units;
    section(ui, t!("shed-sets"));
    if rig.sets.is_empty() {
        let text = t!("shed-no-nozzle-set-yet-with-one");
        ui.add(Label::new(look::soft(ui, text)).wrap());
    } else {
        line(ui, t!("shed-usually-fitted"), |ui| fitted(ui, rig));
    }
    list(bench, ui, rig);
    acts(bench, ui, rig_id, rig);
    let Some(id) = bench.state.rigs.set.clone() else { return };
    let width = rig.boom.as_ref().map(AsTyped::value);
    let Some(set) = rig.sets.get_mut(&id) else { return };
    ui.push_id(("set", &id), |ui| form(ui, (rig_id, &id), set, width, units));
}

/// The choice of the set that is usually fitted.
pub(super) fn fitted(ui: &mut Ui, rig: &mut Rig) {
    let mut all: Vec<Id> = rig.sets.keys().cloned().collect();
    if rig.fitted.is_empty() {
        rig_first(&mut all);
    } else if !all.contains(&rig.fitted) {
        all.push(rig.fitted.clone());
    }
    let first = rig.sets.values().next().map(|set| named(&set.name)).unwrap_or_default();
    let say = |id: &Id| match rig.sets.get(id) {
        Some(set) => named(&set.name),
        None if id.is_empty() => t!("shed-the-first", first = first),
        None => t!("shed-which-is-gone", id = id),
    };
    let mut chosen = rig.fitted.clone();
    boxes::choice(ui, t!("shed-usually-fitted"), &mut chosen, &all, say, 260.0);
    rig.fitted = chosen;
}

fn rig_first(all: &mut Vec<Id>) {
    all.insert(0, Id::new());
}

/// The sets, one of which is open.
fn list(bench: &mut Bench, ui: &mut Ui, rig: &Rig) {
    for (id, set) in &rig.sets {
        let is_open = bench.state.rigs.set.as_ref() == Some(id);
        let (name, summary) = (named(&set.name), summary(set));
        let response = lists::row(ui, is_open, &format!("{name}, {summary}"), |ui| {
            ui.add(Label::new(if is_open { look::strong(&name) } else { RichText::new(&name) }).truncate());
            ui.add(Label::new(look::soft(ui, &summary)).truncate());
        });
        if response.clicked() {
            bench.state.rigs.set = Some(id.clone());
            bench.state.rigs.removing = None;
        }
    }
}

/// "06 · 0.6 gal/min at 40 psi · 20 in apart".
fn summary(set: &NozzleSet) -> String {
    let mut parts = Vec::new();
    if !set.size.trim().is_empty() {
        parts.push(set.size.trim().to_owned());
    }
    if let Some(rated) = &set.rated {
        parts.push(t!("shed-at", flow = rated.flow, at = rated.at));
    }
    match &set.layout {
        Some(Layout::Broadcast { spacing }) => parts.push(t!("shed-apart", spacing = spacing)),
        Some(Layout::Band { width, rows, .. }) => {
            parts.push(t!("shed-bands-of-over-rows-apart", width = width, rows = rows));
        }
        Some(Layout::Directed { rows, nozzles }) => {
            parts.push(t!("shed-at-each-row-rows-apart", nozzles = nozzles, rows = rows));
        }
        None => {}
    }
    if parts.is_empty() { t!("shed-nothing-typed-yet").to_owned() } else { parts.join(" · ") }
}

/// Adding, and what can be done with the open set. Where passes name it, removing asks first.
fn acts(bench: &mut Bench, ui: &mut Ui, rig_id: &Id, rig: &mut Rig) {
    let added = ui.scope(|ui| {
        ui.spacing_mut().button_padding.x = 0.0;
        ui.add_space(4.0);
        boxes::act(ui, t!("shed-add-a-nozzle-set")).clicked()
    });
    if added.inner {
        let id = tankard_core::farm::id::fresh(&rig.sets, "nozzles");
        rig.sets.insert(id.clone(), NozzleSet { name: t!("shed-new-set").to_owned(), ..NozzleSet::default() });
        bench.state.rigs.set = Some(id);
        bench.state.rigs.removing = None;
        boxes::want(ui.ctx(), t!("shed-name-of-the-set"));
        return;
    }
    let Some(id) = bench.state.rigs.set.clone() else { return };
    let Some(name) = rig.sets.get(&id).map(|set| named(&set.name)) else { return };
    let uses = uses(bench.farm(), rig_id, rig, &id);
    let mut done = None;
    ui.scope(|ui| {
        ui.spacing_mut().button_padding.x = 0.0;
        ui.spacing_mut().item_spacing.x = 14.0;
        if bench.state.rigs.removing.as_ref() == Some(&id) {
            ui.label(speak_of(&name, uses));
            ui.horizontal(|ui| {
                if boxes::act(ui, t!("shed-remove-it-all-the-same")).clicked() {
                    done = Some(Act::Remove);
                }
                if boxes::act(ui, t!("shed-keep-it")).clicked() {
                    bench.state.rigs.removing = None;
                }
            });
        } else {
            match lists::acts(ui, &t!("shed-set", name = name)) {
                Some(Act::Remove) if uses != (0, 0) => bench.state.rigs.removing = Some(id.clone()),
                other => done = other,
            }
        }
    });
    let Some(act) = done else { return };
    bench.state.rigs.removing = None;
    let rename = |set: &mut NozzleSet| {
        set.name = t!("shed-name-copy", name = set.name);
        set.name.clone()
    };
    bench.state.rigs.set = lists::apply(act, &mut rig.sets, &id, rename);
    if act == Act::Remove && rig.fitted == id {
        rig.fitted.clear();
    }
}

/// How many passes and calibrations name the set.
fn uses(farm: &Farm, rig_id: &Id, rig: &Rig, id: &Id) -> (usize, usize) {
    let passes = farm.passes.values().filter(|pass| pass.rig == *rig_id && pass.nozzles == *id).count();
    let calibrations = rig.calibrations.iter().filter(|calibration| calibration.set == *id).count();
    (passes, calibrations)
}

/// "2 passes and 1 calibration speak of the even fans".
fn speak_of(name: &str, uses: (usize, usize)) -> String {
    match uses {
        (passes, 0) => t!("shed-passes-speak-of", passes = passes, name = name),
        (0, calibrations) => t!("shed-calibrations-speak-of", calibrations = calibrations, name = name),
        (passes, calibrations) => {
            t!("shed-passes-and-calibrations-speak-of", passes = passes, calibrations = calibrations, name = name)
        }
    }
}

fn form(ui: &mut Ui, of: (&Id, &Id), set: &mut NozzleSet, width: Option<Length>, units: Units) {
    section(ui, t!("shed-the-set"));
    line(ui, t!("shed-name"), |ui| {
        boxes::text_or_empty(
            ui,
            t!("shed-name-of-the-set"),
            &mut set.name,
            320.0,
            t!("shed-angle-and-size-or-what-you"),
        );
    });
    size(ui, set, units);
    rated(ui, of, set, units);
    layout(ui, of, set, units);
    let usual = number(set, width);
    lines(ui, t!("shed-number-on-the-boom"), |ui| {
        let hint = usual.map(|number| number.to_string()).unwrap_or_default();
        boxes::count_or_none(ui, t!("shed-number-on-the-boom"), &mut set.count, SMALL, &hint);
        match (set.count, usual) {
            (None, Some(_)) => word(ui, t!("shed-working-width-by-how-far-apart")),
            (None, None) => word(ui, t!("shed-else-working-width-by-how-far")),
            (Some(count), Some(usual)) if count != usual => word(ui, &t!("shed-width-by-spacing-gives", usual = usual)),
            _ => {}
        }
    });
    section(ui, t!("shed-pressures-of-the-nozzle-makers-table"));
    optional(ui, t!("shed-least-pressure"), &mut set.least, units, "");
    optional(ui, t!("shed-most-pressure"), &mut set.most, units, "");
    droplets(ui, set, units);
    section(ui, t!("shed-anything-else"));
    line(ui, t!("shed-note"), |ui| {
        let width = ui.available_width();
        boxes::sentence(ui, t!("shed-note-on-the-set"), &mut set.note, width, t!("shed-anything-else-380"));
    });
}

/// How many a boom of a width carries.
pub(super) fn number(set: &NozzleSet, width: Option<Length>) -> Option<u32> {
    let (apart, each) = match set.layout.as_ref()? {
        Layout::Broadcast { spacing } => (spacing.value(), 1),
        Layout::Band { rows, nozzles, .. } | Layout::Directed { rows, nozzles } => (rows.value(), *nozzles),
    };
    let places = width?.ratio(apart)?.round();
    // No boom carries more; a spacing typed in the wrong unit does.
    #[allow(clippy::cast_possible_truncation, clippy::cast_sign_loss)]
    (1.0..=1000.0).contains(&places).then(|| (places as u32).saturating_mul(each))
}

/// What a choice of size brings.
#[derive(Clone, PartialEq)]
enum Size {
    NotKnown,
    /// A size with the rating that one of its two definitions gives it.
    Of(String, Rated),
    /// A size with a rating of its own.
    AsTyped(String),
}

/// The sizes of ISO 10625 by both definitions, those of the farm's units first.
fn choices(units: Units) -> Vec<Size> {
    let of = |which: fn(&nozzle::Size) -> &Rated| {
        nozzle::sizes().iter().map(move |size| Size::Of(size.size.clone(), which(size).clone()))
    };
    let (american, metric) = (of(|size| &size.us), of(|size| &size.metric));
    if units == Units::Metric { metric.chain(american).collect() } else { american.chain(metric).collect() }
}

fn size(ui: &mut Ui, set: &mut NozzleSet, units: Units) {
    let known = choices(units);
    let now = match known.iter().find(
        |size| matches!(size, Size::Of(name, rated) if *name == set.size.trim() && set.rated.as_ref() == Some(rated)),
    ) {
        Some(size) => size.clone(),
        None if set.size.trim().is_empty() => Size::NotKnown,
        None => Size::AsTyped(set.size.trim().to_owned()),
    };
    let mut all = vec![Size::NotKnown];
    if matches!(now, Size::AsTyped(_)) {
        all.push(now.clone());
    }
    all.extend(known);
    let say = |size: &Size| match size {
        Size::NotKnown => t!("shed-not-known").to_owned(),
        Size::AsTyped(name) => t!("shed-rated-as-typed", name = name),
        Size::Of(name, rated) if rated.at.text().ends_with("psi") => {
            t!("shed-by-us-gal-min-at", name = name, at = rated.at)
        }
        Size::Of(name, rated) => t!("shed-by-l-min-at", name = name, at = rated.at),
    };
    let mut chosen = now.clone();
    lines(ui, t!("shed-size"), |ui| {
        boxes::choice(ui, t!("shed-size"), &mut chosen, &all, say, 220.0);
        match nozzle::size(&set.size) {
            Some(size) => word(ui, &t!("shed-after-iso-10625-it-fills-in", colour = size.colour)),
            None => word(ui, t!("shed-after-iso-10625-stamped-on-it")),
        }
    });
    if chosen != now {
        match chosen {
            Size::NotKnown => set.size.clear(),
            Size::AsTyped(name) => set.size = name,
            Size::Of(name, rated) => {
                set.size = name;
                set.rated = Some(rated);
            }
        }
    }
}

fn rated(ui: &mut Ui, (rig, id): (&Id, &Id), set: &mut NozzleSet, units: Units) {
    line(ui, t!("shed-a-new-one-gives"), |ui| {
        let mut flow = set.rated.as_ref().map(|rated| rated.flow.clone());
        boxes::quantity_or_none(ui, t!("shed-a-new-one-gives"), &mut flow, SMALL);
        offers::at_box(ui, t!("shed-a-new-one-gives"), &Slot::RatedFlow { rig: rig.clone(), set: id.clone() });
        match (flow, &mut set.rated) {
            (Some(flow), Some(rated)) => rated.flow = flow,
            (Some(flow), slot) => {
                *slot = blank(units, "psi", "bar").map(|at| Rated { flow, at });
            }
            (None, slot) => *slot = None,
        }
        match &mut set.rated {
            Some(rated) => {
                word(ui, t!("shed-at-pressure"));
                boxes::quantity(ui, t!("shed-at-the-pressure"), &mut rated.at, 72.0);
                offers::at_box(ui, t!("shed-at-the-pressure"), &Slot::RatedAt { rig: rig.clone(), set: id.clone() });
                word(ui, t!("shed-of-water"));
                if rated.at.text().starts_with("0 ") {
                    understood(ui, &rated.at, units);
                } else {
                    boxes::understood(ui, Some(&rated.flow), units);
                }
            }
            None => word(ui, t!("shed-of-water-and-at-which-pressure")),
        }
    });
}

/// Nothing of a unit, which is noticed and typed over.
fn blank<Q: Quantity>(units: Units, american: &str, metric: &str) -> Option<AsTyped<Q>> {
    AsTyped::parse(&format!("0 {}", if units == Units::Metric { metric } else { american })).ok()
}

#[derive(Clone, Copy, PartialEq)]
enum Stand {
    NotKnown,
    Broadcast,
    Band,
    Directed,
}

impl Stand {
    const ALL: [Self; 4] = [Self::NotKnown, Self::Broadcast, Self::Band, Self::Directed];

    const fn of(layout: Option<&Layout>) -> Self {
        match layout {
            None => Self::NotKnown,
            Some(Layout::Broadcast { .. }) => Self::Broadcast,
            Some(Layout::Band { .. }) => Self::Band,
            Some(Layout::Directed { .. }) => Self::Directed,
        }
    }

    fn name(self) -> &'static str {
        match self {
            Self::NotKnown => t!("shed-not-known"),
            Self::Broadcast => t!("shed-over-the-whole-ground"),
            Self::Band => t!("shed-band-over-each-row"),
            Self::Directed => t!("shed-directed-at-each-row"),
        }
    }

    /// The layout with what the one before held of it.
    fn layout(self, before: Option<&Layout>, units: Units) -> Option<Layout> {
        let nothing = || blank::<Length>(units, "in", "cm");
        let (rows, nozzles) = match before {
            Some(Layout::Band { rows, nozzles, .. } | Layout::Directed { rows, nozzles }) => {
                (Some(rows.clone()), *nozzles)
            }
            _ => (nothing(), 1),
        };
        match self {
            Self::NotKnown => None,
            Self::Broadcast => nothing().map(|spacing| Layout::Broadcast { spacing }),
            Self::Band => rows.zip(nothing()).map(|(rows, width)| Layout::Band { width, rows, nozzles }),
            Self::Directed => rows.map(|rows| Layout::Directed { rows, nozzles }),
        }
    }
}

fn layout(ui: &mut Ui, (rig, id): (&Id, &Id), set: &mut NozzleSet, units: Units) {
    lines(ui, t!("shed-they-spray"), |ui| {
        let before = Stand::of(set.layout.as_ref());
        let mut stand = before;
        boxes::choice(ui, t!("shed-they-spray"), &mut stand, &Stand::ALL, |stand| stand.name().to_owned(), 190.0);
        if stand != before {
            set.layout = stand.layout(set.layout.as_ref(), units);
        }
        match &mut set.layout {
            None => {}
            Some(Layout::Broadcast { spacing }) => {
                length(ui, t!("shed-nozzles-apart"), spacing, units);
                offers::at_box(ui, t!("shed-nozzles-apart"), &Slot::Spacing { rig: rig.clone(), set: id.clone() });
                word(ui, t!("shed-from-nozzle-to-nozzle"));
            }
            Some(Layout::Band { width, rows, nozzles }) => {
                length(ui, t!("shed-width-of-the-band"), width, units);
                word(ui, t!("shed-wide-rows"));
                length(ui, t!("shed-rows-apart"), rows, units);
                word(ui, t!("shed-apart-and"));
                boxes::count(ui, t!("shed-nozzles-to-a-row"), nozzles, 34.0);
                word(ui, t!("shed-to-a-row"));
            }
            Some(Layout::Directed { rows, nozzles }) => {
                word(ui, t!("shed-rows"));
                length(ui, t!("shed-rows-apart"), rows, units);
                word(ui, t!("shed-apart-and"));
                boxes::count(ui, t!("shed-nozzles-to-a-row"), nozzles, 34.0);
                word(ui, t!("shed-to-a-row"));
            }
        }
    });
    if matches!(set.layout, Some(Layout::Band { .. })) {
        lines(ui, "", |ui| word(ui, t!("shed-volumes-and-rates-of-its-passes")));
    }
}

fn length(ui: &mut Ui, name: &str, value: &mut AsTyped<Length>, units: Units) {
    boxes::quantity(ui, name, value, 64.0);
    if value.text().starts_with("0 ") {
        understood(ui, value, units);
    }
}

fn droplets(ui: &mut Ui, set: &mut NozzleSet, units: Units) {
    section(ui, t!("shed-droplets"));
    let text = t!("shed-the-classes-are-those-of-asabe");
    ui.add(Label::new(look::soft(ui, text)).wrap());
    let mut gone = None;
    for (at, row) in set.droplets.iter_mut().enumerate() {
        ui.push_id(("droplets", at), |ui| {
            line(ui, if at == 0 { t!("shed-at-a-pressure-of") } else { "" }, |ui| {
                pressure(ui, at + 1, &mut row.at, units);
                let say = |class: &Droplets| class.name().to_owned();
                boxes::choice(ui, &t!("shed-droplets-line", line = at + 1), &mut row.class, &Droplets::ALL, say, 150.0);
                if cross(ui, &t!("shed-line-of-the-droplets", line = at + 1)) {
                    gone = Some(at);
                }
            });
        });
    }
    if let Some(at) = gone {
        set.droplets.remove(at);
    }
    if let Some((low, high)) = nozzle::coarser_with_pressure(set) {
        let text = t!("shed-droplets-get-coarser", low = low.at.text(), high = high.at.text());
        ui.add(Label::new(look::soft(ui, text).color(look::colours(ui).check)).wrap());
    }
    ui.add_space(4.0);
    ui.scope(|ui| {
        ui.spacing_mut().button_padding.x = 0.0;
        if boxes::act(ui, t!("shed-add-a-line")).clicked()
            && let Some(at) = blank(units, "psi", "bar")
        {
            let class = set.droplets.last().map_or(Droplets::Medium, |line| line.class);
            set.droplets.push(ClassAt { at, class });
            boxes::want(ui.ctx(), &t!("shed-pressure-line", line = set.droplets.len()));
        }
    });
}

fn pressure(ui: &mut Ui, line: usize, value: &mut AsTyped<Pressure>, units: Units) {
    boxes::quantity(ui, &t!("shed-pressure-line", line = line), value, SMALL);
    if value.text().starts_with("0 ") {
        understood(ui, value, units);
    }
}
