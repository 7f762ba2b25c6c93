//! The desk inside its window, and how it starts.

use std::path::Path;
use std::time::{Duration, Instant};

use egui::{Context, Ui};
use tankard_core::farm::Farm;
use tankard_core::language::speak;

use super::turns::Turns;
use super::{Desk, machine_clock};
use crate::cli::{RendererName, Start, ThemeName};
use crate::document::Document;
use crate::parts::boxes;
use crate::recent::Remembered;
use crate::{demo, look};

/// How long a frame may wait for a disk: a small farm is saved in that time, so that nothing flickers.
const FRAME: Duration = Duration::from_millis(20);

/// What is longer is felt, and is told to the log.
const LONG_FRAME: Duration = Duration::from_millis(33);

/// The desk inside its window.
struct Window {
    desk: Desk,
    turns: Turns,
    started: Option<Instant>,
}

impl eframe::App for Window {
    fn raw_input_hook(&mut self, ctx: &Context, raw_input: &mut egui::RawInput) {
        self.turns.next(&mut raw_input.events, boxes::is_wanted(ctx));
        if self.turns.is_waiting() {
            ctx.request_repaint();
        }
    }

    fn ui(&mut self, ui: &mut Ui, _frame: &mut eframe::Frame) {
        let began = Instant::now();
        self.desk.show(ui);
        let took = began.elapsed();
        if took > LONG_FRAME {
            log::debug!("a frame took {} ms", took.as_millis());
        }
        if let Some(started) = self.started.take() {
            log::info!("first frame after {} ms", started.elapsed().as_millis());
        }
    }

    fn on_exit(&mut self, _gl: Option<&eframe::glow::Context>) {
        self.desk.settle();
    }

    fn clear_color(&self, visuals: &egui::Visuals) -> [f32; 4] {
        visuals.panel_fill.to_normalized_gamma_f32()
    }
}

/// Opens the window and stays until it is closed.
///
/// # Errors
/// What each renderer said, where none could open it.
pub fn open(file: Option<&Path>, start: &Start) -> Result<(), String> {
    let started = Instant::now();
    let first = start.renderer.unwrap_or(RendererName::Glow);
    let mut problems = Vec::new();
    for renderer in renderers(first) {
        let (file, start) = (file.map(Path::to_owned), start.clone());
        let options = eframe::NativeOptions {
            renderer,
            centered: true,
            viewport: egui::ViewportBuilder::default()
                .with_title("Tankard")
                .with_app_id("tankard")
                .with_icon(icon())
                .with_min_inner_size([640.0, 360.0])
                .with_inner_size(
                    start.size.map_or([1366.0, 768.0], |(width, height)| [f32::from(width), f32::from(height)]),
                ),
            ..eframe::NativeOptions::default()
        };
        let opened = eframe::run_native(
            "Tankard",
            options,
            Box::new(move |creation| {
                let remembered = Remembered::read();
                set_up(&creation.egui_ctx, &start, &remembered);
                let desk = match &file {
                    Some(path) => Desk::opening(path, machine_clock),
                    // Who names a view knows where to begin.
                    None if start.view.is_none() => first_desk().choosing(),
                    None => first_desk(),
                };
                let mut desk = desk.patience(FRAME).within(&creation.egui_ctx).remember(remembered);
                desk.view = start.view.unwrap_or_default();
                if let Some(path) = &file {
                    desk.open_path(path);
                }
                Ok(Box::new(Window { desk, turns: Turns::default(), started: Some(started) }))
            }),
        );
        match opened {
            Ok(()) => return Ok(()),
            Err(error) => problems.push(format!("{renderer}: {error}")),
        }
    }
    Err(problems.join("; "))
}

/// The sign of the window in a task bar; an empty one, which is the system's own, where it cannot be read.
fn icon() -> egui::IconData {
    eframe::icon_data::from_png_bytes(include_bytes!("../../../../assets/install/tankard.png")).unwrap_or_default()
}

/// The renderers built in, the wanted one first.
fn renderers(first: RendererName) -> Vec<eframe::Renderer> {
    let mut list = vec![eframe::Renderer::Glow];
    #[cfg(feature = "wgpu")]
    list.push(eframe::Renderer::Wgpu);
    if first == RendererName::Wgpu {
        list.reverse();
    }
    list
}

/// A desk with a copy of the demo farm.
fn first_desk() -> Desk {
    match demo::farm() {
        Ok(farm) => Desk::new(Document::copy(farm), machine_clock),
        Err(error) => {
            let mut desk = Desk::new(Document::copy(Farm::new(tankard_core::begin::new_farm())), machine_clock);
            desk.tell_problem(error.to_string());
            desk
        }
    }
}

fn set_up(ctx: &Context, start: &Start, remembered: &Remembered) {
    speak(start.language.or(remembered.language).unwrap_or_else(super::system_language));
    look::install(ctx);
    let dark = start.theme.map_or(remembered.dark, |theme| theme == ThemeName::Dark);
    ctx.set_theme(if dark { egui::Theme::Dark } else { egui::Theme::Light });
    let percent = start.scale.unwrap_or(remembered.scale);
    if percent > 0 {
        ctx.set_zoom_factor((f32::from(percent) / 100.0).clamp(0.8, 2.0));
    }
    look::set_motion(ctx, !remembered.still.unwrap_or_else(super::motion::is_unwanted));
    ctx.options_mut(|options| options.zoom_with_keyboard = false);
}
