// What is told to those who cannot see it: results politely, once they rest, and errors at once.

import { byId, make, say } from "./dom.js";

const REST_MS = 900;
let waiting = 0;

/** Tells a result, once nothing newer comes for a while. */
export function tell(text) {
  clearTimeout(waiting);
  waiting = setTimeout(() => say(byId("polite"), text), REST_MS);
}

/** Shows an error on top of the page and reads it out at once. A list of details may stand under it. */
export function alarm(text, details = []) {
  const dismiss = make("button", { type: "button", onclick: () => calm() }, "Dismiss");
  const list = details.length > 0 ? make("ul", {}, details.map((detail) => make("li", {}, detail))) : null;
  byId("alerts").replaceChildren(make("div", { class: "alert" }, make("p", {}, make("strong", {}, "■ "), text), list, dismiss));
}

/** Shows something good to know on top of the page. */
export function inform(text) {
  const dismiss = make("button", { type: "button", onclick: () => calm() }, "Dismiss");
  byId("alerts").replaceChildren(make("div", { class: "alert mild" }, make("p", {}, "○ ", text), dismiss));
}

/** Takes it away again. */
export function calm() {
  byId("alerts").replaceChildren();
}
