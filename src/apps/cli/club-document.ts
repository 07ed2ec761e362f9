import { clubWords } from '#golf/round/club-words.ts'
import type { ClubReport } from './club-command.ts'

/** `club/1`: rounds of many members together; strokes, positive where more were used. No name, file or date is in it. */
export function clubDocument({ course, club, indexes, isQuick, faults }: ClubReport): object {
  const { minimum, members, rounds, holes, parts, tees, locations, withheld } = club
  return {
    schema: 'club/1',
    course,
    minimum,
    members,
    rounds,
    quick: isQuick,
    parts,
    holes: holes.map(({ ref, par, members: of, overPar, overPlan }) => ({
      hole: ref,
      par,
      stroke_index: indexes[ref] ?? null,
      members: of,
      over_par: overPar,
      over_plan: overPlan,
    })),
    tees: tees.map(({ tee, members: of, greens, overPlan }) => ({
      tee,
      members: of,
      greens,
      over_plan: overPlan,
    })),
    locations: locations.map(({ ref, location, members: of, overPlan }) => ({
      hole: ref,
      location,
      members: of,
      over_plan: overPlan,
    })),
    withheld,
    sentences: clubWords(club, indexes),
    faults,
  }
}
