//! Findings: what the planner has to say, with its level and its basis.

use std::fmt;

use crate::farm::Id;
use crate::language::t;
use crate::plausible::Offer;
use crate::room::Room;

pub use crate::typed_at::TypedAt;

/// How much a finding weighs.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Level {
    /// Worth knowing.
    Note,
    /// A person must decide.
    Check,
    /// A label, a law or physics forbids it.
    Stop,
}

impl Level {
    /// The word on screen and on paper.
    pub fn word(self) -> &'static str {
        match self {
            Self::Note => t!("core-note"),
            Self::Check => t!("core-check"),
            Self::Stop => t!("core-stop"),
        }
    }
}

/// On what a finding rests.
#[derive(Clone, Debug, PartialEq, Eq, Hash)]
pub enum Basis {
    /// The label as typed by the user: which product, and where on it.
    Label(String),
    /// A rule of law typed by the user: which, and since when.
    Law(String),
    /// A limit that the farm typed for itself.
    Own,
    /// Local advice typed by the user: whose, and when.
    Local(String),
    /// A published source.
    Published(String),
    /// Common practice, no source.
    Practice,
    /// Arithmetic on what was typed.
    Arithmetic,
}

impl Basis {
    /// Of a row in a rule table, by what stands in its source column.
    pub fn of_source(source: &str) -> Self {
        if source == "common practice, no source" { Self::Practice } else { Self::Published(source.to_owned()) }
    }

    /// Of several labels and laws at once, each named as it is; where a law is among them it is a law's.
    pub(crate) fn of_all(all: &[Self]) -> Self {
        let all = crate::label::once(all.iter());
        let joined = |each: fn(&Self) -> String| all.iter().map(|basis| each(basis)).collect::<Vec<_>>().join("; ");
        if all.iter().any(|basis| matches!(basis, Self::Law(_))) {
            Self::Law(joined(|basis| match basis {
                Self::Label(source) => t!("core-label-of", source = source),
                other => other.source().to_owned(),
            }))
        } else {
            Self::Label(joined(|basis| basis.source().to_owned()))
        }
    }

    /// The kind, as the machine-readable plan names it.
    pub const fn kind(&self) -> &'static str {
        match self {
            Self::Label(_) => "label",
            Self::Law(_) => "law",
            Self::Own => "own",
            Self::Local(_) => "local",
            Self::Published(_) => "published",
            Self::Practice => "practice",
            Self::Arithmetic => "arithmetic",
        }
    }

    /// The source in words.
    pub fn source(&self) -> &str {
        match self {
            Self::Own => t!("core-what-this-farm-keeps-to"),
            Self::Label(source) | Self::Law(source) | Self::Local(source) | Self::Published(source) => source,
            Self::Practice => t!("core-common-practice-no-source"),
            Self::Arithmetic => t!("core-arithmetic"),
        }
    }
}

impl fmt::Display for Basis {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::Label(source) => write!(f, "{}", t!("core-label-of-as-typed", source = source)),
            Self::Law(source) => write!(f, "{}", t!("core-as-typed", source = source)),
            other => f.write_str(other.source()),
        }
    }
}

/// What a finding speaks of, so that the desk can lead there.
#[derive(Clone, Debug, PartialEq, Eq, Hash)]
pub enum Subject {
    /// The farm as a whole.
    Farm,
    /// The pass itself.
    Pass(Id),
    /// A field.
    Field(Id),
    /// A product.
    Product(Id),
    /// A water.
    Water(Id),
    /// A rig.
    Rig(Id),
    /// A load of the pass, by number.
    Load(u32),
    /// A record.
    Record(Id),
}

impl fmt::Display for Subject {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::Farm => f.write_str("farm"),
            Self::Pass(id) => write!(f, "pass:{id}"),
            Self::Field(id) => write!(f, "field:{id}"),
            Self::Product(id) => write!(f, "product:{id}"),
            Self::Water(id) => write!(f, "water:{id}"),
            Self::Rig(id) => write!(f, "rig:{id}"),
            Self::Load(number) => write!(f, "load:{number}"),
            Self::Record(id) => write!(f, "record:{id}"),
        }
    }
}

/// One thing the planner has to say.
#[derive(Clone, Debug, PartialEq, Eq, Hash)]
pub struct Finding {
    /// How much it weighs.
    pub level: Level,
    /// What it speaks of.
    pub about: Subject,
    /// What is the matter, in a sentence.
    pub text: String,
    /// What to do about it; may be empty.
    pub hint: String,
    /// On what it rests.
    pub basis: Basis,
    /// What was probably meant in place of what is typed, the likeliest first; mostly empty.
    pub offers: Vec<Offer>,
    /// Which room of the core says it.
    pub room: Room,
    /// Where on the page of what it speaks of its cause is typed, where it is one place alone.
    pub at: Option<TypedAt>,
}

impl Finding {
    /// A finding of a level.
    #[track_caller]
    pub fn new(level: Level, about: Subject, text: impl Into<String>, basis: Basis) -> Self {
        Self {
            level,
            about,
            text: text.into(),
            hint: String::new(),
            basis,
            offers: Vec::new(),
            room: Room::here(),
            at: None,
        }
    }

    /// A Stop.
    #[track_caller]
    pub fn stop(about: Subject, text: impl Into<String>, basis: Basis) -> Self {
        Self::new(Level::Stop, about, text, basis)
    }

    /// A Check.
    #[track_caller]
    pub fn check(about: Subject, text: impl Into<String>, basis: Basis) -> Self {
        Self::new(Level::Check, about, text, basis)
    }

    /// A Note.
    #[track_caller]
    pub fn note(about: Subject, text: impl Into<String>, basis: Basis) -> Self {
        Self::new(Level::Note, about, text, basis)
    }

    /// With a word on what to do.
    #[must_use]
    pub fn hint(mut self, hint: impl Into<String>) -> Self {
        self.hint = hint.into();
        self
    }

    /// With where its cause is typed.
    #[must_use]
    pub const fn at(mut self, place: TypedAt) -> Self {
        self.at = Some(place);
        self
    }

    /// With what was probably meant.
    #[must_use]
    pub fn offering(mut self, offers: Vec<Offer>) -> Self {
        self.offers = offers;
        self
    }
}
