//! The bound of a search, which shows only where the search is not at the best order.

use super::{Change, Cost, Job, Problem, least, solve};

/// A job that can never be done comes before no other, so a dear way on from it is no bound for the others.
#[test]
fn a_job_that_cannot_be_done_makes_the_bound_no_dearer() {
    let all_day = vec![(0, 60)];
    let can = Job { takes: 1, allowed: all_day.clone(), possible: all_day, ..Job::default() };
    let never = Job { takes: 1, ..Job::default() };
    let change = |takes| Change { takes, ..Change::default() };
    let problem = Problem {
        jobs: vec![never, can.clone(), can],
        first: vec![change(0); 3],
        between: vec![vec![change(4); 3], vec![change(1); 3], vec![change(1); 3]],
        home: vec![0; 3],
        from: 0,
        to: None,
    };
    let best = solve(&problem).cost;
    assert_eq!((best.left_out, best.changes, best.ends), (1, 1, 3));
    let least = least(&problem, Cost { left_out: 3, ..Cost::default() });
    assert!(least <= best, "{least:?}");
}
