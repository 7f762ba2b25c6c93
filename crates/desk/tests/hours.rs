//! The page Hours of a pass as a person uses it, and what of it stands on the card.

// A test stops where its ground is missing.
#![allow(clippy::unwrap_used, clippy::indexing_slicing, clippy::panic)]

mod common;

use common::tank_loads;
use egui_kittest::kittest::Queryable;
use jiff::civil::date;
use tankard::demo;
use tankard::views::tank_loads::Page;
use tankard_core::loads::card::cards;
use tankard_core::plan::plan;

const PASS: &str = "2031-06-12-corn-second-post";

#[test]
fn the_heading_leads_to_the_hours_and_the_arrow_keys_walk_them() {
    let mut harness = tank_loads(demo::farm().unwrap(), [1366.0, 768.0]);
    harness.get_by_label("Time for the pass: 3 h 45 min in all, show working");
    harness.get_by_label("Hours: 07:00 to 11:00").focus();
    harness.run();
    harness.key_press(egui::Key::Enter);
    harness.run();
    assert_eq!(harness.state().tank_loads.page, Page::Hours);
    harness.get_by_label("07:00 to 11:00; the pass takes 3 h 45 min, filling and road counted.");
    // The first hour of the span is the one that is looked at.
    harness.get_by_label("the hour told of below");
    harness.get_by_label("07:00 allowed").focus();
    harness.run();
    harness.get_by_label("07:00 to 08:00: allowed");
    for _ in 0..6 {
        harness.key_press(egui::Key::ArrowRight);
        harness.run();
    }
    assert_eq!(harness.state().tank_loads.hour, Some((date(2031, 6, 12).at(13, 0, 0, 0), false)));
    harness.get_by_label("13:00 to 14:00: forbidden");
    harness.get_by_label_contains("mph; wind at most 10 mph");
    for _ in 0..7 {
        harness.key_press(egui::Key::ArrowLeft);
        harness.run();
    }
    harness.get_by_label("06:00 to 07:00: doubtful");
    // All hours have their names, with what binds them.
    for hour in 0..24 {
        assert!(harness.query_all_by_label_contains(&format!("{hour:02}:00 ")).count() > 0, "{hour}");
    }
    harness.get_by_label_contains("13:00 forbidden: wind at most 10 mph");
    harness.get_by_label("Corn, second post: 07:00 to 10:36 allowed");
    harness.get_by_label("Go to Volunteer corn in beans").click();
    harness.run();
    assert_eq!(harness.state().tank_loads.chosen.as_deref(), Some("2031-06-12-volunteer-corn"));
}

#[test]
fn without_a_forecast_the_page_says_so_and_offers_the_sheet() {
    let mut farm = demo::farm().unwrap();
    farm.forecast.hours.clear();
    let mut harness = tank_loads(farm, [1366.0, 768.0]);
    assert!(harness.query_by_label_contains("Hours: ").is_none());
    harness.get_by_role_and_label(egui::accesskit::Role::Tab, "Hours").click();
    harness.run();
    harness.get_by_label_contains("The farm has no forecast yet, so no hour can be judged.");
    harness.get_by_label_contains("A forecast is no measurement: measure wind");
    harness.get_by_label("Read a forecast from a file…");
}

/// Clocks are put back on 2 November 2031 (first Sunday of November, 15 U.S.C. 260a): the day has 25 hours.
#[test]
fn a_day_of_25_hours_has_25_cells() {
    let mut farm = demo::farm().unwrap();
    let day = date(2031, 11, 2);
    farm.passes[PASS].date = day;
    let mut hours: Vec<tankard_core::farm::Hour> = Vec::new();
    for (at, hour) in farm.forecast.hours.clone().into_iter().take(24).enumerate() {
        let at = day.at(i8::try_from(at).unwrap(), 0, 0, 0);
        hours.push(tankard_core::farm::Hour { at, ..hour.clone() });
        if at.hour() == 1 {
            hours.push(tankard_core::farm::Hour { at, again: true, ..hour });
        }
    }
    farm.forecast.hours = hours;
    let mut harness = tank_loads(farm, [1366.0, 768.0]);
    harness.state_mut().tank_loads.choose(PASS);
    harness.state_mut().tank_loads.page = Page::Hours;
    harness.run();
    harness.get_by_label_contains("01:00 again ");
    harness.get_by_label_contains("23:00 ");
}

#[test]
fn the_page_shows_whole_in_small_windows_both_themes_and_metric_units() {
    for (size, theme) in [([1024.0, 700.0], egui::Theme::Dark), ([910.0, 512.0], egui::Theme::Light)] {
        let mut farm = demo::farm().unwrap();
        farm.units = tankard_core::quantity::Units::Metric;
        let mut harness = tank_loads(farm, size);
        harness.ctx.set_theme(theme);
        harness.state_mut().tank_loads.page = Page::Hours;
        harness.run();
        let last = harness.get_by_label_contains("23:00 doubtful").rect();
        assert!(last.right() <= size[0] - 213.0, "{last:?}");
        harness.get_by_label("07:00 allowed").click();
        harness.run();
        harness.get_by_label("07:00 to 08:00: allowed");
    }
}

/// The tightest of each kind, for the fields of the load: the label of mesotrione has 10 mph, that of glyphosate 15 mph; practice
/// (as `assets/weather-limits.csv` has it) keeps to at least 3 mph, the demo's rule of law to 2 mph. Practice stands apart.
#[test]
fn the_card_has_the_hours_and_the_tightest_limits_with_their_source() {
    let farm = demo::farm().unwrap();
    let made = cards(&farm, &plan(&farm, PASS).unwrap());
    for card in &made {
        assert_eq!(card.spray_between, "07:00 and 11:00");
        assert_eq!(card.limits[0], "wind 2 to 10 mph (Demo spray rule, Mesotrione)");
        assert!(card.usual.iter().any(|limit| limit.contains("wind") && limit.contains("3 mph")), "{:?}", card.usual);
        assert_eq!(card.limits.iter().filter(|limit| limit.starts_with("wind")).count(), 1);
        assert!(card.limits.iter().any(|limit| limit == "no rain for 2 h after it (Glyphosate)"), "{:?}", card.limits);
        assert!(card.settings.iter().any(|line| line == "12 mph (8.5 to 15.1 mph)"), "{:?}", card.settings);
        assert!(card.settings.iter().any(|line| line == "41 psi (20 to 65 psi)"), "{:?}", card.settings);
        assert_eq!(card.calibrated, "10 April 2031");
        // What the limits say does not stand among the cautions, too.
        assert!(card.cautions.iter().all(|caution| !caution.starts_with("Wind ") && !caution.starts_with("No rain")));
    }
    // Without a forecast the limits stand alone.
    let mut bare = farm.clone();
    bare.forecast.hours.clear();
    let card = cards(&bare, &plan(&bare, PASS).unwrap()).remove(0);
    assert!(card.spray_between.is_empty() && card.limits[0].starts_with("wind 2 to 10 mph"), "{:?}", card.limits);
}
