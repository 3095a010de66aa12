//! The files of a crate as a tree of modules, and which file defines a name.

use super::code::{Line, lines_of_code};
use super::fault::HouseError;
use super::functions::{Function, functions_of};
use super::test_code::{attributes_of, is_for_tests};
use std::collections::{BTreeMap, BTreeSet};
use std::path::{Path, PathBuf};
use syn::{Item, ItemUse, UseTree};

/// A source file.
#[derive(Debug, Clone)]
pub struct File {
    /// Its path below the crate's folder.
    pub path: PathBuf,
    /// Its lines, tests and comments among them.
    pub lines: usize,
    /// Its lines of code.
    pub code: Vec<Line>,
    /// Its functions.
    pub functions: Vec<Function>,
}

/// A `use` of one name.
#[derive(Debug, Clone)]
pub(super) struct Use {
    /// The path that is named.
    pub path: Vec<String>,
    /// The name that it gets; `None` stands for all names below the path.
    pub alias: Option<String>,
    /// Whether the name is passed on to other modules.
    pub is_passed_on: bool,
}

/// A module: a file, or a block within one.
#[derive(Default)]
pub(super) struct Module {
    /// The file that holds it.
    pub file: usize,
    parent: Option<usize>,
    children: BTreeMap<String, usize>,
    /// Names that it defines.
    names: BTreeSet<String>,
    /// Names that it takes from elsewhere.
    pub uses: Vec<Use>,
    /// Its own items, without those of modules inside it and of tests.
    pub items: Vec<Item>,
}

/// Where a path leads.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Target {
    /// To a module.
    Module(usize),
    /// To something that this file defines.
    Definition(usize),
}

/// The modules of one crate.
#[derive(Default)]
pub(super) struct Tree {
    pub modules: Vec<Module>,
    pub files: Vec<File>,
}

/// Re-exports of re-exports are followed this often.
const DEEPEST: usize = 16;

impl Tree {
    /// Reads the sources of a crate from its roots on.
    pub(super) fn read(folder: &Path) -> Result<Self, HouseError> {
        let mut tree = Self::default();
        for root in ["src/lib.rs", "src/main.rs", "lib.rs"] {
            if folder.join(root).is_file() {
                let below = Path::new(root).parent().unwrap_or(Path::new(""));
                tree.add_file(folder, Path::new(root), below, None)?;
            }
        }
        Ok(tree)
    }

    /// Adds a file whose modules have their files in `below`.
    fn add_file(
        &mut self,
        folder: &Path,
        path: &Path,
        below: &Path,
        parent: Option<usize>,
    ) -> Result<usize, HouseError> {
        let whole = folder.join(path);
        let text = std::fs::read_to_string(&whole).map_err(HouseError::unreadable(&whole))?;
        let parsed = syn::parse_file(&text).map_err(|source| HouseError::NotRust {
            path: whole.clone(),
            source,
        })?;
        let file = self.files.len();
        self.files.push(File {
            path: path.to_owned(),
            lines: text.lines().count(),
            code: lines_of_code(&text, &parsed),
            functions: functions_of(&parsed),
        });
        self.add_module(folder, below, Place { file, parent }, parsed.items)
    }

    fn add_module(
        &mut self,
        folder: &Path,
        below: &Path,
        place: Place,
        items: Vec<Item>,
    ) -> Result<usize, HouseError> {
        let this = self.modules.len();
        self.modules.push(Module {
            file: place.file,
            parent: place.parent,
            ..Module::default()
        });
        let within = Place {
            file: place.file,
            parent: Some(this),
        };
        for item in items {
            if is_for_tests(attributes_of(&item)) {
                continue;
            }
            match item {
                Item::Mod(module) => {
                    let name = module.ident.to_string();
                    let inside = below.join(&name);
                    let child = match module.content {
                        Some((_, items)) => self.add_module(folder, &inside, within, items)?,
                        None => {
                            let path = self.file_of(folder, &inside, place.file)?;
                            self.add_file(folder, &path, &inside, Some(this))?
                        }
                    };
                    self.modules[this].children.insert(name, child);
                }
                item => {
                    self.modules[this].names.extend(name_of(&item));
                    if let Item::Use(item) = &item {
                        self.modules[this].uses.extend(uses_of(item));
                    }
                    self.modules[this].items.push(item);
                }
            }
        }
        Ok(this)
    }

    fn file_of(&self, folder: &Path, module: &Path, from: usize) -> Result<PathBuf, HouseError> {
        [module.with_extension("rs"), module.join("mod.rs")]
            .into_iter()
            .find(|path| folder.join(path).is_file())
            .ok_or_else(|| HouseError::NoFile {
                path: folder.join(&self.files[from].path),
                name: module.display().to_string(),
            })
    }

    /// Where a path leads that is written in a module; `None` out of the crate.
    pub(super) fn target(&self, from: usize, path: &[String]) -> Option<Target> {
        self.target_within(from, path, DEEPEST)
    }

    fn target_within(&self, from: usize, path: &[String], depth: usize) -> Option<Target> {
        let (first, rest) = path.split_first()?;
        let mut at = match first.as_str() {
            "crate" => self.root_of(from),
            "self" => from,
            "super" => self.modules[from].parent?,
            name => match self.named(from, name, depth)? {
                Target::Module(module) => module,
                definition => return Some(definition),
            },
        };
        for name in rest {
            at = match name.as_str() {
                "super" => self.modules[at].parent?,
                "self" => at,
                name => match self.named(at, name, depth) {
                    Some(Target::Module(module)) => module,
                    Some(definition) => return Some(definition),
                    // Made by a macro, say.
                    None => return Some(Target::Definition(self.modules[at].file)),
                },
            };
        }
        Some(Target::Module(at))
    }

    /// What a name means in a module.
    fn named(&self, module: usize, name: &str, depth: usize) -> Option<Target> {
        let depth = depth.checked_sub(1)?;
        let here = &self.modules[module];
        if let Some(&child) = here.children.get(name) {
            return Some(Target::Module(child));
        }
        if here.names.contains(name) {
            return Some(Target::Definition(here.file));
        }
        let taken = here.uses.iter().find(|u| u.alias.as_deref() == Some(name));
        if let Some(taken) = taken {
            return self.target_within(module, &taken.path, depth);
        }
        let mut all_below = here.uses.iter().filter(|u| u.alias.is_none());
        all_below.find_map(|u| match self.target_within(module, &u.path, depth)? {
            Target::Module(other) if other != module => self.named(other, name, depth),
            _ => None,
        })
    }

    fn root_of(&self, mut module: usize) -> usize {
        while let Some(parent) = self.modules[module].parent {
            module = parent;
        }
        module
    }
}

#[derive(Clone, Copy)]
struct Place {
    file: usize,
    parent: Option<usize>,
}

fn name_of(item: &Item) -> Option<String> {
    Some(match item {
        Item::Const(item) => item.ident.to_string(),
        Item::Enum(item) => item.ident.to_string(),
        Item::Fn(item) => item.sig.ident.to_string(),
        Item::Macro(item) => item.ident.as_ref()?.to_string(),
        Item::Static(item) => item.ident.to_string(),
        Item::Struct(item) => item.ident.to_string(),
        Item::Trait(item) => item.ident.to_string(),
        Item::Type(item) => item.ident.to_string(),
        Item::Union(item) => item.ident.to_string(),
        _ => return None,
    })
}

/// The names that a `use` takes, one by one.
pub(super) fn uses_of(item: &ItemUse) -> Vec<Use> {
    if item.leading_colon.is_some() {
        return Vec::new();
    }
    let is_passed_on = !matches!(item.vis, syn::Visibility::Inherited);
    let mut found = Vec::new();
    collect(&item.tree, &mut Vec::new(), is_passed_on, &mut found);
    found
}

fn collect(tree: &UseTree, before: &mut Vec<String>, is_passed_on: bool, found: &mut Vec<Use>) {
    let mut add = |path: Vec<String>, alias: Option<String>| {
        found.push(Use {
            path,
            alias,
            is_passed_on,
        });
    };
    match tree {
        UseTree::Path(path) => {
            before.push(path.ident.to_string());
            collect(&path.tree, before, is_passed_on, found);
            before.pop();
        }
        UseTree::Name(name) if name.ident == "self" => {
            add(before.clone(), before.last().cloned());
        }
        UseTree::Name(name) => {
            let name = name.ident.to_string();
            let path = [before.as_slice(), std::slice::from_ref(&name)].concat();
            add(path, Some(name));
        }
        UseTree::Rename(rename) => {
            let path = match rename.ident.to_string() {
                name if name == "self" => before.clone(),
                name => [before.as_slice(), &[name]].concat(),
            };
            add(path, Some(rename.rename.to_string()));
        }
        UseTree::Glob(_) => add(before.clone(), None),
        UseTree::Group(group) => {
            for tree in &group.items {
                collect(tree, before, is_passed_on, found);
            }
        }
    }
}
