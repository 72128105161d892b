//! Build, serve, test and weigh the site. One subcommand a file; no rule of any trade is here.

mod asset;
mod bindgen;
mod budget;
mod build;
mod headers;
mod lockfile;
mod machine;
mod order;
mod precache;
mod probe;
mod program;
mod serve;
mod template;
mod test;
mod tidy;
mod workspace;

use std::process::ExitCode;

const HELP: &str = "\
cargo xtask <command>

  build   [--dist DIR] [--stamp TEXT] [--from DIR] [--retire] [--unpacked]
          Build the site into dist/, a folder that any static host can serve under any path.
          --stamp makes another version of it, to try an update without changing a file.
          --from takes the program from a built site instead of compiling it.
          --retire gives it a worker that switches itself off; see DEVELOPERS.md first.
          --unpacked leaves out the packed twins of files.
  serve   [--port N] [--dist DIR] [--base /sub/] [--log FILE] [--tamper FILE] [--no-build]
          Build, then serve on 127.0.0.1. Port 8173, or a free one if it is taken; 0 is a free one.
          The address is the first line printed. --log appends `METHOD path status` per request.
          --tamper makes a bad host of it; the rules are in xtask/src/serve/tamper.rs.
  probe   <http address or folder> [--dist DIR] | --names [--dist DIR]
          Fetch a published site and say what its host changes: bytes, types, headers. For an
          https address, and for what the folder is, run it with that address: it says what to do.
          --dist compares with the site in that folder; --names lists the names to fetch.
  budget  [--dist DIR] [--no-build]
          Build, then weigh the site against budget.toml.
  test    Everything: format, lints, docs, tidy checks, native tests, budget, browser journeys.
  tidy    Only the checks of how the code is laid out.
";

fn main() -> ExitCode {
    let mut args = std::env::args_os().skip(1);
    let command = args.next().unwrap_or_default();
    let rest = lexopt::Parser::from_args(args);
    let outcome = match command.to_str() {
        Some("build") => build::command(rest),
        Some("serve") => serve::command(rest),
        Some("probe") => probe::command(rest),
        Some("budget") => budget::command(rest),
        Some("test") => test::command(rest),
        Some("tidy") => tidy::command(rest),
        Some("" | "help" | "--help" | "-h") => {
            print!("{HELP}");
            Ok(())
        }
        _ => {
            eprint!("There is no command {}.\n\n{HELP}", command.display());
            return ExitCode::from(2);
        }
    };
    match outcome {
        Ok(()) => ExitCode::SUCCESS,
        Err(error) => {
            eprintln!("xtask {}: {error:#}", command.display());
            ExitCode::FAILURE
        }
    }
}
