//! A page of the guide as it is drawn.

use egui::text::LayoutJob;
use egui::{Align, Label, Layout, RichText, Sense, TextFormat, Ui, Vec2};

use super::markdown::{Block, Face, Run, plain};
use super::pages::Read;
use super::{Place, search};
use crate::look;

/// The room between two words.
const SPACE: f32 = 3.5;

/// What was asked for on a page.
pub(super) enum Asked {
    /// To go to a place.
    Go(Place),
}

/// How a page is shown.
pub(super) struct How<'a> {
    /// The words that are marked.
    pub(super) terms: &'a [String],
    /// The heading to bring into sight, by its anchor.
    pub(super) target: Option<&'a str>,
    /// Whether the heading that is led to gets the keyboard.
    pub(super) takes_keys: bool,
}

/// Draws a page; gives what was asked for.
pub(super) fn page(ui: &mut Ui, page: &Read, how: &How) -> Option<Asked> {
    let mut asked = None;
    for block in &page.blocks {
        match block {
            Block::Heading { level, anchor, runs } => heading(ui, *level, anchor, runs, how),
            Block::Paragraph(runs) => {
                text(ui, runs, page.name, how, &mut asked);
                ui.add_space(look::GRID);
            }
            Block::Item { number, depth, runs } => {
                ui.horizontal_top(|ui| {
                    let mark = number.map_or_else(|| "–".to_owned(), |number| format!("{number}."));
                    ui.add_space(look::GRID * 2.0 * *depth as f32);
                    // So wide that numbers of two figures stand under one another.
                    let room = Vec2::new(20.0, look::body(false).size);
                    ui.allocate_ui_with_layout(room, Layout::left_to_right(Align::Min), |ui| {
                        ui.set_min_width(room.x);
                        ui.label(mark);
                    });
                    ui.vertical(|ui| text(ui, runs, page.name, how, &mut asked));
                });
                ui.add_space(2.0);
            }
            Block::Lines(lines) => {
                look::sheet(ui).show(ui, |ui| {
                    ui.set_width(ui.available_width());
                    for line in lines.lines() {
                        ui.add(Label::new(job(ui, [(line, &Face::Typed)], how.terms)).wrap());
                    }
                });
                ui.add_space(look::GRID);
            }
        }
    }
    asked
}

fn heading(ui: &mut Ui, level: u8, anchor: &str, runs: &[Run], how: &How) {
    let words = plain(runs);
    if level > 1 {
        ui.add_space(look::GRID);
    }
    let text = if level == 1 { look::title(&words) } else { look::strong(&words) };
    // The ring says that it has the keyboard; a label would be underlined beside.
    let label = Label::new(text).wrap().sense(Sense::focusable_noninteractive());
    let (at, galley, response) = label.layout_in_ui(ui);
    ui.painter().galley(at, galley, look::colours(ui).ink);
    response.widget_info(|| egui::WidgetInfo::labeled(egui::Role::Heading, true, &words));
    let is_wanted = how.target.map_or(level == 1, |target| target == anchor);
    if is_wanted && how.takes_keys {
        response.request_focus();
    }
    if how.target == Some(anchor) {
        response.scroll_to_me(Some(Align::TOP));
    } else if response.gained_focus() {
        response.scroll_to_me(None);
    }
    ui.add_space(4.0);
}

/// A paragraph: what lies between two links is one label, so that it is read in one go.
fn text(ui: &mut Ui, runs: &[Run], from: &str, how: &How, asked: &mut Option<Asked>) {
    let is_link = |run: &Run| matches!(&run.face, Face::Link(target) if place(from, target).is_some());
    if !runs.iter().any(is_link) {
        ui.add(Label::new(job(ui, runs.iter().map(|run| (run.text.as_str(), &run.face)), how.terms)).wrap());
        return;
    }
    // Rows as high as their text, so that a link stands in line with the words beside it.
    let height = std::mem::take(&mut ui.spacing_mut().interact_size.y);
    ui.horizontal_wrapped(|ui| {
        ui.spacing_mut().item_spacing = Vec2::ZERO;
        for part in runs.chunk_by(|one, next| !is_link(one) && !is_link(next)) {
            let target = match part {
                [Run { face: Face::Link(target), .. }] if part.iter().all(is_link) => target,
                _ => {
                    words(ui, part, how);
                    continue;
                }
            };
            let [run] = part else { continue };
            let Some(place) = place(from, target) else { continue };
            // Broken over two rows it would be two stops for the Tab key, the second one without a name.
            let ink = look::colours(ui).brass;
            let width = ui.painter().layout_no_wrap(run.text.clone(), look::body(false), ink).size().x;
            if width > ui.available_size_before_wrap().x {
                ui.end_row();
            }
            let link = ui.link(RichText::new(&run.text).font(look::body(false)));
            if link.gained_focus() {
                link.scroll_to_me(None);
            }
            if link.clicked() {
                *asked = Some(Asked::Go(place));
            }
        }
    });
    ui.spacing_mut().interact_size.y = height;
}

/// What lies before or after a link.
fn words(ui: &mut Ui, runs: &[Run], how: &How) {
    let mut pieces: Vec<(&str, &Face)> = runs.iter().map(|run| (run.text.as_str(), &run.face)).collect();
    // A space at the end of a label of several rows is not drawn, so it is put after it.
    let mut gap = 0.0;
    if let Some((text, _)) = pieces.last_mut()
        && text.ends_with(' ')
    {
        *text = text.trim_end();
        gap = SPACE;
    }
    ui.label(job(ui, pieces, how.terms));
    ui.add_space(gap);
}

/// The place that a link leads to; none for a file beside the guide, which is not at hand where the program runs alone.
pub(super) fn place(from: &str, target: &str) -> Option<Place> {
    let (file, anchor) = target.split_once('#').unwrap_or((target, ""));
    let page = if file.is_empty() { from } else { file.strip_suffix(".md")? };
    super::pages::at(page).map(|_| Place { page: page.to_owned(), anchor: anchor.to_owned() })
}

/// Text with its faces, and with the words that are looked for marked.
pub(super) fn job<'t>(ui: &Ui, runs: impl IntoIterator<Item = (&'t str, &'t Face)>, terms: &[String]) -> LayoutJob {
    let colours = look::colours(ui);
    let mut job = LayoutJob::default();
    for (text, face) in runs {
        let format = TextFormat {
            font_id: look::body(*face == Face::Bold),
            color: if *face == Face::Typed { colours.water } else { colours.ink },
            ..TextFormat::default()
        };
        let mut marked: Vec<(usize, usize)> = terms.iter().flat_map(|term| search::found(text, term)).collect();
        marked.sort_unstable();
        let mut done = 0;
        for (from, to) in marked {
            if from < done {
                continue;
            }
            job.append(text.get(done..from).unwrap_or_default(), 0.0, format.clone());
            let mark = TextFormat { background: colours.selected, ..format.clone() };
            job.append(text.get(from..to).unwrap_or_default(), 0.0, mark);
            done = to;
        }
        job.append(text.get(done..).unwrap_or_default(), 0.0, format);
    }
    job
}
