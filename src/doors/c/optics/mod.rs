//! Glass and sensor.

pub mod sensor;

pub mod camera;

pub mod lens;

pub mod inverse;

pub mod focus;

pub mod aperture;

pub mod tilt;
