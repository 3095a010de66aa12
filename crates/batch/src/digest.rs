//! SHA-256 of what a case is known by.

use sha2::{Digest, Sha256};
use std::fs::File;
use std::io::{self, BufRead, BufReader};
use std::path::Path;

/// SHA-256 of some bytes, lower-case hexadecimal.
pub fn of_bytes(bytes: &[u8]) -> String {
    mesh::read::sha256_of(bytes)
}

/// The first 64 bits of a digest, as a number.
pub fn number(digest: &str) -> u64 {
    digest
        .get(..16)
        .and_then(|first| u64::from_str_radix(first, 16).ok())
        .unwrap_or(0)
}

/// SHA-256 of a file, read piece by piece.
pub fn of_file(path: &Path) -> io::Result<String> {
    let mut reader = BufReader::with_capacity(1 << 16, File::open(path)?);
    let mut hasher = Sha256::new();
    loop {
        let piece = reader.fill_buf()?;
        if piece.is_empty() {
            break;
        }
        hasher.update(piece);
        let taken = piece.len();
        reader.consume(taken);
    }
    Ok(hexadecimal(hasher))
}

fn hexadecimal(hasher: Sha256) -> String {
    let digest = hasher.finalize();
    digest.iter().map(|byte| format!("{byte:02x}")).collect()
}

/// A SHA-256 over lines that come one after another.
#[derive(Default)]
pub struct Running(Sha256);

impl Running {
    /// Adds a line of these words, which hold no blank and no line's end.
    pub fn add(&mut self, words: &[&str]) {
        self.0.update(words.join(" "));
        self.0.update(b"\n");
    }

    /// What it comes to.
    pub fn finish(self) -> String {
        hexadecimal(self.0)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn lines_together_have_the_digest_of_their_text() {
        let mut running = Running::default();
        running.add(&["a", "b"]);
        running.add(&["c"]);
        assert_eq!(running.finish(), of_bytes(b"a b\nc\n"));
    }
}
