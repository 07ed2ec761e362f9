import { type ReactElement, type ReactNode, useMemo } from 'react'
import '../style/ruled-page.css'
import '../style/after.css'
import type { Course } from '#golf/course/course.ts'
import type { Reader } from '../desk/desk.ts'
import { type Library, useCourse, useLibrary } from '../documents/use-library.ts'
import { CourseChoice } from '../page/course-choice.tsx'
import { PageHead } from '../page/page-head.tsx'
import { coursePlace, ROUNDS } from '../page/places.ts'
import { TroubleNote } from '../page/trouble-note.tsx'
import { WaitingFor } from '../page/waiting-for.tsx'
import { closedOfPlayers, type RoundsOfPlayer } from './closed-of-players.ts'
import { type KeptDay, type KeptRounds, useKeptDays, useKeptRounds } from './kept-round.ts'

/** Where such a page is, and how its reader reads. */
export interface RoundsPageProps {
  readonly courseId: string
  readonly reader: Reader
  readonly onReader: (reader: Reader) => void
}

/** What a page of a course's rounds shows once they are there. */
export interface OfRounds {
  readonly course: Course
  readonly courseId: string
  readonly players: Library['players']
  /** Closed rounds of each player who has any. */
  readonly of: readonly RoundsOfPlayer[]
  /** How many rounds on the course are left out, and what of the store cannot be read. */
  readonly left: number
  readonly unread: readonly string[]
}

/** A page of the closed rounds of all players on a course: its head, then what it shows. */
export function PageOfRounds(
  props: RoundsPageProps & {
    /** In the head, after the name of the house. */
    readonly what: string
    /** The address of this page for a course. */
    readonly placeOf: (courseId: string) => string
    readonly children: (of: OfRounds) => ReactNode
  },
): ReactElement {
  const { courseId, reader, onReader, what, placeOf, children } = props
  const { library, trouble } = useLibrary()
  const course = useCourse(courseId)
  const kept = useKeptRounds()
  const days = useKeptDays()
  const shown = trouble ?? course.trouble ?? kept.trouble ?? days.trouble
  const isHere = library !== null && course.value !== null && kept.value !== null && days.value !== null
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
        <a className="button" href={ROUNDS}>
          The kept rounds
        </a>
      </PageHead>
      <main className="ruled-page after-page" aria-busy={shown === null && !isHere ? true : undefined}>
        {shown !== null ? (
          <TroubleNote trouble={shown} />
        ) : isHere ? (
          <Gathered
            key={courseId}
            {...{ courseId, children }}
            course={course.value}
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

function Gathered(
  props: Pick<OfRounds, 'course' | 'courseId' | 'players'> & {
    readonly kept: KeptRounds
    readonly days: readonly KeptDay[]
    readonly children: (of: OfRounds) => ReactNode
  },
): ReactNode {
  const { course, courseId, players, kept, days, children } = props
  const gathered = useMemo(
    () =>
      closedOfPlayers(
        kept.rounds,
        { id: courseId, name: course.name },
        players,
        days.map(({ day }) => day),
      ),
    [kept, courseId, course, players, days],
  )
  return children({ course, courseId, players, unread: kept.unread, ...gathered })
}
