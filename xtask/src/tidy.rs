//! Checks of how the code is laid out, that the compiler can't make. Each check is a file of its
//! own, reads the sources, and gives what it finds as lines that name the place and the fix.

mod calculator_ids;
mod core_is_plain;
mod layers;
mod published_tables;
mod source;

use anyhow::{Result, bail};

use source::Sources;

pub(crate) fn command(mut args: lexopt::Parser) -> Result<()> {
    if let Some(arg) = args.next()? {
        return Err(arg.unexpected().into());
    }
    check()
}

/// Runs every check.
///
/// # Errors
/// If a check finds anything, after all that was found is printed.
pub(crate) fn check() -> Result<()> {
    let core = Sources::read("core/src")?;
    let app = Sources::read("app/src")?;
    let manifest = std::fs::read_to_string(crate::workspace::root().join("core/Cargo.toml"))?;
    let checks = [
        ("core knows no web", core_is_plain::check(&manifest)?),
        ("imports run one way", layers::check(&core)),
        ("the page knows no calculator", calculator_ids::check(&core, &app)),
        ("published values stand beside the rules", published_tables::check(&core)),
    ];
    let mut count = 0;
    for (name, found) in checks {
        println!("{name}: {}", if found.is_empty() { "yes" } else { "NO" });
        for line in &found {
            println!("  {line}");
        }
        count += found.len();
    }
    if count > 0 {
        bail!("{count} places to mend, listed above");
    }
    Ok(())
}
