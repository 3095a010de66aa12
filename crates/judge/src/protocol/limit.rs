//! One limit of a protocol.

use serde::{Deserialize, Serialize};

/// What missing a limit means.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Level {
    /// The impression fails.
    Fail,
    /// The impression cannot be accepted on this measurement, but it does not fail.
    Undecided,
    /// It is said, and changes no verdict.
    Note,
}

/// A limit, where it comes from and what missing it means.
#[derive(Debug, Clone, PartialEq)]
pub struct Limit {
    /// The limiting value, in `unit`.
    pub value: f64,
    /// Unit of the value; `1` for a plain number.
    pub unit: String,
    /// What missing it means.
    pub level: Level,
    /// Where the value comes from, or that it is common practice without a source.
    pub source: String,
}

macro_rules! limit_keys {
    ($($(#[doc = $doc:literal])+ $variant:ident = $name:literal,)+) => {
        /// Name of each limit, as written in a protocol file. A name ends with its unit.
        #[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
        pub enum LimitKey {
            $($(#[doc = $doc])+ #[serde(rename = $name)] $variant,)+
        }

        impl LimitKey {
            /// Every limit, in the order of the protocol.
            pub const ALL: [Self; [$($name),+].len()] = [$(Self::$variant),+];

            /// The name in a protocol file.
            #[must_use]
            pub fn name(self) -> &'static str {
                match self { $(Self::$variant => $name,)+ }
            }
        }
    };
}

limit_keys! {
    /// Cover at or below which tray counts as showing through.
    ShowThrough = "show_through_mm",
    /// Cover below which material counts as thin.
    ThinCover = "thin_cover_mm",
    /// Patches smaller than this are taken for noise.
    LeastSpotArea = "least_spot_area_mm2",
    /// Share of the tissue surface that may show tray before relief and a wash no longer mend it.
    ShowThroughShare = "show_through_share_percent",
    /// Most cover that a declared tissue stop may have.
    StopCover = "stop_cover_mm",
    /// Side length of a tissue stop.
    StopSize = "stop_size_mm",
    /// Most expanded uncertainty with which cover may be judged.
    CoverUncertainty = "cover_uncertainty_mm",
    /// Least tissue surface of a maxillary impression.
    MaxillaryTissueArea = "maxillary_tissue_area_mm2",
    /// Least tissue surface of a mandibular impression.
    MandibularTissueArea = "mandibular_tissue_area_mm2",
    /// Coarsest triangles that may be judged, as the median edge.
    MedianEdge = "median_edge_mm",
    /// Least confidence, 0 to 1, with which arch and sides must have been told.
    Orientation = "orientation_confidence",
}
