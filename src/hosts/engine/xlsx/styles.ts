import type { Style } from "../book";
import { readXml } from "./xml";

// ECMA-376 part 1, 18.8.30: number formats that a workbook uses without writing them down.
const builtIn: Readonly<Record<number, string>> = {
  1: "0",
  2: "0.00",
  3: "#,##0",
  4: "#,##0.00",
  9: "0%",
  10: "0.00%",
  11: "0.00E+00",
  12: "# ?/?",
  13: "# ??/??",
  14: "yyyy-mm-dd",
  15: "d-mmm-yy",
  16: "d-mmm",
  17: "mmm-yy",
  18: "h:mm AM/PM",
  19: "h:mm:ss AM/PM",
  20: "h:mm",
  21: "h:mm:ss",
  22: "yyyy-mm-dd h:mm",
  37: "#,##0;(#,##0)",
  38: "#,##0;[Red](#,##0)",
  39: "#,##0.00;(#,##0.00)",
  40: "#,##0.00;[Red](#,##0.00)",
  45: "mm:ss",
  46: "[h]:mm:ss",
  47: "mm:ss.0",
  48: "##0.0E+0",
  49: "@",
};

/** The looks of a workbook's cells by the number in their `s`, as far as this program keeps them. */
export const readStyles = (xml: string): Style[] => {
  const formats = new Map<number, string>();
  const fonts: Style[] = [];
  const fills: Style[] = [];
  const styles: Style[] = [];
  let list = "";
  const rgb = (value: string | undefined) =>
    value && /^[0-9A-Fa-f]{8}$/.test(value) ? value.slice(2).toUpperCase() : undefined;
  const addTo = (styles: Style[], more: Style) => {
    if (styles.length > 0) styles[styles.length - 1] = { ...styles.at(-1), ...more };
  };
  readXml(xml, "xl/styles.xml", {
    open: ({ name, attributes }) => {
      if (/^(numFmts|fonts|fills|cellXfs|cellStyleXfs|dxfs|borders)$/.test(name)) list = name;
      const isOn = attributes.val !== "0" && attributes.val !== "false";
      if (list === "numFmts" && name === "numFmt")
        formats.set(Number(attributes.numFmtId), attributes.formatCode ?? "");
      if (list === "fonts" && name === "font") fonts.push({});
      if (list === "fonts" && name === "b" && isOn) addTo(fonts, { bold: true });
      if (list === "fonts" && name === "i" && isOn) addTo(fonts, { italic: true });
      if (list === "fonts" && name === "color" && rgb(attributes.rgb)) addTo(fonts, { color: rgb(attributes.rgb) });
      if (list === "fills" && name === "fill") fills.push({});
      if (list === "fills" && name === "fgColor" && rgb(attributes.rgb)) addTo(fills, { fill: rgb(attributes.rgb) });
      if (list === "cellXfs" && name === "xf") {
        const id = Number(attributes.numFmtId);
        const format = formats.get(id) ?? builtIn[id];
        styles.push({
          ...fonts[Number(attributes.fontId)],
          ...fills[Number(attributes.fillId)],
          ...(format && { format }),
        });
      }
      if (list === "cellXfs" && name === "alignment" && attributes.wrapText === "1") addTo(styles, { wrap: true });
    },
    close: (name) => {
      if (name === list) list = "";
    },
  });
  return styles;
};
