//! A hand-built border: 400 stations, half a millimetre apart.

use measure::{
    Border, BorderPart, Dip, DipKind, Measured, Missing, Reading, Section, Side, Station, Zone,
};
use nalgebra::Point3;

pub const COUNT: usize = 400;

pub fn measured(mm: f64) -> Reading {
    Ok(Measured {
        mm,
        uncertainty_mm: 0.1,
    })
}

/// A maxillary border: 80 mm of flange on each side of the labial midline and
/// 40 mm across the back, everything well within every limit.
pub fn sound_border() -> Border {
    Border {
        closed: true,
        length_mm: 200.0,
        stations: (0..COUNT).map(station).collect(),
        dips: vec![notch()],
        crest_line: vec![Point3::origin()],
    }
}

fn station(number: usize) -> Station {
    // Half millimetres from the labial midline, the patient's left positive.
    let left = if number <= COUNT / 2 {
        number as i64
    } else {
        number as i64 - COUNT as i64
    };
    let (part, zone) = match left.abs() {
        0..60 => (BorderPart::Outer, Zone::LabialFlange),
        60..150 => (BorderPart::Outer, Zone::BuccalFlange),
        150..=160 => (BorderPart::Outer, Zone::Tuberosity),
        _ => (BorderPart::Posterior, Zone::PosteriorPalatalSeal),
    };
    let on_flange = part == BorderPart::Outer;
    let figure = |mm| {
        if on_flange {
            measured(mm)
        } else {
            Err(Missing::NoCrest)
        }
    };
    Station {
        s: number as f64 / COUNT as f64,
        part,
        zone,
        side: match left {
            3..198 => Some(Side::Left),
            -197..=-3 => Some(Side::Right),
            _ => None,
        },
        point: Point3::new(left as f64 / 2.0, 0.0, 8.0),
        uncertainty_mm: Some(0.1),
        scan_ends: false,
        flange_height: figure(8.0),
        flange_thickness: figure(3.5),
        border_radius: figure(1.5),
        overlap: measured(2.6),
        opposite: on_flange.then_some((COUNT - number) % COUNT),
        change: None,
        section: Section::default(),
    }
}

/// The labial frenum: stations 398 to 2.
fn notch() -> Dip {
    Dip {
        kind: DipKind::Notch,
        from: 398,
        to: 2,
        bottom: 0,
        depth: Measured {
            mm: 3.0,
            uncertainty_mm: 0.2,
        },
        width_mm: 2.0,
    }
}

/// A dip over 10 mm of the left buccal flange: stations 80 to 100.
pub fn short(depth_mm: f64) -> Dip {
    Dip {
        kind: DipKind::Short,
        from: 80,
        to: 100,
        bottom: 90,
        depth: Measured {
            mm: depth_mm,
            uncertainty_mm: 0.3,
        },
        width_mm: 8.0,
    }
}
