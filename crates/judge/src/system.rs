//! What the operating system says of a file, as a message.

use messages::{Message, message};
use std::io::{self, ErrorKind};

/// Why a file or folder cannot be used, as part of a sentence: the system's own words in
/// English, ours in other languages where the kind of the error is known.
#[must_use]
pub fn system_says(error: &io::Error) -> Message {
    message!(
        "system-says",
        kind = kind(error),
        reason = error.to_string()
    )
}

fn kind(error: &io::Error) -> &'static str {
    // Of these kinds with a text of their own are the refusals of `mesh::read`.
    let own = error.get_ref().map(ToString::to_string);
    match (error.kind(), own.as_deref()) {
        (ErrorKind::NotFound, _) => "missing",
        (ErrorKind::PermissionDenied, _) => "locked",
        (ErrorKind::AlreadyExists, _) => "exists",
        (ErrorKind::NotADirectory, _) => "no-folder",
        (ErrorKind::IsADirectory, _) | (ErrorKind::InvalidInput, Some("it is a folder")) => {
            "folder"
        }
        (ErrorKind::StorageFull | ErrorKind::QuotaExceeded, _) => "full",
        (ErrorKind::ReadOnlyFilesystem, _) => "read-only",
        (ErrorKind::InvalidInput, Some("it is no ordinary file")) => "special",
        (ErrorKind::InvalidData, Some("it is not text in UTF-8")) => "no-text",
        (ErrorKind::InvalidData, Some(text)) if text.starts_with("it is larger") => "large",
        _ => "other",
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use messages::Language;

    #[test]
    fn what_the_readers_of_files_refuse_is_said_in_each_language() {
        let folder = tempfile::tempdir().unwrap();
        let of = |path: &std::path::Path| {
            let refused = mesh::read::settings_text(path).unwrap_err();
            let said = system_says(&refused);
            assert_eq!(said.to_string(), refused.to_string());
            [Language::German, Language::Spanish].map(|language| said.text(language))
        };
        assert_eq!(of(folder.path()), ["ist ein Ordner", "es una carpeta"]);
        let file = folder.path().join("case.toml");
        assert_eq!(
            of(&file),
            ["die Datei ist nicht vorhanden", "el archivo no existe"]
        );
        std::fs::write(&file, b"\xff").unwrap();
        assert_eq!(
            of(&file),
            ["ist kein Text in UTF-8", "no es un texto en UTF-8"]
        );
        let long = std::fs::File::create(&file).unwrap();
        long.set_len(mesh::read::MAX_SETTINGS_BYTES + 1).unwrap();
        assert_eq!(
            of(&file),
            [
                "ist zu groß für eine solche Datei",
                "es demasiado grande para un archivo de este tipo"
            ]
        );
    }
}
