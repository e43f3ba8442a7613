// The error function by W. J. Cody's rational approximations (Math. Comp. 23 (1969) 631; the coefficients of CALERF),
// the quantile by Wichura's AS 241 (Appl. Statist. 37 (1988) 477, PPND16). Both checked against a table of
// 25 digits. The coefficients stand here as the nearest doubles.

const near = [
  [0.18577770618460315, 3.1611237438705655, 113.86415415105016, 377.485237685302, 3209.3775891384694],
  [1, 23.601290952344122, 244.02463793444417, 1282.6165260773723, 2844.236833439171],
] as const;
const middle = [
  [
    2.1531153547440383e-8, 0.5641884969886701, 8.883149794388377, 66.11919063714163, 298.6351381974001,
    881.952221241769, 1712.0476126340707, 2051.0783778260716, 1230.3393547979972,
  ],
  [
    1, 15.744926110709835, 117.6939508913125, 537.1811018620099, 1621.3895745666903, 3290.7992357334597,
    4362.619090143247, 3439.3676741437216, 1230.3393548037495,
  ],
] as const;
const far = [
  [
    0.016315387137302097, 0.30532663496123236, 0.36034489994980445, 0.12578172611122926, 0.016083785148742275,
    0.0006587491615298378,
  ],
  [1, 2.568520192289822, 1.8729528499234673, 0.5279051029514285, 0.06051834131244132, 0.0023352049762686918],
] as const;

/** Highest power first. */
const polynomial = (coefficients: readonly number[], x: number): number => {
  let sum = 0;
  for (const coefficient of coefficients) sum = sum * x + coefficient;
  return sum;
};
const ratio = ([above, below]: readonly [readonly number[], readonly number[]], x: number): number =>
  polynomial(above, x) / polynomial(below, x);

/** exp(y²)·erfc(y), y ≥ 0.46875. */
const scaledErfc = (y: number): number => {
  if (y <= 4) return ratio(middle, y);
  const z = 1 / (y * y);
  return (1 / Math.sqrt(Math.PI) - z * ratio(far, z)) / y;
};

/** exp(z²/2)·Φ(−z), z ≥ 0.67: the tail without the factor that underflows. */
const scaledTail = (z: number): number => scaledErfc(z * Math.SQRT1_2) / 2;

/** exp(−z²/2); z² is taken in two parts, or its rounding would show a hundredfold far out. */
const bell = (z: number): number => {
  if (Math.abs(z) > 40) return 0; // also where z is infinite
  const coarse = Math.trunc(z * 16) / 16;
  return Math.exp((-coarse * coarse) / 2) * Math.exp((-(z - coarse) * (z + coarse)) / 2);
};

/** Inside this |z| the central series is used. */
const core = 0.66291;
/** Φ(z) − ½ for |z| ≤ 0.66. */
const beyondHalf = (z: number): number => z * Math.SQRT1_2 * 0.5 * ratio(near, (z * z) / 2);

/** Normal distribution: the probability to lie below z standard deviations. Relative error below 2e-13 down to 1e-307. */
export const normalCdf = (z: number): number => {
  if (Math.abs(z) <= core) return 0.5 + beyondHalf(z);
  const tail = scaledTail(Math.abs(z)) * bell(z);
  return z < 0 ? tail : 1 - tail;
};

/** ln Φ(z), also where Φ itself is too small for a double: trials that held far beyond their median time need it. */
export const lnNormalCdf = (z: number): number => {
  if (z < -core) return Math.log(scaledTail(-z)) - (z * z) / 2;
  return z <= core ? Math.log(0.5 + beyondHalf(z)) : Math.log1p(-scaledTail(z) * bell(z));
};

/** φ(z)/Φ(z), the derivative of ln Φ(z). */
export const normalSlope = (z: number): number => {
  if (z < -core) return 1 / (Math.sqrt(2 * Math.PI) * scaledTail(-z));
  const height = bell(z);
  return height / (Math.sqrt(2 * Math.PI) * (z <= core ? 0.5 + beyondHalf(z) : 1 - scaledTail(z) * height));
};

const inner = [
  [
    2509.0809287301227, 33430.57558358813, 67265.7709270087, 45921.95393154987, 13731.69376550946, 1971.5909503065513,
    133.14166789178438, 3.3871328727963665,
  ],
  [
    5226.495278852854, 28729.085735721943, 39307.89580009271, 21213.794301586597, 5394.196021424751, 687.1870074920579,
    42.31333070160091, 1,
  ],
] as const;
const outer = [
  [
    0.0007745450142783414, 0.022723844989269184, 0.2417807251774506, 1.2704582524523684, 3.6478483247632045,
    5.769497221460691, 4.630337846156546, 1.4234371107496835,
  ],
  [
    1.0507500716444169e-9, 0.0005475938084995345, 0.015198666563616457, 0.14810397642748008, 0.6897673349851,
    1.6763848301838038, 2.053191626637759, 1,
  ],
] as const;
const extreme = [
  [
    2.0103343992922881e-7, 0.000027115555687434876, 0.0012426609473880784, 0.026532189526576124, 0.29656057182850487,
    1.7848265399172913, 5.463784911164114, 6.657904643501103,
  ],
  [
    2.0442631033899397e-15, 1.421511758316446e-7, 0.000018463183175100548, 0.0007868691311456133, 0.014875361290850615,
    0.1369298809227358, 0.599832206555888, 1,
  ],
] as const;

/** The z below which a share p of the normal distribution lies, 0 < p < 1; ∓∞ at the ends. */
export const normalQuantile = (p: number): number => {
  if (!(p > 0 && p < 1)) return p === 0 ? -Infinity : p === 1 ? Infinity : Number.NaN;
  const q = p - 0.5;
  if (Math.abs(q) <= 0.425) return q * ratio(inner, 0.180625 - q * q);
  const r = Math.sqrt(-Math.log(Math.min(p, 1 - p)));
  return Math.sign(q) * (r <= 5 ? ratio(outer, r - 1.6) : ratio(extreme, r - 5));
};
