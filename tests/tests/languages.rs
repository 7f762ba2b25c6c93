//! A language changes words and nothing else. The rule tables are read once a process, so this one speaks Spanish before anything else.

// A test stops where its ground is missing.
#![allow(clippy::unwrap_used)]

use std::path::Path;

use tankard_core::language::{Language, speaking};
use tankard_core::loads::card::cards;
use tankard_core::plan::{Plan, plan};

/// A language changes words and nothing else: the same findings of the same levels, the same loads to the last digit; and a card is in its
/// own language, whatever the desk speaks.
#[test]
fn a_plan_is_the_same_in_each_language() {
    for path in ["demo-farm/larkspur-bend.ron", "tests/reference/farms/format-1-2026-11-27.ron"] {
        let farm =
            tankard_file::read(&std::fs::read(Path::new(env!("CARGO_MANIFEST_DIR")).join("..").join(path)).unwrap())
                .unwrap();
        for id in farm.passes.keys() {
            let spanish = speaking(Language::Spanish, || plan(&farm, id).unwrap());
            let english = plan(&farm, id).unwrap();
            // Bags and jugs have names.
            let loads = |plan: &Plan| {
                let mut loads = plan.loads.clone();
                loads.iter_mut().flat_map(|load| &mut load.items).for_each(|item| item.measured.containers.clear());
                loads
            };
            assert_eq!(loads(&english), loads(&spanish), "{path}: {id}");
            let levels =
                |plan: &Plan| plan.findings.iter().map(|finding| (finding.level, finding.room)).collect::<Vec<_>>();
            assert_eq!(levels(&english), levels(&spanish), "{path}: {id}");
            let sets = |plan: &Plan| {
                plan.adjuvants
                    .choices
                    .iter()
                    .map(|choice| choice.members.iter().map(|one| (one.class, one.product.clone())).collect::<Vec<_>>())
                    .collect::<Vec<_>>()
            };
            assert_eq!(sets(&english), sets(&spanish), "{path}: {id}");
            let in_english = cards(&farm, &english);
            assert_eq!(in_english, speaking(Language::Spanish, || cards(&farm, &spanish)), "{path}: {id}");
        }
    }
}
