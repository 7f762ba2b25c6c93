//! Chooses the sizes of loads: every way of a stated space is looked at, and the best by the user's aims is taken.
//!
//! # The ways
//! All loads of a stretch are alike but the last, because one set of amounts is what a tired person gets right. The size of the
//! loads that are alike is a mark that can be read (`Problem::mark`), up to the fill; beside these ways there are loads of
//! exactly one size, and full tanks with a rest. The number of loads runs from the fewest that hold the volume to twice
//! that and one: nobody drives more often to spare a jug. The last load of the pass may be topped up where
//! it is too small for the agitation, and what it holds too much is left over. What is to be left over is in the last load, which covers some ground too.
//!
//! # The aims
//! They are whole numbers and compared one after the other in the user's order, so that no weight hides in them. A tie goes to
//! fewer loads, then to the larger load. [`Figures`] says what each counts. Stretches are chosen one after the other, each with
//! the containers as the one before leaves them.

mod problem;
mod words;

use crate::farm::{Aim, Farm, Id, LoadSplit, Pass};
use crate::language::t;
use crate::quantity::{AsTyped, Units, Volume};
use crate::working::Working;

pub use problem::{Figures, Kind, Way};
pub(crate) use problem::{Portion, Problem, mark_of};

/// How the sizes of the loads of a pass came about.
#[derive(Clone, Debug, PartialEq)]
pub struct Sizing {
    /// The aims, the weightiest first.
    pub aims: Vec<Aim>,
    /// The stretches of fields that share loads, in the order sprayed; without those whose loads are all decided by hand.
    pub stretches: Vec<Sized>,
}

/// The sizes of the loads of one stretch.
#[derive(Clone, Debug, PartialEq)]
pub struct Sized {
    /// Its fields.
    pub fields: Vec<Id>,
    /// The first of its loads that is not decided by hand.
    pub first: u32,
    /// How many ways were looked at.
    pub looked_at: usize,
    /// The loads as they are.
    pub chosen: Choice,
    /// Others worth a look: what the aims give in the order set, and with each aim before the others; full tanks, even loads, and the
    /// last load topped up.
    pub others: Vec<Other>,
}

/// A way with what it comes to.
#[derive(Clone, Debug, PartialEq)]
pub struct Choice {
    /// The loads.
    pub way: Way,
    /// What it comes to, aim by aim.
    pub figures: Figures,
    /// The loads in words: "5 loads of 1,200 gal and one of 450 gal".
    pub words: String,
}

/// Another way for the same stretch.
#[derive(Clone, Debug, PartialEq)]
pub struct Other {
    /// What it is the best of: "few fillings first", "even loads".
    pub label: String,
    /// The way.
    pub choice: Choice,
    /// What it gains and what it costs against the chosen one, in a sentence.
    pub trade: String,
    /// What to write into the pass to have it so.
    pub take: Take,
}

/// What a pass says of its loads.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Take {
    /// The loads that are decided.
    pub sizes: Vec<AsTyped<Volume>>,
    /// How the rest is split.
    pub split: LoadSplit,
}

impl Take {
    /// Writes it into a pass.
    pub fn into_pass(&self, pass: &mut Pass) {
        pass.sizes.clone_from(&self.sizes);
        pass.split = self.split;
    }
}

/// Aims in their order: those that are set, then the others as [`Aim::ALL`] has them.
pub fn aims_in(set: &[Aim]) -> Vec<Aim> {
    crate::label::once(set.iter().chain(&Aim::ALL).copied())
}

/// A way with its figures.
type Rated = (Way, Figures);

/// What a stretch is chosen within.
pub(crate) struct Asked<'a> {
    pub(crate) farm: &'a Farm,
    pub(crate) pass: &'a Pass,
    pub(crate) aims: &'a [Aim],
    /// The loads before this stretch's, as they are laid.
    pub(crate) before: &'a [Volume],
    pub(crate) fields: Vec<Id>,
    /// Whether the pass has but this one stretch, and whether it is its last.
    pub(crate) alone: bool,
    pub(crate) last: bool,
}

/// The loads of a stretch; `None` where no way holds what is asked.
pub(crate) fn choose(problem: &Problem, asked: Asked) -> Option<Sized> {
    let ways: Vec<Rated> = problem.ways().into_iter().map(|way| (way, problem.figures(&way))).collect();
    let best = |aims: &[Aim], fits: &dyn Fn(&Way) -> bool| {
        let fitting = ways.iter().filter(|(way, _)| fits(way));
        fitting.min_by(|a, b| problem::compare(a, b, aims)).copied()
    };
    let of_kind = |kind: Kind| ways.iter().find(|(way, _)| way.kind == kind && !problem.is_topped(way)).copied();
    let by_aims = best(asked.aims, &|_| true);
    let chosen = match asked.pass.split {
        LoadSplit::FullTanks => of_kind(Kind::Full).or_else(|| of_kind(Kind::LastFull)),
        LoadSplit::EvenLoads => of_kind(Kind::Even).or_else(|| of_kind(Kind::Full)),
        LoadSplit::ByAims => None,
    };
    let chosen = chosen.or(by_aims)?;

    let mut offered: Vec<(String, Option<Rated>, Option<LoadSplit>)> =
        vec![(t!("loads-by-your-aims").to_owned(), by_aims, Some(LoadSplit::ByAims))];
    for aim in asked.aims.iter().skip(1) {
        let first: Vec<Aim> = crate::label::once(std::iter::once(*aim).chain(asked.aims.iter().copied()));
        offered.push((t!("loads-first", aim = aim.name()), best(&first, &|_| true), None));
    }
    offered.push((t!("loads-full-tanks-then-a-rest").to_owned(), of_kind(Kind::Full), Some(LoadSplit::FullTanks)));
    offered.push((t!("loads-even-loads").to_owned(), of_kind(Kind::Even), Some(LoadSplit::EvenLoads)));
    offered.push((
        t!("loads-the-last-load-topped-up-for").to_owned(),
        best(asked.aims, &|way| problem.is_topped(way)),
        None,
    ));
    let mut others: Vec<Other> = Vec::new();
    for (label, offer, split) in offered {
        let Some((way, figures)) = offer else { continue };
        if way.same_loads(&chosen.0) || others.iter().any(|other| other.choice.way.same_loads(&way)) {
            continue;
        }
        others.push(Other {
            label,
            choice: choice(way, figures, asked.farm.units),
            trade: words::trade(problem, asked.farm, (&chosen.0, chosen.1), (&way, figures)),
            take: take(&asked, problem, &way, split),
        });
    }
    let first = u32::try_from(asked.before.len() + 1).unwrap_or(u32::MAX);
    let chosen = choice(chosen.0, chosen.1, asked.farm.units);
    Some(Sized { fields: asked.fields, first, looked_at: ways.len(), chosen, others })
}

fn choice(way: Way, figures: Figures, units: Units) -> Choice {
    Choice { way, figures, words: words::loads(&way, units) }
}

/// What to write into the pass: the split where that gives these loads, else their sizes.
fn take(asked: &Asked, problem: &Problem, way: &Way, split: Option<LoadSplit>) -> Take {
    if let (Some(split), true, true) = (split, asked.alone, asked.before.is_empty()) {
        return Take { sizes: Vec::new(), split };
    }
    let mut volumes: Vec<Volume> = asked.before.to_vec();
    volumes.extend(way.volumes());
    let mut split = asked.pass.split;
    if asked.last && !problem.is_topped(way) {
        // What then remains is the last load, whatever its exact size.
        volumes.pop();
        split = LoadSplit::FullTanks;
    }
    Take { sizes: volumes.into_iter().map(|volume| typed(volume, asked.farm.units)).collect(), split }
}

/// A volume as a person would type it, so exactly that many of them still add up.
pub fn typed(volume: Volume, units: Units) -> AsTyped<Volume> {
    let (number, unit) = match units {
        Units::UsCustomary => (volume.to_us_gallons(), "gal"),
        Units::Imperial => (volume.to_imperial_gallons(), "imp gal"),
        Units::Metric => (volume.to_litres(), "L"),
    };
    let text = format!("{} {unit}", (number * 1e9).round() / 1e9);
    AsTyped::parse(&text).unwrap_or_else(|_| AsTyped::of(&text, volume))
}

/// The working of the sizes.
pub(crate) fn working(sizing: &Sizing, farm: &Farm, mark: (Volume, bool), least: Option<Volume>) -> Working {
    use crate::quantity::Quantity;
    let units = farm.units;
    let order: Vec<&str> = sizing.aims.iter().map(|aim| aim.name()).collect();
    let mut working =
        Working::new(t!("loads-load-sizes")).step(t!("loads-aims-in-order", order = order.join("; ")), "–").step(
            if mark.1 {
                t!("loads-loads-that-are-alike-end-at")
            } else {
                t!("loads-loads-that-are-alike-end-at-a-mark-that")
            },
            mark.0.show(units),
        );
    working = match least {
        Some(least) => working.step(t!("loads-the-agitation-needs"), least.show(units)),
        None => working.step(t!("loads-what-the-agitation-needs-is-not"), "–"),
    };
    for stretch in &sizing.stretches {
        let names: Vec<String> =
            stretch.fields.iter().filter_map(|id| farm.fields.get(id)).map(|field| field.name.clone()).collect();
        working = working.step(
            t!("loads-looked-at", names = crate::label::listed(&names), count = stretch.looked_at),
            stretch.chosen.words.clone(),
        );
        for aim in &sizing.aims {
            working = working.step(aim.name(), stretch.chosen.figures.words(*aim, units));
        }
    }
    working
}
