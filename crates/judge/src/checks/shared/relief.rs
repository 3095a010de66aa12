//! How instructions speak of relieving a tray.

use crate::decision::{Bound, Conformity, decide};
use crate::protocol::LimitKey;
use crate::relief::Relief;
use crate::subject::Subject;
use crate::words::{safety, tenths_mm};
use measure::tray_fit::Amount;
use messages::{Message, Value, message};

/// An order to relieve the tray where its cover is not known in figures and take the wash
/// that `wash` names, with what makes the wash hold. How far to relieve is common practice.
pub(crate) fn relieve(wash: Message) -> Message {
    message!("relief").then(prepare(wash))
}

/// The same at the patch of a number: how deep, and what that leaves of the tray's wall.
pub(crate) fn relieve_spot(subject: &Subject<'_>, number: usize, wash: Message) -> Message {
    if let Some(done) = after_relief(subject, number, &wash) {
        return done;
    }
    let measurement = subject.measurement();
    let on_tray = measurement.on_tray.get(number).and_then(Option::as_ref);
    let spot = &measurement.spots[number];
    let Some(relief) = Relief::of(spot, on_tray, subject.protocol()) else {
        return relieve(wash);
    };
    message!("relief-by", depth = mm(tenths_up(relief.depth_mm.value)))
        .then(relief.left_mm.filter(|_| relief.is_too_deep).map(thin_wall))
        .then(prepare(wash))
}

/// What is left to do at the patch of a number where the relieved tray was scanned; `None`
/// where it was not, or not there.
fn after_relief(subject: &Subject<'_>, number: usize, wash: &Message) -> Option<Message> {
    let places = match subject.relief()? {
        Ok(places) => places,
        Err(why) => {
            let unusable = message!("relief-scan-unusable", why = why);
            return Some(unusable.then(relieve(wash.clone())));
        }
    };
    let place = places.get(number)?.as_ref()?;
    let room = subject.limit(LimitKey::ReliefRoom);
    let conformity = decide(
        place.least_room_mm.value,
        place.least_room_mm.uncertainty,
        Bound::AtLeast(room.value),
    );
    let (depth, least_room) = (place.deepest_mm, place.least_room_mm);
    let done = message!(
        "relief-done",
        depth = tenths_mm(depth.value.max(0.0), shown_doubt(depth)),
        room = tenths_mm(least_room.value, shown_doubt(least_room)),
        wanted = mm(room.value)
    );
    let rest = match conformity {
        Conformity::NotConforming => {
            let depth_mm = tenths_up(room.value - least_room.value);
            message!("relief-more", depth = mm(depth_mm))
        }
        Conformity::Conforming | Conformity::Borderline => message!("relief-enough"),
    };
    Some(done.then(rest).then(prepare(wash.clone())))
}

/// An uncertainty to tenths of a millimetre, never 0.
fn shown_doubt(of: Amount) -> f64 {
    tenths_up(of.uncertainty).max(0.1)
}

/// Millimetres, rounded up to tenths.
fn tenths_up(mm: f64) -> f64 {
    (mm * 10.0 - 1e-6).ceil() / 10.0
}

fn mm(mm: f64) -> Value {
    Value::figure(format!("{mm:.1} mm"))
}

/// A warning of what relief leaves.
fn thin_wall(left: Amount) -> Message {
    if left.value > left.uncertainty {
        message!("relief-thin-wall", left = mm(left.value))
    } else {
        message!("relief-through-wall")
    }
}

fn prepare(wash: Message) -> Message {
    message!("relief-then", then = wash).then(safety())
}

/// After relief the old scan of the tray no longer shows it there.
pub(crate) fn if_relieved() -> Message {
    message!("relief-unknown")
}
