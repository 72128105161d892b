//! `cargo xtask serve`: serves a built site the way a careful static host would.

use std::fs::{self, File, OpenOptions};
use std::io::{self, Write};
use std::net::{Ipv4Addr, TcpListener};
use std::path::{Path, PathBuf};
use std::sync::{Arc, Mutex};
use std::thread;

use anyhow::{Context, Result, anyhow, ensure};
use lexopt::prelude::{Arg, ValueExt};
use tiny_http::{Header, Method, Request, Response, Server};

use crate::build::{self, Options};
use crate::headers::{self, Headers};
use crate::precache::PAGE;

const PORT: u16 = 8173;
/// A browser opens up to six connections to a host; one answer never waits for another.
const THREADS: usize = 6;

pub(crate) fn command(mut args: lexopt::Parser) -> Result<()> {
    let mut options = Options::default();
    let (mut port, mut base, mut log, mut fresh) = (None, "/".to_owned(), None, true);
    while let Some(arg) = args.next()? {
        match arg {
            Arg::Long("port") => port = Some(args.value()?.parse()?),
            Arg::Long("dist") => options.dist = Some(args.value()?.into()),
            Arg::Long("base") => base = args.value()?.string()?,
            Arg::Long("log") => log = Some(PathBuf::from(args.value()?)),
            Arg::Long("no-build") => fresh = false,
            _ => return Err(arg.unexpected().into()),
        }
    }
    ensure!(base.starts_with('/') && base.ends_with('/'), "--base starts and ends with a /");
    if fresh {
        build::build(&options)?;
    }
    let site = Site::open(options.dist(), base, log.as_deref())?;
    let server = Server::from_listener(listen(port)?, None).map_err(|error| anyhow!(error))?;
    let port = server.server_addr().to_ip().context("no port")?.port();
    println!("http://127.0.0.1:{port}{}", site.base);
    io::stdout().flush()?;

    let (server, site) = (Arc::new(server), Arc::new(site));
    let threads: Vec<_> = (0..THREADS)
        .map(|_| {
            let (server, site) = (Arc::clone(&server), Arc::clone(&site));
            thread::spawn(move || {
                for request in server.incoming_requests() {
                    site.answer(request);
                }
            })
        })
        .collect();
    threads.into_iter().try_for_each(|thread| {
        thread.join().map_err(|_| anyhow!("a thread of the server has stopped"))
    })
}

/// The port that was asked for; or the usual one, or a free one if that is taken.
fn listen(port: Option<u16>) -> Result<TcpListener> {
    let at = |port| TcpListener::bind((Ipv4Addr::LOCALHOST, port));
    match port {
        Some(port) => at(port).with_context(|| format!("can't listen on port {port}")),
        None => at(PORT).or_else(|_| at(0)).context("can't listen on any port"),
    }
}

/// A built site in a folder, and how it is served. Files are read anew for each answer, so that
/// a test can change them under a running server.
struct Site {
    dist: PathBuf,
    base: String,
    headers: Headers,
    log: Option<Mutex<File>>,
}

impl Site {
    fn open(dist: PathBuf, base: String, log: Option<&Path>) -> Result<Self> {
        let text = fs::read_to_string(dist.join(headers::FILE))
            .with_context(|| format!("{} is not a built site", dist.display()))?;
        let open = |path| OpenOptions::new().create(true).append(true).open(path);
        let log = log.map(open).transpose().context("can't write the log")?;
        Ok(Self { dist, base, headers: Headers::read(&text)?, log: log.map(Mutex::new) })
    }

    fn answer(&self, request: Request) {
        let (method, address) = (request.method().clone(), request.url().to_owned());
        let response = self.response(&request);
        if let Some(log) = &self.log {
            let line = format!("{method} {address} {}\n", response.status_code().0);
            // One write a line, before the answer goes out: whoever has the answer finds it here.
            let written = log.lock().map(|mut file| file.write_all(line.as_bytes()));
            if !matches!(written, Ok(Ok(()))) {
                eprintln!("can't write to the log: {line}");
            }
        }
        // A browser that has gone away is no fault of ours.
        let _ = request.respond(response);
    }

    fn response(&self, request: &Request) -> Response<io::Cursor<Vec<u8>>> {
        if !matches!(request.method(), Method::Get | Method::Head) {
            return self.plain(405).with_header(header("Allow", "GET, HEAD"));
        }
        let path = request.url().split('?').next().unwrap_or_default();
        if path.strip_suffix('/').is_none() && self.base == format!("{path}/") {
            return self.plain(308).with_header(header("Location", &self.base));
        }
        let Some(name) = path.strip_prefix(&self.base).and_then(file_name) else {
            return self.plain(404);
        };
        let packed = accepts_brotli(request)
            .then(|| fs::read(self.dist.join(format!("{name}.br"))).ok())
            .flatten();
        let encoded = packed.is_some();
        let Some(content) = packed.or_else(|| fs::read(self.dist.join(name)).ok()) else {
            return self.plain(404);
        };
        let mut response = Response::from_data(content)
            // A length, never chunks: a browser can tell a whole file from a torn one.
            .with_chunked_threshold(usize::MAX)
            .with_header(header("Content-Type", media_type(name)))
            .with_header(header("Vary", "Accept-Encoding"));
        if encoded {
            response.add_header(header("Content-Encoding", "br"));
        }
        for (name, value) in self.headers.for_file(name) {
            response.add_header(header(name, value));
        }
        response
    }

    /// An answer that is no file: never the page, or a browser would read it as a script.
    fn plain(&self, status: u16) -> Response<io::Cursor<Vec<u8>>> {
        let mut response = Response::from_string(format!("{status}\n"))
            .with_status_code(status)
            .with_header(header("Content-Type", "text/plain; charset=utf-8"))
            .with_header(header("Cache-Control", "no-store"));
        for (name, value) in self.headers.for_every_answer() {
            response.add_header(header(name, value));
        }
        response
    }
}

/// The file that the part of a path after the base means; none if it can't be a file of ours.
/// A site is one flat folder of plain names, so a slash, a `%`, or a leading dot never is.
fn file_name(path: &str) -> Option<&str> {
    let name = if path.is_empty() { PAGE } else { path };
    let plain = |b: u8| b.is_ascii_alphanumeric() || matches!(b, b'-' | b'_' | b'.');
    (!name.starts_with('.') && name.bytes().all(plain)).then_some(name)
}

fn accepts_brotli(request: &Request) -> bool {
    request.headers().iter().filter(|h| h.field.equiv("Accept-Encoding")).any(|header| {
        header.value.as_str().split(',').any(|coding| {
            let mut parts = coding.split(';').map(str::trim);
            parts.next() == Some("br") && !parts.any(|weight| weight == "q=0")
        })
    })
}

fn media_type(name: &str) -> &'static str {
    match name.rsplit_once('.').map_or("", |(_, extension)| extension) {
        "html" => "text/html; charset=utf-8",
        "js" => "text/javascript; charset=utf-8",
        "css" => "text/css; charset=utf-8",
        "txt" => "text/plain; charset=utf-8",
        "wasm" => "application/wasm",
        "webmanifest" => "application/manifest+json",
        "svg" => "image/svg+xml",
        "png" => "image/png",
        _ => "application/octet-stream",
    }
}

/// # Panics
/// Never: names and values are plain ASCII, checked where headers.txt is read.
fn header(name: &str, value: &str) -> Header {
    Header::from_bytes(name, value).expect("headers are plain ASCII")
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_base_itself_is_the_page() {
        assert_eq!(file_name(""), Some("index.html"));
        assert_eq!(file_name("sw.js"), Some("sw.js"));
    }

    #[test]
    fn no_path_leaves_the_folder() {
        for path in ["..", "../Cargo.toml", "a/../../b", "%2e%2e/x", "/etc/passwd", ".git", "a\\b"] {
            assert_eq!(file_name(path), None, "{path}");
        }
    }

    #[test]
    fn every_kind_of_file_in_a_site_has_its_media_type() {
        for name in ["a.html", "a.js", "a.css", "a.wasm", "a.webmanifest", "a.svg", "a.png", "a.txt"] {
            assert_ne!(media_type(name), media_type("unknown"), "{name}");
        }
        assert_eq!(media_type("app-0123456789abcdef.wasm"), "application/wasm");
    }
}
