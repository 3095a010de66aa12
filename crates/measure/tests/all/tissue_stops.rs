//! Declared tissue stops, told from faults.

use measure::{ImpressionMeasurement, MeasureSettings, SpotKind, measure};
use nalgebra::Point3;
use phantom::{Arch, Options, Phantom};

fn with_stops(arch: Arch) -> Phantom {
    Phantom::new(&Options {
        arch,
        seed: 41,
        edge_mm: 0.35,
        tray_edge_mm: 0.4,
        noise_sd_mm: 0.02,
        stops: vec![-0.6, 0.6],
        ..Options::default()
    })
}

fn measured(phantom: &Phantom, stops: Vec<Point3<f64>>) -> ImpressionMeasurement {
    let settings = MeasureSettings {
        stops,
        ..MeasureSettings::default()
    };
    measure(&phantom.impression, Some(&phantom.tray), &settings, &|_| {})
}

fn show_through(result: &ImpressionMeasurement) -> Vec<Option<usize>> {
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
    let sound = Phantom::new(&Options {
        arch: Arch::Mandibular,
        seed: 41,
        edge_mm: 0.35,
        tray_edge_mm: 0.4,
        noise_sd_mm: 0.02,
        ..Options::default()
    });
    let result = measured(&sound, phantom.truth.stops.clone());
    assert!(show_through(&result).is_empty());
    for stop in &result.stops {
        let cover = stop.min_mm.expect("surface was scanned there");
        assert!(cover > 1.0, "{cover}");
    }
}
