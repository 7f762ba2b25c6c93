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
    let when = if spoken.doubt.is_empty() { String::new() } else { format!(" {}", spoken.doubt) };
    findings.push(Finding::note(
        Subject::Pass(here.pass_id.clone()),
        t!("label-nobody-enters-without-protection-for-h", hours = hours, when = when, speaker = spoken.speaker.name()),
        Basis::Label(spoken.at()),
    ));
}
