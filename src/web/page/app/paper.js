// A drawing in the page, changed in place: from one plan to the next most of its lines stay as they are.
//
// The library writes one element a line, so the lines of two drawings of the same build can be held against each
// other, and only what differs is touched. That takes half the time of putting the whole drawing in anew.

const ATTRIBUTE = /([\w-]+)="([^"]*)"/g;
const ELEMENT = /^<([A-Za-z]+)/;

const ENTITIES = { amp: "&", lt: "<", gt: ">", quot: '"', apos: "'" };
const plain = (text) => (text.includes("&") ? text.replace(/&(?:#(\d+)|(\w+));/g, (all, code, name) => (code ? String.fromCodePoint(Number(code)) : (ENTITIES[name] ?? all))) : text);

export class Paper {
  #lines = /** @type {string[]} */ ([]);
  #elements = /** @type {(Element | null)[]} */ ([]);

  constructor(element) {
    this.element = element;
  }

  /** Shows a drawing, or a box out of it. */
  show(svg, { x, y, width, height }) {
    // The page's own style says the same as the drawing's.
    const text = svg.replace(/<style>.*?<\/style>\n?/s, "");
    const lines = text.split("\n");
    if (!this.#patch(lines)) this.#replace(text, lines);
    this.#lines = lines;
    const box = `${x.toFixed(2)} ${y.toFixed(2)} ${width.toFixed(2)} ${height.toFixed(2)}`;
    const root = this.element.firstElementChild;
    if (root !== null && root.getAttribute("viewBox") !== box) root.setAttribute("viewBox", box);
  }

  #replace(text, lines) {
    this.element.innerHTML = text;
    const all = this.element.getElementsByTagName("*");
    let next = 0;
    this.#elements = lines.map((line) => (ELEMENT.test(line) ? (all[next++] ?? null) : null));
    // Where a line holds more than its element, nothing is known of its parts: it is always put in anew.
    if (next !== all.length) this.#elements = [];
  }

  /** Changes what differs; says whether the two are of the same build. */
  #patch(lines) {
    const before = this.#lines;
    if (before.length !== lines.length || this.#elements.length !== lines.length) return false;
    const differing = [];
    for (let index = 0; index < lines.length; index += 1) {
      if (lines[index] === before[index]) continue;
      if (this.#elements[index] === null || ELEMENT.exec(lines[index])?.[1] !== ELEMENT.exec(before[index])?.[1]) return false;
      differing.push(index);
    }
    for (const index of differing) change(/** @type {Element} */ (this.#elements[index]), before[index], lines[index]);
    return true;
  }
}

/** Where the start tag of a line ends. No attribute of a drawing holds the sign itself. */
const tagEnd = (line) => line.indexOf(">");

function change(element, before, after) {
  const [end, endBefore] = [tagEnd(after), tagEnd(before)];
  const [tag, tagBefore] = [after.slice(0, end), before.slice(0, endBefore)];
  if (tag !== tagBefore) {
    const had = new Map();
    for (const [, name, value] of tagBefore.matchAll(ATTRIBUTE)) had.set(name, value);
    for (const [, name, value] of tag.matchAll(ATTRIBUTE)) {
      if (had.get(name) !== value) element.setAttribute(name, plain(value));
      had.delete(name);
    }
    for (const name of had.keys()) element.removeAttribute(name);
  }
  const [inside, insideBefore] = [after.slice(end + 1), before.slice(endBefore + 1)];
  if (inside !== insideBefore) element.textContent = plain(inside.slice(0, Math.max(inside.lastIndexOf("</"), 0)));
}
