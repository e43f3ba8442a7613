import type { AnyDefinition } from "../definition/define";
import contactWatts from "./contact.watts";
import enclosureTotal from "./enclosure.total";
import enclosureWatts from "./enclosure.watts";

/** Every sheet function, room by room, in the order a person meets them. */
export const catalogue: readonly AnyDefinition[] = [contactWatts, enclosureWatts, enclosureTotal];
