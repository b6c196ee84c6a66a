// The drawings' places on the page: how large each is, what stands in it, and where the room's millimetres lie there.

import { byId, make } from "./dom.js";
import { Paper } from "./paper.js";

const VIEWS = ["side", "picture", "above"];
/** CSS pixels that a unit of a drawing should take at least: its small lettering is eleven units high. */
const PIXELS_PER_UNIT = 1;
const [LEAST_WIDTH, MOST_WIDTH] = [480, 900];

/** Where the room's places lie in a drawing from the side. */
function scaleOf(svg) {
  const plane = /data-plane="bearing" data-mm-per-unit="([^"]+)" data-zero-x="([^"]+)" data-zero-y="([^"]+)"/.exec(svg);
  const box = /viewBox="0 0 ([\d.]+) ([\d.]+)"/.exec(svg);
  if (plane === null || box === null) return null;
  const [mmPerUnit, zeroX, zeroY] = plane.slice(1).map(Number);
  const [width, height] = box.slice(1).map(Number);
  return { mmPerUnit, zeroX, zeroY, width, height };
}

export class Stages {
  #stages = new Map();
  #stale = new Set();

  /** `resized` is called when a drawing has another size to be drawn for. */
  constructor(resized) {
    this.view = "side";
    /** While something is dragged the drawing does not move away from under it. */
    this.held = false;
    const observer = new ResizeObserver((entries) => {
      let changed = false;
      for (const { target, contentRect } of entries) {
        const stage = [...this.#stages.values()].find(({ figure }) => figure === target);
        if (stage === undefined || contentRect.width === 0) continue;
        changed ||= Math.abs(stage.width - contentRect.width) > 1 || Math.abs(stage.height - contentRect.height) > 1;
        stage.width = contentRect.width;
        stage.height = contentRect.height;
      }
      if (changed) resized();
    });
    for (const view of VIEWS) {
      const paper = make("div", { class: "paper" });
      const figure = make("div", { class: "stage", "data-view": view }, paper);
      const frame = make("div", { class: "stage-frame", role: "group", "aria-label": `Drawing: ${view}` }, figure);
      this.#stages.set(view, { figure, frame, paper, drawing: new Paper(paper), width: 0, height: 0, scale: null, planned: null });
      byId("stages").append(frame);
      observer.observe(figure);
    }
    this.choose(this.view);
  }

  /** The figure of a view. */
  figure(view) {
    return this.#stages.get(view).figure;
  }

  /** Shows one view, or all. */
  choose(view) {
    this.view = view;
    byId("stages").dataset.view = view;
    for (const [name, { frame }] of this.#stages) frame.hidden = view !== "all" && view !== name;
    for (const name of this.visible()) this.#stale.add(name);
  }

  /** Larger than the page has room, to be moved about in. */
  enlarge(larger) {
    for (const { frame } of this.#stages.values()) {
      frame.classList.toggle("larger", larger);
      if (larger) frame.setAttribute("tabindex", "0");
      else frame.removeAttribute("tabindex");
    }
  }

  visible() {
    return this.view === "all" ? VIEWS : [this.view];
  }

  /** What is drawn while something moves. */
  first() {
    return [this.view === "all" ? "side" : this.view];
  }

  stale() {
    return this.visible().filter((view) => this.#stale.has(view));
  }

  /** The views in groups of one size, as the library is asked for them. */
  bySize(views) {
    const groups = new Map();
    for (const view of views) {
      const { width, height } = this.#stages.get(view);
      const size = drawnSize(width, height);
      const key = `${size.width} ${size.height}`;
      if (!groups.has(key)) groups.set(key, { ...size, views: [] });
      groups.get(key).views.push(view);
    }
    return [...groups.values()];
  }

  /** Puts drawings in place; those of other views are out of date from then on. */
  put(drawings, planned) {
    for (const view of VIEWS) {
      const svg = drawings[view];
      const stage = this.#stages.get(view);
      if (typeof svg !== "string") {
        if (stage.planned !== planned) this.#stale.add(view);
        continue;
      }
      this.#stale.delete(view);
      stage.planned = planned;
      if (view === "side") stage.scale = scaleOf(svg);
      stage.drawing.show(svg);
    }
    this.placed?.(planned);
  }

  /** Pixels of a place of the side view, from its figure's corner; across from the aim point, and up from the floor. */
  sidePlace(across, up) {
    const { scale, width, height } = this.#stages.get("side");
    if (scale === null || width === 0) return null;
    const pixels = Math.min(width / scale.width, height / scale.height);
    return {
      x: (width - scale.width * pixels) / 2 + (scale.zeroX + across / scale.mmPerUnit) * pixels,
      y: (height - scale.height * pixels) / 2 + (scale.zeroY - up / scale.mmPerUnit) * pixels,
    };
  }

  /** Moves the side view's paper, in pixels. */
  shift(x, y) {
    const { paper } = this.#stages.get("side");
    paper.style.transform = x === 0 && y === 0 ? "" : `translate(${x.toFixed(1)}px, ${y.toFixed(1)}px)`;
  }
}

function drawnSize(width, height) {
  if (width === 0) return { width: 720, height: 480 };
  const units = Math.round(Math.min(Math.max(width / PIXELS_PER_UNIT, LEAST_WIDTH), MOST_WIDTH));
  return { width: units, height: Math.round(Math.min(Math.max((units * height) / width, 240), 4000)) };
}
