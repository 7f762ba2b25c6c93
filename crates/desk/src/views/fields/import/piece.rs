//! A piece of a file in a row: drawn small, with its name, area and mending, and what becomes of it.

use egui::{Label, Ui, Vec2};
use tankard_core::farm::{Farm, Id, SurroundingKind};
use tankard_core::finding::Level;
use tankard_core::quantity::Quantity;
use tankard_core::t;
use tankard_file::ground::{Becomes, Piece};

use super::compared::Compared;
use super::thumb::{SIZE, Thumb};
use crate::look;
use crate::parts::{boxes, mark};
use crate::views::tank_loads::cell;

/// Height of a row.
pub(super) const HEIGHT: f32 = 58.0;

/// The widths of the columns.
pub(super) struct Widths {
    name: f32,
    area: f32,
    becomes: f32,
}

impl Widths {
    pub(super) fn of(ui: &Ui) -> Self {
        let gap = ui.spacing().item_spacing.x;
        let area = 90.0;
        let rest = (ui.available_width() - SIZE.x - area - 5.0 * gap - 8.0).max(300.0);
        Self { name: rest * 0.4, area, becomes: rest * 0.6 }
    }
}

pub(super) fn head(ui: &mut Ui, widths: &Widths) {
    ui.horizontal(|ui| {
        cell(ui, SIZE.x, false, |_| {});
        for (width, words, right) in [
            (widths.name, t!("fields-in-the-file"), false),
            (widths.area, t!("fields-head-area"), true),
            (widths.becomes, t!("fields-what-becomes-of-it"), false),
        ] {
            cell(ui, width, right, |ui| drop(ui.label(look::soft(ui, words))));
        }
    });
}

/// Shows a row; what becomes of the piece is chosen in it.
pub(super) fn show(
    ui: &mut Ui,
    widths: &Widths,
    farm: &Farm,
    (piece, thumb, compared): (&Piece, &Thumb, &Compared),
    becomes: &mut Becomes,
) {
    ui.horizontal(|ui| {
        ui.set_min_height(HEIGHT - 2.0);
        thumb.show(ui);
        column(ui, widths.name, |ui| {
            ui.add(Label::new(look::strong(&piece.name)).truncate());
            let mended = piece.mended.join("; ");
            if mended.is_empty() {
                ui.add(Label::new(look::soft(ui, &piece.place)).truncate());
            } else {
                let words = t!("fields-mended", place = piece.place, mended = mended);
                let response = ui.add(Label::new(look::soft(ui, &words)).truncate());
                response.on_hover_text(&words);
            }
        });
        let area = piece.shape.polygons().map(|_| piece.shape.area().show(farm.units)).unwrap_or_default();
        cell(ui, widths.area, true, |ui| drop(ui.label(area)));
        column(ui, widths.becomes, |ui| {
            choice(ui, widths.becomes, farm, piece, becomes);
            if !compared.text.is_empty() {
                ui.horizontal(|ui| {
                    ui.spacing_mut().item_spacing.x = 2.0;
                    if compared.differs {
                        mark::show(ui, Level::Check);
                    }
                    ui.add(Label::new(look::soft(ui, &compared.text)).truncate()).on_hover_text(&compared.text);
                });
            }
        });
    });
    boxes::hairline(ui);
}

fn column(ui: &mut Ui, width: f32, add: impl FnOnce(&mut Ui)) {
    let layout = egui::Layout::top_down(egui::Align::Min);
    ui.allocate_ui_with_layout(Vec2::new(width, HEIGHT - 8.0), layout, |ui| {
        ui.set_min_width(width);
        ui.set_max_width(width);
        ui.spacing_mut().item_spacing.y = 2.0;
        add(ui);
    });
}

/// What may become of a piece, before it is said of which field.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum Way {
    NewField,
    Boundary,
    Surrounding(SurroundingKind),
    Gateway,
    Nothing,
}

impl Way {
    fn of(becomes: &Becomes) -> Self {
        match becomes {
            Becomes::NewField => Self::NewField,
            Becomes::Boundary(_) => Self::Boundary,
            Becomes::Surrounding(kind) => Self::Surrounding(*kind),
            Becomes::Gateway(_) => Self::Gateway,
            Becomes::Nothing => Self::Nothing,
        }
    }

    fn words(self) -> String {
        match self {
            Self::NewField => t!("fields-a-new-field").to_owned(),
            Self::Boundary => t!("fields-the-boundary-of").to_owned(),
            Self::Surrounding(kind) => t!("fields-among-the-fields", kind = kind.name()),
            Self::Gateway => t!("fields-a-gateway-of").to_owned(),
            Self::Nothing => t!("fields-left-out").to_owned(),
        }
    }

    /// The ways that a shape can go.
    fn all(piece: &Piece, has_fields: bool) -> Vec<Self> {
        let is_polygon = piece.shape.polygons().is_some();
        let is_point = matches!(piece.shape.geometry(), geo::Geometry::Point(_));
        let ways = [
            (Self::Nothing, true),
            (Self::NewField, is_polygon),
            (Self::Boundary, is_polygon && has_fields),
            (Self::Gateway, is_point && has_fields),
        ];
        let mut all: Vec<Self> = ways.into_iter().filter(|(_, may)| *may).map(|(way, _)| way).collect();
        all.extend(SurroundingKind::ALL.map(Self::Surrounding));
        all
    }
}

fn choice(ui: &mut Ui, width: f32, farm: &Farm, piece: &Piece, becomes: &mut Becomes) {
    let named = format!("{}, {}", piece.name, piece.place);
    let mut way = Way::of(becomes);
    let mut field = match becomes {
        Becomes::Boundary(id) | Becomes::Gateway(id) => Some(id.clone()),
        _ => None,
    };
    ui.horizontal(|ui| {
        let gap = ui.spacing().item_spacing.x;
        let of_field = matches!(way, Way::Boundary | Way::Gateway);
        let first = if of_field { ((width - gap) * 0.42).clamp(130.0, 170.0) } else { (width * 0.75).min(260.0) };
        let all = Way::all(piece, !farm.fields.is_empty());
        boxes::choice(ui, &t!("fields-what-becomes-of", named = named), &mut way, &all, |way| way.words(), first);
        if of_field {
            let all: Vec<Option<Id>> = farm.fields.keys().cloned().map(Some).collect();
            let say = |id: &Option<Id>| name_of(farm, id.as_ref());
            boxes::choice(ui, &t!("fields-field-of", named = named), &mut field, &all, say, width - gap - first - 4.0);
        }
    });
    let field = field.or_else(|| farm.fields.keys().next().cloned()).unwrap_or_default();
    *becomes = match way {
        Way::NewField => Becomes::NewField,
        Way::Boundary => Becomes::Boundary(field),
        Way::Surrounding(kind) => Becomes::Surrounding(kind),
        Way::Gateway => Becomes::Gateway(field),
        Way::Nothing => Becomes::Nothing,
    };
}

fn name_of(farm: &Farm, id: Option<&Id>) -> String {
    let name = id.and_then(|id| farm.fields.get(id)).map(|field| field.name.trim());
    name.filter(|name| !name.is_empty()).unwrap_or(t!("fields-a-field-without-a-name")).to_owned()
}
