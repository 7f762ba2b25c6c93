//! Blending two waters: hard well water with rain water, say.
//!
//! Ions mix by volume. Acidity does not, and neither what the eye sees nor the conductivity is reckoned.

use thiserror::Error;

use super::hardness::from_ions;
use crate::farm::Water;
use crate::language::t;
use crate::quantity::number::show;
use crate::quantity::{AsTyped, Hardness, IonContent, Quantity, Share};

/// Why no blend of two waters has a hardness.
#[derive(Clone, Debug, PartialEq, Eq, Error)]
pub enum NoBlend {
    /// The hardness of a water is not known.
    #[error("{}", t!("water-the-hardness-of-is-not-known", it = .0))]
    Unknown(String),
    /// The wanted hardness does not lie between the two.
    #[error("{}", t!("water-a-blend-has-between", least = show(.0.to_ppm(), 0), most = show(.1.to_ppm(), 0)))]
    OutOfReach(Hardness, Hardness),
    /// Both are equally hard and have it already.
    #[error("{}", t!("water-both-waters-are-equally-hard-so"))]
    Alike,
}

/// The whole hardness of a water; one ion alone does not tell it.
fn whole(water: &Water) -> Result<Hardness, NoBlend> {
    match (&water.calcium, &water.magnesium, &water.hardness) {
        (Some(calcium), Some(magnesium), _) => Ok(from_ions(calcium.value(), magnesium.value())),
        (_, _, Some(stated)) => Ok(stated.value()),
        _ => Err(NoBlend::Unknown(water.name.clone())),
    }
}

/// The hardness of a blend that takes a share of `b` and the rest of `a`.
///
/// # Errors
/// Where the hardness of one is not known.
pub fn hardness_at(a: &Water, b: &Water, share: Share) -> Result<Hardness, NoBlend> {
    let (a, b, share) = (whole(a)?, whole(b)?, share.to_fraction());
    Ok(a * (1.0 - share) + b * share)
}

/// The share of `b` that brings a blend with `a` to a hardness.
///
/// # Errors
/// Where the hardness of one is not known, where the target does not lie between the two, or where both are alike.
///
/// # References
/// Arithmetic: (target - a) / (b - a).
///
/// # Examples
/// A well of 400 ppm with rain water of 20 ppm: half and a bit of rain water brings 200 ppm.
/// ```
/// use tankard_core::farm::Water;
/// use tankard_core::quantity::{AsTyped, Hardness};
/// use tankard_core::water::blend::share_for;
/// let hard = |text| Water { hardness: AsTyped::parse(text).ok(), ..Water::default() };
/// let share = share_for(&hard("400 ppm"), &hard("20 ppm"), Hardness::from_ppm(200.0))?;
/// assert!((share.to_percent() - 52.631_579).abs() < 1e-6);
/// # Ok::<(), tankard_core::water::blend::NoBlend>(())
/// ```
pub fn share_for(a: &Water, b: &Water, target: Hardness) -> Result<Share, NoBlend> {
    let (a, b) = (whole(a)?, whole(b)?);
    let (least, most) = (a.min(b), a.max(b));
    if least.exceeds(target) || target.exceeds(most) {
        return Err(NoBlend::OutOfReach(least, most));
    }
    match (target - a).ratio(b - a) {
        Some(share) => Ok(Share::from_fraction(share.clamp(0.0, 1.0))),
        None => Err(NoBlend::Alike),
    }
}

/// The blend that takes a share of `b` and the rest of `a`, as a water of its own. Each ion mixes by volume; one that
/// either water does not state is not stated in the blend. pH, conductivity and clarity are left out.
///
/// # Valid range
/// Shares from 0 to 100 %; at the ends the blend is the one water or the other. Figures are rounded to a thousandth of a
/// ppm, as they are kept in words.
pub fn blend(a: &Water, b: &Water, share: Share) -> Water {
    let part = share.to_fraction();
    if part <= 0.0 {
        return a.clone();
    }
    if part >= 1.0 {
        return b.clone();
    }
    let ion = |a: &Option<AsTyped<IonContent>>, b: &Option<AsTyped<IonContent>>| {
        let (a, b) = (a.as_ref()?.value(), b.as_ref()?.value());
        ppm((a * (1.0 - part) + b * part).to_ppm())
    };
    let (calcium, magnesium) = (ion(&a.calcium, &b.calcium), ion(&a.magnesium, &b.magnesium));
    // Both ions tell the hardness; where they are not known of both waters, it is kept as a figure of its own.
    let hardness = if calcium.is_some() && magnesium.is_some() {
        None
    } else {
        hardness_at(a, b, share).ok().and_then(|hardness| ppm(hardness.to_ppm()))
    };
    let percent = |part: f64| show(part * 100.0, 1);
    Water {
        name: t!("water-with", name = a.name, name2 = b.name, part = percent(part)),
        calcium,
        magnesium,
        sodium: ion(&a.sodium, &b.sodium),
        potassium: ion(&a.potassium, &b.potassium),
        iron: ion(&a.iron, &b.iron),
        manganese: ion(&a.manganese, &b.manganese),
        hardness,
        bicarbonate: ion(&a.bicarbonate, &b.bicarbonate),
        acidity: None,
        conductivity: None,
        clarity: None,
        flow: None,
        sampled: None,
        note: t!(
            "water-reckoned-not-analysed-of-and-of",
            percent = percent(1.0 - part),
            name = a.name,
            part = percent(part),
            name2 = b.name
        ),
    }
}

/// A figure in ppm as a person would type it. Without a group sign, which may mean two things.
fn ppm<Q: Quantity>(value: f64) -> Option<AsTyped<Q>> {
    let text = format!("{value:.3}");
    AsTyped::parse(&format!("{} ppm", text.trim_end_matches('0').trim_end_matches('.'))).ok()
}
