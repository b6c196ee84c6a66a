// What was measured on the set with tape and inclinometer, held against the plan: what was really set, and which way to correct.

import { inform } from "./announce.js";
import { byId, make, say, show } from "./dom.js";
import { oneShot } from "./oneshot.js";
import { degrees, length, measurementOf, percent } from "./units.js";
import { label, mistakeInWords } from "./words.js";

const KEYS = [
  ["sensor_height_mm", "mm", "Height of the lens axis at the sensor, above the floor"],
  ["horizontal_distance_mm", "mm", "From the aim point to the sensor, level"],
  ["sensor_distance_mm", "mm", "From the aim point to the sensor, straight"],
  ["elevation_deg", "deg", "What an inclinometer along the lens says"],
  ["aim_height_above_floor_mm", "mm", "Height of the aim point above the floor; as planned where left out"],
  ["roll_deg", "deg", "What an inclinometer across the camera says; not measured where left out"],
];

const VERDICTS = { inside: ["–", "within"], outside: ["■", "outside"], undecided: ["△", "undecided"] };

export class MeasuredOnSet {
  #fields = new Map();

  constructor(desk, planner, system) {
    this.desk = desk;
    this.planner = planner;
    this.system = system;
    this.error = make("p", { class: "error", id: "measured-error", hidden: true, role: "alert" });
    this.result = make("div", { id: "measured-result" });
    this.log = make("button", { type: "button", id: "measured-log", hidden: true, onclick: () => this.#write() }, "Write it into the file's log");
    const fields = KEYS.map(([key, unit, hint]) => {
      const id = `measured-${key}`;
      const input = make("input", { type: "text", id, autocomplete: "off", autocapitalize: "off", spellcheck: "false", "aria-describedby": `${id}-error ${id}-hint measured-error`, oninput: () => this.#show() });
      const error = make("p", { class: "error", id: `${id}-error`, hidden: true });
      this.#fields.set(key, { input, error, unit });
      return make("div", { class: "field" }, make("label", { for: id }, label(key)), input, error, make("p", { class: "hint always", id: `${id}-hint` }, `${hint}.`));
    });
    byId("measured").append(
      make("h3", {}, "What was measured"),
      make("p", {}, "Give sensor height and horizontal distance, or sensor distance and elevation, or sensor height and sensor distance. How far off each may be can follow it: 213.5 cm ± 5 mm, or 9° ± 0.3°."),
      make("div", { class: "fields" }, fields), this.error, this.result,
      make("div", { class: "row" }, this.log));
    planner.addEventListener("rested", () => this.#show());
    for (const event of ["opened", "selected"]) desk.addEventListener(event, () => this.#empty());
  }

  #empty() {
    for (const { input } of this.#fields.values()) input.value = "";
  }

  /** What was typed, as the library takes it; what it lacks stands beside it. */
  #asked() {
    const asked = {};
    let whole = true;
    for (const [key, field] of this.#fields) {
      const { value, missing } = measurementOf(field.input.value, field.unit, this.system());
      if (missing !== undefined) {
        whole = false;
        this.#say(field, `${label(key)}: ${missing}`);
      } else if (value !== null) asked[key] = value;
    }
    return { whole, asked };
  }

  #say({ error, input }, text) {
    say(error, `■ ${text}`);
    show(error, true);
    input.setAttribute("aria-invalid", "true");
  }

  #show() {
    for (const { error, input } of this.#fields.values()) {
      show(error, false);
      input.removeAttribute("aria-invalid");
    }
    show(this.error, false);
    const { whole, asked: { roll_deg: roll, ...measured } } = this.#asked();
    const enough = ["sensor_height_mm", "horizontal_distance_mm", "sensor_distance_mm", "elevation_deg"].filter((key) => measured[key] !== undefined).length >= 2;
    this.log.hidden = true;
    if (!whole || (Object.keys(measured).length === 0 && roll === undefined)) return this.result.replaceChildren();
    const request = { shoot: oneShot(this.desk.shoot, this.desk.index), measured };
    if (roll !== undefined) request.roll_deg = roll;
    try {
      const told = this.desk.rig.ask("on_set", request);
      this.result.replaceChildren(...this.#told(told));
      this.log.hidden = false;
    } catch (error) {
      if (error.mistakes === undefined) throw error;
      this.result.replaceChildren();
      this.#refuse(error.mistakes, enough);
    }
  }

  #refuse(mistakes, enough) {
    const general = [];
    for (const mistake of mistakes) {
      const field = this.#fields.get(mistake.path.find((step) => this.#fields.has(step)) ?? mistake.field?.split(".").at(-1));
      if (field === undefined) {
        if (enough) general.push(mistakeInWords(mistake));
        continue;
      }
      this.#say(field, mistakeInWords(mistake, field.input.value.trim()));
    }
    say(this.error, general.length > 0 ? `■ ${general.join(" ")}` : "");
    show(this.error, general.length > 0);
    if (general.length === 0 && !enough) this.result.replaceChildren(make("p", { class: "quiet" }, "One more measure is needed."));
  }

  #told({ on_set: { real, elevation_deg: elevation, frame_width_share: frame, roll_deg: roll, correction, verdict }, usual_cautions: usual }) {
    const system = this.system();
    const { brief, plan } = this.planner.planned;
    const [symbol, word] = VERDICTS[verdict];
    const row = (name, planned, is, deviation, write) => {
      const [mark, text] = VERDICTS[deviation.verdict];
      return make("tr", {}, make("th", { scope: "row" }, name), ...[planned, is, `${write(deviation.off)} ± ${write(deviation.uncertainty)}`, `± ${write(deviation.tolerance)}`, `${mark} ${text}`].map((cell) => make("td", {}, cell)));
    };
    const angle = (value) => degrees(value, 2);
    const share = (value) => percent(value, 1);
    const rows = [
      row("Elevation", degrees(brief.shot.elevation_deg), angle(real.elevation_deg.value), elevation, angle),
      row("Frame width", length(plan.frame_width_mm, system), length(real.frame_width_mm.value, system), frame, share),
    ];
    if (roll !== null) rows.push(row("Roll", "0°", angle(roll.off), roll, angle));
    const heads = ["", "Planned", "Really set", "Off", "Allowed", "Verdict"].map((head) => make(head === "" ? "td" : "th", head === "" ? {} : { scope: "col" }, head));
    return [
      make("p", { class: "set-verdict", role: "status" }, `${symbol} ${{ inside: "Within its tolerances.", outside: "Outside its tolerances.", undecided: "Measured too coarsely to tell whether it is within its tolerances." }[verdict] ?? word}`),
      make("div", { class: "scroll", tabindex: "0", role: "region", "aria-label": "What was really set" }, make("table", {}, make("thead", {}, make("tr", {}, heads)), make("tbody", {}, rows))),
      make("p", {}, "To correct:"),
      make("ul", { class: "reasons" }, corrections(correction, system).map((text) => make("li", {}, text))),
      make("p", { class: "quiet" }, `${usual[0]} ${usual.at(-1)}`),
    ];
  }

  #write() {
    const { desk } = this;
    const entry = { shot: desk.shot.name, ...this.#asked().asked };
    const log = desk.shoot.log ?? [];
    const values = [...this.#fields.values()].map(({ input }) => input.value);
    const list = [{ path: ["log"], value: [...log, entry] }];
    // As a table of its own after the others, or in one list: whichever leaves the file's comments alone.
    desk.restructureGently(log.length === 0 ? [list] : [[{ path: ["log", log.length], value: entry }], list]);
    [...this.#fields.values()].forEach(({ input }, index) => (input.value = values[index]));
    inform("Written into the file's log. It is in the file once you save.");
  }
}

/** Which way to correct, in words. */
function corrections({ up_mm: up, away_mm: away, look_down_deg: down, roll_deg: roll }, system) {
  const told = [];
  if (Math.abs(up) >= 0.05) told.push(`${length(Math.abs(up), system)} ${up > 0 ? "up" : "down"}`);
  if (Math.abs(away) >= 0.05) told.push(`${length(Math.abs(away), system)} ${away > 0 ? "away from" : "closer to"} the aim point, level`);
  if (Math.abs(down) >= 0.005) told.push(`aim at the aim point again: it then looks ${degrees(Math.abs(down), 2)} further ${down > 0 ? "down" : "up"}`);
  if (Math.abs(roll) >= 0.005) told.push(`roll it back by ${degrees(Math.abs(roll), 2)}, against the way it was measured`);
  return told.length > 0 ? told : ["nothing"];
}
