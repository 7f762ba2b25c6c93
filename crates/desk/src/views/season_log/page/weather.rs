//! The weather as it was measured.

use egui::{Align, Layout, Ui, Vec2};
use tankard_core::farm::{Expected, Farm, Reading, Record};
use tankard_core::plan::Plan;
use tankard_core::plausible::{Measured, Slot};
use tankard_core::quantity::{AsTyped, Quantity, Units};
use tankard_core::season::outside;
use tankard_core::t;
use tankard_core::weather::Limit;
use tankard_core::weather::limits::Kind;
use tankard_core::words;

use super::Page;
use super::rows::{LABEL, SHORT, captions, labelled, section_with, take};
use crate::look;
use crate::parts::{boxes, offers};

/// What was measured, and beside it what the forecast had for the time and what labels and laws ask.
pub(super) fn weather(ui: &mut Ui, page: &Page<'_>, asked: &[Limit], record: &mut Record) {
    let with_forecast = record.expected.is_some();
    section_with(ui, t!("season-log-weather"), |ui| {
        if with_forecast {
            ui.label(look::soft(ui, t!("season-log-measured-at-the-boom-and-beside")));
        }
    });
    let units = page.farm.units;
    forecast(ui, page, record);
    let expected = record.expected.clone().unwrap_or_default();
    let wind = expected.wind.map(|range| ends(&range, units)).unwrap_or_default();
    let gust = expected.gust.map(|gust| t!("season-log-up-to", gust = gust.show(units))).unwrap_or_default();
    let air = expected.temperature.map(|range| ends(&range, units)).unwrap_or_default();
    let humidity = expected.humidity.map(|range| ends(&range, units)).unwrap_or_default();
    let limits = |wanted: fn(&Kind) -> bool| {
        // The row says of what; what is said in another language stands whole.
        let short = |text: &str| {
            ["wind at", "air at", "humidity at"].iter().find_map(|own| text.strip_prefix(own)).map(str::to_owned)
        };
        let texts = asked.iter().filter(|limit| wanted(&limit.kind)).map(|limit| {
            let text = limit.text();
            short(&text).map_or_else(|| text.clone(), |rest| format!("at{rest}"))
        });
        let texts: Vec<String> = texts.collect();
        if texts.is_empty() { String::new() } else { t!("season-log-limit", texts = texts.join("; ")) }
    };
    let with = |expected: &str, limits: String| {
        let parts: Vec<&str> = [expected, &limits].into_iter().filter(|part| !part.is_empty()).collect();
        parts.join(" · ")
    };
    let wind = with(&wind, limits(|kind| matches!(kind, Kind::MostWind(_) | Kind::LeastWind(_))));
    let gust = with(&gust, limits(|kind| matches!(kind, Kind::MostGust(_))));
    let from = with(&expected.wind_from, limits(|kind| matches!(kind, Kind::NotToward { .. })));
    let air = with(&air, limits(|kind| matches!(kind, Kind::MostAir(_) | Kind::LeastAir(_))));
    let humidity = with(&humidity, limits(|kind| matches!(kind, Kind::MostHumidity(_) | Kind::LeastHumidity(_))));
    beside(ui, t!("season-log-wind"), &wind, |ui| {
        boxes::quantity_or_none(ui, t!("season-log-wind"), &mut record.wind, SHORT);
        offers::at_box(ui, t!("season-log-wind"), &measured(page, Measured::Wind));
        boxes::understood(ui, record.wind.as_ref(), units);
    });
    beside(ui, t!("season-log-gust"), &gust, |ui| {
        boxes::quantity_or_none(ui, t!("season-log-gust"), &mut record.gust, SHORT);
        offers::at_box(ui, t!("season-log-gust"), &measured(page, Measured::Gust));
        boxes::understood(ui, record.gust.as_ref(), units);
    });
    beside(ui, t!("season-log-wind-from"), &from, |ui| {
        boxes::text_or_empty(ui, t!("season-log-wind-from"), &mut record.wind_from, SHORT, t!("season-log-such-as-nw"))
            .on_hover_text(t!("season-log-from-where-it-blows-such-as"));
    });
    beside(ui, t!("season-log-temperature"), &air, |ui| {
        boxes::quantity_or_none(ui, t!("season-log-temperature"), &mut record.temperature, SHORT);
        offers::at_box(ui, t!("season-log-temperature"), &measured(page, Measured::Air));
        boxes::understood(ui, record.temperature.as_ref(), units);
    });
    beside(ui, t!("season-log-humidity"), &humidity, |ui| {
        boxes::quantity_or_none(ui, t!("season-log-humidity"), &mut record.humidity, SHORT);
    });
    readings(ui, units, record);
}

/// The box of the first measurement.
fn measured(page: &Page<'_>, what: Measured) -> Slot {
    Slot::Measured { record: page.id.to_owned(), reading: None, what }
}

/// Whose forecast it is, and the act that shows that of the hours in which it was sprayed. The line stands also where it is empty, so
/// that hours typed above move no box below.
fn forecast(ui: &mut Ui, page: &Page<'_>, record: &mut Record) {
    if page.plan.is_none() && record.expected.is_none() {
        return;
    }
    let now = page.plan.filter(|_| ui.is_enabled()).and_then(|plan| for_its_hours(page.farm, record, plan));
    let size = Vec2::new(ui.available_width(), look::ROW);
    ui.allocate_ui_with_layout(size, Layout::right_to_left(Align::Center), |ui| {
        ui.set_min_size(size);
        let source = record.expected.as_ref().map(|expected| t!("season-log-forecast", source = expected.source));
        if let Some(now) = now
            && boxes::act(ui, t!("season-log-show-the-forecast-for-these-hours")).clicked()
        {
            record.expected = Some(Box::new(now));
        }
        ui.with_layout(Layout::left_to_right(Align::Center), |ui| {
            if let Some(source) = source {
                ui.add(egui::Label::new(look::soft(ui, source)).truncate());
            }
        });
    });
}

/// Columns of the later readings.
const AT: f32 = 58.0;
const READ: f32 = 72.0;

/// What was measured later.
fn readings(ui: &mut Ui, units: Units, record: &mut Record) {
    let (speed, air) = match units {
        Units::Metric => ("km/h", "°C"),
        Units::UsCustomary => ("mph", "°F"),
        Units::Imperial => ("mph", "°C"),
    };
    if !record.readings.is_empty() {
        let columns = [
            (t!("season-log-head-at"), AT),
            (t!("season-log-head-wind"), READ),
            (t!("season-log-head-gust"), READ),
            (t!("season-log-head-from"), READ),
            (t!("season-log-head-air"), READ),
            (t!("season-log-head-humidity"), READ),
        ];
        captions(ui, &columns);
    }
    let mut taken = None;
    for (at, reading) in record.readings.iter_mut().enumerate() {
        let number = at + 2;
        ui.push_id(("reading", at), |ui| {
            ui.horizontal(|ui| {
                boxes::time_hinted(
                    ui,
                    &t!("season-log-time-of-reading", number = number),
                    &mut reading.at,
                    AT,
                    "08:30",
                );
                let name = |what: &str| t!("season-log-of-reading", what = what, number = number);
                boxes::quantity_in(ui, &name(t!("season-log-wind")), &mut reading.wind, READ, speed, speed);
                boxes::quantity_in(ui, &name(t!("season-log-gust")), &mut reading.gust, READ, speed, speed);
                boxes::text_or_empty(ui, &name(t!("season-log-wind-from")), &mut reading.wind_from, READ, "NW");
                boxes::quantity_in(ui, &name(t!("season-log-temperature")), &mut reading.temperature, READ, air, air);
                boxes::per_cent(ui, &name(t!("season-log-humidity")), &mut reading.humidity, READ, "%", "");
                if take(ui, &t!("season-log-reading-number", number = number)) {
                    taken = Some(at);
                }
            });
        });
    }
    if let Some(at) = taken {
        record.readings.remove(at);
    }
    if ui.is_enabled() && boxes::act(ui, t!("season-log-add-a-reading")).clicked() {
        record.readings.push(Reading::default());
    }
}

/// The forecast for the hours in which it really was sprayed, where it is not that which is kept.
fn for_its_hours(farm: &Farm, record: &Record, plan: &Plan) -> Option<Expected> {
    record.start.filter(|_| farm.passes.get(&plan.pass).is_some_and(|pass| pass.date == record.date))?;
    outside::expected(farm, plan, record.start, record.end).filter(|now| record.expected.as_deref() != Some(now))
}

/// "4 to 9 mph", or one figure where both ends are alike.
fn ends<Q: Quantity>(range: &(AsTyped<Q>, AsTyped<Q>), units: Units) -> String {
    let (least, most) = (range.0.show(units), range.1.show(units));
    if least == most { most } else { words::to(&least, &most) }
}

/// A labelled box, and beside it what was expected.
fn beside(ui: &mut Ui, label: &str, expected: &str, add: impl FnOnce(&mut Ui)) {
    ui.horizontal(|ui| {
        // In line with the second column at the head of the page.
        let width = (ui.available_width() / 2.0).max((LABEL + SHORT + 60.0).min(ui.available_width()));
        boxes::slot(ui, width, |ui| labelled(ui, label, add));
        if !expected.is_empty() {
            ui.add(egui::Label::new(look::soft(ui, expected)).truncate());
        }
    });
}
