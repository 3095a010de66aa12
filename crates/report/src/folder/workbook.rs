//! The list of all cases as a workbook, which every spreadsheet opens alike, whatever its
//! decimal sign: numbers are numbers, and times are times.

use super::record::CaseRecord;
use super::rows::ImpressionRow;
use rust_xlsxwriter::{
    DocProperties, ExcelDateTime, Format, FormatAlign, Url, Workbook, Worksheet, XlsxError,
};
use std::io::Write;

/// Cases in the workbook, which is kept in memory until it is written; a last row says how many
/// more the tables hold.
const MOST: u32 = 10_000;
/// Letters that a cell holds, with room to spare.
const LETTERS: usize = 2_000;

/// Columns with their widths, in letters.
const COLUMNS: [(&str, f64); 10] = [
    ("case", 22.0),
    ("jaw", 22.0),
    ("verdict", 16.0),
    ("first thing to do", 70.0),
    ("report", 12.0),
    ("scanned (UTC)", 24.0),
    ("failing findings", 16.0),
    ("least thickness, mm", 18.0),
    ("labels", 30.0),
    ("time of scanning by", 30.0),
];

/// The workbook while it is being made, a row a case. It is not made on the disk row by row: the
/// library's mode for that panics where the disk is full.
pub(super) struct CaseWorkbook {
    workbook: Workbook,
    rows: u32,
    left_out: u64,
    time: Format,
    wrapped: Format,
}

impl CaseWorkbook {
    pub(super) fn begin() -> Result<Self, XlsxError> {
        let mut workbook = Workbook::new();
        // One input gives the same bytes, whenever it is written.
        let created = ExcelDateTime::from_ymd(2000, 1, 1)?;
        workbook.set_properties(&DocProperties::new().set_creation_datetime(&created));
        let sheet = workbook.add_worksheet();
        sheet.set_name("Cases")?;
        sheet.set_freeze_panes(1, 0)?;
        let head = Format::new().set_bold().set_text_wrap();
        for (column, (name, width)) in (0..).zip(COLUMNS) {
            sheet.set_column_width(column, width)?;
            sheet.write_string_with_format(0, column, name, &head)?;
        }
        Ok(Self {
            workbook,
            rows: 0,
            left_out: 0,
            time: Format::new().set_num_format("yyyy-mm-dd hh:mm:ss"),
            wrapped: Format::new().set_text_wrap().set_align(FormatAlign::Top),
        })
    }

    /// Adds a case; what a person reads of it is at `link`, seen from the workbook.
    pub(super) fn add(&mut self, record: &CaseRecord, link: &str) -> Result<(), XlsxError> {
        if self.rows == MOST {
            self.left_out += 1;
            return Ok(());
        }
        self.rows += 1;
        let row = self.rows;
        let sheet = self.workbook.worksheet_from_index(0)?;
        let rows = &record.impressions;
        let first = rows.first().cloned().unwrap_or_default();
        let is_read = !record.is_unreadable();
        let case = first.case.as_deref().unwrap_or(&first.folder);
        let verdict = first.case_verdict.as_deref().unwrap_or("could not be read");
        let step = first.problem.as_ref().or(first.first_step.as_ref());
        write(sheet, row, 0, case)?;
        write(sheet, row, 1, &arches(rows))?;
        write(sheet, row, 2, verdict)?;
        let step = shortened(step.map_or("", String::as_str));
        sheet.write_string_with_format(row, 3, step, &self.wrapped)?;
        let fits = link.len() < LETTERS;
        match (is_read, fits) {
            (true, true) => {
                let url = Url::new(format!("file:///{link}")).set_text("open");
                sheet.write_url(row, 4, url)?;
            }
            (true, false) => write(sheet, row, 4, link)?,
            (false, _) => {}
        }
        let scanned = rows.iter().filter_map(|row| row.scanned.as_deref()).max();
        // Without the zone: a spreadsheet's times have none, and the head says UTC.
        let time =
            scanned.and_then(|at| ExcelDateTime::parse_from_str(at.trim_end_matches('Z')).ok());
        if let Some(time) = time {
            sheet.write_datetime_with_format(row, 5, &time, &self.time)?;
        }
        if is_read {
            let fails: u64 = rows.iter().filter_map(|row| row.fails).sum();
            sheet.write_number(row, 6, fails as f64)?;
        }
        let least = rows
            .iter()
            .filter_map(|row| row.cover_min_mm)
            .reduce(f64::min);
        if let Some(least) = least {
            sheet.write_number(row, 7, least)?;
        }
        write(sheet, row, 8, first.labels.as_deref().unwrap_or_default())?;
        let source = rows.iter().find_map(ImpressionRow::time_source);
        let source = source.map_or_else(String::new, |source| source.message().to_string());
        write(sheet, row, 9, &source)
    }

    /// Writes the whole of it.
    pub(super) fn finish(mut self, out: impl Write + Send) -> Result<(), XlsxError> {
        let (rows, left_out) = (self.rows, self.left_out);
        let sheet = self.workbook.worksheet_from_index(0)?;
        if left_out > 0 {
            write(
                sheet,
                rows + 1,
                0,
                &format!("{left_out} more cases are in summary.csv"),
            )?;
        }
        let last = u16::try_from(COLUMNS.len() - 1).unwrap_or(0);
        sheet.autofilter(0, 0, rows.max(1), last)?;
        self.workbook.save_to_writer(out)
    }
}

fn write(sheet: &mut Worksheet, row: u32, column: u16, text: &str) -> Result<(), XlsxError> {
    if !text.is_empty() {
        sheet.write_string(row, column, shortened(text))?;
    }
    Ok(())
}

fn shortened(text: &str) -> String {
    text.chars().take(LETTERS).collect()
}

/// The jaws of a case, each once.
fn arches(rows: &[ImpressionRow]) -> String {
    let mut arches: Vec<&str> = rows.iter().filter_map(|row| row.arch.as_deref()).collect();
    arches.dedup();
    arches.join(", ")
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::folder::record::Provenance;
    use crate::result::CaseResult;
    use crate::testing::checked_with_spots;

    fn written() -> Vec<u8> {
        let provenance = Provenance {
            inputs_sha256: String::new(),
            settings_sha256: String::new(),
            program: String::new(),
        };
        let mut workbook = CaseWorkbook::begin().unwrap();
        let result = CaseResult::of(&checked_with_spots());
        let scanned = [Some("2026-03-04T05:06:07Z".to_owned())];
        let mut record =
            CaseRecord::checked(&result, "a", &scanned, Vec::new(), provenance.clone());
        record.impressions[0].case = Some("=1+1".to_owned());
        workbook.add(&record, "cases/a/report.html").unwrap();
        let why = (messages::Message::verbatim("no surface"), false);
        let unread = CaseRecord::unreadable(None, "b", why, provenance);
        workbook.add(&unread, "cases/b/result.json").unwrap();
        let mut bytes = Vec::new();
        workbook.finish(&mut bytes).unwrap();
        bytes
    }

    /// Its cells are read by another library in `tests/outside/batch_tables.py`.
    #[test]
    fn one_input_gives_the_same_workbook() {
        let bytes = written();
        assert!(bytes.starts_with(b"PK"));
        assert!(bytes == written());
    }
}
