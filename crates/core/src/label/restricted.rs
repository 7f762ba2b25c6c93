//! Products that only a certified applicator may use.

use super::{Here, listed};
use crate::finding::{Basis, Finding, Subject};
use crate::language::t;

/// Says once for a pass which of its products are restricted.
pub(crate) fn judge(all: &[Here], findings: &mut Vec<Finding>) {
    let mut names: Vec<String> = Vec::new();
    for here in all.iter().filter(|here| here.product.restricted) {
        if !names.contains(&here.product.name) {
            names.push(here.product.name.clone());
        }
    }
    let Some(here) = all.first().filter(|_| !names.is_empty()) else { return };
    findings.push(
        Finding::note(
            Subject::Pass(here.pass_id.clone()),
            t!("label-for-certified-applicators-only-or-for", count = names.len(), names = listed(&names)),
            Basis::Label(names.join("; ")),
        )
        .hint(t!("label-a-record-is-owed-write-who")),
    );
}
