import { useMemo, useState } from 'react'
import type { Hole } from '#golf/course/hole.ts'
import { type HazardMove, NOT_MOVED } from '#golf/course/move-hazards.ts'
import type { HeldHazard } from '../chart/hazard-handles.tsx'
import type { Desk, Reader } from '../desk/desk.ts'
import * as edits from '../desk/edits.ts'
import { hazardsOf, type NamedHazard } from '../hazard-words.ts'
import type { Edit } from './use-desk.ts'

/** The hazards of the hole, the one that is taken up, and how they are moved. */
export function useHazards(
  surveyed: Hole | null,
  desk: Desk,
  reader: Reader,
  edit: Edit,
): {
  readonly named: readonly NamedHazard[]
  readonly held: HeldHazard | null
  readonly take: (id: string | null) => void
  readonly move: (id: string, move: HazardMove, drag: number | null) => void
  readonly restore: (id: string) => void
} {
  const [taken, take] = useState<string | null>(null)
  const named = useMemo(() => (surveyed === null ? [] : hazardsOf(surveyed, reader)), [surveyed, reader])
  const area = surveyed?.areas.find(({ id }) => id === taken)
  const words = named.find(({ id }) => id === taken)?.words
  const held =
    area === undefined || words === undefined
      ? null
      : { id: area.id, words, surveyed: area.polygon, move: desk.moved[area.id] ?? NOT_MOVED }
  return {
    named,
    held,
    take,
    move: (id, move, drag) => edit(`hazard ${id}`, (now) => edits.moveHazard(now, id, move), drag),
    restore: (id) => edit('hazard back', (now) => edits.restoreHazard(now, id)),
  }
}
