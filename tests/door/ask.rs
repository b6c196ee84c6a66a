//! A question to the library, from its arguments to its answer.

use tablerig::doors::c::plan::Plan;
use tablerig::doors::c::view::projection::View;

/// Calls a function whose last arguments are a result and a fault, and gives the result.
macro_rules! ask {
    ($function:ident($($argument:expr),*)) => {{
        let mut out = $crate::memory::filled($crate::set::EMPTY);
        let mut fault = <tablerig::doors::c::status::Fault as tablerig::doors::c::border::mirror::Plain>::ZERO;
        // SAFETY: each argument is a struct, and so are result and fault.
        let status = unsafe { $function($($argument,)* &raw mut out, &raw mut fault) };
        if status == 0 {
            Ok(out)
        } else {
            assert_eq!(status, fault.status);
            assert!($crate::memory::bytes(&out).iter().all(|byte| *byte == $crate::set::EMPTY));
            Err((status, $crate::set::field(&fault)))
        }
    }};
}

pub(crate) use ask;

/// A plan's frame as seen from the entrance pupil.
pub(crate) fn view(plan: &Plan) -> View {
    View {
        pose: plan.pose,
        pupil_distance_mm: plan.lens.pupil_distance_mm,
        frame_width_mm: plan.frame_width_mm,
        frame_height_mm: plan.frame_height_mm,
    }
}
