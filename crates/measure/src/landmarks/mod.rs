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
    Covered, Extent, Landmark, LandmarkMark, LandmarkName, LandmarkSource, NEARBY_MM, Nearby,
    NearbyKind, Seen, Unseen,
};
pub(crate) use sources::Sources;

use crate::anatomy;
use crate::border::Measured;
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
    what: impl Fn(&TroughEnd, f64) -> Result<(Seen, Extent), Unseen>,
) -> [Sighting; 2] {
    let mut troughs = [Side::Right, Side::Left].map(|side| {
        let limb = ground.limb(side);
        let trough = TroughEnd::follow(&ground.map, &limb);
        let last = trough.as_ref().map(TroughEnd::last);
        let found = match &trough {
            Some(trough) => what(trough, ground.noise_mm),
            None => Err(Unseen::NoSurface),
        };
        (side, found, last.or_else(|| limb.last().copied()))
    });
    // Two that lie far from opposite each other are not both what is looked for: the
    // slighter one is a wave of the trough's floor.
    if let [(_, Ok((right, _)), _), (_, Ok((left, _)), _)] = &troughs
        && (right.point.y - left.point.y).abs() > 2.0 * anatomy::FELLOW_WITHIN_MM
    {
        let slighter = usize::from(right.relief_mm > left.relief_mm);
        troughs[slighter].1 = Err(Unseen::TroughOpen { open_mm: 0.0 });
    }
    let fellow = |number: usize| {
        let (seen, _) = troughs[1 - number].1.as_ref().ok()?;
        Some((
            Point3::new(-seen.point.x, seen.point.y, seen.point.z),
            seen.uncertainty_mm,
        ))
    };
    [0, 1].map(|number| {
        let (side, found, last) = &troughs[number];
        let (seen, extent, expected) = match (found, fellow(number)) {
            (Ok((seen, extent)), _) => (Ok(*seen), *extent, None),
            (Err(why), Some((expected, uncertainty_mm))) => {
                let margin = last.map(|last| Measured {
                    mm: expected.y - last.y,
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
