//! The own server as a bad host, and each of its ways found out.

use std::fs;

use super::judge::Found;
use super::*;
use crate::asset;
use crate::serve::in_background;

const BASE: &str = "/sub/";

/// A small site in a folder of its own, served under a path by a host with these rules.
struct Host {
    folder: PathBuf,
    port: u16,
}

impl Host {
    fn start(test: &str, rules: &str) -> Self {
        let folder = std::env::temp_dir().join(format!("xtask-{}-{test}", std::process::id()));
        let dist = folder.join("dist");
        fs::create_dir_all(&dist).unwrap();
        let wasm = asset::hashed_name("app.wasm", b"program");
        let mut list = Vec::new();
        for (name, content) in [(precache::PAGE, "<p>page"), (&wasm, "program")] {
            list.push(precache::entry(name, content.as_bytes()));
            fs::write(dist.join(name), content).unwrap();
            let mut packed = Vec::new();
            brotli::BrotliCompress(&mut content.as_bytes(), &mut packed, &Default::default())
                .unwrap();
            fs::write(dist.join(format!("{name}.br")), packed).unwrap();
        }
        let list = serde_json::to_string(&list).unwrap();
        fs::write(dist.join(precache::WORKER), format!("const FILES = {list};\n")).unwrap();
        let text = include_str!("../../../public/headers.txt");
        fs::write(dist.join("headers.txt"), text).unwrap();
        fs::write(folder.join("rules"), rules).unwrap();
        let port = in_background(dist, BASE, folder.join("rules")).unwrap();
        Self { folder, port }
    }

    fn look(&self) -> Found {
        let source = Source::at(&format!("http://127.0.0.1:{}{BASE}", self.port)).unwrap();
        judge::look(&source, Some(&self.folder.join("dist"))).unwrap()
    }
}

impl Drop for Host {
    fn drop(&mut self) {
        let _ = fs::remove_dir_all(&self.folder);
    }
}

#[test]
fn a_careful_host_passes() {
    let found = Host::start("careful", "").look();
    assert!(found.faults.is_empty() && found.notes.is_empty(), "{found:?}");
    assert_eq!(found.whole, 2);
}

#[test]
fn each_way_of_a_bad_host_is_found_out() {
    for (at, (rule, name, says)) in [
        ("index.html rewrite", "index.html", "changed on the way"),
        ("sw.js rewrite", "sw.js", "another worker"),
        ("app.wasm rewrite", "app-", "changed on the way"),
        ("app.wasm cut", "app-", "can't be fetched"),
        ("app.wasm answer 500", "app-", "answered with 500"),
        ("app.wasm set Content-Type: application/octet-stream", "app-", "must be application/wasm"),
        ("index.html answer 301", "index.html", "answered with 301"),
        ("index.html drop Cache-Control", "index.html", "no-cache"),
        ("sw.js set Cache-Control: max-age=86400", "sw.js", "no-cache"),
        ("sw.js set Service-Worker-Allowed: /elsewhere/", "sw.js", "only for /elsewhere/"),
        ("* set Clear-Site-Data: \"*\"", "sw.js", "deletes what people saved"),
        ("* set Content-Security-Policy: default-src 'self'", "sw.js", "another Content-Security"),
        ("* catch-all", MISSING, "instead of 404"),
    ]
    .into_iter()
    .enumerate()
    {
        let found = Host::start(&format!("bad-{at}"), rule).look();
        let told = found.faults.iter().any(|line| line.starts_with(name) && line.contains(says));
        assert!(told, "{rule}: {found:?}");
    }
}

#[test]
fn what_only_could_be_better_is_no_fault() {
    let rules = "* drop Referrer-Policy\napp.wasm set Cache-Control: max-age=600\n\
                 sw.js set Service-Worker-Allowed: /";
    let found = Host::start("better", rules).look();
    assert!(found.faults.is_empty(), "{found:?}");
    assert!(found.notes.iter().any(|line| line.contains("without Referrer-Policy")), "{found:?}");
    assert!(found.notes.iter().any(|line| line.contains("immutable")), "{found:?}");
}

#[test]
fn https_is_told_what_to_do_and_its_folder_is_read() {
    let refused = Source::at("https://example.org/tool").err().unwrap().to_string();
    assert!(refused.contains("\"https://example.org/tool/${name#index.html}\""), "{refused}");

    let host = Host::start("folder", "");
    let published = host.folder.join("published");
    fs::create_dir_all(&published).unwrap();
    let worker = fs::read_to_string(host.folder.join("dist/sw.js")).unwrap();
    let list = precache::read(&worker).unwrap();
    let names = list.iter().map(|(address, _)| &**address).chain([precache::WORKER, MISSING]);
    let site = format!("http://127.0.0.1:{}{BASE}", host.port).parse().unwrap();
    for address in names {
        let answer = fetch::get(&site, address, "identity").unwrap();
        let name = precache::file_name(address);
        let mut dump = format!("HTTP/1.1 {} \r\n", answer.status);
        for (header, value) in &answer.headers {
            dump.push_str(&format!("{header}: {value}\r\n"));
        }
        fs::write(published.join(format!("{name}.headers")), dump + "\r\n").unwrap();
        fs::write(published.join(name), answer.body).unwrap();
    }
    let look = || judge::look(&Source::at(published.to_str().unwrap()).unwrap(), None).unwrap();
    let found = look();
    assert!(found.faults.is_empty() && found.whole == 2, "{found:?}");
    fs::write(published.join("index.html"), "<p>page<script src=//elsewhere></script>").unwrap();
    assert!(look().faults.iter().any(|line| line.starts_with("index.html is changed")));
}
