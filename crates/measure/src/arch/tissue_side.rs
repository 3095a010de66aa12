//! Tissue surface told from outer surface.
//!
//! A triangle belongs to the tissue surface when it faces into the trough: when
//! it is turned toward the point above the nearest crest at the height of the
//! border there. So undercut flanges count as tissue, and the border itself,
//! where the surface is level with that point, is where the two part.

use crate::anatomy;
use crate::frame::CrestLine;
use crate::words::Arch;
use geometry::field;
use geometry::height_map::{FINE_CELL_MM, HeightMap};
use mesh::{Mesh, Topology};
use nalgebra::{Point3, Vector2, Vector3};
use rayon::prelude::*;

/// Specks of the other kind below this area are noise, mm².
const SPECK_MM2: f64 = 10.0;

/// Which triangles are tissue surface.
#[derive(Debug, Clone)]
pub(crate) struct TissueSide {
    /// For each triangle: tissue surface, or else outer surface.
    pub is_tissue: Vec<bool>,
    /// Area of the tissue surface, mm².
    pub tissue_mm2: f64,
    /// Area of the rest, mm².
    pub outer_mm2: f64,
}

impl TissueSide {
    /// Whether lips', cheeks' and tray's side was scanned too: the little that
    /// turns over at the border of a one-sided scan does not count.
    pub(crate) fn has_outer_surface(&self) -> bool {
        const LEAST_SHARE: f64 = 0.3;
        self.outer_mm2 > LEAST_SHARE * self.tissue_mm2
    }

    /// Whether that side can have been scanned whole: it encloses the tissue surface,
    /// so it is the larger of the two, whatever the tray.
    pub(crate) fn may_be_seen_from_all_sides(&self) -> bool {
        self.outer_mm2 >= self.tissue_mm2
    }
}

/// Splits a mesh in local coordinates.
pub(crate) fn tell_apart(
    local: &Mesh,
    topology: &Topology,
    crest: &CrestLine,
    arch: Arch,
    edge_mm: f64,
) -> TissueSide {
    let map = HeightMap::of(local.vertices(), local.triangles(), FINE_CELL_MM);
    let borders = BorderHeights::of(&map, crest, arch);
    let nearest_crest: Vec<u16> = cells_nearest(&map, crest);
    // Steep walls must not flicker with the scan's noise, nor a tray's edge be
    // smoothed away.
    let normals = field::smoothed_normals(local, field::smoothing_rounds(edge_mm));
    let areas: Vec<f64> = (0..local.triangles().len())
        .map(|t| local.area_vector(t).norm())
        .collect();
    let faces_trough: Vec<bool> = (0..local.triangles().len())
        .into_par_iter()
        .map(|t| {
            let [a, b, c] = local.corners(t);
            let place = Point3::from((a.coords + b.coords + c.coords) / 3.0);
            let normal: Vector3<f64> = local.triangles()[t]
                .iter()
                .map(|&v| normals[v as usize])
                .sum();
            let station = map.cell_of(place.xy()).map_or_else(
                || crest.nearest(place.xy()),
                |cell| usize::from(nearest_crest[cell]),
            );
            faces_into_trough(&place, &normal, station, crest, &borders, arch)
        })
        .collect();
    let is_tissue = tidied(topology, &areas, faces_trough);
    let tissue_mm2 = (0..areas.len())
        .filter(|&t| is_tissue[t])
        .map(|t| areas[t])
        .sum();
    TissueSide {
        outer_mm2: areas.iter().sum::<f64>() - tissue_mm2,
        tissue_mm2,
        is_tissue,
    }
}

fn faces_into_trough(
    place: &Point3<f64>,
    normal: &Vector3<f64>,
    station: usize,
    crest: &CrestLine,
    borders: &BorderHeights,
    arch: Arch,
) -> bool {
    let bottom = crest.points()[station];
    let outward = crest.outward(station);
    let lateral = (place - bottom).xy().dot(&outward);
    let on_palate = arch == Arch::Maxillary && lateral < 0.0;
    if on_palate && (normal.z > 0.0 || lateral < -anatomy::RIDGE_PALATAL_SLOPE_MM) {
        return normal.z > 0.0;
    }
    let height = if lateral < 0.0 {
        borders.inward[station]
    } else {
        borders.outward[station]
    };
    let above_crest = Point3::new(bottom.x, bottom.y, height);
    normal.dot(&(above_crest - place)) > 0.0
}

/// Height of the highest point of the flange on either side of each crest point.
struct BorderHeights {
    outward: Vec<f64>,
    inward: Vec<f64>,
}

impl BorderHeights {
    fn of(map: &HeightMap, crest: &CrestLine, arch: Arch) -> Self {
        let highest = |sign: f64| -> Vec<f64> {
            let raw: Vec<f64> = (0..crest.points().len())
                .map(|i| highest_beyond(map, &crest.points()[i], crest.outward(i) * sign))
                .collect();
            running_median(&raw, 3)
        };
        let outward = highest(1.0);
        let inward = match arch {
            Arch::Mandibular => highest(-1.0),
            // The ridge's palatal slope ends in the vault and has no border.
            Arch::Maxillary => outward.clone(),
        };
        Self { outward, inward }
    }
}

/// Greatest height on the way out from a crest point until the surface ends.
fn highest_beyond(map: &HeightMap, from: &Point3<f64>, outward: Vector2<f64>) -> f64 {
    let step = map.cell_mm() / 2.0;
    let mut highest = from.z;
    let mut missing = 0.0;
    for k in 1..(anatomy::FLANGE_TOP_WITHIN_MM / step) as usize {
        match map.at(from.xy() + outward * (k as f64 * step)) {
            Some(height) => {
                missing = 0.0;
                highest = highest.max(height);
            }
            None => missing += step,
        }
        if missing > 2.0 {
            break;
        }
    }
    highest
}

fn running_median(values: &[f64], reach: usize) -> Vec<f64> {
    (0..values.len())
        .map(|i| {
            let mut window =
                values[i.saturating_sub(reach)..(i + reach + 1).min(values.len())].to_vec();
            window.sort_by(f64::total_cmp);
            window[window.len() / 2]
        })
        .collect()
}

/// The nearest crest point of every cell of a map.
fn cells_nearest(map: &HeightMap, crest: &CrestLine) -> Vec<u16> {
    (0..map.cell_count())
        .into_par_iter()
        .map(|cell| crest.nearest(map.centre_of(cell)) as u16)
        .collect()
}

/// The one large piece of tissue surface, with specks in it filled; everything
/// else that faces up (a handle's top, a ledge of overflow) is outer surface.
fn tidied(topology: &Topology, areas: &[f64], faces_trough: Vec<bool>) -> Vec<bool> {
    let (part, area) = parts_with_area(topology, areas, &faces_trough);
    let largest = (0..part.len())
        .filter(|&t| faces_trough[t])
        .map(|t| part[t])
        .max_by(|&a, &b| area[a as usize].total_cmp(&area[b as usize]));
    let one_piece: Vec<bool> = part
        .iter()
        .zip(&faces_trough)
        .map(|(&p, &faces)| faces && Some(p) == largest)
        .collect();
    // Specks only now: what lies between two ledges is none, nor is an island.
    let (part, area) = parts_with_area(topology, areas, &one_piece);
    let mut within_tissue = vec![false; area.len()];
    for t in 0..part.len() {
        within_tissue[part[t] as usize] |= topology.neighbours(t).any(|n| one_piece[n]);
    }
    part.iter()
        .map(|&p| p as usize)
        .zip(one_piece)
        .map(|(p, tissue)| tissue || (within_tissue[p] && area[p] < SPECK_MM2))
        .collect()
}

/// Connected parts of equal label, and the area of each.
fn parts_with_area(topology: &Topology, areas: &[f64], labels: &[bool]) -> (Vec<u32>, Vec<f64>) {
    let (part, count) = topology.parts(|a, b| labels[a] == labels[b]);
    let mut area = vec![0.0; count];
    for (&p, own) in part.iter().zip(areas) {
        area[p as usize] += own;
    }
    (part, area)
}
