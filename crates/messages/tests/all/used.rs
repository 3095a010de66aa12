//! Every message that the sources name is in the catalogue with its parameters, and every
//! text of the catalogue is used.

use crate::texts::texts;
use messages::Language;
use proc_macro2::{Delimiter, TokenStream, TokenTree};
use std::collections::BTreeSet;
use std::fs;
use std::path::{Path, PathBuf};
use walkdir::WalkDir;

/// A message as a source names it.
struct Used {
    key: String,
    parameters: BTreeSet<String>,
    file: PathBuf,
    line: usize,
}

/// What the sources name.
#[derive(Default)]
struct Uses {
    messages: Vec<Used>,
    /// Kinds of names, such as `zone` in `Message::name("zone", …)`: the key is made of both.
    kinds: BTreeSet<String>,
}

fn sources() -> impl Iterator<Item = PathBuf> {
    let root = Path::new(env!("CARGO_MANIFEST_DIR"))
        .join("../..")
        .canonicalize()
        .unwrap();
    let folders = ["crates", "viewer"].map(|folder| root.join(folder));
    let of = |folder: PathBuf| WalkDir::new(folder).into_iter().flatten();
    folders
        .into_iter()
        .flat_map(of)
        .map(walkdir::DirEntry::into_path)
        .filter(|path| {
            let is_own = path.components().any(|part| part.as_os_str() == "messages");
            let is_source = path.components().any(|part| part.as_os_str() == "src");
            !is_own && is_source && path.extension().is_some_and(|ending| ending == "rs")
        })
}

fn uses() -> Uses {
    let mut uses = Uses::default();
    for file in sources() {
        let text = fs::read_to_string(&file).unwrap();
        // A whole file is a stream of tokens but for a byte order mark or a shebang.
        let stream: TokenStream = text.parse().unwrap();
        gather(stream, &file, &mut uses);
    }
    uses
}

fn gather(stream: TokenStream, file: &Path, uses: &mut Uses) {
    let tokens: Vec<TokenTree> = stream.into_iter().collect();
    for (at, token) in tokens.iter().enumerate() {
        let TokenTree::Group(group) = token else {
            continue;
        };
        let before = |back: usize| at.checked_sub(back).map(|at| tokens[at].to_string());
        let is_macro = before(1).as_deref() == Some("!");
        let parts = parts(group.stream());
        match before(2).as_deref() {
            Some("message") if is_macro => note(&parts, file, uses),
            Some("text") if is_macro => note(parts.get(1..).unwrap_or_default(), file, uses),
            _ if before(1).as_deref() == Some("name")
                && before(4).as_deref() == Some("Message")
                && group.delimiter() == Delimiter::Parenthesis =>
            {
                uses.kinds
                    .extend(parts.first().and_then(|first| literal(first)));
            }
            _ => {}
        }
        gather(group.stream(), file, uses);
    }
}

/// What stands between the commas of a list.
fn parts(stream: TokenStream) -> Vec<Vec<TokenTree>> {
    let mut parts = vec![Vec::new()];
    for token in stream {
        match &token {
            TokenTree::Punct(sign) if sign.as_char() == ',' => parts.push(Vec::new()),
            _ => parts.last_mut().unwrap().push(token),
        }
    }
    parts.retain(|part| !part.is_empty());
    parts
}

fn literal(part: &[TokenTree]) -> Option<String> {
    match part {
        [TokenTree::Literal(text)] => {
            let text = text.to_string();
            Some(text.strip_prefix('"')?.strip_suffix('"')?.to_owned())
        }
        _ => None,
    }
}

fn note(parts: &[Vec<TokenTree>], file: &Path, uses: &mut Uses) {
    let Some((key, rest)) = parts.split_first() else {
        return;
    };
    // In the definition of a macro the key is no literal.
    let Some(name) = literal(key) else {
        return;
    };
    let parameters = rest.iter().filter_map(|part| match part.as_slice() {
        [TokenTree::Ident(name), TokenTree::Punct(sign), ..] if sign.as_char() == '=' => {
            Some(name.to_string())
        }
        _ => None,
    });
    uses.messages.push(Used {
        key: name,
        parameters: parameters.collect(),
        file: file.to_owned(),
        line: key[0].span().start().line,
    });
}

#[test]
fn the_sources_name_messages_of_the_catalogue_with_their_parameters() {
    let english = texts(Language::English);
    let faults: Vec<String> = uses()
        .messages
        .into_iter()
        .filter_map(|used| {
            let place = format!("{}:{}: {}", used.file.display(), used.line, used.key);
            match english.get(&used.key) {
                None => Some(format!("{place} has no text")),
                Some(wanted) if *wanted == used.parameters => None,
                Some(wanted) => Some(format!(
                    "{place}: {:?} instead of {wanted:?}",
                    used.parameters
                )),
            }
        })
        .collect();
    assert!(faults.is_empty(), "{}", faults.join("\n"));
}

#[test]
fn every_text_is_used() {
    let uses = uses();
    let named: BTreeSet<&str> = uses.messages.iter().map(|used| used.key.as_str()).collect();
    let unused: Vec<String> = texts(Language::English)
        .into_keys()
        .filter(|key| {
            let is_name = |kind: &String| {
                key.strip_prefix(kind.as_str())
                    .is_some_and(|rest| rest.starts_with('-'))
            };
            // The catalogue itself joins lists and knows text of other libraries.
            key != "list" && !named.contains(key.as_str()) && !uses.kinds.iter().any(is_name)
        })
        .collect();
    assert!(unused.is_empty(), "{}", unused.join("\n"));
}
