//! How instructions speak of relieving a tray.

use crate::relief::Relief;
use crate::subject::Subject;
use crate::words::SAFETY;
use measure::PlaceOnTray;
use measure::tray_fit::Amount;

/// An order to relieve the tray where its cover is not known in figures and take the wash
/// that `wash` names, with what makes the wash hold. How far to relieve is common practice.
pub(crate) fn relieve(wash: &str) -> String {
    format!(
        "Relieve the tray here by about 1 mm and a little beyond the place. {}",
        prepare(wash)
    )
}

/// The same at the patch of a number: how deep, where that is on the tray, and what it
/// leaves of its wall.
pub(crate) fn relieve_spot(subject: &Subject<'_>, number: usize, wash: &str) -> String {
    let measurement = subject.measurement();
    let on_tray = measurement.on_tray.get(number).and_then(Option::as_ref);
    let spot = &measurement.spots[number];
    let Some(relief) = Relief::of(spot, on_tray, subject.protocol()) else {
        return relieve(wash);
    };
    let depth_mm = (relief.depth_mm.value * 10.0 - 1e-6).ceil() / 10.0;
    let mut order = format!(
        "Relieve the tray here by {depth_mm:.1} mm at the deepest and a little beyond the place. "
    );
    order.extend(on_tray.and_then(whereabouts));
    order.extend(relief.left_mm.filter(|_| relief.is_too_deep).map(thin_wall));
    order + &prepare(wash)
}

/// Where a place is on the tray in the hand.
fn whereabouts(place: &PlaceOnTray) -> Option<String> {
    let (rim, front) = (place.to_outer_rim_mm?.value, place.to_front_mm?.value);
    Some(format!(
        "On the tray it lies {rim:.0} mm from the rim on the lip and cheek side and {front:.0} mm from the \
         middle of that rim at the front, both in a straight line. "
    ))
}

/// A warning of what relief leaves.
fn thin_wall(left: Amount) -> String {
    if left.value > left.uncertainty {
        format!(
            "That leaves about {:.1} mm of the tray's wall: reinforce it from outside first, or use another \
             tray. ",
            left.value
        )
    } else {
        "That may go through the tray's wall: use another tray. ".to_owned()
    }
}

fn prepare(wash: &str) -> String {
    format!("Clean and dry it, put adhesive on the bared tray and let it dry, {wash}. {SAFETY}")
}

/// After relief the old scan of the tray no longer shows it there.
pub(crate) const IF_RELIEVED: &str = " If the tray was relieved here after it was scanned, this \
     figure is too low: scan the relieved tray and check again.";
