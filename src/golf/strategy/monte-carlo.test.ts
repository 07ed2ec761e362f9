import { beforeAll, describe, expect, it } from 'vitest'
import { greenRunsToday, runToday } from '#golf/ball/run-today.ts'
import { LEAST_MISHIT_GREEN_SHARE, RUN_SHARES } from '#golf/ball/surface-settings.ts'
import type { Day } from '#golf/course/day.ts'
import { GROUND_CLASSES, type Ground } from '#golf/course/ground.ts'
import type { Hole } from '#golf/course/hole.ts'
import { lieEffect } from '#golf/player/lie-effects.ts'
import type { Lie } from '#golf/player/player.ts'
import { MISHIT_DIRECTION_FACTOR } from '#golf/player/settings.ts'
import { shortGameShares } from '#golf/player/short-game-shares.ts'
import { polygonContains } from '#numbers/geometry/polygon.ts'
import { solveShortestPath } from '#numbers/solver/solve-shortest-path.ts'
import { seededGenerator } from '#numbers/statistics/seeded-generator.ts'
import { degreesToRadians } from '#numbers/units/units.ts'
import { changeOfShot, type HoleModel, holeGround, holeModel } from './hole-model.ts'
import { type HoleProblem, holeProblem } from './hole-problem.ts'
import { area, box, CALM_DAY, inventedHole, inventedPlayer } from './invented-hole.fixture.ts'
import { lieOfGround } from './lie-of-ground.ts'
import { placeAt } from './places.ts'
import { reliefPlaces } from './relief-places.ts'
import { scoreChances } from './score-distribution.ts'
import { LEAST_MISHIT_CARRY_SHARE, MISHIT_HEIGHT_SHARE, OPENING_METRES } from './settings.ts'
import { isLow, type Shot } from './shots.ts'

// The plan of a hole played out ball by ball with numbers drawn at random: strikes, runs over the outlines of the
// ground, crowns in the way, relief, chips and putts. Nothing of the planner's sums is used, only which shot it plays from where. By the
// law of large numbers mean and shares must come within a few of their own standard errors.

//
// Measured, what was played less what the plan says (standard error 0.003): cells of 6 m with 768 strikes to a shot +0.020,
// cells of 2 m with 256 strikes +0.023 and with 512 strikes +0.010. The least of many sums that are each a little wrong is
// too low, so few strikes are too hopeful; balls that move to the middle of their cell add to it either way.

const ROUNDS = 20_000
const CELL = 2
const QUADRATURE = { good: 384, mishit: 128 }
const WINDY: Day = { ...CALM_DAY, wind: { speedMetresPerSecond: 3, fromDegrees: 300 } }

const player = inventedPlayer([
  { name: '6-iron', carry_m: 138, total_m: 145, left_share: 1.2, right_share: 0.8, curve_share: -0.04 },
  { name: 'pitching-wedge', carry_m: 92, total_m: 95 },
])

// All edges lie between cells of 2 m and of 1 m, so that outlines and raster say the same of every point.
const straight = inventedHole(192.5, [
  area('fairway', box(-15, 15, 39, 177)),
  area('penalty-red', box(15, 33, 99, 171)),
  area('penalty-yellow', box(-27, 9, 63, 75)),
  area('bunker', box(-21, -9, 153, 171)),
  area('trees', box(-33, -21, 81, 129)),
  area('heavy', box(-33, -21, 129, 171)),
  area('out', box(-300, -33, -60, 500), 'out left'),
  area('out', box(33, 300, -60, 500), 'out right'),
  area('out', box(-300, 300, -60, -9), 'out behind'),
])
const hole: Hole = {
  ...straight,
  pin: [0.5, 192.5],
  line: [
    [0, 0],
    [0.5, 192.5],
  ],
}

describe('rounds played out at random with the plan of a hole', () => {
  let model: HoleModel
  let problem: HoleProblem
  let values: Float64Array
  beforeAll(() => {
    model = holeModel(holeGround(hole, CELL), player, WINDY)
    problem = holeProblem(model, { quadrature: QUADRATURE })
    values = solveShortestPath(problem, { tolerance: 1e-5 }).values
  })

  it('average what the plan says within 3 standard errors, and spread over the scores as it says', () => {
    const tee = placeAt(model.places, 0, 0)
    const chances = scoreChances(model, problem, values)
    const random = seededGenerator(2023)
    const counts = new Map<number, number>()
    let sum = 0
    let squares = 0
    for (let round = 0; round < ROUNDS; round++) {
      const strokes = playRound(model, problem, values, random)
      counts.set(strokes, (counts.get(strokes) ?? 0) + 1)
      sum += strokes
      squares += strokes * strokes
    }
    const mean = sum / ROUNDS
    const standardError = Math.sqrt((squares / ROUNDS - mean * mean) / ROUNDS)
    expect(Math.abs(mean - (values[tee] as number))).toBeLessThan(3 * standardError)
    let tested = 0
    let rest = 1
    let restCount = ROUNDS
    for (const [strokes, row] of chances.entries()) {
      const chance = row[tee] as number
      // Reason: a share of fewer than ten rounds is not near enough to a normal distribution.
      if (chance * ROUNDS < 10) continue
      const count = counts.get(strokes) ?? 0
      expectShare(count, chance, `${strokes} strokes`)
      rest -= chance
      restCount -= count
      tested += chance
    }
    expect(tested).toBeGreaterThan(0.99)
    expect(Math.abs(restCount - rest * ROUNDS)).toBeLessThan(3.5 * Math.sqrt(Math.max(1, rest * ROUNDS)))
  })
})

/** A share of the rounds lies within 3.5 of its own binomial standard errors of its chance. */
function expectShare(count: number, chance: number, what: string): void {
  const standardError = Math.sqrt((chance * (1 - chance)) / ROUNDS)
  expect(Math.abs(count / ROUNDS - chance) / standardError, what).toBeLessThan(3.5)
}

interface Ball {
  readonly x: number
  readonly y: number
}

/** Strokes of one round from the markers' cell, penalties counted. */
function playRound(
  model: HoleModel,
  problem: HoleProblem,
  values: Float64Array,
  random: () => number,
): number {
  let ball: Ball = { x: 0, y: 0 }
  let strokes = 0
  for (;;) {
    const cell = placeAt(model.places, ball.x, ball.y)
    const at = middleOf(model, cell)
    const ground = GROUND_CLASSES[model.places.ground[cell] as number] as Ground
    const lie = lieOfGround(ground) as Lie
    if (model.places.isShortGame[cell] === 1)
      return strokes + shortGame(lie, Math.hypot(at.x - hole.pin[0], at.y - hole.pin[1]), random)
    const plan = problem.bestShot(cell)
    if (!plan) throw new Error(`no shot from ${at.x}, ${at.y}`)
    strokes += 1
    const struck = strike(plan.shot, lie, plan.heading, model, random)
    const caught = caughtAt(at, struck, random)
    const share = caught ?? 1
    const landing = { x: at.x + share * struck.dx, y: at.y + share * struck.dy }
    const onGround = groundUnder(landing) === 'green' ? struck.runOnGreen / RUN_SHARES.green : struck.run
    const run = caught === null ? onGround : 0
    const end = follow(landing, run < 0 ? struck.heading + Math.PI : struck.heading, Math.abs(run))
    let kind: number = HAZARD_KINDS[end.kind]
    if (kind === 0) {
      const rest = placeAt(model.places, end.x, end.y)
      const share = random()
      const lost = model.places.lost[rest] as number
      if (share >= lost + (model.places.unplayable[rest] as number)) {
        ball = end
        continue
      }
      if (share < lost) kind = OUT
    }
    const drop = kind === OUT ? null : cheapestDrop(model, values, kind, placeAt(model.places, end.x, end.y))
    if (!drop || drop.cost > 1 + (values[cell] as number)) strokes += 1
    else {
      strokes += drop.penalty
      ball = middleOf(model, drop.place)
    }
  }
}

const OUT = 3
const HAZARD_KINDS = { 'at rest': 0, 'penalty-red': 1, 'penalty-yellow': 2, out: OUT } as const

function cheapestDrop(
  model: HoleModel,
  values: Float64Array,
  kind: number,
  from: number,
): { readonly place: number; readonly penalty: number; readonly cost: number } | undefined {
  return reliefPlaces(model.places, hole.pin, kind, from, hole.localRules)
    .flatMap(({ penaltyStrokes, places }) =>
      [...places].map((place) => ({
        place,
        penalty: penaltyStrokes,
        cost: penaltyStrokes + (values[place] as number),
      })),
    )
    .toSorted((a, b) => a.cost - b.cost)[0]
}

function middleOf(model: HoleModel, place: number): Ball {
  return { x: model.places.x[place] as number, y: model.places.y[place] as number }
}

function shortGame(lie: Lie, metres: number, random: () => number): number {
  const shares = sharesOf(lie, metres)
  let left = random()
  for (const [index, share] of shares.entries()) {
    left -= share
    if (left < 0) return index + 1
  }
  return shares.length
}

const knownShares = new Map<string, Float64Array>()
function sharesOf(lie: Lie, metres: number): Float64Array {
  const key = `${lie} ${metres.toFixed(2)}`
  const known = knownShares.get(key) ?? shortGameShares(player, lie, metres)
  knownShares.set(key, known)
  return known
}

/** A standard normal number (Box & Muller 1958). */
function normal(random: () => number): number {
  return Math.sqrt(-2 * Math.log(1 - random())) * Math.cos(2 * Math.PI * random())
}

/** One strike of a shot, drawn from its mixture. */
function strike(shot: Shot, lie: Lie, heading: number, model: HoleModel, random: () => number): Struck {
  const { stock } = shot
  const effect = lieEffect(lie, shot.stock.name, player)
  const isMishit = random() < stock.mishitShare * effect.mishit
  const sd =
    degreesToRadians(stock.directionSdDegrees) * effect.direction * (isMishit ? MISHIT_DIRECTION_FACTOR : 1)
  // Two halves of a normal curve: a side is hit in proportion to its spread.
  const isLeft = random() < stock.leftShare / (stock.leftShare + stock.rightShare)
  const off = Math.abs(normal(random)) * sd * (isLeft ? -stock.leftShare : stock.rightShare)
  const share = isMishit
    ? stock.mishitCarryShare + stock.mishitCarrySdShare * normal(random)
    : 1 + stock.carrySdShare * effect.distance * normal(random)
  const carry = stock.carryMetres * effect.carry * Math.max(share, LEAST_MISHIT_CARRY_SHARE)
  const wind = changeOfShot(model, shot, heading)
  const forward = carry * wind.carryShare
  const drift = carry * wind.driftShare
  const stockRun = stock.totalMetres - stock.carryMetres
  const run = runToday(stockRun, wind, effect.spin) * model.today.firmness
  const { level } = greenRunsToday(stockRun, wind, model.today, effect.spin, false)
  return {
    dx: forward * Math.sin(heading + off) + drift * Math.cos(heading),
    dy: forward * Math.cos(heading + off) - drift * Math.sin(heading),
    heading: heading + off + Math.atan(stock.curveShare),
    run,
    runOnGreen: isMishit ? Math.max(level, LEAST_MISHIT_GREEN_SHARE * run) : level,
    heights: model.flights.heightsFor(shot.loftDegrees, stock.carryMetres, heading, 0, isLow(shot)),
    heightShare: isMishit ? MISHIT_HEIGHT_SHARE : 1,
  }
}

interface Struck {
  readonly dx: number
  readonly dy: number
  readonly heading: number
  readonly run: number
  readonly runOnGreen: number
  readonly heights: Float64Array
  readonly heightShare: number
}

/** Goes along the way of a ball in steps of 25 cm and draws at each whether the wood catches it; the share of the way, or `null`. */
function caughtAt(from: Ball, struck: Struck, random: () => number): number | null {
  const reach = Math.hypot(struck.dx, struck.dy)
  for (let metres = OPENING_METRES; metres < reach; metres += STEP) {
    const share = metres / reach
    const [x, y] = [from.x + share * struck.dx, from.y + share * struck.dy]
    if (groundUnder({ x, y }) !== 'trees') continue
    const at = share * (struck.heights.length - 1)
    const [low, high] = [
      struck.heights[Math.floor(at)] as number,
      struck.heights[Math.min(Math.ceil(at), struck.heights.length - 1)] as number,
    ]
    const height = (low + (at % 1) * (high - low)) * reach * struck.heightShare
    const density = height >= WOOD.top ? 0 : height >= WOOD.base ? WOOD.density : WOOD.density / 4
    if (random() < 1 - Math.exp(-density * STEP)) return share
  }
  return null
}

/** The wood of the hole: what the survey is silent about, spelled out from the stated defaults. */
const WOOD = { top: 12, base: 3, density: 0.06 } as const

const STEP = 0.25

/** Lets a ball run over the outlines of the ground in steps of 25 cm. In or over a hazard: the last place before it. */
function follow(
  from: Ball,
  heading: number,
  run: number,
): Ball & { readonly kind: 'at rest' | 'out' | 'penalty-red' | 'penalty-yellow' } {
  const along = { x: STEP * Math.sin(heading), y: STEP * Math.cos(heading) }
  let at = from
  let ground = groundUnder(at)
  if (isHazard(ground)) {
    const kind = ground
    for (let back = 0; back < 2000 && isHazard(ground); back++) {
      at = { x: at.x - along.x, y: at.y - along.y }
      ground = groundUnder(at)
    }
    return { ...at, kind }
  }
  // Half a step more than the run, so that it is rounded to steps and not cut down to them.
  for (let left = run + STEP / 2; ; ) {
    const share = ground in RUN_SHARES ? RUN_SHARES[ground as keyof typeof RUN_SHARES] : 0
    if (share === 0) break
    left -= STEP / share
    if (left < 0) break
    const next = { x: at.x + along.x, y: at.y + along.y }
    ground = groundUnder(next)
    if (isHazard(ground)) return { ...at, kind: ground }
    at = next
  }
  return { ...at, kind: 'at rest' }
}

function isHazard(ground: Ground): ground is 'out' | 'penalty-red' | 'penalty-yellow' {
  return ground === 'out' || ground === 'penalty-red' || ground === 'penalty-yellow'
}

/** The class of the ground at a point: of the areas over it the one painted last. */
function groundUnder({ x, y }: Ball): Ground {
  let best = GROUND_CLASSES.indexOf('rough')
  let isCovered = false
  for (const one of hole.areas) {
    const code = GROUND_CLASSES.indexOf(one.ground)
    if ((isCovered && code < best) || !polygonContains(one.polygon, [x, y])) continue
    best = code
    isCovered = true
  }
  return GROUND_CLASSES[best] as Ground
}
