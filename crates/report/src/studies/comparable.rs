//! The figures of a result that can be compared between results, each by name.

use crate::files::outputs::{RESULT_FILE, ReadResultError, read_result};
use crate::result::{Border, CaseResult, ImpressionResult, ProtocolResult, Side};
use crate::text::figures::station_figure;
use judge::LimitKey;
use measure::StationFigure;
use std::collections::BTreeMap;
use std::path::Path;
use study::{FigureLimits, NamedFigure};

/// The figures of a result: cover, border and areas; flange height, thickness
/// and border radius as the median over each part of the arch.
#[must_use]
pub fn comparable_figures(result: &CaseResult) -> Vec<NamedFigure> {
    let several = result.impressions.len() > 1;
    let of_each = result.impressions.iter().enumerate();
    of_each
        .flat_map(|(number, impression)| {
            let prefix = if several {
                format!("impression {}: ", number + 1)
            } else {
                String::new()
            };
            of_impression(impression)
                .into_iter()
                .map(move |(name, unit, value)| NamedFigure {
                    limits: limits_of(&name, &result.protocol),
                    name: format!("{prefix}{name}"),
                    unit,
                    value,
                })
        })
        .collect()
}

type Row = (String, &'static str, f64);

fn of_impression(impression: &ImpressionResult) -> Vec<Row> {
    let mut rows: Vec<Row> = Vec::new();
    let mut add = |name: &str, unit, value| rows.push((name.to_owned(), unit, value));
    add("scanned area", "mm2", impression.scan.area_mm2);
    if let Some(cover) = &impression.cover {
        for (name, value) in [
            ("cover, median", cover.median_mm),
            ("cover, 5th percentile", cover.p05_mm),
            ("cover, least", cover.min_mm),
        ] {
            if let Some(value) = value {
                add(name, "mm", value);
            }
        }
        add("cover, area judged", "mm2", cover.area_judged_mm2);
    }
    if let Some(border) = &impression.border {
        add("border length", "mm", border.length_mm);
        for figure in [
            StationFigure::Height,
            StationFigure::Thickness,
            StationFigure::Radius,
        ] {
            rows.extend(by_part(border, figure));
        }
    }
    rows
}

/// The limits of a figure by its name; those of a part of the border are its zone's. Of a
/// flange, 0 as the least is no limit.
fn limits_of(name: &str, protocol: &ProtocolResult) -> FigureLimits {
    let [figure, zone] = name.split_once(", ").map_or([name, ""], |(a, b)| [a, b]);
    let zone = zone.split(", ").next().unwrap_or_default();
    let value = |key: LimitKey| {
        let limit = protocol.limits.get(key.name())?;
        let value = *limit.zones.get(zone).unwrap_or(&limit.value);
        (value > 0.0).then_some(value)
    };
    let is = |of: StationFigure| station_figure(of).name == figure;
    let (least, most) = if name == "cover, least" {
        (Some(LimitKey::ThinCover), None)
    } else if is(StationFigure::Height) {
        (Some(LimitKey::FlangeHeight), None)
    } else if is(StationFigure::Thickness) {
        (Some(LimitKey::FlangeThin), Some(LimitKey::FlangeThick))
    } else if is(StationFigure::Radius) {
        (Some(LimitKey::BorderRadius), None)
    } else {
        (None, None)
    };
    FigureLimits {
        least: least.and_then(value),
        most: most.and_then(value),
    }
}

/// The median of a figure of the stations over each part of the arch.
fn by_part(border: &Border, figure: StationFigure) -> Vec<Row> {
    let name = station_figure(figure).name;
    let mut parts: BTreeMap<(&str, &str), Vec<f64>> = BTreeMap::new();
    for station in &border.stations {
        let side = match station.side {
            Some(Side::Right) => ", patient's right",
            Some(Side::Left) => ", patient's left",
            None => "",
        };
        let values = parts.entry((&station.zone, side)).or_default();
        values.extend(station.figure(figure).mm);
    }
    let median = |values: &[f64]| statistics::quantile(values, 0.5);
    parts
        .iter()
        .filter_map(|((zone, side), values)| {
            Some((format!("{name}, {zone}{side}"), "mm", median(values)?))
        })
        .collect()
}

/// The figures of a result folder; `None` where it holds no result.
///
/// # Errors
/// When its result cannot be read.
pub fn kept_figures(folder: &Path) -> Result<Option<Vec<NamedFigure>>, ReadResultError> {
    if !folder.join(RESULT_FILE).is_file() {
        return Ok(None);
    }
    Ok(Some(comparable_figures(&read_result(folder)?)))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::testing::{checked_with_border, checked_without_cover};
    use crate::write_all;
    use messages::Language;
    use study::gauge::study_of_folder;

    #[test]
    fn figures_are_those_of_the_result_and_none_is_made_up() {
        let result = CaseResult::of(&checked_with_border());
        let found = comparable_figures(&result);
        let value = |name: &str| found.iter().find(|f| f.name == name).map(|f| f.value);
        let border = result.impressions[0].border.as_ref().unwrap();
        assert_eq!(value("border length"), Some(border.length_mm));
        let heights: Vec<f64> = (border.stations.iter())
            .filter(|s| s.zone == "buccal flange" && s.side == Some(Side::Left))
            .filter_map(|s| s.flange_height_mm)
            .collect();
        assert!(!heights.is_empty());
        assert_eq!(
            value("flange height, buccal flange, patient's left"),
            statistics::quantile(&heights, 0.5)
        );
        let limits = |name: &str| found.iter().find(|f| f.name == name).map(|f| f.limits);
        let of = |key: LimitKey| Some(result.protocol.limits[key.name()].value);
        let thickness = limits("flange thickness, buccal flange, patient's left").unwrap();
        assert_eq!(thickness.least, of(LimitKey::FlangeThin));
        assert_eq!(thickness.most, of(LimitKey::FlangeThick));
        assert_eq!(limits("border length"), Some(FigureLimits::default()));
        let bare = comparable_figures(&CaseResult::of(&checked_without_cover()));
        assert!(bare.iter().all(|f| !f.name.starts_with("cover")));
    }

    #[test]
    fn every_figure_of_kept_results_is_studied() {
        let folder = tempfile::tempdir().unwrap();
        let checked = checked_with_border();
        for (number, place) in [
            "A/1/1", "A/1/2", "A/2/1", "A/2/2", "B/1/1", "B/1/2", "B/2/1", "B/2/2",
        ]
        .into_iter()
        .enumerate()
        {
            let mut result = CaseResult::of(&checked);
            let border = result.impressions[0].border.as_mut().unwrap();
            border.length_mm += 0.1 * number as f64;
            result.files.clear();
            write_all(
                &checked,
                &result,
                &folder.path().join(place),
                Language::English,
            )
            .unwrap();
        }
        let kept = |repeat: &Path| kept_figures(repeat).map_err(|why| why.message());
        let found = study_of_folder(folder.path(), kept).unwrap();
        let length = (found.studies.iter()).find(|s| s.figure == "border length");
        // 100.0, .1 | .2, .3 | .4, .5 | .6, .7: repeats differ by 0.1 everywhere.
        let repeats = length.unwrap().by_variance.error;
        assert!((repeats.squares - 4.0 * 0.1 * 0.1 / 2.0).abs() < 1e-9);
        assert_eq!(length.unwrap().unit, Some("mm"));
        let same = (found.not_studied.iter()).find(|n| n.figure == "scanned area");
        assert!(same.unwrap().why.key() == "study-no-variation");

        std::fs::write(folder.path().join("A/1/notes.txt"), "x").unwrap();
        let refusal = study_of_folder(folder.path(), kept)
            .unwrap_err()
            .to_string();
        assert!(
            refusal.contains("notes.txt: is neither a scan"),
            "{refusal}"
        );
        std::fs::remove_file(folder.path().join("A/1/notes.txt")).unwrap();
        std::fs::remove_dir_all(folder.path().join("B/2/2")).unwrap();
        let refusal = study_of_folder(folder.path(), kept)
            .unwrap_err()
            .to_string();
        assert!(
            refusal.contains("\"B\" read part \"2\" 1 times"),
            "{refusal}"
        );
    }
}
