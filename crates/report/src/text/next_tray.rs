//! Which tray of the shelf to take for an impression that is to be taken again.

use super::format;
use super::words::{side_word, zone_name};
use crate::result::{Conclusion, ImpressionResult, TouchResult};
use messages::{Language, Message, Value, message};

/// What to do; `None` where the impression is not to be taken again, or no shelf was given.
pub(crate) fn next_tray(impression: &ImpressionResult, language: Language) -> Option<String> {
    let tried = impression.next_tray.as_ref()?;
    let tray = tried.tray.as_deref().unwrap_or_default();
    let used = impression.tray_chosen.as_ref();
    let was_used = used.is_some_and(|chosen| chosen.best.name == tray);
    let median = tried.clearance().map_or_else(String::new, |found| {
        format::quantity(found.median_mm, Some(found.uncertainty_mm), "mm")
    });
    let median = Value::figure(median);
    let touching = tried.bend.iter();
    let touching =
        touching.map(|touch| Value::from(Message::verbatim(touching_place(touch, language))));
    let tried_in = match tried.conclusion {
        Conclusion::Take if was_used => {
            message!("next-tray-same", tray = tray, median = median)
        }
        Conclusion::Take => message!("next-tray-take", tray = tray, median = median),
        Conclusion::Adapt => message!(
            "next-tray-adapt",
            tray = tray,
            places = Value::list(touching)
        ),
        Conclusion::Individual => message!("next-tray-individual"),
        Conclusion::NoneOfThisJaw => message!("next-tray-none"),
    };
    let is_a_tray = tried.tray.is_some();
    let try_it = is_a_tray.then(|| message!("next-tray-try"));
    Some(tried_in.then(try_it).text(language))
}

/// The part of the arch in which a tray touches the tissue.
pub(crate) fn touching_place(touch: &TouchResult, language: Language) -> String {
    let zone = zone_name(&touch.zone, language);
    match touch.side {
        Some(side) => format!("{zone}, {}", side_word(side, language)),
        None => zone,
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::result::{CaseResult, TraysTried};
    use crate::testing::checked_whole;

    fn said_of(tried: &serde_json::Value, language: Language) -> Option<String> {
        let mut result = CaseResult::of(&checked_whole());
        let impression = &mut result.impressions[0];
        assert_eq!(next_tray(impression, language), None);
        let tried: TraysTried = serde_json::from_value(tried.clone()).unwrap();
        impression.next_tray = Some(tried);
        next_tray(impression, language)
    }

    fn tried(conclusion: &str, tray: Option<&str>) -> serde_json::Value {
        let clearance = serde_json::json!({
            "least_mm": 0.6, "median_mm": 2.41, "uncertainty_mm": 0.1, "unevenness_mm": 0.5,
            "wanted_share": 0.6, "over_tray_share": 0.9, "touches": [], "edges": [],
        });
        serde_json::json!({
            "conclusion": conclusion, "tray": tray, "shorten": [], "wanted_clearance_mm": [2.0, 3.0],
            "bend": [{ "zone": "buccal flange", "side": "left", "depth_mm": 0.6, "area_mm2": 30.0, "at": [0.0, 0.0, 0.0] }],
            "trays": [{ "name": "upper-3", "sha256": "", "is_of_the_other_jaw": false, "clearance": clearance }],
        })
    }

    #[test]
    fn the_tray_for_the_new_impression_is_named_with_what_to_do() {
        let said = |conclusion, tray| said_of(&tried(conclusion, tray), Language::English).unwrap();
        assert_eq!(
            said("take", Some("upper-3")),
            "For the new impression take tray upper-3 of the shelf: it touches nowhere; median \
             clearance 2.41 ± 0.10 mm, by the tissue that this impression shows. Try it in the mouth first."
        );
        let adapted = said("adapt", Some("upper-3"));
        assert!(
            adapted.contains("buccal flange, patient's left"),
            "{adapted}"
        );
        assert!(said("individual", None).ends_with("make an individual tray."));
        assert!(said("none_of_this_jaw", None).contains("no tray of this jaw"));
        for language in Language::ALL {
            let said = said_of(&tried("take", Some("upper-3")), language).unwrap();
            assert!(
                said.contains("upper-3") && !said.contains("next-tray"),
                "{said}"
            );
        }
    }
}
