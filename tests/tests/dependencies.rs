//! What the program is made of: licences, sources, nothing that talks to a network, no version twice without a reason, nothing
//! that is not used; and the list of it all that is shipped with the program.
//!
//! `cargo test -p tankard-tests --test dependencies -- --ignored` makes the list anew, after a change of `Cargo.lock`. It may
//! fetch the sources of packages for other systems.

// A test stops where its ground is missing.
#![allow(clippy::unwrap_used, clippy::indexing_slicing, clippy::panic)]

use std::collections::{BTreeMap, BTreeSet};
use std::fmt::Write as _;
use std::fs;
use std::path::{Path, PathBuf};
use std::process::Command;

use serde::{Deserialize, Serialize};
use spdx::{Expression, ParseMode};

/// Licences that may be in the program, each with a word why. Where a package offers several, one of these is enough.
const LICENCES: [(&str, &str); 12] = [
    ("0BSD", "asks for nothing"),
    ("Apache-2.0", "the program's own licence; its text and notices go with the program"),
    ("Apache-2.0 WITH LLVM-exception", "as Apache-2.0, with less asked for in what is compiled"),
    ("BSD-2-Clause", "its text goes with the program"),
    ("BSD-3-Clause", "its text goes with the program, and no name of an author may praise it"),
    ("BSL-1.0", "asks for nothing in what is compiled"),
    ("CC0-1.0", "asks for nothing"),
    ("ISC", "its text goes with the program"),
    ("MIT", "its text goes with the program"),
    ("Unicode-3.0", "tables of the Unicode Consortium; its text goes with the program"),
    ("Unlicense", "asks for nothing"),
    ("Zlib", "asks for nothing in what is compiled, but that nobody claims to have written it"),
];

/// Libraries that open connections to other machines, or are made for that alone.
const NETWORK: &str = "\
    actix-web attohttpc curl curl-sys h2 hickory-resolver http hyper hyper-util isahc mio minreq native-tls \
    openssl openssl-sys quinn reqwest rustls schannel security-framework self_update sentry socket2 ssh2 surf \
    tiny_http tokio trust-dns-resolver tungstenite ureq webbrowser";

/// Packages that are built in more than one version, and why that is borne. One that is not any more fails the test.
const TWICE: [(&str, &str); 5] = [
    (
        "the desk and Typst draw letters and pictures with the same young libraries, each with the version it was tested with",
        "base64 fearless_simd font-types hayro-ccitt miniz_oxide phf phf_generator phf_macros phf_shared quick-xml read-fonts \
         roxmltree skrifa vello_common vello_cpu",
    ),
    (
        "the window and the clipboard speak to Wayland by two versions of one library",
        "calloop calloop-wayland-source linux-raw-sys rustix smithay-client-toolkit",
    ),
    (
        "Typst's filler text, statistics and the names of new files draw chance by three versions",
        "getrandom rand rand_core",
    ),
    ("older users of hash tables have not moved to the newer one yet", "foldhash hashbrown"),
    (
        "what macros and build scripts read Rust and manifests with; nothing of it is in the program",
        "syn thiserror thiserror-impl toml_datetime toml_edit winnow",
    ),
];

/// The systems that the program is made for. On others its libraries bring along what it has no use for.
const SYSTEMS: [&str; 6] = [
    "x86_64-unknown-linux-gnu",
    "aarch64-unknown-linux-gnu",
    "x86_64-pc-windows-msvc",
    "aarch64-pc-windows-msvc",
    "x86_64-apple-darwin",
    "aarch64-apple-darwin",
];

const LIST: &str = "assets/third-party/packages.csv";
const TEXTS: &str = "assets/third-party/licences.txt";

/// A package as the list has it.
#[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
struct Row {
    package: String,
    version: String,
    licence: String,
    /// `program`, on one system or another; `build`: only makes it; `other`: tests, or nothing that is built here.
    part: String,
    checksum: String,
}

#[derive(Deserialize)]
struct Lock {
    package: Vec<Locked>,
}

#[derive(Deserialize)]
struct Locked {
    name: String,
    version: String,
    source: Option<String>,
    checksum: Option<String>,
    #[serde(default)]
    dependencies: Vec<String>,
}

fn root() -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).join("..")
}

fn lock(file: &str) -> Vec<Locked> {
    let text = fs::read_to_string(root().join(file)).unwrap();
    toml::from_str::<Lock>(&text).unwrap().package
}

fn list() -> Vec<Row> {
    csv::Reader::from_path(root().join(LIST)).unwrap().deserialize().map(Result::unwrap).collect()
}

fn cargo(arguments: &[&str]) -> String {
    let ran = Command::new(env!("CARGO")).args(arguments).current_dir(root()).output().unwrap();
    assert!(ran.status.success(), "{}", String::from_utf8_lossy(&ran.stderr));
    String::from_utf8(ran.stdout).unwrap()
}

/// Name and version of what `tankard` is built from.
fn built(more: &[&str]) -> BTreeSet<(String, String)> {
    let mut arguments = vec!["tree", "--locked", "-p", "tankard", "--prefix", "none", "--no-dedupe", "--format", "{p}"];
    arguments.extend(more);
    let package = |line: &str| {
        let mut words = line.split(' ');
        let (name, version) = (words.next()?, words.next()?.strip_prefix('v')?);
        (!name.starts_with("tankard")).then(|| (name.to_owned(), version.to_owned()))
    };
    cargo(&arguments).lines().filter_map(package).collect()
}

fn allowed(licence: &str) -> bool {
    let expression = Expression::parse_mode(licence, ParseMode::LAX).unwrap();
    let known = |asked: &spdx::LicenseReq| LICENCES.iter().any(|(name, _)| *name == asked.to_string());
    expression.evaluate(known)
}

#[test]
fn all_packages_come_from_the_registry_and_are_held_by_their_sums() {
    for package in lock("Cargo.lock") {
        if package.name.starts_with("tankard") {
            assert_eq!(package.source, None, "{}", package.name);
            continue;
        }
        let source = package.source.unwrap_or_default();
        assert!(source.starts_with("registry+") && source.ends_with("/crates.io-index"), "{}: {source}", package.name);
        assert!(package.checksum.is_some_and(|sum| sum.len() == 64), "{}", package.name);
    }
}

#[test]
fn the_list_is_that_of_the_lock() {
    let locked: BTreeSet<_> = lock("Cargo.lock")
        .into_iter()
        .filter_map(|package| Some((package.name, package.version, package.checksum?)))
        .collect();
    let listed: BTreeSet<_> = list().into_iter().map(|row| (row.package, row.version, row.checksum)).collect();
    let again = "make the list anew by the command at the head of this test";
    assert!(locked == listed, "{again}: {:?}", locked.symmetric_difference(&listed).collect::<Vec<_>>());
    // What is built on this machine is known to be in the program.
    let program: BTreeSet<_> =
        list().into_iter().filter(|row| row.part == "program").map(|row| (row.package, row.version)).collect();
    let missing: Vec<_> =
        built(&["--offline", "-e", "normal"]).into_iter().filter(|one| !program.contains(one)).collect();
    assert!(missing.is_empty(), "{again}: {missing:?}");
}

#[test]
fn every_licence_is_one_that_may_be_in_the_program() {
    let mut used = BTreeSet::new();
    for row in list() {
        assert!(allowed(&row.licence), "{} {} has {}", row.package, row.version, row.licence);
        let expression = Expression::parse_mode(&row.licence, ParseMode::LAX).unwrap();
        used.extend(expression.requirements().map(|asked| asked.req.to_string()));
    }
    for (name, _) in &LICENCES {
        assert!(used.contains(*name), "{name} is of no package any more");
    }
    assert!(!allowed("GPL-3.0-only") && !allowed("MIT AND GPL-2.0-only") && allowed("MIT OR GPL-2.0-only"));
}

#[test]
fn every_package_in_the_program_has_its_licence_beside_it() {
    let texts = fs::read_to_string(root().join(TEXTS)).unwrap();
    let named: BTreeSet<&str> =
        texts.lines().filter_map(|line| line.strip_prefix("- ")).flat_map(|line| line.split(", ")).collect();
    for row in list().iter().filter(|row| row.part == "program") {
        let name = format!("{} {}", row.package, row.version);
        assert!(named.contains(name.as_str()), "{name}");
    }
}

#[test]
fn nothing_in_the_program_talks_to_a_network() {
    let here = built(&["--offline", "-e", "normal,build"]);
    assert!(here.len() > 300, "{}", here.len());
    let anywhere = list().into_iter().filter(|row| row.part != "other").map(|row| (row.package, row.version));
    for (name, version) in here.into_iter().chain(anywhere) {
        assert!(!NETWORK.split_whitespace().any(|one| one == name), "{name} {version}");
    }
    // D-Bus is a Unix socket on this machine; of the two ways to it, that over Tokio would bring its network along.
    let features =
        cargo(&["tree", "--locked", "--offline", "-p", "tankard", "-e", "normal", "--prefix", "none", "-f", "{p} {f}"]);
    let bus: Vec<&str> = features.lines().filter(|line| line.starts_with("zbus v")).collect();
    assert!(!bus.is_empty() && bus.iter().all(|line| !line.contains("tokio") && !line.contains("vsock")), "{bus:?}");
}

#[test]
fn no_package_is_built_twice_without_a_reason() {
    let mut versions: BTreeMap<String, usize> = BTreeMap::new();
    for (name, _) in built(&["--offline", "-e", "normal,build"]) {
        *versions.entry(name).or_default() += 1;
    }
    let twice: BTreeSet<&str> =
        versions.iter().filter(|(_, count)| **count > 1).map(|(name, _)| name.as_str()).collect();
    let borne: BTreeSet<&str> = TWICE.iter().flat_map(|(_, names)| names.split_whitespace()).collect();
    let new: Vec<_> = twice.difference(&borne).collect();
    assert!(new.is_empty(), "built in several versions: {new:?}");
    if cfg!(all(target_os = "linux", target_arch = "x86_64")) {
        let gone: Vec<_> = borne.difference(&twice).collect();
        assert!(gone.is_empty(), "built once now, so take it off the list: {gone:?}");
    }
}

#[derive(Deserialize)]
struct Manifest {
    #[serde(default)]
    dependencies: BTreeMap<String, toml::Value>,
    #[serde(default, rename = "dev-dependencies")]
    for_tests: BTreeMap<String, toml::Value>,
}

#[derive(Deserialize)]
struct Workspace {
    workspace: Manifest,
}

fn sources(folder: &Path) -> String {
    let Ok(entries) = fs::read_dir(folder) else { return String::new() };
    let text = |path: PathBuf| {
        if path.is_dir() {
            sources(&path)
        } else if path.extension().is_some_and(|ending| ending == "rs") {
            fs::read_to_string(path).unwrap()
        } else {
            String::new()
        }
    };
    entries.map(|entry| text(entry.unwrap().path())).collect()
}

#[test]
fn every_dependency_is_used() {
    let mut asked = BTreeSet::new();
    for room in ["crates/core", "crates/file", "crates/paper", "crates/desk", "tests"] {
        let folder = root().join(room);
        let manifest: Manifest = toml::from_str(&fs::read_to_string(folder.join("Cargo.toml")).unwrap()).unwrap();
        let program = sources(&folder.join("src"));
        let all = program.clone() + &sources(&folder.join("tests")) + &sources(&folder.join("benches"));
        let used = |name: &str, text: &str| text.contains(&format!("{}::", name.replace('-', "_")));
        for name in manifest.dependencies.keys() {
            assert!(used(name, &program), "{room} does not use {name}");
        }
        for name in manifest.for_tests.keys() {
            assert!(used(name, &all), "{room} does not use {name} in its tests");
        }
        asked.extend(manifest.dependencies.into_keys().chain(manifest.for_tests.into_keys()));
    }
    let manifest: Workspace = toml::from_str(&fs::read_to_string(root().join("Cargo.toml")).unwrap()).unwrap();
    for name in manifest.workspace.dependencies.keys() {
        assert!(asked.contains(name), "no part of the workspace asks for {name}");
    }
}

#[derive(Deserialize)]
struct Metadata {
    packages: Vec<Package>,
}

#[derive(Deserialize)]
struct Package {
    name: String,
    version: String,
    license: Option<String>,
    manifest_path: PathBuf,
}

/// Makes the list and the texts anew. Not a test: run by name where the lock has changed.
#[test]
#[ignore = "makes the list of packages anew"]
fn make_the_list() {
    let everywhere: Vec<&str> =
        SYSTEMS.into_iter().flat_map(|system| ["--target", system]).chain(["--all-features"]).collect();
    let program = built(&[&everywhere[..], &["-e", "normal"]].concat());
    let build = built(&[&everywhere[..], &["-e", "normal,build"]].concat());
    let metadata: Metadata =
        serde_json::from_str(&cargo(&["metadata", "--locked", "--format-version", "1", "--all-features"])).unwrap();
    let known: BTreeMap<_, _> =
        metadata.packages.iter().map(|package| ((package.name.clone(), package.version.clone()), package)).collect();
    let before: BTreeMap<_, _> = list().into_iter().map(|row| ((row.package, row.version), row.licence)).collect();
    let mut rows = Vec::new();
    for locked in lock("Cargo.lock") {
        let Some(checksum) = locked.checksum else { continue };
        let key = (locked.name, locked.version);
        let part = if program.contains(&key) {
            "program"
        } else if build.contains(&key) {
            "build"
        } else {
            "other"
        };
        let licence = known.get(&key).and_then(|package| package.license.clone()).or_else(|| before.get(&key).cloned());
        let licence = licence.unwrap_or_else(|| panic!("{key:?} says no licence"));
        rows.push(Row { package: key.0, version: key.1, licence, part: part.to_owned(), checksum });
    }
    rows.sort();
    let mut writer = csv::Writer::from_path(root().join(LIST)).unwrap();
    for row in &rows {
        writer.serialize(row).unwrap();
    }
    writer.flush().unwrap();
    let found = rows.iter().filter(|row| row.part == "program").filter_map(|row| {
        let package = known.get(&(row.package.clone(), row.version.clone()))?;
        Some((row, texts_of(package.manifest_path.parent()?)))
    });
    fs::write(root().join(TEXTS), written(found)).unwrap();
}

/// The licence texts in the sources of a package.
fn texts_of(folder: &Path) -> Vec<String> {
    let mut names: Vec<PathBuf> = fs::read_dir(folder).unwrap().map(|entry| entry.unwrap().path()).collect();
    names.sort();
    let mut found = Vec::new();
    for path in names {
        let name = path.file_name().unwrap().to_string_lossy().to_lowercase();
        if !["license", "licence", "copying", "copyright", "notice", "unlicense"]
            .iter()
            .any(|word| name.starts_with(word))
        {
            continue;
        }
        if path.is_dir() {
            let inner = fs::read_dir(&path).unwrap().map(|entry| entry.unwrap().path()).filter(|path| path.is_file());
            let mut inner: Vec<_> = inner.collect();
            inner.sort();
            found.extend(inner.iter().map(|path| fs::read_to_string(path).unwrap()));
        } else if !name.contains("third-party") {
            found.push(String::from_utf8_lossy(&fs::read(&path).unwrap()).into_owned());
        }
    }
    found
}

/// Each text once, with the packages that it is of. The Apache License is laid out in many ways and says the same, so it stands
/// once, and what some write behind it stands apart.
fn written<'a>(found: impl Iterator<Item = (&'a Row, Vec<String>)>) -> String {
    const END: &str = "END OF TERMS AND CONDITIONS";
    let mut texts: BTreeMap<String, (String, BTreeSet<String>)> = BTreeMap::new();
    let mut bare: BTreeMap<&str, BTreeSet<String>> = BTreeMap::new();
    for (row, own) in found {
        let name = format!("{} {}", row.package, row.version);
        if own.is_empty() {
            bare.entry(&row.licence).or_default().insert(name.clone());
        }
        for text in own {
            let parts = match text.split_once(END) {
                Some((head, tail)) if head.contains("Apache License") => {
                    vec![format!("{head}{END}"), tail.to_owned()]
                }
                _ => vec![text],
            };
            for part in parts {
                let lines: Vec<&str> = part.lines().map(str::trim_end).collect();
                let part = lines.join("\n").trim_matches('\n').to_owned();
                let key: String =
                    part.chars().filter(|letter| letter.is_alphanumeric()).collect::<String>().to_lowercase();
                // The form to be filled in, or nothing.
                if key.is_empty() || key.starts_with("appendixhowto") && key.contains("yyyynameofcopyrightowner") {
                    continue;
                }
                let entry = texts.entry(key).or_insert_with(|| (part, BTreeSet::new()));
                entry.1.insert(name.clone());
            }
        }
    }
    let joined = |names: &BTreeSet<String>| names.iter().cloned().collect::<Vec<_>>().join(", ");
    let mut out = String::from(
        "Tankard is built from the packages below. Each text stands once, under the packages whose sources it came with.\n",
    );
    out.push_str("Which package has which licence stands in packages.csv.\n");
    for (text, names) in texts.values() {
        write!(out, "\n{}\n- {}\n\n{text}\n", "=".repeat(80), joined(names)).unwrap();
    }
    let said = "The sources of these hold no text; their manifests name a licence, whose text stands above.";
    write!(out, "\n{}\n{said}\n", "=".repeat(80)).unwrap();
    for (licence, names) in &bare {
        write!(out, "{licence}\n- {}\n", joined(names)).unwrap();
    }
    out
}

/// The fuzzers are a workspace of their own with its own lock file, which `tests/fuzz/run` takes as it stands: what a crate of ours
/// needs must be in it. `cargo update --workspace` in `tests/fuzz` mends it.
#[test]
fn the_fuzzers_lock_file_knows_what_our_crates_need() {
    #[derive(Deserialize)]
    struct Manifest {
        package: Named,
        dependencies: BTreeMap<String, toml::Value>,
    }
    #[derive(Deserialize)]
    struct Named {
        name: String,
    }
    let locked = lock("tests/fuzz/Cargo.lock");
    for folder in ["tests/fuzz", "tests", "crates/core", "crates/file"] {
        let text = fs::read_to_string(root().join(folder).join("Cargo.toml")).unwrap();
        let manifest: Manifest = toml::from_str(&text).unwrap();
        let package = locked.iter().find(|package| package.name == manifest.package.name).unwrap();
        // A name stands with its version only where there are several.
        let known: BTreeSet<&str> = package.dependencies.iter().filter_map(|need| need.split(' ').next()).collect();
        let needed: BTreeSet<&str> = manifest.dependencies.keys().map(String::as_str).collect();
        assert_eq!(known, needed, "{folder}: run `cargo update --workspace` in tests/fuzz");
    }
}
