//! An address that holds a whole question: `box-fill?enclosure=marked&cables.0.cable=14-2`.
//!
//! The same tree as everywhere, one `path=leaf` a field, percent-encoded. An empty list is a
//! path with nothing behind it and no `=`.
//!
//! Evidence never travels in an address: what somebody found out stays in its record. It is left
//! out when an address is written, and what an address brings of it is not read.

use super::find;
use crate::edition::{Basis, Electrical};
use crate::fields::without_evidence;
use crate::measure::Units;
use crate::wire::{DEEPEST, Node};

/// A question as an address holds it.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Link {
    /// The calculator's id.
    pub calculator: String,
    /// The inputs.
    pub input: Node,
    /// The editions it was asked under.
    pub basis: Basis,
    /// The units it was asked in.
    pub units: Units,
    /// It came with evidence, which was not read.
    pub left_out: bool,
}

/// Why an address can't be read.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum LinkProblem {
    /// Not text once decoded.
    Encoding,
    /// Longer than any question of ours.
    TooLong,
    /// Deeper than any question of ours, or places of a list out of order.
    Shape,
    /// An edition or unit that isn't known.
    Setting,
}

/// No address of ours comes near this.
const LONGEST: usize = 16_384;
/// Settings stand beside the inputs under names that no field can have.
const ELECTRICAL: &str = "~nec";
const UNITS: &str = "~units";

impl Link {
    /// A question about to be written.
    pub fn new(calculator: &str, input: Node, basis: Basis, units: Units) -> Self {
        Self { calculator: calculator.to_owned(), input, basis, units, left_out: false }
    }

    /// The address, without the `#/` before it and without evidence.
    pub fn write(&self) -> String {
        let mut out = self.calculator.clone();
        let mut sign = '?';
        let mut pair = |path: &str, leaf: Option<&str>| {
            out.push(sign);
            sign = '&';
            encode(path, &mut out);
            if let Some(leaf) = leaf {
                out.push('=');
                encode(leaf, &mut out);
            }
        };
        let rows = find(&self.calculator).map_or(&[][..], |entry| entry.rows);
        for (path, leaf) in without_evidence(rows, &self.input).leaves() {
            pair(&path, leaf.as_deref());
        }
        if let Some(edition) = self.basis.electrical {
            pair(ELECTRICAL, Some(edition.key()));
        }
        if self.units == Units::Metric {
            pair(UNITS, Some("metric"));
        }
        out
    }

    /// Reads an address. All leaves come back as text, as typed.
    ///
    /// # Errors
    /// The [`LinkProblem`].
    pub fn read(address: &str) -> Result<Self, LinkProblem> {
        if address.len() > LONGEST {
            return Err(LinkProblem::TooLong);
        }
        let (calculator, query) = address.split_once('?').unwrap_or((address, ""));
        let mut link = Self {
            calculator: decode(calculator)?,
            input: Node::EMPTY,
            basis: Basis::default(),
            units: Units::Customary,
            left_out: false,
        };
        for pair in query.split('&').filter(|pair| !pair.is_empty()) {
            let (path, leaf) = match pair.split_once('=') {
                Some((path, leaf)) => (decode(path)?, Some(decode(leaf)?)),
                None => (decode(pair)?, None),
            };
            match (path.as_str(), leaf) {
                (ELECTRICAL, Some(key)) => {
                    let edition = Electrical::from_key(&key).ok_or(LinkProblem::Setting)?;
                    link.basis.electrical = Some(edition);
                }
                (UNITS, Some(key)) if key == "metric" => link.units = Units::Metric,
                (UNITS | ELECTRICAL, _) => return Err(LinkProblem::Setting),
                (path, Some(leaf)) => plant(&mut link.input, path, Node::Text(leaf))?,
                (path, None) => plant(&mut link.input, path, Node::List(Vec::new()))?,
            }
        }
        if let Some(entry) = find(&link.calculator) {
            let left = without_evidence(entry.rows, &link.input);
            link.left_out = left != link.input;
            link.input = left;
        }
        Ok(link)
    }
}

/// Puts a leaf at its path; a key that is a number makes its parent a list.
fn plant(root: &mut Node, path: &str, leaf: Node) -> Result<(), LinkProblem> {
    let keys: Vec<&str> = path.split('.').collect();
    if keys.len() > DEEPEST || keys.iter().any(|key| key.is_empty()) {
        return Err(LinkProblem::Shape);
    }
    let mut here = root;
    for key in keys {
        let is_empty = matches!(here, Node::Tree(parts) if parts.is_empty());
        if key.bytes().all(|byte| byte.is_ascii_digit()) && is_empty {
            *here = Node::List(Vec::new());
        }
        match here {
            Node::List(items) => {
                let at: usize = key.parse().map_err(|_| LinkProblem::Shape)?;
                if at == items.len() {
                    items.push(Node::EMPTY);
                }
                here = items.get_mut(at).ok_or(LinkProblem::Shape)?;
            }
            Node::Tree(parts) => {
                let at = parts.iter().position(|(name, _)| name == key).unwrap_or_else(|| {
                    parts.push((key.to_owned(), Node::EMPTY));
                    parts.len() - 1
                });
                here = &mut parts[at].1;
            }
            _ => return Err(LinkProblem::Shape),
        }
    }
    *here = leaf;
    Ok(())
}

/// Letters, digits and a few marks stand for themselves; all else is percent-encoded.
fn encode(text: &str, out: &mut String) {
    const HEX: &[u8; 16] = b"0123456789ABCDEF";
    for byte in text.bytes() {
        if byte.is_ascii_alphanumeric() || b"-._~/'".contains(&byte) {
            out.push(char::from(byte));
        } else {
            out.push('%');
            out.push(char::from(HEX[usize::from(byte >> 4)]));
            out.push(char::from(HEX[usize::from(byte & 15)]));
        }
    }
}

fn decode(text: &str) -> Result<String, LinkProblem> {
    let mut out = Vec::with_capacity(text.len());
    let mut bytes = text.bytes();
    while let Some(byte) = bytes.next() {
        if byte == b'%' {
            let mut digit = || bytes.next().and_then(|byte| char::from(byte).to_digit(16));
            let (high, low) = (digit(), digit());
            let (Some(high), Some(low)) = (high, low) else { return Err(LinkProblem::Encoding) };
            out.push(u8::try_from(high * 16 + low).map_err(|_| LinkProblem::Encoding)?);
        } else {
            out.push(byte);
        }
    }
    String::from_utf8(out).map_err(|_| LinkProblem::Encoding)
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    /// What a link brings back: every leaf as text.
    fn as_text(node: &Node) -> Node {
        match node {
            Node::List(items) => Node::List(items.iter().map(as_text).collect()),
            Node::Tree(parts) => {
                Node::Tree(parts.iter().map(|(key, part)| (key.clone(), as_text(part))).collect())
            }
            leaf => Node::Text(leaf.leaf().unwrap_or_default()),
        }
    }

    #[test]
    fn every_sample_comes_back_from_its_address() {
        for entry in crate::catalog::ALL {
            let basis = Basis { electrical: Some(Electrical::E2020) };
            let link = Link::new(entry.id, entry.sample(), basis, Units::Metric);
            let back = Link::read(&link.write()).unwrap();
            let input = as_text(&without_evidence(entry.rows, &link.input));
            assert_eq!(back, Link { input, ..link });
        }
    }

    #[test]
    fn what_is_no_address_of_ours_is_refused() {
        for (address, want) in [
            ("a?b=%", LinkProblem::Encoding),
            ("a?b=%FF", LinkProblem::Encoding),
            ("a?b.1=x", LinkProblem::Shape),
            ("a?b=x&b.c=y", LinkProblem::Shape),
            ("a?.=x", LinkProblem::Shape),
            ("a?~nec=1999", LinkProblem::Setting),
            ("a?~units", LinkProblem::Setting),
        ] {
            assert_eq!(Link::read(address), Err(want), "{address}");
        }
        let long = "a?b=".to_owned() + &"x".repeat(LONGEST);
        assert_eq!(Link::read(&long), Err(LinkProblem::TooLong));
    }

    #[test]
    fn an_address_carries_no_evidence_and_says_when_it_did() {
        let mut input = Node::EMPTY;
        input.put("place", Node::text("Den ceiling"));
        input.put("report.result", Node::text("none-detected"));
        input.put("paint.window", Node::text("no"));
        input.put("paint.who", Node::text("certified"));
        input.put("office.asks", Node::text("nothing-stricter"));
        let link = Link::new("hold", input, Basis::default(), Units::Customary);
        let address = link.write();
        assert_eq!(address, "hold?place=Den%20ceiling&paint.window=no");
        assert!(!Link::read(&address).unwrap().left_out);
        let forged = Link::read("hold?report.result=none-detected&place=Den").unwrap();
        assert_eq!(forged.input.leaves(), [("place".to_owned(), Some("Den".to_owned()))]);
        assert!(forged.left_out);
    }

    proptest! {
        #[test]
        fn any_address_is_read_or_refused(address in ".{0,80}") {
            let _ = Link::read(&address);
        }

        #[test]
        fn anything_typed_survives_an_address(typed in ".{0,40}", count in ".{0,8}") {
            let mut input = Node::EMPTY;
            input.put("marked", Node::Text(typed));
            input.put("cables", Node::List(vec![Node::Tree(vec![("count".into(), Node::Text(count))])]));
            let link = Link::new("any", input, Basis::default(), Units::Customary);
            prop_assert_eq!(Link::read(&link.write()), Ok(link));
        }
    }
}
