// Turns TypeScript, and the packages that ship ES modules only, into the CommonJS that jest runs.
// Types are not checked here: `tsc --noEmit` does that as a step of its own.

const { createHash } = require("node:crypto");
const { readFileSync } = require("node:fs");
const ts = require("typescript");

const ownSource = readFileSync(__filename);

const compilerOptions = {
  target: ts.ScriptTarget.ES2022,
  module: ts.ModuleKind.CommonJS,
  jsx: ts.JsxEmit.ReactJSX,
  jsxImportSource: "preact",
  esModuleInterop: true,
  allowJs: true,
  inlineSourceMap: true,
  inlineSources: true,
};

/** CommonJS has no `import.meta`; a file's own address is the one thing asked of it. */
function addressOfFile(context) {
  const { factory } = context;
  const address = () =>
    factory.createPropertyAccessExpression(
      factory.createCallExpression(
        factory.createPropertyAccessExpression(
          factory.createCallExpression(factory.createIdentifier("require"), undefined, [
            factory.createStringLiteral("node:url"),
          ]),
          "pathToFileURL",
        ),
        undefined,
        [factory.createIdentifier("__filename")],
      ),
      "href",
    );
  const visit = (node) =>
    ts.isPropertyAccessExpression(node) && ts.isMetaProperty(node.expression) && node.name.text === "url"
      ? address()
      : ts.visitEachChild(node, visit, context);
  return (file) => ts.visitNode(file, visit);
}

module.exports = {
  process(source, path) {
    // TypeScript leaves a file called .mjs an ES module whatever it is told, so it is shown another name.
    const fileName = path.replace(/\.mjs$/, ".js");
    const transformers = source.includes("import.meta") ? { before: [addressOfFile] } : undefined;
    return { code: ts.transpileModule(source, { fileName, compilerOptions, transformers }).outputText };
  },
  getCacheKey(source, path) {
    return createHash("sha256")
      .update(ownSource)
      .update(ts.version)
      .update(path)
      .update("\0")
      .update(source)
      .digest("hex");
  },
};
