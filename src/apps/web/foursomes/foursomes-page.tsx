import type { ReactElement } from 'react'
import '../style/after.css'
import { type FieldPageProps, PageOfField } from '../group/page-of-field.tsx'
import { foursomesPlace, groupPlace } from '../page/places.ts'
import { PairDesk } from './pair-desk.tsx'

/** Two partners with one ball: who takes which tees, where it matters, and the captain’s sheet. */
export function FoursomesPage(props: FieldPageProps): ReactElement {
  const other = (
    <a className="button" href={groupPlace(props.courseId)}>
      A group’s cards
    </a>
  )
  return (
    <PageOfField {...props} what="foursomes" placeOf={foursomesPlace} other={other}>
      {(of) => <PairDesk key={of.courseId} {...of} />}
    </PageOfField>
  )
}
