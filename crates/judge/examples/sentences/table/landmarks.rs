//! Landmarks that are missed, covered, or not seen.

use super::impressions::SpoilBy;
use fixtures::border::short;
use fixtures::impression::{spot, void};
use measure::landmarks::{
    Covered, Extent, Landmark, LandmarkName, LandmarkSource, Nearby, NearbyKind, Seen, Unseen,
};
use measure::{Arch, Defect, DefectKind, Measured, Side, Zone};
use nalgebra::Point3;

/// One landmark each, beside a border, a place and defects that can spoil it.
pub fn of_landmarks(arch: Arch, spoil: &mut SpoilBy<'_>) {
    for landmark in landmarks(arch) {
        spoil(&|m| {
            m.landmarks = vec![landmark.clone()];
            m.spots = vec![spot(0.0)];
            if let Ok(border) = &mut m.border {
                border.dips.push(short(3.0));
            }
            if let Ok(tissue) = &mut m.tissue {
                tissue.defects = [DefectKind::Void, DefectKind::Nodule, DefectKind::Hole]
                    .map(|kind| Defect { kind, ..void() })
                    .into();
            }
        });
    }
    let is_pad = |landmark: &Landmark| landmark.name == LandmarkName::RetromolarPad;
    if let Some(pad) = landmarks(arch).into_iter().find(is_pad) {
        spoil(&|m| {
            m.landmarks = vec![pad.clone()];
            if let Ok(tissue) = &mut m.tissue {
                tissue.defects = vec![Defect {
                    across_mm: 5.0,
                    zone: Zone::RetromolarPad,
                    side: pad.side,
                    ..void()
                }];
            }
        });
    }
}

/// Landmarks that are missed, covered, or not seen.
fn landmarks(arch: Arch) -> Vec<Landmark> {
    let margin = |mm| Extent {
        margin: Some(Measured {
            mm,
            uncertainty_mm: 0.5,
        }),
        covered: None,
    };
    let little = Extent {
        margin: None,
        covered: Some(Covered {
            percent: 30.0,
            uncertainty_percent: 12.0,
        }),
    };
    let there = || {
        Ok(Seen {
            point: Point3::origin(),
            uncertainty_mm: 0.5,
            confidence: 0.9,
            relief_mm: Some(0.6),
        })
    };
    let (notch, area) = match arch {
        Arch::Maxillary => (LandmarkName::HamularNotch, LandmarkName::IncisivePapilla),
        Arch::Mandibular => (LandmarkName::RetromolarPad, LandmarkName::LingualFlange),
    };
    let of = |name: LandmarkName, seen, extent, nearby: &[NearbyKind]| Landmark {
        name,
        side: name.is_paired().then_some(Side::Right),
        source: LandmarkSource::Detected,
        seen,
        expected: Some(Point3::origin()),
        zone: Some(Zone::ResidualRidge),
        extent,
        nearby: (nearby.iter())
            .map(|&kind| Nearby {
                kind,
                distance_mm: 0.1,
            })
            .collect(),
    };
    let in_palate = Landmark {
        zone: Some(Zone::Palate),
        ..of(notch, there(), margin(3.0), &[NearbyKind::ShortBorder(1)])
    };
    [
        in_palate,
        of(notch, there(), margin(1.2), &[]),
        of(notch, there(), margin(0.3), &[]),
        of(notch, there(), margin(-2.0), &[]),
        of(notch, there(), little, &[]),
        of(
            notch,
            Err(Unseen::TroughOpen { open_mm: 2.0 }),
            margin(0.2),
            &[],
        ),
        of(area, there(), margin(3.0), &[NearbyKind::ScanEnds]),
        of(area, there(), margin(3.0), &[NearbyKind::ShortBorder(1)]),
        of(area, there(), margin(3.0), &[NearbyKind::Defect(0)]),
        of(area, there(), margin(3.0), &[NearbyKind::Defect(1)]),
        of(area, there(), margin(3.0), &[NearbyKind::Defect(2)]),
        of(area, there(), margin(3.0), &[NearbyKind::ShowThrough(0)]),
        of(
            area,
            Err(Unseen::NoRelief { least_mm: 0.25 }),
            margin(3.0),
            &[],
        ),
        of(area, Err(Unseen::NoBorder), margin(3.0), &[]),
    ]
    .into()
}
