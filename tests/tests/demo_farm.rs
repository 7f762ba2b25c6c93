//! The demo farm's plans, word for word. A change here is a change that users see: look at it before accepting it.

// A test stops where its ground is missing.
#![allow(clippy::unwrap_used, clippy::indexing_slicing, clippy::panic)]

use tankard::{demo, report};
use tankard_core::day::plan_day;
use tankard_core::finding::Level;
use tankard_core::plan::plan;

#[test]
fn the_plans_in_words() {
    let farm = demo::farm().unwrap();
    let text: Vec<String> = farm.passes.keys().map(|id| report::text::plan(&farm, &plan(&farm, id).unwrap())).collect();
    insta::assert_snapshot!(text.join("\n"));
}

#[test]
fn the_days_in_words() {
    let farm = demo::farm().unwrap();
    let mut dates: Vec<_> = farm.passes.values().map(|pass| pass.date).collect();
    dates.dedup();
    let plans: Vec<_> = farm.passes.keys().map(|id| plan(&farm, id).unwrap()).collect();
    let plans: Vec<_> = plans.iter().collect();
    let days: Vec<String> =
        dates.into_iter().map(|date| report::day::day(&farm, &plan_day(&farm, date, &plans))).collect();
    insta::assert_snapshot!(days.join("\n"));
}

#[test]
fn a_stop_a_check_and_notes_arise_honestly() {
    let farm = demo::farm().unwrap();
    let plans: Vec<_> = farm.passes.keys().map(|id| plan(&farm, id).unwrap()).collect();
    for (level, least) in [(Level::Stop, 1), (Level::Check, 1), (Level::Note, 4)] {
        assert!(plans.iter().map(|plan| plan.count(level)).sum::<usize>() >= least, "{level:?}");
    }
    let clean = plans.iter().filter(|plan| plan.count(Level::Stop) == 0).count();
    assert!(clean > plans.len() / 2);
}

/// What is typed is what is saved: the demo farm, with all its kinds of entries, comes out of the program as it went in.
#[test]
fn it_is_saved_as_it_was_read() {
    let farm = tankard_file::read(demo::TEXT.as_bytes()).unwrap();
    let written = tankard_file::write(&farm).unwrap();
    let differs = written.lines().zip(demo::TEXT.lines()).position(|(new, old)| new != old);
    let at = |text: &str| differs.and_then(|at| text.lines().nth(at).map(str::to_owned));
    assert!(written == demo::TEXT, "line {differs:?}: {:?} became {:?}", at(demo::TEXT), at(&written));
}
