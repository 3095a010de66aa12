//! Protocol files: reading, and refusing by line what makes no sense.

use super::limit::ZoneKey;
use super::possible::impossible;
use super::{Limit, LimitKey, Protocol};
use crate::located::{self, Located, TomlFault, TomlFileError};
use crate::scanner::{ScannerEntry, ScannerProblem};
use crate::severity::Level;
use crate::toml_problem::TomlProblem;
use measure::Zone;
use messages::{Message, message};
use serde::Deserialize;
use std::collections::BTreeMap;
use std::path::{Path, PathBuf};
use thiserror::Error;
use toml::Spanned;

/// Why a protocol file cannot be used.
pub type ProtocolError = TomlFileError<ProtocolFault>;

/// What is wrong in a protocol text, and in which line.
pub type ProtocolProblem = Located<ProtocolFault>;

/// What can be wrong in a protocol text.
#[derive(Debug, Clone, PartialEq, Error)]
#[error("{}", self.message())]
#[allow(missing_docs, reason = "each variant's message says what it is")]
pub enum ProtocolFault {
    Toml(TomlProblem),
    Scanner(ScannerProblem),
    Unit {
        key: &'static str,
        own: String,
        given: String,
    },
    Zones {
        key: &'static str,
    },
    Impossible {
        key: &'static str,
        value: f64,
        why: Message,
    },
}

impl ProtocolFault {
    /// What is wrong, as a message of the catalogue.
    #[must_use]
    pub fn message(&self) -> Message {
        match self {
            Self::Toml(problem) => problem.message(),
            Self::Scanner(problem) => problem.message(),
            Self::Unit { key, own, given } => message!(
                "limit-unit-other",
                key = *key,
                own = own.as_str(),
                given = given.as_str()
            ),
            Self::Zones { key } => message!("limit-without-zones", key = *key),
            Self::Impossible { key, value, why } => message!(
                "limit-impossible",
                key = *key,
                value = value.to_string(),
                why = why.clone()
            ),
        }
    }
}

impl TomlFault for ProtocolFault {
    fn wanted() -> Message {
        message!("wanted-protocol")
    }

    fn message(&self) -> Message {
        self.message()
    }
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct ProtocolFile {
    name: Option<String>,
    scanner: Option<Spanned<ScannerEntry>>,
    trays: Option<PathBuf>,
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
    criterion: Option<String>,
    criterion_known: Option<String>,
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

    fn stated_criterion(&self) -> Option<String> {
        let criterion = self.criterion.as_ref()?;
        Some(match &self.criterion_known {
            Some(known) => format!("{criterion} ({known})"),
            None => criterion.clone(),
        })
    }

    fn stated_source(&self) -> Option<String> {
        match (&self.source, &self.known, &self.basis) {
            (Some(source), Some(known), _) => Some(format!("{source} ({known})")),
            (Some(source), None, _) => Some(source.clone()),
            (None, _, basis) => basis.clone(),
        }
    }
}

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
        let folder = path.parent().unwrap_or(Path::new(""));
        located::read(path, |text| overlay(&Self::default(), text, folder))
    }

    /// The default protocol with the values of a protocol text laid over it; the path of
    /// a scanner file is taken from the working folder.
    ///
    /// # Errors
    /// As for [`Protocol::from_file`], without the file.
    pub fn from_text(text: &str) -> Result<Self, ProtocolProblem> {
        overlay(&Self::default(), text, Path::new(""))
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
                criterion: entry.stated_criterion(),
                source: entry.stated_source().expect(PROOF),
                value: *entry.value.as_ref().expect(PROOF).get_ref(),
                zones: entry.zone_values().collect(),
                unit: entry.unit.as_ref().expect(PROOF).get_ref().clone(),
                level: entry.level.expect(PROOF),
            }
        })
        .collect();
    let scanner = file.scanner.expect(PROOF);
    let scanner = ScannerEntry::scanner(&scanner, "", Path::new(""), ProtocolFault::Scanner);
    Protocol {
        name: file.name.expect(PROOF),
        scanner: scanner.expect(PROOF),
        trays: None,
        limits,
    }
}

/// `base` with the values that `text` states laid over it; paths are taken from a folder.
fn overlay(base: &Protocol, text: &str, folder: &Path) -> Result<Protocol, ProtocolProblem> {
    let file: ProtocolFile = located::from_toml(text, ProtocolFault::Toml)?;
    let mut protocol = base.clone();
    protocol.name = file
        .name
        .unwrap_or_else(|| format!("{} with changes", base.name));
    if let Some(entry) = &file.scanner {
        protocol.scanner = ScannerEntry::scanner(entry, text, folder, ProtocolFault::Scanner)?;
    }
    if let Some(trays) = &file.trays {
        protocol.trays = Some(folder.join(trays));
    }
    for (key, entry) in &file.limits {
        let limit = &mut protocol.limits[*key as usize];
        if let Some(unit) = &entry.unit
            && *unit.get_ref() != limit.unit
        {
            return Err(located::at(
                text,
                unit.span().start,
                ProtocolFault::Unit {
                    key: key.name(),
                    own: limit.unit.clone(),
                    given: unit.get_ref().clone(),
                },
            ));
        }
        if let Some(zones) = &entry.zones
            && !key.differs_by_zone()
        {
            let fault = ProtocolFault::Zones { key: key.name() };
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
        if let Some(criterion) = entry.stated_criterion() {
            limit.criterion = Some(criterion);
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
    let trays = protocol.trays.as_deref().map_or_else(String::new, |trays| {
        format!("trays = {}\n", quoted(&trays.to_string_lossy()))
    });
    let mut text = format!(
        "name = {}\n{trays}\n[scanner]\n{}",
        quoted(&protocol.name),
        protocol.scanner.to_toml()
    );
    for (key, limit) in protocol.limits() {
        let level = match limit.level {
            Level::Fail => "fail",
            Level::Undecided => "undecided",
            Level::Note => "note",
        };
        text.push_str(&format!(
            "\n[limits.{}]\nvalue = {:?}\n{}unit = {}\nlevel = \"{level}\"\n{}source = {}\n",
            key.name(),
            limit.value,
            written_zones(limit),
            quoted(&limit.unit),
            (limit.criterion.as_ref()).map_or_else(String::new, |text| format!(
                "criterion = {}\n",
                quoted(text)
            )),
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
                Some(unit @ ("mm" | "mm2" | "min" | "h" | "deg")) => unit,
                _ => "1",
            };
            assert_eq!(limit.unit, by_name, "{}", key.name());
        }
    }

    #[test]
    fn a_limit_whose_criterion_was_not_read_fails_nothing() {
        for (key, limit) in Protocol::default().limits() {
            let was_read = |text: &String| text.ends_with("(read)");
            if limit.level == Level::Fail {
                assert!(
                    limit.criterion.as_ref().is_some_and(was_read),
                    "{}",
                    key.name()
                );
            }
        }
    }

    #[test]
    fn a_number_that_nobody_read_says_so_whatever_its_criterion() {
        // Rubrics give criteria and no figures: FACTS rows MAT-08, MAT-09, BORDER-08.
        for (key, limit) in Protocol::default().limits() {
            if limit.criterion.is_some() {
                let is_ours = ["common practice, no source", "by definition"]
                    .iter()
                    .any(|words| limit.source.starts_with(words));
                assert!(is_ours, "{}: {}", key.name(), limit.source);
            }
            for rubric in ["MAT-08", "MAT-09", "BORDER-08"] {
                assert!(!limit.source.contains(rubric), "{}", key.name());
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
        let text = "name = \"o\\\"urs\"\ntrays = \"shelf\"\n[limits]\nthin_cover_mm = { value = 2, level = \"fail\" }\n";
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
