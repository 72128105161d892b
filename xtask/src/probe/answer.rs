//! What came back for one file.

use std::fs;
use std::path::Path;

use anyhow::{Context, Result};

/// A status, headers and a body.
#[derive(Debug)]
pub(super) struct Answer {
    pub(super) status: u16,
    /// In the order in which they came.
    pub(super) headers: Vec<(String, String)>,
    pub(super) body: Vec<u8>,
}

impl Answer {
    /// A header's value, whatever its name's case.
    pub(super) fn header(&self, name: &str) -> Option<&str> {
        let found = self.headers.iter().find(|(given, _)| given.eq_ignore_ascii_case(name));
        found.map(|(_, value)| &**value)
    }

    /// One that was put into a folder: the body under its name, its headers beside it.
    pub(super) fn in_folder(folder: &Path, name: &str) -> Result<Self> {
        let dump = folder.join(format!("{name}.headers"));
        let text =
            fs::read_to_string(&dump).with_context(|| format!("can't read {}", dump.display()))?;
        // Where the host had nothing to send, there may be no file.
        let body = fs::read(folder.join(name)).unwrap_or_default();
        Self::from_dump(&text, body).with_context(|| format!("{} holds no headers", dump.display()))
    }

    /// Reads a head as HTTP/1.1 writes it; of several, as before `100 Continue`, the last.
    fn from_dump(text: &str, body: Vec<u8>) -> Option<Self> {
        let text = text.replace("\r\n", "\n");
        let head = text.trim_end().rsplit("\n\n").next()?;
        let mut lines = head.lines();
        let first = lines.next().filter(|line| line.starts_with("HTTP/"))?;
        let status = first.split(' ').nth(1)?.parse().ok()?;
        let header = |line: &str| {
            let (name, value) = line.split_once(':')?;
            Some((name.to_owned(), value.trim().to_owned()))
        };
        Some(Self { status, headers: lines.filter_map(header).collect(), body })
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_last_head_of_a_dump_counts() {
        let dump = "HTTP/1.1 100 Continue\r\n\r\nHTTP/2 404 \r\nContent-Type: text/plain\r\nx: a: b\r\n\r\n";
        let answer = Answer::from_dump(dump, Vec::new()).unwrap();
        assert_eq!(answer.status, 404);
        assert_eq!(answer.header("content-type"), Some("text/plain"));
        assert_eq!(answer.header("X"), Some("a: b"));
        assert!(Answer::from_dump("<html>", Vec::new()).is_none());
    }
}
