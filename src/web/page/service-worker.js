// Keeps one whole version of the page for use without a network. A version is cached complete or not at all, and
// answers only from its own cache; another version waits until the page asks for it or every tab of this one is closed.

const version = "VERSION";
const files = ["FILES"];
const own = `tablerig-page ${new URL("./", self.location.href).pathname} `;
const name = own + version;

self.addEventListener("install", (event) => {
  event.waitUntil(
    caches.open(name).then((cache) =>
      // What is not named by its content is fetched past the browser's own cache.
      cache.addAll(files.map((file) => (file.startsWith("v-") ? file : new Request(file, { cache: "reload" })))),
    ),
  );
});

self.addEventListener("activate", (event) => {
  event.waitUntil(
    caches.keys().then((names) => Promise.all(names.filter((each) => each.startsWith(own) && each !== name).map((each) => caches.delete(each)))),
  );
});

self.addEventListener("message", (event) => {
  if (event.data === "take over") self.skipWaiting();
});

self.addEventListener("fetch", (event) => {
  const { request } = event;
  if (request.method !== "GET" || new URL(request.url).origin !== self.location.origin) return;
  event.respondWith(answer(request));
});

async function answer(request) {
  const cache = await caches.open(name);
  // Whatever follows the page's own address, it is the same page.
  const base = new URL("./", self.location.href);
  const url = new URL(request.url);
  const isPage = request.mode === "navigate" && (url.pathname === base.pathname || url.pathname === `${base.pathname}index.html`);
  const kept = await cache.match(isPage ? base.href : request, { ignoreVary: true });
  return kept ?? fetch(request);
}
