//! Records from a file: its own CSV by what the farm has already, any other by a look at what its columns hold. Nothing enters
//! the farm before it is confirmed, and one undo takes it back.

use std::path::Path;
use std::sync::Arc;

use egui::{Label, Margin, ScrollArea, Ui};
use tankard_core::farm::{Farm, Record};
use tankard_core::finding::Level;
use tankard_core::language::days::clock;
use tankard_core::progress::Cancelled;
use tankard_core::quantity::Units;
use tankard_core::t;
use tankard_core::words::capital;
use tankard_file::records_csv::{self, Meets, Reading};
use tankard_file::records_import::{self, Comma, DayOrder, Holds, Mapping, Preview, Table};

use super::Season;
use crate::app::{Desk, Failed, Going, Task};
use crate::command::View;
use crate::look;
use crate::parts::{boxes, dates, figures, left_out, mark};
use crate::views::tank_loads::cell;

/// The name under which a file of records is looked at.
const LOOKING: &str = "records";
/// So many columns are all shown; of more only those that are taken, until all are asked for.
const FEW_COLUMNS: usize = 14;
/// So many records are shown at once.
const FEW_RECORDS: usize = 6;
/// So many rows are looked at while columns are chosen.
const FIRST_ROWS: usize = 5_000;
/// Width of the page.
const PAGE: f32 = 900.0;

/// A file that is looked at.
#[derive(Debug, Default)]
pub(super) struct State {
    coming: Option<Box<Coming>>,
}

impl State {
    /// Whether a file is looked at.
    pub(super) fn is_open(&self) -> bool {
        self.coming.is_some()
    }
}

#[derive(Debug)]
struct Coming {
    source: String,
    /// What was asked for last, and what is shown: of which state of the farm and after how many changes of the choices.
    asked: Asked,
    looked: Option<Asked>,
    /// The first shown of the lines left out, and of the records.
    line: usize,
    record: usize,
    what: What,
}

/// A look at a file: at which state of the farm, how many changes of the choices before it, and how many rows at the most.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
struct Asked {
    revision: u64,
    changes: u32,
    rows: usize,
}

#[derive(Debug)]
enum What {
    /// The records of an export.
    Own { reading: Arc<Reading>, meets: Vec<Meets>, alike: Vec<String>, as_new: bool },
    /// A spreadsheet; `whole` where all of its rows were looked at, and not the first alone.
    Other { table: Arc<Table>, mapping: Mapping, preview: Preview, shown: Vec<usize>, whole: bool },
}

/// What a file is held against the farm with.
enum Held {
    Own(Arc<Reading>),
    Other(Arc<Table>, Mapping),
}

/// What came of that.
enum Looked {
    Own(Vec<String>, Vec<Meets>),
    Other(Preview),
}

impl Held {
    fn look(&self, farm: &Farm, rows: usize, going: &Going) -> Result<Looked, Cancelled> {
        let tell = |done, of| going.tell(done, of);
        Ok(match self {
            Self::Own(reading) => {
                let alike = records_csv::alike_told(farm, &reading.records, &tell)?;
                let meets = reading.records.iter().map(|coming| records_csv::meets(farm, coming)).collect();
                Looked::Own(alike, meets)
            }
            Self::Other(table, mapping) => {
                Looked::Other(records_import::preview_told(table, mapping, farm, rows, &tell)?)
            }
        })
    }
}

impl What {
    fn held(&self) -> Held {
        match self {
            Self::Own { reading, .. } => Held::Own(Arc::clone(reading)),
            Self::Other { table, mapping, .. } => Held::Other(Arc::clone(table), mapping.clone()),
        }
    }

    /// Takes what came of a look at so many rows.
    fn take(&mut self, looked: Looked, rows: usize) {
        match (self, looked) {
            (Self::Own { meets, alike, .. }, Looked::Own(now_alike, now_meets)) => {
                (*alike, *meets) = (now_alike, now_meets);
            }
            (Self::Other { table, preview, whole, .. }, Looked::Other(now)) => {
                let all = table.rows.len();
                // Where rows beyond the first leave something to choose, they are looked at again once it is chosen.
                *whole = all <= rows && (all <= FIRST_ROWS || now.to_choose.is_empty());
                *preview = now;
            }
            _ => {}
        }
    }
}

/// Looks at the file that was chosen.
pub fn read_file(desk: &mut Desk, path: &Path) {
    let source = path.file_name().map(|name| name.to_string_lossy().into_owned()).unwrap_or_default();
    let snapshot = desk.document.snapshot();
    let asked = Asked { revision: desk.document.revision(), changes: 0, rows: FIRST_ROWS };
    let path = path.to_owned();
    desk.start(
        Task::reading(&path, t!("season-log-the-records-were-not-read"))
            .counting(t!("season-log-head-record"), t!("season-log-head-records"))
            .in_place(LOOKING),
        move |going| {
            let unread = |error: &dyn std::fmt::Display| Failed::Because(format!("{error}: {}", path.display()));
            let mut what = if records_csv::is_own_file(&path) {
                let reading = records_csv::open(&path, &|done, of| going.tell(done, of));
                let reading = Arc::new(reading.map_err(|error| unread(&error))?);
                What::Own { reading, meets: Vec::new(), alike: Vec::new(), as_new: false }
            } else {
                spreadsheet(records_import::open(&path).map_err(|error| unread(&error))?)
            };
            going.goes_on()?;
            what.take(what.held().look(&snapshot.into_farm(), FIRST_ROWS, going)?, FIRST_ROWS);
            Ok(Box::new(Coming { source, asked, looked: Some(asked), line: 0, record: 0, what }))
        },
        |desk, coming| {
            let source = coming.source.clone();
            desk.season_log.import.coming = Some(coming);
            desk.tell_where(View::SeasonLog, &t!("season-log-is-read", source = source));
        },
    );
}

/// Holds what is coming against the farm as it stands now, by what is chosen now.
fn look_again(desk: &mut Desk, coming: &mut Coming, rows: usize) {
    let revision = desk.document.revision();
    coming.asked = Asked { revision, changes: coming.asked.changes + 1, rows };
    let (snapshot, held, asked) = (desk.document.snapshot(), coming.what.held(), coming.asked);
    desk.start(
        Task::looks(
            t!("season-log-looking-at", source = coming.source),
            t!("season-log-the-records-were-not-looked-at"),
        )
        .counting(t!("season-log-head-record"), t!("season-log-head-records"))
        .in_place(LOOKING),
        move |going| Ok(held.look(&snapshot.into_farm(), rows, going)?),
        move |desk, looked| {
            let coming = desk.season_log.import.coming.as_mut();
            if let Some(coming) = coming.filter(|coming| coming.asked == asked) {
                coming.what.take(looked, rows);
                coming.looked = Some(asked);
            }
        },
    );
}

fn spreadsheet(table: Table) -> What {
    let mapping = records_import::guess(&table);
    let is_taken =
        |at: &usize| table.header.len() <= FEW_COLUMNS || mapping.takes.iter().any(|take| take.column == *at);
    let shown = (0..table.header.len()).filter(is_taken).collect();
    What::Other { table: Arc::new(table), mapping, preview: Preview::default(), shown, whole: false }
}

/// Shows the page.
pub(super) fn show(desk: &mut Desk, ui: &mut Ui) {
    let Some(mut coming) = desk.season_log.import.coming.take() else { return };
    // The farm may have been changed in another view meanwhile.
    if coming.asked.revision != desk.document.revision() {
        look_again(desk, &mut coming, FIRST_ROWS);
    }
    let mut is_done = false;
    ScrollArea::vertical().auto_shrink(false).show(ui, |ui| {
        egui::Frame::new().inner_margin(Margin::symmetric(16, 10)).show(ui, |ui| {
            ui.label(look::title(t!("season-log-records-from", source = coming.source)));
            ui.add_space(4.0);
            look::sheet(ui).show(ui, |ui| {
                ui.set_width(PAGE.min(ui.available_width()));
                let units = desk.document.farm().units;
                let mut is_changed = false;
                match &mut coming.what {
                    What::Own { reading, meets, alike, as_new } => own(ui, reading, meets, alike, as_new),
                    What::Other { table, mapping, preview, shown, whole } => {
                        let before = mapping.clone();
                        columns(ui, table, mapping, shown);
                        other(ui, preview, mapping, (!*whole).then_some(table.rows.len()));
                        is_changed = *mapping != before;
                    }
                }
                if is_changed {
                    look_again(desk, &mut coming, FIRST_ROWS);
                    coming.line = 0;
                    coming.record = 0;
                }
                let shown = coming.what.records();
                records(ui, &shown, &mut coming.record, units);
                let refused = match &coming.what {
                    What::Own { reading, .. } => &reading.refused,
                    What::Other { preview, .. } => &preview.refused,
                };
                left_out::show(ui, refused, &mut coming.line);
                ui.add_space(look::GRID);
                is_done = end(desk, ui, &mut coming);
            });
        });
    });
    if !is_done {
        desk.season_log.import.coming = Some(coming);
    }
}

impl What {
    /// The records that would enter, with the line on which each begins.
    fn records(&self) -> Vec<(u64, &Record)> {
        match self {
            Self::Own { reading, meets, as_new, .. } => reading
                .records
                .iter()
                .zip(meets)
                .filter(|(_, meets)| **meets == Meets::Nothing || (*as_new && **meets == Meets::Another))
                .map(|(coming, _)| (coming.line, &coming.record))
                .collect(),
            Self::Other { preview, .. } => preview
                .records
                .iter()
                .map(|coming| (coming.lines.first().copied().unwrap_or_default(), &coming.record))
                .collect(),
        }
    }
}

/// The two acts at the end; gives whether the file is done with.
fn end(desk: &mut Desk, ui: &mut Ui, coming: &mut Coming) -> bool {
    let number = coming.what.records().len();
    let mut is_done = false;
    let is_looked = coming.looked == Some(coming.asked);
    ui.horizontal_wrapped(|ui| {
        // What is imported is what was shown, so all of it is shown before.
        let whole = match &coming.what {
            What::Other { table, preview, whole: false, .. } => Some((table.rows.len(), preview.to_choose.is_empty())),
            _ => None,
        };
        if !is_looked {
            if desk.is_at_work(LOOKING) {
                ui.label(look::soft(ui, t!("season-log-the-rows-are-being-looked-at")));
            } else if ui.button(t!("season-log-look-at-the-rows-again")).clicked() {
                look_again(desk, coming, coming.asked.rows);
            }
        } else if let Some((rows, is_ready)) = whole {
            let words = t!("season-log-look-at-all-rows", rows = rows);
            let look = ui.add_enabled(is_ready, egui::Button::new(words));
            if look.on_disabled_hover_text(t!("season-log-choose-first-what-is-asked")).clicked() {
                look_again(desk, coming, usize::MAX);
            }
        } else if ui
            .add_enabled(number > 0, egui::Button::new(t!("season-log-import-number", count = number)))
            .on_disabled_hover_text(t!("season-log-no-row-becomes-a-record"))
            .clicked()
        {
            let mut entered = Vec::new();
            desk.document.edit(|farm| {
                entered = match &coming.what {
                    What::Own { reading, as_new, .. } => records_csv::enter(farm, &reading.records, *as_new).entered,
                    What::Other { preview, .. } => records_import::enter(farm, &preview.records),
                };
            });
            desk.tell(t!("season-log-imported-from", count = entered.len(), source = coming.source));
            // Whatever the list showed, it shows what came.
            desk.season_log.filter.clear();
            desk.season_log.season = Season::All;
            desk.season_log.chosen = entered.into_iter().next();
            is_done = true;
        }
        if boxes::act(ui, t!("season-log-leave-it")).accessible_name(t!("season-log-leave-the-file")).clicked() {
            is_done = true;
        }
    });
    is_done
}

/// What comes of an export.
fn own(ui: &mut Ui, reading: &Reading, meets: &[Meets], alike: &[String], as_new: &mut bool) {
    let of = |what: Meets| meets.iter().filter(|meets| **meets == what).count();
    let (new, same, another) = (of(Meets::Nothing), of(Meets::Same), of(Meets::Another));
    ui.label(t!("season-log-in-a-file-of-exported-records", count = meets.len(), new = new));
    if same > 0 {
        boxes::say(ui, &t!("season-log-here-already-word-for-word-and", count = same));
    }
    if another > 0 {
        ui.add_space(4.0);
        let words = t!("season-log-the-id-of-a-record-here", count = another);
        mark::line(ui, Level::Check, &words);
        boxes::tick(ui, as_new, t!("season-log-take-these-as-new-records-beside"));
        if !*as_new {
            for (coming, _) in
                reading.records.iter().zip(meets).filter(|(_, meets)| **meets == Meets::Another).take(FEW_RECORDS)
            {
                boxes::say(ui, &t!("season-log-line-left-out-is-another-record", line = coming.line, id = coming.id));
            }
            if another > FEW_RECORDS {
                boxes::say(ui, &t!("season-log-and-more", another = another - FEW_RECORDS));
            }
        }
    }
    for like in alike.iter().take(FEW_RECORDS) {
        mark::line(ui, Level::Check, &format!("{}.", capital(like)));
    }
    if alike.len() > FEW_RECORDS {
        boxes::say(ui, &t!("season-log-and-more-look-like-one-in", alike = alike.len() - FEW_RECORDS));
    }
    for note in &reading.notes {
        boxes::say(ui, &format!("{}.", capital(note)));
    }
}

/// What comes of a spreadsheet; of how many rows, where only the first were looked at.
fn other(ui: &mut Ui, preview: &Preview, mapping: &mut Mapping, of: Option<usize>) {
    ui.add_space(4.0);
    if let Some(rows) = of {
        boxes::say(ui, &t!("season-log-the-first-of-rows-are-looked", first = FIRST_ROWS, rows = rows));
    }
    for problem in &preview.to_choose {
        mark::line(ui, Level::Check, &format!("{}.", capital(problem)));
    }
    if preview.to_choose.is_empty() {
        let rows: usize = preview.records.iter().map(|coming| coming.lines.len()).sum();
        ui.label(match preview.records.len() {
            0 => t!("season-log-no-line-of-the-file-gives").to_owned(),
            records => t!("season-log-of-nothing-enters-the-log-before", records = records, lines = rows),
        });
    }
    if preview.alike > 0 {
        let words = t!("season-log-like-one-in-the-log-the", count = preview.alike);
        mark::line(ui, Level::Check, &words);
        boxes::tick(ui, &mut mapping.alike, t!("season-log-take-records-that-look-like-one"));
    }
    for note in &preview.notes {
        boxes::say(ui, &format!("{}.", capital(note)));
    }
}

/// The records that would enter, a few at a time.
fn records(ui: &mut Ui, records: &[(u64, &Record)], from: &mut usize, units: Units) {
    if records.is_empty() {
        return;
    }
    *from = (*from).min(records.len() - 1);
    ui.add_space(4.0);
    let gap = ui.spacing().item_spacing.x;
    let (line, day, start, area) = (44.0, 92.0, 48.0, 84.0);
    let rest = (ui.available_width() - line - day - start - area - 5.0 * gap).max(160.0);
    let (field, products) = (rest * 0.3, rest * 0.7);
    let widths = [(line, false), (day, false), (start, false), (field, false), (area, true), (products, false)];
    let row = |ui: &mut Ui, texts: [String; 6], is_head: bool| {
        ui.horizontal(|ui| {
            for (text, (width, right)) in texts.into_iter().zip(widths) {
                cell(ui, width, right, |ui| {
                    let text = if is_head { look::soft(ui, text) } else { text.into() };
                    ui.add(Label::new(text).truncate());
                });
            }
        });
    };
    let heads = [
        t!("season-log-head-line"),
        t!("season-log-head-day"),
        t!("season-log-head-start"),
        t!("season-log-head-fields"),
        t!("season-log-head-area"),
        t!("season-log-head-products"),
    ];
    row(ui, heads.map(str::to_owned), true);
    for (line, record) in records.iter().skip(*from).take(FEW_RECORDS) {
        let fields: Vec<&str> = record.fields.values().map(|field| field.name.as_str()).collect();
        let products: Vec<String> = record.lines.iter().map(|line| format!("{} {}", line.name, line.amount)).collect();
        let area = match record.fields.first() {
            Some((_, only)) if record.fields.len() == 1 => only.area.to_string(),
            _ => figures::area(record.area(), units),
        };
        let start = record.start.map(clock).unwrap_or_default();
        row(
            ui,
            [line.to_string(), dates::short(record.date), start, fields.join(", "), area, products.join("; ")],
            false,
        );
    }
    if records.len() > FEW_RECORDS {
        ui.horizontal_wrapped(|ui| {
            let last = (*from + FEW_RECORDS).min(records.len());
            ui.label(look::soft(ui, t!("season-log-to-of", from = *from + 1, last = last, records = records.len())));
            if boxes::act(ui, t!("season-log-those-before"))
                .accessible_name(t!("season-log-records-before-these"))
                .clicked()
            {
                *from = from.saturating_sub(FEW_RECORDS);
            }
            if boxes::act(ui, t!("season-log-those-after"))
                .accessible_name(t!("season-log-records-after-these"))
                .clicked()
                && last < records.len()
            {
                *from += FEW_RECORDS;
            }
        });
    }
}

/// The columns of the file, one a line, with their first texts, what they hold and in which unit.
fn columns(ui: &mut Ui, table: &Table, mapping: &mut Mapping, shown: &mut Vec<usize>) {
    ui.label(look::heading(t!("season-log-what-the-columns-hold")));
    let gap = ui.spacing().item_spacing.x;
    let (holds_width, unit_width) = (168.0, 150.0);
    let room = (ui.available_width() - holds_width - unit_width - 3.0 * gap).max(200.0);
    let (name_width, texts_width) = (room * 0.4, room * 0.6);
    ui.horizontal(|ui| {
        for (width, words) in [
            (name_width, t!("season-log-head-column")),
            (texts_width, t!("season-log-its-first-lines")),
            (holds_width, t!("season-log-head-holds")),
            (unit_width, t!("season-log-head-unit")),
        ] {
            cell(ui, width, false, |ui| drop(ui.label(look::soft(ui, words))));
        }
    });
    for at in shown.clone() {
        let Some(heading) = table.header.get(at) else { continue };
        let texts: Vec<String> = table.first(at, 3).map(|text| text.chars().take(24).collect()).collect();
        ui.horizontal(|ui| {
            ui.set_min_height(look::ROW);
            cell(ui, name_width, false, |ui| drop(ui.add(Label::new(heading).truncate())));
            cell(ui, texts_width, false, |ui| {
                ui.add(Label::new(look::soft(ui, texts.join("   "))).truncate());
            });
            choices(ui, table, mapping, (at, heading), (holds_width, unit_width));
        });
    }
    let hidden = table.header.len() - shown.len();
    if hidden > 0 {
        let words = t!("season-log-show-more-columns", count = hidden);
        if boxes::act(ui, &words).clicked() {
            *shown = (0..table.header.len()).collect();
        }
    }
    ui.add_space(4.0);
    ui.horizontal_wrapped(|ui| {
        ui.label(look::soft(ui, t!("season-log-days-with-strokes")));
        let all: Vec<Option<DayOrder>> = std::iter::once(None).chain(DayOrder::ALL.map(Some)).collect();
        let say = |order: &Option<DayOrder>| order.map_or(t!("season-log-not-said"), DayOrder::name).to_owned();
        boxes::choice(ui, t!("season-log-how-days-with-strokes-are-written"), &mut mapping.days, &all, say, 150.0);
        ui.add_space(look::GRID);
        ui.label(look::soft(ui, t!("season-log-figures-are-written")));
        let all: Vec<Option<Comma>> = std::iter::once(None).chain(Comma::ALL.map(Some)).collect();
        let say = |comma: &Option<Comma>| comma.map_or(t!("season-log-not-said"), Comma::name).to_owned();
        boxes::choice(ui, t!("season-log-how-figures-are-written"), &mut mapping.comma, &all, say, 150.0);
    });
    boxes::hairline(ui);
}

/// What a column holds, and its unit.
fn choices(ui: &mut Ui, table: &Table, mapping: &mut Mapping, (at, heading): (usize, &str), widths: (f32, f32)) {
    let own = mapping.takes.iter().find(|take| take.column == at).cloned();
    let before = own.as_ref().map(|take| take.holds);
    let mut holds = before;
    let all: Vec<Option<Holds>> = std::iter::once(None).chain(Holds::ALL.map(Some)).collect();
    let say = |holds: &Option<Holds>| holds.map_or(t!("season-log-not-taken"), Holds::name).to_owned();
    boxes::choice(ui, &t!("season-log-what-holds", heading = heading), &mut holds, &all, say, widths.0);
    let mut unit = own.as_ref().map(|take| take.unit.clone()).unwrap_or_default();
    match holds {
        Some(kept) if !kept.units().is_empty() => {
            if !unit.is_empty() && !kept.is_unit(&unit) {
                unit.clear();
            }
            let mut all: Vec<String> =
                std::iter::once("").chain(kept.units().iter().copied()).map(str::to_owned).collect();
            // One that the heading says may be written otherwise.
            if !all.contains(&unit) {
                all.insert(1, unit.clone());
            }
            let beside = kept.unit_column().is_some_and(|column| mapping.of(column).is_some());
            let empty = if beside {
                t!("season-log-from-its-column")
            } else if table.is_bare(at) {
                t!("season-log-choose")
            } else {
                t!("season-log-as-written")
            };
            let say = |unit: &String| if unit.is_empty() { empty.to_owned() } else { unit.clone() };
            boxes::choice(ui, &t!("season-log-unit-of", heading = heading), &mut unit, &all, say, widths.1);
        }
        _ => unit.clear(),
    }
    if holds != before || own.is_some_and(|own| own.unit != unit) {
        mapping.take(at, holds, &unit);
        // Another column of days or figures may show how they are written.
        if holds != before {
            let (days, comma) = (mapping.days, mapping.comma);
            records_import::guess_marks(table, mapping);
            mapping.days = mapping.days.or(days);
            mapping.comma = mapping.comma.or(comma);
        }
    }
}
