// The drawings' places on the page: how large each is, what stands in it, and where the room's millimetres lie there.

import { byId, make } from "./dom.js";
import { Paper } from "./paper.js";

const VIEWS = ["side", "picture", "above"];
/** CSS pixels that a unit of a drawing takes: with its lettering, eleven units high, or without it. */
const [LETTERED, BARE] = [1, 0.9];
/** What lettering takes of a drawing's width and height, about. */
const [BESIDE, BELOW] = [300, 150];
const [LEAST_WIDTH, MOST_WIDTH] = [480, 900];
/** Stages narrower than this begin without lettering: the same measures stand large beside the drawing. */
const NARROW = 560;

/** Where the room's places lie in a drawing from the side. */
function scaleOf(svg) {
  const plane = /data-plane="bearing" data-mm-per-unit="([^"]+)" data-zero-x="([^"]+)" data-zero-y="([^"]+)"/.exec(svg);
  if (plane === null) return null;
  const [mmPerUnit, zeroX, zeroY] = plane.slice(1).map(Number);
  return { mmPerUnit, zeroX, zeroY };
}

/** What of a drawing is shown: all of it, or only the areas that are to scale. */
function boxOf(svg, bare) {
  const [, width, height] = /viewBox="0 0 ([\d.]+) ([\d.]+)"/.exec(svg) ?? ["", "720", "480"];
  const areas = [...svg.matchAll(/<clipPath id="[^"]*-area-\d+">\s*<rect x="([^"]+)" y="([^"]+)" width="([^"]+)" height="([^"]+)"/g)].map((area) => area.slice(1).map(Number));
  if (!bare || areas.length === 0) return { x: 0, y: 0, width: Number(width), height: Number(height) };
  const [x, y] = [Math.min(...areas.map((area) => area[0])), Math.min(...areas.map((area) => area[1]))];
  const [right, bottom] = [Math.max(...areas.map((area) => area[0] + area[2])), Math.max(...areas.map((area) => area[1] + area[3]))];
  return { x, y, width: right - x, height: bottom - y };
}

export class Stages {
  #stages = new Map();
  #stale = new Set();

  /** `resized` is called when a drawing has another size to be drawn for. */
  constructor(resized) {
    this.view = "side";
    /** While something is dragged the drawing does not move away from under it. */
    this.held = false;
    /** Whether lettering is drawn; null: where there is room. */
    this.lettered = /** @type {boolean | null} */ (null);
    /** Called when something was put in its place. */
    this.placed = (/** @type {any} */ _planned) => {};
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
      this.#stages.set(view, { figure, frame, paper, drawing: new Paper(paper), width: 0, height: 0, scale: null, box: null, planned: null });
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
      const stage = this.#stages.get(view);
      const size = drawnSize(stage.width, stage.height, this.#isBare(stage));
      const key = `${size.width} ${size.height}`;
      if (!groups.has(key)) groups.set(key, { ...size, views: [] });
      groups.get(key).views.push(view);
    }
    return [...groups.values()];
  }

  /** Whether the drawings that are looked at have no lettering. */
  get bare() {
    return this.#isBare(this.#stages.get(this.visible()[0]));
  }

  #isBare(stage) {
    return !(this.lettered ?? (stage.width === 0 || stage.width >= NARROW));
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
      const bare = this.#isBare(stage);
      stage.box = boxOf(svg, bare);
      stage.drawing.show(svg, stage.box, bare);
    }
    this.placed(planned);
  }

  /** Pixels of a place of the side view, from its figure's corner; across from the aim point, and up from the floor. */
  sidePlace(across, up) {
    const { scale, box, width, height } = this.#stages.get("side");
    if (scale === null || width === 0) return null;
    const pixels = Math.min(width / box.width, height / box.height);
    return {
      x: (width - box.width * pixels) / 2 + (scale.zeroX - box.x + across / scale.mmPerUnit) * pixels,
      y: (height - box.height * pixels) / 2 + (scale.zeroY - box.y - up / scale.mmPerUnit) * pixels,
    };
  }

  /** Moves the side view's paper, in pixels. */
  shift(x, y) {
    const { paper } = this.#stages.get("side");
    paper.style.transform = x === 0 && y === 0 ? "" : `translate(${x.toFixed(1)}px, ${y.toFixed(1)}px)`;
  }
}

function drawnSize(width, height, bare) {
  if (width === 0) return { width: 720, height: 480 };
  const within = (value, least, most) => Math.round(Math.min(Math.max(value, least), most));
  if (bare) return { width: within(width / BARE + BESIDE, LEAST_WIDTH, MOST_WIDTH), height: within(height / BARE + BELOW, 240, 4000) };
  const units = within(width / LETTERED, LEAST_WIDTH, MOST_WIDTH);
  return { width: units, height: within((units * height) / width, 240, 4000) };
}
