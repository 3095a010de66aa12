//! The name that was probably meant.

/// Below this likeness, 0 to 1, a name is another one.
const ALIKE: f64 = 0.6;

/// Of the known names the one that a text is most like, if it is like any. Case, blanks,
/// hyphens and underscores make no difference.
pub(crate) fn nearest<'a>(text: &str, known: impl IntoIterator<Item = &'a str>) -> Option<&'a str> {
    let plain = |text: &str| text.to_lowercase().replace([' ', '_'], "-");
    let text = plain(text);
    known
        .into_iter()
        .map(|name| {
            (
                name,
                strsim::normalized_damerau_levenshtein(&text, &plain(name)),
            )
        })
        .filter(|(_, likeness)| *likeness >= ALIKE)
        .max_by(|a, b| a.1.total_cmp(&b.1))
        .map(|(name, _)| name)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_slip_finds_its_name_and_another_word_none() {
        let known = ["show-through", "thin-cover", "maxillary", "mandibular"];
        for (text, name) in [
            ("showthrough", Some("show-through")),
            ("show_through", Some("show-through")),
            ("Show through", Some("show-through")),
            ("maxilary", Some("maxillary")),
            ("mandibullar", Some("mandibular")),
            ("upper", None),
            ("", None),
        ] {
            assert_eq!(nearest(text, known), name, "{text}");
        }
    }
}
