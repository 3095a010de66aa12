//! What is sent in place of an impression: casts, denture bases, record rims,
//! empty trays and halves, made from the mouths of the phantoms.

use crate::impression::{Impression, ImpressionColumn};
use crate::jaw::Arch;
use crate::mesher::{self, Grid, Solid};
use crate::options::{Options, Pose};
use crate::rebuilt::rebuilt;
use crate::shaping::{common, joined, norm};
use crate::{Phantom, scan};
use mesh::{Mesh, Topology};
use nalgebra::Point3;
use rand::{Rng, RngExt, SeedableRng};
use rand_pcg::Pcg64;

/// What is sent in place of an impression.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Other {
    /// A cast with vestibule, land and trimmed base, scanned all round.
    Cast,
    /// The same, its underside not scanned.
    CastWithoutUnderside,
    /// The tissue surface of a cast alone: no base, no thickness.
    CastShell,
    /// A cast with a row of teeth.
    ToothedCast,
    /// A denture base, scanned all round.
    Base,
    /// The polished side of a denture base alone.
    PolishedSide,
    /// A record base with its wax rim.
    RecordRim,
    /// An empty tray without holes.
    SolidTray,
    /// An empty tray with holes for retention.
    PerforatedTray,
    /// One half of an impression, cut near the midline.
    HalfImpression,
    /// One half of an impression, seen from the tissue's side.
    HalfTissueSide,
    /// One half of a cast, cut near the midline.
    HalfCast,
}

impl Other {
    /// All of them.
    pub const ALL: [Self; 12] = [
        Self::Cast,
        Self::CastWithoutUnderside,
        Self::CastShell,
        Self::ToothedCast,
        Self::Base,
        Self::PolishedSide,
        Self::RecordRim,
        Self::SolidTray,
        Self::PerforatedTray,
        Self::HalfImpression,
        Self::HalfTissueSide,
        Self::HalfCast,
    ];

    /// Its scan in a random pose, made for the mouth of a seed.
    #[must_use]
    pub fn scan(self, arch: Arch, seed: u64, edge_mm: f64) -> Mesh {
        /// The phantom's own scans are not used.
        const COARSE_MM: f64 = 4.0;
        let mouth = Phantom::new(&Options {
            arch,
            seed,
            edge_mm: COARSE_MM,
            tray_edge_mm: COARSE_MM,
            pose: Pose::AsMade,
            handle: !seed.is_multiple_of(3),
            ..Options::default()
        });
        let mut rng = Pcg64::seed_from_u64(seed.wrapping_mul(64).wrapping_add(40));
        let body = Body::random(self, mouth.truth.impression, &mut rng);
        let seen = body.seen(&body.meshed(edge_mm));
        let pose = scan::motion(Pose::Random, &mut rng);
        scan::roughened(largest_part(&seen).moved(&pose), 0.015, &mut rng)
    }

    fn is_half(self) -> bool {
        matches!(
            self,
            Self::HalfImpression | Self::HalfTissueSide | Self::HalfCast
        )
    }
}

/// One of them as a solid. Lengths in mm.
struct Body {
    what: Other,
    impression: Impression,
    /// Height of a cast's underside.
    underside_z: f64,
    /// Width of the land outside the vestibule.
    land: f64,
    /// How far the land lies below the border's height.
    vestibule: f64,
    /// Whether a lower cast is filled in where the tongue lies.
    tongue_filled: bool,
    /// Thickness of a denture base.
    thickness: f64,
    /// Half the width of a wax rim, and the height of its face.
    rim: [f64; 2],
    /// Distance of holes from each other, and their radius.
    holes: [f64; 2],
    /// Side of x that is kept of a half, and where it ends.
    kept: [f64; 2],
}

/// A cast and its teeth end so far behind the mouth's surface, mm.
const BEHIND_MM: f64 = 3.0;
/// Distance from tooth to tooth, half widths along and across the arch, height, mm.
const TEETH_MM: [f64; 4] = [7.6, 3.1, 3.8, 7.5];

impl Body {
    fn random(what: Other, impression: Impression, rng: &mut impl Rng) -> Self {
        let mouth = &impression.mouth;
        let heights = mouth
            .sections
            .iter()
            .map(|(_, s)| s.outer.border_z.max(s.inner.border_z));
        let highest = heights.fold(mouth.palate.map_or(0.0, |p| p.vault), f64::max);
        Self {
            what,
            underside_z: highest + rng.random_range(8.0..15.0),
            land: rng.random_range(2.0..5.0),
            vestibule: rng.random_range(1.0..3.5),
            tongue_filled: rng.random_bool(0.5),
            thickness: rng.random_range(2.0..2.8),
            rim: [rng.random_range(3.0..5.0), -rng.random_range(9.5..13.0)],
            holes: [rng.random_range(5.0..8.0), rng.random_range(1.0..1.5)],
            kept: [
                if rng.random_bool(0.5) { 1.0 } else { -1.0 },
                rng.random_range(-2.0..2.0),
            ],
            impression,
        }
    }

    fn meshed(&self, edge_mm: f64) -> Mesh {
        let (low, high) = self.impression.bounds();
        let low = low - nalgebra::Vector3::new(8.0, 8.0, 16.0);
        let high = Point3::new(
            high.x + 8.0,
            high.y + 8.0,
            high.z.max(self.underside_z) + 2.0,
        );
        let (vertices, triangles) = mesher::surface(self, &Grid::covering(low, high, edge_mm));
        rebuilt(vertices, triangles, None)
    }

    /// The part of the surface that is scanned.
    fn seen(&self, made: &Mesh) -> Mesh {
        let all =
            |is: &dyn Fn(&Point3<f64>) -> bool| made.filtered(|t| made.corners(t).iter().all(is));
        let on_tissue = |p: &Point3<f64>| self.impression.is_tissue_side(p);
        match self.what {
            Other::CastWithoutUnderside => all(&|p| p.z < self.underside_z - 0.4),
            Other::CastShell | Other::HalfTissueSide => all(&on_tissue),
            Other::PolishedSide => made.filtered(|t| !made.corners(t).iter().all(on_tissue)),
            _ => made.clone(),
        }
    }

    fn cast(&self, c: &ImpressionColumn, z: f64) -> f64 {
        let (s, out) = (&c.section, c.tray.place.out);
        let mut cast = common(
            -self.impression.mouths_side(c, z),
            z - self.underside_z,
            0.3,
        );
        let outline = out - (s.outer.border_out + s.outer.roll + self.land);
        cast = common(cast, outline, 0.5);
        let beyond = |from: f64, top: f64| from.min(top - self.vestibule - z);
        cast = cast.max(beyond(out - s.outer.border_out, s.outer.border_z));
        if self.impression.mouth.kind == Arch::Mandibular {
            cast = cast.max(beyond(s.inner.border_out - out, s.inner.border_z));
            if !self.tongue_filled {
                let inside = s.inner.border_out - s.inner.roll - self.land;
                cast = common(cast, inside - out, 0.5);
            }
        }
        common(cast, c.back - BEHIND_MM, 0.5)
    }

    fn teeth(&self, c: &ImpressionColumn, z: f64) -> f64 {
        let [apart, along, across, height] = TEETH_MM;
        let place = c.tray.place;
        let number = (place.along / apart).round();
        let last = ((self.impression.mouth.reach(1.0) - 6.0) / apart).floor();
        let off = [
            (place.along - number.clamp(-last, last) * apart) / along,
            (place.out - c.section.crest_out) / across,
        ];
        let rho = norm(off[0], off[1]);
        let top = c.section.crest_z - height + 2.0 * rho * rho;
        ((rho - 1.0) * along)
            .max((top - z) * 0.8)
            .max(z - c.section.crest_z - 2.0)
    }

    fn base(&self, c: &ImpressionColumn, z: f64) -> f64 {
        let mouth = self.impression.mouths_side(c, z);
        let below = c.floor + c.relief - self.thickness - z;
        let shell = common(mouth, -(mouth + self.thickness), 0.4);
        common(common(shell, below, 1.0), c.back, 1.0)
    }

    fn rim(&self, c: &ImpressionColumn, z: f64) -> f64 {
        let place = c.tray.place;
        let [half_width, face_z] = self.rim;
        let aside = (place.out - c.section.crest_out).abs() - half_width;
        let end = place.along.abs() - (self.impression.mouth.reach(place.along) - 9.0);
        aside.max(end).max(face_z - z).max(z - c.floor + 0.5)
    }

    fn tray(&self, c: &ImpressionColumn, z: f64) -> f64 {
        self.impression.tray.distance(&c.tray, z).surface
    }

    fn holes(&self, c: &ImpressionColumn, z: f64) -> f64 {
        /// Holes keep so far from the walls, and those of a wall from the floor.
        const FROM_WALL_MM: f64 = 4.5;
        let [apart, radius] = self.holes;
        let off = |x: f64| x - (x / apart).round() * apart;
        let place = c.tray.place;
        let from_walls = match self.impression.mouth.kind {
            Arch::Maxillary => FROM_WALL_MM - place.out,
            Arch::Mandibular => FROM_WALL_MM - place.out.abs(),
        };
        let through_floor = (radius - norm(off(place.along), off(place.out))).min(from_walls);
        let through_wall = (radius - norm(off(place.along), off(z)))
            .min(place.out - FROM_WALL_MM - 1.5)
            .min(z - 1.0);
        through_floor.max(through_wall)
    }
}

impl Solid for Body {
    type Column = ImpressionColumn;

    fn column(&self, x: f64, y: f64) -> ImpressionColumn {
        self.impression.column(x, y)
    }

    fn value(&self, c: &ImpressionColumn, z: f64) -> f64 {
        let whole = match self.what {
            Other::Cast | Other::CastWithoutUnderside | Other::CastShell | Other::HalfCast => {
                self.cast(c, z)
            }
            Other::ToothedCast => self.cast(c, z).min(self.teeth(c, z)),
            Other::Base | Other::PolishedSide => self.base(c, z),
            Other::RecordRim => joined(self.base(c, z), self.rim(c, z), 1.0),
            Other::SolidTray => self.tray(c, z),
            Other::PerforatedTray => self.tray(c, z).max(self.holes(c, z)),
            Other::HalfImpression | Other::HalfTissueSide => self.impression.value(c, z),
        };
        if self.what.is_half() {
            let [side, end] = self.kept;
            whole.max(side * (end - c.plan[0]))
        } else {
            whole
        }
    }
}

fn largest_part(mesh: &Mesh) -> Mesh {
    let topology = Topology::of(mesh);
    let part = topology.component_of_triangle();
    let mut size = vec![0; topology.components()];
    for &p in part {
        size[p as usize] += 1;
    }
    let largest = (0..size.len()).max_by_key(|&p| size[p]).unwrap_or(0);
    mesh.filtered(|t| part[t] as usize == largest)
}
