//! Which file of a crate takes what from which other one.
//!
//! A re-export is no import: who names it imports the file that defines the
//! thing, and a `mod.rs` that only re-exports is passed through.

use super::modules::{Target, Tree, uses_of};
use super::test_code::{attributes_of, attributes_of_member, is_for_tests};
use proc_macro2::{TokenStream, TokenTree};
use std::collections::{BTreeMap, BTreeSet};
use syn::visit::{self, Visit};
use syn::{Attribute, ImplItem, Item, ItemUse, Macro, Meta, Path};

/// What one file takes from another of its crate.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Import {
    /// The file that imports, by its number among the crate's files.
    pub from: usize,
    /// The file that defines what is imported.
    pub to: usize,
    /// The names.
    pub names: BTreeSet<String>,
}

/// The imports between the files of a crate, in the order of the files.
pub(super) fn imports_in(tree: &Tree) -> Vec<Import> {
    let mut finder = Finder {
        tree,
        module: 0,
        found: BTreeMap::new(),
    };
    for (number, module) in tree.modules.iter().enumerate() {
        finder.module = number;
        for item in &module.items {
            finder.visit_item(item);
        }
    }
    let found = finder.found.into_iter();
    found
        .map(|((from, to), names)| Import { from, to, names })
        .collect()
}

struct Finder<'a> {
    tree: &'a Tree,
    module: usize,
    found: BTreeMap<(usize, usize), BTreeSet<String>>,
}

impl Finder<'_> {
    fn add(&mut self, path: &[String]) {
        let from = self.tree.modules[self.module].file;
        if let Some(Target::Definition(to)) = self.tree.target(self.module, path)
            && to != from
        {
            let name = path.last().cloned().unwrap_or_default();
            self.found.entry((from, to)).or_default().insert(name);
        }
    }

    /// Paths in the tokens of a macro or an attribute, which are not parsed.
    fn add_tokens(&mut self, tokens: TokenStream) {
        let mut path: Vec<String> = Vec::new();
        let mut colons = 0;
        for token in tokens {
            match token {
                TokenTree::Ident(name) => {
                    if colons != 2 {
                        self.add(&path);
                        path.clear();
                    }
                    path.push(name.to_string());
                    colons = 0;
                }
                TokenTree::Punct(mark) if mark.as_char() == ':' => colons += 1,
                other => {
                    self.add(&path);
                    path.clear();
                    colons = 0;
                    if let TokenTree::Group(group) = other {
                        self.add_tokens(group.stream());
                    }
                }
            }
        }
        self.add(&path);
    }
}

impl<'ast> Visit<'ast> for Finder<'_> {
    fn visit_item(&mut self, item: &'ast Item) {
        if !is_for_tests(attributes_of(item)) {
            visit::visit_item(self, item);
        }
    }

    fn visit_impl_item(&mut self, item: &'ast ImplItem) {
        if !is_for_tests(attributes_of_member(item)) {
            visit::visit_impl_item(self, item);
        }
    }

    fn visit_item_use(&mut self, item: &'ast ItemUse) {
        for taken in uses_of(item) {
            if !taken.is_passed_on && taken.alias.is_some() {
                self.add(&taken.path);
            }
        }
    }

    fn visit_path(&mut self, path: &'ast Path) {
        if path.leading_colon.is_none() {
            let names: Vec<String> = path.segments.iter().map(|s| s.ident.to_string()).collect();
            self.add(&names);
        }
        visit::visit_path(self, path);
    }

    fn visit_macro(&mut self, found: &'ast Macro) {
        self.add_tokens(found.tokens.clone());
        visit::visit_macro(self, found);
    }

    fn visit_attribute(&mut self, attribute: &'ast Attribute) {
        if let Meta::List(list) = &attribute.meta {
            self.add_tokens(list.tokens.clone());
        }
    }
}
