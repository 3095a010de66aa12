//! What the report is made of.

use crate::files::Output;
use crate::picture::Pictures;
use crate::result::CaseResult;
use maud::{Markup, PreEscaped};
use messages::Language;

/// What the report is made of.
pub(super) struct Material<'a> {
    pub(super) language: Language,
    pub(super) result: &'a CaseResult,
    pub(super) pictures: &'a Pictures,
    /// The other files of the result, drawings among them.
    pub(super) files: &'a [Output],
}

impl Material<'_> {
    /// A drawing that lies beside the report, to be shown in it.
    pub(super) fn drawing(&self, file: &str) -> Option<Markup> {
        let (name, bytes) = self.files.iter().find(|(name, _)| name == file)?;
        let svg = std::str::from_utf8(bytes).ok()?;
        // Names within a page must be its own.
        let own = name.trim_end_matches(".svg");
        let svg = svg
            .replace("id=\"hatch\"", &format!("id=\"hatch-{own}\""))
            .replace("url(#hatch)", &format!("url(#hatch-{own})"));
        Some(PreEscaped(svg))
    }
}
