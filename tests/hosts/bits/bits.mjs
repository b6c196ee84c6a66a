// The lines of bits.c from the WebAssembly module, for the briefs that bits.c has written to a file:
// node bits.mjs MODULE FILE
import { readFileSync } from "node:fs";

const [, , modulePath, briefsPath] = process.argv;
const { instance } = await WebAssembly.instantiate(readFileSync(modulePath), {});
const { memory, __heap_base, tablerig_plan, tablerig_plan_init } = instance.exports;
const briefs = readFileSync(briefsPath);

// Scratch space of this program's own begins at the heap's base: below it lies the module's stack.
const base = (__heap_base.value + 7) & ~7;
const needed = base + 65536 - memory.buffer.byteLength;
if (needed > 0) memory.grow(Math.ceil(needed / 65536));
const view = new DataView(memory.buffer);
const size = briefs.readUInt32LE(0);

const lines = [];
for (let at = 4; at < briefs.length; ) {
    // size, reserved, and eight pointers of 4 bytes; then the parts, each beginning with its own size.
    const brief = base, plan = base + 8192;
    view.setUint32(brief, 40, true);
    view.setInt32(brief + 4, 0, true);
    let part = base + 64;
    for (let index = 0; index < 8; index++) {
        const bytes = briefs.readUInt32LE(at);
        new Uint8Array(memory.buffer, part, bytes).set(briefs.subarray(at, at + bytes));
        view.setUint32(brief + 8 + 4 * index, part, true);
        part += bytes;
        at += bytes;
    }
    tablerig_plan_init(plan, size);
    const status = tablerig_plan(brief, plan, 0);
    let a = 0, b = 0;
    for (let word = 0; word < size; word += 4) {
        const value = view.getUint32(plan + word, true);
        a = Math.imul(a ^ value, 16777619) >>> 0;
        b = Math.imul(((b << 5) | (b >>> 27)) + value, 2654435761 | 0) >>> 0;
    }
    const hex = (value) => value.toString(16).padStart(8, "0");
    lines.push(`${status} ${hex(a)}${hex(b)}`);
}
process.stdout.write(lines.join("\n") + "\n");
