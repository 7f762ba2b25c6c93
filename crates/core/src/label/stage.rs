//! Growth stages, and limits by stage.

use super::{place, same_crop};
use crate::farm::label::Says;
use crate::farm::{Field, Id, Product};
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

/// The stage limits of a product on a field.
pub(crate) fn judge(product: &Product, field_id: &Id, field: &Field, findings: &mut Vec<Finding>) {
    for statement in &product.label {
        if statement.says != Says::CropStage || !(statement.crop.is_empty() || same_crop(&statement.crop, &field.crop))
        {
            continue;
        }
        let range = match (statement.from_stage.trim(), statement.to_stage.trim()) {
            ("", to) => format!("up to {to}"),
            (from, "") => format!("from {from}"),
            (from, to) => format!("from {from} to {to}"),
        };
        let basis = Basis::Label(place(product, statement));
        match within(&field.stage, &statement.from_stage, &statement.to_stage) {
            Some(true) => {
                // Within a leaf of the last stage allowed, a few days' growth end it.
                if Stage::read(&field.stage)
                    .zip(Stage::read(&statement.to_stage))
                    .is_some_and(|(now, last)| last.is_near(now))
                {
                    findings.push(
                        Finding::check(
                            Subject::Field(field_id.clone()),
                            format!(
                                "{} is at {}; {} stops at {}",
                                field.name, field.stage, product.name, statement.to_stage
                            ),
                            basis,
                        )
                        .hint("Look at the crop again before the tank is filled."),
                    );
                }
            }
            Some(false) => findings.push(
                Finding::stop(
                    Subject::Field(field_id.clone()),
                    format!("{} is at {}; {} may be used {range}", field.name, field.stage, product.name),
                    basis,
                )
                .hint("Leave the field out, or choose another product."),
            ),
            None => findings.push(
                Finding::check(
                    Subject::Field(field_id.clone()),
                    format!(
                        "{} may be used {range}; {} is {}, which cannot be compared",
                        product.name,
                        field.name,
                        if field.stage.is_empty() {
                            "without a stage".to_owned()
                        } else {
                            format!("at \"{}\"", field.stage)
                        }
                    ),
                    basis,
                )
                .hint("Write stages like V6, R1 or BBCH 14."),
            ),
        }
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
