// While the form is what is looked at, the drawing stays in sight beside it, or small above it where there is one column.

import { byId, make, say } from "./dom.js";
import { LEVELS, counted, worst } from "./words.js";

const ONE_COLUMN = matchMedia("(max-width: 59.99rem)");

export class Follow {
  #seen = new Map();
  #frame = /** @type {any} */ (null);

  constructor(stages, planner) {
    this.stages = stages;
    this.planner = planner;
    this.note = make("p", { class: "follow-note", "aria-hidden": "true" });
    this.#watch("stages", "0px");
    this.#watch("plan", "0px");
    // The form is what is looked at once it has the upper half of the window.
    this.#watch("asked", "0px 0px -50% 0px");
    planner.addEventListener("planned", () => this.#tell());
    byId("view-switch").addEventListener("change", () => this.#decide());
    addEventListener("resize", () => this.#place());
  }

  #watch(id, rootMargin) {
    this.#seen.set(id, id !== "asked");
    new IntersectionObserver((entries) => {
      this.#seen.set(id, entries.some(({ isIntersecting }) => isIntersecting));
      this.#decide();
    }, { rootMargin }).observe(byId(id));
  }

  #decide() {
    const away = !this.#seen.get(ONE_COLUMN.matches ? "stages" : "plan");
    this.#show(away && this.#seen.get("asked") && !byId("larger").checked ? this.stages.figure(this.stages.visible()[0]).parentElement : null);
  }

  #show(frame) {
    if (frame === this.#frame) return;
    // What it leaves stays as high, so that nothing moves.
    byId("stages").style.minHeight = frame === null ? "" : `${byId("stages").offsetHeight}px`;
    this.#frame?.classList.remove("follows");
    this.#frame = frame;
    document.documentElement.classList.toggle("following", frame !== null);
    if (frame === null) return this.note.remove();
    this.#place();
    frame.classList.add("follows");
    frame.append(this.note);
    this.#tell();
  }

  #place() {
    if (this.#frame === null) return;
    const { left, width } = byId("plan").getBoundingClientRect();
    this.#frame.style.setProperty("--left", `${left}px`);
    this.#frame.style.setProperty("--width", `${width}px`);
  }

  #tell() {
    if (this.#frame === null || this.planner.planned === null) return;
    const { cautions } = this.planner.planned.plan;
    const level = worst(cautions);
    this.note.dataset.level = level;
    say(this.note, `${LEVELS[level].symbol} ${counted(cautions)}`);
  }
}
