//! How colours look to people who see fewer of them, for tests of the palette.
//!
//! Machado, Oliveira, Fernandes, "A Physiologically-based Model for Simulation of Color Vision Deficiency", IEEE Transactions on Visualization
//! and Computer Graphics 15 (6), 2009, the matrices of severity 1.0, which are for linear red, green and blue; the library `colorspacious`
//! 1.1.2 has the same figures. How far apart two colours are is their distance in CIE 1976 L*a*b* (ISO/CIE 11664-4), white D65, with the
//! matrix of IEC 61966-2-1.

use egui::Color32;

/// A way to see colours.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum Sight {
    Usual,
    /// Without the cones for long waves.
    Protan,
    /// Without those for middle waves.
    Deutan,
    /// Without those for short waves.
    Tritan,
}

impl Sight {
    pub(crate) const ALL: [Self; 4] = [Self::Usual, Self::Protan, Self::Deutan, Self::Tritan];

    const fn matrix(self) -> [[f64; 3]; 3] {
        match self {
            Self::Usual => [[1.0, 0.0, 0.0], [0.0, 1.0, 0.0], [0.0, 0.0, 1.0]],
            Self::Protan => [
                [0.152_286, 1.052_583, -0.204_868],
                [0.114_503, 0.786_281, 0.099_216],
                [-0.003_882, -0.048_116, 1.051_998],
            ],
            Self::Deutan => [
                [0.367_322, 0.860_646, -0.227_968],
                [0.280_085, 0.672_501, 0.047_413],
                [-0.011_820, 0.042_940, 0.968_881],
            ],
            Self::Tritan => [
                [1.255_528, -0.076_749, -0.178_779],
                [-0.078_411, 0.930_809, 0.147_602],
                [0.004_733, 0.691_367, 0.303_900],
            ],
        }
    }
}

fn product(matrix: [[f64; 3]; 3], of: [f64; 3]) -> [f64; 3] {
    matrix.map(|row| row.iter().zip(of).map(|(a, b)| a * b).sum())
}

fn linear(colour: Color32) -> [f64; 3] {
    [colour.r(), colour.g(), colour.b()].map(|value| {
        let share = f64::from(value) / 255.0;
        if share <= 0.040_45 { share / 12.92 } else { ((share + 0.055) / 1.055).powf(2.4) }
    })
}

fn lab(colour: Color32, sight: Sight) -> [f64; 3] {
    const TO_XYZ: [[f64; 3]; 3] = [
        [0.412_456_4, 0.357_576_1, 0.180_437_5],
        [0.212_672_9, 0.715_152_2, 0.072_175_0],
        [0.019_333_9, 0.119_192_0, 0.950_304_1],
    ];
    let seen = product(sight.matrix(), linear(colour)).map(|part| part.clamp(0.0, 1.0));
    let [x, y, z] = product(TO_XYZ, seen);
    let f = |t: f64| if t > 216.0 / 24389.0 { t.cbrt() } else { (24389.0 / 27.0 * t + 16.0) / 116.0 };
    let (x, y, z) = (f(x / 0.950_47), f(y), f(z / 1.088_83));
    [116.0 * y - 16.0, 500.0 * (x - y), 200.0 * (y - z)]
}

/// How far apart two colours are to a sight; 2.3 or so is the least that is noticed side by side.
pub(crate) fn apart(one: Color32, other: Color32, sight: Sight) -> f64 {
    let (one, other) = (lab(one, sight), lab(other, sight));
    one.iter().zip(other).map(|(a, b)| (a - b).powi(2)).sum::<f64>().sqrt()
}

/// So far apart that a colour alone would do; common practice, no source.
pub(crate) const PLAINLY: f64 = 10.0;

#[cfg(test)]
mod tests {
    use super::{PLAINLY, Sight, apart, lab};
    use crate::look::{Colours, DARK, LIGHT};
    use egui::Color32;
    use tankard_core::finding::Level;

    /// L*, a*, b* of the primaries as they stand in many tables of sRGB (from memory), and greys, which stay as they are to every sight since
    /// the rows of the matrices sum to one.
    #[test]
    fn the_simulation_keeps_greys_and_the_distance_is_that_of_the_standard() {
        let near = |got: [f64; 3], wanted: [f64; 3]| got.iter().zip(wanted).all(|(a, b)| (a - b).abs() < 0.02);
        assert!(near(lab(Color32::from_rgb(255, 0, 0), Sight::Usual), [53.24, 80.09, 67.20]));
        assert!(near(lab(Color32::from_rgb(0, 0, 255), Sight::Usual), [32.30, 79.19, -107.86]));
        for sight in Sight::ALL {
            for grey in [0, 90, 200, 255] {
                let grey = Color32::from_gray(grey);
                let (usual, seen) = (lab(grey, Sight::Usual), lab(grey, sight));
                assert!(near(seen, usual), "{sight:?} {grey:?} {seen:?}");
            }
        }
        // Red and green of one lightness come close to who lacks one of the two kinds of cones, and to nobody else.
        let (red, green) = (Color32::from_rgb(200, 80, 60), Color32::from_rgb(120, 130, 40));
        assert!(apart(red, green, Sight::Deutan) < PLAINLY && apart(red, green, Sight::Tritan) > 40.0);
    }

    /// The levels, and the verdicts of hours, which take their colours and water's.
    #[test]
    fn levels_and_verdicts_are_told_apart_by_every_sight() {
        for colours in [&LIGHT, &DARK] {
            for sight in Sight::ALL {
                let levels =
                    [Level::Stop, Level::Check, Level::Note].map(|level| crate::look::of_level(colours, level));
                let [stop, check, note] = levels;
                for (one, other) in
                    [(stop, check), (stop, note), (check, note), (colours.water, stop), (colours.water, check)]
                {
                    let apart = apart(one, other, sight);
                    assert!(apart >= PLAINLY - 0.5, "{sight:?} {one:?} {other:?}: {apart:.1}");
                }
            }
        }
    }

    /// Layers of the gauge come in turn and some do look alike, so each is divided from the next by a line that is seen on both, and has its
    /// number, amount and name beside it; what must differ by its face alone is product from water.
    #[test]
    fn layers_are_told_from_water_and_divided_by_a_line() {
        let least = |colours: &Colours, of: &dyn Fn(Color32) -> Color32| {
            Sight::ALL
                .iter()
                .flat_map(|sight| colours.layers.iter().map(|layer| apart(*layer, of(*layer), *sight)))
                .fold(f64::MAX, f64::min)
        };
        for colours in [&LIGHT, &DARK] {
            assert!(least(colours, &|_| colours.selected) >= 5.0, "{}", least(colours, &|_| colours.selected));
            assert!(least(colours, &|_| colours.soft) >= 20.0);
        }
    }
}
