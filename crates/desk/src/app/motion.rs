//! Whether the system asks programs for less motion, as far as its files say so.

use std::path::PathBuf;
use std::sync::OnceLock;

use etcetera::BaseStrategy;

/// Files below the configuration folder in which desktops keep it, with the key and the value that ask for none.
const SAID_IN: [(&str, &str, &str); 3] = [
    ("gtk-4.0/settings.ini", "gtk-enable-animations", "false"),
    ("gtk-3.0/settings.ini", "gtk-enable-animations", "false"),
    ("kdeglobals", "AnimationDurationFactor", "0"),
];

/// Whether the system asks for less motion; read once.
pub(super) fn is_unwanted() -> bool {
    static SAID: OnceLock<bool> = OnceLock::new();
    *SAID.get_or_init(|| {
        let Ok(base) = etcetera::choose_base_strategy() else { return false };
        SAID_IN.iter().any(|(file, key, none)| {
            let path: PathBuf = base.config_dir().join(file);
            std::fs::read_to_string(path).is_ok_and(|text| says(&text, key, none))
        })
    })
}

/// Whether a file of `key=value` lines has a key with this value.
fn says(text: &str, key: &str, value: &str) -> bool {
    text.lines().filter_map(|line| line.split_once('=')).any(|(known, held)| {
        let held = held.trim().trim_matches('"');
        known.trim().eq_ignore_ascii_case(key)
            && (held.eq_ignore_ascii_case(value) || held == "0" || held.parse::<f64>() == Ok(0.0))
    })
}

#[cfg(test)]
mod tests {
    use super::says;

    #[test]
    fn files_of_settings_are_read_as_they_are_written() {
        let key = "gtk-enable-animations";
        assert!(says("[Settings]\ngtk-theme-name=x\ngtk-enable-animations = false\n", key, "false"));
        assert!(says("[Settings]\ngtk-enable-animations=0\n", key, "false"));
        assert!(!says("[Settings]\ngtk-enable-animations=1\n", key, "false"));
        assert!(!says("[Settings]\n# gtk-enable-animations=false\n", key, "false"));
        assert!(says("[KDE]\nAnimationDurationFactor=0\n", "AnimationDurationFactor", "0"));
        assert!(!says("[KDE]\nAnimationDurationFactor=0.5\n", "AnimationDurationFactor", "0"));
    }
}
