//! One limit of a protocol.

use crate::severity::Level;
use crate::words;
use measure::Zone;
use messages::Message;
use serde::{Deserialize, Serialize};
use std::collections::BTreeMap;

/// A limit, where it comes from and what missing it means.
#[derive(Debug, Clone, PartialEq)]
pub struct Limit {
    /// The limiting value, in `unit`; where a limit may differ by zone, in the
    /// zones that are not named.
    pub value: f64,
    /// Values of their own for some zones, in `unit`.
    pub zones: BTreeMap<Zone, f64>,
    /// Unit of the value; `1` for a plain number.
    pub unit: String,
    /// What missing it means.
    pub level: Level,
    /// Where what is asked for comes from, with how that is known; `None` where the
    /// number stands alone.
    pub criterion: Option<String>,
    /// Where the number comes from, or that it is common practice without a source.
    pub source: String,
}

impl Limit {
    /// The value in a zone.
    #[must_use]
    pub fn in_zone(&self, zone: Zone) -> f64 {
        self.zones.get(&zone).copied().unwrap_or(self.value)
    }
}

/// A zone as a protocol file writes it: its name, joined by underscores.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Deserialize)]
#[serde(try_from = "String")]
pub(super) struct ZoneKey(pub(super) Zone);

impl ZoneKey {
    pub(super) fn name(zone: Zone) -> String {
        words::zone(zone).replace(' ', "_")
    }
}

impl TryFrom<String> for ZoneKey {
    type Error = String;

    fn try_from(text: String) -> Result<Self, String> {
        words::ZONES
            .into_iter()
            .find(|&zone| Self::name(zone) == text)
            .map(Self)
            .ok_or_else(|| {
                let known = words::ZONES.map(Self::name).join(", ");
                format!("'{text}' is not a zone; there are {known}")
            })
    }
}

macro_rules! limit_keys {
    ($($(#[$doc:meta])+ $variant:ident = $name:literal,)+) => {
        /// Name of each limit, as written in a protocol file. A name ends with its unit.
        #[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
        pub enum LimitKey {
            $($(#[$doc])+ #[serde(rename = $name)] $variant,)+
        }

        impl LimitKey {
            /// Every limit, in the order of the protocol.
            pub const ALL: [Self; [$($name),+].len()] = [$(Self::$variant),+];

            /// Whether it may differ by zone.
            #[must_use]
            pub fn differs_by_zone(self) -> bool {
                matches!(
                    self,
                    Self::UnderExtension
                        | Self::FlangeHeight
                        | Self::FlangeThin
                        | Self::FlangeThick
                        | Self::BorderRadius
                        | Self::OverlapLeast
                        | Self::OverlapMost
                        | Self::Asymmetry
                        | Self::LandmarkCovered
                )
            }

            /// What it limits, in one sentence.
            #[must_use]
            pub fn gist(self) -> Message {
                Message::name("limit", self.name())
            }

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
    /// Room for material that relief of the tray is to make.
    ReliefRoom = "relief_room_mm",
    /// Least thickness of the tray's wall that relief may leave.
    TrayWallLeft = "tray_wall_left_mm",
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
    /// How far the tray may have stood off the place of most even cover.
    TrayShift = "most_tray_shift_mm",
    /// How far it may have been tilted or turned from there.
    TrayTilt = "most_tray_tilt_deg",
    /// How far a limb of the tray may have bent between its scan and the impression.
    TrayBend = "most_tray_bend_mm",
    /// Gap or step at the joint of a tray in pieces.
    TrayJoint = "most_tray_joint_mm",
    /// How far a heel of the impression may have moved, or both apart, since it was sent.
    ArchChange = "most_arch_change_mm",
    /// How far a place of its surface may have moved by itself since it was sent.
    LocalChange = "most_local_change_mm",
    /// Most material on the outer faces of the tray, beyond what laps over its rim.
    OuterExcess = "most_outer_excess_mm2",
    /// How much wider or narrower it may be than suits, over the width of the arch.
    TrayWidth = "most_tray_width_mm",
    /// Width up to which a void is let pass outside critical zones.
    Void = "void_mm",
    /// Width up to which a void is let pass in critical zones and beside the border.
    CriticalVoid = "void_critical_mm",
    /// Width from which a void there is too large to be trimmed off the cast.
    CriticalVoidRedo = "void_critical_redo_mm",
    /// Width up to which a nodule is let pass outside critical zones.
    Nodule = "nodule_mm",
    /// Width up to which a nodule is let pass in critical zones and beside the border.
    CriticalNodule = "nodule_critical_mm",
    /// Length up to which a fold is let pass outside critical zones.
    Fold = "fold_mm",
    /// Length up to which a fold is let pass in critical zones and beside the border.
    CriticalFold = "fold_critical_mm",
    /// Width up to which a hole is let pass outside critical zones.
    Hole = "hole_mm",
    /// Width up to which a hole is let pass in critical zones and beside the border.
    CriticalHole = "hole_critical_mm",
    /// How far from the edge of the tissue surface the border is taken to reach.
    BorderMargin = "border_margin_mm",
    /// Width of the smallest void that every part of the scan must be able to show.
    SmallestVoidSeen = "smallest_void_seen_mm",
    /// Most noise of a part of the scan, as a standard deviation.
    ScanNoise = "scan_noise_mm",
    /// Most of a part that may have been scanned twice with two layers left.
    DoubleLayer = "double_layer_percent",
    /// Least confidence, 0 to 1, that arch and sides must be recognised with.
    Orientation = "orientation_confidence",
    /// Depth below the border at which flange thickness is taken.
    FlangeDepth = "flange_depth_mm",
    /// Shorter stretches of border are taken for noise.
    LeastStretch = "least_border_stretch_mm",
    /// Depth by which the border may fall below its neighbourhood.
    UnderExtension = "under_extension_mm",
    /// Least height of a flange; 0 for no limit.
    FlangeHeight = "flange_height_mm",
    /// Least thickness of a flange.
    FlangeThin = "least_flange_thickness_mm",
    /// Most thickness of a flange.
    FlangeThick = "most_flange_thickness_mm",
    /// Least radius of the border's roll.
    BorderRadius = "border_radius_mm",
    /// Least distance by which the tray stays short of the border.
    OverlapLeast = "least_border_overlap_mm",
    /// Most distance by which material goes past the tray's edge.
    OverlapMost = "most_border_overlap_mm",
    /// How much lower a flange may be than the other side's.
    Asymmetry = "border_asymmetry_mm",
    /// How much lower a wash's border may be than the first pass's.
    BorderDrop = "border_drop_mm",
    /// Most thickness of a wash, as its 95th percentile.
    WashMost = "wash_most_mm",
    /// Most difference between the thick and the thin parts of a wash.
    WashSpread = "wash_spread_mm",
    /// How far the border passes beyond a landmark, at least.
    LandmarkMargin = "landmark_margin_mm",
    /// Least distance from a notch, tuberosity or pad to the border beyond it, below
    /// which the impression ends before it.
    LandmarkReach = "landmark_reach_mm",
    /// Least share of a landmark's own area that must lie inside the border.
    LandmarkCovered = "landmark_covered_percent",
    /// How far from a landmark's reach a defect or the end of the scan spoils it.
    LandmarkClearance = "landmark_clearance_mm",
    /// How far from where an unseen landmark should be it is taken to be lost with what is there.
    LandmarkSearch = "landmark_search_mm",
    /// Least space between the crest lines.
    InterarchLeast = "least_interarch_space_mm",
    /// Most angle between the planes of the crest lines.
    RidgeAngle = "most_ridge_angle_deg",
    /// Least interocclusal distance that is let pass unquestioned.
    InterocclusalLeast = "least_interocclusal_distance_mm",
    /// Most interocclusal distance that is let pass unquestioned.
    InterocclusalMost = "most_interocclusal_distance_mm",
    /// Least interocclusal distance that is usual.
    UsualInterocclusalLeast = "least_usual_interocclusal_distance_mm",
    /// Most interocclusal distance that is usual.
    UsualInterocclusalMost = "most_usual_interocclusal_distance_mm",
    /// Expanded uncertainty (k = 2) of one reading taken at the chair.
    ReadingUncertainty = "reading_uncertainty_mm",
    /// Shortest plausible upper lip, from the base of the nose.
    LipLeast = "least_upper_lip_length_mm",
    /// Longest plausible upper lip, from the base of the nose.
    LipMost = "most_upper_lip_length_mm",
    /// Least plausible distance from the incisive papilla to the lip line.
    PapillaLeast = "least_papilla_to_lip_mm",
    /// Most plausible distance from the incisive papilla to the lip line.
    PapillaMost = "most_papilla_to_lip_mm",
    /// Longest time, in hours, for which addition silicone is known to keep its size.
    SiliconeAge = "most_addition_silicone_h",
    /// Longest time for which alginate may wait before it is poured or scanned.
    AlginateAge = "most_alginate_min",
    /// Whether a jaw needs its wash before the set is worked from: 1 or 0.
    WashRequired = "wash_required",
    /// Whether a written prescription must go with the parcel: 1 or 0.
    PrescriptionRequired = "prescription_required",
    /// Whether disinfectant and exposure time must be stated: 1 or 0.
    DisinfectionRequired = "disinfection_required",
    /// Whether a jaw-relation record, or the reason for none, must be there: 1 or 0.
    RecordRequired = "jaw_relation_required",
    /// Whether both jaws, or the reason for one, must be there: 1 or 0.
    BothArchesRequired = "both_arches_required",
    /// Least usual time of disinfection.
    DisinfectionLeast = "least_disinfection_min",
    /// Most usual time of disinfection.
    DisinfectionMost = "most_disinfection_min",
}

#[cfg(test)]
mod tests {
    use super::*;
    use messages::Language;

    #[test]
    fn what_a_limit_limits_is_said_in_each_language() {
        for gist in LimitKey::ALL.map(LimitKey::gist) {
            for language in Language::ALL {
                assert_ne!(gist.text(language), gist.key(), "{language}");
            }
        }
    }
}
