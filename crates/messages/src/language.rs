//! The languages that people read.

use std::fmt;
use std::str::FromStr;
use thiserror::Error;

/// A language of the catalogue.
#[derive(Debug, Clone, Copy, Default, PartialEq, Eq, Hash)]
pub enum Language {
    /// English, the language of `result.json` and of the tables.
    #[default]
    English,
    /// German.
    German,
    /// Spanish.
    Spanish,
}

/// No text is there in this language.
#[derive(Debug, Clone, PartialEq, Eq, Error)]
#[error("there is no text in the language '{0}'; there is en, de and es")]
pub struct UnknownLanguage(String);

impl Language {
    /// Every language.
    pub const ALL: [Self; 3] = [Self::English, Self::German, Self::Spanish];

    /// Its code of two letters (ISO 639-1).
    #[must_use]
    pub fn code(self) -> &'static str {
        match self {
            Self::English => "en",
            Self::German => "de",
            Self::Spanish => "es",
        }
    }

    /// The language that the system is set to; English where the catalogue has no text in it.
    #[must_use]
    pub fn of_system() -> Self {
        sys_locale::get_locales()
            .find_map(|locale| Self::of_locale(&locale))
            .unwrap_or_default()
    }

    /// The language of a locale, such as `de_AT.UTF-8`; that of the locale `C` is English.
    fn of_locale(locale: &str) -> Option<Self> {
        match locale.split(['-', '_', '.']).next()? {
            "C" | "POSIX" => Some(Self::English),
            code => code.parse().ok(),
        }
    }

    /// The sign between units and tenths.
    pub(crate) fn decimal_sign(self) -> char {
        match self {
            Self::English => '.',
            Self::German | Self::Spanish => ',',
        }
    }
}

impl FromStr for Language {
    type Err = UnknownLanguage;

    fn from_str(code: &str) -> Result<Self, UnknownLanguage> {
        let is_it = |language: &Self| language.code().eq_ignore_ascii_case(code);
        (Self::ALL.into_iter())
            .find(is_it)
            .ok_or_else(|| UnknownLanguage(code.escape_debug().to_string()))
    }
}

impl fmt::Display for Language {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(self.code())
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_locale_has_its_language() {
        for (locale, language) in [
            ("de_AT.UTF-8", Some(Language::German)),
            ("es-MX", Some(Language::Spanish)),
            ("en", Some(Language::English)),
            ("C.UTF-8", Some(Language::English)),
            ("POSIX", Some(Language::English)),
            ("fr_FR", None),
            ("", None),
        ] {
            assert_eq!(Language::of_locale(locale), language, "{locale}");
        }
        assert_eq!("DE".parse(), Ok(Language::German));
        assert!("".parse::<Language>().is_err());
    }
}
