//! What publications and common practice say of adjuvants: the rows of `assets/adjuvant-guidance.csv`, read into the same
//! [`Statement`]s that a user types from a label.

use std::collections::{BTreeMap, HashMap};
use std::sync::LazyLock;

use serde::Deserialize;

use crate::farm::label::{Says, Stance, When};
use crate::farm::{Active, AdjuvantClass, CarrierKind, Droplets, Product, Statement};
use crate::finding::Basis;
use crate::language::t;
use crate::mix::actives;
use crate::quantity::{AsTyped, Concentration, Quantity};

/// A row of the table, as it stands there.
#[derive(Clone, Debug, Deserialize)]
struct Row {
    id: String,
    /// "active", "group", "family" or "class".
    kind: String,
    /// Which one.
    subject: String,
    /// Formulation codes, apart by spaces; empty for all.
    formulations: String,
    /// Content of the active, within 5 %; empty for any.
    content: String,
    crop: String,
    from_stage: String,
    to_stage: String,
    /// Conditions, apart by semicolons; see [`read_when`].
    when: String,
    /// Keys of adjuvant classes, apart by spaces. Where several are required or preferred, any one of them will do.
    class: String,
    stance: String,
    least: String,
    most: String,
    at_least: String,
    at_most: String,
    /// A sentence that says it.
    says: String,
    /// "published" or "practice".
    basis: String,
    source: String,
}

/// What a guidance speaks of.
#[derive(Clone, Debug, PartialEq)]
pub enum About {
    /// An active, perhaps in some formulations alone.
    Active {
        /// ISO common name.
        name: String,
        /// Codes of formulations; empty for all.
        formulations: Vec<String>,
        /// Its content, within 5 %.
        content: Option<Concentration>,
    },
    /// A resistance group.
    Group(String),
    /// A chemical family.
    Family(String),
    /// An adjuvant class itself.
    Class(AdjuvantClass),
}

impl About {
    /// Under which text the table is looked up.
    fn key(&self) -> String {
        match self {
            Self::Active { name, .. } => format!("active {}", actives::key(name)),
            Self::Group(group) => format!("group {group}"),
            Self::Family(family) => format!("family {}", family.to_lowercase()),
            Self::Class(class) => format!("class {}", class.key()),
        }
    }

    /// How particularly it speaks of an active that its key fits: an active in a formulation more than an active, that more
    /// than a family, that more than a group. `None` where the formulation is another.
    fn particular(&self, active: &Active, product: &Product) -> Option<u32> {
        match self {
            Self::Active { formulations, content, .. } => {
                let formulated =
                    formulations.is_empty() || formulations.iter().any(|code| code == product.formulation.code());
                let density = product.density.as_ref().map(AsTyped::value);
                let held = content.as_ref().is_none_or(|content| {
                    content
                        .per_volume(density)
                        .zip(active.content.per_volume(density))
                        .and_then(|(wanted, held)| held.ratio(wanted))
                        .is_some_and(|ratio| (0.95..=1.05).contains(&ratio))
                });
                let particular = u32::from(content.is_some()) + u32::from(!formulations.is_empty());
                (formulated && held).then_some(4 + particular)
            }
            Self::Family(_) => Some(3),
            Self::Group(_) => Some(2),
            Self::Class(_) => None,
        }
    }
}

/// One guidance: what it speaks of, what it says, and on what it rests.
#[derive(Clone, Debug)]
pub struct Guidance {
    /// Its number in the table.
    pub id: String,
    /// What it speaks of.
    pub about: About,
    /// What it says, one statement for each class.
    pub statements: Vec<Statement>,
    /// A sentence that says it; may be empty.
    pub says: String,
    /// A publication, or common practice.
    pub basis: Basis,
}

/// The table, read.
pub fn table() -> &'static [Guidance] {
    static TABLE: LazyLock<Vec<Guidance>> =
        LazyLock::new(|| rows().iter().filter_map(|row| guidance(row).ok()).collect());
    &TABLE
}

/// The weeds that the table speaks of, each as often as it does.
#[cfg(test)]
pub(crate) fn weeds() -> impl Iterator<Item = &'static str> {
    let conditions = table().iter().flat_map(|guidance| &guidance.statements).flat_map(|statement| &statement.when);
    conditions.filter_map(|when| if let When::Weed(name) = when { Some(name.as_str()) } else { None })
}

fn rows() -> Vec<Row> {
    crate::table::read(include_str!("../../../../assets/adjuvant-guidance.csv")).unwrap_or_default()
}

/// Every guidance that speaks of a product, in the order of the table, with how particularly it does.
pub fn on(product: &Product) -> impl Iterator<Item = (&'static Guidance, u32)> + use<> {
    static BY_KEY: LazyLock<HashMap<String, Vec<usize>>> = LazyLock::new(|| {
        let mut by_key: HashMap<String, Vec<usize>> = HashMap::new();
        for (at, guidance) in table().iter().enumerate() {
            by_key.entry(guidance.about.key()).or_default().push(at);
        }
        by_key
    });
    let under = |key: &str| BY_KEY.get(key).map_or(&[][..], Vec::as_slice);
    let mut found: BTreeMap<usize, u32> = BTreeMap::new();
    if let Some(class) = product.adjuvant_class() {
        found.extend(under(&format!("class {}", class.key())).iter().map(|at| (*at, 1)));
    }
    for active in product.actives.iter().filter(|_| product.kind.is_pesticide()) {
        let family = actives::facts(&active.name).map_or(String::new(), |facts| facts.family.to_lowercase());
        let keys = [
            format!("active {}", actives::key(&active.name)),
            format!("group {}", actives::group(active)),
            format!("family {family}"),
        ];
        for at in keys.iter().flat_map(|key| under(key)) {
            let particular = table().get(*at).and_then(|guidance| guidance.about.particular(active, product));
            if let Some(particular) = particular {
                let known = found.entry(*at).or_default();
                *known = particular.max(*known);
            }
        }
    }
    found.into_iter().filter_map(|(at, particular)| Some((table().get(at)?, particular)))
}

fn guidance(row: &Row) -> Result<Guidance, String> {
    let wrong = |what: &str| format!("{}: {what}", row.id);
    let about = match row.kind.as_str() {
        "active" => About::Active {
            name: row.subject.clone(),
            formulations: row.formulations.split_whitespace().map(str::to_owned).collect(),
            content: read::<Concentration>(&row.content)?.map(|content| content.value()),
        },
        "group" => About::Group(row.subject.clone()),
        "family" => About::Family(row.subject.clone()),
        "class" => About::Class(AdjuvantClass::of_key(&row.subject).ok_or_else(|| wrong(t!("mix-no-such-class")))?),
        _ => return Err(wrong(t!("mix-what-is-it-about"))),
    };
    let basis = match row.basis.as_str() {
        "published" => Basis::Published(row.source.clone()),
        "practice" => Basis::Practice,
        _ => return Err(wrong(t!("mix-published-or-practice"))),
    };
    let stance = Stance::ALL
        .into_iter()
        .find(|stance| stance.word() == row.stance)
        .ok_or_else(|| wrong(t!("mix-no-such-stance")))?;
    let when = row
        .when
        .split(';')
        .map(str::trim)
        .filter(|token| !token.is_empty())
        .map(|token| read_when(token).ok_or_else(|| wrong(token)))
        .collect::<Result<Vec<_>, _>>()?;
    let mut statements = Vec::new();
    for key in row.class.split_whitespace() {
        statements.push(Statement {
            says: Says::Adjuvant {
                class: AdjuvantClass::of_key(key).ok_or_else(|| wrong(t!("mix-no-such-class")))?,
                stance,
                least: read(&row.least)?,
                most: read(&row.most)?,
                at_least: read(&row.at_least)?,
                at_most: read(&row.at_most)?,
            },
            crop: with_other_names(&row.crop),
            from_stage: row.from_stage.clone(),
            to_stage: row.to_stage.clone(),
            when: when.clone(),
            at: row.source.clone(),
        });
    }
    Ok(Guidance { id: row.id.clone(), about, statements, says: row.says.clone(), basis })
}

/// The crops of a row, with what else they are called (common practice, no source): who writes "maize" is not to miss what
/// publications say of corn.
fn with_other_names(crops: &str) -> String {
    const OTHERS: [(&str, &str); 2] =
        [("corn", "field corn, grain corn, maize"), ("soybean", "soy bean, soya, soya bean, soyabean")];
    let mut names: Vec<&str> = crops.split(',').map(str::trim).filter(|name| !name.is_empty()).collect();
    for (name, others) in OTHERS {
        if names.contains(&name) {
            names.push(others);
        }
    }
    names.join(", ")
}

fn read<Q: Quantity>(text: &str) -> Result<Option<AsTyped<Q>>, String> {
    if text.is_empty() {
        return Ok(None);
    }
    AsTyped::parse(text).map(Some).map_err(|error| error.to_string())
}

/// Reads a condition: "heat", "cold", "drought", "large weeds", "heavy pressure", "weed=…", "with=…", "no surfactant built
/// in", "alone", "loaded partner", "carrier=water|UAN|fertilizer", "carrier below=…", "carrier above=…", "droplets finer than=…",
/// "droplets at least=…", "rate above=…", "rate up to=…", "warmer=…", "colder=…".
fn read_when(token: &str) -> Option<When> {
    Some(match token.split_once('=').map_or((token, ""), |(name, value)| (name.trim(), value.trim())) {
        ("heat", "") => When::Heat,
        ("cold", "") => When::Cold,
        ("drought", "") => When::Drought,
        ("large weeds", "") => When::LargeWeeds,
        ("heavy pressure", "") => When::HeavyPressure,
        ("alone", "") => When::Alone,
        ("no surfactant built in", "") => When::NoSurfactantBuiltIn,
        ("loaded partner", "") => When::LoadedPartner,
        ("weed", weed) if !weed.is_empty() => When::Weed(weed.to_owned()),
        ("with", what) if !what.is_empty() => When::With(what.to_owned()),
        ("carrier", "water") => When::Carrier(CarrierKind::Water),
        ("carrier", "UAN") => When::Carrier(CarrierKind::UreaAmmoniumNitrate),
        ("carrier", "fertilizer") => When::Carrier(CarrierKind::LiquidFertilizer),
        ("carrier below", limit) => When::CarrierBelow(AsTyped::parse(limit).ok()?),
        ("carrier above", limit) => When::CarrierAbove(AsTyped::parse(limit).ok()?),
        ("droplets finer than", class) => When::DropletsFinerThan(class_named(class)?),
        ("droplets at least", class) => When::DropletsAtLeast(class_named(class)?),
        ("rate above", limit) => When::RateAbove(AsTyped::parse(limit).ok()?),
        ("rate up to", limit) => When::RateUpTo(AsTyped::parse(limit).ok()?),
        ("warmer", limit) => When::WarmerThan(AsTyped::parse(limit).ok()?),
        ("colder", limit) => When::ColderThan(AsTyped::parse(limit).ok()?),
        _ => return None,
    })
}

fn class_named(name: &str) -> Option<Droplets> {
    Droplets::ALL.into_iter().find(|class| class.word() == name)
}

#[cfg(test)]
mod tests {
    use super::{guidance, rows};
    use crate::farm::AdjuvantClass;
    use crate::mix::actives;

    #[test]
    fn every_row_reads_and_has_a_source() {
        let rows = rows();
        assert!(!rows.is_empty());
        let mut ids = std::collections::HashSet::new();
        for row in &rows {
            guidance(row).unwrap_or_else(|problem| panic!("{problem}"));
            assert!(!row.source.is_empty(), "{}", row.id);
            assert!(ids.insert(row.id.clone()), "{} stands twice", row.id);
            assert_eq!(row.basis == "practice", row.source == "common practice, no source", "{}", row.id);
        }
    }

    /// A row about an active, family or group that the table of actives does not know would never be heard.
    #[test]
    fn every_subject_is_known() {
        for row in rows() {
            let known = match row.kind.as_str() {
                "active" => actives::table().iter().any(|facts| facts.name == row.subject),
                "group" => actives::table().iter().any(|facts| facts.group == row.subject),
                "family" => actives::table().iter().any(|facts| facts.family == row.subject),
                _ => AdjuvantClass::of_key(&row.subject).is_some(),
            };
            assert!(known, "{}: {}", row.id, row.subject);
        }
    }

    /// Common practice may advise; only a source can demand or forbid.
    #[test]
    fn practice_neither_demands_nor_forbids() {
        for row in rows().iter().filter(|row| row.basis == "practice") {
            assert!(["preferred", "allowed", "discouraged"].contains(&row.stance.as_str()), "{}", row.id);
        }
    }

    #[test]
    fn every_row_says_a_plain_sentence() {
        for row in rows() {
            assert!(row.says.len() > 20 && !row.says.ends_with('.') && !row.class.trim().is_empty(), "{}", row.id);
        }
    }
}
