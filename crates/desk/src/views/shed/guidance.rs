//! What others than the label print about a product: local advice, publications, common practice. It is read beside the
//! label and never copied into it; a person who finds it in the booklet says so.

use egui::{Label, RichText, ScrollArea, TextStyle, Ui};
use tankard_core::farm::label::{Says, Statement};
use tankard_core::farm::{Advice, Farm, Product};
use tankard_core::finding::Basis;
use tankard_core::label::when::words;
use tankard_core::label::{for_crop, names};
use tankard_core::language;
use tankard_core::mix::guidance::{self, Guidance};
use tankard_core::quantity::{AsTyped, Rate, Units};
use tankard_core::t;
use tankard_core::words::capital;

use super::{Bench, sheets};
use crate::look;
use crate::parts::boxes;

/// Height within which many rows scroll, so that what is on hand stays in sight.
const HEIGHT: f32 = 360.0;

/// Who speaks, the weightiest first.
#[derive(Clone, Copy, PartialEq, Eq)]
enum Speaker {
    Local,
    Published,
    Practice,
}

impl Speaker {
    const ALL: [Self; 3] = [Self::Local, Self::Published, Self::Practice];

    fn name(self) -> &'static str {
        match self {
            Self::Local => t!("shed-local-advice"),
            Self::Published => t!("shed-published"),
            Self::Practice => t!("shed-common-practice"),
        }
    }
}

/// One thing that is said.
struct Row {
    speaker: Speaker,
    /// The sentence.
    says: String,
    /// The classes, how it stands to them and how much, where the sentence does not say it.
    stands: String,
    /// For which crop and when; empty for always.
    applies: String,
    source: String,
    /// The same as statements of a label.
    statements: Vec<Statement>,
}

/// The sheet.
pub(super) fn show(bench: &mut Bench, ui: &mut Ui, id: &str) {
    let Some(product) = bench.farm().products.get(id) else { return };
    let rows = rows(bench.farm(), product);
    let label = product.label.clone();
    let mut taken = Vec::new();
    sheets::sheet(ui, t!("shed-what-others-print"), |ui| {
        if rows.is_empty() {
            boxes::say(ui, t!("shed-no-guidance-read-the-label"));
            return;
        }
        boxes::say(ui, t!("shed-guidance-to-be-checked-what-you"));
        ui.add_space(2.0);
        let scroll = ScrollArea::vertical().id_salt(("guidance", id)).auto_shrink([false, true]);
        // Within a page that scrolls itself the area would take next to no height of its own accord.
        scroll.max_height(HEIGHT).min_scrolled_height(HEIGHT).show(ui, |ui| {
            egui::Frame::new().inner_margin(egui::Margin { right: 8, ..Default::default() }).show(ui, |ui| {
                ui.set_width(ui.available_width());
                for speaker in Speaker::ALL {
                    let rows: Vec<&Row> = rows.iter().filter(|row| row.speaker == speaker).collect();
                    if !rows.is_empty() {
                        ui.add_space(4.0);
                        let heading = format!("{} ({})", speaker.name(), rows.len());
                        ui.label(look::heading(heading).color(look::colours(ui).soft));
                    }
                    for row in rows {
                        if show_row(ui, row, &label) {
                            taken.clone_from(&row.statements);
                        }
                    }
                }
            });
        });
    });
    if taken.is_empty() {
        return;
    }
    let at = label.len();
    bench.desk.document.edit(|farm| {
        if let Some(product) = farm.products.get_mut(id) {
            // Without a place: it is typed from the booklet, which shows that the statement is really there.
            product.label.extend(taken.into_iter().map(|statement| Statement { at: String::new(), ..statement }));
        }
    });
    bench.state.fresh = Some(at);
}

/// A row; true where the label is said to say the same.
fn show_row(ui: &mut Ui, row: &Row, label: &[Statement]) -> bool {
    let mut taken = false;
    boxes::hairline(ui);
    ui.scope(|ui| {
        ui.spacing_mut().item_spacing.y = 1.0;
        ui.spacing_mut().interact_size.y = 16.0;
        ui.spacing_mut().button_padding = egui::Vec2::new(0.0, 1.0);
        if let Some(font) = ui.style_mut().text_styles.get_mut(&TextStyle::Small) {
            font.family = look::condensed();
        }
        ui.add(Label::new(&row.says).wrap());
        let beneath: Vec<&str> =
            [&row.stands, &row.applies].into_iter().map(String::as_str).filter(|text| !text.is_empty()).collect();
        if !beneath.is_empty() {
            ui.add(Label::new(RichText::new(beneath.join("; ")).small()).wrap());
        }
        small(ui, &row.source);
        let same: Vec<&Statement> = row.statements.iter().filter_map(|wanted| find(label, wanted)).collect();
        if row.statements.is_empty() {
            return;
        }
        if same.len() == row.statements.len() {
            let place = same.iter().map(|statement| statement.at.trim()).find(|at| !at.is_empty());
            if let Some(place) = place {
                small(ui, &t!("shed-the-label-says-the-same", place = place));
            } else {
                let text = look::soft(ui, t!("shed-on-the-label-as-well-type"));
                ui.add(Label::new(text.color(look::colours(ui).check)).wrap());
            }
            return;
        }
        if let Some(otherwise) = label.iter().find(|typed| row.statements.iter().any(|wanted| speaks_of(typed, wanted)))
        {
            let words = match otherwise.at.trim() {
                "" => t!("shed-the-label-speaks-of-it-in").to_owned(),
                place => t!("shed-the-label-speaks-of-it-in-place", place = place),
            };
            small(ui, &words);
        }
        let act = boxes::act(ui, t!("shed-it-stands-on-the-label-too"));
        let act = act.on_hover_text(t!("shed-adds-it-to-the-label-where"));
        let name = t!(
            "shed-it-stands-on-the-label-too-says-applies-source",
            says = row.says,
            applies = row.applies,
            source = row.source
        );
        if act.gained_focus() {
            act.scroll_to_me(None);
        }
        taken = act.accessible_name(name).clicked();
    });
    ui.add_space(3.0);
    taken
}

/// Soft words in the small face of the sheet.
fn small(ui: &mut Ui, text: &str) {
    let text = RichText::new(text).small().color(look::colours(ui).soft);
    ui.add(Label::new(text).wrap());
}

/// The same statement on the label, wherever it stands.
fn find<'a>(label: &'a [Statement], wanted: &Statement) -> Option<&'a Statement> {
    label.iter().find(|typed| Statement { at: wanted.at.clone(), ..(*typed).clone() } == *wanted)
}

/// Whether a statement of the label speaks of the same class.
fn speaks_of(typed: &Statement, wanted: &Statement) -> bool {
    matches!((&typed.says, &wanted.says), (Says::Adjuvant { class: one, .. }, Says::Adjuvant { class: other, .. }) if one == other)
}

fn rows(farm: &Farm, product: &Product) -> Vec<Row> {
    let units = farm.units;
    let local = farm.advice.values().filter(|advice| names::advises(advice, product)).map(|advice| {
        let statement = &advice.says;
        Row {
            speaker: Speaker::Local,
            says: capital(&sentence(&[statement], units)),
            stands: String::new(),
            applies: [applies(statement), water(farm, advice)]
                .into_iter()
                .filter(|text| !text.is_empty())
                .collect::<Vec<_>>()
                .join(", "),
            source: source(advice),
            statements: vec![statement.clone()],
        }
    });
    let mut printed: Vec<_> = guidance::on(product).collect();
    // What speaks of a crop of the farm, or of any, stands before what speaks of another; then what speaks of this very product before
    // what speaks of its group.
    let here = |statement: &Statement| farm.fields.values().any(|field| for_crop(statement, field));
    let place = |guidance: &Guidance| match guidance.statements.first() {
        Some(statement) if !statement.crop.trim().is_empty() && here(statement) => 0,
        Some(statement) if !statement.crop.trim().is_empty() => 2,
        _ => 1,
    };
    printed.sort_by_key(|(guidance, particular)| (place(guidance), std::cmp::Reverse(*particular)));
    let printed = printed.into_iter().map(|(guidance, _)| {
        let built = capital(&sentence(&guidance.statements.iter().collect::<Vec<_>>(), units));
        let (says, stands) = if guidance.says.trim().is_empty() {
            (built, String::new())
        } else {
            (language::row(&guidance.says).to_owned(), built)
        };
        Row {
            speaker: if guidance.basis == Basis::Practice { Speaker::Practice } else { Speaker::Published },
            says,
            stands,
            applies: guidance.statements.first().map(applies).unwrap_or_default(),
            source: guidance.basis.source().to_owned(),
            statements: guidance.statements.clone(),
        }
    });
    local.chain(printed).filter(|row| !row.says.is_empty()).collect()
}

/// "County adviser, 3 May 2031".
pub(super) fn source(advice: &Advice) -> String {
    let whose = if advice.whose.trim().is_empty() { t!("shed-someone-not-named") } else { advice.whose.trim() };
    match advice.given {
        Some(date) => format!("{whose}, {}", sheets::day(date)),
        None => whose.to_owned(),
    }
}

/// "with Yard well"; empty for every water.
pub(super) fn water(farm: &Farm, advice: &Advice) -> String {
    if advice.water.is_empty() {
        return String::new();
    }
    farm.waters.get(&advice.water).map_or_else(
        || t!("shed-with-a-water-that-is-gone", water = advice.water),
        |water| t!("shed-with-water-of", name = super::named(&water.name)),
    )
}

/// What statements say that differ in the adjuvant class alone: "crop oil concentrate or methylated seed oil preferred,
/// 1 % v/v".
pub(super) fn sentence(statements: &[&Statement], units: Units) -> String {
    let classes: Vec<&str> = statements
        .iter()
        .filter_map(|statement| match &statement.says {
            Says::Adjuvant { class, .. } => Some(class.name()),
            _ => None,
        })
        .collect();
    match statements.first().map(|statement| &statement.says) {
        Some(Says::Adjuvant { stance, least, most, at_least, at_most, .. }) => {
            let either = |one: String, other: &str| t!("shed-one-or-other", one = one, other = other);
            let classes =
                classes.split_first().map(|(first, rest)| rest.iter().copied().fold((*first).to_owned(), either));
            let mut text = format!("{} {}", classes.unwrap_or_default(), stance.name());
            let rate = range(least.as_ref(), most.as_ref(), units);
            if !rate.is_empty() {
                text = format!("{text}, {rate}");
            }
            let floor = range(at_least.as_ref(), None, units);
            let ceiling = range(None, at_most.as_ref(), units);
            match (floor.is_empty(), ceiling.is_empty()) {
                (true, true) => text,
                (false, false) => t!("shed-but-both", text = text, least = floor, most = ceiling),
                _ => t!("shed-but", text = text, bound = floor + &ceiling),
            }
        }
        Some(Says::NotWith { what, .. }) if what.trim().is_empty() => String::new(),
        Some(Says::NotWith { what, days: 0 }) => t!("shed-not-together-with-what", what = what.trim()),
        Some(Says::NotWith { what, days }) => {
            t!("shed-not-together-with-nor-within-of", what = what.trim(), days = days)
        }
        Some(Says::Caution { what } | Says::Handling { what } | Says::Wear { what }) => what.trim().to_owned(),
        Some(other) => other.name().to_owned(),
        None => String::new(),
    }
}

/// "8.5 to 17 lb/100 gal", with what that is in the farm's units where it reads otherwise.
fn range(least: Option<&AsTyped<Rate>>, most: Option<&AsTyped<Rate>>, units: Units) -> String {
    let text = between(least.map(AsTyped::text), most.map(AsTyped::text));
    // Units of another system: on a farm that reads gallons a pint needs no explanation.
    let foreign = |text: &str| {
        let metric = text.contains("/ha") || text.contains('L');
        let american = text.contains("/ac") || text.contains("gal");
        match units {
            Units::UsCustomary => metric || text.contains("imp"),
            Units::Imperial => metric || (american && !text.contains("imp")),
            Units::Metric => american,
        }
    };
    let differs = |rate: &AsTyped<Rate>| foreign(rate.text()) && !boxes::same_reading(&rate.show(units), rate.text());
    if ![least, most].into_iter().flatten().any(differs) {
        return text;
    }
    let (least, most) = (least.map(|rate| rate.show(units)), most.map(|rate| rate.show(units)));
    format!("{text} (= {})", between(least.as_deref(), most.as_deref()))
}

/// Two ends in words; a unit that both have stands once. A number and its unit stay in one line.
fn between(least: Option<&str>, most: Option<&str>) -> String {
    let whole = |text: &str| text.trim().replace(' ', "\u{a0}");
    match (least.map(str::trim), most.map(str::trim)) {
        (Some(least), Some(most)) if least == most => whole(least),
        (Some(least), Some(most)) => match (least.split_once(' '), most.split_once(' ')) {
            (Some((number, one)), Some((_, other))) if one == other => {
                t!("shed-to", number = number, most = whole(most))
            }
            _ => t!("shed-least-to-most", least = whole(least), most = whole(most)),
        },
        (Some(least), None) => t!("shed-at-least-least", least = whole(least)),
        (None, Some(most)) => t!("shed-at-most-most", most = whole(most)),
        (None, None) => String::new(),
    }
}

/// For which crop, at which stages and when: "in corn, from V2 to V8, in drought".
pub(super) fn applies(statement: &Statement) -> String {
    let mut parts = Vec::new();
    if !statement.crop.trim().is_empty() {
        parts.push(t!("shed-in-crop", crop = statement.crop.trim()));
    }
    match (statement.from_stage.trim(), statement.to_stage.trim()) {
        ("", "") => {}
        (from, "") => parts.push(t!("shed-from-on", from = from)),
        ("", to) => parts.push(t!("shed-up-to-to", to = to)),
        (from, to) => parts.push(t!("shed-from-to", from = from, to = to)),
    }
    parts.extend(statement.when.iter().map(words));
    parts.join(", ")
}

#[cfg(test)]
mod tests {
    use super::between;

    #[test]
    fn a_unit_that_both_ends_have_stands_once() {
        let between = |least, most| between(least, most).replace('\u{a0}', " ");
        assert_eq!(between(Some("8.5 lb/100 gal"), Some("17 lb/100 gal")), "8.5 to 17 lb/100 gal");
        assert_eq!(between(Some("1 pt/ac"), Some("1 qt/ac")), "1 pt/ac to 1 qt/ac");
        assert_eq!(between(Some("1 % v/v"), Some("1 % v/v")), "1 % v/v");
        assert_eq!(between(None, Some("1 % v/v")), "at most 1 % v/v");
    }
}
