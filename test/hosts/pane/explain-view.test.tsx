import { renderToString } from "preact-render-to-string";
import { CellError, type Range } from "../../../src/definition/cells";
import { catalogue } from "../../../src/functions";
import { ExplainView } from "../../../src/hosts/pane/explain/explain-view";
import { storyOf } from "../../../src/hosts/pane/explain/story";
import type { Selection } from "../../../src/hosts/pane/port";
import { scriptedPort, selected } from "./scripted-port";

/** The pane's text for a cell, tags taken out, hard spaces made plain. */
const paneFor = async (selection: Selection | undefined, values: Record<string, Range> = {}) => {
  const story = await storyOf(selection, scriptedPort({ values }), catalogue);
  const html = renderToString(<ExplainView story={story} onGo={() => {}} onHelp={() => {}} />);
  const text = html
    .replace(/<(wbr|span)[^>]*>|<\/span>/g, "")
    .replace(/<[^>]*>/g, " ")
    .replace(/&quot;/g, '"')
    .replace(/[\s\u00a0]+/g, " ");
  return { html, text };
};

describe("a cell with one of our functions", () => {
  const asked = () => paneFor(selected('=BIMETAL.TRIP.RANGE(B2,20,"C")'), { B2: [[51]] });

  test("tells the function, its inputs with unit and origin, and what was left out", async () => {
    const { text } = await asked();
    expect(text).toContain("BIMETAL.TRIP.RANGE");
    expect(text).toContain("The shortest and the longest time in which a sound breaker may trip");
    expect(text).toMatch(/current 51 A from B2/);
    expect(text).toMatch(/rating 20 A typed/);
    expect(text).toMatch(/preload left out: cold/);
  });

  test("tells the answer with its units: IEC 60898-1 Table 7 test c, 1 s to 60 s at 2.55 × up to 32 A", async () => {
    const { text } = await asked();
    expect(text).toMatch(/shortest \(this cell\) 1 s/);
    expect(text).toMatch(/longest 60 s/);
  });

  test("shows the steps, the cautions and the sources with edition and standing, none of them folded away", async () => {
    const { html, text } = await asked();
    expect(text).toMatch(/Step by step .*2\.55/);
    expect(text).toMatch(/Cautions .*r\.m\.s\. sine/);
    expect(text).toMatch(/Sources .*IEC 60898-1 \(2015 \+ A1:2019\), Table 7, test a; .*: corroborated/);
    expect(html.replace(/<details.*?<\/details>/gs, "")).toMatch(/Cautions.*Sources/s);
  });

  test("draws the band with the tested point, and says it in words and in a table", async () => {
    const { html, text } = await asked();
    expect(html).toContain('class="pane-band"');
    expect(html.match(/class="pane-diamond"/g)).toHaveLength(3);
    expect(text).toContain("current 51 A: shortest at 51 A: 1 s; longest at 51 A: 60 s");
    expect(html).toMatch(/<table/);
  });
});

describe("a refusal", () => {
  test("says what is wrong, in which argument, and what would be taken", async () => {
    const { html, text } = await paneFor(selected('=BIMETAL.TRIP.RANGE(-3,20,"C")'));
    expect(text).toContain("#VALUE! This cannot be taken");
    expect(text).toMatch(/current ?: the steady current .* It takes a number in A, more than 0/);
    expect(html).toMatch(/pane-input-refused"><dt class="pane-input-name">current/);
  });

  test("an unknown word is answered with the known ones", async () => {
    const { text } = await paneFor(selected('=BIMETAL.TRIP.RANGE(51,20,"Q")'));
    expect(text).toMatch(/"B", "C", "D"/);
    // Once is enough.
    expect(text.match(/"UL 489 typical"/g)).toHaveLength(1);
  });

  test("a fair question without an answer is told as one", async () => {
    const { text } = await paneFor(selected('=BIMETAL.TRIP.RANGE(400,160,"C")'));
    expect(text).toMatch(/#N\/A A fair question that the sources do not answer .*125 A/);
  });

  test("its cautions and sources stay", async () => {
    const { text } = await paneFor(selected('=BIMETAL.TRIP.RANGE(-3,20,"C")'));
    expect(text).toMatch(/Cautions .* Sources /);
  });
});

describe("other cells", () => {
  test("an ordinary cell: what can be done here", async () => {
    const { text } = await paneFor(selected("=SUM(A1:A3)"));
    expect(text).toContain("Select a cell whose formula holds a BIMETAL function");
    expect(text).toContain('=BIMETAL.TRIP.RANGE(51,20,"C")');
  });

  test("a name that begins as ours and is none", async () => {
    const { text } = await paneFor(selected("=BIMETAL.TRIP.RNAGE(1)"));
    expect(text).toContain("There is no function called BIMETAL.TRIP.RNAGE");
  });

  test("one of ours without its beginning, arguments parted by semicolons, a word without quotes", async () => {
    const bare = await paneFor(selected('=TRIP.RANGE(51,20,"C")'));
    expect(bare.text).toContain("The names of these functions begin with BIMETAL. Write BIMETAL.TRIP.RANGE.");
    for (const formula of ['=BIMETAL.TRIP.RANGE(51;20;"C")', "=BIMETAL.TRIP.RANGE(51,20,c)"])
      expect((await paneFor(selected(formula))).text).toMatch(
        /This formula cannot be read\. Arguments are parted by commas, .* words stand in quotes\./,
      );
    expect((await paneFor(selected("BIMETAL. as a text"))).text).not.toContain("cannot be read");
  });

  test("the sheet's own error over a formula of ours is explained first", async () => {
    const { text } = await paneFor(selected('=BIMETAL.TRIP.RANGE(51,20,"C")', { value: new CellError("#SPILL!") }));
    expect(text).toMatch(/^ #SPILL! The answer needs more cells/);
  });
});

describe("an error that lasts", () => {
  const shown = (code: string) => selected('=BIMETAL.TRIP.RANGE(51,20,"C")', { value: new CellError(code) });

  test.each(["#NAME?", "#BUSY!", "#CALC!"])("%s is answered with Recalculate", async (code) => {
    expect((await paneFor(shown(code))).text).toMatch(/^ #\S+ .*\b[Pp]ress Recalculate/);
  });

  test.each(["#VALUE!", "#N/A"])("%s over values that can be answered is told to be outdated", async (code) => {
    const { text } = await paneFor(shown(code));
    expect(text).toContain(`${code} still stands in the cell, but these values can be answered: press Recalculate.`);
    expect(text).toMatch(/longest 60 s/);
  });

  test("over a refusal it is the refusal that is told, and inside another formula the error may be that one's own", async () => {
    const value = new CellError("#VALUE!");
    for (const formula of ['=BIMETAL.TRIP.RANGE(-3,20,"C")', "=1/BIMETAL.CONTACT.WATTS(20,0.16)"])
      expect((await paneFor(selected(formula, { value }))).text).not.toContain("still stands in the cell");
  });
});

test("several of our functions in one formula can be stepped through, each by a button that says whether it is told", async () => {
  const { html, text } = await paneFor(selected("=BIMETAL.CONTACT.WATTS(20,0.16)+BIMETAL.CONTACT.OHMS(20,0.16)"));
  expect(text).toContain("2 of our functions stand in this formula");
  expect(html).toMatch(/aria-pressed="true"[^>]*>1\. CONTACT\.WATTS/);
  expect(html).toMatch(/aria-pressed="false"[^>]*>2\. CONTACT\.OHMS/);
});

test("of a column of answers the row of the selected cell is told, with steps to its neighbours", async () => {
  const { text } = await paneFor(
    selected("=BIMETAL.CONTACT.WATTS(B2:B4,0.16)", { spill: { anchor: "Log!F2", row: 1, column: 0 } }),
    { "B2:B4": [[10], [20], [30]] },
  );
  expect(text).toMatch(/Row before Row 2 of 3 Next row/);
  expect(text).toMatch(/from B3/);
  // 20 A × 0.16 V, by hand.
  expect(text).toContain("3.2 W");
});

test("an argument that only a calculation knows is named, and no answer is made up", async () => {
  const { text } = await paneFor(selected("=BIMETAL.CONTACT.WATTS(B2*2,0.16)"));
  expect(text).toContain("a calculation: put it in a cell of its own to see it");
  expect(text).toContain("worked out in the formula: B2*2");
  expect(text).not.toMatch(/\d W\b/);
});

test("no state writes a style attribute, which the pages' policy forbids", async () => {
  for (const formula of ['=BIMETAL.TRIP.RANGE(51,20,"C")', "=BIMETAL.TRIP.RANGE(-1)", "=1"])
    expect((await paneFor(selected(formula))).html).not.toMatch(/\sstyle=/);
});
