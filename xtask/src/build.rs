//! `cargo xtask build`: compiles the page and writes the site into a folder.

use std::ffi::OsString;
use std::fs;
use std::io::Write;
use std::path::{Path, PathBuf};

use anyhow::{Context, Result, ensure};
use lexopt::Arg;

use crate::headers::{self, Headers};
use crate::precache::{self, PAGE, WORKER};
use crate::template::Values;
use crate::{asset, bindgen, lockfile, machine, program, workspace};

/// Files of public/ whose names the outside world knows, so that they can't carry a hash.
const FIXED: [&str; 2] = ["manifest.webmanifest", "rescue.html"];

/// The worker that switches itself off, among the files of public/.
const RETIRED: &str = "retired.js";

/// What a build may be told.
#[derive(Default)]
pub(crate) struct Options {
    /// Where the site goes; `dist` in the workspace if not said.
    pub(crate) dist: Option<PathBuf>,
    /// Put into the program and so into the version, so that an update can be tried without
    /// changing a source.
    pub(crate) stamp: OsString,
    /// A built site to take the program from, instead of compiling it.
    pub(crate) from: Option<PathBuf>,
    /// With the worker that switches itself off in the place of the one that keeps the site.
    pub(crate) retire: bool,
    /// Without packed twins, which nobody waits for in a test.
    pub(crate) unpacked: bool,
}

impl Options {
    pub(crate) fn dist(&self) -> PathBuf {
        self.dist.clone().unwrap_or_else(|| workspace::root().join("dist"))
    }
}

pub(crate) fn command(mut args: lexopt::Parser) -> Result<()> {
    let mut options = Options::default();
    while let Some(arg) = args.next()? {
        match arg {
            Arg::Long("dist") => options.dist = Some(args.value()?.into()),
            Arg::Long("stamp") => options.stamp = args.value()?,
            Arg::Long("from") => options.from = Some(args.value()?.into()),
            Arg::Long("retire") => options.retire = true,
            Arg::Long("unpacked") => options.unpacked = true,
            _ => return Err(arg.unexpected().into()),
        }
    }
    build(&options)
}

/// Builds the site.
///
/// # Errors
/// If a tool fails, a template doesn't fit, or the site isn't just what its worker keeps.
pub(crate) fn build(options: &Options) -> Result<()> {
    let root = workspace::root();
    lockfile::check(&fs::read_to_string(root.join("Cargo.lock"))?)?;
    let mut bound = match &options.from {
        Some(site) => program::of_site(site)?,
        None => program::compiled()?,
    };
    bound.wasm = program::stamped(bound.wasm, &options.stamp);
    machine::check("app.wasm", &bound.wasm)?;
    let site = assemble(&root, &bound, options.retire)?;
    let dist = options.dist();
    write(&site, &dist, !options.unpacked)?;
    // A worker that keeps nothing has no list to compare with the folder.
    if options.retire { Ok(()) } else { precache::check(&dist) }
}

/// A site, not yet written: file names and contents.
type Site = Vec<(String, Vec<u8>)>;

fn assemble(root: &Path, bound: &bindgen::Bound, retire: bool) -> Result<Site> {
    let public = root.join("public");
    let header_text = fs::read_to_string(public.join(headers::FILE))?;
    let worker_file = if retire { RETIRED } else { WORKER };
    let worker_text = fs::read_to_string(public.join(worker_file))?;

    let mut site = Site::new();
    let mut values = Values::default();
    values.set("policy", Headers::read(&header_text)?.page_policy()?);
    // A page that asks for the worker again would bring it back each time that it is loaded.
    values.set("worker", if retire { "" } else { WORKER });
    let mut hashed = |values: &mut Values, value: &str, name: &str, content: Vec<u8>| {
        let name = asset::hashed_name(name, &content);
        values.set(value, &name);
        site.push((name, content));
    };
    hashed(&mut values, "wasm", "app.wasm", bound.wasm.clone());
    hashed(&mut values, "glue", "app.js", bound.glue.clone().into_bytes());
    hashed(&mut values, "style", "style.css", stylesheet(&root.join("app/style"))?);

    let names = workspace::file_names(&public)?;
    let named = [headers::FILE, WORKER, RETIRED].into_iter().chain(FIXED);
    let names = names.iter().filter(|name| !named.clone().any(|fixed| fixed == **name));
    // Scripts last: they may name the other files.
    let (scripts, leaves): (Vec<_>, Vec<_>) = names.partition(|name| name.ends_with(".js"));
    for name in leaves {
        hashed(&mut values, name, name, fs::read(public.join(name))?);
    }
    for name in scripts {
        let script = fs::read_to_string(public.join(name))?;
        let script = values.fill(&script).with_context(|| format!("public/{name}"))?;
        hashed(&mut values, name, name, script.into_bytes());
    }

    for name in FIXED.iter().filter(|name| public.join(name).is_file()) {
        let text = fs::read_to_string(public.join(name))?;
        let text = values.fill(&text).with_context(|| format!("public/{name}"))?;
        site.push(((*name).to_owned(), text.into_bytes()));
    }
    let page_text = fs::read_to_string(root.join(PAGE))?;

    // The version stands for everything: the worker too, for a changed worker that took the
    // name of the cache in use would delete it if it failed; and the headers, for they are kept
    // with each file.
    let mut all = Vec::new();
    for (name, content) in &site {
        writeln!(all, "{name} {}", asset::integrity(content))?;
    }
    writeln!(all, "{page_text}\n{worker_text}\n{header_text}")?;
    let version = asset::short_hash(&all);

    values.set("version", &version);
    let page = values.fill(&page_text).context(PAGE)?;
    site.push((PAGE.to_owned(), page.into_bytes()));

    let entries = site.iter().map(|(name, content)| precache::entry(name, content));
    if !retire {
        values.set("files", serde_json::to_string(&entries.collect::<Vec<_>>())?);
    }
    let worker = values.fill(&worker_text).with_context(|| format!("public/{worker_file}"))?;
    site.push((WORKER.to_owned(), worker.into_bytes()));
    site.push((headers::FILE.to_owned(), header_text.into_bytes()));

    let unused = values.unused();
    ensure!(unused.is_empty(), "nothing on the site uses {unused:?}");
    Ok(site)
}

/// The style sheets of the page, one after another in the order of their names.
fn stylesheet(folder: &Path) -> Result<Vec<u8>> {
    let mut names = workspace::file_names(folder)?;
    names.retain(|name| name.ends_with(".css"));
    ensure!(!names.is_empty(), "no style sheet in {}", folder.display());
    let mut all = Vec::new();
    for name in names {
        all.extend(fs::read(folder.join(name))?);
        all.push(b'\n');
    }
    Ok(all)
}

/// Writes a site beside its place and then puts it there, so that a build that fails half-way
/// leaves the last one as it was.
fn write(site: &Site, dist: &Path, packed: bool) -> Result<()> {
    let mut fresh = dist.as_os_str().to_owned();
    fresh.push(".new");
    let fresh = PathBuf::from(fresh);
    if fresh.exists() {
        fs::remove_dir_all(&fresh)?;
    }
    fs::create_dir_all(&fresh)?;
    for (name, content) in site {
        fs::write(fresh.join(name), content)?;
        // A picture is packed already, and no browser asks for the headers.
        if !packed || name.ends_with(".png") || name == headers::FILE {
            continue;
        }
        let packed = compress(content)?;
        if packed.len() < content.len() {
            fs::write(fresh.join(format!("{name}.br")), packed)?;
        }
    }
    if dist.exists() {
        // Only a folder that we made is ours to replace.
        ensure!(dist.join(WORKER).is_file(), "{} is not a built site", dist.display());
        fs::remove_dir_all(dist)?;
    }
    fs::rename(&fresh, dist)?;
    Ok(())
}

/// Brotli at its best, which nobody waits for but the one who builds.
fn compress(content: &[u8]) -> Result<Vec<u8>> {
    let mut packed = Vec::new();
    let best = brotli::enc::BrotliEncoderParams { quality: 11, lgwin: 22, ..Default::default() };
    brotli::BrotliCompress(&mut &content[..], &mut packed, &best)?;
    Ok(packed)
}
