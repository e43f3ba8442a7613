import { useState } from "preact/hooks";
import type { Port } from "../port";
import type { Shelved } from "./ready-sheet";

/** One ready sheet: what it is for, what it holds, and the way into the workbook. */
export const SheetCard = ({
  shelved: { sheet, purpose, holds = [], begin },
  port,
}: {
  shelved: Shelved;
  port: Port;
}) => {
  const [said, setSaid] = useState("");
  const [isGoing, setGoing] = useState(false);
  const insert = async () => {
    // A second press while the first is under way would put it in twice.
    if (isGoing) return;
    setGoing(true);
    setSaid(`${sheet.name} is being put in …`);
    try {
      const name = await port.insertSheet(sheet);
      setSaid([`It stands in the new sheet “${name}”. Nothing else was touched.`, begin].filter(Boolean).join(" "));
    } catch (reason) {
      setSaid(reason instanceof Error ? reason.message : String(reason));
    }
    setGoing(false);
  };
  const parts = sheet.chart
    ? [
        ...holds,
        port.drawsCharts ? `a chart: ${small(sheet.chart.title)}` : "its chart needs Excel and is left out here",
      ]
    : holds;
  return (
    <li class="pane-sheet">
      <div class="pane-sheet-head">
        <h3 class="pane-sheet-name">{sheet.name}</h3>
        <button
          type="button"
          class="pane-step-button"
          aria-label={`Insert ${sheet.name}`}
          aria-disabled={isGoing}
          onClick={insert}
        >
          Insert
        </button>
      </div>
      <p class="pane-sheet-purpose">{purpose}</p>
      {parts.length > 0 && (
        <ul class="pane-sheet-holds">
          {parts.map((part) => (
            <li key={part}>{part}</li>
          ))}
        </ul>
      )}
      <p class="pane-sheet-said" role="status">
        {said}
      </p>
    </li>
  );
};

const small = (title: string): string => title.charAt(0).toLowerCase() + title.slice(1);
