//! Adjuvants that a sentence requires, wants, allows or forbids, as statements of the form.
//!
//! The form takes classes of one role that are required, or preferred, as alternatives (`mix::choice::voices`); so "COC or NIS" can be
//! entered, and "COC and NIS" cannot.

use super::build::Becomes;
use super::lists::{Dose, Joined};
use super::made::{Made, both};
use super::phrases::Catch;
use super::table::Says as Phrase;
use super::units::Measure;
use crate::farm::Says;
use crate::farm::label::Stance;
use crate::language::t;
use crate::mix::choice::Role;
use crate::quantity::{AsTyped, Rate};

/// The statements for the adjuvants that a phrase caught.
///
/// # Errors
/// Why the form cannot hold what is said of them.
pub(super) fn made(says: Phrase, caught: &[Catch]) -> Result<Made, String> {
    let (doses, joined) = caught
        .iter()
        .find_map(|catch| if let Catch::Doses(doses, joined) = catch { Some((doses, *joined)) } else { None })
        .ok_or_else(|| t!("label-a-figure-in-it-cannot-be").to_owned())?;
    let stance = match says {
        Phrase::AdjuvantRequired => Stance::Required,
        Phrase::AdjuvantPreferred => Stance::Preferred,
        Phrase::AdjuvantAllowed => Stance::Allowed,
        Phrase::AdjuvantDiscouraged => Stance::Discouraged,
        _ => Stance::Forbidden,
    };
    let asks = matches!(stance, Stance::Required | Stance::Preferred);
    let objects = matches!(stance, Stance::Discouraged | Stance::Forbidden);
    let roles: Vec<Role> = doses.iter().map(|dose| Role::of(dose.class)).collect();
    let is_one_role = roles.iter().all(|role| Some(role) == roles.first());
    let are_all_apart =
        roles.iter().enumerate().all(|(at, role)| !roles.iter().skip(at + 1).any(|other| other == role));
    match joined {
        Joined::Or if asks && !is_one_role => return Err(t!("label-the-form-cannot-hold-either").to_owned()),
        Joined::And if asks && !are_all_apart => return Err(t!("label-the-form-takes-one-of-a-role").to_owned()),
        // Both together, or neither?
        Joined::And if objects => return Err(t!("label-and-may-mean-both-together").to_owned()),
        _ => {}
    }
    // "COC or MSO at 1 % v/v": the rate behind the last is of those before it, too.
    let last = doses.last().and_then(|dose| dose.rate.as_ref());
    // "NIS may be added at 0.25 % v/v": behind the verb.
    let behind = caught.iter().find_map(|catch| if let Catch::Figure(figure) = catch { Some(figure) } else { None });
    if behind.is_some() && (doses.len() > 1 || last.is_some()) {
        return Err(t!("label-a-figure-in-it-cannot-be").to_owned());
    }
    let mut all = Vec::new();
    for Dose { class, rate } in doses {
        let is_shared = rate.is_none() && joined == Joined::Or;
        let figure = rate.as_ref().or(last.filter(|_| is_shared)).or(behind);
        if figure.is_some() && objects {
            return Err(t!("label-it-speaks-against-a-rate-of").to_owned());
        }
        let mut ends: (Option<AsTyped<Rate>>, Option<AsTyped<Rate>>) = (None, None);
        let mut note = "";
        if let Some(figure) = figure {
            let (Measure::Rate(unit) | Measure::OtherRate(unit)) = &figure.measure else {
                return Err(t!("label-a-figure-in-it-cannot-be").to_owned());
            };
            let (least, most, of_one) =
                both(figure, unit).ok_or_else(|| t!("label-a-figure-in-it-cannot-be").to_owned())?;
            ends = (Some(least), Some(most));
            note = of_one;
        }
        note = match (joined, is_shared && figure.is_some()) {
            (Joined::Or, true) => t!("label-the-rate-behind-the-last-is"),
            (Joined::Or, false) if asks => t!("label-one-of-them-will-do"),
            _ => note,
        };
        let says = Says::Adjuvant { class: *class, stance, least: ends.0, most: ends.1, at_least: None, at_most: None };
        all.push((Becomes::Says(says), note));
    }
    Ok(all)
}
