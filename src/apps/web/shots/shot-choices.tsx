import type { ReactElement } from 'react'
import { clubWords } from '#golf/player/club-words.ts'
import type { Player } from '#golf/player/player.ts'
import { Choice } from '../ledger/choice.tsx'
import type { MeasuredTo } from './shot-words.ts'
import { LIE_CHOICES } from './shot-words.ts'

/** What is hit, from what, and what is measured. */
export interface ShotChoice {
  readonly club: string
  /** A value of `LIE_CHOICES`. */
  readonly lie: string
  readonly to: MeasuredTo
  /** The next shot is a mishit; let go of once it is put down. */
  readonly isMishit: boolean
}

/** The choices for the next shot. */
export function ShotChoices(props: {
  readonly choice: ShotChoice
  readonly player: Player
  readonly counts: ReadonlyMap<string, number>
  /** What it is measured to is open on a range; on a hole balls are seen where they stop. */
  readonly isOnRange: boolean
  readonly onChoice: (choice: ShotChoice) => void
}): ReactElement {
  const { choice, player, counts, onChoice } = props
  const to = (value: MeasuredTo, words: string): ReactElement => (
    <button
      type="button"
      aria-pressed={choice.to === value}
      onClick={() => onChoice({ ...choice, to: value })}
    >
      {words}
    </button>
  )
  return (
    <div className="shot-choices">
      <Choice
        label="Club"
        value={choice.club}
        options={player.clubs.map(({ name }) => ({
          value: name,
          name: counts.has(name) ? `${clubWords(name)}  · ${counts.get(name)}` : clubWords(name),
        }))}
        onChange={(club) => onChoice({ ...choice, club })}
      />
      {props.isOnRange && (
        <>
          <Choice
            label="Lie"
            value={choice.lie}
            options={LIE_CHOICES}
            onChange={(lie) => onChoice({ ...choice, lie })}
          />
          {/* biome-ignore lint/a11y/useSemanticElements: two buttons, no form. */}
          <div role="group" aria-label="Measured to where it" className="measured-to">
            {to('carry', 'came down')}
            {to('total', 'stopped')}
          </div>
        </>
      )}
      <button
        type="button"
        aria-pressed={choice.isMishit}
        onClick={() => onChoice({ ...choice, isMishit: !choice.isMishit })}
      >
        Mishit
      </button>
    </div>
  )
}
