//! Impressions that are spoiled in one way each.

use super::border::of_border;
use super::landmarks::of_landmarks;
use fixtures::border::notch;
use fixtures::impression::{colours, sound, spot, stop, void};
use measure::tray_fit::Amount;
use measure::{
    Arch, Contrast, CoverMethod, Defect, DefectKind, EdgeExtent, Measurement, NoTissue,
    OuterExcess, Spot, TrayNotPlaced, TrayThickness, Zone,
};
use nalgebra::Point3;

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

/// Adds an impression that is spoiled by a change.
pub type SpoilBy<'a> = dyn FnMut(&dyn Fn(&mut Measurement)) + 'a;

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
        (DefectKind::Hole, 1.5),
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
        let bump = Defect {
            kind: DefectKind::Nodule,
            centre: Point3::new(3.0, 0.0, 8.0),
            across_mm: 4.0,
            from_edge_mm: 1.0,
            ..void()
        };
        if let Ok(border) = &mut m.border {
            border.dips = [0, 12].map(|at| notch(at + 2)).into();
        }
        if let Ok(tissue) = &mut m.tissue {
            tissue.defects = vec![bump];
        }
    });
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
