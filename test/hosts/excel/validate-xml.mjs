// `node validate-xml.mjs schema.xsd` reads an XML document from standard input and prints what the schema finds wrong with it,
// one line each. A process of its own, because libxml2-wasm is an ES module that waits at its top level, which jest cannot load.

import { readFileSync } from "node:fs";
import { XmlDocument, XmlValidateError, XsdValidator } from "libxml2-wasm";
import { xmlRegisterFsInputProviders } from "libxml2-wasm/lib/nodejs.mjs";

xmlRegisterFsInputProviders();
const path = process.argv[2];
const validator = XsdValidator.fromDoc(XmlDocument.fromBuffer(readFileSync(path), { url: path }));
try {
  validator.validate(XmlDocument.fromBuffer(readFileSync(0)));
} catch (error) {
  if (!(error instanceof XmlValidateError)) throw error;
  for (const { line, message } of error.details) console.log(`line ${line}: ${message.trim()}`);
}
