// The air inside a closed cabinet on a wall, worked out a second time: textbook correlations, air read between the rows of the
// printed table, unknowns found by halving. Nothing is taken from src.

/** Dry air at one atmosphere, °C: W/mK, 1e-5 m²/s, Prandtl. Çengel, Heat Transfer, Table A-15 (from memory). */
const airTable = [
  [20, 0.02514, 1.516, 0.7309],
  [25, 0.02551, 1.562, 0.7296],
  [30, 0.02588, 1.608, 0.7282],
  [35, 0.02625, 1.655, 0.7268],
  [40, 0.02662, 1.702, 0.7255],
  [45, 0.02699, 1.75, 0.7241],
  [50, 0.02735, 1.798, 0.7228],
  [60, 0.02808, 1.896, 0.7202],
  [70, 0.02881, 1.995, 0.7177],
];

const airAt = (temperature) => {
  const above = airTable.findIndex(([at]) => at >= temperature);
  const [low, high] = [airTable[above - 1], airTable[above]];
  const part = (temperature - low[0]) / (high[0] - low[0]);
  const [conductivity, viscosity, prandtl] = [1, 2, 3].map((i) => low[i] + part * (high[i] - low[i]));
  return { conductivity, viscosity: 1e-5 * viscosity, prandtl };
};

/** W/m² from a plate to the air. Upright: Churchill and Chu for all Rayleigh numbers. Level, hot side up: the larger of the two laws. */
const convected = ({ upright, length, plate, air }) => {
  const { conductivity, viscosity, prandtl } = airAt((plate + air) / 2);
  const expansion = 1 / ((plate + air) / 2 + 273.15);
  const ra = (9.80665 * expansion * Math.abs(plate - air) * length ** 3 * prandtl) / viscosity ** 2;
  const nusselt = upright
    ? (0.825 + (0.387 * ra ** (1 / 6)) / (1 + (0.492 / prandtl) ** (9 / 16)) ** (8 / 27)) ** 2
    : Math.max(0.54 * ra ** (1 / 4), 0.15 * ra ** (1 / 3));
  return (nusselt * conductivity * (plate - air)) / length;
};

const radiated = (emissivity, from, to) => emissivity * 5.670374e-8 * ((from + 273.15) ** 4 - (to + 273.15) ** 4);

/** Where `rising` passes zero. */
const halved = (rising, low, high) => {
  let [a, b] = [low, high];
  for (let i = 0; i < 100; i++) {
    const middle = (a + b) / 2;
    if (rising(middle) < 0) a = middle;
    else b = middle;
  }
  return (a + b) / 2;
};

/** W that a square metre of wall passes: as much comes to it from inside as leaves it outside. Paint: emissivity 0.9. */
const passed = (face, inside, room) => {
  const out = (wall) => convected({ ...face, plate: wall, air: room }) + radiated(0.9, wall, room);
  const into = (wall) => convected({ ...face, plate: inside, air: wall }) + radiated(1 / (2 / 0.9 - 1), inside, wall);
  const wall = halved((temperature) => out(temperature) - into(temperature), room + 1e-9, inside);
  return out(wall);
};

/** Kelvin of the air inside above the room, by the balance: front, two sides and roof pass heat; back and floor do not. */
export const balanced = ({ height, width, depth }, watts, room) => {
  const sides = { area: height * (width + 2 * depth), upright: true, length: height };
  const roof = { area: width * depth, upright: false, length: (width * depth) / (2 * (width + depth)) };
  const heat = (rise) => [sides, roof].reduce((sum, face) => sum + face.area * passed(face, room + rise, room), 0);
  return halved((rise) => heat(rise) - watts, 1e-3, 50);
};

/** m²: roof 1.4, front and sides 0.9, back on the wall 0.5, floor 0 (IEC TR 60890). */
const effectiveArea = ({ height, width, depth }) =>
  1.4 * width * depth + 0.9 * height * (width + 2 * depth) + 0.5 * height * width;

/** The hand estimate of 5.5 W/m²K. */
export const flat = (cabinet, watts) => watts / (5.5 * effectiveArea(cabinet));

/**
 * IEC TR 60890 (tables from memory), typed here only as far as this cabinet reaches: k between 0.524 at 1.25 m² and 0.450 at 1.5 m²;
 * the curve for an enclosure alone on a wall between 1.535 and 1.549, at 10.5 and 11.0 of height to the 1.35 ÷ floor area.
 */
export const tabled = (cabinet, watts) => {
  const { height, width, depth } = cabinet;
  const k = between([1.25, 0.524], [1.5, 0.45], effectiveArea(cabinet));
  const middle = k * watts ** 0.804;
  return { middle, top: middle * between([10.5, 1.535], [11, 1.549], height ** 1.35 / (width * depth)) };
};

const between = ([x0, y0], [x1, y1], x) => {
  if (x < x0 || x > x1) throw new Error(`The cabinet has outgrown the rows typed here: ${x} is not in ${x0} to ${x1}.`);
  return y0 + ((y1 - y0) * (x - x0)) / (x1 - x0);
};
