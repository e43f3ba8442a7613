import { conductorNamed, conductorsIn, ohmsPerMetre } from "../../src/contact/conductor";
import { otherWires } from "../../src/contact/iec60228";

const named = (text: string) => {
  const conductor = conductorNamed(text);
  if (!conductor) throw new Error(`no conductor "${text}"`);
  return conductor;
};

describe("a conductor by its typed size", () => {
  test("is found however it is spaced and spelled", () => {
    expect(named("12awg").name).toBe("12 AWG");
    expect(named(" AWG  12 ").name).toBe("12 AWG");
    expect(named("0 AWG").name).toBe("1/0 AWG");
    expect(named("3/0 AWG").name).toBe("3/0 AWG");
    expect(named("250 MCM").name).toBe("250 kcmil");
    for (const text of ["2.5 mm²", "2.5mm2", "2,5 mm^2", "2.50 mm2"]) expect(named(text).name).toBe("2.5 mm²");
  });

  test("is none without a unit, or with millimetres across", () => {
    for (const text of ["10", "2.5", "2.5 mm", "twelve AWG", ""]) expect(conductorNamed(text)).toBeUndefined();
  });

  test("is refused between two sizes of the table, with the sizes there are", () => {
    expect(() => conductorNamed("11 AWG")).toThrow(
      "size: 11 AWG is not in the table; it has 18, 16, 14, 12, 10, 8, 6, 4, 3, 2, 1, 1/0, 2/0, 3/0, 4/0 AWG.",
    );
    expect(() => conductorNamed("3 mm2")).toThrow(/^size: 3 mm² is not in the table; it has 0\.5, .*, 400 mm²\.$/);
  });
});

describe("its area", () => {
  test.each([
    // NFPA 70, Chapter 9, Table 8, mm² (from memory).
    ["18 AWG", 0.823],
    ["12 AWG", 3.309],
    ["10 AWG", 5.261],
    ["1/0 AWG", 53.475],
    ["4/0 AWG", 107.219],
    ["250 kcmil", 126.7],
  ])("of %s is the printed %p mm²", (text, area) => {
    expect(Math.abs(named(text).areaSquareMillimetres / area - 1)).toBeLessThan(5e-4);
  });
});

describe("its resistance", () => {
  // IEC 60028: annealed copper, 1/58 Ω·mm²/m at 20 °C; 2 % for stranding (ASTM B496); from 20 to 75 °C by 0.00393 per kelvin.
  const expected = (area: number) => (1.02 * (1 + 0.00393 * 55)) / 58 / area;

  test.each([...conductorsIn("AWG"), ...conductorsIn("kcmil")])(
    "of $name at 75 °C is that of stranded copper",
    (conductor) => {
      const off = ohmsPerMetre(conductor, 75) / expected(conductor.areaSquareMillimetres) - 1;
      expect(Math.abs(off)).toBeLessThan(0.006);
    },
  );

  test.each(conductorsIn("mm²"))("of $name is that of a copper wire of about its nominal area", (conductor) => {
    const off = ohmsPerMetre(conductor, 20) * 58 * conductor.areaSquareMillimetres - 1;
    expect(off).toBeGreaterThan(0);
    expect(off).toBeLessThan(0.13);
  });

  test("is the printed one at the printed temperature and a fifth more 55 K above", () => {
    // IEC 60228:2004 Table 2 (second copy) and 309.5/254.5 by hand.
    expect(ohmsPerMetre(named("2.5 mm²"), 20)).toBeCloseTo(0.00741, 10);
    expect(ohmsPerMetre(named("2.5 mm²"), 75)).toBeCloseTo(0.00741 * 1.21611, 7);
  });
});

// IEC 60287-1-1: skin effect y = x⁴ ÷ (192 + 0.8·x⁴) with x² = 8π·f ÷ R′ · 1e-7, R′ in Ω/m.
test("alternating current of 60 Hz adds less than 1 % up to 120 mm², and 6 % at 1000 kcmil, as a caution says", () => {
  const added = (size: string) => {
    const x4 = ((8 * Math.PI * 60 * 1e-7) / ohmsPerMetre(named(size), 75)) ** 2;
    return x4 / (192 + 0.8 * x4);
  };
  for (const { name, areaSquareMillimetres } of [...conductorsIn("mm²"), ...conductorsIn("AWG")])
    if (areaSquareMillimetres <= 120) expect(added(name)).toBeLessThan(0.01);
  expect(added("1000 kcmil")).toBeCloseTo(0.063, 3);
});

describe("the tables, entered a second time", () => {
  // IEC 60228:2004 (from memory), Ω/km at 20 °C: mm², class 2 copper, class 5 copper, class 2 aluminium.
  test.each([
    [1.5, 12.1, 13.3, undefined],
    [2.5, 7.41, 7.98, undefined],
    [16, 1.15, 1.21, 1.91],
    [50, 0.387, 0.386, 0.641],
    [95, 0.193, 0.206, 0.32],
  ])(
    "%d mm²: fine-stranded copper at most 1.1 times, aluminium about 1.66 times as much",
    (_, copper, fine, aluminium) => {
      expect(fine / copper).toBeLessThan(otherWires.fineStranded + 0.001);
      if (aluminium) expect(aluminium / copper).toBeCloseTo(otherWires.aluminium, 1.5);
    },
  );

  test("IEC 60228:2004 Table 2, class 2 plain copper, Ω/km at 20 °C; 300 and 400 mm² from memory", () => {
    const copy =
      "0.5 36 0.75 24.5 1 18.1 1.5 12.1 2.5 7.41 4 4.61 6 3.08 10 1.83 16 1.15 25 0.727 35 0.524 50 0.387 70 0.268 95 0.193 120 0.153 150 0.124 185 0.0991 240 0.0754 300 0.0601 400 0.047";
    const ours = conductorsIn("mm²").map(({ areaSquareMillimetres, printed }) => [
      areaSquareMillimetres,
      1000 * printed.ohmsPerMetre,
    ]);
    copy.split(" ").forEach((value, i) => {
      expect(ours.flat()[i]).toBeCloseTo(Number(value), 9);
    });
    expect(ours).toHaveLength(20);
  });

  test("NFPA 70, Chapter 9, Table 8, stranded uncoated copper, Ω per 1000 feet at 75 °C (from memory)", () => {
    const perThousandFeet = [
      7.95, 4.99, 3.14, 1.98, 1.24, 0.778, 0.491, 0.308, 0.245, 0.194, 0.154, 0.122, 0.0967, 0.0766, 0.0608, 0.0515,
      0.0429, 0.0367, 0.0321, 0.0258, 0.0214, 0.0171, 0.0129,
    ];
    const ours = [...conductorsIn("AWG"), ...conductorsIn("kcmil")].map(({ printed }) => printed.ohmsPerMetre * 304.8);
    expect(ours).toHaveLength(perThousandFeet.length);
    // Both columns are rounded to three or four figures on their own.
    perThousandFeet.forEach((ohms, i) => {
      expect(Math.abs((ours[i] as number) / ohms - 1)).toBeLessThan(5e-3);
    });
  });
});
