import type { AnyDefinition } from "../definition/define";
import benchInsulation from "./bench.insulation";
import benchLead from "./bench.lead";
import benchPlan from "./bench.plan";
import benchSource from "./bench.source";
import benchSummary from "./bench.summary";
import benchWire from "./bench.wire";
import contactLimit from "./contact.limit";
import contactOhms from "./contact.ohms";
import contactShare from "./contact.share";
import contactSpread from "./contact.spread";
import contactTerminal from "./contact.terminal";
import contactWatts from "./contact.watts";
import enclosureArea from "./enclosure.area";
import enclosureDissipates from "./enclosure.dissipates";
import enclosureDiversity from "./enclosure.diversity";
import enclosurePanel from "./enclosure.panel";
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
import inrushRating from "./inrush.rating";
import inrushStarts from "./inrush.starts";
import inrushTransformer from "./inrush.transformer";
import meterConforms from "./meter.conforms";
import meterError from "./meter.error";
import meterOhms from "./meter.ohms";
import meterRepeats from "./meter.repeats";
import meterTurns from "./meter.turns";
import meterWatts from "./meter.watts";
import thermalCompare from "./thermal.compare";
import thermalFit from "./thermal.fit";
import thermalForecast from "./thermal.forecast";
import thermalHolds from "./thermal.holds";
import thermalProfile from "./thermal.profile";
import thermalRamp from "./thermal.ramp";
import thermalRest from "./thermal.rest";
import thermalState from "./thermal.state";
import thermalTime from "./thermal.time";
import tripCharacteristics from "./trip.characteristics";
import tripCurrent from "./trip.current";
import tripCurve from "./trip.curve";
import tripFieldlimit from "./trip.fieldlimit";
import tripMagnetic from "./trip.magnetic";
import tripRamp from "./trip.ramp";
import tripRange from "./trip.range";
import tripRegion from "./trip.region";
import tripRerated from "./trip.rerated";
import tripStandard from "./trip.standard";
import tripVerdict from "./trip.verdict";

const rooms: readonly AnyDefinition[] = [
  tripRange,
  tripRegion,
  tripCurrent,
  tripMagnetic,
  tripVerdict,
  tripRamp,
  tripCurve,
  tripFieldlimit,
  tripRerated,
  tripStandard,
  tripCharacteristics,
  thermalTime,
  thermalState,
  thermalProfile,
  thermalRamp,
  thermalRest,
  thermalFit,
  thermalForecast,
  thermalHolds,
  thermalCompare,
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
  inrushRating,
  inrushCeiling,
  inrushTransformer,
  inrushStarts,
  enclosureWatts,
  enclosureTotal,
  enclosureArea,
  enclosureRise,
  enclosureDissipates,
  enclosureDiversity,
  enclosurePanel,
  enclosureWire,
  benchPlan,
  benchSource,
  benchLead,
  benchWire,
  benchInsulation,
  benchSummary,
  meterError,
  meterRepeats,
  meterWatts,
  meterOhms,
  meterConforms,
  meterTurns,
];

/** Every sheet function, room by room, in the order a person meets them; EXPLAIN, which explains the others, last. */
export const catalogue: readonly AnyDefinition[] = [...rooms, explain(rooms)];
