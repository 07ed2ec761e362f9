import { cellIndex } from '#numbers/raster/raster.ts'
import type { HoleModel } from './hole-model.ts'
import { reliefPlaces } from './relief-places.ts'
import { restAt } from './rest-table.ts'
import { outcomeAt, type ShotTable } from './shot-table.ts'
import { metCells } from './slant-table.ts'

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
 * it, what catches it on its way up and down, and what the Rules leave to choose. It shares with the planner the tables
 * and the places, none of the sums.
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

/** One strike's ways to end: caught on its way up or down, or come to its landing. */
function endsOf(
  model: HoleModel,
  table: ShotTable,
  cell: number,
  k: number,
): { readonly weight: number; readonly outcome: number }[] {
  const { places } = model
  const { fine, coarse } = places
  // Strikes move the ball by whole fine cells.
  const snapped = (at: number, origin: number): number =>
    origin + fine.resolution * Math.round((at - origin) / fine.resolution)
  const x = snapped((places.x[cell] as number) + (table.dx[k] as number), fine.originX)
  const y = snapped((places.y[cell] as number) + (table.dy[k] as number), fine.originY)
  const right = coarse.originX + (coarse.columns - 1) * coarse.resolution
  const top = coarse.originY + (coarse.rows - 1) * coarse.resolution
  const landed = cellIndex(
    coarse,
    Math.min(Math.max(x, coarse.originX), right),
    Math.min(Math.max(y, coarse.originY), top),
  )
  const ends: { weight: number; outcome: number }[] = []
  let weight = table.weight[k] as number
  for (const [slant, from] of [
    [table.up[k], cell],
    [table.down[k], landed],
  ] as const) {
    const number = slant ? metCells(slant).indexOf(from) : -1
    if (!slant || number < 0) continue
    const before = weight
    for (let at = slant.first[number] as number; at < (slant.first[number + 1] as number); at++) {
      const caught = before * (slant.chance[at] as number)
      ends.push({ weight: caught, outcome: restAt(places, slant.outcome, at) })
      weight -= caught
    }
  }
  return [...ends, { weight, outcome: outcomeAt(places, table, k, placeUnder(model, x, y)) }]
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
