//! What a phantom is to be like.

use crate::jaw::Arch;
use nalgebra::Isometry3;
use serde::Serialize;

/// What a phantom is to be like. The same options give the same phantom.
#[derive(Debug, Clone, PartialEq)]
pub struct Options {
    /// Which jaw.
    pub arch: Arch,
    /// Chooses the mouth, the tray and everything else that is left to chance.
    pub seed: u64,
    /// Wanted median edge length of the impression, mm; at least 0.1.
    pub edge_mm: f64,
    /// Wanted median edge length of the tray scan, mm.
    pub tray_edge_mm: f64,
    /// Where the impression lies in scan coordinates.
    pub pose: Pose,
    /// Where the tray lies in its own scan's coordinates.
    pub tray_pose: Pose,
    /// What the scanner saw of the impression.
    pub sides: Sides,
    /// Standard deviation of Gaussian noise along the normal on both scans, mm.
    pub noise_sd_mm: f64,
    /// How the impression's scan is coloured; `None` for no colour.
    pub colour: Option<Colouring>,
    /// Whether the tray has a handle.
    pub handle: bool,
    /// How much material laps over the tray's outer face; 1 is usual.
    pub overflow: f64,
    /// Planted thin and bare places.
    pub spots: Vec<PlantedSpot>,
    /// Planted faults of the surface, the border and the scan.
    pub blemishes: Vec<Blemish>,
    /// What the scanner made of the scan's rim.
    pub rim: RimFaults,
    /// Tissue stops on the tray (4 x 4 mm), as stations of the crest from -1
    /// on the patient's right to 1 on the left.
    pub stops: Vec<f64>,
    /// Planted strips of bare tray along its edges.
    pub bare_edges: Vec<BareEdge>,
    /// Planted pads of material on the outer face of the tray.
    pub outer_excess: Vec<OuterExcess>,
    /// Holes and rim of the tray.
    pub tray_form: TrayForm,
    /// From which family the mouth and the tray are drawn.
    pub variety: Variety,
    /// What else the scanner made of the impression's surface.
    pub scanning: Scanning,
}

impl Default for Options {
    fn default() -> Self {
        Self {
            arch: Arch::Maxillary,
            seed: 0,
            edge_mm: 0.5,
            tray_edge_mm: 0.5,
            pose: Pose::Random,
            tray_pose: Pose::Random,
            sides: Sides::Both,
            noise_sd_mm: 0.0,
            colour: None,
            handle: true,
            overflow: 1.0,
            spots: Vec::new(),
            blemishes: Vec::new(),
            rim: RimFaults::default(),
            stops: Vec::new(),
            bare_edges: Vec::new(),
            outer_excess: Vec::new(),
            tray_form: TrayForm::default(),
            variety: Variety::Usual,
            scanning: Scanning::default(),
        }
    }
}

/// From which family a mouth and its tray are drawn.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Variety {
    /// One narrow anatomy.
    Usual,
    /// The broad family: anatomy and trays of every kind.
    Broad {
        /// Where the impression ends before a landmark; `None` for one that
        /// reaches all of them.
        cut: Option<Cut>,
    },
}

/// An impression that ends before a posterior landmark on one side.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Cut {
    /// Before which.
    pub place: CutPlace,
    /// Whether on the patient's left.
    pub left: bool,
    /// How far before it, mm.
    pub by_mm: f64,
}

/// A posterior landmark that an impression can end before.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum CutPlace {
    /// The hamular notch, or two thirds of the retromolar pad.
    PosteriorLandmark,
    /// The posterior palatal seal (maxilla; else as the other).
    Seal,
}

/// What a scanner and its program made of a surface.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct Scanning {
    /// Passes of smoothing that keeps the volume.
    pub smoothing: usize,
    /// Triangles are merged where the surface is flat, up to this edge, mm.
    pub longest_edge_mm: Option<f64>,
    /// Step between two views along the seating axis, mm.
    pub stitch_mm: f64,
    /// Number of single vertices that stand out.
    pub spikes: usize,
}

/// Where a scan lies.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Pose {
    /// As made: z along the seating axis, y to the front.
    AsMade,
    /// Anywhere, chosen by the seed.
    Random,
    /// Moved by this motion from where it was made.
    Given(Isometry3<f64>),
}

/// What a scanner saw.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Sides {
    /// All of it: a closed surface.
    Both,
    /// What is seen from the tissue's side, and a little beyond the border.
    Tissue,
}

/// What a scanner made of the surface near the border.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct RimFaults {
    /// Greatest depth of the bites out of the open rim of a tissue-side scan,
    /// mm. They stay on the outer side: the border itself still turns over.
    pub bites_mm: f64,
    /// Number of stray patches that float 2 to 5 mm off the border.
    pub islands: usize,
    /// Number of small holes, 1.5 to 4 mm from the border.
    pub holes: usize,
}

/// How evenly a coloured scan is coloured.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Colouring {
    /// How much lighter the scan is at 40 mm toward the light, as a share.
    pub shading: f64,
    /// Standard deviation of each channel's noise, as a share of full scale.
    pub noise: f64,
}

impl Default for Colouring {
    fn default() -> Self {
        Self {
            shading: 0.15,
            noise: 0.02,
        }
    }
}

/// A planted fault.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Blemish {
    /// A pit that trapped air left: part of a ball.
    Void {
        /// Where.
        place: Place,
        /// Diameter of the ball, mm.
        diameter_mm: f64,
        /// Depth under the surface around, mm.
        depth_mm: f64,
    },
    /// A bump: part of a ball.
    Nodule {
        /// Where.
        place: Place,
        /// Diameter of the ball, mm.
        diameter_mm: f64,
        /// Height over the surface around, mm.
        height_mm: f64,
    },
    /// A narrow groove where material met without joining, round at its bottom
    /// and sharp at its edges.
    Fold {
        /// Its middle.
        place: Place,
        /// Its run, in degrees from the direction along the arch (on the
        /// palate, across it).
        heading_deg: f64,
        /// Length, mm.
        length_mm: f64,
        /// Width at the surface, mm.
        width_mm: f64,
        /// Depth under the surface around, mm.
        depth_mm: f64,
    },
    /// No surface within a ball around the place.
    Hole {
        /// Where.
        place: Place,
        /// Diameter, mm.
        diameter_mm: f64,
    },
    /// The border stands lower over a stretch.
    ShortBorder {
        /// On which flange.
        flange: FlangeSide,
        /// Middle of the stretch, from -1 (right) to 1 (left).
        station: f64,
        /// Length of the stretch, mm.
        length_mm: f64,
        /// How much lower, mm.
        by_mm: f64,
    },
    /// The border is thin and sharp over a stretch.
    KnifeEdge {
        /// On which flange.
        flange: FlangeSide,
        /// Middle of the stretch, from -1 (right) to 1 (left).
        station: f64,
        /// Length of the stretch, mm.
        length_mm: f64,
        /// Radius of the roll, mm.
        radius_mm: f64,
    },
    /// The border was moulded but the scan ends below it over a stretch.
    CutScan {
        /// On which flange.
        flange: FlangeSide,
        /// Middle of the stretch, from -1 (right) to 1 (left).
        station: f64,
        /// Length of the stretch, mm.
        length_mm: f64,
        /// How far below the border, mm.
        by_mm: f64,
    },
}

/// A flange of a section across the arch.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
#[serde(rename_all = "lowercase")]
pub enum FlangeSide {
    /// Labial or buccal.
    Outer,
    /// Lingual. A maxillary impression has none: nothing is planted there.
    Lingual,
}

/// A thin or bare place to plant.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct PlantedSpot {
    /// Where.
    pub place: Place,
    /// What.
    pub kind: SpotKind,
}

/// A place of the tissue surface.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Place {
    /// In a section across the arch. `station` runs from -1 at the tray's end
    /// on the patient's right over 0 in front to 1 on the left.
    Arch {
        /// Share of the half arch.
        station: f64,
        /// Where in the section.
        across: Across,
    },
    /// On the palate of a maxilla.
    Palate {
        /// From the midline toward the patient's right, mm.
        right_mm: f64,
        /// Before the ends of the curved part of the arch, mm.
        anterior_mm: f64,
    },
}

/// Where in a section across the arch.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Across {
    /// The bottom of the trough.
    Crest,
    /// The tissue face of the labial or buccal flange.
    OuterSlope,
    /// The palatal slope or the tissue face of the lingual flange.
    InnerSlope,
}

/// How bare a planted spot is.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum SpotKind {
    /// The tray shows; about this much surface has a cover of at most 0.2 mm.
    ShowThrough {
        /// Wanted area, mm².
        area_mm2: f64,
    },
    /// Material is thin but covers the tray.
    Thin {
        /// Least cover, mm.
        least_mm: f64,
        /// About this much surface has a cover below 1 mm.
        area_mm2: f64,
    },
}

/// What the tray's wall has beside its plain shell.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct TrayForm {
    /// Radius of the holes in its floor, mm, through which plugs of material stand out; 0
    /// for a tray without holes.
    pub hole_radius_mm: f64,
    /// Distance from hole to hole, mm.
    pub holes_apart_mm: f64,
    /// How much further than the wall the rolled rim stands out to either side, mm.
    pub rolled_rim_mm: f64,
}

/// A strip of bare tray along one of its edges: bare within its width and length, material
/// beyond.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct BareEdge {
    /// Along which edge.
    pub edge: TrayEdge,
    /// Its middle, from -1 at the tray's end on the patient's right over 0 in front to 1 on
    /// the left.
    pub station: f64,
    /// Width, straight across, mm.
    pub width_mm: f64,
    /// Length, mm.
    pub length_mm: f64,
}

/// An edge of the tray.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum TrayEdge {
    /// Top of the labial or buccal wall, on the tissue's side.
    OuterRim,
    /// Top of the lingual wall, on the tissue's side. An upper tray has none: nothing is
    /// planted there.
    InnerRim,
    /// The floor beside the hole nearest to the station. Without holes nothing is planted.
    Opening,
    /// The floor round the foot of the stop nearest to the station. Without stops nothing is
    /// planted.
    StopFoot,
    /// Across the floor, along the cut of a tray that is sawn across the mouth there.
    Joint,
}

/// A round pad of material on the outer face of the tray's floor.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct OuterExcess {
    /// Where, from -1 at the tray's end on the patient's right over 0 in front to 1 on the left.
    pub station: f64,
    /// Radius of its even middle, mm.
    pub radius_mm: f64,
    /// Thickness of its middle, mm.
    pub thickness_mm: f64,
}
