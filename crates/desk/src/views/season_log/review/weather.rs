//! The weather at application: which records lay outside a limit. Holding a record against its labels takes long, so it is done a
//! little in each frame, and kept as long as the farm does not change.

use std::collections::HashMap;
use std::time::{Duration, Instant};

use egui::Ui;
use tankard_core::farm::{Farm, Id};
use tankard_core::finding::{Finding, Level, Subject};
use tankard_core::season::review::weather::{Outside, of_record, outside};
use tankard_core::season::review::{Choice, remarks};
use tankard_core::t;

use super::kept::Kept;
use super::table::{self, Column};
use super::{Shown, notes, sheet};
use crate::look;
use crate::parts::{boxes, findings};

/// How long records are judged in a frame.
const IN_A_FRAME: Duration = Duration::from_millis(8);
/// How many findings are shown at first, and how many more at a click.
const SOME: usize = 40;

/// What is judged so far.
#[derive(Debug, Default)]
pub(super) struct State {
    revision: Option<u64>,
    /// What lay outside, of the records judged in this state of the farm; nothing for those that kept inside.
    known: HashMap<Id, Vec<Finding>>,
    choice: Option<Choice>,
    /// The records of the choice still to be judged, the newest last.
    to_do: Vec<Id>,
    sum: Outside,
    by_label_or_law: Vec<Finding>,
    by_practice: Vec<Finding>,
    shown: (usize, usize),
}

impl State {
    fn begin(&mut self, kept: &Kept) {
        if self.revision != Some(kept.revision()) {
            *self = Self { revision: Some(kept.revision()), ..Self::default() };
        }
        if self.choice.as_ref() != Some(&kept.choice) {
            self.choice = Some(kept.choice.clone());
            let picked = kept.index.pick(&kept.choice);
            self.to_do = picked.ids().cloned().collect();
            self.sum = Outside::default();
            self.by_label_or_law.clear();
            self.by_practice.clear();
            self.shown = (SOME, SOME);
        }
    }

    fn judge(&mut self, farm: &Farm) {
        let since = Instant::now();
        while let Some(id) = self.to_do.pop() {
            let found = self.known.entry(id).or_insert_with_key(|id| of_record(farm, id));
            let one = outside(std::iter::once(found.as_slice()));
            self.sum = Outside {
                judged: self.sum.judged + one.judged,
                of_label_or_law: self.sum.of_label_or_law + one.of_label_or_law,
                of_practice: self.sum.of_practice + one.of_practice,
            };
            for finding in found.iter() {
                let to = if finding.level == Level::Note { &mut self.by_practice } else { &mut self.by_label_or_law };
                to.push(finding.clone());
            }
            if since.elapsed() > IN_A_FRAME {
                break;
            }
        }
    }
}

pub(super) fn show(ui: &mut Ui, state: &mut State, kept: &Kept, farm: &Farm, shown: &Shown<'_>) -> Option<Subject> {
    state.begin(kept);
    state.judge(farm);
    if !state.to_do.is_empty() {
        ui.ctx().request_repaint_after(Duration::from_millis(1));
    }
    let (sum, of) = (state.sum, shown.pages.records);
    ui.label(look::strong(if state.to_do.is_empty() {
        remarks::outside(of, sum)
    } else {
        t!(
            "season-log-of-held-against-labels-laws-and",
            judged = sum.judged,
            count = of,
            of_label_or_law = sum.of_label_or_law,
            of_practice = sum.of_practice
        )
    }));
    notes(ui, [remarks::weather().to_owned()]);
    let missing = shown.pages.unmeasured();
    sheet(ui, t!("season-log-not-measured"), |ui| {
        let columns = [
            Column::Words(t!("season-log-head-what"), 1.0),
            Column::Figure(t!("season-log-records-without-it"), 130.0),
        ];
        let rows = [
            (t!("season-log-head-wind"), missing.wind),
            (t!("season-log-air-temperature"), missing.temperature),
            (t!("season-log-head-humidity"), missing.humidity),
        ];
        table::show(ui, t!("season-log-not-measured"), &columns, rows.len(), false, |at| {
            rows.get(at)
                .map_or_else(Vec::new, |(what, n)| vec![(*what).to_owned(), t!("season-log-n-of-of", n = n, of = of)])
        });
    });
    let done = state.to_do.is_empty();
    let outside =
        listed(ui, t!("season-log-outside-a-label-or-a-law"), &state.by_label_or_law, &mut state.shown.0, done);
    let practice =
        listed(ui, t!("season-log-outside-what-the-farm-keeps-to"), &state.by_practice, &mut state.shown.1, done);
    outside.or(practice)
}

/// The newest of them; a click leads to the record.
fn listed(ui: &mut Ui, heading: &str, all: &[Finding], shown: &mut usize, done: bool) -> Option<Subject> {
    let mut led = None;
    sheet(ui, heading, |ui| {
        if all.is_empty() {
            ui.label(look::soft(ui, if done { t!("season-log-nothing") } else { t!("season-log-nothing-so-far") }));
            return;
        }
        led = findings::show(ui, all.get(..*shown).unwrap_or(all)).map(|led| led.about);
        if all.len() > *shown {
            ui.horizontal(|ui| {
                ui.label(look::soft(ui, t!("season-log-the-newest-of", shown = shown, all = all.len())));
                if boxes::act(ui, t!("season-log-show-more"))
                    .accessible_name(t!("season-log-show-more-heading", heading = heading))
                    .clicked()
                {
                    *shown += SOME;
                }
            });
        }
    });
    led
}
