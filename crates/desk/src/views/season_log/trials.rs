//! Trials: two treatments beside one another, pair by pair, with their ratings.

use std::rc::Rc;

use egui::{Margin, ScrollArea, Ui};
use tankard_core::farm::{Farm, Id, Plot, Record, Trial};
use tankard_core::language::days::short_date;
use tankard_core::quantity::number;
use tankard_core::season::review::words::{band, by_pairs, effect, no_cause};
use tankard_core::season::trials::{Judged, judge, pair_up};
use tankard_core::t;

use super::listed::Listed;
use crate::app::Desk;
use crate::look;
use crate::parts::{boxes, lists};
use crate::views::tank_loads::cell;

/// How many records are offered: the newest of those that the list shows.
const MOST: usize = 200;
/// Width of a choice of a plot.
const PLOT: f32 = 300.0;
/// Least width of a column of figures.
const FIGURE: f32 = 60.0;
/// Widths, as far as there is room, of the columns of what was rated, when, and where.
const WORDS: [f32; 3] = [240.0, 170.0, 330.0];
/// Room between columns.
const APART: f32 = 16.0;

/// What is open here.
#[derive(Debug, Default)]
pub(super) struct State {
    /// The records that are to be paired, of the trial they are chosen for.
    pairing: (Id, Id, Id),
    /// The trial that is asked about before it goes.
    removing: Option<Id>,
    /// What the trials come to, found once for a state of the farm.
    judged: Option<(u64, Rc<Vec<Judged>>)>,
}

/// Shows the page.
pub(super) fn show(desk: &mut Desk, ui: &mut Ui, listed: &Listed) {
    let revision = desk.document.revision();
    let farm = desk.document.farm();
    let state = &mut desk.season_log.trials;
    if state.judged.as_ref().is_none_or(|(known, _)| *known != revision) {
        state.judged = Some((revision, Rc::new(farm.trials.values().map(|trial| judge(farm, trial)).collect())));
    }
    let judged = state.judged.as_ref().map(|(_, judged)| Rc::clone(judged)).unwrap_or_default();
    let records: Vec<Id> = listed
        .rows
        .iter()
        .filter_map(|row| farm.records.get_index(*row))
        .filter(|(_, record)| !record.fields.is_empty())
        .take(MOST)
        .map(|(id, _)| id.clone())
        .collect();
    let mut trials = farm.trials.clone();
    let mut led = None;
    ScrollArea::vertical().auto_shrink(false).show(ui, |ui| {
        egui::Frame::new().inner_margin(Margin { left: 16, right: 16, top: 4, bottom: 16 }).show(ui, |ui| {
            ui.set_width(ui.available_width());
            if trials.is_empty() {
                lists::empty(ui, t!("season-log-no-trial-yet-a-trial-holds"));
            }
            let mut taken = None;
            for (at, (id, trial)) in trials.iter_mut().enumerate() {
                ui.push_id(("trial", id), |ui| {
                    look::sheet(ui).show(ui, |ui| {
                        ui.set_width(ui.available_width());
                        let bench = Bench { farm, records: &records, judged: judged.get(at) };
                        if bench.trial(ui, &mut desk.season_log.trials, id, trial, &mut led) {
                            taken = Some(id.clone());
                        }
                    });
                    ui.add_space(look::GRID);
                });
            }
            if let Some(id) = taken {
                trials.shift_remove(&id);
            }
            if boxes::act(ui, t!("season-log-add-a-trial")).clicked() {
                let id = tankard_core::farm::id::fresh(&trials, "trial");
                trials.insert(id, Trial { name: t!("season-log-new-trial").to_owned(), ..Trial::default() });
            }
        });
    });
    if trials != farm.trials {
        desk.document.edit(|farm| farm.trials = trials);
    }
    if let Some(id) = led {
        desk.season_log.chosen = Some(id);
        desk.season_log.in_front = super::Page::Records;
    }
}

/// What the parts of a trial look at.
struct Bench<'a> {
    farm: &'a Farm,
    records: &'a [Id],
    judged: Option<&'a Judged>,
}

impl Bench<'_> {
    /// Shows a trial; whether it is to go.
    fn trial(&self, ui: &mut Ui, state: &mut State, id: &Id, trial: &mut Trial, led: &mut Option<Id>) -> bool {
        let mut goes = false;
        ui.horizontal_wrapped(|ui| {
            boxes::text(ui, t!("season-log-name-of-the-trial"), &mut trial.name, 320.0);
            if state.removing.as_ref() == Some(id) {
                ui.label(look::strong(t!("season-log-remove-this-trial")));
                goes = ui.button(t!("season-log-remove-it")).clicked();
                if goes || ui.button(t!("season-log-keep-it")).clicked() {
                    state.removing = None;
                }
            } else if boxes::act(ui, t!("season-log-remove"))
                .accessible_name(t!("season-log-remove-trial", name = trial.name))
                .clicked()
            {
                state.removing = Some(id.clone());
            }
        });
        boxes::row(ui, t!("season-log-the-one-side"), |ui| {
            boxes::text_or_empty(
                ui,
                t!("season-log-the-one-side-df3"),
                &mut trial.one,
                PLOT,
                t!("season-log-crop-oil-concentrate"),
            );
        });
        boxes::row(ui, t!("season-log-the-other-side"), |ui| {
            boxes::text_or_empty(
                ui,
                t!("season-log-the-other-side-371"),
                &mut trial.other,
                PLOT,
                t!("season-log-non-ionic-surfactant"),
            );
        });
        self.pairs(ui, trial, led);
        self.pairing(ui, state, id, trial);
        self.figures(ui, trial);
        let width = ui.available_width();
        boxes::sentence(
            ui,
            t!("season-log-note-on-the-trial"),
            &mut trial.note,
            width,
            t!("season-log-what-was-seen-beside-the-figures"),
        );
        goes
    }

    fn pairs(&self, ui: &mut Ui, trial: &mut Trial, led: &mut Option<Id>) {
        if trial.pairs.is_empty() {
            ui.label(look::soft(ui, t!("season-log-no-pair-yet-choose-a-record")));
            return;
        }
        ui.label(look::heading(t!("season-log-pairs")));
        let mut taken = None;
        for (at, (one, other)) in trial.pairs.iter().enumerate() {
            ui.horizontal_wrapped(|ui| {
                let number = at + 1;
                ui.label(look::soft(ui, format!("{number}")));
                for (side, plot) in [("one", one), ("other", other)] {
                    let words = self.plot_words(plot);
                    let response = boxes::act(ui, &words).accessible_name(t!(
                        "season-log-pair-side",
                        number = number,
                        side = side,
                        words = words
                    ));
                    if response.clicked() && self.farm.records.contains_key(&plot.record) {
                        *led = Some(plot.record.clone());
                    }
                    if side == "one" {
                        ui.label(look::soft(ui, t!("season-log-head-beside")));
                    }
                }
                if boxes::act(ui, t!("season-log-remove-01d"))
                    .accessible_name(t!("season-log-remove-pair", number = number))
                    .clicked()
                {
                    taken = Some(at);
                }
            });
        }
        if let Some(at) = taken {
            trial.pairs.remove(at);
        }
    }

    /// Two records to choose, and the act that pairs their fields.
    fn pairing(&self, ui: &mut Ui, state: &mut State, id: &Id, trial: &mut Trial) {
        if state.pairing.0 != *id {
            let none = (id.clone(), Id::new(), Id::new());
            // Only the trial that is worked on holds what is chosen.
            let mut own = none.clone();
            self.choose(ui, &mut own);
            if own != none {
                state.pairing = own;
            }
            return;
        }
        self.choose(ui, &mut state.pairing);
        let (one, other) = (&state.pairing.1, &state.pairing.2);
        let both = self.farm.records.get(one).zip(self.farm.records.get(other)).filter(|_| one != other);
        if let Some((first, second)) = both {
            let pairs: Vec<(Plot, Plot)> =
                pair_up((one, first), (other, second)).into_iter().filter(|pair| !trial.pairs.contains(pair)).collect();
            let words = match pairs.len() {
                0 => return,
                1 => t!("season-log-add-the-pair").to_owned(),
                count => t!("season-log-add-pairs", count = count),
            };
            if boxes::act(ui, &words).clicked() {
                trial.pairs.extend(pairs);
                state.pairing = (Id::new(), Id::new(), Id::new());
            }
        }
    }

    fn choose(&self, ui: &mut Ui, pairing: &mut (Id, Id, Id)) {
        let say = |id: &Id| {
            self.farm.records.get(id).map_or_else(|| t!("season-log-choose-a-record").to_owned(), record_words)
        };
        boxes::row(ui, t!("season-log-pair-a-record"), |ui| {
            let width = PLOT.min(ui.available_width());
            boxes::choice(ui, t!("season-log-record-of-the-one-side"), &mut pairing.1, self.records, say, width);
            ui.label(look::soft(ui, t!("season-log-head-beside")));
            boxes::choice(ui, t!("season-log-record-of-the-other-side"), &mut pairing.2, self.records, say, width);
        });
    }

    /// What was rated on both sides, and what the pairs tell.
    fn figures(&self, ui: &mut Ui, trial: &Trial) {
        let Some(judged) = self.judged.filter(|_| !trial.pairs.is_empty()) else { return };
        for open in &judged.open {
            ui.add(egui::Label::new(look::soft(ui, open)).wrap());
        }
        if judged.comparisons.is_empty() {
            ui.label(look::soft(ui, t!("season-log-nothing-is-rated-on-both-sides")));
            return;
        }
        ui.label(look::heading(t!("season-log-ratings")));
        let side =
            |name: &str, instead: &str| if name.trim().is_empty() { instead.to_owned() } else { name.to_owned() };
        let (one, other) = (side(&trial.one, t!("season-log-the-one")), side(&trial.other, t!("season-log-the-other")));
        ui.label(look::soft(ui, t!("season-log-the-difference-is-less-in-points", one = one, other = other)));
        let heads = [
            t!("season-log-head-what"),
            t!("season-log-head-after"),
            t!("season-log-head-pair"),
            t!("season-log-head-one"),
            t!("season-log-head-other"),
            t!("season-log-head-difference"),
        ];
        let widths = widths(ui, &heads);
        egui::Grid::new("figures").num_columns(6).spacing(egui::Vec2::new(APART, 3.0)).show(ui, |ui| {
            for ((at, head), width) in heads.into_iter().enumerate().zip(widths) {
                figure(ui, at, width, look::soft(ui, head));
            }
            ui.end_row();
            for each in &judged.comparisons {
                for (at, pair) in each.pairs.iter().enumerate() {
                    let (what, after) =
                        if at == 0 { (effect(&each.effect), band(each.days)) } else { Default::default() };
                    let cells = [
                        what,
                        after,
                        pair.name.clone(),
                        per_cent(pair.one),
                        per_cent(pair.other),
                        points(pair.one - pair.other),
                    ];
                    figures_row(ui, cells, &widths, false);
                }
                if let (Some(paired), Some(one), Some(other)) = (each.paired, each.one, each.other) {
                    let apart = points(paired.mean);
                    let cells = [
                        String::new(),
                        String::new(),
                        t!("season-log-head-mean").to_owned(),
                        per_cent(one.mean),
                        per_cent(other.mean),
                        apart,
                    ];
                    figures_row(ui, cells, &widths, true);
                }
            }
        });
        for each in &judged.comparisons {
            ui.add(egui::Label::new(format!("{}.", by_pairs(each, &one, &other).text)).wrap());
        }
        boxes::say(ui, no_cause());
    }

    fn plot_words(&self, plot: &Plot) -> String {
        let Some(record) = self.farm.records.get(&plot.record) else {
            return t!("season-log-a-record-that-is-gone").to_owned();
        };
        let field = record.fields.get(&plot.field).map_or(plot.field.as_str(), |field| field.name.as_str());
        t!("season-log-field-name-of-date", field = field, name = record.name, date = record.date)
    }
}

/// Widths of the columns: the figures have theirs, the words share the rest and wrap in it.
fn widths(ui: &Ui, heads: &[&str; 6]) -> [f32; 6] {
    let figure = |head: &str| look::width(ui, look::soft(ui, head)).ceil().max(FIGURE);
    let [_, _, _, one, other, apart] = heads.map(figure);
    let wanted: f32 = WORDS.iter().sum();
    let room = ui.available_width() - one - other - apart - 5.0 * APART;
    let [what, after, pair] = WORDS.map(|width| width * (room / wanted).min(1.0));
    [what, after, pair, one, other, apart]
}

fn figures_row(ui: &mut Ui, cells: [String; 6], widths: &[f32; 6], is_mean: bool) {
    for ((at, text), width) in cells.into_iter().enumerate().zip(widths) {
        figure(ui, at, *width, if is_mean { look::strong(text) } else { egui::RichText::new(text) });
    }
    ui.end_row();
}

/// A cell: the last three hold figures, which stand at the right; the others wrap.
fn figure(ui: &mut Ui, at: usize, width: f32, text: egui::RichText) {
    if at >= 3 {
        return cell(ui, width, true, |ui| drop(ui.label(text)));
    }
    ui.scope(|ui| {
        ui.set_min_width(width);
        ui.set_max_width(width);
        ui.add(egui::Label::new(text).wrap());
    });
}

fn record_words(record: &Record) -> String {
    format!("{}, {}", short_date(record.date), record.name)
}

/// Per cent to a tenth, without an empty one.
fn per_cent(value: f64) -> String {
    format!("{} %", number::show(value, 1))
}

/// A difference with its sign.
fn points(value: f64) -> String {
    match number::show(value.abs(), 1) {
        size if size == "0" => size,
        size if value > 0.0 => format!("+{size}"),
        size => format!("–{size}"),
    }
}

#[cfg(test)]
mod tests {
    use super::{per_cent, points};

    #[test]
    fn figures_stand_to_a_tenth() {
        assert_eq!([85.25, 0.0, 12.8, 100.0].map(per_cent), ["85.2 %", "0 %", "12.8 %", "100 %"]);
        let apart = [12.8, -12.8, 5.0, 0.04, -0.04, 0.0, -0.0].map(points);
        assert_eq!(apart, ["+12.8", "–12.8", "+5", "0", "0", "0", "0"]);
    }
}
