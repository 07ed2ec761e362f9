import { useMemo, useRef } from 'react'
import type { Course } from '#golf/course/course.ts'
import type { Day } from '#golf/course/day.ts'
import type { Hole } from '#golf/course/hole.ts'
import { holeFromCourse } from '#golf/course/hole-from-course.ts'
import { moveHazards } from '#golf/course/move-hazards.ts'
import { withOwnCarries } from '#golf/player/own-carries.ts'
import type { Player } from '#golf/player/player.ts'
import { withSpread } from '#golf/player/with-spread.ts'
import { holesAfter } from '#golf/strategy/holes-after.ts'
import type { Desk } from '../desk/desk.ts'
import { askedOf, type Format, lastHoleOf } from '../desk/format.ts'
import { troubleOf } from '../documents/use-library.ts'
import type { AskedFormat, Trouble } from '../planning/questions.ts'
import type { Situation } from '../planning/use-planning.ts'

/** The chosen hole as surveyed and cut, the same with its hazards as moved, and with the player what is planned. A pin that leaves the green stays where it last was. */
export function useSituation(
  desk: Desk,
  course: Course | null,
  player: Player | null,
  units: 'yards' | 'metres',
  opponent: Player | null,
): {
  readonly surveyed: Hole | null
  readonly hole: Hole | null
  /** The player with the carries typed on the desk. */
  readonly own: Player | null
  readonly situation: Situation | null
  readonly trouble: Trouble | null
} {
  const { holeRef, teeName, day, pin, ball, moved, carries, spread, format } = desk
  const kept = useRef<Hole | null>(null)
  const { surveyed, trouble } = useMemo((): { surveyed: Hole | null; trouble: Trouble | null } => {
    if (course === null || !course.holes.some(({ ref }) => ref === holeRef))
      return { surveyed: null, trouble: null }
    try {
      const choice = { ...(teeName === null ? {} : { tee: teeName }), day, ...(pin === 'day' ? {} : { pin }) }
      kept.current = holeFromCourse(course, holeRef, choice)
      return { surveyed: kept.current, trouble: null }
    } catch (error) {
      const isPin = typeof pin !== 'string' && kept.current?.ref === holeRef
      return { surveyed: isPin ? kept.current : null, trouble: isPin ? null : troubleOf(error) }
    }
  }, [course, holeRef, teeName, day, pin])
  const hole = useMemo(() => surveyed && moveHazards(surveyed, moved), [surveyed, moved])
  const own = useMemo(() => player && withOwnCarries(player, carries), [player, carries])
  const playing = useMemo(() => own && (spread === 1 ? own : withSpread(own, spread)), [own, spread])
  const played = useMemo(
    () => playedFor(format, opponent, course, surveyed, day),
    [format, opponent, course, surveyed, day],
  )
  const situation = useMemo(
    () =>
      hole === null || playing === null || course === null
        ? null
        : { courseName: course.name, hole, player: playing, day, ball, units, format: played.format },
    [hole, playing, course, day, ball, units, played.format],
  )
  return { surveyed, hole, own, situation, trouble: trouble ?? played.trouble }
}

/** What the hole is played for, with the later holes that count too as they are cut. */
function playedFor(
  format: Format,
  opponent: Player | null,
  course: Course | null,
  hole: Hole | null,
  day: Day,
): { readonly format: AskedFormat | null; readonly trouble: Trouble | null } {
  const asked = askedOf(format, opponent)
  if (asked === null || course === null || hole === null) return { format: null, trouble: null }
  const through = lastHoleOf(format)
  try {
    const later = through === null ? [] : (holesAfter(course, hole, day, through) ?? [])
    return { format: { asked, teeSets: course.teeSets, later }, trouble: null }
  } catch (error) {
    return { format: null, trouble: troubleOf(error) }
  }
}
