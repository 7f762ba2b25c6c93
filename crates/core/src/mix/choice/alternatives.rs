//! Rows of a label that are one demand: "COC or NIS".

use super::Role;
use super::words::either;
use crate::farm::label::{Says, Stance};
use crate::farm::{AdjuvantClass, Product, Statement, crop};

/// The class that a row asks for, and how.
fn asked(statement: &Statement) -> Option<(AdjuvantClass, Stance)> {
    match &statement.says {
        Says::Adjuvant { class, stance: stance @ (Stance::Required | Stance::Preferred), .. } => {
            Some((*class, *stance))
        }
        _ => None,
    }
}

/// Whether two rows ask for one thing: in one way, for one use, where the same holds.
fn is_one_demand(one: &Statement, other: &Statement) -> bool {
    let (Some((a, how)), Some((b, other_how))) = (asked(one), asked(other)) else { return false };
    how == other_how
        && Role::of(a) == Role::of(b)
        && crop::same(&one.crop, &other.crop)
        && one.from_stage.trim() == other.from_stage.trim()
        && one.to_stage.trim() == other.to_stage.trim()
        && one.when == other.when
}

/// The places of the rows of a label that ask for an adjuvant together with the row at a place, it included, any of which will do; empty
/// where that row asks for none.
pub fn one_of(product: &Product, at: usize) -> Vec<usize> {
    let Some(row) = product.label.get(at).filter(|row| asked(row).is_some()) else { return Vec::new() };
    let same = product.label.iter().enumerate().filter(|(_, other)| is_one_demand(row, other));
    same.map(|(at, _)| at).collect()
}

/// What rows ask for in words: "crop oil concentrate or non-ionic surfactant".
pub fn in_words(product: &Product, rows: &[usize]) -> String {
    let mut classes: Vec<AdjuvantClass> =
        rows.iter().filter_map(|at| product.label.get(*at).and_then(asked)).map(|(class, _)| class).collect();
    classes.dedup();
    either(&classes)
}

/// A row that makes another class do in the place of one: for the same use, crop, stages and conditions, its rate still to type. `None`
/// where all classes of that use are there.
pub fn another(product: &Product, at: usize) -> Option<Statement> {
    let rows = one_of(product, at);
    let row = product.label.get(at)?;
    let (class, stance) = asked(row)?;
    let taken = |class: AdjuvantClass| {
        rows.iter().filter_map(|at| product.label.get(*at).and_then(asked)).any(|(other, _)| other == class)
    };
    let next = AdjuvantClass::ALL.into_iter().find(|other| Role::of(*other) == Role::of(class) && !taken(*other))?;
    let says = Says::Adjuvant { class: next, stance, least: None, most: None, at_least: None, at_most: None };
    Some(Statement { says, ..row.clone() })
}

#[cfg(test)]
mod tests {
    use super::{another, in_words, one_of};
    use crate::farm::label::{Says, Stance};
    use crate::farm::{AdjuvantClass as C, Formulation, Product, ProductKind, Statement};

    fn row(class: C, stance: Stance, crop: &str) -> Statement {
        let says = Says::Adjuvant { class, stance, least: None, most: None, at_least: None, at_most: None };
        Statement { crop: crop.to_owned(), ..Statement::new(says, "page 3") }
    }

    #[test]
    fn rows_of_one_use_are_one_demand() {
        let mut product = Product::new("Invented", ProductKind::Herbicide, Formulation::SL);
        product.label = vec![
            row(C::CropOilConcentrate, Stance::Required, ""),
            Statement::new(Says::ReEntry { hours: 12 }, ""),
            row(C::AmmoniumSulfate, Stance::Required, ""),
            row(C::NonIonicSurfactant, Stance::Required, ""),
            row(C::MethylatedSeedOil, Stance::Required, "corn"),
            row(C::Organosilicone, Stance::Preferred, ""),
        ];
        assert_eq!(one_of(&product, 0), [0, 3]);
        assert_eq!(one_of(&product, 3), [0, 3]);
        assert_eq!(in_words(&product, &[0, 3]), "crop oil concentrate or non-ionic surfactant");
        assert_eq!((one_of(&product, 2), one_of(&product, 4)), (vec![2], vec![4]));
        assert!(one_of(&product, 1).is_empty() && one_of(&product, 9).is_empty());
        let more = another(&product, 0).unwrap();
        assert_eq!(more, row(C::MethylatedSeedOil, Stance::Required, ""));
        assert!(another(&product, 1).is_none());
        product.label.push(row(C::UreaAmmoniumNitrate, Stance::Required, ""));
        product.label.push(row(C::ConditionerWithoutAmmonium, Stance::Required, ""));
        assert!(another(&product, 2).is_none());
    }
}
