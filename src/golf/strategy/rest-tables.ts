import { RUN_SHARES } from '#golf/ball/settings.ts'
import { GROUND_CLASSES, groundCode } from '#golf/course/ground.ts'
import { degreesToRadians } from '#numbers/units/units.ts'
import { AT_REST, IN_RED, IN_YELLOW, OUT_OF_BOUNDS, type Outcome, outcomeOf } from './outcome.ts'
import { type Places, placeAt } from './places.ts'
import { LONGEST_CROSSING_METRES, RUN_HEADING_STEP_DEGREES, RUN_STEP_METRES } from './settings.ts'

/** For each place where a ball may land: what becomes of it. One table holds for one run and one heading. */
export type RestTable = Int32Array

/** Where balls come to rest, worked out once for each length of run and heading and kept. */
export interface RestTables {
  /** `runMetres`: run on a level fairway as firm as today; `heading`: radians clockwise from the y axis. */
  tableFor(runMetres: number, heading: number): RestTable
}

const OUT = groundCode('out')
const RED = groundCode('penalty-red')
const YELLOW = groundCode('penalty-yellow')
const RUN_SHARE_BY_CODE: readonly number[] = GROUND_CLASSES.map((ground) =>
  ground in RUN_SHARES ? RUN_SHARES[ground as keyof typeof RUN_SHARES] : 0,
)

/** Rest tables of a hole: they depend on its ground alone, not on player or wind. */
export function restTables(places: Places): RestTables {
  const headingStep = degreesToRadians(RUN_HEADING_STEP_DEGREES)
  const headings = Math.round((2 * Math.PI) / headingStep)
  const kept = new Map<number, RestTable>()
  return {
    tableFor(runMetres, heading) {
      const steps = Math.max(0, Math.round(runMetres / RUN_STEP_METRES))
      const headingIndex = ((Math.round(heading / headingStep) % headings) + headings) % headings
      const key = steps * headings + headingIndex
      let table = kept.get(key)
      if (!table) {
        // Signed, so that a heading and its mirror have exactly opposite sines.
        const signed = headingIndex > headings / 2 ? headingIndex - headings : headingIndex
        table = buildTable(places, steps, signed * headingStep)
        kept.set(key, table)
      }
      return table
    },
  }
}

function buildTable(places: Places, steps: number, heading: number): RestTable {
  const table = new Int32Array(places.count)
  for (let place = 0; place < places.count; place++) table[place] = restFrom(places, place, steps, heading)
  return table
}

/** Follows one run step by step: each ground uses up the run at its own rate; a penalty area or the boundary ends it. */
export function restFrom(places: Places, landing: number, steps: number, heading: number): Outcome {
  const dx = RUN_STEP_METRES * Math.sin(heading)
  const dy = RUN_STEP_METRES * Math.cos(heading)
  let x = places.x[landing] as number
  let y = places.y[landing] as number
  let place = landing
  let code = places.ground[place] as number
  if (code === OUT || code === RED || code === YELLOW) {
    const crossing = crossingPlace(places, x, y, heading)
    return outcomeOf(places, kindOf(code), crossing)
  }
  // Half a step more than the run, so that a run is rounded to whole steps and not cut down to them.
  let run = steps + 0.5
  for (;;) {
    const share = RUN_SHARE_BY_CODE[code] as number
    if (share === 0) break
    run -= 1 / share
    if (run < 0) break
    x += dx
    y += dy
    const next = placeAt(places, x, y)
    code = places.ground[next] as number
    if (code === OUT || code === RED || code === YELLOW) return outcomeOf(places, kindOf(code), place)
    place = next
  }
  return outcomeOf(places, AT_REST, place)
}

/** The last place outside the penalty area (or boundary) on the way back along the ball's own path; the landing itself when there is none. */
function crossingPlace(places: Places, x: number, y: number, heading: number): number {
  const dx = RUN_STEP_METRES * Math.sin(heading)
  const dy = RUN_STEP_METRES * Math.cos(heading)
  for (let back = 1; back * RUN_STEP_METRES <= LONGEST_CROSSING_METRES; back++) {
    const place = placeAt(places, x - back * dx, y - back * dy)
    const code = places.ground[place] as number
    if (code !== OUT && code !== RED && code !== YELLOW) return place
  }
  return placeAt(places, x, y)
}

function kindOf(code: number): number {
  return code === RED ? IN_RED : code === YELLOW ? IN_YELLOW : OUT_OF_BOUNDS
}
