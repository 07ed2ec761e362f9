import { isOfPlayer, isOnCourse, type KeptRoundFile, type Named } from '../rounds/kept-round.ts'

/** Which rounds are a player's on a course. */
export function roundsOf(
  all: readonly KeptRoundFile[],
  course: Named,
  player: Named,
): readonly KeptRoundFile[] {
  return all.filter(({ belongs }) => isOnCourse(belongs, course) && isOfPlayer(belongs, player))
}
