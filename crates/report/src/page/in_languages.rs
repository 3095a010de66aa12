//! Tests of the page in other languages than English.

use super::tests::{cases, without_scripts};
use super::*;
use crate::picture::pictures;
use crate::result::CaseResult;
use messages::Language;
use std::collections::BTreeSet;

/// What is read and heard of a page: text, and names of what is seen.
fn said(page: &str) -> BTreeSet<String> {
    let mut said = BTreeSet::new();
    for piece in page.split('<').skip(1) {
        let (tag, text) = piece.split_once('>').unwrap_or((piece, ""));
        said.insert(text.trim().to_owned());
        let labels = tag.split("aria-label=\"").skip(1);
        said.extend(labels.filter_map(|rest| Some(rest.split_once('"')?.0.to_owned())));
    }
    said
}

#[test]
fn no_english_sentence_is_left_in_another_language() {
    const MOST_WORDS: usize = 3;
    for checked in cases() {
        let result = CaseResult::of(&checked);
        let pictures = pictures(&checked).unwrap();
        let in_language = |language| {
            let material = Material {
                language,
                result: &result,
                pictures: &pictures,
                files: &[],
            };
            let chapters: Vec<Chapter> = (PARTS.iter()).flat_map(|part| part(&material)).collect();
            let drawn = chapters.iter().map(|chapter| chapter.drawn().into_string());
            let contents = contents(&chapters, language).into_string();
            said(&drawn.chain([contents]).collect::<String>())
        };
        let english = in_language(Language::English);
        for language in [Language::German, Language::Spanish] {
            for sentence in in_language(language) {
                let is_word = |word: &&str| word.chars().any(char::is_alphabetic);
                let words = sentence.split_whitespace().filter(is_word);
                let is_short = words.count() <= MOST_WORDS;
                let is_own = is_short || *sentence == result.program;
                assert!(
                    is_own || !english.contains(&sentence),
                    "{language}: {sentence}"
                );
            }
        }
    }
}

#[test]
fn a_page_has_the_same_places_and_links_in_each_language_and_no_bare_key() {
    let names = |page: &str| {
        let after = |start: &str| {
            let rests = page.split(start).skip(1);
            rests
                .map(|rest| rest.split_once('"').unwrap().0.to_owned())
                .collect::<Vec<_>>()
        };
        [after(" id=\""), after("href=\"#")]
    };
    for checked in cases() {
        let result = CaseResult::of(&checked);
        let pictures = pictures(&checked).unwrap();
        let page = |language| report(&result, &pictures, &[], language);
        let english = names(&page(Language::English));
        for language in Language::ALL {
            let page = page(language);
            assert!(page.contains(&format!("<html lang=\"{language}\">")));
            assert_eq!(names(&page), english, "{language}");
            let (rest, scripts) = without_scripts(&page);
            let scenes = scripts
                .iter()
                .filter(|script| script.contains("turning-scene"));
            let scenes = scenes.filter_map(|script| script.split_once('>'));
            let texts = said(&rest).into_iter();
            for text in texts.chain(scenes.map(|(_, scene)| scene.to_owned())) {
                for start in ["page-", "turning-", "found-", "limit-", "sheet-", "view-"] {
                    assert!(!text.contains(start), "{language}: {text}");
                }
            }
        }
    }
}
