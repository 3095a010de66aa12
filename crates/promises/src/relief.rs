//! Relief of a tray, measured on a second scan of it.

use crate::Population;
use crate::on_tray::Error;
use measure::{MeasureSettings, PreparedTray, measure, relaid};
use mesh::{Mesh, SpatialIndex};
use nalgebra::{Isometry3, Point3, Vector3};
use phantom::{Arch, Options, Phantom, PlantedSpot};
use serde::{Deserialize, Serialize};

/// Depth at a distance from the middle of a place that was relieved by so much, mm.
fn taken_off(deepest: f64, away: f64) -> f64 {
    const RADIUS_MM: f64 = 6.0;
    let share = 1.0 - (away / RADIUS_MM).powi(2);
    deepest * share.max(0.0).powi(2)
}

/// A tray that was ground out at places.
struct GroundOut<'a> {
    tray: &'a Mesh,
    index: SpatialIndex,
    normals: Vec<Vector3<f64>>,
    /// Middle of each, tray coordinates; greatest depth, mm; which way it faces.
    places: Vec<(Point3<f64>, f64, Vector3<f64>)>,
}

impl<'a> GroundOut<'a> {
    fn at(tray: &'a Mesh, places: impl Iterator<Item = (Point3<f64>, f64)>) -> Self {
        let normals: Vec<_> = tray
            .vertex_normals()
            .iter()
            .map(|n| n.normalize())
            .collect();
        let mut all = Self {
            tray,
            index: SpatialIndex::new(tray),
            normals,
            places: Vec::new(),
        };
        all.places = places
            .map(|(at, deepest)| (at, deepest, all.facing(&at)))
            .collect();
        all
    }

    fn facing(&self, at: &Point3<f64>) -> Vector3<f64> {
        let nearest = self.index.nearest(at, f64::INFINITY);
        let triangle = nearest.expect("a tray has triangles").triangle;
        self.tray.area_vector(triangle as usize).normalize()
    }

    /// Whether all of a patch lies on the face on which the places beside it do: over a
    /// corner of the tray the formula has a step that no bur makes.
    fn is_on_one_face(&self, on_tray: &[(u32, Point3<f64>)]) -> bool {
        let faces = |(_, at): &(u32, Point3<f64>)| {
            let facing = self.facing(at);
            let is_away = |middle: &Point3<f64>| taken_off(1.0, (at - middle).norm()) <= 0.0;
            let mut places = self.places.iter();
            places.all(|(middle, _, way)| is_away(middle) || facing.dot(way) > 0.7)
        };
        on_tray.iter().all(faces)
    }

    /// Depth at a place that faces some way, mm: the other face of the wall is left alone.
    fn depth(&self, at: &Point3<f64>, facing: &Vector3<f64>) -> f64 {
        let of = |(middle, deepest, way): &(Point3<f64>, f64, Vector3<f64>)| {
            let is_there = facing.dot(way) > 0.5;
            if is_there {
                taken_off(*deepest, (at - middle).norm())
            } else {
                0.0
            }
        };
        self.places.iter().map(of).fold(0.0, f64::max)
    }

    /// The ground tray in another pose.
    fn scanned(&self, pose: &Isometry3<f64>) -> Mesh {
        let vertices = (self.tray.vertices().iter().zip(&self.normals))
            .map(|(p, normal)| pose * (p - normal * self.depth(p, normal)))
            .collect();
        Mesh::new(vertices, self.tray.triangles().to_vec(), None).expect("the same triangles")
    }
}

/// One place of relief: errors, mm, and whether it was rightly called enough.
#[derive(Serialize, Deserialize)]
struct Ground {
    deepest: Error,
    room: Error,
    /// Whether the figure says the same as the truth about the room wanted, where its
    /// uncertainty lets it say anything.
    is_right: bool,
}

/// Every place of little cover of one mouth, under which the tray is ground out.
fn ground_out(arch: Arch, seed: u64) -> Vec<Ground> {
    const WANTED_MM: f64 = 1.0;
    let made = Phantom::new(&Options {
        arch,
        seed: 1300 + seed,
        edge_mm: 0.5,
        tray_edge_mm: 0.5,
        noise_sd_mm: 0.02,
        spots: PlantedSpot::random(arch, seed, 3, 0),
        ..Options::default()
    });
    let places = (made.truth.spots.iter().enumerate()).map(|(n, spot)| {
        let deepest = 0.3 + 0.4 * ((seed as usize + n) % 4) as f64;
        (made.truth.on_tray(&spot.centre), deepest)
    });
    let ground = GroundOut::at(&made.tray, places);
    let turned = Vector3::new(0.5, -0.8, 0.3) * seed as f64;
    let pose = Isometry3::new(Vector3::new(12.0, -30.0, 8.0), turned);
    let unmoved = SpatialIndex::new(&ground.scanned(&Isometry3::identity()));
    let to_tray = made.truth.impression_from_tray.inverse();
    let after = ground.scanned(&pose);
    let [before, after] = [&made.tray, &after].map(PreparedTray::of);
    let settings = MeasureSettings::default();
    let measured = measure(&made.impression, Some(&made.tray), &settings, &|_| {});
    let measured = measured.impression().expect("an impression").clone();
    let laid = relaid(&before, &after, 0.0).expect("one tray");
    let found = laid.places(&after, &measured);
    let depth_at = |on_tray: &Point3<f64>| ground.depth(on_tray, &ground.facing(on_tray));
    (measured.spots.iter().zip(&measured.on_tray).zip(&found))
        .filter_map(|((spot, on_tray), found)| {
            let on_tray = on_tray.as_ref().expect("the tray was placed");
            if !ground.is_on_one_face(&on_tray.vertices) {
                return None;
            }
            let found = found.expect("the whole tray was scanned again");
            let depths = on_tray.vertices.iter().map(|(_, place)| depth_at(place));
            // By its nearest place the tray may be nearer than its floor is deep.
            let rooms = spot.vertices.iter().map(|&v| {
                let p = to_tray * made.impression.vertices()[v as usize];
                let nearest = unmoved.nearest(&p, f64::INFINITY);
                nearest.expect("a tray has triangles").distance
            });
            let room = rooms.fold(f64::MAX, f64::min);
            let amount = found.least_room_mm;
            let says = (amount.value - WANTED_MM).abs() > amount.uncertainty;
            Some(Ground {
                deepest: Error {
                    off: (found.deepest_mm.value - depths.fold(0.0, f64::max)).abs(),
                    uncertainty: found.deepest_mm.uncertainty,
                },
                room: Error {
                    off: (amount.value - room).abs(),
                    uncertainty: amount.uncertainty,
                },
                is_right: !says || (amount.value > WANTED_MM) == (room > WANTED_MM),
            })
        })
        .collect()
}

/// Relief of 0.3 to 1.5 mm: how deep it is and the room that it makes, from a second scan of
/// the tray in another pose.
pub fn relief_is_measured_on_the_tray(population: Population) {
    let asked = population.asked("relief-of-the-tray");
    let rows: Vec<Vec<Ground>> = asked.rows(population.jaws_in_turn(4), |&(arch, seed)| {
        ground_out(arch, seed)
    });
    let rows: Vec<Ground> = rows.into_iter().flatten().collect();
    let worst = |of: fn(&Ground) -> Error| rows.iter().map(|r| of(r).off).fold(0.0, f64::max);
    let held = |of: fn(&Ground) -> Error| {
        let held = rows
            .iter()
            .map(of)
            .filter(|error| error.off <= error.uncertainty)
            .count();
        held as f64 / rows.len() as f64
    };
    let [deepest, room] = [worst(|row| row.deepest), worst(|row| row.room)];
    let holds = [held(|row| row.deepest), held(|row| row.room)];
    let wrong = rows.iter().filter(|row| !row.is_right).count();
    asked.figure(
        "relief of 0.3 to 1.5 mm on one face of the tray: worst error of depth and of the room made; U holds them; wrongly called enough or not",
        "0.1 mm, 0.15 mm; 0",
        format!(
            "{deepest:.2} mm, {room:.2} mm; {:.0} %, {:.0} %; {wrong} of {}",
            100.0 * holds[0], 100.0 * holds[1], rows.len()
        ),
    );
    assert!(!rows.is_empty());
    assert!(deepest <= 0.1 && room <= 0.15, "{deepest}, {room}");
    assert_eq!(wrong, 0);
}
