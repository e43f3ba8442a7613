import type { AnyDefinition } from "../definition/define";

/** What each room of the functions is about. */
const about: Record<string, string> = {
  TRIP: "What a sound breaker may do",
  THERMAL: "One breaker's own bimetal",
  CONTACT: "Drop, watts and resistance of a pole",
  INRUSH: "Motor and transformer starts",
  ENCLOSURE: "Heat in a board",
  BENCH: "Setting up a test",
  METER: "How sure a reading is",
  "": "Explanations in cells",
};

export interface Room {
  /** "TRIP"; "" for the functions without a room. */
  readonly name: string;
  readonly about: string;
  readonly functions: readonly AnyDefinition[];
}

/** The catalogue room by room, in its own order. */
export const roomsOf = (catalogue: readonly AnyDefinition[]): Room[] => {
  const rooms = new Map<string, AnyDefinition[]>();
  for (const definition of catalogue) {
    const name = definition.name.includes(".") ? (definition.name.split(".")[0] as string) : "";
    rooms.set(name, [...(rooms.get(name) ?? []), definition]);
  }
  return [...rooms].map(([name, functions]) => ({ name, about: about[name] ?? name, functions }));
};
