//! The figures of a result that can be compared between results, each by name.

use crate::result::{Border, CaseResult, ImpressionResult, Side, Station};
use std::collections::BTreeMap;

/// A figure of a result.
#[derive(Debug, Clone, PartialEq)]
pub(crate) struct NamedFigure {
    /// What it is: the same in every result that has it.
    pub name: String,
    /// Its unit.
    pub unit: &'static str,
    /// The figure itself.
    pub value: f64,
}

/// The figures of a result: cover, border and areas; flange height, thickness
/// and border radius as the median over each part of the arch.
pub(crate) fn figures(result: &CaseResult) -> Vec<NamedFigure> {
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
        rows.extend(by_part(border, "flange height", |s| s.flange_height_mm));
        rows.extend(by_part(border, "flange thickness", |s| {
            s.flange_thickness_mm
        }));
        rows.extend(by_part(border, "border radius", |s| s.border_radius_mm));
    }
    rows
}

/// The median of a figure of the stations over each part of the arch.
fn by_part(border: &Border, name: &str, figure: fn(&Station) -> Option<f64>) -> Vec<Row> {
    let mut parts: BTreeMap<(&str, &str), Vec<f64>> = BTreeMap::new();
    for station in &border.stations {
        let side = match station.side {
            Some(Side::Right) => ", patient's right",
            Some(Side::Left) => ", patient's left",
            None => "",
        };
        let values = parts.entry((&station.zone, side)).or_default();
        values.extend(figure(station));
    }
    let median = |values: &[f64]| statistics::quantile(values, 0.5);
    parts
        .iter()
        .filter_map(|((zone, side), values)| {
            Some((format!("{name}, {zone}{side}"), "mm", median(values)?))
        })
        .collect()
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::result::assemble;
    use crate::testing::{checked_with_border, checked_without_cover};

    #[test]
    fn figures_are_those_of_the_result_and_none_is_made_up() {
        let result = assemble(&checked_with_border());
        let found = figures(&result);
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
        let bare = figures(&assemble(&checked_without_cover()));
        assert!(bare.iter().all(|f| !f.name.starts_with("cover")));
    }
}
