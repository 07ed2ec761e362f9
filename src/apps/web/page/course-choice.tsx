import type { ReactElement } from 'react'
import type { Library } from '../documents/use-library.ts'
import { Choice } from '../ledger/choice.tsx'

/** Which course a page is of; another is another address. */
export function CourseChoice(props: {
  readonly library: Library
  readonly courseId: string
  /** The address of this page for a course. */
  readonly placeOf: (courseId: string) => string
}): ReactElement {
  const { library, courseId, placeOf } = props
  return (
    <Choice
      label="Course"
      value={courseId}
      options={library.courses.map(({ id, name }) => ({ value: id, name }))}
      onChange={(id) => {
        location.hash = placeOf(id)
      }}
    />
  )
}
