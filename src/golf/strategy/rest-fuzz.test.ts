import { beforeAll, describe, expect, it } from 'vitest'
import { greenSurface } from '#golf/course/green-surface.ts'
import { GROUND_CLASSES, type Ground } from '#golf/course/ground.ts'
import { seededGenerator } from '#numbers/statistics/seeded-generator.ts'
import { degreesToRadians } from '#numbers/units/units.ts'
import { area, box, disc, inventedHole } from './invented-hole.fixture.ts'
import { oneRun } from './one-run.fixture.ts'
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
import { copyRests, type RestTable, restAt } from './rest-table.ts'
import { restTables } from './rest-tables.ts'
import { type RunGround, type RunWay, restsAlong, runGround, runWay } from './rests-along.ts'
import { GREEN_RUN_STEP_METRES, RUN_HEADING_STEP_DEGREES, RUN_STEP_METRES } from './settings.ts'

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
      const outcome = oneRun(ground, landing, run, { heading, stepMetres: RUN_STEP_METRES })
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

  /** What becomes of a run of so many steps along a way. */
  function along(landing: number, steps: number, way: RunWay): number | undefined {
    const rests = new Int32Array(steps + 1)
    restsAlong(ground, landing, way, false, steps, rests)
    return rests[steps]
  }

  it('runs by the kept cells of a way as by its own position', () => {
    const next = seededGenerator(4350)
    for (let ball = 0; ball < RUNS / 10; ball++) {
      const landing = Math.floor(next() * places.coarseCount)
      const heading = (2 * next() - 1) * Math.PI
      const run = 90 * next()
      const [kept, own] = [30, 0].map((steps) =>
        along(landing, Math.round(run / RUN_STEP_METRES), runWay(places, heading, RUN_STEP_METRES, steps)),
      )
      if (kept !== own) expect.fail(JSON.stringify({ ball, landing, heading, run, kept, own }))
    }
  })

  it('is found in the tables as it is followed', () => {
    const next = seededGenerator(4400)
    const rest = restTables(places, green)
    const step = degreesToRadians(RUN_HEADING_STEP_DEGREES)
    const turn = Math.round((2 * Math.PI) / step)
    for (let way = 0; way < 20; way++) {
      const asked = (2 * next() - 1) * 3 * Math.PI
      const index = ((Math.round(asked / step) % turn) + turn) % turn
      const heading = (index > turn / 2 ? index - turn : index) * step
      const runs = Array.from(
        { length: 3 },
        () => RUN_STEP_METRES * Math.floor((120 / RUN_STEP_METRES) * next()),
      )
      const tables = runs.map((run) => rest.tablesFor(run)(asked))
      const onGreen = Array.from({ length: 3 }, () => GREEN_RUN_STEP_METRES * Math.round(60 * next() - 20))
      const greenTables = onGreen.map((metres) =>
        rest.greenTablesFor({ falling: metres, level: metres, rising: metres })(asked),
      )
      // Some balls of one run are followed each alone; then all of another, and those of every other run beside them.
      for (let place = 0; place < places.count; place += 3) restAt(places, tables[0] as RestTable, place)
      for (let number = 0; number < places.greenPlaces.length; number += 3)
        restAt(places, greenTables[0] as RestTable, number)
      copyRests(places, tables[1] as RestTable, places.count, new Int32Array(places.count), 0)
      copyRests(
        places,
        greenTables[1] as RestTable,
        places.greenPlaces.length,
        new Int32Array(places.greenPlaces.length),
        0,
      )
      for (const [at, run] of runs.entries())
        for (let place = 0; place < places.count; place += 1) {
          const expected = oneRun(ground, place, run, { heading, stepMetres: RUN_STEP_METRES })
          if (restAt(places, tables[at] as RestTable, place) !== expected)
            expect.fail(JSON.stringify({ way, run, place }))
        }
      for (const [at, metres] of onGreen.entries())
        for (const [number, place] of places.greenPlaces.entries()) {
          const expected = oneRun(ground, place, metres, { heading, stepMetres: GREEN_RUN_STEP_METRES })
          if (restAt(places, greenTables[at] as RestTable, number) !== expected)
            expect.fail(JSON.stringify({ way, metres, place }))
        }
      const slopes = { falling: 40 * next() - 10, level: 30 * next() - 10, rising: 20 * next() - 10 }
      const onSlope = rest.greenTablesFor(slopes)(asked)
      for (let number = 0; number < places.greenPlaces.length; number++) {
        const outcome = restAt(places, onSlope, number)
        if (!(outcome >= 0 && outcome < OUTCOME_KINDS * places.count)) expect.fail(`${way}: ${outcome}`)
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
