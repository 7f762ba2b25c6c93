//! What a person would see wrong with a drawn window, found by its geometry: words and parts cut off with nothing to scroll to, words over
//! words, parts over parts, and words shortened that nobody can read whole.

use std::collections::HashMap;
use std::fmt::Display;

use egui::accesskit::{NodeId, Role};
use egui::epaint::ClippedShape;
use egui::{LayerId, Pos2, Rect, Shape};
use egui_kittest::Harness;
use egui_kittest::kittest::{NodeT, Queryable};
use tankard::app::Desk;

/// Parts of a point come and go with rounding, and the last letter of a word in italics hangs over.
const HAIR: f32 = 1.5;
/// Ink of words may touch the ink of others, as where a line has its limbs below.
const TOUCH: f32 = 3.0;
/// How far the edge of what scrolls may lie from where its bar ends.
const EDGE: f32 = 6.0;

/// A part of the window that was drawn.
struct Part {
    layer: LayerId,
    /// Whole, and as much of it as is not cut off.
    rect: Rect,
    seen: Rect,
    role: Role,
    /// What a screen reader says.
    name: String,
    /// What it says where it is a box with nothing in it.
    hint: String,
    /// Whether it can be clicked.
    acts: bool,
}

/// Words that were painted.
struct Words {
    text: String,
    /// Their ink as a whole and line by line, and what of the window they may be painted on.
    ink: Rect,
    lines: Vec<Rect>,
    clip: Rect,
    /// Whether they end in dots for want of room.
    shortened: bool,
}

/// A side of a rectangle.
#[derive(Clone, Copy)]
enum Side {
    Left,
    Right,
    Top,
    Bottom,
}

/// The window as it was drawn last.
pub(crate) struct Seen {
    parts: Vec<Part>,
    words: Vec<Words>,
    /// Where something lies above the views: menus, lists that stand open.
    above: Vec<Rect>,
}

impl Seen {
    /// Takes up what was drawn.
    pub(crate) fn new(harness: &Harness<'_, Desk>) -> Self {
        let ctx = &harness.ctx;
        let screen = ctx.content_rect();
        let mut said: HashMap<NodeId, (Role, String, String)> = HashMap::new();
        for node in harness.root().query_all_by(|_| true) {
            let node = node.accesskit_node();
            let (name, value) = (node.label().unwrap_or_default(), node.value().unwrap_or_default());
            let hint = node.placeholder().unwrap_or_default().to_owned();
            said.insert(node.locate().0, (node.role(), if name.is_empty() { value } else { name }, hint));
        }
        let mut parts = Vec::new();
        ctx.viewport(|viewport| {
            for (layer, widgets) in viewport.prev_pass.widgets.layers() {
                for widget in widgets.iter().filter(|widget| widget.visible) {
                    let Some((role, name, hint)) = said.get(&widget.id.accesskit_id()) else { continue };
                    parts.push(Part {
                        layer: *layer,
                        rect: widget.rect,
                        seen: widget.interact_rect,
                        role: *role,
                        name: name.clone(),
                        hint: hint.clone(),
                        acts: widget.sense.senses_click(),
                    });
                }
            }
        });
        let above = ctx.memory(|memory| {
            let layers = memory.areas().visible_layer_ids().into_iter();
            let above = layers.filter(|layer| layer.order != egui::Order::Background);
            above.filter_map(|layer| memory.area_rect(layer.id)).collect()
        });
        let mut words = Vec::new();
        for ClippedShape { clip_rect, shape, .. } in &harness.output().shapes {
            collect(shape, clip_rect.intersect(screen), &mut words);
        }
        Self { parts, words, above }
    }

    /// Whether what is cut off on this side can be scrolled to: a bar ends where the cut is.
    fn scrolls(&self, cut: Rect, side: Side) -> bool {
        self.parts.iter().filter(|part| part.role == Role::ScrollBar).any(|bar| {
            let bar = bar.rect;
            let near = |a: f32, b: f32| (a - b).abs() <= EDGE;
            let upright = bar.height() > bar.width();
            match side {
                Side::Top | Side::Bottom => {
                    let end =
                        if matches!(side, Side::Top) { (bar.top(), cut.top()) } else { (bar.bottom(), cut.bottom()) };
                    upright && near(end.0, end.1) && bar.right() >= cut.left() && bar.left() >= cut.left()
                }
                Side::Left | Side::Right => {
                    let end =
                        if matches!(side, Side::Left) { (bar.left(), cut.left()) } else { (bar.right(), cut.right()) };
                    !upright && near(end.0, end.1) && bar.top() >= cut.top()
                }
            }
        })
    }

    /// By how much something sticks out where nobody can follow it.
    fn cut(&self, whole: Rect, clip: Rect) -> Vec<(&'static str, f32)> {
        // What lies beside what is seen of the window is not above or below it as well.
        let beside = clip.width() <= 0.0;
        let sides = [
            ("left", Side::Left, clip.left() - whole.left()),
            ("right", Side::Right, whole.right() - clip.right()),
            ("top", Side::Top, clip.top() - whole.top()),
            ("bottom", Side::Bottom, whole.bottom() - clip.bottom()),
        ];
        let out = sides.into_iter().filter(|(_, side, by)| {
            let upright = matches!(side, Side::Top | Side::Bottom);
            *by > HAIR && !(beside && upright) && !self.scrolls(clip, *side)
        });
        out.map(|(name, _, by)| (name, by)).collect()
    }

    /// The smallest part that some words stand on.
    fn part_of(&self, words: &Words) -> Option<&Part> {
        let at = words.ink.intersect(words.clip).center();
        let holds = |role| matches!(role, Role::ScrollBar | Role::Pane | Role::GenericContainer | Role::Unknown);
        let under = self.parts.iter().filter(|part| part.seen.contains(at) && !holds(part.role));
        under.min_by(|a, b| a.rect.area().total_cmp(&b.rect.area()))
    }

    /// Whether this lies under a menu or a list that stands open.
    fn is_covered(&self, rect: Rect) -> bool {
        self.above.iter().any(|above| above.intersects(rect))
    }

    /// Days that are said by figures alone, outside of the boxes in which they are typed so.
    pub(crate) fn days_by_figures(&self) -> Vec<String> {
        let is_day = |word: &str| {
            let is_figures = |part: &str, many| part.len() == many && part.chars().all(|sign| sign.is_ascii_digit());
            matches!(*word.split('-').collect::<Vec<_>>(), [year, month, day]
                if is_figures(year, 4) && is_figures(month, 2) && is_figures(day, 2))
        };
        let ends = |sign: char| sign.is_whitespace() || matches!(sign, ',' | ';' | '.' | ':' | '(' | ')' | '"');
        let said_so = self.words.iter().filter(|words| {
            words.text.split(ends).any(is_day) && !self.part_of(words).is_some_and(|part| is_box(part.role))
        });
        said_so.map(|words| said(format_args!("a day by figures"), &words.text, words.ink)).collect()
    }

    /// Words and parts that are cut off with nothing to scroll to.
    pub(crate) fn cut_off(&self) -> Vec<String> {
        let mut found = Vec::new();
        for words in &self.words {
            let part = self.part_of(words);
            // What is typed in a box moves along in it; what it says while it is empty does not.
            if part.is_some_and(|part| is_box(part.role) && part.hint != words.text) {
                continue;
            }
            for (side, by) in self.cut(words.ink, words.clip) {
                found.push(said(format_args!("words cut off at the {side} by {by:.0}"), &words.text, words.ink));
            }
        }
        for part in &self.parts {
            // Labels are held by their words, unless they are so far out that these are not even painted.
            let unseen = part.role == Role::Label && part.seen.width() <= 0.0;
            let holds = matches!(part.role, Role::ScrollBar | Role::Pane | Role::GenericContainer | Role::Unknown);
            if holds || !(part.acts || unseen) || !part.rect.is_positive() {
                continue;
            }
            for (side, by) in self.cut(part.rect, part.seen) {
                if part.acts || matches!(side, "left" | "right") {
                    found.push(said(
                        format_args!("{:?} cut off at the {side} by {by:.0}", part.role),
                        &part.name,
                        part.rect,
                    ));
                }
            }
        }
        found
    }

    /// Words over words, words that stick out of what they stand on, and parts over parts.
    pub(crate) fn overlapping(&self) -> Vec<String> {
        let mut found = Vec::new();
        // A link may follow the words of a paragraph on its last line.
        let mut lines = Vec::new();
        for (at, words) in self.words.iter().enumerate() {
            let seen = words.lines.iter().map(|line| line.intersect(words.clip)).filter(egui::Rect::is_positive);
            lines.extend(seen.map(|line| (at, words, line)));
        }
        for (nth, (at, one, line)) in lines.iter().enumerate() {
            for (other_at, other, others) in lines.iter().skip(nth + 1) {
                let both = line.intersect(*others);
                if large(both) && at != other_at && one.text != other.text && !self.is_covered(both) {
                    found.push(said("words over words", &format!("{} / {}", one.text, other.text), both));
                }
            }
        }
        let acts: Vec<&Part> = self
            .parts
            .iter()
            .filter(|part| part.acts && part.role != Role::ScrollBar && part.seen.is_positive())
            .collect();
        for (at, one) in acts.iter().enumerate() {
            for (_, words, line) in &lines {
                let both = line.intersect(one.seen);
                let inside = one.rect.expand(TOUCH).contains_rect(*line);
                if large(both) && !inside && !self.is_covered(both) {
                    found.push(said("words over a part", &format!("{} / {}", words.text, one.name), both));
                }
            }
            for other in acts.iter().skip(at + 1).filter(|other| other.layer == one.layer) {
                let both = one.seen.intersect(other.seen);
                let within =
                    one.rect.expand(HAIR).contains_rect(other.rect) || other.rect.expand(HAIR).contains_rect(one.rect);
                if large(both) && !within {
                    found.push(said("parts over parts", &format!("{} / {}", one.name, other.name), both));
                }
            }
        }
        found
    }

    /// Words that were shortened, where a pointer has to be to read them whole, and whether they stand on something that can be clicked.
    pub(crate) fn shortened(&self) -> Vec<(String, Pos2, bool)> {
        let short = self.words.iter().filter(|words| words.shortened && words.ink.intersect(words.clip).is_positive());
        short
            .map(|words| {
                let acts = self.part_of(words).is_none_or(|part| part.role != Role::Label);
                (words.text.clone(), words.ink.intersect(words.clip).center(), acts)
            })
            .collect()
    }

    /// Whether these words are painted whole.
    pub(crate) fn says(&self, text: &str) -> bool {
        self.words.iter().any(|words| !words.shortened && words.text.contains(text))
    }

    /// How much was looked at: words and parts.
    pub(crate) fn much(&self) -> (usize, usize) {
        (self.words.len(), self.parts.len())
    }
}

fn collect(shape: &Shape, clip: Rect, words: &mut Vec<Words>) {
    match shape {
        Shape::Vec(shapes) => shapes.iter().for_each(|shape| collect(shape, clip, words)),
        Shape::Text(text) if !text.galley.is_empty() && text.angle.abs() < f32::EPSILON && clip.is_positive() => {
            let by = text.pos.to_vec2();
            let ink = text.galley.mesh_bounds.translate(by);
            let line = |row: &egui::epaint::text::PlacedRow| row.visuals.mesh_bounds.translate(row.pos.to_vec2() + by);
            words.push(Words {
                text: text.galley.text().to_owned(),
                ink,
                lines: text.galley.rows.iter().map(line).collect(),
                clip,
                shortened: text.galley.elided,
            });
        }
        _ => {}
    }
}

fn is_box(role: Role) -> bool {
    matches!(role, Role::TextInput | Role::MultilineTextInput)
}

fn large(rect: Rect) -> bool {
    rect.width() > TOUCH && rect.height() > TOUCH
}

fn said(what: impl Display, text: &str, rect: Rect) -> String {
    format!("{what}: \"{text}\" at {:.0},{:.0} to {:.0},{:.0}", rect.left(), rect.top(), rect.right(), rect.bottom())
}
