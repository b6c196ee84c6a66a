// The tables of a shoot file and their keys, as the library lists them.

/** By a table's path without names, such as `support.boom`. */
export class Sections {
  #tables = new Map();
  #wholes = /** @type {string[]} */ ([]);

  constructor(rig) {
    for (const { heading, kind, keys } of rig.ask("fields").sections) {
      for (const one of heading.split(", ")) {
        const path = one.replace(/[[\]]/g, "").split(".").filter((step) => step !== "NAME").join(".");
        this.#tables.set(path, { keys, isList: one.startsWith("[[") });
        if (one === `[${kind}]`) this.#wholes.push(kind);
      }
    }
  }

  /** The tables that a file has once, for all its shots: `kit`, `order`. */
  get wholes() {
    return this.#wholes;
  }

  has(path) {
    return this.#tables.has(path);
  }

  keys(path) {
    return this.#tables.get(path)?.keys ?? [];
  }

  /** Whether there may be several of that table. */
  isList(path) {
    return this.#tables.get(path)?.isList ?? false;
  }
}
