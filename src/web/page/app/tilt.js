// The device's own tilt sensor read as the camera's elevation, against the planned one with its tolerance.

import { byId, make, say } from "./dom.js";
import { Steadied, WAYS, elevationDeg, rollDeg, upInPhone } from "./gravity.js";
import { keep, kept } from "./keep.js";
import { degrees } from "./units.js";

/** A sensor that is there tells something within this time. */
const SILENCE_MS = 1500;

export class TiltReader {
  #listening = false;
  #heard = false;
  #steady = new Steadied();
  #steadyRoll = new Steadied();
  #verdict = "";
  #raw = /** @type {number | null} */ (null);

  constructor(planner) {
    this.planner = planner;
    const { way = "back", zero = {} } = kept().tilt ?? {};
    this.way = WAYS[way] === undefined ? "back" : way;
    this.zero = zero;
    this.state = make("p", { id: "tilt-state", role: "status" });
    this.told = make("p", { id: "tilt-verdict", role: "status" });
    this.figures = make("dl", { class: "large", id: "tilt-figures", hidden: true });
    this.value = make("span", { class: "value", id: "tilt-value" });
    this.planned = make("span", { class: "value" });
    this.band = make("span", { class: "beside" });
    this.roll = make("span", { class: "value" });
    this.rollBand = make("span", { class: "beside" });
    this.figures.append(
      make("div", {}, make("dt", {}, "Read"), make("dd", {}, this.value)),
      make("div", {}, make("dt", {}, "Planned elevation"), make("dd", {}, this.planned, this.band)),
      make("div", {}, make("dt", {}, "Roll"), make("dd", {}, this.roll, this.rollBand)));
    this.needle = make("div", { class: "needle" });
    this.allowed = make("div", { class: "allowed" });
    this.scale = make("div", { class: "band", hidden: true, "aria-hidden": "true" }, this.allowed, this.needle);
    this.button = make("button", { type: "button", id: "tilt-start", onclick: () => this.#start() }, "Read this device's tilt");
    this.level = make("button", { type: "button", id: "tilt-zero", hidden: true, onclick: () => this.#zero() }, "It is at the planned elevation now: take off the difference");
    this.clear = make("button", { type: "button", id: "tilt-clear", hidden: true, onclick: () => this.#clear() }, "Forget the difference");
    const ways = Object.entries(WAYS).map(([name, { label }]) =>
      make("label", { class: "tick" }, make("input", { type: "radio", name: "tilt-way", value: name, checked: name === this.way, onchange: () => this.#turn(name) }), label));
    byId("tilt").append(
      make("h3", {}, "Elevation by this device's tilt sensor"),
      make("p", {}, "Lay the phone along the lens axis and hold it still: its lens bump or its case must not rock it. The screen may turn as it likes. Read it twice, and trust it no further than a spirit level agrees."),
      make("fieldset", {}, make("legend", {}, "How the phone lies"), ways),
      make("div", { class: "row" }, this.button, this.level, this.clear),
      this.state, this.figures, this.scale, this.told);
    planner.addEventListener("planned", () => this.#showPlanned());
  }

  async #start() {
    if (this.#listening) return this.#stop("Not reading.");
    const sensor = /** @type {any} */ (globalThis.DeviceOrientationEvent);
    if (sensor === undefined) return say(this.state, "■ This browser has no access to a tilt sensor. Type what an inclinometer says, below.");
    if (!globalThis.isSecureContext) return say(this.state, "■ The tilt sensor is only given to pages that came over a secure connection. Type what an inclinometer says, below.");
    if (typeof sensor.requestPermission === "function") {
      let answer = "denied";
      try {
        answer = await sensor.requestPermission();
      } catch {
        // Refused without asking: the same as denied.
      }
      if (answer !== "granted") return say(this.state, "■ Permission to read the tilt sensor was not given. Allow motion and orientation for this page in the browser's settings, or type what an inclinometer says, below.");
    }
    this.#listening = true;
    this.#heard = false;
    [this.#steady, this.#steadyRoll] = [new Steadied(), new Steadied()];
    addEventListener("deviceorientation", this.#read);
    say(this.button, "Stop reading");
    say(this.state, "Waiting for the sensor.");
    setTimeout(() => {
      if (this.#listening && !this.#heard) this.#stop("■ This device has no tilt sensor, or its settings withhold it from this page. Type what an inclinometer says, below.");
    }, SILENCE_MS);
  }

  #stop(why) {
    this.#listening = false;
    removeEventListener("deviceorientation", this.#read);
    say(this.button, "Read this device's tilt");
    say(this.state, why);
    for (const part of [this.figures, this.scale, this.level, this.clear]) part.hidden = true;
    say(this.told, "");
    this.#verdict = "";
  }

  #read = (event) => {
    if (typeof event.beta !== "number" || typeof event.gamma !== "number") return;
    if (!this.#heard) {
      this.#heard = true;
      say(this.state, "Reading.");
      for (const part of [this.figures, this.scale, this.level]) part.hidden = false;
      this.#showPlanned();
    }
    const up = upInPhone(event.beta, event.gamma);
    const elevation = this.#steady.take(elevationDeg(up, this.way), event.timeStamp);
    this.#raw = elevation;
    const roll = rollDeg(up, this.way);
    this.#show(elevation - (this.zero[this.way] ?? 0), roll === null ? null : this.#steadyRoll.take(roll, event.timeStamp));
  };

  #show(elevation, roll) {
    say(this.value, degrees(elevation));
    const shot = this.planner.planned?.brief.shot;
    say(this.roll, roll === null ? "—" : degrees(roll));
    if (shot === undefined) return;
    say(this.rollBand, roll === null ? "not told looking straight down" : `${Math.abs(roll) <= shot.roll_tolerance_deg ? "within" : "outside"} ± ${degrees(shot.roll_tolerance_deg)}`);
    const [off, tolerance] = [elevation - shot.elevation_deg, shot.elevation_tolerance_deg];
    // The scale shows four tolerances to either side.
    const place = Math.min(Math.max(off / (4 * tolerance), -1), 1);
    this.needle.style.left = `${50 + 50 * place}%`;
    const within = Math.abs(off) <= tolerance;
    this.scale.dataset.within = String(within);
    const verdict = within ? "in" : off > 0 ? "high" : "low";
    if (verdict === this.#verdict) return;
    this.#verdict = verdict;
    say(this.told, {
      in: "– Within the tolerance.",
      high: "△ The lens looks down too steeply: outside the tolerance.",
      low: "△ The lens does not look down enough: outside the tolerance.",
    }[verdict]);
  }

  #showPlanned() {
    const shot = this.planner.planned?.brief.shot;
    if (shot === undefined) return;
    say(this.planned, degrees(shot.elevation_deg));
    const zero = this.zero[this.way] ?? 0;
    say(this.band, `± ${degrees(shot.elevation_tolerance_deg)}${zero === 0 ? "" : `, ${degrees(zero)} taken off`}`);
    this.clear.hidden = !this.#heard || !this.#listening || zero === 0;
    this.#verdict = "";
  }

  #turn(name) {
    this.way = name;
    [this.#steady, this.#steadyRoll] = [new Steadied(), new Steadied()];
    this.#keep();
  }

  #zero() {
    const shot = this.planner.planned?.brief.shot;
    if (this.#raw === null || shot === undefined) return;
    this.zero = { ...this.zero, [this.way]: this.#raw - shot.elevation_deg };
    this.#keep();
  }

  #clear() {
    this.zero = {};
    this.#keep();
    this.button.focus();
  }

  #keep() {
    keep({ tilt: { way: this.way, zero: this.zero } });
    this.#showPlanned();
  }
}
