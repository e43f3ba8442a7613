import { mkdtemp, rm, writeFile } from "node:fs/promises";
import { createServer, get, type IncomingHttpHeaders, type Server } from "node:http";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { listen } from "../../../src/hosts/workbench/listen";
import { answerFor } from "../../../src/hosts/workbench/site";

let folder: string;
let server: Server;
let address: string;

beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), "bimetal-site-"));
  await writeFile(join(folder, "index.html"), "<p>here</p>");
  await writeFile(join(folder, "secret.txt"), "not for the page");
  const workbook = { name: "böard 1.xlsx", bytes: new Uint8Array([80, 75]) };
  ({ server, address } = await listen(answerFor({ folder, styleHashes: ["sha256-abc="], workbook })));
});

afterAll(async () => {
  server.close();
  await rm(folder, { recursive: true, force: true });
});

const ask = (
  path: string,
  headers: Record<string, string> = {},
): Promise<{ code: number; headers: IncomingHttpHeaders; body: string }> =>
  new Promise((resolve, reject) => {
    // Paths are sent as they are: a browser would tidy them up.
    get({ host: "127.0.0.1", port: new URL(address).port, path, headers }, (response) => {
      let body = "";
      response.on("data", (piece) => {
        body += piece;
      });
      response.on("end", () => resolve({ code: response.statusCode ?? 0, headers: response.headers, body }));
    }).on("error", reject);
  });

test("it listens on this machine's own address only", () => {
  expect(server.address()).toMatchObject({ address: "127.0.0.1" });
  expect(address).toMatch(/^http:\/\/127\.0\.0\.1:\d+\/$/);
});

test("where the usual port is taken it takes another", async () => {
  const blocker = createServer().on("error", () => {});
  await new Promise((resolve) => blocker.listen(4175, "127.0.0.1", () => resolve(0)).on("error", () => resolve(0)));
  const second = await listen(() => {});
  expect(second.address).not.toBe("http://127.0.0.1:4175/");
  second.server.close();
  blocker.close();
});

test("the page comes with a policy that lets in nothing from elsewhere, no inline script, and only the named styles", async () => {
  const { code, headers, body } = await ask("/");
  expect([code, body]).toEqual([200, "<p>here</p>"]);
  const policy = String(headers["content-security-policy"]);
  expect(policy).toContain("default-src 'none'");
  expect(policy).toContain("script-src 'self';");
  expect(policy).toContain("style-src 'self' 'sha256-abc=';");
  expect(policy).toContain("connect-src 'self'");
  expect(policy).not.toMatch(/script-src[^;]*unsafe|\*/);
});

test("the workbook is given with its name", async () => {
  const { headers, body } = await ask("/workbook");
  expect(body).toBe("PK");
  expect(headers["content-disposition"]).toBe("attachment; filename*=UTF-8''b%C3%B6ard%201.xlsx");
});

test.each(["/secret.txt", "/../package.json", "/..%2f..%2fpackage.json", "/.hidden.js", "/nothing.js", "//etc/passwd"])(
  "%s is not given",
  async (path) => {
    expect((await ask(path)).code).toBe(404);
  },
);

test("a page that has pointed its own name at this machine is refused", async () => {
  expect((await ask("/", { host: "elsewhere.example" })).code).toBe(403);
});
