//! Impressions that are spoiled in one way each.

use fixtures::border::{COUNT, measured, short, sound_border};
use fixtures::impression::{colours, sound, spot, stop, void};
use measure::landmarks::{
    Covered, Extent, Landmark, LandmarkName, LandmarkSource, Nearby, NearbyKind, Seen, Unseen,
};
use measure::tray_fit::Amount;
use measure::{
    Arch, Border, BorderPart, Contrast, CoverMethod, Defect, DefectKind, DipKind, EdgeExtent,
    Measured, Measurement, Missing, NoBorder, NoTissue, OuterExcess, Side, Spot, Station,
    TrayNotPlaced, TrayThickness, Zone,
};
use nalgebra::Point3;
use std::ops::Range;

/// Sound impressions of a jaw, each spoiled in one way.
pub fn spoiled(arch: Arch) -> Vec<Measurement> {
    let mut all: Vec<Measurement> = Vec::new();
    let mut spoil = |change: &dyn Fn(&mut Measurement)| {
        let mut measurement = sound();
        measurement.frame.arch = arch;
        change(&mut measurement);
        all.push(measurement);
    };
    for min_mm in [-0.6, 0.0, 0.15, 0.5, 0.95] {
        spoil(&|m| m.spots = vec![spot(min_mm)]);
    }
    for area_uncertainty_mm2 in [72.0, 400.0] {
        spoil(&|m| {
            m.spots = vec![Spot {
                area_mm2: 540.0,
                area_uncertainty_mm2,
                ..spot(0.0)
            }];
        });
    }
    for min_mm in [0.0, 0.15] {
        spoil(&|m| {
            m.spots = vec![Spot {
                edge: Some(EdgeExtent {
                    length_mm: Amount {
                        value: 6.2,
                        uncertainty: 0.3,
                    },
                    width_mm: Amount {
                        value: 0.9,
                        uncertainty: 0.2,
                    },
                }),
                ..spot(min_mm)
            }];
        });
    }
    for min_mm in [Some(0.8), Some(0.25), None] {
        spoil(&|m| m.stops = vec![stop(min_mm)]);
    }
    for min_mm in [None, Some(2.4)] {
        spoil(&|m| {
            m.colour = Some(Ok(colours(5.0)));
            m.spots = vec![Spot {
                min_mm,
                confidence: Some(0.9),
                ..spot(0.0)
            }];
        });
    }
    spoil(&|m| {
        m.contrasts = vec![Contrast {
            centre: Point3::origin(),
            area_mm2: 12.0,
            zone: Zone::BuccalFlange,
            side: None,
        }];
    });
    spoil(&|m| {
        m.outer_excess = Some(OuterExcess {
            area_mm2: Amount {
                value: 140.0,
                uncertainty: 15.0,
            },
            thickest_mm: Amount {
                value: 2.3,
                uncertainty: 0.1,
            },
            at: Point3::origin(),
            zone: Zone::ResidualRidge,
            side: None,
        });
    });
    spoil(&|m| m.scan.integrity.median_edge = 1.3);
    of_cover(&mut spoil);
    of_border(arch, &mut spoil);
    of_tissue(&mut spoil);
    of_landmarks(arch, &mut spoil);
    all
}

type SpoilBy<'a> = dyn FnMut(&dyn Fn(&mut Measurement)) + 'a;

fn of_cover(spoil: &mut SpoilBy<'_>) {
    let two_sided = CoverMethod::TwoSided {
        tray: TrayThickness {
            mm: 2.0,
            uncertainty_mm: 0.5,
        },
    };
    for (method, uncertainty_mm) in [(None, 0.5), (Some(two_sided), 0.5), (Some(two_sided), 0.1)] {
        spoil(&|m| {
            if let Ok(cover) = &mut m.cover {
                cover.uncertainty_mm = uncertainty_mm;
                cover.method = method.unwrap_or(cover.method);
            }
        });
    }
    spoil(&|m| {
        if let Ok(cover) = &mut m.cover {
            cover.area_judged_mm2 = 700.0;
        }
    });
    for why in [
        TrayNotPlaced::NoTray,
        TrayNotPlaced::NoOuterSurface,
        TrayNotPlaced::LittleOuterSurface {
            outer_cm2: 15.0,
            tissue_cm2: 40.0,
        },
        TrayNotPlaced::Mirrored,
        TrayNotPlaced::DoesNotFit {
            fitting_percent: 3.0,
        },
        TrayNotPlaced::Ambiguous { spread_mm: 2.0 },
        TrayNotPlaced::NoneOfShelf {
            trays: 8,
            nearest: Some("upper 3".to_owned()),
        },
        TrayNotPlaced::AlikeOnShelf {
            one: "upper 3".to_owned(),
            other: "upper 3 new".to_owned(),
        },
        TrayNotPlaced::TooCoarse {
            median_edge_mm: 1.4,
        },
    ] {
        spoil(&|m| m.cover = Err(why.clone().into()));
    }
    spoil(&|m| {
        m.colour = Some(Ok(colours(0.0)));
        m.cover = Err(TrayNotPlaced::NoTray.into());
    });
    for value in [5.0, -5.0] {
        spoil(&|m| {
            if let Some(seating) = m.tray_fit.as_mut().and_then(|fit| fit.seating.as_mut()) {
                let much = Amount {
                    value,
                    uncertainty: 0.2,
                };
                (seating.right_mm, seating.anterior_mm) = (much, much);
                (seating.front_up_deg, seating.right_up_deg) = (much, much);
                (seating.turned_right_deg, seating.wider_mm) = (much, much);
            }
        });
    }
}

fn of_border(arch: Arch, spoil: &mut SpoilBy<'_>) {
    spoil(&|m| m.border = Err(NoBorder::NoLine));
    spoil(&|m| m.border = Err(NoBorder::NotRound));
    let zones = match arch {
        Arch::Maxillary => [
            Zone::LabialFlange,
            Zone::BuccalFlange,
            Zone::Tuberosity,
            Zone::HamularNotch,
        ],
        Arch::Mandibular => [
            Zone::LabialFlange,
            Zone::BuccalFlange,
            Zone::Distobuccal,
            Zone::LingualFlange,
        ],
    };
    let changes: [fn(&mut Station); 10] = [
        |s| s.flange_height = measured(1.0),
        |s| s.flange_height = measured(2.95),
        |s| s.flange_thickness = measured(1.0),
        |s| s.flange_thickness = measured(7.0),
        |s| s.border_radius = measured(0.3),
        |s| s.border_radius = measured(0.68),
        |s| s.overlap = measured(0.0),
        |s| s.overlap = measured(1.0),
        |s| s.overlap = measured(9.0),
        |s| {
            s.scan_ends = true;
            s.flange_height = Err(Missing::ScanEnds);
        },
    ];
    for zone in zones {
        for change in changes {
            spoil(&|m| {
                if let Ok(border) = &mut m.border {
                    for station in &mut border.stations[80..110] {
                        station.zone = zone;
                        change(station);
                    }
                }
            });
        }
    }
    of_midlines(arch, spoil);
    for (kind, depth_mm) in [
        (DipKind::Short, 3.0),
        (DipKind::Short, 2.1),
        (DipKind::Wave, 3.0),
        (DipKind::BroadNotch, 3.0),
    ] {
        spoil(&|m| {
            if let Ok(border) = &mut m.border {
                border.dips.push(measure::Dip {
                    kind,
                    ..short(depth_mm)
                });
            }
        });
    }
    spoil(&|m| {
        let mut border = sound_border();
        for number in 20..50 {
            border.stations[number].flange_height = measured(4.0);
            border.stations[number].opposite = Some(130 - number);
            border.stations[130 - number].flange_height = measured(12.0);
        }
        m.border = Ok(border);
    });
}

/// Stretches that the scan does not show, at the midlines of each part of the border.
fn of_midlines(arch: Arch, spoil: &mut SpoilBy<'_>) {
    let not_seen = |border: &mut Border, stretch: Range<usize>| {
        for number in stretch {
            let station = &mut border.stations[number % COUNT];
            station.scan_ends = true;
            if arch == Arch::Mandibular && (100..140).contains(&number) {
                station.part = BorderPart::Lingual;
            }
        }
    };
    for (from, to) in [
        (390, 415),
        (400, 415),
        (180, 192),
        (190, 216),
        (120, 135),
        (198, 212),
    ] {
        spoil(&|m| {
            if let Ok(border) = &mut m.border {
                not_seen(border, from..to);
            }
        });
    }
}

fn of_tissue(spoil: &mut SpoilBy<'_>) {
    spoil(&|m| {
        m.tissue = Err(NoTissue::TooCoarse {
            median_edge_mm: 0.9,
        })
    });
    for (kind, across_mm) in [
        (DefectKind::Void, 3.0),
        (DefectKind::Void, 2.05),
        (DefectKind::Nodule, 3.0),
        (DefectKind::Fold, 5.0),
        (DefectKind::Hole, 3.0),
    ] {
        for (zone, from_edge_mm) in [
            (Zone::ResidualRidge, 12.0),
            (Zone::PosteriorPalatalSeal, 12.0),
            (Zone::BuccalFlange, 1.0),
        ] {
            spoil(&|m| {
                if let Ok(tissue) = &mut m.tissue {
                    tissue.defects = vec![Defect {
                        kind,
                        across_mm,
                        length_mm: (kind == DefectKind::Fold).then_some(across_mm),
                        across_uncertainty_mm: 0.1,
                        zone,
                        from_edge_mm,
                        ..void()
                    }];
                }
            });
        }
    }
    spoil(&|m| {
        let pit = Defect {
            across_mm: 5.0,
            ..void()
        };
        m.spots = vec![Spot {
            centre: pit.centre,
            ..spot(0.5)
        }];
        if let Ok(tissue) = &mut m.tissue {
            tissue.defects = vec![pit];
        }
    });
    spoil(&|m| {
        if let Ok(tissue) = &mut m.tissue {
            let others = [Zone::LabialFlange, Zone::Palate, Zone::Rugae].map(|zone| {
                let mut other = tissue.zones[0].clone();
                (other.zone, other.noise_mm) = (zone, 0.2);
                other
            });
            tissue.zones.extend(others);
        }
    });
    let regions: [fn(&mut measure::ZoneScan); 3] = [
        |zone| zone.least_across_mm = 2.6,
        |zone| zone.noise_mm = 0.2,
        |zone| zone.doubled_mm2 = zone.area_mm2 / 10.0,
    ];
    for change in regions {
        spoil(&|m| {
            if let Ok(tissue) = &mut m.tissue {
                tissue.zones.iter_mut().for_each(change);
            }
        });
    }
}

fn of_landmarks(arch: Arch, spoil: &mut SpoilBy<'_>) {
    for landmark in landmarks(arch) {
        spoil(&|m| {
            m.landmarks = vec![landmark.clone()];
            m.spots = vec![spot(0.0)];
            if let Ok(border) = &mut m.border {
                border.dips.push(short(3.0));
            }
            if let Ok(tissue) = &mut m.tissue {
                tissue.defects = [DefectKind::Void, DefectKind::Nodule, DefectKind::Hole]
                    .map(|kind| Defect { kind, ..void() })
                    .into();
            }
        });
    }
}

/// Landmarks that are missed, covered, or not seen.
fn landmarks(arch: Arch) -> Vec<Landmark> {
    let margin = |mm| Extent {
        margin: Some(Measured {
            mm,
            uncertainty_mm: 0.5,
        }),
        covered: None,
    };
    let little = Extent {
        margin: None,
        covered: Some(Covered {
            percent: 30.0,
            uncertainty_percent: 12.0,
        }),
    };
    let there = || {
        Ok(Seen {
            point: Point3::origin(),
            uncertainty_mm: 0.5,
            confidence: 0.9,
            relief_mm: Some(0.6),
        })
    };
    let (notch, area) = match arch {
        Arch::Maxillary => (LandmarkName::HamularNotch, LandmarkName::IncisivePapilla),
        Arch::Mandibular => (LandmarkName::RetromolarPad, LandmarkName::LingualFlange),
    };
    let of = |name: LandmarkName, seen, extent, nearby: &[NearbyKind]| Landmark {
        name,
        side: name.is_paired().then_some(Side::Right),
        source: LandmarkSource::Detected,
        seen,
        expected: Some(Point3::origin()),
        zone: Some(Zone::ResidualRidge),
        extent,
        nearby: (nearby.iter())
            .map(|&kind| Nearby {
                kind,
                distance_mm: 0.1,
            })
            .collect(),
    };
    let in_palate = Landmark {
        zone: Some(Zone::Palate),
        ..of(notch, there(), margin(3.0), &[NearbyKind::ShortBorder(1)])
    };
    [
        in_palate,
        of(notch, there(), margin(1.2), &[]),
        of(notch, there(), margin(0.3), &[]),
        of(notch, there(), margin(-2.0), &[]),
        of(notch, there(), little, &[]),
        of(
            notch,
            Err(Unseen::TroughOpen { open_mm: 2.0 }),
            margin(0.2),
            &[],
        ),
        of(area, there(), margin(3.0), &[NearbyKind::ScanEnds]),
        of(area, there(), margin(3.0), &[NearbyKind::ShortBorder(1)]),
        of(area, there(), margin(3.0), &[NearbyKind::Defect(0)]),
        of(area, there(), margin(3.0), &[NearbyKind::Defect(1)]),
        of(area, there(), margin(3.0), &[NearbyKind::Defect(2)]),
        of(area, there(), margin(3.0), &[NearbyKind::ShowThrough(0)]),
        of(
            area,
            Err(Unseen::NoRelief { least_mm: 0.25 }),
            margin(3.0),
            &[],
        ),
        of(area, Err(Unseen::NoBorder), margin(3.0), &[]),
    ]
    .into()
}
