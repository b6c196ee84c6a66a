//! The shoot file under the fuzzer, its text changed by lines and its edits as JSON.
#![no_main]

use libfuzzer_sys::{fuzz_mutator, fuzz_target, fuzzer_mutate};
use tablerig_fuzz::mutate::{self, Chance};
use tablerig_fuzz::shoot_file;

fuzz_target!(|data: &[u8]| {
    shoot_file::run(data);
    shoot_file::TALLY.print_now_and_then();
});

fuzz_mutator!(|data: &mut [u8], size: usize, max_size: usize, seed: u32| {
    let mut chance = Chance::new(seed);
    let changed = match std::str::from_utf8(&data[..size]) {
        // One time of four as bytes.
        Ok(text) if !seed.is_multiple_of(4) => Some(mutate::file(text, &mut chance)),
        _ => None,
    };
    match changed {
        Some(text) if text.len() <= max_size => {
            data[..text.len()].copy_from_slice(text.as_bytes());
            text.len()
        }
        _ => fuzzer_mutate(data, size, max_size),
    }
});
