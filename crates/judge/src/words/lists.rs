//! Things in a row within a sentence.

use messages::{Message, Value, message};

/// One of several things: `a or b or c`.
#[must_use]
pub fn either<T: Into<Value>>(things: impl DoubleEndedIterator<Item = T>) -> Value {
    joined(things, |one, other| {
        message!("either", one = one, other = other)
    })
}

/// Things in a row, each as important as the others: `a, b, c`.
pub(crate) fn enumerated<T: Into<Value>>(things: impl DoubleEndedIterator<Item = T>) -> Value {
    joined(things, |one, other| {
        message!("enumerated", one = one, other = other)
    })
}

/// Things that hold at once and have commas of their own: `a and b and c`.
#[must_use]
pub fn both<T: Into<Value>>(things: impl DoubleEndedIterator<Item = T>) -> Value {
    joined(things, |one, other| {
        message!("list", first = one, last = other)
    })
}

fn joined<T: Into<Value>>(
    things: impl DoubleEndedIterator<Item = T>,
    join: impl Fn(Value, Value) -> Message,
) -> Value {
    (things.map(Into::into).rev())
        .reduce(|rest, first| join(first, rest).into())
        .unwrap_or_else(|| "".into())
}

#[cfg(test)]
mod tests {
    use super::*;
    use messages::Language;

    #[test]
    fn things_are_joined_in_their_order() {
        let joined = |join: fn(std::array::IntoIter<&'static str, 3>) -> Value| {
            let value = join(["a", "b", "c"].into_iter());
            Language::ALL.map(|language| value.text(language))
        };
        assert_eq!(
            joined(either),
            ["a or b or c", "a oder b oder c", "a o b o c"]
        );
        assert_eq!(joined(enumerated), ["a, b, c"; 3]);
        assert_eq!(joined(both)[0], "a and b and c");
        assert_eq!(either(["a"].into_iter()), "a".into());
    }
}
