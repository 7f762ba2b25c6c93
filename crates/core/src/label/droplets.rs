//! Droplet classes that the labels ask for, against the class of the pass: the one typed for it, else that of its nozzle set at
//! the setting's pressure, else the one typed for a rig without sets.

use super::Here;
use crate::farm::label::Says;
use crate::farm::{Droplets, Farm, Pass, Rig};
use crate::finding::{Basis, Finding, Subject};
use crate::language::{Say, say, t};
use crate::quantity::{CarrierRate, Quantity};
use crate::rig::setting::{self, Classes};
use crate::rig::{nozzle, set_of};

/// What the classes of a label are in words.
pub(crate) fn words(finest: Droplets, coarsest: Option<Droplets>) -> String {
    on_card(finest, coarsest).aloud()
}

/// The same in any language.
pub(crate) fn on_card(finest: Droplets, coarsest: Option<Droplets>) -> Say {
    match coarsest {
        None => say("card-class-or-coarser").with("class", finest.on_card()),
        Some(coarsest) if coarsest == finest => finest.on_card(),
        Some(coarsest) => say("card-class-to").with("finest", finest.on_card()).with("coarsest", coarsest.on_card()),
    }
}

/// What the droplets of a pass come to.
pub(crate) enum OfPass {
    /// Of these classes.
    Known(Classes),
    /// Not known: why, in words, and what to do.
    NotKnown(String, &'static str),
}

/// The droplets of a pass at its volume over ground.
pub(crate) fn of_the_pass(farm: &Farm, pass: &Pass, carrier: CarrierRate) -> OfPass {
    let not_typed = || {
        OfPass::NotKnown(
            t!("label-the-droplet-class-of-this-pass").to_owned(),
            t!("label-copy-the-class-from-the-nozzle"),
        )
    };
    if let Some(class) = pass.droplets {
        return OfPass::Known(Classes::of(class));
    }
    let Some(rig) = farm.rigs.get(&pass.rig) else { return not_typed() };
    if rig.sets.is_empty() {
        return rig.droplets.map_or_else(not_typed, |class| OfPass::Known(Classes::of(class)));
    }
    let Some((id, set)) = set_of(farm, pass) else { return not_typed() };
    if set.droplets.is_empty() {
        return OfPass::NotKnown(
            t!("label-the-droplet-classes-of-are-not", name = set.name),
            t!("label-copy-them-from-the-nozzle-makers"),
        );
    }
    match setting::pressure(farm, pass, rig, id, set, carrier) {
        None => OfPass::NotKnown(
            t!("label-the-pressure-of-is-not-known", name = set.name),
            t!("label-type-what-its-setting-lacks-or"),
        ),
        Some(pressure) => nozzle::classes(set, pressure).map_or_else(
            || {
                OfPass::NotKnown(
                    t!("label-the-droplet-table-of-does-not", name = set.name, pressure = pressure.show(farm.units)),
                    t!("label-change-speed-volume-or-set-or"),
                )
            },
            OfPass::Known,
        ),
    }
}

/// The droplet classes of a product on a field. Where they are not known, says so through `open`, once for the pass.
pub(crate) fn judge(here: &Here, classes: &OfPass, findings: &mut Vec<Finding>, open: &mut Vec<(String, Basis)>) {
    for spoken in here.asked(|says| matches!(says, Says::Droplets { .. })) {
        let Says::Droplets { finest, coarsest } = spoken.statement.says else { continue };
        let (asked, who) = (words(finest, coarsest), spoken.speaker.name());
        let OfPass::Known(classes) = classes else {
            open.push((format!("{asked} ({who})"), spoken.basis()));
            continue;
        };
        // A class that was typed must be typed anew; one of a set follows from its setting.
        let of_a_set = here.pass.droplets.is_none() && here.farm.rigs.get(&here.pass.rig).is_some_and(has_sets);
        let (is_finer, hint) = if classes.finest < finest {
            let hint = if of_a_set {
                t!("label-take-a-coarser-set-or-less")
            } else {
                t!("label-choose-a-coarser-nozzle-or-less")
            };
            (true, hint)
        } else if coarsest.is_some_and(|coarsest| classes.coarsest > coarsest) {
            let hint =
                if of_a_set { t!("label-take-a-finer-set-or-more") } else { t!("label-choose-a-finer-nozzle-or-more") };
            (false, hint)
        } else {
            continue;
        };
        let shown = classes.words();
        // Between two lines of the table it may be the one class or the other.
        let surely = classes.coarsest < finest || coarsest.is_some_and(|coarsest| classes.finest > coarsest);
        findings.push(if surely {
            let text = if is_finer {
                t!("label-droplets-are-finer", who = who, asked = asked, classes = shown)
            } else {
                t!("label-droplets-are-coarser", who = who, asked = asked, classes = shown)
            };
            spoken.forbid(spoken.about(here), text).hint(hint)
        } else {
            let text = if is_finer {
                t!("label-droplets-may-be-finer", who = who, asked = asked, classes = shown)
            } else {
                t!("label-droplets-may-be-coarser", who = who, asked = asked, classes = shown)
            };
            Finding::check(spoken.about(here), text, spoken.basis()).hint(t!("label-set-a-pressure-of-the-table"))
        });
    }
}

fn has_sets(rig: &Rig) -> bool {
    !rig.sets.is_empty()
}

/// One Check for all that ask for a class where none is known.
pub(crate) fn not_typed(pass: &crate::farm::Id, classes: &OfPass, open: Vec<(String, Basis)>) -> Option<Finding> {
    let OfPass::NotKnown(why, hint) = classes else { return None };
    let (asked, basis) = super::asked_once(open, None)?;
    let text = t!("label-droplets-not-known", why = why, asked = asked);
    Some(Finding::check(Subject::Pass(pass.clone()), text, basis).hint(*hint))
}
