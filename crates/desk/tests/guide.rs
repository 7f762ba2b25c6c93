//! The guide: its pages and its list, links and anchors, words quoted from the screen, what explains each finding and working, and
//! the guide in the window.

// A test stops where its ground is missing.
#![allow(clippy::unwrap_used, clippy::indexing_slicing, clippy::panic)]

mod common;

use std::collections::HashSet;
use std::fs;
use std::path::{Path, PathBuf};

use common::{tank_loads, type_over};
use egui::accesskit::Role;
use egui::{Key, Modifiers};
use egui_kittest::kittest::{NodeT, Queryable};
use tankard::guide::markdown::{Block, Face, Run};
use tankard::guide::{keyboard, pages, places, search};
use tankard::{demo, report};
use tankard_core::finding::Finding;
use tankard_core::language::{Language, speak, speaking};
use tankard_core::plan::plan;

fn root() -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).join("../..")
}

/// The files below a folder with an ending, in order.
fn below(folder: &Path, ending: &str) -> Vec<PathBuf> {
    let mut found = Vec::new();
    for entry in fs::read_dir(folder).unwrap().map(|entry| entry.unwrap().path()) {
        if entry.is_dir() {
            found.extend(below(&entry, ending));
        } else if entry.to_str().unwrap().ends_with(ending) {
            found.push(entry);
        }
    }
    found.sort();
    found
}

fn runs(block: &Block) -> &[Run] {
    match block {
        Block::Heading { runs, .. } | Block::Paragraph(runs) | Block::Item { runs, .. } => runs,
        Block::Lines(_) => &[],
    }
}

/// Where the pages of a language lie.
fn folder(language: Language) -> PathBuf {
    let folder = root().join("assets/guide");
    if language == Language::English { folder } else { folder.join(language.code()) }
}

/// The pages of a language, each with its text.
fn written(language: Language) -> impl Iterator<Item = (&'static pages::Read, &'static str)> {
    pages::in_language(language).iter().zip(pages::PAGES.iter().map(move |page| page.text_in(language)))
}

/// Holds that a new page is not forgotten in the program, and that the index of the folder has all pages in the same order.
#[test]
fn the_list_is_the_folder_and_its_index() {
    for language in Language::ALL {
        let mut names: Vec<String> = fs::read_dir(folder(language))
            .unwrap()
            .map(|entry| entry.unwrap().file_name().into_string().unwrap())
            .filter_map(|name| name.strip_suffix(".md").map(str::to_owned))
            .filter(|name| name != "README")
            .collect();
        names.sort();
        let mut listed: Vec<&str> = match language {
            Language::English => pages::PAGES.iter().map(|page| page.name).collect(),
            Language::Spanish => pages::SPANISH.iter().map(|(name, _)| *name).collect(),
        };
        let has = |page: &&pages::Read| listed.contains(&page.name);
        let linked: Vec<String> = pages::in_language(language)
            .iter()
            .filter(has)
            .map(|page| format!("- [{}]({}.md)", page.title, page.name))
            .collect();
        let index = fs::read_to_string(folder(language).join("README.md")).unwrap();
        let lines: Vec<&str> = index.lines().filter(|line| line.starts_with("- [")).collect();
        assert_eq!(lines, linked);
        listed.sort_unstable();
        assert_eq!(names, listed);
    }
}

/// A page is what a tired person reads in some minutes, in Markdown that the program draws whole.
#[test]
fn pages_are_short_and_have_one_title() {
    for language in Language::ALL {
        // Spanish takes about a sixth more words to say the same.
        let most = if language == Language::English { 800 } else { 930 };
        for (page, text) in written(language) {
            let titles = page.blocks.iter().filter(|block| matches!(block, Block::Heading { level: 1, .. })).count();
            assert!(titles == 1 && matches!(page.blocks[0], Block::Heading { level: 1, .. }), "{}", page.name);
            let words = text.split_whitespace().count();
            assert!(words <= most, "{} has {words} words", page.name);
            for mark in ["|--", "> ", "<", "http:", "https:", "*****", "\t"] {
                assert!(!text.contains(mark), "{} has {mark}, which is not drawn", page.name);
            }
            let mut anchors: Vec<&str> = page.headings().map(|(anchor, _)| anchor).collect();
            let all = anchors.len();
            anchors.sort_unstable();
            anchors.dedup();
            assert_eq!(all, anchors.len(), "{} has a heading twice", page.name);
        }
    }
}

/// What is said of keys is asked of the desk, and the file holds the same for who reads it without the program.
#[test]
fn the_page_on_keys_is_made_anew_in_each_language() {
    for language in Language::ALL {
        let page = pages::PAGES.iter().find(|page| page.name == keyboard::NAME).unwrap();
        let made = speaking(language, keyboard::page);
        assert!(page.text_in(language) == made, "keyboard.md is to hold:\n{made}");
    }
}

/// Every link leads to a page and a heading of it, or to a file that is there; so does every picture.
#[test]
fn links_and_pictures_lead_somewhere() {
    for language in Language::ALL {
        let mut links = 0;
        for (page, text) in written(language) {
            for run in page.blocks.iter().flat_map(runs) {
                let Face::Link(target) = &run.face else { continue };
                links += 1;
                let (file, anchor) = target.split_once('#').unwrap_or((target, ""));
                if let Some(name) = file.strip_suffix(".md").filter(|name| !name.contains('/')) {
                    let to = &pages::in_language(language)[pages::at(name).unwrap()];
                    // Its own anchor: those who read the folder without the program have no other.
                    let leads = anchor.is_empty() || to.headings().any(|(own, _)| own == anchor);
                    assert!(leads, "{} links to {target}", page.name);
                } else {
                    assert!(folder(language).join(file).is_file(), "{} links to {target}", page.name);
                }
            }
            for picture in text.split("](").skip(1).filter_map(|rest| rest.split(')').next()) {
                if Path::new(picture).extension().is_none_or(|end| end != "png") {
                    continue;
                }
                let path = folder(language).join(picture);
                let size = fs::metadata(&path).unwrap_or_else(|_| panic!("{} shows {picture}", page.name)).len();
                assert!(size < 80_000, "{picture} has {size} bytes; tests/scripts/pictures.sh makes it small");
            }
        }
        assert!(links > 40);
    }
}

/// The figures of a text in order of size, without the numbers of lists.
fn figures(text: &str) -> Vec<String> {
    let lines = text.lines().map(|line| match line.trim_start().split_once(". ") {
        Some((number, rest)) if number.bytes().all(|byte| byte.is_ascii_digit()) => rest,
        _ => line,
    });
    let mut found: Vec<String> = lines
        .flat_map(|line| line.split(|letter: char| !letter.is_ascii_digit() && !matches!(letter, '.' | ',' | '/')))
        .map(|piece| piece.trim_matches(['.', ',', '/']).to_owned())
        .filter(|piece| piece.contains(|letter: char| letter.is_ascii_digit()))
        .collect();
    found.sort();
    found
}

/// A page in another language is laid out as the English one, block by block, so that the table of places serves both, and has the same
/// figures: a telephone number, a paragraph of a law, minutes of rinsing. A figure inside a sentence may stand elsewhere in it.
#[test]
fn a_translated_page_has_the_parts_the_links_and_the_figures_of_the_english_one() {
    let shape = |page: &pages::Read| -> Vec<String> {
        let lay = |block: &Block| match block {
            Block::Heading { level, .. } => format!("heading {level}"),
            Block::Paragraph(_) => "paragraph".to_owned(),
            Block::Item { number, depth, .. } => format!("item {number:?} {depth}"),
            Block::Lines(lines) => lines.clone(),
        };
        page.blocks.iter().map(lay).collect()
    };
    // Without the heading, which has other words, and from wherever the file lies.
    let leads = |page: &pages::Read| -> Vec<String> {
        let runs = page.blocks.iter().flat_map(runs);
        let target = |run: &Run| match &run.face {
            Face::Link(target) => Some(target.split('#').next()?.trim_start_matches("../").to_owned()),
            _ => None,
        };
        runs.filter_map(target).collect()
    };
    // What is not translated yet is the English page itself.
    for ((english, text), (spanish, said)) in written(Language::English).zip(written(Language::Spanish)) {
        let name = english.name;
        assert_eq!(shape(english), shape(spanish), "{name}");
        assert_eq!(leads(english), leads(spanish), "{name}");
        assert_eq!(figures(text), figures(said), "{name}");
        // No anchor here is that of another heading there.
        for (at, (anchor, _)) in english.headings().enumerate() {
            let own = spanish.headings().nth(at).unwrap();
            assert_eq!(spanish.heading(anchor), Some(own), "{name}#{anchor}");
        }
    }
    assert_eq!(figures("1. Rinse 15 to 20 minutes, 1/20,000.\n2. 1-800."), ["1", "1/20,000", "15", "20", "800"]);
}

/// The texts in quotes of a source file, without comments.
fn quoted(source: &str) -> Vec<String> {
    let mut found = Vec::new();
    for line in source.lines().map(str::trim).filter(|line| !line.starts_with("//")) {
        let mut letters = line.replace("'\"'", "").chars().collect::<Vec<_>>().into_iter();
        while let Some(letter) = letters.next() {
            if letter != '"' {
                continue;
            }
            let mut text = String::new();
            while let Some(letter) = letters.next() {
                match letter {
                    '\\' => text.extend(letters.next()),
                    '"' => break,
                    letter => text.push(letter),
                }
            }
            found.push(text);
        }
    }
    found
}

/// Whether a text of the sources, with what it is filled with left open, comes to the words. At least two thirds of them must be its own.
fn comes_to(pattern: &str, words: &str) -> bool {
    let mut pieces = Vec::new();
    let mut rest = pattern;
    while let Some((piece, after)) = rest.split_once('{') {
        pieces.push(piece);
        let Some((_, after)) = after.split_once('}') else { return false };
        rest = after;
    }
    pieces.push(rest);
    let own: usize = pieces.iter().map(|piece| piece.trim().len()).sum();
    let (first, last) = (pieces[0], pieces[pieces.len() - 1]);
    if own * 3 < words.len() * 2 || !words.starts_with(first) || !words.ends_with(last) {
        return false;
    }
    let mut rest = words;
    pieces.iter().all(|piece| match rest.find(piece) {
        Some(at) => {
            rest = &rest[at + piece.len()..];
            true
        }
        None => false,
    })
}

/// The texts of all messages of a language by their names; a message that chooses has several.
fn messages(language: Language) -> Vec<(String, String)> {
    let mut found = Vec::new();
    for path in below(&root().join("assets/words").join(language.code()), ".ftl") {
        let text = fs::read_to_string(path).unwrap();
        let mut id = String::new();
        for line in text.lines() {
            let text = if let Some((name, text)) = line.split_once(" =").filter(|_| !line.starts_with([' ', '#'])) {
                name.clone_into(&mut id);
                Some(text.trim())
            } else {
                line.split_once("] ").map(|(_, text)| text.trim())
            };
            found.extend(text.map(|text| (id.clone(), text.to_owned())));
        }
    }
    found
}

fn bold(page: &pages::Read) -> Vec<&str> {
    let runs = page.blocks.iter().flat_map(runs);
    runs.filter(|run| run.face == Face::Bold).map(|run| run.text.as_str()).collect()
}

/// Whether a text of the program comes to the words, which may be filled in where they are left open there.
fn says(text: &str, words: &str) -> bool {
    text == words || (text.contains('{') && comes_to(text, words))
}

/// What stands in bold is what stands on the screen or on paper, so that a page cannot go stale unseen.
#[test]
fn words_in_bold_stand_in_the_program() {
    let crates = root().join("crates");
    let sources = ["desk/src", "core/src", "paper/src"].map(|folder| below(&crates.join(folder), ".rs"));
    // The guide's own sources would hold anything.
    let all = sources
        .iter()
        .flatten()
        .filter(|path| !path.ends_with("guide/pages.rs"))
        .flat_map(|path| quoted(&fs::read_to_string(path).unwrap()));
    let all = all.chain(messages(Language::English).into_iter().map(|(_, text)| text));
    let (patterns, texts): (HashSet<String>, HashSet<String>) = all.partition(|text| text.contains('{'));
    let paper: Vec<String> =
        below(&root().join("assets/typst"), ".typ").iter().map(|path| fs::read_to_string(path).unwrap()).collect();
    let stands = |words: &str| {
        texts.contains(words)
            || patterns.iter().any(|text| comes_to(text, words))
            || paper.iter().any(|text| text.contains(&format!("[{words}")) || text.contains(&format!("[*{words}")))
    };
    let mut stale = Vec::new();
    let mut count = 0;
    for page in pages::in_language(Language::English) {
        for words in bold(page) {
            count += 1;
            if !stands(words) {
                stale.push(format!("{}: {words}", page.name));
            }
        }
    }
    assert!(stale.is_empty(), "not in the program: {stale:#?}");
    assert!(count > 200, "{count}");
    // The check can fail.
    assert!(!stands("Add a product to the moon") && stands("+ Plan a pass"));
}

/// What stands in bold in Spanish is what the program says in Spanish where it says in English what stands there in bold on the English page.
#[test]
fn words_in_bold_are_those_of_the_program_in_spanish_too() {
    let (english, spanish) = (messages(Language::English), messages(Language::Spanish));
    let is_same = |words: &str, said: &str| {
        let mut ids = english.iter().filter(|(_, text)| says(text, words)).map(|(id, _)| id).peekable();
        // Words that the code says itself are in no message; then any will do.
        let any = ids.peek().is_none();
        let ids: HashSet<&String> = ids.collect();
        spanish.iter().any(|(id, text)| (any || ids.contains(id)) && says(text, said))
    };
    let mut stale = Vec::new();
    for (page, other) in pages::in_language(Language::English).iter().zip(pages::in_language(Language::Spanish)) {
        if !pages::SPANISH.iter().any(|(name, _)| *name == page.name) {
            continue;
        }
        let (words, said) = (bold(page), bold(other));
        assert_eq!(words.len(), said.len(), "{}", page.name);
        for (words, said) in words.into_iter().zip(said) {
            if !is_same(words, said) {
                stale.push(format!("{}: {words} / {said}", page.name));
            }
        }
    }
    assert!(stale.is_empty(), "not in the program: {stale:#?}");
    // The check can fail.
    assert!(is_same("Fields", "Lotes") && !is_same("Fields", "Bodega") && !is_same("Fields", "Fields"));
}

/// Every room of the core that makes findings or workings has a row that leads to a heading, and every row has such a room.
#[test]
fn every_finding_and_working_of_the_core_has_a_page() {
    let core = root().join("crates/core/src");
    let mut rooms = Vec::new();
    for path in below(&core, ".rs") {
        let room = path.strip_prefix(&core).unwrap().to_str().unwrap().replace('\\', "/");
        let room = room.strip_suffix(".rs").unwrap().to_owned();
        if ["finding", "working", "room"].contains(&room.as_str()) || room.ends_with("/tests") {
            continue;
        }
        let source = fs::read_to_string(&path).unwrap();
        let source = source.split("#[cfg(test)]\nmod tests {").next().unwrap();
        let says = ["Finding::new", "Finding::stop", "Finding::check", "Finding::note", ".forbid(", "forbid(&"];
        let says = says.iter().any(|call| source.contains(call));
        let reckons = source.contains("Working::new");
        // Called through a value, the room would be that of the finding's own file.
        for call in ["Finding::new", "Finding::stop", "Finding::check", "Finding::note", "Working::new"] {
            let called = source.matches(&format!("{call}(")).count();
            assert_eq!(source.matches(call).count(), called, "{room} takes {call} as a value");
        }
        if says || reckons {
            assert!(places::row(&room).is_some(), "{room} has no row in assets/guide/places.csv");
            rooms.push(room);
        }
    }
    assert!(rooms.len() > 50);
    for row in places::rows() {
        let is_used = rooms.iter().any(|room| *room == row.room || room.starts_with(&format!("{}/", row.room)));
        assert!(is_used, "{} says and reckons nothing", row.room);
        for place in [&row.finding, &row.working] {
            for language in Language::ALL {
                let heading = speaking(language, || place.heading());
                assert!(heading.is_some(), "{} leads to {place:?}", row.room);
            }
        }
    }
}

/// What the demo farm says and reckons leads to a page through its room, not to the pages for what has none.
#[test]
fn what_the_demo_farm_says_has_its_page() {
    let farm = demo::farm().unwrap();
    let mut findings: Vec<Finding> = Vec::new();
    let mut workings = 0;
    for id in farm.passes.keys() {
        let plan = plan(&farm, id).unwrap();
        for working in &plan.workings {
            let row = places::row(&working.room.name());
            assert!(row.is_some() && places::of_working(working.room).heading().is_some(), "{working:?}");
            workings += 1;
        }
        findings.extend(plan.findings);
    }
    let today = jiff::civil::date(2031, 6, 30);
    findings.extend(report::check::of_records(&farm, today).into_iter().map(|(_, finding)| finding));
    for finding in &findings {
        assert!(places::row(&finding.room.name()).is_some(), "{finding:?}");
        assert!(places::of_finding(finding.room).heading().is_some(), "{finding:?}");
    }
    assert!(findings.len() > 15 && workings > 30, "{} {workings}", findings.len());
    // The rule behind a sentence, not what called it.
    let stage = findings.iter().find(|finding| finding.text.starts_with("Long bottom is at V7")).unwrap();
    assert_eq!(stage.room.name(), "label/stage");
}

#[test]
fn what_a_grower_asks_is_found_first() {
    let first = |query: &str| {
        let hit = search::search(pages::all(), query).into_iter().next().unwrap_or_else(|| panic!("{query}"));
        format!("{}#{}", pages::all()[hit.page].name, hit.anchor)
    };
    assert_eq!(first("load card"), "load-card#read-a-load-card");
    assert_eq!(first("stop"), "levels#stop");
    assert_eq!(first("jar"), "jar-test#jar-test");
    assert_eq!(first("backups"), "file#your-file-backups-moving-to-another-machine");
    assert_eq!(first("delta t"), "hours#delta-t");
    assert_eq!(first("inversion"), "hours#inversion");
    assert_eq!(first("spill"), "safety#a-spill");
    assert_eq!(first("poison centre"), "safety#somebody-was-exposed");
    speak(Language::Spanish);
    assert_eq!(first("tarjeta de carga"), "load-card#leer-una-tarjeta-de-carga");
    assert_eq!(first("alto"), "levels#alto");
    assert_eq!(first("frasco"), "jar-test#prueba-del-frasco");
    assert_eq!(first("respaldo"), "file#su-archivo-copias-de-respaldo-pasar-a-otra-máquina");
    assert_eq!(first("inversion termica"), "hours#inversión-térmica");
    assert_eq!(first("derrame"), "safety#un-derrame");
    assert_eq!(first("intoxicaciones"), "safety#alguien-estuvo-expuesto");
    speak(Language::English);
}

fn focus(harness: &egui_kittest::Harness<'_, tankard::app::Desk>) -> Option<String> {
    harness
        .root()
        .query_by(|node| node.is_focused() && !node.is_hidden())
        .and_then(|node| node.accesskit_node().label())
}

/// Opened, searched, read and put away with the keyboard alone; the work beside it stays where it was.
#[test]
fn the_guide_is_used_with_the_keyboard_alone() {
    let mut harness = tank_loads(demo::farm().unwrap(), [1366.0, 768.0]);
    let chosen = harness.state().tank_loads.chosen.clone();
    harness.key_press(Key::F1);
    harness.run();
    // The pass is still there beside it.
    harness.get_by_label("Which adjuvant suits every partner?");
    harness.get_by_label("The evening before");
    harness.event(egui::Event::Text("sensitive soybean".to_owned()));
    harness.run();
    assert_eq!(focus(&harness).as_deref(), Some("Find in the guide"));
    harness.get_by_label_contains("Safety, After spraying: ");
    harness.key_press(Key::Tab);
    harness.run();
    harness.key_press(Key::Enter);
    harness.run();
    assert_eq!(harness.state().guide.page(), Some("safety"));
    assert_eq!(focus(&harness).as_deref(), Some("After spraying"));
    // From there the way goes on within the page, to its headings and links.
    harness.key_press(Key::Tab);
    harness.run();
    assert_eq!(focus(&harness).as_deref(), Some("A spill"));
    harness.key_press_modifiers(Modifiers::ALT, Key::ArrowLeft);
    harness.run();
    harness.get_by_label_contains("Safety, After spraying: ");
    harness.key_press(Key::F1);
    harness.run();
    assert!(!harness.state().guide.is_open());
    assert!(harness.query_by_label("Find in the guide").is_none());
    assert_eq!(harness.state().tank_loads.chosen, chosen);
    // It opens again where it was left.
    harness.key_press(Key::F1);
    harness.run();
    harness.get_by_label_contains("Safety, After spraying: ");
}

#[test]
fn links_lead_from_page_to_page_and_back() {
    let mut harness = tank_loads(demo::farm().unwrap(), [1366.0, 1200.0]);
    harness.get_by_label("Guide").click();
    harness.run();
    harness.get_by_role_and_label(Role::ListBoxOption, "Plan tomorrow's pass").click();
    harness.run();
    assert_eq!(harness.state().guide.page(), Some("plan-a-pass"));
    // It runs over two lines, and its middle lies beside it.
    harness.get_by_label("Choose adjuvants").click_accesskit();
    harness.run();
    assert_eq!(harness.state().guide.page(), Some("adjuvants"));
    harness.get_by_label("Back in the guide").click();
    harness.run();
    assert_eq!(harness.state().guide.page(), Some("plan-a-pass"));
    harness.get_by_label("All pages").click();
    harness.run();
    assert_eq!(harness.state().guide.page(), None);
    harness.get_by_label("Put the guide away").click();
    harness.run();
    assert!(!harness.state().guide.is_open());
}

#[test]
fn a_finding_and_a_working_lead_to_what_explains_them() {
    let mut harness = tank_loads(demo::farm().unwrap(), [1366.0, 768.0]);
    harness.get_all_by_label("Guide: Crop stage and dates").next().unwrap().click();
    harness.run();
    harness.run();
    assert_eq!(harness.state().guide.page(), Some("numbers-labels"));
    assert_eq!(focus(&harness).as_deref(), Some("Crop stage and dates"));
    // Put away, the heading line has room for all its numbers.
    harness.key_press(Key::F1);
    harness.run();
    harness.get_by_label("Time for the pass: 3 h 45 min in all, show working").click();
    harness.run();
    harness.get_by_label("Guide: Time for the pass").click();
    harness.run();
    harness.run();
    assert_eq!(harness.state().guide.page(), Some("numbers-sprayer"));
}

/// In Spanish a finding leads by the same table to the Spanish page, which is looked through in Spanish.
#[test]
fn the_guide_speaks_spanish() {
    speak(Language::Spanish);
    let mut harness = tank_loads(demo::farm().unwrap(), [1366.0, 768.0]);
    harness.get_all_by_label("Guía: Etapa del cultivo y fechas").next().unwrap().click();
    harness.run();
    harness.run();
    assert_eq!(harness.state().guide.page(), Some("numbers-labels"));
    assert_eq!(focus(&harness).as_deref(), Some("Etapa del cultivo y fechas"));
    type_over(&mut harness, "Buscar en la guía", "soya sensible");
    harness.get_by_label_contains("Seguridad, Después de aplicar: ").click();
    harness.run();
    harness.run();
    assert_eq!(harness.state().guide.page(), Some("safety"));
    assert_eq!(focus(&harness).as_deref(), Some("Después de aplicar"));
    // The page that is open turns with the language.
    speak(Language::English);
    harness.run();
    harness.get_by_role_and_label(Role::Heading, "A spill");
}

/// Where the window is too small for both, the guide takes the place of the work, which is there again afterwards.
#[test]
fn in_a_small_window_the_guide_stands_in_place_of_the_work() {
    let mut harness = tank_loads(demo::farm().unwrap(), [910.0, 512.0]);
    type_over(&mut harness, "Name of the pass", "Corn, once more");
    harness.key_press(Key::F1);
    harness.run();
    assert!(harness.query_by_label("Name of the pass").is_none());
    harness.get_by_label("Find in the guide");
    harness.key_press(Key::F1);
    harness.run();
    let pass = &harness.state().document.farm().passes["2031-06-12-corn-second-post"];
    assert_eq!(pass.name, "Corn, once more");
    assert_eq!(focus(&harness).as_deref(), Some("Name of the pass"));
}
