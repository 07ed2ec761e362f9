import { GROUND_CLASSES, type Ground } from '#golf/course/ground.ts'
import type { Lie } from '#golf/player/player.ts'
import { puttingValues } from '#golf/player/putting-values.ts'
import { shortGameShares } from '#golf/player/short-game-shares.ts'
import type { ShortGamePlayer } from '#golf/player/short-game-values.ts'
import { weightedQuantile } from '#numbers/statistics/quantile.ts'
import { radiansToDegrees } from '#numbers/units/units.ts'
import { lieOfGround } from '../lie-of-ground.ts'
import { AT_REST, OUT_OF_BOUNDS } from '../outcome.ts'
import type { OutcomeGround, PlanOption, ShortPart } from '../plan.ts'
import { MOST_STROKES } from '../settings.ts'
import { edgeOfGreen, type ShortCandidate } from './find-short-aims.ts'
import { type PlayedShot, type ShortBall, shortBall } from './play-short-shot.ts'
import { GREEN, type ShortScene, totalCost } from './short-scene.ts'
import type { ShortStrikes } from './short-strikes.ts'

const WORST_SHARE = 0.1

/** What a plan tells of one short shot, all but its comparison with other clubs. */
export type ShortFacts = Pick<
  PlanOption,
  'aim' | 'total_m' | 'outcomes' | 'leave_m' | 'misses' | 'scores' | 'short'
>

/** Where the balls of a short shot end, what they leave, how it goes wrong, and how it should go. */
export function shortFacts(
  scene: ShortScene,
  player: ShortGamePlayer,
  from: readonly [number, number],
  lie: Lie,
  { shot, aim }: Pick<ShortCandidate, 'shot' | 'aim'>,
  strikes: ShortStrikes,
  played: PlayedShot,
): ShortFacts {
  const { balls, weight } = played
  const costs = balls.map((ball) => ballCost(scene, ball))
  const toPin = Float64Array.from(balls, ({ x, y }) => Math.hypot(x - scene.pin[0], y - scene.pin[1]))
  const leave = (share: number): number => weightedQuantile(toPin, weight, share)
  const meant = meantBall(scene, from, { shot, aim })
  const total = Math.hypot(meant.x - from[0], meant.y - from[1])
  const finish = total > 0 ? Math.atan2(meant.x - from[0], meant.y - from[1]) : aim.heading
  const distance = Math.hypot(scene.pin[0] - from[0], scene.pin[1] - from[1])
  const direction = Math.atan2(scene.pin[0] - from[0], scene.pin[1] - from[1])
  const scores = scoresOf(player, scene, { lie, metres: distance }, played)
  const isPutt = shot.kind === 'putt'
  const edge = edgeOfGreen(scene, from, distance)
  const landCode = scene.codeAt(meant.landX, meant.landY)
  const worst = worstOf(balls, weight, costs)
  const part: ShortPart = {
    landing: {
      x_m: meant.landX,
      y_m: meant.landY,
      ground: groundOfCode(landCode),
      on_green_m: landCode === GREEN && !isPutt ? Math.max(0, aim.carryMetres - edge) : null,
    },
    carry_m: isPutt ? 0 : aim.carryMetres,
    apex_m: isPutt ? 0 : (aim.carryMetres * Math.tan(shot.launchRadians)) / 4,
    roll_m: meant.metres,
    path: meant.path,
    start_beside_pin_m: distance * Math.sin(aim.heading - direction),
    holed: shareOf(weight, (k) => (balls[k] as ShortBall).isHoled),
    up_and_down: (scores['1'] ?? 0) + (scores['2'] ?? 0),
    poor: shot.spread.poorShare,
    worst: {
      strokes: worst.strokes,
      x_m: worst.ball.x,
      y_m: worst.ball.y,
      ground: outcomeGround(worst.ball),
      to_pin_m: Math.hypot(worst.ball.x - scene.pin[0], worst.ball.y - scene.pin[1]),
    },
  }
  return {
    aim: {
      heading_deg: radiansToDegrees(finish),
      offset_m: meant.x,
      at_m: total,
      start_deg: radiansToDegrees(aim.heading),
    },
    total_m: total,
    outcomes: outcomesOf(balls, weight),
    leave_m: { p10: leave(0.1), p50: leave(0.5), p90: leave(0.9) },
    misses: sidesOf(strikes, weight, costs),
    scores,
    short: part,
  }
}

/** The ball that goes as meant, hole or no hole. */
function meantBall(
  scene: ShortScene,
  from: readonly [number, number],
  { shot, aim }: Pick<ShortCandidate, 'shot' | 'aim'>,
): ShortBall & { readonly metres: number; readonly path: readonly (readonly [number, number])[] } {
  const isPutt = shot.kind === 'putt'
  const roll = isPutt ? aim.carryMetres : aim.carryMetres * shot.rollPerCarry
  const path: [number, number][] = []
  const ball = shortBall(scene, from, isPutt ? 0 : aim.carryMetres, aim.heading, roll, false, path)
  let metres = 0
  path.forEach(([x, y], index) => {
    const before = path[index - 1]
    if (before !== undefined) metres += Math.hypot(x - before[0], y - before[1])
  })
  return { ...ball, metres, path }
}

function ballCost(scene: ShortScene, ball: ShortBall): number {
  return ball.isHoled ? 0 : totalCost(scene, scene.endCost(ball.end, ball.x, ball.y, ball.code))
}

function shareOf(weight: Float64Array, has: (k: number) => boolean): number {
  return weight.reduce((sum, one, k) => sum + (has(k) ? one : 0), 0)
}

function groundOfCode(code: number): Ground {
  return GROUND_CLASSES[code] as Ground
}

function outcomeGround(ball: ShortBall): OutcomeGround {
  if (ball.isHoled) return 'green'
  if (ball.end === OUT_OF_BOUNDS) return 'out'
  if (ball.end !== AT_REST) return 'penalty'
  return groundOfCode(ball.code) as OutcomeGround
}

function outcomesOf(balls: readonly ShortBall[], weight: Float64Array): PlanOption['outcomes'] {
  const shares = Object.fromEntries(
    GROUND_CLASSES.flatMap((ground) => (ground.startsWith('penalty') ? [] : [[ground, 0]])),
  ) as Record<OutcomeGround, number>
  shares.penalty = 0
  balls.forEach((ball, k) => {
    shares[outcomeGround(ball)] += weight[k] as number
  })
  return shares
}

/** The dearest tenth: its mean in strokes from here, and the ball in its middle. */
function worstOf(
  balls: readonly ShortBall[],
  weight: Float64Array,
  costs: readonly number[],
): { readonly strokes: number; readonly ball: ShortBall } {
  const total = (k: number): number => costs[k] as number
  const order = Array.from(balls.keys()).sort((a, b) => total(b) - total(a) || a - b)
  let taken = 0
  let sum = 0
  let middle = balls[order[0] ?? 0] as ShortBall
  for (const k of order) {
    const share = Math.min(weight[k] as number, WORST_SHARE - taken)
    if (taken >= WORST_SHARE) break
    if (share <= 0) continue
    if (taken <= WORST_SHARE / 2) middle = balls[k] as ShortBall
    taken += share
    sum += share * total(k)
  }
  return { strokes: 1 + sum / WORST_SHARE, ball: middle }
}

/** What the outer quarter of directions to each side costs against the half between. */
function sidesOf(
  strikes: ShortStrikes,
  weight: Float64Array,
  costs: readonly number[],
): PlanOption['misses'] {
  const sums = { left: 0, middle: 0, right: 0 }
  const weights = { left: 0, middle: 0, right: 0 }
  costs.forEach((cost, k) => {
    const z = strikes.direction[k] as number
    const part = z < -QUARTER ? 'left' : z > QUARTER ? 'right' : 'middle'
    sums[part] += (weight[k] as number) * cost
    weights[part] += weight[k] as number
  })
  const mean = (part: keyof typeof sums): number => sums[part] / Math.max(1e-12, weights[part])
  return { left: mean('left') - mean('middle'), right: mean('right') - mean('middle') }
}

/** A quarter of a normal lies beyond this many spreads. */
const QUARTER = 0.6744897501960817

/**
 * Chance of each score from this stroke on. Relief is counted as one penalty stroke and played from the distance of the
 * crossing; out of bounds as one and played from `from` again.
 */
function scoresOf(
  player: ShortGamePlayer,
  scene: ShortScene,
  from: { readonly lie: Lie; readonly metres: number },
  { balls, weight }: PlayedShot,
): PlanOption['scores'] {
  const putting = puttingValues(player)
  const chances = new Float64Array(MOST_STROKES + 1)
  const add = (strokes: number, chance: number): void => {
    const at = Math.min(MOST_STROKES, strokes)
    chances[at] = (chances[at] as number) + chance
  }
  balls.forEach((ball, k) => {
    const chance = weight[k] as number
    if (ball.isHoled) {
      add(1, chance)
      return
    }
    const isAtRest = ball.end === AT_REST
    const isBack = ball.end === OUT_OF_BOUNDS
    const metres = isBack ? from.metres : Math.hypot(ball.x - scene.pin[0], ball.y - scene.pin[1])
    const lie = isBack ? from.lie : ((isAtRest ? lieOfGround(groundOfCode(ball.code)) : null) ?? 'rough')
    const shares =
      lie === 'green'
        ? slopedShares(putting.shares(metres), scene.puttShares(ball.x, ball.y))
        : shortGameShares(player, lie, Math.min(MOST_METRES, metres))
    shares.forEach((share, index) => {
      add(index + (isAtRest ? 2 : 3), chance * share)
    })
  })
  return Object.fromEntries(
    [...chances].flatMap((chance, strokes) => (chance > 0 ? [[String(strokes), chance]] : [])),
  )
}

/** Chances of one, two and three putts with what the slopes add, held to chances. */
function slopedShares(
  [one, two]: readonly [number, number, number],
  [addOne, addTwo]: readonly [number, number],
): readonly number[] {
  const first = Math.min(1, Math.max(0, one + addOne))
  const second = Math.min(1 - first, Math.max(0, two + addTwo))
  return [first, second, 1 - first - second]
}

/** Shares of the short game are known this far from the pin, metres. */
const MOST_METRES = 60
