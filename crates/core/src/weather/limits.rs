//! The limits that the hours of a pass are held against: what its labels and the laws of its day say, the tightest of each kind, and
//! what the farm keeps to where these say less.
//!
//! An hour outside a label or a law is forbidden, or doubtful where it cannot be told whether the statement speaks. An hour outside
//! what the farm keeps to is doubtful.

use super::practice;
use super::sky::{Air, Lies, Outlook, Rain, Seen};
use super::sun::Second;
use super::{Limit, Verdict};
use crate::farm::label::Says;
use crate::farm::{Farm, Field, Pass, Shape, SunTime, Surrounding};
use crate::finding::Basis;
use crate::ground::{self, Directions, named, side_on_card, strips};
use crate::label::{buffer, weather, when};
use crate::language::days::clock;
use crate::language::{Say, say, t};
use crate::quantity::{AsTyped, Bearing, Length, Quantity, Share, Speed, Temperature, TemperatureSpan, Units};

/// What a limit holds an hour against.
#[derive(Clone, Debug, PartialEq)]
pub enum Kind {
    /// Mean wind at most.
    MostWind(Speed),
    /// Mean wind at least.
    LeastWind(Speed),
    /// Gusts at most.
    MostGust(Speed),
    /// Not while the wind blows toward something beside a field.
    NotToward {
        /// In wind from here; `None` where the side on which it lies is not typed.
        winds: Option<Directions>,
        /// What it is, with its field.
        what: Say,
    },
    /// Not while warm air lies over cold.
    NoInversion,
    /// Air at most.
    MostAir(Temperature),
    /// Air at least.
    LeastAir(Temperature),
    /// Relative humidity at most.
    MostHumidity(Share),
    /// Relative humidity at least.
    LeastHumidity(Share),
    /// Delta T at most.
    MostDeltaT(TemperatureSpan),
    /// Delta T at least.
    LeastDeltaT(TemperatureSpan),
    /// Only between two times by the sun.
    Daylight {
        /// Not before.
        from: SunTime,
        /// Not after.
        to: SunTime,
    },
    /// No rain in the hour and for so many hours after it.
    RainFree {
        /// Hours; 0 for the hour itself alone.
        hours: u32,
    },
}

impl Kind {
    /// Whether it leaves less than another of its kind; `None` where they are not of one kind.
    fn tighter(&self, other: &Self) -> Option<bool> {
        use Kind::{
            Daylight, LeastAir, LeastDeltaT, LeastHumidity, LeastWind, MostAir, MostDeltaT, MostGust, MostHumidity,
            MostWind, NoInversion, NotToward, RainFree,
        };
        Some(match (self, other) {
            (MostWind(a), MostWind(b)) | (MostGust(a), MostGust(b)) => b.exceeds(*a),
            (LeastWind(a), LeastWind(b)) => a.exceeds(*b),
            (MostAir(a), MostAir(b)) => a < b,
            (LeastAir(a), LeastAir(b)) => a > b,
            (MostHumidity(a), MostHumidity(b)) => b.exceeds(*a),
            (LeastHumidity(a), LeastHumidity(b)) => a.exceeds(*b),
            (MostDeltaT(a), MostDeltaT(b)) => a < b,
            (LeastDeltaT(a), LeastDeltaT(b)) => a > b,
            (RainFree { hours: a }, RainFree { hours: b }) => a > b,
            (NoInversion, NoInversion) => false,
            (Daylight { .. }, Daylight { .. }) if self == other => false,
            (NotToward { winds: a, what }, NotToward { winds: b, what: same }) if what == same => match (a, b) {
                (Some(a), Some(b)) if b.hold(a) => false,
                (Some(a), Some(b)) if a.hold(b) => true,
                (None, None) => false,
                _ => return None,
            },
            _ => return None,
        })
    }

    /// As a limit, in any language.
    fn said(&self, units: Units) -> Say {
        let at_least =
            |what: &'static str, least: String| say("card-at-least").with("what", say(what)).with("least", least);
        let at_most = |what: &'static str, most: String| say("card-at-most").with("what", say(what)).with("most", most);
        match self {
            Self::MostWind(wind) => at_most("card-wind", wind.show(units)),
            Self::LeastWind(wind) => at_least("card-wind", wind.show(units)),
            Self::MostGust(gust) => at_most("card-gusts", gust.show(units)),
            Self::NotToward { winds: Some(_), what } => say("card-no-wind-toward").with("what", what.clone()),
            Self::NotToward { winds: None, what } => say("card-no-wind-toward-untyped").with("what", what.clone()),
            Self::NoInversion => say("card-no-inversion"),
            Self::MostAir(air) => at_most("card-air", air.show(units)),
            Self::LeastAir(air) => at_least("card-air", air.show(units)),
            Self::MostHumidity(humidity) => at_most("card-humidity", humidity.show(units)),
            Self::LeastHumidity(humidity) => at_least("card-humidity", humidity.show(units)),
            Self::MostDeltaT(span) => at_most("card-delta-t", span.show(units)),
            Self::LeastDeltaT(span) => at_least("card-delta-t", span.show(units)),
            Self::Daylight { from, to } => {
                say("card-time-from-to").with("from", from.on_card()).with("to", to.on_card())
            }
            Self::RainFree { hours: 0 } => say("card-no-rain"),
            Self::RainFree { hours } => say("card-no-rain-after").with("hours", *hours),
        }
    }
}

/// Whether a limit speaks in air; `None` where it hangs on the temperature and that is not known.
pub(crate) fn speaks_in(limit: &Limit, air: &Air) -> Option<bool> {
    when::hold_in_air(&limit.air, air.temperature)
}

/// How an hour stands to a limit.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum Held {
    Inside,
    Outside,
    /// Likely outside, which nothing but the hour itself decides.
    Likely,
    /// Inside in this part of the hour alone.
    Part(Second, Second),
    /// What it asks about is not known.
    Unknown,
}

/// The rank of a limit: the weightier first.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
enum Rank {
    /// A label or a law that surely speaks.
    Surely,
    /// One of which that cannot be told.
    Doubtful,
    /// What follows from a label's limit and is not said by it.
    Follows,
    /// What the farm keeps to.
    Practice,
}

/// The limits of a pass: the weightiest first.
pub fn of(farm: &Farm, pass: &Pass) -> Vec<Limit> {
    let fields: Vec<&Field> = pass.fields.iter().filter_map(|id| farm.fields.get(id)).collect();
    on(farm, pass, &fields)
}

/// What labels and laws alone ask of a mix on fields.
pub(crate) fn asked(farm: &Farm, pass: &Pass, fields: &[&Field]) -> Vec<Limit> {
    tightest(asks(farm, pass, fields, &neighbours(farm, fields)), farm.units)
}

/// The same with what the farm keeps to, on fields as they were.
pub(crate) fn on(farm: &Farm, pass: &Pass, fields: &[&Field]) -> Vec<Limit> {
    let beside = neighbours(farm, fields);
    let mut all = asks(farm, pass, fields, &beside);
    all.extend(keeps(farm, &beside));
    tightest(all, farm.units)
}

/// Keeps of each kind the tightest of its rank, where no weightier one leaves as little, and puts those into words.
fn tightest(mut all: Vec<(Rank, Limit)>, units: Units) -> Vec<Limit> {
    all.sort_by_key(|(rank, _)| *rank);
    let mut kept: Vec<(Rank, Limit)> = Vec::new();
    for (rank, limit) in all {
        let beaten = |(other, held): &(Rank, Limit)| {
            // Delta T has a limit for good spraying and one for any, both of practice.
            !(rank == Rank::Practice && *other == Rank::Practice)
                && limit.kind.tighter(&held.kind) == Some(false)
                && speaks_whenever(held, &limit)
        };
        if kept.iter().any(beaten) {
            continue;
        }
        kept.retain(|(other, held)| {
            *other != rank
                || rank == Rank::Practice
                || limit.kind.tighter(&held.kind) != Some(true)
                || !speaks_whenever(&limit, held)
        });
        kept.push((rank, limit));
    }
    // As people name them: wind, direction, layers of the air, the air, the sun, rain.
    kept.sort_by_key(|(rank, limit)| (*rank, place(&limit.kind)));
    kept.into_iter().map(|(rank, limit)| in_words(rank, limit, units)).collect()
}

/// Whether a limit speaks in all air in which another does.
fn speaks_whenever(one: &Limit, other: &Limit) -> bool {
    one.air.iter().all(|when| other.air.contains(when))
}

fn place(kind: &Kind) -> u8 {
    match kind {
        Kind::MostWind(_) => 0,
        Kind::LeastWind(_) => 1,
        Kind::MostGust(_) => 2,
        Kind::NotToward { .. } => 3,
        Kind::NoInversion => 4,
        Kind::MostAir(_) => 5,
        Kind::LeastAir(_) => 6,
        Kind::MostHumidity(_) => 7,
        Kind::LeastHumidity(_) => 8,
        Kind::MostDeltaT(_) => 9,
        Kind::LeastDeltaT(_) => 10,
        Kind::Daylight { .. } => 11,
        Kind::RainFree { .. } => 12,
    }
}

/// A limit in words, where it has none yet.
fn in_words(rank: Rank, limit: Limit, units: Units) -> Limit {
    if limit.said != Say::nothing() {
        return limit;
    }
    let (words, doubts) = (limit.kind.said(units), limit.doubts_said());
    match (&limit.kind, rank) {
        // A label that names a wind and no gust: whether a gust counts against it differs.
        (Kind::MostGust(_), Rank::Follows) => Limit {
            said: Say::all([say("card-as-its-wind").with("limit", words), doubts], " "),
            basis: match (limit.basis, practice::source("gust_as_wind")) {
                (Basis::Label(at), Basis::Published(source)) => Basis::Label(t!(
                    "weather-which-names-no-gust",
                    at = at,
                    why = practice::why("gust_as_wind"),
                    source = source
                )),
                (basis, _) => basis,
            },
            ..limit
        },
        _ => Limit { said: Say::all([words, doubts], " "), ..limit },
    }
}

/// What labels and laws say.
fn asks(farm: &Farm, pass: &Pass, fields: &[&Field], beside: &[Beside]) -> Vec<(Rank, Limit)> {
    let mut all = Vec::new();
    let mut named: Vec<(&str, Vec<&Beside>)> = Vec::new();
    for asked in weather::asked(farm, pass, fields) {
        let rank = if asked.doubt.is_empty() { Rank::Surely } else { Rank::Doubtful };
        let outside = if asked.doubt.is_empty() { Verdict::Forbidden } else { Verdict::Doubtful };
        let limit = |kind: Kind, outside: Verdict, asks: bool| Limit {
            said: Say::nothing(),
            basis: asked.basis.clone(),
            outside,
            kind,
            asks,
            air: asked.air.clone(),
            doubt: asked.doubt.clone(),
        };
        let mut add = |kind: Kind| all.push((rank, limit(kind, outside, true)));
        match asked.says {
            Says::Wind { most, least, gust } => {
                add(Kind::MostWind(most.value()));
                if let Some(least) = least {
                    add(Kind::LeastWind(least.value()));
                }
                match gust {
                    Some(gust) => add(Kind::MostGust(gust.value())),
                    None => all.push((Rank::Follows, limit(Kind::MostGust(most.value()), Verdict::Doubtful, false))),
                }
            }
            Says::NotToward { what } => {
                for beside in meant(&mut named, what, beside) {
                    add(Kind::NotToward { winds: beside.winds.clone(), what: beside.words.clone() });
                }
            }
            Says::NoInversion => add(Kind::NoInversion),
            Says::Humidity { least, most } => {
                if let Some(most) = most {
                    add(Kind::MostHumidity(most.value()));
                }
                if let Some(least) = least {
                    add(Kind::LeastHumidity(least.value()));
                }
            }
            Says::DeltaT { least, most } => {
                if let Some(most) = most {
                    add(Kind::MostDeltaT(most.value()));
                }
                if let Some(least) = least {
                    add(Kind::LeastDeltaT(least.value()));
                }
            }
            Says::Temperature { least, most } => {
                if let Some(most) = most {
                    add(Kind::MostAir(most.value()));
                }
                if let Some(least) = least {
                    add(Kind::LeastAir(least.value()));
                }
            }
            Says::Daylight { from, to } => add(Kind::Daylight { from: *from, to: *to }),
            Says::RainFree { hours } if *hours > 0 => add(Kind::RainFree { hours: *hours }),
            Says::Buffer { to, width, .. } => {
                // A label that keeps a strip does not forbid the wind, but asks for care where the neighbour lies within it.
                let within = |beside: &&Beside| beside.distance.is_none_or(|distance| width.exceeds(distance));
                // What is drawn has its strip left.
                let here = meant(&mut named, to, beside).into_iter().filter(|beside| beside.drawn.is_none());
                for beside in here.filter(|beside| beside.winds.is_some()).filter(within) {
                    let kind = Kind::NotToward { winds: beside.winds.clone(), what: beside.words.clone() };
                    all.push((Rank::Follows, limit(kind, Verdict::Doubtful, false)));
                }
            }
            _ => {}
        }
    }
    let may_break = |field: &&&Field| field.boundary.is_some() && !farm.surroundings.is_empty();
    for field in fields.iter().filter(may_break) {
        let asked = strips::asked(farm, pass, field);
        let kept = strips::kept(farm, pass, field, &asked);
        for (kept, winds) in strips::breaks(field, &kept) {
            let spoken = &kept.asking.spoken;
            let (rank, outside) = match spoken.doubt.as_str() {
                "" => (Rank::Surely, Verdict::Forbidden),
                _ => (Rank::Doubtful, Verdict::Doubtful),
            };
            let what =
                say("card-where-no-strip").with("what", kept.drawn.name.as_str()).with("field", field.name.as_str());
            let kind = Kind::NotToward { winds: Some(winds), what };
            let (basis, doubt) = (spoken.basis(), spoken.doubt.clone());
            all.push((rank, Limit { said: Say::nothing(), basis, outside, kind, asks: true, air: Vec::new(), doubt }));
        }
    }
    all
}

/// Something beside a field.
#[derive(Clone, Debug)]
struct Beside<'a> {
    /// What it is.
    what: String,
    /// The winds that blow toward it; `None` where its side is not typed.
    winds: Option<Directions>,
    /// Those that do so from as near as the farm minds; `None` where none does.
    near: Option<Directions>,
    /// Both and the field, in words.
    words: Say,
    /// How far from the edge; `None` where that is not typed.
    distance: Option<Length>,
    /// Where it is drawn.
    drawn: Option<&'a Surrounding>,
}

/// What lies beside the fields, each once.
fn neighbours<'a>(farm: &'a Farm, fields: &[&Field]) -> Vec<Beside<'a>> {
    let mut all: Vec<Beside> = Vec::new();
    let near = practice::of(farm, "near", |practice| &practice.near).map(|(near, _)| near);
    for field in fields {
        all.extend(drawn(farm, field, near));
        let typed = field.neighbours.iter().filter(|neighbour| !neighbour.what.trim().is_empty());
        for neighbour in typed.filter(|neighbour| !strips::stands_for(farm, field, neighbour)) {
            let (what, side) = (neighbour.what.trim(), neighbour.side.trim());
            let words = if side.is_empty() {
                beside_field(what, field)
            } else {
                say("card-neighbour-on")
                    .with("what", what)
                    .with("side", side_on_card(side))
                    .with("field", field.name.as_str())
            };
            let distance = neighbour.distance.as_ref().map(AsTyped::value);
            if let Some(known) = all.iter_mut().find(|known| known.words == words) {
                // Of two of a name on one side the nearer counts, and one that is not measured may be nearer still.
                known.distance = known.distance.zip(distance).map(|(a, b)| a.min(b));
            } else {
                let winds = Bearing::parse(side).ok().map(|side| toward(&Directions::one(side)));
                all.push(Beside { what: what.to_owned(), winds, near: None, words, distance, drawn: None });
            }
        }
    }
    for beside in all.iter_mut().filter(|beside| beside.drawn.is_none()) {
        let is_near = beside.distance.is_none_or(|distance| near.is_none_or(|near| near.exceeds(distance)));
        beside.near = beside.winds.clone().filter(|_| is_near);
    }
    all
}

fn beside_field(what: &str, field: &Field) -> Say {
    say("card-neighbour-beside").with("what", what).with("field", field.name.as_str())
}

/// What is drawn beside a field, with the directions in which it truly lies.
fn drawn<'a>(farm: &'a Farm, field: &Field, near: Option<Length>) -> Vec<Beside<'a>> {
    let Some(on_plane) = field.boundary.as_ref().and_then(Shape::on_plane) else { return Vec::new() };
    let reach = practice::beside();
    strips::drawn(farm, field, reach)
        .filter_map(|(_, drawn)| {
            let beside = on_plane.beside(&[], &drawn.shape, reach)?;
            let is_near = near.is_none_or(|near| near.exceeds(beside.distance));
            Some(Beside {
                what: drawn.name.clone(),
                winds: Some(toward_drawn(&beside)),
                // As a typed neighbour, which lies to one side.
                near: is_near.then(|| toward(&Directions::one(beside.nearest))),
                words: beside_field(&drawn.name, field),
                distance: Some(beside.distance),
                drawn: Some(drawn),
            })
        })
        .collect()
}

/// Which of them a label's words mean; labels that use the same words are asked once.
fn meant<'a, 'b>(
    known: &mut Vec<(&'a str, Vec<&'b Beside<'b>>)>,
    words: &'a str,
    beside: &'b [Beside<'b>],
) -> Vec<&'b Beside<'b>> {
    if let Some((_, meant)) = known.iter().find(|(other, _)| *other == words) {
        return meant.clone();
    }
    let means = |beside: &&Beside| match beside.drawn {
        Some(drawn) => named::mean(words, drawn),
        None => buffer::means(words, &beside.what),
    };
    let meant: Vec<&Beside> = beside.iter().filter(means).collect();
    known.push((words, meant.clone()));
    meant
}

/// What the farm keeps to.
fn keeps(farm: &Farm, beside: &[Beside]) -> Vec<(Rank, Limit)> {
    let mut all = Vec::new();
    let mut add = |found: Option<(Kind, Basis)>, words: Option<Say>, asks: bool| {
        let Some((kind, basis)) = found else { return };
        let said = words.unwrap_or(Say::nothing());
        let (air, doubt) = (Vec::new(), String::new());
        all.push((Rank::Practice, Limit { said, basis, outside: Verdict::Doubtful, kind, asks, air, doubt }));
    };
    let wind = |limit, which, kind: fn(Speed) -> Kind| {
        practice::of(farm, limit, which).map(|(speed, basis)| (kind(speed), basis))
    };
    // Wind that is not known is never taken for calm.
    add(wind("most_wind", |practice| &practice.most_wind, Kind::MostWind), None, true);
    add(wind("least_wind", |practice| &practice.least_wind, Kind::LeastWind), None, true);
    add(wind("most_gust", |practice| &practice.most_gust, Kind::MostGust), None, false);
    for beside in beside {
        if let Some(winds) = &beside.near {
            let kind = Kind::NotToward { winds: Some(winds.clone()), what: beside.words.clone() };
            add(Some((kind, practice::source("near"))), None, false);
        }
    }
    add(Some((Kind::NoInversion, practice::source("inversion_before_sunset"))), None, false);
    let air = |limit, which, kind: fn(Temperature) -> Kind| {
        practice::of(farm, limit, which).map(|(air, basis)| (kind(air), basis))
    };
    add(air("most_air", |practice| &practice.most_air, Kind::MostAir), None, false);
    add(air("least_air", |practice| &practice.least_air, Kind::LeastAir), None, false);
    let span = |limit, which: fn(&crate::farm::Practice) -> &Option<AsTyped<TemperatureSpan>>| {
        practice::of(farm, limit, which)
    };
    if let Some((most, basis)) = span("most_delta_t", |practice| &practice.most_delta_t) {
        add(Some((Kind::MostDeltaT(most), basis)), None, false);
    }
    if let Some((good, basis)) = span("good_delta_t", |practice| &practice.good_delta_t) {
        let words = say("card-delta-t-good").with("good", good.show(farm.units));
        add(Some((Kind::MostDeltaT(good), basis)), Some(words), false);
    }
    if let Some((least, basis)) = span("least_delta_t", |practice| &practice.least_delta_t) {
        add(Some((Kind::LeastDeltaT(least), basis)), None, false);
    }
    add(Some((Kind::RainFree { hours: 0 }, Basis::Practice)), None, false);
    all
}

fn at_most<T: Copy>(found: Option<T>, limit: T, above: fn(T, T) -> bool) -> Held {
    match found {
        None => Held::Unknown,
        Some(found) if above(found, limit) => Held::Outside,
        Some(_) => Held::Inside,
    }
}

/// Degrees by which arithmetic may miss.
const SLIP: f64 = 1e-6;

/// Whether air is warmer than other air, by more than arithmetic may miss.
pub(crate) fn warmer(a: Temperature, b: Temperature) -> bool {
    (a - b).to_celsius() > SLIP
}

fn wider(a: TemperatureSpan, b: TemperatureSpan) -> bool {
    a.to_celsius() - b.to_celsius() > SLIP
}

/// The winds that blow toward something drawn: those that go from some of the field to some of it within reach, and those toward
/// where it is nearest as toward a typed neighbour.
fn toward_drawn(beside: &ground::cut::Beside) -> Directions {
    beside.directions.opposite().and(&toward(&Directions::one(beside.nearest)))
}

/// The winds that blow toward something that lies in some directions.
fn toward(lies: &Directions) -> Directions {
    lies.opposite().wider(practice::toward())
}

/// How air stands to a limit; `None` for limits of another kind.
pub(crate) fn in_air(kind: &Kind, air: &Air) -> Option<Held> {
    Some(match kind {
        Kind::MostWind(most) => at_most(air.wind, *most, Speed::exceeds),
        Kind::LeastWind(least) => at_most(air.wind, *least, |found, least| least.exceeds(found)),
        Kind::MostGust(most) => {
            // A gust is never weaker than the mean.
            let gust = air.gust.map(|gust| air.wind.map_or(gust, |wind| gust.max(wind)));
            match at_most(gust, *most, Speed::exceeds) {
                Held::Unknown if air.wind.is_some_and(|wind| wind.exceeds(*most)) => Held::Outside,
                held => held,
            }
        }
        Kind::NotToward { winds, .. } => match (winds, air.wind_from) {
            (Some(winds), Some(from)) if winds.apart(from).is_some_and(|apart| apart <= SLIP) => Held::Outside,
            (Some(_), Some(_)) => Held::Inside,
            _ => Held::Unknown,
        },
        Kind::MostAir(most) => at_most(air.temperature, *most, warmer),
        Kind::LeastAir(least) => at_most(air.temperature, *least, |found, least| warmer(least, found)),
        Kind::MostHumidity(most) => at_most(air.humidity, *most, Share::exceeds),
        Kind::LeastHumidity(least) => at_most(air.humidity, *least, |found, least| least.exceeds(found)),
        Kind::MostDeltaT(most) => at_most(air.delta_t, *most, wider),
        Kind::LeastDeltaT(least) => at_most(air.delta_t, *least, |found, least| wider(least, found)),
        Kind::NoInversion | Kind::Daylight { .. } | Kind::RainFree { .. } => return None,
    })
}

/// How an hour stands to a limit.
pub(crate) fn held(kind: &Kind, outlook: &Outlook, at: usize, hour: &Seen) -> Held {
    if let Some(held) = in_air(kind, &hour.air) {
        return held;
    }
    match kind {
        Kind::Daylight { from, to } => match &outlook.sun {
            None => Held::Unknown,
            Some(sun) => match sun.within((hour.from, hour.to), *from, *to) {
                None => Held::Outside,
                Some(all) if all == (hour.from, hour.to) => Held::Inside,
                Some((from, to)) => Held::Part(from, to),
            },
        },
        Kind::RainFree { hours } => match outlook.rain(at, *hours) {
            Rain::Yes => Held::Outside,
            Rain::Likely => Held::Likely,
            Rain::Unknown => Held::Unknown,
            Rain::No => Held::Inside,
        },
        _ => match hour.inversion {
            Lies::No => Held::Inside,
            Lies::Likely => Held::Outside,
            Lies::Unknown => Held::Unknown,
        },
    }
}

/// Why an hour does not keep a limit, in words with the hour's own figure; asked for when it is shown, and not before.
pub(crate) fn reason(limit: &Limit, outlook: &Outlook, at: usize, hour: &Seen, units: Units) -> String {
    let reason = outside(limit, outlook, at, hour, units);
    if speaks_in(limit, &hour.air).is_some() {
        reason
    } else {
        t!("weather-and-the-forecast-has-no-air", reason = reason)
    }
}

fn outside(limit: &Limit, outlook: &Outlook, at: usize, hour: &Seen, units: Units) -> String {
    let air = &hour.air;
    let text = &limit.text();
    let wind = || match air.wind {
        Some(wind) => t!("weather-wind", wind = wind.show(units), text = text),
        None => t!("weather-the-forecast-has-no-wind", text = text),
    };
    match &limit.kind {
        Kind::MostWind(_) | Kind::LeastWind(_) => wind(),
        Kind::MostGust(most) => match (air.gust, air.wind) {
            // Mean wind above the limit of a gust is above it, whatever the gust.
            (gust, Some(mean)) if mean.exceeds(*most) && gust.is_none_or(|gust| !gust.exceeds(*most)) => wind(),
            (Some(gust), _) => t!("weather-gust", gust = gust.show(units), text = text),
            (None, _) => t!("weather-the-forecast-has-no-gust", text = text),
        },
        Kind::NotToward { winds: None, .. } => text.clone(),
        Kind::NotToward { .. } => match air.wind_from {
            Some(from) => t!("weather-wind-from", from = from.show(units), text = text),
            None => t!("weather-the-forecast-has-no-direction-of", text = text),
        },
        Kind::MostAir(_) | Kind::LeastAir(_) => match air.temperature {
            Some(air) => t!("weather-air", air = air.show(units), text = text),
            None => t!("weather-the-forecast-has-no-air", text = text),
        },
        Kind::MostHumidity(_) | Kind::LeastHumidity(_) => match air.humidity {
            Some(humidity) => t!("weather-humidity", show_whole = humidity.show_whole(), text = text),
            None => t!("weather-the-forecast-has-no-humidity-or", text = text),
        },
        Kind::MostDeltaT(_) | Kind::LeastDeltaT(_) => match air.delta_t {
            Some(span) => t!("weather-delta-t", span = span.show(units), text = text),
            None => t!("weather-delta-t-cannot-be-told-without", text = text),
        },
        Kind::NoInversion => match hour.sky.inversion.first() {
            Some((sign, basis)) => format!("{sign} ({basis}); {text}"),
            None => t!("weather-where-the-sun-stands-cannot-be", text = text),
        },
        Kind::Daylight { .. } if outlook.sun.is_none() => {
            t!("weather-sunrise-and-sunset-cannot-be-told-before-the-farms", text = text)
        }
        Kind::Daylight { .. } => match outlook.sun(hour.sky.at.date()) {
            Some(sun) => t!(
                "weather-the-sun-rises-at-and-sets",
                strftime = clock(sun.from),
                strftime2 = clock(sun.to),
                text = text
            ),
            None => t!("weather-the-sun-does-not-rise-or", text = text),
        },
        Kind::RainFree { hours } => match outlook.rain(at, *hours) {
            Rain::Yes => t!("weather-rain-is-in-the-forecast", text = text),
            Rain::Likely => t!("weather-rain-is-likely", text = text),
            _ => t!("weather-the-forecast-does-not-tell-of", text = text),
        },
    }
}
