//! Which tray of a shelf to take for a mouth.

use measure::tray::{Clearance, ShelfFit, Touch, TraySuits, WANTED_CLEARANCE_MM};

/// So little room is left by a tray that is taken as it is, mm (least clearance, by more than
/// its uncertainty). Own choice, no source.
const LEAST_ROOM_MM: f64 = 0.0;
/// Its edge reaches past the border by no more than this, mm (median over a part of the
/// arch). Common practice, no source: a stock tray's edge is trimmed that far at the chair.
const MOST_PAST_BORDER_MM: f64 = 1.0;
/// A tray leaves a median clearance from this to that, mm (stock tray 2 to 4: textbooks,
/// MAT-12, from memory; half a millimetre less is borne).
const USABLE_MEDIAN_MM: [f64; 2] = [1.5, 4.0];
/// A tray is bent or shortened by no more than this, mm. Own choice, no source.
const MOST_ADAPTED_MM: f64 = 2.5;
/// It is bent over no more than this share of what lies over it. Own choice, no source.
const MOST_TOUCHING: f64 = 0.1;

/// What to do.
#[derive(Debug, Clone, PartialEq)]
pub enum Advice {
    /// Take the tray of this number as it is.
    Take(usize),
    /// None fits as it is; this one comes nearest.
    Adapt {
        /// Number of the tray.
        tray: usize,
        /// Where it touches: bend it away there.
        bend: Vec<Touch>,
        /// Parts of the arch in which its edge reaches past the border, with how far, mm:
        /// shorten it there.
        shorten: Vec<(measure::Zone, Option<measure::Side>, f64)>,
    },
    /// None comes near: make an individual tray.
    Individual,
    /// There is no tray of this jaw on the shelf.
    NoneOfThisJaw,
}

/// Which tray of a shelf to take: of those that touch nowhere and end within the border the
/// one whose clearance is most even and nearest to what is wanted.
#[must_use]
pub fn advice(fit: &ShelfFit) -> Advice {
    // A mouth or a cast has no border: its scan ends where it was left off.
    advised(fit, !fit.is_positive)
}

/// [`advice`] for an impression that is to be taken again, from the scan of that impression:
/// where it ends, the new one may have to go on.
#[must_use]
pub fn advice_for_retake(fit: &ShelfFit) -> Advice {
    advised(fit, false)
}

fn advised(fit: &ShelfFit, shows_border: bool) -> Advice {
    let placed = fit
        .trays
        .iter()
        .enumerate()
        .filter_map(|(tray, suits)| match suits {
            TraySuits::Placed(clearance) => Some((tray, clearance.as_ref())),
            TraySuits::OtherJaw | TraySuits::NotPlaced => None,
        });
    let mut placed: Vec<(usize, &Clearance)> = placed.collect();
    placed.sort_by(|a, b| off_wanted_mm(a.1).total_cmp(&off_wanted_mm(b.1)));
    if placed.is_empty() {
        return Advice::NoneOfThisJaw;
    }
    let suits = |found: &Clearance| {
        let least = found.least_mm;
        least.value - least.uncertainty > LEAST_ROOM_MM
            && found.touches.is_empty()
            && has_usable_median(found)
            && past_border(found, shows_border).is_empty()
    };
    if let Some((tray, _)) = placed.iter().find(|(_, found)| suits(found)) {
        return Advice::Take(*tray);
    }
    let adapted = placed
        .iter()
        .find(|(_, found)| can_be_adapted(found, shows_border));
    match adapted {
        Some((tray, found)) => Advice::Adapt {
            tray: *tray,
            bend: found.touches.clone(),
            shorten: past_border(found, shows_border),
        },
        None => Advice::Individual,
    }
}

/// How uneven the clearance is, and how far its median is from what is wanted, mm.
fn off_wanted_mm(found: &Clearance) -> f64 {
    let median = found.median_mm.value;
    let short = (WANTED_CLEARANCE_MM.start() - median).max(median - WANTED_CLEARANCE_MM.end());
    found.unevenness_mm.hypot(short.max(0.0))
}

fn has_usable_median(found: &Clearance) -> bool {
    let [least, most] = USABLE_MEDIAN_MM;
    let median = found.median_mm;
    median.value - median.uncertainty >= least && median.value + median.uncertainty <= most
}

/// Where a tray's edge reaches past the border; nowhere if the scan does not show it.
fn past_border(
    found: &Clearance,
    shows_border: bool,
) -> Vec<(measure::Zone, Option<measure::Side>, f64)> {
    let edges = found.edges.iter().filter(|_| shows_border);
    edges
        .filter(|edge| edge.median_mm < -MOST_PAST_BORDER_MM)
        .map(|edge| (edge.zone, edge.side, -edge.median_mm))
        .collect()
}

fn can_be_adapted(found: &Clearance, shows_border: bool) -> bool {
    let past = past_border(found, shows_border);
    let touching: f64 = found.touches.iter().map(|touch| touch.area_mm2).sum();
    has_usable_median(found)
        && found
            .touches
            .iter()
            .all(|touch| touch.depth_mm <= MOST_ADAPTED_MM)
        && past
            .iter()
            .all(|(.., mm)| *mm <= MOST_ADAPTED_MM + MOST_PAST_BORDER_MM)
        && touching <= MOST_TOUCHING * found.over_tray_mm2
}

#[cfg(test)]
mod tests {
    use super::*;
    use measure::tray::EdgeToBorder;
    use measure::{Amount, Arch, Side, Zone};
    use nalgebra::{Isometry3, Point3};

    fn clearance(least: f64, median: f64, unevenness_mm: f64) -> Clearance {
        let amount = |value| Amount {
            value,
            uncertainty: 0.05,
        };
        Clearance {
            tray_from_scan: Isometry3::identity(),
            least_mm: amount(least),
            median_mm: amount(median),
            unevenness_mm,
            wanted_share: 0.4,
            over_tray_share: 0.9,
            over_tray_mm2: 4000.0,
            touches: Vec::new(),
            edges: Vec::new(),
        }
    }

    fn told(trays: Vec<TraySuits>) -> Advice {
        advice(&ShelfFit {
            arch: Arch::Maxillary,
            is_positive: false,
            trays,
        })
    }

    fn placed(found: Clearance) -> TraySuits {
        TraySuits::Placed(Box::new(found))
    }

    #[test]
    fn the_most_even_of_those_with_room_is_taken() {
        let trays = [
            (-0.5, 1.9, 0.3),
            (0.8, 1.9, 0.5),
            (1.5, 2.9, 0.8),
            (0.9, 4.5, 0.2),
        ];
        let trays = trays.map(|(least, median, uneven)| placed(clearance(least, median, uneven)));
        assert_eq!(told(trays.to_vec()), Advice::Take(1));
        assert_eq!(
            told(vec![TraySuits::OtherJaw, TraySuits::NotPlaced]),
            Advice::NoneOfThisJaw
        );
        assert_eq!(
            told(vec![placed(clearance(0.9, 4.5, 0.2))]),
            Advice::Individual
        );
    }

    #[test]
    fn a_tray_that_touches_a_little_or_is_a_little_long_is_adapted() {
        let touch = |depth_mm, area_mm2| Touch {
            zone: Zone::BuccalFlange,
            side: Some(Side::Left),
            depth_mm,
            area_mm2,
            at: Point3::origin(),
        };
        let touching = |depth_mm, area_mm2| Clearance {
            touches: vec![touch(depth_mm, area_mm2)],
            ..clearance(-0.4, 2.2, 0.6)
        };
        let Advice::Adapt { tray: 0, bend, .. } = told(vec![placed(touching(0.6, 40.0))]) else {
            panic!("it can be bent");
        };
        assert_eq!(bend, [touch(0.6, 40.0)]);
        assert_eq!(told(vec![placed(touching(3.0, 40.0))]), Advice::Individual);
        assert_eq!(told(vec![placed(touching(0.6, 900.0))]), Advice::Individual);
        let long = Clearance {
            edges: vec![EdgeToBorder {
                zone: Zone::PosteriorPalatalSeal,
                side: None,
                least_mm: -2.6,
                median_mm: -2.0,
            }],
            ..clearance(0.8, 2.2, 0.6)
        };
        let Advice::Adapt { shorten, .. } = told(vec![placed(long.clone())]) else {
            panic!("it can be shortened");
        };
        assert_eq!(shorten, [(Zone::PosteriorPalatalSeal, None, 2.0)]);
        // An impression that is taken again may have ended too early.
        let again = ShelfFit {
            arch: Arch::Maxillary,
            is_positive: false,
            trays: vec![placed(long)],
        };
        assert_eq!(advice_for_retake(&again), Advice::Take(0));
    }
}
