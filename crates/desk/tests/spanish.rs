//! The desk in Spanish: no page shows English, but for what the farm's people typed, names of sources, and words that are the same.

// A test stops where its ground is missing.
#![allow(clippy::unwrap_used, clippy::indexing_slicing)]

mod common;

use std::collections::BTreeSet;
use std::path::Path;

use common::{evening, window};
use egui_kittest::Harness;
use egui_kittest::kittest::{NodeT, Queryable};
use tankard::app::Desk;
use tankard::command::{Command, Spot, View};
use tankard::demo;
use tankard::document::Document;
use tankard_core::language::{Language, speaking};

type Window = Harness<'static, Desk>;

/// What is the same in both languages: names of units, of schemes, of tables in sources, and of the demo farm's people.
const SAME: [&str; 15] = [
    "gal",
    "ppm",
    "grains",
    "ams",
    "uan",
    "delta",
    "plan",
    "english",
    "tankard",
    "geological",
    "survey",
    "total",
    "caco",
    "ctrl",
    "shift",
];

/// Words that no Spanish text has.
const ENGLISH: [&str; 14] =
    ["the", "of", "and", "with", "from", "for", "is", "are", "not", "this", "which", "than", "where", "typed"];

fn run(harness: &mut Window, command: Command) {
    let ctx = harness.ctx.clone();
    harness.state_mut().run(command, &ctx);
    harness.run();
}

/// All that stands in a window or is said of it, each once.
fn texts(harness: &Window, all: &mut BTreeSet<String>) {
    for node in harness.root().query_all_by(|_| true) {
        let own = node.accesskit_node();
        // A line of a box that wraps is a piece of what the box itself says.
        if own.role() == egui::accesskit::Role::TextRun {
            continue;
        }
        let said = [own.label(), own.value(), own.placeholder().map(str::to_owned), own.description()];
        all.extend(said.into_iter().flatten().filter(|text| !text.trim().is_empty()));
    }
}

/// Every view and page of the demo farm.
fn walk() -> BTreeSet<String> {
    let mut desk = Desk::new(Document::copy(demo::farm().unwrap()), evening);
    desk.view = View::Fields;
    let mut harness = window(desk, [1366.0, 2400.0]);
    harness.run();
    let mut all = BTreeSet::new();
    texts(&harness, &mut all);
    for view in View::ALL {
        run(&mut harness, Command::Go(view));
        texts(&harness, &mut all);
    }
    for spot in Spot::ALL {
        run(&mut harness, Command::Show(spot));
        texts(&harness, &mut all);
    }
    run(&mut harness, Command::FarmPage);
    texts(&harness, &mut all);
    run(&mut harness, Command::Backups);
    texts(&harness, &mut all);
    run(&mut harness, Command::Go(View::TankLoads));
    for editor in tankard::views::tank_loads::Editor::ALL {
        harness.state_mut().tank_loads.page = tankard::views::tank_loads::Page::Plan;
        harness.state_mut().tank_loads.editor = Some(editor);
        harness.run();
        texts(&harness, &mut all);
    }
    harness.state_mut().tank_loads.day = Some(jiff::civil::date(2031, 6, 12));
    harness.run();
    texts(&harness, &mut all);
    let record = harness.state().document.farm().records.keys().next().cloned();
    run(&mut harness, Command::Go(View::SeasonLog));
    harness.state_mut().season_log.in_front = tankard::views::season_log::Page::Records;
    harness.state_mut().season_log.chosen = record;
    harness.run();
    texts(&harness, &mut all);
    all
}

/// What stands in quotes in a text.
fn quoted(text: &str, all: &mut BTreeSet<String>) {
    all.extend(text.split('"').skip(1).step_by(2).filter(|part| part.len() > 2).map(str::to_owned));
}

/// What may stand in any language: the farm's own words, longest first, and the sources of tables.
fn kept() -> Vec<String> {
    let root = Path::new(env!("CARGO_MANIFEST_DIR")).join("../..");
    let mut all = BTreeSet::new();
    quoted(&std::fs::read_to_string(root.join("demo-farm/larkspur-bend.ron")).unwrap(), &mut all);
    for file in std::fs::read_dir(root.join("assets")).unwrap() {
        let path = file.unwrap().path();
        if path.extension().is_some_and(|ending| ending == "csv") {
            let mut table = csv::Reader::from_path(&path).unwrap();
            let of_sources = |name: &str| ["source", "title", "keep_source"].contains(&name);
            let columns: Vec<bool> = table.headers().unwrap().iter().map(of_sources).collect();
            for row in table.records().map(Result::unwrap) {
                let cells = row.iter().zip(&columns).filter(|(_, is)| **is);
                all.extend(cells.map(|(cell, _)| cell.to_owned()));
            }
        }
    }
    // Sources that stand in no table.
    all.extend(["after Nalewaja and Matysiak 1993".to_owned(), "Soltani et al. 2016".to_owned()]);
    // Parts of them are shown alone, and names without the word that they are of the demo.
    let bare = all.iter().map(|text| text.replace(" (demo)", ""));
    let parts = all.iter().flat_map(|text| text.split("; ")).map(|text| text.trim_end_matches('.').to_owned());
    let more: Vec<String> = bare.chain(parts).collect();
    all.extend(more);
    let mut all: Vec<String> = all.into_iter().filter(|text| text.len() > 3).collect();
    all.sort_by_key(|text| std::cmp::Reverse(text.len()));
    all
}

fn words(text: &str) -> impl Iterator<Item = String> {
    text.split(|letter: char| !letter.is_alphabetic()).map(str::to_lowercase).filter(|word| !word.is_empty())
}

#[test]
fn no_page_shows_english() {
    let english = walk();
    let spanish = speaking(Language::Spanish, walk);
    let kept = kept();
    let own = |text: &str| kept.iter().fold(text.to_owned(), |text, part| text.replace(part.as_str(), " "));
    let mut bad = Vec::new();
    for text in &spanish {
        let rest = own(text);
        // What has no room is cut short.
        let is_cut = rest.trim().strip_suffix('…').is_some_and(|rest| {
            let rest = rest.trim_start_matches([';', ',', ' ']);
            rest.len() > 8 && kept.iter().any(|known| known.contains(rest))
        });
        let is_same = english.contains(text)
            && words(&rest).any(|word| word.chars().count() > 2 && !SAME.contains(&word.as_str()));
        if !is_cut && (is_same || words(&rest).any(|word| ENGLISH.contains(&word.as_str()))) {
            bad.push(rest.trim().to_owned());
        }
    }
    assert!(spanish.len() > 500, "{}", spanish.len());
    assert!(bad.is_empty(), "{bad:#?}");
}
