//! The best order of jobs for one machine, whatever the jobs are: times on one line in whole seconds, nothing of a farm.
//!
//! Every job has a place in the order and is either done there or left out. A job is done in one go, inside one of its runs of
//! time; between two jobs lies what the change takes. Costs are compared one after another, the weightiest first ([`Cost`]), and
//! none is ever weighed against another.
//!
//! Up to [`EXACT`] jobs the order is the best there is. For each set of jobs behind and each job last done, all ways are kept of
//! which none is both cheaper and sooner free than another: dynamic programming after M. Held and R. M. Karp, A dynamic
//! programming approach to sequencing problems, Journal of the Society for Industrial and Applied Mathematics 10 (1962), 196.
//! A larger number is ordered by insertion and exchange, and said to be so with a cost that no order can be below: the shortest
//! arborescence after J. Edmonds, Optimum branchings, Journal of Research of the National Bureau of Standards 71B (1967), 233.

use std::cmp::Ordering;

use crate::progress::{Tell, untold};

/// So many jobs are ordered exactly.
pub const EXACT: usize = 12;

/// A point or a length on the line of time, in whole seconds.
pub type Second = i64;

/// A time from and to.
pub type Run = (Second, Second);

/// Longer than any change between two jobs, in seconds: about half a year.
const LONGEST: Second = 1 << 24;

/// A job.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Job {
    /// How long it takes.
    pub takes: Second,
    /// It does not begin before.
    pub not_before: Option<Second>,
    /// Runs of time in which it may be done, in order and apart.
    pub allowed: Vec<Run>,
    /// Runs of time in which it may be done if need be, those allowed among them, in order and apart.
    pub possible: Vec<Run>,
    /// The place in the order that it is held at, from 1.
    pub held: Option<usize>,
}

/// What lies between two jobs, or before the first.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct Change {
    /// How long it takes, of which no job is done; at most half a year.
    pub takes: Second,
    /// Whether the machine is cleaned out in it.
    pub clean_out: bool,
    /// Whether traces of the job before would hurt the one after.
    pub hurts: bool,
    /// Whether the one after goes on with what another job leaves, which is not the one before.
    pub parted: bool,
}

/// What is to be put in order.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Problem {
    /// The jobs.
    pub jobs: Vec<Job>,
    /// Before the first job: one for each.
    pub first: Vec<Change>,
    /// From a job (outer) to another (inner).
    pub between: Vec<Vec<Change>>,
    /// The way home from each.
    pub home: Vec<Second>,
    /// Nothing begins before.
    pub from: Second,
    /// Home by then, where that is so.
    pub to: Option<Second>,
}

/// What an order costs. The first that differs decides.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, PartialOrd, Ord)]
pub struct Cost {
    /// Jobs that are left out.
    pub left_out: u32,
    /// Jobs that do not come right after the one that they go on from.
    pub parted: u32,
    /// Jobs outside their allowed time.
    pub doubtful: u32,
    /// Jobs that come after one whose traces hurt them.
    pub hurts: u32,
    /// Clean-outs.
    pub clean_outs: u32,
    /// Time in which no job is done, waiting not counted.
    pub changes: Second,
    /// When the machine is home.
    pub ends: Second,
}

/// A job in its place.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Placed {
    /// Which.
    pub job: usize,
    /// When it begins; `None` where it is left out.
    pub starts: Option<Second>,
    /// Whether that is outside its allowed time.
    pub doubtful: bool,
}

/// An order.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Order {
    /// The jobs one after another, those left out among them.
    pub places: Vec<Placed>,
    /// What it costs.
    pub cost: Cost,
    /// What no order can be below; `None` where this one is proven to be the best.
    pub least: Option<Cost>,
}

impl Order {
    /// The jobs that find a place, with when they begin.
    pub(super) fn placed(&self) -> impl DoubleEndedIterator<Item = (Placed, Second)> {
        self.places.iter().filter_map(|place| Some((*place, place.starts?)))
    }
}

impl Cost {
    /// In one number, so that sums and comparisons are quick; when the machine is home is not in it. Right for up to [`EXACT`] jobs.
    fn packed(self) -> u64 {
        let part = |count: u32, at: u32| u64::from(count) << at;
        part(self.left_out, 56)
            + part(self.parted, 52)
            + part(self.doubtful, 48)
            + part(self.hurts, 40)
            + part(self.clean_outs, 32)
            + u64::try_from(self.changes).unwrap_or_default()
    }

    /// The same with room for any number of jobs.
    fn wide(self) -> i128 {
        let part = |count: u32, at: u32| i128::from(count) << at;
        part(self.left_out, 112)
            + part(self.parted, 88)
            + part(self.doubtful, 72)
            + part(self.hurts, 56)
            + part(self.clean_outs, 40)
            + i128::from(self.changes)
    }

    fn from_wide(wide: i128) -> Self {
        let part = |at: u32| u32::try_from((wide >> at) & 0xFFFF).unwrap_or(u32::MAX);
        Self {
            left_out: part(112),
            parted: part(88),
            doubtful: part(72),
            hurts: part(56),
            clean_outs: part(40),
            changes: Second::try_from(wide & 0xFF_FFFF_FFFF).unwrap_or(Second::MAX),
            ends: Second::MIN,
        }
    }

    /// Weighs less than a job left out and more than all else, in the wide number: a job that nothing comes before.
    const COMES_FIRST: i128 = 1 << 104;

    const LEFT_OUT: Self = Self { left_out: 1, parted: 0, doubtful: 0, hurts: 0, clean_outs: 0, changes: 0, ends: 0 };
}

impl Change {
    fn seconds(self) -> Second {
        self.takes.clamp(0, LONGEST)
    }

    fn cost(self) -> Cost {
        Cost {
            parted: u32::from(self.parted),
            hurts: u32::from(self.hurts),
            clean_outs: u32::from(self.clean_out),
            changes: self.seconds(),
            ..Cost::default()
        }
    }
}

impl Job {
    fn takes(&self) -> Second {
        self.takes.max(0)
    }

    /// The earliest time in one of the runs from which the whole job fits into it.
    fn earliest(&self, runs: &[Run], at: Second) -> Option<Second> {
        let at = self.not_before.map_or(at, |not_before| at.max(not_before));
        runs.iter().map(|(from, to)| (at.max(*from), *to)).find(|(from, to)| to - from >= self.takes()).map(|run| run.0)
    }
}

impl Problem {
    /// What lies before a job that comes after another, or first.
    pub(super) fn change(&self, before: Option<usize>, job: usize) -> Change {
        let row = before.map_or(Some(&self.first), |before| self.between.get(before));
        row.and_then(|row| row.get(job)).copied().unwrap_or_default()
    }

    /// The way home from the job done last.
    pub(super) fn way_home(&self, last: Option<usize>) -> Second {
        last.and_then(|last| self.home.get(last)).map_or(0, |home| (*home).clamp(0, LONGEST))
    }

    fn in_time(&self, ends: Second) -> bool {
        self.to.is_none_or(|to| ends <= to)
    }

    /// The places with who is held there; a second one held at the same, or one beyond the last, is held nowhere.
    fn held(&self) -> Vec<Option<usize>> {
        let mut held = vec![None; self.jobs.len()];
        for (job, at) in self.jobs.iter().enumerate().filter_map(|(job, held)| Some((job, held.held?))) {
            if let Some(place @ None) = at.checked_sub(1).and_then(|at| held.get_mut(at)) {
                *place = Some(job);
            }
        }
        held
    }

    /// The same with every job held where an order has it.
    #[must_use]
    pub fn held_as(&self, order: &[usize]) -> Self {
        let mut problem = self.clone();
        for (at, job) in order.iter().enumerate() {
            if let Some(job) = problem.jobs.get_mut(*job) {
                job.held = Some(at + 1);
            }
        }
        problem
    }
}

/// The best order, or for more than [`EXACT`] jobs a good one with what none can be below.
pub fn solve(problem: &Problem) -> Order {
    solve_told(problem, &untold)
}

/// The same, told how many orders are tried where there are so many jobs that it takes long. Where it is ended, the order is the best of those
/// tried till then.
pub(super) fn solve_told(problem: &Problem, tell: &Tell<'_>) -> Order {
    if problem.jobs.len() <= EXACT { exact(problem) } else { search_told(problem, tell) }
}

/// How a job came to its place.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum How {
    Allowed,
    Doubtful,
    LeftOut,
}

/// A way to have some jobs behind.
#[derive(Clone, Copy, Debug)]
struct Way {
    cost: u64,
    /// When the machine is free.
    free: Second,
    /// The way it goes on from.
    before: u32,
    /// The next way with the same jobs behind and the same last one.
    next: u32,
    job: u8,
    how: How,
}

const NONE: u32 = u32::MAX;

/// All ways, in lists by the set of jobs behind and the one last done.
struct Ways {
    all: Vec<Way>,
    heads: Vec<u32>,
}

impl Ways {
    /// Keeps a way unless another is no dearer and no later free; drops those that are no better than it.
    fn keep(&mut self, state: usize, way: Way) {
        let Some(head) = self.heads.get(state).copied() else { return };
        let (mut at, mut last) = (head, NONE);
        while let Some(other) = self.all.get(at as usize).copied() {
            if other.cost <= way.cost && other.free <= way.free {
                return;
            }
            if way.cost <= other.cost && way.free <= other.free {
                self.link(state, last, other.next);
            } else {
                last = at;
            }
            at = other.next;
        }
        let Ok(new) = u32::try_from(self.all.len()) else { return };
        let head = self.heads.get(state).copied().unwrap_or(NONE);
        self.all.push(Way { next: head, ..way });
        self.link(state, NONE, new);
    }

    fn link(&mut self, state: usize, last: u32, to: u32) {
        match self.all.get_mut(last as usize) {
            Some(last) => last.next = to,
            None => {
                if let Some(head) = self.heads.get_mut(state) {
                    *head = to;
                }
            }
        }
    }
}

/// What the jobs ahead cost at the least.
struct Ahead {
    /// For each set of jobs behind: what the jobs ahead cost with any of all that may come before each, each kind reached anew.
    sums: Vec<u64>,
    /// For each set of jobs behind: the kinds that are ahead.
    kinds: Vec<usize>,
    /// For each job its kind and what it costs at the least to come to that from another kind.
    of: Vec<(usize, u64)>,
}

impl Ahead {
    /// Jobs are of one kind where any chain of changes without a clean-out joins them; so to come from one kind to another there is
    /// one.
    fn of(problem: &Problem, changes: &[Vec<(u64, Second)>], (left_out, doubt): (u64, u64)) -> Self {
        let n = problem.jobs.len();
        let can =
            |job: usize| problem.jobs.get(job).is_some_and(|of| of.earliest(&of.possible, problem.from).is_some());
        let cleans = |one: usize, other: usize| problem.change(Some(one), other).clean_out;
        let mut kind: Vec<usize> = (0..n).collect();
        for (one, other) in (0..n).flat_map(|one| (0..one).map(move |other| (one, other))) {
            if let (Some(&from), Some(&to)) = (kind.get(one), kind.get(other))
                && !(cleans(one, other) && cleans(other, one))
            {
                for kind in kind.iter_mut().filter(|kind| **kind == from) {
                    *kind = to;
                }
            }
        }
        let same = |one: usize, other: usize| kind.get(one) == kind.get(other);
        let least = |job: usize, before: &dyn Fn(usize) -> bool| {
            let rows = changes.iter().enumerate().filter(|(row, _)| *row != job && before(*row));
            rows.filter_map(|(_, row)| row.get(job)).map(|change| change.0).min()
        };
        let cost_of: Vec<u64> = (0..n)
            .map(|job| match problem.jobs.get(job) {
                Some(of) if can(job) => {
                    let doubt = if of.earliest(&of.allowed, problem.from).is_none() { doubt } else { 0 };
                    least(job, &|row| row < n).unwrap_or_default() + doubt
                }
                _ => left_out,
            })
            .collect();
        // How much more it is to come from another kind, at the job of the kind where that is least.
        let more = |job: usize| {
            let from_another = least(job, &|row| row < n && !same(row, job))?;
            Some(from_another - least(job, &|row| row < n)?)
        };
        let of: Vec<(usize, u64)> = (0..n)
            .map(|job| {
                let least = (0..n).filter(|other| same(job, *other) && can(*other)).filter_map(more).min();
                (kind.get(job).map_or(0, |kind| 1 << kind), least.unwrap_or_default())
            })
            .collect();
        let (mut sums, mut kinds) = (Vec::with_capacity(1 << n), Vec::with_capacity(1 << n));
        for behind in 0..1_usize << n {
            let (mut sum, mut all) = (0, 0_usize);
            for job in (0..n).filter(|job| behind & (1 << job) == 0) {
                sum += cost_of.get(job).copied().unwrap_or_default();
                if let Some(&(kind, more)) = of.get(job).filter(|_| can(job)) {
                    sum += if all & kind == 0 { more } else { 0 };
                    all |= kind;
                }
            }
            sums.push(sum);
            kinds.push(all);
        }
        Self { sums, kinds, of }
    }

    /// What is ahead costs at the least, with a set of jobs behind and one of them done last, or none.
    fn least(&self, behind: usize, last: usize) -> u64 {
        let (sum, kinds) = (self.sums.get(behind).copied(), self.kinds.get(behind).copied());
        let (Some(sum), Some(kinds)) = (sum, kinds) else { return 0 };
        match self.of.get(last) {
            Some((kind, more)) if kinds & kind != 0 => sum - more,
            Some(_) => sum,
            // From the beginning any kind may be the first.
            None => 0,
        }
    }
}

/// The best order of up to [`EXACT`] jobs.
fn exact(problem: &Problem) -> Order {
    let n = problem.jobs.len();
    let states = n + 1;
    let held = problem.held();
    let last_held = held.iter().rposition(Option::is_some).map_or(0, |at| at + 1);
    let is_held: usize = held.iter().flatten().map(|job| 1 << job).sum();
    let doubt = Cost { doubtful: 1, ..Cost::default() }.packed();
    let left_out = Cost::LEFT_OUT.packed();
    let changes: Vec<Vec<(u64, Second)>> = (0..=n)
        .map(|before| {
            let of = |job| problem.change((before < n).then_some(before), job);
            (0..n).map(|job| (of(job).cost().packed(), of(job).seconds())).collect()
        })
        .collect();
    let full = (1_usize << n) - 1;
    let ahead = Ahead::of(problem, &changes, (left_out, doubt));
    // Nothing dearer than an order at hand is looked at.
    let at_hand = improved(problem, &held, 2, &untold).0.packed();
    let mut ways = Ways { all: Vec::new(), heads: vec![NONE; (full + 1) * states] };
    let begin = Way { cost: 0, free: problem.from, before: NONE, next: NONE, job: 0, how: How::LeftOut };
    ways.keep(n, begin);
    let mut best: Option<((u64, Second), u32)> = None;
    for behind in 0..=full {
        let count = behind.count_ones() as usize;
        let here = held.get(count).copied().flatten();
        let next: Vec<usize> = (0..n)
            .filter(|job| behind & (1 << job) == 0)
            .filter(|job| here.map_or(is_held & (1 << job) == 0, |held| held == *job))
            .collect();
        let rest = left_out * (n - count) as u64;
        for last in 0..states {
            let mut at = ways.heads.get(behind * states + last).copied().unwrap_or(NONE);
            while let Some(way) = ways.all.get(at as usize).copied() {
                let home = problem.way_home((last < n).then_some(last));
                let key = (way.cost + rest + home.unsigned_abs(), way.free + home);
                if problem.in_time(key.1) && best.is_none_or(|(known, _)| key < known) {
                    best = Some((key, at));
                }
                for &job in &next {
                    let (Some(of), Some(&(change, takes))) =
                        (problem.jobs.get(job), changes.get(last).and_then(|row| row.get(job)))
                    else {
                        continue;
                    };
                    let Ok(number) = u8::try_from(job) else { continue };
                    let next = Way { before: at, job: number, ..way };
                    let after = behind | (1 << job);
                    let state = after * states;
                    let cost = way.cost + change;
                    let ready = way.free + takes;
                    let least = ahead.least(after, job);
                    let allowed = of.earliest(&of.allowed, ready);
                    if let Some(starts) = allowed.filter(|_| cost + least <= at_hand) {
                        let free = starts + of.takes();
                        ways.keep(state + job, Way { cost, free, how: How::Allowed, ..next });
                    }
                    let possible = of.earliest(&of.possible, ready);
                    let sooner = possible.filter(|starts| allowed.is_none_or(|allowed| *starts < allowed));
                    if let Some(starts) = sooner.filter(|_| cost + doubt + least <= at_hand) {
                        let free = starts + of.takes();
                        ways.keep(state + job, Way { cost: cost + doubt, free, how: How::Doubtful, ..next });
                    }
                    // Leaving one out can wait to the end, but where others are held at later places.
                    if count < last_held && way.cost + left_out + ahead.least(after, last) <= at_hand {
                        ways.keep(state + last, Way { cost: way.cost + left_out, how: How::LeftOut, ..next });
                    }
                }
                at = way.next;
            }
        }
    }
    let mut places = Vec::with_capacity(n);
    let mut behind = 0_usize;
    let mut at = best.map_or(NONE, |(_, at)| at);
    while let Some(way) = ways.all.get(at as usize).filter(|way| way.before != NONE) {
        let job = usize::from(way.job);
        behind |= 1 << job;
        let starts = (way.how != How::LeftOut).then(|| way.free - problem.jobs.get(job).map_or(0, Job::takes));
        places.push(Placed { job, starts, doubtful: way.how == How::Doubtful });
        at = way.before;
    }
    places.reverse();
    let rest: Vec<usize> = (0..n).filter(|job| behind & (1 << job) == 0).collect();
    fill_up(&mut places, &held, &rest);
    Order { cost: cost_of(problem, &places), places, least: None }
}

/// Puts those left out behind the others, but those that are held into their places.
fn fill_up(places: &mut Vec<Placed>, held: &[Option<usize>], rest: &[usize]) {
    let mut free = rest.iter().filter(|job| !held.contains(&Some(**job)));
    for at in places.len()..held.len() {
        let job = held.get(at).copied().flatten().or_else(|| free.next().copied());
        places.extend(job.map(|job| Placed { job, starts: None, doubtful: false }));
    }
}

/// What an order costs, added up anew.
fn cost_of(problem: &Problem, places: &[Placed]) -> Cost {
    let mut cost = Cost { ends: problem.from, ..Cost::default() };
    let mut last = None;
    for place in places {
        let Some(starts) = place.starts else {
            cost.left_out += 1;
            continue;
        };
        let change = problem.change(last, place.job).cost();
        cost.parted += change.parted;
        cost.doubtful += u32::from(place.doubtful);
        cost.hurts += change.hurts;
        cost.clean_outs += change.clean_outs;
        cost.changes += change.changes;
        cost.ends = starts + problem.jobs.get(place.job).map_or(0, Job::takes);
        last = Some(place.job);
    }
    let home = problem.way_home(last);
    cost.changes += home;
    cost.ends += home;
    cost
}

/// A good order of any number of jobs, with what no order can be below.
pub fn search(problem: &Problem) -> Order {
    search_told(problem, &untold)
}

fn search_told(problem: &Problem, tell: &Tell<'_>) -> Order {
    let held = problem.held();
    let (cost, places) = improved(problem, &held, 4, tell);
    let least = least(problem, cost);
    Order { places, cost, least: (least < cost).then_some(least) }
}

/// How many ways to go through one order are followed side by side.
const SIDE_BY_SIDE: usize = 6;

/// Goes through the jobs in an order, each in allowed time or sooner in doubtful time, and left out only where it has neither. Of
/// the ways to do that the cheapest so far are followed.
fn walk(problem: &Problem, order: &[usize], places: &mut Vec<Placed>) -> Cost {
    // A way: its cost, with when the machine is free in place of the end; the job last done; its last step.
    let mut ways = vec![(Cost { ends: problem.from, ..Cost::default() }, None, usize::MAX)];
    let mut steps: Vec<(Placed, usize)> = Vec::with_capacity(order.len() * SIDE_BY_SIDE);
    let mut next = Vec::new();
    for &job in order {
        let Some(of) = problem.jobs.get(job) else { continue };
        let home = problem.way_home(Some(job));
        next.clear();
        for &(cost, last, before) in &ways {
            let change = problem.change(last, job);
            let ready = cost.ends + change.seconds();
            let fits = |runs| of.earliest(runs, ready).filter(|starts| problem.in_time(starts + of.takes() + home));
            let allowed = fits(&of.allowed);
            let sooner = fits(&of.possible).filter(|starts| allowed.is_none_or(|allowed| *starts < allowed));
            if allowed.or(sooner).is_none() {
                steps.push((Placed { job, starts: None, doubtful: false }, before));
                next.push((Cost { left_out: cost.left_out + 1, ..cost }, last, steps.len() - 1));
            }
            for (starts, doubtful) in
                allowed.map(|starts| (starts, false)).into_iter().chain(sooner.map(|starts| (starts, true)))
            {
                let more = change.cost();
                steps.push((Placed { job, starts: Some(starts), doubtful }, before));
                let cost = Cost {
                    left_out: cost.left_out,
                    parted: cost.parted + more.parted,
                    doubtful: cost.doubtful + u32::from(doubtful),
                    hurts: cost.hurts + more.hurts,
                    clean_outs: cost.clean_outs + more.clean_outs,
                    changes: cost.changes + more.changes,
                    ends: starts + of.takes(),
                };
                next.push((cost, Some(job), steps.len() - 1));
            }
        }
        // One that is dearer and no sooner free is of no use.
        next.sort_unstable_by_key(|(cost, ..)| *cost);
        let mut free = Second::MAX;
        next.retain(|(cost, ..)| {
            let sooner = cost.ends < free;
            free = free.min(cost.ends);
            sooner
        });
        next.truncate(SIDE_BY_SIDE);
        std::mem::swap(&mut ways, &mut next);
    }
    let with_home = |(cost, last, _): &(Cost, Option<usize>, usize)| {
        let home = problem.way_home(*last);
        Cost { changes: cost.changes + home, ends: cost.ends + home, ..*cost }
    };
    places.clear();
    let best = ways.iter().min_by_key(|way| with_home(way));
    let mut at = best.map_or(usize::MAX, |(.., at)| *at);
    while let Some((placed, before)) = steps.get(at) {
        places.push(*placed);
        at = *before;
    }
    places.reverse();
    best.map(with_home).unwrap_or_default()
}

/// The jobs that are not held in an order, with those held put into their places.
fn with_held(loose: &[usize], held: &[Option<usize>], order: &mut Vec<usize>) {
    order.clear();
    let mut loose = loose.iter();
    order.extend(held.iter().filter_map(|held| held.or_else(|| loose.next().copied())));
}

/// How many orders are tried at most, so that a large number of jobs does not take for ever.
const MOST_TRIED: usize = 400_000;

/// Constructs orders in some ways and improves each by moving up to three jobs together and by exchanging two.
fn improved(problem: &Problem, held: &[Option<usize>], begins: usize, tell: &Tell<'_>) -> (Cost, Vec<Placed>) {
    let loose: Vec<usize> = (0..problem.jobs.len()).filter(|job| !held.contains(&Some(*job))).collect();
    let (mut order, mut places) = (Vec::new(), Vec::new());
    let mut tried = 0;
    let mut price = |loose: &[usize], tried: &mut usize| {
        *tried += 1;
        with_held(loose, held, &mut order);
        walk(problem, &order, &mut places)
    };
    let last_start =
        |job: &usize| problem.jobs.get(*job).and_then(|of| of.possible.last()).map_or(Second::MIN, |(_, to)| *to);
    let mut by_end = loose.clone();
    by_end.sort_by_key(last_start);
    let mut best: Option<(Cost, Vec<usize>)> = None;
    for begin in [nearest(problem, &loose), by_end, loose.clone(), loose.iter().rev().copied().collect()]
        .into_iter()
        .take(begins)
    {
        let mut now = begin;
        let mut cost = price(&now, &mut tried);
        while let Some((better, order)) = step(&now, cost, &mut |order| {
            let is_over = tried >= MOST_TRIED || tell(tried, None).is_err();
            if is_over { Cost { left_out: u32::MAX, ..Cost::default() } } else { price(order, &mut tried) }
        }) {
            (cost, now) = (better, order);
        }
        if best.as_ref().is_none_or(|(known, _)| cost < *known) {
            best = Some((cost, now));
        }
    }
    let (cost, loose) = best.unwrap_or_default();
    with_held(&loose, held, &mut order);
    walk(problem, &order, &mut places);
    (cost, places)
}

/// From each job to the one that is cheapest after it.
fn nearest(problem: &Problem, loose: &[usize]) -> Vec<usize> {
    let mut left = loose.to_vec();
    let mut order = Vec::with_capacity(left.len());
    while let Some(at) =
        (0..left.len()).min_by_key(|at| left.get(*at).map(|job| problem.change(order.last().copied(), *job).cost()))
    {
        order.push(left.remove(at));
    }
    order
}

/// The first order that is better than this, of those one step away.
fn step(now: &[usize], cost: Cost, price: &mut impl FnMut(&[usize]) -> Cost) -> Option<(Cost, Vec<usize>)> {
    let n = now.len();
    let mut trial = Vec::with_capacity(n);
    for size in 1..=3.min(n) {
        for from in 0..=n - size {
            for to in (0..=n - size).filter(|to| *to != from) {
                trial.clear();
                trial.extend_from_slice(now);
                let moved: Vec<usize> = trial.drain(from..from + size).collect();
                trial.splice(to..to, moved);
                let better = price(&trial);
                if better < cost {
                    return Some((better, trial));
                }
            }
        }
    }
    for one in 0..n {
        for other in one + 2..n {
            trial.clear();
            trial.extend_from_slice(now);
            trial.swap(one, other);
            let better = price(&trial);
            if better < cost {
                return Some((better, trial));
            }
        }
    }
    None
}

/// What no order can be below: the larger of two bounds. One lets each job follow whichever is cheapest, so long as one comes
/// first and all hang together from it on, and none follows one that can never be done; the other counts how many jobs fit into
/// the time at all.
fn least(problem: &Problem, cost: Cost) -> Cost {
    let n = problem.jobs.len();
    let can = |runs: fn(&Job) -> &[Run], job: &Job, way: Second| {
        job.earliest(runs(job), problem.from)
            .is_some_and(|starts| problem.to.is_none_or(|to| starts + job.takes() + way <= to))
    };
    let ever: Vec<bool> = problem.jobs.iter().map(|job| can(|job| &job.possible, job, 0)).collect();
    let is_ever = |job: usize| ever.get(job).is_some_and(|ever| *ever);
    let mut roads = Vec::new();
    let mut lengths = Vec::new();
    for (job, of) in problem.jobs.iter().enumerate() {
        roads.push((n, job, Cost::LEFT_OUT.wide()));
        if !is_ever(job) {
            continue;
        }
        let doubtful = u32::from(!can(|job| &job.allowed, of, 0));
        let mut shortest = Second::MAX;
        for before in (0..=n).filter(|before| *before != job && (*before == n || is_ever(*before))) {
            let change = problem.change((before < n).then_some(before), job);
            shortest = shortest.min(change.seconds());
            let comes_first = if before == n { Cost::COMES_FIRST } else { 0 };
            roads.push((before, job, Cost { doubtful, ..change.cost() }.wide() + comes_first));
        }
        lengths.push(of.takes() + shortest);
    }
    let mut hang = Cost::from_wide(arborescence(n + 1, n, roads).unwrap_or_default());
    if (hang.left_out as usize) < n {
        hang.changes += (0..n).map(|job| problem.way_home(Some(job))).min().unwrap_or_default();
    }
    lengths.sort_unstable();
    let ends = problem.jobs.iter().filter_map(|job| job.possible.last()).map(|run| run.1).max().unwrap_or(problem.from);
    let mut left = problem.to.map_or(ends, |to| to.min(ends)) - problem.from;
    let fit = lengths.iter().take_while(|length| {
        left -= **length;
        left >= 0
    });
    let left_out = u32::try_from(n - fit.count()).unwrap_or(u32::MAX);
    let least = hang.max(Cost { left_out, ends: Second::MIN, ..Cost::default() });
    // Where all before it is met, the end is that of the job that can be done last, or of all in one go.
    if (Cost { ends: 0, ..least }).cmp(&Cost { ends: 0, ..cost }) == Ordering::Equal
        && lengths.len() + least.left_out as usize == n
    {
        let done: Vec<(usize, &Job)> = problem.jobs.iter().enumerate().filter(|(job, _)| is_ever(*job)).collect();
        let one_go: Second = done.iter().map(|(_, job)| job.takes()).sum();
        let one = done
            .iter()
            .filter_map(|(at, job)| {
                Some(job.earliest(&job.possible, problem.from)? + job.takes() + problem.way_home(Some(*at)))
            })
            .max()
            .unwrap_or(problem.from);
        return Cost { ends: one.max(problem.from + one_go + least.changes).min(cost.ends), ..least };
    }
    least
}

/// The least sum of roads by which every point is reached from a root.
fn arborescence(mut points: usize, mut root: usize, mut roads: Vec<(usize, usize, i128)>) -> Option<i128> {
    let mut sum = 0;
    loop {
        let mut into: Vec<Option<(usize, i128)>> = vec![None; points];
        for &(from, to, cost) in roads.iter().filter(|(from, to, _)| from != to) {
            if let Some(known) = into.get_mut(to).filter(|known| known.is_none_or(|known| cost < known.1)) {
                *known = Some((from, cost));
            }
        }
        // Points on one ring become one.
        let mut group: Vec<Option<usize>> = vec![None; points];
        let mut seen: Vec<Option<usize>> = vec![None; points];
        let mut groups = 0;
        for point in (0..points).filter(|point| *point != root) {
            sum += into.get(point).copied().flatten()?.1;
        }
        for begin in 0..points {
            let mut at = begin;
            while at != root && seen.get(at).copied().flatten().is_none() {
                *seen.get_mut(at)? = Some(begin);
                at = into.get(at).copied().flatten()?.0;
            }
            if at != root
                && seen.get(at).copied().flatten() == Some(begin)
                && group.get(at).copied().flatten().is_none()
            {
                let ring = at;
                loop {
                    *group.get_mut(at)? = Some(groups);
                    at = into.get(at).copied().flatten()?.0;
                    if at == ring {
                        break;
                    }
                }
                groups += 1;
            }
        }
        if groups == 0 {
            return Some(sum);
        }
        for group in group.iter_mut().filter(|group| group.is_none()) {
            *group = Some(groups);
            groups += 1;
        }
        let of = |point: usize| group.get(point).copied().flatten();
        roads = roads
            .into_iter()
            .filter_map(|(from, to, cost)| {
                let paid = if to == root { 0 } else { into.get(to).copied().flatten()?.1 };
                Some((of(from)?, of(to)?, cost - paid))
            })
            .filter(|(from, to, _)| from != to)
            .collect();
        root = of(root)?;
        points = groups;
    }
}

#[cfg(test)]
mod tests;
