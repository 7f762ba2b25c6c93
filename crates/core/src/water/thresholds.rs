//! From where on a water matters, for which actives and at which rates: the rows of `assets/water-thresholds.csv`.

use std::sync::LazyLock;

use serde::Deserialize;

use super::hardness::hardness;
use crate::farm::water::Clarity;
use crate::farm::{Active, AdjuvantClass, Product, Water};
use crate::finding::Level;
use crate::language::t;
use crate::mix::actives;
use crate::mix::line::active_per_area;
use crate::quantity::{
    Acidity, ActiveBasis, AmountPerArea, Conductivity, Hardness, IonContent, MassPerArea, Quantity, Units,
};

/// What about a water matters.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Factor {
    /// Calcium and magnesium.
    Hardness,
    /// Bicarbonate, which a hardness test does not show.
    Bicarbonate,
    /// Iron.
    Iron,
    /// Acidity.
    Acidity,
    /// Soil in the water.
    Clarity,
    /// Salt of any kind.
    Conductivity,
}

impl Factor {
    /// All of them.
    pub const ALL: [Self; 6] =
        [Self::Hardness, Self::Bicarbonate, Self::Iron, Self::Acidity, Self::Clarity, Self::Conductivity];

    /// The key under which the table speaks of it.
    pub const fn key(self) -> &'static str {
        match self {
            Self::Hardness => "hardness",
            Self::Bicarbonate => "bicarbonate",
            Self::Iron => "iron",
            Self::Acidity => "pH",
            Self::Clarity => "clarity",
            Self::Conductivity => "conductivity",
        }
    }

    /// What the analysis states of it.
    pub(super) fn of(self, water: &Water) -> Option<Measure> {
        match self {
            Self::Hardness => hardness(water).map(Measure::Hardness),
            Self::Bicarbonate => water.bicarbonate.as_ref().map(|ion| Measure::Ion(ion.value())),
            Self::Iron => water.iron.as_ref().map(|ion| Measure::Ion(ion.value())),
            Self::Acidity => water.acidity.as_ref().map(|acidity| Measure::Acidity(acidity.value())),
            Self::Clarity => water.clarity.map(Measure::Clarity),
            Self::Conductivity => water.conductivity.as_ref().map(|found| Measure::Conductivity(found.value())),
        }
    }

    fn read(self, text: &str) -> Option<Measure> {
        match self {
            Self::Hardness => Hardness::parse(text).ok().map(Measure::Hardness),
            Self::Bicarbonate | Self::Iron => IonContent::parse(text).ok().map(Measure::Ion),
            Self::Acidity => Acidity::parse(text).ok().map(Measure::Acidity),
            Self::Clarity => Clarity::ALL.into_iter().find(|clarity| clarity.word() == text).map(Measure::Clarity),
            Self::Conductivity => Conductivity::parse(text).ok().map(Measure::Conductivity),
        }
    }
}

/// A figure of one of the factors.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Measure {
    /// Hardness.
    Hardness(Hardness),
    /// Bicarbonate or iron.
    Ion(IonContent),
    /// Acidity.
    Acidity(Acidity),
    /// Clarity.
    Clarity(Clarity),
    /// Conductivity.
    Conductivity(Conductivity),
}

impl Measure {
    /// In words.
    pub fn show(self, units: Units) -> String {
        match self {
            Self::Hardness(hardness) => hardness.show(units),
            Self::Ion(ion) => ion.show(units),
            Self::Acidity(acidity) => acidity.show(units),
            Self::Clarity(clarity) => clarity.name().to_owned(),
            Self::Conductivity(conductivity) => conductivity.show(units),
        }
    }

    /// For comparing two of one factor.
    pub(super) fn size(self) -> f64 {
        match self {
            Self::Hardness(hardness) => hardness.to_ppm(),
            Self::Ion(ion) => ion.to_ppm(),
            Self::Acidity(acidity) => acidity.ph(),
            Self::Clarity(clarity) => f64::from(clarity as u8),
            Self::Conductivity(conductivity) => conductivity.to_microsiemens_per_centimetre(),
        }
    }
}

/// On which side of a limit a water matters.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum Side {
    Above,
    From,
    Below,
}

impl Side {
    /// Arithmetic error (one part in 10⁹) counts for neither side.
    fn passed(self, found: Measure, limit: Measure) -> bool {
        let (found, limit) = (found.size(), limit.size());
        let error = limit.abs() * 1e-9;
        match self {
            Self::Above => found > limit + error,
            Self::From => found >= limit - error,
            Self::Below => found < limit - error,
        }
    }
}

/// Whom a row concerns.
#[derive(Clone, Debug, PartialEq)]
enum Concerns {
    Any,
    Family(String),
    Formulation(String),
    Active(String),
    /// Its salts, amines among them, and not its esters.
    SaltsOf(String),
}

/// At which rates of the active a row holds.
#[derive(Clone, Copy, Debug, PartialEq)]
enum AtRate {
    AtMost(MassPerArea),
    Above(MassPerArea),
}

/// One row of the table, read.
#[derive(Clone, Debug)]
pub struct Threshold {
    /// Its number in the table.
    pub id: String,
    /// What about the water.
    pub factor: Factor,
    /// The limit.
    pub limit: Measure,
    /// How much it weighs where it is passed.
    pub level: Level,
    /// A word on it; may be empty.
    pub says: String,
    /// Where it is printed.
    pub source: String,
    concerns: Vec<Concerns>,
    side: Side,
    rate: Option<AtRate>,
    eased_by: Vec<AdjuvantClass>,
}

/// A row of the table, as it stands there.
#[derive(Deserialize)]
struct Row {
    id: String,
    factor: String,
    /// Apart by semicolons: an ISO name, "… salt" (its esters are not meant), "family …", "formulation …", or "any".
    subjects: String,
    /// "above", "from" or "below".
    when: String,
    limit: String,
    /// "at most …" or "above …" over ground; empty for any rate.
    rate: String,
    /// Keys of adjuvant classes that make a note of it where they are in the mix.
    eased_by: String,
    level: String,
    says: String,
    source: String,
}

/// The table, read.
pub fn table() -> &'static [Threshold] {
    static TABLE: LazyLock<Vec<Threshold>> = LazyLock::new(|| rows().iter().filter_map(read).collect());
    &TABLE
}

fn rows() -> Vec<Row> {
    crate::table::read(include_str!("../../../../assets/water-thresholds.csv")).unwrap_or_default()
}

fn read(row: &Row) -> Option<Threshold> {
    let factor = Factor::ALL.into_iter().find(|factor| factor.key() == row.factor)?;
    let concerns = row.subjects.split(';').map(|token| {
        let token = token.trim();
        match token.split_once(' ') {
            None if token == "any" => Concerns::Any,
            Some(("family", family)) => Concerns::Family(family.to_owned()),
            Some(("formulation", code)) => Concerns::Formulation(code.to_owned()),
            _ => token
                .strip_suffix(" salt")
                .map_or_else(|| Concerns::Active(token.to_owned()), |name| Concerns::SaltsOf(name.to_owned())),
        }
    });
    let rate = |text: &str| MassPerArea::parse(text).ok();
    Some(Threshold {
        id: row.id.clone(),
        factor,
        limit: factor.read(&row.limit)?,
        level: match row.level.as_str() {
            "note" => Level::Note,
            "check" => Level::Check,
            _ => return None,
        },
        says: row.says.clone(),
        source: row.source.clone(),
        concerns: concerns.collect(),
        side: match row.when.as_str() {
            "above" => Side::Above,
            "from" => Side::From,
            "below" => Side::Below,
            _ => return None,
        },
        rate: match (row.rate.strip_prefix("at most "), row.rate.strip_prefix("above ")) {
            (Some(most), _) => Some(AtRate::AtMost(rate(most)?)),
            (_, Some(least)) => Some(AtRate::Above(rate(least)?)),
            _ if row.rate.is_empty() => None,
            _ => return None,
        },
        eased_by: row.eased_by.split_whitespace().map(AdjuvantClass::of_key).collect::<Option<_>>()?,
    })
}

/// A product of a mix with what of it comes on the ground.
#[derive(Clone, Copy, Debug)]
pub struct Mixed<'a> {
    /// The product.
    pub product: &'a Product,
    /// How much of it over ground.
    pub per_area: AmountPerArea,
}

/// Whether an active whose salts and esters differ is the one or the other, as far as its names tell.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum Form {
    Salt,
    Ester,
    Unclear,
}

/// By the name of the active, and where that is bare by the name of a product that holds nothing else.
fn form(active: &Active, product: &Product) -> Form {
    let of = |name: &str| {
        let name = name.to_lowercase();
        let has = |words: &[&str]| words.iter().any(|word| name.contains(word));
        if has(&["ester", "ethylhexyl", "butotyl", "butoxyethyl", "isooctyl", "iso-octyl"]) {
            Form::Ester
        } else if has(&["amine", "ammonium", "salt", "choline", "sodium", "potassium"]) {
            Form::Salt
        } else {
            Form::Unclear
        }
    };
    match of(&active.name) {
        Form::Unclear if product.actives.len() == 1 => of(&product.name),
        known => known,
    }
}

/// Whether a typed name is an active's, perhaps with its salt: "2,4-D dimethylamine salt" is 2,4-D and 2,4-DB is not.
fn is_named(typed: &str, name: &str) -> bool {
    let (typed, name) = (typed.trim().to_lowercase(), name.to_lowercase());
    typed.strip_prefix(&name).is_some_and(|rest| !rest.starts_with(char::is_alphanumeric))
}

/// What of a mix a row concerns: the names, and whether one of them may be an ester that it does not concern.
pub(super) struct Hit {
    pub(super) names: Vec<String>,
    pub(super) unclear: bool,
}

impl Threshold {
    pub(super) fn hit(&self, mix: &[Mixed<'_>]) -> Hit {
        let mut hit = Hit { names: Vec::new(), unclear: false };
        for mixed in mix.iter().filter(|mixed| mixed.product.kind.is_pesticide()) {
            for concerns in &self.concerns {
                match concerns {
                    Concerns::Any => push(&mut hit.names, &mixed.product.name),
                    Concerns::Formulation(code) if mixed.product.formulation.code() == code => {
                        push(&mut hit.names, &mixed.product.name);
                    }
                    Concerns::Formulation(_) => {}
                    Concerns::Family(_) | Concerns::Active(_) | Concerns::SaltsOf(_) => {
                        for active in &mixed.product.actives {
                            self.hit_active(concerns, active, *mixed, &mut hit);
                        }
                    }
                }
            }
        }
        hit
    }

    fn hit_active(&self, concerns: &Concerns, active: &Active, mixed: Mixed<'_>, hit: &mut Hit) {
        let name = active.name.trim();
        let (fits, form) = match concerns {
            Concerns::Family(family) => {
                (actives::facts(name).is_some_and(|facts| facts.family.eq_ignore_ascii_case(family)), Form::Salt)
            }
            Concerns::Active(other) => (is_named(name, other), Form::Salt),
            Concerns::SaltsOf(other) => (is_named(name, other), form(active, mixed.product)),
            Concerns::Any | Concerns::Formulation(_) => (false, Form::Salt),
        };
        if !fits || form == Form::Ester || !self.at_this_rate(active, mixed) {
            return;
        }
        hit.unclear |= form == Form::Unclear;
        push(&mut hit.names, name);
    }

    /// A rate that is not known, or counted on another basis than the acid, passes as any.
    fn at_this_rate(&self, active: &Active, mixed: Mixed<'_>) -> bool {
        let Some(at) = self.rate else { return true };
        let planned = active_per_area(mixed.per_area, active, mixed.product)
            .filter(|_| active.basis == ActiveBasis::AcidEquivalent);
        planned.is_none_or(|planned| match at {
            AtRate::AtMost(most) => !planned.exceeds(most),
            AtRate::Above(least) => planned.exceeds(least),
        })
    }

    pub(super) fn eased(&self, mix: &[Mixed<'_>]) -> Level {
        let has = |class: &AdjuvantClass| mix.iter().any(|mixed| mixed.product.class == Some(*class));
        if self.eased_by.iter().any(has) { Level::Note } else { self.level }
    }

    /// Whether a figure lies on the side of the limit that matters.
    pub(super) fn is_passed(&self, found: Measure) -> bool {
        self.side.passed(found, self.limit)
    }

    /// Whether both rows warn of too much, or both of too little.
    pub(super) fn same_side(&self, other: &Self) -> bool {
        (self.side == Side::Below) == (other.side == Side::Below)
    }

    /// The limit with the rates it is printed for.
    pub(super) fn show_limit(&self, units: Units) -> String {
        let limit = self.limit.show(units);
        match self.rate {
            Some(AtRate::AtMost(_)) => t!("water-glyphosate-at-low-rates", limit = limit),
            Some(AtRate::Above(_)) => t!("water-glyphosate-at-higher-rates", limit = limit),
            None => limit,
        }
    }
}

pub(super) fn push(names: &mut Vec<String>, name: &str) {
    if !names.iter().any(|known| known == name) {
        names.push(name.to_owned());
    }
}

#[cfg(test)]
mod tests {
    use super::{Factor, read, rows, table};

    #[test]
    fn every_row_reads_and_has_a_source() {
        let rows = rows();
        let mut ids = std::collections::HashSet::new();
        for row in &rows {
            assert!(read(row).is_some(), "{} does not read", row.id);
            assert!(row.source.len() > 12 && !row.says.ends_with('.'), "{}", row.id);
            assert!(ids.insert(row.id.clone()), "{} stands twice", row.id);
        }
        assert_eq!(table().len(), rows.len());
        for factor in Factor::ALL {
            assert!(table().iter().any(|row| row.factor == factor), "{factor:?} has no row");
        }
    }
}
