//! In which winds the plan of a pass breaks: a strip that is kept down the wind alone lies elsewhere, or a label forbids wind toward
//! something.

use super::{Arc, Directions, strips};
use crate::farm::{Farm, Field, Pass};
use crate::finding::Basis;
use crate::label::once;
use crate::language::t;
use crate::quantity::Bearing;
use crate::weather::limits::{self, Kind};
use crate::words::all_of;

/// What a turn of the wind does to the plan of a pass.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct WindShift {
    /// Where the wind comes from that is planned for; `None` where that is not known.
    pub planned: Option<Directions>,
    /// What breaks in which winds.
    pub breaks: Vec<Break>,
    /// The wind that breaks it and is the least turn away from the planned one, and how many degrees that is; no turn where the plan
    /// breaks as it is.
    pub nearest: Option<(Bearing, f64)>,
}

/// Something that does not hold in some winds.
#[derive(Clone, Debug, PartialEq)]
pub struct Break {
    /// In words: "no wind toward vineyard on the east of Mill field".
    pub text: String,
    /// In wind from here.
    pub from: Directions,
    /// Where it stands.
    pub basis: Basis,
    /// What cannot be told about whether it speaks, in words; empty where it surely does.
    pub doubt: String,
}

impl WindShift {
    /// All winds in which something breaks.
    pub fn from(&self) -> Directions {
        self.breaks.iter().fold(Directions::default(), |all, one| all.and(&one.from))
    }

    /// What there is to say of it, in a sentence; `None` where no wind breaks the plan, as far as is drawn and typed.
    pub fn words(&self) -> Option<String> {
        let asked = once(self.breaks.iter().map(|one| one.text.clone())).join("; ");
        let arc = |arc: &Arc| match arc.to_degrees() {
            turn if turn >= 360.0 => t!("ground-anywhere").to_owned(),
            turn if turn < 1.0 => arc.from.point().to_owned(),
            // Whole degrees that hold no less than the arc.
            _ => t!(
                "ground-to",
                floor = format_args!("{:.0}", arc.from.to_degrees().floor()),
                ceil = format_args!("{:.0}", arc.to().to_degrees().ceil())
            ),
        };
        let from = all_of(self.from().arcs().iter().map(arc).collect::<Vec<_>>());
        if from.is_empty() {
            return None;
        }
        Some(match self.nearest {
            Some((_, turn)) if turn < 0.5 => t!("ground-the-planned-wind-breaks-it-so", from = from, asked = asked),
            Some((at, turn)) => t!(
                "ground-a-turn-of-to-breaks-it",
                floor = format_args!("{:.0}", turn.floor()),
                point = at.point(),
                from = from,
                asked = asked
            ),
            None => t!("ground-wind-from-breaks-it", from = from, asked = asked),
        })
    }
}

/// In which winds a label or a law breaks if the pass is sprayed as planned.
pub fn wind_shift(farm: &Farm, pass: &Pass) -> WindShift {
    let fields: Vec<&Field> = pass.fields.iter().filter_map(|id| farm.fields.get(id)).collect();
    let breaks: Vec<Break> = limits::asked(farm, pass, &fields)
        .into_iter()
        .filter(|limit| limit.asks)
        .filter_map(|limit| match &limit.kind {
            Kind::NotToward { winds: Some(winds), .. } => {
                Some(Break { from: winds.clone(), text: limit.text(), doubt: limit.doubts(), basis: limit.basis })
            }
            _ => None,
        })
        .collect();
    let planned = strips::planned_wind(farm, pass);
    let mut shift = WindShift { planned, breaks, nearest: None };
    let from = shift.from();
    shift.nearest = shift.planned.as_ref().and_then(|planned| {
        let ends = planned.arcs().iter().flat_map(|arc| [arc.from, arc.middle(), arc.to()]);
        let turns = ends.filter_map(|end| Some((from.nearest(end)?, from.apart(end)?)));
        // A wind inside a planned arc breaks it as it is.
        let inside = from.arcs().iter().find(|arc| planned.apart(arc.from) == Some(0.0)).map(|arc| (arc.from, 0.0));
        inside.or_else(|| turns.min_by(|a, b| a.1.total_cmp(&b.1)))
    });
    shift
}
