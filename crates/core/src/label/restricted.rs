//! Products that only a certified applicator may use.

use super::{Here, listed};
use crate::finding::{Basis, Finding, Subject};

/// Says once for a pass which of its products are restricted.
pub(crate) fn judge(all: &[Here], findings: &mut Vec<Finding>) {
    let mut names: Vec<String> = Vec::new();
    for here in all.iter().filter(|here| here.product.restricted) {
        if !names.contains(&here.product.name) {
            names.push(here.product.name.clone());
        }
    }
    let Some(here) = all.first().filter(|_| !names.is_empty()) else { return };
    let are = if names.len() == 1 { "is" } else { "are" };
    findings.push(
        Finding::note(
            Subject::Pass(here.pass_id.clone()),
            format!(
                "{} {are} for certified applicators only, or for people under their direct supervision where local law allows it",
                listed(&names)
            ),
            Basis::Label(names.join("; ")),
        )
        .hint("A record is owed: write who sprayed and the certificate's number into it."),
    );
}
