import { createServer } from "node:http";
import { readFile } from "node:fs/promises";
import { extname, join } from "node:path";

/** Serves the files of a page's folder on a port of this machine. */
export async function serve(folder, at) {
  const types = { ".html": "text/html; charset=utf-8", ".js": "text/javascript" };
  const server = createServer(async (request, response) => {
    const name = new URL(request.url, "http://page").pathname.slice(1) || "index.html";
    try {
      const bytes = await readFile(join(folder, name));
      response.writeHead(200, { "content-type": types[extname(name)] ?? "application/octet-stream" }).end(bytes);
    } catch {
      response.writeHead(404).end();
    }
  });
  await new Promise((resolve, reject) => server.once("error", reject).listen(at, "127.0.0.1", resolve));
  return server;
}
