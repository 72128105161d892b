//! The batch door: `solve` reads one JSON question a line and writes one answer a line.
//!
//! ```text
//! {"calculator": "box-fill", "input": {…}, "editions": {"electrical": "2020"}}
//! ```
//! `solve --list` prints the calculators, `solve --describe ID` one's fields, limits and a
//! worked sample.

use ledgerboard_core::catalog;
use std::io::{self, BufRead, Write};
use std::process::ExitCode;

fn main() -> io::Result<ExitCode> {
    let mut out = io::stdout().lock();
    let args: Vec<String> = std::env::args().skip(1).collect();
    match args.iter().map(String::as_str).collect::<Vec<_>>().as_slice() {
        [] => {
            for line in io::stdin().lock().split(b'\n') {
                let line = line?;
                let line = String::from_utf8_lossy(&line);
                if !line.trim().is_empty() {
                    writeln!(out, "{}", catalog::answer_line(&line))?;
                }
            }
        }
        ["--list"] => writeln!(out, "{}", catalog::list())?,
        ["--describe", id] => match catalog::find(id) {
            Some(entry) => writeln!(out, "{}", catalog::describe(entry))?,
            None => {
                eprintln!("no calculator has the id {id}; --list shows them");
                return Ok(ExitCode::from(2));
            }
        },
        _ => {
            eprintln!("usage: solve [--list | --describe ID], questions on standard input");
            return Ok(ExitCode::from(2));
        }
    }
    Ok(ExitCode::SUCCESS)
}
