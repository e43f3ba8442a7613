// What the formulas of panel-estimate.xlsx must answer, from what is typed in it.

import { balanced, flat, tabled } from "./cabinet.mjs";
import { cellsOf, linesOf } from "./workbook.mjs";

/** The square-root law of a strip that trips 80 K above its calibration at 30 °C (B, C and D). */
export const rerated = (rating, air) => rating * Math.sqrt((110 - air) / 80);

const wayOf = (line) => ({
  way: line.Way,
  rating: line["Rating, A"],
  load: line["Load, A"] ?? 0,
  full: line["Rated loss, W"] * line.Poles,
});

/** Joule: the loss goes with the square of the current. */
const lossOf = ({ full, rating, load }, part = 1) => full * ((part * load) / rating) ** 2;
const heatOf = (ways, other, part = 1) => ways.reduce((sum, way) => sum + lossOf(way, part), other);

const boardAnswers = (ways, { other, room, cabinet }) => {
  const watts = heatOf(ways, other);
  const inside = room + balanced(cabinet, watts, room);
  // The way with the least to spare is the one that carries the largest part of its rating.
  const fullest = ways.reduce((most, way) => (way.load / way.rating > most.load / most.rating ? way : most));
  return ways.map((way, i) => {
    const { rating, load } = way;
    const left = rerated(rating, inside);
    const note =
      way === fullest
        ? `first below margin 1, at ${Number((30 + 80 * (1 - (load / rating) ** 2)).toPrecision(4))} °C inside`
        : left < load
          ? "below margin 1"
          : "";
    return {
      Way: way.way,
      "Loss, W": lossOf(way),
      "Re-rated, A": left,
      Margin: load ? left / load : "no load",
      Continuous: load ? (0.8 * Math.min(rating, left)) / load : "no load",
      "All heat, W": i === 0 ? watts : "",
      "Inside, °C": i === 0 ? inside : "",
      Note: note,
    };
  });
};

const dayAnswers = (day, ways, { other, cabinet }) => {
  const { "Room, °C": room, "Part of load": part } = day;
  const watts = heatOf(ways, other, part);
  const rise = balanced(cabinet, watts, room);
  const kiln = ways.find(({ way }) => way === 12);
  const load = part * kiln.load;
  const left = rerated(kiln.rating, room + rise);
  // For ever it need carry only its rating, moved with the air (the hold test at 1.13 × ends after an hour); from 1.45 × on it must
  // trip; the magnet of a C is far off.
  const does =
    load <= Math.min(kiln.rating, left) ? "holds" : load < 1.45 * left ? "may hold or trip" : "trips, thermal";

  return {
    Afternoon: day.Afternoon,
    "All heat, W": watts,
    "Largest way, W": Math.max(...ways.map((way) => lossOf(way, part))),
    "Rise, K": rise,
    "At the top, K": "not known",
    "Inside, °C": room + rise,
    "Kiln's load, A": load,
    "Re-rated, A": left,
    Margin: left / load,
    "What its breaker does": does,
  };
};

export const panelEstimate = async () => {
  const file = "panel-estimate.xlsx";
  const [height, width, depth, other, room] = await cellsOf(file, "Board", ["B2", "B3", "B4", "B6", "B7"]);
  const cabinet = { height, width, depth };
  const ways = (await linesOf(file, "Board", "Way")).map(wayOf);
  const week = (await linesOf(file, "Week", "Afternoon")).map((day) => dayAnswers(day, ways, { other, cabinet }));
  const hottest = heatOf(ways, other);
  const tables = tabled(cabinet, hottest);
  return {
    "panel-estimate.expected.csv": boardAnswers(ways, { other, room, cabinet }),
    "panel-estimate.week.expected.csv": week,
    "panel-estimate.methods.expected.csv": [
      { Method: "balance", "Middle, K": balanced(cabinet, hottest, room), "Top, K": "not known" },
      { Method: "IEC TR 60890", "Middle, K": tables.middle, "Top, K": tables.top },
      { Method: "flat", "Middle, K": flat(cabinet, hottest), "Top, K": "not known" },
    ],
  };
};
