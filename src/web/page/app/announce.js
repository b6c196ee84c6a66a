// What is told to those who cannot see it: results politely, once they rest, and errors at once.

import { byId, make, say } from "./dom.js";

const REST_MS = 900;
/** How long a message stays that nothing depends on. */
const MILD_MS = 10_000;
let waiting = 0;
let fading = 0;

/** Tells a result, once nothing newer comes for a while. */
export function tell(text) {
  clearTimeout(waiting);
  waiting = setTimeout(() => say(byId("polite"), text), REST_MS);
}

function shown(kind, symbol, text, details = []) {
  const dismiss = make("button", { type: "button", onclick: () => calm() }, "Dismiss");
  const list = details.length > 0 ? make("ul", {}, details.map((detail) => make("li", {}, detail))) : null;
  return make("div", { class: `alert ${kind}` }, make("p", {}, `${symbol} ${text}`), list, dismiss);
}

/** Shows an error on top of the page and reads it out at once. A list of details may stand under it. */
export function alarm(text, details = []) {
  calm();
  byId("alerts").append(shown("", "■", text, details));
}

/** Shows something good to know on top of the page, for a while. */
export function inform(text) {
  calm();
  byId("informs").append(shown("mild", "○", text));
  fading = setTimeout(calm, MILD_MS);
}

/** Takes what is shown away again. */
export function calm() {
  clearTimeout(fading);
  byId("alerts").replaceChildren();
  byId("informs").replaceChildren();
}
