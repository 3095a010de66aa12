//! Where a flange's border is lower than its neighbourhood: notches that frena
//! leave, and stretches that are short.

use super::figures::{BorderPart, Dip, DipKind, Measured, STATION_STEP_MM};
use super::height_profile::HeightProfile;
use super::heights::ProfileDip;
use super::station::Reached;
use crate::anatomy;

/// Short stretches this near to an end of the scan, in plan, are not told, mm.
const UNKNOWN_WITHIN_MM: f64 = 20.0;

/// Dips of the flanges' borders, in the order of the stations.
pub(super) fn dips(stations: &[Reached]) -> Vec<Dip> {
    let mut found: Vec<Dip> = [BorderPart::Outer, BorderPart::Lingual]
        .into_iter()
        .flat_map(|part| stretches(stations, part))
        .flat_map(|stretch| in_stretch(stations, &stretch))
        .collect();
    found.sort_by_key(|dip| dip.from);
    without_the_mouths_own(found, stations)
}

/// Of the lingual flange: what is as low on either side is the mouth's own course
/// over the mylohyoid ridges (LM-17), or short on both, which shape does not tell.
fn without_the_mouths_own(dips: Vec<Dip>, stations: &[Reached]) -> Vec<Dip> {
    /// Both sides lie as nearly opposite (common practice, no source).
    const OPPOSITE_MM: f64 = 8.0;
    /// The shallower has at least this part of the other's depth.
    const LEAST_PART: f64 = 0.5;
    let place = |dip: &Dip| stations[dip.bottom].point.xy();
    let is_lingual = |dip: &Dip| stations[dip.bottom].part == BorderPart::Lingual;
    let is_on_both_sides = |own: &Dip| {
        let mut mirrored = place(own);
        mirrored.x = -mirrored.x;
        dips.iter().any(|other| {
            is_lingual(other)
                && matches!(other.kind, DipKind::Short | DipKind::Wave)
                && place(other).x * mirrored.x > 0.0
                && (place(other) - mirrored).norm() <= OPPOSITE_MM
                && other.depth.mm >= LEAST_PART * own.depth.mm
        })
    };
    let is_own: Vec<bool> = dips
        .iter()
        .map(|dip| dip.kind == DipKind::Short && is_lingual(dip) && is_on_both_sides(dip))
        .collect();
    (dips.into_iter().zip(is_own))
        .map(|(dip, is_own)| match is_own {
            true => Dip {
                kind: DipKind::Wave,
                ..dip
            },
            false => dip,
        })
        .collect()
}

/// Runs of stations of one flange, each in order; a run across the first
/// station is one.
fn stretches(stations: &[Reached], part: BorderPart) -> Vec<Vec<usize>> {
    let count = stations.len();
    let belongs = |i: usize| stations[i % count].part == part;
    let Some(start) = (0..count).find(|&i| !belongs(i)) else {
        return Vec::new();
    };
    let order: Vec<usize> = (start..start + count).collect();
    order
        .chunk_by(|&a, &b| belongs(a) == belongs(b))
        .filter(|run| belongs(run[0]))
        .map(|run| run.iter().map(|i| i % count).collect())
        .collect()
}

fn in_stretch(stations: &[Reached], stretch: &[usize]) -> Vec<Dip> {
    let profile = HeightProfile::of(stations, stretch);
    // Beside an end of the scan neither the neighbourhood nor, across the trough,
    // the crest line is to be trusted: scan again first.
    let is_known = |dip: &ProfileDip| {
        let bottom = stations[stretch[profile.station[dip.bottom]]].point;
        dip.kind != DipKind::Short
            || stations
                .iter()
                .filter(|station| !station.is_scanned())
                .all(|station| (station.point - bottom).xy().norm() > UNKNOWN_WITHIN_MM)
    };
    let dips: Vec<ProfileDip> = profile.dips().into_iter().filter(is_known).collect();
    dips.iter()
        .map(|dip| {
            let may_be_frenum = dip.kind.may_be_frenum();
            let is_wide = dip.width_mm > anatomy::FRENUM_NOTCH_USUAL_WIDTH_MM;
            let is_second = may_be_frenum && is_steep_beside_notch(dip, &dips);
            // Either end lies somewhere within a step.
            let least_width_mm = dip.width_mm - STATION_STEP_MM;
            let is_wider_than_band = least_width_mm > anatomy::FRENUM_BAND_GREATEST_WIDTH_MM;
            let station = |at: usize| stretch[profile.station[at]];
            let noise = |at: usize| stations[station(at)].uncertainty_mm.unwrap_or(0.0);
            Dip {
                kind: if is_second && is_wide {
                    DipKind::Short
                } else {
                    dip.kind
                },
                from: station(dip.from),
                to: station(dip.to),
                bottom: station(dip.bottom),
                depth: Measured {
                    mm: dip.depth_mm,
                    uncertainty_mm: noise(dip.bottom)
                        .hypot(noise(dip.from).hypot(noise(dip.to)) / 2.0),
                },
                width_mm: dip.width_mm,
                is_rather_short: is_second && is_wider_than_band,
            }
        })
        .collect()
}

/// Whether a dip lies beside a steeper notch of the same frenum's place and has a steep end
/// of its own: an end within the notch is the notch's wall.
fn is_steep_beside_notch(own: &ProfileDip, dips: &[ProfileDip]) -> bool {
    let steepness = |dip: &ProfileDip| dip.depth_mm / dip.width_mm;
    let apart_mm = |other: &ProfileDip| own.bottom.abs_diff(other.bottom) as f64 * STATION_STEP_MM;
    // A floor with two low places is found from either.
    let is_the_same = |other: &ProfileDip| {
        const ALIKE_MM: f64 = 0.1;
        (own.depth_mm - other.depth_mm).abs() <= ALIKE_MM
            && (own.from..=own.to).contains(&other.bottom)
    };
    let is_beside = |other: &&ProfileDip| {
        other.kind.may_be_frenum()
            && other.frenum_place == own.frenum_place
            && steepness(other) > steepness(own)
            && apart_mm(other) > own.width_mm / 2.0
            && !is_the_same(other)
    };
    let notches: Vec<&ProfileDip> = dips.iter().filter(is_beside).collect();
    let is_own_end = |end: &usize| {
        let is_wall_of = |notch: &&ProfileDip| (notch.from..=notch.to).contains(end);
        !notches.iter().any(is_wall_of)
    };
    !notches.is_empty() && own.steep_ends.iter().flatten().any(is_own_end)
}

#[cfg(test)]
mod tests {
    use super::super::heights::FrenumPlace;
    use super::*;

    fn dip(from: usize, bottom: usize, to: usize, steep_end: usize) -> ProfileDip {
        ProfileDip {
            kind: DipKind::BroadNotch,
            frenum_place: Some(FrenumPlace::Midline),
            steep_ends: [None, Some(steep_end)],
            from,
            to,
            bottom,
            depth_mm: 2.5,
            width_mm: 9.0,
        }
    }

    #[test]
    fn a_wall_of_the_notch_beside_it_is_no_steep_end_of_a_dip() {
        let notch = ProfileDip {
            depth_mm: 3.5,
            width_mm: 3.0,
            ..dip(100, 106, 112, 109)
        };
        for (steep_end, is_steep) in [(92, true), (102, false), (110, false), (115, true)] {
            let own = dip(60, 80, 99, steep_end);
            assert_eq!(is_steep_beside_notch(&own, &[own, notch]), is_steep);
        }
        let own = dip(60, 80, 99, 92);
        assert!(!is_steep_beside_notch(&own, &[own]));
    }
}
