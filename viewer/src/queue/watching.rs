//! Watches a folder of cases in the background and reads what is new in it.

use super::decision::DECISION_FILE;
use super::entry::Entry;
use super::found::{Found, Input, cases_in, not_looked_into};
use messages::{Language, Message};
use rayon::prelude::*;
use report::RESULT_FILE;
use std::collections::BTreeMap;
use std::fs::metadata;
use std::path::{Path, PathBuf};
use std::sync::mpsc::{Receiver, RecvTimeoutError, Sender, TryRecvError, channel};
use std::thread;
use std::time::{Duration, Instant, SystemTime};

/// Time between two looks. A look that takes long, as over a network, is
/// followed by a longer pause.
const PAUSE: Duration = Duration::from_secs(2);
/// Results that are read between two messages.
const AT_ONCE: usize = 64;

/// What changed in the folder.
#[derive(Debug, Default)]
pub struct News {
    /// Places of cases that are there no longer.
    pub gone: Vec<String>,
    /// Cases that are new or have changed.
    pub entries: Vec<Entry>,
    /// What is to be said, one line.
    pub problem: Option<Message>,
}

/// A folder being watched; dropped, it is watched no longer.
#[derive(Debug)]
pub struct Watching {
    news: Receiver<News>,
    again: Sender<()>,
}

impl Watching {
    /// Watches a folder.
    #[must_use]
    pub fn start(folder: &Path, language: Language) -> Self {
        let (tell, news) = channel();
        let (again, wake) = channel();
        let watch = Watch {
            folder: folder.to_owned(),
            language,
            known: BTreeMap::new(),
            tell,
            wake,
        };
        thread::spawn(move || watch.run());
        Self { news, again }
    }

    /// What changed since the last time it was asked.
    pub fn news(&self) -> Vec<News> {
        self.news.try_iter().collect()
    }

    /// Looks again now, and reads everything anew.
    pub fn look_again(&self) {
        let _ = self.again.send(());
    }
}

/// How the files of a case look: a case that looks otherwise is read again.
#[derive(Debug, PartialEq, Eq)]
struct Look {
    found: Found,
    files: [Option<(SystemTime, u64)>; 3],
}

impl Look {
    fn at(found: Found) -> Self {
        let file = |path: Option<PathBuf>| {
            let data = metadata(path?).ok()?;
            Some((data.modified().ok()?, data.len()))
        };
        let in_results = |name| found.results.as_ref().map(|folder| folder.join(name));
        let input = match &found.input {
            Some(Input::CaseFile(file)) => Some(file.clone()),
            _ => None,
        };
        Self {
            files: [
                file(in_results(RESULT_FILE)),
                file(in_results(DECISION_FILE)),
                file(input),
            ],
            found,
        }
    }
}

struct Watch {
    folder: PathBuf,
    language: Language,
    known: BTreeMap<String, Look>,
    tell: Sender<News>,
    wake: Receiver<()>,
}

impl Watch {
    fn run(mut self) {
        let mut anew = false;
        loop {
            let begun = Instant::now();
            if self.look(anew).is_none() {
                return;
            }
            let pause = PAUSE.max(4 * begun.elapsed());
            anew = match self.wake.recv_timeout(pause) {
                Ok(()) => true,
                Err(RecvTimeoutError::Timeout) => false,
                Err(RecvTimeoutError::Disconnected) => return,
            };
        }
    }

    /// One look, at which what has changed is read, or everything `anew`;
    /// `None` when nobody wants to know any more.
    fn look(&mut self, anew: bool) -> Option<()> {
        let found = match cases_in(&self.folder) {
            Ok(found) => found,
            Err(why) => {
                let problem = Some(not_looked_into(&self.folder, &why));
                return self.say(News {
                    problem,
                    ..News::default()
                });
            }
        };
        let mut looks: BTreeMap<String, Look> = BTreeMap::new();
        let mut fresh = Vec::new();
        for found in found {
            let place = found.place.clone();
            let look = Look::at(found);
            if anew || self.known.get(&place) != Some(&look) {
                fresh.push(look.found.clone());
            }
            looks.insert(place, look);
        }
        let is_gone = |place: &&String| !looks.contains_key(*place);
        let gone: Vec<String> = self.known.keys().filter(is_gone).cloned().collect();
        let is_new = |found: &&Found| !self.known.contains_key(&found.place);
        let new: Vec<Found> = fresh.iter().filter(is_new).cloned().collect();
        self.known = looks;
        if !gone.is_empty() || !new.is_empty() {
            // All that are there at once, before any of them is read.
            self.say(News {
                gone,
                entries: (new.into_iter())
                    .map(|found| Entry::new(found, self.language))
                    .collect(),
                problem: None,
            })?;
        }
        for some in fresh.chunks(AT_ONCE) {
            if matches!(self.wake.try_recv(), Err(TryRecvError::Disconnected)) {
                return None;
            }
            let read = |found| Entry::read(found, self.language);
            let entries = some.par_iter().cloned().map(read).collect();
            self.say(News {
                entries,
                ..News::default()
            })?;
        }
        Some(())
    }

    fn say(&self, news: News) -> Option<()> {
        self.tell.send(news).ok()
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::queue::entry::State;
    use crate::queue::list::List;
    use crate::testing::write_result;
    use report::result::Verdict;

    fn awaited(list: &mut List, watching: &Watching, is_so: impl Fn(&List) -> bool) {
        let begun = Instant::now();
        while !is_so(list) {
            assert!(begun.elapsed() < Duration::from_secs(60), "{list:?}");
            for news in watching.news() {
                list.take(news);
            }
            thread::sleep(Duration::from_millis(5));
        }
    }

    #[test]
    fn a_watched_folder_fills_the_list_while_one_works() {
        let folder = tempfile::tempdir().unwrap();
        let case = |name: &str| folder.path().join(name);
        write_result(&case("a"), "A", Verdict::Accept);
        let watching = Watching::start(folder.path(), Language::English);
        let mut list = List::of(folder.path());
        awaited(&mut list, &watching, |list| {
            list.counts() == [(State::ToWorkFrom, 1)]
        });
        write_result(&case("b"), "B", Verdict::Rework);
        awaited(&mut list, &watching, |list| {
            list.counts() == [(State::ToReturn, 1), (State::ToWorkFrom, 1)]
        });
        std::fs::remove_dir_all(case("a")).unwrap();
        write_result(&case("b"), "B", Verdict::Undecided);
        watching.look_again();
        awaited(&mut list, &watching, |list| {
            list.counts() == [(State::ToLookAt, 1)]
        });
        std::fs::remove_dir_all(folder.path()).unwrap();
        awaited(&mut list, &watching, |list| {
            !list.notice.sentences().is_empty()
        });
    }
}
