//! Space between the jaws from a record made of two phantoms at a known distance.

use crate::Population;
use fixtures::{quantile, together};
use measure::record::NoRelation;
use measure::record::{Jaw, JawRelation, measure as relate};
use measure::{MeasureSettings, Measuring};
use mesh::Mesh;
use nalgebra::{Isometry3, Point3, Translation3, UnitQuaternion, Vector3};
use phantom::{Arch, Options, Phantom, Pose};

/// Space between the origins of the two made frames, mm.
const APART_MM: f64 = 34.0;

fn made(arch: Arch, seed: u64, edge_mm: f64, pose: Pose) -> Phantom {
    Phantom::new(&Options {
        arch,
        seed,
        edge_mm,
        tray_edge_mm: 2.5,
        noise_sd_mm: 0.02,
        handle: false,
        pose,
        ..Options::default()
    })
}

/// Where the lower jaw stands in the record: turned over, so that its tissue
/// side faces down and its right the right of the upper, a little tilted.
fn record_from_lower(seed: u64) -> Isometry3<f64> {
    let over = UnitQuaternion::from_axis_angle(&Vector3::y_axis(), std::f64::consts::PI);
    let tilt = UnitQuaternion::from_euler_angles(0.03 * (seed % 3) as f64, 0.02, 0.01);
    Isometry3::from_parts(Translation3::new(0.5, 1.0, -APART_MM), tilt * over)
}

/// Both impressions, back to back, with nothing scanned of what lies between.
fn record(upper: &Phantom, lower: &Phantom, seed: u64) -> Mesh {
    record_of(&upper.impression, &lower.impression, seed)
}

fn record_of(upper: &Mesh, lower: &Mesh, seed: u64) -> Mesh {
    let moved = lower.clone().moved(&record_from_lower(seed));
    let first = upper.vertices().len() as u32;
    let both = together(upper, &moved);
    let outward = [Vector3::z(), -Vector3::z()];
    both.filtered(|t| {
        let half = usize::from(both.triangles()[t][0] >= first);
        both.area_vector(t).normalize().dot(&outward[half]) > -0.5
    })
}

/// The relation of two impressions in a record.
fn relation(upper: &Mesh, lower: &Mesh, record: &Mesh) -> Result<JawRelation, NoRelation> {
    let settings = MeasureSettings::default();
    let [one, two] = [upper, lower].map(|scan| Measuring::new(scan, None, &settings));
    relate(jaw(upper, &one), jaw(lower, &two), record, &|| {})
}

fn jaw<'a>(mesh: &'a Mesh, measuring: &'a Measuring<'_>) -> Jaw<'a> {
    let border = measuring.border().expect("an impression");
    Jaw {
        mesh,
        frame: &measuring.frame().expect("an impression").frame,
        crest_line: &border.expect("and a border").crest_line,
        scanner_uncertainty_mm: 0.0,
    }
}

fn related(seed: u64) -> (JawRelation, Phantom, Phantom) {
    let [upper, lower] =
        [Arch::Maxillary, Arch::Mandibular].map(|arch| made(arch, seed, 0.5, Pose::Random));
    let [upper_again, lower_again] =
        [Arch::Maxillary, Arch::Mandibular].map(|arch| made(arch, seed, 0.6, Pose::AsMade));
    let record = record(&upper_again, &lower_again, seed);
    let found = relation(&upper.impression, &lower.impression, &record)
        .unwrap_or_else(|why| panic!("{seed}: {why}"));
    (found, upper_again, lower_again)
}

/// By the phantoms' own crest lines: from a point of the upper down to the
/// lower; `None` past the end of either.
fn truth_mm(at: &Point3<f64>, upper: &Phantom, lower: &Phantom, seed: u64) -> Option<f64> {
    let from_lower = record_from_lower(seed);
    let down = from_lower * lower.truth.axes.seating;
    let axis = (upper.truth.axes.seating - down).normalize();
    let off = |p: &Point3<f64>, to: &Point3<f64>| {
        let v = p - to;
        (v - axis * axis.dot(&v)).norm()
    };
    let nearest = |line: &[Point3<f64>]| {
        let nearest =
            (0..line.len()).min_by(|&a, &b| off(&line[a], at).total_cmp(&off(&line[b], at)));
        nearest
            .filter(|&i| i > 0 && i + 1 < line.len())
            .map(|i| line[i])
    };
    let below: Vec<Point3<f64>> = lower
        .truth
        .crest_line
        .iter()
        .map(|p| from_lower * p)
        .collect();
    Some(axis.dot(&(nearest(&upper.truth.crest_line)? - nearest(&below)?)))
}

/// The space at every station of a record, within 0.15 mm.
pub fn the_planted_space_is_found_at_every_station(population: Population) {
    let promise = population.asked("space-between-the-jaws");
    let outcomes: Vec<(Vec<f64>, f64, f64, usize)> =
        promise.rows(population.seeds(0, 3), |&seed| {
            let (found, upper, lower) = related(seed);
            let errors: Vec<f64> = (found.stations.iter())
                .filter_map(|station| {
                    Some((station.mm.ok()? - truth_mm(&station.at, &upper, &lower, seed)?).abs())
                })
                .collect();
            let over = errors.iter().filter(|e| **e > found.uncertainty_mm).count();
            let down = record_from_lower(seed) * lower.truth.axes.seating;
            let angle = upper.truth.axes.seating.angle(&-down).to_degrees();
            assert!((found.ridge_angle_deg - angle).abs() <= found.ridge_angle_uncertainty_deg);
            let sides: Vec<_> = found.stations.iter().filter_map(|s| s.side).collect();
            assert_eq!(sides.first(), Some(&measure::Side::Right));
            assert_eq!(sides.last(), Some(&measure::Side::Left));
            (errors, found.uncertainty_mm, angle, over)
        });
    let mut errors: Vec<f64> = outcomes.iter().flat_map(|o| o.0.clone()).collect();
    let stated = outcomes.iter().map(|o| o.1).fold(0.0, f64::max);
    let over: usize = outcomes.iter().map(|o| o.3).sum();
    let worst = errors.iter().copied().fold(0.0, f64::max);
    promise.figure(
        "error, median, 95th percentile, worst",
        "worst 0.15 mm",
        format!(
            "{:.3}, {:.3}, {worst:.3} mm over {} stations",
            quantile(&mut errors, 0.5),
            quantile(&mut errors, 0.95),
            errors.len()
        ),
    );
    promise.figure(
        "stated uncertainty at most; stations that exceed theirs",
        "5 %",
        format!("{stated:.3} mm; {over}"),
    );
    assert!(worst <= 0.15);
    assert!(over * 20 <= errors.len());
}

/// What is left of a jaw (as made) whose back parts were cut off, so that this share
/// of its crest line is in front of the cut.
fn front_part(jaw: &Phantom, share: f64) -> Mesh {
    let mut along: Vec<f64> = jaw.truth.crest_line.iter().map(|p| p.y).collect();
    let cut_y = quantile(&mut along, 1.0 - share);
    let mesh = &jaw.impression;
    mesh.filtered(|t| mesh.corners(t).iter().all(|p| p.y > cut_y))
}

/// Where the record shows the front parts of both jaws alone, the space is right at
/// every station that it shows, and given nowhere else.
pub fn a_record_of_front_parts_gives_the_space_where_it_shows_the_jaws(population: Population) {
    const SHARES: [f64; 3] = [0.35, 0.45, 0.6];
    /// A crest that lies so near to the cut may be seen or not, mm.
    const AT_THE_CUT_MM: f64 = 3.0;
    let promise = population.asked("record-of-front-parts");
    let outcomes: Vec<(Vec<f64>, f64, usize, usize)> =
        promise.rows(population.seeds(20, 3), |&seed| {
            let share = SHARES[seed as usize % SHARES.len()];
            let [upper, lower] = [Arch::Maxillary, Arch::Mandibular]
                .map(|arch| made(arch, seed, 0.5, Pose::Random).impression);
            let [upper_again, lower_again] =
                [Arch::Maxillary, Arch::Mandibular].map(|arch| made(arch, seed, 0.6, Pose::AsMade));
            let [front_upper, front_lower] =
                [&upper_again, &lower_again].map(|jaw| front_part(jaw, share));
            let cut_y = front_upper.bounds().expect("it has points").0.y;
            let record = record_of(&front_upper, &front_lower, seed);
            let found = relation(&upper, &lower, &record)
                .unwrap_or_else(|why| panic!("seed {seed}, {share}: {why}"));
            let errors: Vec<f64> = (found.stations.iter())
                .filter_map(|station| {
                    let truth_mm = truth_mm(&station.at, &upper_again, &lower_again, seed)?;
                    Some((station.mm.ok()? - truth_mm).abs())
                })
                .collect();
            let measured = found.stations.iter().filter(|station| station.mm.is_ok());
            let past = measured.filter(|station| station.at.y < cut_y - AT_THE_CUT_MM);
            let over = errors.iter().filter(|e| **e > found.uncertainty_mm).count();
            (errors, found.uncertainty_mm, past.count(), over)
        });
    let mut errors: Vec<f64> = outcomes.iter().flat_map(|o| o.0.clone()).collect();
    let stated = outcomes.iter().map(|o| o.1).fold(0.0, f64::max);
    let past: usize = outcomes.iter().map(|o| o.2).sum();
    let over: usize = outcomes.iter().map(|o| o.3).sum();
    let worst = errors.iter().copied().fold(0.0, f64::max);
    promise.figure(
        "35, 45 and 60 % of the arch: error, 95th percentile, worst",
        "worst 0.2 mm",
        format!(
            "{:.3}, {worst:.3} mm over {} stations",
            quantile(&mut errors, 0.95),
            errors.len()
        ),
    );
    promise.figure(
        "stations given where the record shows nothing; stated uncertainty at most; stations that exceed theirs",
        "0; 5 %",
        format!("{past}; {stated:.3} mm; {over}"),
    );
    assert!(worst <= 0.2);
    assert_eq!(past, 0);
    assert!(over * 20 <= errors.len());
}

/// Front parts of another mouth in the record are refused.
pub fn front_parts_of_another_mouth_are_refused() {
    let [upper, lower] =
        [Arch::Maxillary, Arch::Mandibular].map(|arch| made(arch, 11, 0.6, Pose::Random));
    for (other, share) in [(12, 0.35), (13, 0.45), (14, 0.6)] {
        let [front_upper, front_lower] = [Arch::Maxillary, Arch::Mandibular]
            .map(|arch| front_part(&made(arch, other, 0.6, Pose::AsMade), share));
        let record = record_of(&front_upper, &front_lower, 0);
        let found = relation(&upper.impression, &lower.impression, &record);
        println!("front parts of another mouth: {:?}", found.as_ref().err());
        assert!(found.is_err(), "mouth {other}, {share}");
    }
}

/// The record of another mouth is refused.
pub fn another_mouths_record_is_refused() {
    let [upper, lower] =
        [Arch::Maxillary, Arch::Mandibular].map(|arch| made(arch, 11, 0.6, Pose::Random));
    let others = [Arch::Maxillary, Arch::Mandibular].map(|arch| made(arch, 12, 0.6, Pose::AsMade));
    let record = record(&others[0], &others[1], 0);
    let found = relation(&upper.impression, &lower.impression, &record);
    println!("another mouth's record: {:?}", found.as_ref().err());
    assert!(matches!(
        found,
        Err(NoRelation::NotInRecord { .. } | NoRelation::JawsNotOpposed)
    ));
}
