//! Hand-built checked cases to report on.

use crate::road::{CheckedCase, CheckedImpression, LoadedScan, judged};
use judge::{Case, ImpressionInput, Protocol, Stage, UnitReading};
use measure::{
    Arch, Border, BorderPart, Cover, CoverMethod, Dip, DipKind, Frame, ImpressionMeasurement,
    Measured, Missing, NotMeasured, Reading, Section, Side, Spot, SpotKind, Station, TissueSurface,
    TrayRegistration, VertexPlace, Zone, ZoneScan,
};
use mesh::{Format, Integrity, Mesh};
use nalgebra::{Isometry3, Point3, Vector3};
use std::sync::Arc;

/// A maxillary first pass with two places that show tray, one of them hardly,
/// and a thin one.
pub(crate) fn checked_with_spots() -> CheckedCase {
    let mut measurement = measurement();
    measurement.spots = vec![
        spot(0.03, Zone::ResidualRidge, Some(Side::Right)),
        spot(0.15, Zone::Palate, None),
        spot(0.6, Zone::LabialFlange, Some(Side::Left)),
    ];
    checked(measurement, Some(loaded("tray.stl")))
}

/// A maxillary first pass without a tray scan.
pub(crate) fn checked_without_cover() -> CheckedCase {
    let mut measurement = measurement();
    measurement.cover = Err(NotMeasured::NoTray);
    checked(measurement, None)
}

fn checked(measurement: ImpressionMeasurement, tray: Option<LoadedScan>) -> CheckedCase {
    let case = Case::of_one(
        "D-1042",
        ImpressionInput {
            declared: Some(Arch::Maxillary),
            stage: Stage::FirstPass,
            scan: "first.ply".into(),
            tray: tray.is_some().then(|| "tray.stl".into()),
            stops: Vec::new(),
            marks: Vec::new(),
            marks_file: None,
        },
    );
    let impression = CheckedImpression {
        scan: Arc::new(loaded("first.ply")),
        tray: tray.map(Arc::new),
        measurement,
    };
    judged(case, Protocol::default(), vec![impression], None)
}

fn measurement() -> ImpressionMeasurement {
    ImpressionMeasurement {
        turned: measure::facing::Turned::default(),
        integrity: Integrity {
            vertices: 3,
            triangles: 1,
            components: 1,
            boundary_loops: 1,
            non_manifold_edges: 0,
            degenerate_triangles: 0,
            median_edge: 0.25,
            area: 9_000.123_456,
        },
        frame: Ok(Frame {
            origin: Point3::new(1.0, 2.0, 3.0),
            right: Vector3::x(),
            anterior: Vector3::y(),
            seating: Vector3::z(),
            arch: Arch::Maxillary,
            arch_confidence: 0.9,
            confidence: 0.95,
        }),
        has_outer_surface: Some(true),
        wash: None,
        noise_mm: Some(0.02),
        cover: Ok(Cover {
            method: CoverMethod::TrayScan,
            registration: TrayRegistration {
                impression_from_tray: Isometry3::identity(),
                rms_mm: 0.02,
                uncertainty_mm: 0.05,
                tray_seen_mm2: 2000.0,
                fitting_share: 0.6,
                behind_share: 0.0,
            },
            at_vertex_mm: vec![Some(0.03), Some(3.0), None],
            uncertainty_mm: 0.1,
            area_judged_mm2: 3600.0,
            min_mm: 0.03,
            p05_mm: 0.9,
            median_mm: 2.46,
            p95_mm: 4.0,
        }),
        spots: Vec::new(),
        stops: Vec::new(),
        border: Ok(sound_border()),
        tissue: Ok(TissueSurface {
            defects: Vec::new(),
            zones: vec![ZoneScan {
                zone: Zone::ResidualRidge,
                side: Some(Side::Right),
                area_mm2: 600.0,
                missing_mm2: 0.0,
                doubled_mm2: 0.0,
                median_edge_mm: 0.2,
                noise_mm: 0.02,
                least_across_mm: 0.8,
                least_depth_mm: 0.1,
            }],
            loose_pieces: 0,
        }),
        landmarks: Vec::new(),
        places: vec![
            Some(VertexPlace {
                zone: Zone::ResidualRidge,
                side: Some(Side::Right),
                station: None,
            }),
            Some(VertexPlace {
                zone: Zone::LabialFlange,
                side: None,
                station: Some(7),
            }),
            None,
        ],
    }
}

/// A maxillary impression with a knife edge and a cut scan on the left, and no
/// tray: stations 40 to 59 and 80 to 99.
pub(crate) fn checked_with_border() -> CheckedCase {
    let mut measurement = measurement();
    let mut border = sound_border();
    for station in &mut border.stations[40..60] {
        station.border_radius = measured(0.45);
    }
    for station in &mut border.stations[80..100] {
        station.scan_ends = true;
        station.flange_thickness = Err(Missing::ScanEnds);
        station.border_radius = Err(Missing::ScanEnds);
    }
    measurement.border = Ok(border);
    checked(measurement, Some(loaded("tray.stl")))
}

fn measured(mm: f64) -> Reading {
    Ok(Measured {
        mm,
        uncertainty_mm: 0.1,
    })
}

/// 400 stations, half a millimetre apart: 80 mm of flange on each side of the
/// labial midline and 40 mm across the back.
fn sound_border() -> Border {
    const COUNT: usize = 400;
    let station = |number: usize| {
        let is_back = (161..240).contains(&number);
        let figure = |mm| {
            if is_back {
                Err(Missing::NoCrest)
            } else {
                measured(mm)
            }
        };
        Station {
            s: number as f64 / COUNT as f64,
            part: if is_back {
                BorderPart::Posterior
            } else {
                BorderPart::Outer
            },
            zone: if is_back {
                Zone::PosteriorPalatalSeal
            } else {
                Zone::BuccalFlange
            },
            side: match number {
                3..198 => Some(Side::Left),
                203..398 => Some(Side::Right),
                _ => None,
            },
            point: Point3::new(number as f64 / 2.0, 0.0, 8.0),
            uncertainty_mm: Some(0.1),
            scan_ends: false,
            flange_height: figure(8.0),
            flange_thickness: figure(3.5),
            border_radius: figure(1.5),
            overlap: measured(2.6),
            opposite: None,
            change: None,
            section: section(),
        }
    };
    Border {
        closed: true,
        length_mm: 200.0,
        stations: (0..COUNT).map(station).collect(),
        dips: vec![Dip {
            kind: DipKind::Notch,
            from: 398,
            to: 2,
            bottom: 0,
            depth: Measured {
                mm: 3.0,
                uncertainty_mm: 0.2,
            },
            width_mm: 2.0,
        }],
        crest_line: vec![Point3::origin()],
    }
}

fn section() -> Section {
    Section {
        tissue: vec![vec![[-8.0, -8.0], [-2.0, -6.0], [-1.5, -1.0], [0.0, 0.0]]],
        outer: vec![vec![[0.0, 0.0], [1.5, -1.0], [1.8, -7.0]]],
        tray: vec![vec![[0.5, -6.0], [0.0, -2.6], [-0.5, -6.0]]],
        crest: Some([-8.0, -8.0]),
        thickness: Some([[-1.7, -3.0], [1.7, -3.0]]),
        roll_centre: Some([0.0, -1.5]),
    }
}

fn spot(min_mm: f64, zone: Zone, side: Option<Side>) -> Spot {
    Spot {
        kind: if min_mm <= 0.2 {
            SpotKind::ShowThrough
        } else {
            SpotKind::Thin
        },
        centre: Point3::new(10.0, 20.0, 5.0),
        area_mm2: 12.0,
        area_uncertainty_mm2: 1.0,
        min_mm,
        zone,
        side,
        stop: None,
        around: None,
    }
}

fn loaded(file_name: &str) -> LoadedScan {
    LoadedScan {
        mesh: Mesh::new(
            vec![
                Point3::origin(),
                Point3::new(1.5, 0.0, 0.0),
                Point3::new(0.0, 2.25, 0.0),
            ],
            vec![[0, 1, 2]],
            None,
        )
        .unwrap(),
        carries_text: false,
        stl_attributes: false,
        sha256: format!("sum of {file_name}"),
        format: Format::PlyBinaryLe,
        unit: UnitReading::Assumed,
        warnings: Vec::new(),
        questions: Vec::new(),
    }
}
