//! Protocol files: reading, and refusing by line what makes no sense.

use super::limit::ZoneKey;
use super::{Limit, LimitKey, Protocol};
use crate::located::{self, Located, TomlFault, TomlFileError};
use crate::severity::Level;
use measure::{COARSEST_EDGE_MM, Zone};
use serde::Deserialize;
use std::collections::BTreeMap;
use std::path::Path;
use thiserror::Error;
use toml::Spanned;

/// Why a protocol file cannot be used.
pub type ProtocolError = TomlFileError<ProtocolFault>;

/// What is wrong in a protocol text, and in which line.
pub type ProtocolProblem = Located<ProtocolFault>;

/// What can be wrong in a protocol text.
#[derive(Debug, Clone, PartialEq, Error)]
#[allow(missing_docs, reason = "each variant's message says what it is")]
pub enum ProtocolFault {
    #[error("{0}")]
    Toml(String),
    #[error("{key} = {value} is not possible: {why}")]
    Impossible {
        key: &'static str,
        value: f64,
        why: String,
    },
}

impl TomlFault for ProtocolFault {
    const WANTED: &'static str = "the path of a protocol file";
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct ProtocolFile {
    name: Option<String>,
    #[serde(default)]
    limits: BTreeMap<LimitKey, LimitEntry>,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct LimitEntry {
    value: Option<Spanned<f64>>,
    unit: Option<Spanned<String>>,
    zones: Option<Spanned<BTreeMap<ZoneKey, Spanned<f64>>>>,
    level: Option<Level>,
    source: Option<String>,
    known: Option<String>,
    basis: Option<String>,
}

impl LimitEntry {
    /// Every value that the entry states, with its zone.
    fn stated(&self) -> impl Iterator<Item = (Option<Zone>, &Spanned<f64>)> {
        let zones = self.zones.iter().flat_map(|zones| zones.get_ref());
        let of_zones = zones.map(|(zone, value)| (Some(zone.0), value));
        self.value.iter().map(|value| (None, value)).chain(of_zones)
    }

    fn zone_values(&self) -> impl Iterator<Item = (Zone, f64)> {
        let zones = self.zones.iter().flat_map(|zones| zones.get_ref());
        zones.map(|(zone, value)| (zone.0, *value.get_ref()))
    }

    fn stated_source(&self) -> Option<String> {
        match (&self.source, &self.known, &self.basis) {
            (Some(source), Some(known), _) => Some(format!("{source} ({known})")),
            (Some(source), None, _) => Some(source.clone()),
            (None, _, basis) => basis.clone(),
        }
    }
}

/// Flange thickness may be taken at these depths below the border, mm.
const FLANGE_DEPTH_MM: std::ops::RangeInclusive<f64> = 0.5..=10.0;

impl Default for Protocol {
    fn default() -> Self {
        embedded()
    }
}

impl Protocol {
    /// The default protocol with the values of a protocol file laid over it.
    ///
    /// # Errors
    /// When the file cannot be read, is not TOML, holds an unknown key or a
    /// value of a wrong kind, or a limit that is impossible by itself or beside
    /// another; the error names file and line.
    pub fn from_file(path: &Path) -> Result<Self, ProtocolError> {
        located::read(path, Self::from_text)
    }

    /// The default protocol with the values of a protocol text laid over it.
    ///
    /// # Errors
    /// As for [`Protocol::from_file`], without the file.
    pub fn from_text(text: &str) -> Result<Self, ProtocolProblem> {
        overlay(&Self::default(), text)
    }

    /// The whole protocol as a protocol file.
    #[must_use]
    pub fn to_toml(&self) -> String {
        written(self)
    }
}

/// The default protocol.
fn embedded() -> Protocol {
    const PROOF: &str = "the embedded protocol is whole, which a test of this file shows";
    let file: ProtocolFile = toml::from_str(include_str!("default.toml")).expect(PROOF);
    let limits = LimitKey::ALL
        .into_iter()
        .map(|key| {
            let entry = file.limits.get(&key).expect(PROOF);
            Limit {
                source: entry.stated_source().expect(PROOF),
                value: *entry.value.as_ref().expect(PROOF).get_ref(),
                zones: entry.zone_values().collect(),
                unit: entry.unit.as_ref().expect(PROOF).get_ref().clone(),
                level: entry.level.expect(PROOF),
            }
        })
        .collect();
    Protocol {
        name: file.name.expect(PROOF),
        limits,
    }
}

/// `base` with the values that `text` states laid over it.
fn overlay(base: &Protocol, text: &str) -> Result<Protocol, ProtocolProblem> {
    let file: ProtocolFile = located::from_toml(text, ProtocolFault::Toml)?;
    let mut protocol = base.clone();
    protocol.name = file
        .name
        .unwrap_or_else(|| format!("{} with changes", base.name));
    for (key, entry) in &file.limits {
        let limit = &mut protocol.limits[*key as usize];
        if let Some(unit) = &entry.unit
            && *unit.get_ref() != limit.unit
        {
            return Err(located::at(
                text,
                unit.span().start,
                ProtocolFault::Toml(format!(
                    "the unit of {} is {}, not {}; convert the value",
                    key.name(),
                    limit.unit,
                    unit.get_ref()
                )),
            ));
        }
        if let Some(zones) = &entry.zones
            && !key.differs_by_zone()
        {
            let fault = ProtocolFault::Toml(format!("{} cannot differ by zone", key.name()));
            return Err(located::at(text, zones.span().start, fault));
        }
        if let Some(value) = &entry.value {
            limit.value = *value.get_ref();
            // A new value holds everywhere but in the zones named beside it.
            limit.zones.clear();
        }
        limit.zones.extend(entry.zone_values());
        if entry.value.is_some() || entry.zones.is_some() {
            limit.source = format!("set by the protocol \"{}\"", protocol.name);
        }
        if let Some(source) = entry.stated_source() {
            limit.source = source;
        }
        if let Some(level) = entry.level {
            limit.level = level;
        }
    }
    // Checked when all values stand, so that the order of lines cannot matter.
    for (key, entry) in &file.limits {
        for (zone, value) in entry.stated() {
            if let Some(why) = impossible(&protocol, *key, zone) {
                let fault = ProtocolFault::Impossible {
                    key: key.name(),
                    value: *value.get_ref(),
                    why,
                };
                return Err(located::at(text, value.span().start, fault));
            }
        }
    }
    Ok(protocol)
}

/// A protocol as the text of a protocol file.
fn written(protocol: &Protocol) -> String {
    let quoted = |text: &str| toml::Value::from(text).to_string();
    let mut text = format!("name = {}\n", quoted(&protocol.name));
    for (key, limit) in protocol.limits() {
        let level = match limit.level {
            Level::Fail => "fail",
            Level::Undecided => "undecided",
            Level::Note => "note",
        };
        text.push_str(&format!(
            "\n[limits.{}]\nvalue = {:?}\n{}unit = {}\nlevel = \"{level}\"\nsource = {}\n",
            key.name(),
            limit.value,
            written_zones(limit),
            quoted(&limit.unit),
            quoted(&limit.source),
        ));
    }
    text
}

/// The line with a limit's values of their own, where it has any.
fn written_zones(limit: &Limit) -> String {
    if limit.zones.is_empty() {
        return String::new();
    }
    let values: Vec<String> = limit
        .zones
        .iter()
        .map(|(&zone, value)| format!("{} = {value:?}", ZoneKey::name(zone)))
        .collect();
    format!("zones = {{ {} }}\n", values.join(", "))
}

/// Why the value of a limit (in a zone) makes no sense, by itself or beside
/// the others.
fn impossible(protocol: &Protocol, key: LimitKey, zone: Option<Zone>) -> Option<String> {
    use LimitKey::*;
    let of = |key| match zone {
        Some(zone) => protocol.limit(key).in_zone(zone),
        None => protocol.value(key),
    };
    let value = of(key);
    if !value.is_finite() {
        return Some("it must be a number".into());
    }
    if value < 0.0 {
        return Some("it cannot be negative".into());
    }
    let show_through = protocol.value(ShowThrough);
    let thin = protocol.value(ThinCover);
    let room = thin - show_through;
    match key {
        ShowThrough | ThinCover if thin <= show_through => Some(format!(
            "thin_cover_mm ({thin}) must be more than show_through_mm ({show_through})"
        )),
        // Else a place that might show through would not even be outlined as thin.
        ShowThrough | ThinCover | CoverUncertainty if protocol.value(CoverUncertainty) > room => {
            Some(format!(
                "cover_uncertainty_mm ({}) must not be more than thin_cover_mm less show_through_mm ({room:.3})",
                protocol.value(CoverUncertainty)
            ))
        }
        ShowThroughShare | DoubleLayer if value > 100.0 => Some("a share is at most 100 %".into()),
        Orientation if value > 1.0 => Some("a confidence is at most 1".into()),
        MedianEdge if value > COARSEST_EDGE_MM => Some(format!(
            "cover is not measured on triangles coarser than {COARSEST_EDGE_MM} mm"
        )),
        PrescriptionRequired | DisinfectionRequired | RecordRequired | BothArchesRequired
            if value != 0.0 && value != 1.0 =>
        {
            Some("it is 1 (required) or 0 (not required)".into())
        }
        InterocclusalLeast | InterocclusalMost
            if of(InterocclusalLeast) >= of(InterocclusalMost) =>
        {
            Some("the least interocclusal distance must be less than the most".into())
        }
        UsualInterocclusalLeast | UsualInterocclusalMost
            if of(UsualInterocclusalLeast) >= of(UsualInterocclusalMost) =>
        {
            Some("the least usual interocclusal distance must be less than the most".into())
        }
        LipLeast | LipMost if of(LipLeast) >= of(LipMost) => {
            Some("the least upper lip length must be less than the most".into())
        }
        DisinfectionLeast | DisinfectionMost if of(DisinfectionLeast) >= of(DisinfectionMost) => {
            Some("the least time of disinfection must be less than the most".into())
        }
        RidgeAngle if value > 90.0 => Some("the angle between two planes is at most 90°".into()),
        StopSize if value == 0.0 => Some("a tissue stop has a size".into()),
        FlangeDepth if !FLANGE_DEPTH_MM.contains(&value) => Some(format!(
            "flange thickness is taken {} to {} mm below the border",
            FLANGE_DEPTH_MM.start(),
            FLANGE_DEPTH_MM.end()
        )),
        FlangeThin | FlangeThick if of(FlangeThin) >= of(FlangeThick) => Some(format!(
            "least_flange_thickness_mm ({}) must be less than most_flange_thickness_mm ({})",
            of(FlangeThin),
            of(FlangeThick)
        )),
        OverlapLeast | OverlapMost if of(OverlapLeast) >= of(OverlapMost) => Some(format!(
            "least_border_overlap_mm ({}) must be less than most_border_overlap_mm ({})",
            of(OverlapLeast),
            of(OverlapMost)
        )),
        _ => None,
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use rstest::rstest;

    #[test]
    fn the_default_is_whole_and_possible() {
        let protocol = Protocol::default();
        for (key, limit) in protocol.limits() {
            let zones = limit.zones.keys().map(|&zone| Some(zone));
            for zone in zones.chain([None]) {
                assert_eq!(impossible(&protocol, key, zone), None, "{}", key.name());
            }
            assert!(limit.zones.is_empty() || key.differs_by_zone());
            assert!(!limit.source.is_empty());
            let by_name = match key.name().rsplit('_').next() {
                Some("percent") => "%",
                Some(unit @ ("mm" | "mm2" | "min" | "deg")) => unit,
                _ => "1",
            };
            assert_eq!(limit.unit, by_name, "{}", key.name());
        }
    }

    #[test]
    fn a_limit_without_a_source_fails_nothing_unless_it_only_picks_the_remedy() {
        for (key, limit) in Protocol::default().limits() {
            if limit.source.starts_with("common practice") && key != LimitKey::ShowThroughShare {
                assert_ne!(limit.level, Level::Fail, "{}", key.name());
            }
        }
    }

    #[test]
    fn single_values_are_laid_over_the_default() {
        let text = "name = \"ours\"\n[limits]\nthin_cover_mm = { value = 2, level = \"fail\" }\n";
        let protocol = Protocol::from_text(text).unwrap();
        assert_eq!(protocol.name(), "ours");
        assert_eq!(protocol.value(LimitKey::ThinCover), 2.0);
        assert_eq!(protocol.limit(LimitKey::ThinCover).level, Level::Fail);
        assert_eq!(
            protocol.limit(LimitKey::ThinCover).source,
            "set by the protocol \"ours\""
        );
        assert_eq!(
            protocol.limit(LimitKey::ShowThrough),
            Protocol::default().limit(LimitKey::ShowThrough)
        );
    }

    #[test]
    fn a_limit_can_differ_by_zone() {
        use measure::Zone::*;
        let text = "[limits.border_radius_mm]\nvalue = 0.8\nzones = { labial_flange = 0.6 }\n\
                    [limits.flange_height_mm.zones]\nbuccal_shelf = 1.5\n";
        let protocol = Protocol::from_text(text).unwrap();
        let radius = protocol.limit(LimitKey::BorderRadius);
        assert_eq!(radius.in_zone(LabialFlange), 0.6);
        assert_eq!(radius.in_zone(LingualFlange), 0.8);
        // Zones alone are laid over those of the default.
        let standard = Protocol::default();
        let [height, before] = [&protocol, &standard].map(|p| p.limit(LimitKey::FlangeHeight));
        assert_eq!(height.in_zone(BuccalShelf), 1.5);
        assert_eq!(height.in_zone(Tuberosity), before.in_zone(Tuberosity));
        assert_eq!(
            Protocol::from_text(&protocol.to_toml()).as_ref(),
            Ok(&protocol)
        );
        // A value alone holds everywhere.
        let even = Protocol::from_text("[limits.flange_height_mm]\nvalue = 4").unwrap();
        for zone in crate::words::ZONES {
            assert_eq!(even.limit(LimitKey::FlangeHeight).in_zone(zone), 4.0);
        }
    }

    #[test]
    fn what_is_shown_can_be_read_again() {
        let text =
            "name = \"o\\\"urs\"\n[limits]\nthin_cover_mm = { value = 2, level = \"fail\" }\n";
        let protocol = Protocol::from_text(text).unwrap();
        assert_eq!(Protocol::from_text(&protocol.to_toml()), Ok(protocol));
    }

    #[rstest]
    #[case::unknown_limit("[limits]\nthick_cover_mm = { value = 1 }", 2, "thick_cover_mm")]
    #[case::unknown_key("name = \"x\"\n\nlimit = 1", 3, "limit")]
    #[case::unknown_field("[limits.thin_cover_mm]\nvalue = 1.5\nvalu = 2", 3, "valu")]
    #[case::wrong_kind("[limits.thin_cover_mm]\nvalue = \"1.5\"", 2, "string")]
    #[case::wrong_level("[limits.thin_cover_mm]\nlevel = \"bad\"", 2, "bad")]
    #[case::wrong_unit("[limits.thin_cover_mm]\nvalue = 1\nunit = \"cm\"", 3, "cm")]
    #[case::not_toml("name = \"x\"\nlimits = = 2", 2, "")]
    #[case::negative("[limits.thin_cover_mm]\nvalue = -1.5", 2, "negative")]
    #[case::nan("[limits]\n[limits.show_through_mm]\nvalue = nan", 3, "number")]
    #[case::infinite("[limits.least_spot_area_mm2]\nvalue = inf", 2, "number")]
    #[case::thin_not_over("[limits.thin_cover_mm]\nvalue = 0.2", 2, "show_through_mm")]
    #[case::show_not_under("[limits.show_through_mm]\nvalue = 1.5", 2, "thin_cover_mm")]
    #[case::no_room("[limits.cover_uncertainty_mm]\nvalue = 0.9", 2, "0.800")]
    #[case::over_100("[limits.show_through_share_percent]\nvalue = 101", 2, "100")]
    #[case::sure("[limits.orientation_confidence]\nvalue = 1.1", 2, "1")]
    #[case::unknown_zone("[limits.flange_height_mm.zones]\nlabial = 3", 2, "labial_flange")]
    #[case::no_zones("[limits.thin_cover_mm]\nvalue = 1\nzones = { palate = 2 }", 3, "zone")]
    #[case::zone_nan("[limits.border_radius_mm.zones]\n\npalate = nan", 3, "number")]
    #[case::zone_word("[limits.border_radius_mm.zones]\npalate = \"1\"", 2, "string")]
    #[case::thick_thin("[limits.most_flange_thickness_mm]\nvalue = 1.5", 2, "least_flange")]
    #[case::zone_thick_thin(
        "[limits.most_flange_thickness_mm.zones]\npalate = 5\nlabial_flange = 2",
        3,
        "(2)"
    )]
    #[case::overlaps(
        "[limits.least_border_overlap_mm]\nvalue = 20",
        2,
        "most_border_overlap"
    )]
    #[case::no_depth("[limits.flange_depth_mm]\nvalue = 0", 2, "0.5 to 10 mm")]
    fn nonsense_is_refused_by_line(#[case] text: &str, #[case] line: usize, #[case] says: &str) {
        let problem = Protocol::from_text(text).unwrap_err();
        assert_eq!(problem.line, Some(line), "{problem}");
        let message = problem.to_string();
        assert!(message.contains(says), "{message}");
        assert!(!message.contains('\n'), "{message}");
    }
}
