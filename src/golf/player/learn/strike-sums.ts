/** What shots of one kind say of carry: weighted sums of carry y and place in the year s. */
export interface CarrySums {
  count: number
  /** Sums with the weights of the spread: 1, s, s², y, ys, y². */
  n: number
  s: number
  ss: number
  y: number
  ys: number
  yy: number
}

/** Everything the shots with one club say of its pattern, once each is taken for a good strike, a mishit or neither. */
export interface StrikeSums {
  readonly good: CarrySums
  readonly mishit: CarrySums
  /** Directions: how many, and the sums of squares to the left and right of the line, degrees². */
  directions: number
  left: number
  right: number
  /** Good strikes and mishits by number of the lie. */
  readonly goodByLie: Float64Array
  readonly mishitByLie: Float64Array
  /** Runs: sum of 1 / variance and of run / variance. */
  runPrecision: number
  runSum: number
  /** Shots taken for neither. */
  strays: number
}

export function noStrikes(lies: number): StrikeSums {
  return {
    good: noCarries(),
    mishit: noCarries(),
    directions: 0,
    left: 0,
    right: 0,
    goodByLie: new Float64Array(lies),
    mishitByLie: new Float64Array(lies),
    runPrecision: 0,
    runSum: 0,
    strays: 0,
  }
}

/** Empties the sums in place. */
export function clearStrikes(sums: StrikeSums): void {
  clearCarries(sums.good)
  clearCarries(sums.mishit)
  sums.directions = 0
  sums.left = 0
  sums.right = 0
  sums.goodByLie.fill(0)
  sums.mishitByLie.fill(0)
  sums.runPrecision = 0
  sums.runSum = 0
  sums.strays = 0
}

/** Adds a carry of one shot of this weight; `spreadFactor` is what the lie makes of the spread of carry. */
export function addCarry(
  sums: CarrySums,
  carry: number,
  season: number,
  weight: number,
  spreadFactor: number,
): void {
  const q = weight / spreadFactor ** 2
  sums.count += weight
  sums.n += q
  sums.s += q * season
  sums.ss += q * season * season
  sums.y += q * carry
  sums.ys += q * carry * season
  sums.yy += q * carry * carry
}

/** Weighted sum of (y − C·(share + swing·s))², metres². */
export function squaresAbout(sums: CarrySums, carry: number, share: number, swing: number): number {
  const ofMean = share * sums.y + swing * sums.ys
  const ofSquare = share * share * sums.n + 2 * share * swing * sums.s + swing * swing * sums.ss
  return Math.max(0, sums.yy - 2 * carry * ofMean + carry * carry * ofSquare)
}

function noCarries(): CarrySums {
  return { count: 0, n: 0, s: 0, ss: 0, y: 0, ys: 0, yy: 0 }
}

function clearCarries(sums: CarrySums): void {
  sums.count = 0
  sums.n = 0
  sums.s = 0
  sums.ss = 0
  sums.y = 0
  sums.ys = 0
  sums.yy = 0
}
