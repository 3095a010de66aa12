//! Hand-built measurements to judge.
#![allow(dead_code, reason = "not every test file speaks of everything")]

pub mod border;

use judge::{Case, Evidence, ImpressionInput, ScanFacts, Stage, UnitReading};
use measure::tray_fit::{Amount, Seating};
use measure::{
    Arch, Cover, CoverMethod, Frame, ImpressionMeasurement, MeasureSettings, Side, Spot, SpotKind,
    StopReading, TissueSurface, TrayColour, TrayFit, TrayRegistration, Zone, ZoneScan,
};
use mesh::Integrity;
use nalgebra::{Isometry3, Point3, Vector3};

/// A sound maxillary impression: well covered, well placed, whole.
pub fn sound() -> ImpressionMeasurement {
    ImpressionMeasurement {
        turned: measure::facing::Turned::default(),
        integrity: Integrity {
            vertices: 1000,
            triangles: 1996,
            components: 1,
            boundary_loops: 0,
            non_manifold_edges: 0,
            degenerate_triangles: 0,
            median_edge: 0.3,
            area: 9000.0,
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
        colour: None,
        tray_fit: Some(even_fit()),
        noise_mm: Some(0.02),
        cover: Ok(Cover {
            method: CoverMethod::TrayScan,
            registration: Some(TrayRegistration {
                impression_from_tray: Isometry3::identity(),
                rms_mm: 0.02,
                uncertainty_mm: 0.05,
                tray_seen_mm2: 2000.0,
                fitting_share: 0.6,
                behind_share: 0.0,
            }),
            at_vertex_mm: vec![Some(2.5); 1000],
            uncertainty_mm: 0.1,
            area_judged_mm2: 3600.0,
            min_mm: 1.4,
            p05_mm: 1.8,
            median_mm: 2.5,
            p95_mm: 4.0,
        }),
        spots: Vec::new(),
        stops: Vec::new(),
        border: Ok(border::sound_border()),
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
        places: Vec::new(),
    }
}

/// A tray that stood well, each amount 0.1 ± 0.2.
pub fn even_fit() -> TrayFit {
    let little = Amount {
        value: 0.1,
        uncertainty: 0.2,
    };
    TrayFit {
        zones: Vec::new(),
        seating: Some(Seating {
            right_mm: little,
            anterior_mm: little,
            front_up_deg: little,
            right_up_deg: little,
            turned_right_deg: little,
            wider_mm: little,
            cover_sd_mm: 0.8,
            even_sd_mm: 0.7,
        }),
    }
}

/// What colours tell of a tray of which this much shows, mm².
pub fn colours(tray_seen_mm2: f64) -> TrayColour {
    TrayColour {
        material: [132, 98, 178],
        tray: [236, 236, 230],
        inferred: false,
        difference: 60.0,
        separation: 12.0,
        at_vertex: vec![Some(0.0); 1000],
        area_judged_mm2: 3600.0,
        tray_seen_mm2,
        other_mm2: 0.0,
        beside_cover: None,
    }
}

/// A patch with this least cover, 5 ± 1 mm².
pub fn spot(min_mm: f64) -> Spot {
    Spot {
        kind: if min_mm <= 0.2 {
            SpotKind::ShowThrough
        } else {
            SpotKind::Thin
        },
        centre: Point3::new(10.0, 20.0, 5.0),
        area_mm2: 5.0,
        area_uncertainty_mm2: 1.0,
        min_mm: Some(min_mm),
        confidence: None,
        zone: Zone::ResidualRidge,
        side: Some(Side::Right),
        stop: None,
        around: None,
        vertices: Vec::new(),
    }
}

pub fn stop(min_mm: Option<f64>) -> StopReading {
    StopReading {
        at: Point3::new(-10.0, 20.0, 5.0),
        min_mm,
        zone: Zone::ResidualRidge,
        side: Some(Side::Left),
    }
}

pub fn input(declared: Option<Arch>, stage: Stage) -> ImpressionInput {
    ImpressionInput {
        declared,
        stage,
        scan: "impression.ply".into(),
        tray: Some("tray.stl".into()),
        tray_thickness: None,
        tray_colour: None,
        stops: Vec::new(),
        marks: Vec::new(),
        marks_file: None,
    }
}

pub fn facts(sha256: &str) -> ScanFacts {
    ScanFacts {
        sha256: sha256.to_owned(),
        unit: UnitReading::Assumed,
        questions: Vec::new(),
    }
}

/// Evidence with files of its own: `number` makes their sums differ.
pub fn evidence(measurement: &ImpressionMeasurement, number: usize) -> Evidence<'_> {
    Evidence {
        measurement,
        scan: facts(&format!("impression {number}")),
        tray: Some(facts("tray")),
    }
}

pub fn one(declared: Option<Arch>, stage: Stage) -> Case {
    Case::of_one("test", input(declared, stage))
}

/// What measuring is told without a case file: nothing.
pub fn settings() -> MeasureSettings {
    MeasureSettings {
        show_through_mm: 0.2,
        thin_cover_mm: 1.0,
        least_area_mm2: 1.0,
        stops: Vec::new(),
        stop_radius_mm: 2.0,
        flange_depth_mm: 3.0,
        tray_thickness: None,
        tray_colour: None,
        marks: Vec::new(),
    }
}
