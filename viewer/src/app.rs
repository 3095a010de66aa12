//! What the window is showing and what each command does to it, apart from any
//! drawing.

use crate::border::{BorderFigure, station_value};
use crate::colours::{LimitMark, Palette, Scale};
use crate::landmarks::{self, Marks};
use crate::opened::{Opened, Shown, marks_file};
use crate::probe::{self, Probe};
use crate::section::{CutLine, Plane};
use crate::ticks::Ticks;
use crate::view::{Canvas, View};
use nalgebra::{Point2, Point3};
use report::result::{Finding, ImpressionResult, LandmarkStatus, Station};
use report::summary;
use std::path::PathBuf;

/// What the user can ask for; every one has a key.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Command {
    /// Choose the next finding.
    Next,
    /// Choose the one before.
    Previous,
    /// Choose a finding by its number in the list.
    Choose(usize),
    /// Fly to the chosen finding.
    Fly,
    /// Mark the chosen finding as done, or not done.
    ToggleDone,
    /// Show the whole impression.
    Whole,
    /// Bring the next impression to the front.
    NextImpression,
    /// Show two impressions side by side, or one.
    Beside,
    /// Cover, or the plain surface.
    NextMap,
    /// The next figure along the border.
    NextBorderFigure,
    /// The other palette.
    NextPalette,
    /// Make the scale so many times as long.
    Stretch(f64),
    /// Show or hide something.
    Toggle(Layer),
    /// Measure between two clicks, or stop.
    Measure,
    /// Mark landmarks, or stop.
    Mark,
    /// Mark the next landmark, or the one so many further.
    NextLandmark(isize),
    /// Take the last mark back.
    Undo,
    /// Show the section plane through the middle of the picture, or hide it.
    Section,
    /// Move the section plane, mm.
    MoveSection(f64),
    /// Turn the section plane, radians.
    TurnSection(f64),
    /// Turn the impression as a drag over so many pixels does.
    Turn(f64, f64),
    /// Turn it about the line of sight, radians.
    Roll(f64),
    /// Move it as a drag over so many pixels does.
    Shift(f64, f64),
    /// Magnify so many times.
    Magnify(f64),
    /// Click the middle of the picture.
    PickMiddle,
    /// Larger or smaller text.
    TextSize(f64),
    /// Show or hide help.
    Help,
    /// Leave whatever is going on.
    Leave,
}

/// Things that can be shown and hidden.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Layer {
    /// The border line.
    Border,
    /// The crest line.
    Crest,
    /// Lines where cover is at a limit.
    Outlines,
    /// Marked landmarks.
    Landmarks,
    /// The tray, translucent.
    Tray,
}

/// What a click on the surface does.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Mode {
    /// Nothing.
    Look,
    /// It sets an end of a distance.
    Measure,
    /// It marks the landmark of this number in the list.
    Mark(usize),
}

/// A distance between two clicked places on one impression.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Distance {
    /// The impression.
    pub impression: usize,
    /// The first place.
    pub from: Point3<f64>,
    /// The second, once it is clicked.
    pub to: Option<Point3<f64>>,
}

/// A section plane on an impression with its cut.
#[derive(Debug, Clone)]
pub struct Section {
    /// The impression.
    pub impression: usize,
    /// Where it stands.
    pub plane: Plane,
    /// Its cut.
    pub cut: Vec<CutLine>,
}

struct Flight {
    from: View,
    to: View,
    part: f64,
}

/// How long a flight takes, s.
const FLIGHT_S: f64 = 0.45;

/// The state of the window.
pub struct App {
    /// What is shown.
    pub opened: Opened,
    /// Findings that are done.
    pub ticks: Ticks,
    /// Marked landmarks of each impression.
    pub marks: Vec<Marks>,
    /// Number of the chosen finding.
    pub chosen: usize,
    /// Number of the finding that was flown to.
    pub ringed: Option<usize>,
    /// The impression in front.
    pub front: usize,
    /// Whether a second one stands beside it.
    pub beside: bool,
    /// How all of them are looked at.
    pub view: View,
    flight: Option<Flight>,
    /// Whether the surface is coloured by cover.
    pub cover_map: bool,
    /// The figure by which the border line is coloured.
    pub border_figure: Option<BorderFigure>,
    /// Colours of maps.
    pub palette: Palette,
    /// Scale of the cover map, mm.
    pub scale: Scale,
    hidden: Vec<Layer>,
    /// What a click does.
    pub mode: Mode,
    /// The distance that was clicked.
    pub distance: Option<Distance>,
    /// The section plane.
    pub section: Option<Section>,
    /// What lies under the pointer, and on which impression.
    pub hover: Option<(usize, Probe)>,
    /// Whether help is shown.
    pub help: bool,
    /// The last thing that is to be said, one line.
    pub notice: String,
    /// Size of text, as a multiple.
    pub text_size: f64,
    /// Where impressions are drawn.
    pub canvas: Canvas,
}

impl App {
    /// The first sight of a case: the whole of its first impression, the most
    /// urgent finding chosen.
    #[must_use]
    pub fn new(opened: Opened, canvas: Canvas) -> Self {
        let mut notice = String::new();
        let marks = (0..opened.impressions.len())
            .map(|number| {
                Marks::load(&landmarks_file(&opened, number)).unwrap_or_else(|refused| {
                    notice = refused;
                    Marks::default()
                })
            })
            .collect();
        let to = opened
            .result
            .impressions
            .iter()
            .find_map(|i| Some(i.cover.as_ref()?.map.as_ref()?.to_mm));
        let mut app = Self {
            ticks: Ticks::load(&opened.folder),
            marks,
            chosen: 0,
            ringed: None,
            front: 0,
            beside: false,
            view: View::onto(Point3::origin(), None, |_| true),
            flight: None,
            cover_map: true,
            border_figure: None,
            palette: Palette::Viridis,
            scale: Scale {
                from: 0.0,
                to: to.unwrap_or(3.0),
            },
            hidden: vec![Layer::Tray],
            mode: Mode::Look,
            distance: None,
            section: None,
            hover: None,
            help: false,
            notice,
            text_size: 1.0,
            canvas,
            opened,
        };
        app.view = app.whole();
        app
    }

    /// The title of the window.
    #[must_use]
    pub fn title(&self) -> String {
        let result = &self.opened.result;
        let verdict = summary::verdict_word(result.verdict);
        format!("archproof: case {}: {verdict}", result.case)
    }

    /// The chosen finding.
    #[must_use]
    pub fn finding(&self) -> Option<&Finding> {
        self.opened.result.findings.get(self.chosen)
    }

    /// What was found out about an impression.
    #[must_use]
    pub fn result_of(&self, impression: usize) -> Option<&ImpressionResult> {
        self.opened.result.impressions.get(impression)
    }

    /// What is shown of an impression.
    #[must_use]
    pub fn shown(&self, impression: usize) -> Option<&Shown> {
        self.opened.impressions.get(impression)
    }

    /// The impressions that are drawn, each with its part of the canvas.
    #[must_use]
    pub fn slots(&self) -> Vec<(usize, Canvas)> {
        let Some(other) = self.other().filter(|_| self.beside) else {
            return vec![(self.front, self.canvas)];
        };
        let half = Canvas {
            width: self.canvas.width / 2.0,
            ..self.canvas
        };
        let right = Canvas {
            left: half.left + half.width,
            ..half
        };
        let (first, second) = (self.front.min(other), self.front.max(other));
        vec![(first, half), (second, right)]
    }

    /// What belongs beside the impression in front: the other stage of the same
    /// jaw, else whatever comes next.
    fn other(&self) -> Option<usize> {
        let impressions = &self.opened.result.impressions;
        let jaw = |number: usize| {
            let arch = &impressions[number].arch;
            arch.declared.or(arch.detected)
        };
        let others = || (0..impressions.len()).filter(|&n| n != self.front);
        others()
            .find(|&n| jaw(n).is_some() && jaw(n) == jaw(self.front))
            .or_else(|| others().find(|&n| n > self.front))
            .or_else(|| others().next())
    }

    /// Whether something is shown.
    #[must_use]
    pub fn shows(&self, layer: Layer) -> bool {
        !self.hidden.contains(&layer)
    }

    /// Limits of cover, as marks on its scale.
    #[must_use]
    pub fn cover_limits(&self) -> Vec<LimitMark> {
        [
            ("show_through_mm", "show-through"),
            ("thin_cover_mm", "thin"),
        ]
        .into_iter()
        .filter_map(|(key, name)| self.limit(key, name))
        .collect()
    }

    /// Limits of the figure along the border, as marks on its scale.
    #[must_use]
    pub fn border_limits(&self) -> Vec<LimitMark> {
        self.border_figure
            .into_iter()
            .flat_map(BorderFigure::limits)
            .filter_map(|&(key, name)| self.limit(key, name))
            .filter(|mark| mark.value > 0.0)
            .collect()
    }

    fn limit(&self, key: &str, name: &'static str) -> Option<LimitMark> {
        let limit = self.opened.result.protocol.limits.get(key)?;
        Some(LimitMark {
            value: limit.value,
            name,
        })
    }

    /// The scale of the figure along the border: of all that is shown.
    #[must_use]
    pub fn border_scale(&self) -> Option<Scale> {
        let figure = self.border_figure?;
        let stations = self
            .opened
            .result
            .impressions
            .iter()
            .flat_map(|i| &i.border);
        let most = stations
            .flat_map(|border| &border.stations)
            .filter_map(|station| station_value(station, figure))
            .fold(1.0, f64::max);
        Some(Scale {
            from: 0.0,
            to: most.ceil(),
        })
    }

    /// The places of a finding's stretch of border, scan file; empty where it
    /// speaks of no stretch.
    #[must_use]
    pub fn stretch(&self, finding: &Finding) -> Vec<&Station> {
        let number = |n: Option<u64>| n.and_then(|n| usize::try_from(n).ok());
        let found = number(finding.impression)
            .and_then(|n| self.result_of(n)?.border.as_ref())
            .zip(number(finding.from_station).zip(number(finding.to_station)));
        let Some((border, (from, to))) = found else {
            return Vec::new();
        };
        let stations = &border.stations;
        match stations.len() {
            0 => Vec::new(),
            all => {
                let count = (to + all - from % all) % all + 1;
                (0..count).map(|i| &stations[(from + i) % all]).collect()
            }
        }
    }

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
                    self.notice = "there is only one impression".to_owned();
                }
            }
            Command::NextMap => self.cover_map = !self.cover_map,
            Command::NextBorderFigure => {
                self.border_figure = BorderFigure::after(self.border_figure)
            }
            Command::NextPalette => self.palette = self.palette.other(),
            Command::Stretch(times) => self.scale = self.scale.stretched(times),
            Command::Toggle(Layer::Tray)
                if self.opened.impressions.iter().all(|i| i.tray.is_none()) =>
            {
                self.notice =
                    "the tray is shown when the case file is opened, not its result".to_owned();
            }
            Command::Toggle(layer) => match self.hidden.iter().position(|&l| l == layer) {
                Some(at) => {
                    self.hidden.remove(at);
                }
                None => self.hidden.push(layer),
            },
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
            Command::Undo => {
                let front = self.front;
                if self.marks.get_mut(front).is_some_and(Marks::undo) {
                    self.save_marks(front);
                } else {
                    self.notice = "nothing to take back".to_owned();
                }
            }
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
                self.mode = Mode::Look;
                self.distance = None;
            }
        }
    }

    /// A click: does what the mode says at the place under it.
    pub fn click(&mut self, pixel: &Point2<f64>) {
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
                self.save_marks(impression);
            }
        }
    }

    /// What lies under a pixel, and on which impression.
    #[must_use]
    pub fn at(&self, pixel: &Point2<f64>) -> Option<(usize, Probe)> {
        let (impression, canvas) = self
            .slots()
            .into_iter()
            .find(|(_, canvas)| canvas.holds(pixel))?;
        let (from, along) = self.view.ray(&canvas, pixel);
        Some((
            impression,
            probe::probe(self.shown(impression)?, &from, &along)?,
        ))
    }

    /// The landmarks of the impression in front.
    #[must_use]
    pub fn landmarks(&self) -> Vec<(&'static str, landmarks::Where)> {
        let arch = self.result_of(self.front).map(|of| &of.arch);
        landmarks::of_arch(arch.and_then(|arch| arch.declared.or(arch.detected)))
    }

    /// The landmarks of an impression, each with its place and what is said of
    /// it: those marked here, then those of the result that were not marked.
    #[must_use]
    pub fn landmark_labels(&self, impression: usize) -> Vec<(Point3<f64>, String)> {
        let (Some(shown), Some(of)) = (self.shown(impression), self.result_of(impression)) else {
            return Vec::new();
        };
        let marks = &self.marks[impression];
        let marked = marks.all().iter().map(|mark| {
            let words = landmarks::in_words((&mark.name, mark.side));
            (shown.placement.shown(mark.point), words + " (marked)")
        });
        let found = of.landmarks.iter().filter_map(|landmark| {
            let of_result = (landmark.name.as_str(), landmarks::Where::of(landmark.side));
            let place = shown.placement.shown(landmark.point?);
            let status = match landmark.status {
                LandmarkStatus::Recorded => "",
                LandmarkStatus::CutShort => ": cut short",
                LandmarkStatus::Obscured => ": obscured",
                LandmarkStatus::NotFound => ": not found",
            };
            let words = landmarks::in_words(of_result) + status;
            marks.get(of_result).is_none().then_some((place, words))
        });
        marked.chain(found).collect()
    }

    /// Lets time pass; whether something moved.
    pub fn pass(&mut self, seconds: f64) -> bool {
        let Some(flight) = &mut self.flight else {
            return false;
        };
        flight.part = (flight.part + seconds / FLIGHT_S).min(1.0);
        self.view = View::between(&flight.from, &flight.to, flight.part);
        if flight.part >= 1.0 {
            self.view = flight.to;
            self.flight = None;
        }
        true
    }

    /// Whether the view is on its way somewhere.
    #[must_use]
    pub fn is_flying(&self) -> bool {
        self.flight.is_some()
    }

    /// The view onto a finding; the whole impression where it has no place.
    #[must_use]
    pub fn view_of(&self, finding: &Finding) -> View {
        let impression = finding.impression.and_then(|n| usize::try_from(n).ok());
        let place = impression
            .and_then(|n| self.shown(n))
            .zip(finding.at)
            .map(|(shown, at)| (shown, shown.placement.shown(at)));
        match place {
            Some((shown, place)) => {
                View::onto(place, probe::normal_at(shown, &place), |to_viewer| {
                    probe::in_sight(shown, &place, to_viewer)
                })
            }
            None => self.whole(),
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
            None => "this finding is a matter of the whole impression or case".to_owned(),
        };
        self.ringed = finding.at.map(|_| self.chosen);
        if self.section.is_some() {
            self.set_section(Plane::through(to.target));
        }
        self.fly_to(to);
    }

    fn fly_to(&mut self, to: View) {
        self.flight = Some(Flight {
            from: self.view,
            to,
            part: 0.0,
        });
    }

    fn whole(&self) -> View {
        let (low, high) = self.shown(self.front).map_or_else(
            || {
                (
                    Point3::new(-30.0, -30.0, -10.0),
                    Point3::new(30.0, 30.0, 10.0),
                )
            },
            Shown::bounds,
        );
        let canvas = self.slots().first().map_or(self.canvas, |slot| slot.1);
        View::whole(&low, &high, canvas.width / canvas.height.max(1.0))
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
            self.notice = format!("in front: {}", summary::name(of));
        }
    }

    fn toggle_done(&mut self) {
        let Some(finding) = self.opened.result.findings.get(self.chosen) else {
            return;
        };
        self.ticks.toggle(finding);
        if let Err(refused) = self.ticks.save(&self.opened.folder) {
            self.notice = refused.to_string();
        }
    }

    fn save_marks(&mut self, impression: usize) {
        let file = landmarks_file(&self.opened, impression);
        let saved = self.marks[impression].save(&file);
        self.notice = match saved {
            Ok(()) => format!("landmarks saved in {}", mesh::read::shown_path(&file)),
            Err(refused) => refused.to_string(),
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
}

/// Where the landmarks of an impression are saved: beside the result.
#[must_use]
pub fn landmarks_file(opened: &Opened, impression: usize) -> PathBuf {
    let several = opened.result.impressions.len() > 1;
    let of = opened.result.impressions.get(impression);
    let told = of.map(|of| {
        let stage = match of.stage {
            report::result::Stage::FirstPass => judge::Stage::FirstPass,
            report::result::Stage::Wash => judge::Stage::Wash,
            report::result::Stage::Single => judge::Stage::Single,
        };
        (of.arch.declared, stage)
    });
    let name = marks_file(told.filter(|_| several));
    opened.folder.join(name)
}
