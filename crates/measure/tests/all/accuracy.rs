//! What is refused and why, and that the number of threads changes nothing.

use fixtures::{ARCHES, something_else};
use measure::{MeasureSettings, Measurement, NotAnImpression, TrayNotPlaced};
use phantom::{Arch, Options, Phantom, PlantedSpot, Sides};

fn measured(phantom: &Phantom) -> Measurement {
    fixtures::measured(
        &phantom.impression,
        Some(&phantom.tray),
        &MeasureSettings::default(),
    )
}

#[test]
fn a_tissue_side_scan_alone_gives_no_cover_and_says_why() {
    for arch in ARCHES {
        let phantom = Phantom::new(&Options {
            arch,
            seed: 5,
            sides: Sides::Tissue,
            edge_mm: 0.8,
            ..Options::default()
        });
        let result = measured(&phantom);
        assert!(!result.has_outer_surface);
        assert_eq!(result.cover, Err(TrayNotPlaced::NoOuterSurface.into()));
        assert!(result.spots.is_empty());
    }
}

#[test]
fn an_empty_tray_and_a_surface_seen_from_behind_are_no_impressions() {
    let phantom = Phantom::new(&Options::default());
    let tray = something_else(&phantom.tray, Some(&phantom.tray));
    assert!(
        matches!(
            tray,
            NotAnImpression::EmptyTray | NotAnImpression::Exchanged
        ),
        "{tray:?}"
    );
    let one_sided = Phantom::new(&Options {
        sides: Sides::Tissue,
        ..Options::default()
    });
    let cast = one_sided.impression.turned_inside_out();
    something_else(&cast, None);
}

#[test]
fn one_thread_and_many_give_the_same_measurement() {
    let phantom = Phantom::new(&Options {
        spots: PlantedSpot::random(Arch::Maxillary, 1, 2, 1),
        noise_sd_mm: 0.02,
        edge_mm: 0.8,
        tray_edge_mm: 0.8,
        ..Options::default()
    });
    let with_threads = |count| {
        rayon::ThreadPoolBuilder::new()
            .num_threads(count)
            .build()
            .expect("threads can be had")
            .install(|| measured(&phantom))
    };
    assert_eq!(with_threads(1), with_threads(4));
}
