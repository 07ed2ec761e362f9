import type { ReactElement } from 'react'
import '../style/ruled-page.css'
import '../style/after.css'
import { useLoaded } from '../documents/use-library.ts'
import { PageOfPlayer, type PlayerPageProps } from '../page/page-of-player.tsx'
import { TroubleNote } from '../page/trouble-note.tsx'
import { WaitingFor } from '../page/waiting-for.tsx'
import { loadNotes } from './kept-notes.ts'
import { PracticeDesk } from './practice-desk.tsx'

/** What practice is worth to a player on a course, by the professional's own rates and in their own words. */
export function PracticePage(props: PlayerPageProps): ReactElement {
  const notes = useLoaded('practice', loadNotes)
  return (
    <PageOfPlayer
      {...props}
      page="practice"
      what="the practice"
      choose="Choose the player who is to practise."
      className="ruled-page after-page"
    >
      {(of) =>
        notes.trouble !== null ? (
          <TroubleNote trouble={notes.trouble} />
        ) : notes.value === null ? (
          <WaitingFor what="the notes on practice" />
        ) : (
          <PracticeDesk {...of} found={notes.value} />
        )
      }
    </PageOfPlayer>
  )
}
