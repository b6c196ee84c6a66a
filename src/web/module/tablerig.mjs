// The library as an ES module: JSON questions in, JSON answers out. No dependencies; browsers, workers and Node.

const encoder = new TextEncoder();
const decoder = new TextDecoder();

/** What was wrong with a question. `mistakes` holds everything; the first one's figures stand here as well. */
export class TablerigError extends Error {
  constructor(operation, mistakes) {
    const [first] = mistakes;
    super(`${operation}: ${mistakes.map(inWords).join("; ")}`);
    this.name = "TablerigError";
    this.operation = operation;
    this.mistakes = mistakes;
    this.code = first.kind;
    this.number = first.number;
    this.field = first.field;
    this.value = first.value;
    this.least = first.least;
    this.most = first.most;
    this.unit = first.unit;
    this.path = first.path;
    this.line = first.line;
    this.column = first.column;
  }
}

function inWords(mistake) {
  const { sentence, line, column, path, value, least, most, unit, label } = mistake;
  const where = line !== null ? `line ${line}, column ${column}: ` : path.length > 0 ? `${path.join(".")}: ` : "";
  if (value === null) return where + sentence + (label === null ? "" : ` (${label})`);
  const bounded = (bound) => typeof bound === "number";
  const of = unit ? ` ${unit}` : "";
  const range =
    bounded(least) && bounded(most)
      ? ` (${value}; allowed: ${least} to ${most}${of})`
      : bounded(least)
        ? ` (${value}; allowed: ${least}${of} or more)`
        : bounded(most)
          ? ` (${value}; allowed: up to ${most}${of})`
          : ` (${value})`;
  return where + sentence + range;
}

/** The library, loaded. */
export class Tablerig {
  #module;
  #wasm;

  /** Over a compiled module: `new Tablerig(await WebAssembly.compileStreaming(fetch(url)))`. */
  constructor(module) {
    this.#module = module;
    this.#begin();
  }

  #begin() {
    this.#wasm = new WebAssembly.Instance(this.#module, {}).exports;
  }

  /** Asks by name; the answer, or a TablerigError. */
  ask(operation, request = {}) {
    const reply = JSON.parse(this.askText(JSON.stringify({ ...request, operation }, refuseNoNumber)));
    if (reply.mistakes !== undefined) throw new TablerigError(operation, reply.mistakes);
    return reply.ok;
  }

  /** The same with texts: a request's JSON in, `{"ok": ...}` or `{"mistakes": [...]}` out. */
  askText(request) {
    const { memory, tablerig_text_take, tablerig_text_give, tablerig_text_reply } = this.#wasm;
    const asked = encoder.encode(request);
    const place = tablerig_text_take(asked.length) >>> 0;
    if (place === 0) throw new RangeError("no memory for the request");
    new Uint8Array(memory.buffer, place, asked.length).set(asked);
    let reply;
    try {
      reply = tablerig_text_reply(place, asked.length) >>> 0;
    } catch (error) {
      // Nothing that stopped half-way is asked again: its memory may be in disorder.
      this.#begin();
      throw new Error("the library stopped at this request; please report it", { cause: error });
    }
    tablerig_text_give(place, asked.length);
    if (reply === 0) throw new RangeError("no memory for the answer");
    const length = new DataView(memory.buffer).getUint32(reply, true);
    const text = decoder.decode(new Uint8Array(memory.buffer, reply + 4, length));
    tablerig_text_give(reply, length + 4);
    return text;
  }

  /** How much memory it holds, in bytes. It never shrinks, and stops growing once the largest answer fitted. */
  get memoryBytes() {
    return this.#wasm.memory.buffer.byteLength;
  }
}

/** JSON has no word for these; as texts they are refused with the field's name instead of turning into null. */
function refuseNoNumber(_, value) {
  return typeof value === "number" && !Number.isFinite(value) ? String(value) : value;
}

async function compiled(url) {
  if (url.protocol === "file:") {
    const { readFile } = await import("node:fs/promises");
    return WebAssembly.compile(await readFile(url));
  }
  const response = await fetch(url);
  if (!response.ok) throw new Error(`${url.pathname}: ${response.status} ${response.statusText}`);
  // A server that does not know the type of a .wasm file will do as well.
  if (response.headers.get("content-type") !== "application/wasm") {
    return WebAssembly.compile(await response.arrayBuffer());
  }
  return WebAssembly.compileStreaming(response);
}

/** Loads the library with its drawings. */
export async function load(url = new URL("tablerig.wasm", import.meta.url)) {
  return new Tablerig(await compiled(new URL(url)));
}

/** Loads the smaller library that does not draw. */
export async function loadWithoutDrawings(url = new URL("tablerig-without-drawings.wasm", import.meta.url)) {
  return new Tablerig(await compiled(new URL(url)));
}
