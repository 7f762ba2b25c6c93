//! What the labels of a mix and the laws of its day ask of the setting: droplet classes and speed over ground, the tightest of each.

use super::setting::Classes;
use crate::farm::label::Says;
use crate::farm::{Droplets, Farm, Field, Pass};
use crate::finding::Basis;
use crate::label::droplets::words;
use crate::label::when::Situation;
use crate::label::{Speaker, Spoken, laws, listed};
use crate::quantity::{AsTyped, Speed};

/// What labels and laws ask of the setting. A statement of which cannot be told whether it speaks is taken to speak.
#[derive(Clone, Debug, Default)]
pub(crate) struct Asked {
    /// The finest class and the coarsest that suit all of them; `None` where none asks.
    pub(crate) droplets: Option<(Droplets, Option<Droplets>)>,
    /// Where they ask for droplets.
    droplets_at: Vec<Basis>,
    /// The products whose labels ask for droplets.
    products: usize,
    /// The lowest of the highest speeds.
    pub(crate) speed: Option<Speed>,
    /// Where that stands.
    pub(crate) speed_at: Option<Basis>,
}

impl Asked {
    /// What is asked of a pass, on all its fields.
    pub(crate) fn of(farm: &Farm, pass: &Pass) -> Self {
        let mut asked = Self::default();
        let of_setting = |says: &Says| matches!(says, Says::Droplets { .. } | Says::GroundSpeed { .. });
        let mut fields: Vec<&Field> = Vec::new();
        for field in pass.fields.iter().filter_map(|id| farm.fields.get(id)) {
            if !fields.iter().any(|other| other.crop == field.crop && other.stage == field.stage) {
                fields.push(field);
            }
        }
        for (id, product) in pass.mix.iter().filter_map(|line| farm.products.get_key_value(&line.product)) {
            if farm.laws.is_empty() && !product.label.iter().any(|statement| of_setting(&statement.says)) {
                continue;
            }
            let situation = Situation::new(farm, pass, id, product);
            let mut speaks = false;
            for (speaker, statement) in laws::binding(farm, product, pass.date, of_setting) {
                let Some(spoken) = fields.iter().find_map(|field| Spoken::of(speaker, statement, field, &situation))
                else {
                    continue;
                };
                match &statement.says {
                    Says::Droplets { finest, coarsest } => {
                        speaks |= matches!(speaker, Speaker::Label(_));
                        asked.tighten(*finest, *coarsest, spoken.basis());
                    }
                    Says::GroundSpeed { most } if asked.speed.is_none_or(|speed| most.value() < speed) => {
                        asked.speed = Some(most.value());
                        asked.speed_at = Some(spoken.basis());
                    }
                    _ => {}
                }
            }
            asked.products += usize::from(speaks);
        }
        asked
    }

    fn tighten(&mut self, finest: Droplets, coarsest: Option<Droplets>, at: Basis) {
        let (old, most) = self.droplets.unwrap_or((finest, coarsest));
        let most = match (most, coarsest) {
            (Some(a), Some(b)) => Some(a.min(b)),
            (a, b) => a.or(b),
        };
        self.droplets = Some((old.max(finest), most));
        if !self.droplets_at.contains(&at) {
            self.droplets_at.push(at);
        }
    }

    /// Whether classes surely suit all that is asked.
    pub(crate) fn suit(&self, classes: Classes) -> bool {
        self.droplets.is_none_or(|(finest, coarsest)| {
            classes.finest >= finest && coarsest.is_none_or(|coarsest| classes.coarsest <= coarsest)
        })
    }

    /// What is asked of the droplets, in words: "coarse or coarser".
    pub(crate) fn droplet_words(&self) -> String {
        self.droplets.map_or_else(String::new, |(finest, coarsest)| words(finest, coarsest))
    }

    /// Who asks for droplets: "the label asks", "both labels ask".
    pub(crate) fn who(&self) -> &'static str {
        let law = self.droplets_at.iter().any(|at| matches!(at, Basis::Law(_)));
        match self.products {
            0 if law => "law",
            _ if law => "labels-and-laws",
            0 | 1 => "label",
            2 => "both-labels",
            _ => "all-labels",
        }
    }

    /// Where the droplets stand.
    pub(crate) fn places(&self) -> Basis {
        if self.droplets_at.iter().any(|at| matches!(at, Basis::Law(_))) {
            return Basis::of_all(&self.droplets_at);
        }
        let places: Vec<String> = self.droplets_at.iter().map(|at| at.source().to_owned()).collect();
        Basis::Label(listed(&places))
    }
}

/// The speed of a pass; `None` where none is typed or it is nothing.
pub(crate) fn speed_of(farm: &Farm, pass: &Pass) -> Option<Speed> {
    pass.speed_in(farm).map(AsTyped::value).filter(|speed| !speed.is_zero())
}
