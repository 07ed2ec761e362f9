import type { ReactElement } from 'react'
import type { Reader } from '../desk/desk.ts'
import type { Library } from '../documents/use-library.ts'
import { Choice } from '../ledger/choice.tsx'
import { DESK_SETTINGS } from '../settings.ts'
import { lieWord, readerMetres, sideways, unitSign } from '../words.ts'
import { turned } from './asked-line.ts'
import type { PlayedHole } from './use-played-hole.ts'

/** Which hole is played, and on which line the shots are asked to finish. */
export function HoleChoices(props: {
  readonly library: Library
  readonly played: PlayedHole
  /** How far the club usually goes in all, metres: there the line is measured. */
  readonly atMetres: number
  readonly reader: Reader
}): ReactElement {
  const { library, played, atMetres, reader } = props
  const { aimStep, aimLargeStep } = DESK_SETTINGS
  const offset = atMetres * Math.sin((played.turn * Math.PI) / 180)
  const step = (steps: number, mark: string): ReactElement => (
    <button
      type="button"
      aria-label={`Line ${Math.abs(steps)} ${unitSign(reader)} ${steps < 0 ? 'left' : 'right'}`}
      onClick={() => played.turnTo(turned(played.turn, steps * readerMetres(reader), atMetres))}
    >
      {mark}
    </button>
  )
  return (
    <div className="shot-choices">
      <Choice
        label="Course"
        value={played.courseId}
        options={library.courses.map(({ id, name }) => ({ value: id, name }))}
        onChange={played.chooseCourse}
      />
      <Choice
        label="Hole"
        value={played.hole?.ref ?? ''}
        options={(played.course?.holes ?? []).map(({ ref, name }) => ({
          value: ref,
          name: name === null ? ref : `${ref} ${name}`,
        }))}
        onChange={played.chooseHole}
      />
      {!played.isFromTee && (
        <>
          <p className="silent">from where the ball lies on the desk: {lieWord(played.lie)}</p>
          <button type="button" onClick={played.toTee}>
            From the tee
          </button>
        </>
      )}
      {/* biome-ignore lint/a11y/useSemanticElements: four buttons, no form. */}
      <div role="group" aria-label="The line asked for" className="step-row asked-line">
        {step(-aimLargeStep, '«')}
        {step(-aimStep, '‹')}
        <p aria-live="polite">
          <small>asked for</small>
          {sideways(offset, reader)}
        </p>
        {step(aimStep, '›')}
        {step(aimLargeStep, '»')}
      </div>
    </div>
  )
}
