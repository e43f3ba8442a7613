import { spawnSync } from "node:child_process";
import { existsSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { insertAction } from "../../../src/hosts/excel/ribbon";

// manifest.xml against Microsoft's schemas (schemas/PROVENANCE.md) and against what they do not say.

const root = join(__dirname, "../../..");
const manifest = readFileSync(join(root, "manifest.xml"), "utf8");

const faultsOf = (xml: string): string[] => {
  const schema = join(__dirname, "schemas/manifest-xsd/OfficeAppManifestV1_1.xsd");
  const { status, stdout, stderr } = spawnSync(process.execPath, [join(__dirname, "validate-xml.mjs"), schema], {
    input: xml,
    encoding: "utf8",
  });
  if (status !== 0) throw new Error(stderr);
  return stdout.split("\n").filter(Boolean);
};

const all = (pattern: RegExp, xml = manifest): string[] =>
  [...xml.matchAll(pattern)].map((match) => match[1] as string);
const resources = new Map(
  [...manifest.matchAll(/<bt:(Image|Url|String) id="([^"]*)" DefaultValue="([^"]*)"/g)].map(([, kind, id, value]) => [
    id as string,
    { kind, value: value as string },
  ]),
);
const urlOf = (resid: string | undefined) => resources.get(resid ?? "")?.value;
const addresses = all(/DefaultValue="(https?:[^"]*)"/g);
const pathOf = (address: string) => new URL(address).pathname.slice(1);

test("it follows the schemas of Office add-in manifests", () => {
  expect(faultsOf(manifest)).toEqual([]);
});

test("the schemas would not pass a runtime that lives for ever, nor one named too late", () => {
  expect(faultsOf(manifest.replace('lifetime="long"', 'lifetime="eternal"'))).toEqual([
    expect.stringMatching(/lifetime/),
  ]);
  const [runtimes = ""] = manifest.match(/<Runtimes>.*<\/Runtimes>/s) ?? [];
  const late = manifest.replace(runtimes, "").replace("</DesktopFormFactor>", `</DesktopFormFactor>${runtimes}`);
  expect(faultsOf(late)).not.toEqual([]);
});

test("every resource that is referred to is there, and none is idle", () => {
  const referred = new Set(all(/resid="([^"]*)"/g));
  expect([...referred].sort()).toEqual([...resources.keys()].sort());
});

test("ids are at most 32 characters, short texts 125, long ones 250, the description 250", () => {
  for (const id of [...resources.keys(), ...all(/\bid="([^"]*)"/g)]) expect(id.length).toBeLessThanOrEqual(32);
  const [short = "", long = ""] = [
    /<bt:ShortStrings>.*<\/bt:ShortStrings>/s,
    /<bt:LongStrings>.*<\/bt:LongStrings>/s,
  ].map((pattern) => manifest.match(pattern)?.[0]);
  for (const text of all(/DefaultValue="([^"]*)"/g, short)) expect(text.length).toBeLessThanOrEqual(125);
  for (const text of all(/DefaultValue="([^"]*)"/g, long)) expect(text.length).toBeLessThanOrEqual(250);
  expect(all(/<Description DefaultValue="([^"]*)"/g)[0]?.length).toBeLessThanOrEqual(250);
});

test("every address is https and of one origin, the one the build puts another in place of", () => {
  expect(new Set(addresses.map((address) => new URL(address).origin))).toEqual(new Set(["https://localhost:3000"]));
});

test("every file it names is built", () => {
  expect(addresses.map(pathOf).filter((path) => !existsSync(join(root, "dist/excel", path)))).toEqual([]);
});

test("functions, pane and ribbon share one page", () => {
  const resid = (pattern: RegExp) => manifest.match(pattern)?.[1];
  const runtime = resid(/<Runtime resid="([^"]*)"/);
  expect(resid(/<Page>\s*<SourceLocation resid="([^"]*)"/)).toBe(runtime);
  expect(resid(/<FunctionFile resid="([^"]*)"/)).toBe(runtime);
  for (const action of all(/<Action xsi:type="ShowTaskpane">\s*<SourceLocation resid="([^"]*)"/g))
    expect(action).toBe(runtime);
  expect(manifest.match(/<SourceLocation DefaultValue="([^"]*)"/)?.[1]).toBe(urlOf(runtime));
  expect(pathOf(urlOf(runtime) as string)).toBe("taskpane.html");
  // Two panes would be two pages.
  expect(manifest).not.toContain("TaskpaneId");
});

test("the one action of the ribbon is the one that the script has", () => {
  expect(all(/<FunctionName>(.*)<\/FunctionName>/g)).toEqual([insertAction]);
});

test("the functions have metadata, a script and the namespace BIMETAL", () => {
  const resid = (element: string) => manifest.match(new RegExp(`<${element}>\\s*<SourceLocation resid="([^"]*)"`))?.[1];
  expect(pathOf(urlOf(resid("Metadata")) as string)).toBe("functions.json");
  expect(pathOf(urlOf(resid("Script")) as string)).toBe("taskpane.js");
  expect(urlOf(manifest.match(/<Namespace resid="([^"]*)"/)?.[1])).toBe("BIMETAL");
});

test("it asks for what the functions and the pane need", () => {
  const sets = [...manifest.matchAll(/<Set Name="([^"]*)" MinVersion="([^"]*)"/g)].map(([, name, version]) => [
    name,
    version,
  ]);
  expect(sets).toEqual([
    ["SharedRuntime", "1.1"],
    ["CustomFunctionsRuntime", "1.3"],
    ["ExcelApi", "1.12"],
  ]);
});

test("icons have the sizes they are named for", () => {
  const [small, large] = ["IconUrl", "HighResolutionIconUrl"].map(
    (element) => manifest.match(new RegExp(`<${element} DefaultValue="([^"]*)"`))?.[1] as string,
  );
  const sized = [...manifest.matchAll(/<bt:Image size="(\d+)" resid="([^"]*)"/g)].map(
    ([, size, resid]) => [Number(size), urlOf(resid) as string] as const,
  );
  expect(new Set(sized.map(([size]) => size))).toEqual(new Set([16, 32, 80]));
  for (const [size, address] of [[32, small], [64, large], ...sized] as [number, string][])
    expect(sizeOf(join(root, "dist/excel", pathOf(address)))).toEqual([size, size]);
});

/** Width and height from a PNG's first chunk, IHDR (PNG specification, section 11.2.2). */
const sizeOf = (file: string): [number, number] => {
  const bytes = readFileSync(file);
  expect(bytes.toString("latin1", 1, 4)).toBe("PNG");
  expect(bytes.toString("latin1", 12, 16)).toBe("IHDR");
  return [bytes.readUInt32BE(16), bytes.readUInt32BE(20)];
};
