//! The words of the command line itself: its help and what it says where it is not understood. Its library has them in English alone; in
//! another language they are messages, laid in their place.

use std::error::Error as _;
use std::ffi::OsString;

use clap::builder::Resettable;
use clap::error::{ContextKind, ContextValue, ErrorKind};
use clap::{Arg, Command, CommandFactory};
use tankard_core::language::{Language, plain, spoken};
use tankard_core::t;

use super::Args;

/// What each command does; the one without a name is the program.
const ABOUT: [(&str, &str); 16] = [
    ("tankard", "cli-about"),
    ("plan", "cli-about-plan"),
    ("day", "cli-about-day"),
    ("cards", "cli-about-cards"),
    ("evening", "cli-about-evening"),
    ("jar", "cli-about-jar"),
    ("forecast", "cli-about-forecast"),
    ("needs", "cli-about-needs"),
    ("review", "cli-about-review"),
    ("records", "cli-about-records"),
    ("ground", "cli-about-ground"),
    ("boundaries", "cli-about-boundaries"),
    ("book", "cli-about-book"),
    ("workers", "cli-about-workers"),
    ("check", "cli-about-check"),
    ("help", "cli-about-help"),
];

/// What each argument is: of which command, by its id. One of no command is the same wherever none of its own is named.
const HELP: [(&str, &str, &str); 45] = [
    ("", "help", "cli-help-help"),
    ("", "version", "cli-help-version"),
    ("", "file", "cli-help-farm"),
    ("", "pass", "cli-help-pass"),
    ("tankard", "file", "cli-help-open"),
    ("tankard", "view", "cli-help-view"),
    ("tankard", "theme", "cli-help-theme"),
    ("tankard", "language", "cli-help-language"),
    ("tankard", "scale", "cli-help-scale"),
    ("tankard", "size", "cli-help-size"),
    ("tankard", "renderer", "cli-help-renderer"),
    ("plan", "json", "cli-help-json-si"),
    ("day", "date", "cli-help-one-day"),
    ("day", "json", "cli-help-json"),
    ("cards", "out", "cli-help-out-them"),
    ("evening", "date", "cli-help-evening-date"),
    ("evening", "out", "cli-help-out-it"),
    ("evening", "with_cards", "cli-help-with-cards"),
    ("jar", "jar", "cli-help-jar"),
    ("jar", "out", "cli-help-jar-out"),
    ("forecast", "from", "cli-help-forecast-from"),
    ("forecast", "out", "cli-help-forecast-out"),
    ("needs", "date", "cli-help-needs-date"),
    ("needs", "json", "cli-help-json-si"),
    ("review", "season", "cli-help-review-season"),
    ("review", "json", "cli-help-json-review"),
    ("review", "out", "cli-help-review-out"),
    ("records", "csv", "cli-help-records-csv"),
    ("records", "json", "cli-help-records-json"),
    ("records", "season", "cli-help-records-season"),
    ("records", "import", "cli-help-records-import"),
    ("records", "out", "cli-help-records-out"),
    ("ground", "boundaries", "cli-help-ground-file"),
    ("ground", "out", "cli-help-ground-out"),
    ("boundaries", "out", "cli-help-boundaries-out"),
    ("boundaries", "pass", "cli-help-boundaries-pass"),
    ("book", "out", "cli-help-out-it"),
    ("book", "by", "cli-help-book-by"),
    ("book", "season", "cli-help-book-season"),
    ("book", "one_a_page", "cli-help-one-a-page"),
    ("workers", "record", "cli-help-workers-record"),
    ("workers", "season", "cli-help-workers-season"),
    ("workers", "out", "cli-help-out-them"),
    ("check", "date", "cli-help-check-date"),
    ("check", "json", "cli-help-json"),
];

fn about(command: &str) -> Option<&'static str> {
    ABOUT.iter().find(|(name, _)| *name == command).map(|(_, id)| plain(id))
}

fn help(command: &str, arg: &str) -> Option<&'static str> {
    let of = |command: &str| HELP.iter().find(|(name, known, _)| *name == command && *known == arg);
    of(command).or_else(|| of("")).map(|(_, _, id)| plain(id))
}

/// The language that is asked for, wherever it stands, and the command line without it. One that is not known stays, to be told.
pub(super) fn take_language(asked: impl Iterator<Item = OsString>) -> (Option<Language>, Vec<OsString>) {
    let known = |text: Option<&str>| text.and_then(|text| super::language(text).ok());
    let (mut language, mut rest) = (None, Vec::new());
    let mut asked = asked.peekable();
    while let Some(word) = asked.next() {
        if word == "--" {
            rest.push(word);
            break;
        }
        let joined = word.to_str().and_then(|word| word.strip_prefix("--language="));
        let apart = asked.peek().filter(|_| word == "--language").and_then(|next| next.to_str());
        if let Some(found) = known(joined) {
            language = Some(found);
        } else if let Some(found) = known(apart) {
            language = Some(found);
            asked.next();
        } else {
            rest.push(word);
        }
    }
    rest.extend(asked);
    (language, rest)
}

/// The command line in the language that is spoken.
pub(super) fn command() -> Command {
    let mut command = Args::command();
    if spoken() != Language::English {
        // What the library adds by itself is there only once it is built.
        command.build();
        command = translated(command);
    }
    command
}

fn translated(command: Command) -> Command {
    let name = command.get_name().to_owned();
    let command = match about(&name) {
        Some(about) => command.about(about),
        None => command,
    };
    let heading = t!("cli-usage-heading");
    command
        .help_template(format!(
            "{{before-help}}{{about-with-newline}}\n{heading} {{usage}}\n\n{{all-args}}{{after-help}}"
        ))
        .subcommand_help_heading(t!("cli-commands"))
        .subcommand_value_name(t!("cli-command"))
        .mut_args(|arg| argument(&name, arg))
        .mut_subcommands(translated)
}

fn argument(command: &str, arg: Arg) -> Arg {
    let mut text = help(command, arg.get_id().as_str()).unwrap_or_default().to_owned();
    let values: Vec<String> = if arg.get_num_args().is_some_and(|count| count.takes_values()) {
        arg.get_possible_values().iter().map(|value| value.get_name().to_owned()).collect()
    } else {
        Vec::new()
    };
    if !values.is_empty() {
        text = t!("cli-values", help = text, values = values.join(", "));
    }
    if let Some(value) = arg.get_default_values().first().filter(|_| !values.is_empty()) {
        text = t!("cli-default", help = text, value = value.display());
    }
    let heading = if arg.is_positional() { t!("cli-arguments") } else { t!("cli-options") };
    arg.help(text)
        .long_help(Resettable::Reset)
        .help_heading(heading)
        .hide_possible_values(true)
        .hide_default_value(true)
}

/// Prints the help, the version or what is wrong. Where even that cannot be written there is nobody to tell.
pub(super) fn complain(error: &clap::Error) {
    if spoken() == Language::English || !error.use_stderr() {
        let _ = error.print();
        return;
    }
    eprintln!("{}", t!("cli-wrong", what = wrong(error)));
    if let Some((_, usage)) = context(error, ContextKind::Usage).split_once(": ") {
        eprintln!("\n{} {}", t!("cli-usage-heading"), usage.trim_end());
    }
    eprintln!("\n{}", t!("cli-more-help"));
}

fn wrong(error: &clap::Error) -> String {
    let name = context(error, ContextKind::InvalidArg);
    let value = context(error, ContextKind::InvalidValue);
    let command = context(error, ContextKind::InvalidSubcommand);
    match error.kind() {
        ErrorKind::InvalidValue => match context(error, ContextKind::ValidValue).as_str() {
            "" => t!("cli-wrong-value", value = value, name = name),
            values => t!("cli-wrong-value-one-of", value = value, name = name, values = values),
        },
        ErrorKind::ValueValidation => match error.source() {
            Some(why) => t!("cli-wrong-value-because", value = value, name = name, why = why),
            None => t!("cli-wrong-value", value = value, name = name),
        },
        ErrorKind::UnknownArgument => t!("cli-wrong-unknown", name = name),
        ErrorKind::InvalidSubcommand => t!("cli-wrong-command", name = command),
        ErrorKind::MissingRequiredArgument => t!("cli-wrong-missing", names = name),
        ErrorKind::ArgumentConflict => {
            let name = if name.is_empty() { command } else { name };
            t!("cli-wrong-together", name = name, other = context(error, ContextKind::PriorArg))
        }
        _ => t!("cli-wrong-otherwise").to_owned(),
    }
}

/// What the library knows of an error.
fn context(error: &clap::Error, kind: ContextKind) -> String {
    match error.get(kind) {
        Some(ContextValue::String(text)) => text.clone(),
        Some(ContextValue::Strings(texts)) => texts.join(", "),
        Some(ContextValue::StyledStr(text)) => text.to_string(),
        Some(ContextValue::StyledStrs(texts)) => texts.iter().map(ToString::to_string).collect::<Vec<_>>().join(", "),
        _ => String::new(),
    }
}

#[cfg(test)]
mod tests {
    use clap::{Command, CommandFactory};
    use tankard_core::language::{Language, speaking};

    use super::{ABOUT, Args, HELP, about, command, help, take_language};

    fn each(command: &Command, look: &mut impl FnMut(&Command)) {
        look(command);
        for below in command.get_subcommands() {
            each(below, look);
        }
    }

    /// The help in English is derived from the code; one that is mended there alone would be said otherwise in another language.
    #[test]
    fn each_command_and_argument_is_a_message_and_the_other_way_round() {
        let mut all = Args::command();
        all.build();
        let mut names: Vec<(String, String)> = Vec::new();
        each(&all, &mut |command| {
            let name = command.get_name();
            assert_eq!(command.get_about().map(ToString::to_string).as_deref(), about(name), "{name}");
            for arg in command.get_arguments() {
                let id = arg.get_id().as_str();
                if name == "help" || id == "subcommand" {
                    continue;
                }
                let shown = arg.get_help().map(ToString::to_string).unwrap_or_default();
                // Where there is more to see, the library says so behind its own words.
                let shown = if id == "help" { shown.split(" (").next().unwrap_or_default() } else { &shown };
                assert_eq!(Some(shown), help(name, id), "{name} {id}");
                names.push((name.to_owned(), id.to_owned()));
            }
        });
        for (of, arg, id) in HELP {
            assert!(names.iter().any(|(name, known)| (of.is_empty() || of == name) && arg == known), "{id}");
        }
        assert!(ABOUT.len() > 10);
    }

    #[test]
    fn the_help_is_said_in_spanish() {
        speaking(Language::Spanish, || {
            let mut all = command();
            let text = all.render_help().to_string();
            for words in
                ["Uso: tankard", "Comandos:", "Opciones:", "Muestra el plan con sus avisos", "[valores: light, dark]"]
            {
                assert!(text.contains(words), "{words}: {text}");
            }
            for words in ["Usage", "Print", "Options", "possible", "The "] {
                assert!(!text.contains(words), "{words}: {text}");
            }
            let found = command().try_get_matches_from(["tankard", "plan", "a.ron", "--json"]).unwrap();
            assert_eq!(found.subcommand_name(), Some("plan"));
            let wrong = command().try_get_matches_from(["tankard", "plan"]).unwrap_err();
            assert_eq!(super::wrong(&wrong), "falta: <FILE>");
            let wrong = command().try_get_matches_from(["tankard", "--theme", "blue"]).unwrap_err();
            assert!(super::wrong(&wrong).contains("debe ser uno de light, dark"), "{}", super::wrong(&wrong));
        });
    }

    #[test]
    fn the_language_is_taken_wherever_it_stands() {
        let take = |words: &str| {
            let (language, rest) = take_language(words.split(' ').map(Into::into));
            (language, rest.into_iter().map(|word| word.into_string().unwrap()).collect::<Vec<_>>().join(" "))
        };
        let spanish = Some(Language::Spanish);
        assert_eq!(take("tankard --language es plan a.ron"), (spanish, "tankard plan a.ron".to_owned()));
        assert_eq!(take("tankard plan a.ron --language=es"), (spanish, "tankard plan a.ron".to_owned()));
        assert_eq!(take("tankard --language fr"), (None, "tankard --language fr".to_owned()));
        assert_eq!(take("tankard -- --language es"), (None, "tankard -- --language es".to_owned()));
        assert_eq!(take("tankard --language"), (None, "tankard --language".to_owned()));
    }
}
