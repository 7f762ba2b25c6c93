//! The ground of a pass: the two areas of each field, what lies beside it, and the strips that labels keep to that.

use crate::farm::{AreaFrom, Id, Shape};
use crate::finding::{Basis, Finding};
use crate::quantity::{Area, Length};
use crate::working::Working;

/// The ground of a pass, field by field, in the order sprayed; fields that are not on the farm do not come.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Ground {
    /// The fields.
    pub fields: Vec<FieldGround>,
}

/// The ground of a field of a pass, and what of it the pass leaves.
#[derive(Clone, Debug, PartialEq)]
pub struct FieldGround {
    /// The field.
    pub field: Id,
    /// The area that the plan goes by.
    pub area: Area,
    /// Which of its two that is.
    pub from: AreaFrom,
    /// The stated area.
    pub stated: Area,
    /// The area within the boundary; `None` where none is drawn.
    pub measured: Option<Area>,
    /// What stays unsprayed, as typed.
    pub unsprayed: Area,
    /// The strips, those to what is drawn before those to typed neighbours.
    pub strips: Vec<Strip>,
    /// All strips together on the ground; `None` where nothing of the field lies in one.
    pub strip_shape: Option<Shape>,
    /// How much that is: ground in two strips counts once.
    pub strip_area: Area,
    /// What can be sprayed: the area less what stays unsprayed and the strips.
    pub sprayable: Area,
    /// How that comes about.
    pub working: Working,
    /// What there is to say. They stand among the findings of the plan, too.
    pub findings: Vec<Finding>,
}

/// What a strip is kept to.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum To {
    /// Something drawn, by its id in [`crate::farm::Farm::surroundings`].
    Surrounding(Id),
    /// A typed neighbour, by its place in [`crate::farm::Field::neighbours`].
    Neighbour(usize),
}

/// Whether a strip is left.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Applies {
    /// It is.
    Yes,
    /// It is asked for down the wind alone, and no wind is known: it is left whichever way the wind blows.
    WindUnknown,
    /// It is asked for down the wind alone, which blows elsewhere.
    NotDownwind,
    /// Nothing is drawn to measure it by: people leave it.
    NotMeasured,
}

/// A strip of a field that a label or a law keeps unsprayed.
#[derive(Clone, Debug, PartialEq)]
pub struct Strip {
    /// To what.
    pub to: To,
    /// What that is called.
    pub what: String,
    /// Who asks for it: a product by its name, or a law.
    pub who: String,
    /// Where that stands.
    pub basis: Basis,
    /// How wide.
    pub width: Length,
    /// How far what it is kept to lies from the field; `None` where that is not known.
    pub distance: Option<Length>,
    /// The part of the field that it takes; `None` where it takes none or nothing is drawn.
    pub unsprayed: Option<Shape>,
    /// How much that is.
    pub area: Area,
    /// How much of the field's edge lies in it.
    pub edge: Length,
    /// Only down the wind.
    pub downwind_only: bool,
    /// Whether it is left.
    pub applies: Applies,
}

impl Ground {
    /// The ground of a field; `None` where the pass does not go there.
    pub fn of_field(&self, id: &str) -> Option<&FieldGround> {
        self.fields.iter().find(|field| field.field == id)
    }
}
