import type { AnyDefinition } from "../definition/define";
import contactLimit from "./contact.limit";
import contactOhms from "./contact.ohms";
import contactShare from "./contact.share";
import contactSpread from "./contact.spread";
import contactTerminal from "./contact.terminal";
import contactWatts from "./contact.watts";
import enclosureTotal from "./enclosure.total";
import enclosureWatts from "./enclosure.watts";
import explain from "./explain";
import inrushPeak from "./inrush.peak";
import tripCharacteristics from "./trip.characteristics";
import tripRange from "./trip.range";
import tripRegion from "./trip.region";
import tripVerdict from "./trip.verdict";

const rooms: readonly AnyDefinition[] = [
  tripRange,
  tripRegion,
  tripVerdict,
  tripCharacteristics,
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

/** Every sheet function, room by room, in the order a person meets them; EXPLAIN, which explains the others, last. */
export const catalogue: readonly AnyDefinition[] = [...rooms, explain(rooms)];
