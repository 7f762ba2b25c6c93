//! Which products may not go on a field on a day, by the rules that judge a pass: asked with a pass of the one product on that day, and
//! on later days until they allow it.

use std::collections::HashSet;

use jiff::civil::Date;

use super::barred::{Barred, Bars, Until};
use crate::farm::label::{Period, Says};
use crate::farm::{Farm, Field, Id, Line, Pass, Product, Record};
use crate::finding::{Finding, Level};
use crate::ground;
use crate::label::applications::{counted, too_near, weight_of_near};
use crate::label::harvest::{broken, days_after, months_after};
use crate::label::season::{active_limit, product_total, reach};
use crate::label::when::Situation;
use crate::label::{Here, Spoken, dates, rate};
use crate::language::days::short_date;
use crate::language::t;
use crate::mix::actives::Wanted;
use crate::mix::line::active_per_area;
use crate::quantity::rate::show_active;
use crate::quantity::{AsTyped, CarrierRate, MassPerArea, Rate};
use crate::season::period::Window;
use crate::season::{Log, active_so_far};

/// A field, and a pass that is not on the farm.
struct Asked<'a> {
    farm: &'a Farm,
    log: &'a Log,
    field_id: &'a Id,
    field: &'a Field,
    /// No pass has it.
    own: Id,
    carrier: Option<AsTyped<CarrierRate>>,
    /// Any; strips hang on what is in the mix, not on how much.
    rate: Option<AsTyped<Rate>>,
}

/// What a rule says of a day.
struct Said {
    level: Level,
    text: String,
    /// The days of the records it comes from, the latest first, and their ids.
    records: Vec<Date>,
    ids: Vec<Id>,
}

impl Asked<'_> {
    /// Asks a rule as it would judge a pass of the product on a day.
    fn on<R>(&self, day: Date, id: &Id, product: &Product, ask: impl FnOnce(&Here) -> R) -> R {
        let mut pass = Pass::new("", day);
        pass.fields.push(self.field_id.clone());
        pass.carrier.clone_from(&self.carrier);
        pass.mix.extend(self.rate.clone().map(|rate| Line::new(id, rate)));
        let situation = Situation::new(self.farm, &pass, id, product);
        ask(&Here {
            farm: self.farm,
            log: self.log,
            pass_id: &self.own,
            pass: &pass,
            carrier: self.carrier.as_ref().map_or(CarrierRate::ZERO, AsTyped::value),
            id,
            product,
            field_id: self.field_id,
            field: self.field,
            area: ground::sprayable(self.farm, &pass, self.field),
            situation: &situation,
        })
    }

    fn said(&self, level: Level, text: String, records: &[&Record]) -> Said {
        let ids = self.log.on_field(self.farm, self.field_id);
        let mut found: Vec<(Date, Id)> = ids
            .filter(|(_, known)| records.iter().any(|record| std::ptr::eq(*record, *known)))
            .map(|(id, record)| (record.date, id.clone()))
            .collect();
        found.sort_by_key(|(date, _)| std::cmp::Reverse(*date));
        let (records, ids) = found.into_iter().unzip();
        Said { level, text, records, ids }
    }
}

/// What may not go on the field on a day, product by product.
pub(super) fn barred(farm: &Farm, log: &Log, (field_id, field): (&Id, &Field), today: Date, all: &mut Vec<Barred>) {
    let had = Had::on(farm, log, field_id);
    let latest = farm.passes.values().filter(|pass| pass.carrier.is_some()).max_by_key(|pass| pass.date);
    let carrier = latest.and_then(|pass| pass.carrier.clone());
    let asked = Asked { farm, log, field_id, field, own: fresh(farm), carrier, rate: AsTyped::parse("1 L/ha").ok() };
    for (id, product) in &farm.products {
        let mut of_product: Vec<Barred> = Vec::new();
        asked.on(today, id, product, |here| {
            for spoken in here.spoken() {
                let said = asked.statement(here, &spoken, &had);
                of_product.extend(said.into_iter().map(|(bars, said, until)| Barred {
                    bars,
                    product: Some(id.clone()),
                    level: said.level,
                    text: format!("{}: {}", product.name, said.text),
                    until,
                    records: said.ids,
                    basis: spoken.basis(),
                }));
            }
            of_product.extend(before_harvest(here));
            of_product.extend(asked.dates(here));
        });
        of_product.sort_by_key(|barred| std::cmp::Reverse(barred.level));
        all.append(&mut of_product);
    }
}

fn fresh(farm: &Farm) -> Id {
    let ids = (0..=farm.passes.len()).map(|number| format!("asked-{number}"));
    ids.into_iter().find(|id| !farm.passes.contains_key(id)).unwrap_or_default()
}

/// What the records of a field hold, so that most statements are told quickly.
struct Had<'a> {
    products: HashSet<&'a str>,
    actives: HashSet<&'a str>,
}

impl<'a> Had<'a> {
    fn on(farm: &'a Farm, log: &'a Log, field: &Id) -> Self {
        let mut had = Self { products: HashSet::new(), actives: HashSet::new() };
        for line in
            log.on_field(farm, field).flat_map(|(_, record)| &record.lines).filter(|line| !line.amount.is_zero())
        {
            had.products.insert(line.product.as_str());
            had.actives.extend(line.actives.iter().map(|active| active.name.as_str()));
        }
        had
    }
}

impl Asked<'_> {
    fn statement(&self, here: &Here, spoken: &Spoken, had: &Had) -> Vec<(Bars, Said, Until)> {
        let is_had = had.products.contains(here.id.as_str());
        let mut all = Vec::new();
        match &spoken.statement.says {
            Says::Applications { most, days_apart, per } if is_had || *most == 0 => {
                let number = |here: &Here| self.number(here, spoken, (*most, *per));
                all.extend(number(here).map(|said| {
                    let until = self.until_period(here, *per, &said, |here| number(here).is_none());
                    (Bars::Applications, said, until)
                }));
                let near = |here: &Here| self.near(here, spoken, *days_apart);
                let ends = |day: &Date| days_after(*day, *days_apart);
                all.extend(near(here).map(|said| {
                    // A record that is later than the day may be near too.
                    let all = self.log.on_field(self.farm, self.field_id).filter_map(|(_, record)| ends(&record.date));
                    let until = self.first_free(here, all, |here| near(here).is_none());
                    (Bars::Spacing, said, until.map_or(Until::Open, Until::Day))
                }));
            }
            Says::SeasonTotal { most, per } if is_had => {
                let total = |here: &Here| self.total(here, spoken, (most.value(), *per));
                all.extend(total(here).map(|said| {
                    let until = self.until_period(here, *per, &said, |here| total(here).is_none());
                    (Bars::Total, said, until)
                }));
            }
            Says::ActiveSeasonTotal { active, most, per } => {
                let wanted = Wanted::new(active);
                if had.actives.iter().any(|name| wanted.is(name)) {
                    let total = |here: &Here| self.active_total(here, spoken, active, (most.value(), *per));
                    all.extend(total(here).map(|said| {
                        let until = self.until_period(here, *per, &said, |here| total(here).is_none());
                        (Bars::ActiveTotal, said, until)
                    }));
                }
            }
            _ => {}
        }
        all
    }

    /// The first of some days after that of the pass on which a rule allows it.
    fn first_free(&self, here: &Here, days: impl Iterator<Item = Date>, free: impl Fn(&Here) -> bool) -> Option<Date> {
        let mut days: Vec<Date> = days.filter(|day| *day > here.pass.date).collect();
        days.sort_unstable();
        days.dedup();
        days.into_iter().find(|day| self.on(*day, here.id, here.product, &free))
    }

    /// When a rule that counts over a period allows it again: with the new year, or as records leave the last twelve months.
    fn until_period(&self, here: &Here, per: Period, said: &Said, free: impl Fn(&Here) -> bool) -> Until {
        let last = said.records.iter().max().copied().unwrap_or(here.pass.date).max(here.pass.date);
        let new_year =
            (here.pass.date.year()..=last.year()).filter_map(|year| Date::new(year.checked_add(1)?, 1, 1).ok());
        let leaves = said.records.iter().filter_map(|day| months_after(*day, 12));
        let and_next = leaves.flat_map(|day| [Some(day), day.tomorrow().ok()]).flatten();
        // A crop that is still to be planted counts from that day on.
        let planted = here.field.planted.filter(|_| per == Period::Crop);
        let found = self.first_free(here, new_year.chain(and_next).chain(planted), free);
        let by_crop = per == Period::Crop && Window::of(per, here.field, here.pass.date).instead.is_none();
        found.map_or(if by_crop { Until::NextCrop } else { Until::Open }, Until::Day)
    }

    fn number(&self, here: &Here, spoken: &Spoken, (most, per): (u32, Period)) -> Option<Said> {
        let counted = counted(here, per);
        let level = counted.one_more(most, spoken)?;
        let text = t!("season-of-applications", counted = counted.count(), most = most, words = counted.window.words);
        Some(self.said(level, text, &counted.applications.concat()))
    }

    fn near(&self, here: &Here, spoken: &Spoken, days_apart: u32) -> Option<Said> {
        let (_, record) = too_near(here, days_apart)?;
        let text =
            t!("season-sprayed-on-the-label-keeps-days", date = short_date(record.date), days_apart = days_apart);
        Some(self.said(weight_of_near(here, record, spoken), text, &[record]))
    }

    /// Where not even the least that the label names for one application is left, or nothing where it names no least.
    fn total(&self, here: &Here, spoken: &Spoken, (most, per): (Rate, Period)) -> Option<Said> {
        let per_spray = matches!(most, Rate::VolumePerSpray(_) | Rate::MassPerSpray(_) | Rate::OuncesPerSpray(_));
        if per_spray && self.carrier.is_none() {
            return None;
        }
        let window = Window::of(per, here.field, here.pass.date);
        let (limit, so_far) = product_total(here, &window, most).ok()?;
        let used = so_far.sum?;
        let least = rate::least(here).filter(|least| !least.is_zero());
        let barred = match least {
            Some(least) => used.plus(least)?.exceeds(limit)?,
            None => !limit.exceeds(used)?,
        };
        let units = self.farm.units;
        let too_little = match least.filter(|_| limit.exceeds(used) == Some(true)) {
            Some(least) => t!("season-and-one-application-takes-at-least", least = least.show(units)),
            None => String::new(),
        };
        let text = t!(
            "season-used-of-limit-words-too-little",
            used = used.show(units),
            limit = limit.show(units),
            words = window.words,
            too_little = too_little
        );
        barred.then(|| {
            self.said(
                weight(spoken),
                text,
                &with(here, &window, |record| {
                    record.lines.iter().any(|line| line.product == *here.id && !line.amount.is_zero())
                }),
            )
        })
    }

    fn active_total(&self, here: &Here, spoken: &Spoken, active: &str, (most, per): (Rate, Period)) -> Option<Said> {
        let wanted = Wanted::new(active);
        let held: Vec<_> = wanted.in_product(here.product).collect();
        let (limit, typed) = active_limit(most)?;
        let basis = typed.or_else(|| held.first().map(|held| held.basis))?;
        let window = Window::of(per, here.field, here.pass.date);
        let used = active_so_far(self.farm, self.log, reach(here, &window), active, basis).sum;
        let least = rate::least(here).and_then(|least| {
            let each: Option<Vec<MassPerArea>> =
                held.iter().map(|held| active_per_area(least, held, here.product)).collect();
            Some(each?.into_iter().fold(MassPerArea::ZERO, |sum, mass| sum + mass)).filter(|sum| !sum.is_zero())
        });
        let barred = match least {
            Some(least) => (used + least).exceeds(limit),
            None => !limit.exceeds(used),
        };
        let shown = |mass| show_active(mass, basis, self.farm.units);
        let too_little = match least.filter(|_| limit.exceeds(used)) {
            Some(least) => t!("season-and-one-application-takes-at-least", least = shown(least)),
            None => String::new(),
        };
        let text = t!(
            "season-active-used-of-limit-words-too-little",
            active = active,
            used = shown(used),
            limit = shown(limit),
            words = window.words,
            too_little = too_little
        );
        barred.then(|| {
            self.said(
                weight(spoken),
                text,
                &with(here, &window, |record| {
                    record.lines.iter().any(|line| line.actives.iter().any(|held| wanted.is(&held.name)))
                }),
            )
        })
    }

    /// The days of the year that the label allows; the first of them within a year.
    fn dates(&self, here: &Here) -> Option<Barred> {
        if !here.product.label.iter().any(|statement| matches!(statement.says, Says::Dates { .. })) {
            return None;
        }
        let ask = |here: &Here| {
            let mut findings: Vec<Finding> = Vec::new();
            dates::judge(here, &mut findings);
            findings.into_iter().max_by_key(|finding| finding.level)
        };
        let found = ask(here)?;
        let days = (1..=366).filter_map(|days| days_after(here.pass.date, days));
        let until = days.into_iter().find(|day| self.on(*day, here.id, here.product, |here| ask(here).is_none()));
        let text = found.text.split("; this pass is").next().unwrap_or_default().to_owned();
        Some(Barred {
            bars: Bars::Dates,
            product: Some(here.id.clone()),
            level: found.level,
            text,
            until: until.map_or(Until::Open, Until::Day),
            records: Vec::new(),
            basis: found.basis,
        })
    }
}

fn weight(spoken: &Spoken) -> Level {
    if spoken.doubt.is_empty() { Level::Stop } else { Level::Check }
}

fn with<'a>(here: &Here<'a>, window: &Window, holds: impl Fn(&Record) -> bool) -> Vec<&'a Record> {
    reach(here, window).records(here.farm, here.log).filter(|record| holds(record)).collect()
}

/// Whether less days than its harvest interval are left before the expected harvest.
fn before_harvest(here: &Here) -> Option<Barred> {
    let harvest = here.field.harvest?;
    let (days, spoken) = broken(here, harvest)?;
    let left = here.pass.date.until(harvest).map_or(0, |span| span.get_days());
    let expected = match left {
        ..0 => t!("season-the-harvest-was-expected-on", harvest = short_date(harvest)),
        0 => t!("season-the-harvest-is-expected-today").to_owned(),
        1 => t!("season-the-harvest-is-expected-tomorrow").to_owned(),
        _ => t!("season-the-harvest-is-expected-in-days", left = left, harvest = short_date(harvest)),
    };
    Some(Barred {
        bars: Bars::BeforeHarvest,
        product: Some(here.id.clone()),
        level: weight(&spoken),
        text: t!("season-its-label-keeps-days-to-harvest", name = here.product.name, days = days, expected = expected),
        until: Until::Harvest(harvest),
        records: Vec::new(),
        basis: spoken.basis(),
    })
}
