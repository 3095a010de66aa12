//! Declared tissue stops, told from faults.

use measure::{MeasureSettings, Measurement, SpotKind};
use nalgebra::Point3;
use phantom::{Arch, Options, Phantom};

fn made(arch: Arch, stops: Vec<f64>) -> Phantom {
    Phantom::new(&Options {
        arch,
        seed: 41,
        edge_mm: 0.5,
        tray_edge_mm: 0.5,
        noise_sd_mm: 0.02,
        stops,
        ..Options::default()
    })
}

fn with_stops(arch: Arch) -> Phantom {
    made(arch, vec![-0.6, 0.6])
}

fn measured(phantom: &Phantom, stops: Vec<Point3<f64>>) -> Measurement {
    let settings = MeasureSettings {
        stops,
        ..MeasureSettings::default()
    };
    fixtures::measured(&phantom.impression, Some(&phantom.tray), &settings)
}

fn show_through(result: &Measurement) -> Vec<Option<usize>> {
    result
        .spots
        .iter()
        .filter(|s| s.kind == SpotKind::ShowThrough)
        .map(|s| s.stop)
        .collect()
}

#[test]
fn show_through_at_a_declared_stop_belongs_to_it() {
    for arch in [Arch::Maxillary, Arch::Mandibular] {
        let phantom = with_stops(arch);
        let result = measured(&phantom, phantom.truth.stops.clone());
        let mut found = show_through(&result);
        found.sort();
        assert_eq!(found, [Some(0), Some(1)], "{arch:?}");
        for stop in &result.stops {
            assert!(stop.min_mm.expect("surface was scanned there") <= 0.2);
        }
        let sides: Vec<_> = result.stops.iter().map(|s| s.side).collect();
        assert_eq!(
            sides,
            [Some(measure::Side::Right), Some(measure::Side::Left)]
        );
    }
}

#[test]
fn the_same_show_through_undeclared_is_a_fault() {
    let phantom = with_stops(Arch::Maxillary);
    assert_eq!(show_through(&measured(&phantom, Vec::new())), [None, None]);
}

/// The stops are on the tray, but the tray was not seated down to them.
#[test]
fn a_stop_that_does_not_show_is_read_as_covered() {
    let phantom = with_stops(Arch::Mandibular);
    let sound = made(Arch::Mandibular, Vec::new());
    let result = measured(&sound, phantom.truth.stops.clone());
    assert!(show_through(&result).is_empty());
    for stop in &result.stops {
        let cover = stop.min_mm.expect("surface was scanned there");
        assert!(cover > 1.0, "{cover}");
    }
}
