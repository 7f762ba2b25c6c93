//! How the desk looks: every colour, size and font stands here and nowhere else.

#[cfg(test)]
pub(crate) mod colour_vision;

use std::sync::Arc;

use egui::epaint::Shadow;
use egui::style::ScrollAnimation;
use egui::{
    Color32, Context, CornerRadius, FontData, FontDefinitions, FontFamily, FontId, Margin, RichText, Stroke, Style,
    TextStyle, Theme, Ui, Vec2, Visuals,
};
use tankard_core::finding::Level;
use tankard_core::weather::Verdict;

/// The colours of one theme, by role.
#[derive(Clone, Copy, Debug)]
pub struct Colours {
    /// Behind everything.
    pub ground: Color32,
    /// A sheet lying on the ground.
    pub sheet: Color32,
    /// Text.
    pub ink: Color32,
    /// Text of less weight.
    pub soft: Color32,
    /// Lines between things.
    pub hairline: Color32,
    /// What can be acted on.
    pub brass: Color32,
    /// Water, and the edge of what is selected.
    pub water: Color32,
    /// The face of what is selected, and water in the gauge.
    pub selected: Color32,
    /// A Stop.
    pub stop: Color32,
    /// A Check.
    pub check: Color32,
    /// The bar at the top.
    pub bar: Color32,
    /// Text on it.
    pub bar_ink: Color32,
    /// Layers of product in the gauge, in turn.
    pub layers: [Color32; 4],
    /// The ground between the fields on the map.
    pub between: Color32,
    /// Classes of fields on the map, in turn.
    pub classes: [Color32; 6],
}

const fn hex(rgb: u32) -> Color32 {
    let [_, r, g, b] = rgb.to_be_bytes();
    Color32::from_rgb(r, g, b)
}

/// Paper and ink.
pub const LIGHT: Colours = Colours {
    ground: hex(0x00F5_F2EA),
    sheet: hex(0x00FF_FDF8),
    ink: hex(0x0020_302C),
    soft: hex(0x005E_6B65),
    hairline: hex(0x00DA_D4C5),
    brass: hex(0x00A8_521F),
    water: hex(0x002C_657F),
    selected: hex(0x00D6_E6EC),
    stop: hex(0x00A3_231D),
    check: hex(0x008A_5A00),
    bar: hex(0x0020_302C),
    bar_ink: hex(0x00F5_F2EA),
    layers: [hex(0x00F3_E7C4), hex(0x00E6_CFC2), hex(0x00D9_E4CF), hex(0x00F0_D9B0)],
    between: hex(0x00EB_E7DB),
    classes: [
        hex(0x00EF_DC9E),
        hex(0x00E3_BFAE),
        hex(0x00C3_D8B2),
        hex(0x00F0_C79A),
        hex(0x00BE_D5DD),
        hex(0x00D5_C8DC),
    ],
};

/// Lamp light.
pub const DARK: Colours = Colours {
    ground: hex(0x0016_1B19),
    sheet: hex(0x001F_2624),
    ink: hex(0x00E9_E4D8),
    soft: hex(0x009A_A8A1),
    hairline: hex(0x0037_413D),
    brass: hex(0x00E2_9256),
    water: hex(0x007D_B8D3),
    selected: hex(0x0022_343C),
    stop: hex(0x00F0_837B),
    check: hex(0x00E0_B45C),
    bar: hex(0x0028_322E),
    bar_ink: hex(0x00E9_E4D8),
    layers: [hex(0x0055_4A2C), hex(0x0056_3D33), hex(0x003D_4E38), hex(0x0061_4A28)],
    between: hex(0x001A_201E),
    classes: [
        hex(0x0059_4D2A),
        hex(0x005B_3C33),
        hex(0x003B_5034),
        hex(0x0063_4726),
        hex(0x002C_4C58),
        hex(0x0049_3F52),
    ],
};

/// How wide words are on one line.
pub fn width(ui: &Ui, words: impl Into<egui::WidgetText>) -> f32 {
    words.into().into_galley(ui, Some(egui::TextWrapMode::Extend), f32::INFINITY, egui::TextStyle::Body).size().x
}

/// The colours of the theme in use.
pub fn colours(ui: &Ui) -> &'static Colours {
    if ui.visuals().dark_mode { &DARK } else { &LIGHT }
}

/// Colour of a finding's level.
pub fn of_level(colours: &Colours, level: Level) -> Color32 {
    match level {
        Level::Stop => colours.stop,
        Level::Check => colours.check,
        Level::Note => colours.soft,
    }
}

/// Colour of whether an hour may be used.
pub fn of_verdict(colours: &Colours, verdict: Verdict) -> Color32 {
    match verdict {
        Verdict::Allowed => colours.water,
        Verdict::Doubtful => colours.check,
        Verdict::Forbidden => colours.stop,
    }
}

/// Colour of a class of fields on the map; they come in turn.
pub fn of_class(colours: &Colours, at: usize) -> Color32 {
    colours.classes.get(at % colours.classes.len()).copied().unwrap_or(colours.sheet)
}

/// The lines of a pattern on the map.
pub fn pattern(colours: &Colours) -> Stroke {
    Stroke::new(1.0, colours.soft.gamma_multiply(0.55))
}

/// Height of the bar at the top.
pub const BAR: f32 = 44.0;
/// The grid that everything sits on.
pub const GRID: f32 = 8.0;
/// Height of a row in a list.
pub const ROW: f32 = 24.0;
/// Width of a label in front of a box.
pub const LABEL: f32 = 150.0;
/// Width of a window in which the guide stands beside the work.
pub const BESIDE: f32 = 1250.0;
/// Width of a window in which a list and its page stand beside one another; below it one of them has the room.
pub const NARROW: f32 = 800.0;
/// Room between the names of pages that stand in a row.
pub const PAGES: f32 = 14.0;
/// Width of an ordinary box.
pub const BOX: f32 = 150.0;

/// How long what opens takes to be there, in seconds.
const MOTION: f32 = 0.08;

const SEMIBOLD: &str = "semibold";
const CONDENSED: &str = "condensed";

/// The face for headings.
pub fn semibold() -> FontFamily {
    FontFamily::Name(SEMIBOLD.into())
}

/// The face where a table is tight.
pub fn condensed() -> FontFamily {
    FontFamily::Name(CONDENSED.into())
}

/// The font of ordinary text, with or without weight.
pub fn body(with_weight: bool) -> FontId {
    FontId::new(13.5, if with_weight { semibold() } else { FontFamily::Proportional })
}

/// The font of the heading of a page.
pub fn title_font() -> FontId {
    FontId::new(20.0, semibold())
}

/// The heading of a page.
pub fn title(text: impl Into<String>) -> RichText {
    RichText::new(text).font(title_font())
}

/// The heading of a sheet.
pub fn heading(text: impl Into<String>) -> RichText {
    RichText::new(text).font(FontId::new(12.0, semibold()))
}

/// Text with more weight.
pub fn strong(text: impl Into<String>) -> RichText {
    RichText::new(text).font(body(true))
}

/// The face for words where a table is tight.
pub fn narrow_font() -> FontId {
    FontId::new(body(false).size, condensed())
}

/// Words where a table is tight.
pub fn narrow(text: impl Into<String>) -> RichText {
    RichText::new(text).family(condensed())
}

/// Text with less weight.
pub fn soft(ui: &Ui, text: impl Into<String>) -> RichText {
    RichText::new(text).font(FontId::new(12.0, FontFamily::Proportional)).color(colours(ui).soft)
}

/// Text of a part that can be acted on.
pub fn act(ui: &Ui, text: impl Into<String>) -> RichText {
    RichText::new(text).color(colours(ui).brass)
}

/// The name of a page in a row of pages: the one in use is in ink with a line under it, and has no more weight, so that none moves.
pub fn page(ui: &mut Ui, name: &str, chosen: bool) -> egui::Response {
    let (ink, brass) = (colours(ui).ink, colours(ui).brass);
    let text = RichText::new(name).color(if chosen { ink } else { brass });
    let response = ui.add(egui::Button::new(text).frame(false)).accessible_name(name);
    response.widget_info(|| egui::WidgetInfo::selected(egui::Role::Tab, true, chosen, name));
    crate::parts::spoken::selected(&response, chosen);
    if chosen {
        ui.painter().hline(response.rect.x_range(), response.rect.bottom() + 1.0, Stroke::new(2.0, brass));
    }
    response
}

/// The font of a label on the gauge.
pub fn gauge_font() -> FontId {
    FontId::new(12.0, FontFamily::Proportional)
}

/// The font of a number on the gauge.
pub fn gauge_number() -> FontId {
    FontId::new(12.0, semibold())
}

/// Makes buttons in the bar plain text on it.
pub fn on_bar(ui: &mut Ui) {
    let colours = colours(ui);
    let widgets = &mut ui.visuals_mut().widgets;
    for widget in [&mut widgets.inactive, &mut widgets.hovered, &mut widgets.active, &mut widgets.open] {
        widget.fg_stroke.color = colours.bar_ink;
        widget.weak_bg_fill = colours.bar;
        widget.bg_stroke = Stroke::NONE;
    }
    widgets.hovered.bg_stroke = Stroke::new(1.0, colours.brass);
    widgets.open.bg_stroke = Stroke::new(1.0, colours.brass);
}

/// What may be read and not typed in: the boxes without their frames, as legible as ever.
pub fn read_only(ui: &mut Ui, is_so: bool, add: impl FnOnce(&mut Ui)) {
    ui.scope(|ui| {
        if is_so {
            let visuals = ui.visuals_mut();
            visuals.disabled_alpha = 1.0;
            visuals.text_edit_bg_color = Some(Color32::TRANSPARENT);
            for widget in [&mut visuals.widgets.noninteractive, &mut visuals.widgets.inactive] {
                widget.bg_stroke = Stroke::NONE;
            }
            ui.disable();
        }
        add(ui);
    });
}

/// A finding's sentence, its level in front with more weight and colour.
pub fn sentence(ui: &Ui, level: Level, text: &str) -> egui::text::LayoutJob {
    let colours = colours(ui);
    let mut job = egui::text::LayoutJob::default();
    let format = |family, color| egui::TextFormat { font_id: FontId::new(13.5, family), color, ..Default::default() };
    job.append(level.word(), 0.0, format(semibold(), of_level(colours, level)));
    job.append(text, 5.0, format(FontFamily::Proportional, colours.ink));
    job
}

/// What lies along the foot of the window, in line with the pages above.
pub fn foot(ui: &Ui) -> egui::Frame {
    egui::Frame::new().fill(colours(ui).ground).inner_margin(Margin::symmetric(16, 2))
}

/// A sheet lying on the ground.
pub fn sheet(ui: &Ui) -> egui::Frame {
    let colours = colours(ui);
    egui::Frame::new()
        .fill(colours.sheet)
        .stroke(Stroke::new(1.0, colours.hairline))
        .corner_radius(4)
        .inner_margin(Margin::symmetric(12, 8))
}

/// Puts fonts and both themes in place.
pub fn install(ctx: &Context) {
    ctx.set_fonts(fonts());
    ctx.set_style_of(Theme::Light, style(&LIGHT, Visuals::light()));
    ctx.set_style_of(Theme::Dark, style(&DARK, Visuals::dark()));
}

/// Lets what opens and scrolls move into its place, or has it there at once; then the mark in a box does not blink either.
pub fn set_motion(ctx: &Context, moves: bool) {
    ctx.all_styles_mut(|style| {
        style.animation_time = if moves { MOTION } else { 0.0 };
        style.scroll_animation = if moves { ScrollAnimation::default() } else { ScrollAnimation::none() };
        // A blinking cursor would draw the whole window twice a second while nobody does anything; the ring shows what has the keyboard.
        style.visuals.text_cursor.blink = false;
    });
}

/// Whether things move into their place.
pub fn has_motion(ctx: &Context) -> bool {
    ctx.global_style().animation_time > 0.0
}

fn fonts() -> FontDefinitions {
    let mut fonts = FontDefinitions::empty();
    let faces: [(&str, &'static [u8]); 3] = [
        ("regular", include_bytes!("../../../assets/fonts/IBMPlexSans-Regular.ttf")),
        (SEMIBOLD, include_bytes!("../../../assets/fonts/IBMPlexSans-SemiBold.ttf")),
        (CONDENSED, include_bytes!("../../../assets/fonts/IBMPlexSansCondensed-Regular.ttf")),
    ];
    for (name, bytes) in faces {
        fonts.font_data.insert(name.to_owned(), Arc::new(FontData::from_static(bytes)));
    }
    let regular = || vec!["regular".to_owned()];
    fonts.families.insert(FontFamily::Proportional, regular());
    fonts.families.insert(FontFamily::Monospace, regular());
    fonts.families.insert(semibold(), vec![SEMIBOLD.to_owned(), "regular".to_owned()]);
    fonts.families.insert(condensed(), vec![CONDENSED.to_owned(), "regular".to_owned()]);
    fonts
}

fn style(colours: &Colours, mut visuals: Visuals) -> Style {
    let line = |colour| Stroke::new(1.0, colour);
    visuals.override_text_color = None;
    visuals.panel_fill = colours.ground;
    visuals.window_fill = colours.sheet;
    visuals.window_stroke = line(colours.hairline);
    visuals.window_corner_radius = CornerRadius::same(4);
    visuals.menu_corner_radius = CornerRadius::same(4);
    visuals.window_shadow = Shadow { offset: [0, 4], blur: 16, spread: 0, color: Color32::from_black_alpha(40) };
    visuals.popup_shadow = Shadow { offset: [0, 2], blur: 8, spread: 0, color: Color32::from_black_alpha(40) };
    visuals.extreme_bg_color = colours.sheet;
    visuals.text_edit_bg_color = Some(colours.sheet);
    visuals.faint_bg_color = colours.ground;
    visuals.code_bg_color = colours.ground;
    visuals.hyperlink_color = colours.brass;
    visuals.warn_fg_color = colours.check;
    visuals.error_fg_color = colours.stop;
    visuals.weak_text_color = Some(colours.soft);
    visuals.selection.bg_fill = colours.selected;
    // Of no width: a box that is typed in has the ring about it, and no second edge.
    visuals.selection.stroke = Stroke::new(0.0, colours.water);
    let widgets = &mut visuals.widgets;
    for widget in [
        &mut widgets.noninteractive,
        &mut widgets.inactive,
        &mut widgets.hovered,
        &mut widgets.active,
        &mut widgets.open,
    ] {
        widget.corner_radius = CornerRadius::same(4);
        widget.expansion = 0.0;
        widget.fg_stroke = line(colours.ink);
        widget.bg_fill = colours.sheet;
        widget.weak_bg_fill = colours.sheet;
        widget.bg_stroke = line(colours.hairline);
    }
    widgets.hovered.bg_stroke = line(colours.brass);
    // What has the keyboard has the ring about it, and no second one inside.
    widgets.active.weak_bg_fill = colours.selected;
    widgets.open.bg_stroke = line(colours.brass);
    let mut style = Style { visuals, ..Style::default() };
    style.spacing.item_spacing = Vec2::new(GRID, 4.0);
    style.spacing.button_padding = Vec2::new(GRID, 3.0);
    // As high as a box, so that what stands in a row beside one is not a point lower.
    style.spacing.interact_size = Vec2::new(24.0, ROW);
    style.spacing.menu_margin = Margin::same(6);
    style.spacing.combo_width = 60.0;
    style.interaction.selectable_labels = false;
    style.animation_time = MOTION;
    style.text_styles = [
        (TextStyle::Heading, FontId::new(20.0, semibold())),
        (TextStyle::Body, FontId::new(13.5, FontFamily::Proportional)),
        (TextStyle::Button, FontId::new(13.5, FontFamily::Proportional)),
        (TextStyle::Small, FontId::new(12.0, FontFamily::Proportional)),
        (TextStyle::Monospace, FontId::new(13.5, FontFamily::Proportional)),
    ]
    .into();
    style
}

#[cfg(test)]
mod tests {
    use super::{Colours, DARK, LIGHT};
    use egui::Color32;

    /// Relative luminance and contrast ratio: Web Content Accessibility Guidelines 2.2, section 1.4.3.
    fn luminance(colour: Color32) -> f64 {
        let part = |value: u8| {
            let share = f64::from(value) / 255.0;
            if share <= 0.040_45 { share / 12.92 } else { ((share + 0.055) / 1.055).powf(2.4) }
        };
        0.2126 * part(colour.r()) + 0.7152 * part(colour.g()) + 0.0722 * part(colour.b())
    }

    fn contrast(a: Color32, b: Color32) -> f64 {
        let (a, b) = (luminance(a), luminance(b));
        (a.max(b) + 0.05) / (a.min(b) + 0.05)
    }

    fn readable(c: &Colours) {
        for back in [c.ground, c.sheet, c.selected] {
            for (name, text) in
                [("ink", c.ink), ("brass", c.brass), ("water", c.water), ("stop", c.stop), ("check", c.check)]
            {
                assert!(
                    contrast(text, back) >= 4.5 || (back == c.selected && contrast(text, back) >= 4.0),
                    "{name} on {back:?}: {}",
                    contrast(text, back)
                );
            }
            assert!(contrast(c.soft, back) >= 4.0, "soft on {back:?}: {}", contrast(c.soft, back));
        }
        for layer in c.layers.into_iter().chain(c.classes).chain([c.between]) {
            assert!(contrast(c.ink, layer) >= 4.5);
        }
        assert!(contrast(c.bar_ink, c.bar) >= 4.5);
    }

    #[test]
    fn text_can_be_read_in_both_themes() {
        readable(&LIGHT);
        readable(&DARK);
    }
}
