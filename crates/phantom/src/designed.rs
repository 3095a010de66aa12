//! From options to a mouth and its tray.

use crate::design::{Change, Design, Stretch, Wanted};
use crate::family::{lower, upper};
use crate::jaw::Arch;
use crate::options::{Blemish, Options, Variety};
use crate::{mandible, maxilla};
use rand_pcg::Pcg64;

/// The mouth and the tray that the options ask for.
pub(crate) fn designed(options: &Options, rng: &mut Pcg64) -> Design {
    let right = options.arch.right_sign();
    let stretches = options.blemishes.iter().filter_map(|b| match *b {
        Blemish::ShortBorder {
            flange,
            station,
            length_mm,
            by_mm,
        } => Some((flange, station, length_mm, Change::Lower(by_mm))),
        Blemish::KnifeEdge {
            flange,
            station,
            length_mm,
            radius_mm,
        } => Some((flange, station, length_mm, Change::Sharpen(radius_mm))),
        _ => None,
    });
    let wanted = Wanted {
        overflow: options.overflow,
        handle: options.handle,
        stretches: stretches
            .map(|(flange, station, length_mm, change)| Stretch {
                flange,
                share: -right * station,
                length_mm,
                change,
            })
            .collect(),
    };
    match (options.arch, options.variety) {
        (Arch::Maxillary, Variety::Usual) => maxilla::random(rng, &wanted),
        (Arch::Mandibular, Variety::Usual) => mandible::random(rng, &wanted),
        (Arch::Maxillary, Variety::Broad { cut }) => upper::design(rng, &wanted, cut),
        (Arch::Mandibular, Variety::Broad { cut }) => lower::design(rng, &wanted, cut),
    }
}
