//! Registration, distances and naming on real scans: two body surfaces and a
//! tooth-bearing half arch. None is an impression, all have what phantoms lack:
//! a scanner's own noise, holes and triangles.

use crate::Population;
use fixtures::{quantile, something_else};
use geometry::registration::{Target, register_anywhere};
use geometry::sampling::spread_over;
use geometry::signed_distance::{Solid, angle_weighted_normals};
use measure::COARSEST_EDGE_FOR_COVER_MM;
use mesh::{Integrity, Mesh, SpatialIndex, Topology, read_scan};
use nalgebra::{Isometry3, Point3, UnitVector3, Vector3};
use rand::{Rng, RngExt, SeedableRng};
use rand_pcg::Pcg64Mcg;
use std::collections::BTreeMap;
use std::path::Path;

const SCANS: [&str; 3] = [
    "scans/tooth-bearing-half-arch-170k.ply",
    "robustness/ampscan/stl_file.stl",
    "robustness/ampscan/stl_file_2.stl",
];

/// The scans that are there, in mm, each with its name.
fn scans() -> Vec<(&'static str, Mesh)> {
    let folder = Path::new(env!("CARGO_MANIFEST_DIR")).join("../../../shared/data");
    SCANS
        .into_iter()
        .filter_map(|name| {
            let path = folder.join(name);
            if !path.exists() {
                println!("skipped: {name} is absent from ../shared/data");
                return None;
            }
            Some((name, read_scan(&path).expect("a sound scan").mesh))
        })
        .collect()
}

/// Points that stand for the part.
const SOURCE_POINTS: usize = 10_000;

/// Sixty of a hundred triangles of each scan, cut off along a plane of any
/// direction, triangulated anew, noisy and in any pose, are laid back on the
/// whole, with the 95th percentile of the points within 0.05 mm of where they belong.
pub fn a_part_in_any_pose_is_laid_back_on_the_whole(population: Population) {
    let promise = population.asked("real-surfaces");
    let scans = scans();
    let targets: Vec<Target> = scans.iter().map(|(_, whole)| Target::new(whole)).collect();
    let seeds = population.seeds(0, 2);
    let trials: Vec<(usize, u64)> = (0..scans.len())
        .flat_map(|scan| seeds.iter().map(move |&seed| (scan, seed)))
        .collect();
    let errors_mm: Vec<Option<f64>> = promise.rows(trials.clone(), |&(scan, seed)| {
        let whole = &scans[scan].1;
        let mut chance = Pcg64Mcg::seed_from_u64(seed);
        let part = finer(
            &cropped(whole, 0.6, &mut chance),
            COARSEST_EDGE_FOR_COVER_MM,
        );
        let motion = any_motion(whole, &mut chance);
        let again = scanned_again(&part, 0.02, &mut chance).moved(&motion);
        let source = spread_over(&again, SOURCE_POINTS, |_| true);
        let found = register_anywhere(&source, &targets[scan], &|| {}).ok()?;
        Some(moved_by_mm(
            &part,
            &(found.target_from_source * motion),
            0.95,
        ))
    });
    let good = errors_mm.iter().flatten().filter(|&&e| e <= 0.05).count();
    let worst = errors_mm.iter().flatten().copied().fold(0.0, f64::max);
    promise.figure(
        "60 % in any pose, triangulated anew, noise 0.02 mm, laid back on the whole: within 0.05 mm; 95th percentile, worst",
        "all; 0.05 mm",
        format!("{good} of {}; {worst:.4} mm", trials.len()),
    );
    for ((scan, seed), error_mm) in trials.iter().zip(&errors_mm) {
        let name = scans[*scan].0;
        assert!(
            error_mm.is_some_and(|mm| mm <= 0.05),
            "{name}, seed {seed}: {error_mm:?} mm"
        );
    }
}

/// A copy blown up by 1.5 mm along its vertex normals lies 1.5 mm off.
pub fn a_copy_moved_out_by_1_5_mm_reads_1_5_mm() {
    const OUT_MM: f64 = 1.5;
    for (name, scan) in scans() {
        let topology = Topology::of(&scan);
        let index = SpatialIndex::new(&scan);
        let out: Vec<Point3<f64>> = scan
            .vertices()
            .iter()
            .zip(scan.vertex_normals())
            .map(|(p, normal)| p + normal * OUT_MM)
            .collect();
        let normals = angle_weighted_normals(&scan);
        let mut distances: Vec<f64> = Solid::new(&scan, &topology, &index, &normals, 1.5)
            .distances(&out)
            .into_iter()
            .flatten()
            .collect();
        let median = quantile(&mut distances, 0.5);
        println!("{name}: median distance {median:.4} mm");
        assert!((median - OUT_MM).abs() <= 0.05, "{name}: {median} mm");
    }
}

/// No real scan is taken for an impression.
pub fn none_of_them_is_taken_for_an_impression() {
    for (name, scan) in scans() {
        println!("{name}: {}", something_else(&scan, None));
    }
}

/// The share of the triangles that lies farthest along a direction left to
/// chance.
fn cropped(whole: &Mesh, share: f64, chance: &mut impl Rng) -> Mesh {
    let direction = any_direction(chance);
    let along = |t: usize| -> f64 {
        let corners = whole.corners(t);
        corners.iter().map(|p| direction.dot(&p.coords)).sum()
    };
    let mut places: Vec<f64> = (0..whole.triangles().len()).map(along).collect();
    let cut = quantile(&mut places, 1.0 - share);
    whole.filtered(|t| along(t) > cut)
}

/// The same surface with every triangle divided into four at the middles of its
/// edges, until the median edge is no longer than this, mm. New triangles as
/// coarse as the body scans' (3 mm) would cut off several hundredths of a
/// millimetre of all that bulges, and the pose would show it.
fn finer(surface: &Mesh, edge_mm: f64) -> Mesh {
    if Integrity::of(surface, &Topology::of(surface)).median_edge <= edge_mm {
        return surface.clone();
    }
    let mut vertices = surface.vertices().to_vec();
    let mut middles = BTreeMap::new();
    let mut middle = |a: u32, b: u32| {
        *middles.entry((a.min(b), a.max(b))).or_insert_with(|| {
            vertices.push(nalgebra::center(
                &vertices[a as usize],
                &vertices[b as usize],
            ));
            vertices.len() as u32 - 1
        })
    };
    let triangles = surface
        .triangles()
        .iter()
        .flat_map(|&[a, b, c]| {
            let [ab, bc, ca] = [middle(a, b), middle(b, c), middle(c, a)];
            [[a, ab, ca], [ab, b, bc], [ca, bc, c], [ab, bc, ca]]
        })
        .collect();
    let divided = Mesh::new(vertices, triangles, None).expect("every middle is a vertex");
    finer(&divided, edge_mm)
}

/// The surface triangulated anew: each vertex gives way to a point left to
/// chance in a triangle beside it, so that none is kept and the new edges cut
/// the old. Noise of this standard deviation (mm) is added along the normals.
fn scanned_again(part: &Mesh, noise_sd_mm: f64, chance: &mut impl Rng) -> Mesh {
    let mut beside = vec![None; part.vertices().len()];
    for corners in part.triangles() {
        for k in 0..3 {
            let others = [corners[(k + 1) % 3], corners[(k + 2) % 3]];
            beside[corners[k] as usize] = Some(others.map(|v| part.vertices()[v as usize]));
        }
    }
    let vertices = part
        .vertices()
        .iter()
        .zip(&beside)
        .zip(part.vertex_normals())
        .map(|((old, others), normal)| {
            let [b, c] = others.expect("a part keeps only vertices of triangles");
            let (along, aside) = (chance.random_range(0.1..0.4), chance.random::<f64>());
            let place = old + (b - old) * (along * aside) + (c - old) * (along * (1.0 - aside));
            place + normal * (noise_sd_mm * gaussian(chance))
        })
        .collect();
    Mesh::new(vertices, part.triangles().to_vec(), None).expect("as many vertices as before")
}

/// A motion that turns by any rotation and moves by up to the surface's size.
fn any_motion(whole: &Mesh, chance: &mut impl Rng) -> Isometry3<f64> {
    let (low, high) = whole.bounds().expect("the scan has triangles");
    let far = (high - low).norm() * chance.random::<f64>();
    let shift = any_direction(chance).into_inner() * far;
    // Four Gaussian numbers make a rotation that favours none (Shoemake 1992).
    let turn = nalgebra::Quaternion::from(nalgebra::Vector4::from_fn(|_, _| gaussian(chance)));
    let turn = nalgebra::UnitQuaternion::from_quaternion(turn);
    Isometry3::from_parts(shift.into(), turn)
}

fn any_direction(chance: &mut impl Rng) -> UnitVector3<f64> {
    UnitVector3::new_normalize(Vector3::from_fn(|_, _| gaussian(chance)))
}

/// A standard Gaussian number (Box and Muller 1958).
fn gaussian(chance: &mut impl Rng) -> f64 {
    let (u, v) = (1.0 - chance.random::<f64>(), chance.random::<f64>());
    (-2.0 * u.ln()).sqrt() * (std::f64::consts::TAU * v).cos()
}

/// How far a motion moves the vertices, mm: a quantile over all of them.
fn moved_by_mm(mesh: &Mesh, motion: &Isometry3<f64>, part: f64) -> f64 {
    let mut moved: Vec<f64> = mesh
        .vertices()
        .iter()
        .map(|p| (motion * p - p).norm())
        .collect();
    quantile(&mut moved, part)
}
