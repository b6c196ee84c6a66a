// How much the frame takes in: by its width, or by how much of it the subject fills. One of the three stands in the file.

import { make, say, show } from "./dom.js";
import { fieldId } from "./field.js";
import { asWritten, entryOf, shown } from "./units.js";
import { label, mistakeInWords } from "./words.js";

const WAYS = { frame_width_mm: "frame width", fill_width: "share of the width that the subject fills", fill_height: "share of the height that the subject fills" };

export class Framing {
  constructor(keys, form) {
    this.form = form;
    this.keys = keys;
    this.listed = { key: "frame_width_mm" };
    this.id = fieldId(["shot", "frame"]);
    this.key = JSON.stringify(["shot", form.desk.index, "frame_width_mm"]);
    this.draft = false;
    this.way = make("select", { id: `${this.id}-way` }, keys.map(({ key }) => make("option", { value: key }, WAYS[key])));
    this.input = make("input", { type: "text", id: this.id, autocapitalize: "off", spellcheck: "false", enterkeyhint: "done", "aria-describedby": `${this.id}-error ${this.id}-hint` });
    this.error = make("p", { class: "error", id: `${this.id}-error`, hidden: true });
    this.hint = make("p", { class: "hint", id: `${this.id}-hint` });
    this.name = make("label", { for: this.id }, "Frame width");
    this.input.addEventListener("input", (event) => this.#typed(event));
    this.input.addEventListener("change", () => form.settled());
    this.way.addEventListener("change", (event) => this.#another(event));
    this.element = make("div", { class: "field framing" }, this.name, this.input, this.error,
      make("label", { for: `${this.id}-way`, class: "second" }, "The frame is given by its"), this.way, this.hint);
  }

  #now() {
    const { shot } = this.form.desk;
    return this.keys.find(({ key }) => shot[key] !== undefined) ?? this.keys[0];
  }

  show(force = false) {
    const listed = this.#now();
    this.listed = listed;
    this.way.value = listed.key;
    say(this.name, label(listed.key));
    say(this.hint, `${listed.meaning.charAt(0).toUpperCase()}${listed.meaning.slice(1)}; allowed ${listed.allowed}.`);
    if (!force && (document.activeElement === this.input || this.draft)) return;
    const text = shown(this.form.desk.shot[listed.key], listed.unit);
    if (this.input.value !== text) this.input.value = text;
  }

  #edits(key, value) {
    const { shot, index } = this.form.desk;
    const at = (each) => ["shot", index, each];
    const others = this.keys.filter((other) => other.key !== key && shot[other.key] !== undefined);
    return [...others.map((other) => ({ path: at(other.key), value: null })), { path: at(key), value }];
  }

  #typed(event) {
    const { key, unit } = this.listed;
    this.form.propose(this.#edits(key, entryOf(this.input.value, unit, "shot", this.form.system())), this, event.timeStamp);
  }

  /** Another way to say the same frame: as the plan has it. */
  #another(event) {
    const { planned } = this.form.planner;
    if (planned === null) return;
    const { plan } = planned;
    const key = this.way.value;
    const fill = plan.outline?.[key];
    const value = key === "frame_width_mm" ? asWritten(plan.frame_width_mm, this.form.system()) : `${Math.min(Math.max(Math.round((fill ?? 0.7) * 1000) / 10, 1), 100)} %`;
    this.accept();
    this.form.propose(this.#edits(key, value), this, event.timeStamp);
    this.form.settled();
  }

  refuse(mistakes) {
    this.draft = true;
    const told = mistakes.map((mistake) => mistakeInWords(mistake, this.input.value.trim()));
    const ranged = mistakes.some(({ least, most }) => typeof least === "number" || typeof most === "number");
    say(this.error, `■ ${told.join(" ")}${ranged ? "" : ` Allowed: ${this.listed.allowed}.`}`);
    show(this.error, true);
    this.input.setAttribute("aria-invalid", "true");
  }

  accept() {
    this.draft = false;
    show(this.error, false);
    this.input.removeAttribute("aria-invalid");
  }
}
