//! What comes into the window: the desk, a case on its way, its result.

use super::drawing::DrawingView;
use super::loading::Loading;
use super::queueing::From;
use super::scene::Scene;
use super::{Content, Running, desk};
use crate::app::App;
use crate::command::{Command, Layer};
use crate::desk::Dropped;
use crate::opened::Opened;
use crate::queue::found::holds_cases;
use arguments::Source;
use messages::text;
use std::path::PathBuf;

impl Running {
    pub(super) fn check_again(&mut self) {
        if let Content::Case(app, _) = &mut self.content
            && (self.options.source.as_ref()).is_none_or(|source| source.input.is_dir())
        {
            app.notice = text!(app.language, "said-check-the-case");
            return;
        }
        if let Content::Case(app, _) = &mut self.content
            && self.protocol.is_none()
            && !app.opened.result.protocol.changed.is_empty()
        {
            app.notice = text!(app.language, "said-limits-of-your-own");
            return;
        }
        let Some(source) = &mut self.options.source else {
            return;
        };
        if let Content::Case(app, _) = &self.content {
            // What was marked and ticked lies there.
            source.out = Some(app.opened.folder.clone());
        }
        self.content = Content::Loading(Loading::start(source.clone()));
    }

    /// Takes scans onto the desk, and opens cases and results.
    pub(super) fn take_dropped(&mut self) {
        let dropped = self.window.dropped_files();
        if !dropped.is_empty() {
            self.due = 2;
            self.put_on_desk(&dropped);
        }
    }

    pub(super) fn put_on_desk(&mut self, paths: &[PathBuf]) {
        if let [folder] = paths
            && holds_cases(folder)
        {
            self.open_list(folder);
            return;
        }
        match self.desk.take(paths) {
            Dropped::Scans => {
                self.due = 24;
                self.content = Content::Desk;
            }
            Dropped::Open(path) => self.load(self.source_of(&path), From::Desk),
        }
    }

    /// Leaves what is being checked, which ends by itself.
    pub(super) fn cancel(&mut self) {
        match self.from {
            From::List => self.show_list(),
            From::Desk | From::CommandLine => self.content = Content::Desk,
        }
        self.due = 24;
    }

    pub(super) fn serve_desk(&mut self, wish: desk::Wish) {
        match wish {
            desk::Wish::Clear => self.desk.clear(),
            desk::Wish::State(scan, role) => self.desk.state(scan, role),
            desk::Wish::Choose => self.choose_scans(),
            desk::Wish::ChooseFolder => self.choose_folder(),
            desk::Wish::List => self.show_list(),
            desk::Wish::Check => match self.desk.case_file(self.language()) {
                Ok([file, out]) => {
                    let source = Source {
                        out: Some(out),
                        ..self.source_of(&file)
                    };
                    self.load(source, From::Desk);
                }
                Err(why) => self.desk.notice = why,
            },
        }
    }

    /// Takes what the loading thread has reported.
    pub(super) fn take_steps(&mut self) {
        let Content::Loading(loading) = &mut self.content else {
            return;
        };
        let (is_news, done) = loading.take();
        if is_news {
            self.due = 2;
        }
        match done {
            None => {}
            Some(Err(refused)) => {
                let text = refused.message().text(self.language());
                self.window.set_title(&format!("archproof: {text}"));
                self.content = Content::Failed(text);
            }
            Some(Ok(opened)) => self.show_case(opened),
        }
    }

    pub(super) fn show_case(&mut self, opened: Opened) {
        self.options.say("case read");
        self.note_result(opened.folder.clone());
        let mut app = App::new(opened, self.layout().picture);
        app.text_size = self.settings.text_size;
        app.show(Layer::Strip, self.settings.strip);
        app.act(Command::Whole);
        app.pass(f64::INFINITY);
        self.window.set_title(&app.title());
        self.scene = kiss3d::scene::SceneNode3d::empty();
        self.drawing = DrawingView::default();
        let scene = Scene::new(&mut self.scene, &app);
        self.content = Content::Case(Box::new(app), Box::new(scene));
        self.options.say("scene made");
    }
}
