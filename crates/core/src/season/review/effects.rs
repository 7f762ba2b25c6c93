//! What ratings are of: a weed or an injury, however its name is written.

use crate::farm::Effect;
use crate::label::when::same_weed;
use crate::words::plain;

/// Whether two effects are one.
pub(crate) fn same(a: &Effect, b: &Effect) -> bool {
    match (a, b) {
        (Effect::Control(a), Effect::Control(b)) => same_weed(a, b) || plain(a) == plain(b),
        (Effect::Injury(a), Effect::Injury(b)) => plain(a) == plain(b),
        _ => false,
    }
}

/// The order in which effects are listed: weeds before injuries, by name.
pub(crate) fn order(effect: &Effect) -> (bool, String) {
    match effect {
        Effect::Control(weed) => (false, plain(weed)),
        Effect::Injury(how) => (true, plain(how)),
    }
}

#[cfg(test)]
mod tests {
    use super::same;
    use crate::farm::Effect;

    #[test]
    fn one_effect_however_it_is_written() {
        let control = |weed: &str| Effect::Control(weed.into());
        let injury = |how: &str| Effect::Injury(how.into());
        assert!(same(&control("Waterhemp"), &control("waterhemp ")) && same(&control("grasses"), &control("grass")));
        assert!(same(&injury("Leaf  burn"), &injury("leaf burn")) && same(&control(""), &control(" ")));
        assert!(!same(&control("burn"), &injury("burn")) && !same(&control("pigweed"), &control("waterhemp")));
    }
}
