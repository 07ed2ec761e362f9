import type { ReactElement } from 'react'
import { clubPlace } from '../page/places.ts'
import { PageOfRounds, type RoundsPageProps } from '../rounds/page-of-rounds.tsx'
import { ClubDesk } from './club-desk.tsx'

/** The rounds of many players on a course taken together for a committee, without names. */
export function ClubPage(props: RoundsPageProps): ReactElement {
  return (
    <PageOfRounds {...props} what="the club, without names" placeOf={clubPlace}>
      {(of) => <ClubDesk {...of} />}
    </PageOfRounds>
  )
}
