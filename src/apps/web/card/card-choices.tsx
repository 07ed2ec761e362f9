import type { ReactElement } from 'react'
import { hasPlans, isWords, PRINTED_KINDS, type PrintedKind } from '#paper/book/printed-kinds.ts'
import { Choice } from '../ledger/choice.tsx'
import { KIND_NAMES, kindOf } from './card-choice.ts'
import { RoundChoices, type RoundChoicesProps } from './round-choices.tsx'

/** What is printed, for which round and on which paper. */
export function CardChoices(
  props: RoundChoicesProps & {
    /** What there is to choose from; everything unless given. */
    readonly kinds?: readonly PrintedKind[]
  },
): ReactElement {
  const { kinds = PRINTED_KINDS, choice, onChoose } = props
  return (
    <div className="choices card-choices">
      <Choice
        label="What"
        value={choice.kind}
        options={kinds.map((kind) => ({ value: kind, name: KIND_NAMES[kind] }))}
        onChange={(value) => onChoose({ kind: PRINTED_KINDS.find((kind) => kind === value) ?? 'card' })}
      />
      <RoundChoices {...props} />
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
      {hasPlans(kindOf(choice)) && (
        <button
          type="button"
          aria-pressed={choice.isQuick}
          onClick={() => onChoose({ isQuick: !choice.isQuick })}
        >
          Soon and rough
        </button>
      )}
    </div>
  )
}
