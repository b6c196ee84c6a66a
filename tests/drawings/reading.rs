//! Reads drawings back: what of the plan lies where in the room, and which texts take how much paper.

use roxmltree::{Document, Node};

/// Something drawn to scale, in millimetres of its plane: one place for a mark, two for a line, more for an
/// outline; for an ellipse its centre and the ends of its half axes.
#[derive(Clone, Debug)]
pub(crate) struct Part {
    pub(crate) plane: String,
    pub(crate) name: String,
    pub(crate) places: Vec<(f64, f64)>,
}

/// An attribute as a number.
pub(crate) fn number(node: Node<'_, '_>, name: &str) -> f64 {
    node.attribute(name).unwrap_or_else(|| panic!("no {name}")).parse().unwrap()
}

/// Every part of a drawing.
pub(crate) fn parts(document: &Document<'_>) -> Vec<Part> {
    let mut parts = Vec::new();
    for node in document.descendants().filter(|node| node.has_attribute("data-part")) {
        let Some(scaled) = node.ancestors().find(|node| node.has_attribute("data-mm-per-unit")) else {
            continue;
        };
        let mm = number(scaled, "data-mm-per-unit");
        let (x, y) = (number(scaled, "data-zero-x"), number(scaled, "data-zero-y"));
        let spots: Vec<(f64, f64)> = match node.tag_name().name() {
            "g" => {
                let moved = node.attribute("transform").unwrap();
                vec![pair(moved.strip_prefix("translate(").unwrap().strip_suffix(')').unwrap())]
            }
            "line" => {
                vec![(number(node, "x1"), number(node, "y1")), (number(node, "x2"), number(node, "y2"))]
            }
            "polygon" | "polyline" => node.attribute("points").unwrap().split(' ').map(pair).collect(),
            "ellipse" => {
                let (cx, cy) = (number(node, "cx"), number(node, "cy"));
                vec![(cx, cy), (cx + number(node, "rx"), cy), (cx, cy - number(node, "ry"))]
            }
            "circle" => {
                let (cx, cy) = (number(node, "cx"), number(node, "cy"));
                vec![(cx, cy), (cx + number(node, "r"), cy)]
            }
            "path" => {
                // Moves, and the ends of arcs: the last two numbers of each step.
                let steps = node.attribute("d").unwrap().split(['M', 'L', 'A', 'Z']);
                steps.filter(|step| !step.is_empty()).map(last_pair).collect()
            }
            other => panic!("{other} is no part"),
        };
        parts.push(Part {
            plane: scaled.attribute("data-plane").unwrap().into(),
            name: node.attribute("data-part").unwrap().into(),
            places: spots.iter().map(|(a, b)| ((a - x) * mm, (y - b) * mm)).collect(),
        });
    }
    parts
}

fn pair(text: &str) -> (f64, f64) {
    let (x, y) = text.split_once([',', ' ']).unwrap();
    (x.parse().unwrap(), y.parse().unwrap())
}

fn last_pair(step: &str) -> (f64, f64) {
    let numbers: Vec<f64> = step.split(' ').map(|number| number.parse().unwrap()).collect();
    let [.., x, y] = numbers.as_slice() else { panic!("{step}") };
    (*x, *y)
}

/// A text's paper: left, top, right, bottom.
#[derive(Clone, Debug)]
pub(crate) struct Words {
    pub(crate) text: String,
    pub(crate) area: [f64; 4],
}

/// Every text that is seen, with the paper it takes at most in a usual sans-serif face.
pub(crate) fn words(document: &Document<'_>) -> Vec<Words> {
    document
        .descendants()
        .filter(|node| node.has_tag_name("text"))
        .map(|node| {
            let size = number(node, "font-size");
            let mut width = 0.0;
            let mut text = String::new();
            for part in node.descendants().filter(Node::is_text) {
                let bold = part.ancestors().any(|node| node.attribute("font-weight") == Some("700"));
                let part = part.text().unwrap();
                width += part.chars().map(|c| ems(c, bold)).sum::<f64>() * size;
                text.push_str(part);
            }
            let (x, y) = (number(node, "x"), number(node, "y"));
            let left = match node.attribute("text-anchor") {
                Some("end") => x - width,
                Some("middle") => x - 0.5 * width,
                _ => x,
            };
            // Capitals and descenders of usual faces.
            Words { text, area: [left, y - 0.76 * size, left + width, y + 0.22 * size] }
        })
        .collect()
}

/// A character's width in sizes, by classes: no usual sans-serif face, upright, is wider on the average of
/// a word.
fn ems(character: char, bold: bool) -> f64 {
    let regular = match character {
        'i' | 'j' | 'l' | '\'' | '.' | ',' | ' ' | '\u{A0}' | ':' | ';' | '|' => 0.32,
        'f' | 't' | 'r' | 'I' | '(' | ')' | '-' | '/' => 0.41,
        'm' | 'w' | 'M' | 'W' | '%' | '×' | '−' | '+' => 0.95,
        's' | 'c' | 'z' | 'v' | 'x' | 'y' | 'k' => 0.58,
        'A'..='Z' => 0.76,
        _ => 0.62,
    };
    if bold { 1.1 * regular } else { regular }
}
