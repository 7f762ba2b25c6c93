//! Label limits: what the labels as typed say about this pass on these fields.
//!
//! One file a limit. Each takes what it needs from the plan and gives findings; none changes a number, but some say how
//! far the rounding may go. A statement speaks where its crop, its stages and its conditions fit. Where one of these cannot
//! be told it is taken to speak, and what it would forbid becomes a Check. Some of what laws say is held against plans as the
//! labels are; `laws.rs` says what.

pub(crate) mod applications;
pub(crate) mod boom_height;
pub(crate) mod buffer;
pub mod carrier;
pub(crate) mod dates;
pub mod directions;
pub(crate) mod droplets;
pub(crate) mod ends;
pub(crate) mod ground_speed;
pub mod groups;
pub mod harvest;
pub mod laws;
pub(crate) mod limits;
pub mod names;
pub(crate) mod partners;
pub(crate) mod plant_back;
pub mod rate;
pub(crate) mod re_entry;
pub(crate) mod restricted;
pub mod season;
pub mod stage;
pub(crate) mod tolerance;
pub mod typed;
pub mod weather;
pub mod when;

use when::Situation;

use crate::farm::crop::Named;
use crate::farm::label::{Says, When};
use crate::farm::{Farm, Field, Id, Law, Pass, Product, Statement};
use crate::finding::{Basis, Finding, Subject};
use crate::language::t;
use crate::quantity::{AmountPerArea, Area, CarrierRate};
use crate::season::Log;
use crate::words::all_of;

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
    pub(crate) log: &'a Log,
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
    /// The statements of the label that speak here, or may.
    pub(crate) fn spoken(&self) -> impl Iterator<Item = Spoken<'a>> + use<'a> {
        let (field, situation, product) = (self.field, self.situation, self.product);
        let speaker = Speaker::Label(product);
        product.label.iter().filter_map(move |statement| Spoken::of(speaker, statement, field, situation))
    }

    /// The statements of a kind that speak here, or may: those of the label, then those of the laws of the day.
    pub(crate) fn asked(&self, wanted: fn(&Says) -> bool) -> impl Iterator<Item = Spoken<'a>> + use<'a> {
        let (field, situation) = (self.field, self.situation);
        laws::binding(self.farm, self.product, self.pass.date, wanted)
            .filter_map(move |(speaker, statement)| Spoken::of(speaker, statement, field, situation))
    }

    pub(crate) fn about_product(&self) -> Subject {
        Subject::Product(self.id.clone())
    }

    pub(crate) fn about_field(&self) -> Subject {
        Subject::Field(self.field_id.clone())
    }
}

/// Who says a statement.
#[derive(Clone, Copy, Debug)]
pub(crate) enum Speaker<'a> {
    /// The label of a product.
    Label(&'a Product),
    /// A law that binds the product.
    Law(&'a Law),
}

impl Speaker<'_> {
    /// The product's name, or the rule's.
    pub(crate) fn name(self) -> String {
        match self {
            Self::Label(product) => product.name.clone(),
            Self::Law(law) => law.source(),
        }
    }

    /// Where one of its statements stands.
    pub(crate) fn basis(self, statement: &Statement) -> Basis {
        match self {
            Self::Label(product) => Basis::Label(place(product, statement)),
            Self::Law(law) => {
                let source = law.source();
                Basis::Law(match law.since {
                    Some(day) => t!("label-law-since", source = source, day = day),
                    None => source,
                })
            }
        }
    }
}

/// A statement that speaks of a product on a field, or may.
#[derive(Clone, Debug)]
pub(crate) struct Spoken<'a> {
    pub(crate) statement: &'a Statement,
    pub(crate) speaker: Speaker<'a>,
    /// What cannot be told about its crop, stages and conditions, in words; empty where it surely speaks.
    pub(crate) doubt: String,
}

impl<'a> Spoken<'a> {
    pub(crate) fn of(
        speaker: Speaker<'a>,
        statement: &'a Statement,
        field: &Field,
        situation: &Situation,
    ) -> Option<Self> {
        Self::but_for(speaker, statement, field, situation, |_| false)
    }

    /// The same with some of its conditions left to whoever asks.
    pub(crate) fn but_for(
        speaker: Speaker<'a>,
        statement: &'a Statement,
        field: &Field,
        situation: &Situation,
        left: fn(&When) -> bool,
    ) -> Option<Self> {
        if matches!(speaks(statement, field), Speaks::OtherCrop | Speaks::OtherStage) {
            return None;
        }
        let when = || statement.when.iter().filter(|when| !left(when));
        if when::holds(when(), situation) == Some(false) {
            return None;
        }
        let doubts: Vec<String> =
            unclear(statement, field).into_iter().chain(when::doubts(when(), situation)).collect();
        Some(Self { statement, speaker, doubt: all_of(doubts) })
    }

    /// Where it stands on the label.
    pub(crate) fn at(&self) -> String {
        self.basis().source().to_owned()
    }

    pub(crate) fn basis(&self) -> Basis {
        self.speaker.basis(self.statement)
    }

    /// What a finding on it is about: the product whose label says it, or the pass that a law binds.
    pub(crate) fn about(&self, here: &Here) -> Subject {
        match self.speaker {
            Speaker::Label(_) => here.about_product(),
            Speaker::Law(_) => Subject::Pass(here.pass_id.clone()),
        }
    }

    /// A text with what cannot be told about whether the statement speaks.
    pub(crate) fn with_doubt(&self, text: String) -> String {
        match self.speaker {
            _ if self.doubt.is_empty() => text,
            Speaker::Label(_) => t!("label-the-label-says-so", text = text, doubt = self.doubt),
            Speaker::Law(_) => t!("label-the-rule-says-so", text = text, doubt = self.doubt),
        }
    }

    /// A Stop, or a Check where it cannot be told whether the statement speaks.
    #[track_caller]
    pub(crate) fn forbid(&self, about: Subject, text: impl Into<String>) -> Finding {
        forbid(&self.doubt, about, text, self.basis())
    }
}

/// A Stop, or a Check that names the doubt.
#[track_caller]
pub(crate) fn forbid(doubt: &str, about: Subject, text: impl Into<String>, basis: Basis) -> Finding {
    let text = text.into();
    if doubt.is_empty() {
        Finding::stop(about, text, basis)
    } else {
        let who = if matches!(basis, Basis::Law(_)) { "rule" } else { "label" };
        Finding::check(about, t!("label-the-says-so-which-cannot-be", text = text, who = who, doubt = doubt), basis)
    }
}

/// Names in a sentence: "A, B and C".
pub fn listed(names: &[String]) -> String {
    match names {
        [] => String::new(),
        [one] => one.clone(),
        [first @ .., last] => t!("label-and", first = first.join(", "), last = last),
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

/// What labels and laws ask of a thing that is not typed, in words: "the labels ask for at most 24 in (Alpha)"; and where they do.
/// `None` where none asks.
pub(crate) fn asked_once(open: Vec<(String, Basis)>, end: Option<End>) -> Option<(String, Basis)> {
    let (asked, places): (Vec<String>, Vec<Basis>) = open.into_iter().unzip();
    let (who, asked) = (who(&places), listed(&once(asked)));
    let words = match end {
        Some(End::Most) => t!("label-ask-for-at-most", who = who, asked = asked),
        Some(End::Least) | None => t!("label-ask-for", who = who, asked = asked),
    };
    (!places.is_empty()).then(|| (words, Basis::of_all(&places)))
}

/// Who asks, by where it stands, as messages choose by it: "labels", "laws" or "both".
pub(crate) fn who(places: &[Basis]) -> &'static str {
    let is_law = |basis: &Basis| matches!(basis, Basis::Law(_));
    if !places.iter().any(is_law) {
        "labels"
    } else if places.iter().all(is_law) {
        "laws"
    } else {
        "both"
    }
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
    /// The crop fits or may, the stage lies outside.
    OtherStage,
    /// The crop is not typed, or the stage cannot be compared.
    Unclear,
}

/// Whether a statement speaks of the crop on a field at its stage.
pub(crate) fn speaks(statement: &Statement, field: &Field) -> Speaks {
    let crop_told = crop_doubt(statement, field).is_none();
    if crop_told && !for_crop(statement, field) {
        return Speaks::OtherCrop;
    }
    match stage::within(&field.crop, &field.stage, &statement.from_stage, &statement.to_stage) {
        Some(true) if crop_told => Speaks::Yes,
        Some(false) => Speaks::OtherStage,
        Some(true) | None => Speaks::Unclear,
    }
}

/// What cannot be told about the crop and the stages of a statement, each in words.
pub(crate) fn unclear(statement: &Statement, field: &Field) -> Vec<String> {
    let stage = stage::is_unclear(statement, field).then(|| stage::range(statement));
    crop_doubt(statement, field).into_iter().chain(stage).collect()
}

/// For which crop a statement speaks, in words, where the crop of the field is not typed.
pub(crate) fn crop_doubt(statement: &Statement, field: &Field) -> Option<String> {
    let crop = statement.crop.trim();
    (!crop.is_empty() && field.crop.trim().is_empty())
        .then(|| t!("label-for-the-crop-of-is-not", crop = crop, name = field.name))
}

/// Statements of which one that fits is enough. Where the crop of the field is not typed, what is said for each crop stands apart,
/// with what is said for all.
pub(crate) fn by_crop<'t, T>(all: &'t [T], of: impl Fn(&T) -> &Statement, field: &Field) -> Vec<Vec<&'t T>> {
    let open = all.iter().map(&of).filter(|statement| crop_doubt(statement, field).is_some());
    let crops: Vec<String> = once(open.map(|statement| statement.crop.trim().to_owned()));
    if crops.is_empty() {
        return vec![all.iter().collect()];
    }
    let of_crop = |crop: &String| {
        let fits = |one: &&T| [crop.as_str(), ""].contains(&of(one).crop.trim());
        all.iter().filter(fits).collect()
    };
    crops.iter().map(of_crop).collect()
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
        let crop = Named::of(crop);
        names().any(|name| Named::of(name).is(&crop))
    }
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
            ("corn, soybean", "Soya"),
            ("maíz", "Corn"),
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
