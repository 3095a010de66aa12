//! The border unrolled: its figures and limits against the distance from the
//! midline, with zones and findings.

use super::canvas::{Anchor, GREY, INK, LIMIT, Sheet, Stroke, text_width};
use super::lanes::lanes;
use super::locator::Locator;
use super::plot::{Across, Chart, LEFT, RIGHT, SMALL, WIDTH};
use super::rows::{ROWS, RowFrame, draw_row, row_height};
use super::track::{Track, tracks};
use super::words::{heading, numbered, patient_side, side_letter};
use crate::text::words::zone_name;
use crate::text::{facing, names};
use check::CheckedCase;
use judge::{Finding, Severity, words};
use measure::Frame;
use messages::{Language, text};

const TITLE_HEIGHT: f64 = 64.0;
/// Height of the legend, with the small arch beside it.
const LEGEND_HEIGHT: f64 = 186.0;
/// Width and height of the small arch.
const ARCH_SIZE: [f64; 2] = [250.0, 166.0];
/// Room on either side of it for the names of places, px.
const ARCH_ASIDE: f64 = 56.0;
const LANE: f64 = 17.0;
/// Size of the words for the patient's sides, px.
const SIDE: f64 = 20.0;
/// Where the legend ends.
const LEGEND_RIGHT: f64 = RIGHT - ARCH_SIZE[0] - 2.0 * ARCH_ASIDE;

/// The chart of an impression's border as the bytes of an SVG file; `None`
/// where no border was followed.
pub(crate) fn border_chart(
    checked: &CheckedCase,
    impression: usize,
    language: Language,
) -> Option<Vec<u8>> {
    let measured = checked.impressions[impression].measured()?;
    let (border, arch) = (measured.border.as_ref().ok()?, measured.frame.arch);
    let findings = checked.judged.findings.iter().enumerate();
    let chart = Chart {
        language,
        checked,
        border,
        arch,
        findings: findings
            .filter(|(_, f)| f.impression == Some(impression) && f.stretch.is_some())
            .collect(),
    };
    let tracks = tracks(border, arch);
    let heights: Vec<f64> = tracks
        .iter()
        .map(|track| chart.track_height(track))
        .collect();
    let height = TITLE_HEIGHT + heights.iter().sum::<f64>() + LEGEND_HEIGHT;
    let title = text!(
        language,
        "chart-title",
        heading = heading(checked, impression, language)
    );
    let mut sheet = Sheet::new(WIDTH, height, &title);
    sheet.bold([LEFT, 28.0], Anchor::Start, 18.0, &title);
    let facing = text!(language, "chart-seen", facing = facing::message(arch));
    sheet.text([LEFT, 50.0], Anchor::Start, 12.5, &facing);
    let mut top = TITLE_HEIGHT;
    for (track, height) in tracks.iter().zip(&heights) {
        chart.draw_track(&mut sheet, track, top);
        top += height;
    }
    draw_legend(&mut sheet, language, top + 8.0);
    chart.draw_arch(&mut sheet, &measured.frame, top + 12.0);
    Some(sheet.encoded())
}

/// Something with a name over a span of the track, px.
struct Named {
    span: (f64, f64),
    name: String,
}

impl Named {
    /// What it takes up: its span, or its name where that is wider.
    fn taken(&self) -> (f64, f64) {
        let half = (text_width(&self.name, SMALL) / 2.0).max((self.span.1 - self.span.0) / 2.0);
        let middle = self.middle();
        (middle - half, middle + half)
    }

    /// Where the name stands: over the span's middle, within the sheet.
    fn middle(&self) -> f64 {
        let half = text_width(&self.name, SMALL) / 2.0;
        f64::midpoint(self.span.0, self.span.1)
            .min(WIDTH - 4.0 - half)
            .max(4.0 + half)
    }
}

impl Chart<'_> {
    fn track_height(&self, track: &Track) -> f64 {
        let across = Across::of(track);
        let rows: f64 = ROWS.iter().map(|row| row_height(row, self, track)).sum();
        let lanes_of = |named: &[Named]| lane_count(named) as f64 * LANE;
        44.0 + lanes_of(&self.bracketed(track, across).0)
            + lanes_of(&zones(self, track, across))
            + rows
            + 46.0
    }

    fn draw_track(&self, sheet: &mut Sheet, track: &Track, top: f64) {
        let across = Across::of(track);
        let mut at = top + 16.0;
        let [left, right] = [facing::on_the_left, facing::on_the_right]
            .map(|side| patient_side(Some(side(self.arch)), self.language));
        sheet.bold([LEFT, at], Anchor::Start, SIDE, &format!("◄ {left}"));
        sheet.bold([RIGHT, at], Anchor::End, SIDE, &format!("{right} ►"));
        sheet.bold(
            [f64::midpoint(LEFT, RIGHT), at],
            Anchor::Middle,
            14.0,
            &track.title.text(self.language),
        );
        at += 12.0;
        at = self.draw_findings(sheet, track, across, at);
        at = draw_zones(sheet, &zones(self, track, across), at);
        let rows_top = at;
        for row in &ROWS {
            let height = row_height(row, self, track);
            let frame = RowFrame {
                across,
                left: LEFT,
                right: RIGHT,
                top: at,
                bottom: at + height,
            };
            draw_row(sheet, row, self, track, &frame);
            at += height;
        }
        let middle = across.px(0.0);
        sheet.line(
            [middle, rows_top],
            [middle, at],
            Stroke::dashed(INK, 1.0, "9 3 2 3"),
        );
        self.draw_axis(sheet, track, across, at);
    }

    /// Where the findings of the chart lie on the arch.
    fn draw_arch(&self, sheet: &mut Sheet, frame: &Frame, top: f64) {
        let left = RIGHT - ARCH_SIZE[0] - ARCH_ASIDE;
        let arch = Locator::draw(
            sheet,
            self.border,
            frame,
            self.language,
            [left, top],
            ARCH_SIZE,
        );
        let worst = |finding: &Finding| finding.stretch.map(|stretch| stretch.worst);
        let named: Vec<(usize, String)> = (self.findings.iter())
            .filter_map(|(number, finding)| Some((worst(finding)?, names::finding(*number))))
            .filter(|(station, _)| *station < self.border.stations.len())
            .collect();
        arch.mark(sheet, &named);
    }

    /// Findings on a track with where they are, and their numbers.
    fn bracketed(&self, track: &Track, across: Across) -> (Vec<Named>, Vec<&Finding>) {
        self.findings
            .iter()
            .filter_map(|&(number, finding)| Some((number, finding, finding.stretch?)))
            .flat_map(|(number, finding, stretch)| {
                let spans = track.spans(&stretch);
                spans.into_iter().map(move |(from, to)| {
                    let named = Named {
                        span: (across.px(from) - 1.0, across.px(to) + 1.0),
                        name: numbered(&names::finding(number), finding.check, self.language),
                    };
                    (named, finding)
                })
            })
            .unzip()
    }

    fn draw_findings(&self, sheet: &mut Sheet, track: &Track, across: Across, top: f64) -> f64 {
        let (named, findings) = self.bracketed(track, across);
        let taken: Vec<(f64, f64)> = named.iter().map(Named::taken).collect();
        for ((one, finding), lane) in named.iter().zip(findings).zip(lanes(&taken, 6.0)) {
            let y = top + (lane as f64 + 1.0) * LANE;
            let stroke = severity_stroke(finding.severity);
            let (from, to) = one.span;
            sheet.line([from, y], [to, y], stroke);
            for end in [from, to] {
                sheet.line([end, y], [end, y + 4.0], Stroke::whole(stroke.colour, 1.2));
            }
            sheet.text([one.middle(), y - 3.0], Anchor::Middle, SMALL, &one.name);
        }
        top + lane_count(&named) as f64 * LANE + 6.0
    }

    fn draw_axis(&self, sheet: &mut Sheet, track: &Track, across: Across, top: f64) {
        const TICK_MM: f64 = 10.0;
        let (from, to) = track.reach();
        for tick in (from / TICK_MM).ceil() as i64..=(to / TICK_MM).floor() as i64 {
            let mm = tick as f64 * TICK_MM;
            let x = across.px(mm);
            sheet.line([x, top], [x, top + 4.0], Stroke::whole(INK, 1.0));
            let letter = |side| format!(" {}", side_letter(side, self.language));
            let side = match tick {
                0 => String::new(),
                ..0 => letter(facing::on_the_left(self.arch)),
                1.. => letter(facing::on_the_right(self.arch)),
            };
            sheet.text(
                [x, top + 16.0],
                Anchor::Middle,
                SMALL,
                &format!("{:.0}{side}", mm.abs()),
            );
        }
        let words = text!(self.language, "chart-axis", midline = track.midline.clone());
        sheet.text(
            [f64::midpoint(LEFT, RIGHT), top + 32.0],
            Anchor::Middle,
            12.0,
            &words,
        );
    }
}

/// How the bracket of a finding is drawn.
fn severity_stroke(severity: Severity) -> Stroke {
    match severity {
        Severity::Fail => Stroke::whole(INK, 3.2),
        Severity::Borderline => Stroke::dashed(INK, 2.2, "7 3"),
        Severity::Note => Stroke::dashed(GREY, 1.6, "2 3"),
    }
}

fn lane_count(named: &[Named]) -> usize {
    let taken: Vec<(f64, f64)> = named.iter().map(Named::taken).collect();
    lanes(&taken, 6.0)
        .into_iter()
        .max()
        .map_or(0, |most| most + 1)
}

/// Runs of stations in one zone.
fn zones(chart: &Chart<'_>, track: &Track, across: Across) -> Vec<Named> {
    let zone = |number: usize| chart.border.stations[number].zone;
    track
        .stations
        .chunk_by(|a, b| zone(a.0) == zone(b.0))
        .filter_map(|run| {
            let (first, last) = run.first().zip(run.last())?;
            Some(Named {
                span: (across.px(first.1), across.px(last.1)),
                name: zone_name(words::zone(zone(first.0)), chart.language),
            })
        })
        .collect()
}

fn draw_zones(sheet: &mut Sheet, zones: &[Named], top: f64) -> f64 {
    let taken: Vec<(f64, f64)> = zones.iter().map(Named::taken).collect();
    let bottom = top + lane_count(zones) as f64 * LANE;
    for (zone, lane) in zones.iter().zip(lanes(&taken, 6.0)) {
        let y = bottom - lane as f64 * LANE - 5.0;
        let end = zone.span.1;
        sheet.line(
            [end, y - 11.0],
            [end, bottom + 2.0],
            Stroke::whole(GREY, 0.8),
        );
        sheet.label([zone.middle(), y], Anchor::Middle, SMALL, &zone.name);
    }
    bottom + 4.0
}

fn draw_legend(sheet: &mut Sheet, language: Language, top: f64) {
    let mut at = [LEFT, top + 14.0];
    let mut entry = |sheet: &mut Sheet, draw: &dyn Fn(&mut Sheet, [f64; 2]), words: String| {
        let width = 44.0 + text_width(&words, SMALL) + 20.0;
        if at[0] + width > LEGEND_RIGHT {
            at = [LEFT, at[1] + 20.0];
        }
        draw(sheet, at);
        sheet.text([at[0] + 44.0, at[1]], Anchor::Start, SMALL, &words);
        at[0] += width;
    };
    let sample = |stroke: Stroke| {
        move |sheet: &mut Sheet, at: [f64; 2]| {
            sheet.line([at[0], at[1] - 4.0], [at[0] + 36.0, at[1] - 4.0], stroke);
        }
    };
    let measured = text!(language, "legend-measured");
    entry(sheet, &super::rows::sample, measured);
    let no_less = text!(language, "legend-no-less");
    entry(sheet, &sample(super::rows::LEAST), no_less);
    let no_more = text!(language, "legend-no-more");
    entry(sheet, &sample(super::rows::MOST), no_more);
    let hatch = |sheet: &mut Sheet, at: [f64; 2]| {
        sheet.hatched([at[0], at[1] - 11.0], [at[0] + 36.0, at[1] + 2.0]);
    };
    entry(sheet, &hatch, text!(language, "legend-no-figure"));
    for (severity, words) in [
        (Severity::Fail, text!(language, "legend-fails")),
        (Severity::Borderline, text!(language, "legend-undecided")),
        (Severity::Note, text!(language, "legend-note")),
    ] {
        entry(sheet, &sample(severity_stroke(severity)), words);
    }
    let marks = text!(language, "legend-marks");
    entry(sheet, &sample(Stroke::whole(LIMIT, 0.0)), marks);
}
