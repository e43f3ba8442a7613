import { readFile } from "node:fs/promises";
import { createServer } from "node:http";
import type { AddressInfo } from "node:net";
import { extname, join } from "node:path";

const folder = join(process.cwd(), "dist/excel");
const types: Record<string, string> = {
  ".html": "text/html; charset=utf-8",
  ".js": "text/javascript; charset=utf-8",
  ".css": "text/css; charset=utf-8",
  ".svg": "image/svg+xml",
  ".woff2": "font/woff2",
};

export interface BuiltPages {
  readonly address: string;
  close(): void;
}

/** Serves the built add-in on this machine, as a plain web server would, but for the files whose path `lacks` finds. */
export const serveBuiltPages = async (lacks?: RegExp): Promise<BuiltPages> => {
  const server = createServer((request, response) => {
    const { pathname } = new URL(request.url ?? "/", "http://127.0.0.1");
    const found = lacks?.test(pathname) ? Promise.reject(new Error("lacking")) : readFile(join(folder, pathname));
    found.then(
      (content) => response.writeHead(200, { "content-type": types[extname(pathname)] ?? "text/plain" }).end(content),
      () => response.writeHead(404).end(),
    );
  });
  await new Promise<void>((listening) => server.listen(0, "127.0.0.1", listening));
  const { port } = server.address() as AddressInfo;
  return { address: `http://127.0.0.1:${port}`, close: () => server.close() };
};
