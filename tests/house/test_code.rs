//! Code that only tests compile: it is left out of every measure.

use syn::{Attribute, ImplItem, Item, Meta};

/// Whether one of these attributes keeps the item to test builds.
pub(super) fn is_for_tests(attributes: &[Attribute]) -> bool {
    attributes.iter().any(|attribute| match &attribute.meta {
        Meta::List(list) if list.path.is_ident("cfg") => {
            let condition = list.tokens.to_string();
            let holds = |word: &str| {
                let mut words = condition.split(|c: char| !c.is_alphanumeric() && c != '_');
                words.any(|other| other == word)
            };
            holds("test") && !holds("not")
        }
        Meta::Path(path) => path.is_ident("test"),
        _ => false,
    })
}

/// The attributes of an item.
pub(super) fn attributes_of(item: &Item) -> &[Attribute] {
    match item {
        Item::Const(item) => &item.attrs,
        Item::Enum(item) => &item.attrs,
        Item::ExternCrate(item) => &item.attrs,
        Item::Fn(item) => &item.attrs,
        Item::ForeignMod(item) => &item.attrs,
        Item::Impl(item) => &item.attrs,
        Item::Macro(item) => &item.attrs,
        Item::Mod(item) => &item.attrs,
        Item::Static(item) => &item.attrs,
        Item::Struct(item) => &item.attrs,
        Item::Trait(item) => &item.attrs,
        Item::TraitAlias(item) => &item.attrs,
        Item::Type(item) => &item.attrs,
        Item::Union(item) => &item.attrs,
        Item::Use(item) => &item.attrs,
        _ => &[],
    }
}

/// The attributes of an item of an `impl` block.
pub(super) fn attributes_of_member(item: &ImplItem) -> &[Attribute] {
    match item {
        ImplItem::Const(item) => &item.attrs,
        ImplItem::Fn(item) => &item.attrs,
        ImplItem::Macro(item) => &item.attrs,
        ImplItem::Type(item) => &item.attrs,
        _ => &[],
    }
}
