//! Landmarks that are regions: their places follow from crest, border and the
//! landmarks at the ends of the trough, and each is known by how much of its
//! region lies inside the border.

use super::figures::{Covered, Extent, LandmarkName, Seen, Unseen};
use super::ground::Ground;
use super::sources::Sighting;
use crate::anatomy;
use crate::border::{BorderPart, Station};
use crate::words::Side;
use geometry::closed_line::inside_by_in_plan;
use nalgebra::{Point2, Point3, Vector2};

/// Places of regions are known to this, mm (k = 2).
const PLACE_MM: f64 = 3.0;
/// A share of a half is known to this, % (k = 2).
const HALF_SHARE_PERCENT: f64 = 10.0;
/// Regions have no relief of their own to be known by.
const CONFIDENCE: f64 = 0.5;
/// Step of the grid over a region, mm.
const GRID_MM: f64 = 1.0;

fn region(point: Point3<f64>) -> Seen {
    Seen {
        point,
        uncertainty_mm: PLACE_MM,
        confidence: CONFIDENCE,
        relief_mm: None,
    }
}

/// The share of yes among answers; `None` where nothing was asked.
fn share(answers: impl Iterator<Item = bool>) -> Option<Covered> {
    let (mut yes, mut all) = (0, 0);
    for answer in answers {
        yes += usize::from(answer);
        all += 1;
    }
    (all > 0).then(|| {
        let part = yes as f64 / all as f64;
        Covered {
            percent: 100.0 * part,
            // The edge of the region moves it most where half is covered.
            uncertainty_percent: 2.0 * HALF_SHARE_PERCENT * (part * (1.0 - part)).sqrt(),
        }
    })
}

fn covering(covered: Option<Covered>) -> Extent {
    Extent {
        margin: None,
        covered,
    }
}

/// The posterior palatal seal: the border at the midline, across the back, and how
/// much of the way from notch to notch the border lies no farther than the seal
/// before the line that joins the notches.
pub(super) fn seal(ground: &Ground<'_>, notches: &[Sighting; 2]) -> Sighting {
    let seen = middle_of_back(ground);
    let place = |notch: &Sighting| {
        let at = notch
            .seen
            .as_ref()
            .map_or(notch.expected, |seen| Some(seen.point))?;
        (notch.seen.is_ok() || notch.extent.margin.is_some()).then(|| ground.local(&at))
    };
    let ends = place(&notches[0]).zip(place(&notches[1]));
    let (seen, extent) = match (seen, ends) {
        (Ok(seen), Some((a, b))) => (Ok(seen), covering(seal_covered(ground, &a, &b))),
        (Ok(_), None) => (Err(Unseen::NoNeighbour), Extent::default()),
        (Err(why), _) => (Err(why), Extent::default()),
    };
    Sighting {
        name: LandmarkName::PosteriorPalatalSeal,
        side: None,
        seen,
        expected: None,
        extent,
    }
}

/// The border at the midline, across the back. Scan coordinates.
fn middle_of_back(ground: &Ground<'_>) -> Result<Seen, Unseen> {
    let border = ground.border.ok_or(Unseen::NoBorder)?;
    let off = |station: &Station| ground.local(&station.point).x.abs();
    let nearest = (border.stations.iter())
        .filter(|station| station.part == BorderPart::Posterior)
        .min_by(|a, b| off(a).total_cmp(&off(b)))
        .ok_or(Unseen::NoBorder)?;
    let Some(height) = nearest.uncertainty_mm else {
        return Err(Unseen::NoSurface);
    };
    Ok(Seen {
        point: nearest.point,
        // Along the seating axis by the station, along the border by the frame.
        uncertainty_mm: height.hypot(0.7),
        confidence: if nearest.scan_ends { 0.0 } else { CONFIDENCE },
        relief_mm: None,
    })
}

/// The seal lies no farther before the line that joins the notches than
/// [`anatomy::SEAL_BEFORE_NOTCHES_MM`], and on either side as far back as on the other,
/// but for [`anatomy::FELLOW_WITHIN_MM`].
fn seal_covered(ground: &Ground<'_>, a: &Point3<f64>, b: &Point3<f64>) -> Option<Covered> {
    let line = ground.border_line();
    let count = ((b - a).xy().norm() / GRID_MM) as usize;
    let before_notches: Vec<Option<f64>> = (1..count)
        .map(|k| a.xy() + (b - a).xy() * (k as f64 / count as f64))
        .map(|on_line| border_before(ground, &line, on_line))
        .collect();
    // Behind the limbs the border runs too steeply to be compared.
    let behind_limb = (anatomy::BACK_OF_LIMB_WITHIN_MM / GRID_MM) as usize;
    let opposite = |k: usize| {
        let is_between =
            (behind_limb..before_notches.len().saturating_sub(behind_limb)).contains(&k);
        before_notches[before_notches.len() - 1 - k].filter(|_| is_between)
    };
    share(before_notches.iter().enumerate().map(|(k, own)| {
        let most = opposite(k).map_or(anatomy::SEAL_BEFORE_NOTCHES_MM, |mm| {
            (mm + anatomy::FELLOW_WITHIN_MM).min(anatomy::SEAL_BEFORE_NOTCHES_MM)
        });
        own.is_some_and(|mm| mm < most)
    }))
}

/// How far the border lies before a place across the back, mm; below 0 behind it.
/// `None` where nothing was scanned that far before it where a seal may lie.
fn border_before(ground: &Ground<'_>, line: &[Point3<f64>], place: Point2<f64>) -> Option<f64> {
    const STEP_MM: f64 = 0.25;
    const BEHIND_MM: f64 = 10.0;
    let at = |behind: f64| place - Vector2::y() * behind;
    if !is_inside(ground, line, at(-anatomy::SEAL_BEFORE_NOTCHES_MM)) {
        return None;
    }
    let steps = ((anatomy::SEAL_BEFORE_NOTCHES_MM + BEHIND_MM) / STEP_MM) as i32;
    (0..=steps)
        .map(|step| f64::from(step) * STEP_MM - anatomy::SEAL_BEFORE_NOTCHES_MM)
        .take_while(|&behind| inside_by_in_plan(line, at(behind)).is_some_and(|by| by > 0.0))
        .last()
        .map(|behind| -behind)
}

/// Whether a place lies inside the border and was scanned.
fn is_inside(ground: &Ground<'_>, line: &[Point3<f64>], place: Point2<f64>) -> bool {
    ground.map.at(place).is_some() && inside_by_in_plan(line, place).is_some_and(|by| by > 0.0)
}

/// The tuberosity: the end of the ridge before a hamular notch, where that is seen
/// or expected.
pub(super) fn tuberosity(ground: &Ground<'_>, notch: &Sighting) -> Sighting {
    let name = LandmarkName::Tuberosity;
    let unseen = |why| Sighting::of_local(ground, name, notch.side, Err(why), None);
    let known = match &notch.seen {
        Ok(seen) => Some(seen.point),
        Err(_) => notch.extent.margin.and(notch.expected),
    };
    let Some(notch_at) = known.map(|p| ground.local(&p)) else {
        return unseen(Unseen::NoNeighbour);
    };
    let [near, far] = anatomy::TUBEROSITY_BEFORE_NOTCH_MM;
    let before = |mm: f64| Point2::new(notch_at.x, notch_at.y + mm);
    let covered = covered_rectangle(
        ground,
        (before(near) + before(far).coords) / 2.0,
        [anatomy::RIDGE_HALF_WIDTH_MM, (far - near) / 2.0],
    );
    let middle = before((near + far) / 2.0);
    let Some(height) = ground.map.at(middle) else {
        return Sighting {
            extent: covering(covered),
            expected: Some(ground.scan(&Point3::new(middle.x, middle.y, notch_at.z))),
            ..unseen(Unseen::NoSurface)
        };
    };
    let seen = Ok(region(Point3::new(middle.x, middle.y, height)));
    Sighting {
        extent: covering(covered),
        ..Sighting::of_local(ground, name, notch.side, seen, None)
    }
}

/// How much of a rectangle along x and y lies inside the border.
fn covered_rectangle(
    ground: &Ground<'_>,
    middle: Point2<f64>,
    half_sides: [f64; 2],
) -> Option<Covered> {
    let line = ground.border_line();
    let [across, along] = half_sides.map(|half| (half / GRID_MM) as i32);
    let places = (-across..=across).flat_map(|i| {
        (-along..=along).map(move |k| middle + Vector2::new(f64::from(i), f64::from(k)) * GRID_MM)
    });
    share(places.map(|place| is_inside(ground, &line, place)))
}

/// The buccal shelf: buccal to the crest between buccal frenum and retromolar
/// pad (LM-14).
pub(super) fn buccal_shelf(ground: &Ground<'_>, side: Side) -> Sighting {
    let name = LandmarkName::BuccalShelf;
    let length = ground.limb_length(side);
    let beside = |part: f64, outward_mm: f64| {
        let (place, outward) = ground.crest_at(ground.sign_of(side) * part * length)?;
        Some(place + outward * outward_mm)
    };
    let seen = beside(
        anatomy::BUCCAL_SHELF_MIDDLE_PART,
        anatomy::BUCCAL_SHELF_MIDDLE_MM,
    )
    .and_then(|place| Some(region(Point3::new(place.x, place.y, ground.map.at(place)?))))
    .ok_or(Unseen::NoSurface);
    let line = ground.border_line();
    let reach = [1.0, anatomy::BUCCAL_SHELF_MIDDLE_MM];
    let parts = (0..=8).map(|k| {
        let from = anatomy::BUCCAL_SHELF_FROM_PART;
        from + (anatomy::DISTAL_PART - from) * f64::from(k) / 8.0
    });
    let answers = parts
        .flat_map(|part| reach.map(|mm| beside(part, mm)))
        .map(|place| place.is_some_and(|place| is_inside(ground, &line, place)));
    Sighting {
        extent: covering(ground.border.and_then(|_| share(answers))),
        ..Sighting::of_local(ground, name, Some(side), seen, None)
    }
}

/// The lingual flange down to the retromylohyoid region: its border there, where
/// it reaches deepest, and how much of that border was scanned and turns over.
pub(super) fn lingual_flange(ground: &Ground<'_>, side: Side) -> Sighting {
    let mut sighting = Sighting {
        name: LandmarkName::LingualFlange,
        side: Some(side),
        seen: Err(Unseen::NoBorder),
        expected: None,
        extent: Extent::default(),
    };
    let Some(border) = ground.border else {
        return sighting;
    };
    let lingual: Vec<(&Station, Point3<f64>)> = (border.stations.iter())
        .filter(|s| s.part == BorderPart::Lingual)
        .map(|station| (station, ground.local(&station.point)))
        .filter(|(_, local)| ground.side(local) == Some(side))
        .collect();
    let (front, back) = lingual.iter().fold(
        (f64::NEG_INFINITY, f64::INFINITY),
        |(front, back), (_, p)| (front.max(p.y), back.min(p.y)),
    );
    let behind = |local: &Point3<f64>| {
        front - local.y >= anatomy::RETROMYLOHYOID_BORDER_PART * (front - back)
    };
    let hind: Vec<_> = lingual.iter().filter(|(_, local)| behind(local)).collect();
    if let Some((station, _)) = hind.iter().max_by(|a, b| a.1.z.total_cmp(&b.1.z)) {
        sighting.seen = Ok(region(station.point));
    }
    let turns_over = |station: &Station| !station.scan_ends && station.uncertainty_mm.is_some();
    sighting.extent = covering(share(hind.iter().map(|(station, _)| turns_over(station))));
    sighting
}
