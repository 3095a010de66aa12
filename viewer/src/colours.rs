//! Colours of a map, its scale, and the limit marks on it.

use colorous::Gradient;
use std::collections::BTreeMap;

/// Colour where a figure is not known, as in the cover map's file.
pub const UNKNOWN: [u8; 3] = [176, 176, 176];
/// Colour of an impression without a map.
const PLAIN: [u8; 3] = [205, 196, 182];

/// A colour scale that eyes of every kind can read.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Palette {
    /// Dark violet to bright yellow.
    Viridis,
    /// Dark blue to bright yellow.
    Cividis,
}

impl Palette {
    /// The other one.
    #[must_use]
    pub fn other(self) -> Self {
        match self {
            Self::Viridis => Self::Cividis,
            Self::Cividis => Self::Viridis,
        }
    }

    /// Its name.
    #[must_use]
    pub fn name(self) -> &'static str {
        match self {
            Self::Viridis => "viridis",
            Self::Cividis => "cividis",
        }
    }

    fn gradient(self) -> Gradient {
        match self {
            Self::Viridis => colorous::VIRIDIS,
            Self::Cividis => colorous::CIVIDIS,
        }
    }

    /// The colour at a share of the scale, 0 (dark) to 1 (bright).
    #[must_use]
    pub fn at(self, share: f64) -> [u8; 3] {
        self.gradient()
            .eval_continuous(share.clamp(0.0, 1.0))
            .as_array()
    }
}

/// The figures at both ends of a colour scale.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Scale {
    /// At the dark end; less is drawn the same.
    pub from: f64,
    /// At the bright end; more is drawn the same.
    pub to: f64,
}

impl Scale {
    /// Where a figure stands on it, 0 to 1 and beyond.
    #[must_use]
    pub fn share(&self, value: f64) -> f64 {
        (value - self.from) / (self.to - self.from)
    }

    /// The same beginning, with a range so many times as long.
    #[must_use]
    pub fn stretched(&self, times: f64) -> Self {
        let range = ((self.to - self.from) * times).clamp(0.1, 100.0);
        Self {
            to: self.from + range,
            ..*self
        }
    }

    /// Moved by a share of its length.
    #[must_use]
    pub fn moved(&self, share: f64) -> Self {
        let by = (self.to - self.from) * share;
        Self {
            from: self.from + by,
            to: self.to + by,
        }
    }

    /// From nothing to all but the greatest of these figures.
    #[must_use]
    pub fn over(figures: impl Iterator<Item = f32>, least: f64) -> Self {
        const SHARE: f64 = 0.99;
        let mut figures: Vec<f32> = figures.collect();
        let at = (figures.len() as f64 * SHARE) as usize;
        let to = match figures.is_empty() {
            true => 0.0,
            false => *figures.select_nth_unstable_by(at, f32::total_cmp).1,
        };
        Self {
            from: 0.0,
            to: f64::from(to).max(least).ceil(),
        }
    }

    /// Round figures to label it by, from one end to the other.
    #[must_use]
    pub fn labels(&self) -> Vec<f64> {
        let range = self.to - self.from;
        let rough = range / 4.0;
        let power = 10_f64.powf(rough.log10().floor());
        let step = [1.0, 2.0, 2.5, 5.0, 10.0]
            .into_iter()
            .map(|times| times * power)
            .find(|step| *step >= rough * 0.999)
            .unwrap_or(rough);
        let first = (self.from / step - 1e-6).ceil() as i64;
        let last = (self.to / step + 1e-6).floor() as i64;
        (first..=last).map(|n| n as f64 * step).collect()
    }
}

/// On which side of a limit a figure misses it.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Misses {
    /// Where it is less.
    Below,
    /// Where it is more.
    Above,
}

impl Misses {
    /// By the name of a limit in the protocol.
    #[must_use]
    pub fn of_key(key: &str) -> Self {
        if key.starts_with("most_") || key == "smallest_void_seen_mm" {
            Self::Above
        } else {
            Self::Below
        }
    }
}

/// A limit as a mark on a scale and a line on the map.
#[derive(Debug, Clone, PartialEq)]
pub struct LimitMark {
    /// The limit, where a zone has none of its own.
    pub value: f64,
    /// Limits of their own for some zones.
    pub zones: BTreeMap<String, f64>,
    /// What it is called.
    pub name: String,
    /// Which figures miss it.
    pub misses: Misses,
}

impl LimitMark {
    /// The limit in a zone.
    #[must_use]
    pub fn value_in(&self, zone: &str) -> f64 {
        self.zones.get(zone).copied().unwrap_or(self.value)
    }

    /// By how much a figure in a zone misses it; negative where it is met.
    #[must_use]
    pub fn missed_by(&self, figure: f64, zone: Option<&str>) -> f64 {
        let limit = zone.map_or(self.value, |zone| self.value_in(zone));
        match self.misses {
            Misses::Below => limit - figure,
            Misses::Above => figure - limit,
        }
    }
}

/// Colour of each vertex by its figure; plain without a scale.
#[must_use]
pub fn of_vertices(
    figures: &[Option<f32>],
    scale: Option<&Scale>,
    palette: Palette,
) -> Vec<[u8; 4]> {
    let colour = |figure: &Option<f32>| match (scale, figure) {
        (None, _) => PLAIN,
        (Some(_), None) => UNKNOWN,
        (Some(scale), Some(figure)) => palette.at(scale.share(f64::from(*figure))),
    };
    figures
        .iter()
        .map(|figure| {
            let [r, g, b] = colour(figure);
            [r, g, b, 255]
        })
        .collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    // Ends of the published tables.
    #[test]
    fn the_palettes_are_viridis_and_cividis() {
        assert_eq!(Palette::Viridis.at(0.0), [68, 1, 84]);
        assert_eq!(Palette::Viridis.at(7.0), [253, 231, 37]);
        let [r, g, b] = Palette::Cividis.at(0.0);
        assert!(b > r && b > g);
        let [r, g, b] = Palette::Cividis.at(1.0);
        assert!(r > b && g > b);
    }

    #[test]
    fn scales_are_labelled_by_round_figures() {
        let labels = |from, to| Scale { from, to }.labels();
        assert_eq!(labels(0.0, 4.0), [0.0, 1.0, 2.0, 3.0, 4.0]);
        assert_eq!(labels(0.0, 3.0).len(), 4);
        assert_eq!(labels(1.0, 2.0), [1.0, 1.25, 1.5, 1.75, 2.0]);
        assert!(labels(0.0, 37.0).len() >= 3);
    }

    #[test]
    fn a_scale_reaches_over_nearly_all_figures_and_can_be_moved() {
        let mut figures = vec![2.3_f32; 1000];
        figures.push(90.0);
        let scale = Scale::over(figures.into_iter(), 1.0);
        assert_eq!(scale, Scale { from: 0.0, to: 3.0 });
        assert_eq!(Scale::over(std::iter::empty(), 2.0).to, 2.0);
        assert_eq!(scale.moved(0.5), Scale { from: 1.5, to: 4.5 });
    }

    #[test]
    fn what_is_not_known_is_grey_and_never_a_figure() {
        let scale = Scale { from: 0.0, to: 3.0 };
        let colours = of_vertices(
            &[None, Some(0.0), Some(9.0)],
            Some(&scale),
            Palette::Viridis,
        );
        assert_eq!(colours[0], [176, 176, 176, 255]);
        assert_eq!(colours[1], [68, 1, 84, 255]);
        assert_eq!(colours[2], [253, 231, 37, 255]);
        let plain = of_vertices(&[None, Some(1.0)], None, Palette::Viridis);
        assert_eq!(plain[0], plain[1]);
    }
}
