//! A small picture of an impression on which something fails, kept beside its
//! results for the page over all of them.

use crate::files::WriteError;
use crate::files::outputs::write_all;
use crate::picture::tissue_side;
use crate::result::CaseResult;
use check::CheckedCase;
use judge::Severity;
use messages::Language;
use serde::{Deserialize, Serialize};
use std::path::Path;

/// No picture is wider or higher, px.
const MOST_PX: [usize; 2] = [400, 350];

/// A picture onto the tissue side, coloured by cover.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Thumbnail {
    /// Name of its file in the folder of the case.
    pub file: String,
    /// Width and height, px.
    pub size: [usize; 2],
    /// Where findings that fail are.
    pub marks: Vec<Mark>,
}

/// A place on a picture.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
pub struct Mark {
    /// To the right and down, px.
    pub at: [f64; 2],
    /// Whether other surface lies before it.
    pub is_hidden: bool,
}

/// Writes the results of a case into a folder, as [`write_all`] does, with a
/// thumbnail of each impression on which something fails; gives those.
///
/// # Errors
/// When the folder or a file in it cannot be written.
pub fn write_case(
    checked: &CheckedCase,
    result: &CaseResult,
    folder: &Path,
    language: Language,
) -> Result<Vec<Option<Thumbnail>>, WriteError> {
    write_all(checked, result, folder, language)?;
    (0..checked.impressions.len())
        .map(|number| thumbnail(checked, number, folder))
        .collect()
}

fn thumbnail(
    checked: &CheckedCase,
    number: usize,
    folder: &Path,
) -> Result<Option<Thumbnail>, WriteError> {
    let findings = checked.judged.findings.iter();
    let failing: Vec<_> = findings
        .filter(|f| f.severity == Severity::Fail && f.impression == Some(number))
        .collect();
    if failing.is_empty() {
        return Ok(None);
    }
    let picture = tissue_side(checked, number, MOST_PX).map_err(WriteError::Picture)?;
    let Some(picture) = picture else {
        return Ok(None);
    };
    let file = format!(
        "thumbnail-{}.png",
        crate::text::names::impression(checked, number)
    );
    let path = folder.join(&file);
    std::fs::write(&path, &picture.png).map_err(WriteError::at(&path))?;
    let places = failing.iter().filter_map(|finding| finding.place.as_ref());
    let marks = places.map(|place| {
        let [x, y, _] = picture.camera.place(&place.at);
        Mark {
            at: [x, y].map(|px| (px * 10.0).round() / 10.0),
            is_hidden: picture.shown(&place.at).is_none(),
        }
    });
    Ok(Some(Thumbnail {
        file,
        size: picture.camera.size,
        marks: marks.collect(),
    }))
}
