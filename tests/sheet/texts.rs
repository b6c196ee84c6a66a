//! Nothing is fetched, and no text of the user's becomes markup.

use scraper::Selector;
use tablerig::draw::LengthUnit;
use tablerig::sheet::Paper;
use tablerig::shootfile::whole::Whole;

use super::{demo, parsed, sheet, shoot};

#[test]
fn nothing_is_fetched() {
    let html = sheet(&demo(), LengthUnit::Centimetres);
    let tree = parsed(&html);
    for css in ["script", "link", "img", "iframe", "object", "embed", "base", "form", "image", "use"] {
        assert!(tree.select(&Selector::parse(css).unwrap()).next().is_none(), "a <{css}>");
    }
    let elements = Selector::parse("*").unwrap();
    for element in tree.select(&elements) {
        for (name, value) in element.value().attrs() {
            let inside = value.starts_with('#') || value.starts_with("url(#");
            let names_place =
                matches!(name, "href" | "src" | "srcset" | "action" | "style") || value.contains("url(");
            assert!(!names_place || inside, "{name}=\"{value}\"");
            assert!(!name.starts_with("on"), "{name}");
        }
    }
    let styles = Selector::parse("style").unwrap();
    for style in tree.select(&styles) {
        let rules: String = style.text().collect();
        assert!(!rules.contains("@import") && !rules.contains("url(") && !rules.contains("http"), "{rules}");
    }
}

/// Names that would be markup, each in its own place.
#[test]
fn text_stays_text() {
    let wild = [
        ("title", r#"<script>alert("1")</script>"#),
        ("note", r#"</style><b>"bold" & 'brave'</b>"#),
        ("shot", r#"a"><img src=x onerror=alert(2)>"#),
        ("lens", r#"<i>lens</i> & co"#),
        ("surface", r#"oak </td></tr></table>"#),
        ("backdrop", r#"&lt;grey&gt; ]]> <!-- "#),
    ];
    let quoted = |index: usize| format!("{:?}", wild[index].1);
    let text = tablerig::shootfile::DEMO
        .replace("\"Autumn catalogue of a small preserves-and-pottery maker (invented)\"", &quoted(0))
        .replace("\"Cover. Paper backdrop; the labels must read straight.\"", &quoted(1))
        .replace("\"row-of-jars\"", &quoted(2))
        .replace("[lens.macro-100]", &format!("[lens.{}]", quoted(3)))
        .replace("\"macro-100\"", &quoted(3))
        .replace("\"slate\"", &quoted(4))
        .replace("\"grey-paper\"", &quoted(5));
    let file = shoot(&text);
    let tree = parsed(&sheet(&file, LengthUnit::Inches));
    for css in ["script", "img", "b", "i", "[onerror]"] {
        assert!(tree.select(&Selector::parse(css).unwrap()).next().is_none(), "a <{css}>");
    }
    let said: String = tree.root_element().text().collect();
    for (place, text) in wild {
        assert!(said.contains(text), "{place} lacks `{text}`");
    }
    assert_eq!(tree.select(&Selector::parse(".page").unwrap()).count(), file.shots.len() + 1);
}

/// A name that steers, or turns the direction of writing, would turn the figures after it as well.
#[test]
fn nothing_steers() {
    let text = tablerig::shootfile::DEMO
        .replace(
            "\"Cover. Paper backdrop; the labels must read straight.\"",
            r#""\u202Enote\u001B[31m\uFFFF""#,
        )
        .replace("\"row-of-jars\"", r#""a\u202Eb\u2066c\u0007d""#);
    let file = shoot(&text);
    let html = sheet(&file, LengthUnit::Centimetres);
    let steers = |c: char| {
        (c.is_control() && c != '\n')
            || matches!(c, '\u{202a}'..='\u{202e}' | '\u{2066}'..='\u{2069}' | '\u{ffff}')
    };
    assert_eq!(html.chars().find(|c| steers(*c)), None);
    assert!(html.contains("a\u{fffd}b\u{fffd}c\u{fffd}d"), "a sign for each");
    let style = tablerig::draw::Style { name: &file.shots[0].name, ..tablerig::draw::Style::DEFAULT };
    let svg = tablerig::draw::side(&file.shots[0].brief, &file.shots[0].plan, &style);
    assert_eq!(svg.chars().find(|c| steers(*c)), None);
}

#[test]
fn the_same_twice_and_for_either_paper() {
    let file = demo();
    let whole = Whole::new(&file, &[]);
    let on = |paper| whole.sheet(LengthUnit::FeetInches, paper).unwrap().unwrap();
    assert_eq!(on(None), on(None));
    assert!(on(Some(Paper::A4)).contains("size:A4") && on(Some(Paper::Letter)).contains("size:letter"));
    assert!(!on(None).contains("@page{size"), "the printer's own paper");
}

#[test]
fn a_shoot_without_shots_has_no_sheet() {
    let file = demo();
    let names: Vec<&str> = file.shots.iter().map(|shot| shot.name.as_str()).collect();
    assert_eq!(Whole::new(&file, &names).sheet(LengthUnit::Metres, None), Ok(None));
    let two = Whole::new(&file, &names[2..]);
    let html = two.sheet(LengthUnit::Metres, None).unwrap().unwrap();
    let tree = parsed(&html);
    assert_eq!(tree.select(&Selector::parse(".page.shot").unwrap()).count(), 2);
}
