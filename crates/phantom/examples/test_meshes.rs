//! Writes every mesh of `test-meshes/` with its truth: `test_meshes [FOLDER]`.
//! The same program on the same kind of machine writes the same bytes.

use mesh::Mesh;
use mesh::write::{write_ply, write_stl};
use nalgebra::Point3;
use phantom::{Across, Arch, Options, Phantom, Place, PlantedSpot, SpotKind, Truth};
use serde::Serialize;
use serde_json::{Value, json};
use std::error::Error;
use std::f64::consts::{PI, TAU};
use std::fs;
use std::path::Path;

type Outcome = Result<(), Box<dyn Error>>;

fn main() -> Outcome {
    let folder = std::env::args().nth(1).unwrap_or("test-meshes".into());
    let folder = Path::new(&folder);
    fs::create_dir_all(folder)?;
    cube(folder)?;
    sphere(folder)?;
    plate_and_disc(folder)?;
    phantom(&folder.join("maxillary"), Arch::Maxillary)?;
    phantom(&folder.join("mandibular"), Arch::Mandibular)?;
    demonstration(&folder.join("demo"))
}

fn cube(folder: &Path) -> Outcome {
    let mesh = cuboid([0.0; 3], [1.0; 3])?;
    write_stl(&folder.join("cube.stl"), &mesh)?;
    write_json(
        &folder.join("cube.truth.json"),
        &solid_truth("cube with edges of 1 mm", [8, 12], 6.0, 1.0),
    )
}

const MERIDIANS: usize = 64;
const BANDS: usize = 32;

/// A ball of radius 1 mm cut into flat facets: bands of trapezia between
/// parallels, each of which is a regular polygon with its corners on the ball.
fn sphere(folder: &Path) -> Outcome {
    write_ply(&folder.join("sphere.ply"), &faceted_ball()?)?;

    let circle = |band: usize| -> [f64; 2] {
        let (radius, height) = (PI * band as f64 / BANDS as f64).sin_cos();
        [radius.max(0.0), height]
    };
    let half_step = PI / MERIDIANS as f64;
    let polygon = |radius: f64| 0.5 * MERIDIANS as f64 * radius * radius * (2.0 * half_step).sin();
    let (mut area, mut volume) = (0.0, 0.0);
    for band in 0..BANDS {
        let [[r, z], [s, w]] = [circle(band), circle(band + 1)];
        let (height, run) = (z - w, (r - s) * half_step.cos());
        area += MERIDIANS as f64 * (r + s) * half_step.sin() * height.hypot(run);
        let (below, above) = (polygon(r), polygon(s));
        volume += height / 3.0 * (below + above + (below * above).sqrt());
    }
    let mut truth = solid_truth(
        "ball of radius 1 mm in flat facets; area and volume are those of the facets",
        [MERIDIANS * (BANDS - 1) + 2, 2 * MERIDIANS * (BANDS - 1)],
        area,
        volume,
    );
    truth["ball_area_mm2"] = json!(4.0 * PI);
    truth["ball_volume_mm3"] = json!(4.0 / 3.0 * PI);
    write_json(&folder.join("sphere.truth.json"), &truth)
}

fn faceted_ball() -> Result<Mesh, Box<dyn Error>> {
    let mut vertices = vec![Point3::new(0.0, 0.0, 1.0)];
    for band in 1..BANDS {
        let (radius, height) = (PI * band as f64 / BANDS as f64).sin_cos();
        vertices.extend((0..MERIDIANS).map(|m| {
            let (sin, cos) = (TAU * m as f64 / MERIDIANS as f64).sin_cos();
            Point3::new(radius * cos, radius * sin, height)
        }));
    }
    vertices.push(Point3::new(0.0, 0.0, -1.0));
    let last = vertices.len() as u32 - 1;
    let at = |band: usize, m: usize| (1 + (band - 1) * MERIDIANS + m % MERIDIANS) as u32;
    let mut triangles = Vec::new();
    for m in 0..MERIDIANS {
        triangles.push([0, at(1, m), at(1, m + 1)]);
        for band in 1..BANDS - 1 {
            let [a, b] = [at(band, m), at(band, m + 1)];
            let [c, d] = [at(band + 1, m), at(band + 1, m + 1)];
            triangles.extend([[a, c, d], [a, d, b]]);
        }
        triangles.push([at(BANDS - 1, m), last, at(BANDS - 1, m + 1)]);
    }
    Ok(Mesh::new(vertices, triangles, None)?)
}

/// Numbers of corners of the disc's rim and of its rings.
const RIM: usize = 72;
const RINGS: usize = 10;
const DISC_RADIUS_MM: f64 = 5.0;
/// Cover is this over the middle of the disc, mm, and grows by this for each mm along x.
const MIDDLE_COVER_MM: f64 = 1.0;
const SLOPE: f64 = 0.16;

/// The simplest tray and the simplest tissue surface: a flat plate whose upper
/// face is z = 0, and a slanting disc over it. The cover of each point of the
/// disc is its z.
fn plate_and_disc(folder: &Path) -> Outcome {
    let plate = cuboid([-10.0, -10.0, -2.0], [10.0, 10.0, 0.0])?;
    write_stl(&folder.join("plate.stl"), &plate)?;
    write_json(
        &folder.join("plate.truth.json"),
        &solid_truth(
            "plate of 20 x 20 x 2 mm, upper face at z = 0",
            [8, 12],
            960.0,
            800.0,
        ),
    )?;

    write_ply(&folder.join("disc.ply"), &slanting_disc()?)?;
    let flat_area = 0.5 * RIM as f64 * DISC_RADIUS_MM.powi(2) * (TAU / RIM as f64).sin();
    // The disc's share of low cover is bounded by a chord: a segment of the circle.
    let segment = |cover_mm: f64| {
        let chord = (MIDDLE_COVER_MM - cover_mm) / SLOPE / DISC_RADIUS_MM;
        DISC_RADIUS_MM.powi(2) * (chord.acos() - chord * (1.0 - chord * chord).sqrt())
    };
    let slant = 1.0f64.hypot(SLOPE);
    let truth = json!({
        "what": "disc of radius 5 mm (seen along z) that slants over plate.stl; cover is z = 1 + 0.16 x mm",
        "unit": "mm",
        "vertices": RIM * RINGS + 1,
        "triangles": RIM * (2 * RINGS - 1),
        "closed": false,
        "area_mm2": flat_area * slant,
        "cover_of": "plate.stl",
        "middle_cover_mm": MIDDLE_COVER_MM,
        "cover_growth_along_x": SLOPE,
        "least_cover_mm": MIDDLE_COVER_MM - SLOPE * DISC_RADIUS_MM,
        "greatest_cover_mm": MIDDLE_COVER_MM + SLOPE * DISC_RADIUS_MM,
        "area_below_1_mm_mm2": segment(1.0) * slant,
        "area_below_0_5_mm_mm2": segment(0.5) * slant,
    });
    write_json(&folder.join("disc.truth.json"), &truth)
}

fn slanting_disc() -> Result<Mesh, Box<dyn Error>> {
    let mut vertices = vec![Point3::new(0.0, 0.0, MIDDLE_COVER_MM)];
    for ring in 1..=RINGS {
        let radius = DISC_RADIUS_MM * ring as f64 / RINGS as f64;
        vertices.extend((0..RIM).map(|corner| {
            let (sin, cos) = (TAU * corner as f64 / RIM as f64).sin_cos();
            Point3::new(
                radius * cos,
                radius * sin,
                MIDDLE_COVER_MM + SLOPE * radius * cos,
            )
        }));
    }
    let at = |ring: usize, corner: usize| (1 + (ring - 1) * RIM + corner % RIM) as u32;
    let mut triangles = Vec::new();
    for corner in 0..RIM {
        triangles.push([0, at(1, corner), at(1, corner + 1)]);
        for ring in 1..RINGS {
            let [a, b] = [at(ring, corner), at(ring, corner + 1)];
            let [c, d] = [at(ring + 1, corner), at(ring + 1, corner + 1)];
            triangles.extend([[a, c, d], [a, d, b]]);
        }
    }
    Ok(Mesh::new(vertices, triangles, None)?)
}

/// A cuboid between two corners.
fn cuboid(low: [f64; 3], high: [f64; 3]) -> Result<Mesh, Box<dyn Error>> {
    let vertices = (0..8usize)
        .map(|corner| Point3::from([0, 1, 2].map(|axis| [low, high][corner >> axis & 1][axis])))
        .collect();
    let faces = [
        [0, 2, 3, 1],
        [4, 5, 7, 6],
        [0, 1, 5, 4],
        [2, 6, 7, 3],
        [0, 4, 6, 2],
        [1, 3, 7, 5],
    ];
    let triangles = faces
        .iter()
        .flat_map(|&[a, b, c, d]| [[a, b, c], [a, c, d]])
        .collect();
    Ok(Mesh::new(vertices, triangles, None)?)
}

fn solid_truth(what: &str, counts: [usize; 2], area_mm2: f64, volume_mm3: f64) -> Value {
    json!({
        "what": what,
        "unit": "mm",
        "vertices": counts[0],
        "triangles": counts[1],
        "closed": true,
        "area_mm2": area_mm2,
        "volume_mm3": volume_mm3,
    })
}

/// A phantom as its truth file tells it: the formula's truth, and its cover at
/// some of the scan's vertices, for those who cannot ask the formula.
#[derive(Serialize)]
struct PhantomTruth<'a> {
    impression_triangles: usize,
    tray_triangles: usize,
    #[serde(flatten)]
    truth: &'a Truth,
    /// Point of the tissue surface, in scan coordinates, and its cover, mm.
    cover_at: Vec<(Point3<f64>, f64)>,
}

const COVER_POINTS: usize = 250;

/// An impression of seed 5 with two bare places and a thin one, and its tray.
fn phantom(folder: &Path, arch: Arch) -> Outcome {
    let made = Phantom::new(&Options {
        arch,
        seed: 5,
        edge_mm: 0.85,
        tray_edge_mm: 0.9,
        spots: PlantedSpot::random(arch, 5, 2, 1),
        ..Options::default()
    });
    let scan = in_single_precision(&made.impression)?;
    fs::create_dir_all(folder)?;
    write_ply(&folder.join("impression.ply"), &scan)?;
    write_stl(&folder.join("tray.stl"), &made.tray)?;
    let tissue: Vec<_> = scan
        .vertices()
        .iter()
        .filter(|p| made.truth.is_tissue_side(p))
        .collect();
    let truth = PhantomTruth {
        impression_triangles: scan.triangles().len(),
        tray_triangles: made.tray.triangles().len(),
        truth: &made.truth,
        cover_at: tissue
            .iter()
            .step_by(tissue.len().div_ceil(COVER_POINTS))
            .map(|&&p| (p, made.truth.cover_at(&p)))
            .collect(),
    };
    write_json(&folder.join("truth.json"), &truth)
}

const DEMO_CASE: &str = "\
# An invented case: no such patient, no such impression.
case = \"DEMO-2\"

[maxillary]
first_pass = \"upper-first.ply\"
tray = \"upper-tray.stl\"
";

/// The scenario of `archproof demo`, coarser: tray shows on the crest on the
/// right and on the palate beside the midline, and material is thin on the
/// facial slope in front on the left.
fn demonstration(folder: &Path) -> Outcome {
    let on_arch = |station, across| Place::Arch { station, across };
    let spots = vec![
        PlantedSpot {
            place: on_arch(-0.55, Across::Crest),
            kind: SpotKind::ShowThrough { area_mm2: 12.0 },
        },
        PlantedSpot {
            place: Place::Palate {
                right_mm: 6.0,
                anterior_mm: 8.0,
            },
            kind: SpotKind::ShowThrough { area_mm2: 6.0 },
        },
        PlantedSpot {
            place: on_arch(0.3, Across::OuterSlope),
            kind: SpotKind::Thin {
                least_mm: 0.5,
                area_mm2: 10.0,
            },
        },
    ];
    let made = Phantom::new(&Options {
        arch: Arch::Maxillary,
        seed: 1042,
        edge_mm: 0.6,
        tray_edge_mm: 0.9,
        noise_sd_mm: 0.01,
        spots,
        ..Options::default()
    });
    fs::create_dir_all(folder)?;
    let scan = in_single_precision(&made.impression)?;
    write_ply(&folder.join("upper-first.ply"), &scan)?;
    write_stl(&folder.join("upper-tray.stl"), &made.tray)?;
    fs::write(folder.join("case.toml"), DEMO_CASE)?;
    write_json(&folder.join("truth.json"), &made.truth)
}

/// The mesh with coordinates that take four bytes in a file.
fn in_single_precision(mesh: &Mesh) -> Result<Mesh, Box<dyn Error>> {
    let vertices = mesh
        .vertices()
        .iter()
        .map(|p| p.map(|c| f64::from(c as f32)))
        .collect();
    Ok(Mesh::new(vertices, mesh.triangles().to_vec(), None)?)
}

fn write_json(path: &Path, truth: &impl Serialize) -> Outcome {
    let mut text = serde_json::to_string_pretty(truth)?;
    text.push('\n');
    Ok(fs::write(path, text)?)
}
