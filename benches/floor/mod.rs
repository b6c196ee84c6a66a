//! The floor under a plan's time: the calls of `libm` that its results cannot do without, alone.
//!
//! Counted by hand from the formulas, after everything that can be shared is shared, and made on the arguments that
//! the brief at hand gives them. Where an identity, a constant or a comparison of squares does without a call, the
//! call is left out, even where the library makes it: the floor is the least that anyone could do, not a second
//! implementation. Reductions, products, comparisons and every store are left out too, so no whole plan can come
//! near 1. The calls are independent of each other; their results are summed, and the sum is used.
//!
//! | part | call | reason |
//! | --- | --- | --- |
//! | pose | sincos of elevation, of bearing | where the camera is; none at a multiple of 90 degrees |
//! | lens | atan of half the frame's width, height and diagonal over the pupil distance; sqrt for the diagonal | field angles |
//! | outline | sqrt, once, for a round subject | where the line of sight touches the nearer of its two rims |
//! | shares | sqrt and 2 atan2 for contents that show in part; sqrt and atan2 for those from far off | two circles |
//! | focus | log1p; sqrt where the limit of blur is the sensor's; 2 log1p for a stack | stops lost; slices in ln y. Third stops are 61 constants |
//! | tilt | asin, unless level with the hinge or overhead | hinge rule |
//! | perspective | 2 sqrt | stretch at side and corner |
//! | advice | atan for a start that is computed and lies in the range, for half top, for half contents; sqrt and atan2 for contents from the start, unless it was found by them | the contents' own angle is a constant, and so is a start at an end of its range |
//! | support | sincos of the first leg, if given; sincos of the boom's pitch, if any; sqrt for each place off a corner of the table | the other legs follow by constants |
//! | weights | sincos of each bag that weighs and hangs out | where it hangs |
//! | stability | atan of margin over height for each state that differs; sqrt for each clamp moment with a payload beside the boom | tilt that tips |
//! | ballast | sqrt and atan2 of the centre of gravity, unless it lies on the boom's line | direction of the legs |
//! | sag | sqrt, and log with a damping ratio | frequency, settling |
//! | tolerance | sincos of the elevation's tolerance and of the roll's; sqrt for each circle that is met off its axis, at most 4 | sums of angles by their addition |
//! | cautions | atan of the floor's slope, if any; sqrt where the boom meets the camera | tilt less slope |
//!
//! A frame width that is solved for counts as if it had been given.

mod calls;
mod needed;

pub(crate) use calls::Calls;
pub(crate) use needed::{Part, needed};
