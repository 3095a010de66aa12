//! What each command does.

use crate::app::{App, Change, Distance, Mode, Section, landmarks_file};
use crate::border;
use crate::colours::Scale;
use crate::command::{Command, Layer};
use crate::landmarks::Marks;
use crate::section::Plane;
use crate::view::{Canvas, View};
use check::reader::not_written;
use messages::text;
use nalgebra::Point2;
use report::words;

impl App {
    /// Does what was asked for.
    pub fn act(&mut self, command: Command) {
        let findings = self.opened.result.findings.len();
        match command {
            Command::Next => self.chosen = (self.chosen + 1).min(findings.saturating_sub(1)),
            Command::Previous => self.chosen = self.chosen.saturating_sub(1),
            Command::Choose(number) if number < findings => self.chosen = number,
            Command::Choose(_) => {}
            Command::Fly => self.fly(),
            Command::ToggleDone => self.toggle_done(),
            Command::Whole => {
                self.ringed = None;
                self.fly_to(self.whole());
            }
            Command::NextImpression => self.next_impression(),
            Command::Beside => {
                self.beside = !self.beside && self.other().is_some();
                if !self.beside && self.opened.impressions.len() < 2 {
                    self.notice = text!(self.language, "said-one-impression");
                }
            }
            Command::NextMap => self.step_map(1),
            Command::PreviousMap => self.step_map(-1),
            Command::NextBorderFigure => self.border_figure = border::after(self.border_figure),
            Command::NextPalette => self.palette = self.palette.other(),
            Command::Stretch(times) => self.rescale(|scale| scale.stretched(times)),
            Command::Slide(share) => self.rescale(|scale| scale.moved(share)),
            Command::Drawing => self.enlarge_drawing(),
            Command::Toggle(Layer::Tray)
                if self.opened.impressions.iter().all(|i| i.tray.is_none()) =>
            {
                self.notice = text!(self.language, "said-no-tray");
            }
            Command::Toggle(layer) => self.show(layer, !self.shows(layer)),
            Command::Measure => {
                self.distance = None;
                self.mode = match self.mode {
                    Mode::Measure => Mode::Look,
                    _ => Mode::Measure,
                };
            }
            Command::Mark => {
                self.mode = match self.mode {
                    Mode::Mark(_) => Mode::Look,
                    _ => Mode::Mark(0),
                };
            }
            Command::NextLandmark(by) => {
                if let Mode::Mark(number) = self.mode {
                    let all = self.landmarks().len() as isize;
                    self.mode = Mode::Mark((number as isize + by).rem_euclid(all) as usize);
                }
            }
            Command::Undo => self.undo(),
            Command::Redo => self.redo(),
            Command::Section => self.toggle_section(),
            Command::MoveSection(mm) => self.change_section(|plane| plane.moved(mm)),
            Command::TurnSection(by) => self.change_section(|plane| plane.turned(by)),
            Command::Turn(x, y) => self.look(|view, _| view.turned(x, y)),
            Command::Roll(angle) => self.look(|view, _| view.rolled(angle)),
            Command::Shift(x, y) => self.look(|view, canvas| view.shifted(canvas, x, y)),
            Command::Magnify(times) => self.look(|view, _| view.magnified(times)),
            Command::PickMiddle => {
                if let Some((_, canvas)) = self.slots().into_iter().find(|(n, _)| *n == self.front)
                {
                    self.click(&canvas.middle());
                }
            }
            Command::TextSize(times) => {
                self.text_size = (self.text_size * times).clamp(0.6, 3.0);
            }
            Command::Help => self.help = !self.help,
            Command::Leave => {
                self.help = false;
                self.enlarged = false;
                self.mode = Mode::Look;
                self.distance = None;
            }
        }
    }

    /// A click: flies to the place on the border strip, or does what the mode
    /// says at the place under it.
    pub fn click(&mut self, pixel: &Point2<f64>) {
        if let Some(spot) = self.spot_at(pixel) {
            self.fly_to_spot(&spot);
            return;
        }
        let Some((impression, found)) = self.at(pixel) else {
            return;
        };
        self.front = impression;
        match self.mode {
            Mode::Look => {}
            Mode::Measure => {
                self.distance = Some(match self.distance {
                    Some(begun) if begun.to.is_none() && begun.impression == impression => {
                        Distance {
                            to: Some(found.place),
                            ..begun
                        }
                    }
                    _ => Distance {
                        impression,
                        from: found.place,
                        to: None,
                    },
                });
            }
            Mode::Mark(number) => {
                let all = self.landmarks();
                let landmark = all[number % all.len()];
                self.marks[impression].mark(landmark, found.in_file);
                self.mode = Mode::Mark((number + 1) % all.len());
                self.note_change(Change::Mark(impression));
                self.save_marks(impression);
            }
        }
    }

    fn fly(&mut self) {
        let Some(finding) = self.opened.result.findings.get(self.chosen) else {
            return;
        };
        let to = self.view_of(finding);
        if let Some(impression) = finding.impression.and_then(|n| usize::try_from(n).ok()) {
            self.front = impression.min(self.opened.impressions.len().saturating_sub(1));
        }
        self.notice = match finding.at {
            Some(_) => String::new(),
            None => text!(self.language, "said-of-the-whole"),
        };
        self.ringed = finding.at.map(|_| self.chosen);
        if self.section.is_some() {
            self.set_section(Plane::through(to.target));
        }
        self.fly_to(to);
    }

    fn look(&mut self, change: impl Fn(&View, &Canvas) -> View) {
        self.flight = None;
        self.view = change(&self.view, &self.canvas);
    }

    fn next_impression(&mut self) {
        let all = self.opened.impressions.len().max(1);
        self.front = (self.front + 1) % all;
        self.distance = None;
        self.section = None;
        if let Some(of) = self.result_of(self.front) {
            let name = words::impression_name(of, self.language);
            self.notice = text!(self.language, "said-in-front", impression = name);
        }
    }

    fn toggle_done(&mut self) {
        if self.chosen < self.opened.result.findings.len() {
            self.note_change(Change::Tick(self.chosen));
            self.toggle_tick(self.chosen);
        }
    }

    fn toggle_tick(&mut self, finding: usize) {
        let Some(finding) = self.opened.result.findings.get(finding) else {
            return;
        };
        self.ticks.toggle(finding);
        if let Err(refused) = self.ticks.save(&self.opened.folder) {
            self.notice = not_written(&refused).text(self.language);
        }
    }

    fn note_change(&mut self, change: Change) {
        self.changes.push(change);
        self.taken_back.clear();
    }

    fn undo(&mut self) {
        let Some(change) = self.changes.pop() else {
            self.notice = text!(self.language, "said-nothing-to-take-back");
            return;
        };
        self.apply(change, Marks::undo);
        self.taken_back.push(change);
    }

    fn redo(&mut self) {
        let Some(change) = self.taken_back.pop() else {
            self.notice = text!(self.language, "said-nothing-to-make-again");
            return;
        };
        self.apply(change, Marks::redo);
        self.changes.push(change);
    }

    /// Steps marks back or forward; a tick is its own opposite.
    fn apply(&mut self, change: Change, step: fn(&mut Marks) -> bool) {
        match change {
            Change::Mark(impression) => {
                step(&mut self.marks[impression]);
                self.save_marks(impression);
            }
            Change::Tick(finding) => {
                self.notice.clear();
                self.chosen = finding;
                self.toggle_tick(finding);
            }
        }
    }

    fn save_marks(&mut self, impression: usize) {
        let file = landmarks_file(&self.opened, impression);
        let saved = self.marks[impression].save(&file);
        self.notice = match saved {
            Ok(()) => text!(
                self.language,
                "said-landmarks-saved",
                path = mesh::read::shown_path(&file)
            ),
            Err(refused) => not_written(&refused).text(self.language),
        };
    }

    fn toggle_section(&mut self) {
        if self.section.take().is_some() {
            return;
        }
        let middle = self.slots().first().map(|slot| slot.1.middle());
        let place = middle.and_then(|middle| Some(self.at(&middle)?.1.place));
        self.set_section(Plane::through(place.unwrap_or(self.view.target)));
    }

    fn change_section(&mut self, change: impl Fn(Plane) -> Plane) {
        if let Some(section) = &self.section {
            self.set_section(change(section.plane));
        }
    }

    fn set_section(&mut self, plane: Plane) {
        self.section = self.shown(self.front).map(|shown| Section {
            impression: self.front,
            plane,
            cut: plane.cut(shown),
        });
    }

    fn step_map(&mut self, by: isize) {
        let all = self.maps.len() as isize + 1;
        let shown = self.map.as_ref();
        let at = shown.and_then(|map| self.maps.iter().position(|other| other == map));
        let next = (at.map_or(all - 1, |at| at as isize) + by).rem_euclid(all);
        let map = self.maps.get(next as usize).cloned();
        self.show_map(map);
        self.notice = match &self.map {
            None => text!(self.language, "map-plain"),
            Some(_) => String::new(),
        };
    }

    fn rescale(&mut self, change: impl Fn(&Scale) -> Scale) {
        if let Some((map, scale)) = self.map.clone().zip(self.scale()) {
            self.scales.insert(map, change(&scale));
        }
    }

    fn enlarge_drawing(&mut self) {
        self.enlarged = !self.enlarged && self.drawing().is_some();
        if self.drawing().is_none() {
            self.notice = text!(self.language, "said-no-drawing");
        }
    }
}
