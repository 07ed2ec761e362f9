import { type ReactElement, useId } from 'react'
import type { HoleState } from '../card/use-round-plans.ts'
import { playerPlace } from '../page/places.ts'
import type { FieldPlayer } from './use-field.ts'

/** A player who may be in the group: in or not, and how far the card is. */
export function GroupPlayer(props: {
  readonly id: string
  readonly name: string
  readonly courseId: string
  readonly isIn: boolean
  readonly loaded: FieldPlayer | null
  readonly plans: Readonly<Record<string, HoleState>> | null
  readonly isCurrent: boolean
  /** Whether what is printed stands on plans. */
  readonly hasPlans: boolean
  readonly onIn: (isIn: boolean) => void
}): ReactElement {
  const { id, name, courseId, isIn, onIn } = props
  const field = useId()
  return (
    <li>
      <input
        id={field}
        type="checkbox"
        checked={isIn}
        onChange={(event) => onIn(event.currentTarget.checked)}
      />
      <label htmlFor={field}>{name}</label>
      <span>{isIn ? stateWords(props) : ''}</span>
      {isIn && (
        <a className="button" href={playerPlace('card', courseId, id)} aria-label={`The card of ${name}`}>
          The card
        </a>
      )}
    </li>
  )
}

function stateWords({
  loaded,
  plans,
  isCurrent,
  hasPlans,
}: Pick<Parameters<typeof GroupPlayer>[0], 'loaded' | 'plans' | 'isCurrent' | 'hasPlans'>): string {
  if (loaded === null) return 'being read'
  if ('trouble' in loaded) return loaded.trouble
  if (!hasPlans) return 'ready'
  if (plans === null) return isCurrent ? 'being planned' : 'waits for the others'
  const without = Object.entries(plans).flatMap(([ref, state]) => ('missing' in state ? [ref] : []))
  return without.length === 0 ? 'planned' : `without a plan: hole ${without.join(', ')}`
}
