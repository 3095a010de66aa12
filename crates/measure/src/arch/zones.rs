//! Parts of the arch by their place along and across the crest line.

use crate::anatomy;
use crate::frame::CrestLine;
use crate::words::{Arch, Side, Zone};
use nalgebra::Point3;

/// Where zones lie on one impression; all places in local coordinates.
#[derive(Debug, Clone)]
pub(crate) struct ZoneMap {
    crest: CrestLine,
    arch: Arch,
    front: usize,
}

impl ZoneMap {
    /// The zones along a crest line.
    pub(crate) fn new(crest: CrestLine, arch: Arch) -> Self {
        let points = crest.points();
        let front = (0..points.len())
            .min_by(|&a, &b| points[a].x.abs().total_cmp(&points[b].x.abs()))
            .unwrap_or(0);
        Self { crest, arch, front }
    }

    /// The crest line that the zones lie along.
    pub(crate) fn crest(&self) -> &CrestLine {
        &self.crest
    }

    /// The crest line's points, local coordinates, mm.
    pub(crate) fn crest_points(&self) -> &[Point3<f64>] {
        self.crest.points()
    }

    /// The zone of a place.
    pub(crate) fn zone(&self, place: &Point3<f64>) -> Zone {
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
    pub(crate) fn side(&self, place: &Point3<f64>) -> Option<Side> {
        let right = match self.arch {
            Arch::Maxillary => place.x,
            Arch::Mandibular => -place.x,
        };
        match right {
            r if r > anatomy::NO_SIDE_WITHIN_MM => Some(Side::Right),
            r if r < -anatomy::NO_SIDE_WITHIN_MM => Some(Side::Left),
            _ => None,
        }
    }

    fn maxillary(&self, place: &Point3<f64>, part: f64, lateral: f64, behind: f64) -> Zone {
        let points = self.crest.points();
        let back = (points[0].y + points[points.len() - 1].y) / 2.0;
        let behind_front = points[self.front].y - place.y;
        if lateral > anatomy::RIDGE_HALF_WIDTH_MM {
            return if part < anatomy::LABIAL_FLANGE_PART {
                Zone::LabialFlange
            } else {
                Zone::BuccalFlange
            };
        }
        if lateral > -anatomy::RIDGE_HALF_WIDTH_MM {
            return match behind {
                b if b > anatomy::HAMULAR_NOTCH_BEHIND_END_MM => Zone::HamularNotch,
                _ if part > anatomy::DISTAL_PART => Zone::Tuberosity,
                _ => Zone::ResidualRidge,
            };
        }
        match place {
            p if p.y < back + anatomy::POSTERIOR_SEAL_LENGTH_MM / 2.0 => Zone::PosteriorPalatalSeal,
            p if p.x.abs() < anatomy::PAPILLA_ZONE_ASIDE_MM
                && behind_front < anatomy::PAPILLA_ZONE_BEHIND_FRONT_MM =>
            {
                Zone::IncisivePapilla
            }
            _ if behind_front < anatomy::RUGAE_BEHIND_FRONT_MM[1] => Zone::Rugae,
            _ => Zone::Palate,
        }
    }
}

fn mandibular(part: f64, lateral: f64, behind: f64) -> Zone {
    if lateral < -anatomy::RIDGE_HALF_WIDTH_MM {
        return if part > anatomy::DISTAL_PART {
            Zone::Retromylohyoid
        } else {
            Zone::LingualFlange
        };
    }
    if lateral > anatomy::RIDGE_HALF_WIDTH_MM {
        return match part {
            p if p < anatomy::LABIAL_FLANGE_PART => Zone::LabialFlange,
            p if p > anatomy::DISTAL_PART => Zone::Distobuccal,
            p if p > anatomy::BUCCAL_SHELF_FROM_PART
                && lateral < anatomy::BUCCAL_SHELF_REACH_MM =>
            {
                Zone::BuccalShelf
            }
            _ => Zone::BuccalFlange,
        };
    }
    if part > anatomy::DISTAL_PART || behind > 0.0 {
        Zone::RetromolarPad
    } else {
        Zone::ResidualRidge
    }
}
