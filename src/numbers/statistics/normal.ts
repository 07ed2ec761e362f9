const ROOT_TWO_PI = Math.sqrt(2 * Math.PI)

/** Density of the standard normal distribution at `x`. */
export function normalPdf(x: number): number {
  return Math.exp(-0.5 * x * x) / ROOT_TWO_PI
}

/**
 * Probability that a standard normal variable is at most `x`, good to a relative 1e-14 also far in the lower tail.
 * Rational approximations of the error function by W. J. Cody, Mathematics of Computation 23 (1969) 631–637.
 */
export function normalCdf(x: number): number {
  const z = x / Math.SQRT2
  const size = Math.abs(z)
  if (size <= 0.46875) return 0.5 + 0.5 * z * ratio(z * z, ERF_TOP, ERF_BOTTOM)
  const tail = 0.5 * upperError(size)
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

// Complement of the error function for z above 0.46875.
function upperError(z: number): number {
  // exp(−z²) loses digits for large z when z² is rounded: split z² into a part without rounding and the rest.
  const coarse = Math.trunc(z * 16) / 16
  const scale = Math.exp(-coarse * coarse) * Math.exp(-(z - coarse) * (z + coarse))
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
  3.20937758913846947e3, 3.77485237685302021e2, 1.13864154151050156e2, 3.1611237438705656,
  1.85777706184603153e-1,
]
const ERF_BOTTOM = [
  2.84423683343917062e3, 1.28261652607737228e3, 2.44024637934444173e2, 2.36012909523441209e1, 1,
]
const UPPER_TOP = [
  1.23033935479799725e3, 2.05107837782607147e3, 1.71204761263407058e3, 8.8195222124176909e2,
  2.98635138197400131e2, 6.61191906371416295e1, 8.88314979438837594, 5.64188496988670089e-1,
  2.15311535474403846e-8,
]
const UPPER_BOTTOM = [
  1.23033935480374942e3, 3.43936767414372164e3, 4.36261909014324716e3, 3.29079923573345963e3,
  1.62138957456669019e3, 5.37181101862009858e2, 1.17693950891312499e2, 1.57449261107098347e1, 1,
]
const OUTER_TOP = [
  6.58749161529837803e-4, 1.60837851487422766e-2, 1.25781726111229246e-1, 3.60344899949804439e-1,
  3.05326634961232344e-1, 1.63153871373020978e-2,
]
const OUTER_BOTTOM = [
  2.33520497626869185e-3, 6.05183413124413191e-2, 5.27905102951428412e-1, 1.87295284992346047,
  2.56852019228982242, 1,
]
const CENTRE_TOP = [
  3.387132872796366608, 1.3314166789178437745e2, 1.9715909503065514427e3, 1.3731693765509461125e4,
  4.5921953931549871457e4, 6.7265770927008700853e4, 3.3430575583588128105e4, 2.5090809287301226727e3,
]
const CENTRE_BOTTOM = [
  1, 4.2313330701600911252e1, 6.871870074920579083e2, 5.3941960214247511077e3, 2.1213794301586595867e4,
  3.930789580009271061e4, 2.8729085735721942674e4, 5.226495278852854561e3,
]
const MIDDLE_TOP = [
  1.42343711074968357734, 4.6303378461565452959, 5.7694972214606914055, 3.64784832476320460504,
  1.27045825245236838258, 2.4178072517745061177e-1, 2.27238449892691845833e-2, 7.7454501427834140764e-4,
]
const MIDDLE_BOTTOM = [
  1, 2.05319162663775882187, 1.6763848301838038494, 6.8976733498510000455e-1, 1.4810397642748007459e-1,
  1.51986665636164571966e-2, 5.475938084995344946e-4, 1.05075007164441684324e-9,
]
const FAR_TOP = [
  6.6579046435011037772, 5.4637849111641143699, 1.7848265399172913358, 2.9656057182850489123e-1,
  2.6532189526576123093e-2, 1.2426609473880784386e-3, 2.71155556874348757815e-5, 2.01033439929228813265e-7,
]
const FAR_BOTTOM = [
  1, 5.9983220655588793769e-1, 1.3692988092273580531e-1, 1.48753612908506148525e-2, 7.868691311456132591e-4,
  1.8463183175100546818e-5, 1.4215117583164458887e-7, 2.04426310338993978564e-15,
]
