//! The program as a script meets it: exit status, JSON, cards, and files that are wrong.

// A test stops where its ground is missing.
#![allow(clippy::unwrap_used, clippy::indexing_slicing, clippy::panic)]

use std::fs;
use std::path::{Path, PathBuf};
use std::process::{Command, Output};

use serde_json::Value;

fn demo() -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).join("../../demo-farm/larkspur-bend.ron")
}

fn tankard(arguments: &[&str], folder: &Path) -> Output {
    Command::new(env!("CARGO_BIN_EXE_tankard"))
        .args(["--language", "en"])
        .args(arguments)
        .current_dir(folder)
        .env_remove("DISPLAY")
        .env_remove("WAYLAND_DISPLAY")
        .output()
        .unwrap()
}

fn text(path: &Path) -> &str {
    path.to_str().unwrap()
}

#[test]
fn the_demo_farm_answers_check_with_its_stops() {
    let out = tankard(&["check", text(&demo())], Path::new("."));
    assert_eq!(out.status.code(), Some(2));
    let said = String::from_utf8(out.stdout).unwrap();
    for level in ["Stop ", "Check ", "Note "] {
        assert!(said.contains(&format!(": {level}")), "no {level}in {said}");
    }
}

#[test]
fn the_day_comes_in_words_and_as_json() {
    let out = tankard(&["day", text(&demo()), "--date", "2031-06-12"], Path::new("."));
    let words = String::from_utf8_lossy(&out.stdout).into_owned();
    assert!(out.status.success() && words.starts_with("Thursday 12 June 2031"), "{words}");
    assert!(
        words.contains("1. Corn, second post") && words.contains("1 clean-out, ") && !words.contains("Friday"),
        "{words}"
    );
    let out = tankard(&["day", text(&demo()), "--json"], Path::new("."));
    let json: serde_json::Value = serde_json::from_slice(&out.stdout).unwrap();
    assert_eq!(json["days"][0]["rigs"][0]["cost"]["clean_outs"], 1);
    let out = tankard(&["day", text(&demo()), "--date", "2031-06-11"], Path::new("."));
    assert!(String::from_utf8_lossy(&out.stdout).contains("No pass is planned on 11 June 2031"));
}

#[test]
fn the_plan_as_json_keeps_its_keys_and_its_balance() {
    let out = tankard(&["plan", text(&demo()), "--json"], Path::new("."));
    assert_eq!(out.status.code(), Some(0));
    let plan: Value = serde_json::from_slice(&out.stdout).unwrap();
    assert_eq!(plan["format"], 1);
    assert_eq!(plan["farm"], "Larkspur Bend (demo)");
    let passes = plan["passes"].as_array().unwrap();
    assert!(passes.len() >= 6);
    for pass in passes {
        let number = |key: &str| pass[key].as_f64().unwrap_or_else(|| panic!("{key} in {}", pass["id"]));
        let spray = number("spray_volume_l");
        let loads = pass["loads"].as_array().unwrap();
        let sum = |key: &str| loads.iter().map(|load| load[key].as_f64().unwrap()).sum::<f64>();
        assert!((sum("volume_l") / spray - 1.0).abs() < 1e-9);
        let ground: f64 =
            pass["fields"].as_array().unwrap().iter().map(|field| field["area_m2"].as_f64().unwrap()).sum();
        assert!((sum("area_m2") / ground - 1.0).abs() < 1e-9);
        assert!((ground * number("carrier_l_per_ha") / 1e4 / spray - 1.0).abs() < 1e-9);
        assert!(pass["water"]["hardness_mg_per_l"].is_f64() && pass["water"]["conditioner_need_kg_per_m3"].is_f64());
        assert_eq!(pass["order"].as_array().unwrap().len(), pass["lines"].as_array().unwrap().len());
        for line in pass["lines"].as_array().unwrap() {
            let (demand, key) = match line["demand_l"].as_f64() {
                Some(demand) => (demand, "amount_l"),
                None => (line["demand_kg"].as_f64().unwrap(), "amount_kg"),
            };
            let items: f64 = loads
                .iter()
                .flat_map(|load| load["items"].as_array().unwrap())
                .filter(|item| item["product"] == line["product"])
                .map(|item| item[key].as_f64().unwrap())
                .sum();
            assert!((items / demand - 1.0).abs() < 1e-9, "{}", line["product"]);
        }
        for load in loads {
            let liquids: f64 =
                load["items"].as_array().unwrap().iter().filter_map(|item| item["amount_l"].as_f64()).sum();
            assert!(
                (load["water_l"].as_f64().unwrap() + liquids - load["volume_l"].as_f64().unwrap()).abs() < 1e-9 * spray
            );
            assert!(load["items"].as_array().unwrap().iter().all(|item| !item["measure"].as_str().unwrap().is_empty()));
        }
        for finding in pass["findings"].as_array().unwrap() {
            assert!(["stop", "check", "note"].contains(&finding["level"].as_str().unwrap()));
            assert!(
                ["label", "law", "local", "own", "published", "practice", "arithmetic"]
                    .contains(&finding["basis"]["kind"].as_str().unwrap())
            );
            assert!(
                finding["about"].is_string() && finding["text"].is_string() && finding["basis"]["source"].is_string()
            );
        }
    }
}

fn has_keys(value: &Value, agreed: &[&str]) {
    let mut keys: Vec<&str> = value.as_object().unwrap().keys().map(String::as_str).collect();
    let mut agreed = agreed.to_vec();
    keys.sort_unstable();
    agreed.sort_unstable();
    assert_eq!(keys, agreed);
}

fn setting_has_keys(setting: &Value) {
    has_keys(
        setting,
        &[
            "set",
            "name",
            "speed_m_per_s",
            "flow_l_per_min",
            "pressure_kpa",
            "duty",
            "finest",
            "coarsest",
            "speeds_m_per_s",
            "pressures_kpa",
        ],
    );
    has_keys(&setting["speeds_m_per_s"], &["least", "most"]);
    has_keys(&setting["pressures_kpa"], &["least", "most"]);
}

fn rig_has_keys(pass: &Value) {
    let list = |value: &Value, key: &str| -> Vec<Value> { value[key].as_array().unwrap().clone() };
    setting_has_keys(&pass["setting"]);
    assert!(!list(pass, "sets").is_empty());
    for ranked in list(pass, "sets") {
        has_keys(&ranked, &["setting", "fit", "speed_m_per_s", "chosen", "reasons"]);
        for reason in list(&ranked, "reasons") {
            has_keys(&reason, &["text", "basis"]);
            has_keys(&reason["basis"], &["kind", "source"]);
        }
    }
    has_keys(&pass["work"], &["spraying_s", "fills_s", "road_s", "total_s", "lacks", "in_an_hour_m2", "loads_an_hour"]);
    let rinse = &pass["rinse"];
    has_keys(rinse, &["residual_l", "water_l", "ways", "last_ground_m2", "priming_l", "priming_ground_m2", "steps"]);
    for way in list(rinse, "ways") {
        has_keys(&way, &["rinses", "each_l", "left", "on_board", "source"]);
    }
    for step in list(rinse, "steps") {
        has_keys(&step, &["what", "basis"]);
        has_keys(&step["basis"], &["kind", "source"]);
    }
}

fn hours_have_keys(hours: &Value) {
    let list = |value: &Value, key: &str| -> Vec<Value> { value[key].as_array().unwrap().clone() };
    has_keys(hours, &["needs_s", "best", "longest", "sun", "limits", "hours"]);
    if !hours["best"].is_null() {
        has_keys(&hours["best"], &["from", "to"]);
    }
    if !hours["longest"].is_null() {
        has_keys(&hours["longest"], &["from", "to", "share"]);
    }
    for limit in list(hours, "limits") {
        has_keys(&limit, &["text", "outside", "basis"]);
        has_keys(&limit["basis"], &["kind", "source"]);
    }
    for hour in list(hours, "hours") {
        has_keys(&hour, &["at", "again", "lasts_s", "verdict", "part", "binds"]);
        assert!(["allowed", "doubtful", "forbidden"].contains(&hour["verdict"].as_str().unwrap()));
        for bind in list(&hour, "binds") {
            has_keys(&bind, &["limit", "verdict"]);
            assert!(bind["limit"].as_u64().unwrap() < list(hours, "limits").len() as u64);
        }
    }
}

/// The flow of a nozzle is volume over ground × speed × spacing (arithmetic): 15 gal/ac, 12 mph, 20 in are 0.606 gal/min, and a
/// nozzle of 0.6 gal/min at 40 psi takes 40.8 psi for it.
#[test]
fn the_plan_tells_of_rig_and_hours_in_words_and_numbers() {
    let arguments = ["plan", text(&demo()), "--pass", "2031-06-12-volunteer-corn"].map(str::to_owned);
    let mut arguments: Vec<&str> = arguments.iter().map(String::as_str).collect();
    let said = String::from_utf8(tankard(&arguments, Path::new(".")).stdout).unwrap();
    for words in [
        "  setting  110 degree, size 06 at 12 mph, 41 psi, coarse droplets",
        "  which nozzles do this pass best",
        "suits as planned  in this pass",
        "  time     spraying ",
        "  rinse    12 gal stay in the rig; 3 times with 40 gal leaves 1.2 % (",
        "  hours    07:00 to 13:00; the pass takes ",
        "           allowed 07:00 to 13:00",
    ] {
        assert!(said.contains(words), "{words} not in {said}");
    }
    arguments.push("--json");
    let plan: Value = serde_json::from_slice(&tankard(&arguments, Path::new(".")).stdout).unwrap();
    let pass = &plan["passes"][0];
    let near = |value: &Value, wanted: f64| (value.as_f64().unwrap() / wanted - 1.0).abs() < 2e-3;
    assert!(near(&pass["setting"]["flow_l_per_min"], 0.606_06 * 3.785_41), "{}", pass["setting"]);
    assert!(near(&pass["setting"]["pressure_kpa"], 40.81 * 6.894_76), "{}", pass["setting"]);
    assert_eq!(pass["hours"]["best"]["from"], "2031-06-12T07:00:00");
    // 12 gal stay, and each of three rinses with 40 gal leaves 12 ÷ 52 of it.
    assert!(near(&pass["rinse"]["ways"][0]["left"], (12.0_f64 / 52.0).powi(3)));
}

/// Scripts read these keys. A new one is added here; none is ever renamed or dropped.
#[test]
fn the_keys_of_the_json_are_these_and_no_others() {
    let out = tankard(&["plan", text(&demo()), "--json"], Path::new("."));
    let plan: Value = serde_json::from_slice(&out.stdout).unwrap();
    let list = |value: &Value, key: &str| -> Vec<Value> { value[key].as_array().unwrap().clone() };
    has_keys(&plan, &["format", "farm", "passes", "not_judged"]);
    for pass in list(&plan, "passes") {
        has_keys(
            &pass,
            &[
                "id",
                "name",
                "date",
                "fields",
                "area_m2",
                "carrier_l_per_ha",
                "spray_volume_l",
                "spray_time_s",
                "setting",
                "sets",
                "work",
                "rinse",
                "hours",
                "water",
                "adjuvant_choices",
                "adjuvants_in_mix",
                "adjuvant_collisions",
                "conditioner",
                "order",
                "lines",
                "loads",
                "findings",
            ],
        );
        has_keys(
            &pass["water"],
            &[
                "id",
                "hardness_mg_per_l",
                "conditioner_need_kg_per_m3",
                "conditioner_need_without_iron_kg_per_m3",
                "conditioner_recommended_kg_per_m3",
            ],
        );
        for choice in list(&pass, "adjuvant_choices").iter().chain(std::iter::once(&pass["adjuvants_in_mix"])) {
            let keys = ["rank", "products", "to_buy", "members", "cost_per_ha", "satisfies_all", "in_mix", "reasons"];
            has_keys(choice, &keys);
            for member in list(choice, "members") {
                let per_ha = if member.get("per_ha_l").is_some() { "per_ha_l" } else { "per_ha_kg" };
                has_keys(&member, &["product", "class", "rate", "rate_from", per_ha]);
            }
        }
        for collision in list(&pass, "adjuvant_collisions") {
            has_keys(&collision, &["wants", "forbids", "text", "bases", "ways_out"]);
        }
        if !pass["conditioner"].is_null() {
            let conditioner = &pass["conditioner"];
            let spray = if conditioner.get("kg_per_m3").is_some() { "kg_per_m3" } else { "l_per_m3" };
            let keys =
                ["product", "name", "class", "in_mix", spray, "ammonium_sulfate_kg_per_m3", "loads", "why", "basis"];
            has_keys(conditioner, &keys);
            for load in list(conditioner, "loads") {
                let amount = if load.get("amount_l").is_some() { "amount_l" } else { "amount_kg" };
                has_keys(&load, &["load", amount, "ammonium_sulfate_kg"]);
            }
        }
        for line in list(&pass, "lines") {
            let is_liquid = line.get("demand_l").is_some();
            let (rate, demand) =
                if is_liquid { ("rate_l_per_ha", "demand_l") } else { ("rate_kg_per_ha", "demand_kg") };
            has_keys(&line, &["product", rate, demand, "cost"]);
        }
        for load in list(&pass, "loads") {
            has_keys(
                &load,
                &["number", "volume_l", "area_m2", "water_l", "carried_l", "left_l", "fields", "items", "steps"],
            );
            for item in list(&load, "items") {
                let is_liquid = item.get("amount_l").is_some();
                let (amount, measured) =
                    if is_liquid { ("amount_l", "measured_l") } else { ("amount_kg", "measured_kg") };
                has_keys(&item, &["product", amount, measured, "measure", "containers"]);
            }
            for step in list(&load, "steps") {
                has_keys(&step, &[if step.get("product").is_some() { "product" } else { "water_to_l" }]);
            }
            for field in list(&load, "fields") {
                has_keys(&field, &["id", "area_m2"]);
            }
        }
        for field in list(&pass, "fields") {
            has_keys(&field, &["id", "area_m2"]);
        }
        rig_has_keys(&pass);
        hours_have_keys(&pass["hours"]);
        for finding in list(&pass, "findings") {
            has_keys(&finding, &["level", "about", "text", "hint", "basis"]);
            has_keys(&finding["basis"], &["kind", "source"]);
        }
    }
}

#[test]
fn one_pass_alone_and_one_that_is_not_there() {
    let one = tankard(&["plan", text(&demo()), "--pass", "2031-06-13-wheat-head-timing", "--json"], Path::new("."));
    let plan: Value = serde_json::from_slice(&one.stdout).unwrap();
    assert_eq!(plan["passes"].as_array().unwrap().len(), 1);
    let none = tankard(&["plan", text(&demo()), "--pass", "nowhere"], Path::new("."));
    assert_eq!(none.status.code(), Some(3));
    assert!(String::from_utf8(none.stderr).unwrap().contains("no pass \"nowhere\"; it has 2031-"));
}

#[test]
fn cards_are_written_but_not_where_a_stop_stands() {
    let folder = tempfile::tempdir().unwrap();
    let out = tankard(&["cards", text(&demo()), "--out", "cards.pdf"], folder.path());
    assert_eq!(out.status.code(), Some(0), "{}", String::from_utf8_lossy(&out.stderr));
    assert!(fs::read(folder.path().join("cards.pdf")).unwrap().starts_with(b"%PDF-"));
    assert!(String::from_utf8(out.stderr).unwrap().contains("no cards for \"2031-06-13-wheat-head-timing\": 1 Stop"));
    let stopped =
        ["cards", text(&demo()), "--pass", "2031-06-13-wheat-head-timing", "--out", "none.pdf"].map(str::to_owned);
    let stopped: Vec<&str> = stopped.iter().map(String::as_str).collect();
    let out = tankard(&stopped, folder.path());
    assert_eq!(out.status.code(), Some(2));
    assert!(!folder.path().join("none.pdf").exists());
}

/// The demo farm's first day has a pass with three cards and one with a Stop, its second one pass with a Stop.
#[test]
fn the_sheet_of_a_day_is_written_with_and_without_cards() {
    let folder = tempfile::tempdir().unwrap();
    let evening = |more: &[&str]| {
        let farm = demo();
        let mut arguments = vec!["evening", text(&farm), "--out", "evening.pdf"];
        arguments.extend(more);
        let out = tankard(&arguments, folder.path());
        let words = |bytes: Vec<u8>| String::from_utf8(bytes).unwrap();
        (out.status.code(), words(out.stdout), words(out.stderr))
    };
    let pages = || {
        let bytes = fs::read(folder.path().join("evening.pdf")).unwrap();
        let text = String::from_utf8_lossy(&bytes).into_owned();
        text.matches("/Type/Page").count() - text.matches("/Type/Pages").count()
    };
    let said = "sheet of 12 June 2031 written to evening.pdf\n".to_owned();
    assert_eq!(evening(&["--date", "2031-06-12"]), (Some(0), said, String::new()));
    let alone = pages();
    assert_eq!(alone, 1);
    let (status, said, _) = evening(&["--date", "2031-06-12", "--with-cards"]);
    assert_eq!(status, Some(0));
    let cards: usize =
        said.strip_prefix("sheet of 12 June 2031 with ").unwrap().split(' ').next().unwrap().parse().unwrap();
    assert_eq!(cards, 3, "{said}");
    assert_eq!(pages(), alone + cards);

    let (status, said, problem) = evening(&["--date", "2031-06-13", "--with-cards"]);
    assert_eq!((status, said.as_str()), (Some(2), "sheet of 13 June 2031 with 0 cards written to evening.pdf\n"));
    assert!(problem.contains("no cards for \"2031-06-13-wheat-head-timing\": 1 Stop"), "{problem}");
    assert_eq!(pages(), 1);

    let (status, said, problem) = evening(&["--date", "2031-06-11"]);
    assert_eq!((status, said.as_str()), (Some(1), ""));
    assert!(problem.contains("no pass is planned on 11 June 2031"), "{problem}");
    assert_eq!(evening(&["--date", "tomorrow"]).0, Some(64));
    fs::write(folder.path().join("bare.ron"), "Farm(format: 1, name: \"Bare\")").unwrap();
    let out = tankard(&["evening", "bare.ron", "--out", "none.pdf"], folder.path());
    assert_eq!(out.status.code(), Some(1));
    assert!(String::from_utf8(out.stderr).unwrap().contains("choose the day with --date"));
    assert!(!folder.path().join("none.pdf").exists());
}

#[test]
fn without_a_display_the_bare_command_plans_and_writes_the_cards() {
    let folder = tempfile::tempdir().unwrap();
    let out = tankard(&[], folder.path());
    assert_eq!(out.status.code(), Some(0));
    assert!(String::from_utf8(out.stderr).unwrap().contains("no display"));
    assert!(String::from_utf8(out.stdout).unwrap().contains("Corn, second post"));
    assert!(fs::read(folder.path().join("demo-farm-cards.pdf")).unwrap().starts_with(b"%PDF-"));
}

#[test]
fn a_wrong_file_gets_one_message_status_3_and_is_left_alone() {
    let folder = tempfile::tempdir().unwrap();
    let good = fs::read_to_string(demo()).unwrap();
    let cases: [(&str, String, &str); 9] = [
        ("truncated", good.chars().take(good.chars().count() / 2).collect(), "line "),
        ("wrong unit", good.replacen("74.6 ac", "74.6 psi", 1), "\"psi\" is not a unit"),
        ("unknown field", good.replacen("crop:", "crpo:", 1), "crpo"),
        ("negative area", good.replacen("74.6 ac", "-74.6 ac", 1), "below zero"),
        ("not a number", good.replacen("74.6 ac", "NaN ac", 1), "does not begin with a number"),
        ("empty", String::new(), "empty"),
        ("newer", good.replacen("format: 1", "format: 99", 1), "newer Tankard"),
        ("no farm", "# just a note\n".to_owned(), "line 1"),
        ("impossible day", good.replacen("date: \"2031-06-12\"", "date: \"2031-06-32\"", 1), "line "),
    ];
    for (name, text, says) in cases {
        let path = folder.path().join("farm.ron");
        fs::write(&path, &text).unwrap();
        for command in
            [vec!["check", "farm.ron"], vec!["plan", "farm.ron", "--json"], vec!["cards", "farm.ron", "--out", "c.pdf"]]
        {
            let out = tankard(&command, folder.path());
            let message = String::from_utf8(out.stderr).unwrap();
            assert_eq!(out.status.code(), Some(3), "{name}: {message}");
            assert!(message.contains(says) && message.lines().count() == 1, "{name}: {message}");
            assert!(message.contains("farm.ron"), "{name}: {message}");
        }
        assert_eq!(fs::read_to_string(&path).unwrap(), text, "{name}");
        assert!(!folder.path().join("c.pdf").exists());
    }
}

#[test]
fn a_link_to_nothing_is_a_stop_and_not_a_panic() {
    let folder = tempfile::tempdir().unwrap();
    let good = fs::read_to_string(demo()).unwrap();
    for (from, to) in [
        ("product: \"mesotrione-480\"", "product: \"gone\""),
        ("water: \"yard-well\"", "water: \"gone\""),
        ("rig: \"big-boom\"", "rig: \"gone\""),
        ("            \"mill-field\",", "            \"gone\","),
        ("74.6 ac", "0 ac"),
    ] {
        let text = good.replace(from, to);
        assert_ne!(text, good, "{from}");
        let path = folder.path().join("farm.ron");
        fs::write(&path, text).unwrap();
        let out = tankard(&["check", "farm.ron"], folder.path());
        assert!(matches!(out.status.code(), Some(2 | 3)), "{to}: {}", String::from_utf8_lossy(&out.stderr));
    }
}

#[test]
fn a_missing_file_is_named() {
    let out = tankard(&["check", "not-there.ron"], Path::new("."));
    assert_eq!(out.status.code(), Some(3));
    assert!(String::from_utf8(out.stderr).unwrap().contains("not-there.ron"));
}

#[test]
fn cards_do_not_take_the_place_of_a_farm() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("farm.ron");
    let farm = fs::read(demo()).unwrap();
    fs::write(&path, &farm).unwrap();
    let cards =
        |to: &str| tankard(&["cards", "farm.ron", "--pass", "2031-06-14-soybean-post", "--out", to], folder.path());
    let out = cards("farm.ron");
    assert_eq!(out.status.code(), Some(3));
    let says = String::from_utf8(out.stderr).unwrap();
    assert!(says.contains("that is a farm, so it is left alone; choose another name: farm.ron"), "{says}");
    assert_eq!(fs::read(&path).unwrap(), farm);
    for _ in 0..2 {
        assert_eq!(cards("cards.pdf").status.code(), Some(0));
    }
}

#[test]
fn records_go_out_and_come_back() {
    let folder = tempfile::tempdir().unwrap();
    let ask = |arguments: &[&str]| {
        let out = tankard(&[&["records", text(&demo())], arguments].concat(), folder.path());
        (out.status.code(), String::from_utf8(out.stdout).unwrap(), String::from_utf8(out.stderr).unwrap())
    };
    let (status, said, _) = ask(&["--csv", "out.csv", "--json", "out.json"]);
    assert_eq!(status, Some(0), "{said}");
    let farm = tankard_file::store::open(&demo()).unwrap().0;
    let json: Value = serde_json::from_slice(&fs::read(folder.path().join("out.json")).unwrap()).unwrap();
    assert_eq!(json["records"].as_array().unwrap().len(), farm.records.len());
    assert_eq!(json["period"], Value::Null);
    // Into the farm they came from there is nothing to take; into a bare one all of them.
    let (status, _, why) = ask(&["--import", "out.csv", "--out", "same.ron"]);
    assert!(status == Some(2) && why.contains("there already, word for word"), "{why}");
    fs::write(folder.path().join("bare.ron"), "Farm(format: 1, name: \"Bare\")").unwrap();
    let bare = |arguments: &[&str]| tankard(&[&["records", "bare.ron"], arguments].concat(), folder.path());
    assert_eq!(bare(&["--import", "out.csv", "--out", "new.ron"]).status.code(), Some(0));
    assert_eq!(tankard_file::store::open(&folder.path().join("new.ron")).unwrap().0.records, farm.records);
    // A file that is there is left alone; a season without records gives none.
    assert_eq!(bare(&["--import", "out.csv", "--out", "new.ron"]).status.code(), Some(3));
    let year = farm.records[0].date.year().to_string();
    assert_eq!(ask(&["--json", "year.json", "--season", &year]).0, Some(0));
    let json: Value = serde_json::from_slice(&fs::read(folder.path().join("year.json")).unwrap()).unwrap();
    assert_eq!(json["period"]["to"], format!("{year}-12-31"));
    assert_eq!(ask(&["--csv", "none.csv", "--season", "1999"]).0, Some(1));
    assert!(!folder.path().join("none.csv").exists());
    // A spreadsheet of past seasons: one row is refused, the rest is taken.
    let sheet =
        "Date,Field,Acres,Product,Amount (gal)\n5/30/2030,North,40,Oil (demo),5\n5/30/2030,South,40,Oil (demo),some\n";
    fs::write(folder.path().join("past.csv"), sheet).unwrap();
    let out = bare(&["--import", "past.csv", "--out", "past.ron"]);
    let why = String::from_utf8(out.stderr).unwrap();
    assert!(out.status.code() == Some(1) && why.contains("line 3 is left out: amount: "), "{why}");
    assert_eq!(tankard_file::store::open(&folder.path().join("past.ron")).unwrap().0.records.len(), 1);
    fs::write(folder.path().join("past.csv"), sheet.replace("5/30", "5/3")).unwrap();
    let out = bare(&["--import", "past.csv", "--out", "asked.ron"]);
    assert!(
        out.status.code() == Some(2) && String::from_utf8(out.stderr).unwrap().contains("choose how days are written")
    );
    for wrong in
        [&["--out", "x.ron"][..], &[], &["--import", "out.csv"], &["--csv", "a", "--import", "out.csv", "--out", "b"]]
    {
        assert_eq!(ask(wrong).0, Some(64), "{wrong:?}");
    }
}

#[test]
fn a_wrong_command_line_is_no_stop() {
    let here = Path::new(".");
    for wrong in [&["check"][..], &["cards", "farm.ron"], &["--nonsense"], &["--scale", "5"]] {
        let out = tankard(wrong, here);
        assert_eq!(out.status.code(), Some(64), "{wrong:?}");
        assert!(out.stdout.is_empty() && !out.stderr.is_empty());
    }
    for asked in [&["--help"][..], &["--version"], &["help", "check"]] {
        let out = tankard(asked, here);
        assert_eq!(out.status.code(), Some(0), "{asked:?}");
        assert!(!out.stdout.is_empty() && out.stderr.is_empty());
    }
}

#[test]
fn the_command_line_speaks_the_language_that_is_asked_for() {
    let here = Path::new(".");
    let said = |arguments: &[&str]| {
        let out = tankard(arguments, here);
        let text = |bytes: &[u8]| String::from_utf8(bytes.to_vec()).unwrap();
        (out.status.code(), text(&out.stdout), text(&out.stderr))
    };
    let (status, plan, _) = said(&["--language", "es", "plan", text(&demo())]);
    assert_eq!(status, Some(0));
    assert!(plan.ends_with("Rigen la etiqueta y la ley local; esto es un cálculo de lo que se anotó.\n"), "{plan}");
    // What a person typed stays, and the numbers are the same.
    let english = said(&["plan", text(&demo())]).1;
    assert!(plan.contains("Glyphosate 540 SL (demo)") && english.contains("Glyphosate 540 SL (demo)"));
    assert_eq!(plan.lines().count(), english.lines().count());
    let (status, help, _) = said(&["help", "check", "--language=es"]);
    assert!(status == Some(0) && help.contains("Uso: tankard check") && help.contains("La finca"), "{help}");
    let (status, _, wrong) = said(&["--language", "es", "plan", text(&demo()), "--pass", "none"]);
    assert!(
        status == Some(3) && wrong.starts_with("tankard: la finca no tiene la aplicación \"none\"; tiene "),
        "{wrong}"
    );
    let (status, _, wrong) = said(&["--language", "es", "day", text(&demo()), "--date", "June"]);
    assert_eq!(status, Some(64));
    assert!(wrong.contains("\"June\" no es un día; escríbalo como 2031-06-12") && wrong.contains("--help"), "{wrong}");
    assert!(!wrong.contains("Usage") && !wrong.contains("invalid"), "{wrong}");
}

#[test]
fn a_farm_without_a_pass_has_no_cards() {
    let folder = tempfile::tempdir().unwrap();
    fs::write(folder.path().join("farm.ron"), "Farm(format: 1, name: \"Bare\")").unwrap();
    let out = tankard(&["cards", "farm.ron", "--out", "cards.pdf"], folder.path());
    assert_eq!(out.status.code(), Some(1));
    assert!(String::from_utf8(out.stderr).unwrap().contains("no pass is planned"));
    assert!(!folder.path().join("cards.pdf").exists());
}

#[cfg(unix)]
#[test]
fn a_closed_pipe_is_no_fault_and_a_full_disk_is() {
    use std::process::Stdio;
    let run = |to: Stdio| {
        let child = Command::new(env!("CARGO_BIN_EXE_tankard"))
            .args(["--language", "en"])
            .args(["plan", text(&demo())])
            .stdout(to)
            .stderr(Stdio::piped())
            .spawn()
            .unwrap();
        child.wait_with_output().unwrap()
    };
    let (reader, writer) = std::io::pipe().unwrap();
    drop(reader);
    let closed = run(writer.into());
    assert!(closed.status.code() == Some(0) && closed.stderr.is_empty());
    // Linux has a device that is always full.
    if let Ok(full) = fs::OpenOptions::new().write(true).open("/dev/full") {
        let full = run(full.into());
        assert_eq!(full.status.code(), Some(3));
        assert!(String::from_utf8(full.stderr).unwrap().contains("the answer could not be written: "));
    }
}
