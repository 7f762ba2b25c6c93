//! Which nozzles are worn, blocked or of another size.

use super::limits::{self, Limit};
use super::{Calibrated, Caught, Measured, State, against, apart, beyond};
use crate::finding::{Basis, Finding};
use crate::label::listed;
use crate::language::t;
use crate::quantity::{Flow, Quantity, Share};
use crate::rig::flow::of_a_nozzle;
use crate::working::Working;

/// What was caught of one nozzle or one row.
#[derive(Clone, Copy)]
pub(crate) struct Given {
    /// Its place from the left.
    pub place: usize,
    /// Its flow.
    pub flow: Flow,
}

/// Holds what was caught against a new nozzle and against its average, and fills `out`. `one` is "nozzle" or "row".
pub(crate) fn judge(measured: &Measured, given: &[Given], one: &str, working: Working, out: &mut Calibrated) {
    let new = measured.new_flow();
    let centre = centre(given, new);
    let far = |given: &&Given| centre.and_then(|centre| against(given.flow.ratio(centre))).is_some_and(far_off);
    // One that is far off pulls the average after itself and would put the blame on the others. Where all are, none is odd.
    let some_near = given.iter().any(|given| !far(&given));
    let near: Vec<Flow> = given.iter().filter(|given| !(some_near && far(given))).map(|given| given.flow).collect();
    let Some(mean) = mean(&near) else {
        out.workings.push(working);
        return;
    };
    let units = measured.units;
    out.flow = Some(mean);
    let left_out = given.len() - near.len();
    let mut working = working.step(t!("rig-mean-of", near = near.len(), many = left_out), of_a_nozzle(mean, units));
    let rated = measured.set.and_then(|set| set.rated.as_ref());
    if let (Some(new), Some(rated), Some(pressure)) = (new, rated, measured.pressure) {
        working = working.step(
            t!(
                "rig-a-new-one",
                of_a_nozzle = of_a_nozzle(rated.flow.value(), units),
                pressure = pressure.show(units),
                at = rated.at.show(units)
            ),
            of_a_nozzle(new, units),
        );
        out.against_new = against(mean.ratio(new));
        if let Some(share) = out.against_new {
            working = working.step(t!("rig-the-mean-against-a-new-one"), apart(share));
        }
    }
    out.workings.push(working);
    out.nozzles =
        given.iter().filter_map(|one| caught(*one, mean, far(&one) && (some_near || given.len() == 1), new)).collect();
    if given.len() == 1 {
        out.findings.push(Finding::note(
            measured.about.clone(),
            t!("rig-one-alone-was-caught-so-there", one = one),
            Basis::Arithmetic,
        ));
    }
    against_average(measured, one, out);
    against_new(measured, one, new, out);
    if new.is_none() {
        not_known(measured, out);
    }
}

fn mean(flows: &[Flow]) -> Option<Flow> {
    let count = u32::try_from(flows.len()).ok().filter(|count| *count > 0)?;
    let total: Flow = flows.iter().copied().sum();
    Some(total * (1.0 / f64::from(count))).filter(|mean| !mean.is_zero())
}

/// What the flows lie about: their median, which one odd nozzle does not pull; of one or two a new nozzle, where that is known.
fn centre(given: &[Given], new: Option<Flow>) -> Option<Flow> {
    let mut flows: Vec<Flow> = given.iter().map(|given| given.flow).filter(|flow| !flow.is_zero()).collect();
    flows.sort_unstable();
    let upper = flows.get(flows.len() / 2).copied()?;
    let lower = flows.get((flows.len() - 1) / 2).copied()?;
    let median = (lower + upper) * 0.5;
    Some(if flows.len() < 3 { new.unwrap_or(median) } else { median })
}

/// Whether a nozzle lies further off than wear or a speck of dirt puts it.
fn far_off(share: Share) -> bool {
    limits::of("size").any(|limit| beyond(share, limit.share()))
}

fn caught(one: Given, mean: Flow, far: bool, new: Option<Flow>) -> Option<Caught> {
    let against_average = against(one.flow.ratio(mean))?;
    let against_new = new.and_then(|new| against(one.flow.ratio(new)));
    let beyond_any = |kind: &str, share: Share| limits::of(kind).any(|limit| beyond(share, limit.share()));
    let over = |share: Share| share > Share::ZERO;
    let outside = |shares: [(&str, Option<Share>); 2], above: bool| {
        shares.into_iter().any(|(kind, share)| {
            share.is_some_and(|share| over(share) == above && !share.is_zero() && beyond_any(kind, share))
        })
    };
    let rules = [("average", Some(against_average)), ("new", against_new)];
    // Less than half is dirt: no one fits a size so far from the others by mistake.
    let dirt = !over(against_average) && beyond(against_average, Share::from_percent(50.0));
    let state = if far && !dirt {
        State::OtherSize
    } else if outside(rules, true) {
        State::Worn
    } else if outside(rules, false) {
        State::Blocked
    } else {
        State::Good
    };
    Some(Caught { place: one.place, flow: one.flow, against_average, against_new, state })
}

/// "3 (+12.1 %) and 7 (+14 %)".
fn list(which: &[(usize, Share)]) -> String {
    let list: Vec<String> = which.iter().map(|(place, share)| format!("{place} ({})", apart(*share))).collect();
    listed(&list)
}

/// By which side of something a message chooses.
const fn side(above: bool) -> &'static str {
    if above { "above" } else { "below" }
}

fn against_average(measured: &Measured, one: &str, out: &mut Calibrated) {
    let alone = out.nozzles.len() == 1;
    let other_size: Vec<(usize, Share)> = out
        .nozzles
        .iter()
        .filter(|caught| caught.state == State::OtherSize)
        .map(|caught| (caught.place, alone.then_some(caught.against_new).flatten().unwrap_or(caught.against_average)))
        .collect();
    if let (false, Some(limit)) = (other_size.is_empty(), limits::of("size").next()) {
        let (count, list) = (other_size.len(), list(&other_size));
        let sizes = if alone {
            t!("rig-so-far-from-a-new-one", one = one, count = count, list = list)
        } else {
            t!("rig-so-far-from-the-others", one = one, count = count, list = list)
        };
        out.findings.push(
            Finding::check(measured.about.clone(), sizes, limit.basis()).hint(t!("rig-read-the-number-on-the-nozzle")),
        );
    }
    let rows: Vec<&Limit> = limits::of("average").collect();
    let Some(loosest) = rows.iter().map(|row| row.share()).reduce(Share::max) else { return };
    let strictest = rows.iter().map(|row| row.share()).fold(loosest, Share::min);
    for above in [true, false] {
        let those: Vec<(usize, Share)> = out
            .nozzles
            .iter()
            .filter(|caught| caught.state != State::OtherSize)
            .map(|caught| (caught.place, caught.against_average))
            .filter(|(_, share)| (*share > Share::ZERO) == above && beyond(*share, strictest))
            .collect();
        let (far, near): (Vec<_>, Vec<_>) = those.into_iter().partition(|(_, share)| beyond(*share, loosest));
        if !far.is_empty() {
            let text = t!(
                "rig-more-than-the-average",
                one = one,
                count = far.len(),
                list = list(&far),
                loosest = percent(loosest),
                side = side(above)
            );
            out.findings.push(
                Finding::check(measured.about.clone(), text, Basis::Published(limits::sources(&rows)))
                    .hint(what_to_do(above, far.len())),
            );
        }
        if !near.is_empty() {
            let (strict, lenient): (Vec<&Limit>, Vec<&Limit>) =
                rows.iter().copied().partition(|row| row.share() < loosest);
            let text = t!(
                "rig-more-than-the-average-allows-up",
                one = one,
                count = near.len(),
                list = list(&near),
                strictest = percent(strictest),
                side = side(above),
                lenient = limits::sources(&lenient),
                loosest = percent(loosest)
            );
            out.findings.push(
                Finding::check(measured.about.clone(), text, Basis::Published(limits::sources(&strict)))
                    .hint(what_to_do(above, near.len())),
            );
        }
    }
}

fn percent(share: Share) -> String {
    crate::quantity::number::show(share.to_percent(), 1)
}

fn what_to_do(above: bool, count: usize) -> String {
    if above { t!("rig-replace", count = count) } else { t!("rig-clean-and-the-strainer-and-catch", count = count) }
}

fn against_new(measured: &Measured, one: &str, new: Option<Flow>, out: &mut Calibrated) {
    let (Some(limit), Some(mean), Some(new)) = (limits::of("new").next(), out.against_new, new) else { return };
    let new = of_a_nozzle(new, measured.units);
    if out.nozzles.len() > 1 && beyond(mean, limit.share()) {
        let off = percent(Share::from_fraction(mean.to_fraction().abs()));
        let (text, hint) = if mean > Share::ZERO {
            (
                t!("rig-together-they-give-more-than-new", one = one, off = off, new = new),
                t!("rig-look-at-the-pressure-gauge-where"),
            )
        } else {
            (
                t!("rig-together-they-give-less-than-new", one = one, off = off, new = new),
                t!("rig-look-at-the-pressure-gauge-the"),
            )
        };
        out.findings.push(Finding::check(measured.about.clone(), text, limit.basis()).hint(hint));
        return;
    }
    for above in [true, false] {
        let which: Vec<(usize, Share)> = out
            .nozzles
            .iter()
            .filter(|caught| caught.state != State::OtherSize)
            .filter_map(|caught| caught.against_new.map(|share| (caught.place, share)))
            .filter(|(_, share)| (*share > Share::ZERO) == above && beyond(*share, limit.share()))
            .collect();
        if which.is_empty() {
            continue;
        }
        let text = t!(
            "rig-over-than-a-new-one-which",
            one = one,
            count = which.len(),
            list = list(&which),
            share = percent(limit.share()),
            side = side(above),
            new = new
        );
        out.findings
            .push(Finding::check(measured.about.clone(), text, limit.basis()).hint(what_to_do(above, which.len())));
    }
}

/// Says once why nothing is held against a new nozzle.
fn not_known(measured: &Measured, out: &mut Calibrated) {
    let rating = measured.set.is_some_and(|set| set.rated.is_some());
    let (text, hint) = match (rating, measured.pressure.is_some_and(|pressure| !pressure.is_zero())) {
        (false, _) => (t!("rig-nothing-is-held-against-new-rating"), t!("rig-type-the-rating-of-the-nozzle")),
        (true, false) => (t!("rig-nothing-is-held-against-new-pressure"), t!("rig-type-the-pressure-at-the-nozzles")),
        (true, true) => (t!("rig-nothing-is-held-against-new-zero"), t!("rig-mend-the-rating-of-the-nozzle")),
    };
    out.findings.push(Finding::note(measured.about.clone(), text, Basis::Arithmetic).hint(hint));
}
