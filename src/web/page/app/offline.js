// Keeps the page for use without a network, and says when another version is ready.

import { byId, make } from "./dom.js";

/** Begins to keep it; does nothing where the browser cannot. */
export async function keepForOffline() {
  if (!("serviceWorker" in navigator)) return;
  const hadOne = navigator.serviceWorker.controller !== null;
  let asked = false;
  navigator.serviceWorker.addEventListener("controllerchange", () => {
    // Only the tab that asked for the new version begins anew by itself.
    if (asked && hadOne) location.reload();
  });
  try {
    const registration = await navigator.serviceWorker.register("service-worker.js", { updateViaCache: "none" });
    const offer = (worker) => {
      if (worker === null || navigator.serviceWorker.controller === null) return;
      const take = make("button", { type: "button", onclick: () => {
        asked = true;
        worker.postMessage("take over");
      } }, "Take it now");
      byId("update").replaceChildren(make("div", { class: "alert mild" }, make("p", {}, "○ Another version of this page is ready. It is taken when all its tabs were closed."), take));
    };
    offer(registration.waiting);
    registration.addEventListener("updatefound", () => {
      const worker = registration.installing;
      worker?.addEventListener("statechange", () => {
        if (worker.state === "installed") offer(worker);
      });
    });
  } catch {
    // Without it the page works all the same, as long as there is a network.
  }
}
