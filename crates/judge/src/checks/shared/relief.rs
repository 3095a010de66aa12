//! How instructions speak of relieving a tray.

use crate::words::SAFETY;

/// An order to relieve the tray and take the wash that `wash` names, with what makes the
/// wash hold. How far to relieve is common practice.
pub(crate) fn relieve(wash: &str) -> String {
    format!(
        "Relieve the tray here by about 1 mm and a little beyond the place. Clean and dry it, put \
         adhesive on the bared tray and let it dry, {wash}. {SAFETY}"
    )
}

/// After relief the old scan of the tray no longer shows it there.
pub(crate) const IF_RELIEVED: &str = " If the tray was relieved here after it was scanned, this \
     figure is too low: scan the relieved tray and check again.";
