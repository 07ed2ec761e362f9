import { useMemo, useState } from 'react'
import type { Course } from '#golf/course/course.ts'
import { groundAt } from '#golf/course/ground-at.ts'
import type { Hole } from '#golf/course/hole.ts'
import { holeFromCourse } from '#golf/course/hole-from-course.ts'
import type { Lie } from '#golf/player/player.ts'
import { lieOfGround } from '#golf/strategy/lie-of-ground.ts'
import { headingTo } from '../chart/heading-to.ts'
import type { Ball } from '../desk/desk.ts'
import { keptDesk } from '../desk/kept-desk.ts'
import { tabStorage } from '../documents/own-storage.ts'
import { type Library, troubleOf, useCourse } from '../documents/use-library.ts'
import type { Trouble } from '../planning/questions.ts'
import type { AskedLine } from './asked-line.ts'

/** The hole that shots are put down on, where they are hit from, and the line they are asked for. */
export interface PlayedHole {
  readonly courseId: string
  readonly course: Course | null
  /** `null` while the course is fetched. */
  readonly hole: Hole | null
  readonly line: AskedLine
  readonly lie: Lie
  /** False where the ball lies elsewhere than on the markers. */
  readonly isFromTee: boolean
  /** How far the line is turned from the first leg, or from the pin where the ball lies elsewhere, degrees. */
  readonly turn: number
  readonly trouble: Trouble | null
  readonly chooseCourse: (id: string) => void
  readonly chooseHole: (ref: string) => void
  readonly turnTo: (degrees: number) => void
  readonly toTee: () => void
}

/** What was chosen; `heading` is `null` for a line that is not turned. */
interface Chosen {
  readonly courseId: string
  readonly ref: string | null
  readonly tee: string | null
  readonly ball: Ball | null
  readonly heading: number | null
}

/** Begins with the hole, the tee, the ball and the line of the desk as it was left; else with the first hole of the first course. */
export function usePlayedHole(library: Library, isWanted: boolean): PlayedHole {
  const [chosen, setChosen] = useState((): Chosen => {
    const left = keptDesk(library, tabStorage)
    return {
      courseId: left?.courseId ?? library.courses[0]?.id ?? '',
      ref: left?.holeRef ?? null,
      tee: left?.teeName ?? null,
      ball: left?.ball ?? null,
      heading: left?.aimDegrees ?? null,
    }
  })
  const { courseId, ref, tee, ball, heading } = chosen
  const { value: course, trouble } = useCourse(isWanted ? courseId : null)
  const cut = useMemo((): { hole: Hole | null; trouble: Trouble | null } => {
    const known = course?.holes.find((hole) => hole.ref === ref)?.ref ?? course?.holes[0]?.ref
    if (course === null || known === undefined) return { hole: null, trouble: null }
    try {
      return { hole: holeFromCourse(course, known, tee === null ? {} : { tee }), trouble: null }
    } catch (error) {
      return { hole: null, trouble: troubleOf(error) }
    }
  }, [course, ref, tee])
  const { hole } = cut
  const straight = ball === null || hole === null ? 0 : headingTo(ball.at, hole.pin)
  const from = ball?.at ?? MARKERS
  const line = useMemo(() => ({ from, heading: heading ?? straight }), [from, heading, straight])
  const fresh = { tee: null, ball: null, heading: null }
  return {
    courseId,
    course,
    hole,
    line,
    lie:
      ball === null || hole === null ? 'tee' : (ball.lie ?? lieOfGround(groundAt(hole, ball.at)) ?? 'rough'),
    isFromTee: ball === null,
    turn: line.heading - straight,
    trouble: trouble ?? cut.trouble,
    chooseCourse: (id) => setChosen({ ...fresh, courseId: id, ref: null }),
    chooseHole: (next) => setChosen((before) => ({ ...before, ...fresh, ref: next })),
    turnTo: (degrees) => setChosen((before) => ({ ...before, heading: straight + degrees })),
    toTee: () => setChosen((before) => ({ ...before, ball: null, heading: null })),
  }
}

const MARKERS = [0, 0] as const
