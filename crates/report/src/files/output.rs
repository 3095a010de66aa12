//! Files that are written together.

use super::coloured_mesh::MapError;
use judge::system_says;
use mesh::read::shown_path;
use messages::{Message, message};
use std::fs;
use std::io;
use std::path::{Path, PathBuf};
use thiserror::Error;

/// A file to be: its name and its bytes.
pub(crate) type Output = (String, Vec<u8>);

/// Why the results could not be written.
#[derive(Debug, Error)]
#[error("{}", self.message())]
pub enum WriteError {
    /// The system refused.
    Io {
        /// The file or folder.
        path: PathBuf,
        /// What the system says.
        source: io::Error,
    },
    /// The table of a border cannot be written.
    Table(io::Error),
    /// A picture of the report cannot be encoded.
    Picture(io::Error),
    /// The cover map is no mesh.
    Map(#[from] MapError),
}

impl WriteError {
    /// What is wrong, as a message of the catalogue.
    #[must_use]
    pub fn message(&self) -> Message {
        match self {
            Self::Io { path, source } => message!(
                "results-unwritten",
                path = shown_path(path),
                reason = system_says(source)
            ),
            Self::Table(error) => message!("results-no-table", reason = system_says(error)),
            Self::Picture(error) => message!("results-no-picture", reason = system_says(error)),
            Self::Map(error) => message!("results-no-map", reason = error.to_string()),
        }
    }

    pub(crate) fn at(path: &Path) -> impl FnOnce(io::Error) -> Self {
        |source| Self::Io {
            path: path.to_owned(),
            source,
        }
    }
}

/// Writes files into a folder, which is made if it is not there: all of them, or none.
///
/// Everything is written aside within the folder, then moved into place in its order.
/// Where a move fails, those before it are undone.
pub(crate) fn write_together(outputs: &[Output], folder: &Path) -> Result<(), WriteError> {
    fs::create_dir_all(folder).map_err(WriteError::at(folder))?;
    let aside = tempfile::Builder::new()
        .prefix(".writing-")
        .tempdir_in(folder)
        .map_err(WriteError::at(folder))?;
    for (name, bytes) in outputs {
        fs::write(aside.path().join(name), bytes).map_err(WriteError::at(&folder.join(name)))?;
    }
    let earlier = aside.path().join("earlier");
    fs::create_dir(&earlier).map_err(WriteError::at(folder))?;
    let was_there: Vec<bool> = outputs
        .iter()
        .map(|(name, _)| {
            let place = folder.join(name);
            // Where a file system knows no hard links, nothing is kept to go back to.
            let _ = fs::hard_link(&place, earlier.join(name));
            place.exists()
        })
        .collect();
    for (done, (name, _)) in outputs.iter().enumerate() {
        let place = folder.join(name);
        if let Err(source) = fs::rename(aside.path().join(name), &place) {
            for ((name, _), was_there) in outputs[..done].iter().zip(was_there) {
                undo(&earlier.join(name), &folder.join(name), was_there);
            }
            return Err(WriteError::at(&place)(source));
        }
    }
    Ok(())
}

/// Puts an earlier file back, or removes the new one where there was none. What fails
/// here leaves a whole file, if another one: the move's own failure is what is reported.
fn undo(earlier: &Path, place: &Path, was_there: bool) {
    let _ = if was_there {
        fs::rename(earlier, place)
    } else {
        fs::remove_file(place)
    };
}

#[cfg(test)]
mod tests {
    use super::*;

    fn output(name: &str, text: &str) -> Output {
        (name.to_owned(), text.as_bytes().to_owned())
    }

    #[test]
    fn where_one_cannot_be_moved_the_earlier_files_come_back() {
        let folder = tempfile::tempdir().unwrap();
        let place = |name: &str| folder.path().join(name);
        fs::write(place("old"), "earlier").unwrap();
        // A file cannot take the place of a folder.
        fs::create_dir(place("folder")).unwrap();
        let outputs = [
            output("old", "later"),
            output("new", "later"),
            output("folder", "later"),
        ];
        let refused = write_together(&outputs, folder.path()).unwrap_err();
        assert!(refused.to_string().contains("folder: cannot be written"));
        assert_eq!(fs::read_to_string(place("old")).unwrap(), "earlier");
        assert!(!place("new").exists());
        assert_eq!(fs::read_dir(folder.path()).unwrap().count(), 2);

        write_together(&outputs[..2], folder.path()).unwrap();
        assert_eq!(fs::read_to_string(place("old")).unwrap(), "later");
    }
}
