import type { ReactElement, ReactNode } from 'react'
import type { Course } from '#golf/course/course.ts'
import type { Player } from '#golf/player/player.ts'
import type { Reader } from '../desk/desk.ts'
import { type Library, useCourse, useLibrary } from '../documents/use-library.ts'
import { Choice } from '../ledger/choice.tsx'
import { useKeptPlayer } from '../shots/use-kept-player.ts'
import { CourseChoice } from './course-choice.tsx'
import { PageHead } from './page-head.tsx'
import { DESK, deskPlace, NEW_PLAYER, type PlayerPage, playerPlace } from './places.ts'
import { TroubleNote } from './trouble-note.tsx'
import { WaitingFor } from './waiting-for.tsx'

/** Where such a page is, and how its reader reads. */
export interface PlayerPageProps {
  readonly courseId: string
  /** `null` = nobody is chosen yet. */
  readonly playerId: string | null
  readonly reader: Reader
  readonly onReader: (reader: Reader) => void
}

/** What a page of a player shows once all of it is there. */
export interface OfPlayer {
  readonly library: Library
  readonly course: Course
  readonly courseId: string
  readonly player: Player
  readonly playerId: string
  readonly reader: Reader
}

const NAMES: Readonly<Record<PlayerPage, string>> = { card: 'Card', season: 'Season', practice: 'Practice' }
const PAGES = Object.keys(NAMES) as PlayerPage[]

/** A page of one player on one course: its head with both to choose and the ways to the other such pages, then what it shows. */
export function PageOfPlayer(
  props: PlayerPageProps & {
    readonly page: PlayerPage
    /** In the head, after the name of the house. */
    readonly what: string
    /** Said while nobody is chosen. */
    readonly choose: string
    readonly className: string
    readonly children: (of: OfPlayer) => ReactNode
  },
): ReactElement {
  const { page, what, courseId, playerId, reader, onReader, className, choose } = props
  const { library, trouble } = useLibrary()
  const go = (course: string, player: string | null): void => {
    location.hash = playerPlace(page, course, player === '' ? null : player)
  }
  return (
    <>
      <PageHead
        what={what}
        back={playerId === null ? DESK : deskPlace({ courseId, playerId })}
        reader={reader}
        onReader={onReader}
        choices={
          library !== null && (
            <>
              <CourseChoice
                library={library}
                courseId={courseId}
                placeOf={(id) => playerPlace(page, id, playerId)}
              />
              <Choice
                label="Player"
                value={playerId ?? ''}
                options={[
                  ...(playerId === null ? [{ value: '', name: 'nobody yet' }] : []),
                  ...library.players.map(({ id, name }) => ({ value: id, name })),
                ]}
                onChange={(id) => go(courseId, id)}
              />
            </>
          )
        }
      >
        {PAGES.filter((other) => other !== page).map((other) => (
          <a key={other} className="button" href={playerPlace(other, courseId, playerId)}>
            {NAMES[other]}
          </a>
        ))}
        <a className="button" href={NEW_PLAYER}>
          New player
        </a>
      </PageHead>
      <main className={className} aria-busy={trouble === null && library === null ? true : undefined}>
        {trouble !== null && <TroubleNote trouble={trouble} />}
        {trouble === null && playerId === null && <p className="page-lead">{choose}</p>}
        {trouble === null && playerId !== null && library !== null && (
          <LoadedPlayer key={`${courseId} ${playerId}`} {...{ library, courseId, playerId, reader }}>
            {props.children}
          </LoadedPlayer>
        )}
      </main>
    </>
  )
}

function LoadedPlayer(
  props: Omit<OfPlayer, 'course' | 'player'> & { readonly children: (of: OfPlayer) => ReactNode },
): ReactNode {
  const { children, ...of } = props
  const course = useCourse(of.courseId)
  const { kept, trouble } = useKeptPlayer(of.playerId)
  const shown = course.trouble ?? trouble
  if (shown !== null) return <TroubleNote trouble={shown} />
  if (course.value === null || kept === null) return <WaitingFor what="the course and the player" />
  return children({ ...of, course: course.value, player: kept.player })
}
