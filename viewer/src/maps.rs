//! Maps: a figure of the result at each vertex, by which a surface is coloured.

use crate::border;
use crate::colours::{LimitMark, Misses};
use crate::opened::Shown;
use messages::{Language, text};
use report::figures::{StationFigure, figure_name};
use report::result::{CaseResult, ImpressionResult};
use std::collections::BTreeMap;

/// What a surface is coloured by.
#[derive(Debug, Clone, PartialEq, Eq, PartialOrd, Ord)]
pub enum Map {
    /// A figure that a file of the result holds at each vertex, by its name
    /// there: `cover_mm`, `wash_mm`.
    Vertex(String),
    /// Width of the smallest void that can be seen, by the part of the arch.
    ScanQuality,
    /// A figure of the border, over the flange below its station.
    Flange(StationFigure),
}

use Map::{Flange, ScanQuality, Vertex};

/// Figures at vertices that number something and are no map.
const NUMBERS: [&str; 2] = ["part", "station"];

impl Map {
    /// The map of cover.
    #[must_use]
    pub fn cover() -> Self {
        Vertex("cover_mm".to_owned())
    }

    /// Every map that there may be, and any other figure that the files hold.
    #[must_use]
    pub fn all(impressions: &[Shown]) -> Vec<Self> {
        let mut maps = vec![
            Self::cover(),
            Vertex("wash_mm".to_owned()),
            ScanQuality,
            Flange(StationFigure::Thickness),
            Flange(StationFigure::Height),
        ];
        let held = impressions.iter().flat_map(|shown| shown.figures.keys());
        for name in held.filter(|name| !NUMBERS.contains(&name.as_str())) {
            let map = Vertex(name.clone());
            if !maps.contains(&map) {
                maps.push(map);
            }
        }
        maps
    }

    /// Its name without the unit.
    #[must_use]
    pub fn title(&self, language: Language) -> String {
        match self {
            Vertex(name) if name == "cover_mm" => text!(language, "map-cover"),
            Vertex(name) if name == "wash_mm" => text!(language, "map-wash"),
            Vertex(name) => name.strip_suffix("_mm").unwrap_or(name).replace('_', " "),
            ScanQuality => text!(language, "map-scan-quality"),
            Flange(figure) => figure_name(*figure, language),
        }
    }

    /// What its figure is, without the unit.
    #[must_use]
    pub fn figure(&self, language: Language) -> String {
        match self {
            Vertex(name) if name == "wash_mm" => text!(language, "map-wash-figure"),
            Vertex(_) | Flange(_) => self.title(language),
            ScanQuality => text!(language, "map-scan-quality-figure"),
        }
    }

    /// The unit of its figure; empty where its name says none.
    #[must_use]
    pub fn unit(&self) -> &'static str {
        match self {
            Vertex(name) if !name.ends_with("_mm") => "",
            _ => "mm",
        }
    }

    /// What its figure is, with the unit.
    #[must_use]
    pub fn name(&self, language: Language) -> String {
        match self.unit() {
            "" => self.figure(language),
            unit => format!("{}, {unit}", self.figure(language)),
        }
    }

    /// Whether its figure is one for a whole part of the surface.
    #[must_use]
    pub fn is_stepwise(&self) -> bool {
        !matches!(self, Vertex(_))
    }

    /// Its figure at each vertex of an impression.
    ///
    /// # Errors
    /// Where there is none at any: why, in words.
    pub fn figures(
        &self,
        of: &ImpressionResult,
        shown: &Shown,
        language: Language,
    ) -> Result<Vec<Option<f32>>, String> {
        let figures = match self {
            Vertex(name) => shown.figures.get(name).cloned().unwrap_or_default(),
            ScanQuality => shown
                .numbers("part")
                .map(|part| void_seen(of, part?))
                .collect(),
            Flange(figure) => shown
                .numbers("station")
                .map(|station| {
                    let station = of.border.as_ref()?.stations.get(station?)?;
                    station.figure(*figure).mm.map(|mm| mm as f32)
                })
                .collect(),
        };
        if figures.iter().any(Option::is_some) {
            Ok(figures)
        } else {
            Err(self.missing(of, language))
        }
    }

    /// Why there is no such map of an impression.
    fn missing(&self, of: &ImpressionResult, language: Language) -> String {
        let about: &[&str] = match self {
            Vertex(name) if name == "cover_mm" => &["show-through", "thin-cover"],
            Vertex(name) if name.starts_with("wash") => &["wash"],
            Vertex(_) => &[],
            ScanQuality => &["scan-quality", "void"],
            Flange(StationFigure::Thickness) => &["flange-thickness"],
            Flange(StationFigure::Height) => &["flange-height"],
            Flange(StationFigure::Radius) => &["border-radius"],
            Flange(StationFigure::Overlap) => &["border-overlap"],
        };
        let why = of
            .not_judged
            .iter()
            .find(|entry| about.contains(&entry.check.as_str()))
            .map(|entry| entry.why_in(language));
        let why = why.unwrap_or_else(|| text!(language, "map-holds-none"));
        text!(
            language,
            "map-missing",
            map = self.title(language),
            why = why
        )
    }

    /// Its limits, as marks on its scale.
    #[must_use]
    pub fn limits(&self, result: &CaseResult, language: Language) -> Vec<LimitMark> {
        let limits = &result.protocol.limits;
        let mark = |key: &str, name: String| {
            let limit = limits.get(key).filter(|limit| limit.value > 0.0)?;
            Some(LimitMark {
                value: limit.value,
                zones: limit.zones.clone(),
                name,
                misses: Misses::of_key(key),
            })
        };
        match self {
            Vertex(name) if name == "cover_mm" => [
                mark("show_through_mm", text!(language, "map-limit-show-through")),
                mark("thin_cover_mm", text!(language, "map-limit-thin")),
            ]
            .into_iter()
            .flatten()
            .collect(),
            Vertex(name) => {
                let stem = name.strip_suffix("_mm").unwrap_or(name);
                let about = |key: &&String| key.ends_with("_mm") && has_word(key, stem);
                let marks = limits.keys().filter(about).filter_map(|key| {
                    let words = key.trim_end_matches("_mm").replace('_', " ");
                    mark(key, words)
                });
                marks.collect()
            }
            ScanQuality => mark("smallest_void_seen_mm", text!(language, "map-limit-most"))
                .into_iter()
                .collect(),
            Flange(figure) => border::limits(*figure, language)
                .filter_map(|(key, name)| mark(key, name))
                .collect(),
        }
    }

    /// Whether the figure at each vertex misses a limit: the amount by which,
    /// or where whole parts have one figure 1 or -1, so that an outline goes
    /// round them.
    #[must_use]
    pub fn missed(
        &self,
        figures: &[Option<f32>],
        limit: &LimitMark,
        zones: &[Option<&str>],
    ) -> Vec<Option<f32>> {
        figures
            .iter()
            .zip(zones)
            .map(|(figure, zone)| {
                let by = figure.map(|figure| limit.missed_by(f64::from(figure), *zone) as f32);
                if self.is_stepwise() {
                    Some(if by.is_some_and(|by| by > 0.0) {
                        1.0
                    } else {
                        -1.0
                    })
                } else {
                    by
                }
            })
            .collect()
    }
}

/// The smallest void that is seen in a part of the arch.
fn void_seen(of: &ImpressionResult, part: usize) -> Option<f32> {
    let part = of.surface.as_ref()?.parts.get(part)?;
    let mut zones = of.zones.iter();
    let scan = zones.find(|scan| scan.zone == part.zone && scan.side == part.side)?;
    Some(scan.least_void_across_mm as f32)
}

/// Whether a name of words joined by underscores holds these words.
fn has_word(name: &str, words: &str) -> bool {
    format!("_{name}").contains(&format!("_{words}_"))
}

/// Ranges of the maps' scales, kept for each.
pub type Scales = BTreeMap<Map, crate::colours::Scale>;

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn maps_are_called_by_their_figures() {
        let name = |map: Map| map.name(Language::English);
        assert_eq!(name(Map::cover()), "cover, mm");
        assert_eq!(name(Vertex("wash_mm".to_owned())), "wash thickness, mm");
        assert_eq!(name(Vertex("curvature".to_owned())), "curvature");
        assert_eq!(name(Flange(StationFigure::Height)), "flange height, mm");
        assert!(has_word("least_wash_mm", "wash") && !has_word("washer_mm", "wash"));
    }

    #[test]
    fn outlines_go_round_whole_parts_but_only_between_known_covers() {
        let limit = LimitMark {
            value: 2.0,
            zones: BTreeMap::from([("palate".to_owned(), 4.0)]),
            name: "most".to_owned(),
            misses: Misses::Above,
        };
        let figures = [Some(3.0), Some(3.0), None];
        let zones = [Some("rugae"), Some("palate"), None];
        assert_eq!(
            ScanQuality.missed(&figures, &limit, &zones),
            [Some(1.0), Some(-1.0), Some(-1.0)]
        );
        assert_eq!(
            Map::cover().missed(&figures, &limit, &zones),
            [Some(1.0), Some(-1.0), None]
        );
    }
}
