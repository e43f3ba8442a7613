import { spawn } from "node:child_process";
import { stat } from "node:fs/promises";
import { join } from "node:path";

const root = join(__dirname, "../../..");

export interface Bench {
  readonly address: string;
  readonly stop: () => void;
}

/** The workbench as `npm start` runs it, on the example log or the workbook of a path. */
export const startBench = async (...workbook: string[]): Promise<Bench> => {
  const serve = join(root, "dist/workbench/serve.mjs");
  await stat(serve).catch(() => {
    throw new Error("The workbench is not built: run npm test, which builds it first.");
  });
  const server = spawn(process.execPath, [serve, "--no-open", ...workbook], { stdio: ["ignore", "pipe", "inherit"] });
  let printed = "";
  const address = await new Promise<string>((resolve, reject) => {
    server.stdout.on("data", (text) => {
      printed += text;
      const found = /http:\/\/127\.0\.0\.1:\d+\//.exec(printed);
      if (found) resolve(found[0]);
    });
    server.on("exit", (code) => reject(new Error(`The workbench ended with ${code}.`)));
  });
  return { address, stop: () => server.kill() };
};
