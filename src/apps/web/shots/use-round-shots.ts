import { useMemo } from 'react'
import type { Course } from '#golf/course/course.ts'
import { REFERENCE_DAY } from '#golf/course/day.ts'
import type { Player } from '#golf/player/player.ts'
import { type RoundsRead, readRounds, roundShotsQuestions } from '#golf/round/read-rounds.ts'
import { loadCourse } from '../documents/load-course.ts'
import { useLoaded } from '../documents/use-library.ts'
import { faultWords } from '../page/fault-words.ts'
import { afterRound, afterState } from '../planning/after-round.ts'
import type { Trouble } from '../planning/questions.ts'
import { useWork, type Work } from '../planning/use-work.ts'
import type { RoundToLearn } from './rounds-to-learn.ts'

/** What rounds say, as far as their holes are worked out. */
export interface RoundShots {
  readonly work: Work<unknown>
  /** `null` until every hole is there. */
  readonly read: RoundsRead | null
  /** Holes that are left out, and what in the logs does not make sense. */
  readonly left: readonly string[]
  readonly trouble: Trouble | null
}

/** Reads rounds in workers, a hole with all that was logged on it at a time; `rounds` and `player` must be kept by the caller. */
export function useRoundShots(rounds: readonly RoundToLearn[], player: Player): RoundShots {
  const ids = [...new Set(rounds.map(({ course }) => course.id))]
  const { value: courses, trouble } = useLoaded(ids.length === 0 ? null : ids.join('/'), loadCourses)
  const asked = useMemo(() => {
    if (courses === null) return null
    const found = [...courses].map(([id, course]) =>
      roundShotsQuestions(
        rounds.filter((one) => one.course.id === id),
        { course, player, day: REFERENCE_DAY, tee: null },
        true,
      ),
    )
    return {
      faults: found.flatMap(({ faults }) => faults),
      key: JSON.stringify(['shots', [...courses], rounds, player]),
      pieces: found.flatMap(({ questions }, at) =>
        questions.map((of, index) => ({
          name: `${at} ${of.hole.ref} ${index}`,
          question: { kind: 'shots', of } as const,
        })),
      ),
    }
  }, [courses, rounds, player])
  const work = useWork(asked, afterRound, afterState)
  const { states } = work
  const taken = useMemo(() => {
    if (rounds.length === 0) return { read: readRounds([], []), left: [] }
    if (asked === null) return { read: null, left: [] }
    const found = asked.pieces.flatMap(({ name }) => states[name] ?? [])
    const holes = found.flatMap((state) => ('ofHole' in state ? [state.ofHole] : []))
    const missing = found.flatMap((state) => ('missing' in state ? [state.missing] : []))
    return {
      read: found.length === asked.pieces.length ? readRounds(rounds, holes) : null,
      left: [...missing, ...asked.faults.map(faultWords)],
    }
  }, [asked, states, rounds])
  return { work, trouble, ...taken }
}

/** Courses by id, of ids with strokes between them, which no id has. */
async function loadCourses(ids: string): Promise<ReadonlyMap<string, Course>> {
  return new Map(await Promise.all(ids.split('/').map(async (id) => [id, await loadCourse(id)] as const)))
}
