//! Parts of the arch by their place along and across the crest line.

use crate::frame::CrestLine;
use crate::words::{Arch, Side, Zone};
use nalgebra::Point3;

// Bounds between zones: common practice, no source.

/// Part of a limb, from the front, up to which the labial flange reaches.
const LABIAL_PART: f64 = 0.33;
/// Part of a limb from which tuberosity or retromolar region begins.
const DISTAL_PART: f64 = 0.85;
/// Half width of the ridge, mm.
const RIDGE_HALF_WIDTH_MM: f64 = 4.0;
/// Places nearer to the midline than this have no side, mm.
const MIDLINE_MM: f64 = 1.0;

/// Where zones lie on one impression; all places in local coordinates.
#[derive(Debug, Clone)]
pub struct ZoneMap {
    crest: CrestLine,
    arch: Arch,
    front: usize,
}

impl ZoneMap {
    /// The zones along a crest line.
    pub fn new(crest: CrestLine, arch: Arch) -> Self {
        let points = crest.points();
        let front = (0..points.len())
            .min_by(|&a, &b| points[a].x.abs().total_cmp(&points[b].x.abs()))
            .unwrap_or(0);
        Self { crest, arch, front }
    }

    /// The crest line that the zones lie along.
    pub fn crest(&self) -> &CrestLine {
        &self.crest
    }

    /// The crest line's points, local coordinates, mm.
    pub fn crest_points(&self) -> &[Point3<f64>] {
        self.crest.points()
    }

    /// The zone of a place.
    pub fn zone(&self, place: &Point3<f64>) -> Zone {
        let station = self.crest.nearest(place.xy());
        let bottom = &self.crest.points()[station];
        let off = (place - bottom).xy();
        let lateral = off.dot(&self.crest.outward(station));
        let last = self.crest.points().len() - 1;
        let part = if station < self.front {
            1.0 - station as f64 / self.front.max(1) as f64
        } else {
            (station - self.front) as f64 / (last - self.front).max(1) as f64
        };
        let behind = if station == 0 || station == last {
            (bottom.y - place.y).max(0.0)
        } else {
            0.0
        };
        match self.arch {
            Arch::Maxillary => self.maxillary(place, part, lateral, behind),
            Arch::Mandibular => mandibular(part, lateral, behind),
        }
    }

    /// The patient's side of a place; `None` near the midline.
    pub fn side(&self, place: &Point3<f64>) -> Option<Side> {
        let right = match self.arch {
            Arch::Maxillary => place.x,
            Arch::Mandibular => -place.x,
        };
        match right {
            r if r > MIDLINE_MM => Some(Side::Right),
            r if r < -MIDLINE_MM => Some(Side::Left),
            _ => None,
        }
    }

    fn maxillary(&self, place: &Point3<f64>, part: f64, lateral: f64, behind: f64) -> Zone {
        const NOTCH_BEHIND_MM: f64 = 2.0;
        const SEAL_MM: f64 = 6.0;
        let points = self.crest.points();
        let back = (points[0].y + points[points.len() - 1].y) / 2.0;
        let behind_front = points[self.front].y - place.y;
        if lateral > RIDGE_HALF_WIDTH_MM {
            return if part < LABIAL_PART {
                Zone::LabialFlange
            } else {
                Zone::BuccalFlange
            };
        }
        if lateral > -RIDGE_HALF_WIDTH_MM {
            return match behind {
                b if b > NOTCH_BEHIND_MM => Zone::HamularNotch,
                _ if part > DISTAL_PART => Zone::Tuberosity,
                _ => Zone::ResidualRidge,
            };
        }
        match place {
            p if p.y < back + SEAL_MM / 2.0 => Zone::PosteriorPalatalSeal,
            p if p.x.abs() < 3.5 && behind_front < 11.0 => Zone::IncisivePapilla,
            _ if behind_front < 20.0 => Zone::Rugae,
            _ => Zone::Palate,
        }
    }
}

fn mandibular(part: f64, lateral: f64, behind: f64) -> Zone {
    const SHELF_PART: f64 = 0.5;
    const SHELF_MM: f64 = 6.0;
    if lateral < -RIDGE_HALF_WIDTH_MM {
        return if part > DISTAL_PART {
            Zone::Retromylohyoid
        } else {
            Zone::LingualFlange
        };
    }
    if lateral > RIDGE_HALF_WIDTH_MM {
        return match part {
            p if p < LABIAL_PART => Zone::LabialFlange,
            p if p > DISTAL_PART => Zone::Distobuccal,
            p if p > SHELF_PART && lateral < SHELF_MM => Zone::BuccalShelf,
            _ => Zone::BuccalFlange,
        };
    }
    if part > DISTAL_PART || behind > 0.0 {
        Zone::RetromolarPad
    } else {
        Zone::ResidualRidge
    }
}
