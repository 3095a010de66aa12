//! What a mouth and its tray share: the arch, and how far the tray reaches.

use crate::arch_curve::{ArchCurve, ArchPlace};
use crate::back::Back;
use crate::border::levelled;
use crate::design::Scatter;
use crate::jaw::Arch;
use crate::mouth::{Features, Mouth, Palate, Section};
use crate::profile::Profile;
use crate::stations::Stations;
use crate::tray::{Handle, Tray, TrayParts};
use crate::trough::Trough;
use rand::{Rng, RngExt};

/// A front that bends more tightly than this would cross the inner wall.
const LEAST_FRONT_RADIUS_MM: f64 = 15.8;

/// From what a plan is drawn, mm.
pub(crate) struct PlanRanges {
    /// Thickness of the tray.
    pub thickness: [f64; 2],
    /// Half width of the arch.
    pub half_width: [f64; 2],
    /// Depth of the arch.
    pub depth: [f64; 2],
    /// Length of the straight limbs.
    pub limb_length: [f64; 2],
    /// How far material reaches beyond the tray, and how that varies.
    pub extension: [[f64; 2]; 2],
}

/// What mouth and tray share.
pub(crate) struct Plan {
    /// Thickness of the tray, mm.
    pub thickness: f64,
    /// The arch.
    pub arch: ArchCurve,
    /// Length of the straight limbs, mm.
    pub limb_length: f64,
    /// How far material reaches beyond the tray, and how that varies, mm.
    pub extension: [f64; 2],
}

impl Plan {
    /// A random plan.
    pub(crate) fn random(rng: &mut impl Rng, ranges: &PlanRanges) -> Self {
        Self {
            thickness: Scatter::within(rng, ranges.thickness),
            arch: arch_curve(rng, ranges.half_width, ranges.depth),
            limb_length: Scatter::within(rng, ranges.limb_length),
            extension: ranges.extension.map(|range| Scatter::within(rng, range)),
        }
    }

    /// Arc length at which the tray ends, mm.
    pub(crate) fn tray_end(&self) -> f64 {
        self.arch.curved_length() + self.limb_length
    }

    /// Arc length at which the material ends, mm.
    pub(crate) fn end(&self) -> f64 {
        self.tray_end() + self.extension[0]
    }

    /// Heights of a crest `out` of the arch curve, freed from tilt.
    pub(crate) fn levelled(
        &self,
        height: impl Fn(f64) -> f64,
        out: impl Fn(f64) -> f64,
    ) -> Stations<f64> {
        levelled(self.end(), height, |along| {
            let out = out(along);
            let p = self.arch.point(ArchPlace { along, out });
            [p.x, p.y]
        })
    }

    /// The mouth of this plan, without relief.
    pub(crate) fn mouth(
        &self,
        kind: Arch,
        sections: Stations<Section>,
        palate: Option<Palate>,
        features: Features,
    ) -> Mouth {
        Mouth {
            kind,
            arch: self.arch.clone(),
            limb_length: self.limb_length,
            extension: self.extension,
            behind: Back::default(),
            trough: Trough::default(),
            sections,
            palate,
            reliefs: Vec::new(),
            features,
        }
    }

    /// The tray of this plan; `tops` are where its outer and inner walls end.
    pub(crate) fn tray(
        self,
        profile: Profile,
        [outer_top, inner_top]: [Stations<f64>; 2],
        handle: Option<Handle>,
    ) -> Tray {
        Tray::new(TrayParts {
            arch: self.arch,
            profile,
            thickness: self.thickness,
            limb_length: self.limb_length,
            outer_top,
            inner_top,
            handle,
        })
    }
}

/// The lowest of all heights.
pub(crate) fn lowest(level: &Stations<f64>) -> f64 {
    level.iter().map(|(_, &z)| z).fold(f64::INFINITY, f64::min)
}

/// A random arch with half width and depth in the given ranges.
fn arch_curve(rng: &mut impl Rng, half_width: [f64; 2], depth: [f64; 2]) -> ArchCurve {
    let half_width = Scatter::within(rng, half_width);
    let squareness = rng.random_range(-0.03..0.14);
    let widened = half_width * (1.0 + squareness);
    let deepest = widened * widened / LEAST_FRONT_RADIUS_MM;
    let depth = Scatter::within(rng, depth).min(deepest);
    ArchCurve::new(half_width, depth, squareness)
}
