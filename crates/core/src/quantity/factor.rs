//! Exact factors to SI base units.
//!
//! # References
//! - 1 ft = 0.3048 m exactly; the survey foot is retired from 2023: 85 FR 62698 (NIST and NOAA, 2020). The acre here is
//!   therefore the international one, 43,560 ft² = 4046.8564224 m².
//! - US gallon 231 in³, pound 0.45359237 kg: NIST Handbook 44, Appendix C.
//! - Imperial gallon 4.54609 L: UK Units of Measurement Regulations 1995.
//! - Hardness degrees by definition: German 10 mg CaO/L, French 10 mg CaCO3/L, English (Clark) one grain of CaCO3 in an
//!   imperial gallon, grain per US gallon.

/// International foot, in metres.
pub const FOOT: f64 = 0.304_8;
/// Inch, in metres.
pub const INCH: f64 = 0.025_4;
/// Statute mile, in metres.
pub const MILE: f64 = 1_609.344;
/// International acre, in square metres.
pub const ACRE: f64 = 4_046.856_422_4;
/// Hectare, in square metres.
pub const HECTARE: f64 = 10_000.0;
/// Litre, in cubic metres.
pub const LITRE: f64 = 0.001;
/// US gallon, in cubic metres.
pub const US_GALLON: f64 = 0.003_785_411_784;
/// US quart, in cubic metres.
pub const US_QUART: f64 = US_GALLON / 4.0;
/// US pint, in cubic metres.
pub const US_PINT: f64 = US_GALLON / 8.0;
/// US fluid ounce, in cubic metres.
pub const US_FLUID_OUNCE: f64 = US_GALLON / 128.0;
/// Imperial gallon, in cubic metres.
pub const IMPERIAL_GALLON: f64 = 0.004_546_09;
/// Imperial pint, in cubic metres.
pub const IMPERIAL_PINT: f64 = IMPERIAL_GALLON / 8.0;
/// Imperial fluid ounce, in cubic metres.
pub const IMPERIAL_FLUID_OUNCE: f64 = IMPERIAL_GALLON / 160.0;
/// Avoirdupois pound, in kilograms.
pub const POUND: f64 = 0.453_592_37;
/// Avoirdupois ounce, in kilograms.
pub const OUNCE: f64 = POUND / 16.0;
/// Grain, in kilograms.
pub const GRAIN: f64 = POUND / 7_000.0;
/// Pound-force per square inch, in pascals (standard gravity 9.80665 m/s²).
pub const PSI: f64 = POUND * 9.806_65 / (INCH * INCH);
/// Mile per hour, in metres per second.
pub const MPH: f64 = MILE / 3_600.0;
/// Kilometre per hour, in metres per second.
pub const KMH: f64 = 1.0 / 3.6;
/// US gallon per acre, in cubic metres per square metre.
pub const US_GALLON_PER_ACRE: f64 = US_GALLON / ACRE;
/// Milligram per litre (one part per million in dilute water), in kilograms per cubic metre.
pub const MG_PER_LITRE: f64 = 0.001;
/// Grain per US gallon, in kilograms per cubic metre.
pub const GRAIN_PER_US_GALLON: f64 = GRAIN / US_GALLON;
/// Molar mass of calcium carbonate, in kilograms per mole (IUPAC 2021 atomic weights).
pub const CACO3_MOLAR: f64 = 0.100_087;
/// German degree of hardness as CaCO3: 10 mg CaO/L, CaO 56.0774 g/mol.
pub const GERMAN_DEGREE: f64 = 0.01 * 100.087 / 56.077_4;
/// French degree of hardness as CaCO3.
pub const FRENCH_DEGREE: f64 = 0.01;
/// English (Clark) degree of hardness as CaCO3.
pub const CLARK_DEGREE: f64 = GRAIN / IMPERIAL_GALLON;
/// Microsiemens per centimetre, in siemens per metre.
pub const MICROSIEMENS_PER_CENTIMETRE: f64 = 1e-4;
