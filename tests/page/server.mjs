// A static server for the page's folder under a path: it hands out files, and notes what it was asked for.

import { createReadStream, existsSync, statSync } from "node:fs";
import { createServer } from "node:http";
import { extname, join, normalize } from "node:path";

const TYPES = {
  ".css": "text/css", ".html": "text/html; charset=utf-8", ".js": "text/javascript", ".json": "application/json",
  ".png": "image/png", ".svg": "image/svg+xml", ".wasm": "application/wasm",
};

/** Serves `folder` under `prefix` ("/" or "/a/path/") on a free port; `folder` may be exchanged while it runs. */
export async function serve(folder, prefix = "/") {
  const asked = [];
  const served = { folder, prefix, asked, wasmType: "application/wasm" };
  const server = createServer((request, response) => {
    const { pathname, search } = new URL(request.url, "http://any");
    const inside = pathname.startsWith(prefix) ? normalize(decodeURIComponent(pathname.slice(prefix.length))) : "..";
    const name = inside === "." || inside === "" ? "index.html" : inside;
    const path = join(served.folder, name);
    const found = !name.startsWith("..") && existsSync(path) && statSync(path).isFile();
    asked.push({ method: request.method, pathname, search, found, body: Number(request.headers["content-length"] ?? 0) });
    if (!found || !["GET", "HEAD"].includes(request.method)) {
      response.writeHead(found ? 405 : 404).end();
      return;
    }
    const type = extname(path) === ".wasm" ? served.wasmType : (TYPES[extname(path)] ?? "application/octet-stream");
    response.writeHead(200, { "content-type": type, "content-length": statSync(path).size });
    if (request.method === "HEAD") response.end();
    else createReadStream(path).pipe(response);
  });
  await new Promise((resolve) => server.listen(0, "127.0.0.1", resolve));
  served.port = server.address().port;
  served.origin = `http://127.0.0.1:${served.port}`;
  served.url = served.origin + prefix;
  served.close = () => {
    server.closeAllConnections();
    return new Promise((resolve) => server.close(resolve));
  };
  return served;
}
