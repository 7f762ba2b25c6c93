//! The desk by keyboard and by ear: finding anything, the list of keys, names and states of what the keyboard reaches, small windows,
//! motion, and colours as people see them who see fewer.

// A test stops where its ground is missing.
#![allow(clippy::unwrap_used, clippy::indexing_slicing, clippy::panic)]

mod common;

use std::collections::BTreeSet;

use common::{evening, tank_loads, type_over, window};
use egui::accesskit::{Action, Role, Toggled};
use egui::{Key, Modifiers};
use egui_kittest::Harness;
use egui_kittest::kittest::{NodeT, Queryable};
use tankard::app::Desk;
use tankard::command::{Command, Spot, View};
use tankard::document::Document;
use tankard::find::index::{Index, Kind, LISTED, words};
use tankard::guide::{keyboard, pages};
use tankard::{demo, look};
use tankard_core::farm::{Farm, Field, Record};
use tankard_core::quantity::AsTyped;

/// As large as the window of 1366×768 points, and as what is left of it at 200 %.
const PLAIN: [f32; 2] = [1366.0, 768.0];
const TWICE: [f32; 2] = [683.0, 384.0];

type Window = Harness<'static, Desk>;

fn desk(view: View, size: [f32; 2]) -> Window {
    let mut desk = Desk::new(Document::copy(demo::farm().unwrap()), evening);
    desk.view = view;
    let mut harness = window(desk, size);
    harness.run();
    harness
}

fn press(harness: &mut Window, modifiers: Modifiers, key: Key) {
    harness.key_press_modifiers(modifiers, key);
    harness.run();
}

fn run(harness: &mut Window, command: Command) {
    let ctx = harness.ctx.clone();
    harness.state_mut().run(command, &ctx);
    harness.run();
}

fn letters(harness: &mut Window, text: &str) {
    harness.event(egui::Event::Text(text.to_owned()));
    harness.run();
}

fn focused(harness: &Window) -> Option<String> {
    harness
        .root()
        .query_by(|node| node.is_focused() && !node.is_hidden())
        .and_then(|node| node.accesskit_node().label())
}

/// What was found first, in words and with its kind.
fn found(farm: &Farm, query: &str) -> Vec<(Kind, String)> {
    let found = Index::whole(farm).find(query);
    found.things.into_iter().map(|thing| (thing.kind, words(farm, thing).unwrap().0)).collect()
}

#[test]
fn what_is_looked_for_comes_first_whatever_it_is() {
    let farm = demo::farm().unwrap();
    for (query, kind, name) in [
        ("mill", Kind::Field, "Mill field"),
        ("field mill", Kind::Field, "Mill field"),
        ("Soybean, post", Kind::Pass, "Soybean, post"),
        ("meso", Kind::Product, "Mesotrione 480 SC (demo)"),
        ("glyphosate 540", Kind::Product, "Glyphosate 540 SL (demo)"),
        ("yard", Kind::Water, "Yard well"),
        ("big boom", Kind::Rig, "Big boom"),
        ("2031-05-28", Kind::Record, "28 May 2031, Corn, first post"),
        ("28 may", Kind::Record, "28 May 2031, Corn, first post"),
        ("save as", Kind::Command, "Save as…"),
        ("stoc", Kind::Command, "Stock"),
        ("delta t", Kind::Guide, "Delta T"),
    ] {
        let first = found(&farm, query).into_iter().next();
        assert_eq!(first, Some((kind, name.to_owned())), "{query}");
    }
    assert!(found(&farm, "no such words here").is_empty() && found(&farm, "  ").is_empty());
    // An active finds the products that hold it, and a field the passes that go there.
    assert!(found(&farm, "clethodim").iter().any(|(kind, _)| *kind == Kind::Product));
    assert!(found(&farm, "long bottom").iter().any(|(kind, _)| *kind == Kind::Pass));
}

/// Accents and capitals are forgiven in both what is typed and what is held.
#[test]
fn accents_and_capitals_do_not_matter() {
    let mut farm = Farm::new("Höfe");
    for (id, name) in [("one", "Mühlfeld"), ("two", "Côté sud"), ("three", "ZITNA")] {
        farm.fields.insert(id.to_owned(), Field::new(name, AsTyped::parse("1 ha").unwrap()));
    }
    for (query, name) in
        [("muhl", "Mühlfeld"), ("MÜHL", "Mühlfeld"), ("cote", "Côté sud"), ("SUD CÔ", "Côté sud"), ("Žit", "ZITNA")]
    {
        assert_eq!(found(&farm, query).first(), Some(&(Kind::Field, name.to_owned())), "{query}");
    }
}

/// The beginning of a name, then of a word, then inside; no kind crowds out another.
#[test]
fn ranks_hold_and_one_kind_does_not_crowd_out_another() {
    let mut farm = Farm::new("Many");
    for number in 0..5_000 {
        let field = Field::new(&format!("Windmill {number}"), AsTyped::parse("1 ac").unwrap());
        farm.fields.insert(format!("f{number}"), field);
    }
    farm.fields.insert("word".to_owned(), Field::new("Old mill", AsTyped::parse("1 ac").unwrap()));
    farm.fields.insert("name".to_owned(), Field::new("Mill end", AsTyped::parse("1 ac").unwrap()));
    let all = Index::whole(&farm).find("mill");
    let names: Vec<String> = all.things.iter().map(|thing| words(&farm, *thing).unwrap().0).collect();
    assert_eq!(&names[..3], ["Mill end", "Old mill", "Windmill 0"]);
    assert_eq!((all.things.iter().filter(|thing| thing.kind == Kind::Field).count(), all.counts[0]), (LISTED, 5_002));
    let all = Index::whole(&farm).find("m");
    assert!(all.things.iter().any(|thing| thing.kind == Kind::Command) && all.counts[0] == 5_002);
}

/// A large farm is taken up piece by piece: what is there already is found at once, and in the end all of it.
#[test]
fn a_large_farm_is_taken_up_in_pieces() {
    let mut farm = Farm::new("Large");
    let first = jiff::civil::date(2020, 1, 1);
    for number in 0..10_000_i64 {
        let day = first.checked_add(jiff::Span::new().days(number % 3_000)).unwrap();
        farm.records.insert(format!("r{number}"), Record::new(&format!("Pass {number}"), day));
    }
    let mut index = Index::new(&farm);
    let mut pieces = 0;
    while !index.is_whole() {
        index.go_on(&farm);
        pieces += 1;
        assert!(!index.find("pass 9999").things.is_empty(), "the last record is looked at first");
        assert!(pieces < 10);
    }
    assert_eq!(pieces, 3);
    assert_eq!(index.find("2020-01-01").counts[7], 4);
    let mut desk = Desk::new(Document::copy(farm), evening);
    desk.view = View::Fields;
    let mut harness = window(desk, PLAIN);
    harness.run_steps(2);
    harness.key_press_modifiers(Modifiers::COMMAND, Key::K);
    harness.run_steps(8);
    harness.event(egui::Event::Text("2020-01-01".to_owned()));
    harness.run_steps(2);
    assert_eq!(harness.state().find.found().unwrap().counts[7], 4);
}

#[test]
fn finding_is_opened_moved_in_and_left_by_keys_alone() {
    let mut harness = tank_loads(demo::farm().unwrap(), PLAIN);
    harness.get_by_label("Name of the pass").focus();
    harness.run();
    press(&mut harness, Modifiers::COMMAND, Key::K);
    assert_eq!(focused(&harness).as_deref(), Some("Find anything"));
    letters(&mut harness, "soy");
    let chosen = |harness: &Window| -> Vec<String> {
        let rows = harness.root().query_all_by(|node| node.role() == Role::ListBoxOption);
        let found = rows.filter(|node| node.accesskit_node().label().is_some_and(|label| label.contains(", pass, ")));
        found
            .filter(|node| node.accesskit_node().is_selected() == Some(true))
            .map(|node| node.accesskit_node().label().unwrap())
            .collect()
    };
    // The keyboard stays in the box, which tells a screen reader the row that is meant.
    let first = chosen(&harness);
    assert_eq!((first.len(), focused(&harness)), (1, first.first().cloned()));
    let before = harness.state().document.farm().clone();
    press(&mut harness, Modifiers::NONE, Key::ArrowDown);
    assert_ne!(focused(&harness), first.first().cloned());
    press(&mut harness, Modifiers::NONE, Key::ArrowUp);
    assert_eq!(focused(&harness), first.first().cloned());
    press(&mut harness, Modifiers::NONE, Key::Tab);
    assert_ne!(focused(&harness), first.first().cloned());
    press(&mut harness, Modifiers::SHIFT, Key::Tab);
    assert_eq!(focused(&harness), first.first().cloned());
    press(&mut harness, Modifiers::NONE, Key::Escape);
    assert!(!harness.state().find.is_open());
    assert_eq!(focused(&harness).as_deref(), Some("Name of the pass"));
    press(&mut harness, Modifiers::COMMAND, Key::K);
    // Letters and Enter in one frame, as from quick hands on a slow machine.
    harness.event(egui::Event::Text("soybean, post".to_owned()));
    press(&mut harness, Modifiers::NONE, Key::Enter);
    assert_eq!(harness.state().tank_loads.chosen.as_deref(), Some("2031-06-14-soybean-post"));
    assert_eq!(focused(&harness).as_deref(), Some("Soybean, post"));
    // Nothing was typed anywhere else.
    assert!(*harness.state().document.farm() == before);
}

#[test]
fn each_kind_leads_to_its_place() {
    let mut harness = tank_loads(demo::farm().unwrap(), PLAIN);
    let mut go = |query: &str| {
        press(&mut harness, Modifiers::COMMAND, Key::K);
        letters(&mut harness, query);
        press(&mut harness, Modifiers::NONE, Key::Enter);
        harness.run();
        let desk = harness.state();
        assert!(!desk.find.is_open());
        (desk.view, desk.fields.chosen.clone(), desk.season_log.chosen.clone(), focused(&harness))
    };
    let (view, field, ..) = go("hill sixty");
    assert_eq!((view, field.as_deref()), (View::Fields, Some("hill-sixty")));
    let (view, _, record, focus) = go("2031-05-13");
    assert_eq!(view, View::SeasonLog);
    assert!(record.is_some_and(|id| id.contains("2031-05-13")) && focus.is_some_and(|name| name.contains("Triangle")));
    assert_eq!(go("atrazine 480").0, View::Shed);
    assert_eq!(go("yard well").0, View::Shed);
    assert_eq!(go("review").0, View::SeasonLog);
    assert_eq!(go("tank loads").0, View::TankLoads);
    go("which basis wins");
    go("delta t");
    assert_eq!(harness.state().guide.page(), Some("hours"));
}

/// Each page that a command names is the page that is then shown.
#[test]
fn commands_lead_to_the_pages_that_they_name() {
    let mut harness = desk(View::Fields, PLAIN);
    for (spot, there) in [
        (Spot::Map, "Coloured by"),
        (Spot::Sprayer, "Which nozzles do this pass best?"),
        (Spot::Jar, "Jar test"),
        (Spot::Stock, "Stock"),
        (Spot::Law, "Law"),
        (Spot::Review, "Review"),
    ] {
        run(&mut harness, Command::Show(spot));
        assert_eq!(harness.state().view, spot.view(), "{spot:?}");
        let starts = |text: Option<String>| text.is_some_and(|text| text.starts_with(there));
        let mut all = harness.root().query_all_by(|node| starts(node.label()) || starts(node.value()));
        assert!(all.next().is_some(), "{spot:?} shows {there}");
    }
}

/// The page on the keyboard is made from what the desk itself asks for its keys; the file beside the guide holds the same.
#[test]
fn the_list_of_keys_is_that_of_the_commands() {
    let file = pages::PAGES.iter().find(|page| page.name == keyboard::NAME).unwrap().text;
    assert!(file == keyboard::page(), "assets/guide/keyboard.md is to hold:\n{}", keyboard::page());
    for command in Command::LISTED.iter().filter(|command| command.key().is_some()) {
        assert!(file.contains(&format!(": **{}**", command.text())), "{command:?}");
    }
    let mut harness = tank_loads(demo::farm().unwrap(), PLAIN);
    press(&mut harness, Modifiers::COMMAND, Key::F1);
    assert_eq!(harness.state().guide.page(), Some("keyboard"));
    harness.get_by_role_and_label(Role::Button, "Look").click();
    harness.run();
    let mut keys = harness.root().query_all_by(|node| node.label().is_some_and(|label| label.starts_with("Keys")));
    assert!(keys.next().is_some(), "the menu has the list of keys");
}

/// No key is asked for beside the two tables, but for those that mean the same everywhere: Enter, Escape, Tab.
#[test]
fn keys_stand_in_the_tables_alone() {
    let root = std::path::Path::new(env!("CARGO_MANIFEST_DIR")).join("src");
    let mut folders = vec![root];
    let mut looked = 0;
    while let Some(folder) = folders.pop() {
        for entry in std::fs::read_dir(folder).unwrap().map(|entry| entry.unwrap().path()) {
            if entry.is_dir() {
                folders.push(entry);
                continue;
            }
            if entry.ends_with("command.rs") || entry.ends_with("keys.rs") {
                continue;
            }
            looked += 1;
            let text = std::fs::read_to_string(&entry).unwrap();
            for rest in text.split("Key::").skip(1) {
                let name: String = rest.chars().take_while(char::is_ascii_alphanumeric).collect();
                assert!(
                    ["Enter", "Escape", "Space", "Tab"].contains(&name.as_str()),
                    "{} asks for {name}",
                    entry.display()
                );
            }
        }
    }
    assert!(looked > 100);
}

/// What the keyboard or a screen reader reaches in a window, with what lacks a name.
fn nameless(harness: &Window) -> (usize, Vec<String>) {
    let mut reached = 0;
    let mut bad = Vec::new();
    for node in harness.root().query_all_by(|_| true) {
        let own = node.accesskit_node();
        if !own.data().supports_action(Action::Focus) || own.is_disabled() || own.role() == Role::Window {
            continue;
        }
        reached += 1;
        let name = own.label().unwrap_or_default();
        // The words of a part to read stand in its value.
        let is_text = matches!(own.role(), Role::Label | Role::Heading);
        let said = if name.trim().is_empty() && is_text { own.value().unwrap_or_default() } else { name };
        if said.trim().is_empty() || matches!(own.role(), Role::Unknown | Role::GenericContainer) {
            bad.push(format!("{:?} \"{said}\" at {:?}", own.role(), node.rect()));
        }
    }
    (reached, bad)
}

/// Every view and page of the demo farm, at both sizes: whatever can have the keyboard has a role and a name.
#[test]
fn nothing_that_has_the_keyboard_is_without_a_name() {
    let mut all = 0;
    let mut bad = BTreeSet::new();
    for size in [PLAIN, TWICE] {
        let mut harness = desk(View::Fields, size);
        let mut look = |harness: &Window, place: &str| {
            if std::env::var_os("SAY").is_some() {
                eprintln!("LOOK {size:?} {place}");
            }
            let (reached, without) = nameless(harness);
            assert!(reached > 8, "{place} has {reached}");
            all += reached;
            bad.extend(without.into_iter().map(|node| format!("{size:?} {place}: {node}")));
        };
        look(&harness, "Fields");
        for view in View::ALL {
            run(&mut harness, Command::Go(view));
            look(&harness, view.name());
            run(&mut harness, Command::List);
            look(&harness, view.name());
            run(&mut harness, Command::List);
        }
        for spot in Spot::ALL {
            run(&mut harness, Command::Show(spot));
            look(&harness, spot.name());
        }
        // What the commands do not name.
        run(&mut harness, Command::FarmPage);
        look(&harness, "Farm");
        for page in ["As typed", "What it may not get", "What it got"] {
            run(&mut harness, Command::Go(View::Fields));
            harness.state_mut().fields.map.open = false;
            harness.run();
            let tabs: Vec<_> = harness
                .root()
                .query_all_by(|node| {
                    node.role() == Role::Tab && node.label().is_some_and(|label| label.starts_with(page))
                })
                .collect();
            if let Some(tab) = tabs.first() {
                tab.click_accesskit();
            }
            drop(tabs);
            harness.run();
            look(&harness, page);
        }
        run(&mut harness, Command::Go(View::TankLoads));
        for editor in tankard::views::tank_loads::Editor::ALL {
            harness.state_mut().tank_loads.page = tankard::views::tank_loads::Page::Plan;
            harness.state_mut().tank_loads.editor = Some(editor);
            harness.run();
            look(&harness, &format!("{editor:?}"));
        }
        harness.state_mut().tank_loads.day = Some(jiff::civil::date(2031, 6, 12));
        harness.run();
        look(&harness, "the day");
        let record = harness.state().document.farm().records.keys().next().cloned();
        run(&mut harness, Command::Go(View::SeasonLog));
        harness.state_mut().season_log.in_front = tankard::views::season_log::Page::Records;
        harness.state_mut().season_log.chosen = record;
        harness.run();
        look(&harness, "a record");
        run(&mut harness, Command::Guide);
        look(&harness, "the guide");
        // A page of the guide is the same in both.
        for page in pages::all().iter().filter(|_| size == PLAIN) {
            let place = tankard::guide::Place::read(page.name);
            run(&mut harness, Command::GuideTo(place));
            look(&harness, page.name);
        }
        run(&mut harness, Command::Guide);
        run(&mut harness, Command::Find);
        look(&harness, "finding");
    }
    assert!(bad.is_empty(), "{} of {all}: {bad:#?}", bad.len());
    assert!(all > 2_000, "{all}");
}

/// A node that a screen reader finds by role and name; there must be one, and it must take the keyboard.
fn reach<'a>(harness: &'a Window, role: Role, name: &'a str) -> egui_kittest::Node<'a> {
    let all: Vec<_> = harness
        .root()
        .query_all_by(move |node| {
            node.role() == role
                && node.label().is_some_and(|label| label == name || label.starts_with(&format!("{name}: ")))
        })
        .collect();
    let names = || {
        let alike = harness.root().query_all_by(move |node| node.role() == role);
        alike.filter_map(|node| node.accesskit_node().label()).collect::<Vec<_>>()
    };
    assert_eq!(all.len(), 1, "{role:?} {name} among {:#?}", names());
    let node = all.into_iter().next().unwrap();
    assert!(node.accesskit_node().data().supports_action(Action::Focus), "{name} takes no keyboard");
    node
}

fn act(harness: &mut Window, role: Role, name: &str) {
    reach(harness, role, name).click_accesskit();
    harness.run();
}

/// Chooses of a list that opens, by the words of the closed list and of the choice.
fn choose(harness: &mut Window, list: &str, choice: &str) {
    act(harness, Role::ComboBox, list);
    act(harness, Role::Button, choice);
}

/// A pass is planned from its beginning to its cards by what a screen reader is told: names, roles and states, no place on the screen.
#[test]
fn a_pass_is_planned_by_ear() {
    let mut harness = desk(View::Fields, PLAIN);
    let view = |harness: &Window, name: &str| reach(harness, Role::Tab, name).accesskit_node().is_selected();
    assert_eq!((view(&harness, "Fields"), view(&harness, "Tank loads")), (Some(true), Some(false)));
    act(&mut harness, Role::Tab, "Tank loads");
    assert_eq!((view(&harness, "Fields"), view(&harness, "Tank loads")), (Some(false), Some(true)));
    act(&mut harness, Role::Button, "+ Plan a pass");
    let id = harness.state().tank_loads.chosen.clone().unwrap();
    // The new pass is the chosen row of the list.
    let row = reach(&harness, Role::ListBoxOption, "New pass");
    assert_eq!(row.accesskit_node().is_selected(), Some(true));
    type_over(&mut harness, "Name of the pass", "Beans, by ear");
    assert_eq!(
        reach(&harness, Role::TextInput, "Name of the pass").accesskit_node().value().as_deref(),
        Some("Beans, by ear")
    );
    // What is missing is said with its level in words, and leads there.
    let stop = harness.get_by_role_and_label(Role::Button, "Stop: The pass has no field yet");
    assert!(stop.accesskit_node().data().supports_action(Action::Focus));
    choose(&mut harness, "Add a field", "East sandhill · 71.5 ac soybean");
    let named = |harness: &Window| harness.state().document.farm().passes[&id].fields.clone();
    assert_eq!(named(&harness), ["east-sandhill"]);
    choose(&mut harness, "Add a product to the mix", "Clethodim 240 EC (demo)");
    assert_eq!(harness.state().document.farm().passes[&id].mix.len(), 1);
    let rate = harness
        .root()
        .query_by(|node| {
            node.role() == Role::TextInput && node.label().is_some_and(|label| label.starts_with("Rate of Clethodim"))
        })
        .map(|node| node.accesskit_node().label().unwrap());
    let rate = rate.expect("the rate has a box with its name");
    type_over(&mut harness, &rate, "8 fl oz/ac");
    assert_eq!(harness.state().document.farm().passes[&id].mix[0].rate.text(), "8 fl oz/ac");
    // A set of adjuvants is taken by its name.
    let take = harness
        .root()
        .query_all_by(|node| {
            node.role() == Role::Button
                && node.label().is_some_and(|label| label.starts_with("Take ") && !label.ends_with("out of the mix"))
        })
        .map(|node| node.accesskit_node().label().unwrap())
        .next()
        .expect("a set is offered");
    assert!(take.len() > "Take ".len());
    harness.root().query_all_by(|node| node.label() == Some(take.clone())).next().unwrap().click_accesskit();
    harness.run();
    let mix: Vec<String> =
        harness.state().document.farm().passes[&id].mix.iter().map(|line| line.product.clone()).collect();
    assert!(mix.len() > 1, "{take}: {mix:?}");
    // Which way of loads is in use is told as a state.
    let ways = ["full tanks, then a rest", "even loads", "by your aims"];
    let on = |harness: &Window| -> Vec<Option<bool>> {
        ways.iter()
            .map(|name| {
                let node = harness.root().query_all_by(|node| node.label().as_deref() == Some(*name)).next().unwrap();
                let node = node.accesskit_node();
                node.is_selected().or_else(|| node.toggled().map(|toggled| toggled == Toggled::True))
            })
            .collect()
    };
    assert_eq!(on(&harness), [Some(false), Some(false), Some(true)]);
    harness.get_by_label("even loads").click_accesskit();
    harness.run();
    assert_eq!(on(&harness), [Some(false), Some(true), Some(false)]);
    // What opens in place says whether it stands open.
    let open = |harness: &Window| reach(harness, Role::Button, "Weeds and day").accesskit_node().data().is_expanded();
    assert_eq!(open(&harness), Some(false));
    act(&mut harness, Role::Button, "Weeds and day");
    assert_eq!(open(&harness), Some(true));
    // The gauge is told from the bottom up, and the levels of what there is to settle are words.
    let gauge = harness.root().query_by(|node| node.role() == Role::Image).unwrap().accesskit_node().label().unwrap();
    assert!(gauge.starts_with("Sight gauge of a tank of ") && gauge.contains("Clethodim"), "{gauge}");
    let findings = harness.state_mut().document.plan(&id).unwrap().findings.clone();
    for finding in findings {
        let said = format!("{}: {}", finding.level.word(), finding.text);
        assert!(harness.root().query_all_by(|node| node.label().as_deref() == Some(&said)).next().is_some(), "{said}");
    }
    act(&mut harness, Role::Tab, "Load cards");
    assert_eq!(reach(&harness, Role::Tab, "Load cards").accesskit_node().is_selected(), Some(true));
}

/// What has got the keyboard and lies below what is seen comes into sight.
#[test]
fn what_has_the_keyboard_is_in_sight() {
    for size in [PLAIN, TWICE] {
        let mut harness = desk(View::Shed, size);
        let screen = egui::Rect::from_min_size(egui::Pos2::ZERO, size.into());
        let mut seen = 0;
        for _ in 0..40 {
            press(&mut harness, Modifiers::NONE, Key::Tab);
            let Some(id) = harness.ctx.memory(egui::Memory::focused) else { continue };
            let Some(response) = harness.ctx.read_response(id) else { continue };
            let whole = response.interact_rect.expand(2.0).contains_rect(response.rect);
            let tall = response.rect.height() > 200.0;
            assert!(
                whole || tall,
                "{size:?} {:?}: {:?} of {:?}",
                focused(&harness),
                response.interact_rect,
                response.rect
            );
            assert!(screen.expand(1.0).contains_rect(response.interact_rect), "{:?}", focused(&harness));
            seen += 1;
        }
        assert!(seen > 30, "{seen}");
    }
}

/// In a small window a list and its page take turns, and whoever is led somewhere sees the page.
#[test]
fn in_a_small_window_list_and_page_take_turns() {
    let mut harness = desk(View::Shed, TWICE);
    let find = "find a product";
    assert!(harness.query_by_label(find).is_none());
    act(&mut harness, Role::Button, "List in place of the page");
    harness.get_by_label(find);
    assert!(harness.query_by_label("Product name").is_none());
    act(&mut harness, Role::ListBoxOption, "Mesotrione 480 SC (demo), group 27 · 6 gal on hand");
    harness.run();
    assert!(harness.query_by_label(find).is_none());
    press(&mut harness, Modifiers::COMMAND, Key::L);
    harness.get_by_label(find);
    press(&mut harness, Modifiers::COMMAND, Key::K);
    letters(&mut harness, "yard well");
    press(&mut harness, Modifiers::NONE, Key::Enter);
    harness.run();
    assert!(harness.query_by_label(find).is_none());
    // Where there is room, both stand beside one another until the list is put away.
    let mut harness = desk(View::Shed, PLAIN);
    harness.get_by_label(find);
    press(&mut harness, Modifiers::COMMAND, Key::L);
    assert!(harness.query_by_label(find).is_none());
}

/// Less motion: nothing is on its way anywhere, and the mark in a box stands.
#[test]
fn less_motion_is_none() {
    let mut harness = desk(View::Fields, PLAIN);
    let style = |harness: &Window| harness.ctx.global_style();
    // A window of a test begins without motion.
    run(&mut harness, Command::Motion);
    assert!(style(&harness).animation_time > 0.0);
    // The mark in a box rests whatever moves, since it would draw the whole window twice a second.
    assert!(!style(&harness).visuals.text_cursor.blink);
    run(&mut harness, Command::Motion);
    for theme in [egui::Theme::Light, egui::Theme::Dark] {
        harness.ctx.set_theme(theme);
        harness.run();
        let style = style(&harness);
        assert_eq!(style.animation_time.to_bits(), 0.0_f32.to_bits());
        assert!(!style.visuals.text_cursor.blink);
        assert_eq!(style.scroll_animation.duration.max.to_bits(), 0.0_f32.to_bits());
    }
    run(&mut harness, Command::Motion);
    assert!(look::has_motion(&harness.ctx));
}
