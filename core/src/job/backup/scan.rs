//! One look over a file before it is taken apart: what no backup can be is refused without
//! building anything from it.

use super::BackupProblem;
use crate::wire::DEEPEST;

/// The file, its list, a job beside its line, the job, its list of marks, a mark: an input stands
/// in these.
const AROUND_AN_INPUT: usize = 6;

/// Bytes that a part takes at least, on the whole of a file. Ours take some fifteen; a file of
/// nothing but `[],[],` would grow to many times its size.
const LEAST_BYTES: usize = 4;

/// Counts brackets and commas outside of texts, up to the bracket that closes the first one. Gives
/// the text up to there: what follows is a signature or the like.
///
/// # Errors
/// [`BackupProblem::Empty`], [`BackupProblem::Foreign`] where it doesn't begin as a tree,
/// [`BackupProblem::CutShort`], [`BackupProblem::TooDeep`], [`BackupProblem::TooFull`].
pub(super) fn check(text: &str) -> Result<&str, BackupProblem> {
    let text = text.trim();
    if text.is_empty() {
        return Err(BackupProblem::Empty);
    }
    if !text.starts_with('{') {
        return Err(BackupProblem::Foreign);
    }
    let (mut depth, mut parts) = (0_usize, 0_usize);
    let (mut in_text, mut escaped) = (false, false);
    for (at, byte) in text.bytes().enumerate() {
        if in_text {
            (in_text, escaped) = (escaped || byte != b'"', !escaped && byte == b'\\');
            continue;
        }
        match byte {
            b'"' => in_text = true,
            b'{' | b'[' => {
                depth += 1;
                parts += 1;
                if depth > AROUND_AN_INPUT + DEEPEST {
                    return Err(BackupProblem::TooDeep);
                }
            }
            b'}' | b']' if depth <= 1 => {
                let is_full = parts > 64 + text.len() / LEAST_BYTES;
                let own = text.get(..=at).unwrap_or(text);
                return if is_full { Err(BackupProblem::TooFull) } else { Ok(own) };
            }
            b'}' | b']' => depth -= 1,
            b',' => parts += 1,
            _ => {}
        }
    }
    Err(BackupProblem::CutShort)
}
