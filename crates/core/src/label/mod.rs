//! Label limits: what the labels as typed say about this pass on these fields.
//!
//! One file a limit. Each takes what it needs from the plan and gives findings; none changes a number, but some say how
//! far the rounding may go. A statement speaks where its crop, its stages and its conditions fit. Where one of these cannot
//! be told it is taken to speak, and what it would forbid becomes a Check.

pub(crate) mod applications;
pub(crate) mod boom_height;
pub(crate) mod buffer;
pub mod carrier;
pub(crate) mod dates;
pub(crate) mod droplets;
pub(crate) mod ground_speed;
pub mod groups;
pub mod harvest;
pub(crate) mod limits;
pub mod names;
pub(crate) mod partners;
pub(crate) mod plant_back;
pub mod rate;
pub(crate) mod re_entry;
pub(crate) mod restricted;
pub mod season;
pub mod stage;
pub mod typed;
pub mod weather;
pub mod when;

use when::Situation;

use crate::farm::{Farm, Field, Id, Pass, Product, Statement};
use crate::finding::{Basis, Finding, Subject};
use crate::quantity::{AmountPerArea, Area, CarrierRate};

/// Which end of a range a bound is.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum End {
    Least,
    Most,
}

/// How far the rounding of a product may go on a field, over ground: a limit that the plan itself keeps.
#[derive(Clone, Debug, PartialEq)]
pub(crate) struct Bound {
    pub(crate) product: Id,
    pub(crate) field: Id,
    pub(crate) end: End,
    pub(crate) amount: AmountPerArea,
}

/// A product of a pass on one of its fields.
#[derive(Clone, Copy, Debug)]
pub(crate) struct Here<'a> {
    pub(crate) farm: &'a Farm,
    pub(crate) pass_id: &'a Id,
    pub(crate) pass: &'a Pass,
    pub(crate) carrier: CarrierRate,
    pub(crate) id: &'a Id,
    pub(crate) product: &'a Product,
    pub(crate) field_id: &'a Id,
    pub(crate) field: &'a Field,
    /// How much of the field is sprayed.
    pub(crate) area: Area,
    pub(crate) situation: &'a Situation<'a>,
}

impl<'a> Here<'a> {
    /// The statements that speak here, or may.
    pub(crate) fn spoken(&self) -> impl Iterator<Item = Spoken<'a>> + use<'a> {
        let (field, situation, product) = (self.field, self.situation, self.product);
        product.label.iter().filter_map(move |statement| Spoken::of(product, statement, field, situation))
    }

    pub(crate) fn about_product(&self) -> Subject {
        Subject::Product(self.id.clone())
    }

    pub(crate) fn about_field(&self) -> Subject {
        Subject::Field(self.field_id.clone())
    }
}

/// A statement that speaks of a product on a field, or may.
#[derive(Clone, Debug)]
pub(crate) struct Spoken<'a> {
    pub(crate) statement: &'a Statement,
    pub(crate) product: &'a Product,
    /// What cannot be told about its stages and conditions, in words; empty where it surely speaks.
    pub(crate) doubt: String,
}

impl<'a> Spoken<'a> {
    pub(crate) fn of(
        product: &'a Product,
        statement: &'a Statement,
        field: &Field,
        situation: &Situation,
    ) -> Option<Self> {
        let stage = match speaks(statement, field) {
            Speaks::OtherCrop | Speaks::OtherStage => return None,
            Speaks::Unclear => Some(stage::range(statement)),
            Speaks::Yes => None,
        };
        if when::holds(&statement.when, situation) == Some(false) {
            return None;
        }
        let doubts: Vec<String> = stage.into_iter().chain(when::doubts(&statement.when, situation)).collect();
        Some(Self { statement, product, doubt: doubts.join(" and ") })
    }

    /// Where it stands.
    pub(crate) fn at(&self) -> String {
        place(self.product, self.statement)
    }

    pub(crate) fn basis(&self) -> Basis {
        Basis::Label(self.at())
    }

    /// A Stop, or a Check where it cannot be told whether the statement speaks.
    pub(crate) fn forbid(&self, about: Subject, text: impl Into<String>) -> Finding {
        forbid(&self.doubt, about, text, self.basis())
    }
}

/// A Stop, or a Check that names the doubt.
pub(crate) fn forbid(doubt: &str, about: Subject, text: impl Into<String>, basis: Basis) -> Finding {
    let text = text.into();
    if doubt.is_empty() {
        Finding::stop(about, text, basis)
    } else {
        Finding::check(about, format!("{text}; the label says so {doubt}, which cannot be told here"), basis)
    }
}

/// Names in a sentence: "A, B and C".
pub(crate) fn listed(names: &[String]) -> String {
    match names {
        [] => String::new(),
        [one] => one.clone(),
        [first @ .., last] => format!("{} and {last}", first.join(", ")),
    }
}

/// Each text once, in the order in which it came.
pub(crate) fn once<T: PartialEq>(all: impl IntoIterator<Item = T>) -> Vec<T> {
    let mut seen: Vec<T> = Vec::new();
    for one in all {
        if !seen.contains(&one) {
            seen.push(one);
        }
    }
    seen
}

/// What several labels ask of a thing that is not typed, and where they do, each once.
pub(crate) fn asked_once(open: Vec<(String, String)>) -> (Vec<String>, Basis) {
    let (asked, places): (Vec<String>, Vec<String>) = open.into_iter().unzip();
    (once(asked), Basis::Label(once(places).join("; ")))
}

/// Where a statement stands: the product's name and the page.
pub fn place(product: &Product, statement: &Statement) -> String {
    if statement.at.is_empty() { product.name.clone() } else { format!("{}, {}", product.name, statement.at) }
}

/// Whether a statement speaks of a field.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum Speaks {
    /// Crop and stage fit.
    Yes,
    /// The crop is another one.
    OtherCrop,
    /// The crop fits, the stage lies outside.
    OtherStage,
    /// The crop fits; the stage cannot be compared.
    Unclear,
}

/// Whether a statement speaks of the crop on a field at its stage.
pub(crate) fn speaks(statement: &Statement, field: &Field) -> Speaks {
    if !for_crop(statement, field) {
        return Speaks::OtherCrop;
    }
    match stage::within(&field.crop, &field.stage, &statement.from_stage, &statement.to_stage) {
        Some(true) => Speaks::Yes,
        Some(false) => Speaks::OtherStage,
        None => Speaks::Unclear,
    }
}

/// Whether a statement is for every crop or for the field's. A statement may list several, apart by commas.
pub fn for_crop(statement: &Statement, field: &Field) -> bool {
    names_crop(statement, &field.crop)
}

/// The same for a crop by its name.
pub(crate) fn names_crop(statement: &Statement, crop: &str) -> bool {
    let names = || statement.crop.split(',').map(str::trim);
    // Mostly both are written alike, which is quickly told.
    statement.crop.trim().is_empty() || names().any(|name| name.eq_ignore_ascii_case(crop.trim())) || {
        let crop = plain_crop(crop);
        names().any(|name| plain_crop(name) == crop)
    }
}

/// A crop's name without what people write differently for the same crop: case, spaces and a plural's end. Another word
/// for it is another crop here, since a label may mean field corn and not sweet corn; that is said where it matters.
pub(crate) fn plain_crop(name: &str) -> String {
    let word = |word: &str| word.strip_suffix('s').unwrap_or(word).to_owned();
    name.to_lowercase().split_whitespace().map(word).collect::<Vec<_>>().join(" ")
}

#[cfg(test)]
mod tests {
    use super::names_crop;
    use crate::farm::Statement;
    use crate::farm::label::Says;

    #[test]
    fn a_crop_in_the_plural_is_the_same_crop() {
        let says = |statement: &str, field: &str| {
            let mut says = Statement::new(Says::CropStage, "");
            statement.clone_into(&mut says.crop);
            names_crop(&says, field)
        };
        for (statement, field) in [
            ("soybean", "Soybeans"),
            ("corn, soybean", "Soybean "),
            ("sugar beet", "sugar  beets"),
            ("peas", "pea"),
            ("", "anything"),
        ] {
            assert!(says(statement, field), "{statement} on {field}");
        }
        for (statement, field) in
            [("corn", "sweet corn"), ("corn", "field corn"), ("wheat", "winter wheat"), ("corn", "")]
        {
            assert!(!says(statement, field), "{statement} on {field}");
        }
    }
}
