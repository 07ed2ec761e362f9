import type { ReactElement } from 'react'
import '../style/card.css'
import { PageOfPlayer, type PlayerPageProps } from '../page/page-of-player.tsx'
import { CardDesk } from './card-desk.tsx'

/** The printed pages of a player on a course as they will print, with every sentence to be written anew in its place. */
export function CardPage(props: PlayerPageProps): ReactElement {
  return (
    <PageOfPlayer
      {...props}
      page="card"
      what="the card"
      choose="Choose the player whose card it is to be."
      className="card-page"
    >
      {({ library, course, courseId, player, playerId, reader }) => (
        <CardDesk
          course={course}
          courseId={courseId}
          playerId={playerId}
          kept={player}
          days={library.days}
          reader={reader}
        />
      )}
    </PageOfPlayer>
  )
}
