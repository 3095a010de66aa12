//! How the files of a result are called.

use check::CheckedCase;
use judge::words;

/// Name of the report.
pub const REPORT_FILE: &str = "report.html";

/// Name of the sheet that goes with the parcel.
pub const SHEET_FILE: &str = "sheet.html";

/// Name of the same sheet as PDF.
pub(crate) const SHEET_PDF_FILE: &str = "sheet.pdf";

/// Name of the return note for the clinic.
pub const RETURN_FILE: &str = "return.html";

/// Name of the same note as PDF.
pub(crate) const RETURN_PDF_FILE: &str = "return.pdf";

/// Name of its text, to be pasted into a message.
pub const RETURN_TEXT_FILE: &str = "return.txt";

/// A pseudonym in letters that any system takes in a file's name.
#[must_use]
pub fn plain(case: &str) -> String {
    let taken = |c: char| c.is_ascii_alphanumeric() || c == '-' || c == '_';
    case.chars()
        .map(|c| if taken(c) { c } else { '_' })
        .collect()
}

/// `maxillary-first-pass`: what tells the files of one impression of a case
/// from those of another.
pub(crate) fn impression(checked: &CheckedCase, number: usize) -> String {
    let input = &checked.case.impressions[number];
    let measured = checked.impressions[number].measured();
    let arch = input
        .declared
        .or(measured.map(|found| found.frame.arch))
        .map_or("unknown", words::arch);
    format!("{arch}-{}", input.stage.name().replace('_', "-"))
}

/// Name of the wash map of a wash.
pub(crate) fn wash_map(checked: &CheckedCase, number: usize) -> String {
    format!(
        "wash-{}.ply",
        impression(checked, number).trim_end_matches("-wash")
    )
}

/// Name of an impression's scan in the result. The file's own may be a
/// patient's, and is never kept.
pub(crate) fn scan(checked: &CheckedCase, number: usize) -> String {
    impression(checked, number)
}

/// Name of the scan of an impression's tray in the result.
pub(crate) fn tray(checked: &CheckedCase, number: usize) -> String {
    format!("{}-tray", impression(checked, number))
}

/// What the scan of an impression as it was sent is called.
pub(crate) fn as_sent(checked: &CheckedCase, number: usize) -> String {
    format!("{}-as-sent", impression(checked, number))
}

/// What the scan of an impression's relieved tray is called.
pub(crate) fn tray_relieved(checked: &CheckedCase, number: usize) -> String {
    format!("{}-tray-relieved", impression(checked, number))
}

/// Name of a finding within its case; findings are counted from 0.
pub(crate) fn finding(number: usize) -> String {
    format!("F{}", number + 1)
}

/// Name of the drawing of a finding's section.
pub(crate) fn section(finding_number: usize) -> String {
    format!("section-{}.svg", finding(finding_number))
}
