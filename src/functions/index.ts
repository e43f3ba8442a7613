import type { AnyDefinition } from "../definition/define";
import contactLimit from "./contact.limit";
import contactOhms from "./contact.ohms";
import contactShare from "./contact.share";
import contactSpread from "./contact.spread";
import contactTerminal from "./contact.terminal";
import contactWatts from "./contact.watts";
import enclosureArea from "./enclosure.area";
import enclosureDissipates from "./enclosure.dissipates";
import enclosureDiversity from "./enclosure.diversity";
import enclosureRise from "./enclosure.rise";
import enclosureTotal from "./enclosure.total";
import enclosureWatts from "./enclosure.watts";
import enclosureWire from "./enclosure.wire";
import explain from "./explain";
import inrushCeiling from "./inrush.ceiling";
import inrushLocked from "./inrush.locked";
import inrushMargin from "./inrush.margin";
import inrushMotor from "./inrush.motor";
import inrushPeak from "./inrush.peak";
import inrushTransformer from "./inrush.transformer";
import thermalProfile from "./thermal.profile";
import thermalRamp from "./thermal.ramp";
import thermalRest from "./thermal.rest";
import thermalState from "./thermal.state";
import thermalTime from "./thermal.time";
import tripCharacteristics from "./trip.characteristics";
import tripRange from "./trip.range";
import tripRegion from "./trip.region";
import tripVerdict from "./trip.verdict";

const rooms: readonly AnyDefinition[] = [
  tripRange,
  tripRegion,
  tripVerdict,
  tripCharacteristics,
  thermalTime,
  thermalState,
  thermalProfile,
  thermalRamp,
  thermalRest,
  contactWatts,
  contactOhms,
  contactLimit,
  contactShare,
  contactSpread,
  contactTerminal,
  inrushMotor,
  inrushLocked,
  inrushPeak,
  inrushMargin,
  inrushCeiling,
  inrushTransformer,
  enclosureWatts,
  enclosureTotal,
  enclosureArea,
  enclosureRise,
  enclosureDissipates,
  enclosureDiversity,
  enclosureWire,
];

/** Every sheet function, room by room, in the order a person meets them; EXPLAIN, which explains the others, last. */
export const catalogue: readonly AnyDefinition[] = [...rooms, explain(rooms)];
