// Follows every change: proposals are gathered until the next frame, planned and drawn at once, and shown.

import { drawingUnit } from "./units.js";
import { oneShot } from "./oneshot.js";

const REST_MS = 140;
const MOST_MEASURES = 1000;

/**
 * A change that somebody makes.
 * @typedef {object} Proposal
 * @property {{path: (string | number)[], value: any}[]} edits
 * @property {string} [field] the path of the field that it was typed into, as JSON
 * @property {string} [typed] what was typed
 * @property {number} [at] the input event's time stamp
 * @property {boolean} [moving] whether more of it comes at once: then only what is looked at is drawn
 */

/** Whether a change may be felt in other shots: names, their order, and gear that is shared. */
const concernsOthers = ({ path }) => path[0] !== "shot" || ["name", "after", "right_after"].includes(path[2]);

/** Events: `planned` in each frame, `rested` when nothing newer came for a while, `refused`. */
export class Planner extends EventTarget {
  #queue = /** @type {Proposal[]} */ ([]);
  #frame = 0;
  #rest = 0;
  #measures = 0;

  constructor(desk, stages, system) {
    super();
    this.desk = desk;
    this.stages = stages;
    this.system = system;
    this.planned = /** @type {any} */ (null);
    /** What was proposed and could not be taken, by the path of its field. */
    this.drafts = new Map();
    desk.addEventListener("opened", () => this.#anew());
    desk.addEventListener("selected", () => this.#anew());
  }

  /** Takes a change at the next frame. */
  propose(proposal) {
    this.#queue.push(proposal);
    if (this.#frame === 0) this.#frame = requestAnimationFrame(() => this.#follow());
  }

  /** Plans and draws what there is, now: after the unit, the view or the size of a drawing changed. */
  redraw() {
    if (this.desk.shot === undefined || this.planned === null) return;
    this.#plan(this.desk.shoot, this.stages.visible());
    this.#tell("planned", { planned: this.planned, moving: false });
    this.restSoon(REST_MS);
  }

  #anew() {
    this.#queue = [];
    this.drafts.clear();
    const first = performance.now();
    try {
      this.#plan(this.desk.shoot, this.stages.visible());
      this.#tell("planned", { planned: this.planned, moving: false });
    } catch (error) {
      if (error.mistakes === undefined) throw error;
      this.planned = null;
      this.#tell("refused", { mistakes: error.mistakes, proposal: null });
      return;
    }
    this.#measure(first, undefined, false);
    this.restSoon(0);
  }

  #follow() {
    this.#frame = 0;
    const proposals = this.#queue;
    this.#queue = [];
    const start = performance.now();
    const at = proposals.find((proposal) => proposal.at !== undefined)?.at;
    const moving = proposals.some((proposal) => proposal.moving);
    // What was refused before may do together with this: a focal length and the closest focus that goes with it.
    const fields = proposals.map(({ field }) => field);
    const refused = [...this.drafts.values()].map((draft) => draft.proposal).filter(({ field }) => !fields.includes(field));
    const together = refused.length > 0 && this.#take([...refused, ...proposals], moving);
    if (!together && !this.#take(proposals, moving) && proposals.length > 1) proposals.forEach((each) => this.#take([each], moving));
    this.#measure(start, at, moving);
    this.restSoon(moving ? REST_MS : REST_MS / 2);
  }

  /** Plans with these changes; where that is refused, everything stays as it was. */
  #take(proposals, moving) {
    const edits = proposals.flatMap((proposal) => proposal.edits);
    const candidate = this.desk.candidate(edits);
    try {
      if (edits.some(concernsOthers)) {
        const mistakes = this.desk.mistakesOf(candidate);
        if (mistakes.length > 0) throw { mistakes };
      }
      this.#plan(candidate, moving ? this.stages.first() : this.stages.visible());
    } catch (error) {
      if (error.mistakes === undefined) throw error;
      if (proposals.length > 1) return false;
      const [proposal] = proposals;
      if (proposal.field !== undefined) this.drafts.set(proposal.field, { proposal, mistakes: error.mistakes });
      this.#tell("refused", { mistakes: error.mistakes, proposal });
      return true;
    }
    this.desk.take(candidate, edits);
    for (const { field } of proposals) if (field !== undefined) this.drafts.delete(field);
    this.#tell("planned", { planned: this.planned, moving });
    this.#tell("taken", { proposals });
    return true;
  }

  /** Asks once for the plan with the first drawing, and for each further size of drawing once more. */
  #plan(shoot, views) {
    const one = oneShot(shoot, this.desk.index);
    const unit = drawingUnit(this.system());
    const [first, ...others] = this.stages.bySize(views);
    const { planned, drawings } = this.desk.rig.ask("plan_and_draw", { shoot: one, unit, id: "drawn", ...(first ?? { views: [] }) });
    this.planned = planned;
    this.stages.put(drawings, planned);
    for (const more of others) {
      this.stages.put(this.desk.rig.ask("plan_and_draw", { shoot: one, unit, id: "drawn", ...more }).drawings, planned);
    }
  }

  /** Lets the slower followers know, unless something newer comes first. */
  restSoon(ms = REST_MS) {
    clearTimeout(this.#rest);
    this.#rest = setTimeout(() => this.#settle(), ms);
  }

  /** Draws what was left out while something moved, and lets slower followers know. */
  #settle() {
    if (this.planned === null) return;
    if (!this.stages.held) {
      const stale = this.stages.stale();
      const one = oneShot(this.desk.shoot, this.desk.index);
      for (const more of this.stages.bySize(stale)) {
        const { drawings } = this.desk.rig.ask("plan_and_draw", { shoot: one, unit: drawingUnit(this.system()), id: "drawn", ...more });
        this.stages.put(drawings, this.planned);
      }
    }
    this.#tell("rested", { planned: this.planned });
  }

  #tell(type, detail) {
    this.dispatchEvent(new CustomEvent(type, { detail }));
  }

  /** One replanning for the User Timing interface: its work, and the time since the input. */
  #measure(start, at, moving) {
    const end = performance.now();
    const detail = { moving, shot: this.desk.shot?.name };
    performance.measure("tablerig-replan", { start, end, detail });
    if (at !== undefined && at <= end) performance.measure("tablerig-input-to-drawn", { start: Math.min(at, start), end, detail });
    this.#measures += 1;
    if (this.#measures >= MOST_MEASURES) {
      performance.clearMeasures("tablerig-replan");
      performance.clearMeasures("tablerig-input-to-drawn");
      this.#measures = 0;
    }
  }
}
