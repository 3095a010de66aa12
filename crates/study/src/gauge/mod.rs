//! The crossed gauge study: can the measuring itself be trusted. Readings come
//! from a table or from folders of results; [`statistics::gauge`] does the sums.

mod error;
mod figure_study;
mod folder;
mod table;

pub use error::GaugeError;
pub use figure_study::{FigureStudy, GaugeStudy, NotStudied};
pub use folder::study_of_folder;
pub use table::study_of_table;
