//! What the review keeps: the records laid out once for a state of the farm, each page once for a choice, when it is first looked
//! at. No other frame reckons anything.

use std::cell::OnceCell;
use std::rc::Rc;

use tankard_core::farm::{Effect, Farm, Id};
use tankard_core::season::review::compare::{Compared, Side, compare};
use tankard_core::season::review::words::by_number;
use tankard_core::season::review::{
    Actives, Adjuvants, Choice, Cost, Index, Outcomes, Passes, Picked, Planned, Products, Resistance, Work, actives,
    adjuvants, cost, outcomes, passes, planned, products, resistance, weather, work,
};
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

/// The pages of a choice.
#[derive(Debug)]
pub struct Pages {
    index: Rc<Index>,
    choice: Choice,
    /// How many records are looked at.
    pub(super) records: usize,
    passes: OnceCell<Passes>,
    products: OnceCell<Products>,
    actives: OnceCell<Actives>,
    resistance: OnceCell<(Resistance, Vec<usize>)>,
    adjuvants: OnceCell<Adjuvants>,
    planned: OnceCell<Planned>,
    unmeasured: OnceCell<weather::Unmeasured>,
    cost: OnceCell<Cost>,
    work: OnceCell<Work>,
    outcomes: OnceCell<Outcomes>,
}

impl Pages {
    fn of(index: Rc<Index>, choice: Choice) -> Self {
        let records = index.pick(&choice).records();
        Self {
            index,
            choice,
            records,
            passes: OnceCell::new(),
            products: OnceCell::new(),
            actives: OnceCell::new(),
            resistance: OnceCell::new(),
            adjuvants: OnceCell::new(),
            planned: OnceCell::new(),
            unmeasured: OnceCell::new(),
            cost: OnceCell::new(),
            work: OnceCell::new(),
            outcomes: OnceCell::new(),
        }
    }

    fn made<'a, T>(&'a self, kept: &'a OnceCell<T>, make: impl FnOnce(&Picked<'_>) -> T) -> &'a T {
        kept.get_or_init(|| make(&self.index.pick(&self.choice)))
    }

    pub(super) fn passes(&self) -> &Passes {
        self.made(&self.passes, passes::page)
    }

    pub(super) fn products(&self) -> &Products {
        self.made(&self.products, products::page)
    }

    pub(super) fn actives(&self) -> &Actives {
        self.made(&self.actives, actives::page)
    }

    /// The page of resistance groups, with the places of its fields by name.
    pub(super) fn resistance(&self) -> &(Resistance, Vec<usize>) {
        self.made(&self.resistance, |picked| {
            let page = resistance::page(picked);
            let mut by_name: Vec<usize> = (0..page.fields.len()).collect();
            by_name.sort_by_cached_key(|at| page.fields.get(*at).map(|field| by_number(&field.name)));
            (page, by_name)
        })
    }

    pub(super) fn adjuvants(&self) -> &Adjuvants {
        self.made(&self.adjuvants, adjuvants::page)
    }

    pub(super) fn planned(&self) -> &Planned {
        self.made(&self.planned, planned::page)
    }

    pub(super) fn unmeasured(&self) -> weather::Unmeasured {
        *self.made(&self.unmeasured, weather::unmeasured)
    }

    pub(super) fn cost(&self) -> &Cost {
        self.made(&self.cost, cost::page)
    }

    pub(super) fn work(&self) -> &Work {
        self.made(&self.work, work::page)
    }

    pub(super) fn outcomes(&self) -> &Outcomes {
        self.made(&self.outcomes, outcomes::page)
    }
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
    pub pages: Rc<Pages>,
    compared: Option<Beside>,
    trials: Option<Rc<Vec<Held>>>,
}

/// What was kept, where nothing that it depends on has changed, or else what is new. `None` where nothing is recorded.
pub(super) fn fresh(
    before: Option<Kept>,
    index: &Rc<Index>,
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
        let mut fields: Vec<(Id, String)> = index.fields().map(|(id, name)| (id.clone(), name.to_owned())).collect();
        fields.sort_by_cached_key(|(_, name)| by_number(name));
        let mut crops: Vec<String> = index.crops().map(str::to_owned).collect();
        crops.sort_by_key(|crop| (crop.is_empty(), crop.to_lowercase()));
        (Rc::clone(index), Rc::new(fields), Rc::new(crops), None)
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
    let pages = Rc::new(Pages::of(Rc::clone(&index), choice.clone()));
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
        pages,
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
