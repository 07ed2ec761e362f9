import { type ReactElement, useState } from 'react'
import type { Reader } from '../desk/desk.ts'
import { Section } from '../ledger/section.tsx'
import { LatePart } from '../page/late-part.tsx'
import type { Situation } from '../planning/use-planning.ts'

const loadCurves = async () => (await import('./going-curves.tsx')).GoingCurves

/** Go or lay up along the hole; worked out only when it is asked for, since it takes as long as a plan. */
export function GoingSection(props: {
  readonly situation: Situation
  readonly reader: Reader
}): ReactElement {
  const [isOpen, setOpen] = useState(false)
  return (
    <Section title="Go or lay up" className="going">
      <button type="button" className="quiet" aria-expanded={isOpen} onClick={() => setOpen(!isOpen)}>
        {isOpen ? 'Put the curves away' : 'Draw both as curves'}
      </button>
      {isOpen && <LatePart what="the curves" load={loadCurves} show={props} />}
    </Section>
  )
}
