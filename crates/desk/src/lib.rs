//! Tankard's desk and its command line.
//!
//! The desk is a library, so that tests can build it without a window. The rooms: [`cli`] the command line, [`app`] the
//! window, [`document`] the open farm with undo, [`command`] what can be done from anywhere, [`look`] colours and type,
//! [`views`] one folder a view, [`parts`] what they share, [`report`] the plan in words and as JSON,
//! [`guide`] the pages that explain it, [`keys`] what keys do at their place, [`find`] anything by its words.

pub mod app;
pub mod cli;
pub mod command;
pub mod demo;
pub mod document;
pub mod files;
pub mod find;
pub mod guide;
pub mod keys;
pub mod look;
pub mod parts;
pub mod recent;
pub mod report;
pub mod views;

/// Starts the program.
pub fn run() -> std::process::ExitCode {
    env_logger::Builder::from_env(env_logger::Env::default().default_filter_or("warn,tankard=info")).init();
    cli::run()
}
