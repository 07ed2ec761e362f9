import type { Crown } from '#golf/course/crown.ts'
import { cellIndex } from '#numbers/raster/raster.ts'
import type { HoleModel } from './hole-model.ts'
import { reliefPlaces } from './relief-places.ts'
import { outcomeAt, type ShotTable } from './shot-table.ts'
import type { StrikePaths } from './strike-paths.ts'

/** One thing that may become of a stroke from the middle of a cell, with its chance; chances of one stroke add up to 1. */
export type Fate =
  | { readonly kind: 'lies'; readonly chance: number; readonly place: number }
  /** Stroke and distance: one penalty stroke, and the stroke again. */
  | { readonly kind: 'back'; readonly chance: number }
  /** Dropped at the cheapest of these, unless going back is cheaper still. */
  | {
      readonly kind: 'relief'
      readonly chance: number
      readonly outcome: number
      readonly drops: readonly { readonly penalty: number; readonly place: number }[]
    }

/**
 * Spells a stroke out for an independent solver: which place each strike lands in, what its rest table says became of
 * it, where crowns on its way catch it, and what the Rules leave to choose. It shares with the planner the tables, the
 * places and the pieces of crowns on its rays, none of the sums.
 */
export function fatesOf(model: HoleModel, table: ShotTable, cell: number): Fate[] {
  const { places } = model
  const fates: Fate[] = []
  for (const { weight, outcome } of [...table.weight.keys()].flatMap((k) => endsOf(model, table, cell, k))) {
    const place = outcome % places.count
    const kind = (outcome - place) / places.count
    if (kind === 0) {
      const lost = places.lost[place] as number
      const barred = Math.min(places.unplayable[place] as number, 1 - lost)
      if (lost > 0) fates.push({ kind: 'back', chance: weight * lost })
      if (barred > 0) fates.push(reliefOf(model, weight * barred, outcome, kind, place))
      fates.push({ kind: 'lies', chance: weight * (1 - lost - barred), place })
    } else if (kind === 3 && !model.hole.localRules.includes('E-5'))
      fates.push({ kind: 'back', chance: weight })
    else fates.push(reliefOf(model, weight, outcome, kind, place))
  }
  return fates
}

/** One strike's ways to end: caught on some piece of crowns, or come to its landing. */
function endsOf(
  model: HoleModel,
  table: ShotTable,
  cell: number,
  k: number,
): { readonly weight: number; readonly outcome: number }[] {
  const { places, canopy } = model
  const [dx, dy] = [table.dx[k] as number, table.dy[k] as number]
  const placeOn = (share: number): number =>
    placeUnder(model, (places.x[cell] as number) + share * dx, (places.y[cell] as number) + share * dy)
  const ends: { weight: number; outcome: number }[] = []
  let weight = table.weight[k] as number
  const reach = Math.hypot(dx, dy)
  const stretches = table.paths ? stretchesOn(model, cell, Math.atan2(dx, dy)) : []
  for (const { from, until, crown } of stretches.flatMap((stretch) =>
    piecesOf(model, table, k, reach, stretch),
  )) {
    const { topMetres, baseMetres, densityPerMetre, trunkDensityPerMetre } = canopy.crowns[crown] as Crown
    const heights = [heightOf(table, k, from / reach), heightOf(table, k, until / reach)].toSorted(
      (a, b) => a - b,
    ) as [number, number]
    const within = (bottom: number, top: number): number =>
      Math.max(0, Math.min(heights[1], top) - Math.max(heights[0], bottom)) /
      Math.max(heights[1] - heights[0], 1e-12)
    const density =
      densityPerMetre * within(baseMetres, topMetres) + trunkDensityPerMetre * within(-1, baseMetres)
    const caught = weight * (1 - Math.exp(-density * (until - from)))
    const fall = placeOn((from + until) / 2 / reach)
    if (caught > 0)
      ends.push({
        weight: caught,
        outcome: ((table.paths as StrikePaths).falls[k] as Int32Array)[fall] as number,
      })
    weight -= caught
  }
  return [...ends, { weight, outcome: outcomeAt(places, table, k, placeOn(1)) }]
}

function stretchesOn({ canopy }: HoleModel, cell: number, direction: number): Stretch[] {
  const { fromCells } = canopy
  const ray = fromCells.rayAt(cell, fromCells.headingNumber(direction))
  if (ray === 0) return []
  const numbers = Array.from(
    { length: (fromCells.first[ray + 1] as number) - (fromCells.first[ray] as number) },
    (_, index) => (fromCells.first[ray] as number) + index,
  )
  return numbers.map((piece) => ({
    from: fromCells.from[piece] as number,
    to: fromCells.to[piece] as number,
    crown: fromCells.crown[piece] as number,
  }))
}

interface Stretch {
  readonly from: number
  readonly to: number
  readonly crown: number
}

/** The parts of a stretch where the strike is not surely above its crowns, in equal pieces of at most 6 m. */
function piecesOf(
  { canopy }: HoleModel,
  table: ShotTable,
  k: number,
  reach: number,
  { from, to, crown }: Stretch,
): { readonly from: number; readonly until: number; readonly crown: number }[] {
  if (from >= reach) return []
  const { clearFrom, clearTo, clearSteps } = table.paths as StrikePaths
  const { topMetres } = canopy.crowns[crown] as Crown
  const step = Math.ceil(topMetres * (clearSteps[k] as number))
  const [rises, sinks] = [reach * (clearFrom[step] ?? 1), reach * (clearTo[step] ?? 1)]
  const ends = Math.min(to, reach)
  const parts = (
    rises >= sinks
      ? [[from, ends]]
      : [
          [from, Math.min(ends, rises)],
          ...(ends === reach && topMetres < 3 ? [] : [[Math.max(from, sinks), ends]]),
        ]
  ) as [number, number][]
  return parts.flatMap(([begins, until]) => {
    const count = Math.max(0, Math.ceil((until - begins) / 6))
    const at = (piece: number): number => begins + (piece * (until - begins)) / count
    return Array.from({ length: count }, (_, piece) => ({ from: at(piece), until: at(piece + 1), crown }))
  })
}

/** Height of a strike at a share of its way, between the table's own heights. */
function heightOf(table: ShotTable, k: number, share: number): number {
  const { heights, reach, heightShare } = table.paths as StrikePaths
  const at = share * (heights.length - 1)
  const [low, high] = [
    heights[Math.floor(at)] ?? 0,
    heights[Math.min(Math.ceil(at), heights.length - 1)] ?? 0,
  ]
  return (low + (at % 1) * (high - low)) * (reach[k] as number) * (heightShare[k] as number)
}

/** Where a ball that takes relief is dropped by a player who knows the values: the cheapest drop, or `back` where playing again is cheaper. */
export function chosenRelief(
  fate: Fate & { readonly kind: 'relief' },
  values: Float64Array,
  cell: number,
): { readonly penalty: number; readonly place: number } | 'back' {
  const costOf = (drop: { readonly penalty: number; readonly place: number }): number =>
    drop.penalty + (values[drop.place] as number)
  const [cheapest] = fate.drops.toSorted((a, b) => costOf(a) - costOf(b))
  return cheapest && costOf(cheapest) <= 1 + (values[cell] as number) ? cheapest : 'back'
}

/** Every kind of thing that a plan's own strokes meet: a hole without one of them says nothing about it. */
export function kindsMet(
  model: HoleModel,
  values: Float64Array,
  shotOf: (cell: number) => ShotTable | null,
): Set<string> {
  const kinds = new Set<string>()
  for (const cell of model.states.order) {
    const table = shotOf(cell)
    for (const fate of table ? fatesOf(model, table, cell) : [])
      if (fate.kind !== 'relief') kinds.add(fate.kind)
      else kinds.add(chosenRelief(fate, values, cell) === 'back' ? 'relief declined' : 'relief taken')
  }
  return kinds
}

function reliefOf(model: HoleModel, chance: number, outcome: number, kind: number, place: number): Fate {
  const options = reliefPlaces(model.places, model.hole.pin, kind, place, model.hole.localRules)
  const drops = options.flatMap((option) =>
    [...option.places].map((drop) => ({ penalty: option.penaltyStrokes, place: drop })),
  )
  return { kind: 'relief', chance, outcome, drops }
}

/** The place under a point: a fine cell where there is one, else the nearest coarse cell. */
function placeUnder({ places }: HoleModel, x: number, y: number): number {
  const { coarse, fine } = places
  const fineCell = cellIndex(fine, x, y)
  const place = fineCell < 0 ? -1 : (places.finePlace[fineCell] as number)
  if (place >= 0) return place
  const right = coarse.originX + (coarse.columns - 1) * coarse.resolution
  const top = coarse.originY + (coarse.rows - 1) * coarse.resolution
  return cellIndex(
    coarse,
    Math.min(Math.max(x, coarse.originX), right),
    Math.min(Math.max(y, coarse.originY), top),
  )
}
