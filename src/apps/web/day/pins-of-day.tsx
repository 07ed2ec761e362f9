import { type ReactElement, useMemo } from 'react'
import type { Course } from '#golf/course/course.ts'
import type { Day } from '#golf/course/day.ts'
import type { Hole } from '#golf/course/hole.ts'
import { drawPin } from '#paper/book/pin-sheet.ts'
import { Picture } from '../chart/picture.tsx'
import { TypedLines } from '../page/typed-lines.tsx'
import { type HoleOfDay, holeOfDay } from './typed-day.ts'

/** Every green of the course with its pin as it is typed, and what cannot be there said below. */
export function PinsOfDay(props: {
  readonly course: Course
  readonly lines: Readonly<Record<string, string>>
  readonly onLine: (ref: string, line: string) => void
  readonly holes: Readonly<Record<string, HoleOfDay>>
}): ReactElement {
  const { course, lines, onLine, holes } = props
  return (
    <TypedLines
      name="pin"
      refs={course.holes.map(({ ref }) => ref)}
      lines={lines}
      faultsOf={(ref) => {
        const fault = holes[ref]?.fault ?? null
        return fault === null ? [] : [fault]
      }}
      onLine={onLine}
      beside={(ref) => {
        const hole = holes[ref]?.hole ?? null
        return hole === null ? null : <Green hole={hole} />
      }}
    />
  )
}

function Green({ hole }: { readonly hole: Hole }): ReactElement {
  const drawing = useMemo(() => drawPin(hole), [hole])
  return <Picture drawing={drawing} className="pin-picture" />
}

/** The holes of a course as the lines cut them; one whose line has not changed is the same object as before. */
export function useHolesOfDay(
  course: Course | null,
  day: Day,
  lines: Readonly<Record<string, string>>,
): Readonly<Record<string, HoleOfDay>> {
  // biome-ignore lint/correctness/useExhaustiveDependencies: what is known holds for one course on one day.
  const known = useMemo(() => new Map<string, HoleOfDay>(), [course, day])
  return useMemo(() => {
    const holes = course?.holes.map(({ ref }) => {
      const line = lines[ref] ?? ''
      const name = `${ref}\n${line}`
      const before = known.get(name)
      const now = before ?? holeOfDay(course, ref, line, day)
      known.set(name, now)
      return [ref, now] as const
    })
    return Object.fromEntries(holes ?? [])
  }, [course, day, lines, known])
}
