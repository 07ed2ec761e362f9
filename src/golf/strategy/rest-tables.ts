import type { GreenRuns } from '#golf/ball/run-today.ts'
import { GREEN_GRADE, MOST_GREEN_GRADE } from '#golf/ball/surface-settings.ts'
import type { GroundToday } from '#golf/ball/turf.ts'
import type { GreenSurface } from '#golf/course/green-surface.ts'
import { degreesToRadians } from '#numbers/units/units.ts'
import type { Places } from './places.ts'
import { restFrom, runGround } from './rest-from.ts'
import { type RestTable, restTable } from './rest-table.ts'
import { GREEN_RUN_STEP_METRES, RUN_HEADING_STEP_DEGREES, RUN_STEP_METRES } from './settings.ts'

/** Where balls come to rest, a table for each length of run and heading, kept. */
export interface RestTables {
  /**
   * By place, for balls that land off the green. `runMetres`: run on a level fairway as firm as today; `heading`: radians
   * clockwise from the y axis.
   */
  tableFor(runMetres: number, heading: number): RestTable
  /** By number of the place on the green, for balls that land there: they run by the slope where they land. */
  greenTablesFor(runs: GreenRuns): (heading: number) => RestTable
  /** Bytes of the tables made so far. */
  bytes(): number
  /** False when the green is level and the runs on a slope are not asked for. */
  readonly isGreenSloped: boolean
}

/** A run on the green is told apart up to this many steps either way. */
const MOST_GREEN_STEPS = 250

/** Rest tables of a hole: they depend on its ground and the length of its rough, not on player or wind. */
export function restTables(
  places: Places,
  green: GreenSurface,
  rough: GroundToday['rough'] = 'normal',
): RestTables {
  const ground = runGround(places, green, rough)
  const headingStep = degreesToRadians(RUN_HEADING_STEP_DEGREES)
  const headings = Math.round((2 * Math.PI) / headingStep)
  const kept = new Map<number, RestTable>()
  const keptOnGreen = new Map<number, RestTable>()
  // Signed, so that a heading and its mirror have exactly opposite sines.
  const indexOf = (heading: number): number =>
    ((Math.round(heading / headingStep) % headings) + headings) % headings
  const headingOf = (index: number): number => (index > headings / 2 ? index - headings : index) * headingStep

  function buildTable(steps: number, heading: number): RestTable {
    return restTable(places, places.count, (place) =>
      restFrom(ground, place, steps * RUN_STEP_METRES, heading, RUN_STEP_METRES),
    )
  }

  function buildGreenTable(runs: GreenRuns, heading: number): RestTable {
    const [sin, cos] = [Math.sin(heading), Math.cos(heading)]
    return restTable(places, places.greenPlaces.length, (index) => {
      const grade = (ground.riseX[index] as number) * sin + (ground.riseY[index] as number) * cos
      const run = runOnSlope(runs, grade)
      return restFrom(ground, places.greenPlaces[index] as number, run, heading, GREEN_RUN_STEP_METRES)
    })
  }

  return {
    bytes: () =>
      [...kept.values(), ...keptOnGreen.values()].reduce((sum, { words }) => sum + words.byteLength, 0),
    isGreenSloped: ground.isGreenSloped,
    tableFor(runMetres, heading) {
      const steps = Math.max(0, Math.round(runMetres / RUN_STEP_METRES))
      const index = indexOf(heading)
      const key = steps * headings + index
      const table = kept.get(key) ?? buildTable(steps, headingOf(index))
      kept.set(key, table)
      return table
    },
    greenTablesFor(runs) {
      const [falling, level, rising] = [runs.falling, runs.level, runs.rising].map((metres) =>
        Math.min(MOST_GREEN_STEPS, Math.max(-MOST_GREEN_STEPS, Math.round(metres / GREEN_RUN_STEP_METRES))),
      ) as [number, number, number]
      const width = 2 * MOST_GREEN_STEPS + 1
      const run = (falling * width + level) * width + rising
      const rounded = {
        falling: falling * GREEN_RUN_STEP_METRES,
        level: level * GREEN_RUN_STEP_METRES,
        rising: rising * GREEN_RUN_STEP_METRES,
      }
      return (heading) => {
        const index = indexOf(heading)
        const key = run * headings + index
        const table = keptOnGreen.get(key) ?? buildGreenTable(rounded, headingOf(index))
        keptOnGreen.set(key, table)
        return table
      }
    },
  }
}

/** The run on a green that rises by `grade` along the ball's way: on straight lines between the slopes worked out. */
function runOnSlope(runs: GreenRuns, grade: number): number {
  const share = Math.max(-MOST_GREEN_GRADE, Math.min(MOST_GREEN_GRADE, grade)) / GREEN_GRADE
  return share < 0
    ? runs.level - share * (runs.falling - runs.level)
    : runs.level + share * (runs.rising - runs.level)
}
