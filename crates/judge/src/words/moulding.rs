//! How the border is moulded: which movement forms which part of it.

use measure::{Arch, Zone};
use messages::{Message, message};

/// The movement that moulds the border in a zone of a jaw, as an order; `None` where the
/// jaw has no such zone. Common practice, no source; that the distobuccal corner is shaped
/// by the working masseter: LM-15 (from memory).
#[must_use]
pub fn movement(arch: Arch, zone: Zone) -> Option<Message> {
    match arch {
        Arch::Maxillary => upper(zone),
        Arch::Mandibular => lower(zone),
    }
}

fn open_and_close() -> Message {
    message!("movement-open-and-close")
}

fn upper(zone: Zone) -> Option<Message> {
    match zone {
        Zone::LabialFlange | Zone::IncisivePapilla | Zone::Rugae => {
            Some(message!("movement-lip-down"))
        }
        Zone::BuccalFlange | Zone::ResidualRidge => Some(message!("movement-cheek-down")),
        Zone::Tuberosity => Some(message!("movement-jaw-aside")),
        Zone::HamularNotch => Some(open_and_close()),
        Zone::PosteriorPalatalSeal | Zone::Palate => Some(message!("movement-say-ah")),
        Zone::BuccalShelf
        | Zone::RetromolarPad
        | Zone::Distobuccal
        | Zone::LingualFlange
        | Zone::Retromylohyoid => None,
    }
}

fn lower(zone: Zone) -> Option<Message> {
    match zone {
        Zone::LabialFlange => Some(message!("movement-lip-up")),
        Zone::BuccalFlange | Zone::BuccalShelf | Zone::ResidualRidge => {
            Some(message!("movement-cheek-up"))
        }
        Zone::Distobuccal => Some(message!("movement-purse-lips")),
        Zone::RetromolarPad => Some(open_and_close()),
        Zone::LingualFlange | Zone::Retromylohyoid => Some(message!("movement-tongue-out")),
        Zone::Tuberosity
        | Zone::HamularNotch
        | Zone::PosteriorPalatalSeal
        | Zone::Palate
        | Zone::Rugae
        | Zone::IncisivePapilla => None,
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::words::ZONES;
    use rstest::rstest;

    #[rstest]
    #[case(Arch::Maxillary, Zone::LabialFlange, "lip outward and down")]
    #[case(Arch::Mandibular, Zone::LabialFlange, "lip outward and up")]
    #[case(Arch::Maxillary, Zone::BuccalFlange, "cheek outward and down")]
    #[case(Arch::Mandibular, Zone::BuccalFlange, "cheek outward and up")]
    #[case(Arch::Mandibular, Zone::BuccalShelf, "cheek outward and up")]
    #[case(Arch::Maxillary, Zone::ResidualRidge, "cheek outward and down")]
    #[case(Arch::Mandibular, Zone::ResidualRidge, "cheek outward and up")]
    #[case(Arch::Maxillary, Zone::Tuberosity, "from side to side")]
    #[case(Arch::Maxillary, Zone::HamularNotch, "open wide and close")]
    #[case(Arch::Maxillary, Zone::PosteriorPalatalSeal, "'ah'")]
    #[case(Arch::Maxillary, Zone::Palate, "'ah'")]
    #[case(Arch::Maxillary, Zone::Rugae, "lip outward and down")]
    #[case(Arch::Maxillary, Zone::IncisivePapilla, "lip outward and down")]
    #[case(Arch::Mandibular, Zone::RetromolarPad, "open wide and close")]
    #[case(Arch::Mandibular, Zone::Distobuccal, "purse the lips")]
    #[case(Arch::Mandibular, Zone::LingualFlange, "to both corners")]
    #[case(Arch::Mandibular, Zone::Retromylohyoid, "to both corners")]
    fn each_part_of_each_border_is_moulded_by_its_own_movement(
        #[case] arch: Arch,
        #[case] zone: Zone,
        #[case] says: &str,
    ) {
        assert!(movement(arch, zone).unwrap().to_string().contains(says));
    }

    #[test]
    fn a_zone_has_a_movement_in_the_jaws_that_have_the_zone() {
        let of = |arch| {
            ZONES
                .into_iter()
                .filter(move |&zone| movement(arch, zone).is_some())
        };
        assert_eq!(of(Arch::Maxillary).count(), 9);
        assert_eq!(of(Arch::Mandibular).count(), 8);
        let both = |zone: &Zone| {
            matches!(
                zone,
                Zone::LabialFlange | Zone::BuccalFlange | Zone::ResidualRidge
            )
        };
        for zone in ZONES {
            let jaws = [Arch::Maxillary, Arch::Mandibular].map(|arch| movement(arch, zone));
            assert_eq!(
                jaws.iter().flatten().count(),
                1 + usize::from(both(&zone)),
                "{zone:?}"
            );
            assert_ne!(
                jaws[0], jaws[1],
                "{zone:?}: the jaws are moulded differently"
            );
        }
    }
}
