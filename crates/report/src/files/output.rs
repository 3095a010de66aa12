//! A file that is to be written.

/// A file to be: its name and its bytes.
pub(crate) type Output = (String, Vec<u8>);
