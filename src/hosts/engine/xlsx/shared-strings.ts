import { readXml, unescapeText } from "./xml";

/** The texts that cells refer to by number. Of a text in several fonts the text alone; readings beside it (rPh) are left out. */
export const readSharedStrings = (xml: string): string[] => {
  const texts: string[] = [];
  let text = "";
  let within = "";
  readXml(xml, "xl/sharedStrings.xml", {
    open: ({ name }) => {
      if (name === "si") text = "";
      if (name === "rPh" || (name === "t" && within !== "rPh")) within = name;
    },
    text: (piece) => {
      if (within === "t") text += piece;
    },
    close: (name) => {
      if (name === "rPh" || (name === "t" && within === "t")) within = "";
      if (name === "si") texts.push(unescapeText(text));
    },
  });
  return texts;
};
