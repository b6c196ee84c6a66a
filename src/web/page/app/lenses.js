// Lenses side by side for the same frame: those of the file, or focal lengths typed in.

import { byId, make, say, show } from "./dom.js";
import { inWords } from "./figures.js";
import { oneShot } from "./oneshot.js";
import { degrees, fNumber, length, short } from "./units.js";
import { LEVELS, mistakeInWords, worst } from "./words.js";

const HEADS = ["Lens", "Fits", "Sensor height", "Sensor to aim point", "Lens front to aim", "Reach", "Opening", "Tips at", ""];

export class Lenses {
  #key = "";

  constructor(desk, planner, system, usual) {
    this.desk = desk;
    this.planner = planner;
    this.system = system;
    this.body = make("tbody");
    this.frame = make("p", { class: "quiet", id: "lenses-frame" });
    this.error = make("p", { class: "error", id: "focal-lengths-error", hidden: true, role: "alert" });
    this.input = make("input", { type: "text", id: "focal-lengths", inputmode: "decimal", autocomplete: "off", "aria-describedby": "focal-lengths-error focal-lengths-hint" });
    this.input.addEventListener("input", () => this.#show(this.planner.planned, true));
    byId("lenses").append(
      make("h3", { id: "lenses-heading" }, "Lenses side by side for the same frame"),
      this.frame,
      make("div", { class: "scroll", tabindex: "0", role: "region", "aria-labelledby": "lenses-heading" },
        make("table", { class: "lenses" }, make("thead", {}, make("tr", {}, HEADS.map((head) => make(head === "" ? "td" : "th", head === "" ? {} : { scope: "col" }, head)))), this.body)),
      make("div", { class: "field" }, make("label", { for: "focal-lengths" }, "Other focal lengths, in mm"), this.input, this.error,
        make("p", { class: "hint", id: "focal-lengths-hint" }, "One or several between commas, 1 to 3000 mm. Each is taken as a lens like the shot's that keeps its focal length as it focuses.")),
      make("p", { class: "quiet" }, `Tips at is computed: ${usual[0]} ${usual.at(-1)}`),
    );
    planner.addEventListener("rested", ({ detail }) => this.#show(detail.planned));
  }

  /** The focal lengths typed in; says beside the field what is none. */
  #typed() {
    const parts = this.input.value.split(/[,;]\s*|\s+/).filter((part) => part !== "");
    const none = parts.filter((part) => !(Number(part) >= 1 && Number(part) <= 3000));
    say(this.error, none.length > 0 ? `■ Focal length: “${none.join("”, “")}” is none; allowed 1 to 3000 mm.` : "");
    show(this.error, none.length > 0);
    if (none.length > 0) this.input.setAttribute("aria-invalid", "true");
    else this.input.removeAttribute("aria-invalid");
    return [...new Set(parts.filter((part) => !none.includes(part)).map(Number))].slice(0, 12);
  }

  #show(planned, force = false) {
    if (planned === null) return;
    const { desk } = this;
    const one = { ...oneShot(desk.shoot, desk.index), lens: desk.shoot.lens };
    // The same frame for every lens: what the subject fills depends on the lens.
    const { fill_width: _w, fill_height: _h, ...shot } = one.shot[0];
    one.shot = [{ ...shot, lens: planned.uses.lens, support: planned.uses.support, frame_width_mm: planned.plan.frame_width_mm }];
    const key = JSON.stringify([one, this.system()]);
    if (key === this.#key && !force) return;
    this.#key = key;
    say(this.frame, `All for a frame ${length(planned.plan.frame_width_mm, this.system())} wide, at ${degrees(planned.brief.shot.elevation_deg)}, on ${planned.uses.support}.`);
    const rows = this.#ask({ shoot: one, quantity: "lens" });
    for (const value of this.#typed()) rows.push(...this.#ask({ shoot: one, quantity: "focal_length_mm", from: value, to: value, step: 1 }));
    this.body.replaceChildren(...rows.map((row) => this.#row(row, planned)));
  }

  #ask(request) {
    try {
      return this.desk.rig.ask("sweep", request).rows;
    } catch (error) {
      if (error.mistakes === undefined) throw error;
      return [];
    }
  }

  #row({ lens, value, plan, refused }, planned) {
    const system = this.system();
    const current = lens !== null && lens === planned.uses.lens;
    const name = make("th", { scope: "row" }, lens ?? `${short(value, 1)} mm`, lens === null ? null : make("span", { class: "beside" }, `${short(value, 1)} mm`), current ? make("span", { class: "beside" }, "▸ this shot's") : null);
    if (plan === null) return make("tr", {}, name, make("td", { colspan: String(HEADS.length - 1) }, `■ not possible: ${mistakeInWords(refused)}`));
    const level = worst(plan.cautions);
    const serious = plan.cautions.filter((caution) => caution.level === "stop" || caution.level === "warn");
    const fits = make("td", { class: "fits" },
      make("span", { class: "level", "data-level": level }, `${LEVELS[level].symbol} ${level === "stop" ? "does not fit" : "fits"}`),
      serious.map((caution) => make("span", { class: "beside", "data-level": caution.level }, `${LEVELS[caution.level].symbol} ${LEVELS[caution.level].word}: ${inWords(caution, system)}`)));
    const cells = [
      length(plan.pose.sensor.z_mm, system),
      length(plan.lens.sensor_distance_mm, system),
      length(plan.pose.front_clearance_mm, system),
      plan.placement.boom_used ? length(plan.placement.reach_mm, system) : "no boom",
      fNumber(plan.focus.engraved),
      degrees(plan.stability.as_shot.tilt_to_tip_deg),
    ];
    const use = lens === null || current ? null : make("button", { type: "button", "aria-label": `Use ${lens}`, onclick: (event) => this.#use(lens, event) }, "Use");
    return make("tr", current ? { class: "current" } : {}, name, fits, cells.map((cell) => make("td", { class: "number" }, cell)), make("td", {}, use));
  }

  #use(lens, event) {
    const { index } = this.desk;
    this.planner.propose({ edits: [{ path: ["shot", index, "lens"], value: lens }], at: event.timeStamp });
    requestAnimationFrame(() => this.desk.commit());
    this.input.focus({ preventScroll: true });
  }
}
