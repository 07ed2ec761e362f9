import type { LieEffects } from './lie-of-shots.ts'

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

/** What shots with one club say of carries and directions. */
export interface Strikes {
  readonly good: CarrySums
  readonly mishit: CarrySums
  /** Directions: how many, and the sums of squares to the left and right of the line, degrees². */
  directions: number
  left: number
  right: number
}

/** Everything the shots with one club say of its pattern, once each is taken for a good strike, a mishit or neither. */
export interface StrikeSums extends Strikes {
  /** The same by number of the lie, with what the lie does to them still in: what is above has it divided out. */
  readonly lies: readonly Strikes[]
  /** Runs: sum of 1 / variance and of run / variance. */
  runPrecision: number
  runSum: number
  /** Shots taken for neither. */
  strays: number
}

export function noStrikes(lies: number): StrikeSums {
  return {
    ...noneOfLie(),
    lies: Array.from({ length: lies }, noneOfLie),
    runPrecision: 0,
    runSum: 0,
    strays: 0,
  }
}

/** Empties the sums in place. */
export function clearStrikes(sums: StrikeSums): void {
  clearOfLie(sums)
  sums.lies.forEach(clearOfLie)
  sums.runPrecision = 0
  sums.runSum = 0
  sums.strays = 0
}

/** Adds a carry of one shot of this weight. */
export function addCarry(sums: CarrySums, carry: number, season: number, weight: number): void {
  sums.count += weight
  sums.n += weight
  sums.s += weight * season
  sums.ss += weight * season * season
  sums.y += weight * carry
  sums.ys += weight * carry * season
  sums.yy += weight * carry * carry
}

/** Adds up the lies, what each does divided out: its share of the carry and its factors on both spreads. */
export function addLies(sums: StrikeSums, effects: readonly LieEffects[]): void {
  sums.lies.forEach((lie, index) => {
    const { own, distance, direction } = effects[index] as LieEffects
    addScaled(sums.good, lie.good, own, distance)
    // A mishit's own spread of carry is so wide that a lie adds nothing to it, as in a plan.
    addScaled(sums.mishit, lie.mishit, own, 1)
    sums.directions += lie.directions
    sums.left += lie.left / direction ** 2
    sums.right += lie.right / direction ** 2
  })
}

function addScaled(sums: CarrySums, lie: CarrySums, carryFactor: number, spreadFactor: number): void {
  const q = 1 / spreadFactor ** 2
  sums.count += lie.count
  sums.n += q * lie.n
  sums.s += q * lie.s
  sums.ss += q * lie.ss
  sums.y += (q * lie.y) / carryFactor
  sums.ys += (q * lie.ys) / carryFactor
  sums.yy += (q * lie.yy) / carryFactor ** 2
}

/** Weighted sum of (y − C·(share + swing·s))², metres². */
export function squaresAbout(sums: CarrySums, carry: number, share: number, swing: number): number {
  const ofMean = share * sums.y + swing * sums.ys
  const ofSquare = share * share * sums.n + 2 * share * swing * sums.s + swing * swing * sums.ss
  return Math.max(0, sums.yy - 2 * carry * ofMean + carry * carry * ofSquare)
}

function noneOfLie(): Strikes {
  return { good: noCarries(), mishit: noCarries(), directions: 0, left: 0, right: 0 }
}

function clearOfLie(sums: Strikes): void {
  clearCarries(sums.good)
  clearCarries(sums.mishit)
  sums.directions = 0
  sums.left = 0
  sums.right = 0
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
