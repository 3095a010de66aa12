//! The list of cases: sorted, searched, counted, walked through.

use super::entry::{Entry, State};
use super::watching::News;
use messages::Message;
use std::collections::BTreeMap;
use std::path::{Path, PathBuf};

/// The cases of a folder.
#[derive(Debug, Default)]
pub struct List {
    folder: PathBuf,
    entries: BTreeMap<String, Entry>,
    /// Places of those that are shown, in their order.
    shown: Vec<String>,
    search: String,
    only: Option<State>,
    /// Place of the chosen case.
    chosen: Option<String>,
    /// Places in the order of the list as a case was opened from it: a case
    /// that is decided keeps its turn until the list is seen again.
    walk: Vec<String>,
    /// The last thing that is to be said, one line.
    pub notice: Message,
}

impl List {
    /// An empty list of a folder.
    #[must_use]
    pub fn of(folder: &Path) -> Self {
        Self {
            folder: folder.to_owned(),
            ..Self::default()
        }
    }

    /// The folder.
    #[must_use]
    pub fn folder(&self) -> &Path {
        &self.folder
    }

    /// Takes what changed in the folder.
    pub fn take(&mut self, news: News) {
        for place in &news.gone {
            self.entries.remove(place);
        }
        for entry in news.entries {
            self.entries.insert(entry.found.place.clone(), entry);
        }
        if let Some(problem) = news.problem {
            self.notice = problem;
        }
        self.arrange();
    }

    /// Puts a case in the place of what was known of it.
    pub fn put(&mut self, entry: Entry) {
        self.take(News {
            entries: vec![entry],
            ..News::default()
        });
    }

    fn arrange(&mut self) {
        let text = self.search.trim().to_lowercase();
        let is_shown = |entry: &&Entry| {
            self.only.is_none_or(|only| only == entry.state)
                && (text.is_empty() || entry.holds(&text))
        };
        let mut shown: Vec<&Entry> = self.entries.values().filter(is_shown).collect();
        // Stable: cases of one state stay in the order of their places.
        shown.sort_by_key(|entry| entry.state);
        self.shown = shown.iter().map(|e| e.found.place.clone()).collect();
        let is_there = |place: &String| self.entries.contains_key(place);
        if !self.chosen.as_ref().is_some_and(is_there) {
            self.chosen = None;
        }
    }

    /// Shows those alone in which a text occurs.
    pub fn search(&mut self, text: &str) {
        text.clone_into(&mut self.search);
        self.arrange();
        self.choose(0);
    }

    /// The text that is looked for.
    #[must_use]
    pub fn searched(&self) -> &str {
        &self.search
    }

    /// Shows those of one state alone, or all.
    pub fn show_only(&mut self, state: Option<State>) {
        self.only = state;
        self.arrange();
        self.choose(0);
    }

    /// The state that alone is shown.
    #[must_use]
    pub fn only(&self) -> Option<State> {
        self.only
    }

    /// How many cases there are of each state; those of none are left out.
    #[must_use]
    pub fn counts(&self) -> Vec<(State, usize)> {
        let of = |state| self.entries.values().filter(|e| e.state == state).count();
        let counts = State::ALL.into_iter().map(|state| (state, of(state)));
        counts.filter(|(_, count)| *count > 0).collect()
    }

    /// Whether results are still being read.
    #[must_use]
    pub fn is_being_read(&self) -> bool {
        let mut entries = self.entries.values();
        entries.any(|entry| entry.state == State::BeingRead)
    }

    /// How many cases there are.
    #[must_use]
    pub fn len(&self) -> usize {
        self.entries.len()
    }

    /// Whether there is none.
    #[must_use]
    pub fn is_empty(&self) -> bool {
        self.entries.is_empty()
    }

    /// How many are shown.
    #[must_use]
    pub fn rows(&self) -> usize {
        self.shown.len()
    }

    /// The case in a row.
    #[must_use]
    pub fn row(&self, row: usize) -> Option<&Entry> {
        self.entries.get(self.shown.get(row)?)
    }

    /// The row of the chosen case; the first where none is chosen.
    #[must_use]
    pub fn chosen_row(&self) -> usize {
        let chosen = self.chosen.as_ref();
        let row = chosen.and_then(|chosen| self.shown.iter().position(|p| p == chosen));
        row.unwrap_or(0)
    }

    /// Chooses the case in a row, the last one where there are fewer.
    pub fn choose(&mut self, row: usize) {
        let row = row.min(self.shown.len().saturating_sub(1));
        self.chosen = self.shown.get(row).cloned();
    }

    /// Chooses the case so many rows further.
    pub fn choose_next(&mut self, by: isize) {
        self.choose(self.chosen_row().saturating_add_signed(by));
    }

    /// The chosen case, if it is shown.
    #[must_use]
    pub fn chosen(&self) -> Option<&Entry> {
        self.row(self.chosen_row())
    }

    /// Begins a walk through the cases as they are shown, with the chosen one.
    pub fn begin_walk(&mut self) {
        self.walk.clone_from(&self.shown);
        self.choose(self.chosen_row());
    }

    /// Chooses the next case of the walk, or one before; whether there is one.
    pub fn walk_on(&mut self, by: isize) -> bool {
        let there: Vec<&String> = self.still_there().collect();
        let chosen = self.chosen.as_ref();
        let at = there.iter().position(|place| Some(*place) == chosen);
        let next = match at {
            Some(at) => at.checked_add_signed(by),
            None => Some(0),
        };
        let next = next
            .and_then(|next| there.get(next))
            .map(|place| (*place).clone());
        let is_there = next.is_some();
        if is_there {
            self.chosen = next;
        }
        is_there
    }

    /// The number of the chosen case on the walk, from 1, and of how many.
    #[must_use]
    pub fn turn(&self) -> Option<(usize, usize)> {
        let chosen = self.chosen.as_ref()?;
        let at = self.still_there().position(|place| place == chosen)?;
        Some((at + 1, self.still_there().count()))
    }

    fn still_there(&self) -> impl Iterator<Item = &String> {
        let places = self.walk.iter();
        places.filter(|place| self.entries.contains_key(*place))
    }

    /// The case that is walked to, whether or not it is shown in the list.
    #[must_use]
    pub fn at_hand(&self) -> Option<&Entry> {
        self.entries.get(self.chosen.as_ref()?)
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::queue::found::Found;
    use messages::Language;

    fn entry(place: &str, state: State) -> Entry {
        let found = Found {
            place: place.to_owned(),
            input: None,
            results: None,
            problem: None,
        };
        Entry {
            state,
            about: "accept".to_owned(),
            ..Entry::new(found, Language::English)
        }
    }

    fn list() -> List {
        let mut list = List::of(Path::new("cases"));
        list.take(News {
            entries: vec![
                entry("a-1", State::ToWorkFrom),
                entry("b-2", State::Waiting),
                entry("c-3", State::ToReturn),
                entry("d-4", State::ToLookAt),
                entry("e-5", State::Decided),
                entry("f-6", State::ToReturn),
                entry("g-7", State::OnHold),
            ],
            ..News::default()
        });
        list
    }

    fn names(list: &List) -> Vec<&str> {
        let rows = (0..list.rows()).filter_map(|row| list.row(row));
        rows.map(|entry| entry.name.as_str()).collect()
    }

    #[test]
    fn what_needs_a_person_comes_first_and_is_counted() {
        let mut list = list();
        let sorted = ["d-4", "c-3", "f-6", "b-2", "a-1", "g-7", "e-5"];
        assert_eq!(names(&list), sorted);
        assert_eq!(list.counts().len(), 6);
        assert!(list.counts().contains(&(State::ToReturn, 2)));
        list.show_only(Some(State::ToReturn));
        assert_eq!(names(&list), ["c-3", "f-6"]);
        list.show_only(None);
        list.search(" F-6 ");
        assert_eq!(names(&list), ["f-6"]);
        list.search("to return");
        assert_eq!(names(&list), ["c-3", "f-6"]);
        list.search("nothing like it");
        assert!(names(&list).is_empty() && list.chosen().is_none());
    }

    #[test]
    fn a_case_that_is_decided_keeps_its_turn_until_the_list_is_seen_again() {
        let mut list = list();
        list.choose(1);
        list.begin_walk();
        assert_eq!(list.turn(), Some((2, 7)));
        assert_eq!(list.at_hand().unwrap().name, "c-3");
        list.put(entry("c-3", State::Decided));
        assert!(list.walk_on(1));
        assert_eq!(list.at_hand().unwrap().name, "f-6");
        assert!(list.walk_on(-1) && list.walk_on(-1) && !list.walk_on(-1));
        assert_eq!(list.at_hand().unwrap().name, "d-4");
        // A case that has gone is passed over.
        list.take(News {
            gone: vec!["c-3".to_owned()],
            ..News::default()
        });
        assert!(list.walk_on(1));
        assert_eq!(list.at_hand().unwrap().name, "f-6");
        list.choose(usize::MAX);
        list.begin_walk();
        assert!(!list.walk_on(1));
        assert_eq!(list.at_hand().unwrap().name, "e-5");
    }

    #[test]
    fn the_chosen_case_stays_chosen_when_others_arrive() {
        let mut list = list();
        list.choose_next(3);
        assert_eq!(list.chosen().unwrap().name, "b-2");
        list.put(entry("a-0", State::ToLookAt));
        assert_eq!(
            (list.chosen().unwrap().name.as_str(), list.chosen_row()),
            ("b-2", 4)
        );
        list.choose_next(-9);
        assert_eq!(list.chosen_row(), 0);
    }
}
