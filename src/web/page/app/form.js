// What is asked, as a form made from the library's own list of keys: the shot first, then the gear it uses.

import { Choices, takesChoices } from "./choices.js";
import { byId, make, say } from "./dom.js";
import { Field } from "./field.js";
import { gearCopy } from "./gearcopy.js";
import { Framing } from "./framing.js";
import { LEVELS, label } from "./words.js";
import { nameUsed, pathInWhole, valueAt } from "./oneshot.js";
import { Parts } from "./parts.js";
import { Sections } from "./sections.js";

/** What most shots are about; the other keys stand under "More". */
const FIRST = ["elevation_deg", "bearing_deg", "hold", "delivered_aspect", "lens", "f_number", "subject", "support", "side", "name", "note"];
const FRAMING = ["frame_width_mm", "fill_width", "fill_height"];
/** What the tables are about that all shots share. */
const SHARED = { shoot: "Title, and what shots use that name nothing else", criteria: "Limits of the cautions", kit: "Kit that open shots choose from", weights: "Weights at hand", order: "Minutes that changes take" };
const GEAR = /** @type {const} */ (["subject", "lens", "camera", "support", "table", "bay"]);

export class Form {
  #fields = /** @type {(Field | Choices)[]} */ ([]);
  #framing = /** @type {any} */ (null);
  #opened = new Set();

  constructor(desk, planner, system) {
    this.desk = desk;
    this.planner = planner;
    this.system = system;
    this.sections = new Sections(desk.rig);
    this.parts = new Parts(this);
    for (const event of ["opened", "selected"]) desk.addEventListener(event, () => this.build());
    planner.addEventListener("planned", ({ detail }) => {
      if (!detail.moving) this.refresh();
    });
    planner.addEventListener("rested", () => this.refresh());
    planner.addEventListener("taken", ({ detail }) => this.#taken(detail.proposals));
    planner.addEventListener("refused", ({ detail }) => this.#refused(detail));
    byId("asked-form").addEventListener("submit", (event) => event.preventDefault());
  }

  names(kind) {
    return Object.keys(this.desk.shoot[kind] ?? {});
  }

  /** Makes the form anew for the shot that is looked at. */
  build() {
    const active = document.activeElement?.id;
    this.#fields = [];
    const at = ["shot", this.desk.index];
    const keys = this.sections.keys("shot");
    const listed = (key) => keys.find((each) => each.key === key);
    const first = FIRST.map((key) => this.#field(listed(key), [...at, key], "shot"));
    this.#framing = new Framing(FRAMING.map(listed), this);
    first.splice(1, 0, this.#framing.element);
    const more = keys.filter(({ key }) => !FIRST.includes(key) && !FRAMING.includes(key));
    byId("asked-form").replaceChildren(
      make("fieldset", { class: "fields" }, make("legend", {}, "The shot"), first),
      this.#drawer("more", "More about the shot", () => more.map((each) => this.#field(each, [...at, each.key], "shot"))),
      make("h3", {}, "What it is shot with"),
      ...GEAR.map((kind) => this.#gear(kind)).filter((each) => each !== null),
      make("h3", {}, "The whole shoot"),
      ...this.sections.wholes.map((kind) => this.#drawer(kind, SHARED[kind] ?? label(kind), () => this.table(kind, [kind], kind))),
    );
    this.refresh(true);
    this.#hold();
    if (active && document.activeElement?.id !== active && active.startsWith("field-")) document.getElementById(active)?.focus({ preventScroll: true });
  }

  #field(listed, path, kind) {
    const field = takesChoices(kind, listed) ? new Choices(listed, path, this) : new Field(listed, path, kind, this);
    this.#fields.push(field);
    return field.element;
  }

  /** A part that is made when it is first opened, and stays open from shot to shot. */
  #drawer(id, title, content, note) {
    const inside = make("div", { class: "fields" });
    const drawer = make("details", { id: `drawer-${id}` }, make("summary", {}, title), note ?? null, inside);
    const fill = () => {
      if (inside.childElementCount > 0) return;
      inside.append(...content());
      this.refresh(true);
    };
    if (this.#opened.has(id)) {
      drawer.open = true;
      inside.append(...content());
    }
    drawer.addEventListener("toggle", () => {
      if (drawer.open) {
        this.#opened.add(id);
        fill();
      } else this.#opened.delete(id);
    });
    return drawer;
  }

  /** The gear of a kind that the shot uses. */
  #gear(kind) {
    const { desk } = this;
    const own = desk.shot[kind];
    if (kind === "subject" && typeof own === "object" && own !== null) {
      return this.#drawer(kind, `${label(kind)}: written in the shot`, () => this.table(kind, ["shot", desk.index, kind], kind));
    }
    const used = nameUsed(desk.shoot, desk.index, kind);
    const name = typeof used === "string" && used !== "any" ? used : this.planner.planned?.uses[kind];
    if (typeof name !== "string" || desk.shoot[kind]?.[name] === undefined) return null;
    const others = desk.shoot.shot.filter((_, index) => index !== desk.index && [nameUsed(desk.shoot, index, kind)].flat().includes(name));
    const note = make("p", { class: "hint" }, others.length > 0 ? `Also used by ${others.map((shot) => shot.name).join(", ")}: a change here changes those too. To change it for this shot alone, copy it first.` : "Used by this shot alone.");
    const copy = () => gearCopy(desk, kind, name);
    const content = () => (others.length > 0 ? [copy(), ...this.table(kind, [kind, name], kind)] : [...this.table(kind, [kind, name], kind), copy()]);
    return this.#drawer(kind, `${label(kind)}: ${name}`, content, note);
  }

  /** The fields of a table of the file, and of the tables inside it. */
  table(kind, path, section) {
    return this.sections.keys(section).flatMap((listed) => {
      const [inside, inner] = [[...path, listed.key], `${section}.${listed.key}`];
      return this.sections.has(inner) ? this.parts.elements(listed, inside, kind, inner) : [this.#field(listed, inside, kind)];
    });
  }

  /** Shows what the file has now. */
  refresh(force = false) {
    for (const field of this.#fields) field.show(valueAt(this.desk.shoot, field.path), force);
    this.#framing?.show(force);
  }

  propose(edits, field, at) {
    const all = edits.flatMap((edit) => [edit, ...this.#alsoRenamed(edit)]);
    this.planner.propose({ edits: all, field: field.key, typed: field.input.value, at });
  }

  /** Where else a shot's name stands: in what comes after it, and in the log. */
  #alsoRenamed({ path, value }) {
    if (path[0] !== "shot" || path[2] !== "name" || value === null) return [];
    const { shoot, shot } = this.desk;
    const edits = [];
    shoot.shot.forEach((other, at) => {
      if (other.right_after === shot.name) edits.push({ path: ["shot", at, "right_after"], value });
      const after = [other.after ?? []].flat();
      if (!after.includes(shot.name)) return;
      const renamed = after.map((name) => (name === shot.name ? value : name));
      edits.push({ path: ["shot", at, "after"], value: Array.isArray(other.after) ? renamed : renamed[0] });
    });
    (shoot.log ?? []).forEach((entry, at) => {
      if (entry.shot === shot.name) edits.push({ path: ["log", at, "shot"], value });
    });
    return edits;
  }

  /** Typing ended: the file's text follows. */
  settled() {
    requestAnimationFrame(() => this.desk.commit());
  }

  #all() {
    return this.#framing === null ? this.#fields : [...this.#fields, this.#framing];
  }

  /** What moves shows in its own fields at once. */
  #showMoved(proposals) {
    const keys = proposals.flatMap(({ edits }) => edits.map(({ path }) => JSON.stringify(path)));
    for (const field of this.#fields) if (keys.includes(field.key)) field.show(valueAt(this.desk.shoot, field.path));
    if (this.#framing !== null && keys.includes(this.#framing.key)) this.#framing.show();
  }

  #taken(proposals) {
    if (proposals.every(({ moving }) => moving)) this.#showMoved(proposals);
    if (proposals.every(({ moving }) => moving) && !this.#all().some((field) => field.draft)) return;
    for (const { field: key } of proposals) {
      if (key === undefined) this.#all().filter((field) => !this.planner.drafts.has(field.key)).forEach((field) => field.accept());
      else this.#all().find((field) => field.key === key)?.accept();
    }
    if (proposals.some(({ edits }) => edits.some(({ path }) => GEAR.includes(path[2]) || path[2] === "name"))) this.#rebuildGear();
    this.#hold();
  }

  /** Another lens or stand was chosen: its fields take the place of the former's. */
  #rebuildGear() {
    if (this.planner.drafts.size > 0) return;
    const active = document.activeElement;
    const [start, end] = active instanceof HTMLInputElement && active.type === "text" ? [active.selectionStart, active.selectionEnd] : [null, null];
    this.build();
    const now = document.activeElement;
    if (start !== null && now instanceof HTMLInputElement && now.id === active?.id) now.setSelectionRange(start, end);
  }

  #refused({ mistakes, proposal }) {
    if (proposal !== null) {
      const asked = this.#all().find((field) => field.key === proposal.field);
      const places = mistakes.map(({ path }) => JSON.stringify(pathInWhole(path, this.desk.index)));
      const elsewhere = asked === undefined ? this.#all().filter((field) => places.includes(field.key)) : [asked];
      elsewhere.forEach((field) => field.refuse(mistakes.map((mistake) => this.#ofWhichShot(mistake))));
    }
    this.#hold();
  }

  /** A mistake in another shot says in which. */
  #ofWhichShot(mistake) {
    const [kind, index] = mistake.path;
    const { name } = (kind === "shot" && this.desk.shoot.shot[index]) || {};
    if (name === undefined || index === 0 || index === this.desk.index) return mistake;
    return { ...mistake, sentence: `in shot ${name}: ${mistake.sentence}` };
  }

  /** Says that the figures are those of the last good plan, while something typed could not be taken. */
  #hold() {
    const held = this.#all().filter((field) => field.draft);
    const box = byId("last-good");
    box.hidden = held.length === 0;
    document.documentElement.classList.toggle("holding", held.length > 0);
    if (held.length === 0) return say(box, "");
    const names = held.map((field) => label(field.listed.key)).join(", ");
    say(box, `${LEVELS.warn.symbol} Last good plan. What stands under ${names} cannot be planned; the figures and drawings are those from before it.`);
  }
}
