//! What a library without the standard library must bring along.

/// Never called: the release archive holds no reference to it, which is checked.
#[panic_handler]
fn panic(_: &core::panic::PanicInfo<'_>) -> ! {
    loop {}
}
