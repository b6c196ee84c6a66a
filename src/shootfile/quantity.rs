//! Values written with their units: `60 cm`, `7 ft 10 in`, `1 1/2 in`, `2 lb 4 oz`, `45°`, `f/8`, `1:2`.
//!
//! The digits are kept as whole numbers and converted exactly, so that `0.6 m`, `60 cm` and `600` are the
//! same bits.

use std::format;
use std::prelude::rust_2024::*;

use super::unit::{Dimension, Unit};

/// numerator × 10^exponent / denominator.
#[derive(Clone, Copy, Debug)]
struct Exact {
    numerator: i128,
    exponent: i32,
    denominator: i128,
}

/// More digits than this say nothing about a length and might not fit.
const MOST_DIGITS: usize = 18;
/// A fraction of an inch finer than this is not written as one.
const MOST_DENOMINATOR: i128 = 1000;

/// The value of a text in the dimension's own unit, or what is wrong with the text.
pub(crate) fn parse(text: &str, dimension: Dimension) -> Result<f64, String> {
    let trimmed = text.trim();
    if trimmed.is_empty() {
        return Err("no value is written".into());
    }
    let (negative, mut rest) = match trimmed.strip_prefix(['-', '−', '\u{2013}']) {
        Some(rest) => (true, rest.trim_start()),
        None => (false, trimmed.strip_prefix('+').unwrap_or(trimmed).trim_start()),
    };
    if dimension == Dimension::FNumber {
        rest = rest.strip_prefix("f/").or_else(|| rest.strip_prefix("F/")).unwrap_or(rest).trim_start();
    }
    if let (Dimension::Pure, Some((over, under))) = (dimension, rest.split_once(':')) {
        let (over, under) = (bare(over)?.value(), bare(under)?.value());
        return Ok(if negative { -over / under } else { over / under });
    }
    let total = match dimension {
        Dimension::Pure | Dimension::FNumber if !rest.ends_with(['%', 't']) => bare(rest)?,
        _ => sum(rest, dimension)?,
    };
    Ok(if negative { -total.value() } else { total.value() })
}

/// A number and nothing else.
fn bare(text: &str) -> Result<Exact, String> {
    let (number, rest) = number(text.trim())?;
    if rest.is_empty() { Ok(number) } else { Err(format!("`{rest}` is no part of a number")) }
}

/// Parts such as `7 ft 10 in`, each in a smaller unit than the one before.
fn sum(text: &str, dimension: Dimension) -> Result<Exact, String> {
    let mut rest = text;
    let mut total: Option<Exact> = None;
    let mut before: Option<&Unit> = None;
    while !rest.is_empty() {
        let (number, after_number) = number(rest)?;
        if after_number.is_empty() {
            let symbol = dimension.symbol();
            // Only of a number alone the unit can be guessed: `5'3` has nothing to do with mm.
            return Err(match text.parse::<f64>() {
                Ok(_) => format!("a quoted number says its unit: write {text}, or \"{text} {symbol}\""),
                Err(_) => format!("`{}` lacks its unit", rest.trim_end()),
            });
        }
        let (unit, after) = unit_at(after_number, dimension)?;
        let part = number.times(unit).ok_or_else(too_long)?;
        if let Some(before) = before {
            let (word, whole) = (unit.words[0], before.words[0]);
            if size(unit) >= size(before) {
                return Err(format!("`{word}` cannot follow `{whole}`"));
            }
            if part.value() >= size(before) {
                let written = rest[..rest.len() - after.len()].trim_end();
                return Err(format!("`{written}` after `{whole}` makes another `{whole}`"));
            }
        }
        total = Some(match total {
            None => part,
            Some(total) => total.plus(part).ok_or_else(too_long)?,
        });
        before = Some(unit);
        rest = after.trim_start();
    }
    total.ok_or_else(|| "no value is written".into())
}

/// One of a unit, in the dimension's own.
fn size(unit: &Unit) -> f64 {
    Exact { numerator: unit.numerator, exponent: unit.exponent, denominator: 1 }.value()
}

/// The longest unit's word that the text begins with.
fn unit_at(text: &str, dimension: Dimension) -> Result<(&'static Unit, &str), String> {
    if let Some(found) = longest_unit(text, dimension) {
        return Ok(found);
    }
    let word = text.trim_end_matches(|c: char| c.is_ascii_digit() || c.is_whitespace());
    let other = Dimension::ALL.iter().find(|other| longest_unit(text, **other).is_some());
    if text.starts_with(|c: char| c.is_ascii_digit()) {
        return Err(format!("`{text}` follows a number without a unit: nothing stands between digits"));
    }
    Err(match other {
        Some(other) => format!("`{word}` makes it {}, where {} is wanted", other.noun(), dimension.noun()),
        None => format!("`{word}` is no unit of {}", dimension.noun()),
    })
}

fn longest_unit(text: &str, dimension: Dimension) -> Option<(&'static Unit, &str)> {
    let mut longest: Option<(&'static Unit, &str, usize)> = None;
    for unit in dimension.units() {
        for word in unit.words {
            let Some(start) = text.get(..word.len()) else { continue };
            let rest = &text[word.len()..];
            // A word that goes on, such as `min` for `m`, is another word.
            let ends = !rest.starts_with(|c: char| c.is_alphabetic() || matches!(c, '/' | '²' | '^' | '·'))
                || !word.ends_with(char::is_alphabetic);
            if start.eq_ignore_ascii_case(word)
                && ends
                && longest.is_none_or(|(_, _, length)| word.len() > length)
            {
                longest = Some((unit, rest, word.len()));
            }
        }
    }
    longest.map(|(unit, rest, _)| (unit, rest))
}

/// `12`, `12.5`, `1/2`, `1 1/2`, `1-1/2`, `1½` at the beginning of the text; and what follows it.
fn number(text: &str) -> Result<(Exact, &str), String> {
    let (first, rest) = decimal(text)?;
    let whole = first.exponent == 0;
    let next = rest.trim_start();
    if let Some((over, under, rest)) = small_fraction(rest) {
        let whole_number = |numerator| Exact { numerator, ..ZERO };
        return with_fraction(first, whole_number(over), whole_number(under), rest);
    }
    if whole && let Some(after) = rest.strip_prefix('/') {
        let (under, rest) = decimal(after)?;
        return with_fraction(ZERO, first, under, rest);
    }
    let second = next.strip_prefix('-').unwrap_or(next);
    if whole
        && (second.len() < rest.len())
        && let Ok((over, after)) = decimal(second)
        && let Some(after) = after.strip_prefix('/')
    {
        let (under, rest) = decimal(after)?;
        return with_fraction(first, over, under, rest);
    }
    if let Some(after) = rest.strip_prefix(',') {
        let digits = after.chars().take_while(char::is_ascii_digit).count();
        // `1,500 mm` may be either, a thousand times apart.
        return Err(match digits {
            3 => "a comma: write a point before decimals, and nothing between thousands".into(),
            _ => String::from("a decimal comma: write a point"),
        });
    }
    let power = rest.strip_prefix(['e', 'E']).map(|power| power.strip_prefix(['+', '-']).unwrap_or(power));
    if power.is_some_and(|power| power.starts_with(|c: char| c.is_ascii_digit())) {
        return Err("a power of ten: write the number out".into());
    }
    Ok((first, next))
}

const ZERO: Exact = Exact { numerator: 0, exponent: 0, denominator: 1 };

fn small_fraction(text: &str) -> Option<(i128, i128, &str)> {
    let text = text.trim_start();
    [('½', 1, 2), ('¼', 1, 4), ('¾', 3, 4), ('⅛', 1, 8), ('⅜', 3, 8), ('⅝', 5, 8), ('⅞', 7, 8)]
        .into_iter()
        .find_map(|(sign, over, under)| text.strip_prefix(sign).map(|rest| (over, under, rest)))
}

fn with_fraction(whole: Exact, over: Exact, under: Exact, rest: &str) -> Result<(Exact, &str), String> {
    if [whole, over, under].iter().any(|part| part.exponent != 0) {
        return Err("a fraction of a unit is made of whole numbers".into());
    }
    let (over, under) = (over.numerator, under.numerator);
    if under == 0 || under > MOST_DENOMINATOR || over > MOST_DENOMINATOR {
        return Err(format!("`{over}/{under}` is no fraction of a unit"));
    }
    let numerator =
        whole.numerator.checked_mul(under).and_then(|n| n.checked_add(over)).ok_or_else(too_long)?;
    Ok((Exact { numerator, exponent: 0, denominator: under }, rest.trim_start()))
}

/// Digits with at most one point.
fn decimal(text: &str) -> Result<(Exact, &str), String> {
    if small_fraction(text).is_some() {
        return Ok((ZERO, text));
    }
    let end = text.find(|c: char| !c.is_ascii_digit() && c != '.').unwrap_or(text.len());
    let (digits, rest) = text.split_at(end);
    let (whole, part) = digits.split_once('.').unwrap_or((digits, ""));
    if whole.is_empty() && part.is_empty() || part.contains('.') {
        return Err(format!("`{text}` does not begin with a number"));
    }
    if whole.len() + part.len() > MOST_DIGITS {
        return Err(too_long());
    }
    let numerator = format!("{whole}{part}").parse().map_err(|_| too_long())?;
    Ok((Exact { numerator, exponent: -(part.len() as i32), denominator: 1 }, rest))
}

fn too_long() -> String {
    format!("more digits than the {MOST_DIGITS} that can be kept exactly")
}

impl Exact {
    fn times(self, unit: &Unit) -> Option<Exact> {
        let numerator = self.numerator.checked_mul(unit.numerator)?;
        Some(Exact { numerator, exponent: self.exponent + unit.exponent, ..self })
    }

    fn plus(self, other: Exact) -> Option<Exact> {
        let exponent = self.exponent.min(other.exponent);
        let lift = |part: Exact, by: i128| {
            let shift = 10_i128.checked_pow(u32::try_from(part.exponent - exponent).ok()?)?;
            part.numerator.checked_mul(shift)?.checked_mul(by)
        };
        let numerator = lift(self, other.denominator)?.checked_add(lift(other, self.denominator)?)?;
        Some(Exact { numerator, exponent, denominator: self.denominator * other.denominator })
    }

    fn value(self) -> f64 {
        // The text of a decimal is read correctly rounded; multiplying by a power of ten would not be.
        let over: f64 = format!("{}e{}", self.numerator, self.exponent).parse().unwrap_or(f64::NAN);
        over / self.denominator as f64
    }
}
