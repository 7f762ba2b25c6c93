//! EPPO codes of crops: the table `assets/crops.csv`. Contains EPPO Codes (www.eppo.int).

use std::sync::LazyLock;

use serde::Deserialize;

use crate::farm::crop::Named;
use crate::words::plain;

/// A row of the table.
#[derive(Clone, Debug, PartialEq, Eq, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Crop {
    /// The EPPO code. It stands bare, since the box it goes into is of EPPO codes alone, which is what (EU) 2023/564 asks for;
    /// other schemes write other codes for the same crop and have no place there.
    pub code: String,
    /// The scientific name.
    pub scientific: String,
    /// What people call it, apart by strokes.
    names: String,
    /// How sure the row is, in words.
    pub evidence: String,
    /// Where it comes from.
    pub source: String,
}

impl Crop {
    /// What people call it.
    pub fn names(&self) -> impl Iterator<Item = &str> {
        self.names.split('|')
    }
}

/// All crops.
pub fn table() -> &'static [Crop] {
    static TABLE: LazyLock<Vec<Crop>> = LazyLock::new(|| read().unwrap_or_default());
    &TABLE
}

fn read() -> Result<Vec<Crop>, csv::Error> {
    crate::table::read(include_str!("../../../../../assets/crops.csv"))
}

/// The crop of a name, English, Spanish or scientific, in the singular or the plural; none where the name is not in the table, since a crop that is only like
/// it may have another code.
///
/// # Examples
/// ```
/// use tankard_core::season::profile::crop_code;
/// assert_eq!(crop_code("Winter wheat").map(|crop| crop.code.as_str()), Some("TRZAW"));
/// assert_eq!(crop_code("sweet corn"), None);
/// ```
pub fn crop_code(name: &str) -> Option<&'static Crop> {
    let name = plain(name);
    let by_name = table().iter().find(|crop| {
        crop.names().any(|known| {
            name.strip_prefix(known).is_some_and(|end| ["", "s", "es"].contains(&end))
                || crop.scientific.to_lowercase() == name
        })
    });
    by_name.or_else(|| {
        let named = Named::of(&name);
        table().iter().find(|crop| crop.names().any(|known| named.is(&Named::of(known))))
    })
}

#[cfg(test)]
mod tests {
    use super::{crop_code, read};

    #[test]
    fn codes_have_five_letters_and_no_name_has_two() {
        let crops = read().unwrap();
        assert!(crops.len() > 30);
        let mut names: Vec<&str> = crops.iter().flat_map(super::Crop::names).collect();
        for crop in &crops {
            // EPPO: plants have five letters, three of the genus and two of the species.
            assert!(crop.code.len() == 5 && crop.code.chars().all(|letter| letter.is_ascii_uppercase()), "{crop:?}");
        }
        let count = names.len();
        names.sort_unstable();
        names.dedup();
        assert_eq!(names.len(), count);
    }

    #[test]
    fn a_name_is_read_as_people_write_it() {
        let code = |name| crop_code(name).map(|crop| crop.code.as_str());
        assert_eq!(code(" Potatoes "), Some("SOLTU"));
        assert_eq!(code("Maize"), Some("ZEAMX"));
        assert_eq!(code("wheat"), Some("TRZAX"));
        assert_eq!(code("Maíz"), Some("ZEAMX"));
        assert_eq!(code("frijoles"), Some("PHSVX"));
        assert_eq!(code("trigo de invierno"), Some("TRZAW"));
        assert_eq!(code("soja"), Some("GLXMA"));
        assert_eq!(code("maíz dulce"), None);
        assert_eq!(code("buckwheat"), None);
        assert_eq!(code(""), None);
    }
}
