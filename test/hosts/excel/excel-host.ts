import type { Batch, ScriptedWorkbook } from "./scripted-workbook";

/** One call of a function. Excel hands a matrix for each argument, null for one left out. */
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

/** An error cell as Excel writes it on the wire. */
export const errorCell = (code: string) => ({ type: "CustomFunctionError", code });

/** Error cells come as errors, as allowErrorForDataTypeAny asks. */
const withErrors = 4;

/** The numbers by which Excel tells a workbook's events. */
const eventTypes = { selectionChanged: 14, calculated: 16 };

/** Excel's end of the bridge between it and a page: what it would send and what it does with what it is sent. */
export class ExcelHost {
  readonly #replies = new Map<number, Reply>();
  #calls = 0;

  constructor(
    /** Hands a message of Excel's to the page. */
    readonly send: (message: object) => unknown,
    readonly workbook?: ScriptedWorkbook,
  ) {}

  /** A message of the page's. */
  receive(text: string): void {
    const { id, type, message } = JSON.parse(text);
    if (type !== 1) return;
    const batch: Batch = typeof message.body === "string" ? JSON.parse(message.body) : message.body;
    const results = batch.Actions?.find(({ Name }) => Name === "SetInvocationArrayResults");
    for (const [call, ok, value, code] of (results?.ArgumentInfo?.Arguments?.[0] ?? []) as WireReply[])
      this.#replies.set(call, { ok, value, code });
    const answer = (!results && this.workbook?.answer(batch)) || { Results: [], Error: null };
    const body = JSON.stringify({ ...answer, TraceIds: null });
    setImmediate(() => this.send({ id, type: 2, message: { statusCode: 200, headers: {}, body } }));
  }

  /** Calls functions, all in one message: Microsoft's runtime gathers answers for half a second before it sends them. */
  async callAll(calls: readonly Call[]): Promise<readonly Reply[]> {
    const first = this.#calls + 1;
    this.#calls += calls.length;
    const entries = calls.map(({ id, handed, address = null }, place) => ({
      messageCategory: 1,
      messageType: 1000,
      message: [first + place, id, handed, address, withErrors],
    }));
    this.send({ type: 3, message: { entries } });
    const isWaiting = () => calls.some((_, place) => !this.#replies.has(first + place));
    for (let tries = 0; tries < 1500 && isWaiting(); tries++) await new Promise((r) => setTimeout(r, 10));
    return calls.map(({ id }, place) => {
      const reply = this.#replies.get(first + place);
      if (!reply) throw new Error(`${id} was never answered: its cell would stay at #BUSY!.`);
      return reply;
    });
  }

  /** Presses a button of the ribbon, by the name of its action. */
  press(action: string): void {
    const entry = { messageCategory: 2, messageType: 1000, message: [action, null] };
    this.send({ type: 3, message: { entries: [entry] } });
  }

  /** Tells the page that something has happened in the workbook. */
  tell(event: keyof typeof eventTypes): void {
    const message = JSON.stringify({ worksheetId: "{1}", address: "A1" });
    const entry = { messageCategory: 65536, messageType: eventTypes[event], targetId: "Workbook", message };
    this.send({ type: 3, message: { entries: [entry] } });
  }
}

type WireReply = [call: number, ok: boolean, value: unknown, code: unknown];
