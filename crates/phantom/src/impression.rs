//! The impression as one solid: tray and material, with planted spots.

use crate::bare_edges::BareStrip;
use crate::bead::Bead;
use crate::jaw::Arch;
use crate::mesher::Solid;
use crate::mouth::{BASE_Z, Flange, Mouth, Section};
use crate::outer_excess::Pad;
use crate::shaping::{common, joined, tapered_capsule};
use crate::spots::Spot;
use crate::tray::{Tray, TrayColumn};
use nalgebra::{Point3, Vector3};

/// Material that covers the tray everywhere on the tissue's side, mm.
pub(crate) const LEAST_COVER_MM: f64 = 1.5;

/// Tray and material.
#[derive(Debug, Clone)]
pub struct Impression {
    /// The tray.
    pub tray: Tray,
    /// The tissue's side.
    pub mouth: Mouth,
    /// Planted thin places.
    pub spots: Vec<Spot>,
    /// Planted strips of bare tray.
    pub bare_edges: Vec<BareStrip>,
    /// Planted pads on the outer face of the tray.
    pub pads: Vec<Pad>,
    /// Planted voids, nodules and folds.
    pub beads: Vec<Bead>,
    /// Over how many mm of height overflow thins out.
    pub overflow_ramp: f64,
}

/// What does not change along z at a point of the plan.
#[derive(Debug, Clone)]
pub struct ImpressionColumn {
    pub(crate) tray: TrayColumn,
    pub(crate) section: Section,
    pub(crate) plan: [f64; 2],
    pub(crate) relief: f64,
    pub(crate) floor: f64,
    floor_slope: f64,
    dome: f64,
    slope: [f64; 2],
    pub(crate) back: f64,
    spots: u64,
    bare_edges: u64,
    pads: u64,
    beads: u64,
}

/// How far a point lies outside (or, below 0, inside) the two parts, mm.
#[derive(Debug, Clone, Copy)]
pub struct Parts {
    /// Of the tray.
    pub tray: f64,
    /// Of the material.
    pub material: f64,
}

impl Impression {
    /// How far a point lies outside material that nothing but the mouth shapes:
    /// no tray in it, no back end, nothing planted, mm.
    pub(crate) fn mouths_side(&self, c: &ImpressionColumn, z: f64) -> f64 {
        let lifted = z - c.relief;
        let out = c.tray.place.out;
        let mut floor = (lifted - c.floor) * c.floor_slope;
        // Under the trough only: the floor of a raised end must not spread
        // beyond the flanges.
        floor = common(floor, out - c.section.outer.border_out, 1.0);
        if self.mouth.kind == Arch::Mandibular {
            floor = common(floor, c.section.inner.border_out - out, 1.0);
        }
        let inner = match self.mouth.kind {
            Arch::Maxillary => {
                let slope = (out + c.section.slope_out) * c.slope[0] + lifted * c.slope[1];
                common(slope, lifted - c.dome, 3.0)
            }
            Arch::Mandibular => flange([out, z], &c.section.inner),
        };
        let material = joined(floor, inner, 2.5);
        joined(material, flange([out, z], &c.section.outer), 2.5)
    }

    /// Both parts at a point.
    #[must_use]
    pub fn parts(&self, c: &ImpressionColumn, z: f64) -> Parts {
        let tray = self.tray.distance(&c.tray, z);
        let mut material = self.mouths_side(c, z);
        material = joined(material, tray.shell - LEAST_COVER_MM, 0.4);
        let behind = c.tray.behind.max(0.0);
        let limit = tray.outer_face - self.overflow(c, z) - self.plug(c) + 0.35 * behind;
        material = common(material, limit, 0.7);
        material = common(material, c.back, 2.4);
        if c.spots != 0 {
            let p = Point3::new(c.plan[0], c.plan[1], z);
            for (i, spot) in self.spots.iter().enumerate() {
                if c.spots & (1 << i) != 0 {
                    let cover = spot.cover(&p);
                    // A soft brim, but nothing softened where material is thin.
                    let brim = (cover - 0.9).clamp(0.4, 1.6);
                    material = common(material, tray.shell - cover, brim);
                }
            }
        }
        for (i, strip) in self.bare_edges.iter().enumerate() {
            if c.bare_edges & (1 << i) != 0 {
                let cover = strip.cover(&Point3::new(c.plan[0], c.plan[1], z));
                let brim = (cover - 0.9).clamp(0.1, 1.6);
                material = common(material, tray.shell - cover, brim);
            }
        }
        for (i, pad) in self.pads.iter().enumerate() {
            if c.pads & (1 << i) != 0 {
                let p = Point3::new(c.plan[0], c.plan[1], z);
                material = material.min(pad.distance(&p, tray.shell));
            }
        }
        for (i, bead) in self.beads.iter().enumerate() {
            if c.beads & (1 << i) != 0 {
                let distance = bead.distance(&Point3::new(c.plan[0], c.plan[1], z));
                material = if bead.solid {
                    material.min(distance)
                } else {
                    material.max(-distance)
                };
            }
        }
        Parts {
            tray: tray.surface,
            material,
        }
    }

    /// Whether a point of the surface lies on the inner side of the border.
    #[must_use]
    pub fn is_tissue_side(&self, p: &Point3<f64>) -> bool {
        let column = self.column(p.x, p.y);
        let section = &column.section;
        let out = column.tray.place.out;
        let middle = |f: &Flange| {
            let share = (p.z - BASE_Z) / (f.border_z - f.roll - BASE_Z).max(1.0);
            f.base_out + (f.border_out - f.base_out) * share
        };
        let over_tray =
            self.tray.distance(&column.tray, p.z).outer_face < -0.5 * self.tray.thickness();
        let within = out < middle(&section.outer)
            && (self.mouth.palate.is_some() || out > middle(&section.inner));
        let before_back = column.tray.behind < -1.0 || self.faces_up(p);
        over_tray && within && before_back
    }

    /// Whether the surface at a point faces up more than back.
    fn faces_up(&self, p: &Point3<f64>) -> bool {
        let step = Vector3::new(0.0, 1e-3, 1e-3);
        self.at(&(p + step)) > self.at(&(p - step))
    }

    /// Lowest and highest corner of a box around everything, mm.
    #[must_use]
    pub fn bounds(&self) -> (Point3<f64>, Point3<f64>) {
        let arch = self.tray.arch();
        let flange = |s: &Section| s.outer.border_z.max(s.inner.border_z);
        let border = self
            .mouth
            .sections
            .iter()
            .map(|(_, s)| flange(s))
            .fold(0.0, f64::max);
        let palate = self.mouth.palate.map_or(0.0, |p| p.vault);
        let (lowest, front) = self.tray.low_and_front();
        let aside = arch.half_width() * 1.12 + 14.0;
        let further = self.mouth.behind.shifts.into_iter().fold(0.0, f64::max);
        (
            Point3::new(
                -aside,
                -self.mouth.limb_length - 8.5 - further,
                lowest - 0.5,
            ),
            Point3::new(aside, front + 1.5, border.max(palate) + 1.5),
        )
    }

    /// How much further material stands out through a hole and a little round it, mm.
    fn plug(&self, c: &ImpressionColumn) -> f64 {
        /// So far a plug stands out of its hole, and so fast it ends beside it.
        const STANDS_OUT_MM: f64 = 0.6;
        const SLOPE: f64 = 2.0;
        let most = 0.5 * self.tray.thickness() + STANDS_OUT_MM;
        (most - SLOPE * c.tray.off_hole.max(0.0)).max(0.0)
    }

    /// How far material may stand out from the tray's outer face, mm; below 0
    /// where it ends inside the shell, out of sight.
    fn overflow(&self, c: &ImpressionColumn, z: f64) -> f64 {
        let (flange, top) = if c.tray.place.out > 0.0 {
            (&c.section.outer, c.tray.tops[0])
        } else {
            (&c.section.inner, c.tray.tops[1])
        };
        if flange.overflow <= 0.0 {
            return -0.5 * self.tray.thickness();
        }
        let share = ((z - flange.overflow_z) / self.overflow_ramp).clamp(-1.0, 1.0);
        let hidden = 0.5 * self.tray.thickness();
        let size = if share < 0.0 { hidden } else { flange.overflow };
        size * share + 2.0 * (z - (top - 0.8)).max(0.0)
    }
}

/// One bit for each answer; more than 64 are left out.
fn bits(answers: impl Iterator<Item = bool>) -> u64 {
    answers
        .take(64)
        .enumerate()
        .fold(0, |bits, (i, yes)| bits | u64::from(yes) << i)
}

fn flange(p: [f64; 2], f: &Flange) -> f64 {
    tapered_capsule(
        p,
        [f.border_out, f.border_z - f.roll, f.roll],
        [f.base_out, BASE_Z, f.base_radius],
    )
}

impl Solid for Impression {
    type Column = ImpressionColumn;

    fn column(&self, x: f64, y: f64) -> ImpressionColumn {
        let tray = self.tray.column(x, y);
        let section = self.mouth.sections.at(tray.place.along);
        let aside = tray.place.out - section.crest_out;
        let [raised, slope] = self.mouth.trough.rise(tray.place.along, aside);
        let near = tray.place.out.abs() < 20.0 || self.mouth.palate.is_some();
        ImpressionColumn {
            plan: [x, y],
            relief: if near { self.mouth.relief(x, y) } else { 0.0 },
            floor: section.crest_z + raised,
            floor_slope: 1.0 / (1.0 + slope * slope).sqrt(),
            dome: self.mouth.palate.map_or(0.0, |p| p.height(x, y)),
            slope: section.slope_angle.sin_cos().into(),
            back: self.mouth.back(x) - y,
            bare_edges: bits(
                self.bare_edges
                    .iter()
                    .map(|strip| strip.touches_column(x, y)),
            ),
            pads: bits(self.pads.iter().map(|pad| pad.touches_column(x, y))),
            spots: bits(self.spots.iter().map(|spot| spot.touches_column(x, y))),
            beads: bits(self.beads.iter().map(|bead| bead.touches_column(x, y))),
            tray,
            section,
        }
    }

    fn value(&self, column: &ImpressionColumn, z: f64) -> f64 {
        let parts = self.parts(column, z);
        parts.tray.min(parts.material)
    }
}

impl Solid for Tray {
    type Column = TrayColumn;

    fn column(&self, x: f64, y: f64) -> TrayColumn {
        Tray::column(self, x, y)
    }

    fn value(&self, column: &TrayColumn, z: f64) -> f64 {
        self.distance(column, z).surface
    }
}
