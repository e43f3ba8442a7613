import { breakerStudy } from "./breaker-study.mjs";
import { lessons } from "./lessons.mjs";
import { motorStarts } from "./motor-starts.mjs";
import { panelEstimate } from "./panel-estimate.mjs";
import { testLog } from "./test-log.mjs";

/** What every example must answer, by the file that holds it: lines with a key, then the expected cells by their headings. */
export const expectedAnswers = async () => ({
  ...(await testLog()),
  ...(await motorStarts()),
  ...(await panelEstimate()),
  ...(await breakerStudy()),
  ...(await lessons()),
});
