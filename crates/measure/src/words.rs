//! The words of the mouth that every part of measuring shares.

/// Which jaw.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Arch {
    /// Upper jaw.
    Maxillary,
    /// Lower jaw.
    Mandibular,
}

impl Arch {
    /// `maxillary` or `mandibular`.
    #[must_use]
    pub fn name(self) -> &'static str {
        match self {
            Self::Maxillary => "maxillary",
            Self::Mandibular => "mandibular",
        }
    }
}

/// The patient's side.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Side {
    /// The patient's right.
    Right,
    /// The patient's left.
    Left,
}

/// Named part of the arch.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
#[allow(missing_docs, reason = "the names are the trade's own")]
pub enum Zone {
    LabialFlange,
    BuccalFlange,
    ResidualRidge,
    Tuberosity,
    HamularNotch,
    PosteriorPalatalSeal,
    Palate,
    Rugae,
    IncisivePapilla,
    BuccalShelf,
    RetromolarPad,
    Distobuccal,
    LingualFlange,
    Retromylohyoid,
}
