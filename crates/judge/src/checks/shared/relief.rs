//! How instructions speak of relieving a tray.

use crate::decision::{Bound, Conformity, decide};
use crate::protocol::LimitKey;
use crate::relief::Relief;
use crate::subject::Subject;
use crate::words::SAFETY;
use measure::tray_fit::Amount;

/// An order to relieve the tray where its cover is not known in figures and take the wash
/// that `wash` names, with what makes the wash hold. How far to relieve is common practice.
pub(crate) fn relieve(wash: &str) -> String {
    format!(
        "Relieve the tray here by about 1 mm and a little beyond the place. {}",
        prepare(wash)
    )
}

/// The same at the patch of a number: how deep, and what that leaves of the tray's wall.
pub(crate) fn relieve_spot(subject: &Subject<'_>, number: usize, wash: &str) -> String {
    if let Some(done) = after_relief(subject, number, wash) {
        return done;
    }
    let measurement = subject.measurement();
    let on_tray = measurement.on_tray.get(number).and_then(Option::as_ref);
    let spot = &measurement.spots[number];
    let Some(relief) = Relief::of(spot, on_tray, subject.protocol()) else {
        return relieve(wash);
    };
    let depth_mm = tenths_up(relief.depth_mm.value);
    let mut order = format!(
        "Relieve the tray here by {depth_mm:.1} mm at the deepest and a little beyond the place. "
    );
    order.extend(relief.left_mm.filter(|_| relief.is_too_deep).map(thin_wall));
    order + &prepare(wash)
}

/// What is left to do at the patch of a number where the relieved tray was scanned; `None`
/// where it was not, or not there.
fn after_relief(subject: &Subject<'_>, number: usize, wash: &str) -> Option<String> {
    let places = match subject.relief()? {
        Ok(places) => places,
        Err(why) => {
            return Some(format!(
                "The scan of the relieved tray tells nothing: {why}. Give the right scan, or look at the tray \
                 itself. {}",
                relieve(wash)
            ));
        }
    };
    let place = places.get(number)?.as_ref()?;
    let room = subject.limit(LimitKey::ReliefRoom);
    let conformity = decide(
        place.least_room_mm.value,
        place.least_room_mm.uncertainty,
        Bound::AtLeast(room.value),
    );
    let done = format!(
        "The scan of the relieved tray shows {:.1} ± {:.1} mm taken off here, which makes room of {:.1} ± {:.1} mm; \
         {:.1} mm are wanted. ",
        place.deepest_mm.value.max(0.0),
        shown_doubt(place.deepest_mm),
        place.least_room_mm.value,
        shown_doubt(place.least_room_mm),
        room.value,
    );
    let rest = match conformity {
        Conformity::NotConforming => format!(
            "Relieve the tray by another {:.1} mm here. ",
            tenths_up(room.value - place.least_room_mm.value)
        ),
        Conformity::Conforming | Conformity::Borderline => "That is enough. ".to_owned(),
    };
    Some(done + &rest + &prepare(wash))
}

/// An uncertainty to tenths of a millimetre, never 0.
fn shown_doubt(of: Amount) -> f64 {
    tenths_up(of.uncertainty).max(0.1)
}

/// Millimetres, rounded up to tenths.
fn tenths_up(mm: f64) -> f64 {
    (mm * 10.0 - 1e-6).ceil() / 10.0
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
