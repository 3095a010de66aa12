//! Hand-built checked cases to report on.

use check::{CheckedCase, CheckedImpression, CheckedPair, LoadedScan, judged};
use fixtures::border::measured;
use judge::{Case, Consignment, ImpressionInput, JawRelation, Protocol, Stage, UnitReading};
use measure::pair::{PassPair, PlaceNow, Wash};
use measure::record::{self, NoSpace, Space};
use measure::tray_fit::{Amount, Seating, TrayFit, ZoneFit};
use measure::{
    Arch, Border, BorderPart, Cover, CoverMethod, Measurement, Missing, Scanned, Section, Side,
    Spot, SpotKind, TrayColour, TrayNotPlaced, TrayThickness, VertexPlace, Zone,
};
use mesh::{Format, Integrity, Mesh};
use nalgebra::{Isometry3, Point3};
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
        ..fixtures::impression::input(None, stage)
    };
    let case = Case {
        scanner: None,
        trays: None,
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
            papilla_to_lip_mm: Some(7.5),
            ..JawRelation::default()
        }),
        labels: Default::default(),
        scanned_at: None,
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
    let of = |name, measurement, tray: bool| CheckedImpression {
        scan: Arc::new(loaded(name)),
        tray: tray.then(|| Arc::new(loaded("tray.stl"))),
        as_sent: None,
        shelf: None,
        relief: None,
        parts: None,
        pieces: None,
        scanned: Scanned::Impression(Box::new(measurement)),
        next_tray: None,
    };
    let pair = CheckedPair {
        first_pass: 0,
        wash: 1,
        found: Ok(PassPair {
            border_changes: Ok(vec![None; fixtures::border::COUNT]),
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
            space(0.0, Ok(14.3)),
            space(2.5, Ok(13.9)),
            space(5.0, Err(NoSpace::NotOpposed)),
        ],
        uncertainty_mm: 0.17,
        ridge_angle_deg: 3.4,
        ridge_angle_uncertainty_deg: 0.6,
    };
    judged(
        case,
        Protocol::default(),
        vec![
            of("first.ply", first, true),
            of("wash.ply", wash, true),
            of("lower.ply", lower, false),
        ],
        vec![pair],
        Some((Arc::new(loaded("record.ply")), Ok(relation))),
    )
}

/// A parcel that lacks nothing.
pub(crate) fn parcel() -> Consignment {
    let parts = || ["upper impression", "lower impression", "record"].map(str::to_owned);
    Consignment {
        no_jaw_relation_because: None,
        one_arch_because: None,
        prescription: Some(true),
        disinfectant: Some("as agreed".to_owned()),
        disinfection_min: Some(10.0),
        expected: parts().into(),
        packed: parts().into(),
    }
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
            ..fixtures::impression::input(None, Stage::FirstPass)
        },
    );
    let impression = CheckedImpression {
        scan: Arc::new(loaded("first.ply")),
        tray: tray.map(Arc::new),
        as_sent: None,
        shelf: None,
        relief: None,
        parts: None,
        pieces: None,
        scanned: Scanned::Impression(Box::new(measurement)),
        next_tray: None,
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
    let mut measurement = fixtures::impression::sound();
    measurement.scan.integrity = Integrity {
        vertices: 3,
        triangles: 1,
        boundary_loops: 1,
        median_edge: 0.25,
        area: 9_000.123_456,
        ..measurement.scan.integrity
    };
    measurement.tray_fit = Some(tray_fit(0.2));
    measurement.cover = measurement.cover.map(|cover| Cover {
        at_vertex_mm: vec![Some(0.03), Some(3.0), None],
        min_mm: 0.03,
        p05_mm: 0.9,
        median_mm: 2.46,
        ..cover
    });
    measurement.border = Ok(sound_border());
    let place = |zone, side, station| VertexPlace {
        zone,
        side,
        station,
    };
    measurement.places = vec![
        Some(place(Zone::ResidualRidge, Some(Side::Right), None)),
        Some(place(Zone::LabialFlange, None, Some(7))),
        None,
    ];
    measurement
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

/// Flanges are all buccal, and each station shows a section.
fn sound_border() -> Border {
    let mut border = fixtures::border::sound_border();
    for (number, station) in border.stations.iter_mut().enumerate() {
        if station.part == BorderPart::Outer {
            station.zone = Zone::BuccalFlange;
        }
        station.point.x = number as f64 / 2.0;
        station.opposite = None;
        station.section = section();
    }
    border
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
        area_mm2: 12.0,
        zone,
        side,
        ..fixtures::impression::spot(min_mm)
    }
}

pub(crate) fn loaded(file_name: &str) -> LoadedScan {
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
