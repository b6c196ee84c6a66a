// What is out of sight need not follow every frame of a drag: it catches up when it is seen, or when all is at rest.

/** Calls `follow` at once while the element is in sight, and else when it comes into sight or is told to rest. */
export class InSight {
  #seen = true;
  #waiting = /** @type {(() => void) | null} */ (null);

  constructor(element) {
    if (globalThis.IntersectionObserver === undefined) return;
    new IntersectionObserver((entries) => {
      this.#seen = entries.some((entry) => entry.isIntersecting);
      if (this.#seen) this.rest();
    }, { rootMargin: "100px" }).observe(element);
  }

  follow(work, moving) {
    if (this.#seen || !moving) {
      this.#waiting = null;
      work();
    } else this.#waiting = work;
  }

  rest() {
    const work = this.#waiting;
    this.#waiting = null;
    work?.();
  }
}
