import type { ReactElement, ReactNode } from 'react'
import '../style/card.css'
import '../style/ruled-page.css'
import type { Course } from '#golf/course/course.ts'
import type { Reader } from '../desk/desk.ts'
import { type Library, useCourse, useLibrary } from '../documents/use-library.ts'
import { CourseChoice } from '../page/course-choice.tsx'
import { PageHead } from '../page/page-head.tsx'
import { coursePlace, NEW_PLAYER } from '../page/places.ts'
import { TroubleNote } from '../page/trouble-note.tsx'
import { WaitingFor } from '../page/waiting-for.tsx'

/** Where such a page is, and how its reader reads. */
export interface FieldPageProps {
  readonly courseId: string
  readonly reader: Reader
  readonly onReader: (reader: Reader) => void
}

/** What a page for several players on a course shows once course and players are there. */
export interface OfField extends Pick<Library, 'players' | 'days'> {
  readonly course: Course
  readonly courseId: string
  readonly reader: Reader
}

/** A page for several players on one course: its head, then what it shows. */
export function PageOfField(
  props: FieldPageProps & {
    /** In the head, after the name of the house. */
    readonly what: string
    /** The address of this page for a course. */
    readonly placeOf: (courseId: string) => string
    /** The way to the other such page. */
    readonly other: ReactNode
    readonly children: (of: OfField) => ReactNode
  },
): ReactElement {
  const { courseId, reader, onReader, what, placeOf, other, children } = props
  const { library, trouble } = useLibrary()
  const course = useCourse(courseId)
  const shown = trouble ?? course.trouble
  return (
    <>
      <PageHead
        what={what}
        back={coursePlace(courseId)}
        backTo="the course"
        reader={reader}
        onReader={onReader}
        choices={library !== null && <CourseChoice library={library} courseId={courseId} placeOf={placeOf} />}
      >
        {other}
        <a className="button" href={NEW_PLAYER}>
          New player
        </a>
      </PageHead>
      {shown !== null || library === null || course.value === null ? (
        <main className="card-page" aria-busy={shown === null}>
          {shown === null ? (
            <WaitingFor what="the course and the players" />
          ) : (
            <TroubleNote trouble={shown} />
          )}
        </main>
      ) : (
        children({
          ...{ courseId, reader, course: course.value },
          ...{ players: library.players, days: library.days },
        })
      )}
    </>
  )
}
