//! Upper and lower jaw.

/// Which jaw.
#[derive(Debug, Clone, Copy, PartialEq, Eq, serde::Serialize)]
#[serde(rename_all = "lowercase")]
pub enum Arch {
    /// Upper jaw.
    Maxillary,
    /// Lower jaw.
    Mandibular,
}

impl Arch {
    /// The sign of x on the patient's right, where y is anterior and z the
    /// seating axis: the seating axis points up in a maxilla, down in a mandible.
    #[must_use]
    pub fn right_sign(self) -> f64 {
        match self {
            Self::Maxillary => 1.0,
            Self::Mandibular => -1.0,
        }
    }
}

/// The patient's side.
#[derive(Debug, Clone, Copy, PartialEq, Eq, serde::Serialize)]
#[serde(rename_all = "lowercase")]
pub enum Side {
    /// The patient's right.
    Right,
    /// The patient's left.
    Left,
}

impl Side {
    /// The side of a place that lies so far toward the patient's right.
    pub(crate) fn of(toward_right: f64) -> Self {
        if toward_right > 0.0 {
            Self::Right
        } else {
            Self::Left
        }
    }
}
