import { yours } from "../looks";
import { lessonSheet, table } from "./lesson";

type Input = "height" | "width" | "depth" | "mounting" | "room" | "rating";

export const warmPanel = lessonSheet<Input>({
  name: "7 A warm panel",
  title: "7   A warm panel",
  question:
    "A breaker makes three watts or so. There are twelve of them behind a closed door. How warm does it get in there, and what does that do to them?",
  inputs: {
    height: { label: "Height, m", value: 0.6, remark: "outside" },
    width: { label: "Width, m", value: 0.4 },
    depth: { label: "Depth, m", value: 0.15 },
    mounting: { label: "Mounting", value: "wall", remark: "its back to the wall; or free", words: ["wall", "free"] },
    room: { label: "Room, °C", value: 30 },
    rating: { label: "Rating, A", value: 20, remark: "of the breakers inside" },
  },
  tables: [
    table<Input, readonly [loss: number, load: number]>(
      [
        [3.2, 20],
        [3.2, 10],
        [3.2, 5],
      ],
      (down, { cell }) => [
        { heading: "Loss at rating, W", width: 22, format: "0.0", typed: ([loss]) => loss, look: yours },
        { heading: "Load, A", width: 14, typed: ([, load]) => load, look: yours },
        {
          heading: "Its heat, W",
          width: 14,
          format: "0.00",
          formula: `=BIMETAL.ENCLOSURE.WATTS(${down("A")},${cell.rating},${down("B")})`,
        },
      ],
    ),
    table<Input, number>([9.6, 38.4, 60], (down, { cell }) => [
      { heading: "All heat inside, W", width: 22, format: "0.0", typed: (watts) => watts, look: yours },
      {
        heading: "Warmer by, K",
        width: 14,
        format: "0.0",
        formula: `=BIMETAL.ENCLOSURE.RISE(${down("A")},${cell.height},${cell.width},${cell.depth},${cell.mounting},"balance",,${cell.room})`,
      },
      { heading: "at the top, K", width: 14, format: "0.0", answers: true },
      { heading: "Inside, °C", width: 14, format: "0.0", formula: `=${cell.room}+${down("B")}` },
      {
        heading: "Rating there, A",
        width: 16,
        format: "0.0",
        formula: `=BIMETAL.TRIP.RERATED(${cell.rating},${down("D")})`,
      },
    ]),
  ],
  says: [
    "The heat goes with the square of the load: half loaded a breaker makes a quarter. Twelve of them at half load make 9.6 W, at full load 38.4 W; the last line adds a supply and two contactors. What is made inside must leave through the walls, so the air inside warms until they pass it on: by moving air and, more than half of it, by radiation.",
    "Four times the heat is less than four times the rise, because warm walls pass more. The strip feels the air inside, not the room: the 20 A breaker of the last line behaves like one of sixteen and a half.",
  ],
  changes: ({ cell, tables: [, heats] }) => [
    [
      `Ask first: does a cabinet that stands free help much? Then type free into ${cell.mounting}.`,
      "Look for: the back is a wall that passes heat too.",
    ],
    [`Make the depth ${cell.depth} 0.3.`, "Look for: more wall and more roof, less rise."],
    [`Make A${heats?.bottom} 90.`, "Look for: the air is beyond what the re-rating answers for, and it says so."],
  ],
  mind: "The air under the roof, and a breaker between loaded neighbours, are hotter than this one number. The rating there is where the strip's edge moves, never a permitted load. An estimate verifies nothing; a thermometer inside the loaded board shows what the air really is. Looking into a live board is for those who are allowed to.",
  explains: ({ cell, tables: [, heats] }) =>
    `"ENCLOSURE.RISE",A${heats?.bottom},${cell.height},${cell.width},${cell.depth},${cell.mounting},"balance",,${cell.room}`,
});
