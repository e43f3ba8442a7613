import { call } from "../../src/definition/call";
import { catalogued } from "./catalogued";
import { type Comparison, measure } from "./compare";
import { engineTime, logOf } from "./engine";

const formulas = 5000;
const roadCalls = 100_000;

/** Separate cells: one formula each, as a log that grew line by line has them. */
export const cells = async (): Promise<Comparison[]> => {
  const trip = catalogued("TRIP.RANGE");
  const road = measure(
    `TRIP.RANGE, ${roadCalls} separate calls through the road`,
    () => {
      let called = 0;
      for (let i = 0; i < roadCalls; i++) called += call(trip, [21 + (i % 200), 20, "C"]).length;
      return called;
    },
    `≤ 5 µs each, that is ≤ ${(roadCalls * 5) / 1000} ms`,
  );
  const ours = logOf(formulas, (row) => `=BIMETAL.TRIP.RANGE(A${row},20,"C")`);
  const builtIn = logOf(formulas, (row) => `=INDEX(HSTACK(LN(A${row}),LN(A${row}/2)),1,0)`);
  const byHand = logOf(formulas, shortestByHand);
  return [
    road,
    await inTurn(
      `TRIP.RANGE, ${formulas} cells calculated by the engine`,
      ours,
      "as many cells of built-ins that spill two cells (INDEX, HSTACK, LN)",
      builtIn,
      "near 1 ×: the engine's own cost",
    ),
    await inTurn(
      `TRIP.RANGE, ${formulas} cells calculated by the engine`,
      ours,
      "the shortest time alone, for B, C and D, built by hand of LET, XLOOKUP, LN, MIN and MAX",
      byHand,
      "≤ 1 ×",
    ),
  ];
};

/** What a practitioner would have to type without us, and only for the shorter of the two answers, from cold, at 30 °C. */
const shortestByHand = (row: number): string =>
  `=LET(m,A${row}/20,lower,XLOOKUP("C",{"B";"C";"D"},{3;5;10}),quick,LAMBDA(p,LN(m^2/(m^2-p^2))/LN(2.55^2/(2.55^2-p^2))),IF(m<=1,"holds",IF(m<=1.13,3600,IF(m>lower,0,MAX(0.1,IF(m<=1.45,quick(1.13),MIN(quick(1.13),quick(1.45))))))))`;

const inTurn = async (
  what: string,
  ours: ReturnType<typeof logOf>,
  against: string,
  baseline: ReturnType<typeof logOf>,
  goal: string,
): Promise<Comparison> => {
  const ms: number[] = [];
  const ratios: number[] = [];
  for (let run = 0; run < 5; run++) {
    const mine = await engineTime(ours);
    ms.push(mine);
    ratios.push(mine / (await engineTime(baseline)));
  }
  return { what, against, ratios, goal, ms };
};
