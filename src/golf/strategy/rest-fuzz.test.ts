import { beforeAll, describe, expect, it } from 'vitest'
import { greenSurface } from '#golf/course/green-surface.ts'
import { GROUND_CLASSES, type Ground } from '#golf/course/ground.ts'
import { seededGenerator } from '#numbers/statistics/seeded-generator.ts'
import { area, box, disc, inventedHole } from './invented-hole.fixture.ts'
import {
  AT_REST,
  IN_RED,
  IN_YELLOW,
  OUT_OF_BOUNDS,
  OUTCOME_KINDS,
  outcomeKind,
  outcomePlace,
} from './outcome.ts'
import { groundOf, type Places, placeAt, placesOf } from './places.ts'
import { type RunGround, restFrom, runGround, runWay } from './rest-from.ts'
import { restAt } from './rest-table.ts'
import { restTables } from './rest-tables.ts'
import { RUN_STEP_METRES } from './settings.ts'

const RUNS = 100_000
const HAZARDS: ReadonlySet<Ground> = new Set(['out', 'penalty-red', 'penalty-yellow'])
const KIND_OF_HAZARD: Partial<Record<Ground, number>> = {
  out: OUT_OF_BOUNDS,
  'penalty-red': IN_RED,
  'penalty-yellow': IN_YELLOW,
}

/** A hole of our own on which every class of ground lies where balls come down. */
const hole = inventedHole(330, [
  area('tee', box(-6, 6, -8, 4)),
  area('fairway', box(-16.3, 17.2, 60.4, 311.3)),
  area('first-cut', box(17.2, 21.9, 60.4, 311.3)),
  area('heavy', box(21.9, 38.6, 90.2, 205.7)),
  area('scrub', box(-44.6, -31.1, 80.3, 160.8)),
  area('trees', box(-72.2, -44.6, 60.1, 220.4)),
  area('path', box(-24.1, -21.3, 10.2, 300.6)),
  area('bunker', disc([-9.4, 222.7], 7.2), 'bunker at the drive'),
  area('bunker', disc([12.8, 316.2], 5.1), 'bunker at the green'),
  area('penalty-red', box(31.8, 58.3, 205.7, 330.4), 'pond'),
  area('penalty-yellow', box(-60.4, 60.2, 262.3, 274.9), 'stream'),
  area('fringe', disc([0, 330], 13.4)),
  area('out', box(-300, -72.2, -100, 500), 'out left'),
  area('out', box(61.2, 300, -100, 500), 'out right'),
  area('out', box(-300, 300, 371.3, 600), 'out beyond'),
])

/** Falls by 3 % to the front left. */
const green = greenSurface({ pin: hole.pin, greenFallPercent: 3, greenFallTowardDegrees: 205 })

/** Whether the way back from a landing meets any ground outside hazards. */
function hasWayBack(places: Places, landing: number, heading: number, metres: number): boolean {
  for (let back = RUN_STEP_METRES; back <= metres; back += RUN_STEP_METRES) {
    const x = (places.x[landing] as number) - back * Math.sin(heading)
    const y = (places.y[landing] as number) - back * Math.cos(heading)
    if (!HAZARDS.has(groundOf(places, placeAt(places, x, y)))) return true
  }
  return false
}

describe('any landing, run and heading on a hole with every ground', () => {
  let places: Places
  let ground: RunGround
  beforeAll(() => {
    places = placesOf(hole)
    ground = runGround(places, green, 'normal')
  })

  it('is laid over every class of ground', () => {
    const found = new Set(Array.from({ length: places.count }, (_, place) => groundOf(places, place)))
    expect([...found].sort()).toEqual([...GROUND_CLASSES].sort())
  })

  it('ends at rest outside every hazard, or in one with its place of crossing outside', () => {
    const next = seededGenerator(4300)
    const kinds = new Int32Array(OUTCOME_KINDS)
    let withoutCrossing = 0
    for (let ball = 0; ball < RUNS; ball++) {
      const landing = Math.floor(next() * places.count)
      const heading = (2 * next() - 1) * Math.PI
      // From back by 20 m to on by 120 m; a green that falls may double what is left.
      const run = 140 * next() - 20
      const metres = 2 * Math.abs(run)
      const outcome = restFrom(ground, landing, run, runWay(places, heading, RUN_STEP_METRES, 0))
      const kind = outcomeKind(places, outcome)
      const place = outcomePlace(places, outcome)
      const say = (): string => JSON.stringify({ ball, run, landing, heading, metres, outcome, kind, place })
      if (!Number.isInteger(outcome) || outcome < 0 || kind >= OUTCOME_KINDS || place >= places.count)
        expect.fail(say())
      const landed = groundOf(places, landing)
      const there = groundOf(places, place)
      // Ran no further than it could, by the places it went over, whose middles lie half a cell off.
      const went = Math.hypot(
        (places.x[place] as number) - (places.x[landing] as number),
        (places.y[place] as number) - (places.y[landing] as number),
      )
      if (!HAZARDS.has(landed) && went > metres + 2 * places.coarse.resolution) expect.fail(say())
      if (HAZARDS.has(landed) && kind !== KIND_OF_HAZARD[landed]) expect.fail(say())
      if (HAZARDS.has(there)) {
        // Only a ball that came down in a hazard and never was outside on its way keeps its place there.
        if (kind === AT_REST || !HAZARDS.has(landed) || hasWayBack(places, landing, heading, 290))
          expect.fail(say())
        withoutCrossing += 1
      }
      kinds[kind] = (kinds[kind] as number) + 1
    }
    // Every kind is met often, and few landings have no crossing: else the test would prove little.
    for (const count of kinds) expect(count).toBeGreaterThan(RUNS / 100)
    expect(withoutCrossing).toBeLessThan(RUNS / 4)
  })

  it('runs by the kept cells of a way as by its own position', () => {
    const next = seededGenerator(4350)
    for (let ball = 0; ball < RUNS / 10; ball++) {
      const landing = Math.floor(next() * places.coarseCount)
      const heading = (2 * next() - 1) * Math.PI
      const run = 90 * next()
      const [kept, own] = [30, 0].map((steps) =>
        restFrom(ground, landing, run, runWay(places, heading, RUN_STEP_METRES, steps)),
      )
      if (kept !== own) expect.fail(JSON.stringify({ ball, landing, heading, run, kept, own }))
    }
  })

  it('is found in the tables as it is followed', () => {
    const next = seededGenerator(4400)
    const rest = restTables(places, green)
    for (let table = 0; table < 60; table++) {
      const heading = (2 * next() - 1) * 3 * Math.PI
      const outcomes = rest.tablesFor(120 * next())(heading)
      for (let place = 0; place < places.count; place++) {
        const outcome = restAt(places, outcomes, place)
        if (!(outcome >= 0 && outcome < OUTCOME_KINDS * places.count)) expect.fail(`${table}: ${outcome}`)
      }
      const runs = { falling: 40 * next() - 10, level: 30 * next() - 10, rising: 20 * next() - 10 }
      const onGreen = rest.greenTablesFor(runs)(heading)
      for (let index = 0; index < places.greenPlaces.length; index++) {
        const outcome = restAt(places, onGreen, index)
        if (!(outcome >= 0 && outcome < OUTCOME_KINDS * places.count)) expect.fail(`${table}: ${outcome}`)
      }
    }
  })

  it('stays on the map when it lands or runs beyond it', () => {
    const next = seededGenerator(4500)
    for (let point = 0; point < RUNS; point++) {
      const place = placeAt(places, (2 * next() - 1) * 2000, (2 * next() - 1) * 2000)
      if (!(place >= 0 && place < places.count)) expect.fail(String(place))
      if (groundOf(places, place) === undefined) expect.fail(`no class at place ${place}`)
    }
  })
})
