//! What stands on the sheet of a jar test: what to put in, what to look for, and what forbids spraying.

use crate::language::{self, t};
use std::sync::LazyLock;

use serde::{Deserialize, Serialize};

use super::{JarStep, JarTest, Second};
use crate::farm::card::CardStep;
use crate::farm::label::Says;
use crate::farm::{CarrierKind, Farm, Id, Paper, Product};
use crate::finding::Level;
use crate::language::days::long_date;
use crate::loads::card::said;
use crate::quantity::number::show;
use crate::quantity::{Duration, Quantity, Units, Volume};
use crate::words::capital;

/// How to handle a jar of pesticide; common practice, no source. The labels' own demands stand beside them.
fn cautions() -> [&'static str; 5] {
    [
        t!("mix-jar-work-outdoors"),
        t!("mix-jar-write-on-it"),
        t!("mix-jar-never-two-concentrates"),
        t!("mix-jar-open-slowly"),
        t!("mix-jar-afterwards"),
    ]
}

/// A sign of products that do not bear each other: a row of `assets/jar-signs.csv`.
#[derive(Clone, Debug, PartialEq, Eq, Deserialize)]
pub struct Sign {
    /// What is seen or felt.
    pub sign: String,
    /// What it means.
    pub means: Means,
    /// Where it is printed.
    pub source: String,
}

/// What a sign in the jar means.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, Deserialize)]
#[serde(rename_all = "lowercase")]
pub enum Means {
    /// Do not spray, whatever follows.
    Stop,
    /// Do not spray if gentle turning does not bring it back.
    Turn,
    /// A nuisance in the tank.
    Foam,
}

impl Means {
    /// What to do, in words.
    pub fn words(self) -> &'static str {
        match self {
            Self::Stop => t!("mix-do-not-spray"),
            Self::Turn => t!("mix-do-not-spray-unless-gentle-turning"),
            Self::Foam => t!("mix-try-a-defoamer-where-none-helps"),
        }
    }
}

/// All signs, the gravest first.
pub fn signs() -> &'static [Sign] {
    static TABLE: LazyLock<Vec<Sign>> =
        LazyLock::new(|| crate::table::read(include_str!("../../../../../assets/jar-signs.csv")).unwrap_or_default());
    &TABLE
}

/// The content of a jar test's sheet, as text.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct JarSheet {
    /// The paper.
    pub paper: Paper,
    /// The farm.
    pub farm: String,
    /// The pass.
    pub pass: String,
    /// Its day.
    pub date: String,
    /// What is known of the test: a title and its words.
    pub facts: Vec<(String, String)>,
    /// The jars by letter; empty for one jar.
    pub jars: Vec<String>,
    /// What to do before.
    pub before: Vec<String>,
    /// What goes in, in order.
    pub steps: Vec<CardStep>,
    /// What to do after.
    pub after: Vec<String>,
    /// When to look.
    pub looks: Vec<String>,
    /// What to look for, and what it means.
    pub signs: Vec<(String, String)>,
    /// The results to choose from.
    pub results: Vec<String>,
    /// What the labels ask to wear.
    pub wear: Vec<String>,
    /// How to handle it.
    pub cautions: Vec<String>,
    /// What was open when the sheet was made.
    pub open: Vec<String>,
    /// What the test does not show.
    pub limits: String,
}

/// The sheet of a jar test; `None` where its pass is gone.
pub fn sheet(farm: &Farm, test: &JarTest) -> Option<JarSheet> {
    let pass = farm.passes.get(&test.pass)?;
    let products: Vec<(&Id, &Product)> =
        test.items.iter().filter_map(|item| farm.products.get_key_value(&item.product)).collect();
    let two = test.second.is_some();
    let line = to_line(test.jar.volume());
    let jars =
        if two { t!("mix-two-clear-jars-a-and-b", line = line) } else { t!("mix-a-clear-jar-with-a-lid", line = line) };
    let source = if pass.carrier_kind == CarrierKind::Water {
        t!("mix-from-the-source-that-fills-the")
    } else {
        t!("mix-from-the-delivery-that-fills-the")
    };
    let mut after = vec![t!("mix-lid-on-shake-for-feel-whether", shake = seconds(test.shake))];
    after.push(t!("mix-let-it-stand-and-look-at").to_owned());
    if test.looks.len() > 1 {
        after.push(t!("mix-leave-it-overnight-if-the-spray").to_owned());
    }
    let mut looks: Vec<String> = test.looks.iter().map(|look| look.show(farm.units)).collect();
    looks.push(t!("mix-overnight").to_owned());
    Some(JarSheet {
        paper: farm.paper,
        farm: farm.name.clone(),
        pass: pass.name.clone(),
        date: long_date(pass.date),
        facts: vec![
            (t!("mix-jar-filled-to").to_owned(), test.jar.name().to_owned()),
            (t!("mix-carrier").to_owned(), test.carrier.clone()),
            (t!("mix-spray-volume").to_owned(), test.carrier_rate.show(farm.units)),
            (t!("mix-carrier-in-the-jar").to_owned(), carrier_words(test.carrier_volume, farm.units)),
        ],
        jars: if two { vec!["A".to_owned(), "B".to_owned()] } else { Vec::new() },
        before: vec![
            t!("mix-take-about-twice-as-large-so", jars = jars),
            t!("mix-take-the-carrier-at-the-same", source = source),
            t!("mix-after-each-product-lid-on-turn").to_owned(),
        ],
        steps: rows(pass.carrier_kind, test, farm.units),
        after,
        looks,
        signs: signs()
            .iter()
            .map(|sign| (language::row(&sign.sign).to_owned(), sign.means.words().to_owned()))
            .collect(),
        results: results(test),
        wear: said(farm, pass, &products, |says| match says {
            Says::Wear { what } => Some(what.as_str().into()),
            _ => None,
        })
        .iter()
        .map(crate::language::Say::aloud)
        .collect(),
        cautions: cautions().map(str::to_owned).to_vec(),
        open: test
            .findings
            .iter()
            .map(|finding| match finding.level {
                Level::Note => format!("{}. {}", finding.text, finding.hint),
                level => format!("{}: {}. {}", level.word(), finding.text, finding.hint),
            })
            .collect(),
        limits: t!("mix-a-jar-test-shows-only-whether").to_owned(),
    })
}

fn rows(kind: CarrierKind, test: &JarTest, units: Units) -> Vec<CardStep> {
    let mut rows = Vec::with_capacity(test.steps.len() + 1);
    let last = test.steps.len().saturating_sub(1);
    for (at, step) in test.steps.iter().enumerate() {
        match step {
            JarStep::Carrier { add, to } => {
                let end = at == last;
                let ounces = in_ounces(*add, units);
                let (amount, detail) = if end {
                    (t!("mix-to", to = to_line(*to)), t!("mix-about", joined = joined(&[&to_line(*add), &ounces])))
                } else if at > 0 {
                    (to_line(*add), joined(&[&ounces, &t!("mix-to", to = to_line(*to))]))
                } else {
                    (to_line(*add), ounces)
                };
                rows.push(CardStep {
                    number: None,
                    what: capital(kind.name()),
                    hint: if end { t!("mix-to-the-line-dry-products-take").to_owned() } else { String::new() },
                    amount,
                    detail,
                    ..CardStep::default()
                });
                if let (0, Some(Second::With { measured, .. })) = (at, &test.second) {
                    rows.push(CardStep {
                        number: None,
                        what: t!("mix-compatibility-agent-jar-b-only").to_owned(),
                        hint: measured.stock.as_ref().map(|stock| stock.text.clone()).unwrap_or_default(),
                        amount: measured.text.clone(),
                        detail: measured.spoons.clone(),
                        ..CardStep::default()
                    });
                }
            }
            JarStep::Product { item } => {
                let Some(item) = test.items.get(*item) else { continue };
                let only_a = matches!(&test.second, Some(Second::Without(id)) if *id == item.product);
                let hints = [
                    if only_a { t!("mix-jar-a-only") } else { "" },
                    item.handling.as_str(),
                    item.measured.stock.as_ref().map_or("", |stock| stock.text.as_str()),
                ];
                rows.push(CardStep {
                    number: Some(item.number),
                    what: item.name.clone(),
                    hint: hints
                        .map(|hint| hint.trim_end_matches('.'))
                        .into_iter()
                        .filter(|hint| !hint.is_empty())
                        .collect::<Vec<_>>()
                        .join(". "),
                    amount: item.measured.text.clone(),
                    detail: item.beside(),
                    ..CardStep::default()
                });
            }
        }
    }
    rows
}

fn results(test: &JarTest) -> Vec<String> {
    let mut results = vec![
        t!("mix-even-at-every-look-the-products").to_owned(),
        t!("mix-parted-but-came-back-on-gentle").to_owned(),
        t!("mix-got-warm-or-did-not-come").to_owned(),
    ];
    if matches!(test.second, Some(Second::With { .. })) {
        results.push(t!("mix-jar-b-is-even-and-jar").to_owned());
    }
    results
}

/// A line on the jar, to a millilitre.
fn to_line(volume: Volume) -> String {
    format!("{} mL", show(volume.to_litres() * 1000.0, 0))
}

/// A volume of carrier: "237 mL, 8 fl oz".
fn carrier_words(volume: Volume, units: Units) -> String {
    joined(&[&to_line(volume), &in_ounces(volume, units)])
}

/// A volume in fluid ounces of the farm; empty for a metric one.
fn in_ounces(volume: Volume, units: Units) -> String {
    match units {
        Units::UsCustomary => format!("{} fl oz", show(volume.to_us_fluid_ounces(), 1)),
        Units::Imperial => format!("{} imp fl oz", show(volume.to_imperial_fluid_ounces(), 1)),
        Units::Metric => String::new(),
    }
}

fn joined(words: &[&str]) -> String {
    words.iter().copied().filter(|words| !words.is_empty()).collect::<Vec<_>>().join(", ")
}

fn seconds(time: Duration) -> String {
    t!("mix-seconds", show = show(time.to_seconds(), 0))
}
