//! Lengths as a tape shows them.

use tablerig::draw::LengthUnit::{self, Centimetres, FeetInches, Inches, Metres, Millimetres};

fn written(unit: LengthUnit, length_mm: f64) -> String {
    unit.write(length_mm).to_string()
}

#[test]
fn rounded_to_what_a_tape_shows() {
    // Written out by hand: an inch is 25.4 mm exactly, a half rounds away from zero.
    for (unit, length_mm, expect) in [
        (Millimetres, 2415.4, "2415 mm"),
        (Millimetres, 2415.5, "2416 mm"),
        (Millimetres, 2414.5, "2415 mm"),
        (Millimetres, 9.94, "9.9 mm"),
        (Millimetres, 9.96, "10 mm"),
        (Millimetres, -0.04, "0.0 mm"),
        (Millimetres, -62.3, "−62 mm"),
        (Centimetres, 2415.5, "241.6 cm"),
        (Centimetres, 3.21, "0.32 cm"),
        (Metres, 2415.5, "2.416 m"),
        (Metres, -0.4, "0.000 m"),
        (Inches, 25.4, "1 in"),
        (Inches, 12.7, "1/2 in"),
        (Inches, 63.5, "2 1/2 in"),
        (Inches, 26.9875, "1 1/16 in"),
        (Inches, 0.0, "0 in"),
        (FeetInches, 304.8, "1 ft"),
        (FeetInches, 304.7, "1 ft"),
        (FeetInches, 2387.6, "7 ft 10 in"),
        (FeetInches, 2403.475, "7 ft 10 5/8 in"),
        (FeetInches, 311.15, "1 ft 1/4 in"),
        (FeetInches, -2387.6, "−7 ft 10 in"),
        (FeetInches, 127.0, "5 in"),
    ] {
        assert_eq!(written(unit, length_mm), expect, "{length_mm}");
    }
}

#[test]
fn what_has_no_end_says_so() {
    for unit in LengthUnit::ALL {
        assert_eq!(written(unit, f64::INFINITY), "infinite");
        assert_eq!(written(unit, f64::NEG_INFINITY), "−infinite");
        assert_eq!(written(unit, f64::NAN), "unknown");
        // Whole numbers end somewhere; the text does not.
        assert!(!written(unit, f64::MAX).is_empty());
    }
}

#[test]
fn read_back_it_is_the_same_length() {
    for tenths in 0..40_000 {
        let length_mm = f64::from(tenths) * 0.7;
        for (unit, whole_mm, half_digit_mm) in [(Centimetres, 10.0, 0.5), (Metres, 1000.0, 0.5)] {
            let text = written(unit, length_mm);
            let number: f64 = text.split(' ').next().unwrap().parse().unwrap();
            assert!((number * whole_mm - length_mm).abs() <= half_digit_mm + 1e-9, "{text}");
        }
        let text = written(FeetInches, length_mm);
        let mut inches = 0.0;
        let mut pending = 0.0;
        for word in text.split(' ') {
            match (word, word.split_once('/')) {
                ("ft", _) => (inches, pending) = (12.0 * pending, 0.0),
                ("in", _) => (inches, pending) = (inches + pending, 0.0),
                (_, Some((over, under))) => {
                    pending += over.parse::<f64>().unwrap() / under.parse::<f64>().unwrap();
                }
                _ => pending += word.parse::<f64>().unwrap(),
            }
        }
        assert!((25.4 * inches - length_mm).abs() <= 25.4 / 32.0 + 1e-9, "{text}");
    }
}
