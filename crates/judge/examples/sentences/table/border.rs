//! Borders that are spoiled in one way each.

use super::impressions::SpoilBy;
use fixtures::border::{COUNT, measured, short, sound_border};
use measure::{Arch, Border, BorderPart, DipKind, Missing, NoBorder, Station, Zone};
use std::ops::Range;

/// Stretches that miss a limit, in each zone of a jaw, and those that were not seen.
pub fn of_border(arch: Arch, spoil: &mut SpoilBy<'_>) {
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
