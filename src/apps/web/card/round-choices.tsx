import type { ReactElement } from 'react'
import type { Course } from '#golf/course/course.ts'
import { Choice } from '../ledger/choice.tsx'
import type { CardChoice } from './card-choice.ts'
import { teesOf } from './round-holes.ts'

/** What round is printed for, and on which paper. */
export interface RoundChoicesProps {
  readonly choice: CardChoice
  readonly onChoose: (change: Partial<CardChoice>) => void
  readonly course: Course
  readonly tee: string
  readonly onTee: (tee: string) => void
  readonly days: readonly { readonly id: string; readonly name: string }[]
  readonly dayId: string
  readonly onDay: (id: string) => void
}

/** The round that is printed for, whatever is printed. */
export function RoundChoices(props: RoundChoicesProps): ReactElement {
  const { choice, onChoose, course, tee, days, dayId } = props
  return (
    <>
      <Choice
        label="For"
        value={choice.purpose}
        options={[
          { value: 'practice', name: 'practice, lessons' },
          { value: 'counting', name: 'a counting round' },
        ]}
        onChange={(value) => onChoose({ purpose: value === 'counting' ? 'counting' : 'practice' })}
      />
      <Choice
        label="Day"
        value={dayId}
        options={[{ value: '', name: 'calm, normal' }, ...days.map(({ id, name }) => ({ value: id, name }))]}
        onChange={props.onDay}
      />
      <Choice
        label="Tee"
        value={tee}
        options={[{ value: '', name: 'the usual' }, ...teesOf(course).map((name) => ({ value: name, name }))]}
        onChange={props.onTee}
      />
      <Choice
        label="Paper"
        value={choice.paper}
        options={[
          { value: 'a4', name: 'A4' },
          { value: 'letter', name: 'letter' },
        ]}
        onChange={(value) => onChoose({ paper: value === 'letter' ? 'letter' : 'a4' })}
      />
    </>
  )
}
