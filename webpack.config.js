// How the three hosts are built, one named configuration for each bundle of .setup/bundles.mjs:
// `webpack --config-name excel --env origin=https://…`. A host that is not in this copy has no configuration.
// Types are not checked here: `tsc --noEmit` does that as a step of its own.

const { createHash } = require("node:crypto");
const { existsSync, readFileSync } = require("node:fs");
const { basename, join } = require("node:path");
const webpack = require("webpack");

const root = __dirname;
const developmentOrigin = "https://localhost:3000";

/** Where the add-in's page takes office.js from. A listing in Microsoft's store requires their own host here. */
const officeScript = "office/office.js";

/** What of Microsoft's package an add-in page may ask for: the loader, one runtime a platform, its words, its table. */
const officeFiles = [
  "office.js",
  "excel-win32-16.01.js",
  "excel-mac-16.00.js",
  "excel-web-16.00.js",
  "en-us/office_strings.js",
  "o15apptofilemappingtable.js",
];

const { RawSource } = webpack.sources;
const emitStage = webpack.Compilation.PROCESS_ASSETS_STAGE_ADDITIONAL;

/** Puts files into the output as they are, or as `change` makes them from their text; those not there are left out. */
class CopyFiles {
  constructor(files) {
    this.files = files.filter(({ from }) => existsSync(join(root, from)));
  }

  apply(compiler) {
    compiler.hooks.thisCompilation.tap("CopyFiles", (compilation) => {
      compilation.hooks.processAssets.tap({ name: "CopyFiles", stage: emitStage }, () => {
        for (const { from, to, change } of this.files) {
          const path = join(root, from);
          compilation.fileDependencies.add(path);
          const content = readFileSync(path);
          // Microsoft's files are to be passed on in their original form, so nothing minifies what is copied.
          const info = { minimized: true };
          compilation.emitAsset(to, new RawSource(change ? change(content.toString("utf8")) : content), info);
        }
      });
    });
  }
}

/** Builds a module beside the bundle, runs it, and emits files, text by name, that `files` makes of its default export; nothing minifies them. */
class EmitMade {
  constructor({ module, files }) {
    this.module = join(root, module);
    this.files = files;
  }

  apply(compiler) {
    if (!existsSync(this.module)) return;
    const temporary = `${basename(this.module)}.builder.cjs`;
    compiler.hooks.make.tapAsync("EmitMade", (compilation, done) => {
      const output = { filename: temporary, library: { type: "commonjs2" }, globalObject: "globalThis" };
      const child = compilation.createChildCompiler("EmitMade", output, [
        new webpack.node.NodeTemplatePlugin(),
        new webpack.node.NodeTargetPlugin(),
        new webpack.library.EnableLibraryPlugin("commonjs2"),
        new webpack.EntryPlugin(compiler.context, this.module, { name: "builder" }),
      ]);
      child.options.devtool = false;
      child.runAsChild((error, _entries, built) => {
        if (error || built.errors.length > 0) return done(error ?? built.errors[0]);
        try {
          const source = compilation.getAsset(temporary).source.source();
          for (const { name } of compilation.getAssets()) if (name.startsWith(temporary)) compilation.deleteAsset(name);
          for (const path of built.fileDependencies) compilation.fileDependencies.add(path);
          const made = { exports: {} };
          new Function("module", "exports", "require", String(source))(made, made.exports, require);
          for (const [name, text] of Object.entries(this.files(made.exports.default)))
            compilation.emitAsset(name, new RawSource(text), { minimized: true });
          done();
        } catch (failure) {
          done(failure);
        }
      });
    });
  }
}

/** The reference pages in a folder of the output, with their one style sheet and their icon. */
function referencePages(folder) {
  const inFolder = (pages) => Object.fromEntries(Object.entries(pages).map(([name, text]) => [folder + name, text]));
  const colours = "src/hosts/pane/look/colours.css";
  return [
    new EmitMade({ module: "src/hosts/pane/reference/pages.ts", files: (pages) => inFolder(pages()) }),
    new CopyFiles([
      {
        from: "src/hosts/pane/reference/reference.css",
        to: `${folder}reference.css`,
        change: (css) => `${readFileSync(join(root, colours), "utf8")}\n${css}`,
      },
      { from: "src/hosts/pane/icons/bimetal.svg", to: `${folder}favicon.svg` },
    ]),
  ];
}

/**
 * The hashes under which the page's content security policy admits the style elements that the grid engine adds while
 * it runs: its toasts' style sheet, added empty and then filled, and its theme as custom properties. The test of the
 * page in a browser holds this list: a style element with another hash is a violation there.
 */
class EngineStyleHashes {
  apply(compiler) {
    compiler.hooks.thisCompilation.tap("EngineStyleHashes", (compilation) => {
      compilation.hooks.processAssets.tap({ name: "EngineStyleHashes", stage: emitStage }, () => {
        const hashes = ["", toastStyles(), themeStyles()].map(
          (text) => `sha256-${createHash("sha256").update(text).digest("base64")}`,
        );
        compilation.emitAsset("style-hashes.json", new RawSource(`${JSON.stringify(hashes, null, 2)}\n`));
      });
    });
  }
}

/** What sonner writes into its style element when it is loaded, taken from the call in its source. */
function toastStyles() {
  const design = require.resolve("@univerjs/design", { paths: [root] });
  const source = readFileSync(require.resolve("sonner", { paths: [design] }), "utf8");
  const call = /^__insertCSS\((".*")\);?$/m.exec(source);
  if (!call)
    throw new Error("sonner no longer adds its styles by __insertCSS(…): see toastStyles in webpack.config.js.");
  return JSON.parse(call[1]);
}

/** What ThemeSwitcherService of @univerjs/ui writes for the page's theme: one custom property a line. */
function themeStyles() {
  const { defaultTheme } = require("@univerjs/themes");
  const own = JSON.parse(readFileSync(join(root, "src/hosts/workbench/page/theme.json"), "utf8"));
  const properties = (value, name) =>
    typeof value === "object" && value !== null
      ? Object.entries(value).flatMap(([key, inner]) => properties(inner, `${name}-${key}`))
      : [`${name}: ${value};`];
  return `:root {\n${properties({ ...defaultTheme, ...own }, "--univer").join("\n")}\n}`;
}

function httpsOrigin(text) {
  const url = URL.canParse(text) ? new URL(text) : undefined;
  if (url?.protocol !== "https:" || url.search || url.hash)
    throw new Error(`origin is to be an https address such as https://example.org/bimetal, not ${text}.`);
  return url.href.replace(/\/$/, "");
}

/** The engine's hyphenation patterns of some forty languages; English is asked for while it runs. */
const otherHyphenations = () =>
  new webpack.IgnorePlugin({ contextRegExp: /engine-render/, resourceRegExp: /^\.\/(?!en-)[a-z0-9-]+-[\w-]{8}\.js$/ });

const rules = [
  { test: /\.tsx?$/, loader: "ts-loader", options: { transpileOnly: true, compilerOptions: { noEmit: false } } },
  { test: /\.css$/, type: "css/auto" },
  { test: /\.(svg|png|woff2?|ttf)$/, type: "asset/resource", generator: { filename: "assets/[name][ext]" } },
  // Some of the engine's packages call themselves ES modules and yet import without extensions.
  { test: /\.m?js$/, resolve: { fullySpecified: false } },
];

const shared = {
  mode: "production",
  context: root,
  module: { rules },
  resolve: { extensions: [".tsx", ".ts", ".mjs", ".js", ".json"] },
  experiments: { css: true },
  performance: { hints: false },
  stats: { all: false, errors: true, errorDetails: true, warnings: true },
  infrastructureLogging: { level: "error" },
};

function addIn(entries, env) {
  const origin = httpsOrigin(env.origin ?? developmentOrigin);
  return {
    ...shared,
    entry: { taskpane: withStyles(entries, "src/hosts/excel/taskpane.css") },
    devtool: "source-map",
    // Browsers keep files for a while: a part that is loaded later must never be another build's.
    output: { filename: "[name].js", chunkFilename: "[name].[contenthash:8].js", cssFilename: "[name].css" },
    plugins: [
      new EmitMade({
        module: "src/hosts/excel/functions-json.ts",
        files: (functionsJson) => ({
          "functions.json": `${JSON.stringify(functionsJson(`${origin}/reference`), null, 2)}\n`,
        }),
      }),
      ...referencePages("reference/"),
      new CopyFiles([
        {
          from: "src/hosts/excel/taskpane.html",
          to: "taskpane.html",
          change: (html) => html.replaceAll("%OFFICE_SCRIPT%", officeScript),
        },
        { from: "manifest.xml", to: "manifest.xml", change: (xml) => xml.replaceAll(developmentOrigin, origin) },
        { from: "src/hosts/pane/icons/bimetal.svg", to: "favicon.svg" },
        ...[16, 32, 64, 80].map((size) => ({
          from: `src/hosts/excel/icons/icon-${size}.png`,
          to: `icons/icon-${size}.png`,
        })),
        ...officeFiles.map((name) => ({
          from: `node_modules/@microsoft/office-js/dist/${name}`,
          to: `office/${name}`,
        })),
        { from: "node_modules/@microsoft/office-js/LICENSE.md", to: "office/LICENSE.md" },
      ]),
    ],
  };
}

function page(entries) {
  return {
    ...shared,
    entry: { page: withStyles(entries, "src/hosts/workbench/page/page.css") },
    output: { filename: "[name].js", cssFilename: "[name].css" },
    optimization: { minimize: false },
    plugins: [
      otherHyphenations(),
      new EngineStyleHashes(),
      ...referencePages("reference/"),
      new CopyFiles([
        { from: "src/hosts/workbench/page/index.html", to: "index.html" },
        { from: "src/hosts/pane/icons/bimetal.svg", to: "favicon.svg" },
      ]),
    ],
  };
}

const engineChunk = { name: "engine", test: /node_modules/, chunks: "initial", minChunks: 2 };

function command(entries) {
  return {
    ...shared,
    target: "node20",
    entry: Object.fromEntries(entries.map((entry) => [basename(entry, ".ts"), join(root, entry)])),
    // import.meta.url is to be the bundle's address at run time, not the source file's when it was built.
    module: { rules, parser: { javascript: { importMeta: false } } },
    output: { filename: "[name].mjs", module: true, library: { type: "module" }, chunkFormat: "module" },
    // The engine is the bulk of each command: they share it as a chunk.
    optimization: { minimize: false, splitChunks: { cacheGroups: { engine: engineChunk } } },
    plugins: [otherHyphenations()],
    // What drives the browser finds parts of itself beside itself.
    externals: { "puppeteer-core": "module puppeteer-core" },
    experiments: { ...shared.experiments, outputModule: true },
  };
}

/** The reference pages alone: no entry of their own, what is emitted is all. Told by a function, webpack still prepares for the child's. */
function reference() {
  return { ...shared, entry: () => ({}), plugins: referencePages("") };
}

function withStyles(entries, styles) {
  return [...entries, ...(existsSync(join(root, styles)) ? [styles] : [])].map((path) => join(root, path));
}

const builders = {
  ...{ excel: addIn, workbench: page, "workbench-server": command, workbook: command },
  ...{ reference, benchmark: command, fuzz: command, "fuzz-workbooks": command, examples: command },
};

module.exports = async (env = {}) => {
  const { bundles, entriesOf } = await import("./.setup/bundles.mjs");
  const present = Object.keys(bundles).filter((name) => entriesOf(root, name).length > 0);
  const configurations = present.map((name) => {
    const configuration = builders[name](entriesOf(root, name), env);
    // The page's folder lies in that of its server, which is not to sweep it away.
    const clean = name === "workbench-server" ? { keep: /^page\// } : true;
    const output = { ...configuration.output, path: join(root, bundles[name].output), clean };
    return { ...configuration, name, output };
  });
  configurations.parallelism = 1;
  return configurations;
};
