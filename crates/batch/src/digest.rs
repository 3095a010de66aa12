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
    let digest = hasher.finalize();
    Ok(digest.iter().map(|byte| format!("{byte:02x}")).collect())
}
