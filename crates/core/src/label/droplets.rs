//! Droplet classes that the labels ask for, against the class typed for the pass or its rig.

use super::{Here, listed};
use crate::farm::Droplets;
use crate::farm::label::Says;
use crate::finding::{Basis, Finding, Subject};

/// What the classes of a label are in words.
pub(crate) fn words(finest: Droplets, coarsest: Option<Droplets>) -> String {
    match coarsest {
        None => format!("{} or coarser", finest.name()),
        Some(coarsest) if coarsest == finest => finest.name().to_owned(),
        Some(coarsest) => format!("{} to {}", finest.name(), coarsest.name()),
    }
}

/// The droplet class of a product on a field. Where none is typed, says so through `open`, once for the pass.
pub(crate) fn judge(here: &Here, findings: &mut Vec<Finding>, open: &mut Vec<String>) {
    let rig = here.farm.rigs.get(&here.pass.rig);
    let class = here.pass.droplets.or(rig.and_then(|rig| rig.droplets));
    for spoken in here.spoken() {
        let Says::Droplets { finest, coarsest } = spoken.statement.says else { continue };
        let asked = words(finest, coarsest);
        let Some(class) = class else {
            open.push(format!("{asked} ({})", here.product.name));
            continue;
        };
        let (word, hint) = if class < finest {
            ("finer", "Choose a coarser nozzle or less pressure, and type the class of that setting.")
        } else if coarsest.is_some_and(|coarsest| class > coarsest) {
            ("coarser", "Choose a finer nozzle or more pressure, and type the class of that setting.")
        } else {
            continue;
        };
        let text = format!(
            "{} asks for {asked} droplets; those of this pass are {}, which is {word}",
            here.product.name,
            class.name()
        );
        findings.push(spoken.forbid(here.about_product(), text).hint(hint));
    }
}

/// One Check for all labels that ask for a class where none is typed.
pub(crate) fn not_typed(pass: &crate::farm::Id, open: Vec<String>) -> Option<Finding> {
    let mut seen: Vec<String> = Vec::new();
    for asked in open {
        if !seen.contains(&asked) {
            seen.push(asked);
        }
    }
    (!seen.is_empty()).then(|| {
        Finding::check(
            Subject::Pass(pass.clone()),
            format!("The droplet class of this pass is not typed; the labels ask for {}", listed(&seen)),
            Basis::Label(listed(&seen)),
        )
        .hint("Copy the class from the nozzle maker's table to the rig or the pass.")
    })
}
