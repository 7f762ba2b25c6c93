//! Charges that meet in a tank: an anionic surfactant with a cationic one, or with paraquat and diquat, which are cations
//! themselves.

use super::pairs::{self, Side, in_tank};
use crate::farm::{AdjuvantClass, Charge, Farm, Product, ProductKind};
use crate::finding::{Basis, Finding, Level, Subject, TypedAt};
use crate::language::{self, t};
use crate::mix::line::PlannedLine;

/// What two products of opposite charge do to each other.
#[derive(Clone, Debug, PartialEq)]
pub enum Conflict {
    /// A solid falls out: they never go together. On what that rests, and a sentence that says it.
    Precipitates(Basis, String),
    /// They may bind: a sentence that says it.
    MayBind(String),
}

/// The charge that a product's surfactant has in water, as typed.
fn charge(product: &Product) -> Charge {
    product.surfactant.map_or(Charge::NotStated, |surfactant| surfactant.charge)
}

/// The row that speaks of a product whose active is a cation.
fn cation(product: &Product) -> Option<&'static pairs::Pair> {
    pairs::table().iter().find(|pair| matches!(pair.b, Side::Charge(_)) && pair.a.fits(product))
}

/// Whether two products carry opposite charges, and what comes of it.
pub fn conflict(a: &Product, b: &Product) -> Option<Conflict> {
    one_way(a, b).or_else(|| one_way(b, a))
}

fn one_way(positive: &Product, negative: &Product) -> Option<Conflict> {
    if charge(negative) != Charge::Anionic {
        return None;
    }
    let names = t!("mix-and", name = positive.name, name2 = negative.name);
    if let Some(pair) = cation(positive) {
        if pair.b.fits(negative) {
            return Some(Conflict::Precipitates(pair.basis.clone(), format!("{names}: {}", language::row(&pair.says))));
        }
        return Some(Conflict::MayBind(t!("mix-the-active-of-the-one-is", names = names)));
    }
    (charge(positive) == Charge::Cationic)
        .then(|| Conflict::MayBind(t!("mix-a-cationic-and-an-anionic-surfactant", names = names)))
}

/// Every two products of the tank, and adjuvants whose charge beside a cationic active is not known.
pub(crate) fn judge(farm: &Farm, lines: &[PlannedLine], findings: &mut Vec<Finding>) {
    let tank = in_tank(farm, lines);
    for (at, a) in tank.iter().enumerate() {
        for b in tank.iter().skip(at + 1) {
            let about = Subject::Product(a.id.clone());
            match conflict(a.product, b.product) {
                Some(Conflict::Precipitates(basis, text)) => {
                    // The row that says so weighs it and knows the way out.
                    let row = cation(a.product).or_else(|| cation(b.product));
                    let found = Finding::new(row.map_or(Level::Stop, |row| row.level), about, text, basis);
                    findings.push(found.hint(row.map_or("", |row| language::row(&row.way_out))));
                }
                Some(Conflict::MayBind(text)) => {
                    findings
                        .push(Finding::check(about, text, Basis::Practice).hint(t!("mix-make-a-jar-test-first-or")));
                }
                None => {}
            }
        }
        let Some(pair) = cation(a.product) else { continue };
        for other in &tank {
            let unclear = other.product.kind == ProductKind::Adjuvant
                && matches!(other.product.class, None | Some(AdjuvantClass::Other | AdjuvantClass::Organosilicone));
            if unclear && charge(other.product) == Charge::NotStated {
                findings.push(
                    Finding::note(
                        Subject::Product(other.id.clone()),
                        t!(
                            "mix-the-charge-of-is-not-typed",
                            name = other.product.name,
                            name2 = a.product.name,
                            says = language::row(&pair.says)
                        ),
                        pair.basis.clone(),
                    )
                    .hint(t!("mix-type-its-charge-in-the-shed"))
                    .at(TypedAt::Surfactant),
                );
            }
        }
    }
}
