// The two handles on the side view: one turns the elevation, one moves the camera. By touch, mouse, pen and keyboard.

import { make } from "./dom.js";
import { asWritten, degrees, length } from "./units.js";

const LEAST_DEG = -60;
const MOST_DEG = 90;
/** Elevations are set to half a degree by dragging: finer than a hand holds still. */
const STEP_DEG = 0.5;
/** Pixels between the middles of the two handles at least. */
const APART = 46;

export class Handles {
  #drag = /** @type {any} */ (null);

  constructor(desk, planner, stages, system) {
    this.desk = desk;
    this.planner = planner;
    this.stages = stages;
    this.system = system;
    const slider = (name, label, min, max) =>
      make("div", { class: `handle ${name}`, id: `handle-${name}`, role: "slider", tabindex: "0", "aria-label": label, "aria-valuemin": min, "aria-valuemax": max });
    this.elevation = slider("elevation", "Elevation, on the drawing", LEAST_DEG, MOST_DEG);
    this.camera = slider("camera", "Camera: frame width by its distance", 1, 100000);
    stages.figure("side").append(this.elevation, this.camera);
    for (const [handle, kind] of [[this.elevation, "elevation"], [this.camera, "camera"]]) {
      handle.addEventListener("pointerdown", (event) => this.#begin(event, handle, kind));
      handle.addEventListener("pointermove", (event) => this.#move(event));
      handle.addEventListener("pointerup", () => this.#end());
      handle.addEventListener("pointercancel", () => this.#end());
      handle.addEventListener("lostpointercapture", () => this.#end());
    }
    this.elevation.addEventListener("keydown", (event) => this.#turnByKey(event));
    this.camera.addEventListener("keydown", (event) => this.#moveByKey(event));
    stages.placed = (planned) => this.place(planned);
  }

  /** Puts the handles where the plan has the camera. */
  place(planned) {
    if (planned === null) return;
    const { pose, lens, frame_width_mm: frame } = planned.plan;
    const { aim, sensor, right } = pose;
    const across = -(sensor.x_mm - aim.x_mm) * right.y + (sensor.y_mm - aim.y_mm) * right.x;
    const [from, to] = [this.stages.sidePlace(0, aim.z_mm), this.stages.sidePlace(across, sensor.z_mm)];
    if (from === null || to === null) return;
    this.aim = from;
    const shift = this.#drag === null ? { x: 0, y: 0 } : { x: this.#drag.aim.x - from.x, y: this.#drag.aim.y - from.y };
    this.stages.shift(shift.x, shift.y);
    const at = (handle, share) => {
      const [x, y] = [from.x + share * (to.x - from.x) + shift.x, from.y + share * (to.y - from.y) + shift.y];
      handle.style.transform = `translate(${x.toFixed(1)}px, ${y.toFixed(1)}px)`;
    };
    // Between the aim point and the camera, or beyond the camera where the two would be too near for a finger.
    const apart = Math.hypot(to.x - from.x, to.y - from.y);
    at(this.elevation, 0.45 * apart >= APART ? 0.55 : 1 + APART / Math.max(apart, 1));
    at(this.camera, 1);
    const angle = planned.brief.shot.elevation_deg;
    tellValue(this.elevation, angle, degrees(angle));
    const [width, distance] = [length(frame, this.system()), length(lens.sensor_distance_mm, this.system())];
    tellValue(this.camera, Math.round(frame), `frame width ${width}, sensor to aim point ${distance}`);
  }

  #begin(event, handle, kind) {
    if (event.button !== 0 || this.planner.planned === null || this.aim === undefined) return;
    const box = this.stages.figure("side").getBoundingClientRect();
    const aim = { ...this.aim };
    const from = { x: event.clientX - box.left - aim.x, y: event.clientY - box.top - aim.y };
    const { brief, plan } = this.planner.planned;
    this.#drag = {
      kind, aim, box,
      turn: brief.shot.elevation_deg - angleOf(from),
      radius: Math.max(Math.hypot(from.x, from.y), 8),
      distance: plan.lens.sensor_distance_mm,
      focused: plan.lens.magnification,
      last: "",
    };
    this.stages.held = true;
    handle.setPointerCapture(event.pointerId);
    handle.classList.add("dragged");
    handle.focus({ preventScroll: true });
    event.preventDefault();
  }

  #move(event) {
    const drag = this.#drag;
    if (drag === null) return;
    const to = { x: event.clientX - drag.box.left - drag.aim.x, y: event.clientY - drag.box.top - drag.aim.y };
    const turned = angleOf(to) + drag.turn;
    const angle = Math.min(Math.max(Math.round(turned / STEP_DEG) * STEP_DEG, LEAST_DEG), MOST_DEG);
    const edits = [this.#elevationEdit(angle)];
    if (drag.kind === "camera") {
      const distance = (drag.distance * Math.hypot(to.x, to.y)) / drag.radius;
      edits.push(...this.#distanceEdits(distance));
    }
    const key = JSON.stringify(edits);
    if (key === drag.last) return;
    drag.last = key;
    this.planner.propose({ edits, at: event.timeStamp, moving: true });
  }

  #end() {
    if (this.#drag === null) return;
    this.#drag = null;
    this.stages.held = false;
    for (const handle of [this.elevation, this.camera]) handle.classList.remove("dragged");
    this.place(this.planner.planned);
    this.planner.restSoon();
    // Once everything proposed was planned.
    requestAnimationFrame(() => this.desk.commit());
  }

  #turnByKey(event) {
    if (this.planner.planned === null) return;
    const angle = this.planner.planned.brief.shot.elevation_deg;
    const step = event.shiftKey ? 0.1 : 1;
    const to = {
      ArrowUp: angle + step, ArrowRight: angle + step, ArrowDown: angle - step, ArrowLeft: angle - step,
      PageUp: angle + 10, PageDown: angle - 10, Home: 0, End: MOST_DEG,
    }[event.key];
    if (to === undefined) return;
    event.preventDefault();
    const rounded = Math.round(Math.min(Math.max(to, LEAST_DEG), MOST_DEG) * 10) / 10;
    this.planner.propose({ edits: [this.#elevationEdit(rounded)], at: event.timeStamp, moving: true });
  }

  #moveByKey(event) {
    if (this.planner.planned === null) return;
    const frame = this.planner.planned.plan.frame_width_mm;
    const inch = this.system() === "feet" ? 25.4 : 10;
    const step = event.shiftKey ? inch / 10 : inch;
    const to = {
      ArrowUp: frame + step, ArrowRight: frame + step, ArrowDown: frame - step, ArrowLeft: frame - step,
      PageUp: frame + 10 * step, PageDown: frame - 10 * step,
    }[event.key];
    if (to === undefined) return;
    event.preventDefault();
    if (to < 1) return;
    this.planner.propose({ edits: frameEdits(this.desk, to, this.system()), at: event.timeStamp, moving: true });
  }

  #elevationEdit(angle) {
    return elevationEdit(this.desk, angle);
  }

  /** The frame width that a distance gives with this lens: the library's own inverse. */
  #distanceEdits(distance) {
    const { brief, uses, plan } = this.planner.planned;
    const lens = this.desk.shoot.lens?.[uses.lens];
    if (lens === undefined) return [];
    try {
      const asked = { lens, sensor_distance_mm: Math.max(distance, 1), used_width_mm: plan.used_area.width_mm };
      const { magnification } = this.desk.rig.ask("magnification_at", asked);
      return frameEdits(this.desk, plan.used_area.width_mm / magnification, this.system());
    } catch (error) {
      if (error.mistakes === undefined) throw error;
      // Nearer than this lens forms a picture at all: the frame stays.
      return frameEdits(this.desk, plan.frame_width_mm ?? brief.shot.framing.frame_width_mm, this.system());
    }
  }
}

/** The angle above the level of a place left of the aim point. */
function angleOf({ x, y }) {
  return (Math.atan2(-y, -x) * 180) / Math.PI;
}

function tellValue(handle, now, text) {
  handle.setAttribute("aria-valuenow", String(now));
  handle.setAttribute("aria-valuetext", text);
}

/** An elevation, written as the file has it. */
export function elevationEdit(desk, angle) {
  const written = typeof desk.shot.elevation_deg === "string" ? `${angle}°` : angle;
  return { path: ["shot", desk.index, "elevation_deg"], value: written };
}

/** A frame width in place of whatever said how much the frame takes in. */
export function frameEdits(desk, frame, system) {
  const at = (key) => ["shot", desk.index, key];
  const others = ["fill_width", "fill_height"].filter((key) => desk.shot[key] !== undefined);
  return [
    ...others.map((key) => ({ path: at(key), value: null })),
    { path: at("frame_width_mm"), value: asWritten(frame, system) },
  ];
}
