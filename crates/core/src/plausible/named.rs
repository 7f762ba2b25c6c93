//! A product against its own name: the code of its formulation there, and whether its actives are typed at all.

use crate::farm::{Formulation, Id, Product};
use crate::finding::{Basis, Finding, Subject, TypedAt};
use crate::language::t;

/// Codes that labels still write for others of the list. From memory, no source at hand: water-dispersible granules
/// were DF and WDG before they were WG.
const FORMER: [(&str, Formulation); 2] = [("WDG", Formulation::WG), ("DF", Formulation::WG)];

/// What there is to doubt.
pub(super) fn judge(id: &Id, product: &Product, findings: &mut Vec<Finding>) {
    let about = || Subject::Product(id.clone());
    let named = in_name(&product.name);
    if let [code] = named.as_slice()
        && *code != product.formulation
    {
        let text = t!(
            "plausible-name-says-another-formulation",
            name = product.name,
            code = code.code(),
            typed = product.formulation.code()
        );
        let finding = Finding::check(about(), text, Basis::Arithmetic);
        findings.push(finding.hint(t!("plausible-type-the-formulation-of-the-label")));
    }
    if product.kind.is_pesticide() && product.actives.is_empty() {
        let text = t!("plausible-no-active-is-typed", name = product.name);
        let finding = Finding::check(about(), text, Basis::Arithmetic);
        findings.push(finding.hint(t!("plausible-type-the-actives-of-the-label")).at(TypedAt::Active));
    }
}

/// The formulations whose codes stand in a name, each once: "Mesotrione 480 SC", "Atrazine 90WDG".
fn in_name(name: &str) -> Vec<Formulation> {
    let words = name.split(|letter: char| !letter.is_ascii_alphanumeric());
    let codes = words.map(|word| word.trim_start_matches(|letter: char| letter.is_ascii_digit()));
    let of = |code: &str| {
        let former = FORMER.iter().find(|(former, _)| *former == code).map(|(_, is)| *is);
        former.or_else(|| Formulation::ALL.into_iter().find(|formulation| formulation.code() == code))
    };
    crate::label::once(codes.filter_map(of))
}

#[cfg(test)]
mod tests {
    use super::in_name;
    use crate::farm::Formulation::{EC, SC, WG};

    #[test]
    fn codes_stand_in_names_as_words() {
        assert_eq!(in_name("Mesotrione 480 SC (demo)"), [SC]);
        assert_eq!(in_name("Atrazine 90WDG"), [WG]);
        assert_eq!(in_name("Clethodim 2EC and EC"), [EC]);
        assert_eq!(in_name("SC and EC"), [SC, EC]);
        assert!(in_name("Second choice, scale, ec").is_empty());
    }
}
