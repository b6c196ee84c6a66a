//! Property tests: trigonometric identities, geometric laws, scaling, symmetry and round trips.
#![allow(clippy::disallowed_methods, reason = "the platform's functions are the second opinion here")]

#[path = "../workshop/mod.rs"]
mod workshop;

mod briefs;
mod draws;
mod gear;
mod space;

mod backdrop;
mod ballast;
mod contents;
mod continuity;
mod framing;
mod glass;
mod hinge;
mod picture;
mod placing;
mod sag;
mod scaling;
mod setting;
mod sharpness;
mod standing;
mod symmetry;
mod triangle;
mod weights;
