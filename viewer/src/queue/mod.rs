//! The queue: the cases of a folder, what the check said of each, and what a
//! person decided. Plain data; `window` draws it.

pub mod decision;
pub mod draft;
pub mod entry;
pub mod found;
pub mod list;
pub mod papers;
pub mod watching;
