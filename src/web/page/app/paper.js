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

  /** Shows a drawing, or a box out of it; without its lettering if it is to be bare. */
  show(svg, { x, y, width, height }, bare) {
    // The page's own style says the same as the drawing's.
    const all = svg.replace(/<style>.*?<\/style>\n?/s, "").split("\n");
    const lines = bare ? withoutLettering(all) : all;
    if (!this.#patch(lines)) this.#replace(lines.join("\n"), lines);
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

  /** Changes what differs; says whether the two are of one build, but for a run of single elements somewhere. */
  #patch(lines) {
    const [before, elements] = [this.#lines, this.#elements];
    if (elements.length === 0 || elements.length !== before.length) return false;
    const least = Math.min(before.length, lines.length);
    let [start, end] = [0, 0];
    while (start < least && alike(before[start], lines[start])) start += 1;
    while (end < least - start && alike(before[before.length - 1 - end], lines[lines.length - 1 - end])) end += 1;
    const [old, fresh] = [before.slice(start, before.length - end), lines.slice(start, lines.length - end)];
    if (![...old, ...fresh].every(isLeaf) || !this.#exchange(start, old.length, fresh)) return false;
    const moved = lines.length - before.length;
    for (let index = 0; index < lines.length; index += 1) {
      if (index === start) index += fresh.length;
      const was = index < start ? index : index - moved;
      if (index < lines.length && lines[index] !== before[was]) change(/** @type {Element} */ (this.#elements[index]), before[was], lines[index]);
    }
    return true;
  }

  /** Puts single elements in place of others: the strokes of a hatching are not always as many. */
  #exchange(start, count, fresh) {
    if (count === 0 && fresh.length === 0) return true;
    const previous = this.#lines[start - 1];
    const anchor = this.#elements[start - 1];
    if (!anchor || previous === undefined) return false;
    for (const element of this.#elements.slice(start, start + count)) element?.remove();
    const parsed = document.createElement("template");
    parsed.innerHTML = `<svg>${fresh.join("")}</svg>`;
    const made = [...(parsed.content.firstElementChild?.children ?? [])];
    if (isLeaf(previous)) anchor.after(...made);
    else anchor.prepend(...made);
    this.#elements.splice(start, count, ...made);
    return made.length === fresh.length;
  }
}

/** The name of a line's element; nothing for lines that end one. */
const nameOf = (line) => ELEMENT.exec(line)?.[1];
/** Whether one line can become the other by changing its element. */
const alike = (one, other) => one === other || (nameOf(one) !== undefined && nameOf(one) === nameOf(other) && isLeaf(one) === isLeaf(other));
/** Whether a line holds a whole element. */
const isLeaf = (line) => line.startsWith("<") && !line.startsWith("</") && (line.endsWith("/>") || /<\/\w+>$/.test(line));

/** A drawing's lines without what stands beside the areas that are to scale: heading, labels, rows of measures, notes. */
function withoutLettering(lines) {
  let depth = 0;
  let skipped = false;
  return lines.filter((line) => {
    if (line.startsWith("</")) depth -= 1;
    else if (depth === 1) skipped = line.startsWith("<text") || (line.startsWith("<g ") && !line.startsWith("<g data-plane"));
    const kept = !(skipped && depth >= 1);
    if (line.startsWith("<") && !line.startsWith("</") && !isLeaf(line)) depth += 1;
    return kept;
  });
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
