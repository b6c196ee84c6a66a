//! Drawings are well formed, finite, apart from each other on one page, and say what must be said.

use std::collections::HashSet;
use std::path::PathBuf;

use roxmltree::Document;
use tablerig::draw::{Style, above, picture, side};
use tablerig::plan::plan;

use crate::shots::drawn;
use crate::workshop;

#[test]
fn written_for_the_browser() {
    let folder = PathBuf::from(env!("CARGO_TARGET_TMPDIR")).join("drawings");
    std::fs::create_dir_all(&folder).unwrap();
    for drawn in drawn(60) {
        for (kind, svg) in drawn.all() {
            std::fs::write(folder.join(format!("{}-{kind}.svg", drawn.name)), svg).unwrap();
        }
    }
}

#[test]
fn every_number_is_one() {
    for drawn in drawn(200) {
        for (kind, svg) in drawn.all() {
            let document = Document::parse(svg).unwrap();
            for node in document.descendants() {
                for attribute in node.attributes().filter(|attribute| attribute.name() != "aria-labelledby") {
                    let value = attribute.value();
                    assert!(
                        !value.contains("NaN") && !value.contains("inf"),
                        "{} {kind}: {}={value}",
                        drawn.name,
                        attribute.name()
                    );
                }
            }
            // Shapes may go on a little outside, but not so far that a renderer loses its digits.
            for node in document.descendants().filter(|node| node.has_tag_name("line")) {
                for name in ["x1", "y1", "x2", "y2"] {
                    let value: f64 = node.attribute(name).unwrap().parse().unwrap();
                    assert!(value.abs() < 1e6, "{} {kind}: {name}={value}", drawn.name);
                }
            }
        }
    }
}

#[test]
fn names_inside_do_not_meet() {
    let (overhead, slanting) = (workshop::overhead(), workshop::slanting());
    let mut seen = HashSet::new();
    for (id, brief) in [("one", overhead), ("two", slanting), ("3. odd & <name>", overhead)] {
        let plan = plan(&brief).unwrap();
        let style = Style { id, ..Style::DEFAULT };
        for svg in [side(&brief, &plan, &style), above(&brief, &plan, &style), picture(&brief, &plan, &style)]
        {
            let document = Document::parse(&svg).unwrap();
            let mut here = HashSet::new();
            for node in document.descendants().filter(|node| node.has_attribute("id")) {
                let id = node.attribute("id").unwrap().to_owned();
                assert!(id.chars().all(|c| c.is_ascii_alphanumeric() || c == '-'), "{id}");
                here.insert(id.clone());
                assert!(seen.insert(id.clone()), "{id} twice");
            }
            // Whatever is pointed at is there.
            for node in document.descendants() {
                for attribute in node.attributes() {
                    if let Some(target) = attribute.value().strip_prefix("url(#") {
                        assert!(here.contains(target.trim_end_matches(')')), "{target}");
                    }
                }
            }
        }
    }
}

#[test]
fn a_name_is_text_and_nothing_else() {
    let brief = workshop::overhead();
    let plan = plan(&brief).unwrap();
    let name = "Jam & <script>\"jars\"</script>\u{0}\u{7}\u{FFFF} 壺".repeat(9);
    let svg = side(&brief, &plan, &Style { name: &name, ..Style::DEFAULT });
    let document = Document::parse(&svg).unwrap();
    let title = document.descendants().find(|node| node.has_tag_name("title")).unwrap();
    assert!(title.text().unwrap().starts_with("Jam & <script>\"jars\"</script>"));
    assert!(!document.descendants().any(|node| node.has_tag_name("script")));
}

#[test]
fn weights_come_with_what_rules() {
    for drawn in drawn(20) {
        for (kind, svg) in drawn.all() {
            let document = Document::parse(svg).unwrap();
            let told = |tag: &str| -> String {
                let nodes = document.descendants().filter(|node| node.has_tag_name(tag));
                nodes.flat_map(|node| node.descendants()).filter_map(|node| node.text()).collect()
            };
            assert!(!told("title").is_empty());
            for text in [told("desc"), told("text")] {
                assert!(!text.to_lowercase().contains("safe"));
                if kind != "picture" {
                    assert!(text.contains("makers' ratings rule"), "{} {kind}", drawn.name);
                    assert!(text.contains("qualified rigger"), "{} {kind}", drawn.name);
                }
            }
        }
    }
}

#[test]
fn the_same_every_time() {
    for (first, second) in drawn(5).iter().zip(drawn(5)) {
        assert_eq!(first.all(), second.all());
    }
}
