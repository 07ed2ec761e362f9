import type { ReactElement } from 'react'
import '../style/card.css'
import '../style/ruled-page.css'
import '../style/after.css'
import type { Reader } from '../desk/desk.ts'
import { useCourse, useLibrary } from '../documents/use-library.ts'
import { CourseChoice } from '../page/course-choice.tsx'
import { PageHead } from '../page/page-head.tsx'
import { coursePlace, foursomesPlace, groupPlace, NEW_PLAYER } from '../page/places.ts'
import { TroubleNote } from '../page/trouble-note.tsx'
import { WaitingFor } from '../page/waiting-for.tsx'
import { PairDesk } from './pair-desk.tsx'

/** Two partners with one ball: who takes which tees, where it matters, and the captain’s sheet. */
export function FoursomesPage(props: {
  readonly courseId: string
  readonly reader: Reader
  readonly onReader: (reader: Reader) => void
}): ReactElement {
  const { courseId, reader, onReader } = props
  const { library, trouble } = useLibrary()
  const course = useCourse(courseId)
  const shown = trouble ?? course.trouble
  return (
    <>
      <PageHead
        what="foursomes"
        back={coursePlace(courseId)}
        backTo="the course"
        reader={reader}
        onReader={onReader}
        choices={
          library !== null && <CourseChoice library={library} courseId={courseId} placeOf={foursomesPlace} />
        }
      >
        <a className="button" href={groupPlace(courseId)}>
          A group’s cards
        </a>
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
        <PairDesk
          key={courseId}
          course={course.value}
          courseId={courseId}
          players={library.players}
          days={library.days}
          reader={reader}
        />
      )}
    </>
  )
}
