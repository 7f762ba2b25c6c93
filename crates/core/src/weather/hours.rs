//! The hours of a day held against the limits of a pass, and the spans that are left.
//!
//! A pass is sprayed in one go: a span is a run of allowed hours without a gap in the forecast. The best one is the earliest that is
//! long enough: an early start keeps the rest of the day for what goes wrong. Where a label goes by the sun, an hour that the sun's
//! time cuts is forbidden as a whole in the list of hours, and its free part counts for the spans, to the minute inside.

use std::sync::Arc;

use jiff::civil::{Date, DateTime};

use super::limits::{self, Held, Kind};
use super::sky::{self, Outlook};
use super::sun::{self, Second};
use super::{Hours, JudgedHour, Limit, Span, Verdict};
use crate::farm::{Farm, Hour, Id, Pass};
use crate::finding::{Basis, Finding, Subject};
use crate::language::days::clock;
use crate::language::t;
use crate::plausible;
use crate::quantity::{Duration, Quantity, Share, Units};

/// A time with one verdict.
#[derive(Clone, Copy, Debug)]
pub(crate) struct Free {
    pub(crate) from: Second,
    pub(crate) to: Second,
    pub(crate) verdict: Verdict,
}

/// The hours of a day, judged, and what they leave, in order of time.
pub(crate) fn judge_hours(outlook: &Outlook, limits: &[Limit], day: Date) -> (Vec<JudgedHour>, Vec<Free>) {
    let Some((from, to)) = sun::day_ends(&outlook.zone, day) else { return (Vec::new(), Vec::new()) };
    let mut judged = Vec::with_capacity(25);
    let mut free = Vec::with_capacity(25);
    let mut binds = Vec::new();
    let first = outlook.hours.partition_point(|hour| hour.from < from);
    for (at, hour) in outlook.hours.iter().enumerate().skip(first).take_while(|(_, hour)| hour.from < to) {
        binds.clear();
        // What of it lies in the next day counts there, and the hours of that day are not looked at.
        let whole = (hour.from, hour.to.min(to));
        let mut part = whole;
        let mut in_part = Verdict::Allowed;
        for (place, limit) in limits.iter().enumerate() {
            // Where the air of the hour does not tell whether the limit speaks, the hour is in doubt.
            let outside = match limits::speaks_in(limit, &hour.air) {
                Some(true) => limit.outside,
                Some(false) => continue,
                None => Verdict::Doubtful,
            };
            let verdict = match limits::held(&limit.kind, outlook, at, hour) {
                Held::Outside => outside,
                Held::Likely => Verdict::Doubtful,
                Held::Unknown if limit.asks => Verdict::Doubtful,
                Held::Inside | Held::Unknown => continue,
                Held::Part(from, to) => {
                    part = (part.0.max(from), part.1.min(to));
                    // Where it is in doubt whether the statement speaks, the whole hour is in doubt.
                    if outside == Verdict::Doubtful {
                        in_part = in_part.max(Verdict::Doubtful);
                    }
                    binds.push((place, outside));
                    continue;
                }
            };
            in_part = in_part.max(verdict);
            binds.push((place, verdict));
        }
        binds.sort_by_key(|(_, verdict)| std::cmp::Reverse(*verdict));
        let verdict = binds.iter().map(|(_, verdict)| *verdict).max().unwrap_or(Verdict::Allowed);
        let cut = part != whole && in_part != Verdict::Forbidden;
        let (from, to) = if cut { (inward(part.0), part.1.div_euclid(60) * 60) } else { whole };
        let usable = if cut { in_part } else { verdict };
        if from < to {
            free.push(Free { from, to, verdict: usable });
        }
        let part = if cut && from < to { span(outlook, from, to).map(|span| (span, usable)) } else { None };
        let lasts = Duration::from_seconds((hour.to - hour.from) as f64);
        judged.push(JudgedHour { at: hour.sky.at, again: hour.sky.again, lasts, verdict, binds: binds.clone(), part });
    }
    (judged, free)
}

/// The next whole minute.
fn inward(second: Second) -> Second {
    -(-second).div_euclid(60) * 60
}

pub(crate) fn span(outlook: &Outlook, from: Second, to: Second) -> Option<Span> {
    Some(Span { from: sun::civil(&outlook.zone, from)?, to: sun::civil(&outlook.zone, to)? })
}

/// Runs of time no worse than a verdict, not before a second, in order.
pub(crate) fn runs(free: &[Free], worst: Verdict, not_before: Second) -> Vec<(Second, Second)> {
    let mut runs: Vec<(Second, Second)> = Vec::new();
    for free in free.iter().filter(|free| free.verdict <= worst && free.to > not_before) {
        let from = free.from.max(not_before);
        match runs.last_mut() {
            Some(last) if last.1 >= from => last.1 = last.1.max(free.to),
            _ => runs.push((from, free.to)),
        }
    }
    runs
}

/// The hours of a day for a pass that takes a time and does not begin before another.
pub(crate) fn of_day(
    outlook: &Outlook,
    limits: &Arc<[Limit]>,
    day: Date,
    needs: Option<Duration>,
    start: Option<jiff::civil::Time>,
) -> Hours {
    let (hours, free) = judge_hours(outlook, limits, day);
    let needs = needs.filter(|needs| !needs.is_zero());
    let not_before = start.and_then(|start| sun::second(&outlook.zone, day.to_datetime(start), false));
    let runs = runs(&free, Verdict::Allowed, not_before.unwrap_or(Second::MIN));
    let length = |run: &(Second, Second)| Duration::from_seconds((run.1 - run.0) as f64);
    // The first of the longest.
    let longest = runs.iter().rev().max_by_key(|run| run.1 - run.0);
    let best = match needs {
        Some(needs) => runs.iter().find(|run| !needs.exceeds(length(run))),
        None => longest,
    };
    let span = |run: &(Second, Second)| span(outlook, run.0, run.1);
    let lacking = longest.filter(|_| best.is_none()).and_then(|run| {
        let fits = length(run).ratio(needs?)?;
        Some((span(run)?, Share::from_fraction(fits)))
    });
    Hours {
        limits: Arc::clone(limits),
        hours,
        needs,
        best: best.and_then(span),
        longest: lacking,
        counted: "",
        sun: outlook.sun(day),
    }
}

/// The hours of a pass on each day of a forecast, as if it were sprayed on that day: its limits are gathered once, and its laws are
/// those of its own day.
pub fn judge_days(farm: &Farm, outlook: &Outlook, pass: &Pass, needs: Option<Duration>) -> Vec<(Date, Hours)> {
    let limits = limits::of(farm, pass).into();
    outlook.days().into_iter().map(|day| (day, of_day(outlook, &limits, day, needs, None))).collect()
}

/// The hours in which a pass may be sprayed on its day; `counted` says what its time holds beside spraying.
pub(crate) fn judge(
    farm: &Farm,
    pass_id: &Id,
    pass: &Pass,
    needs: Option<Duration>,
    counted: &'static str,
    findings: &mut Vec<Finding>,
) -> Hours {
    if let Some(misfit) = farm.place.as_ref().and_then(|place| sun::misfit(place, pass.date)) {
        let text = t!("weather-so-sunrise-sunset-and-inversions-by", text = misfit.text);
        let offers = farm.place.as_ref().map(|place| plausible::for_zone(place, pass.date)).unwrap_or_default();
        findings.push(Finding::check(Subject::Farm, text, Basis::Arithmetic).hint(misfit.hint).offering(offers));
    }
    let outlook = Outlook::of_days(farm, pass.date, pass.date);
    if !super::covers(farm, pass.date) {
        return Hours { needs, counted, sun: outlook.sun(pass.date), ..Hours::default() };
    }
    let limits = limits::of(farm, pass).into();
    let hours = Hours { counted, ..of_day(&outlook, &limits, pass.date, needs, pass.start) };
    say(farm, pass_id, pass, &outlook, &hours, findings);
    hours
}

/// What there is to say of the hours of a day that the forecast tells of.
fn say(farm: &Farm, pass_id: &Id, pass: &Pass, outlook: &Outlook, hours: &Hours, findings: &mut Vec<Finding>) {
    let about = || Subject::Pass(pass_id.clone());
    if let Some(problem) = no_sun(farm, outlook, pass.date)
        && let Some(limit) = hours
            .limits
            .iter()
            .find(|limit| limit.asks && matches!(limit.kind, Kind::Daylight { .. } | Kind::NoInversion))
    {
        findings.push(
            Finding::check(
                Subject::Farm,
                t!("weather-sunrise-and-sunset-cannot-be-told", basis = limit.basis),
                limit.basis.clone(),
            )
            .hint(format!("{problem}.")),
        );
    }
    let day = pass.date;
    slips(farm, day, findings);
    if !hours.hours.iter().any(JudgedHour::leaves_time) {
        let binding = most_binding(hours);
        let doubtful = hours.hours.iter().filter(|hour| hour.verdict == Verdict::Doubtful).count();
        let text = t!(
            "weather-no-hour-of-is-allowed-in",
            day = day,
            doubtful = doubtful,
            limit = binding.map_or_else(String::new, |(limit, _)| limit.text()),
            count = binding.map_or(0, |(_, count)| count),
            hours = hours.hours.len()
        );
        let basis = binding.map_or(Basis::Arithmetic, |(limit, _)| limit.basis.clone());
        findings.push(Finding::check(about(), text, basis).hint(later(farm, pass, hours.needs)));
        return;
    }
    if let Some((span, share)) = &hours.longest {
        let needs = hours.takes(farm.units).unwrap_or_default();
        let (span, floor) = (span.words(), Share::from_percent(share.to_percent().floor()).show(farm.units));
        let text = if hours.may_go_on() {
            t!(
                "weather-the-longest-span-may-go-on",
                needs = needs,
                day = day,
                span = span,
                floor = floor,
                goes_on = goes_on()
            )
        } else {
            t!("weather-the-pass-takes-the-longest-span", needs = needs, day = day, span = span, floor = floor)
        };
        findings.push(
            Finding::check(about(), text, Basis::Arithmetic)
                .hint(t!("weather-split-the-pass-or-move-it", later = later(farm, pass, hours.needs))),
        );
    }
    if let Some(start) = pass.start {
        let at = day.to_datetime(start);
        let hour = hours.hours.iter().rev().find(|hour| hour.at <= at);
        let inside = |hour: &JudgedHour| match hour.part {
            Some((part, verdict)) if part.from <= at && at < part.to => verdict,
            _ => hour.verdict,
        };
        let begins = clock(start);
        let (text, basis) = match hour.filter(|hour| at < end_of(hour.at)) {
            None => (t!("weather-the-pass-is-to-begin-at", start = begins), Basis::Arithmetic),
            Some(hour) if inside(hour) == Verdict::Allowed => return,
            Some(hour) => {
                let first = hour.binds.first().and_then(|(place, _)| hours.limits.get(*place));
                let because = hours.reasons(outlook, hour, farm.units).into_iter().next().unwrap_or_default();
                let verdict = hour.verdict.word();
                let text = if because.is_empty() {
                    t!("weather-the-pass-begins-in-an-hour-that-is", start = begins, verdict = verdict)
                } else {
                    t!(
                        "weather-the-pass-begins-in-an-hour-that-is-because",
                        start = begins,
                        verdict = verdict,
                        because = because
                    )
                };
                (text, first.map_or(Basis::Arithmetic, |limit| limit.basis.clone()))
            }
        };
        let hint = hours.best.map_or_else(String::new, |span| t!("weather-allowed-from", span = span.words()));
        findings.push(Finding::check(about(), text, basis).hint(hint));
    }
}

/// Figures of a day that cannot be.
fn slips(farm: &Farm, day: Date, findings: &mut Vec<Finding>) {
    let is_slip = |hour: &&Hour| hour.humidity.as_ref().is_some_and(|humidity| !sky::can_be(humidity.value()));
    let mut wrong = farm.forecast.hours.iter().filter(|hour| hour.at.date() == day).filter(is_slip);
    let Some((first, humidity)) = wrong.next().and_then(|hour| Some((hour, hour.humidity.as_ref()?))) else { return };
    let others = wrong.count();
    findings.push(
        Finding::check(
            Subject::Farm,
            t!(
                "weather-the-forecast-has-a-humidity-of",
                humidity = humidity,
                time = clock(first.at),
                day = day,
                others = others
            ),
            Basis::Arithmetic,
        )
        .hint(t!("weather-mend-it-with-the-hours-of")),
    );
}

fn end_of(hour: DateTime) -> DateTime {
    hour.saturating_add(jiff::SignedDuration::from_hours(1))
}

/// Why the sun cannot be told, and what to do; `None` where it can, and where place and zone contradict one another, which is told by
/// itself.
fn no_sun(farm: &Farm, outlook: &Outlook, day: Date) -> Option<String> {
    let place = farm.place.clone().unwrap_or_default();
    if outlook.knows_the_sun() || sun::misfit(&place, day).is_some() {
        return None;
    }
    place
        .position()
        .err()
        .or_else(|| sun::zone(&place).err())
        .or_else(|| Some(t!("weather-that-day-is-out-of-reach").to_owned()))
}

/// The limit that most hours fail at, with how many.
fn most_binding(hours: &Hours) -> Option<(&Limit, usize)> {
    let count = |place: usize| {
        hours
            .hours
            .iter()
            .filter(|hour| hour.binds.iter().any(|(bound, verdict)| *bound == place && *verdict == hour.verdict))
            .count()
    };
    let (limit, count) = hours
        .limits
        .iter()
        .enumerate()
        .map(|(place, limit)| (limit, count(place)))
        .rev()
        .max_by_key(|(_, count)| *count)?;
    (count > 0).then_some((limit, count))
}

/// How many days ahead are looked through. A forecast reaches no further; one hour with its year typed wrong would have the sun
/// reckoned for each day of a thousand years.
const AHEAD: i64 = 31;

/// The first later day of the forecast that has a span long enough.
fn later(farm: &Farm, pass: &Pass, needs: Option<Duration>) -> String {
    let Some(last) = farm.forecast.hours.iter().map(|hour| hour.at.date()).max() else { return String::new() };
    let Ok(first) = pass.date.tomorrow() else { return String::new() };
    let last = last.min(first.saturating_add(jiff::Span::new().days(AHEAD)));
    let outlook = Outlook::of_days(farm, first, last);
    for day in outlook.days() {
        // Another day may have other laws.
        let on_that_day = Pass { date: day, start: None, ..pass.clone() };
        let hours = of_day(&outlook, &limits::of(farm, &on_that_day).into(), day, needs, None);
        if let Some(span) = hours.best {
            return t!("weather-the-forecast-allows-it-on", day = day, span = span.words());
        }
    }
    if outlook.hours.is_empty() {
        t!("weather-the-forecast-ends-with-this-day").to_owned()
    } else {
        t!("weather-no-later-day-of-the-forecast").to_owned()
    }
}

impl JudgedHour {
    /// From when to when it is.
    pub fn span(&self) -> Span {
        #[allow(clippy::cast_possible_truncation)] // An hour at most.
        let lasts = jiff::SignedDuration::from_secs(self.lasts.to_seconds().round() as i64);
        Span { from: self.at, to: self.at.saturating_add(lasts) }
    }

    /// Whether it is allowed, wholly or in its part.
    pub fn leaves_time(&self) -> bool {
        self.verdict == Verdict::Allowed || self.part.is_some_and(|(_, verdict)| verdict == Verdict::Allowed)
    }
}

/// What there is to know of a span that ends with its day.
pub fn goes_on() -> &'static str {
    t!("weather-the-last-span-ends-with-the-day")
}

impl Hours {
    /// How long the pass takes and what that counts: "3 h 28 min, filling and road counted". `None` where it is not known.
    pub fn takes(&self, units: Units) -> Option<String> {
        let time = self.needs?.show(units);
        Some(if self.counted.is_empty() { time } else { t!("weather-takes-with", time = time, counted = self.counted) })
    }

    /// Whether no span is long enough, and the last one might go on past midnight.
    pub fn may_go_on(&self) -> bool {
        let ends_its_day = |hour: &JudgedHour| hour.span().to.date() > hour.at.date();
        self.longest.is_some()
            && self.hours.last().is_some_and(|last| ends_its_day(last) && last.verdict == Verdict::Allowed)
    }

    /// Why an hour is bound, with its own figures, beside its `binds`. Made when it is asked for.
    pub fn reasons(&self, outlook: &Outlook, hour: &JudgedHour, units: Units) -> Vec<String> {
        let Some((at, seen)) =
            outlook.hours.iter().enumerate().find(|(_, seen)| seen.sky.at == hour.at && seen.sky.again == hour.again)
        else {
            return Vec::new();
        };
        hour.binds
            .iter()
            .filter_map(|(place, _)| Some(limits::reason(self.limits.get(*place)?, outlook, at, seen, units)))
            .collect()
    }
}
