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
    let left_out = match given.len() - near.len() {
        0 => String::new(),
        1 => t!("rig-1-that-is-far-off-left").to_owned(),
        many => t!("rig-that-are-far-off-left-out", many = many),
    };
    let mut working = working.step(t!("rig-mean-of", near = near.len(), left_out = left_out), of_a_nozzle(mean, units));
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

/// "Nozzle 3 (+12.1 %) gives", "Nozzles 3 (+12.1 %) and 7 (+14 %) give": with a verb for one and for several.
fn named(one: &str, which: &[(usize, Share)], verb: [&str; 2]) -> String {
    let list: Vec<String> = which.iter().map(|(place, share)| format!("{place} ({})", apart(*share))).collect();
    let [for_one, for_several] = verb;
    let (ending, verb) = if which.len() == 1 { ("", for_one) } else { ("s", for_several) };
    format!("{}{ending} {} {verb}", crate::words::capital(one), listed(&list))
}

const LIE: [&str; 2] = ["lies", "lie"];
const GIVE: [&str; 2] = ["gives", "give"];

/// The pronoun for so many.
const fn it(which: &[(usize, Share)]) -> &'static str {
    if which.len() == 1 { "it" } else { "them" }
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
        let others = if alone { t!("rig-a-new-one-72e") } else { t!("rig-the-others") };
        let sizes = t!("rig-so-far-from-that-the-size", named = named(one, &other_size, LIE), others = others);
        out.findings.push(
            Finding::check(measured.about.clone(), sizes, limit.basis()).hint(t!("rig-read-the-number-on-the-nozzle")),
        );
    }
    let rows: Vec<&Limit> = limits::of("average").collect();
    let Some(loosest) = rows.iter().map(|row| row.share()).reduce(Share::max) else { return };
    let strictest = rows.iter().map(|row| row.share()).fold(loosest, Share::min);
    for above in [true, false] {
        let side: Vec<(usize, Share)> = out
            .nozzles
            .iter()
            .filter(|caught| caught.state != State::OtherSize)
            .map(|caught| (caught.place, caught.against_average))
            .filter(|(_, share)| (*share > Share::ZERO) == above && beyond(*share, strictest))
            .collect();
        let (far, near): (Vec<_>, Vec<_>) = side.into_iter().partition(|(_, share)| beyond(*share, loosest));
        let word = if above { "above" } else { "below" };
        if !far.is_empty() {
            let text =
                t!("rig-more-than-the-average", named = named(one, &far, LIE), loosest = percent(loosest), word = word);
            out.findings.push(
                Finding::check(measured.about.clone(), text, Basis::Published(limits::sources(&rows)))
                    .hint(what_to_do(above, it(&far))),
            );
        }
        if !near.is_empty() {
            let (strict, lenient): (Vec<&Limit>, Vec<&Limit>) =
                rows.iter().copied().partition(|row| row.share() < loosest);
            let text = t!(
                "rig-more-than-the-average-allows-up",
                named = named(one, &near, LIE),
                strictest = percent(strictest),
                word = word,
                lenient = limits::sources(&lenient),
                loosest = percent(loosest)
            );
            out.findings.push(
                Finding::check(measured.about.clone(), text, Basis::Published(limits::sources(&strict)))
                    .hint(what_to_do(above, it(&near))),
            );
        }
    }
}

fn percent(share: Share) -> String {
    crate::quantity::number::show(share.to_percent(), 1)
}

fn what_to_do(above: bool, them: &str) -> String {
    if above { t!("rig-replace", them = them) } else { t!("rig-clean-and-the-strainer-and-catch", them = them) }
}

fn against_new(measured: &Measured, one: &str, new: Option<Flow>, out: &mut Calibrated) {
    let (Some(limit), Some(mean), Some(new)) = (limits::of("new").next(), out.against_new, new) else { return };
    let new = of_a_nozzle(new, measured.units);
    if out.nozzles.len() > 1 && beyond(mean, limit.share()) {
        let worn = mean > Share::ZERO;
        let (word, hint) = if worn {
            ("more", t!("rig-look-at-the-pressure-gauge-where"))
        } else {
            ("less", t!("rig-look-at-the-pressure-gauge-the"))
        };
        let off = Share::from_fraction(mean.to_fraction().abs());
        let text = t!(
            "rig-the-s-together-give-than-new",
            one = one,
            off = percent(off),
            word = word,
            new = new,
            which = if worn { "yes" } else { "no" }
        );
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
        let word = if above { "more" } else { "less" };
        let text = t!(
            "rig-over-than-a-new-one-which",
            named = named(one, &which, GIVE),
            share = percent(limit.share()),
            word = word,
            new = new
        );
        out.findings
            .push(Finding::check(measured.about.clone(), text, limit.basis()).hint(what_to_do(above, it(&which))));
    }
}

/// Says once why nothing is held against a new nozzle.
fn not_known(measured: &Measured, out: &mut Calibrated) {
    let rating = measured.set.is_some_and(|set| set.rated.is_some());
    let (what, hint) = match (rating, measured.pressure.is_some_and(|pressure| !pressure.is_zero())) {
        (false, _) => (t!("rig-what-a-new-nozzle-gives-is"), t!("rig-type-the-rating-of-the-nozzle")),
        (true, false) => (t!("rig-the-pressure-of-the-test-is"), t!("rig-type-the-pressure-at-the-nozzles")),
        (true, true) => (t!("rig-the-rating-of-the-nozzle-set"), t!("rig-mend-the-rating-of-the-nozzle")),
    };
    out.findings.push(
        Finding::note(measured.about.clone(), t!("rig-nothing-is-held-against-a-new", what = what), Basis::Arithmetic)
            .hint(hint),
    );
}
