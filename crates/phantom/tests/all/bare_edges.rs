//! Planted strips of bare tray, and trays with holes and rolled rims.

use phantom::{Arch, BareEdge, Options, Phantom, TrayEdge, TrayForm};

const FORM: TrayForm = TrayForm {
    hole_radius_mm: 1.25,
    holes_apart_mm: 6.0,
    rolled_rim_mm: 0.4,
};

fn made(arch: Arch, edge: TrayEdge, width_mm: f64, length_mm: f64) -> Phantom {
    Phantom::new(&Options {
        arch,
        seed: 5,
        edge_mm: 0.3,
        tray_edge_mm: 3.0,
        bare_edges: vec![BareEdge {
            edge,
            station: 0.4,
            width_mm,
            length_mm,
        }],
        tray_form: FORM,
        ..Options::default()
    })
}

/// The surface of the scan is the tray's along the strip, and leaves it beside the strip and
/// past its ends as fast as planted.
#[test]
fn a_strip_is_bare_within_its_width_and_length_alone() {
    for (arch, edge, width_mm, length_mm) in [
        (Arch::Maxillary, TrayEdge::OuterRim, 0.6, 6.0),
        (Arch::Mandibular, TrayEdge::InnerRim, 1.0, 10.0),
        (Arch::Mandibular, TrayEdge::Opening, 0.6, 3.0),
        (Arch::Maxillary, TrayEdge::Opening, 0.4, 3.0),
    ] {
        let made = made(arch, edge, width_mm, length_mm);
        let [truth] = &made.truth.bare_edges[..] else {
            panic!("{edge:?} of {arch:?} was not planted");
        };
        let line = &truth.line;
        let length: f64 = line.windows(2).map(|w| (w[1] - w[0]).norm()).sum();
        assert!((length - length_mm).abs() < 0.25, "{edge:?}: {length}");
        for place in line {
            assert!(
                made.truth.cover_at(place).abs() < 0.02,
                "{edge:?} {}",
                made.truth.cover_at(place)
            );
        }
        let mut bare = 0;
        for vertex in made.impression.vertices() {
            let off = line
                .iter()
                .map(|p| (p - vertex).norm())
                .fold(f64::INFINITY, f64::min);
            let cover = made.truth.cover_at(vertex);
            let ends = [line[0], line[line.len() - 1]];
            let is_at_end = ends
                .iter()
                .any(|end| (end - vertex).norm() < 0.5 * width_mm);
            if is_at_end {
                continue;
            }
            if off < 0.5 * width_mm - 0.05 {
                bare += 1;
                assert!(cover < 0.03, "{edge:?}: {cover} at {off}");
            } else if off > 0.5 * width_mm + 0.3
                && off < 0.5 * width_mm + 0.6
                && made.truth.is_tissue_side(vertex)
            {
                assert!(cover > 0.15, "{edge:?}: {cover} at {off}");
            }
        }
        assert!(
            f64::from(bare) > 0.25 * width_mm * length_mm / 0.08,
            "{edge:?}: {bare}"
        );
    }
}

#[test]
fn an_upper_tray_has_no_inner_rim_and_a_whole_floor_no_opening() {
    let options = |edge| Options {
        edge_mm: 2.0,
        tray_edge_mm: 3.0,
        bare_edges: vec![BareEdge {
            edge,
            station: 0.0,
            width_mm: 0.5,
            length_mm: 4.0,
        }],
        ..Options::default()
    };
    for edge in [TrayEdge::InnerRim, TrayEdge::Opening] {
        assert!(Phantom::new(&options(edge)).truth.bare_edges.is_empty());
    }
}
