//! How the stock trays of a shelf suit a mouth, before any impression in them: for each the
//! place of most even clearance, and what room it leaves there.
//!
//! The tissue surface is that of an impression, or of the mouth or a cast turned inside out.
//! A tray is moved, rigidly, until the clearance over its inside varies least, with places
//! near the tissue weighing more the nearer they come: it does not touch if it need not.

mod figures;
mod inside;
mod most_even;
mod shown;

pub use figures::{Clearance, EdgeToBorder, ShelfFit, Touch, TraySuits, WANTED_CLEARANCE_MM};
pub use shown::{FitShown, TrayInMouth};

use super::placing::{PreparedTray, facet_doubt_mm, starts};
use super::shelf::ShelfTray;
use crate::amount::Amount;
use crate::border::BorderPart;
use crate::impression::{Impression, Surface};
use crate::measuring::Measuring;
use crate::not_an_impression::NotAnImpression;
use crate::settings::MeasureSettings;
use crate::words::{Side, Zone};
use geometry::order::median;
use geometry::sampling::spread_over;
use geometry::signed_distance::{Beside, Solid};
use inside::Inside;
use mesh::Mesh;
use most_even::{most_even_of, over_tray};
use nalgebra::{Isometry3, Point3};
use rayon::prelude::*;
use std::collections::BTreeMap;
use std::f64::consts::SQRT_2;

/// Points that stand for the tissue surface where a tray is measured.
const POINTS: usize = 12_000;

/// Measures how the trays of a shelf suit a mouth. The scan (mm, any pose) shows an impression
/// of it, the mouth itself or a cast.
///
/// # Errors
/// When the scan shows nothing of these.
pub fn fit(
    scan: &Mesh,
    shelf: &[ShelfTray],
    settings: &MeasureSettings,
) -> Result<ShelfFit, NotAnImpression> {
    in_mouth(scan, settings, |mouth| mouth.fit(shelf))
}

/// As [`fit`], with what pictures show of it.
///
/// # Errors
/// As [`fit`].
pub fn fit_shown(
    scan: &Mesh,
    shelf: &[ShelfTray],
    settings: &MeasureSettings,
) -> Result<(ShelfFit, FitShown), NotAnImpression> {
    in_mouth(scan, settings, |mouth| {
        let fit = mouth.fit(shelf);
        let shown = shown::shown(mouth.impression, mouth.border_line(), shelf, &fit);
        (fit, shown)
    })
}

/// What comes of the mouth that a scan shows.
fn in_mouth<T>(
    scan: &Mesh,
    settings: &MeasureSettings,
    then: impl FnOnce(&Mouth<'_>) -> T,
) -> Result<T, NotAnImpression> {
    let as_given = Measuring::new(scan, None, settings);
    match as_given.frame() {
        Ok(_) => Ok(then(&Mouth::of(&as_given, settings, false)?)),
        Err(NotAnImpression::Positive | NotAnImpression::Cast) => {
            let negative = Surface::of(scan).mesh.turned_inside_out();
            let measuring = Measuring::new(&negative, None, settings);
            Ok(then(&Mouth::of(&measuring, settings, true)?))
        }
        Err(why) => Err(why.clone()),
    }
}

/// The tissue that trays are tried in.
struct Mouth<'a> {
    impression: &'a Impression,
    is_positive: bool,
    /// Places spread over the tissue surface, local coordinates.
    tissue: Vec<Point3<f64>>,
    /// Points of the border, local coordinates.
    border: Vec<BorderPlace>,
    /// Expanded uncertainty (k = 2) of a distance but for the tray's facets, mm.
    uncertainty_mm: f64,
}

struct BorderPlace {
    place: Point3<f64>,
    part: BorderPart,
    zone: Zone,
    side: Option<Side>,
}

impl<'a> Mouth<'a> {
    fn of(
        measuring: &'a Measuring<'_>,
        settings: &MeasureSettings,
        is_positive: bool,
    ) -> Result<Self, NotAnImpression> {
        let found = measuring.frame().map_err(Clone::clone)?;
        if let Some(shell) = &found.shell {
            return Err(shell.clone());
        }
        let impression = measuring.impression().ok_or(NotAnImpression::NoTrough)?;
        let border = measuring.border().and_then(Result::ok);
        let noise_mm = measuring.noise_mm().unwrap_or(0.0);
        let is_tissue = &impression.regions.is_tissue;
        let local_from_scan = impression.frame.local_from_scan();
        let stations = border.iter().flat_map(|border| &border.stations);
        Ok(Self {
            tissue: spread_over(&impression.local, POINTS, |t| is_tissue[t])
                .iter()
                .map(|s| s.point)
                .collect(),
            border: stations
                .map(|station| BorderPlace {
                    place: local_from_scan * station.point,
                    part: station.part,
                    zone: station.zone,
                    side: station.side,
                })
                .collect(),
            uncertainty_mm: (2.0 * noise_mm)
                .hypot(SQRT_2 * settings.scanner_uncertainty_mm)
                .hypot(2.0 * facet_doubt_mm(impression.edge_mm)),
            impression,
            is_positive,
        })
    }

    /// The border, scan coordinates, mm.
    fn border_line(&self) -> Vec<Point3<f64>> {
        let scan_from_local = self.impression.frame.local_from_scan().inverse();
        let places = self.border.iter();
        places
            .map(|border| scan_from_local * border.place)
            .collect()
    }

    /// How the trays of a shelf suit.
    fn fit(&self, shelf: &[ShelfTray]) -> ShelfFit {
        ShelfFit {
            arch: self.impression.frame.arch,
            is_positive: self.is_positive,
            trays: shelf
                .par_iter()
                .map(|tray| self.suited(&tray.scan))
                .collect(),
        }
    }

    /// How a tray suits.
    fn suited(&self, tray: &PreparedTray) -> TraySuits {
        /// Jaws found less surely than this may be either.
        const SURE: f64 = 0.3;
        let Some(inside) = Inside::of(tray) else {
            return TraySuits::NotPlaced;
        };
        let frame = &self.impression.frame;
        let sure = inside.arch_confidence.min(frame.arch_confidence) >= SURE;
        if sure && inside.arch != frame.arch {
            return TraySuits::OtherJaw;
        }
        let solid = inside.solid();
        let Some(pose) = most_even_of(&self.tissue, &solid, &starts(tray)) else {
            return TraySuits::NotPlaced;
        };
        self.clearance(&inside, &solid, &pose, tray.median_edge_mm())
            .map_or(TraySuits::NotPlaced, |found| {
                TraySuits::Placed(Box::new(found))
            })
    }

    fn clearance(
        &self,
        inside: &Inside,
        solid: &Solid<'_>,
        pose: &Isometry3<f64>,
        tray_edge_mm: f64,
    ) -> Option<Clearance> {
        /// Part of the places that the least stands over: single points stray by noise.
        const NEAREST_PART: f64 = 0.002;
        let over = over_tray(&self.tissue, solid, pose);
        let mut mm: Vec<f64> = over.iter().map(|(_, beside)| beside.mm).collect();
        mm.sort_by(f64::total_cmp);
        let at = |part: f64| mm.get((mm.len() as f64 * part) as usize).copied();
        let least = at(NEAREST_PART)?;
        let wanted = mm
            .iter()
            .filter(|mm| WANTED_CLEARANCE_MM.contains(mm))
            .count();
        let amount = |value| Amount {
            value,
            uncertainty: self
                .uncertainty_mm
                .hypot(2.0 * facet_doubt_mm(tray_edge_mm)),
        };
        Some(Clearance {
            tray_from_scan: pose * self.impression.frame.local_from_scan(),
            least_mm: amount(least),
            median_mm: amount(at(0.5)?),
            unevenness_mm: (at(0.84)? - at(0.16)?) / 2.0,
            wanted_share: wanted as f64 / over.len() as f64,
            over_tray_share: over.len() as f64 / self.tissue.len() as f64,
            over_tray_mm2: over.len() as f64 * self.each_mm2(),
            touches: self.touches(&over),
            edges: self.edges(&inside.rim, pose),
        })
    }

    /// Area that each place of the tissue stands for, mm².
    fn each_mm2(&self) -> f64 {
        self.impression.regions.tissue_mm2 / self.tissue.len().max(1) as f64
    }

    /// Where the tray reaches into the tissue, by parts of the arch.
    fn touches(&self, over: &[(Point3<f64>, Beside)]) -> Vec<Touch> {
        /// Less of it is noise, mm².
        const LEAST_MM2: f64 = 2.0;
        let zones = &self.impression.zones;
        let scan_from_local = self.impression.frame.local_from_scan().inverse();
        let mut found: BTreeMap<(Zone, Option<Side>), Touch> = BTreeMap::new();
        for (place, beside) in over.iter().filter(|(_, beside)| beside.mm < 0.0) {
            let (zone, side) = (zones.zone(place), zones.side(place));
            let touch = found.entry((zone, side)).or_insert_with(|| Touch {
                zone,
                side,
                depth_mm: 0.0,
                area_mm2: 0.0,
                at: scan_from_local * place,
            });
            touch.area_mm2 += self.each_mm2();
            if -beside.mm > touch.depth_mm {
                touch.depth_mm = -beside.mm;
                touch.at = scan_from_local * place;
            }
        }
        found
            .into_values()
            .filter(|touch| touch.area_mm2 >= LEAST_MM2)
            .collect()
    }

    /// How far the tray's edge ends short of the border, by parts of the arch.
    fn edges(&self, rim: &[Point3<f64>], pose: &Isometry3<f64>) -> Vec<EdgeToBorder> {
        let local_from_tray = pose.inverse();
        let rim: Vec<Point3<f64>> = rim.iter().map(|p| local_from_tray * p).collect();
        let mut found: BTreeMap<(Zone, Option<Side>), Vec<f64>> = BTreeMap::new();
        for border in &self.border {
            let nearest = rim.iter().min_by(|a, b| {
                let [a, b] = [a, b].map(|p| (*p - border.place).norm_squared());
                a.total_cmp(&b)
            });
            if let Some(nearest) = nearest {
                let off = border.place - nearest;
                let beyond = match border.part {
                    BorderPart::Outer | BorderPart::Lingual => off.z,
                    BorderPart::Posterior => -off.y,
                };
                let all = found.entry((border.zone, border.side)).or_default();
                all.push(off.norm().copysign(beyond));
            }
        }
        let edge = |((zone, side), mut mm): (_, Vec<f64>)| {
            Some(EdgeToBorder {
                zone,
                side,
                least_mm: mm.iter().copied().fold(f64::INFINITY, f64::min),
                median_mm: median(&mut mm)?,
            })
        };
        found.into_iter().filter_map(edge).collect()
    }
}
