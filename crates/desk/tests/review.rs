//! The season review as a person uses it: through the names that a screen reader says.

// A test stops where its ground is missing.
#![allow(clippy::unwrap_used, clippy::indexing_slicing)]

mod common;

use std::rc::Rc;

use egui::accesskit::Role;
use egui_kittest::Harness;
use egui_kittest::kittest::Queryable;
use jiff::civil::{Date, DateTime, date, datetime};
use tankard::app::Desk;
use tankard::command::View;
use tankard::document::Document;
use tankard::views::season_log::Page;
use tankard::views::season_log::review::{self, Asked};
use tankard_core::farm::{
    Active, AdjuvantClass, Effect, Farm, Field, Formulation, Outcome, Plot, Product, ProductKind, Record, RecordField,
    Trial,
};
use tankard_core::quantity::ActiveBasis;
use tankard_core::season::record::of_product;

use common::shed::q;

const GLYPHOSATE: &str = "Glyphosate 540 SL (demo)";
const OIL: &str = "Methylated seed oil (demo)";

fn noon(_zone: &str) -> DateTime {
    datetime(2032, 8, 1, 12, 0, 0, 0)
}

fn product(name: &str, kind: ProductKind, class: Option<AdjuvantClass>, price: &str) -> Product {
    let mut product = Product::new(name, kind, Formulation::SL);
    product.class = class;
    product.price = Some(q(price));
    product
}

/// Two fields of 80 and 40 acres, a herbicide at $20 a gallon and an oil at $16.
fn farm() -> Farm {
    let mut farm = Farm::new("Two fields");
    for (id, name, area, crop) in [("mill", "Mill field", "80 ac", "corn"), ("hill", "Hill field", "40 ac", "soybean")]
    {
        let mut field = Field::new(name, q(area));
        crop.clone_into(&mut field.crop);
        farm.fields.insert(id.to_owned(), field);
    }
    let mut glyphosate = product(GLYPHOSATE, ProductKind::Herbicide, None, "20 / gal");
    glyphosate.actives.push(Active {
        name: "glyphosate".to_owned(),
        group: "9".to_owned(),
        basis: ActiveBasis::AcidEquivalent,
        content: q("540 g/L"),
    });
    farm.products.insert("glyphosate".to_owned(), glyphosate);
    let oil = product(OIL, ProductKind::Adjuvant, Some(AdjuvantClass::MethylatedSeedOil), "16 / gal");
    farm.products.insert("oil".to_owned(), oil);
    farm
}

/// A record on some fields with amounts of products.
fn record(farm: &Farm, name: &str, day: Date, fields: &[&str], amounts: &[(&str, &str)]) -> Record {
    let mut record = Record::new(name, day);
    for id in fields {
        let field = &farm.fields[*id];
        let mut ground = RecordField::new(&field.name, field.area.clone());
        ground.crop = (&field.crop).into();
        ground.planned = Some(field.area.clone());
        record.fields.insert((*id).to_owned(), ground);
    }
    for (id, amount) in amounts {
        let made = of_product(&(*id).to_owned(), &farm.products[*id], q(amount), farm.units);
        record.lines.push(made);
    }
    record
}

/// Two passes in 2031 and one in 2032. Mill field has glyphosate in both seasons.
fn recorded() -> Farm {
    let mut farm = farm();
    let both = record(&farm, "Burndown", date(2031, 4, 20), &["mill", "hill"], &[("glyphosate", "30 gal")]);
    let mut mill = record(&farm, "Post", date(2031, 6, 2), &["mill"], &[("glyphosate", "22 gal"), ("oil", "10 gal")]);
    mill.lines[0].planned = Some(q("20 gal"));
    mill.volume = Some(q("1200 gal"));
    mill.water = "Yard well".into();
    let later = record(&farm, "Post again", date(2032, 6, 5), &["mill"], &[("glyphosate", "20 gal")]);
    for (id, record) in [("both", both), ("mill", mill), ("later", later)] {
        farm.records.insert(id.to_owned(), record);
    }
    farm
}

fn window(farm: Farm) -> Harness<'static, Desk> {
    let mut desk = Desk::new(Document::copy(farm), noon);
    desk.view = View::SeasonLog;
    desk.season_log.in_front = Page::Review;
    let mut harness = common::window(desk, [1366.0, 900.0]);
    harness.run();
    harness
}

fn all_seasons(harness: &mut Harness<'_, Desk>) {
    harness.get_by_label("All seasons").click();
    harness.run();
}

fn go(harness: &mut Harness<'_, Desk>, page: &str) {
    harness.get_by_role_and_label(Role::ListBoxOption, page).click();
    harness.run();
}

fn choose(harness: &mut Harness<'_, Desk>, closed: &str, open: &str) {
    harness.get_by_label(closed).click();
    harness.run();
    harness.get_by_role_and_label(Role::Button, open).click();
    harness.run();
}

#[test]
fn every_page_opens_by_its_name() {
    let mut harness = window(recorded());
    all_seasons(&mut harness);
    for (page, holds) in [
        ("Overview", "3 passes, 280 ac treated"),
        ("Products and actives", "Actives over the ground of the farm: glyphosate 2.7 lb ae/ac"),
        ("Resistance groups", "Mill field: 2031 9 ×2 came again; 2032 9 came again"),
        ("Adjuvants", "Use and cost: 1 row of class, products, went out, ground, records, cost, over ground"),
        ("Planned and applied", "No record says what was left over."),
        ("Weather", "wind: records without it 3 of 3"),
        ("Cost", "$1,600.00 in all, $5.71/ac over 280 ac"),
        ("Water and hours", "Yard well: spray 1,200 gal, water in it 1,168 gal, records 1, without a volume 0"),
        ("Outcomes", "Nothing is rated yet: rate a field on the page of its record."),
        ("Trials", "No trial is laid out yet. A trial holds two treatments against one another, pair by pair."),
    ] {
        go(&mut harness, page);
        let found = harness.query_all_by_label_contains(holds).count();
        assert_eq!(found, 1, "{page}: {holds}");
    }
}

/// Figures reckoned by hand: 30 + 22 + 20 gal at $20 and 10 gal at $16; 120 + 80 + 80 acres.
#[test]
fn charts_and_tables_say_the_same() {
    let mut harness = window(recorded());
    all_seasons(&mut harness);
    harness.get_by_label("Ground treated by season: 2031 200 ac; 2032 80 ac");
    harness.get_by_label("2031: passes 2, treated 200 ac, at least once 120 ac");
    harness.get_by_label("Ground treated by month in 2032: Jun 80 ac");
    harness.get_by_label("Jun 2031: passes 1, treated 80 ac, since January 200 ac");
    harness.get_by_label("Ground treated since January, season by season: 2031 200 ac; 2032 80 ac");
    go(&mut harness, "Products and actives");
    harness.get_by_label(&format!("Ground treated by product: {GLYPHOSATE} 280 ac; {OIL} 80 ac"));
    harness.get_by_label(&format!(
        "{GLYPHOSATE}: kind herbicide, went out 72 gal, ground 280 ac, records 3, cost $1,440.00"
    ));
    harness.get_by_label(&format!(
        "{OIL}: kind methylated seed oil, went out 10 gal, ground 80 ac, records 1, cost $160.00"
    ));
    go(&mut harness, "Cost");
    harness.get_by_label("Cost by field: Mill field $1,400.00; Hill field $200.00");
    harness.get_by_label("Mill field: cost $1,400.00, over ground $5.83/ac, ground 240 ac, uses without a price 0");
    choose(&mut harness, "Cost by: field", "adjuvant class");
    harness.get_by_label("Cost by adjuvant class: Methylated seed oil $160.00");
    go(&mut harness, "Adjuvants");
    harness.get_by_label("Ground treated by adjuvant class: Methylated seed oil 80 ac; Without any 200 ac");
    // 22 gal where 20 were planned.
    go(&mut harness, "Planned and applied");
    harness.get_by_label("Errors in per cent: amounts over ground: +10 to +20 1 uses");
    harness.get_by_label(&format!("2 June 2031, Post: product {GLYPHOSATE}, error +10 %"));
}

#[test]
fn choices_change_what_counts() {
    let mut harness = window(recorded());
    // To begin with, the season that is going on.
    harness.get_by_label("1 pass, 80 ac treated");
    choose(&mut harness, "From season: 2032", "2031");
    harness.get_by_label("3 passes, 280 ac treated");
    // The end chosen last holds.
    choose(&mut harness, "To season: 2032", "2031");
    harness.get_by_label("2 passes, 200 ac treated");
    choose(&mut harness, "From season: 2031", "2032");
    harness.get_by_label("1 pass, 80 ac treated");
    all_seasons(&mut harness);
    choose(&mut harness, "Field: all fields", "Hill field");
    harness.get_by_label("1 pass, 40 ac treated");
    choose(&mut harness, "Crop: all crops", "corn");
    harness.get_by_label("No record fits what is chosen. Choose other seasons, another field or another crop.");
    choose(&mut harness, "Field: Hill field", "all fields");
    harness.get_by_label("3 passes, 240 ac treated");
}

/// A field that is gone from the records is no longer chosen for ever.
#[test]
fn what_is_gone_is_no_longer_chosen() {
    let mut harness = window(recorded());
    all_seasons(&mut harness);
    choose(&mut harness, "Field: all fields", "Hill field");
    harness.state_mut().document.edit(|farm| {
        farm.records.shift_remove("both");
    });
    harness.run();
    harness.get_by_label("2 passes, 160 ac treated");
    harness.get_by_label("Field: all fields");
}

#[test]
fn what_has_no_price_is_said_and_not_counted() {
    let mut farm = recorded();
    farm.records["later"].lines[0].price = None;
    let mut harness = window(farm);
    go(&mut harness, "Cost");
    harness.get_by_label("No price in all");
    harness.get_by_label(&format!("Without a price: {GLYPHOSATE} once"));
    all_seasons(&mut harness);
    harness.get_by_label("At least $1,200.00 in all, at least $4.29/ac over 280 ac");
    harness.get_by_label("Cost by field: Mill field at least $1,000.00; Hill field $200.00");
}

#[test]
fn a_group_that_came_again_is_told_in_words() {
    let mut farm = recorded();
    for year in [2033, 2034] {
        let again = record(&farm, "Post", date(year, 6, 5), &["mill"], &[("glyphosate", "20 gal")]);
        farm.records.insert(year.to_string(), again);
    }
    let mut harness = window(farm);
    all_seasons(&mut harness);
    go(&mut harness, "Resistance groups");
    harness.get_by_label_contains("Mill field: 2031 9 ×2 came again; 2032 9 came again");
    harness.get_by_label_contains("Mill field: group 9, it came in each season from 2031 to 2034");
}

/// Wind of 25 mph is above any limit that is usual; here no label says one.
#[test]
fn weather_outside_a_limit_leads_to_its_record() {
    let mut farm = recorded();
    farm.records["later"].wind = Some(q("25 mph"));
    let mut harness = window(farm);
    go(&mut harness, "Weather");
    harness.get_by_label_contains(
        "1 record held against labels, laws and practice: 0 outside a label or a law, 1 outside",
    );
    harness.get_by_label_contains("Note: \"Post again\" of 5 June 2032: it was sprayed at 25 mph").click();
    harness.run();
    let desk = harness.state();
    assert_eq!(desk.season_log.in_front, Page::Records);
    assert_eq!(desk.season_log.chosen.as_deref(), Some("later"));
    // The review stands where it was left.
    harness.get_by_label("Review").click();
    harness.run();
    assert_eq!(harness.state().season_log.review.page, review::Page::Weather);
}

#[test]
fn a_large_error_leads_to_its_record() {
    let mut harness = window(recorded());
    all_seasons(&mut harness);
    go(&mut harness, "Planned and applied");
    let name = format!("2 June 2031, Post: product {GLYPHOSATE}, error +10 %");
    harness.get_by_label(&name).scroll_to_me();
    harness.run();
    harness.get_by_label(&name).click();
    harness.run();
    assert_eq!(harness.state().season_log.chosen.as_deref(), Some("mill"));
    assert_eq!(harness.state().season_log.in_front, Page::Records);
}

/// So many fields with and without oil beside one another in one season, rated two weeks after: 90 and 70 % of waterhemp.
fn rated(pairs: usize) -> Farm {
    let mut farm = farm();
    for n in 0..pairs {
        let id = format!("field-{n}");
        farm.fields.insert(id.clone(), Field::new(&format!("Field {n}"), q("10 ac")));
        for (with, amounts) in
            [(true, &[("glyphosate", "2 gal"), ("oil", "1 gal")][..]), (false, &[("glyphosate", "2 gal")])]
        {
            let mut record = record(&farm, "Post", date(2032, 6, 1), &[&id], amounts);
            record.outcomes.push(Outcome {
                field: (&id).into(),
                date: date(2032, 6, 15),
                effect: Some(Effect::Control("waterhemp".into())),
                // One is another than the rest, so that there is a spread.
                rating: Some(q(if with { if n == 0 { "88 %" } else { "90 %" } } else { "70 %" })),
                by: "".into(),
                photos: Vec::new(),
                note: "".into(),
            });
            farm.records.insert(format!("{n}-{with}"), record);
        }
    }
    farm
}

#[test]
fn ratings_stand_by_adjuvant_and_two_choices_are_compared() {
    let mut harness = window(rated(6));
    go(&mut harness, "Outcomes");
    harness.get_by_label_contains(
        "Control of waterhemp, 11 to 17 days after, by adjuvants: No adjuvant 70 (70 to 70), n 6",
    );
    harness.get_by_label("No adjuvant: days 11 to 17 days after, n 6, mean 70 %, median 70 %, 95 % interval 70 to 70");
    harness.get_by_label_contains("Methylated seed oil: days 11 to 17 days after, n 6, mean 89.7 %");
    harness.get_by_label("Compare: methylated seed oil");
    harness.get_by_label("Compare with: no methylated seed oil");
    harness.get_by_label_contains(
        "Control of waterhemp, 11 to 17 days after was rated 19.7 per cent points higher with methylated seed oil than with no \
         methylated seed oil (over 6 pairs",
    );
    harness.get_by_label_contains("Methylated seed oil less no methylated seed oil: 11 to 17 days after, 6 pairs 19.7");
    harness.key_press(egui::Key::End);
    harness.run_steps(20);
    harness.get_by_label("Field 0, 2032: days 11 to 17 days after, one 88, other 70, difference 18");
    harness.get_by_label_contains("What the label says holds, whatever was rated.");
}

#[test]
fn few_pairs_are_too_few_to_tell() {
    let mut farm = rated(5);
    let plot = |n: usize, with: bool| Plot { record: format!("{n}-{with}"), field: format!("field-{n}") };
    let pairs = (0..2).map(|n| (plot(n, true), plot(n, false))).collect();
    let trial = Trial {
        name: "Does the oil pay?".to_owned(),
        one: "oil".to_owned(),
        other: "none".to_owned(),
        pairs,
        note: String::new(),
    };
    farm.trials.insert("oil".to_owned(), trial);
    let mut harness = window(farm);
    go(&mut harness, "Outcomes");
    harness.get_by_label_contains("too few to tell: 5 pairs");
    go(&mut harness, "Trials");
    harness.get_by_label("Does the oil pay?");
    harness.get_by_label_contains("too few to tell: 2 pairs");
}

#[test]
fn a_farm_without_records_says_what_to_do() {
    let mut harness = window(farm());
    harness.get_by_label_contains("Nothing is recorded yet.");
    assert!(harness.query_by_label("Resistance groups").is_none());
    // One record more, and there is a review.
    harness.get_by_label("Record without a plan").click();
    harness.run();
    harness.get_by_label("Review").click();
    harness.run();
    harness.get_by_label("1 pass, 0 ac treated");
    for (page, says) in [
        ("Products and actives", "No record of these has a product."),
        ("Resistance groups", "No product of a known resistance group went out on a field."),
        ("Adjuvants", "No adjuvant and no conditioner went out: 0 ac were treated without."),
        ("Planned and applied", "No record says what was left over."),
        ("Cost", "No record of these has a product."),
        ("Water and hours", "water not typed: spray not known, water in it not known, records 1, without a volume 1"),
        ("Outcomes", "Nothing is rated yet: rate a field on the page of its record."),
    ] {
        go(&mut harness, page);
        harness.get_by_label(says);
    }
}

/// Twenty thousand records are laid out once for a state of the farm, and summed once for a choice.
#[test]
fn many_records_are_reckoned_once() {
    let mut farm = recorded();
    let some: Vec<Record> = farm.records.values().cloned().collect();
    for at in 0..20_000 {
        farm.records.insert(format!("many-{at}"), some[at % some.len()].clone());
    }
    let mut harness = window(farm);
    let kept = |harness: &Harness<'_, Desk>| harness.state().season_log.review.kept().unwrap().clone();
    let first = kept(&harness);
    for page in ["Products and actives", "Resistance groups", "Cost", "Outcomes", "Overview"] {
        go(&mut harness, page);
        harness.run_steps(2);
        let now = kept(&harness);
        assert!(Rc::ptr_eq(&first.index, &now.index) && Rc::ptr_eq(&first.pages, &now.pages), "{page}");
    }
    all_seasons(&mut harness);
    let all = kept(&harness);
    assert!(Rc::ptr_eq(&first.index, &all.index) && !Rc::ptr_eq(&first.pages, &all.pages));
    harness.get_by_label("20003 passes, 1,866,960 ac treated");
    harness.state_mut().document.edit(|farm| {
        farm.records.shift_remove("many-0");
    });
    harness.run();
    assert!(!Rc::ptr_eq(&first.index, &kept(&harness).index));
    harness.get_by_label("20002 passes, 1,866,840 ac treated");
}

/// The weather of many records is judged a little in each frame; nothing is judged twice.
#[test]
fn weather_is_judged_bit_by_bit() {
    let mut farm = recorded();
    let mut windy = farm.records["later"].clone();
    windy.wind = Some(q("25 mph"));
    for at in 0..300 {
        farm.records.insert(format!("many-{at}"), windy.clone());
    }
    let mut harness = window(farm);
    go(&mut harness, "Weather");
    let done =
        "301 records held against labels, laws and practice: 0 outside a label or a law, 300 outside practice alone";
    for _ in 0..2000 {
        if harness.query_by_label(done).is_some() {
            break;
        }
        harness.run_steps(1);
    }
    harness.get_by_label(done);
    harness.get_by_label("the newest 40 of 600");
    harness.get_by_label("Show more: Outside what the farm keeps to, or what is usual").scroll_to_me();
    harness.run();
    harness.get_by_label("Show more: Outside what the farm keeps to, or what is usual").click();
    harness.run();
    harness.get_by_label("the newest 80 of 600");
}

#[test]
fn the_keyboard_alone_leads_through_the_review() {
    let mut desk = Desk::new(Document::copy(recorded()), noon);
    desk.view = View::SeasonLog;
    let mut harness = common::window(desk, [1024.0, 600.0]);
    harness.run();
    harness.get_by_label("Review").focus();
    harness.run();
    harness.key_press(egui::Key::Enter);
    harness.run();
    assert_eq!(harness.state().season_log.in_front, Page::Review);
    // From the row of pages through the choices to the list.
    let page = "Planned and applied";
    for _ in 0..30 {
        if harness.get_by_role_and_label(Role::ListBoxOption, page).is_focused() {
            break;
        }
        harness.key_press(egui::Key::Tab);
        harness.run();
    }
    harness.key_press(egui::Key::Enter);
    harness.run();
    assert_eq!(harness.state().season_log.review.page, review::Page::Planned);
    harness.state_mut().season_log.review.asked = Asked { seasons: Some((2031, 2032)), ..Asked::default() };
    harness.run();
    // What is below comes into sight.
    let name = format!("2 June 2031, Post: product {GLYPHOSATE}, error +10 %");
    assert!(harness.query_by_label(&name).is_none());
    harness.key_press(egui::Key::End);
    harness.run_steps(20);
    harness.get_by_label(&name);
}
