import type { ReactElement } from 'react'
import '../style/ruled-page.css'
import '../style/after.css'
import { PageOfPlayer, type PlayerPageProps } from '../page/page-of-player.tsx'
import { TroubleNote } from '../page/trouble-note.tsx'
import { WaitingFor } from '../page/waiting-for.tsx'
import { useKeptDays, useKeptRounds } from '../rounds/kept-round.ts'
import { SeasonDesk } from './season-desk.tsx'

/** The rounds of a player on a course taken together: the letter, what stands out, and what it rests on. */
export function SeasonPage(props: PlayerPageProps): ReactElement {
  const kept = useKeptRounds()
  const days = useKeptDays()
  const trouble = kept.trouble ?? days.trouble
  return (
    <PageOfPlayer
      {...props}
      page="season"
      what="the season"
      choose="Choose the player whose season it is to be."
      className="ruled-page after-page"
    >
      {(of) =>
        trouble !== null ? (
          <TroubleNote trouble={trouble} />
        ) : kept.value === null || days.value === null ? (
          <WaitingFor what="the rounds" />
        ) : (
          <SeasonDesk {...of} kept={kept.value} days={days.value} />
        )
      }
    </PageOfPlayer>
  )
}
