import type { ReactElement } from 'react'
import '../style/card.css'
import type { Reader } from '../desk/desk.ts'
import { useCourse, useLibrary } from '../documents/use-library.ts'
import { Choice } from '../ledger/choice.tsx'
import { PageHead } from '../page/page-head.tsx'
import { cardPlace, DESK, deskPlace, NEW_PLAYER } from '../page/places.ts'
import { TroubleNote } from '../page/trouble-note.tsx'
import { WaitingFor } from '../page/waiting-for.tsx'
import { useKeptPlayer } from '../shots/use-kept-player.ts'
import { CardDesk } from './card-desk.tsx'

/** The printed pages of a player on a course as they will print, with every sentence to be written anew in its place. */
export function CardPage(props: {
  readonly courseId: string
  /** `null` = nobody is chosen yet. */
  readonly playerId: string | null
  readonly reader: Reader
  readonly onReader: (reader: Reader) => void
}): ReactElement {
  const { courseId, playerId, reader, onReader } = props
  const { library, trouble } = useLibrary()
  const go = (course: string, player: string | null): void => {
    location.hash = cardPlace(course, player === '' ? null : player)
  }
  const back = playerId === null ? DESK : deskPlace({ courseId, playerId })
  return (
    <>
      <PageHead
        what="the card"
        back={back}
        reader={reader}
        onReader={onReader}
        choices={
          library !== null && (
            <>
              <Choice
                label="Course"
                value={courseId}
                options={library.courses.map(({ id, name }) => ({ value: id, name }))}
                onChange={(id) => go(id, playerId)}
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
        <a className="button" href={NEW_PLAYER}>
          New player
        </a>
      </PageHead>
      {trouble !== null && (
        <main className="card-page">
          <TroubleNote trouble={trouble} />
        </main>
      )}
      {trouble === null && playerId === null && (
        <main className="card-page">
          <p className="card-lead">Choose the player whose card it is to be.</p>
        </main>
      )}
      {trouble === null && playerId !== null && library !== null && (
        <CardOfPlayer
          key={`${courseId} ${playerId}`}
          courseId={courseId}
          playerId={playerId}
          days={library.days}
          reader={reader}
        />
      )}
    </>
  )
}

function CardOfPlayer(props: {
  readonly courseId: string
  readonly playerId: string
  readonly days: readonly { readonly id: string; readonly name: string }[]
  readonly reader: Reader
}): ReactElement {
  const { courseId, playerId } = props
  const course = useCourse(courseId)
  const { kept, trouble } = useKeptPlayer(playerId)
  const shown = course.trouble ?? trouble
  if (shown !== null || course.value === null || kept === null)
    return (
      <main className="card-page" aria-busy={shown === null}>
        {shown === null ? <WaitingFor what="the course and the player" /> : <TroubleNote trouble={shown} />}
      </main>
    )
  return <CardDesk {...props} course={course.value} kept={kept.player} />
}
