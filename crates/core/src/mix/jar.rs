//! The jar test: the planned mix at small scale, to see whether the products bear each other before a tank is filled.
//!
//! What goes into the jar is what goes on the ground, in the same carrier: amount per area × jar ÷ carrier per area. A jar
//! test shows physical compatibility alone, not weed control and not crop safety.
//!
//! # References
//! - Utah State University, 2012: a pint of water, shake, look after 15 minutes; heat is a sign of incompatibility.
//! - University of Arizona (Kopec), May 1999: liquid fertilizer in two jars, one of them with a compatibility agent; shake
//!   for 10 seconds, look after 5 minutes for flakes, sludge, gel and oil.

pub mod measure;
pub mod sheet;

use crate::farm::{AdjuvantClass, CarrierKind, Farm, Formulation, Id, Pass, Product};
use crate::finding::{Basis, Finding, Level, Subject};
use crate::language::t;
use crate::mix::order::how;
use crate::plan::Plan;
use crate::quantity::{Amount, CarrierRate, Duration, Quantity, Share, Units, Volume};
use crate::working::Working;

#[cfg(test)]
mod tests;

pub use measure::Measured;

/// Up to which line the jar is filled. The jar itself is larger, so that it can be shaken.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Jar {
    /// A US pint.
    Pint,
    /// A US quart.
    Quart,
    /// Half a litre.
    HalfLitre,
    /// A litre.
    Litre,
}

impl Jar {
    /// All of them.
    pub const ALL: [Self; 4] = [Self::Pint, Self::Quart, Self::HalfLitre, Self::Litre];

    /// The usual one of a farm: the pint of the published tests, or half a litre.
    pub const fn usual(units: Units) -> Self {
        match units {
            Units::UsCustomary => Self::Pint,
            Units::Imperial | Units::Metric => Self::HalfLitre,
        }
    }

    /// How much finished spray is in it.
    pub fn volume(self) -> Volume {
        match self {
            Self::Pint => Volume::from_us_gallons(0.125),
            Self::Quart => Volume::from_us_gallons(0.25),
            Self::HalfLitre => Volume::from_litres(0.5),
            Self::Litre => Volume::from_litres(1.0),
        }
    }

    /// In words.
    pub fn name(self) -> &'static str {
        match self {
            Self::Pint => t!("mix-1-us-pint-473-ml"),
            Self::Quart => t!("mix-1-us-quart-946-ml"),
            Self::HalfLitre => "500 mL",
            Self::Litre => "1 L",
        }
    }
}

/// A jar test of a planned mix.
#[derive(Clone, Debug, PartialEq)]
pub struct JarTest {
    /// The pass.
    pub pass: Id,
    /// The jar.
    pub jar: Jar,
    /// The carrier over ground.
    pub carrier_rate: CarrierRate,
    /// What carries the products, in words: "water (Yard well)".
    pub carrier: String,
    /// The carrier in all: the jar less the liquid products. Dry products take up little room; the jar is filled to its line.
    pub carrier_volume: Volume,
    /// The products, in mixing order.
    pub items: Vec<JarItem>,
    /// What to do, in order.
    pub steps: Vec<JarStep>,
    /// How long to shake.
    pub shake: Duration,
    /// When to look, counted from the shaking.
    pub looks: Vec<Duration>,
    /// What a second jar holds, where one is needed.
    pub second: Option<Second>,
    /// What there is to say, the weightiest first.
    pub findings: Vec<Finding>,
}

/// A product in a jar.
#[derive(Clone, Debug, PartialEq)]
pub struct JarItem {
    /// The product.
    pub product: Id,
    /// Its name.
    pub name: String,
    /// Its number in the mixing order.
    pub number: u32,
    /// The exact amount.
    pub exact: Amount,
    /// How it is measured.
    pub measured: Measured,
    /// How it is put in.
    pub handling: String,
    /// The arithmetic.
    pub working: Working,
}

/// One thing to do while filling a jar.
#[derive(Clone, Debug, PartialEq)]
pub enum JarStep {
    /// Put carrier in up to a line.
    Carrier {
        /// How much of it.
        add: Volume,
        /// The line that is reached.
        to: Volume,
    },
    /// Put a product in.
    Product {
        /// Which item.
        item: usize,
    },
}

/// How the second jar differs from the first.
#[derive(Clone, Debug, PartialEq)]
pub enum Second {
    /// It holds a compatibility agent besides, put in before the products.
    With {
        /// The exact amount.
        exact: Volume,
        /// How it is measured.
        measured: Measured,
    },
    /// It leaves out the compatibility agent of the mix.
    Without(Id),
}

impl JarItem {
    /// What stands beside the amount: spoons, "weigh", or nothing.
    pub fn beside(&self) -> String {
        match self.exact {
            Amount::Mass(_) if self.measured.stock.is_none() => t!("mix-weigh").to_owned(),
            _ => self.measured.spoons.clone(),
        }
    }
}

impl JarTest {
    /// Whether the jar would not hold the planned mix.
    pub fn is_incomplete(&self) -> bool {
        self.findings.iter().any(|finding| finding.level == Level::Stop)
    }
}

/// The share of the spray that a compatibility agent usually takes: 2 pt/100 gal, or 1/4 tsp in a pint; extension text, from
/// memory. Its own label wins.
pub fn usual_agent() -> Share {
    Share::from_percent(0.25)
}

/// The jar test of a plan; `None` where the plan's pass is gone or its spray volume over ground is not typed.
///
/// # Examples
/// A product at 1 pt/ac in 20 gal/ac takes 2.957 mL in a pint.
pub fn jar(plan: &Plan, farm: &Farm, jar: Jar) -> Option<JarTest> {
    let pass = farm.passes.get(&plan.pass)?;
    let carrier_rate = plan.carrier?;
    let ground = jar.volume().ground(carrier_rate)?;
    let units = farm.units;
    let plain = pass.carrier_kind.name();
    let mut findings = missing(plan, farm, pass);
    let mut items = Vec::with_capacity(plan.lines.len());
    for line in &plan.lines {
        let Some(product) = farm.products.get(&line.product) else { continue };
        let exact = line.per_area.over(ground);
        let about = Subject::Product(line.product.clone());
        let Some(measured) = measure::measure(exact, plain, units) else {
            let text = if exact.is_zero() {
                t!("mix-is-in-the-mix-at-a", name = line.name)
            } else {
                t!("mix-takes-too-little-in-a-jar", name = line.name, jar = jar.name())
            };
            findings.push(Finding::stop(about, text, Basis::Arithmetic).hint(t!("mix-look-at-its-rate-on-the")));
            continue;
        };
        if product.formulation == Formulation::WSP {
            findings.push(
                Finding::check(about, t!("mix-comes-in-bags-that-go-in", name = line.name), Basis::Practice)
                    .hint(t!("mix-weigh-it-out-of-an-opened")),
            );
        }
        items.push(JarItem {
            product: line.product.clone(),
            name: line.name.clone(),
            number: line.number,
            exact,
            handling: in_jar(product, pass.carrier_kind),
            working: working(&line.name, &line.per_area.show(units), carrier_rate, jar, exact, &measured, units),
            measured,
        });
    }
    let liquids: Volume = items.iter().map(|item| liquid(item.exact)).sum();
    if !jar.volume().exceeds(liquids) {
        findings.push(
            Finding::stop(
                Subject::Pass(plan.pass.clone()),
                t!("mix-the-products-leave-no-room-for", plain = plain),
                Basis::Arithmetic,
            )
            .hint(t!("mix-raise-the-spray-volume-or-look")),
        );
    }
    if plan.count(Level::Stop) > 0 {
        findings.push(
            Finding::check(Subject::Pass(plan.pass.clone()), t!("mix-the-plan-has-a-stop-a"), Basis::Arithmetic)
                .hint(t!("mix-settle-it-on-the-plan-before")),
        );
    }
    let steps = steps(jar.volume(), &items, plan);
    let second = second(plan, pass, farm, &items, jar, &mut findings);
    findings.sort_by_key(|finding| std::cmp::Reverse(finding.level));
    let minutes = |minutes: f64| Duration::from_seconds(minutes * 60.0);
    Some(JarTest {
        pass: plan.pass.clone(),
        jar,
        carrier_rate,
        carrier: carrier(pass, &plan.water.name),
        carrier_volume: (jar.volume() - liquids).max(Volume::ZERO),
        items,
        steps,
        shake: Duration::from_seconds(10.0),
        // Arizona looks after 5 minutes where fertilizer carries the mix, Utah after 15; the rest is common practice.
        looks: match pass.carrier_kind {
            CarrierKind::Water => vec![minutes(15.0), minutes(30.0)],
            CarrierKind::UreaAmmoniumNitrate | CarrierKind::LiquidFertilizer => {
                vec![minutes(5.0), minutes(15.0), minutes(30.0)]
            }
        },
        second,
        findings,
    })
}

/// A Stop for each line of the mix that the plan could not reckon: without it the jar shows another mix.
fn missing(plan: &Plan, farm: &Farm, pass: &Pass) -> Vec<Finding> {
    let mut findings = Vec::new();
    if plan.lines.is_empty() && pass.mix.is_empty() {
        findings.push(
            Finding::stop(Subject::Pass(plan.pass.clone()), t!("mix-the-tank-mix-is-empty-so"), Basis::Arithmetic)
                .hint(t!("mix-add-its-products-with-their-rates")),
        );
    }
    for line in &pass.mix {
        if plan.lines.iter().any(|planned| planned.product == line.product) {
            continue;
        }
        let name = farm.products.get(&line.product).map_or(line.product.as_str(), |product| product.name.as_str());
        findings.push(
            Finding::stop(
                Subject::Product(line.product.clone()),
                t!("mix-could-not-be-reckoned-so-it", name = name),
                Basis::Arithmetic,
            )
            .hint(t!("mix-settle-what-the-plan-says-of")),
        );
    }
    findings
}

fn carrier(pass: &Pass, water: &str) -> String {
    match pass.carrier_kind {
        CarrierKind::Water if water.is_empty() => t!("mix-plain-water").to_owned(),
        CarrierKind::Water => t!("mix-water", water = water),
        other => other.name().to_owned(),
    }
}

fn liquid(amount: Amount) -> Volume {
    match amount {
        Amount::Volume(volume) => volume,
        Amount::Mass(_) => Volume::ZERO,
    }
}

/// How a product goes into a jar: as into the tank, except that a bag cannot go in whole.
fn in_jar(product: &Product, carrier: CarrierKind) -> String {
    if product.formulation == Formulation::WSP {
        return t!("mix-weigh-it-out-of-an-opened-bag-with-a").to_owned();
    }
    how(product, carrier).aloud()
}

fn working(
    name: &str,
    rate: &str,
    carrier: CarrierRate,
    jar: Jar,
    exact: Amount,
    measured: &Measured,
    units: Units,
) -> Working {
    let exact_words = exact.show(Units::Metric);
    let mut working = Working::new(t!("mix-in-the-jar", name = name))
        .step(t!("mix-rate-over-ground"), rate)
        .step(format!("× {} ÷ {}", measure::show_millilitres(jar.volume()), carrier.show(units)), exact_words);
    if let Some(stock) = &measured.stock {
        working = working.step(t!("mix-parts-of-stock", parts = stock.parts), measure::show_millilitres(stock.take));
    } else {
        working = working.step(t!("mix-to-the-mark"), measured.text.clone());
    }
    if !measured.spoons.is_empty() {
        working = working.step(t!("mix-in-spoons-of-4-93-ml"), measured.spoons.clone());
    }
    working
}

/// Carrier and products in the order of the tank, with the tank's own water marks brought down to the jar.
fn steps(jar: Volume, items: &[JarItem], plan: &Plan) -> Vec<JarStep> {
    let mut to_come: Volume = items.iter().map(|item| liquid(item.exact)).sum();
    let mut steps = Vec::new();
    let mut level = Volume::ZERO;
    for (at, item) in items.iter().enumerate() {
        let full =
            plan.order.iter().find(|placed| placed.product == item.product).map_or(0.5, |placed| placed.full_before);
        let line = (jar * full.clamp(0.0, 1.0)).min((jar - to_come).max(Volume::ZERO));
        // A millilitre more is no step of its own.
        if line.exceeds(level + Volume::from_litres(0.001)) {
            steps.push(JarStep::Carrier { add: line - level, to: line });
            level = line;
        }
        steps.push(JarStep::Product { item: at });
        level = level + liquid(item.exact);
        to_come = to_come - liquid(item.exact);
    }
    if jar.exceeds(level) {
        steps.push(JarStep::Carrier { add: jar - level, to: jar });
    }
    steps
}

/// The second jar that a fertilizer carrier asks for.
fn second(
    plan: &Plan,
    pass: &Pass,
    farm: &Farm,
    items: &[JarItem],
    jar: Jar,
    findings: &mut Vec<Finding>,
) -> Option<Second> {
    if pass.carrier_kind == CarrierKind::Water {
        return None;
    }
    let agent = items.iter().find(|item| {
        farm.products.get(&item.product).is_some_and(|product| product.class == Some(AdjuvantClass::CompatibilityAgent))
    });
    if let Some(agent) = agent {
        return Some(Second::Without(agent.product.clone()));
    }
    let share = usual_agent();
    let exact = jar.volume() * share.to_fraction();
    let measured = measure::measure(Amount::Volume(exact), pass.carrier_kind.name(), farm.units)?;
    findings.push(
        Finding::note(
            Subject::Pass(plan.pass.clone()),
            t!("mix-the-second-jar-takes-a-compatibility", share = share.show(farm.units)),
            Basis::Practice,
        )
        .hint(t!("mix-the-rate-is-from-memory-the")),
    );
    Some(Second::With { exact, measured })
}
