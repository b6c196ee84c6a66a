//! The C door under the fuzzer.
#![no_main]

use tablerig_fuzz::c_door;

libfuzzer_sys::fuzz_target!(|data: &[u8]| {
    c_door::run(data);
    c_door::TALLY.print_now_and_then();
});
