//! What the window does with a list of cases: opens them one after the other,
//! goes back to the list, takes decisions.

use super::decide::{self, Field};
use super::loading::Loading;
use super::queue::{ListView, Wish};
use super::{Content, Running};
use crate::app::Mode;
use crate::queue::decision::Initials;
use crate::queue::draft::{Answer, Deciding};
use crate::queue::entry::{Entry, Opening};
use crate::queue::list::List;
use crate::queue::papers::Paper;
use crate::queue::watching::Watching;
use arguments::Source;
use kiss3d::event::Key;
use kiss3d::scene::SceneNode3d;
use messages::{Message, message, text};
use std::path::{Path, PathBuf};

/// Where a case was opened from, and what one goes back to.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum From {
    /// The command line.
    CommandLine,
    /// The desk.
    Desk,
    /// The list of cases.
    List,
}

/// A list of cases with what fills it and how it is looked at.
pub(super) struct Queue {
    pub(super) list: List,
    pub(super) view: ListView,
    watching: Watching,
    /// Whether all that was there at first has been read.
    is_read: bool,
}

/// The decision that is being written.
pub(super) struct Dialog {
    pub(super) deciding: Deciding,
    /// The field that is to have the keyboard from now on.
    pub(super) focus: Option<Field>,
}

impl Running {
    /// Shows the cases of a folder.
    pub(super) fn open_list(&mut self, folder: &Path) {
        self.queue = Some(Queue {
            list: List::of(folder),
            view: ListView::default(),
            watching: Watching::start(folder, self.language()),
            is_read: false,
        });
        self.show_list();
    }

    /// Takes what changed in the folder.
    pub(super) fn take_news(&mut self) {
        let Some(queue) = &mut self.queue else {
            return;
        };
        let news = queue.watching.news();
        if !news.is_empty() && matches!(self.content, Content::List) {
            self.due = self.due.max(2);
        }
        let is_news = !news.is_empty();
        for one in news {
            queue.list.take(one);
        }
        if is_news && !queue.is_read && !queue.list.is_being_read() {
            queue.is_read = true;
            let cases = queue.list.len();
            self.options.say(&format!("{cases} cases read"));
        }
    }

    /// Goes back to the list, or to the desk where there is none.
    pub(super) fn show_list(&mut self) {
        self.dialog = None;
        self.due = 24;
        self.scene = SceneNode3d::empty();
        let language = self.language();
        let Some(queue) = &mut self.queue else {
            self.content = Content::Desk;
            return;
        };
        queue.view.enter();
        let folder = queue.list.folder().file_name().unwrap_or_default();
        let folder = folder.to_string_lossy();
        let title = text!(language, "queue-title", folder = &*folder);
        self.window.set_title(&title);
        self.content = Content::List;
    }

    /// Whether the next case is that of the list.
    pub(super) fn is_on_walk(&self) -> bool {
        self.from == From::List && self.queue.is_some()
    }

    fn open_at_hand(&mut self) {
        let entry = self.queue.as_ref().and_then(|queue| queue.list.at_hand());
        let Some(opening) = entry.map(Entry::opening) else {
            return;
        };
        self.dialog = None;
        match opening {
            Opening::Result(results, file) => {
                let source = match file {
                    Some(file) => Source {
                        out: Some(results.clone()),
                        ..self.source_of(&file)
                    },
                    None => Source::of(&results),
                };
                self.load(Source::of(&results), From::List);
                self.options.source = Some(source);
            }
            Opening::Check(file, out) => {
                let source = Source {
                    out: Some(out),
                    ..self.source_of(&file)
                };
                self.load(source, From::List);
            }
            Opening::Desk(folder) => self.put_on_desk(&[folder]),
            Opening::Nothing(why) => {
                self.notify(Message::verbatim(why));
                self.show_list();
            }
        }
    }

    /// Opens the next case of the list, or one before.
    pub(super) fn walk(&mut self, by: isize) {
        let Some(queue) = &mut self.queue else {
            return;
        };
        if queue.list.walk_on(by) {
            self.open_at_hand();
        } else {
            let which = if by > 0 { "last" } else { "first" };
            self.notify(message!("queue-first-or-last", which = which));
        }
    }

    /// Says something where it is seen.
    fn notify(&mut self, said: Message) {
        self.due = self.due.max(2);
        match (&mut self.content, &mut self.queue) {
            (Content::Case(app, _), _) => app.notice = said.text(app.language),
            (_, Some(queue)) => queue.list.notice = said,
            _ => {}
        }
    }

    /// What came of a check that was started from the list.
    pub(super) fn note_result(&mut self, folder: PathBuf) {
        let language = self.language();
        if let Some(queue) = &mut self.queue
            && self.from == From::List
            && let Some(entry) = queue.list.at_hand()
        {
            let mut found = entry.found.clone();
            found.results = Some(folder);
            queue.list.put(Entry::read(found, language));
        }
    }

    /// The result folder that papers and decisions are of, with the pseudonym
    /// and the scans.
    fn result_at_hand(&self) -> Option<(String, PathBuf, Vec<String>)> {
        match &self.content {
            Content::Case(app, _) => {
                let case = app.opened.result.case.clone();
                Some((case, app.opened.folder.clone(), app.scans()))
            }
            Content::List => {
                let entry = self.queue.as_ref()?.list.chosen()?;
                let folder = entry.found.results.clone()?;
                let scans = entry.scans_sha256.clone();
                (!scans.is_empty()).then_some((entry.name.clone(), folder, scans))
            }
            _ => None,
        }
    }

    pub(super) fn open_paper(&mut self, paper: Paper) {
        let opened = match self.result_at_hand() {
            Some((_, folder, _)) => paper.open(&folder),
            None => Err(message!("paper-no-result")),
        };
        match opened {
            Ok(()) => {
                let paper = paper.words(self.language());
                self.notify(message!("paper-opened", paper = paper));
            }
            Err(why) => self.notify(why),
        }
    }

    /// Begins a decision on the case at hand.
    pub(super) fn begin_deciding(&mut self, answer: Answer) {
        self.due = 24;
        let Some((case, folder, scans)) = self.result_at_hand() else {
            self.notify(message!("decision-without-result"));
            return;
        };
        match Deciding::begin((&case, &folder), &scans, answer, &self.initials) {
            Ok(deciding) => {
                self.dialog = Some(Dialog {
                    deciding,
                    focus: Some(Field::First),
                });
            }
            Err(why) => self.notify(why),
        }
    }

    pub(super) fn answer_dialog(&mut self, reply: decide::Reply) {
        self.due = 24;
        let Some(mut dialog) = self.dialog.take() else {
            return;
        };
        if matches!(reply, decide::Reply::Leave) {
            return;
        }
        let Some(decision) = dialog.deciding.save() else {
            // A text field gives the keyboard up at Enter.
            let has_initials = dialog.deciding.draft.initials.parse::<Initials>().is_ok();
            dialog.focus = Some(match has_initials {
                true => Field::First,
                false => Field::Initials,
            });
            self.dialog = Some(dialog);
            return;
        };
        self.initials.clone_from(&decision.initials);
        let is_case = matches!(self.content, Content::Case(..));
        if let Some(queue) = &mut self.queue
            && (!is_case || self.from == From::List)
        {
            let entry = match is_case {
                true => queue.list.at_hand(),
                false => queue.list.chosen(),
            };
            if let Some(mut entry) = entry.cloned() {
                entry.decide(&decision);
                queue.list.put(entry);
            }
        }
        self.notify(message!("decision-made", decision = decision.message()));
        if let Content::Case(app, _) = &mut self.content {
            app.decision = Some(decision);
        }
    }

    /// What a key asks of the papers and the decision of the case at hand;
    /// whether it asks for something.
    pub(super) fn press_for_result(&mut self, key: Key) -> bool {
        match key {
            Key::F2 => self.open_paper(Paper::Sheet),
            Key::F3 => self.open_paper(Paper::ReturnNote),
            Key::F4 => self.open_paper(Paper::Report),
            Key::F6 => self.begin_deciding(Answer::Returned),
            Key::F7 => self.begin_deciding(Answer::WorkedFrom),
            Key::F8 => self.begin_deciding(Answer::WaitingFor),
            _ => return false,
        }
        true
    }

    /// What a key asks for over an impression that was opened from the list;
    /// whether it asks for something.
    pub(super) fn press_on_walk(&mut self, key: Key) -> bool {
        let is_marking = match &self.content {
            Content::Case(app, _) => matches!(app.mode, Mode::Mark(_)),
            _ => false,
        };
        match key {
            Key::PageDown if self.is_on_walk() && !is_marking => self.walk(1),
            Key::PageUp if self.is_on_walk() && !is_marking => self.walk(-1),
            Key::Escape if self.has_nothing_to_leave() => self.show_list(),
            _ => return false,
        }
        true
    }

    /// Whether Escape goes back to the list.
    fn has_nothing_to_leave(&self) -> bool {
        match &self.content {
            Content::Case(app, _) => self.queue.is_some() && app.is_at_rest(),
            Content::Failed(_) => true,
            _ => false,
        }
    }

    pub(super) fn serve_list(&mut self, wish: Wish) {
        let Some(queue) = &mut self.queue else {
            return;
        };
        match wish {
            Wish::Choose(row) => {
                queue.list.choose(row);
                queue.list.notice = Message::default();
            }
            Wish::Open => {
                queue.list.begin_walk();
                queue.list.notice = Message::default();
                self.open_at_hand();
            }
            Wish::Search(text) => {
                queue.list.search(&text);
                queue.view.bring = true;
            }
            Wish::Only(state) => {
                queue.list.show_only(state);
                queue.view.bring = true;
            }
            Wish::ReadAgain => {
                queue.list.notice = message!("queue-is-read-again");
                queue.watching.look_again();
            }
            Wish::ChooseFolder => self.choose_folder(),
            Wish::Desk => {
                self.due = 24;
                self.content = Content::Desk;
            }
            Wish::Step(by) => {
                queue.list.choose_next(by);
                queue.list.notice = Message::default();
                queue.view.bring = true;
            }
            Wish::Paper(paper) => self.open_paper(paper),
        }
    }

    pub(super) fn serve_bar(&mut self, wish: decide::Wish) {
        match wish {
            decide::Wish::Walk(by) => self.walk(by),
            decide::Wish::List => self.show_list(),
            decide::Wish::Paper(paper) => self.open_paper(paper),
            decide::Wish::Decide(answer) => self.begin_deciding(answer),
        }
    }

    /// Lets a folder of cases be chosen.
    pub(super) fn choose_folder(&mut self) {
        if let Some(folder) = rfd::FileDialog::new().pick_folder() {
            self.put_on_desk(&[folder]);
        }
    }

    /// Lets scans be chosen.
    pub(super) fn choose_scans(&mut self) {
        let name = text!(self.language(), "desk-scan-files");
        let dialog = rfd::FileDialog::new().add_filter(name, &["stl", "ply", "obj"]);
        if let Some(paths) = dialog.pick_files() {
            self.put_on_desk(&paths);
        }
    }

    /// What is to be checked, by the limits, in the unit and in the language that the window
    /// was started with.
    pub(super) fn source_of(&self, input: &Path) -> Source {
        Source {
            protocol: self.protocol.clone(),
            unit: self.unit,
            language: self.language,
            ..Source::of(input)
        }
    }

    /// Opens something in the background.
    pub(super) fn load(&mut self, source: Source, from: From) {
        self.from = from;
        self.due = 2;
        self.scene = SceneNode3d::empty();
        self.options.source = Some(source.clone());
        self.content = Content::Loading(Loading::start(source));
    }
}
