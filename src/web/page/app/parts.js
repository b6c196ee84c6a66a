// Tables inside tables, such as a stand's boom or a subject's vessel: shown where there are, put in and taken out.

import { alarm, inform } from "./announce.js";
import { make, say, show } from "./dom.js";
import { Field, fieldId } from "./field.js";
import { valueAt } from "./oneshot.js";
import { label, mistakeInWords, word } from "./words.js";

export class Parts {
  /** @param {any} form gives `desk`, `sections`, `system()`, `names(kind)` and `table(kind, path, section)` */
  constructor(form) {
    this.form = form;
  }

  /** The fieldsets of a key that takes tables, with what puts one in. */
  elements(listed, path, kind, section) {
    const { form } = this;
    const value = valueAt(form.desk.shoot, path);
    const isList = form.sections.isList(section);
    const there = value === undefined ? [] : isList ? value.map((_, index) => [...path, index]) : [path];
    const name = word(listed.key);
    const shown = there.map((each, index) => {
      const called = isList ? `${name} ${index + 1}` : name;
      const remove = listed.standing === "required" ? null : this.#button(`Remove ${called}`, () => this.#remove(each, isList, called), each, "remove");
      return make("fieldset", { class: "fields inner" }, make("legend", {}, label(isList ? `${listed.key}_${index + 1}` : listed.key)), form.table(kind, each, section), remove);
    });
    if (!isList && there.length > 0) return shown;
    return [...shown, this.#adder(listed, isList ? [...path, there.length] : path, kind, section, isList)];
  }

  #button(text, onclick, path, what) {
    return make("button", { type: "button", id: `${fieldId(path)}-${what}`, class: "plain", onclick }, text);
  }

  /** A button that lets the fields appear that the library wants to be given. */
  #adder(listed, path, kind, section, isList) {
    const name = word(listed.key);
    const place = make("div", { class: "adder" });
    const begin = () => {
      const draft = new Draft(this.form, listed, path, kind, section, isList, close);
      place.replaceChildren(draft.element);
      draft.begin();
    };
    const meaning = make("p", { class: "hint" }, `${listed.meaning.charAt(0).toUpperCase()}${listed.meaning.slice(1)}.`);
    const button = this.#button(isList ? `Add to ${name}` : `Add ${name}`, begin, path, "add");
    const close = () => {
      place.replaceChildren(button, meaning);
      button.focus();
    };
    place.append(button, meaning);
    return place;
  }

  #remove(path, isList, called) {
    const { desk } = this.form;
    const edits = [[{ path, value: null }]];
    if (isList) {
      const list = path.slice(0, -1);
      edits.push([{ path: list, value: valueAt(desk.shoot, list).filter((_, index) => index !== path.at(-1)) }]);
    }
    try {
      inform(toldWith(desk.restructureGently(edits), `Removed ${called}. Undo brings it back.`));
    } catch (error) {
      if (error.mistakes === undefined) throw error;
      alarm(`${label(called)} cannot be taken away.`, error.mistakes.map((mistake) => mistakeInWords(mistake)));
    }
  }
}

const toldWith = (kept, text) => (kept ? text : `${text} The file had to be written anew for it: its comments are gone.`);

/** A part that is not in the file yet: what it must be given, and what it may. */
class Draft {
  #values = {};

  constructor(form, listed, path, kind, section, isList, close) {
    this.form = form;
    this.path = path;
    this.isList = isList;
    this.name = word(listed.key);
    const place = { system: form.system, names: (of) => form.names(of), settled: () => {}, propose: (edits, field) => this.#typed(edits, field) };
    const keys = form.sections.keys(section).filter((key) => !form.sections.has(`${section}.${key.key}`));
    this.fields = keys.filter(({ standing }) => standing !== "optional").map((key) => new Field(key, [...path, key.key], kind, place));
    const ways = [...new Set(keys.filter(({ standing }) => standing === "one_of").map(({ otherwise }) => otherwise))];
    this.error = make("p", { class: "error", role: "alert", hidden: true });
    const id = fieldId(path);
    this.element = make("fieldset", { class: "fields inner draft" },
      make("legend", {}, `${label(listed.key)}, not in the file yet`),
      ways.map((text) => make("p", { class: "hint" }, mistakeInWords({ sentence: text, label: null, value: null, helps: [] }))),
      this.fields.map(({ element }) => element), this.error,
      make("div", { class: "row" },
        make("button", { type: "button", id: `${id}-take`, onclick: () => this.#take() }, "Put it in"),
        make("button", { type: "button", id: `${id}-leave`, onclick: close }, "Leave it out")));
  }

  begin() {
    for (const field of this.fields) field.show(undefined, true);
    this.fields[0]?.input.focus();
  }

  #typed([{ value }], field) {
    this.#values[field.listed.key] = value;
    field.accept();
    show(this.error, false);
  }

  #take() {
    const given = Object.fromEntries(Object.entries(this.#values).filter(([, value]) => value !== null));
    const missing = this.fields.filter(({ listed }) => listed.standing === "required" && given[listed.key] === undefined);
    missing.forEach((field) => field.refuse([{ sentence: "a value is needed", label: null, value: null, helps: [] }]));
    if (missing.length > 0) return missing[0].input.focus();
    const { desk } = this.form;
    const { path } = this;
    const list = path.slice(0, -1);
    const ways = [[{ path, value: given }]];
    if (this.isList) ways.unshift([{ path: list, value: [...(valueAt(desk.shoot, list) ?? []), given] }]);
    try {
      const kept = desk.restructureGently(ways);
      inform(toldWith(kept, `Added ${this.name}. What may be given besides stands with it.`));
      document.getElementById(this.fields[0].id)?.focus();
    } catch (error) {
      if (error.mistakes === undefined) throw error;
      this.#refuse(error.mistakes);
    }
  }

  #refuse(mistakes) {
    const others = [];
    for (const mistake of mistakes) {
      const field = this.fields.find(({ listed }) => mistake.path.at(-1) === listed.key);
      if (field === undefined) others.push(mistakeInWords(mistake));
      else {
        field.refuse([mistake]);
        field.input.focus();
      }
    }
    say(this.error, others.length > 0 ? `■ ${others.join(" ")}` : "");
    show(this.error, others.length > 0);
  }
}
