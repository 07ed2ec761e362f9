import type { ReactElement } from 'react'
import '../style/group.css'
import { foursomesPlace, groupPlace } from '../page/places.ts'
import { GroupDesk } from './group-desk.tsx'
import { type FieldPageProps, PageOfField } from './page-of-field.tsx'

/** Cards for several players on one course: who is in the group, how far their plans are, and one file for the printer. */
export function GroupPage(props: FieldPageProps): ReactElement {
  const other = (
    <a className="button" href={foursomesPlace(props.courseId)}>
      Foursomes
    </a>
  )
  return (
    <PageOfField {...props} what="a group’s cards" placeOf={groupPlace} other={other}>
      {(of) => <GroupDesk key={of.courseId} {...of} />}
    </PageOfField>
  )
}
