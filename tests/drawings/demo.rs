//! The shots of the demo shoot.

use tablerig::brief::Brief;
use tablerig::shootfile::{DEMO, Form, read};

/// Every shot of the demo, with its name.
pub(crate) fn shots() -> Vec<(String, Brief)> {
    let file = read(DEMO, Form::Toml).unwrap();
    assert!(!file.shots.is_empty());
    file.shots.into_iter().map(|shot| (shot.name, shot.brief)).collect()
}
