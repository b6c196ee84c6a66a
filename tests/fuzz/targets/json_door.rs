//! The JSON door under the fuzzer, its requests changed as JSON.
#![no_main]

use libfuzzer_sys::{fuzz_mutator, fuzz_target, fuzzer_mutate};
use tablerig_fuzz::json_door;
use tablerig_fuzz::mutate::{self, Chance};

fuzz_target!(|data: &[u8]| {
    json_door::run(data);
    json_door::TALLY.print_now_and_then();
});

fuzz_mutator!(|data: &mut [u8], size: usize, max_size: usize, seed: u32| {
    let mut chance = Chance::new(seed);
    let changed = match std::str::from_utf8(&data[..size]) {
        // One time of eight as bytes.
        Ok(text) if !seed.is_multiple_of(8) => mutate::json(text, &mut chance),
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
