//! Show-through by colour: where the tissue surface has the tray's colour.
//!
//! Colours are compared in CIELAB (CIE 15:2018, D65). There a change of the
//! light's strength scales L* + 16, a* and b* alike (all three are made of cube
//! roots), so that one smooth factor over the surface, fitted to the material
//! itself, takes the light out. What is left is told apart along the direction
//! that separates tray and material best for the scatter of the scan's own
//! colours (Fisher 1936).

use super::figures::{Cover, Spot, SpotKind};
use crate::impression::Impression;
use crate::settings::MeasureSettings;
use geometry::field::{smoothed, smoothing_rounds};
use geometry::order::median;
use geometry::patches::{area_between, nearest_vertex, patches};
use mesh::Topology;
use nalgebra::{Matrix3, Point3, SMatrix, SVector, Vector3};
use palette::{FromColor, Lab, Srgb};
use thiserror::Error;

/// Colours nearer to each other than this in CIELAB (CIE 1976 difference) are
/// not told apart. Common practice, no source.
const LEAST_DIFFERENCE: f64 = 10.0;
/// Tray and material must be this many standard deviations of the scan's
/// smoothed colours apart: halfway between them then lies three from either.
const LEAST_SEPARATION: f64 = 6.0;
/// A colour of the outer surface counts as the tray's where it differs from the
/// material's at least so much, fills at least this share of the outer surface
/// and of what there is not material.
const TRAY_STANDS_OUT: f64 = 15.0;
const TRAY_SHARE: f64 = 0.2;
const TRAY_SHARE_OF_THE_REST: f64 = 0.6;
/// Share of the way from material to tray from which a place counts as tray.
const HALFWAY: f64 = 0.5;
/// The share is known no better than this: a blurred edge lies between.
const SHARE_DOUBT: f64 = 0.15;

/// Why tray could not be told from material by colour.
#[derive(Debug, Clone, PartialEq, Error)]
#[allow(missing_docs, reason = "each variant's message says what it is")]
pub enum NoColour {
    #[error(
        "the scan has colours, but the tray's was not given and none stands out on the outer surface"
    )]
    TrayColourUnknown,
    #[error(
        "the colours of tray and material differ by {difference:.0} in CIELAB, too little to tell them apart ({LEAST_DIFFERENCE} at least)"
    )]
    Alike { difference: f64 },
    #[error(
        "the colours of the scan are too uneven to tell tray from material: they lie {separation:.1} standard deviations apart ({LEAST_SEPARATION} at least)"
    )]
    TooUneven { separation: f64 },
}

/// What the colours of a scan tell of the tray.
#[derive(Debug, Clone, PartialEq)]
pub struct TrayColour {
    /// Colour of the material in the scan's middling light, sRGB.
    pub material: [u8; 3],
    /// Colour of the tray, sRGB.
    pub tray: [u8; 3],
    /// Whether the tray's colour was told from the outer surface; else it was given.
    pub inferred: bool,
    /// How far the two lie apart in CIELAB (CIE 1976 difference).
    pub difference: f64,
    /// How far they lie apart in standard deviations of the material's colour.
    pub separation: f64,
    /// Share of the way from the material's colour to the tray's at each
    /// vertex; `None` off the tissue surface and within 1 mm of its edge, where
    /// the tray's own rim may show.
    pub at_vertex: Vec<Option<f64>>,
    /// Tissue surface whose colour was judged, mm².
    pub area_judged_mm2: f64,
    /// Tissue surface of the tray's colour, mm².
    pub tray_seen_mm2: f64,
    /// Tissue surface of a colour that is neither the tray's nor the
    /// material's, mm²: blood, a marking, another material.
    pub other_mm2: f64,
    /// Beside the cover map, where there is one. Patches of the tray's colour in
    /// which it shows no tray are spots too.
    pub beside_cover: Option<BesideCover>,
}

/// Where the cover map and the colours agree that tray shows, and where not; mm².
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct BesideCover {
    /// Tray by both.
    pub both_mm2: f64,
    /// Tray by its colour, surely covered by the cover map.
    pub colour_only_mm2: f64,
    /// Surely bare by the cover map, not by colour.
    pub cover_only_mm2: f64,
}

/// A colour as a place in CIELAB with L* + 16 for L*: a scaling of the light
/// scales the vector.
fn of_srgb(colour: [u8; 3]) -> Vector3<f64> {
    let lab = Lab::from_color(Srgb::from(colour).into_format::<f64>());
    Vector3::new(lab.l + 16.0, lab.a, lab.b)
}

fn to_srgb(colour: &Vector3<f64>) -> [u8; 3] {
    let lab: Lab<palette::white_point::D65, f64> = Lab::new(colour.x - 16.0, colour.y, colour.z);
    let srgb = Srgb::from_color(lab).into_format::<u8>();
    [srgb.red, srgb.green, srgb.blue]
}

/// What the colours of an impression's scan tell, and the patches of tray;
/// `None` where the scan has no colours.
///
/// # Errors
/// When the tray's colour is neither given nor clear from the outer surface,
/// or too like the material's.
pub(crate) fn read(
    impression: &Impression,
    cover: Option<&Cover>,
    settings: &MeasureSettings,
) -> Option<Result<(TrayColour, Vec<Spot>), NoColour>> {
    let colours: Vec<Vector3<f64>> = impression
        .local
        .colours()?
        .iter()
        .map(|&colour| of_srgb(colour))
        .collect();
    Some(of_colours(impression, &colours, cover, settings))
}

fn of_colours(
    impression: &Impression,
    colours: &[Vector3<f64>],
    cover: Option<&Cover>,
    settings: &MeasureSettings,
) -> Result<(TrayColour, Vec<Spot>), NoColour> {
    let mesh = &impression.local;
    let weights = impression.tissue_weights();
    let tissue: Vec<usize> = (0..weights.len()).filter(|&v| weights[v] > 0.0).collect();
    let smooth = |on_tissue: bool| smoothed_colours(impression, colours, weights, on_tissue);
    let (inner, outer) = (smooth(true), smooth(false));
    let light = Light::over(
        tissue
            .iter()
            .filter_map(|&v| Some((mesh.vertices()[v], inner[v]?.x))),
    )
    .ok_or(NoColour::TooUneven { separation: 0.0 })?;
    let evened = |from: &[Option<Vector3<f64>>], v: usize| {
        from[v].map(|colour| colour / light.at(&mesh.vertices()[v]))
    };
    let on_tissue: Vec<Option<Vector3<f64>>> =
        (0..weights.len()).map(|v| evened(&inner, v)).collect();
    let material = Cluster::most_of(on_tissue.iter().flatten().copied().collect())
        .ok_or(NoColour::TooUneven { separation: 0.0 })?;
    let (tray, inferred) = match settings.tray_colour {
        Some(given) => (of_srgb(given), false),
        None => {
            let off: Vec<Vector3<f64>> = (0..weights.len())
                .filter_map(|v| evened(&outer, v))
                .collect();
            let shown = impression.regions.has_outer_surface();
            let found = shown.then(|| tray_among(&off, &material)).flatten();
            (found.ok_or(NoColour::TrayColourUnknown)?, true)
        }
    };
    let apart = Apart::between(&material, tray)?;
    let shares: Vec<Option<Share>> = on_tissue
        .iter()
        .map(|colour| colour.map(|colour| apart.share(&colour)))
        .collect();
    let near_rim = near_rim(impression, weights);
    let at_vertex: Vec<Option<f64>> = (shares.iter().zip(near_rim))
        .map(|(share, near_rim)| share.filter(|_| !near_rim).map(Share::toward_tray))
        .collect();
    let area = |is: &dyn Fn(usize) -> bool| -> f64 {
        tissue.iter().filter(|&&v| is(v)).map(|&v| weights[v]).sum()
    };
    let is_tray = |v: usize| at_vertex[v].is_some_and(|share| share > HALFWAY);
    let reading = TrayColour {
        material: to_srgb(&material.centre),
        tray: to_srgb(&tray),
        inferred,
        difference: apart.way.norm(),
        separation: apart.separation,
        area_judged_mm2: area(&|v| at_vertex[v].is_some()),
        tray_seen_mm2: area(&is_tray),
        other_mm2: area(&|v| at_vertex[v].is_some() && matches!(shares[v], Some(Share::Other))),
        beside_cover: cover.map(|cover| {
            let least = settings.show_through_mm;
            let covered = |v: usize| {
                cover.at_vertex_mm[v].is_some_and(|mm| mm > least + cover.uncertainty_mm)
            };
            let surely_bare = |v: usize| {
                cover.at_vertex_mm[v].is_some_and(|mm| mm <= least - cover.uncertainty_mm)
            };
            BesideCover {
                both_mm2: area(&|v| is_tray(v) && may_be_bare(cover, settings, v)),
                colour_only_mm2: area(&|v| is_tray(v) && covered(v)),
                cover_only_mm2: area(&|v| !is_tray(v) && surely_bare(v)),
            }
        }),
        at_vertex,
    };
    let spots = outlined(impression, &reading, &on_tissue, &apart, cover, settings);
    Ok((reading, spots))
}

/// Whether the cover map does not surely call a place covered.
fn may_be_bare(cover: &Cover, settings: &MeasureSettings, v: usize) -> bool {
    let least = settings.show_through_mm + cover.uncertainty_mm;
    cover.at_vertex_mm[v].is_some_and(|mm| mm <= least)
}

/// Vertices of the tissue surface that lie so near to the outer surface or to the
/// end of the scan that the tray's own rim may be taken for them.
fn near_rim(impression: &Impression, weights: &[f64]) -> Vec<bool> {
    const REACH_MM: f64 = 1.0;
    const MOST_STEPS: f64 = 8.0;
    let steps = (REACH_MM / impression.edge_mm).ceil().min(MOST_STEPS) as usize;
    let mut near: Vec<bool> = weights.iter().map(|weight| *weight == 0.0).collect();
    // The scan may end at the rim.
    for ends in Topology::of(&impression.local).boundary_loops() {
        for &v in ends {
            near[v as usize] = true;
        }
    }
    for _ in 0..steps {
        let before = near.clone();
        for corners in impression.local.triangles() {
            if corners.iter().any(|&v| before[v as usize]) {
                for &v in corners {
                    near[v as usize] = true;
                }
            }
        }
    }
    near
}

/// Least cover in a patch that is known over half of it at least, mm.
fn least_cover(cover: &Cover, patch: &[u32]) -> Option<f64> {
    let known: Vec<f64> = (patch.iter())
        .filter_map(|&v| cover.at_vertex_mm[v as usize])
        .collect();
    let enough = 2 * known.len() >= patch.len();
    known.into_iter().reduce(f64::min).filter(|_| enough)
}

/// Patches of the tray's colour, largest first; beside a cover map those alone
/// in which it shows no tray.
fn outlined(
    impression: &Impression,
    reading: &TrayColour,
    colours: &[Option<Vector3<f64>>],
    apart: &Apart,
    cover: Option<&Cover>,
    settings: &MeasureSettings,
) -> Vec<Spot> {
    let mesh = &impression.local;
    let above = |share| patches(mesh, &reading.at_vertex, share, f64::INFINITY);
    let (smaller, larger) = (above(HALFWAY + SHARE_DOUBT), above(HALFWAY - SHARE_DOUBT));
    let scan_from_local = impression.frame.local_from_scan().inverse();
    let by_cover_too = |patch: &[u32]| {
        cover.is_some_and(|cover| (patch.iter()).any(|&v| may_be_bare(cover, settings, v as usize)))
    };
    above(HALFWAY)
        .into_iter()
        .filter(|patch| patch.area_mm2 >= settings.least_area_mm2)
        .filter(|patch| !by_cover_too(&patch.vertices))
        .map(|patch| {
            let on_surface = nearest_vertex(mesh, &patch);
            Spot {
                kind: SpotKind::ShowThrough,
                centre: scan_from_local * on_surface,
                area_mm2: patch.area_mm2,
                area_uncertainty_mm2: area_between(&patch, &smaller, &larger) / 2.0,
                min_mm: cover.and_then(|cover| least_cover(cover, &patch.vertices)),
                confidence: Some(apart.likeness(&patch.vertices, colours)),
                zone: impression.zones.zone(&on_surface),
                side: impression.zones.side(&on_surface),
                stop: None,
                around: None,
                vertices: patch.vertices,
            }
        })
        .collect()
}

/// Colours averaged over the scan's noise, on the tissue surface or off it.
fn smoothed_colours(
    impression: &Impression,
    colours: &[Vector3<f64>],
    weights: &[f64],
    on_tissue: bool,
) -> Vec<Option<Vector3<f64>>> {
    // Once more than a distance is smoothed: colours are noisier.
    let rounds = smoothing_rounds(impression.edge_mm) + 1;
    let channel = |k: usize| {
        let raw: Vec<Option<f64>> = colours
            .iter()
            .zip(weights)
            .map(|(colour, &weight)| ((weight > 0.0) == on_tissue).then_some(colour[k]))
            .collect();
        smoothed(&impression.local, &raw, rounds)
    };
    let [l, a, b] = [0, 1, 2].map(channel);
    (0..colours.len())
        .map(|v| Some(Vector3::new(l[v]?, a[v]?, b[v]?)))
        .collect()
}

/// Number of terms of the light's course: of second order in x, y and z.
const TERMS: usize = 10;

/// How strong the light is over the scan, 1 on the mean: the logarithm of
/// L* + 16 as a polynomial of second order, which a patch of tray cannot bend.
struct Light {
    low: Point3<f64>,
    high: Point3<f64>,
    course: SVector<f64, TERMS>,
    mean: f64,
}

impl Light {
    /// Fitted with Tukey's biweight, reweighted; `None` of too few points.
    fn over(points: impl Iterator<Item = (Point3<f64>, f64)>) -> Option<Self> {
        const ROUNDS: usize = 8;
        /// In units of a normal standard deviation: 95 % efficient (Huber 1981).
        const BIWEIGHT: f64 = 4.685;
        const LEAST_POINTS: usize = 100;
        let points: Vec<(Point3<f64>, f64)> = points.map(|(p, l)| (p, l.max(1.0).ln())).collect();
        if points.len() < LEAST_POINTS {
            return None;
        }
        let corner = |least: fn(f64, f64) -> f64, start: f64| {
            points
                .iter()
                .fold(Point3::from([start; 3]), |corner, (p, _)| {
                    Point3::from(corner.coords.zip_map(&p.coords, least))
                })
        };
        let mut light = Self {
            low: corner(f64::min, f64::INFINITY),
            high: corner(f64::max, f64::NEG_INFINITY),
            course: SVector::zeros(),
            mean: 0.0,
        };
        light.course[0] = middle(points.iter().map(|(_, l)| *l));
        let terms: Vec<SVector<f64, TERMS>> = points.iter().map(|(p, _)| light.terms(p)).collect();
        for _ in 0..ROUNDS {
            let off: Vec<f64> = (points.iter().zip(&terms))
                .map(|((_, l), terms)| l - terms.dot(&light.course))
                .collect();
            let spread = 1.4826 * middle(off.iter().map(|off| off.abs()));
            let reach = BIWEIGHT * spread.max(1e-6);
            let mut normal = SMatrix::<f64, TERMS, TERMS>::identity() * 1e-9;
            let mut right = SVector::<f64, TERMS>::zeros();
            for (((_, l), terms), off) in points.iter().zip(&terms).zip(&off) {
                let weight = (1.0 - (off / reach).powi(2)).max(0.0).powi(2);
                normal.ger(weight, terms, terms, 1.0);
                right.axpy(weight * l, terms, 1.0);
            }
            light.course = normal.cholesky()?.solve(&right);
        }
        let sum: f64 = terms.iter().map(|terms| terms.dot(&light.course)).sum();
        light.mean = sum / points.len() as f64;
        Some(light)
    }

    fn terms(&self, p: &Point3<f64>) -> SVector<f64, TERMS> {
        // Beyond the tissue surface the course is not known: as at its end.
        let [x, y, z] = [0, 1, 2].map(|k| {
            let half = ((self.high[k] - self.low[k]) / 2.0).max(1e-9);
            ((p[k] - self.low[k]) / half - 1.0).clamp(-1.0, 1.0)
        });
        SVector::from([1.0, x, y, z, x * x, y * y, z * z, x * y, y * z, z * x])
    }

    fn at(&self, p: &Point3<f64>) -> f64 {
        (self.terms(p).dot(&self.course) - self.mean).exp()
    }
}

/// The median of values; not a number without any.
fn middle(values: impl Iterator<Item = f64>) -> f64 {
    median(&mut values.collect::<Vec<f64>>()).unwrap_or(f64::NAN)
}

/// The colour that most of a surface has, and its scatter.
struct Cluster {
    centre: Vector3<f64>,
    covariance: Matrix3<f64>,
}

impl Cluster {
    fn most_of(colours: Vec<Vector3<f64>>) -> Option<Self> {
        const ROUNDS: usize = 5;
        /// In median distances: beyond nearly all of a normal scatter.
        const REACH: f64 = 2.5;
        /// Of the steps in which colours come, so that an even colour has a scatter.
        const LEAST_SCATTER: f64 = 0.5;
        if colours.is_empty() {
            return None;
        }
        let mut centre = Vector3::from([0, 1, 2].map(|k| middle(colours.iter().map(|c| c[k]))));
        let mut covariance = Matrix3::zeros();
        for _ in 0..ROUNDS {
            let off = |c: &Vector3<f64>| (c - centre).norm();
            let reach = REACH * middle(colours.iter().map(off)).max(LEAST_SCATTER);
            let kept: Vec<&Vector3<f64>> = colours.iter().filter(|c| off(c) <= reach).collect();
            let count = kept.len() as f64;
            let mean = kept.iter().copied().sum::<Vector3<f64>>() / count;
            covariance = kept
                .iter()
                .map(|c| (*c - mean) * (*c - mean).transpose())
                .sum::<Matrix3<f64>>()
                / count;
            centre = mean;
        }
        Some(Self {
            centre,
            covariance: covariance + Matrix3::identity() * LEAST_SCATTER.powi(2),
        })
    }
}

/// The tray's colour among those of the outer surface, where it is clear.
fn tray_among(outer: &[Vector3<f64>], material: &Cluster) -> Option<Vector3<f64>> {
    const ROUNDS: usize = 8;
    let rest: Vec<Vector3<f64>> = outer
        .iter()
        .filter(|c| (*c - material.centre).norm() > TRAY_STANDS_OUT)
        .copied()
        .collect();
    if rest.is_empty() {
        return None;
    }
    let median_of = |colours: &[Vector3<f64>]| {
        Vector3::from([0, 1, 2].map(|k| middle(colours.iter().map(|c| c[k]))))
    };
    let mut centre = median_of(&rest);
    let mut near = Vec::new();
    for _ in 0..ROUNDS {
        near = rest
            .iter()
            .filter(|c| (*c - centre).norm() <= TRAY_STANDS_OUT)
            .copied()
            .collect();
        if near.is_empty() {
            return None;
        }
        centre = median_of(&near);
    }
    let share = near.len() as f64 / outer.len() as f64;
    let of_the_rest = near.len() as f64 / rest.len() as f64;
    let clear = share >= TRAY_SHARE
        && of_the_rest >= TRAY_SHARE_OF_THE_REST
        && (centre - material.centre).norm() > TRAY_STANDS_OUT;
    clear.then_some(centre)
}

/// The way from the material's colour to the tray's.
struct Apart {
    material: Vector3<f64>,
    way: Vector3<f64>,
    /// Inverse of the material's covariance.
    metric: Matrix3<f64>,
    separation: f64,
}

/// A colour beside those of material and tray.
#[derive(Debug, Clone, Copy, PartialEq)]
enum Share {
    Between(f64),
    Other,
}

impl Share {
    fn toward_tray(self) -> f64 {
        match self {
            Self::Between(share) => share,
            Self::Other => 0.0,
        }
    }
}

impl Apart {
    fn between(material: &Cluster, tray: Vector3<f64>) -> Result<Self, NoColour> {
        let way = tray - material.centre;
        if way.norm() < LEAST_DIFFERENCE {
            return Err(NoColour::Alike {
                difference: way.norm(),
            });
        }
        let metric = material.covariance.try_inverse().unwrap_or_default();
        let separation = way.dot(&(metric * way)).sqrt();
        if separation.is_nan() || separation < LEAST_SEPARATION {
            return Err(NoColour::TooUneven { separation });
        }
        Ok(Self {
            material: material.centre,
            way,
            metric,
            separation,
        })
    }

    fn share(&self, colour: &Vector3<f64>) -> Share {
        /// Off the way by more than this part of it, and than the scatter has
        /// by chance, is another colour.
        const ASIDE: f64 = 0.5;
        const BY_CHANCE: f64 = 4.5;
        let off = colour - self.material;
        let share = off.dot(&(self.metric * self.way)) / self.separation.powi(2);
        let aside = off - self.way * share;
        let far = aside.dot(&(self.metric * aside)).sqrt();
        if far > BY_CHANCE.max(ASIDE * self.separation) {
            Share::Other
        } else {
            Share::Between(share)
        }
    }

    /// How like the tray's the colour in the middle of a patch is: 1 the same,
    /// 0 no nearer to it than halfway.
    fn likeness(&self, patch: &[u32], colours: &[Option<Vector3<f64>>]) -> f64 {
        let share = |c: &Vector3<f64>| self.share(c).toward_tray();
        let mut inside: Vec<Vector3<f64>> =
            patch.iter().filter_map(|&v| colours[v as usize]).collect();
        inside.sort_by(|a, b| share(b).total_cmp(&share(a)));
        inside.truncate(inside.len().div_ceil(2));
        let core = inside.iter().sum::<Vector3<f64>>() / inside.len().max(1) as f64;
        let off = (core - self.material - self.way).norm() / self.way.norm();
        (1.0 - off / HALFWAY).clamp(0.0, 1.0)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    // CIE 15: white is L* 100, a* 0, b* 0; the sRGB primary red in D65 is
    // L* 53.24, a* 80.09, b* 67.20 (widely tabulated; value from memory).
    #[test]
    fn known_colours_are_where_they_are_tabulated() {
        let white = of_srgb([255; 3]);
        assert!(
            (white - Vector3::new(116.0, 0.0, 0.0)).norm() < 0.02,
            "{white}"
        );
        let red = of_srgb([255, 0, 0]);
        assert!(
            (red - Vector3::new(69.24, 80.09, 67.20)).norm() < 0.05,
            "{red}"
        );
        assert_eq!(to_srgb(&of_srgb([12, 130, 200])), [12, 130, 200]);
    }

    /// Half the light, linearly: all three shrink by the cube root of two.
    #[test]
    fn a_change_of_the_light_scales_the_vector() {
        let linear = |c: f64| {
            let lab = Lab::from_color(palette::LinSrgb::new(0.6 * c, 0.3 * c, 0.45 * c));
            Vector3::<f64>::new(lab.l + 16.0, lab.a, lab.b)
        };
        let (full, half) = (linear(1.0), linear(0.5));
        assert!((half * 2f64.cbrt() - full).norm() < 1e-6);
    }

    #[test]
    fn a_course_of_light_is_found_through_a_patch_of_another_colour() {
        let points = (0..4000).map(|i| {
            let p = Point3::new(
                f64::from(i % 40) - 20.0,
                f64::from(i / 40 % 40) - 20.0,
                f64::from(i % 7),
            );
            let truth = 60.0 * (0.01 * p.x - 0.004 * p.y).exp();
            let light = if p.x > 12.0 && p.y > 8.0 {
                100.0
            } else {
                truth
            };
            (p, light)
        });
        let light = Light::over(points).expect("there are enough points");
        let [a, b] = [-18.0, 18.0].map(|x| light.at(&Point3::new(x, 2.0, 3.0)));
        assert!((b / a / 0.36f64.exp() - 1.0).abs() < 0.01, "{}", b / a);
    }
}
