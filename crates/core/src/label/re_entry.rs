//! Hours before people may enter without protection: the longest of the mix, said once.

use super::Here;
use crate::farm::label::Says;
use crate::finding::{Basis, Finding, Subject};
use crate::language::t;

/// The longest re-entry time of a pass.
pub(crate) fn judge(all: &[Here], findings: &mut Vec<Finding>) {
    let longest = all
        .iter()
        .flat_map(Here::spoken)
        .filter_map(|spoken| match spoken.statement.says {
            Says::ReEntry { hours } => Some((hours, spoken)),
            _ => None,
        })
        .reduce(|longest, next| if next.0 > longest.0 { next } else { longest });
    let (Some((hours, spoken)), Some(here)) = (longest, all.first()) else { return };
    if hours == 0 {
        return;
    }
    let (doubt, speaker) = (&spoken.doubt, spoken.speaker.name());
    let text = if doubt.is_empty() {
        t!("label-nobody-enters-without-protection-for-h", hours = hours, speaker = speaker)
    } else {
        t!("label-nobody-enters-where", hours = hours, doubt = doubt, speaker = speaker)
    };
    findings.push(Finding::note(Subject::Pass(here.pass_id.clone()), text, Basis::Label(spoken.at())));
}
