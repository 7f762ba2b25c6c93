//! Adjuvant classes as the partners' labels speak of them: those they forbid, and the most and least they name. What suits
//! every partner is a room of its own and not judged here.

use super::{for_crop, place};
use crate::farm::label::{Says, Stance};
use crate::farm::product::AdjuvantClass;
use crate::farm::{Farm, Field, Id, Product, ProductKind, Statement};
use crate::finding::{Basis, Finding, Subject};
use crate::mix::line::{PlannedLine, per_area};
use crate::quantity::{AmountPerArea, AsTyped, CarrierRate, Rate};

/// What a product's label says on the field's crop about the classes in the mix.
pub(crate) fn judge(
    id: &Id,
    product: &Product,
    field: &Field,
    farm: &Farm,
    lines: &[PlannedLine],
    carrier: CarrierRate,
    findings: &mut Vec<Finding>,
) {
    let about = || Subject::Product(id.clone());
    let mut required: Vec<(AdjuvantClass, &Statement)> = Vec::new();
    let mut served = false;
    for statement in product.label.iter().filter(|statement| for_crop(statement, field)) {
        let Says::Adjuvant { class, stance, least, most, .. } = &statement.says else { continue };
        // Ammonium sulfate is judged with the water, where a liquid one counts by its content.
        let with_the_water = *class == AdjuvantClass::AmmoniumSulfate;
        let basis = || Basis::Label(place(product, statement));
        let partners: Vec<(&PlannedLine, &Product)> = lines
            .iter()
            .filter_map(|line| Some((line, farm.products.get(&line.product)?)))
            .filter(|(_, partner)| partner.class == Some(*class))
            .collect();
        if *stance == Stance::Required && !with_the_water {
            required.push((*class, statement));
            served |= !partners.is_empty();
        }
        for (line, partner) in partners {
            if *stance == Stance::Forbidden {
                let text = format!("{} forbids {}, and {} is in the mix", product.name, class.name(), partner.name);
                findings
                    .push(Finding::stop(about(), text, basis()).hint("Take one of the two out, or split the pass."));
                continue;
            }
            if with_the_water {
                continue;
            }
            let planned = line.per_area.show(farm.units);
            match bound(most.as_ref(), partner, carrier) {
                Some(Ok(most)) if line.per_area.exceeds(most) == Some(true) => findings.push(
                    Finding::stop(
                        about(),
                        format!(
                            "{} allows {} of {} at most; {planned} is planned",
                            product.name,
                            most.show(farm.units),
                            partner.name
                        ),
                        basis(),
                    )
                    .hint("Lower its rate."),
                ),
                Some(Err(problem)) => findings.push(not_compared(about(), product, &problem, basis())),
                _ => {}
            }
            match bound(least.as_ref(), partner, carrier) {
                Some(Ok(least)) if least.exceeds(line.per_area) == Some(true) => findings.push(Finding::check(
                    about(),
                    format!(
                        "{} names {} of {} at least; {planned} is planned",
                        product.name,
                        least.show(farm.units),
                        partner.name
                    ),
                    basis(),
                )),
                Some(Err(problem)) => findings.push(not_compared(about(), product, &problem, basis())),
                _ => {}
            }
        }
    }
    if let (Some((_, statement)), false) = (required.first(), served) {
        let classes: Vec<&str> = required.iter().map(|(class, _)| class.name()).collect();
        findings.push(
            Finding::check(
                about(),
                format!("{} requires {}, and the mix has none", product.name, classes.join(" or ")),
                Basis::Label(place(product, statement)),
            )
            .hint("Whether another partner brings it is not judged; read the label."),
        );
    }
}

fn not_compared(about: Subject, product: &Product, problem: &str, basis: Basis) -> Finding {
    Finding::check(about, format!("What {} says of an adjuvant cannot be compared: {problem}", product.name), basis)
}

/// A label's bound over ground, for a partner of its class. A mass of ammonium sulfate is of the salt, also where the
/// partner is a solution of it.
fn bound(
    rate: Option<&AsTyped<Rate>>,
    partner: &Product,
    carrier: CarrierRate,
) -> Option<Result<AmountPerArea, String>> {
    let rate = rate?.value();
    let salt = partner.actives.first().filter(|_| partner.kind == ProductKind::Conditioner && partner.is_liquid());
    let rate = match (rate, salt) {
        (Rate::MassPerSpray(content), Some(salt)) => Rate::ActivePerSpray(content, salt.basis),
        (Rate::MassPerArea(mass), Some(salt)) => Rate::ActivePerArea(mass, salt.basis),
        (other, _) => other,
    };
    Some(per_area(rate, partner, carrier))
}

/// How far the rounding of an adjuvant may go: the smallest most that a partner's label names for its class and that the
/// plan itself keeps.
pub(crate) fn cap(
    line: &PlannedLine,
    product: &Product,
    farm: &Farm,
    lines: &[PlannedLine],
    carrier: CarrierRate,
) -> Option<AmountPerArea> {
    let named = |statement: &Statement| match &statement.says {
        Says::Adjuvant { class, most, .. } if product.class == Some(*class) => {
            bound(most.as_ref(), product, carrier)?.ok()
        }
        _ => None,
    };
    lines
        .iter()
        .filter_map(|partner| farm.products.get(&partner.product))
        .flat_map(|partner| partner.label.iter().filter_map(named))
        .filter(|most| line.per_area.exceeds(*most) == Some(false))
        .reduce(AmountPerArea::smaller)
}
