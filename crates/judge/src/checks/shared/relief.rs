//! How instructions speak of relieving a tray.

/// How a tray is relieved without harm to the operator or the patient.
pub(crate) const SAFELY: &str =
    "out of the mouth, with eye and dust protection, then feel for sharp edges";

/// After relief the old scan of the tray no longer tells the truth there.
pub(crate) const IF_RELIEVED: &str = " If the tray was relieved here after it was scanned, this \
     figure is too low: scan the relieved tray and check again.";
