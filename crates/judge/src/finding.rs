//! A finding: one thing that fails or cannot be judged.

use crate::check::Check;
use crate::decision::{Bound, decide};
use crate::protocol::Limit;
use crate::severity::Severity;
use crate::stretch::Stretch;
use measure::{Arch, Side, Zone};
use messages::{Message, message};
use nalgebra::Point3;

/// The measured figure of a finding and the limit that it was judged by.
#[derive(Debug, Clone, PartialEq)]
pub struct Figure {
    /// The figure, in `unit`.
    pub measured: f64,
    /// Its expanded uncertainty (k = 2), in `unit`; `None` for a figure that is
    /// a property of the file itself or whose uncertainty is not known.
    pub uncertainty: Option<f64>,
    /// The limit, in `unit`, and which way it bounds the figure.
    pub bound: Bound,
    /// Unit of the three; `1` for a plain number.
    pub unit: String,
}

impl Figure {
    /// The limiting value, in `unit`.
    #[must_use]
    pub fn limit(&self) -> f64 {
        self.bound.value()
    }

    /// A measured figure beside its limit.
    pub(crate) fn beside(
        limit: &Limit,
        bound: fn(f64) -> Bound,
        measured: f64,
        uncertainty: Option<f64>,
    ) -> Self {
        Self {
            measured,
            uncertainty,
            bound: bound(limit.value),
            unit: limit.unit.clone(),
        }
    }

    /// How severe it is that a figure is what it is, with the figure beside its
    /// limit; `None` where the limit is clearly met.
    pub(crate) fn against(
        limit: &Limit,
        bound: fn(f64) -> Bound,
        measured: f64,
        uncertainty: Option<f64>,
    ) -> Option<(Severity, Self)> {
        let conformity = decide(measured, uncertainty.unwrap_or(0.0), bound(limit.value));
        let severity = Severity::of(conformity, limit.level)?;
        Some((severity, Self::beside(limit, bound, measured, uncertainty)))
    }
}

/// A place on an impression.
#[derive(Debug, Clone, PartialEq)]
pub struct Place {
    /// The point, in the coordinates of the impression scan, mm.
    pub at: Point3<f64>,
    /// Part of the arch.
    pub zone: Zone,
    /// Patient's side; `None` on the midline.
    pub side: Option<Side>,
}

/// One thing that fails or cannot be judged, and what to do about it.
#[derive(Debug, Clone, PartialEq)]
pub struct Finding {
    /// How it came out.
    pub severity: Severity,
    /// Which check found it.
    pub check: Check,
    /// Number of the impression in the case, from 0; `None` for the case itself.
    pub impression: Option<usize>,
    /// The jaw: as declared, else as found.
    pub arch: Option<Arch>,
    /// Where.
    pub place: Option<Place>,
    /// The figure and its limit, where it is a matter of figures.
    pub figure: Option<Figure>,
    /// Number of the spot of that impression that it speaks of, from 0.
    pub spot: Option<usize>,
    /// The stretch of that impression's border that it speaks of.
    pub stretch: Option<Stretch>,
    /// Number of the surface defect of that impression that it speaks of, from 0.
    pub defect: Option<usize>,
    /// Number of the landmark of that impression that it speaks of, from 0.
    pub landmark: Option<usize>,
    /// Whether it is held back until a question on its impression is answered: then it
    /// names no place, and its instruction is not to be carried out.
    pub is_held_back: bool,
    /// One plain instruction.
    pub instruction: Message,
}

impl Finding {
    /// A finding on the case as a whole, without place and figure.
    pub(crate) fn on_case(check: Check, severity: Severity, instruction: Message) -> Self {
        Self {
            severity,
            check,
            impression: None,
            arch: None,
            place: None,
            figure: None,
            spot: None,
            stretch: None,
            defect: None,
            landmark: None,
            is_held_back: false,
            instruction,
        }
    }

    /// The same finding while a question on its impression stands: no side is named,
    /// nothing is to be done.
    pub(crate) fn held_back(self) -> Self {
        Self {
            severity: Severity::Note,
            place: None,
            stretch: None,
            is_held_back: true,
            instruction: message!("held-back"),
            ..self
        }
    }

    /// The same finding with its figure.
    pub(crate) fn with(self, figure: Figure) -> Self {
        Self {
            figure: Some(figure),
            ..self
        }
    }
}
