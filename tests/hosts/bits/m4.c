/* Starts a program on a bare Cortex-M4: no operating system, printing through the emulator's semihosting. */
#include <stdint.h>
#include <stdlib.h>

extern uint32_t stack_top, bss_start, bss_end;
extern void initialise_monitor_handles(void);
int main(int count, char **names);

void start(void)
{
    *(volatile uint32_t *)0xE000ED88 |= 0xF << 20; /* the floating point unit on */
    for (uint32_t *at = &bss_start; at < &bss_end; at++)
        *at = 0;
    initialise_monitor_handles();
    exit(main(0, NULL));
}

__attribute__((section(".vectors"), used)) static const struct {
    uint32_t *stack;
    void (*reset)(void);
} vectors = { &stack_top, start };
