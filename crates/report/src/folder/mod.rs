//! What comes of a folder of cases: a record of each, and tables over all.

mod conditions;
mod drift;
mod overview;
mod page;
mod record;
mod rows;
mod spread;
mod tables;
mod thumbnail;
mod workbook;

pub use conditions::Conditions;
pub use drift::{
    Baseline, BaselineError, BaselineFault, BaselineFigure, BaselineShare, Charted, DriftOptions,
    DriftSignal, Group, Limits, MustBe,
};
pub use overview::{GroupRate, Overview, Rate, UndecidedBecause, Verdicts};
pub use page::{PAGE_FILE, Page};
pub use record::{CaseRecord, Provenance, RecordError};
pub use rows::{FindingRow, ImpressionRow};
pub use tables::{TableError, TableFiles, harmless};
pub use thumbnail::{Thumbnail, write_case};
