//! A whole shoot: which gear takes each shot, where the table may stand, what to book and bring, and in
//! which order to shoot.
//!
//! Choosing, the smallest changes, the fit of a shot and the corrections on the set allocate nothing; the
//! lists over a whole shoot do, behind the feature `alloc`.
//!
//! What is chosen, changed or weighted here is computed as the plan is: the makers' ratings rule over it,
//! local codes apply, a qualified rigger decides, and where a plan says that its load is overhead the
//! [`crate::caution::overhead::OVERHEAD_CAUTIONS`] go with every number.
//!
//! A shot that leaves its lens open, and what would make an impossible one possible:
//!
//! ```
//! use tablerig::shoot::{choose::choose, kit::{Candidate, Kit}, smallest::smallest_changes_in_kit};
//! # use tablerig::{brief::Brief, fault::Fault, optics::lens::Lens};
//! # fn example(brief: &Brief, lenses: &[Lens]) -> Result<(), Fault> {
//! let kit = Kit { lenses, supports: &[], sides: &[] };
//! let mut places = [Candidate::VACANT; 5];
//! let choice = choose(brief, &kit, &mut places)?;
//! if let Some(best) = choice.best() {
//!     let chosen = kit.brief_with(brief, &best.combination);
//!     println!("{} mm", chosen.lens.focal_length_mm);
//! } else {
//!     for found in smallest_changes_in_kit(brief, &kit, choice.candidates).iter().flatten() {
//!         println!("{} To {} {}.", found.change.kind.sentence(), found.change.to, found.change.kind.range().unit);
//!     }
//! }
//! # Ok(())
//! # }
//! ```

pub mod change;
pub mod choose;
pub mod fit;
pub mod kit;
pub mod merits;
pub mod minutes;
pub mod onset;
pub mod room;
pub mod smallest;
pub mod stops;

#[cfg(feature = "alloc")]
mod blocks;
#[cfg(feature = "alloc")]
pub mod booking;
#[cfg(feature = "alloc")]
mod exact;
#[cfg(feature = "alloc")]
mod near;
#[cfg(feature = "alloc")]
pub mod order;
#[cfg(feature = "alloc")]
pub mod pieces;
#[cfg(feature = "alloc")]
pub mod precedence;
#[cfg(feature = "alloc")]
pub mod pull;
#[cfg(feature = "alloc")]
pub mod weights;
