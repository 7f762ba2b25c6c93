//! Which room of the core says something, so that what explains it can be found.

use std::panic::Location;

/// The file of the core that a finding or a working was made in. One rule, one file: so it names the rule, without anyone
/// having to name it.
#[derive(Clone, Copy, PartialEq, Eq, Hash)]
pub struct Room(&'static str);

impl Room {
    /// The file that calls. What makes findings for others passes its caller on with `#[track_caller]`.
    #[track_caller]
    pub(crate) fn here() -> Self {
        Self(Location::caller().file())
    }

    /// Its name, such as "label/rate": the file below the core's sources, without its ending.
    pub fn name(&self) -> String {
        // Elsewhere the compiler writes paths with other strokes, and may put the folder of the build before them.
        let path = self.0.replace('\\', "/");
        let below = path.rsplit_once("/src/").map_or(path.as_str(), |(_, below)| below);
        below.strip_suffix(".rs").unwrap_or(below).to_owned()
    }
}

impl std::fmt::Debug for Room {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        f.write_str(&self.name())
    }
}

#[cfg(test)]
mod tests {
    use super::Room;

    #[test]
    fn a_room_is_named_by_its_file() {
        assert_eq!(Room::here().name(), "room");
        for path in
            ["crates/core/src/label/rate.rs", "crates\\core\\src\\label\\rate.rs", "/a/src/core/src/label/rate.rs"]
        {
            assert_eq!(Room(path).name(), "label/rate");
        }
    }
}
