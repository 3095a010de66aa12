//! Why the parts of an impression could not be joined: plain data.

use geometry::joining::NotJoined;
use thiserror::Error;

/// Why parts could not be joined.
#[derive(Debug, Clone, PartialEq, Error)]
#[allow(missing_docs, reason = "each variant's message says what it is")]
pub enum PartsNotJoined {
    #[error(
        "part {part} does not lie on the tray ({fitting_percent:.0} % of its surface does): check that it was cut from this impression, and scan its outside too"
    )]
    OffTheTray { part: usize, fitting_percent: f64 },
    #[error(
        "part {part} fits the tray in more than one way, {spread_mm:.1} mm apart: too little of the tray shows on it"
    )]
    Ambiguous { part: usize, spread_mm: f64 },
    #[error(
        "the surfaces of the parts do not continue each other (a step of {step_mm:.1} mm at the cut): they are of different impressions"
    )]
    Step { step_mm: f64 },
    #[error(transparent)]
    NotJoined(#[from] NotJoined),
}
