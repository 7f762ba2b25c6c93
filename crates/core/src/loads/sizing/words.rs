//! The words of load sizes: the loads, their figures, and what is traded for what.

use super::problem::Problem;
use super::{Figures, Way};
use crate::farm::{Aim, Farm};
use crate::label::listed;
use crate::language::{t, yes_or_no};
use crate::quantity::number::show;
use crate::quantity::{Quantity, Units, Volume};

/// "5 loads of 1,200 gal and one of 450 gal".
pub(super) fn loads(way: &Way, units: Units) -> String {
    let even = way.count < 2 || way.alike.show(units) == way.last.show(units);
    match (way.count, even) {
        (1, _) => t!("loads-1-load-of", last = way.last.show(units)),
        (count, true) => t!("loads-loads-of", count = count, last = way.last.show(units)),
        (2, false) => t!("loads-one-load-of-and-one-of", alike = way.alike.show(units), last = way.last.show(units)),
        (count, false) => {
            t!(
                "loads-loads-of-and-one-of",
                count = count - 1,
                alike = way.alike.show(units),
                last = way.last.show(units)
            )
        }
    }
}

impl Figures {
    /// A figure in words: "6 fillings".
    pub fn words(&self, aim: Aim, units: Units) -> String {
        let number = self.of(aim);
        match aim {
            Aim::Left => match number {
                0 => t!("loads-nothing-left-over").to_owned(),
                left => t!("loads-left-over", left = millilitres(left).show(units)),
            },
            Aim::Agitation => match number {
                0 => t!("loads-no-load-too-small-to-agitate").to_owned(),
                small => t!("loads-too-small-to-agitate", count = small),
            },
            Aim::Fills => t!("loads-fillings", count = number),
            Aim::Opened => t!("loads-opened", count = number),
            Aim::Measured => t!("loads-to-measure", count = number),
            Aim::Rounding => t!("loads-from-exact", number = percent(number)),
        }
    }
}

fn millilitres(number: i64) -> Volume {
    Volume::from_litres(plain(number) / 1000.0)
}

/// Whole numbers far below the 53 bits that a float holds exactly.
#[allow(clippy::cast_precision_loss)]
const fn plain(number: i64) -> f64 {
    number as f64
}

/// Millionths in per cent.
fn percent(number: i64) -> String {
    show(plain(number) / 1e4, 3)
}

/// What a message chooses by: whether there is more of something.
const fn is_more(by: i64) -> &'static str {
    yes_or_no(by > 0)
}

/// What another way gains and what it costs against the chosen one.
pub(super) fn trade(problem: &Problem, farm: &Farm, chosen: (&Way, Figures), other: (&Way, Figures)) -> String {
    let (mut gains, mut costs) = (Vec::new(), Vec::new());
    let mut says = |by: i64, text: String| if by < 0 { gains.push(text) } else { costs.push(text) };
    for aim in Aim::ALL {
        let by = other.1.of(aim) - chosen.1.of(aim);
        let more = is_more(by);
        let text = match aim {
            Aim::Opened => {
                for (by, text) in opened(problem, farm, chosen.0, other.0) {
                    says(by, text);
                }
                continue;
            }
            _ if by == 0 => continue,
            Aim::Left => {
                let volume = millilitres(by.abs()).show(farm.units);
                t!("loads-more-or-less-left-over", volume = volume, which = more)
            }
            Aim::Agitation => t!("loads-more-or-less-too-small-to-agitate", more = more, count = by.abs()),
            Aim::Fills => t!("loads-more-or-less-fillings", more = more, count = by.abs()),
            Aim::Measured => t!("loads-more-or-less-to-measure", more = more, count = by.abs()),
            Aim::Rounding => t!("loads-amounts-exact", by = percent(by.abs()), which = more),
        };
        says(by, text);
    }
    let sentence = match (gains.is_empty(), costs.is_empty()) {
        (true, true) => t!("loads-nothing-gained-and-nothing-lost").to_owned(),
        (false, true) => t!("loads-and-nothing-lost", gains = listed(&gains)),
        (true, false) => t!("loads-and-nothing-gained", costs = listed(&costs)),
        (false, false) => t!("loads-but", gains = listed(&gains), costs = listed(&costs)),
    };
    crate::words::capital(&sentence)
}

/// Containers by product, more or fewer: "one jug of Glyphosate 540 SL (demo) less to open".
fn opened(problem: &Problem, farm: &Farm, chosen: &Way, other: &Way) -> Vec<(i64, String)> {
    let before = problem.opened(chosen);
    let texts = problem.opened(other).into_iter().zip(before).filter_map(|((id, now), (_, then))| {
        let product = farm.products.get(id)?;
        let kind = product.containers.first()?.kind;
        let by = now - then;
        let container = kind.name(if by.abs() == 1 { 1 } else { 2 });
        let (more, count, name) = (is_more(by), by.abs(), &product.name);
        (by != 0).then(|| {
            (by, t!("loads-more-or-less-to-open", more = more, count = count, container = container, name = name))
        })
    });
    texts.collect()
}
