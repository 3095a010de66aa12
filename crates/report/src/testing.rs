//! Hand-built checked cases to report on.

use check::{CheckedCase, CheckedImpression, CheckedPair, LoadedScan, judged};
use geometry::winding::Turned;
use judge::{Case, Consignment, ImpressionInput, JawRelation, Protocol, Stage, UnitReading};
use measure::pair::{PassPair, PlaceNow, Wash};
use measure::record::{self, Space};
use measure::tray_fit::{Amount, Seating, TrayFit, ZoneFit};
use measure::{
    Arch, Border, BorderPart, Cover, CoverMethod, Dip, DipKind, Frame, Measured, Measurement,
    Missing, Reading, ScanFigures, Scanned, Section, Side, Spot, SpotKind, Station, TissueSurface,
    TrayColour, TrayNotPlaced, TrayRegistration, TrayThickness, VertexPlace, Zone, ZoneScan,
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
    measurement.cover = Err(TrayNotPlaced::NoTray.into());
    measurement.tray_fit = None;
    checked(measurement, None)
}

/// A maxillary first pass whose colours show tray, its scan not given.
pub(crate) fn checked_by_colour() -> CheckedCase {
    let mut measurement = measurement();
    measurement.cover = Err(TrayNotPlaced::NoTray.into());
    measurement.tray_fit = None;
    measurement.spots = vec![Spot {
        min_mm: None,
        confidence: Some(0.876),
        ..spot(0.0, Zone::Palate, None)
    }];
    measurement.colour = Some(Ok(TrayColour {
        material: [132, 98, 178],
        tray: [236, 236, 230],
        inferred: true,
        difference: 61.4,
        separation: 12.3,
        at_vertex: vec![Some(0.9), Some(0.0), None],
        area_judged_mm2: 3587.0,
        tray_seen_mm2: 12.4,
        other_mm2: 3.3,
        beside_cover: None,
    }));
    checked(measurement, None)
}

/// A maxillary first pass with its wash, a mandibular wash whose tray's
/// thickness was stated, a record and a parcel that lacks something.
pub(crate) fn checked_whole() -> CheckedCase {
    let input = |declared, stage, tray: Option<&str>| ImpressionInput {
        declared: Some(declared),
        stage,
        scan: "scan.ply".into(),
        tray: tray.map(Into::into),
        tray_thickness: None,
        tray_colour: None,
        stops: Vec::new(),
        marks: Vec::new(),
        marks_file: None,
    };
    let case = Case {
        id: "D-1043".to_owned(),
        impressions: vec![
            input(Arch::Maxillary, Stage::FirstPass, Some("tray.stl")),
            input(Arch::Maxillary, Stage::Wash, Some("tray.stl")),
            input(Arch::Mandibular, Stage::Wash, None),
        ],
        jaw_relation: Some(JawRelation {
            scan: Some("record.ply".into()),
            vertical_dimension_mm: Some(66.0),
            rest_vertical_dimension_mm: Some(69.5),
            upper_lip_length_mm: Some(21.5),
        }),
        consignment: Some(Consignment {
            no_jaw_relation_because: None,
            one_arch_because: None,
            prescription: Some(true),
            disinfectant: Some("as agreed".to_owned()),
            disinfection_min: Some(10.0),
            expected: vec!["upper impression".to_owned(), "record".to_owned()],
            packed: vec!["Upper impression".to_owned()],
        }),
    };
    let mut first = measurement();
    first.spots = vec![spot(0.03, Zone::ResidualRidge, Some(Side::Right))];
    let mut wash = measurement();
    wash.tray_fit = Some(tray_fit(2.2));
    let added = Wash {
        at_vertex_mm: vec![Some(0.3), Some(0.52), None],
        uncertainty_mm: 0.062,
        area_judged_mm2: 3555.0,
        p05_mm: 0.21,
        median_mm: 0.41,
        p95_mm: 0.77,
        added_share: 0.93,
        lowered_share: 0.02,
        places: vec![PlaceNow {
            spot: 0,
            kind: SpotKind::ShowThrough,
            area_mm2: 12.0,
            was_mm: Some(0.03),
            was_uncertainty_mm: 0.1,
            zone: Zone::ResidualRidge,
            side: Some(Side::Right),
            at: Point3::new(10.0, 20.0, 5.0),
            cover_mm: Some(0.83),
            uncertainty_mm: 0.11,
        }],
    };
    let mut lower = measurement();
    lower.frame.arch = Arch::Mandibular;
    lower.tray_fit = None;
    if let Ok(cover) = &mut lower.cover {
        cover.registration = None;
        cover.method = CoverMethod::TwoSided {
            tray: TrayThickness {
                mm: 2.1,
                uncertainty_mm: 0.15,
            },
        };
    }
    let of = |measurement, tray: bool| CheckedImpression {
        scan: Arc::new(loaded("scan.ply")),
        tray: tray.then(|| Arc::new(loaded("tray.stl"))),
        scanned: Scanned::Impression(Box::new(measurement)),
    };
    let pair = CheckedPair {
        first_pass: 0,
        wash: 1,
        found: Ok(PassPair {
            border_changes: Ok(vec![None; STATIONS]),
            wash: Ok(added),
        }),
    };
    let space = |from_front_mm: f64, mm| Space {
        at: Point3::new(from_front_mm, 0.0, 0.0),
        from_front_mm,
        side: (from_front_mm > 1.0).then_some(Side::Left),
        mm,
    };
    let relation = record::JawRelation {
        record_from_maxilla: Isometry3::identity(),
        record_from_mandible: Isometry3::identity(),
        stations: vec![
            space(0.0, Some(14.3)),
            space(2.5, Some(13.9)),
            space(5.0, None),
        ],
        uncertainty_mm: 0.17,
        ridge_angle_deg: 3.4,
        ridge_angle_uncertainty_deg: 0.6,
    };
    judged(
        case,
        Protocol::default(),
        vec![of(first, true), of(wash, true), of(lower, false)],
        vec![pair],
        Some((Arc::new(loaded("record.ply")), Ok(relation))),
    )
}

/// A tray that stood too far to the patient's right by so much, mm.
fn tray_fit(right_mm: f64) -> TrayFit {
    let amount = |value| Amount {
        value,
        uncertainty: 0.31,
    };
    TrayFit {
        zones: vec![
            ZoneFit {
                zone: Zone::ResidualRidge,
                side: Some(Side::Right),
                edge_to_border_mm: None,
                cover_mm: Some(amount(2.34)),
            },
            ZoneFit {
                zone: Zone::BuccalFlange,
                side: Some(Side::Left),
                edge_to_border_mm: Some(amount(2.71)),
                cover_mm: None,
            },
        ],
        seating: Some(Seating {
            right_mm: amount(right_mm),
            anterior_mm: amount(-0.4),
            front_up_deg: amount(1.3),
            right_up_deg: amount(0.2),
            turned_right_deg: amount(-0.7),
            wider_mm: amount(-1.4),
            cover_sd_mm: 0.93,
            even_sd_mm: 0.58,
        }),
    }
}

fn checked(measurement: Measurement, tray: Option<LoadedScan>) -> CheckedCase {
    let case = Case::of_one(
        "D-1042",
        ImpressionInput {
            declared: Some(Arch::Maxillary),
            stage: Stage::FirstPass,
            scan: "first.ply".into(),
            tray: tray.is_some().then(|| "tray.stl".into()),
            tray_thickness: None,
            tray_colour: None,
            stops: Vec::new(),
            marks: Vec::new(),
            marks_file: None,
        },
    );
    let impression = CheckedImpression {
        scan: Arc::new(loaded("first.ply")),
        tray: tray.map(Arc::new),
        scanned: Scanned::Impression(Box::new(measurement)),
    };
    judged(
        case,
        Protocol::default(),
        vec![impression],
        Vec::new(),
        None,
    )
}

fn measurement() -> Measurement {
    Measurement {
        scan: ScanFigures {
            turned: Turned::default(),
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
        },
        frame: Frame {
            origin: Point3::new(1.0, 2.0, 3.0),
            right: Vector3::x(),
            anterior: Vector3::y(),
            seating: Vector3::z(),
            arch: Arch::Maxillary,
            arch_confidence: 0.9,
            confidence: 0.95,
        },
        has_outer_surface: true,
        colour: None,
        tray_fit: Some(tray_fit(0.2)),
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

/// Stations of the border.
const STATIONS: usize = 400;

/// [`STATIONS`], half a millimetre apart: 80 mm of flange on each side of the
/// labial midline and 40 mm across the back.
fn sound_border() -> Border {
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
            s: number as f64 / STATIONS as f64,
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
            section: section(),
        }
    };
    Border {
        closed: true,
        length_mm: 200.0,
        stations: (0..STATIONS).map(station).collect(),
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
        min_mm: Some(min_mm),
        confidence: None,
        zone,
        side,
        stop: None,
        around: None,
        vertices: Vec::new(),
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
