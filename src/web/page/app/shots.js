// The list of shots with the state of each, told by word and symbol.

import { alarm, inform } from "./announce.js";
import { byId, make, say } from "./dom.js";
import { LEVELS, counted, mistakeInWords, worst } from "./words.js";
import { oneShot } from "./oneshot.js";

export class Shots {
  #items = /** @type {any[]} */ ([]);
  #states = new Map();
  #running = 0;
  #isFresh = false;

  constructor(desk, planner) {
    this.desk = desk;
    this.planner = planner;
    desk.addEventListener("opened", () => this.#list());
    desk.addEventListener("selected", () => this.#mark());
    planner.addEventListener("rested", () => this.#survey());
    planner.addEventListener("planned", ({ detail }) => this.#state(this.desk.index, detail.planned.plan.cautions));
    byId("add-shot").addEventListener("click", () => this.#add(true));
    byId("duplicate-shot").addEventListener("click", () => this.#add(false));
    byId("remove-shot").addEventListener("click", () => this.#remove());
  }

  #list() {
    this.#items = this.desk.shoot.shot.map((shot, index) => {
      const state = make("span", { class: "state" });
      const name = make("span", { class: "shot-name" }, shot.name);
      const button = make("button", { type: "button", onclick: () => this.desk.select(index) }, name, " ", state);
      return { button, state, name };
    });
    byId("shot-list").replaceChildren(...this.#items.map(({ button }) => make("li", {}, button)));
    this.#mark();
  }

  #mark() {
    this.#items.forEach(({ button }, index) => {
      if (index === this.desk.index) button.setAttribute("aria-current", "true");
      else button.removeAttribute("aria-current");
    });
    byId("remove-shot").disabled = this.#items.length < 2;
    this.#isFresh = true;
    this.#moveTo();
  }

  /** On a phone the list moves sideways, to the shot that is looked at. Nothing else on the page is moved. */
  #moveTo() {
    const { button } = this.#items[this.desk.index];
    const list = byId("shot-list");
    if (list.scrollWidth > list.clientWidth) list.scrollLeft = button.offsetLeft - 24;
  }

  #state(index, cautions) {
    const item = this.#items[index];
    if (item === undefined) return;
    const level = worst(cautions);
    this.#tell(item, level, counted(cautions));
    say(item.name, this.desk.shoot.shot[index].name);
  }

  #tell({ state }, level, text) {
    if (state.dataset.level !== level) state.dataset.level = level;
    say(state, `${LEVELS[level].symbol} ${text}`);
  }

  /** Plans every shot that changed since, a few at a time, so that nothing else waits for it. */
  #survey() {
    clearTimeout(this.#running);
    // The list may have been made anew since its shot was planned.
    if (this.planner.planned !== null) this.#state(this.desk.index, this.planner.planned.plan.cautions);
    let index = 0;
    const next = () => {
      const until = performance.now() + 6;
      for (; index < this.#items.length && performance.now() < until; index += 1) {
        if (index !== this.desk.index) this.#look(index);
      }
      if (index < this.#items.length) this.#running = setTimeout(next, 0);
      else if (this.#isFresh) {
        // What is told of each shot makes the list longer.
        this.#isFresh = false;
        this.#moveTo();
      }
    };
    this.#running = setTimeout(next, 0);
  }

  #look(index) {
    const one = oneShot(this.desk.shoot, index);
    const key = JSON.stringify(one);
    const { name } = this.desk.shoot.shot[index];
    const known = this.#states.get(name);
    if (known?.key === key) return this.#tell(this.#items[index], known.level, known.text);
    let [level, text] = ["fault", "not planned"];
    try {
      const { cautions } = this.desk.rig.ask("plan", { shoot: one }).plan;
      [level, text] = [worst(cautions), counted(cautions)];
    } catch (error) {
      if (error.mistakes === undefined) throw error;
      text = `not planned: ${mistakeInWords(error.mistakes[0])}`;
    }
    this.#states.set(name, { key, level, text });
    this.#tell(this.#items[index], level, text);
  }

  #newName(like) {
    const names = new Set(this.desk.shoot.shot.map(({ name }) => name));
    for (let count = 2; ; count += 1) if (!names.has(`${like}-${count}`)) return `${like}-${count}`;
  }

  /** A shot like this one, or with no more than its gear, its elevation and how much its frame takes in. */
  #add(bare) {
    const { shot, shoot } = this.desk;
    const { after: _after, right_after: _rightAfter, ...copy } = shot;
    if (bare) {
      const wanted = ["camera", "lens", "table", "subject", "support", "bay", "elevation_deg", "frame_width_mm", "fill_width", "fill_height"];
      for (const key of Object.keys(copy)) if (!wanted.includes(key)) delete copy[key];
    }
    const name = this.#newName(bare ? "shot" : shot.name);
    this.#restructure([{ path: ["shot", shoot.shot.length], value: { ...copy, name } }], shoot.shot.length, `${name} was added at the end of the list.`);
  }

  /** Without the shot, and without what others said of it. */
  #remove() {
    const { index, shoot } = this.desk;
    const { name } = shoot.shot[index];
    const edits = [];
    shoot.shot.forEach((shot, at) => {
      if (at === index) return;
      if (shot.right_after === name) edits.push({ path: ["shot", at, "right_after"], value: null });
      const after = [shot.after ?? []].flat();
      if (after.includes(name)) {
        const others = after.filter((other) => other !== name);
        edits.push({ path: ["shot", at, "after"], value: others.length > 0 ? others : null });
      }
    });
    const log = shoot.log ?? [];
    for (let at = log.length - 1; at >= 0; at -= 1) if (log[at].shot === name) edits.push({ path: ["log", at], value: null });
    edits.push({ path: ["shot", index], value: null });
    this.#restructure(edits, Math.max(index - 1, 0), `${name} was removed. Undo brings it back.`);
  }

  #restructure(edits, index, told) {
    try {
      const kept = this.desk.restructure(edits, index);
      inform(kept ? told : `${told} The file had to be written anew for it: its comments are gone. Undo brings them back.`);
    } catch (error) {
      if (error.mistakes === undefined) throw error;
      alarm("That change would leave a shoot that cannot be planned.", error.mistakes.map((mistake) => mistakeInWords(mistake)));
    }
  }
}
