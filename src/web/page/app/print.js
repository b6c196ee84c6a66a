// The printed sheet: the library's own HTML, put into a corner of the page that only the printer sees.

import { alarm } from "./announce.js";
import { byId } from "./dom.js";
import { drawingUnit } from "./units.js";
import { mistakeInWords } from "./words.js";

/** A page's style for a sheet inside a shadow tree: there the tree's host stands for root and body. */
const inHost = (css) => css.replace(/@page\s*\{[^}]*\}/g, "").replaceAll(":root", ":host").replace(/(^|[\s}])html\{/g, "$1:host{").replace(/(^|[\s}])body\{/g, "$1.body{");

export class SheetPrinter {
  constructor(desk, system) {
    this.desk = desk;
    this.system = system;
    byId("print-sheet").addEventListener("click", () => this.#print());
    addEventListener("afterprint", () => this.#done());
  }

  #print() {
    this.desk.commit();
    try {
      this.#fill(this.desk.rig.ask("sheet", { shoot: this.desk.text, unit: drawingUnit(this.system()) }).html);
    } catch (error) {
      if (error.mistakes === undefined) throw error;
      return alarm("The sheet cannot be made.", error.mistakes.map((mistake) => mistakeInWords(mistake)));
    }
    document.documentElement.classList.add("printing-sheet");
    globalThis.print();
  }

  #fill(html) {
    const host = byId("sheet");
    const root = host.shadowRoot ?? host.attachShadow({ mode: "open" });
    // The page takes no style but from its own files and by this interface.
    const css = /** @type {string[]} */ ([]);
    const plain = html.replace(/<style>(.*?)<\/style>/gs, (_, text) => {
      css.push(text);
      return "";
    });
    const parsed = new DOMParser().parseFromString(plain, "text/html");
    const sheet = new CSSStyleSheet();
    // The drawings all bring the same style: once is enough.
    sheet.replaceSync(inHost([...new Set(css)].join("\n")));
    root.adoptedStyleSheets = [sheet];
    const body = document.createElement("div");
    body.className = "body";
    body.append(...[...parsed.body.childNodes].map((node) => document.importNode(node, true)));
    root.replaceChildren(body);
    host.hidden = false;
  }

  #done() {
    document.documentElement.classList.remove("printing-sheet");
    const host = byId("sheet");
    host.hidden = true;
    host.shadowRoot?.replaceChildren();
  }
}
