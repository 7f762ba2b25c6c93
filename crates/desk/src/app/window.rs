//! The desk inside its window, and how it starts.

use std::path::{Path, PathBuf};
use std::time::{Duration, Instant};

use egui::{Context, Ui};
use tankard_core::farm::Farm;
use tankard_file::store::StoreError;

use super::{Desk, machine_clock};
use crate::cli::{RendererName, Start, ThemeName};
use crate::document::Document;
use crate::recent::Remembered;
use crate::{demo, look};

/// How long a frame may wait for a disk: a small farm is saved in that time, so that nothing flickers.
const FRAME: Duration = Duration::from_millis(20);

/// The desk inside its window.
struct Window {
    desk: Desk,
    started: Option<Instant>,
}

impl eframe::App for Window {
    fn ui(&mut self, ui: &mut Ui, _frame: &mut eframe::Frame) {
        self.desk.show(ui);
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
/// What each renderer said, where none could open it, or why the farm could not be read.
pub fn open(file: Option<&Path>, start: &Start) -> Result<(), String> {
    let started = Instant::now();
    let first = start.renderer.unwrap_or(RendererName::Glow);
    let mut problems = Vec::new();
    for renderer in renderers(first) {
        let (document, problem) = first_document(file);
        let start = start.clone();
        let options = eframe::NativeOptions {
            renderer,
            centered: true,
            viewport: egui::ViewportBuilder::default()
                .with_title("Tankard")
                .with_app_id("tankard")
                .with_icon(icon())
                .with_min_inner_size([900.0, 560.0])
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
                let mut desk = Desk::new(document, machine_clock).remember(remembered).patience(FRAME);
                desk.view = start.view.unwrap_or_default();
                match problem {
                    Some(Problem::File(path, error)) => desk.not_opened(&path, &error),
                    Some(Problem::Demo(problem)) => desk.tell_problem(problem),
                    None => {}
                }
                Ok(Box::new(Window { desk, started: Some(started) }))
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

/// Why there is no farm to begin with.
enum Problem {
    File(PathBuf, StoreError),
    Demo(String),
}

/// The farm to begin with. A farm that cannot be read is left alone, and an empty desk says why.
fn first_document(file: Option<&Path>) -> (Document, Option<Problem>) {
    match file {
        Some(path) => match Document::open(path.to_owned()) {
            Ok(document) => (document, None),
            Err(error) => (Document::copy(Farm::new("New farm")), Some(Problem::File(path.to_owned(), error))),
        },
        None => match demo::farm() {
            Ok(farm) => (Document::copy(farm), None),
            Err(error) => (Document::copy(Farm::new("New farm")), Some(Problem::Demo(error.to_string()))),
        },
    }
}

fn set_up(ctx: &Context, start: &Start, remembered: &Remembered) {
    look::install(ctx);
    let dark = start.theme.map_or(remembered.dark, |theme| theme == ThemeName::Dark);
    ctx.set_theme(if dark { egui::Theme::Dark } else { egui::Theme::Light });
    let percent = start.scale.unwrap_or(remembered.scale);
    if percent > 0 {
        ctx.set_zoom_factor((f32::from(percent) / 100.0).clamp(0.8, 2.0));
    }
    ctx.options_mut(|options| options.zoom_with_keyboard = false);
}
