import type { AnyDefinition } from "../definition/define";
import contactLimit from "./contact.limit";
import contactOhms from "./contact.ohms";
import contactShare from "./contact.share";
import contactSpread from "./contact.spread";
import contactTerminal from "./contact.terminal";
import contactWatts from "./contact.watts";
import enclosureTotal from "./enclosure.total";
import enclosureWatts from "./enclosure.watts";
import inrushPeak from "./inrush.peak";

/** Every sheet function, room by room, in the order a person meets them. */
export const catalogue: readonly AnyDefinition[] = [
  contactWatts,
  contactOhms,
  contactLimit,
  contactShare,
  contactSpread,
  contactTerminal,
  inrushPeak,
  enclosureWatts,
  enclosureTotal,
];
