//! What is known about a phantom by formula.

use crate::bare_edges::BareEdgeTruth;
use crate::colour::Colours;
use crate::design::Mark;
use crate::family::truth::FamilyTruth;
use crate::impression::Impression;
use crate::jaw::{Arch, Side};
use crate::outer_excess::OuterExcessTruth;
use crate::patches::{self, SpotTruth};
use nalgebra::{Isometry3, Point3, Unit, Vector3};
use serde::Serialize;

/// What is known about a phantom. Points and directions are in the
/// coordinates of the impression's scan unless said otherwise; lengths in mm.
#[derive(Debug, Clone, Serialize)]
pub struct Truth {
    /// Which jaw.
    pub arch: Arch,
    /// The seed it was made from.
    pub seed: u64,
    /// The patient's axes.
    pub axes: Axes,
    /// Moves tray-scan coordinates into impression-scan coordinates; written
    /// as a quaternion (i, j, k, w) and a translation in mm.
    pub impression_from_tray: Isometry3<f64>,
    /// Thickness of the tray's shell, mm.
    pub tray_thickness_mm: f64,
    /// Planted spots, in the order of the options.
    pub spots: Vec<SpotTruth>,
    /// Planted strips of bare tray, in the order of the options.
    #[serde(skip_serializing_if = "Vec::is_empty")]
    pub bare_edges: Vec<BareEdgeTruth>,
    /// Planted pads on the outer face of the tray, in the order of the options.
    #[serde(skip_serializing_if = "Vec::is_empty")]
    pub outer_excess: Vec<OuterExcessTruth>,
    /// Planted blemishes, in the order of the options.
    pub blemishes: Vec<BlemishTruth>,
    /// Middles of the tissue stops' faces, in tray-scan coordinates.
    pub stops: Vec<Point3<f64>>,
    /// Colours of the scan, where it has any.
    pub colours: Option<Colours>,
    /// Crest line from the patient's right to the left, between the tuberosities
    /// or pads.
    pub crest_line: Vec<Point3<f64>>,
    /// Closed border, from the labial midline toward the patient's left.
    pub border: Vec<BorderPoint>,
    /// Landmarks.
    pub landmarks: Vec<Landmark>,
    /// What else is known of a member of the broad family.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub family: Option<FamilyTruth>,
    #[serde(skip)]
    pub(crate) impression: Impression,
    #[serde(skip)]
    pub(crate) made_from_scan: Isometry3<f64>,
}

/// What kind of planted blemish.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum BlemishKind {
    /// A pit.
    Void,
    /// A bump.
    Nodule,
    /// A narrow groove.
    Fold,
    /// No surface.
    Hole,
    /// The border itself is low over a stretch.
    ShortBorder,
    /// The border is thin and sharp over a stretch.
    KnifeEdge,
    /// The border is sound but the scan ends below it over a stretch.
    CutScan,
}

/// A planted blemish.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
pub struct BlemishTruth {
    /// What it is.
    pub kind: BlemishKind,
    /// Where the surface (or the border) would be without it.
    pub centre: Point3<f64>,
    /// Diameter of its ball, length of its groove or of its stretch, mm.
    pub size_mm: f64,
    /// Depth, height, how far the border is short or cut, or its radius, mm.
    pub depth_mm: f64,
}

/// A landmark of the tissue surface.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
pub struct Landmark {
    /// Its name in the trade.
    pub name: &'static str,
    /// Its side, where there is one on each.
    pub side: Option<Side>,
    /// Where it is: the bottom of a frenum's notch, of the papilla and of a
    /// retromolar pad, the top of a hamular notch's ridge and of a fovea, the
    /// midline of the posterior edge.
    pub point: Point3<f64>,
}

/// Which stretch of the border.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
#[serde(rename_all = "lowercase")]
pub enum BorderPart {
    /// Labial and buccal.
    Outer,
    /// Lingual.
    Lingual,
    /// Across the back.
    Posterior,
}

/// A point of the border with what is true there. Sections are across the
/// arch's plan curve.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
pub struct BorderPoint {
    /// Share of the border's length, from 0 at the labial midline.
    pub s: f64,
    /// Which stretch.
    pub part: BorderPart,
    /// The highest point of the section; across the back of a maxilla the
    /// furthest one back.
    pub point: Point3<f64>,
    /// Height over the crest, mm; not across the back.
    pub flange_height_mm: Option<f64>,
    /// Thickness 3 mm below, mm; not where the flange is lower than that.
    pub flange_thickness_mm: Option<f64>,
    /// Radius of the circle fitted to 1.5 mm of section either side, mm.
    pub border_radius_mm: Option<f64>,
    /// Distance to the tray, mm.
    pub overlap_mm: f64,
    /// Not lost to a planted hole or a cut of the scan.
    pub scanned: bool,
}

/// Unit vectors of the patient's axes.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
pub struct Axes {
    /// Toward the patient's right.
    pub right: Vector3<f64>,
    /// Toward the patient's front.
    pub anterior: Vector3<f64>,
    /// From the tray toward the tissue.
    pub seating: Vector3<f64>,
}

impl Axes {
    /// The axes of an arch whose scan was moved by `pose` from where it was
    /// made (seating along z, anterior along y).
    #[must_use]
    pub fn of(arch: Arch, pose: &Isometry3<f64>) -> Self {
        let [anterior, seating] =
            [Vector3::y_axis(), Vector3::z_axis()].map(|a: Unit<_>| pose * a.into_inner());
        let right = anterior.cross(&seating) * arch.right_sign();
        Self {
            right,
            anterior,
            seating,
        }
    }
}

impl Truth {
    /// What is true of an impression whose scans were moved from where they
    /// were made; planted blemishes and colours are added by their makers.
    pub(crate) fn of(
        impression: Impression,
        marks: &[Mark],
        seed: u64,
        pose: &Isometry3<f64>,
        tray_pose: &Isometry3<f64>,
    ) -> Self {
        let moved_point = |p: BorderPoint| BorderPoint {
            point: pose * p.point,
            ..p
        };
        let moved_mark = |m: Landmark| Landmark {
            point: pose * m.point,
            ..m
        };
        Self {
            arch: impression.mouth.kind,
            seed,
            axes: Axes::of(impression.mouth.kind, pose),
            impression_from_tray: pose * tray_pose.inverse(),
            tray_thickness_mm: impression.tray.thickness(),
            spots: impression
                .spots
                .iter()
                .map(|s| patches::measured(&impression, s, pose))
                .collect(),
            bare_edges: (impression.bare_edges.iter())
                .map(|strip| strip.truth(pose))
                .collect(),
            outer_excess: impression.pads.iter().map(|pad| pad.truth(pose)).collect(),
            blemishes: Vec::new(),
            stops: impression
                .tray
                .stops()
                .iter()
                .map(|s| tray_pose * s.face())
                .collect(),
            colours: None,
            crest_line: impression.crest_line().iter().map(|p| pose * p).collect(),
            border: impression.border().into_iter().map(moved_point).collect(),
            landmarks: impression
                .landmarks(marks)
                .into_iter()
                .map(moved_mark)
                .collect(),
            family: None,
            made_from_scan: pose.inverse(),
            impression,
        }
    }

    /// Whether a point of the surface faced the tissue: it lies on the inner
    /// side of the border.
    #[must_use]
    pub fn is_tissue_side(&self, point: &Point3<f64>) -> bool {
        self.impression
            .is_tissue_side(&(self.made_from_scan * point))
    }

    /// Top of the tray's outer wall from one end to the other, in tray-scan coordinates,
    /// mm: its middle place is that of the front.
    #[must_use]
    pub fn tray_outer_rim(&self) -> Vec<Point3<f64>> {
        let tray_from_made = self.impression_from_tray.inverse() * self.made_from_scan.inverse();
        let rim = self.impression.tray.outer_rim();
        rim.map(|place| tray_from_made * place).collect()
    }

    /// Where the tray's surface is nearest to a place of the impression scan by formula,
    /// in tray-scan coordinates, mm.
    #[must_use]
    pub fn on_tray(&self, point: &Point3<f64>) -> Point3<f64> {
        let tray = &self.impression.tray;
        let made = self.made_from_scan * point;
        let on_tray = made - tray.away(&made) * tray.exact_distance(&made);
        self.impression_from_tray.inverse() * self.made_from_scan.inverse() * on_tray
    }

    /// Distance from a point in scan coordinates to the tray's surface by
    /// formula, mm; negative inside the tray.
    #[must_use]
    pub fn cover_at(&self, point: &Point3<f64>) -> f64 {
        self.impression
            .tray
            .exact_distance(&(self.made_from_scan * point))
    }
}
