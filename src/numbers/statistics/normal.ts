const ROOT_TWO_PI = Math.sqrt(2 * Math.PI)

/** Density of the standard normal distribution at `x`. */
export function normalPdf(x: number): number {
  return Math.exp(-0.5 * x * x) / ROOT_TWO_PI
}

/**
 * Probability that a standard normal variable is at most `x`, good to 2e-15, and to a
 * relative 1e-15 in the lower tail down to x = −30.
 * Rational approximations of the error function by W. J. Cody, Mathematics of Computation 23 (1969) 631–637.
 */
export function normalCdf(x: number): number {
  const z = x / Math.SQRT2
  const size = Math.abs(z)
  if (size <= 0.46875) return 0.5 + 0.5 * z * ratio(z * z, ERF_TOP, ERF_BOTTOM)
  const tail = 0.5 * upperError(Math.abs(x))
  return z < 0 ? tail : 1 - tail
}

/**
 * The `x` below which a standard normal variable lies with probability `p`; −Infinity at 0, Infinity at 1, NaN
 * outside. Relative accuracy about 1e-15: algorithm AS 241, M. J. Wichura, Applied Statistics 37 (1988) 477–484.
 */
export function normalQuantile(p: number): number {
  if (!(p >= 0 && p <= 1)) return Number.NaN
  const fromMiddle = p - 0.5
  if (Math.abs(fromMiddle) <= 0.425) {
    return fromMiddle * ratio(0.180625 - fromMiddle * fromMiddle, CENTRE_TOP, CENTRE_BOTTOM)
  }
  const tail = Math.min(p, 1 - p)
  if (tail === 0) return fromMiddle < 0 ? -Infinity : Infinity
  const r = Math.sqrt(-Math.log(tail))
  const size = r <= 5 ? ratio(r - 1.6, MIDDLE_TOP, MIDDLE_BOTTOM) : ratio(r - 5, FAR_TOP, FAR_BOTTOM)
  return fromMiddle < 0 ? -size : size
}

// Complement of the error function at x / √2, for x above 0.66.
function upperError(x: number): number {
  // Rounding x² would cost digits of exp(−x²/2) far out: split it into a part without rounding and a small rest.
  const coarse = Math.trunc(x * 16) / 16
  const scale = Math.exp(-0.5 * coarse * coarse) * Math.exp(-0.5 * (x - coarse) * (x + coarse))
  const z = x / Math.SQRT2
  if (z <= 4) return scale * ratio(z, UPPER_TOP, UPPER_BOTTOM)
  const inverse = 1 / (z * z)
  return (scale * (1 / Math.sqrt(Math.PI) - inverse * ratio(inverse, OUTER_TOP, OUTER_BOTTOM))) / z
}

// Coefficients stand lowest power first.
function ratio(x: number, top: readonly number[], bottom: readonly number[]): number {
  let above = 0
  for (let i = top.length - 1; i >= 0; i--) above = above * x + (top[i] as number)
  let below = 0
  for (let i = bottom.length - 1; i >= 0; i--) below = below * x + (bottom[i] as number)
  return above / below
}

const ERF_TOP = [
  3209.3775891384694, 377.485237685302, 113.86415415105016, 3.1611237438705655, 0.18577770618460315,
]
const ERF_BOTTOM = [2844.236833439171, 1282.6165260773723, 244.02463793444417, 23.601290952344122, 1]
const UPPER_TOP = [
  1230.3393547979972, 2051.0783778260716, 1712.0476126340707, 881.952221241769, 298.6351381974001,
  66.11919063714163, 8.883149794388377, 0.5641884969886701, 2.1531153547440383e-8,
]
const UPPER_BOTTOM = [
  1230.3393548037495, 3439.3676741437216, 4362.619090143247, 3290.7992357334597, 1621.3895745666903,
  537.1811018620099, 117.6939508913125, 15.744926110709835, 1,
]
const OUTER_TOP = [
  0.0006587491615298378, 0.016083785148742275, 0.12578172611122926, 0.36034489994980445, 0.30532663496123236,
  0.016315387137302097,
]
const OUTER_BOTTOM = [
  0.0023352049762686918, 0.06051834131244132, 0.5279051029514285, 1.8729528499234604, 2.568520192289822, 1,
]
const CENTRE_TOP = [
  3.3871328727963665, 133.14166789178438, 1971.5909503065513, 13731.69376550946, 45921.95393154987,
  67265.7709270087, 33430.57558358813, 2509.0809287301227,
]
const CENTRE_BOTTOM = [
  1, 42.31333070160091, 687.1870074920579, 5394.196021424751, 21213.794301586597, 39307.89580009271,
  28729.085735721943, 5226.495278852854,
]
const MIDDLE_TOP = [
  1.4234371107496835, 4.630337846156546, 5.769497221460691, 3.6478483247632045, 1.2704582524523684,
  0.2417807251774506, 0.022723844989269184, 0.0007745450142783414,
]
const MIDDLE_BOTTOM = [
  1, 2.053191626637759, 1.6763848301838038, 0.6897673349851, 0.14810397642748008, 0.015198666563616457,
  0.0005475938084995345, 1.0507500716444169e-9,
]
const FAR_TOP = [
  6.657904643501103, 5.463784911164114, 1.7848265399172913, 0.29656057182850487, 0.026532189526576124,
  0.0012426609473880784, 2.7115555687434876e-5, 2.0103343992922881e-7,
]
const FAR_BOTTOM = [
  1, 0.599832206555888, 0.1369298809227358, 0.014875361290850615, 0.0007868691311456133,
  1.8463183175100548e-5, 1.421511758316446e-7, 2.0442631033899397e-15,
]
