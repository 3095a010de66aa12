//! The papers of a result, shown by the system's own programs.

use judge::system_says;
use messages::{Language, Message, message, text};
use report::{REPORT_FILE, RETURN_FILE, SHEET_FILE};
use std::path::{Path, PathBuf};

/// A paper of a result.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Paper {
    /// The page that goes with the parcel.
    Sheet,
    /// The sheet turned to the clinic.
    ReturnNote,
    /// Everything.
    Report,
}

impl Paper {
    /// All of them.
    pub const ALL: [Self; 3] = [Self::Sheet, Self::ReturnNote, Self::Report];

    /// In words.
    #[must_use]
    pub fn words(self, language: Language) -> String {
        match self {
            Self::Sheet => text!(language, "paper-sheet"),
            Self::ReturnNote => text!(language, "paper-return-note"),
            Self::Report => text!(language, "paper-report"),
        }
    }

    /// Where it lies in a result folder.
    ///
    /// # Errors
    /// In one line for people, when it is not there.
    pub fn file(self, folder: &Path) -> Result<PathBuf, Message> {
        let file = folder.join(match self {
            Self::Sheet => SHEET_FILE,
            Self::ReturnNote => RETURN_FILE,
            Self::Report => REPORT_FILE,
        });
        if file.is_file() {
            return Ok(file);
        }
        Err(match self {
            Self::ReturnNote => message!("paper-no-return-note"),
            Self::Sheet | Self::Report => message!("paper-missing"),
        })
    }

    /// Opens it in the program that the system uses for it.
    ///
    /// # Errors
    /// In one line for people.
    pub fn open(self, folder: &Path) -> Result<(), Message> {
        let file = self.file(folder)?;
        open::that_detached(&file).map_err(|why| {
            message!(
                "paper-no-program",
                path = mesh::read::shown_path(&file),
                reason = system_says(&why)
            )
        })
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_paper_that_is_not_there_is_said_in_one_line() {
        let folder = tempfile::tempdir().unwrap();
        for paper in Paper::ALL {
            let refused = paper.open(folder.path()).unwrap_err();
            assert!(!refused.to_string().contains('\n'));
        }
        let sheet = folder.path().join(SHEET_FILE);
        std::fs::write(&sheet, "").unwrap();
        assert_eq!(Paper::Sheet.file(folder.path()), Ok(sheet));
    }
}
