//! The map of the fields as a person meets it: draw, choose, mend, by pointer and by keyboard.

#![allow(clippy::unwrap_used, clippy::indexing_slicing)]

mod common;

use common::shed::{choose, press, put};
use egui::accesskit::Role;
use egui::{Event, Key, Modifiers, PointerButton, Pos2, Rect, Vec2};
use egui_kittest::Harness;
use egui_kittest::kittest::{NodeT, Queryable};
use tankard::app::Desk;
use tankard::command::View;
use tankard::demo;
use tankard::document::Document;
use tankard::views::fields::map::Colouring;
use tankard_core::farm::{Background, Farm, Field, Place, Says, Shape, SurroundingKind};
use tankard_core::quantity::AsTyped;

type Map = Harness<'static, Desk>;

fn field(name: &str, boundary: Option<&str>) -> Field {
    let mut field = Field::new(name, AsTyped::parse("40 ac").unwrap());
    "corn".clone_into(&mut field.crop);
    field.boundary = boundary.map(|text| Shape::parse(text).unwrap());
    field
}

/// Two fields at 41.2 N, 96.4 W, of which the second may have a boundary.
fn farm(second: Option<&str>) -> Farm {
    let mut farm = Farm::new("Larkspur Bend (demo)");
    farm.place = Some(Place { latitude: "41.2".to_owned(), longitude: "-96.4".to_owned(), ..Place::default() });
    farm.fields.insert("mill".to_owned(), field("Mill field", None));
    farm.fields.insert("hill".to_owned(), field("Hill sixty", second));
    farm
}

fn map_of(farm: Farm, size: [f32; 2]) -> Map {
    let mut desk = Desk::new(Document::copy(farm), common::evening);
    desk.view = View::Fields;
    desk.fields.map.open = true;
    let mut harness = common::window(desk, size);
    harness.run();
    harness
}

fn map(farm: Farm) -> Map {
    map_of(farm, [1366.0, 768.0])
}

fn canvas(harness: &Map) -> Rect {
    harness.get_by_role(Role::Canvas).rect()
}

fn words(harness: &Map) -> String {
    harness.get_by_role(Role::Canvas).accesskit_node().label().unwrap_or_default()
}

/// A click so many points east and north of the middle of the map.
fn click(harness: &mut Map, east: f32, north: f32) {
    let at = canvas(harness).center() + Vec2::new(east, -north);
    click_at(harness, at);
}

fn click_at(harness: &mut Map, pos: Pos2) {
    harness.event(Event::PointerMoved(pos));
    harness.run();
    for pressed in [true, false] {
        harness.event(Event::PointerButton {
            pos,
            button: PointerButton::Primary,
            pressed,
            modifiers: Modifiers::NONE,
        });
        harness.run();
    }
    // Two clicks in the same place are not one double click.
    harness.run_steps(12);
}

fn key(harness: &mut Map, key: Key) {
    harness.key_press(key);
    harness.run();
}

fn drawn(harness: &Map, id: &str) -> Option<Shape> {
    harness.state().document.farm().fields[id].boundary.clone()
}

fn undo(harness: &mut Map) {
    harness.key_press_modifiers(Modifiers::COMMAND, Key::Z);
    harness.run();
}

/// An empty map shows 5 m a point about the place of the farm.
const SQUARE: [(f32, f32); 4] = [(-40.0, -40.0), (40.0, -40.0), (40.0, 40.0), (-40.0, 40.0)];

#[test]
fn a_field_is_drawn_by_clicks_and_taken_back_in_one_step() {
    let mut harness = map(farm(None));
    press(&mut harness, "Draw its boundary");
    for (east, north) in SQUARE {
        click(&mut harness, east, north);
    }
    harness.get_by_label_contains("4 points");
    key(&mut harness, Key::Enter);
    // 400 m by 400 m are 160,000 m², 39.537 ac.
    let area = drawn(&harness, "mill").unwrap().area().to_square_metres();
    assert!((area / 160_000.0 - 1.0).abs() < 0.005, "{area}");
    assert_eq!(harness.state().document.farm().fields["mill"].area.text(), "40 ac", "the stated area stays");
    harness.get_by_label_contains("from the boundary 39.");
    undo(&mut harness);
    assert_eq!(drawn(&harness, "mill"), None, "one step");
    assert!(!harness.state().document.can_undo());
}

#[test]
fn points_are_taken_back_and_a_sketch_is_dropped() {
    let mut harness = map(farm(None));
    press(&mut harness, "Draw its boundary");
    for (east, north) in SQUARE {
        click(&mut harness, east, north);
    }
    key(&mut harness, Key::Backspace);
    harness.get_by_label_contains("3 points");
    key(&mut harness, Key::Escape);
    assert!(harness.query_by_label_contains("3 points").is_none());
    assert_eq!(drawn(&harness, "mill"), None);
}

#[test]
fn the_first_point_closes_it() {
    let mut harness = map(farm(None));
    press(&mut harness, "Draw its boundary");
    for (east, north) in SQUARE.into_iter().chain([(-37.0, -42.0)]) {
        click(&mut harness, east, north);
    }
    assert_eq!(drawn(&harness, "mill").unwrap().polygons().unwrap().0[0].exterior().0.len(), 5);
}

#[test]
fn a_bow_tie_is_refused_with_its_reason() {
    let mut harness = map(farm(None));
    press(&mut harness, "Draw its boundary");
    for (east, north) in [SQUARE[0], SQUARE[1], SQUARE[3]] {
        click(&mut harness, east, north);
    }
    // From the upper left across the lower edge.
    click(&mut harness, 0.0, -80.0);
    harness.get_by_label_contains("cross the edge from point 1 to point 2");
    harness.get_by_label_contains("3 points");
    key(&mut harness, Key::Enter);
    assert!(drawn(&harness, "mill").is_some());
}

/// A neighbour shares the very digits of a corner that is there.
#[test]
fn a_new_point_goes_to_one_that_is_there_unless_it_is_not_to() {
    let hill =
        "POLYGON ((-96.4003117 41.2002231, -96.3951203 41.2001117, -96.3950011 41.2051009, -96.4003117 41.2002231))";
    for snaps in [true, false] {
        let mut harness = map(farm(Some(hill)));
        if !snaps {
            press(&mut harness, "Snap");
        }
        press(&mut harness, "Draw its boundary");
        // The lower left corner of the other field lies where its bounds begin: fitted with 8 % of room, moved for the legend.
        let corner = corner_on_screen(&harness);
        click_at(&mut harness, corner + Vec2::new(4.0, 3.0));
        click_at(&mut harness, corner + Vec2::new(-60.0, 0.0));
        click_at(&mut harness, corner + Vec2::new(-60.0, -60.0));
        key(&mut harness, Key::Enter);
        let first = drawn(&harness, "mill").unwrap().polygons().unwrap().0[0].exterior().0.clone();
        let shares = first.iter().any(|at| (at.x, at.y) == (-96.400_311_7, 41.200_223_1));
        assert_eq!(shares, snaps, "{first:?}");
    }
}

/// Where the leftmost point of the ground is on the screen: found by its field, clicked from the left.
fn corner_on_screen(harness: &Map) -> Pos2 {
    let place = harness.state().fields.map.on_screen(canvas(harness), -96.400_311_7, 41.200_223_1);
    place.unwrap()
}

#[test]
fn a_field_is_drawn_by_keyboard_alone() {
    let mut harness = map(farm(None));
    harness.get_by_label("Draw its boundary").focus();
    harness.run();
    key(&mut harness, Key::Enter);
    let name = "Latitude and longitude of the point";
    for at in ["41.2, -96.4", "41.2, -96.395", "41.204 N 96.395 W", "41.204, -96.4"] {
        assert!(harness.get_by_label(name).is_focused(), "the box keeps the keyboard");
        harness.event(Event::Text(at.to_owned()));
        harness.run();
        key(&mut harness, Key::Enter);
    }
    harness.get_by_label_contains("4 points");
    // Enter in the empty box finishes.
    key(&mut harness, Key::Enter);
    let shape = drawn(&harness, "mill").unwrap();
    assert_eq!(shape.as_text(), "POLYGON((-96.4 41.2,-96.395 41.2,-96.395 41.204,-96.4 41.204,-96.4 41.2))");
    // What is no place is said.
    press(&mut harness, "Draw…");
    press(&mut harness, "A gateway");
    harness.event(Event::Text("north gate".to_owned()));
    harness.run();
    key(&mut harness, Key::Enter);
    harness.get_by_label_contains("write latitude, longitude");
}

#[test]
fn arrows_move_the_map_and_space_puts_a_point_in_its_middle() {
    let mut harness = map(farm(None));
    let at = |harness: &mut Map, arrow: Option<Key>| {
        press(harness, "Draw…");
        press(harness, "A point");
        harness.get_by_role(Role::Canvas).focus();
        harness.run();
        if let Some(arrow) = arrow {
            key(harness, arrow);
        }
        key(harness, Key::Space);
        let (_, made) = harness.state().document.farm().surroundings.last().unwrap();
        made.shape.bounds().center()
    };
    let first = at(&mut harness, None);
    assert!((first.x + 96.4).abs() < 1e-6 && (first.y - 41.2).abs() < 1e-6, "{first:?}");
    let second = at(&mut harness, Some(Key::ArrowRight));
    // 60 points of 5 m are 300 m; a degree of longitude there is 83,882 m (WGS 84).
    assert!(((second.x - first.x) * 83_882.0 - 300.0).abs() < 3.0, "{second:?}");
    assert!((second.y - first.y).abs() < 1e-6);
}

const LEFT: &str = "POLYGON ((-96.41 41.2, -96.40 41.2, -96.40 41.21, -96.41 41.21, -96.41 41.2))";
const RIGHT: &str = "POLYGON ((-96.39 41.2, -96.38 41.2, -96.38 41.21, -96.39 41.21, -96.39 41.2))";

fn two_fields() -> Farm {
    let mut farm = farm(Some(RIGHT));
    farm.fields["mill"].boundary = Some(Shape::parse(LEFT).unwrap());
    farm
}

#[test]
fn a_field_is_chosen_on_the_map_and_in_the_list() {
    let mut harness = map(two_fields());
    assert!(words(&harness).contains("chosen: Mill field, 40 ac, corn"), "{}", words(&harness));
    let rect = canvas(&harness);
    let hill = harness.state().fields.map.on_screen(rect, -96.385, 41.205).unwrap();
    click_at(&mut harness, hill);
    assert_eq!(harness.state().fields.chosen.as_deref(), Some("hill"));
    harness.get_by_label_contains("from the boundary 230."); // As in the doc of `Shape::parse`, at another latitude.
    // The keyboard in a row of the list chooses it there.
    let in_list = |node: &egui_kittest::kittest::AccessKitNode<'_>| {
        node.role() == Role::TextInput && node.value().as_deref() == Some("Mill field")
    };
    harness.get_by(in_list).focus();
    harness.run();
    assert_eq!(harness.state().fields.chosen.as_deref(), Some("mill"));
    assert!(words(&harness).contains("chosen: Mill field"));
    // By keys on the map.
    harness.get_by_role(Role::Canvas).focus();
    harness.run();
    key(&mut harness, Key::PageDown);
    assert_eq!(harness.state().fields.chosen.as_deref(), Some("hill"));
}

#[test]
fn a_point_is_moved_put_in_and_taken_out_by_keyboard() {
    let mut harness = map(two_fields());
    press(&mut harness, "Move points");
    press(&mut harness, "Next point");
    harness.get_by_label_contains("point 1 of 4");
    put(&mut harness, "Latitude and longitude of the chosen point", "41.199, -96.411");
    key(&mut harness, Key::Enter);
    let text = |harness: &Map| drawn(harness, "mill").unwrap().as_text().to_owned();
    assert!(text(&harness).contains("-96.411 41.199"), "{}", text(&harness));
    press(&mut harness, "Put one in after it");
    harness.get_by_label_contains("point 2 of 5");
    press(&mut harness, "Take it out");
    harness.get_by_label_contains("point 1 of 4");
    // A move that would make a bow tie is refused, and the field stays.
    let before = text(&harness);
    put(&mut harness, "Latitude and longitude of the chosen point", "41.205, -96.39");
    key(&mut harness, Key::Enter);
    harness.get_by_label_contains("Left as it was: its edge would cross itself");
    assert_eq!(text(&harness), before);
    undo(&mut harness);
    harness.get_by_label_contains("of 5");
}

#[test]
fn a_point_is_dragged() {
    let mut harness = map(two_fields());
    press(&mut harness, "Snap");
    press(&mut harness, "Move points");
    let rect = canvas(&harness);
    let corner = harness.state().fields.map.on_screen(rect, -96.41, 41.21).unwrap();
    harness.event(Event::PointerMoved(corner));
    harness.run();
    harness.drag_at(corner);
    harness.run();
    for by in [10.0, 20.0, 30.0] {
        harness.event(Event::PointerMoved(corner + Vec2::new(by, by)));
        harness.run();
    }
    let pos = corner + Vec2::new(30.0, 30.0);
    harness.event(Event::PointerButton {
        pos,
        button: PointerButton::Primary,
        pressed: false,
        modifiers: Modifiers::NONE,
    });
    harness.run();
    let wanted = harness.state().fields.map.on_globe(rect, pos).unwrap();
    let ring = drawn(&harness, "mill").unwrap().polygons().unwrap().0[0].exterior().0.clone();
    assert!(
        ring.iter().any(|at| (at.x - wanted.0).abs() < 2e-7 && (at.y - wanted.1).abs() < 2e-7),
        "{ring:?} {wanted:?}"
    );
    undo(&mut harness);
    assert_eq!(drawn(&harness, "mill").unwrap().as_text(), LEFT);
}

#[test]
fn what_lies_among_the_fields_is_drawn_named_and_removed() {
    let mut harness = map(two_fields());
    press(&mut harness, "Draw…");
    press(&mut harness, "A line");
    for at in ["41.199, -96.42", "41.199, -96.37"] {
        harness.event(Event::Text(at.to_owned()));
        harness.run();
        key(&mut harness, Key::Enter);
    }
    harness.get_by_label_contains("2 points, 13,76"); // 0.05° of longitude are 4,194.2 m there (WGS 84), 13,760 ft.
    press(&mut harness, "Finish");
    choose(&mut harness, "What it is: other", "water");
    put(&mut harness, "Name of the surrounding", "Mill creek");
    let kept = harness.state().document.farm().surroundings.values().next().cloned().unwrap();
    assert_eq!((kept.name.as_str(), kept.kind), ("Mill creek", SurroundingKind::Water));
    press(&mut harness, "Remove it from the map");
    press(&mut harness, "Remove it");
    assert!(harness.state().document.farm().surroundings.is_empty());
}

#[test]
fn an_empty_map_says_what_to_do() {
    let harness = map(farm(None));
    assert_eq!(words(&harness), "Map; no field has a boundary yet");
    harness.get_by_label_contains("it has no boundary yet");
    harness.get_by_label("Draw its boundary");
    // A farm without any field, and one whose place is not typed.
    let harness = map(Farm::new("New farm"));
    assert_eq!(words(&harness), "Map; no field has a boundary yet");
}

#[test]
fn a_picture_that_is_not_there_is_said() {
    let mut farm = two_fields();
    let corner = |text: &str| Shape::parse(text).unwrap();
    farm.background = Some(Background {
        file: "gone/air.png".to_owned(),
        north_west: corner("POINT (-96.41 41.21)"),
        south_east: corner("POINT (-96.38 41.2)"),
    });
    let mut harness = map(farm);
    for _ in 0..100 {
        harness.run();
        if harness.query_by_label_contains("The picture is not there").is_some() {
            break;
        }
        std::thread::sleep(std::time::Duration::from_millis(20));
    }
    harness.get_by_label_contains("The picture is not there");
    press(&mut harness, "Picture");
    put(&mut harness, "Latitude and longitude of the north-west corner", "41.1, -96.41");
    key(&mut harness, Key::Enter);
    harness.get_by_label_contains("must lie north and west");
}

/// Every part lies in the window, at the size of a small laptop and at 150 %, in both themes, under each colouring.
#[test]
fn it_fits_small_screens_in_both_themes() {
    for size in [[1366.0, 768.0], [911.0, 512.0]] {
        for theme in [egui::Theme::Light, egui::Theme::Dark] {
            let mut farm = demo::farm().unwrap();
            farm.fields["mill-field"].boundary = Some(Shape::parse(LEFT).unwrap());
            farm.fields["hill-sixty"].boundary = Some(Shape::parse(RIGHT).unwrap());
            let mut harness = map_of(farm, size);
            harness.ctx.set_theme(theme);
            for colouring in
                [Colouring::Crop, Colouring::Stage, Colouring::LastSpray, Colouring::ReEntry, Colouring::Planned]
            {
                harness.state_mut().fields.map.colouring = colouring;
                harness.run();
                let window = Rect::from_min_size(Pos2::ZERO, Vec2::new(size[0], size[1]));
                let rect = canvas(&harness);
                assert!(window.contains_rect(rect) && rect.height() >= 160.0 && rect.width() >= 380.0, "{rect:?}");
                for name in ["Draw…", "Move points", "Fit all", "Zoom in", "Zoom out"] {
                    assert!(window.contains_rect(harness.get_by_label(name).rect()), "{name} at {size:?}");
                }
            }
        }
    }
}

/// What a colour says stands in words, too.
#[test]
fn each_colouring_says_its_classes() {
    let mut farm = demo::farm().unwrap();
    farm.fields["mill-field"].boundary = Some(Shape::parse(LEFT).unwrap());
    let mut harness = map(farm);
    for (colouring, said) in [
        (Colouring::Crop, "corn 4"),
        (Colouring::Stage, "V6"),
        // The demo sprayed Mill field last on 28 May 2031, 14 days before the evening of 11 June.
        (Colouring::LastSpray, "14 days ago"),
        (Colouring::Planned, "planned on 12 June 2031"),
    ] {
        harness.state_mut().fields.map.colouring = colouring;
        harness.run();
        assert!(words(&harness).contains(said), "{}", words(&harness));
    }
}

/// The creek lies north of the field: wind from the south carries to it, wind from the north does not until it turns.
#[test]
fn the_wind_that_is_planned_for_is_typed_and_its_turn_is_told() {
    let mut farm = demo::farm().unwrap();
    for says in farm.products.values_mut().flat_map(|product| &mut product.label) {
        if let Says::Buffer { downwind_only, .. } = &mut says.says {
            *downwind_only = true;
        }
    }
    let says = |harness: &Map, words: &str| harness.query_all_by_label_contains(words).next().is_some();
    let mut harness = map(farm);
    harness.state_mut().fields.chosen = Some("creek-piece".to_owned());
    harness.run_steps(4);
    put(&mut harness, "Wind that the pass is planned for", "S");
    let passes = &harness.state().document.farm().passes;
    assert_eq!(passes["2031-06-14-soybean-post"].wind_from.as_ref().unwrap().text(), "S");
    assert!(says(&harness, "stay unsprayed: 30 ft from Mill creek"));
    put(&mut harness, "Wind that the pass is planned for", "N");
    assert!(!says(&harness, "stay unsprayed"));
    assert!(says(&harness, "breaks it; so does all wind from"));
    undo(&mut harness);
    assert!(says(&harness, "stay unsprayed: 30 ft from Mill creek"));
}
