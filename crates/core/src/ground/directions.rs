//! A set of directions: arcs of the compass.

use crate::language::t;
use crate::quantity::{Bearing, Quantity, Units};

/// Degrees by which arithmetic may miss.
const SLIP: f64 = 1e-6;

/// An arc of the compass, clockwise from one direction over a turn.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Arc {
    /// Where it begins.
    pub from: Bearing,
    turn: f64,
}

impl Arc {
    /// Where it ends.
    pub fn to(self) -> Bearing {
        Bearing::from_degrees(self.from.to_degrees() + self.turn)
    }

    /// How far it reaches clockwise.
    ///
    /// # Units
    /// Degrees, 0 to 360.
    pub const fn to_degrees(self) -> f64 {
        self.turn
    }

    /// Its middle.
    pub(crate) fn middle(self) -> Bearing {
        Bearing::from_degrees(self.from.to_degrees() + self.turn / 2.0)
    }
}

/// Directions: arcs that do not touch, clockwise from north.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Directions(Vec<Arc>);

impl Directions {
    /// One direction.
    pub fn one(at: Bearing) -> Self {
        Self(vec![Arc { from: at, turn: 0.0 }])
    }

    /// Every direction.
    pub fn all() -> Self {
        Self(vec![Arc { from: Bearing::from_degrees(0.0), turn: 360.0 }])
    }

    /// Those of some arcs: where each begins and its turn in degrees.
    pub(crate) fn of(arcs: impl IntoIterator<Item = (f64, f64)>) -> Self {
        let mut arcs: Vec<(f64, f64)> =
            arcs.into_iter().map(|(from, turn)| (Bearing::from_degrees(from).to_degrees(), turn.max(0.0))).collect();
        arcs.sort_by(|a, b| a.0.total_cmp(&b.0));
        let mut joined: Vec<(f64, f64)> = Vec::new();
        for (from, turn) in arcs {
            match joined.last_mut() {
                Some((first, reach)) if from <= *first + *reach + SLIP => *reach = reach.max(from + turn - *first),
                _ => joined.push((from, turn)),
            }
        }
        // An arc across north takes in those after it.
        while let (Some((first, reach)), Some((last, turn))) = (joined.first().copied(), joined.last().copied()) {
            if turn >= 360.0 - SLIP {
                return Self::all();
            }
            if joined.len() == 1 || last + turn + SLIP < first + 360.0 {
                break;
            }
            joined.remove(0);
            if let Some((last, turn)) = joined.last_mut() {
                *turn = turn.max(first + reach + 360.0 - *last);
            }
        }
        Self(joined.into_iter().map(|(from, turn)| Arc { from: Bearing::from_degrees(from), turn }).collect())
    }

    /// Its arcs.
    pub fn arcs(&self) -> &[Arc] {
        &self.0
    }

    /// Whether there are none.
    pub fn is_empty(&self) -> bool {
        self.0.is_empty()
    }

    /// Whether it is every direction.
    pub fn is_all(&self) -> bool {
        self.0.iter().any(|arc| arc.turn >= 360.0 - SLIP)
    }

    /// How far a direction lies from the nearest of them, 0 to 180 degrees; `None` where there are none.
    pub fn apart(&self, at: Bearing) -> Option<f64> {
        let of_arc = |arc: &Arc| {
            let along = (at.to_degrees() - arc.from.to_degrees()).rem_euclid(360.0);
            if along <= arc.turn + SLIP || along >= 360.0 - SLIP {
                0.0
            } else {
                at.apart(arc.from).min(at.apart(arc.to()))
            }
        };
        self.0.iter().map(of_arc).reduce(f64::min)
    }

    /// The nearest of them to a direction.
    pub fn nearest(&self, at: Bearing) -> Option<Bearing> {
        if self.apart(at)? <= SLIP {
            return Some(at);
        }
        self.0.iter().flat_map(|arc| [arc.from, arc.to()]).min_by(|a, b| at.apart(*a).total_cmp(&at.apart(*b)))
    }

    /// Those of both.
    #[must_use]
    pub fn and(&self, other: &Self) -> Self {
        Self::of(self.0.iter().chain(&other.0).map(|arc| (arc.from.to_degrees(), arc.turn)))
    }

    /// With so many degrees more at both ends of each arc.
    #[must_use]
    pub fn wider(&self, degrees: f64) -> Self {
        Self::of(self.0.iter().map(|arc| (arc.from.to_degrees() - degrees, arc.turn + 2.0 * degrees)))
    }

    /// With so many degrees less at both ends of each arc; arcs that are no wider than that are gone.
    #[must_use]
    pub(crate) fn narrower(&self, degrees: f64) -> Self {
        let wide = self.0.iter().filter(|arc| arc.turn > 2.0 * degrees);
        Self(
            wide.map(|arc| match arc.turn {
                all if all >= 360.0 - SLIP => *arc,
                turn => {
                    Arc { from: Bearing::from_degrees(arc.from.to_degrees() + degrees), turn: turn - 2.0 * degrees }
                }
            })
            .collect(),
        )
    }

    /// Whether all of others are among them.
    pub(crate) fn hold(&self, other: &Self) -> bool {
        let inside = |arc: &Arc| {
            self.is_all()
                || self.0.iter().any(|own| {
                    let along = (arc.from.to_degrees() - own.from.to_degrees() + SLIP).rem_euclid(360.0) - SLIP;
                    along + arc.turn <= own.turn + SLIP
                })
        };
        other.0.iter().all(inside)
    }

    /// Each turned about: where wind from these blows to.
    #[must_use]
    pub fn opposite(&self) -> Self {
        Self::of(self.0.iter().map(|arc| (arc.from.to_degrees() + 180.0, arc.turn)))
    }

    /// In words: "NW", "from N to ESE (0° to 115°)", "any direction".
    pub fn words(&self, units: Units) -> String {
        if self.is_all() {
            return t!("ground-any-direction").to_owned();
        }
        let of_arc = |arc: &Arc| {
            let (from, to) = (arc.from, arc.to());
            if arc.turn < 1.0 {
                return from.show(units);
            }
            t!(
                "ground-to-to",
                from = from.show(units),
                to = to.show(units),
                to_degrees = format_args!("{:.0}", from.to_degrees()),
                to_degrees2 = format_args!("{:.0}", to.to_degrees())
            )
        };
        crate::label::listed(&self.0.iter().map(of_arc).collect::<Vec<_>>())
    }
}

#[cfg(test)]
mod tests {
    use super::Directions;
    use crate::quantity::{Bearing, Units};

    fn at(degrees: f64) -> Bearing {
        Bearing::from_degrees(degrees)
    }

    #[test]
    fn arcs_join_also_across_north() {
        let joined = Directions::of([(350.0, 20.0), (5.0, 30.0), (180.0, 10.0)]);
        let ends: Vec<(f64, f64)> =
            joined.arcs().iter().map(|arc| (arc.from.to_degrees(), arc.to().to_degrees())).collect();
        assert_eq!(ends, [(180.0, 190.0), (350.0, 35.0)]);
        assert!(joined.apart(at(0.0)) == Some(0.0) && joined.apart(at(35.0)) == Some(0.0));
        assert!((joined.apart(at(40.0)).unwrap() - 5.0).abs() < 1e-9);
        assert_eq!(joined.nearest(at(170.0)), Some(at(180.0)));
        assert_eq!(joined.words(Units::Metric), "S to S (180° to 190°) and N to NE (350° to 35°)");
        assert!(Directions::of([(0.0, 200.0), (190.0, 180.0)]).is_all());
        assert!(Directions::of([(10.0, 200.0), (200.0, 169.0)]).arcs().len() == 1);
        assert!(Directions::one(at(315.0)).opposite().apart(at(135.0)) == Some(0.0));
        assert!((Directions::one(at(0.0)).wider(45.0).arcs()[0].from.to_degrees() - 315.0).abs() < 1e-9);
        assert!(joined.hold(&Directions::of([(355.0, 12.0)])) && !joined.hold(&Directions::of([(30.0, 8.0)])));
        assert_eq!(joined.narrower(6.0).arcs().len(), 1);
        assert!(Directions::all().narrower(10.0).is_all());
        // What is made wider and narrower again is as it was.
        let again: Vec<(f64, f64)> =
            joined.wider(5.0).narrower(5.0).arcs().iter().map(|arc| (arc.from.to_degrees(), arc.turn)).collect();
        assert!(
            again.iter().zip([(180.0, 10.0), (350.0, 45.0)]).all(|(a, b)| (a.0 - b.0).abs() + (a.1 - b.1).abs() < 1e-9)
        );
        // An arc holds itself and what begins or ends where it does, wherever it begins.
        let own = Directions::of([(100.0, 80.0)]);
        for (from, turn, held) in [
            (100.0, 80.0, true),
            (100.0, 20.0, true),
            (160.0, 20.0, true),
            (120.0, 20.0, true),
            (99.0, 20.0, false),
            (170.0, 20.0, false),
        ] {
            assert_eq!(own.hold(&Directions::of([(from, turn)])), held, "{from} {turn}");
        }
        assert!(Directions::default().apart(at(0.0)).is_none() && Directions::default().is_empty());
    }
}
