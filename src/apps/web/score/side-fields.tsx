import type { ReactElement } from 'react'
import { type Play, SIDES } from '#golf/round/competition.ts'
import { Chosen } from '../page/chosen.tsx'
import type { Named } from '../rounds/kept-round.ts'
import { type SideChoice, withEntry } from './score-choice.ts'

/** Who plays on a side: a round for each ball, and the partners where they have one ball. */
export function SideFields(props: {
  readonly name: string
  readonly play: Play
  readonly side: SideChoice
  readonly rounds: readonly Named[]
  readonly players: readonly Named[]
  readonly onChange: (side: SideChoice) => void
}): ReactElement {
  const { name, play, side, rounds, players, onChange } = props
  const { roundIds, playerIds } = side
  const { least, most, hasOwnBalls } = SIDES[play]
  const partners = hasOwnBalls ? [] : Array.from({ length: most }, (_, index) => index)
  const balls = Array.from({ length: hasOwnBalls ? least : 1 }, (_, index) => index)
  return (
    <fieldset className="side-fields">
      <legend>{name}</legend>
      <div className="note-fields">
        {partners.map((index) => (
          <Chosen
            key={index}
            label={index < least ? `Partner ${index + 1}` : `Partner ${index + 1}, if any`}
            value={playerIds[index] ?? ''}
            of={[{ id: '', name: 'nobody yet' }, ...players]}
            onChoose={(id) => onChange({ ...side, playerIds: withEntry(playerIds, index, id) })}
          />
        ))}
        {balls.map((index) => (
          <Chosen
            key={index}
            label={
              hasOwnBalls
                ? least === 1
                  ? 'Round'
                  : `Round of partner ${index + 1}`
                : 'Round of the one ball'
            }
            value={roundIds[index] ?? ''}
            of={[{ id: '', name: 'none yet' }, ...rounds]}
            onChoose={(id) => onChange({ ...side, roundIds: withEntry(roundIds, index, id) })}
          />
        ))}
      </div>
    </fieldset>
  )
}
