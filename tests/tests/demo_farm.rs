//! The demo farm's plans, word for word. A change here is a change that users see: look at it before accepting it.

// A test stops where its ground is missing.
#![allow(clippy::unwrap_used, clippy::indexing_slicing, clippy::panic)]

use tankard::{demo, report};
use tankard_core::finding::Level;
use tankard_core::plan::plan;

#[test]
fn the_plans_in_words() {
    let farm = demo::farm().unwrap();
    let text: Vec<String> = farm.passes.keys().map(|id| report::text::plan(&farm, &plan(&farm, id).unwrap())).collect();
    insta::assert_snapshot!(text.join("\n"));
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
