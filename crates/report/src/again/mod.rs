//! A result judged again by other limits, without measuring again.
//!
//! A check is judged again only where its figures stand in the result and where, by the
//! limits that the result was judged by, they lead to just the findings that the result
//! holds. What heeds no limit that changed stays as it is. Everything else must be measured
//! again, and says so: it never counts as passed. Figures of a result are rounded to
//! 0.0001 mm, and so is what is decided here.

mod evidence;

use crate::result::{CaseResult, Cause, Finding, ProtocolResult, Verdict};
use crate::text::rounding::figure;
use judge::again::{
    JUDGED_AGAIN, JudgedAgain, MEASURED_BY, judge_again as judge_figures, limits_of,
};
use judge::{Case, Check, Evidence, LimitKey, Protocol, ScanFacts, Severity, UnitReading};
use messages::Message;
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use std::collections::{BTreeMap, BTreeSet};

/// What becomes of a case by other limits.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct CaseAgain {
    /// Pseudonym of the case.
    pub case: String,
    /// Verdict in the result.
    pub was: Verdict,
    /// Verdict by the other limits; `null` where it hangs on what must be measured again.
    pub now: Option<Verdict>,
    /// Codes of the checks that heed a changed limit and were judged again.
    pub judged_again: Vec<String>,
    /// Codes of the checks that heed a changed limit and must be measured again.
    pub measure_again: Vec<String>,
    /// Findings of the checks that were judged again.
    pub findings: Vec<FindingAgain>,
    /// Checks whose findings on an impression changed in number or severity.
    pub changes: Vec<CheckChange>,
}

/// A finding by other limits.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct FindingAgain {
    /// Number of the impression in the case, from 0.
    pub impression: u64,
    /// Code of the check.
    pub check: String,
    /// `fail`, `borderline` or `note`.
    pub severity: String,
    /// Part of the arch.
    pub zone: Option<String>,
    /// The figure.
    pub measured: Option<f64>,
    /// The limit.
    pub limit: Option<f64>,
}

/// Findings of one check on one impression, before and now.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
pub struct CheckChange {
    /// Number of the impression in the case, from 0.
    pub impression: u64,
    /// Code of the check.
    pub check: String,
    /// How many findings of each severity there were.
    pub was: BTreeMap<String, u64>,
    /// How many there are.
    pub now: BTreeMap<String, u64>,
}

/// One finding as far as a verdict asks after it.
struct Weighed {
    impression: Option<usize>,
    finding: judge::Finding,
}

/// Judges a result again by other limits.
#[must_use]
pub fn judge_again(result: &CaseResult, protocol: &Protocol) -> CaseAgain {
    let before = protocol_of(&result.protocol);
    let changed = before.as_ref().map_or_else(
        // Limits that this version does not know: everything may have changed.
        || LimitKey::ALL.into_iter().collect(),
        |before| changed(before, protocol),
    );
    let again = Again {
        result,
        case: evidence::case(result),
        changed,
        is_other_scanner: is_other_scanner(result, protocol),
        before,
        protocol,
    };
    again.whole()
}

/// Whether every uncertainty would be another one: by the scanner of the other protocol,
/// which counts where the case names none.
fn is_other_scanner(result: &CaseResult, protocol: &Protocol) -> bool {
    let scanner = &result.scanner;
    !scanner.by_case && scanner.length_uncertainty_mm != protocol.scanner().length_uncertainty_mm
}

/// The limits that differ in value, zones or level.
fn changed(before: &Protocol, now: &Protocol) -> BTreeSet<LimitKey> {
    let pairs = before.limits().zip(now.limits());
    pairs
        .filter(|((_, a), (_, b))| (a.value, a.level) != (b.value, b.level) || a.zones != b.zones)
        .map(|((key, _), _)| key)
        .collect()
}

/// The protocol that a result was judged by; `None` where it holds a limit that this
/// version does not know.
fn protocol_of(held: &ProtocolResult) -> Option<Protocol> {
    let mut text = String::new();
    for (name, limit) in &held.limits {
        let level = serde_json::to_string(&limit.level).ok()?;
        let zones = limit.zones.iter();
        let zones: Vec<String> = zones
            .map(|(zone, value)| format!("{} = {value:?}", zone.replace(' ', "_")))
            .collect();
        text += &format!(
            "[limits.{name}]\nvalue = {:?}\nlevel = {level}\n",
            limit.value
        );
        if !zones.is_empty() {
            text += &format!("zones = {{ {} }}\n", zones.join(", "));
        }
    }
    let whole = held.limits.len() == LimitKey::ALL.len();
    Protocol::from_text(&text).ok().filter(|_| whole)
}

struct Again<'a> {
    result: &'a CaseResult,
    case: Case,
    changed: BTreeSet<LimitKey>,
    is_other_scanner: bool,
    before: Option<Protocol>,
    protocol: &'a Protocol,
}

impl Again<'_> {
    fn whole(&self) -> CaseAgain {
        let mut kept = Vec::new();
        let mut measure_again = BTreeSet::new();
        let mut judged = BTreeSet::new();
        let mut findings = Vec::new();
        let mut changes = Vec::new();
        for number in 0..self.result.impressions.len() {
            let of_impression = self.on_impression(number);
            for &check in &of_impression.claimed {
                changes.extend(self.change(number, check, &of_impression.found));
            }
            let found = of_impression.found.iter();
            findings.extend(found.map(|found| again(number as u64, found)));
            judged.extend(of_impression.claimed.iter().map(|check| check.code()));
            measure_again.extend(of_impression.open.iter().map(|check| check.code()));
            kept.extend(self.unchanged(Some(number), &of_impression));
            kept.extend(of_impression.found.into_iter().map(|finding| Weighed {
                impression: Some(number),
                finding,
            }));
        }
        let of_case = OfImpression {
            open: self.open_on_case(),
            ..OfImpression::default()
        };
        kept.extend(self.unchanged(None, &of_case));
        measure_again.extend(of_case.open.iter().map(|check| check.code()));
        let verdict = self.verdict(&kept);
        let is_sure = measure_again.is_empty() || verdict == Verdict::Retake;
        let codes = |codes: BTreeSet<&str>| codes.into_iter().map(str::to_owned).collect();
        CaseAgain {
            case: self.result.case.clone(),
            was: self.result.verdict,
            now: is_sure.then_some(verdict),
            judged_again: codes(judged),
            measure_again: codes(measure_again),
            findings,
            changes,
        }
    }

    /// Whether a check heeds a limit that changed.
    fn is_touched(&self, check: Check) -> bool {
        let mut keys = limits_of(check).iter();
        self.is_other_scanner || keys.any(|key| self.changed.contains(key))
    }

    /// Whether the impression is of the kind that a check is for.
    fn has_something_to_judge(&self, number: usize, check: Check) -> bool {
        let one = &self.result.impressions[number];
        match check {
            Check::WashOpen | Check::WashThickness | Check::WashUneven | Check::BorderChange => {
                self.case.first_pass_of(number).is_some()
            }
            Check::ImpressionAge => one.hours_since_taken.is_some(),
            _ => true,
        }
    }

    /// Whether the figures of a check were measured by a limit that changed.
    fn is_measured_otherwise(&self, check: Check) -> bool {
        let of_border_alone = [Check::TrayAtBorder, Check::BorderOverlap].contains(&check);
        let keys = limits_of(check).iter();
        let mut keys = keys.filter(|key| MEASURED_BY.contains(key) && self.changed.contains(key));
        self.is_other_scanner || keys.next().is_some() && !of_border_alone
    }

    fn old(&self, number: Option<usize>) -> impl Iterator<Item = &Finding> {
        let number = number.map(|number| number as u64);
        let findings = self.result.findings.iter();
        findings.filter(move |finding| finding.impression == number)
    }

    fn on_impression(&self, number: usize) -> OfImpression {
        let one = &self.result.impressions[number];
        let on_impression = |check: &&Check| !ON_CASE.contains(check);
        let touched = Check::ALL.iter().filter(on_impression);
        let touched = (touched.copied())
            .filter(|&check| self.is_touched(check) && self.has_something_to_judge(number, check));
        if one.superseded || self.old(Some(number)).any(|f| f.cause == Cause::Question) {
            // The wash decides, or a question does: of the rest nothing bears on the verdict.
            let bears = [Check::TissueStop, Check::OrientationUnclear];
            return OfImpression {
                open: touched.filter(|check| bears.contains(check)).collect(),
                ..OfImpression::default()
            };
        }
        let (before, now) = self.judged(number).unzip();
        let mut of_impression = OfImpression::default();
        for check in touched {
            let entries = one.not_judged.iter();
            let mut entries = entries.filter(|entry| names(&entry.check, check));
            let was_left_out = entries.next().is_some();
            let is_made = |judged: &Option<JudgedAgain>| {
                judged
                    .as_ref()
                    .is_some_and(|judged| judged.made.contains(&check))
            };
            let is_claimed = JUDGED_AGAIN.contains(&check)
                && !self.is_measured_otherwise(check)
                && is_made(&before)
                && self.is_reproduced(number, check, before.as_ref());
            if is_claimed {
                of_impression.claimed.push(check);
            } else if !was_left_out || is_made(&before) {
                of_impression.open.push(check);
            }
        }
        let found = now.map_or_else(Vec::new, |now: JudgedAgain| now.findings);
        of_impression.found = found;
        let claimed = &of_impression.claimed;
        of_impression.found.retain(|f| claimed.contains(&f.check));
        of_impression
    }

    /// What the checks find by the limits of the result, and by the others.
    fn judged(&self, number: usize) -> Option<(JudgedAgain, JudgedAgain)> {
        let rebuilt = evidence::rebuilt(self.result, number, &self.case)?;
        let evidence = Evidence {
            scanned: &rebuilt.scanned,
            pair: rebuilt.pair.as_ref(),
            scan: ScanFacts {
                sha256: String::new(),
                unit: UnitReading::Assumed,
                questions: Vec::new(),
            },
            tray: None,
            relief: None,
            transit: None,
            joints: &[],
        };
        let by = |protocol| judge_figures(&self.case, number, &evidence, protocol);
        Some((by(self.before.as_ref()?), by(self.protocol)))
    }

    /// Whether a check comes to just those findings that the result holds; a figure made of
    /// rounded ones may differ in their last digit.
    fn is_reproduced(&self, number: usize, check: Check, before: Option<&JudgedAgain>) -> bool {
        let held = self.old(Some(number)).filter(|f| f.check == check.code());
        let held = held.map(|f| {
            let words = format!("{} {:?}", severity(f).name(), f.zone);
            (words, [f.limit, f.measured])
        });
        let found = before.iter().flat_map(|judged| &judged.findings);
        let found = found.filter(|f| f.check == check).map(|f| {
            let of = again(number as u64, f);
            let words = format!("{} {:?}", of.severity, of.zone);
            (words, [of.limit, of.measured])
        });
        is_alike(held.collect(), found.collect())
    }

    /// What the result found and no changed limit touches.
    fn unchanged(&self, number: Option<usize>, of: &OfImpression) -> Vec<Weighed> {
        let held = self.old(number);
        let stays = |check: &Check| !of.claimed.contains(check) && !of.open.contains(check);
        held.filter_map(|finding| {
            let check: Check = finding.check.parse().ok().filter(stays)?;
            Some(Weighed {
                impression: number,
                finding: weighed(finding, check),
            })
        })
        .collect()
    }

    /// Checks on the case that heed a changed limit: none of their figures is judged again.
    fn open_on_case(&self) -> Vec<Check> {
        let is_left_out = |check: Check| {
            let mut entries = self.result.not_judged.iter();
            entries.any(|entry| names(&entry.check, check))
        };
        let touched = ON_CASE.into_iter().filter(|&check| self.is_touched(check));
        touched.filter(|&check| !is_left_out(check)).collect()
    }

    fn change(&self, number: usize, check: Check, found: &[judge::Finding]) -> Option<CheckChange> {
        let mut was = BTreeMap::new();
        for finding in self.old(Some(number)).filter(|f| f.check == check.code()) {
            *was.entry(severity(finding).name().to_owned()).or_default() += 1;
        }
        let mut now = BTreeMap::new();
        for finding in found.iter().filter(|f| f.check == check) {
            *now.entry(finding.severity.name().to_owned()).or_default() += 1;
        }
        (was != now).then(|| CheckChange {
            impression: number as u64,
            check: check.code().to_owned(),
            was,
            now,
        })
    }

    /// The most pressing of what is to become of the impressions and of the case itself, as
    /// in judging.
    fn verdict(&self, kept: &[Weighed]) -> Verdict {
        let numbers = (0..self.result.impressions.len()).map(Some).chain([None]);
        let verdicts = numbers.map(|about| {
            let own = kept.iter().filter(move |one| one.impression == about);
            judge::Verdict::from_findings(own.map(|one| &one.finding))
        });
        verdicts.min().map_or(Verdict::Undecided, Into::into)
    }
}

/// Words of a finding, and its limit and figure.
type Worded = (String, [Option<f64>; 2]);

/// Whether two lists hold the same findings, whatever their order.
fn is_alike(mut held: Vec<Worded>, mut found: Vec<Worded>) -> bool {
    const LAST_DIGITS: f64 = 2.1e-4;
    let order = |a: &Worded, b: &Worded| {
        let by_words = a.0.cmp(&b.0);
        by_words.then_with(|| a.1.partial_cmp(&b.1).unwrap_or(std::cmp::Ordering::Equal))
    };
    held.sort_by(order);
    found.sort_by(order);
    let is_near = |a: &Option<f64>, b: &Option<f64>| match (a, b) {
        (Some(a), Some(b)) => (a - b).abs() <= LAST_DIGITS,
        (a, b) => a == b,
    };
    held.len() == found.len()
        && held
            .iter()
            .zip(&found)
            .all(|(a, b)| a.0 == b.0 && a.1.iter().zip(&b.1).all(|(a, b)| is_near(a, b)))
}

#[derive(Default)]
struct OfImpression {
    /// Checks that were judged again.
    claimed: Vec<Check>,
    /// Checks that heed a changed limit and must be measured again.
    open: Vec<Check>,
    /// What those that were judged again found.
    found: Vec<judge::Finding>,
}

/// Checks on the case as a whole.
const ON_CASE: [Check; 9] = [
    Check::InterarchSpace,
    Check::RidgeAngle,
    Check::JawRelationNotJudged,
    Check::InterocclusalDistance,
    Check::WashMissing,
    Check::LipLength,
    Check::ParcelIncomplete,
    Check::PrescriptionMissing,
    Check::DisinfectionNotStated,
];

/// Whether an entry of what was not judged speaks of a check, by its code or by the part
/// that the check needs.
fn names(entry: &str, check: Check) -> bool {
    let part = match check {
        Check::InterarchSpace | Check::RidgeAngle => "jaw-relation",
        Check::ParcelIncomplete | Check::PrescriptionMissing | Check::DisinfectionNotStated => {
            "parcel"
        }
        Check::ScanEnds
        | Check::FlangeHeight
        | Check::UnderExtension
        | Check::BorderAsymmetry
        | Check::FlangeThickness
        | Check::BorderRadius
        | Check::BorderOverlap
        | Check::TrayAtBorder
        | Check::BorderChange => "border",
        _ => "",
    };
    entry == check.code() || entry == part
}

fn again(impression: u64, found: &judge::Finding) -> FindingAgain {
    let value = found.figure.as_ref();
    FindingAgain {
        impression,
        check: found.check.code().to_owned(),
        severity: found.severity.name().to_owned(),
        zone: (found.place.as_ref()).map(|place| judge::words::zone(place.zone).to_owned()),
        measured: value.map(|value| figure(value.measured)),
        limit: value.map(|value| figure(value.limit())),
    }
}

fn severity(finding: &Finding) -> Severity {
    match finding.severity {
        crate::result::Severity::Fail => Severity::Fail,
        crate::result::Severity::Borderline => Severity::Borderline,
        crate::result::Severity::Note => Severity::Note,
    }
}

/// A finding of a result as far as a verdict asks after it.
fn weighed(finding: &Finding, check: Check) -> judge::Finding {
    judge::Finding {
        severity: severity(finding),
        check,
        impression: None,
        arch: None,
        place: None,
        figure: finding
            .measured
            .zip(finding.limit)
            .map(|(measured, limit)| judge::Figure {
                measured,
                uncertainty: finding.uncertainty,
                bound: judge::Bound::AtMost(limit),
                unit: String::new(),
            }),
        spot: None,
        stretch: None,
        defect: None,
        landmark: None,
        is_held_back: finding.cause == Cause::HeldBack,
        instruction: Message::default(),
    }
}
