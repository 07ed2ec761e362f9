import { useEffect } from 'react'
import * as edits from '../desk/edits.ts'
import type { Library } from '../documents/use-library.ts'
import { DESK, usePlace, wantedOfPlace } from './places.ts'
import type { Edit } from './use-desk.ts'

/** Lays on the desk what its address asks for, as one step of undo, and forgets it; what the store has not is left out. */
export function useWanted({ courses, players }: Library, edit: Edit): void {
  const place = usePlace()
  useEffect(() => {
    const wanted = wantedOfPlace(place)
    if (wanted === null) return
    const { playerId, ...hole } = wanted
    const hasCourse = hole.courseId === undefined || courses.some(({ id }) => id === hole.courseId)
    const hasPlayer = players.some(({ id }) => id === playerId)
    edit('lay out', (now) =>
      edits.layOut(now, {
        ...(hasCourse ? hole : {}),
        ...(hasPlayer && playerId !== undefined ? { playerId } : {}),
      }),
    )
    history.replaceState(null, '', DESK)
  }, [place, courses, players, edit])
}
