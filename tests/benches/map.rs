//! How long a frame of the map takes: 2,000 fields with 200,000 points, seen from far and from near, while it is dragged. The desk draws
//! into a list of shapes, which is made into triangles; what the screen's card does with them is not counted.

use std::hint::black_box;

use criterion::{Criterion, criterion_group, criterion_main};
use egui::{Context, Event, MouseWheelUnit, PointerButton, Pos2, RawInput, Rect, TouchPhase, Vec2};
use jiff::civil::{DateTime, date};
use tankard::app::Desk;
use tankard::command::View;
use tankard::document::Document;
use tankard::look;
use tankard::views::fields::map::Colouring;
use tankard_core::farm::Farm;
use tankard_tests::ground;

const SIZE: Vec2 = Vec2::new(1366.0, 768.0);
/// A place on the map.
const AT: Pos2 = Pos2::new(980.0, 400.0);

fn evening(_zone: &str) -> DateTime {
    date(2031, 6, 11).at(20, 14, 0, 0)
}

/// Such a farm, with four crops.
fn farm() -> Option<Farm> {
    let mut farm = ground::farm(2_000, 100).ok()?;
    let crops = ["corn", "soybean", "winter wheat", "oats"];
    for (field, crop) in farm.fields.values_mut().zip(crops.iter().cycle()) {
        field.crop = (*crop).to_owned();
    }
    Some(farm)
}

fn input(events: Vec<Event>) -> RawInput {
    RawInput { screen_rect: Some(Rect::from_min_size(Pos2::ZERO, SIZE)), events, ..RawInput::default() }
}

/// A frame, with its triangles.
fn frame(ctx: &Context, desk: &mut Desk, events: Vec<Event>) {
    let mut output = ctx.run_ui(input(events), |ui| desk.show(ui));
    // No card takes them here.
    output.textures_delta.clear();
    black_box(ctx.tessellate(output.shapes, output.pixels_per_point));
}

/// Zooms in at the pointer by so many notches of the wheel.
fn zoom(ctx: &Context, desk: &mut Desk, notches: u32) {
    for _ in 0..notches {
        let event = Event::MouseWheel {
            unit: MouseWheelUnit::Line,
            delta: Vec2::new(0.0, 2.0),
            phase: TouchPhase::Move,
            source: egui::MouseWheelSource::Unknown,
            modifiers: egui::Modifiers::NONE,
        };
        frame(ctx, desk, vec![Event::PointerMoved(AT), event]);
        for _ in 0..20 {
            frame(ctx, desk, Vec::new());
        }
    }
}

fn drag(criterion: &mut Criterion) {
    let Some(farm) = farm() else { return };
    let mut group = criterion.benchmark_group("map of 2,000 fields, 200,000 points");
    group.sample_size(20);
    for (name, notches, colouring) in [
        ("all in sight, by crop", 0, Colouring::Crop),
        ("all in sight, by last spray", 0, Colouring::LastSpray),
        ("some hundred in sight", 4, Colouring::Crop),
        ("a dozen in sight", 9, Colouring::Crop),
        ("one in sight", 16, Colouring::Crop),
    ] {
        let ctx = Context::default();
        look::install(&ctx);
        let mut desk = Desk::new(Document::copy(farm.clone()), evening);
        desk.view = View::Fields;
        desk.fields.map.open = true;
        desk.fields.map.colouring = colouring;
        for _ in 0..3 {
            frame(&ctx, &mut desk, Vec::new());
        }
        zoom(&ctx, &mut desk, notches);
        let button = |pos: Pos2| Event::PointerButton {
            pos,
            button: PointerButton::Primary,
            pressed: true,
            modifiers: egui::Modifiers::NONE,
        };
        frame(&ctx, &mut desk, vec![Event::PointerMoved(AT), button(AT)]);
        let mut step = 0.0_f32;
        group.bench_function(name, |bench| {
            bench.iter(|| {
                step += 1.0;
                // Round and round, so that it stays over the ground.
                let to = AT + 40.0 * Vec2::angled(step / 10.0);
                frame(&ctx, &mut desk, vec![Event::PointerMoved(to)]);
            });
        });
    }
    group.finish();
}

/// An edit of one field, which must not lay the others flat again.
fn edit(criterion: &mut Criterion) {
    let Some(farm) = farm() else { return };
    let ctx = Context::default();
    look::install(&ctx);
    let mut desk = Desk::new(Document::copy(farm), evening);
    desk.view = View::Fields;
    desk.fields.map.open = true;
    for _ in 0..3 {
        frame(&ctx, &mut desk, Vec::new());
    }
    let mut step = 0_u32;
    criterion.bench_function("map of 2,000 fields, a letter typed in one", |bench| {
        bench.iter(|| {
            step += 1;
            desk.document.edit(|farm| {
                if let Some(field) = farm.fields.values_mut().next() {
                    field.note = step.to_string();
                }
            });
            frame(&ctx, &mut desk, Vec::new());
        });
    });
}

criterion_group!(benches, drag, edit);
criterion_main!(benches);
