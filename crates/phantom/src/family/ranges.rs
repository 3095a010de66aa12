//! From what a member of the broad family is drawn: the one table of ranges,
//! each with its source. Sources are rows of the project's list of facts;
//! where there is none, the range is common practice.

use rand::{Rng, RngExt};

/// A range, from which each value is as likely as any other.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Range {
    /// What is drawn, with its unit.
    pub what: &'static str,
    /// Least and greatest value.
    pub within: [f64; 2],
    /// Where the range comes from.
    pub source: &'static str,
}

impl Range {
    /// A value of it.
    pub(crate) fn draw(&self, rng: &mut impl Rng) -> f64 {
        rng.random_range(self.within[0]..self.within[1])
    }

    /// A value of it that is no greater than `most`, or the least.
    pub(crate) fn draw_below(&self, rng: &mut impl Rng, most: f64) -> f64 {
        self.draw(rng).min(most).max(self.within[0])
    }
}

/// What is said of a range that nobody has published.
const PRACTICE: &str = "common practice, no source";

/// Defines each range and the table of all of them.
macro_rules! ranges {
    ($($name:ident: $what:literal, $low:literal, $high:literal, $source:expr;)+) => {
        $(
            #[doc = $what]
            pub(crate) const $name: Range = Range {
                what: $what,
                within: [$low, $high],
                source: $source,
            };
        )+
        /// Every range of the family.
        pub const RANGES: &[Range] = &[$($name),+];
    };
}

ranges! {
    UPPER_HALF_WIDTH: "half the width of an upper arch, mm", 20.0, 26.0,
        "LM-34: 42.4 mm between the hamular notches, 32 to 52.8 mm within three deviations";
    LOWER_HALF_WIDTH: "half the width of a lower arch, mm", 20.5, 27.0, PRACTICE;
    UPPER_DEPTH: "depth of an upper arch before its limbs, mm", 27.0, 37.0, PRACTICE;
    LOWER_DEPTH: "depth of a lower arch before its limbs, mm", 26.0, 35.0, PRACTICE;
    LIMB: "length of the tray's limbs, mm", 7.0, 14.0, PRACTICE;
    SHELL: "thickness of a tray, mm", 1.7, 2.8, "BORDER-14: 2 to 3 mm, rigid";
    BEYOND_TRAY: "how far material goes behind the tray, mm", 2.2, 4.8, PRACTICE;
    END_DIFFERENCE: "how much further it goes on one side, mm", 0.0, 1.5, PRACTICE;
    TRAY_INSIDE: "how far the tray's edge stays below the border, mm", 2.6, 3.8,
        "BORDER-01, BORDER-02: 2 to 3 mm inside the final border";

    UPPER_HIGH: "outer flange over a high upper ridge, mm", 9.5, 12.5,
        "BORDER-10: 12.1 +/- 2.7 mm to the gingival margin, an upper bound";
    UPPER_USUAL: "outer flange over a usual upper ridge, mm", 7.0, 10.0, PRACTICE;
    UPPER_FLAT: "outer flange over a flat upper ridge, mm", 4.4, 6.5, PRACTICE;
    LOWER_HIGH: "outer flange over a high lower ridge, mm", 8.0, 10.5,
        "BORDER-10: 10.1 +/- 2.6 mm to the gingival margin, an upper bound";
    LOWER_USUAL: "outer flange over a usual lower ridge, mm", 5.8, 8.5, PRACTICE;
    LOWER_FLAT: "outer flange over a flat lower ridge, mm", 3.6, 5.5, PRACTICE;
    BUCCAL_OVER_LABIAL: "buccal flange over the labial one, mm", -1.2, 1.2, PRACTICE;
    BACK_OVER_MIDDLE: "outer flange at the back over its middle, mm", -0.8, 1.8, PRACTICE;
    LINGUAL_FRONT: "lingual flange in front, mm", 2.6, 8.0, PRACTICE;
    LINGUAL_MIDDLE: "lingual flange over the mylohyoid ridge, mm", 4.0, 8.0,
        "LM-17: shallowest over the mylohyoid ridge";
    LINGUAL_BACK: "lingual flange at the back over its middle, mm", 1.0, 4.0,
        "LM-19: the retromylohyoid part is deep";
    SIDE_DIFFERENCE: "height of one side's border over the other's, mm", -2.0, 2.0,
        "LM-49: asymmetry is normal; the 2 mm are common practice, no source";
    WAVE_HEIGHT: "a border's wave from trough to crest, mm", 0.5, 2.0, PRACTICE;
    WAVE_LENGTH: "a border's wave from crest to crest, mm", 15.0, 40.0, PRACTICE;
    BORDER_RADIUS: "radius of the border's roll, mm", 0.8, 3.0,
        "BORDER-03 to BORDER-05: borders 2 to 5 mm thick";
    BASE_RADIUS: "radius of a flange at its base, mm", 2.6, 3.8, PRACTICE;
    UNDERCUT_LEAN: "how far the border leans over an undercut ridge, mm", 1.6, 2.6, PRACTICE;

    FRENUM_DEPTH: "depth of a frenum's notch, mm", 1.0, 6.0, PRACTICE;
    LABIAL_WIDTH: "width of a labial frenum's notch at half its depth, mm", 2.0, 7.0,
        "BORDER-07: the labial notch is narrow; the figures are common practice, no source";
    BUCCAL_WIDTH: "width of a buccal frenum's notch at half its depth, mm", 3.0, 12.0,
        "BORDER-07: the buccal notch is broader; the figures are common practice, no source";
    LINGUAL_WIDTH: "width of a lingual frenum's notch at half its depth, mm", 2.0, 10.0, PRACTICE;
    MIDLINE_SHIFT: "place of a labial or lingual frenum from the midline, mm", -2.5, 2.5, PRACTICE;
    BUCCAL_PLACE: "place of a buccal frenum along the arch, mm", 19.0, 30.0,
        "LM-10: near the premolar region";
    BUCCAL_SHIFT: "place of one side's buccal frenum from the other's, mm", -3.0, 3.0, PRACTICE;
    TWIN_APART: "between the two notches of a doubled frenum, mm", 5.0, 8.0, PRACTICE;

    CREST_WAVE: "how much the ridge's level swings, mm", 0.2, 0.9, PRACTICE;
    GROOVE: "depth of the groove of a knife-edged ridge, mm", 1.0, 2.5, PRACTICE;
    VAULT_SHALLOW: "height of a shallow vault, mm", 3.4, 5.5, "AREA-09: 0 to 5 mm is shallow";
    VAULT_MEDIUM: "height of a medium vault, mm", 5.5, 10.5, "AREA-09: 6 to 10 mm is medium";
    VAULT_DEEP: "height of a deep vault, mm", 10.5, 15.0,
        "AREA-09, AREA-10: 11 mm and more is deep, means to 13 mm";
    TORUS: "height of a palatal torus, mm", 1.0, 3.5, "AREA-08 names tori; figures: common practice";
    PAPILLA: "depth of the papilla's pit, mm", 0.2, 1.5, PRACTICE;
    RUGAE: "depth of the rugae, mm", 0.1, 0.9, PRACTICE;
    TUBEROSITY: "depth of the tuberosity's hollow, mm", 0.0, 1.4,
        "AREA-08: tuberosities may be poorly defined; figures: common practice";
    FOVEA: "height of a fovea, mm", 0.15, 0.45, PRACTICE;

    HAMULAR_SHALLOW: "ridge of a shallow hamular notch, mm", 1.0, 2.0,
        "AREA-08: hamular notches may be poorly defined; figures: common practice";
    HAMULAR_DEEP: "ridge of a deep hamular notch, mm", 2.5, 5.0, PRACTICE;
    HAMULAR_WIDTH: "standard width of a hamular notch's ridge, mm", 1.1, 2.3,
        "LM-46: about 2 mm from front to back";
    HAMULAR_MARGIN: "from a hamular notch to where material ends, mm", 2.2, 5.5, PRACTICE;
    SEAL_MARGIN: "from the seal's line to the border in the midline, mm", 1.5, 5.0, PRACTICE;
    SEAL_BEAD: "height of the bead along the seal, mm", 0.3, 1.2,
        "LM-45: carved 1 to 1.5 mm deep, 0.5 mm in the midline";
    FOVEA_TO_SEAL: "from the foveae back to the seal's line, mm", -2.0, 4.5,
        "LM-30, LM-31: 3.4 mm, either before or behind";
    PAD_LENGTH: "length of a retromolar pad, mm", 8.0, 12.0, "LM-36, LM-37: 11.2 and 8.9 mm";
    PAD_WIDTH: "width of a retromolar pad, mm", 5.6, 8.4, "LM-36, LM-37: 7.9 and 6.2 mm";
    PAD_HOLLOW: "depth of a pad's own hollow, mm", 1.0, 2.6, PRACTICE;
    PAD_BELOW: "how far the ridge's level sinks toward a pad, mm", 0.0, 1.6, PRACTICE;
    PAD_RIM: "how far the trough rises behind a closed pad, mm", 0.4, 3.0, PRACTICE;
    PAD_CLEAR: "surface behind a closed pad, mm", 0.8, 3.0, PRACTICE;
    PAD_COVERED: "share of an open pad that is covered", 0.72, 0.98,
        "LM-47: at least half to two thirds of the pad";

    LAPPED: "how much more than usual laps over the tray", 3.0, 6.0, PRACTICE;
    HANDLE_LENGTH: "length of a handle, mm", 14.0, 26.0, PRACTICE;
    HANDLE_WIDTH: "width of a handle, mm", 10.0, 20.0, PRACTICE;

    NOISE: "noise of a scan, mm", 0.0, 0.05, PRACTICE;
    STITCH: "step between two views of a scan, mm", 0.05, 0.1, PRACTICE;
    SPIKE: "height of a spike, mm", 0.1, 0.6, PRACTICE;
}
