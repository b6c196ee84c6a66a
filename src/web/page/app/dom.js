// Elements made and changed with as little work as possible.

/** An element with attributes, listeners (`onclick`), and children; a child that is null is left out. */
export function make(name, attributes = {}, ...children) {
  const element = document.createElement(name);
  for (const [key, value] of Object.entries(attributes)) {
    if (value === null || value === undefined || value === false) continue;
    if (key.startsWith("on")) element.addEventListener(key.slice(2), /** @type {EventListener} */ (value));
    else element.setAttribute(key, value === true ? "" : String(value));
  }
  element.append(...children.flat().filter((child) => child !== null && child !== undefined && child !== false));
  return element;
}

/** The element of the page with that identifier. */
export function byId(id) {
  const element = document.getElementById(id);
  if (element === null) throw new Error(`the page has no ${id}`);
  return /** @type {any} */ (element);
}

/** Sets a text only where it differs. */
export function say(element, text) {
  if (element.textContent !== text) element.textContent = text;
}

/** Shows or hides. */
export function show(element, shown) {
  if (element.hidden === shown) element.hidden = !shown;
}

/** Sets a figure with its units in smaller type, only where it differs. */
export function sayFigure(element, text) {
  if (element.textContent === text) return;
  const parts = text.split(/(?<=\d)( (?:cm|ft|in|mm))(?= |$)/);
  element.replaceChildren(...parts.filter((part) => part !== "").map((part, index) => (index % 2 === 1 ? make("small", {}, part) : part)));
}
