//! The index against closed forms and against trying every triangle.

use super::*;
use proptest::prelude::*;

const UNLIMITED: f64 = f64::INFINITY;

/// A sphere of radius 10 about (100, 0, 0) as a fine grid of triangles.
fn sphere() -> Mesh {
    let (rows, columns) = (200_u32, 400_u32);
    let mut vertices = Vec::new();
    for i in 0..=rows {
        for j in 0..columns {
            let polar = std::f64::consts::PI * f64::from(i) / f64::from(rows);
            let azimuth = std::f64::consts::TAU * f64::from(j) / f64::from(columns);
            vertices.push(Point3::new(
                100.0 + 10.0 * polar.sin() * azimuth.cos(),
                10.0 * polar.sin() * azimuth.sin(),
                10.0 * polar.cos(),
            ));
        }
    }
    let mut triangles = Vec::new();
    for i in 0..rows {
        for j in 0..columns {
            let k = (j + 1) % columns;
            let (a, b) = (i * columns + j, i * columns + k);
            let (c, d) = (a + columns, b + columns);
            triangles.extend([[a, c, d], [a, d, b]]);
        }
    }
    Mesh::new(vertices, triangles, None).expect("grid indices are in range")
}

fn cloud() -> Vec<Point3<f64>> {
    (0..2000)
        .map(|i| {
            let t = f64::from(i);
            Point3::new(
                100.0 + 14.0 * (0.7 * t).sin(),
                13.0 * (1.3 * t).cos(),
                9.0 * (0.11 * t).sin(),
            )
        })
        .collect()
}

#[test]
fn every_processor_finds_the_same() {
    let index = SpatialIndex::new(&sphere());
    let oldest = SpatialIndex {
        level: Level::baseline(),
        ..index.clone()
    };
    let points = cloud();
    assert_eq!(
        index.nearest_many(&points, UNLIMITED),
        oldest.nearest_many(&points, UNLIMITED)
    );
    for point in points {
        let inward = (Point3::new(100.0, 0.0, 0.0) - point).normalize();
        let [hit, on_oldest] = [&index, &oldest].map(|i| i.first_hit(&point, &inward, UNLIMITED));
        assert!(hit.is_some());
        assert_eq!(hit, on_oldest);
    }
}

#[test]
fn distances_to_a_sphere_agree_with_its_formula() {
    let index = SpatialIndex::new(&sphere());
    let points = cloud();
    for (p, nearest) in points.iter().zip(index.nearest_many(&points, UNLIMITED)) {
        let formula = ((p - Point3::new(100.0, 0.0, 0.0)).norm() - 10.0).abs();
        let found = nearest.expect("the reach is unlimited");
        // The facets lie up to r (1 - cos(step)) = 1.3e-3 inside the sphere.
        assert!(
            (found.distance - formula).abs() < 1.5e-3,
            "{p}: {} {formula}",
            found.distance
        );
        let alone = index.nearest(p, UNLIMITED).expect("the reach is unlimited");
        assert!((alone.distance - found.distance).abs() < 1e-5);
    }
}

#[test]
fn one_thread_and_three_answer_with_the_same_bytes() {
    let answers = [1, 3].map(|threads| {
        let pool = rayon::ThreadPoolBuilder::new().num_threads(threads).build();
        pool.expect("a small pool can be built")
            .install(|| SpatialIndex::new(&sphere()).nearest_many(&cloud(), UNLIMITED))
    });
    assert_eq!(answers[0], answers[1]);
}

#[test]
fn nothing_is_found_beyond_the_reach() {
    let index = SpatialIndex::new(&sphere());
    assert!(index.nearest(&Point3::new(115.0, 0.0, 0.0), 4.9).is_none());
    assert!(index.nearest(&Point3::new(115.0, 0.0, 0.0), 5.1).is_some());
}

#[test]
fn a_mesh_without_triangles_is_nowhere() {
    let index = SpatialIndex::new(&Mesh::default());
    let p = Point3::new(1.0, 2.0, 3.0);
    assert_eq!(index.nearest(&p, UNLIMITED), None);
    assert_eq!(index.nearest_many(&[p, p], UNLIMITED), [None, None]);
    assert_eq!(index.ray(&p, &Vector3::x(), 100.0), None);
}

#[test]
fn coordinates_beyond_single_precision_do_no_harm() {
    let far = [[0.0, 0.0, 0.0], [1e300, 0.0, 0.0], [0.0, -1e300, 1.0]].map(Point3::from);
    let mesh = Mesh::new(far.to_vec(), vec![[0, 1, 2]; 20], None).expect("indices are in range");
    let index = SpatialIndex::new(&mesh);
    assert!(index.nearest(&far[0], UNLIMITED).is_some());
    assert_eq!(index.nearest(&Point3::new(f64::NAN, 0.0, 0.0), 1.0), None);
}

#[test]
fn a_ray_through_the_centre_meets_the_sphere_at_its_radius() {
    let index = SpatialIndex::new(&sphere());
    let centre = Point3::new(100.0, 0.0, 0.0);
    for p in cloud() {
        let direction = (centre - p).normalize();
        let hit = index.ray(&(centre - direction * 30.0), &direction, 100.0);
        assert!((hit.expect("the ray passes the centre") - 20.0).abs() < 2e-3);
    }
    assert_eq!(
        index.ray(&Point3::new(100.0, 0.0, 15.0), &Vector3::x(), 100.0),
        None
    );
    assert_eq!(
        index.ray(&Point3::new(70.0, 0.0, 0.0), &Vector3::x(), 19.9),
        None
    );
}

/// The four triangles of a square share its middle, and each two an edge.
#[test]
fn no_ray_slips_through_a_shared_edge() {
    let vertices = [
        [0.1, 0.2, 0.0],
        [7.3, -0.3, 0.1],
        [7.7, 6.9, 0.0],
        [-0.2, 7.1, 0.3],
        [3.3, 3.7, 0.2],
    ]
    .map(Point3::from);
    let triangles = vec![[0, 1, 4], [1, 2, 4], [2, 3, 4], [3, 0, 4]];
    let mesh = Mesh::new(vertices.to_vec(), triangles, None).expect("indices are in range");
    let index = SpatialIndex::new(&mesh);
    for i in 1..1000 {
        for corner in &vertices[..4] {
            let on_edge = vertices[4] + (corner - vertices[4]) * (f64::from(i) / 1000.0);
            let direction = Vector3::new(0.2, 0.1, -1.0).normalize();
            let hit = index.ray(&(on_edge - direction * 5.0), &direction, 10.0);
            assert!((hit.expect("the surface is unbroken") - 5.0).abs() < 1e-4);
        }
    }
}

/// Distance to a triangle by another road than the code's: the foot on the
/// plane, if all three edges see it on the same side, or else the edges.
fn distance_by_sides(p: &Point3<f64>, corners: &[Point3<f64>; 3]) -> f64 {
    let [a, b, c] = corners;
    let edges = [(a, b), (b, c), (c, a)];
    let to_edge = |(from, to): (&Point3<f64>, &Point3<f64>)| {
        let length = (to - from).norm();
        let Some(unit) = (to - from).try_normalize(1e-12) else {
            return (p - from).norm();
        };
        (p - (from + unit * (p - from).dot(&unit).clamp(0.0, length))).norm()
    };
    let nearest_edge = edges.map(to_edge).into_iter().fold(f64::INFINITY, f64::min);
    let Some(normal) = (b - a).cross(&(c - a)).try_normalize(1e-9) else {
        return nearest_edge;
    };
    let inside = edges
        .iter()
        .all(|(from, to)| (*to - *from).cross(&(p - *from)).dot(&normal) >= 0.0);
    if inside {
        (p - a).dot(&normal).abs()
    } else {
        nearest_edge
    }
}

/// Up to 60 triangles anywhere in a box of 80 mm, a third of them without area.
fn soup() -> impl Strategy<Value = Mesh> {
    let coordinate = || -40.0..40.0;
    let corner =
        (coordinate(), coordinate(), coordinate()).prop_map(|(x, y, z)| Point3::new(x, y, z));
    let corners = prop::collection::vec(corner, 3..40);
    let choice = prop::collection::vec(any::<[prop::sample::Index; 3]>(), 1..60);
    (corners, choice).prop_map(|(mut corners, choice)| {
        let triangles = choice
            .iter()
            .enumerate()
            .map(|(i, pick)| {
                let [a, b, c] = pick.map(|k| k.index(corners.len()) as u32);
                match i % 6 {
                    0 => [a, b, b],
                    1 => {
                        corners.push(nalgebra::center(&corners[a as usize], &corners[b as usize]));
                        [a, corners.len() as u32 - 1, b]
                    }
                    _ => [a, b, c],
                }
            })
            .collect();
        Mesh::new(corners, triangles, None).expect("indices are in range")
    })
}

proptest! {
    #[test]
    fn the_nearest_of_any_triangles_is_the_one_found_by_trying_all(
        mesh in soup(),
        points in prop::collection::vec(prop::array::uniform3(-60.0..60.0), 1..40),
    ) {
        let points: Vec<Point3<f64>> = points.into_iter().map(Point3::from).collect();
        let found = SpatialIndex::new(&mesh).nearest_many(&points, UNLIMITED);
        for (p, nearest) in points.iter().zip(found) {
            let nearest = nearest.expect("the reach is unlimited");
            let least = (0..mesh.triangles().len())
                .map(|t| distance_by_sides(p, &mesh.corners(t)))
                .fold(f64::INFINITY, f64::min);
            prop_assert!((nearest.distance - least).abs() < 1e-5, "{} {least}", nearest.distance);
            let corners = mesh.corners(nearest.triangle as usize);
            let place: Vector3<f64> = (0..3).map(|k| corners[k].coords * nearest.weights[k]).sum();
            prop_assert!((place - nearest.point.coords).norm() < 1e-9);
            prop_assert!(((p - nearest.point).norm() - nearest.distance).abs() < 1e-12);
        }
    }
}
