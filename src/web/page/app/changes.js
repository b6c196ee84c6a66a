// What would make a stopped shot possible: the smallest changes, each alone, looked for when asked.

import { byId, make, show } from "./dom.js";
import { elevationEdit, frameEdits } from "./handles.js";
import { oneShot } from "./oneshot.js";
import { degrees, kilograms, length, short } from "./units.js";
import { worst } from "./words.js";

export class Changes {
  constructor(desk, planner, system) {
    this.desk = desk;
    this.planner = planner;
    this.system = system;
    this.button = make("button", { type: "button", id: "smallest", onclick: () => this.#look() }, "Which smallest change makes it possible?");
    this.list = make("ul", { class: "reasons", id: "smallest-changes" });
    byId("changes").append(this.button, make("div", { role: "status" }, this.list));
    planner.addEventListener("planned", ({ detail }) => {
      if (!detail.moving) this.#show(detail.planned);
    });
    planner.addEventListener("rested", ({ detail }) => {
      if (!planner.stages.held) this.#show(detail.planned);
    });
    const forget = () => this.list.replaceChildren();
    planner.addEventListener("taken", forget);
    for (const event of ["opened", "selected"]) desk.addEventListener(event, forget);
  }

  #show(planned) {
    show(byId("changes"), worst(planned.plan.cautions) === "stop");
  }

  #look() {
    this.list.replaceChildren(make("li", {}, "Looking."));
    // Once that is painted: it takes many plans.
    requestAnimationFrame(() => setTimeout(() => {
      const { changes } = this.desk.rig.ask("smallest_changes", { shoot: oneShot(this.desk.shoot, this.desk.index) });
      this.list.replaceChildren(...(changes.length > 0 ? changes.map((change) => this.#item(change)) : [make("li", {}, "No single change does.")]));
    }));
  }

  #item(change) {
    const { kind, sentence, from, to, unit } = change;
    const system = this.system();
    const tell = { mm: (v) => (kind === "other_focal_length" ? `${short(v, 0)} mm` : length(v, system)), deg: degrees, kg: kilograms }[unit] ?? ((v) => short(v));
    const edits = this.#edits(change);
    const take = edits === null ? null : make("button", { type: "button", onclick: (event) => this.#take(edits, event) }, "Take it");
    return make("li", {}, `${sentence.replace(/\.$/, "")}: ${tell(to)}, now ${tell(from)}. `, take);
  }

  /** What the shot itself can change; other gear is for the gear's own fields. Rounded to the side that works. */
  #edits({ kind, to, by }) {
    const rounded = (step) => (by < 0 ? Math.floor(to / step) : Math.ceil(to / step)) * step;
    if (kind === "narrower_frame" || kind === "wider_frame") return frameEdits(this.desk, rounded(this.system() === "metric" ? 1 : 2.54), this.system());
    if (kind === "lower_elevation" || kind === "higher_elevation") return [elevationEdit(this.desk, Math.round(rounded(0.1) * 10) / 10)];
    return null;
  }

  #take(edits, event) {
    this.planner.propose({ edits, at: event.timeStamp });
    byId("plan").focus({ preventScroll: true });
  }
}
