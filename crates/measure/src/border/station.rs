//! One station: the plane across the border, the cut by it, and its figures.

use super::figures::{BorderPart, Measured, Missing, Reading, Section, StationFigure};
use super::profile::{Profile, Search};
use super::rays::{Spine, back_lean};
use crate::impression::Impression;
use crate::settings::MeasureSettings;
use crate::tray::LocalTray;
use crate::words::Arch;
use geometry::section::{CutLine, Cutter, SectionPlane, SectionPoint};
use nalgebra::{Point3, Vector2};

/// Standard uncertainty of the seating axis, radians: phantoms with half a
/// degree of error are usual (`crates/measure/tests/all/accuracy.rs`).
const AXIS_DOUBT: f64 = 0.009;
/// The bottom of the trough lies within this distance of the crest line, mm.
const CREST_WITHIN_MM: f64 = 3.5;
/// What a section shows beyond crest and border, mm.
const MARGIN_MM: f64 = 6.0;

/// From this cosine on a border faces back.
const FACES_BACK: f64 = 0.6;

/// What is looked at from every station.
pub(crate) struct Outlook<'a> {
    pub impression: &'a Impression,
    pub spine: &'a Spine,
    pub cutter: Cutter<'a>,
    pub tray: Option<LocalTray<'a>>,
    pub tray_cutter: Option<Cutter<'a>>,
    pub noise_mm: f64,
    pub settings: &'a MeasureSettings,
}

/// A station in local coordinates.
#[derive(Debug, Clone)]
pub(super) struct Reached {
    pub part: BorderPart,
    pub point: Point3<f64>,
    /// `None` where no surface lies: the point is the rough border's.
    pub uncertainty_mm: Option<f64>,
    pub scan_ends: bool,
    pub crest: Option<Point3<f64>>,
    pub flange_height: Reading,
    pub flange_thickness: Reading,
    pub border_radius: Reading,
    pub overlap: Reading,
    pub section: Section,
}

impl Reached {
    /// Whether the border itself was scanned here, and the line lies on it.
    pub(super) fn is_scanned(&self) -> bool {
        !self.scan_ends
            && self.uncertainty_mm.is_some()
            && self.flange_height != Err(Missing::OffTheSummit)
    }

    /// One of its figures, to be changed.
    pub(super) fn figure_mut(&mut self, figure: StationFigure) -> &mut Reading {
        match figure {
            StationFigure::Height => &mut self.flange_height,
            StationFigure::Thickness => &mut self.flange_thickness,
            StationFigure::Radius => &mut self.border_radius,
            StationFigure::Overlap => &mut self.overlap,
        }
    }
}

/// The plane across the border at a place, and where it stands.
struct Stand {
    part: BorderPart,
    has_crest: bool,
    plane: SectionPlane,
    /// Lean of the direction in which the border is furthest, radians.
    lean: f64,
}

impl Outlook<'_> {
    /// What the cut at a point of the rough border shows; `outward` is the
    /// border's own direction away from the inside, in plan.
    pub(super) fn look(&self, rough: &Point3<f64>, outward: Vector2<f64>) -> Reached {
        let stand = self.stand(rough, outward);
        let about = stand.plane.section_point(rough);
        let has_crest = stand.part != BorderPart::Posterior;
        let span = if has_crest {
            -MARGIN_MM..=about[0] + MARGIN_MM
        } else {
            about[0] - 2.0 * MARGIN_MM..=about[0] + MARGIN_MM
        };
        let lines = self.cutter.cut(&stand.plane, span.clone());
        let search = Search {
            about,
            lean: stand.lean,
            noise_mm: self.noise_mm,
            edge_mm: self.impression.edge_mm,
        };
        let Some(profile) = Profile::find(&lines, &search, &self.impression.regions.is_tissue)
        else {
            return nothing_at(rough, stand.part);
        };
        let tray_lines = self
            .tray_cutter
            .as_ref()
            .map(|tray| tray.cut(&stand.plane, span))
            .unwrap_or_default();
        self.figures(&stand, &profile, &lines, &tray_lines)
    }

    fn stand(&self, rough: &Point3<f64>, outward: Vector2<f64>) -> Stand {
        let foot = self.spine.foot(rough.xy());
        let off = rough.xy() - foot.at;
        let is_outside = off.dot(&foot.outward) > 0.0;
        let arch = self.impression.frame.arch;
        let faces_back = -outward.y > FACES_BACK;
        let part = match arch {
            _ if foot.is_end || (!foot.on_crest && faces_back) => BorderPart::Posterior,
            _ if is_outside => BorderPart::Outer,
            Arch::Maxillary => BorderPart::Posterior,
            Arch::Mandibular => BorderPart::Lingual,
        };
        let at = |plan: nalgebra::Point2<f64>| Point3::new(plan.x, plan.y, 0.0);
        let across = (part != BorderPart::Posterior)
            .then(|| off.try_normalize(1.0))
            .flatten();
        match across {
            Some(across) => Stand {
                part,
                has_crest: foot.on_crest,
                plane: SectionPlane {
                    origin: at(foot.at),
                    across,
                },
                lean: 0.0,
            },
            None => Stand {
                part: BorderPart::Posterior,
                has_crest: false,
                plane: SectionPlane {
                    origin: at(rough.xy()),
                    across: outward,
                },
                lean: back_lean(rough.x, self.spine.end_x(), outward, arch),
            },
        }
    }

    fn figures(
        &self,
        stand: &Stand,
        profile: &Profile,
        lines: &[CutLine],
        tray_lines: &[CutLine],
    ) -> Reached {
        let has_outer = self.impression.regions.has_outer_surface();
        let point = stand.plane.place(profile.border);
        let facet = self.impression.edge_mm.powi(2) / 8.0;
        let crest = stand
            .has_crest
            .then(|| profile.crest(0.0, CREST_WITHIN_MM))
            .flatten();
        let of_scanner = self.settings.scanner_uncertainty_mm;
        let uncertainty_mm = (2.0 * profile.border_noise_mm.hypot(facet)).hypot(of_scanner);
        let flange_height = match crest {
            _ if profile.scan_ends => Err(Missing::ScanEnds),
            None => Err(Missing::NoCrest),
            Some(crest) => {
                let tilt = AXIS_DOUBT * (profile.border[0] - crest[0]).abs();
                Ok(Measured {
                    mm: profile.border[1] - crest[1],
                    uncertainty_mm: uncertainty_mm.hypot(2.0 * tilt).hypot(self.noise_mm),
                })
            }
        };
        let thickness = if stand.part != BorderPart::Posterior {
            profile.thickness(self.settings.flange_depth_mm, self.noise_mm, has_outer)
        } else {
            Err(Missing::NoCrest)
        };
        let roll = match profile.roll(self.noise_mm, self.impression.edge_mm) {
            Err(_) if !has_outer && !profile.scan_ends => Err(Missing::TissueSideOnly),
            other => other,
        };
        let from_border = |[u, w]: SectionPoint| [u - profile.border[0], w - profile.border[1]];
        let (tissue, outer) = profile.faces(lines, &self.impression.regions.is_tissue);
        let shown = |lines: Vec<Vec<SectionPoint>>| -> Vec<Vec<SectionPoint>> {
            let moved = |line: Vec<SectionPoint>| line.into_iter().map(from_border).collect();
            lines.into_iter().map(moved).collect()
        };
        Reached {
            part: stand.part,
            point,
            uncertainty_mm: Some(uncertainty_mm),
            scan_ends: profile.scan_ends,
            crest: crest.map(|crest| stand.plane.place(crest)),
            flange_height,
            flange_thickness: reading(&thickness, of_scanner),
            border_radius: reading(&roll, of_scanner),
            overlap: self.overlap(&point, uncertainty_mm, profile.scan_ends),
            section: Section {
                tissue: shown(tissue),
                outer: shown(outer),
                tray: shown(tray_lines.iter().map(|line| line.points.clone()).collect()),
                crest: crest.map(from_border),
                thickness: thickness.ok().map(|(_, ends)| ends.map(from_border)),
                roll_centre: roll.ok().map(|(_, centre)| from_border(centre)),
            },
        }
    }

    fn overlap(&self, point: &Point3<f64>, border_uncertainty_mm: f64, scan_ends: bool) -> Reading {
        let tray = self.tray.ok_or(Missing::NoTray)?;
        if scan_ends {
            return Err(Missing::ScanEnds);
        }
        let nearest = tray
            .index()
            .nearest(&tray.in_tray_scan(point), f64::INFINITY)
            .ok_or(Missing::NoTray)?;
        Ok(Measured {
            mm: nearest.distance,
            uncertainty_mm: tray
                .rim_uncertainty_mm(point, &nearest.point)
                .hypot(border_uncertainty_mm),
        })
    }
}

fn nothing_at(rough: &Point3<f64>, part: BorderPart) -> Reached {
    Reached {
        part,
        point: *rough,
        uncertainty_mm: None,
        scan_ends: false,
        crest: None,
        flange_height: Err(Missing::NoSurface),
        flange_thickness: Err(Missing::NoSurface),
        border_radius: Err(Missing::NoSurface),
        overlap: Err(Missing::NoSurface),
        section: Section::default(),
    }
}

/// A reading from what may be missing, with the scanner's own uncertainty, mm.
fn reading<T>(figure: &Result<(Measured, T), Missing>, of_scanner_mm: f64) -> Reading {
    let (own, _) = figure.as_ref().map_err(|why| *why)?;
    Ok(Measured {
        uncertainty_mm: own.uncertainty_mm.hypot(of_scanner_mm),
        ..*own
    })
}
