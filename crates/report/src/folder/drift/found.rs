//! The charts worked out, and what they say.

use super::baseline::Baseline;
use super::charted::{Charted, Group, Limits};
use super::options::DriftOptions;
use super::series::{OfGroup, Point, Series};
use super::shares::{ShareChart, look_at};
use messages::Message;
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use statistics::control::{Ewma, EwmaChart, IndividualsChart, Process, Rule, Signal, signals};

/// Impressions without which a chart has no limits of its own.
pub(in crate::folder) const LEAST: usize = 10;
/// A value of a normal process lies beyond three standard deviations so often.
const BEYOND_THREE: f64 = 0.0027;

/// Something that a chart says.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct DriftSignal {
    /// Impressions that share the chart.
    pub group: Group,
    /// The figure, as the tables name it; `share that fails` of the p chart.
    pub figure: String,
    /// Name of the rule.
    pub rule: String,
    /// The case with which the chart spoke first; empty of the p chart.
    pub case: String,
    /// When it was scanned, UTC; of the p chart, the first day.
    pub scanned: String,
    /// The case from which on its values lie so.
    pub since_case: String,
    /// When that one was scanned.
    pub since: String,
    /// Impressions from that one to the last for which the chart speaks; of the p chart,
    /// those of the days.
    pub impressions: u64,
    /// Whether the values lie above the centre.
    pub is_above: bool,
    /// Where the limits come from.
    pub limits: Limits,
    /// What to look at.
    pub look_at: String,
    /// The same as a message of the catalogue.
    #[serde(skip)]
    pub(in crate::folder) advice: Message,
    /// The way from the page to the case's report.
    #[serde(skip)]
    pub link: String,
}

/// The charts of one figure of a group.
#[derive(Debug)]
pub(in crate::folder) struct Chart {
    pub(in crate::folder) group: Group,
    pub(in crate::folder) figure: Charted,
    pub(in crate::folder) limits: Limits,
    /// When the first and the last of its impressions were scanned.
    pub(in crate::folder) span: [String; 2],
    /// Impressions that the limits are made from.
    pub(in crate::folder) count: u64,
    pub(in crate::folder) values: Vec<f64>,
    pub(in crate::folder) process: Process,
    pub(in crate::folder) individuals: IndividualsChart,
    pub(in crate::folder) averages: EwmaChart,
    pub(in crate::folder) signals: Vec<Signal>,
}

/// A figure of a group that has too few impressions for limits.
#[derive(Debug)]
pub(in crate::folder) struct TooFew {
    pub(in crate::folder) group: Group,
    pub(in crate::folder) figure: Charted,
    pub(in crate::folder) impressions: usize,
}

/// All charts, and what they say.
#[derive(Debug, Default)]
pub(in crate::folder) struct Drift {
    pub(in crate::folder) charts: Vec<Chart>,
    pub(in crate::folder) shares: Vec<ShareChart>,
    pub(in crate::folder) signals: Vec<DriftSignal>,
    /// Signals to be expected by chance alone.
    pub(in crate::folder) by_chance: f64,
    /// Figures of groups that have too few impressions for limits.
    pub(in crate::folder) too_few: Vec<TooFew>,
    pub(in crate::folder) left_out: u64,
}

impl Drift {
    pub(in crate::folder) fn of(mut series: Series, how: &DriftOptions) -> Self {
        series.settle();
        let baseline = how.baseline.as_ref();
        let mut drift = Self {
            left_out: series.left_out,
            ..Self::default()
        };
        for (group, of_group) in &series.groups {
            for figure in Charted::ALL {
                drift.add_figure(group, of_group, figure, how);
            }
            if let Some(chart) = ShareChart::of(group, of_group, baseline) {
                drift.by_chance += BEYOND_THREE * chart.days.len() as f64;
                drift.signals.extend(of_shares(&chart));
                drift.shares.push(chart);
            }
        }
        drift.signals.sort_by(|a, b| b.scanned.cmp(&a.scanned));
        drift
    }

    fn add_figure(
        &mut self,
        group: &Group,
        of_group: &OfGroup,
        figure: Charted,
        how: &DriftOptions,
    ) {
        let (points, values) = of_group.with(figure);
        if values.is_empty() {
            return;
        }
        let Some((process, limits, count)) = process(group, figure, &values, how.baseline.as_ref())
        else {
            self.too_few.push(TooFew {
                group: group.clone(),
                figure,
                impressions: values.len(),
            });
            return;
        };
        let found = signals(&values, process, &how.rules);
        for rule in &how.rules {
            self.by_chance += values.len() as f64 / rule.false_alarm_every();
        }
        let said = found
            .iter()
            .map(|signal| of_figure(group, figure, limits, &points, signal));
        self.signals.extend(said);
        self.charts.push(Chart {
            group: group.clone(),
            figure,
            limits,
            span: [points.first(), points.last()].map(at),
            count,
            process,
            individuals: IndividualsChart::by(process, &values),
            averages: EwmaChart::of(&values, process, Ewma::DEFAULT),
            signals: found,
            values,
        });
    }
}

fn at(point: Option<&&Point>) -> String {
    point.map_or_else(String::new, |point| point.scanned.clone())
}

/// The process by which values are judged, and of how many impressions it is: that of the
/// baseline or, of enough values that vary, their own.
fn process(
    group: &Group,
    figure: Charted,
    values: &[f64],
    baseline: Option<&Baseline>,
) -> Option<(Process, Limits, u64)> {
    let frozen = baseline.and_then(|baseline| baseline.process_of(group, figure));
    let frozen = frozen.map(|(process, count)| (process, Limits::Baseline, count));
    frozen.or_else(|| {
        let own = Process::of(values).filter(|own| own.sigma > 0.0 && values.len() >= LEAST)?;
        Some((own, Limits::Own, values.len() as u64))
    })
}

fn of_figure(
    group: &Group,
    figure: Charted,
    limits: Limits,
    points: &[&Point],
    signal: &Signal,
) -> DriftSignal {
    let [since, first] = [signal.from, signal.first].map(|number| points[number]);
    let advice = figure.look_at(signal.is_above);
    DriftSignal {
        group: group.clone(),
        figure: figure.column().to_owned(),
        rule: signal.rule.name().to_owned(),
        case: first.case.clone(),
        scanned: first.scanned.clone(),
        since_case: since.case.clone(),
        since: since.scanned.clone(),
        impressions: (signal.last - signal.from + 1) as u64,
        is_above: signal.is_above,
        limits,
        look_at: advice.to_string(),
        advice,
        link: first.link.clone(),
    }
}

fn of_shares(chart: &ShareChart) -> impl Iterator<Item = DriftSignal> {
    let outside = chart.days.iter().filter(|days| days.is_out());
    outside.map(|days| {
        let is_above = days.share() > chart.share;
        let advice = look_at(is_above);
        DriftSignal {
            group: chart.group.clone(),
            figure: "share that fails".to_owned(),
            rule: Rule::BeyondLimits.name().to_owned(),
            case: String::new(),
            scanned: days.from.clone(),
            since_case: String::new(),
            since: days.from.clone(),
            impressions: days.of,
            is_above,
            limits: chart.limits,
            look_at: advice.to_string(),
            advice,
            link: String::new(),
        }
    })
}
