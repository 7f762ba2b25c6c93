//! What a label's directions say, read from their text: rates, spray volume, totals and number of applications, days before harvest
//! and between applications, re-entry, hours without rain, wind, temperature, droplets, stages, buffers, adjuvants, partners, what to wear.
//!
//! A sentence is read only where phrases of `assets/direction-phrases.csv` account for every number and every word in it, and for the headings
//! over it: a word that is not known there ("ditchbanks") may narrow what it says, and one that is ("unless", "aerial") may turn it. Else it
//! is left, with the reason. Nothing that is read enters a farm from here: a person holds each against the label first.
//!
//! No sentence vanishes: what no line accounts for is told as left, those with a limit first.
//!
//! The rooms: `sentences` cuts the text, `tokens` a sentence, `items` finds words and figures in it, `units` what a figure measures,
//! `brackets` amounts said once more, `clauses` what is forbidden twice; `table` is the table of phrases and `phrases` how one fits, `lists`
//! catches what is no figure, `build` reads a sentence, `made` makes statements of what was caught (`adjuvants` those on adjuvants),
//! `crops` for which crop they are, `headings` what stands over them, `settle` what they come to together, `kinds` where in the form
//! what was left belongs, [`against`] what the form holds already.

mod adjuvants;
pub mod against;
mod brackets;
mod build;
mod clauses;
mod crops;
mod headings;
mod items;
mod kinds;
mod lists;
mod made;
mod phrases;
mod sentences;
mod settle;
mod table;
mod tokens;
mod units;

use std::ops::Range;

use crate::farm::{Product, Statement};
use crate::language::t;
use crate::quantity::Units;
use build::Caught;

pub use kinds::Kind;

/// A longer text is no label; what is behind this many bytes is left.
const MOST_TEXT: usize = 200_000;

/// What a text was read as.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Reading {
    /// Statements, in the order of the text.
    pub found: Vec<Found>,
    /// Sentences that no statement accounts for: those with a limit first, each part in the order of the text.
    pub left: Vec<Left>,
}

/// A statement that was read from a sentence.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Found {
    /// What it would be in the form, without the place on the label.
    pub statement: Statement,
    /// The sentence, or the two that make it up.
    pub sentences: Vec<Sentence>,
    /// What was settled in reading it that the sentence leaves open; empty for nothing.
    pub note: String,
}

/// A sentence, with the parts of it that were read.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Sentence {
    /// The sentence.
    pub text: String,
    /// Bytes of it that a phrase accounts for, from left to right.
    pub read: Vec<Range<usize>>,
}

/// A sentence that was not understood.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Left {
    /// The sentence.
    pub sentence: String,
    /// Why, as a sentence.
    pub why: String,
    /// Whether it has a figure or a word that limits are written with: not, only, must, before, unless, avoid, wear…
    pub has_limit: bool,
    /// The kind of statement it belongs to by its words; `None` where they do not tell.
    pub kind: Option<Kind>,
}

impl Left {
    fn new(sentence: &str, why: String) -> Self {
        Self { sentence: sentence.to_owned(), why, has_limit: build::has_limit(sentence), kind: kinds::of(sentence) }
    }
}

/// Reads the directions of a product.
///
/// # Units
/// As the text has them: each value is the number and the unit that stand there. A bare gallon, quart, pint or fluid ounce is not read
/// on a farm with imperial units, nor a bare ounce of a liquid, since either may mean two things.
///
/// # Valid range
/// English, and plain sentences of Spanish. A text of more than 200,000 bytes is read up to there, and that is said.
///
/// # Examples
/// ```
/// use tankard_core::farm::{Formulation, Product, ProductKind, Says};
/// use tankard_core::label::directions::read;
/// use tankard_core::quantity::Units;
///
/// let product = Product::new("Invented 360 SL", ProductKind::Herbicide, Formulation::SL);
/// let reading = read("Do not enter treated areas for 12 hours. Use it if 3 signs agree.", &product, Units::UsCustomary);
/// assert_eq!(reading.found[0].statement.says, Says::ReEntry { hours: 12 });
/// assert_eq!(reading.left[0].sentence, "Use it if 3 signs agree.");
/// ```
pub fn read(text: &str, product: &Product, units: Units) -> Reading {
    let end = (0..=text.len().min(MOST_TEXT)).rev().find(|at| text.is_char_boundary(*at)).unwrap_or(0);
    let (text, behind) = text.split_at_checked(end).unwrap_or((text, ""));
    let mut reading = Reading::default();
    let mut caught: Vec<Caught> = Vec::new();
    let pieces = sentences::cut(text);
    let heads = |piece: &sentences::Piece| {
        piece.is_heading
            && !build::has_limit(&piece.text)
            && pieces
                .iter()
                .any(|other| other.headings.iter().any(|over| *over == piece.text.trim_end_matches(':').trim()))
    };
    let mut before: Option<Vec<Caught>> = None;
    for piece in &pieces {
        let read = match build::of_sentence(piece, product, units) {
            Ok(of_sentence) if piece.follows => build::behind(before.as_deref(), of_sentence, piece),
            read => read,
        };
        before = read.as_ref().ok().cloned();
        match read {
            Ok(of_sentence) => caught.extend(of_sentence),
            // What merely stands over others is no sentence.
            Err(_) if heads(piece) => {}
            Err(why) => reading.left.push(Left::new(&piece.text, why)),
        }
    }
    settle::settle(caught, product, &mut reading);
    settle::other_rates(&mut reading, product, units);
    let place = |left: &Left| pieces.iter().position(|piece| piece.text == left.sentence);
    reading.left.sort_by_key(|left| (!left.has_limit, place(left)));
    if !behind.trim().is_empty() {
        let sentence = format!("{}…", behind.chars().take(60).collect::<String>());
        let why = t!("label-the-text-is-too-long-to").to_owned();
        reading.left.insert(0, Left { sentence, why, has_limit: true, kind: None });
    }
    reading
}

#[cfg(test)]
mod tests;
