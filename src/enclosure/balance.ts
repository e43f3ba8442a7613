import { NoAnswer } from "../metrology/no-answer";
import { root } from "../metrology/root";
import { sayNumber } from "../metrology/say";
import { hottestAir } from "./air";
import { type Cabinet, type Face, facesOf } from "./cabinet";
import { convectiveFlux, type Facing } from "./convection";
import { facingEmissivity, radiantFlux } from "./radiation";

/** Air in the enclosure and the room around it, °C, and the emissivity of all surfaces. */
interface Surroundings {
  readonly inside: number;
  readonly room: number;
  readonly emissivity: number;
}

/** A face that passes heat, settled. */
export interface WarmFace extends Face {
  /** °C, the same on both sides of the sheet. */
  readonly wall: number;
  readonly watts: number;
  readonly convectedOutside: number;
  readonly radiatedOutside: number;
}

interface Shape {
  readonly facing: Facing;
  readonly length: number;
}

/** Heat into the wall from the air and the contents, W/m². The contents radiate at the temperature of the air. */
const fluxIn = ({ facing, length }: Shape, wall: number, { inside, emissivity }: Surroundings): number =>
  radiantFlux(facingEmissivity(emissivity), { from: inside, to: wall }) -
  convectiveFlux({ facing, length, surface: wall, air: inside });

/** Heat from the wall to the room, W/m². */
const fluxOut = ({ facing, length }: Shape, wall: number, { room, emissivity }: Surroundings): number =>
  convectiveFlux({ facing, length, surface: wall, air: room }) + radiantFlux(emissivity, { from: wall, to: room });

/** Where a face settles: as much comes in as goes out, to the last digits. °C */
const wallTemperature = (shape: Shape, around: Surroundings): number => {
  const { inside, room } = around;
  if (inside <= room) return room;
  const above = (rise: number) => fluxIn(shape, room + rise, around) - fluxOut(shape, room + rise, around);
  return room + root(above, 0, inside - room);
};

/**
 * The faces that pass heat while the air inside has one temperature. Covered faces and the floor pass none.
 * Under the roof the air meets a cold plate from below, which is the plate hot side up turned over.
 */
export const warmFaces = (cabinet: Cabinet, around: Surroundings): readonly WarmFace[] => {
  const { height, width, depth } = cabinet;
  const upright: Shape = { facing: "vertical", length: height };
  const level: Shape = { facing: "hot up", length: (width * depth) / (2 * (width + depth)) };
  const settle = (shape: Shape) => {
    const wall = wallTemperature(shape, around);
    const convected = convectiveFlux({ ...shape, surface: wall, air: around.room });
    return { wall, convected, radiated: radiantFlux(around.emissivity, { from: wall, to: around.room }) };
  };
  // Every upright face has the same height, so they settle alike.
  const side = settle(upright);
  const roof = settle(level);
  return facesOf(cabinet)
    .filter(({ covered }) => !covered)
    .map((face) => {
      const { wall, convected, radiated } = face.name === "roof" ? roof : side;
      return {
        ...face,
        wall,
        watts: face.area * (convected + radiated),
        convectedOutside: face.area * convected,
        radiatedOutside: face.area * radiated,
      };
    });
};

/** Heat that the enclosure passes while its air has one temperature, W. */
export const balanceWatts = (cabinet: Cabinet, around: Surroundings): number =>
  warmFaces(cabinet, around).reduce((sum, { watts }) => sum + watts, 0);

/**
 * Rise of the air inside above the room, K, at which the faces pass just the heat given.
 * Throws NoAnswer where the air would be hotter than the table of air goes.
 */
export const balanceRise = (
  cabinet: Cabinet,
  watts: number,
  { room, emissivity }: Omit<Surroundings, "inside">,
): number => {
  if (watts === 0) return 0;
  const passed = (rise: number) => balanceWatts(cabinet, { inside: room + rise, room, emissivity });
  const most = hottestAir - room;
  const atMost = passed(most);
  if (atMost < watts)
    throw new NoAnswer(
      `watts: with ${sayNumber(watts)} W the air inside would be above ${hottestAir} °C, where the table of air ends; this enclosure passes ${sayNumber(atMost)} W at that.`,
    );
  return root((rise) => passed(rise) - watts, 0, most);
};
