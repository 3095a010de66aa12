//! Kinds of files that are often given in place of a scan.

use std::fmt;

/// A kind of file that is no scan.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Foreign {
    /// Zip archive, or a format that is one inside.
    Zip,
    /// Gzip-compressed file.
    Gzip,
    /// Any other archive or compressed file.
    Archive,
    /// Web page.
    Html,
    /// Other XML.
    Xml,
    /// JSON text.
    Json,
    /// PDF document.
    Pdf,
    /// Picture.
    Picture,
    /// Text in UTF-16.
    Utf16,
    /// Binary glTF scene.
    Gltf,
    /// Slice data of a medical imaging machine.
    Dicom,
    /// Mesh text format of another kind.
    Off,
}

impl fmt::Display for Foreign {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(match self {
            Self::Zip => "a zip archive",
            Self::Gzip => "a gzip archive",
            Self::Archive => "a compressed archive",
            Self::Html => "a web page, not a scan (a failed download?)",
            Self::Xml => "an XML file, not a scan",
            Self::Json => "a JSON text, not a scan (a failed download?)",
            Self::Pdf => "a PDF document, not a scan",
            Self::Picture => "a picture, not a scan",
            Self::Utf16 => "text in UTF-16",
            Self::Gltf => "a binary glTF scene",
            Self::Dicom => "a DICOM file",
            Self::Off => "an OFF mesh",
        })
    }
}

impl Foreign {
    /// What to do about it.
    #[must_use]
    pub fn advice(self) -> &'static str {
        match self {
            Self::Zip | Self::Gzip | Self::Archive => "unpack it first",
            Self::Html | Self::Json => "fetch the file again",
            Self::Utf16 => "save it as plain ASCII or UTF-8",
            Self::Xml | Self::Pdf | Self::Picture => "give the scan itself, as STL or PLY",
            Self::Gltf | Self::Dicom | Self::Off => "export the scan as binary STL or PLY",
        }
    }
}
