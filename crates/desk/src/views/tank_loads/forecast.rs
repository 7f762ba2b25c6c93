//! The forecast: what is there, reading it from a file with a look at what its columns hold, and typing hours by hand.

use std::path::Path;

use egui::{Label, Ui};
use jiff::civil::{Date, DateTime};
use jiff::tz::{AmbiguousOffset, TimeZone, TimeZoneDatabase};
use tankard_core::farm::forecast;
use tankard_core::farm::{Farm, FileLayout, Forecast, Holds, Hour, Take};
use tankard_core::finding::Level;
use tankard_core::language::days::{clock, long_date};
use tankard_core::t;
use tankard_core::words::capital;
use tankard_file::forecast_csv::{self, Reading, Table, guess, needs_unit, read, unit_words, units};

use super::{cell, sheet};
use crate::app::{Desk, Failed, Task};
use crate::command::View;
use crate::files::Purpose;
use crate::look;
use crate::parts::{boxes, dates, left_out, mark};

/// So many columns are all shown; of more only those that are taken, until all are asked for.
const FEW_COLUMNS: usize = 12;
/// The hour that is offered first on a day without any.
const FIRST_HOUR: i8 = 5;

/// What is being read or typed.
#[derive(Default)]
pub(crate) struct State {
    coming: Option<Coming>,
    /// Whether the table to type in is open.
    by_hand: bool,
    /// The hour to add, where one was chosen.
    hour: Option<i8>,
}

/// A file that is looked at and not taken yet.
struct Coming {
    source: String,
    table: Table,
    layout: FileLayout,
    reading: Reading,
    /// The time zone it was read for.
    zone: String,
    /// The columns shown.
    shown: Vec<usize>,
    /// The first line shown of those left out.
    line: usize,
}

impl Coming {
    fn read_again(&mut self) {
        self.reading = read(&self.table, &self.layout, zone(&self.zone).as_ref());
        self.line = 0;
    }
}

fn zone_name(farm: &Farm) -> &str {
    farm.place.as_ref().map_or("", |place| place.zone.trim())
}

fn zone(name: &str) -> Option<TimeZone> {
    TimeZoneDatabase::bundled().get(name).ok()
}

/// Looks at the file that was chosen.
pub fn read_file(desk: &mut Desk, path: &Path) {
    let source = path.file_name().map(|name| name.to_string_lossy().into_owned()).unwrap_or_default();
    let farm = desk.document.farm();
    let (layouts, zone, path) = (farm.forecast.layouts.clone(), zone_name(farm).to_owned(), path.to_owned());
    desk.start(
        Task::reading(&path, t!("tank-loads-the-forecast-was-not-read")).in_place("forecast"),
        move |going| {
            let unread = |error| Failed::Because(format!("{error}: {}", path.display()));
            let table = forecast_csv::open(&path).map_err(unread)?;
            going.goes_on()?;
            let layout = guess(&table, &layouts);
            let is_taken = |at: &usize| {
                let heading = table.header.get(*at);
                table.header.len() <= FEW_COLUMNS || layout.takes.iter().any(|take| Some(&take.column) == heading)
            };
            let shown = (0..table.header.len()).filter(is_taken).collect();
            let reading = Reading::default();
            let mut coming = Coming { source, table, layout, reading, zone, shown, line: 0 };
            coming.read_again();
            Ok(coming)
        },
        |desk, coming| {
            let source = coming.source.clone();
            desk.tank_loads.forecast.coming = Some(coming);
            desk.tank_loads.forecast.by_hand = false;
            desk.tell_where(View::TankLoads, &t!("tank-loads-is-read", source = source));
        },
    );
}

/// Shows the sheet.
pub fn show(desk: &mut Desk, ui: &mut Ui) {
    sheet(ui, |ui| {
        ui.label(look::heading(t!("tank-loads-forecast")));
        ui.add(Label::new(said(&desk.document.farm().forecast)).wrap());
        ui.horizontal_wrapped(|ui| {
            if ui
                .button(t!("tank-loads-read-a-file"))
                .accessible_name(t!("tank-loads-read-a-forecast-from-a-file"))
                .clicked()
            {
                let suggested = desk.beside("csv").with_file_name("forecast.csv");
                desk.ask_file(Purpose::ReadForecast, suggested, ui.ctx());
            }
            let by_hand = desk.tank_loads.forecast.by_hand;
            if super::toggle(ui, by_hand, t!("tank-loads-type-hours-by-hand")) {
                desk.tank_loads.forecast.by_hand = !by_hand;
            }
        });
        boxes::say(ui, t!("tank-loads-a-forecast-is-no-measurement-measure"));
        if let Some(coming) = desk.tank_loads.forecast.coming.take() {
            ui.add_space(look::GRID);
            boxes::hairline(ui);
            desk.tank_loads.forecast.coming = look_at(desk, ui, coming);
        }
        if desk.tank_loads.forecast.by_hand {
            ui.add_space(look::GRID);
            boxes::hairline(ui);
            typed(desk, ui);
        }
    });
}

fn time(at: DateTime) -> String {
    dates::moment(at)
}

fn hours(count: usize) -> String {
    t!("tank-loads-hours", count = count)
}

/// From the first of some hours to the last.
fn span(hours: &[Hour]) -> String {
    match hours {
        [] => String::new(),
        [only] => time(only.at),
        [first, .., last] => t!("tank-loads-at-to-at2", at = time(first.at), at2 = time(last.at)),
    }
}

/// What there is now, in words.
fn said(forecast: &Forecast) -> String {
    if forecast.hours.is_empty() {
        return t!("tank-loads-there-is-none-yet-read-one").to_owned();
    }
    let read = forecast.read.map(|at| t!("tank-loads-read-at", day = dates::weekday(at.date()), time = clock(at)));
    let source = match forecast.source.as_str() {
        "" => t!("tank-loads-not-said-where-from").to_owned(),
        forecast::BY_HAND => t!("tank-loads-typed-by-hand").to_owned(),
        _ => t!("tank-loads-from", file = forecast.source_said()),
    };
    let parts = [hours(forecast.hours.len()), span(&forecast.hours), source];
    parts.into_iter().chain(read).collect::<Vec<_>>().join(", ")
}

/// A file that is looked at; gives it back until it is taken or left.
fn look_at(desk: &mut Desk, ui: &mut Ui, mut coming: Coming) -> Option<Coming> {
    let now = zone_name(desk.document.farm());
    if now != coming.zone {
        now.clone_into(&mut coming.zone);
        coming.read_again();
    }
    ui.add_space(4.0);
    ui.add(Label::new(look::heading(t!("tank-loads-what-the-columns-of-hold", source = coming.source))).wrap());
    columns(ui, &mut coming);
    ui.add_space(4.0);
    for problem in &coming.reading.to_choose {
        mark::line(ui, Level::Check, &sentence(problem));
    }
    let count = coming.reading.hours.len();
    if let Some(first) = coming.reading.hours.first() {
        ui.add(Label::new(format!("{}, {}", hours(count), span(&coming.reading.hours))).wrap());
        boxes::say(ui, &t!("tank-loads-the-first", first = in_words(first)));
    } else if coming.reading.to_choose.is_empty() {
        ui.label(t!("tank-loads-no-line-of-the-file-can"));
    }
    for note in &coming.reading.notes {
        boxes::say(ui, &sentence(note));
    }
    left_out::show(ui, &coming.reading.refused, &mut coming.line);
    if let Some(first) = coming.reading.hours.first()
        && desk.document.farm().forecast.hours.iter().any(|hour| (hour.at, hour.again) >= (first.at, first.again))
    {
        boxes::say(ui, &t!("tank-loads-they-replace-the-forecast-from-on", at = time(first.at)));
    }
    let mut done = false;
    ui.horizontal_wrapped(|ui| {
        let words = match count {
            0 => t!("tank-loads-take-the-hours").to_owned(),
            1 => t!("tank-loads-take-this-hour").to_owned(),
            _ => t!("tank-loads-take-these", count = count),
        };
        let take = ui.add_enabled(count > 0, egui::Button::new(words));
        if take.on_disabled_hover_text(t!("tank-loads-no-hour-was-read")).clicked() {
            let (taken, layout, now) = (coming.reading.hours.clone(), coming.layout.clone(), desk.now());
            desk.document.edit(|farm| farm.forecast.take(taken, &coming.source, now, layout));
            desk.tell(t!("tank-loads-taken-from", count = count, source = coming.source));
            done = true;
        }
        if boxes::act(ui, t!("tank-loads-leave-it")).accessible_name(t!("tank-loads-leave-the-file")).clicked() {
            done = true;
        }
    });
    (!done).then_some(coming)
}

/// A sentence of what the reader says.
fn sentence(text: &str) -> String {
    format!("{}.", capital(text))
}

/// An hour as it was understood.
fn in_words(hour: &Hour) -> String {
    let known = [
        (Holds::Temperature, hour.temperature.as_ref().map(ToString::to_string)),
        (Holds::Higher, hour.higher.as_ref().map(ToString::to_string)),
        (Holds::Humidity, hour.humidity.as_ref().map(ToString::to_string)),
        (Holds::DewPoint, hour.dew_point.as_ref().map(ToString::to_string)),
        (Holds::Wind, hour.wind.as_ref().map(ToString::to_string)),
        (Holds::Gust, hour.gust.as_ref().map(ToString::to_string)),
        (Holds::WindFrom, hour.wind_from.as_ref().map(ToString::to_string)),
        (Holds::Rain, hour.rain.as_ref().map(ToString::to_string)),
        (Holds::RainChance, hour.rain_chance.as_ref().map(ToString::to_string)),
        (Holds::Cloud, hour.cloud.as_ref().map(ToString::to_string)),
    ];
    let parts = known.into_iter().filter_map(|(holds, text)| Some(format!("{} {}", holds.name(), text?)));
    std::iter::once(time(hour.at)).chain(parts).collect::<Vec<_>>().join(", ")
}

/// The columns of the file, one a line, with their first texts, what they hold and in which unit.
fn columns(ui: &mut Ui, coming: &mut Coming) {
    let gap = ui.spacing().item_spacing.x;
    let (holds_width, unit_width) = (128.0, 150.0);
    let room = (ui.available_width() - holds_width - unit_width - 3.0 * gap).max(90.0);
    let is_wide = room > 380.0;
    let (name_width, texts_width) = if is_wide { (room * 0.42, room * 0.58 - gap) } else { (room, 0.0) };
    ui.horizontal(|ui| {
        cell(ui, name_width, false, |ui| drop(ui.label(look::soft(ui, t!("tank-loads-column")))));
        if is_wide {
            cell(ui, texts_width, false, |ui| drop(ui.label(look::soft(ui, t!("tank-loads-its-first-lines")))));
        }
        cell(ui, holds_width, false, |ui| drop(ui.label(look::soft(ui, t!("tank-loads-holds")))));
        cell(ui, unit_width, false, |ui| drop(ui.label(look::soft(ui, t!("tank-loads-unit")))));
    });
    let mut layout = coming.layout.clone();
    for at in coming.shown.clone() {
        let Some(heading) = coming.table.header.get(at) else { continue };
        let texts: Vec<String> =
            coming.table.rows.iter().take(3).map(|row| row.cell(at).chars().take(24).collect()).collect();
        let texts = texts.join("   ");
        ui.horizontal(|ui| {
            ui.set_min_height(look::ROW);
            let named = |ui: &mut Ui| {
                ui.add(Label::new(heading).truncate());
            };
            if is_wide {
                cell(ui, name_width, false, named);
                cell(ui, texts_width, false, |ui| drop(ui.add(Label::new(look::soft(ui, &texts)).truncate())));
            } else {
                super::column(ui, name_width, |ui| {
                    ui.spacing_mut().item_spacing.y = 0.0;
                    named(ui);
                    ui.add(Label::new(look::soft(ui, &texts)).truncate());
                });
            }
            choices(ui, &coming.table, &mut layout, (at, heading), (holds_width, unit_width));
        });
    }
    let hidden = coming.table.header.len() - coming.shown.len();
    if hidden > 0 {
        let words = t!("tank-loads-show-more-columns", hidden = hidden);
        if boxes::act(ui, &words).clicked() {
            coming.shown = (0..coming.table.header.len()).collect();
        }
    }
    if layout != coming.layout {
        coming.layout = layout;
        coming.read_again();
    }
}

/// What a column holds, and its unit.
fn choices(ui: &mut Ui, table: &Table, layout: &mut FileLayout, (at, heading): (usize, &str), widths: (f32, f32)) {
    let place = layout.takes.iter().position(|take| take.column == heading);
    let own = place.and_then(|place| layout.takes.get(place)).cloned();
    let mut holds = own.as_ref().map(|take| take.holds);
    let all: Vec<Option<Holds>> = std::iter::once(None).chain(Holds::ALL.map(Some)).collect();
    let say = |holds: &Option<Holds>| holds.map_or(t!("tank-loads-not-taken"), Holds::name).to_owned();
    boxes::choice(ui, &t!("tank-loads-what-holds", heading = heading), &mut holds, &all, say, widths.0);
    let mut unit = own.as_ref().map(|take| take.unit.clone()).unwrap_or_default();
    if let Some(kept) = holds.filter(|holds| needs_unit(*holds)) {
        if !units(kept).contains(&unit.as_str()) {
            unit.clear();
        }
        let is_day = matches!(kept, Holds::DateAndTime | Holds::Date);
        let empty = if is_day || table.is_bare(at) { t!("tank-loads-choose") } else { t!("tank-loads-as-written") };
        let all: Vec<String> = std::iter::once("").chain(units(kept).iter().copied()).map(str::to_owned).collect();
        let say = |unit: &String| if unit.is_empty() { empty } else { unit_words(unit) }.to_owned();
        boxes::choice(ui, &t!("tank-loads-unit-of", heading = heading), &mut unit, &all, say, widths.1);
    } else {
        unit.clear();
    }
    let now = holds.map(|holds| Take { column: heading.to_owned(), holds, unit });
    if now == own {
        return;
    }
    match (place.and_then(|place| layout.takes.get_mut(place)), now) {
        (Some(take), Some(now)) => *take = now,
        (Some(_), None) => layout.takes.retain(|take| take.column != heading),
        (None, Some(now)) => layout.takes.push(now),
        (None, None) => {}
    }
}

/// The hours of the pass's day, to type in.
fn typed(desk: &mut Desk, ui: &mut Ui) {
    let farm = desk.document.farm();
    let pass = desk.tank_loads.chosen.as_ref().and_then(|id| farm.passes.get(id));
    let day = pass.map_or_else(|| desk.now().date(), |pass| pass.date);
    let before: Vec<Hour> = farm.forecast.hours.iter().filter(|hour| hour.at.date() == day).cloned().collect();
    let free = free_hours(farm, day, &before);
    let mut after = before.clone();
    ui.add_space(4.0);
    ui.label(look::heading(t!("tank-loads-hours-of", day = long_date(day))));
    if !after.is_empty() {
        table(ui, &mut after);
    }
    add(ui, &mut desk.tank_loads.forecast.hour, &mut after, day, &free);
    if after != before {
        let now = desk.now();
        desk.document.edit(|farm| farm.forecast.take_day(day, after, now));
    }
}

/// The hours of a day that are not there yet and that its clock shows.
fn free_hours(farm: &Farm, day: Date, there: &[Hour]) -> Vec<i8> {
    let zone = zone(zone_name(farm));
    let is_shown = |hour: i8| {
        let at = day.at(hour, 0, 0, 0);
        zone.as_ref()
            .is_none_or(|zone| !matches!(zone.to_ambiguous_timestamp(at).offset(), AmbiguousOffset::Gap { .. }))
    };
    (0..24).filter(|hour| is_shown(*hour) && there.iter().all(|own| own.at.hour() != *hour)).collect()
}

fn add(ui: &mut Ui, chosen: &mut Option<i8>, hours: &mut Vec<Hour>, day: Date, free: &[i8]) {
    let Some(first) = free.first().copied() else { return };
    // The next after the last one there, or morning.
    let next = hours.last().map_or(FIRST_HOUR, |hour| hour.at.hour().saturating_add(1));
    let usual = free.iter().copied().find(|hour| *hour >= next).unwrap_or(first);
    let mut hour = chosen.filter(|hour| free.contains(hour)).unwrap_or(usual);
    let clock = |hour: &i8| clock(day.at(*hour, 0, 0, 0));
    ui.add_space(4.0);
    ui.horizontal_wrapped(|ui| {
        ui.label(look::soft(ui, t!("tank-loads-hour")));
        let before = hour;
        boxes::choice(ui, t!("tank-loads-hour-to-add"), &mut hour, free, clock, 84.0);
        if hour != before {
            *chosen = Some(hour);
        }
        if ui.button(t!("tank-loads-add", hour = clock(&hour))).clicked() {
            hours.push(Hour::new(day.at(hour, 0, 0, 0)));
            hours.sort_by_key(|hour| (hour.at, hour.again));
            *chosen = None;
        }
    });
    boxes::say(ui, t!("tank-loads-each-figure-with-its-unit-what"));
}

/// One hour a line, or two lines where room is short.
fn table(ui: &mut Ui, hours: &mut Vec<Hour>) {
    let names = [
        t!("tank-loads-air"),
        t!("tank-loads-humidity"),
        t!("tank-loads-wind"),
        t!("tank-loads-gusts"),
        t!("tank-loads-wind-from"),
        t!("tank-loads-rain"),
        t!("tank-loads-cloud"),
    ];
    let gap = ui.spacing().item_spacing.x;
    let (time_width, act_width) = (46.0, 62.0);
    let room = ui.available_width() - time_width - act_width - 2.0 * gap;
    let width = |boxes: f32| ((room - boxes * gap) / boxes).floor();
    let in_one = width(7.0) >= 74.0;
    let (first, width) = if in_one { (7, width(7.0).min(110.0)) } else { (4, width(4.0).clamp(56.0, 110.0)) };
    let head = |ui: &mut Ui, names: &[&str]| {
        ui.horizontal(|ui| {
            super::column(ui, time_width, |_| {});
            for name in names {
                super::column(ui, width, |ui| drop(ui.label(look::soft(ui, *name))));
            }
        });
    };
    let (above, below) = names.split_at(first);
    ui.scope(|ui| {
        ui.spacing_mut().item_spacing.y = 0.0;
        head(ui, above);
        if !below.is_empty() {
            head(ui, below);
        }
    });
    let mut removed = None;
    for (at, hour) in hours.iter_mut().enumerate() {
        let clock = clock(hour.at);
        let when = if hour.again { t!("tank-loads-again", time = clock) } else { clock.clone() };
        ui.push_id(("hour", hour.at.hour(), hour.again), |ui| {
            ui.horizontal(|ui| {
                cell(ui, time_width, false, |ui| drop(ui.label(look::strong(&when))));
                (0..first).for_each(|part| one(ui, hour, part, &when, width));
                let response =
                    boxes::act(ui, t!("parts-remove")).accessible_name(t!("tank-loads-remove-hour", when = when));
                if response.clicked() {
                    removed = Some(at);
                }
            });
            if first < names.len() {
                ui.horizontal(|ui| {
                    cell(ui, time_width, false, |_| {});
                    (first..names.len()).for_each(|part| one(ui, hour, part, &when, width));
                });
                ui.add_space(4.0);
            }
        });
    }
    if let Some(at) = removed {
        hours.remove(at);
    }
}

/// One box of an hour, in the order of the table.
fn one(ui: &mut Ui, hour: &mut Hour, part: usize, when: &str, width: f32) {
    match part {
        0 => boxes::quantity_hinted(
            ui,
            &t!("tank-loads-air-at", when = when),
            &mut hour.temperature,
            width,
            t!("tank-loads-air"),
        ),
        1 => boxes::quantity_hinted(
            ui,
            &t!("tank-loads-humidity-at", when = when),
            &mut hour.humidity,
            width,
            t!("tank-loads-humidity"),
        ),
        2 => boxes::quantity_hinted(
            ui,
            &t!("tank-loads-wind-at", when = when),
            &mut hour.wind,
            width,
            t!("tank-loads-wind"),
        ),
        3 => boxes::quantity_hinted(
            ui,
            &t!("tank-loads-gusts-at", when = when),
            &mut hour.gust,
            width,
            t!("tank-loads-gusts"),
        ),
        4 => boxes::quantity_hinted(
            ui,
            &t!("tank-loads-wind-from-at", when = when),
            &mut hour.wind_from,
            width,
            t!("tank-loads-from-where"),
        ),
        5 => boxes::quantity_hinted(
            ui,
            &t!("tank-loads-rain-at", when = when),
            &mut hour.rain,
            width,
            t!("tank-loads-rain"),
        ),
        _ => boxes::quantity_hinted(
            ui,
            &t!("tank-loads-cloud-at", when = when),
            &mut hour.cloud,
            width,
            t!("tank-loads-cloud"),
        ),
    }
}
