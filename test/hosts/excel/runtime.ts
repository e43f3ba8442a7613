import { type OfficePage, openOfficePage } from "./office-page";
import type { Batch, ScriptedWorkbook } from "./scripted-workbook";

/**
 * Microsoft's own runtime between Excel and an add-in, run in Node. Calls go to it as Excel would send them, and what it would send
 * to Excel is caught, so functions and port are tried against the real code between them and Excel without an Excel.
 */
export interface ExcelRuntime {
  readonly globals: OfficePage["globals"];
  /** Calls functions as Excel does, all in one message: the runtime gathers answers for half a second before it sends them. */
  callAll(calls: readonly Call[]): Promise<readonly Reply[]>;
  /** Tells the page that something has happened in the workbook. */
  tell(event: keyof typeof eventTypes): void;
  close(): void;
}

/** One call. Excel hands a matrix for each argument, null for one left out. */
export interface Call {
  readonly id: string;
  readonly handed: readonly unknown[];
  readonly address?: string;
}

/** What reached Excel: a value, or an error by the code of the wire (1 is #N/A, 7 is #VALUE!). */
export interface Reply {
  readonly ok: boolean;
  readonly value: unknown;
  readonly code: unknown;
}

/** An error cell as Excel writes it on the wire, in arguments and in answers. */
export const errorCell = (code: string) => ({ type: "CustomFunctionError", code });

/** The numbers by which Excel tells a workbook's events. */
const eventTypes = { selectionChanged: 14, calculated: 16 };

/** Error cells come as errors, as allowErrorForDataTypeAny asks. */
const withErrors = 4;

export const startExcelRuntime = (workbook?: ScriptedWorkbook): ExcelRuntime => {
  const replies = new Map<number, Reply>();
  let calls = 0;

  const page = openOfficePage((text) => {
    const { id, type, message } = JSON.parse(text);
    if (type !== 1) return;
    const batch: Batch = typeof message.body === "string" ? JSON.parse(message.body) : message.body;
    const results = batch.Actions?.find(({ Name }) => Name === "SetInvocationArrayResults");
    for (const [call, ok, value, code] of (results?.ArgumentInfo?.Arguments?.[0] ?? []) as [
      number,
      boolean,
      unknown,
      unknown,
    ][])
      replies.set(call, { ok, value, code });
    const answer = (!results && workbook?.answer(batch)) || { Results: [], Error: null };
    const body = JSON.stringify({ ...answer, TraceIds: null });
    setImmediate(() => page.send({ id, type: 2, message: { statusCode: 200, headers: {}, body } }));
  });

  return {
    globals: page.globals,
    async callAll(asked) {
      const first = calls + 1;
      calls += asked.length;
      const entries = asked.map(({ id, handed, address = null }, place) => ({
        messageCategory: 1,
        messageType: 1000,
        message: [first + place, id, handed, address, withErrors],
      }));
      page.send({ type: 3, message: { entries } });
      for (let tries = 0; tries < 1000 && !replies.has(calls); tries++) await new Promise((r) => setTimeout(r, 10));
      return asked.map(({ id }, place) => {
        const reply = replies.get(first + place);
        if (!reply) throw new Error(`${id} was never answered: its cell would stay at #BUSY!.`);
        return reply;
      });
    },
    tell(event) {
      const message = JSON.stringify({ worksheetId: "{1}", address: "A1" });
      const entry = { messageCategory: 65536, messageType: eventTypes[event], targetId: "Workbook", message };
      page.send({ type: 3, message: { entries: [entry] } });
    },
    close: page.close,
  };
};
