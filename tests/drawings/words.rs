//! No text lies on another or leaves the paper.

use roxmltree::Document;
use tablerig::draw::{LengthUnit, Style, above, picture, side};
use tablerig::plan::plan;

use crate::demo;
use crate::reading::{number, words};
use crate::shots::drawn;

fn check(name: &str, svg: &str) -> usize {
    let document = Document::parse(svg).unwrap();
    let root = document.root_element();
    let paper: Vec<f64> =
        root.attribute("viewBox").unwrap().split(' ').map(|number| number.parse().unwrap()).collect();
    let all = words(&document);
    for (index, a) in all.iter().enumerate() {
        let [left, top, right, bottom] = a.area;
        assert!(
            left >= 0.0 && top >= 0.0 && right <= paper[2] && bottom <= paper[3],
            "{name}: {:?} leaves the paper: {:?}",
            a.text,
            a.area
        );
        for b in &all[index + 1..] {
            let over = left < b.area[2] && b.area[0] < right && top < b.area[3] && b.area[1] < bottom;
            assert!(!over, "{name}: {:?} lies on {:?}", a.text, b.text);
        }
    }
    // At least 2.7 mm on paper: a unit is a quarter of a millimetre.
    for text in document.descendants().filter(|node| node.has_tag_name("text")) {
        assert!(number(text, "font-size") >= 11.0, "{name}: too small to read");
    }
    all.len()
}

#[test]
fn no_text_lies_on_another() {
    let mut texts = 0;
    for drawn in drawn(200) {
        for (kind, svg) in drawn.all() {
            texts += check(&format!("{} {kind}", drawn.name), svg);
        }
    }
    assert!(texts > 10_000, "{texts}");
}

#[test]
fn in_every_unit_and_on_every_paper() {
    for (name, brief) in demo::shots() {
        let plan = plan(&brief).unwrap();
        for unit in LengthUnit::ALL {
            for (width, height) in [(480.0, 240.0), (720.0, 370.0), (1000.0, 1400.0), (f64::NAN, 1e9)] {
                let style = Style { unit, width, height, id: "a", name: &name };
                check(&name, &side(&brief, &plan, &style));
                check(&name, &above(&brief, &plan, &style));
                check(&name, &picture(&brief, &plan, &style));
            }
        }
    }
}
