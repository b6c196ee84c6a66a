//! Enumerations as they stand in the sources.

use std::fs;
use std::path::Path;

use syn::{Expr, ExprLit, Item, Lit};

/// The variants of an enumeration with their numbers.
pub(crate) fn variants(file: &str, name: &str) -> Vec<(String, i32)> {
    let text = fs::read_to_string(Path::new(env!("CARGO_MANIFEST_DIR")).join(file)).unwrap();
    let items = syn::parse_file(&text).unwrap().items;
    let found = items.into_iter().find_map(|item| match item {
        Item::Enum(found) if found.ident == name => Some(found),
        _ => None,
    });
    let found = found.unwrap_or_else(|| panic!("{file} has no {name}"));
    let number = |variant: &syn::Variant| match &variant.discriminant {
        Some((_, Expr::Lit(ExprLit { lit: Lit::Int(number), .. }))) => number.base10_parse().unwrap(),
        _ => panic!("{name}::{} has no number", variant.ident),
    };
    found.variants.iter().map(|variant| (variant.ident.to_string(), number(variant))).collect()
}

/// Whether what was reached is all that there is, each by its number.
pub(crate) fn all_reached(file: &str, name: &str, reached: impl IntoIterator<Item = i32>) {
    let reached: Vec<i32> = reached.into_iter().collect();
    let all = variants(file, name);
    assert!(!all.is_empty());
    for (variant, number) in &all {
        assert!(reached.contains(number), "no input is recorded that reaches {name}::{variant}");
    }
    for number in reached {
        assert!(all.iter().any(|(_, known)| *known == number), "{number} is no {name}");
    }
}
