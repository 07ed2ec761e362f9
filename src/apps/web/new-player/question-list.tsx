import { type ReactElement, useEffect, useRef, useState } from 'react'
import type { Fault } from '#faults/fault.ts'
import { playerFromAnswers } from '#golf/player/player-from-answers.ts'
import { type Answers, type FieldId, isAsked, QUESTIONS } from '#golf/player/player-questions.ts'
import { QuestionField } from './question-field.tsx'

/** The ten questions in one column. A fault is told at its field once the field was left, and at all fields when all is done. */
export function QuestionList(props: {
  readonly answers: Answers
  readonly units: 'yards' | 'metres'
  readonly onAnswer: (id: FieldId, text: string) => void
  readonly onDone: () => void
}): ReactElement {
  const { answers, units, onAnswer, onDone } = props
  const [left, setLeft] = useState<ReadonlySet<FieldId>>(new Set())
  const [isTried, setIsTried] = useState(false)
  const form = useRef<HTMLFormElement>(null)
  const { faults } = playerFromAnswers(answers, units)
  const shown = (id: FieldId): Fault | null => {
    const fault = faults.find(({ place }) => place === id) ?? null
    const isBlank = (answers[id] ?? '').trim() === ''
    return isTried || (left.has(id) && !isBlank) ? fault : null
  }
  useEffect(() => {
    window.scrollTo(0, 0)
  }, [])
  return (
    <form
      ref={form}
      noValidate
      onSubmit={(event) => {
        event.preventDefault()
        setIsTried(true)
        const [first] = faults
        if (first === undefined) onDone()
        else form.current?.querySelector<HTMLElement>(`[data-field="${first.place}"]`)?.focus()
      }}
    >
      <p className="questions-lead">
        Ten questions, a few minutes. What is not known is left open: it is filled in from players of the same
        level, and marked as a guess.
      </p>
      <ol className="question-list">
        {QUESTIONS.map(({ title, fields }, index) => (
          <li key={title}>
            <h2>
              <span className="question-number">{index + 1}</span> {title}
            </h2>
            {fields
              .filter((field) => isAsked(field, answers))
              .map((field) => (
                <QuestionField
                  key={field.id}
                  field={field}
                  units={units}
                  text={answers[field.id] ?? ''}
                  fault={shown(field.id)}
                  onText={(text) => onAnswer(field.id, text)}
                  onLeave={() => setLeft((before) => new Set([...before, field.id]))}
                />
              ))}
          </li>
        ))}
      </ol>
      {isTried && faults.length > 0 && (
        <p className="question-fault" role="alert">
          {faults.length === 1 ? 'One answer is' : `${faults.length} answers are`} still to be put right.
        </p>
      )}
      <button type="submit" className="question-done">
        Make the profile
      </button>
    </form>
  )
}
