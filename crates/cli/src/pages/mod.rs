//! The pages of `archproof help TOPIC`, in every language.

use messages::Language;

/// A page; its first line is its topic and what it is about.
pub struct Page {
    /// By which it is asked for, the same in every language.
    pub topic: &'static str,
    english: &'static str,
    german: &'static str,
    spanish: &'static str,
}

macro_rules! pages {
    ($($topic:literal),+ $(,)?) => {
        /// Every page, those for beginners first.
        pub const PAGES: [Page; [$($topic),+].len()] = [$(Page {
            topic: $topic,
            english: include_str!(concat!($topic, ".md")),
            german: include_str!(concat!("de/", $topic, ".md")),
            spanish: include_str!(concat!("es/", $topic, ".md")),
        }),+];
    };
}

pages!(
    "start",
    "scanning",
    "case-file",
    "files",
    "border-moulding",
    "window",
    "batch",
    "queue",
    "measuring",
    "accuracy",
);

impl Page {
    /// The page on a topic, if there is one.
    pub fn on(topic: &str) -> Option<&'static Self> {
        PAGES.iter().find(|page| page.topic == topic)
    }

    /// The page in a language, in Markdown.
    pub fn text(&self, language: Language) -> &'static str {
        match language {
            Language::English => self.english,
            Language::German => self.german,
            Language::Spanish => self.spanish,
        }
    }

    /// What it is about, in a language.
    pub fn about(&self, language: Language) -> &'static str {
        let head = self.text(language).lines().next().unwrap_or_default();
        head.split_once(": ").map_or(head, |(_, about)| about)
    }
}

#[cfg(test)]
#[allow(clippy::unwrap_used, reason = "a test may panic")]
mod tests {
    use super::*;
    use fixtures::translation::{Kept, english_words};
    use judge::words::{ZONES, movement, zone};
    use measure::Arch;
    use messages::Message;

    const TRANSLATED: [Language; 2] = [Language::German, Language::Spanish];

    #[test]
    fn every_page_begins_with_its_topic_and_what_it_is_about() {
        for page in &PAGES {
            for language in Language::ALL {
                let begins = format!("# {}: {}\n\n", page.topic, page.about(language));
                assert!(page.text(language).starts_with(&begins), "{begins}");
            }
        }
    }

    #[test]
    fn a_page_has_the_same_figures_code_and_build_in_every_language() {
        for page in &PAGES {
            let english = Kept::of(page.text(Language::English));
            for language in TRANSLATED {
                let own = Kept::of(page.text(language));
                assert_eq!(own, english, "{} in {language}", page.topic);
            }
        }
    }

    #[test]
    fn no_sentence_of_a_translated_page_is_in_english() {
        for page in &PAGES {
            for language in TRANSLATED {
                let left = english_words(page.text(language));
                assert!(left.is_empty(), "{} in {language}: {left:?}", page.topic);
                assert_ne!(page.about(language), page.about(Language::English));
            }
        }
    }

    #[test]
    fn the_page_on_scanning_states_the_limit() {
        let limit = judge::Protocol::default().value(judge::LimitKey::MedianEdge);
        let page = Page::on("scanning").unwrap().text(Language::English);
        assert!(page.contains(&format!("Above a median edge of {limit} mm")));
    }

    #[test]
    fn the_page_on_border_moulding_lists_the_movements_of_instructions() {
        let page = Page::on("border-moulding").unwrap();
        for language in Language::ALL {
            let mut tables = page.text(language).split("\n\n| ").skip(1);
            for arch in [Arch::Maxillary, Arch::Mandibular] {
                let table = tables.next().unwrap();
                for of in ZONES {
                    let name = Message::name("zone", zone(of)).text(language);
                    // Zones that are not named there lie within the border.
                    let row = table.lines().find(|line| line.contains(&name));
                    if let Some((row, movement)) = row.zip(movement(arch, of)) {
                        let movement = movement.text(language);
                        assert!(row.contains(&movement), "{row}: {movement}");
                    }
                }
            }
        }
    }
}
