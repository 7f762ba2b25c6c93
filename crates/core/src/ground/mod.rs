//! The ground of a pass: the two areas of each field, what lies beside it, and the strips that labels keep to that.
//!
//! The way is straight: `plane` lays a boundary flat; `cut` cuts strips out of it and tells which way something lies, as
//! [`directions`]; [`rings`] mends what a file or a hand drew; `named` holds a label's words against what is drawn; `strips`
//! gathers what is asked on a field; [`shift`] says in which winds that no longer holds. Where a field has no boundary, or nothing is drawn, no strip is measured, and people leave it.

mod around;
pub(crate) mod cut;
pub mod directions;
pub(crate) mod named;
pub mod outline;
pub(crate) mod plane;
pub mod projection;
pub mod rings;
pub mod shift;
pub(crate) mod strips;

pub use around::{Around, around, side, side_of};
pub(crate) use around::{side_on_card, side_said};
pub use directions::{Arc, Directions};
pub use shift::{WindShift, wind_shift};

use cut::Part;
use strips::{Asking, Kept};

use crate::farm::{AreaFrom, Farm, Field, Id, Pass, Shape};
use crate::finding::{Basis, Finding, Level, Subject};
use crate::label::{listed, once};
use crate::language::t;
use crate::quantity::{Area, AsTyped, Length, Quantity};
use crate::weather::practice;
use crate::working::Working;

/// The ground of a pass, field by field, in the order sprayed; fields that are not on the farm do not come.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Ground {
    /// The fields.
    pub fields: Vec<FieldGround>,
}

/// The ground of a field of a pass, and what of it the pass leaves.
#[derive(Clone, Debug, PartialEq)]
pub struct FieldGround {
    /// The field.
    pub field: Id,
    /// The area that the plan goes by.
    pub area: Area,
    /// Which of its two that is.
    pub from: AreaFrom,
    /// The stated area.
    pub stated: Area,
    /// The area within the boundary; `None` where none is drawn.
    pub measured: Option<Area>,
    /// What stays unsprayed, as typed.
    pub unsprayed: Area,
    /// The strips, those to what is drawn before those to typed neighbours.
    pub strips: Vec<Strip>,
    /// All strips together on the ground; `None` where nothing of the field lies in one.
    pub strip_shape: Option<Shape>,
    /// How much that is: ground in two strips counts once.
    pub strip_area: Area,
    /// What can be sprayed: the area less what stays unsprayed and the strips.
    pub sprayable: Area,
    /// How that comes about.
    pub working: Working,
    /// What there is to say. They stand among the findings of the plan, too.
    pub findings: Vec<Finding>,
}

/// What a strip is kept to.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum To {
    /// Something drawn, by its id in [`crate::farm::Farm::surroundings`].
    Surrounding(Id),
    /// A typed neighbour, by its place in [`crate::farm::Field::neighbours`].
    Neighbour(usize),
}

/// Whether a strip is left.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Applies {
    /// It is.
    Yes,
    /// It is asked for down the wind alone, and no wind is known: it is left whichever way the wind blows.
    WindUnknown,
    /// It is asked for down the wind alone, which blows elsewhere.
    NotDownwind,
    /// Nothing is drawn to measure it by: people leave it.
    NotMeasured,
}

/// A strip of a field that a label or a law keeps unsprayed.
#[derive(Clone, Debug, PartialEq)]
pub struct Strip {
    /// To what.
    pub to: To,
    /// What that is called.
    pub what: String,
    /// Who asks for it: a product by its name, or a law.
    pub who: String,
    /// Where that stands.
    pub basis: Basis,
    /// How wide.
    pub width: Length,
    /// How far what it is kept to lies from the field; `None` where that is not known.
    pub distance: Option<Length>,
    /// The part of the field that it takes; `None` where it takes none or nothing is drawn.
    pub unsprayed: Option<Shape>,
    /// How much that is.
    pub area: Area,
    /// How much of the field's edge lies in it.
    pub edge: Length,
    /// Only down the wind.
    pub downwind_only: bool,
    /// Whether it is left.
    pub applies: Applies,
}

impl Ground {
    /// The ground of a field; `None` where the pass does not go there.
    pub fn of_field(&self, id: &str) -> Option<&FieldGround> {
        self.fields.iter().find(|field| field.field == id)
    }
}

/// The ground of a pass.
pub fn of(farm: &Farm, pass: &Pass) -> Ground {
    let mut fields: Vec<FieldGround> = Vec::new();
    for id in &pass.fields {
        let Some((id, field)) = farm.fields.get_key_value(id) else { continue };
        if !fields.iter().any(|other| other.field == *id) {
            fields.push(of_field(farm, pass, id, field));
        }
    }
    Ground { fields }
}

/// How much of a field a pass drives over: the part that is typed for it, else all that can be sprayed.
pub fn covers(farm: &Farm, pass: &Pass, id: &str, field: &Field) -> Area {
    pass.parts.get(id).map_or_else(|| sprayable(farm, pass, field), AsTyped::value)
}

/// What of a field a pass can spray: its area less what stays unsprayed and the strips.
pub fn sprayable(farm: &Farm, pass: &Pass, field: &Field) -> Area {
    if field.boundary.is_none() || strips::drawn(farm, field, Length::from_metres(FAR)).next().is_none() {
        return field.sprayable();
    }
    let kept = strips::kept(farm, pass, field, &strips::asked(farm, pass, field));
    less(field, together(field, &kept).as_deref())
}

/// No label keeps spray farther off than this, a mile and a half; it only keeps what is far from being looked at.
const FAR: f64 = 2_414.016;

/// The area of a field less what stays unsprayed and strips; nothing where the strips take all within the boundary, whatever is stated.
fn less(field: &Field, strips: Option<&cut::Cut>) -> Area {
    if strips.is_some_and(|cut| cut.takes_all) {
        return Area::ZERO;
    }
    let strips = strips.map_or(Area::ZERO, |cut| cut.area);
    let unsprayed = field.unsprayed.as_ref().map_or(Area::ZERO, AsTyped::value);
    let left = if field.strips_in_unsprayed { unsprayed.max(strips) } else { unsprayed + strips };
    (field.ground() - left).max(Area::ZERO)
}

/// What the strips of a field take together, ground in two of them once; `None` where there are none.
fn together(field: &Field, kept: &[Kept]) -> Option<std::sync::Arc<cut::Cut>> {
    let parts: Vec<Part> = kept.iter().map(|kept| kept.part.clone()).collect();
    let on_plane = field.boundary.as_ref()?.on_plane()?;
    (!parts.is_empty()).then(|| on_plane.cut(&parts))
}

/// The ground of a field of a pass.
fn of_field(farm: &Farm, pass: &Pass, id: &Id, field: &Field) -> FieldGround {
    let asked = strips::asked(farm, pass, field);
    let kept = strips::kept(farm, pass, field, &asked);
    let cut = together(field, &kept);
    let strip_area = cut.as_ref().map_or(Area::ZERO, |cut| cut.area);
    let measured = field.boundary.as_ref().map(Shape::area);
    let mut ground = FieldGround {
        field: id.clone(),
        area: field.ground(),
        from: if measured.is_some() { field.area_from } else { AreaFrom::Stated },
        stated: field.area.value(),
        measured,
        unsprayed: field.unsprayed.as_ref().map_or(Area::ZERO, AsTyped::value),
        strips: kept.iter().map(|kept| to_drawn(field, kept)).collect(),
        strip_shape: cut.as_ref().and_then(|cut| cut.shape.clone()),
        strip_area,
        sprayable: less(field, cut.as_deref()),
        working: Working::new(t!("ground-ground-of", name = field.name)),
        findings: Vec::new(),
    };
    judge_area(farm, field, &mut ground);
    judge_strips(farm, pass, field, &kept, &mut ground);
    unmatched(farm, field, &asked, &kept, &mut ground);
    ground.strips.extend(typed(farm, field, &asked));
    ground.working = working(farm, field, &ground);
    ground
}

/// A strip to something drawn.
fn to_drawn(field: &Field, kept: &Kept) -> Strip {
    let on_plane = field.boundary.as_ref().and_then(Shape::on_plane);
    let cut = on_plane.map(|on_plane| on_plane.cut(std::slice::from_ref(&kept.part)));
    Strip {
        to: To::Surrounding(kept.id.clone()),
        what: kept.drawn.name.clone(),
        who: kept.asking.spoken.speaker.name(),
        basis: kept.asking.spoken.basis(),
        width: kept.asking.width,
        distance: Some(kept.distance),
        unsprayed: cut.as_ref().and_then(|cut| cut.shape.clone()),
        area: cut.as_ref().map_or(Area::ZERO, |cut| cut.area),
        edge: cut.as_ref().map_or(Length::ZERO, |cut| cut.edge),
        downwind_only: kept.asking.downwind_only,
        applies: kept.applies,
    }
}

/// The strips to typed neighbours, which nothing measures. Those that are drawn as well stand among what is drawn.
fn typed<'a>(farm: &'a Farm, field: &'a Field, asked: &'a [Asking<'a>]) -> impl Iterator<Item = Strip> + 'a {
    field.neighbours.iter().enumerate().filter_map(move |(at, neighbour)| {
        let (width, asking) = strips::to_neighbour(asked, neighbour)?;
        (!strips::stands_for(farm, field, neighbour)).then(|| Strip {
            to: To::Neighbour(at),
            what: neighbour.what.trim().to_owned(),
            who: asking.spoken.speaker.name(),
            basis: asking.spoken.basis(),
            width,
            distance: neighbour.distance.as_ref().map(AsTyped::value),
            unsprayed: None,
            area: Area::ZERO,
            edge: Length::ZERO,
            downwind_only: asking.downwind_only,
            applies: Applies::NotMeasured,
        })
    })
}

/// Whether the two areas of a field speak of the same ground.
fn judge_area(farm: &Farm, field: &Field, ground: &mut FieldGround) {
    let about = || Subject::Field(ground.field.clone());
    let Some(measured) = ground.measured else {
        if field.area_from == AreaFrom::Boundary {
            let text = t!("ground-is-to-go-by-its-boundary", name = field.name);
            let found =
                Finding::check(about(), text, Basis::Arithmetic).hint(t!("ground-draw-or-import-its-boundary-in"));
            ground.findings.push(found);
        }
        return;
    };
    let Some((most, basis)) = practice::of(farm, "area_differs", |practice| &practice.area_differs) else { return };
    let differs = measured.ratio(ground.stated).map_or(f64::INFINITY, |ratio| ratio - 1.0);
    if differs.abs() <= most.to_fraction() + 1e-9 || (measured.is_zero() && ground.stated.is_zero()) {
        return;
    }
    let text = t!(
        "ground-its-boundary-holds-are-stated-the",
        name = field.name,
        measured = measured.show(farm.units),
        area = field.area.text(),
        than = match differs {
            differs if !differs.is_finite() => "none",
            differs if differs < 0.0 => "less",
            _ => "more",
        },
        differs = crate::quantity::Share::from_fraction(differs.abs()).show(farm.units),
        from = if ground.from == AreaFrom::Boundary { "boundary" } else { "stated" }
    );
    ground.findings.push(Finding::check(about(), text, basis).hint(t!("ground-mend-the-area-or-the-boundary")));
}

/// What is said of the strips to what is drawn.
fn judge_strips(farm: &Farm, pass: &Pass, field: &Field, kept: &[Kept], ground: &mut FieldGround) {
    let units = farm.units;
    let about = || Subject::Field(ground.field.clone());
    let mut findings = Vec::new();
    for (strip, kept) in ground.strips.iter().zip(kept) {
        let (who, what, wide) = (&strip.who, &strip.what, strip.width.show(units));
        let spoken = &kept.asking.spoken;
        let down = if strip.downwind_only { t!("ground-where-the-wind-blows-toward-it") } else { "" };
        // By what kind it is drawn as a label's word may mean more than its writer meant.
        let by_kind = if named::mean_name(kept.asking.to, kept.drawn) {
            String::new()
        } else {
            t!("ground-its-words-are", to = kept.asking.to.trim())
        };
        let head = t!("ground-keeps-from", who = who, wide = wide, what = what, by_kind = by_kind, down = down);
        let along = if strip.edge.is_zero() {
            String::new()
        } else {
            t!("ground-along-of-its-edge", edge = strip.edge.show(units))
        };
        let left = t!("ground-of-stay-unsprayed", area = strip.area.show(units), name = field.name, along = along);
        let (text, hint) = match strip.applies {
            Applies::NotDownwind => {
                (t!("ground-the-wind-planned-for-does-not", head = head, name = field.name), not_downwind())
            }
            _ if strip.area.is_zero() => continue,
            Applies::WindUnknown => (
                t!("ground-no-wind-is-known-for-the", head = head, left = left),
                t!("ground-type-the-wind-expected-for-the"),
            ),
            _ => (format!("{head}; {left}"), if strip.downwind_only { not_downwind() } else { "" }),
        };
        let doubtful = !spoken.doubt.is_empty() || strip.applies == Applies::WindUnknown;
        let level = if doubtful { Level::Check } else { Level::Note };
        findings.push(Finding::new(level, about(), spoken.with_doubt(text), strip.basis.clone()).hint(hint));
    }
    let bases: Vec<Basis> =
        ground.strips.iter().filter(|strip| !strip.area.is_zero()).map(|strip| strip.basis.clone()).collect();
    if bases.is_empty() {
        ground.findings.extend(findings);
        return;
    }
    if field.strips_in_unsprayed && ground.strip_area.exceeds(ground.unsprayed) {
        let text = t!(
            "ground-the-strips-take-more-than-the",
            name = field.name,
            strip_area = ground.strip_area.show(units),
            unsprayed = ground.unsprayed.show(units)
        );
        let hint = t!("ground-mend-what-stays-unsprayed-in-fields");
        findings.push(Finding::check(about(), text, Basis::of_all(&bases)).hint(hint));
    }
    if ground.sprayable.is_zero() && field.sprayable().exceeds(Area::ZERO) {
        let text = t!("ground-the-strips-leave-nothing-of-to", name = field.name);
        findings
            .push(Finding::stop(about(), text, Basis::of_all(&bases)).hint(t!("ground-take-the-field-out-or-choose")));
    }
    if let Some(part) = pass.parts.get(&ground.field)
        && part.exceeds(ground.sprayable)
        && !part.exceeds(field.sprayable())
    {
        let text = t!(
            "ground-of-are-planned-beside-the-strips",
            part = part.show(units),
            name = field.name,
            sprayable = ground.sprayable.show(units)
        );
        findings.push(
            Finding::check(about(), text, Basis::of_all(&bases)).hint(t!("ground-lower-the-ground-typed-for-the")),
        );
    }
    ground.findings.extend(findings);
}

fn not_downwind() -> &'static str {
    t!("ground-mind-the-wind")
}

/// What is drawn close by and may be meant by words that mean nothing that is known.
fn unmatched(farm: &Farm, field: &Field, asked: &[Asking], kept: &[Kept], ground: &mut FieldGround) {
    let Some(on_plane) = field.boundary.as_ref().and_then(Shape::on_plane) else { return };
    let about = Subject::Field(ground.field.clone());
    for asking in asked {
        let close = strips::drawn(farm, field, asking.width).filter(|(id, drawn)| {
            on_plane.distance(&drawn.shape, asking.width).is_some_and(|distance| asking.width.exceeds(distance))
                && !kept.iter().any(|kept| kept.id == *id)
                && !named::mean(asking.to, drawn)
                && named::may_mean(asking.to, drawn)
        });
        let names: Vec<String> = once(close.map(|(_, drawn)| drawn.name.clone()));
        if names.is_empty() {
            continue;
        }
        let to = match asking.to.trim() {
            "" => t!("ground-something-that-is-not-named"),
            to => to,
        };
        let text = t!(
            "ground-keeps-from-whether-that-means-closer",
            speaker = asking.spoken.speaker.name(),
            width = asking.width.show(farm.units),
            to = to,
            names = listed(&names),
            name = field.name
        );
        ground.findings.push(
            Finding::check(about.clone(), asking.spoken.with_doubt(text), asking.spoken.basis())
                .hint(t!("ground-choose-on-the-map-what-it")),
        );
    }
}

/// How the ground of a field comes about.
fn working(farm: &Farm, field: &Field, ground: &FieldGround) -> Working {
    let units = farm.units;
    let mut working =
        Working::new(t!("ground-ground-of", name = field.name)).step(t!("ground-stated"), field.area.show(units));
    if let Some(measured) = ground.measured {
        working = working.step(t!("ground-within-the-boundary-on-wgs-84"), measured.show(units)).step(
            t!(
                "ground-the-plan-goes-by-the-area",
                from = if ground.from == AreaFrom::Boundary { "boundary" } else { "stated" }
            ),
            ground.area.show(units),
        );
    }
    if let Some(unsprayed) = &field.unsprayed {
        working = working.step(t!("ground-stays-unsprayed"), unsprayed.show(units));
    }
    let measured: Vec<&Strip> = ground.strips.iter().filter(|strip| !strip.area.is_zero()).collect();
    for strip in &measured {
        let wind = if strip.downwind_only { t!("ground-down-the-wind") } else { "" };
        working = working.step(
            t!("ground-strip-of-to", width = strip.width.show(units), what = strip.what, who = strip.who, wind = wind),
            strip.area.show(units),
        );
    }
    if measured.len() > 1 {
        working = working.step(t!("ground-the-strips-together-ground-in-two"), ground.strip_area.show(units));
    }
    if !measured.is_empty() && field.strips_in_unsprayed {
        let larger = ground.unsprayed.max(ground.strip_area);
        working = working.step(t!("ground-the-larger-of-what-stays-unsprayed"), larger.show(units));
    }
    working.step(t!("ground-can-be-sprayed"), ground.sprayable.show(units))
}
