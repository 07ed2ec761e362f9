import type { GreenRuns } from '#golf/ball/run-today.ts'
import { GREEN_GRADE, MOST_GREEN_GRADE } from '#golf/ball/surface-settings.ts'
import type { GroundToday } from '#golf/ball/turf.ts'
import type { GreenSurface } from '#golf/course/green-surface.ts'
import { degreesToRadians } from '#numbers/units/units.ts'
import type { Places } from './places.ts'
import { restFamily } from './rest-family.ts'
import type { RestTable } from './rest-table.ts'
import { runGround, runWay } from './rests-along.ts'
import { GREEN_RUN_STEP_METRES, RUN_HEADING_STEP_DEGREES, RUN_STEP_METRES } from './settings.ts'

/** Where balls come to rest, a table for each length of run and heading, kept. */
export interface RestTables {
  /**
   * By place, for balls that land off the green, along a heading. `runMetres`: run on a level fairway as firm as today;
   * heading: radians clockwise from the y axis.
   */
  tablesFor(runMetres: number): (heading: number) => RestTable
  /** By number of the place on the green, for balls that land there: they run by the slope where they land. */
  greenTablesFor(runs: GreenRuns): (heading: number) => RestTable
  /** Bytes of the tables made so far. */
  bytes(): number
  /** False when the green is level and the runs on a slope are not asked for. */
  readonly isGreenSloped: boolean
}

/** Tables by number of the heading. */
type Kept = (RestTable | undefined)[]

/** Steps of a way whose cells are kept: more than balls commonly run. */
const KNOWN_STEPS = 40
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
  // Signed, so that a heading and its mirror have exactly opposite sines.
  const indexOf = (heading: number): number =>
    ((Math.round(heading / headingStep) % headings) + headings) % headings
  const headingOf = (index: number): number => (index > headings / 2 ? index - headings : index) * headingStep
  const [kept, keptOnGreen] = [new Map<number, Kept>(), new Map<number, Kept>()]
  const familyAt = once((index) =>
    restFamily(
      ground,
      runWay(places, headingOf(index), RUN_STEP_METRES, KNOWN_STEPS),
      places.count,
      (place) => place,
    ),
  )
  const familyOnGreenAt = once((index) =>
    restFamily(
      ground,
      runWay(places, headingOf(index), GREEN_RUN_STEP_METRES, 0),
      places.greenPlaces.length,
      (number) => places.greenPlaces[number] as number,
    ),
  )

  /** The steps of a run by number of the place on the green. */
  function stepsOnGreen(runs: GreenRuns, heading: number): (index: number) => number {
    const [sin, cos] = [Math.sin(heading), Math.cos(heading)]
    return (index) => {
      const grade = (ground.riseX[index] as number) * sin + (ground.riseY[index] as number) * cos
      const run = runOnSlope(runs, grade)
      return Math.sign(run) * Math.round(Math.abs(run) / GREEN_RUN_STEP_METRES)
    }
  }

  /** Tables of one run by heading, made when first asked for. */
  function byHeading(
    of: Map<number, Kept>,
    run: number,
    build: (index: number) => RestTable,
  ): (heading: number) => RestTable {
    const tables = of.get(run) ?? new Array<RestTable | undefined>(headings)
    of.set(run, tables)
    return (heading) => {
      const index = indexOf(heading)
      const known = tables[index] ?? build(index)
      tables[index] = known
      return known
    }
  }

  return {
    bytes: () =>
      [...kept.values(), ...keptOnGreen.values()]
        .flat()
        .reduce((sum, table) => sum + (table ? table.words.byteLength : 0), 0),
    isGreenSloped: ground.isGreenSloped,
    tablesFor(runMetres) {
      const steps = Math.max(0, Math.round(runMetres / RUN_STEP_METRES))
      return byHeading(kept, steps, (index) => familyAt(index).add(() => steps))
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
      return byHeading(keptOnGreen, run, (index) =>
        familyOnGreenAt(index).add(stepsOnGreen(rounded, headingOf(index))),
      )
    },
  }
}

/** Made for each number when it is first asked for, and kept. */
function once<Made>(make: (index: number) => Made): (index: number) => Made {
  const made: Made[] = []
  return (index) => {
    const known = made[index] ?? make(index)
    made[index] = known
    return known
  }
}

/** The run on a green that rises by `grade` along the ball's way: on straight lines between the slopes worked out. */
function runOnSlope(runs: GreenRuns, grade: number): number {
  const share = Math.max(-MOST_GREEN_GRADE, Math.min(MOST_GREEN_GRADE, grade)) / GREEN_GRADE
  return share < 0
    ? runs.level - share * (runs.falling - runs.level)
    : runs.level + share * (runs.rising - runs.level)
}
