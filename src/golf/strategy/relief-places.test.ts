import { beforeAll, describe, expect, it } from 'vitest'
import { greenSurface } from '#golf/course/green-surface.ts'
import { groundAt } from '#golf/course/ground-at.ts'
import type { Hole } from '#golf/course/hole.ts'
import { type ReliefOption, reliefOptions } from '#golf/rules/relief-options.ts'
import { distance, type Point } from '#numbers/geometry/point.ts'
import { seededGenerator } from '#numbers/statistics/seeded-generator.ts'
import { holeGround, holeModel } from './hole-model.ts'
import { area, box, CALM_DAY, inventedHole } from './invented-hole.fixture.ts'
import { AT_REST, outcomeKind, outcomePlace } from './outcome.ts'
import { groundOf, type Places, placeAt, placesOf } from './places.ts'
import { ballSituation } from './relief/ball-situation.ts'
import { reliefChoices } from './relief/relief-choices.ts'
import { bestSpot } from './relief/value-of-spot.ts'
import { reliefPlaces } from './relief-places.ts'
import { restAt } from './rest-table.ts'
import { type RestTables, restTables } from './rest-tables.ts'
import { CELL_METRES, RUN_STEP_METRES } from './settings.ts'
import { smallHole, threeClubs } from './small-hole.fixture.ts'
import { solveHole } from './solve-hole.ts'

// The drops of the solver's cells against the relief worked out on the outlines (Rules of Golf 2023, 17.1d, 19.3, E-5).

/** Red water to the right behind 3 m of rough, yellow water across, a boundary to the left. */
const HOLE: Hole = inventedHole(330, [
  area('fairway', box(-16.3, 12.2, 60, 240)),
  area('penalty-red', box(15.2, 45.3, 90.4, 230.7)),
  area('penalty-yellow', box(-30.2, 15.2, 255.6, 270.3)),
  area('out', box(-200, -40.2, -100, 500)),
])

const EDGED: readonly string[] = ['penalty-red', 'penalty-yellow', 'out']

/** A ball that came down over an edge on a straight way that meets it at 45° or more, and what the two make of it. */
interface Case {
  readonly from: Point
  readonly ball: Point
  readonly outcome: number
  readonly crossing: Point
}

function casesOn(hole: Hole, places: Places, rest: RestTables, count: number): Case[] {
  const random = seededGenerator(11)
  const cases: Case[] = []
  while (cases.length < count) {
    const from: Point = [-30 + 60 * random(), 40 + 190 * random()]
    const heading = Math.PI * (random() - 0.5)
    const reach = 20 + 60 * random()
    const ball: Point = [from[0] + reach * Math.sin(heading), from[1] + reach * Math.cos(heading)]
    if (Math.abs(ball[0]) > 95) continue
    const ground = groundAt(hole, ball)
    const landing = placeAt(places, ball[0], ball[1])
    if (
      EDGED.includes(groundAt(hole, from)) ||
      !EDGED.includes(ground) ||
      groundOf(places, landing) !== ground
    )
      continue
    const crossing = ballSituation(hole, troubleOf(from, ball)).reference ?? ball
    // Every edge here runs along an axis: the one that was crossed is the one at the crossing.
    const isUpright = [15.2, 45.3, -30.2, -40.2].some((x) => Math.abs(crossing[0] - x) < 1e-4)
    const square = Math.abs(isUpright ? Math.sin(heading) : Math.cos(heading))
    if (square < Math.SQRT1_2) continue
    cases.push({ from, ball, crossing, outcome: restAt(places, rest.tablesFor(0)(heading), landing) })
  }
  return cases
}

const troubleOf = (from: Point, ball: Point) =>
  ({ from, isFromTee: false, ball, crossed: null, path: null, said: 'nothing' }) as const

const dropper = { hand: 'right', clubLengthMetres: 1.14 } as const

describe('relief on cells', () => {
  let places: Places
  let cases: Case[]
  beforeAll(() => {
    places = placesOf(HOLE)
    cases = casesOn(HOLE, places, restTables(places, greenSurface(HOLE)), 150)
  })

  it('starts from a place of crossing within a step and two half cells of the exact point, seen square to 45°', () => {
    const half = (CELL_METRES * Math.SQRT2) / 2
    // A cell takes its ground from its middle, the walk back goes in steps, and the heading of a run is rounded to 4°.
    const bound = (half + RUN_STEP_METRES) / Math.SQRT1_2 + half + 80 * Math.tan((2 * Math.PI) / 180)
    const errors = cases.map(({ outcome, crossing }) => {
      const at = outcomePlace(places, outcome)
      return distance([places.x[at] as number, places.y[at] as number], crossing)
    })
    expect(Math.max(...errors)).toBeLessThan(bound)
    expect(errors.reduce((sum, error) => sum + error, 0) / errors.length).toBeLessThan(CELL_METRES)
  })

  it('offers what the Rules offer, and drops a ball on no ground that its exact relief area has not (17.1d)', () => {
    for (const { from, ball, outcome } of cases) {
      const trouble = troubleOf(from, ball)
      const exact = reliefChoices(HOLE, trouble, ballSituation(HOLE, trouble), dropper).flatMap((choice) =>
        'reason' in choice || ['as-it-lies', 'stroke-and-distance'].includes(choice.option.kind)
          ? []
          : [choice],
      )
      const drops = reliefPlaces(
        places,
        HOLE.pin,
        outcomeKind(places, outcome),
        outcomePlace(places, outcome),
        [],
      )
      expect(drops.length).toBe(exact.length)
      const allowed = new Set(exact.flatMap(({ spots }) => spots.map((spot) => groundAt(HOLE, spot))))
      for (const place of drops.flatMap((drop) => [...drop.places]))
        expect(allowed, `from ${from} to ${ball}`).toContain(groundOf(places, place))
    }
  })

  it('keeps an unplayable ball in its bunker for one stroke and lets it out for two (19.3)', () => {
    const hole = inventedHole(330, [area('bunker', box(-9, 9, 180, 198))])
    const sand = placesOf(hole)
    const [line, beside, outside] = reliefPlaces(sand, hole.pin, AT_REST, placeAt(sand, 0, 190), [])
    for (const [relief, penalty] of [
      [line, 1],
      [beside, 1],
    ] as const) {
      expect(relief?.penaltyStrokes).toBe(penalty)
      for (const place of relief?.places ?? []) expect(groundOf(sand, place)).toBe('bunker')
    }
    expect(outside?.penaltyStrokes).toBe(2)
    expect(outside?.places.length).toBeGreaterThan(0)
    for (const place of outside?.places ?? []) expect(groundOf(sand, place)).not.toBe('bunker')
  })
})

describe('the value of relief on cells', () => {
  // A ball that crosses 13.9 m right, where two club-lengths just reach the fairway, is 0.2 dearer on cells, which put it
  // 1.1 m further right: within their error, but across the edge of another lie.
  it('is near the value of the exact spot, where the drop is in rough and where it is on fairway', () => {
    const hole = smallHole(180.7, 40.3)
    const model = holeModel(holeGround(hole, 3), threeClubs(), CALM_DAY)
    const solved = solveHole(model, { good: 8, mishit: 4 })
    const { places } = model
    for (const ball of [[20.5, 125] as const, [15, 112] as const]) {
      const trouble = { ...troubleOf([0, 0], ball), isFromTee: true }
      const choices = reliefChoices(hole, trouble, ballSituation(hole, trouble), dropper)
      const landing = placeAt(places, ball[0], ball[1])
      const outcome = restAt(places, model.rest.tablesFor(0)(Math.atan2(ball[0], ball[1])), landing)
      const [kind, at] = [outcomeKind(places, outcome), outcomePlace(places, outcome)]
      // The same strikes and the same player on both: what differs is where the ball is dropped.
      const [exact, cells] = [[], []] as [number[], number[]]
      for (const choice of choices) {
        if ('reason' in choice || !['lateral', 'back-on-the-line'].includes(choice.option.kind)) continue
        exact.push(bestSpot(model, solved, choice)?.strokes ?? Number.NaN)
      }
      for (const relief of reliefPlaces(places, hole.pin, kind, at, [])) {
        const best = [...relief.places].reduce((a, b) =>
          (solved.values[b] as number) < (solved.values[a] as number) ? b : a,
        )
        const spot: Point = [places.x[best] as number, places.y[best] as number]
        const option = reliefOptions({ situation: 'penalty-red', localRules: [] })[1] as ReliefOption
        const choice = { option, reference: spot, spots: [spot], areaAt: () => [], isValued: true }
        cells.push(bestSpot(model, solved, choice)?.strokes ?? Number.NaN)
      }
      expect(cells).toHaveLength(2)
      // 0.05 of a stroke is 6 to 8 m of fairway or rough at this distance: two cells and a step.
      expect(Math.abs(Math.min(...cells) - Math.min(...exact))).toBeLessThan(0.05)
    }
  })
})
