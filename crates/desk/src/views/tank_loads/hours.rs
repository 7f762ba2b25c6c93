//! The hours of a pass: the day as a strip, what the forecast has for an hour and what binds in it, all limits, and the
//! passes of the day in their best order.

use egui::{Label, ScrollArea, Ui};
use jiff::civil::DateTime;
use tankard_core::day::{DayPlan, Slot};
use tankard_core::farm::{Farm, Hour, Id, forecast};
use tankard_core::finding::Subject;
use tankard_core::language::days::{clock, long_date};
use tankard_core::plan::Plan;
use tankard_core::quantity::{AsTyped, Duration, Quantity, Units};
use tankard_core::t;
use tankard_core::weather::{Hours, JudgedHour, Limit, Outlook, Sky, Verdict};

use super::{cell, column, sheet};
use crate::app::Desk;
use crate::look;
use crate::parts::strip::{self, Cell, Marks};
use crate::parts::{boxes, dates, findings};
use crate::report::words::{answer, day_words, judged, slot_words};

/// Below this width what stands side by side comes one under the other.
const NARROW: f32 = 720.0;
/// Width of a label before a figure.
const LABEL: f32 = 92.0;

/// Shows the page.
pub(super) fn show(desk: &mut Desk, ui: &mut Ui, id: &str, plan: &Plan) {
    let width = ui.available_width() - 12.0;
    ScrollArea::vertical().id_salt(("hours", id)).auto_shrink(false).show(ui, |ui| {
        ui.set_width(width);
        sheet(ui, |ui| day(desk, ui, id, plan));
        ui.add_space(look::GRID);
        let day = desk.document.farm().passes.get(id).map(|pass| pass.date);
        if let Some(planned) = day.and_then(|day| desk.day(day))
            && planned.slots().count() > 1
        {
            sheet(ui, |ui| passes(desk, ui, id, &planned));
            ui.add_space(look::GRID);
        }
        if !plan.hours.limits.is_empty() {
            sheet(ui, |ui| limits(ui, &plan.hours));
            ui.add_space(look::GRID);
        }
        super::forecast::show(desk, ui);
    });
}

/// "05:00 allowed", "09:00 forbidden: wind at most 10 mph".
fn name_of(hours: &Hours, hour: &JudgedHour) -> String {
    let binds: Vec<String> = hour.binds.iter().filter_map(|(at, _)| hours.limits.get(*at)).map(Limit::text).collect();
    let why = if binds.is_empty() { String::new() } else { format!(": {}", binds.join("; ")) };
    let part = hour.part.filter(|(_, verdict)| *verdict != hour.verdict);
    let part = part.map(|(span, verdict)| format!(", {} {}", span.words(), verdict.word())).unwrap_or_default();
    {
        let at = if hour.again { t!("tank-loads-again", time = clock(hour.at)) } else { clock(hour.at) };
        format!("{at} {}{part}{why}", hour.verdict.word())
    }
}

fn day(desk: &mut Desk, ui: &mut Ui, id: &str, plan: &Plan) {
    let farm = desk.document.farm();
    let units = farm.units;
    let Some(pass) = farm.passes.get(id) else { return };
    ui.label(look::heading(t!("tank-loads-when-may-it-be-sprayed-on", date = long_date(pass.date))));
    if plan.hours.hours.is_empty() {
        let words = if farm.forecast.hours.is_empty() {
            t!("tank-loads-the-farm-has-no-forecast-yet")
        } else {
            t!("tank-loads-the-forecast-does-not-reach-this")
        };
        ui.add(Label::new(words).wrap());
        cautions(ui, None);
        return;
    }
    ui.add(Label::new(look::strong(answer(&plan.hours, units))).wrap());
    let cells = strip::cells(pass.date, &plan.hours.hours, |hour| name_of(&plan.hours, hour));
    let best = plan.hours.best.map(|span| (span, span.words()));
    let marks = Marks { sun: plan.hours.sun, best };
    let chosen = chosen(desk, &plan.hours, &cells);
    if let Some(picked) = strip::show(ui, t!("tank-loads-hours-of-the-day"), &cells, &marks, chosen) {
        desk.tank_loads.hour = Some(picked);
    }
    strip::legend(ui);
    ui.add_space(4.0);
    boxes::hairline(ui);
    ui.add_space(4.0);
    if let Some(key) = self::chosen(desk, &plan.hours, &cells) {
        hour(desk, ui, id, &plan.hours, key);
    }
    cautions(ui, Some(desk.document.farm()));
}

/// The hour that is shown: the one chosen, else the first of the best span, else the first that is allowed, else noon.
fn chosen(desk: &Desk, hours: &Hours, cells: &[Cell]) -> Option<(DateTime, bool)> {
    let key = |cell: &Cell| (cell.at, cell.again);
    let in_best = |cell: &&Cell| {
        let Some(best) = hours.best else { return false };
        hours.hours.iter().any(|hour| {
            let span = hour.span();
            (hour.at, hour.again) == key(cell) && span.from <= best.from && best.from < span.to
        })
    };
    desk.tank_loads
        .hour
        .filter(|wanted| cells.iter().any(|cell| key(cell) == *wanted))
        .or_else(|| cells.iter().find(in_best).map(key))
        .or_else(|| cells.iter().find(|cell| cell.verdict == Some(Verdict::Allowed)).map(key))
        .or_else(|| cells.get(12).map(key))
}

/// What is reckoned once for a state of the farm and not anew in each frame.
#[derive(Default)]
pub(crate) struct Kept {
    hour: Option<((u64, Id, DateTime, bool), Looked)>,
}

/// What an hour comes to, and why it is bound, beside its `binds`.
#[derive(Clone)]
struct Looked {
    sky: Option<Sky>,
    reasons: Vec<String>,
}

fn looked(desk: &mut Desk, id: &str, hours: &Hours, judged: &JudgedHour) -> Looked {
    let wanted = (desk.document.revision(), id.to_owned(), judged.at, judged.again);
    if let Some((known, looked)) = &desk.tank_loads.kept.hour
        && *known == wanted
    {
        return looked.clone();
    }
    let farm = desk.document.farm();
    let day = judged.at.date();
    let outlook = Outlook::of_days(farm, day, day);
    let sky = outlook.skies().find(|sky| (sky.at, sky.again) == (judged.at, judged.again)).cloned();
    let looked = Looked { sky, reasons: hours.reasons(&outlook, judged, farm.units) };
    desk.tank_loads.kept.hour = Some((wanted, looked.clone()));
    looked
}

/// What the forecast has for an hour, and what binds in it.
fn hour(desk: &mut Desk, ui: &mut Ui, id: &str, hours: &Hours, key: (DateTime, bool)) {
    let Some(judged) = hours.hours.iter().find(|hour| (hour.at, hour.again) == key) else {
        ui.label(look::strong(t!("tank-loads-is-not-in-the-forecast", key = clock(key.0))));
        return;
    };
    let looked = looked(desk, id, hours, judged);
    let farm = desk.document.farm();
    let expected = farm.forecast.hours.iter().find(|hour| (hour.at, hour.again) == key);
    let again = if key.1 { t!("tank-loads-the-second-time") } else { "" };
    let part = judged.part.map(|(part, verdict)| format!("; {} {}", part.words(), verdict.word()));
    ui.label(look::strong(format!(
        "{}{again}: {}{}",
        judged.span().words(),
        judged.verdict.word(),
        part.unwrap_or_default()
    )));
    let figures = expected.map(|expected| figures(farm, expected, looked.sky.as_ref())).unwrap_or_default();
    let width = ui.available_width();
    if width < NARROW {
        figures_of(ui, &figures, 2);
        ui.add_space(4.0);
        binding(ui, hours, judged, &looked);
        return;
    }
    ui.horizontal_top(|ui| {
        ui.spacing_mut().item_spacing.x = 16.0;
        let left = width * 0.42;
        column(ui, left, |ui| figures_of(ui, &figures, 2));
        column(ui, width - left - 16.0, |ui| binding(ui, hours, judged, &looked));
    });
}

fn shown<Q: Quantity>(value: Option<&AsTyped<Q>>, units: Units) -> String {
    value.map_or(t!("tank-loads-not-given").to_owned(), |value| value.show(units))
}

/// The figures of an hour with their names. What the forecast does not give is said to be missing.
fn figures(farm: &Farm, hour: &Hour, sky: Option<&Sky>) -> Vec<(&'static str, String)> {
    let units = farm.units;
    vec![
        (t!("tank-loads-wind"), shown(hour.wind.as_ref(), units)),
        (t!("tank-loads-air"), shown(hour.temperature.as_ref(), units)),
        (t!("tank-loads-gusts"), shown(hour.gust.as_ref(), units)),
        (t!("tank-loads-humidity"), shown(hour.humidity.as_ref(), units)),
        (
            t!("tank-loads-from-where"),
            hour.wind_from.as_ref().map_or(t!("tank-loads-not-given").to_owned(), |from| from.point().to_owned()),
        ),
        (t!("tank-loads-cloud"), shown(hour.cloud.as_ref(), units)),
        (
            t!("tank-loads-rain"),
            hour.rain.as_ref().map_or_else(|| t!("tank-loads-not-given").to_owned(), |rain| rain.show_rain(units)),
        ),
        (t!("tank-loads-chance-of-rain"), shown(hour.rain_chance.as_ref(), units)),
        (
            t!("tank-loads-delta-t"),
            sky.and_then(|sky| sky.delta_t).map_or(t!("tank-loads-not-known").to_owned(), |span| span.show(units)),
        ),
        (
            t!("tank-loads-wet-bulb"),
            sky.and_then(|sky| sky.wet_bulb).map_or(t!("tank-loads-not-known").to_owned(), |air| air.show(units)),
        ),
    ]
}

fn figures_of(ui: &mut Ui, figures: &[(&'static str, String)], columns: usize) {
    let wide = (ui.available_width() - 8.0) / columns as f32;
    ui.spacing_mut().item_spacing.y = 1.0;
    for row in figures.chunks(columns) {
        ui.horizontal_top(|ui| {
            ui.spacing_mut().item_spacing.x = 4.0;
            for (label, value) in row {
                column(ui, LABEL.min(wide * 0.5), |ui| {
                    ui.label(look::soft(ui, *label));
                });
                column(ui, wide - LABEL.min(wide * 0.5) - 8.0, |ui| {
                    ui.add(Label::new(value).truncate());
                });
            }
        });
    }
}

/// The limits that an hour is outside of, each with its basis.
fn binding(ui: &mut Ui, hours: &Hours, judged: &JudgedHour, looked: &Looked) {
    if judged.binds.is_empty() {
        ui.label(t!("tank-loads-it-is-inside-every-limit-that"));
        return;
    }
    ui.label(look::heading(t!("tank-loads-what-speaks-against-it")));
    for (place, (at, verdict)) in judged.binds.iter().enumerate() {
        let Some(limit) = hours.limits.get(*at) else { continue };
        let text = looked.reasons.get(place).cloned().unwrap_or_else(|| limit.text());
        limit_line(ui, &text, &limit.basis.to_string(), *verdict);
    }
}

fn limit_line(ui: &mut Ui, text: &str, basis: &str, verdict: Verdict) {
    ui.horizontal_top(|ui| {
        ui.spacing_mut().item_spacing.x = 6.0;
        let (rect, _) = ui.allocate_exact_size(egui::Vec2::new(18.0, 18.0), egui::Sense::hover());
        strip::face_of(ui.painter(), look::colours(ui), rect.shrink2(egui::Vec2::new(0.0, 3.0)), Some(verdict));
        column(ui, ui.available_width(), |ui| {
            ui.spacing_mut().item_spacing.y = 0.0;
            ui.add(Label::new(format!("{}: {text}", verdict.word())).wrap());
            ui.add(Label::new(look::soft(ui, basis)).wrap());
        });
    });
}

/// All limits of the pass.
fn limits(ui: &mut Ui, hours: &Hours) {
    ui.label(look::heading(t!("tank-loads-what-the-hours-are-held-against")));
    let gap = ui.spacing().item_spacing.x;
    let outside = 96.0;
    let text = ((ui.available_width() - outside - 2.0 * gap) * 0.42).max(120.0);
    let basis = ui.available_width() - outside - text - 2.0 * gap;
    ui.spacing_mut().item_spacing.y = 2.0;
    ui.horizontal(|ui| {
        for (words, width) in [
            (t!("tank-loads-limit"), text),
            (t!("tank-loads-outside-it"), outside),
            (t!("tank-loads-it-rests-on"), basis),
        ] {
            cell(ui, width, false, |ui| {
                ui.label(look::soft(ui, words));
            });
        }
    });
    for limit in hours.limits.iter() {
        boxes::hairline(ui);
        ui.horizontal_top(|ui| {
            column(ui, text, |ui| {
                ui.add(Label::new(limit.text()).wrap());
            });
            column(ui, outside, |ui| {
                ui.label(
                    egui::RichText::new(limit.outside.word()).color(look::of_verdict(look::colours(ui), limit.outside)),
                );
            });
            column(ui, basis, |ui| {
                ui.add(Label::new(look::soft(ui, limit.basis.to_string())).wrap());
            });
        });
    }
}

/// The passes of the day in their best order, where there are several.
fn passes(desk: &mut Desk, ui: &mut Ui, id: &str, day: &DayPlan) {
    ui.label(look::heading(t!("tank-loads-the-passes-of-in-their-order", date = long_date(day.date))));
    let farm = desk.document.farm();
    let units = farm.units;
    let several = day.rigs.len() + usize::from(!day.loose.is_empty()) > 1;
    let name_width = 190.0_f32.min(ui.available_width() * 0.3);
    let hours = strip::cells(day.date, &[], |_| String::new());
    let mut led = None;
    ui.spacing_mut().item_spacing.y = 2.0;
    for rig in &day.rigs {
        for slot in &rig.slots {
            pass_row(farm, ui, id, slot, several, name_width, &hours, &mut led);
        }
        if rig.slots.len() > 1 {
            let name = farm.rigs.get(&rig.rig).filter(|_| several).map(|rig| rig.name.clone());
            let words = name.into_iter().chain(day_words(rig, units)).collect::<Vec<_>>().join(". ");
            ui.add(Label::new(look::soft(ui, words)).wrap());
            boxes::hairline(ui);
        }
    }
    for slot in &day.loose {
        pass_row(farm, ui, id, slot, several, name_width, &hours, &mut led);
    }
    ui.horizontal_top(|ui| {
        ui.add_space(name_width + ui.spacing().item_spacing.x);
        strip::axis(ui, &hours);
    });
    ui.add_space(look::GRID);
    let found = findings::show(ui, &day.findings);
    if let Some(pass) = led {
        desk.lead_to(&Subject::Pass(pass));
    } else if let Some(found) = found {
        desk.land(&found, ui.ctx());
    }
}

/// A pass with its bar over the hours and what there is to say of its place.
#[allow(clippy::too_many_arguments)] // What all rows share, handed on.
fn pass_row(
    farm: &Farm,
    ui: &mut Ui,
    id: &str,
    slot: &Slot,
    several: bool,
    name_width: f32,
    hours: &[Cell],
    led: &mut Option<Id>,
) {
    let units = farm.units;
    let Some(pass) = farm.passes.get(&slot.pass) else { return };
    let rig = farm.rigs.get(&slot.rig).filter(|_| several).map(|rig| rig.name.clone());
    ui.horizontal_top(|ui| {
        column(ui, name_width, |ui| {
            if slot.pass == id {
                ui.add(Label::new(look::strong(&pass.name)).truncate());
            } else if boxes::lead(ui, look::act(ui, &pass.name))
                .accessible_name(t!("tank-loads-go-to", name = pass.name))
                .clicked()
            {
                *led = Some(slot.pass.clone());
            }
            if let Some(rig) = rig {
                ui.add(Label::new(look::soft(ui, rig)).truncate());
            }
        });
        column(ui, ui.available_width(), |ui| {
            let judged = judged(slot, units);
            let before: Duration = slot.clean_out.into_iter().chain(slot.travel).sum();
            strip::bar(ui, &format!("{}: {judged}", pass.name), hours, slot.span, before, slot.verdict);
            ui.add(Label::new(look::soft(ui, slot_words(slot, units))).wrap());
        });
    });
    boxes::hairline(ui);
}

/// What no forecast can tell.
fn cautions(ui: &mut Ui, farm: Option<&Farm>) {
    ui.add_space(6.0);
    let source = farm.map(|farm| &farm.forecast).map(|forecast| {
        let source = match forecast.source.as_str() {
            "" => t!("tank-loads-source-not-named"),
            forecast::BY_HAND => t!("tank-loads-typed-by-hand"),
            source => source,
        };
        match forecast.read {
            Some(read) => t!("tank-loads-forecast-read", source = source, read = dates::short_moment(read)),
            None => t!("tank-loads-forecast-source", source = source),
        }
    });
    let caution = t!("tank-loads-a-forecast-is-no-measurement-measure-wind").to_owned();
    let words = source.into_iter().chain([caution]).collect::<Vec<_>>().join(" ");
    ui.add(Label::new(look::soft(ui, words)).wrap());
}

/// "05:40 to 08:50", "no hour allowed"; nothing without a forecast.
pub(super) fn in_heading(hours: &Hours) -> Option<String> {
    if hours.hours.is_empty() {
        return None;
    }
    Some(match (hours.best, hours.longest) {
        (Some(best), _) => best.words(),
        (None, Some((span, _))) => t!("tank-loads-too-short", span = span.words()),
        (None, None) => t!("tank-loads-no-hour-allowed").to_owned(),
    })
}

#[cfg(test)]
mod tests {
    use super::{Hours, answer, in_heading};
    use jiff::civil::date;
    use tankard_core::quantity::{Duration, Share, Units};
    use tankard_core::weather::{JudgedHour, Span, Verdict};

    fn hours() -> Hours {
        let day = date(2031, 6, 12);
        Hours {
            hours: vec![JudgedHour {
                at: day.at(5, 0, 0, 0),
                again: false,
                lasts: Duration::from_hours(1.0),
                verdict: Verdict::Allowed,
                binds: Vec::new(),
                part: None,
            }],
            needs: Some(Duration::from_hours(3.5)),
            ..Hours::default()
        }
    }

    #[test]
    fn the_answer_says_what_there_is() {
        let day = date(2031, 6, 12);
        let span = Span { from: day.at(5, 40, 0, 0), to: day.at(8, 50, 0, 0) };
        let units = Units::UsCustomary;
        assert_eq!(in_heading(&Hours::default()), None);
        assert_eq!(in_heading(&hours()).as_deref(), Some("no hour allowed"));
        let best = Hours { best: Some(span), ..hours() };
        assert_eq!(in_heading(&best).as_deref(), Some("05:40 to 08:50"));
        assert_eq!(answer(&best, units), "05:40 to 08:50; the pass takes 3 h 30 min.");
        let counted = Hours { counted: "filling and road", ..best };
        assert_eq!(answer(&counted, units), "05:40 to 08:50; the pass takes 3 h 30 min, filling and road counted.");
        let longest = Hours { longest: Some((span, Share::from_percent(90.5))), ..hours() };
        assert_eq!(in_heading(&longest).as_deref(), Some("05:40 to 08:50, too short"));
        assert_eq!(
            answer(&longest, units),
            "No span is long enough: the pass takes 3 h 30 min. The longest is 05:40 to 08:50, enough for 90 % of it."
        );
    }
}
