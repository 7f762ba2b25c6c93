//! The ways to load a stretch, and what each comes to.

use std::cmp::Ordering;

use crate::farm::{Aim, Farm, Id, Rig};
use crate::label::{Bound, End};
use crate::loads::measure;
use crate::loads::split::{MOST_LOADS, whole_up};
use crate::mix::line::PlannedLine;
use crate::quantity::{Amount, AmountPerArea, CarrierRate, Units, Volume};
use crate::stock::Accounts;

/// More marks than this in a tank are not tried one by one: the mark is then a multiple of the rig's.
const MOST_MARKS: f64 = 1500.0;

/// What is below a ten-millionth of a container is arithmetic, not product.
const WHOLE: f64 = 1e-7;

/// The loads of one stretch.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Way {
    /// How many loads.
    pub count: u32,
    /// What the tank holds in each but the last.
    pub alike: Volume,
    /// What it holds in the last.
    pub last: Volume,
    /// What is left of the last after its ground.
    pub left: Volume,
    /// How the size came about.
    pub kind: Kind,
}

/// How the size of loads came about.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Kind {
    /// Full tanks and a rest.
    Full,
    /// All of one size.
    Even,
    /// The last one full, for what is to be left in it.
    LastFull,
    /// At a mark.
    Mark,
}

impl Way {
    /// What the tank holds in each load.
    pub fn volumes(&self) -> Vec<Volume> {
        let alike = (1..self.count).map(|_| self.alike);
        alike.chain((self.count > 0).then_some(self.last)).collect()
    }

    /// Whether two ways are the same loads.
    pub fn same_loads(&self, other: &Self) -> bool {
        let near = |a: Volume, b: Volume| !a.exceeds(b) && !b.exceeds(a);
        self.count == other.count && near(self.last, other.last) && (self.count < 2 || near(self.alike, other.alike))
    }
}

/// What a way comes to, each a whole number of which less is better.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct Figures {
    /// Left after the last metre, in mL.
    pub left: i64,
    /// Loads below what the agitation needs.
    pub agitation: i64,
    /// Fillings. A load that is all in the tank already is none.
    pub fills: i64,
    /// Containers opened: of each product the fewest of its first size that hold what the opened one of that size does not.
    pub opened: i64,
    /// Amounts to measure: those of a load that are neither whole containers, nor what just empties the opened one, with or without
    /// whole ones beside. The opened one is used up before another is opened, unless whole ones will do.
    pub measured: i64,
    /// How far all amounts are from exact: of each product the sum over loads as a share of what the stretch needs, added up, in
    /// millionths.
    pub rounding: i64,
}

impl Figures {
    /// The figure of an aim.
    pub const fn of(&self, aim: Aim) -> i64 {
        match aim {
            Aim::Left => self.left,
            Aim::Agitation => self.agitation,
            Aim::Fills => self.fills,
            Aim::Opened => self.opened,
            Aim::Measured => self.measured,
            Aim::Rounding => self.rounding,
        }
    }
}

/// Which of two ways is better: aim by aim, then by fewer loads, then by larger ones.
pub(super) fn compare(a: &(Way, Figures), b: &(Way, Figures), aims: &[Aim]) -> Ordering {
    let by_aims = aims.iter().map(|aim| a.1.of(*aim).cmp(&b.1.of(*aim))).find(|order| order.is_ne());
    by_aims.unwrap_or_else(|| {
        let size = || if a.0.same_loads(&b.0) { Ordering::Equal } else { b.0.alike.cmp(&a.0.alike) };
        a.0.count.cmp(&b.0.count).then_with(size).then_with(|| a.0.kind.cmp(&b.0.kind))
    })
}

/// A product as loads take it.
#[derive(Clone, Debug)]
pub(crate) struct Portion {
    pub(crate) product: Id,
    per_area: AmountPerArea,
    least: Option<AmountPerArea>,
    most: Option<AmountPerArea>,
    step: Amount,
    /// What its first container holds when full; `None` where none is typed that fits its amounts.
    size: Option<Amount>,
    /// What the opened ones of that size still hold, in full ones.
    opened: f64,
}

impl Portion {
    /// A product on a stretch, with the tightest bounds of all its fields.
    pub(crate) fn of(
        farm: &Farm,
        accounts: &Accounts,
        line: &PlannedLine,
        bounds: &[Bound],
        fields: &[Id],
    ) -> Option<Self> {
        let product = farm.products.get(&line.product)?;
        let here = |end| {
            let bounds = bounds.iter().filter(move |bound| bound.end == end && bound.product == line.product);
            bounds.filter(|bound| fields.contains(&bound.field)).map(|bound| bound.amount)
        };
        let container = product.containers.first();
        let demand = line.demand;
        let size = container.map(|container| container.size.value()).filter(|size| demand.ratio(*size).is_some());
        let opened = container.and_then(|container| {
            let rest = accounts.get(&line.product)?.opened(container.kind, &container.size)?;
            rest.ratio(container.size.value())
        });
        Some(Self {
            product: line.product.clone(),
            per_area: line.per_area,
            least: here(End::Least).reduce(AmountPerArea::larger),
            most: here(End::Most).reduce(AmountPerArea::smaller),
            step: measure::step(product, &farm.measuring, farm.units),
            size,
            opened: opened.unwrap_or(0.0).max(0.0),
        })
    }

    /// How little and how much of it may go into so much new spray.
    pub(crate) fn bounds(&self, new: Volume, carrier: CarrierRate) -> (Option<Amount>, Option<Amount>) {
        let over = |bound: Option<AmountPerArea>| Some(bound?.over(new.ground(carrier)?));
        (over(self.least), over(self.most))
    }

    /// What goes into so much new spray: exactly, and as it is measured.
    fn measured(&self, new: Volume, carrier: CarrierRate) -> Option<(Amount, Amount)> {
        let exact = self.per_area.over(new.ground(carrier)?);
        Some((exact, measure::to_mark(exact, self.bounds(new, carrier), self.step).0))
    }

    /// Takes over how the containers of the same product stand elsewhere.
    pub(crate) const fn stand_as(&mut self, other: &Self) {
        self.opened = other.opened;
    }

    /// Takes out what goes into so much new spray.
    pub(crate) fn pour_for(&mut self, new: Volume, carrier: CarrierRate) {
        if let Some((_, amount)) = self.measured(new, carrier) {
            self.pour(amount);
        }
    }

    /// Takes an amount out of the containers: what stands opened afterwards.
    pub(crate) fn pour(&mut self, amount: Amount) {
        let Some(share) = self.size.and_then(|size| amount.ratio(size)) else { return };
        let rest = self.opened - share;
        let rest = if rest < 0.0 { rest - rest.floor() } else { rest };
        self.opened = if is_whole(rest) { 0.0 } else { rest };
    }

    /// How many containers are opened for so many of them.
    #[allow(clippy::cast_possible_truncation)] // Saturates, and nobody has so many.
    fn to_open(&self, shares: f64) -> i64 {
        (shares - self.opened - WHOLE).ceil().max(0.0) as i64
    }
}

fn is_whole(shares: f64) -> bool {
    (shares - shares.round()).abs() <= WHOLE
}

/// A stretch to be loaded.
#[derive(Clone, Debug)]
pub(crate) struct Problem {
    /// What all its loads hold together: what the ground takes, and what is to be left over.
    pub(crate) volume: Volume,
    /// What is in the tank before the first one.
    pub(crate) carried: Volume,
    /// What is to be left over.
    pub(crate) extra: Volume,
    /// How far the tank may be filled.
    pub(crate) fill: Volume,
    /// The mark that alike loads end at.
    pub(crate) mark: Volume,
    /// Below this the agitation does not reach.
    pub(crate) least: Option<Volume>,
    /// Whether the last load may be topped up: what it then holds too much would go over a border to the next stretch.
    pub(crate) tops_up: bool,
    pub(crate) carrier: CarrierRate,
    pub(crate) portions: Vec<Portion>,
}

/// The mark that alike loads end at, and whether it is the rig's own: the rig's, else one that can be read on a sight gauge; in a
/// tank of more than 1,500 of them a multiple by 2, 5, 10 and so on.
pub(crate) fn mark_of(rig: &Rig, fill: Volume, units: Units) -> (Volume, bool) {
    let own = rig.mark.as_ref().map(crate::quantity::AsTyped::value).filter(|mark| mark.exceeds(Volume::ZERO));
    let mark = own.or_else(|| crate::loads::fill::readable_step(fill, units)).unwrap_or(fill * 0.01);
    let mut factors = [2.0, 2.5, 2.0].into_iter().cycle();
    let mut coarse = mark;
    while fill.ratio(coarse).is_some_and(|marks| marks > MOST_MARKS) {
        coarse = coarse * factors.next().unwrap_or(2.0);
    }
    (coarse, own.is_some())
}

impl Problem {
    /// Whether the last load is topped up beyond what is to be left over.
    pub(crate) fn is_topped(&self, way: &Way) -> bool {
        (way.left - self.extra).exceeds(self.fill * 1e-9)
    }

    /// All ways, fewer loads first.
    pub(crate) fn ways(&self) -> Vec<Way> {
        let mut ways = Vec::new();
        let (Some(ratio), false) = (self.volume.ratio(self.fill), self.fill.is_zero()) else { return ways };
        if !(ratio > 0.0 && ratio <= MOST_LOADS) {
            return ways;
        }
        let fewest = whole_up(ratio).max(1);
        let most = (2 * fewest + 1).min(whole_up(MOST_LOADS));
        for count in fewest..=most {
            let before = f64::from(count - 1);
            let mut add = |alike: Volume, last: Volume, kind: Kind| self.add(&mut ways, count, alike, last, kind);
            let even = self.volume * (1.0 / f64::from(count));
            if count == fewest {
                let rest = self.volume - self.fill * before;
                // Full tanks without a rest are shared out, so that the last bits of arithmetic are not lost.
                let no_rest = !self.fill.exceeds(rest);
                let (alike, last) = if no_rest { (even, even) } else { (self.fill, rest) };
                add(alike, last, Kind::Full);
                if self.extra.exceeds(Volume::ZERO) && count > 1 {
                    add((self.volume - self.fill) * (1.0 / before), self.fill, Kind::LastFull);
                }
            }
            add(even, even, Kind::Even);
            let Some(mark) = Some(self.mark).filter(|_| count > 1) else { continue };
            let lowest = ((self.volume - self.fill) * (1.0 / before)).max(self.carried).max(mark);
            let highest = ((self.volume - self.extra) * (1.0 / before)).min(self.fill);
            let (Some(from), Some(to)) = (lowest.ratio(mark), highest.ratio(mark)) else { continue };
            let mut marks = (from * (1.0 - 1e-12)).ceil();
            while marks <= to * (1.0 + 1e-12) {
                let alike = mark * marks;
                self.add(&mut ways, count, alike, self.volume - alike * before, Kind::Mark);
                marks += 1.0;
            }
        }
        ways
    }

    /// Adds a way where it holds, and the same with its last load topped up where that is too small.
    fn add(&self, ways: &mut Vec<Way>, count: u32, alike: Volume, last: Volume, kind: Kind) {
        let speck = self.fill * 1e-9;
        let first = if count > 1 { alike } else { last };
        let holds = !first.exceeds(self.fill)
            && !last.exceeds(self.fill)
            && !self.carried.exceeds(first)
            && (last - self.extra).exceeds(speck)
            && alike.exceeds(speck);
        if !holds {
            return;
        }
        let way = Way { count, alike, last, left: self.extra, kind };
        ways.push(way);
        if let Some(least) = self.least.filter(|_| self.tops_up)
            && least.exceeds(last)
            && !least.exceeds(self.fill)
        {
            ways.push(Way { last: least, left: self.extra + (least - last), ..way });
        }
    }

    /// The new spray of a way: how much, and in how many loads one after another.
    fn new_spray(&self, way: &Way) -> [(Volume, u32); 3] {
        let less = |volume: Volume| (volume - self.carried).max(Volume::ZERO);
        match way.count {
            0 | 1 => [(less(way.last), 1), (Volume::ZERO, 0), (Volume::ZERO, 0)],
            count => [(less(way.alike), 1), (way.alike, count - 2), (way.last, 1)],
        }
    }

    /// What a way comes to.
    #[allow(clippy::cast_possible_truncation)] // Saturates: a volume in mL and a share in millionths.
    pub(crate) fn figures(&self, way: &Way) -> Figures {
        let loads = self.new_spray(way);
        let fills = loads.iter().filter(|(new, _)| new.exceeds(Volume::ZERO)).map(|(_, times)| i64::from(*times)).sum();
        let small = |volume: Volume| i64::from(self.least.is_some_and(|least| least.exceeds(volume)));
        let mut figures = Figures {
            left: (way.left.to_litres() * 1000.0).round() as i64,
            agitation: small(way.alike) * i64::from(way.count.saturating_sub(1)) + small(way.last),
            fills,
            ..Figures::default()
        };
        let mut rounding = 0.0;
        for portion in &self.portions {
            let (shares, measured, apart) = self.of_portion(portion, &loads);
            figures.opened += portion.to_open(shares);
            figures.measured += measured;
            rounding += apart;
        }
        figures.rounding = (rounding * 1e6).round() as i64;
        figures
    }

    /// Of a product in some loads: how many containers they take, how many amounts are measured, and how far they are from exact.
    fn of_portion(&self, portion: &Portion, loads: &[(Volume, u32); 3]) -> (f64, i64, f64) {
        let need = (self.volume - self.carried).ground(self.carrier).map(|ground| portion.per_area.over(ground));
        let (mut shares, mut measured, mut apart) = (0.0, 0, 0.0);
        for (new, times) in loads.iter().filter(|(new, times)| *times > 0 && new.exceeds(Volume::ZERO)) {
            let Some((exact, amount)) = portion.measured(*new, self.carrier) else { continue };
            let off = amount.minus(exact).and_then(|off| off.ratio(need?)).unwrap_or(0.0);
            apart += off.abs() * f64::from(*times);
            if amount.is_zero() {
                continue;
            }
            match portion.size.and_then(|size| amount.ratio(size)) {
                None => measured += i64::from(*times),
                Some(share) if is_whole(share) => shares += share * f64::from(*times),
                Some(share) => {
                    for _ in 0..*times {
                        shares += share;
                        measured += i64::from(!is_whole(shares - portion.opened));
                    }
                }
            }
        }
        (shares, measured, apart)
    }

    /// How many containers of each product a way opens.
    pub(super) fn opened(&self, way: &Way) -> Vec<(&Id, i64)> {
        let loads = self.new_spray(way);
        let each = |portion: &Portion| portion.to_open(self.of_portion(portion, &loads).0);
        self.portions.iter().map(|portion| (&portion.product, each(portion))).collect()
    }
}
