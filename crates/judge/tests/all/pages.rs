//! The pages of codes in every language.

#![allow(clippy::unwrap_used, reason = "tests")]

use fixtures::translation::{Kept, english_words};
use judge::explained::{codes, page};
use messages::Language;

#[test]
fn a_page_has_the_same_figures_and_names_in_every_language() {
    for (code, _) in codes() {
        let english = Kept::of(page(code, Language::English).unwrap());
        for language in [Language::German, Language::Spanish] {
            let own = page(code, language).unwrap();
            assert_eq!(Kept::of(own), english, "{code} in {language}");
            let left = english_words(own);
            assert!(left.is_empty(), "{code} in {language}: {left:?}");
        }
    }
}
