// A drawing in the page, changed in place: from one plan to the next most of its lines stay as they are.
//
// The library writes one element a line, so the lines of two drawings of the same build can be held against each
// other, and only what differs is touched. That takes half the time of putting the whole drawing in anew.

const ENTITIES = { amp: "&", lt: "<", gt: ">", quot: '"', apos: "'" };
const plain = (text) => (text.includes("&") ? text.replace(/&(?:#(\d+)|(\w+));/g, (all, code, name) => (code ? String.fromCodePoint(Number(code)) : (ENTITIES[name] ?? all))) : text);

/** What a line holds: a whole element ("text"), the beginning of one ("<g"), the end of one ("</"), or nothing. */
function kindOf(line) {
  if (line.charCodeAt(0) !== 60) return "";
  if (line.charCodeAt(1) === 47) return "</";
  let end = 1;
  while (end < line.length && line.charCodeAt(end) > 32 && line.charCodeAt(end) !== 62 && line.charCodeAt(end) !== 47) end += 1;
  const name = line.slice(1, end);
  return line.endsWith("/>") || line.endsWith(`</${name}>`) ? name : `<${name}`;
}

const isLeaf = (kind) => kind !== "" && kind.charCodeAt(0) !== 60;
const hasElement = (kind) => kind !== "" && kind !== "</";

export class Paper {
  #lines = /** @type {string[]} */ ([]);
  #kinds = /** @type {string[]} */ ([]);
  #elements = /** @type {(Element | null)[]} */ ([]);

  constructor(element) {
    this.element = element;
  }

  /** Shows a drawing, or a box out of it; without its lettering if it is to be bare. */
  show(svg, { x, y, width, height }, bare) {
    // The page's own style says the same as the drawing's.
    const from = svg.indexOf("<style>");
    const all = (from < 0 ? svg : svg.slice(0, from) + svg.slice(svg.indexOf("\n", from) + 1)).split("\n");
    const [lines, kinds] = bare ? withoutLettering(all) : [all, all.map(kindOf)];
    if (!this.#patch(lines, kinds)) this.#replace(lines, kinds);
    this.#lines = lines;
    this.#kinds = kinds;
    const box = `${x.toFixed(2)} ${y.toFixed(2)} ${width.toFixed(2)} ${height.toFixed(2)}`;
    const root = this.element.firstElementChild;
    if (root !== null && root.getAttribute("viewBox") !== box) root.setAttribute("viewBox", box);
  }

  #replace(lines, kinds) {
    this.element.innerHTML = lines.join("\n");
    const all = this.element.getElementsByTagName("*");
    let next = 0;
    this.#elements = kinds.map((kind) => (hasElement(kind) ? (all[next++] ?? null) : null));
    // Where a line holds more than its element, nothing is known of its parts: it is always put in anew.
    if (next !== all.length) this.#elements = [];
  }

  /** Changes what differs; says whether the two are of one build, but for a run of whole elements somewhere. */
  #patch(lines, kinds) {
    const [before, known] = [this.#lines, this.#kinds];
    if (this.#elements.length === 0 || this.#elements.length !== before.length) return false;
    const least = Math.min(before.length, lines.length);
    let [start, end] = [0, 0];
    while (start < least && known[start] === kinds[start]) start += 1;
    while (end < least - start && known[known.length - 1 - end] === kinds[kinds.length - 1 - end]) end += 1;
    const between = [...known.slice(start, known.length - end), ...kinds.slice(start, kinds.length - end)];
    const fresh = lines.slice(start, lines.length - end);
    if (!between.every(isLeaf) || !this.#exchange(start, between.length - fresh.length, fresh)) return false;
    const moved = lines.length - before.length;
    for (let index = 0; index < lines.length; index += 1) {
      if (index === start) index += fresh.length;
      const was = index < start ? index : index - moved;
      const [line, old, element] = [lines[index], before[was], this.#elements[index]];
      if (line !== old && line !== undefined && old !== undefined && element) change(element, old, line);
    }
    return true;
  }

  /** Puts whole elements in place of others: the strokes of a hatching are not always as many. */
  #exchange(start, count, fresh) {
    if (count === 0 && fresh.length === 0) return true;
    const anchor = this.#elements[start - 1];
    if (!anchor) return false;
    for (const element of this.#elements.slice(start, start + count)) element?.remove();
    const parsed = document.createElement("template");
    parsed.innerHTML = `<svg>${fresh.join("")}</svg>`;
    const made = [...(parsed.content.firstElementChild?.children ?? [])];
    if (isLeaf(this.#kinds[start - 1])) anchor.after(...made);
    else anchor.prepend(...made);
    this.#elements.splice(start, count, ...made);
    return made.length === fresh.length;
  }
}

/** A drawing's lines without what stands beside the areas that are to scale: heading, labels, rows of measures, notes. */
function withoutLettering(all) {
  const [lines, kinds] = [/** @type {string[]} */ ([]), /** @type {string[]} */ ([])];
  let depth = 0;
  let skipped = false;
  for (const line of all) {
    const kind = kindOf(line);
    if (kind === "</") depth -= 1;
    else if (depth === 1) skipped = kind === "text" || (kind === "<g" && !line.startsWith("<g data-plane"));
    if (!(skipped && depth >= 1)) {
      lines.push(line);
      kinds.push(kind);
    }
    if (hasElement(kind) && !isLeaf(kind)) depth += 1;
  }
  return [lines, kinds];
}

/** Changes an element from what one line says to what another says. No attribute of a drawing holds a `>`. */
function change(element, before, after) {
  const [end, endBefore] = [after.indexOf(">"), before.indexOf(">")];
  const [inside, insideBefore] = [after.slice(end + 1), before.slice(endBefore + 1)];
  if (inside !== insideBefore) element.textContent = plain(inside.slice(0, Math.max(inside.lastIndexOf("</"), 0)));
  // Names stand at even places, values at odd ones.
  const [parts, partsBefore] = [after.slice(0, end).split('"'), before.slice(0, endBefore).split('"')];
  const names = (all) => all.filter((_, index) => index % 2 === 0 && index < all.length - 1).map((name) => name.slice(name.lastIndexOf(" ") + 1, -1));
  const inOrder = parts.length === partsBefore.length && parts.every((part, index) => index % 2 === 1 || part === partsBefore[index]);
  if (!inOrder) for (const name of names(partsBefore)) if (!names(parts).includes(name)) element.removeAttribute(name);
  for (let index = 1; index < parts.length; index += 2) {
    if (inOrder && parts[index] === partsBefore[index]) continue;
    const name = parts[index - 1];
    element.setAttribute(name.slice(name.lastIndexOf(" ") + 1, -1), plain(parts[index]));
  }
}
