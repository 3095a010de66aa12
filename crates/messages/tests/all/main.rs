//! The catalogue is whole: every language has every text, and the sources use all of them.

#![allow(clippy::unwrap_used, reason = "tests")]

mod texts;
mod used;
