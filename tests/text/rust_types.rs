//! What the library's serialisable types look like in TypeScript, read out of its sources.

use std::collections::BTreeMap;
use std::fs;
use std::path::{Path, PathBuf};

use quote::ToTokens;
use syn::{Attribute, Expr, Fields, GenericArgument, Item, Lit, Meta, PathArguments, Type, Variant};

/// A type's TypeScript, and the names of the types it is made of.
#[derive(Debug, Default)]
pub(crate) struct Written {
    pub(crate) text: String,
    pub(crate) uses: Vec<String>,
}

/// All types by name.
pub(crate) type Types = BTreeMap<String, Written>;

/// Reads every type with a derived `Serialize`, and those that write a struct of their own instead.
pub(crate) fn read(folder: &Path) -> Types {
    let mut files = Vec::new();
    sources(folder, &mut files);
    let mut types = Types::new();
    for file in files {
        let parsed = syn::parse_file(&fs::read_to_string(&file).unwrap()).unwrap();
        for item in &parsed.items {
            let found = match item {
                Item::Struct(it) if serialised(&it.attrs) => {
                    let name = it.ident.to_string();
                    Some((name.clone(), interface(&name, &generics(&it.generics), &it.attrs, &it.fields)))
                }
                Item::Enum(it) if serialised(&it.attrs) => {
                    Some((it.ident.to_string(), union(&it.ident.to_string(), &it.attrs, it.variants.iter())))
                }
                Item::Impl(it) => told_instead(it),
                _ => None,
            };
            if let Some((name, written)) = found {
                assert!(types.insert(name.clone(), written).is_none(), "two types are called {name}");
            }
        }
    }
    types
}

/// The command prints what the library gives, and the C interface has types of its own.
fn sources(folder: &Path, into: &mut Vec<PathBuf>) {
    for entry in fs::read_dir(folder).unwrap() {
        let path = entry.unwrap().path();
        if path.ends_with("src/cli") || path.ends_with("doors/c") || path.ends_with("src/web") {
            continue;
        }
        if path.is_dir() {
            sources(&path, into);
        } else if path.extension().is_some_and(|extension| extension == "rs") {
            into.push(path);
        }
    }
}

fn attribute(attrs: &[Attribute]) -> String {
    attrs.iter().map(|attr| attr.to_token_stream().to_string()).collect::<Vec<_>>().join(" ")
}

fn serialised(attrs: &[Attribute]) -> bool {
    let text = attribute(attrs).replace(' ', "");
    text.contains("derive(") && text.contains("Serialize")
}

/// `impl Serialize for X` that fills a struct `Told` of its own.
fn told_instead(it: &syn::ItemImpl) -> Option<(String, Written)> {
    let (_, of, _) = it.trait_.as_ref()?;
    if of.segments.last()?.ident != "Serialize" {
        return None;
    }
    let name = it.self_ty.to_token_stream().to_string();
    for item in &it.items {
        let syn::ImplItem::Fn(function) = item else { continue };
        for statement in &function.block.stmts {
            if let syn::Stmt::Item(Item::Struct(told)) = statement {
                return Some((name.clone(), interface(&name, "", &it.attrs, &told.fields)));
            }
        }
    }
    None
}

fn generics(generics: &syn::Generics) -> String {
    let names: Vec<String> = generics.type_params().map(|it| it.ident.to_string()).collect();
    if names.is_empty() { String::new() } else { format!("<{}>", names.join(", ")) }
}

/// The documentation as a comment.
pub(crate) fn comment(indent: &str, text: &str) -> String {
    if text.is_empty() { String::new() } else { format!("{indent}/** {text} */\n") }
}

/// The first paragraph of an item's documentation, its links as plain code.
fn documentation(attrs: &[Attribute]) -> String {
    let mut lines = Vec::new();
    for attr in attrs {
        if let Meta::NameValue(pair) = &attr.meta
            && pair.path.is_ident("doc")
            && let Expr::Lit(literal) = &pair.value
            && let Lit::Str(text) = &literal.lit
        {
            let line = text.value().trim().to_owned();
            if line.is_empty() {
                break;
            }
            lines.push(line);
        }
    }
    lines.join(" ").replace("`None`", "`null`").replace("[`", "`").replace("`]", "`").replace("*/", "* /")
}

fn interface(name: &str, generics: &str, attrs: &[Attribute], fields: &Fields) -> Written {
    let mut written = Written::default();
    let body = body(fields, "  ", &mut written.uses);
    written.text =
        format!("{}export interface {name}{generics} {{\n{body}}}\n", comment("", &documentation(attrs)));
    written
}

fn body(fields: &Fields, indent: &str, uses: &mut Vec<String>) -> String {
    let mut text = String::new();
    for field in fields {
        let attrs = attribute(&field.attrs).replace(' ', "");
        if attrs.contains("serde(skip)") {
            continue;
        }
        let renamed = attrs.split_once("rename=\"").and_then(|(_, rest)| rest.split_once('"'));
        let name = match renamed {
            Some((name, _)) => name.to_owned(),
            None => field.ident.as_ref().unwrap().to_string(),
        };
        let mut typed = typescript(&field.ty, uses);
        for (with, other) in [
            ("number_or_infinite\"", "Infinite"),
            ("\"rooms\"", "Infinite"),
            ("\"most\"", "Infinite"),
            ("\"given\"", "Infinite | \"not_a_number\""),
        ] {
            if attrs.contains("serialize_with") && attrs.contains(with) {
                let both = typed.replacen("number", &format!("number | {other}"), 1);
                // Rust says how many there are.
                typed =
                    if typed.starts_with('[') { typed.replace("number", "number | Infinite") } else { both };
            }
        }
        let absent = if attrs.contains("skip_serializing_if") { "?" } else { "" };
        if absent == "?" {
            typed = typed.trim_end_matches(" | null").to_owned();
        }
        text.push_str(&comment(indent, &documentation(&field.attrs)));
        text.push_str(&format!("{indent}{name}{absent}: {typed};\n"));
    }
    text
}

fn union<'a>(name: &str, attrs: &[Attribute], variants: impl Iterator<Item = &'a Variant>) -> Written {
    let rules = attribute(attrs).replace(' ', "");
    let mut written = Written::default();
    let mut text = format!("{}export type {name} =", comment("", &documentation(attrs)));
    for variant in variants {
        let tag = snake(&variant.ident.to_string());
        let part = match &variant.fields {
            Fields::Unit => format!("\"{tag}\""),
            Fields::Unnamed(fields) => {
                let inner = typescript(&fields.unnamed.first().unwrap().ty, &mut written.uses);
                if rules.contains("untagged") { inner } else { format!("{{ {tag}: {inner} }}") }
            }
            fields if rules.contains("untagged") => {
                format!("{{\n{}  }}", body(fields, "    ", &mut written.uses))
            }
            fields => format!("{{ {tag}: {{\n{}    }} }}", body(fields, "      ", &mut written.uses)),
        };
        text.push_str(comment("\n  ", &documentation(&variant.attrs)).trim_end_matches('\n'));
        text.push_str(&format!("\n  | {part}"));
    }
    written.text = text + ";\n";
    written
}

fn snake(name: &str) -> String {
    let mut snake = String::new();
    for letter in name.chars() {
        if letter.is_uppercase() && !snake.is_empty() {
            snake.push('_');
        }
        snake.extend(letter.to_lowercase());
    }
    snake
}

fn typescript(of: &Type, uses: &mut Vec<String>) -> String {
    match of {
        Type::Reference(it) => typescript(&it.elem, uses),
        Type::Slice(it) => list(&typescript(&it.elem, uses)),
        Type::Array(it) => {
            let element = typescript(&it.elem, uses);
            match it.len.to_token_stream().to_string().parse::<usize>() {
                Ok(count) if count <= 4 => format!("[{}]", vec![element; count].join(", ")),
                _ => list(&element),
            }
        }
        Type::Path(it) => {
            let last = it.path.segments.last().unwrap();
            let inner = |uses: &mut Vec<String>| match &last.arguments {
                PathArguments::AngleBracketed(arguments) => {
                    let types = arguments.args.iter().filter_map(|argument| match argument {
                        GenericArgument::Type(of) => Some(of),
                        _ => None,
                    });
                    types.map(|of| typescript(of, uses)).collect::<Vec<_>>()
                }
                _ => Vec::new(),
            };
            match last.ident.to_string().as_str() {
                "f64" | "u32" | "i32" | "usize" => "number".into(),
                "bool" => "boolean".into(),
                "String" | "str" => "string".into(),
                "Option" => format!("{} | null", inner(uses)[0]),
                "Vec" => list(&inner(uses)[0]),
                // The weightiest of a plan are a list.
                "Cautions" => {
                    uses.push("Caution".into());
                    "Caution[]".into()
                }
                // A shoot file's JSON form.
                "Node" => "Shoot".into(),
                name => {
                    uses.push(name.into());
                    let inner = inner(uses);
                    if inner.is_empty() { name.into() } else { format!("{name}<{}>", inner.join(", ")) }
                }
            }
        }
        other => panic!("no TypeScript for {}", other.to_token_stream()),
    }
}

fn list(element: &str) -> String {
    if element.contains('|') { format!("({element})[]") } else { format!("{element}[]") }
}
