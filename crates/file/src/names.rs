//! What a farm says of files: names made of its texts for files that are written, and paths of pictures that are read.
//!
//! A farm may come from anyone. So a name made of its texts stays in the folder that a person chose, on every system; and a path
//! in it leads to a picture on this machine, or nowhere: looking at a path on another machine would already call there.

use std::path::{Path, PathBuf};

use tankard_core::t;
use thiserror::Error;

use crate::cell::is_unseen;

/// The most bytes of a name. Systems take 255, and some with encrypted folders 143; backups and unsaved work put some more
/// behind.
const BYTES: usize = 120;

/// What no name has on one system or another. Source: Microsoft, Naming Files, Paths, and Namespaces; IEEE Std 1003.1 (the
/// slash).
const RESERVED: [char; 9] = ['/', '\\', ':', '*', '?', '"', '<', '>', '|'];

/// Endings of pictures: no program runs what has one of these.
const PICTURES: [&str; 12] = ["jpg", "jpeg", "jpe", "png", "gif", "bmp", "tif", "tiff", "webp", "heic", "heif", "avif"];

/// A name for a file that every system takes and that stays in its folder: a text of the farm, and what is put behind it, such
/// as "-load-cards.pdf".
///
/// What no name may hold becomes a hyphen: separators, letters that are not seen, marks that turn the direction of reading. A
/// name of nothing else is "unnamed", and a long one is cut.
///
/// # Examples
/// ```
/// use tankard_file::names::safe;
/// assert_eq!(safe("2031-06-12-mill", "-load-cards.pdf"), "2031-06-12-mill-load-cards.pdf");
/// assert_eq!(safe("../../etc/passwd", ".pdf"), "etc-passwd.pdf");
/// assert_eq!(safe("nul", ".ron"), "_nul.ron");
/// ```
pub fn safe(text: &str, rest: &str) -> String {
    let mut name = String::new();
    for letter in text.chars() {
        let is_taken = !RESERVED.contains(&letter) && !is_unseen(letter);
        if is_taken {
            name.push(letter);
        } else if !name.ends_with('-') {
            name.push('-');
        }
    }
    // A name that begins with a dot is hidden, one with a hyphen is taken for an option; dots and spaces at the end are dropped
    // by some systems, so that another file would be meant.
    let at_ends = |letter: char| letter == '.' || letter == '-' || letter.is_whitespace();
    let mut name = name.trim_matches(at_ends);
    let most = BYTES.saturating_sub(rest.len());
    while name.len() > most {
        let mut letters = name.chars();
        letters.next_back();
        name = letters.as_str().trim_end_matches(at_ends);
    }
    let name = if name.is_empty() { "unnamed" } else { name };
    let whole = format!("{name}{rest}");
    if is_device(&whole) { format!("_{whole}") } else { whole }
}

/// Whether a name is one of a device on Windows, whatever stands behind its first dot. Source: as for [`RESERVED`].
fn is_device(name: &str) -> bool {
    let stem = name.split('.').next().unwrap_or_default().trim_end().to_uppercase();
    let is_port = |port: &str| {
        let mut number = stem.strip_prefix(port).unwrap_or_default().chars();
        matches!((number.next(), number.next()), (Some('0'..='9' | '¹' | '²' | '³'), None))
    };
    matches!(stem.as_str(), "CON" | "PRN" | "AUX" | "NUL" | "CONIN$" | "CONOUT$") || is_port("COM") || is_port("LPT")
}

/// Why a path in a farm leads to no picture.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Error)]
pub enum NoPicture {
    /// It leads to another machine, or to a device.
    #[error("{}", t!("file-it-leads-off-this-machine-or"))]
    Elsewhere,
    /// It ends like no picture.
    #[error("{}", t!("file-it-is-no-picture-by-its"))]
    NotAPicture,
    /// There is no such file.
    #[error("{}", t!("file-not-there"))]
    Missing,
}

/// Where a picture is that a farm names, by its path from the farm's folder, where it is not whole. Nothing is looked up on a
/// disk.
///
/// # Errors
/// [`NoPicture::Elsewhere`] and [`NoPicture::NotAPicture`].
pub fn picture(folder: Option<&Path>, named: &str) -> Result<PathBuf, NoPicture> {
    // What begins with two slashes of either kind is a share of another machine or a device. Of the letters before a colon one
    // alone is a drive; more are the scheme of an address.
    let is_slash = |letter: char| matches!(letter, '/' | '\\');
    let is_share = named.trim_start().chars().take(2).filter(|letter| is_slash(*letter)).count() == 2;
    let scheme = named.split_once(':').map_or("", |(scheme, _)| scheme.trim());
    let is_address = scheme.len() > 1
        && scheme.starts_with(|letter: char| letter.is_ascii_alphabetic())
        && scheme.chars().all(|letter| letter.is_ascii_alphanumeric() || matches!(letter, '+' | '-' | '.'));
    if is_share || is_address || named.chars().any(char::is_control) || named.split(is_slash).any(is_device) {
        return Err(NoPicture::Elsewhere);
    }
    let path = folder.map_or_else(|| PathBuf::from(named), |folder| folder.join(named));
    if is_picture(&path) { Ok(path) } else { Err(NoPicture::NotAPicture) }
}

/// The same, looked at on the disk: an ordinary file, which behind any links is a picture too, so that it may be handed to the
/// system to be shown.
///
/// # Errors
/// [`NoPicture`].
pub fn picture_there(folder: Option<&Path>, named: &str) -> Result<PathBuf, NoPicture> {
    let path = picture(folder, named)?;
    let real = std::fs::canonicalize(&path).map_err(|_| NoPicture::Missing)?;
    match (real.is_file(), is_picture(&real)) {
        (true, true) => Ok(path),
        (true, false) => Err(NoPicture::NotAPicture),
        (false, _) => Err(NoPicture::Missing),
    }
}

fn is_picture(path: &Path) -> bool {
    let ending = path.extension().map(|ending| ending.to_string_lossy().to_lowercase()).unwrap_or_default();
    PICTURES.contains(&ending.as_str())
}

#[cfg(test)]
mod tests {
    use std::path::{Component, Path, PathBuf};

    use super::{BYTES, NoPicture, picture, picture_there, safe};

    const HOSTILE: [&str; 40] = [
        "",
        ".",
        "..",
        "../../etc/passwd",
        "/etc/passwd",
        "..\\..\\boot.ini",
        "C:\\Windows\\x",
        "c:x",
        "\\\\host\\share\\x",
        "//host/share/x",
        "\\\\.\\pipe\\x",
        "\\\\?\\C:\\x",
        "nul",
        "NUL.txt",
        "con",
        "CON ",
        "aux.pdf",
        "COM1",
        "lpt9.x",
        "COM¹",
        "conin$",
        "name.",
        "name ",
        "name . . ",
        " .hidden",
        "-rf",
        "a\0b",
        "a\nb\tc",
        "\u{7}",
        "\u{202e}fdp.exe",
        "\u{200b}",
        "\u{feff}",
        "a\u{2066}b\u{2069}",
        "x:stream",
        "*?<>|\"",
        "~",
        "%TEMP%",
        "$HOME",
        "e\u{301}",
        "ä/ö",
    ];

    #[test]
    fn a_name_stays_in_its_folder_and_is_taken_by_every_system() {
        let long = ["x".repeat(5000), "ü".repeat(300), "😀.".repeat(90), ".".repeat(400), "a ".repeat(200)];
        for text in HOSTILE.into_iter().chain(long.iter().map(String::as_str)) {
            for rest in [".pdf", "-load-cards.pdf", ""] {
                let name = safe(text, rest);
                let parts: Vec<_> = Path::new(&name).components().collect();
                assert!(matches!(parts[..], [Component::Normal(_)]), "{text:?} gives {name:?}");
                assert!(!name.contains(['/', '\\', ':', '\0']) && name.ends_with(rest), "{text:?} gives {name:?}");
                assert!(!name.starts_with(['.', '-', ' ']) && !name.ends_with(['.', ' ']), "{text:?} gives {name:?}");
                assert!(name.len() <= BYTES + 1, "{text:?} gives {name:?}");
                assert_eq!(PathBuf::from("/farms").join(&name).parent(), Some(Path::new("/farms")));
                // What is safe stays as it is.
                assert_eq!(safe(&name, ""), name);
                // A library that does the same for names has nothing left to do.
                assert_eq!(sanitize_filename::sanitize(&name), name, "{text:?}");
            }
        }
    }

    #[test]
    fn a_name_can_be_written_and_is_found_under_it() {
        let folder = tempfile::tempdir().unwrap();
        for (at, text) in HOSTILE.into_iter().enumerate() {
            let name = safe(text, &format!("-{at}.pdf"));
            crate::put::put(&folder.path().join(&name), b"%PDF").unwrap();
            assert!(std::fs::read_dir(folder.path()).unwrap().any(|entry| entry.unwrap().file_name() == *name));
        }
        assert_eq!(std::fs::read_dir(folder.path()).unwrap().count(), HOSTILE.len());
    }

    #[test]
    fn ordinary_names_stay() {
        for text in
            ["2031-06-12-corn-second-post", "Mühlfeld 3", "north, by the creek", "v1.2", "comet", "console", "COM10"]
        {
            assert_eq!(safe(text, ".ron"), format!("{text}.ron"));
        }
        assert_eq!(safe("a/b", "-taskdata.zip"), "a-b-taskdata.zip");
    }

    #[test]
    fn a_path_in_a_farm_leads_to_a_picture_on_this_machine() {
        let folder = Path::new("/farms");
        let at = |named| picture(Some(folder), named);
        assert_eq!(at("photos/mill.jpg"), Ok(PathBuf::from("/farms/photos/mill.jpg")));
        assert_eq!(at("../air.PNG"), Ok(PathBuf::from("/farms/../air.PNG")));
        assert!(at("/elsewhere/10:22.jpeg").is_ok() && at("10:22.jpg").is_ok() && at("C:\\pictures\\air.png").is_ok());
        for named in [
            "\\\\host\\share\\x.jpg",
            "//host/share/x.jpg",
            "\\/host/x.jpg",
            " //host/x.jpg",
            "\\\\.\\pipe\\x.png",
            "\\\\?\\UNC\\host\\x.png",
            "http://host/x.png",
            "https:x.png",
            "file:///x.png",
            "smb:x.png",
            "photos/NUL.jpg",
            "con.png",
            "a\0.png",
            "a\n.png",
        ] {
            assert_eq!(at(named), Err(NoPicture::Elsewhere), "{named:?}");
        }
        for named in ["", "..", "/etc/passwd", "run.desktop", "x.jpg.exe", "x.html", "x.svg", "x.jpg/", "x.lnk"] {
            let found = at(named);
            // A slash at the end is no part of a name; that it is no file is seen on the disk.
            assert!(found == Err(NoPicture::NotAPicture) || named.ends_with('/'), "{named:?} gives {found:?}");
        }
    }

    #[test]
    fn what_is_behind_a_link_must_be_a_picture_too() {
        let folder = tempfile::tempdir().unwrap();
        let at = |named| picture_there(Some(folder.path()), named);
        std::fs::write(folder.path().join("one.jpg"), "x").unwrap();
        std::fs::write(folder.path().join("run.sh"), "x").unwrap();
        std::fs::create_dir(folder.path().join("folder.jpg")).unwrap();
        assert_eq!(at("one.jpg"), Ok(folder.path().join("one.jpg")));
        assert_eq!(at("two.jpg"), Err(NoPicture::Missing));
        assert_eq!(at("folder.jpg"), Err(NoPicture::Missing));
        #[cfg(unix)]
        {
            std::os::unix::fs::symlink(folder.path().join("run.sh"), folder.path().join("link.jpg")).unwrap();
            std::os::unix::fs::symlink("/dev/zero", folder.path().join("zero.jpg")).unwrap();
            assert_eq!(at("link.jpg"), Err(NoPicture::NotAPicture));
            assert_eq!(at("zero.jpg"), Err(NoPicture::Missing));
        }
    }
}
