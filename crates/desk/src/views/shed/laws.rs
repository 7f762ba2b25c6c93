//! Law: the rules that bind the farm, as the user typed them. The program knows none by itself.

use egui::{Label, Ui};
use tankard_core::farm::label::{Says, Statement};
use tankard_core::farm::{Droplets, Farm, Law};
use tankard_core::label::laws::{are_held, are_printed};
use tankard_core::label::names;
use tankard_core::quantity::{AsTyped, Quantity, Units};
use tankard_core::t;

use super::guidance::{self, applies};
use super::statements::{self, blanks};
use super::{Bench, advice, line, quiet, section, sheets, title_box_hinted, word};
use crate::look;
use crate::parts::{boxes, lists};

fn rank() -> &'static str {
    t!("shed-the-program-knows-no-law")
}

/// Whether a kind of statement is offered: what a rule may ask of a pass, its day and its setting.
const fn is_offered(says: &Says) -> bool {
    matches!(
        says,
        Says::Wind { .. }
            | Says::NotToward { .. }
            | Says::NoInversion
            | Says::Daylight { .. }
            | Says::Temperature { .. }
            | Says::Humidity { .. }
            | Says::DeltaT { .. }
            | Says::Droplets { .. }
            | Says::BoomHeight { .. }
            | Says::GroundSpeed { .. }
            | Says::Buffer { .. }
            | Says::RainFree { .. }
            | Says::Carrier { .. }
            | Says::Rate { .. }
            | Says::Dates { .. }
            | Says::Applications { .. }
            | Says::ReEntry { .. }
            | Says::Wear { .. }
            | Says::Caution { .. }
    )
}

/// The list.
pub(super) fn list(bench: &mut Bench, ui: &mut Ui) {
    let farm = bench.farm();
    if farm.laws.is_empty() {
        lists::empty(ui, t!("shed-no-rule-yet-add-what-the"));
    }
    let entries: Vec<_> = farm
        .laws
        .iter()
        .map(|(id, law)| (id.clone(), named(law), format!("{}: {}", about(law), said(law, farm.units))))
        .collect();
    let chosen = bench.state.law.clone();
    super::rows(bench, ui, chosen.as_ref(), entries);
}

/// The foot of the list.
pub(super) fn foot(bench: &mut Bench, ui: &mut Ui) {
    let chosen = bench.state.law.clone().and_then(|id| bench.farm().laws.get(&id).map(|law| (id.clone(), named(law))));
    let (added, done) = super::foot(bench, ui, t!("shed-add-a-rule"), chosen, 0);
    if added {
        // In free words, which change no plan until they are typed.
        let says = Statement::new(Says::Caution { what: String::new() }, "");
        let law = Law { name: String::new(), since: None, until: None, about: String::new(), says };
        super::add(&mut bench.desk.document, bench.state, |farm| &mut farm.laws, "law", law);
    }
    if let Some(done) = done {
        let rename = |law: &mut Law| super::copied(&mut law.name);
        super::apply(&mut bench.desk.document, bench.state, done, |farm| &mut farm.laws, rename);
    }
}

/// The page of the chosen rule.
pub(super) fn page(bench: &mut Bench, ui: &mut Ui) {
    super::with_sheets(
        bench,
        ui,
        284.0,
        |bench, ui| {
            let chosen = bench.state.law.clone();
            let Some((id, mut law)) = chosen.and_then(|id| bench.farm().laws.get(&id).cloned().map(|law| (id, law)))
            else {
                ui.label(look::title(t!("shed-law")));
                lists::empty(ui, rank());
                return;
            };
            let before = law.clone();
            ui.push_id(&id, |ui| {
                quiet(ui);
                form(bench.farm(), ui, &mut law);
            });
            if law != before {
                bench.desk.document.edit(|farm| {
                    if let Some(slot) = farm.laws.get_mut(&id) {
                        *slot = law;
                    }
                });
            }
        },
        |bench, ui| {
            let Some(law) = bench.state.law.as_ref().and_then(|id| bench.farm().laws.get(id)).cloned() else { return };
            // A demo or an old farm is read as on the day of its last record.
            let last = bench.desk.document.log().last_day();
            let today = bench.desk.now().date();
            let today = last.map_or(today, |last| last.max(today));
            sheets::sheet(ui, t!("shed-when-it-holds"), |ui| {
                let words = match (law.since, law.until) {
                    (Some(since), Some(until)) if until < since => {
                        let text = t!("shed-it-ends-before-it-begins-so");
                        ui.add(Label::new(look::soft(ui, text).color(look::colours(ui).check)).wrap());
                        return;
                    }
                    (Some(since), _) if today < since => t!("shed-from-on-so-not-yet", since = sheets::day(since)),
                    (_, Some(until)) if until < today => {
                        t!("shed-it-ended-with-and-is-held", until = sheets::day(until))
                    }
                    (_, Some(until)) => t!("shed-now-and-up-to-and-including", until = sheets::day(until)),
                    _ => t!("shed-now-and-until-you-type-its").to_owned(),
                };
                boxes::say(ui, &words);
            });
            advice::products(bench, ui, |product| names::binds(&law, product));
        },
    );
}

fn form(farm: &Farm, ui: &mut Ui, law: &mut Law) {
    let whole = whole(law, farm.units);
    title_box_hinted(ui, t!("shed-name-of-the-rule"), &mut law.name, t!("shed-its-name-and-paragraph"));
    ui.add(Label::new(look::soft(ui, rank())).wrap());
    ui.add_space(look::GRID);
    ui.add(Label::new(whole).wrap());
    section(ui, t!("shed-when-and-for-what"));
    line(ui, t!("shed-in-force-since"), |ui| {
        boxes::date_or_none(ui, t!("shed-in-force-since"), &mut law.since, 120.0);
    });
    line(ui, t!("shed-up-to-and-including"), |ui| {
        boxes::date_or_none(ui, t!("shed-up-to-and-including"), &mut law.until, 120.0);
    });
    line(ui, t!("shed-about"), |ui| {
        boxes::text_or_empty(ui, t!("shed-about"), &mut law.about, 220.0, t!("shed-every-pesticide"));
        advice::suggestions(farm, ui, &mut law.about);
    });
    section(ui, t!("shed-what-it-says"));
    what(ui, &mut law.says.says, farm.units);
    section(ui, t!("shed-where-it-holds"));
    advice::holds(farm, ui, "rule", &mut law.says);
}

fn what(ui: &mut Ui, says: &mut Says, units: Units) {
    let mut all: Vec<Says> = blanks(true, String::new(), units).into_iter().filter(is_offered).collect();
    // A kind that is not offered here, from a file written by hand, stays until another is chosen.
    if !all.iter().any(|known| known.name() == says.name()) {
        all.push(says.clone());
    }
    let mut kind = says.name();
    let kinds: Vec<&'static str> = all.iter().map(Says::name).collect();
    line(ui, t!("shed-it-speaks-of"), |ui| {
        boxes::choice(ui, t!("shed-it-speaks-of"), &mut kind, &kinds, |kind| (*kind).to_owned(), 220.0);
    });
    if kind != says.name()
        && let Some(blank) = all.into_iter().find(|known| known.name() == kind)
    {
        *says = blank;
    }
    line(ui, kind, |ui| {
        ui.spacing_mut().item_spacing.x = 5.0;
        let room = ui.available_width();
        statements::says(ui, kind, says, room, units);
    });
    let open = if are_printed(says) {
        t!("shed-it-stands-on-the-load-cards")
    } else if are_held(says) {
        return;
    } else {
        t!("shed-it-is-kept-here-for-you")
    };
    line(ui, "", |ui| word(ui, open));
}

fn named(law: &Law) -> String {
    super::named(&law.name)
}

fn about(law: &Law) -> &str {
    if law.about.trim().is_empty() { t!("shed-every-pesticide") } else { law.about.trim() }
}

/// "For every pesticide in vineyards: wind at most 10 mph".
fn whole(law: &Law, units: Units) -> String {
    let said = said(law, units);
    match applies(&law.says) {
        applies if applies.is_empty() => t!("shed-for-law", law = about(law), said = said),
        applies => t!("shed-for-law-where", law = about(law), applies = applies, said = said),
    }
}

fn text<Q: Quantity>(value: Option<&AsTyped<Q>>) -> Option<&str> {
    value.map(AsTyped::text)
}

fn said(law: &Law, units: Units) -> String {
    let between = |least: Option<&str>, most: Option<&str>| match (least, most) {
        (None, None) => String::new(),
        (Some(least), None) => t!("shed-at-least-least", least = least),
        (None, Some(most)) => t!("shed-at-most-most", most = most),
        (Some(least), Some(most)) => t!("shed-least-to-most", least = least, most = most),
    };
    let values = match &law.says.says {
        Says::Wind { most, least, gust } => {
            let most = t!("shed-at-most-most", most = most);
            let least = least.as_ref().map(|least| t!("shed-at-least-least", least = least));
            let gusts = gust.as_ref().map(|gust| t!("shed-gusts-at-most-gust", gust = gust));
            [Some(most), least, gusts].into_iter().flatten().collect::<Vec<_>>().join(", ")
        }
        Says::NotToward { what } if !what.trim().is_empty() => {
            return t!("shed-not-with-wind-toward", what = what.trim());
        }
        Says::NotToward { .. } => String::new(),
        Says::NoInversion => return t!("shed-not-while-warm-air-lies-over").to_owned(),
        Says::Daylight { from, to } => return t!("shed-from-to", from = from.words(), to = to.words()),
        Says::Temperature { least, most } => between(text(least.as_ref()), text(most.as_ref())),
        Says::Humidity { least, most } => between(text(least.as_ref()), text(most.as_ref())),
        Says::DeltaT { least, most } => between(text(least.as_ref()), text(most.as_ref())),
        Says::Carrier { least, most } => between(text(least.as_ref()), text(most.as_ref())),
        Says::Rate { least, most } => between(text(least.as_ref()), text(most.as_ref())),
        Says::Droplets { finest, coarsest } => match coarsest {
            Some(coarsest) => t!("shed-least-to-most", least = finest.name(), most = coarsest.name()),
            None if *finest == Droplets::UltraCoarse => finest.name().to_owned(),
            None => t!("shed-class-or-coarser", class = finest.name()),
        },
        Says::BoomHeight { most } => t!("shed-at-most-most", most = most),
        Says::GroundSpeed { most } => t!("shed-at-most-most", most = most),
        Says::Buffer { to, width, downwind_only } => {
            let wide = match to.trim() {
                "" => t!("shed-of", width = width),
                to => t!("shed-of-to", width = width, to = to),
            };
            if *downwind_only { format!("{wide}, {}", t!("shed-down-the-wind-only")) } else { wide }
        }
        Says::RainFree { hours } | Says::ReEntry { hours } => t!("shed-for-h", hours = hours),
        Says::Dates { from, to } => {
            return match (from, to) {
                (None, None) => String::from(t!("shed-nothing-typed-yet")),
                (Some(from), None) => t!("shed-not-before", from = from),
                (None, Some(to)) => t!("shed-not-after", to = to),
                (Some(from), Some(to)) => t!("shed-from-to", from = from, to = to),
            };
        }
        Says::Applications { most, per, .. } => t!("shed-at-most-0e5", most = most, per = per.name()),
        other => {
            let words = guidance::sentence(&[&Statement::new(other.clone(), "")], units);
            return if words.is_empty() { t!("shed-nothing-typed-yet").to_owned() } else { words };
        }
    };
    if values.is_empty() {
        t!("shed-nothing-typed-yet").to_owned()
    } else {
        format!("{} {values}", law.says.says.name())
    }
}
