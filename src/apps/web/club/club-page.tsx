import type { ReactElement } from 'react'
import '../style/ruled-page.css'
import '../style/after.css'
import type { Reader } from '../desk/desk.ts'
import { useCourse, useLibrary } from '../documents/use-library.ts'
import { CourseChoice } from '../page/course-choice.tsx'
import { PageHead } from '../page/page-head.tsx'
import { clubPlace, coursePlace, ROUNDS } from '../page/places.ts'
import { TroubleNote } from '../page/trouble-note.tsx'
import { WaitingFor } from '../page/waiting-for.tsx'
import { useKeptDays, useKeptRounds } from '../rounds/kept-round.ts'
import { ClubDesk } from './club-desk.tsx'

/** The rounds of many players on a course taken together for a committee, without names. */
export function ClubPage(props: {
  readonly courseId: string
  readonly reader: Reader
  readonly onReader: (reader: Reader) => void
}): ReactElement {
  const { courseId, reader, onReader } = props
  const { library, trouble } = useLibrary()
  const course = useCourse(courseId)
  const kept = useKeptRounds()
  const days = useKeptDays()
  const shown = trouble ?? course.trouble ?? kept.trouble ?? days.trouble
  const isHere = library !== null && course.value !== null && kept.value !== null && days.value !== null
  return (
    <>
      <PageHead
        what="the club, without names"
        back={coursePlace(courseId)}
        backTo="the course"
        reader={reader}
        onReader={onReader}
        choices={
          library !== null && <CourseChoice library={library} courseId={courseId} placeOf={clubPlace} />
        }
      >
        <a className="button" href={ROUNDS}>
          The kept rounds
        </a>
      </PageHead>
      <main className="ruled-page after-page" aria-busy={shown === null && !isHere ? true : undefined}>
        {shown !== null ? (
          <TroubleNote trouble={shown} />
        ) : isHere ? (
          <ClubDesk
            key={courseId}
            course={course.value}
            courseId={courseId}
            players={library.players}
            kept={kept.value}
            days={days.value}
          />
        ) : (
          <WaitingFor what="the course and the rounds" />
        )}
      </main>
    </>
  )
}
