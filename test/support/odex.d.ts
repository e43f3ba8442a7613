// What the tests use of odex. The package ships its source in place of declarations, and that does not compile as
// strictly as ours; tsconfig.json points here.

type Derivative = (x: number, y: number[]) => number[];

export class Solver {
  constructor(dimensions: number);
  absoluteTolerance: number | number[];
  relativeTolerance: number | number[];
  initialStepSize: number;
  maxStepSize: number;
  maxSteps: number;
  denseOutput: boolean;
  solve(
    derivative: Derivative,
    x: number,
    y: number[],
    xEnd: number,
    output?: (step: number, xOld: number, x: number, y: number[]) => boolean | undefined,
  ): { y: number[]; outcome: number; nStep: number; xEnd: number };
}
