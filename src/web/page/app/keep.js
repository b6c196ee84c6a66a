// What stays on the device between visits: the shoot, where it was left, and how it is shown.

// Several copies of the page may be served from one host, each from its own folder.
const KEY = `tablerig ${new URL(".", location.href).pathname}`;

/** What was kept; an empty object where there is nothing, or where the browser keeps nothing. */
export function kept() {
  try {
    return JSON.parse(localStorage.getItem(KEY) ?? "{}") ?? {};
  } catch {
    return {};
  }
}

/** Keeps more; says whether the browser did. */
export function keep(more) {
  try {
    localStorage.setItem(KEY, JSON.stringify({ ...kept(), ...more }));
    return true;
  } catch {
    return false;
  }
}
