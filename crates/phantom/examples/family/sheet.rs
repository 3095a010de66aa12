//! A sheet of small shaded pictures, seen from the tissue's side, the patient's
//! front up: the border is drawn dark and landmarks are drawn red.

use mesh::Mesh;
use nalgebra::{Point3, Vector3};
use phantom::{Member, Phantom, Pose, Truth};
use std::error::Error;
use std::fs::File;
use std::io::BufWriter;
use std::path::Path;

/// Side of a picture, px, and of what it shows, mm.
const TILE_PX: usize = 330;
const TILE_MM: f64 = 88.0;
/// Pictures in a row.
const COLUMNS: usize = 6;

/// Draws the first `count` members.
pub fn write(
    file: &Path,
    count: usize,
    edge_mm: f64,
    member: impl Fn(u64) -> Member,
) -> Result<(), Box<dyn Error>> {
    let rows = count.div_ceil(COLUMNS);
    let width = COLUMNS * TILE_PX;
    let mut pixels = vec![255u8; width * rows * TILE_PX * 3];
    for seed in 0..count {
        let mut options = member(seed as u64).options(edge_mm);
        options.pose = Pose::AsMade;
        options.tray_edge_mm = 4.0;
        let made = Phantom::new(&options);
        let tile = tile(&made.impression, &made.truth);
        let (left, top) = (seed % COLUMNS * TILE_PX, seed / COLUMNS * TILE_PX);
        for y in 0..TILE_PX {
            let from = ((top + y) * width + left) * 3;
            pixels[from..from + 3 * TILE_PX]
                .copy_from_slice(&tile[y * TILE_PX * 3..(y + 1) * TILE_PX * 3]);
        }
    }
    let file = BufWriter::new(File::create(file)?);
    let mut encoder = png::Encoder::new(file, width as u32, (rows * TILE_PX) as u32);
    encoder.set_color(png::ColorType::Rgb);
    encoder.set_depth(png::BitDepth::Eight);
    encoder.write_header()?.write_image_data(&pixels)?;
    Ok(())
}

/// Where a point shows, px, and its height.
fn place(p: &Point3<f64>) -> [f64; 3] {
    let scale = TILE_PX as f64 / TILE_MM;
    let middle = TILE_PX as f64 / 2.0;
    // A handle in front is cut off where it leaves the picture.
    [middle + p.x * scale, middle - (p.y - 12.0) * scale, p.z]
}

fn tile(mesh: &Mesh, truth: &Truth) -> Vec<u8> {
    let mut depth = vec![f64::NEG_INFINITY; TILE_PX * TILE_PX];
    let mut pixels = vec![255u8; TILE_PX * TILE_PX * 3];
    let light = Vector3::new(-0.5, 0.6, 0.62).normalize();
    let normals = mesh.vertex_normals();
    for (t, corners) in mesh.triangles().iter().enumerate() {
        let at = mesh.corners(t).map(|p| place(&p));
        let lit = corners.map(|v| normals[v as usize].dot(&light));
        fill(at, |x, y, z, weights| {
            let pixel = y * TILE_PX + x;
            if z > depth[pixel] {
                depth[pixel] = z;
                let lit: f64 = (0..3).map(|k| lit[k] * weights[k]).sum();
                let grey = (60.0 + 170.0 * lit.max(0.0)) as u8;
                pixels[3 * pixel..3 * pixel + 3].copy_from_slice(&[grey, grey, grey]);
            }
        });
    }
    let mut dot = |p: &Point3<f64>, reach: i64, colour: [u8; 3]| {
        let [x, y, _] = place(p);
        for dy in -reach..=reach {
            for dx in -reach..=reach {
                let (x, y) = (x as i64 + dx, y as i64 + dy);
                let inside = |v: i64| (0..TILE_PX as i64).contains(&v);
                if inside(x) && inside(y) {
                    let at = 3 * (y as usize * TILE_PX + x as usize);
                    pixels[at..at + 3].copy_from_slice(&colour);
                }
            }
        }
    };
    for b in &truth.border {
        dot(&b.point, 0, [20, 60, 160]);
    }
    for l in &truth.landmarks {
        dot(&l.point, 1, [200, 30, 30]);
    }
    pixels
}

/// Calls for each pixel of a triangle, with its height and weights.
fn fill(at: [[f64; 3]; 3], mut pixel: impl FnMut(usize, usize, f64, [f64; 3])) {
    let area = |a: [f64; 3], b: [f64; 3], x: f64, y: f64| {
        (b[0] - a[0]) * (y - a[1]) - (b[1] - a[1]) * (x - a[0])
    };
    let whole = area(at[0], at[1], at[2][0], at[2][1]);
    if whole.abs() < 1e-9 {
        return;
    }
    let bounds = |k: usize| {
        let of = at.map(|p| p[k]);
        let low = of.iter().copied().fold(f64::INFINITY, f64::min).max(0.0);
        let high = of.iter().copied().fold(f64::NEG_INFINITY, f64::max);
        (low as usize)..=(high.clamp(0.0, TILE_PX as f64 - 1.0) as usize)
    };
    for y in bounds(1) {
        for x in bounds(0) {
            let (cx, cy) = (x as f64 + 0.5, y as f64 + 0.5);
            let weights = [
                area(at[1], at[2], cx, cy) / whole,
                area(at[2], at[0], cx, cy) / whole,
                area(at[0], at[1], cx, cy) / whole,
            ];
            if weights.iter().all(|&w| w >= -1e-6) && x < TILE_PX && y < TILE_PX {
                let z = (0..3).map(|k| weights[k] * at[k][2]).sum();
                pixel(x, y, z, weights);
            }
        }
    }
}
