import { whenIdle } from "./in-excel";

type Handler = OfficeExtension.EventHandlerResult<unknown>;

/** Adds event handlers to the workbook; returns the way to take them off again. */
export const listen = (add: (workbook: Excel.Workbook) => readonly Handler[]): (() => void) => {
  const added = whenIdle(async (context) => {
    const handlers = add(context.workbook);
    await context.sync();
    return handlers;
  });
  return () => {
    void added.then((handlers) =>
      // Excel wants a handler removed in the context that added it.
      Promise.all(
        handlers.map((handler) =>
          Excel.run(handler.context, async (context) => {
            handler.remove();
            await context.sync();
          }),
        ),
      ),
    );
  };
};

/** Runs `work` again after it ends, once, however often it was asked for meanwhile: events come in bursts. */
export const oneAtATime = (work: () => Promise<void>): (() => Promise<void>) => {
  let isRunning = false;
  let isWanted = false;
  return async () => {
    isWanted = true;
    if (isRunning) return;
    isRunning = true;
    try {
      while (isWanted) {
        isWanted = false;
        await work();
      }
    } finally {
      isRunning = false;
    }
  };
};
