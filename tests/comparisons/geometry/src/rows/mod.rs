//! Briefs and plans as rows of numbers under names: what the ways are fed with and compared by. What is not there is
//! NaN.

mod asked;
mod library;
mod straightforward;

pub(crate) use asked::brief;
pub(crate) use library::plan;
pub(crate) use straightforward::whole;

/// A row of named numbers.
#[derive(Default)]
pub(crate) struct Row(pub(crate) Vec<(String, f64)>);

impl Row {
    pub(crate) fn put(&mut self, name: &str, value: impl Into<Option<f64>>) {
        self.0.push((name.to_owned(), value.into().unwrap_or(f64::NAN)));
    }

    pub(crate) fn all<const N: usize>(&mut self, named: [(&str, f64); N]) {
        named.into_iter().for_each(|(name, value)| self.put(name, value));
    }

    pub(crate) fn maybe<const N: usize>(&mut self, named: [(&str, Option<f64>); N]) {
        named.into_iter().for_each(|(name, value)| self.put(name, value));
    }

    pub(crate) fn vector(&mut self, name: &str, [x, y, z]: [f64; 3]) {
        for (part, value) in [("x", x), ("y", y), ("z", z)] {
            self.put(&format!("{name}_{part}"), value);
        }
    }

    pub(crate) fn place(&mut self, name: &str, place: Option<[f64; 2]>) {
        self.put(&format!("{name}_x"), place.map(|place| place[0]));
        self.put(&format!("{name}_y"), place.map(|place| place[1]));
    }
}

pub(crate) const CORNERS: [&str; 4] = ["near_left", "near_right", "far_right", "far_left"];
pub(crate) const EDGES: [&str; 4] = ["edge_front", "edge_right", "edge_back", "edge_left"];
pub(crate) const STATES: [&str; 3] = ["as_shot", "camera_off", "counterweight_off"];
pub(crate) const STANDING: [&str; 11] = [
    "mass",
    "centre_x",
    "centre_y",
    "centre_z",
    "margin",
    "factor",
    "restoring",
    "overturning",
    "tilt",
    "push",
    "clamp_moment",
];
pub(crate) const SAG: [&str; 6] = ["sag", "height_lost", "slope", "aim_shift", "frequency", "settling"];
pub(crate) const TOLERANCES: [&str; 5] =
    ["up_tolerance", "down_tolerance", "away_tolerance", "closer_tolerance", "roll_drift"];
pub(crate) const OUTLINE: [&str; 10] = [
    "left",
    "right_side",
    "bottom",
    "top",
    "fill_width",
    "fill_height",
    "room_above",
    "room_below",
    "room_left",
    "room_right",
];
pub(crate) const ROOMS: [&str; 5] = ["room_feet", "room_tail", "room_camera", "room_ceiling", "room_behind"];

pub(crate) fn listed<const N: usize>(row: &mut Row, names: [&str; N], values: [f64; N]) {
    names.into_iter().zip(values).for_each(|(name, value)| row.put(name, value));
}
