import type { ReactElement } from 'react'
import type { Course } from '#golf/course/course.ts'
import { isWords, PRINTED_KINDS, type PrintedKind } from '#paper/book/printed-kinds.ts'
import { Choice } from '../ledger/choice.tsx'
import { type CardChoice, KIND_NAMES } from './card-choice.ts'
import { teesOf } from './round-holes.ts'

/** What is printed, for which round and on which paper. */
export function CardChoices(props: {
  /** What there is to choose from; everything unless given. */
  readonly kinds?: readonly PrintedKind[]
  readonly choice: CardChoice
  readonly onChoose: (change: Partial<CardChoice>) => void
  readonly course: Course
  readonly tee: string
  readonly onTee: (tee: string) => void
  readonly days: readonly { readonly id: string; readonly name: string }[]
  readonly dayId: string
  readonly onDay: (id: string) => void
}): ReactElement {
  const { kinds = PRINTED_KINDS, choice, onChoose, course, tee, days, dayId } = props
  return (
    <div className="choices card-choices">
      <Choice
        label="What"
        value={choice.kind}
        options={kinds.map((kind) => ({ value: kind, name: KIND_NAMES[kind] }))}
        onChange={(value) => onChoose({ kind: PRINTED_KINDS.find((kind) => kind === value) ?? 'card' })}
      />
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
      <button
        type="button"
        aria-pressed={choice.isTextOnly || isWords(choice.kind)}
        disabled={isWords(choice.kind)}
        onClick={() => onChoose({ isTextOnly: !choice.isTextOnly })}
      >
        Words alone
      </button>
      <button
        type="button"
        aria-pressed={choice.hasFolds}
        onClick={() => onChoose({ hasFolds: !choice.hasFolds })}
      >
        To fold
      </button>
    </div>
  )
}
