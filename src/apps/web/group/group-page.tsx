import type { ReactElement } from 'react'
import '../style/card.css'
import '../style/ruled-page.css'
import '../style/group.css'
import type { Reader } from '../desk/desk.ts'
import { useCourse, useLibrary } from '../documents/use-library.ts'
import { CourseChoice } from '../page/course-choice.tsx'
import { PageHead } from '../page/page-head.tsx'
import { coursePlace, foursomesPlace, groupPlace, NEW_PLAYER } from '../page/places.ts'
import { TroubleNote } from '../page/trouble-note.tsx'
import { WaitingFor } from '../page/waiting-for.tsx'
import { GroupDesk } from './group-desk.tsx'

/** Cards for several players on one course: who is in the group, how far their plans are, and one file for the printer. */
export function GroupPage(props: {
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
        what="a group’s cards"
        back={coursePlace(courseId)}
        backTo="the course"
        reader={reader}
        onReader={onReader}
        choices={
          library !== null && <CourseChoice library={library} courseId={courseId} placeOf={groupPlace} />
        }
      >
        <a className="button" href={foursomesPlace(courseId)}>
          Foursomes
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
        <GroupDesk
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
