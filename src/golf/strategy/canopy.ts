import { type Crown, crownOfTree } from '#golf/course/crown.ts'
import type { Hole } from '#golf/course/hole.ts'
import { degreesToRadians } from '#numbers/units/units.ts'
import { type CrownRays, crownRays } from './crown-rays.ts'
import { type Places, placeAt } from './places.ts'
import {
  BALL_RAY_STEP_DEGREES,
  BALL_RAY_STEP_METRES,
  CELL_RAY_STEP_DEGREES,
  HAMPERING_METRES,
  OPENING_METRES,
  RAY_REACH_METRES,
} from './settings.ts'

/** Everything over a hole that may catch a ball in flight: the crowns of woods and scrub by place, and single trees. */
export interface Canopy {
  /** Nothing stands on the hole: no path need be looked at. */
  readonly isEmpty: boolean
  /** By the crown numbers of rays. */
  readonly crowns: readonly Crown[]
  /** Rays from the middles of coarse cells, as far as what hampers a stroke: the slot is the cell. */
  readonly fromCells: CrownRays
  /** Rays from one point, finer; kept for the last point asked about. The slot is 0. */
  fromPoint(x: number, y: number): CrownRays
}

interface StandingTree {
  readonly x: number
  readonly y: number
  readonly radius: number
  readonly crown: number
}

/** Sets out the crowns of a hole. Rays are followed when they are first asked for, and kept. */
export function canopyOf(hole: Hole, places: Places): Canopy {
  const crowns = places.crowns.map((crown) => crown ?? NOTHING)
  const trees = hole.trees.map((tree): StandingTree => {
    const { crown, radiusMetres } = crownOfTree(tree)
    return { x: tree.position[0], y: tree.position[1], radius: radiusMetres, crown: crowns.push(crown) - 1 }
  })
  const cellMetres = places.coarse.resolution
  const topOf = (crown: number): number => (crowns[crown] as Crown).topMetres
  const fromCells = crownRays({
    slots: crowns.length === 1 ? 0 : places.coarseCount,
    stepRadians: degreesToRadians(CELL_RAY_STEP_DEGREES),
    topOf,
    follow: (slot, heading, add) =>
      follow(
        places,
        trees,
        places.x[slot] as number,
        places.y[slot] as number,
        heading,
        cellMetres,
        HAMPERING_METRES,
        add,
      ),
  })
  let last: { readonly x: number; readonly y: number; readonly rays: CrownRays } | null = null
  return {
    isEmpty: crowns.length === 1,
    crowns,
    fromCells,
    fromPoint(x, y) {
      if (last?.x === x && last.y === y) return last.rays
      const rays = crownRays({
        slots: 1,
        stepRadians: degreesToRadians(BALL_RAY_STEP_DEGREES),
        topOf,
        follow: (_, heading, add) =>
          follow(places, trees, x, y, heading, BALL_RAY_STEP_METRES, RAY_REACH_METRES, add),
      })
      last = { x, y, rays }
      return rays
    },
  }
}

const NOTHING: Crown = { topMetres: 0, baseMetres: 0, densityPerMetre: 0, trunkDensityPerMetre: 0 }
/** Where in a step the ground is looked at: off the middle, since steps from the middle of a cell end on edges of cells. */
const LOOK_AT = 0.45

/** Follows one ray over the ground and past the single trees, and hands over its stretches under crowns, nearest first. */
function follow(
  places: Places,
  trees: readonly StandingTree[],
  x: number,
  y: number,
  heading: number,
  step: number,
  farthest: number,
  add: (from: number, to: number, crown: number) => void,
): void {
  const sin = Math.sin(heading)
  const cos = Math.cos(heading)
  const { coarse } = places
  const left = coarse.originX - 0.5 * coarse.resolution
  const bottom = coarse.originY - 0.5 * coarse.resolution
  const right = coarse.originX + (coarse.columns - 0.5) * coarse.resolution
  const top = coarse.originY + (coarse.rows - 0.5) * coarse.resolution
  const stretches: [from: number, to: number, crown: number][] = []
  let begun = 0
  let under = 0
  for (let at = 0; at * step < farthest; at++) {
    const lookX = x + sin * (at + LOOK_AT) * step
    const lookY = y + cos * (at + LOOK_AT) * step
    const isOutside = lookX > right || lookY > top || lookX < left || lookY < bottom
    const crown = isOutside ? 0 : (places.crown[placeAt(places, lookX, lookY)] as number)
    if (crown !== under) {
      if (under > 0) stretches.push([begun * step, at * step, under])
      begun = at
      under = crown
    }
    if (isOutside) break
  }
  for (const tree of trees) {
    const along = (tree.x - x) * sin + (tree.y - y) * cos
    const across = (tree.x - x) * cos - (tree.y - y) * sin
    if (Math.abs(across) >= tree.radius || along <= -tree.radius || along > farthest) continue
    const half = Math.sqrt(tree.radius ** 2 - across ** 2)
    stretches.push([along - half, along + half, tree.crown])
  }
  stretches.sort((a, b) => a[0] - b[0] || a[2] - b[2])
  for (const [from, to, crown] of stretches)
    if (to > OPENING_METRES) add(Math.max(from, OPENING_METRES), to, crown)
}
