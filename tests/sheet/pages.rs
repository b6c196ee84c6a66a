//! Every shot has its page, with its numbers and its cautions.

use scraper::{ElementRef, Html, Selector};
use tablerig::caution::Level;
use tablerig::caution::overhead::OVERHEAD_CAUTIONS;
use tablerig::draw::LengthUnit;
use tablerig::shootfile::NamedShot;
use tablerig::shootfile::whole::Whole;

use super::{demo, parsed, sheet, shoot};

fn all<'a>(html: &'a Html, css: &str) -> Vec<ElementRef<'a>> {
    html.select(&Selector::parse(css).expect("a selector")).collect()
}

fn within<'a>(element: ElementRef<'a>, css: &str) -> Vec<ElementRef<'a>> {
    element.select(&Selector::parse(css).expect("a selector")).collect()
}

fn text(element: ElementRef<'_>) -> String {
    element.text().collect::<String>().replace('\u{a0}', " ")
}

/// The number, in millimetres, that a page gives in large type for a label.
fn large_mm(page: ElementRef<'_>, label: &str) -> (f64, String) {
    let rows = within(page, ".numbers tr");
    let row = rows.into_iter().find(|row| within(*row, ".label").into_iter().any(|it| text(it) == label));
    let row = row.unwrap_or_else(|| panic!("no row `{label}`"));
    let value = text(within(row, ".value")[0]);
    // In brackets, where it is not to be set.
    let value = value.trim_matches(['(', ')']);
    let (number, unit) = value.split_once(' ').expect("a number and its unit");
    let to_mm = match unit {
        "mm" => 1.0,
        "cm" => 10.0,
        other => panic!("{other}"),
    };
    (number.parse::<f64>().expect("a number") * to_mm, text(within(row, ".within")[0]))
}

/// The pages with their shots, in the order of shooting.
fn pages<'a>(html: &'a Html, whole: &Whole<'a>) -> Vec<(ElementRef<'a>, &'a NamedShot)> {
    let order = whole.order().expect("there is an order");
    let pages = all(html, ".page.shot");
    assert_eq!(pages.len(), whole.shots.len());
    pages.into_iter().zip(order.sequence.iter().map(|shot| whole.shots[*shot])).collect()
}

#[test]
fn every_shot_has_its_page_in_the_order_of_shooting() {
    let file = demo();
    let html = parsed(&sheet(&file, LengthUnit::Centimetres));
    let whole = Whole::new(&file, &[]);
    assert_eq!(all(&html, ".page").len(), file.shots.len() + 1, "an overview, then a page a shot");
    for (place, (page, shot)) in pages(&html, &whole).into_iter().enumerate() {
        assert_eq!(text(within(page, "h2")[0]), shot.name);
        assert!(text(within(page, ".place")[0]).starts_with(&format!("{}", place + 1)));
        assert_eq!(within(page, "svg").len(), 3, "three drawings of {}", shot.name);
        assert!(within(page, "tbody tr .box").len() >= 7, "something to tick for {}", shot.name);
    }
    // The overview leads to each of them.
    let places = all(&html, ".order a");
    assert_eq!(all(&html, ".order .stop").len(), 1, "what cannot be done as asked is marked there too");
    for (link, (page, shot)) in places.iter().zip(pages(&html, &whole)) {
        assert_eq!(
            (text(*link), link.attr("href")),
            (shot.name.clone(), page.attr("id").map(|id| format!("#{id}")).as_deref())
        );
    }
}

#[test]
fn the_large_numbers_are_the_plans() {
    let file = demo();
    for unit in [LengthUnit::Millimetres, LengthUnit::Centimetres] {
        let html = parsed(&sheet(&file, unit));
        for (page, shot) in pages(&html, &Whole::new(&file, &[])) {
            let plan = &shot.plan;
            let stand = if plan.placement.boom_used { "Boom's clamp up" } else { "Head's pivot up" };
            for (label, planned) in [
                ("Lens axis up, at the sensor", plan.pose.sensor.z_mm),
                ("Aim point to sensor, level", plan.pose.sensor_from_aim_mm),
                ("Frame width, through the aim point", plan.frame_width_mm),
                (stand, plan.placement.clamp_height_mm),
            ] {
                let (told, _) = large_mm(page, label);
                // Half of what a tape shows, and a rounding of the division by ten.
                assert!((told - planned).abs() <= 0.5 + 1e-9, "{}, {label}: {told} for {planned}", shot.name);
            }
        }
    }
}

/// A tolerance is what may not be exceeded: rounded up it would allow too much.
#[test]
fn tolerances_are_never_rounded_up() {
    let file = demo();
    let html = parsed(&sheet(&file, LengthUnit::Millimetres));
    for (page, shot) in pages(&html, &Whole::new(&file, &[])) {
        let tolerance = &shot.plan.tolerance;
        for (label, one, other) in [
            ("Lens axis up, at the sensor", tolerance.up_mm, tolerance.down_mm),
            ("Aim point to sensor, level", tolerance.away_mm, tolerance.closer_mm),
        ] {
            let (_, told) = large_mm(page, label);
            let numbers: Vec<f64> = told.split(' ').filter_map(|word| word.parse().ok()).collect();
            let (first, last) = (numbers[0], numbers[numbers.len() - 1]);
            assert!(
                first <= one + 1e-9 && last <= other + 1e-9,
                "{}, {label}: {told} for {one}, {other}",
                shot.name
            );
            assert!(
                first > one - 1.0 && last > other - 1.0,
                "{}, {label}: {told} for {one}, {other}",
                shot.name
            );
        }
    }
}

#[test]
fn each_caution_stands_on_its_page_once() {
    let file = demo();
    let html = parsed(&sheet(&file, LengthUnit::Centimetres));
    let overview = text(all(&html, ".overview")[0]);
    for (page, shot) in pages(&html, &Whole::new(&file, &[])) {
        let told: Vec<String> = within(page, ".caution").into_iter().map(text).collect();
        assert_eq!(told.len(), shot.plan.cautions.len(), "{}", shot.name);
        for caution in shot.plan.cautions.iter() {
            let sentence = caution.code.sentence();
            assert_eq!(
                told.iter().filter(|told| told.contains(sentence)).count(),
                1,
                "{}: {sentence}",
                shot.name
            );
            assert_eq!(overview.contains(sentence), caution.level > Level::Note, "{}: {sentence}", shot.name);
        }
        let usual = text(within(page, ".usual")[0]);
        let all = if shot.plan.overhead { &OVERHEAD_CAUTIONS[..] } else { &OVERHEAD_CAUTIONS[7..] };
        assert!(all.iter().all(|caution| usual.contains(caution)), "{}", shot.name);
        let stopped = shot.plan.cautions.worst() == Some(Level::Stop);
        assert_eq!(!within(page, "p.stop").is_empty(), stopped, "{}", shot.name);
        for value in within(page, "td.value").into_iter().map(text) {
            assert_eq!(value.starts_with('(') && value.ends_with(')'), stopped, "{}: {value}", shot.name);
        }
    }
}

/// A number about tipping stands beside what it is held against, and whose word is above it.
#[test]
fn tipping_has_its_yardsticks_on_every_page() {
    let file = demo();
    let html = parsed(&sheet(&file, LengthUnit::Centimetres));
    for (page, shot) in pages(&html, &Whole::new(&file, &[])) {
        let stands = text(within(page, ".stands")[0]);
        for words in
            ["Tips at", "factor", "margin", "warning under 10°", "stop under 5°", "Makers' ratings rule"]
        {
            assert!(stands.contains(words), "{} lacks `{words}`: {stands}", shot.name);
        }
    }
}

#[test]
fn what_was_measured_stands_beside_what_was_planned() {
    let log = "\n[[log]]\nshot = \"soup\"\nsensor_distance_mm = \"155.4 cm ± 1 mm\"\nelevation_deg = \"64° ± 0.2°\"\n";
    let file = shoot(&format!("{}{log}", tablerig::shootfile::DEMO));
    let html = parsed(&sheet(&file, LengthUnit::Centimetres));
    for (page, shot) in pages(&html, &Whole::new(&file, &[])) {
        let measured: Vec<String> = within(page, ".measured").into_iter().map(text).collect();
        match shot.name.as_str() {
            "soup" => assert_eq!(measured[0], "64.0° outside"),
            _ => assert!(measured.is_empty(), "{}", shot.name),
        }
    }
}
