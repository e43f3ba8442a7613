import { get } from "node:http";
import { join } from "node:path";
import { listen } from "../../../src/hosts/workbench/listen";
import { answerFor } from "../../../src/hosts/workbench/site";

// The built workbench gives out the reference pages beside its own.

test("the workbench serves the reference pages with their style sheet", async () => {
  const folder = join(__dirname, "../../../dist/workbench/page");
  const { server, address } = await listen(
    answerFor({ folder, styleHashes: [], workbook: { name: "a.xlsx", bytes: new Uint8Array() } }),
  );
  const kindOf = (path: string): Promise<string | undefined> =>
    new Promise((resolve, reject) => {
      get(`${address}reference/${path}`, (response) => {
        response.resume();
        resolve(response.statusCode === 200 ? response.headers["content-type"] : undefined);
      }).on("error", reject);
    });
  expect(await kindOf("index.html")).toBe("text/html; charset=utf-8");
  expect(await kindOf("trip.range.html")).toBe("text/html; charset=utf-8");
  expect(await kindOf("reference.css")).toBe("text/css; charset=utf-8");
  expect(await kindOf("favicon.svg")).toBe("image/svg+xml");
  expect(await kindOf("trip.fires.html")).toBeUndefined();
  server.close();
});
