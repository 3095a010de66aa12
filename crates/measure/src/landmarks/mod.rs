//! Landmarks: where they are, how surely, and what lies round them.
//!
//! Frena are notches of the border; hamular notches and retromolar pads close
//! the trough at its ends; papilla, rugae and foveae are relief of the palate;
//! shelf, lingual flange, tuberosity and seal are regions that follow from crest
//! and border. What is known of mouths steers where each is looked for, and
//! nothing else.

mod figures;
mod frena;
mod ground;
mod hollow;
mod palate;
mod places;
mod sources;
mod surroundings;
mod trough;

pub use figures::{
    Covered, Extent, Landmark, LandmarkMark, LandmarkName, LandmarkSource, NEARBY_MM, Nearby,
    NearbyKind, Seen, Unseen,
};
pub(crate) use sources::Sources;

use crate::anatomy;
use crate::border::Measured;
use crate::words::{Arch, Side};
use geometry::closed_line::inside_by_in_plan;
use ground::Ground;
use nalgebra::Point3;
use sources::Sighting;
use surroundings::Surroundings;
use trough::{Closing, TroughEnd};

/// Landmarks of the impression's jaw, right before left. Those that are marked
/// are not looked for.
pub(crate) fn all(sources: &Sources<'_>, marks: &[LandmarkMark]) -> Vec<Landmark> {
    let ground = Ground::new(
        sources.impression,
        sources.border,
        sources.belongs,
        sources.noise_mm,
    );
    let surroundings = Surroundings::new(&ground, sources);
    let is_marked = |sighting: &Sighting| {
        marks
            .iter()
            .any(|m| m.name == sighting.name && m.side == sighting.side)
    };
    let found = sightings(&ground)
        .into_iter()
        .filter(|sighting| !is_marked(sighting))
        .map(|sighting| (sighting, LandmarkSource::Detected));
    let marked = marks
        .iter()
        .filter(|mark| mark.name.belongs_to(ground.arch))
        .map(|mark| (surroundings.marked(mark), LandmarkSource::Marked));
    let mut landmarks: Vec<Landmark> = found
        .chain(marked)
        .map(|(sighting, source)| surroundings.round(sighting, source))
        .collect();
    landmarks.sort_by_key(|landmark| (landmark.name, landmark.side));
    landmarks
}

fn sightings(ground: &Ground<'_>) -> Vec<Sighting> {
    let mut found = frena(ground);
    match ground.arch {
        Arch::Maxillary => found.extend(maxillary(ground)),
        Arch::Mandibular => found.extend(mandibular(ground)),
    }
    found
}

fn frena(ground: &Ground<'_>) -> Vec<Sighting> {
    let mut midline = vec![LandmarkName::LabialFrenum];
    if ground.arch == Arch::Mandibular {
        midline.push(LandmarkName::LingualFrenum);
    }
    let name = LandmarkName::BuccalFrenum;
    let beside = |side, other| frena::find(ground, name, Some(side), other);
    let right = beside(Side::Right, None);
    let left = beside(Side::Left, Some(&right));
    let right = beside(Side::Right, Some(&left));
    let buccal =
        [(Side::Right, right), (Side::Left, left)].map(|(side, found)| (name, Some(side), found));
    midline
        .into_iter()
        .map(|name| (name, None, frena::find(ground, name, None, None)))
        .chain(buccal)
        .map(|(name, side, found)| Sighting {
            name,
            side,
            seen: found.seen,
            expected: found.expected,
            extent: Extent::default(),
        })
        .collect()
}

fn maxillary(ground: &Ground<'_>) -> Vec<Sighting> {
    let notches = ends_of_trough(ground, LandmarkName::HamularNotch, TroughEnd::ridge);
    let seal = places::seal(ground, &notches);
    let back = seal
        .seen
        .as_ref()
        .ok()
        .map(|seen| ground.local(&seen.point));
    let front = ground.crest_at(0.0).and_then(|(crest, outward)| {
        // Expected where it usually is: behind the crest, on its slope.
        let place = crest - outward * 5.0;
        let height = ground.map.at(place).or_else(|| ground.map.at(crest))?;
        Some(Point3::new(place.x, place.y, height))
    });
    let foveae = match &back {
        Some(back) => palate::foveae(ground, back),
        None => Err(Unseen::NoBorder),
    };
    let on_palate = |name, seen, expected| Sighting::of_local(ground, name, None, seen, expected);
    let mut found = vec![
        on_palate(
            LandmarkName::IncisivePapilla,
            palate::papilla(ground),
            front,
        ),
        on_palate(LandmarkName::Rugae, palate::rugae(ground), None),
        on_palate(LandmarkName::FoveaePalatini, foveae, back),
        seal,
    ];
    found.extend(
        notches
            .iter()
            .map(|notch| places::tuberosity(ground, notch)),
    );
    found.extend(notches);
    found
}

fn mandibular(ground: &Ground<'_>) -> Vec<Sighting> {
    let pads = ends_of_trough(ground, LandmarkName::RetromolarPad, TroughEnd::hollow);
    let mut found = Vec::new();
    for side in [Side::Right, Side::Left] {
        found.push(places::buccal_shelf(ground, side));
        found.push(places::lingual_flange(ground, side));
    }
    found.extend(pads);
    found
}

/// What closes the trough on either side, right before left. One that is not seen
/// is expected where its fellow is.
fn ends_of_trough(
    ground: &Ground<'_>,
    name: LandmarkName,
    what: impl Fn(&TroughEnd, f64) -> Result<Closing, Unseen>,
) -> [Sighting; 2] {
    let border_line = ground.border_line();
    let mut troughs = [Side::Right, Side::Left].map(|side| {
        let limb = ground.limb(side);
        let trough = TroughEnd::follow(&ground.map, &border_line, &limb);
        let last = trough.as_ref().map(TroughEnd::last);
        let found = match &trough {
            Some(trough) => what(trough, ground.noise_mm),
            None => Err(Unseen::NoSurface),
        };
        (side, found, last.or_else(|| limb.last().copied()))
    });
    if let [(_, Ok(right), right_last), (_, Ok(left), left_last)] = &troughs
        && let Some(number) = disproved([right, left], [right_last, left_last])
    {
        troughs[number].1 = Err(Unseen::TroughOpen { open_mm: 0.0 });
    }
    if let [(_, Ok(right), _), (_, Ok(left), _)] = &mut troughs {
        doubted_by_fellow(right, left);
        doubted_by_fellow(left, right);
    }
    let fellow = |number: usize| {
        let seen = troughs[1 - number].1.as_ref().ok()?.seen;
        Some((
            Point3::new(-seen.point.x, seen.point.y, seen.point.z),
            seen.uncertainty_mm,
        ))
    };
    [0, 1].map(|number| {
        let (side, found, last) = &troughs[number];
        let (seen, extent, expected) = match (found, fellow(number)) {
            (Ok(found), _) => (Ok(found.seen), found.extent, None),
            (Err(why), Some((expected, uncertainty_mm))) => {
                let margin = (last.as_ref())
                    .map(|last| margin_mm(&expected, last, &border_line))
                    .map(|mm| Measured {
                        mm,
                        uncertainty_mm: uncertainty_mm.hypot(anatomy::FELLOW_WITHIN_MM),
                    });
                let extent = Extent {
                    margin,
                    covered: None,
                };
                (Err(*why), extent, Some(expected))
            }
            (Err(why), None) => (Err(*why), Extent::default(), *last),
        };
        Sighting {
            extent,
            ..Sighting::of_local(ground, name, Some(*side), seen, expected)
        }
    })
}

/// How far the impression goes on beyond where a landmark is expected, mm; below 0 where it
/// ends before it. The trough may have been lost long before its end: what lies inside the
/// border is reached all the same.
fn margin_mm(expected: &Point3<f64>, last: &Point3<f64>, border_line: &[Point3<f64>]) -> f64 {
    inside_by_in_plan(border_line, expected.xy())
        .filter(|inside_mm| *inside_mm > 0.0)
        .unwrap_or(expected.y - last.y)
}

/// What closes the trough may be the foot of a larger one that the impression does not
/// reach: where its fellow is far larger and lies farther back, the way to where the
/// fellow would have it is a doubt of its margin.
fn doubted_by_fellow(own: &mut Closing, fellow: &Closing) {
    /// A foot has less than this part of the relief of the whole (own choice, no source).
    const PART_OF_RELIEF: f64 = 0.5;
    let back_mm = own.seen.point.y - fellow.seen.point.y;
    let is_slight = match (own.seen.relief_mm, fellow.seen.relief_mm) {
        (Some(own), Some(fellow)) => own < PART_OF_RELIEF * fellow,
        _ => false,
    };
    if let Some(margin) = own
        .extent
        .margin
        .as_mut()
        .filter(|_| is_slight && back_mm > 0.0)
    {
        margin.uncertainty_mm = margin.uncertainty_mm.hypot(back_mm);
    }
}

/// Which of two is not what is looked for. A hollow that is open at the end is none
/// where its whole fellow lies farther back than the open one's limb reaches. Of two
/// that lie far from opposite each other the open one, else the slighter one, is a
/// wave of the trough's floor.
fn disproved(found: [&Closing; 2], last: [&Option<Point3<f64>>; 2]) -> Option<usize> {
    let y = |number: usize| found[number].seen.point.y;
    let is_far = (y(0) - y(1)).abs() > 2.0 * anatomy::FELLOW_WITHIN_MM;
    let open = match found.map(|closing| closing.is_whole) {
        [false, true] => 0,
        [true, false] => 1,
        _ => {
            let slighter = usize::from(found[0].seen.relief_mm > found[1].seen.relief_mm);
            return is_far.then_some(slighter);
        }
    };
    let ends_before = last[open].is_some_and(|last| y(1 - open) < last.y);
    (is_far || ends_before).then_some(open)
}

#[cfg(test)]
mod tests {
    use super::*;

    fn hollow(y: f64, relief_mm: f64, is_whole: bool) -> Closing {
        Closing {
            seen: Seen {
                point: Point3::new(25.0, y, 0.0),
                uncertainty_mm: 1.3,
                confidence: 0.9,
                relief_mm: Some(relief_mm),
            },
            extent: Extent::default(),
            is_whole,
        }
    }

    fn disproved_of(found: [Closing; 2], last: [f64; 2]) -> Option<usize> {
        let [right, left] = last.map(|y| Some(Point3::new(25.0, y, 0.0)));
        disproved([&found[0], &found[1]], [&right, &left])
    }

    /// A ridge of this height with so much behind it, at y.
    fn ridge(y: f64, relief_mm: f64, margin_mm: f64) -> Closing {
        let margin = Measured {
            mm: margin_mm,
            uncertainty_mm: 0.7,
        };
        Closing {
            extent: Extent {
                margin: Some(margin),
                covered: None,
            },
            ..hollow(y, relief_mm, true)
        }
    }

    #[test]
    fn what_lies_inside_the_border_is_reached_where_the_trough_was_lost() {
        let corners = [[30.0, 0.0], [30.0, 50.0], [10.0, 50.0], [10.0, 0.0]];
        let border = corners.map(|[x, y]| Point3::new(x, y, 0.0));
        let at = |y: f64| Point3::new(20.0, y, 0.0);
        let lost_early = margin_mm(&at(4.0), &at(30.0), &border);
        assert!((lost_early - 4.0).abs() < 1e-9, "{lost_early}");
        let cut_off = margin_mm(&at(-6.0), &at(1.0), &border);
        assert!((cut_off + 7.0).abs() < 1e-9, "{cut_off}");
    }

    #[test]
    fn a_slight_ridge_before_a_higher_fellow_may_be_its_foot() {
        let is_sure = |mut own: Closing, fellow: &Closing| {
            doubted_by_fellow(&mut own, fellow);
            own.extent.margin.is_some_and(|m| m.mm > m.uncertainty_mm)
        };
        let fellow = ridge(-24.0, 3.8, 5.7);
        assert!(!is_sure(ridge(-20.0, 0.8, 1.7), &fellow));
        assert!(is_sure(ridge(-23.0, 0.8, 1.7), &fellow));
        assert!(is_sure(ridge(-20.0, 3.0, 1.7), &fellow));
        assert!(is_sure(fellow, &ridge(-20.0, 0.8, 1.7)));
    }

    #[test]
    fn an_open_hollow_is_no_pad_where_the_whole_one_lies_behind_its_end() {
        let [open, whole] = [hollow(-17.0, 2.5, false), hollow(-21.0, 0.6, true)];
        assert_eq!(disproved_of([open, whole], [-17.0, -28.0]), Some(0));
        assert_eq!(disproved_of([whole, open], [-28.0, -17.0]), Some(1));
    }

    #[test]
    fn a_whole_hollow_outranks_a_deeper_open_one() {
        let [open, whole] = [hollow(-31.0, 4.0, false), hollow(-22.0, 0.6, true)];
        assert_eq!(disproved_of([whole, open], [-28.0, -31.0]), Some(1));
    }

    #[test]
    fn two_of_a_kind_that_lie_opposite_are_both_pads() {
        let [right, left] = [hollow(-22.0, 0.6, true), hollow(-24.0, 3.0, true)];
        assert_eq!(disproved_of([right, left], [-28.0, -28.0]), None);
    }
}
