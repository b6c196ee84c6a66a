//! The session planner under the fuzzer.
#![no_main]

use tablerig_fuzz::planner;

libfuzzer_sys::fuzz_target!(|data: &[u8]| {
    planner::run(data);
    planner::TALLY.print_now_and_then();
});
