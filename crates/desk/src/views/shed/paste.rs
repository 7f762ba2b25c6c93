//! Directions pasted from a label: what was read of them, line by line, to be ticked by a person before anything enters the form; and what
//! was not understood.

use std::sync::Arc;

use egui::text::LayoutJob;
use egui::{Checkbox, Frame, Label, Margin, ScrollArea, Stroke, TextFormat, Ui};
use tankard_core::farm::Product;
use tankard_core::finding::Level;
use tankard_core::label::directions::against::{Stands, enter, in_form, stands};
use tankard_core::label::directions::{Found, Left, Reading, Sentence, read};
use tankard_core::quantity::Units;
use tankard_core::t;
use tankard_core::words::capital;

use super::aside::Aside;
use super::{Bench, tight, word};
use crate::look;
use crate::parts::{boxes, mark};

/// The box that the text goes into.
pub(super) fn name() -> &'static str {
    t!("shed-directions-from-the-label")
}

/// Height of the box of the text.
const TEXT: f32 = 92.0;

/// What is pasted, and what of it is ticked.
#[derive(Debug, Default)]
pub(super) struct Draft {
    text: String,
    /// Where on the label it stands.
    at: String,
    /// What the text was read as, for a state of the farm.
    reading: Option<(String, u64, Arc<Reading>)>,
    /// Which lines are ticked, and which of those go beside what is typed instead of in its place.
    lines: Vec<(bool, bool)>,
}

impl Draft {
    /// The text read, once for a text and a state of the farm. A tick holds for the line it was set at, so a changed text has none.
    fn fresh(&mut self, product: &Product, units: Units, revision: u64) -> Arc<Reading> {
        if let Some((text, of, reading)) = &self.reading
            && *text == self.text
            && *of == revision
        {
            return Arc::clone(reading);
        }
        let reading = Arc::new(read(&self.text, product, units));
        let is_same = self.reading.as_ref().is_some_and(|(_, _, before)| before.found == reading.found);
        if !is_same {
            self.lines = vec![(false, false); reading.found.len()];
        }
        self.reading = Some((self.text.clone(), revision, Arc::clone(&reading)));
        reading
    }

    /// A sentence that was not understood, to be kept in sight where it belongs.
    fn aside_at(&self, ui: &Ui, reading: &Reading, place: usize) -> Option<Aside> {
        Aside::new(ui, reading.left.get(place)?, place, &self.at)
    }
}

/// The sentence after a place that was not understood and of which it is known where it belongs.
pub(super) fn next_left(ui: &Ui, draft: Option<&Draft>, after: usize) -> Option<Aside> {
    let draft = draft?;
    let (_, _, reading) = draft.reading.as_ref()?;
    (after + 1..reading.left.len()).find_map(|place| draft.aside_at(ui, reading, place))
}

/// The act that opens the box, or the box with what was read.
pub(super) fn show(bench: &mut Bench, ui: &mut Ui, product: &mut Product) {
    ui.add_space(look::GRID);
    let Some(mut draft) = bench.state.pasting.take() else {
        ui.scope(|ui| {
            ui.spacing_mut().button_padding.x = 0.0;
            tight(ui);
            if boxes::act(ui, t!("shed-paste-directions")).clicked() {
                let at = product.label.last().map(|statement| statement.at.clone()).unwrap_or_default();
                bench.state.pasting = Some(Draft { at, ..Draft::default() });
                boxes::want(ui.ctx(), name());
            }
        });
        return;
    };
    let (units, revision) = (bench.farm().units, bench.desk.document.revision());
    let mut is_open = true;
    Frame::new().inner_margin(Margin { left: 10, ..Margin::ZERO }).show(ui, |ui| {
        let top = ui.cursor().top();
        boxes::say(ui, t!("shed-paste-what-the-directions-say-or"));
        ui.add_space(4.0);
        let width = ui.available_width();
        ScrollArea::vertical().id_salt("pasted").max_height(TEXT).min_scrolled_height(TEXT).show(ui, |ui| {
            boxes::lines(ui, name(), &mut draft.text, width - 12.0, 5);
        });
        ui.add_space(4.0);
        ui.horizontal(|ui| {
            word(ui, t!("shed-it-stands-on"));
            boxes::text_or_empty(ui, t!("shed-directions-stand-on"), &mut draft.at, 90.0, "page");
        });
        let reading = draft.fresh(product, units, revision);
        all(ui, &mut draft, &reading, product);
        found(ui, &mut draft, &reading, product, units);
        if let Some(aside) = left(ui, &reading, units).and_then(|place| draft.aside_at(ui, &reading, place)) {
            bench.state.aside = Some(aside);
            ui.request_repaint();
        }
        ui.add_space(6.0);
        ui.horizontal(|ui| {
            ui.spacing_mut().button_padding.x = 0.0;
            ui.spacing_mut().item_spacing.x = 14.0;
            let ticked = draft.lines.iter().filter(|(ticked, _)| *ticked).count();
            if ticked > 0 {
                let text = t!("shed-enter-ticked", count = ticked);
                if boxes::act(ui, &text).clicked() {
                    take(&mut draft, &reading, product);
                }
            } else if !reading.found.is_empty() {
                ui.add_enabled(false, egui::Button::new(t!("shed-enter-what-is-ticked")).frame(false))
                    .on_disabled_hover_text(t!("parts-nothing-is-ticked-yet"));
            }
            if boxes::act(ui, t!("shed-put-the-text-away")).clicked() {
                is_open = false;
                bench.state.aside = None;
            }
        });
        let line = Stroke::new(2.0, look::colours(ui).brass);
        ui.painter().vline(ui.min_rect().left() - 9.0, top..=ui.min_rect().bottom(), line);
    });
    if is_open {
        bench.state.pasting = Some(draft);
    }
}

/// Enters what is ticked. What goes in the place of something typed goes first, since places stay as they are then.
fn take(draft: &mut Draft, reading: &Reading, product: &mut Product) {
    let ticked: Vec<(&Found, bool, Stands)> = reading
        .found
        .iter()
        .zip(&draft.lines)
        .filter(|(_, (ticked, _))| *ticked)
        .map(|(found, (_, beside))| (found, *beside, stands(found, product)))
        .collect();
    for (found, beside, stands) in ticked {
        let instead_of = match stands {
            Stands::Same(_) => continue,
            Stands::Otherwise(places) if !beside => places.first().copied(),
            _ => None,
        };
        enter(found, &draft.at, instead_of, product);
    }
    draft.lines.iter_mut().for_each(|line| *line = (false, false));
}

/// Ticks all lines that are not in the form yet, or none. What is ticked enters only when that is chosen, too.
fn all(ui: &mut Ui, draft: &mut Draft, reading: &Reading, product: &Product) {
    let mut open: Vec<&mut (bool, bool)> = reading
        .found
        .iter()
        .zip(&mut draft.lines)
        .filter(|(found, _)| !matches!(stands(found, product), Stands::Same(_)))
        .map(|(_, line)| line)
        .collect();
    if open.len() < 2 {
        return;
    }
    ui.scope(|ui| {
        ui.spacing_mut().button_padding.x = 0.0;
        let is_all = open.iter().all(|(ticked, _)| *ticked);
        let text = if is_all {
            t!("shed-take-all-ticks-away").to_owned()
        } else {
            t!("shed-tick-all-lines", count = open.len())
        };
        if boxes::act(ui, &text).clicked() {
            for line in &mut open {
                line.0 = !is_all;
            }
        }
    });
}

/// The lines that were read.
fn found(ui: &mut Ui, draft: &mut Draft, reading: &Reading, product: &Product, units: Units) {
    for (at, found) in reading.found.iter().enumerate() {
        let Some(line) = draft.lines.get_mut(at) else { continue };
        ui.push_id(("found", at), |ui| {
            ui.add_space(3.0);
            boxes::hairline(ui);
            ui.spacing_mut().item_spacing.y = 1.0;
            let stands = stands(found, product);
            let statement = &found.statement;
            let (says, crop) = (&statement.says, &statement.crop);
            let value = in_form(statement, None);
            let shown = in_form(statement, Some(units));
            let shown = if boxes::same_reading(&shown, &value) { String::new() } else { format!(" (= {shown})") };
            let name = capital(says.name());
            let becomes = if crop.is_empty() {
                t!("shed-becomes", name = name, value = value)
            } else {
                t!("shed-becomes-in-a-crop", name = name, crop = crop, value = value)
            };
            ui.horizontal_wrapped(|ui| {
                if matches!(stands, Stands::Same(_)) {
                    *line = (false, false);
                    ui.label(look::strong(&becomes));
                    word(ui, t!("shed-stands-there-already"));
                    return;
                }
                ui.scope(|ui| {
                    ui.visuals_mut().widgets.inactive.bg_stroke = Stroke::new(1.0, look::colours(ui).soft);
                    ui.add(Checkbox::new(&mut line.0, look::strong(&becomes)))
                        .accessible_name(t!("shed-enter", becomes = becomes));
                });
                if !shown.is_empty() {
                    word(ui, shown.trim_start());
                }
                if let Stands::Otherwise(places) = &stands {
                    beside_typed(ui, places, product, &becomes, &mut line.1);
                }
            });
            for sentence in &found.sentences {
                ui.add(Label::new(marked(ui, sentence)).wrap());
            }
            if !found.note.is_empty() {
                ui.add(Label::new(look::soft(ui, &found.note).color(look::colours(ui).check)).wrap());
            }
        });
    }
}

/// What the form has already, and whether what was read goes in its place.
fn beside_typed(ui: &mut Ui, places: &[usize], product: &Product, becomes: &str, beside: &mut bool) {
    let typed: Vec<String> =
        places.iter().filter_map(|at| product.label.get(*at)).map(|typed| in_form(typed, None)).collect();
    let text = t!("shed-the-form-has", typed = typed.join("; "));
    ui.label(look::soft(ui, text).color(look::colours(ui).check));
    let say = |beside: &bool| if *beside { t!("shed-beside-it") } else { t!("shed-in-its-place") }.to_owned();
    boxes::choice(ui, &t!("shed-how-is-entered", becomes = becomes), beside, &[false, true], say, 96.0);
}

/// The sentence, with what was read of it in ink.
fn marked(ui: &Ui, sentence: &Sentence) -> LayoutJob {
    let colours = look::colours(ui);
    let font = egui::TextStyle::Small.resolve(ui.style());
    let format = |color| TextFormat { font_id: font.clone(), color, ..TextFormat::default() };
    let mut job = LayoutJob::default();
    let mut at = 0;
    for part in &sentence.read {
        job.append(sentence.text.get(at..part.start).unwrap_or_default(), 0.0, format(colours.soft));
        job.append(sentence.text.get(part.clone()).unwrap_or_default(), 0.0, format(colours.ink));
        at = part.end;
    }
    job.append(sentence.text.get(at..).unwrap_or_default(), 0.0, format(colours.soft));
    job
}

/// The sentences that no line accounts for: those with a limit first, each with the mark of a Check. Gives the place of one that is to be
/// typed where it belongs.
fn left(ui: &mut Ui, reading: &Reading, units: Units) -> Option<usize> {
    type Placed<'r> = Vec<(usize, &'r Left)>;
    let (limits, others): (Placed, Placed) = reading.left.iter().enumerate().partition(|(_, left)| left.has_limit);
    let mut chosen = None;
    if !limits.is_empty() {
        ui.add_space(6.0);
        boxes::hairline(ui);
        let text = t!("shed-not-understood-type-yourself-what-is", count = limits.len());
        ui.add(Label::new(look::strong(text)).wrap());
    }
    for (place, left) in limits {
        ui.spacing_mut().item_spacing.y = 1.0;
        mark::line(ui, Level::Check, &left.sentence);
        ui.add(Label::new(look::soft(ui, &left.why)).wrap());
        if let Some(kind) = Aside::name_of(left, units) {
            ui.scope(|ui| {
                tight(ui);
                ui.spacing_mut().button_padding.x = 0.0;
                let act = boxes::act(ui, &t!("shed-type-it-under", kind = capital(kind)));
                let act = act.accessible_name(t!("shed-type-sentence-under", kind = kind, sentence = left.sentence));
                if act.clicked() {
                    chosen = Some(place);
                }
            });
        }
    }
    if !others.is_empty() {
        ui.add_space(6.0);
        boxes::hairline(ui);
        boxes::say(ui, &t!("shed-without-a-limit-by-their-words", count = others.len()));
    }
    for (_, left) in others {
        ui.spacing_mut().item_spacing.y = 1.0;
        ui.add(Label::new(&left.sentence).wrap());
    }
    chosen
}
