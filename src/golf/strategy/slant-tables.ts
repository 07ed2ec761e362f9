import { type Crown, crownOfTree } from '#golf/course/crown.ts'
import type { Hole } from '#golf/course/hole.ts'
import { degreesToRadians } from '#numbers/units/units.ts'
import type { Outcome } from './outcome.ts'
import type { Places } from './places.ts'
import { restAt } from './rest-table.ts'
import type { RestTables } from './rest-tables.ts'
import { LOW_GROWTH_METRES, OPENING_METRES, RUN_HEADING_STEP_DEGREES, SLANT_STEP_METRES } from './settings.ts'
import type { Slant } from './slant.ts'
import { type Catch, type SlantTable, slantTable, slantTableBytes } from './slant-table.ts'
import type { States } from './states.ts'

/** Tables of what stands over a hole, made when they are first asked for and kept. */
export interface SlantTables {
  /** Height of the highest crown, metres; 0 when nothing stands on the hole. */
  readonly tallest: number
  /** Bytes of the tables made so far. */
  bytes(): number
  /** By heading of the ball's way, radians clockwise from the y axis; `null` when nothing is in the way of any cell. */
  tablesFor(slant: Slant): (heading: number) => SlantTable | null
}

interface OpenCatch extends Catch {
  /** Number of the stretch of the way that it gathers, and the likeliest step's outcome in it. */
  readonly stretch: number
  outcome: Outcome
  chance: number
  most: number
}

/**
 * Sets out what catches balls near the ground. The crowns are looked at every few metres of the way, each time with
 * the chance 1 − exp(−density · metres); a ball that is caught drops straight down there, or within a few metres: catches on one short stretch are gathered.
 */
export function slantTables(hole: Hole, places: Places, states: States, rest: RestTables): SlantTables {
  const { columns, rows, resolution } = places.coarse
  const step = resolution / Math.ceil(resolution / SLANT_STEP_METRES)
  const trees = hole.trees.map((tree) => ({ at: tree.position, ...crownOfTree(tree) }))
  const covered = Int32Array.from(
    Array.from({ length: places.coarseCount }, (_, cell) => cell).filter((cell) => places.crown[cell] !== 0),
  )
  const tallest = Math.max(
    0,
    ...trees.map(({ crown }) => crown.topMetres),
    ...places.crowns.map((crown) => crown?.topMetres ?? 0),
  )
  const headingStep = degreesToRadians(RUN_HEADING_STEP_DEGREES)
  const headings = Math.round((2 * Math.PI) / headingStep)
  const kept = new Map<Slant, (SlantTable | null | undefined)[]>()

  function make(slant: Slant, heading: number): SlantTable | null {
    const left = new Float64Array(places.coarseCount).fill(1)
    const falls = rest.tablesFor(0)(heading)
    const catches: OpenCatch[] = []
    /** By cell: one more than the number of its last catch. */
    const last = new Int32Array(places.coarseCount)
    let stretch = 0
    const sign = slant.isDown ? -1 : 1
    const [sin, cos] = [sign * Math.sin(heading), sign * Math.cos(heading)]
    const steps = Math.ceil(slant.reach / step)
    const meet = (column: number, row: number, under: number, chance: number): void => {
      if (column < 0 || row < 0 || column >= columns || row >= rows) return
      const from = row * columns + column
      if (!slant.isDown && states.isState[from] === 0) return
      const before = left[from] as number
      if (before < LEAST_LEFT) return
      const caught = before * chance
      left[from] = before - caught
      const outcome = restAt(places, falls, under)
      const open = catches[(last[from] as number) - 1]
      if (open?.stretch !== stretch)
        last[from] = catches.push({ from, stretch, outcome, chance: caught, most: caught })
      else {
        open.chance += caught
        if (caught <= open.most) return
        open.most = caught
        open.outcome = outcome
      }
    }
    for (let count = 0; count < steps; count++) {
      // In the order in which the ball comes by.
      const away = ((slant.isDown ? steps - 1 - count : count) + 0.5) * step
      if (!slant.isDown && away <= OPENING_METRES) continue
      stretch = Math.floor((count * step) / CATCH_METRES)
      const height = Math.min(slant.rise * away, slant.ceiling)
      const chances = places.crowns.map((crown) => chanceOf(crown, height, slant.isDown, step))
      const [offColumns, offRows] = [
        Math.round((away * sin) / resolution),
        Math.round((away * cos) / resolution),
      ]
      for (const cell of covered) {
        const chance = chances[places.crown[cell] as number] as number
        if (chance === 0) continue
        const row = Math.floor(cell / columns)
        meet(cell - row * columns - offColumns, row - offRows, cell, chance)
      }
      for (const { at, crown, radiusMetres } of trees) {
        const chance = chanceOf(crown, height, slant.isDown, step)
        if (chance > 0)
          meetTree(at[0] - away * sin, at[1] - away * cos, radiusMetres, offColumns, offRows, chance)
      }
    }
    function meetTree(
      x: number,
      y: number,
      radius: number,
      offColumns: number,
      offRows: number,
      chance: number,
    ): void {
      const { originX, originY } = places.coarse
      for (
        let row = Math.ceil((y - radius - originY) / resolution);
        row * resolution + originY <= y + radius;
        row++
      )
        for (
          let column = Math.ceil((x - radius - originX) / resolution);
          column * resolution + originX <= x + radius;
          column++
        ) {
          if (Math.hypot(column * resolution + originX - x, row * resolution + originY - y) >= radius)
            continue
          const [underColumn, underRow] = [held(column + offColumns, columns), held(row + offRows, rows)]
          meet(column, row, underRow * columns + underColumn, chance)
        }
    }
    return catches.length === 0 ? null : slantTable(places, catches)
  }

  return {
    tallest,
    bytes: () =>
      [...kept.values()].flat().reduce((sum, table) => sum + (table ? slantTableBytes(table) : 0), 0),
    tablesFor(slant) {
      const byHeading = kept.get(slant) ?? []
      kept.set(slant, byHeading)
      return (heading) => {
        const signed = Math.round(heading / headingStep)
        const index = ((signed % headings) + headings) % headings
        const known = byHeading[index]
        if (known !== undefined) return known
        const made = make(slant, (index > headings / 2 ? index - headings : index) * headingStep)
        byHeading[index] = made
        return made
      }
    },
  }
}

/** Chance of being caught over one step at a height. Low growth catches what flies through it, not what comes down into it. */
function chanceOf(crown: Crown | null, height: number, isDown: boolean, metres: number): number {
  if (crown === null || height >= crown.topMetres) return 0
  if (isDown && crown.topMetres < LOW_GROWTH_METRES) return 0
  const density = height < crown.baseMetres ? crown.trunkDensityPerMetre : crown.densityPerMetre
  return -Math.expm1(-density * metres)
}

/** A ball hardly ever gets past so much growth that a smaller share is left: it is taken to land. */
const LEAST_LEFT = 2e-3
/** Catches on so many metres of the way are gathered. */
const CATCH_METRES = 9

function held(index: number, size: number): number {
  return Math.min(size - 1, Math.max(0, index))
}
