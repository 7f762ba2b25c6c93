//! The spreadsheet on the other end of the pipe, by `tests/scripts/spreadsheet.py`.

use std::io::{BufRead, BufReader, Write};
use std::process::{Child, ChildStdin, ChildStdout, Command, Stdio};

use serde::Deserialize;
use serde_json::{Value, json};

use crate::Problem;
use crate::sheet::{Cell, Place, Sheet};

/// What a change is answered with.
#[derive(Deserialize)]
pub(crate) struct Answer {
    /// From the change until the block was read.
    pub(crate) seconds: f64,
    /// To read the block once more.
    pub(crate) pipe: f64,
    /// Its rows.
    pub(crate) values: Vec<Vec<Value>>,
}

/// A running office.
pub(crate) struct Office {
    child: Child,
    orders: Option<ChildStdin>,
    answers: BufReader<ChildStdout>,
}

impl Office {
    pub(crate) fn start() -> Result<Self, Problem> {
        let found = |name: &str| {
            std::env::var_os("PATH")
                .is_some_and(|path| std::env::split_paths(&path).any(|folder| folder.join(name).is_file()))
        };
        if !found("soffice") {
            return Err("there is no spreadsheet here; install libreoffice-calc and python3-uno".into());
        }
        let script = concat!(env!("CARGO_MANIFEST_DIR"), "/scripts/spreadsheet.py");
        // The system's own Python: the bindings are not in any other.
        let mut child = Command::new("/usr/bin/python3")
            .args([script, "serve"])
            .stdin(Stdio::piped())
            .stdout(Stdio::piped())
            .spawn()?;
        let orders = child.stdin.take();
        let answers = BufReader::new(child.stdout.take().ok_or("no answers")?);
        Ok(Self { child, orders, answers })
    }

    fn order(&mut self, order: &Value) -> Result<Value, Problem> {
        let orders = self.orders.as_mut().ok_or("the office is closed")?;
        writeln!(orders, "{order}")?;
        orders.flush()?;
        let mut line = String::new();
        if self.answers.read_line(&mut line)? == 0 {
            return Err("the spreadsheet ended; python3-uno may be missing".into());
        }
        Ok(serde_json::from_str(&line)?)
    }

    pub(crate) fn put(&mut self, cells: Vec<Cell>) -> Result<(), Problem> {
        let cells: Vec<Value> =
            cells.into_iter().map(|cell| json!([cell.sheet, cell.at.column, cell.at.row, cell.holds])).collect();
        self.order(&json!({ "cells": cells })).map(|_| ())
    }

    pub(crate) fn change(&mut self, sheet: &Sheet, at: Place, value: f64, all: bool) -> Result<Answer, Problem> {
        let (from, to) = sheet.block;
        let order = json!({
            "set": [sheet.number, at.column, at.row, value],
            "read": [from.column, from.row, to.column, to.row],
            "all": all,
        });
        Ok(serde_json::from_value(self.order(&order)?)?)
    }

    pub(crate) fn save(&mut self, path: &str) -> Result<(), Problem> {
        self.order(&json!({ "save": path })).map(|_| ())
    }
}

impl Drop for Office {
    fn drop(&mut self) {
        // The script ends with its orders, and the office with it.
        self.orders = None;
        let _ = self.child.wait();
    }
}
