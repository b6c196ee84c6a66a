//! Calls by function, made one after the other, their results summed.

/// Arguments by function.
#[derive(Clone, Debug, Default)]
pub(crate) struct Calls {
    pub(crate) sincos: Vec<f64>,
    pub(crate) atan: Vec<f64>,
    pub(crate) atan2: Vec<(f64, f64)>,
    pub(crate) asin: Vec<f64>,
    pub(crate) log1p: Vec<f64>,
    pub(crate) log: Vec<f64>,
    pub(crate) sqrt: Vec<f64>,
}

impl Calls {
    /// The sine and cosine of an angle in degrees, unless it is a multiple of 90: reduced as the library reduces it.
    pub(crate) fn degrees(&mut self, angle_deg: f64) {
        let rest = angle_deg - 90.0 * libm::floor(angle_deg / 90.0 + 0.5);
        if rest != 0.0 {
            self.sincos.push(rest.to_radians());
        }
    }

    /// Square root of a sum of squares, unless one side is 0.
    pub(crate) fn diagonal(&mut self, x: f64, y: f64) {
        if x != 0.0 && y != 0.0 {
            self.sqrt.push(x * x + y * y);
        }
    }

    pub(crate) fn append(&mut self, other: &Calls) {
        self.sincos.extend(&other.sincos);
        self.atan.extend(&other.atan);
        self.atan2.extend(&other.atan2);
        self.asin.extend(&other.asin);
        self.log1p.extend(&other.log1p);
        self.log.extend(&other.log);
        self.sqrt.extend(&other.sqrt);
    }

    /// Makes them all.
    pub(crate) fn make(&self) -> f64 {
        let mut sum = 0.0;
        for x in &self.sincos {
            let (sin, cos) = libm::sincos(*x);
            sum += sin + cos;
        }
        for x in &self.atan {
            sum += libm::atan(*x);
        }
        for (y, x) in &self.atan2 {
            sum += libm::atan2(*y, *x);
        }
        for x in &self.asin {
            sum += libm::asin(*x);
        }
        for x in &self.log1p {
            sum += libm::log1p(*x);
        }
        for x in &self.log {
            sum += libm::log(*x);
        }
        for x in &self.sqrt {
            sum += libm::sqrt(*x);
        }
        sum
    }

    /// By name, how many.
    pub(crate) fn counts(&self) -> [(&'static str, usize); 7] {
        [
            ("sincos", self.sincos.len()),
            ("atan", self.atan.len()),
            ("atan2", self.atan2.len()),
            ("asin", self.asin.len()),
            ("log1p", self.log1p.len()),
            ("log", self.log.len()),
            ("sqrt", self.sqrt.len()),
        ]
    }
}
