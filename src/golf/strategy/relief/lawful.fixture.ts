import { expect } from 'vitest'
import type { Ground } from '#golf/course/ground.ts'
import { groundAt } from '#golf/course/ground-at.ts'
import type { Hole } from '#golf/course/hole.ts'
import { nearestEdge } from '#numbers/geometry/nearest-edge.ts'
import { distance, type Point, type Polygon } from '#numbers/geometry/point.ts'
import { polygonArea, polygonContains } from '#numbers/geometry/polygon.ts'
import { area, inventedHole } from '../invented-hole.fixture.ts'
import { CLUB_LENGTH_METRES } from '../settings.ts'
import { type BallInTrouble, ballSituation } from './ball-situation.ts'
import type { EmptyChoice, ReliefChoice } from './relief-choice.ts'
import { reliefChoices } from './relief-choices.ts'

/** One club-length. */
export const CLUB: number = CLUB_LENGTH_METRES
/** The hole of {@link withAreas}. */
export const PIN: Point = [0, 300]

/** A straight hole of 300 m with the given ground. */
export const withAreas = (...areas: readonly [ground: Ground, polygon: Polygon][]): Hole =>
  inventedHole(
    300,
    areas.map(([ground, polygon], index) => area(ground, polygon, `${ground} ${index}`)),
  )

const plain: BallInTrouble = {
  from: [0, 0],
  isFromTee: true,
  ball: null,
  crossed: null,
  path: null,
  said: 'nothing',
}

/** What the Rules give a ball. */
export interface Answer {
  readonly reference: Point | null
  readonly choices: readonly (ReliefChoice | EmptyChoice)[]
  /** Kind and clause of each option that gives something, in the order of the Rules. */
  readonly offered: readonly string[]
  readonly empty: readonly string[]
}

/** Every option for a ball on a hole. */
export function ask(hole: Hole, trouble: Partial<BallInTrouble>, hand: 'right' | 'left' = 'right'): Answer {
  const whole = { ...plain, ...trouble }
  const situation = ballSituation(hole, whole)
  const choices = reliefChoices(hole, whole, situation, { hand, clubLengthMetres: CLUB })
  const words = (one: ReliefChoice | EmptyChoice): string =>
    `${one.option.kind} ${one.option.clause} +${one.option.penaltyStrokes}`
  return {
    reference: situation.reference,
    choices,
    offered: choices.filter((one) => 'spots' in one).map(words),
    empty: choices.filter((one) => 'reason' in one).map(words),
  }
}

/** The option of a kind; throws when it is not offered. */
export function choice(answer: Answer, kind: string): ReliefChoice {
  const found = answer.choices.find((one) => one.option.kind === kind)
  if (!found || 'reason' in found) throw new Error(`${kind} is not offered`)
  return found
}

/** What every relief under every Rule must be: each spot in its own area, the area no nearer the hole, on the course. */
export function expectLawful(hole: Hole, answer: Answer): void {
  for (const one of answer.choices) {
    if ('reason' in one || one.option.kind === 'as-it-lies') continue
    expect(one.spots.length, one.option.kind).toBeGreaterThan(0)
    const away = distance(hole.pin, one.reference)
    const isLine = one.option.kind.startsWith('back-on-the-line')
    for (const spot of isLine ? one.spots.slice(0, 3) : one.spots) {
      const polygons = one.areaAt(spot)
      if (one.option.kind !== 'stroke-and-distance' || one.lie !== 'tee')
        expect(distance(hole.pin, spot), `${one.option.kind} nearer`).toBeGreaterThan(away - 1e-5)
      expect(
        polygons.some(
          (polygon) => polygonContains(polygon, spot) || nearestEdge(polygon, spot).distance < 0.002,
        ),
        `${one.option.kind} spot ${spot} in its area`,
      ).toBe(true)
      for (const corner of polygons.flat(2)) {
        if (one.lie !== 'tee') expect(distance(hole.pin, corner)).toBeGreaterThan(away - 1e-5)
        const clubs = one.option.clubLengths
        const centre = isLine ? spot : one.reference
        if (clubs !== null) expect(distance(centre, corner)).toBeLessThan(clubs * CLUB + 1e-5)
      }
      expect(['out', 'penalty-red', 'penalty-yellow']).not.toContain(groundAt(hole, spot))
    }
  }
}

/** Square metres of an area. */
export const size = (polygons: readonly Polygon[]): number =>
  polygons.reduce((sum, polygon) => sum + polygonArea(polygon), 0)
