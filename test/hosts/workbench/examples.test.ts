import { join } from "node:path";
import { visits } from "./visits";

// Every example as a person opens it: the first answer, every sheet, the words its cells offer.

const visit = visits();

test.each([
  ["test-log.xlsx", "Log!S2: in range", "TRIP.VERDICT", ["Log", "Breakers", "Read me", "Try it"]],
  ["motor-starts.xlsx", "Machines!H2: 17", "INRUSH.MOTOR", ["Machines", "Starts", "Again and again", "Read me"]],
  ["breaker-study.xlsx", "Study!F2: pickup", "THERMAL.FIT", ["Study", "Questions", "Read me"]],
  ["panel-estimate.xlsx", "Board!H10: ", "ENCLOSURE.PANEL", ["Board", "Week", "Read me"]],
  [
    "lessons.xlsx",
    "'1 Two mechanisms'!C10: holds",
    "TRIP.RANGE",
    [
      "1 Two mechanisms",
      "2 Why 1.13 and 1.45",
      "3 The slow ramp",
      "4 Hot and cold",
      "5 Drop and watts",
      "6 A motor start",
      "7 A warm panel",
      "8 How sure are we",
      "Read me",
    ],
  ],
])(
  "%s opens on an answer, explained, and each of its sheets is shown without fault",
  async (workbook, first, explained, sheets) => {
    const person = await visit(join("examples", workbook));
    // The numbers stand beside each workbook, worked out without this program.
    await person.shows("said", first);
    await person.shows("pane", explained);
    const tabs = await person.page.$$eval(".shop-sheet", (all) => all.map((tab) => tab.textContent));
    expect(tabs).toEqual(sheets);
    for (const sheet of sheets) {
      await person.page.locator(`::-p-xpath(//nav//button[.="${sheet}"])`).click();
      const said = /^\w+$/.test(sheet) ? `${sheet}!A1: ` : `'${sheet}'!A1: `;
      await person.shows("said", said);
      const value = (await person.text("said")).slice(said.length);
      expect(value).toMatch(/\S/);
      expect(value).not.toMatch(/^(blank|#)/);
    }
    expect(await person.faults()).toEqual([]);
  },
);
