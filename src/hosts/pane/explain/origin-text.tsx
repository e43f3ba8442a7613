import { isRange } from "../../../definition/cells";
import type { Parameter } from "../../../definition/parameter";
import { nthCell } from "../address";
import type { ResolvedCall } from "./resolved";

/** Where an input came from: a cell to go to, "typed", or the calculation it is. */
export const OriginText = ({ call, place, row, onGo }: Props) => {
  const written = call.origins[place]?.written;
  if (!written || written.as === "left out") return <>left out</>;
  if (written.as === "typed") return <>typed</>;
  if (written.as === "calculation") return <>worked out in the formula: {written.text}</>;
  const parameter = Object.values(call.definition.parameters as Record<string, Parameter>)[place];
  const argument = call.args[place];
  const isPerRow = parameter?.spread === "row" && argument !== undefined && isRange(argument);
  const cell = isPerRow ? nthCell(written.text, row) : written.text;
  return (
    <>
      from{"\u00a0"}
      <button type="button" class="pane-go" onClick={() => onGo(cell)}>
        {cell}
      </button>
    </>
  );
};

interface Props {
  readonly call: ResolvedCall;
  readonly place: number;
  readonly row: number;
  readonly onGo: (address: string) => void;
}
