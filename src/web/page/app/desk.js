// The shoot on the desk: its text as a file, the same as an object, which shot is looked at, and what was before.

import { keep } from "./keep.js";
import { valueAt, withPlace, withValue } from "./oneshot.js";

const MOST_STEPS_BACK = 60;

/** Thrown for a shoot file that cannot be planned; `mistakes` says where and why. */
export class BrokenShoot extends Error {
  constructor(mistakes) {
    super("the shoot file has mistakes");
    this.mistakes = mistakes;
  }
}

/** Events: `opened` after another text was taken, `selected` after another shot, `committed` after changes were written. */
export class Desk extends EventTarget {
  constructor(rig) {
    super();
    this.rig = rig;
    this.text = "";
    this.shoot = /** @type {any} */ ({ shot: [] });
    this.index = 0;
    this.name = "shoot.toml";
    this.isDemo = false;
    this.saved = true;
    this.handle = /** @type {any} */ (null);
    this.pending = /** @type {{path: (string | number)[], value: any}[]} */ ([]);
    this.back = /** @type {any[]} */ ([]);
    this.forth = /** @type {any[]} */ ([]);
  }

  /** The shot that is looked at, as it is written. */
  get shot() {
    return this.shoot.shot[this.index];
  }

  /** Reads a text; throws where it cannot be planned, and then nothing has changed. */
  read(text) {
    let read;
    try {
      read = this.rig.ask("read", { shoot: text });
    } catch (error) {
      if (error.mistakes === undefined) throw error;
      throw new BrokenShoot(error.mistakes);
    }
    if (read.mistakes.length > 0) throw new BrokenShoot(read.mistakes);
    if (!(read.shoot.shot?.length > 0)) throw new Error("the file has no shots");
    return read;
  }

  /** Takes another file. The one before it is a step back. */
  open(text, { name = "shoot.toml", demo = false, handle = null, index = 0, saved = true } = {}) {
    const { shoot } = this.read(text);
    this.commit();
    if (this.text !== "" && this.text !== text) this.#remember();
    Object.assign(this, { text, shoot, name, isDemo: demo, handle, saved });
    this.index = Math.min(Math.max(index, 0), shoot.shot.length - 1);
    this.#keep();
    this.dispatchEvent(new Event("opened"));
  }

  select(index) {
    if (index === this.index || this.shoot.shot[index] === undefined) return;
    this.commit();
    this.index = index;
    this.#keep();
    this.dispatchEvent(new Event("selected"));
  }

  /** The shoot with values changed, not yet taken. */
  candidate(edits) {
    return edits.reduce((shoot, { path, value }) => withValue(shoot, path, value), this.shoot);
  }

  /** What is wrong with a candidate as a whole: names taken twice, other shots that use the same gear. */
  mistakesOf(candidate) {
    return this.rig.ask("read", { shoot: candidate }).mistakes;
  }

  /** Takes a candidate that was planned; the file's text follows at the next commit. */
  take(shoot, edits) {
    this.shoot = shoot;
    for (const edit of edits) {
      const same = (other) => JSON.stringify(other.path) === JSON.stringify(edit.path);
      this.pending = [...this.pending.filter((other) => !same(other)), edit];
    }
  }

  /** Writes what was taken into the text. Says whether comments stayed. */
  commit() {
    if (this.pending.length === 0) return true;
    const edits = this.#writable(this.pending);
    this.pending = [];
    if (edits.length === 0) return true;
    const { text, rest_kept: kept } = this.#edited(edits);
    this.#step(text);
    this.dispatchEvent(new Event("committed"));
    return kept;
  }

  /** Without what would be taken away and is not in the text: typed and cleared again before it was written. */
  #writable(edits) {
    if (edits.every(({ value }) => value !== null)) return edits;
    const { shoot } = this.rig.ask("read", { shoot: this.text });
    return edits.filter(({ path, value }) => value !== null || valueAt(shoot, path) !== undefined);
  }

  /** Changes the list of shots or of gear; throws where the result could not be planned, and then nothing has changed. */
  restructure(edits, index = this.index) {
    this.commit();
    const { text, rest_kept: kept } = this.#edited(edits);
    this.retext(text, index);
    return kept;
  }

  /** The same by the first of several ways that leaves the file's comments alone. */
  restructureGently(ways) {
    this.commit();
    return this.restructure(ways.find((edits) => this.#edited(edits).rest_kept) ?? ways[0]);
  }

  /** The text with changes made in it; a table that is not there yet comes with what is put into it. */
  #edited(edits) {
    let shoot = this.rig.ask("read", { shoot: this.text }).shoot;
    const placed = edits.map((edit) => {
      const has = withPlace(shoot, edit);
      shoot = withValue(shoot, has.path, has.value);
      return has;
    });
    return this.rig.ask("edit", { shoot: this.text, edits: placed });
  }

  /** Takes a whole text in place of this one. */
  retext(text, index = this.index) {
    this.commit();
    const { shoot } = this.read(text);
    this.#step(text);
    this.index = Math.min(index, shoot.shot.length - 1);
    this.shoot = shoot;
    this.#keep();
    this.dispatchEvent(new Event("opened"));
  }

  undo() {
    this.commit();
    this.#travel(this.back, this.forth);
  }

  redo() {
    this.commit();
    this.#travel(this.forth, this.back);
  }

  markSaved(name, handle) {
    Object.assign(this, { name, handle, saved: true, isDemo: false });
    this.#keep();
    this.dispatchEvent(new Event("committed"));
  }

  #now() {
    const { text, index, name, isDemo, handle } = this;
    return { text, index, name, isDemo, handle };
  }

  #remember() {
    this.back.push(this.#now());
    if (this.back.length > MOST_STEPS_BACK) this.back.shift();
    this.forth = [];
  }

  #step(text) {
    this.#remember();
    this.text = text;
    this.saved = false;
    this.#keep();
  }

  #travel(from, to) {
    const step = from.pop();
    if (step === undefined) return;
    to.push(this.#now());
    Object.assign(this, step);
    this.shoot = this.read(step.text).shoot;
    this.saved = false;
    this.#keep();
    this.dispatchEvent(new Event("opened"));
  }

  #keep() {
    const { text, name, isDemo, index, saved } = this;
    this.isKept = keep({ text, name, isDemo, index, saved });
  }
}
