import { readFile } from "node:fs/promises";
import type { IncomingMessage, RequestListener, ServerResponse } from "node:http";
import { extname, join } from "node:path";

/** What the site gives out: the page's own files, and the workbook that is to be opened. */
interface Site {
  /** The folder the page was built into. */
  readonly folder: string;
  /** Hashes of the style elements that the grid engine adds while it runs. */
  readonly styleHashes: readonly string[];
  readonly workbook: { readonly name: string; readonly bytes: Uint8Array };
}

const kinds: Record<string, string> = {
  ".html": "text/html; charset=utf-8",
  ".js": "text/javascript; charset=utf-8",
  ".css": "text/css; charset=utf-8",
  ".svg": "image/svg+xml",
  ".png": "image/png",
  ".woff2": "font/woff2",
};

/** Scripts and styles come from this machine only. Pasted markup may carry style attributes, which the engine reads. */
const contentPolicy = (styleHashes: readonly string[]): string =>
  [
    "default-src 'none'",
    "script-src 'self'",
    `style-src 'self' ${styleHashes.map((hash) => `'${hash}'`).join(" ")}`,
    "style-src-attr 'unsafe-inline'",
    "img-src 'self' data:",
    "font-src 'self'",
    "connect-src 'self'",
    "base-uri 'none'",
    "form-action 'none'",
    "frame-ancestors 'none'",
  ].join("; ");

/** Answers a browser on this machine, and nobody who came by another name: a stranger's page may point its own name here. */
export const answerFor = (site: Site): RequestListener => {
  const policy = contentPolicy(site.styleHashes);
  return (request, response) => {
    response.setHeader("Content-Security-Policy", policy);
    response.setHeader("X-Content-Type-Options", "nosniff");
    response.setHeader("Cross-Origin-Resource-Policy", "same-origin");
    response.setHeader("Cache-Control", "no-store");
    answer(site, request, response).catch(() => refuse(response, 500, "The file could not be read."));
  };
};

const answer = async (site: Site, request: IncomingMessage, response: ServerResponse): Promise<void> => {
  if (!/^(127\.0\.0\.1|localhost)(:\d+)?$/.test(request.headers.host ?? ""))
    return refuse(response, 403, "This page is for this machine.");
  if (request.method !== "GET" && request.method !== "HEAD") return refuse(response, 405, "Only reading is answered.");
  const path = new URL(request.url ?? "/", "http://127.0.0.1").pathname;
  if (path === "/workbook") {
    response.setHeader("Content-Disposition", `attachment; filename*=UTF-8''${encodeURIComponent(site.workbook.name)}`);
    return give(response, "application/octet-stream", site.workbook.bytes);
  }
  const name = path === "/" ? "index.html" : path.slice(1);
  const kind = kinds[extname(name)];
  // File names of the build, nothing that climbs.
  if (!kind || !/^(?:[\w-][\w.-]*\/)*[\w-][\w.-]*$/.test(name)) return refuse(response, 404, "There is no such file.");
  const bytes = await readFile(join(site.folder, name)).catch(() => undefined);
  return bytes ? give(response, kind, bytes) : refuse(response, 404, "There is no such file.");
};

const give = (response: ServerResponse, kind: string, bytes: Uint8Array): void => {
  response.writeHead(200, { "Content-Type": kind, "Content-Length": bytes.length });
  response.end(bytes);
};

const refuse = (response: ServerResponse, code: number, sentence: string): void => {
  response.writeHead(code, { "Content-Type": "text/plain; charset=utf-8" });
  response.end(sentence);
};
