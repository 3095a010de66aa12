//! Names of figures that are compared between results and measurements, in a language.

use super::words::{named, zone_name};
use messages::{Language, Message, text};

/// A compared figure as people call it: `flange height, buccal flange, patient's left`. The
/// name of the result is English; what of it the catalogue does not know stays as it is.
pub(crate) fn compared(name: &str, language: Language) -> String {
    if language == Language::English {
        return name.to_owned();
    }
    if let Some((number, name)) = of_impression(name) {
        let name = compared(name, language);
        return text!(language, "compared-of", number = number, name = name);
    }
    if let Some(error) = error_of(name, language) {
        return error;
    }
    let parts = name.split(", ").map(|part| match part {
        "patient's right" => text!(language, "patient-side", side = "right"),
        "patient's left" => text!(language, "patient-side", side = "left"),
        part => named(
            &Message::name("compared", part),
            &zone_name(part, language),
            language,
        ),
    });
    parts.collect::<Vec<_>>().join(", ")
}

/// The number and the rest of `impression 2: border length`.
fn of_impression(name: &str) -> Option<(&str, &str)> {
    let (number, name) = name.strip_prefix("impression ")?.split_once(": ")?;
    number.parse::<usize>().is_ok().then_some((number, name))
}

/// The error of a size of an artefact: `error of centre-distance A to B`.
fn error_of(name: &str, language: Language) -> Option<String> {
    let (quantity, of) = name.strip_prefix("error of ")?.split_once(' ')?;
    let of: Vec<String> = of.split(" to ").map(str::to_owned).collect();
    let quantity = quantity_of(quantity, &of, language);
    Some(text!(language, "compared-error", quantity = quantity))
}

/// A size of an artefact by its quantity and its parts: `centre-distance A to B`.
pub(super) fn quantity_of(quantity: &str, of: &[String], language: Language) -> String {
    let quantity = named(&Message::name("quantity", quantity), quantity, language);
    match of {
        [from, to] => text!(
            language,
            "size-between",
            quantity = quantity,
            from = from.as_str(),
            to = to.as_str()
        ),
        of => format!("{quantity} {}", of.join(" ")),
    }
}
