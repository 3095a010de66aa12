//! What the window is showing, apart from any drawing.

use crate::colours::{LimitMark, Palette, Scale};
use crate::command::Layer;
use crate::flight::Flight;
use crate::landmarks::{self, Marks};
use crate::maps::{Map, Scales};
use crate::opened::{Opened, Shown, marks_file};
use crate::probe::{self, Probe};
use crate::queue::decision::Decision;
use crate::section::{CutLine, Plane};
use crate::ticks::Ticks;
use crate::unrolled::Spot;
use crate::view::{Canvas, View};
use messages::{Language, Value, text};
use nalgebra::{Point2, Point3};
use report::figures::StationFigure;
use report::result::{Finding, ImpressionResult, LandmarkStatus, Station};
use report::words;
use std::path::PathBuf;

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

/// A change that can be taken back.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum Change {
    /// The finding of this number was ticked, or its tick taken off.
    Tick(usize),
    /// A landmark was marked on the impression of this number.
    Mark(usize),
}

/// The state of the window.
pub struct App {
    /// What is shown.
    pub opened: Opened,
    /// The language that it is shown in.
    pub language: Language,
    /// Findings that are done.
    pub ticks: Ticks,
    /// What a person decided on the case.
    pub decision: Option<Decision>,
    /// Marked landmarks of each impression.
    pub marks: Vec<Marks>,
    /// What was changed, the last one last.
    pub(crate) changes: Vec<Change>,
    /// What was taken back.
    pub(crate) taken_back: Vec<Change>,
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
    pub(crate) flight: Option<Flight>,
    /// The maps that can be shown.
    pub maps: Vec<Map>,
    /// What the surfaces are coloured by; `None` for the plain surface.
    pub map: Option<Map>,
    /// The figure of that map at each vertex of each impression, or why there
    /// is none.
    pub coloured: Vec<Result<Vec<Option<f32>>, String>>,
    /// The figure by which the border line is coloured.
    pub border_figure: Option<StationFigure>,
    /// Colours of maps.
    pub palette: Palette,
    /// Scales of the maps that were changed.
    pub(crate) scales: Scales,
    pub(crate) hidden: Vec<Layer>,
    /// What a click does.
    pub mode: Mode,
    /// The distance that was clicked.
    pub distance: Option<Distance>,
    /// The section plane.
    pub section: Option<Section>,
    /// What lies under the pointer, and on which impression.
    pub hover: Option<(usize, Probe)>,
    /// The place of the front impression's border under the pointer.
    pub spot: Option<Spot>,
    /// Whether help is shown.
    pub help: bool,
    /// Whether the section drawing is shown large.
    pub enlarged: bool,
    /// The last thing that is to be said, one line.
    pub notice: String,
    /// Size of text, as a multiple.
    pub text_size: f64,
    /// Where impressions are drawn.
    pub canvas: Canvas,
    /// Where the border strip is drawn, if it is.
    pub strip_area: Option<Canvas>,
}

impl App {
    /// The first sight of a case: the whole of its first impression, the most
    /// urgent finding chosen.
    #[must_use]
    pub fn new(opened: Opened, canvas: Canvas) -> Self {
        let language = opened.language;
        let mut notice = String::new();
        let marks = (0..opened.impressions.len())
            .map(|number| {
                let sum = opened
                    .result
                    .impressions
                    .get(number)
                    .map(|of| of.scan.sha256.as_str());
                let file = landmarks_file(&opened, number);
                Marks::of_scan(&file, sum.unwrap_or_default()).unwrap_or_else(|refused| {
                    notice = refused.text(language);
                    Marks::default()
                })
            })
            .collect();
        let scans = scans_of(&opened);
        let decision = Decision::load(&opened.folder).unwrap_or_else(|refused| {
            notice = refused.text(language);
            None
        });
        let mut app = Self {
            decision: decision.filter(|decision| decision.is_of(&scans)),
            ticks: Ticks::of_scans(&opened.folder, &scans),
            marks,
            changes: Vec::new(),
            taken_back: Vec::new(),
            chosen: 0,
            ringed: None,
            front: 0,
            beside: false,
            view: View::onto(Point3::origin(), None, |_| true),
            flight: None,
            maps: Map::all(&opened.impressions),
            map: None,
            coloured: Vec::new(),
            border_figure: None,
            palette: Palette::Viridis,
            scales: Scales::new(),
            hidden: vec![Layer::Tray],
            mode: Mode::Look,
            distance: None,
            section: None,
            hover: None,
            spot: None,
            help: false,
            enlarged: false,
            notice,
            text_size: 1.0,
            canvas,
            strip_area: None,
            language,
            opened,
        };
        app.show_map(Some(Map::cover()));
        app.view = app.whole();
        app
    }

    /// The title of the window.
    #[must_use]
    pub fn title(&self) -> String {
        let result = &self.opened.result;
        let verdict = words::verdict_word(result.verdict, self.language);
        text!(
            self.language,
            "window-title",
            case = result.case.as_str(),
            verdict = verdict
        )
    }

    /// SHA-256 of each scan of the result.
    #[must_use]
    pub fn scans(&self) -> Vec<String> {
        scans_of(&self.opened)
    }

    /// Whether nothing is going on that could be left.
    #[must_use]
    pub fn is_at_rest(&self) -> bool {
        let is_looking = self.mode == Mode::Look && self.distance.is_none();
        is_looking && !self.help && !self.enlarged
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
    pub(crate) fn other(&self) -> Option<usize> {
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

    /// Shows or hides something.
    pub fn show(&mut self, layer: Layer, is_shown: bool) {
        self.hidden.retain(|&hidden| hidden != layer);
        if !is_shown {
            self.hidden.push(layer);
        }
    }

    /// Colours the surfaces by a map, or not.
    pub(crate) fn show_map(&mut self, map: Option<Map>) {
        let of_all = self.opened.result.impressions.iter();
        self.coloured = match &map {
            None => Vec::new(),
            Some(map) => of_all
                .zip(&self.opened.impressions)
                .map(|(of, shown)| map.figures(of, shown, self.language))
                .collect(),
        };
        self.map = map;
    }

    /// The figures by which an impression is coloured.
    #[must_use]
    pub fn map_of(&self, impression: usize) -> Option<&[Option<f32>]> {
        self.coloured.get(impression)?.as_deref().ok()
    }

    /// Why the impression in front has no such map.
    #[must_use]
    pub fn missing_map(&self) -> Option<&str> {
        let coloured = self.coloured.get(self.front)?;
        coloured.as_ref().err().map(String::as_str)
    }

    /// The scale of the map.
    #[must_use]
    pub fn scale(&self) -> Option<Scale> {
        let map = self.map.as_ref()?;
        if let Some(scale) = self.scales.get(map) {
            return Some(*scale);
        }
        let covers = self.opened.result.impressions.iter();
        let mut covers = covers.filter_map(|of| of.cover.as_ref()?.map.as_ref());
        if let Some(as_in_the_file) = covers.next().filter(|_| *map == Map::cover()) {
            return Some(Scale {
                from: as_in_the_file.from_mm,
                to: as_in_the_file.to_mm,
            });
        }
        let figures = self.coloured.iter().flatten().flatten().flatten().copied();
        let limits = self.map_limits();
        let least = limits
            .iter()
            .map(|mark| mark.value * 1.1)
            .fold(1.0, f64::max);
        Some(Scale::over(figures, least))
    }

    /// Limits of the map, as marks on its scale.
    #[must_use]
    pub fn map_limits(&self) -> Vec<LimitMark> {
        let map = self.map.as_ref();
        map.map_or_else(Vec::new, |map| {
            map.limits(&self.opened.result, self.language)
        })
    }

    /// The zone at each vertex of an impression.
    #[must_use]
    pub fn zones_of(&self, impression: usize) -> Vec<Option<&str>> {
        let (Some(of), Some(shown)) = (self.result_of(impression), self.shown(impression)) else {
            return Vec::new();
        };
        let parts = of
            .surface
            .as_ref()
            .map_or(&[][..], |surface| &surface.parts);
        shown
            .numbers("part")
            .map(|part| Some(parts.get(part?)?.zone.as_str()))
            .collect()
    }

    /// The file of the chosen finding's section drawing.
    #[must_use]
    pub fn drawing(&self) -> Option<PathBuf> {
        let drawing = self.finding()?.drawing.as_ref()?;
        Some(self.opened.folder.join(drawing))
    }

    /// What is said of a place: cover, the figure of the map, zone, coordinates.
    #[must_use]
    pub fn words_of(&self, impression: usize, probe: &Probe) -> String {
        let (Some(of), Some(shown)) = (self.result_of(impression), self.shown(impression)) else {
            return String::new();
        };
        let language = self.language;
        let cover = shown.figures.get("cover_mm");
        let mut words = vec![match cover.and_then(|cover| probe.between(cover)) {
            Some(mm) => {
                let figure = Value::figure(format!("{mm:.2} mm"));
                text!(language, "probe-thickness", figure = figure)
            }
            None => text!(language, "probe-thickness-not-known"),
        }];
        if let Some(map) = self.map.as_ref().filter(|map| **map != Map::cover()) {
            let figures = self.map_of(impression).unwrap_or_default();
            let figure = if map.is_stepwise() {
                probe.nearest(figures)
            } else {
                probe.between(figures)
            };
            words.push(match figure {
                Some(figure) => text!(
                    language,
                    "probe-figure",
                    name = map.figure(language),
                    figure = Value::figure(format!("{figure:.2} {}", map.unit()))
                ),
                None => text!(language, "probe-not-known", name = map.figure(language)),
            });
        }
        let parts = of
            .surface
            .as_ref()
            .map_or(&[][..], |surface| &surface.parts);
        let part = shown
            .figures
            .get("part")
            .and_then(|part| probe.nearest(part));
        words.push(match part.and_then(|part| parts.get(part as usize)) {
            Some(part) => landmarks::zone_in_words(&part.zone, part.side, language),
            None => text!(language, "probe-no-zone"),
        });
        let [x, y, z] = probe.in_file.map(|c| Value::number(c, 2));
        words.push(text!(language, "probe-at", x = x, y = y, z = z));
        words.join("; ")
    }

    /// Limits of the figure along the border, as marks on its scale.
    #[must_use]
    pub fn border_limits(&self) -> Vec<LimitMark> {
        let figure = self.border_figure.map(Map::Flange);
        figure.map_or_else(Vec::new, |map| {
            map.limits(&self.opened.result, self.language)
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
            .filter_map(|station| station.figure(figure).mm)
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
        let (marks, language) = (&self.marks[impression], self.language);
        let marked = marks.all().iter().map(|mark| {
            let landmark = landmarks::in_words((&mark.name, mark.side), language);
            let words = text!(language, "landmark-label-marked", landmark = landmark);
            (shown.placement.shown(mark.point), words)
        });
        let found = of.landmarks.iter().filter_map(|landmark| {
            let of_result = (landmark.name.as_str(), landmarks::Where::of(landmark.side));
            let place = shown.placement.shown(landmark.point?);
            let name = landmarks::in_words(of_result, language);
            let words = match status(landmark.status, language) {
                None => name,
                Some(status) => text!(
                    language,
                    "landmark-label-status",
                    landmark = name,
                    status = status
                ),
            };
            marks.get(of_result).is_none().then_some((place, words))
        });
        marked.chain(found).collect()
    }
}

/// How a landmark was recorded, where there is something to be said of it.
fn status(status: LandmarkStatus, language: Language) -> Option<String> {
    match status {
        LandmarkStatus::Recorded => None,
        LandmarkStatus::Reached => Some(text!(language, "status-reached")),
        LandmarkStatus::CutShort => Some(text!(language, "status-cut-short")),
        LandmarkStatus::Obscured => Some(text!(language, "status-obscured")),
        LandmarkStatus::NotFound => Some(text!(language, "status-not-found")),
    }
}

/// SHA-256 of each scan of a result.
fn scans_of(opened: &Opened) -> Vec<String> {
    let impressions = opened.result.impressions.iter();
    impressions.map(|of| of.scan.sha256.clone()).collect()
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
