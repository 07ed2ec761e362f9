import type { Desk } from '../desk/desk.ts'
import type { Library, Loaded } from '../documents/use-library.ts'

/** What the desk still waits for, by name: `the course Sandrel Ness and the player Tobin Skell`; empty when all is here. */
export function awaitedNames(
  desk: Desk,
  library: Library,
  documents: {
    readonly course: Loaded<unknown>
    readonly player: Loaded<unknown>
    readonly opponent: Loaded<unknown>
  },
): string {
  const opponentId = desk.format.kind === 'match' ? desk.format.opponentId : null
  const wanted = [
    { word: 'course', id: desk.courseId, listed: library.courses, loaded: documents.course },
    { word: 'player', id: desk.playerId, listed: library.players, loaded: documents.player },
    { word: 'opponent', id: opponentId, listed: library.players, loaded: documents.opponent },
  ]
  return wanted
    .filter(({ id, loaded }) => id !== null && loaded.value === null && loaded.trouble === null)
    .map(({ word, id, listed }) => `the ${word} ${listed.find((one) => one.id === id)?.name ?? id}`)
    .join(' and ')
}
