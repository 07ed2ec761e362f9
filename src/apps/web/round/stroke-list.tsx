import { type ReactElement, useState } from 'react'
import type { CardHole } from '#golf/round/kept-round.ts'
import { changeStroke, type LogStep, removeStroke } from '#golf/round/log-steps.ts'
import { penaltyOf } from '#golf/round/round.ts'
import type { HoleOfLog } from '#golf/round/round-of-log.ts'
import { finishWords, type Units } from './club-words.ts'
import type { Target } from './round-page.tsx'

/** What was written down of the hole, a stroke a row, each to be corrected. */
export function StrokeList(props: {
  readonly hole: HoleOfLog
  readonly units: Units
  readonly card: CardHole | undefined
  readonly target: Target | null
  readonly onTarget: (target: Target | null) => void
  readonly step: (step: LogStep) => void
}): ReactElement {
  const { hole, units, card, target, onTarget, step } = props
  const hasCard = (card?.club ?? '') !== ''
  const [opened, setOpened] = useState<string | null>(null)
  return (
    <ol className="strokes" aria-label="Strokes">
      {hole.strokes.map(({ id, stroke }, index) => {
        const penalty = penaltyOf(stroke)
        const aim = (how: Target['how']): void =>
          onTarget(target?.id === id && target.how === how ? null : { id, how })
        return (
          <li key={id} className={target?.id === id ? 'aimed' : ''}>
            <button
              type="button"
              className="wide"
              aria-expanded={opened === id}
              onClick={() => setOpened(opened === id ? null : id)}
            >
              <b>{index + 1}</b> {stroke.club ?? 'a club'}: {finishWords(stroke.finish, units)}
              {penalty > 0 && `, ${penalty} penalty`}
            </button>
            {opened === id && (
              <div className="keys">
                <button
                  type="button"
                  aria-pressed={target?.id === id && target.how === 'change'}
                  onClick={() => aim('change')}
                >
                  Change
                </button>
                <button
                  type="button"
                  aria-pressed={target?.id === id && target.how === 'before'}
                  onClick={() => aim('before')}
                >
                  One before
                </button>
                <button type="button" onClick={() => step(changeStroke(id, { penalty: (penalty + 1) % 4 }))}>
                  Penalty
                </button>
                {hasCard && index === 0 && (
                  <button
                    type="button"
                    aria-pressed={stroke.isAsPlanned}
                    onClick={() => step(changeStroke(id, { isAsPlanned: !stroke.isAsPlanned }))}
                  >
                    As on the card
                  </button>
                )}
                <button type="button" onClick={() => step(removeStroke(id))}>
                  Strike out
                </button>
              </div>
            )}
          </li>
        )
      })}
    </ol>
  )
}
