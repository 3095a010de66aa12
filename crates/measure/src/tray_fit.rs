//! How the tray suits the mouth and how it was seated: how far its edge stands
//! from the border, and the small motion and change of width that would have
//! made the cover even.
//!
//! A small motion of the tray changes the cover at a place by what the motion
//! has along the line from tray to tissue. The motion, the change of width and
//! the even cover that leave the least squares of what remains follow from one
//! linear system.

pub use crate::amount::Amount;
use crate::anatomy;
use crate::border::Border;
use crate::cover::Cover;
use crate::impression::Impression;
use crate::tray::LocalTray;
use crate::words::{Arch, Side, Zone};
use geometry::order::median;
use nalgebra::{Point3, SMatrix, SVector, Vector3};
use std::collections::BTreeMap;

/// How the tray suits the mouth.
#[derive(Debug, Clone, PartialEq)]
pub struct TrayFit {
    /// Each part of the arch, in order.
    pub zones: Vec<ZoneFit>,
    /// How it was seated; `None` where too little cover is known.
    pub seating: Option<Seating>,
}

/// The tray in one part of the arch.
#[derive(Debug, Clone, PartialEq)]
pub struct ZoneFit {
    /// Part of the arch.
    pub zone: Zone,
    /// Patient's side; `None` on the midline.
    pub side: Option<Side>,
    /// Median distance from the tray's edge to the border, mm; `None` where
    /// there is no border.
    pub edge_to_border_mm: Option<Amount>,
    /// Median cover, mm; `None` where it is not known.
    pub cover_mm: Option<Amount>,
}

/// Where the tray stood beside the place where its cover would have been most
/// even. Positive toward the patient's right, the front, and the tissue.
#[derive(Debug, Clone, PartialEq)]
pub struct Seating {
    /// Too far to the patient's right, mm.
    pub right_mm: Amount,
    /// Too far to the front, mm.
    pub anterior_mm: Amount,
    /// Front nearer to the tissue than the back, degrees.
    pub front_up_deg: Amount,
    /// The patient's right nearer to the tissue than the left, degrees.
    pub right_up_deg: Amount,
    /// Front turned toward the patient's right, degrees.
    pub turned_right_deg: Amount,
    /// Wider than would have been even, mm over the width of the arch.
    pub wider_mm: Amount,
    /// Standard deviation of the cover, mm.
    pub cover_sd_mm: f64,
    /// What would be left of it, mm.
    pub even_sd_mm: f64,
}

/// Places that the seating is told from.
const PLACES: usize = 3000;
/// Nearest places of the tray whose line to the tissue leans further from the
/// tray's normal than this (cosine) lie on its edge.
const SQUARE: f64 = 0.9;
/// Cover varies together over this distance, mm: how many places are
/// independent follows. Common practice, no source.
const TOGETHER_MM: f64 = 10.0;

/// A place of the tissue surface over the tray.
struct Over {
    place: Point3<f64>,
    /// Unit vector from the tray.
    away: Vector3<f64>,
    cover_mm: f64,
}

/// How a registered tray suits.
pub(crate) fn measure(
    impression: &Impression,
    tray: LocalTray<'_>,
    cover: &Cover,
    border: Option<&Border>,
) -> TrayFit {
    TrayFit {
        zones: zones(impression, cover, border),
        seating: seating(
            &over_tray(impression, tray, cover),
            cover.area_judged_mm2 / TOGETHER_MM.powi(2),
            impression.frame.arch,
        ),
    }
}

fn zones(impression: &Impression, cover: &Cover, border: Option<&Border>) -> Vec<ZoneFit> {
    type Part = (Zone, Option<Side>);
    let mut edges: BTreeMap<Part, (Vec<f64>, f64)> = BTreeMap::new();
    for station in border.iter().flat_map(|border| &border.stations) {
        if let Ok(overlap) = station.overlap {
            let entry = edges.entry((station.zone, station.side)).or_default();
            entry.0.push(overlap.mm);
            entry.1 = entry.1.max(overlap.uncertainty_mm);
        }
    }
    let mut covers: BTreeMap<Part, Vec<f64>> = BTreeMap::new();
    for (place, mm) in impression.local.vertices().iter().zip(&cover.at_vertex_mm) {
        if let Some(mm) = mm {
            let part = (impression.zones.zone(place), impression.zones.side(place));
            covers.entry(part).or_default().push(*mm);
        }
    }
    let mut parts: Vec<Part> = edges.keys().chain(covers.keys()).copied().collect();
    parts.sort_unstable();
    parts.dedup();
    parts
        .into_iter()
        .map(|part| ZoneFit {
            zone: part.0,
            side: part.1,
            edge_to_border_mm: edges.remove(&part).and_then(|(mut mm, uncertainty)| {
                Some(Amount {
                    value: median(&mut mm)?,
                    uncertainty,
                })
            }),
            cover_mm: covers.remove(&part).and_then(|mut mm| {
                Some(Amount {
                    value: median(&mut mm)?,
                    uncertainty: cover.uncertainty_mm,
                })
            }),
        })
        .collect()
}

fn over_tray(impression: &Impression, tray: LocalTray<'_>, cover: &Cover) -> Vec<Over> {
    let known: Vec<(Point3<f64>, f64)> = (impression.local.vertices().iter())
        .zip(&cover.at_vertex_mm)
        .filter_map(|(place, mm)| Some((*place, (*mm)?)))
        .filter(|(_, mm)| *mm < anatomy::GREATEST_MATERIAL_MM)
        .collect();
    let every = known.len().div_ceil(PLACES).max(1);
    known
        .iter()
        .step_by(every)
        .filter_map(|&(place, cover_mm)| {
            let in_tray = tray.in_tray_scan(&place);
            let nearest = tray.index().nearest(&in_tray, f64::INFINITY)?;
            let away = place - tray.out_of_tray(&nearest.point);
            let normal = tray.mesh().area_vector(nearest.triangle as usize);
            let normal = normal.try_normalize(0.0)?;
            // Where tray shows the line has no length to speak of.
            let away = away.try_normalize(0.05).unwrap_or(normal);
            (away.dot(&normal) > SQUARE).then_some(Over {
                place,
                away,
                cover_mm,
            })
        })
        .collect()
}

/// Unknowns: shift (x, y, z), turns about x, y, z, widening, the even cover.
const UNKNOWNS: usize = 8;

/// The motion that would have made the cover even; all in local coordinates
/// with z toward the tissue and y to the front. `independent` is how many
/// places vary by themselves.
fn seating(over: &[Over], independent: f64, arch: Arch) -> Option<Seating> {
    const LEAST_PLACES: usize = 100;
    if over.len() < LEAST_PLACES {
        return None;
    }
    let count = over.len() as f64;
    let centre = over.iter().map(|o| o.place.coords).sum::<Vector3<f64>>() / count;
    let half_width = over
        .iter()
        .map(|o| (o.place.x - centre.x).abs())
        .fold(1.0, f64::max);
    let row = |o: &Over| {
        let r = o.place.coords - centre;
        let turn = r.cross(&o.away);
        // Widening moves each half of the tray away from the midline.
        let wider = o.away.x * r.x / half_width;
        SVector::<f64, UNKNOWNS>::from([
            o.away.x, o.away.y, o.away.z, turn.x, turn.y, turn.z, wider, 1.0,
        ])
    };
    let rows: Vec<SVector<f64, UNKNOWNS>> = over.iter().map(row).collect();
    let mut normal = SMatrix::<f64, UNKNOWNS, UNKNOWNS>::zeros();
    let mut right = SVector::<f64, UNKNOWNS>::zeros();
    for (row, o) in rows.iter().zip(over) {
        normal.ger(1.0 / count, row, row, 1.0);
        right.axpy(o.cover_mm / count, row, 1.0);
    }
    let inverse = normal.cholesky()?.inverse();
    let found = inverse * right;
    let left: Vec<f64> = (rows.iter().zip(over))
        .map(|(row, o)| o.cover_mm - row.dot(&found))
        .collect();
    let mean = over.iter().map(|o| o.cover_mm).sum::<f64>() / count;
    let variance =
        |values: &mut dyn Iterator<Item = f64>| values.map(|off| off * off).sum::<f64>() / count;
    let left_variance = variance(&mut left.iter().copied());
    let free = (independent - UNKNOWNS as f64).max(1.0);
    let doubt = |k: usize| 2.0 * (left_variance * inverse[(k, k)] / free).sqrt();
    // The motion found would mend it: the tray stood off by the opposite.
    let amount = |k: usize, factor: f64| Amount {
        value: -found[k] * factor,
        uncertainty: doubt(k) * factor.abs(),
    };
    let to_right = match arch {
        Arch::Maxillary => 1.0,
        Arch::Mandibular => -1.0,
    };
    let deg = 1f64.to_degrees();
    Some(Seating {
        right_mm: amount(0, to_right),
        anterior_mm: amount(1, 1.0),
        front_up_deg: amount(3, deg),
        right_up_deg: amount(4, -deg * to_right),
        turned_right_deg: amount(5, -deg * to_right),
        wider_mm: amount(6, 2.0),
        cover_sd_mm: variance(&mut over.iter().map(|o| o.cover_mm - mean)).sqrt(),
        even_sd_mm: left_variance.sqrt(),
    })
}
