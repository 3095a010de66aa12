//! What the readers and writers of scan files say, as messages of the catalogue.
//!
//! They themselves know no catalogue. Their English and the catalogue's are held
//! together by tests.

mod refusal;
mod unwritten;
mod warning;
mod words;

pub use refusal::{refused, why_refused};
pub use unwritten::not_written;
pub use warning::{turned, warned};
pub use words::format_name;
