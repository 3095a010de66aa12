//! Show-through by colour, on phantoms coloured by formula and then lit unevenly
//! and made noisy here.

use crate::Population;
use fixtures::ARCHES;
use measure::{MeasureSettings, Measuring, NoColour, Spot, TrayColour, TrayThickness};
use mesh::Mesh;
use nalgebra::{Point3, Vector3};
use phantom::{Arch, Colouring, Options, Phantom, PlantedSpot, Sides, SpotTruth};
use rand::{RngExt, SeedableRng};
use rand_pcg::Pcg64Mcg;
use serde::{Deserialize, Serialize};

/// Colour noise, in steps of 255.
const NOISE_SD: f64 = 12.0;

/// A phantom whose every vertex has exactly the colour of tray or material.
fn evenly_coloured(arch: Arch, seed: u64, sides: Sides) -> Phantom {
    Phantom::new(&Options {
        arch,
        seed,
        sides,
        edge_mm: 0.4,
        tray_edge_mm: 2.5,
        noise_sd_mm: 0.02,
        colour: Some(Colouring {
            shading: 0.0,
            noise: 0.0,
        }),
        spots: PlantedSpot::random(arch, seed, 4, 2),
        ..Options::default()
    })
}

fn normal(rng: &mut Pcg64Mcg) -> f64 {
    // Sum of twelve: near enough to a normal deviate.
    (0..12).map(|_| rng.random::<f64>()).sum::<f64>() - 6.0
}

/// The colours under a light that changes over the scan by a third or more
/// either way, with noise. `linear` scales light itself, else its sRGB value.
fn lit(mesh: &Mesh, colours: &[[u8; 3]], seed: u64, linear: bool) -> Mesh {
    let mut rng = Pcg64Mcg::seed_from_u64(seed);
    let way = Vector3::from_fn(|_, _| normal(&mut rng)).normalize();
    let centre = mesh
        .vertices()
        .iter()
        .map(|p| p.coords)
        .sum::<Vector3<f64>>()
        / mesh.vertices().len() as f64;
    let painted = (mesh.vertices().iter().zip(colours))
        .map(|(p, colour)| {
            let share = way.dot(&(p.coords - centre)) / 40.0;
            let light = if linear {
                (1.0 + 0.4 * share).max(0.1).powf(1.0 / 2.2)
            } else {
                1.0 + 0.25 * share
            };
            colour.map(|c| {
                (f64::from(c) * light + NOISE_SD * normal(&mut rng))
                    .round()
                    .clamp(0.0, 255.0) as u8
            })
        })
        .collect();
    mesh.clone()
        .with_colours(Some(painted))
        .expect("one colour a vertex")
}

/// What the colours of a scan tell, and the patches found.
struct Told {
    colour: Option<Result<TrayColour, NoColour>>,
    spots: Vec<Spot>,
}

impl Told {
    fn of(measuring: &Measuring<'_>) -> Self {
        let colour = measuring.tray_colour();
        Self {
            colour: colour.map(|told| told.cloned().map_err(Clone::clone)),
            spots: measuring.spots().to_vec(),
        }
    }

    fn reading(&self) -> Result<&TrayColour, &NoColour> {
        self.colour.as_ref().expect("the scan has colours").as_ref()
    }
}

fn told(scan: &Mesh, tray: Option<[u8; 3]>) -> Told {
    let settings = MeasureSettings {
        tray_colour: tray,
        ..MeasureSettings::default()
    };
    Told::of(&Measuring::new(scan, None, &settings))
}

#[derive(Default, Debug, Clone, Copy, Serialize, Deserialize)]
struct Tally {
    planted: usize,
    found: usize,
    invented: usize,
    areas_held: usize,
    not_told: usize,
}

impl std::ops::Add for Tally {
    type Output = Self;
    fn add(self, other: Self) -> Self {
        Self {
            planted: self.planted + other.planted,
            found: self.found + other.found,
            invented: self.invented + other.invented,
            areas_held: self.areas_held + other.areas_held,
            not_told: self.not_told + other.not_told,
        }
    }
}

fn trial(arch: Arch, seed: u64, sides: Sides) -> Tally {
    let made = evenly_coloured(arch, seed, sides);
    let mesh = &made.impression;
    let colours = mesh.colours().expect("coloured").to_vec();
    let names = made.truth.colours.expect("coloured");
    let given = (sides == Sides::Tissue).then_some(names.tray);
    let found = told(&lit(mesh, &colours, seed, seed.is_multiple_of(2)), given);
    let mut tally = Tally::default();
    if let Err(why) = found.reading() {
        println!("{arch:?} {seed} {sides:?}: {why}");
        tally.not_told = 1;
    }
    let mut areas = vec![0.0; colours.len()];
    for (t, corners) in mesh.triangles().iter().enumerate() {
        for &v in corners {
            areas[v as usize] += mesh.area_vector(t).norm() / 3.0;
        }
    }
    let bare: Vec<(Point3<f64>, f64)> = (0..colours.len())
        .filter(|&v| colours[v] == names.tray && made.truth.is_tissue_side(&mesh.vertices()[v]))
        .map(|v| (mesh.vertices()[v], areas[v]))
        .collect();
    for spot in &made.truth.spots {
        let near = bare.iter().filter(|(p, _)| (p - spot.centre).norm() < 8.0);
        let area: f64 = near.map(|(_, area)| area).sum();
        if area < 4.0 {
            continue;
        }
        tally.planted += 1;
        let hit = found
            .spots
            .iter()
            .find(|s| (s.centre - spot.centre).norm() < 2.5);
        match hit {
            Some(hit) => {
                tally.found += 1;
                let off = (hit.area_mm2 - area).abs();
                tally.areas_held += usize::from(off <= hit.area_uncertainty_mm2);
                println!(
                    "{arch:?} {seed} {sides:?}: {area:.1} mm2, found {:.1} ± {:.1}, confidence {:.2}",
                    hit.area_mm2,
                    hit.area_uncertainty_mm2,
                    hit.confidence.expect("told by colour")
                );
            }
            None => println!("{arch:?} {seed} {sides:?}: {area:.1} mm2 not found"),
        }
    }
    for spot in &found.spots {
        if !bare.iter().any(|(p, _)| (p - spot.centre).norm() < 1.0) {
            println!("{arch:?} {seed} {sides:?}: invented {spot:?}");
            tally.invented += 1;
        }
    }
    tally
}

/// Bare tray is found by its colour and none is invented: from both sides with
/// the tray's colour inferred from the scan, from the tissue side with it given.
pub fn bare_tray_is_found_by_its_colour_and_none_is_invented(population: Population) {
    for sides in [Sides::Both, Sides::Tissue] {
        let promise = population.asked(format!("show-through-by-colour-{sides:?}"));
        let trials = population.both_jaws(0, 2);
        let rows: Vec<Tally> = promise.rows(trials, |&(arch, seed)| trial(arch, seed, sides));
        let all = rows.into_iter().fold(Tally::default(), |a, b| a + b);
        promise.figure(
            "edges 0.4 mm, uneven light, colour noise 12 of 255, patches of 4 mm² and more: found; invented; scans not judged; areas that the stated uncertainty holds",
            "all; 0; 0; none",
            format!(
                "{} of {}; {}; {}; {}",
                all.found, all.planted, all.invented, all.not_told, all.areas_held
            ),
        );
        assert_eq!(
            (all.found, all.invented, all.not_told),
            (all.planted, 0, 0),
            "{sides:?}"
        );
        assert!(all.planted > 0);
    }
}

/// Colours that agree with the cover map add no place to it; a patch of the
/// tray's colour over thick material is one.
pub fn colour_that_contradicts_the_cover_map_is_a_place_of_its_own() {
    for arch in ARCHES {
        let made = Phantom::new(&Options {
            tray_edge_mm: 1.0,
            spots: PlantedSpot::random(arch, 3, 2, 1),
            colour: Some(Colouring {
                shading: 0.0,
                noise: 0.0,
            }),
            arch,
            seed: 3,
            edge_mm: 0.4,
            ..Options::default()
        });
        let mesh = &made.impression;
        let colours = mesh.colours().expect("coloured").to_vec();
        let by_colour = |colours: &[[u8; 3]]| -> (Vec<Point3<f64>>, Vec<Option<f64>>) {
            let scan = lit(mesh, colours, 3, true);
            let settings = MeasureSettings::default();
            let measuring = Measuring::new(&scan, Some(&made.tray), &settings);
            let cover = measuring.cover().expect("an impression").expect("a tray");
            let found = Told::of(&measuring);
            let beside = &found.reading().expect("told").beside_cover;
            let beside = beside.as_ref().expect("both");
            println!("{arch:?}: {beside:?}, U {:.3} mm", cover.uncertainty_mm);
            let spots = found.spots.iter().filter(|spot| spot.is_by_colour());
            let places = spots.map(|spot| spot.centre).collect();
            (places, cover.at_vertex_mm.clone())
        };
        let (places, thick) = by_colour(&colours);
        assert_eq!(places, []);
        // Away from planted places and from the end of the tissue surface.
        let is_inside = |p: &Point3<f64>| {
            let mut near = (mesh.vertices().iter().zip(&thick))
                .filter(|(q, _)| (*q - p).norm() < 4.0)
                .peekable();
            near.peek().is_some() && near.all(|(_, mm)| mm.is_some_and(|mm| mm > 1.0))
        };
        let middle = *(mesh.vertices().iter().step_by(97))
            .find(|p| is_inside(p))
            .expect("most of it is so thick");
        let tray = made.truth.colours.expect("coloured").tray;
        let painted: Vec<[u8; 3]> = (mesh.vertices().iter().zip(&colours))
            .map(|(p, &own)| if (p - middle).norm() < 2.0 { tray } else { own })
            .collect();
        let (places, _) = by_colour(&painted);
        assert_eq!(places.len(), 1, "{places:?}");
        assert!((places[0] - middle).norm() < 1.5);
    }
}

/// Cover by a stated thickness is known over a part of the tissue surface alone:
/// colour must tell of the rest.
pub fn bare_tray_is_found_by_its_colour_beside_a_stated_thickness_too(population: Population) {
    for (arch, promise) in population.asked_of_each_jaw("show-through-by-colour-thickness-stated") {
        let found: Vec<[usize; 2]> = promise.rows(population.seeds(0, 3), |&seed| {
            let made = evenly_coloured(arch, seed, Sides::Both);
            let settings = MeasureSettings {
                tray_thickness: Some(TrayThickness {
                    mm: made.truth.tray_thickness_mm,
                    uncertainty_mm: 0.1,
                }),
                ..MeasureSettings::default()
            };
            let measuring = Measuring::new(&made.impression, None, &settings);
            assert!(measuring.cover().is_some_and(|cover| cover.is_ok()));
            let found = Told::of(&measuring);
            assert!(found.reading().is_ok());
            let is_found = |planted: &&SpotTruth| {
                let mut spots = found.spots.iter();
                spots.any(|s| (s.centre - planted.centre).norm() < 2.5)
            };
            let bare = made.truth.spots.iter();
            let bare = bare.filter(|spot| spot.show_through_area_mm2 >= 5.0);
            [bare.clone().count(), bare.filter(is_found).count()]
        });
        let sum = |k: usize| found.iter().map(|f| f[k]).sum::<usize>();
        promise.figure(
            "bare tray of 5 mm² and more: found",
            "all",
            format!("{} of {}", sum(1), sum(0)),
        );
        assert!(sum(0) > 0 && sum(0) == sum(1));
    }
}

/// A tray of nearly the material's colour is not judged by it.
pub fn a_tray_of_the_materials_colour_is_not_guessed() {
    for (seed, sides) in [(1, Sides::Both), (2, Sides::Tissue), (3, Sides::Both)] {
        let made = evenly_coloured(Arch::Maxillary, seed, sides);
        let mesh = &made.impression;
        let names = made.truth.colours.expect("coloured");
        let alike = names.material.map(|c| c.saturating_add(12));
        let colours: Vec<[u8; 3]> = mesh
            .colours()
            .expect("coloured")
            .iter()
            .map(|&c| if c == names.tray { alike } else { c })
            .collect();
        let scan = lit(mesh, &colours, seed, false);
        for given in [None, Some(alike)] {
            let found = told(&scan, given);
            let why = found.reading().expect_err("the colours are alike");
            println!("{seed} {sides:?} {given:?}: {why}");
            assert!(found.spots.is_empty());
        }
    }
}

/// A scan without colours has no figures of colour.
pub fn a_scan_without_colours_tells_nothing_of_them() {
    let made = evenly_coloured(Arch::Mandibular, 1, Sides::Both);
    let plain = made
        .impression
        .with_colours(None)
        .expect("none is always right");
    assert!(told(&plain, Some([200, 200, 200])).colour.is_none());
}
