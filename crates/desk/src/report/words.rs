//! What the plan says of rig and hours in words, for the screen and for the terminal.

use tankard_core::day::{RigDay, Slot};
use tankard_core::farm::Farm;
use tankard_core::finding::Basis;
use tankard_core::plan::Plan;
use tankard_core::quantity::{Duration, Quantity, Units};
use tankard_core::rig::rinse::{RinsePlan, RinseWay};
use tankard_core::rig::setting::{Classes, Fit, RankedSet, Setting, in_tenths};
use tankard_core::rig::work::Work;
use tankard_core::t;
use tankard_core::weather::hours::goes_on;
use tankard_core::weather::{Hours, Limit, Span, Verdict};
use tankard_core::words::{and, capital};

/// "coarse", or the two classes of which either may come.
pub fn class_words(classes: Option<Classes>) -> String {
    classes.map_or_else(|| t!("report-not-in-the-table").to_owned(), Classes::words)
}

/// "12 mph, 41 psi, coarse droplets".
pub fn figures(setting: &Setting, units: Units) -> String {
    let mut parts = vec![setting.speed.show(units)];
    parts.extend(setting.pressure.map(|pressure| pressure.show(units)));
    parts.extend(setting.classes.map(|classes| t!("report-droplets", classes = classes.words())));
    parts.extend(setting.duty_words().map(|duty| t!("report-valves-open", duty = duty)));
    parts.join(", ")
}

/// How well a set does the pass, in words.
pub fn fit_words(ranked: &RankedSet, units: Units) -> String {
    match (ranked.fit, ranked.speed) {
        (Fit::Suits, _) => t!("report-suits-as-planned").to_owned(),
        (Fit::AtAnotherSpeed, Some(speed)) => t!("report-suits-at", speed = speed.show(units)),
        (Fit::AtAnotherSpeed, None) => t!("report-suits-at-another-speed").to_owned(),
        (Fit::NotKnown, _) => t!("report-cannot-be-told").to_owned(),
        (Fit::No, _) => t!("report-does-not-suit").to_owned(),
    }
}

/// "Between 10.2 and 13.4 mph pressure stays between 30 and 52 psi and droplets coarse."
pub fn sentence(setting: &Setting, units: Units) -> String {
    if setting.curve.is_empty() && setting.pressure.is_none() {
        return t!("report-what-a-new-nozzle-delivers-is").to_owned();
    }
    let Some(speeds) = setting.speeds.and_then(|speeds| in_tenths(speeds, units)) else {
        return t!("report-at-no-speed-do-pressure-and").to_owned();
    };
    let (slowest, fastest) = (speeds.least.show(units), speeds.most.show(units));
    let at = if slowest == fastest {
        t!("report-at", slowest = slowest)
    } else {
        t!("report-between", ends = and(&slowest, &fastest))
    };
    let pressures = setting.pressures.map(|pressures| {
        let (least, most) = (pressures.least.show(units), pressures.most.show(units));
        if least == most {
            t!("report-pressure-stays-at", least = least)
        } else {
            t!("report-pressure-stays-between", ends = and(&least, &most))
        }
    });
    let allowed = || setting.curve.iter().filter(|point| point.allowed).filter_map(|point| point.classes);
    let classes = allowed()
        .map(|classes| classes.finest)
        .min()
        .zip(allowed().map(|classes| classes.coarsest).max())
        .map(|(finest, coarsest)| Classes { finest, coarsest });
    let droplets = classes.map(|classes| t!("report-droplets-classes", classes = classes.words()));
    let stay: Vec<String> = [pressures, droplets].into_iter().flatten().collect();
    t!("report-at-it-stays", at = at, stay = both(stay))
}

/// The times of a pass in words, each with its label.
pub fn work_figures(work: &Work, units: Units) -> Vec<(&'static str, String)> {
    let mut figures = vec![(t!("report-spraying-time"), work.spraying.show(units))];
    if !work.fills.is_empty() {
        let all: Duration = work.fills.iter().copied().sum();
        let all = all.show(units);
        let filling = match work.fills.as_slice() {
            [_] => all,
            fills => t!("report-filling-of-loads", time = all, fills = fills.len()),
        };
        figures.push((t!("report-filling-time"), filling));
    }
    figures.extend(work.road.map(|road| (t!("report-road-time"), road.show(units))));
    figures.push((t!("report-in-all-ac1"), work.total.show(units)));
    figures.push((t!("report-sprays-an-hour"), work.in_an_hour.show(units)));
    figures.extend(work.loads_an_hour.map(|loads| (t!("report-loads-an-hour"), format!("{loads:.1}"))));
    figures
}

/// Where the last of the spray goes.
pub fn last_ground(farm: &Farm, plan: &Plan, rinse: &RinsePlan) -> Option<String> {
    let ground = rinse.last_ground?;
    let field = plan.fields.last().and_then(|planned| farm.fields.get(&planned.field));
    let ground = ground.show(farm.units);
    Some(match field {
        Some(field) => t!("report-the-last-of-the-spray-would", ground = ground, name = field.name),
        None => t!("report-the-last-of-the-spray-would-anywhere", ground = ground),
    })
}

/// "3 times with 40 gal leaves 1.2 %", with who prints it.
pub fn rinse_way(way: &RinseWay, sources: &[&str], units: Units) -> String {
    let source = if sources.is_empty() { String::new() } else { format!(" ({})", sources.join("; ")) };
    let (rinses, left) = (rinses(way, units), share(way.left.to_percent()));
    if way.on_board {
        t!("report-leaves", rinses = rinses, to_percent = left, source = source)
    } else {
        t!("report-more-than-the-clean-water-tank", rinses = rinses, to_percent = left, source = source)
    }
}

/// The ways to rinse. The same way may be reckoned and printed; it stands once, with who prints it.
pub fn rinse_ways(rinse: &RinsePlan, units: Units) -> Vec<(&RinseWay, Vec<&str>)> {
    let mut ways: Vec<(&RinseWay, Vec<&str>)> = Vec::new();
    for way in &rinse.ways {
        let printed = (way.basis != Basis::Arithmetic).then(|| way.basis.source());
        // They are said alike.
        let same = |known: &RinseWay| {
            (known.on_board, known.rinses, known.each.show(units)) == (way.on_board, way.rinses, way.each.show(units))
        };
        match ways.iter_mut().find(|(known, _)| same(known)) {
            Some((_, sources)) => sources.extend(printed),
            None => ways.push((way, printed.into_iter().collect())),
        }
    }
    ways
}

/// "3 times with 40 gal".
pub fn rinses(way: &RinseWay, units: Units) -> String {
    t!("report-times-with", times = way.rinses, each = way.each.show(units))
}

/// "9.1 %", "0.42 %", "0.008 %": two figures.
pub fn share(percent: f64) -> String {
    let decimals = match percent {
        large if large >= 10.0 => 0,
        middle if middle >= 1.0 => 1,
        small if small >= 0.1 => 2,
        _ => 3,
    };
    format!("{percent:.decimals$} %")
}

/// The answer in a line: the best span, or why there is none.
pub fn answer(hours: &Hours, units: Units) -> String {
    let needs = hours.takes(units);
    let midnight = if hours.may_go_on() { format!(" {}.", capital(goes_on())) } else { String::new() };
    match (hours.best, hours.longest, needs) {
        (Some(best), _, Some(needs)) => t!("report-the-pass-takes", best = best.words(), needs = needs),
        (Some(best), _, None) => t!("report-how-long-the-pass-takes-is", best = best.words()),
        (None, Some((span, share)), Some(needs)) => t!(
            "report-no-span-is-long-enough-the",
            needs = needs,
            span = span.words(),
            to_percent = self::share(share.to_percent()),
            midnight = midnight
        ),
        (None, Some((span, _)), None) => t!("report-the-longest-span-is", span = span.words()),
        (None, None, _) => {
            let doubtful = hours.hours.iter().filter(|hour| hour.verdict == Verdict::Doubtful).count();
            match doubtful {
                0 => t!("report-no-hour-of-the-day-is").to_owned(),
                many => t!("report-no-hour-of-the-day-is-allowed-many-are", many = many),
            }
        }
    }
}

/// The spans of a day whose hours are judged alike: "05:00 to 09:00".
pub fn spans_of(hours: &Hours, verdict: Verdict) -> Vec<String> {
    hours
        .hours
        .chunk_by(|a, b| a.verdict == b.verdict)
        .filter_map(|run| Some((run.first()?, run.last()?)))
        .filter(|(first, _)| first.verdict == verdict)
        .map(|(first, last)| Span { from: first.at, to: last.span().to }.words())
        .collect()
}

/// The limits that bind hours of a verdict, with just that weight, each once.
pub fn binding(hours: &Hours, verdict: Verdict) -> Vec<String> {
    let mut binds: Vec<usize> = hours
        .hours
        .iter()
        .filter(|hour| hour.verdict == verdict)
        .flat_map(|hour| hour.binds.iter().filter(|(_, weight)| *weight == verdict).map(|(at, _)| *at))
        .collect();
    binds.sort_unstable();
    binds.dedup();
    binds.into_iter().filter_map(|at| hours.limits.get(at)).map(Limit::text).collect()
}

/// "06:10 to 07:10 allowed", or how long it takes where no clock can be told.
pub fn judged(slot: &Slot, units: Units) -> String {
    let time = slot.span.map(Span::words).or_else(|| slot.takes.map(|takes| takes.show(units)));
    let verdict = slot.verdict.map(|verdict| match slot.span {
        None if verdict == Verdict::Forbidden => t!("report-without-a-place"),
        _ => verdict.word(),
    });
    time.into_iter().chain(verdict.map(str::to_owned)).collect::<Vec<_>>().join(" ")
}

/// The place of a pass in its day, in sentences without the last full stop.
pub fn slot_words(slot: &Slot, units: Units) -> String {
    let cleaning = slot.clean_out.map(|time| t!("report-of-cleaning-before-it", time = time.show(units)));
    let travel = slot.travel.map(|time| t!("report-of-road-before-it", time = time.show(units)));
    let words = [judged(slot, units)].into_iter().chain(cleaning).chain(travel).chain([slot.why.clone()]);
    words.filter(|words| !words.is_empty()).collect::<Vec<_>>().join(". ")
}

/// "no clean-out", "2 clean-outs".
pub fn clean_outs(number: u32) -> String {
    t!("report-clean-outs", many = number)
}

/// What the order of a rig's passes comes to.
pub fn day_words(rig: &RigDay, units: Units) -> Vec<String> {
    let clean_outs = capital(&clean_outs(rig.cost.clean_outs));
    let ends = match (rig.leaves, rig.cost.home) {
        (Some(leaves), Some(home)) => {
            let [from, to] = Span { from: leaves, to: home }.ends();
            t!("report-out-at-home-at", from = from, to = to)
        }
        _ => t!("report-lasts-in-all", lasts = rig.cost.lasts.show(units)),
    };
    let order = t!(
        "report-for-cleaning-and-road",
        clean_outs = clean_outs,
        not_spraying = rig.cost.not_spraying.show(units),
        ends = ends
    );
    [order, rig.held.clone(), rig.proof.clone()].into_iter().filter(|words| !words.is_empty()).collect()
}

/// One and the other.
pub(super) fn both(words: Vec<String>) -> String {
    words.into_iter().reduce(|one, other| t!("report-one-and-other", one = one, other = other)).unwrap_or_default()
}
