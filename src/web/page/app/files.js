// Opening and saving: a shoot file in, by picker or dropped; the same file out, where the browser can write it in place.

import { alarm, calm, inform } from "./announce.js";
import { BrokenShoot } from "./desk.js";
import { byId } from "./dom.js";
import { mistakeInWords } from "./words.js";

const MOST_BYTES = 5_000_000;
const TYPES = [{ description: "Shoot file", accept: { "application/toml": [".toml"], "application/json": [".json"] } }];

/** No more mistakes than are read at once. */
const MOST_TOLD = 12;

/** What is wrong with a text, each with its line and column. */
export function mistakesWithPlaces(mistakes) {
  const more = mistakes.length - MOST_TOLD;
  const told = mistakes.slice(0, MOST_TOLD).map((mistake) => {
    const { line, column, path } = mistake;
    const where = line !== null ? `Line ${line}, column ${column}: ` : path.length > 0 ? `${path.join(".")}: ` : "";
    return where + mistakeInWords(mistake, undefined, true);
  });
  return more > 0 ? [...told, `And ${more} more.`] : told;
}

export class Files {
  constructor(desk) {
    this.desk = desk;
    byId("open-file").addEventListener("click", () => this.#pick());
    byId("save-file").addEventListener("click", () => this.save());
    byId("file-input").addEventListener("change", (event) => {
      const [file] = event.target.files;
      if (file !== undefined) this.#take(file, null);
      event.target.value = "";
    });
    byId("start-anew").addEventListener("click", () => this.anew());
    addEventListener("dragover", (event) => {
      if (event.dataTransfer?.types.includes("Files")) event.preventDefault();
    });
    addEventListener("drop", (event) => this.#dropped(event));
  }

  /** Opens the invented shoot. */
  anew() {
    const { desk } = this;
    const before = desk.text;
    desk.open(desk.rig.ask("demo").text, { demo: true });
    calm();
    if (before !== "" && before !== desk.text) inform("The invented shoot is open. Undo brings back what was open before.");
  }

  async #pick() {
    if (globalThis.showOpenFilePicker === undefined) return byId("file-input").click();
    try {
      const [handle] = await globalThis.showOpenFilePicker({ types: TYPES });
      await this.#take(await handle.getFile(), handle);
    } catch (error) {
      if (error.name !== "AbortError") byId("file-input").click();
    }
  }

  async #dropped(event) {
    const [item] = event.dataTransfer?.items ?? [];
    if (item?.kind !== "file") return;
    event.preventDefault();
    const file = item.getAsFile();
    const handle = await item.getAsFileSystemHandle?.().catch(() => null);
    if (file !== null) await this.#take(file, handle ?? null);
  }

  async #take(file, handle) {
    if (file.size > MOST_BYTES) return alarm(`${file.name} is too large for a shoot file. The shoot before it stays open.`);
    const text = await file.text();
    try {
      this.desk.open(text, { name: file.name, handle });
      calm();
    } catch (error) {
      if (error instanceof BrokenShoot) {
        alarm(`${file.name} cannot be opened. The shoot before it stays open.`, mistakesWithPlaces(error.mistakes));
      } else alarm(`${file.name} cannot be opened: ${error.message}. The shoot before it stays open.`);
    }
  }

  /** Writes the text in place, asks where, or hands it over as a download. */
  async save() {
    this.desk.commit();
    const { text, name, handle } = this.desk;
    try {
      if (globalThis.showSaveFilePicker !== undefined) {
        const target = handle ?? (await globalThis.showSaveFilePicker({ suggestedName: name, types: TYPES }));
        const writable = await target.createWritable();
        await writable.write(text);
        await writable.close();
        this.desk.markSaved(target.name ?? name, target);
        return inform(`Saved as ${target.name ?? name}.`);
      }
    } catch (error) {
      if (error.name === "AbortError") return;
      // A picker that is not allowed here: the download always is.
    }
    const link = document.createElement("a");
    link.href = URL.createObjectURL(new Blob([text], { type: "text/plain" }));
    link.download = name;
    link.click();
    setTimeout(() => URL.revokeObjectURL(link.href), 10_000);
    this.desk.markSaved(name, handle);
    inform(`${name} was handed over as a download.`);
  }
}
