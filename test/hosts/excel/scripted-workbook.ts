/** A batch of Excel.run as it goes over the wire (only what is looked at here). */
export interface Batch {
  readonly Actions?: readonly Action[];
  readonly ObjectPaths?: Readonly<Record<string, ObjectPath>>;
}

interface Action {
  readonly Id: number;
  readonly ActionType: number;
  readonly Name: string;
  readonly ObjectPathId: number;
  readonly ArgumentInfo?: ArgumentInfo;
}

interface ArgumentInfo {
  readonly Arguments?: readonly unknown[];
  /** Beside each argument that is an object itself, the id of its path. */
  readonly ReferencedObjectPathIds?: readonly number[];
}

interface ObjectPath {
  readonly ObjectPathType: number;
  readonly Name: string;
  readonly ParentObjectPathId?: number;
  readonly ArgumentInfo?: ArgumentInfo;
}

interface HostAnswer {
  readonly Results: readonly { readonly ActionId: number; readonly Value: unknown }[];
  readonly Error: { readonly Code: string; readonly Message: string; readonly Location: string } | null;
}

const action = { instantiate: 1, query: 2, method: 3, setProperty: 4 };
const path = { root: 1, method: 3, property: 4, indexer: 5, reference: 6 };

/** A workbook that answers Excel.run from a script: objects stand under the way they are reached from the workbook. */
export class ScriptedWorkbook {
  /** What was done to it: methods called and properties set, each with the object it was done to. */
  readonly done: string[] = [];
  batches = 0;
  /** When set, the workbook refuses everything with this code. */
  refusal: string | undefined;
  /** When set, the workbook refuses what it is asked to do in these words, and all that follows in that batch. */
  stumbles: RegExp | undefined;

  /** By way ("GetActiveCell()", "Worksheets[Log].GetRange(B2)"): an object's properties, or null where there is no such object. */
  constructor(readonly objects: Readonly<Record<string, object | null>>) {}

  answer({ Actions = [], ObjectPaths = {} }: Batch): HostAnswer {
    this.batches++;
    if (this.refusal) return refused(this.refusal);
    const Results: { ActionId: number; Value: unknown }[] = [];
    for (const { Id, ActionType, Name, ObjectPathId, ArgumentInfo } of Actions) {
      const way = wayTo(ObjectPathId, ObjectPaths);
      const given = givenTo(ArgumentInfo, ObjectPaths, JSON.stringify).join(",");
      const isCall = ActionType === action.method && !/^_(Keep|Remove)Reference$/.test(Name);
      const words = isCall ? `${way}.${Name}(${given})` : `${way}.${Name} = ${given}`;
      if (isCall || ActionType === action.setProperty) {
        if (this.stumbles?.test(words)) return refused("InvalidArgument");
        this.done.push(words);
      }
      const object = this.objects[way];
      if (ActionType === action.query && object === undefined) return refused("ItemNotFound");
      const Value = object === null ? null : { ...object, _ReferenceId: way };
      const isAsked = ActionType === action.instantiate || ActionType === action.query;
      Results.push({ ActionId: Id, Value: isAsked ? Value : null });
    }
    return { Results, Error: null };
  }
}

const refused = (Code: string): HostAnswer => ({
  Results: [],
  Error: { Code, Message: `refused with ${Code}`, Location: "" },
});

const wayTo = (id: number, paths: Readonly<Record<string, ObjectPath>>): string => {
  const here = paths[id];
  if (!here || here.ObjectPathType === path.root) return "";
  // An object kept from an earlier batch is named by the way that was given for it then.
  if (here.ObjectPathType === path.reference) return here.Name;
  const parent = here.ParentObjectPathId === undefined ? "" : wayTo(here.ParentObjectPathId, paths);
  const given = givenTo(here.ArgumentInfo, paths, (argument) => String(argument ?? "")).join(",");
  if (here.ObjectPathType === path.indexer) return `${parent}[${given}]`;
  const step = here.ObjectPathType === path.method ? `${here.Name}(${given})` : here.Name;
  return parent ? `${parent}.${step}` : step;
};

/** The arguments of a method in words; an object by the way that leads to it. */
const givenTo = (
  info: ArgumentInfo | undefined,
  paths: Readonly<Record<string, ObjectPath>>,
  say: (argument: unknown) => string,
): readonly string[] =>
  (info?.Arguments ?? []).map((argument, i) => {
    const id = info?.ReferencedObjectPathIds?.[i];
    return id ? wayTo(id, paths) : say(argument);
  });
