//! Functions and their lengths.

use super::test_code::{attributes_of, attributes_of_member, is_for_tests};
use syn::spanned::Spanned;
use syn::visit::{self, Visit};
use syn::{
    Block, Expr, ImplItem, ImplItemFn, Item, ItemFn, ItemImpl, Signature, Stmt, TraitItemFn,
};
use syn::{Type, TypePath};

/// What the body of a function is made of.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Shape {
    /// Statements.
    Steps,
    /// One `match` and nothing else.
    OneMatch,
    /// One array, macro or structure of values and nothing else.
    Table,
}

/// A function.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Function {
    /// Its name, with the type that it belongs to.
    pub name: String,
    /// The line on which it begins, from 1.
    pub line: usize,
    /// Lines from its signature to its closing brace.
    pub lines: usize,
    /// What its body is made of.
    pub shape: Shape,
}

/// The functions of a file without those of its tests.
pub(super) fn functions_of(parsed: &syn::File) -> Vec<Function> {
    let mut finder = Finder::default();
    finder.visit_file(parsed);
    finder.found
}

#[derive(Default)]
struct Finder {
    owner: Option<String>,
    found: Vec<Function>,
}

impl Finder {
    fn add(&mut self, signature: &Signature, body: &Block) {
        let line = signature.span().start().line;
        let name = signature.ident.to_string();
        self.found.push(Function {
            name: match &self.owner {
                Some(owner) => format!("{owner}::{name}"),
                None => name,
            },
            line,
            lines: body.span().end().line + 1 - line,
            shape: shape_of(body),
        });
    }
}

impl<'ast> Visit<'ast> for Finder {
    fn visit_item(&mut self, item: &'ast Item) {
        if !is_for_tests(attributes_of(item)) {
            visit::visit_item(self, item);
        }
    }

    fn visit_item_impl(&mut self, item: &'ast ItemImpl) {
        let before = self.owner.replace(name_of(&item.self_ty));
        visit::visit_item_impl(self, item);
        self.owner = before;
    }

    fn visit_impl_item(&mut self, item: &'ast ImplItem) {
        if !is_for_tests(attributes_of_member(item)) {
            visit::visit_impl_item(self, item);
        }
    }

    fn visit_item_fn(&mut self, item: &'ast ItemFn) {
        self.add(&item.sig, &item.block);
        visit::visit_item_fn(self, item);
    }

    fn visit_impl_item_fn(&mut self, item: &'ast ImplItemFn) {
        self.add(&item.sig, &item.block);
        visit::visit_impl_item_fn(self, item);
    }

    fn visit_trait_item_fn(&mut self, item: &'ast TraitItemFn) {
        if let Some(body) = &item.default {
            self.add(&item.sig, body);
        }
        visit::visit_trait_item_fn(self, item);
    }
}

fn name_of(ty: &Type) -> String {
    match ty {
        Type::Path(TypePath { path, .. }) => path
            .segments
            .last()
            .map_or_else(String::new, |last| last.ident.to_string()),
        Type::Reference(reference) => name_of(&reference.elem),
        _ => String::new(),
    }
}

fn shape_of(body: &Block) -> Shape {
    match body.stmts.as_slice() {
        [Stmt::Expr(Expr::Match(_), _)] => Shape::OneMatch,
        [Stmt::Expr(Expr::Array(_) | Expr::Macro(_) | Expr::Struct(_) | Expr::Tuple(_), _)]
        | [Stmt::Macro(_)] => Shape::Table,
        _ => Shape::Steps,
    }
}
