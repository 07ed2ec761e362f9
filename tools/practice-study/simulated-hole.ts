import type { Ground } from '../../src/golf/course/ground.ts'
import type { Lie, Player } from '../../src/golf/player/player.ts'
import { lieOfGround } from '../../src/golf/strategy/lie-of-ground.ts'
import { placeAt } from '../../src/golf/strategy/places.ts'
import { DEFAULT_SHARES, SHORT_GAME_METRES } from '../../src/golf/strategy/settings.ts'
import type { Shot } from '../../src/golf/strategy/shots.ts'
import type { GroundUnder } from './ground-grid.ts'
import { numbersOfStroke } from './numbers-of-stroke.ts'
import type { OwnPlan } from './own-plan.ts'
import { simulatedChips } from './play-chips.ts'
import { fullShots, isTrouble } from './play-full-shots.ts'
import { simulatedPutting } from './play-putts.ts'

/** Strokes of the hole with this number, each with that hole's own random numbers. */
export type PlayHole = (seed: number, hole: number) => number

/** A shot on a line, and the middle of the cell from which it is planned. */
interface Planned {
  readonly shot: Shot
  readonly heading: number
  readonly x: number
  readonly y: number
}

const MOST_STROKES = 30
const MOST_RINGS = 2
const TURNS = 8
/** Kinds of strokes have numbers of their own: the second putt of a hole meets the same luck, however many strokes came before. */
const [CHIPS, PUTTS] = [100, 200]

/** Somebody on a hole who plays full shots by a solved plan. Only the plan is the planner's: what becomes of a stroke is not. */
export function simulatedHole(
  { model, problem, first }: OwnPlan,
  golfer: Player,
  groundUnder: GroundUnder,
): PlayHole {
  const { places, hole } = model
  const { pin } = hole
  const [fromTee] = first
  if (fromTee === undefined) throw new Error(`no club off the tee of hole ${hole.ref}`)
  const full = fullShots(model, groundUnder)
  const putting = simulatedPutting(golfer)
  const chip = simulatedChips(golfer, putting, { groundUnder, pin, greenFeet: model.today.greenSpeedFeet })
  const plans = new Map<number, Planned | null>()
  const planAt = (place: number): Planned | null => {
    const known = plans.get(place)
    if (known !== undefined) return known
    const planned = nearestPlan(place)
    plans.set(place, planned)
    return planned
  }
  /** A ball beside the water may lie in a cell that the planner takes for water: then it is played as from a cell beside it. `null` = by the short game. */
  const nearestPlan = (place: number): Planned | null => {
    const [x, y] = [places.x[place] as number, places.y[place] as number]
    if (places.isShortGame[place] === 1) return null
    for (let ring = 0; ring <= MOST_RINGS; ring++)
      for (let turn = 0; turn < TURNS; turn++) {
        const angle = (2 * Math.PI * turn) / TURNS
        const away = ring * places.coarse.resolution
        const other = placeAt(places, x + away * Math.sin(angle), y + away * Math.cos(angle))
        const shot = problem.bestShot(other)
        if (shot !== null) return { ...shot, x: places.x[other] as number, y: places.y[other] as number }
      }
    return null
  }
  return (seed, number) => {
    let [x, y] = [0, 0]
    let ground: Ground = 'tee'
    let [strokes, swings, chips] = [0, 0, 0]
    for (;;) {
      if (strokes > MOST_STROKES) throw new Error(`hole ${hole.ref} does not end`)
      const left = Math.hypot(pin[0] - x, pin[1] - y)
      if (ground === 'green') break
      const lie: Lie = ground === 'tee' ? 'tee' : (lieOfGround(ground) ?? 'rough')
      const planned: Planned | null =
        left < SHORT_GAME_METRES
          ? null
          : lie === 'tee'
            ? { ...fromTee, x: 0, y: 0 }
            : planAt(placeAt(places, x, y))
      if (planned === null) {
        const end = chip([x, y], lie, numbersOfStroke(seed, number, CHIPS + chips))
        chips += 1
        strokes += 1
        if (end === 'holed') return strokes
        ground = groundUnder(...end)
        // Water beside the green: a penalty stroke, and the shot again from where it was.
        if (isTrouble(ground)) {
          strokes += 1
          ground = groundUnder(x, y)
        } else [x, y] = end
        continue
      }
      const { shot, heading, ...middle } = planned
      // The plan is of the middle of its cell: from beside it the same spot is aimed at.
      const total = shot.stock.totalMetres
      const aimX = middle.x + total * Math.sin(heading)
      const aimY = middle.y + total * Math.cos(heading)
      const numbers = numbersOfStroke(seed, number, swings)
      const end = full([x, y], lie, shot, Math.atan2(aimX - x, aimY - y), numbers)
      swings += 1
      strokes += 1
      const isLost = end.ground === 'heavy' && numbers.uniform(3) < DEFAULT_SHARES.heavy.lost
      if (isTrouble(end.ground) || isLost) strokes += 1
      if (end.ground === 'out' || isLost) continue
      ;[x, y] = end.point
      ground = isTrouble(end.ground) ? groundUnder(x, y) : end.ground
    }
    let metres = Math.hypot(pin[0] - x, pin[1] - y)
    for (let putts = 0; metres > 0; putts++) {
      const { normal } = numbersOfStroke(seed, number, PUTTS + putts)
      metres = putting.putt(metres, [normal(0), normal(1)])
      strokes += 1
    }
    return strokes
  }
}
