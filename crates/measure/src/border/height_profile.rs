//! The height of a border at even steps, and the dips in it.
//!
//! Depth counts from the straight lines that can be laid over the border's
//! height from shoulder to shoulder, as a ruler is laid over a dip. Where a frenum
//! may lie, a dip no wider than the broadest frenum may be its notch, whatever
//! its shape; elsewhere a dip is a short stretch. A short ruler finds the notch at
//! the bottom of a longer dip. What is too long for either is looked for below
//! the grey-scale closing of the height.

use super::figures::{BorderPart, DipKind, STATION_STEP_MM};
use super::heights::{
    FrenumPlace, ProfileDip, Rise, Ruler, RulerKind, all_below, bridge, closing, own_slopes, peaks,
    rulers, steepest_rises, widths_above,
};
use super::short::{below_closing, short_stretches};
use super::station::Reached;
use crate::anatomy;

/// The ruler. A step down has one shoulder only.
const RULER: RulerKind = RulerKind {
    length_mm: anatomy::NOTCH_WITH_SHOULDERS_MM,
    least_rise: 0.5,
};
/// The ruler for a narrow notch within a longer dip. The corner of a short
/// stretch that slants has one shoulder.
const SHORT_RULER: RulerKind = RulerKind {
    length_mm: 8.0,
    least_rise: 0.8,
};
/// How much a pointed notch widens from half of its depth to a quarter: 1.4
/// times for a bell, 1.5 for a V, near 1 for one with a level bottom, more where
/// a notch runs out into a short stretch. A note depends on it, no verdict.
const WIDENING: std::ops::RangeInclusive<f64> = 1.22..=1.58;
/// How much a pointed notch widens from three quarters of its depth to half of
/// it: 1.55 times for a bell, 2 for a V.
const WIDENING_LOW: std::ops::RangeInclusive<f64> = 1.25..=2.3;
/// Steps in half the width of a frenum's band: a notch as narrow at the bottom of a wave is the
/// frenum's, and adds nothing to the wave.
const HALF_BAND: usize = (anatomy::FRENUM_BAND_GREATEST_WIDTH_MM / STATION_STEP_MM / 2.0) as usize;
/// How many stations beside an end of the scan are not to be trusted.
const BESIDE: usize = 6;

/// Height of a border at even steps in plan.
#[derive(Debug, Clone)]
pub(super) struct HeightProfile {
    heights: Vec<f64>,
    /// The nearest station of each, as its number in the stretch.
    pub station: Vec<usize>,
    /// Where a frenum may lie at each.
    frenum_place: Vec<Option<FrenumPlace>>,
    /// Whether it is that of the lingual flange.
    is_lingual: bool,
}

impl HeightProfile {
    /// Where the scan ends or has a hole, and beside it, where the line runs down
    /// and up again, the border is not known to be low: its height is that of
    /// its neighbours.
    pub(super) fn of(stations: &[Reached], stretch: &[usize]) -> Self {
        let mut along = 0.0;
        let mut known: Vec<(f64, f64, usize)> = Vec::new();
        for (number, &i) in stretch.iter().enumerate() {
            if number > 0 {
                let before = stations[stretch[number - 1]].point;
                along += (stations[i].point - before).xy().norm();
            }
            let beside = number.saturating_sub(BESIDE)..(number + BESIDE + 1).min(stretch.len());
            if stretch[beside].iter().all(|&k| stations[k].is_scanned()) {
                known.push((along, stations[i].point.z, number));
            }
        }
        let mut profile = Self::through(&known);
        profile.is_lingual =
            (stretch.first()).is_some_and(|&i| stations[i].part == BorderPart::Lingual);
        profile.frenum_place = profile
            .station
            .iter()
            .map(|&number| frenum_place(number, stations, stretch))
            .collect();
        profile
    }

    /// The profile through known heights at ascending places.
    fn through(known: &[(f64, f64, usize)]) -> Self {
        let (Some(first), Some(last)) = (known.first(), known.last()) else {
            return Self {
                heights: Vec::new(),
                station: Vec::new(),
                frenum_place: Vec::new(),
                is_lingual: false,
            };
        };
        let count = ((last.0 - first.0) / STATION_STEP_MM) as usize + 1;
        let mut next = 0;
        let (heights, station): (Vec<f64>, Vec<usize>) = (0..count)
            .map(|k| {
                let at = first.0 + k as f64 * STATION_STEP_MM;
                while next + 2 < known.len() && known[next + 1].0 < at {
                    next += 1;
                }
                let (a, b) = (known[next], known[(next + 1).min(known.len() - 1)]);
                let share = ((at - a.0) / (b.0 - a.0).max(f64::MIN_POSITIVE)).clamp(0.0, 1.0);
                let nearest = if share < 0.5 { a.2 } else { b.2 };
                (a.1 + (b.1 - a.1) * share, nearest)
            })
            .unzip();
        Self {
            frenum_place: vec![None; heights.len()],
            heights,
            station,
            is_lingual: false,
        }
    }

    /// Notches first: beside a frenum a short stretch has its shoulder only
    /// where the notch is bridged.
    pub(super) fn dips(&self) -> Vec<ProfileDip> {
        /// Where the closing is deeper, the ruler is too short for the dip.
        const WHOLE_PART: f64 = 0.8;
        let narrower_than = |most_mm: f64| {
            move |dip: &ProfileDip| dip.kind.may_be_frenum() && dip.width_mm <= most_mm
        };
        let is_usual = narrower_than(anatomy::FRENUM_NOTCH_USUAL_WIDTH_MM);
        let is_narrow = narrower_than(anatomy::NOTCH_NARROW_WIDTH_MM);
        let (mut found, bridged) = self.under_rulers(&RULER, is_usual);
        let (within, bridged) = bridged.under_rulers(&SHORT_RULER, is_narrow);
        found.extend(within);
        let closed = below_closing(&bridged.heights);
        let is_whole = |dip: &ProfileDip| dip.depth_mm >= WHOLE_PART * closed[dip.bottom];
        let (short, bridged) =
            bridged.under_rulers(&RULER, |dip| !dip.kind.may_be_frenum() || is_whole(dip));
        // The ruler dips into a stretch as long as itself.
        found.extend(short.into_iter().map(|dip| ProfileDip {
            depth_mm: dip.depth_mm.max(closed[dip.bottom]),
            ..dip
        }));
        found.extend(
            (short_stretches(&bridged.heights).into_iter())
                .map(|dip| bridged.classified(dip, dip.from.midpoint(dip.to), false)),
        );
        let beside_frena = closing(&self.heights, HALF_BAND);
        let beside_its_frenum = |dip: ProfileDip| match (dip.kind, dip.frenum_place) {
            (DipKind::Wave, Some(_)) => ProfileDip {
                depth_mm: dip.depth_mm - (beside_frena[dip.bottom] - self.heights[dip.bottom]),
                ..dip
            },
            _ => dip,
        };
        without_repeats(found)
            .into_iter()
            .map(beside_its_frenum)
            .collect()
    }

    /// The wanted dips under a ruler, and the profile with them bridged.
    fn under_rulers(
        &self,
        kind: &RulerKind,
        wanted: impl Fn(&ProfileDip) -> bool,
    ) -> (Vec<ProfileDip>, Self) {
        let rulers = rulers(&self.heights, kind.length_mm);
        let depth: Vec<f64> = rulers
            .iter()
            .zip(&self.heights)
            .map(|(ruler, height)| ruler.at - height)
            .collect();
        let mut found: Vec<ProfileDip> = peaks(&depth)
            .into_iter()
            .filter_map(|bottom| self.under_ruler(&depth, bottom, &rulers[bottom], kind))
            .collect();
        // The deeper of two that overlap is the one.
        found.sort_by(|a, b| b.depth_mm.total_cmp(&a.depth_mm));
        let mut kept: Vec<ProfileDip> = Vec::new();
        for dip in found {
            if kept
                .iter()
                .all(|k| dip.bottom < k.from || dip.bottom > k.to)
            {
                kept.push(dip);
            }
        }
        kept.retain(wanted);
        let mut bridged = self.clone();
        for dip in &kept {
            let (from, to) = match dip.kind {
                DipKind::Notch | DipKind::BroadNotch => own_slopes(&depth, dip.bottom),
                DipKind::Short | DipKind::Wave => all_below(&depth, dip.bottom),
            };
            bridge(&mut bridged.heights, from, to);
        }
        (kept, bridged)
    }

    /// The dip with its lowest point at a place, if there is one.
    fn under_ruler(
        &self,
        depth: &[f64],
        bottom: usize,
        ruler: &Ruler,
        ruler_kind: &RulerKind,
    ) -> Option<ProfileDip> {
        let h = &self.heights;
        let depth_mm = depth[bottom];
        let rise = h[ruler.from].min(h[ruler.to]) - h[bottom];
        if depth_mm < anatomy::DIP_LEAST_DEPTH_MM || rise < ruler_kind.least_rise * depth_mm {
            return None;
        }
        let sides = |part: f64| widths_above(depth, part * depth_mm, bottom);
        let [wide, width_mm, narrow] = [0.25, 0.5, 0.75].map(|part| sides(part).iter().sum());
        let [before, after] = sides(0.5);
        let middle =
            bottom.saturating_add_signed(((after - before) / 2.0 / STATION_STEP_MM) as isize);
        let is_pointed =
            WIDENING.contains(&(wide / width_mm)) && WIDENING_LOW.contains(&(width_mm / narrow));
        let unclassified = ProfileDip {
            kind: DipKind::Short,
            frenum_place: None,
            steep_ends: [None; 2],
            from: bottom,
            to: bottom,
            bottom,
            depth_mm,
            width_mm,
        };
        let mut dip = self.classified(unclassified, middle, is_pointed);
        let half = |k: &usize| depth[*k] >= depth_mm / 2.0;
        let within = |k: &usize| depth[*k] > 0.1 * depth_mm;
        (dip.from, dip.to) = if dip.kind.may_be_frenum() {
            (
                (ruler.from..=bottom).rev().take_while(within).last()?,
                (bottom..=ruler.to).take_while(within).last()?,
            )
        } else {
            (
                (0..=bottom).rev().take_while(half).last()?,
                (bottom..h.len()).take_while(half).last()?,
            )
        };
        Some(dip)
    }

    /// A dip with what it is, by its place, size and ends. A frenum's notch lies where
    /// frena lie by its lowest place and by its middle.
    fn classified(&self, dip: ProfileDip, middle: usize, is_pointed: bool) -> ProfileDip {
        let [lowest, middle] = [dip.bottom, middle].map(|at| self.frenum_place[at]);
        let frenum_place = lowest.filter(|_| lowest == middle);
        let is_narrow = dip.width_mm <= anatomy::NOTCH_NARROW_WIDTH_MM;
        // A narrow notch elsewhere may be an accessory band.
        let may_be_frenum = match frenum_place {
            Some(_) => dip.width_mm <= anatomy::FRENUM_NOTCH_GREATEST_WIDTH_MM,
            None => dip.width_mm <= anatomy::FRENUM_BAND_GREATEST_WIDTH_MM,
        };
        let is_usual = frenum_place.is_some()
            && dip.depth_mm <= anatomy::FRENUM_NOTCH_GREATEST_DEPTH_MM
            && (is_narrow || is_pointed && dip.width_mm <= anatomy::POINTED_NOTCH_USUAL_WIDTH_MM);
        let rises = steepest_rises(&self.heights, dip.bottom, dip.depth_mm);
        let is_steep_rise = |rise: Rise| rise.slope >= anatomy::SHORT_STRETCH_LEAST_SLOPE;
        // Where a frenum may lie at the end of a wave, the steep end may be the frenum's own
        // wall. Two steep ends are those of a step.
        let is_step = |rise: Rise| is_steep_rise(rise) && self.frenum_place[rise.at].is_none();
        let is_steep = match (self.is_lingual, frenum_place) {
            (false, _) if may_be_frenum => rises.into_iter().any(is_steep_rise),
            (false, _) => rises.into_iter().any(is_step) || rises.into_iter().all(is_steep_rise),
            // In front the flange is low beside its frenum, over the mylohyoid ridge it
            // is shallowest and behind it deep (LM-17, LM-19): one steep side is usual.
            (true, place) => {
                (place.is_none() || may_be_frenum) && rises.into_iter().all(is_steep_rise)
            }
        };
        let kind = match (may_be_frenum, is_usual, is_steep) {
            (true, true, _) => DipKind::Notch,
            (true, false, _) => DipKind::BroadNotch,
            (false, _, true) => DipKind::Short,
            (false, _, false) => DipKind::Wave,
        };
        let steep_end = |rise: Rise| (is_steep && is_steep_rise(rise)).then_some(rise.at);
        ProfileDip {
            kind,
            frenum_place,
            steep_ends: rises.map(steep_end),
            ..dip
        }
    }
}

/// Dips without those that lie in a deeper one of their kind.
fn without_repeats(dips: Vec<ProfileDip>) -> Vec<ProfileDip> {
    let repeats = |own: &ProfileDip, other: &ProfileDip| {
        own.kind == other.kind
            && own.depth_mm < other.depth_mm
            && (other.from..=other.to).contains(&own.bottom)
    };
    let is_first = |own: &&ProfileDip| !dips.iter().any(|other| repeats(own, other));
    dips.iter().filter(is_first).copied().collect()
}

/// Where a frenum may lie at a station of a stretch: frena lie at the midline and,
/// on the outer flange, about the premolars (LM-09, LM-10, LM-16; the bounds are
/// common practice, no source).
fn frenum_place(number: usize, stations: &[Reached], stretch: &[usize]) -> Option<FrenumPlace> {
    let station = &stations[stretch[number]];
    let middle = (0..stretch.len())
        .min_by(|&a, &b| {
            let off = |k: usize| stations[stretch[k]].point.x.abs();
            off(a).total_cmp(&off(b))
        })
        .unwrap_or(0);
    let side = if number < middle {
        middle
    } else {
        stretch.len() - 1 - middle
    };
    let part = number.abs_diff(middle) as f64 / side.max(1) as f64;
    if station.point.x.abs() < anatomy::MIDLINE_FRENA_WITHIN_MM {
        Some(FrenumPlace::Midline)
    } else if station.part == BorderPart::Outer && anatomy::BUCCAL_FRENA_PART.contains(&part) {
        Some(if number < middle {
            FrenumPlace::BuccalBefore
        } else {
            FrenumPlace::BuccalAfter
        })
    } else {
        None
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// A border along which frena may lie.
    fn profile(height: impl Fn(f64) -> f64) -> HeightProfile {
        let mut profile = without_frena(height);
        profile.frenum_place.fill(Some(FrenumPlace::Midline));
        profile
    }

    fn without_frena(height: impl Fn(f64) -> f64) -> HeightProfile {
        let known: Vec<(f64, f64, usize)> = (0..240)
            .map(|i| (0.5 * i as f64, height(0.5 * i as f64), i))
            .collect();
        HeightProfile::through(&known)
    }

    fn kinds(dips: &[ProfileDip]) -> Vec<DipKind> {
        dips.iter().map(|dip| dip.kind).collect()
    }

    fn bell(x: f64, at: f64, width: f64) -> f64 {
        (-0.5 * ((x - at) / width).powi(2)).exp()
    }

    /// A level bottom between ramps of 3 mm; `length` at half depth.
    fn trench(x: f64, at: f64, length: f64) -> f64 {
        ((length / 2.0 + 1.5 - (x - at).abs()) / 3.0).clamp(0.0, 1.0)
    }

    fn slope(x: f64) -> f64 {
        9.0 - 0.02 * x + 0.2 * (x / 8.0).sin()
    }

    #[test]
    fn bells_are_notches_with_their_own_depth_and_width() {
        let found = profile(|x| 9.0 - 3.0 * bell(x, 40.0, 1.4) - 2.5 * bell(x, 80.0, 2.8)).dips();
        assert_eq!(found.len(), 2);
        let mut found = found;
        found.sort_by_key(|dip| dip.bottom);
        for (dip, (at, depth, width)) in found.iter().zip([(40.0, 3.0, 1.4), (80.0, 2.5, 2.8)]) {
            assert_eq!(dip.kind, DipKind::Notch);
            assert!((dip.bottom as f64 * STATION_STEP_MM - at).abs() <= 0.5);
            // A wide bell has not quite come up at the shoulders.
            assert!((dip.depth_mm - depth).abs() < 0.05 * depth);
            assert!((dip.width_mm - 2.355 * width).abs() <= 1.0);
        }
    }

    #[test]
    fn trenches_away_from_frena_are_short_stretches() {
        for length in [8.0, 12.0, 20.0] {
            for at in [30.0, 60.0, 85.0] {
                let found = without_frena(|x| slope(x) - 3.0 * trench(x, at, length)).dips();
                let short: Vec<_> = found.iter().filter(|d| d.kind == DipKind::Short).collect();
                assert_eq!(short.len(), 1, "{length} at {at}: {found:?}");
                assert!((short[0].depth_mm - 3.0).abs() < 0.5);
                assert!(
                    (short[0].width_mm - length).abs() <= 3.0,
                    "{length} at {at}: {found:?}"
                );
                let (from, to) = (
                    short[0].from as f64 * STATION_STEP_MM,
                    short[0].to as f64 * STATION_STEP_MM,
                );
                assert!((from - (at - length / 2.0)).abs() <= 2.0);
                assert!((to - (at + length / 2.0)).abs() <= 2.0);
            }
        }
    }

    #[test]
    fn a_trench_over_a_notch_is_still_short() {
        let found =
            without_frena(|x| 9.0 - 2.5 * bell(x, 60.0, 2.6) - 3.0 * trench(x, 62.0, 12.0)).dips();
        assert!(
            found
                .iter()
                .any(|d| d.kind == DipKind::Short && d.depth_mm > 2.5),
            "{found:?}"
        );
    }

    #[test]
    fn a_notch_at_the_bottom_of_a_long_dip_is_not_added_to_it() {
        let found =
            profile(|x| 9.0 - 1.4 * bell(x, 60.0, 1.3) - 1.6 * trench(x, 60.0, 16.0)).dips();
        let depth_mm = |kind| found.iter().find(|d| d.kind == kind).map(|d| d.depth_mm);
        let [notch, short] =
            [DipKind::Notch, DipKind::BroadNotch].map(|k| depth_mm(k).unwrap_or(0.0));
        assert!((notch - 1.4).abs() < 0.2, "{found:?}");
        assert!((short - 1.6).abs() < 0.2, "{found:?}");
    }

    /// Its floor falls by 0.1 in 1: the lower corner has one shoulder.
    #[test]
    fn the_corner_of_a_slanting_trench_is_no_notch_of_its_own() {
        let found = without_frena(|x| 12.0 - 0.1 * (x - 60.0) - 3.0 * trench(x, 60.0, 9.0)).dips();
        assert_eq!(found.len(), 1, "{found:?}");
        assert_eq!(found[0].kind, DipKind::Short);
        assert!((found[0].depth_mm - 3.0).abs() < 0.6, "{found:?}");
    }

    /// V, U and bell, 2 to 12 mm wide at half depth and 1.5 to 6 mm deep.
    #[test]
    fn a_dip_no_wider_than_the_broadest_frenum_is_no_short_stretch_where_frena_lie() {
        type Shape = fn(f64, f64) -> f64;
        let shapes: [(&str, Shape); 3] = [
            ("V", |x, width| (1.0 - (x - 60.0).abs() / width).max(0.0)),
            ("U", |x, width| trench(x, 60.0, width)),
            ("bell", |x, width| bell(x, 60.0, width / 2.355)),
        ];
        for (name, shape) in shapes {
            for width in [2.0, 4.0, 6.0, 8.0, 10.0, 12.0] {
                for depth in [1.5, 3.0, 4.5, 6.0] {
                    let found = profile(|x| slope(x) - depth * shape(x, width)).dips();
                    let deep: Vec<&ProfileDip> =
                        found.iter().filter(|dip| dip.depth_mm > 2.0).collect();
                    assert!(
                        deep.iter().all(|dip| dip.kind != DipKind::Short),
                        "{name} {width} mm wide, {depth} mm deep: {found:?}"
                    );
                }
            }
        }
    }

    #[test]
    fn width_and_place_tell_a_frenum_from_a_short_stretch() {
        let pointed = |width: f64| move |x: f64| 9.0 - 3.0 * bell(x, 60.0, width / 2.355);
        assert_eq!(kinds(&profile(pointed(7.0)).dips()), [DipKind::Notch]);
        assert_eq!(kinds(&profile(pointed(10.0)).dips()), [DipKind::BroadNotch]);
        assert_eq!(kinds(&without_frena(pointed(9.0)).dips()), [DipKind::Wave]);
        let blunt = |length: f64| move |x: f64| 9.0 - 3.0 * trench(x, 60.0, length);
        assert_eq!(kinds(&profile(blunt(4.0)).dips()), [DipKind::Notch]);
        assert_eq!(kinds(&profile(blunt(9.0)).dips()), [DipKind::BroadNotch]);
        assert_eq!(kinds(&without_frena(blunt(9.0)).dips()), [DipKind::Short]);
        assert_eq!(
            kinds(&without_frena(blunt(4.0)).dips()),
            [DipKind::BroadNotch]
        );
        for (length, kind) in [(16.0, DipKind::BroadNotch), (22.0, DipKind::Short)] {
            let found = kinds(&profile(blunt(length)).dips());
            assert!(
                !found.is_empty() && found.iter().all(|of| *of == kind),
                "{length}: {found:?}"
            );
        }
    }

    /// A level floor is lowest anywhere: its middle must lie where frena lie, too.
    #[test]
    fn a_dip_that_is_partly_beside_the_place_of_frena_is_a_short_stretch() {
        let places = |until_mm: f64| {
            let floor = |x: f64| (3.0 + 0.06 * (x - 60.0)) * trench(x, 60.0, 10.0);
            let mut profile = without_frena(|x| 9.0 - floor(x));
            for (at, place) in profile.frenum_place.iter_mut().enumerate() {
                let is_there = at as f64 * STATION_STEP_MM <= until_mm;
                *place = is_there.then_some(FrenumPlace::Midline);
            }
            kinds(&profile.dips())
        };
        assert_eq!(places(58.0), [DipKind::Short]);
        assert_eq!(places(61.0), [DipKind::Short]);
        assert_eq!(places(70.0), [DipKind::BroadNotch]);
    }

    /// From 40 mm on frena may lie: the low part of a wave ends at a frenum's own wall there.
    #[test]
    fn a_wave_that_ends_at_the_wall_of_a_frenum_is_no_short_stretch() {
        let gentle = |x: f64| 3.0 * ((x - 46.0) / 12.0).clamp(0.0, 1.0);
        let step = |x: f64| 3.0 * ((x - 46.0) / 3.0).clamp(0.0, 1.0);
        let wall = |x: f64| 3.0 * ((x - 70.0) / 3.0).clamp(0.0, 1.0);
        let kinds_where_frena_lie_from = |height: &dyn Fn(f64) -> f64, from_mm: f64| {
            let mut profile = without_frena(height);
            for (at, place) in profile.frenum_place.iter_mut().enumerate() {
                let is_there = at as f64 * STATION_STEP_MM >= from_mm;
                *place = is_there.then_some(FrenumPlace::Midline);
            }
            kinds(&profile.dips())
        };
        let wave = |x: f64| 9.0 - gentle(x) + wall(x);
        assert_eq!(kinds_where_frena_lie_from(&wave, 65.0), [DipKind::Wave]);
        assert_eq!(kinds_where_frena_lie_from(&wave, 80.0), [DipKind::Short]);
        let trench = |x: f64| 9.0 - step(x) + wall(x);
        assert_eq!(kinds_where_frena_lie_from(&trench, 65.0), [DipKind::Short]);
        assert_eq!(kinds_where_frena_lie_from(&trench, 30.0), [DipKind::Short]);
    }

    /// Its far shoulder is higher: that step is steep past the depth of the dip.
    #[test]
    fn a_short_lingual_stretch_between_shoulders_of_two_heights_is_no_wave() {
        for further in [1.0, 2.0, 3.0] {
            let far_step = |x: f64| further * ((x - 65.0) / 3.0).clamp(0.0, 1.0);
            let mut profile = without_frena(|x| 9.0 - 4.0 * trench(x, 60.0, 13.0) + far_step(x));
            profile.is_lingual = true;
            let found = profile.dips();
            assert_eq!(kinds(&found), [DipKind::Short], "{further}: {found:?}");
        }
    }

    /// 2 mm from top to bottom over 15 to 40 mm.
    #[test]
    fn the_waves_of_a_vestibule_are_no_short_stretches() {
        for length in [15.0, 20.0, 30.0, 40.0] {
            let wave = |x: f64| 9.0 + (std::f64::consts::TAU * x / length).cos();
            let found = without_frena(wave).dips();
            assert!(
                found.iter().all(|dip| dip.kind == DipKind::Wave),
                "{length}: {found:?}"
            );
        }
    }

    /// A wave 21 mm wide at half its depth, with the notch of a frenum at its bottom.
    #[test]
    fn the_notch_of_a_frenum_adds_nothing_to_the_wave_it_lies_in() {
        let wave = |x: f64| 3.2 * ((14.0 - (x - 60.0).abs()) / 7.0).clamp(0.0, 1.0);
        let notch = |x: f64| (1.2 - 0.24 * (x - 60.0).abs()).max(0.0);
        let depth_mm = |height: &dyn Fn(f64) -> f64| {
            let mut profile = profile(height);
            profile.is_lingual = true;
            let waves = profile
                .dips()
                .into_iter()
                .filter(|dip| dip.kind == DipKind::Wave);
            waves.map(|dip| dip.depth_mm).fold(0.0, f64::max)
        };
        let alone = depth_mm(&|x| 9.0 - wave(x));
        let with_notch = depth_mm(&|x| 9.0 - wave(x) - notch(x));
        assert!(alone > 2.5, "{alone}");
        assert!((with_notch - alone).abs() < 0.5, "{with_notch}, {alone}");
    }

    #[test]
    fn slopes_waves_and_falling_ends_are_no_dips() {
        assert!(profile(slope).dips().is_empty());
        let falls = |x: f64| slope(x) - 6.0 * ((x - 108.0) / 12.0).max(0.0);
        assert!(profile(falls).dips().is_empty());
    }

    #[test]
    fn a_border_without_known_stations_has_no_dips() {
        assert!(HeightProfile::through(&[]).dips().is_empty());
        assert!(HeightProfile::through(&[(0.0, 5.0, 0)]).dips().is_empty());
    }
}
