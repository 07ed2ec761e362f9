import type { ReactElement } from 'react'
import type { Hole } from '#golf/course/hole.ts'
import { LIES, type Lie } from '#golf/player/player.ts'
import type { Ball, Reader } from '../desk/desk.ts'
import { length, lieWord, unitSign } from '../words.ts'
import { Choice } from './choice.tsx'
import { Section } from './section.tsx'

/** Where the ball lies and in what; steps and lies by button what the chart does by drag. */
export function BallControls(props: {
  readonly ball: Ball | null
  /** The lie that the plan at hand is from; `null` = none yet. */
  readonly ground: Lie | null
  readonly hole: Hole
  readonly reader: Reader
  readonly onLie: (lie: Lie | null) => void
  /** Steps to the right and further on, in the reader's units. */
  readonly onStep: (right: number, further: number) => void
  readonly onTee: () => void
  readonly onSay: (said: Ball['said']) => void
  readonly onStrikeFromHere: () => void
}): ReactElement {
  const { ball, ground, hole, reader } = props
  const [x, y] = ball?.at ?? [0, 0]
  const left = Math.hypot(hole.pin[0] - x, hole.pin[1] - y)
  const sign = unitSign(reader)
  const steps = [
    [`Ball ${STEP} ${sign} left`, '←', -STEP, 0],
    [`Ball ${STEP} ${sign} further`, '↑', 0, STEP],
    [`Ball ${STEP} ${sign} back`, '↓', 0, -STEP],
    [`Ball ${STEP} ${sign} right`, '→', STEP, 0],
  ] as const
  return (
    <Section title="The ball">
      <div className="ball-controls">
        <p>
          {ball === null
            ? 'On the markers'
            : ground === null
              ? 'From where it lies'
              : `From the ${lieWord(ground)}`}
          , {length(left, reader)} to the pin
        </p>
        <div className="pin-steps">
          {steps.map(([label, mark, right, further]) => (
            <button key={label} type="button" aria-label={label} onClick={() => props.onStep(right, further)}>
              {mark}
            </button>
          ))}
        </div>
        {ball !== null && (
          <>
            <Choice
              label="Lie"
              value={ball.lie ?? ''}
              options={[
                { value: '', name: 'as the ground is' },
                ...LIES.filter((lie) => lie !== 'green').map((lie) => ({ value: lie, name: lieWord(lie) })),
              ]}
              onChange={(lie) => props.onLie(LIES.find((each) => each === lie) ?? null)}
            />
            <Choice
              label="The ball is"
              value={ball.said ?? ''}
              options={SAID}
              onChange={(said) => props.onSay(SAID.find(({ value }) => value === said)?.said ?? null)}
            />
            <button
              type="button"
              className="quiet"
              disabled={ball.from[0] === x && ball.from[1] === y}
              onClick={props.onStrikeFromHere}
            >
              Strike from here
            </button>
            <button type="button" className="quiet" onClick={props.onTee}>
              Back to the tee
            </button>
          </>
        )}
      </div>
    </Section>
  )
}

/** What may be said of a ball. */
const SAID: readonly { readonly value: string; readonly name: string; readonly said: Ball['said'] }[] = [
  { value: '', name: 'where it lies', said: null },
  { value: 'in question', name: 'perhaps unplayable', said: 'in question' },
  { value: 'lost', name: 'lost about there', said: 'lost' },
]

/** One press of a button moves the ball so far, the reader's units. */
const STEP = 5
