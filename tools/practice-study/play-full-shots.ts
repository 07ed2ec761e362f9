import { greenRunsToday, runToday } from '../../src/golf/ball/run-today.ts'
import { LEAST_MISHIT_GREEN_SHARE, RUN_SHARES } from '../../src/golf/ball/surface-settings.ts'
import type { Ground } from '../../src/golf/course/ground.ts'
import { lieEffect } from '../../src/golf/player/lie-effects.ts'
import type { Lie } from '../../src/golf/player/player.ts'
import { MISHIT_DIRECTION_FACTOR } from '../../src/golf/player/settings.ts'
import { changeOfShot, type HoleModel } from '../../src/golf/strategy/hole-model.ts'
import { LEAST_MISHIT_CARRY_SHARE } from '../../src/golf/strategy/settings.ts'
import type { Shot } from '../../src/golf/strategy/shots.ts'
import { normalQuantile } from '../../src/numbers/statistics/normal.ts'
import { degreesToRadians } from '../../src/numbers/units/units.ts'
import type { GroundUnder } from './ground-grid.ts'
import type { NumbersOfStroke } from './numbers-of-stroke.ts'

type Point = readonly [x: number, y: number]

/** Where a full shot ended: at rest, or the last place before the water or the boundary. */
export interface FullShotEnd {
  readonly point: Point
  readonly ground: Ground
}

/** Plays one full shot on a line, radians clockwise from the y axis. */
export type PlayFullShot = (
  from: Point,
  lie: Lie,
  shot: Shot,
  heading: number,
  numbers: NumbersOfStroke,
) => FullShotEnd

/** A shot from a lie as numbers, on the calm level day of the study. */
interface Swing {
  readonly mishitShare: number
  readonly turn: number
  readonly leftShare: number
  readonly rightShare: number
  readonly curve: number
  readonly carry: number
  readonly carrySd: number
  readonly mishitCarry: number
  readonly mishitCarrySd: number
  readonly run: number
  readonly runOnGreen: number
}

const STEP_METRES = 0.5
/** A ball is dropped so far behind where it crossed the edge, along its own way. */
const DROP_METRES = 1

/** The full game of a player on a hole, strike by strike from the mixture of the profile, with the run over the grid. */
export function fullShots(model: HoleModel, groundUnder: GroundUnder): PlayFullShot {
  const swings = new Map<Shot, Map<Lie, Swing>>()
  const swingOf = (shot: Shot, lie: Lie): Swing => {
    const ofShot = swings.get(shot) ?? new Map<Lie, Swing>()
    swings.set(shot, ofShot)
    const swing = ofShot.get(lie) ?? swingFrom(model, shot, lie)
    ofShot.set(lie, swing)
    return swing
  }
  return (from, lie, shot, heading, numbers) => {
    const swing = swingOf(shot, lie)
    const isMishit = numbers.uniform(0) < swing.mishitShare
    // A side is hit in proportion to its spread.
    const left = swing.leftShare / (swing.leftShare + swing.rightShare)
    const side = numbers.uniform(1)
    const off =
      swing.turn *
      (isMishit ? MISHIT_DIRECTION_FACTOR : 1) *
      (side < left
        ? swing.leftShare * normalQuantile((0.5 * side) / left)
        : swing.rightShare * normalQuantile(0.5 + (0.5 * (side - left)) / (1 - left)))
    const z = numbers.normal(2)
    const share = isMishit ? swing.mishitCarry + swing.mishitCarrySd * z : 1 + swing.carrySd * z
    const carry = swing.carry * Math.max(share, LEAST_MISHIT_CARRY_SHARE)
    const landing: Point = [
      from[0] + carry * Math.sin(heading + off),
      from[1] + carry * Math.cos(heading + off),
    ]
    const onGreen = isMishit
      ? Math.max(swing.runOnGreen, LEAST_MISHIT_GREEN_SHARE * swing.run)
      : swing.runOnGreen
    const run = groundUnder(...landing) === 'green' ? onGreen / RUN_SHARES.green : swing.run
    const onwards = heading + off + swing.curve
    return runOut(groundUnder, landing, run < 0 ? onwards + Math.PI : onwards, Math.abs(run))
  }
}

function swingFrom(model: HoleModel, shot: Shot, lie: Lie): Swing {
  const { stock } = shot
  const effect = lieEffect(lie, stock.name, model.player)
  const change = changeOfShot(model, shot, 0)
  const stockRun = stock.totalMetres - stock.carryMetres
  return {
    mishitShare: stock.mishitShare * effect.mishit,
    turn: degreesToRadians(stock.directionSdDegrees) * effect.direction,
    leftShare: stock.leftShare,
    rightShare: stock.rightShare,
    curve: Math.atan(stock.curveShare),
    carry: stock.carryMetres * effect.carry,
    carrySd: stock.carrySdShare * effect.distance,
    mishitCarry: stock.mishitCarryShare,
    mishitCarrySd: stock.mishitCarrySdShare,
    run: runToday(stockRun, change, effect.spin),
    runOnGreen: greenRunsToday(stockRun, change, model.today, effect.spin, false).level,
  }
}

/** Rolls a ball over the grid in steps, further on short grass; what is in trouble is taken back to where it crossed the edge. */
function runOut(groundUnder: GroundUnder, landing: Point, heading: number, run: number): FullShotEnd {
  const along: Point = [STEP_METRES * Math.sin(heading), STEP_METRES * Math.cos(heading)]
  let [x, y] = landing
  let ground = groundUnder(x, y)
  for (let left = run + STEP_METRES / 2; !isTrouble(ground); ) {
    const share = ground in RUN_SHARES ? RUN_SHARES[ground as keyof typeof RUN_SHARES] : 0
    left -= share === 0 ? Number.POSITIVE_INFINITY : STEP_METRES / share
    if (left < 0) return { point: [x, y], ground }
    x += along[0]
    y += along[1]
    ground = groundUnder(x, y)
  }
  const trouble = ground
  for (; isTrouble(ground); ground = groundUnder(x, y)) {
    x -= along[0]
    y -= along[1]
  }
  const back = DROP_METRES / STEP_METRES
  return { point: [x - back * along[0], y - back * along[1]], ground: trouble }
}

/** Whether a ball cannot be played where it is. */
export function isTrouble(ground: Ground): boolean {
  return ground === 'out' || ground === 'penalty-red' || ground === 'penalty-yellow'
}
