//! Which tray of a shelf suits a mouth: the size that it was designed for, and the room that
//! each leaves.

use crate::Population;
use crate::shelf::{STEPS, made, shelf, sizes};
use fixtures::quantile;
use geometry::sampling::spread_over;
use judge::shelf_fit::{Advice, advice};
use measure::MeasureSettings;
use measure::tray::{Clearance, TraySuits, fit};
use mesh::Mesh;
use nalgebra::Point3;
use phantom::{Phantom, cast_from};
use serde::{Deserialize, Serialize};

const SIZES: u64 = 4;
/// Part of the tissue that the least clearance leaves out.
const NEAREST_PART: f64 = 0.002;
const PLACES: usize = 6000;

#[derive(Serialize, Deserialize)]
struct Row {
    /// By the scan of an impression, of the mouth, of a cast.
    is_right: [bool; 3],
    /// Of the least clearance of the right size, and of the median of each with room, mm.
    errors_mm: [f64; 2],
}

/// The tissue surface of a phantom's impression, and places spread over it.
fn tissue(made: &Phantom) -> (Mesh, Vec<Point3<f64>>) {
    let scan = &made.impression;
    let is_tissue = |t: usize| {
        let corners = scan.corners(t);
        corners.iter().all(|p| made.truth.is_tissue_side(p))
    };
    let places = spread_over(scan, PLACES, is_tissue);
    (
        scan.filtered(is_tissue),
        places.iter().map(|s| s.point).collect(),
    )
}

/// Errors of the least and the median clearance of a tray of this size, mm.
fn errors_mm(made: &Phantom, places: &[Point3<f64>], found: &Clearance, size: f64) -> [f64; 2] {
    let as_made = |p: &Point3<f64>| {
        let in_tray = found.tray_from_scan * p;
        made.truth.impression_from_tray * Point3::from(in_tray.coords / size)
    };
    let mut exact: Vec<f64> = (places.iter())
        .map(|p| size * made.truth.cover_at(&as_made(p)))
        .collect();
    [
        (found.least_mm.value - quantile(&mut exact, NEAREST_PART)).abs(),
        (found.median_mm.value - quantile(&mut exact, 0.5)).abs(),
    ]
}

/// The size that a mouth's tray was designed for is the one to take, and clearances are true.
pub fn the_size_that_fits_is_taken(population: Population) {
    /// With less room a tray may touch, and how far it reaches in has no formula.
    const ROOM_MM: f64 = 0.3;
    let promise = population.asked("which-size");
    let rows: Vec<Row> = promise.rows(population.both_jaws(0, 2), |&(arch, seed)| {
        let one = made(arch, seed);
        let (own, step) = ((seed % SIZES) as i32, STEPS[(seed % 3) as usize]);
        let trays = shelf(sizes(&one.tray, own, step));
        let (surface, places) = tissue(&one);
        let settings = MeasureSettings::default();
        let tried = |scan: &Mesh| {
            let found = fit(scan, &trays, &settings);
            found.unwrap_or_else(|why| panic!("{arch:?} {seed}: {why}"))
        };
        let scans = [
            one.impression.clone(),
            surface.turned_inside_out(),
            cast_from(&one),
        ];
        let fits = scans.each_ref().map(tried);
        let mut worst = [0.0, 0.0];
        for (size, suits) in fits[0].trays.iter().enumerate() {
            if let TraySuits::Placed(found) = suits
                && found.least_mm.value > ROOM_MM
            {
                let is_own = size == own as usize;
                let size = step.powi(size as i32 - own);
                let errors = errors_mm(&one, &places, found, size);
                // Past the edge of another size, the edge comes nearest, which is no clearance.
                if is_own {
                    worst[0] = errors[0];
                }
                worst[1] = f64::max(worst[1], errors[1]);
            }
        }
        let row = Row {
            is_right: fits
                .each_ref()
                .map(|fit| advice(fit) == Advice::Take(own as usize)),
            errors_mm: worst,
        };
        println!(
            "{arch:?} {seed}: right {:?}, off by {:.3?} mm",
            row.is_right, row.errors_mm
        );
        row
    });
    let right = [0, 1, 2].map(|scan| rows.iter().filter(|row| row.is_right[scan]).count());
    let mut errors = [0, 1].map(|k| {
        rows.iter()
            .map(|row| row.errors_mm[k])
            .collect::<Vec<f64>>()
    });
    let worst = errors.each_mut().map(|errors| quantile(errors, 1.0));
    let of = rows.len();
    promise.figure(
        "four sizes 4 to 6 % apart: the designed one taken, by an impression, by the mouth, by a cast",
        "all; all; -",
        format!("{} of {of}; {} of {of}; {} of {of}", right[0], right[1], right[2]),
    );
    promise.figure(
        "error of the least clearance of that size, and of the median of each size with room, at most",
        "0.1, 0.1 mm",
        format!("{:.3}, {:.3} mm", worst[0], worst[1]),
    );
    assert!(right[0] == of && right[1] == of, "{right:?} of {of}");
    assert!(worst[0] <= 0.1 && worst[1] <= 0.1);
}
