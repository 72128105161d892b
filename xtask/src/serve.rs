//! `cargo xtask serve`: serves a built site the way a careful static host would, or, told to, as a
//! bad one does.

mod sent;
mod tamper;

use std::convert::Infallible;
use std::fs::{self, File, OpenOptions};
use std::io::{self, Write};
use std::net::{Ipv4Addr, TcpListener};
use std::path::{Path, PathBuf};
use std::sync::{Arc, Mutex};

use anyhow::{Context, Result, ensure};
use hyper::header::{self, HeaderMap, HeaderName, HeaderValue};
use hyper::service::service_fn;
use hyper::{Method, Request, Response, StatusCode};
use hyper_util::rt::TokioIo;
use lexopt::{Arg, ValueExt};

use crate::build::{self, Options};
use crate::headers::{self, Headers};
use crate::precache::PAGE;

use sent::Sent;
use tamper::Rule;

const PORT: u16 = 8173;
pub(crate) fn command(mut args: lexopt::Parser) -> Result<()> {
    let mut options = Options::default();
    let (mut port, mut base, mut log, mut fresh) = (None, "/".to_owned(), None, true);
    let mut tamper = None;
    while let Some(arg) = args.next()? {
        match arg {
            Arg::Long("port") => port = Some(args.value()?.parse()?),
            Arg::Long("dist") => options.dist = Some(args.value()?.into()),
            Arg::Long("base") => base = args.value()?.string()?,
            Arg::Long("log") => log = Some(PathBuf::from(args.value()?)),
            Arg::Long("tamper") => tamper = Some(PathBuf::from(args.value()?)),
            Arg::Long("no-build") => fresh = false,
            _ => return Err(arg.unexpected().into()),
        }
    }
    ensure!(base.starts_with('/') && base.ends_with('/'), "--base starts and ends with a /");
    if fresh {
        build::build(&options)?;
    }
    let site = Site { tamper, ..Site::open(options.dist(), base, log.as_deref())? };
    let listener = listen(port)?;
    println!("http://127.0.0.1:{}{}", listener.local_addr()?.port(), site.base);
    io::stdout().flush()?;
    let threads =
        tokio::runtime::Builder::new_multi_thread().worker_threads(2).enable_io().build()?;
    threads.block_on(accept(listener, Arc::new(site)))
}

/// A site on a free port, as a bad host serves it, for as long as the program runs.
#[cfg(test)]
pub(crate) fn in_background(dist: PathBuf, base: &str, tamper: PathBuf) -> Result<u16> {
    let site = Site { tamper: Some(tamper), ..Site::open(dist, base.to_owned(), None)? };
    let listener = listen(Some(0))?;
    let port = listener.local_addr()?.port();
    let threads = tokio::runtime::Builder::new_current_thread().enable_io().build()?;
    std::thread::spawn(move || threads.block_on(accept(listener, Arc::new(site))));
    Ok(port)
}

/// Takes connections, each a task of its own, so that none ever waits for another.
async fn accept(listener: TcpListener, site: Arc<Site>) -> Result<()> {
    listener.set_nonblocking(true)?;
    let listener = tokio::net::TcpListener::from_std(listener)?;
    loop {
        let (stream, _) = listener.accept().await?;
        stream.set_nodelay(true)?;
        let site = Arc::clone(&site);
        let answer = service_fn(move |request| {
            let response = site.answer(&request);
            async { Ok::<_, Infallible>(response) }
        });
        let connection = hyper::server::conn::http1::Builder::new()
            .serve_connection(TokioIo::new(stream), answer);
        // A browser that goes away half-way is no fault of ours.
        tokio::spawn(async { drop(connection.await) });
    }
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
    /// What a bad host does to its answers; see [`tamper`].
    tamper: Option<PathBuf>,
}

impl Site {
    fn open(dist: PathBuf, base: String, log: Option<&Path>) -> Result<Self> {
        let text = fs::read_to_string(dist.join(headers::FILE))
            .with_context(|| format!("{} is not a built site", dist.display()))?;
        let open = |path| OpenOptions::new().create(true).append(true).open(path);
        let log = log.map(open).transpose().context("can't write the log")?;
        let headers = Headers::read(&text)?;
        Ok(Self { dist, base, headers, log: log.map(Mutex::new), tamper: None })
    }

    fn answer<B>(&self, request: &Request<B>) -> Response<Sent> {
        let response = self.tampered(request, self.response(request));
        if let Some(log) = &self.log {
            let (method, status) = (request.method(), response.status().as_u16());
            let line = format!("{method} {} {status}\n", request.uri());
            // One write a line, before the answer goes out: whoever has the answer finds it here.
            let written = log.lock().map(|mut file| file.write_all(line.as_bytes()));
            if !matches!(written, Ok(Ok(()))) {
                eprint!("can't write to the log: {line}");
            }
        }
        response
    }

    fn response<B>(&self, request: &Request<B>) -> Response<Sent> {
        if !matches!(*request.method(), Method::GET | Method::HEAD) {
            return self.plain(StatusCode::METHOD_NOT_ALLOWED, Some((header::ALLOW, "GET, HEAD")));
        }
        let path = request.uri().path();
        if self.base.strip_suffix('/') == Some(path) {
            let base = Some((header::LOCATION, self.base.as_str()));
            return self.plain(StatusCode::PERMANENT_REDIRECT, base);
        }
        let Some(name) = path.strip_prefix(&self.base).and_then(file_name) else {
            return self.plain(StatusCode::NOT_FOUND, None);
        };
        let file = |name: &str| fs::read(self.dist.join(name)).ok();
        let packed =
            accepts_brotli(request.headers()).then(|| file(&format!("{name}.br"))).flatten();
        let encoding = packed.is_some().then_some((header::CONTENT_ENCODING, "br"));
        let Some(content) = packed.or_else(|| file(name)) else {
            return self.plain(StatusCode::NOT_FOUND, None);
        };
        let mut response = Response::new(Sent::whole(content));
        let own = [(header::CONTENT_TYPE, media_type(name)), (header::VARY, "Accept-Encoding")];
        set(response.headers_mut(), own.into_iter().chain(encoding));
        set(response.headers_mut(), self.headers.for_file(name));
        response
    }

    /// The answer as a bad host gives it.
    fn tampered<B>(&self, request: &Request<B>, mut response: Response<Sent>) -> Response<Sent> {
        let path = request.uri().path();
        let name = path.strip_prefix(&self.base).and_then(file_name);
        let (Some(tamper), Some(name)) = (&self.tamper, name) else { return response };
        let rules = tamper::rules(tamper, name).unwrap_or_else(|error| {
            eprintln!("{error:#}");
            vec![Rule::Answer(500)]
        });
        for rule in rules {
            response = match rule {
                Rule::Answer(status) => {
                    let status = StatusCode::from_u16(status).unwrap_or(StatusCode::IM_A_TEAPOT);
                    self.plain(status, None)
                }
                Rule::CatchAll if response.status() == StatusCode::NOT_FOUND => {
                    let page = fs::read(self.dist.join(PAGE)).unwrap_or_default();
                    let mut page = Response::new(Sent::whole(page));
                    set(page.headers_mut(), [(header::CONTENT_TYPE, media_type(PAGE))]);
                    page
                }
                Rule::CatchAll => response,
                Rule::Cut => {
                    let length = response.body().bytes().len().to_string();
                    set(response.headers_mut(), [(header::CONTENT_LENGTH, length.as_str())]);
                    response.map(Sent::cut)
                }
                Rule::Rewrite => {
                    // Whoever writes into a file has unpacked it first.
                    response.headers_mut().remove(header::CONTENT_ENCODING);
                    let content = fs::read(self.dist.join(name)).unwrap_or_default();
                    let content = [&content, &b"<!-- added on the way -->\n"[..]].concat();
                    response.map(|_| Sent::whole(content))
                }
                Rule::Set(name, value) => {
                    set(response.headers_mut(), [(name, value.as_str())]);
                    response
                }
                Rule::Drop(name) => {
                    response.headers_mut().remove(name);
                    response
                }
            };
        }
        response
    }

    /// An answer that is no file: never the page, or a browser would read it as a script.
    fn plain(&self, status: StatusCode, more: Option<(HeaderName, &str)>) -> Response<Sent> {
        let mut response = Response::new(Sent::whole(format!("{status}\n")));
        *response.status_mut() = status;
        let own = [
            (header::CONTENT_TYPE, "text/plain; charset=utf-8"),
            (header::CACHE_CONTROL, "no-store"),
        ];
        set(response.headers_mut(), own.into_iter().chain(more));
        set(response.headers_mut(), self.headers.for_every_answer());
        response
    }
}

/// Sets headers that are known to be well-formed: ours, or read by [`Headers::read`].
fn set<'a, N>(headers: &mut HeaderMap, pairs: impl IntoIterator<Item = (N, &'a str)>)
where
    N: TryInto<HeaderName>,
{
    for (name, value) in pairs {
        if let (Ok(name), Ok(value)) = (name.try_into(), HeaderValue::from_str(value)) {
            headers.insert(name, value);
        }
    }
}

/// The file that the part of a path after the base means; none if it can't be a file of ours.
/// A site is one flat folder of plain names, so a slash, a `%`, or a leading dot never is.
fn file_name(path: &str) -> Option<&str> {
    let name = if path.is_empty() { PAGE } else { path };
    let plain = |b: u8| b.is_ascii_alphanumeric() || matches!(b, b'-' | b'_' | b'.');
    (!name.starts_with('.') && name.bytes().all(plain)).then_some(name)
}

fn accepts_brotli(headers: &HeaderMap) -> bool {
    let values = headers.get_all(header::ACCEPT_ENCODING).into_iter();
    values.filter_map(|value| value.to_str().ok()).flat_map(|value| value.split(',')).any(
        |coding| {
            let mut parts = coding.split(';').map(str::trim);
            parts.next() == Some("br") && !parts.any(|weight| weight == "q=0")
        },
    )
}

/// The media type that a host has to send a file of this name as.
pub(crate) fn media_type(name: &str) -> &'static str {
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

#[cfg(test)]
mod tests {
    use std::sync::LazyLock;

    use super::*;

    #[test]
    fn the_base_itself_is_the_page() {
        assert_eq!(file_name(""), Some("index.html"));
        assert_eq!(file_name("sw.js"), Some("sw.js"));
    }

    #[test]
    fn no_path_leaves_the_folder() {
        for path in ["..", "../Cargo.toml", "a/../../b", "%2e%2e/x", "/etc/passwd", ".git", "a\\b"]
        {
            assert_eq!(file_name(path), None, "{path}");
        }
    }

    #[test]
    fn every_kind_of_file_in_a_site_has_its_media_type() {
        for name in
            ["a.html", "a.js", "a.css", "a.wasm", "a.webmanifest", "a.svg", "a.png", "a.txt"]
        {
            assert_ne!(media_type(name), media_type("unknown"), "{name}");
        }
        assert_eq!(media_type("app-0123456789abcdef.wasm"), "application/wasm");
    }

    /// A site of one page, and its packed twin.
    static DIST: LazyLock<PathBuf> = LazyLock::new(|| {
        let dist = std::env::temp_dir().join(format!("xtask-{}-serve", std::process::id()));
        fs::create_dir_all(&dist).unwrap();
        let text = include_str!("../../public/headers.txt");
        for (name, content) in [("headers.txt", text), ("index.html", "p"), ("index.html.br", "b")]
        {
            fs::write(dist.join(name), content).unwrap();
        }
        dist
    });

    fn ask(method: Method, path: &str, encoding: &str) -> Response<Sent> {
        let site = Site::open(DIST.clone(), "/sub/".to_owned(), None).unwrap();
        let request = Request::builder().method(method).uri(path);
        let request = request.header(header::ACCEPT_ENCODING, encoding).body(()).unwrap();
        site.answer(&request)
    }

    #[test]
    fn a_missing_file_is_never_the_page() {
        for path in ["/", "/sub/app-0123456789abcdef.js", "/sub/../headers.txt", "/index.html"] {
            let answer = ask(Method::GET, path, "br");
            assert_eq!(answer.status(), StatusCode::NOT_FOUND, "{path}");
            assert_eq!(answer.headers()["x-content-type-options"], "nosniff");
        }
        assert_eq!(ask(Method::POST, "/sub/", "").status(), StatusCode::METHOD_NOT_ALLOWED);
        assert_eq!(ask(Method::GET, "/sub", "").headers()[header::LOCATION], "/sub/");
    }

    #[test]
    fn the_page_is_sent_packed_to_those_who_can_unpack_it() {
        let packed = ask(Method::GET, "/sub/?x", "gzip, br;q=0.9");
        assert_eq!(packed.headers()[header::CONTENT_ENCODING], "br");
        assert_eq!(packed.headers()[header::CONTENT_TYPE], "text/html; charset=utf-8");
        assert_eq!(packed.headers()[header::CACHE_CONTROL], "no-cache");
        for encoding in ["gzip", "br;q=0", ""] {
            let plain = ask(Method::GET, "/sub/", encoding);
            assert!(!plain.headers().contains_key(header::CONTENT_ENCODING), "{encoding}");
        }
    }
}
