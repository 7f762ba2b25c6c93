//! What the review keeps: the records laid out once for a state of the farm, the pages once for a choice. A frame reckons nothing.

use std::rc::Rc;

use tankard_core::farm::{Effect, Farm, Id};
use tankard_core::season::review::compare::{Compared, Side, compare};
use tankard_core::season::review::words::by_number;
use tankard_core::season::review::{Choice, Index, Review, review};
use tankard_core::season::trials::{Judged, judge};

/// What of the records is looked at, as it is chosen at the top of the page.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Asked {
    /// The first and the last season; none for the newest.
    pub seasons: Option<(i16, i16)>,
    /// A field; none for all.
    pub field: Option<Id>,
    /// A crop as typed, empty for ground whose crop was not; none for all.
    pub crop: Option<String>,
}

/// Two choices of adjuvants with what comparing them gave.
#[derive(Clone, Debug)]
struct Beside {
    effect: Effect,
    one: Side,
    other: Side,
    compared: Rc<Compared>,
}

/// A trial with what it came to.
#[derive(Clone, Debug)]
pub(super) struct Held {
    pub(super) name: String,
    pub(super) one: String,
    pub(super) other: String,
    pub(super) judged: Judged,
}

/// A review with what it was made of.
#[derive(Clone, Debug)]
pub struct Kept {
    revision: u64,
    asked: Asked,
    this_year: i16,
    /// The records laid out.
    pub index: Rc<Index>,
    /// The seasons that have records, the first one first.
    pub(super) years: Vec<i16>,
    /// The fields to choose from, by name.
    pub(super) fields: Rc<Vec<(Id, String)>>,
    /// The crops to choose from, by name.
    pub(super) crops: Rc<Vec<String>>,
    /// The first and the last season looked at.
    pub(super) seasons: (i16, i16),
    pub(super) choice: Choice,
    /// Its pages.
    pub review: Rc<Review>,
    /// Places of the fields in the page of resistance groups, by name.
    pub(super) by_name: Rc<Vec<usize>>,
    compared: Option<Beside>,
    trials: Option<Rc<Vec<Held>>>,
}

/// What was kept, where nothing that it depends on has changed, or else what is new. `None` where nothing is recorded.
pub(super) fn fresh(
    before: Option<Kept>,
    farm: &Farm,
    revision: u64,
    asked: &mut Asked,
    this_year: i16,
) -> Option<Kept> {
    let before = before.filter(|kept| kept.revision == revision);
    if let Some(kept) = &before
        && (&kept.asked, kept.this_year) == (&*asked, this_year)
    {
        return before;
    }
    let (index, fields, crops, trials) = if let Some(kept) = before {
        (kept.index, kept.fields, kept.crops, kept.trials)
    } else {
        let index = Index::of(farm);
        let mut fields: Vec<(Id, String)> = index.fields().map(|(id, name)| (id.clone(), name.to_owned())).collect();
        fields.sort_by_cached_key(|(_, name)| by_number(name));
        let mut crops: Vec<String> = index.crops().map(str::to_owned).collect();
        crops.sort_by_key(|crop| (crop.is_empty(), crop.to_lowercase()));
        (Rc::new(index), Rc::new(fields), Rc::new(crops), None)
    };
    // What is gone from the records is no longer chosen.
    asked.field.take_if(|field| fields.iter().all(|(id, _)| id != field));
    asked.crop.take_if(|crop| !crops.contains(crop));
    let years = index.seasons();
    let (first, last) = (*years.first()?, *years.last()?);
    let newest = if years.contains(&this_year) { this_year } else { last };
    let (from, to) = asked.seasons.unwrap_or((newest, newest));
    let seasons = (from.clamp(first, last), to.clamp(first, last));
    let choice = Choice {
        fields: asked.field.iter().cloned().collect(),
        crops: asked.crop.iter().cloned().collect(),
        ..Choice::seasons(seasons.0, seasons.1)
    };
    let pages = Rc::new(review(&index.pick(&choice)));
    let mut by_name: Vec<usize> = (0..pages.resistance.fields.len()).collect();
    by_name.sort_by_cached_key(|at| pages.resistance.fields.get(*at).map(|field| by_number(&field.name)));
    Some(Kept {
        revision,
        asked: asked.clone(),
        this_year,
        index,
        years,
        fields,
        crops,
        seasons,
        choice,
        review: pages,
        by_name: Rc::new(by_name),
        compared: None,
        trials,
    })
}

impl Kept {
    pub(super) fn revision(&self) -> u64 {
        self.revision
    }

    /// Two choices of adjuvants compared on an effect; reckoned once.
    pub(super) fn compared(&mut self, effect: &Effect, one: &Side, other: &Side) -> Rc<Compared> {
        let is_same = |known: &&Beside| (&known.effect, &known.one, &known.other) == (effect, one, other);
        if let Some(known) = self.compared.as_ref().filter(is_same) {
            return Rc::clone(&known.compared);
        }
        let compared = Rc::new(compare(&self.index.pick(&self.choice), Some(effect), one, other));
        let (effect, one, other) = (effect.clone(), one.clone(), other.clone());
        self.compared = Some(Beside { effect, one, other, compared: Rc::clone(&compared) });
        compared
    }

    /// The trials with what they came to; reckoned once.
    pub(super) fn trials(&mut self, farm: &Farm) -> Rc<Vec<Held>> {
        let make = || {
            let judged = farm.trials.values().map(|trial| Held {
                name: trial.name.clone(),
                one: trial.one.clone(),
                other: trial.other.clone(),
                judged: judge(farm, trial),
            });
            Rc::new(judged.collect())
        };
        Rc::clone(self.trials.get_or_insert_with(make))
    }
}
