// One field of the form: a key of the shoot file with its label, what it takes, and its error beside it.

import { make, say, show } from "./dom.js";
import { label, mistakeInWords, word } from "./words.js";
import { entryOf, shown } from "./units.js";

/** Tables that a file has once, without a name of their own. */
const ONCE = new Set(["shoot", "criteria", "kit", "weights", "order"]);
const WRITTEN_HERE = " written in the shot";

/** The identifier of a field, by the kind of table and its path inside that. */
export const fieldId = (path) => `field-${path.filter((step) => step !== "shot" || path.length < 3).map((step) => String(step).replace(/[^A-Za-z0-9_-]/g, "_")).join("-")}`;

export class Field {
  /**
   * @param {any} listed the key as the library lists it
   * @param {(string | number)[]} path where it stands in the shoot
   * @param {any} form gives `system()`, `names(kind)`, `propose(edits, field, typed, at)` and `settled()`
   */
  constructor(listed, path, kind, form) {
    this.listed = listed;
    this.path = path;
    this.kind = kind;
    this.form = form;
    this.key = JSON.stringify(path);
    this.draft = false;
    this.id = fieldId([kind, ...path.slice(ONCE.has(kind) ? 1 : 2)]);
    this.value = undefined;
    this.error = make("p", { class: "error", id: `${this.id}-error`, hidden: true });
    this.hint = make("p", { class: "hint", id: `${this.id}-hint` }, this.#hint());
    this.input = this.#control();
    this.input.id = this.id;
    this.input.setAttribute("name", path.filter((step) => typeof step === "string").join("."));
    this.input.setAttribute("aria-describedby", `${this.id}-error ${this.id}-hint`);
    this.input.addEventListener("input", (event) => this.#typed(event));
    this.input.addEventListener("change", () => this.form.settled());
    const name = make("label", { for: this.id }, label(listed.key));
    if (listed.standing === "required") this.input.setAttribute("aria-required", "true");
    this.element = make("div", { class: `field ${this.#wide() ? "wide" : ""}` }, name, this.input, this.error, this.hint);
  }

  #wide() {
    return this.listed.sort === "text";
  }

  #hint() {
    const { meaning, otherwise, sort, allowed, standing } = this.listed;
    const parts = [meaning.charAt(0).toUpperCase() + meaning.slice(1)];
    if (sort === "number" || sort === "whole") parts.push(`allowed ${allowed}`);
    if (otherwise !== null && standing === "optional") parts.push(`left out: ${otherwise}`);
    return `${parts.join("; ")}.`.replaceAll("_mm", "").replaceAll("_", " ");
  }

  #control() {
    const { sort, words, key } = this.listed;
    if (sort === "word") return this.#select(words.map((text) => [text, word(text)]), true);
    if (sort === "flag") return this.#select([["true", "yes"], ["false", "no"]], true);
    if (sort === "name" || sort === "name_or_table") return this.#select([], this.listed.standing !== "required");
    if (this.kind === "shot" && ["lens", "support", "side"].includes(key)) return this.#select([], true);
    const attributes = /** @type {any} */ ({ type: "text", autocapitalize: "off", spellcheck: "false", enterkeyhint: "done" });
    if (key === "note" || key === "name") attributes.spellcheck = "true";
    const { otherwise, standing } = this.listed;
    if (standing === "optional" && otherwise !== null) attributes.placeholder = otherwise.length < 26 ? otherwise : "left out";
    return make("input", attributes);
  }

  #select(options, canLeaveOut) {
    const otherwise = this.listed.otherwise;
    const left = otherwise !== null && otherwise.length < 16 ? `left out: ${word(otherwise)}` : "left out";
    const all = canLeaveOut ? [["", left], ...options] : options;
    return make("select", {}, all.map(([value, text]) => make("option", { value }, text)));
  }

  /** What can be chosen now: names of the file, and whatever the file has at this place. */
  #fill() {
    const { sort, key, names } = this.listed;
    const kind = names ?? (["lens", "support"].includes(key) ? key : null);
    const open = this.kind === "shot" && ["lens", "support", "side"].includes(key);
    if (kind === null && !open) return;
    const options = new Map([["", "left out"]]);
    if (key === "side" && open) for (const side of ["front", "right", "back", "left"]) options.set(side, side);
    else for (const name of this.form.names(kind)) options.set(name, name);
    if (open) options.set("any", "any: choose the best");
    if (Array.isArray(this.value)) options.set(JSON.stringify(this.value), this.value.join(" or "));
    if (sort === "name_or_table" && typeof this.value === "object") options.set(WRITTEN_HERE, "written in the shot");
    const has = [...this.input.options].map(({ value }) => value).join("\n");
    if (has === [...options.keys()].join("\n")) return;
    this.input.replaceChildren(...[...options].map(([value, text]) => make("option", { value }, text)));
  }

  /** Shows what the file has, unless something is being typed here. */
  show(value, force = false) {
    this.value = value;
    if (this.input instanceof HTMLSelectElement) {
      this.#fill();
      const text = Array.isArray(value) ? JSON.stringify(value) : typeof value === "object" ? WRITTEN_HERE : value === undefined ? "" : String(value);
      if (this.input.value !== text) this.input.value = text;
      return;
    }
    if (!force && (document.activeElement === this.input || this.draft)) return;
    const text = shown(value, this.listed.unit);
    if (this.input.value !== text) this.input.value = text;
  }

  /** What the control holds, as the file takes it. */
  entry() {
    const { sort, unit } = this.listed;
    const text = this.input.value;
    if (text === WRITTEN_HERE) return this.value;
    if (sort === "flag") return text === "" ? null : text === "true";
    if (text.startsWith("[")) return JSON.parse(text);
    if (sort === "number" || sort === "whole") return entryOf(text, unit, this.kind, this.form.system());
    if (this.listed.key === "after" && text.includes(",")) return text.split(",").map((name) => name.trim()).filter(Boolean);
    return text.trim() === "" ? null : text.trim();
  }

  #typed(event) {
    this.form.propose([{ path: this.path, value: this.entry() }], this, event.timeStamp);
  }

  /** Shows what is wrong with what was typed, beside it. */
  refuse(mistakes) {
    this.draft = true;
    const about = mistakes.map((mistake) => this.#sentence(mistake));
    say(this.error, `■ ${[...new Set(about)].join(" ")}`);
    show(this.error, true);
    this.input.setAttribute("aria-invalid", "true");
  }

  #sentence(mistake) {
    const typed = this.input instanceof HTMLSelectElement ? undefined : this.input.value.trim();
    const name = label(this.listed.key);
    if (typed !== undefined && mistake.kind === "no_quantity" && typed.includes("±")) {
      const value = typed.split("±")[0].trim();
      return `${name}: one value is wanted here, without ±${value === "" ? "" : `. For example: ${value}`}. Allowed: ${this.listed.allowed}.`;
    }
    const inWords = mistakeInWords(mistake, typed);
    const told = inWords.toLowerCase().includes(name.toLowerCase()) ? inWords : `${name}: ${inWords}`;
    const { sort, allowed } = this.listed;
    const ranged = typeof mistake.least === "number" || typeof mistake.most === "number";
    return !ranged && (sort === "number" || sort === "whole") ? `${told} Allowed: ${allowed}.` : told;
  }

  accept() {
    if (!this.draft && this.error.hidden) return;
    this.draft = false;
    show(this.error, false);
    this.input.removeAttribute("aria-invalid");
  }
}
