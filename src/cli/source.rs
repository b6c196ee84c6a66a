//! Where a shoot file comes from: a file, standard input or the built-in demo.

use std::borrow::ToOwned;
use std::format;
use std::io::Read;
use std::path::Path;
use std::prelude::rust_2024::*;

use crate::shootfile::problem::{Problem, ProblemKind};
use crate::shootfile::{DEMO, Form};

/// A device may never end, and memory does; thousands of shots are a few of these.
const MOST_BYTES: u64 = 16 << 20;

/// A shoot file's text, and its name for messages.
#[derive(Clone, Debug)]
pub(crate) struct Source {
    pub(crate) name: String,
    pub(crate) text: String,
    pub(crate) form: Form,
}

impl Source {
    /// The built-in demo.
    pub(crate) fn demo() -> Source {
        Source { name: "the built-in demo".to_owned(), text: DEMO.to_owned(), form: Form::Toml }
    }

    /// Text that is at hand; JSON where it begins with a brace.
    pub(crate) fn text(name: &str, text: String) -> Source {
        let form = Form::of(&text);
        Source { name: name.to_owned(), text, form }
    }

    /// Reads a file, or standard input where the path is `-`.
    pub(crate) fn open(path: &Path) -> Result<Source, Box<(Source, Problem)>> {
        let standard_input = path.as_os_str() == "-";
        let name = if standard_input { "standard input".to_owned() } else { path.display().to_string() };
        let empty = Source { name, text: String::new(), form: Form::Toml };
        let mut bytes = Vec::new();
        let most = MOST_BYTES + 1;
        let read = if standard_input {
            std::io::stdin().lock().take(most).read_to_end(&mut bytes)
        } else {
            std::fs::File::open(path).and_then(|file| file.take(most).read_to_end(&mut bytes))
        };
        if bytes.len() as u64 > MOST_BYTES {
            let title = format!("{} goes on after {} MB: it is no shoot file", empty.name, MOST_BYTES >> 20);
            return Err(Box::new((empty, Problem::general(ProblemKind::NotReadable, title))));
        }
        if let Err(error) = read {
            let problem = Problem::general(
                ProblemKind::NotReadable,
                format_args!("{} cannot be read: {error}", empty.name),
            );
            let problem = match error.kind() {
                std::io::ErrorKind::NotFound => {
                    problem.help("`tablerig example > shoot.toml` writes a file to start from")
                }
                _ => problem,
            };
            return Err(Box::new((empty, problem)));
        }
        let text = match String::from_utf8(bytes) {
            Ok(text) => text,
            Err(error) => return Err(Box::new(not_utf8(empty, &error))),
        };
        // A byte order mark says nothing here, but would count as a character of the first key.
        let text = text.strip_prefix('\u{feff}').map(str::to_owned).unwrap_or(text);
        if text.trim().is_empty() {
            let problem = Problem::general(ProblemKind::NotReadable, format_args!("{} is empty", empty.name))
                .help("`tablerig example > shoot.toml` writes a file to start from");
            return Err(Box::new((empty, problem)));
        }
        let named_json = path.extension().is_some_and(|extension| extension.eq_ignore_ascii_case("json"));
        let mut source = Source::text(&empty.name, text);
        if named_json {
            source.form = Form::Json;
        }
        Ok(source)
    }
}

fn not_utf8(empty: Source, error: &std::string::FromUtf8Error) -> (Source, Problem) {
    let at = error.utf8_error().valid_up_to();
    let bytes = error.as_bytes();
    let byte = bytes.get(at).copied().unwrap_or_default();
    let before = String::from_utf8_lossy(&bytes[..at]).into_owned();
    let start = before.len();
    // The readable part, with a sign where the bad byte stands, so that its line can be shown.
    let text = format!("{before}\u{fffd}");
    let problem = Problem::new(
        ProblemKind::NotReadable,
        format_args!("{} is not UTF-8 text", empty.name),
        start..text.len(),
        format_args!("byte 0x{byte:02x} is no character"),
    )
    .help("save the file as UTF-8 in your editor");
    (Source { text, ..empty }, problem)
}
