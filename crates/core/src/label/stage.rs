//! Growth stages, and limits by stage.

use super::{for_crop, place};
use crate::farm::label::Says;
use crate::farm::{Field, Id, Product, Statement};
use crate::finding::{Basis, Finding, Subject};

/// A growth stage on one of the usual scales. Stages on different scales cannot be compared.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Stage {
    /// Corn and soybean: VE is −1, VC is −0.5, V1 is 1; VT is 99; R1 is 101.
    Leaf(f64),
    /// BBCH, 0 to 99.
    Bbch(f64),
}

impl Stage {
    /// Reads "V6", "VT", "R1", "VE", "BBCH 14", "R5.5".
    ///
    /// # References
    /// Vegetative and reproductive stages of corn and soybean: Iowa State University Extension, PMR 1009 and PM 1945, from
    /// memory. BBCH: Meier (ed.), Growth stages of mono- and dicotyledonous plants, 2nd ed. 2001.
    pub fn read(text: &str) -> Option<Self> {
        let text = text.trim().to_uppercase();
        if let Some(number) = text.strip_prefix("BBCH").or_else(|| text.strip_prefix("GS")) {
            return number.trim().parse::<f64>().ok().filter(|n| (0.0..=99.0).contains(n)).map(Self::Bbch);
        }
        match text.as_str() {
            "VE" => return Some(Self::Leaf(-1.0)),
            "VC" => return Some(Self::Leaf(-0.5)),
            "VT" => return Some(Self::Leaf(99.0)),
            _ => {}
        }
        let leaf = |number: &str| number.parse::<f64>().ok().filter(|n| (0.0..=40.0).contains(n));
        if let Some(number) = text.strip_prefix('V') {
            return leaf(number).map(Self::Leaf);
        }
        text.strip_prefix('R').and_then(leaf).map(|n| Self::Leaf(100.0 + n))
    }

    /// Whether another stage is this one, or at most one step before it.
    fn is_near(self, before: Self) -> bool {
        match (self, before) {
            (Self::Leaf(a), Self::Leaf(b)) | (Self::Bbch(a), Self::Bbch(b)) => (0.0..=1.0).contains(&(a - b)),
            _ => false,
        }
    }

    fn compare(self, other: Self) -> Option<std::cmp::Ordering> {
        match (self, other) {
            (Self::Leaf(a), Self::Leaf(b)) | (Self::Bbch(a), Self::Bbch(b)) => a.partial_cmp(&b),
            _ => None,
        }
    }
}

/// Whether a stage lies within two others, both included; an empty end is open. `None` where they cannot be compared.
pub fn within(stage: &str, from: &str, to: &str) -> Option<bool> {
    let (from, to) = (from.trim(), to.trim());
    if from.is_empty() && to.is_empty() {
        return Some(true);
    }
    let stage = Stage::read(stage)?;
    let after_from = from.is_empty() || stage.compare(Stage::read(from)?)?.is_ge();
    let before_to = to.is_empty() || stage.compare(Stage::read(to)?)?.is_le();
    Some(after_from && before_to)
}

/// The stage limits of a product on a field. Several windows for a crop are alternatives.
pub(crate) fn judge(product: &Product, field_id: &Id, field: &Field, findings: &mut Vec<Finding>) {
    let windows: Vec<&Statement> = product
        .label
        .iter()
        .filter(|statement| statement.says == Says::CropStage && for_crop(statement, field))
        .collect();
    let Some(first) = windows.first() else { return };
    let range = |statement: &Statement| match (statement.from_stage.trim(), statement.to_stage.trim()) {
        ("", to) => format!("up to {to}"),
        (from, "") => format!("from {from}"),
        (from, to) => format!("from {from} to {to}"),
    };
    let ranges: Vec<String> = windows.iter().map(|statement| range(statement)).collect();
    let ranges = ranges.join(" or ");
    let basis = |statement: &Statement| Basis::Label(place(product, statement));
    let about = || Subject::Field(field_id.clone());
    let fits = |statement: &&&Statement| within(&field.stage, &statement.from_stage, &statement.to_stage);
    if let Some(open) = windows.iter().find(|statement| fits(statement) == Some(true)) {
        // Within a leaf of the last stage allowed, a few days' growth end it.
        if Stage::read(&field.stage).zip(Stage::read(&open.to_stage)).is_some_and(|(now, last)| last.is_near(now)) {
            findings.push(
                Finding::check(
                    about(),
                    format!("{} is at {}; {} stops at {}", field.name, field.stage, product.name, open.to_stage),
                    basis(open),
                )
                .hint("Look at the crop again before the tank is filled."),
            );
        }
    } else if windows.iter().any(|statement| fits(&statement).is_none()) {
        let stage =
            if field.stage.is_empty() { "without a stage".to_owned() } else { format!("at \"{}\"", field.stage) };
        findings.push(
            Finding::check(
                about(),
                format!("{} may be used {ranges}; {} is {stage}, which cannot be compared", product.name, field.name),
                basis(first),
            )
            .hint("Write stages like V6, R1 or BBCH 14."),
        );
    } else {
        findings.push(
            Finding::stop(
                about(),
                format!("{} is at {}; {} may be used {ranges}", field.name, field.stage, product.name),
                basis(first),
            )
            .hint("Leave the field out, or choose another product."),
        );
    }
}

#[cfg(test)]
mod tests {
    use super::within;

    #[test]
    fn stages_compare_on_one_scale_only() {
        assert_eq!(within("V6", "V2", "V8"), Some(true));
        assert_eq!(within("V8", "", "V8"), Some(true));
        assert_eq!(within("V9", "", "V8"), Some(false));
        assert_eq!(within("R1", "", "V8"), Some(false));
        assert_eq!(within("VT", "V10", "R1"), Some(true));
        assert_eq!(within("BBCH 14", "BBCH 12", "BBCH 16"), Some(true));
        assert_eq!(within("BBCH 14", "V2", "V8"), None);
        assert_eq!(within("", "V2", "V8"), None);
        assert_eq!(within("about knee high", "", ""), Some(true));
    }
}
