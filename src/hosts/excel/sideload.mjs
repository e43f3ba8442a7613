// `npm run sideload`: serves dist/excel over https on this machine and opens desktop Excel with the add-in in it.
// Ctrl-C takes the add-in out again.

import { spawn } from "node:child_process";
import { once } from "node:events";
import { readFile } from "node:fs/promises";
import { createServer } from "node:https";
import { createRequire } from "node:module";
import { extname } from "node:path";
import { fileURLToPath } from "node:url";

const require = createRequire(import.meta.url);
const built = new URL("../../../dist/excel/", import.meta.url);
const manifest = fileURLToPath(new URL("manifest.xml", built));
const port = 3000;

const contentTypes = {
  ".html": "text/html; charset=utf-8",
  ".css": "text/css; charset=utf-8",
  ".js": "text/javascript; charset=utf-8",
  ".json": "application/json; charset=utf-8",
  ".map": "application/json; charset=utf-8",
  ".svg": "image/svg+xml",
  ".png": "image/png",
  ".xml": "text/xml; charset=utf-8",
  ".md": "text/plain; charset=utf-8",
};

async function answer(request, response) {
  const { pathname } = new URL(request.url, `https://localhost:${port}`);
  const file = new URL(`.${pathname}`, built);
  const type = contentTypes[extname(pathname)];
  try {
    if (!file.href.startsWith(built.href) || !type) throw new Error("not one of the add-in's files");
    const content = await readFile(file);
    // Excel keeps an add-in's files for a day; a developer wants the ones just built.
    response.writeHead(200, { "content-type": type, "cache-control": "no-store" }).end(content);
  } catch {
    response.writeHead(404).end();
  }
}

/** Runs office-addin-debugging beside the server: Excel asks for the page while it is being started. */
async function debugging(...words) {
  const tool = require.resolve("office-addin-debugging/cli.js");
  const [code] = await once(spawn(process.execPath, [tool, ...words], { stdio: "inherit" }), "exit");
  return code === 0;
}

if (process.platform !== "win32" && process.platform !== "darwin") {
  console.error(
    "Excel for the desktop runs on Windows and Mac only, so there is nothing here to load the add-in into: " +
      "`npm start` shows the same functions and pane in a local page.",
  );
  process.exit(1);
}

// Asks once to trust a certificate made for localhost on this machine.
const { getHttpsServerOptions } = require("office-addin-dev-certs");
const server = createServer(await getHttpsServerOptions(), answer).listen(port, "localhost");
try {
  await once(server, "listening");
} catch (error) {
  console.error(`The add-in's manifest asks for https://localhost:${port}, which is not free: ${error.message}.`);
  process.exit(1);
}
if (!(await debugging("start", manifest, "desktop", "--no-debug", "--no-live-reload"))) process.exit(1);
console.log(`Serving the add-in at https://localhost:${port} until Ctrl-C.`);
process.once("SIGINT", async () => {
  await debugging("stop", manifest);
  process.exit(0);
});
