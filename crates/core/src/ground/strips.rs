//! Which strips the labels and laws of a pass keep on a field, and to what.
//!
//! Down the wind alone a strip is what lies up the wind of what it is kept to, within the degrees to each side that the table of the
//! weather counts as toward it (common practice, no source): the wind may swing that far before it is broken. The wind is the one
//! typed for the pass; else all directions that the forecast has for its day, from its start on; else it is not known, and the
//! strip is kept all round.

use super::cut::Part;
use super::{Applies, Directions, named};
use crate::farm::label::Says;
use crate::farm::{Farm, Field, Id, Neighbour, Pass, Surrounding};
use crate::label::when::Situation;
use crate::label::{Spoken, buffer, laws};
use crate::quantity::{AsTyped, Bearing, Length, Quantity};
use crate::weather::practice;

/// A statement on a strip that speaks of a field, or may.
#[derive(Clone, Debug)]
pub(crate) struct Asking<'a> {
    pub(crate) to: &'a str,
    pub(crate) width: Length,
    pub(crate) downwind_only: bool,
    pub(crate) spoken: Spoken<'a>,
}

/// What the labels of a mix and the laws of its day ask for on a field.
pub(crate) fn asked<'a>(farm: &'a Farm, pass: &Pass, field: &Field) -> Vec<Asking<'a>> {
    let mut all = Vec::new();
    for (at, line) in pass.mix.iter().enumerate() {
        let Some((id, product)) = farm.products.get_key_value(&line.product) else { continue };
        let before = || pass.mix.iter().take(at).any(|other| other.product == line.product);
        let mut binding =
            laws::binding(farm, product, pass.date, |says| matches!(says, Says::Buffer { .. })).peekable();
        if binding.peek().is_none() || before() {
            continue;
        }
        let situation = Situation::new(farm, pass, id, product);
        all.extend(binding.filter_map(|(speaker, statement)| {
            let Says::Buffer { to, width, downwind_only } = &statement.says else { return None };
            let spoken = Spoken::of(speaker, statement, field, &situation)?;
            Some(Asking { to, width: width.value(), downwind_only: *downwind_only, spoken })
        }));
    }
    all
}

/// What is drawn within reach of a field, each with its id; nothing where the field has no boundary.
pub(crate) fn drawn<'a, 'f>(
    farm: &'a Farm,
    field: &'f Field,
    reach: Length,
) -> impl Iterator<Item = (&'a Id, &'a Surrounding)> + use<'a, 'f> {
    let ball = field.boundary.as_ref().filter(|_| !farm.surroundings.is_empty()).map(crate::farm::Shape::ball);
    ball.into_iter().flat_map(move |ball| {
        let latitudes = field.boundary.as_ref().map(crate::farm::Shape::bounds);
        farm.surroundings.iter().filter(move |(_, drawn)| {
            // A degree of latitude has 110,574 m at least.
            let (other, more) = (drawn.shape.bounds(), reach.to_metres() / 110_000.0);
            latitudes.is_none_or(|own| own.min().y - more <= other.max().y && other.min().y <= own.max().y + more)
                && ball.may_lie_within(drawn.shape.ball(), reach.to_metres())
        })
    })
}

/// A strip to something drawn.
#[derive(Clone, Debug)]
pub(crate) struct Kept<'a> {
    pub(crate) id: &'a Id,
    pub(crate) drawn: &'a Surrounding,
    pub(crate) asking: Asking<'a>,
    pub(crate) distance: Length,
    pub(crate) part: Part,
    pub(crate) applies: Applies,
}

/// The strips of a field to what is drawn: to each thing the widest that is asked for all round, and the widest down the wind where
/// that is wider.
pub(crate) fn kept<'a>(farm: &'a Farm, pass: &Pass, field: &Field, asked: &[Asking<'a>]) -> Vec<Kept<'a>> {
    let mut all = Vec::new();
    let Some(on_plane) = field.boundary.as_ref().and_then(crate::farm::Shape::on_plane) else { return all };
    let Some(widest) = asked.iter().map(|asking| asking.width).max() else { return all };
    let mut wind = None;
    for (id, drawn) in drawn(farm, field, widest) {
        // Where it lies is told more quickly than what words mean.
        if on_plane.distance(&drawn.shape, widest).is_none() {
            continue;
        }
        let widest = |downwind_only: bool| {
            let meant = asked.iter().filter(|one| one.downwind_only == downwind_only && named::mean(one.to, drawn));
            // Of several as wide the first, and of these one that surely speaks.
            meant.reduce(|a, b| {
                let surer = b.spoken.doubt.is_empty() && !a.spoken.doubt.is_empty();
                if b.width > a.width || (b.width == a.width && surer) { b } else { a }
            })
        };
        let (round, down) = (widest(false), widest(true));
        let down = down.filter(|down| round.is_none_or(|round| down.width.exceeds(round.width)));
        for asking in [round, down].into_iter().flatten() {
            let Some(distance) = on_plane.distance(&drawn.shape, asking.width) else { continue };
            // As far as the strip is wide is far enough.
            if !asking.width.exceeds(distance) {
                continue;
            }
            let mut part = Part { to: drawn.shape.clone(), width: asking.width, wind: None };
            let mut applies = Applies::Yes;
            if asking.downwind_only {
                part.wind.clone_from(wind.get_or_insert_with(|| planned_wind(farm, pass)));
                if part.wind.is_none() {
                    applies = Applies::WindUnknown;
                } else if on_plane.cut(std::slice::from_ref(&part)).shape.is_none() {
                    applies = Applies::NotDownwind;
                }
            }
            all.push(Kept { id, drawn, asking: asking.clone(), distance, part, applies });
        }
    }
    all
}

/// The strips down the wind that hold no longer where the wind comes from elsewhere, each with the winds that carry spray from what
/// the pass covers to what the strip is kept to, within its width.
pub(crate) fn breaks<'a>(field: &Field, kept: &'a [Kept<'a>]) -> Vec<(&'a Kept<'a>, Directions)> {
    let Some(on_plane) = field.boundary.as_ref().and_then(crate::farm::Shape::on_plane) else { return Vec::new() };
    let left: Vec<Part> = kept.iter().map(|kept| kept.part.clone()).collect();
    let down = kept.iter().filter(|kept| kept.asking.downwind_only);
    let broken = down.filter_map(|kept| {
        // What just touches the strip does not break it.
        let beside = on_plane.beside(&left, &kept.drawn.shape, kept.asking.width * (1.0 - 1e-4))?;
        let winds = beside.directions.opposite().narrower(0.1);
        (!winds.is_empty()).then_some((kept, winds))
    });
    broken.collect()
}

/// Where the wind comes from that a pass is planned for; `None` where that is not known.
pub(crate) fn planned_wind(farm: &Farm, pass: &Pass) -> Option<Directions> {
    if let Some(typed) = &pass.wind_from {
        return Some(Directions::one(typed.value()));
    }
    let from = |hour: &&crate::farm::Hour| {
        // An hour that has begun lasts on.
        hour.at.date() == pass.date && pass.start.is_none_or(|start| hour.at.time().hour() >= start.hour())
    };
    let mut all: Option<Directions> = None;
    for hour in farm.forecast.hours.iter().filter(from) {
        let wind = Directions::one(hour.wind_from.as_ref().map(AsTyped::value)?);
        all = Some(all.map_or_else(|| wind.clone(), |all| all.and(&wind)));
    }
    all
}

/// What is drawn and lies beside a field, where a label speaks of it without a distance.
pub(crate) fn drawn_beside<'a>(farm: &'a Farm, field: &Field) -> Vec<&'a Surrounding> {
    let Some(on_plane) = field.boundary.as_ref().and_then(crate::farm::Shape::on_plane) else { return Vec::new() };
    let reach = practice::beside();
    let near = drawn(farm, field, reach).map(|(_, drawn)| drawn);
    near.filter(|drawn| on_plane.distance(&drawn.shape, reach).is_some()).collect()
}

/// Whether something drawn stands for a typed neighbour: its words mean it, and it lies on that side. Then the neighbour is not
/// looked after once more.
pub(crate) fn stands_for(farm: &Farm, field: &Field, neighbour: &Neighbour) -> bool {
    let Some(on_plane) = field.boundary.as_ref().and_then(crate::farm::Shape::on_plane) else { return false };
    let reach = practice::beside();
    let side = Bearing::parse(&neighbour.side).ok();
    drawn(farm, field, reach).any(|(_, drawn)| {
        on_plane.distance(&drawn.shape, reach).is_some()
            && named::mean(&neighbour.what, drawn)
            && on_plane.beside(&[], &drawn.shape, reach).is_some_and(|beside| {
                // A quarter of the compass lies to each side.
                side.is_none_or(|side| beside.directions.apart(side).is_some_and(|apart| apart <= 45.0))
            })
    })
}

/// The widest strip that is asked to a typed neighbour, where it reaches it.
pub(crate) fn to_neighbour<'a>(asked: &'a [Asking<'a>], neighbour: &Neighbour) -> Option<(Length, &'a Asking<'a>)> {
    let (width, spoken) = buffer::reaching(asked.iter().map(|asking| asking.spoken.clone()), neighbour)?;
    let of_it = |asking: &&Asking| std::ptr::eq(asking.spoken.statement, spoken.statement);
    Some((width, asked.iter().find(of_it)?))
}
