//! What is refused and why, and that the number of threads changes nothing.

use fixtures::ARCHES;
use measure::{ImpressionMeasurement, MeasureSettings, NotMeasured, measure};
use phantom::{Arch, Options, Phantom, PlantedSpot, Sides};

fn measured(phantom: &Phantom) -> ImpressionMeasurement {
    measure(
        &phantom.impression,
        Some(&phantom.tray),
        &MeasureSettings::default(),
        &|_| {},
    )
}

#[test]
fn a_tissue_side_scan_alone_gives_no_cover_and_says_why() {
    for arch in ARCHES {
        let phantom = Phantom::new(&Options {
            arch,
            seed: 5,
            sides: Sides::Tissue,
            ..Options::default()
        });
        let result = measured(&phantom);
        assert_eq!(result.has_outer_surface, Some(false));
        assert_eq!(result.cover, Err(NotMeasured::NoOuterSurface));
        assert!(result.spots.is_empty());
    }
}

#[test]
fn another_mouths_tray_is_refused() {
    let made = |arch, seed| {
        Phantom::new(&Options {
            arch,
            seed,
            noise_sd_mm: 0.02,
            ..Options::default()
        })
    };
    for arch in ARCHES {
        for seed in 0..3 {
            let (one, other) = (made(arch, seed), made(arch, seed + 50));
            let result = measure(
                &one.impression,
                Some(&other.tray),
                &MeasureSettings::default(),
                &|_| {},
            );
            assert!(
                matches!(
                    result.cover,
                    Err(NotMeasured::TrayDoesNotFit { .. }
                        | NotMeasured::TrayOtherSize { .. }
                        | NotMeasured::AmbiguousRegistration { .. })
                ),
                "{arch:?} {seed}: {:?}",
                result.cover.map(|c| c.registration)
            );
        }
    }
}

#[test]
fn an_empty_tray_and_a_surface_seen_from_behind_are_no_impressions() {
    let phantom = Phantom::new(&Options::default());
    let tray = measure(
        &phantom.tray,
        Some(&phantom.tray),
        &MeasureSettings::default(),
        &|_| {},
    );
    assert!(matches!(tray.cover, Err(NotMeasured::NotAnImpression(_))));
    let one_sided = Phantom::new(&Options {
        sides: Sides::Tissue,
        ..Options::default()
    });
    let cast = one_sided.impression.turned_inside_out();
    let result = measure(&cast, None, &MeasureSettings::default(), &|_| {});
    assert!(matches!(result.frame, Err(NotMeasured::NotAnImpression(_))));
}

#[test]
fn one_thread_and_many_give_the_same_measurement() {
    let phantom = Phantom::new(&Options {
        spots: PlantedSpot::random(Arch::Maxillary, 1, 2, 1),
        noise_sd_mm: 0.02,
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
