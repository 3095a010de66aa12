//! Hand-built checked cases to report on.

use crate::road::{CheckedCase, CheckedImpression, LoadedScan, judged};
use judge::{Case, ImpressionInput, Protocol, Stage, UnitReading};
use measure::{
    Arch, Cover, CoverMethod, Frame, ImpressionMeasurement, NotMeasured, Side, Spot, SpotKind,
    TrayRegistration, Zone,
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
        },
    );
    let impression = CheckedImpression {
        scan: Arc::new(loaded("first.ply")),
        tray: tray.map(Arc::new),
        measurement,
    };
    judged(case, Protocol::default(), vec![impression])
}

fn measurement() -> ImpressionMeasurement {
    ImpressionMeasurement {
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
        border: Err(NotMeasured::NoBorder),
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
        file_name: file_name.to_owned(),
        sha256: format!("sum of {file_name}"),
        format: Format::PlyBinaryLe,
        unit: UnitReading::Assumed,
        warnings: Vec::new(),
        questions: Vec::new(),
    }
}
