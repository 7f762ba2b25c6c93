//! Pairs of partners that publications found to antagonise, bind, fall out or hurt the crop: the rows of
//! `assets/pairs.csv`, judged in the tank and, where a row asks for days between, over other passes and records.

use crate::language::{row, t};
use std::sync::LazyLock;

use serde::Deserialize;

use crate::farm::{AdjuvantClass, CarrierKind, Charge, Farm, Id, Pass, Product, crop};
use crate::finding::{Basis, Finding, Level, Subject};
use crate::mix::actives;
use crate::mix::line::{PlannedLine, active_per_area};
use crate::plan::PlannedField;
use crate::quantity::{MassPerArea, Quantity, Units};
use crate::season::Log;

/// A row of the table, as it stands there.
#[derive(Clone, Debug, Deserialize)]
struct Row {
    id: String,
    /// "active", "group", "family", "class", "charge", "formulation" or "carrier"; so for `b_kind` and `c_kind`.
    a_kind: String,
    /// Which one, or several apart by semicolons; so for `b` and `c`.
    a: String,
    b_kind: String,
    b: String,
    c_kind: String,
    c: String,
    /// Conditions, apart by semicolons; see [`condition`].
    condition: String,
    /// At least so many days of the first before the second.
    days_before: Option<i32>,
    /// At least so many days of the first after the second.
    days_after: Option<i32>,
    effect: String,
    level: String,
    says: String,
    way_out: String,
    source: String,
}

/// What stands on one side of a pair.
#[derive(Clone, Debug, PartialEq)]
pub enum Side {
    /// A product with one of these actives, with or without the name of an ester or salt behind.
    Active(Vec<String>),
    /// A pesticide of one of these resistance groups.
    Group(Vec<String>),
    /// A pesticide of one of these chemical families.
    Family(Vec<String>),
    /// An adjuvant of one of these classes.
    Class(Vec<AdjuvantClass>),
    /// An adjuvant of this charge.
    Charge(Charge),
    /// A product formulated so, by code.
    Formulation(String),
    /// The carrier of the pass.
    Carrier(CarrierKind),
}

impl Side {
    fn read(kind: &str, which: &str) -> Result<Self, String> {
        let names = || which.split(';').map(|name| name.trim().to_owned()).collect::<Vec<_>>();
        if which.trim().is_empty() {
            return Err(t!("mix-a-side-without-a-name").to_owned());
        }
        Ok(match kind {
            "active" => Self::Active(names()),
            "group" => Self::Group(names()),
            "family" => Self::Family(names()),
            "class" => Self::Class(classes(which)?),
            "charge" => Self::Charge(
                Charge::ALL
                    .into_iter()
                    .find(|charge| charge.word() == which)
                    .ok_or_else(|| t!("mix-no-charge-is-called", which = which))?,
            ),
            "formulation" => Self::Formulation(which.to_owned()),
            "carrier" if which == "UAN" => Self::Carrier(CarrierKind::UreaAmmoniumNitrate),
            "carrier" if which == "fertilizer" => Self::Carrier(CarrierKind::LiquidFertilizer),
            _ => return Err(t!("mix-no-side-is", kind = kind, which = which)),
        })
    }

    /// Whether a product stands on this side.
    pub fn fits(&self, product: &Product) -> bool {
        let held = || product.actives.iter().filter(|_| product.kind.holds_actives());
        match self {
            Self::Active(names) => held().any(|active| names.iter().any(|name| is_named(name, &active.name))),
            Self::Group(groups) => held().any(|active| {
                let group = actives::group(active);
                groups.iter().any(|wanted| wanted == group)
            }),
            Self::Family(families) => held().any(|active| {
                actives::facts(&active.name)
                    .is_some_and(|facts| families.iter().any(|family| family.eq_ignore_ascii_case(&facts.family)))
            }),
            Self::Class(classes) => product.adjuvant_class().is_some_and(|class| classes.contains(&class)),
            Self::Charge(charge) => {
                !product.kind.is_pesticide() && product.surfactant.is_some_and(|held| held.charge == *charge)
            }
            Self::Formulation(code) => product.formulation.code() == code,
            Self::Carrier(_) => false,
        }
    }
}

/// Whether an active as typed is the one named: the name itself, or the name followed by its ester or salt.
fn is_named(name: &str, typed: &str) -> bool {
    let (name, typed) = (name.to_lowercase(), typed.trim().to_lowercase());
    typed.strip_prefix(&name).is_some_and(|rest| !rest.starts_with(char::is_alphanumeric))
}

fn classes(keys: &str) -> Result<Vec<AdjuvantClass>, String> {
    keys.split([' ', ';'])
        .filter(|key| !key.is_empty())
        .map(|key| AdjuvantClass::of_key(key).ok_or_else(|| t!("mix-no-class-is-called", key = key)))
        .collect()
}

/// Under what a row speaks.
#[derive(Clone, Debug, PartialEq)]
enum Condition {
    /// The crop of a field has this word in its name, or is not typed.
    Crop(String),
    /// Less of the first side's active than this goes over ground.
    Below(MassPerArea),
    /// An adjuvant of one of these classes is in the tank.
    With(Vec<AdjuvantClass>),
    /// None of these is.
    Without(Vec<AdjuvantClass>),
    /// The first side's formulation holds a surfactant that its label calls complete.
    Loaded,
    /// The second side is formulated so.
    Formulation(String),
}

/// Reads "crop=…", "a below=105 g/ha", "with=NIS", "without=COC MSO", "a loaded", "b formulation=WP".
fn condition(token: &str) -> Result<Condition, String> {
    Ok(match token.split_once('=').map_or((token, ""), |(name, value)| (name.trim(), value.trim())) {
        ("crop", crop) if !crop.is_empty() => Condition::Crop(crop.to_owned()),
        ("a below", limit) => Condition::Below(MassPerArea::parse(limit).map_err(|error| error.to_string())?),
        ("with", keys) if !keys.is_empty() => Condition::With(classes(keys)?),
        ("without", keys) if !keys.is_empty() => Condition::Without(classes(keys)?),
        ("a loaded", "") => Condition::Loaded,
        ("b formulation", code) if !code.is_empty() => Condition::Formulation(code.to_owned()),
        _ => return Err(t!("mix-no-condition-is", token = token)),
    })
}

/// What comes of a pair.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Effect {
    /// One takes from the other's control.
    Antagonism,
    /// One holds the other back.
    Binding,
    /// Something falls out of the water.
    Precipitate,
    /// The crop is hurt.
    Injury,
}

impl Effect {
    const ALL: [(Self, &'static str); 4] = [
        (Self::Antagonism, "antagonism"),
        (Self::Binding, "binding"),
        (Self::Precipitate, "precipitate"),
        (Self::Injury, "injury"),
    ];

    /// What partners may do.
    fn of(self, names: &str) -> String {
        match self {
            Self::Antagonism => t!("mix-may-work-against-each-other", names = names),
            Self::Binding => t!("mix-may-bind-each-other", names = names),
            Self::Precipitate => t!("mix-may-fall-out-of-the-water", names = names),
            Self::Injury => t!("mix-may-hurt-the-crop-together", names = names),
        }
    }

    /// What a product may do in a carrier.
    fn in_carrier(self, name: &str, carrier: &str) -> String {
        match self {
            Self::Antagonism | Self::Binding => t!("mix-may-work-less-well", name = name, carrier = carrier),
            Self::Precipitate => t!("mix-may-fall-out", name = name, carrier = carrier),
            Self::Injury => t!("mix-may-hurt-the-crop", name = name, carrier = carrier),
        }
    }
}

/// A pair, or a threesome, with what a publication says of it.
#[derive(Clone, Debug)]
pub struct Pair {
    /// Its name in the table.
    pub id: String,
    /// The first side.
    pub a: Side,
    /// The second.
    pub b: Side,
    /// A third that must be there too.
    pub c: Option<Side>,
    conditions: Vec<Condition>,
    /// Days that the first keeps before the second, and after it.
    pub apart: Option<(i32, i32)>,
    /// What comes of it.
    pub effect: Effect,
    /// How much it weighs.
    pub level: Level,
    /// A sentence that says it.
    pub says: String,
    /// What to do instead.
    pub way_out: String,
    /// A publication, or common practice.
    pub basis: Basis,
}

/// The table, read.
pub fn table() -> &'static [Pair] {
    static TABLE: LazyLock<Vec<Pair>> = LazyLock::new(|| rows().iter().filter_map(|row| pair(row).ok()).collect());
    &TABLE
}

fn rows() -> Vec<Row> {
    crate::table::read(include_str!("../../../../assets/pairs.csv")).unwrap_or_default()
}

fn pair(row: &Row) -> Result<Pair, String> {
    let read = || -> Result<Pair, String> {
        Ok(Pair {
            id: row.id.clone(),
            a: Side::read(&row.a_kind, &row.a)?,
            b: Side::read(&row.b_kind, &row.b)?,
            c: if row.c_kind.is_empty() { None } else { Some(Side::read(&row.c_kind, &row.c)?) },
            conditions: row
                .condition
                .split(';')
                .map(str::trim)
                .filter(|token| !token.is_empty())
                .map(condition)
                .collect::<Result<_, _>>()?,
            apart: row.days_before.zip(row.days_after),
            effect: Effect::ALL
                .into_iter()
                .find(|(_, name)| *name == row.effect)
                .map(|(effect, _)| effect)
                .ok_or(t!("mix-no-such-effect"))?,
            level: match row.level.as_str() {
                "note" => Level::Note,
                "check" => Level::Check,
                "stop" => Level::Stop,
                _ => return Err(t!("mix-note-check-or-stop").to_owned()),
            },
            says: row.says.clone(),
            way_out: row.way_out.clone(),
            basis: Basis::of_source(&row.source),
        })
    };
    read().map_err(|what| format!("{}: {what}", row.id))
}

/// A product of the tank as it is planned.
#[derive(Clone, Copy)]
pub(super) struct InTank<'a> {
    pub(super) id: &'a Id,
    pub(super) product: &'a Product,
    line: &'a PlannedLine,
}

/// The products of a tank.
pub(super) fn in_tank<'a>(farm: &'a Farm, lines: &'a [PlannedLine]) -> Vec<InTank<'a>> {
    lines
        .iter()
        .filter_map(|line| farm.products.get_key_value(&line.product).map(|(id, product)| InTank { id, product, line }))
        .collect()
}

/// The published pairs in a tank, and those that other passes and records bring together too soon.
pub(crate) fn judge(
    farm: &Farm,
    log: &Log,
    pass_id: &Id,
    pass: &Pass,
    fields: &[PlannedField],
    lines: &[PlannedLine],
    findings: &mut Vec<Finding>,
) {
    let tank = in_tank(farm, lines);
    let crops: Vec<&str> =
        fields.iter().filter_map(|field| farm.fields.get(&field.field)).map(|field| field.crop.as_str()).collect();
    // Threesomes first: one that speaks has said what the Notes about two of its three would say.
    let (three, two): (Vec<&Pair>, Vec<&Pair>) = table().iter().partition(|pair| pair.c.is_some());
    let mut said: Vec<[&Id; 3]> = Vec::new();
    for pair in three.into_iter().chain(two) {
        if pair.apart.is_some() {
            super::interval::judge((farm, log), pass_id, pass, pair, &crops, &tank, findings);
            continue;
        }
        for a in tank.iter().filter(|a| pair.a.fits(a.product)) {
            let Some(rate) = pair.holds(*a, &crops, &tank, farm.units) else { continue };
            if let Side::Carrier(kind) = pair.b {
                if kind == pass.carrier_kind
                    && let Ok(third) = pair.third(*a, None, &tank)
                {
                    let name = third.map_or_else(
                        || a.product.name.clone(),
                        |third| t!("mix-with", name = a.product.name, third = third.product.name),
                    );
                    let text = pair.effect.in_carrier(&name, kind.name());
                    findings.push(pair.finding(a.id, &text, &rate));
                }
                continue;
            }
            for b in tank.iter().filter(|b| b.id != a.id && pair.second_fits(b.product)) {
                let Ok(third) = pair.third(*a, Some(*b), &tank) else { continue };
                if pair.level == Level::Note && said.iter().any(|three| three.contains(&a.id) && three.contains(&b.id))
                {
                    continue;
                }
                let mut names = vec![a.product.name.as_str(), b.product.name.as_str()];
                if let Some(third) = third {
                    said.push([a.id, b.id, third.id]);
                    names.push(&third.product.name);
                    names.dedup();
                }
                let text = pair.effect.of(&listed(&names));
                findings.push(pair.finding(a.id, &text, &rate));
            }
        }
    }
}

/// At which rate of the first side a row speaks.
pub(super) enum AtRate {
    /// At any.
    Any,
    /// At a low one; which it is here cannot be told.
    Untold,
    /// At a low one; what it is here, in words.
    Of(String),
}

/// The third of a threesome is not in the tank.
struct Missing;

/// "A and B", "A, B and C".
fn listed(names: &[&str]) -> String {
    match names {
        [] => String::new(),
        [one] => (*one).to_owned(),
        [first @ .., last] => t!("mix-first-and-last", first = first.join(", "), last = last),
    }
}

impl Pair {
    /// Whether a product stands on the second side, in the formulation that the row asks for. What charges do is judged
    /// with the charges.
    pub(super) fn second_fits(&self, product: &Product) -> bool {
        let formulated = self.conditions.iter().all(|condition| match condition {
            Condition::Formulation(code) => product.formulation.code() == code,
            _ => true,
        });
        !matches!(self.b, Side::Charge(_)) && self.b.fits(product) && formulated
    }

    /// The product on the third side; none where none is wanted. It may be the second product itself, where that holds both.
    ///
    /// # Errors
    /// Where one is wanted and missing.
    fn third<'a>(
        &self,
        a: InTank<'a>,
        b: Option<InTank<'a>>,
        tank: &[InTank<'a>],
    ) -> Result<Option<InTank<'a>>, Missing> {
        let Some(side) = &self.c else { return Ok(None) };
        let second = b.filter(|b| side.fits(b.product));
        second.or_else(|| tank.iter().copied().find(|c| c.id != a.id && side.fits(c.product))).map(Some).ok_or(Missing)
    }

    /// Whether its conditions hold for a product on the first side; its rate where the rate decides. A crop or a
    /// rate that is not known does not silence a row.
    pub(super) fn holds(&self, a: InTank<'_>, crops: &[&str], tank: &[InTank<'_>], units: Units) -> Option<AtRate> {
        let has = |classes: &[AdjuvantClass]| {
            tank.iter().any(|other| other.product.adjuvant_class().is_some_and(|class| classes.contains(&class)))
        };
        let mut at = AtRate::Any;
        for condition in &self.conditions {
            let holds = match condition {
                Condition::Crop(crop) => crops.is_empty() || crops.iter().any(|typed| is_crop(typed, crop)),
                Condition::With(classes) => has(classes),
                Condition::Without(classes) => !has(classes),
                Condition::Loaded => a.product.is_loaded(),
                Condition::Formulation(_) => true,
                Condition::Below(limit) => {
                    let Side::Active(names) = &self.a else { return None };
                    let rates: Vec<Option<MassPerArea>> = a
                        .product
                        .actives
                        .iter()
                        .filter(|active| names.iter().any(|name| is_named(name, &active.name)))
                        .map(|active| active_per_area(a.line.per_area, active, a.product))
                        .collect();
                    let rate: Option<MassPerArea> = rates.into_iter().sum();
                    at = rate.map_or(AtRate::Untold, |rate| AtRate::Of(rate.show(units)));
                    rate.is_none_or(|rate| limit.exceeds(rate))
                }
            };
            if !holds {
                return None;
            }
        }
        Some(at)
    }

    pub(super) fn finding(&self, about: &Id, text: &str, at: &AtRate) -> Finding {
        let says = row(&self.says);
        let text = match at {
            AtRate::Any => format!("{text}: {says}"),
            AtRate::Untold => t!("mix-pair-at-an-untold-rate", text = text, says = says),
            AtRate::Of(rate) => t!("mix-pair-at-a-rate", text = text, says = says, rate = rate),
        };
        Finding::new(self.level, Subject::Product(about.clone()), text, self.basis.clone()).hint(row(&self.way_out))
    }
}

/// Whether a crop as typed is the one of a row: one of its words is the row's. A field without a crop may be any.
fn is_crop(typed: &str, of_row: &str) -> bool {
    typed.trim().is_empty() || crop::words(typed).contains(&crop::plain(of_row))
}

#[cfg(test)]
mod tests {
    use super::{Side, is_crop, is_named, pair, rows};
    use crate::farm::{Active, AdjuvantClass, Charge, Formulation, Product, ProductKind, Surfactant};
    use crate::quantity::{ActiveBasis, AsTyped};

    #[test]
    fn every_row_reads_and_has_a_source_and_a_way_out() {
        let rows = rows();
        assert!(rows.len() > 20);
        let mut ids = std::collections::HashSet::new();
        for row in &rows {
            pair(row).unwrap_or_else(|problem| panic!("{problem}"));
            assert!(!row.source.is_empty() && !row.says.is_empty() && !row.way_out.is_empty(), "{}", row.id);
            assert!(ids.insert(row.id.clone()), "{} stands twice", row.id);
        }
    }

    #[test]
    fn an_ester_or_salt_does_not_hide_an_active() {
        for typed in ["quizalofop", "Quizalofop-P-ethyl", " quizalofop ethyl"] {
            assert!(is_named("quizalofop", typed), "{typed}");
        }
        assert!(is_named("2,4-D", "2,4-D choline"));
        assert!(!is_named("2,4-D", "2,4-DB"));
        assert!(!is_named("glyphosate", "glufosinate"));
    }

    #[test]
    fn each_kind_of_side_knows_its_product() {
        let mut herbicide = Product::new("Herbicide (demo)", ProductKind::Herbicide, Formulation::WP);
        herbicide.actives.push(Active {
            name: "Glyphosate".to_owned(),
            group: String::new(),
            basis: ActiveBasis::AcidEquivalent,
            content: AsTyped::parse("50 %").unwrap(),
        });
        herbicide.surfactant = Some(Surfactant { charge: Charge::Anionic, complete: false });
        let mut oil = Product::new("Oil (demo)", ProductKind::Adjuvant, Formulation::EC);
        oil.class = Some(AdjuvantClass::MethylatedSeedOil);
        oil.surfactant = herbicide.surfactant;
        for (kind, which, of_herbicide, of_oil) in [
            ("active", "atrazine;glyphosate", true, false),
            ("active", "atrazine", false, false),
            // From the facts table, since no group is typed.
            ("group", "2;9", true, false),
            ("group", "1", false, false),
            ("family", "glycine", true, false),
            ("formulation", "WP", true, false),
            ("class", "COC MSO", false, true),
            ("class", "NIS", false, false),
            // Only an adjuvant stands for its charge.
            ("charge", "anionic", false, true),
            ("charge", "cationic", false, false),
        ] {
            let side = Side::read(kind, which).unwrap();
            assert_eq!((side.fits(&herbicide), side.fits(&oil)), (of_herbicide, of_oil), "{kind} {which}");
        }
        for (kind, which) in
            [("active", ""), ("class", "XYZ"), ("charge", "odd"), ("carrier", "milk"), ("colour", "red")]
        {
            assert!(Side::read(kind, which).is_err(), "{kind} {which}");
        }
    }

    #[test]
    fn a_crop_is_known_by_one_of_its_words() {
        assert!(is_crop("soft red winter wheat", "wheat"));
        assert!(is_crop("soybeans", "soybean"));
        assert!(is_crop("", "soybean"));
        assert!(!is_crop("buckwheat", "wheat"));
    }
}
