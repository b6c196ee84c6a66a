// The shoot file as text, to be changed by hand.

import { inform } from "./announce.js";
import { BrokenShoot } from "./desk.js";
import { byId, make } from "./dom.js";
import { mistakesWithPlaces } from "./files.js";

export class AsText {
  constructor(desk) {
    this.desk = desk;
    byId("as-text").addEventListener("toggle", () => this.#fill());
    for (const event of ["opened", "committed"]) desk.addEventListener(event, () => this.#fill());
    byId("apply-text").addEventListener("click", () => this.#take());
  }

  #fill() {
    if (!byId("as-text").open) return;
    this.desk.commit();
    const area = byId("file-text");
    if (area.value !== this.desk.text) area.value = this.desk.text;
    this.#refuse([]);
  }

  /** A text that could not be opened, to be mended or copied from here. */
  offer(text, mistakes) {
    byId("as-text").open = true;
    // After the panel has filled itself.
    setTimeout(() => {
      byId("file-text").value = text;
      this.#refuse(mistakesWithPlaces(mistakes));
    });
  }

  #refuse(mistakes) {
    byId("file-text-error").replaceChildren(...mistakes.map((text) => make("p", {}, `■ ${text}`)));
    if (mistakes.length > 0) byId("file-text").setAttribute("aria-invalid", "true");
    else byId("file-text").removeAttribute("aria-invalid");
  }

  #take() {
    const text = byId("file-text").value;
    try {
      if (text !== this.desk.text) this.desk.retext(text);
      this.#refuse([]);
      inform("The text was taken.");
    } catch (error) {
      if (!(error instanceof BrokenShoot)) return this.#refuse([error.message]);
      const [{ line, column }] = error.mistakes;
      this.#refuse([...mistakesWithPlaces(error.mistakes), "The shoot before it stays as it was."]);
      this.#goTo(line, column);
    }
  }

  /** Puts the caret where the first mistake is. */
  #goTo(line, column) {
    if (line === null) return;
    const area = byId("file-text");
    const before = area.value.split("\n").slice(0, line - 1).join("\n");
    const at = before.length + (line > 1 ? 1 : 0) + (column ?? 1) - 1;
    area.focus();
    area.setSelectionRange(at, at);
  }
}
