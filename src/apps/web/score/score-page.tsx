import type { ReactElement } from 'react'
import { scorePlace } from '../page/places.ts'
import { PageOfRounds, type RoundsPageProps } from '../rounds/page-of-rounds.tsx'
import { ScoreDesk } from './score-desk.tsx'

/** The score of rounds that were played: strokes, points, par or a match, each on their own or as partners. */
export function ScorePage(props: RoundsPageProps): ReactElement {
  return (
    <PageOfRounds {...props} what="a score" placeOf={scorePlace}>
      {(of) => <ScoreDesk {...of} />}
    </PageOfRounds>
  )
}
