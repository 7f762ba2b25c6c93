//! A better order of the fields within a pass, where all roads are known.

use super::order::{Change, EXACT, Job, Problem, Second, solve};
use super::road::{self, Place};
use super::words;
use crate::farm::{Farm, Fills, Id};
use crate::finding::{Basis, Finding, Subject};
use crate::label::listed;
use crate::language::t;
use crate::plan::Plan;
use crate::quantity::AsTyped;

/// Says where another order of up to [`EXACT`] fields has a minute or more less of road. Where the tank is filled in the yard the way
/// depends on the loads, and nothing is said.
pub(super) fn judge(farm: &Farm, plan: &Plan, findings: &mut Vec<Finding>) {
    let Some((typed, best, order)) = better(farm, plan) else { return };
    if typed - best < 60 {
        return;
    }
    let Some(pass) = farm.passes.get(&plan.pass) else { return };
    let names: Vec<String> =
        order.iter().map(|id| farm.fields.get(id).map_or_else(|| (*id).clone(), |field| field.name.clone())).collect();
    findings.push(
        Finding::note(
            Subject::Pass(plan.pass.clone()),
            t!(
                "day-its-fields-in-the-order-have",
                name = pass.name,
                names = listed(&names),
                time = words::time(typed - best, farm.units)
            ),
            Basis::Arithmetic,
        )
        .hint(t!("day-change-the-order-of-the-fields")),
    );
}

/// Road of the typed order and of the best one, in seconds, with the best order.
fn better<'a>(farm: &Farm, plan: &'a Plan) -> Option<(Second, Second, Vec<&'a Id>)> {
    let pass = farm.passes.get(&plan.pass)?;
    let speed = farm.rigs.get(&pass.rig)?.road_speed.as_ref().map(AsTyped::value)?;
    let ids: Vec<&Id> = plan.fields.iter().map(|field| &field.field).collect();
    // Out, across and home is the same way forth and back: two fields have but one order.
    if pass.fills != Fills::AtField || !(3..=EXACT).contains(&ids.len()) {
        return None;
    }
    let way = |from: Place, to: Place| Some(super::lay::seconds(road::time(road::way(farm, from, to)?, speed)?));
    let change = |takes| Change { takes, ..Change::default() };
    let all_day = vec![(0, Second::MAX / 4)];
    let problem = Problem {
        jobs: vec![Job { allowed: all_day.clone(), possible: all_day, ..Job::default() }; ids.len()],
        first: ids.iter().map(|to| way(None, Some(to)).map(change)).collect::<Option<_>>()?,
        between: ids
            .iter()
            .map(|from| ids.iter().map(|to| way(Some(from), Some(to)).map(change)).collect())
            .collect::<Option<Vec<Vec<Change>>>>()?,
        home: ids.iter().map(|from| way(Some(from), None)).collect::<Option<_>>()?,
        ..Problem::default()
    };
    let typed: Vec<usize> = (0..ids.len()).collect();
    let order = solve(&problem);
    let best = order.places.iter().filter_map(|place| ids.get(place.job).copied()).collect();
    Some((solve(&problem.held_as(&typed)).cost.changes, order.cost.changes, best))
}
