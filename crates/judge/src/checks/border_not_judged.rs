//! `border-not-judged`: the border, or a figure of it, could not be measured.

use super::Check;
use super::along_border::on_flange;
use crate::finding::{Finding, NotJudged, Severity};
use crate::judging::Subject;
use crate::protocol::LimitKey;
use measure::{Border, Missing, NotMeasured, Reading, Station};
use std::collections::BTreeMap;

pub(super) fn judge(subject: &Subject<'_>) -> Vec<Finding> {
    let Err(why) = &subject.measurement().border else {
        return Vec::new();
    };
    let what_to_do = match why {
        NotMeasured::TooCoarse { .. } => "Export the scan at full resolution.",
        _ => "Scan the border all the way round, from the outer side too.",
    };
    let instruction = format!("The border was not judged: {why}. {what_to_do}");
    vec![subject.finding(Check::BorderNotJudged, Severity::Borderline, instruction)]
}

/// What of the border was not judged, and why.
pub(super) fn entries(subject: &Subject<'_>) -> Vec<NotJudged> {
    match &subject.measurement().border {
        Err(why) => vec![NotJudged {
            check: "border".into(),
            why: why.to_string(),
        }],
        Ok(border) => {
            let least_mm = subject.limit(LimitKey::LeastStretch).value;
            FIGURES
                .iter()
                .flat_map(|&(checks, reading)| {
                    let reasons = reasons(border, reading, least_mm);
                    checks.iter().flat_map(move |check| {
                        let check = check.code().to_owned();
                        reasons.clone().into_iter().map(move |why| NotJudged {
                            check: check.clone(),
                            why,
                        })
                    })
                })
                .collect()
        }
    }
}

type Figure = fn(&Station) -> Reading;

/// The checks that need a figure of the stations, and the figure.
const FIGURES: [(&[Check], Figure); 4] = [
    (&[Check::FlangeHeight, Check::UnderExtension], |s| {
        s.flange_height
    }),
    (&[Check::FlangeThickness], |s| s.flange_thickness),
    (&[Check::BorderRadius], |s| s.border_radius),
    (&[Check::BorderOverlap, Check::TrayAtBorder], |s| s.overlap),
];

/// Why a figure is missing, where it is over more than `least_mm` of flange.
fn reasons(border: &Border, figure: Figure, least_mm: f64) -> Vec<String> {
    let flange: Vec<&Station> = border.stations.iter().filter(|s| on_flange(s)).collect();
    let step_mm = border.length_mm / border.stations.len().max(1) as f64;
    let mut missing: BTreeMap<Missing, usize> = BTreeMap::new();
    for why in flange.iter().filter_map(|s| figure(s).err()) {
        *missing.entry(why).or_default() += 1;
    }
    missing
        .into_iter()
        .filter(|(_, count)| *count as f64 * step_mm >= least_mm)
        .map(|(why, count)| {
            if count == flange.len() {
                return why.to_string();
            }
            let [part, whole] = [count, flange.len()].map(|n| n as f64 * step_mm);
            format!("over {part:.0} of {whole:.0} mm of border: {why}")
        })
        .collect()
}
