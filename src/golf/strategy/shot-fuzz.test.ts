import { describe, expect, it } from 'vitest'
import { greenSurface } from '#golf/course/green-surface.ts'
import { GROUND_CLASSES } from '#golf/course/ground.ts'
import { completePlayer } from '#golf/player/complete-player.ts'
import { LIE_NAMES, seenLie } from '#golf/player/lie-names.ts'
import type { Player } from '#golf/player/player.ts'
import { MOST_STANCE_DEGREES } from '#golf/player/stance-settings.ts'
import { seededGenerator } from '#numbers/statistics/seeded-generator.ts'
import { type Situation, tableFor } from './evaluate-stroke.ts'
import { type HoleModel, holeGround, holeModel } from './hole-model.ts'
import { area, box, CALM_DAY, disc, inventedHole } from './invented-hole.fixture.ts'
import { oneRun } from './one-run.fixture.ts'
import { OUTCOME_KINDS, outcomeKind, outcomePlace } from './outcome.ts'
import { groundOf } from './places.ts'
import type { RestTable } from './rest-table.ts'
import { runGround } from './rests-along.ts'
import { GREEN_RUN_STEP_METRES, RUN_STEP_METRES } from './settings.ts'
import { shotsOf } from './shots.ts'
import { strikesOf } from './strikes.ts'
import { strokeEnds } from './stroke-ends.ts'

const SHOTS = 100_000
/** Parts, so that a hanging shot is seen in one of them and no part runs long. */
const PARTS = 8
const DAYS = 5
const STRIKES = strikesOf({ good: 200, mishit: 50 })

const ground = holeGround(
  {
    ...inventedHole(320, [
      area('fairway', box(-16.3, 17.2, 60.4, 300.3)),
      area('first-cut', box(17.2, 21.9, 60.4, 300.3)),
      area('heavy', box(21.9, 38.6, 90.2, 205.7)),
      area('scrub', box(-44.6, -31.1, 80.3, 160.8)),
      area('trees', box(-72.2, -44.6, 60.1, 220.4)),
      area('path', box(-24.1, -21.3, 10.2, 300.6)),
      area('bunker', disc([-9.4, 212.7], 7.2)),
      area('penalty-red', box(31.8, 58.3, 205.7, 320.4)),
      area('penalty-yellow', box(-60.4, 60.2, 252.3, 264.9)),
      area('fringe', disc([0, 320], 13.4)),
      area('out', box(61.2, 300, -100, 500)),
    ]),
    greenFallPercent: 4,
    greenFallTowardDegrees: 200,
    riseMetres: -12,
  },
  6,
)

const bag = (handicapIndex: number, hand: 'right' | 'left'): Player =>
  completePlayer({
    name: 'x',
    hand,
    sex: 'unstated',
    handicapIndex,
    clubs: [],
    shortGame: {},
    putting: {},
  })
const players = [bag(-5, 'right'), bag(17, 'left'), bag(54, 'right')]

/** The same model with a run followed for each ball alone: keeping a table of every place for a single ball takes too much room. */
function withLazyTables(model: HoleModel, rough: 'short' | 'normal' | 'long'): HoleModel {
  const { places } = model
  const running = runGround(places, greenSurface(model.hole), rough)
  const lazy = (follow: RestTable['follow']): RestTable => ({
    words: new Proxy(new Int32Array(0), { get: () => places.count, set: () => true }),
    follow,
    followAll: follow,
  })
  return {
    ...model,
    rest: {
      isGreenSloped: true,
      bytes: () => 0,
      tablesFor: (run) => (heading) => {
        const way = { heading, stepMetres: RUN_STEP_METRES }
        return lazy((place) => oneRun(running, place, run, way))
      },
      greenTablesFor: (runs) => (heading) => {
        const way = { heading, stepMetres: GREEN_RUN_STEP_METRES }
        const run = Math.sin(heading) > 0 ? runs.rising : runs.falling
        return lazy((index) => oneRun(running, places.greenPlaces[index] as number, run, way))
      },
    },
  }
}

describe('any club from any lie and stance on any day', () => {
  it.each(Array.from({ length: PARTS }, (_, part) => part))(
    'ends in a finite place of a known class, the chances of a shot adding up, part %i',
    (part) => {
      const next = seededGenerator(4600 + part)
      const between = (low: number, high: number): number => low + (high - low) * next()
      const one = <T>(of: readonly T[]): T => of[Math.floor(next() * of.length)] as T
      let balls = 0
      for (let count = 0; count < DAYS; count++) {
        const player = one(players)
        const rough = one(['short', 'normal', 'long'] as const)
        const model = withLazyTables(
          holeModel(ground, player, {
            ...CALM_DAY,
            wind: { speedMetresPerSecond: between(0, 18), fromDegrees: between(0, 360) },
            temperatureCelsius: between(-5, 40),
            altitudeMetres: between(0, 2500),
            firmness: between(0.2, 2.5),
            greenSpeedFeet: between(5, 14),
            rough,
          }),
          rough,
        )
        const shots = shotsOf(player)
        for (let stroke = 0; stroke < SHOTS / PARTS / DAYS / STRIKES.count; stroke++) {
          const seen = seenLie(one(LIE_NAMES))
          if (!seen) throw new Error('a lie without a name')
          const most = MOST_STANCE_DEGREES
          const situation: Situation = {
            ...seen,
            x: between(-90, 90),
            y: between(-30, 380),
            ...(next() < 0.7 && {
              stance: { uphillDegrees: between(-most, most), aboveDegrees: between(-most, most) },
            }),
          }
          const table = tableFor(model, situation, one(shots), between(-Math.PI, Math.PI), STRIKES)
          const say = (k: number): string =>
            JSON.stringify({ count, stroke, k, situation, club: table.shot.club, heading: table.heading })
          let chances = 0
          const ends = strokeEnds(model, table, situation.x, situation.y)
          for (let end = 0; end < ends.count; end++) {
            const k = ends.strike[end] as number
            const outcome = ends.outcome[end] as number
            const place = outcomePlace(model.places, outcome)
            const isSound =
              Number.isFinite(table.dx[k]) &&
              Number.isFinite(table.dy[k]) &&
              Math.hypot(table.dx[k] as number, table.dy[k] as number) < 700 &&
              Number.isInteger(outcome) &&
              outcome >= 0 &&
              outcomeKind(model.places, outcome) < OUTCOME_KINDS &&
              GROUND_CLASSES.includes(groundOf(model.places, place))
            if (!isSound) expect.fail(say(k))
            chances += ends.weight[end] as number
          }
          balls += STRIKES.count
          if (!(Math.abs(chances - 1) < 1e-9)) expect.fail(say(-1))
        }
      }
      expect(balls).toBe(SHOTS / PARTS)
    },
  )
})
