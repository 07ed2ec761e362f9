import { useMemo, useRef } from 'react'
import type { Course } from '#golf/course/course.ts'
import type { Hole } from '#golf/course/hole.ts'
import { holeFromCourse } from '#golf/course/hole-from-course.ts'
import type { Player } from '#golf/player/player.ts'
import type { Desk } from '../desk/desk.ts'
import { troubleOf } from '../documents/use-library.ts'
import type { Trouble } from '../planning/questions.ts'
import type { Situation } from '../planning/use-planning.ts'

/** The chosen hole as cut, and with the player what is planned. A pin that leaves the green stays where it last was. */
export function useSituation(
  desk: Desk,
  course: Course | null,
  player: Player | null,
  units: 'yards' | 'metres',
): { readonly hole: Hole | null; readonly situation: Situation | null; readonly trouble: Trouble | null } {
  const { holeRef, teeName, day, pin } = desk
  const kept = useRef<Hole | null>(null)
  const { hole, trouble } = useMemo((): { hole: Hole | null; trouble: Trouble | null } => {
    if (course === null || !course.holes.some(({ ref }) => ref === holeRef))
      return { hole: null, trouble: null }
    try {
      const choice = { ...(teeName === null ? {} : { tee: teeName }), day, ...(pin === 'day' ? {} : { pin }) }
      kept.current = holeFromCourse(course, holeRef, choice)
      return { hole: kept.current, trouble: null }
    } catch (error) {
      const isPin = typeof pin !== 'string' && kept.current?.ref === holeRef
      return { hole: isPin ? kept.current : null, trouble: isPin ? null : troubleOf(error) }
    }
  }, [course, holeRef, teeName, day, pin])
  const situation = useMemo(
    () =>
      hole === null || player === null || course === null
        ? null
        : { courseName: course.name, hole, player, day, units },
    [hole, player, course, day, units],
  )
  return { hole, situation, trouble }
}
