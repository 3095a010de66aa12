//! What comes of a folder of cases: a record of each, and tables over all.

mod overview;
mod page;
mod record;
mod rows;
mod spread;
mod tables;
mod thumbnail;

pub use overview::{Conditions, GroupRate, Overview, Rate, UndecidedBecause, Verdicts};
pub use page::{PAGE_FILE, Page};
pub use record::{CaseRecord, Provenance, RecordError};
pub use rows::{FindingRow, ImpressionRow};
pub use tables::{TableError, TableFiles, harmless};
pub use thumbnail::{Thumbnail, write_case};
