//! Season totals: what a field has had this year, with this pass on top, against the label's most.
//!
//! A season is the calendar year of the pass. Records count; so do other passes of the year that are planned up to the
//! same day and not yet recorded, but those raise a Check, not a Stop.

use super::{place, same_crop};
use crate::farm::label::Says;
use crate::farm::{Farm, Field, Id, Product};
use crate::finding::{Basis, Finding, Subject};
use crate::mix::line::{PlannedLine, active_per_area, per_area};
use crate::quantity::rate::show_active;
use crate::quantity::{ActiveBasis, AmountPerArea, CarrierRate, MassPerArea, Rate};
use crate::season::{active_so_far, product_so_far};
use crate::working::Working;

/// What the season rules look at.
pub(crate) struct Season<'a> {
    pub(crate) farm: &'a Farm,
    pub(crate) pass: &'a Id,
    pub(crate) year: i16,
    pub(crate) carrier: CarrierRate,
    pub(crate) lines: &'a [PlannedLine],
}

impl Season<'_> {
    /// The season totals of a product on a field; gives what is left for this pass, for the rounding.
    pub(crate) fn judge(
        &self,
        line: &PlannedLine,
        product: &Product,
        field_id: &Id,
        field: &Field,
        findings: &mut Vec<Finding>,
        workings: &mut Vec<Working>,
    ) -> Option<AmountPerArea> {
        let mut left: Option<AmountPerArea> = None;
        for statement in &product.label {
            if !(statement.crop.is_empty() || same_crop(&statement.crop, &field.crop)) {
                continue;
            }
            let at = place(product, statement);
            match &statement.says {
                Says::SeasonTotal { most } => {
                    let limit = match per_area(most.value(), product, self.carrier) {
                        Ok(limit) => limit,
                        Err(problem) => {
                            findings.push(Finding::check(
                                Subject::Product(line.product.clone()),
                                format!("The season total on the label cannot be compared: {problem}"),
                                Basis::Label(at),
                            ));
                            continue;
                        }
                    };
                    let used = product_so_far(self.farm, self.year, field_id, &line.product, self.pass);
                    let after = used.map_or(Some(line.per_area), |used| used.plus(line.per_area));
                    let Some(after) = after else { continue };
                    workings.push(self.working(
                        &product.name,
                        field,
                        used.map(|used| used.show(self.farm.units)),
                        &line.per_area.show(self.farm.units),
                        &after.show(self.farm.units),
                        most.text(),
                    ));
                    if after.exceeds(limit) == Some(true) {
                        findings.push(self.passed(
                            field_id,
                            &product.name,
                            field,
                            &after.show(self.farm.units),
                            &limit.show(self.farm.units),
                            at,
                        ));
                    } else {
                        let rest = match (limit, used) {
                            (limit, None) => Some(limit),
                            (AmountPerArea::Volume(limit), Some(AmountPerArea::Volume(used))) => {
                                Some(AmountPerArea::Volume(limit - used))
                            }
                            (AmountPerArea::Mass(limit), Some(AmountPerArea::Mass(used))) => {
                                Some(AmountPerArea::Mass(limit - used))
                            }
                            _ => None,
                        };
                        left = match (left, rest) {
                            (Some(a), Some(b)) => Some(a.smaller(b)),
                            (a, b) => a.or(b),
                        };
                    }
                }
                Says::ActiveSeasonTotal { active, most } => {
                    let (limit, basis) = match most.value() {
                        Rate::ActivePerArea(limit, basis) => (limit, Some(basis)),
                        Rate::MassPerArea(limit) => (limit, None),
                        _ => {
                            findings.push(
                                Finding::check(
                                    Subject::Product(line.product.clone()),
                                    format!(
                                        "The season total of {active} is typed as \"{}\", which is no mass over ground",
                                        most.text()
                                    ),
                                    Basis::Label(at),
                                )
                                .hint("Type it like \"4 lb ae/ac\"."),
                            );
                            continue;
                        }
                    };
                    self.judge_active(active, limit, basis, field_id, field, at, findings, workings);
                }
                _ => {}
            }
        }
        left
    }

    #[allow(clippy::too_many_arguments)] // One statement's parts, one field, two places for what it says.
    fn judge_active(
        &self,
        active: &str,
        limit: MassPerArea,
        basis: Option<ActiveBasis>,
        field_id: &Id,
        field: &Field,
        at: String,
        findings: &mut Vec<Finding>,
        workings: &mut Vec<Working>,
    ) {
        let units = self.farm.units;
        let mut planned = MassPerArea::ZERO;
        let mut basis = basis;
        for line in self.lines {
            // Records hold the actives of pesticides only; a salt of a conditioner is no active.
            let Some(product) = self.farm.products.get(&line.product).filter(|product| product.kind.is_pesticide())
            else {
                continue;
            };
            for held in product.actives.iter().filter(|held| held.name.eq_ignore_ascii_case(active)) {
                if basis.is_some_and(|basis| basis != held.basis) {
                    findings.push(
                        Finding::check(
                            Subject::Product(line.product.clone()),
                            format!(
                                "{} counts {active} as {}, the season total as {}",
                                product.name,
                                held.basis.short(),
                                basis.map_or("", ActiveBasis::short)
                            ),
                            Basis::Label(at.clone()),
                        )
                        .hint("Type both on one basis."),
                    );
                }
                basis = basis.or(Some(held.basis));
                match active_per_area(line.per_area, held, product) {
                    Some(mass) => planned = planned + mass,
                    None => findings.push(
                        Finding::check(
                            Subject::Product(line.product.clone()),
                            format!("The {active} in {} cannot be reckoned without its density, so the season total is not judged", product.name),
                            Basis::Arithmetic,
                        )
                        .hint("Type the density in the shed."),
                    ),
                }
            }
        }
        let basis = basis.unwrap_or(ActiveBasis::ActiveIngredient);
        let used = active_so_far(self.farm, self.year, field_id, active, self.pass);
        let after = used + planned;
        let shown = |mass: MassPerArea| show_active(mass, basis, units);
        workings.push(self.working(
            active,
            field,
            (!used.is_zero()).then(|| shown(used)),
            &shown(planned),
            &shown(after),
            &shown(limit),
        ));
        if after.exceeds(limit) {
            findings.push(self.passed(field_id, active, field, &shown(after), &shown(limit), at));
        }
    }

    fn working(
        &self,
        what: &str,
        field: &Field,
        used: Option<String>,
        planned: &str,
        after: &str,
        limit: &str,
    ) -> Working {
        Working::new(format!("{what} on {} in {}", field.name, self.year))
            .step("records so far", used.unwrap_or_else(|| "none".to_owned()))
            .step("+ this pass", planned)
            .step("in all", after)
            .step("label's most", limit)
    }

    fn passed(&self, field_id: &Id, what: &str, field: &Field, after: &str, limit: &str, at: String) -> Finding {
        Finding::stop(
            Subject::Field(field_id.clone()),
            format!("{}: this pass brings {what} to {after} in {}; the label's most is {limit}", field.name, self.year),
            Basis::Label(at),
        )
        .hint("Lower the rate, leave the field out, or choose another product.")
    }

    /// Other passes of the year that put the same product on the same field and are not recorded yet.
    pub(crate) fn note_unrecorded(&self, findings: &mut Vec<Finding>) {
        let Some(this) = self.farm.passes.get(self.pass) else { return };
        for (id, other) in &self.farm.passes {
            if id == self.pass || other.date > this.date || other.date.year() != self.year {
                continue;
            }
            if self.farm.records.values().any(|record| record.pass.as_ref() == Some(id)) {
                continue;
            }
            let shared: Vec<&str> = self
                .lines
                .iter()
                .filter(|line| other.mix.iter().any(|theirs| theirs.product == line.product))
                .filter(|line| self.farm.products.get(&line.product).is_some_and(|product| product.kind.is_pesticide()))
                .map(|line| line.name.as_str())
                .collect();
            let fields: Vec<&str> = other
                .fields
                .iter()
                .filter(|field| this.fields.contains(field))
                .filter_map(|field| self.farm.fields.get(field))
                .map(|field| field.name.as_str())
                .collect();
            if !shared.is_empty() && !fields.is_empty() {
                findings.push(
                    Finding::check(
                        Subject::Pass(id.clone()),
                        format!(
                            "\"{}\" of {} also puts {} on {} and is not recorded, so the season totals do not count it",
                            other.name,
                            other.date,
                            shared.join(", "),
                            fields.join(", ")
                        ),
                        Basis::Arithmetic,
                    )
                    .hint("Record it, or take it out if it was not sprayed."),
                );
            }
        }
    }
}
