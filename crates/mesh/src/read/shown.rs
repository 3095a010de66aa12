//! File names as they may be shown.

use std::path::Path;

/// A path on one line of text that cannot disturb a terminal: control
/// characters, line breaks and marks of writing direction are escaped, bytes
/// that are not UTF-8 shown as `\xNN`.
#[must_use]
pub fn shown_path(path: &Path) -> String {
    let mut shown = String::new();
    for chunk in path.as_os_str().as_encoded_bytes().utf8_chunks() {
        for c in chunk.valid().chars() {
            if needs_escape(c) {
                shown.extend(c.escape_default());
            } else {
                shown.push(c);
            }
        }
        for byte in chunk.invalid() {
            shown.push_str(&format!("\\x{byte:02x}"));
        }
    }
    shown
}

fn needs_escape(c: char) -> bool {
    c.is_control()
        || matches!(c, '\u{200B}'..='\u{200F}' | '\u{2028}'..='\u{202E}' | '\u{2060}'..='\u{206F}' | '\u{FEFF}')
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_name_stays_on_one_line() {
        let name = "a b\"c'\n\r\t\u{1b}[2J\u{202e}ply.ä";
        assert_eq!(
            shown_path(Path::new(name)),
            "a b\"c'\\n\\r\\t\\u{1b}[2J\\u{202e}ply.ä"
        );
    }

    #[cfg(unix)]
    #[test]
    fn bytes_that_are_not_text_are_shown() {
        use std::os::unix::ffi::OsStrExt;
        let name = std::ffi::OsStr::from_bytes(b"a\xFFb");
        assert_eq!(shown_path(Path::new(name)), "a\\xffb");
    }
}
