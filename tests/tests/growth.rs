//! What is read takes memory by its size, whatever is in it. One test alone in its file: what is
//! allocated is counted for the whole program.

use ledgerboard_tests::any_bytes::{Chance, READERS, Reader};
use peak_alloc::PeakAlloc;

#[global_allocator]
static PEAK: PeakAlloc = PeakAlloc;

/// Bytes held at once, for each byte of a text. JSON of nothing but `0,` is the worst: each two
/// bytes are a part of a tree, in a list that has just grown. A backup of that kind is refused
/// before anything is made from it.
fn times(reader: &Reader) -> usize {
    match reader.name {
        "records" | "batch lines" => 36,
        "backups" => 16,
        _ => 4,
    }
}

/// For the answer itself, and the forms and tables that it is made from.
const ASIDE: usize = 256 * 1_024;

/// What reading a text held at once, beyond the text.
fn held(reader: &Reader, text: &str) -> usize {
    let before = PEAK.current_usage();
    PEAK.reset_peak_usage();
    (reader.read)(text);
    PEAK.peak_usage().saturating_sub(before)
}

/// A million bytes of what grows most, in whatever form the reader knows.
fn hostile(reader: &Reader) -> Vec<String> {
    const SIZE: usize = 1_000_000;
    let again = |part: &str| part.repeat(SIZE / part.len());
    let mut all: Vec<String> = [
        "9",
        "1/",
        "9' ",
        "½",
        "%41",
        "&a=1",
        "&a.0.b=",
        ".a",
        "[],",
        "[",
        "{\"a\":",
        "0,",
        "\"\",",
        "\\u0000",
        "-",
        " ",
        "{\"record\":1},",
        "/",
    ]
    .iter()
    .map(|part| again(part))
    .collect();
    let names: String = (0..SIZE / 12).map(|at| format!("\"{at:07}\":0,")).collect();
    // The last two are as close as a backup may come.
    let few = ["[],", "0,", "\"\",", "[\"\"],", "[0]     ,", "{\"a\":[]},"].map(again);
    let inner: Vec<String> = few.into_iter().chain([names]).collect();
    for part in &inner {
        let part = part.trim_end_matches(',');
        all.push(["{\"calculator\":\"box-fill\",\"input\":[", part, "]}"].concat());
        all.push(["{\"calculator\":\"box-fill\",\"input\":{", part, "}}"].concat());
        all.push(["{\"kind\":\"ledgerboard-backup\",\"schema\":1,\"jobs\":[", part, "]}"].concat());
        all.push(["{\"kind\":\"ledgerboard-backup\",\"schema\":1,\"jobs\":{", part, "}}"].concat());
        let record = ["ledgerboard 2 0 a 0 0\n{\"id\":\"a\",\"marks\":[", part, "]}"].concat();
        all.push((reader.seal)(record));
    }
    // What has lists to be filled in it: each seed with one of them filled to bursting.
    for seed in (reader.seeds)().iter().take(6) {
        for part in &inner[..6] {
            all.push((reader.seal)(seed.replacen('[', &["[", part].concat(), 1)));
        }
        all.push((reader.seal)(seed.replacen('{', &["{", &inner[6]].concat(), 1)));
    }
    all
}

#[test]
fn nothing_grows_past_a_small_multiple_of_what_is_read() {
    for reader in &READERS {
        let seeds = (reader.seeds)();
        let mut chance = Chance::new(3);
        let worn = (0..3_000).map(|_| reader.text(&seeds, &mut chance));
        let mut worst = 0;
        for text in worn.chain(hostile(reader)) {
            let held = held(reader, &text);
            let most = times(reader) * text.len() + ASIDE;
            let start: String = text.chars().take(80).collect();
            assert!(held <= most, "{}: {held} bytes for {}: {start}", reader.name, text.len());
            if text.len() > 100_000 {
                worst = worst.max(held * 10 / text.len());
            }
        }
        println!("{}: at worst {}.{} times", reader.name, worst / 10, worst % 10);
    }
}
