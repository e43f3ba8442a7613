import fc from "fast-check";
import { die } from "./dice";
import { laws } from "./laws";
import { comparable, withMore } from "./more";
import { parametersOf } from "./question";
import { plainQuestions } from "./questions";
import { ask, demand, isAnswered } from "./road";

const numRuns = 100;
/** Of the searches for edges and roots, relative. */
const slack = 1e-9;

describe.each([...new Set(laws.map(({ of }) => of))])("%s", (of) => {
  test.each(laws.filter((law) => law.of === of))("$name", (law) => {
    const { more, rises = [], falls = [], only = () => true } = law;
    let compared = 0;
    const never = (isWrong: boolean, what: string) => demand(!isWrong, what);
    fc.assert(
      fc.property(plainQuestions(of), die, (less, step) => {
        const greater = withMore(less, more, step);
        const given = (key: string) => less.args[parametersOf(less.definition).findIndex(([name]) => name === key)];
        if (!greater || !only(given)) return;
        const [before, after] = [ask(less), ask(greater)];
        if (!isAnswered(less, before) || !isAnswered(greater, after)) return;
        for (const result of [...rises, ...falls]) {
          const [was, is] = [comparable(before, law, result), comparable(after, law, result)];
          if (was === undefined || is === undefined) continue;
          compared++;
          const margin = slack * Math.max(Math.abs(was), Math.abs(is));
          const told = `${less.definition.results[result]?.name} goes from ${was} to ${is} in ${fc.stringify(greater)}`;
          never(rises.includes(result) && is < was - margin, told);
          never(falls.includes(result) && is > was + margin, told);
        }
      }),
      { numRuns },
    );
    expect(compared).toBeGreaterThan(numRuns / 8);
  });
});
