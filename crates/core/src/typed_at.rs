//! Where something is typed on the page of what a finding speaks of, so that the desk can lead to the box and not to the page alone.

use crate::label::directions::Kind;

/// A box, a choice or a row, on the page of the finding's subject where nothing else is said.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum TypedAt {
    /// The first statement of a kind on a product's label.
    Statement(Kind),
    /// Whether a product has a surfactant built in, or which charge one has.
    Surfactant,
    /// The first active of a product, with its content.
    Active,
    /// The density of a product.
    Density,
    /// The grade of an ammonium sulfate.
    Grade,
    /// The first container of a product.
    Container,
    /// The price of a product.
    Price,
    /// The account of a product, among the stock.
    Stock,
    /// The rate of the product in the pass that is planned.
    RateInPass,
    /// The mix of a pass.
    Mix,
    /// The fields of a pass.
    Fields,
    /// The rig of a pass, and how it is set.
    Rig,
    /// The water of a pass.
    Water,
    /// The spray volume of a pass.
    Carrier,
    /// The tank of a rig.
    Tank,
    /// What stays in a rig when it runs dry.
    Residual,
    /// The stated area of a field.
    Area,
    /// The analysis of a water.
    Analysis,
}

impl TypedAt {
    /// Where what a room of the core judges is typed, when the finding does not say it itself and speaks of a product.
    pub fn on_label(room: &str) -> Option<Self> {
        Some(Self::Statement(match room {
            "label/rate" => Kind::Rate,
            "label/carrier" => Kind::Carrier,
            "label/season" => Kind::SeasonTotal,
            "label/applications" => Kind::Applications,
            "label/stage" => Kind::CropStage,
            "label/dates" => Kind::Dates,
            "label/harvest" => Kind::HarvestInterval,
            "label/plant_back" => Kind::PlantBack,
            "label/partners" => Kind::NotWith,
            "label/droplets" => Kind::Droplets,
            "label/buffer" | "ground" => Kind::Buffer,
            "label/boom_height" => Kind::BoomHeight,
            "label/ground_speed" => Kind::GroundSpeed,
            "mix/order" => Kind::MixingOrder,
            "mix/choice/judge" | "mix/choice/choose" | "mix/choice/beside" | "mix/choice/content" => Kind::Adjuvant,
            _ => return None,
        }))
    }
}
