// A field that takes several names out of those that there are, in order: what a shoot's kit is chosen from.

import { make, say, show } from "./dom.js";
import { fieldId } from "./field.js";
import { label, mistakeInWords } from "./words.js";

/** What the names of a key are those of; the sides of a table are the same in every file. */
const OF = { lenses: "lens", supports: "support" };
const SIDES = ["front", "right", "back", "left"];

/** Whether a key is such a field. */
export const takesChoices = (kind, { key }) => kind === "kit" && (OF[key] !== undefined || key === "sides");

export class Choices {
  #boxes = /** @type {any[]} */ ([]);
  #value = /** @type {string[]} */ ([]);

  constructor(listed, path, form) {
    this.listed = listed;
    this.path = path;
    this.form = form;
    this.key = JSON.stringify(path);
    this.draft = false;
    this.id = fieldId(path);
    this.error = make("p", { class: "error", id: `${this.id}-error`, hidden: true });
    this.places = make("div", { class: "choices" });
    /** As other fields have one: here it holds what is chosen. */
    this.input = { value: "" };
    const otherwise = `None ticked: ${listed.otherwise}.`;
    this.element = make("fieldset", { class: "field wide", id: this.id, "aria-describedby": `${this.id}-error ${this.id}-hint` },
      make("legend", {}, label(listed.key)), this.places, this.error, make("p", { class: "hint always", id: `${this.id}-hint` }, otherwise));
  }

  /** Shows what the file has; a name that it has no gear of stays, to be taken out. */
  show(value) {
    this.#value = [value ?? []].flat();
    const known = OF[this.listed.key] === undefined ? SIDES : this.form.names(OF[this.listed.key]);
    const names = [...new Set([...known, ...this.#value])];
    if (names.join("\n") !== this.#boxes.map(({ name }) => name).join("\n")) {
      this.#boxes = names.map((name) => ({ name, box: make("input", { type: "checkbox", id: `${this.id}-${name.replace(/[^\w-]/g, "_")}`, onchange: (event) => this.#chosen(event) }) }));
      this.places.replaceChildren(...this.#boxes.map(({ name, box }) => make("label", { class: "tick" }, box, name)));
    }
    for (const { name, box } of this.#boxes) box.checked = this.#value.includes(name);
  }

  /** The order of those that stay is kept: the first is preferred. */
  #chosen(event) {
    const ticked = this.#boxes.filter(({ box }) => box.checked).map(({ name }) => name);
    const names = [...this.#value.filter((name) => ticked.includes(name)), ...ticked.filter((name) => !this.#value.includes(name))];
    this.#value = names;
    this.input.value = names.join(", ");
    this.form.propose([{ path: this.path, value: names.length > 0 ? names : null }], this, event.timeStamp);
    this.form.settled();
  }

  refuse(mistakes) {
    this.draft = true;
    say(this.error, `■ ${label(this.listed.key)}: ${mistakes.map((mistake) => mistakeInWords(mistake)).join(" ")}`);
    show(this.error, true);
  }

  accept() {
    this.draft = false;
    show(this.error, false);
  }
}
