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
mod palate;
mod places;
mod sources;
mod surroundings;
mod trough;

pub use figures::{
    Landmark, LandmarkMark, LandmarkName, LandmarkSource, NEARBY_MM, Nearby, NearbyKind, Seen,
    Unseen,
};
pub(crate) use sources::Sources;

use crate::words::{Arch, Side};
use ground::Ground;
use nalgebra::Point3;
use sources::Sighting;
use surroundings::Surroundings;
use trough::TroughEnd;

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
    let beside = |side, other| {
        let found = frena::find(ground, name, Some(side), other);
        (side, found)
    };
    let point = |found: &frena::Frenum| found.seen.as_ref().ok().map(|seen| seen.point);
    let (_, right) = beside(Side::Right, None);
    let (_, left) = beside(Side::Left, point(&right));
    let (_, right) = beside(Side::Right, point(&left));
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
        })
        .collect()
}

/// A sighting whose places are local.
fn of_local(
    ground: &Ground<'_>,
    name: LandmarkName,
    side: Option<Side>,
    seen: Result<Seen, Unseen>,
    expected: Option<Point3<f64>>,
) -> Sighting {
    Sighting {
        name,
        side,
        seen: seen.map(|seen| Seen {
            point: ground.scan(&seen.point),
            ..seen
        }),
        expected: expected.map(|p| ground.scan(&p)),
    }
}

/// What closes the trough of a side, and the trough's last place.
fn end_of_trough(
    ground: &Ground<'_>,
    limb: &[Point3<f64>],
    what: impl Fn(&TroughEnd) -> Result<Seen, Unseen>,
) -> (Result<Seen, Unseen>, Option<Point3<f64>>) {
    match TroughEnd::follow(&ground.map, limb) {
        Some(trough) => (what(&trough), Some(trough.last())),
        None => (Err(Unseen::NoSurface), limb.last().copied()),
    }
}

fn maxillary(ground: &Ground<'_>) -> Vec<Sighting> {
    let seal = places::seal(ground);
    let back = seal.as_ref().ok().map(|seen| ground.local(&seen.point));
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
    let mut found = vec![
        of_local(
            ground,
            LandmarkName::IncisivePapilla,
            None,
            palate::papilla(ground),
            front,
        ),
        of_local(
            ground,
            LandmarkName::Rugae,
            None,
            palate::rugae(ground),
            None,
        ),
        of_local(ground, LandmarkName::FoveaePalatini, None, foveae, back),
        Sighting {
            name: LandmarkName::PosteriorPalatalSeal,
            side: None,
            seen: seal,
            expected: None,
        },
    ];
    for side in [Side::Right, Side::Left] {
        let limb = ground.limb(side);
        let (notch, end) = end_of_trough(ground, &limb, |t| t.ridge(ground.noise_mm));
        found.push(of_local(
            ground,
            LandmarkName::HamularNotch,
            Some(side),
            notch,
            end,
        ));
        found.push(of_local(
            ground,
            LandmarkName::Tuberosity,
            Some(side),
            places::tuberosity(ground, &limb),
            end,
        ));
    }
    found
}

fn mandibular(ground: &Ground<'_>) -> Vec<Sighting> {
    [Side::Right, Side::Left]
        .into_iter()
        .flat_map(|side| {
            let limb = ground.limb(side);
            let (pad, end) = end_of_trough(ground, &limb, |t| t.hollow(ground.noise_mm));
            [
                of_local(ground, LandmarkName::RetromolarPad, Some(side), pad, end),
                of_local(
                    ground,
                    LandmarkName::BuccalShelf,
                    Some(side),
                    places::buccal_shelf(ground, &limb),
                    None,
                ),
                Sighting {
                    name: LandmarkName::LingualFlange,
                    side: Some(side),
                    seen: places::lingual_flange(ground, side),
                    expected: None,
                },
            ]
        })
        .collect()
}
